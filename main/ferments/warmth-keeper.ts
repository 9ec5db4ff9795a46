import {
  createWarmthWatch,
  fail,
  gatherSpans,
  type KeptFerment,
  type KeptWarm,
  type ProbeSource,
  type ProbeStatus,
  type RequestBody,
  type Result,
  type ServiceProblem,
  succeed,
  type WarmthReport,
  worded,
} from '#shared-core';
import type { Clock, Scheduler } from '../clock/index.ts';
import type { FileLayer } from '../file-layer/index.ts';
import type { ProbeReading } from '../probe/index.ts';
import { takeTurns } from '../turns/index.ts';
import {
  createMinuteInHand,
  type MinuteInHand,
  type MinuteSoFar,
  minuteOf,
} from './minute-in-hand.ts';
import { createWarmthFiles, minutesUntilNow } from './warmth-file.ts';
import {
  type Keeping,
  type WarmthLine,
  type WarmthRecord,
  type WarmthSpan,
  warmthLog,
} from './warmth-lines.ts';

type Answer<T> = Promise<Result<T, ServiceProblem>>;

/** Keeps watch over how warm one ferment is, for a week and through every end of the program. */
export interface WarmthKeeper {
  /** Goes on with the ferment that was kept when the program ended, and asks for its probe. */
  goOn(): Promise<void>;
  seeReadings(readings: readonly ProbeReading[]): void;
  now(): KeptWarm | null;
  report(fermentId: string): Answer<WarmthReport>;
  keep(body: RequestBody<'warmth/keep'>): Answer<WarmthReport>;
  leave(fermentId: string): Answer<WarmthReport>;
  /** Puts what was heard last on the disk; a minute that is not over is gone on with at the next start. */
  close(): Promise<void>;
}

export interface WarmthKeeperSetup {
  readonly files: FileLayer;
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  readonly runsFolder: string;
  readonly mayWrite: () => boolean;
  readonly fermentOf: (fermentId: string) => Promise<KeptFerment | null>;
  readonly probe: {
    status(): ProbeStatus;
    /** Connects to the probe a ferment had, on whatever port it is now. */
    reconnect(source: ProbeSource): Promise<void>;
  };
  /** A run records the same probe: what the still's head shows is no ferment's. */
  readonly isRunUnderWay: () => boolean;
  readonly onNow: (kept: KeptWarm | null) => void;
}

/** The ferment that is kept, with what is known of it. */
interface Kept {
  readonly fermentId: string;
  readonly name: string;
  readonly keeping: Keeping;
  readonly watch: ReturnType<typeof createWarmthWatch>;
  readonly inHand: MinuteInHand;
  minutes: WarmthSpan[];
  /** Minutes that are not on the disk yet. */
  waiting: WarmthSpan[];
  unsaved: string | null;
  /** What of the minute under way is on the disk. */
  underWaySaved: MinuteSoFar | null;
  /** Saves of it that are due or under way: a disk that is slower than a second gets what was heard meanwhile at once. */
  underWaySaves: number;
}

const minuteMs = 60_000;
/** Minutes are looked at as they end; silence is noticed as soon. */
const lookEveryS = 5;
/** No more than this is lost with the power. */
const keepUnderWayEveryS = 1;
/** How often a probe that is not there is asked for again. */
const askEveryS = 30;
/** The only channel that is a ferment's whatever else goes on. */
const fermentChannel = 'ferment';

