import { assertNever } from '#shared-core';
import { Textures } from '../design/index.ts';
import { LookBackPlace } from '../look-back/index.ts';
import { PreparePlace } from '../prepare/index.ts';
import { useAlarmSound } from '../sound/index.ts';
import { WatchPlace } from '../watch/index.ts';
import { Masthead } from './masthead.tsx';
import { type Place, usePlace } from './place.ts';
import { ProblemNote } from './problem-note.tsx';
import { useTheme } from './use-theme.ts';

export function MainWindow() {
  const place = usePlace();
  useTheme();
  useAlarmSound();
  return (
    <div className="window">
      <Textures />
      <Masthead />
      <ProblemNote />
      {placeOf(place)}
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
