import type { WebContents } from 'electron';
import { decideReload } from './reload-limit.ts';

export interface ReloadDeps {
  readonly contents: Pick<WebContents, 'on' | 'reload'>;
  readonly nowMs: () => number;
  /** Says that the window stays away while recording goes on. */
  readonly giveUp: () => void;
}

/** Brings a window back that fell over, but not for ever. */
export function setupReload({ contents, nowMs, giveUp }: ReloadDeps): void {
  let reloadsMs: readonly number[] = [];
  contents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit') return;
    const decision = decideReload(reloadsMs, nowMs());
    reloadsMs = decision.reloadsMs;
    if (decision.reload) contents.reload();
    else giveUp();
  });
}
