import { describe, expect, test } from 'vitest';
import { pearFermentSetup, teachingRigs } from '#shared-core';
import { runMember } from '../../../shared-core/planning/run-member.ts';

const { charge, rig } = pearFermentSetup();
const setup = { charge, rig, pressureKPa: 99.4, stepS: 2 };
const run = () => runMember({ collectW: 66, setup }, 2, 80);

describe('one simulated run', () => {
  test('is cut where the first fraction is full and where the vapour falls below the limit, one cut after the other', () => {
    const { vapourS, firstFraction, mainFraction, tail, durationS } = run();
    expect(firstFraction?.fromS).toBe(vapourS);
    expect(firstFraction?.volumeMl).toBeGreaterThanOrEqual(2);
    expect(firstFraction?.volumeMl).toBeLessThan(4);
    expect(mainFraction?.fromS).toBe(firstFraction?.toS);
    expect(tail?.fromS).toBe(mainFraction?.toS);
    expect(tail?.toS).toBe(durationS);
    expect(mainFraction?.strengthAbv).toBeGreaterThan(85);
    expect(tail?.strengthAbv).toBeLessThan(80);
  });

  test('has collected in the end what its fractions hold, the first aside, with their mean strength', () => {
    const { mainFraction, tail, chargeEthanolMol, samples } = run();
    const last = samples.at(-1)!;
    expect(last.recoveredFraction).toBeCloseTo(
      (mainFraction!.ethanolMol + tail!.ethanolMol) / chargeEthanolMol,
      9,
    );
    expect(last.meanStrengthAbv).toBeCloseTo(
      (mainFraction!.strengthAbv * mainFraction!.volumeMl + tail!.strengthAbv * tail!.volumeMl) /
        (mainFraction!.volumeMl + tail!.volumeMl),
      9,
    );
    const first = samples[0]!;
    expect([first.timeS, first.recoveredFraction, first.meanStrengthAbv]).toEqual([20, 0, 0]);
    expect(samples.map(({ timeS }) => timeS)).toEqual(samples.map((_, index) => 20 * (index + 1)));
    const shares = samples.map(({ recoveredFraction }) => recoveredFraction);
    expect(shares.filter((share, index) => share < (shares[index - 1] ?? 0) - 1e-9)).toEqual([]);
    expect(last.vapourStrengthAbv).toBeLessThan(20);
  });

  test('has its plateau and reflux in the middle of the main fraction', () => {
    const { plateauC, refluxRatio, mainFraction } = run();
    expect(plateauC).toBeGreaterThan(77.6);
    expect(plateauC).toBeLessThan(80);
    expect(refluxRatio).toBeGreaterThan(0.5);
    expect(mainFraction!.toS - mainFraction!.fromS).toBeGreaterThan(600);
  });

  test('of a bare still head has no main fraction and no plateau: what comes is tail', () => {
    const bare = runMember(
      { collectW: 60, setup: { ...setup, rig: teachingRigs.simpleHead } },
      2,
      85,
    );
    expect([bare.mainFraction, bare.plateauC]).toEqual([null, null]);
    expect(bare.tail?.fromS).toBe(bare.firstFraction?.toS);
    expect(bare.tail?.volumeMl).toBeGreaterThan(10);
  });

  test('without heat enough to boil has no vapour, and lasts as long as anybody waits', () => {
    const cold = { ...rig, heater: { ...rig.heater, powerW: 5 } };
    const never = runMember({ collectW: 5, setup: { ...setup, rig: cold } }, 2, 80);
    expect(never).toMatchObject({
      vapourS: null,
      firstFraction: null,
      mainFraction: null,
      tail: null,
      refluxRatio: null,
      durationS: 3 * 3600,
    });
  });
});
