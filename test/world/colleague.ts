import type { Session } from '#main';
import type { Random } from '../../shared-core/random/create-random.ts';
import { teacher } from './asking.ts';
import { bookDeeds } from './book-deeds.ts';
import { curiousDeeds } from './curious-deeds.ts';
import type { FaultKind } from './fault.ts';
import { fermentDeeds } from './ferment-deeds.ts';
import type { Deed, Hands } from './hands.ts';
import type { Program } from './program.ts';
import { setUpDeeds } from './set-up-deeds.ts';
import { takeInDeeds, takeOutDeeds } from './table-deeds.ts';
import { createTakenIn } from './taken-in.ts';

export interface ColleagueParts extends Pick<Hands, 'judge' | 'kept' | 'runsOver' | 'runNow'> {
  readonly random: Random;
  readonly isOn: (kind: FaultKind) => boolean;
  readonly program: () => Program | null;
}

/** Who puts earlier runs in order, takes tables in and out and keeps the ferments' book, while the run goes on. */
export interface Colleague {
  /** Begins a deed where none is under way; the world does not wait for it. */
  step(): void;
  /** Once the deed under way is done, or its program gone. */
  rest(): Promise<void>;
}

/** Steps between the beginnings of two deeds. */
const deedEvery = 4;

const deedsOf = {
  'runs-are-put-in-order': bookDeeds,
  'tables-are-taken-in': takeInDeeds,
  'tables-are-given-out': takeOutDeeds,
  'set-ups-are-kept': setUpDeeds,
  'ferments-are-written-down': fermentDeeds,
  'everything-is-looked-at': curiousDeeds,
} as const satisfies Partial<Record<FaultKind, readonly Deed[]>>;

const kinds = Object.keys(deedsOf) as (keyof typeof deedsOf)[];

export function createColleague(parts: ColleagueParts): Colleague {
  const { random, judge, isOn, program } = parts;
  const takenIn = createTakenIn(parts.kept);
  let steps = 0;
  let given = 0;
  let underWay: { readonly of: Program; readonly done: Promise<void> } | null = null;

  const handsOf = (session: Session): Hands => ({
    ...parts,
    takenIn,
    // The table of requests says what each name answers.
    ask: (name, body) => session.handle(name, body, teacher) as never,
    fresh() {
      given += 1;
      return given;
    },
  });

  function begin(of: Program): void {
    const due = kinds.filter(isOn);
    const kind = due[random.integer(0, Math.max(0, due.length - 1))];
    if (kind === undefined) return;
    const deeds: readonly Deed[] = deedsOf[kind];
    const deed = deeds[random.integer(0, deeds.length - 1)];
    const begun = {
      of,
      done: Promise.resolve(deed?.(handsOf(of.session)))
        .catch((error: unknown) => judge.violated('no-request-fails-inside', String(error)))
        .then(() => {
          if (underWay === begun) underWay = null;
        }),
    };
    underWay = begun;
  }

  return {
    step() {
      steps += 1;
      const now = program();
      if (now === null) return;
      if (underWay?.of !== now) underWay = null;
      if (underWay === null && steps % deedEvery === 0) begin(now);
    },
    async rest() {
      if (underWay !== null && underWay.of === program()) await underWay.done;
    },
  };
}
