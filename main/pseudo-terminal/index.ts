/** A real serial line without a device. */

export { openPseudoTerminal, type PseudoTerminal } from './open-pseudo-terminal.ts';
