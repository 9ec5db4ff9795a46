import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { serialSourceSchema, usualWarmthBand } from '#shared-core';
import { fermentFileText, quietMinute, warmthFileText } from './ferment-files.ts';

export const fermentId = 'pear-juice';
const minuteMs = 60_000;
const minutesOfWeek = 7 * 24 * 60;

/** A ferment that was kept warm for a week until some minutes ago, as it lies on the disk. */
export function writeWeekBefore(runsFolder: string, port: string, nowMs: number): void {
  mkdirSync(runsFolder, { recursive: true });
  const endsMs = Math.floor(nowMs / minuteMs - 5) * minuteMs;
  const beganMs = endsMs - minutesOfWeek * minuteMs;
  const beganAtIso = new Date(beganMs).toISOString();
  const stated = { name: 'Pear juice', beganAtIso, volumeMl: 1000, sugarG: null, wentIn: '' };
  writeFileSync(
    path.join(runsFolder, `ferment-${fermentId}.jsonl`),
    fermentFileText({ fermentId, stated, entries: [] }, beganAtIso),
  );
  const source = serialSourceSchema.parse({ kind: 'serial', path: port, language: 'json-lines' });
  const minutes = Array.from({ length: minutesOfWeek }, (_, minute) =>
    quietMinute(beganMs + minute * minuteMs, 30 + Math.sin(minute / 60)),
  );
  writeFileSync(
    path.join(runsFolder, `warmth-${fermentId}.jsonl`),
    warmthFileText({ band: usualWarmthBand, source, sinceIso: beganAtIso }, minutes),
  );
}
