/** How a number lies in 16-bit registers; the 32-bit ones take two, higher word first unless `-swapped`. */
export type RegisterType =
  | 'int16'
  | 'uint16'
  | 'int32'
  | 'int32-swapped'
  | 'float32'
  | 'float32-swapped';

/** How many registers a number of this type takes. */
export function registersIn(type: RegisterType): 1 | 2 {
  return type === 'int16' || type === 'uint16' ? 1 : 2;
}

/**
 * The number in the registers, before scaling; null when there are too few of them or it is not finite.
 *
 * @example
 * decodeRegisters([0xffff], 'int16') // => -1
 * decodeRegisters([0x429c, 0xd70a], 'float32') // ≈ 78.42 ± 1e-5
 */
export function decodeRegisters(registers: readonly number[], type: RegisterType): number | null {
  const [first, second] = type.endsWith('-swapped') ? [registers[1], registers[0]] : registers;
  if (first === undefined || (registersIn(type) === 2 && second === undefined)) return null;
  const view = new DataView(new ArrayBuffer(4));
  view.setUint16(0, first);
  view.setUint16(2, second ?? 0);
  const value = read(view, type);
  return Number.isFinite(value) ? value : null;
}

function read(view: DataView, type: RegisterType): number {
  switch (type) {
    case 'int16':
      return view.getInt16(0);
    case 'uint16':
      return view.getUint16(0);
    case 'int32':
    case 'int32-swapped':
      return view.getInt32(0);
    case 'float32':
    case 'float32-swapped':
      return view.getFloat32(0);
  }
}
