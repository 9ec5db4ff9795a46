import { type ReactNode, useId } from 'react';

interface FigureFrameProps {
  readonly title: string;
  /** What the class sees, in a sentence. */
  readonly sentence: string;
  readonly drawing: ReactNode;
  /** What stands below the drawing. */
  readonly children: ReactNode;
}

/** A diagram with its name above and its plain sentence below. */
export function FigureFrame({ title, sentence, drawing, children }: FigureFrameProps) {
  const id = useId();
  return (
    <section className="figure" aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      <p className="figure-sentence">{sentence}</p>
      {drawing}
      <div>{children}</div>
    </section>
  );
}
