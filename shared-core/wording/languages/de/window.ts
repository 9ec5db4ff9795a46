/** German of the room `window`. */
export const window: Readonly<Record<string, string>> = {
  'This prompt cannot be put aside: waiting can hurt somebody. Do what it asks.':
    'Diese Aufforderung lässt sich nicht zurückstellen: Warten kann jemanden verletzen. Tun, was sie verlangt.',
  'Nothing is burned beside a running still. Stop the run, let it cool, and prove the product in Look back.':
    'Neben einer laufenden Apparatur wird nichts abgebrannt. Den Versuch beenden, abkühlen lassen und das Produkt im Rückblick nachweisen.',
  'Nothing is lit before every condition is confirmed. Confirm each of them first.':
    'Nichts wird angezündet, bevor jede Bedingung bestätigt ist. Zuerst jede bestätigen.',
  First: 'Vorlauf',
  Main: 'Hauptlauf',
  Tail: 'Nachlauf',
  Prepare: 'Vorbereiten',
  Watch: 'Beobachten',
  'Look back': 'Rückblick',
  'Pear-juice ferment': 'Birnensaft-Gäransatz',
  'The run began.': 'Der Versuch begann.',
  'As the system': 'Wie das System',
  Light: 'Hell',
  Dark: 'Dunkel',
  Projector: 'Projektor',
  On: 'An',
  Off: 'Aus',
  'Display and sound': 'Anzeige, Ton',
  Colours: 'Farben',
  Numbers: 'Zahlen',
  'Sound with prompts': 'Ton bei Aufforderungen',
  'Test the urgent sound': 'Dringenden Ton probieren',
  'Test the softer sound': 'Leiseren Ton probieren',
  'Single letters make marks in Watch': 'Einzelne Buchstaben setzen Marken in „Beobachten“',
  Understood: 'Verstanden',
  'Go on': 'Weiter',
  'Skip to the content': 'Zum Inhalt springen',
  Places: 'Orte',
  'This address was used before': 'Diese Adresse wurde schon benutzt',
  'It opens one window, once, and that window goes on as it was. For a new one, start the program again, or open the page <code>open-window.html</code> in the folder of runs. A run that is being recorded goes on.':
    'Sie öffnet ein Fenster, einmal, und dieses Fenster läuft weiter wie bisher. Für ein neues das Programm neu starten oder die Seite <code>open-window.html</code> im Ordner der Versuche öffnen. Ein Versuch, der aufgezeichnet wird, läuft weiter.',
  'There is nothing to watch at this address now':
    'Unter dieser Adresse gibt es jetzt nichts zu sehen',
  'The lesson is over, watching was ended, or the code was mistyped. For the next lesson there is a new address: ask for it.':
    'Die Stunde ist vorbei, das Zusehen wurde beendet, oder der Code war vertippt. Für die nächste Stunde gibt es eine neue Adresse: danach fragen.',
  'Connection lost, trying again …': 'Verbindung verloren, neuer Versuch …',
  'Not saved': 'Nicht gespeichert',
  'Saved to {savedTo}': 'Gesichert bis {savedTo}',
  'Recording …': 'Wird aufgezeichnet …',
  'Not recording': 'Keine Aufzeichnung',
  'rehearsal × {timeScale}': 'Probelauf × {timeScale}',
  'view only': 'nur ansehen',
  'A run that broke off': 'Ein abgebrochener Versuch',
  '<strong>The run “{name}” broke off at {brokeOffAt}</strong> when the program was closed, after {duration}. Nothing is recorded until you go on.':
    '<strong>Der Versuch „{name}“ brach um {brokeOffAt} ab,</strong> als das Programm geschlossen wurde, nach {duration}. Bis zum Fortsetzen wird nichts aufgezeichnet.',
  'Opening the run …': 'Der Versuch wird geöffnet …',
  'Go on with the run': 'Versuch fortsetzen',
  'Leave it as it is': 'So lassen',
};
