import { studyFerment } from '../../../../shared-core/study/study-ferment.ts';
import { nothingRead } from '../../../support/nothing-read.ts';

type FermentStudy = ReturnType<typeof studyFerment>;

const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
const ninety = (value: number, half: number) => ({ low: value - half, value, high: value + half });

/** A moment of a week: gravity and mass after so many hours. */
export function momentAt(
  timeH: number,
  gravityAt20C: number | null,
  massG: number | null,
): FermentStudy['moments'][number] {
  const treatments: FermentStudy['moments'][number]['read']['treatments'] = [];
  const read = { ...nothingRead, treatments, atIso: '', massG, temperatureC: 24 };
  return { timeH, entryId: timeH + 1, read, gravityAt20C };
}

/** A week in round numbers: a litre from 1.060 to 1.000 in four days, 56 g lighter, of 130 g of sugar. */
export function plainWeek(changes: Partial<FermentStudy> = {}): FermentStudy {
  const bare = studyFerment({
    kept: {
      fermentId: 'plain',
      stated: {
        name: 'Pear juice',
        beganAtIso: '2026-03-08T08:00:00.000Z',
        volumeMl: 1000,
        sugarG: { low: 128, high: 132 },
        wentIn: '1 L of pear juice',
      },
      corrections: [],
      entries: [],
      unreadableLines: 0,
    },
    warmth: { band: null, minutes: [] },
    appVersion: '0.1.0',
  });
  return {
    ...bare,
    moments: [
      momentAt(0, 1.06, 1480),
      momentAt(24, 1.05, null),
      momentAt(48, 1.02, 1440),
      momentAt(72, 1.004, null),
      momentAt(96, 1, 1424),
    ],
    verdict: {
      ...bare.verdict,
      strengthAbv: ninety(8, 0.411),
      originalGravity: ninety(1.06, 0.001),
    },
    balance: {
      volumeMl: 1000,
      sugarG: about(130, 2),
      mostEthanolG: about(66.5, 1),
      ethanolG: about(63.1, 2),
      carbonDioxideG: about(60.3, 2),
      turnedG: about(123.4, 4),
      yieldPercent: { ...about(95, 3), budget: { lines: [], combinedStandardUncertainty: 3 } },
    },
    ...changes,
  };
}
