import type { Page } from 'playwright-core';
import type { Picture } from './picture.ts';

type Take = (picture: Picture) => Promise<void>;

const timeScale = 60;

/** What the simulated receiver holds so long into the main fraction: in the end a forecast stands on the strip. */
const readings = [
  { afterS: 120, volumeMl: 6.5 },
  { afterS: 480, volumeMl: 12 },
  { afterS: 900, volumeMl: 17.5 },
] as const;

/** Goes through a rehearsal as a teacher does, and says when there is something to show. */
export async function drivePictures(page: Page, take: Take): Promise<void> {
  await page.getByText(`${timeScale} times faster`).click();
  await page.locator('button:enabled').filter({ hasText: 'Start the rehearsal' }).waitFor();
  await take({ name: 'prepare', viewport: 'projector', colours: 'light' });
  await page.getByRole('button', { name: 'Start the rehearsal' }).click();
  await watchMainFraction(page, take);
  await watchHeatOff(page, take);
  await stop(page);
  await lookBack(page, take);
}

async function watchMainFraction(page: Page, take: Take): Promise<void> {
  // Answered whenever it is asked, as by a person at the still.
  await page.addLocatorHandler(page.getByRole('button', { name: 'I am at the still' }), () =>
    page.keyboard.press('a'),
  );
  // What is coming is told before the run has begun too: only the findings say that it is so.
  await page.locator('.findings').getByText('Main ethanol fraction').waitFor();
  let passedS = 0;
  for (const { afterS, volumeMl } of readings) {
    await page.waitForTimeout(((afterS - passedS) / timeScale) * 1000);
    passedS = afterS;
    await bookVolume(page, volumeMl);
  }
  await take({ name: 'watch', viewport: 'projector', colours: 'light' });
  await take({ name: 'phone', viewport: 'phone', colours: 'light' });
  await page.getByRole('button', { name: 'Understand this moment' }).click();
  await page.getByRole('region', { name: 'Understand' }).scrollIntoViewIfNeeded();
  await take({ name: 'understand', viewport: 'projector', colours: 'light' });
  await page.getByRole('button', { name: 'Understand this moment' }).click();
  await page.evaluate('document.activeElement.blur()');
}

async function bookVolume(page: Page, volumeMl: number): Promise<void> {
  await page.keyboard.press('v');
  await page.getByRole('dialog').waitFor();
  await page.keyboard.type(String(volumeMl));
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

async function watchHeatOff(page: Page, take: Take): Promise<void> {
  const prompts = page.getByRole('region', { name: 'Prompts' });
  await prompts.getByRole('alert').filter({ hasText: 'change the receiver' }).waitFor();
  await take({ name: 'heat-off', viewport: 'projector', colours: 'dark' });
  await page.getByRole('button', { name: 'Classroom view' }).click();
  await page.getByRole('button', { name: 'Leave' }).waitFor();
  await take({ name: 'classroom', viewport: 'projector', colours: 'light' });
  await page.getByRole('button', { name: 'Leave' }).click();
  await page.keyboard.press('o');
  await page.locator('button[aria-pressed=true]').filter({ hasText: 'off' }).waitFor();
}

async function stop(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Stop/ }).click();
  await page.getByRole('button', { name: 'Stop recording', exact: true }).click();
  await page.getByText(/This run ended/).waitFor();
}

async function lookBack(page: Page, take: Take): Promise<void> {
  await page.getByRole('link', { name: 'Look back' }).click();
  await page.getByRole('button', { name: /^Replay / }).click();
  await page
    .getByRole('button', { name: /Prompt:/ })
    .last()
    .click();
  await take({ name: 'look-back', viewport: 'projector', colours: 'light' });
}
