import { useId } from 'react';
import { mayCommand } from '../stores/index.ts';
import { useBench } from '../window/use-stores.ts';

/** Picks the file of any logger. */
export function ChooseFile({ onFile }: { readonly onFile: (file: File) => void }) {
  const canAct = useBench(mayCommand);
  const id = useId();
  return (
    <div className="choose-file">
      <label className="field-name" htmlFor={id}>
        Take in a CSV of time and head temperature
      </label>
      <input
        id={id}
        type="file"
        accept=".csv,.txt,.tsv,.dat,text/csv,text/plain"
        disabled={!canAct}
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file) onFile(file);
          target.value = '';
        }}
      />
      <p className="small soft">
        From any logger: you see its first lines and say which column holds what.
      </p>
    </div>
  );
}
