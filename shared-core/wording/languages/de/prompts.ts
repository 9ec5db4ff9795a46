/** German of the room `prompts`. */
export const prompts: Readonly<Record<string, string>> = {
  'Nobody answered': 'Niemand hat geantwortet',
  'Go to the still and confirm that you are there.':
    'Zur Apparatur gehen und bestätigen, dass jemand da ist.',
  'The check was due {time} ago and nobody answered.':
    'Die Nachfrage war vor {time} fällig, und niemand hat geantwortet.',
  'Any mark made by a person.': 'Hinfällig, sobald eine Person eine Marke setzt.',
  'Nobody has confirmed being at the still.': 'Niemand hat bestätigt, bei der Apparatur zu sein.',
  'Bulb in doubt': 'Fühler zweifelhaft',
  'Check the air pressure entered and, by eye, the bulb; heat off and cold before you touch it.':
    'Den eingegebenen Luftdruck prüfen und den Fühler mit dem Auge; vor dem Anfassen Wärme weg und abkühlen lassen.',
  'A bulb that reads too low has the heat-off call come late, or not at all.':
    'Bei einem Fühler, der zu tief anzeigt, kommt die Aufforderung „Wärme weg“ zu spät oder gar nicht.',
  'The head rested at {lowest}, {difference} below the azeotrope at {pressure} kPa ({azeotrope}), where no ethanol–water vapour condenses. {explanation}':
    'Der Kopf ruhte bei {lowest}, {difference} unter dem Azeotrop bei {pressure} kPa ({azeotrope}), wo kein Ethanol-Wasser-Dampf kondensiert. {explanation}',
  'The air pressure that is right entered, or a bulb that hangs in the vapour.':
    'Hinfällig, sobald der richtige Luftdruck eingegeben ist oder der Fühler im Dampf hängt.',
  'The head cannot be relied on.': 'Auf den Kopf ist kein Verlass.',
  'The head cannot be relied on: {probeFault}.': 'Auf den Kopf ist kein Verlass: {probeFault}.',
  'a bulb that hangs badly or a probe that reads {low} low':
    'ein schlecht hängender Fühler oder eine Sonde, die um {low} zu tief anzeigt',
  'Likely is {byProbe}.': 'Wahrscheinlich ist es {byProbe}.',
  'An air pressure of about {pressure} kPa would explain it, or {byProbe}.':
    'Ein Luftdruck von etwa {pressure} kPa würde es erklären, oder {byProbe}.',
  'Condenser warm': 'Kühler warm',
  '{heatOffAct} and restore the cooling water.':
    '{heatOffAct} und das Kühlwasser wieder in Gang bringen.',
  'The condenser outlet is at {temperature}.': 'Der Kühlerausgang steht bei {temperature}.',
  'an unknown temperature': 'einer unbekannten Temperatur',
  'The outlet cooling below {off} °C.':
    'Hinfällig, sobald der Ausgang unter {off} °C abgekühlt ist.',
  'The condenser is warm: vapour may escape.': 'Der Kühler ist warm: Dampf kann entweichen.',
  'nothing believed yet': 'noch kein vertrauenswürdiger Wert',
  'last trusted value {lastTrusted}': 'letzter vertrauenswürdiger Wert {lastTrusted}',
  'At {time}: {fault}; {trusted}.': 'Nach {time}: {fault}; {trusted}.',
  'Take the heat off (flame out, mantle down)': 'Wärme wegnehmen (Flamme aus, Heizhaube senken)',
  'Pot near dryness': 'Kolben fast leer',
  '{heatOffAct} now and let the pot cool.': 'Sofort: {heatOffAct} und den Kolben abkühlen lassen.',
  'a few': 'wenige',
  'Of the {volume} mL charge {left} mL are left in the pot by what was booked and estimated: that may be less than the tenth that must stay.':
    'Von den {volume} mL der Füllung sind nach Buchungen und Schätzung noch {left} mL im Kolben: das kann weniger sein als das Zehntel, das bleiben muss.',
  'A volume booked that shows more liquid left in the pot.':
    'Hinfällig, sobald eine gebuchte Menge zeigt, dass mehr Flüssigkeit im Kolben ist.',
  'The pot may be close to running dry.': 'Der Kolben kann nahe am Trockenkochen sein.',
  'Heat off now: limit passed': 'Sofort Wärme weg: Grenze überschritten',
  '{heatOffAct} now.': 'Sofort: {heatOffAct}.',
  'What comes over is weaker than the strength you asked for.':
    'Was übergeht, ist schwächer als der verlangte Gehalt.',
  unknown: 'unbekannter Temperatur',
  'no mark says that the heat is off': 'keine Marke sagt, dass die Wärme weg ist',
  'the heat is still on': 'die Wärme ist noch an',
  'The head is at {at}, above the limit of {limit}, {passed} sure: vapour {strength}, and {heat}.':
    'Der Kopf steht bei {at}, über der Grenze von {limit}, {passed} sicher: Dampf {strength}, und {heat}.',
  'The head staying below {limitOnProbe}, or the heat taken off.':
    'Hinfällig, sobald der Kopf unter {limitOnProbe} bleibt oder die Wärme weg ist.',
  'What comes over is weaker than you asked for.': 'Was übergeht, ist schwächer als verlangt.',
  'Heat off, change the receiver': 'Wärme weg, Vorlage wechseln',
  '{heatOffAct} and change the receiver.': '{heatOffAct}, Vorlage wechseln.',
  'Each further minute runs weaker distillate into the main fraction.':
    'Jede weitere Minute lässt schwächeres Destillat in den Hauptlauf laufen.',
  ', {against} the level it held, {moving}': ', {against} dem gehaltenen Niveau; er {moving}',
  'The head is at {at}{stands}. {outlook}': 'Der Kopf steht bei {at}{stands}. {outlook}',
  'The head falling back below {limitOnProbe}, or the heat taken off.':
    'Hinfällig, sobald der Kopf wieder unter {limitOnProbe} fällt oder die Wärme weg ist.',
  'The main fraction has ended.': 'Der Hauptlauf ist zu Ende.',
  'The head rises past the limit before the first fraction has ended.':
    'Der Kopf steigt über die Grenze, bevor der Vorlauf zu Ende ist.',
  'The main fraction is ending.': 'Der Hauptlauf geht zu Ende.',
  'The limit of {limit} is just about reached: {passed} sure that it is passed.':
    'Die Grenze von {limit} ist gerade etwa erreicht: {passed} sicher, dass sie überschritten ist.',
  'The limit of {limit} is reached, {passed} sure.':
    'Die Grenze von {limit} ist erreicht, {passed} sicher.',
  'The limit of {limit} is {toGo} away, within what probe and air pressure leave open.':
    'Bis zur Grenze von {limit} sind es {toGo}, soweit Sonde und Luftdruck das offen lassen.',
  'The limit of {limit} comes {when} by the rise of the vapour, which runs ahead of the bulb (reaction time {reactionTime} s).':
    'Die Grenze von {limit} kommt {when} nach dem Anstieg des Dampfs, der dem Fühler vorausläuft (Ansprechzeit {reactionTime} s).',
  'Probe reading cannot be right': 'Anzeige der Sonde kann nicht stimmen',
  'Read the glass thermometer by eye; heat off and cold before you touch or open the head.':
    'Das Glasthermometer mit dem Auge ablesen; vor dem Anfassen oder Öffnen des Kopfes Wärme weg und abkühlen lassen.',
  'Head and pot disagree': 'Kopf und Kolben widersprechen sich',
  'See which probe is where, and whether that of the pot is in the liquid; heat off and cold before you touch either.':
    'Nachsehen, welche Sonde wo ist, und ob die des Kolbens in der Flüssigkeit steckt; vor dem Anfassen Wärme weg und abkühlen lassen.',
  'Stages and the heat-off call go by the head alone: if it is the head that reads wrong, they are wrong as well.':
    'Die Abschnitte und die Aufforderung „Wärme weg“ richten sich allein nach dem Kopf: Zeigt er falsch an, sind auch sie falsch.',
  'The head reads hotter than the pot that feeds it.':
    'Der Kopf zeigt mehr an als der Kolben, der ihn speist.',
  'The head reads {head}, the pot that feeds it {pot}: one of the two cannot be right.':
    'Der Kopf zeigt {head} an, der Kolben, der ihn speist, {pot}: Eines von beiden kann nicht stimmen.',
  'A pot that reads hotter than the head.':
    'Hinfällig, sobald der Kolben mehr anzeigt als der Kopf.',
  'The head reads hotter than the pot that feeds it: one of the two is wrong.':
    'Der Kopf zeigt mehr an als der Kolben, der ihn speist: Eine der beiden Anzeigen ist falsch.',
  'Until the head can be trusted the heat-off call waits, or may come late or not at all.':
    'Solange dem Kopf nicht zu trauen ist, wartet die Aufforderung „Wärme weg“ oder kommt zu spät oder gar nicht.',
  'the probe is not trusted': 'der Sonde ist nicht zu trauen',
  'Readings that can be right coming in again.':
    'Hinfällig, sobald wieder Werte kommen, die stimmen können.',
  'The head cannot be trusted.': 'Dem Kopf ist nicht zu trauen.',
  'The head cannot be trusted: {probeFault}.': 'Dem Kopf ist nicht zu trauen: {probeFault}.',
  '{act} The program starts reading again by itself; if it does not, close it and start it again, and go on with this run.':
    '{act} Das Programm liest von selbst wieder; wenn nicht, schließen, neu starten und mit diesem Versuch weitermachen.',
  '{act} {plugAct}': '{act} {plugAct}',
  'Check the plug at the computer and the cable up to the still.':
    'Den Stecker am Computer und das Kabel bis zur Apparatur prüfen.',
  'At {time}: readings come in again.': 'Nach {time}: es kommen wieder Werte.',
  'Probe lost': 'Sonde ausgefallen',
  'Until the head can be read the heat-off call waits, or may come late or not at all.':
    'Solange der Kopf nicht zu lesen ist, wartet die Aufforderung „Wärme weg“ oder kommt zu spät oder gar nicht.',
  'the probe sends nothing that can be used': 'die Sonde sendet nichts Brauchbares',
  'Good readings coming in again.': 'Hinfällig, sobald wieder gute Werte kommen.',
  '{because} The probe has dropped out {count} times in {time}.':
    '{because} Die Sonde ist {count}-mal in {time} ausgefallen.',
  '{quietAgain} without a dropout; once you have answered, good readings.':
    'Hinfällig nach {quietAgain} ohne Ausfall; nach einer Antwort, sobald gute Werte kommen.',
  'The head cannot be read.': 'Der Kopf ist nicht zu lesen.',
  'The head cannot be read: {probeFault}.': 'Der Kopf ist nicht zu lesen: {probeFault}.',
  'Probe in doubt': 'Sonde zweifelhaft',
  Surging: 'Stoßen',
  'Ease the heat.': 'Wärme kleiner stellen.',
  'Liquid thrown up the column spoils the separation.':
    'Flüssigkeit, die in die Kolonne hochgeworfen wird, verdirbt die Trennung.',
  'The head swings up and down by far more than its noise of {noise} around {at}.':
    'Der Kopf schwankt weit stärker als sein Rauschen von {noise} um {at}.',
  'A minute of steady readings.': 'Hinfällig nach einer Minute ruhiger Werte.',
  'The column is surging.': 'Die Kolonne stößt.',
};
