import { assertNever } from '../result/index.ts';
import { asGiven, worded } from '../wording/index.ts';
import type { CsvProblem } from './read-readings-csv.ts';

/**
 * A plain sentence that says what is wrong with a CSV file and what would help.
 *
 * @example
 * explainCsvProblem({ kind: 'empty' }) // => "The file is empty."
 */
export function explainCsvProblem(problem: CsvProblem): string {
  switch (problem.kind) {
    case 'empty':
      return worded('The file is empty.');
    case 'not-text':
      return worded('The file is not text. Save it as CSV first.');
    case 'no-time-column':
      return worded(
        'No time column was found{among}. Give one the title "time_s" (seconds), or, in a table by volume, "volume_mL" (all distillate so far).',
        { among: among(problem.titles) },
      );
    case 'not-a-total': {
      const title = asGiven(problem.title.trim().slice(0, 40));
      return problem.line === null
        ? worded(
            'The volume in "{title}" never grows. A table by volume needs all distillate so far: add the fractions up.',
            { title },
          )
        : worded(
            'The volume in "{title}" falls in line {line}. A table by volume needs all distillate so far: where the receiver was changed, add what was there before; of what is left in the flask, take what is gone.',
            { title, line: problem.line },
          );
    }
    case 'no-head-column':
      return worded(
        'No head temperature column was found{among}. Give one the title "head_degC" (°C).',
        { among: among(problem.titles) },
      );
    case 'no-such-column':
      return worded(
        'There is no column "{column}"{among}. Name it as the file does, or by its number from 1.',
        { column: asGiven(problem.column), among: among(problem.titles) },
      );
    case 'unknown-unit':
      return worded(
        '"{unit}" is no unit that can be converted. Use °C, °F, K, g, kg, mL, kPa, hPa, Pa or mmHg.',
        { unit: asGiven(problem.unit.slice(0, 12)) },
      );
    case 'no-times-in-column':
      return worded('No time can be read in the column "{column}".', {
        column: asGiven(problem.column.slice(0, 40)),
      });
    case 'neither-time-nor-volume':
      return worded(
        'Say which column holds the time, or the volume of distillate (channel "receiver", mL).',
      );
    case 'too-many-readings':
      return worded(
        'The file holds more than {millions} million readings. Export a part of it, or every tenth reading.',
        { millions: problem.most / 1e6 },
      );
    case 'no-readings': {
      const [first] = problem.rejectedRows;
      if (first === undefined) return worded('No row of the file holds a time and a temperature.');
      return worded('No row of the file holds a time and a temperature. Line {line}: {reason}.', {
        line: first.line,
        reason: first.reason,
      });
    }
    default:
      return assertNever(problem);
  }
}

function among(titles: readonly string[]): string {
  const shown = titles.filter((title) => title.trim() !== '').slice(0, 12);
  return shown.length === 0
    ? ''
    : worded(' among {titles}', {
        titles: asGiven(shown.map((title) => `"${title.slice(0, 40)}"`).join(', ')),
      });
}
