import { describe, expect, test } from 'vitest';
import { createMonitor, type RunInput } from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { head, mark, pearSettings, simulatedReadings } from './support.ts';

const names = (inputs: readonly RunInput[], endS: number): readonly string[] =>
  analyseRun(pearSettings, inputs, endS).alarms.map(({ alarm }) => alarm);

/** The plateau of the demonstration run, before anything departs. */
const calm = simulatedReadings({ durationS: 2000 });

describe('upsets that must not call the heat off', () => {
  test('heat taken away and brought back', () => {
    const inputs = simulatedReadings({
      durationS: 2300,
      extraEvents: [
        { timeS: 1300, kind: 'heat-removed' },
        { timeS: 1400, kind: 'heat-returned' },
        { timeS: 1800, kind: 'heat-removed' },
        { timeS: 1850, kind: 'heat-returned' },
      ],
    });
    const { alarms, events, stages } = analyseRun(pearSettings, inputs, 2300);
    expect(alarms).toEqual([]);
    expect(events.map(({ event }) => event)).toContain('vapour-receded');
    expect(events.map(({ event }) => event)).toContain('vapour-returned');
    expect(stages[stages.length - 1]?.stage).toBe('main-fraction');
  });

  test('a draught, and a drift of the air pressure', () => {
    const inputs = simulatedReadings({
      durationS: 2200,
      extraEvents: [{ timeS: 1500, kind: 'draught', durationS: 60, lossFactor: 2 }],
      flaws: { driftKPerHour: 0.3 },
    });
    expect(names(inputs, 2200)).toEqual([]);
  });

  test('single wild readings, up or down', () => {
    const inputs = calm.map((input) =>
      input.kind === 'reading' && input.timeS % 150 === 0 && input.timeS > 1100
        ? head(input.timeS, input.value + (input.timeS % 300 === 0 ? 9 : -15))
        : input,
    );
    expect(names(inputs, 2000)).toEqual([]);
  });
});

describe('probe faults', () => {
  test('85.0 °C at power-on is not a head reading', () => {
    const inputs = [head(0, 85), head(1, 85), ...calm.slice(2)];
    const snapshot = createMonitor(pearSettings).push(head(0, 85));
    expect(snapshot.head).toBeNull();
    expect(names(inputs, 2000)).toEqual([]);
  });

  test('85.0 °C is believed when the head is there anyway', () => {
    const inputs = Array.from({ length: 200 }, (_, timeS) => head(timeS, 84 + timeS / 100));
    const monitor = createMonitor(pearSettings);
    for (const input of inputs) monitor.push(input);
    expect(monitor.snapshot().head?.temperatureC).toBeCloseTo(85.99, 1);
    monitor.push(head(100.5, 85));
    expect(monitor.snapshot().head?.temperatureC).toBe(85);
  });

  test('a frozen reading is told from a quiet one by the probe’s own flicker', () => {
    const stuck = calm.map((input) =>
      input.kind === 'reading' && input.timeS > 1500 ? head(input.timeS, 78.61) : input,
    );
    const { alarms } = analyseRun(pearSettings, stuck, 2000);
    expect(
      alarms.map(({ alarm, because }) => [alarm, because.includes('stopped changing')]),
    ).toEqual([['probe-implausible', true]]);
    const coarse = calm.map((input) =>
      input.kind === 'reading' ? head(input.timeS, Math.round(2 * input.value) / 2) : input,
    );
    expect(names(coarse, 2000)).toEqual([]);
  });

  test('a step of the probe suspends staging and does not call the heat off', () => {
    const slipped = calm.map((input) =>
      input.kind === 'reading' && input.timeS > 1500 ? head(input.timeS, input.value + 3) : input,
    );
    const { alarms, stages } = analyseRun(pearSettings, slipped, 2000);
    expect(alarms.map(({ alarm }) => alarm)).toEqual(['probe-implausible']);
    expect(stages[stages.length - 1]?.stage).toBe('main-fraction');
  });

  test('a link reported lost is a fault at once', () => {
    const inputs: RunInput[] = [
      ...calm.filter(({ timeS }) => timeS <= 1500),
      { kind: 'link', timeS: 1501, state: 'lost', reason: 'unplugged' },
    ];
    const { alarms } = analyseRun(pearSettings, inputs, 1510);
    expect(alarms[0]?.because).toContain('disconnected');
    expect(alarms[0]?.raisedS).toBeLessThanOrEqual(1505);
  });
});

