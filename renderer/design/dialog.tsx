import { type ReactNode, useContext, useEffect, useId, useRef } from 'react';
import { AboveDialogs } from './above-dialogs.ts';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

const takesKeys = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';

/** A modal of the platform: focus stays inside, Escape closes it, focus goes back where it was. */
export function Dialog({ title, onClose, children }: DialogProps) {
  const box = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  const above = useContext(AboveDialogs);
  useEffect(() => {
    const opened = box.current;
    const before = document.activeElement;
    opened?.showModal();
    firstOfContent(opened)?.focus();
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

/** The platform would give a prompt that stands above the content the keys meant for the dialog's first field. */
function firstOfContent(dialog: HTMLDialogElement | null): HTMLElement | undefined {
  return [...(dialog?.querySelectorAll<HTMLElement>(takesKeys) ?? [])].find(
    (element) => !element.matches(':disabled') && element.closest('.dialog-above') === null,
  );
}
