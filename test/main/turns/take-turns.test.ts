import { expect, test } from 'vitest';
import { takeTurns } from '../../../main/turns/take-turns.ts';

/** An act that ends when the test says so. */
function act() {
  let end: (how: { readonly fails: boolean }) => void = () => {};
  const ended = new Promise<string>((resolve, reject) => {
    end = ({ fails }) => (fails ? reject(new Error('failed')) : resolve('done'));
  });
  return { ended, end };
}

const settle = () => new Promise((resolve) => setImmediate(resolve));

test('each act begins when the one before has ended, whether that failed or not, and answers for itself', async () => {
  const inTurn = takeTurns();
  const began: string[] = [];
  const [first, second] = [act(), act()];
  const answers = [
    inTurn(() => {
      began.push('first');
      return first.ended;
    }),
    inTurn(() => {
      began.push('second');
      return second.ended;
    }),
    inTurn(async () => {
      began.push('third');
      return 'third';
    }),
  ];
  const results = Promise.allSettled(answers);
  await settle();
  expect(began).toEqual(['first']);
  first.end({ fails: true });
  await settle();
  expect(began).toEqual(['first', 'second']);
  second.end({ fails: false });
  expect(await results).toEqual([
    { status: 'rejected', reason: new Error('failed') },
    { status: 'fulfilled', value: 'done' },
    { status: 'fulfilled', value: 'third' },
  ]);
  expect(began).toEqual(['first', 'second', 'third']);
});
