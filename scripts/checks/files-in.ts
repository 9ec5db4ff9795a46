import { readdirSync } from 'node:fs';
import path from 'node:path';

/** Every file below these folders of the project, relative to it, with forward slashes and in order. */
export function filesIn(root: string, folders: readonly string[]): readonly string[] {
  return folders
    .flatMap((folder) =>
      readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' }).map((file) =>
        path.posix.join(folder, file.replaceAll(path.sep, '/')),
      ),
    )
    .sort();
}

/** Files of the project in TypeScript. */
export function codeIn(root: string, folders: readonly string[]): readonly string[] {
  return filesIn(root, folders).filter((file) => /\.tsx?$/.test(file));
}
