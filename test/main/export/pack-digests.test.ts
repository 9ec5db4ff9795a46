import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { packEntries } from '../../../main/export/pack/pack-entries.ts';
import { distillationsOrder } from '../../../main/export/pack/write-pack.ts';
import { packRequest } from './support/pear-pack.ts';

/** What a picture or a page is packed with differs from one version of Node to the next. */
const isPacked = /\.(pdf|docx|xlsx|png)$/;

/** SHA-256 of each file of a pack that is text, by its path. */
async function digestsOf(count: number): Promise<string> {
  const request = packRequest();
  const runs = request.runs.slice(0, count);
  const { kind, work, createdMs } = distillationsOrder({ ...request, runs });
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
