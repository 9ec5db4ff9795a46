import type { ReactNode } from 'react';
import { say, told, volumeReadings } from '#shared-core';
import { Say, useWords } from '../words/index.ts';
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
  const parts = {
    extent: isWhole ? 'whole' : 'part',
    count: String(head.length),
    strong: (count: ReactNode) => <strong className="number">{count}</strong>,
    low: words.quantity(Math.min(...values), 1, '°C'),
    high: words.quantity(Math.max(...values), 1, '°C'),
  };
  return (
    <div role="status">
      <p>
        {byVolume === null ? (
          <Say
            sentence={
              '{extent, select, whole {The file gives} other {Its first lines give}} <strong>{count}</strong> head readings from <time>{from}</time> to <time>{to}</time>, between {low} and {high}.'
            }
            parts={{
              ...parts,
              from: words.clock(first?.timeS ?? 0),
              to: words.clock(Math.max(endS, last?.timeS ?? 0)),
              time: (clock) => <span className="number">{clock}</span>,
            }}
          />
        ) : (
          <Say
            sentence={
              '{extent, select, whole {The file gives} other {Its first lines give}} <strong>{count}</strong> head readings from {from} to {to} of distillate, without times, between {low} and {high}.'
            }
            parts={{
              ...parts,
              from: words.quantity(byVolume[0]?.volumeMl ?? 0, 1, 'mL'),
              to: words.quantity(byVolume.at(-1)?.volumeMl ?? 0, 1, 'mL'),
            }}
          />
        )}
      </p>
      {remarks.map((remark) => (
        <p key={remark}>{told(remark)}</p>
      ))}
      {rejectedRows.length > 0 && (
        <>
          <p>
            {rejectedRows.length === 1
              ? say('1 row or value can’t be used:')
              : say('{count} rows or values can’t be used, such as:', {
                  count: rejectedRows.length,
                })}
          </p>
          <ul className="small">
            {rejectedRows.slice(0, rowsShown).map(({ line, reason }) => (
              <li key={`${line} ${reason}`}>
                {say('Line {line}: {reason}.', { line, reason: told(reason) })}
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
