import { Button } from '../design/index.ts';

/** Something the person did or saw, with the key that marks it. */
export interface MarkAct {
  readonly key: string;
  readonly name: string;
  /** The name in full, where the button has room only for its beginning. */
  readonly fullName?: string;
  readonly isNow?: boolean;
  readonly run: () => void;
}

interface MarkButtonProps {
  readonly act: MarkAct;
  readonly canAct: boolean;
  readonly showKey: boolean;
}

export function MarkButton({ act, canAct, showKey }: MarkButtonProps) {
  const { isNow, key, name, fullName, run } = act;
  return (
    <Button
      className="mark-button"
      disabled={!canAct}
      onClick={run}
      aria-label={fullName}
      title={fullName}
      aria-pressed={isNow}
      data-now={isNow}
    >
      {showKey && <span className="key">{key}</span>}
      {name}
    </Button>
  );
}
