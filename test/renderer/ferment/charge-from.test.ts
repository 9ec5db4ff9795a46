import { expect, test } from 'vitest';
import { chargeDoubtHints } from '../../../renderer/draft/charge-doubt-hints.ts';
import {
  settingsFromDraft,
  strengthDoubtAbv,
} from '../../../renderer/draft/settings-from-draft.ts';
import { chargeFrom } from '../../../renderer/ferment/charge-from.ts';
import { firstDraft } from '../../../renderer/stores/index.ts';
import { pearOrigin } from '../../support/pear-origin.ts';

const weighedOnly = {
  ...pearOrigin,
  strengthAbv: { low: 6.5, value: 8.5, high: 10.5 },
  sugarGPerL: null,
};
const words = {
  quantity: (value: number, digits: number, unit: string) => `${value.toFixed(digits)} ${unit}`,
};

test('a charge from a ferment has the doubt of its judge, as the form shows it, and none of the charge before', () => {
  const before = {
    ...firstDraft,
    pressureFrom: 'unknown',
    chargeDoubtMl: '1',
    chargeDoubtAbv: '0.2',
  } as const;
  const draft = { ...before, ...chargeFrom(weighedOnly, 350, before, ',') };
  const settings = settingsFromDraft(draft, ',');
  // Half of 4 % vol is 1.645 standard uncertainties.
  const doubtAbv = 2 / 1.645;
  expect(settings.ok && settings.value.charge).toEqual({
    volumeMl: 350,
    strengthAbv: 8.5,
    standardUncertaintyAbv: expect.closeTo(doubtAbv, 9),
  });
  const shown = (of: typeof draft) => chargeDoubtHints('350', words, strengthDoubtAbv(of)).strength;
  expect([shown(draft), shown({ ...draft, chargeStrengthAbv: '9' })]).toEqual([
    'Standard uncertainty (k = 1); empty: 1.2 % vol.',
    'Standard uncertainty (k = 1); empty: 0.5 % vol.',
  ]);
});
