import { useCallback, useEffect } from 'react';
import { assertNever } from '#shared-core';
import { AboveDialogs, Textures } from '../design/index.ts';
import { LookBackPlace } from '../look-back/index.ts';
import type { Place } from '../parts/index.ts';
import { useBench, usePlace } from '../parts/index.ts';
import { PreparePlace } from '../prepare/index.ts';
import { WatchPlace } from '../watch/index.ts';
import { FirstCautions } from './first-cautions.tsx';
import { keepFocus } from './keep-focus.ts';
import { Masthead } from './masthead.tsx';
import { RefusedPlace } from './refused-place.tsx';
import { NotesAboveDialog, StandingNotes } from './standing-notes.tsx';
import { useAlarmSound } from './use-alarm-sound.ts';
import { useTheme } from './use-theme.ts';

export function MainWindow() {
  const place = usePlace();
  const isShut = useBench(({ connection }) => connection === 'refused');
  const above = useCallback(
    (leave: () => void) => <NotesAboveDialog place={place} leave={leave} />,
    [place],
  );
  useTheme();
  useAlarmSound();
  useEffect(() => keepFocus(document), []);
  return (
    <div className="window">
      <Textures />
      <AboveDialogs value={above}>
        <Masthead />
        {isShut ? (
          <RefusedPlace />
        ) : (
          <>
            <FirstCautions />
            <StandingNotes place={place} />
            {placeOf(place)}
          </>
        )}
      </AboveDialogs>
    </div>
  );
}

function placeOf(place: Place) {
  switch (place) {
    case 'prepare':
      return <PreparePlace />;
    case 'watch':
      return <WatchPlace />;
    case 'look-back':
      return <LookBackPlace />;
    default:
      return assertNever(place);
  }
}
