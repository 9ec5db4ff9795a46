import { cautionOf, type LessonScript, say, told } from '#shared-core';

/** Something to begin with, for a class that has seen no still before; the teacher writes over it. */
export const defaultScript: LessonScript = {
  'warm-up': {
    show: say(
      'Where the bulb of the probe hangs, and the wet ring that climbs the column as vapour warms the glass.',
    ),
    ask: say(
      'The pot boils long before the head gets warm. Why does the head stay cold for so long?',
    ),
    predict: say(
      'At what temperature will the head stop climbing? Everybody writes a number down.',
    ),
  },
  'first-fraction': {
    show: say(
      'The jump of the line as vapour reaches the bulb, and the first drops, which are kept apart.',
    ),
    ask: say(
      'Something in the ferment boils lower than ethanol. Why does the thermometer hardly show it?',
    ),
    predict: say('Will the line hold now or creep on? Everybody draws how it goes on.'),
  },
  'main-fraction': {
    show: say(
      'The line stays level while heat goes in all the time; liquid runs back down the column.',
    ),
    ask: say(
      'Where does the heat go, if the head gets no hotter? Why does no column take the last of the water out?',
    ),
    predict: say('When must the heat go off? Compare your time with the fan on the screen.'),
  },
  tail: {
    show: say(
      'The line leaves where it held. The heat comes off, and what still drips goes into another receiver.',
    ),
    ask: say('What does a hotter head say about what is coming over?'),
    predict: say('Where would the line end if nobody took the heat off?'),
  },
  'cool-down': {
    show: say('The line falls as the vapour draws back. {act}', {
      act: told(cautionOf('hot-glass').act),
    }),
    ask: say('How much of the ethanol is in the receiver? What must be measured to know it?'),
    predict: say(
      'How strong is what was collected? Everybody writes a number down before it is measured.',
    ),
  },
};
