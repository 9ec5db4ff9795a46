/** German of the room `warmth`. */
export const warmth: Readonly<Record<string, string>> = {
  'A simulated still is connected: stop the rehearsal and connect the probe that hangs in the ferment, in Prepare.':
    'Eine simulierte Apparatur ist verbunden: Probelauf beenden und unter „Vorbereiten“ die Sonde verbinden, die im Gäransatz hängt.',
  'Connect the probe that hangs in the ferment, in Prepare: the same one that will hang in the still.':
    'Unter „Vorbereiten“ die Sonde verbinden, die im Gäransatz hängt: dieselbe, die später in der Apparatur hängen wird.',
  'Keep it warm under watch': 'Warmhalten und überwachen',
  'Which one hangs in the ferment?': 'Welche hängt im Gäransatz?',
  '{channel}, now {quantity}': '{channel}, jetzt {quantity}',
  'Set-point of the warmer': 'Sollwert der Heizung',
  'Call me below': 'Melden unter',
  'Call me above': 'Melden über',
  'A minute’s mean is kept each minute, for as long as this computer is on; after a restart the watch goes on by itself. It warns; it switches nothing.':
    'Jede Minute wird deren Mittelwert gespeichert, solange dieser Computer läuft; nach einem Neustart geht die Überwachung von selbst weiter. Sie warnt; sie schaltet nichts.',
  'Keep watch': 'Überwachen',
  Seen: 'Gesehen',
  'Kept warm': 'Warmgehalten',
  'The run under way has its probe: the watch goes on when that ends.':
    'Der laufende Versuch hat seine Sonde: Die Überwachung geht weiter, wenn er endet.',
  'What is heard of it can’t be put on the disk just now; it waits. Make room, or look for another program that has the runs’ folder.':
    'Was die Sonde meldet, lässt sich gerade nicht auf die Platte schreiben; es wartet. Platz schaffen, oder nach einem anderen Programm sehen, das den Ordner der Versuche belegt.',
  'Change band or channel': 'Bereich oder Kanal ändern',
  'End the watch': 'Überwachung beenden',
  'Nothing has been heard of it yet.': 'Noch hat die Sonde nichts gemeldet.',
  '{temperature} at {time}.': '{temperature} um {time}.',
  '{temperature} at {time}, steady.': '{temperature} um {time}, gleichbleibend.',
  '{temperature} at {time}, warming by {rate} an hour.':
    '{temperature} um {time}, steigt um {rate} je Stunde.',
  '{temperature} at {time}, cooling by {rate} an hour.':
    '{temperature} um {time}, sinkt um {rate} je Stunde.',
  '{title}: {name}, since {since}.': '{title}: {name}, seit {since}.',
  'It still warms up: the warmer may be stuck on.':
    'Die Temperatur steigt weiter: Die Heizung hängt vielleicht.',
  'It still cools: the warmer may be off.':
    'Die Temperatur sinkt weiter: Die Heizung ist vielleicht aus.',
  'By the channel “{channel}”, set-point {aim}, called below {low} and above {high}.':
    'Über den Kanal „{channel}“, Sollwert {aim}, gemeldet unter {low} und über {high}.',
  '{low} to {high}, mean {mean}': '{low} bis {high}, im Mittel {mean}',
  '{hours} below the band, coldest at {coldestAt}':
    '{hours} unter dem Bereich, am kältesten um {coldestAt}',
  '{hours} above it, hottest at {hottestAt}': '{hours} darüber, am wärmsten um {hottestAt}',
  'heard for {hours}': '{hours} lang gemessen',
};
