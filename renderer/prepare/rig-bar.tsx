import { useEffect, useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { dateWords } from '../words/index.ts';
import { setUpWords } from './set-up-words.ts';
import { goToStep } from './steps.ts';
import { useRigs } from './use-rigs.ts';

/** A whole known set-up by one press; what is true of this day only is asked for again. */
export function RigBar({ canAct }: { readonly canAct: boolean }) {
  const { rigs, fillAsLastTime, fillAs, refresh } = useRigs();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [used, setUsed] = useState<string | null>(null);
  // A rehearsal or a run since may have added to them.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when Prepare is opened.
  useEffect(() => {
    if (canAct) void refresh();
  }, [canAct]);
  if (rigs === null || (rigs.last === null && rigs.rigs.length === 0)) return null;
  const { last } = rigs;
  const use = async (name: string, fill: Promise<void>) => {
    await fill;
    setUsed(name);
    // All that it can’t bring is asked for there.
    goToStep('checks');
  };
  return (
    <section className="rig-bar" aria-label={say('Set-ups kept from earlier lessons')}>
      <div className="choices">
        {last && (
          <Button
            weight="main"
            size="large"
            disabled={!canAct}
            onClick={() => void use(say('last time'), fillAsLastTime())}
          >
            {say('Same as last time')}
          </Button>
        )}
        {rigs.rigs.map(({ name }) => (
          <Button
            key={name}
            size="large"
            disabled={!canAct}
            onClick={() => void use(name, fillAs(name))}
          >
            {name}
          </Button>
        ))}
      </div>
      <p className="small soft" role="status">
        {used === null
          ? last &&
            say('Last time, {keptAt}: {setUp}', {
              keptAt: dateWords(last.keptAtIso),
              setUp: setUpWords(last.setUp, decimal),
            })
          : say('Filled in as in “{used}”. What is true of today only is asked for again.', {
              used,
            })}
      </p>
    </section>
  );
}
