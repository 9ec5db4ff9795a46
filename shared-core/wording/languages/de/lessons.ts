/** German of the room `lessons`. */
export const lessons: Readonly<Record<string, string>> = {
  'Whole scale': 'Ganze Skala',
  'Guess first': 'Zuerst raten',
  'Temperature shown': 'Gezeigte Temperatur',
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
  'Heat off': 'Wärme weg',
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
  Head: 'Kopf',
  Collected: 'Aufgefangen',
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
  '{reaction} after the prompt at {raised}': '{reaction} nach der Aufforderung bei {raised}',
  'before any prompt asked for it': 'bevor eine Aufforderung es verlangte',
  'not marked; asked for at {raised}': 'nicht vermerkt; verlangt bei {raised}',
  'neither asked for nor marked': 'weder verlangt noch vermerkt',
  'the limit was not reached': 'die Grenze wurde nicht erreicht',
  'nothing: the heat was off before': 'nichts: die Wärme war vorher weg',
  '{over} long; how much is told once that receiver’s volume is booked':
    '{over} lang; wie viel, steht fest, sobald die Menge jener Vorlage gebucht ist',
  '{volume}, in {over} at that receiver’s mean rate':
    '{volume}, in {over} mit der mittleren Geschwindigkeit jener Vorlage',
  'What it came to': 'Was herauskam',
  'Going through the run …': 'Der Versuch wird durchgegangen …',
  'No volume was marked: enter it under Books.':
    'Keine Menge wurde vermerkt: sie unter „Bücher“ eintragen.',
  'Receiver {number}:': 'Vorlage {number}:',
  'After the {number} % vol limit': 'Nach der Grenze von {number} % vol',
  'volume not marked': 'Menge nicht vermerkt',
  'of {strength}, {what}': 'mit {strength}, {what}',
  'by the head temperature': 'nach der Kopftemperatur',
  'Clean up': 'Aufräumen',
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
  'The bell rings at': 'Es klingelt um',
  'Whether it fits can’t be told yet.': 'Ob es passt, lässt sich noch nicht sagen.',
  'The still is hot for a while after that.': 'Die Apparatur ist danach noch eine Weile heiß.',
  'Heat off is expected before the bell. {afterwards}':
    '„Wärme weg“ wird vor dem Klingeln erwartet. {afterwards}',
  'Heat off may come after the bell: plan for taking the heat off earlier.':
    '„Wärme weg“ kann nach dem Klingeln kommen: einplanen, die Wärme früher wegzunehmen.',
  'Heat off is expected after the bell: take the heat off in time.':
    '„Wärme weg“ wird nach dem Klingeln erwartet: die Wärme rechtzeitig wegnehmen.',
  'Does not fit any more: heat off is expected after the bell. Take a smaller charge, or another lesson.':
    'Passt nicht mehr: „Wärme weg“ wird nach dem Klingeln erwartet. Eine kleinere Füllung oder eine andere Stunde wählen.',
  'Fits if the heat is on by {latest}. {afterwards}':
    'Passt, wenn die Wärme bis {latest} an ist. {afterwards}',
  'May not fit: for that the heat had to be on by {latest}.':
    'Passt vielleicht nicht: dafür hätte die Wärme bis {latest} an sein müssen.',
  'Heat off {ahead}': 'Wärme weg {ahead}',
  'about {times}': 'etwa {times}',
  'any moment now': 'jeden Moment',
  'Heat off, at {leastStrength} % vol': 'Wärme weg, bei {leastStrength} % vol',
  'The model and this still disagree.': 'Modell und Apparatur stimmen nicht überein.',
  'Vapour at the head': 'Dampf am Kopf',
  '{distillateMlAtEnd} collected by then': 'bis dahin {distillateMlAtEnd} aufgefangen',
  'expected once {distillateMlAtEnd} have come over':
    'erwartet, sobald {distillateMlAtEnd} übergegangen sind',
  'not in the next {minutes} min': 'nicht in den nächsten {minutes} min',
  'not in the next {minutes} min; perhaps soon after, perhaps much later':
    'nicht in den nächsten {minutes} min; vielleicht bald danach, vielleicht viel später',
  'perhaps within minutes, perhaps much later: keep an eye on the head':
    'vielleicht in wenigen Minuten, vielleicht viel später: die Kopftemperatur im Auge behalten',
  'not foreseen': 'nicht absehbar',
  'The lesson': 'Die Stunde',
  'not before {time}': 'nicht vor {time} Uhr',
  'If the heat goes on now': 'Wenn die Wärme jetzt angeht',
  'No main fraction is expected: see “Expected course”.':
    'Kein Hauptlauf ist zu erwarten: siehe „Erwarteter Verlauf“.',
  'Told once all entries are made.': 'Wird genannt, sobald alles eingetragen ist.',
  'Not before {time}. Plates and heat, under “In the pot”, make it narrower.':
    'Nicht vor {time} Uhr. Böden und Wärme, unter „Im Kolben“, machen es enger.',
  'recomputed: {stages, plural, one {# change} other {# changes}} of stage and {prompts, plural, one {# prompt} other {# prompts}} as recorded':
    'nachgerechnet: {stages, plural, one {# Wechsel} other {# Wechsel}} des Abschnitts und {prompts, plural, one {# Aufforderung} other {# Aufforderungen}} wie aufgezeichnet',
  'recomputed by another version of the monitor: differs from the record from {from} on':
    'von einer anderen Fassung der Auswertung nachgerechnet: weicht ab {from} von der Aufzeichnung ab',
  'recomputed: differs from the record from {from} on':
    'nachgerechnet: weicht ab {from} von der Aufzeichnung ab',
  'computed from the readings alone': 'allein aus den Werten berechnet',
  'Name and notes': 'Name und Notizen',
  Name: 'Name',
  Notes: 'Notizen',
  'The record itself stays as it was; this is kept beside it.':
    'Die Aufzeichnung selbst bleibt, wie sie war; dies wird daneben aufbewahrt.',
  Pause: 'Anhalten',
  Play: 'Abspielen',
  '◂ step back': '◂ Schritt zurück',
  '◂ step': '◂ Schritt',
  'step ▸ on': 'Schritt ▸ vor',
  'step ▸': 'Schritt ▸',
  'Time in the run': 'Zeit im Versuch',
  'of {end}': 'von {end}',
  'Replay speed': 'Geschwindigkeit der Wiedergabe',
  'Phones and tablets of the class': 'Telefone und Tablets der Klasse',
  'Scan this, or type the address. It ends with the run.':
    'Dies abfotografieren oder die Adresse eintippen. Sie endet mit dem Versuch.',
  'End watching': 'Zusehen beenden',
  'Off. Switched on, everybody in the same network who has the lesson’s code sees this run on a screen of their own, until it ends. Nothing is encrypted on the way. They can change nothing, and see no names, no notes and no other run. Ask whoever looks after the network first.':
    'Aus. Eingeschaltet sehen alle im selben Netz, die den Code der Stunde haben, diesen Versuch auf dem eigenen Bildschirm, bis er endet. Unterwegs ist nichts verschlüsselt. Sie können nichts ändern und sehen keine Namen, keine Notizen und keinen anderen Versuch. Vorher fragen, wer das Netz betreut.',
  'Let the class watch': 'Die Klasse zusehen lassen',
  'This computer is in no local network. Connect it to the one the class uses, then press again.':
    'Dieser Computer ist in keinem lokalen Netz. Ihn mit dem Netz der Klasse verbinden, dann noch einmal drücken.',
  'The system does not let this program listen in the network. Its firewall decides: ask whoever looks after this computer.':
    'Das System lässt dieses Programm nicht im Netz lauschen. Darüber entscheidet seine Firewall: fragen, wer diesen Computer betreut.',
  'Nobody is watching yet.': 'Noch sieht niemand zu.',
  '{count, plural, one {# screen is watching.} other {# screens are watching.}}':
    '{count, plural, one {# Bildschirm sieht zu.} other {# Bildschirme sehen zu.}}',
  'The address as a square code for cameras': 'Die Adresse als quadratischer Code für Kameras',
  'Second screen': 'Zweiter Schirm',
  'A window of its own for the class. Drag it onto the projector and press “Full screen” in it. It shows a card to try the projector by, then the run with its forecast, and can change nothing.':
    'Ein eigenes Fenster für die Klasse. Es auf den Projektor ziehen und darin „Vollbild“ drücken. Es zeigt erst eine Karte zum Prüfen des Projektors, dann den Versuch mit seiner Vorhersage, und kann nichts ändern.',
  'Open it in a new window': 'In neuem Fenster öffnen',
  'Open it': 'Öffnen',
  'Or open this address in a browser on this computer':
    'Oder diese Adresse in einem Browser auf diesem Computer öffnen',
  Copied: 'Kopiert',
  Copy: 'Kopieren',
  'The address is copied.': 'Die Adresse ist kopiert.',
};
