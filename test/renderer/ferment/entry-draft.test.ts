import { describe, expect, test } from 'vitest';
import { bubbleRate } from '../../../renderer/ferment/bubble-rate.ts';
import { emptyEntry, readFromDraft } from '../../../renderer/ferment/entry-draft.ts';
import { finishWords } from '../../../renderer/ferment/ferment-words.ts';

const now = new Date(2026, 4, 2, 8, 30);

describe('an entry as typed', () => {
  test('is read with either decimal sign, now where no moment was chosen', () => {
    const read = readFromDraft({ ...emptyEntry, gravity: '1,052', temperatureC: '24.5' }, now);
    expect(read).toMatchObject({
      ok: true,
      value: {
        atIso: new Date(2026, 4, 2, 8, 30).toISOString(),
        gravity: { indicated: 1.052, temperatureC: 20 },
        temperatureC: 24.5,
        massG: null,
      },
    });
  });

  test.each([
    ['nothing', {}, { form: 'Nothing was entered yet.' }],
    ['a gravity in kg/m³', { gravity: '1052' }, { gravity: 'A gravity from 0.97 to 1.2, please.' }],
    ['words', { massG: 'much' }, { massG: 'A number, please, or nothing.' }],
    ['a pH of 17', { ph: '17' }, { ph: 'A pH of a ferment from 1 to 10, please.' }],
    ['no moment', { at: '', massG: '1500' }, { at: 'A day and a time, please.' }],
  ])('with %s is refused at its field in plain words', (_, typed, problems) => {
    const read = readFromDraft({ ...emptyEntry, ...typed }, now);
    expect(read.ok ? {} : read.error).toMatchObject(problems);
  });

  test('a refractometer without a gravity is refused at its field', () => {
    const read = readFromDraft({ ...emptyEntry, refractometerPercent: '8' }, now);
    expect(read.ok ? {} : read.error.refractometerPercent).toContain('read the gravity too');
  });

  test('taps give bubbles a minute from the fourth on', () => {
    expect(bubbleRate([0, 2000, 4000])).toBeNull();
    expect(bubbleRate([0, 2000, 4000, 6000])).toBe(30);
  });

  test('an end that nobody can plan by is too early to tell', () => {
    const at = (finishH: { low: number; value: number; high: number } | null) =>
      finishWords({ state: 'working', finishH }, '2026-05-01T08:00:00.000Z');
    expect(at(null)).toBe('too early to tell');
    expect(at({ low: 50, value: 200, high: 900 })).toBe('too early to tell');
    expect(at({ low: 100, value: 120, high: 150 })).toMatch(/^about .*, from .* to /);
  });
});
