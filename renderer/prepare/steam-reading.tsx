import { say } from '#shared-core';
import { type SettledReading, settlingWords, steamHow, useSettling } from '../calibrate/index.ts';
import { Button, NumberField } from '../design/index.ts';
import { pressureFromDraft } from '../draft/index.ts';
import { useBench, usePreferences, usePrepare } from '../parts/index.ts';
import type { PrepareDraft } from '../stores/index.ts';
import { numberWords, Say, useWords } from '../words/index.ts';
import { isOfOtherProbe } from './still-to-do.ts';

interface SteamReadingProps {
  readonly field: Omit<Parameters<typeof NumberField>[0], 'unit' | 'hint' | 'onText'>;
}

/** The head probe held in the steam of boiling water: how, whether it has settled, and taking what it shows. */
export function SteamReading({ field }: SteamReadingProps) {
  const words = useWords();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const probe = useBench((bench) => bench.probe);
  const draft = usePrepare((state) => state.draft);
  const change = usePrepare((state) => state.change);
  const { head, settled } = useSettling();
  const isSteam = settled.ok && canBeSteam(draft, settled.value);
  const take = () => {
    if (!settled.ok) return;
    const { readingC, standardUncertaintyK } = settled.value;
    change({
      steamReading: numberWords(readingC, 2, decimal),
      steamTaken: { standardUncertaintyK, device: probe?.device ?? null },
    });
  };
  return (
    <>
      <div className="steam-reading field-wide" data-done={draft.steamTaken !== null}>
        <p>{steamHow}</p>
        {head === null ? (
          <p role="status">
            {say(
              'No probe is heard yet: connect it under “Probe”, or type below what it shows in the steam.',
            )}
          </p>
        ) : (
          <div className="steam-heard">
            <p className="number">
              <Say
                sentence={'The probe shows <strong>{what}</strong>.'}
                parts={{
                  what: words.quantity(head.value, 2, head.unit),
                  strong: (words) => <strong>{words}</strong>,
                }}
              />
            </p>
            <p className="number" role="status">
              {settlingWords(settled, isSteam, decimal)}
            </p>
            <Button disabled={!isSteam} onClick={take}>
              {say('Take this reading')}
            </Button>
            {draft.steamTaken && (
              <strong className="number" role="status">
                {say('✓ taken: {reading} ± {quantity}', {
                  reading: `${draft.steamReading}\u00a0°C`,
                  quantity: words.quantity(2 * draft.steamTaken.standardUncertaintyK, 2, 'K'),
                })}
              </strong>
            )}
          </div>
        )}
        {isOfOtherProbe(draft, probe) && (
          <p className="field-problem" role="status">
            {say(
              'The reading below was taken with another probe. Each probe is off in its own way: take it again with this one.',
            )}
          </p>
        )}
      </div>
      <NumberField
        unit="°C"
        hint={say('Taken from the probe by the button, or typed as it shows it.')}
        {...field}
        onText={(steamReading) => change({ steamReading, steamTaken: null })}
      />
    </>
  );
}

/** Nothing is known of the place here: a probe that does not fit the altitude is told beside the reading, once it is taken. */
function canBeSteam(draft: PrepareDraft, { readingC }: SettledReading): boolean {
  const asTyped = { pressureFrom: 'steam', steamReading: String(readingC), altitudeM: '' } as const;
  return pressureFromDraft({ ...draft, ...asTyped }).ok;
}
