import type { ProbeSource } from '#shared-core';
import { createCommands } from '../../renderer/parts/commands.ts';
import { type RehearsalSpeed, rehearse } from '../../renderer/prepare/rehearse.ts';
import { createBenchStore } from '../../renderer/stores/index.ts';
import type { Random } from '../../shared-core/random/create-random.ts';
import type { Asking } from './asking.ts';
import type { Bench } from './bench.ts';
import type { FaultKind } from './fault.ts';
import type { Judge } from './judge.ts';
import type { Person } from './person.ts';
import type { Program } from './program.ts';
import { createSimulatedConnection } from './simulated-connection.ts';
import type { WorldRuns } from './world-runs.ts';

export interface RehearsalParts extends Asking {
  readonly bench: Bench;
  readonly judge: Judge;
  readonly random: Random;
  readonly runs: WorldRuns;
  readonly person: Person;
  readonly program: () => Program | null;
  /** Once nobody takes in or gives out a table, which makes monitors of its own. */
  readonly rest: () => Promise<void>;
}

/** Somebody rehearses with the simulated still, in place of the run; their probe is there again afterwards. */
export interface Rehearsal {
  /** One goes on, or its probe may not have come back yet: nobody begins a run. */
  isHeld(): boolean;
  /** Of a program and a computer that have their turns. */
  step(): Promise<void>;
}

interface Held {
  readonly of: Program;
  readonly before: ProbeSource | null;
  readonly timeScale: number;
  /** Steps since it began, and since it was over. */
  goesOnFor: number;
  overFor: number | null;
  /** Somebody or something else let go of the probe, or keeps it from being opened. */
  isExcused: boolean;
  receiverMl: number;
  marks: number;
}

const speeds = [20, 60] as const satisfies readonly RehearsalSpeed[];
/** The first drops come after twenty minutes of the still; a little later everything was seen [s of the still]. */
const seenAfterS = 1400;
/** Steps between two looks at the receiver, and of them between two receivers. */
const readsEvery = 4;
const changesEvery = 12;
/** The probe is connected again within so many steps, slow as its port may be. */
const backWithin = 20;
/** Two readings of a cylinder that was emptied just now differ by no more [mL]. */
const emptyMl = 0.5;

const keepsFromOpening: readonly FaultKind[] = [
  'line-hangs-up',
  'second-line-hangs-up',
  'probe-at-another-port',
  'computer-sleeps',
  'computer-sleeps-untold',
];

export function createRehearsal(parts: RehearsalParts): Rehearsal {
  const { ask, wait, bench, judge, random, runs, program } = parts;
  const { mark } = parts.person;
  const { isOn } = bench;
  const window = createSimulatedConnection({
    time: bench.time,
    mayCommand: true,
    delayS: () => 0,
  });
  const commands = createCommands(window, createBenchStore());
  let held: Held | null = null;

  async function begin(of: Program): Promise<void> {
    await runs.stop();
    const timeScale = speeds[random.integer(0, speeds.length - 1)] ?? 20;
    const begun: Held = {
      of,
      before: of.hub.status().source,
      timeScale,
      goesOnFor: 0,
      overFor: null,
      isExcused: false,
      receiverMl: 0,
      marks: 0,
    };
    held = begun;
    await wait(parts.rest());
    window.join(of.session);
    const isBegun = await runs.begin(
      async () => (await wait(rehearse(commands, timeScale))) === true,
    );
    window.breakOff();
    if (!isBegun) begun.overFor = 0;
  }

  async function readReceiver(of: Held): Promise<void> {
    const status = await ask('probe/status', {});
    const shownMl = status.ok ? status.value.rehearsedReceiverMl : undefined;
    if (shownMl === undefined) return;
    const marks = runs.now()?.marks.length ?? 0;
    // Whoever marks something else may have changed the receiver, or have taken that back.
    const isSame = marks === of.marks;
    if (isSame && shownMl < of.receiverMl) {
      judge.violated('receiver-holds-what-came-over', `${of.receiverMl} mL, then ${shownMl} mL.`);
    }
    of.receiverMl = shownMl;
    if (of.goesOnFor % changesEvery !== 0) {
      await mark({ type: 'volume-read', volumeMl: shownMl });
    } else if (await mark({ type: 'receiver-changed', volumeMl: shownMl })) {
      const next = await ask('probe/status', {});
      const nextMl = next.ok ? (next.value.rehearsedReceiverMl ?? 0) : 0;
      if (nextMl > emptyMl) judge.violated('receiver-holds-what-came-over', `New: ${nextMl} mL.`);
      of.receiverMl = nextMl;
    }
    of.marks = runs.now()?.marks.length ?? 0;
  }

  function checkIsBack({ of, before, isExcused }: Held): void {
    const { source } = of.hub.status();
    if (source?.kind === 'demo' || (!isExcused && source?.kind !== before?.kind)) {
      const found = `${source?.kind ?? 'nothing'}, was ${before?.kind ?? 'nothing'}.`;
      judge.violated('rehearsal-gives-the-probe-back', found);
    }
  }

  return {
    isHeld: () => held !== null || isOn('rehearsal-is-held'),
    async step() {
      const now = program();
      if (held !== null && held.of !== now) held = null;
      if (held === null) {
        if (now !== null && isOn('rehearsal-is-held')) await begin(now);
        return;
      }
      // It is connected again once, when the rehearsal is stopped, be it by somebody else.
      const isStopped = held.overFor !== null || held.of.session.recordingStatus().runId === null;
      if (isOn('probe-is-let-go') || (isStopped && keepsFromOpening.some(isOn))) {
        held.isExcused = true;
      }
      if (held.overFor === null) {
        held.goesOnFor += 1;
        if (held.goesOnFor % readsEvery === 0) await readReceiver(held);
        const stillS = held.goesOnFor * 0.5 * held.timeScale;
        if (isOn('rehearsal-is-held') && stillS < seenAfterS) return;
        if (keepsFromOpening.some(isOn)) held.isExcused = true;
        await runs.stop();
        held.overFor = 0;
      }
      held.overFor += 1;
      if (held.overFor === backWithin) checkIsBack(held);
      if (held.overFor >= backWithin && !isOn('rehearsal-is-held')) held = null;
    },
  };
}
