import type { MarkBody, ProbeSource, Snapshot } from '#shared-core';
import type { Random } from '../../shared-core/random/create-random.ts';
import type { Ask } from './asking.ts';
import type { SimulatedStill } from './draw-still.ts';
import type { FaultKind } from './fault.ts';

export interface PersonParts {
  readonly ask: Ask;
  readonly still: SimulatedStill;
  readonly source: ProbeSource;
  readonly random: Random;
  readonly isOn: (kind: FaultKind) => boolean;
  readonly isRehearsing: () => boolean;
  readonly concluded: () => Snapshot | null;
  /** The mark was answered: it is kept. */
  readonly marked: (markId: number) => void;
  readonly nowS: () => number;
  /** So long the answer took [s]. */
  readonly answered: (name: string, tookS: number) => void;
}

/** What the person at the bench does meanwhile, a little at each step. */
export interface Person {
  step(): Promise<void>;
  /** Answers whether it is kept. */
  mark(body: MarkBody): Promise<boolean>;
}

/** Steps between two deeds of a kind. */
const handEvery = 14;
const readsEvery = 24;
const answersEvery = 10;

export function createPerson(parts: PersonParts): Person {
  const { ask, still, source, random, isOn, concluded, marked } = parts;
  let steps = 0;
  let isHot = true;
  let volumeMl = 0;
  let lastMarkId = 0;
  let hasLetGo = false;

  async function mark(body: MarkBody): Promise<boolean> {
    const askedS = parts.nowS();
    const answer = await ask('run/mark', { mark: body });
    parts.answered('run/mark', parts.nowS() - askedS);
    if (!answer.ok) return false;
    lastMarkId = answer.value.markId;
    marked(lastMarkId);
    return true;
  }

  /** Another cable, another plug: the program is told, and told again. Who is refused since a plug is not in yet tries once more. */
  async function exchangeProbe(): Promise<void> {
    if (!hasLetGo) hasLetGo = (await ask('probe/disconnect', {})).ok;
    else hasLetGo = !(await ask('probe/connect', { source })).ok;
  }

  async function turnHeat(): Promise<void> {
    isHot = !isHot;
    still.setHeat(isHot);
    await mark({ type: isHot ? 'heat-on' : 'heat-off' });
  }

  function reads(): MarkBody {
    volumeMl += random.integer(0, 30);
    const bodies: readonly MarkBody[] = [
      { type: 'volume-read', volumeMl },
      { type: 'receiver-changed', volumeMl },
      { type: 'drops-counted', count: random.integer(1, 90), overS: 30 },
      { type: 'strength-read', alcoholByVolume: random.integer(5, 95), sampleTemperatureC: 20 },
      { type: 'pressure-read', pressureKPa: random.integer(97, 103) },
      { type: 'mass-read', massG: volumeMl },
      ...(lastMarkId > 0 ? [{ type: 'mark-withdrawn', withdrawnMarkId: lastMarkId } as const] : []),
    ];
    return bodies[random.integer(0, bodies.length - 1)] ?? { type: 'volume-read', volumeMl };
  }

  function answers(): MarkBody {
    const [standing] = concluded()?.alarms ?? [];
    if (standing === undefined) return { type: 'attention-answered' };
    const { alarm } = standing;
    return random.uniform() < 0.5
      ? { type: 'alarm-acknowledged', alarm }
      : { type: 'alarm-shelved', alarm, forS: 60 };
  }

  return {
    async step() {
      steps += 1;
      // Of a simulated still there is no plug to pull.
      const letsGo = isOn('probe-is-let-go') && (hasLetGo || !parts.isRehearsing());
      if (letsGo !== hasLetGo) await exchangeProbe();
      if (isOn('heat-by-hand')) {
        if (steps % handEvery === 0) await turnHeat();
      } else if (!isHot) await turnHeat();
      if (isOn('volumes-are-read') && steps % readsEvery === 0) await mark(reads());
      if (isOn('prompts-are-answered') && steps % answersEvery === 0) await mark(answers());
    },
    mark,
  };
}
