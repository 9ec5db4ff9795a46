import type { TrueSecond } from '../ensemble/scored-run.ts';
import { molarVolumeMl, strengthAbv } from './mixture.ts';
import { createStageColumn, type SecondStill, usualMolPerS } from './stage-column.ts';

/** What the person does with the heat, in seconds after vapour has reached the head. */
export interface HeatCourse {
  /** From a time on, a share of the heat that brought the charge to the boil. */
  readonly shares: readonly { readonly fromS: number; readonly share: number }[];
  /** Heat taken away, and given back. */
  readonly removals: readonly { readonly fromS: number; readonly toS: number }[];
  /** The heat is taken off for good when the vapour has been 3 % vol weaker than the limit for so long [s]. */
  readonly weakForS: number;
  readonly limitAbv: number;
}

export interface SecondCourse {
  readonly samples: readonly TrueSecond[];
  readonly arrivalS: number | null;
  readonly heatOffS: number;
  /** Ethanol in pot, column and receiver at the end, less that charged [mol]. */
  readonly ethanolGainMol: number;
}

const stepS = 0.1;
const stepsASecond = 10;
const longestS = 5 * 3600;
const coolDownS = 900;
/** Least vapour at the bulb, as a share of the usual, that bathes it. */
const bathingShare = 0.12;
const goneShare = 0.03;
/** What a still gives in the end never exceeds this share of the charge. */
const mostDistilled = 0.4;

/** Runs a still from cold until some minutes after its heat was taken off. */
export function runSecondStill(still: SecondStill, heat: HeatCourse): SecondCourse {
  const column = createStageColumn(still);
  const chargedMol = column.ethanolMol();
  const bulb = createBulb(still);
  const received = { aboveLimitMl: 0, belowLimitMl: 0, aboveLimitMol: 0, allMol: 0 };
  const samples: TrueSecond[] = [];
  let heaterW = 0;
  let arrivalS: number | null = null;
  let heatOffS: number | null = null;
  let weakS = 0;

  for (let step = 0; ; step += 1) {
    const timeS = step * stepS;
    const share = heatOffS === null ? heatShare(heat, timeS, arrivalS) : 0;
    heaterW += ((share * still.heaterW - heaterW) * stepS) / still.heaterS;
    const distillate = column.step(stepS, heaterW, (still.pressureDriftKPa * timeS) / 7200);

    const abv = strengthAbv(distillate.y);
    const gainMol = distillate.molPerS * stepS;
    const gainMl = gainMol * molarVolumeMl(distillate.y);
    received.allMol += gainMol * distillate.y;
    if (abv >= heat.limitAbv) {
      received.aboveLimitMl += gainMl;
      received.aboveLimitMol += gainMol * distillate.y;
    } else received.belowLimitMl += gainMl;

    const passing = (distillate.molPerS * (1 + still.refluxRatio)) / usualMolPerS(still);
    const bathed = Math.min(1, passing / bathingShare);
    const bulbC = bulb.feel(step, bathed, distillate.temperatureC, column.headWallC());
    if (bathed >= 1) arrivalS ??= timeS;

    if (step % stepsASecond !== 0) continue;
    const distilledMl = received.aboveLimitMl + received.belowLimitMl;
    samples.push({
      timeS: samples.length,
      bathedFraction: bathed,
      bulbTemperatureC: bulbC,
      headVapourStrengthAbv: abv,
      distillateVolumeMl: distilledMl,
      aboveLimitMl: received.aboveLimitMl,
      belowLimitMl: received.belowLimitMl,
      aboveLimitEthanolMol: received.aboveLimitMol,
    });
    const flows = distillate.molPerS > goneShare * usualMolPerS(still);
    if (flows && arrivalS !== null && timeS > arrivalS + 120) {
      weakS = abv < heat.limitAbv - 3 ? weakS + 1 : 0;
    }
    const isDone = weakS >= heat.weakForS || distilledMl > mostDistilled * still.chargeMl;
    if (isDone || timeS >= longestS - coolDownS) heatOffS ??= samples.length - 1;
    if (heatOffS !== null && samples.length > heatOffS + coolDownS) {
      const ethanolGainMol = column.ethanolMol() + received.allMol - chargedMol;
      return { samples, arrivalS, heatOffS, ethanolGainMol };
    }
  }
}

function heatShare(
  { removals, shares }: HeatCourse,
  timeS: number,
  arrivalS: number | null,
): number {
  if (arrivalS === null) return 1;
  const sinceS = timeS - arrivalS;
  if (removals.some(({ fromS, toS }) => sinceS >= fromS && sinceS < toS)) return 0;
  return shares.findLast(({ fromS }) => sinceS >= fromS)?.share ?? 1;
}

/** A bulb that feels what passes it some seconds later, and follows with a lag. */
function createBulb({ roomC, bulbS, deadS }: SecondStill) {
  const delayed = new Float64Array(Math.round(deadS * stepsASecond) + 1).fill(roomC);
  let bulbC = roomC;
  return {
    /** Where no vapour passes it takes on the temperature of the wall. */
    feel: (step: number, bathed: number, vapourC: number, wallC: number): number => {
      delayed[step % delayed.length] = bathed * vapourC + (1 - bathed) * Math.min(vapourC, wallC);
      const felt = delayed[(step + 1) % delayed.length] as number;
      bulbC += ((felt - bulbC) * stepS) / bulbS;
      return bulbC;
    },
  };
}
