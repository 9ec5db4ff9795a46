/** Plays the two calls of the window; silent where a browser gives no sound. */
export interface Chime {
  /** High priority: three rising pairs. Medium: one soft pair. */
  readonly play: (call: 'high' | 'medium') => void;
}

interface Tone {
  readonly startS: number;
  readonly lengthS: number;
  readonly hertz: number;
}

const calls: Readonly<Record<'high' | 'medium', readonly Tone[]>> = {
  high: [0, 0.5, 1].flatMap((startS) => [
    { startS, lengthS: 0.18, hertz: 660 },
    { startS: startS + 0.2, lengthS: 0.22, hertz: 880 },
  ]),
  medium: [
    { startS: 0, lengthS: 0.2, hertz: 520 },
    { startS: 0.24, lengthS: 0.3, hertz: 440 },
  ],
};

export function createChime(
  openContext: () => AudioContext,
  /** Browsers allow sound only once the person has pressed something in the window. */
  mayPlay: () => boolean,
): Chime {
  let context: AudioContext | null = null;
  return {
    play: (call) => {
      if (!mayPlay()) return;
      context ??= openContext();
      if (context.state === 'suspended') void context.resume();
      for (const tone of calls[call]) playTone(context, tone);
    },
  };
}

function playTone(context: AudioContext, { startS, lengthS, hertz }: Tone): void {
  const at = context.currentTime + 0.02 + startS;
  const source = context.createOscillator();
  const level = context.createGain();
  source.type = 'triangle';
  source.frequency.value = hertz;
  level.gain.setValueAtTime(0, at);
  level.gain.linearRampToValueAtTime(0.5, at + 0.02);
  level.gain.setValueAtTime(0.5, at + lengthS - 0.05);
  level.gain.linearRampToValueAtTime(0, at + lengthS);
  source.connect(level).connect(context.destination);
  source.start(at);
  source.stop(at + lengthS + 0.05);
}
