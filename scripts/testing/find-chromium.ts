import { existsSync } from 'node:fs';
import path from 'node:path';

const usualPlaces = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** A Chromium that is installed here; without one the journeys fail and say what to install. */
export function findChromium(): string {
  const onPath = (process.env.PATH ?? '')
    .split(path.delimiter)
    .flatMap((folder) =>
      ['chromium', 'chromium-browser', 'google-chrome'].map((name) => path.join(folder, name)),
    );
  const found = [...onPath, ...usualPlaces].find((file) => existsSync(file));
  if (found === undefined)
    throw new Error('Chromium is missing; install it and run the tests again.');
  return found;
}
