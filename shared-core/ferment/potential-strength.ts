import { pasteurEthanolGPerG } from '../bookkeeping/index.ts';
import { fromSugar, strengthOf } from './sugar-to-ethanol.ts';

/** Strength that sugar of a kind not told gives in practice [% vol], midway between hexose and table sugar. */
export function pureSugarPotentialAbv(sugarG: number, volumeMl: number): number {
  const asSucrose = fromSugar(sugarG, 'sucrose').inPracticeEthanolG;
  return strengthOf((asSucrose + pasteurEthanolGPerG * sugarG) / 2, volumeMl / 1000);
}
