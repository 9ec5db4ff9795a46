import { useMemo, useState } from 'react';
import { defaultRunSettings } from '#shared-core';
import { Button } from '../design/index.ts';
import { sendFile } from '../exchange/index.ts';
import { settingsFromDraft } from '../prepare/index.ts';
import { mayCommand } from '../stores/index.ts';
import { useBench, usePrepare, useWindowParts } from '../window/use-stores.ts';
import { problemWords } from '../words/index.ts';
import { useWords } from '../words/use-words.ts';
import { ColumnFields } from './column-fields.tsx';
import { DraftVerdict } from './draft-verdict.tsx';
import { beginningText, type Encoding, type FileBeginning } from './file-beginning.ts';
import { FirstLines } from './first-lines.tsx';
import { draftOf, type ImportDraft, mappingOf, mostColumnsShown } from './import-draft.ts';
import { judgeDraft } from './judge-draft.ts';
import { ReadingFields } from './reading-fields.tsx';
import type { Taken } from './taken-note.tsx';

interface MapFileProps {
  readonly file: File;
  readonly beginning: Extract<FileBeginning, { kind: 'read' }>;
  readonly onTaken: (taken: Taken) => void;
  readonly onCancel: () => void;
}

const linesShown = 8;

/** Shows a file's first lines, how they are understood, and lets the person say otherwise. */
export function MapFile({ file, beginning, onTaken, onCancel }: MapFileProps) {
  const { service } = useWindowParts();
  const words = useWords();
  const canAct = useBench(mayCommand);
  const prepared = usePrepare((state) => state.draft);
  const [draft, setDraft] = useState(() => draftOf(beginningText(beginning, 'auto'), 'auto'));
  const [share, setShare] = useState<number | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const text = useMemo(() => beginningText(beginning, draft.encoding), [beginning, draft.encoding]);
  const judgement = useMemo(() => judgeDraft(text, draft), [text, draft]);
  const fromPrepare = settingsFromDraft(prepared);
  const settings = fromPrepare.ok ? fromPrepare.value : defaultRunSettings;
  const change = (changed: ImportDraft) => {
    setDraft(changed);
    setProblem(null);
  };
  const split = (encoding: Encoding, delimiter: ImportDraft['delimiter']) => {
    const { decimal, dateOrder } = draft;
    const found = draftOf(beginningText(beginning, encoding), encoding, delimiter);
    change({ ...found, decimal, dateOrder });
  };
  const take = async () => {
    const mapped = mappingOf(draft);
    if (mapped.kind !== 'mapping') return;
    const name = file.name.replace(/\.[^.]*$/, '').slice(0, 120) || defaultRunSettings.name;
    setShare(0);
    const says = {
      encoding: draft.encoding,
      mapping: mapped.mapping,
      settings: { ...settings, name },
    };
    const answer = await sendFile(service, file, says, setShare);
    setShare(null);
    if (answer.ok) onTaken({ ...answer.value, name });
    else setProblem(problemWords(answer.error));
  };
  return (
    <>
      <h2>{file.name}</h2>
      <FirstLines lines={text.split(/\r\n|\r|\n/, linesShown).map((line) => line.slice(0, 300))} />
      <ReadingFields draft={draft} onDraft={change} onSplit={split} />
      <ColumnFields draft={draft} onDraft={change} />
      {draft.columns.length === mostColumnsShown && (
        <p className="small soft">Only the first {mostColumnsShown} columns are offered.</p>
      )}
      <DraftVerdict judgement={judgement} isWhole={beginning.isWhole} />
      <p className="small soft">
        Taken from Prepare: a charge of {words.quantity(settings.charge.volumeMl, 0, 'mL')} at{' '}
        {words.quantity(settings.charge.strengthAbv, 1, '% vol')}, an air pressure of{' '}
        {words.quantity(settings.pressure.pressureKPa, 1, 'kPa')}. If the run had others, change
        them there first.
      </p>
      {problem && (
        <p className="warning" role="alert">
          {problem}
        </p>
      )}
      {share !== null && (
        <p role="status">
          {share < 1 ? 'Bringing the file in …' : 'Going through the run …'}
          <br />
          <progress value={share < 1 ? share : undefined} max={1} aria-label="How far" />
        </p>
      )}
      <div className="dialog-acts">
        <Button onClick={onCancel}>Cancel</Button>
        <Button
          weight="main"
          disabled={!canAct || share !== null || judgement.kind !== 'readable'}
          onClick={() => void take()}
        >
          Take it in
        </Button>
      </div>
    </>
  );
}
