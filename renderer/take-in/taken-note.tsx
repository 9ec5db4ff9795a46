import { say, told } from '#shared-core';
import { Button } from '../design/index.ts';
import { Say } from '../words/index.ts';

/** What came of a file that was taken in. */
export interface Taken {
  readonly runId: string;
  readonly name: string;
  readonly remarks: readonly string[];
  readonly rejectedRows: readonly string[];
}

interface TakenNoteProps {
  readonly taken: Taken;
  readonly onOpen: () => void;
  readonly onClose: () => void;
}

/** The file is a run now; and which of its rows are not in it. */
export function TakenNote({ taken, onOpen, onClose }: TakenNoteProps) {
  const { name, remarks, rejectedRows } = taken;
  return (
    <div className="import-taken">
      <p role="status">
        <Say
          sentence={
            'Taken in as <strong>{name}</strong>. It stands in the library, marked as imported.'
          }
          parts={{ name, strong: (words) => <strong>{words}</strong> }}
        />
      </p>
      {remarks.map((remark) => (
        <p key={remark}>{told(remark)}</p>
      ))}
      {rejectedRows.length > 0 && (
        <>
          <h2>{say('Left out, by line')}</h2>
          <ul className="import-rejected">
            {rejectedRows.map((row) => (
              <li key={row}>{told(row)}</li>
            ))}
          </ul>
        </>
      )}
      <div className="dialog-acts">
        <Button onClick={onClose}>{say('Back to the library')}</Button>
        <Button weight="main" onClick={onOpen}>
          {say('Replay it')}
        </Button>
      </div>
    </div>
  );
}
