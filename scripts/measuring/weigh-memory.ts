import { z } from 'zod';
import { watchMachineLoad } from './machine-load.ts';
import type { NumberedProbe } from './numbered-probe.ts';
import type { MeasuredWindow } from './open-measured-window.ts';
import { slopePerHour } from './slope-per-hour.ts';

/** Run seconds a second: the fastest a rehearsal goes. */
export const fastestTimeScale = 240;
const readingsPerRunS = 10;
/** What a reading must keep: its time and its value. */
const bytesPerReading = 2 * Float64Array.BYTES_PER_ELEMENT;

const usageSchema = z.object({ usedSize: z.number(), backingStorageSize: z.number() });

/** Lets hours of a run pass at ten readings a run second and prints what the page keeps after each. */
export async function weighMemory(
  { tools }: MeasuredWindow,
  probe: NumberedProbe,
  hours: number,
): Promise<void> {
  async function kept(): Promise<{ readonly heap: number; readonly arrays: number }> {
    for (let time = 0; time < 2; time += 1) await tools.send('HeapProfiler.collectGarbage');
    const { usedSize, backingStorageSize } = usageSchema.parse(
      await tools.send('Runtime.getHeapUsage'),
    );
    return { heap: usedSize / 1e6, arrays: backingStorageSize / 1e6 };
  }
  const load = watchMachineLoad();
  const heaps: { readonly hour: number; readonly heap: number }[] = [];
  const perHour = 3600 * readingsPerRunS;
  for (let hour = 1; hour <= hours; hour += 1) {
    await probe.pour(perHour, readingsPerRunS * fastestTimeScale);
    const { heap, arrays } = await kept();
    heaps.push({ hour, heap });
    console.log(
      `  after ${hour} h: heap ${heap.toFixed(2)} MB, arrays of numbers ${arrays.toFixed(2)} MB ` +
        `(${((hour * perHour * bytesPerReading) / 1e6).toFixed(2)} MB are times and values)`,
    );
  }
  const settled = heaps.filter(({ hour }) => hour > hours / 5);
  const slope = slopePerHour(settled.map(({ hour, heap }) => ({ hour, value: heap })));
  console.log(
    `heap without the arrays, hour ${settled[0]?.hour} to ${hours}: ${(1000 * slope).toFixed(0)} kB an hour of run`,
  );
  console.log(`machine: ${load.report()}`);
}
