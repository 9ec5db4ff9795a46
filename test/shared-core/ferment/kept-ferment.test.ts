import { describe, expect, test } from 'vitest';
import { booksOfRun } from '../../../shared-core/bookkeeping/books-of-run.ts';
import { distillingAdvice } from '../../../shared-core/ferment/distilling-advice.ts';
import { originOfFerment } from '../../../shared-core/ferment/origin-of-ferment.ts';
import { readingsOfFerment } from '../../../shared-core/ferment/readings-of-ferment.ts';
import type { FermentRead } from '../../../shared-core/ferment-log/ferment-read.ts';
import type { KeptFerment } from '../../../shared-core/ferment-log/kept-ferment.ts';
import { fermentFigure } from '../../../shared-core/figures/ferment-figure.ts';
import { defaultRunSettings } from '../../../shared-core/run/default-run-settings.ts';
import { runSettingsSchema } from '../../../shared-core/run/run-settings.ts';
import { nothingRead } from '../../support/nothing-read.ts';

const at = (hours: number) => new Date(Date.UTC(2026, 4, 1, 8 + hours)).toISOString();

function kept(
  reads: readonly Partial<FermentRead>[],
  withdrawn: readonly number[] = [],
): KeptFerment {
  return {
    fermentId: 'a',
    stated: { name: 'Pears', beganAtIso: at(0), volumeMl: 2000, sugarG: null, wentIn: 'pears' },
    corrections: [],
    entries: reads.map((read, index) => ({
      entryId: index + 1,
      keptAtIso: at(200),
      read: { ...nothingRead, treatments: [], atIso: at(24 * index), ...read },
      withdrawnAtIso: withdrawn.includes(index + 1) ? at(200) : null,
    })),
    unreadableLines: 0,
  };
}
const verdict = {
  state: 'finished',
  strengthAbv: { low: 8.2, value: 8.6, high: 9 },
  originalGravity: { low: 1.059, value: 1.06, high: 1.061 },
} as const;

describe('a ferment kept by hand', () => {
  test('its readings are in time order, at 20 °C, and without what was withdrawn', () => {
    const log = kept(
      [
        { gravity: { indicated: 1.05, temperatureC: 30 } },
        { gravity: { indicated: 1.2, temperatureC: 20 } },
        { massG: 1500, atIso: at(12), treatments: ['degassed'] },
      ],
      [2],
    );
    const [first, second, ...more] = readingsOfFerment(log);
    expect(more).toEqual([]);
    // Check value: +0.0023 at 30 °C for a hydrometer made for 20 °C (water density by OIML R 22, glass 25e-6/K).
    expect(first?.gravity).toBeCloseTo(1.0524, 3);
    expect(second).toMatchObject({ timeH: 12, massG: 1500, isDegassed: true, gravity: null });
  });

  test('is ready for the still only when it ended and each treatment was entered and stands', () => {
    const treated = kept([{ treatments: ['degassed', 'settled'] }, { treatments: ['strained'] }]);
    expect(distillingAdvice(treated, verdict)).toEqual({
      isGo: true,
      unmet: [],
      leastPotMl: 2 * treated.stated.volumeMl,
    });
    expect(distillingAdvice(treated, { state: 'stuck' }).unmet).toEqual(['ended']);
    const taken = kept(
      [{ treatments: ['degassed', 'settled'] }, { treatments: ['strained'] }],
      [2],
    );
    expect(distillingAdvice(taken, verdict)).toMatchObject({ isGo: false, unmet: ['strained'] });
  });

  test('its sugar reaches the yield of the run with its doubt, for the volume that was charged', () => {
    const ferment = originOfFerment(kept([]), verdict, at(220));
    // Extract of gravity 1.060: 155.9 g/L (national wine-extract table), less 19 g/L that is no sugar.
    expect(ferment?.sugarGPerL?.value).toBeCloseTo(155.9 - 19, 0);
    const settings = runSettingsSchema.parse({ ...defaultRunSettings, ferment });
    const { sugarG, assumptions } = booksOfRun({
      settings: { ...settings, charge: { ...settings.charge, volumeMl: 500 } },
      inputs: [],
      verdicts: { estimates: [], events: [] },
      endS: 0,
    });
    expect(sugarG?.value).toBeCloseTo(0.5 * (ferment?.sugarGPerL?.value ?? 0), 6);
    expect(sugarG?.standardUncertainty).toBeGreaterThan(3);
    expect(assumptions.join()).toContain('The sugar is that of the ferment “Pears”');
  });

  test('without a known strength there is no origin, and settings without one open as ever', () => {
    expect(originOfFerment(kept([]), { ...verdict, strengthAbv: null }, at(1))).toBeNull();
    expect(runSettingsSchema.parse(defaultRunSettings)).toEqual(defaultRunSettings);
  });

  test('the figure says in words what it draws, and is none without readings', () => {
    const readings = readingsOfFerment(
      kept([
        { gravity: { indicated: 1.06, temperatureC: 20 }, temperatureC: 24 },
        { gravity: { indicated: 1.02, temperatureC: 20 }, bubblesPerMin: 12 },
      ]),
    );
    const drawing = fermentFigure({ readings, endGravity: { low: 0.994, high: 0.998 } });
    expect(drawing?.altText).toBe(
      'The ferment over 3 days. Gravity: 2 readings, first 1.060, last 1.020, 1.020 to 1.060; shaded from 0.994 to 0.998. Temperature: 1 reading, first 24.0 °C, last 24.0 °C, 24.0 °C to 24.0 °C; shaded from 25.0 °C to 34.0 °C. Bubbles a minute: 1 reading, first 12, last 12, 12 to 12.',
    );
    expect(fermentFigure({ readings: [], endGravity: null })).toBeNull();
  });
});
