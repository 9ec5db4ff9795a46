import type { LimitScale } from '../situation/limit-scale.ts';
import { statedPressureSdK, statedScaleSdK } from '../situation/scale-belief.ts';

/** What probe and air pressure leave open of the head's offset by what was stated alone. */
export interface StatedDoubts {
  /** All of it [K]. */
  readonly statedSdK: number;
  /** What the air pressure leaves open [K]. */
  readonly pressureSdK: number;
}

/** They are asked for several times a second, and change where somebody or something tells of another air pressure or limit. */
export function createStatedDoubts(limitScale: LimitScale): () => StatedDoubts {
  let settings = limitScale.settings();
  let scale = limitScale.scale();
  const reckon = (): StatedDoubts => ({
    statedSdK: statedScaleSdK(settings, scale),
    pressureSdK: statedPressureSdK(settings, scale),
  });
  let doubts = reckon();

  return () => {
    if (settings === limitScale.settings() && scale === limitScale.scale()) return doubts;
    settings = limitScale.settings();
    scale = limitScale.scale();
    doubts = reckon();
    return doubts;
  };
}
