import { say } from '#shared-core';
import { type StackingColumn, StackingTable } from '../design/index.ts';
import { clockWords, Say, useWords } from '../words/index.ts';
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

const scoreColumns: readonly StackingColumn[] = [
  ...[say('Guess'), say('Time'), say('Head'), say('Collected'), say('Strength')].map((title) => ({
    key: title,
    title,
    label: title,
  })),
  { key: 'meaning', title: say('What it meant'), label: say('What it meant'), isSentence: true },
];

/** One question's guesses beside the record, nearest first. */
export function ScoreTable({ kind, answer, scores, reactionTimeS }: ScoreTableProps) {
  const words = useWords();
  if (answer === null) {
    return (
      <section className="scores">
        <h2>{guessNames[kind]}</h2>
        <p>
          {say(
            'The record of this run has no answer to this one, so every guess is as good as another.',
          )}
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
        <Say
          sentence={'The record says <strong>{time}</strong>: {because}.'}
          parts={{
            time: clockWords(answer.timeS),
            because: answer.because,
            strong: (words) => <strong className="number">{words}</strong>,
          }}
        />
        {nearest && ` ${say('Nearest: group {group}.', { group: nearest.guess.group })}`}
      </p>
      {ordered.length > 0 && (
        <StackingTable
          name={say('{guessNames}: guess minus record', { guessNames: guessNames[kind] })}
          corner={say('Group')}
          columns={scoreColumns}
          rows={ordered.map((score) => ({
            name: say('Group {group}', { group: score.guess.group }),
            cells: [
              clockWords(score.guess.timeS),
              signed(score.differenceS, 0, 's'),
              signed(score.differenceK, 1, 'K'),
              signed(score.differenceMl, 1, 'mL'),
              signed(score.differenceAbv, 1, '% vol'),
              scoreWords(score, reactionTimeS),
            ],
          }))}
        />
      )}
    </section>
  );
}
