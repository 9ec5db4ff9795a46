import { useEffect, useState } from 'react';
import { type StepId, stepElementId, stepIds } from './steps.ts';

/** A step is the one in view once its heading is above this share of the window's height. */
const headingAbove = 0.45;

/** The step that fills the screen, however one came there. */
export function useStepInView(): StepId {
  const [step, setStep] = useState<StepId>('probe');
  useEffect(() => {
    const look = () => setStep(stepInView());
    const options = { capture: true, passive: true } as const;
    // Whichever element scrolls: on low screens it is the whole window.
    document.addEventListener('scroll', look, options);
    window.addEventListener('resize', look);
    look();
    return () => {
      document.removeEventListener('scroll', look, options);
      window.removeEventListener('resize', look);
    };
  }, []);
  return step;
}

function stepInView(): StepId {
  const limitPx = headingAbove * window.innerHeight;
  const begun = stepIds.filter((step) => {
    const element = document.getElementById(stepElementId(step));
    return element !== null && element.getBoundingClientRect().top < limitPx;
  });
  return begun.at(-1) ?? stepIds[0];
}
