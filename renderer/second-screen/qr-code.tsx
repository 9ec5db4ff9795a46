import qrcode from 'qrcode-generator';
import { say } from '#shared-core';

/** Blank squares that scanners need around a code (ISO/IEC 18004). */
const margin = 4;

/** An address to be scanned; always dark on white, whatever the theme, since scanners expect that. */
export function QrCode({ text }: { readonly text: string }) {
  const code = qrcode(0, 'M');
  code.addData(text);
  code.make();
  const count = code.getModuleCount();
  const size = count + 2 * margin;
  const squares = Array.from({ length: count }, (_, row) =>
    Array.from({ length: count }, (_, column) =>
      code.isDark(row, column) ? `M${column + margin} ${row + margin}h1v1h-1z` : '',
    ).join(''),
  ).join('');
  return (
    <svg
      className="qr-code"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={say('The address as a square code for cameras')}
      shapeRendering="crispEdges"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={squares} fill="#000" />
    </svg>
  );
}
