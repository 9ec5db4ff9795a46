/**
 * Takes the pictures of README.md: drives a rehearsal through the real app in a real Chromium and writes each place
 * as a PNG into `.pictures/`.
 *
 * Usage: npm run pictures
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { chromium, type Page } from 'playwright-core';
import { drivePictures } from './pictures/drive-pictures.ts';
import { packPng } from './pictures/pack-png.ts';
import { largestPictureBytes, type Picture, viewports } from './pictures/picture.ts';
import { comeWelcomed } from './testing/come-welcomed.ts';
import { findChromium } from './testing/find-chromium.ts';
import { startApp } from './testing/start-app.ts';
import { projectRoot } from './testing/step.ts';

const picturesFolder = path.join(projectRoot, '.pictures');
const folder = mkdtempSync(path.join(tmpdir(), 'pictures-'));
const app = await startApp(path.join(folder, 'runs'));
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
});
try {
  mkdirSync(picturesFolder, { recursive: true });
  const page = await browser.newPage({ viewport: viewports.projector });
  page.setDefaultTimeout(120_000);
  await comeWelcomed(page);
  await page.goto(app.url);
  await drivePictures(page, (picture) => take(page, picture));
} finally {
  await browser.close();
  await app.stop();
  rmSync(folder, { recursive: true, force: true });
}

async function take(page: Page, { name, viewport, colours }: Picture): Promise<void> {
  const file = path.join(picturesFolder, `${name}.png`);
  await page.setViewportSize(viewports[viewport]);
  await page.emulateMedia({ colorScheme: colours, reducedMotion: 'reduce' });
  // Two frames: one for the layout, one for what observes it.
  await page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );
  const packed = packPng(await page.screenshot());
  await page.setViewportSize(viewports.projector);
  writeFileSync(file, packed);
  console.log(`${path.relative(projectRoot, file)}: ${Math.ceil(packed.length / 1024)} kB`);
  if (packed.length > largestPictureBytes) process.exitCode = 1;
}
