import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { clockWords, inMidSentence } from '../words/index.ts';
import { type BlindEvent, type BlindState, guessKinds, guessNames } from './blind-state.ts';

interface GuessTableProps {
  readonly state: BlindState;
  readonly dispatch: (event: BlindEvent) => void;
}

/** What each group has guessed so far. */
export function GuessTable({ state, dispatch }: GuessTableProps) {
  return (
    <table className="numbers guess-table">
      <caption className="unseen">{say('Guesses so far')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('Group')}</th>
          {guessKinds.map((kind) => (
            <th key={kind} scope="col">
              {guessNames[kind]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {state.groups.map((group) => (
          <tr key={group}>
            <th scope="row">{group}</th>
            {guessKinds.map((kind) => {
              const timeS = state.guesses[group]?.[kind];
              return (
                <td key={kind} className="number">
                  {timeS === undefined ? (
                    <span className="soft">{say('open')}</span>
                  ) : (
                    <>
                      {clockWords(timeS)}{' '}
                      <Button
                        weight="quiet"
                        aria-label={say('Take back {group}: {guess}', {
                          group,
                          guess: inMidSentence(guessNames[kind]),
                        })}
                        onClick={() => dispatch({ type: 'taken-back', group, kind })}
                      >
                        {say('Take back')}
                      </Button>
                    </>
                  )}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
