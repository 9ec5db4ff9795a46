import { writeFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { z } from 'zod';
import { watchMachineLoad } from './machine-load.ts';
import { matchPaints } from './match-paints.ts';
import type { MeasureOptions } from './measure-options.ts';
import type { NumberedProbe } from './numbered-probe.ts';
import type { MeasuredWindow } from './open-measured-window.ts';
import { comparePageClock } from './page-clock.ts';
import { quantile } from './quantile.ts';
import { watchThreadWaits } from './thread-waits.ts';

const probeEveryMs = 100;
/** The page settles after loading: first drawings, first compilation. */
const settleMs = 35_000;
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

/** Times readings from the port to the screen and prints the figures. */
export async function timeReadings(
  { page, tools, pid }: MeasuredWindow,
  probe: NumberedProbe,
  { minutes, profile }: MeasureOptions,
): Promise<void> {
  // What was poured before is on the screen and out of the record, then every number is matched.
  await wait(drainMs);
  await page.evaluate(takeRecord);
  const stopProbe = probe.begin(probeEveryMs);
  await wait(settleMs);
  const clockBefore = await comparePageClock(page);
  if (profile !== null) {
    await tools.send('Profiler.enable');
    await tools.send('Profiler.start');
  }
  const fromMs = performance.now();
  const load = watchMachineLoad();
  const waits = watchThreadWaits(await pid());
  await wait(minutes * 60_000);
  const untilMs = performance.now();
  const loadWords = load.report();
  waits.stop();
  if (profile !== null) {
    const recorded = await tools.send('Profiler.stop');
    writeFileSync(profile, JSON.stringify(recorded.profile));
  }
  const {
    paints,
    longTasks: allLongTasks,
    longFrames,
    frames,
  } = recordSchema.parse(await page.evaluate(takeRecord));
  const clockAfter = await comparePageClock(page);
  stopProbe();

  const { offsetMs } = clockBefore;
  const isIn = (atMs: number) => atMs >= fromMs && atMs < untilMs;
  const matched = matchPaints(
    probe.sent,
    paints.map(({ text, atMs }) => ({ text, atMs: atMs + offsetMs })),
  );
  const timed = matched.readings.filter(({ sentMs }) => isIn(sentMs));
  const latenciesMs = timed.map(({ sentMs, shownMs }) => shownMs - sentMs);
  const longTasks = allLongTasks.filter(({ startMs }) => isIn(startMs + offsetMs));
  const at = (share: number) => quantile(latenciesMs, share).toFixed(0);
  console.log(`machine: ${loadWords}`);
  console.log(
    `byte at the port → pixel: median ${at(0.5)} ms, p95 ${at(0.95)} ms, p99 ${at(0.99)} ms, ` +
      `at worst ${Math.max(...latenciesMs).toFixed(0)} ms; ${timed.length} readings, ` +
      `${timed.filter(({ overtaken }) => overtaken).length} overtaken by the next, ${matched.unexplained} numbers unexplained, ` +
      `longest pause ${matched.longestPauseMs.toFixed(0)} ms`,
  );
  console.log(
    `  clocks compared to ± ${clockBefore.errorMs.toFixed(2)} ms, ` +
      `${Math.abs(clockAfter.offsetMs - offsetMs).toFixed(2)} ms apart at the end; ` +
      `${(frames / ((untilMs - fromMs + settleMs) / 1000)).toFixed(0)} frames a second`,
  );
  const whole = waits.between(fromMs, untilMs);
  if (whole !== null) {
    const share = (partMs: number) => `${((100 * partMs) / (untilMs - fromMs)).toFixed(1)} %`;
    console.log(
      `  the page's main thread ran ${share(whole.ranMs)} of the time and waited for a core ${share(whole.waitedMs)}`,
    );
  }
  console.log(`main-thread tasks over 50 ms in ${minutes} min: ${longTasks.length}`);
  for (const { startMs, durationMs } of longTasks) {
    const startedMs = startMs + offsetMs;
    const got = waits.between(startedMs, startedMs + durationMs);
    const scripts = longFrames
      .filter(
        (frame) =>
          frame.startMs < startMs + durationMs && frame.startMs + frame.durationMs > startMs,
      )
      .flatMap((frame) => frame.scripts);
    console.log(
      `  at ${((startedMs - fromMs) / 1000).toFixed(1)} s: ${durationMs.toFixed(0)} ms` +
        `${got === null ? '' : `, of these ${got.ranMs.toFixed(0)} ms on a core and ${got.waitedMs.toFixed(0)} ms waiting for one`}` +
        `${scripts.length === 0 ? '' : `; ${scripts.join(', ')}`}`,
    );
  }
}
