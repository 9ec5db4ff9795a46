import { PinState } from 'avr8js';
import type { SimulatedBoard } from './simulated-board.ts';

/*
 * The converter of a Pt100 amplifier as far as the sketch asks it (MAX31865 data sheet, table 1 and 2, from memory):
 * register 0 configures, 1 and 2 hold the ratio of the sensor to the reference resistor in 15 bits, above a bit
 * that tells a fault and stays until it is cleared.
 */

const selectPin = 2; // pin 10 of the board is bit 2 of port B
const referenceOhm = 430;
const configuration = { automatic: 0x40, bias: 0x80, clearFault: 0x02 } as const;

export interface ResistanceConverter {
  /** Null while the sensor's wire is broken. */
  resistanceOhm: number | null;
  /** The amplifier lost its supply for a moment. */
  restart(): void;
}

export function wireConverter(board: SimulatedBoard): ResistanceConverter {
  let configured = 0;
  let hasFault = false;
  let address: number | null = null;
  const converter: ResistanceConverter = {
    resistanceOhm: 100,
    restart() {
      configured = 0;
      hasFault = false;
    },
  };

  function ratioRegister(): number {
    const measures =
      (configured & configuration.automatic) !== 0 && (configured & configuration.bias) !== 0;
    if (!measures) return 0;
    if (converter.resistanceOhm === null) hasFault = true;
    const ratio = Math.min(
      0x7fff,
      ((converter.resistanceOhm ?? referenceOhm) / referenceOhm) * 0x8000,
    );
    return (Math.floor(ratio) << 1) | Number(hasFault);
  }

  function exchange(byte: number): number {
    if (board.pinsB.pinState(selectPin) !== PinState.Low) return 0xff;
    if (address === null) {
      address = byte;
      return 0xff;
    }
    if (address === 0x80) {
      configured = byte & ~configuration.clearFault;
      if ((byte & configuration.clearFault) !== 0) hasFault = false;
    }
    if (address === 0x01) return ratioRegister() >> 8;
    return address === 0x02 ? ratioRegister() & 0xff : 0xff;
  }

  board.pinsB.addListener(() => {
    if (board.pinsB.pinState(selectPin) !== PinState.Low) address = null;
  });
  board.spi.onByte = (byte) => {
    const answer = exchange(byte);
    board.after(board.spi.transferCycles / 16, () => board.spi.completeTransfer(answer));
  };
  return converter;
}
