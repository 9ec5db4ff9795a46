import { type ReactNode, useContext, useEffect, useId, useRef } from 'react';
import { AboveDialogs } from './above-dialogs.ts';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A modal of the platform: focus stays inside, Escape closes it, focus goes back where it was. */
export function Dialog({ title, onClose, children }: DialogProps) {
  const box = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  const above = useContext(AboveDialogs);
  useEffect(() => {
    const opened = box.current;
    const before = document.activeElement;
    opened?.showModal();
    return () => {
      opened?.close();
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={box}
      className="dialog"
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div className="dialog-above">{above(onClose)}</div>
      <h2 id={titleId}>{title}</h2>
      {children}
    </dialog>
  );
}
