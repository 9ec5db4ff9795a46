import type { Film, RecordedRun } from '../../../renderer/replay/film.ts';
import { makeFilm } from '../../../renderer/replay/make-film.ts';
import { type SimulatedRun, simulatedRun } from '../../support/simulated-run.ts';

/** A simulated run as Look back reads it. */
export function simulatedRecord(run: SimulatedRun): RecordedRun {
  const { settings, inputs, endS } = simulatedRun(run);
  const { name } = run;
  return {
    identity: { origin: 'replay', runId: name, name, startedAtIso: null, settings },
    inputs,
    endS,
  };
}

/** A recorded run, gone through once more. */
export async function filmOf(record: RecordedRun): Promise<Film> {
  const film = await makeFilm(record, {
    nowMs: () => 0,
    breathe: async () => {},
    onProgress: () => {},
    isWanted: () => true,
  });
  if (film === null) throw new Error('not wanted');
  return film;
}
