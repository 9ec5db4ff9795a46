import { expect, test } from 'vitest';
import { type Drawing, exerciseLevels, type RunInput, studyRun } from '#shared-core';
import { leavesPlateau } from '../../../shared-core/exercises/curve-facts.ts';
import {
  judgeHeatOff,
  nameMoments,
  readPlateau,
} from '../../../shared-core/exercises/curve-questions.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { pearRun } from '../report/support/pear-run.ts';
import { carefulRun } from './support/varied-runs.ts';

const run = carefulRun(
  {
    rig: 'wirePacking',
    volumeMl: 250,
    abv: 11,
    pressureKPa: 99.4,
    limitAbv: 80,
    easedW: 64,
    lateS: 400,
  },
  0,
);
const passesS = leavesPlateau(studyRun(run))?.timeS ?? 0;

/** The run with the heat taken off so long after the head passed the limit. */
function offAfter(seconds: number) {
  const offS = passesS + seconds;
  const inputs = run.inputs.flatMap((input): readonly RunInput[] => {
    if (input.kind !== 'mark' || input.mark.type !== 'heat-off') return [input];
    return [{ ...input, timeS: offS }];
  });
  return studyRun({ ...run, inputs: inputs.toSorted((a, b) => a.timeS - b.timeS) });
}

test('a tail of 22 s is asked for by no question, one of three minutes is', () => {
  expect(passesS).toBeGreaterThan(0);
  const short = offAfter(22);
  expect(nameMoments(short)?.answer.quantities.map(({ of }) => of)).toEqual(['A']);
  expect(judgeHeatOff(short)?.answer.quantities).toMatchObject([{ of: 'late by', value: 0 }]);
  const long = offAfter(180);
  expect(nameMoments(long)?.answer.quantities.map(({ of }) => of)).toEqual(['A', 'B']);
  expect(judgeHeatOff(long)?.answer.quantities[0]?.value).toBeCloseTo(3, 0);
});

/** Degrees from one line of the upright axis to the next. */
function gridK({ shapes }: Drawing): number {
  const ticks = shapes.flatMap((shape) =>
    shape.kind === 'text' && shape.anchor === 'end' && /^\d+(\.\d+)?$/.test(shape.text)
      ? [Number(shape.text)]
      : [],
  );
  const sorted = ticks.toSorted((a, b) => a - b);
  return (sorted[1] ?? Number.POSITIVE_INFINITY) - (sorted[0] ?? 0);
}

const simple = carefulRun(
  {
    rig: 'simpleHead',
    volumeMl: 250,
    abv: 40,
    pressureKPa: 99.4,
    limitAbv: 60,
    easedW: 60,
    lateS: 300,
  },
  3,
);

test.each([
  ['a column', pearRun().run],
  ['a still without one', simple],
])('a temperature is read off lines close enough for the answer’s tolerance: %s', (_, of) => {
  const asked = readPlateau(studyRun(of));
  const [temperature] = asked?.answer.quantities ?? [];
  // An eye tells a fifth of a division.
  expect(gridK(asked?.figure as Drawing) / 5).toBeLessThanOrEqual(temperature?.tolerance ?? 0);
});

test('heat taken off while the head was just passing the limit is called in time, not a wait', () => {
  expect(judgeHeatOff(offAfter(22))?.answer.words).toMatch(/in time: an eye and a hand/);
  expect(judgeHeatOff(offAfter(-120))?.answer.words).toMatch(/It was not late: whoever waits/);
});

const asked = [pearRun().run, simple].flatMap((of) =>
  exerciseLevels.flatMap((level) => exercisesOf(studyRun(of), level)),
);

test('no working shares out marks otherwise than the marks of the parts do', () => {
  expect(asked.length).toBeGreaterThan(10);
  for (const { answer, working } of asked) {
    if (answer.quantities.length > 1) expect(working.join(' ')).not.toMatch(/mark for/);
  }
});

test('a still without a column has none in any answer', () => {
  const study = studyRun({
    ...simple,
    settings: { ...simple.settings, rig: { ...simple.settings.rig, plates: 0 } },
  });
  const answers = exerciseLevels.flatMap((level) =>
    exercisesOf(study, level).flatMap(({ answer, working }) => [answer.words, ...working]),
  );
  expect(answers.join('\n')).toMatch(/clings to the glass/);
  expect(answers.join('\n')).not.toMatch(/(?<!without a )column/);
  expect(study.books.assumptions.join(' ')).toMatch(/left on the glass/);
});

test('what to measure better is answered with each part that is nearly as large as the largest', () => {
  const answer = asked.find(({ id }) => id === 'undergraduate-balance')?.answer.words ?? '';
  expect(answer).toMatch(/First: mass of cut 2 or mass of cut 1 or strength of charge\.$/);
});
