import { limitTemperatureC } from '../equilibrium/index.ts';
import { temperatureByVolumeFigure } from '../figures/index.ts';
import type { RunStudy } from '../study/index.ts';
import { numberWords } from '../wording/index.ts';
import { answerOf, type Exercise, exercise, shown } from './exercise.ts';

/** Nearer to an end of the curve the cut cannot be told from it. */
const endShare = 1 / 12;
/** A curve that goes up and down by this across the limit has no one answer; an eye reads better than that [share of the volume]. */
const vagueShare = 1 / 20;

/** Where to cut, read off the curve against the volume. */
export function cutByVolume(study: RunStudy): Exercise | null {
  const { byVolume, settings } = study;
  const figure = temperatureByVolumeFigure(study, { expected: false });
  const lastMl = byVolume?.course.at(-1)?.volumeMl ?? 0;
  if (byVolume === null || figure === null || lastMl <= 0) return null;
  const { leastStrengthAbv } = settings;
  const limitC = Number(
    limitTemperatureC({ leastStrengthAbv, pressureKPa: byVolume.pressureKPa }).toFixed(1),
  );
  const crossings = crossingsMl(byVolume.course, limitC);
  const cutMl = crossings.at(-1);
  if (cutMl === undefined || cutMl < endShare * lastMl || cutMl > (1 - endShare) * lastMl) {
    return null;
  }
  if (crossings.some((other) => cutMl - other > vagueShare * lastMl)) return null;
  const decimals = lastMl < 20 ? 1 : 0;
  const value = Number(cutMl.toFixed(decimals));
  return exercise({
    id: 'school-cut-by-volume',
    level: 'school',
    title: 'Where would you cut?',
    question: `Below is the temperature against the distillate collected. At how many millilitres does it pass ${limitC.toFixed(1)} °C for the last time, and why would you change the receiver there?`,
    given: [
      `Up to ${limitC.toFixed(1)} °C the vapour here holds at least ${leastStrengthAbv} % vol.`,
    ],
    marks: 2,
    answer: answerOf(
      [
        {
          of: 'volume',
          value,
          tolerance: shown(vagueShare * lastMl, 1),
          unit: 'mL',
          decimals,
        },
      ],
      `What comes later is weaker than ${leastStrengthAbv} % vol and would dilute what is already in the receiver.`,
    ),
    working: [
      `The curve passes ${limitC.toFixed(1)} °C at ${numberWords(cutMl, decimals)} mL of ${numberWords(lastMl, decimals)} mL.`,
      'One mark for the volume, one for the reason.',
    ],
    answerLines: 3,
    figure,
    solvedFigure: temperatureByVolumeFigure(study, { expected: true }),
  });
}

/** Where the straight lines between the readings pass a temperature, up or down. */
function crossingsMl(
  course: NonNullable<RunStudy['byVolume']>['course'],
  atC: number,
): readonly number[] {
  return course.flatMap((to, index) => {
    const from = course[index - 1];
    if (from === undefined || from.headC > atC === to.headC > atC) return [];
    const share = (atC - from.headC) / (to.headC - from.headC);
    return [from.volumeMl + share * (to.volumeMl - from.volumeMl)];
  });
}
