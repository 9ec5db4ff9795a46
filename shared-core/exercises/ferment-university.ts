import { gayLussacGPerG, pasteurEthanolGPerG } from '../bookkeeping/index.ts';
import {
  carbonDioxidePerEthanolGPerG,
  dissolvedGasGPerL,
  ethanolPerAbvGPerL,
  waterCarriedGPerG,
} from '../ferment/index.ts';
import type { FermentStudy } from '../study/index.ts';
import { standardFromNinety } from '../uncertainty/index.ts';
import { decimalsFor, numberWords } from '../wording/index.ts';
import { answerOf, type Exercise, exercise, shown } from './exercise.ts';
import { fallen, massLost } from './ferment-facts.ts';
import { abvPerFall } from './ferment-school.ts';

/**
 * Extract by gravity [°P], as printed. Source: the cubic of the ASBC's table, see `platoFromGravity`; the sheet prints three decimals.
 */
const cubic = [135.997, -630.272, 1111.14, -616.868] as const;
const extractOf = (gravity: number) =>
  shown(((cubic[0] * gravity + cubic[1]) * gravity + cubic[2]) * gravity + cubic[3], 2);
/** Relative density of ethanol, 20/20. */
const ethanolGravity = shown((100 * ethanolPerAbvGPerL) / 998.20123, 4);

/** Extract, real extract, ethanol and strength by Balling. */
export function ballingBalance(study: FermentStudy): Exercise | null {
  const found = fallen(study);
  const { strengthAbv } = study.verdict;
  if (found === null || strengthAbv === null) return null;
  const { first, last } = found;
  const [original, apparent] = [extractOf(first.gravity), extractOf(last.gravity)];
  const real = shown(0.1808 * original + 0.8192 * apparent, 2);
  const massPercent = shown((original - real) / (2.0665 - (1.0665 * original) / 100), 2);
  const abv = shown((massPercent * last.gravity) / ethanolGravity, 1);
  return exercise({
    id: 'undergraduate-balling',
    level: 'undergraduate',
    title: 'From two gravities to the strength',
    question:
      'Work out the extracts of both gravities, the real extract that is left, the ethanol by mass and by volume. Why does a hydrometer show less extract than there is?',
    given: [
      `Gravity (20/20) at first: s₀ = ${first.gravity.toFixed(3)}; at last: s = ${last.gravity.toFixed(3)}.`,
      `Extract in % by mass: ${cubic[0]} s³ − ${-cubic[1]} s² + ${cubic[2]} s − ${-cubic[3]}.`,
      // Source: C. J. N. Balling’s factors, see `realExtractPlato` and `originalExtractPlato`.
      'Balling: real extract E = 0.1808 p + 0.8192 m (p original, m apparent); ethanol A = (p − E)/(2.0665 − 1.0665 p/100) in % by mass.',
      `Strength in % vol = A s/${ethanolGravity.toFixed(4)}.`,
    ],
    marks: 6,
    answer: answerOf(
      [
        { of: 'original extract', value: original, tolerance: 0.1, unit: '%', decimals: 2 },
        { of: 'real extract', value: real, tolerance: 0.1, unit: '%', decimals: 2 },
        { of: 'ethanol', value: massPercent, tolerance: 0.1, unit: '%', decimals: 2 },
        { of: 'strength', value: abv, tolerance: 0.2, unit: '% vol', decimals: 1 },
      ],
      'Ethanol is lighter than water and hides extract.',
    ),
    working: [
      `p = ${original.toFixed(2)} %; m = ${numberWords(apparent, 2)} %.`,
      `E = 0.1808 × ${original.toFixed(2)} + 0.8192 × (${numberWords(apparent, 2)}) = ${real.toFixed(2)} %.`,
      `A = (${original.toFixed(2)} − ${real.toFixed(2)})/(2.0665 − 1.0665 × ${original.toFixed(2)}/100) = ${massPercent.toFixed(2)} %.`,
      `${massPercent.toFixed(2)} × ${last.gravity.toFixed(3)}/${ethanolGravity.toFixed(4)} = ${abv.toFixed(1)} % vol. The log as a whole says ${strengthAbv.value.toFixed(1)} % vol (90 % interval ${strengthAbv.low.toFixed(1)} to ${strengthAbv.high.toFixed(1)}).`,
    ],
    answerLines: 10,
  });
}

/** Half a division of a classroom's hydrometer; common practice, no source. */
const halfDivision = 0.0005;

