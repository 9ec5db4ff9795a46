import { useEffect, useState } from 'react';
import { breathe } from '../parts/index.ts';
import type { Film, RecordedRun } from '../replay/index.ts';
import { makeFilm } from '../replay/index.ts';
import { type WhatIfChange, whatIfRun } from './what-if-change.ts';

export type WhatIfProgress =
  | { readonly step: 'asked-nothing' }
  | { readonly step: 'computing'; readonly done: number }
  | { readonly step: 'ready'; readonly film: Film };

/** Plays the same readings through the monitor under other suppositions. */
export function useWhatIf(run: RecordedRun, change: WhatIfChange | null): WhatIfProgress {
  const [progress, setProgress] = useState<WhatIfProgress>({ step: 'asked-nothing' });
  useEffect(() => {
    if (change === null) return;
    let isWanted = true;
    setProgress({ step: 'computing', done: 0 });
    void makeFilm(whatIfRun(run, change), {
      nowMs: () => performance.now(),
      breathe,
      isWanted: () => isWanted,
      onProgress: (done) => setProgress({ step: 'computing', done }),
    }).then((film) => {
      if (film && isWanted) setProgress({ step: 'ready', film });
    });
    return () => {
      isWanted = false;
    };
  }, [run, change]);
  return progress;
}
