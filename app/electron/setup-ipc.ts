import type { BrowserWindow, IpcMain, IpcMainInvokeEvent } from 'electron';
import { z } from 'zod';
import type { Asker, ClassViewDoor } from '#main';
import { type EventName, events, fail } from '#shared-core';
import type { ServiceHandler } from '../service-handler.ts';
import { eventChannel, requestChannel } from './ipc-channels.ts';
import type { SecondScreenWindow } from './second-screen-window.ts';
import { isKnownSender, type MessageSender } from './sender-check.ts';

const messageSchema = z.strictObject({ name: z.string(), body: z.unknown() });

export interface IpcDeps {
  readonly ipcMain: Pick<IpcMain, 'handle'>;
  readonly services: ServiceHandler;
  /** The window that commands. */
  readonly window: IpcWindow;
  /** The window that only watches. */
  readonly secondScreen: SecondScreenWindow<IpcWindow>;
  readonly classView?: ClassViewDoor;
}

export type IpcWindow = Pick<BrowserWindow, 'isDestroyed' | 'focus'> & {
  readonly webContents: Pick<BrowserWindow['webContents'], 'id' | 'send'>;
};

/** The one place where messages of the windows come in and events go out. */
export function setupIpc({ ipcMain, services, window, secondScreen, classView }: IpcDeps): void {
  // Kept, because a window that was destroyed has no contents to ask.
  const commandingId = window.webContents.id;
  const commanding: Asker = {
    mayCommand: true,
    secondScreen: {
      offer: { by: 'window' },
      open: secondScreen.open,
      ...(classView && { classView }),
    },
  };
  const askerOf = (sender: MessageSender): Asker => {
    if (isKnownSender(sender, commandingId)) return commanding;
    const viewerId = secondScreen.current()?.webContents.id;
    if (viewerId !== undefined && isKnownSender(sender, viewerId)) return { mayCommand: false };
    throw new Error('unknown sender');
  };
  ipcMain.handle(requestChannel, async (event, message: unknown) => {
    // An exception here rejects in the page and never reaches the services.
    const asker = askerOf(senderOf(event));
    const parsed = messageSchema.safeParse(message);
    if (!parsed.success) return fail({ kind: 'request-invalid', message: 'not a request' });
    return services.handle(parsed.data.name, parsed.data.body, asker);
  });
  for (const name of Object.keys(events) as EventName[]) {
    services.on(name, (event) => {
      // As through the socket: structured cloning would leave out what a snapshot makes only when it is read.
      const body: unknown = JSON.parse(JSON.stringify(event));
      if (!window.isDestroyed()) window.webContents.send(eventChannel, { name, body });
      secondScreen.current()?.webContents.send(eventChannel, { name, body });
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
