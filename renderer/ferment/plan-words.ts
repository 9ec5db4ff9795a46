import { assertNever, type FermentPlan, frothRoomPercent, say } from '#shared-core';

/** What a warning says and what to do. */
export function fermentWarningWords(warning: FermentPlan['warnings'][number]): string {
  switch (warning) {
    case 'no-sugar':
      return say('There is no sugar in it yet.');
    case 'too-sweet':
      return say(
        'Too sweet: the yeast gives up with sugar left, or does not begin. Use less sugar or more water.',
      );
    case 'too-weak':
      return say(
        'Too weak for this column: the plateau would not reach the least strength you want. Add sugar, or use more plates.',
      );
    case 'perhaps-too-weak':
      return say(
        'Perhaps too weak for this column to give a plateau of the least strength you want. Add sugar to be sure.',
      );
    case 'too-full':
      return say(
        'Too full: froth needs {frothRoomPercent} % of the vessel. Use a larger one, or make less.',
        { frothRoomPercent },
      );
    case 'table-too-wide':
      return say(
        'The table of this fruit is too wide to trust: press the juice and measure its gravity.',
      );
    default:
      return assertNever(warning);
  }
}
