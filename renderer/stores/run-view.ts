import type {
  Mark,
  RunInput,
  RunSettings,
  Series,
  Snapshot,
  StageSpan,
  Verdicts,
} from '#shared-core';

/** Where the run in view comes from. Live, replay and what-if are shown by the same parts. */
export type RunOrigin = 'live' | 'replay' | 'what-if';

/** The readings of one channel that can be drawn. */
export interface ChannelTrack {
  readonly series: Series;
}

/** A stretch without a probe. */
export interface LinkGap {
  readonly fromS: number;
  readonly toS: number | null;
  readonly reason: string;
  /** The computer's clock was set while the program was closed: the gap is longer than drawn, by nobody knows how much. */
  readonly isLonger?: boolean;
}

/** Everything Watch draws of one run, at one moment of it. */
export interface RunView {
  readonly origin: RunOrigin;
  readonly runId: string;
  readonly name: string;
  readonly startedAtIso: string | null;
  readonly settings: RunSettings;
  /** Inputs seen so far: the index of the next one expected. */
  readonly inputCount: number;
  readonly lastInputS: number;
  readonly tracks: Readonly<Record<string, ChannelTrack>>;
  /** As recorded, withdrawals included. */
  readonly marks: readonly Mark[];
  /** Readings of the head that are kept but not believed, such as a sensor's value at power-on. */
  readonly doubtful: Series;
  readonly gaps: readonly LinkGap[];
  readonly snapshot: Snapshot | null;
  readonly stages: readonly StageSpan[];
  /** How strong the monitor has told the head's vapour to be so far, minute by minute. */
  readonly estimates: Verdicts['estimates'];
  readonly endedS: number | null;
}

export interface RunIdentity {
  readonly origin: RunOrigin;
  /** Taken in from a file of another logger. */
  readonly isImported?: boolean;
  readonly runId: string;
  readonly name: string;
  readonly startedAtIso: string | null;
  readonly settings: RunSettings;
}

export type RunViewEvent =
  | { readonly type: 'opened'; readonly run: RunIdentity }
  | { readonly type: 'closed' }
  | RunNews;

/** What is told of one run. A view takes only what is told of its own. */
export type RunNews = { readonly runId: string } & (
  | { readonly type: 'inputs'; readonly inputs: readonly RunInput[] }
  | { readonly type: 'snapshot'; readonly snapshot: Snapshot }
  /** Stages that passed before this window looked. */
  | { readonly type: 'stages-known'; readonly stages: readonly StageSpan[] }
  | { readonly type: 'estimates-known'; readonly estimates: Verdicts['estimates'] }
  | { readonly type: 'ended'; readonly timeS: number }
);
