/** Why an alarm stands, in words with numbers, built when it is first needed. */
export interface AlarmReason {
  readonly because: string;
  readonly wouldChangeIf: string;
  /** What to do instead of the alarm's own act, where the reason asks for something else. */
  readonly act?: string;
}

/** What an alarm stands for at one second, where it stands for several things in turn. */
export interface AlarmOccurrence {
  /** An alarm that stands takes the reason it has by now whenever this becomes another, without calling again. */
  readonly key: string;
  /** What has come back before anybody answered is the alarm it was: it stands again and is not raised anew. */
  readonly isRepeat: boolean;
}
