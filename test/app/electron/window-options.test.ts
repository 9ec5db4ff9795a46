import { expect, test } from 'vitest';
import { windowOptions } from '../../../app/electron/window-options.ts';

// Items of the Electron security checklist: https://www.electronjs.org/docs/latest/tutorial/security
test('the window is sandboxed, isolated and has no way to Node, flag by flag', () => {
  expect(windowOptions('/app/preload.cjs')).toEqual({
    title: 'Still Head Monitor',
    width: 1280,
    height: 800,
    minWidth: 360,
    minHeight: 480,
    show: false,
    autoHideMenuBar: true,
    webPreferences: {
      preload: '/app/preload.cjs',
      contextIsolation: true,
      sandbox: true,
      webSecurity: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      enableBlinkFeatures: '',
      webviewTag: false,
      navigateOnDragDrop: false,
      safeDialogs: true,
      spellcheck: false,
      backgroundThrottling: false,
    },
  });
});
