import { type KeptFerment, standingEntries } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { dateWords } from '../words/index.ts';
import { readWords } from './ferment-words.ts';

interface EntryListProps {
  readonly ferment: KeptFerment;
  readonly canAct: boolean;
  readonly onWithdraw: (entryId: number) => void;
}

/** What was written down, newest first. A withdrawn entry stays in sight, struck out. */
export function EntryList({ ferment, canAct, onWithdraw }: EntryListProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { entries, unreadableLines } = ferment;
  if (entries.length === 0) return <p className="soft">Nothing was entered yet.</p>;
  const withdrawn = entries.filter(({ withdrawnAtIso }) => withdrawnAtIso !== null);
  const standing = standingEntries(ferment).map(({ entry }) => entry);
  return (
    <details className="why">
      <summary>
        {standing.length} {standing.length === 1 ? 'entry' : 'entries'}
        {withdrawn.length > 0 && `, ${withdrawn.length} withdrawn`}
      </summary>
      <ul className="ferment-entries" aria-label="Entries, newest first">
        {[...standing].reverse().map(({ entryId, read }) => (
          <li key={entryId}>
            <span>
              <strong>{dateWords(read.atIso)}</strong> {readWords(read, decimal)}
            </span>
            {canAct && (
              <Button
                weight="quiet"
                aria-label={`Withdraw the entry of ${dateWords(read.atIso)}`}
                onClick={() => onWithdraw(entryId)}
              >
                Withdraw
              </Button>
            )}
          </li>
        ))}
        {withdrawn.map(({ entryId, read }) => (
          <li key={entryId} className="soft">
            <span>
              Withdrawn, not counted:{' '}
              <s>
                {dateWords(read.atIso)} {readWords(read, decimal)}
              </s>
            </span>
          </li>
        ))}
      </ul>
      {unreadableLines > 0 && (
        <p className="small soft">
          {unreadableLines} {unreadableLines === 1 ? 'line' : 'lines'} of its file cannot be read
          and {unreadableLines === 1 ? 'is' : 'are'} left as{' '}
          {unreadableLines === 1 ? 'it is' : 'they are'}.
        </p>
      )}
    </details>
  );
}
