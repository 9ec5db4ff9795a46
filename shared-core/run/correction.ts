import { z } from 'zod';
import { localTimeWords, numberWords } from '../wording/index.ts';
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
 * @param startedAtIso when the run began as recorded (ISO 8601, told in the zone it is written in); empty where not known
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
): readonly string[] {
  let so = settings;
  let began = startedAtIso;
  return corrections.map((correction) => {
    const now = correctedSettings(so, [correction]);
    const changes = parts.flatMap((words) =>
      words(so) === words(now) ? [] : [`${words(so)} → ${words(now, true)}`],
    );
    so = now;
    const start = correction.startedAtIso ?? began;
    if (start !== began) changes.push(`began ${minuteWords(began)} → ${minuteWords(start)}`);
    began = start;
    return `Corrected after the run: ${changes.join('; ') || 'nothing changed'}. Reason: ${correction.reason}`;
  });
}

const minuteWords = (iso: string) => (iso === '' ? 'at a time not stated' : localTimeWords(iso));

const volumeDoubtWords = ({ standardUncertaintyMl }: RunSettings['charge']) =>
  standardUncertaintyMl === undefined
    ? 'as usual for the volume'
    : `${numberWords(standardUncertaintyMl, 1)} mL`;

const parts: readonly ((settings: RunSettings, isBare?: boolean) => string)[] = [
  ({ charge }, isBare) =>
    `${isBare ? '' : 'charge '}${charge.volumeMl} mL of ${charge.strengthAbv} % vol`,
  ({ charge }, isBare) =>
    `${isBare ? '' : 'standard uncertainty of the charge '}${volumeDoubtWords(charge)} and ${numberWords(charge.standardUncertaintyAbv, 2)} % vol`,
  ({ pressure }, isBare) => `${isBare ? '' : 'air pressure '}${pressure.pressureKPa} kPa`,
  ({ rig }, isBare) =>
    `${isBare ? '' : 'rig '}${rig.description || 'not described'}, ${platesWords(rig.plates)}`,
];
