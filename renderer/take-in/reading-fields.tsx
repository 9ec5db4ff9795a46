import { say } from '#shared-core';
import { SelectField } from '../design/index.ts';
import type { Encoding } from './file-beginning.ts';
import type { ImportDraft } from './import-draft.ts';
import { dateOptions, decimalOptions, delimiterOptions, encodingOptions } from './import-words.ts';

interface ReadingFieldsProps {
  readonly draft: ImportDraft;
  readonly onDraft: (draft: ImportDraft) => void;
  /** Text and columns have to be found anew. */
  readonly onSplit: (encoding: Encoding, delimiter: ImportDraft['delimiter']) => void;
}

/** How the text is read: characters, columns, decimals and dates. */
export function ReadingFields({ draft, onDraft, onSplit }: ReadingFieldsProps) {
  const { encoding, delimiter } = draft;
  return (
    <div className="import-reading">
      <SelectField
        name={say('Columns are parted by')}
        options={delimiterOptions}
        value={delimiter}
        onValue={(chosen) => onSplit(encoding, chosen)}
      />
      <SelectField
        name={say('Decimal sign')}
        options={decimalOptions}
        value={draft.decimal}
        onValue={(decimal) => onDraft({ ...draft, decimal })}
      />
      <SelectField
        name={say('Dates like 03/04/2026')}
        options={dateOptions}
        value={draft.dateOrder}
        onValue={(dateOrder) => onDraft({ ...draft, dateOrder })}
      />
      <SelectField
        name={say('Characters')}
        options={encodingOptions}
        value={encoding}
        onValue={(chosen) => onSplit(chosen, delimiter)}
      />
    </div>
  );
}
