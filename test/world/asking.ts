import type { Asker, Session } from '#main';
import type { RequestAnswer, RequestBody, RequestName, Result, ServiceProblem } from '#shared-core';
import { stepS } from './bench.ts';
import type { Judge } from './judge.ts';
import type { Program } from './program.ts';
import type { WorldTime } from './world-time.ts';

export const teacher: Asker = { mayCommand: true };
export const viewer: Asker = { mayCommand: false };

/** A question to the program, during which time passes. */
export type Ask = <N extends RequestName>(
  name: N,
  body: RequestBody<N>,
  who?: Asker,
  session?: Session,
) => Promise<Result<RequestAnswer<N>, ServiceProblem>>;

/** Questions of whoever the world waits for. */
export interface Asking {
  /** Simulated time goes on until the answer is there; null where it never comes. */
  wait<T>(asked: Promise<T>): Promise<T | null>;
  readonly ask: Ask;
}

export interface AskingParts {
  readonly time: WorldTime;
  readonly judge: Judge;
  readonly program: () => Program | null;
  /** The disk holds its answers: whoever needs them waits as long as it does. */
  readonly isHeld: () => boolean;
  /** What goes on in the world while somebody waits, a step of it. */
  readonly meanwhile: () => void;
}

/** What never answers within ten minutes is stuck. */
const patienceS = 600;
const turnS = 0.1;
const turnsOfStep = Math.round(stepS / turnS);

export function createAsking(parts: AskingParts): Asking {
  const { time, judge, program, isHeld, meanwhile } = parts;

  async function wait<T>(asked: Promise<T>): Promise<T | null> {
    let isThere = false;
    const watched = asked.finally(() => {
      isThere = true;
    });
    let waitedS = 0;
    for (let turn = 0; waitedS < patienceS; turn += 1) {
      await time.pass(turn === 0 ? 0 : turnS);
      if (isThere) return watched;
      if (!isHeld()) waitedS += turnS;
      if (turn > 0 && turn % turnsOfStep === 0) meanwhile();
    }
    judge.violated('program-comes-back', 'A request is never answered.');
    return null;
  }

  return {
    wait,
    async ask(name, body, who = teacher, session = program()?.session) {
      if (session === undefined) return noProgram as never;
      const { desk } = program() ?? {};
      const killsBefore = desk?.kills();
      const first = await wait(session.handle(name, body, who));
      // Whoever asked the part that was killed in this moment is told to try once more.
      const isKilled = first?.ok === false && desk?.kills() !== killsBefore;
      const answer = isKilled ? await wait(session.handle(name, body, who)) : first;
      // The table of requests says what each name answers.
      return (answer ?? noProgram) as never;
    },
  };
}

const noProgram: Result<never, ServiceProblem> = {
  ok: false,
  error: { kind: 'internal', message: 'no program' },
};
