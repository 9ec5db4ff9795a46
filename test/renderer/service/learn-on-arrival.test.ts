import { expect, test } from 'vitest';
import { wordingOf } from '#shared-core';
import type { ConnectedService } from '../../../renderer/service/connected-service.ts';
import { learnOnArrival } from '../../../renderer/service/learn-on-arrival.ts';
import { pearSummary } from '../support/pear-summary.ts';

/** What a text of another process was made from. */
const wordingFor = (text: string) => ({
  [text]: { sentence: 'About {at}.', values: { at: text } },
});
const knows = (text: string) => text in wordingOf([text]);

/** A service that answers this, or tells it as an event. */
const serviceOf = (arriving: unknown): ConnectedService => ({
  connection: () => 'open',
  onConnection: () => () => {},
  request: async () => arriving as never,
  on: (_, listener) => {
    listener(arriving as never);
    return () => {};
  },
});

test.each([
  ['of an answer', (wording: object) => ({ ok: true, value: { wording } })],
  [
    'of the run that is opened',
    (wording: object) => ({ ok: true, value: { summary: { ...pearSummary, wording } } }),
  ],
  [
    'of each run that is listed',
    (wording: object) => ({
      ok: true,
      value: { runs: [pearSummary, { ...pearSummary, wording }] },
    }),
  ],
  [
    'of a refusal',
    (wording: object) => ({ ok: false, error: { kind: 'request-invalid', message: '', wording } }),
  ],
])('the sentences %s can be said before it is answered', async (name, answer) => {
  const text = `Sentence ${name}`;
  expect(knows(text)).toBe(false);
  await learnOnArrival(serviceOf(answer(wordingFor(text)))).request('runs/list', {});
  expect(knows(text)).toBe(true);
});

test('the sentences of an event, and of the problem that it tells, can be said when its listener is called', () => {
  const [own, of] = ['Sentence of an event', 'Sentence of a problem'];
  const problem = { kind: 'request-invalid', message: of, wording: wordingFor(of) };
  const heard: boolean[] = [];
  learnOnArrival(serviceOf({ wording: wordingFor(own), problem })).on('probe', () => {
    heard.push(knows(own), knows(of));
  });
  expect(heard).toEqual([true, true]);
});
