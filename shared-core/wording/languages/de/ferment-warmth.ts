/** German of the room `ferment-warmth`. */
export const fermentWarmth: Readonly<Record<string, string>> = {
  'Ferment far too hot': 'Gäransatz viel zu heiß',
  'Yeast dies within hours, and the ferment stays stuck.':
    'Hefe stirbt in Stunden ab, und die Gärung bleibt stecken.',
  'Switch the warmer off and let the vessel cool in the air, its air lock open.':
    'Heizung ausschalten und das Gefäß an der Luft abkühlen lassen, Gärröhrchen offen.',
  'Ferment too warm': 'Gäransatz zu warm',
  'It foams more, and a ferment that was too hot tends to get stuck.':
    'Er schäumt stärker, und eine zu heiß geführte Gärung bleibt leicht stecken.',
  'Turn the warmer down, or off until it has cooled.':
    'Heizung niedriger stellen oder ausschalten, bis er abgekühlt ist.',
  'Ferment too cold': 'Gäransatz zu kalt',
  'It slows down and may not be done by the lesson.':
    'Die Gärung wird langsamer und ist bis zur Stunde vielleicht nicht fertig.',
  'See whether the warmer is on, and wrap the vessel; leave its air lock open.':
    'Nachsehen, ob die Heizung an ist, und das Gefäß einpacken; das Gärröhrchen offen lassen.',
  'Ferment not heard': 'Gäransatz nicht gemessen',
  'Nobody watches how warm it is.': 'Niemand überwacht, wie warm er ist.',
  'See to the plug of the probe and to this computer.':
    'Nach dem Stecker der Sonde und nach diesem Computer sehen.',
};
