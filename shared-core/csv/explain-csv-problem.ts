import { assertNever } from '../result/index.ts';
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
      return 'The file is empty.';
    case 'not-text':
      return 'The file is not text. Save it as CSV first.';
    case 'no-time-column':
      return `No time column was found${among(problem.titles)}. Give one the title "time_s" (seconds), or, in a table by volume, "volume_mL" (all distillate so far).`;
    case 'no-head-column':
      return `No head temperature column was found${among(problem.titles)}. Give one the title "head_degC" (°C).`;
    case 'no-such-column':
      return `There is no column "${problem.column}"${among(problem.titles)}. Name it as the file does, or by its number from 1.`;
    case 'unknown-unit':
      return `"${problem.unit.slice(0, 12)}" is no unit that can be converted. Use °C, °F, K, g, kg, mL, kPa, hPa, Pa or mmHg.`;
    case 'no-times-in-column':
      return `No time can be read in the column "${problem.column.slice(0, 40)}".`;
    case 'neither-time-nor-volume':
      return 'Say which column holds the time, or the volume of distillate (channel "receiver", mL).';
    case 'too-many-readings':
      return `The file holds more than ${problem.most / 1e6} million readings. Export a part of it, or every tenth reading.`;
    case 'no-readings': {
      const [first] = problem.rejectedRows;
      const example = first === undefined ? '' : ` Line ${first.line}: ${first.reason}.`;
      return `No row of the file holds a time and a temperature.${example}`;
    }
    default:
      return assertNever(problem);
  }
}

function among(titles: readonly string[]): string {
  const shown = titles.filter((title) => title.trim() !== '').slice(0, 12);
  return shown.length === 0
    ? ''
    : ` among ${shown.map((title) => `"${title.slice(0, 40)}"`).join(', ')}`;
}
