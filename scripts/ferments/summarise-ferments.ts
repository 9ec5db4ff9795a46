import { quantile } from '../measuring/quantile.ts';
import { type FermentKind, fermentKinds } from './draw-ferment.ts';
import type { FermentScore } from './score-ferment.ts';

/** What many ferments come to. */
export interface FermentSummary {
  readonly ferments: number;
  readonly finishedTooEarly: number;
  readonly stuck: number;
  readonly stuckToldPercent: number;
  readonly strengthCoveredPercent: number;
  readonly finishCoveredPercent: number;
  readonly falselyStuck: number;
  readonly stuckAtEnd: number;
  readonly ended: number;
  readonly finishedSaid: number;
  /** Hours from the true end to "finished", the middle ferment and the ninth of ten. */
  readonly finishedAfterH: readonly [number, number];
  readonly finishWidth: number;
  readonly strengthError: number;
}

export function summarise(scores: readonly FermentScore[]): FermentSummary {
  const percent = (flags: readonly boolean[]) =>
    (100 * flags.filter(Boolean).length) / Math.max(1, flags.length);
  const stuck = scores.map(({ stuckTold }) => stuckTold).filter((told) => told !== null);
  const ended = scores.filter((score) => score.ended && score.stuckTold === null);
  const after = ended.map(({ finishedAfterH }) => finishedAfterH).filter((hours) => hours !== null);
  return {
    ferments: scores.length,
    finishedTooEarly: scores.filter(({ finishedTooEarly }) => finishedTooEarly).length,
    stuck: stuck.length,
    stuckToldPercent: percent(stuck),
    strengthCoveredPercent: percent(scores.flatMap(({ strengths }) => strengths)),
    finishCoveredPercent: percent(scores.flatMap(({ finishes }) => finishes)),
    falselyStuck: scores.filter(({ falselyStuck }) => falselyStuck).length,
    stuckAtEnd: scores.filter(({ stuckAtEnd }) => stuckAtEnd).length,
    ended: ended.length,
    finishedSaid: after.length,
    finishedAfterH: [quantile(after, 0.5), quantile(after, 0.9)],
    finishWidth: quantile(
      scores.flatMap(({ finishWidths }) => finishWidths),
      0.5,
    ),
    strengthError: quantile(
      scores.flatMap(({ strengthErrors }) => strengthErrors.map(Math.abs)),
      0.5,
    ),
  };
}

export function summariseFerments(scores: readonly FermentScore[]): readonly string[] {
  const line = (name: string, of: readonly FermentScore[]) => {
    const sum = summarise(of);
    const [middle, ninth] = sum.finishedAfterH;
    return `${name}: ${sum.ferments} ferments, "finished" too early in ${sum.finishedTooEarly}; stuck ${sum.stuck}, told in two days ${sum.stuckToldPercent.toFixed(0)} %; falsely stuck ${sum.falselyStuck}, stuck said at the end ${sum.stuckAtEnd}; strength covered ${sum.strengthCoveredPercent.toFixed(1)} % (off by ${sum.strengthError.toFixed(2)} % vol); finish covered ${sum.finishCoveredPercent.toFixed(1)} % (width ${sum.finishWidth.toFixed(1)} of what is left); ended ${sum.ended}, said ${sum.finishedSaid}, after ${middle.toFixed(0)} h (ninth of ten ${ninth.toFixed(0)} h)`;
  };
  return [
    ...fermentKinds
      .map((kind: FermentKind) => [kind, scores.filter((score) => score.kind === kind)] as const)
      .filter(([, of]) => of.length > 0)
      .map(([kind, of]) => line(kind, of)),
    line('all', scores),
  ];
}
