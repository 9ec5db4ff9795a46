/**
 * Stands in for the module `electron`: has what the app uses of it and nothing else, so that anything else is an error with its
 * name. Once the window has loaded, it asks of the services what a window asks, and prints one line with the answers.
 */
import { fork } from 'node:child_process';
import { EventEmitter } from 'node:events';
import process from 'node:process';
import { playWindow } from './play-window.ts';

/** Whatever is not there is an error, not `undefined`. */
function strict<T extends object>(name: string, parts: T): T {
  return new Proxy(parts, {
    get(target, key) {
      if (key in target || typeof key === 'symbol' || key === 'then' || key === 'toJSON') {
        const value: unknown = Reflect.get(target, key, target);
        return value instanceof Function ? value.bind(target) : value;
      }
      throw new Error(`The stand-in has no ${name}.${key}`);
    },
  });
}

type Handler = (request: Request) => Promise<Response>;
type Answer = (event: unknown, message: unknown) => Promise<unknown>;
let isReady = false;
let handler: Handler | null = null;
let answer: Answer | null = null;
let contents = 0;
const [, , folder = ''] = process.argv;

class StandInApp extends EventEmitter {
  enableSandbox() {
    if (isReady) throw new Error('enableSandbox() after ready');
  }
  requestSingleInstanceLock() {
    return true;
  }
  async whenReady() {
    await new Promise(setImmediate);
    isReady = true;
  }
  getVersion() {
    return '0.0.0-stand-in';
  }
  getPath(name: string) {
    if (name !== 'home') throw new Error(`No path of ${name}`);
    return folder;
  }
  quit() {
    this.emit('before-quit', { preventDefault() {} });
  }
  exit(code: number) {
    process.exit(code);
  }
}
export const app = strict('app', new StandInApp());

export const protocol = strict('protocol', {
  registerSchemesAsPrivileged(schemes: readonly unknown[]) {
    if (isReady) throw new Error('registerSchemesAsPrivileged() after ready');
    return schemes;
  },
  handle(scheme: string, act: Handler) {
    if (!isReady) throw new Error('protocol.handle() before ready');
    if (scheme !== 'app') throw new Error(`A scheme ${scheme}`);
    handler = act;
  },
});

class StandInContents extends EventEmitter {
  readonly id = ++contents;
  send() {}
  reload() {}
  setWindowOpenHandler() {}
}

export class BrowserWindow extends EventEmitter {
  readonly webContents = strict('webContents', new StandInContents());
  constructor(options: { readonly webPreferences: Readonly<Record<string, unknown>> }) {
    super();
    if (!isReady) throw new Error('A window before ready');
    const { sandbox, contextIsolation, nodeIntegration } = options.webPreferences;
    if (!(sandbox && contextIsolation) || nodeIntegration) throw new Error('An open window');
    app.emit('web-contents-created', {}, this.webContents);
    // biome-ignore lint/correctness/noConstructorReturn: whoever holds the window must meet the strict one.
    return strict('BrowserWindow', this);
  }
  isDestroyed() {
    return false;
  }
  isMinimized() {
    return false;
  }
  getBounds() {
    return { x: 0, y: 0, width: 1280, height: 800 };
  }
  show() {}
  focus() {}
  restore() {}
  close() {}
  async loadURL(address: string) {
    if (handler === null || answer === null) throw new Error('Loaded before it can be answered');
    const serve = handler;
    const ask = answer;
    this.emit('ready-to-show');
    const event = {
      sender: { id: this.webContents.id },
      senderFrame: { url: address, parent: null },
    };
    void playWindow({
      load: (url) => serve(new Request(url)),
      request: (name, body) => ask(event, { name, body }),
      address,
    })
      .then((told) => console.log(`told ${JSON.stringify(told)}`))
      .catch((error: unknown) => console.log(`told ${JSON.stringify({ failed: String(error) })}`))
      .finally(() => app.quit());
  }
}

export const ipcMain = strict('ipcMain', {
  handle(_channel: string, act: Answer) {
    answer = act;
  },
});
export const utilityProcess = strict('utilityProcess', {
  fork(module: string) {
    const child = fork(module, { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
    child.on('error', () => {});
    return strict('UtilityProcess', {
      pid: child.pid,
      postMessage: (message: object) => child.connected && child.send(message, () => {}),
      on: (name: string, act: (body: unknown) => void) => child.on(name, act),
      once: (name: string, act: (body: unknown) => void) => child.once(name, act),
      kill: () => child.kill(),
    });
  },
});
export const session = strict('session', {
  defaultSession: strict('Session', {
    setPermissionRequestHandler() {},
    setPermissionCheckHandler() {},
    setDevicePermissionHandler() {},
    on() {},
  }),
});
export const Menu = strict('Menu', {
  buildFromTemplate: (template: readonly unknown[]) => template,
  setApplicationMenu() {},
});
export const powerMonitor = strict('powerMonitor', new EventEmitter());
export const powerSaveBlocker = strict('powerSaveBlocker', { start: () => 1, stop() {} });
const display = { id: 1, workArea: { x: 0, y: 0, width: 1280, height: 800 } };
export const screen = strict('screen', {
  getAllDisplays: () => [display],
  getDisplayMatching: () => display,
});
export const shell = strict('shell', { async openExternal() {} });
export const dialog = strict('dialog', {
  showSaveDialog: async () => ({ canceled: true, filePath: '' }),
  // An error has its way out first; to the question whether a run may end, the second is the yes.
  async showMessageBox(asked: { readonly type?: string; readonly detail?: string }) {
    if (asked.type !== 'error') return { response: 1 };
    console.log(`told ${JSON.stringify({ failed: asked.detail })}`);
    return { response: 0 };
  },
});
