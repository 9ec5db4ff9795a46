/** Drawings of a run as data, and as SVG. */
export { mutedColours, stageColours } from './colours.ts';
export type { Drawing } from './drawing.ts';
export { drawingToSvg } from './drawing-to-svg.ts';
export { escapeXml } from './escape-xml.ts';
export { ethanolFigure } from './ethanol-figure.ts';
export { fermentStrengthFigure, gravitiesFigure } from './ferment-course-figure.ts';
export { fermentFigure } from './ferment-figure.ts';
export { niceTicks, timeTicks } from './nice-ticks.ts';
export { overlayFigure } from './overlay-figure.ts';
export { plateFigure } from './plate-figure.ts';
export { plateLines } from './plate-lines.ts';
export { plateauFigure } from './plateau-figure.ts';
export { type BalanceStep, stepsFigure } from './steps-figure.ts';
export { strengthFigure } from './strength-figure.ts';
export { temperatureFigure } from './temperature-figure.ts';
export { axisTimeWords } from './time-words.ts';
export { strengthByVolumeFigure, temperatureByVolumeFigure } from './volume-figures.ts';
