import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { openPseudoTerminal } from '#main';
import { latin1Bytes } from '#shared-core';
import { heardHub, serialSource } from './support/heard-hub.ts';
import { until } from './support/until.ts';

const notes = readFileSync(
  path.join(import.meta.dirname, '../../../scripts/reference-probe/README.md'),
  'utf8',
);

/** The lines that the building notes say the probe sends. */
function sample(name: string): string {
  return notes.split(`\`\`\`sample ${name}\n`)[1]?.split('```')[0] ?? '';
}

test.each([
  ['one-wire', ['head 78.31 good', 'pot 91.50 good', 'pot 91.56 good']],
  // 130.1907 Ω is 78.15 °C: test/reference/iec60751_pt100.csv.
  ['pt100', ['head 78.15 good']],
])('the %s reference probe is understood without any setting', async (name, expected) => {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(terminal.error);
  const { hub, readings } = heardHub();
  try {
    await hub.connect(serialSource(terminal.value.path));
    // What a board leaves in the line when it restarts, and its line ends.
    terminal.value.write(latin1Bytes(`\u0000\r\n${sample(name).replaceAll('\n', '\r\n')}`));
    await until('its readings', () => readings.length === expected.length);
    expect(
      readings.map(({ channel, value, quality }) => `${channel} ${value.toFixed(2)} ${quality}`),
    ).toEqual(expected);
  } finally {
    await hub.close();
    terminal.value.close();
  }
});
