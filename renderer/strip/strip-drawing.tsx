import { useMemo } from 'react';
import type { BoxSize } from '../figures/index.ts';
import { bandOnProbe } from './band-on-probe.ts';
import { StripFrame } from './strip-frame.tsx';
import { type StripMoment, StripMomentContext } from './strip-moment.ts';
import { type StripHeight, temperatureRange } from './temperature-range.ts';
import type { TimeRange } from './time-range.ts';

interface StripDrawingProps {
  readonly size: BoxSize;
  readonly range: TimeRange;
  readonly height: StripHeight;
  readonly moment: StripMoment;
}

export function StripDrawing({ size, range, height, moment }: StripDrawingProps) {
  const { drawn, view } = moment;
  const plateau = view.snapshot?.plateau ?? null;
  const band = useMemo(() => (plateau ? bandOnProbe(plateau) : null), [plateau]);
  const { lowC, highC } = useMemo(
    () => temperatureRange(height, band, drawn),
    [height, band, drawn],
  );
  return (
    <StripMomentContext value={moment}>
      <StripFrame
        width={size.width}
        height={size.height}
        fromS={range.fromS}
        toS={range.toS}
        lowC={lowC}
        highC={highC}
        azeotropeC={band?.azeotropeC ?? null}
        limitC={band?.limitC ?? null}
      />
    </StripMomentContext>
  );
}
