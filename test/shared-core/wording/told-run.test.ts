import { afterEach, expect, test } from 'vitest';
import {
  createMonitor,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  events,
  pearFermentSetup,
  type Snapshot,
  setLanguage,
  simulateBatch,
  textsInSnapshot,
  told,
  wordingOf,
} from '#shared-core';
import { german } from '../../../shared-core/wording/languages/de/german.ts';

afterEach(() => setLanguage('en'));

/** Moments of a run with a heater that is put on late, a probe that drops out twice, and heat that stays on too long. */
function moments(): readonly Snapshot[] {
  const durationS = 5400;
  const { samples } = simulateBatch(pearFermentSetup(), { durationS });
  const probe = createProbeSignal({ random: createRandom('told'), whiteNoiseK: 0.05 });
  const monitor = createMonitor(defaultRunSettings);
  const snapshots: Snapshot[] = [];
  for (let timeS = 0; timeS < durationS; timeS += 1) {
    const isGone = (timeS > 2000 && timeS < 2060) || (timeS > 2100 && timeS < 2150);
    const value = probe.read(timeS, samples[timeS]?.bulbTemperatureC ?? 20);
    if (value !== null && !isGone)
      monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
    if (timeS % 20 === 0) snapshots.push(monitor.advanceTo(timeS));
  }
  return snapshots;
}

/** Words of a person in what was put into a sentence: numbers, units and channels' own names are none. */
const holdsWords = (value: string) => /\p{L}{4,}|^of |\bor\b/u.test(value);

test('every text in the snapshots of a run is told in German, with nothing of it left in English', () => {
  const snapshots = moments();
  const wording = wordingOf(snapshots.flatMap(textsInSnapshot));
  const isTellable = (text: string) =>
    Object.hasOwn(german, wording[text]?.sentence ?? '') ||
    wording[text]?.sentence.match(/\p{L}{3}/u) === null;
  const texts = new Set(snapshots.flatMap(textsInSnapshot));
  const within = Object.values(wording).flatMap(({ values }) => Object.values(values));
  const untold = [...texts, ...within.map(String).filter(holdsWords)].filter(
    (text) => !isTellable(text),
  );
  expect([...new Set(untold)]).toEqual([]);
  expect(texts.size).toBeGreaterThan(100);
  setLanguage('de');
  const last = snapshots.at(-1)?.stage.because ?? '';
  expect(told(last)).toMatch(/^Der Kopf .* Dampf /);
});

test('a snapshot crosses to a window with what its texts were made from, and reads as it did without', () => {
  const monitor = createMonitor(defaultRunSettings);
  const at = (timeS: number, value: number) =>
    ({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' }) as const;
  monitor.push(at(0, 21.3));
  const snapshot = monitor.push(at(3, 21.3));
  const wording = wordingOf(textsInSnapshot(snapshot));
  const body = { runId: 'r1', snapshot, wording, estimatesTold: 0 };
  const crossed = events.snapshot.parse(JSON.parse(JSON.stringify(body)));
  expect(crossed).toEqual(JSON.parse(JSON.stringify(body)));
  expect(crossed.wording?.[snapshot.sentence]?.sentence).toBe(
    'Warming up: the head is at {at}, no vapour has reached it.',
  );
});
