import type { HeadNoise } from './head-noise.ts';

/** Learns the steps a probe reads in: cheap thermometers and loggers give half or whole kelvins. */
export interface ReadingSteps {
  /** Takes a reading as it came. */
  see(valueC: number): void;
  /** The step that all changes so far are multiples of [K]; 0 where there is none, or too few changes to tell. */
  stepK(): number;
}

/** Finer steps are lost in any probe's noise [K]. */
const finestK = 0.02;
/** Changes from one reading to the next before their common step is believed: of readings without steps, so many share none. */
const changesToKnow = 8;

export function createReadingSteps(): ReadingSteps {
  let beforeC: number | null = null;
  let stepK = 0;
  let changes = 0;
  return {
    see: (valueC) => {
      const changeK = Math.abs(valueC - (beforeC ?? valueC));
      beforeC = valueC;
      if (changeK <= finestK / 2) return;
      stepK = changes === 0 ? changeK : commonStepK(stepK, changeK);
      changes += 1;
    },
    stepK: () => (changes < changesToKnow || stepK < finestK ? 0 : stepK),
  };
}

/**
 * No reading is nearer to the truth than half a step, evenly: `step/√12`; and what stands keeps its error, as slow noise does.
 *
 * Source: JCGM 100:2008 (GUM), F.2.2.1, resolution of a digital indication.
 */
export function withSteps(noise: HeadNoise, stepK: number): HeadNoise {
  const stepSdK = stepK / Math.sqrt(12);
  return stepSdK <= noise.slowSdK ? noise : { ...noise, slowSdK: stepSdK };
}

/** Greatest common divisor of two changes, by Euclid's algorithm up to {@link finestK}. */
function commonStepK(oneK: number, otherK: number): number {
  let larger = Math.max(oneK, otherK);
  let smaller = Math.min(oneK, otherK);
  while (smaller > finestK / 2) {
    const rest = Math.abs(larger - smaller * Math.round(larger / smaller));
    larger = smaller;
    smaller = rest;
  }
  return larger;
}
