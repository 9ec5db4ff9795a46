import { type Alarm, alarmCatalogue, cautionOf, told } from '#shared-core';

/** How the act of a prompt is done without being hurt, in the words of the cautions. */
export function PromptCaution({ alarm }: { readonly alarm: Alarm }) {
  const { caution } = alarmCatalogue[alarm];
  return caution && <p className="prompt-because">{told(cautionOf(caution).because)}</p>;
}
