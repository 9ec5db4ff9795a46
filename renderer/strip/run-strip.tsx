import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { reduceToWidth, say } from '#shared-core';
import { ChoiceField, useSmallTextPx } from '../design/index.ts';
import { keepOutOfTabOrder, useBoxSize } from '../figures/index.ts';
import { benchMarks, newestHead, type RunView } from '../stores/index.ts';
import { breakTimes } from './break-times.ts';
import { StripDrawing } from './strip-drawing.tsx';
import { StripInWords } from './strip-in-words.tsx';
import { StripTextContext, stripMeasures } from './strip-text.ts';
import { type StripHeight, wholeC } from './temperature-range.ts';
import { type StripSpan, spanS, timeRange } from './time-range.ts';

type HeightChoice = StripHeight | 'auto';

const spanOptions = [
  { value: 'whole', label: say('Whole run') },
  { value: 'last-30-min', label: `${spanS['last-30-min'] / 60} min` },
  { value: 'last-10-min', label: `${spanS['last-10-min'] / 60} min` },
] as const;

const heightOptions = [
  { value: 'auto', label: say('Follow') },
  { value: 'whole', label: `${wholeC.low}–${wholeC.high} °C` },
  { value: 'plateau', label: say('Plateau close up') },
] as const;

interface RunStripProps {
  readonly view: RunView;
  readonly hasControls?: boolean;
  readonly extra?: ReactNode;
  /** Height of the type in pixels; the page's small type when left out. */
  readonly textPx?: number;
  /** Layers drawn over the strip, placed by `usePlotFrame`. */
  readonly children?: ReactNode;
}

/** The run as one strip: past as recorded, band behind it, stages along its foot, forecast ahead. */
export function RunStrip(props: RunStripProps) {
  const { view, hasControls = true, extra, textPx: askedTextPx, children } = props;
  const [box, size] = useBoxSize<HTMLDivElement>();
  useEffect(() => keepOutOfTabOrder(box.current));
  const smallTextPx = useSmallTextPx();
  const textPx = askedTextPx ?? smallTextPx;
  const { axisWidthPx } = stripMeasures(textPx);
  const [span, setSpan] = useState<StripSpan>('whole');
  const [heightChoice, setHeightChoice] = useState<HeightChoice>('auto');

  const head = view.tracks.head?.series ?? null;
  const nowS = Math.max(view.snapshot?.timeS ?? 0, view.lastInputS);
  const expectedEndS = view.snapshot?.forecast?.mainFractionEndS ?? null;
  const range = timeRange(span, nowS, expectedEndS);
  const height = heightChoice === 'auto' ? heightToFollow(view) : heightChoice;
  // One column a pixel of the plot, which is what the axis and the margin leave.
  const columns = Math.max(50, Math.floor((size?.width ?? 400) - axisWidthPx - 1.8 * textPx));

  const { fromS, toS } = range;
  const { gaps, doubtful: doubted } = view;
  const breaksS = useMemo(() => breakTimes(gaps, doubted), [gaps, doubted]);
  const drawn = useMemo(
    () => (head ? reduceToWidth(head, { fromS, toS, columns, breaksS }) : []),
    [head, fromS, toS, columns, breaksS],
  );
  const doubtful = useMemo(
    () => reduceToWidth(doubted, { fromS, toS, columns }),
    [doubted, fromS, toS, columns],
  );
  const marks = useMemo(() => benchMarks(view.marks), [view.marks]);

  return (
    <div className="strip">
      {hasControls && (
        <div className="strip-controls">
          <ChoiceField
            name={say('Time shown')}
            isNameHidden
            options={spanOptions}
            value={span}
            onValue={setSpan}
          />
          <ChoiceField
            name={say('Temperature shown')}
            isNameHidden
            options={heightOptions}
            value={heightChoice}
            onValue={setHeightChoice}
          />
          {extra && <div className="strip-extra">{extra}</div>}
        </div>
      )}
      <div className="strip-box" ref={box} style={{ fontSize: textPx }}>
        {size && size.width > 0 && size.height > 0 && (
          <StripTextContext value={textPx}>
            <StripDrawing
              size={size}
              range={range}
              height={height}
              moment={{
                view,
                drawn,
                doubtful,
                marks,
                nowS,
                head: newestHead(view),
                extra: children,
              }}
            />
          </StripTextContext>
        )}
      </div>
      <StripInWords view={view} />
    </div>
  );
}

/** Close up once the vapour has arrived; the whole scale before, and again when cooling down. */
function heightToFollow({ snapshot }: RunView): StripHeight {
  const stage = snapshot?.stage.stage;
  return stage === 'first-fraction' || stage === 'main-fraction' ? 'plateau' : 'whole';
}
