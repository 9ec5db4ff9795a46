import { volumeReadings } from '#shared-core';
import { useWords } from '../words/index.ts';
import type { Judgement } from './judge-draft.ts';

interface DraftVerdictProps {
  readonly judgement: Judgement;
  readonly isWhole: boolean;
}

const rowsShown = 5;

/** What comes of the first lines as they are understood now. */
export function DraftVerdict({ judgement, isWhole }: DraftVerdictProps) {
  const words = useWords();
  if (judgement.kind === 'not-yet') {
    return (
      <p className="warning" role="status">
        {judgement.sentence}
      </p>
    );
  }
  const { inputs, endS, rejectedRows, remarks } = judgement.read;
  const head = inputs.flatMap((input) =>
    input.kind === 'reading' && input.channel === 'head' ? [input] : [],
  );
  const values = head.map(({ value }) => value);
  const [first, last] = [head[0], head.at(-1)];
  const byVolume = volumeReadings(inputs);
  return (
    <div role="status">
      <p>
        {isWhole ? 'The file gives' : 'Its first lines give'}{' '}
        <strong className="number">{head.length}</strong> head readings from{' '}
        {byVolume === null ? (
          <>
            <span className="number">{words.clock(first?.timeS ?? 0)}</span> to{' '}
            <span className="number">{words.clock(Math.max(endS, last?.timeS ?? 0))}</span>
          </>
        ) : (
          <>
            {words.quantity(byVolume[0]?.volumeMl ?? 0, 1, 'mL')} to{' '}
            {words.quantity(byVolume.at(-1)?.volumeMl ?? 0, 1, 'mL')} of distillate, without times
          </>
        )}
        , between {words.quantity(Math.min(...values), 1, '°C')} and{' '}
        {words.quantity(Math.max(...values), 1, '°C')}.
      </p>
      {remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
      {rejectedRows.length > 0 && (
        <>
          <p>
            {rejectedRows.length === 1
              ? '1 row or value can’t be used:'
              : `${rejectedRows.length} rows or values can’t be used, such as:`}
          </p>
          <ul className="small">
            {rejectedRows.slice(0, rowsShown).map(({ line, reason }) => (
              <li key={`${line} ${reason}`}>
                Line {line}: {reason}.
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
