import type { ReactNode } from 'react';
import { createPortal } from 'react-dom';

/**
 * What the printer gets in place of the window. It stands outside the window, so that whatever else is shown is left out by one
 * rule, a dialog over it too.
 */
export function OnPaper({ children }: { readonly children: ReactNode }) {
  return createPortal(<div className="sheet sheet-on-paper">{children}</div>, document.body);
}

/** A sheet of paper seen here as it will be printed. */
export function Printed({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <div className="sheet">{children}</div>
      <OnPaper>{children}</OnPaper>
    </>
  );
}
