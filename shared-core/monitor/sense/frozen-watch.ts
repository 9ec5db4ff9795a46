/** Notices a probe that repeats itself: digits that used to flicker no longer do. */
export interface FrozenWatch {
  /** Takes one reading; true when so long a repetition has become unbelievable. */
  see(value: number): boolean;
}

/** Chance below which a run of equal readings is no longer taken for rest. */
const disbelief = 1e-9;
/** What came long before tells of another noise [readings]; chosen here. */
const memoryReadings = 300;
/** A jump back by more than one digit is noise; by one digit it may be a steady value between two. */
const moreThanOneDigit = 1.5;
/** Even who turns back each time repeats a reading every other time: fewer in a row are always believed. */
const leastRun = Math.ceil(Math.log(disbelief) / Math.log(1 / 2));

/** Shares p of readings that turn back, in even steps of the angle whose sine squared they are. */
const shares = Array.from({ length: 64 }, (_, index) => {
  const share = Math.sin(((index + 0.5) / 64) * (Math.PI / 2)) ** 2;
  return { share, logTurns: Math.log(share), logOthers: Math.log1p(-share) };
});
/** How likely a reading repeats the one before, by each share. */
const repeats = Float64Array.from(shares, ({ share }) => 1 - share / 2);

/**
 * Learns how often readings turn back by more than one digit, and judges a run of n equal ones by what is believed of that share:
 * the mean of `(1 − p/2)^n` over `p ~ Beta(turns + 1/2, others + 1/2)`. So a probe that stops after a few readings is found as well, only
 * later: who has seen little doubts much. Steady rises do not count, nor does a coarse probe that toggles between two values: such
 * probes may well stand still.
 *
 * Source: Jeffreys' prior of a share, under which the angle `asin √p` is believed evenly: H. Jeffreys, Theory of Probability (1961), III; from memory.
 */
export function createFrozenWatch(): FrozenWatch {
  let last = Number.NaN;
  let lastStep = 0;
  let digit = Number.POSITIVE_INFINITY;
  let run = 0;
  let seen = 0;
  let turns = 0;
  /** Of each share, what is believed of it and that readings repeat as long as they have. */
  const beliefs = new Float64Array(shares.length);

  const change = (value: number): void => {
    const fade = Math.min(1, memoryReadings / seen);
    const step = value - last;
    const size = Math.abs(step);
    // Floating point leaves crumbs below any probe's digit.
    if (size > 1e-6 && size < digit) digit = size;
    const turned = step * lastStep < 0 && size > moreThanOneDigit * digit;
    seen = seen * fade + run + 1;
    turns = turns * fade + (turned ? 1 : 0);
    run = 0;
    last = value;
    lastStep = step;
  };

  const believe = (): void => {
    const logs = shares.map(
      ({ logTurns, logOthers }) => turns * logTurns + (seen - turns) * logOthers,
    );
    const most = Math.max(...logs);
    const sum = logs.reduce((total, log) => total + Math.exp(log - most), 0);
    logs.forEach((log, index) => {
      beliefs[index] = (Math.exp(log - most) / sum) * (repeats[index] as number) ** (run - 1);
    });
  };

  /** Each equal reading more is as likely by each share as one alone. */
  const disbelieve = (): number => {
    let sum = 0;
    for (let index = 0; index < shares.length; index += 1) {
      const belief = (beliefs[index] as number) * (repeats[index] as number);
      beliefs[index] = belief;
      sum += belief;
    }
    return sum;
  };

  const repeat = (): boolean => {
    run += 1;
    if (run < leastRun) return false;
    if (run === leastRun) believe();
    return disbelieve() < disbelief;
  };

  return {
    see: (value) => {
      if (value === last) return repeat();
      change(value);
      return false;
    },
  };
}
