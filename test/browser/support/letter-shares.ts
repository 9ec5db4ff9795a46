import type { Page } from 'playwright-core';

export interface LetterShares {
  readonly least: number;
  readonly head: number;
}

/** The smallest letter before the class and the head's figures, as shares of the screen's height. */
export function letterShares(page: Page): Promise<LetterShares> {
  return page.evaluate(() => {
    const share = (element: Element) =>
      Number.parseFloat(getComputedStyle(element).fontSize) / window.innerHeight;
    const letters = [...document.querySelectorAll('.classroom *')].filter(
      (element) =>
        element.closest('.unseen') === null &&
        [...element.childNodes].some(
          ({ nodeType, textContent }) => nodeType === 3 && textContent?.trim(),
        ),
    );
    // Figures of this typeface are 0.7 em high.
    const head = document.querySelector('.head-value');
    return { least: Math.min(...letters.map(share)), head: head ? 0.7 * share(head) : 0 };
  });
}
