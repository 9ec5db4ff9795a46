import { setTimeout as pause } from 'node:timers/promises';
import { checkRuns, nodeFileLayer, type RunCheck } from '#main';
import { quantile } from '../measuring/quantile.ts';
import { readWholeRun } from '../measuring/recorded-run.ts';
import { startAttackedServices } from './attacked-services.ts';
import type { Attack } from './attacks.ts';
import { countedReadings, startCountingProbe } from './counting-probe.ts';

/** What one attack did to services that were recording. */
export interface AttackOutcome {
  readonly name: string;
  readonly outcome: string;
  /** The services' longest piece of work [ms of the processor]. */
  readonly longestStallMs: number;
  /** At the most, more than ever in the quiet time before. */
  readonly moreMb: number;
  /** Lines the probe wrote meanwhile. */
  readonly written: number;
  /** By how much their stamps lie off those of quiet times: the middle one, and the worst. */
  readonly usualShiftMs: number;
  readonly worstShiftMs: number;
}

export interface AttackReport {
  readonly outcomes: readonly AttackOutcome[];
  /** The same figures of a time without any attack. */
  readonly quiet: AttackOutcome;
  /** By how much the stamps of all lines that were written under attack lie off, the middle one. */
  readonly usualShiftMs: number;
  /** Lines in the record, in its order. */
  readonly recordedLines: readonly number[];
  /** Lines written since the run heard its first one that the record does not have. */
  readonly lostLines: readonly number[];
  /** Gaps in the record that were put down to a sleep of the computer. */
  readonly sleeps: number;
  readonly checks: readonly RunCheck[];
}

/** What was written meanwhile, and the memory. */
interface Span {
  readonly mostMb: number;
  readonly fromLine: number;
  readonly toLine: number;
}

const linesPerS = 20;
const quietMs = 3000;

/** Records from a counting probe over a real pseudo-terminal while one attack after the other is made. */
export async function attackServices(
  folder: string,
  attacks: readonly Attack[],
): Promise<AttackReport> {
  const probe = startCountingProbe(linesPerS);
  const services = await startAttackedServices(folder, probe.path);
  try {
    await pause(quietMs);
    await services.figures();
    const quiet: Attack = {
      name: 'nothing',
      async run() {
        await pause(quietMs);
        return '';
      },
    };
    const spans: (Omit<AttackOutcome, 'written' | 'usualShiftMs' | 'worstShiftMs'> & Span)[] = [];
    for (const attack of [quiet, ...attacks]) {
      const fromLine = probe.writtenS.length;
      const outcome = await attack.run(services);
      await pause(500);
      const { longestStallMs, mostMb } = await services.figures();
      const toLine = probe.writtenS.length;
      const moreMb = mostMb - (spans[0]?.mostMb ?? mostMb);
      spans.push({ name: attack.name, outcome, longestStallMs, mostMb, moreMb, fromLine, toLine });
    }
    const writtenLines = probe.writtenS.length;
    await pause(500);
    await services.stop();
    const { recorded, sleeps, checks } = await readRecord(services.runsFolder);
    const shiftsS = new Map(
      recorded.map(({ line, timeS }) => [line, timeS - (probe.writtenS[line] ?? Number.NaN)]),
    );
    const shiftsOf = (fromLine: number, toLine: number) =>
      [...shiftsS].flatMap(([line, shiftS]) => (line >= fromLine && line < toLine ? [shiftS] : []));
    const [calm] = spans;
    const usualS = quantile(shiftsOf(calm?.fromLine ?? 0, calm?.toLine ?? 0), 0.5);
    const [first, ...others] = spans.map(
      ({ fromLine, toLine, mostMb: _, ...span }): AttackOutcome => {
        const offMs = shiftsOf(fromLine, toLine).map((shiftS) => 1000 * (shiftS - usualS));
        return {
          ...span,
          written: toLine - fromLine,
          usualShiftMs: quantile(offMs, 0.5),
          worstShiftMs: Math.max(...offMs.map(Math.abs)),
        };
      },
    );
    if (first === undefined) throw new Error('Nothing was measured.');
    const [{ toLine: attackedFrom } = { toLine: 0 }] = spans;
    const attackedS = quantile(shiftsOf(attackedFrom, writtenLines), 0.5);
    const usualShiftMs = 1000 * (attackedS - usualS);
    const recordedLines = recorded.map(({ line }) => line);
    const firstLine = recordedLines[0] ?? 0;
    const lostLines = Array.from({ length: writtenLines }, (_, line) => line).filter(
      (line) => line >= firstLine && !shiftsS.has(line),
    );
    return {
      outcomes: others,
      quiet: first,
      usualShiftMs,
      recordedLines,
      lostLines,
      sleeps,
      checks,
    };
  } finally {
    services.signal('SIGKILL');
    probe.close();
  }
}

async function readRecord(runsFolder: string) {
  const checks: RunCheck[] = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  const { inputs } = await readWholeRun(runsFolder, checks[0]?.runId ?? '');
  const sleeps = inputs.filter(
    (input) => input.kind === 'link' && input.reason === 'computer-asleep',
  ).length;
  return { recorded: countedReadings(inputs), sleeps, checks };
}
