/** The week before: what a ferment will give, how far it has come, and whether it is finished. */

export { concludeFerment, type FermentConclusion } from './conclude-ferment.ts';
export {
  type DistillingAdvice,
  distillingAdvice,
} from './distilling-advice.ts';
export {
  type FermentFacts,
  type FermentReading,
  type FermentVerdict,
  fermentStates,
  type NinetyInterval,
} from './ferment-log.ts';
export { fermentTable } from './ferment-table.ts';
export { followFerment } from './follow-ferment.ts';
export { fruitSugars } from './fruit-sugar.ts';
export { gatherEvidence } from './gather-evidence.ts';
export { gravityAt20C } from './gravity-at-20.ts';
export { judgeFerment, verdictOf } from './judge-ferment.ts';
export { leastUsefulStrengthAbv } from './least-useful-strength.ts';
export { dissolvedGasGPerL, ethanolCarriedGPerG, waterCarriedGPerG } from './mass-loss.ts';
export { originOfFerment } from './origin-of-ferment.ts';
export {
  type FermentPlan,
  frothRoomPercent,
  planFerment,
  sugarToWeighG,
} from './plan-ferment.ts';
export { explainFermentCsvProblem, readFermentCsv } from './read-ferment-csv.ts';
export { factsOfFerment, readingsOfFerment, standingEntries } from './readings-of-ferment.ts';
export {
  carbonDioxidePerEthanolGPerG,
  ethanolPerAbvGPerL,
  fromSugar,
} from './sugar-to-ethanol.ts';
