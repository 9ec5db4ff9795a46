import type { RequestAnswer, RequestBody, SetUp } from '#shared-core';
import { useBench, usePreferences, usePrepare, useWindowParts } from '../parts/index.ts';
import { draftFromSetUp } from './draft-from-set-up.ts';
import { setUpFromDraft } from './set-up-from-draft.ts';

type RigRequestName = 'rigs/list' | 'rigs/keep' | 'rigs/forget';

/** The kept set-ups, and what can be done with them. */
export function useRigs() {
  const { bench, commands } = useWindowParts();
  const rigs = useBench((state) => state.rigs);
  const draft = usePrepare((state) => state.draft);
  const replace = usePrepare((state) => state.replace);
  const decimal = usePreferences((preferences) => preferences.decimal);

  const ask = async <N extends RigRequestName>(
    name: N,
    body: RequestBody<N>,
  ): Promise<RequestAnswer<'rigs/list'> | null> => {
    const known: RequestAnswer<'rigs/list'> | null = await commands.ask(name, body);
    if (known !== null) bench.getState().dispatch({ type: 'rigs', rigs: known });
    return known;
  };

  const fill = async (setUp: SetUp | undefined) => {
    if (setUp === undefined) return;
    replace(draftFromSetUp(setUp, draft, decimal));
    const { source } = setUp;
    const { probe } = bench.getState();
    // A board that is being heard would be reset by opening its port once more.
    const isHeard =
      probe?.state === 'hearing' && JSON.stringify(probe.source) === JSON.stringify(source);
    if (source !== null && !isHeard) await commands.connect(source);
  };

  return {
    rigs,
    /** Its probe is looked for anew: it may have been plugged in since the list was told. */
    fillAsLastTime: async () => fill((await ask('rigs/list', {}))?.last?.setUp),
    fillAs: async (name: string) => {
      const known = await ask('rigs/list', {});
      await fill(known?.rigs.find((rig) => rig.name === name)?.setUp);
    },
    keep: async (name: string | null): Promise<boolean> => {
      const setUp = setUpFromDraft(draft, bench.getState().probe?.source ?? null);
      return setUp.ok && (await ask('rigs/keep', { name, setUp: setUp.value })) !== null;
    },
    forget: (name: string) => ask('rigs/forget', { name }),
    refresh: () => ask('rigs/list', {}),
  };
}
