import type { KeptFerment, RequestAnswer, RequestBody, RequestName } from '#shared-core';
import { standsIn, type TakenInRun, tableOf } from './taken-in.ts';

type Run = RequestAnswer<'runs/list'>['runs'][number];

/** Asks the program that runs now; null where it refuses. */
export type Look = <N extends RequestName>(
  name: N,
  body: RequestBody<N>,
) => Promise<RequestAnswer<N> | null>;

/** What kept things are called. */
export const nameOf = (runId: string) => `name of ${runId}`;
export const correctionOf = (runId: string, number: number) => `correction of ${runId}: ${number}`;
export const measurementOf = (runId: string, massG: number) => `measured of ${runId}: ${massG} g`;
export const setUpOf = (name: string | null) => `set-up ${name ?? 'of the last run'}`;
export const fermentCalled = (name: string) => `ferment ${name}`;
export const statedOf = (fermentId: string) => `stated of ${fermentId}`;
export const entryOf = (fermentId: string, massG: number | null) =>
  `entry ${fermentId}: ${massG} g`;
export const warmthOf = (fermentId: string) => `warmth of ${fermentId}`;

/** Of what is written down once, and counted if it stands there twice. */
export const once = 'once';

type Found = Map<string, string>;

function count(found: Found, thing: string): void {
  found.set(thing, found.has(thing) ? 'more than once' : once);
}

/** What the program shows of all that people were told is kept, as {@link KeptThings} calls it. */
export async function findKept(look: Look): Promise<ReadonlyMap<string, string>> {
  const found: Found = new Map();
  const library = (await look('runs/list', {}))?.runs ?? [];
  const bin = (await look('runs/trashed', {}))?.runs ?? [];
  for (const run of library) addRun(found, run, 'library');
  for (const run of bin) addRun(found, run, 'bin');
  for (const { runId, ended, unreadable } of library) {
    if (ended !== 'recording' && unreadable === null) await addMeasurements(found, look, runId);
  }
  const rigs = await look('rigs/list', {});
  for (const { name, setUp } of rigs?.rigs ?? []) {
    found.set(setUpOf(name), `${setUp.charge.volumeMl} mL`);
  }
  if (rigs?.last) found.set(setUpOf(null), `${rigs.last.setUp.charge.volumeMl} mL`);
  for (const ferment of (await look('ferments/list', {}))?.ferments ?? []) {
    addFerment(found, ferment);
  }
  const warmth = await look('warmth/now', {});
  if (warmth?.kept) found.set(warmthOf(warmth.kept.fermentId), 'kept');
  return found;
}

function addRun(found: Found, run: Run, place: TakenInRun['place']): void {
  const { runId, name, imported, ended, readings, startedAtIso, corrections = [] } = run;
  if (name.startsWith('Lesson')) found.set(nameOf(runId), name);
  for (const sentence of corrections) {
    count(found, correctionOf(runId, Number(/no\. (\d+)/.exec(sentence)?.[1])));
  }
  // A table whose taking in was cut off is there in part, and is said to be cut off.
  if (imported !== true || ended !== 'clean') return;
  const thing = tableOf(startedAtIso);
  found.set(thing, found.has(thing) ? 'twice' : standsIn(place, readings));
}

async function addMeasurements(found: Found, look: Look, runId: string): Promise<void> {
  const page = await look('runs/read', { runId, fromIndex: 0 });
  for (const { mark } of page?.lateMarks ?? []) {
    if (mark.type === 'liquid-mass') count(found, measurementOf(runId, mark.massG));
  }
}

function addFerment(found: Found, { fermentId, stated, entries, corrections }: KeptFerment): void {
  found.set(fermentCalled(stated.name), 'begun');
  if (corrections.length > 0) found.set(statedOf(fermentId), `${stated.volumeMl} mL`);
  for (const { read, withdrawnAtIso } of entries) {
    const thing = entryOf(fermentId, read.massG);
    const stands = withdrawnAtIso === null ? 'counted' : 'withdrawn';
    found.set(thing, found.has(thing) ? 'more than once' : stands);
  }
}
