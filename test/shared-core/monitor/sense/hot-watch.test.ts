import { expect, test } from 'vitest';
import { createHotWatch } from '../../../../shared-core/monitor/sense/hot-watch.ts';

const waterC = 99.6;

test('a head hotter than boiling water by more than 1.5 K is told of after a minute', () => {
  const watch = createHotWatch();
  const faults = [];
  for (let timeS = 0; timeS <= 62; timeS += 1) {
    watch.see(timeS, waterC + 1.6, { waterC, potC: null });
    faults.push(watch.fault(timeS));
  }
  expect(faults.indexOf('above-boiling-water')).toBe(61);
});

test('one that was cooler between begins its minute anew', () => {
  const watch = createHotWatch();
  for (let timeS = 0; timeS <= 100; timeS += 1)
    watch.see(timeS, timeS === 50 ? waterC + 1.4 : waterC + 1.6, { waterC, potC: null });
  expect([watch.fault(100), watch.fault(112)]).toEqual([null, 'above-boiling-water']);
});

test('a head hotter than the pot by more than 2 K is told of; without a pot probe it is not', () => {
  const watch = createHotWatch();
  for (let timeS = 0; timeS <= 61; timeS += 1) watch.see(timeS, 90.1, { waterC, potC: 88 });
  expect(watch.fault(61)).toBe('hotter-than-pot');
  watch.see(62, 90.1, { waterC, potC: null });
  expect(watch.fault(300)).toBeNull();
  const near = createHotWatch();
  for (let timeS = 0; timeS <= 61; timeS += 1) near.see(timeS, 89.9, { waterC, potC: 88 });
  expect(near.fault(61)).toBeNull();
});

test('boiling water is told before the pot', () => {
  const watch = createHotWatch();
  for (let timeS = 0; timeS <= 61; timeS += 1) watch.see(timeS, 110, { waterC, potC: 88 });
  expect(watch.fault(61)).toBe('above-boiling-water');
});
