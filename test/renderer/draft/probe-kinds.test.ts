import { expect, test } from 'vitest';
import { sensorToleranceK } from '#shared-core';
import { probeKinds } from '../../../renderer/draft/probe-kinds.ts';

test('the uncertainty of a probe’s kind is its limits of error at 80 °C over √3, to the hundredth', () => {
  const limitsK = {
    digital: sensorToleranceK({ kind: 'one-wire' }, 80),
    'platinum-a': sensorToleranceK({ kind: 'platinum', toleranceClass: 'A' }, 80),
    'platinum-b': sensorToleranceK({ kind: 'platinum', toleranceClass: 'B' }, 80),
    thermocouple: sensorToleranceK({ kind: 'thermocouple', type: 'K', toleranceClass: 1 }, 80),
  };
  const expected = Object.entries(limitsK).map(([kind, limitK]) => [
    kind,
    Number((limitK / Math.sqrt(3)).toFixed(2)),
  ]);
  const stated = Object.entries(probeKinds).map(([kind, facts]) => [
    kind,
    facts.standardUncertaintyK,
  ]);
  expect(stated).toEqual(expected);
  expect(Object.fromEntries(stated)).toEqual({
    digital: 0.29,
    'platinum-a': 0.18,
    'platinum-b': 0.4,
    thermocouple: 0.87,
  });
});
