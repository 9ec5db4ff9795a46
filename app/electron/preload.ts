import { contextBridge, type IpcRendererEvent, ipcRenderer } from 'electron';
import type { Service } from '#shared-core';
import { eventChannel, requestChannel } from './ipc-channels.ts';

/**
 * All that the page gets: the two functions of {@link Service}, never `ipcRenderer` itself. Names and bodies
 * are checked on the other side, where a page that went wrong cannot reach the check.
 */
const service: Service = {
  request: (name, body) => ipcRenderer.invoke(requestChannel, { name, body }),
  on(name, listener) {
    const forward = (_event: IpcRendererEvent, message: { name: string; body: never }) => {
      if (message.name === name) listener(message.body);
    };
    ipcRenderer.on(eventChannel, forward);
    return () => ipcRenderer.removeListener(eventChannel, forward);
  },
};

contextBridge.exposeInMainWorld('stillHead', service);
