import { createRequire } from 'node:module';
import type ModbusRTU from 'modbus-serial';
import {
  type ChannelValue,
  createPowerOnScreen,
  decodeRegisters,
  type LineRejection,
  type ModbusSettings,
  modbusSettingsSchema,
  type Result,
  registersIn,
  type SerialSource,
  toChannelValue,
} from '#shared-core';
import { ModbusPort } from './modbus-port.ts';
import type { Talk, TalkWire } from './talk.ts';

type Source = Pick<SerialSource, 'unit' | 'modbus' | 'askEveryS' | 'channels'>;
type Register = ModbusSettings['registers'][number];

const require = createRequire(import.meta.url);
const patienceMs = 1000;

/** Tenths of a degree in the first register: what most temperature transmitters do (common practice, no source). */
const usualSettings = modbusSettingsSchema.parse({ registers: [{}] });

/** For transmitters on a Modbus line. It reads registers with functions 3 and 4; it never writes one. */
export function createModbusTalk(source: Source, wire: TalkWire): Talk {
  const settings = source.modbus ?? usualSettings;
  const everyS = source.askEveryS ?? 1;
  const port = new ModbusPort(wire.send);
  // Loaded when it is needed: it loads the native part of the serial library, which the services must do without.
  const Client = require('modbus-serial') as typeof ModbusRTU;
  const client = new Client(port);
  client.setTimeout(patienceMs);
  client.open(() => {});
  let powerOn = createPowerOnScreen();
  let opening = 0;
  let nextAskS = 0;
  let asking = false;
  let nowS = 0;

  function readRegisters(register: Register): Promise<Result<number[], LineRejection | null>> {
    const count = registersIn(register.type);
    return new Promise((resolve) => {
      const done = (error: Error | null, result?: { readonly data: number[] }) => {
        if (error === null && result !== undefined) resolve({ ok: true, value: result.data });
        else resolve({ ok: false, error: whyNot(error, port.heardSinceAsked) });
      };
      if (settings.functionCode === 3) {
        client.writeFC3(settings.unitId, register.address, count, done);
      } else {
        client.writeFC4(settings.unitId, register.address, count, done);
      }
    });
  }

  async function askAll(): Promise<void> {
    const thisOpening = opening;
    const values: ChannelValue[] = [];
    const rejections: LineRejection[] = [];
    const texts: string[] = [];
    for (const register of settings.registers) {
      const read = await readRegisters(register);
      if (thisOpening !== opening) return;
      const meant = read.ok ? meaningOfRegisters(read.value, register, source) : read;
      if (meant.ok) values.push(powerOn.screen(meant.value));
      else if (meant.error !== null) rejections.push(meant.error);
      if (read.ok) texts.push(`register ${register.address}: ${read.value.join(' ')}`);
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
      port.forget();
    },
    receive(bytes, atS) {
      nowS = atS;
      port.receive(bytes);
    },
    tick(atS) {
      nowS = atS;
      if (asking || atS < nextAskS) return;
      nextAskS = Math.max(nextAskS + everyS, atS);
      asking = true;
      const thisOpening = opening;
      void askAll().finally(() => {
        if (thisOpening === opening) asking = false;
      });
    },
    droppedBytes: () => port.droppedBytes,
    identity: () => null,
  };
}

function meaningOfRegisters(
  registers: readonly number[],
  register: Register,
  { unit, channels }: Source,
): Result<ChannelValue, LineRejection> {
  const number = decodeRegisters(registers, register.type);
  // Twelve digits: 783 × 0.1 is 78.3 and not 78.30000000000001.
  const value = number === null ? null : Number((number * register.scale).toPrecision(12));
  const channel = channels?.[register.channel] ?? register.channel;
  return toChannelValue(channel, { name: null, value, unit: null }, unit);
}

/** Null when nothing was heard at all: silence is judged elsewhere. */
function whyNot(error: Error | null, heardAnything: boolean): LineRejection | null {
  if (error !== null && 'modbusCode' in error) return { kind: 'answer-error', text: error.message };
  return heardAnything ? { kind: 'checksum', text: error?.message ?? '' } : null;
}
