import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type RunningApp, startApp } from '../../../scripts/testing/start-app.ts';
import { type OpenWindow, openWindow, takeFailure, type WindowSize } from './open-window.ts';

/** A running app with its window, and a folder of its own that vanishes with it. */
export interface JourneyBench extends OpenWindow {
  readonly app: RunningApp;
  readonly runsFolder: string;
  /** For cables and downloads. */
  readonly folder: string;
  /** For `onTestFailed`: what the app said, what the page complained about, what it looks like. */
  explain(): Promise<void>;
  /** Closes the window and stops the app; the folder stays until `tidy`. */
  stop(): Promise<void>;
  tidy(): Promise<void>;
}

export async function openBench(options: { size?: WindowSize } = {}): Promise<JourneyBench> {
  const folder = mkdtempSync(path.join(tmpdir(), 'journey-'));
  const runsFolder = path.join(folder, 'runs');
  const app = await startApp(runsFolder);
  const window = await openWindow(app.url, options);
  let stopped = false;
  async function stop(): Promise<void> {
    if (stopped) return;
    stopped = true;
    await window.close();
    await app.stop();
  }
  return {
    ...window,
    app,
    runsFolder,
    folder,
    async explain() {
      console.error(
        app.output(),
        window.complaints,
        await window.page.locator('body').textContent(),
      );
      await takeFailure(window.page);
    },
    stop,
    async tidy() {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
