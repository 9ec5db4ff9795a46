import { describe, expect, test } from 'vitest';
import { followFerment } from '../../../shared-core/ferment/follow-ferment.ts';
import { type Evidence, gatherEvidence } from '../../../shared-core/ferment/gather-evidence.ts';
import { weightsOf } from '../../../shared-core/ferment/renew-ferments.ts';
import { evidenceAt } from './support/at-hour.ts';

const litre = { volumeMl: 1000, sugarG: null };
const gravity = (value: number) => ({ gravity: { value, uncertainty: 0.001 } });
const mass = (value: number) => ({ massG: { value, uncertainty: 0.4 } });

const hoursOf = (...timesH: readonly number[]) => {
  const readings = timesH.map((timeH, at) => ({
    timeH,
    gravity: 1.06 - 0.01 * at,
    massG: null,
    temperatureC: null,
    bubblesPerMin: null,
    isDegassed: false,
  }));
  return Array.from(followFerment(gatherEvidence(readings), litre), ({ timeH }) => timeH);
};

test('a log counts from the yeast on, and one that begins after three days from its first reading', () => {
  expect([hoursOf(0, 24), hoursOf(72, 96), hoursOf(73, 97)]).toEqual([
    [0, 24],
    [72, 96],
    [0, 24],
  ]);
});

test('a temperature holds for thirty hours, and warmth counts within twelve kelvins about 20 °C', () => {
  const of = (...pieces: readonly Evidence[]) =>
    Array.from(followFerment(pieces, litre), ({ temperatureC, warmthK }) => [
      temperatureC,
      warmthK,
    ]);
  expect(
    of(
      evidenceAt(0, { temperatureC: 25 }),
      evidenceAt(30),
      evidenceAt(31),
      evidenceAt(32, { temperatureC: 19 }),
    ),
  ).toEqual([
    [25, 5],
    [25, 5],
    [null, 0],
    [19, -1],
  ]);
  expect(
    of(
      evidenceAt(0, { temperatureC: 33 }),
      evidenceAt(1, { temperatureC: 7 }),
      evidenceAt(2, { temperatureC: 8 }),
    ),
  ).toEqual([
    [33, 12],
    [7, -12],
    [8, -12],
  ]);
});

test('each belief holds the evidence up to it, and how likely each gravity but the first was misread', () => {
  const pieces = [
    evidenceAt(0, { temperatureC: 20 }),
    evidenceAt(1, gravity(1.06)),
    evidenceAt(13, mass(1500)),
    evidenceAt(25, gravity(1.05)),
    evidenceAt(49, gravity(1.02)),
    evidenceAt(73, gravity(1.07)),
  ];
  const beliefs = Array.from(followFerment(pieces, litre), ({ evidence, gravityDoubts }) => ({
    evidence,
    doubted: gravityDoubts.map((doubt) => doubt.evidence),
    likely: gravityDoubts.map(({ probability }) => probability > 0.8),
  }));
  expect(beliefs.map(({ evidence }) => evidence)).toEqual(
    pieces.map((_, index) => pieces.slice(0, index + 1)),
  );
  // Each belief's list is the same one, grown until the end.
  expect(beliefs.at(-1)).toMatchObject({
    doubted: [pieces[3], pieces[4], pieces[5]],
    likely: [false, false, true],
  });
});

/** What most of the weight believes in the end. */
function meansAfter(pieces: readonly Evidence[], facts = litre) {
  let means = { original: Number.NaN, lost: Number.NaN, doneShare: Number.NaN };
  for (const { cloud } of followFerment(pieces, facts)) {
    const weights = weightsOf(cloud);
    const mean = (of: Float64Array) =>
      weights.reduce((sum, weight, index) => sum + weight * (of[index] ?? 0), 0);
    means = {
      original: mean(cloud.original),
      lost: mean(cloud.lost),
      doneShare: mean(cloud.doneH.map((doneH) => (Number.isNaN(doneH) ? 0 : 1))),
    };
  }
  return means;
}

describe('what is believed', () => {
  test('of the beginning is the first gravity, whatever a probe heard before', () => {
    const { original } = meansAfter([
      evidenceAt(0, { temperatureC: 20 }),
      evidenceAt(2, gravity(1.05)),
    ]);
    // Of a hundred, 82 believe the hydrometer; the others lie about 1.056.
    expect(Math.abs(original - 1.051)).toBeLessThan(0.002);
  });

  test('of a fall is that of the gravities', () => {
    const { lost } = meansAfter([evidenceAt(0, gravity(1.06)), evidenceAt(36, gravity(1.035))]);
    expect(Math.abs(lost - 0.025)).toBeLessThan(0.003);
  });

  test('of a mass counts what the liquid holds, unless it was shaken out', () => {
    const lostWith = (isDegassed: boolean) =>
      meansAfter([
        evidenceAt(0, { ...gravity(1.06), ...mass(1500), temperatureC: 20 }),
        evidenceAt(36, { ...mass(1475), temperatureC: 20, isDegassed }),
      ]).lost;
    // 1.9 g that stay dissolved are 0.25 % vol, for which a gravity falls by some 0.0019.
    const off = lostWith(false) - lostWith(true);
    expect(off).toBeGreaterThan(0.001);
    expect(off).toBeLessThan(0.003);
  });

  test('of the speed follows the warmth', () => {
    const lostAt = (temperatureC: number) =>
      meansAfter([
        evidenceAt(0, { ...gravity(1.06), temperatureC }),
        evidenceAt(24, { temperatureC }),
        evidenceAt(30, { temperatureC }),
      ]).lost;
    expect(lostAt(28) / lostAt(20)).toBeGreaterThan(1.25);
    expect(lostAt(12) / lostAt(20)).toBeLessThan(0.75);
  });
});

test('nothing is believed of no evidence', () => {
  expect([...followFerment([], litre)]).toEqual([]);
});
