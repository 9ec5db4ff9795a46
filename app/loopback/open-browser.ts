import { spawn } from 'node:child_process';

/** The program that opens a page in the browser the person uses. What it is given is for everybody to see: never a token. */
export function browserCommand(
  platform: NodeJS.Platform,
  page: string,
): { readonly command: string; readonly commandArguments: readonly string[] } {
  switch (platform) {
    case 'darwin':
      return { command: 'open', commandArguments: [page] };
    case 'win32':
      // `start` belongs to the shell and would read `&` in a name; this handler does not.
      return { command: 'rundll32', commandArguments: ['url.dll,FileProtocolHandler', page] };
    default:
      return { command: 'xdg-open', commandArguments: [page] };
  }
}

/** Opens the page; false when there is no browser to be had. */
export function openBrowser(platform: NodeJS.Platform, page: string): Promise<boolean> {
  const { command, commandArguments } = browserCommand(platform, page);
  return new Promise((resolve) => {
    const child = spawn(command, commandArguments, { stdio: 'ignore', detached: true });
    child.on('error', () => resolve(false));
    // Some openers end at once, some live as long as the browser: three seconds without failing is success.
    const patience = setTimeout(() => resolve(true), 3000);
    child.on('exit', (code) => {
      clearTimeout(patience);
      resolve(code === 0);
    });
    child.unref();
  });
}
