import { setTimeout as pause } from 'node:timers/promises';

/** What a window can do: load its files and ask the services. */
export interface PlayedWindow {
  readonly address: string;
  load(url: string): Promise<Response>;
  request(name: string, body: unknown): Promise<unknown>;
}

/** What came of it. */
export interface WindowPlay {
  /** Files of the page that were asked for, and those that were not there. */
  readonly loaded: number;
  readonly refused: readonly string[];
  readonly shell: string;
  readonly ports: number;
  readonly readings: number;
  /** Bytes of the export pack of the rehearsal, with its report and figures. */
  readonly packBytes: number;
}

/** A short rehearsal, as the window of a packed program would do it: page, ports, a run, its export. */
export async function playWindow({ address, load, request }: PlayedWindow): Promise<WindowPlay> {
  async function ask(name: string, body: unknown): Promise<Record<string, unknown>> {
    const answer = (await request(name, body)) as { ok: boolean; value: Record<string, unknown> };
    if (!answer.ok) throw new Error(`${name}: ${JSON.stringify(answer)}`);
    return answer.value;
  }
  const page = await load(address);
  const text = await page.text();
  const parts = [...text.matchAll(/(?:src|href)="([^"#]+)"/g)].map(([, part = '']) => part);
  const refused: string[] = [];
  for (const part of parts) {
    const url = new URL(part, address).href;
    if (!(await load(url)).ok) refused.push(url);
  }
  const { shell } = await ask('app/describe', {});
  const { ports } = await ask('ports/list', {});
  await ask('probe/connect', { source: { kind: 'demo', timeScale: 120 } });
  const { runId } = await ask('run/start', { settings: await rehearsalSettings() });
  const readings = async () => {
    const { inputs } = await ask('runs/read', { runId, fromIndex: 0 });
    return (inputs as readonly { kind: string }[]).filter(({ kind }) => kind === 'reading').length;
  };
  while ((await readings()) < 600) await pause(200);
  await ask('run/stop', {});
  const { bytes } = await ask('packs/make', { packId: 'check', runIds: [runId] });
  return {
    loaded: parts.length + (page.ok ? 1 : 0),
    refused,
    shell: String(shell),
    ports: (ports as readonly unknown[]).length,
    readings: await readings(),
    packBytes: Number(bytes),
  };
}

async function rehearsalSettings(): Promise<unknown> {
  const { defaultRunSettings } = await import('#shared-core');
  return defaultRunSettings;
}
