import { type ReactNode, useId } from 'react';

interface FieldProps {
  readonly name: string;
  readonly problem?: string | undefined;
  /** Stands below where there is no problem. */
  readonly hint?: string | undefined;
  /** What is filled in; it takes the id of its label, and the id of the note that describes it, if there is one. */
  readonly children: (ids: {
    readonly id: string;
    readonly noteId: string | undefined;
  }) => ReactNode;
}

/** A name, what is filled in under it, and what is wrong with that. */
export function Field({ name, problem, hint, children }: FieldProps) {
  const id = useId();
  const noteId = `${id}-note`;
  return (
    <div className="field">
      <label className="field-name" htmlFor={id}>
        {name}
      </label>
      {children({ id, noteId: problem || hint ? noteId : undefined })}
      {problem ? (
        <p id={noteId} className="field-problem">
          {problem}
        </p>
      ) : (
        hint && (
          <p id={noteId} className="small soft">
            {hint}
          </p>
        )
      )}
    </div>
  );
}
