import {
  defaultRunSettings,
  pearFermentSetup,
  type RunSettings,
  say,
  teachingRigs,
} from '#shared-core';
import type { Commands } from '../parts/index.ts';

/** Run seconds per second: a lesson's distillation in a few minutes, slow enough to answer prompts. */
export const rehearsalSpeeds = [20, 60, 120] as const;
export type RehearsalSpeed = (typeof rehearsalSpeeds)[number];

const rehearsalRig = 'glass-bead-column';

/** What the simulated still was charged with, so that the estimates of the rehearsal are about it. */
export function rehearsalSettings(): RunSettings {
  const { charge, pressureKPa } = pearFermentSetup();
  const { description, plates } = teachingRigs.glassBeads;
  return {
    ...defaultRunSettings,
    name: say('Rehearsal: pear-juice ferment'),
    // Once in the run: with seconds that fly, the usual quarter of an hour would ask every few seconds.
    attentionCheckS: 2400,
    charge: {
      volumeMl: charge.volumeMl,
      strengthAbv: charge.strengthAbv,
      standardUncertaintyAbv: 0.5,
    },
    rig: { ...defaultRunSettings.rig, description, plates },
    pressure: {
      pressureKPa,
      standardUncertaintyKPa: 0.1,
      source: 'barometer',
      altitudeM: null,
    },
  };
}

/** From one click to a distillation under way: simulated rig, usual settings, heat on. */
export async function rehearse(commands: Commands, timeScale: RehearsalSpeed): Promise<boolean> {
  if (!(await commands.connect({ kind: 'demo', rig: rehearsalRig, timeScale }))) return false;
  if (!(await commands.start(rehearsalSettings()))) return false;
  return commands.mark({ type: 'heat-on' });
}
