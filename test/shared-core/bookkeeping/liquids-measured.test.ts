import { describe, expect, test } from 'vitest';
import {
  benchUncertainty,
  booksOfRun,
  createMonitor,
  defaultRunSettings,
  densityKgPerM3,
  isBookMark,
  type Mark,
  type MarkBody,
  markBodySchema,
  massFractionFromAlcoholByVolume,
  type RunInput,
} from '#shared-core';
import type { UncertaintyField } from '../../../shared-core/bookkeeping/bench-uncertainty.ts';
import {
  liquidsMeasured,
  strengthByMark,
} from '../../../shared-core/bookkeeping/liquids-measured.ts';
import { measuredStrength } from '../../../shared-core/bookkeeping/strength-measurement.ts';
import { readMarkCell, writeMarkCell } from '../../../shared-core/csv/mark-cell.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

const marks = (bodies: readonly MarkBody[], timeS = 3600): readonly Mark[] =>
  bodies.map((mark, index) => ({ kind: 'mark', timeS, markId: index + 1, mark }));

const settings = {
  ...defaultRunSettings,
  charge: { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0.2 },
};
const books = (inputs: readonly RunInput[]) =>
  booksOfRun({ settings, inputs, verdicts: { estimates: [], events: [] }, endS: 3600 });

/** Where a mark keeps the uncertainty of which of its readings. */
const markUncertainties: Readonly<
  Partial<Record<MarkBody['type'], Readonly<Record<string, string>>>>
> = {
  'liquid-volume': { volumeUncertaintyMl: 'volumeMl', temperatureUncertaintyK: 'temperatureC' },
  'liquid-mass': { massUncertaintyG: 'massG' },
  'liquid-strength': {
    strengthUncertaintyAbv: 'alcoholByVolume',
    temperatureUncertaintyK: 'temperatureC',
  },
  'liquid-density': {
    densityUncertaintyKgPerM3: 'densityKgPerM3',
    temperatureUncertaintyK: 'temperatureC',
  },
  'liquid-pycnometer': {
    weighingUncertaintyG: 'withSampleG',
    temperatureUncertaintyK: 'sampleTemperatureC',
  },
  'sample-weighed': {
    massUncertaintyG: 'massG',
    volumeUncertaintyMl: 'volumeMl',
    temperatureUncertaintyK: 'temperatureC',
  },
};

const bookMarks: readonly MarkBody[] = [
  { type: 'liquid-volume', liquid: 'residue', volumeMl: 318.5, temperatureC: 31 },
  { type: 'liquid-mass', liquid: 'residue', massG: 316.4 },
  { type: 'liquid-strength', liquid: 'cut-2', alcoholByVolume: 88.5, temperatureC: null },
  { type: 'liquid-density', liquid: 'residue', densityKgPerM3: 997.1, temperatureC: 22.5 },
  {
    type: 'liquid-pycnometer',
    liquid: 'hold-up',
    emptyG: 30,
    withWaterG: 79.85,
    withSampleG: 73,
    waterTemperatureC: 20,
    sampleTemperatureC: 21,
  },
  { type: 'sample-weighed', liquid: 'cut-12', massG: 41.2, volumeMl: 50, temperatureC: 20 },
  {
    type: 'liquid-volume',
    liquid: 'cut-3',
    volumeMl: 20,
    temperatureC: 20,
    volumeUncertaintyMl: 0.1,
    temperatureUncertaintyK: 0.2,
  },
  { type: 'liquid-refractometer', liquid: 'cut-4', scale: 'mass', percent: 40.5 },
  {
    type: 'liquid-chromatogram',
    liquid: 'cut-5',
    alcoholByVolume: 90.2,
    strengthUncertaintyAbv: 0.7,
  },
  { type: 'liquid-label', liquid: 'cut-6', alcoholByVolume: 40 },
  { type: 'sugar-known', sugarG: 60.5, standardUncertaintyG: 1.5 },
];

test('every mark of a liquid survives the way through a cell of a table', () => {
  const back = bookMarks.map((mark) => readMarkCell(writeMarkCell({ kind: 'mark', mark })));
  expect(back).toEqual(bookMarks.map((mark) => ({ kind: 'mark', mark })));
});

test('the marks of liquids serve the books alone, and no other mark does', () => {
  const others: readonly MarkBody[] = [
    { type: 'heat-off' },
    { type: 'volume-read', volumeMl: 3 },
    { type: 'mark-withdrawn', withdrawnMarkId: 1 },
  ];
  expect(bookMarks.map(isBookMark)).toEqual(bookMarks.map(() => true));
  expect(others.map(isBookMark)).toEqual([false, false, false]);
  expect(markBodySchema.safeParse({ ...bookMarks[1], liquid: 'cut-0' }).success).toBe(false);
});

