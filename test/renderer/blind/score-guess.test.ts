import { describe, expect, test } from 'vitest';
import { plateauOfRun, type Verdicts } from '#shared-core';
import { recordedAnswers } from '../../../renderer/blind/recorded-answer.ts';
import {
  type GuessScore,
  nearestScore,
  type RunCourse,
  scoreGuess,
} from '../../../renderer/blind/score-guess.ts';
import { scoreWords } from '../../../renderer/blind/score-words.ts';
import { simulatedRun } from '../../support/simulated-run.ts';

const course: RunCourse = {
  headAtC: (timeS) => (timeS > 5000 ? null : 78 + timeS / 1000),
  strengthAtAbv: (timeS) => (timeS < 900 ? null : 95 - timeS / 1000),
  bookings: [
    { timeS: 900, volumeMl: 0 },
    { timeS: 2900, volumeMl: 20 },
  ],
  heatOffS: 3000,
};
const answers = {
  'plateau-starts': null,
  'heat-off': { timeS: 2000, because: 'the heat-off prompt came' },
};

describe('scoreGuess', () => {
  test('gives guess minus record in s, K, mL and % vol', () => {
    const score = scoreGuess({ group: 'A', kind: 'heat-off', timeS: 2500 }, answers, course);
    expect(score?.differenceS).toBe(500);
    expect(score?.differenceK).toBeCloseTo(0.5, 9);
    expect(score?.differenceMl).toBeCloseTo(5, 9);
    expect(score?.differenceAbv).toBeCloseTo(-0.5, 9);
  });

  test('a guess at or after heat-off is told so and not praised, however near the record is', () => {
    const late = { ...answers, 'heat-off': { timeS: 2995, because: '' } };
    const at = (timeS: number) =>
      scoreWords(scoreGuess({ group: 'A', kind: 'heat-off', timeS }, late, course)!, 45);
    expect(at(2998)).toMatch(/As good as the record/);
    expect(at(3000)).toBe('The heat was off by then: there was nothing left to decide.');
    expect(at(3400)).toBe('The heat was off by then: there was nothing left to decide.');
  });

  test('leaves open what is not known at one of the two times', () => {
    const score = scoreGuess({ group: 'A', kind: 'heat-off', timeS: 100 }, answers, course);
    expect([score?.differenceMl, score?.differenceAbv]).toEqual([null, null]);
  });

  test('does not score what the record has no answer to', () => {
    expect(scoreGuess({ group: 'A', kind: 'plateau-starts', timeS: 9 }, answers, course)).toBe(
      null,
    );
  });
});

describe('nearestScore', () => {
  test('is the score nearest in time, before or after', () => {
    const scores = [1500, 2300, 1990].flatMap(
      (timeS) => scoreGuess({ group: 'A', kind: 'heat-off', timeS }, answers, course) ?? [],
    );
    expect(nearestScore(scores)?.guess.timeS).toBe(1990);
    expect(nearestScore([])).toBe(null);
  });
});

describe('scoreWords', () => {
  const words = (kind: 'plateau-starts' | 'heat-off', differenceS: number) => {
    const score: GuessScore = {
      guess: { group: 'A', kind, timeS: 0 },
      recordS: 0,
      differenceS,
      differenceK: null,
      differenceMl: null,
      differenceAbv: null,
      isAfterHeatOff: false,
    };
    return scoreWords(score, 45);
  };

  test('finds something good in every guess and names what it would have meant', () => {
    expect([
      words('heat-off', 10),
      words('heat-off', -80),
      words('heat-off', -600),
      words('heat-off', 40),
      words('heat-off', 300),
      words('plateau-starts', -30),
      words('plateau-starts', 120),
    ]).toEqual([
      'As good as the record: nobody could do better by eye.',
      '80 s before the record: strong to the last drop, with next to nothing left behind.',
      '10 min before the record: strong, with some good distillate left in the pot.',
      '40 s after the record: within the reaction time, little harm done.',
      '5 min after the record: more came over, and the last of it was weaker.',
      '30 s before the record: you saw the vapour coming.',
      '2 min after the record: you waited until the head held, which is careful.',
    ]);
  });
});

describe('recordedAnswers', () => {
  const verdicts: Verdicts = {
    stages: [
      { stage: 'warm-up', fromS: 0, toS: 800, because: '' },
      { stage: 'first-fraction', fromS: 800, toS: null, because: '' },
    ],
    alarms: [],
    forecasts: [],
    estimates: [],
    events: [],
    verdict: { mainFraction: false, because: '' },
    problems: [],
  };
  const heatOff = {
    kind: 'mark' as const,
    timeS: 3000,
    markId: 1,
    mark: { type: 'heat-off' as const },
  };

  test('the plateau starts where the one plateau of the run does; without one there is no answer', () => {
    const { settings, inputs, endS } = simulatedRun({ name: 'a', pressureKPa: 99.4, seed: 1 });
    const plateau = plateauOfRun({ settings, inputs, endS });
    expect(recordedAnswers(verdicts, [], plateau)['plateau-starts']?.timeS).toBe(
      plateau?.statistics.span.fromS,
    );
    expect(recordedAnswers(verdicts, [], null)['plateau-starts']).toBe(null);
  });

  test('the prompt says when to take the heat off; without one, the bench does; else nothing', () => {
    const prompted: Verdicts = {
      ...verdicts,
      alarms: [
        {
          alarm: 'plateau-departure',
          priority: 'high',
          raisedS: 2900,
          clearedS: null,
          acknowledgedS: null,
          because: '',
        },
      ],
    };
    const at = (found: Verdicts, marks: Parameters<typeof recordedAnswers>[1]) =>
      recordedAnswers(found, marks, null)['heat-off']?.timeS ?? null;
    expect([at(prompted, [heatOff]), at(verdicts, [heatOff]), at(verdicts, [])]).toEqual([
      2900,
      3000,
      null,
    ]);
    // A flame that is taken away at each vigorous boil is not off before it stays away.
    const early = { ...heatOff, timeS: 900, markId: 2 };
    const back = { ...early, timeS: 940, markId: 3, mark: { type: 'heat-on' as const } };
    expect([at(verdicts, [early, back, heatOff]), at(verdicts, [early, back])]).toEqual([
      3000,
      null,
    ]);
  });
});