test('a probe lost while the head rises is told with the reading it gave last, not with where it may be now', () => {
  const until = calm.findIndex((input) => input.kind === 'reading' && input.value > 55);
  const last = calm[until];
  if (last?.kind !== 'reading') throw new Error('The head never rises.');
  const lost: RunInput = {
    kind: 'link',
    timeS: last.timeS + 1,
    state: 'lost',
    reason: 'unplugged',
  };
  const { alarms } = analyseRun(pearSettings, [...calm.slice(0, until + 1), lost], last.timeS + 10);
  expect(alarms[0]?.because).toContain(`last trusted value ${last.value.toFixed(1)} °C`);
});

describe('rigs and people', () => {
  test('a still head without a column gives the verdict that there is no main fraction, with the cause', () => {
    const inputs = simulatedReadings({ rig: 'simpleHead', strengthAbv: 7, durationS: 2400 });
    const { verdict, stages, alarms } = analyseRun(pearSettings, inputs, 2400);
    expect(verdict.mainFraction).toBe(false);
    expect(verdict.because).toContain('No main fraction at 80 % vol');
    expect(stages.map(({ stage }) => stage)).not.toContain('main-fraction');
    expect(alarms.map(({ alarm }) => alarm)).toEqual(['over-limit']);
  });

  test('the attention check becomes an alarm a minute after it was due, and any mark answers it', () => {
    const settings = { ...pearSettings, attentionCheckS: 300 };
    const inputs: RunInput[] = [
      ...calm.filter(({ timeS }) => timeS < 400),
      mark(400, 1, { type: 'attention-answered' }),
    ];
    const { alarms } = analyseRun(settings, inputs, 401);
    expect(
      alarms.map(({ alarm, raisedS, clearedS }) => ({
        alarm,
        raisedS,
        cleared: clearedS !== null,
      })),
    ).toEqual([{ alarm: 'attention', raisedS: 360, cleared: true }]);
  });

  test.each([
    { type: 'attention-answered' },
    { type: 'volume-read', volumeMl: 3 },
    { type: 'note', text: 'first drops' },
  ] as const)(
    'whoever does something ($type) has answered the check: nothing of it is left to acknowledge',
    (answer) => {
      const monitor = createMonitor({ ...pearSettings, attentionCheckS: 300 });
      for (const input of calm) if (input.timeS < 400) monitor.push(input);
      expect(monitor.snapshot().alarms).toMatchObject([
        { alarm: 'attention', state: 'unacknowledged' },
      ]);
      expect(monitor.push(mark(400, 1, answer)).alarms).toEqual([]);
      expect(monitor.verdicts().alarms).toMatchObject([
        { alarm: 'attention', acknowledgedS: 400, clearedS: 400 },
      ]);
    },
  );

  test('a heat-off mark ends the call, and a withdrawn one does not', () => {
    const inputs = simulatedReadings({ durationS: 3300 });
    const off = [...inputs, mark(3301, 1, { type: 'heat-off' })];
    const withdrawn = [...off, mark(3302, 2, { type: 'mark-withdrawn', withdrawnMarkId: 1 })];
    const active = (list: readonly RunInput[], endS: number): boolean =>
      analyseRun(pearSettings, list, endS).alarms.some(
        ({ alarm, clearedS }) => alarm === 'plateau-departure' && clearedS === null,
      );
    expect(active(off, 3325)).toBe(false);
    expect(active([...withdrawn], 3303)).toBe(true);
  });

  test('purity against recovery moves the limit to where the mean stays as asked', () => {
    const limitFor = (leastMeanStrengthAbv: number): number => {
      const monitor = createMonitor({
        ...pearSettings,
        stop: { kind: 'purity-against-recovery', leastMeanStrengthAbv },
      });
      for (const input of calm) monitor.push(input);
      return monitor.snapshot().plateau.leastStrengthAbv;
    };
    expect(limitFor(88)).toBeLessThan(88);
    expect(limitFor(85)).toBeLessThan(limitFor(88));
    expect(limitFor(85)).toBeGreaterThan(30);
  });

  test('every stage and alarm carries numbers, units and what would change it', () => {
    const monitor = createMonitor(pearSettings);
    for (const input of simulatedReadings({ durationS: 3200 })) monitor.push(input);
    const snapshot = monitor.snapshot();
    expect(snapshot.act).toBe(
      'Take the heat off (flame out, mantle down) and change the receiver.',
    );
    for (const text of [
      snapshot.stage.because,
      snapshot.stage.wouldChangeIf,
      ...snapshot.alarms.flatMap(({ because, wouldChangeIf }) => [because, wouldChangeIf]),
    ]) {
      expect(text).toMatch(/\d.*(°C|K|% vol|min)|forward only/);
    }
  });
});
