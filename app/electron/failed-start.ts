import { writeFile } from 'node:fs/promises';
import type { App, Dialog } from 'electron';
import { reportWithoutServices } from '#main';
import { modelVersion } from '#shared-core';

export interface FailedStartDeps {
  readonly dialog: Pick<Dialog, 'showMessageBox' | 'showSaveDialog'>;
  /** What whoever mends the program needs to know, as text. */
  readonly makeReport: (because: string) => Promise<string>;
  readonly saveFile: (at: string, text: string) => Promise<void>;
  readonly exit: (code: number) => void;
}

/** Says why there is no window, and offers the report as it is shown; whatever fails on the way, the program ends. */
export async function sayWhyNot(error: unknown, deps: FailedStartDeps): Promise<void> {
  const { dialog, makeReport, saveFile, exit } = deps;
  const because = error instanceof Error ? error.message : String(error);
  try {
    const report = await makeReport(because).catch(() => null);
    const offered = report === null ? '' : `\n\nFor whoever mends this program:\n${report}`;
    const { response } = await dialog.showMessageBox({
      type: 'error',
      message: 'Still Head Monitor could not start',
      detail: `${because}${offered}`,
      buttons: ['Close', ...(report === null ? [] : ['Save this report …'])],
      defaultId: 0,
      cancelId: 0,
    });
    if (report === null || response !== 1) return;
    const { filePath } = await dialog.showSaveDialog({ defaultPath: 'problem-report.json' });
    if (filePath) await saveFile(filePath, report);
  } finally {
    exit(1);
  }
}

/** With the report of this computer, which only reads the folder of runs. */
export function failedStartDeps(
  app: Pick<App, 'getVersion' | 'exit'>,
  dialog: FailedStartDeps['dialog'],
  runsFolder: string,
): FailedStartDeps {
  const facts = { version: app.getVersion(), modelVersion, shell: 'electron' };
  return {
    dialog,
    makeReport: async (because) =>
      JSON.stringify(await reportWithoutServices(facts, runsFolder, because), null, 2),
    saveFile: (at, text) => writeFile(at, text),
    exit: (code) => app.exit(code),
  };
}
