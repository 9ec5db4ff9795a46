import { expect, test } from 'vitest';
import { openPseudoTerminal, type PseudoTerminal } from '#main';
import { latin1Bytes } from '#shared-core';
import { heardHub, serialSource } from './support/heard-hub.ts';
import { until } from './support/until.ts';

/** A balance that answers one question only, in seven bits and a parity bit, as many do until they are set otherwise. */
function plugInBalance(question: string, answers: readonly string[]): PseudoTerminal {
  const opened = openPseudoTerminal();
  if (!opened.ok) throw new Error(opened.error);
  const terminal = opened.value;
  let heard = '';
  let sent = 0;
  terminal.onBytes((bytes) => {
    heard += Buffer.from(bytes).toString('latin1');
    const lines = heard.split('\r\n');
    heard = lines.pop() ?? '';
    for (const line of lines) {
      if (line !== question) continue;
      const answer = answers[Math.min(sent, answers.length - 1)];
      sent += 1;
      terminal.write(withEvenParity(`${answer}\r\n`));
    }
  });
  return terminal;
}

function withEvenParity(text: string): Uint8Array {
  return latin1Bytes(text).map((byte) => {
    let ones = 0;
    for (let at = 0; at < 7; at++) ones += (byte >> at) & 1;
    return ones % 2 === 1 ? byte | 0x80 : byte;
  });
}

test.each(['SI', 'Q', '\u001bP'])(
  'a balance that only answers %j gives the mass under the still, settled or not, and nothing while it is overloaded',
  async (question) => {
    const answers = ['S S      85.20 g', 'S D      85.31 g', 'S +', 'S D      85.52 g'];
    const terminal = plugInBalance(question, answers);
    const { hub, readings } = heardHub();
    try {
      await hub.connect(
        serialSource(terminal.path, { language: 'balance', askEveryS: 0.1, baudRate: 9600 }),
      );
      await until('four answers', () => readings.length >= 3, 40);
      expect(
        readings
          .slice(0, 3)
          .map(({ channel, value, unit, quality }) => `${channel} ${value} ${unit} ${quality}`),
      ).toEqual(['receiver 85.2 g good', 'receiver 85.31 g good', 'receiver 85.52 g good']);
    } finally {
      await hub.close();
      terminal.close();
    }
  },
);
