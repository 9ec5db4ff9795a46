import { existsSync } from 'node:fs';
import process from 'node:process';
import {
  asGiven,
  compilePattern,
  fail,
  type PortInfo,
  type ProbeSource,
  type Result,
  type SerialSource,
  type ServiceProblem,
  succeed,
  worded,
} from '#shared-core';
import { createChannelMap } from './channel-map.ts';
import { type DemoRig, type DemoRigParts, startDemoRig } from './demo-rig.ts';
import { createProbeLink, type ProbeLink, type ProbeLinkView } from './link/probe-link.ts';
import { mergeViews } from './merge-views.ts';
import type { OpenByteLine } from './port/byte-line.ts';
import { lineTicket } from './port/line-ticket.ts';
import type { UsbIdentity } from './port/same-device.ts';
import type { ProbeLinkChange, ProbeReading } from './probe-hub.ts';

export interface ProbeGroupDependencies extends DemoRigParts {
  readonly openLine: OpenByteLine;
  readonly listPorts: () => Promise<readonly PortInfo[]>;
  readonly readings: (readings: readonly ProbeReading[]) => void;
  readonly link: (change: ProbeLinkChange) => void;
}

/** All probes of one source: one, several on one map of channels, or the demo rig. */
export interface ProbeGroup {
  readonly rig: DemoRig | null;
  open(): Promise<Result<null, ServiceProblem>>;
  tick(): void;
  /** The computer slept since `sinceS`. */
  stoodStill(sinceS: number): void;
  /** The same object until something else is to be seen. */
  view(): ProbeLinkView;
  suspend(): Promise<void>;
  resume(): void;
  close(): Promise<void>;
  /** Once no port is being opened or closed; never where a driver hangs in it. */
  atRest(): Promise<unknown>;
  /** Devices that can be recognised by their USB identity, with how they were opened. */
  devices(): readonly { readonly identity: UsbIdentity; readonly source: SerialSource }[];
}

/** Nothing is opened yet; a source that cannot work is refused here, before any port is touched. */
export function createProbeGroup(
  source: ProbeSource,
  dependencies: ProbeGroupDependencies,
): Result<ProbeGroup, ServiceProblem> {
  if (source.kind === 'demo') {
    const rig = startDemoRig(source, dependencies);
    if (!rig.ok) return rig;
    const { openLine } = rig.value;
    return succeed(group([rig.value.source], rig.value, { ...dependencies, openLine }));
  }
  const probes = source.kind === 'several' ? source.probes : [source];
  const unusable = probes.find(
    ({ language, pattern }) => language === 'own-pattern' && !compilePattern(pattern ?? '').ok,
  );
  if (unusable !== undefined) {
    return fail({
      kind: 'request-invalid',
      message: worded('no pattern: {pattern}', { pattern: asGiven(unusable.pattern ?? '') }),
    });
  }
  if (new Set(probes.map(({ path }) => path)).size < probes.length) {
    return fail({ kind: 'request-invalid', message: worded('each probe needs a port of its own') });
  }
  return succeed(group(probes, null, dependencies));
}

function group(
  probes: readonly SerialSource[],
  rig: DemoRig | null,
  dependencies: ProbeGroupDependencies,
): ProbeGroup {
  const map = createChannelMap();
  const links = probes.map(
    (probe, index): ProbeLink =>
      createProbeLink(
        probe,
        {
          ...dependencies,
          ticketOf: lineTicket,
          pathExists: (path) => process.platform === 'win32' || existsSync(path),
        },
        {
          readings: (readings) => dependencies.readings(map.rename(index, readings)),
          // Staging hangs on the head; a lost pot probe shows in the status and in its own curve.
          link: (change) => {
            if (map.headCarrier() === index) dependencies.link(change);
          },
        },
      ),
  );
  let shown: {
    readonly ofLinks: readonly ProbeLinkView[];
    readonly view: ProbeLinkView;
  } | null = null;
  return {
    rig,
    async open() {
      for (const link of links) {
        const opened = await link.open();
        if (!opened.ok) return opened;
      }
      return succeed(null);
    },
    tick() {
      for (const link of links) link.tick();
    },
    stoodStill(sinceS) {
      for (const link of links) link.stoodStill(sinceS);
    },
    view() {
      const ofLinks = links.map((link) => link.view());
      // A channel is named when it is first heard, which is to be seen in the view of its probe.
      if (shown === null || ofLinks.some((view, index) => view !== shown?.ofLinks[index])) {
        const merged = mergeViews(ofLinks.map((view, index) => map.renameView(index, view)));
        const { length } = links;
        const device = ofLinks[map.headCarrier()]?.device ?? null;
        const view = length === 1 ? merged : { ...merged, device, origins: [...map.origins()] };
        shown = { ofLinks, view };
      }
      return shown.view;
    },
    async suspend() {
      await Promise.all(links.map((link) => link.suspend()));
    },
    resume() {
      for (const link of links) link.resume();
    },
    async close() {
      await Promise.all(links.map((link) => link.close()));
      rig?.stop();
    },
    atRest: () => Promise.all(links.map((link) => link.atRest())),
    devices: () =>
      links.flatMap((link, index) => {
        const identity = link.identity();
        const source = probes[index];
        return identity === null || source === undefined ? [] : [{ identity, source }];
      }),
  };
}
