import { stageLabels } from '#shared-core';
import { benchMarks, type RunView } from '../stores/index.ts';
import { counted, useWords } from '../words/index.ts';

/** What the strip draws, for people who hear it: stages and marks with their times. */
export function StripInWords({ view }: { readonly view: RunView }) {
  const words = useWords();
  const still = view.endedS === null ? ', lasting' : ' to the end';
  return (
    <div className="unseen">
      <h2>The run so far</h2>
      <ul>
        {view.stages.map(({ stage, fromS, toS }) => (
          <li key={`${stage}-${fromS}`}>
            {stageLabels[stage]} from {words.clock(fromS)}
            {toS === null ? still : ` to ${words.clock(toS)}`}
          </li>
        ))}
        {benchMarks(view.marks).map(({ markId, timeS, mark }) => (
          <li key={`mark-${markId}`}>
            {words.clock(timeS)}: {words.mark(mark)}
          </li>
        ))}
        {view.doubtful.length > 0 && (
          <li>
            {counted(words.count(view.doubtful.length), 'reading')} of the head kept but not
            believed
          </li>
        )}
      </ul>
    </div>
  );
}
