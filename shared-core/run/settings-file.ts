import { z } from 'zod';
import { fail, parseJson, type Result, succeed } from '../result/index.ts';
import { worded } from '../wording/index.ts';
import { type RunSettings, runSettingsSchema } from './run-settings.ts';

const settingsFileSchema = z.object({
  format: z.literal('still-head-run-settings'),
  version: z.literal(1),
  /** ISO 8601; empty where nobody knows. */
  startedAtIso: z.string().max(40),
  settings: runSettingsSchema,
});

/** What goes with a raw table, so that it can be taken in again and gives the same calls. */
export interface SettingsFile {
  readonly settings: RunSettings;
  readonly startedAtIso: string;
}

/**
 * A run's settings as a JSON text (ECMA-404), units in the names: the rule of what a table alone does not tell.
 *
 * @param file settings (charge [mL, % vol], pressure [kPa]) and the start of the run (ISO 8601, or empty)
 *
 * Source: this project's format; no standard beyond ECMA-404.
 * @example
 * readSettingsFile(writeSettingsFile({ settings: defaultRunSettings, startedAtIso: '' })).ok // => true
 */
export function writeSettingsFile({ settings, startedAtIso }: SettingsFile): string {
  const file = { format: 'still-head-run-settings', version: 1, startedAtIso, settings };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/**
 * The settings in a text that {@link writeSettingsFile} made, or a sentence on why there are none.
 *
 * @param text JSON of at most some kilobytes; quantities as in `writeSettingsFile` [mL, % vol, kPa]
 *
 * Source: this project's format; no standard beyond ECMA-404.
 * @example
 * readSettingsFile('{}').ok // => false
 */
export function readSettingsFile(text: string): Result<SettingsFile, string> {
  const read = settingsFileSchema.safeParse(parseJson(text));
  return read.success
    ? succeed(read.data)
    : fail(worded('This is no settings file of a pack: choose the one in its folder "settings".'));
}
