import process from 'node:process';
import { createFermentMemory, nodeFileLayer, systemClock } from '#main';

/** Keeps one entry after another and says how many were answered as kept, until it is killed. */
const [runsFolder = ''] = process.argv.slice(2);
const memory = createFermentMemory({
  files: nodeFileLayer,
  clock: systemClock,
  runsFolder,
  mayWrite: () => true,
});
const now = () => new Date(systemClock.wallMs()).toISOString();
const begun = await memory.begin({
  name: 'Pears',
  beganAtIso: now(),
  volumeMl: 1000,
  sugarG: null,
  wentIn: '',
});
if (!begun.ok) throw new Error(JSON.stringify(begun.error));
for (let count = 1; ; count += 1) {
  const kept = await memory.enter(begun.value.fermentId, {
    atIso: now(),
    gravity: null,
    massG: 1500,
    temperatureC: null,
    bubblesPerMin: null,
    ph: null,
    refractometerPercent: null,
    treatments: [],
    note: `entry ${count}`,
  });
  if (!kept.ok) throw new Error(JSON.stringify(kept.error));
  process.send?.(count);
}
