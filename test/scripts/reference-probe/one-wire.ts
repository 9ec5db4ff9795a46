import { PinState } from 'avr8js';
import type { HoldsLow, OneWireSensor } from './one-wire-sensor.ts';
import type { SimulatedBoard } from './simulated-board.ts';

/** The pin of the data wire in the sketch. */
const dataPin = 2;

/**
 * The data wire between a board and its sensors: low while anybody holds it low, else pulled up by its resistor.
 */
export function wireSensors(board: SimulatedBoard, sensors: readonly OneWireSensor[]): OneWire {
  let boardHolds = false;
  let fellAtUs = 0;
  let isShorted = false;
  let sensorsHolding = 0;

  function tell(): void {
    board.pinsD.setPin(dataPin, sensorsHolding === 0 && !isShorted);
  }

  function hold(holds: HoldsLow | null): void {
    if (holds === null) return;
    const end = () => {
      sensorsHolding -= 1;
      tell();
    };
    const begin = () => {
      sensorsHolding += 1;
      tell();
      board.after(holds.forUs, end);
    };
    if (holds.afterUs === 0) begin();
    else board.after(holds.afterUs, begin);
  }

  board.pinsD.addListener(() => {
    const holdsNow = board.pinsD.pinState(dataPin) === PinState.Low;
    if (holdsNow === boardHolds) return;
    boardHolds = holdsNow;
    const atUs = board.nowUs();
    if (holdsNow) fellAtUs = atUs;
    for (const sensor of isShorted ? [] : sensors) {
      hold(holdsNow ? sensor.fell(atUs) : sensor.rose(atUs, atUs - fellAtUs));
    }
  });
  tell();
  return {
    short(shorted) {
      isShorted = shorted;
      tell();
    },
  };
}

export interface OneWire {
  /** Whether the data wire touches ground. */
  short(isShorted: boolean): void;
}
