import type { FermentReading } from '../../../../shared-core/ferment/ferment-log.ts';
import type { Evidence } from '../../../../shared-core/ferment/gather-evidence.ts';

const nothing = {
  gravity: null,
  massG: null,
  temperatureC: null,
  bubblesPerMin: null,
  isDegassed: false,
} as const;

/** What was read of a ferment at an hour; nothing but what is said. */
export function readingAt(timeH: number, read: Partial<FermentReading> = {}): FermentReading {
  return { timeH, ...nothing, ...read };
}

/** The same as evidence, each with its uncertainty. */
export function evidenceAt(timeH: number, read: Partial<Evidence> = {}): Evidence {
  return { timeH, ...nothing, ...read };
}
