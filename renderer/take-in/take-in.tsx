import { useState } from 'react';
import { explainCsvProblem, say, told } from '#shared-core';
import { Button } from '../design/index.ts';
import { beginningText, type FileBeginning, readBeginning } from './file-beginning.ts';
import { MapFile } from './map-file.tsx';
import { type Taken, TakenNote } from './taken-note.tsx';

interface TakeInProps {
  readonly file: File;
  readonly beginning: FileBeginning;
  readonly onOpen: (runId: string) => void;
  readonly onClose: () => void;
}

/** Takes in the file of another logger: look, say what is what, and it is a run. */
export function TakeIn({ file, beginning, onOpen, onClose }: TakeInProps) {
  const [taken, setTaken] = useState<Taken | null>(null);
  return (
    <main className="place" id="place">
      <h1>{say('Take in a table')}</h1>
      <div className="import-body">
        {taken !== null ? (
          <TakenNote taken={taken} onOpen={() => onOpen(taken.runId)} onClose={onClose} />
        ) : beginning.kind === 'refused' ? (
          <>
            <h2>{file.name}</h2>
            <p className="warning" role="alert">
              {beginning.sentence}
            </p>
            <Button onClick={onClose}>{say('Back to the library')}</Button>
          </>
        ) : (
          <MapFile file={file} beginning={beginning} onTaken={setTaken} onCancel={onClose} />
        )}
      </div>
    </main>
  );
}

/** Looks at a file before anything of it is shown; pictures and programs end in a sentence. */
export async function lookInto(file: File): Promise<FileBeginning> {
  const beginning = await readBeginning(file);
  if (beginning.kind === 'refused') return beginning;
  const isText = !beginningText(beginning, 'auto').includes('\0');
  if (isText) return beginning;
  return { kind: 'refused', sentence: told(explainCsvProblem({ kind: 'not-text' })) };
}
