import { useEffect, useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench, useWindowParts } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { type DoubtfulFile, doubtfulFileWords } from '../words/index.ts';

/** What was kept and can't be read as it should, until it has been read; never beside a run. */
export function DoubtfulFiles() {
  const { service } = useWindowParts();
  const canAct = useBench(mayCommand);
  const isIdle = useBench(({ recording }) => recording?.state === 'idle');
  const [files, setFiles] = useState<readonly DoubtfulFile[]>([]);
  useEffect(() => {
    if (!canAct) return;
    let isWanted = true;
    void service.request('kept-files/doubtful', {}).then((answer) => {
      if (isWanted && answer.ok) setFiles(answer.value.files);
    });
    return () => {
      isWanted = false;
    };
  }, [service, canAct]);
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
