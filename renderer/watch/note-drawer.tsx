import { useEffect, useId, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { Say } from '../words/index.ts';

interface NoteDrawerProps {
  readonly canAct: boolean;
  readonly onClose: () => void;
}

const longestNote = 2000;

/** A note is written beside the run, not over it: everything else stays in sight and in reach. */
export function NoteDrawer({ canAct, onClose }: NoteDrawerProps) {
  const id = useId();
  const { commands, noteDraft } = useWindowParts();
  const { text, write } = useStore(noteDraft);
  const [isKeeping, setKeeping] = useState(false);
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    field.current?.focus();
    return () => {
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  const note = text.trim();
  const canKeep = canAct && !isKeeping && note !== '';
  const keep = async () => {
    if (!canKeep) return;
    setKeeping(true);
    const isKept = await commands.mark({ type: 'note', text: note });
    setKeeping(false);
    if (!isKept) return;
    write('');
    onClose();
  };
  return (
    <form
      className="note-drawer"
      aria-label={say('Note')}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <label className="field-name" htmlFor={id}>
        <Say
          sentence={'What did you see or do? <span>Enter keeps it.</span>'}
          parts={{ span: (words) => <span className="soft">{words}</span> }}
        />
      </label>
      <textarea
        id={id}
        ref={field}
        className="entry"
        rows={2}
        maxLength={longestNote}
        value={text}
        onChange={({ target }) => write(target.value)}
        onKeyDown={(event) => {
          // While a word is being composed, Enter belongs to the input method.
          if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return;
          event.preventDefault();
          void keep();
        }}
      />
      <div className="note-drawer-acts">
        <button type="submit" className="button" data-weight="main" disabled={!canKeep}>
          {say('Keep note')}
        </button>
        <Button onClick={onClose}>{say('Later')}</Button>
      </div>
    </form>
  );
}
