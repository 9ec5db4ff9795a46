import type { App } from 'electron';

/** Ends the run properly before the program ends; a second wish to quit does not start it again. */
export function setupQuit(
  app: Pick<App, 'on' | 'quit' | 'exit'>,
  close: () => Promise<void>,
): void {
  let closing = false;
  app.on('window-all-closed', () => app.quit());
  app.on('before-quit', (event) => {
    event.preventDefault();
    if (closing) return;
    closing = true;
    void close().finally(() => app.exit(0));
  });
}
