import { Button } from '../design/index.ts';
import { clockWords } from '../words/index.ts';
import { type BlindEvent, type BlindState, guessKinds, guessNames } from './blind-state.ts';

interface GuessTableProps {
  readonly state: BlindState;
  readonly dispatch: (event: BlindEvent) => void;
}

/** What each group has guessed so far. */
export function GuessTable({ state, dispatch }: GuessTableProps) {
  return (
    <table className="numbers guess-table">
      <caption className="unseen">Guesses so far</caption>
      <thead>
        <tr>
          <th scope="col">Group</th>
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
                    <span className="soft">open</span>
                  ) : (
                    <>
                      {clockWords(timeS)}{' '}
                      <Button
                        weight="quiet"
                        aria-label={`Take back ${group}: ${guessNames[kind].toLowerCase()}`}
                        onClick={() => dispatch({ type: 'taken-back', group, kind })}
                      >
                        Take back
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
