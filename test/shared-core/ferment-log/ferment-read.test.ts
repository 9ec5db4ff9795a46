import { describe, expect, test } from 'vitest';
import { fermentReadSchema } from '../../../shared-core/ferment-log/ferment-read.ts';
import { nothingRead } from '../../support/nothing-read.ts';

const nothing = { ...nothingRead, atIso: '2026-05-02T08:00:00.000Z' };
const gravity = { indicated: 1.02, temperatureC: 20 };

/** What is said to an entry, with where; nothing where it is taken. */
function refusals(entered: object): readonly string[] {
  const read = fermentReadSchema.safeParse({ ...nothing, ...entered });
  return read.success
    ? []
    : read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
}

describe('what was read of a ferment', () => {
  test('is something: one number, one treatment or a word of a note is enough', () => {
    expect(refusals({})).toEqual([': Nothing was entered yet']);
    expect(refusals({ note: '  \n' })).toEqual([': Nothing was entered yet']);
    const enough = [
      { gravity },
      { massG: 0 },
      { temperatureC: 0 },
      { bubblesPerMin: 0 },
      { ph: 3.4 },
      { treatments: ['settled'] },
      { note: 'smells of pears' },
    ];
    expect(enough.flatMap(refusals)).toEqual([]);
  });

  test('holds no refractometer alone, which tells nothing beside alcohol', () => {
    expect(refusals({ refractometerPercent: 8 })).toEqual([
      'refractometerPercent: A refractometer alone tells nothing of a ferment: read the gravity too, please',
    ]);
    expect(refusals({ refractometerPercent: 8, gravity })).toEqual([]);
  });

  test('lies between the ends that the refusal names, the ends included', () => {
    const ends = [
      { ph: 1 },
      { ph: 10 },
      { temperatureC: 60 },
      { massG: 1e7 },
      { gravity: { indicated: 0.97, temperatureC: 0 } },
      { gravity: { indicated: 1.2, temperatureC: 40 } },
    ];
    expect(ends.flatMap(refusals)).toEqual([]);
    expect([{ ph: 0.9 }, { temperatureC: 60.1 }, { ph: 'sour' }].flatMap(refusals)).toEqual([
      'ph: A pH of a ferment from 1 to 10, please',
      'temperatureC: A temperature of the ferment from 0 to 60 °C, please',
      'ph: A pH of a ferment from 1 to 10, please',
    ]);
  });
});
