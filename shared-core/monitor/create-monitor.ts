import type { Mark, RunInput, RunSettings } from '../run/index.ts';
import type { Snapshot } from '../snapshot/index.ts';
import { type AlarmBank, createAlarmBank } from './alarm-bank.ts';
import { alarmsNamed } from './call/index.ts';
import { LazySnapshot } from './lazy-snapshot.ts';
import { createMarksLedger } from './marks-ledger.ts';
import type { Monitor, MonitorChange } from './monitor.ts';
import { createRunTime } from './run-time.ts';
import { type SecondSource, SecondView } from './second-view.ts';
import { createChannelSeconds } from './sense/channel-seconds.ts';
import { createHeadSeconds } from './sense/head-seconds.ts';
import { createHeadTracker } from './sense/head-tracker.ts';
import { createStaging, type Staging } from './staging.ts';
import { createSentenceKeeper, type SentenceKeeper } from './words/sentence-keeper.ts';
import { concludeVerdict } from './words/verdict-words.ts';

/** What may be left out where only stages and alarms are wanted. */
export interface MonitorOptions {
  /** Without forecasts the bias is learned from the plateau's level alone; true when left out. */
  readonly forecasts?: boolean;
}

/**
 * Creates the monitor of one run: a deterministic function of settings and inputs.
 *
 * Readings are gathered into whole seconds; each second is worked out once, when an input or
 * `advanceTo` shows that it is over, so live and replayed runs take the same steps. Any sampling from
 * 0.2 Hz to 100 Hz serves; equal and slightly disordered time stamps are fine.
 *
 * @example
 * const monitor = createMonitor(defaultRunSettings);
 * monitor.push({ kind: 'reading', timeS: 0, channel: 'head', value: 21.3, unit: '°C', quality: 'good' }).stage.stage // => "warm-up"
 */
export function createMonitor(settings: RunSettings, options: MonitorOptions = {}): Monitor {
  const marks = createMarksLedger();
  const bank = createAlarmBank();
  const tracker = createHeadTracker(settings);
  const staging = createStaging(settings, marks, bank, tracker, options.forecasts ?? true);
  const keeper = createSentenceKeeper();
  const heads = createHeadSeconds(settings.probe, tracker.health);
  const others = createChannelSeconds();
  let changes: MonitorChange[] = [];
  /** Of what is held true now; null since something has changed. */
  let view: SecondView | null = null;

  const time = createRunTime((timeS) => {
    const head = heads.take();
    for (const channel of others.take(timeS)) staging.seeChannel(channel);
    staging.second(timeS, head);
    keeper.second(staging.facts(), bank.standing());
    gatherChanges();
  });

  const seeMark = (mark: Mark): void => {
    marks.add(mark);
    answerAlarms(bank, mark);
    staging.seeMark(mark);
    keeper.second(staging.facts(), bank.standing(), true);
    gatherChanges();
  };

  const see = (input: RunInput): void => {
    if (input.kind === 'mark') seeMark(input);
    else if (input.kind === 'reading' && input.channel === 'head')
      heads.see(input, time.steppedS() + 1);
    else if (input.kind === 'reading') others.see(input);
    else {
      tracker.otherProbe.seeLink(input, heads.latest() !== null);
      heads.seeLink(input);
    }
  };

  const snapshotAt = (timeS: number): LazySnapshot => {
    view ??= new SecondView(sourceOf(staging, bank, keeper));
    return new LazySnapshot(view, timeS, heads.latest());
  };
  const snapshot = (): Snapshot => snapshotAt(time.nowS());

  /** Right after what caused them, so that an alarm's snapshot is that of its own second. */
  const gatherChanges = (): void => {
    view = null;
    changes.push(...staging.log.takeChanges());
    for (const { timeS, record, state, raised } of bank.takeChanges()) {
      const behind = raised ? snapshotAt(timeS).toJSON() : null;
      changes.push({ kind: 'alarm-changed', timeS, record, state, snapshot: behind });
    }
  };

  return {
    push: (input) => {
      time.hearAt(input.timeS);
      see(input);
      return snapshot();
    },
    advanceTo: (timeS) => {
      time.passTo(timeS);
      return snapshot();
    },
    snapshot,
    verdicts: () => {
      const { stages, forecasts, estimates, events, problems } = staging.log.parts();
      const verdict = concludeVerdict(staging.facts(), stages);
      const alarms = [...bank.records()];
      return { stages, alarms, forecasts, estimates, events, verdict, problems };
    },
    estimates: staging.log.estimates,
    takeChanges: () => {
      const taken = changes;
      changes = [];
      return taken;
    },
  };
}

/** What is held true at the end of the second that was worked out last. */
function sourceOf(staging: Staging, bank: AlarmBank, keeper: SentenceKeeper): SecondSource {
  return {
    facts: staging.facts(),
    standing: bank.standing(),
    recentEvents: staging.log.recentEvents(),
    kept: keeper.kept(),
    channelProblems: staging.channelProblems(),
  };
}

/** What a person's mark says to the alarms it names. */
function answerAlarms(bank: AlarmBank, { mark, timeS }: Mark): void {
  if (mark.type === 'alarm-acknowledged')
    for (const alarm of alarmsNamed(mark.alarm)) bank.acknowledge(alarm, timeS);
  if (mark.type === 'alarm-shelved')
    for (const alarm of alarmsNamed(mark.alarm)) bank.shelve(alarm, timeS, timeS + mark.forS);
}
