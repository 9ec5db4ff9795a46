import { cautionOf, type LessonScript } from '#shared-core';

/** Something to begin with, for a class that has seen no still before; the teacher writes over it. */
export const defaultScript: LessonScript = {
  'warm-up': {
    show: 'Where the bulb of the probe hangs, and the wet ring that climbs the column as vapour warms the glass.',
    ask: 'The pot boils long before the head gets warm. Why does the head stay cold for so long?',
    predict: 'At what temperature will the head stop climbing? Everybody writes a number down.',
  },
  'first-fraction': {
    show: 'The jump of the line as vapour reaches the bulb, and the first drops, which are kept apart.',
    ask: 'Something in the ferment boils lower than ethanol. Why does the thermometer hardly show it?',
    predict: 'Will the line hold now or creep on? Everybody draws how it goes on.',
  },
  'main-fraction': {
    show: 'The line stays level while heat goes in all the time; liquid runs back down the column.',
    ask: 'Where does the heat go, if the head gets no hotter? Why does no column take the last of the water out?',
    predict: 'When must the heat go off? Compare your time with the fan on the screen.',
  },
  tail: {
    show: 'The line leaves where it held. The heat comes off, and what still drips goes into another receiver.',
    ask: 'What does a hotter head say about what is coming over?',
    predict: 'Where would the line end if nobody took the heat off?',
  },
  'cool-down': {
    show: `The line falls as the vapour draws back. ${cautionOf('hot-glass').act}`,
    ask: 'How much of the ethanol is in the receiver? What must be measured to know it?',
    predict:
      'How strong is what was collected? Everybody writes a number down before it is measured.',
  },
};
