import { Buffer } from 'node:buffer';
import { defaultRunSettings, type RunInput, readReadingsCsv } from '#shared-core';
import { fetchPack } from './fetch-pack.ts';
import type { Deed, Hands } from './hands.ts';
import { readingsIn } from './run-book.ts';
import { beganIso, standsIn, tableOf } from './taken-in.ts';

/** A minute of another logger's. */
const rows = 60;

/** A table is taken in, in two pieces. */
export const takeIn: Deed = async (hands) => {
  const { ask, kept, takenIn, random } = hands;
  const number = hands.fresh();
  const startedAtIso = beganIso(number);
  const values = Array.from({ length: rows }, (_, row) => (20 + row + random.uniform()).toFixed(2));
  const table = Buffer.from(`time_s,head_c\n${values.map((c, s) => `${s},${c}\n`).join('')}`);
  const thing = tableOf(startedAtIso);
  const keep = kept.wish(thing, standsIn('library', rows));
  const begun = await ask('imports/begin', { bytes: table.length });
  if (!begun.ok) return;
  const { importId } = begun.value;
  for (const piece of [table.subarray(0, 300), table.subarray(300)]) {
    await ask('imports/add', { importId, base64: piece.toString('base64') });
  }
  const settings = { ...defaultRunSettings, name: `Table ${number}` };
  const made = await ask('imports/finish', {
    importId,
    encoding: 'auto',
    mapping: null,
    settings,
    startedAtIso,
  });
  if (!made.ok) return;
  takenIn.note({ thing, runId: made.value.runId, readings: rows });
  keep();
};

async function fetchTable(hands: Hands, runId: string): Promise<string | null> {
  const table = await fetchPack(hands, (packId) =>
    hands.ask('packs/make-table', { packId, runId, format: 'csv' }),
  );
  return table?.toString('utf8') ?? null;
}

/** Readings of one moment share a row, and rows stand in the order of time: which comes first in the log is no matter. */
function countOf(readings: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const reading of readings) counts.set(reading, (counts.get(reading) ?? 0) + 1);
  return counts;
}

function readingsOfTable(text: string): readonly RunInput[] {
  const read = readReadingsCsv(text);
  return read.ok ? read.value.inputs : [];
}

/** The run under way as a table: all that was heard before it was asked for stands in it. */
const takeOutRunNow: Deed = async (hands) => {
  const run = hands.runNow();
  if (run === null || run.heard.length === 0) return;
  const due = countOf(run.heard.slice());
  const table = await fetchTable(hands, run.runId);
  if (table === null) return;
  const found = countOf(readingsIn(readingsOfTable(table)));
  for (const [reading, count] of due) {
    if ((found.get(reading) ?? 0) >= count) continue;
    hands.judge.violated('table-has-every-reading', `Of ${run.runId} it lacks ${reading}.`);
    return;
  }
};

/** A run that was taken in comes out again with as many readings. */
const takeOutTaken: Deed = async (hands) => {
  const run = hands.takenIn.all().find(({ place }) => place === 'library');
  if (run === undefined) return takeIn(hands);
  const table = await fetchTable(hands, run.runId);
  const found = table === null ? run.readings : readingsIn(readingsOfTable(table)).length;
  if (found !== run.readings) {
    hands.judge.violated('table-has-every-reading', `Of ${run.runId} it has ${found}.`);
  }
};

export const takeInDeeds: readonly Deed[] = [takeIn];
export const takeOutDeeds: readonly Deed[] = [takeOutRunNow, takeOutTaken];
