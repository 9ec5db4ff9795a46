import { lagTimeConstantS } from '../../probe/index.ts';
import type { Estimate } from '../../uncertainty/index.ts';
import { worded } from '../../wording/index.ts';
import { even } from '../certainty.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { settledAfterS } from '../patience.ts';
import { isBlind } from '../sense/probe-fault.ts';
import { trueTemperatureQuantileC } from '../situation/scale-belief.ts';
import { strengthRange } from './numbers.ts';

/** What the head's temperature says of the vapour's strength at one second. */
export type HeadStrength =
  | {
      readonly kind: 'known';
      readonly strength: Estimate;
      readonly sdK: number;
    }
  | { readonly kind: 'below-azeotrope' }
  | { readonly kind: 'unsettled'; readonly why: Unsettled };

/** Why a temperature says nothing of the strength yet. */
export type Unsettled = 'not-held' | 'receded' | 'returned' | 'moving' | 'cooling' | 'fault';

/** A bulb lags behind faster vapour by more than its lag is known to [K/s]; chosen here. */
export const fastestKPerS = 4 / 60;
/** How well the lag of the bulb is known, as a share of it; chosen here. */
const lagShareSd = 0.3;

/** In the tail the head only rises while the pot boils: one that sinks by more than this cools [K/s]; by simulation. */
const sinkingKPerS = -0.3 / 60;

function isCooling({ head, stage, heat }: MonitorFacts): boolean {
  if (heat === 'off') return true;
  if (head === null || stage !== 'tail') return false;
  return head.rateKPerS < Math.min(sinkingKPerS, -2 * head.rateSdKPerS);
}

/** What can be told of the strength, before it is worked out: cheap enough for every second. */
export function headStrengthKind(facts: MonitorFacts): HeadStrength['kind'] {
  return judge(facts).kind;
}

/** One second is asked for its strength by several sentences, and each answer costs some thousand terms. */
const known = new WeakMap<MonitorFacts, HeadStrength>();

/** Strength of the vapour at the head with a 95 % interval, or why none can be given. */
export function headStrength(facts: MonitorFacts): HeadStrength {
  const strength = known.get(facts) ?? workOut(facts);
  known.set(facts, strength);
  return strength;
}

function workOut(facts: MonitorFacts): HeadStrength {
  const found = judge(facts);
  if (found.kind !== 'known') return found;
  const { scale, bias } = facts;
  const { vapourC, sdK, headSdK } = found;
  const at = (probability: number): number =>
    trueTemperatureQuantileC(bias, vapourC + bias.meanK, headSdK, probability);
  // What reads below the azeotrope is at it or above, for the same doubt: not sure to be the strongest there is.
  const low = Math.min(scale.strengthAbv(at(0.975)), scale.strengthAbv(scale.azeotropeC + sdK));
  const strength = { value: scale.strengthAbv(vapourC), low, high: scale.strengthAbv(at(0.025)) };
  return { kind: 'known', strength, sdK };
}

type Judged =
  | {
      readonly kind: 'known';
      readonly vapourC: number;
      /** The doubt of the head's own temperature, and with that of the offset. */
      readonly headSdK: number;
      readonly sdK: number;
    }
  | Exclude<HeadStrength, { kind: 'known' }>;

function judge(facts: MonitorFacts): Judged {
  const { head, situation, bias, scale, settings } = facts;
  if (isBlind(facts.fault)) return { kind: 'unsettled', why: 'fault' };
  if (situation.recededSinceS !== null) return { kind: 'unsettled', why: 'receded' };
  if (head === null || situation.bathedS === null) return { kind: 'unsettled', why: 'not-held' };
  if (head.wet < even || situation.calmS < settledAfterS)
    return { kind: 'unsettled', why: 'returned' };
  if (Math.abs(head.rateKPerS) > fastestKPerS) return { kind: 'unsettled', why: 'moving' };
  if (isCooling(facts)) return { kind: 'unsettled', why: 'cooling' };
  const vapourC = head.vapourC - bias.meanK;
  // What the lag is not known by moves the vapour by as much as it stands above the bulb.
  const lagSdK = lagShareSd * Math.abs(head.vapourC - head.bulbC);
  const rateSdK = lagShareSd * lagTimeConstantS(settings.probe.lagT90S) * Math.abs(head.rateKPerS);
  const headSdK = Math.hypot(head.vapourSdK, scale.modelSdK(vapourC), lagSdK, rateSdK);
  const sdK = Math.hypot(headSdK, bias.sdK);
  if (vapourC < scale.azeotropeC - 2 * sdK - 0.1) return { kind: 'below-azeotrope' };
  return { kind: 'known', vapourC, headSdK, sdK };
}

const unsettledWords: Readonly<Record<Unsettled, string>> = {
  'not-held': worded('of a strength not known before the head comes to rest'),
  receded: worded('of unknown strength while no vapour reaches the bulb'),
  returned: worded('of a strength not known until the bulb has settled in the vapour again'),
  cooling: worded('of unknown strength while the bulb cools'),
  moving: worded('of a strength that changes too fast to tell'),
  fault: worded('of unknown strength while the probe is not trusted'),
};

/** The same for the middle of a sentence: `of 88–93 % vol`. */
export function ofStrength(facts: MonitorFacts): string {
  const head = headStrength(facts);
  switch (head.kind) {
    case 'known':
      return worded('of {strength}', {
        strength: strengthRange(head.strength.low, head.strength.high),
      });
    case 'below-azeotrope':
      return worded('cooler than ethanol–water vapour can be');
    case 'unsettled':
      return unsettledWords[head.why];
  }
}
