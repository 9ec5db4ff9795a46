/** What every room of the window stands on: its stores, commands, places and keys. */
export { breathe } from './breathe.ts';
export { type Commands, createCommands } from './commands.ts';
export { goTo, type Place, placeNames } from './place.ts';
export { type WindowParts, WindowPartsContext } from './stores-context.ts';
export { useAsked } from './use-asked.ts';
export { useMarkKeys } from './use-mark-keys.ts';
export { useNow } from './use-now.ts';
export { usePaced } from './use-paced.ts';
export { usePlace, usePlaces } from './use-place.ts';
export { useBench, useLiveView, usePreferences, usePrepare, useWindowParts } from './use-stores.ts';
export { useWorkedOut, type WorkedOut } from './use-worked-out.ts';
