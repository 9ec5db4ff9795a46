import type { PowerSaveBlocker } from 'electron';
import type { ServiceHandler } from '../service-handler.ts';

/** Keeps computer and screen awake while there is a run, also one whose disk takes nothing, and only then. */
export function setupKeepAwake(
  services: Pick<ServiceHandler, 'on'>,
  blocker: Pick<PowerSaveBlocker, 'start' | 'stop'>,
): void {
  let blockerId: number | null = null;
  services.on('recording', ({ state }) => {
    if (state !== 'idle') {
      blockerId ??= blocker.start('prevent-display-sleep');
    } else if (blockerId !== null) {
      blocker.stop(blockerId);
      blockerId = null;
    }
  });
}
