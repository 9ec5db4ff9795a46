export { mutedColours, stageColours } from './colours.ts';
export type { Drawing, Point, Shape, Stroke } from './drawing.ts';
export { drawingToSvg } from './drawing-to-svg.ts';
export { escapeXml } from './escape-xml.ts';
export { ethanolFigure } from './ethanol-figure.ts';
export { niceTicks, type Ticks, timeTicks } from './nice-ticks.ts';
export { overlayFigure } from './overlay-figure.ts';
export { plateFigure } from './plate-figure.ts';
export { plateauFigure } from './plateau-figure.ts';
export { strengthFigure } from './strength-figure.ts';
export { type FigureDetail, temperatureFigure } from './temperature-figure.ts';
export {
  type RunOfVolumes,
  strengthByVolumeFigure,
  temperatureByVolumeFigure,
  type VolumeFigureDetail,
} from './volume-figures.ts';
