import { type BatchState, createBatchSimulation } from '../column/index.ts';
import type { PlanMember } from './plan-members.ts';

/** What one fraction of one simulated run came to. */
export interface FractionOutcome {
  readonly fromS: number;
  readonly toS: number;
  readonly volumeMl: number;
  readonly strengthAbv: number;
  readonly ethanolMol: number;
}

/** What is read off a run at equal intervals. */
export interface PlanSample {
  readonly timeS: number;
  readonly bulbTemperatureC: number;
  /** Share of the charge's ethanol collected since the first fraction, and its mean strength [% vol]. */
  readonly recoveredFraction: number;
  readonly meanStrengthAbv: number;
  readonly vapourStrengthAbv: number;
}

/** One simulated run, cut into fractions as a careful person would. */
export interface PlanOutcome {
  readonly vapourS: number | null;
  readonly firstFraction: FractionOutcome | null;
  readonly mainFraction: FractionOutcome | null;
  readonly tail: FractionOutcome | null;
  /** Head temperature and reflux ratio when half of the main fraction's time has passed. */
  readonly plateauC: number | null;
  readonly refluxRatio: number | null;
  readonly durationS: number;
  readonly chargeEthanolMol: number;
  readonly samples: readonly PlanSample[];
}

export const sampleEveryS = 20;
/** The longest run looked at, two double lessons. */
const longestS = 3 * 3600;
/** The tail is over when the vapour is this weak [% vol]. */
const tailEndAbv = 20;
/** Without strong vapour for so long after the first fraction there is no main fraction. */
const patienceS = 300;

type Cut = 'first' | 'main' | 'tail';

/** Runs one member: full heat until the pot boils, then the planned heat, receivers changed at the cuts. */
export function runMember(
  member: PlanMember,
  firstFractionMl: number,
  leastStrengthAbv: number,
): PlanOutcome {
  const simulation = createBatchSimulation(member.setup);
  const chargeEthanolMol = simulation.ledger.ethanolMol;
  const fractions: Partial<Record<Cut, FractionOutcome>> = {};
  const samples: PlanSample[] = [];
  const duringMain: BatchState[] = [];
  let cut = 'first' as Cut;
  let state = simulation.state;
  let boils = false;
  let vapourS: number | null = null;
  let cutS = 0;
  let hasBeenStrong = false;
  let beforeCutMol = 0;

  const close = (next: Cut): void => {
    fractions[cut] = outcomeOf(state, cutS);
    if (cut === 'main') beforeCutMol = state.receiver.ethanolMol;
    simulation.applyEvent({ kind: 'receiver-changed' });
    state = simulation.state;
    cut = next;
    cutS = state.timeS;
  };

  for (let timeS = sampleEveryS; timeS <= longestS; timeS += sampleEveryS) {
    simulation.advance(timeS);
    state = simulation.state;
    if (!boils && state.boilUpMolPerS > 0) {
      boils = true;
      simulation.applyEvent({ kind: 'heat-eased', powerW: member.collectW });
    }
    if (vapourS === null && state.bathedFraction >= 0.95) {
      vapourS = timeS;
      cutS = timeS;
    }
    const strong = state.vapourAtHead && state.headVapourStrengthAbv >= leastStrengthAbv;
    if (cut === 'first' && vapourS !== null && state.receiver.volumeMl >= firstFractionMl) {
      close('main');
    } else if (cut === 'main') {
      duringMain.push(state);
      hasBeenStrong ||= strong;
      if (!strong && hasBeenStrong) close('tail');
      // Nothing strong has come: what stands in the receiver belongs to the tail.
      else if (!hasBeenStrong && timeS - cutS > patienceS) cut = 'tail';
    }
    samples.push(sampleOf(state, cut, beforeCutMol, fractions.main, chargeEthanolMol));
    const isOver = vapourS !== null && state.headVapourStrengthAbv < tailEndAbv;
    if (isOver || state.potVolumeMl < 0.1 * member.setup.charge.volumeMl) break;
  }
  fractions[cut] = outcomeOf(state, cutS);
  const middle = duringMain[duringMain.length >> 1];
  return {
    vapourS,
    firstFraction: vapourS === null ? null : (fractions.first ?? null),
    mainFraction: hasBeenStrong ? (fractions.main ?? null) : null,
    tail: fractions.tail ?? null,
    plateauC: hasBeenStrong ? (middle?.headVapourTemperatureC ?? null) : null,
    refluxRatio: middle?.refluxRatio ?? null,
    durationS: state.timeS,
    chargeEthanolMol,
    samples,
  };
}

function outcomeOf({ receiver, timeS }: BatchState, fromS: number): FractionOutcome {
  return { fromS, toS: timeS, ...receiver };
}

function sampleOf(
  state: BatchState,
  cut: Cut,
  mainMol: number,
  main: FractionOutcome | undefined,
  chargeEthanolMol: number,
): PlanSample {
  const { receiver } = state;
  const collected = cut === 'first' ? 0 : receiver.ethanolMol + mainMol;
  const mainMl = cut === 'tail' ? (main?.volumeMl ?? 0) : 0;
  const mainAbv = main?.strengthAbv ?? 0;
  const volumeMl = receiver.volumeMl + mainMl;
  return {
    timeS: state.timeS,
    bulbTemperatureC: state.bulbTemperatureC,
    recoveredFraction: collected / chargeEthanolMol,
    // Volumes add to within 1 % on mixing; strength by volume then averages by volume.
    meanStrengthAbv:
      volumeMl > 0 ? (receiver.strengthAbv * receiver.volumeMl + mainAbv * mainMl) / volumeMl : 0,
    vapourStrengthAbv: state.headVapourStrengthAbv,
  };
}
