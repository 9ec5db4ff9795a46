import { Button } from '../design/index.ts';

/** Something the person did or saw, with the key that marks it. */
export interface MarkAct {
  readonly key: string;
  readonly name: string;
  /** How the name goes on where the button has room only for its beginning. */
  readonly restOfName?: string;
  /** How the name begins where it can't be read from the button beside it. */
  readonly beginOfName?: string;
  readonly isNow?: boolean;
  readonly run: () => void;
}

interface MarkButtonProps {
  readonly act: MarkAct;
  readonly canAct: boolean;
  readonly showKey: boolean;
}

export function MarkButton({ act, canAct, showKey }: MarkButtonProps) {
  const { isNow, key, name, restOfName, beginOfName, run } = act;
  return (
    <Button
      className="mark-button"
      disabled={!canAct}
      onClick={run}
      aria-pressed={isNow}
      aria-keyshortcuts={showKey ? key : undefined}
      data-now={isNow}
    >
      {showKey && (
        <span className="key" aria-hidden="true">
          {key}
        </span>
      )}
      {beginOfName && <span className="unseen">{beginOfName} </span>}
      {name}
      {restOfName && <span className="unseen"> {restOfName}</span>}
    </Button>
  );
}
