import { say } from '#shared-core';
import { CautionsDialog } from '../cautions/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { isRunUnderWay, mayCommand } from '../stores/index.ts';

/**
 * The cautions, opened by themselves once, for whoever is at the bench for the first time. That no run was had here is known by the
 * program, once it could look; what this window keeps itself is lost with its address. Nothing opens above a run.
 */
export function FirstCautions() {
  const isAtBench = useBench(mayCommand);
  const isFirstTime = useBench(({ rigs }) => rigs !== null && rigs.last === null);
  const isUnderWay = useBench(isRunUnderWay);
  const { welcomed, set } = usePreferences((preferences) => preferences);
  if (!isAtBench || welcomed || !isFirstTime || isUnderWay) return null;
  return <CautionsDialog closeWords={say('Go on')} onClose={() => set({ welcomed: true })} />;
}
