import { Field } from './field.tsx';

interface NumberFieldProps {
  readonly name: string;
  readonly unit: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly problem?: string | undefined;
  readonly hint?: string | undefined;
  /** How a list of what is still to do finds it. */
  readonly field?: string | undefined;
}

/** A number typed as text, so that a decimal comma is as good as a point. */
export function NumberField({ name, unit, text, onText, problem, hint, field }: NumberFieldProps) {
  return (
    <Field name={name} problem={problem} hint={hint}>
      {({ id, noteId }) => (
        <div className="field-entry">
          <input
            id={id}
            className="entry"
            data-field={field}
            data-kind="number"
            inputMode="decimal"
            autoComplete="off"
            value={text}
            aria-invalid={problem !== undefined}
            aria-describedby={noteId}
            onChange={({ target }) => onText(target.value)}
          />
          <span>{unit}</span>
        </div>
      )}
    </Field>
  );
}
