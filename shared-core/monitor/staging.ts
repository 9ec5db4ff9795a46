import type { Mark, RunSettings } from '../run/index.ts';
import type { ChannelProblem } from '../snapshot/index.ts';
import type { AlarmBank } from './alarm-bank.ts';
import { createAlarmConditions } from './alarm-conditions.ts';
import { createConclusions } from './conclude/conclusions.ts';
import { createStagingLog } from './conclude/staging-log.ts';
import type { ConclusionLog } from './conclusion-log.ts';
import type { MarksLedger } from './marks-ledger.ts';
import type { MonitorFacts } from './monitor-facts.ts';
import { type ChannelValue, createChannelSenses } from './sense/channel-senses.ts';
import type { HeadTracker } from './sense/head-tracker.ts';
import { createPressureWatch } from './sense/pressure-watch.ts';
import type { BinnedSecond } from './sense/second-bin.ts';
import { createStoodPressure } from './sense/stood-pressure.ts';
import { createHeadCourse } from './situation/head-course.ts';
import { createLimitScale } from './situation/limit-scale.ts';

/** Works out one second after another and keeps the log of what was concluded. */
export interface Staging {
  readonly log: ConclusionLog;
  /** What is wrong with channels beside the head now. */
  channelProblems(): readonly ChannelProblem[];
  second(timeS: number, head: BinnedSecond | null): void;
  seeChannel(reading: ChannelValue): void;
  seeMark(mark: Mark): void;
  facts(): MonitorFacts;
}

/**
 * One second of the monitor: sense (head and channels) → situation (what the head does) → conclude (stage, strength,
 * forecast) → call (alarms), each from the second before and this second's readings.
 */
export function createStaging(
  settings: RunSettings,
  marks: MarksLedger,
  bank: AlarmBank,
  tracker: HeadTracker,
  forecasts: boolean,
): Staging {
  const limitScale = createLimitScale(settings);
  const channels = createChannelSenses();
  const stood = createStoodPressure();
  const barometer = createPressureWatch();
  const course = createHeadCourse(settings, tracker, limitScale);
  const conclusions = createConclusions({ settings, marks, tracker, limitScale, forecasts });
  const stagingLog = createStagingLog();
  const followAlarmConditions = createAlarmConditions(bank);
  let facts = conclusions.second(0, course.now(), channels);

  const hearPressure = (timeS: number): void => {
    const shown = channels.latest('air-pressure');
    if (shown !== null && shown.atS === timeS) {
      const stoodKPa = stood.see(timeS, shown.value);
      if (stoodKPa !== null) limitScale.hearPressure(stoodKPa);
    }
    const { pressureKPa, standardUncertaintyKPa } = limitScale.settings().pressure;
    barometer.second(timeS, shown?.value ?? null, pressureKPa, standardUncertaintyKPa);
  };

  const step = (timeS: number, binned: BinnedSecond | null): void => {
    const turns = channels.second(timeS);
    hearPressure(timeS);
    const now = course.second(timeS, binned, {
      potC: channels.value('pot'),
      isQuiet: conclusions.isQuiet(timeS),
      isHeatOff: facts.heat === 'off',
    });
    const before = facts;
    facts = conclusions.second(timeS, now, channels);
    if (conclusions.isCalledAndAway()) course.disarm();
    stagingLog.second(before, facts, turns, barometer.difference(), tracker.otherProbe.sinceS());
    followAlarmConditions(facts, now.surging);
    conclusions.noteCalls(bank);
  };

  return {
    log: stagingLog.log,
    channelProblems: stagingLog.channelProblems,
    second: step,
    seeChannel: channels.see,
    seeMark: ({ timeS }) => {
      const read = marks.airPressureKPa();
      if (read !== null) limitScale.setPressure(read);
      conclusions.seePerson(timeS);
      facts = conclusions.withMarks(facts, Math.max(timeS, facts.timeS));
      // Whoever did something at the still has answered: what is over asks nobody once more.
      bank.acknowledge('attention', facts.timeS);
      bank.condition('attention', facts.timeS, false, () => ({ because: '', wouldChangeIf: '' }));
    },
    facts: () => facts,
  };
}
