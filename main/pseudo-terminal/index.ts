export { openPseudoTerminal, type PseudoTerminal } from './open-pseudo-terminal.ts';
