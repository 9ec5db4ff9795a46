import { keepUnits, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences, usePrepare } from '../parts/index.ts';
import { quantityWords, rangeWords } from '../words/index.ts';

/** Which ferment is in the pot, where one was charged from its log. */
export function ChargedFrom() {
  const ferment = usePrepare(({ draft }) => draft.ferment);
  const change = usePrepare((state) => state.change);
  const decimal = usePreferences((preferences) => preferences.decimal);
  if (ferment === null) return null;
  const { name, strengthAbv, wentIn } = ferment;
  return (
    <div className="prepare-finding" role="status">
      <p>
        {say('From the ferment “{name}”: {quantity} ({strength}) by its log.', {
          name,
          quantity: quantityWords(strengthAbv.value, 1, '% vol', decimal),
          strength: rangeWords(strengthAbv, 1, '% vol', decimal),
        })}{' '}
        {wentIn !== '' && say('In it: {wentIn}.', { wentIn: keepUnits(wentIn) })}
      </p>
      <Button weight="quiet" onClick={() => change({ ferment: null })}>
        {say('It is another charge')}
      </Button>
    </div>
  );
}
