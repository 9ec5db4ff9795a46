import { describe, expect, test } from 'vitest';
import { type LineOutcome, modbusSettingsSchema } from '#shared-core';
import { createModbusTalk } from '../../../../main/probe/talk/modbus-talk.ts';
import { modbusChecksum } from '../../../../shared-core/frame/modbus-answer.ts';

function framed(...body: number[]): Uint8Array {
  const crc = modbusChecksum(Uint8Array.from(body));
  return Uint8Array.of(...body, crc & 0xff, crc >> 8);
}
const answerOf = (raw: number, unitId = 1, functionCode = 4) =>
  framed(unitId, functionCode, 2, raw >> 8, raw & 0xff);
const refusalOf = (reason: number) => framed(1, 0x84, reason);

const head = { channel: 'head', address: 0 };
const pot = { channel: 'pot', address: 1 };
const headRaw = 783;
const potRaw = 923;

/** A talk whose time and bytes are given step by step: no device answers by itself. */
function bench(registers = [head, pot]) {
  const asked: number[] = [];
  const outcomes: LineOutcome[] = [];
  const talk = createModbusTalk(
    { unit: '°C', modbus: modbusSettingsSchema.parse({ registers }), askEveryS: 1 },
    {
      send: (bytes) => asked.push(((bytes[2] ?? 0) << 8) | (bytes[3] ?? 0)),
      outcomes: (more) => outcomes.push(...more),
    },
  );
  /** Lets what waits for an answer go on. */
  const settle = () => new Promise<void>((resolve) => setImmediate(resolve));
  let nowS = 0;
  return {
    asked,
    talk,
    open: () => talk.opened(nowS),
    async pass(seconds: number) {
      for (let step = 0; step < Math.round(seconds * 10); step += 1) {
        nowS += 0.1;
        talk.tick(nowS);
        await settle();
      }
    },
    async hear(...pieces: Uint8Array[]) {
      for (const piece of pieces) talk.receive(piece, nowS);
      await settle();
    },
    values: () =>
      outcomes.flatMap(({ values }) => values.map(({ channel, value }) => `${channel} ${value}`)),
    rejections: () => outcomes.flatMap((outcome) => outcome.rejections),
    texts: () => outcomes.map(({ text }) => text),
  };
}

async function begun(registers?: Parameters<typeof bench>[0]) {
  const made = bench(registers);
  made.open();
  await made.pass(0.1);
  return made;
}

describe('a talk with a Modbus device', () => {
  test('asks register after register, and each answer goes to its own channel', async () => {
    const { hear, asked, values, texts } = await begun();
    await hear(answerOf(headRaw));
    await hear(answerOf(potRaw));
    expect({ asked, values: values(), texts: texts() }).toEqual({
      asked: [0, 1],
      values: ['head 78.3', 'pot 92.3'],
      texts: ['register 0: 783, register 1: 923'],
    });
  });

  test('never takes a late answer for that to the next register', async () => {
    const { hear, pass, asked, values } = await begun();
    await pass(2.1);
    await hear(answerOf(headRaw));
    await pass(1.5);
    await hear(answerOf(headRaw));
    await hear(answerOf(potRaw));
    expect({ asked, values: values() }).toEqual({
      asked: [0, 0, 1],
      values: ['head 78.3', 'pot 92.3'],
    });
  });

  test('waits for a device that takes more than a second, and reads every register of it', async () => {
    const { hear, pass, values } = await begun();
    for (const raw of [headRaw, potRaw, headRaw, potRaw]) {
      await pass(1.4);
      await hear(answerOf(raw));
    }
    expect(values()).toEqual(['head 78.3', 'pot 92.3', 'head 78.3', 'pot 92.3']);
  });

  test('asks on after silence without end: a lost question is repeated, and nothing is told of it', async () => {
    const { pass, hear, asked, values, rejections } = await begun([head]);
    // Asked at 0.1 s and every 3 s from then: two of patience, one of rest.
    await pass(31);
    const repeated = asked.length;
    await pass(3);
    await hear(answerOf(headRaw));
    expect({ repeated, values: values(), rejections: rejections() }).toEqual({
      repeated: 11,
      values: ['head 78.3'],
      rejections: [],
    });
  });

  test('an answer given up at an unplugging is not taken after the next opening', async () => {
    const { hear, pass, open, values } = await begun();
    await hear(answerOf(headRaw).subarray(0, 4));
    open();
    await hear(answerOf(headRaw).subarray(4));
    await pass(0.1);
    await hear(answerOf(headRaw));
    await hear(answerOf(potRaw));
    expect(values()).toEqual(['head 78.3', 'pot 92.3']);
  });

  test('an answer cut anywhere is one answer, with noise before it too', async () => {
    const whole = Uint8Array.of(0xff, 0x01, 0x04, ...answerOf(headRaw));
    for (let cut = 0; cut <= whole.length; cut += 1) {
      const { hear, values } = await begun([head]);
      await hear(whole.subarray(0, cut), whole.subarray(cut));
      expect({ cut, values: values() }).toEqual({ cut, values: ['head 78.3'] });
    }
  });

  test.each([
    [1, 'the device does not know this function (Modbus exception 1)'],
    [2, 'the device has no register at this address (Modbus exception 2)'],
    [3, 'the device does not take this question (Modbus exception 3)'],
    [4, 'the device reports a failure of its own (Modbus exception 4)'],
    [6, 'the device is busy (Modbus exception 6)'],
    [11, 'the device refuses (Modbus exception 11)'],
  ])(
    'a refusal %i is told in plain words, and the other registers are read all the same',
    async (reason, text) => {
      const { hear, values, rejections } = await begun();
      await hear(refusalOf(reason));
      await hear(answerOf(potRaw));
      expect({ values: values(), rejections: rejections() }).toEqual({
        values: ['pot 92.3'],
        rejections: [{ kind: 'answer-error', text }],
      });
    },
  );

  test('any single bit of an answer turned: damage is told, and nothing taken for a temperature', async () => {
    const whole = answerOf(headRaw);
    for (let bit = 0; bit < 8 * whole.length; bit += 1) {
      const damaged = whole.map((byte, at) => (at === bit >> 3 ? byte ^ (1 << (bit & 7)) : byte));
      const { hear, pass, values, rejections } = await begun([head]);
      await hear(damaged);
      await pass(2);
      expect({ bit, values: values(), kinds: rejections().map(({ kind }) => kind) }).toEqual({
        bit,
        values: [],
        kinds: ['checksum'],
      });
    }
  });

  test.each([
    ['of another unit', answerOf(500, 2)],
    ['to another function', answerOf(500, 1, 3)],
    ['of another length', framed(1, 4, 4, 1, 0xf4, 1, 0xf4)],
  ])('an undamaged answer %s is not ours, and ours is found behind it', async (_, foreign) => {
    const { hear, values, talk } = await begun([head]);
    await hear(foreign, answerOf(headRaw));
    expect({ values: values(), dropped: talk.droppedBytes() }).toEqual({
      values: ['head 78.3'],
      dropped: foreign.length,
    });
  });
});
