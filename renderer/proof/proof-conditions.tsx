import { type Caution, told } from '#shared-core';

interface ProofConditionsProps {
  readonly conditions: readonly Caution[];
  readonly confirmed: readonly string[];
  readonly isLocked: boolean;
  readonly onConfirmed: (confirmed: readonly string[]) => void;
}

/** Every condition with its reason, confirmed one by one. */
export function ProofConditions(props: ProofConditionsProps) {
  const { conditions, confirmed, isLocked, onConfirmed } = props;
  return (
    <ul className="checks">
      {conditions.map(({ id, act, because }) => (
        <li key={id}>
          <label className="check">
            <input
              type="checkbox"
              disabled={isLocked}
              checked={confirmed.includes(id)}
              onChange={({ target }) => {
                const others = confirmed.filter((other) => other !== id);
                onConfirmed(target.checked ? [...others, id] : others);
              }}
            />
            <span>
              <strong>{told(act)}</strong>
              <br />
              <span className="small soft">{told(because)}</span>
            </span>
          </label>
        </li>
      ))}
    </ul>
  );
}
