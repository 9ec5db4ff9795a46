import { timingSafeEqual } from 'node:crypto';

/** What a window that showed a token may do, and what it shows the next time. */
export interface Admission {
  readonly mayCommand: boolean;
  readonly secret: string;
}

export interface Access {
  /** For the address of the commanding window; good until the window that it let in has spoken. */
  issueLaunchToken(): string;
  /** For windows that only watch; good any number of times. */
  readonly viewerToken: string;
  /** Written into the door file alone, never into an address: whoever shows it may be given a fresh launch token. */
  readonly doorKey: string;
  isDoorKey(key: string): boolean;
  /** Null refuses: the token is unknown or was used before. */
  admit(token: string): Admission | null;
  /** A window that was given this secret has spoken: it has it, and the launch token it came by is used up. */
  heardFrom(secret: string): void;
}

/**
 * Who may command. A launch token in an address can be left behind (history, a projected screen), so it
 * works once and is exchanged for a secret that only that window holds: a window that was reloaded, or whose line broke, before it
 * had its secret comes back by the token. Issuing a new launch token withdraws the last one and, once used, the secret of the
 * window before it.
 */
export function createAccess(randomToken: () => string): Access {
  const viewerToken = randomToken();
  const doorKey = randomToken();
  let launchToken: string | null = null;
  let commandSecret: string | null = null;
  /** By this token the holder of the secret came in. */
  let cameBy: string | null = null;

  const settle = (): void => {
    if (cameBy === launchToken) launchToken = null;
    cameBy = null;
  };

  return {
    viewerToken,
    doorKey,
    isDoorKey: (key) => same(key, doorKey),
    issueLaunchToken() {
      launchToken = randomToken();
      return launchToken;
    },
    admit(token) {
      if (launchToken !== null && same(token, launchToken)) {
        cameBy = launchToken;
        commandSecret = randomToken();
        return { mayCommand: true, secret: commandSecret };
      }
      if (commandSecret !== null && same(token, commandSecret)) {
        settle();
        return { mayCommand: true, secret: commandSecret };
      }
      if (same(token, viewerToken)) return { mayCommand: false, secret: viewerToken };
      return null;
    },
    heardFrom(secret) {
      if (cameBy !== null && commandSecret !== null && same(secret, commandSecret)) settle();
    },
  };
}

function same(one: string, other: string): boolean {
  const [a, b] = [Buffer.from(one), Buffer.from(other)];
  return a.length === b.length && timingSafeEqual(a, b);
}
