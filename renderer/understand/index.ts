export { type Axis, roundTicks } from './axis.ts';
export { CursorLayer } from './cursor-layer.tsx';
export { NumbersTable } from './numbers-table.tsx';
export { PlotPaper } from './plot-paper.tsx';
export { type PlotScale, plotScale } from './plot-scale.ts';
export { timeAxis } from './time-axis.ts';
export { UnderstandPanel } from './understand-panel.tsx';
export { type Understanding, useUnderstanding } from './use-understanding.ts';
