import type { AlarmView } from '#shared-core';
import type { Commands } from '../parts/index.ts';
import { answeredByHeatOff } from './asks-for-heat-off.ts';

/** Marks that the heat is off and answers every prompt that asked for it: nobody has to say it twice. */
export async function takeHeatOff(
  commands: Pick<Commands, 'mark' | 'acknowledge'>,
  alarms: readonly AlarmView[],
): Promise<void> {
  if (!(await commands.mark({ type: 'heat-off' }))) return;
  for (const alarm of answeredByHeatOff(alarms)) await commands.acknowledge(alarm);
}
