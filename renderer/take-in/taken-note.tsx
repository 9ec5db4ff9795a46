import { Button } from '../design/index.ts';

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
        Taken in as <strong>{name}</strong>. It stands in the library, marked as imported.
      </p>
      {remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
      {rejectedRows.length > 0 && (
        <>
          <h2>Left out, by line</h2>
          <ul className="import-rejected">
            {rejectedRows.map((row) => (
              <li key={row}>{row}</li>
            ))}
          </ul>
        </>
      )}
      <div className="dialog-acts">
        <Button onClick={onClose}>Back to the library</Button>
        <Button weight="main" onClick={onOpen}>
          Replay it
        </Button>
      </div>
    </div>
  );
}
