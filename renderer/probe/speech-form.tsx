import { useId, useState } from 'react';
import { type ProbeStatus, type SerialSource, say } from '#shared-core';
import { Button, ChoiceField, NumberField, SelectField, TextLine } from '../design/index.ts';
import { channelWords } from '../words/index.ts';
import { roleOptions } from './channel-roles.ts';
import { ModbusFields } from './modbus-fields.tsx';
import { PatternTrial } from './pattern-trial.tsx';
import {
  baudOptions,
  languageOptions,
  mustBeAsked,
  parityOptions,
  type SpeechDraft,
  type SpeechProblems,
  sourceFromSpeech,
  speechDraftFrom,
  unitOptions,
} from './speech-draft.ts';

interface SpeechFormProps {
  readonly source: SerialSource;
  readonly probe: ProbeStatus;
  /** Whether other probes are read beside this one. */
  readonly hasOthers: boolean;
  readonly canAct: boolean;
  readonly onSource: (source: SerialSource) => void;
}

const decimalOptions = [
  { value: 'point', label: '78.4' },
  { value: 'comma', label: '78,4' },
] as const;

/** How a probe speaks, for the ones that are not understood by listening. */
export function SpeechForm({ source, probe, hasOthers, canAct, onSource }: SpeechFormProps) {
  const [draft, setDraft] = useState<SpeechDraft>(() => speechDraftFrom(source));
  const [problems, setProblems] = useState<SpeechProblems>({});
  const change = (changes: Partial<SpeechDraft>) => setDraft({ ...draft, ...changes });
  const patternId = useId();
  const asks = mustBeAsked(draft.language);
  const channels = probe.channels.map((channel) => ({
    value: channel,
    label: channelWords(channel),
  }));
  const reset = { value: '', label: say('the one it calls so itself') };
  const speak = () => {
    const spoken = sourceFromSpeech(source, draft);
    setProblems(spoken.ok ? {} : spoken.error);
    if (spoken.ok) onSource(spoken.value);
  };
  return (
    <div className="speech">
      <SelectField
        name={say('Language')}
        options={languageOptions}
        value={draft.language}
        onValue={(language) => change({ language })}
      />
      <SelectField
        name={say('Speed')}
        options={baudOptions}
        value={draft.baudRate}
        onValue={(baudRate) => change({ baudRate })}
      />
      <SelectField
        name={say('Parity')}
        options={parityOptions}
        value={draft.parity}
        onValue={(parity) => change({ parity })}
      />
      <SelectField
        name={say('Its numbers are in')}
        options={unitOptions}
        value={draft.unit}
        onValue={(unit) => change({ unit })}
      />
      {hasOthers && draft.language !== 'modbus-rtu' && (
        <SelectField
          name={say('It measures')}
          options={roleOptions}
          value={draft.role}
          onValue={(role) => change({ role })}
        />
      )}
      {!hasOthers && (
        <SelectField
          name={say('Which number is the still head')}
          options={[reset, ...channels]}
          value={draft.headChannel}
          onValue={(headChannel) => change({ headChannel })}
        />
      )}
      {!asks && (
        <ChoiceField
          name={say('Its decimal sign')}
          options={decimalOptions}
          value={draft.decimal}
          onValue={(decimal) => change({ decimal })}
        />
      )}
      {asks && (
        <NumberField
          name={say('Ask it every')}
          unit="s"
          text={draft.askEveryS}
          problem={problems.askEveryS}
          onText={(askEveryS) => change({ askEveryS })}
        />
      )}
      {draft.language === 'scpi' && (
        <TextLine
          name={say('What to ask')}
          text={draft.question}
          placeholder={say('empty: the usual questions')}
          problem={problems.question}
          onText={(question) => change({ question })}
        />
      )}
      {draft.language === 'modbus-rtu' && (
        <ModbusFields
          draft={draft.modbus}
          problems={problems}
          onDraft={(modbus) => change({ modbus })}
        />
      )}
      {draft.language === 'own-pattern' && (
        <div className="field field-wide">
          <label className="field-name" htmlFor={patternId}>
            {say('A line looks like this')}
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
      <Button className="speak" disabled={!canAct} onClick={speak}>
        {say('Use these settings')}
      </Button>
    </div>
  );
}
