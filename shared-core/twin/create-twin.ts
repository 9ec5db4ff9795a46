import { createRandom } from '../random/index.ts';
import type { RunSettings } from '../run/index.ts';
import { drawScatter, lookAhead, type TwinOutlook } from './look-ahead.ts';
import type { Observation } from './observations.ts';
import type { Particle } from './particle.ts';
import { assimilate, createCloud, particleCount } from './particle-cloud.ts';
import { guessPrior, type HeatUp } from './still-guess.ts';
import { weightedEstimate } from './weighted-values.ts';

/** An ensemble of stills that could be the one on the bench. */
export interface Twin {
  see(observation: Observation): void;
  /** Holds the ensemble against what was seen since the last time. */
  update(): void;
  outlook(boiledS: number, limitHeightK: number, leastMeanMoleFraction: number | null): TwinOutlook;
}

/** Enough beyond any limit for the slope there to be known [K]. */
const beyondLimitK = 2.5;
/** A mean strength falls long after the head has: courses must reach further then [K]. */
const meanHeightK = 14;
/**
 * Creates the twin when vapour arrives. It is deterministic: its random numbers come from a fixed seed, so a
 * replay gives the same forecast.
 */
export function createTwin(
  settings: RunSettings,
  heatUp: HeatUp,
  biasSdK: number,
  limitHeightK: number,
): Twin {
  const random = createRandom('twin');
  const observations: Observation[] = [];
  const prior = guessPrior(settings, heatUp, biasSdK);
  let seen = 0;
  const evidence = () => ({
    prior,
    chargeMl: settings.charge.volumeMl,
    untilHeadHeightK: settings.stop.kind === 'strength' ? limitHeightK + beyondLimitK : meanHeightK,
    observations,
  });
  const cloud = createCloud(evidence(), random);
  const scatter = drawScatter(particleCount, random);

  return {
    see: (observation) => {
      observations.push(observation);
    },
    update: () => {
      if (seen === observations.length) return;
      assimilate(cloud, evidence(), seen, random);
      seen = observations.length;
    },
    outlook: (boiledS, limitHeightK, leastMean) => ({
      ...lookAhead(cloud, scatter, boiledS, limitHeightK),
      stopMoleFraction: leastMean === null ? null : meanStop(cloud, leastMean),
    }),
  };
}

/** Head vapour at which stopping leaves all distillate so far at the mean asked for: the cloud's median. */
function meanStop(cloud: readonly Particle[], leastMean: number): number {
  const stops = cloud.map(({ course }) => {
    const { headMoleFraction, distillateMl, count } = course;
    let volume = 0;
    let sum = 0;
    for (let index = 1; index < count; index += 1) {
      const flow = (distillateMl[index] as number) - (distillateMl[index - 1] as number);
      const head = headMoleFraction[index] as number;
      volume += flow;
      sum += flow * head;
      if (sum < leastMean * volume && index > 2) return head;
    }
    return headMoleFraction[count - 1] as number;
  });
  return weightedEstimate(
    stops,
    cloud.map(({ weight }) => weight),
  ).value;
}
