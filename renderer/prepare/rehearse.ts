import { defaultRunSettings } from '#shared-core';
import type { Commands } from '../window/commands.ts';

/** Run seconds per second: a lesson's distillation in a few minutes, slow enough to answer prompts. */
export const rehearsalSpeeds = [20, 60, 120] as const;
export type RehearsalSpeed = (typeof rehearsalSpeeds)[number];

/** From one click to a distillation under way: simulated rig, usual settings, heat on. */
export async function rehearse(commands: Commands, timeScale: RehearsalSpeed): Promise<boolean> {
  return (
    (await commands.connect({ kind: 'demo', timeScale })) &&
    (await commands.start({ ...defaultRunSettings, name: 'Rehearsal: pear-juice ferment' })) &&
    (await commands.mark({ type: 'heat-on' }))
  );
}
