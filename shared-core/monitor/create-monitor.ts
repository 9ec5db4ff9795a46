import type { Mark, Reading, RunInput, RunSettings } from '../run/index.ts';
import type { Snapshot, Verdicts } from '../snapshot/index.ts';
import { createAlarmBank } from './alarm-bank.ts';
import { alarmsNamed } from './call/index.ts';
import { type LatestHead, LazySnapshot } from './lazy-snapshot.ts';
import { createMarksLedger } from './marks-ledger.ts';
import type { Monitor, MonitorChange } from './monitor.ts';
import { createHeadTracker } from './sense/head-tracker.ts';
import { createSecondBin, type SecondBin } from './sense/second-bin.ts';
import { createStaging } from './staging.ts';
import { createSentenceKeeper } from './words/sentence-keeper.ts';
import { concludeVerdict } from './words/verdict-words.ts';

/**
 * A second is worked out when time has passed its end by this much, so that readings which arrive a
 * little out of order still fall into their own second.
 */
const settleS = 0.5;
/**
 * Time is stepped through for so long after the last input; then it stands until the next one, whether
 * somebody waited beside it or the run is replayed. A file with a wrong date costs no more than this.
 */
const longestSilenceS = 86_400;

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
  const others = new Map<string, { readonly bin: SecondBin; unit: string }>();
  let openBin = createSecondBin();
  let nextBin = createSecondBin();
  let tickedS = 0;
  let nowS = 0;
  let heardS = 0;
  let latest: LatestHead | null = null;
  let changes: MonitorChange[] = [];

  const tick = (): void => {
    tickedS += 1;
    const head = openBin.take();
    [openBin, nextBin] = [nextBin, openBin];
    for (const [channel, { bin, unit }] of others) {
      const binned = bin.take();
      if (binned !== null) staging.seeChannel({ channel, unit, value: binned.value, atS: tickedS });
    }
    staging.second(tickedS, head);
    keeper.second(staging.facts(), bank.standing());
    gatherChanges();
  };

  const passTimeTo = (timeS: number): void => {
    if (!Number.isFinite(timeS)) return;
    nowS = Math.max(nowS, timeS);
    const untilS = Math.min(nowS, heardS + longestSilenceS);
    while (tickedS + 1 + settleS <= untilS) tick();
  };

  const hearAt = (timeS: number): void => {
    passTimeTo(timeS);
    if (nowS > heardS + longestSilenceS) tickedS = Math.floor(nowS - settleS);
    if (Number.isFinite(timeS)) heardS = Math.max(heardS, timeS);
  };

  const seeReading = (reading: Reading): void => {
    if (reading.channel !== 'head') {
      if (reading.quality !== 'good' || !Number.isFinite(reading.value)) return;
      let other = others.get(reading.channel);
      if (other === undefined) {
        other = { bin: createSecondBin(), unit: reading.unit };
        others.set(reading.channel, other);
      }
      other.unit = reading.unit;
      other.bin.add(reading.timeS, reading.value);
      return;
    }
    const temperatureC = settings.probe.offsetK + settings.probe.gain * reading.value;
    if (!tracker.health.seeReading(reading, temperatureC)) return;
    latest = { timeS: reading.timeS, temperatureC };
    (reading.timeS < tickedS + 1 ? openBin : nextBin).add(reading.timeS, temperatureC);
  };

  const seeMark = (mark: Mark): void => {
    marks.add(mark);
    const { mark: body, timeS } = mark;
    if (body.type === 'alarm-acknowledged') {
      for (const alarm of alarmsNamed(body.alarm)) bank.acknowledge(alarm, timeS);
    }
    if (body.type === 'alarm-shelved') {
      for (const alarm of alarmsNamed(body.alarm)) bank.shelve(alarm, timeS, timeS + body.forS);
    }
    staging.seeMark(mark);
    keeper.second(staging.facts(), bank.standing(), true);
    gatherChanges();
  };

  const see = (input: RunInput): void => {
    if (input.kind === 'reading') seeReading(input);
    else if (input.kind === 'mark') seeMark(input);
    else tracker.health.seeLink(input);
  };

  const snapshotAt = (timeS: number): LazySnapshot =>
    new LazySnapshot({
      facts: staging.facts(),
      timeS,
      latest,
      standing: bank.standing(),
      recentEvents: staging.log.recentEvents(),
      kept: keeper.kept(),
    });
  const snapshot = (): Snapshot => snapshotAt(nowS);

  /** Right after what caused them, so that an alarm's snapshot is that of its own second. */
  const gatherChanges = (): void => {
    changes.push(...staging.log.takeChanges());
    for (const { timeS, record, state, raised } of bank.takeChanges()) {
      const behind = raised ? snapshotAt(timeS).toJSON() : null;
      changes.push({
        kind: 'alarm-changed',
        timeS,
        record,
        state,
        snapshot: behind,
      });
    }
  };

  return {
    push: (input) => {
      hearAt(input.timeS);
      see(input);
      return snapshot();
    },
    advanceTo: (timeS) => {
      passTimeTo(timeS);
      return snapshot();
    },
    snapshot,
    verdicts: (): Verdicts => {
      const parts = staging.log.parts();
      return {
        stages: parts.stages,
        alarms: [...bank.records()],
        forecasts: parts.forecasts,
        estimates: parts.estimates,
        events: parts.events,
        verdict: concludeVerdict(staging.facts(), parts.stages),
        problems: parts.problems,
      };
    },
    takeChanges: () => {
      const taken = changes;
      changes = [];
      return taken;
    },
  };
}
