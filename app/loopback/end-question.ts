export interface EndQuestionDeps {
  readonly isRecording: () => boolean;
  /** Somebody sits at the terminal; scripts and services managers can't be asked. */
  readonly isPersonThere: boolean;
  readonly say: (line: string) => void;
  readonly nowMs: () => number;
}

/** How long the question stands. */
const answerWithinMs = 10_000;

/** No run ends without a yes: the first Ctrl+C in mid-run asks, a second within ten seconds is the yes. */
export function createEndQuestion(deps: EndQuestionDeps): () => boolean {
  const { isRecording, isPersonThere, say, nowMs } = deps;
  let askedMs = Number.NEGATIVE_INFINITY;
  return () => {
    if (!isPersonThere || !isRecording() || nowMs() - askedMs < answerWithinMs) return false;
    askedMs = nowMs();
    say(
      'A run is being recorded, and it goes on. To end it and stop the program, press Ctrl+C again.',
    );
    return true;
  };
}
