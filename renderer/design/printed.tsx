import type { ReactNode } from 'react';
import { createPortal } from 'react-dom';

/**
 * A sheet of paper: seen here as it will be, and alone on what the printer gets. The copy stands outside the window, so that
 * whatever else the window shows is left out by one rule, a dialog over it too.
 */
export function Printed({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <div className="sheet">{children}</div>
      {createPortal(<div className="sheet sheet-on-paper">{children}</div>, document.body)}
    </>
  );
}
