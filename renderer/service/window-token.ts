const storageKey = 'window-secret';

/** What opens the socket: the token of the address at first, then the secret of the last welcome. */
export interface WindowToken {
  readonly current: () => string;
  readonly keep: (secret: string) => void;
}

/**
 * The token the shell put into the address, `#token=…`, moved out of sight, so that a copied
 * address gives nothing away. The secret lives in the tab's own storage and survives a reload.
 */
export function takeWindowToken(host: Window): WindowToken {
  const found = /(?:^#|&)token=([^&]+)/.exec(host.location.hash)?.[1];
  if (found !== undefined) {
    host.sessionStorage.setItem(storageKey, decodeURIComponent(found));
    host.history.replaceState(null, '', host.location.pathname + host.location.search);
  }
  return {
    current: () => host.sessionStorage.getItem(storageKey) ?? '',
    keep: (secret) => host.sessionStorage.setItem(storageKey, secret),
  };
}
