import path from 'node:path';
import { electronProgram } from './electron-program.ts';
import { fetchWithPatience } from './fetch-with-patience.ts';

/** Nothing after this long means that the download cannot be reached from here. */
const patienceMs = 6000;

/** The Electron program, fetched if it was never fetched; null when it cannot be had. */
export async function provideElectron(
  projectRoot: string,
  report: (line: string) => void,
): Promise<string | null> {
  const packageFolder = path.join(projectRoot, 'node_modules', 'electron');
  const present = electronProgram(packageFolder);
  if (present !== null) return present;
  report(
    'Fetching the desktop window (once, about 110 MB; `npm start -- --browser` does without) …',
  );
  const fetched = await fetchWithPatience({
    installer: path.join(packageFolder, 'install.js'),
    temporaryFolder: path.join(projectRoot, '.build', 'fetch'),
    patienceMs,
    report,
  });
  return fetched ? electronProgram(packageFolder) : null;
}
