import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useAsked, useBench } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { type DoubtfulFile, doubtfulFileWords } from '../words/index.ts';

/** What was kept and can't be read as it should, until it has been read; never beside a run. */
export function DoubtfulFiles() {
  const canAct = useBench(mayCommand);
  const isIdle = useBench(({ recording }) => recording?.state === 'idle');
  const [files, setFiles] = useState<readonly DoubtfulFile[]>([]);
  useAsked('kept-files/doubtful', canAct ? {} : null, (answer) => {
    if (answer.ok) setFiles(answer.value.files);
  });
  if (files.length === 0 || !isIdle) return null;
  return (
    <div className="problem-note" role="status">
      <div>
        {files.map((file) => (
          <p key={file.name}>{doubtfulFileWords(file)}</p>
        ))}
      </div>
      <Button onClick={() => setFiles([])}>{say('Understood')}</Button>
    </div>
  );
}
