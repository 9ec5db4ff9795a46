import { useEffect, useId, useRef, useState } from 'react';
import { type RunSummary, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { PackProgress, usePack } from '../exchange/index.ts';
import { useBench } from '../parts/index.ts';
import { isViewer } from '../stores/index.ts';
import { MoreActs } from './more-acts.tsx';
import type { OpenFor } from './open-run.tsx';
import { RemoveButton } from './remove-button.tsx';
import { RunLines } from './run-lines.tsx';

interface RunCardProps {
  readonly run: RunSummary;
  /** Whether the person comes back from this run. */
  readonly isReturnedTo?: boolean;
  readonly onOpen: (openFor: OpenFor) => void;
  readonly onChanged: () => void;
}

/** One run of the library: what it was, what is mostly done with it, and the rest behind one button. */
export function RunCard({ run, isReturnedTo = false, onOpen, onChanged }: RunCardProps) {
  const moreId = useId();
  const onlyWatches = useBench(isViewer);
  const pack = usePack();
  const [isMore, setMore] = useState(false);
  const replay = useRef<HTMLButtonElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when the list appears again
  useEffect(() => {
    if (!isReturnedTo) return;
    replay.current?.focus({ preventScroll: true });
    replay.current?.scrollIntoView({ block: 'center' });
  }, []);
  if (run.unreadable !== null) {
    return (
      <li className="run">
        <div>
          <RunLines run={run} />
        </div>
        <div className="run-acts">
          <Button
            disabled={pack.step !== null}
            onClick={() => void pack.makeFiles(run.runId)}
            aria-label={say('Save the files of {name}', { name: run.name })}
          >
            {say('Save its files')}
          </Button>
          {!onlyWatches && <RemoveButton run={run} onRemoved={onChanged} />}
        </div>
        <PackProgress pack={pack} />
      </li>
    );
  }
  return (
    <li className="run">
      <div>
        <RunLines run={run} />
      </div>
      <div className="run-acts">
        <Button
          ref={replay}
          weight="main"
          onClick={() => onOpen('replay')}
          aria-label={say('Replay {name}', { name: run.name })}
        >
          {say('Replay')}
        </Button>
        <Button
          onClick={() => onOpen('guess')}
          aria-label={say('Guess first: {name}', { name: run.name })}
        >
          {say('Guess first')}
        </Button>
        <Button
          className="opens-more"
          aria-expanded={isMore}
          aria-controls={isMore ? moreId : undefined}
          aria-label={say('More for {name}', { name: run.name })}
          onClick={() => setMore(!isMore)}
        >
          {say('More')}
        </Button>
      </div>
      {isMore && (
        <MoreActs id={moreId} run={run} pack={pack} onOpen={onOpen} onChanged={onChanged} />
      )}
      <PackProgress pack={pack} />
    </li>
  );
}
