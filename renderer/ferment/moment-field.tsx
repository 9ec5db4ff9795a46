import { useId } from 'react';

interface MomentFieldProps {
  readonly name: string;
  /** As the platform's field holds it: `2026-05-01T08:30`, local time. */
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly problem: string | undefined;
}

/** A day and a time, in the field that the platform has for it. */
export function MomentField({ name, text, onText, problem }: MomentFieldProps) {
  const id = useId();
  const noteId = `${id}-note`;
  return (
    <div className="field">
      <label className="field-name" htmlFor={id}>
        {name}
      </label>
      <input
        id={id}
        className="entry"
        type="datetime-local"
        value={text}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : noteId}
        onChange={({ target }) => onText(target.value)}
      />
      {problem !== undefined && (
        <p id={noteId} className="field-problem">
          {problem}
        </p>
      )}
    </div>
  );
}
