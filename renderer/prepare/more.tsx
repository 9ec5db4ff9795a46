import { type ReactNode, useState } from 'react';
import { say } from '#shared-core';

interface MoreProps {
  /** What it is about, where “More” would not say. */
  readonly name?: string;
  /** What stands in it now, so that nobody must open it to know. */
  readonly summary: string;
  /** An entry that stops the start must be in sight. */
  readonly mustShow?: boolean;
  /** What is only worked out for who looks. */
  readonly whenOpen?: ReactNode;
  readonly children: ReactNode;
}

/** What most lessons leave as it is. */
export function More({
  name = say('More'),
  summary,
  mustShow = false,
  whenOpen,
  children,
}: MoreProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details
      className="why more field-wide"
      open={isOpen || mustShow}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        {name}: <span className="more-now">{summary}</span>
      </summary>
      <div className="prepare-fields">
        {children}
        {(isOpen || mustShow) && whenOpen}
      </div>
    </details>
  );
}
