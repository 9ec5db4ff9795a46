/** What a class may cost: thirty screens and some to spare, and nothing that the recorder would notice. */
export const classLimits = {
  windows: 36,
  strangers: 8,
  /** A screen that can do nothing has nothing long to say. */
  messageBytes: 16 * 1024,
  connections: 96,
  /** Of one screen, which needs two or three. */
  connectionsOfOne: 8,
  /** Files of the window, for all screens together: a class that comes in within ten seconds is waited for. */
  pages: { burst: 300, perS: 60 },
} as const;
