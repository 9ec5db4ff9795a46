import { constants, setPriority } from 'node:os';

/**
 * Asks the system to let this process go before others: a line's moment is the moment at which this process gets its turn after the
 * bytes came. It does little besides, so nobody is held up by it. Linux and macOS refuse this to most users; then stamps are as good
 * as the computer is idle.
 */
export function askForTurns(ask: (priority: number) => void = setPriority): void {
  try {
    ask(constants.priority.PRIORITY_HIGH);
  } catch {
    // Refused: nothing is lost but the wish.
  }
}
