import { beforeAll, describe, expect, test } from 'vitest';
import { type Moment, momentsOf, timeShowing } from '../../../renderer/look-back/moments.ts';
import { type Film, frameIndexAt, frameTimeS } from '../../../renderer/replay/film.ts';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

let film: Film;
let moments: readonly Moment[];

beforeAll(async () => {
  film = await filmOf(simulatedRecord({ name: 'Pear ferment', pressureKPa: 99.4, seed: 4 }));
  const marks = film.frames.at(-1)?.marks ?? [];
  const written = [{ timeS: 600, text: 'Someone asks why' }];
  moments = momentsOf(film.verdicts, marks, written, ({ type }) => type);
});

const frameAt = (timeS: number) => film.frames[frameIndexAt(film, timeS)];

describe('moments of a replay', () => {
  test('a jump lands on the first frame that shows the stage, the prompt or the mark', () => {
    const wrong = moments.filter((moment) => {
      const first = film.frames.find(moment.isShownIn);
      return first === undefined || timeShowing(film, moment) !== frameTimeS(first);
    });
    expect([wrong, new Set(moments.map(({ kind }) => kind))]).toEqual([
      [],
      new Set(['stage', 'mark', 'annotation', 'alarm']),
    ]);
  });

  test('a jump to the heat-off prompt shows it open', () => {
    const prompt = moments.find(({ kind }) => kind === 'alarm');
    const frame = prompt && frameAt(timeShowing(film, prompt));
    const open = frame?.snapshot?.alarms.filter(({ state }) => state === 'unacknowledged');
    expect(open?.map(({ raisedS }) => raisedS)).toEqual([prompt?.timeS]);
  });

  test('no jump goes back before the moment', () => {
    const early = moments.filter((moment) => timeShowing(film, moment) < moment.timeS - 1);
    expect([early, frameTimeS(film.frames[0]!) >= 0]).toEqual([[], true]);
  });
});
