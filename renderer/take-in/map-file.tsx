import { useMemo, useState } from 'react';
import { defaultRunSettings, type RunSettings, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { sendFile } from '../exchange/index.ts';
import { useBench, usePreferences, useWindowParts } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { momentIso, momentText, problemWords } from '../words/index.ts';
import { ColumnFields } from './column-fields.tsx';
import { DraftVerdict } from './draft-verdict.tsx';
import { beginningText, type Encoding, type FileBeginning } from './file-beginning.ts';
import { FirstLines } from './first-lines.tsx';
import { HeadChoice } from './head-choice.tsx';
import { draftOf, type ImportDraft, mappingOf, mostColumnsShown } from './import-draft.ts';
import { judgeDraft } from './judge-draft.ts';
import { ReadingFields } from './reading-fields.tsx';
import { RunStated } from './run-stated.tsx';
import { nothingStated, statedDraftOf, statedFrom } from './stated-draft.ts';
import type { Taken } from './taken-note.tsx';

interface MapFileProps {
  readonly file: File;
  readonly beginning: Extract<FileBeginning, { kind: 'read' }>;
  readonly onTaken: (taken: Taken) => void;
  readonly onCancel: () => void;
}

const linesShown = 8;

/** What is known of a run before anybody says anything: no table tells by what kind of probe it was measured. */
const settingsOfTable: RunSettings = {
  ...defaultRunSettings,
  probe: { ...defaultRunSettings.probe, assumed: ['probe-kind'] },
};

/** Shows a file's first lines, how they are understood, and lets the person say otherwise. */
export function MapFile({ file, beginning, onTaken, onCancel }: MapFileProps) {
  const { service } = useWindowParts();
  const canAct = useBench(mayCommand);
  const decimal = usePreferences((state) => state.decimal);
  const [draft, setDraft] = useState(() => draftOf(beginningText(beginning, 'auto'), 'auto'));
  const [share, setShare] = useState<number | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const text = useMemo(() => beginningText(beginning, draft.encoding), [beginning, draft.encoding]);
  const judgement = useMemo(() => judgeDraft(text, draft), [text, draft]);
  // Nothing is taken over unasked: a wrong charge spoils every recovery.
  const [known, setKnown] = useState(settingsOfTable);
  const [statedDraft, setStatedDraft] = useState(nothingStated);
  const [began, setBegan] = useState('');
  const [beganByFile, setBeganByFile] = useState('');
  const stated = statedFrom(statedDraft, known, decimal);
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
    if (mapped.kind !== 'mapping' || !stated.ok) return;
    const name = file.name.replace(/\.[^.]*$/, '').slice(0, 120) || defaultRunSettings.name;
    setShare(0);
    const says = {
      encoding: draft.encoding,
      mapping: mapped.mapping,
      settings: { ...known, ...stated.value, name },
      startedAtIso: momentIso(began, beganByFile),
    };
    const answer = await sendFile(service, file, says, setShare);
    setShare(null);
    if (!answer.ok) return setProblem(problemWords(answer.error));
    onTaken({ ...answer.value, name });
  };
  return (
    <>
      <h2>{file.name}</h2>
      <FirstLines lines={text.split(/\r\n|\r|\n/, linesShown).map((line) => line.slice(0, 300))} />
      {draft.headDoubt.length > 0 && <HeadChoice text={text} draft={draft} onDraft={change} />}
      <ReadingFields draft={draft} onDraft={change} onSplit={split} />
      <ColumnFields draft={draft} onDraft={change} />
      {draft.columns.length === mostColumnsShown && (
        <p className="small soft">
          {say('Only the first {mostColumnsShown} columns are offered.', { mostColumnsShown })}
        </p>
      )}
      <DraftVerdict judgement={judgement} isWhole={beginning.isWhole} />
      <RunStated
        draft={statedDraft}
        problems={stated.ok ? {} : stated.error}
        began={began}
        onDraft={setStatedDraft}
        onBegan={setBegan}
        onSettingsFile={({ settings, startedAtIso }) => {
          setKnown(settings);
          setStatedDraft(statedDraftOf(settings, decimal));
          if (startedAtIso === '') return;
          setBegan(momentText(startedAtIso));
          setBeganByFile(startedAtIso);
        }}
      />
      {!stated.ok && (
        <p className="small" role="status">
          {say('Say what was in the pot, how strong it was, and the air pressure.')}
        </p>
      )}
      {problem && (
        <p className="warning" role="alert">
          {problem}
        </p>
      )}
      {share !== null && (
        <p role="status">
          {share < 1 ? say('Bringing the file in …') : say('Going through the run …')}
          <br />
          <progress value={share < 1 ? share : undefined} max={1} aria-label={say('How far')} />
        </p>
      )}
      <div className="dialog-acts">
        <Button onClick={onCancel}>{say('Cancel')}</Button>
        <Button
          weight="main"
          disabled={!canAct || share !== null || judgement.kind !== 'readable' || !stated.ok}
          onClick={() => void take()}
        >
          {say('Take it in')}
        </Button>
      </div>
    </>
  );
}
