import { fail, type Result, succeed } from '../result/index.ts';
import { parsePlainText } from './parse-plain-text.ts';
import type { LineRejection, RawValue } from './raw-value.ts';

/** IEEE 488.2 has no NaN or infinity: instruments send 9.91E37 and ±9.9E37 instead (SCPI-99, 7.2.1). */
const notANumberFrom = 9.8e37;

/** `-113,"Undefined header"`: an error queue entry instead of a reading. */
const errorAnswer = /^[+-]?\d+\s*,\s*"/;

/**
 * Reads the answer to a measuring question: one or several numbers in NR1, NR2 or NR3 form.
 *
 * Source: IEEE 488.2, 8.7 (numeric response data); SCPI-99, volume 1, 7.2.1.
 *
 * @example
 * parseScpiAnswer('+7.84200000E+01').value[0].value // => 78.42
 * parseScpiAnswer('9.91E37').value[0].value // => null
 * parseScpiAnswer('-113,"Undefined header"').error.kind // => "answer-error"
 */
export function parseScpiAnswer(line: string): Result<readonly RawValue[], LineRejection> {
  if (errorAnswer.test(line.trim())) return fail({ kind: 'answer-error', text: line });
  const parsed = parsePlainText(line.replaceAll(',', ';'), { decimalComma: false });
  if (!parsed.ok) return fail({ kind: 'not-understood', text: line });
  return succeed(parsed.value.map(withoutStandIn));
}

function withoutStandIn(raw: RawValue): RawValue {
  const isStandIn = raw.value !== null && Math.abs(raw.value) >= notANumberFrom;
  return isStandIn ? { ...raw, value: null } : raw;
}
