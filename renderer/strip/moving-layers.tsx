import { BandNamesLayer } from './band-names-layer.tsx';
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
import { useBandNames } from './use-band-names.ts';

/** Everything on the strip that changes with a reading, from back to front. */
export function MovingLayers() {
  const { view, drawn, doubtful, marks, nowS, head, extra } = useStripMoment();
  const { footPx } = useStripMeasures();
  const { snapshot } = view;
  const end = expectedEnd(snapshot);
  const band = snapshot ? bandOnProbe(snapshot.plateau) : null;
  const forecast =
    end && head && view.endedS === null
      ? { fromS: head.timeS, fromC: head.value, endS: end }
      : null;
  const names = useBandNames({ band, drawn, nowS, forecast });
  return (
    <>
      <MarksLayer marks={marks} />
      <StageSegments stages={view.stages} nowS={nowS} height={footPx} />
      {forecast && band && (
        <ForecastFan {...forecast} limitC={band.limitC} limitName={names?.limit ?? null} />
      )}
      {names && <BandNamesLayer names={names} />}
      <TraceLayer drawn={drawn} />
      <DoubtfulLayer drawn={doubtful} />
      <GapsLayer gaps={view.gaps} nowS={nowS} />
      <NowLayer timeS={nowS} head={head} />
      {extra}
    </>
  );
}
