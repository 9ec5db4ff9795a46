import {
  createPowerOnScreen,
  decodeRegisters,
  type LineOutcome,
  modbusSettingsSchema,
  type Result,
  registersIn,
  type SerialSource,
  toChannelValue,
} from '#shared-core';
import { createModbusLine } from './modbus-line.ts';
import type { Talk, TalkWire } from './talk.ts';

type Source = Pick<SerialSource, 'unit' | 'modbus' | 'askEveryS' | 'channels'>;
type Register = NonNullable<SerialSource['modbus']>['registers'][number];

/** Tenths of a degree in the first register: what most temperature transmitters do (common practice, no source). */
const usualSettings = modbusSettingsSchema.parse({ registers: [{}] });

/** For transmitters on a Modbus line. It reads registers with functions 3 and 4; it never writes one. */
export function createModbusTalk(source: Source, wire: TalkWire): Talk {
  const settings = source.modbus ?? usualSettings;
  const everyS = source.askEveryS ?? 1;
  const line = createModbusLine(wire.send);
  let powerOn = createPowerOnScreen();
  let opening = 0;
  let nextAskS = 0;
  let asking = false;
  let nowS = 0;

  async function askAll(): Promise<void> {
    const thisOpening = opening;
    const values: LineOutcome['values'][number][] = [];
    const rejections: LineOutcome['rejections'][number][] = [];
    const texts: string[] = [];
    for (const register of settings.registers) {
      const question = {
        unitId: settings.unitId,
        functionCode: settings.functionCode,
        registerCount: registersIn(register.type),
      };
      const read = await line.ask(question, register.address, nowS);
      if (thisOpening !== opening) return;
      const meant = read.ok ? meaningOfRegisters(read.value, register, source) : read;
      if (meant.ok) values.push(powerOn.screen(meant.value));
      else if (meant.error !== null) rejections.push(meant.error);
      if (read.ok) texts.push(`register ${register.address}: ${read.value.join(' ')}`);
      if (line.isResting(nowS)) break;
    }
    if (values.length + rejections.length === 0) return;
    wire.outcomes([{ text: texts.join(', '), values, rejections }], nowS);
  }

  return {
    opened(atS) {
      opening += 1;
      asking = false;
      nowS = atS;
      nextAskS = atS;
      powerOn = createPowerOnScreen();
      line.forget();
    },
    receive(bytes, atS) {
      nowS = atS;
      line.receive(bytes);
    },
    tick(atS) {
      nowS = atS;
      line.tick(atS);
      if (asking || atS < nextAskS || line.isResting(atS)) return;
      nextAskS = Math.max(nextAskS + everyS, atS);
      asking = true;
      const thisOpening = opening;
      void askAll().finally(() => {
        if (thisOpening === opening) asking = false;
      });
    },
    droppedBytes: () => line.droppedBytes(),
    identity: () => null,
  };
}

function meaningOfRegisters(
  registers: readonly number[],
  register: Register,
  { unit, channels }: Source,
): Result<LineOutcome['values'][number], LineOutcome['rejections'][number]> {
  const number = decodeRegisters(registers, register.type);
  // Twelve digits: 783 × 0.1 is 78.3 and not 78.30000000000001.
  const value = number === null ? null : Number((number * register.scale).toPrecision(12));
  const channel = channels?.[register.channel] ?? register.channel;
  return toChannelValue(channel, { name: null, value, unit: null }, unit);
}
