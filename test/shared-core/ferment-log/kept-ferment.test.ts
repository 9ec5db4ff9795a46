import { describe, expect, test } from 'vitest';
import { statedFermentSchema } from '../../../shared-core/ferment-log/kept-ferment.ts';

const stated = {
  name: 'Pears',
  beganAtIso: '2026-05-01T08:00:00.000Z',
  volumeMl: 2000,
  sugarG: { low: 180, high: 220 },
  wentIn: 'pear juice',
};

function refusals(changed: object): readonly string[] {
  const read = statedFermentSchema.safeParse({ ...stated, ...changed });
  return read.success ? [] : read.error.issues.map(({ message }) => message);
}

describe('what is stated of a ferment as it begins', () => {
  test('has its sugar with the lower end first, or one number twice, or none', () => {
    expect(refusals({ sugarG: { low: 220, high: 180 } })).toEqual(['The lower end first, please']);
    expect(refusals({ sugarG: { low: 200, high: 200 } })).toEqual([]);
    expect(refusals({ sugarG: null })).toEqual([]);
  });

  test('has a volume, more than none, and a name that is not blank', () => {
    expect([{ volumeMl: 0 }, { volumeMl: '2 L' }, { name: '  ' }].flatMap(refusals)).toEqual([
      'A volume in mL, more than 0',
      'A volume in mL, more than 0',
      'A name, please',
    ]);
    expect(refusals({ volumeMl: 1e7 })).toEqual([]);
  });
});
