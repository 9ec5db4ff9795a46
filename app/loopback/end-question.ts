export interface EndQuestionDeps {
  /** What ends with the program, in sentences; empty where nothing does. */
  readonly whatIsLost: () => string;
  /** Somebody sits at the terminal; scripts and services managers can't be asked. */
  readonly isPersonThere: boolean;
  readonly say: (line: string) => void;
  readonly nowMs: () => number;
}

/** How long the question stands. */
const answerWithinMs = 10_000;

/** No run ends without a yes, and none is lost without one: the first Ctrl+C asks, a second within ten seconds is the yes. */
export function createEndQuestion(deps: EndQuestionDeps): () => boolean {
  const { whatIsLost, isPersonThere, say, nowMs } = deps;
  let askedMs = Number.NEGATIVE_INFINITY;
  return () => {
    const lost = whatIsLost();
    if (!isPersonThere || lost === '' || nowMs() - askedMs < answerWithinMs) return false;
    askedMs = nowMs();
    say(`${lost} To end that and stop the program, press Ctrl+C again.`);
    return true;
  };
}
