import { writeFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { z } from 'zod';
import { watchMachineLoad } from './machine-load.ts';
import { matchPaints, type ShownReading } from './match-paints.ts';
import type { MeasureOptions } from './measure-options.ts';
import type { NumberedProbe } from './numbered-probe.ts';
import type { MeasuredWindow } from './open-measured-window.ts';
import { comparePageClock } from './page-clock.ts';
import { type CoreTime, watchThreadWaits } from './thread-waits.ts';

const probeEveryMs = 100;
/** The page settles after loading: first drawings, first compilation. */
const settleMs = 35_000;
/** What was sent before is on the screen by then. */
const drainMs = 3000;

const stretchSchema = z.array(
  z.object({ startMs: z.number(), durationMs: z.number(), scripts: z.array(z.string()) }),
);
const recordSchema = z.object({
  paints: z.array(z.object({ text: z.string(), atMs: z.number() })),
  longTasks: stretchSchema,
  longFrames: stretchSchema,
  frames: z.number(),
});
const takeRecord = 'pageRecorder.take()';

/** A stretch in which the page's main thread could not answer. */
export interface LongTask {
  /** Since the timing began. */
  readonly afterMs: number;
  readonly durationMs: number;
  /** What ran in the frame it belongs to. */
  readonly scripts: readonly string[];
  readonly coreTime: CoreTime | null;
}

export interface Timing {
  readonly forMs: number;
  readonly readings: readonly ShownReading[];
  readonly unexplained: number;
  readonly longestPauseMs: number;
  readonly longTasks: readonly LongTask[];
  readonly framesPerS: number;
  /** Of the page's main thread, over all of it. */
  readonly coreTime: CoreTime | null;
  readonly clockErrorMs: number;
  readonly clockDriftMs: number;
  readonly machine: string;
}

/** Times readings from the port to the screen. */
export async function timeReadings(
  { page, tools, pid }: MeasuredWindow,
  probe: NumberedProbe,
  { minutes, profile }: MeasureOptions,
): Promise<Timing> {
  await wait(drainMs);
  await page.evaluate(takeRecord);
  const stopProbe = probe.begin(probeEveryMs);
  await wait(settleMs);
  const clockBefore = await comparePageClock(page);
  if (profile !== null) {
    await tools.send('Profiler.enable');
    await tools.send('Profiler.start');
  }
  const waits = watchThreadWaits(await pid());
  const load = watchMachineLoad();
  const fromMs = performance.now();
  await wait(minutes * 60_000);
  const untilMs = performance.now();
  const machine = load.report();
  waits.stop();
  if (profile !== null) {
    const recorded = await tools.send('Profiler.stop');
    writeFileSync(profile, JSON.stringify(recorded.profile));
  }
  const record = recordSchema.parse(await page.evaluate(takeRecord));
  const clockAfter = await comparePageClock(page);
  stopProbe();

  const { offsetMs } = clockBefore;
  const isTimed = (atMs: number) => atMs >= fromMs && atMs < untilMs;
  const matched = matchPaints(
    probe.sent,
    record.paints.map(({ text, atMs }) => ({ text, atMs: atMs + offsetMs })),
  );
  return {
    ...matched,
    forMs: untilMs - fromMs,
    readings: matched.readings.filter(({ sentMs }) => isTimed(sentMs)),
    longTasks: record.longTasks
      .map((task) => ({ ...task, startMs: task.startMs + offsetMs }))
      .filter(({ startMs }) => isTimed(startMs))
      .map(({ startMs, durationMs }) => ({
        afterMs: startMs - fromMs,
        durationMs,
        scripts: record.longFrames
          .filter((frame) => frame.startMs + offsetMs < startMs + durationMs)
          .filter((frame) => frame.startMs + offsetMs + frame.durationMs > startMs)
          .flatMap((frame) => frame.scripts),
        coreTime: waits.between(startMs, startMs + durationMs),
      })),
    framesPerS: (1000 * record.frames) / (untilMs - fromMs + settleMs),
    coreTime: waits.between(fromMs, untilMs),
    clockErrorMs: clockBefore.errorMs,
    clockDriftMs: Math.abs(clockAfter.offsetMs - offsetMs),
    machine,
  };
}
