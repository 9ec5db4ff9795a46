import { isBookMark, type Mark, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWords } from '../words/index.ts';

interface MeasurementListProps {
  readonly marks: readonly Mark[];
  readonly whenNone: string;
  readonly canAct: boolean;
  readonly onlyWatches: boolean;
  readonly onWithdraw: (markId: number) => Promise<unknown>;
}

/** Marks made of liquids, those made after the run with a way to take them back: the log of a closed run is never added to. */
export function MeasurementList(props: MeasurementListProps) {
  const { marks, whenNone, canAct, onlyWatches, onWithdraw } = props;
  const words = useWords();
  if (marks.length === 0) return <p className="soft">{whenNone}</p>;
  return (
    <ul className="measurements">
      {marks.map(({ markId, mark }) => (
        <li key={markId}>
          <span className="number">{words.mark(mark)}</span>
          {!onlyWatches && isBookMark(mark) && (
            <Button
              weight="quiet"
              disabled={!canAct}
              onClick={() => void onWithdraw(markId)}
              aria-label={say('Withdraw {mark}', { mark: words.mark(mark) })}
            >
              {say('Withdraw')}
            </Button>
          )}
        </li>
      ))}
    </ul>
  );
}
