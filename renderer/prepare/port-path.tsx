import { useState } from 'react';
import { say } from '#shared-core';
import { Button, Form, TextLine } from '../design/index.ts';

interface PortPathProps {
  readonly canAct: boolean;
  readonly onPath: (path: string) => void;
}

/** Some ports are in no list: virtual ones, and those of unusual adapters. */
export function PortPath({ canAct, onPath }: PortPathProps) {
  const [text, setText] = useState('');
  const path = text.trim();
  return (
    <Form className="port-path" onSubmit={() => path !== '' && onPath(path)}>
      <TextLine
        name={say('Or type where the probe is')}
        field="probe"
        placeholder={say('/dev/ttyACM0 or COM3')}
        text={text}
        onText={setText}
        beside={
          <Button type="submit" disabled={!canAct || path === ''}>
            {say('Connect')}
          </Button>
        }
      />
    </Form>
  );
}
