import type { PortInfo, ProbeSource, SerialSource } from '#shared-core';
import { identityAt } from '../port/same-device.ts';
import type { ProbeHub } from '../probe-hub.ts';
import { createProbeMemory, type ProbeMemorySetup } from './probe-memory.ts';

/** A hub that knows devices again by their USB identity, on whatever port they are plugged in. */
export function createRememberingProbeHub(hub: ProbeHub, setup: ProbeMemorySetup): ProbeHub {
  const memory = createProbeMemory(setup);
  let rememberedSource = '';

  const withMemory = (ports: readonly PortInfo[]): readonly PortInfo[] =>
    ports.map((port) => {
      const identity = identityAt(port.path, ports);
      const known = identity === null ? null : memory.recall(identity);
      return known === null ? port : { ...port, remembered: { ...known, path: port.path } };
    });

  async function remember(source: ProbeSource): Promise<void> {
    const ports = await hub.listPorts();
    for (const probe of serialParts(source)) {
      const identity = identityAt(probe.path, ports);
      if (identity !== null) await memory.remember(identity, probe);
    }
  }

  // Only what was really heard is worth remembering: a wrong guess would come back every time.
  hub.on('status', ({ state, source }) => {
    const text = JSON.stringify(source);
    if (state !== 'hearing' || source === null || text === rememberedSource) return;
    rememberedSource = text;
    void remember(source);
  });

  return {
    ...hub,
    async listPorts() {
      await memory.load();
      return withMemory(await hub.listPorts());
    },
    on(name, listener) {
      if (name !== 'ports') return hub.on(name, listener);
      const tell = listener as (ports: readonly PortInfo[]) => void;
      return hub.on('ports', (ports) => void memory.load().then(() => tell(withMemory(ports))));
    },
  };
}

function serialParts(source: ProbeSource): readonly SerialSource[] {
  if (source.kind === 'serial') return [source];
  return source.kind === 'several' ? source.probes : [];
}
