import { modbusSettingsSchema, type RequestAnswer, type SerialSource, worded } from '#shared-core';
import type { Trial } from './try-talk.ts';

/** One way of asking a Modbus transmitter, and what to make of the answer. */
export interface ModbusSearchQuestion {
  readonly source: SerialSource;
  readonly judge: (trial: Trial) => RequestAnswer<'probe/find'> | null;
}

const speeds = [9600, 19_200, 115_200, 38_400, 4800] as const;
const parities = ['none', 'even'] as const;
const lineWords = {
  none: (baudRate: string) => worded('{baudRate} baud, no parity', { baudRate }),
  even: (baudRate: string) => worded('{baudRate} baud, even parity', { baudRate }),
} as const;
const functionCodes = [4, 3] as const;

/** Tenths are usual, then hundredths, then whole degrees (common practice, no source). */
const scales = [0.1, 0.01, 1] as const;
/** A probe that waits on a bench, or hangs in a still, shows something between these. */
const expectedC = { low: 5, high: 110 } as const;

/** The first register of unit 1, at the usual speeds and parities, with both reading functions. */
export function modbusQuestions(
  at: (rest: Partial<SerialSource>) => SerialSource,
): readonly ModbusSearchQuestion[] {
  return speeds.flatMap((baudRate) =>
    parities.flatMap((parity) =>
      functionCodes.map((functionCode) => {
        const withScale = (scale: number) =>
          at({
            baudRate,
            parity,
            language: 'modbus-rtu',
            modbus: modbusSettingsSchema.parse({ functionCode, registers: [{ scale }] }),
          });
        return {
          source: { ...withScale(1), askEveryS: 0.2 },
          judge: (trial) => judge(trial, withScale, lineWords[parity](`${baudRate}`)),
        };
      }),
    ),
  );
}

function judge(
  trial: Trial,
  withScale: (scale: number) => SerialSource,
  line: string,
): RequestAnswer<'probe/find'> | null {
  const raw = trial.outcomes.at(-1)?.values[0]?.value;
  if (raw === undefined) return null;
  const scale = scales.find((each) => raw * each >= expectedC.low && raw * each <= expectedC.high);
  const heard = trial.outcomes.slice(-5).map(({ text }) => text);
  if (scale === undefined) {
    return {
      source: null,
      heard,
      because: worded(
        'A Modbus device answers ({line}), but its first register is no temperature: take the register from its manual.',
        { line },
      ),
    };
  }
  return {
    source: withScale(scale),
    heard,
    because: worded(
      'A Modbus device answers ({line}); its first register reads as {temperature} °C. Check that against a thermometer.',
      { line, temperature: `${Number((raw * scale).toPrecision(4))}` },
    ),
  };
}
