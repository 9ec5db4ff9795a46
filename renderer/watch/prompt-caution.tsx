import { type Alarm, alarmCatalogue, cautionOf } from '#shared-core';

/** How the act of a prompt is done without being hurt, in the words of the cautions. */
export function PromptCaution({ alarm }: { readonly alarm: Alarm }) {
  const { caution } = alarmCatalogue[alarm];
  return caution && <p className="prompt-because">{cautionOf(caution).because}</p>;
}
