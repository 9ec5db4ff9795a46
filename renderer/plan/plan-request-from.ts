import { type PlanRequest, type RunSettings, rigAsKnown } from '#shared-core';

/** Simulated runs: enough for 90 % intervals that are steady to a minute, quick enough to wait for. */
const simulatedRuns = 24;
/** Near the azeotrope no rig gets; planning stops short of it. */
const strongestPlannedAbv = 94;

/** The question that the settings of a run ask of the planner. */
export function planRequestFrom(settings: RunSettings, dripRateMlPerMin: number): PlanRequest {
  const { charge, pressure, leastStrengthAbv, firstFraction } = settings;
  const { rig, uncertainty } = rigAsKnown(settings.rig);
  return {
    charge: { volumeMl: charge.volumeMl, strengthAbv: charge.strengthAbv },
    rig,
    pressureKPa: pressure.pressureKPa,
    leastStrengthAbv: Math.min(leastStrengthAbv, strongestPlannedAbv),
    collect: { kind: 'drip-rate', mlPerMin: dripRateMlPerMin },
    ...(firstFraction.kind === 'volume' && {
      firstFractionMl: Math.min(firstFraction.volumeMl, 1000),
    }),
    uncertainty: {
      ...uncertainty,
      strengthAbv: Math.min(charge.standardUncertaintyAbv, 5),
      pressureKPa: Math.min(pressure.standardUncertaintyKPa, 6),
    },
    runs: simulatedRuns,
  };
}
