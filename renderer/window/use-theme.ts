import { useEffect, useSyncExternalStore } from 'react';
import { usePreferences } from '../parts/index.ts';

const darkQuery = '(prefers-color-scheme: dark)';

/** Puts the chosen theme, or the system's, on the page. */
export function useTheme(): void {
  const chosen = usePreferences(({ theme }) => theme);
  const isSystemDark = useSyncExternalStore(
    (onChange) => {
      const query = window.matchMedia(darkQuery);
      query.addEventListener('change', onChange);
      return () => query.removeEventListener('change', onChange);
    },
    () => window.matchMedia(darkQuery).matches,
  );
  const theme = chosen === 'system' ? (isSystemDark ? 'dark' : 'light') : chosen;
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
}
