import {
  createProbeHub,
  type ProbeHub,
  type ProbeHubOptions,
  type ProbeLinkChange,
  type ProbeReading,
  systemClock,
} from '#main';
import { type ProbeStatus, type SerialSource, serialSourceSchema } from '#shared-core';

/** A hub that remembers everything it told. */
export interface HeardHub {
  readonly hub: ProbeHub;
  readonly readings: ProbeReading[];
  readonly links: ProbeLinkChange[];
  readonly statuses: ProbeStatus[];
  /** Readings as short texts, e.g. `head 78.42 good`. */
  texts(): string[];
}

export function heardHub(options: Partial<ProbeHubOptions> = {}): HeardHub {
  const hub = createProbeHub({ clock: systemClock, ...options });
  const readings: ProbeReading[] = [];
  const links: ProbeLinkChange[] = [];
  const statuses: ProbeStatus[] = [];
  hub.on('readings', (heard) => readings.push(...heard));
  hub.on('link', (change) => links.push(change));
  hub.on('status', (status) => statuses.push(status));
  const texts = () =>
    readings.map(({ channel, value, quality }) => `${channel} ${value} ${quality}`);
  return { hub, readings, links, statuses, texts };
}

/** The defaults of the contract around what a test cares about. */
export function serialSource(
  path: string,
  rest: Partial<Omit<SerialSource, 'kind' | 'path'>> = {},
): SerialSource {
  return serialSourceSchema.parse({ kind: 'serial', path, ...rest });
}
