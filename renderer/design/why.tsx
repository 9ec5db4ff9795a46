import type { ReactNode } from 'react';
import { say } from '#shared-core';

interface WhyProps {
  /** What is explained: several stand on one page. */
  readonly of: string;
  readonly children: ReactNode;
}

/** The reason behind what is said, on demand. */
export function Why({ of, children }: WhyProps) {
  return (
    <details className="why">
      <summary aria-label={say('Why? {of}', { of })}>{say('Why?')}</summary>
      {children}
    </details>
  );
}
