import { virtualRigs } from '#main';
import { pearFermentSetup, teachingRigs } from '#shared-core';
import type { VirtualProbeOptions } from './virtual-probe-options.ts';

/** What a person must enter in Prepare for this still, and what to beware of: one line each. */
export function stillInWords({ rig, speed, seed }: VirtualProbeOptions): readonly string[] {
  const { charge, pressureKPa } = pearFermentSetup();
  const { description, plates } = teachingRigs[virtualRigs[rig]];
  return [
    `In the pot: ${charge.volumeMl} mL of ${charge.strengthAbv} % vol. Air pressure: ${pressureKPa} kPa (${(10 * pressureKPa).toFixed(0)} hPa).`,
    `Rig: ${description}; ${plates} plates. Seed ${seed}. Enter these in Prepare, and this path as the port.`,
    ...(speed === 1
      ? []
      : [
          `It runs ${speed} times faster, the window records real time: rates, volumes and forecasts will be wrong.`,
        ]),
    'Type heat-on, heat-eased or heat-off for the heater. Ctrl+C pulls the plug.',
  ];
}
