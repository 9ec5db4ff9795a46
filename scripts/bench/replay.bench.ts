/**
 * A jump anywhere in a run of ten hours: the film of it is made once, as when a run is opened, and every frame is the point that a
 * jump goes to. Tells how long the film takes, and a jump with its whole snapshot made, for most frames for the first time. How long
 * Watch takes to draw it is told by plot.bench.ts.
 *
 * Usage: npx tsx scripts/bench/replay.bench.ts
 */
import {
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  pearFermentSetup,
  type RunInput,
  simulateBatch,
} from '#shared-core';
import { frameIndexAt } from '../../renderer/replay/film.ts';
import { makeFilm } from '../../renderer/replay/make-film.ts';
import { isEntryPoint } from '../checks/is-entry-point.ts';
import { quantile } from '../measuring/quantile.ts';

const endS = 10 * 3600;
const jumps = 1000;
const mostMs = 100;

/** Head of a charge so large that it is distilled for the whole time, as a probe of this rate reports it. */
function readings(perSecond: number): RunInput[] {
  const base = pearFermentSetup();
  const charge = { ...base.charge, volumeMl: 12 * base.charge.volumeMl };
  const { samples } = simulateBatch({ ...base, charge }, { durationS: endS });
  const random = createRandom('replay bench');
  const probe = createProbeSignal({ random, whiteNoiseK: 0.05, slowNoiseK: 0.05 });
  return Array.from({ length: endS * perSecond }, (_, index) => {
    const timeS = index / perSecond;
    const truthC = samples[Math.floor(timeS)]?.bulbTemperatureC ?? 20;
    const value = probe.read(timeS, truthC) ?? truthC;
    return { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' };
  });
}

export async function run(): Promise<void> {
  const random = createRandom('replay jumps');
  for (const perSecond of [1, 10]) {
    const inputs = readings(perSecond);
    const identity = {
      origin: 'replay',
      runId: 'bench',
      name: 'ten hours',
      startedAtIso: null,
      settings: defaultRunSettings,
    } as const;
    const from = performance.now();
    const film = await makeFilm(
      { identity, inputs, endS },
      {
        nowMs: () => performance.now(),
        breathe: async () => undefined,
        onProgress: () => undefined,
        isWanted: () => true,
      },
    );
    if (film === null) throw new Error('The film was given up.');
    const madeS = (performance.now() - from) / 1000;
    const jumpsMs = Array.from({ length: jumps }, () => {
      const timeS = endS * random.uniform();
      const before = performance.now();
      const frame = film.frames[frameIndexAt(film, timeS)];
      JSON.stringify(frame?.snapshot);
      return performance.now() - before;
    });
    const longestMs = Math.max(...jumpsMs);
    console.log(
      `ten hours at ${perSecond} Hz, ${film.frames.length} frames: film in ${madeS.toFixed(1)} s (${Math.round(
        endS / madeS,
      )} × real time); jump: median ${quantile(jumpsMs, 0.5).toFixed(2)} ms, longest ${longestMs.toFixed(
        1,
      )} ms, longest / ${mostMs} ms: ${(longestMs / mostMs).toFixed(3)}`,
    );
  }
}

if (isEntryPoint(import.meta.url)) await run();
