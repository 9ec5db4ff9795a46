/** Everything in German, room by room. */
export const german: Readonly<Record<string, string>> = {};
