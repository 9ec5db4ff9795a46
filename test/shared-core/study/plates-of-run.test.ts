import { describe, expect, test } from 'vitest';
import { booksOfRun, defaultRunSettings, type MarkBody, type RunInput } from '#shared-core';
import { moleFractionFromMassFraction } from '../../../shared-core/alcoholometry/amount-fractions.ts';
import {
  mainCut,
  platesOfRun,
  unmeasuredBeforeMain,
} from '../../../shared-core/study/plates-of-run.ts';
import type { ProcessedRow } from '../../../shared-core/study/processed-rows.ts';

/** 300 mL of 10 % vol, distilled into receivers that were measured at 20 °C, or not. */
function booksWith(
  cuts: readonly { readonly volumeMl: number | null; readonly strengthAbv: number | null }[],
) {
  const marks = cuts.flatMap(({ volumeMl, strengthAbv }, index): MarkBody[] => {
    const liquid = `cut-${index + 1}`;
    return [
      { type: 'receiver-changed', volumeMl: null },
      ...(volumeMl === null
        ? []
        : [{ type: 'liquid-volume', liquid, volumeMl, temperatureC: 20 } as const]),
      ...(strengthAbv === null
        ? []
        : [{ type: 'liquid-label', liquid, alcoholByVolume: strengthAbv } as const]),
    ];
  });
  return booksOfRun({
    settings: {
      ...defaultRunSettings,
      charge: { volumeMl: 300, strengthAbv: 10, standardUncertaintyAbv: 0.2 },
    },
    inputs: marks.map(
      (mark, index): RunInput => ({ kind: 'mark', timeS: 600 + index, markId: index + 1, mark }),
    ),
    verdicts: { estimates: [], events: [] },
    endS: 3000,
  });
}
const row = (timeS: number, abv: number | null): ProcessedRow => ({
  timeS,
  headC: 78.6,
  readings: 1,
  pressureKPa: 99.4,
  stage: 'main-fraction',
  aboveAzeotropeK: 0.5,
  isBathed: true,
  vapourAbv: abv === null ? null : { low: abv - 1, value: abv, high: abv + 1 },
});

describe('the plates of a run', () => {
  test('lie between the main cut and the pot halfway through it, by the ethanol and the mass that had left it', () => {
    const books = booksWith([
      { volumeMl: 5, strengthAbv: 80 },
      { volumeMl: 20, strengthAbv: 88 },
    ]);
    const found = platesOfRun(books, null, [row(0, 90)])!;
    const [first, main] = books.cuts.map(({ booked }) => booked!);
    expect(mainCut(books.cuts)?.number).toBe(2);
    const ethanolG = books.charge.ethanolG.value - first!.ethanolG.value - main!.ethanolG.value / 2;
    const massG = books.charge.massG.value - first!.massG.value - main!.massG.value / 2;
    expect(found.potMoleFraction.value).toBeCloseTo(
      moleFractionFromMassFraction(ethanolG / massG),
      9,
    );
    expect(found.potMoleFraction.low).toBeLessThan(found.potMoleFraction.value);
    expect(found.potMoleFraction.high).toBeGreaterThan(found.potMoleFraction.value);
    // Strength to 0.2 % vol and some millilitres of 300: a few per cent of the ethanol that is left.
    expect(found.potMoleFraction.high / found.potMoleFraction.value).toBeLessThan(1.15);
    expect(found.potMoleFraction.low / found.potMoleFraction.value).toBeGreaterThan(0.85);
    expect(found.distillateMoleFraction.value).toBeCloseTo(
      moleFractionFromMassFraction(main!.ethanolMassFraction.value),
      9,
    );
    expect(found.pressureKPa).toBe(99.4);
    expect(found.plates.stepped.value).toBeGreaterThan(2);
    expect(found.basis).toBe(
      'between cut 2 as measured and the pot halfway through it, from the ethanol balance (hold-up neglected)',
    );
  });

  test.each([
    ['not at all', { volumeMl: null, strengthAbv: null }],
    ['of unknown strength', { volumeMl: 5, strengthAbv: null }],
    ['of unknown volume', { volumeMl: null, strengthAbv: 80 }],
  ])('are not counted by the balance after a receiver that was not measured: %s', (_, earlier) => {
    const main = { volumeMl: 20, strengthAbv: 88 };
    const plateau = { statistics: { span: { fromS: 100, toS: 400 } }, pressureKPa: 98.6 } as const;
    const books = booksWith([earlier, main]);
    expect(unmeasuredBeforeMain(books)).toEqual([1]);
    expect(platesOfRun(books, null, [row(100, 92)])).toBeNull();
    const known = plateau as unknown as Parameters<typeof platesOfRun>[1];
    expect(platesOfRun(books, known, [row(100, 92)])?.basis).toContain(
      'head vapour at the beginning of the plateau',
    );
  });

  test('are counted after a receiver that stayed empty, and before one that nobody measured', () => {
    const main = { volumeMl: 20, strengthAbv: 88 };
    const nobodyKnows = { volumeMl: null, strengthAbv: null };
    const of = (cuts: Parameters<typeof booksWith>[0]) =>
      platesOfRun(booksWith(cuts), null, [])?.potMoleFraction.value;
    const alone = expect.closeTo(of([main])!, 9);
    expect([
      of([{ volumeMl: 0, strengthAbv: null }, main]),
      of([main, nobodyKnows, { volumeMl: 2, strengthAbv: 30 }]),
    ]).toEqual([alone, alone]);
    expect(unmeasuredBeforeMain(booksWith([nobodyKnows]))).toEqual([]);
  });

  test('of a run without a measured cut lie between the head vapour as the plateau begins and the charge', () => {
    const books = booksWith([]);
    const plateau = { statistics: { span: { fromS: 100, toS: 400 } }, pressureKPa: 98.6 } as const;
    const at = (rows: readonly ProcessedRow[]) =>
      platesOfRun(books, plateau as unknown as Parameters<typeof platesOfRun>[1], rows);
    const found = at([row(50, 50), row(100, 92), row(200, 60)])!;
    expect(found.pressureKPa).toBe(98.6);
    expect(found.basis).toContain('head vapour at the beginning of the plateau');
    // 92 % vol are 88.3 % by mass.
    expect(found.distillateMoleFraction.value).toBeCloseTo(0.747, 2);
    expect(found.potMoleFraction.value).toBeCloseTo(
      moleFractionFromMassFraction(books.charge.ethanolMassFraction.value),
      9,
    );
    expect(at([row(50, 92)])).toBeNull();
    // No strength is told before the head has come to rest.
    expect(at([row(100, null), row(200, 92), row(300, 60)])).toEqual(found);
    expect(at([row(100, null), row(401, 92)])).toBeNull();
    expect(platesOfRun(books, null, [row(100, 92)])).toBeNull();
  });

  test('are none where the cut is no stronger than the pot, or the balance leaves nothing in the pot', () => {
    expect(platesOfRun(booksWith([{ volumeMl: 100, strengthAbv: 10 }]), null, [])).toBeNull();
    expect(platesOfRun(booksWith([{ volumeMl: 70, strengthAbv: 95 }]), null, [])).toBeNull();
    // No plates give pure ethanol: it was said of a cut by mistake.
    expect(platesOfRun(booksWith([{ volumeMl: 5, strengthAbv: 100 }]), null, [])).toBeNull();
    const standard = platesOfRun(booksWith([{ volumeMl: 20, strengthAbv: 60 }]), null, []);
    expect(standard?.pressureKPa).toBe(101.325);
  });
});