/** What the scale of the hydrometer leaves open. */
export function strengthDoubt(study: FermentStudy): Exercise | null {
  const found = fallen(study);
  if (found === null) return null;
  const fall = shown(found.first.gravity - found.last.gravity, 3);
  const standard = shown((abvPerFall * halfDivision * Math.SQRT2) / Math.sqrt(3), 3);
  const relative = shown((100 * standard) / (abvPerFall * fall), 1);
  return exercise({
    id: 'undergraduate-strength-doubt',
    level: 'undergraduate',
    title: 'What does the scale leave open?',
    question: `Each gravity is read to the nearest division of 0.001. Take the error as evenly spread over ±${halfDivision} and both readings as independent: what are the standard uncertainty of the strength by strength = ${abvPerFall} × fall, and its share of the strength?`,
    given: [`Fall of the gravity: ${fall.toFixed(3)}.`],
    marks: 3,
    answer: answerOf([
      { of: 'u', value: standard, tolerance: 0.005, unit: '% vol', decimals: 3 },
      {
        of: 'share',
        value: relative,
        tolerance: Math.max(0.1, shown(0.1 * relative, 1)),
        unit: '%',
        decimals: 1,
      },
    ]),
    working: [
      `u(gravity) = ${halfDivision}/√3; u(fall) = √2 u(gravity); u(strength) = ${abvPerFall} u(fall) = ${standard.toFixed(3)} % vol.`,
      `${standard.toFixed(3)}/(${abvPerFall} × ${fall.toFixed(3)}) × 100 % = ${relative.toFixed(1)} %.`,
    ],
    answerLines: 6,
  });
}

/** Ethanol of hexose and of a litre with 1 % vol, as printed. */
const gayLussac = shown(gayLussacGPerG, 4);
const gPerAbvL = shown(ethanolPerAbvGPerL, 3);
const practicalPercent = ((100 * pasteurEthanolGPerG) / gayLussacGPerG).toFixed(1);

/** How much of the sugar became alcohol, with its uncertainty. */
export function yieldOfSugar({ balance, verdict, kept }: FermentStudy): Exercise | null {
  const { strengthAbv } = verdict;
  if (balance === null || strengthAbv === null) return null;
  const doubtG = 2 * balance.sugarG.standardUncertainty;
  const decimals = decimalsFor(doubtG);
  const [sugarG, sugarU] = [shown(balance.sugarG.value, decimals), shown(doubtG, decimals)];
  const abv = shown(strengthAbv.value, 1);
  const abvU = shown(2 * standardFromNinety(strengthAbv), 1);
  const litres = shown(kept.stated.volumeMl / 1000, 3);
  if (abvU === 0) return null;
  const mostG = shown(gayLussac * sugarG, 2);
  const ethanolG = shown(abv * gPerAbvL * litres, 2);
  const percent = shown((100 * ethanolG) / mostG, 1);
  const expanded = shown(percent * Math.hypot(sugarU / sugarG, abvU / abv), 1);
  return exercise({
    id: 'undergraduate-sugar-yield',
    level: 'undergraduate',
    title: 'How much sugar became alcohol?',
    question: `Work out the ethanol that the sugar could give at most, the ethanol that is there, the yield of the fermentation and its expanded uncertainty (k = 2, both readings independent). Compare it with Pasteur’s ${practicalPercent} %.`,
    given: [
      `Sugar at the beginning, as hexose: (${sugarG.toFixed(decimals)} ± ${sugarU.toFixed(decimals)}) g, k = 2. C₆H₁₂O₆ → 2 C₂H₅OH + 2 CO₂: ${gayLussac} g/g.`,
      `Ferment: ${litres} L of (${abv.toFixed(1)} ± ${abvU.toFixed(1)}) % vol, k = 2; ${gPerAbvL} g of ethanol in a litre for each % vol.`,
    ],
    marks: 6,
    answer: answerOf([
      {
        of: 'at most',
        value: mostG,
        tolerance: Math.max(0.1, shown(0.005 * mostG, 1)),
        unit: 'g',
        decimals: 2,
      },
      {
        of: 'there',
        value: ethanolG,
        tolerance: Math.max(0.1, shown(0.005 * ethanolG, 1)),
        unit: 'g',
        decimals: 2,
      },
      { of: 'yield', value: percent, tolerance: 0.5, unit: '%', decimals: 1 },
      {
        of: 'U',
        value: expanded,
        tolerance: Math.max(0.3, shown(0.1 * expanded, 1)),
        unit: '%',
        decimals: 1,
      },
    ]),
    working: [
      `At most: ${gayLussac} × ${sugarG.toFixed(decimals)} = ${mostG.toFixed(2)} g.`,
      `There: ${abv.toFixed(1)} × ${gPerAbvL} × ${litres} = ${ethanolG.toFixed(2)} g. Yield: ${percent.toFixed(1)} %.`,
      `U = ${percent.toFixed(1)} × √((${sugarU.toFixed(decimals)}/${sugarG.toFixed(decimals)})² + (${abvU.toFixed(1)}/${abv.toFixed(1)})²) = ${expanded.toFixed(1)} %.`,
      percent > 100
        ? 'More than the sugar can give, by more or less than U: sugar, volume or strength may be misread.'
        : 'What is missing of 100 % is yeast, glycerol and other products, and sugar that is left.',
    ],
    answerLines: 8,
  });
}

