import type { ReactNode } from 'react';

interface FormProps {
  readonly className?: string;
  /** What it is called to those who hear the window. */
  readonly name?: string;
  readonly onSubmit: () => void;
  readonly children: ReactNode;
}

/** Something is entered here: Enter keeps it as its button does. */
export function Form({ className = 'dialog-form', name, onSubmit, children }: FormProps) {
  return (
    <form
      className={className}
      aria-label={name}
      onSubmit={(event) => {
        event.preventDefault();
        onSubmit();
      }}
    >
      {children}
    </form>
  );
}
