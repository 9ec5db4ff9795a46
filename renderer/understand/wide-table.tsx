import type { ReactNode } from 'react';

interface WideTableProps {
  readonly name: string;
  readonly children: ReactNode;
}

/** A table that may be wider than a phone: it scrolls by itself, by keyboard too. */
export function WideTable({ name, children }: WideTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard (WCAG 2.1.1)
    <section className="wide-table" aria-label={name} tabIndex={0}>
      {children}
    </section>
  );
}
