import { say } from '#shared-core';
import { CautionsDialog } from '../cautions/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';

/**
 * The cautions, opened by themselves once, for whoever is at the bench for the first time. That a run was had here is known by the
 * program; what this window keeps itself is lost with its address.
 */
export function FirstCautions() {
  const isAtBench = useBench(mayCommand);
  const hasHadRun = useBench(({ rigs }) => rigs?.last != null);
  const { welcomed, set } = usePreferences((preferences) => preferences);
  if (!isAtBench || welcomed || hasHadRun) return null;
  return <CautionsDialog closeWords={say('Go on')} onClose={() => set({ welcomed: true })} />;
}
