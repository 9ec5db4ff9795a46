import { processingStepS, type RunStudy } from '#shared-core';
import { channelMeans, type MeanChannel, meanField, otherChannels } from './channel-means.ts';
import type { Table, TableCell, TableField } from './table.ts';

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

/** One row for each interval averaged over: what the tool makes of the readings, and every other channel beside it. */
export function processedTable(
  study: RunStudy,
  name: string,
  channels: readonly MeanChannel[] = otherChannels([study]),
): Table {
  const stepS = processingStepS(study.endS);
  const startMs = Date.parse(study.startedAtIso);
  const hasDate = Number.isFinite(startMs) && !study.rehearsal;
  const strength = (of: string, what: string): TableField => ({
    name: `head_vapour_${of}`,
    type: 'number',
    unit: '%{vol}',
    description: `Strength of the head vapour at 20 °C by the temperature as calibrated, without what the monitor learned of the probe during the run, ${what}; empty while no vapour bathes the bulb`,
    decimals: 2,
  });
  return {
    name,
    title: `${study.name}: processed`,
    fields: [
      { ...timeS, description: `Middle of the ${stepS} s averaged over`, decimals: 3 },
      ...(hasDate
        ? [
            {
              name: 'time_utc',
              type: 'datetime',
              unit: null,
              description: 'The same by the clock, UTC',
            } as const,
          ]
        : []),
      {
        name: 'head_degC',
        type: 'number',
        unit: 'Cel',
        description: 'Head temperature, calibrated, mean',
        decimals: 3,
      },
      {
        name: 'head_readings',
        type: 'integer',
        unit: null,
        description: 'Good readings in the mean',
      },
      {
        name: 'air_pressure_kPa',
        type: 'number',
        unit: 'kPa',
        description: 'Air pressure at the still',
        decimals: 3,
      },
      {
        name: 'above_azeotrope_K',
        type: 'number',
        unit: 'K',
        description: 'Head temperature, as calibrated, above the local azeotrope',
        decimals: 3,
      },
      strength('abv', 'best value'),
      strength('abv_low', 'low end of the 95 % interval'),
      strength('abv_high', 'high end of the 95 % interval'),
      { name: 'stage', type: 'string', unit: null, description: 'Stage as called by the monitor' },
      ...channels.map(meanField),
    ],
    *rows() {
      const means = channelMeans(study.inputs, channels, stepS);
      for (const row of study.rows) {
        const { vapourAbv } = row;
        yield [
          row.timeS,
          ...(hasDate ? [startMs + 1000 * row.timeS] : []),
          row.headC,
          row.readings,
          row.pressureKPa,
          row.aboveAzeotropeK,
          vapourAbv?.value ?? null,
          vapourAbv?.low ?? null,
          vapourAbv?.high ?? null,
          row.stage,
          ...means(row.timeS),
        ];
      }
    },
  };
}

const readingFields: readonly TableField[] = [
  timeS,
  { name: 'channel', type: 'string', unit: null, description: 'What was measured' },
  {
    name: 'value',
    type: 'number',
    unit: null,
    description: 'As recorded, uncorrected, in the unit beside it',
  },
  { name: 'unit', type: 'string', unit: null, description: 'Unit of the value' },
  { name: 'quality', type: 'string', unit: null, description: 'good, suspect or bad' },
];

function* readingRows({ inputs }: RunStudy): Generator<readonly TableCell[]> {
  for (const input of inputs) {
    if (input.kind !== 'reading') continue;
    yield [input.timeS, input.channel, input.value, input.unit, input.quality];
  }
}

/** Every reading of a run as it was recorded, one a row; for the workbook. */
export function readingsTable(study: RunStudy, name: string): Table {
  return {
    name,
    title: `${study.name}: readings as recorded`,
    fields: readingFields,
    rows: () => readingRows(study),
  };
}

/** Every reading of all runs and channels, one a row: for filtering and grouping. */
export function longReadingsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'readings',
    title: 'Readings of all runs and channels',
    fields: [runId, ...readingFields],
    *rows() {
      for (const study of studies) {
        for (const cells of readingRows(study)) yield [study.runId, ...cells];
      }
    },
  };
}

/** Stages of all runs. */
export function stagesTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'stages',
    title: 'Stages',
    fields: [
      runId,
      { name: 'stage', type: 'string', unit: null, description: 'Stage' },
      { name: 'from_s', type: 'number', unit: 's', description: 'Beginning' },
      { name: 'to_s', type: 'number', unit: 's', description: 'End' },
      because('Why it was called, in words'),
    ],
    *rows() {
      for (const { runId: id, verdicts, endS } of studies) {
        for (const { stage, fromS, toS, because } of verdicts.stages) {
          yield [id, stage, fromS, toS ?? endS, because];
        }
      }
    },
  };
}

/** Alarms and events of all runs. */
export function callsTable(studies: readonly RunStudy[]): Table {
  return {
    name: 'calls',
    title: 'Alarms and events',
    fields: [
      runId,
      { name: 'call', type: 'string', unit: null, description: 'Alarm or event' },
      {
        name: 'priority',
        type: 'string',
        unit: null,
        description: 'Of an alarm: high or medium; empty for an event',
      },
      { ...timeS, description: 'When it was raised' },
      { name: 'acknowledged_s', type: 'number', unit: 's', description: 'When somebody answered' },
      { name: 'cleared_s', type: 'number', unit: 's', description: 'When its condition ended' },
      because('Why, in words'),
    ],
    *rows() {
      for (const { runId: id, verdicts } of studies) {
        const rows: TableCell[][] = [
          ...verdicts.alarms.map(
            ({ alarm, priority, raisedS, acknowledgedS, clearedS, because }) => [
              id,
              alarm,
              priority,
              raisedS,
              acknowledgedS,
              clearedS,
              because,
            ],
          ),
          ...verdicts.events.map(({ event, timeS: at, because }) => [
            id,
            event,
            null,
            at,
            null,
            null,
            because,
          ]),
        ];
        yield* rows.sort((a, b) => Number(a[3]) - Number(b[3]));
      }
    },
  };
}
