import { parseArgs } from 'node:util';
import { fail, type Result, succeed } from '#shared-core';

export interface MeasureOptions {
  /** How long readings are timed at 10 Hz. */
  readonly minutes: number;
  /** Readings loaded before. */
  readonly readings: number;
  readonly view: 'watch' | 'understand' | 'classroom';
  readonly width: number;
  readonly height: number;
  /** The page's processor slowed down so many times. */
  readonly slower: number;
  /** Hours of run simulated for the memory figures; 0 leaves them out. */
  readonly hours: number;
  /** Where a profile of the page's processor time goes, for the developer tools. */
  readonly profile: string | null;
}

export const measureUsage = `Usage: npm run measure -- [--minutes N] [--view watch|understand|classroom]
         [--readings N] [--size WxH] [--slower N] [--hours N] [--profile FILE]

  --minutes N    time the way from port to screen so long, at 10 readings a second (default 5; 0 leaves it out)
  --view V       what is open meanwhile: Watch, Watch with the diagrams, the classroom view (default watch)
  --readings N   load so many readings before (default 0)
  --size WxH     size of the window in CSS pixels (default 1280x720)
  --slower N     slow the page's processor down N times (default 1)
  --hours N      pass N hours of a run at 240 times the speed and weigh the page's memory (default 0)
  --profile FILE write a processor profile of the page, to be opened in a browser's developer tools`;

const views = ['watch', 'understand', 'classroom'] as const;

/** The command line of the measurement, or one sentence about what is wrong with it. */
export function parseMeasureOptions(
  commandLine: readonly string[],
): Result<MeasureOptions, string> {
  try {
    const { values } = parseArgs({
      args: [...commandLine],
      options: {
        minutes: { type: 'string', default: '5' },
        view: { type: 'string', default: 'watch' },
        readings: { type: 'string', default: '0' },
        size: { type: 'string', default: '1280x720' },
        slower: { type: 'string', default: '1' },
        hours: { type: 'string', default: '0' },
        profile: { type: 'string' },
      },
    });
    const view = views.find((known) => known === values.view);
    if (view === undefined) return fail(`--view is one of: ${views.join(', ')}.`);
    const [, width, height] = /^(\d{2,5})x(\d{2,5})$/.exec(values.size) ?? [];
    if (width === undefined) return fail('--size is a width and a height, such as 1280x720.');
    const [minutes, readings, slower, hours] = (
      ['minutes', 'readings', 'slower', 'hours'] as const
    ).map((name) => Number(values[name])) as [number, number, number, number];
    if (!(minutes >= 0 && readings >= 0 && slower >= 1 && hours >= 0)) {
      return fail('--minutes, --readings and --hours are numbers from 0, --slower is one from 1.');
    }
    return succeed({
      minutes,
      readings,
      view,
      width: Number(width),
      height: Number(height),
      slower,
      hours,
      profile: values.profile ?? null,
    });
  } catch (error) {
    return fail(error instanceof Error ? error.message : String(error));
  }
}
