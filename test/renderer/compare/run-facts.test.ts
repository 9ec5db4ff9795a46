import { beforeAll, describe, expect, test } from 'vitest';
import { booksOfRun, type Mark, type MarkBody } from '#shared-core';
import { alignedTrace } from '../../../renderer/compare/aligned-trace.ts';
import { runFacts } from '../../../renderer/compare/run-facts.ts';
import { traceLooks } from '../../../renderer/compare/trace-look.ts';
import type { Film } from '../../../renderer/replay/film.ts';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

let standard: Film;
let low: Film;

beforeAll(async () => {
  standard = await filmOf(simulatedRecord({ name: 'standard', pressureKPa: 101.3, seed: 1 }));
  low = await filmOf(simulatedRecord({ name: 'low', pressureKPa: 90, seed: 2 }));
});

describe('runFacts', () => {
  test('at lower pressure the plateau is colder, but as far above its own azeotrope', () => {
    const [a, b] = [runFacts(standard), runFacts(low)];
    const above = (facts: typeof a) => facts.plateau?.aboveAzeotropeK.value ?? 0;
    expect((a.plateau?.mean.value ?? 0) - (b.plateau?.mean.value ?? 0)).toBeGreaterThan(2);
    expect(Math.abs(above(a) - above(b))).toBeLessThan(0.7);
  });

  test('knows air pressure and azeotrope no better than the pressure is: 0.3 K/kPa, near enough', () => {
    const { pressureKPa, azeotropeC } = runFacts(standard);
    const { pressure } = standard.settings;
    expect(pressureKPa).toEqual({
      value: pressure.pressureKPa,
      standardUncertainty: pressure.standardUncertaintyKPa,
    });
    const perKPa = (azeotropeC?.standardUncertainty ?? 0) / pressureKPa.standardUncertainty;
    expect(perKPa).toBeGreaterThan(0.2);
    expect(perKPa).toBeLessThan(0.35);
  });

  test('counts heat-off from vapour arrival, the prompt before the act', () => {
    const facts = runFacts(standard);
    expect(facts.heatOffCalledS).toBeGreaterThan(600);
    expect(facts.heatOffDoneS).toBeGreaterThan(facts.heatOffCalledS ?? 0);
    expect(facts.collected?.volumeMl.value).toBeGreaterThan(15);
    const { fromS = 0, toS = 0 } = facts.plateau?.statistics.span ?? {};
    expect(toS - fromS).toBeGreaterThan(600);
  });

  test('tells how long plateau and main fraction lasted with an interval that holds it', () => {
    const { plateau, mainFractionLastedS } = runFacts(standard);
    for (const lasted of [plateau?.lastedS, mainFractionLastedS]) {
      const { value = 0, low = 0, high = 0 } = lasted ?? {};
      expect([low > 600, low < value, value < high, high - low < 900]).toEqual([
        true,
        true,
        true,
        true,
      ]);
    }
  });

  test('names no time of heat-off where the heat was put on again', async () => {
    const record = simulatedRecord({ name: 'on again', pressureKPa: 101.3, seed: 1 });
    const { endS, inputs } = record;
    const again = { kind: 'mark', timeS: endS, markId: 99, mark: { type: 'heat-on' } } as const;
    const film = await filmOf({ ...record, inputs: [...inputs, again] });
    expect(runFacts(film).heatOffDoneS).toBeNull();
  });

  test('tells of what was collected what the books do: with what was measured later, and as a least where a receiver was not', async () => {
    const { endS } = standard;
    const late = (mark: MarkBody): Mark => ({ kind: 'mark', timeS: endS, markId: 900, mark });
    const weighed = late({ type: 'liquid-mass', liquid: 'cut-1', massG: 15 });
    const booked = runFacts(standard, [weighed]).collected;
    const { settings, inputs, verdicts } = standard;
    const { product } = booksOfRun({ settings, inputs: [...inputs, weighed], verdicts, endS });
    expect(booked).toEqual({ volumeMl: product?.volumeMl, isWhole: true });
    // 15 g at some 90 % vol; what was read at the still was more.
    expect(booked?.volumeMl.value).toBeCloseTo(15 / 0.83, 0);
    expect(runFacts(standard).collected?.volumeMl.value).toBeGreaterThan(20);
    const another: Mark = {
      kind: 'mark',
      timeS: 1500,
      markId: 901,
      mark: { type: 'receiver-changed', volumeMl: null },
    };
    const emptied = standard.inputs.filter(
      (input) => input.kind !== 'mark' || input.mark.type.startsWith('heat'),
    );
    const film = await filmOf({
      ...simulatedRecord({ name: 'standard', pressureKPa: 101.3, seed: 1 }),
      inputs: [
        ...emptied,
        another,
        {
          kind: 'mark',
          timeS: 2000,
          markId: 902,
          mark: { type: 'volume-read', volumeMl: 8 },
        } as const,
      ].toSorted((a, b) => a.timeS - b.timeS),
    });
    expect(runFacts(film).collected).toMatchObject({ isWhole: false });
  });

  test('a run cut off in the warm-up has no plateau, no prompt and nothing collected', async () => {
    const record = simulatedRecord({ name: 'short', pressureKPa: 101.3, seed: 1 });
    const short = await filmOf({
      ...record,
      inputs: record.inputs.filter(({ timeS }) => timeS < 500),
      endS: 500,
    });
    const { arrivedS, plateau, heatOffCalledS, collected } = runFacts(short);
    expect([arrivedS, plateau, heatOffCalledS, collected]).toEqual([null, null, null, null]);
  });
});

describe('alignedTrace', () => {
  test('puts vapour arrival at zero and takes the azeotrope off', () => {
    const head = standard.frames[standard.frames.length - 1]?.tracks.head?.series;
    const { arrivedS, azeotropeC } = runFacts(standard);
    const points = alignedTrace(
      head!,
      arrivedS ?? 0,
      { fromS: -600, toS: 1200 },
      azeotropeC?.value ?? 0,
    );
    const held = points.filter(([timeS]) => timeS > 300 && timeS < 900);
    expect(points[0]?.[0]).toBe(-592.5);
    expect(held.every(([, value]) => value !== null && value > 0 && value < 2)).toBe(true);
  });
});

test('no two runs are drawn with the same dashes, sign or letter', () => {
  for (const part of ['dashes', 'sign', 'letter'] as const) {
    expect(new Set(traceLooks.map((look) => look[part])).size).toBe(traceLooks.length);
  }
});
