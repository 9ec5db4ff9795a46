import { expect, test } from 'vitest';
import {
  createMonitor,
  defaultRunSettings,
  type Reading,
  textsInSnapshot,
  wordingOf,
} from '#shared-core';
import { createSnapshotWording } from '../../../main/session/snapshot-wording.ts';

const head = (timeS: number): Reading => ({
  kind: 'reading',
  timeS,
  channel: 'head',
  value: 21 + timeS / 10,
  unit: '°C',
  quality: 'good',
});

test('the wording is that of each snapshot, and the same object while every text is the same', () => {
  const monitor = createMonitor(defaultRunSettings);
  const wordingIn = createSnapshotWording();
  let kept = 0;
  let before: readonly string[] = [];
  let last: object | null = null;
  for (let timeS = 0; timeS < 20; timeS += 0.25) {
    const snapshot = Number.isInteger(timeS) ? monitor.push(head(timeS)) : monitor.advanceTo(timeS);
    const wording = wordingIn(snapshot);
    const texts = textsInSnapshot(snapshot);
    expect(wording).toEqual(wordingOf(texts));
    const isSame = texts.join('\n') === before.join('\n');
    expect(wording === last).toBe(isSame);
    if (isSame) kept += 1;
    before = texts;
    last = wording;
  }
  expect(kept).toBeGreaterThan(40);
  expect(kept).toBeLessThan(79);
});
