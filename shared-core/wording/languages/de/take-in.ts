/** German of the room `take-in`. */
export const takeIn: Readonly<Record<string, string>> = {
  'The table has no times; it is taken by the volume in "{title}". What needs a time (stages, calls, duration) is left out.':
    'Die Tabelle hat keine Zeiten; sie wird nach der Menge in „{title}“ aufgenommen. Was eine Zeit braucht (Phasen, Aufforderungen, Dauer), bleibt weg.',
  'column {column}': 'Spalte {column}',
  '"{title}" (column {column})': '„{title}“ (Spalte {column})',
  '{taken} was taken for the head temperature, but {others} might be it as well. Give the right one the title "head_degC", or name it with --columns.':
    '{taken} wurde als Kopftemperatur genommen, aber {others} könnte es auch sein. Der richtigen den Titel „head_degC“ geben oder sie mit --columns nennen.',
  '{some}, {other}': '{some}, {other}',
  'The file is empty.': 'Die Datei ist leer.',
  'The file is not text. Save it as CSV first.':
    'Die Datei ist kein Text. Sie zuerst als CSV speichern.',
  'No time column was found{among}. Give one the title "time_s" (seconds), or, in a table by volume, "volume_mL" (all distillate so far).':
    'Keine Zeitspalte wurde gefunden{among}. Einer den Titel „time_s“ (Sekunden) geben oder, in einer Tabelle nach Menge, „volume_mL“ (alles Destillat bisher).',
  'The volume in "{title}" never grows. A table by volume needs all distillate so far: add the fractions up.':
    'Die Menge in „{title}“ wächst nie. Eine Tabelle nach Menge braucht alles Destillat bisher: die Fraktionen zusammenzählen.',
  'The volume in "{title}" falls in line {line}. A table by volume needs all distillate so far: where the receiver was changed, add what was there before; of what is left in the flask, take what is gone.':
    'Die Menge in „{title}“ fällt in Zeile {line}. Eine Tabelle nach Menge braucht alles Destillat bisher: nach einem Wechsel der Vorlage die vorige Menge dazuzählen; statt des Rests im Kolben nehmen, was ihm fehlt.',
  'No head temperature column was found{among}. Give one the title "head_degC" (°C).':
    'Keine Spalte mit der Kopftemperatur wurde gefunden{among}. Einer den Titel „head_degC“ (°C) geben.',
  'There is no column "{column}"{among}. Name it as the file does, or by its number from 1.':
    'Es gibt keine Spalte „{column}“{among}. Sie nennen wie in der Datei oder mit ihrer Nummer ab 1.',
  '"{unit}" is no unit that can be converted. Use °C, °F, K, g, kg, mL, kPa, hPa, Pa or mmHg.':
    '„{unit}“ ist keine Einheit, die sich umrechnen lässt. °C, °F, K, g, kg, mL, kPa, hPa, Pa oder mmHg benutzen.',
  'No time can be read in the column "{column}".':
    'In der Spalte „{column}“ ist keine Zeit zu lesen.',
  'Say which column holds the time, or the volume of distillate (channel "receiver", mL).':
    'Angeben, welche Spalte die Zeit oder die Menge des Destillats enthält (Kanal „receiver“, mL).',
  'The file holds more than {millions} million readings. Export a part of it, or every tenth reading.':
    'Die Datei enthält mehr als {millions} Millionen Werte. Einen Teil davon exportieren oder jeden zehnten Wert.',
  'No row of the file holds a time and a temperature.':
    'Keine Zeile der Datei enthält eine Zeit und eine Temperatur.',
  'No row of the file holds a time and a temperature. Line {line}: {reason}.':
    'Keine Zeile der Datei enthält eine Zeit und eine Temperatur. Zeile {line}: {reason}.',
  ' among {titles}': ' unter {titles}',
  'The head temperatures have no unit and were read as °C, but they look like °F: name the unit in the title, as in "head (°F)".':
    'Die Kopftemperaturen haben keine Einheit und wurden als °C gelesen, sehen aber nach °F aus: die Einheit im Titel nennen, wie in „head (°F)“.',
  '"{mark}" is no mark that can be read': '„{mark}“ ist keine lesbare Marke',
  'here end {count} more rows or values that could not be used':
    'hier enden {count} weitere Zeilen oder Werte, die nicht zu gebrauchen waren',
  'no value in the column "{title}" ("{text}")': 'kein Wert in der Spalte „{title}“ („{text}“)',
  '"{text}" in the column "{title}" is not a number':
    '„{text}“ in der Spalte „{title}“ ist keine Zahl',
  '{text} in the column "{title}" can\'t be a measured value':
    '{text} in der Spalte „{title}“ kann kein Messwert sein',
  'a number of seconds': 'eine Anzahl Sekunden',
  'a clock time': 'eine Uhrzeit',
  'a date': 'ein Datum',
  '"{shown}" is no time': '„{shown}“ ist keine Zeit',
  'the time "{shown}" is {kind}, but the times above it are not':
    'die Zeit „{shown}“ ist {kind}, die Zeiten darüber sind es nicht',
  'the time {shown} lies before the start': 'die Zeit {shown} liegt vor dem Beginn',
  'the time goes back to {shown}': 'die Zeit geht zurück auf {shown}',
  'the time {shown} lies more than a year after the start':
    'die Zeit {shown} liegt mehr als ein Jahr nach dem Beginn',
  'Time, the part below a minute or an hour': 'Zeit, der Teil unter einer Minute oder Stunde',
  'The times begin anew within the table ({count, plural, one {once} other {# times}}): what follows was put right behind what stands above, since nothing tells how long lay between.':
    'Die Zeiten beginnen in der Tabelle von vorn ({count, plural, one {einmal} other {#-mal}}): was folgt, wurde gleich hinter das gestellt, was darüber steht, denn nichts sagt, wie lange es dazwischen dauerte.',
  'The table begins with its newest row; it was read from its end.':
    'Die Tabelle beginnt mit der neuesten Zeile; sie wurde vom Ende her gelesen.',
  'The times are to the minute only; the readings of a minute ({rows} in most) were spread evenly over it.':
    'Die Zeiten stehen nur auf die Minute genau da; die Messwerte einer Minute (meist {rows}) wurden gleichmäßig über sie verteilt.',
  'The times were read as minutes and seconds. If they are hours and minutes, write "(h:mm)" behind the title of their column.':
    'Die Zeiten wurden als Minuten und Sekunden gelesen. Sind es Stunden und Minuten, „(h:mm)“ hinter den Titel ihrer Spalte schreiben.',
  'The times were read as hours and minutes. If they are minutes and seconds, write "(mm:ss)" behind the title of their column.':
    'Die Zeiten wurden als Stunden und Minuten gelesen. Sind es Minuten und Sekunden, „(mm:ss)“ hinter den Titel ihrer Spalte schreiben.',
  'Column {column}': 'Spalte {column}',
  'Take in the table of another logger': 'Die Tabelle eines anderen Messgeräts aufnehmen',
  'Take in a CSV of time and head temperature':
    'Eine CSV-Datei mit Zeit und Kopftemperatur aufnehmen',
  'You see its first lines and say which column holds what.':
    'Ihre ersten Zeilen erscheinen, und dann ist anzugeben, welche Spalte was enthält.',
  'Column {index}': 'Spalte {index}',
  empty: 'leer',
  '{column} holds': '{column} enthält',
  'Counted in': 'Gezählt in',
  '{extent, select, whole {The file gives} other {Its first lines give}} <strong>{count}</strong> head readings from <time>{from}</time> to <time>{to}</time>, between {low} and {high}.':
    '{extent, select, whole {Die Datei gibt} other {Ihre ersten Zeilen geben}} <strong>{count}</strong> Kopfwerte von <time>{from}</time> bis <time>{to}</time>, zwischen {low} und {high}.',
  '{extent, select, whole {The file gives} other {Its first lines give}} <strong>{count}</strong> head readings from {from} to {to} of distillate, without times, between {low} and {high}.':
    '{extent, select, whole {Die Datei gibt} other {Ihre ersten Zeilen geben}} <strong>{count}</strong> Kopfwerte von {from} bis {to} Destillat, ohne Zeiten, zwischen {low} und {high}.',
  '1 row or value can’t be used:': '1 Zeile oder Wert ist nicht zu gebrauchen:',
  '{count} rows or values can’t be used, such as:':
    '{count} Zeilen oder Werte sind nicht zu gebrauchen, etwa:',
  'The file can’t be read. Choose it again.':
    'Die Datei ist nicht zu lesen. Sie noch einmal wählen.',
  'First lines of the file': 'Erste Zeilen der Datei',
  'Which thermometer hung in the still head?': 'Welches Thermometer hing im Destillationskopf?',
  'The pot warms first and stays the hotter one; the head stays cool until vapour reaches it, then jumps.':
    'Der Kolben wird zuerst warm und bleibt der heißere; der Kopf bleibt kühl, bis Dampf ihn erreicht, dann springt er.',
  '{from} to {to}, {low} to {high}': '{from} bis {to}, {low} bis {high}',
  'from {temperature}, between {low} and {high}': 'ab {temperature}, zwischen {low} und {high}',
  'Say which column holds the time, or the volume of distillate.':
    'Angeben, welche Spalte die Zeit oder die Menge des Destillats enthält.',
  'Say which column holds the head temperature.':
    'Angeben, welche Spalte die Kopftemperatur enthält.',
  'Say which column holds the head temperature: {columns}.':
    'Angeben, welche Spalte die Kopftemperatur enthält: {columns}.',
  '{some} or {other}': '{some} oder {other}',
  'Not used': 'Nicht verwendet',
  'Head temperature': 'Kopftemperatur',
  'Pot temperature': 'Kolbentemperatur',
  'Condenser outlet temperature': 'Temperatur am Kühlerausgang',
  'Room temperature': 'Raumtemperatur',
  'Ferment temperature': 'Temperatur des Gäransatzes',
  'Receiver, mass or volume': 'Vorlage, Masse oder Menge',
  Marks: 'Marken',
  Remarks: 'Bemerkungen',
  'Something else: {holds}': 'Etwas anderes: {holds}',
  Comma: 'Komma',
  Semicolon: 'Strichpunkt',
  Tab: 'Tabulator',
  'Upright line': 'Senkrechter Strich',
  Spaces: 'Leerzeichen',
  'Point or comma': 'Punkt oder Komma',
  Point: 'Punkt',
  'Day first': 'Tag zuerst',
  'Month first': 'Monat zuerst',
  's, or a date': 's oder ein Datum',
  'd, or a date': 'd oder ein Datum',
  'Found by itself': 'Von selbst gefunden',
  'UTF-16, little end first': 'UTF-16, kleines Ende zuerst',
  'UTF-16, big end first': 'UTF-16, großes Ende zuerst',
  'Western (Windows-1252)': 'Westlich (Windows-1252)',
  'Western (ISO 8859-15)': 'Westlich (ISO 8859-15)',
  'Central European (Windows-1250)': 'Mitteleuropäisch (Windows-1250)',
  'Cyrillic (Windows-1251)': 'Kyrillisch (Windows-1251)',
  'Western (Mac Roman)': 'Westlich (Mac Roman)',
  'Chinese (GB 18030)': 'Chinesisch (GB 18030)',
  'Japanese (Shift JIS)': 'Japanisch (Shift JIS)',
  'As written': 'Wie geschrieben',
  'The column of the head temperature holds no number.':
    'Die Spalte der Kopftemperatur enthält keine Zahl.',
  'Only the first {mostColumnsShown} columns are offered.':
    'Nur die ersten {mostColumnsShown} Spalten werden angeboten.',
  'Say what was in the pot, how strong it was, and the air pressure.':
    'Angeben, was im Kolben war, wie stark es war, und den Luftdruck.',
  'Bringing the file in …': 'Die Datei wird hereingeholt …',
  'Take it in': 'Aufnehmen',
  'Columns are parted by': 'Spalten sind getrennt durch',
  'Decimal sign': 'Dezimalzeichen',
  'Dates like 03/04/2026': 'Daten wie 03/04/2026',
  Characters: 'Zeichen',
  'What the table does not tell': 'Was die Tabelle nicht sagt',
  'Settings file of a pack, if there is one': 'Einstellungsdatei eines Pakets, falls es eine gibt',
  'Began, if the file has no dates': 'Begonnen, falls die Datei keine Daten hat',
  'A number from {low} to {high}{unit}.': 'Eine Zahl von {low} bis {high}{unit}.',
  'Strength of the charge': 'Gehalt der Füllung',
  'Air pressure at the still': 'Luftdruck an der Apparatur',
  '0 for no column; leave empty if not known.':
    '0 für keine Kolonne; leer lassen, wenn nicht bekannt.',
  Rig: 'Aufbau',
  'Take in a table': 'Eine Tabelle aufnehmen',
  'Taken in as <strong>{name}</strong>. It stands in the library, marked as imported.':
    'Aufgenommen als <strong>{name}</strong>. Der Versuch steht im Archiv, als importiert bezeichnet.',
  'Left out, by line': 'Weggelassen, nach Zeilen',
  'Replay it': 'Wiedergeben',
  'the file is no longer here; choose it again':
    'die Datei ist nicht mehr da; sie noch einmal wählen',
  'the file is too large': 'die Datei ist zu groß',
  'the file grew while it was being read; choose it again':
    'die Datei wuchs, während sie gelesen wurde; sie noch einmal wählen',
  'the file has not come whole; choose it again':
    'die Datei kam nicht ganz an; sie noch einmal wählen',
};
