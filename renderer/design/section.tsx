import type { ReactNode } from 'react';

interface SectionProps {
  readonly title: string;
  readonly lead?: string;
  readonly children: ReactNode;
}

/** One step of preparing, with its heading in the margin where there is room for one. */
export function Section({ title, lead, children }: SectionProps) {
  const id = `prepare-${title.toLowerCase().replaceAll(/[^a-z]+/g, '-')}`;
  return (
    <section className="prepare-section" aria-labelledby={id}>
      <div className="prepare-heading">
        <h2 id={id}>{title}</h2>
        {lead && <p className="soft">{lead}</p>}
      </div>
      <div className="prepare-fields">{children}</div>
    </section>
  );
}
