import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFailed, test } from 'vitest';
import { axeViolations } from './support/check-screen.ts';
import { type JourneyBench, openBench } from './support/journey-bench.ts';
import { type OpenWindow, openWindow } from './support/open-window.ts';
import { startRehearsal } from './support/prepare-run.ts';

let bench: JourneyBench;
const others: OpenWindow[] = [];

beforeAll(async () => {
  bench = await openBench();
});
afterAll(async () => {
  for (const other of others) await other.close();
  await bench?.tidy();
});

async function openOther(url: string): Promise<OpenWindow> {
  const other = await openWindow(url);
  others.push(other);
  return other;
}

/** The second screen as a teacher gets it: one button, one link, a window of its own. */
async function openSecondScreen(page: Page): Promise<Page> {
  await page.getByRole('button', { name: 'Second screen' }).click();
  const opened = page.context().waitForEvent('page');
  await page.getByRole('link', { name: 'Open it in a new window' }).click();
  return opened;
}

test('the second screen opens from the window, shows the run from its start and can only watch', async () => {
  const { page, app } = bench;
  onTestFailed(() => bench.explain());
  const viewer = await openSecondScreen(page);
  await viewer.getByRole('heading', { name: 'The run has not begun' }).waitFor();
  expect(await axeViolations(viewer)).toEqual([]);
  const address = await page.getByLabel('Or open this address').inputValue();
  expect(address).toBe(app.viewerUrl);
  expect(await axeViolations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Done' }).click();

  await startRehearsal(page, viewer);
  const places = await viewer.getByRole('navigation').getByRole('link').allTextContents();
  expect(places).toEqual(['Watch', 'Look back']);
  const commands = viewer.getByRole('button', {
    name: /Heat|Note|Receiver|Stop|Undo|Second screen|Acknowledge/,
  });
  expect(await commands.count()).toBe(0);
});

test('neither an address of a place nor the words on the wire give a viewer more', async () => {
  onTestFailed(() => bench.explain());
  const viewer = await openOther(bench.app.viewerUrl);
  await viewer.page.getByText('view only').waitFor();
  await viewer.page.evaluate("location.hash = '#prepare'");
  await viewer.page
    .getByText(/Warming up/)
    .first()
    .waitFor();
  expect(await viewer.page.getByRole('button', { name: 'Start the run' }).count()).toBe(0);
  expect(await heardOnTheWire(viewer.page, bench.app.viewerUrl)).toMatchObject([
    { type: 'welcome', mayCommand: false, secret: bench.app.viewerUrl.split('#token=')[1] },
    {
      type: 'answer',
      id: 0,
      result: { ok: true, value: { mayCommand: false, secondScreen: null } },
    },
    { type: 'answer', id: 1, result: { ok: false, error: { kind: 'viewer-may-not-command' } } },
    { type: 'answer', id: 2, result: { ok: false, error: { kind: 'viewer-may-not-command' } } },
  ]);
  expect(viewer.complaints).toEqual([]);
});

test('an address works once, and a reload keeps its window', async () => {
  const { page, app } = bench;
  onTestFailed(() => bench.explain());
  await page.reload();
  await page.locator('button:enabled').filter({ hasText: 'Note' }).waitFor();
  const stranger = await openOther(app.url);
  await stranger.page.getByRole('heading', { name: 'This address was used before' }).waitFor();
  expect(await axeViolations(stranger.page)).toEqual([]);
  expect(bench.complaints).toEqual([]);
});

/** What the services say to a socket that shows the viewer's token and asks for more than watching. */
function heardOnTheWire(page: Page, viewerUrl: string): Promise<unknown> {
  const token = viewerUrl.split('#token=')[1] ?? '';
  return page.evaluate(
    (shown) =>
      new Promise((resolve) => {
        const socket = new WebSocket(`ws://${location.host}/service`);
        const heard: { type: string; id?: number }[] = [];
        const ask = (id: number, name: string) =>
          socket.send(JSON.stringify({ id, name, body: {} }));
        socket.onopen = () => {
          socket.send(JSON.stringify({ token: shown }));
          ask(0, 'app/describe');
          ask(1, 'app/open-second-screen');
          ask(2, 'run/stop');
        };
        socket.onmessage = ({ data }) => {
          const message = JSON.parse(data);
          if (message.type !== 'event') heard.push(message);
          if (heard.length === 4) {
            socket.close();
            // Refusals overtake answers.
            resolve(heard.sort((a, b) => (a.id ?? -1) - (b.id ?? -1)));
          }
        };
      }),
    token,
  );
}
