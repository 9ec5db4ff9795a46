import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { chromium, type Page } from 'playwright-core';
import { comeWelcomed } from '../../../scripts/testing/come-welcomed.ts';
import { findChromium } from '../../../scripts/testing/find-chromium.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';

export interface OpenWindow {
  readonly page: Page;
  /** What the page complained about: uncaught errors, console errors, refused loads. */
  readonly complaints: readonly string[];
  close(): Promise<void>;
}

/** The three places the window must work in: a projector, a laptop, a phone. */
export const windowSizes = {
  projector: { width: 1280, height: 720 },
  laptop: { width: 1440, height: 900 },
  phone: { width: 390, height: 844 },
} as const;

export type WindowSize = keyof typeof windowSizes;

/** Opens the address in Chromium with a profile of its own. */
export async function openWindow(
  url: string,
  options: { readonly size?: WindowSize; readonly dark?: boolean; readonly isFirst?: boolean } = {},
): Promise<OpenWindow> {
  const profile = mkdtempSync(path.join(tmpdir(), 'profile-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    headless: true,
    viewport: windowSizes[options.size ?? 'projector'],
    colorScheme: options.dark === true ? 'dark' : 'light',
    acceptDownloads: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
  const page = context.pages()[0] ?? (await context.newPage());
  // Two cores may be all there are, for the app, the browser and this program.
  page.setDefaultTimeout(60_000);
  const complaints = collectComplaints(page);
  if (options.isFirst !== true) await comeWelcomed(page);
  await page.goto(url);
  return {
    page,
    complaints,
    async close() {
      await context.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

function collectComplaints(page: Page): readonly string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`console: ${message.text()}`);
  });
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText;
    // Given up by the window itself: a worker whose place was left while it loaded. What a server or the network failed to give has other names.
    if (why !== 'net::ERR_ABORTED') complaints.push(`failed: ${request.url()} (${why})`);
  });
  return complaints;
}

/** Pictures of the journeys are for whoever wants to see them: `PICTURES=yes npm test`. They take as long as the rest of a look. */
const arePicturesWanted = process.env.PICTURES === 'yes';

/** Takes the page as it stands into `.build/screenshots/NAME-SIZE.png`, where pictures are wanted. */
export async function takeScreenshot(page: Page, name: string, size: WindowSize): Promise<void> {
  if (arePicturesWanted) await savePicture(page, `${name}-${size}`);
}

/** Takes a page that fails a test, wanted or not. */
export const takeFailure = (page: Page): Promise<void> => savePicture(page, 'failed-projector');

async function savePicture(page: Page, name: string): Promise<void> {
  const folder = path.join(projectRoot, '.build', 'screenshots');
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: path.join(folder, `${name}.png`) });
}

/** Takes the page at each size, where pictures are wanted, and goes back to the first. Slow: not for a run that is under way. */
export async function takeScreenshots(page: Page, name: string): Promise<void> {
  if (!arePicturesWanted) return;
  const before = page.viewportSize();
  for (const size of Object.keys(windowSizes) as WindowSize[]) {
    await page.setViewportSize(windowSizes[size]);
    // Two frames: one for the layout, one for what observes it.
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    await takeScreenshot(page, name, size);
  }
  if (before !== null) await page.setViewportSize(before);
}
