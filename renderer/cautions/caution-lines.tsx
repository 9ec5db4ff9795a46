import { type Caution, say, told } from '#shared-core';

/** Cautions as a list: what to do, why, and the source where there is one. */
export function CautionLines({ cautions }: { readonly cautions: readonly Caution[] }) {
  return (
    <ul className="cautions">
      {cautions.map(({ id, act, because, source }) => (
        <li key={id}>
          <strong>{told(act)}</strong> {told(because)}
          {source && (
            <small className="soft"> {say('Source: {source}.', { source: told(source) })}</small>
          )}
        </li>
      ))}
    </ul>
  );
}
