import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import { azeotrope, bubblePoint, dewPoint } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { estimateFrom } from './estimate-from.ts';
import { expectedCourse } from './expected-course.ts';
import { noMainFraction } from './no-main-fraction.ts';
import { type PlanMember, planMembers } from './plan-members.ts';
import type { PlanRequest } from './plan-request.ts';
import { purityAgainstRecovery } from './purity-against-recovery.ts';
import { type FractionOutcome, type PlanOutcome, runMember } from './run-member.ts';
import type { FractionPlan, PlanVerdict, RunPlan } from './run-plan.ts';
import { withModelDoubt } from './with-model-doubt.ts';

/** A main fraction smaller than this share of the charge's ethanol is none worth changing a receiver for. */
const leastRecovered = 0.1;

/**
 * What to expect of a charge, a rig and an air pressure before heating. Method: `createBatchSimulation` is run some
 * dozens of times over the uncertain inputs (plates, losses, heat, strength, pressure); each result is the median
 * with the central 90 % of those runs. Equilibrium temperatures have the doubt of the equilibrium model added.
 *
 * @param request valid ranges and units stand beside each field
 * @returns temperatures [°C], times [s], volumes [mL at 20 °C], strengths [% vol], and a verdict with cause
 * @throws OutOfRangeError outside the ranges
 *
 * Source: our own simulator, see `createBatchSimulation`; cause and remedies from McCabe–Thiele steps.
 * @example
 * const { charge, rig } = pearFermentSetup();
 * const plan = planRun({ charge, rig, pressureKPa: 99.4, leastStrengthAbv: 80, collect: { kind: 'heat', powerW: 64 }, runs: 8 });
 * plan.verdict.kind // => "main-fraction"
 * plan.boilingPointC.value // ≈ 91.2 ± 0.2
 * plan.azeotropeC.value // ≈ 77.7 ± 0.1
 */
export function planRun(request: PlanRequest): RunPlan {
  const { leastStrengthAbv, firstFractionMl = 1 } = request;
  requireInRange('least strength', leastStrengthAbv, 10, 94, '% vol');
  requireInRange('strength of the charge', request.charge.strengthAbv, 0.5, 95, '% vol');
  requireInRange('air pressure', request.pressureKPa, 50, 110, 'kPa');
  requireInRange('first fraction', firstFractionMl, 0, 1000, 'mL');
  requireInRange('number of runs', request.runs ?? 48, 8, 400, '');
  const members = planMembers(request);
  const outcomes = members.map((member) => runMember(member, firstFractionMl, leastStrengthAbv));
  const pressures = members.map(({ setup }) => setup.pressureKPa as number);
  const withMain = outcomes.filter(hasMainFraction);
  const most = withMain.length >= outcomes.length / 2 ? withMain : [];
  const limitMoleFraction = moleFractionFromStrength(leastStrengthAbv);
  const over = <T>(of: (outcome: PlanOutcome) => T | null) =>
    outcomes.map(of).filter((value) => value !== null);
  const place = {
    azeotropeC: azeotrope(request.pressureKPa).temperatureC,
    pressureKPa: request.pressureKPa,
  };
  const doubted = (temperaturesC: readonly number[]) =>
    withModelDoubt(certain(temperaturesC), place);
  return {
    boilingPointC: doubted(members.map(({ setup }) => boilingPointC(setup))),
    azeotropeC: doubted(pressures.map((pressureKPa) => azeotrope(pressureKPa).temperatureC)),
    limitTemperatureC: doubted(
      pressures.map(
        (pressureKPa) =>
          dewPoint({ ethanolMoleFraction: limitMoleFraction, pressureKPa }).temperatureC,
      ),
    ),
    plateauC:
      most.length === 0 ? null : doubted(most.map(({ plateauC }) => plateauC ?? Number.NaN)),
    timeToVapourS: estimateFrom(over(({ vapourS }) => vapourS)),
    refluxRatio: estimateFrom(over(({ refluxRatio }) => refluxRatio)),
    firstFraction: fractionPlan(over(({ firstFraction }) => firstFraction)),
    mainFraction: fractionPlan(most.flatMap(({ mainFraction }) => mainFraction ?? [])),
    tail: fractionPlan(over(({ tail }) => tail)),
    durationS: certain(outcomes.map(({ durationS }) => durationS)),
    recoveredFraction: estimateFrom(most.map(recoveredFraction)),
    purityAgainstRecovery: purityAgainstRecovery(outcomes),
    course: expectedCourse(outcomes),
    verdict: verdictOf(request, outcomes, withMain.length),
  };
}

function boilingPointC({ charge, pressureKPa }: PlanMember['setup']): number {
  const ethanolMoleFraction = moleFractionFromStrength(charge.strengthAbv);
  return bubblePoint({ ethanolMoleFraction, pressureKPa: pressureKPa as number }).temperatureC;
}

function recoveredFraction({ mainFraction, chargeEthanolMol }: PlanOutcome): number {
  return (mainFraction?.ethanolMol ?? 0) / chargeEthanolMol;
}

function hasMainFraction(outcome: PlanOutcome): boolean {
  return outcome.mainFraction !== null && recoveredFraction(outcome) >= leastRecovered;
}

function fractionPlan(outcomes: readonly FractionOutcome[]): FractionPlan | null {
  if (outcomes.length === 0) return null;
  return {
    fromS: certain(outcomes.map(({ fromS }) => fromS)),
    toS: certain(outcomes.map(({ toS }) => toS)),
    lengthS: certain(outcomes.map(({ fromS, toS }) => toS - fromS)),
    volumeMl: certain(outcomes.map(({ volumeMl }) => volumeMl)),
    strengthAbv: certain(outcomes.map(({ strengthAbv }) => strengthAbv)),
  };
}

/** The estimate of a quantity that every run has. */
function certain(values: readonly number[]): Estimate {
  return estimateFrom(values) as Estimate;
}

function verdictOf(
  request: PlanRequest,
  outcomes: readonly PlanOutcome[],
  withMain: number,
): PlanVerdict {
  const probability = withMain / outcomes.length;
  if (probability >= 0.5) return { kind: 'main-fraction', probability };
  const ratios = outcomes.map((outcome) => outcome.refluxRatio).filter((ratio) => ratio !== null);
  const refluxRatio = estimateFrom(ratios)?.value ?? 0;
  const found = noMainFraction(request, refluxRatio);
  return { kind: 'no-main-fraction', probability, refluxRatio, ...found };
}
