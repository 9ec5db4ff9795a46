import { expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, type Monitor } from '#shared-core';
import { guardMonitor } from '../../../main/session/guarded-monitor.ts';
import { goodReading } from '../../support/good-reading.ts';

const reading = (timeS: number) => goodReading(timeS, 20);

function guarded(other: Partial<Monitor> = {}, create?: () => Monitor) {
  const failures: string[] = [];
  const monitor = guardMonitor(
    create ?? (() => ({ ...createMonitor(defaultRunSettings), ...other })),
    (message) => failures.push(message),
  );
  return { monitor, failures };
}

test('each question is answered with the snapshot and what changed by it', () => {
  const event = { event: 'vapour-arrived', timeS: 1, because: 'The head is warm.' } as const;
  const changes = [{ kind: 'event', timeS: 1, event }] as const;
  const { monitor, failures } = guarded({ takeChanges: () => changes });
  expect(monitor.push(reading(1))).toMatchObject({ snapshot: { timeS: 1 }, changes });
  expect(monitor.advanceTo(5.25)).toMatchObject({ snapshot: { timeS: 5.25 }, changes });
  expect(failures).toEqual([]);
});

test.each([
  [
    'at an input',
    {
      push: () => {
        throw new Error('a bug');
      },
    },
    'a bug',
  ],
  [
    'as time passes',
    {
      advanceTo: () => {
        throw 'no error at all';
      },
    },
    'no error at all',
  ],
  [
    'when its changes are taken',
    {
      takeChanges: () => {
        throw new Error('a bug');
      },
    },
    'a bug',
  ],
] as const)('a monitor that fails %s is told once, and asked nothing again', (_, other, said) => {
  const { monitor, failures } = guarded(other as Partial<Monitor>);
  const answers = [1, 2].flatMap((timeS) => [
    monitor.push(reading(timeS)),
    monitor.advanceTo(timeS + 0.25),
  ]);
  expect(answers.slice(1)).toEqual([expect.toSatisfy((answer) => answer === null), null, null]);
  expect(failures).toEqual([said]);
});

test('one that cannot even be made is told, and everything goes on without it', () => {
  const { monitor, failures } = guarded({}, () => {
    throw new Error('no such still');
  });
  expect([monitor.push(reading(1)), monitor.advanceTo(2), failures]).toEqual([
    null,
    null,
    ['no such still'],
  ]);
});
