import { language, say, told, trialWords } from '#shared-core';
import { probeKinds, useDraftFields } from '../draft/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { channelWords, inMidSentence, Say, useWords } from '../words/index.ts';
import { isAssumedIn } from './assumed-in-step.ts';
import { roleTitles } from './role-titles.ts';
import { looksLeft, safetyLooks } from './safety-checks.ts';
import { stepIds } from './steps.ts';
import { pressureWords } from './unknown-pressure.ts';

/** What the record of this run will hold, told before it begins. */
export function ToBeRecorded() {
  const words = useWords();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const probe = useBench((bench) => bench.probe);
  const folder = useBench((bench) => bench.app?.runsFolder ?? null);
  const { draft, settings } = useDraftFields();
  if (!settings.ok) return null;
  const { name, charge, pressure, probe: probeSetting, leastStrengthAbv, rig } = settings.value;
  const { volumeMl, strengthAbv } = charge;
  const looked = safetyLooks.length - looksLeft(draft.confirms).length;
  const channels = probe?.channels ?? [];
  return (
    <details className="why to-be-recorded">
      <summary>
        {stepIds.some((step) => isAssumedIn(step, draft))
          ? say('What will be recorded, some of it assumed')
          : say('What will be recorded')}
      </summary>
      <dl className="expectation">
        <Row name={say('Run')}>
          {name}
          {rig.description !== '' && `, ${rig.description}`}
        </Row>
        <Row name={say('Every reading of')}>
          {channels.length === 0 ? say('the probe, once one is heard') : channelsInWords(channels)}
          {draft.correction !== null && say(', with its calibration')}
        </Row>
        <Row name={say('Kind of probe')}>
          {probeKinds[draft.probeKind].label}
          {probeSetting.assumed !== undefined && say(', assumed: nobody has stated it')}
        </Row>
        <Row name={say('Charge')}>
          {say('{volume} of {strength}', {
            volume: words.quantity(volumeMl, 0, 'mL'),
            strength: words.quantity(strengthAbv, 1, '% vol'),
          })}
          {charge.assumed !== undefined && say(', assumed: nobody has stated it')}
        </Row>
        <Row name={say('Air pressure')}>{pressureWords({ pressure }, decimal)}</Row>
        <Row name={say('Heat off at')}>{words.quantity(leastStrengthAbv, 0, '% vol')}</Row>
        <Row name={say('Looks before heat')}>
          {say('{looked} of {all}, each with its time and “{role}”', {
            looked,
            all: safetyLooks.length,
            role: inMidSentence(roleTitles[draft.role]),
          })}
        </Row>
        {draft.trials.length > 0 && (
          <Row name={say('Tried before heat')}>
            {draft.trials.map((trial) => told(trialWords(trial))).join(', ')}
          </Row>
        )}
        <Row name={say('During the run')}>
          {say('every mark and note with its time, every prompt and how it was answered')}
        </Row>
        {folder !== null && (
          <Row name={say('Where')}>
            <Say
              sentence={'<code>{folder}</code>, on this computer only'}
              parts={{ folder, code: (words) => <code>{words}</code> }}
            />
          </Row>
        )}
      </dl>
      <p className="small soft">
        {say(
          'Nobody’s name is asked for; no picture and no sound is taken. A note is kept as it is written.',
        )}
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
  return new Intl.ListFormat(language()).format(channels.map(channelWords));
}
