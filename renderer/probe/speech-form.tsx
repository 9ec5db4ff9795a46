import { useId, useState } from 'react';
import type { ProbeStatus, SerialSource } from '#shared-core';
import { Button, ChoiceField, SelectField } from '../design/index.ts';
import { useWindowParts } from '../window/use-stores.ts';
import { PatternTrial } from './pattern-trial.tsx';
import {
  baudOptions,
  languageOptions,
  type SpeechDraft,
  sourceFromSpeech,
  speechDraftFrom,
  unitOptions,
} from './speech-draft.ts';

interface SpeechFormProps {
  readonly source: SerialSource;
  readonly probe: ProbeStatus;
  readonly canAct: boolean;
}

const decimalOptions = [
  { value: 'point', label: '78.4' },
  { value: 'comma', label: '78,4' },
] as const;

/** How this probe speaks, for the ones that are not understood by listening. */
export function SpeechForm({ source, probe, canAct }: SpeechFormProps) {
  const { commands } = useWindowParts();
  const [draft, setDraft] = useState<SpeechDraft>(() => speechDraftFrom(source));
  const change = (changes: Partial<SpeechDraft>) => setDraft({ ...draft, ...changes });
  const patternId = useId();
  const channels = probe.channels.map((channel) => ({ value: channel, label: channel }));
  const reset = { value: '', label: 'as it says' };
  return (
    <div className="speech">
      <SelectField
        name="Language"
        options={languageOptions}
        value={draft.language}
        onValue={(language) => change({ language })}
      />
      <SelectField
        name="Speed"
        options={baudOptions}
        value={draft.baudRate}
        onValue={(baudRate) => change({ baudRate })}
      />
      <SelectField
        name="Its numbers are in"
        options={unitOptions}
        value={draft.unit}
        onValue={(unit) => change({ unit })}
      />
      <SelectField
        name="In the still head hangs"
        options={[reset, ...channels]}
        value={draft.headChannel}
        onValue={(headChannel) => change({ headChannel })}
      />
      <ChoiceField
        name="Its decimal sign"
        options={decimalOptions}
        value={draft.decimal}
        onValue={(decimal) => change({ decimal })}
      />
      {draft.language === 'own-pattern' && (
        <div className="field field-wide">
          <label className="field-name" htmlFor={patternId}>
            A line looks like this
          </label>
          <input
            id={patternId}
            className="entry"
            spellCheck={false}
            placeholder="T1={head} C; T2={pot} C"
            value={draft.pattern}
            onChange={({ target }) => change({ pattern: target.value })}
          />
          <PatternTrial draft={draft} lines={probe.recentLines ?? []} />
        </div>
      )}
      <Button
        disabled={!canAct}
        onClick={() => void commands.connect(sourceFromSpeech(source, draft))}
      >
        Speak to it like this
      </Button>
    </div>
  );
}
