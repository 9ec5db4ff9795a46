import {
  asGiven,
  printable,
  type RequestAnswer,
  type Result,
  type SerialSource,
  type ServiceProblem,
  serialSourceSchema,
  succeed,
  worded,
  wordingOf,
} from '#shared-core';
import type { Clock } from '../../clock/index.ts';
import type { OpenByteLine } from '../port/byte-line.ts';
import { modbusQuestions } from './modbus-questions.ts';
import { openSearchLine, type SearchLine } from './search-line.ts';
import { type Trial, tryTalk, understood } from './try-talk.ts';

export interface FindProbeDependencies {
  readonly clock: Clock;
  readonly openLine: OpenByteLine;
  readonly wait: (seconds: number) => Promise<void>;
}

/** Most likely first: small boards, then instruments, then everything else. */
const speeds = [115_200, 9600, 57_600, 38_400, 19_200, 230_400, 4800, 2400, 1200] as const;

/** The first opening may restart the board, and some sensors speak only every few seconds. */
const firstListenS = 6;
const listenS = 2.5;
const askS = 1.2;
const mostHeard = 5;

/**
 * Finds out how the probe on one port speaks: listens at the usual speeds if it says anything at all,
 * and asks in the languages that wait to be asked if it does not. Only this port is ever opened, and
 * only questions are ever sent.
 */
export async function findProbe(
  path: string,
  dependencies: FindProbeDependencies,
): Promise<Result<RequestAnswer<'probe/find'>, ServiceProblem>> {
  const opened = await openSearchLine(path, dependencies.openLine, dependencies.wait);
  if (!opened.ok) return opened;
  const line = opened.value;
  try {
    const finding = await search(path, line, dependencies.clock);
    return succeed({ ...finding, wording: wordingOf([finding.because]) });
  } finally {
    await line.close();
  }
}

async function search(
  path: string,
  line: SearchLine,
  clock: Clock,
): Promise<RequestAnswer<'probe/find'>> {
  const at = (rest: Partial<SerialSource>) =>
    serialSourceSchema.parse({ kind: 'serial', path, ...rest });
  const listen = (baudRate: number, patienceS: number) =>
    tryTalk(line, at({ baudRate }), { patienceS, enough: 3 }, clock);

  const first = await listen(speeds[0], firstListenS);
  if (first.bytes === 0) return (await ask(line, at, clock)) ?? nothingHeard;
  const trials = [first];
  for (const baudRate of speeds.slice(1)) {
    const found = judge(trials.at(-1));
    if (found !== null) return found;
    await line.change(baudRate, 'none');
    trials.push(await listen(baudRate, listenS));
  }
  return judge(trials.at(-1)) ?? unknownLines(trials);
}

/** What listening at one speed amounts to; null when it was not understood. */
function judge(trial: Trial | undefined): RequestAnswer<'probe/find'> | null {
  if (trial === undefined) return null;
  const { source, outcomes } = trial;
  const lines = outcomes.filter(understood);
  const heard = shown(trial);
  const baudRate = `${source.baudRate}`;
  if (lines.length >= 2 && lines.length >= outcomes.length / 2) {
    const isJson = lines.every(({ text }) => /^\s*[{[]/.test(text));
    const language = isJson ? 'json-lines' : 'plain-text';
    return {
      source: { ...source, language },
      heard,
      because: isJson
        ? worded('JSON lines at {baudRate} baud.', { baudRate })
        : worded('Plain text at {baudRate} baud.', { baudRate }),
    };
  }
  const commas = outcomes.filter(({ rejections }) => rejections[0]?.kind === 'ambiguous-comma');
  if (commas.length >= 2 && commas.length >= outcomes.length / 2) {
    return {
      source: { ...source, language: 'plain-text', decimalComma: true },
      heard,
      because: worded(
        'Plain text with a decimal comma at {baudRate} baud: check the value before you trust it.',
        { baudRate },
      ),
    };
  }
  return null;
}

async function ask(
  line: SearchLine,
  at: (rest: Partial<SerialSource>) => SerialSource,
  clock: Clock,
): Promise<RequestAnswer<'probe/find'> | null> {
  for (const baudRate of speeds) {
    await line.change(baudRate, 'none');
    const source = at({ baudRate, language: 'scpi', askEveryS: 0.2 });
    const quick = await tryTalk(line, source, { patienceS: askS, enough: 1 }, clock);
    if (quick.identity === null && quick.bytes === 0) continue;
    const full = await tryTalk(line, source, { patienceS: 6, enough: 2 }, clock);
    if (!full.outcomes.some(understood)) continue;
    const identity = full.identity ?? quick.identity;
    return {
      source: at({ baudRate, language: 'scpi' }),
      heard: shown(full),
      because:
        identity === null
          ? worded('It answers SCPI questions at {baudRate} baud.', { baudRate: `${baudRate}` })
          : worded('It answers SCPI questions at {baudRate} baud. It says it is {identity}.', {
              baudRate: `${baudRate}`,
              identity: asGiven(identity),
            }),
    };
  }
  for (const question of modbusQuestions(at)) {
    await line.change(question.source.baudRate, question.source.parity ?? 'none');
    const limits = { patienceS: 0.4, enough: 1 };
    const trial = await tryTalk(line, question.source, limits, clock);
    const found = question.judge(trial);
    if (found !== null) return found;
  }
  return null;
}

const nothingHeard: RequestAnswer<'probe/find'> = {
  source: null,
  heard: [],
  because: worded(
    'Nothing was heard, and no question was answered: is the probe switched on, and is this its port?',
  ),
};

/** Text at some speed that is in no language known here: the person can describe it. */
function unknownLines(trials: readonly Trial[]): RequestAnswer<'probe/find'> {
  const share = ({ textBytes, bytes }: Trial) => (bytes === 0 ? 0 : textBytes / bytes);
  const best = trials.reduce((a, b) => (share(b) > share(a) ? b : a));
  if (best.outcomes.length === 0 || share(best) < 0.9) {
    return {
      source: null,
      heard: shown(best),
      because: worded(
        'Bytes arrive, but at no usual speed are they text. What does its manual say of speed?',
      ),
    };
  }
  return {
    source: null,
    heard: shown(best),
    because: worded(
      'Text arrives at {baudRate} baud, but not in a form known here: describe its lines with a pattern of your own.',
      { baudRate: `${best.source.baudRate}` },
    ),
  };
}

function shown(trial: Trial): string[] {
  return trial.outcomes.slice(-mostHeard).map(({ text }) => printable(text, 200));
}
