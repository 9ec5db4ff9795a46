import { say } from '#shared-core';
import { SelectField } from '../design/index.ts';
import { holdsOptions, type ImportDraft, isNoChannel, withColumn } from './import-draft.ts';
import { holdsName, timeUnitOptions, unitOptions } from './import-words.ts';

interface ColumnFieldsProps {
  readonly draft: ImportDraft;
  readonly onDraft: (draft: ImportDraft) => void;
}

/** What each column holds, and in which unit. */
export function ColumnFields({ draft, onDraft }: ColumnFieldsProps) {
  return (
    <ol className="import-columns">
      {draft.columns.map(({ title, samples, holds, unit }, index) => {
        const column = say('Column {index}', { index: index + 1 });
        const hasUnit = !isNoChannel(holds);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is known by its number
          <li key={index} data-used={holds !== 'nothing'}>
            <p>
              <strong>{title === '' ? column : title}</strong>
              <br />
              <span className="small soft number">{samples.join(' · ') || say('empty')}</span>
            </p>
            <SelectField
              name={say('{column} holds', { column })}
              options={holdsOptions(holds).map((value) => ({ value, label: holdsName(value) }))}
              value={holds}
              onValue={(chosen) => onDraft(withColumn(draft, index, { holds: chosen }))}
            />
            {holds === 'time' && (
              <SelectField
                name={say('Counted in')}
                options={timeUnitOptions}
                value={draft.timeUnit}
                onValue={(timeUnit) => onDraft({ ...draft, timeUnit })}
              />
            )}
            {hasUnit && (
              <SelectField
                name={say('Unit')}
                options={unitOptions}
                value={unit ?? ''}
                onValue={(chosen) =>
                  onDraft(withColumn(draft, index, { unit: chosen === '' ? null : chosen }))
                }
              />
            )}
          </li>
        );
      })}
    </ol>
  );
}
