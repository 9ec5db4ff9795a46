export { type Axis, roundTicks } from '../figures/axis.ts';
export { NumbersTable } from '../figures/numbers-table.tsx';
export { PlotPaper } from '../figures/plot-paper.tsx';
export { type PlotScale, plotScale } from '../figures/plot-scale.ts';
export { timeAxis } from '../figures/time-axis.ts';
export { CursorLayer } from './cursor-layer.tsx';
export { UnderstandPanel } from './understand-panel.tsx';
export { type Understanding, useUnderstanding } from './use-understanding.ts';
