import type { TraceLook } from './trace-look.ts';

/** How a run's line looks, for the head of its column. */
export function TraceSample({ look }: { readonly look: TraceLook }) {
  return (
    <span className="trace-sample" style={{ color: look.colour }}>
      <strong className="trace-letter">{look.letter}</strong>
      <svg width="46" height="18" aria-hidden="true" focusable="false">
        <path d="M0 9H46" className="trace-line" strokeDasharray={look.dashes} />
        <text x="23" y="9" dy="0.35em" textAnchor="middle" className="trace-sign">
          {look.sign}
        </text>
      </svg>
    </span>
  );
}
