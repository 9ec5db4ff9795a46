import { massFractionFromMoleFraction, strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { azeotrope, azeotropeSlopeKPerKPa, publishedAzeotrope } from '../equilibrium/index.ts';
import { chargeDoubtMl } from '../run/index.ts';
import type { RunStudy } from '../study/index.ts';
import { numberWords } from '../wording/index.ts';
import { judgeHeatOff, nameMoments, readPlateau } from './curve-questions.ts';
import { answerInWords, answerOf, type Exercise, exercise, shown } from './exercise.ts';
import { cutByVolume } from './volume-questions.ts';

type Maker = (study: RunStudy) => Exercise | null;

/** A smaller difference is lost in the rounding of the rule [kPa]. */
const leastDifferenceKPa = 0.5;

const explainPressure: Maker = (study) => {
  const pressureKPa = shown(study.pressureKPa, 1);
  const { temperatureC: standardC, pressureKPa: publishedKPa, cited } = publishedAzeotrope;
  const standardKPa = shown(publishedKPa, 1);
  const massPercent = 100 * massFractionFromMoleFraction(publishedAzeotrope.ethanolMoleFraction);
  const differenceKPa = shown(standardKPa - pressureKPa, 1);
  if (Math.abs(differenceKPa) < leastDifferenceKPa) return null;
  // To two decimals, as a data sheet would give it: the pupil's numbers and the answer's are the same.
  const kelvinPerKPa = shown(azeotropeSlopeKPerKPa((publishedKPa + pressureKPa) / 2), 2);
  const shiftK = shown(kelvinPerKPa * differenceKPa, 2);
  const hereC = shown(standardC - shiftK, 1);
  const product = `${numberWords(differenceKPa, 1)} × ${kelvinPerKPa.toFixed(2)} = ${numberWords(shiftK, 2)} °C`;
  return exercise({
    id: 'school-pressure',
    level: 'school',
    title: 'A different boiling point',
    question: `A table says that a mixture with ${massPercent.toFixed(1)} % ethanol (by mass) boils at ${standardC} °C. At what temperature does it boil here? Use the rule: ${kelvinPerKPa.toFixed(2)} °C for every kilopascal.`,
    given: [
      `Air pressure at the still: ${pressureKPa.toFixed(1)} kPa. The table means ${standardKPa.toFixed(1)} kPa (${cited}).`,
    ],
    marks: 3,
    answer: answerOf([
      { of: 'boiling point', value: hereC, tolerance: 0.15, unit: '°C', decimals: 1 },
    ]),
    working: [
      `Difference in pressure: ${standardKPa.toFixed(1)} − ${pressureKPa.toFixed(1)} = ${numberWords(differenceKPa, 1)} kPa.`,
      `Difference in temperature: ${product}.`,
      `${standardC} ${shiftK < 0 ? '+' : '−'} ${numberWords(Math.abs(shiftK), 2)} = ${hereC.toFixed(1)} °C.`,
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
  const chargedMl = shown((volumeMl * strengthAbv) / 100, 1);
  const cuts = books.cuts.flatMap(({ booked, number, strengthFrom }) =>
    booked === null
      ? []
      : [
          {
            number,
            ml: shown(booked.volumeMl.value, 1),
            abv: shown(booked.strengthAbv.value, 1),
            isEstimate: strengthFrom === 'head-temperature',
          },
        ],
  );
  const recoveredMl = shown(
    cuts.reduce((sum, { ml, abv }) => sum + (ml * abv) / 100, 0),
    1,
  );
  const percent = shown((100 * recoveredMl) / chargedMl, 1);
  const names = cuts.map(({ number }) => number).join(', ');
  return exercise({
    id: 'school-recovery',
    level: 'school',
    title: 'How much of the ethanol came over?',
    question: `How many millilitres of pure ethanol were in the flask? How many are in ${cuts.length === 1 ? `receiver ${names}` : `the receivers ${names} together`}? What percentage is that?`,
    given: [
      `In the flask: ${volumeMl} mL of ${strengthAbv} % vol.`,
      ...cuts.map(
        ({ number, ml, abv, isEstimate }) =>
          `Receiver ${number}: ${ml.toFixed(1)} mL of ${abv.toFixed(1)} % vol${isEstimate ? ' (an estimate from the head temperature)' : ''}.`,
      ),
    ],
    marks: 4,
    answer: answerOf([
      {
        of: 'ethanol charged',
        value: chargedMl,
        tolerance: Math.max(0.1, shown(0.01 * chargedMl, 1)),
        unit: 'mL',
        decimals: 1,
      },
      { of: 'recovery', value: percent, tolerance: roundingOf(chargedMl), unit: '%', decimals: 1 },
    ]),
    working: [
      `In the flask: ${volumeMl} × ${strengthAbv}/100 = ${chargedMl.toFixed(1)} mL ethanol.`,
      `In the ${cuts.length === 1 ? 'receiver' : 'receivers'}: ${cuts.map(({ ml, abv }) => `${ml.toFixed(1)} × ${abv.toFixed(1)}/100`).join(' + ')} = ${recoveredMl.toFixed(1)} mL ethanol.`,
      `${recoveredMl.toFixed(1)}/${chargedMl.toFixed(1)} × 100 % = ${percent.toFixed(1)} %.`,
      chargeDoubtWords(settings.charge),
      percent <= 100
        ? `The rest is still in the flask, ${books.unmeasuredCuts.length > 0 ? 'went into a receiver that nobody measured, ' : ''}clings to the ${settings.rig.plates === 0 ? 'glass' : 'column'}, or was lost as vapour.`
        : 'More than was there cannot come over: the charge, a volume or a strength was misread.',
    ],
    answerLines: 5,
  });
};

/** What the charge alone leaves uncertain of a recovery: relative uncertainties add as squares. */
function chargeDoubtWords(charge: RunStudy['settings']['charge']): string {
  const { volumeMl, strengthAbv, standardUncertaintyAbv } = charge;
  const [ofMl, ofAbv] = [2 * chargeDoubtMl(charge), 2 * standardUncertaintyAbv];
  const percent = 100 * Math.hypot(ofMl / volumeMl, ofAbv / strengthAbv);
  return `The flask held ±${numberWords(ofMl, 1)} mL and ±${numberWords(ofAbv, 2)} % vol (k = 2): by that alone the percentage is uncertain by ${numberWords(percent, 1)} % of itself.`;
}

/** Tenths of a millilitre, rounded on the way, may be a per cent of a small charge. */
const roundingOf = (chargedMl: number) => Math.max(1, Math.ceil(20 / chargedMl));

const whyNotPure: Maker = ({ pressureKPa }) => {
  const here = azeotrope(pressureKPa);
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
  nameMoments,
  explainPressure,
  recoverEthanol,
  judgeHeatOff,
  cutByVolume,
  whyNotPure,
];
