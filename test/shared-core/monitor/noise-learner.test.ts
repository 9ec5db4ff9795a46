import { expect, test } from 'vitest';
import { createNoiseLearner } from '../../../shared-core/monitor/sense/noise-learner.ts';

test('a head that swings by kelvins is not taken for a noisy probe', () => {
  const learner = createNoiseLearner();
  for (let timeS = 0; timeS < 3600; timeS += 1) {
    learner.see(timeS, 78 + 20 * Math.sin(timeS / 20), 0);
  }
  const { whiteSdK, slowSdK } = learner.noise();
  expect(Math.max(whiteSdK, slowSdK)).toBeLessThanOrEqual(0.5);
});
