import { Buffer } from 'node:buffer';
import {
  type EventBody,
  fail,
  type ServiceProblem,
  succeed,
  worded,
  wordingOf,
} from '#shared-core';
import {
  createPackShelf,
  distillationsOrder,
  exportRunAsCsv,
  fermentsOrder,
  runFilesZip,
  type ShelfProblem,
} from '../export/index.ts';
import { createFermentArchive } from '../ferments/index.ts';
import { serviceProblemOf } from '../file-layer/index.ts';
import {
  createUploads,
  importRun,
  type NewRunSetup,
  type RunToExport,
  runProblem,
} from '../run-library/index.ts';
import { type UnderWay, whyUnchangeable } from './reading-handlers.ts';
import type { RequestHandlers } from './request-handlers.ts';

type ExchangeRequest = Extract<
  keyof RequestHandlers,
  `imports/${string}` | `packs/${string}` | 'runs/book'
>;

export interface ExchangeSetup extends NewRunSetup {
  readonly recording: UnderWay;
  readonly onPack: (progress: EventBody<'pack'>) => void;
}

export interface Exchange {
  readonly handlers: Pick<RequestHandlers, ExchangeRequest>;
  /** Removes what nobody has fetched. */
  close(): Promise<void>;
}

/** Handlers of what comes in and goes out as files, and of measurements made after a run. */
export function createExchange(setup: ExchangeSetup): Exchange {
  const { library, recording, clock, createMonitor, files, runsFolder, app, onPack } = setup;
  const archive = createFermentArchive(files, runsFolder);
  const uploads = createUploads();
  const shelf = createPackShelf(files, onPack);

  const handlers: Exchange['handlers'] = {
    async 'runs/book'({ runId, mark }) {
      const because = whyUnchangeable(recording, runId);
      if (because !== null) return fail(because);
      const current = recording.current();
      // While any run goes on a still is hot, and nothing is lit beside it.
      if (current && mark.type === 'proof-burned') {
        return fail({ kind: 'already-recording', runId: current.runId });
      }
      const booked = await library.book(runId, mark);
      return booked.ok ? succeed({ markId: booked.value }) : booked;
    },
    async 'imports/begin'({ bytes }) {
      const begun = uploads.begin(bytes);
      return begun.ok ? succeed({ importId: begun.value }) : begun;
    },
    async 'imports/add'({ importId, base64 }) {
      const added = uploads.add(importId, Buffer.from(base64, 'base64'));
      return added.ok ? succeed({ receivedBytes: added.value }) : added;
    },
    async 'imports/finish'({ importId, encoding, mapping, settings, startedAtIso }) {
      const content = uploads.take(importId);
      if (!content.ok) return content;
      return importRun(setup, {
        content: content.value,
        encoding,
        mapping,
        settings,
        startedAtIso,
      });
    },
    async 'imports/cancel'({ importId }) {
      uploads.drop(importId);
      return succeed({});
    },
    async 'packs/make'({ packId, runIds }) {
      const runs: { readonly run: RunToExport }[] = [];
      for (const runId of runIds) {
        const read = await library.whole(runId, recording.liveView(runId));
        if (!read.ok) return read;
        runs.push({ run: read.value });
      }
      const createdMs = clock.wallMs();
      const order = distillationsOrder({ runs, createMonitor, madeBy: app, createdMs });
      const made = await shelf.make(packId, order);
      return made.ok ? succeed({ ...made.value }) : fail(serviceProblemOf(made.error));
    },
    async 'packs/make-ferments'({ packId, fermentIds }) {
      const ferments: Parameters<typeof fermentsOrder>[0]['ferments'][number][] = [];
      for (const fermentId of fermentIds) {
        const read = await archive.read(fermentId);
        if (!read.ok) return read;
        ferments.push({ ...read.value, appVersion: app.version });
      }
      const order = fermentsOrder({ ferments, createdMs: clock.wallMs() });
      const made = await shelf.make(packId, order);
      return made.ok ? succeed({ ...made.value }) : fail(serviceProblemOf(made.error));
    },
    async 'packs/make-files'({ packId, runId }) {
      const folder = await library.folder(runId);
      if (!folder.ok) return folder;
      const zip = await runFilesZip(files, folder.value, clock.wallMs());
      if (!zip.ok) return fail(runProblem(runId, zip.error));
      const kept = await shelf.keep(packId, zip.value);
      return kept.ok ? succeed({ ...kept.value }) : fail(serviceProblemOf(kept.error));
    },
    async 'packs/make-table'({ packId, runId, format }) {
      const read = await library.whole(runId, recording.liveView(runId));
      if (!read.ok) return read;
      const { missing, ...table } = await exportRunAsCsv(read.value, format, createMonitor);
      const kept = await shelf.keep(packId, table);
      if (!kept.ok) return fail(serviceProblemOf(kept.error));
      return succeed({
        ...kept.value,
        ...(missing !== null && { missing, wording: wordingOf([missing]) }),
      });
    },
    async 'packs/read'({ packId, fromByte }) {
      const read = await shelf.read(packId, fromByte);
      if (!read.ok) return fail(shelfProblem(read.error));
      const { piece, nextByte } = read.value;
      return succeed({ base64: Buffer.from(piece).toString('base64'), nextByte });
    },
    async 'packs/drop'({ packId }) {
      await shelf.drop(packId);
      return succeed({});
    },
  };
  return { handlers, close: shelf.close };
}

function shelfProblem(problem: ShelfProblem): ServiceProblem {
  if (problem.kind !== 'no-such-pack') return serviceProblemOf(problem);
  return { kind: 'request-invalid', message: worded('this pack is no longer here; make it again') };
}
