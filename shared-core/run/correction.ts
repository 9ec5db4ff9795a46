import { z } from 'zod';
import { asGiven, localTimeWords, numberWords, worded } from '../wording/index.ts';
import { platesWords } from './plates-words.ts';
import {
  chargeSettingSchema,
  pressureSettingSchema,
  type RunSettings,
  rigSettingSchema,
} from './run-settings.ts';

/** What was said wrongly of a run, put right after it, and why. The record keeps both. */
export const correctionSchema = z.strictObject({
  charge: chargeSettingSchema.optional(),
  pressure: pressureSettingSchema.optional(),
  rig: rigSettingSchema.optional(),
  /** When it began; only of a run that was taken in from a file. */
  startedAtIso: z.iso.datetime().optional(),
  reason: z.string().trim().min(1).max(500),
});

export type Correction = z.infer<typeof correctionSchema>;

/** What was said of a run when it began. */
interface StatedRun {
  readonly settings: RunSettings;
  /** ISO 8601; empty where not known. */
  readonly startedAtIso: string;
  readonly origin: 'recorded' | 'imported';
}

/**
 * A run with every correction made after it, and each correction as a sentence: see {@link correctedSettings},
 * {@link correctedStart} and {@link correctionSentences} for the rule.
 *
 * @param run as recorded: settings (charge [mL, % vol], pressure [kPa]), start (ISO 8601, empty where not known), where it came from
 * @param corrections in the order in which they were made
 * @param inZone a moment [ISO 8601] as it is told where it is read, with the offset of that zone; as it is written if left out
 *
 * Source: this project's rule; no standard.
 * @example
 * const charge = { volumeMl: 300, strengthAbv: 10, standardUncertaintyAbv: 0.5 };
 * const run = { settings: defaultRunSettings, startedAtIso: '', origin: 'recorded' };
 * correctedRun(run, [{ charge, reason: 'misread' }]).settings.charge.volumeMl // => 300
 * correctedRun(run, [{ charge, reason: 'misread' }]).sentences.length // => 1
 */
export function correctedRun(
  run: StatedRun,
  corrections: readonly Correction[],
  inZone: (iso: string) => string = (iso) => iso,
) {
  return {
    settings: correctedSettings(run.settings, corrections),
    startedAtIso: correctedStart(run, corrections),
    sentences: correctionSentences(run.settings, corrections, run.startedAtIso, inZone),
  };
}

/**
 * A run's settings with every correction made after it, the rule being that the last one counts.
 *
 * @param settings as recorded (charge [mL, % vol], pressure [kPa])
 * @param corrections in the order in which they were made
 *
 * Source: this project's rule; no standard.
 * @example
 * const charge = { volumeMl: 300, strengthAbv: 10, standardUncertaintyAbv: 0.5 };
 * correctedSettings(defaultRunSettings, [{ charge, reason: 'misread' }]).charge.volumeMl // => 300
 */
export function correctedSettings(
  settings: RunSettings,
  corrections: readonly Correction[],
): RunSettings {
  const last = { ...settings };
  for (const { charge, pressure, rig } of corrections) {
    if (charge !== undefined) last.charge = charge;
    if (pressure !== undefined) last.pressure = pressure;
    if (rig !== undefined) last.rig = rig;
  }
  return last;
}

/**
 * When a run began, with every correction made after it, the rule being that the last one counts. What this program recorded itself
 * it timed itself: only the start of an imported run can be wrong.
 *
 * @param run its start as kept (ISO 8601, empty where not known), and whether it was taken in from a file
 * @param corrections in the order in which they were made
 *
 * Source: this project's rule; no standard.
 * @example
 * const corrections = [{ startedAtIso: '2026-03-18T09:15:00.000Z', reason: 'the logger was an hour slow' }];
 * correctedStart({ startedAtIso: '', origin: 'imported' }, corrections) // => "2026-03-18T09:15:00.000Z"
 * correctedStart({ startedAtIso: '', origin: 'recorded' }, corrections) // => ""
 */
export function correctedStart(
  { startedAtIso, origin }: { readonly startedAtIso: string; readonly origin: string },
  corrections: readonly Correction[],
): string {
  if (origin !== 'imported') return startedAtIso;
  return (
    corrections.findLast((one) => one.startedAtIso !== undefined)?.startedAtIso ?? startedAtIso
  );
}

/**
 * Each correction as a sentence: what it was, what it is now, and why.
 *
 * @param settings as recorded (charge [mL, % vol], pressure [kPa])
 * @param corrections in the order in which they were made
 * @param startedAtIso when the run began as recorded (ISO 8601); empty where not known
 * @param inZone a moment [ISO 8601] as it is told where it is read; as it is written if left out
 *
 * Source: this project's rule; no standard.
 * @example
 * const charge = { volumeMl: 300, strengthAbv: 10, standardUncertaintyAbv: 0.5 };
 * correctionSentences(defaultRunSettings, [{ charge, reason: 'misread' }]) // => ["Corrected after the run: charge 350 mL of 9 % vol → 300 mL of 10 % vol. Reason: misread"]
 */
export function correctionSentences(
  settings: RunSettings,
  corrections: readonly Correction[],
  startedAtIso = '',
  inZone: (iso: string) => string = (iso) => iso,
): readonly string[] {
  let so = settings;
  let began = startedAtIso;
  return corrections.map((correction) => {
    const now = correctedSettings(so, [correction]);
    const start = correction.startedAtIso ?? began;
    const changes = [
      ...parts.flatMap(({ words, change }) =>
        words(so) === words(now) ? [] : [change(words(so), words(now))],
      ),
      ...(start === began
        ? []
        : [
            worded('began {before} → {after}', {
              before: minuteWords(inZone(began)),
              after: minuteWords(inZone(start)),
            }),
          ]),
    ];
    so = now;
    began = start;
    return worded('Corrected after the run: {changes}. Reason: {reason}', {
      changes:
        changes.length === 0
          ? worded('nothing changed')
          : changes.reduce((some, other) => worded('{some}; {other}', { some, other })),
      reason: asGiven(correction.reason),
    });
  });
}

const minuteWords = (iso: string) =>
  iso === '' ? worded('at a time not stated') : localTimeWords(iso);

interface Part {
  readonly words: (settings: RunSettings) => string;
  readonly change: (before: string, after: string) => string;
}

const parts: readonly Part[] = [
  {
    words: ({ charge }) =>
      worded('{volume} mL of {strength} % vol', {
        volume: charge.volumeMl,
        strength: charge.strengthAbv,
      }),
    change: (before, after) => worded('charge {before} → {after}', { before, after }),
  },
  {
    words: ({ charge: { standardUncertaintyMl, standardUncertaintyAbv } }) =>
      worded('{volume} and {strength} % vol', {
        volume:
          standardUncertaintyMl === undefined
            ? worded('as usual for the volume')
            : `${numberWords(standardUncertaintyMl, 1)} mL`,
        strength: numberWords(standardUncertaintyAbv, 2),
      }),
    change: (before, after) =>
      worded('standard uncertainty of the charge {before} → {after}', { before, after }),
  },
  {
    words: ({ pressure }) => `${pressure.pressureKPa} kPa`,
    change: (before, after) => worded('air pressure {before} → {after}', { before, after }),
  },
  {
    words: ({ rig: { description, plates } }) =>
      worded('{rig}, {plates}', {
        rig: description === '' ? worded('not described') : asGiven(description),
        plates: platesWords(plates),
      }),
    change: (before, after) => worded('rig {before} → {after}', { before, after }),
  },
];
