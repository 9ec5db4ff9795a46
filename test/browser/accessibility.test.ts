import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeViolations, countAnnouncements, smallTargets, tabTo } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { letterShares } from './support/letter-shares.ts';
import { runIsSaved } from './support/prepare-run.ts';

let bench: JourneyBench;
const findings: Record<string, { violations: readonly string[]; small: readonly string[] }> = {};

beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench?.tidy());

/** The screen as it is now, in light and in dark. */
async function look(page: Page, name: string): Promise<void> {
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    const violations = await axeViolations(page);
    findings[`${name}, ${colorScheme}`] = { violations, small: await smallTargets(page) };
  }
}

async function lookAtDialog(page: Page, name: string): Promise<void> {
  await tabTo(page, new RegExp(`^${name}$`));
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  await look(page, name);
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

test('a whole run with the keyboard alone: no axe violation, no small target, few announcements', async () => {
  const { page } = bench;
  await page.getByRole('button', { name: 'Start the rehearsal' }).waitFor();
  await look(page, 'prepare');
  await lookAtDialog(page, 'Cautions');
  await lookAtDialog(page, 'Display and sound');

  await tabTo(page, /times faster/);
  await page.keyboard.press('ArrowRight');
  await tabTo(page, /^Start the rehearsal$/);
  await page.keyboard.press('Enter');
  await page.getByText('Warming up').first().waitFor();
  await goesOnAt(page, /^Warming up/);
  await skipToContent(page, /^Warming up/);
  const announcements = await countAnnouncements(page);
  await look(page, 'watch');
  await answerUntilHeatOff(page);
  await markByKeys(page);
  const clock = await page.getByText(/^Saved to/).textContent();
  const said = await announcements();
  await classroom(page);
  await stopByKeyboard(page);
  await booksAndBack(page);
  await lookBack(page);

  const wrong = Object.entries(findings).filter(
    ([, { violations, small }]) => violations.length + small.length > 0,
  );
  expect(wrong).toEqual([]);
  expect({ said: said.length <= 60 * hoursOf(clock ?? ''), lines: said }).toMatchObject({
    said: true,
  });
  expect(bench.complaints).toEqual([]);
});

/** What was pressed is gone: whoever types or hears the window goes on at the heading of what came instead. */
async function goesOnAt(page: Page, heading: RegExp): Promise<void> {
  await expect
    .poll(
      () => page.evaluate(() => document.activeElement?.closest('h1')?.textContent ?? 'no heading'),
      {
        timeout: 20_000,
      },
    )
    .toMatch(heading);
}

/** The first stop of the keyboard passes over the lines above, and leads to no other place. */
async function skipToContent(page: Page, heading: RegExp): Promise<void> {
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  await tabTo(page, /^Skip to the content$/);
  await page.keyboard.press('Enter');
  await goesOnAt(page, heading);
}

async function answerUntilHeatOff(page: Page): Promise<void> {
  const prompts = page.getByRole('region', { name: 'Prompts' });
  const attention = prompts.getByRole('button', { name: 'I am at the still' });
  const heatOff = prompts.getByRole('alert').filter({ hasText: 'change the receiver' });
  await page.addLocatorHandler(attention, () => page.keyboard.press('a'));
  await heatOff.waitFor({ timeout: 120_000 });
  await look(page, 'watch with a prompt');
  await tabTo(page, /^Acknowledge: .*change the receiver/);
  await page.keyboard.press('Enter');
  await heatOff.waitFor({ state: 'detached' });
  // Its key would land in the fields that are typed into from here on.
  await page.removeLocatorHandler(attention);
}

async function markByKeys(page: Page): Promise<void> {
  await page.keyboard.press('o');
  await page.locator('button[aria-pressed=true]').filter({ hasText: 'off' }).waitFor();
  await page.keyboard.press('r');
  await page.getByRole('dialog').waitFor();
  await look(page, 'receiver changed');
  await page.keyboard.type('31');
  await page.keyboard.press('Enter');
  // As a person does, who sees the dialog go before the next key.
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.keyboard.press('n');
  await page.getByLabel('What did you see or do?').waitFor();
  await page.keyboard.type('The class guessed 40 mL.');
  await tabTo(page, /^Keep note$/);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /Undo “The class/ }).waitFor();
  await page.keyboard.press('u');
  await page.getByRole('button', { name: /Undo “Receiver/ }).waitFor();
}

/** The smallest letter and the head's figures, as shares of the screen's height. */
async function classroom(page: Page): Promise<void> {
  await tabTo(page, /^Classroom view$/);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Leave' }).waitFor();
  await look(page, 'classroom');
  const shares = await letterShares(page);
  expect(shares.least).toBeGreaterThanOrEqual(0.043);
  expect(shares.head).toBeGreaterThanOrEqual(0.15);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Leave' }).waitFor({ state: 'detached' });
}

async function stopByKeyboard(page: Page): Promise<void> {
  await tabTo(page, /^Stop …$/);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  await look(page, 'stop');
  await tabTo(page, /^Stop recording$/);
  await page.keyboard.press('Enter');
  await runIsSaved(page);
  await goesOnAt(page, /^This run ended/);
}

async function booksAndBack(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Books', exact: true, disabled: false }).waitFor();
  await tabTo(page, /^Books$/);
  await page.keyboard.press('Enter');
  await goesOnAt(page, /^Books of/);
  await tabTo(page, /^Back to the run$/);
  await page.keyboard.press('Enter');
  await goesOnAt(page, /^This run ended/);
}

async function lookBack(page: Page): Promise<void> {
  await tabTo(page, /^Look back$/);
  await page.keyboard.press('Enter');
  await page.getByRole('list', { name: 'Runs, newest first' }).waitFor();
  await goesOnAt(page, /^Look back$/);
  await skipToContent(page, /^Look back$/);
  await look(page, 'library');
  await tabTo(page, /^Replay /);
  await page.keyboard.press('Enter');
  await page.getByRole('region', { name: 'Replay' }).waitFor({ timeout: 60_000 });
  await look(page, 'replay');
}

function hoursOf(saved: string): number {
  const [hours = 0, minutes = 0, seconds = 0] = (/\d+:\d+:\d+/.exec(saved)?.[0] ?? '')
    .split(':')
    .map(Number);
  return hours + minutes / 60 + seconds / 3600;
}
