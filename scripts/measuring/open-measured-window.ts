import path from 'node:path';
import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { z } from 'zod';
import { defaultRunSettings, type RequestBody, type RequestName } from '#shared-core';
import { comeWelcomed } from '../testing/come-welcomed.ts';
import { findChromium } from '../testing/find-chromium.ts';
import type { MeasureOptions } from './measure-options.ts';

/** The real window of a running app in a real Chromium. */
export interface MeasuredWindow {
  readonly page: Page;
  readonly tools: CDPSession;
  /** Process id of the page's renderer, once it has had something to do. */
  pid(): Promise<number>;
  /** Connects the probe and starts a run of that speed, then shows what is to be measured. */
  startRun(portPath: string, timeScale: number): Promise<void>;
  /** Ends the run; answers how many readings it has on record. */
  stopRun(): Promise<number>;
  close(): Promise<void>;
}

const recorderFile = path.join(import.meta.dirname, 'page-recorder.mjs');

export async function openMeasuredWindow(
  url: string,
  { view, width, height, slower }: MeasureOptions,
): Promise<MeasuredWindow> {
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });
  const page = await browser.newPage({ viewport: { width, height } });
  page.setDefaultTimeout(60_000);
  await page.addInitScript({ path: recorderFile });
  await comeWelcomed(page);
  await page.goto(url);
  const tools = await page.context().newCDPSession(page);
  await page.getByRole('heading', { level: 1 }).waitFor();

  async function show(): Promise<void> {
    await page.getByText(/Saved to/).waitFor();
    await page.getByRole('link', { name: 'Watch' }).click();
    await page.locator('.head-value').waitFor();
    if (view === 'understand') {
      await page.getByRole('button', { name: 'Understand this moment' }).click();
    }
    if (view === 'classroom') await page.getByRole('button', { name: 'Classroom view' }).click();
    if (slower > 1) await tools.send('Emulation.setCPUThrottlingRate', { rate: slower });
  }

  return {
    page,
    tools,
    pid: () => rendererPid(browser),
    async startRun(portPath, timeScale) {
      await ask(page, 'probe/connect', { source: { kind: 'serial', path: portPath, timeScale } });
      await ask(page, 'run/start', { settings: { ...defaultRunSettings, name: 'Measurement' } });
      // The page comes back as the commanding window, and joins the run as after any reload.
      await page.reload();
      await show();
    },
    async stopRun() {
      await ask(page, 'run/stop', {});
      const { runs } = runListSchema.parse(await ask(page, 'runs/list', {}));
      return runs[0]?.readings ?? 0;
    },
    close: () => browser.close(),
  };
}

/**
 * Asks the app over a socket of the page's own: the speed of a serial rehearsal cannot be chosen by hand.
 * With the page's secret it takes the command; the page is told to watch only, and a reload takes the command back.
 */
async function ask(
  page: Page,
  name: RequestName,
  body: Partial<RequestBody<RequestName>> | object,
): Promise<unknown> {
  const answer = await page.evaluate(
    `new Promise((resolve, reject) => {
      const socket = new WebSocket('ws://' + location.host + '/service');
      let secret = '';
      const request = ${JSON.stringify({ id: 0, name, body })};
      socket.onopen = () => socket.send(JSON.stringify({ token: sessionStorage.getItem('window-secret') }));
      socket.onclose = ({ code }) => reject(new Error('closed with ' + code));
      socket.onmessage = ({ data }) => {
        const message = JSON.parse(data);
        if (message.type === 'welcome') {
          secret = message.secret;
          socket.send(JSON.stringify(request));
        }
        if (message.type !== 'answer') return;
        sessionStorage.setItem('window-secret', secret);
        socket.onclose = null;
        socket.close();
        resolve(message.result);
      };
    })`,
  );
  const { ok, value } = z.object({ ok: z.boolean(), value: z.unknown() }).parse(answer);
  if (!ok) throw new Error(`${name}: ${JSON.stringify(answer)}`);
  return value;
}

const runListSchema = z.object({ runs: z.array(z.object({ readings: z.number() })) });

const processesSchema = z.object({
  processInfo: z.array(z.object({ type: z.string(), id: z.number(), cpuTime: z.number() })),
});

/** The renderer that has worked most: a browser keeps a spare one that has done nothing. */
async function rendererPid(browser: Browser): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = processesSchema.parse(await session.send('SystemInfo.getProcessInfo'));
  await session.detach();
  const renderers = processInfo.filter(({ type }) => type === 'renderer');
  return renderers.toSorted((a, b) => b.cpuTime - a.cpuTime)[0]?.id ?? 0;
}
