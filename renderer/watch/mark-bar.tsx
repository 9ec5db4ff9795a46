import { useState } from 'react';
import type { MarkBody } from '#shared-core';
import { Button } from '../design/index.ts';
import { benchMarks, mayCommand, type RunView } from '../stores/index.ts';
import { useBench, usePreferences, useWindowParts } from '../window/use-stores.ts';
import { clockWords } from '../words/index.ts';
import { useWords } from '../words/use-words.ts';
import { DropsButton } from './drops-button.tsx';
import { NoteDialog } from './note-dialog.tsx';
import { useMarkKeys } from './use-mark-keys.ts';
import { VolumeDialog } from './volume-dialog.tsx';

type OpenDialog = 'receiver-changed' | 'volume-read' | 'note' | null;

/** Everything the person does at the bench, one key or one button each, and undo for all of it. */
export function MarkBar({ view }: { readonly view: RunView }) {
  const { commands } = useWindowParts();
  const canAct = useBench(mayCommand);
  const showKeys = usePreferences(({ markKeys }) => markKeys);
  const words = useWords();
  const [dialog, setDialog] = useState<OpenDialog>(null);
  const last = benchMarks(view.marks).at(-1);
  const heat = view.snapshot?.heat ?? 'unknown';

  const mark = (body: MarkBody) => {
    setDialog(null);
    void commands.mark(body);
  };
  const undo = () => {
    if (last) void commands.mark({ type: 'mark-withdrawn', withdrawnMarkId: last.markId });
  };
  const acts: readonly MarkAct[] = [
    { key: 'h', name: 'Heat on', isNow: heat === 'on', run: () => mark({ type: 'heat-on' }) },
    {
      key: 'e',
      name: 'Heat eased',
      isNow: heat === 'eased',
      run: () => mark({ type: 'heat-eased' }),
    },
    { key: 'o', name: 'Heat off', isNow: heat === 'off', run: () => mark({ type: 'heat-off' }) },
    { key: 'r', name: 'Receiver changed', run: () => setDialog('receiver-changed') },
    { key: 'v', name: 'Volume', run: () => setDialog('volume-read') },
    { key: 'n', name: 'Note', run: () => setDialog('note') },
    { key: 'u', name: 'Undo', run: undo },
  ];
  useMarkKeys(canAct && dialog === null && showKeys ? acts : []);

  return (
    <section className="mark-bar" aria-label="Marks">
      {acts.slice(0, 5).map((act) => (
        <MarkButton key={act.key} act={act} canAct={canAct} showKey={showKeys} />
      ))}
      <DropsButton canAct={canAct} showKey={showKeys} onCounted={mark} />
      {acts.slice(5, 6).map((act) => (
        <MarkButton key={act.key} act={act} canAct={canAct} showKey={showKeys} />
      ))}
      <Button weight="quiet" className="mark-undo" disabled={!canAct || !last} onClick={undo}>
        {showKeys && <span className="key">u</span>}
        {last ? `Undo: ${words.mark(last.mark)}, ${clockWords(last.timeS)}` : 'Nothing to undo'}
      </Button>
      {dialog === 'note' && <NoteDialog onMark={mark} onClose={() => setDialog(null)} />}
      {(dialog === 'receiver-changed' || dialog === 'volume-read') && (
        <VolumeDialog kind={dialog} onMark={mark} onClose={() => setDialog(null)} />
      )}
    </section>
  );
}

interface MarkAct {
  readonly key: string;
  readonly name: string;
  readonly isNow?: boolean;
  readonly run: () => void;
}

interface MarkButtonProps {
  readonly act: MarkAct;
  readonly canAct: boolean;
  readonly showKey: boolean;
}

function MarkButton({ act, canAct, showKey }: MarkButtonProps) {
  const { isNow } = act;
  return (
    <Button
      className="mark-button"
      disabled={!canAct}
      onClick={act.run}
      aria-pressed={isNow}
      data-now={isNow}
    >
      {showKey && <span className="key">{act.key}</span>}
      {act.name}
    </Button>
  );
}
