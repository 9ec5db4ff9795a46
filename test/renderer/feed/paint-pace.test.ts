import { expect, test } from 'vitest';
import { beforeNextPaint, type PaintingWindow } from '../../../renderer/feed/index.ts';

function standIn(hidden: boolean) {
  const frames = new Map<number, () => void>();
  const timers = new Map<number, () => void>();
  let next = 0;
  const add = (acts: Map<number, () => void>, act: () => void) => {
    next += 1;
    acts.set(next, act);
    return next;
  };
  const host: PaintingWindow = {
    document: { hidden },
    requestAnimationFrame: (act) => add(frames, act),
    cancelAnimationFrame: (frame) => frames.delete(frame),
    setTimeout: (act) => add(timers, act),
    clearTimeout: (timer) => timers.delete(timer),
  };
  const run = (acts: Map<number, () => void>) => {
    for (const [id, act] of [...acts]) {
      acts.delete(id);
      act();
    }
  };
  return { host, paint: () => run(frames), letTimePass: () => run(timers) };
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
  const { host, paint, letTimePass } = standIn(hidden);
  let acted = 0;
  beforeNextPaint(host, () => {
    acted += 1;
  });
  const counts = [acted];
  paint();
  counts.push(acted);
  letTimePass();
  expect([...counts, acted]).toEqual([before, painted, later]);
});

test('a window that stops painting meanwhile acts by the clock, and not again when it paints', () => {
  const { host, paint, letTimePass } = standIn(false);
  let acted = 0;
  beforeNextPaint(host, () => {
    acted += 1;
  });
  letTimePass();
  paint();
  expect(acted).toBe(1);
});
