import { trialWords } from '#shared-core';
import { useDraftFields } from '../draft/index.ts';
import { useBench } from '../parts/index.ts';
import { channelWords, useWords } from '../words/index.ts';
import { looksLeft, safetyLooks } from './safety-checks.ts';

/** What the record of this run will hold, told before it begins. */
export function ToBeRecorded() {
  const words = useWords();
  const probe = useBench((bench) => bench.probe);
  const folder = useBench((bench) => bench.app?.runsFolder ?? null);
  const { draft, settings } = useDraftFields();
  if (!settings.ok) return null;
  const { name, charge, pressure, leastStrengthAbv, rig } = settings.value;
  const { volumeMl, strengthAbv } = charge;
  const looked = safetyLooks.length - looksLeft(draft.confirms).length;
  const channels = probe?.channels ?? [];
  return (
    <details className="why to-be-recorded">
      <summary>What will be recorded</summary>
      <dl className="expectation">
        <Row name="Run">
          {name}
          {rig.description !== '' && `, ${rig.description}`}
        </Row>
        <Row name="Every reading of">
          {channels.length === 0 ? 'the probe, once one is heard' : channelsInWords(channels)}
          {draft.correction !== null && ', with its calibration'}
        </Row>
        <Row name="Charge">
          {words.quantity(volumeMl, 0, 'mL')} of {words.quantity(strengthAbv, 1, '% vol')}
        </Row>
        <Row name="Air pressure">
          {words.quantity(pressure.pressureKPa, 1, 'kPa')} ±{' '}
          {words.quantity(2 * pressure.standardUncertaintyKPa, 1, 'kPa')}
        </Row>
        <Row name="Heat off at">{words.quantity(leastStrengthAbv, 0, '% vol')}</Row>
        <Row name="Looks before heat">
          {looked} of {safetyLooks.length}, each with its time and “{draft.role}”
        </Row>
        {draft.trials.length > 0 && (
          <Row name="Tried before heat">{draft.trials.map(trialWords).join(', ')}</Row>
        )}
        <Row name="During the run">
          every mark and note with its time, every prompt and how it was answered
        </Row>
        {folder !== null && (
          <Row name="Where">
            <code>{folder}</code>, on this computer only
          </Row>
        )}
      </dl>
      <p className="small soft">
        Nobody’s name is asked for; no picture and no sound is taken. A note is kept as it is
        written.
      </p>
    </details>
  );
}

function Row({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd className="number">{children}</dd>
    </div>
  );
}

function channelsInWords(channels: readonly string[]): string {
  return new Intl.ListFormat('en').format(
    channels.map((channel) => channelWords(channel).toLowerCase()),
  );
}
