import { worded } from '#shared-core';

/** Why a run without a header can't be opened: its record may be whole, and only too new. */
export const headerLostWords = (): string =>
  worded('Its header is damaged or was written by a newer version of this program.');
