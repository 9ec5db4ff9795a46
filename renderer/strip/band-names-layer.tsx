import type { BandNames } from './band-names.ts';

/** The band's names, below the head's line: where they cannot keep clear of it, it runs over them. */
export function BandNamesLayer({ names }: { readonly names: BandNames }) {
  const { limit, azeotrope, band } = names;
  return (
    <g>
      {[limit, azeotrope, ...(band ? [band] : [])].map(({ text, x, y }) => (
        <text key={text} x={x} y={y} className="band-name">
          {text}
        </text>
      ))}
    </g>
  );
}
