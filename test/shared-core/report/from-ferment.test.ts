import { expect, test } from 'vitest';
import { fermentYield } from '../../../shared-core/bookkeeping/ferment-yield.ts';
import type { FromFerment } from '../../../shared-core/bookkeeping/from-ferment.ts';
import { mutedColours } from '../../../shared-core/figures/colours.ts';
import { stepsFigure } from '../../../shared-core/figures/steps-figure.ts';
import { massesFigure } from '../../../shared-core/report/ferment-steps.ts';
import {
  fromFermentFigure,
  fromFermentTable,
} from '../../../shared-core/report/from-ferment-blocks.ts';
import { pearOrigin } from '../../support/pear-origin.ts';
import { printedBlocks } from './support/printed-page.ts';

const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
const derived = (value: number, standardUncertainty: number) => ({
  ...about(value, standardUncertainty),
  budget: { lines: [], combinedStandardUncertainty: standardUncertainty },
});
const known: FromFerment = {
  origin: pearOrigin,
  sugarG: about(50, 1),
  mostG: about(25.6, 0.5),
  practiceG: about(24.2, 0.5),
  byLogG: about(23.7, 0.6),
  chargedG: about(23.5, 0.4),
  collectedG: about(21.3, 0.4),
  isCollectedWhole: true,
  fermentPercent: derived(92.6, 2.5),
  yields: fermentYield({
    sugarG: about(50, 0),
    fermentEthanolG: about(20, 0),
    productEthanolG: about(15, 0),
  }),
};

test('from sugar to distillate each step has its mass, its share of the most, and how it is known', () => {
  // 20 g and 15 g of 25.57 g; 15 g of 20 g.
  expect(printedBlocks([fromFermentTable(known)])).toEqual([
    '[From sugar to distillate (±: k = 2)]',
    'Step | Mass → | Of the most → | How it is known',
    'Sugar of this charge | (50.0~±~2.0)~g | – | of the ferment “Pear”, as it began',
    'Ethanol at most | (25.6~±~1.0)~g | – | Gay-Lussac’s equation',
    'Ethanol expected | (24.2~±~1.0)~g | – | as ferments in practice do',
    'Ethanol in the ferment | (23.7~±~1.2)~g | (92.6~±~5.0)~% | its log: 8.5 % vol, nine times in ten 8.1 to 8.9',
    'Ethanol charged | (23.50~±~0.80)~g | (78.21~±~0.00)~% | volume and strength of the charge',
    'Ethanol collected | (21.30~±~0.80)~g | (58.66~±~0.00)~% | the cuts; (75.00~±~0.00)~% of what was charged',
  ]);
});

test('what is not known is called so', () => {
  const unknown = {
    ...known,
    sugarG: null,
    mostG: null,
    practiceG: null,
    collectedG: null,
    fermentPercent: null,
    yields: null,
  };
  expect(printedBlocks([fromFermentTable(unknown)]).slice(2)).toEqual([
    'Sugar of this charge | not known | – | of the ferment “Pear”, as it began',
    'Ethanol at most | not known | – | Gay-Lussac’s equation',
    'Ethanol expected | not known | – | as ferments in practice do',
    'Ethanol in the ferment | (23.7~±~1.2)~g | – | its log: 8.5 % vol, nine times in ten 8.1 to 8.9',
    'Ethanol charged | (23.50~±~0.80)~g | – | volume and strength of the charge',
    'Ethanol collected | not measured | – | –',
  ]);
});

test('the steps are drawn one under the other, without those that are not known', () => {
  const named = (from: FromFerment) =>
    [
      'Sugar',
      'Ethanol at most',
      'Ethanol expected',
      'Ethanol in the ferment',
      'Ethanol charged',
      'Ethanol collected',
    ].filter((name) =>
      fromFermentFigure(from)?.shapes.some((shape) => shape.kind === 'text' && shape.text === name),
    );
  expect(named(known)).toHaveLength(6);
  expect(named({ ...known, sugarG: null, mostG: null, practiceG: null })).toEqual([
    'Ethanol in the ferment',
    'Ethanol charged',
    'Ethanol collected',
  ]);
  expect(fromFermentFigure(null)).toBeNull();
});

test('a mass is drawn with whiskers over k = 2, none below nothing, each in a paint of its own', () => {
  const { sand, cyan } = mutedColours;
  const masses = [
    { name: 'Sugar', massG: about(10, 7) },
    { name: 'Ethanol', massG: about(5, 1) },
  ];
  expect(massesFigure(masses, 'Mass / g')).toEqual(
    stepsFigure(
      [
        {
          name: 'Sugar',
          grams: 10,
          low: 0,
          high: 24,
          words: '(10\u00a0±\u00a014)\u00a0g',
          colour: sand,
          texture: 'dots',
        },
        {
          name: 'Ethanol',
          grams: 5,
          low: 3,
          high: 7,
          words: '(5.0\u00a0±\u00a02.0)\u00a0g',
          colour: cyan,
          texture: 'level',
        },
      ],
      'Mass / g',
    ),
  );
});
