/** German of the room `monitor`. */
export const monitor: Readonly<Record<string, string>> = {
  'The run begins with the warm-up.': 'Der Versuch beginnt mit dem Aufheizen.',
  'The air-pressure channel shows {shown} kPa, and the limit is reckoned by {reckoned} kPa. Read a barometer in this room and enter what it shows.':
    'Der Kanal für den Luftdruck zeigt {shown} kPa, und die Grenze ist mit {reckoned} kPa gerechnet. Ein Barometer in diesem Raum ablesen und eintragen, was es zeigt.',
  'The channel {channel} has sent nothing since {last}; what hangs on it is left out. Check its probe and cable.':
    'Der Kanal {channel} hat seit {last} nichts gesendet; was davon abhängt, entfällt. Seine Sonde und sein Kabel prüfen.',
  'Since {since} another probe is read than the one that the run began with. What that one had shown of itself, and its calibration, say little of this one: strengths are told with more doubt. Look whether it hangs level with the side arm.':
    'Seit {since} wird eine andere Sonde gelesen als die, mit der der Lauf begann. Was jene von sich gezeigt hatte, und ihre Kalibrierung, sagt wenig über diese: Stärken werden mit mehr Zweifel angegeben. Nachsehen, ob sie auf Höhe des Seitenarms hängt.',
  '{fault}; staging waited.': '{fault}; die Einteilung in Abschnitte wartete.',
  '{fault}.': '{fault}.',
  'the probe is disconnected': 'die Sonde ist getrennt',
  'the probe sends nothing': 'die Sonde sendet nichts',
  'the probe reports an open circuit or an impossible value':
    'die Sonde meldet eine Unterbrechung oder einen unmöglichen Wert',
  'the part of the program that reads the probe stopped and is being started again':
    'der Teil des Programms, der die Sonde liest, ist stehen geblieben und wird neu gestartet',
  'the program was closed and heard nothing': 'das Programm war geschlossen und hat nichts gehört',
  'readings jump back and forth faster than a bulb can follow':
    'die Werte springen schneller hin und her, als ein Fühler folgen kann',
  'the reading jumped faster than vapour can change, as when a probe slips':
    'der Wert sprang schneller, als Dampf sich ändern kann, wie bei einer verrutschten Sonde',
  'the reading has stopped changing altogether, even in its last digit':
    'der Wert ändert sich gar nicht mehr, nicht einmal in der letzten Stelle',
  'the reading is above the boiling point of water at this pressure':
    'der Wert liegt über dem Siedepunkt von Wasser bei diesem Druck',
  'the head reads hotter than the pot that feeds it':
    'der Kopf zeigt mehr an als der Kolben, der ihn speist',
  'it rests below the lowest boiling point at this air pressure':
    'er ruht unter dem tiefsten Siedepunkt bei diesem Luftdruck',
  'The bulb rose steeply to {at}; vapour at {pressure} kPa is at least {azeotrope}.':
    'Der Fühler stieg steil auf {at}; Dampf hat bei {pressure} kPa mindestens {azeotrope}.',
  '{firstFraction} are set apart{estimated}: a convention, since light volatiles are too little to be seen by temperature.':
    '{firstFraction} sind beiseitegestellt{estimated}: eine Vereinbarung, denn leichtflüchtige Stoffe sind zu wenig, um sie an der Temperatur zu sehen.',
  ' (estimated)': ' (geschätzt)',
  'The head fell to {at}, as it does only when no vapour reaches the bulb: the heat was taken away, or a draught cools the column.':
    'Der Kopf fiel auf {at}, wie nur dann, wenn kein Dampf den Fühler erreicht: die Wärme wurde weggenommen, oder Zugluft kühlt die Kolonne.',
  'The head is back at {at}.': 'Der Kopf ist zurück bei {at}.',
  ', {against} the {level} it held': ', {against} den {level}, die er hielt',
  'The head is at {at}{stands}: it climbs more than noise explains. The limit is {limitOnProbe} on this probe.':
    'Der Kopf steht bei {at}{stands}: er steigt stärker, als Rauschen erklärt. Die Grenze liegt auf dieser Sonde bei {limitOnProbe}.',
  '{done} of {wanted} {unit}': '{done} von {wanted} {unit}',
  drops: 'Tropfen',
  'Read the volume to narrow this by {percent} %.':
    'Die Menge ablesen: das macht den Bereich um {percent} % enger.',
  'the range is wider for it': 'der Bereich ist dafür weiter',
  'no end is told until it does': 'solange wird kein Ende genannt',
  'This still does not behave as the model expects: {why}; {follows}. Go by the head.':
    'Diese Apparatur verhält sich nicht, wie das Modell erwartet: {why}; {follows}. Nach dem Kopf richten.',
  'By the model the limit is passed, by the head it is not: no end is told. Go by the head.':
    'Nach dem Modell ist die Grenze überschritten, nach dem Kopf nicht: es wird kein Ende genannt. Nach dem Kopf richten.',
  'from one minute to the next the head is {kelvins} K off what was expected':
    'von einer Minute zur nächsten liegt der Kopf um {kelvins} K neben dem Erwarteten',
  'its head stands {kelvins} K higher than the model can explain, as over a column that still had full heat when vapour came, or by a probe that shows too much':
    'ihr Kopf steht {kelvins} K höher, als das Modell erklären kann, wie über einer Kolonne, die beim ersten Dampf noch volle Hitze hatte, oder bei einem Fühler, der zu viel zeigt',
  'its head stands {kelvins} K lower than the model can explain, as by a probe that shows too little or an air pressure that is lower than stated':
    'ihr Kopf steht {kelvins} K tiefer, als das Modell erklären kann, wie bei einem Fühler, der zu wenig zeigt, oder einem tieferen Luftdruck als angegeben',
  'after {after} of boiling the end lies {by} later than was expected then':
    'nach {after} Sieden liegt das Ende {by} später als damals erwartet',
  'after {after} of boiling the end lies {by} earlier than was expected then':
    'nach {after} Sieden liegt das Ende {by} früher als damals erwartet',
  'of a strength not known before the head comes to rest':
    'von noch unbekanntem Gehalt, bis der Kopf zur Ruhe kommt',
  'of unknown strength while no vapour reaches the bulb':
    'von unbekanntem Gehalt, solange kein Dampf den Fühler erreicht',
  'of a strength not known until the bulb has settled in the vapour again':
    'von noch unbekanntem Gehalt, bis der Fühler sich im Dampf wieder eingestellt hat',
  'of unknown strength while the bulb cools': 'von unbekanntem Gehalt, solange der Fühler abkühlt',
  'of a strength that changes too fast to tell':
    'von einem Gehalt, der sich zu schnell ändert, um ihn zu nennen',
  'of unknown strength while the probe is not trusted':
    'von unbekanntem Gehalt, solange der Sonde nicht zu trauen ist',
  'of {strength}': 'mit {strength}',
  'cooler than ethanol–water vapour can be': 'kühler, als Ethanol-Wasser-Dampf sein kann',
  'within {minutes} min': 'innerhalb von {minutes} min',
  'in about {low} to {high} min': 'in etwa {low} bis {high} min',
  'less than {leastTold} K': 'weniger als {leastTold} K',
  'hardly moving': 'bewegt sich kaum',
  'at no sure rate': 'bewegt sich, unsicher wie schnell',
  'rising {rate}': 'steigt mit {rate}',
  'falling {rate}': 'fällt mit {rate}',
  'over {nearlySure} %': 'über {nearlySure} %',
  'under {nearlyNever} %': 'unter {nearlyNever} %',
  'Confirm that you are at the still.': 'Bestätigen, dass jemand bei der Apparatur ist.',
  'The head is at {at}; it is too early to say more.':
    'Der Kopf steht bei {at}; für mehr ist es zu früh.',
  'Waiting for the first reading of the head.': 'Warten auf den ersten Wert vom Kopf.',
  'The head cannot be judged just now.': 'Der Kopf ist gerade nicht zu beurteilen.',
  'The head cannot be judged: {probeFault}.': 'Der Kopf ist nicht zu beurteilen: {probeFault}.',
  'Warming up: the head is at {at}, no vapour has reached it.':
    'Aufheizen: der Kopf steht bei {at}, kein Dampf hat ihn erreicht.',
  'Vapour is arriving at the head: {at}.': 'Dampf kommt am Kopf an: {at}.',
  'Vapour has left the thermometer: the head has sunk to {at}.':
    'Der Dampf hat das Thermometer verlassen: der Kopf ist auf {at} gesunken.',
  'Vapour is back at the thermometer: the head is settling at {at}.':
    'Der Dampf ist zurück am Thermometer: der Kopf stellt sich bei {at} ein.',
  'Vapour comes and goes at the thermometer, as with a flame taken away and put back: the head is at {at}.':
    'Dampf kommt und geht am Thermometer, wie bei einer Flamme, die weggenommen und zurückgestellt wird: der Kopf steht bei {at}.',
  'The first fraction begins; the head is settling at {at}.':
    'Der Vorlauf beginnt; der Kopf stellt sich bei {at} ein.',
  'The first fraction is coming over at {at}.': 'Der Vorlauf geht bei {at} über.',
  'The main fraction is coming over at {at}{strength}.':
    'Der Hauptlauf geht bei {at} über{strength}.',
  'The plateau is ending: the head is at {at}{leaving}.':
    'Das Plateau geht zu Ende: der Kopf steht bei {at}{leaving}.',
  'The tail is coming over at {at}{strength}.': 'Der Nachlauf geht bei {at} über{strength}.',
  'The heat is off; the head is at {at}.': 'Die Wärme ist weg; der Kopf steht bei {at}.',
  'The still is cooling down.': 'Die Apparatur kühlt ab.',
  ', cooler than ethanol–water vapour can be': ', kühler, als Ethanol-Wasser-Dampf sein kann',
  '; its strength has not settled yet': '; sein Gehalt steht noch nicht fest',
  ', {against} where it held': ', {against} dem gehaltenen Niveau',
  '{stands}; the limit comes {limitAhead}': '{stands}; die Grenze kommt {limitAhead}',
  'Ease the heat and watch the glass.': 'Wärme kleiner stellen und das Glas beobachten.',
  'See through the glass whether the bulb sits in the vapour at the side arm.':
    'Durch das Glas prüfen, ob der Fühler am Seitenrohr im Dampf sitzt.',
  'Stay at the still and have the next receiver ready.':
    'Bei der Apparatur bleiben und die nächste Vorlage bereithalten.',
  'See whether the pot still boils.': 'Nachsehen, ob der Kolben noch siedet.',
  'Keep the cooling water running until nothing drips.':
    'Das Kühlwasser laufen lassen, bis nichts mehr tropft.',
  'The heat is off, and the head has been below {cold} °C for over {time}.':
    'Die Wärme ist weg, und der Kopf ist seit über {time} kälter als {cold} °C.',
  'Is the run over? Once nothing drips, turn the water off and stop the recording.':
    'Ist der Versuch vorbei? Wenn nichts mehr tropft, das Wasser abstellen und die Aufzeichnung beenden.',
  'Make sure that the heat is off.': 'Sicherstellen, dass die Wärme weg ist.',
  'Collect what comes in the first {wanted} min apart.':
    'Getrennt auffangen, was in den ersten {wanted} min kommt.',
  'Collect the first {wanted} {unit} apart.': 'Die ersten {wanted} {unit} getrennt auffangen.',
  '{limit} % vol ({limitOnProbe} on this probe)': '{limit} % vol ({limitOnProbe} auf dieser Sonde)',
  'Staging waits: {probeFault}. The last sure stage is kept.':
    'Die Einteilung wartet: {probeFault}. Der letzte sichere Abschnitt bleibt stehen.',
  'No reading of the head has come yet.': 'Vom Kopf ist noch kein Wert gekommen.',
  'the azeotrope at {pressure} kPa, {azeotrope}': 'Azeotrop bei {pressure} kPa, {azeotrope}',
  'The head fell to {bulb}{held}: vapour has receded from the bulb for {time}.':
    'Der Kopf fiel auf {bulb}{held}: der Dampf ist seit {time} vom Fühler gewichen.',
  'The bulb is at {bulb}, {against} {azeotrope}; no vapour bathes it yet.':
    'Der Fühler steht bei {bulb}, {against} dem {azeotrope}; noch umspült ihn kein Dampf.',
  'Vapour has reached the bulb, which is at {bulb}, {against} {azeotrope}, and still warms up.':
    'Dampf hat den Fühler erreicht; er steht bei {bulb}, {against} dem {azeotrope}, und erwärmt sich noch.',
  'Vapour bathes the bulb at {bulb} ({azeotrope}); {soFar}':
    'Dampf umspült den Fühler bei {bulb} ({azeotrope}); {soFar}',
  'The head is at {at}, {against} the limit of {limit}, and {moving}: vapour {ofStrength}.':
    'Der Kopf steht bei {at}, {against} der Grenze von {limit}, und er {moving}: Dampf {ofStrength}.',
  'The head has passed the limit of {limit} before, and has not been below it for long. It is at {at} now: vapour {ofStrength}.':
    'Der Kopf hat die Grenze von {limit} schon überschritten und war seitdem nicht lange darunter. Er steht jetzt bei {at}: Dampf {ofStrength}.',
  'The head is at {at}; the vapour is weaker than the limit of {limit} with a probability of {passed}: vapour {ofStrength}.':
    'Der Kopf steht bei {at}; der Dampf ist mit einer Wahrscheinlichkeit von {passed} schwächer als die Grenze von {limit}: Dampf {ofStrength}.',
  'No vapour has reached the bulb for {absent}{heatOff}; it is at {bulb}, {against} {azeotrope}.':
    'Seit {absent} hat kein Dampf den Fühler erreicht{heatOff}; er steht bei {bulb}, {against} dem {azeotrope}.',
  ' after the heat was taken off': ', nachdem die Wärme weggenommen wurde',
  "{bulb}, with the bulb's lag counted {vapour}":
    '{bulb}, die Trägheit des Fühlers eingerechnet {vapour}',
  '{difference} below': '{difference} unter',
  '{difference} above': '{difference} über',
  ', below the {level} of its plateau': ', unter die {level} seines Plateaus',
  'it has not come to rest yet.': 'noch ist er nicht zur Ruhe gekommen.',
  ' (estimated, nothing booked)': ' (geschätzt, nichts gebucht)',
  '{firstFraction} of the first fraction so far{source}. Its end is your convention: light volatiles are too little to be seen by temperature.':
    'bisher {firstFraction} des Vorlaufs{source}. Sein Ende ist vereinbart: leichtflüchtige Stoffe sind zu wenig, um sie an der Temperatur zu sehen.',
  'Good readings came in again: staging then goes on where it was.':
    'Es kommen wieder gute Werte: dann geht die Einteilung weiter, wo sie war.',
  'The head came back near {level} or higher: the stage then goes on. After some minutes below, it becomes the cool-down.':
    'Der Kopf kommt wieder in die Nähe von {level} oder höher: dann geht der Abschnitt weiter. Nach einigen Minuten darunter wird daraus das Abkühlen.',
  'The bulb passed {azeotrope} in vapour: then the first fraction begins.':
    'Der Fühler überschreitet {azeotrope} im Dampf: dann beginnt der Vorlauf.',
  'The head held and {wanted} {unit} had been set apart: then the main fraction begins. If the head holds above {limitOnProbe}, there is no main fraction.':
    'Der Kopf hält, und {wanted} {unit} sind beiseitegestellt: dann beginnt der Hauptlauf. Hält der Kopf über {limitOnProbe}, gibt es keinen Hauptlauf.',
  'The head passed {limitOnProbe}: then the tail begins.':
    'Der Kopf überschreitet {limitOnProbe}: dann beginnt der Nachlauf.',
  'The head held below {limitOnProbe} for some minutes: then it is the main fraction again. No vapour for some minutes: then the cool-down begins.':
    'Der Kopf hält einige Minuten unter {limitOnProbe}: dann ist es wieder der Hauptlauf. Einige Minuten kein Dampf: dann beginnt das Abkühlen.',
  'Vapour came back to the bulb: the stage before then goes on.':
    'Dampf kommt zurück an den Fühler: dann geht der Abschnitt davor weiter.',
  'Near the azeotrope the temperature says little about the strength.':
    'Nahe dem Azeotrop sagt die Temperatur wenig über den Gehalt.',
  'Read from the temperature at which such vapour condenses at {pressure} kPa; the standard uncertainty of the temperature is {sd}.':
    'Aus der Temperatur, bei der solcher Dampf bei {pressure} kPa kondensiert; die Standardunsicherheit der Temperatur ist {sd}.',
  'No vapour has reached the bulb yet: it still warms up.':
    'Noch hat kein Dampf den Fühler erreicht: er erwärmt sich noch.',
  'No vapour reaches the bulb just now: what it shows is its own cooling.':
    'Gerade erreicht kein Dampf den Fühler: er zeigt sein eigenes Abkühlen.',
  'Vapour is back at the bulb, which needs some seconds to settle in it.':
    'Der Dampf ist zurück am Fühler, der einige Sekunden braucht, um sich einzustellen.',
  'The head moves by more than {rate} K/min: the bulb lags too far behind the vapour.':
    'Der Kopf bewegt sich mit mehr als {rate} K/min: der Fühler hinkt dem Dampf zu weit nach.',
  'The heat is off or the head sinks in the tail: vapour dies away, and the bulb shows its own cooling.':
    'Die Wärme ist weg, oder der Kopf sinkt im Nachlauf: der Dampf versiegt, und der Fühler zeigt sein eigenes Abkühlen.',
  'The probe is not trusted just now.': 'Der Sonde ist gerade nicht zu trauen.',
  'The bulb has only just settled in the vapour: the strength is told once it has stayed so for half a minute.':
    'Der Fühler hat sich gerade erst im Dampf eingestellt: der Gehalt wird genannt, sobald das eine halbe Minute so bleibt.',
  "No ethanol–water vapour condenses below {azeotrope} at {pressure} kPa. See through the glass whether the bulb sits in the vapour at the side arm, then check the air pressure entered and the probe's correction; lighter volatiles are the rarer cause.":
    'Unter {azeotrope} kondensiert bei {pressure} kPa kein Ethanol-Wasser-Dampf. Durch das Glas prüfen, ob der Fühler am Seitenrohr im Dampf sitzt, dann den eingegebenen Luftdruck und die Korrektur der Sonde prüfen; leichter flüchtige Stoffe sind die seltenere Ursache.',
  'No vapour reached the thermometer.': 'Kein Dampf hat das Thermometer erreicht.',
  'Vapour reached the thermometer, but the head has not held yet.':
    'Dampf hat das Thermometer erreicht, aber der Kopf hat noch nicht gehalten.',
  'The first fraction had not ended by the convention set.':
    'Der Vorlauf war nach der gesetzten Vereinbarung noch nicht zu Ende.',
  'the head held at {lowestLevel}, stronger than {limit}':
    'der Kopf hielt bei {lowestLevel}, stärker als {limit}',
  'No main fraction at {limit} % vol or more: {held}, but was judged to have passed it when the first fraction ended. More plates or reflux, a stronger charge or a shorter first fraction would help.':
    'Kein Hauptlauf mit {limit} % vol oder mehr: {held}, galt aber beim Ende des Vorlaufs schon als darüber. Mehr Böden oder Rücklauf, eine stärkere Füllung oder ein kürzerer Vorlauf würden helfen.',
  'No main fraction at {limit} % vol or more: {held}, but the still cooled down before the first fraction had ended by the convention set. A shorter first fraction or a longer run would help.':
    'Kein Hauptlauf mit {limit} % vol oder mehr: {held}, aber die Apparatur kühlte ab, bevor der Vorlauf nach der gesetzten Vereinbarung zu Ende war. Ein kürzerer Vorlauf oder ein längerer Versuch würde helfen.',
  'No main fraction at {limit} % vol or more with this rig: the lowest the head held at was {lowestLevel}, above {limitWords}. {cause}':
    'Kein Hauptlauf mit {limit} % vol oder mehr mit diesem Aufbau: der Kopf hielt am tiefsten bei {lowestLevel}, über {limitWords}. {cause}',
  'Vapour at that temperature has {strength}.': 'Dampf bei dieser Temperatur hat {strength}.',
  '{strongest} The charge held hardly any alcohol, or had lost it.':
    '{strongest} Die Füllung enthielt kaum Alkohol oder hatte ihn verloren.',
  '{strongest} A still without a column gives no more from this charge; a column or a stronger charge would help.':
    '{strongest} Ein Aufbau ohne Kolonne gibt aus dieser Füllung nicht mehr her; eine Kolonne oder eine stärkere Füllung würde helfen.',
  '{strongest} Too few plates, too little reflux or a weak charge; packing, lagging less, easing the heat or a stronger charge would help.':
    '{strongest} Zu wenige Böden, zu wenig Rücklauf oder eine schwache Füllung; Füllkörper, weniger Wärmedämmung, weniger Wärme oder eine stärkere Füllung würden helfen.',
  "No main fraction that can be vouched for: the head stood at {held}, {below} K below the azeotrope ({azeotrope} at {pressure} kPa), where no ethanol–water vapour condenses; pressure and probe explain {doubt} K at most. Check the air pressure, the probe's correction and whether vapour bathed the bulb.":
    'Kein Hauptlauf, der sich verbürgen lässt: der Kopf stand bei {held}, {below} K unter dem Azeotrop ({azeotrope} bei {pressure} kPa), wo kein Ethanol-Wasser-Dampf kondensiert; Druck und Sonde erklären höchstens {doubt} K. Den Luftdruck, die Korrektur der Sonde und ob Dampf den Fühler umspülte prüfen.',
  'No main fraction at {limit} % vol or more: after the first fraction the head was stronger than {limitWords} for only {lasted}; it takes {leastFraction} s to count as held.':
    'Kein Hauptlauf mit {limit} % vol oder mehr: nach dem Vorlauf war der Kopf nur {lasted} stärker als {limitWords}; als gehalten gilt es ab {leastFraction} s.',
  'The vapour stayed stronger than {limit} for {lasted}; the lowest the head held at was {held}.':
    'Der Dampf blieb {lasted} stärker als {limit}; am tiefsten hielt der Kopf bei {held}.',
  'Warm-up': 'Aufheizen',
  'Low-boiling first fraction': 'Leichtsiedender Vorlauf',
  'Main ethanol fraction': 'Ethanolreicher Hauptlauf',
  'Water-rich tail': 'Wasserreicher Nachlauf',
  'Cool-down': 'Abkühlen',
};
