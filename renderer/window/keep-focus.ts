import { goOnIn, isShown, placeIn } from './go-on-in.ts';

/** Parts of a page that somebody can go on from: the nearest that is still there takes the focus of what has gone. */
const rooms = [
  'dialog',
  'li',
  'fieldset',
  'form',
  'section',
  'article',
  'aside',
  'nav',
  'header',
  'main',
].join();
/** Dialogs give the focus back by themselves once their act is drawn, and some acts lead on to another place [ms]. */
const patienceMs = 300;

interface Held {
  readonly element: HTMLElement;
  /** The rooms around it, the nearest first: they are no longer found from an element that was taken out. */
  readonly rooms: readonly HTMLElement[];
}

/**
 * Whoever has pressed something that is no longer there goes on in the part of the page where it stood, or at the heading of what came
 * in its place: left on the body, a screen reader begins at the top again. A press on the empty page leaves the focus nowhere, as meant.
 *
 * @returns ends it
 */
export function keepFocus(page: Document): () => void {
  let held: Held | null = null;
  let waiting: ReturnType<typeof setTimeout> | null = null;
  const isNowhere = () => page.activeElement === null || page.activeElement === page.body;
  const goOn = () => {
    waiting = null;
    if (held === null || !isNowhere() || isShown(held.element)) return;
    goOnIn(held.rooms.find(isShown) ?? placeIn(page));
  };
  const onFocus = ({ target }: FocusEvent) => {
    held = target instanceof HTMLElement ? { element: target, rooms: roomsAround(target) } : null;
  };
  const onLeft = ({ target }: FocusEvent) => {
    // Only when whatever takes an element out is done with it does it show whether somebody left it or it went.
    queueMicrotask(() => {
      if (target === held?.element && isNowhere() && canHold(held.element)) held = null;
    });
  };
  const look = () => {
    if (held === null || !isNowhere()) return;
    // It was out of use while its act was under way.
    if (canHold(held.element)) held.element.focus({ preventScroll: true });
    else if (!isShown(held.element)) waiting ??= setTimeout(goOn, patienceMs);
  };
  const observer = new MutationObserver(look);
  observer.observe(page.body, {
    subtree: true,
    childList: true,
    attributeFilter: ['disabled', 'hidden', 'open'],
  });
  page.addEventListener('focusin', onFocus, true);
  page.addEventListener('focusout', onLeft, true);
  return () => {
    observer.disconnect();
    if (waiting !== null) clearTimeout(waiting);
    page.removeEventListener('focusin', onFocus, true);
    page.removeEventListener('focusout', onLeft, true);
  };
}

function roomsAround(element: HTMLElement): readonly HTMLElement[] {
  const found: HTMLElement[] = [];
  for (
    let room = element.closest<HTMLElement>(rooms);
    room !== null;
    room = room.parentElement?.closest<HTMLElement>(rooms) ?? null
  ) {
    if (room !== element) found.push(room);
  }
  return found;
}

const canHold = (element: HTMLElement) => isShown(element) && !element.matches(':disabled');
