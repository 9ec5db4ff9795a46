import { type ProbeHub, type ProbeListeners, type ProbeReading, systemClock } from '#main';
import { fail, type ProbeStatus, serialSourceSchema, succeed } from '#shared-core';

/** A probe hub that sends four channels at a steady rate, for soak runs. */
export interface SteadyProbe extends ProbeHub {
  /** Readings sent so far. */
  sent(): number;
}

const channels = ['head', 'pot', 'condenser-outlet', 'room'] as const;

/** Sends `ratePerS` readings a second of each channel; catches up after a late timer. */
export function createSteadyProbe(ratePerS: number): SteadyProbe {
  const source = serialSourceSchema.parse({ kind: 'serial', path: 'soak' });
  const status: ProbeStatus = {
    state: 'hearing',
    source,
    path: null,
    lastLine: null,
    channels: [...channels],
    latest: [],
    readingsPerS: ratePerS * channels.length,
    rejectedLines: 0,
    droppedBytes: 0,
    problem: null,
    advice: null,
  };
  const listeners = new Set<ProbeListeners['readings']>();
  const startS = systemClock.monotonicS();
  let rounds = 0;
  const timer = setInterval(() => {
    const due = Math.floor((systemClock.monotonicS() - startS) * ratePerS);
    for (; rounds < due; rounds += 1) {
      const atS = startS + rounds / ratePerS;
      const readings = channels.map((channel, index): ProbeReading => {
        const value = 78 + index + ((rounds * 7) % 16) / 16;
        return { atS, channel, value, unit: '°C', quality: 'good' };
      });
      for (const listener of listeners) listener(readings);
    }
  }, 1000 / ratePerS);
  return {
    sent: () => rounds * channels.length,
    status: () => status,
    listPorts: async () => [],
    connect: async () => succeed(status),
    find: async () => fail({ kind: 'no-probe' }),
    disconnect: async () => undefined,
    on(name, listener) {
      if (name === 'readings') listeners.add(listener as ProbeListeners['readings']);
      return () => listeners.delete(listener as ProbeListeners['readings']);
    },
    followHeat: () => undefined,
    suspend: async () => undefined,
    resume: async () => undefined,
    close: async () => clearInterval(timer),
  };
}
