import { createContext, type ReactNode } from 'react';

/**
 * What must be seen and pressed while a dialog is open: everything behind one is out of reach, so each dialog shows it
 * inside itself, above its own content. `leave` closes the dialog.
 */
export const AboveDialogs = createContext<(leave: () => void) => ReactNode>(() => null);
