import { useEffect, useState } from 'react';
import type { Mark, RequestAnswer, RunInput, RunSummary, ServiceProblem } from '#shared-core';
import { readWholeRun } from '../feed/index.ts';
import { breathe, useWindowParts } from '../parts/index.ts';
import { type Agreement, agreementWith } from './agreement.ts';
import type { Film } from './film.ts';
import { makeFilm } from './make-film.ts';

export type FilmProgress =
  | { readonly step: 'reading' }
  | { readonly step: 'computing'; readonly done: number }
  | { readonly step: 'failed'; readonly problem: ServiceProblem }
  | {
      readonly step: 'ready';
      readonly film: Film;
      readonly summary: RunSummary;
      readonly lateMarks: readonly Mark[];
      readonly agreement: Agreement;
    };

/** Reads a run and plays it through the monitor, telling how far it is. */
export function useFilm(runId: string): FilmProgress {
  const { service } = useWindowParts();
  const [progress, setProgress] = useState<FilmProgress>({ step: 'reading' });
  useEffect(() => {
    let isWanted = true;
    const make = async () => {
      const inputs: RunInput[] = [];
      let last: RequestAnswer<'runs/read'> | null = null;
      const reader = { service, breathe, isWanted: () => isWanted };
      const problem = await readWholeRun(reader, runId, 0, (page) => {
        for (const input of page.inputs) inputs.push(input);
        last = page;
      });
      if (!isWanted) return;
      if (problem !== null || last === null) {
        const failure = problem ?? { kind: 'run-not-found', runId };
        return setProgress({ step: 'failed', problem: failure });
      }
      const { summary, settings, endS, lateMarks = [] }: RequestAnswer<'runs/read'> = last;
      const { name, startedAtIso, imported } = summary;
      const isImported = imported === true;
      const film = await makeFilm(
        {
          identity: { origin: 'replay', isImported, runId, name, startedAtIso, settings },
          inputs,
          endS,
        },
        {
          nowMs: () => performance.now(),
          breathe,
          isWanted: () => isWanted,
          onProgress: (done) => setProgress({ step: 'computing', done }),
        },
      );
      if (!film || !isWanted) return;
      const recorded = await service.request('runs/changes', { runId });
      const conclusions = recorded.ok ? recorded.value : { changes: [], modelVersions: [] };
      const agreement = agreementWith(conclusions, film.changes);
      if (isWanted) setProgress({ step: 'ready', film, summary, lateMarks, agreement });
    };
    // The monitor that failed in the run itself, say, fails on its record too: that is told, and the run is not gone through for ever.
    make().catch((error: unknown) => {
      const message = error instanceof Error ? error.message : String(error);
      if (isWanted) setProgress({ step: 'failed', problem: { kind: 'internal', message } });
    });
    return () => {
      isWanted = false;
    };
  }, [service, runId]);
  return progress;
}
