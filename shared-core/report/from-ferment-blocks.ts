import type { FromFerment, Quantity } from '../bookkeeping/index.ts';
import type { Drawing } from '../figures/index.ts';
import { asGiven, measuredWords, numberWords, say, worded } from '../wording/index.ts';
import type { DocumentTable } from './document.ts';
import { massesFigure } from './ferment-steps.ts';
import { leastWords } from './least-words.ts';

/** From sugar to distillate, step by step; the strength by the log with the interval of its judge. */
export function fromFermentTable(from: FromFerment): DocumentTable {
  const { origin, sugarG, mostG, practiceG, byLogG, chargedG, collectedG, yields } = from;
  const collected = (words: string) => leastWords(words, from.isCollectedWhole);
  const { low, value, high } = origin.strengthAbv;
  const mass = (quantity: Quantity | null) =>
    quantity === null ? worded('not known') : measuredWords(quantity, 'g');
  const share = (quantity: Quantity | null | undefined) =>
    quantity == null ? '–' : measuredWords(quantity, '%');
  const column = (title: string, width: number, align: 'start' | 'end' = 'end') => ({
    title,
    width,
    align,
  });
  return {
    kind: 'table',
    caption: worded('From sugar to distillate (±: k = 2)'),
    columns: [
      column(worded('Step'), 3, 'start'),
      column(worded('Mass'), 2.4),
      column(worded('Of the most'), 2.4),
      column(worded('How it is known'), 4.4, 'start'),
    ],
    rows: [
      [
        worded('Sugar of this charge'),
        mass(sugarG),
        '–',
        worded('of the ferment “{name}”, as it began', { name: asGiven(origin.name) }),
      ],
      [worded('Ethanol at most'), mass(mostG), '–', worded('Gay-Lussac’s equation')],
      [worded('Ethanol expected'), mass(practiceG), '–', worded('as ferments in practice do')],
      [
        worded('Ethanol in the ferment'),
        mass(byLogG),
        share(from.fermentPercent),
        worded('its log: {value} % vol, nine times in ten {low} to {high}', {
          value: numberWords(value, 1),
          low: numberWords(low, 1),
          high: numberWords(high, 1),
        }),
      ],
      [
        worded('Ethanol charged'),
        mass(chargedG),
        share(yields?.fermentationPercent),
        worded('volume and strength of the charge'),
      ],
      [
        worded('Ethanol collected'),
        collectedG === null ? worded('not measured') : collected(mass(collectedG)),
        yields === null ? '–' : collected(share(yields.overallPercent)),
        yields === null
          ? '–'
          : worded('the cuts; {percent} of what was charged', {
              percent: collected(measuredWords(yields.distillationPercent, '%')),
            }),
      ],
    ],
  };
}

/**
 * The way from sugar to distillate as bars with whiskers, one a step.
 *
 * @param from a charge's origin with what is known of each step [g]; null for a charge of another kind
 * @returns the drawing; null where there is nothing to draw
 *
 * Source: this project's drawing; no formula.
 * @example
 * fromFermentFigure(null) // => null
 */
export function fromFermentFigure(from: FromFerment | null): Drawing | null {
  if (from === null) return null;
  const steps: readonly (readonly [string, Quantity | null])[] = [
    [say('Sugar'), from.sugarG],
    [say('Ethanol at most'), from.mostG],
    [say('Ethanol expected'), from.practiceG],
    [say('Ethanol in the ferment'), from.byLogG],
    [say('Ethanol charged'), from.chargedG],
    [
      from.isCollectedWhole ? say('Ethanol collected') : say('Ethanol in the cuts measured'),
      from.collectedG,
    ],
  ];
  return massesFigure(
    steps.flatMap(([name, massG]) => (massG === null ? [] : [{ name, massG }])),
    say('Mass / g'),
  );
}
