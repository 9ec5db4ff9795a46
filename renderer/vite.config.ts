import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Everything as files of our own: the page's policy allows no inline script, style or foreign address. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [react()],
  build: {
    outDir: '../.build/renderer',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'chrome120',
    chunkSizeWarningLimit: 1200,
  },
});
