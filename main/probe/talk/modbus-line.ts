import {
  findModbusAnswer,
  type LineOutcome,
  modbusQuestionBytes,
  type Result,
  worded,
} from '#shared-core';

type ModbusQuestion = Parameters<typeof modbusQuestionBytes>[0];

/** Registers as read; else why not, null when nothing was heard at all: silence is judged elsewhere. */
export type ModbusAnswer = Result<readonly number[], LineOutcome['rejections'][number] | null>;

/** One question at a time over a line that is opened and watched elsewhere. */
export interface ModbusLine {
  ask(question: ModbusQuestion, address: number, atS: number): Promise<ModbusAnswer>;
  receive(bytes: Uint8Array): void;
  /** Gives up a question that has waited too long. */
  tick(atS: number): void;
  /** Whether the answer to a question that was given up may still come: nothing should be asked yet. */
  isResting(atS: number): boolean;
  /** Nothing heard before may be joined to what comes now; an open question is given up. */
  forget(): void;
  /** Bytes heard and not part of an answer. */
  droppedBytes(): number;
}

/** "1 s to several seconds" at 9600 baud: MODBUS over Serial Line V1.02, 2.4.1 (from memory). */
const patienceS = 2;
/**
 * An answer does not say which register it is about, so a late one would be taken for the next question's, and every later one too.
 * With the patience still less than the silence that counts as a loss.
 */
const restS = 1;

/** Longest frame the serial line may carry. MODBUS over Serial Line V1.02, 2.5.1.1. */
const longestFrame = 256;

/** What a refusal means. MODBUS Application Protocol Specification V1.1b3, 7. */
const refusals: Readonly<Record<number, string>> = {
  1: worded('the device does not know this function'),
  2: worded('the device has no register at this address'),
  3: worded('the device does not take this question'),
  4: worded('the device reports a failure of its own'),
  6: worded('the device is busy'),
};

/**
 * Reads registers over the line. No library: framing has to find its answers among noise and late bytes (so it is ours, with
 * its checksum), and all that was left to one are the eight bytes of a question.
 */
export function createModbusLine(send: (bytes: Uint8Array) => void): ModbusLine {
  let heard: Uint8Array = new Uint8Array();
  let dropped = 0;
  let heardSinceAsked = false;
  let restsUntilS = Number.NEGATIVE_INFINITY;
  let open: {
    readonly question: ModbusQuestion;
    readonly askedAtS: number;
    readonly answer: (answer: ModbusAnswer) => void;
  } | null = null;

  function close(answer: ModbusAnswer): void {
    const closing = open;
    open = null;
    closing?.answer(answer);
  }

  function forget(): void {
    dropped += heard.length;
    heard = new Uint8Array();
    close({ ok: false, error: null });
  }

  return {
    ask(question, address, atS) {
      forget();
      heardSinceAsked = false;
      return new Promise((answer) => {
        open = { question, askedAtS: atS, answer };
        send(modbusQuestionBytes(question, address));
      });
    },
    receive(bytes) {
      heardSinceAsked = true;
      const all = Buffer.concat([heard, bytes]);
      const surplus = Math.max(0, all.length - longestFrame);
      dropped += surplus;
      heard = all.subarray(surplus);
      const place = open && findModbusAnswer(heard, open.question);
      if (!place) return;
      const frame = heard.subarray(place.start, place.start + place.length);
      heard = heard.subarray(place.start + place.length);
      dropped += place.start;
      close(readAnswer(frame));
    },
    tick(atS) {
      if (open === null || atS - open.askedAtS < patienceS) return;
      restsUntilS = atS + restS;
      close({ ok: false, error: heardSinceAsked ? { kind: 'checksum', text: '' } : null });
    },
    isResting: (atS) => atS < restsUntilS,
    forget,
    droppedBytes: () => dropped,
  };
}

/** An undamaged answer: unit, function, number of bytes, registers, checksum; or unit, refused function, reason, checksum. */
function readAnswer(frame: Uint8Array): ModbusAnswer {
  const view = new DataView(frame.buffer, frame.byteOffset, frame.byteLength);
  const reason = view.getUint8(2);
  if (view.getUint8(1) & 0x80) {
    const text = worded('{refusal} (Modbus exception {reason})', {
      refusal: refusals[reason] ?? worded('the device refuses'),
      reason: `${reason}`,
    });
    return { ok: false, error: { kind: 'answer-error', text } };
  }
  const registers = Array.from({ length: reason / 2 }, (_, index) => view.getUint16(3 + 2 * index));
  return { ok: true, value: registers };
}
