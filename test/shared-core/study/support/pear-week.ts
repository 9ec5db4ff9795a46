import type { FermentRead, KeptFerment } from '#shared-core';
import type { studyFerment } from '../../../../shared-core/study/study-ferment.ts';

const hourMs = 3_600_000;

export interface WeekChanges {
  readonly fermentId?: string;
  readonly name?: string;
  readonly beganAtIso?: string;
  readonly volumeMl?: number;
  readonly sugarG?: KeptFerment['stated']['sugarG'];
  readonly originalGravity?: number;
  readonly endGravity?: number;
  /** Hours to the half of the fall. */
  readonly halfH?: number;
  readonly hasMass?: boolean;
  readonly hasWarmth?: boolean;
  readonly isDegassed?: boolean;
}

/** A pear-juice week that nobody had: a fall along a logistic curve, read twice a day, kept warm by a warmer that swings, one cold night. */
export function pearWeek({
  fermentId = '20260308T080000Z',
  name = 'Pear juice',
  beganAtIso = '2026-03-08T08:00:00.000Z',
  volumeMl = 1000,
  sugarG = { low: 128, high: 132 },
  originalGravity = 1.058,
  endGravity = 0.998,
  halfH = 44,
  hasMass = true,
  hasWarmth = true,
  isDegassed = true,
}: WeekChanges = {}): Parameters<typeof studyFerment>[0] {
  const beganMs = Date.parse(beganAtIso);
  const at = (hours: number) => new Date(beganMs + hours * hourMs).toISOString();
  const doneAt = (hours: number) => {
    const of = (h: number) => 1 / (1 + Math.exp(-(h - halfH) / 9));
    return (of(hours) - of(0)) / (1 - of(0));
  };
  const litres = volumeMl / 1000;
  const gasG = (originalGravity - endGravity) * 131.25 * 7.54 * litres;
  const hours = [0, 24, 36, 48, 60, 72, 96, 120, 144, 167];
  const read = (timeH: number, index: number): FermentRead => {
    const done = doneAt(timeH);
    const isLast = index === hours.length - 1;
    return {
      atIso: at(timeH),
      gravity: {
        indicated: Number((originalGravity - done * (originalGravity - endGravity)).toFixed(3)),
        temperatureC: 20,
      },
      massG: hasMass ? Number((1480 - gasG * done * 1.015).toFixed(1)) : null,
      temperatureC: 24,
      bubblesPerMin: Math.round(300 * done * (1 - done)),
      ph: index % 3 === 0 ? Number((3.9 - 0.3 * done).toFixed(1)) : null,
      refractometerPercent: null,
      treatments: isLast && isDegassed ? ['degassed', 'settled', 'strained'] : [],
      note: index === 1 ? 'Kim Example saw it foam' : '',
    };
  };
  const entries: KeptFerment['entries'] = hours.map((timeH, index) => ({
    entryId: index + 1,
    keptAtIso: at(timeH),
    read: read(timeH, index),
    withdrawnAtIso: null,
  }));
  const withdrawn = { ...read(50, 1), note: 'misread' };
  entries.push({
    entryId: entries.length + 1,
    keptAtIso: at(50),
    read: withdrawn,
    withdrawnAtIso: at(51),
  });
  const minutes = Array.from({ length: hasWarmth ? 167 * 60 : 0 }, (_, index) => {
    const hour = index / 60;
    const isCold = hour > 40 && hour < 47;
    const meanC = isCold ? 24 - Math.sin(((hour - 40) * Math.PI) / 7) : 30 + Math.sin(hour);
    return { atIso: at(hour), lowC: meanC - 0.1, meanC, highC: meanC + 0.1, minutes: 1 };
  });
  return {
    appVersion: '0.1.0',
    kept: {
      fermentId,
      stated: { name, beganAtIso, volumeMl, sugarG, wentIn: '1 L of pear juice' },
      corrections: [],
      entries,
      unreadableLines: 0,
    },
    warmth: { band: hasWarmth ? { lowC: 25, aimC: 30, highC: 34 } : null, minutes },
  };
}
