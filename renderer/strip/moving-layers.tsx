import { bandOnProbe } from './band-on-probe.ts';
import { DoubtfulLayer } from './doubtful-layer.tsx';
import { expectedEnd } from './expected-end.ts';
import { ForecastFan } from './forecast-fan.tsx';
import { GapsLayer } from './gaps-layer.tsx';
import { MarksLayer } from './marks-layer.tsx';
import { NowLayer } from './now-layer.tsx';
import { StageSegments } from './stage-segments.tsx';
import { useStripMoment } from './strip-moment.ts';
import { useStripMeasures } from './strip-text.ts';
import { TraceLayer } from './trace-layer.tsx';

/** Everything on the strip that changes with a reading, from back to front. */
export function MovingLayers() {
  const { view, drawn, doubtful, marks, nowS, headC, extra } = useStripMoment();
  const { footPx } = useStripMeasures();
  const { snapshot } = view;
  const end = expectedEnd(snapshot);
  return (
    <>
      <MarksLayer marks={marks} />
      {end && headC !== null && snapshot && view.endedS === null && (
        <ForecastFan
          fromS={nowS}
          fromC={headC}
          endS={end}
          limitC={bandOnProbe(snapshot.plateau).limitC}
          label="limit expected"
        />
      )}
      <TraceLayer drawn={drawn} />
      <DoubtfulLayer drawn={doubtful} />
      <GapsLayer gaps={view.gaps} nowS={nowS} />
      <StageSegments stages={view.stages} nowS={nowS} height={footPx} />
      <NowLayer timeS={nowS} headC={headC} />
      {extra}
    </>
  );
}
