import { expect, test } from 'vitest';
import { proofBlocks } from '../../../shared-core/report/proof-blocks.ts';
import type { RunInput } from '../../../shared-core/run/run-input.ts';
import { mark } from '../exercises/support/plain-study.ts';
import { printedBlocks } from './support/printed-page.ts';

const burned = (timeS: number, cut: number, confirmed: readonly string[]): RunInput =>
  mark(timeS, {
    type: 'proof-burned',
    cut,
    volumeMl: 1,
    seen: cut === 1 ? 'burned-away' : 'did-not-burn',
    role: 'teacher',
    confirmed: [...confirmed],
  });

test('samples burned stand row by row, what was confirmed once, an unknown condition by its name', () => {
  const inputs = [burned(10, 1, ['no-such-condition']), burned(20, 2, ['no-such-condition'])];
  expect(printedBlocks(proofBlocks({ inputs }))).toEqual([
    '## Proof by burning a sample',
    '[Samples lit after the run]',
    'From | Volume → | It | Done by',
    'Cut 1 | 1.0 mL | burned away | teacher',
    'Cut 2 | 1.0 mL | did not burn | teacher',
    'That a sample burns shows that it holds much ethanol, and nothing else. How much, only a measurement of strength tells.',
    'Confirmed before it was lit:',
    '- no-such-condition',
  ]);
});

test('a run without such a sample says nothing of it', () => {
  expect(proofBlocks({ inputs: [mark(10, { type: 'heat-on' })] })).toEqual([]);
});
