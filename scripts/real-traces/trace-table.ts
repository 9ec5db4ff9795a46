import { calibrationLine } from '../measuring/calibration-line.ts';
import type { TraceJudgement } from './judge-trace.ts';

/** A trace's name and what was made of it; null where there is no head in it. */
export interface NamedJudgement {
  readonly name: string;
  readonly judgement: TraceJudgement | null;
}

const titles = [
  'trace',
  'hours',
  'stages (from minute)',
  'bend',
  'ending told',
  'limit',
  'heat-off call',
  'forecasts held',
  'half-way error',
  'alarms/h on the plateau',
];

/** One row a trace, one for all of them. */
export function traceTable(items: readonly NamedJudgement[]): readonly string[] {
  const rows = [titles, ...items.map(rowOf)];
  const widths = titles.map((_, column) =>
    Math.max(...rows.map((row) => row[column]?.length ?? 0)),
  );
  return [
    ...rows.map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    ),
    allOf(items),
    calibrationLine(
      'where the end fell in it',
      items.map(({ judgement }) => judgement?.places ?? []),
    ),
  ];
}

function rowOf({ name, judgement }: NamedJudgement): string[] {
  if (judgement === null) return [name, 'no head temperature for five minutes in it'];
  const { hours, truth, stages, callsS, endingsS, held, halfWayError } = judgement;
  return [
    name,
    hours.toFixed(1),
    stages.map(({ stage, fromS }) => `${stage} ${(fromS / 60).toFixed(0)}`).join(', '),
    minute(truth.bendS),
    endingsS.map((timeS) => against(timeS, truth.bendS, 'bend')).join(', ') || '–',
    minute(truth.limitS),
    callsS.map((timeS) => against(timeS, truth.limitS, 'limit')).join(', ') || '–',
    held === null ? '–' : `${held.count} of ${held.of}`,
    halfWayError === null ? '–' : `${(100 * halfWayError).toFixed(0)} %`,
    judgement.alarmsPerHour.toFixed(2),
  ];
}

const minute = (timeS: number | null): string =>
  timeS === null ? '–' : `${(timeS / 60).toFixed(1)} min`;

function against(timeS: number, markS: number | null, mark: string): string {
  if (markS === null) return `${(timeS / 60).toFixed(1)} min`;
  const lateS = Math.round(timeS - markS);
  return lateS < 0 ? `${-lateS} s before the ${mark}` : `${lateS} s after the ${mark}`;
}

function allOf(items: readonly NamedJudgement[]): string {
  const judged = items.flatMap(({ judgement }) => judgement?.held ?? []);
  const of = judged.reduce((sum, held) => sum + held.of, 0);
  const count = judged.reduce((sum, held) => sum + held.count, 0);
  const share = of === 0 ? 'no forecast to judge' : `${((100 * count) / of).toFixed(0)} % of ${of}`;
  return `${items.length} traces; the 90 % range of the forecast holds the end in: ${share}`;
}
