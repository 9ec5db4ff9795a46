import type { RunView } from '../stores/index.ts';
import { RunStrip } from '../strip/index.ts';
import { Announcer } from './announcer.tsx';
import { Findings } from './findings.tsx';
import { HeadReadout } from './head-readout.tsx';
import { Prompts } from './prompts.tsx';
import { Sentence } from './sentence.tsx';

/** One run at one moment: the same parts whether it is live, replayed or recomputed. */
export function WatchRun({ view }: { readonly view: RunView }) {
  const { snapshot } = view;
  return (
    <>
      <div className="watch-top">
        <Sentence snapshot={snapshot} />
        <HeadReadout head={snapshot?.head ?? null} />
      </div>
      <div className="watch-middle">
        <RunStrip view={view} />
        <aside className="watch-side" aria-label="Prompts and findings">
          <Prompts
            alarms={snapshot?.alarms ?? []}
            nowS={snapshot?.timeS ?? 0}
            isLive={view.origin === 'live' && view.endedS === null}
          />
          {snapshot && <Findings snapshot={snapshot} />}
        </aside>
      </div>
      <Announcer view={view} />
    </>
  );
}
