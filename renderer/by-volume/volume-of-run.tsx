import { useMemo, useState } from 'react';
import {
  booksOfRun,
  isVolumeTable,
  type Mark,
  processedRows,
  type RunByVolume,
  type RunSummary,
  runByVolume,
  say,
  strengthByVolumeFigure,
  temperatureByVolumeFigure,
} from '#shared-core';
import { Button, NumberField } from '../design/index.ts';
import { DrawnFigure } from '../figures/index.ts';
import type { Film } from '../replay/index.ts';
import { numberFrom, RunRemarks, useWords } from '../words/index.ts';
import { VolumeTable } from './volume-table.tsx';

interface VolumeOfRunProps {
  readonly film: Film;
  readonly summary: RunSummary;
  readonly lateMarks: readonly Mark[];
  readonly onClose: () => void;
}

const basisWords: Readonly<Record<RunByVolume['basis'], string>> = {
  table: say('The table gives volumes and no times, so it is judged by its temperatures alone.'),
  'receiver-volume': say('Volumes as the receiver was measured.'),
  'receiver-mass': say('Volumes from the balance under the receiver.'),
  booked: say('Volumes as written down, and as at an even heat from one to the next.'),
  'drip-rate': say('Volumes from the drip rate below, as at an even heat.'),
};

/** A run against the volume of distillate: the figure of the textbook, its strength, where to cut. */
export function VolumeOfRun({ film, summary, lateMarks, onClose }: VolumeOfRunProps) {
  const words = useWords();
  const [drip, setDrip] = useState('');
  const [reflux, setReflux] = useState('');
  const { settings, inputs, endS, verdicts } = film;
  const isTable = useMemo(() => isVolumeTable(inputs), [inputs]);
  const rows = useMemo(
    () => (isTable ? [] : processedRows({ settings, inputs, verdicts, endS })),
    [isTable, settings, inputs, verdicts, endS],
  );
  const dripRateMlPerMin = positive(drip);
  const refluxRatio = positive(reflux);
  const all = useMemo(() => [...inputs, ...lateMarks], [inputs, lateMarks]);
  const { distillate } = useMemo(() => {
    const entries = dripRateMlPerMin === null ? undefined : { cuts: [], dripRateMlPerMin };
    return booksOfRun({ settings, inputs: all, verdicts, endS, entries });
  }, [settings, all, verdicts, endS, dripRateMlPerMin]);
  const byVolume = useMemo(
    () => runByVolume({ settings, inputs: all, rows, refluxRatio, distillate }),
    [settings, all, rows, refluxRatio, distillate],
  );
  const { name, imported } = summary;
  const shown = { byVolume, settings, name, imported };
  const temperature = temperatureByVolumeFigure(shown, { expected: true });
  const strength = strengthByVolumeFigure(shown);
  const needsDrip = byVolume === null || byVolume.basis === 'drip-rate';
  const { plates } = settings.rig;
  return (
    <main className="place" id="place">
      <div className="books-head">
        <h1>{say('“{name}” against volume', { name })}</h1>
        <Button onClick={onClose}>{say('Back to the library')}</Button>
      </div>
      <RunRemarks run={summary} />
      {byVolume === null ? (
        <p className="place-lead">
          {say(
            'No volume was written down while distillate came over. State a drip rate to see the run against volume.',
          )}
        </p>
      ) : (
        <>
          <p className="place-lead">{words.said(byVolume.verdict.because)}</p>
          {byVolume.doubt !== null && <p className="warning">{words.said(byVolume.doubt)}</p>}
          <p className="small soft">{basisWords[byVolume.basis]}</p>
        </>
      )}
      <div className="volume-fields">
        {needsDrip && (
          <NumberField name={say('Drip rate')} unit="mL/min" text={drip} onText={setDrip} />
        )}
        {plates !== null && plates > 0 && (
          <NumberField
            name={say(
              'Reflux ratio of the column of {plates, plural, one {# plate} other {# plates}}',
              { plates },
            )}
            unit=""
            text={reflux}
            onText={setReflux}
          />
        )}
      </div>
      <div className="volume-figures">
        {temperature !== null && (
          <DrawnFigure
            drawing={temperature}
            caption={say(
              'Head temperature against the distillate collected. Dashed: what this charge would give in a simple still.',
            )}
          />
        )}
        {strength !== null && (
          <DrawnFigure
            drawing={strength}
            caption={say(
              'Strength of the vapour against the distillate collected. Shaded: 95 % interval.',
            )}
          />
        )}
      </div>
      {byVolume !== null && <VolumeTable byVolume={byVolume} />}
    </main>
  );
}

function positive(text: string): number | null {
  const value = numberFrom(text);
  return value !== null && value > 0 && value <= 1000 ? value : null;
}
