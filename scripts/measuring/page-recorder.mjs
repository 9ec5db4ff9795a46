/// <reference lib="dom" />
/**
 * Runs in the measured page before its own code. Notes each new head temperature with the time at which the frame that
 * shows it was painted, and every long task. Plain JavaScript: it goes to the page as it is.
 *
 * A frame is callbacks, layout, paint; a message posted in a callback is delivered after the paint, and what
 * was committed before that message is then on its way to the screen. What comes after it (compositor, cable, panel) is
 * not counted.
 */
{
  /** @type {{ text: string, atMs: number }[]} */
  const paints = [];
  /** @type {{ startMs: number, durationMs: number, scripts: string[] }[]} */
  const longTasks = [];
  /** @type {{ startMs: number, durationMs: number, scripts: string[] }[]} */
  const longFrames = [];
  /** @type {string[]} */
  let committed = [];
  let shown = '';
  let frames = 0;

  const afterPaint = new MessageChannel();
  afterPaint.port1.onmessage = () => {
    const atMs = performance.now();
    for (const text of committed) paints.push({ text, atMs });
    committed = [];
  };
  const onFrame = () => {
    frames += 1;
    afterPaint.port2.postMessage(null);
    requestAnimationFrame(onFrame);
  };
  requestAnimationFrame(onFrame);

  new MutationObserver(() => {
    const value = document.querySelector('.head-value')?.firstChild?.nodeValue ?? '';
    if (value === shown) return;
    shown = value;
    committed.push(value);
  }).observe(document, { childList: true, characterData: true, subtree: true });

  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) {
      longTasks.push({ startMs: startTime, durationMs: duration, scripts: [] });
    }
  }).observe({ type: 'longtask' });

  // Says which scripts ran in a long frame; `longtask` itself names none.
  if (PerformanceObserver.supportedEntryTypes.includes('long-animation-frame')) {
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        const { scripts } =
          /** @type {{ scripts?: { invoker: string, sourceFunctionName: string, duration: number }[] }} */ (
            /** @type {unknown} */ (entry)
          );
        longFrames.push({
          startMs: entry.startTime,
          durationMs: entry.duration,
          scripts: (scripts ?? []).map(
            ({ invoker, sourceFunctionName, duration }) =>
              `${invoker}${sourceFunctionName && ` ${sourceFunctionName}`} ${Math.round(duration)} ms`,
          ),
        });
      }
    }).observe({ type: 'long-animation-frame' });
  }

  Object.assign(window, {
    pageRecorder: {
      take: () => {
        const counted = frames;
        frames = 0;
        return {
          paints: paints.splice(0),
          longTasks: longTasks.splice(0),
          longFrames: longFrames.splice(0),
          frames: counted,
        };
      },
    },
  });
}
