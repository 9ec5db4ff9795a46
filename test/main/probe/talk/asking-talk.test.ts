import { describe, expect, test } from 'vitest';
import { type LineOutcome, latin1Bytes, serialSourceSchema } from '#shared-core';
import { createTalk } from '../../../../main/probe/talk/create-talk.ts';
import type { Talk } from '../../../../main/probe/talk/talk.ts';

/** A talk over a wire of the test's: what it asked, and when; what it made of the answers. */
function bench(rest: object) {
  const asked: string[] = [];
  const outcomes: (LineOutcome & { readonly atS: number })[] = [];
  let nowS = 100;
  const talk: Talk = createTalk(
    serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0', ...rest }),
    {
      send: (bytes) => asked.push(`${(nowS - 100).toFixed(1)} ${Buffer.from(bytes)}`),
      outcomes: (more, atS) => outcomes.push(...more.map((outcome) => ({ ...outcome, atS }))),
    },
  );
  talk.opened(nowS);
  return {
    talk,
    asked,
    outcomes,
    /** Time goes on in the tenths of a second in which a talk is ticked. */
    pass(seconds: number) {
      for (let step = 0; step < Math.round(seconds * 10); step += 1) {
        nowS = Math.round(nowS * 10 + 1) / 10;
        talk.tick(nowS);
      }
    },
    hear: (text: string) => talk.receive(latin1Bytes(text), nowS),
    open: () => talk.opened(nowS),
    values: () => outcomes.flatMap(({ values }) => values.map(({ value }) => value)),
    rejected: () => outcomes.flatMap(({ rejections }) => rejections.map(({ kind }) => kind)),
  };
}

describe('an instrument that answers in SCPI', () => {
  const scpi = (rest: object = {}) => bench({ language: 'scpi', ...rest });

  test('is asked who it is once it has had three tenths of a second to start, then once a second what it measures', () => {
    const { asked, hear, pass, talk, values } = scpi();
    pass(0.2);
    expect(asked).toEqual([]);
    pass(0.1);
    expect([asked, talk.identity()]).toEqual([['0.3 *IDN?\n'], null]);
    hear('Pear Lab,TC-1,0,1.0\n');
    expect([talk.identity(), values()]).toEqual(['Pear Lab,TC-1,0,1.0', []]);
    pass(0.1);
    hear('+7.842000E+01\n');
    pass(2);
    expect(asked.slice(1)).toEqual(['0.4 MEAS:TEMP?\n', '1.3 MEAS:TEMP?\n']);
    expect(values()).toEqual([78.42]);
  });

  test('is asked the next question only once the one before was answered or two seconds have gone', () => {
    const { asked, hear, pass, values } = scpi({ question: 'READ?' });
    pass(0.3);
    // Nobody says who it is: no reason to ask it less.
    pass(2);
    expect(asked).toEqual(['0.3 *IDN?\n']);
    pass(0.1);
    expect(asked.at(-1)).toBe('2.4 READ?\n');
    pass(1.5);
    hear('78.25\n');
    pass(0.1);
    expect([asked.slice(2), values()]).toEqual([['4.0 READ?\n'], [78.25]]);
  });

  test('that does not understand a question twice in a row is asked another, and the first again after the last', () => {
    const { asked, hear, pass, rejected, values } = scpi({ askEveryS: 1 });
    pass(0.3);
    hear('Pear Lab\n');
    const said = () => asked.splice(0).map((text) => text.replace(/^\S+ /, '').trim());
    said();
    pass(0.1);
    hear('what?\n');
    pass(1);
    hear('what?\n');
    pass(1);
    expect(said()).toEqual(['MEAS:TEMP?', 'MEAS:TEMP?', 'READ?']);
    // Once is no proof.
    hear('what?\n');
    pass(1);
    hear('78.5\n');
    pass(1);
    hear('what?\n');
    pass(1);
    expect(said()).toEqual(['READ?', 'READ?', 'READ?']);
    hear('what?\n');
    // Silence counts as well as a wrong answer.
    pass(3);
    pass(2.1);
    pass(0.9);
    hear('what?\n');
    pass(1);
    hear('what?\n');
    pass(1);
    expect(new Set(said())).toEqual(new Set(['FETC?', 'MEAS?', 'MEAS:TEMP?']));
    expect(values()).toEqual([78.5]);
    expect(rejected().length).toBeGreaterThanOrEqual(6);
  });

  test('that came back to its port is asked anew who it is, and half an answer of before is forgotten', () => {
    const { asked, hear, open, pass, talk, values } = scpi();
    pass(0.3);
    hear('Pear Lab\n');
    pass(0.1);
    hear('78.');
    open();
    expect(talk.droppedBytes()).toBe(3);
    pass(0.3);
    expect(asked.at(-1)).toBe('0.7 *IDN?\n');
    hear('Another\n');
    expect(talk.identity()).toBe('Another');
    pass(0.1);
    expect(asked.at(-1)).toBe('0.8 MEAS:TEMP?\n');
    hear('79\n');
    expect(values()).toEqual([79]);
  });

  test('that answered too late is not heard in the middle of the next answer', () => {
    const { hear, pass, values } = scpi();
    pass(0.3);
    hear('Pear Lab\n');
    pass(0.1);
    hear('7');
    pass(2.1);
    // The question was put again.
    hear('8.5\n');
    expect(values()).toEqual([8.5]);
  });
});

