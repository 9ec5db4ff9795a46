import { Field } from './field.tsx';

interface TextBlockProps {
  readonly name: string;
  readonly text: string;
  readonly hint?: string;
  readonly rows: number;
  readonly maxLength: number;
  readonly onText: (text: string) => void;
}

/** Some lines of text, taken letter by letter as typed. */
export function TextBlock({ name, text, hint, rows, maxLength, onText }: TextBlockProps) {
  return (
    <Field name={name} hint={hint}>
      {({ id, noteId }) => (
        <textarea
          id={id}
          className="entry"
          rows={rows}
          maxLength={maxLength}
          value={text}
          aria-describedby={noteId}
          onChange={({ target }) => onText(target.value)}
        />
      )}
    </Field>
  );
}
