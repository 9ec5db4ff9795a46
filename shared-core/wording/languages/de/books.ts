/** German of the room `books`. */
export const books: Readonly<Record<string, string>> = {
  'Back to the run': 'Zurück zum Versuch',
  '± here as it was entered, k = 1; in the tables k = 2.':
    '± hier wie eingegeben, k = 1; in den Tabellen k = 2.',
  Charge: 'Füllung',
  '{name}: {mass} is more than the {charged} that were charged, so it is not in the balance. Look at its amount again, or correct the charge.':
    '{name}: {mass} ist mehr als die {charged}, die eingefüllt wurden, und steht deshalb nicht in der Bilanz. Die Menge noch einmal ansehen oder die Füllung berichtigen.',
  'Cut {number}: {received} in its receiver and {measured} measured later are not one liquid. {measured} is booked; look at both again.':
    'Fraktion {number}: {received} in der Vorlage und später gemessene {measured} sind nicht dieselbe Flüssigkeit. Gebucht sind {measured}; beide noch einmal ansehen.',
  'All liquids together weigh {mass}, more than the {charged} that were charged: an amount or the charge is wrong, and the balance with it.':
    'Alle Flüssigkeiten zusammen wiegen {mass}, mehr als die {charged}, die eingefüllt wurden: eine Menge oder die Füllung ist falsch, und die Bilanz mit ihr.',
  Residue: 'Rückstand',
  'Hold-up': 'Haftmenge in der Kolonne',
  'A cut without an amount or a strength is left out of the balance.':
    'Eine Fraktion ohne Menge oder ohne Gehalt bleibt aus der Bilanz weg.',
  'What cut {cuts} held is not known. So the recovery is at least as told, nothing says whether the balance closes, and no simple distillation can be set beside it.':
    'Was Fraktion {cuts} enthielt, ist nicht bekannt. Die Ausbeute ist deshalb mindestens die genannte, ob die Bilanz aufgeht, lässt sich nicht sagen, und keine einfache Destillation lässt sich danebenstellen.',
  '{figure} or more': '{figure} oder mehr',
  '{figure} as read': '{figure} wie abgelesen',
  'Ethanol in the cuts measured': 'Ethanol in den gemessenen Fraktionen',
  'Nobody stated the strength of the charge: {strength} % vol is assumed.':
    'Niemand hat die Stärke der Füllung angegeben: angenommen sind {strength} % vol.',
  'Nobody stated the volume of the charge: {volume} mL is assumed.':
    'Niemand hat das Volumen der Füllung angegeben: angenommen sind {volume} mL.',
  'Liquid left in the column and the condenser was not measured; it is missing from the balance.':
    'Flüssigkeit, die in Kolonne und Kühler blieb, wurde nicht gemessen; sie fehlt in der Bilanz.',
  'Liquid left on the glass and in the condenser was not measured; it is missing from the balance.':
    'Flüssigkeit, die am Glas und im Kühler blieb, wurde nicht gemessen; sie fehlt in der Bilanz.',
  'The sugar is that of the ferment “{ferment}”, {sugar} g/L as it began, for the volume that was charged.':
    'Der Zucker ist der des Gäransatzes „{ferment}“, {sugar} g/L zu Beginn, für die eingefüllte Menge.',
  '{name}: its volume or mass was not measured, so it is not in the balance.':
    '{name}: Menge oder Masse wurde nicht gemessen und fehlt deshalb in der Bilanz.',
  '{name}: its strength or density was not measured, so it is not in the balance.':
    '{name}: Gehalt oder Dichte wurde nicht gemessen, deshalb fehlt die Flüssigkeit in der Bilanz.',
  '{name}: all readings were taken with one and the same instrument, whose own error is in each of them.':
    '{name}: alle Ablesungen stammen von ein und demselben Gerät, dessen eigener Fehler in jeder steckt.',
  '{name}: no mixture of ethanol and water has these readings ({message}), so it is not in the balance.':
    '{name}: keine Mischung aus Ethanol und Wasser hat diese Werte ({message}), deshalb fehlt sie in der Bilanz.',
  'Where no strength was measured it is taken from the head temperature while the cut was collected, weighed {how}. That is an estimate, not a measurement.':
    'Wo kein Gehalt gemessen wurde, wird er aus der Kopftemperatur genommen, während die Fraktion aufgefangen wurde, gewichtet {how}. Das ist eine Schätzung, keine Messung.',
  'by what the receiver gained': 'nach dem, was in die Vorlage kam',
  'by what the balance under the receiver gained':
    'nach dem, was auf die Waage unter der Vorlage kam',
  'by the volumes written down, and as at an even heat from one to the next':
    'nach den aufgeschriebenen Mengen und dazwischen wie bei gleichmäßiger Heizung',
  'as at an even heat, since no volume was written down':
    'wie bei gleichmäßiger Heizung, weil keine Menge aufgeschrieben wurde',
  'Cut {number}': 'Fraktion {number}',
  'Readings without a stated uncertainty (k = 1): volumes {volumeMl} mL and {volumePercent} %, masses {massG} g, alcoholometer {alcoholometerAbv} % vol and hydrometer {hydrometerKgPerM3} kg/m³, each mostly of the instrument itself, temperatures {temperatureK} K.':
    'Ablesungen ohne angegebene Unsicherheit (k = 1): Volumen {volumeMl} mL und {volumePercent} %, Massen {massG} g, Alkoholometer {alcoholometerAbv} % vol und Spindel {hydrometerKgPerM3} kg/m³, jeweils größtenteils vom Gerät selbst, Temperaturen {temperatureK} K.',
  '{name} itself': '{name} selbst',
  'The books don’t agree with the thermometer: by the temperatures {collected} mL of the {charged} mL of ethanol charged came over, which leaves a pot that boils at {pot} °C or below, yet the head read {head} °C. The charge was weaker than stated, ethanol was lost, or the thermometer read too high.':
    'Die Bücher passen nicht zum Thermometer: nach den Temperaturen gingen {collected} mL der eingefüllten {charged} mL Ethanol über; es bleibt ein Kolbeninhalt, der bei {pot} °C oder darunter siedet, und doch zeigte der Kopf {head} °C. Die Füllung war schwächer als angegeben, Ethanol ging verloren, oder das Thermometer zeigte zu hoch.',
  '{strength} % vol ({temperature} °C at {pressure} kPa)':
    '{strength} % vol ({temperature} °C bei {pressure} kPa)',
  'No reading is warm enough for vapour of ethanol and water, so nothing can be said of {limit}.':
    'Kein Wert ist warm genug für Dampf aus Ethanol und Wasser, über {limit} lässt sich deshalb nichts sagen.',
  'At no volume was the vapour as strong as {limit}: at its strongest it held {strength}, at {volumeMl} mL and {head} °C.':
    'Bei keiner Menge war der Dampf so stark wie {limit}: am stärksten enthielt er {strength}, bei {volumeMl} mL und {head} °C.',
  'The vapour was as strong as {limit} up to {until} mL, {strength} on average{doubt}; {after}.':
    'Der Dampf war so stark wie {limit} bis {until} mL, im Mittel {strength}{doubt}; {after}.',
  'After {first} mL of first fraction the vapour was as strong as {limit} up to {until} mL, {strength} on average{doubt}; {after}.':
    'Nach {first} mL Vorlauf war der Dampf so stark wie {limit} bis {until} mL, im Mittel {strength}{doubt}; {after}.',
  'The vapour was as strong as {limit} only up to {until} mL, within the {first} mL of the first fraction that were set: nothing was left for a main fraction.':
    'Der Dampf war so stark wie {limit} nur bis {until} mL, innerhalb der {first} mL, die für den Vorlauf festgelegt waren: für einen Hauptlauf blieb nichts.',
  ', so by the thermometer’s uncertainty it may have been weaker all along':
    ', könnte nach der Unsicherheit des Thermometers also durchgehend schwächer gewesen sein',
  'what came later was weaker': 'was später kam, war schwächer',
  'the readings end before it grew weaker': 'die Werte enden, bevor er schwächer wurde',
  'Books of “{name}”': 'Bücher von „{name}“',
  Measurements: 'Messungen',
  'None yet. For a balance measure how much residue is in the pot and how strong it is, and the same of each cut.':
    'Noch keine. Für eine Bilanz messen, wie viel Rückstand im Kolben ist und wie stark er ist, und dasselbe von jeder Fraktion.',
  'Add one': 'Eine hinzufügen',
  Balance: 'Waage',
  'Nothing is measured yet that could be balanced.':
    'Noch ist nichts gemessen, das sich bilanzieren ließe.',
  'Without a measured residue there is no closure: taking it from the difference would make every balance close.':
    'Ohne gemessenen Rückstand gibt es keinen Abgleich: aus der Differenz genommen würde jede Bilanz aufgehen.',
  'Taken for granted, and left out': 'Vorausgesetzt und weggelassen',
  'Withdraw {mark}': '{mark} zurücknehmen',
  Withdraw: 'Zurücknehmen',
  'Fermentable sugar in the juice or mash that this charge came from, as glucose and fructose (100 g of table sugar make {hexoseG} g).':
    'Vergärbarer Zucker im Saft oder in der Maische, aus der diese Füllung stammt, als Glucose und Fructose (100 g Haushaltszucker ergeben {hexoseG} g).',
  'Sugar in the ferment': 'Zucker im Gäransatz',
  'A number of grams, more than 0.': 'Eine Zahl in Gramm, mehr als 0.',
  Sugar: 'Zucker',
  'Standard uncertainty (empty: {percent} %)': 'Standardunsicherheit (leer: {percent} %)',
  'Keep sugar': 'Zucker behalten',
  'The table gives volumes and no times, so it is judged by its temperatures alone.':
    'Die Tabelle gibt Mengen und keine Zeiten, sie wird deshalb allein nach ihren Temperaturen beurteilt.',
  'Volumes as the receiver was measured.': 'Mengen, wie die Vorlage gemessen wurde.',
  'Volumes from the balance under the receiver.': 'Mengen aus der Waage unter der Vorlage.',
  'Volumes as written down, and as at an even heat from one to the next.':
    'Mengen wie aufgeschrieben, dazwischen wie bei gleichmäßiger Heizung.',
  'Volumes from the drip rate below, as at an even heat.':
    'Mengen aus der Tropfgeschwindigkeit unten, wie bei gleichmäßiger Heizung.',
  '“{name}” against volume': '„{name}“ gegen die Menge',
  'No volume was written down while distillate came over. State a drip rate to see the run against volume.':
    'Während Destillat überging, wurde keine Menge aufgeschrieben. Eine Tropfgeschwindigkeit angeben, um den Versuch gegen die Menge zu sehen.',
  'Drip rate': 'Tropfgeschwindigkeit',
  'Reflux ratio of the column of {plates, plural, one {# plate} other {# plates}}':
    'Rücklaufverhältnis der Kolonne mit {plates, plural, one {# Boden} other {# Böden}}',
  'Head temperature against the distillate collected. Dashed: what this charge would give in a simple still.':
    'Kopftemperatur gegen die aufgefangene Menge. Gestrichelt: was diese Füllung in einer einfachen Apparatur gäbe.',
  'Strength of the vapour against the distillate collected. Shaded: 95 % interval.':
    'Gehalt des Dampfs gegen die aufgefangene Menge. Schattiert: 95-%-Bereich.',
  'As strong as wanted': 'So stark wie verlangt',
  Weaker: 'Schwächer',
  'All together': 'Alles zusammen',
  'Cuts by the temperature (strength at 20 °C: 95 % interval)':
    'Fraktionen nach der Temperatur (Gehalt bei 20 °C: 95-%-Bereich)',
  Part: 'Teil',
  'Mean strength': 'Mittlerer Gehalt',
  'after the run only measurements of liquids can be added or withdrawn':
    'nach dem Versuch können nur Messungen an Flüssigkeiten ergänzt oder zurückgenommen werden',
  'Head temperature / °C': 'Kopftemperatur / °C',
  'limit: {leastStrength} % vol': 'Grenze: {leastStrength} % vol',
  'Head temperature of “{name}” against the volume of distillate: from {first} to {last} °C at {volume} mL.':
    'Kopftemperatur von „{name}“ gegen die Destillatmenge: von {first} bis {last} °C bei {volume} mL.',
  'Vapour / % vol': 'Dampf / % vol',
  'Strength of the vapour of “{name}” against the volume of distillate, from {first} to {last} % vol.':
    'Gehalt des Dampfs von „{name}“ gegen die Destillatmenge, von {first} bis {last} % vol.',
  'simple still (Rayleigh)': 'einfache Apparatur (Rayleigh)',
  'the column at the reflux entered': 'die Kolonne beim angegebenen Rücklauf',
  'Distillate / mL': 'Destillat / mL',
  'imported readings': 'übernommene Messwerte',
  '{value}, where {low} to {high} is possible': '{value}, wo {low} bis {high} möglich ist',
  'Sample from': 'Probe aus',
  'Mass balance': 'Bilanz',
  'Nobody stated the air pressure: {pressure} kPa ± {doubt} kPa is assumed.':
    'Niemand hat den Luftdruck angegeben: angenommen sind {pressure} kPa ± {doubt} kPa.',
  'Nobody stated the kind of probe: one that follows within {lag} s is assumed.':
    'Niemand hat die Art der Sonde angegeben: angenommen ist eine, die in {lag} s folgt.',
  'Nobody stated the kind of probe: one right to ± {doubt} K that follows within {lag} s is assumed.':
    'Niemand hat die Art der Sonde angegeben: angenommen ist eine, die auf ± {doubt} K stimmt und in {lag} s folgt.',
};
