import { type Stage, say, stageColours } from '#shared-core';

/** How a stage looks on the strip: its colour and a texture that says the same. */
export interface StageLook {
  readonly colour: string;
  readonly texture: string;
  /** For segments too narrow for the whole name. */
  readonly shortName: string;
}

export const stageLooks: Readonly<Record<Stage, StageLook>> = {
  'warm-up': {
    colour: stageColours['warm-up'],
    texture: 'texture-dots',
    shortName: say('Warm-up'),
  },
  'first-fraction': {
    colour: stageColours['first-fraction'],
    texture: 'texture-strokes',
    shortName: say('First'),
  },
  'main-fraction': {
    colour: stageColours['main-fraction'],
    texture: 'texture-plain',
    shortName: say('Main'),
  },
  tail: { colour: stageColours.tail, texture: 'texture-waves', shortName: say('Tail') },
  'cool-down': {
    colour: stageColours['cool-down'],
    texture: 'texture-grid',
    shortName: say('Cool-down'),
  },
};
