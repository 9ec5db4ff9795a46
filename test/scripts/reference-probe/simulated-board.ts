import {
  AVRIOPort,
  AVRSPI,
  AVRTimer,
  AVRUSART,
  avrInstruction,
  CPU,
  portBConfig,
  portDConfig,
  spiConfig,
  timer0Config,
  usart0Config,
} from 'avr8js';

/** ATmega328P at 16 MHz: the chip of the most common small board. */
export const clockHz = 16_000_000;
const cyclesPerUs = clockHz / 1e6;

/** The instruction that stops the processor until something interrupts it. */
const sleepOpcode = 0x9588;

/** Sleep is passed over in steps of 64 µs, so it ends up to that much late; the sketches only sleep where milliseconds pass. */
const cyclesPerSleepStep = 1024;

/** A board that runs a compiled sketch, with a simulated chip instead of a real one. */
export interface SimulatedBoard {
  readonly pinsB: AVRIOPort;
  readonly pinsD: AVRIOPort;
  readonly spi: AVRSPI;
  /** Microseconds since the board was switched on. */
  nowUs(): number;
  /** Does it after so many microseconds. */
  after(delayUs: number, act: () => void): void;
  /** Runs on for so long, and gives what it sent. */
  run(seconds: number): string;
}

export function createBoard(flash: Uint16Array): SimulatedBoard {
  const cpu = new CPU(flash, 0x800);
  new AVRTimer(cpu, timer0Config);
  const serial = new AVRUSART(cpu, usart0Config, clockHz);
  const sent: number[] = [];
  let endCycles = 0;
  serial.onByteTransmit = (byte) => sent.push(byte);
  return {
    pinsB: new AVRIOPort(cpu, portBConfig),
    pinsD: new AVRIOPort(cpu, portDConfig),
    spi: new AVRSPI(cpu, spiConfig, clockHz),
    nowUs: () => cpu.cycles / cyclesPerUs,
    after: (delayUs, act) => {
      cpu.addClockEvent(act, Math.round(delayUs * cyclesPerUs));
    },
    run: (seconds) => {
      endCycles += seconds * clockHz;
      while (cpu.cycles < endCycles) {
        const sleeps = cpu.progMem[cpu.pc] === sleepOpcode;
        avrInstruction(cpu);
        cpu.tick();
        while (sleeps && cpu.nextInterrupt < 0 && cpu.cycles < endCycles) {
          cpu.cycles += cyclesPerSleepStep;
          cpu.tick();
        }
      }
      return String.fromCharCode(...sent.splice(0));
    },
  };
}
