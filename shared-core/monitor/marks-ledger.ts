import type { Mark, MarkBody } from '../run/index.ts';

/** A mark that stands: made, and not withdrawn. */
export interface StandingMark {
  readonly timeS: number;
  readonly markId: number;
  readonly body: MarkBody;
}

export type Heat = 'off' | 'on' | 'eased' | 'unknown';

/** What the person's marks say so far. */
export interface MarksLedger {
  add(mark: Mark): void;
  /** `unknown` until the first heat mark; then everything treats the heat as on. */
  heat(): Heat;
  heatChangedS(): number | null;
  /** What the marks up to a time say of the heat then, and of when it was first on. */
  heatUntil(timeS: number): { readonly heat: Heat; readonly firstOnS: number | null };
  /** Distillate booked [mL]: receivers changed plus the last reading of the present one. */
  collectedMl(): number | null;
  /** Time of the last booking of a volume. */
  collectedS(): number | null;
  bookings(): readonly Booking[];
  /** Receivers that went away unmeasured, with what had been booked until then. */
  takenAway(): readonly Booking[];
  dropsCounted(): number;
  /** True while the last readings of the receiver, minutes apart, were the same: nothing is being collected. */
  isReceiverStill(): boolean;
  airPressureKPa(): number | null;
  standing(): readonly StandingMark[];
}

/** What had been collected by a mark's time, by all marks that stand up to it. */
export interface Booking {
  readonly markId: number;
  readonly timeS: number;
  readonly collectedMl: number;
}

/** Density of first and main fractions near room temperature: 90 % vol, OIML R 22 [g/mL]. */
export const strongDistillateGPerMl = 0.829;

/** An empty ledger. Withdrawing a mark takes back everything that followed from it. */
export function createMarksLedger(): MarksLedger {
  let marks: StandingMark[] = [];
  let summary = summarise(marks);
  return {
    add: ({ timeS, markId, mark }) => {
      marks =
        mark.type === 'mark-withdrawn'
          ? marks.filter((standing) => standing.markId !== mark.withdrawnMarkId)
          : [...marks, { timeS, markId, body: mark }];
      summary = summarise(marks);
    },
    heat: () => summary.heat,
    heatChangedS: () => summary.heatChangedS,
    heatUntil: (untilS) => {
      const { heat, heatFirstOnS } = summarise(marks.filter(({ timeS }) => timeS <= untilS));
      return { heat, firstOnS: heatFirstOnS };
    },
    collectedMl: () => summary.bookings.at(-1)?.collectedMl ?? null,
    collectedS: () => summary.bookings.at(-1)?.timeS ?? null,
    bookings: () => summary.bookings,
    takenAway: () => summary.takenAway,
    dropsCounted: () => summary.drops,
    isReceiverStill: () => summary.receiverStill,
    airPressureKPa: () => summary.airPressureKPa,
    standing: () => marks,
  };
}

interface Summary {
  heat: Heat;
  heatChangedS: number | null;
  heatFirstOnS: number | null;
  bookings: Booking[];
  takenAway: Booking[];
  drops: number;
  receiverStill: boolean;
  airPressureKPa: number | null;
}

/** Readings this far apart [s] that differ by less than this [mL] show that nothing comes. */
const stillForS = 120;
const stillMl = 0.25;

function summarise(marks: readonly StandingMark[]): Readonly<Summary> {
  const sum: Summary = {
    heat: 'unknown',
    heatChangedS: null,
    heatFirstOnS: null,
    bookings: [],
    takenAway: [],
    drops: 0,
    receiverStill: false,
    airPressureKPa: null,
  };
  const receiver = createBookedReceiver();
  for (const { timeS, markId, body } of marks) {
    if (isHeatMark(body)) {
      sum.heat = heatAfter[body.type];
      sum.heatChangedS = timeS;
      if (sum.heat !== 'off') sum.heatFirstOnS ??= timeS;
    } else if (body.type === 'pressure-read') {
      sum.airPressureKPa = body.pressureKPa;
    } else if (body.type === 'drops-counted') {
      sum.drops += body.count;
      sum.receiverStill = false;
      receiver.dropsCame();
    } else if (receiver.book(body)) {
      sum.receiverStill = receiver.isStill(timeS);
      sum.bookings.push({ markId, timeS, collectedMl: receiver.collectedMl() });
    } else if (body.type === 'receiver-changed') {
      sum.takenAway.push({ markId, timeS, collectedMl: receiver.collectedMl() });
    }
  }
  return sum;
}

type HeatMark = Extract<MarkBody, { type: 'heat-on' | 'heat-eased' | 'heat-off' }>;

const heatAfter: Readonly<Record<HeatMark['type'], Heat>> = {
  'heat-on': 'on',
  'heat-eased': 'eased',
  'heat-off': 'off',
};

function isHeatMark(body: MarkBody): body is HeatMark {
  return body.type in heatAfter;
}

/** The receivers as they are booked one after the other. */
function createBookedReceiver() {
  let earlierMl = 0;
  let presentMl = 0;
  /** The reading since which nothing more has come. */
  let risen: { readonly timeS: number; readonly ml: number } | null = null;
  return {
    /** Takes a mark; true when it tells what has been collected. */
    book: (body: MarkBody): boolean => {
      if (body.type === 'volume-read') presentMl = body.volumeMl;
      else if (body.type === 'mass-read') presentMl = body.massG / strongDistillateGPerMl;
      else if (body.type === 'receiver-changed') {
        earlierMl += body.volumeMl ?? presentMl;
        presentMl = 0;
        return body.volumeMl !== null;
      } else return false;
      return true;
    },
    collectedMl: (): number => earlierMl + presentMl,
    /** Whether readings minutes apart were the same up to this one. */
    isStill: (timeS: number): boolean => {
      const ml = earlierMl + presentMl;
      if (risen === null || ml - risen.ml >= stillMl) risen = { timeS, ml };
      return timeS - risen.timeS >= stillForS;
    },
    dropsCame: (): void => {
      risen = null;
    },
  };
}
