import { z } from 'zod';
import { forecastViewSchema, stageCallSchema } from '../stages/index.ts';
import { estimateSchema } from '../uncertainty/index.ts';
import { alarmViewSchema } from './alarm.ts';
import { runEventSchema } from './run-event.ts';

/** The head as measured: calibrated, with its expanded uncertainty (k = 2, JCGM 100). */
export const headViewSchema = z.strictObject({
  temperatureC: z.number(),
  expandedUncertaintyK: z.number(),
  /** 0 while it can't be told from standing still; null without a head, or while too little is known even for that: one that leaves its plateau does not stand. */
  rateKPerMin: z.number().nullable(),
  ageS: z.number(),
});

/** Where the plateau lies at the local pressure: azeotrope to the dew temperature of the limit. */
export const plateauBandSchema = z.strictObject({
  pressureKPa: z.number(),
  pressureStandardUncertaintyKPa: z.number(),
  azeotropeC: z.number(),
  limitC: z.number(),
  leastStrengthAbv: z.number(),
  /** How much higher the probe is believed to read, with the pressure as entered [K]; 0 in records older than the field. */
  probeReadsHighK: z.number().default(0),
  /** Where that lies with 95 % probability [K]; null until the run itself has shown anything of it. */
  probeReadsHighRangeK: z
    .strictObject({ low: z.number(), high: z.number() })
    .nullable()
    .default(null),
});

/** What the head vapour is, from temperature and pressure alone. */
export const vapourViewSchema = z.strictObject({
  /** `unsettled`: the bulb has not been in vapour long enough, or moves too fast, to tell a strength. */
  kind: z.enum(['unsettled', 'below-azeotrope', 'ethanol-water', 'above-water']),
  alcoholByVolume: estimateSchema.nullable(),
  ethanolMassPercent: estimateSchema.nullable(),
  explanation: z.string(),
});

/** What is wrong with a channel beside the head, or that another probe brings the head, in words, as long as it is so. */
export const channelProblemSchema = z.strictObject({ problem: z.string(), fromS: z.number() });

/** Everything the window shows of a run at one moment. */
export const snapshotSchema = z.strictObject({
  timeS: z.number(),
  /** The one plain sentence at the top of Watch, and the act it asks for, if any. */
  sentence: z.string(),
  act: z.string().nullable(),
  stage: stageCallSchema,
  head: headViewSchema.nullable(),
  plateau: plateauBandSchema,
  vapour: vapourViewSchema.nullable(),
  forecast: forecastViewSchema.nullable(),
  alarms: z.array(alarmViewSchema),
  /** Most recent last; at most the last 20. */
  events: z.array(runEventSchema),
  heat: z.enum(['off', 'on', 'eased', 'unknown']),
  /** Channels beside the head that stand silent or contradict what is reckoned by; none in records older than the field. */
  channelProblems: z.array(channelProblemSchema).default([]),
});

export type ChannelProblem = z.infer<typeof channelProblemSchema>;
export type PlateauBand = z.infer<typeof plateauBandSchema>;
export type VapourView = z.infer<typeof vapourViewSchema>;
export type Snapshot = z.infer<typeof snapshotSchema>;
