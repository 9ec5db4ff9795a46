import { useId } from 'react';

interface TextLineProps {
  readonly name: string;
  readonly text: string;
  readonly placeholder: string;
  readonly problem: string | undefined;
  readonly onText: (text: string) => void;
}

/** One line of text that is taken letter by letter as typed. */
export function TextLine({ name, text, placeholder, problem, onText }: TextLineProps) {
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
        spellCheck={false}
        autoComplete="off"
        placeholder={placeholder}
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
