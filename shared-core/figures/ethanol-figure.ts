import type { RunBooks } from '../bookkeeping/index.ts';
import { lightPurple, mutedColours } from './colours.ts';
import { type Drawing, type Shape, softInk } from './drawing.ts';
import { label, line } from './plot-area.ts';
import { figureWidthPt } from './temperature-figure.ts';
import { type Texture, texturedBox } from './textures.ts';

interface Paint {
  readonly colour: string;
  readonly texture: Texture;
}

interface Part {
  readonly name: string;
  readonly grams: number;
  /** Null draws an empty, dashed box: what nobody has measured. */
  readonly paint: Paint | null;
}

const paints: readonly Paint[] = [
  { colour: lightPurple, texture: 'rising' },
  { colour: mutedColours.teal, texture: 'plain' },
  { colour: mutedColours.cyan, texture: 'level' },
  { colour: mutedColours.sand, texture: 'dots' },
  { colour: mutedColours.rose, texture: 'falling' },
];

const [left, right, top, bottom] = [46, figureWidthPt - 8, 18, 44];
const legendColumns = 3;

/** Where the ethanol went: one bar as long as the charge, in parts; null without a balance. */
export function ethanolFigure(books: RunBooks): Drawing | null {
  const chargedG = books.charge.ethanolG.value;
  const parts = partsOf(books);
  if (parts.length === 0) return null;
  const longest = Math.max(
    chargedG,
    parts.reduce((sum, { grams }) => sum + grams, 0),
  );
  const shapes: Shape[] = [
    label([left, top - 6], `Ethanol charged: ${chargedG.toFixed(1)} g`, 'start', softInk),
  ];
  let from = left;
  for (const [index, { name, grams, paint }] of parts.entries()) {
    const to = from + ((right - left) * grams) / longest;
    const x = left + (index % legendColumns) * ((right - left) / legendColumns);
    const y = bottom + 16 + 14 * Math.floor(index / legendColumns);
    shapes.push(
      ...part(from, top, to, bottom, paint),
      ...part(x, y - 8, x + 14, y + 1, paint),
      label([x + 19, y], `${name}: ${grams.toFixed(1)} g`, 'start'),
    );
    from = to;
  }
  return {
    widthPt: figureWidthPt,
    heightPt: bottom + 24 + 14 * Math.floor((parts.length - 1) / legendColumns),
    altText: `Where the ${chargedG.toFixed(1)} g of ethanol went: ${parts.map(({ name, grams }) => `${name} ${grams.toFixed(1)} g`).join(', ')}.`,
    shapes,
  };
}

function partsOf({ balance, cuts, unmeasuredCuts, charge }: RunBooks): readonly Part[] {
  if (balance === null) return [];
  const { residueG, holdUpG } = balance.ethanol;
  const measured = [
    ...cuts.flatMap(({ booked, number }) =>
      booked === null ? [] : [{ name: `Cut ${number}`, grams: booked.ethanolG.value }],
    ),
    ...(residueG === null ? [] : [{ name: 'Residue', grams: residueG.value }]),
    ...(holdUpG === null ? [] : [{ name: 'Hold-up', grams: holdUpG.value }]),
  ].map((part, index) => ({ ...part, paint: paints[index % paints.length] ?? null }));
  const rest = charge.ethanolG.value - measured.reduce((sum, { grams }) => sum + grams, 0);
  if (rest < 0.005 * charge.ethanolG.value) return measured;
  const name = residueG === null || unmeasuredCuts.length > 0 ? 'Not measured' : 'Missing';
  return [...measured, { name, grams: rest, paint: null }];
}

function part(
  x: number,
  y: number,
  toX: number,
  toY: number,
  paint: Paint | null,
): readonly Shape[] {
  if (paint !== null) return texturedBox(x, y, toX, toY, paint.colour, paint.texture);
  return [
    line(
      [
        [x, y],
        [toX, y],
        [toX, toY],
        [x, toY],
        [x, y],
      ],
      softInk,
      0.8,
      [3, 2],
    ),
  ];
}
