import { isBookMark, type RunInput, standingMarks } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWords } from '../words/use-words.ts';

interface MeasurementListProps {
  readonly inputs: readonly RunInput[];
  readonly canAct: boolean;
  readonly onlyWatches: boolean;
  readonly onWithdraw: (markId: number) => Promise<void>;
}

/** Every measurement that stands, each with a way to take it back. */
export function MeasurementList({ inputs, canAct, onlyWatches, onWithdraw }: MeasurementListProps) {
  const words = useWords();
  const marks = standingMarks(inputs).filter(({ mark }) => isBookMark(mark));
  if (marks.length === 0) {
    return (
      <p className="soft">
        None yet. For a balance measure how much residue is in the pot and how strong it is, and the
        same of each cut.
      </p>
    );
  }
  return (
    <ul className="measurements">
      {marks.map(({ markId, mark }) => (
        <li key={markId}>
          <span className="number">{words.mark(mark)}</span>
          {!onlyWatches && (
            <Button
              weight="quiet"
              disabled={!canAct}
              onClick={() => void onWithdraw(markId)}
              aria-label={`Withdraw ${words.mark(mark)}`}
            >
              Withdraw
            </Button>
          )}
        </li>
      ))}
    </ul>
  );
}
