import { expect, test } from 'vitest';
import { isKnownSender } from '../../../app/electron/sender-check.ts';

test('only the top frame of our own window, showing our own page, is heard', () => {
  const frame = { url: 'app://window/index.html', isTopFrame: true };
  const senders = [
    { frame, contentsId: 1 },
    { frame, contentsId: 2 },
    { frame: { ...frame, isTopFrame: false }, contentsId: 1 },
    { frame: { ...frame, url: 'https://elsewhere.example/' }, contentsId: 1 },
    { frame: { ...frame, url: '' }, contentsId: 1 },
    { frame: null, contentsId: 1 },
  ];
  expect(senders.map((sender) => isKnownSender(sender, 1))).toEqual([
    true,
    false,
    false,
    false,
    false,
    false,
  ]);
});
