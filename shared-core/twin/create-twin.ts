import { createRandom } from '../random/index.ts';
import type { RunSettings } from '../run/index.ts';
import { drawScatter, lookAhead, type TwinOutlook } from './look-ahead.ts';
import type { Observation } from './observations.ts';
import type { CloudEvidence, Particle } from './particle.ts';
import {
  type Assimilation,
  assimilate,
  beginAssimilation,
  createCloud,
  particleCount,
  runCourses,
} from './particle-cloud.ts';
import { guessPrior, type HeatUp } from './still-guess.ts';
import { weightedEstimate } from './weighted-values.ts';

/** An ensemble of stills that could be the one on the bench. */
export interface Twin {
  see(observation: Observation): void;
  /**
   * Holds the ensemble against what was seen, by so many moves of its stills at most [number]; answers whether it is through. What is
   * seen while it is not waits for the next time, and the outlook can be asked for only when it is.
   */
  update(mostMoves: number): boolean;
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
  const evidence: CloudEvidence = {
    prior: guessPrior(settings, heatUp, biasSdK),
    chargeMl: settings.charge.volumeMl,
    untilHeadHeightK: settings.stop.kind === 'strength' ? limitHeightK + beyondLimitK : meanHeightK,
    observations,
  };
  const cloud = createCloud(evidence.prior, random);
  const scatter = drawScatter(particleCount, random);
  let seen = 0;
  let under: Assimilation | null = null;
  let isThrough = false;

  const goOn = (mostMoves: number): boolean => {
    const moves = runCourses(cloud, evidence, mostMoves);
    if (moves <= 0) return false;
    if (under === null && seen === observations.length) return true;
    under ??= beginAssimilation(cloud, evidence, seen);
    if (!assimilate(cloud, evidence, under, moves, random)) return false;
    seen = under.to;
    under = null;
    return true;
  };

  return {
    see: (observation) => {
      observations.push(observation);
    },
    update: (mostMoves) => {
      isThrough = goOn(mostMoves);
      return isThrough;
    },
    outlook: (boiledS, limitHeightK, leastMean) => {
      if (!isThrough) throw new Error('A twin has an outlook only between its updates.');
      return {
        ...lookAhead(cloud, scatter, boiledS, limitHeightK),
        stopMoleFraction: leastMean === null ? null : meanStop(cloud, leastMean),
      };
    },
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
