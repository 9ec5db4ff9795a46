import type { Stage } from '../stages/index.ts';
import type { Stroke } from './drawing.ts';

/**
 * Colours that can be told apart with any colour vision. Source: Paul Tol, "Colour Schemes", SRON/EPS/TN/09-002, issue 3.2
 * (2021), scheme "muted" with its pale grey.
 */
export const mutedColours = {
  indigo: '#332288',
  cyan: '#88ccee',
  teal: '#44aa99',
  green: '#117733',
  olive: '#999933',
  sand: '#ddcc77',
  rose: '#cc6677',
  wine: '#882255',
  purple: '#aa4499',
  paleGrey: '#dddddd',
} as const;

/** Ours, in no published scheme: the purple of "muted", lightened until dark words can be read on it. */
export const lightPurple = '#c97ab8';

/** Ours, in no published scheme: for the fourth to sixth of several lines, each with dashes of its own. */
export const furtherLineColours = { brown: '#aa6600', slate: '#4b4862', blue: '#0077aa' } as const;

/** Lines of several runs: each colour has a dash of its own. */
export const lineStrokes: readonly Stroke[] = [
  { colour: mutedColours.indigo, widthPt: 1.3 },
  { colour: mutedColours.wine, widthPt: 1.3, dash: [6, 3] },
  { colour: mutedColours.green, widthPt: 1.3, dash: [2, 2] },
  { colour: furtherLineColours.brown, widthPt: 1.3, dash: [8, 2, 2, 2] },
  { colour: furtherLineColours.slate, widthPt: 1.3, dash: [10, 4] },
  { colour: furtherLineColours.blue, widthPt: 1.3, dash: [4, 4] },
];

/** The colour of a stage, the same in window and print; a texture always says the same. */
export const stageColours: Readonly<Record<Stage, string>> = {
  'warm-up': mutedColours.sand,
  'first-fraction': lightPurple,
  'main-fraction': mutedColours.teal,
  tail: mutedColours.cyan,
  'cool-down': mutedColours.paleGrey,
};
