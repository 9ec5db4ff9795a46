import { expect, test } from 'vitest';
import {
  createSecondScreenWindow,
  secondScreenPlace,
} from '../../../app/electron/second-screen-window.ts';

test('the second screen is opened once, brought forward when open, and opened anew after it was closed', () => {
  const calls: string[] = [];
  const destroyed = new Set<number>();
  let count = 0;
  const second = createSecondScreenWindow(() => {
    const number = ++count;
    calls.push(`create ${number}`);
    return { isDestroyed: () => destroyed.has(number), focus: () => calls.push(`focus ${number}`) };
  });
  expect(second.current()).toBeNull();
  second.open();
  second.open();
  destroyed.add(1);
  expect(second.current()).toBeNull();
  second.open();
  expect(calls).toEqual(['create 1', 'focus 1', 'create 2']);
});

test('it opens on the other screen, and where the system likes when there is only one', () => {
  const laptop = { id: 1, workArea: { x: 0, y: 0, width: 1440, height: 860 } };
  const projector = { id: 2, workArea: { x: 1440, y: 0, width: 1280, height: 720 } };
  expect([
    secondScreenPlace([laptop, projector], laptop),
    secondScreenPlace([laptop, projector], projector),
    secondScreenPlace([laptop], laptop),
  ]).toEqual([projector.workArea, laptop.workArea, null]);
});
