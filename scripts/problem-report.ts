/**
 * Prints what whoever mends the program needs to know of this computer, where the program itself does not start: the same report as in its
 * help. Nothing in it leads to a person, and it is sent nowhere.
 *
 * Usage: npm run --silent problem-report [-- RUNS_FOLDER] > report.json
 */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import process from 'node:process';
import { reportWithoutServices } from '#main';
import { modelVersion } from '#shared-core';
import { defaultRunsFolder } from '../app/default-runs-folder.ts';
import { programVersion } from './starting/program-version.ts';

const usual = defaultRunsFolder({
  platform: process.platform,
  homeFolder: homedir(),
  dataHome: process.env.XDG_DATA_HOME,
  folderExists: existsSync,
});
const [runsFolder = usual, stranger] = process.argv.slice(2);
if (runsFolder.startsWith('--') || stranger !== undefined) {
  console.error(
    `"${stranger ?? runsFolder}" is not known here. Usage: npm run problem-report -- [RUNS_FOLDER]`,
  );
  process.exit(2);
}
const app = { version: programVersion(), modelVersion, shell: 'command' };
console.log(JSON.stringify(await reportWithoutServices(app, runsFolder, null), null, 2));
