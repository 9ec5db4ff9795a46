import { useState } from 'react';
import { type MarkBody, say } from '#shared-core';
import { FormDialog, NumberField } from '../design/index.ts';
import {
  beyondChargeWords,
  mayHaveThousandsMark,
  numberFrom,
  thousandsWords,
} from '../words/index.ts';
import { RehearsedReceiver } from './rehearsed-receiver.tsx';

interface VolumeDialogProps {
  readonly kind: 'receiver-changed' | 'volume-read';
  readonly chargeMl: number;
  readonly onMark: (mark: MarkBody) => void;
  readonly onClose: () => void;
}

const words = {
  'receiver-changed': {
    title: say('Receiver changed'),
    field: say('Volume in the receiver you took away (may stay empty)'),
    act: say('Mark the change'),
  },
  'volume-read': {
    title: say('Volume read'),
    field: say('Volume in the receiver now'),
    act: say('Mark the volume'),
  },
} as const;

export function VolumeDialog({ kind, chargeMl, onMark, onClose }: VolumeDialogProps) {
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<string>();
  const [doubted, setDoubted] = useState<string>();
  const submit = () => {
    const volumeMl = numberFrom(text);
    if (mayHaveThousandsMark(text)) return setProblem(thousandsWords);
    const isEmpty = text.trim() === '';
    if (isEmpty && kind === 'receiver-changed') return onMark({ type: kind, volumeMl: null });
    if (volumeMl === null || volumeMl < 0 || volumeMl > 100_000) {
      return setProblem(say('A number of millilitres, 0 or more.'));
    }
    if (volumeMl > chargeMl && doubted !== text) {
      setDoubted(text);
      return setProblem(beyondChargeWords(chargeMl, 'mL'));
    }
    onMark({ type: kind, volumeMl });
  };
  return (
    <FormDialog title={words[kind].title} act={words[kind].act} onSubmit={submit} onClose={onClose}>
      <NumberField
        name={words[kind].field}
        unit="mL"
        text={text}
        onText={setText}
        problem={problem}
      />
      <RehearsedReceiver onRead={(volumeMl) => onMark({ type: kind, volumeMl })} />
    </FormDialog>
  );
}
