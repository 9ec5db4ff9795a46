import { useId, useState } from 'react';
import { readSettingsFile, say, told } from '#shared-core';
import { TextLine } from '../design/index.ts';
import type { StatedDraft, StatedProblems } from './stated-draft.ts';
import { StatedFields } from './stated-fields.tsx';

type SettingsFile = Extract<ReturnType<typeof readSettingsFile>, { ok: true }>['value'];

interface RunStatedProps {
  readonly draft: StatedDraft;
  readonly problems: StatedProblems;
  /** As `2026-03-18T09:15`, local time; empty leaves it to the file. */
  readonly began: string;
  readonly onDraft: (draft: StatedDraft) => void;
  readonly onBegan: (began: string) => void;
  readonly onSettingsFile: (file: SettingsFile) => void;
}

/** What the person says of a run whose table is taken in, or the settings file that went with it says. */
export function RunStated(props: RunStatedProps) {
  const { draft, problems, began, onDraft, onBegan, onSettingsFile } = props;
  const id = useId();
  const [refused, setRefused] = useState<string | null>(null);
  const open = async (file: File) => {
    const read = readSettingsFile(await file.text());
    setRefused(read.ok ? null : read.error);
    if (read.ok) onSettingsFile(read.value);
  };
  return (
    <section className="run-stated" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{say('What the table does not tell')}</h3>
      <div className="field">
        <label className="field-name" htmlFor={`${id}-file`}>
          {say('Settings file of a pack, if there is one')}
        </label>
        <input
          id={`${id}-file`}
          type="file"
          accept=".json,application/json"
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file && file.size < 1_000_000) void open(file);
            target.value = '';
          }}
        />
        {refused !== null && (
          <p className="field-problem" role="alert">
            {told(refused)}
          </p>
        )}
      </div>
      <StatedFields draft={draft} problems={problems} onDraft={onDraft} />
      <TextLine
        name={say('Began, if the file has no dates')}
        type="datetime-local"
        text={began}
        onText={onBegan}
      />
    </section>
  );
}
