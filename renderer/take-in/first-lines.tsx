import { say } from '#shared-core';

interface FirstLinesProps {
  readonly lines: readonly string[];
}

/** The file as it is: long lines scroll by themselves, by keyboard too. */
export function FirstLines({ lines }: FirstLinesProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard (WCAG 2.1.1)
    <section className="first-lines" aria-label={say('First lines of the file')} tabIndex={0}>
      <pre>{lines.join('\n')}</pre>
    </section>
  );
}
