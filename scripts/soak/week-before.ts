import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { serialSourceSchema, usualWarmthBand } from '#shared-core';
import { fermentLineText, fermentLog } from '../../main/ferments/ferment-lines.ts';
import { warmthLineText, warmthLog } from '../../main/ferments/warmth-lines.ts';

export const fermentId = 'pear-juice';
const minuteMs = 60_000;
const minutesOfWeek = 7 * 24 * 60;

/** A ferment that was kept warm for a week until some minutes ago, as it lies on the disk. */
export function writeWeekBefore(runsFolder: string, port: string, nowMs: number): void {
  mkdirSync(runsFolder, { recursive: true });
  const endsMs = Math.floor(nowMs / minuteMs - 5) * minuteMs;
  const beganMs = endsMs - minutesOfWeek * minuteMs;
  const keptAtIso = new Date(beganMs).toISOString();
  writeFileSync(
    path.join(runsFolder, `ferment-${fermentId}.jsonl`),
    fermentLineText({
      kind: 'begun',
      ...fermentLog,
      keptAtIso,
      fermentId,
      stated: {
        name: 'Pear juice',
        beganAtIso: keptAtIso,
        volumeMl: 1000,
        sugarG: null,
        wentIn: '',
      },
    }),
  );
  const lines = [
    warmthLineText({
      kind: 'keep',
      ...warmthLog,
      keptAtIso,
      band: usualWarmthBand,
      channel: 'ferment',
      source: serialSourceSchema.parse({ kind: 'serial', path: port, language: 'json-lines' }),
    }),
  ];
  for (let minute = 0; minute < minutesOfWeek; minute += 1) {
    const meanC = 30 + Math.sin(minute / 60);
    lines.push(
      warmthLineText({
        kind: 'minute',
        atIso: new Date(beganMs + minute * minuteMs).toISOString(),
        lowC: meanC - 0.1,
        meanC,
        highC: meanC + 0.1,
        minutes: 1,
      }),
    );
  }
  writeFileSync(path.join(runsFolder, `warmth-${fermentId}.jsonl`), lines.join(''));
}
