import { isAppAddress } from './app-address.ts';

/** Where an IPC message came from, as far as the check needs it. */
export interface MessageSender {
  /** The frame that sent it; null once that frame is gone or has navigated away. */
  readonly frame: { readonly url: string; readonly isTopFrame: boolean } | null;
  /** The number of the web contents that sent it. */
  readonly contentsId: number;
}

/** Whether a message came from the top frame of our own window, showing our own page. */
export function isKnownSender(sender: MessageSender, windowContentsId: number): boolean {
  const { frame, contentsId } = sender;
  return frame?.isTopFrame === true && contentsId === windowContentsId && isAppAddress(frame.url);
}
