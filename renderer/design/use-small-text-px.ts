import { useSyncExternalStore } from 'react';

/** The page's small type in pixels: it grows with the screen, the theme and the person's setting. Drawings are laid out by it. */
export function useSmallTextPx(): number {
  return useSyncExternalStore(watchTheme, smallTextPx);
}

function smallTextPx(): number {
  const page = getComputedStyle(document.documentElement);
  const smallRem = Number.parseFloat(page.getPropertyValue('--text-small')) || 0.9375;
  return smallRem * (Number.parseFloat(page.fontSize) || 16);
}

function watchTheme(onChange: () => void): () => void {
  const observer = new MutationObserver(onChange);
  observer.observe(document.documentElement, { attributeFilter: ['data-theme'] });
  window.addEventListener('resize', onChange);
  return () => {
    observer.disconnect();
    window.removeEventListener('resize', onChange);
  };
}
