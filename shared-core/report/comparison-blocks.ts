import { overlayFigure } from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import { type ColumnKind, kindWords, originOf, runKind } from '../study/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { intervalWords, measuredWords } from '../wording/index.ts';
import { classBlocks } from './class-blocks.ts';
import type { Block } from './document.ts';
import { leastWords } from './least-words.ts';

/** More columns than this do not fit on a page: a class has a row a run. */
export const mostSideBySide = 6;

/** Runs side by side, e.g. simple and fractional; nothing for a single run. */
export function comparisonBlocks(studies: readonly RunStudy[]): readonly Block[] {
  if (studies.length > mostSideBySide) return classBlocks(studies);
  const drawing = overlayFigure(studies);
  if (drawing === null) return [];
  const rows: readonly (readonly [string, (study: RunStudy) => string])[] = [
    ['Kind', ({ settings }) => kindWords(settings)],
    ['Readings', originOf],
    ['Plateau', ({ plateau }) => (plateau === null ? 'none' : measuredWords(plateau.mean, '°C'))],
    [
      'Plateau at 101.325 kPa',
      ({ plateau }) => (plateau === null ? '–' : measuredWords(plateau.standard, '°C')),
    ],
    [
      'Scatter on the plateau',
      ({ plateau }) =>
        plateau === null ? '–' : `${plateau.statistics.standardDeviationK.toFixed(2)}\u00a0K`,
    ],
    [
      'Mean strength of the cuts measured',
      ({ product }) => (product === null ? '–' : intervalWords(product.strengthAbv, '% vol')),
    ],
    [
      'Ethanol recovered',
      ({ books }) =>
        books.balance === null
          ? '–'
          : leastWords(
              measuredWords(books.balance.ethanol.recoveryPercent, '%'),
              books.unmeasuredCuts.length === 0,
            ),
    ],
    [
      'Ethanol accounted for',
      ({ books }) =>
        books.balance?.ethanol.closurePercent
          ? measuredWords(books.balance.ethanol.closurePercent, '%')
          : '–',
    ],
    [
      'Apparent stages',
      ({ plates }) => {
        const stepped = plates?.plates.stepped;
        if (stepped?.value == null || stepped.low === null) return '–';
        if (stepped.high === null) return `at least ${stepped.low.toFixed(1)}`;
        return intervalWords({ value: stepped.value, low: stepped.low, high: stepped.high }, '');
      },
    ],
    ['Main fraction', ({ mainFraction }) => mainFraction ?? 'not known'],
  ];
  return [
    { kind: 'heading', level: 1, text: 'The runs side by side' },
    {
      kind: 'figure',
      drawing,
      caption: 'Head temperatures, counted from the arrival of vapour.',
    },
    {
      kind: 'table',
      caption: 'Comparison (±: k = 2)',
      columns: [
        { title: '', align: 'start', width: 3 },
        ...studies.map(
          (_, index) => ({ title: `Run ${index + 1}`, align: 'end', width: 3 }) as const,
        ),
      ],
      rows: rows.map(([name, words]) => [name, ...studies.map(words)]),
    },
    ...kindsCompared(studies),
  ];
}

/** Simple against fractional in a sentence, where there are runs of both kinds with measured cuts. */
function kindsCompared(studies: readonly RunStudy[]): readonly Block[] {
  const ofKind = (kind: ColumnKind) =>
    studies.flatMap(({ settings, product, books }, index) =>
      runKind(settings) === kind &&
      product !== null &&
      books.balance !== null &&
      books.unmeasuredCuts.length === 0
        ? [{ number: index + 1, strengthAbv: product.strengthAbv, ...books.balance.ethanol }]
        : [],
    );
  const [simple, fractional] = [ofKind('simple')[0], ofKind('fractional')[0]];
  if (simple === undefined || fractional === undefined) return [];
  const gain = fractional.strengthAbv.value - simple.strengthAbv.value;
  const gainReach = Math.hypot(halfOf(fractional.strengthAbv), halfOf(simple.strengthAbv));
  const change = fractional.recoveryPercent.value - simple.recoveryPercent.value;
  const signed = (value: number) => (value < 0 ? '−' : '+') + Math.abs(value).toFixed(1);
  const text =
    `Simple (run ${simple.number}) gave ${intervalWords(simple.strengthAbv, '% vol')}, fractional (run ${fractional.number}) ` +
    `${intervalWords(fractional.strengthAbv, '% vol')}: (${signed(gain)}\u00a0±\u00a0${gainReach.toFixed(1)})\u00a0% vol by the column, with ` +
    `${signed(change)}\u00a0% of the charged ethanol recovered. Strength is only comparable for a like share of the charge distilled.`;
  return [{ kind: 'paragraph', text }];
}

const halfOf = ({ low, high }: Estimate) => (high - low) / 2;
