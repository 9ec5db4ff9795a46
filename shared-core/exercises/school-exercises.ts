import { massFractionFromMoleFraction, strengthFromMoleFraction } from '../alcoholometry/index.ts';
import {
  azeotrope,
  azeotropeSlopeKPerKPa,
  publishedAzeotrope,
  saturationTemperatureC,
} from '../equilibrium/index.ts';
import type { RunStudy } from '../report/index.ts';
import { clockWords, numberWords } from '../report/measured-words.ts';
import { stageLabels } from '../snapshot/index.ts';
import { answerInWords, answerOf, type Exercise, exercise } from './exercise.ts';

type Maker = (study: RunStudy) => Exercise | null;

const readPlateau: Maker = ({ plateau }) => {
  if (plateau === null) return null;
  const { meanC, lowestC, highestC, span } = plateau.statistics;
  const minutes = (span.toS - span.fromS) / 60;
  return exercise({
    id: 'school-plateau',
    level: 'school',
    title: 'Read the plateau',
    question:
      'Find the longest part of the curve where the temperature hardly changes. At what temperature does it lie, and about how long does it last?',
    given: [],
    marks: 3,
    answer: answerOf(meanC, Math.max(0.5, (highestC - lowestC) / 2), '°C', 1),
    working: [
      `A ruler laid along the flat part reads ${meanC.toFixed(1)} °C; the record’s mean over it is the same.`,
      `It lasts from ${clockWords(span.fromS)} to ${clockWords(span.toS)}, ${minutes.toFixed(0)} min (accept a quarter more or less).`,
      'One mark for the temperature, one for the time, one for both units.',
    ],
    answerLines: 3,
  });
};

const nameStages: Maker = ({ verdicts, settings }) => {
  const spans = verdicts.stages.filter(({ stage }) => stage !== 'cool-down');
  if (spans.length < 3) return null;
  const waterC = saturationTemperatureC('water', settings.pressure.pressureKPa);
  return exercise({
    id: 'school-stages',
    level: 'school',
    title: 'Name the stages',
    question: `Mark on the curve where each of these begins: ${spans.map(({ stage }) => stageLabels[stage].toLowerCase()).join(', ')}. Say for each what you saw change.`,
    given: [],
    marks: spans.length,
    answer: answerInWords(
      spans.map(({ stage, fromS }) => `${stageLabels[stage]} from ${clockWords(fromS)}`).join('; '),
    ),
    working: [
      'Warm-up: the bulb hangs in air, the curve is flat at room temperature. Vapour arrives: it rises steeply.',
      'The first fraction and the main fraction cannot be told apart on the curve: the little light liquid does not show in the temperature. Its end is a convention.',
      `Tail: the curve leaves the plateau and climbs towards ${waterC.toFixed(0)} °C, where water boils here, because less and less ethanol is left.`,
    ],
    answerLines: 5,
  });
};

const explainPressure: Maker = ({ plateau }) => {
  if (plateau === null) return null;
  const { pressureKPa } = plateau;
  const { temperatureC: standardC, pressureKPa: standardKPa, cited } = publishedAzeotrope;
  const massPercent = 100 * massFractionFromMoleFraction(publishedAzeotrope.ethanolMoleFraction);
  const differenceKPa = standardKPa - pressureKPa;
  // To two decimals, as a data sheet would give it: the pupil's numbers and the answer's are the same.
  const rule = azeotropeSlopeKPerKPa((standardKPa + pressureKPa) / 2).toFixed(2);
  const shiftK = Number(rule) * differenceKPa;
  return exercise({
    id: 'school-pressure',
    level: 'school',
    title: 'A different boiling point',
    question: `A table says that a mixture with ${massPercent.toFixed(1)} % ethanol (by mass) boils at ${standardC} °C. At what temperature did it boil here? Use the rule: ${rule} °C for every kilopascal.`,
    given: [
      `Air pressure at the still: ${pressureKPa.toFixed(1)} kPa. The table means ${standardKPa.toFixed(1)} kPa (${cited}).`,
    ],
    marks: 3,
    answer: answerOf(standardC - shiftK, 0.15, '°C', 1),
    working: [
      `Difference in pressure: ${standardKPa.toFixed(1)} − ${pressureKPa.toFixed(1)} = ${numberWords(differenceKPa, 1)} kPa.`,
      `Difference in temperature: ${numberWords(differenceKPa, 1)} × ${rule} = ${numberWords(shiftK, 2)} °C.`,
      `${standardC} − (${numberWords(shiftK, 2)}) = ${(standardC - shiftK).toFixed(1)} °C.`,
      differenceKPa > 0
        ? 'Lower pressure, lower boiling point: the vapour has less air to push against.'
        : 'Higher pressure, higher boiling point: the vapour has more air to push against.',
    ],
    answerLines: 4,
  });
};

