import { readFileSync } from 'node:fs';
import { z } from 'zod';

const placeSchema = z.object({ line: z.number(), column: z.number() });

/** What is used of the report schema that mutation tools share (mutation-testing-report-schema, version 2). */
const reportSchema = z.object({
  files: z.record(
    z.string(),
    z.object({
      source: z.string(),
      mutants: z.array(
        z.object({
          status: z.string(),
          replacement: z.string().optional(),
          location: z.object({ start: placeSchema, end: placeSchema }),
        }),
      ),
    }),
  ),
});

export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly original: string;
  readonly replacement: string;
  readonly verdict: 'killed' | 'survived' | 'timed-out' | 'not-drawn';
}

const verdicts: Readonly<Record<string, Mutant['verdict']>> = {
  Killed: 'killed',
  // Something outside a test failed, which fails a run of the tests as well.
  RuntimeError: 'killed',
  Survived: 'survived',
  NoCoverage: 'survived',
  Timeout: 'timed-out',
  // Types are not checked: only the draw of a sample ends so.
  CompileError: 'not-drawn',
};

/** The mutants of a report that have or could have a verdict; those that were left out (changed before any test begins) have none. */
export function readReport(file: string): readonly Mutant[] {
  const { files } = reportSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  return Object.entries(files).flatMap(([name, { source, mutants }]) => {
    const lines = source.split('\n');
    return mutants.flatMap(({ status, replacement = '', location: { start, end } }) => {
      const verdict = verdicts[status];
      const lastColumn = start.line === end.line ? end.column - 1 : undefined;
      const original = lines[start.line - 1]?.slice(start.column - 1, lastColumn) ?? '';
      return verdict === undefined
        ? []
        : [{ file: name, line: start.line, original, replacement, verdict }];
    });
  });
}
