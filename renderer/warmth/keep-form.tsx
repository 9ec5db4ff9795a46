import { useState } from 'react';
import { type KeptWarm, say } from '#shared-core';
import { Button, Form, NumberField, SelectField } from '../design/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { channelWords, quantityWords } from '../words/index.ts';
import { type BandProblems, bandDraft, bandFromDraft, type WarmthBand } from './band-draft.ts';

interface KeepFormProps {
  readonly band: WarmthBand;
  /** The channel that was chosen before; null where none was. */
  readonly channel: string | null;
  readonly onKeep: (keeping: Pick<KeptWarm['keeping'], 'band' | 'channel'>) => void;
}

/** Which of the probe's numbers hangs in the ferment, and between which ends it is to be kept. */
export function KeepForm({ band, channel, onKeep }: KeepFormProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const probe = useBench((bench) => bench.probe);
  const heard = (probe?.latest ?? []).filter(({ unit }) => unit === '°C');
  const isDemo = probe?.source?.kind === 'demo';
  const [draft, setDraft] = useState(() => bandDraft(band, decimal));
  const [problems, setProblems] = useState<BandProblems>({});
  const [chosen, setChosen] = useState<string | null>(null);
  if (heard.length === 0 || isDemo) {
    return (
      <p className="soft">
        {isDemo
          ? say(
              'A simulated still is connected: stop the rehearsal and connect the probe that hangs in the ferment, in Prepare.',
            )
          : say(
              'Connect the probe that hangs in the ferment, in Prepare: the same one that will hang in the still.',
            )}
      </p>
    );
  }
  const first = heard.find((reading) => reading.channel === (channel ?? 'ferment')) ?? heard[0];
  const by = heard.find((reading) => reading.channel === chosen) ?? first;
  const field = (name: keyof WarmthBand) => ({
    unit: '°C',
    text: draft[name],
    onText: (text: string) => setDraft((known) => ({ ...known, [name]: text })),
    problem: problems[name],
  });
  const keep = () => {
    const read = bandFromDraft(draft);
    setProblems(read.ok ? {} : read.error);
    if (read.ok && by !== undefined) onKeep({ band: read.value, channel: by.channel });
  };
  return (
    <Form name={say('Keep it warm under watch')} onSubmit={keep}>
      <div className="prepare-fields">
        <SelectField
          name={say('Which one hangs in the ferment?')}
          options={heard.map((reading) => ({
            value: reading.channel,
            label: say('{channel}, now {quantity}', {
              channel: channelWords(reading.channel),
              quantity: quantityWords(reading.value, 1, '°C', decimal),
            }),
          }))}
          value={by?.channel ?? ''}
          onValue={setChosen}
        />
        <NumberField name={say('Set-point of the warmer')} {...field('aimC')} />
        <NumberField name={say('Call me below')} {...field('lowC')} />
        <NumberField name={say('Call me above')} {...field('highC')} />
      </div>
      <p className="small soft">
        {say(
          'A minute’s mean is kept each minute, for as long as this computer is on; after a restart the watch goes on by itself. It warns; it switches nothing.',
        )}
      </p>
      <Button type="submit" weight="main">
        {say('Keep watch')}
      </Button>
    </Form>
  );
}
