/**
 * Runs the monitor over a recorded temperature curve as if live and prints its verdicts as JSON.
 * Nothing else goes to standard output; what can't be used ends with a sentence and exit code 2.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { analyseRun, defaultRunSettings, type Verdicts, writeReadingsCsv } from '#shared-core';
import { readArguments } from './analyse/read-arguments.ts';
import { type AnalyseSource, readSource } from './analyse/read-source.ts';

function refuse(sentence: string): never {
  console.error(sentence);
  process.exit(2);
}

const read = readArguments(process.argv.slice(2));
if (!read.ok) refuse(read.error);
const { file, outFolder, settings } = read.value;
const source = await readSource(file);
if (!source.ok) refuse(source.error);

const { inputs, endS, problems } = source.value;
const verdicts = analyseRun(settings ?? source.value.settings ?? defaultRunSettings, inputs, endS);
const result: Verdicts = { ...verdicts, problems: [...verdicts.problems, ...problems] };
const json = `${JSON.stringify(result, null, 2)}\n`;
if (outFolder !== null) writeOut(outFolder, json, source.value, result);
process.stdout.write(json);

function writeOut(folder: string, text: string, run: AnalyseSource, { stages }: Verdicts): void {
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path.join(folder, 'analysis.json'), text);
    const table = { inputs: run.inputs, stages, endS: run.endS };
    writeFileSync(path.join(folder, 'readings.csv'), [...writeReadingsCsv(table, 'csv')].join(''));
  } catch (error) {
    refuse(`"${folder}" can't be written: ${error instanceof Error ? error.message : error}`);
  }
}
