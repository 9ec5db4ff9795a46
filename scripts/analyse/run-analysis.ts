import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import {
  analyseRun,
  defaultRunSettings,
  fail,
  type Result,
  succeed,
  type Verdicts,
  writeReadingsCsv,
} from '#shared-core';
import { readArguments } from './read-arguments.ts';
import { type AnalyseSource, readSource } from './read-source.ts';

/** The JSON text for standard output, or the sentence for standard error. */
export async function runAnalysis(args: readonly string[]): Promise<Result<string, string>> {
  const read = readArguments(args);
  if (!read.ok) return read;
  const { file, outFolder, settings } = read.value;
  const source = await readSource(file);
  if (!source.ok) return source;
  const { inputs, endS, problems } = source.value;
  const known = settings ?? source.value.settings ?? defaultRunSettings;
  const verdicts = analyseRun(known, inputs, endS);
  const result: Verdicts = { ...verdicts, problems: [...verdicts.problems, ...problems] };
  const json = `${JSON.stringify(result, null, 2)}\n`;
  const written = outFolder === null ? null : writeOut(outFolder, json, source.value, result);
  return written?.ok === false ? written : succeed(json);
}

function writeOut(
  folder: string,
  json: string,
  { inputs, endS }: AnalyseSource,
  { stages }: Verdicts,
): Result<void, string> {
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path.join(folder, 'analysis.json'), json);
    const pieces = [...writeReadingsCsv({ inputs, stages, endS }, 'csv')];
    writeFileSync(path.join(folder, 'readings.csv'), pieces.join(''));
    return succeed(undefined);
  } catch (error) {
    return fail(`"${folder}" can't be written: ${error instanceof Error ? error.message : error}`);
  }
}
