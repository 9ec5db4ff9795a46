import { expect, test } from 'vitest';
import { gainsSentence } from '../../../renderer/plan/gains-words.ts';

const gains = { asItIsS: 660, withStatedHeatS: 480, withBalanceS: 240, withPotProbeS: 640 };

test('one line tells how well the end will be known, and with each instrument that narrows it', () => {
  expect(gainsSentence({ ...gains, withPotProbeS: 540 })).toBe(
    'Half-way, the end of the main fraction will be known to ± 11 min; with a balance under the receiver ± 4 min, with the heat stated ± 8 min, with a probe in the pot ± 9 min.',
  );
});

test('an instrument that narrows nothing to the minute is not offered, nor a heat that is stated already', () => {
  expect(gainsSentence({ ...gains, withStatedHeatS: null })).toBe(
    'Half-way, the end of the main fraction will be known to ± 11 min; with a balance under the receiver ± 4 min.',
  );
  expect(gainsSentence({ ...gains, withStatedHeatS: 700, withBalanceS: 660 })).toBe(
    'Half-way, the end of the main fraction will be known to ± 11 min.',
  );
});
