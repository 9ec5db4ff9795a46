import type { ReactNode } from 'react';
import { Field } from './field.tsx';

interface TextLineProps {
  readonly name: string;
  readonly text: string;
  readonly placeholder?: string;
  readonly problem?: string | undefined;
  /** Stands below where there is no problem. */
  readonly hint?: string;
  /** `datetime-local`: a day and a time in the platform's own field, `2026-05-01T08:30`, local time. */
  readonly type?: 'text' | 'search' | 'datetime-local';
  readonly maxLength?: number;
  /** How a list of what is still to do finds it. */
  readonly field?: string;
  readonly onText: (text: string) => void;
  /** Stands beside the line, such as a button. */
  readonly beside?: ReactNode;
}

/** One line of text that is taken letter by letter as typed. */
export function TextLine(props: TextLineProps) {
  const { name, text, placeholder, problem, hint, type = 'text', maxLength, field, onText } = props;
  return (
    <Field name={name} problem={problem} hint={hint}>
      {({ id, noteId }) => {
        const line = (
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
        );
        return props.beside === undefined ? (
          line
        ) : (
          <div className="field-entry">
            {line}
            {props.beside}
          </div>
        );
      }}
    </Field>
  );
}
