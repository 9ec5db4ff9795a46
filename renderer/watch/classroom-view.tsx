import { useEffect, useRef } from 'react';
import { say, stageLabels, told } from '#shared-core';
import { CautionsButton } from '../cautions/index.ts';
import { Button } from '../design/index.ts';
import { useBoxSize } from '../figures/index.ts';
import { Countdown } from '../lesson/index.ts';
import { useBench } from '../parts/index.ts';
import { isViewer, mayCommand, type RunView } from '../stores/index.ts';
import { RunStrip } from '../strip/index.ts';
import { Announcer } from './announcer.tsx';
import { fullScreenIfAllowed } from './full-screen.ts';
import { headNow } from './head-now.ts';
import { HeadReadout } from './head-readout.tsx';
import { useLiveness } from './liveness.ts';
import { Sentence } from './sentence.tsx';
import { UrgentBar } from './urgent-bar.tsx';
import { useClassroomKeys } from './use-classroom-keys.ts';

/** Least height of projected type as a share of the screen's height: a letter is read 30 rows back. */
const textShare = 0.044;

interface ClassroomViewProps {
  readonly view: RunView;
  readonly onClose: () => void;
}

/** For the whole room: the sentence, the head, the strip; nothing smaller than a projector can carry. */
export function ClassroomView({ view, onClose }: ClassroomViewProps) {
  const [box, size] = useBoxSize<HTMLElement>();
  const closeButton = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    closeButton.current?.focus();
    return () => {
      if (document.fullscreenElement) void document.exitFullscreen();
    };
  }, []);
  useClassroomKeys(onClose);
  const { snapshot } = view;
  const mayAnswer = useBench(mayCommand);
  const onlyWatches = useBench(isViewer);
  const liveness = useLiveness(view);
  return (
    <main className="classroom" id="place" ref={box}>
      <div className="classroom-top">
        <Sentence snapshot={snapshot} liveness={liveness} endedS={view.endedS} />
        <HeadReadout head={headNow(view, liveness)} liveness={liveness} />
        {/* The sentence says it to the room; whoever has the computer answers it here. */}
        {mayAnswer && <UrgentBar toWatch={onClose} />}
      </div>
      <RunStrip
        view={view}
        hasControls={false}
        textPx={textShare * Math.min(size?.height ?? 720, size?.width ?? 720)}
      />
      <div className="classroom-foot">
        {liveness === 'live' && <Countdown snapshot={snapshot} />}
        <p>{snapshot ? told(stageLabels[snapshot.stage.stage]) : say('Waiting for the probe')}</p>
        <CautionsButton />
        {/* It opened by itself, and only a press may ask for the whole screen. */}
        {onlyWatches && <Button onClick={fullScreenIfAllowed}>{say('Full screen')}</Button>}
        <Button ref={closeButton} onClick={onClose}>
          {say('Leave')}
        </Button>
      </div>
      <Announcer view={view} liveness={liveness} hasAlerts={mayAnswer} />
    </main>
  );
}
