import type { Stage } from '#shared-core';

/** How a stage looks on the strip: a colour of the "muted" scheme and a texture that says the same. */
export interface StageLook {
  readonly colour: string;
  readonly texture: string;
  /** For segments too narrow for the whole name. */
  readonly shortName: string;
}

export const stageLooks: Readonly<Record<Stage, StageLook>> = {
  'warm-up': { colour: '#ddcc77', texture: 'texture-dots', shortName: 'Warm-up' },
  'first-fraction': { colour: '#c97ab8', texture: 'texture-strokes', shortName: 'First' },
  'main-fraction': { colour: '#44aa99', texture: 'texture-plain', shortName: 'Main' },
  tail: { colour: '#88ccee', texture: 'texture-waves', shortName: 'Tail' },
  'cool-down': { colour: '#dddddd', texture: 'texture-grid', shortName: 'Cool-down' },
};
