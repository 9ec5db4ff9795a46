import type { App, BrowserWindow } from 'electron';
import { type EndPatience, untilOutOfPatience } from '../end-patience.ts';

export interface QuitDeps {
  readonly app: Pick<App, 'on' | 'quit' | 'exit'>;
  /** The window that commands. */
  readonly window: Pick<BrowserWindow, 'on'>;
  /** A run goes on, or one that is over is not saved. */
  readonly isAnythingAtStake: () => boolean;
  /** Asks the person whether that may be; never blocks. */
  readonly askToEnd: () => Promise<boolean>;
  readonly close: () => Promise<void>;
  /** How long what does not close is waited for. */
  readonly patience: Pick<EndPatience, 'mostMs' | 'mostSavingMs'>;
}

/**
 * Ends the run properly before the program ends, and no run without a yes. Closing the window is a wish to quit, because a run that
 * nobody can see or stop is worse than one that goes on. While the end is under way, another wish to quit ends at once.
 */
export function setupQuit(deps: QuitDeps): void {
  const { app, window, isAnythingAtStake, askToEnd, close, patience } = deps;
  let closing = false;
  let agreed = false;
  let asking = false;

  function quitIfAgreed(): void {
    if (asking) return;
    asking = true;
    void askToEnd()
      .then((yes) => {
        agreed = yes;
        if (yes) app.quit();
      })
      .finally(() => {
        asking = false;
      });
  }

  const mustAsk = () => !closing && !agreed && isAnythingAtStake();

  window.on('close', (event) => {
    if (!mustAsk()) return;
    event.preventDefault();
    quitIfAgreed();
  });
  app.on('window-all-closed', () => app.quit());
  app.on('before-quit', (event) => {
    event.preventDefault();
    if (mustAsk()) {
      quitIfAgreed();
      return;
    }
    if (closing) {
      app.exit(0);
      return;
    }
    closing = true;
    const isOutOfPatience = untilOutOfPatience({
      ...patience,
      isSaving: isAnythingAtStake,
      onSaving: () => {},
    });
    void Promise.race([close(), isOutOfPatience]).finally(() => app.exit(0));
  });
}
