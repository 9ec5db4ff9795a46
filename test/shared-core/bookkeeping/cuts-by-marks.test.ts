import { describe, expect, test } from 'vitest';
import { cutsOfRun, type Mark, type MarkBody } from '#shared-core';
import { benchDoubts } from '../../../shared-core/bookkeeping/bench-doubts.ts';

const cutsFrom = (endS: number, ...bodies: readonly (readonly [number, MarkBody])[]) =>
  cutsOfRun({
    inputs: bodies.map(
      ([timeS, mark], index): Mark => ({ kind: 'mark', timeS, markId: index + 1, mark }),
    ),
    endS,
  }).map(({ number, fromS, toS, amount, strength }) => [
    number,
    `${fromS}–${toS}`,
    amount === null ? null : amount.by === 'mass' ? amount.massG.value : amount.volumeMl.value,
    strength?.by === 'alcoholometer' ? strength.indicatedAbv.value : null,
  ]);

const change = (volumeMl: number | null): MarkBody => ({ type: 'receiver-changed', volumeMl });
const volume = (volumeMl: number): MarkBody => ({ type: 'volume-read', volumeMl });
const mass = (massG: number): MarkBody => ({ type: 'mass-read', massG });
const strength = (alcoholByVolume: number): MarkBody => ({
  type: 'strength-read',
  alcoholByVolume,
  sampleTemperatureC: 21,
});
const on: MarkBody = { type: 'heat-on' };
const off: MarkBody = { type: 'heat-off' };

describe('cuts by their marks', () => {
  test('begin with the heat and end with the run; the last receiver counts if something was measured in it', () => {
    expect([
      cutsFrom(90, [10, on], [50, volume(7)]),
      cutsFrom(90, [50, volume(7)]),
      cutsFrom(90, [10, on], [50, change(7)]),
      cutsFrom(90, [10, on], [50, change(null)]),
      cutsFrom(90, [10, on], [50, change(7)], [60, volume(2)]),
      cutsFrom(90, [10, on], [20, off]),
      cutsFrom(90, [50, strength(80)]),
    ]).toEqual([
      [[1, '10–90', 7, null]],
      [[1, '0–90', 7, null]],
      [[1, '10–50', 7, null]],
      [[1, '10–50', null, null]],
      [
        [1, '10–50', 7, null],
        [2, '50–90', 2, null],
      ],
      [],
      [[1, '0–90', null, 80]],
    ]);
  });

  test('begin with the run where the heat was first marked when it came back', () => {
    expect([
      cutsFrom(90, [50, change(5)], [60, on]),
      cutsFrom(90, [50, off], [60, on], [70, volume(3)]),
    ]).toEqual([[[1, '0–50', 5, null]], [[1, '0–90', 3, null]]]);
  });

  test('have the amount given when the receiver was taken away, or else the last one read in it', () => {
    expect([
      cutsFrom(90, [20, volume(3)], [30, mass(4)], [50, change(null)]),
      cutsFrom(90, [20, mass(4)], [30, volume(5)], [50, change(6)]),
    ]).toEqual([[[1, '0–50', 4, null]], [[1, '0–50', 6, null]]]);
  });

  test('a strength read under heat is that of the receiver before, wherever the present one stands', () => {
    expect([
      cutsFrom(90, [50, change(5)], [60, volume(2)], [65, strength(90)]),
      cutsFrom(90, [0, on], [50, change(5)], [60, volume(2)], [65, strength(90)]),
    ]).toEqual([
      [
        [1, '0–50', 5, 90],
        [2, '50–90', 2, null],
      ],
      [
        [1, '0–50', 5, 90],
        [2, '50–90', 2, null],
      ],
    ]);
  });

  test.each([
    ['its volume', volume(2)],
    ['its mass', mass(2)],
  ])(
    'a strength read after the heat is that of the present receiver once %s has been read',
    (_, read) => {
      const changed = [50, change(5)] as const;
      expect([
        cutsFrom(90, changed, [60, off], [65, read], [70, strength(60)]),
        cutsFrom(90, changed, [60, off], [65, strength(60)]),
        cutsFrom(90, changed, [55, read], [60, off], [65, strength(60)]),
        cutsFrom(90, changed, [60, off], [65, read], [66, on], [70, strength(60)]),
        cutsFrom(90, changed, [60, off], [65, read], [70, change(null)], [75, strength(60)]),
      ]).toEqual([
        [
          [1, '0–50', 5, null],
          [2, '50–90', 2, 60],
        ],
        [[1, '0–50', 5, 60]],
        [
          [1, '0–50', 5, 60],
          [2, '50–90', 2, null],
        ],
        [
          [1, '0–50', 5, 60],
          [2, '50–90', 2, null],
        ],
        [
          [1, '0–50', 5, null],
          [2, '50–70', 2, 60],
        ],
      ]);
    },
  );

  test('carry the doubts of the bench: those of the cylinder, the balance, the float and the thermometer', () => {
    const [first, second] = cutsOfRun({
      inputs: [change(100), mass(40), strength(90)].map((mark, index) => ({
        kind: 'mark',
        timeS: index,
        markId: index + 1,
        mark,
      })),
      endS: 9,
    });
    expect([first?.amount, second?.amount, first?.strength]).toEqual([
      {
        by: 'volume',
        // √(0.5² + (0.5 % of 100)²) mL.
        volumeMl: { value: 100, standardUncertainty: expect.closeTo(Math.SQRT1_2, 9) },
        temperatureC: benchDoubts.unknownTemperatureC,
      },
      { by: 'mass', massG: { value: 40, standardUncertainty: benchDoubts.massG } },
      {
        by: 'alcoholometer',
        indicatedAbv: { value: 90, standardUncertainty: 0.3 },
        temperatureC: { value: 21, standardUncertainty: benchDoubts.temperatureK },
        instrument: {
          name: 'Alcoholometer',
          standardUncertainty: 0.4,
        },
      },
    ]);
  });
});
