import { type KeptFerment, say, standingEntries } from '#shared-core';
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
  if (entries.length === 0) return <p className="soft">{say('Nothing was entered yet.')}</p>;
  const withdrawn = entries.filter(({ withdrawnAtIso }) => withdrawnAtIso !== null);
  const standing = standingEntries(ferment).map(({ entry }) => entry);
  return (
    <details className="why">
      <summary>
        {say('{count, plural, one {# entry} other {# entries}}', { count: standing.length })}
        {withdrawn.length > 0 && `, ${say('{count} withdrawn', { count: withdrawn.length })}`}
      </summary>
      <ul className="ferment-entries" aria-label={say('Entries, newest first')}>
        {[...standing].reverse().map(({ entryId, read }) => (
          <li key={entryId}>
            <span>
              <strong>{dateWords(read.atIso)}</strong> {readWords(read, decimal)}
            </span>
            {canAct && (
              <Button
                weight="quiet"
                aria-label={say('Withdraw the entry of {at}', { at: dateWords(read.atIso) })}
                onClick={() => onWithdraw(entryId)}
              >
                {say('Withdraw')}
              </Button>
            )}
          </li>
        ))}
        {withdrawn.map(({ entryId, read }) => (
          <li key={entryId} className="soft">
            <span>
              {say('Withdrawn, not counted:')}{' '}
              <s>
                {dateWords(read.atIso)} {readWords(read, decimal)}
              </s>
            </span>
          </li>
        ))}
      </ul>
      {unreadableLines > 0 && (
        <p className="small soft">
          {say(
            '{count, plural, one {# line of its file cannot be read and is left as it is.} other {# lines of its file cannot be read and are left as they are.}}',
            { count: unreadableLines },
          )}
        </p>
      )}
    </details>
  );
}
