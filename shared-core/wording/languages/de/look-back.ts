/** German of the room `look-back`. */
export const lookBack: Readonly<Record<string, string>> = {
  'What to know of this record': 'Was man von diesem Protokoll wissen muss',
  'Annotate {time}': '{time} kommentieren',
  'What happens here?': 'Was geschieht hier?',
  Cancel: 'Abbrechen',
  'Keep annotation': 'Kommentar behalten',
  'Correct charge and pressure': 'Füllung und Druck berichtigen',
  Reason: 'Grund',
  'The record itself stays as it was; books, replay and reports take what is right.':
    'Die Aufzeichnung selbst bleibt, wie sie war; Bücher, Wiedergabe und Berichte nehmen, was richtig ist.',
  Correct: 'Berichtigen',
  'All runs': 'Alle Versuche',
  'Recorded here': 'Hier aufgezeichnet',
  Imported: 'Importiert',
  Rehearsals: 'Probeläufe',
  'Find a run': 'Einen Versuch suchen',
  'No run has all of this. Part of a name, a month or a day is enough.':
    'Kein Versuch hat das alles. Ein Teil des Namens, ein Monat oder ein Tag genügt.',
  'Show all runs': 'Alle Versuche zeigen',
  '{count, plural, one {# run} other {# runs}}':
    '{count, plural, one {# Versuch} other {# Versuche}}',
  '{found} of {all, plural, one {# run} other {# runs}}':
    '{found} von {all, plural, one {# Versuch} other {# Versuchen}}',
  'Look back': 'Rückblick',
  'Reading the library …': 'Das Archiv wird gelesen …',
  'Runs, newest first': 'Versuche, die neuesten zuerst',
  'No run yet. Every run you record appears here, ready to replay and to hand out.':
    'Noch kein Versuch. Jeder aufgezeichnete Versuch erscheint hier, zum Abspielen und Weitergeben.',
  'Prepare one, or rehearse': 'Einen vorbereiten oder proben',
  Stage: 'Abschnitt',
  Prompt: 'Aufforderung',
  Mark: 'Marke',
  Annotation: 'Kommentar',
  'Jump to': 'Springen zu',
  'Books of {name}': 'Bücher von {name}',
  Books: 'Bücher',
  'Against volume: {name}': 'Gegen die Menge: {name}',
  'Against volume': 'Gegen die Menge',
  'Prove by burning … for {name}': 'Durch Abbrennen nachweisen … für {name}',
  'Prove by burning …': 'Durch Abbrennen nachweisen …',
  'What if … for {name}': 'Was wäre wenn … für {name}',
  'Export CSV of {name}': 'CSV von {name} exportieren',
  'Export CSV': 'CSV exportieren',
  'Export pack of {name}': 'Paket von {name} exportieren',
  'Export pack': 'Paket exportieren',
  'Name and notes … of {name}': 'Name und Notizen … von {name}',
  'Name and notes …': 'Name und Notizen …',
  'Correct charge and pressure … of {name}': 'Füllung und Druck berichtigen … von {name}',
  'Correct charge …': 'Füllung berichtigen …',
  'Reading the run …': 'Der Versuch wird gelesen …',
  'Going through the run once more …': 'Der Versuch wird noch einmal durchgegangen …',
  'Remove … {name}': 'Entfernen … {name}',
  'Remove …': 'Entfernen …',
  'Removed runs ({count, plural, one {# run} other {# runs}})':
    'Entfernte Versuche ({count, plural, one {# Versuch} other {# Versuche}})',
  'Put back {name}': '{name} zurücklegen',
  'Put back': 'Zurücklegen',
  Replay: 'Wiedergabe',
  'Annotate …': 'Kommentieren …',
  'Save the files of {name}': 'Die Dateien von {name} sichern',
  'Save its files': 'Seine Dateien sichern',
  'Replay {name}': '{name} wiedergeben',
  'Guess first: {name}': 'Zuerst raten: {name}',
  'More for {name}': 'Mehr zu {name}',
  More: 'Mehr',
  'No plateau': 'Kein Plateau',
  'Plateau at {plateau}': 'Plateau bei {plateau}',
  'heat-off prompt at {time}': 'Aufforderung „Wärme weg“ bei {time}',
  '{count, plural, one {# damaged record was skipped} other {# damaged records were skipped}}; the rest is good.':
    '{count, plural, one {# beschädigter Eintrag wurde übergangen} other {# beschädigte Einträge wurden übergangen}}; der Rest ist gut.',
  '{count, plural, one {# record is} other {# records are}} left out here: a newer version of this program wrote what this one does not know. Nothing of it is lost; that version shows it.':
    '{count, plural, one {# Eintrag fehlt} other {# Einträge fehlen}} hier: eine neuere Version dieses Programms schrieb, was diese nicht kennt. Verloren ist davon nichts; jene Version zeigt es.',
  'From {from} on nothing of the probe is recorded: the part of the program that reads it had stopped. What the probe sent then is lost.':
    'Ab {from} ist nichts von der Sonde aufgezeichnet: Der Teil des Programms, der sie liest, war stehen geblieben. Was die Sonde in dieser Zeit sendete, ist verloren.',
  'From {from} to {to} nothing of the probe is recorded: the part of the program that reads it had stopped. What the probe sent then is lost.':
    'Von {from} bis {to} ist nichts von der Sonde aufgezeichnet: Der Teil des Programms, der sie liest, war stehen geblieben. Was die Sonde in dieser Zeit sendete, ist verloren.',
  '{count, plural, one {# reading is} other {# readings are}} missing between {from} and {to}: the disk took nothing, and memory had no more room.':
    '{count, plural, one {# Messwert fehlt} other {# Messwerte fehlen}} zwischen {from} und {to}: der Datenträger nahm nichts an, und im Speicher war kein Platz mehr.',
  '{count, plural, one {# reading is} other {# readings are}} missing between {from} and {to}: more came from the probe than could be taken.':
    '{count, plural, one {# Messwert fehlt} other {# Messwerte fehlen}} zwischen {from} und {to}: Von der Sonde kam mehr, als aufgenommen werden konnte.',
  'When this table was taken in, the monitor failed on it from {from} on. The readings are all there; what is told of that time was worked out later.':
    'Als diese Tabelle aufgenommen wurde, fiel die Auswertung ab {from} aus. Die Messwerte sind alle da; was von dieser Zeit gesagt wird, wurde später errechnet.',
  'From {from} on nobody was advised: the monitor had failed. The readings are all recorded; what is told of that time was worked out after the run.':
    'Von {from} an gab es keine Beratung: sie war ausgefallen. Die Messwerte sind alle aufgezeichnet; was von dieser Zeit gesagt wird, wurde nach dem Versuch errechnet.',
  'From {from} to {to} nobody was advised: the monitor had failed. The readings are all recorded; what is told of that time was worked out after the run.':
    'Von {from} bis {to} gab es keine Beratung: sie war ausgefallen. Die Messwerte sind alle aufgezeichnet; was von dieser Zeit gesagt wird, wurde nach dem Versuch errechnet.',
  'a table by volume, without times': 'eine Tabelle nach Menge, ohne Zeiten',
  rehearsal: 'Probelauf',
  'cut off, saved up to its last second': 'abgebrochen, bis zur letzten Sekunde gespeichert',
  'cut off': 'abgebrochen',
  'perhaps not all on the disk yet': 'vielleicht noch nicht ganz auf dem Datenträger',
  'being recorded': 'wird aufgezeichnet',
  'Remove this run?': 'Diesen Versuch entfernen?',
  '“{name}” leaves the library. Nothing is deleted: it lies under “Removed runs” at the end of the list and can be put back from there.':
    '„{name}“ verlässt das Archiv. Nichts wird gelöscht: er liegt unter „Entfernte Versuche“ am Ende der Liste und lässt sich von dort zurücklegen.',
  'Keep it': 'Behalten',
  'Remove from the library': 'Aus dem Archiv entfernen',
  'Corrected after the run: {changes}. Reason: {reason}':
    'Nach dem Versuch berichtigt: {changes}. Grund: {reason}',
  'nothing changed': 'nichts geändert',
  '{some}; {other}': '{some}; {other}',
  'began {before} → {after}': 'Beginn {before} → {after}',
  'at a time not stated': 'zu keiner genannten Zeit',
  '{volume} mL of {strength} % vol': '{volume} mL mit {strength} % vol',
  'charge {before} → {after}': 'Füllung {before} → {after}',
  'air pressure {before} → {after}': 'Luftdruck {before} → {after}',
  '{volume} and {strength} % vol': '{volume} und {strength} % vol',
  'as usual for the volume': 'wie für das Volumen üblich',
  'standard uncertainty of the charge {before} → {after}':
    'Standardunsicherheit der Füllung {before} → {after}',
  '{rig}, {plates}': '{rig}, {plates}',
  'not described': 'nicht beschrieben',
  'rig {before} → {after}': 'Aufbau {before} → {after}',
  'The strength was only assumed: write what was measured, or how well it is known.':
    'Der Gehalt war nur angenommen: eintragen, was gemessen wurde oder wie gut er bekannt ist.',
  'The volume was only assumed: write what was measured, or how well it is known.':
    'Das Volumen war nur angenommen: eintragen, was gemessen wurde oder wie gut es bekannt ist.',
};
