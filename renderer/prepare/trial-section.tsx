import { Button, ChoiceField } from '../design/index.ts';
import { usePreferences, usePrepare, useWindowParts } from '../parts/index.ts';
import { SecondScreenButton } from '../second-screen/index.ts';
import type { TrialAnswer } from '../stores/index.ts';
import { More } from './more.tsx';

const answers = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const satisfies readonly { value: TrialAnswer; label: string }[];

const heardWords: Readonly<Record<TrialAnswer, string>> = {
  unsaid: 'call not tried',
  yes: 'call heard at the still',
  no: 'call not heard',
};

const seenWords: Readonly<Record<TrialAnswer, string>> = {
  unsaid: 'class screen not tried',
  yes: 'read from the back row',
  no: 'not read from the back row',
};

/** Whether a prompt will be heard and the class will see: tried before heat, by the person; nothing waits for it. */
export function TrialSection({ canAct }: { readonly canAct: boolean }) {
  const { soundHeard, backRowReads } = usePrepare((state) => state.draft);
  const summary = `${heardWords[soundHeard]} · ${seenWords[backRowReads]}`;
  return (
    <More name="Heard and seen" summary={summary}>
      <SoundTrial />
      <ScreenTrial canAct={canAct} />
    </More>
  );
}

function SoundTrial() {
  const { chime } = useWindowParts();
  const isOn = usePreferences(({ sound }) => sound);
  const set = usePreferences((preferences) => preferences.set);
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  return (
    <div className="trial">
      <Button onClick={() => chime.play('high')}>Play the urgent call</Button>
      <ChoiceField
        name="Was it heard at the still?"
        options={answers}
        value={draft.soundHeard}
        onValue={(soundHeard) => change({ soundHeard })}
      />
      {draft.soundHeard === 'no' && (
        <p role="status">
          Turn this computer’s sound up, or choose its loudspeaker, and play it again. Unheard, a
          prompt is only seen: keep this screen in sight.
        </p>
      )}
      {!isOn && (
        <p role="status">
          Sound with prompts is off.{' '}
          <Button onClick={() => set({ sound: true })}>Switch it on</Button>
        </p>
      )}
    </div>
  );
}

function ScreenTrial({ canAct }: { readonly canAct: boolean }) {
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  return (
    <div className="trial">
      {canAct && <SecondScreenButton name="Show the class a test card" weight="plain" />}
      <ChoiceField
        name="Is its smallest line read from the back row?"
        options={answers}
        value={draft.backRowReads}
        onValue={(backRowReads) => change({ backRowReads })}
      />
      {draft.backRowReads === 'no' && (
        <p role="status">
          Darken the room, make the picture larger, or leave the card and choose “Projector” under
          “Display and sound” there.
        </p>
      )}
    </div>
  );
}
