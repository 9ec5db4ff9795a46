/** What of the browser's window is used. */
export interface PaintingWindow {
  readonly document: { readonly hidden: boolean };
  readonly performance: { now(): number };
  requestAnimationFrame(act: () => void): number;
  cancelAnimationFrame(frame: number): void;
  setTimeout(act: () => void, waitMs: number): number;
  clearTimeout(timer: number): void;
}

/** A window that paints at all paints sooner; nor does a window rest for longer. */
const longestWaitMs = 250;

/**
 * Gives what calls back right before the next frame that is painted. A window behind others paints none, and its timers may be held
 * back for a minute: there it is at once, because prompts must sound from there too. After each drawing the window rests for as
 * long as that took: on a slow computer, where a frame takes longer than it lasts, a press would wait behind drawings for ever.
 */
export function createPaintPace(host: PaintingWindow): (act: () => void) => void {
  let restsUntilMs = 0;

  function draw(act: () => void): void {
    const beganMs = host.performance.now();
    act();
    // Comes behind the frame, with all that was laid out and painted for it.
    host.setTimeout(() => {
      const nowMs = host.performance.now();
      restsUntilMs = nowMs + Math.min(nowMs - beganMs, longestWaitMs);
    }, 0);
  }

  function withNextFrame(act: () => void): void {
    const once = () => {
      host.cancelAnimationFrame(frame);
      host.clearTimeout(timer);
      draw(act);
    };
    const frame = host.requestAnimationFrame(once);
    const timer = host.setTimeout(once, longestWaitMs);
  }

  return (act) => {
    const restMs = restsUntilMs - host.performance.now();
    if (host.document.hidden) act();
    else if (restMs > 0) host.setTimeout(() => withNextFrame(act), restMs);
    else withNextFrame(act);
  };
}
