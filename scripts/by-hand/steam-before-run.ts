import { createRandom, pressureFromSteam, type RunSettings } from '#shared-core';
import type { ByHandRun } from './by-hand-run.ts';
import { drawByHand, type HeadProbe } from './draw-by-hand.ts';
import { boilingPoint } from './wilson-mixture.ts';

/** How old the reading is when the run is half over [h]. */
const ageH = 2;
/** A flask's neck is a little too cool more often than too hot [K]: somewhat worse than the program believes. */
const neckK = { low: -0.1, high: 0.05 } as const;
/** Ends of what a probe's error changes by from steam to plateau [K]; as the window believes of each kind, chosen there. */
const gapLimitK = { oneWire: 0.3, other: 0.05 } as const;
const settledK = 0.03;

/** What the monitor is told where nobody knew the air pressure, had the run's own probe been held in steam before; else as it was. */
export function settingsWithSteam(run: Pick<ByHandRun, 'name' | 'settings'>): RunSettings {
  const { settings } = run;
  if (settings.pressure.source !== 'assumed') return settings;
  const { still, probe } = drawByHand(run.name);
  const random = createRandom(`steam ${run.name}`);
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  const gapK = probe.quantumK === 0.0625 ? gapLimitK.oneWire : gapLimitK.other;
  const thenKPa = still.pressureKPa - ageH * still.pressureDriftKPaPerH;
  const boilingC = boilingPoint(0, thenKPa).temperatureC;
  const standsC =
    boilingC +
    between(neckK.low, neckK.high) +
    probe.offsetK +
    between(-gapK, gapK) +
    settledNoiseK(probe) * random.normal();
  const known = pressureFromSteam(
    {
      shownC: probe.quantumK * Math.round(standsC / probe.quantumK),
      standardUncertaintyK: Math.hypot(
        settledK,
        settledNoiseK(probe),
        probe.quantumK / Math.sqrt(12),
      ),
      gapStandardUncertaintyK: gapK / Math.sqrt(3),
    },
    { probe: settings.probe, altitudeM: null },
  );
  if (!known.ok) throw new Error(`${run.name}: ${known.error.sentence}`);
  return { ...settings, pressure: known.value.setting };
}

/** Of the mean over 45 s, of which what lasts for seconds is some ten readings' worth. */
function settledNoiseK({ noiseK }: HeadProbe): number {
  return noiseK / Math.sqrt(10);
}
