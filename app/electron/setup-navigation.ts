import type { WebContents } from 'electron';
import { isAppAddress } from './app-address.ts';

/** Keeps the window on its own page: no leaving, no redirects, no further windows, no web views. */
export function setupNavigation(contents: Pick<WebContents, 'on' | 'setWindowOpenHandler'>): void {
  contents.on('will-navigate', (event) => {
    if (!isAppAddress(event.url)) event.preventDefault();
  });
  contents.on('will-frame-navigate', (event) => {
    if (!isAppAddress(event.url)) event.preventDefault();
  });
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}
