import { strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { azeotrope, headVapourTable, publishedAzeotrope } from '../equilibrium/index.ts';
import type { RunStudy } from '../study/index.ts';
import { gasConstantJPerMolK } from '../thermo/index.ts';
import { decimalsFor, measuredWords, numberWords } from '../wording/index.ts';
import {
  apparentHeatOfAzeotropeKjPerMol,
  heatOfAzeotropeKjPerMol,
} from './apparent-heat-of-azeotrope.ts';
import { answerOf, type Exercise, exercise, shown } from './exercise.ts';

/** A smaller difference from the standard pressure is lost in the rounding [kPa]. */
const leastDifferenceKPa = 0.3;
const { pressureKPa: standardKPa, temperatureC: publishedC, cited } = publishedAzeotrope;

/** The plateau brought to standard pressure. */
export function correctForPressure({ plateau }: RunStudy): Exercise | null {
  if (plateau === null || Math.abs(plateau.pressureKPa - standardKPa) < leastDifferenceKPa) {
    return null;
  }
  const { mean, standard, azeotropeC, aboveAzeotropeK } = plateau;
  const meanDecimals = decimalsFor(2 * mean.standardUncertainty);
  const meanC = shown(mean.value, meanDecimals);
  const pressureKPa = shown(plateau.pressureKPa, 2);
  const heat = shown(apparentHeatOfAzeotropeKjPerMol(plateau.pressureKPa), 1);
  const standardAzeotropeC = shown(azeotrope(standardKPa).temperatureC, 2);
  const gasConstant = shown(gasConstantJPerMolK, 3);
  const temperatureK = shown(meanC + 273.15, 2);
  const perLnK = shown((gasConstant * temperatureK ** 2) / (1000 * heat), 2);
  const shiftK = shown(perLnK * Math.log(standardKPa / pressureKPa), 2);
  const correctedC = shown(meanC + shiftK, 2);
  const aboveK = aboveAzeotropeK.value;
  const reachK = 2 * aboveAzeotropeK.standardUncertainty;
  const meaning =
    aboveK > reachK
      ? 'the vapour is on the water side of it'
      : aboveK < -reachK
        ? 'no mixture of ethanol and water boils there: thermometer or barometer is off'
        : 'within its uncertainty that is the azeotrope';
  return exercise({
    id: 'undergraduate-pressure',
    level: 'undergraduate',
    title: 'Correct the plateau for pressure',
    question: `Bring the mean plateau temperature to ${standardKPa} kPa with the Clausius–Clapeyron equation, and compare with the azeotrope there (${publishedC} °C: ${cited}). What composition does the difference speak for?`,
    given: [
      `Plateau: ${measuredWords(mean, '°C')} (k = 2) at ${pressureKPa.toFixed(2)} kPa.`,
      `Apparent enthalpy of vaporisation of the azeotrope, from the slope of its vapour pressure: ${heat.toFixed(1)} kJ/mol. R = ${gasConstant.toFixed(3)} J/(mol K).`,
    ],
    marks: 5,
    answer: answerOf([
      {
        of: 'corrected plateau',
        value: correctedC,
        tolerance: Math.max(0.05, shown(0.05 * Math.abs(shiftK), 2)),
        unit: '°C',
        decimals: 2,
      },
    ]),
    working: [
      'dT/d ln p = R T²/ΔH (Clausius–Clapeyron, vapour ideal, liquid volume neglected).',
      `It is apparent because the composition moves along with the pressure and the vapour is taken for ideal; a calorimeter would find about ${heatOfAzeotropeKjPerMol(plateau.pressureKPa).toFixed(1)} kJ/mol.`,
      `R T²/ΔH = ${gasConstant.toFixed(3)}·10⁻³ × ${temperatureK.toFixed(2)}²/${heat.toFixed(1)} = ${perLnK.toFixed(2)} K.`,
      `ΔT = ${perLnK.toFixed(2)} × ln(${standardKPa}/${pressureKPa.toFixed(2)}) = ${numberWords(shiftK, 2)} K; T = ${correctedC.toFixed(2)} °C.`,
      `The tool’s equilibrium model gives ${standard.value.toFixed(2)} °C: the shift of the azeotrope itself, ${azeotropeC.toFixed(2)} → ${standardAzeotropeC.toFixed(2)} °C.`,
      `The plateau lies ${measuredWords(aboveAzeotropeK, 'K')} above the azeotrope: ${meaning}.`,
    ],
    answerLines: 8,
  });
}

/** Warmer by so much [K]. */
const warmerK = 3;
/** The slope is taken over one degree. */
const overK = 1;

/** How the doubt of a temperature becomes one of strength, here and 3 K warmer. */
export function seeThroughTemperature({ plateau, settings }: RunStudy): Exercise | null {
  if (plateau === null) return null;
  const table = headVapourTable(plateau.pressureKPa);
  const strengthAt = (headC: number) =>
    shown(strengthFromMoleFraction(table.ethanolMoleFractionAt(headC)), 1);
  // Below the azeotrope there is no vapour to speak of; just above it the slope begins.
  const fromC = shown(Math.max(plateau.mean.value - overK / 2, plateau.azeotropeC + 0.15), 1);
  const temperatures = [fromC, fromC + overK, fromC + warmerK, fromC + warmerK + overK];
  const strengths = temperatures.map(strengthAt);
  const [a = 0, b = 0, c = 0, d = 0] = strengths;
  const probeK = shown(settings.probe.standardUncertaintyK, 2);
  const slopes = [shown((a - b) / overK, 1), shown((c - d) / overK, 1)] as const;
  if (probeK < 0.02 || d <= 5) return null;
  const doubts = slopes.map((slope) => shown(slope * probeK, 2));
  const [hereAbv = 0, warmerAbv = 0] = doubts;
  const change =
    Math.abs(warmerAbv - hereAbv) < 0.1 * hereAbv
      ? 'hardly changes'
      : warmerAbv > hereAbv
        ? 'is wider'
        : 'is narrower';
  return exercise({
    id: 'undergraduate-sensitivity',
    level: 'undergraduate',
    title: 'How well does a thermometer know the strength?',
    question: `The thermometer’s standard uncertainty is ${probeK.toFixed(2)} K. What standard uncertainty of the vapour’s strength follows from it at the plateau, and what if the head were ${warmerK} K warmer? Is the interval wider or narrower there, and why?`,
    given: [
      `Dew curve at ${plateau.pressureKPa.toFixed(1)} kPa: ${temperatures.map((atC, index) => `${(strengths[index] ?? 0).toFixed(1)} % vol at ${atC.toFixed(1)} °C`).join('; ')}. The first two lie about the plateau.`,
    ],
    marks: 4,
    answer: answerOf(
      [
        { of: 'at the plateau', value: hereAbv, ...within(hereAbv) },
        { of: `${warmerK} K warmer`, value: warmerAbv, ...within(warmerAbv) },
      ],
      `${warmerK} K warmer the interval ${change}.`,
    ),
    working: [
      'u(q) = u(T)·|dq/dT|: the flatter the dew curve T(q), the larger u(q); at the azeotrope dT/dq = 0.',
      `At the plateau: (${a.toFixed(1)} − ${b.toFixed(1)})/${overK} = ${slopes[0].toFixed(1)} % vol/K, times ${probeK.toFixed(2)} K: ${hereAbv.toFixed(2)} % vol.`,
      `${warmerK} K warmer: (${c.toFixed(1)} − ${d.toFixed(1)})/${overK} = ${slopes[1].toFixed(1)} % vol/K, times ${probeK.toFixed(2)} K: ${warmerAbv.toFixed(2)} % vol.`,
      'A perfect thermometer would not end it: the barometer and the equilibrium data have doubts of their own.',
    ],
    answerLines: 6,
  });
}

const within = (abv: number) => ({
  tolerance: Math.max(0.05, shown(0.1 * abv, 2)),
  unit: '% vol',
  decimals: 2,
});
