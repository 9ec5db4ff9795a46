import { expect, test } from 'vitest';
import { createProblemLog } from '#main';
import { createManualTime } from '../support/manual-time.ts';

test('what comes again and again stands once, at its newest moment, and pushes nothing else out', async () => {
  const time = createManualTime();
  const log = createProblemLog(time.clock);
  log.note('link lost: unplugged');
  for (let again = 0; again < 1000; again += 1) log.note('probe: port-busy');
  await time.pass(60);
  log.note('link lost: unplugged');
  expect(log.recent()).toEqual([
    { what: 'probe: port-busy', times: 1000, lastAtIso: expect.any(String) },
    {
      what: 'link lost: unplugged',
      times: 2,
      lastAtIso: new Date(time.clock.wallMs()).toISOString(),
    },
  ]);
});

test('it never grows beyond the newest fifty', () => {
  const log = createProblemLog(createManualTime().clock);
  for (let number = 1; number <= 80; number += 1) log.note(`problem ${number}`);
  expect([log.recent().length, log.recent()[0]?.what, log.recent().at(-1)?.what]).toEqual([
    50,
    'problem 31',
    'problem 80',
  ]);
});
