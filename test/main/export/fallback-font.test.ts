import { describe, expect, test } from 'vitest';
import {
  fallbackFont,
  piecesByLetters,
  writable,
} from '../../../main/export/print/fallback-font.ts';
import { keptBlock } from '../../../main/export/print/kept-block.ts';

const every = () => true;
const none = () => false;

describe('letters that the report’s typeface lacks', () => {
  test('are drawn in a font of the system, and nothing else is', () => {
    expect(piecesByLetters('Birne 梨汁, ученики')).toEqual(['Birne ', '梨汁', ', ученики']);
    expect(fallbackFont('Birne, ученики, στήλη', every)).toBe(null);
    expect(fallbackFont('梨汁', (file) => file.includes('Droid'))?.file).toMatch(/Droid/);
    expect(fallbackFont('배즙', every)).not.toBe(null);
  });

  test('leave a gap that says so where the system has no font for them; pictures are dropped', () => {
    expect(writable('Lauf 梨汁 3', none)).toBe('Lauf […] 3');
    expect(writable('Lauf 梨汁 3', every)).toBe('Lauf 梨汁 3');
    expect(writable('Lauf 🍐 3', none)).toBe('Lauf  3');
  });
});

test('in print no number leaves its unit, in text, list and table alike', () => {
  const kept = (text: string) => [
    keptBlock({ kind: 'paragraph', text }),
    keptBlock({ kind: 'list', ordered: false, items: [text] }),
    keptBlock({ kind: 'table', caption: text, columns: [], rows: [[text]] }),
  ];
  const all = JSON.stringify(
    kept('At 54.9 % vol, 45 s, 8.314 J/(mol K), 83.1 °C (accept ±0.5 %), 3.9 stages'),
  );
  expect(all).not.toMatch(/\d [%sJ°]|% vol|accept ±/);
});

test('a symbol stays on the line of its value', () => {
  const [first, second] = [
    'vapour pressure: 40.7 kJ/mol. R = 8.314 J/(mol K)',
    'the run had = 3',
  ].map((text) => JSON.stringify(keptBlock({ kind: 'paragraph', text })));
  expect(first).toMatch(/\. R\u00a0=\u00a08\.314\u00a0J/);
  expect(second).toContain('had =\u00a03');
});

test('a range of numbers stays on one line of a printed page', () => {
  expect(keptBlock({ kind: 'paragraph', text: 'vapour of 78–80 % vol – stronger' })).toEqual({
    kind: 'paragraph',
    text: 'vapour of 78–\ufeff80\u00a0%\u00a0vol – stronger',
  });
});
