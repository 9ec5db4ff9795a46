import type { FileLayer, ProbeHub, ProbeReading } from '#main';
import type { Snapshot } from '#shared-core';
import type { PlantedFault } from './planted-fault.ts';

export function lyingSync(files: FileLayer): FileLayer {
  const createAppend: FileLayer['createAppend'] = (at) => {
    const made = files.createAppend(at);
    if (!made.ok) return made;
    let syncs = 0;
    const sync = async () => {
      syncs += 1;
      return syncs > 3 ? { ok: true as const, value: undefined } : made.value.sync();
    };
    return { ok: true, value: { ...made.value, sync } };
  };
  return { ...files, createAppend };
}

export function plantInHub(hub: ProbeHub, planted: PlantedFault | undefined): ProbeHub {
  if (planted === 'line-kept-whole') {
    let kept = '';
    hub.on('readings', (readings) => {
      kept += JSON.stringify(readings);
    });
    return { ...hub, status: () => ({ ...hub.status(), lastLine: kept }) };
  }
  if (planted !== 'reading-lost' && planted !== 'reading-doubled') return hub;
  let count = 0;
  const on: ProbeHub['on'] = (name, listener) => {
    if (name !== 'readings') return hub.on(name, listener);
    const told = listener as (readings: readonly ProbeReading[]) => void;
    return hub.on('readings', (readings) => {
      count += 1;
      if (count !== 100) told(readings);
      else if (planted === 'reading-doubled') told([...readings, ...readings]);
    });
  };
  return { ...hub, on };
}

export function plantInSnapshot(snapshot: Snapshot, planted: PlantedFault | undefined): Snapshot {
  if (planted === 'alarm-withheld') return { ...snapshot, alarms: [] };
  if (planted !== 'age-stands-still' || snapshot.head === null) return snapshot;
  return { ...snapshot, head: { ...snapshot.head, ageS: 0 } };
}

export async function turnByte(files: FileLayer, folder: string): Promise<void> {
  const listed = await files.list(folder);
  const log = listed.ok && listed.value.find(({ name }) => name.endsWith('.jsonl'));
  if (!log) return;
  const at = `${folder}/${log.name}`;
  const size = await files.sizeBytes(at);
  const read = await files.read(at, 0, size.ok ? size.value : 0);
  if (!read.ok) return;
  const bytes = Uint8Array.from(read.value);
  const middle = Math.floor(bytes.length / 2);
  bytes[middle] = (bytes[middle] ?? 0) ^ 1;
  await files.remove(at);
  const made = files.createAppend(at);
  if (made.ok) made.value.write(bytes);
}
