import type { ReactNode } from 'react';
import { say } from '#shared-core';
import { Button } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { Form } from './form.tsx';

interface FormDialogProps {
  readonly title: string;
  /** What is on the button that keeps it. */
  readonly act: string;
  /** False while something is still to be entered. */
  readonly isComplete?: boolean;
  readonly onSubmit: () => void;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A dialog that something is entered in: Enter keeps it as the button does, Cancel and Escape leave it. */
export function FormDialog(props: FormDialogProps) {
  const { title, act, isComplete = true, onSubmit, onClose, children } = props;
  return (
    <Dialog title={title} onClose={onClose}>
      <Form
        onSubmit={() => {
          if (isComplete) onSubmit();
        }}
      >
        {children}
        <div className="dialog-acts">
          <Button onClick={onClose}>{say('Cancel')}</Button>
          <Button type="submit" weight="main" disabled={!isComplete}>
            {act}
          </Button>
        </div>
      </Form>
    </Dialog>
  );
}
