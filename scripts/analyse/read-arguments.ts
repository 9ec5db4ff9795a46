import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import {
  defaultRunSettings,
  fail,
  type Result,
  type RunSettings,
  runSettingsSchema,
  succeed,
} from '#shared-core';

export const usage = `Usage: npm run --silent analyse -- FILE.csv [options]
  FILE.csv may also be the folder of a recorded run, which knows its own settings.
  --pressure-kpa 98.6        air pressure at the still
  --charge-ml 350            volume in the pot
  --charge-abv 9             its strength, % vol
  --least-strength-abv 80    least strength of the main fraction, % vol
  --settings FILE.json       a whole set of run settings; the options above win over it
  --out DIR                  also write analysis.json and readings with their stages there`;

export interface AnalyseArguments {
  readonly file: string;
  readonly outFolder: string | null;
  /** Null when no option was given, so that a recorded run keeps its own settings. */
  readonly settings: RunSettings | null;
}

const numberOptions = {
  'pressure-kpa': { type: 'string' },
  'charge-ml': { type: 'string' },
  'charge-abv': { type: 'string' },
  'least-strength-abv': { type: 'string' },
} as const;

/** Reads the command line, or says in a sentence what is wrong with it. */
export function readArguments(args: readonly string[]): Result<AnalyseArguments, string> {
  const parsed = parse(args);
  if (!parsed.ok) return parsed;
  const { values, positionals } = parsed.value;
  const [file, ...others] = positionals;
  if (file === undefined) return fail(`Say which file to analyse.\n${usage}`);
  if (others.length > 0) return fail(`Give one file at a time, not also "${others[0]}".`);
  const base = values.settings === undefined ? null : readSettings(values.settings);
  if (base?.ok === false) return base;

  const numbers: Partial<Record<keyof typeof numberOptions, number>> = {};
  for (const option of Object.keys(numberOptions) as (keyof typeof numberOptions)[]) {
    const text = values[option];
    if (text === undefined) continue;
    const value = Number(text.replace(',', '.'));
    if (text.trim() === '' || !Number.isFinite(value)) {
      return fail(`--${option} needs a number, not "${text}".`);
    }
    numbers[option] = value;
  }
  const outFolder = values.out ?? null;
  if (base === null && Object.keys(numbers).length === 0) {
    return succeed({ file, outFolder, settings: null });
  }
  const settings = runSettingsSchema.safeParse(merge(base?.value ?? defaultRunSettings, numbers));
  if (!settings.success)
    return fail(`The settings can't be used:\n${z.prettifyError(settings.error)}`);
  return succeed({ file, outFolder, settings: settings.data });
}

function parse(args: readonly string[]) {
  const options = {
    ...numberOptions,
    settings: { type: 'string' },
    out: { type: 'string' },
  } as const;
  try {
    return succeed(parseArgs({ args: [...args], options, allowPositionals: true }));
  } catch (error) {
    return fail(`${error instanceof Error ? error.message : String(error)}\n${usage}`);
  }
}

function readSettings(file: string): Result<RunSettings, string> {
  try {
    const parsed = runSettingsSchema.safeParse(JSON.parse(readFileSync(file, 'utf8')));
    if (parsed.success) return succeed(parsed.data);
    return fail(`"${file}" holds no run settings:\n${z.prettifyError(parsed.error)}`);
  } catch (error) {
    return fail(`"${file}" can't be read: ${error instanceof Error ? error.message : error}`);
  }
}

function merge(
  base: RunSettings,
  numbers: Partial<Record<keyof typeof numberOptions, number>>,
): RunSettings {
  const pressureKPa = numbers['pressure-kpa'];
  return {
    ...base,
    charge: {
      ...base.charge,
      volumeMl: numbers['charge-ml'] ?? base.charge.volumeMl,
      strengthAbv: numbers['charge-abv'] ?? base.charge.strengthAbv,
    },
    pressure:
      pressureKPa === undefined
        ? base.pressure
        : // A value given by hand comes from a barometer; 0.1 kPa is common practice, no source.
          { pressureKPa, standardUncertaintyKPa: 0.1, source: 'barometer', altitudeM: null },
    leastStrengthAbv: numbers['least-strength-abv'] ?? base.leastStrengthAbv,
  };
}
