import { Field } from './field.tsx';

interface TextLineProps {
  readonly name: string;
  readonly text: string;
  readonly placeholder?: string;
  readonly problem?: string | undefined;
  /** A day and a time in the platform's own field: `2026-05-01T08:30`, local time. */
  readonly type?: 'text' | 'datetime-local';
  readonly maxLength?: number;
  /** How a list of what is still to do finds it. */
  readonly field?: string;
  readonly onText: (text: string) => void;
}

/** One line of text that is taken letter by letter as typed. */
export function TextLine(props: TextLineProps) {
  const { name, text, placeholder, problem, type = 'text', maxLength, field, onText } = props;
  return (
    <Field name={name} problem={problem}>
      {({ id, noteId }) => (
        <input
          id={id}
          className="entry"
          type={type}
          spellCheck={false}
          autoComplete="off"
          placeholder={placeholder}
          maxLength={maxLength}
          data-field={field}
          value={text}
          aria-invalid={problem !== undefined}
          aria-describedby={noteId}
          onChange={({ target }) => onText(target.value)}
        />
      )}
    </Field>
  );
}
