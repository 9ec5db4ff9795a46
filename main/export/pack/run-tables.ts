import { offsetWords, processingStepS, type Reading, type RunStudy } from '#shared-core';
import { channelMeans, type MeanChannel, meanField, otherChannels } from './channel-means.ts';
import {
  amount,
  byColumns,
  type Column,
  type Table,
  type TableCell,
  type TableField,
  wallMs,
  words,
} from './table.ts';

const runId: TableField = {
  name: 'run_id',
  type: 'string',
  unit: null,
  description: 'Which run',
};

const timeS: TableField = {
  name: 'time_s',
  type: 'number',
  unit: 's',
  description: 'Time since the run began, monotonic',
};

const because = (description: string): TableField => ({
  name: 'because',
  type: 'string',
  unit: null,
  description,
  isSentence: true,
});

/** An interval averaged over, and the means of the channels beside the head in it. */
type Interval = RunStudy['rows'][number] & { readonly others: readonly TableCell[] };

/** One row for each interval averaged over: what the tool makes of the readings, and every other channel beside it. */
export function processedTable(
  study: RunStudy,
  name: string,
  channels: readonly MeanChannel[] = otherChannels([study]),
): Table {
  const stepS = processingStepS(study.endS);
  const startMs = wallMs(study.startedAtIso);
  const hasDate = Number.isFinite(startMs) && !study.rehearsal;
  const columns: readonly Column<Interval>[] = [
    {
      ...timeS,
      description: `Middle of the ${stepS} s averaged over`,
      decimals: 3,
      value: (row) => row.timeS,
    },
    ...(hasDate
      ? [
          {
            name: 'time_local',
            type: 'datetime',
            unit: null,
            description: `The same by the computer’s clock, ${offsetWords(study.startedAtIso)}`,
            value: (row: Interval) => startMs + 1000 * row.timeS,
          } as const,
        ]
      : []),
    amount('head_degC', 'Cel', 'Head temperature, calibrated, mean', ({ headC }) => headC, 3),
    {
      name: 'head_readings',
      type: 'integer',
      unit: null,
      description: 'Good readings in the mean',
      value: ({ readings }) => readings,
    },
    amount(
      'air_pressure_kPa',
      'kPa',
      'Air pressure at the still',
      ({ pressureKPa }) => pressureKPa,
      3,
    ),
    amount(
      'above_azeotrope_K',
      'K',
      'Head temperature, as calibrated, above the local azeotrope',
      ({ aboveAzeotropeK }) => aboveAzeotropeK,
      3,
    ),
    strength('abv', 'best value', 'value'),
    strength('abv_low', 'low end of the 95 % interval', 'low'),
    strength('abv_high', 'high end of the 95 % interval', 'high'),
    words('stage', 'Stage as called by the monitor', ({ stage }) => stage),
    ...channels.map(
      (channel, index): Column<Interval> => ({
        ...meanField(channel),
        value: ({ others }) => others[index] ?? null,
      }),
    ),
  ];
  return {
    name,
    title: `${study.name}: processed`,
    ...byColumns(columns, function* () {
      const means = channelMeans(study.inputs, channels, stepS);
      for (const row of study.rows) yield { ...row, others: means(row.timeS) };
    }),
  };
}

function strength(of: string, what: string, end: 'value' | 'low' | 'high'): Column<Interval> {
  return {
    name: `head_vapour_${of}`,
    type: 'number',
    unit: '%{vol}',
    description: `Strength of the head vapour at 20 °C as the monitor told it once a minute, straight in between, with what it learned of probe and air pressure during the run, ${what}; empty where it told none`,
    decimals: 2,
    value: ({ vapourAbv }) => vapourAbv?.[end] ?? null,
  };
}

const readingColumns: readonly Column<Reading>[] = [
  { ...timeS, value: (reading) => reading.timeS },
  words('channel', 'What was measured', ({ channel }) => channel),
  {
    name: 'value',
    type: 'number',
    unit: null,
    description: 'As recorded, uncorrected, in the unit beside it',
    value: ({ value }) => value,
  },
  words('unit', 'Unit of the value', ({ unit }) => unit),
  words('quality', 'good, suspect or bad', ({ quality }) => quality),
];

function* readingsOf({ inputs, runId }: RunStudy) {
  for (const input of inputs) if (input.kind === 'reading') yield { ...input, runId };
}

/** Every reading of a run as it was recorded, one a row; for the workbook. */
export function readingsTable(study: RunStudy, name: string): Table {
  return {
    name,
    title: `${study.name}: readings as recorded`,
    ...byColumns(readingColumns, () => readingsOf(study)),
  };
}

/** Every reading of all runs and channels, one a row: for filtering and grouping. */
export function longReadingsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'readings',
    title: 'Readings of all runs and channels',
    ...byColumns([{ ...runId, value: (row) => row.runId }, ...readingColumns], function* () {
      for (const study of studies) yield* readingsOf(study);
    }),
  };
}

interface StageOfRun {
  readonly runId: string;
  readonly stage: string;
  readonly fromS: number;
  readonly toS: number;
  readonly because: string;
}

const stageColumns: readonly Column<StageOfRun>[] = [
  { ...runId, value: (row) => row.runId },
  words('stage', 'Stage', ({ stage }) => stage),
  amount('from_s', 's', 'Beginning', ({ fromS }) => fromS),
  amount('to_s', 's', 'End', ({ toS }) => toS),
  { ...because('Why it was called, in words'), value: (row) => row.because },
];

/** Stages of all runs. */
export function stagesTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'stages',
    title: 'Stages',
    ...byColumns(stageColumns, () =>
      studies.flatMap(({ runId, verdicts, endS }) =>
        verdicts.stages.map((span) => ({ ...span, runId, toS: span.toS ?? endS })),
      ),
    ),
  };
}

/** An alarm or an event, as one row. */
interface Call {
  readonly runId: string;
  readonly call: string;
  readonly priority: string | null;
  readonly timeS: number;
  readonly acknowledgedS: number | null;
  readonly clearedS: number | null;
  readonly because: string;
}

/** Alarms and events of all runs. */
export function callsTable(studies: readonly RunStudy[]): Table {
  const columns: readonly Column<Call>[] = [
    { ...runId, value: (row) => row.runId },
    words('call', 'Alarm or event', ({ call }) => call),
    words(
      'priority',
      'Of an alarm: high or medium; empty for an event',
      ({ priority }) => priority,
    ),
    { ...timeS, description: 'When it was raised', value: (row) => row.timeS },
    amount('acknowledged_s', 's', 'When somebody answered', ({ acknowledgedS }) => acknowledgedS),
    amount('cleared_s', 's', 'When its condition ended', ({ clearedS }) => clearedS),
    { ...because('Why, in words'), value: (row) => row.because },
  ];
  return {
    name: 'calls',
    title: 'Alarms and events',
    ...byColumns(columns, () => studies.flatMap(callsOf)),
  };
}

function callsOf({ runId, verdicts }: RunStudy): readonly Call[] {
  return [
    ...verdicts.alarms.map(
      ({ alarm: call, raisedS: timeS, ...rest }): Call => ({ ...rest, runId, call, timeS }),
    ),
    ...verdicts.events.map(
      ({ event: call, timeS, because }): Call => ({
        runId,
        call,
        priority: null,
        timeS,
        acknowledgedS: null,
        clearedS: null,
        because,
      }),
    ),
  ].sort((a, b) => a.timeS - b.timeS);
}
