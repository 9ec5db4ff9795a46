import { statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { readTextFile } from '#main';
import { fail, type Result, succeed } from '#shared-core';
import {
  explainFermentCsvProblem,
  type FermentFacts,
  fermentStates,
  judgeFerment,
  readFermentCsv,
} from '../../shared-core/ferment/index.ts';

export const fermentUsage = `Usage: npm run --silent analyse -- FILE.csv --kind ferment [options]
  --volume-ml 1000   volume of the ferment
  --sugar-g 170      all the sugar it began with, where that is known`;

const intervalSchema = z.object({ low: z.number(), value: z.number(), high: z.number() });

/** What is printed of a ferment, judged at its last row; ends of intervals hold 90 %. */
export const printedFermentSchema = z.object({
  kind: z.literal('ferment'),
  strengthAbv: intervalSchema.nullable(),
  state: z.enum(fermentStates),
  because: z.string(),
  expectedEndGravity: intervalSchema.nullable(),
  finishH: intervalSchema.nullable(),
  problems: z.array(z.string()),
});

export type PrintedFerment = z.infer<typeof printedFermentSchema>;

/** Volume that is taken where none was given [mL]. */
const usualVolumeMl = 1000;
const largestBytes = 50_000_000;

/** Whether the command line asks for a ferment. */
export function asksForFerment(args: readonly string[]): boolean {
  return args.some(
    (text, index) =>
      text === '--kind=ferment' || (text === '--kind' && args[index + 1] === 'ferment'),
  );
}

/** Judges the table of a ferment and hands the JSON text to `print`; or says in a sentence why it can't begin. */
export async function analyseFerment(
  args: readonly string[],
  print: (json: string) => void,
): Promise<Result<void, string>> {
  const read = readFermentArguments(args);
  if (!read.ok) return read;
  const { file, facts, isVolumeGiven } = read.value;
  const found = statSync(file, { throwIfNoEntry: false });
  if (found === undefined) return fail(`There is no file "${file}".`);
  if (!found.isFile()) return fail(`"${file}" is no ordinary file.`);
  if (found.size > largestBytes) {
    return fail(`"${file}" is larger than ${largestBytes / 1e6} MB, more than any ferment's log.`);
  }
  const text = await readTextFile(file);
  if (!text.ok) return fail(`"${file}" can't be read: ${text.error.message}`);
  print(`${JSON.stringify(judgeTable(text.value, facts, isVolumeGiven), null, 2)}\n`);
  return succeed(undefined);
}

function judgeTable(text: string, facts: FermentFacts, isVolumeGiven: boolean): PrintedFerment {
  const table = readFermentCsv(text);
  if (!table.ok) {
    const problem = explainFermentCsvProblem(table.error);
    return {
      kind: 'ferment',
      strengthAbv: null,
      state: 'not-started',
      because: 'No reading can be used, so nothing is known of it.',
      expectedEndGravity: null,
      finishH: null,
      problems: [problem],
    };
  }
  const { readings, problems } = table.value;
  const { state, because, strengthAbv, expectedEndGravity, finishH, ...verdict } = judgeFerment(
    readings,
    facts,
  );
  const needsVolume = readings.some(({ massG }) => massG !== null);
  return {
    kind: 'ferment',
    strengthAbv,
    state,
    because,
    expectedEndGravity,
    finishH,
    problems: [
      ...problems,
      ...verdict.problems,
      ...(needsVolume && !isVolumeGiven
        ? [`The volume was taken as ${usualVolumeMl} mL; give the real one with --volume-ml.`]
        : []),
    ],
  };
}

interface FermentArguments {
  readonly file: string;
  readonly facts: FermentFacts;
  readonly isVolumeGiven: boolean;
}

function readFermentArguments(args: readonly string[]): Result<FermentArguments, string> {
  const options = {
    kind: { type: 'string' },
    'volume-ml': { type: 'string' },
    'sugar-g': { type: 'string' },
  } as const;
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    const [file] = positionals;
    if (file === undefined || positionals.length > 1) {
      return fail(`Say which one file to judge.\n${fermentUsage}`);
    }
    const volume = readNumber('--volume-ml', values['volume-ml'], 1, 1e7);
    if (!volume.ok) return volume;
    const sugar = readNumber('--sugar-g', values['sugar-g'], 0.1, 1e7);
    if (!sugar.ok) return sugar;
    const volumeMl = volume.value ?? usualVolumeMl;
    return succeed({
      file,
      facts: { volumeMl, sugarG: sugar.value },
      isVolumeGiven: volume.value !== null,
    });
  } catch (error) {
    return fail(`${error instanceof Error ? error.message : String(error)}\n${fermentUsage}`);
  }
}

function readNumber(
  option: string,
  text: string | undefined,
  low: number,
  high: number,
): Result<number | null, string> {
  if (text === undefined) return succeed(null);
  const value = Number(text.replace(',', '.'));
  return text.trim() !== '' && value >= low && value <= high
    ? succeed(value)
    : fail(`${option} needs a number from ${low} to ${high}, not "${text}".`);
}
