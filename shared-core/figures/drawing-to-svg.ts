import type { Drawing, Shape, Stroke } from './drawing.ts';
import { escapeXml } from './escape-xml.ts';

/** Fonts in order of preference; the first one is in the PDF report too. */
const fontFamily = "'Source Sans 3', 'Source Sans Pro', 'Helvetica Neue', Arial, sans-serif";

/**
 * A drawing as a whole SVG 1.1 document with title, white ground and no script, style sheet or outside reference.
 *
 * @param drawing sizes and places in points [pt], all finite
 *
 * Source: W3C, Scalable Vector Graphics 1.1 (2nd ed.), chapters 5, 8, 10 and 11.
 * @example
 * const line = { kind: 'path', points: [[0, 0], [10, 5]], stroke: { colour: '#000', widthPt: 1 } };
 * drawingToSvg({ widthPt: 10, heightPt: 5, altText: 'A < B', shapes: [line] }).includes('<path d="M0 0L10 5"') // => true
 * drawingToSvg({ widthPt: 10, heightPt: 5, altText: 'A < B', shapes: [line] }).includes('<title>A &lt; B</title>') // => true
 */
export function drawingToSvg({ widthPt, heightPt, altText, shapes }: Drawing): string {
  const [width, height] = [round(widthPt), round(heightPt)];
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}pt" height="${height}pt" ` +
    `viewBox="0 0 ${width} ${height}" role="img" font-family="${fontFamily}">\n` +
    `<title>${escapeXml(altText)}</title>\n` +
    `<rect width="${width}" height="${height}" fill="#ffffff"/>\n` +
    `${shapes.map(shapeToSvg).join('\n')}\n</svg>\n`
  );
}

function shapeToSvg(shape: Shape): string {
  if (shape.kind === 'path') {
    const steps = shape.points.map(
      ([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`,
    );
    const d = `${steps.join('')}${shape.closed ? 'Z' : ''}`;
    return `<path d="${d}" fill="${shape.fill ?? 'none'}"${strokeToSvg(shape.stroke)}/>`;
  }
  const [x, y] = [round(shape.at[0]), round(shape.at[1])];
  const turn = shape.upright ? ` transform="rotate(-90 ${x} ${y})"` : '';
  const weight = shape.weight === 'bold' ? ' font-weight="700"' : '';
  const anchor = shape.anchor === 'start' ? '' : ` text-anchor="${shape.anchor}"`;
  return (
    `<text x="${x}" y="${y}" font-size="${round(shape.sizePt)}" fill="${shape.colour}"` +
    `${weight}${anchor}${turn}>${escapeXml(shape.text)}</text>`
  );
}

function strokeToSvg(stroke: Stroke | undefined): string {
  if (stroke === undefined) return '';
  const dash =
    stroke.dash === undefined ? '' : ` stroke-dasharray="${stroke.dash.map(round).join(' ')}"`;
  return (
    ` stroke="${stroke.colour}" stroke-width="${round(stroke.widthPt)}"` +
    ` stroke-linejoin="round" stroke-linecap="round"${dash}`
  );
}

const round = (value: number) => Math.round(value * 100) / 100;