const recoverEthanol: Maker = ({ settings, books, product }) => {
  if (product === null || books.balance === null) return null;
  const { volumeMl, strengthAbv } = settings.charge;
  const chargedMl = (volumeMl * strengthAbv) / 100;
  const cuts = books.cuts.flatMap(({ booked, number }) =>
    booked === null
      ? []
      : [
          {
            number,
            volumeMl: booked.volumeMl.value,
            abv: booked.strengthAbv.value,
            ethanolMl: booked.ethanolMl.value,
          },
        ],
  );
  const recoveredMl = cuts.reduce((sum, { ethanolMl }) => sum + ethanolMl, 0);
  const percent = (100 * recoveredMl) / chargedMl;
  return exercise({
    id: 'school-recovery',
    level: 'school',
    title: 'How much of the ethanol came over?',
    question:
      'How many millilitres of pure ethanol were in the flask? How many are in all receivers together? What percentage is that?',
    given: [
      `In the flask: ${volumeMl} mL of ${strengthAbv} % vol.`,
      ...cuts.map(
        ({ number, volumeMl: ml, abv }) =>
          `Receiver ${number}: ${ml.toFixed(1)} mL of ${abv.toFixed(1)} % vol.`,
      ),
    ],
    marks: 4,
    answer: answerOf(percent, 1, '%', 1),
    working: [
      `In the flask: ${volumeMl} × ${strengthAbv}/100 = ${chargedMl.toFixed(1)} mL ethanol.`,
      `In the receivers: ${cuts.map(({ volumeMl: ml, abv }) => `${ml.toFixed(1)} × ${abv.toFixed(1)}/100`).join(' + ')} = ${recoveredMl.toFixed(1)} mL ethanol.`,
      `${recoveredMl.toFixed(1)}/${chargedMl.toFixed(1)} × 100 % = ${percent.toFixed(1)} %.`,
      'The rest is still in the flask, clings to the column, or was lost as vapour.',
    ],
    answerLines: 5,
  });
};

const whatWentWrong: Maker = ({ verdicts, settings }) => {
  const calls = verdicts.alarms.filter(({ alarm }) => alarm !== 'attention');
  const main = verdicts.verdict;
  const words =
    calls.length === 0
      ? `${main.because} Nothing called for an act.`
      : calls.map(({ raisedS, because }) => `${clockWords(raisedS)}: ${because}`).join(' ');
  return exercise({
    id: 'school-critique',
    level: 'school',
    title: 'What would you do better?',
    question: `The aim was distillate of at least ${settings.leastStrengthAbv} % vol. Look at the end of the curve. Was the heat taken away at the right moment? Give a reason from the curve.`,
    given: [],
    marks: 2,
    answer: answerInWords(words),
    working: [
      'The right moment is when the curve leaves the plateau: from then on each drop is weaker and thins what is already in the receiver.',
      main.because,
    ],
    answerLines: 4,
  });
};

const whyNotPure: Maker = ({ plateau, settings }) => {
  const here = azeotrope(plateau?.pressureKPa ?? settings.pressure.pressureKPa);
  const strongestAbv = strengthFromMoleFraction(here.ethanolMoleFraction);
  return exercise({
    id: 'school-azeotrope',
    level: 'school',
    title: 'Why not 100 %?',
    question: `However long the column is, the distillate never gets stronger than about ${strongestAbv.toFixed(0)} % vol. Why?`,
    given: [],
    marks: 2,
    answer: answerInWords(
      `Liquid and vapour have the same composition there (azeotrope, here at ${here.temperatureC.toFixed(1)} °C), so boiling changes nothing any more.`,
    ),
    working: ['One mark for “same composition”, one for “so distillation no longer separates”.'],
    answerLines: 3,
  });
};

/** In the order of the lesson. */
export const schoolExercises: readonly Maker[] = [
  readPlateau,
  nameStages,
  explainPressure,
  recoverEthanol,
  whatWentWrong,
  whyNotPure,
];
