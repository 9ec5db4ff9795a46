import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { takeScreenshots, windowSizes } from './open-window.ts';

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
);
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe-core finds wrong on the page as it is now: one line each. */
export async function axeViolations(page: Page): Promise<readonly string[]> {
  if (await page.evaluate('typeof axe === "undefined"')) await page.evaluate(axeSource);
  return page.evaluate(`axe.run(document, { runOnly: ${JSON.stringify(rules)} }).then(
    ({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html.slice(0, 120)),
  )`);
}

/** Controls in sight that are lower or narrower than 44 CSS pixels, each by its words. */
export function smallTargets(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const controls = document.querySelectorAll<HTMLElement>(
      'button, a[href], summary, .choice, .check, input:not([type=radio]):not([type=checkbox]), textarea, select',
    );
    return [...controls].flatMap((control) => {
      const { width, height } = control.getBoundingClientRect();
      const isInSight = width > 0 && height > 0 && !control.classList.contains('skip');
      const isLarge = width >= 43.5 && height >= 43.5;
      if (!isInSight || isLarge || control.closest('p') !== null) return [];
      return [`${control.textContent?.slice(0, 40)}: ${width.toFixed(0)} × ${height.toFixed(0)}`];
    });
  });
}

/** Presses Tab until a control with these words has the focus; fails after a hundred. */
export async function tabTo(page: Page, words: RegExp): Promise<void> {
  for (let press = 0; press < 100; press += 1) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const { activeElement } = document;
      const label = activeElement?.getAttribute('aria-label');
      return label ?? activeElement?.closest('label')?.textContent ?? activeElement?.textContent;
    });
    if (words.test((focused ?? '').trim())) return;
  }
  throw new Error(`Tab never reached ${words}.`);
}

/** Starts counting what a screen reader would say by itself: every change in a live region. */
export async function countAnnouncements(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.evaluate(() => {
    const said: string[] = [];
    const last = new Map<Element, string>();
    const look = () => {
      for (const region of document.querySelectorAll('[role=status], [role=alert]')) {
        const text = (region.textContent ?? '').trim();
        if (text !== '' && last.get(region) !== text) said.push(text);
        last.set(region, text);
      }
    };
    look();
    said.length = 0;
    new MutationObserver(look).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
    });
    Object.assign(window, { said });
  });
  return () => page.evaluate('window.said');
}

/** Every theme without an axe violation, targets large enough, nothing wider than a phone; and its pictures. */
export async function expectSoundScreen(page: Page, name: string): Promise<void> {
  for (const theme of ['light', 'dark', 'projector']) {
    await page.evaluate((chosen) => {
      document.documentElement.dataset.theme = chosen;
    }, theme);
    expect(await axeViolations(page), `${name}, ${theme}`).toEqual([]);
    if (theme === 'dark') await takeScreenshots(page, `${name}-dark`);
  }
  await page.evaluate(() => {
    document.documentElement.dataset.theme = 'light';
  });
  expect(await smallTargets(page), name).toEqual([]);
  await page.setViewportSize(windowSizes.phone);
  const pastPx = await page.evaluate(
    () => document.documentElement.scrollHeight - document.documentElement.clientHeight,
  );
  expect(pastPx, `${name}: the window itself does not scroll`).toBeLessThanOrEqual(0);
  const overflowPx = await page.evaluate(() => {
    const place = document.getElementById('place');
    return place ? place.scrollWidth - place.clientWidth : 0;
  });
  expect(overflowPx, `${name} on a phone`).toBeLessThanOrEqual(1);
  await page.setViewportSize(windowSizes.projector);
  await takeScreenshots(page, name);
}

/** Unfolds what is done with a run of the library now and then. */
export async function unfoldMore(page: Page, runName: string | RegExp): Promise<void> {
  const name = typeof runName === 'string' ? `More for ${runName}` : runName;
  const more = page.getByRole('button', { name });
  if ((await more.getAttribute('aria-expanded')) === 'false') await more.click();
}
