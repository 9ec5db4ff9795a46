import process from 'node:process';
import { createInterface } from 'node:readline';

/** Whether packages of the operating system may be installed as root; `nobody`: there was no one to ask. */
export type Consent = 'given' | 'refused' | 'nobody';

export interface ConsentFacts {
  /** `--install-tools` was said. */
  readonly isTold: boolean;
  /** `CI`, as build servers set it. */
  readonly ci: string | undefined;
  /** Null where nobody sits at the terminal. */
  readonly ask: ((question: string) => Promise<string>) | null;
}

/** What of Node's `process` tells who is there to be asked. */
export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdin: { readonly isTTY?: boolean };
  readonly stdout: { readonly isTTY?: boolean };
}

export function consentFacts(
  words: readonly string[],
  { env, stdin, stdout }: Surroundings,
): ConsentFacts {
  const isPersonThere = stdin.isTTY === true && stdout.isTTY === true;
  return {
    isTold: words.includes('--install-tools'),
    ci: env.CI,
    ask: isPersonThere ? askAtTerminal : null,
  };
}

/** A yes said beforehand counts; else a person is asked, and only a clear yes is one. */
export async function installConsent(
  { isTold, ci, ask }: ConsentFacts,
  question: string,
): Promise<Consent> {
  if (isTold || ci === 'true' || ci === '1') return 'given';
  if (ask === null) return 'nobody';
  return /^\s*y(es)?\s*$/i.test(await ask(question)) ? 'given' : 'refused';
}

/** A question at the terminal; an end of input is an empty answer. */
function askAtTerminal(question: string): Promise<string> {
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  return new Promise((resolve) => {
    lines.on('close', () => resolve(''));
    lines.question(question, (answer) => {
      resolve(answer);
      lines.close();
    });
  });
}
