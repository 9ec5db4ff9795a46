import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import {
  type BookEntries,
  type ColumnMapping,
  defaultRunSettings,
  fail,
  judgeBarometerEntry,
  type Result,
  type RunSettings,
  succeed,
} from '#shared-core';
import { bookEntriesSchema } from '../../shared-core/bookkeeping/index.ts';
import { columnMappingSchema } from '../../shared-core/csv/index.ts';
import { runSettingsSchema } from '../../shared-core/run/index.ts';

/** Nobody can answer an attention check that comes out of a file. */
export const unattendedSettings: RunSettings = { ...defaultRunSettings, attentionCheckS: null };

export const usage = `Usage: npm run --silent analyse -- FILE.csv … [options]
  FILE.csv may also be the folder of a recorded run, which knows its own settings.
  Several files are compared; one JSON object then holds them as "runs".
  --pressure-kpa 98.6        air pressure at the still
  --charge-ml 350            volume in the pot
  --charge-abv 9             its strength, % vol
  --least-strength-abv 80    least strength of the main fraction, % vol
  --settings FILE.json       a whole set of run settings; the options above win over it
  --columns FILE.json        which column holds what, where titles don't say (see shared-core/csv/FORMAT.md)
  --books FILE.json          what was measured after the run: cuts, residue, sugar (see main/export/pack/FORMAT.md)
  --kind ferment             judge a ferment's log instead, with --volume-ml 1000 and --sugar-g 170
  --out DIR                  also write analysis.json and the export pack there`;

export interface AnalyseArguments {
  /** At least one. */
  readonly files: readonly string[];
  /** Which column holds what; null to find out from the titles. */
  readonly columns: ColumnMapping | null;
  /** What was measured after a single run. */
  readonly books: BookEntries | null;
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
  if (positionals.length === 0) return fail(`Say which file to analyse.\n${usage}`);
  if (positionals.length > 1 && values.books !== undefined) {
    return fail('--books belongs to one run; give one file with it.');
  }
  const base =
    values.settings === undefined
      ? null
      : readJson(values.settings, runSettingsSchema, 'run settings');
  if (base?.ok === false) return base;
  const books =
    values.books === undefined ? null : readJson(values.books, bookEntriesSchema, 'book entries');
  if (books?.ok === false) return books;

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
  const wrongPressure = judgePressure(numbers['pressure-kpa'], values['pressure-kpa'] ?? '');
  if (wrongPressure !== null) return fail(wrongPressure);
  const columns =
    values.columns === undefined ? null : readJson(values.columns, columnMappingSchema, 'columns');
  if (columns?.ok === false) return columns;
  const common = {
    columns: columns?.value ?? null,
    files: positionals,
    outFolder: values.out ?? null,
    books: books?.value ?? null,
  };
  if (base === null && Object.keys(numbers).length === 0) {
    return succeed({ ...common, settings: null });
  }
  const settings = runSettingsSchema.safeParse(merge(base?.value ?? unattendedSettings, numbers));
  if (!settings.success)
    return fail(`The settings can't be used:\n${z.prettifyError(settings.error)}`);
  return succeed({ ...common, settings: settings.data });
}

function parse(args: readonly string[]) {
  const options = {
    ...numberOptions,
    settings: { type: 'string' },
    columns: { type: 'string' },
    books: { type: 'string' },
    out: { type: 'string' },
  } as const;
  try {
    return succeed(parseArgs({ args: withSignedNumbers(args), options, allowPositionals: true }));
  } catch (error) {
    return fail(`${error instanceof Error ? error.message : String(error)}\n${usage}`);
  }
}

/** `--charge-ml -5` means the number −5, not an option "-5". */
function withSignedNumbers(args: readonly string[]): string[] {
  return args.flatMap((text, index) => {
    const isName = text.startsWith('--') && !text.includes('=');
    const next = args[index + 1] ?? '';
    if (isName && signedNumber.test(next)) return [`${text}=${next}`];
    return signedNumber.test(text) && (args[index - 1] ?? '').startsWith('--') ? [] : [text];
  });
}

const signedNumber = /^-[\d.,]/;

/** What is wrong with the pressure, if anything; most often it is one in hPa or mmHg. */
function judgePressure(pressureKPa: number | undefined, text: string): string | null {
  const { minValue, maxValue } = runSettingsSchema.shape.pressure.shape.pressureKPa;
  const [lowest, highest] = [minValue ?? 0, maxValue ?? 0];
  if (pressureKPa === undefined || (pressureKPa >= lowest && pressureKPa <= highest)) return null;
  const judged = judgeBarometerEntry({ pressureKPa, altitudeM: 0 });
  if (judged.kind === 'other-unit') return `--pressure-kpa: ${judged.sentence}`;
  return `--pressure-kpa needs the air pressure at the still, ${lowest} to ${highest} kPa, not ${text}.`;
}

function readJson<T>(file: string, schema: z.ZodType<T>, what: string): Result<T, string> {
  try {
    const parsed = schema.safeParse(JSON.parse(readFileSync(file, 'utf8')));
    if (parsed.success) return succeed(parsed.data);
    return fail(`"${file}" holds no ${what}:\n${z.prettifyError(parsed.error)}`);
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
