import { describe, expect, test } from 'vitest';
import { createRandom, defaultRunSettings, type RunInput } from '#shared-core';
import { frameIndexAt, frameTimeS, type RecordedRun } from '../../../renderer/replay/film.ts';
import { makeFilm } from '../../../renderer/replay/make-film.ts';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';

/** A head as a lesson's distillation draws it: flat, a steep front, a plateau, a slow rise. */
function headC(timeS: number): number {
  if (timeS < 600) return 20;
  if (timeS < 660) return 20 + (58.6 * (timeS - 600)) / 60;
  return timeS < 2400 ? 78.6 : 78.6 + 0.012 * (timeS - 2400);
}

function recordedRun(endS: number): RecordedRun {
  const random = createRandom(11);
  const inputs: RunInput[] = [
    { kind: 'mark', timeS: 0.5, markId: 1, mark: { type: 'heat-on' } },
    ...Array.from({ length: endS }, (_, second) => {
      const timeS = second + 1;
      const value = headC(timeS) + 0.03 * random.normal();
      return {
        kind: 'reading',
        timeS,
        channel: 'head',
        value,
        unit: '°C',
        quality: 'good',
      } as const;
    }),
  ];
  return {
    identity: {
      origin: 'replay',
      runId: 'r1',
      name: 'Pear-juice ferment',
      startedAtIso: null,
      settings: defaultRunSettings,
    },
    inputs,
    endS,
  };
}

const making = {
  nowMs: () => 0,
  breathe: async () => {},
  onProgress: () => {},
  isWanted: () => true,
};

describe('makeFilm', () => {
  test('gives the same verdicts as analysing the run in one go', async () => {
    const run = recordedRun(3600);
    const film = await makeFilm(run, making);
    expect(JSON.stringify(film?.verdicts)).toBe(
      JSON.stringify(analyseRun(run.identity.settings, run.inputs, run.endS)),
    );
  });

  test('the last frame holds every input, and its stages are those of the verdicts', async () => {
    const run = recordedRun(3600);
    const film = await makeFilm(run, making);
    const last = film?.frames.at(-1);
    expect([last?.inputCount, last?.stages.map(({ stage, fromS }) => [stage, fromS])]).toEqual([
      run.inputs.length,
      film?.verdicts.stages.map(({ stage, fromS }) => [stage, fromS]),
    ]);
  });

  test.each([0, 0.5, 5.5])(
    'no moment waits for the first reading beside a head, which comes at %d s',
    async (firstS) => {
      const run = recordedRun(600);
      const readings = run.inputs
        .filter(({ kind }) => kind === 'reading')
        .map((input) => ({ ...input, timeS: input.timeS - 1 + firstS }));
      const heatOn: RunInput = {
        kind: 'mark',
        timeS: firstS + 0.2,
        markId: 1,
        mark: { type: 'heat-on' },
      };
      const inputs = [...readings.slice(0, 1), heatOn, ...readings.slice(1)];
      const film = await makeFilm({ ...run, inputs }, making);
      const told = film?.frames.map(({ snapshot }) => ({
        hasHead: snapshot?.head !== null,
        isWaiting: snapshot?.sentence.startsWith('Waiting'),
      }));
      expect(told?.[0]).toEqual({ hasHead: true, isWaiting: false });
      expect(told?.filter(({ hasHead, isWaiting }) => hasHead === isWaiting)).toEqual([]);
    },
  );

  test('however it is cut into slices, the film is the same', async () => {
    let ms = 0;
    const hurried = { ...making, nowMs: () => (ms += 13) };
    const [one, other] = await Promise.all([
      makeFilm(recordedRun(900), making),
      makeFilm(recordedRun(900), hurried),
    ]);
    expect(other?.frames.length).toBe(one?.frames.length);
    expect(JSON.stringify(other?.changes)).toBe(JSON.stringify(one?.changes));
  });

  test('hours of silence are stepped through in slices too, and the verdicts stay the same', async () => {
    let ms = 0;
    let breaths = 0;
    const run = { ...recordedRun(300), endS: 3 * 3600 };
    const film = await makeFilm(run, {
      ...making,
      nowMs: () => (ms += 13),
      breathe: async () => {
        breaths += 1;
      },
    });
    expect(breaths).toBeGreaterThan(run.inputs.length + 150);
    expect(JSON.stringify(film?.verdicts)).toBe(
      JSON.stringify(analyseRun(run.identity.settings, run.inputs, run.endS)),
    );
  });

  test('stops when nobody wants it any more', async () => {
    let ms = 0;
    const film = await makeFilm(recordedRun(900), {
      ...making,
      nowMs: () => (ms += 13),
      isWanted: () => false,
    });
    expect(film).toBeNull();
  });

  test('a time is shown by the last frame before it', async () => {
    const film = await makeFilm(recordedRun(900), making);
    const index = film ? frameIndexAt(film, 450.5) : -1;
    expect(frameTimeS(film!.frames[index]!)).toBeLessThanOrEqual(450.5);
    expect(frameTimeS(film!.frames[index + 1]!)).toBeGreaterThan(450.5);
  });
});
