/** German of the room `probe`. */
export const probe: Readonly<Record<string, string>> = {
  'The line “{text}” holds no number that can be understood: choose another language or speed.':
    'Die Zeile „{text}“ enthält keine verständliche Zahl: eine andere Sprache oder Geschwindigkeit wählen.',
  '“{text}” may be one number with a decimal comma or two numbers: say which in the probe settings.':
    '„{text}“ kann eine Zahl mit Dezimalkomma sein oder zwei Zahlen: in den Einstellungen der Sonde angeben, welches.',
  'The probe says it has no value for {text}: is the sensor plugged in?':
    'Die Sonde sagt, dass sie für {text} keinen Wert hat: ist der Fühler eingesteckt?',
  'Lines arrive without an end: the speed is probably wrong.':
    'Zeilen kommen ohne Ende an: die Geschwindigkeit ist wahrscheinlich falsch.',
  '{text} cannot be a temperature: check the unit in the probe settings.':
    '{text} kann keine Temperatur sein: die Einheit in den Einstellungen der Sonde prüfen.',
  'What arrived was damaged: check the cable and the speed. If that happens every time, its checksum is of another kind: describe the line with a pattern.':
    'Was ankam, war beschädigt: Kabel und Geschwindigkeit prüfen. Geschieht das jedes Mal, ist ihre Prüfsumme von anderer Art: die Zeile mit einem Muster beschreiben.',
  'The probe answered with an error: {text}.': 'Die Sonde antwortete mit einem Fehler: {text}.',
  'Put the channel in braces where its number stands, such as {example}.':
    'Den Kanal in geschweifte Klammern an die Stelle seiner Zahl setzen, etwa {example}.',
  'The brace at position {position} is not closed.':
    'Die Klammer an Stelle {position} ist nicht geschlossen.',
  '{place} is no channel: use small letters, digits and hyphens, such as {example} or {other}.':
    '{place} ist kein Kanal: Kleinbuchstaben, Ziffern und Bindestriche verwenden, etwa {example} oder {other}.',
  '{place} stands there twice.': '{place} steht zweimal da.',
  'That is more channels than one line can hold.':
    'Das sind mehr Kanäle, als eine Zeile fassen kann.',
  'Two {place} in a row: one is enough.': 'Zweimal {place} hintereinander: einmal genügt.',
  '{notice} {advice}': '{notice} {advice}',
  'There is no demo rig named {rig}.': 'Es gibt keinen Probestand mit dem Namen {rig}.',
  'Rehearsal without a serial port: {reason}, so the demo rig speaks in memory.':
    'Probelauf ohne seriellen Anschluss: {reason}, deshalb spricht der Probestand im Speicher.',
  'Bytes arrive that are no answer: check speed, parity and unit number.':
    'Es kommen Bytes an, die keine Antwort sind: Geschwindigkeit, Parität und Adresse prüfen.',
  'Bytes arrive but they are not text: the speed (baud rate) is probably wrong.':
    'Es kommen Bytes an, aber kein Text: die Geschwindigkeit (Baudrate) ist wahrscheinlich falsch.',
  'Text arrives without line ends: check the speed (baud rate) and the language.':
    'Es kommt Text ohne Zeilenenden an: Geschwindigkeit (Baudrate) und Sprache prüfen.',
  'Lines arrive but none holds a reading: choose another language.':
    'Es kommen Zeilen an, aber keine enthält einen Wert: eine andere Sprache wählen.',
  'Listening …': 'Es wird gehört …',
  'The port is open but nothing arrives: is the probe switched on, and is this the right port?':
    'Der Anschluss ist offen, aber nichts kommt an: ist die Sonde eingeschaltet, und ist es der richtige Anschluss?',
  '{path}: {advice}': '{path}: {advice}',
  'This account may not open {path}. In a terminal: sudo usermod -aG dialout "$USER" (on Arch: uucp instead of dialout), then log out and in again.':
    'Dieses Konto darf {path} nicht öffnen. In einem Terminal: sudo usermod -aG dialout "$USER" (unter Arch: uucp statt dialout), dann ab- und wieder anmelden.',
  'This account may not open {path}. Ask whoever looks after this computer for access to serial ports.':
    'Dieses Konto darf {path} nicht öffnen. Wer diesen Computer betreut, soll Zugang zu den seriellen Anschlüssen geben.',
  'Another program is using {path}. Close it there (a serial monitor, perhaps), then connect again.':
    'Ein anderes Programm benutzt {path}. Es dort schließen (vielleicht ein serieller Monitor), dann noch einmal verbinden.',
  '{path} is not there. Is the plug in? Unplug it, count to five, plug it in again.{hint}':
    '{path} ist nicht da. Steckt der Stecker? Ihn abziehen, bis fünf zählen, wieder einstecken.{hint}',
  '{path} could not be used: {message}': '{path} war nicht zu benutzen: {message}',
  ' Or try {other}.': ' Oder {other} versuchen.',
  'Starting the serial reader …': 'Der serielle Leser wird gestartet …',
  'The part that reads the serial port stopped and is being started again.':
    'Der Teil, der den seriellen Anschluss liest, ist stehen geblieben und wird neu gestartet.',
  'The part that reads the serial port stopped.':
    'Der Teil, der den seriellen Anschluss liest, ist stehen geblieben.',
  'In use: {inUse}. The record keeps it.': 'In Gebrauch: {inUse}. Die Aufzeichnung hält es fest.',
  'Go on without it': 'Ohne sie weitermachen',
  'One point only: good near it, less sure away from it.':
    'Nur ein Punkt: nahe bei ihm gut, weiter weg weniger sicher.',
  'Use this correction': 'Diese Korrektur verwenden',
  'By the points taken here, not in use yet: {found}.':
    'Nach den hier genommenen Punkten, noch nicht in Gebrauch: {found}.',
  'Use this one instead': 'Stattdessen diese verwenden',
  'At the plateau {sign}{atPlateau} is added to every reading, known to ± {doubt} (k = 2)':
    'Am Plateau kommt {sign}{atPlateau} zu jedem Wert, bekannt auf ± {doubt} (k = 2)',
  '✓ taken: {reading} ± {quantity}': '✓ aufgenommen: {reading} ± {quantity}',
  'Take again: {title}': 'Neu aufnehmen: {title}',
  'Take again': 'Neu aufnehmen',
  'Take this point: {title}': 'Diesen Punkt aufnehmen: {title}',
  'Take this point': 'Diesen Punkt aufnehmen',
  'For steam, enter the air pressure first: it decides how hot steam is.':
    'Für den Dampf zuerst den Luftdruck eingeben: er bestimmt, wie heiß Dampf ist.',
  'Steam already tells the air pressure here, by this probe: the same steam cannot tell what the probe is off by as well. Ice can, alone.':
    'Hier sagt der Dampf schon den Luftdruck, mit dieser Sonde: derselbe Dampf kann nicht auch sagen, wie weit die Sonde abweicht. Eis allein kann es.',
  'The probe shows <strong>{what}</strong>.': 'Die Sonde zeigt <strong>{what}</strong>.',
  'nothing yet': 'noch nichts',
  'Ice, {quantity}': 'Eis, {quantity}',
  'Crushed ice in a beaker, just enough water to fill the gaps, stirred for a minute. Then clamp the probe in the middle.':
    'Zerstoßenes Eis in einem Becherglas, gerade genug Wasser für die Lücken, eine Minute gerührt. Dann die Sonde in der Mitte einspannen.',
  'Steam, {steam} ± {doubt} at this air pressure': 'Dampf, {steam} ± {doubt} bei diesem Luftdruck',
  'No probe is heard yet: connect it under “Probe”.':
    'Noch keine Sonde zu hören: unter „Sonde“ verbinden.',
  'Probe in the neck of a flask, above the water, not in it; then boil the water well. {steamCautions}':
    'Sonde in den Hals eines Kolbens, über dem Wasser, nicht darin; dann das Wasser kräftig sieden lassen. {steamCautions}',
  'Steady at {reading}': 'Ruhig bei {reading}',
  '{steady}: the probe is not in this bath.': '{steady}: die Sonde ist nicht in diesem Bad.',
  'The probe sends something that is no temperature. Check plug and wire once the bath is cold.':
    'Die Sonde sendet etwas, das keine Temperatur ist. Stecker und Draht prüfen, sobald das Bad kalt ist.',
  'Listening … {span} of {leastSpan} s. Leave the probe as it hangs.':
    'Es wird gehört … {span} von {leastSpan} s. Die Sonde hängen lassen, wie sie hängt.',
  'Still drifting, {driftKPerMin} K/min. Wait; stir the ice, keep the steam coming.':
    'Driftet noch, {driftKPerMin} K/min. Warten; das Eis rühren, den Dampf weiter strömen lassen.',
  'Jumping by {noise} K. The probe must hang still, clear of the glass: clamp it anew, in a cold bath.':
    'Springt um {noise} K. Die Sonde muss ruhig hängen, frei vom Glas: sie neu einspannen, in kaltem Bad.',
  'The points hold something that is no temperature. Take them again.':
    'Die Punkte enthalten etwas, das keine Temperatur ist. Sie neu aufnehmen.',
  'The two points are too close together. Was one of them taken in the wrong bath?':
    'Die beiden Punkte liegen zu nah beieinander. Wurde einer im falschen Bad aufgenommen?',
  'The probe showed less in steam than in ice. Were the points swapped?':
    'Die Sonde zeigte im Dampf weniger als im Eis. Wurden die Punkte vertauscht?',
  'The probe would need {correction} K: more than a good probe ever does. Check the bath, the wire and the kind of probe.':
    'Die Sonde bräuchte {correction} K: mehr als jede gute Sonde. Das Bad, den Draht und die Art der Sonde prüfen.',
  'Between the points the probe rises too fast or too slowly. Check both baths.':
    'Zwischen den Punkten steigt die Sonde zu schnell oder zu langsam. Beide Bäder prüfen.',
  'Known only to ± {number} K: worse than not calibrating. Take the points again.':
    'Nur auf ± {number} K bekannt: schlechter als nicht zu kalibrieren. Die Punkte neu aufnehmen.',
  'Another probe beside it': 'Eine weitere Sonde daneben',
  'It measures': 'Sie misst',
  'Where it is': 'Wo sie ist',
  'This port is listened to already.': 'Auf diesen Anschluss wird schon gehört.',
  'Listen to it too': 'Auch darauf hören',
  'Listen to {path} too': 'Auch auf {path} hören',
  'what it says itself': 'was sie selbst sagt',
  'the still head': 'den Destillationskopf',
  'the pot': 'den Kolben',
  'the receiver, by a balance': 'die Vorlage, mit einer Waage',
  'the condenser outlet': 'den Kühlerausgang',
  'the air pressure': 'den Luftdruck',
  'the room': 'den Raum',
  'the ferment': 'den Gäransatz',
  'Trying speeds and languages on {path}, up to half a minute …':
    'Geschwindigkeiten und Sprachen werden auf {path} probiert, bis zu einer halben Minute …',
  'Connect like this': 'So verbinden',
  'Try again': 'Noch einmal versuchen',
  'Find out how it speaks': 'Herausfinden, wie sie spricht',
  'Heard: <code>{slice}</code>': 'Gehört: <code>{slice}</code>',
  'Which one hangs in the still head?': 'Welche hängt im Destillationskopf?',
  'Before any heat, warm its tip in your hand: it is the one that rises.':
    'Vor jedem Erhitzen die Spitze in der Hand wärmen: es ist die, die steigt.',
  '{thinnedHeadReadings} of the head': '{thinnedHeadReadings} vom Kopf',
  '{droppedReadings} of other channels': '{droppedReadings} von anderen Kanälen',
  '<strong>More readings arrive than can be taken.</strong> Let the probe send less often.':
    '<strong>Es kommen mehr Werte an, als aufzunehmen sind.</strong> Die Sonde seltener senden lassen.',
  'Left out so far: {counts}.': 'Bisher weggelassen: {counts}.',
  '4 · input registers': '4 · Eingangsregister',
  '3 · holding registers': '3 · Halteregister',
  'whole number, 16 bit, with sign': 'ganze Zahl, 16 Bit, mit Vorzeichen',
  'whole number, 16 bit, no sign': 'ganze Zahl, 16 Bit, ohne Vorzeichen',
  'whole number, 32 bit': 'ganze Zahl, 32 Bit',
  'whole number, 32 bit, low word first': 'ganze Zahl, 32 Bit, niederes Wort zuerst',
  'decimal number, 32 bit': 'Dezimalzahl, 32 Bit',
  'decimal number, 32 bit, low word first': 'Dezimalzahl, 32 Bit, niederes Wort zuerst',
  'A whole number from 1 to 247.': 'Eine ganze Zahl von 1 bis 247.',
  'From 0 to 65535, as on the wire.': 'Von 0 bis 65535, wie auf der Leitung.',
  'A number such as 0.1 or 1.': 'Eine Zahl wie 0,1 oder 1.',
  'Its address on the bus': 'Ihre Adresse am Bus',
  'Function it answers': 'Funktion, auf die sie antwortet',
  'Register {index}': 'Register {index}',
  'Register address': 'Adresse des Registers',
  'from 0': 'ab 0',
  'Written as': 'Geschrieben als',
  'One step is': 'Ein Schritt ist',
  'of its unit': 'ihrer Einheit',
  'Leave register {index} out': 'Register {index} weglassen',
  'One more register': 'Ein weiteres Register',
  'Copy a line and put {place} where its number stands.':
    'Eine Zeile kopieren und {place} an die Stelle ihrer Zahl setzen.',
  'No line heard yet to try it on.': 'Noch keine Zeile gehört, um es zu probieren.',
  'How {path} speaks': 'Wie {path} spricht',
  'How this probe speaks': 'Wie diese Sonde spricht',
  'Let go of {path}': '{path} loslassen',
  'From {low} to {high} s.': 'Von {low} bis {high} s.',
  'One question that ends in a question mark, such as MEAS:TEMP?':
    'Eine Frage, die mit Fragezeichen endet, etwa MEAS:TEMP?',
  'Listen and decide': 'Zuhören und entscheiden',
  'Plain text, one line a reading': 'Einfacher Text, eine Zeile je Wert',
  'JSON, one object a line': 'JSON, ein Objekt je Zeile',
  'SCPI: it answers questions': 'SCPI: sie beantwortet Fragen',
  'Modbus RTU': 'Modbus RTU',
  'A balance that must be asked': 'Eine Waage, die gefragt werden muss',
  'A pattern of my own': 'Ein eigenes Muster',
  'Ω of a Pt100': 'Ω eines Pt100',
  'Ω of a Pt1000': 'Ω eines Pt1000',
  'as usual for its language': 'wie für ihre Sprache üblich',
  even: 'gerade',
  odd: 'ungerade',
  '{rate} baud': '{rate} Baud',
  'the one it calls so itself': 'den, den sie selbst so nennt',
  Language: 'Sprache',
  Speed: 'Geschwindigkeit',
  Parity: 'Parität',
  'Its numbers are in': 'Ihre Zahlen sind in',
  'Which number is the still head': 'Welche Zahl der Destillationskopf ist',
  'Its decimal sign': 'Ihr Dezimalzeichen',
  'Ask it every': 'Sie fragen alle',
  'What to ask': 'Was zu fragen ist',
  'empty: the usual questions': 'leer: die üblichen Fragen',
  'A line looks like this': 'Eine Zeile sieht so aus',
  'Use these settings': 'Diese Einstellungen verwenden',
  'JSON lines at {baudRate} baud.': 'JSON-Zeilen mit {baudRate} Baud.',
  'Plain text at {baudRate} baud.': 'Einfacher Text mit {baudRate} Baud.',
  'Plain text with a decimal comma at {baudRate} baud: check the value before you trust it.':
    'Einfacher Text mit Dezimalkomma, {baudRate} Baud: den Wert prüfen, bevor man ihm traut.',
  'It answers SCPI questions at {baudRate} baud.':
    'Sie beantwortet SCPI-Fragen mit {baudRate} Baud.',
  'It answers SCPI questions at {baudRate} baud. It says it is {identity}.':
    'Sie beantwortet SCPI-Fragen mit {baudRate} Baud. Nach eigener Angabe ist sie {identity}.',
  'Nothing was heard, and no question was answered: is the probe switched on, and is this its port?':
    'Nichts war zu hören, und keine Frage wurde beantwortet: ist die Sonde eingeschaltet, und ist das ihr Anschluss?',
  'Bytes arrive, but at no usual speed are they text. What does its manual say of speed?':
    'Bytes kommen an, aber bei keiner üblichen Geschwindigkeit sind sie Text. Was sagt die Anleitung der Sonde zur Geschwindigkeit?',
  'Text arrives at {baudRate} baud, but not in a form known here: describe its lines with a pattern of your own.':
    'Mit {baudRate} Baud kommt Text an, aber in keiner hier bekannten Form: die Zeilen mit einem eigenen Muster beschreiben.',
  '{baudRate} baud, no parity': '{baudRate} Baud, keine Parität',
  '{baudRate} baud, even parity': '{baudRate} Baud, gerade Parität',
  'A Modbus device answers ({line}), but its first register is no temperature: take the register from its manual.':
    'Ein Modbus-Gerät antwortet ({line}), aber sein erstes Register ist keine Temperatur: das Register aus seiner Anleitung nehmen.',
  'A Modbus device answers ({line}); its first register reads as {temperature} °C. Check that against a thermometer.':
    'Ein Modbus-Gerät antwortet ({line}); sein erstes Register liest sich als {temperature} °C. Das mit einem Thermometer prüfen.',
  'the device does not know this function': 'das Gerät kennt diese Funktion nicht',
  'the device has no register at this address': 'das Gerät hat an dieser Adresse kein Register',
  'the device does not take this question': 'das Gerät nimmt diese Frage nicht an',
  'the device reports a failure of its own': 'das Gerät meldet einen eigenen Fehler',
  'the device is busy': 'das Gerät ist beschäftigt',
  'the device refuses': 'das Gerät lehnt ab',
  '{refusal} (Modbus exception {reason})': '{refusal} (Modbus-Ausnahme {reason})',
};
