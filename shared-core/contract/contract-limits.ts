/** How much of a thing a window and the services take on at once. */
export const contractLimits = {
  /** Bytes in one message, before base64: small beside a socket's limit, large beside what a message costs. */
  pieceBytes: 512 * 1024,
  /** Larger files of other loggers are refused in the window; 64 MB are ten hours at 10 Hz five times over. */
  importBytes: 64_000_000,
  /** Runs in one pack: a class. Up to six have a column of the report and a line of a figure each; more have a row. */
  runsInPack: 30,
  /** More rigs than a department has. */
  rigs: 40,
  /** More ferments than a department has in a year; older files stay on the disk. */
  fermentsTold: 40,
  /** How long a prompt that is put aside stays away before it is back by itself [s]. */
  promptAsideS: 300,
} as const;
