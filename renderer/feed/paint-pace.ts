/** What of the browser's window is used. */
export interface PaintingWindow {
  readonly document: { readonly hidden: boolean };
  requestAnimationFrame(act: () => void): number;
  cancelAnimationFrame(frame: number): void;
  setTimeout(act: () => void, waitMs: number): number;
  clearTimeout(timer: number): void;
}

/** A window that paints at all paints sooner. */
const longestWaitMs = 250;

/**
 * Calls back right before the next frame is painted. A window behind others paints none, and its timers may be
 * held back for a minute: there it is at once, because prompts must sound from there too.
 */
export function beforeNextPaint(host: PaintingWindow, act: () => void): void {
  if (host.document.hidden) {
    act();
    return;
  }
  const once = () => {
    host.cancelAnimationFrame(frame);
    host.clearTimeout(timer);
    act();
  };
  const frame = host.requestAnimationFrame(once);
  const timer = host.setTimeout(once, longestWaitMs);
}
