import { describe, expect, test } from 'vitest';
import { createConclusionLog } from '../../../shared-core/monitor/conclusion-log.ts';

describe('what was concluded of a run', () => {
  test('begins with the warm-up; a stage ends where the next begins, and none before the one before it', () => {
    const log = createConclusionLog('cold');
    log.enterStage('first-fraction', 100, 'vapour');
    log.enterStage('main-fraction', 80, 'held');
    expect(log.parts().stages).toEqual([
      { stage: 'warm-up', fromS: 0, toS: 100, because: 'cold' },
      { stage: 'first-fraction', fromS: 100, toS: 100, because: 'vapour' },
      { stage: 'main-fraction', fromS: 100, toS: null, because: 'held' },
    ]);
    expect(log.takeChanges()).toEqual([
      { kind: 'stage-entered', timeS: 100, span: expect.objectContaining({ toS: null }) },
      { kind: 'stage-entered', timeS: 100, span: log.parts().stages[2] },
    ]);
  });

  test('tells each change once', () => {
    const log = createConclusionLog('cold');
    log.event('vapour-arrived', 5, 'it came');
    const entry = { event: 'vapour-arrived', timeS: 5, because: 'it came' };
    expect(log.takeChanges()).toEqual([{ kind: 'event', timeS: 5, event: entry }]);
    expect(log.takeChanges()).toEqual([]);
    expect(log.parts().events).toEqual([entry]);
  });

  test('keeps all events, and shows the last twenty', () => {
    const log = createConclusionLog('cold');
    for (let timeS = 1; timeS <= 25; timeS += 1) log.event('vapour-returned', timeS, '');
    expect(log.recentEvents().map(({ timeS }) => timeS)).toEqual(
      Array.from({ length: 20 }, (_, index) => index + 6),
    );
    expect(log.parts().events).toHaveLength(25);
  });

  test('closes a problem that lasted by its number', () => {
    const log = createConclusionLog('cold');
    const [first, second] = [log.openProblem('silent', 1), log.openProblem('frozen', 2)];
    log.closeProblem(first, 9);
    log.closeProblem(99, 9);
    expect(log.parts().problems).toEqual([
      { problem: 'silent', fromS: 1, toS: 9 },
      { problem: 'frozen', fromS: 2, toS: null },
    ]);
    log.closeProblem(second, 12);
    expect(log.parts().problems[1]?.toS).toBe(12);
  });

  test('hands out what it has by then, which does not change any more', () => {
    const log = createConclusionLog('cold');
    log.estimate(10, { low: 88, value: 90, high: 92 });
    log.forecast(10, null);
    const before = log.parts();
    log.estimate(20, null);
    log.forecast(20, { low: 1, value: 2, high: 3 });
    log.event('vapour-arrived', 5, '');
    log.enterStage('tail', 30, '');
    log.openProblem('silent', 1);
    expect(before).toEqual({
      stages: [{ stage: 'warm-up', fromS: 0, toS: null, because: 'cold' }],
      events: [],
      estimates: [{ timeS: 10, headVapourAbv: { low: 88, value: 90, high: 92 } }],
      forecasts: [{ madeS: 10, mainFractionEndS: null }],
      problems: [],
    });
    expect(log.parts().estimates).toHaveLength(2);
    expect(log.parts().forecasts[1]).toEqual({
      madeS: 20,
      mainFractionEndS: { low: 1, value: 2, high: 3 },
    });
  });
});
