import { type Observation, receiverSdMl, type Twin } from '../../twin/index.ts';
import type { Booking, MarksLedger, StandingMark } from '../marks-ledger.ts';
import { dropsPerMl } from './first-fraction-progress.ts';

/** Shows the twin what is measured and what the person marks. */
export interface TwinFeed {
  show(observation: Observation): void;
  /**
   * Shows the marks made since the last time, at this time of boiling and at the flow believed so far [mL/s]. Where one
   * was withdrawn, a new twin is shown everything else, as if the mark had not been made.
   */
  showMarks(boiledS: number, flowMlPerS: number | null): void;
  twin(): Twin;
  /** Time of boiling of the first mark that was withdrawn since this was asked last [s]; null where none was. */
  takeMistakenFromS(): number | null;
}

/** Something the twin was shown, and the mark it came from; null for what was measured. */
interface Shown {
  readonly observation: Observation;
  readonly markId: number | null;
}

/** A person reads the receiver first and books it when a hand is free: the time of a mark is known to so much [s]. */
const bookingDelayS = 20;
/** Drops are larger from a wider tip and smaller of stronger spirit: what they come to is known to this share; common practice, no source. */
const dropsShareSd = 0.3;
/** Heat eased while vapour only just arrives is part of the heat-up [s]. */
const heatUpOverS = 60;

/** A feed for the twin that `begin` makes, of what comes from now on. */
export function createTwinFeed(begin: () => Twin, marks: MarksLedger): TwinFeed {
  let twin = begin();
  let shown: Shown[] = [];
  let standing = marks.standing();
  let taken = new Set(standing.map(({ markId }) => markId));
  let mistakenFromS: number | null = null;

  const show = (observation: Observation, markId: number | null): void => {
    shown.push({ observation, markId });
    twin.see(observation);
  };

  const startAnew = (stands: ReadonlySet<number>): void => {
    const booked = new Map(
      [...marks.bookings(), ...marks.takenAway()].map(({ markId, collectedMl }) => [
        markId,
        collectedMl,
      ]),
    );
    taken = new Set([...taken].filter((markId) => stands.has(markId)));
    twin = begin();
    const stood = ({ markId }: Shown) => markId === null || stands.has(markId);
    const kept = shown.filter(stood);
    for (const { observation } of shown.filter((item) => !stood(item))) {
      mistakenFromS = Math.min(mistakenFromS ?? observation.boiledS, observation.boiledS);
    }
    shown = [];
    for (const { observation, markId } of kept) {
      const bookedMl = markId === null ? undefined : booked.get(markId);
      show(bookedMl === undefined ? observation : addedUp(observation, bookedMl), markId);
    }
  };

  const showMark = (
    { markId, body }: StandingMark,
    boiledS: number,
    flowMlPerS: number | null,
  ): void => {
    if (body.type === 'heat-eased' && boiledS > heatUpOverS) {
      show({ kind: 'eased', boiledS }, markId);
    } else if (body.type === 'drops-counted') {
      const value = body.count / dropsPerMl / body.overS;
      show({ kind: 'flow', boiledS, value, sd: dropsShareSd }, markId);
    } else {
      const ofMark = (booked: readonly Booking[]) => booked.find((item) => item.markId === markId);
      const value = ofMark(marks.bookings())?.collectedMl;
      const bookedMl = ofMark(marks.takenAway())?.collectedMl;
      if (value !== undefined) {
        const flowedMl = bookingDelayS * (flowMlPerS ?? value / Math.max(60, boiledS));
        show({ kind: 'booked', boiledS, value, sd: Math.hypot(receiverSdMl, flowedMl) }, markId);
      } else if (bookedMl !== undefined) show({ kind: 'taken-away', boiledS, bookedMl }, markId);
    }
  };

  return {
    show: (observation) => show(observation, null),
    showMarks: (boiledS, flowMlPerS) => {
      if (marks.standing() === standing) return;
      standing = marks.standing();
      const stands = new Set(standing.map(({ markId }) => markId));
      if ([...taken].some((markId) => !stands.has(markId))) startAnew(stands);
      for (const mark of standing) {
        if (taken.has(mark.markId)) continue;
        taken.add(mark.markId);
        showMark(mark, boiledS, flowMlPerS);
      }
    },
    twin: () => twin,
    takeMistakenFromS: () => {
      const fromS = mistakenFromS;
      mistakenFromS = null;
      return fromS;
    },
  };
}

/** An observation of a mark, with what had been booked by then as it now adds up. */
function addedUp(observation: Observation, bookedMl: number): Observation {
  if (observation.kind === 'taken-away') return { ...observation, bookedMl };
  return observation.kind === 'booked' ? { ...observation, value: bookedMl } : observation;
}
