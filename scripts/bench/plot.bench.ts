/**
 * Redraw of Watch with a million readings loaded, beside uPlot drawing the same readings in the same page.
 * Figures are ratios and, for the frame budget of 60 Hz, milliseconds on this computer.
 *
 * Usage: npx tsx scripts/bench/plot.bench.ts
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import react from '@vitejs/plugin-react';
import { chromium, type Page } from 'playwright-core';
import { build, type InlineConfig, preview } from 'vite';
import { isEntryPoint } from '../checks/is-entry-point.ts';
import { quantile } from '../measuring/quantile.ts';
import { findChromium } from '../testing/find-chromium.ts';

const readings = 1_000_000;
const redraws = 300;
const frameMs = 1000 / 60;

export async function run(): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), 'plot-bench-'));
  const page = path.join(import.meta.dirname, '..', '..', 'test', 'browser', 'pages');
  // Built as the window is: React without its development checks.
  const shared: InlineConfig = {
    root: page,
    configFile: false,
    plugins: [react()],
    logLevel: 'error',
    build: {
      outDir: folder,
      emptyOutDir: true,
      target: 'chrome120',
      chunkSizeWarningLimit: 4000,
      rolldownOptions: { input: path.join(page, 'plot-bench.html') },
    },
  };
  await build(shared);
  const server = await preview({ ...shared, preview: { host: '127.0.0.1', port: 0, open: false } });
  const address = server.resolvedUrls?.local[0];
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });
  try {
    const window = await browser.newPage({ viewport: { width: 1280, height: 720 } });
    await window.goto(`${address}plot-bench.html`);
    await window.waitForFunction('window.plotBench !== undefined');
    await measureRedraws(window);
    await window.reload();
    await window.waitForFunction('window.plotBench !== undefined');
    await measureMemory(window);
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measureRedraws(page: Page): Promise<void> {
  await page.evaluate(`plotBench.load(${readings}); plotBench.showYardstick()`);
  await page.evaluate('plotBench.oursMs(30); plotBench.yardstickMs(5)');
  const ours = (await page.evaluate(`plotBench.oursMs(${redraws})`)) as number[];
  const yardstick = (await page.evaluate(`plotBench.yardstickMs(${redraws / 5})`)) as number[];
  const p95 = quantile(ours, 0.95);
  console.log(
    `  ${readings.toLocaleString('en')} readings loaded, ${redraws} redraws of the whole Watch`,
  );
  console.log(`  redraw: median ${quantile(ours, 0.5).toFixed(1)} ms, p95 ${p95.toFixed(1)} ms`);
  console.log(`  p95 / frame of 60 Hz: ${(p95 / frameMs).toFixed(2)}`);
  console.log(`  longest redraw / 50 ms: ${(Math.max(...ours) / 50).toFixed(2)}`);
  const medians = quantile(ours, 0.5) / quantile(yardstick, 0.5);
  console.log(`  median / uPlot on the same readings: ${medians.toFixed(2)}`);
  console.log(`  p95 / uPlot's p95: ${(p95 / quantile(yardstick, 0.95)).toFixed(2)}`);
}

/** Ten hours at ten readings a second: what is kept must be the readings and nothing else. */
async function measureMemory(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const heapBytes = async () => {
    await session.send('HeapProfiler.collectGarbage');
    const { usedSize, backingStorageSize } = await session.send('Runtime.getHeapUsage');
    return usedSize + backingStorageSize;
  };
  await page.evaluate('plotBench.load(10); plotBench.pass(36_000, 100)');
  const afterOneHour = await heapBytes();
  await page.evaluate('plotBench.pass(9 * 36_000, 100)');
  const grownBytes = (await heapBytes()) - afterOneHour;
  const rawBytes = 9 * 36_000 * 2 * Float64Array.BYTES_PER_ELEMENT;
  console.log(`  memory after 1 h at 10 Hz: ${(afterOneHour / 1e6).toFixed(1)} MB`);
  console.log(
    `  growth from 1 h to 10 h / bare time and value: ${(grownBytes / rawBytes).toFixed(2)}`,
  );
}

if (isEntryPoint(import.meta.url)) await run();
