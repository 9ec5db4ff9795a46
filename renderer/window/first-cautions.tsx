import { mayCommand } from '../stores/index.ts';
import { CautionsDialog } from './cautions-dialog.tsx';
import { useBench, usePreferences } from './use-stores.ts';

/** The cautions, opened by themselves once, for whoever is at the bench with this window for the first time. */
export function FirstCautions() {
  const isAtBench = useBench(mayCommand);
  const { welcomed, set } = usePreferences((preferences) => preferences);
  if (!isAtBench || welcomed) return null;
  return <CautionsDialog onClose={() => set({ welcomed: true })} />;
}
