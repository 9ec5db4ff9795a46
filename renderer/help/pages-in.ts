import type { Language } from '#shared-core';
import firstRunDe from './de/first-run.md?raw';
import limitsDe from './de/limits.md?raw';
import meaningDe from './de/meaning.md?raw';
import portsDe from './de/ports.md?raw';
import probeDe from './de/probe.md?raw';
import questionsDe from './de/questions.md?raw';
import runsDe from './de/runs.md?raw';
import soundDe from './de/sound.md?raw';
import firstRun from './first-run.md?raw';
import limits from './limits.md?raw';
import meaning from './meaning.md?raw';
import ports from './ports.md?raw';
import probe from './probe.md?raw';
import questions from './questions.md?raw';
import runs from './runs.md?raw';
import sound from './sound.md?raw';

const english = {
  'first-run': firstRun,
  probe,
  ports,
  meaning,
  limits,
  sound,
  runs,
  questions,
} as const;

export type HelpTopic = keyof typeof english;

/** The text of each page, in the order in which a new person needs them. */
export const pagesIn: Readonly<Record<Language, Readonly<Record<HelpTopic, string>>>> = {
  en: english,
  de: {
    'first-run': firstRunDe,
    probe: probeDe,
    ports: portsDe,
    meaning: meaningDe,
    limits: limitsDe,
    sound: soundDe,
    runs: runsDe,
    questions: questionsDe,
  },
};
