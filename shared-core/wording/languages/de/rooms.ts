/** Probe, ferment, plan, calibration, lesson, blind drill, measurement and proof. */
export const rooms: Readonly<Record<string, string>> = {
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
  'A day and a time, please.': 'Bitte Tag und Uhrzeit.',
  'A number of grams, more than 0, or nothing.': 'Eine Zahl in Gramm, mehr als 0, oder nichts.',
  '{amount} mL of juice, gravity {gravity} at {temperature} °C':
    '{amount} mL Saft, relative Dichte {gravity} bei {temperature} °C',
  '{amount} g of table sugar': '{amount} g Haushaltszucker',
  '{amount} g of grape or fruit sugar': '{amount} g Trauben- oder Fruchtzucker',
  '{amount} g of {source}': '{amount} g {source}',
  'and {addedSugarG} g of table sugar': 'und {addedSugarG} g Haushaltszucker',
  'Juice ferment': 'Gäransatz aus Saft',
  'Ferment of {what}': 'Gäransatz aus {what}',
  sugar: 'Zucker',
  '{main}{added}, filled up to {volume} mL': '{main}{added}, aufgefüllt auf {volume} mL',
  'Begin a log': 'Ein Protokoll beginnen',
  'Name of the ferment': 'Name des Gäransatzes',
  'The yeast went in': 'Die Hefe kam hinein',
  'Volume of the ferment': 'Menge des Gäransatzes',
  'Sugar by the plan, as grape sugar: {sugarG}.': 'Zucker nach Plan, als Traubenzucker: {sugarG}.',
  'Table sugar, if that is all its sugar': 'Haushaltszucker, wenn das aller Zucker ist',
  'Empty where the sugar is a fruit’s: the gravity tells it.':
    'Leer, wo der Zucker aus Früchten ist: die relative Dichte sagt ihn.',
  'What went in': 'Was hineinkam',
  'Begin the log': 'Protokoll beginnen',
  'From the ferment “{name}”: {quantity} ({strength}) by its log.':
    'Aus dem Gäransatz „{name}“: nach seinem Protokoll {quantity} ({strength}).',
  'In it: {wentIn}.': 'Darin: {wentIn}.',
  'It is another charge': 'Es ist eine andere Füllung',
  'A number, please, or nothing.': 'Bitte eine Zahl oder nichts.',
  'Enter what you read': 'Abgelesenes eintragen',
  When: 'Wann',
  'Gravity, as the hydrometer shows it': 'Relative Dichte, wie die Spindel sie zeigt',
  'Temperature in its jar': 'Temperatur im Spindelzylinder',
  'The hydrometer’s 20 °C is allowed for.': 'Die 20 °C der Spindel sind berücksichtigt.',
  'Temperature of the ferment': 'Temperatur des Gäransatzes',
  'Mass of the vessel': 'Masse des Gefäßes',
  'With the same things on the balance each time.': 'Jedes Mal mit denselben Dingen auf der Waage.',
  'Bubbles a minute': 'Blasen je Minute',
  Refractometer: 'Refraktometer',
  'Alcohol falsifies it: only together with a gravity.':
    'Alkohol verfälscht es: nur zusammen mit einer relativen Dichte.',
  'Keep this entry': 'Diesen Eintrag behalten',
  'Done before this reading': 'Vor diesem Ablesen getan',
  'Nothing was entered yet.': 'Noch ist nichts eingetragen.',
  '{count, plural, one {# entry} other {# entries}}':
    '{count, plural, one {# Eintrag} other {# Einträge}}',
  '{count} withdrawn': '{count} zurückgenommen',
  'Entries, newest first': 'Einträge, die neuesten zuerst',
  'Withdraw the entry of {at}': 'Den Eintrag von {at} zurücknehmen',
  Withdraw: 'Zurücknehmen',
  'Withdrawn, not counted:': 'Zurückgenommen, zählt nicht:',
  '{count, plural, one {# line of its file cannot be read and is left as it is.} other {# lines of its file cannot be read and are left as they are.}}':
    '{count, plural, one {# Zeile seiner Datei ist nicht zu lesen und bleibt, wie sie ist.} other {# Zeilen seiner Datei sind nicht zu lesen und bleiben, wie sie sind.}}',
  'Plan the ferment': 'Gäransatz planen',
  'Ferment log': 'Gärprotokoll',
  Ferment: 'Gäransatz',
  '{name}, begun {began}': '{name}, begonnen {began}',
  'Begin another': 'Einen weiteren beginnen',
  'No ferment is kept yet.': 'Noch wird kein Gäransatz geführt.',
  Close: 'Schließen',
  'Reading the log …': 'Das Protokoll wird gelesen …',
  'Charge the still with it': 'Die Apparatur damit füllen',
  'Juice, by its gravity': 'Saft, nach relativer Dichte',
  'Table sugar': 'Haushaltszucker',
  'Grape or fruit sugar': 'Trauben- oder Fruchtzucker',
  'Fruit by table: {fruit}': 'Frucht nach Tabelle: {fruit}',
  'A week before: what the sugar gives, and how much of it to weigh.':
    'Eine Woche vorher: was der Zucker gibt und wie viel davon abzuwiegen ist.',
  'Sugar from': 'Zucker aus',
  Juice: 'Saft',
  'Mass of it': 'Seine Masse',
  'Gravity of the juice': 'Relative Dichte des Safts',
  'As read off a hydrometer made for 20 °C.': 'Wie an einer Spindel für 20 °C abgelesen.',
  'Temperature of the juice': 'Temperatur des Safts',
  'Table sugar added': 'Zugesetzter Haushaltszucker',
  'Everything together': 'Alles zusammen',
  'Filled up with water.': 'Mit Wasser aufgefüllt.',
  'The vessel holds': 'Das Gefäß fasst',
  'The yeast bears': 'Die Hefe verträgt',
  'Baker’s yeast less than wine yeast; see its packet.':
    'Backhefe weniger als Weinhefe; siehe Packung.',
  'Strength you want': 'Gewünschter Gehalt',
  'Fill in the marked fields and the plan stands here.':
    'Die markierten Felder ausfüllen, dann steht hier der Plan.',
  'Begin its log': 'Sein Protokoll beginnen',
  '{from} to {to} {unit}': '{from} bis {to} {unit}',
  'In practice <strong>{inPractice}</strong>; by the equation, at most {atMost}.':
    'In der Praxis <strong>{inPractice}</strong>; nach der Gleichung höchstens {atMost}.',
  'There is sugar enough for {wanted} % vol.': 'Der Zucker reicht für {wanted} % vol.',
  'For {wanted} % vol add <strong>{sugarToAddG}</strong> of table sugar to what is above.':
    'Für {wanted} % vol zu Obigem <strong>{sugarToAddG}</strong> Haushaltszucker geben.',
  'It gives {carbonDioxideL} of gas and loses {massLossG} on a balance: leave the vent open.':
    'Es gibt {carbonDioxideL} Gas und verliert auf der Waage {massLossG}: die Entlüftung offen lassen.',
  'Not started': 'Nicht begonnen',
  'At work': 'In Gang',
  Slow: 'Langsam',
  'Stuck?': 'Stecken geblieben?',
  Finished: 'Zu Ende',
  'Degassed: shaken or stirred until no more gas came':
    'Entgast: geschüttelt oder gerührt, bis kein Gas mehr kam',
  'Settled: left to stand until clear': 'Geklärt: stehen gelassen, bis klar',
  'Strained: poured off its sediment': 'Abgezogen: vom Bodensatz abgegossen',
  'It is not judged finished: sugar that is left foams, scorches and is lost.':
    'Er gilt nicht als zu Ende: restlicher Zucker schäumt, brennt an und geht verloren.',
  'Degas it: shake or stir until no more gas comes, and enter that.':
    'Entgasen: schütteln oder rühren, bis kein Gas mehr kommt, und das eintragen.',
  'Let it settle until it is clear, and enter that.':
    'Absetzen lassen, bis er klar ist, und das eintragen.',
  'Strain it off its sediment, which scorches and froths, and enter that.':
    'Vom Bodensatz abziehen, der anbrennt und schäumt, und das eintragen.',
  'no date: it stands still': 'kein Datum: er steht still',
  'about {value}, from {low} to {high}': 'etwa {value}, von {low} bis {high}',
  'gravity {gravity} at {temperature}': 'relative Dichte {gravity} bei {temperature}',
  'ferment at {temperature}': 'Gäransatz bei {temperature}',
  '{bubblesPerMin} bubbles a minute': '{bubblesPerMin} Blasen je Minute',
  'refractometer {value}': 'Refraktometer {value}',
  'A number from 0 to 1 000 000.': 'Eine Zahl von 0 bis 1 000 000.',
  'A gravity from 1.000 to 1.200.': 'Eine relative Dichte von 1,000 bis 1,200.',
  'A temperature from 0 to 40 °C.': 'Eine Temperatur von 0 bis 40 °C.',
  'A number from 0 to 100 000.': 'Eine Zahl von 0 bis 100 000.',
  'A number from 50 to 1 000 000.': 'Eine Zahl von 50 bis 1 000 000.',
  'A number from 5 to 20.': 'Eine Zahl von 5 bis 20.',
  'A number from 0 to 20.': 'Eine Zahl von 0 bis 20.',
  'There is no sugar in it yet.': 'Noch ist kein Zucker darin.',
  'Too sweet: the yeast gives up with sugar left, or does not begin. Use less sugar or more water.':
    'Zu süß: die Hefe gibt mit restlichem Zucker auf oder beginnt nicht. Weniger Zucker oder mehr Wasser nehmen.',
  'Too weak for this column: the plateau would not reach the least strength you want. Add sugar, or use more plates.':
    'Zu schwach für diese Kolonne: das Plateau würde den gewünschten Mindestgehalt nicht erreichen. Zucker zusetzen oder mehr Böden verwenden.',
  'Perhaps too weak for this column to give a plateau of the least strength you want. Add sugar to be sure.':
    'Vielleicht zu schwach, als dass diese Kolonne ein Plateau mit dem gewünschten Mindestgehalt gibt. Zur Sicherheit Zucker zusetzen.',
  'Too full: froth needs {frothRoomPercent} % of the vessel. Use a larger one, or make less.':
    'Zu voll: Schaum braucht {frothRoomPercent} % des Gefäßes. Ein größeres nehmen oder weniger ansetzen.',
  'The table of this fruit is too wide to trust: press the juice and measure its gravity.':
    'Die Tabelle dieser Frucht ist zu weit, um sich darauf zu verlassen: den Saft pressen und seine relative Dichte messen.',
  'Count by tapping': 'Durch Tippen zählen',
  'Tap at each bubble': 'Bei jeder Blase tippen',
  'Count anew': 'Neu zählen',
  'Four bubbles at least; ten tell more.': 'Mindestens vier Blasen; zehn sagen mehr.',
  '{count} counted, go on.': '{count} gezählt, weiter.',
  '{count} counted.': '{count} gezählt.',
  'What the log says': 'Was das Protokoll sagt',
  'Strength now': 'Gehalt jetzt',
  Ended: 'Endete',
  Ends: 'Endet',
  'Gravity at its end': 'Relative Dichte am Ende',
  'As entered, gravities at 20 °C. Intervals hold nine times in ten.':
    'Wie eingetragen, relative Dichten bei 20 °C. Die Bereiche gelten in neun von zehn Fällen.',
  'Ready for the still?': 'Bereit für die Apparatur?',
  'By its log, yes: finished, degassed, settled and strained.':
    'Nach seinem Protokoll ja: zu Ende, entgast, geklärt und abgezogen.',
  'Not yet.': 'Noch nicht.',
  'Fill the pot to half at most: all of this ferment at once needs a pot of {pot} or more.':
    'Den Kolben höchstens zur Hälfte füllen: dieser ganze Gäransatz auf einmal braucht einen Kolben von {pot} oder mehr.',
  'time since heat on': 'Zeit seit „Wärme an“',
  'still head, °C': 'Destillationskopf, °C',
  'heat off about here': 'Wärme weg etwa hier',
  'Expected course': 'Erwarteter Verlauf',
  'Simulated some dozens of times with what you know of the rig, and how well you know it.':
    'Einige Dutzend Mal simuliert, mit dem, was vom Aufbau bekannt ist, und wie gut es bekannt ist.',
  'Slow dripping means more reflux and a longer plateau.':
    'Langsames Tropfen bedeutet mehr Rücklauf und ein längeres Plateau.',
  'Fill in the marked fields and the course is drawn here.':
    'Die markierten Felder ausfüllen, dann wird hier der Verlauf gezeichnet.',
  'Simulating …': 'Wird simuliert …',
  'Expected head temperature. {sentence}': 'Erwartete Kopftemperatur. {sentence}',
  'Mean strength of the distillate against the share of ethanol collected: the more is collected, the weaker it gets.':
    'Mittlerer Gehalt des Destillats gegen den Anteil des aufgefangenen Ethanols: je mehr aufgefangen ist, desto schwächer wird es.',
  'Stopping at {leastMean} on average collects about {quantity} of the ethanol.':
    'Wer bei {leastMean} im Mittel aufhört, fängt etwa {quantity} des Ethanols auf.',
  'Expected, with {percent} % intervals': 'Erwartet, mit {percent}-%-Bereichen',
  'Charge boils at': 'Füllung siedet bei',
  'Plateau at': 'Plateau bei',
  'Ethanol in the main fraction': 'Ethanol im Hauptlauf',
  'Reflux ratio': 'Rücklaufverhältnis',
  '{low} to {high}': '{low} bis {high}',
  'Vapour reaches the head after {minutes}.': 'Dampf erreicht den Kopf nach {minutes}.',
  '{vapour}Then expect {volume} above {limit}, over {minutes}, at {strength} on average.':
    '{vapour}Dann sind {volume} über {limit} zu erwarten, in {minutes}, im Mittel mit {strength}.',
  'A main fraction above {limit} is doubtful.': 'Ein Hauptlauf über {limit} ist zweifelhaft.',
  'easing the heat to {collectW} W while collecting':
    'beim Auffangen die Wärme auf {collectW} W drosseln',
  'a charge of {chargeStrength} % vol': 'eine Füllung mit {chargeStrength} % vol',
  'a limit of {leastStrength} % vol': 'eine Grenze von {leastStrength} % vol',
  'Any of these would help: {remedies}.': 'Jedes davon würde helfen: {remedies}.',
  'No main fraction above {limit} is to be expected: {cause}.{help}':
    'Kein Hauptlauf über {limit} ist zu erwarten: {cause}.{help}',
  'a column of {plates, plural, one {# plate} other {# plates}}, heated gently':
    'eine Kolonne mit {plates, plural, one {# Boden} other {# Böden}}, sanft geheizt',
  '{plates, plural, one {# plate} other {# plates}} instead':
    'stattdessen {plates, plural, one {# Boden} other {# Böden}}',
  'there is no column on the pot': 'auf dem Kolben sitzt keine Kolonne',
  'the column has too few plates': 'die Kolonne hat zu wenige Böden',
  'too little runs back down the column': 'zu wenig läuft in der Kolonne zurück',
  'the charge is too weak': 'die Füllung ist zu schwach',
  'In use: {inUse}. The record keeps it.': 'In Gebrauch: {inUse}. Die Aufzeichnung hält es fest.',
  'Go on without it': 'Ohne sie weitermachen',
  'One point only: good near it, less sure away from it.':
    'Nur ein Punkt: nahe bei ihm gut, weiter weg weniger sicher.',
  'Use this correction': 'Diese Korrektur verwenden',
  'At the plateau {sign}{atPlateau} is added to every reading, known to ± {doubt} (k = 2)':
    'Am Plateau kommt {sign}{atPlateau} zu jedem Wert, bekannt auf ± {doubt} (k = 2)',
  '✓ taken: {reading} ± {quantity}': '✓ aufgenommen: {reading} ± {quantity}',
  'Take again: {title}': 'Neu aufnehmen: {title}',
  'Take again': 'Neu aufnehmen',
  'Take this point: {title}': 'Diesen Punkt aufnehmen: {title}',
  'Take this point': 'Diesen Punkt aufnehmen',
  'Enter the air pressure first: it decides how hot steam is.':
    'Zuerst den Luftdruck eingeben: er bestimmt, wie heiß Dampf ist.',
  'The probe shows <strong>{what}</strong>.': 'Die Sonde zeigt <strong>{what}</strong>.',
  'nothing yet': 'noch nichts',
  'Ice, {quantity}': 'Eis, {quantity}',
  'Crushed ice in a beaker, just enough water to fill the gaps, stirred for a minute. Then clamp the probe in the middle.':
    'Zerstoßenes Eis in einem Becherglas, gerade genug Wasser für die Lücken, eine Minute gerührt. Dann die Sonde in der Mitte einspannen.',
  'Steam, {steam} at this air pressure': 'Dampf, {steam} bei diesem Luftdruck',
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
  'Where the bulb of the probe hangs, and the wet ring that climbs the column as vapour warms the glass.':
    'Wo der Fühler der Sonde hängt, und den nassen Ring, der die Kolonne hochsteigt, wenn der Dampf das Glas wärmt.',
  'The pot boils long before the head gets warm. Why does the head stay cold for so long?':
    'Der Kolben siedet, lange bevor der Kopf warm wird. Warum bleibt der Kopf so lange kalt?',
  'At what temperature will the head stop climbing? Everybody writes a number down.':
    'Bei welcher Temperatur wird der Kopf aufhören zu steigen? Alle schreiben eine Zahl auf.',
  'The jump of the line as vapour reaches the bulb, and the first drops, which are kept apart.':
    'Den Sprung der Linie, wenn Dampf den Fühler erreicht, und die ersten Tropfen, die getrennt aufgehoben werden.',
  'Something in the ferment boils lower than ethanol. Why does the thermometer hardly show it?':
    'Etwas im Gäransatz siedet niedriger als Ethanol. Warum zeigt das Thermometer es kaum?',
  'Will the line hold now or creep on? Everybody draws how it goes on.':
    'Wird die Linie jetzt halten oder weiterkriechen? Alle zeichnen, wie es weitergeht.',
  'The line stays level while heat goes in all the time; liquid runs back down the column.':
    'Die Linie bleibt waagerecht, während die ganze Zeit Wärme hineingeht; Flüssigkeit läuft in der Kolonne zurück.',
  'Where does the heat go, if the head gets no hotter? Why does no column take the last of the water out?':
    'Wohin geht die Wärme, wenn der Kopf nicht heißer wird? Warum nimmt keine Kolonne das letzte Wasser heraus?',
  'When must the heat go off? Compare your time with the fan on the screen.':
    'Wann muss die Wärme weg? Die eigene Zeit mit dem Fächer auf dem Bildschirm vergleichen.',
  'The line leaves where it held. The heat comes off, and what still drips goes into another receiver.':
    'Die Linie verlässt, wo sie hielt. Die Wärme kommt weg, und was noch tropft, kommt in eine andere Vorlage.',
  'What does a hotter head say about what is coming over?':
    'Was sagt ein heißerer Kopf über das, was übergeht?',
  'Where would the line end if nobody took the heat off?':
    'Wo würde die Linie enden, wenn niemand die Wärme wegnähme?',
  'The line falls as the vapour draws back. {act}':
    'Die Linie fällt, während der Dampf sich zurückzieht. {act}',
  'How much of the ethanol is in the receiver? What must be measured to know it?':
    'Wie viel vom Ethanol ist in der Vorlage? Was muss gemessen werden, um es zu wissen?',
  'How strong is what was collected? Everybody writes a number down before it is measured.':
    'Wie stark ist das Aufgefangene? Alle schreiben eine Zahl auf, bevor gemessen wird.',
  'For the class:<span> {first}</span>': 'Für die Klasse:<span> {first}</span>',
  'nothing is written for this stage': 'für diesen Abschnitt ist nichts aufgeschrieben',
  'The whole script …': 'Der ganze Ablauf …',
  'Lesson script …': 'Stundenablauf …',
  'Lesson script': 'Stundenablauf',
  'Only this window shows it: in Watch, the line of the present stage. It is kept with the set-up when a run starts, and with a rig that is kept under a name.':
    'Nur dieses Fenster zeigt ihn: in „Beobachten“ die Zeile des jetzigen Abschnitts. Er wird mit den Einstellungen aufbewahrt, wenn ein Versuch beginnt, und mit einem Aufbau, der unter einem Namen behalten wird.',
  'Back to the given text': 'Zurück zum vorgegebenen Text',
  Print: 'Drucken',
  Show: 'Zeigen',
  Ask: 'Fragen',
  Predict: 'Vorhersagen',
  Mass: 'Masse',
  'Strength on the scale': 'Gehalt auf der Skala',
  'Density on the scale': 'Dichte auf der Skala',
  'Temperature of the liquid': 'Temperatur der Flüssigkeit',
  'Pycnometer, empty and dry': 'Pyknometer, leer und trocken',
  'Filled with water': 'Mit Wasser gefüllt',
  'Filled with the liquid': 'Mit der Flüssigkeit gefüllt',
  'Temperature of the water': 'Temperatur des Wassers',
  'Measuring cylinder': 'Messzylinder',
  'the volume of all of it': 'das Volumen von allem',
  Balance: 'Waage',
  'the mass of all of it, without the vessel': 'die Masse von allem, ohne Gefäß',
  Alcoholometer: 'Alkoholometer',
  'the strength': 'den Gehalt',
  Hydrometer: 'Spindel',
  'the strength, from the density': 'den Gehalt, aus der Dichte',
  Pycnometer: 'Pyknometer',
  'Weighed flask': 'Gewogener Kolben',
  'the strength, from a known volume on a balance':
    'den Gehalt, aus einem bekannten Volumen auf der Waage',
  'A number of {unit}.': 'Eine Zahl in {unit}.',
  'No such value is possible.': 'Ein solcher Wert ist nicht möglich.',
  'Between {low} and {high} {unit}': 'Zwischen {low} und {high} {unit}',
  '{between}: water is {waterKgPerM3}, not {waterKgPerM32}.':
    '{between}: Wasser hat {waterKgPerM3}, nicht {waterKgPerM32}.',
  '{between}: let it cool first.': '{between}: zuerst abkühlen lassen.',
  Liquid: 'Flüssigkeit',
  'Measured with': 'Gemessen mit',
  'Finds {finds}.': 'Ergibt {finds}.',
  '{name} (may stay empty)': '{name} (darf leer bleiben)',
  'Keep measurement': 'Messung behalten',
  'No mixture of ethanol and water reads like this. Look at the numbers again.':
    'So zeigt keine Mischung aus Ethanol und Wasser an. Die Zahlen noch einmal ansehen.',
  'Strength at 20 °C: <strong>{quantity}</strong>, between {strength} (95 %)':
    'Gehalt bei 20 °C: <strong>{quantity}</strong>, zwischen {strength} (95 %)',
  'Whole scale': 'Ganze Skala',
  'Guess first': 'Zuerst raten',
  'Back to the library': 'Zurück zum Archiv',
  '“{name}”: your flags beside the record.':
    '„{name}“: die gesetzten Fähnchen neben der Aufzeichnung.',
  '“{name}”: play the run and set your flags. Stages, plateau band, forecast and prompts stay hidden until you reveal the record.':
    '„{name}“: den Versuch abspielen und Fähnchen setzen. Abschnitte, Plateauband, Vorhersage und Aufforderungen bleiben verborgen, bis die Aufzeichnung aufgedeckt wird.',
  'Hide it and guess anew': 'Verbergen und neu raten',
  'No more is shown until you reveal it; the rest would tell.':
    'Bis zum Aufdecken wird nicht mehr gezeigt; der Rest würde es verraten.',
  'Reveal the record': 'Die Aufzeichnung aufdecken',
  'Plateau starts': 'Plateau beginnt',
  'time in the run': 'Zeit im Versuch',
  'head, °C': 'Kopf, °C',
  "The head's temperature up to {shownTo}, with {length} flags set by the class.":
    'Die Temperatur des Kopfes bis {shownTo}, mit {length} Fähnchen der Klasse.',
  'record: {guess}': 'Aufzeichnung: {guess}',
  Group: 'Gruppe',
  'Add a group': 'Gruppe hinzufügen',
  Guess: 'Schätzung',
  'Set at {shownTo}': 'Setzen bei {shownTo}',
  'not set': 'nicht gesetzt',
  'Guesses so far': 'Bisherige Schätzungen',
  open: 'offen',
  'Take back {group}: {guess}': '{group} zurücknehmen: {guess}',
  'Take back': 'Zurücknehmen',
  'from there the head stayed within {plateauBand} K for as long as it ever did':
    'von dort an blieb der Kopf so lange wie nie sonst innerhalb von {plateauBand} K',
  'the heat-off prompt came': 'die Aufforderung „Wärme weg“ kam',
  'the bench took the heat off; no prompt came':
    'die Wärme wurde von Hand weggenommen; keine Aufforderung kam',
  Time: 'Zeit',
  Strength: 'Gehalt',
  'What it meant': 'Was es bedeutete',
  'The record of this run has no answer to this one, so every guess is as good as another.':
    'Die Aufzeichnung dieses Versuchs hat darauf keine Antwort, jede Schätzung ist also so gut wie die andere.',
  'The record says <strong>{time}</strong>: {because}.':
    'Die Aufzeichnung sagt <strong>{time}</strong>: {because}.',
  'Nearest: group {group}.': 'Am nächsten: Gruppe {group}.',
  '{guessNames}: guess minus record': '{guessNames}: Schätzung minus Aufzeichnung',
  'Group {group}': 'Gruppe {group}',
  'The heat was off by then: there was nothing left to decide.':
    'Die Wärme war da schon weg: es gab nichts mehr zu entscheiden.',
  'As good as the record: nobody could do better by eye.':
    'So gut wie die Aufzeichnung: mit dem Auge geht es nicht besser.',
  '{size} before the record: you saw the vapour coming.':
    '{size} vor der Aufzeichnung: der Dampf war schon zu sehen.',
  '{size} after the record: you waited until the head held, which is careful.':
    '{size} nach der Aufzeichnung: gewartet, bis der Kopf hielt, und das ist vorsichtig.',
  '{size} before the record: strong to the last drop, with next to nothing left behind.':
    '{size} vor der Aufzeichnung: stark bis zum letzten Tropfen, und fast nichts blieb zurück.',
  '{size} before the record: strong, with some good distillate left in the pot.':
    '{size} vor der Aufzeichnung: stark, und etwas gutes Destillat blieb im Kolben.',
  '{size} after the record: within the reaction time, little harm done.':
    '{size} nach der Aufzeichnung: innerhalb der Reaktionszeit, wenig Schaden.',
  '{size} after the record: more came over, and the last of it was weaker.':
    '{size} nach der Aufzeichnung: mehr ging über, und das letzte davon war schwächer.',
  Teacher: 'Lehrkraft',
  Technician: 'Technische Fachkraft',
  'Before it is lit': 'Vor dem Anzünden',
  'Who does it': 'Wer es tut',
  'What was seen': 'Was zu sehen war',
  'Light nothing yet: confirm {what}.': 'Noch nichts anzünden: {what} bestätigen.',
  'all {left}': 'alle {left}',
  '{left} more': 'noch {left}',
  'Proof of “{name}”': 'Nachweis von „{name}“',
  'This was a rehearsal with the simulated still: there is nothing to burn.':
    'Dies war ein Probelauf mit der simulierten Apparatur: es gibt nichts abzubrennen.',
  'A run is being recorded: nothing is lit beside a hot still.':
    'Es wird ein Versuch aufgezeichnet: neben einer heißen Apparatur wird nichts angezündet.',
  'Samples burned': 'Abgebrannte Proben',
  'None yet.': 'Noch keine.',
  'More than 0, at most {most}.': 'Mehr als 0, höchstens {most}.',
  From: 'Aus',
  'Cut {index}': 'Fraktion {index}',
  'Volume burned': 'Abgebrannte Menge',
  'It is missing from a cut that is measured only now.':
    'Sie fehlt in einer Fraktion, die erst jetzt gemessen wird.',
  It: 'Sie',
  'Keep it in the record': 'In der Aufzeichnung behalten',
  'The pack is ready: {madeFile}': 'Das Paket ist fertig: {madeFile}',
  'Making the pack …': 'Das Paket wird gemacht …',
  'How far the pack is': 'Wie weit das Paket ist',
  'the file is empty': 'die Datei ist leer',
  'the file has {megabytes} MB, and at most {megabytes2} MB can be taken in. Export a part of it, or every tenth reading':
    'die Datei hat {megabytes} MB, und höchstens {megabytes2} MB sind aufzunehmen. Einen Teil davon exportieren oder jeden zehnten Wert',
  'the file can’t be read any more; choose it again':
    'die Datei ist nicht mehr zu lesen; sie noch einmal wählen',
  'Name of the run': 'Name des Versuchs',
  'Volume in the pot': 'Menge im Kolben',
  'Still and column': 'Apparatur und Kolonne',
  'Plates of the column': 'Böden der Kolonne',
  'Pressure the barometer shows here': 'Druck, den das Barometer hier zeigt',
  'Pressure in the weather report': 'Druck im Wetterbericht',
  'Altitude of this room': 'Höhe dieses Raums',
  'Least strength of the vapour': 'Mindestgehalt des Dampfs',
  'Least strength of all collected': 'Mindestgehalt von allem Aufgefangenen',
  'Drip rate you aim for': 'Angestrebte Tropfgeschwindigkeit',
  'Counted once the head holds': 'Gezählt, sobald der Kopf hält',
  'Time you need to act': 'Zeit, die zum Handeln nötig ist',
  'Needed: metres above sea level, from a map. 0 at the coast.':
    'Nötig: Meter über dem Meer, aus einer Karte. 0 an der Küste.',
  'Metres above sea level, {low} to {high}.': 'Meter über dem Meer, {low} bis {high}.',
  'Needed: from today’s report.': 'Nötig: aus dem heutigen Bericht.',
  'Needed: what it shows today.': 'Nötig: was es heute zeigt.',
  'A pressure from {low} to {high} {unit}.': 'Ein Druck von {low} bis {high} {unit}.',
  'Digital, in a steel sleeve': 'Digital, in einer Stahlhülse',
  'Platinum, class A': 'Platin, Klasse A',
  'Platinum, class B': 'Platin, Klasse B',
  Thermocouple: 'Thermoelement',
  'A number from {low} to {high} {unit}.': 'Eine Zahl von {low} bis {high} {unit}.',
  'Give the run a name.': 'Dem Versuch einen Namen geben.',
  '{reason} {warmth}': '{reason} {warmth}',
  '{value} ({low} to {high})': '{value} ({low} bis {high})',
  'Nothing has fermented yet that the readings could tell after {timeH} h.':
    'Nach {timeH} h ist noch nichts vergoren, was die Werte zeigen könnten.',
  '{words} That is late: see whether it is warm enough and whether the yeast is alive.':
    '{words} Das ist spät: nachsehen, ob es warm genug ist und ob die Hefe lebt.',
  'It is all but done at {now}, with the end expected near {end}: it counts as finished once it has been steady for two days.':
    'Es ist so gut wie fertig bei {now}, das Ende wird nahe {end} erwartet: als zu Ende gilt es, wenn es zwei Tage gleich geblieben ist.',
  'It works: {donePercent} of what can ferment has fermented; the gravity, some {now}, falls by {fall} a day towards {end}.':
    'Es arbeitet: {donePercent} des Vergärbaren ist vergoren; die relative Dichte, etwa {now}, fällt um {fall} am Tag gegen {end}.',
  "It works: it has made some {value} % vol. How far it has to go, masses and bubbles alone don't tell: measure the gravity.":
    'Es arbeitet: etwa {value} % vol sind entstanden. Wie weit es noch geht, sagen Massen und Blasen allein nicht: die relative Dichte messen.',
  'It has hardly moved in two days and may be at its end: it stands near {now}, expected {end}. Some fruit leaves as much that yeast cannot use, but a ferment that is stuck looks the same: a strip for glucose tells, or the sugar that went in.':
    'Es hat sich in zwei Tagen kaum bewegt und kann am Ende sein: es steht nahe {now}, erwartet {end}. Manche Frucht lässt so viel übrig, das Hefe nicht verwerten kann, aber ein stecken gebliebener Ansatz sieht genauso aus: ein Glucose-Teststreifen sagt es, oder der eingesetzte Zucker.',
  'It goes on, but slowly: the gravity, some {now}, falls by only {fall} a day, and the end is expected near {end}.':
    'Es geht weiter, aber langsam: die relative Dichte, etwa {now}, fällt nur um {fall} am Tag, und das Ende wird nahe {end} erwartet.',
  'It has been steady for two days at {now}, near the end that is expected, {end}.':
    'Es ist zwei Tage gleich geblieben bei {now}, nahe dem erwarteten Ende, {end}.',
  'It has lost no more mass for two days, and {donePercent} of what its sugar gives is made.':
    'Es hat zwei Tage keine Masse mehr verloren, und {donePercent} dessen, was sein Zucker gibt, ist entstanden.',
  'It stands still, at some {value} % vol made, and nothing tells whether that is its end: measure the gravity, or say how much sugar went in.':
    'Es steht still, bei etwa {value} % vol, und nichts sagt, ob das sein Ende ist: die relative Dichte messen oder angeben, wie viel Zucker hineinkam.',
  'It has been steady for two days': 'Es ist zwei Tage gleich geblieben',
  'It has all but come to a stand': 'Es ist fast zum Stehen gekommen',
  'its yeast may bear no more alcohol': 'seine Hefe verträgt vielleicht nicht mehr Alkohol',
  'warm it, stir it up and read it again before giving it up':
    'wärmen, aufrühren und noch einmal ablesen, bevor es aufgegeben wird',
  ' Some fruit leaves as much that yeast cannot use; a strip for glucose tells.':
    ' Manche Frucht lässt so viel übrig, das Hefe nicht verwerten kann; ein Glucose-Teststreifen sagt es.',
  '{stands} at {now}, but the end is expected near {end}: stuck? Steady is not finished; {why}.{doubt}':
    '{stands} bei {now}, aber das Ende wird nahe {end} erwartet: stecken geblieben? Gleich geblieben ist nicht zu Ende; {why}.{doubt}',
  'At {temperature} °C it is cold for yeast: keep it warmer.':
    'Bei {temperature} °C ist es kalt für Hefe: wärmer halten.',
  'At {temperature} °C it is too hot: yeast dies, and ferments get stuck.':
    'Bei {temperature} °C ist es zu heiß: Hefe stirbt, und Ansätze bleiben stecken.',
  '{value} % ({low} to {high} %)': '{value} % ({low} bis {high} %)',
  'Nothing was read yet.': 'Noch wurde nichts abgelesen.',
  'Temperatures alone tell nothing of a ferment: add gravity, mass or bubbles a minute.':
    'Temperaturen allein sagen nichts über einen Gäransatz: relative Dichte, Masse oder Blasen je Minute ergänzen.',
  'The first gravity, {value}, does not fit what came after and is not believed: was it read before the liquid was mixed, or had it begun to ferment?':
    'Die erste relative Dichte, {value}, passt nicht zu dem, was folgte, und wird nicht geglaubt: wurde sie vor dem Mischen abgelesen, oder hatte die Gärung schon begonnen?',
  'The gravity {value} after {timeH} h does not fit the others and is hardly counted: read it again.':
    'Die relative Dichte {value} nach {timeH} h passt nicht zu den anderen und zählt kaum: noch einmal ablesen.',
  'That is no day and time': 'Das ist kein Tag mit Uhrzeit',
  "The computer's clock stands {time} before the last entry was kept. Put the clock right first":
    'Die Uhr des Computers steht {time} vor dem letzten Eintrag. Zuerst die Uhr richtigstellen',
  "That moment is {time} ahead of the computer's clock. Put right whichever is wrong":
    'Dieser Zeitpunkt liegt {time} vor der Uhr des Computers. Richtigstellen, was falsch ist',
  'That moment is {time} before the ferment was begun. Look at the day and the time':
    'Dieser Zeitpunkt liegt {time} vor dem Beginn des Gäransatzes. Tag und Uhrzeit ansehen',
  'That moment is {time} ago. Look at the year':
    'Dieser Zeitpunkt ist {time} her. Das Jahr ansehen',
  '{count, plural, one {# minute} other {# minutes}}':
    '{count, plural, one {# Minute} other {# Minuten}}',
  '{count, plural, one {# hour} other {# hours}}':
    '{count, plural, one {# Stunde} other {# Stunden}}',
  '{count, plural, one {# day} other {# days}}': '{count, plural, one {# Tag} other {# Tage}}',
  '{what} from {low} to {high}, please': '{what} von {low} bis {high}, bitte',
  'A day and a time, please': 'Bitte Tag und Uhrzeit',
  'A gravity': 'Eine relative Dichte',
  'A temperature of the liquid': 'Eine Temperatur der Flüssigkeit',
  'A mass': 'Eine Masse',
  'A temperature of the ferment': 'Eine Temperatur des Gäransatzes',
  'A number of bubbles in a minute': 'Eine Zahl von Blasen in einer Minute',
  'A pH of a ferment': 'Ein pH-Wert eines Gäransatzes',
  'A refractometer reading': 'Ein Refraktometerwert',
  'At most 400 characters, please': 'Bitte höchstens 400 Zeichen',
  'Nothing was entered yet': 'Noch ist nichts eingetragen',
  'A refractometer alone tells nothing of a ferment: read the gravity too, please':
    'Ein Refraktometer allein sagt nichts über einen Gäransatz: bitte auch die relative Dichte ablesen',
  'A name, please': 'Bitte ein Name',
  'At most 120 characters, please': 'Bitte höchstens 120 Zeichen',
  'A volume in mL, more than 0': 'Ein Volumen in mL, mehr als 0',
  'The lower end first, please': 'Bitte das untere Ende zuerst',
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
  'plates not known': 'Böden nicht bekannt',
  'no column': 'keine Kolonne',
  '1 plate': '1 Boden',
  '{count} plates': '{count} Böden',
  'This is no settings file of a pack: choose the one in its folder "settings".':
    'Dies ist keine Einstellungsdatei eines Pakets: die aus seinem Ordner „settings“ wählen.',
  'This prompt cannot be put aside: waiting can hurt somebody. Do what it asks.':
    'Diese Aufforderung lässt sich nicht zurückstellen: Warten kann jemanden verletzen. Tun, was sie verlangt.',
  'Nothing is burned beside a running still. Stop the run, let it cool, and prove the product in Look back.':
    'Neben einer laufenden Apparatur wird nichts abgebrannt. Den Versuch beenden, abkühlen lassen und das Produkt im Rückblick nachweisen.',
  'Nothing is lit before every condition is confirmed. Confirm each of them first.':
    'Nichts wird angezündet, bevor jede Bedingung bestätigt ist. Zuerst jede bestätigen.',
};
