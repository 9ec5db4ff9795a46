import { worded } from '../wording/index.ts';
import type { WarmthBand } from './warmth-band.ts';

/** What can be wrong with a ferment that is kept warm. */
export const warmthAlarms = ['too-hot', 'hot', 'cold', 'unheard'] as const;
export type WarmthAlarm = (typeof warmthAlarms)[number];

/** What an alarm is about, after IEC 62682: what is so, what follows from it, what to do. */
export interface WarmthAlarmText {
  readonly title: string;
  readonly consequence: string;
  readonly act: string;
}

/** A ferment is some litres in a vessel: what lasts less than this is a lid that was lifted, or a probe in the air [min]. */
const lastsMin = { 'too-hot': 3, hot: 15, cold: 30, unheard: 10 } as const satisfies Record<
  WarmthAlarm,
  number
>;
/** What is over is over when it has been so for so long, and by so much [min], [K]. */
const overMin = 5;
const deadbandK = 0.3;
/**
 * So hot yeast dies within hours, whatever band was set [°C]; source for the direction: Coleman, Fish, Block, Appl. Environ.
 * Microbiol. 73 (2007) 5875, doi 10.1128/AEM.00670-07 (hot ferments get stuck); the number is common practice, no source.
 */
export const diesFromC = 38;

export const warmthAlarmTexts: Readonly<Record<WarmthAlarm, WarmthAlarmText>> = {
  'too-hot': {
    title: worded('Ferment far too hot'),
    consequence: worded('Yeast dies within hours, and the ferment stays stuck.'),
    act: worded('Switch the warmer off and let the vessel cool in the air, its air lock open.'),
  },
  hot: {
    title: worded('Ferment too warm'),
    consequence: worded('It foams more, and a ferment that was too hot tends to get stuck.'),
    act: worded('Turn the warmer down, or off until it has cooled.'),
  },
  cold: {
    title: worded('Ferment too cold'),
    consequence: worded('It slows down and may not be done by the lesson.'),
    act: worded('See whether the warmer is on, and wrap the vessel; leave its air lock open.'),
  },
  unheard: {
    title: worded('Ferment not heard'),
    consequence: worded('Nobody watches how warm it is.'),
    act: worded('See to the plug of the probe and to this computer.'),
  },
};

/** One alarm's condition over time: it comes late, and goes later, so that it does not flutter. */
export interface LastingCondition {
  /** Whether it is so from this moment on [ms since 1970]; between two moments it was as at the first. */
  at(wallMs: number, isSo: boolean): void;
  /** Since when it is so; null while it is not, or not for long enough. */
  sinceMs(): number | null;
}

export function lastingCondition(alarm: WarmthAlarm): LastingCondition {
  let soSinceMs: number | null = null;
  let notSinceMs: number | null = null;
  let standsSinceMs: number | null = null;
  return {
    at: (wallMs, isSo) => {
      if (isSo) {
        notSinceMs = null;
        soSinceMs ??= wallMs;
        if (wallMs - soSinceMs >= 60_000 * lastsMin[alarm]) standsSinceMs ??= soSinceMs;
        return;
      }
      notSinceMs ??= wallMs;
      if (standsSinceMs !== null && wallMs - notSinceMs < 60_000 * overMin) return;
      soSinceMs = null;
      standsSinceMs = null;
    },
    sinceMs: () => standsSinceMs,
  };
}

/**
 * Which of the alarms about warmth is so at a temperature; within the deadband it stays as it stands.
 *
 * @param standing whether that alarm stands already
 */
export function isSo(
  alarm: Exclude<WarmthAlarm, 'unheard'>,
  temperatureC: number,
  { lowC, highC }: WarmthBand,
  standing: boolean,
): boolean {
  const slackK = standing ? deadbandK : 0;
  if (alarm === 'cold') return temperatureC < lowC + slackK;
  const fromC = alarm === 'hot' ? highC : Math.max(highC, diesFromC);
  return temperatureC > fromC - slackK;
}
