/** German of the room `words`. */
export const words: Readonly<Record<string, string>> = {
  'The file was saved. {message}': 'Die Datei wurde gespeichert. {message}',
  'Stages, calls, estimates and the verdict are missing: the monitor failed on this record ({reason}). Every reading and mark that was recorded is there.':
    'Abschnitte, Aufrufe, Schätzungen und das Urteil fehlen: die Auswertung ist an diesem Protokoll gescheitert ({reason}). Jeder aufgezeichnete Messwert und jede Markierung ist da.',
  'More than the {charge} mL that went into the pot. Look at the number of {unit} again; if it is right, press once more and correct the charge later: until then the balance leaves it out.':
    'Mehr als die {charge} mL, die in den Kolben kamen. Die Zahl der {unit} noch einmal ansehen; stimmt sie, noch einmal drücken und die Füllung später berichtigen: bis dahin lässt die Bilanz sie weg.',
  'still head': 'Destillationskopf',
  'condenser outlet': 'Kühlerausgang',
  room: 'Raum',
  ferment: 'Gäransatz',
  receiver: 'Vorlage',
  heater: 'Heizung',
  'number {count}': 'Nummer {count}',
  'second {name}': '{name}, zweite Sonde',
  '{name}, number {count}': '{name}, Nummer {count}',
  'the rigs of earlier lessons': 'die Aufbauten früherer Stunden',
  'how each probe was understood the last time': 'wie jede Sonde zuletzt verstanden wurde',
  'the log of a ferment': 'das Protokoll eines Gäransatzes',
  'A newer version of this program wrote “{name}” ({held}). This one leaves it as it is and can’t use it. Use the newer version, or go on without.':
    'Eine neuere Version dieses Programms hat „{name}“ ({held}) geschrieben. Diese lässt die Datei, wie sie ist, und kann sie nicht verwenden. Die neuere Version verwenden oder ohne sie weitermachen.',
  'The beginning of “{name}” ({held}) can’t be read. The file is left as it is and not listed. Show it to whoever looks after this computer.':
    'Der Anfang von „{name}“ ({held}) ist nicht lesbar. Die Datei bleibt, wie sie ist, und wird nicht aufgeführt. Sie der Person zeigen, die diesen Computer betreut.',
  '“{name}” ({held}) can’t be read, or only in part. When something new is kept, the file as it is now stays beside it as “{name}.not-understood”. Show that to whoever looks after this computer, or go on without.':
    '„{name}“ ({held}) ist nicht oder nur zum Teil lesbar. Sobald etwas Neues gespeichert wird, bleibt die jetzige Datei als „{name}.not-understood“ daneben liegen. Diese der Person zeigen, die diesen Computer betreut, oder ohne sie weitermachen.',
  'at {temperature} °C': 'bei {temperature} °C',
  'alcoholometer {strength}{at}': 'Alkoholometer {strength}{at}',
  'hydrometer {density}{at}': 'Spindel {density}{at}',
  'pycnometer with {mass}{at}': 'Pyknometer mit {mass}{at}',
  '{volume} weigh {mass}{at}': '{volume} wiegen {mass}{at}',
  'refractometer {reading}': 'Refraktometer {reading}',
  '% of the mass': '% der Masse',
  'gas chromatograph {strength}': 'Gaschromatograph {strength}',
  'label {strength}': 'Etikett {strength}',
  'Heat eased': 'Wärme kleiner',
  'Receiver changed, {volume} mL in the old one': 'Vorlage gewechselt, {volume} mL in der alten',
  '{volume} mL in the receiver': '{volume} mL in der Vorlage',
  '{massG} g in the receiver': '{massG} g in der Vorlage',
  '{drops} drops a minute': '{drops} Tropfen je Minute',
  '{alcoholByVolume} % vol read{at}': '{alcoholByVolume} % vol abgelesen{at}',
  'Air pressure {pressure} kPa': 'Luftdruck {pressure} kPa',
  'Prompt acknowledged': 'Aufforderung bestätigt',
  'Prompt put aside for {minutes} min': 'Aufforderung für {minutes} min zurückgestellt',
  '{sugarG} g of sugar in the ferment': '{sugarG} g Zucker im Gäransatz',
  'Burned as proof: {volume} mL of cut {cut}, {proofSight} ({role})':
    'Zum Nachweis abgebrannt: {volume} mL aus Fraktion {cut}, {proofSight} ({role})',
  'Mark withdrawn': 'Marke zurückgenommen',
  'Without a mark for thousands, please: 1700, not 1,700.':
    'Bitte ohne Tausenderzeichen: 1700, nicht 1.700.',
  '{by} high': '{by} zu hoch',
  '{by} low': '{by} zu tief',
  'reads about {offset}': 'zeigt etwa {offset}',
  'between {low} and {high}': 'zwischen {low} und {high}',
  'true within {range}': 'richtig auf {range}',
  'with the air pressure, as far as this run shows':
    'mit dem Luftdruck, soweit dieser Versuch zeigt',
  "Vapour of {strength} condenses at {limit} at {pressure}; this probe then shows {onProbe}. How far it is off, together with the air pressure entered, is learned while the head holds. The band on the strip, the limit and the prompts are on the probe's scale.":
    'Dampf mit {strength} kondensiert bei {pressure} bei {limit}; diese Sonde zeigt dann {onProbe}. Wie weit sie abweicht, zusammen mit dem eingegebenen Luftdruck, wird gelernt, während der Kopf hält. Das Band im Verlauf, die Grenze und die Aufforderungen stehen auf der Skala der Sonde.',
  'This account may not open {path}. In a terminal type: sudo usermod -aG dialout $USER – then log out and in again.':
    'Dieses Konto darf {path} nicht öffnen. In einem Terminal eingeben: sudo usermod -aG dialout $USER – dann ab- und wieder anmelden.',
  'This account may not open {path}. Ask the person who looks after this computer.':
    'Dieses Konto darf {path} nicht öffnen. Fragen, wer diesen Computer betreut.',
  '{path} is in use by another program. Close that program, then choose the port again.':
    '{path} wird von einem anderen Programm benutzt. Dieses Programm schließen, dann den Anschluss noch einmal wählen.',
  '{path} is not there. Check the plug, or choose another port.':
    '{path} ist nicht da. Den Stecker prüfen oder einen anderen Anschluss wählen.',
  '{path} could not be opened ({message}). Unplug the probe, plug it in again and retry.':
    '{path} ließ sich nicht öffnen ({message}). Die Sonde abziehen, wieder einstecken und noch einmal versuchen.',
  'No probe is connected. Choose a port or start the rehearsal rig first.':
    'Keine Sonde ist verbunden. Zuerst einen Anschluss wählen oder den Probestand starten.',
  'A run is being recorded already. Stop it before starting another.':
    'Es wird schon ein Versuch aufgezeichnet. Ihn vor dem nächsten beenden.',
  'No run is being recorded. Start one in Prepare.':
    'Es wird kein Versuch aufgezeichnet. Einen unter „Vorbereiten“ starten.',
  'This run is no longer in the library. It may have been moved.':
    'Dieser Versuch ist nicht mehr im Archiv. Vielleicht wurde er verschoben.',
  'This run cannot go on any more. It is in the library as far as it was recorded; start a new one in Prepare.':
    'Dieser Versuch lässt sich nicht mehr fortsetzen. Er ist im Archiv, soweit er aufgezeichnet wurde; einen neuen unter „Vorbereiten“ starten.',
  'This run is not saved yet, and is not changed before it is. What is to be done for that stands above.':
    'Dieser Versuch ist noch nicht gespeichert und wird vorher nicht geändert. Was dafür zu tun ist, steht oben.',
  'This run could not be read. {stopped} The file is left as it is.':
    'Dieser Versuch ließ sich nicht lesen. {stopped} Die Datei bleibt, wie sie ist.',
  'The disk does not answer ({path}): what was heard last is only in memory so far. A virus scanner, or a drive that sleeps, may hold it. Leave the program open; it is saved as soon as the disk takes it.':
    'Der Datenträger antwortet nicht ({path}): Was zuletzt gehört wurde, steht bisher nur im Arbeitsspeicher. Vielleicht hält ein Virenscanner es auf, oder ein Laufwerk schläft. Das Programm offen lassen; es wird gesichert, sobald der Datenträger es annimmt.',
  'There is no room left at {path}. Free some space; everything saved so far stays.':
    'Bei {path} ist kein Platz mehr. Platz schaffen; alles bisher Gespeicherte bleibt.',
  '{path} cannot be written to. Choose a folder of your own, or ask who looks after this computer.':
    'In {path} lässt sich nicht schreiben. Einen eigenen Ordner wählen oder fragen, wer diesen Computer betreut.',
  '{path} cannot be reached ({message}). Check the drive.':
    '{path} ist nicht zu erreichen ({message}). Das Laufwerk prüfen.',
  'The folder {path} is gone. Put it back, plug its drive in again, or make it anew.':
    'Der Ordner {path} ist nicht mehr da. Ihn zurücklegen, sein Laufwerk wieder einstecken oder ihn neu anlegen.',
  'Not being saved. The folder of the runs is gone: {path}. Put it back, or plug its drive in again: what was heard meanwhile is then saved. If it will not come back, make it anew: this run is then written whole, from its beginning.':
    'Wird nicht gespeichert. Der Ordner der Versuche ist nicht mehr da: {path}. Ihn zurücklegen oder sein Laufwerk wieder einstecken: was inzwischen gehört wurde, wird dann gespeichert. Kommt er nicht wieder, ihn neu anlegen: dann wird dieser Versuch ganz geschrieben, von seinem Anfang an.',
  'The folder of the runs is gone: {path}. Put it back, or plug its drive in again. If it will not come back, make it anew: it is empty then.':
    'Der Ordner der Versuche ist nicht mehr da: {path}. Ihn zurücklegen oder sein Laufwerk wieder einstecken. Kommt er nicht wieder, ihn neu anlegen: dann ist er leer.',
  'The folder of the runs is gone: {path}. Put it back, or plug its drive in again. If it will not come back, make it anew: what is not saved yet is then written there, whole, and nothing else is in it.':
    'Der Ordner der Versuche ist nicht mehr da: {path}. Ihn zurücklegen oder sein Laufwerk wieder einstecken. Kommt er nicht wieder, ihn neu anlegen: dann wird ganz hineingeschrieben, was noch nicht gespeichert ist, und sonst steht nichts darin.',
  'Not saved: the run “{name}” is over after {ended}, and the disk took only {savedTo} of it before the folder was gone. It is in memory whole: leave the program open, and it is saved by itself once the folder is there.':
    'Nicht gespeichert: der Versuch „{name}“ ist nach {ended} zu Ende, und der Datenträger nahm nur {savedTo} davon, bevor der Ordner weg war. Er steht ganz im Arbeitsspeicher: das Programm offen lassen, dann wird er von selbst gespeichert, sobald der Ordner da ist.',
  'Not saved: the run “{name}” is over after {ended}, and the disk took only {savedTo} of it. It is in memory whole: leave the program open, and it is saved by itself as soon as the disk takes it. {what}':
    'Nicht gespeichert: der Versuch „{name}“ ist nach {ended} zu Ende, und der Datenträger nahm nur {savedTo} davon. Er steht ganz im Arbeitsspeicher: das Programm offen lassen, dann wird er von selbst gespeichert, sobald der Datenträger ihn annimmt. {what}',
  'Make the folder anew': 'Den Ordner neu anlegen',
  'Another window of this program is using {path}. Do it there, or close that one first.':
    'Ein anderes Fenster dieses Programms benutzt {path}. Es dort tun oder jenes zuerst schließen.',
  'A newer version of this program wrote {path}, and this one leaves it as it is. Use the newer one, or move that file to another folder.':
    'Eine neuere Fassung dieses Programms hat {path} geschrieben, und diese lässt die Datei, wie sie ist. Die neuere Fassung benutzen oder jene Datei in einen anderen Ordner legen.',
  'That could not be done: {message}.': 'Das ging nicht: {message}.',
  'This window only shows the run. Use the window at the bench.':
    'Dieses Fenster zeigt den Versuch nur. Das Fenster am Experimentiertisch benutzen.',
  'The connection to the recorder was lost. Nothing was changed; try again once it is back.':
    'Die Verbindung zum Aufzeichner ging verloren. Nichts wurde geändert; noch einmal versuchen, sobald sie wieder da ist.',
  'The connection to the recorder was lost before it answered. It may have been done all the same: look once it is back, before you do it again.':
    'Die Verbindung zum Aufzeichner ging verloren, bevor er antwortete. Es kann trotzdem geschehen sein: nachsehen, sobald sie wieder da ist, und erst dann noch einmal tun.',
  'This was given up: something else was asked of the probe meanwhile, and that holds.':
    'Das wurde aufgegeben: von der Sonde wurde inzwischen etwas anderes verlangt, und das gilt.',
  'Something went wrong inside the program ({message}). What was recorded is kept. Try again; if it stays, start the program anew.':
    'Im Programm ging etwas schief ({message}). Was aufgezeichnet wurde, bleibt. Noch einmal versuchen; bleibt es so, das Programm neu starten.',
  'within {seconds} s': 'innerhalb von {seconds} s',
  'within {highMinutes} min': 'innerhalb von {highMinutes} min',
  'in {lowMinutes}–{highMinutes} min': 'in {lowMinutes}–{highMinutes} min',
  'time of the run not known': 'Zeit des Versuchs nicht bekannt',
  'Advice has stopped: no prompt will come in this run. Read the thermometer in the still head and go by it. Readings are still recorded. ({message})':
    'Die Beratung hat aufgehört: in diesem Versuch kommt keine Aufforderung mehr. Das Thermometer im Destillationskopf ablesen und sich danach richten. Werte werden weiter aufgezeichnet. ({message})',
  'The record of this run has a gap: for a while the disk took nothing, and not all readings found room in memory. Note by hand what you read meanwhile; Look back says how many are missing.':
    'Die Aufzeichnung dieses Versuchs hat eine Lücke: eine Weile nahm der Datenträger nichts an, und nicht alle Messwerte fanden Platz im Speicher. Was inzwischen abgelesen wurde, von Hand notieren; der Rückblick sagt, wie viele fehlen.',
  'Little room is left at {path}. Free some space soon; everything is still being saved.':
    'Bei {path} ist wenig Platz. Bald Platz schaffen; noch wird alles gespeichert.',
  'Not being saved. {what}': 'Wird nicht gespeichert. {what}',
  'This run can’t be opened: its beginning is damaged, or a newer version of this program wrote it. Open it with the newest version, or save its files and show them to whoever looks after this computer.':
    'Dieser Versuch lässt sich nicht öffnen: sein Anfang ist beschädigt, oder eine neuere Fassung dieses Programms hat ihn geschrieben. Ihn mit der neuesten Fassung öffnen oder seine Dateien sichern und zeigen, wer diesen Computer betreut.',
  'Nothing was recorded of this run: it ended while it was being started. No reading is missing; it can be removed.':
    'Von diesem Versuch wurde nichts aufgezeichnet: er endete, während er begonnen wurde. Kein Messwert fehlt; er kann entfernt werden.',
  'This run can’t be opened: its record is not in its folder “{runId}” any more. If “run.jsonl” was moved, put it back.':
    'Dieser Versuch lässt sich nicht öffnen: seine Aufzeichnung ist nicht mehr in seinem Ordner „{runId}“. Wurde „run.jsonl“ verschoben, sie zurücklegen.',
  'This account may not read this run. Ask who looks after this computer to let it read the folder “{runId}”.':
    'Dieses Konto darf diesen Versuch nicht lesen. Wer diesen Computer betreut, soll ihm den Ordner „{runId}“ zum Lesen freigeben.',
  'The disk does not give this run ({message}). Check the drive; what can be read of its files can be saved now.':
    'Das Laufwerk gibt diesen Versuch nicht her ({message}). Das Laufwerk prüfen; was von seinen Dateien lesbar ist, lässt sich jetzt sichern.',
  teacher: 'Lehrkraft',
  technician: 'Technik',
  'each probe needs a port of its own': 'jede Sonde braucht einen eigenen Anschluss',
  'no pattern: {pattern}': 'kein Muster: {pattern}',
  '{most} rigs are kept already. Take one away first':
    'es sind schon {most} Aufbauten aufgehoben. Zuerst einen davon wegnehmen',
  'Its header is damaged or was written by a newer version of this program.':
    'Sein Anfang ist beschädigt oder wurde von einer neueren Version dieses Programms geschrieben.',
  'Nothing was recorded of it: it ended while it was being started.':
    'Von ihm wurde nichts aufgezeichnet: er endete, während er begonnen wurde.',
  'a second screen is opened by its address':
    'ein zweiter Bildschirm wird über seine Adresse geöffnet',
  'this pack is no longer here; make it again':
    'dieses Paket ist nicht mehr da; noch einmal packen',
  'The part that reads and writes whole runs stopped. Try it once more.':
    'Der Teil, der ganze Versuche liest und schreibt, ist stehen geblieben. Noch einmal versuchen.',
};
