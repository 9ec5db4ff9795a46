import { createMonitor, defaultRunSettings, type RunSettings, type Verdicts } from '#shared-core';
import { limitTemperatureC } from '../../shared-core/equilibrium/index.ts';
import { mapEstimate } from '../../shared-core/uncertainty/index.ts';
import { placeOfTimeLeft } from '../measuring/place-of-time-left.ts';
import { placeTrace } from './place-trace.ts';
import { type TraceTruth, traceTruth } from './trace-truth.ts';

/** The bench a trace is set on: its plateau lies where strong vapour of ethanol and water stands at this pressure. */
const pressureKPa = 101.325;
const plateauC = 78.45;

/** How the monitor did on one trace. */
export interface TraceJudgement {
  readonly hours: number;
  readonly truth: TraceTruth;
  readonly stages: Verdicts['stages'];
  /** Heat-off prompts, and when the plateau was told to be ending [s]. */
  readonly callsS: readonly number[];
  readonly endingsS: readonly number[];
  /** Alarms in an hour up to the bend, or in all of a trace without one. */
  readonly alarmsPerHour: number;
  /** Forecasts before the limit whose range holds it, out of all; null where the trace never gets there. */
  readonly held: { readonly of: number; readonly count: number } | null;
  /** Where the limit fell in what each of them told, 0 … 1. */
  readonly places: readonly number[];
  /** Error of the forecast half-way, as a share of the time that was left. */
  readonly halfWayError: number | null;
}

/** Runs a series through the monitor as if live; null where it holds no head. */
export function judgeTrace(text: string, leastStrengthAbv: number): TraceJudgement | null {
  const placed = placeTrace(text, plateauC);
  if (placed === null) return null;
  const settings: RunSettings = {
    ...defaultRunSettings,
    attentionCheckS: null,
    leastStrengthAbv,
    pressure: {
      ...defaultRunSettings.pressure,
      pressureKPa,
      standardUncertaintyKPa: 0.3,
      source: 'barometer',
    },
  };
  const monitor = createMonitor(settings);
  for (const input of placed.inputs) monitor.push(input);
  const verdicts = monitor.verdicts();
  const truth = traceTruth(placed, plateauC, limitTemperatureC({ leastStrengthAbv, pressureKPa }));
  const endS = placed.inputs.at(-1)?.timeS ?? 0;
  const quietS = truth.bendS ?? endS;
  const quiet = verdicts.alarms.filter(({ raisedS }) => raisedS < quietS);
  const started = (event: string): number[] =>
    verdicts.events.filter((item) => item.event === event).map(({ timeS }) => timeS);
  return {
    hours: endS / 3600,
    truth,
    stages: verdicts.stages,
    callsS: verdicts.alarms
      .filter(({ alarm }) => alarm === 'plateau-departure')
      .map(({ raisedS }) => raisedS),
    endingsS: started('plateau-ending'),
    alarmsPerHour: (3600 * quiet.length) / quietS,
    ...judgeForecasts(verdicts, truth.limitS, started('first-fraction-ended')[0] ?? null),
  };
}

function judgeForecasts(
  { forecasts }: Verdicts,
  limitS: number | null,
  mainFromS: number | null,
): Pick<TraceJudgement, 'held' | 'places' | 'halfWayError'> {
  if (limitS === null || mainFromS === null) return { held: null, places: [], halfWayError: null };
  const made = forecasts.flatMap(({ madeS, mainFractionEndS }) =>
    mainFractionEndS !== null && madeS < limitS ? [{ madeS, end: mainFractionEndS }] : [],
  );
  const half = made.findLast(({ madeS }) => madeS <= (mainFromS + limitS) / 2);
  return {
    held: {
      of: made.length,
      count: made.filter(({ end }) => end.low <= limitS && limitS <= end.high).length,
    },
    places: made.map(({ madeS, end }) =>
      placeOfTimeLeft(
        limitS - madeS,
        mapEstimate(end, (endS) => endS - madeS),
      ),
    ),
    halfWayError: half === undefined ? null : (half.end.value - limitS) / (limitS - half.madeS),
  };
}