export function createWarmthKeeper(setup: WarmthKeeperSetup): WarmthKeeper {
  const { clock, scheduler, mayWrite } = setup;
  const record = createWarmthFiles(setup.files, setup.runsFolder);
  const inTurn = takeTurns();
  const nowIso = () => new Date(clock.wallMs()).toISOString();
  let kept: Kept | null = null;
  let stopTimers: () => void = () => undefined;
  let told = '';
  let isProbeAwaited = false;

  const isProbeAtStill = ({ keeping }: Kept): boolean =>
    keeping.channel !== fermentChannel && setup.isRunUnderWay();

  function now(): KeptWarm | null {
    if (kept === null) return null;
    const { fermentId, name, keeping, watch, unsaved } = kept;
    return {
      fermentId,
      name,
      keeping: shownOf(keeping),
      now: watch.now(),
      isProbeAtStill: isProbeAtStill(kept),
      unsaved,
    };
  }

  function tell(): void {
    const shown = now();
    const text = JSON.stringify(shown);
    if (text === told) return;
    told = text;
    setup.onNow(shown);
  }

  function takeMinute(into: Kept, minute: WarmthSpan | null): void {
    if (minute === null) return;
    into.watch.see(minute);
    into.minutes.push(minute);
    into.waiting.push(minute);
  }

  /** Puts what waits on the disk; what can't be put there waits on, and the person is told. */
  function save(into: Kept): Promise<void> {
    return inTurn(async () => {
      const lines = into.waiting.map(minuteLine);
      if (lines.length === 0) return;
      const saved = mayWrite()
        ? await record.add(into.fermentId, lines)
        : fail<ServiceProblem>({ kind: 'folder-in-use', path: setup.runsFolder });
      if (saved.ok) into.waiting = into.waiting.slice(lines.length);
      into.unsaved = saved.ok ? null : saved.error.kind;
      tell();
    });
  }

  /** The minute under way, second by second: a loss of power takes no minute away. */
  async function saveUnderWay(into: Kept): Promise<void> {
    const minute = into.inHand.soFar();
    if (minute === null || minute === into.underWaySaved || !mayWrite()) return;
    into.underWaySaves += 1;
    if (into.underWaySaves > 1) return;
    const saved = await inTurn(() => record.keepUnderWay(into.fermentId, minute));
    const isMoreDue = into.underWaySaves > 1;
    into.underWaySaves = 0;
    if (saved.ok) {
      into.underWaySaved = minute;
      if (isMoreDue) await saveUnderWay(into);
      return;
    }
    // It is tried again, and told as a minute that can't be saved is.
    into.unsaved = saved.error.kind;
    tell();
  }

  function look(): void {
    if (kept === null) return;
    const wallMs = clock.wallMs();
    takeMinute(kept, kept.inHand.endedBy(wallMs));
    // While the probe hangs in the still, nobody expects to hear of the ferment.
    if (!isProbeAtStill(kept)) kept.watch.advanceTo(wallMs - minuteMs);
    if (kept.waiting.length > 0) void save(kept);
    tell();
  }

  /** After a start, until there is a probe: whoever lets go of one later means it. */
  function askForProbe(): void {
    if (kept === null || !isProbeAwaited) return;
    const { source } = kept.keeping;
    isProbeAwaited = source !== null && setup.probe.status().source === null;
    if (isProbeAwaited && source !== null) void setup.probe.reconnect(source);
  }

  function begin(
    fermentId: string,
    name: string,
    keeping: Keeping,
    minutes: readonly WarmthSpan[],
    underWay: MinuteSoFar | null,
  ): void {
    const watch = createWarmthWatch(keeping.band, Date.parse(keeping.sinceIso));
    for (const minute of minutes) watch.see(minute);
    kept = {
      fermentId,
      name,
      keeping,
      watch,
      inHand: createMinuteInHand(underWay),
      minutes: [...minutes],
      waiting: [],
      unsaved: null,
      underWaySaved: underWay,
      underWaySaves: 0,
    };
    const begun = kept;
    stopTimers();
    const timers = [
      scheduler.every(lookEveryS, look),
      scheduler.every(askEveryS, askForProbe),
      scheduler.every(keepUnderWayEveryS, () => void saveUnderWay(begun)),
    ];
    stopTimers = () => {
      for (const stop of timers) stop();
    };
    look();
  }

  function end(): void {
    stopTimers();
    stopTimers = () => undefined;
    kept = null;
  }

  /**
   * Ends the watch with a line that says so. It goes to the disk with all that was heard of the ferment and is not there yet, in one
   * piece: what can't be written has not happened, for this program no more than for the next.
   */
  async function endWith(ending: Kept, line: WarmthLine): Answer<void> {
    const added = await inTurn(() => {
      const last = ending.inHand.soFar();
      const minutes = [...ending.waiting, ...(last === null ? [] : [minuteOf(last)])];
      return record.add(ending.fermentId, [...minutes.map(minuteLine), line]);
    });
    if (added.ok) end();
    return added;
  }

  /** Of the ferment that is kept all is known already: its file grows for a week, and windows ask each minute. */
  async function report(fermentId: string): Answer<WarmthReport> {
    const known = kept?.fermentId === fermentId ? succeed(kept) : await readUntilNow(fermentId);
    if (!known.ok) return known;
    const { keeping, minutes } = known.value;
    return succeed({
      fermentId,
      keeping: keeping === null ? null : shownOf(keeping),
      isKeptNow: kept?.fermentId === fermentId,
      stretches: [...gatherSpans(minutes)],
    });
  }

  async function readUntilNow(fermentId: string) {
    const read = await record.read(fermentId);
    if (!read.ok) return read;
    const minutes = minutesUntilNow(read.value, await record.underWay(fermentId, read.value));
    return succeed({ ...read.value, minutes });
  }

  /**
   * The ferment that was kept when the program ended. A line that the disk was said not to have taken may be there all the same, and
   * then two records say that theirs is kept: one at a time is, the one that was asked for last.
   */
  async function lastKept() {
    const ids = await record.ids();
    let last: (WarmthRecord & { fermentId: string; name: string; keeping: Keeping }) | null = null;
    for (const fermentId of ids.ok ? ids.value : []) {
      const read = await record.read(fermentId);
      if (!read.ok || !read.value.isKeptNow || read.value.keeping === null) continue;
      const { keeping } = read.value;
      if (last !== null && last.keeping.sinceIso >= keeping.sinceIso) continue;
      const ferment = await setup.fermentOf(fermentId);
      if (ferment === null) continue;
      last = { ...read.value, fermentId, name: ferment.stated.name, keeping };
    }
    return last;
  }

  return {
    goOn: async () => {
      const last = await lastKept();
      if (last === null) return;
      const { fermentId, name, keeping, minutes } = last;
      begin(fermentId, name, keeping, minutes, await record.underWay(fermentId, last));
      isProbeAwaited = true;
      askForProbe();
    },
    seeReadings: (readings) => {
      if (kept === null || isProbeAtStill(kept)) return;
      // Nothing simulated is a ferment's.
      if (setup.probe.status().source?.kind === 'demo') return;
      const { channel } = kept.keeping;
      const nowMs = clock.wallMs();
      const nowS = clock.monotonicS();
      for (const reading of readings) {
        if (reading.channel !== channel || reading.quality !== 'good' || reading.unit !== '°C') {
          continue;
        }
        const wallMs = nowMs - 1000 * Math.max(0, nowS - reading.atS);
        takeMinute(kept, kept.inHand.take(wallMs, reading.value));
      }
      if (kept.waiting.length > 0) void save(kept);
    },
    now,
    report,
    keep: async ({ fermentId, band, channel }) => {
      if (!mayWrite()) return fail({ kind: 'folder-in-use', path: setup.runsFolder });
      const ferment = await setup.fermentOf(fermentId);
      if (ferment === null) {
        return fail({ kind: 'request-invalid', message: worded('There is no such ferment') });
      }
      if (kept !== null && kept.fermentId !== fermentId) {
        const left = await endWith(kept, { kind: 'leave', keptAtIso: nowIso() });
        if (!left.ok) return left;
      }
      const { source } = setup.probe.status();
      const sinceIso = nowIso();
      const line = {
        kind: 'keep',
        ...warmthLog,
        keptAtIso: sinceIso,
        band,
        channel,
        source,
      } as const;
      const added =
        kept === null
          ? await inTurn(() => record.add(fermentId, [line]))
          : await endWith(kept, line);
      if (!added.ok) {
        tell();
        return added;
      }
      const read = await record.read(fermentId);
      if (!read.ok) return read;
      const keeping = { band, channel, source, sinceIso };
      begin(fermentId, ferment.stated.name, keeping, read.value.minutes, null);
      return report(fermentId);
    },
    leave: async (fermentId) => {
      if (kept?.fermentId !== fermentId) return report(fermentId);
      if (!mayWrite()) return fail({ kind: 'folder-in-use', path: setup.runsFolder });
      const added = await endWith(kept, { kind: 'leave', keptAtIso: nowIso() });
      tell();
      return added.ok ? report(fermentId) : added;
    },
    async close() {
      if (kept === null) return;
      const closing = kept;
      end();
      takeMinute(closing, closing.inHand.endedBy(clock.wallMs()));
      await save(closing);
      const minute = closing.inHand.soFar();
      if (minute !== null && mayWrite()) {
        await inTurn(() => record.keepUnderWay(closing.fermentId, minute));
      }
    },
  };
}

function minuteLine(minute: WarmthSpan): WarmthLine {
  return { kind: 'minute', ...minute };
}

/** Which port it was is nobody's business but the program's. */
function shownOf({ band, channel, sinceIso }: Keeping): KeptWarm['keeping'] {
  return { band, channel, sinceIso };
}
