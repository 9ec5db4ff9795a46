import { EventEmitter } from 'node:events';
import { findModbusAnswer, type ModbusQuestion } from '#shared-core';

/** Longest frame the serial line may carry. MODBUS over Serial Line V1.02, 2.5.1.1. */
const longestFrame = 256;

/**
 * What the Modbus library takes for a serial port, over a line that is opened and watched elsewhere.
 * It hands the library whole, undamaged answers only, so noise and late answers never reach it.
 */
export class ModbusPort extends EventEmitter {
  readonly isOpen = true;
  /** Bytes heard and not part of an answer. */
  droppedBytes = 0;
  /** Whether anything was heard since the last question. */
  heardSinceAsked = false;
  private heard: Uint8Array = new Uint8Array();
  private question: ModbusQuestion | null = null;
  private readonly send: (bytes: Uint8Array) => void;

  constructor(send: (bytes: Uint8Array) => void) {
    super();
    this.send = send;
  }

  open(done: (error: Error | null) => void): void {
    done(null);
  }

  close(done?: () => void): void {
    done?.();
  }

  /** The library's question; only reading functions are ever built here. */
  write(frame: Buffer): void {
    const functionCode = frame.readUInt8(1);
    if (functionCode !== 3 && functionCode !== 4) return;
    this.forget();
    this.heardSinceAsked = false;
    this.question = {
      unitId: frame.readUInt8(0),
      functionCode,
      registerCount: frame.readUInt16BE(4),
    };
    this.send(frame);
  }

  receive(bytes: Uint8Array): void {
    this.heardSinceAsked = true;
    const heard = Buffer.concat([this.heard, bytes]);
    const surplus = Math.max(0, heard.length - longestFrame);
    this.droppedBytes += surplus;
    this.heard = heard.subarray(surplus);
    if (this.question === null) return;
    const place = findModbusAnswer(this.heard, this.question);
    if (place === null) return;
    const answer = Buffer.from(this.heard.subarray(place.start, place.start + place.length));
    this.heard = this.heard.subarray(place.start + place.length);
    this.droppedBytes += place.start;
    this.question = null;
    this.emit('data', answer);
  }

  /** Nothing heard before may be joined to what comes now. */
  forget(): void {
    this.droppedBytes += this.heard.length;
    this.heard = new Uint8Array();
    this.question = null;
  }
}
