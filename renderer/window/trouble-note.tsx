import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench, useWindowParts } from '../parts/index.ts';
import { mayCommand, troublesOf } from '../stores/index.ts';
import { troubleWords } from '../words/index.ts';

/** What is wrong with the advice or the record; it stands for as long as it is so. */
export function TroubleNote() {
  const recording = useBench((bench) => bench.recording);
  const canAct = useBench(mayCommand);
  return troublesOf(recording).map((trouble) => (
    <div
      key={trouble.kind === 'run-not-saved' ? trouble.run.runId : trouble.kind}
      className="trouble-note"
      role="alert"
    >
      <p>{troubleWords(trouble)}</p>
      {trouble.kind === 'folder-gone' && canAct && <MakeFolderAnew />}
    </div>
  ));
}

function MakeFolderAnew() {
  const { commands } = useWindowParts();
  const [isAsking, setAsking] = useState(false);
  const makeAnew = async () => {
    setAsking(true);
    await commands.makeFolderAnew();
    setAsking(false);
  };
  return (
    <Button disabled={isAsking} onClick={() => void makeAnew()}>
      {say('Make the folder anew')}
    </Button>
  );
}
