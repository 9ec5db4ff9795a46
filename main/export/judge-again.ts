import { setImmediate } from 'node:timers/promises';
import {
  asGiven,
  fail,
  type Monitor,
  type Result,
  type RunInput,
  type RunSettings,
  succeed,
  type Verdicts,
  worded,
} from '#shared-core';

export type CreateMonitor = (settings: RunSettings) => Monitor;

interface RunToJudge {
  readonly settings: RunSettings;
  readonly inputs: readonly RunInput[];
  readonly endS: number;
}

/** Inputs worked on before everything else gets its turn: some milliseconds. */
const inputsAtOnce = 2000;

/**
 * What the monitor makes of a recorded run, taking turns with the recording of another; or, in a sentence, why it makes nothing of
 * it. What was recorded can be given out all the same.
 */
export async function judgeAgain(
  { settings, inputs, endS }: RunToJudge,
  createMonitor: CreateMonitor,
): Promise<Result<Verdicts, string>> {
  try {
    const monitor = createMonitor(settings);
    for (const [index, input] of inputs.entries()) {
      monitor.push(input);
      if (index % inputsAtOnce === 0) await setImmediate();
    }
    monitor.advanceTo(endS);
    return succeed(monitor.verdicts());
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    console.error('The monitor failed on a record:', error);
    return fail(
      worded(
        'Stages, calls, estimates and the verdict are missing: the monitor failed on this record ({reason}). Every reading and mark that was recorded is there.',
        { reason: asGiven(reason) },
      ),
    );
  }
}
