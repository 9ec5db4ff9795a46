import type { BrowserWindow, IpcMain, IpcMainInvokeEvent } from 'electron';
import { z } from 'zod';
import { type EventName, events, fail } from '#shared-core';
import type { ServiceHandler } from '../service-handler.ts';
import { eventChannel, requestChannel } from './ipc-channels.ts';
import { isKnownSender, type MessageSender } from './sender-check.ts';

const messageSchema = z.strictObject({ name: z.string(), body: z.unknown() });

export interface IpcDeps {
  readonly ipcMain: Pick<IpcMain, 'handle'>;
  readonly services: ServiceHandler;
  readonly window: Pick<BrowserWindow, 'isDestroyed'> & {
    readonly webContents: Pick<BrowserWindow['webContents'], 'id' | 'send'>;
  };
}

/** The one place where messages of the window come in and events go out. */
export function setupIpc({ ipcMain, services, window }: IpcDeps): void {
  const windowContentsId = window.webContents.id;
  ipcMain.handle(requestChannel, async (event, message: unknown) => {
    // An exception here rejects in the page and never reaches the services.
    if (!isKnownSender(senderOf(event), windowContentsId)) throw new Error('unknown sender');
    const parsed = messageSchema.safeParse(message);
    if (!parsed.success) return fail({ kind: 'request-invalid', message: 'not a request' });
    return services.handle(parsed.data.name, parsed.data.body, { mayCommand: true });
  });
  for (const name of Object.keys(events) as EventName[]) {
    services.on(name, (body) => {
      if (!window.isDestroyed()) window.webContents.send(eventChannel, { name, body });
    });
  }
}

function senderOf(event: IpcMainInvokeEvent): MessageSender {
  const frame = event.senderFrame;
  return {
    frame: frame === null ? null : { url: frame.url, isTopFrame: frame.parent === null },
    contentsId: event.sender.id,
  };
}