test('the monitor concludes nothing from them but that somebody was there', () => {
  const head = Array.from({ length: 900 }, (_, timeS): RunInput => {
    const value = 20 + Math.min(58.4, timeS / 10);
    return { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' };
  });
  const quiet = { ...settings, attentionCheckS: null };
  const conclude = (marked: readonly RunInput[]) => {
    const monitor = createMonitor(quiet);
    for (const input of [...head.slice(0, 700), ...marked, ...head.slice(700)]) monitor.push(input);
    monitor.advanceTo(900);
    return { verdicts: monitor.verdicts(), snapshot: plainSnapshot(monitor.snapshot()) };
  };
  expect(conclude(marks(bookMarks, 699))).toEqual(conclude([]));
});

describe('an uncertainty that was written down with a reading', () => {
  const cut = (bodies: readonly MarkBody[]) => books(marks(bodies)).cuts[0]?.booked;
  const label: MarkBody = {
    type: 'liquid-label',
    liquid: 'cut-1',
    alcoholByVolume: 40,
    strengthUncertaintyAbv: 0.000001,
  };

  test('stands above that of the bench, and goes into the books by itself', () => {
    const volume = {
      type: 'liquid-volume',
      liquid: 'cut-1',
      volumeMl: 50,
      temperatureC: 20,
    } as const;
    const stated = { ...volume, volumeUncertaintyMl: 0.2, temperatureUncertaintyK: 0.000001 };
    // By hand: u(V)/V of the ethanol in it, 20 mL; the bench's own is √(0.5² + 0.25²) mL.
    expect(cut([stated, label])?.ethanolMl.standardUncertainty).toBeCloseTo(0.08, 4);
    expect(cut([volume, label])?.ethanolMl.standardUncertainty).toBeCloseTo(0.2236, 3);
  });

  test('of a float is mostly that of the float itself, which all its readings share', () => {
    const read: MarkBody = {
      type: 'liquid-strength',
      liquid: 'cut-1',
      alcoholByVolume: 40,
      temperatureC: 20,
      strengthUncertaintyAbv: 1,
    };
    expect(liquidsMeasured(marks([read])).cuts.get(1)?.strength).toEqual({
      by: 'alcoholometer',
      indicatedAbv: { value: 40, standardUncertainty: 0.6 },
      temperatureC: { value: 20, standardUncertainty: 0.5 },
      instrument: { name: 'Alcoholometer', standardUncertainty: 0.8 },
    });
  });

  test('is the one that the form shows where none is typed', () => {
    const bare = bookMarks.slice(0, 6);
    const shown = bare.map((mark) => {
      const own = markUncertainties[mark.type] ?? {};
      return {
        ...mark,
        ...Object.fromEntries(
          Object.entries(own).map(([field, of]) => {
            const value = Object.entries(mark).find(([name]) => name === of)?.[1] ?? null;
            return [
              field,
              benchUncertainty({ type: mark.type, field: field as UncertaintyField, value }),
            ];
          }),
        ),
      };
    });
    const measured = (bodies: readonly MarkBody[]) =>
      bodies.map((body) => liquidsMeasured(marks([body])));
    expect(measured(shown.map((mark) => markBodySchema.parse(mark)))).toEqual(measured(bare));
  });

  test('is never nothing: a mark without a doubt is refused', () => {
    const none = { type: 'liquid-mass', liquid: 'residue', massG: 300, massUncertaintyG: 0 };
    expect(markBodySchema.safeParse(none).success).toBe(false);
  });
});

describe('strengths found in other ways', () => {
  const strengthOf = (body: MarkBody) => {
    const found = liquidsMeasured(marks([body])).residue.strength;
    return found === null ? null : measuredStrength(found).alcoholByVolume;
  };
  const width = (body: MarkBody) => {
    const found = strengthOf(body);
    return found === null ? null : ((found.high - found.low) / 2 / 1.96).toFixed(2);
  };

  test('a refractometer is read on the scale that was stated, by volume or by mass', () => {
    const read = { type: 'liquid-refractometer', liquid: 'residue', percent: 40 } as const;
    expect(strengthOf({ ...read, scale: 'volume' })?.value).toBe(40);
    // 40 % by mass are 47.36 % vol (OIML R 22, table of strength by mass).
    expect(strengthOf({ ...read, scale: 'mass' })?.value).toBeCloseTo(47.4, 1);
    expect([
      width({ ...read, scale: 'volume' }),
      width({ ...read, percent: 60, scale: 'volume' }),
    ]).toEqual(['1.00', '2.00']);
  });

  test('no mark holds a refractometer’s reading where one index stands for two strengths', () => {
    const read = { type: 'liquid-refractometer', liquid: 'residue' };
    const holds = (scale: string, percent: number) =>
      markBodySchema.safeParse({ ...read, scale, percent }).success;
    expect([
      holds('volume', 80),
      holds('volume', 81),
      holds('mass', 73),
      holds('mass', 74),
      holds('brix', 12),
    ]).toEqual([true, false, true, false, false]);
  });

  test('a chromatogram is doubted by its share, a label by what labels may be off', () => {
    const chromatogram = { type: 'liquid-chromatogram', liquid: 'residue' } as const;
    expect([
      width({ ...chromatogram, alcoholByVolume: 5 }),
      width({ ...chromatogram, alcoholByVolume: 50 }),
      width({ type: 'liquid-label', liquid: 'residue', alcoholByVolume: 40 }),
    ]).toEqual(['0.30', '1.00', '0.30']);
  });
});

describe('booksOfRun', () => {
  // By hand: 350 mL of 9 % vol hold 31.5 mL of ethanol; 28 mL of 90 % vol hold 25.2 mL (80 %); the residue 6.3 mL.
  const strong = massFractionFromAlcoholByVolume({ alcoholByVolume: 90 });
  const cut: readonly MarkBody[] = [
    { type: 'liquid-volume', liquid: 'cut-1', volumeMl: 28, temperatureC: 20 },
    {
      type: 'liquid-density',
      liquid: 'cut-1',
      densityKgPerM3: densityKgPerM3({ ethanolMassFraction: strong, temperatureC: 20 }),
      temperatureC: 20,
    },
  ];
  const chargeG = books([]).charge;
  const residueG = chargeG.massG.value - 28 * 0.82918;
  const residueAbv = 1.97;
  const residue: readonly MarkBody[] = [
    { type: 'liquid-mass', liquid: 'residue', massG: residueG },
    { type: 'liquid-strength', liquid: 'residue', alcoholByVolume: residueAbv, temperatureC: 20 },
  ];

  test('closes the balance from marks alone, as by hand', () => {
    const { balance, residue: booked } = books(marks([...cut, ...residue]));
    expect({
      recovery: balance?.ethanol.recoveryPercent.value.toFixed(1),
      massCloses: balance?.total.closes,
      massClosure: balance?.total.closurePercent?.value.toFixed(1),
      ethanolCloses: balance?.ethanol.closes,
      ethanolClosure: balance?.ethanol.closurePercent?.value.toFixed(0),
      residueAbv: booked?.strengthAbv.value.toFixed(2),
    }).toEqual({
      recovery: '80.0',
      massCloses: true,
      massClosure: '100.0',
      ethanolCloses: true,
      ethanolClosure: '100',
      residueAbv: '1.97',
    });
  });

  test('says what is missing instead of guessing it, and takes a withdrawn mark for not made', () => {
    const half = books(marks([...cut, residue[0] as MarkBody]));
    expect(half.balance?.ethanol.closurePercent).toBeNull();
    expect(half.assumptions).toContain(
      'Residue: its strength or density was not measured, so it is not in the balance.',
    );
    const withdrawn: MarkBody = { type: 'mark-withdrawn', withdrawnMarkId: 4 };
    expect(books(marks([...cut, ...residue, withdrawn])).residue).toBeNull();
  });

  test('a slip of the pen is told, and breaks nothing', () => {
    const slip: MarkBody = {
      type: 'liquid-density',
      liquid: 'residue',
      densityKgPerM3: 1080,
      temperatureC: 20,
    };
    const told = books(marks([...cut, residue[0] as MarkBody, slip])).assumptions.join(' ');
    expect(told).toMatch(/Residue: no mixture of ethanol and water has these readings/);
  });

  test('the later measurement counts, and entries made with a file stand above marks', () => {
    const again: MarkBody = { type: 'liquid-mass', liquid: 'residue', massG: 300 };
    const input = marks([...cut, ...residue, again]);
    expect(books(input).residue?.massG.value).toBe(300);
    const entries = {
      cuts: [],
      residue: {
        amount: { by: 'mass', massG: { value: 290, standardUncertainty: 1 } },
        strength: { by: 'stated', strengthAbv: { value: 2, standardUncertainty: 0.1 } },
      },
    } as const;
    const run = { settings, inputs: input, verdicts: { estimates: [], events: [] }, endS: 3600 };
    expect(booksOfRun({ ...run, entries: { ...entries, cuts: [] } }).residue?.massG.value).toBe(
      290,
    );
  });

  test('a reading tells its strength by itself, or that no mixture reads like this', () => {
    const read = { type: 'liquid-density', liquid: 'cut-2', temperatureC: 20 } as const;
    // OIML R 22 table: 40 % vol is 948.0452 kg/m³ at 20 °C.
    const [strong, light] = [948.0452, 650].map((densityKgPerM3) =>
      strengthByMark({ ...read, densityKgPerM3 }),
    );
    expect(strong).toMatchObject({ value: expect.closeTo(40, 3) });
    expect(light).toBe('impossible');
    expect(strengthByMark({ type: 'heat-off' })).toBeNull();
  });

  test('known sugar gives the yield of the ferment', () => {
    const sugar: MarkBody = { type: 'sugar-known', sugarG: 51.3, standardUncertaintyG: 1 };
    // 31.5 mL × 0.78924 = 24.861 g ethanol of 51.3 g × 0.5114 = 26.235 g: 94.8 %.
    expect(books(marks([...cut, sugar])).ferment?.fermentationPercent.value).toBeCloseTo(94.8, 1);
  });
});
