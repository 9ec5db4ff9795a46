import { goTo, type Place } from '../parts/index.ts';
import { WarmthNote } from '../warmth/index.ts';
import { UrgentBar } from '../watch/index.ts';
import { DoubtfulFiles } from './doubtful-files.tsx';
import { ProblemNote } from './problem-note.tsx';
import { TroubleNote } from './trouble-note.tsx';
import { UnfinishedRun } from './unfinished-run.tsx';

/** Under the masthead of every place: what is wrong with program or record, and what asks for an act at the still. */
export function StandingNotes({ place }: { readonly place: Place }) {
  return (
    <div className="standing-notes">
      {/* Watch shows the prompt whole. */}
      {place !== 'watch' && <UrgentBar toWatch={() => goTo('watch')} />}
      <UnfinishedRun />
      <DoubtfulFiles />
      <TroubleNote />
      <ProblemNote />
      <WarmthNote />
    </div>
  );
}

/** The same inside a dialog, because what stands behind one can be neither read nor pressed. */
export function NotesAboveDialog({
  place,
  leave,
}: {
  readonly place: Place;
  readonly leave: () => void;
}) {
  const toWatch = () => {
    leave();
    if (place !== 'watch') goTo('watch');
  };
  return (
    <>
      <UrgentBar toWatch={toWatch} />
      <TroubleNote />
      <ProblemNote />
    </>
  );
}
