import { clockWords } from '../words/index.ts';

/** Something written beside a moment of a recorded run. */
export interface Annotation {
  readonly timeS: number;
  readonly text: string;
}

const annotationLine = /^(\d+):([0-5]\d):([0-5]\d) (\S.*)$/;

/** Annotations are lines of the run's notes that begin with a run time: readable without this program. */
export function annotationsIn(notes: string): readonly Annotation[] {
  return notes.split('\n').flatMap((line) => {
    const [, hours, minutes, seconds, text] = annotationLine.exec(line.trim()) ?? [];
    if (text === undefined) return [];
    return [{ timeS: Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds), text }];
  });
}

/** The notes with one annotation more, on a line of its own. */
export function withAnnotation(notes: string, { timeS, text }: Annotation): string {
  const line = `${clockWords(timeS)} ${text.replaceAll(/\s+/g, ' ').trim()}`;
  return notes.trim() === '' ? line : `${notes.trimEnd()}\n${line}`;
}
