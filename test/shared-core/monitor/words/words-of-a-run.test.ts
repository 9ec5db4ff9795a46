import { beforeAll, describe, expect, test } from 'vitest';
import {
  createBatchSimulation,
  createMonitor,
  createProbeSignal,
  createRandom,
  pearFermentSetup,
  type Snapshot,
  teachingRigs,
} from '#shared-core';
import { head, pearSettings } from '../support.ts';

interface Second {
  readonly timeS: number;
  readonly said: Snapshot;
  readonly trueAbv: number;
}

/** What is shown each second of a simulated run whose heat is taken away twice, unmarked, beside the true strength. */
function watch(rig: keyof typeof teachingRigs, seed: string): Second[] {
  const setup = pearFermentSetup();
  const { powerW } = teachingRigs[rig].heater;
  const still = createBatchSimulation({
    ...setup,
    rig: teachingRigs[rig],
    schedule: [
      ...(setup.schedule ?? []),
      { timeS: 1500, kind: 'heat-off' },
      { timeS: 1560, kind: 'heat-on' },
      { timeS: 1570, kind: 'heat-eased', powerW: 0.6 * powerW },
    ],
  });
  const probe = createProbeSignal({
    random: createRandom(seed),
    whiteNoiseK: 0.06,
    slowNoiseK: 0.06,
  });
  const monitor = createMonitor(pearSettings);
  const seconds: Second[] = [];
  for (let timeS = 0; timeS <= 3600; timeS += 1) {
    still.advance(timeS);
    const value = probe.read(timeS, still.state.bulbTemperatureC);
    if (value !== null) monitor.push(head(timeS, value));
    const said = monitor.advanceTo(timeS + 0.9);
    seconds.push({ timeS, said, trueAbv: still.state.headVapourStrengthAbv });
  }
  return seconds;
}

describe('the words of whole runs', () => {
  let runs: Second[][] = [];
  beforeAll(() => {
    runs = [
      watch('glassBeads', 'words 1'),
      watch('glassBeads', 'words 2'),
      watch('vigreux', 'words 3'),
      watch('simpleHead', 'words 4'),
    ];
  });

  test('do not go to and fro within a minute', () => {
    for (const run of runs) {
      const said: { readonly timeS: number; readonly shape: string }[] = [];
      for (const { timeS, said: snapshot } of run) {
        const shape = snapshot.sentence.replace(/[\d.,–]+/g, '#');
        if (said[said.length - 1]?.shape !== shape) said.push({ timeS, shape });
      }
      const toAndFro = said.filter(({ timeS, shape }, index) => {
        const before = said[index - 2];
        const between = said[index - 1];
        return before?.shape === shape && between !== undefined && timeS - between.timeS <= 60;
      });
      expect(toAndFro).toEqual([]);
    }
  });

  test('show strengths whose interval holds the true one at least 95 times in 100, after vapour has come or come back too', () => {
    const held = (seconds: readonly Second[]): boolean[] =>
      seconds.flatMap(({ said, trueAbv }) => {
        const shown = said.vapour?.alcoholByVolume ?? null;
        return shown === null ? [] : [shown.low - 0.5 <= trueAbv && trueAbv <= shown.high + 0.5];
      });
    const early = runs.flatMap((run) => {
      const arrived = run.findIndex(({ said }) => said.stage.stage === 'first-fraction');
      return [...run.slice(arrived, arrived + 180), ...run.slice(1500, 1740)];
    });
    for (const all of [held(runs.flat()), held(early)]) {
      expect(all.length).toBeGreaterThan(300);
      expect(all.filter(Boolean).length / all.length).toBeGreaterThan(0.95);
    }
  });

  test('tell no strength before the head has come to rest, nor a number in the sentence that no view shows', () => {
    for (const run of runs) {
      const arrived = run.findIndex(({ said }) => said.stage.stage === 'first-fraction');
      const first = run.slice(arrived, arrived + 20);
      expect(first.map(({ said }) => said.vapour?.alcoholByVolume ?? null)).toEqual(
        first.map(() => null),
      );
      for (const { said } of run) {
        if (/% vol/.test(said.sentence)) expect(said.vapour?.alcoholByVolume).not.toBeNull();
      }
    }
  });

  test('tell no other time for the limit than the forecast beside them', () => {
    let told = 0;
    for (const { said } of runs.flat()) {
      const [, low = '0', high] =
        /(?:in about (\d+) to|within) (\d+) min/.exec(said.sentence) ?? [];
      if (high === undefined) continue;
      told += 1;
      const end = said.forecast?.mainFractionEndS;
      expect(end).not.toBeNull();
      if (!end) continue;
      expect(60 * Number(low)).toBeLessThan(end.high - said.timeS + 60);
      expect(60 * Number(high)).toBeGreaterThan(end.low - said.timeS - 60);
    }
    expect(told).toBeGreaterThan(60);
  });

  test('hold no negative number and no more digits than the head bears', () => {
    const texts = new Set(
      runs
        .flat()
        .flatMap(({ timeS, said }) =>
          timeS % 10 > 0
            ? []
            : [
                said.sentence,
                said.stage.because,
                said.stage.wouldChangeIf,
                said.vapour?.explanation ?? '',
                ...said.alarms.flatMap(({ because, wouldChangeIf }) => [because, wouldChangeIf]),
                ...said.events.map(({ because }) => because),
              ],
        ),
    );
    for (const text of texts) expect(text).not.toMatch(/\d\.\d\d|(^|\s)[-−]\d/);
  });
});
