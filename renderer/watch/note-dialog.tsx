import { useId, useState } from 'react';
import type { MarkBody } from '#shared-core';
import { Button, Dialog } from '../design/index.ts';

interface NoteDialogProps {
  readonly onMark: (mark: MarkBody) => void;
  readonly onClose: () => void;
}

export function NoteDialog({ onMark, onClose }: NoteDialogProps) {
  const id = useId();
  const [text, setText] = useState('');
  const note = text.trim();
  return (
    <Dialog title="Note" onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (note !== '') onMark({ type: 'note', text: note });
        }}
      >
        <label className="field-name" htmlFor={id}>
          What did you see or do?
        </label>
        <textarea
          id={id}
          className="entry"
          rows={3}
          maxLength={2000}
          value={text}
          onChange={({ target }) => setText(target.value)}
        />
        <div className="dialog-acts">
          <Button onClick={onClose}>Cancel</Button>
          <button type="submit" className="button" data-weight="main" disabled={note === ''}>
            Keep note
          </button>
        </div>
      </form>
    </Dialog>
  );
}
