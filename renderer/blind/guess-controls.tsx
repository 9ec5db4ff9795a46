import { say } from '#shared-core';
import { Button, ChoiceField } from '../design/index.ts';
import { clockWords, inMidSentence } from '../words/index.ts';
import {
  type BlindEvent,
  type BlindState,
  groupLetters,
  guessKinds,
  guessNames,
} from './blind-state.ts';

interface GuessControlsProps {
  readonly state: BlindState;
  readonly dispatch: (event: BlindEvent) => void;
  readonly shownToS: number;
}

/** Whose guess, of what, and when: by button at the moment shown, or by slider. */
export function GuessControls({ state, dispatch, shownToS }: GuessControlsProps) {
  const { group, kind, groups, guesses } = state;
  const timeS = guesses[group]?.[kind];
  const latestS = Math.max(1, Math.floor(shownToS));
  return (
    <div className="guess-controls">
      <div className="guess-who">
        <ChoiceField
          name={say('Group')}
          options={groups.map((value) => ({ value, label: value }))}
          value={group}
          onValue={(value) => dispatch({ type: 'group-chosen', group: value })}
        />
        <Button
          disabled={groups.length === groupLetters.length}
          onClick={() => dispatch({ type: 'group-added' })}
        >
          {say('Add a group')}
        </Button>
      </div>
      <ChoiceField
        name={say('Guess')}
        options={guessKinds.map((value) => ({ value, label: guessNames[value] }))}
        value={kind}
        onValue={(value) => dispatch({ type: 'kind-chosen', kind: value })}
      />
      <div className="guess-when">
        <Button
          weight="main"
          disabled={shownToS <= 0}
          onClick={() => dispatch({ type: 'guessed', timeS: shownToS })}
        >
          {say('Set at {shownTo}', { shownTo: clockWords(shownToS) })}
        </Button>
        <label>
          <span className="field-name">
            {group}: {inMidSentence(guessNames[kind])}
          </span>
          <input
            type="range"
            min={0}
            max={latestS}
            step={5}
            value={Math.min(latestS, Math.round(timeS ?? shownToS))}
            aria-valuetext={timeS === undefined ? say('not set') : clockWords(timeS)}
            disabled={shownToS <= 0}
            onChange={({ target }) => dispatch({ type: 'guessed', timeS: Number(target.value) })}
          />
        </label>
      </div>
    </div>
  );
}
