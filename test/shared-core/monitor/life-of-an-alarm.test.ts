import { describe, expect, test } from 'vitest';
import {
  type AlarmInput,
  type AlarmTrack,
  quietAlarmTrack,
  stepAlarm,
} from '../../../shared-core/alarms/alarm-track.ts';
import { createAlarmBank } from '../../../shared-core/monitor/alarm-bank.ts';

const delays = { onDelayS: 2, offDelayS: 3 };
const condition = (timeS: number, active: boolean): AlarmInput => ({
  kind: 'condition',
  timeS,
  active,
});
const acknowledge = (timeS: number): AlarmInput => ({ kind: 'acknowledge', timeS });
const shelve = (timeS: number, untilS: number): AlarmInput => ({ kind: 'shelve', timeS, untilS });

/** The track after each input, told in full where it is another one. */
function course(...inputs: readonly AlarmInput[]): readonly Partial<AlarmTrack>[] {
  let track = quietAlarmTrack;
  return inputs.map((input) => {
    const before = track;
    track = stepAlarm(track, input, delays);
    const changed = Object.entries(track).filter(
      ([name, value]) => before[name as keyof AlarmTrack] !== value,
    );
    return Object.fromEntries(changed);
  });
}

describe('one alarm, step by step', () => {
  test('counts a delay from when the condition began to differ, and from anew after it agreed', () => {
    expect(
      course(
        condition(0, true),
        condition(1, true),
        condition(1.5, false),
        condition(2, true),
        condition(3.9, true),
        condition(4, true),
        condition(5, true),
      ),
    ).toEqual([
      { differsSinceS: 0 },
      {},
      { differsSinceS: null },
      { differsSinceS: 2 },
      {},
      { state: 'unacknowledged', active: true, differsSinceS: null, raisedS: 4 },
      {},
    ]);
  });

  test('that is answered while it stands is normal once it has passed, and is raised anew without the old moments', () => {
    expect(
      course(
        condition(0, true),
        condition(2, true),
        acknowledge(3),
        acknowledge(4),
        condition(5, false),
        condition(8, false),
        condition(20, true),
        condition(22, true),
      ),
    ).toEqual([
      { differsSinceS: 0 },
      { state: 'unacknowledged', active: true, differsSinceS: null, raisedS: 2 },
      { state: 'acknowledged', acknowledgedS: 3 },
      {},
      { differsSinceS: 5 },
      { state: 'normal', active: false, differsSinceS: null, clearedS: 8 },
      { differsSinceS: 20 },
      {
        state: 'unacknowledged',
        active: true,
        differsSinceS: null,
        raisedS: 22,
        clearedS: null,
        acknowledgedS: null,
      },
    ]);
  });

  test('that passed unanswered waits for an answer, and an answer to nothing changes nothing', () => {
    expect(
      course(
        acknowledge(0),
        condition(0, true),
        condition(2, true),
        condition(3, false),
        condition(6, false),
        acknowledge(7),
      ).slice(4),
    ).toEqual([
      { state: 'returned-unacknowledged', active: false, differsSinceS: null, clearedS: 6 },
      { state: 'normal', acknowledgedS: 7 },
    ]);
    expect(course(acknowledge(0))).toEqual([{}]);
  });

  test('put aside goes on being followed: it may begin and pass there, and comes out as it then is', () => {
    expect(
      course(
        shelve(0, 100),
        condition(1, true),
        condition(3, true),
        condition(10, false),
        condition(13, false),
        condition(99.9, false),
        condition(100, false),
      ),
    ).toEqual([
      { state: 'shelved', shelvedUntilS: 100 },
      { differsSinceS: 1 },
      { active: true, differsSinceS: null },
      { differsSinceS: 10 },
      { active: false, differsSinceS: null, clearedS: 13 },
      {},
      { state: 'normal', shelvedUntilS: null },
    ]);
  });

  test('answered after its shelf has expired is answered as the alarm it has become', () => {
    expect(
      course(
        condition(0, true),
        condition(2, true),
        shelve(3, 10),
        acknowledge(5),
        acknowledge(10),
      ),
    ).toEqual([
      { differsSinceS: 0 },
      { state: 'unacknowledged', active: true, differsSinceS: null, raisedS: 2 },
      { state: 'shelved', shelvedUntilS: 10 },
      {},
      { state: 'acknowledged', shelvedUntilS: null, raisedS: 10, acknowledgedS: 10 },
    ]);
  });
});

