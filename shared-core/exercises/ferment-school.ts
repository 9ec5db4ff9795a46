import { gayLussacGPerG } from '../bookkeeping/index.ts';
import { carbonDioxidePerEthanolGPerG, ethanolPerAbvGPerL, fromSugar } from '../ferment/index.ts';
import type { FermentStudy } from '../study/index.ts';
import { answerInWords, answerOf, type Exercise, exercise, shown } from './exercise.ts';
import { fallen, massLost, printedGravities } from './ferment-facts.ts';

/**
 * Strength for each unit of fallen gravity [% vol]. Source: the usual rule of the trade; within 0.15 % vol of Balling's formula below
 * 18 °P (`test/shared-core/ferment/sugar-and-gravity.test.ts`).
 */
export const abvPerFall = 131.25;

/** How far the gravity fell, and the strength by rule. */
export function fallOfGravity(study: FermentStudy): Exercise | null {
  const found = fallen(study);
  if (found === null) return null;
  const { first, last } = found;
  const fall = shown(first.gravity - last.gravity, 3);
  const abv = shown(abvPerFall * fall, 1);
  return exercise({
    id: 'school-fall-of-gravity',
    level: 'school',
    title: 'How far did the gravity fall?',
    question: `Sugar makes the juice heavier than water; alcohol makes it lighter. By how much did the gravity fall from the first reading to the last, and how strong is the ferment by the rule: strength in % vol = ${abvPerFall} × fall?`,
    given: [
      `Gravity at first: ${first.gravity.toFixed(3)}; at last: ${last.gravity.toFixed(3)} (both at 20 °C).`,
    ],
    marks: 2,
    answer: answerOf([
      { of: 'fall', value: fall, tolerance: 0.001, unit: '', decimals: 3 },
      { of: 'strength', value: abv, tolerance: 0.2, unit: '% vol', decimals: 1 },
    ]),
    working: [
      `Fall: ${first.gravity.toFixed(3)} − ${last.gravity.toFixed(3)} = ${fall.toFixed(3)}.`,
      `Strength: ${abvPerFall} × ${fall.toFixed(3)} = ${abv.toFixed(1)} % vol.`,
    ],
    answerLines: 4,
  });
}

const mostReadings = 12;

/** Between which readings it went fastest, in gravity a day. */
export function fastestDay(study: FermentStudy): Exercise | null {
  const gravities = printedGravities(study);
  if (gravities.length < 4 || gravities.length > mostReadings) return null;
  const falls = gravities.flatMap((to, index) => {
    const from = gravities[index - 1];
    const days = from === undefined ? 0 : shown(to.day - from.day, 1);
    return from === undefined || days < 0.3
      ? []
      : [{ from, to, days, perDay: (from.gravity - to.gravity) / days }];
  });
  const [most, second] = falls.toSorted((a, b) => b.perDay - a.perDay);
  // Two that are alike have no one answer.
  if (most === undefined || second === undefined || most.perDay < 1.1 * second.perDay) return null;
  const perDay = shown(most.perDay, 4);
  return exercise({
    id: 'school-fastest-day',
    level: 'school',
    title: 'When did the yeast work hardest?',
    question:
      'Between which two readings that follow each other did the gravity fall fastest? By how much in a day?',
    given: gravities.map(
      ({ day, gravity }) => `Day ${day.toFixed(1)}: gravity ${gravity.toFixed(3)}.`,
    ),
    marks: 2,
    answer: answerOf(
      [{ of: 'fall in a day', value: perDay, tolerance: 0.001, unit: '', decimals: 4 }],
      `Between day ${most.from.day.toFixed(1)} and day ${most.to.day.toFixed(1)}.`,
    ),
    working: [
      `(${most.from.gravity.toFixed(3)} − ${most.to.gravity.toFixed(3)})/${most.days.toFixed(1)} = ${perDay.toFixed(4)} in a day.`,
      'At first there is little yeast; at last there is little sugar: in between it goes fastest.',
    ],
    answerLines: 3,
  });
}

/** Masses by the equation, as a school's sheet rounds them: from 100 g of sugar [g]. */
const hundredG = 100;
const alcoholOfHundredG = shown(hundredG * gayLussacGPerG, 0);
const gasOfHundredG = hundredG - alcoholOfHundredG;
/** [g/mL], as a school's sheet rounds it. */
const ethanolGPerMl = shown(ethanolPerAbvGPerL / 10, 2);

