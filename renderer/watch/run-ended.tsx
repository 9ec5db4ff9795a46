import { Button } from '../design/index.ts';
import { exportRun } from '../look-back/export-run.ts';
import { isViewer } from '../stores/index.ts';
import { goTo } from '../window/place.ts';
import { useBench, usePreferences, useWindowParts } from '../window/use-stores.ts';

/** What comes after a run: its readings as a table with one press, and all the rest in the library. */
export function RunEnded({ runId }: { readonly runId: string }) {
  const { service, bench } = useWindowParts();
  const onlyWatches = useBench(isViewer);
  const format = usePreferences(({ decimal }) => (decimal === ',' ? 'csv-semicolon' : 'csv'));
  return (
    <p className="watch-ended">
      The run is in the library.{' '}
      <Button weight="main" onClick={() => goTo('look-back')}>
        Look back
      </Button>{' '}
      {!onlyWatches && (
        <Button onClick={() => void exportRun(service, bench, runId, format)}>Export CSV</Button>
      )}
    </p>
  );
}
