/** What decides whether the desktop shell can run here. */
export interface ShellFacts {
  readonly wantsBrowser: boolean;
  readonly opensWindow: boolean;
  readonly nodeVersion: string;
  readonly platform: NodeJS.Platform;
  /** A screen to put a window on: DISPLAY or WAYLAND_DISPLAY on Linux. */
  readonly hasDisplay: boolean;
  readonly isRoot: boolean;
}

export type ShellChoice =
  | { readonly shell: 'electron' }
  /** `because` is one sentence for the person, or null when they asked for this shell. */
  | { readonly shell: 'loopback'; readonly because: string | null };

/** Electron 45 needs this to be fetched and started (its package's `engines`). */
export const leastNodeForElectron = [22, 12] as const;

/** Prefers the desktop shell; says in one sentence why it cannot be. Its runtime is looked for afterwards. */
export function chooseShell(facts: ShellFacts): ShellChoice {
  if (facts.wantsBrowser || !facts.opensWindow) return { shell: 'loopback', because: null };
  const because = obstacle(facts);
  return because === null ? { shell: 'electron' } : { shell: 'loopback', because };
}

function obstacle(facts: ShellFacts): string | null {
  const [major = 0, minor = 0] = facts.nodeVersion.split('.').map(Number);
  const [leastMajor, leastMinor] = leastNodeForElectron;
  if (major < leastMajor || (major === leastMajor && minor < leastMinor)) {
    return `The desktop window needs Node.js ${leastMajor}.${leastMinor} or newer and this is ${facts.nodeVersion}, so the window opens in your browser.`;
  }
  if (facts.platform === 'linux' && !facts.hasDisplay) {
    return 'There is no screen for a desktop window here, so the window is served for a browser.';
  }
  if (facts.platform === 'linux' && facts.isRoot) {
    return 'The desktop window does not run as root (its sandbox would be off), so the window opens in your browser.';
  }
  return null;
}
