import { expect, test } from 'vitest';
import { judgeBulb } from '../../../../shared-core/monitor/situation/bulb-doubt.ts';
import { factsOf } from '../words/facts.ts';

/** Held so far below the azeotrope [K]; null: not held. */
function doubt(lowestK: number | null, laterK: number | null, statedSdK: number) {
  const { scale, situation } = factsOf();
  const at = (belowK: number | null) => (belowK === null ? null : scale.azeotropeC - belowK);
  return judgeBulb(
    { ...situation, lowestLevelC: at(lowestK), lowestLaterC: at(laterK) },
    scale,
    statedSdK,
  );
}

test('a level below the azeotrope is doubted beyond a kelvin, and beyond three standard deviations of what was stated', () => {
  expect([
    doubt(0.99, null, 0.1),
    doubt(1.01, null, 0.1),
    doubt(1.49, null, 0.5),
    doubt(1.51, null, 0.5),
    doubt(null, null, 0.1),
  ]).toEqual([null, 'below-boiling', null, 'below-boiling', null]);
});

test('what only the first minutes showed is no doubt once they are over', () => {
  expect([doubt(5, null, 0.1), doubt(5, 0.5, 0.1), doubt(5, 2, 0.1)]).toEqual([
    'below-boiling',
    null,
    'below-boiling',
  ]);
});
