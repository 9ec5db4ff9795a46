import { WideTable } from '../understand/index.ts';
import { clockWords } from '../words/index.ts';
import { useWords } from '../words/use-words.ts';
import { type GuessKind, guessNames } from './blind-state.ts';
import type { RecordedAnswer } from './recorded-answer.ts';
import { type GuessScore, nearestScore } from './score-guess.ts';
import { scoreWords } from './score-words.ts';

interface ScoreTableProps {
  readonly kind: GuessKind;
  readonly answer: RecordedAnswer | null;
  readonly scores: readonly GuessScore[];
  readonly reactionTimeS: number;
}

/** One question's guesses beside the record, nearest first. */
export function ScoreTable({ kind, answer, scores, reactionTimeS }: ScoreTableProps) {
  const words = useWords();
  if (answer === null) {
    return (
      <section className="scores">
        <h2>{guessNames[kind]}</h2>
        <p>
          The record of this run has no answer to this one, so every guess is as good as another.
        </p>
      </section>
    );
  }
  const ordered = scores.toSorted((a, b) => Math.abs(a.differenceS) - Math.abs(b.differenceS));
  const nearest = nearestScore(scores);
  const signed = (value: number | null, decimals: number, unit: string) =>
    value === null ? '–' : `${value > 0 ? '+' : ''}${words.quantity(value, decimals, unit)}`;
  return (
    <section className="scores" aria-label={guessNames[kind]}>
      <h2>{guessNames[kind]}</h2>
      <p>
        The record says <strong className="number">{clockWords(answer.timeS)}</strong>:{' '}
        {answer.because}.{nearest && ` Nearest: group ${nearest.guess.group}.`}
      </p>
      {ordered.length > 0 && (
        <WideTable name={`${guessNames[kind]}: differences`}>
          <table className="numbers">
            <caption className="unseen">Guess minus record</caption>
            <thead>
              <tr>
                <th scope="col">Group</th>
                <th scope="col">Guess</th>
                <th scope="col">Time</th>
                <th scope="col">Head</th>
                <th scope="col">Collected</th>
                <th scope="col">Strength</th>
                <th scope="col">What it meant</th>
              </tr>
            </thead>
            <tbody>
              {ordered.map((score) => (
                <tr key={score.guess.group}>
                  <th scope="row">{score.guess.group}</th>
                  <td className="number">{clockWords(score.guess.timeS)}</td>
                  <td className="number">{signed(score.differenceS, 0, 's')}</td>
                  <td className="number">{signed(score.differenceK, 1, 'K')}</td>
                  <td className="number">{signed(score.differenceMl, 1, 'mL')}</td>
                  <td className="number">{signed(score.differenceAbv, 1, '% vol')}</td>
                  <td className="score-words">{scoreWords(score, reactionTimeS)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </WideTable>
      )}
    </section>
  );
}
