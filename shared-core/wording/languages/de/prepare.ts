/** German of the room `prepare`. */
export const prepare: Readonly<Record<string, string>> = {
  'Uncertainty of the volume': 'Unsicherheit des Volumens',
  'Uncertainty of the strength': 'Unsicherheit des Gehalts',
  'Standard uncertainty (k = 1); empty: {usual}.': 'Standardunsicherheit (k = 1); leer: {usual}.',
  'column not known': 'Kolonne nicht bekannt',
  '{count, plural, one {{count} plate} other {{count} plates}}':
    '{count, plural, one {{count} Boden} other {{count} Böden}}',
  'heat not known': 'Wärme nicht bekannt',
  'as it is called in this room': 'wie es in diesem Raum heißt',
  'What it counts for (theoretical plates); 0 for no column; leave empty if not known.':
    'Wofür sie zählt (theoretische Böden); 0 für keine Kolonne; leer lassen, wenn nicht bekannt.',
  'Leave empty if not known.': 'Leer lassen, wenn nicht bekannt.',
  'What to expect': 'Was zu erwarten ist',
  'Fill in the marked fields and the expected plateau appears here.':
    'Die markierten Felder ausfüllen, dann erscheint hier das erwartete Plateau.',
  'The plateau lies between': 'Das Plateau liegt zwischen',
  'Why this plateau?': 'Warum dieses Plateau?',
  'Why?': 'Warum?',
  'Azeotrope, the lowest it can be': 'Azeotrop, tiefer kann es nicht sein',
  '{leastStrength} reached at': '{leastStrength} erreicht bei',
  'Air pressure on the still': 'Luftdruck an der Apparatur',
  '{speed} times faster': '{speed}-mal schneller',
  Rehearse: 'Proben',
  'Rehearse first': 'Zuerst proben',
  'A simulated still plays a whole distillation of a pear-juice ferment: no glass, no heat, no probe. Practise the prompts before the class arrives.':
    'Eine simulierte Apparatur spielt eine ganze Destillation eines Birnensaft-Gäransatzes: kein Glas, keine Wärme, keine Sonde. Die Aufforderungen üben, bevor die Klasse kommt.',
  'How fast': 'Wie schnell',
  'Setting up the rig …': 'Der Probestand wird aufgebaut …',
  'Start the rehearsal': 'Probelauf starten',
  'Kept as “{wanted}”: one press brings it back next time.':
    'Als „{wanted}“ behalten: beim nächsten Mal bringt ein Druck alles zurück.',
  'Keep this set-up under a name': 'Diese Einstellungen unter einem Namen behalten',
  'Name of the rig': 'Name des Aufbaus',
  'such as: Lab 2, short column': 'etwa: Labor 2, kurze Kolonne',
  Replace: 'Ersetzen',
  Keep: 'Behalten',
  '{mostRigs} rigs are kept already. Take one away first.':
    '{mostRigs} Aufbauten sind schon behalten. Zuerst einen entfernen.',
  'Still, column, probe, limit and charge. Not the checks, nor what barometer or steam said today.':
    'Apparatur, Kolonne, Sonde, Grenze und Füllung. Nicht die Kontrollen und nicht das heutige Barometer.',
  'Kept rigs': 'Behaltene Aufbauten',
  'Take away: {name}': 'Entfernen: {name}',
  'Take away': 'Entfernen',
  'Or type where the probe is': 'Oder eingeben, wo die Sonde ist',
  '/dev/ttyACM0 or COM3': '/dev/ttyACM0 oder COM3',
  Connect: 'Verbinden',
  'Prepare the run': 'Den Versuch vorbereiten',
  'In the still head, level with the side arm.': 'Im Destillationskopf, auf Höhe des Seitenrohrs.',
  'What is in the pot, what stands on it, and when the heat goes off.':
    'Was im Kolben ist, was darauf sitzt und wann die Wärme weg muss.',
  'drawn for this charge, rig and air, at {dripRate} mL/min':
    'gezeichnet für diese Füllung, diesen Aufbau und diese Luft, bei {dripRate} mL/min',
  'In this room, today.': 'In diesem Raum, heute.',
  'Look, then confirm. This program advises; it is no safety device and controls nothing.':
    'Nachsehen, dann bestätigen. Dieses Programm berät; es ist keine Sicherheitseinrichtung und steuert nichts.',
  'A run is under way': 'Ein Versuch läuft',
  'Watch the run under way': 'Den laufenden Versuch beobachten',
  'Next: {title}': 'Weiter: {title}',
  'Still to do under “{title}”': 'Noch zu tun unter „{title}“',
  'Barometer in this room': 'Barometer in diesem Raum',
  'Weather report': 'Wetterbericht',
  'Steam of boiling water, with this probe': 'Dampf siedenden Wassers, mit dieser Sonde',
  'Only the altitude': 'Nur die Höhe',
  'Where the pressure comes from': 'Woher der Druck kommt',
  Unit: 'Einheit',
  'As it is in this room, not corrected to sea level.':
    'Wie er in diesem Raum ist, nicht auf Meereshöhe umgerechnet.',
  'Reports give the pressure at sea level; it is converted to your altitude.':
    'Berichte geben den Druck auf Meereshöhe; er wird auf diese Höhe umgerechnet.',
  'Used to check that the barometer is not set to sea level.':
    'Dient zur Prüfung, dass das Barometer nicht auf Meereshöhe gestellt ist.',
  'Above sea level, from a map.': 'Über dem Meer, aus einer Karte.',
  'If you know it: shows whether the probe is off by more than it should be.':
    'Falls bekannt: zeigt, ob die Sonde weiter abweicht, als sie sollte.',
  'It moves the plateau by {slope} for every kPa. A barometer or steam is best.':
    'Er verschiebt das Plateau um {slope} je kPa. Am besten ist ein Barometer oder Dampf.',
  'What the probe shows in the steam': 'Was die Sonde im Dampf zeigt',
  'Needed: what the probe shows in the steam.': 'Nötig: was die Sonde im Dampf zeigt.',
  'A temperature in °C.': 'Eine Temperatur in °C.',
  'No probe is heard yet: connect it under “Probe”, or type below what it shows in the steam.':
    'Noch ist keine Sonde zu hören: unter „Sonde“ verbinden, oder unten eintragen, was sie im Dampf zeigt.',
  'Take this reading': 'Diesen Wert aufnehmen',
  'The reading below was taken with another probe. Each probe is off in its own way: take it again with this one.':
    'Der Wert unten wurde mit einer anderen Sonde aufgenommen. Jede Sonde weicht auf ihre Art ab: mit dieser neu aufnehmen.',
  'Taken from the probe by the button, or typed as it shows it.':
    'Mit der Taste von der Sonde aufgenommen, oder eingetragen, wie sie ihn zeigt.',
  'The calibration in use, {sign}{atPlateau} at the plateau, was made with another probe, or with this one at another port. Each probe is off in its own way.':
    'Die verwendete Kalibrierung, {sign}{atPlateau} am Plateau, stammt von einer anderen Sonde, oder von dieser an einem anderen Anschluss. Jede Sonde weicht auf ihre Weise ab.',
  'It belongs to this probe': 'Sie gehört zu dieser Sonde',
  'Say whether the calibration belongs to this probe':
    'Sagen, ob die Kalibrierung zu dieser Sonde gehört',
  'Take the steam’s reading again, with this probe':
    'Den Wert im Dampf mit dieser Sonde neu aufnehmen',
  'Hold the probe in steam and take what it shows, under “Air pressure”':
    'Die Sonde in Dampf halten und aufnehmen, was sie zeigt, unter „Luftdruck“',
  '{told}, from steam, with what the probe showed in it':
    '{told}, aus Dampf, mit dem, was die Sonde darin zeigte',
  'Simulated still, for a rehearsal: no probe':
    'Simulierte Apparatur, für einen Probelauf: keine Sonde',
  'Last line: <code>{lastLine}</code>': 'Letzte Zeile: <code>{lastLine}</code>',
  '· {count, plural, one {{count} line} other {{count} lines}} not understood':
    '· {count, plural, one {{count} Zeile} other {{count} Zeilen}} nicht verstanden',
  'Let go of all of them': 'Alle loslassen',
  'Let go of the simulated still': 'Die simulierte Apparatur loslassen',
  'The probe from before the rehearsal is not connected again':
    'Die Sonde von vor dem Probelauf ist nicht wieder verbunden',
  'Connect it again': 'Wieder verbinden',
  'Let go of this port': 'Diesen Anschluss loslassen',
  'Opening the port …': 'Der Anschluss wird geöffnet …',
  'Heard clearly': 'Klar gehört',
  'calibrated; the probe sends {sent}': 'kalibriert; die Sonde sendet {sent}',
  'Connected, but silent': 'Verbunden, aber stumm',
  'The probe is gone': 'Die Sonde ist weg',
  'Something is heard, but not understood': 'Etwas ist zu hören, aber nicht zu verstehen',
  'Ports on this computer': 'Anschlüsse an diesem Computer',
  'No port with a probe on it. Plug the probe in and it appears here by itself.':
    'Kein Anschluss mit einer Sonde. Die Sonde einstecken, dann erscheint sie hier von selbst.',
  'Show {hidden} more without a USB name': 'Noch {hidden} ohne USB-Namen zeigen',
  calibrated: 'kalibriert',
  'not calibrated': 'nicht kalibriert',
  'Kind of probe': 'Art der Sonde',
  Calibrated: 'Kalibriert',
  'Calibrate with ice and steam': 'Mit Eis und Dampf kalibrieren',
  'Rehearsal: pear-juice ferment': 'Probelauf: Birnensaft-Gäransatz',
  'Set-ups kept from earlier lessons': 'Einstellungen aus früheren Stunden',
  'last time': 'letztes Mal',
  'Same as last time': 'Wie letztes Mal',
  'Last time, {keptAt}: {setUp}': 'Letztes Mal, {keptAt}: {setUp}',
  'Filled in as in “{used}”. What is true of today only is asked for again.':
    'Ausgefüllt wie in „{used}“. Was nur heute gilt, wird neu gefragt.',
  'Risk checklist on paper …': 'Gefährdungs-Checkliste auf Papier …',
  'Risk checklist on paper': 'Gefährdungs-Checkliste auf Papier',
  'Risk checklist: distilling before a class':
    'Gefährdungs-Checkliste: Destillation vor einer Klasse',
  'To be kept with the school’s own risk assessment, which it does not replace. {rules} {tool} {because}':
    'Diese Liste gehört zur Gefährdungsbeurteilung der Schule und ersetzt sie nicht. {rules} {tool} {because}',
  'School and room': 'Schule und Raum',
  Class: 'Klasse',
  Date: 'Datum',
  '{name}: {chargeVolume} mL of {chargeStrength} % vol':
    '{name}: {chargeVolume} mL mit {chargeStrength} % vol',
  'Before heat: looked at and ticked by hand': 'Vor dem Erhitzen: angesehen und von Hand abgehakt',
  'While it is hot, and afterwards': 'Solange es heiß ist, und danach',
  'Further measures that the rules here ask for':
    'Weitere Maßnahmen, die die Regeln hier verlangen',
  Names: 'Namen',
  'Prepared by': 'Vorbereitet von',
  'Date and signature': 'Datum und Unterschrift',
  'At the still': 'Anwesend',
  'Seen by': 'Gesehen von',
  Teacher: 'Lehrkraft',
  Technician: 'Technische Fachkraft',
  Assistant: 'Assistenz',
  'The rules here': 'Die Regeln hier',
  'The people': 'Die Personen',
  'The room': 'Der Raum',
  'The pot': 'Der Kolben',
  'Glass, hoses and water': 'Glas, Schläuche und Wasser',
  'The heat': 'Die Wärme',
  'Receiver, computer and head': 'Vorlage, Computer und Kopf',
  'Who is looking': 'Wer nachsieht',
  'Why: {title}': 'Warum: {title}',
  'no probe': 'keine Sonde',
  'probe at {path}': 'Sonde an {path}',
  '{count, plural, one {# probe} other {# probes}}':
    '{count, plural, one {# Sonde} other {# Sonden}}',
  '{volume} of {strength}': '{volume} mit {strength}',
  '{count, plural, one {# plate} other {# plates}}':
    '{count, plural, one {# Boden} other {# Böden}}',
  '{probe}, calibrated': '{probe}, kalibriert',
  'heat off at {leastStrength}': 'Wärme weg bei {leastStrength}',
  Start: 'Start',
  'Start the run': 'Versuch starten',
  'Still to do': 'Noch zu tun',
  'Steps of preparing': 'Schritte der Vorbereitung',
  '{count, plural, one {# look to do} other {# looks to do}}':
    '{count, plural, one {noch # Kontrolle} other {noch # Kontrollen}}',
  '{left} to do': 'noch {left} zu tun',
  'heard, {quantity}': 'zu hören, {quantity}',
  heard: 'zu hören',
  '{chargeVolume} mL of {chargeStrength} % vol': '{chargeVolume} mL mit {chargeStrength} % vol',
  'all {count} looks': 'alle {count} Kontrollen',
  Probe: 'Sonde',
  'In the pot': 'Im Kolben',
  'Before heat': 'Vor dem Erhitzen',
  'Confirm the {left} looks before heat': 'Die {left} Kontrollen vor dem Erhitzen bestätigen',
  'Confirm {left} more before heat': 'Noch {left} vor dem Erhitzen bestätigen',
  'Connect a probe that is heard': 'Eine Sonde verbinden, die zu hören ist',
  'Say which number is the still head': 'Angeben, welche Zahl der Destillationskopf ist',
  'Say how high this room lies, under “Air pressure”':
    'Angeben, wie hoch dieser Raum liegt, unter „Luftdruck“',
  '{charge}, assumed': '{charge}, angenommen',
  ', assumed: nobody has stated it': ', angenommen: niemand hat es angegeben',
  'Assumed, nobody has stated it yet: {charge}.':
    'Angenommen, noch von niemandem angegeben: {charge}.',
  'Assumed, nobody has stated it yet: a strength of {chargeStrength} % vol.':
    'Angenommen, noch von niemandem angegeben: eine Stärke von {chargeStrength} % vol.',
  'Assumed, nobody has stated it yet: a volume of {chargeVolume} mL.':
    'Angenommen, noch von niemandem angegeben: ein Volumen von {chargeVolume} mL.',
  'Say what is in the pot': 'Angeben, was im Kolben ist',
  'This is in the pot: {charge}': 'Das ist im Kolben: {charge}',
  'Times, volumes and yields hang on it.': 'Davon hängen Zeiten, Volumen und Ausbeuten ab.',
  'Write what was measured, or confirm what stands there.':
    'Gemessenes eintragen oder bestätigen, was dasteht.',
  'Say what the barometer shows today': 'Angeben, was das Barometer heute zeigt',
  'Say what today’s weather report says': 'Angeben, was der heutige Wetterbericht sagt',
  'Mend “{field}”': '„{field}“ berichtigen',
  'After some minutes': 'Nach einigen Minuten',
  'After a volume': 'Nach einer Menge',
  'After some drops': 'Nach einigen Tropfen',
  'When what comes over gets too weak': 'Wenn das Übergehende zu schwach wird',
  'When all collected together gets too weak': 'Wenn alles Aufgefangene zusammen zu schwach wird',
  Fractions: 'Fraktionen',
  'Weigh it against the yield, under “Expected course”.':
    'Gegen die Ausbeute abwägen, unter „Erwarteter Verlauf“.',
  'The heat-off prompt comes when the head leaves the plateau for this.':
    'Die Aufforderung „Wärme weg“ kommt, wenn der Kopf deshalb das Plateau verlässt.',
  'The prompt comes that much earlier.': 'Um so viel früher kommt die Aufforderung.',
  'The first fraction ends': 'Der Vorlauf endet',
  'A convention: mostly there is too little of it for the temperature to show.':
    'Eine Vereinbarung: meist ist zu wenig davon da, als dass die Temperatur es zeigte.',
  'first fraction {amount} {unit}': 'Vorlauf {amount} {unit}',
  '{first} · heat off at {leastStrength} % vol, told {reactionTime} s before':
    '{first} · Wärme weg bei {leastStrength} % vol, {reactionTime} s vorher angesagt',
  'What will be recorded': 'Was aufgezeichnet wird',
  'Every reading of': 'Jeder Wert von',
  'the probe, once one is heard': 'der Sonde, sobald eine zu hören ist',
  ', with its calibration': ', mit ihrer Kalibrierung',
  'Heat off at': 'Wärme weg bei',
  'Looks before heat': 'Kontrollen vor dem Erhitzen',
  '{looked} of {all}, each with its time and “{role}”':
    '{looked} von {all}, jede mit ihrer Zeit und „{role}“',
  'Tried before heat': 'Vor dem Erhitzen erprobt',
  'During the run': 'Während des Versuchs',
  'every mark and note with its time, every prompt and how it was answered':
    'jede Marke und Notiz mit ihrer Zeit, jede Aufforderung und wie sie beantwortet wurde',
  Where: 'Wo',
  '<code>{folder}</code>, on this computer only': '<code>{folder}</code>, nur auf diesem Computer',
  'Nobody’s name is asked for; no picture and no sound is taken. A note is kept as it is written.':
    'Nach keinem Namen wird gefragt; kein Bild und kein Ton wird aufgenommen. Eine Notiz bleibt, wie sie geschrieben wird.',
  Yes: 'Ja',
  No: 'Nein',
  'Heard and seen': 'Zu hören und zu sehen',
  'not tried': 'nicht erprobt',
  'Play the urgent call': 'Den dringenden Ruf abspielen',
  'Was it heard at the still?': 'War er an der Apparatur zu hören?',
  'Turn this computer’s sound up, or choose its loudspeaker, and play it again. Unheard, a prompt is only seen: keep this screen in sight.':
    'Den Ton dieses Computers lauter stellen oder seinen Lautsprecher wählen und den Ruf noch einmal abspielen. Ungehört ist eine Aufforderung nur zu sehen: diesen Bildschirm im Blick behalten.',
  'Sound with prompts is off.': 'Der Ton bei Aufforderungen ist aus.',
  'Switch it on': 'Einschalten',
  'Show the class a test card': 'Der Klasse eine Testkarte zeigen',
  'Is its smallest line read from the back row?':
    'Ist ihre kleinste Zeile aus der letzten Reihe zu lesen?',
  'Darken the room, make the picture larger, or leave the card and choose “Projector” under “Display and sound” there.':
    'Den Raum verdunkeln, das Bild vergrößern oder die Karte verlassen und dort unter „Anzeige, Ton“ „Projektor“ wählen.',
  drops: 'Tropfen',
  plates: 'Böden',
  weather: 'Wetter',
  '/dev/ttyACM1 or COM4': '/dev/ttyACM1 oder COM4',
  'I don’t know': 'Weiß ich nicht',
  'The air pressure is not known.': 'Der Luftdruck ist nicht bekannt.',
  'not known: {low} to {high}': 'nicht bekannt: {low} bis {high}',
  'It may be anything from {low} to {high}. So {strength} may be reached at {limitLow} or only at {limitHigh}: until the head holds, nobody can tell which. Then the program goes by where it holds, less surely: heat off may be called too early or too late. The altitude, even from a map, brings the limit to within ± {narrowed}.':
    'Er kann zwischen {low} und {high} liegen. Also können {strength} bei {limitLow} erreicht sein oder erst bei {limitHigh}: bevor der Kopf hält, kann niemand sagen, was gilt. Danach richtet sich das Programm danach, wo er hält, aber weniger sicher: die Aufforderung „Wärme weg“ kann zu früh oder zu spät kommen. Die Höhe, auch nur aus einer Karte, bringt die Grenze auf ± {narrowed} genau.',
  'At {pressure}, which nobody measured: between {low} and {high} all of it shifts by up to {shift}.':
    'Bei {pressure}, die niemand gemessen hat: zwischen {low} und {high} verschiebt sich alles um bis zu {shift}.',
  '{kind}, assumed': '{kind}, angenommen',
  'Assumed, nobody has stated it yet: {kind}. How well the head is known, and how fast it is followed, hang on it.':
    'Angenommen, noch von niemandem angegeben: {kind}. Davon hängt ab, wie gut der Kopf bekannt ist und wie schnell die Sonde ihm folgt.',
  '{heard}, its kind assumed': '{heard}, Art angenommen',
  'What will be recorded, some of it assumed': 'Was aufgezeichnet wird, einiges davon angenommen',
};