/** The loss of mass as a second way to the strength. */
export function gasToEthanol(study: FermentStudy): Exercise | null {
  const lost = massLost(study);
  const { strengthAbv } = study.verdict;
  if (lost === null || strengthAbv === null) return null;
  const warmC = shown(Math.min(40, Math.max(1, meanWarmthC(study))), 0);
  const litres = shown(study.kept.stated.volumeMl / 1000, 3);
  const isDegassed = study.moments.some(({ read }) => read.treatments.includes('degassed'));
  const water = shown(waterCarriedGPerG(warmC), 3);
  const dissolved = shown(isDegassed ? 0 : dissolvedGasGPerL(warmC), 2);
  const perEthanol = shown(carbonDioxidePerEthanolGPerG, 4);
  const gasG = shown(lost.lostG / (1 + water) + dissolved * litres, 2);
  const ethanolG = shown(gasG / perEthanol, 2);
  const abv = shown(ethanolG / (gPerAbvL * litres), 1);
  return exercise({
    id: 'undergraduate-gas-to-ethanol',
    level: 'undergraduate',
    title: 'A balance as a strength meter',
    question:
      'From the mass that the vessel lost work out the gas that was made, the ethanol that came with it and the strength. Does it agree with the strength by the gravities?',
    given: [
      `Vessel and ferment at first: ${lost.firstG.toFixed(1)} g; at last: ${lost.lastG.toFixed(1)} g; ${litres} L.`,
      `At ${warmC} °C each gram of CO₂ carries ${water.toFixed(3)} g of water away; ${isDegassed ? 'the ferment was degassed before it was weighed last' : `${dissolved.toFixed(2)} g of CO₂ stay dissolved in a litre`}.`,
      `${perEthanol.toFixed(4)} g of CO₂ come with each gram of ethanol; ${gPerAbvL} g of ethanol in a litre for each % vol.`,
    ],
    marks: 5,
    answer: answerOf([
      { of: 'gas', value: gasG, tolerance: 0.3, unit: 'g', decimals: 2 },
      { of: 'ethanol', value: ethanolG, tolerance: 0.3, unit: 'g', decimals: 2 },
      { of: 'strength', value: abv, tolerance: 0.2, unit: '% vol', decimals: 1 },
    ]),
    working: [
      `Lost: ${lost.firstG.toFixed(1)} − ${lost.lastG.toFixed(1)} = ${lost.lostG.toFixed(1)} g; gas among it ${lost.lostG.toFixed(1)}/(1 + ${water.toFixed(3)}) g${isDegassed ? '' : `; with what stays dissolved, ${dissolved.toFixed(2)} × ${litres} g,`} = ${gasG.toFixed(2)} g.`,
      `Ethanol: ${gasG.toFixed(2)}/${perEthanol.toFixed(4)} = ${ethanolG.toFixed(2)} g; strength ${ethanolG.toFixed(2)}/(${gPerAbvL} × ${litres}) = ${abv.toFixed(1)} % vol.`,
      `The log as a whole says ${strengthAbv.value.toFixed(1)} % vol (90 % interval ${strengthAbv.low.toFixed(1)} to ${strengthAbv.high.toFixed(1)}).`,
    ],
    answerLines: 8,
  });
}

const usualRoomC = 20;

/** By the probe, or else by the thermometer. */
function meanWarmthC({ stretches, moments }: FermentStudy): number {
  const heard = stretches.map(({ meanC }) => meanC);
  const read = moments.flatMap(({ read: { temperatureC } }) => temperatureC ?? []);
  const values = heard.length > 0 ? heard : read;
  if (values.length === 0) return usualRoomC;
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
