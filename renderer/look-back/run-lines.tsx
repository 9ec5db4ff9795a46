import { measuredWords, type RunSummary, say } from '#shared-core';
import {
  clockWords,
  dateWords,
  durationWords,
  RunRemarks,
  signs,
  unreadableWords,
  useWords,
} from '../words/index.ts';

/** What a run of the library was, in a few lines. */
export function RunLines({ run }: { readonly run: RunSummary }) {
  const words = useWords();
  if (run.unreadable !== null) {
    return (
      <>
        <h2 className="run-name">{run.name}</h2>
        <p className="soft number">{dateWords(run.startedAtIso)}</p>
        <p className="run-damage">
          {signs.problem} {unreadableWords(run.unreadable, run.runId)}
        </p>
      </>
    );
  }
  // Taken in without times: neither a duration nor a plateau could be told of it.
  const isTable = run.imported === true && run.durationS === 0;
  return (
    <>
      <h2 className="run-name">{run.name}</h2>
      <p className="soft number">{joined(factsOf(run, isTable))}</p>
      {!isTable && (
        <p className="number">
          {joined([
            run.plateau === null
              ? say('No plateau')
              : say('Plateau at {plateau}', {
                  plateau: words.said(measuredWords(run.plateau, '°C')),
                }),
            run.heatOffCalledS !== null &&
              say('heat-off prompt at {time}', { time: clockWords(run.heatOffCalledS) }),
          ])}
        </p>
      )}
      <RunRemarks run={run} />
      {run.notes !== '' && <p className="run-notes">{run.notes}</p>}
    </>
  );
}

type Fact = string | false;

const joined = (facts: readonly Fact[]): string =>
  facts.filter((fact) => fact !== false).join(' · ');

function factsOf(run: RunSummary, isTable: boolean): readonly Fact[] {
  return [
    dateWords(run.startedAtIso),
    isTable ? say('a table by volume, without times') : durationWords(run.durationS),
    run.rehearsal && say('rehearsal'),
    run.imported === true && say('imported'),
    run.ended === 'cut-off' &&
      (run.unsure ? say('cut off') : say('cut off, saved up to its last second')),
    run.unsure === true && say('perhaps not all on the disk yet'),
    run.ended === 'recording' && say('being recorded'),
  ];
}
