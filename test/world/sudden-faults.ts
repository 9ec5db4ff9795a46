import type { Random } from '../../shared-core/random/create-random.ts';
import { type Asking, teacher, viewer } from './asking.ts';
import type { Bench } from './bench.ts';
import { litter } from './computer-life.ts';
import type { Fault } from './fault.ts';
import type { Judge } from './judge.ts';
import type { Person } from './person.ts';
import type { PlantedFault } from './planted-fault.ts';
import { runsFolder } from './program.ts';
import { runSecondProgram } from './second-program.ts';
import type { SimulatedDesk } from './simulated-desk.ts';
import type { WorldRuns } from './world-runs.ts';

export interface SuddenParts extends Asking {
  readonly bench: Bench;
  readonly random: Random;
  readonly judge: Judge;
  readonly planted: PlantedFault | undefined;
  readonly runs: WorldRuns;
  readonly person: Person;
  readonly desk: () => SimulatedDesk | null;
  /** There is a program, and it has its turns. */
  readonly isRunning: () => boolean;
}

/** A desk that is killed looks at the disk fewer times before [looks]. */
const mostLooks = 25;

/** What a fault does in the moment in which it begins. */
export function createSuddenFaults(parts: SuddenParts) {
  const { bench, random, judge, planted, runs, person, ask } = parts;
  const { computer } = bench.time;

  async function viewerGivesOrders(): Promise<void> {
    const who = planted === 'viewer-obeyed' ? teacher : viewer;
    const mark = { type: 'note', text: 'from the back row' } as const;
    const { settings } = bench;
    const orders = [
      await ask('run/mark', { mark }, who),
      await ask('run/start', { settings }, who),
      await ask('runs/trash', { runId: runs.now()?.runId ?? 'x' }, who),
      ...(planted === undefined
        ? [await ask('run/stop', {}, who), await ask('probe/disconnect', {}, who)]
        : []),
    ];
    if (orders.some(({ ok }) => ok)) judge.violated('viewer-commands-nothing', 'It was obeyed.');
  }

  return async function begin({ kind, fromS, toS }: Fault): Promise<void> {
    const seconds = toS - fromS;
    if (kind === 'wall-clock-is-set') computer.setWall(seconds % 2 === 0 ? 3600 : -3600);
    if (kind === 'folder-vanishes') {
      const isStick = seconds % 2 === 0;
      bench.disk.disconnect(isStick ? random.fork(`pulled at ${fromS}`) : null);
      await runs.pulledOut();
    }
    if (!parts.isRunning()) return;
    if (kind === 'desk-is-killed') parts.desk()?.killAfter(seconds % mostLooks);
    const runId = runs.now()?.runId;
    if (kind === 'viewer-gives-orders') await viewerGivesOrders();
    if (kind === 'person-writes-a-note') {
      await person.mark({ type: 'note', text: `at ${fromS}` });
    }
    if (kind === 'person-stops-the-run') {
      if (bench.hold.isHeld()) runs.askToStop();
      else await runs.stop();
    }
    if (kind === 'run-is-tidied-away') await runs.tidyAway();
    if (kind === 'second-program' && runId !== undefined) {
      await runSecondProgram({ ...parts, runId });
    }
    if (kind === 'folder-is-littered' && runId !== undefined) {
      await parts.wait(litter(bench.disk.files, runsFolder, runId));
    }
  };
}
