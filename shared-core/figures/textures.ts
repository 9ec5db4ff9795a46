import type { Stage } from '../stages/index.ts';
import { stageColours } from './colours.ts';
import type { Point, Shape } from './drawing.ts';
import { box, line } from './plot-area.ts';

export type Texture = 'plain' | 'rising' | 'falling' | 'dots' | 'cross' | 'level';

/** How a stage is drawn: its colour and a texture that says the same. */
export const stagePaint: Readonly<
  Record<Stage, { readonly colour: string; readonly texture: Texture }>
> = {
  'warm-up': { colour: stageColours['warm-up'], texture: 'dots' },
  'first-fraction': { colour: stageColours['first-fraction'], texture: 'rising' },
  'main-fraction': { colour: stageColours['main-fraction'], texture: 'plain' },
  tail: { colour: stageColours.tail, texture: 'level' },
  'cool-down': { colour: stageColours['cool-down'], texture: 'cross' },
};

const textureInk = '#5d5a70';

/** A rectangle in a colour and a texture, worked out as lines so that any output draws it alike. */
export function texturedBox(
  left: number,
  top: number,
  right: number,
  bottom: number,
  colour: string,
  texture: Texture,
): readonly Shape[] {
  const area = { left, top, right, bottom };
  const thin = (points: readonly Point[]) => line(points, textureInk, 0.5);
  return [
    box(left, top, right, bottom, colour, '#ffffff'),
    ...(texture === 'rising' || texture === 'cross' ? slanted(area, 1).map(thin) : []),
    ...(texture === 'falling' || texture === 'cross' ? slanted(area, -1).map(thin) : []),
    ...(texture === 'level' ? level(area).map(thin) : []),
    ...(texture === 'dots' ? dots(area).map(thin) : []),
  ];
}

interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const spacingPt = 6;

function slanted(
  { left, top, right, bottom }: Area,
  direction: 1 | -1,
): readonly (readonly Point[])[] {
  const height = bottom - top;
  const lines: Point[][] = [];
  for (let start = left - height; start < right; start += spacingPt) {
    const from = Math.max(start, left);
    const to = Math.min(start + height, right);
    if (to - from < 0.5) continue;
    const heightAt = (x: number) => (direction === 1 ? bottom - (x - start) : top + (x - start));
    lines.push([
      [from, heightAt(from)],
      [to, heightAt(to)],
    ]);
  }
  return lines;
}

function level({ left, top, right, bottom }: Area): readonly (readonly Point[])[] {
  const lines: Point[][] = [];
  for (let y = top + 3; y < bottom - 1; y += 4)
    lines.push([
      [left + 0.5, y],
      [right - 0.5, y],
    ]);
  return lines;
}

function dots({ left, top, right, bottom }: Area): readonly (readonly Point[])[] {
  const marks: Point[][] = [];
  let isOdd = false;
  for (let y = top + 3; y < bottom - 1; y += 4) {
    for (let x = left + (isOdd ? 6 : 3); x < right - 1.5; x += spacingPt)
      marks.push([
        [x, y],
        [x + 0.7, y],
      ]);
    isOdd = !isOdd;
  }
  return marks;
}
