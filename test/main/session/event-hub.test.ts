import { expect, test } from 'vitest';
import { createEventHub } from '../../../main/session/event-hub.ts';

const inputs = { runId: '20250314T101500Z', fromIndex: 7, inputs: [] };

test('an event reaches everybody who listens to its name, until they no longer do', () => {
  const hub = createEventHub();
  const heard: string[] = [];
  hub.emit('inputs', inputs);
  const stop = hub.on('inputs', ({ fromIndex }) => heard.push(`one ${fromIndex}`));
  hub.on('inputs', ({ fromIndex }) => heard.push(`two ${fromIndex}`));
  hub.on('snapshot', () => heard.push('snapshot'));
  hub.emit('inputs', inputs);
  stop();
  hub.emit('inputs', { ...inputs, fromIndex: 8 });
  expect(heard).toEqual(['one 7', 'two 7', 'two 8']);
});

test('a listener that fails harms neither the sender nor the others', () => {
  const hub = createEventHub();
  const heard: string[] = [];
  hub.on('inputs', () => {
    throw new Error('as a test asks');
  });
  hub.on('inputs', () => heard.push('other'));
  hub.emit('inputs', inputs);
  expect(heard).toEqual(['other']);
});
