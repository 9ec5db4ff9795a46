import { say } from '#shared-core';
import { useDraftFields } from '../draft/index.ts';
import { gainsSentence } from './gains-words.ts';
import { useInstrumentGains } from './use-instrument-gains.ts';

/** How well the end will be known, and what each instrument would narrow. */
export function InstrumentGainsLine() {
  const { settings } = useDraftFields();
  const { result: gains, isMaking } = useInstrumentGains(settings.ok ? settings.value : null);
  if (gains === null) {
    return isMaking ? (
      <p role="status" className="soft field-wide">
        {say('Working out how well the end will be known …')}
      </p>
    ) : null;
  }
  return (
    <p className="soft field-wide" data-stale={isMaking}>
      {gainsSentence(gains)}
    </p>
  );
}
