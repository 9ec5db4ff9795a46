import path from 'node:path';

const flag = '--runs-folder=';

/** The folder given on the command line, or the usual one in the person's documents. */
export function runsFolderFrom(commandLine: readonly string[], documentsFolder: string): string {
  const given = commandLine.find((argument) => argument.startsWith(flag))?.slice(flag.length);
  return given || path.join(documentsFolder, 'Still Head Monitor');
}
