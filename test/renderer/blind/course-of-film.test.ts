import { beforeAll, expect, test } from 'vitest';
import { courseOfFilm } from '../../../renderer/blind/course-of-film.ts';
import type { Film } from '../../../renderer/replay/film.ts';
import { bandOnProbe } from '../../../renderer/strip/index.ts';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

/** How much too low the probe reads [K]: the monitor finds out, since no vapour is that cool. */
const readsLowK = 1;
let film: Film;

beforeAll(async () => {
  const record = simulatedRecord({ name: 'Pear ferment', pressureKPa: 99.4, seed: 1 });
  const inputs = record.inputs.map((input) =>
    input.kind === 'reading' && input.channel === 'head'
      ? { ...input, value: input.value - readsLowK }
      : input,
  );
  film = await filmOf({ ...record, inputs });
});

test('a guess where the head crosses the revealed limit has the strength of the limit', () => {
  const course = courseOfFilm(film);
  const plateau = film.frames.at(-1)?.snapshot?.plateau;
  if (!plateau) throw new Error('no snapshot');
  expect(plateau.probeReadsHighK).toBeLessThan(-0.5);
  const { limitC } = bandOnProbe(plateau);
  const heldS = film.verdicts.stages.find(({ stage }) => stage === 'main-fraction')?.fromS ?? 0;
  let crossedS = heldS;
  while (crossedS < film.endS && (course.headAtC(crossedS) ?? 0) < limitC) crossedS += 1;
  expect(crossedS).toBeLessThan(film.endS);
  expect(course.strengthAtAbv(crossedS)).toBeCloseTo(plateau.leastStrengthAbv, 0);
});

test('a guess in the main fraction has a strength within what the window shows there', () => {
  const course = courseOfFilm(film);
  const told = film.frames.filter(
    ({ snapshot }) =>
      snapshot?.stage.stage === 'main-fraction' && snapshot.vapour?.alcoholByVolume != null,
  );
  const frame = told[Math.floor(told.length / 2)];
  const shown = frame?.snapshot?.vapour?.alcoholByVolume;
  const strengthAbv = course.strengthAtAbv(frame?.snapshot?.timeS ?? 0);
  expect(strengthAbv).toBeGreaterThan(shown?.low ?? 100);
  expect(strengthAbv).toBeLessThan(shown?.high ?? 0);
});

test('a guess where the window tells no strength has none: before the head has settled, or while it cools', () => {
  const course = courseOfFilm(film);
  const arrivedS = film.verdicts.stages.find(({ stage }) => stage === 'first-fraction')?.fromS ?? 0;
  const untold = film.frames.findLast(
    ({ snapshot }) => snapshot?.stage.stage === 'cool-down' || snapshot?.heat === 'off',
  );
  expect([
    course.strengthAtAbv(600),
    course.strengthAtAbv(arrivedS + 2),
    course.strengthAtAbv(untold?.snapshot?.timeS ?? film.endS),
  ]).toEqual([null, null, null]);
});
