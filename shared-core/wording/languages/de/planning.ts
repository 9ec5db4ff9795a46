/** German of the room `planning`. */
export const planning: Readonly<Record<string, string>> = {
  'About {expected} kPa is usual at {altitudeM} m':
    'Bei {altitudeM} m sind etwa {expected} kPa üblich',
  'enter it as a sea-level value: it then means {stationPressure} kPa here.':
    'dann als Wert auf Meereshöhe eingeben: er bedeutet hier {stationPressure} kPa.',
  '{entered} looks like a weather-report value reduced to sea level. {usual}. Read a barometer in the room, or {meaning}':
    '{entered} sieht nach einem auf Meereshöhe umgerechneten Wert aus dem Wetterbericht aus. {usual}. Ein Barometer im Raum ablesen; sonst {meaning}',
  '{entered} is possible here, but fits a value reduced to sea level better. {usual}. If it comes from a weather report, {meaning}':
    '{entered} ist hier möglich, passt aber besser zu einem auf Meereshöhe umgerechneten Wert. {usual}. Stammt er aus einem Wetterbericht, {meaning}',
  '{pressure} kPa is plausible. {usual}.': '{pressure} kPa ist plausibel. {usual}.',
  '{pressure} is not a pressure in kPa, but it would be one in {unit}: {stationPressure} kPa. {usual}.':
    '{pressure} ist kein Druck in kPa, wäre aber einer in {unit}: {stationPressure} kPa. {usual}.',
  '{pressure} kPa cannot be the air pressure here. {usual}. Check the altitude and the barometer.':
    '{pressure} kPa kann hier nicht der Luftdruck sein. {usual}. Die Höhe und das Barometer prüfen.',
  'smallest step of the barometer': 'kleinster Schritt des Barometers',
  'steps of {resolution} kPa': 'Schritte von {resolution} kPa',
  'distance to the weather station and rounding': 'Entfernung zur Wetterstation und Rundung',
  'a usual change over 100 km; no source': 'übliche Änderung über 100 km; ohne Quelle',
  'day-to-day spread of sea-level pressure in middle latitudes; from memory':
    'Streuung des Drucks auf Meereshöhe von Tag zu Tag in mittleren Breiten; aus dem Gedächtnis',
  'error of the barometer': 'Fehler des Barometers',
  'limits ± {tolerance} kPa assumed, as usual for small digital barometers; from memory':
    'Grenzen ± {tolerance} kPa angenommen, wie bei kleinen digitalen Barometern üblich; aus dem Gedächtnis',
  'stated limits ± {tolerance} kPa': 'angegebene Grenzen ± {tolerance} kPa',
  'weather since the reading': 'Wetter seit dem Ablesen',
  '{ageH} h at a usual change of 0.1 kPa in 3 h; from memory':
    '{ageH} h bei üblicher Änderung von 0,1 kPa in 3 h; aus dem Gedächtnis',
  'altitude of the still': 'Höhe der Apparatur',
  'limits ± {toleranceM} m': 'Grenzen ± {toleranceM} m',
  'temperature of the air below the still': 'Temperatur der Luft unterhalb der Apparatur',
  'the air column may be {standard} °C off what was assumed; round figure, no source':
    'die Luftsäule kann um {standard} °C von der Annahme abweichen; runde Zahl, ohne Quelle',
  'Air pressure at the still: {pressure} kPa ± {doubt} kPa (k = 2), from {origin}.':
    'Luftdruck an der Apparatur: {pressure} kPa ± {doubt} kPa (k = 2), aus: {origin}.',
  'Air pressure at the still: {pressure} kPa ± {doubt} kPa (k = 2), from {origin}; the largest doubt is the {largest}.':
    'Luftdruck an der Apparatur: {pressure} kPa ± {doubt} kPa (k = 2), aus: {origin}; der größte Zweifel: {largest}.',
  'a barometer reading': 'abgelesenes Barometer',
  'the pressure sensor': 'Drucksensor',
  'a weather report converted to this altitude': 'auf diese Höhe umgerechneter Wetterbericht',
  'the steam of boiling water': 'Dampf siedenden Wassers',
  'the altitude alone': 'Höhe allein',
  'temperature of the steam': 'Temperatur des Dampfs',
  'error of the probe': 'Fehler der Sonde',
  'what is not known of the probe after any calibration':
    'was von der Sonde nach jeder Kalibrierung nicht bekannt ist',
  'settling of the reading': 'Einstellen des Werts',
  'scatter, drift and smallest step of the reading in the steam':
    'Streuung, Drift und kleinster Schritt des Werts im Dampf',
  'steam in the neck of a flask': 'Dampf im Hals eines Kolbens',
  'limits ± {limit} K; common practice, no source':
    'Grenzen ± {limit} K; übliche Praxis, ohne Quelle',
  '{air} But the limit as this very probe will show it is known to ± {doubt} K (k = 2): what the probe is off by is in both, and falls out.':
    '{air} Die Grenze, wie gerade diese Sonde sie zeigen wird, ist aber auf ± {doubt} K (k = 2) bekannt: wie weit die Sonde abweicht, steckt in beidem und fällt heraus.',
  '{shown} °C is not the steam of boiling water: that has {low} to {high} °C. Hang the probe in the steam, above the water; let the water boil well, and wait until the reading stands.':
    '{shown} °C hat kein Dampf siedenden Wassers: er hat {low} bis {high} °C. Die Sonde in den Dampf hängen, über dem Wasser; das Wasser kräftig sieden lassen und warten, bis der Wert steht.',
  '{shown} °C is not the steam of boiling water: that has {low} to {high} °C. Hang the probe above the water, not in it, clear of the glass, and boil water without salt.':
    '{shown} °C hat kein Dampf siedenden Wassers: er hat {low} bis {high} °C. Die Sonde über das Wasser hängen, nicht hinein, frei vom Glas, und Wasser ohne Salz sieden lassen.',
  'At {altitudeM} m water boils at {boiling} °C ± {weather} K, but the probe shows {shown} °C: it hangs in too little steam, reads too low by more than its ± {limit} K, or the altitude is not right. Boil harder, hang it deeper in the steam and take the reading again: one that is too low calls heat off too early.':
    'Bei {altitudeM} m siedet Wasser bei {boiling} °C ± {weather} K, die Sonde aber zeigt {shown} °C: sie hängt in zu wenig Dampf, zeigt um mehr als ihre ± {limit} K zu tief, oder die Höhe stimmt nicht. Kräftiger sieden lassen, sie tiefer in den Dampf hängen und den Wert neu aufnehmen: ein zu tiefer ruft zu früh zum Wegnehmen der Wärme.',
  'At {altitudeM} m water boils at {boiling} °C ± {weather} K, but the probe shows {shown} °C: it reads too high by more than its ± {limit} K, touches water or glass, or the altitude is not right. Hang it freely above the water and take the reading again. If it stays so, check the altitude: the limit on this probe holds all the same.':
    'Bei {altitudeM} m siedet Wasser bei {boiling} °C ± {weather} K, die Sonde aber zeigt {shown} °C: sie zeigt um mehr als ihre ± {limit} K zu hoch, berührt Wasser oder Glas, oder die Höhe stimmt nicht. Sie frei über das Wasser hängen und den Wert neu aufnehmen. Bleibt es dabei, die Höhe prüfen: die Grenze auf dieser Sonde gilt trotzdem.',
  'station pressure': 'Luftdruck am Ort',
  'plates not known': 'Böden nicht bekannt',
  'no column': 'keine Kolonne',
  '1 plate': '1 Boden',
  '{count} plates': '{count} Böden',
  'This is no settings file of a pack: choose the one in its folder "settings".':
    'Dies ist keine Einstellungsdatei eines Pakets: die aus seinem Ordner „settings“ wählen.',
  'call heard at the still': 'Ruf an der Apparatur gehört',
  'call not heard at the still': 'Ruf an der Apparatur nicht gehört',
  'class screen read from the back row': 'Klassenbildschirm aus der letzten Reihe gelesen',
  'class screen not read from the back row':
    'Klassenbildschirm aus der letzten Reihe nicht gelesen',
  'Name of the run': 'Name des Versuchs',
  'Volume in the pot': 'Menge im Kolben',
  'Still and column': 'Apparatur und Kolonne',
  Heat: 'Wärme',
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
  'Working out how well the end will be known …':
    'Es wird ausgerechnet, wie gut das Ende bekannt sein wird …',
  'Half-way, the end of the main fraction will be known to ± {minutes} min':
    'Auf halbem Weg wird das Ende des Hauptlaufs auf ± {minutes} min bekannt sein',
  'with a balance under the receiver ± {minutes} min':
    'mit einer Waage unter der Vorlage auf ± {minutes} min',
  'with the heat stated ± {minutes} min': 'mit angegebener Wärme auf ± {minutes} min',
  'with a probe in the pot ± {minutes} min': 'mit einer Sonde im Kolben auf ± {minutes} min',
  'Expected head temperature. {sentence}': 'Erwartete Kopftemperatur. {sentence}',
  'Mean strength of the distillate against the share of ethanol collected: the more is collected, the weaker it gets.':
    'Mittlerer Gehalt des Destillats gegen den Anteil des aufgefangenen Ethanols: je mehr aufgefangen ist, desto schwächer wird es.',
  'Stopping at {leastMean} on average collects about {quantity} of the ethanol.':
    'Wer bei {leastMean} im Mittel aufhört, fängt etwa {quantity} des Ethanols auf.',
  'Expected, with {percent} % intervals': 'Erwartet, mit {percent}-%-Bereichen',
  'Charge boils at': 'Füllung siedet bei',
  'Plateau of this charge and rig': 'Plateau dieser Füllung und dieses Aufbaus',
  none: 'keiner',
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
};