/** The question of the week: how much sugar became alcohol. */
export function sugarToAlcohol(study: FermentStudy): Exercise | null {
  const { balance, kept, verdict } = study;
  const { strengthAbv } = verdict;
  if (strengthAbv === null || strengthAbv.value < 1) return null;
  const volumeMl = shown(kept.stated.volumeMl, 0);
  const abv = shown(strengthAbv.value, 1);
  const ethanolMl = shown((volumeMl * abv) / 100, 1);
  const ethanolG = shown(ethanolMl * ethanolGPerMl, 1);
  const turnedG = shown((ethanolG * hundredG) / alcoholOfHundredG, 1);
  const sugarG = balance === null ? null : shown(balance.sugarG.value, 0);
  const percent = sugarG === null ? null : shown((100 * turnedG) / sugarG, 1);
  const tolerance = (value: number) => Math.max(0.2, shown(0.01 * value, 1));
  return exercise({
    id: 'school-sugar-to-alcohol',
    level: 'school',
    title: 'How much sugar became alcohol?',
    question: `How many millilitres of alcohol are in the ferment, and how many grams? From how many grams of sugar did they come?${percent === null ? '' : ' What percentage of the sugar is that?'}`,
    given: [
      `In the vessel: ${volumeMl} mL of ${abv.toFixed(1)} % vol.`,
      `A millilitre of alcohol weighs ${ethanolGPerMl.toFixed(2)} g. ${hundredG} g of sugar give at most ${alcoholOfHundredG} g of alcohol and ${gasOfHundredG} g of gas.`,
      ...(sugarG === null ? [] : [`Sugar at the beginning: ${sugarG} g.`]),
    ],
    marks: percent === null ? 3 : 4,
    answer: answerOf([
      { of: 'alcohol', value: ethanolMl, tolerance: tolerance(ethanolMl), unit: 'mL', decimals: 1 },
      {
        of: 'alcohol by mass',
        value: ethanolG,
        tolerance: tolerance(ethanolG),
        unit: 'g',
        decimals: 1,
      },
      { of: 'sugar', value: turnedG, tolerance: 2 * tolerance(turnedG), unit: 'g', decimals: 1 },
      ...(percent === null
        ? []
        : [{ of: 'share', value: percent, tolerance: 2, unit: '%', decimals: 1 }]),
    ]),
    working: [
      `${volumeMl} × ${abv.toFixed(1)}/100 = ${ethanolMl.toFixed(1)} mL of alcohol.`,
      `${ethanolMl.toFixed(1)} × ${ethanolGPerMl.toFixed(2)} = ${ethanolG.toFixed(1)} g.`,
      `${ethanolG.toFixed(1)} × ${hundredG}/${alcoholOfHundredG} = ${turnedG.toFixed(1)} g of sugar.`,
      ...(sugarG === null || percent === null
        ? []
        : [
            `${turnedG.toFixed(1)}/${sugarG} × 100 % = ${percent.toFixed(1)} %.`,
            percent <= 100
              ? 'The rest fed the yeast, became other things such as glycerol, or is still there.'
              : 'More than there was: the sugar, the volume or the strength was misread.',
          ]),
    ],
    answerLines: 7,
  });
}

/** Litres of gas from a kilogram of sugar, as a school's sheet rounds them. */
const litresPerKg = shown(fromSugar(1000, 'hexose').carbonDioxideL, 0);

/** Where the mass went, and why the vessel stays open. */
export function neverSealed(study: FermentStudy): Exercise {
  const lost = massLost(study);
  const litresPerG = shown(litresPerKg / 10 / gasOfHundredG, 2);
  const litres = lost === null ? null : shown(lost.lostG * litresPerG, 1);
  const why =
    'The gas needs hundreds of times the room of the sugar; in a closed vessel the pressure grows until it bursts.';
  return exercise({
    id: 'school-never-sealed',
    level: 'school',
    title: 'Why is the vessel never sealed?',
    question:
      litres === null
        ? `A kilogram of sugar gives about ${litresPerKg} L of carbon dioxide. What would happen in a closed vessel, and what does an air lock do?`
        : 'The vessel became lighter. What left it, how many grams and how many litres of it? What would have happened had it been closed?',
    given:
      lost === null
        ? []
        : [
            `Vessel and ferment at first: ${lost.firstG.toFixed(1)} g; at last: ${lost.lastG.toFixed(1)} g.`,
            `A gram of carbon dioxide takes ${litresPerG.toFixed(2)} L in a warm room.`,
          ],
    marks: litres === null ? 2 : 3,
    answer:
      lost === null || litres === null
        ? answerInWords(`${why} An air lock lets the gas out and no air in.`)
        : answerOf(
            [
              { of: 'gas', value: lost.lostG, tolerance: 0.1, unit: 'g', decimals: 1 },
              {
                of: 'room',
                value: litres,
                tolerance: Math.max(0.2, shown(0.02 * litres, 1)),
                unit: 'L',
                decimals: 1,
              },
            ],
            `Carbon dioxide, with a little water and alcohol. ${why}`,
          ),
    working:
      lost === null || litres === null
        ? ['One mark for the pressure, one for the air lock.']
        : [
            `${lost.firstG.toFixed(1)} − ${lost.lastG.toFixed(1)} = ${lost.lostG.toFixed(1)} g.`,
            `${lost.lostG.toFixed(1)} × ${litresPerG.toFixed(2)} = ${litres.toFixed(1)} L. Every gram of alcohol comes with ${carbonDioxidePerEthanolGPerG.toFixed(2)} g of the gas.`,
          ],
    answerLines: 4,
  });
}
