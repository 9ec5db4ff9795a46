import { useEffect, useId, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';

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
      aria-label="Note"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <label className="field-name" htmlFor={id}>
        What did you see or do? <span className="soft">Enter keeps it.</span>
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
          Keep note
        </button>
        <Button onClick={onClose}>Later</Button>
      </div>
    </form>
  );
}
