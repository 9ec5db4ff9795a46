import { expect, test } from 'vitest';
import { createPaintPace, type PaintingWindow } from '../../../renderer/feed/index.ts';

interface Timer {
  readonly dueMs: number;
  readonly act: () => void;
}

function standIn(hidden: boolean) {
  const frames = new Map<number, () => void>();
  const timers = new Map<number, Timer>();
  let next = 0;
  let nowMs = 1000;
  const host: PaintingWindow = {
    document: { hidden },
    performance: { now: () => nowMs },
    requestAnimationFrame: (act) => {
      next += 1;
      frames.set(next, act);
      return next;
    },
    cancelAnimationFrame: (frame) => frames.delete(frame),
    setTimeout: (act, waitMs) => {
      next += 1;
      timers.set(next, { dueMs: nowMs + waitMs, act });
      return next;
    },
    clearTimeout: (timer) => timers.delete(timer),
  };
  return {
    host,
    paint() {
      for (const [id, act] of [...frames]) {
        frames.delete(id);
        act();
      }
    },
    passMs(forMs: number) {
      nowMs += forMs;
      for (const [id, { dueMs, act }] of [...timers]) {
        if (dueMs > nowMs) continue;
        timers.delete(id);
        act();
      }
    },
  };
}

test.each([
  { name: 'with the frame of a window in view', hidden: false, before: 0, painted: 1, later: 1 },
  {
    name: 'at once in a window that paints nothing',
    hidden: true,
    before: 1,
    painted: 1,
    later: 1,
  },
])('it acts once, $name', ({ hidden, before, painted, later }) => {
  const { host, paint, passMs } = standIn(hidden);
  let acted = 0;
  createPaintPace(host)(() => {
    acted += 1;
  });
  const counts = [acted];
  paint();
  counts.push(acted);
  passMs(1000);
  expect([...counts, acted]).toEqual([before, painted, later]);
});

test('a window that stops painting meanwhile acts by the clock, and not again when it paints', () => {
  const { host, paint, passMs } = standIn(false);
  let acted = 0;
  createPaintPace(host)(() => {
    acted += 1;
  });
  passMs(250);
  paint();
  expect(acted).toBe(1);
});

test.each([
  { drawsForMs: 0, restMs: 0 },
  { drawsForMs: 80, restMs: 80 },
  { drawsForMs: 900, restMs: 250 },
])(
  'after a drawing that took $drawsForMs ms the window rests for $restMs ms, so that a press comes through',
  ({ drawsForMs, restMs }) => {
    const { host, paint, passMs } = standIn(false);
    const tell = createPaintPace(host);
    tell(() => {});
    paint();
    passMs(drawsForMs);
    let acted = 0;
    tell(() => {
      acted += 1;
    });
    if (restMs > 0) {
      passMs(restMs - 1);
      paint();
      expect(acted).toBe(0);
      passMs(1);
    }
    paint();
    expect(acted).toBe(1);
  },
);
