import { expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { createStatedDoubts } from '../../../../shared-core/monitor/conclude/stated-doubts.ts';
import { createLimitScale } from '../../../../shared-core/monitor/situation/limit-scale.ts';
import {
  statedPressureSdK,
  statedScaleSdK,
} from '../../../../shared-core/monitor/situation/scale-belief.ts';

test('the doubts are those of the air pressure and the limit as they are known now, and the same while nothing is told', () => {
  const limitScale = createLimitScale(defaultRunSettings);
  const doubts = createStatedDoubts(limitScale);
  const expected = () => ({
    statedSdK: statedScaleSdK(limitScale.settings(), limitScale.scale()),
    pressureSdK: statedPressureSdK(limitScale.settings(), limitScale.scale()),
  });
  const before = doubts();
  expect(before).toEqual(expected());
  expect(doubts()).toBe(before);
  limitScale.setPressure(88);
  expect(doubts()).toEqual(expected());
  expect(doubts().pressureSdK).toBeLessThan(before.pressureSdK);
  // So little that the scale stays what it was, and what is known of the pressure does not.
  limitScale.hearPressure(88);
  limitScale.setPressure(88.01);
  expect(doubts()).toEqual(expected());
});
