import { useId, useState } from 'react';
import { defaultRunSettings } from '#shared-core';
import { settingsFromDraft } from '../prepare/index.ts';
import { mayCommand } from '../stores/index.ts';
import { useBench, usePrepare, useWindowParts } from '../window/use-stores.ts';

/** Takes in a table of time and temperature from any logger, judged with the settings of Prepare. */
export function ImportCsv({ onImported }: { readonly onImported: () => void }) {
  const { service, bench } = useWindowParts();
  const canAct = useBench(mayCommand);
  const draft = usePrepare((state) => state.draft);
  const [rejected, setRejected] = useState<readonly string[]>([]);
  const id = useId();
  const take = async (file: File) => {
    const settings = settingsFromDraft(draft);
    const name = file.name.replace(/\.[^.]*$/, '').slice(0, 120) || defaultRunSettings.name;
    const answer = await service.request('runs/import', {
      fileName: file.name.slice(0, 255),
      csv: await file.text(),
      settings: { ...(settings.ok ? settings.value : defaultRunSettings), name },
    });
    if (!answer.ok) bench.getState().dispatch({ type: 'problem', problem: answer.error });
    setRejected(answer.ok ? answer.value.rejectedRows : []);
    if (answer.ok) onImported();
  };
  return (
    <div className="import">
      <label className="field-name" htmlFor={id}>
        Take in a CSV of time and head temperature
      </label>
      <input
        id={id}
        type="file"
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        disabled={!canAct}
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file) void take(file);
          target.value = '';
        }}
      />
      <p className="small soft">Charge and air pressure are taken from Prepare.</p>
      {rejected.length > 0 && (
        <details>
          <summary>
            {rejected.length === 1 ? '1 remark' : `${rejected.length} remarks`} on this file
          </summary>
          <ul>
            {rejected.slice(0, 50).map((row) => (
              <li key={row}>{row}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
