/** A setting as it was typed or worked out, without the noise of binary numbers. */
export function settingNumber(value: number): string {
  return String(Number(value.toPrecision(6))).replace('-', '−');
}
