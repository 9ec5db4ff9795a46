import { type RunSettings, say, told, trialWords } from '#shared-core';
import { Button, ChoiceField } from '../design/index.ts';
import { usePreferences, usePrepare, useWindowParts } from '../parts/index.ts';
import { SecondScreenButton } from '../second-screen/index.ts';
import { withTrial } from '../stores/index.ts';
import { More } from './more.tsx';

/** What the person says of something tried; `unsaid` until then. */
type TrialAnswer = 'unsaid' | 'yes' | 'no';

const answers = [
  { value: 'yes', label: say('Yes') },
  { value: 'no', label: say('No') },
] as const satisfies readonly { value: TrialAnswer; label: string }[];

/** Whether a prompt will be heard and the class will see: tried before heat, by the person; nothing waits for it. */
export function TrialSection({ canAct }: { readonly canAct: boolean }) {
  const trials = usePrepare((state) => state.draft.trials);
  return (
    <More
      name={say('Heard and seen')}
      summary={
        trials.length === 0
          ? say('not tried')
          : trials.map((trial) => told(trialWords(trial))).join(' · ')
      }
    >
      <SoundTrial />
      <ScreenTrial canAct={canAct} />
    </More>
  );
}

function SoundTrial() {
  const { chime } = useWindowParts();
  const isOn = usePreferences(({ sound }) => sound);
  const set = usePreferences((preferences) => preferences.set);
  const [soundHeard, answer] = useTrial('sound');
  return (
    <div className="trial">
      <Button onClick={() => chime.play('high')}>{say('Play the urgent call')}</Button>
      <ChoiceField
        name={say('Was it heard at the still?')}
        options={answers}
        value={soundHeard}
        onValue={answer}
      />
      {soundHeard === 'no' && (
        <p role="status">
          {say(
            'Turn this computer’s sound up, or choose its loudspeaker, and play it again. Unheard, a prompt is only seen: keep this screen in sight.',
          )}
        </p>
      )}
      {!isOn && (
        <p role="status">
          {say('Sound with prompts is off.')}{' '}
          <Button onClick={() => set({ sound: true })}>{say('Switch it on')}</Button>
        </p>
      )}
    </div>
  );
}

function ScreenTrial({ canAct }: { readonly canAct: boolean }) {
  const [backRowReads, answer] = useTrial('screen');
  return (
    <div className="trial">
      {canAct && <SecondScreenButton name={say('Show the class a test card')} weight="plain" />}
      <ChoiceField
        name={say('Is its smallest line read from the back row?')}
        options={answers}
        value={backRowReads}
        onValue={answer}
      />
      {backRowReads === 'no' && (
        <p role="status">
          {say(
            'Darken the room, make the picture larger, or leave the card and choose “Projector” under “Display and sound” there.',
          )}
        </p>
      )}
    </div>
  );
}

/** What was said of a trial, and how it is said: with role and time, as of the looks. */
function useTrial(
  trial: NonNullable<RunSettings['trials']>[number]['trial'],
): readonly [TrialAnswer, (answer: TrialAnswer) => void] {
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  const said = draft.trials.find((one) => one.trial === trial);
  const answer = (said: TrialAnswer) =>
    change(withTrial(draft, trial, said === 'yes', new Date().toISOString()));
  return [said === undefined ? 'unsaid' : said.worked ? 'yes' : 'no', answer];
}
