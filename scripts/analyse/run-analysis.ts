import {
  type BookEntries,
  fail,
  type Result,
  type RunByVolume,
  type RunSettings,
  runByVolume,
  succeed,
  volumeReadings,
} from '#shared-core';
import { verdictsByVolume } from '../../shared-core/by-volume/index.ts';
import { analyseRun } from '../../shared-core/monitor/index.ts';
import { analyseFerment, asksForFerment } from './ferment-analysis.ts';
import { printedByVolume, printedVerdicts } from './printed-verdicts.ts';
import { readArguments, unattendedSettings } from './read-arguments.ts';
import { type AnalyseSource, readSource } from './read-source.ts';
import { type AnalysedFile, writeOut } from './write-out.ts';

/**
 * Hands the JSON text to `print`, then writes the pack if one is wanted; whatever goes wrong comes back
 * as a sentence for standard error. A pack that can't be written costs nothing of what was printed.
 */
export async function runAnalysis(
  args: readonly string[],
  print: (json: string) => void,
): Promise<Result<void, string>> {
  try {
    return asksForFerment(args) ? await analyseFerment(args, print) : await analyse(args, print);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return fail(`The analysis was broken off by something unexpected: ${message}`);
  }
}

async function analyse(
  args: readonly string[],
  print: (json: string) => void,
): Promise<Result<void, string>> {
  const read = readArguments(args);
  if (!read.ok) return read;
  const { files, outFolder, settings, books, columns } = read.value;
  const analysed: AnalysedFile[] = [];
  for (const file of files) {
    const source = await readSource(file, columns ?? undefined);
    if (!source.ok) return source;
    const { inputs, endS, problems } = source.value;
    const known = patient(
      settings ?? source.value.settings ?? unattendedSettings,
      source.value.silenceS,
    );
    const isStated = settings !== null || source.value.settings !== null;
    const table =
      volumeReadings(inputs) === null ? null : againstVolume(source.value, known, books);
    const verdicts = table === null ? analyseRun(known, inputs, endS) : verdictsByVolume(table);
    analysed.push({
      file,
      source: source.value,
      settings: known,
      verdicts: { ...verdicts, problems: [...verdicts.problems, ...problems] },
      byVolume: table === null ? null : printedByVolume(table, isStated),
    });
  }
  const json = `${JSON.stringify(answer(analysed), null, 2)}\n`;
  print(json);
  return outFolder === null ? succeed(undefined) : writeOut(outFolder, json, analysed, books);
}

/** A slow logger's pauses are no silence of its probe. */
function patient(settings: RunSettings, loggerSilenceS: number): RunSettings {
  const { probe } = settings;
  return { ...settings, probe: { ...probe, silenceS: Math.max(probe.silenceS, loggerSilenceS) } };
}

/** One file's verdicts as they are; several under their names. */
function answer(analysed: readonly AnalysedFile[]): unknown {
  const [first] = analysed;
  if (first !== undefined && analysed.length === 1) return printed(first);
  return { runs: analysed.map((one) => ({ file: one.file, ...printed(one) })) };
}

function printed({ verdicts, byVolume }: AnalysedFile) {
  return { ...printedVerdicts(verdicts), ...(byVolume === null ? {} : { byVolume }) };
}

/** A table without times. */
function againstVolume(
  { inputs }: AnalyseSource,
  settings: RunSettings,
  books: BookEntries | null,
): RunByVolume | null {
  const refluxRatio = books?.refluxRatio ?? null;
  return runByVolume({
    settings,
    inputs,
    rows: [],
    refluxRatio,
    distillate: null,
  });
}
