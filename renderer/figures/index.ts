/** Squared paper with two axes, and the frame and table that go with a figure. */
export { type Axis, percentAxis } from './axis.ts';
export { DrawnFigure } from './drawn-figure.tsx';
export { DrawnShapes } from './drawn-shapes.tsx';
export { FigureFrame } from './figure-frame.tsx';
export { keepOutOfTabOrder } from './keep-out-of-tab-order.ts';
export { NumbersTable } from './numbers-table.tsx';
export { PlotAxes } from './plot-axes.tsx';
export { PlotPaper } from './plot-paper.tsx';
export type { PlotScale } from './plot-scale.ts';
export { PressArea } from './press-area.tsx';
export { StrengthAgainstShare } from './strength-against-share.tsx';
export { timeAxis } from './time-axis.ts';
export { ToldTable } from './told-table.tsx';
export { type BoxSize, useBoxSize } from './use-box-size.ts';
