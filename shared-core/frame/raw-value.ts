/** Units a probe may write behind a number. */
export type WireUnit =
  | '°C'
  | '°F'
  | 'K'
  | 'ohm'
  | 'g'
  | 'kg'
  | 'mL'
  | 'kPa'
  | 'hPa'
  | 'Pa'
  | 'mmHg';

/** A number as it stood in the line, before any meaning is given to it. */
export interface RawValue {
  /** The name in the line, or null when the number stood alone. */
  readonly name: string | null;
  /** null when the probe says that it has no value (`nan`, `---`, `open`). */
  readonly value: number | null;
  readonly unit: WireUnit | null;
}

/** Why a whole line, or one value in it, was not taken as a reading. */
export type LineRejection =
  | { readonly kind: 'not-understood'; readonly text: string }
  | { readonly kind: 'ambiguous-comma'; readonly text: string }
  | { readonly kind: 'no-value'; readonly text: string }
  | { readonly kind: 'too-long' }
  | { readonly kind: 'outside-range'; readonly text: string }
  | { readonly kind: 'checksum'; readonly text: string }
  | { readonly kind: 'answer-error'; readonly text: string };

/** Most values taken from one line; more is not a thermometer. */
export const mostValuesInLine = 16;
