import { createHash } from 'node:crypto';
import process from 'node:process';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createMonitor, type Monitor, type RunSettings, type Verdicts } from '#shared-core';
import { packEntries } from '../../../main/export/pack/pack-entries.ts';
import { distillationsOrder } from '../../../main/export/pack/write-pack.ts';
import { packRequest } from './support/pear-pack.ts';

// Times of day are told in the computer's zone: here it is one that every computer knows.
const zone = process.env.TZ;
beforeAll(() => {
  process.env.TZ = 'UTC';
});
afterAll(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

/** What a monitor once said of this run. A later one may judge otherwise: what a pack makes of a judgement is held here, not the judgement. */
const saidOnce: Verdicts = {
  stages: [
    { stage: 'warm-up', fromS: 0, toS: 900, because: 'The run begins.' },
    { stage: 'first-fraction', fromS: 900, toS: 1200, because: 'Vapour reached 78.2 °C.' },
    { stage: 'main-fraction', fromS: 1200, toS: 2600, because: 'The head holds.' },
    { stage: 'tail', fromS: 2600, toS: null, because: 'The head left the plateau.' },
  ],
  alarms: [
    {
      alarm: 'plateau-departure',
      priority: 'high',
      raisedS: 2590,
      clearedS: 2700,
      acknowledgedS: 2600,
      because: 'Heat off: 80 % vol is reached.',
    },
  ],
  forecasts: [{ madeS: 1300, mainFractionEndS: { low: 2300, value: 2500, high: 2800 } }],
  estimates: Array.from({ length: 28 }, (_, minute) => 60 * (minute + 16)).map((timeS) => ({
    timeS,
    headVapourAbv: { low: 90, value: 93 - timeS / 1000, high: 95 },
  })),
  events: [{ event: 'vapour-arrived', timeS: 900, because: 'The head rose fast.' }],
  verdict: { mainFraction: true, because: 'A main fraction of 80 % vol or more was collected.' },
  problems: [],
};

/** What a picture or a page is packed with differs from one version of Node to the next. */
const isPacked = /\.(pdf|docx|xlsx|png)$/;

/** SHA-256 of each file of a pack that is text, by its path. */
async function digestsOf(count: number): Promise<string> {
  const request = packRequest();
  const runs = request.runs.slice(0, count);
  const createOnce = (settings: RunSettings): Monitor => ({
    ...createMonitor(settings),
    verdicts: () => saidOnce,
  });
  const { kind, work, createdMs } = distillationsOrder({
    ...request,
    runs,
    createMonitor: createOnce,
  });
  const worked = await work(() => undefined);
  const lines: string[] = [];
  for await (const { path, content } of packEntries(kind, worked, createdMs, () => undefined)) {
    const hash = createHash('sha256');
    // The description holds those of the others, which must be read through for it.
    for await (const piece of content) hash.update(piece);
    if (!isPacked.test(path)) lines.push(`${path} ${hash.digest('hex')}`);
  }
  return `${lines.join('\n')}\n`;
}

test('the packs of one run and of two are byte for byte what they were; where a change is meant, its files are seen here', async () => {
  await expect(await digestsOf(1)).toMatchFileSnapshot('reference/pack-of-one.txt');
  await expect(await digestsOf(2)).toMatchFileSnapshot('reference/pack-of-two.txt');
});
