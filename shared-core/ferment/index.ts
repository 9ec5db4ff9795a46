/** The week before: what a ferment will give, how far it has come, and whether it is finished. */
export {
  ballingGPerG,
  type FermentedLiquid,
  fermentedLiquid,
  originalExtractPlato,
  realExtractPlato,
  strengthFromGravities,
} from './balling.ts';
export { concludeFerment, type FermentConclusion, nearTheEnd } from './conclude-ferment.ts';
export {
  type FermentFacts,
  type FermentReading,
  type FermentState,
  type FermentVerdict,
  fermentStates,
  type NinetyInterval,
} from './ferment-log.ts';
export { type FermentBelief, followFerment } from './follow-ferment.ts';
export { type FruitSugar, fruitSugars } from './fruit-sugar.ts';
export { type Evidence, gatherEvidence } from './gather-evidence.ts';
export { extractGPerL, gravityFromPlato, platoFromGravity } from './gravity-and-extract.ts';
export { gravityAt20C } from './gravity-at-20.ts';
export { judgeFerment } from './judge-ferment.ts';
export { leastUsefulStrengthAbv } from './least-useful-strength.ts';
export {
  carbonDioxidePerAbvGPerL,
  dissolvedGasGPerL,
  ethanolCarriedGPerG,
  type MassLoss,
  strengthFromMassLoss,
  waterCarriedGPerG,
} from './mass-loss.ts';
export {
  type FermentPlan,
  type FermentPlanRequest,
  type FermentWarning,
  frothRoomPercent,
  type PlanRange,
  planFerment,
  type SugarSource,
  sugarToWeighG,
} from './plan-ferment.ts';
export {
  explainFermentCsvProblem,
  type FermentCsvProblem,
  type ReadFermentCsv,
  readFermentCsv,
} from './read-ferment-csv.ts';
export { scaleResolution } from './scale-resolution.ts';
export {
  carbonDioxidePerEthanolGPerG,
  dryGravity,
  fromSugar,
  lawfulSugarPerAbvGPerL,
  type PureSugar,
  type SugarGives,
  strengthOf,
} from './sugar-to-ethanol.ts';
