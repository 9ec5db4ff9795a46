/**
 * The keystroke-level model: how long hands and head of a practised person take for a task done without a mistake. Not in it: reading
 * for the first time, looking at the still, and waiting for the machine (R).
 *
 * Source: Card, Moran, Newell, “The keystroke-level model for user performance time with interactive systems”,
 * Commun. ACM 23 (1980) 396; method and times of the operators from memory.
 */
export type Operator = 'M' | 'P' | 'H' | 'K';

/** Seconds of mental preparation, pointing, homing a hand. */
const fixedS = { M: 1.35, P: 1.1, H: 0.4 } as const;
/** Seconds of a key or a button: of an average typist who is no secretary, and of the worst with an unknown keyboard. */
export const keyS = { usual: 0.28, worst: 1.2 } as const;

/** Something pressed with the pointer: think, point, press. */
export const pressed: readonly Operator[] = ['M', 'P', 'K'];

/** A field filled in: think, point, press, hand to the keys, think of the value, type it, hand back. */
export function filled(text: string): readonly Operator[] {
  return ['M', 'P', 'K', 'H', 'M', ...[...text].map(() => 'K' as const), 'H'];
}

export function modelTimeS(operators: readonly Operator[], secondsAKey: number): number {
  return operators.reduce(
    (sum, operator) => sum + (operator === 'K' ? secondsAKey : fixedS[operator]),
    0,
  );
}

/** `12 presses and fields; 48 s (97 s with the slowest typist): 16 M, 14 P, 6 H, 33 K`. */
export function modelWords(steps: number, operators: readonly Operator[]): string {
  const count = (wanted: Operator) => operators.filter((one) => one === wanted).length;
  const seconds = (secondsAKey: number) => modelTimeS(operators, secondsAKey).toFixed(0);
  const counts = (['M', 'P', 'H', 'K'] as const).map((one) => `${count(one)} ${one}`).join(', ');
  return `${steps} presses and fields; ${seconds(keyS.usual)} s (${seconds(keyS.worst)} s with the slowest typist): ${counts}`;
}