describe('the bank of all alarms', () => {
  const because = (text: string) => () => ({ because: text, wouldChangeIf: `not ${text}` });

  test('is empty at first, and an alarm whose condition was never met has no record', () => {
    const bank = createAlarmBank();
    bank.condition('probe-lost', 0, false, because('never'));
    bank.acknowledge('probe-lost', 1);
    expect([
      bank.standing(),
      bank.records(),
      bank.takeChanges(),
      bank.isActive('probe-lost'),
      bank.trackOf('probe-lost'),
    ]).toEqual([[], [], [], false, quietAlarmTrack]);
  });

  test('lists high priority before medium, and each in the order raised', () => {
    const bank = createAlarmBank();
    for (const timeS of [0, 10]) bank.condition('surging', timeS, true, because('surge'));
    bank.condition('bulb-doubted', 11, true, because('bulb'));
    bank.condition('probe-lost', 12, true, because('lost'));
    bank.condition('near-dryness', 13, true, because('dry'));
    expect(bank.standing().map(({ alarm, reason }) => [alarm, reason.because])).toEqual([
      ['probe-lost', 'lost'],
      ['near-dryness', 'dry'],
      ['surging', 'surge'],
      ['bulb-doubted', 'bulb'],
    ]);
    expect(bank.standing()).toBe(bank.standing());
  });

  test('keeps one record from the call to its end and tells each step of it once', () => {
    const bank = createAlarmBank();
    const see = (timeS: number, active: boolean) =>
      bank.condition('probe-lost', timeS, active, because(`seen at ${timeS}`));
    see(10, true);
    see(11, true);
    bank.acknowledge('probe-lost', 12);
    see(20, false);
    see(25, false);
    const record = {
      alarm: 'probe-lost',
      priority: 'high',
      raisedS: 10,
      clearedS: null,
      acknowledgedS: null,
      because: 'seen at 10',
    };
    expect(bank.takeChanges()).toEqual([
      { timeS: 10, state: 'unacknowledged', raised: true, record },
      { timeS: 12, state: 'acknowledged', raised: false, record: { ...record, acknowledgedS: 12 } },
      {
        timeS: 25,
        state: 'normal',
        raised: false,
        record: { ...record, acknowledgedS: 12, clearedS: 25 },
      },
    ]);
    expect([bank.takeChanges(), bank.standing(), bank.isActive('probe-lost')]).toEqual([
      [],
      [],
      false,
    ]);
    see(40, true);
    expect(bank.records()).toEqual([
      { ...record, acknowledgedS: 12, clearedS: 25 },
      { ...record, raisedS: 40, because: 'seen at 40' },
    ]);
    expect(bank.isActive('probe-lost')).toBe(true);
  });

  test('asks for a reason only when it is needed', () => {
    const bank = createAlarmBank();
    let asked = 0;
    const reason = () => {
      asked += 1;
      return { because: '', wouldChangeIf: '' };
    };
    for (const timeS of [0, 1, 2]) bank.condition('probe-lost', timeS, true, reason);
    for (const timeS of [3, 8, 9]) bank.condition('probe-lost', timeS, false, reason);
    expect(asked).toBe(1);
    for (const timeS of [10, 11])
      bank.condition('probe-lost', timeS, true, reason, { key: 'one', isRepeat: true });
    expect(asked).toBe(2);
    bank.condition('probe-lost', 12, true, reason, { key: 'other', isRepeat: true });
    expect(asked).toBe(3);
  });

  test('calls again for what stood again, in the record it had', () => {
    const bank = createAlarmBank();
    const see = (timeS: number, active: boolean) =>
      bank.condition('probe-lost', timeS, active, because(`at ${timeS}`), {
        key: 'silent',
        isRepeat: true,
      });
    see(10, true);
    for (const timeS of [20, 25]) see(timeS, false);
    see(40, true);
    expect(bank.takeChanges().map(({ timeS, raised, state }) => [timeS, raised, state])).toEqual([
      [10, true, 'unacknowledged'],
      [25, false, 'returned-unacknowledged'],
      [40, true, 'unacknowledged'],
    ]);
    expect(bank.records().map(({ raisedS, because: text }) => [raisedS, text])).toEqual([
      [10, 'at 40'],
    ]);
  });

  test('answered after it has passed keeps its reason, and does not call', () => {
    const bank = createAlarmBank();
    for (const [timeS, active] of [
      [10, true],
      [20, false],
      [25, false],
    ] as const)
      bank.condition('probe-lost', timeS, active, because('lost'));
    bank.takeChanges();
    bank.acknowledge('probe-lost', 30);
    expect(bank.takeChanges()).toEqual([
      {
        timeS: 30,
        state: 'normal',
        raised: false,
        record: {
          alarm: 'probe-lost',
          priority: 'high',
          raisedS: 10,
          clearedS: 25,
          acknowledgedS: 30,
          because: 'lost',
        },
      },
    ]);
  });

  test('answered at the moment its shelf expires keeps its reason', () => {
    const bank = createAlarmBank();
    bank.condition('probe-lost', 10, true, because('lost'));
    bank.shelve('probe-lost', 11, 20);
    bank.acknowledge('probe-lost', 20);
    expect(bank.records().at(-1)).toMatchObject({
      raisedS: 20,
      acknowledgedS: 20,
      because: 'lost',
    });
  });

  test('that passes while it is put aside has its end on record, and a list once given stays as it was', () => {
    const bank = createAlarmBank();
    bank.condition('probe-lost', 10, true, because('lost'));
    bank.shelve('probe-lost', 11, 100);
    const before = bank.records();
    for (const timeS of [20, 25]) bank.condition('probe-lost', timeS, false, because('lost'));
    expect([before, bank.records()].map(([record]) => record?.clearedS)).toEqual([null, 25]);
  });

  test('an alarm put aside before it was ever raised has no record until it calls', () => {
    const bank = createAlarmBank();
    bank.shelve('probe-lost', 0, 10);
    bank.condition('probe-lost', 1, true, because('lost'));
    expect([
      bank.records(),
      bank.takeChanges(),
      bank.standing().map(({ reason }) => reason),
    ]).toEqual([[], [], [{ because: '', wouldChangeIf: '' }]]);
    bank.condition('probe-lost', 10, true, because('still lost'));
    expect(bank.records().map(({ raisedS, because: text }) => [raisedS, text])).toEqual([
      [10, 'still lost'],
    ]);
  });
});
