import type { MenuItemConstructorOptions } from 'electron';
import type { ExternalPage } from './external-pages.ts';

/** The menu: what an app must offer, full screen for the class, and where the numbers come from. */
export function menuTemplate(
  platform: NodeJS.Platform,
  openPage: (page: ExternalPage) => void,
): MenuItemConstructorOptions[] {
  return [
    ...(platform === 'darwin' ? [{ role: 'appMenu' } as const] : [{ role: 'fileMenu' } as const]),
    { role: 'editMenu' },
    {
      label: 'View',
      submenu: [
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { type: 'separator' },
        { role: 'togglefullscreen' },
      ],
    },
    {
      role: 'help',
      submenu: [
        { label: 'Alcohol tables: OIML R 22', click: () => openPage('alcoholTables') },
        { label: 'Uncertainty: JCGM 100', click: () => openPage('uncertainty') },
      ],
    },
  ];
}
