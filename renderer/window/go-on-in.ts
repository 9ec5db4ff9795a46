const headings = 'h1, h2, h3';

/** Whether it is in the page and can be seen or heard there. */
export const isShown = (element: HTMLElement): boolean =>
  element.isConnected && element.checkVisibility();

/** What the window is about now, without the lines above it. */
export const placeIn = (page: Document): HTMLElement | null => page.getElementById('place');

/** Puts whoever types or hears the window at the heading of this part of it, without moving it under the eyes. */
export function goOnIn(room: HTMLElement | null): void {
  if (room === null) return;
  const heading = [...room.querySelectorAll<HTMLElement>(headings)].find(isShown);
  takeFocus(heading ?? room);
}

/** What is only read takes the focus this once: afterwards a press on it is a press on the empty page again. */
function takeFocus(element: HTMLElement): void {
  if (!element.hasAttribute('tabindex')) {
    element.tabIndex = -1;
    element.addEventListener('blur', () => element.removeAttribute('tabindex'), { once: true });
  }
  element.focus({ preventScroll: true });
}
