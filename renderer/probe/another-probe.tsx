import { useState } from 'react';
import { say } from '#shared-core';
import { Button, SelectField, TextLine } from '../design/index.ts';
import { useBench } from '../parts/index.ts';
import { type ChannelRole, roleOptions } from './channel-roles.ts';
import type { SerialChoice } from './probes-of-source.ts';

interface AnotherProbeProps {
  readonly usedPaths: readonly string[];
  readonly canAct: boolean;
  readonly onProbe: (probe: SerialChoice) => void;
}

/** A second probe, such as one in the pot or a balance under the receiver, read beside the first. */
export function AnotherProbe({ usedPaths, canAct, onProbe }: AnotherProbeProps) {
  const ports = useBench((bench) => bench.ports);
  const [role, setRole] = useState<ChannelRole>('pot');
  const [path, setPath] = useState('');
  const free = ports.filter(({ path, likelyProbe }) => likelyProbe && !usedPaths.includes(path));
  const isUsed = usedPaths.includes(path.trim());
  const add = (chosen: string) => {
    const known = ports.find((port) => port.path === chosen)?.remembered;
    const channels = role === '' || role === 'head' ? {} : { channels: { head: role } };
    onProbe({ kind: 'serial', ...known, path: chosen, ...channels });
    setPath('');
  };
  return (
    <details className="why">
      <summary>{say('Another probe beside it')}</summary>
      <div className="speech">
        <SelectField
          name={say('It measures')}
          options={roleOptions}
          value={role}
          onValue={setRole}
        />
        <TextLine
          name={say('Where it is')}
          text={path}
          placeholder={say('/dev/ttyACM1 or COM4')}
          problem={isUsed ? say('This port is listened to already.') : undefined}
          onText={setPath}
        />
        <Button disabled={!canAct || path.trim() === '' || isUsed} onClick={() => add(path.trim())}>
          {say('Listen to it too')}
        </Button>
        {free.map((port) => (
          <Button key={port.path} disabled={!canAct} onClick={() => add(port.path)}>
            {say('Listen to {path} too', { path: port.path })}
          </Button>
        ))}
      </div>
    </details>
  );
}
