const flag = '--runs-folder=';

/** The folder given on the command line, or the usual one. */
export function runsFolderFrom(commandLine: readonly string[], usualFolder: string): string {
  const given = commandLine.find((argument) => argument.startsWith(flag))?.slice(flag.length);
  return given || usualFolder;
}
