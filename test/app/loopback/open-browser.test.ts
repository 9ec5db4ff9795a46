import { expect, test } from 'vitest';
import { browserCommand } from '../../../app/loopback/open-browser.ts';

test('every platform has its own opener, none of which reads the address as a command', () => {
  const url = 'http://127.0.0.1:4100/#token=a&b';
  expect(
    (['linux', 'freebsd', 'darwin', 'win32'] as const).map((platform) =>
      browserCommand(platform, url),
    ),
  ).toEqual([
    { command: 'xdg-open', commandArguments: [url] },
    { command: 'xdg-open', commandArguments: [url] },
    { command: 'open', commandArguments: [url] },
    { command: 'rundll32', commandArguments: ['url.dll,FileProtocolHandler', url] },
  ]);
});
