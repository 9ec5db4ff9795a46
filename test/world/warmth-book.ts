import type { ProbeReading } from '#main';
import type { Ask } from './asking.ts';
import type { FaultKind } from './fault.ts';
import type { Judge } from './judge.ts';

export interface WarmthBookParts {
  readonly judge: Judge;
  readonly ask: Ask;
  /** By the clock of the computer [ms since 1970]. */
  readonly wallMs: () => number;
  readonly isOn: (kind: FaultKind) => boolean;
}

/** Every minute in which the ferment was heard that is kept warm stands in its report, of this program and of the next. */
export interface WarmthBook {
  hear(readings: readonly ProbeReading[]): void;
  check(): Promise<void>;
  /** The program is gone, and with it what it said to be not saved. */
  cutOff(): void;
}

const minuteMs = 60_000;
/** What keeps a minute from the disk: it is told, and lost with the program. */
const keepsFromDisk: readonly FaultKind[] = [
  'disk-is-full',
  'disk-writes-half',
  'disk-is-slow',
  'disk-is-read-only',
  'syncs-fail',
  'scanner-holds-files',
  'folder-vanishes',
  'folder-is-taken',
];

export function createWarmthBook(parts: WarmthBookParts): WarmthBook {
  const { judge, ask, wallMs, isOn } = parts;
  /** Since when which ferment is kept. */
  let keeping = '';
  /** Minutes that are over, and those that were heard since they were looked at last. */
  let due = new Set<number>();
  let heard = new Set<number>();
  let mayLack = false;
  const minuteNow = () => Math.floor(wallMs() / minuteMs);

  return {
    hear(readings) {
      if (keeping === '') return;
      if (keepsFromDisk.some(isOn)) mayLack = true;
      const isHeard = readings.some(
        ({ channel, quality }) => channel === 'ferment' && quality === 'good',
      );
      if (isHeard) heard.add(minuteNow());
    },
    async check() {
      const now = await ask('warmth/now', {});
      if (!now.ok) return;
      const { kept } = now.value;
      const which = kept === null ? '' : `${kept.fermentId} since ${kept.keeping.sinceIso}`;
      if (kept === null || which !== keeping) {
        keeping = which;
        due = new Set();
        heard = new Set();
        return;
      }
      // The minute under way is none of the report yet, nor is one that has ended just now.
      const over = [...heard].filter((minute) => minute < minuteNow() - 1);
      for (const minute of over) {
        due.add(minute);
        heard.delete(minute);
      }
      const report = await ask('warmth/report', { fermentId: kept.fermentId });
      if (!report.ok) return;
      const minutes = report.value.stretches.reduce((sum, stretch) => sum + stretch.minutes, 0);
      if (minutes < due.size) {
        judge.violated('warmth-has-every-minute', `${due.size} heard, ${minutes} in the report.`);
      }
      if (kept.unsaved === null) mayLack = false;
    },
    cutOff() {
      if (!mayLack) {
        heard = new Set([...heard].filter((minute) => minute < minuteNow()));
        return;
      }
      heard = new Set();
      due = new Set();
      mayLack = false;
    },
  };
}
