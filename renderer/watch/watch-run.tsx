import type { ReactNode } from 'react';
import { say } from '#shared-core';
import { LessonRows } from '../lesson/index.ts';
import { useBench } from '../parts/index.ts';
import { LeftOutNote } from '../probe/index.ts';
import type { RunView } from '../stores/index.ts';
import { RunStrip } from '../strip/index.ts';
import { CursorLayer, UnderstandPanel, useUnderstanding } from '../understand/index.ts';
import { Announcer } from './announcer.tsx';
import { ChannelProblems } from './channel-problems.tsx';
import { ClosedNote } from './closed-note.tsx';
import { Findings } from './findings.tsx';
import { headNow } from './head-now.ts';
import { HeadReadout } from './head-readout.tsx';
import { useLiveness } from './liveness.ts';
import { Prompts } from './prompts.tsx';
import { Sentence } from './sentence.tsx';

interface WatchRunProps {
  readonly view: RunView;
  /** What a place adds between prompts and findings. */
  readonly aside?: ReactNode;
  /** What a place adds beside the strip's controls. */
  readonly stripExtra?: ReactNode;
}

/** One run at one moment: the same parts whether it is live, replayed or recomputed. */
export function WatchRun({ view, aside, stripExtra }: WatchRunProps) {
  const { snapshot } = view;
  const understanding = useUnderstanding(view);
  const probe = useBench((bench) => bench.probe);
  const liveness = useLiveness(view);
  /** What was thought holds of the moment shown, not of one that has passed since. */
  const isJudged = liveness !== 'unjudged' && liveness !== 'cut-off';
  return (
    <>
      <div className="watch-top">
        <Sentence snapshot={snapshot} liveness={liveness} endedS={view.endedS} />
        <HeadReadout head={headNow(view, liveness)} liveness={liveness} />
      </div>
      <div className="watch-middle">
        <RunStrip view={view} extra={stripExtra}>
          {understanding.isOpen && (
            <CursorLayer timeS={understanding.timeS} onTimeS={understanding.setTimeS} />
          )}
        </RunStrip>
        <aside className="watch-side" aria-label={say('Prompts and findings')}>
          {/* Once a run is over, what it came to goes before what was asked in it. */}
          {liveness === 'ended' && aside}
          <Prompts
            alarms={snapshot?.alarms ?? []}
            nowS={snapshot?.timeS ?? 0}
            isLive={liveness === 'live'}
            isOver={liveness === 'ended'}
            isCalm={liveness === 'live' && snapshot !== null && snapshot.act === null}
          />
          {(liveness === 'live' || liveness === 'unjudged') && <LeftOutNote probe={probe} />}
          <ClosedNote gaps={view.gaps} />
          {isJudged && liveness !== 'ended' && <ChannelProblems snapshot={snapshot} />}
          {liveness !== 'ended' && aside}
          {snapshot && (
            <Findings
              snapshot={snapshot}
              isPassed={!isJudged}
              // Nothing is ahead of a run that is over.
              ahead={
                liveness === 'ended' ? null : (
                  <LessonRows view={view} isLive={liveness === 'live'} />
                )
              }
            />
          )}
        </aside>
      </div>
      <UnderstandPanel view={view} understanding={understanding} />
      <Announcer view={view} liveness={liveness} hasAlerts />
    </>
  );
}
