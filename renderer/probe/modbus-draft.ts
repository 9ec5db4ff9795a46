import {
  fail,
  modbusSettingsSchema,
  type Result,
  type SerialSource,
  say,
  succeed,
} from '#shared-core';
import { type KnownChannel, numberFrom } from '../words/index.ts';

type ModbusSettings = NonNullable<SerialSource['modbus']>;
type RegisterType = ModbusSettings['registers'][number]['type'];

/** One register as typed. */
export interface RegisterDraft {
  readonly channel: KnownChannel;
  readonly address: string;
  readonly type: RegisterType;
  readonly scale: string;
}

/** What to ask a Modbus probe for, as typed. */
export interface ModbusDraft {
  readonly unitId: string;
  readonly functionCode: '3' | '4';
  readonly registers: readonly RegisterDraft[];
}

export const mostRegisters = 8;

export const functionOptions = [
  { value: '4', label: say('4 · input registers') },
  { value: '3', label: say('3 · holding registers') },
] as const;

export const registerTypeOptions = [
  { value: 'int16', label: say('whole number, 16 bit, with sign') },
  { value: 'uint16', label: say('whole number, 16 bit, no sign') },
  { value: 'int32', label: say('whole number, 32 bit') },
  { value: 'int32-swapped', label: say('whole number, 32 bit, low word first') },
  { value: 'float32', label: say('decimal number, 32 bit') },
  { value: 'float32-swapped', label: say('decimal number, 32 bit, low word first') },
] as const satisfies readonly { value: RegisterType; label: string }[];

/** Tenths of a degree in the first register: what most temperature transmitters do (common practice, no source). */
export const usualRegister: RegisterDraft = {
  channel: 'head',
  address: '0',
  type: 'int16',
  scale: '0.1',
};

export function modbusDraftFrom(settings: ModbusSettings | null | undefined): ModbusDraft {
  if (settings == null) return { unitId: '1', functionCode: '4', registers: [usualRegister] };
  return {
    unitId: String(settings.unitId),
    functionCode: settings.functionCode === 3 ? '3' : '4',
    registers: settings.registers.map(({ channel, address, type, scale }) => ({
      channel: channel as KnownChannel,
      address: String(address),
      type,
      scale: String(scale),
    })),
  };
}

/** Problems by field: `unitId`, or `address` and `scale` with the number of the register. */
export type ModbusProblems = Readonly<Record<string, string>>;

/** The settings that a draft says, or what is wrong with each field. */
export function modbusFrom(draft: ModbusDraft): Result<ModbusSettings, ModbusProblems> {
  const parsed = modbusSettingsSchema.safeParse({
    unitId: numberFrom(draft.unitId),
    functionCode: Number(draft.functionCode),
    registers: draft.registers.map(({ channel, address, type, scale }) => ({
      channel,
      address: numberFrom(address),
      type,
      scale: numberFrom(scale),
    })),
  });
  if (parsed.success) return succeed(parsed.data);
  const problems: Record<string, string> = {};
  for (const { path } of parsed.error.issues) {
    const [first, index, field] = path;
    if (first === 'unitId') problems.unitId = say('A whole number from 1 to 247.');
    else if (field === 'address')
      problems[`address ${String(index)}`] = say('From 0 to 65535, as on the wire.');
    else if (field === 'scale')
      problems[`scale ${String(index)}`] = say('A number such as 0.1 or 1.');
  }
  return fail(problems);
}
