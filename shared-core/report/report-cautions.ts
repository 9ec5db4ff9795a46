/** What has to stand in every report. */
export const reportCautions: readonly string[] = [
  'This program advises and controls nothing. It is no safety device.',
  'Nobody drinks the distillate: it comes from laboratory glass, and the first fraction holds the most volatile, most harmful part.',
  'Strength from the head temperature is an estimate for ethanol and water alone. It says nothing about methanol or other volatiles.',
  'Ethanol vapour is heavier than air and burns. Distillate is stored closed, labelled, away from heat.',
];
