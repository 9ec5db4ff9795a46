/** A point of a drawing, in points from its upper left corner (1/72 inch). */
export type Point = readonly [x: number, y: number];

export interface Stroke {
  readonly colour: string;
  readonly widthPt: number;
  readonly dash?: readonly number[];
}

/** What a drawing is made of. Few kinds, so that every output (SVG, PDF) draws the same. */
export type Shape =
  | {
      readonly kind: 'path';
      readonly points: readonly Point[];
      readonly closed?: boolean;
      readonly stroke?: Stroke;
      readonly fill?: string;
    }
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly text: string;
      readonly sizePt: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly weight?: 'regular' | 'bold';
      readonly colour: string;
      /** Turned a quarter to the left, for the title of a vertical axis. */
      readonly upright?: boolean;
    };

/** A figure as data: pure, so it can be compared, tested and drawn anywhere. */
export interface Drawing {
  readonly widthPt: number;
  readonly heightPt: number;
  /** What it shows, in a sentence, for people who can't see it. */
  readonly altText: string;
  readonly shapes: readonly Shape[];
}

/** Ink of lines and words on white paper. */
export const ink = '#17152b';
export const softInk = '#4b4862';
export const rule = '#cfcbbf';