describe('a balance that must be asked', () => {
  const balance = () => bench({ language: 'balance', askEveryS: 0.5 });

  test('is asked the questions of the makers in turn until one is answered', () => {
    const { asked, pass, values, hear } = balance();
    pass(0.3);
    for (let count = 0; count < 12; count += 1) pass(2.1);
    const questions = [...new Set(asked.map((text) => text.replace(/^\S+ /, '')))];
    expect(questions).toEqual(['SI\r\n', 'Q\r\n', '\u001bP\r\n', 'P\r\n', 'W\r\n']);
    hear('S S      85.20 g\r\n');
    const before = asked.length;
    pass(0.5);
    expect(values()).toEqual([85.2]);
    expect(asked.length).toBe(before + 1);
  });

  test('is believed to have understood where it is overloaded, and not where it answers nonsense', () => {
    const { asked, pass, hear, values } = balance();
    pass(0.3);
    for (let count = 0; count < 4; count += 1) {
      hear('S +\r\n');
      pass(0.5);
    }
    expect(new Set(asked.map((text) => text.replace(/^\S+ /, '')))).toEqual(new Set(['SI\r\n']));
    for (let count = 0; count < 2; count += 1) {
      hear('ES\r\n');
      pass(0.5);
    }
    expect(asked.at(-1)).toMatch(/ Q\r\n$/);
    expect(values()).toEqual([]);
  });
});

describe('a probe that speaks by itself', () => {
  const listening = () => bench({ language: 'plain-text' });

  test('is never asked anything', () => {
    const { asked, pass, talk } = listening();
    pass(10);
    expect([asked, talk.identity()]).toEqual([[], null]);
  });

  test('is heard from its first whole line on: what was under way when the port opened may be the end of a number', () => {
    const { hear, pass, values, talk } = listening();
    pass(0.4);
    hear('8.5\n78.6\n');
    expect([values(), talk.droppedBytes()]).toEqual([[78.6], 3]);
  });

  test('that was silent for half a second after the port opened begins with a whole line', () => {
    const { hear, pass, values } = listening();
    pass(0.5);
    hear('78.5\n');
    expect(values()).toEqual([78.5]);
  });

  test('that stopped in the middle of a line for more than three seconds began anew', () => {
    const { hear, pass, values } = listening();
    pass(0.5);
    hear('78.5\n7');
    pass(3);
    hear('9');
    pass(3.1);
    hear('21.5\n');
    expect(values()).toEqual([78.5, 21.5]);
  });

  test('that never ends its line is told as too long, each time it is', () => {
    const { hear, pass, rejected } = listening();
    pass(0.5);
    hear(`${'7'.repeat(5000)}\n`);
    hear(`${'7'.repeat(5000)}\n`);
    expect(rejected()).toEqual(['too-long', 'too-long']);
  });

  test('tells when the bytes came that completed its lines', () => {
    const { hear, pass, outcomes } = listening();
    pass(0.5);
    hear('78.');
    expect(outcomes).toEqual([]);
    pass(0.1);
    hear('5\n78.6\n');
    expect(outcomes.map(({ atS }) => atS)).toEqual([100.6, 100.6]);
  });
});
