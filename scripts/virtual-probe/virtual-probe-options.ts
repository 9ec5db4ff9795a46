import { parseArgs } from 'node:util';
import { isVirtualRigName, type VirtualRigName, virtualRigs } from '#main';
import { fail, type Result, succeed } from '#shared-core';

export interface VirtualProbeOptions {
  readonly rig: VirtualRigName;
  /** Seconds of the still for each second of the clock. */
  readonly speed: number;
  readonly seed: number;
  /** A second path to the line, one that people can remember. */
  readonly link: string | null;
  /** Cold until `heat-on` is typed. */
  readonly cold: boolean;
  readonly help: boolean;
}

const rigNames = Object.keys(virtualRigs).join(', ');

export const virtualProbeUsage = `Usage: npm run virtual-probe -- [--rig NAME] [--cold] [--seed N] [--link PATH] [--speed N]

  --rig NAME   one of: ${rigNames} (default: glass-bead-column)
  --cold       begin with a cold still; type heat-on to heat it
  --seed N     another whole number gives other noise (default: 1)
  --link PATH  reach the line under this path too
  --speed N    let the still run 1 to 240 times faster (default: 1). The window cannot know of it and
               records real time: rates, volumes and forecasts of such a run mean nothing. To see a whole
               run in minutes, choose the rehearsal inside the app instead.

While it runs, type heat-on, heat-eased or heat-off and press Enter to turn the simulated heater. Ctrl+C pulls the
plug. It needs pseudo terminals: Linux and macOS have them, Windows has none.`;

/** The command line of the virtual probe, or one sentence about what is wrong with it. */
export function parseVirtualProbeOptions(
  commandLine: readonly string[],
): Result<VirtualProbeOptions, string> {
  try {
    const { values } = parseArgs({
      args: [...commandLine],
      options: {
        rig: { type: 'string', default: 'glass-bead-column' },
        speed: { type: 'string', default: '1' },
        seed: { type: 'string', default: '1' },
        link: { type: 'string' },
        cold: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
    const { rig, link, cold, help } = values;
    const speed = Number(values.speed);
    const seed = Number(values.seed);
    if (!isVirtualRigName(rig)) return fail(`--rig is one of: ${rigNames}.`);
    if (!(speed >= 1 && speed <= 240)) return fail('--speed is a number from 1 to 240.');
    if (!Number.isSafeInteger(seed)) return fail('--seed is a whole number.');
    return succeed({ rig, speed, seed, link: link ?? null, cold, help });
  } catch (error) {
    return fail(error instanceof Error ? error.message : String(error));
  }
}
