import { parseArgs } from 'node:util';
// Straight from its folder: all of shared-core would have to be translated for it.
import { fail, type Result, succeed } from '../../shared-core/result/index.ts';

export interface StartOptions {
  /** Open a window by itself; scripts and the journeys do not want one. */
  readonly open: boolean;
  /** 0 lets the system choose. */
  readonly port: number;
  readonly runsFolder: string | null;
  /** Use the browser although the desktop shell could be had. */
  readonly browser: boolean;
  readonly help: boolean;
}

export const startUsage = `Usage: npm start -- [--no-open] [--browser] [--port N] [--runs-folder DIR]

  --no-open          print the address instead of opening a window
  --browser          use the browser although the desktop shell could be had
  --port N           serve the window on this port (default: a free one)
  --runs-folder DIR  keep the runs here (default: "Still Head Monitor" in your documents)`;

/** The command line of `npm start`, or one sentence about what is wrong with it. */
export function parseStartOptions(commandLine: readonly string[]): Result<StartOptions, string> {
  let values: Partial<Record<string, string | boolean>>;
  try {
    ({ values } = parseArgs({
      args: [...commandLine],
      options: {
        'no-open': { type: 'boolean' },
        browser: { type: 'boolean' },
        port: { type: 'string' },
        'runs-folder': { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    }));
  } catch (error) {
    return fail(error instanceof Error ? error.message : String(error));
  }
  const port = values.port === undefined ? 0 : Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    return fail(`--port needs a whole number from 0 to 65535, not "${values.port}".`);
  }
  const runsFolder = values['runs-folder'] ?? null;
  if (runsFolder === '') return fail('--runs-folder needs a folder.');
  return succeed({
    open: values['no-open'] !== true,
    port,
    runsFolder: runsFolder === null ? null : String(runsFolder),
    browser: values.browser === true,
    help: values.help === true,
  });
}
