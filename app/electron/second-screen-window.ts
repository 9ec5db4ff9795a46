import type { BrowserWindow, Rectangle } from 'electron';

/** At most one window for the class. */
export interface SecondScreenWindow<W> {
  /** Null while there is none. */
  current(): W | null;
  /** Opens it, or brings the open one to the front. */
  open(): void;
}

export function createSecondScreenWindow<W extends Pick<BrowserWindow, 'isDestroyed' | 'focus'>>(
  create: () => W,
): SecondScreenWindow<W> {
  let window: W | null = null;
  const current = () => (window?.isDestroyed() === false ? window : null);
  return {
    current,
    open() {
      const opened = current();
      if (opened) opened.focus();
      else window = create();
    },
  };
}

interface Screen {
  readonly id: number;
  readonly workArea: Rectangle;
}

/** Where the second screen opens: on a screen other than the first window's, such as a projector, if there is one. */
export function secondScreenPlace(
  screens: readonly Screen[],
  firstWindowsScreen: Screen,
): Rectangle | null {
  return screens.find(({ id }) => id !== firstWindowsScreen.id)?.workArea ?? null;
}
