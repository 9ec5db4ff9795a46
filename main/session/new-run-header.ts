import { type LogHeader, type ProbeSource, type RunSettings, runLogVersion } from '#shared-core';

export interface NewRun {
  readonly runId: string;
  readonly wallMs: number;
  readonly settings: RunSettings;
  readonly source: ProbeSource;
  readonly app: { readonly version: string; readonly modelVersion: string };
}

/** What a run that is recorded as it happens says of itself at the head of its log. */
export function newRunHeader({ runId, wallMs, settings, source, app }: NewRun): LogHeader {
  return {
    format: 'still-head-run-log',
    version: runLogVersion,
    runId,
    startedAtIso: new Date(wallMs).toISOString(),
    settings: patient(settings, source.timeScale),
    appVersion: app.version,
    modelVersion: app.modelVersion,
    timeScale: source.timeScale,
    rehearsal: source.kind === 'demo' || source.timeScale !== 1,
    source,
    origin: 'recorded',
  };
}

/**
 * Longest hitch of a busy computer that is no silence of the probe [s of real time]. One of a third of a second was measured with the
 * window, its browser and this program on two processors; a simulated still can't be unplugged, so patience costs nothing.
 */
const hitchS = 1;

/** In a rehearsal seconds fly: a hitch of the computer would look like minutes of silence. */
function patient(settings: RunSettings, timeScale: number): RunSettings {
  const { probe } = settings;
  const silenceS = Math.max(probe.silenceS, hitchS * timeScale);
  return { ...settings, probe: { ...probe, silenceS } };
}
