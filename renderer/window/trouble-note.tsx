import { useBench } from '../parts/index.ts';
import { troublesOf } from '../stores/index.ts';
import { troubleWords } from '../words/index.ts';

/** What is wrong with the advice or the record of the run under way; it stands for as long as it is so. */
export function TroubleNote() {
  const recording = useBench((bench) => bench.recording);
  return troublesOf(recording).map((trouble) => (
    <p key={trouble.kind} className="trouble-note" role="alert">
      {troubleWords(trouble)}
    </p>
  ));
}
