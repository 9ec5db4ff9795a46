import { useId, useState } from 'react';
import { say } from '#shared-core';

interface PortPathProps {
  readonly canAct: boolean;
  readonly onPath: (path: string) => void;
}

/** Some ports are in no list: virtual ones, and those of unusual adapters. */
export function PortPath({ canAct, onPath }: PortPathProps) {
  const id = useId();
  const [path, setPath] = useState('');
  return (
    <form
      className="field port-path"
      onSubmit={(event) => {
        event.preventDefault();
        if (path.trim() !== '') onPath(path.trim());
      }}
    >
      <label className="field-name" htmlFor={id}>
        {say('Or type where the probe is')}
      </label>
      <div className="field-entry">
        <input
          id={id}
          className="entry"
          data-field="probe"
          spellCheck={false}
          autoComplete="off"
          placeholder={say('/dev/ttyACM0 or COM3')}
          value={path}
          onChange={({ target }) => setPath(target.value)}
        />
        <button type="submit" className="button" disabled={!canAct || path.trim() === ''}>
          {say('Connect')}
        </button>
      </div>
    </form>
  );
}
