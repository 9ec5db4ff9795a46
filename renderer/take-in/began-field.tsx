import { useId } from 'react';

interface BeganFieldProps {
  readonly name: string;
  /** As `2026-03-18T09:15`, local time. */
  readonly began: string;
  readonly onBegan: (began: string) => void;
}

/** When a run began, by the clock on the wall. */
export function BeganField({ name, began, onBegan }: BeganFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-name" htmlFor={id}>
        {name}
      </label>
      <input
        id={id}
        className="entry"
        type="datetime-local"
        value={began}
        onChange={({ target }) => onBegan(target.value)}
      />
    </div>
  );
}
