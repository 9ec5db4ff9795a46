/** The stages of a run, and when they are expected to end. */
export { type ForecastView, forecastViewSchema } from './forecast-view.ts';
export {
  type Condition,
  type Stage,
  type StageSpan,
  stageCallSchema,
  stageLabels,
  stageSpanSchema,
  stages,
} from './stage.ts';
