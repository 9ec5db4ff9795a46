import type { Page } from 'playwright-core';

/** Words in sight that run over two lines, each with the text it stands in: nobody reads them at a glance. */
export function brokenWords(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const broken: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const text = node.textContent ?? '';
      // What devices say and where files lie has no places to break at.
      if (node.parentElement?.closest('code, pre') !== null) continue;
      for (const { 0: word, index } of text.matchAll(/\p{L}+/gu)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        // What is only read out is cut to a dot, and takes no line.
        const lines = [...range.getClientRects()].filter(({ width }) => width > 1);
        const isHidden = (node.parentElement?.clientWidth ?? 0) === 1;
        if (!isHidden && lines.length > 1) broken.push(`${word}: ${text}`);
      }
    }
    return broken;
  });
}
