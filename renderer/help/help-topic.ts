import { type Language, language } from '#shared-core';
import type { Place } from '../parts/index.ts';
import { type HelpTopic, pagesIn } from './pages-in.ts';

export type { HelpTopic } from './pages-in.ts';

export interface HelpPage {
  readonly topic: HelpTopic;
  readonly title: string;
  /** Markdown below the title. */
  readonly body: string;
}

/** In the order in which a new person needs them, in the language of this window. */
export const helpPages: readonly HelpPage[] = helpPagesIn(language());

export function helpPagesIn(language: Language): readonly HelpPage[] {
  const pages = pagesIn[language];
  return (Object.keys(pages) as HelpTopic[]).map((topic) => {
    const [heading = '', ...rest] = pages[topic].split('\n');
    return { topic, title: heading.replace(/^# /, ''), body: rest.join('\n').trim() };
  });
}

export function isHelpTopic(name: string): name is HelpTopic {
  return Object.hasOwn(pagesIn.en, name);
}

/** What a person who asks for help most likely wants to know, from where they are. */
export function topicFor(place: Place, isPortInTrouble: boolean): HelpTopic {
  if (isPortInTrouble) return 'ports';
  return ({ prepare: 'first-run', watch: 'meaning', 'look-back': 'runs' } as const)[place];
}

/** Pages on which every word sought stands, in their order; all of them while nothing is sought. */
export function pagesWith(sought: string, pagesToSearch: readonly HelpPage[]): readonly HelpPage[] {
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  return pagesToSearch.filter(({ title, body }) => {
    const text = `${title}\n${body}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
