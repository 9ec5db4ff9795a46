import { type RunInput, type RunSettings, say } from '#shared-core';
import type { RecordedRun } from '../replay/index.ts';

/** What is supposed instead of what was. */
export interface WhatIfChange {
  readonly pressureKPa: number;
  readonly leastStrengthAbv: number;
  /** Null: not known. */
  readonly plates: number | null;
}

/** What the run itself was judged by. */
export function changeAsRecorded(settings: RunSettings): WhatIfChange {
  return {
    pressureKPa: settings.pressure.pressureKPa,
    leastStrengthAbv: settings.leastStrengthAbv,
    plates: settings.rig.plates,
  };
}

/**
 * The same readings and marks under other suppositions. Another pressure only makes sense if nothing in the
 * record puts the old one back, so readings of the air pressure are then left out.
 */
export function whatIfRun(run: RecordedRun, change: WhatIfChange): RecordedRun {
  const { identity, inputs, endS } = run;
  const { settings } = identity;
  const isOtherPressure = change.pressureKPa !== settings.pressure.pressureKPa;
  return {
    identity: {
      ...identity,
      origin: 'what-if',
      name: say('{name}, what if', { name: identity.name }),
      settings: {
        ...settings,
        leastStrengthAbv: change.leastStrengthAbv,
        rig: { ...settings.rig, plates: change.plates },
        pressure: { ...settings.pressure, pressureKPa: change.pressureKPa },
      },
    },
    inputs: isOtherPressure ? inputs.filter((input) => !tellsAirPressure(input)) : inputs,
    endS,
  };
}

function tellsAirPressure(input: RunInput): boolean {
  return (
    (input.kind === 'reading' && input.channel === 'air-pressure') ||
    (input.kind === 'mark' && input.mark.type === 'pressure-read')
  );
}

/** What differs between two suppositions, for saying so; none when nothing does. */
export function changedParts(before: WhatIfChange, after: WhatIfChange): readonly string[] {
  return [
    ...(after.pressureKPa === before.pressureKPa ? [] : [say('air pressure')]),
    ...(after.leastStrengthAbv === before.leastStrengthAbv ? [] : [say('strength limit')]),
    ...(after.plates === before.plates ? [] : [say('plates')]),
  ];
}
