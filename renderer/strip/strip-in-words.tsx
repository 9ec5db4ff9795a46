import { say, stageLabels, told } from '#shared-core';
import { benchMarks, type RunView } from '../stores/index.ts';
import { useWords } from '../words/index.ts';

/** What the strip draws, for people who hear it: stages and marks with their times. */
export function StripInWords({ view }: { readonly view: RunView }) {
  const words = useWords();
  const spanWords = (stage: string, from: string, toS: number | null): string => {
    if (toS !== null)
      return say('{stage} from {from} to {to}', { stage, from, to: words.clock(toS) });
    return view.endedS === null
      ? say('{stage} from {from}, lasting', { stage, from })
      : say('{stage} from {from} to the end', { stage, from });
  };
  return (
    <div className="unseen">
      <h2>{say('The run so far')}</h2>
      <ul>
        {view.stages.map(({ stage, fromS, toS }) => (
          <li key={`${stage}-${fromS}`}>
            {spanWords(told(stageLabels[stage]), words.clock(fromS), toS)}
          </li>
        ))}
        {benchMarks(view.marks).map(({ markId, timeS, mark }) => (
          <li key={`mark-${markId}`}>
            {words.clock(timeS)}: {words.mark(mark)}
          </li>
        ))}
        {view.doubtful.length > 0 && (
          <li>
            {say(
              '{count, plural, one {{shown} reading} other {{shown} readings}} of the head kept but not believed',
              { count: view.doubtful.length, shown: words.count(view.doubtful.length) },
            )}
          </li>
        )}
      </ul>
    </div>
  );
}
