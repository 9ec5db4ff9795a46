import { createElement, Fragment, type ReactNode } from 'react';
import { sayParts } from '#shared-core';

/** What a part of a sentence is drawn as: text, an element, or for marked-up words what wraps them. */
export type SentencePart = ReactNode | ((words: ReactNode) => ReactNode);

interface SayProps {
  /** In English, a literal: the key of its translations. `<strong>…</strong>` in it names a part of that name. */
  readonly sentence: string;
  readonly parts: Readonly<Record<string, SentencePart>>;
}

/** A sentence some of whose words are elements: their place in it is the translator's. */
export function Say({ sentence, parts }: SayProps) {
  const wrapped = Object.fromEntries(
    Object.entries(parts).map(([name, part]) => [
      name,
      typeof part === 'function'
        ? (words: ReactNode[]) => part(createElement(Fragment, null, ...words))
        : part,
    ]),
  );
  return createElement(Fragment, null, ...sayParts<ReactNode>(sentence, wrapped));
}
