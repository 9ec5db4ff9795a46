import { describe, expect, test } from 'vitest';
import { setupKeepAwake } from '../../../app/electron/setup-keep-awake.ts';
import { setupNavigation } from '../../../app/electron/setup-navigation.ts';
import { setupPermissions } from '../../../app/electron/setup-permissions.ts';
import { setupReload } from '../../../app/electron/setup-reload.ts';
import { setupSleep } from '../../../app/electron/setup-sleep.ts';

type Listener = (...facts: never[]) => void;

/** Something with `on`, whose events a test can cause. */
function emitter() {
  const listeners = new Map<string, Listener>();
  return {
    on: (name: string, listener: Listener) => {
      listeners.set(name, listener);
    },
    emit: (name: string, ...facts: unknown[]) => listeners.get(name)?.(...(facts as never[])),
    names: () => [...listeners.keys()].sort(),
  };
}

test('every permission but full screen is refused, asked for or looked up, and no serial port is given away', () => {
  const handlers: Record<string, (...facts: never[]) => unknown> = {};
  const session = {
    ...emitter(),
    setPermissionRequestHandler: (handler: Listener) => {
      handlers.request = handler;
    },
    setPermissionCheckHandler: (handler: Listener) => {
      handlers.check = handler;
    },
    setDevicePermissionHandler: (handler: Listener) => {
      handlers.device = handler;
    },
  };
  setupPermissions(session as never);
  const answers: unknown[] = [];
  const fill: unknown[] = [];
  handlers.request?.(...([null, 'serial', (answer: boolean) => answers.push(answer)] as never[]));
  const check = (permission: string) => handlers.check?.(...([null, permission] as never[]));
  answers.push(check('serial'), handlers.device?.());
  handlers.request?.(...([null, 'fullscreen', (answer: boolean) => fill.push(answer)] as never[]));
  fill.push(check('fullscreen'));
  let prevented = 0;
  const event = { preventDefault: () => ++prevented };
  session.emit('select-serial-port', event, [], null, (port: string) => answers.push(port));
  expect({ answers, fill, prevented }).toEqual({
    answers: [false, false, false, ''],
    fill: [true, true],
    prevented: 1,
  });
});

describe('navigation', () => {
  function attempt(name: string, url: string): boolean {
    const contents = { ...emitter(), setWindowOpenHandler: () => {} };
    setupNavigation(contents as never);
    let prevented = false;
    contents.emit(name, {
      url,
      preventDefault: () => {
        prevented = true;
      },
    });
    return prevented;
  }

  test('leaving the app is refused, its own pages are not', () => {
    expect([
      attempt('will-navigate', 'https://elsewhere.example/'),
      attempt('will-frame-navigate', 'app://window.elsewhere.example/'),
      attempt('will-redirect', 'app://window/index.html'),
      attempt('will-attach-webview', 'app://window/index.html'),
      attempt('will-navigate', 'app://window/index.html#look-back'),
    ]).toEqual([true, true, true, true, false]);
  });

  test('no further window is opened', () => {
    let handler: (() => unknown) | null = null;
    const contents = {
      ...emitter(),
      setWindowOpenHandler: (given: () => unknown) => {
        handler = given;
      },
    };
    setupNavigation(contents as never);
    expect((handler as (() => unknown) | null)?.()).toEqual({ action: 'deny' });
  });
});

test('the computer is kept awake while there is a run, also a failing one, once, and let go after', () => {
  const services = emitter();
  const calls: string[] = [];
  setupKeepAwake(
    services as never,
    {
      start: (kind: string) => {
        calls.push(`start ${kind}`);
        return 5;
      },
      stop: (id: number) => calls.push(`stop ${id}`),
    } as never,
  );
  for (const state of ['idle', 'recording', 'recording', 'failed', 'idle', 'recording']) {
    services.emit('recording', { state });
  }
  expect(calls).toEqual(['start prevent-display-sleep', 'stop 5', 'start prevent-display-sleep']);
  services.emit('recording', { state: 'failed' });
  expect(calls).toHaveLength(3);
});

test('sleep and waking reach the services', () => {
  const monitor = emitter();
  const calls: string[] = [];
  setupSleep(monitor as never, {
    suspend: async () => void calls.push('suspend'),
    resume: async () => void calls.push('resume'),
  });
  monitor.emit('suspend');
  monitor.emit('resume');
  expect(calls).toEqual(['suspend', 'resume']);
});

test('a window that keeps falling over is given up after three reloads; a clean exit is none', () => {
  const calls: string[] = [];
  const contents = { ...emitter(), reload: () => calls.push('reload') };
  setupReload({
    contents: contents as never,
    nowMs: () => 0,
    giveUp: () => calls.push('give up'),
  });
  for (const reason of ['clean-exit', 'crashed', 'oom', 'killed', 'crashed']) {
    contents.emit('render-process-gone', {}, { reason });
  }
  expect(calls).toEqual(['reload', 'reload', 'reload', 'give up']);
});
