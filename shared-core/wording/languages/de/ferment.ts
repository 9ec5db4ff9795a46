/** German of the room `ferment`. */
export const ferment: Readonly<Record<string, string>> = {
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
  'A reason, please': 'Bitte ein Grund',
  'An entry is older than that beginning. Look at the day and the time, or withdraw the entry':
    'Ein Eintrag ist älter als dieser Beginn. Tag und Uhrzeit ansehen oder den Eintrag zurücknehmen',
  'Nothing was entered yet': 'Noch ist nichts eingetragen',
  'A refractometer alone tells nothing of a ferment: read the gravity too, please':
    'Ein Refraktometer allein sagt nichts über einen Gäransatz: bitte auch die relative Dichte ablesen',
  'A name, please': 'Bitte ein Name',
  'At most 120 characters, please': 'Bitte höchstens 120 Zeichen',
  'A volume in mL, more than 0': 'Ein Volumen in mL, mehr als 0',
  'The lower end first, please': 'Bitte das untere Ende zuerst',
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
  'A day and a time, please.': 'Bitte Tag und Uhrzeit.',
  'A number of grams, more than 0, or nothing.': 'Eine Zahl in Gramm, mehr als 0, oder nichts.',
  '{amount} mL of juice, gravity {gravity} at {temperature} °C':
    '{amount} mL Saft, relative Dichte {gravity} bei {temperature} °C',
  '{amount} g of table sugar': '{amount} g Haushaltszucker',
  '{amount} g of grape or fruit sugar': '{amount} g Trauben- oder Fruchtzucker',
  '{amount} g of {fruit}': '{amount} g {fruit}',
  'and {addedSugarG} g of table sugar': 'und {addedSugarG} g Haushaltszucker',
  'Juice ferment': 'Gäransatz aus Saft',
  'Ferment of {what}': 'Gäransatz aus {what}',
  sugar: 'Zucker',
  '{main}{added}, filled up to {volume} mL': '{main}{added}, aufgefüllt auf {volume} mL',
  'Begin a log': 'Ein Protokoll beginnen',
  'Name of the ferment': 'Name des Gäransatzes',
  'The yeast went in': 'Die Hefe kam hinein',
  'Volume of the ferment': 'Menge des Gäransatzes',
  'Empty leaves what is known, as grape sugar: {sugarG}.':
    'Leer bleibt, was bekannt ist, als Traubenzucker: {sugarG}.',
  'Table sugar, if that is all its sugar': 'Haushaltszucker, wenn das aller Zucker ist',
  'Empty where the sugar is a fruit’s: the gravity tells it.':
    'Leer, wo der Zucker aus Früchten ist: die relative Dichte sagt ihn.',
  'What went in': 'Was hineinkam',
  'Begin the log': 'Protokoll beginnen',
  'Correct what was stated': 'Angaben berichtigen',
  'A reason, please.': 'Bitte ein Grund.',
  'Corrected {at}: {reason}. Until then: {before}':
    'Berichtigt {at}: {reason}. Bis dahin: {before}',
  'Begun {at}, {volume}, its sugar not known.':
    'Begonnen {at}, {volume}, sein Zucker nicht bekannt.',
  'Begun {at}, {volume}, sugar as grape sugar {sugarG}.':
    'Begonnen {at}, {volume}, Zucker als Traubenzucker {sugarG}.',
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
  Note: 'Notiz',
  'Keep this entry': 'Diesen Eintrag behalten',
  'Done before this reading': 'Vor diesem Ablesen getan',
  'Nothing was entered yet.': 'Noch ist nichts eingetragen.',
  '{count, plural, one {# entry} other {# entries}}':
    '{count, plural, one {# Eintrag} other {# Einträge}}',
  '{count} withdrawn': '{count} zurückgenommen',
  'Entries, newest first': 'Einträge, die neuesten zuerst',
  'Withdraw the entry of {at}': 'Den Eintrag von {at} zurücknehmen',
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
  'What stands in this log lies outside what can be judged. Correct what was stated, or withdraw the entry that is wrong.':
    'Was in diesem Protokoll steht, liegt außerhalb dessen, was sich beurteilen lässt. Die Angaben berichtigen oder den falschen Eintrag zurückziehen.',
  'Save it as a table (CSV)': 'Als Tabelle (CSV) speichern',
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
  Done: 'Fertig',
  '{from} to {to} {unit}': '{from} bis {to} {unit}',
  'In practice <strong>{inPractice}</strong>; by the equation, at most {atMost}.':
    'In der Praxis <strong>{inPractice}</strong>; nach der Gleichung höchstens {atMost}.',
  'There is sugar enough for {wanted} % vol.': 'Der Zucker reicht für {wanted} % vol.',
  'For {wanted} % vol add <strong>{sugarToAddG}</strong> of table sugar to what is above.':
    'Für {wanted} % vol zu Obigem <strong>{sugarToAddG}</strong> Haushaltszucker geben.',
  'It gives {carbonDioxideL} of gas and loses {massLossG} on a balance: leave the vent open.':
    'Es gibt {carbonDioxideL} Gas und verliert auf der Waage {massLossG}: die Entlüftung offen lassen.',
  'Not started': 'Nicht begonnen',
  'Not known yet': 'Noch nicht bekannt',
  'At work': 'In Gang',
  Slow: 'Langsam',
  'Stuck?': 'Stecken geblieben?',
  'Stands still': 'Steht still',
  'Measure its gravity, or say how much sugar went in.':
    'Die relative Dichte messen oder sagen, wie viel Zucker hineinkam.',
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
  'too early to tell': 'noch zu früh zu sagen',
  'about {value}': 'etwa {value}',
  'about {value}, from {low} to {high}': 'etwa {value}, von {low} bis {high}',
  'gravity {gravity} at {temperature}': 'relative Dichte {gravity} bei {temperature}',
  'ferment at {temperature}': 'Gäransatz bei {temperature}',
  '{bubblesPerMin} bubbles a minute': '{bubblesPerMin} Blasen je Minute',
  'refractometer {value}': 'Refraktometer {value}',
  apple: 'Apfel',
  apricot: 'Aprikose',
  blackberry: 'Brombeere',
  cherry: 'Kirsche',
  cranberry: 'Moosbeere',
  grape: 'Weintraube',
  grapefruit: 'Grapefruit',
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
  'This ferment is no longer beside the runs. Its file may have been moved':
    'Dieser Gäransatz liegt nicht mehr neben den Versuchen. Vielleicht wurde seine Datei verschoben',
  'This ferment is not beside the runs, or its first line cannot be read':
    'Dieser Gäransatz liegt nicht neben den Versuchen, oder seine erste Zeile ist nicht zu lesen',
  'The first line of this ferment cannot be read. Its file is left as it is':
    'Die erste Zeile dieses Gäransatzes ist nicht lesbar. Seine Datei bleibt, wie sie ist',
  'There is no such entry': 'Diesen Eintrag gibt es nicht',
  'There is no such ferment': 'Diesen Gäransatz gibt es nicht',
  Gravity: 'Relative Dichte',
  Temperature: 'Temperatur',
  'Temperature / °C': 'Temperatur / °C',
  'Mass / g': 'Masse / g',
  'The ferment over {days} days.': 'Der Gäransatz über {days} Tage.',
  'end expected': 'erwartetes Ende',
  '{low} to {high} °C': '{low} bis {high} °C',
  'Days since it was begun': 'Tage seit dem Ansetzen',
  '{name}: {count, plural, one {# reading} other {# readings}}, first {first}, last {last}, {least} to {most}':
    '{name}: {count, plural, one {# Messwert} other {# Messwerte}}, zuerst {first}, zuletzt {last}, {least} bis {most}',
  '{course}; shaded from {low} to {high}.': '{course}; schattiert von {low} bis {high}.',
  Ferments: 'Gäransätze',
  'Ferments, newest first': 'Gäransätze, neueste zuerst',
  'begun {began}': 'begonnen {began}',
  'Classroom view of {name}': 'Klassenansicht von {name}',
  'Compare them: one pack of these {count}': 'Vergleichen: ein Paket dieser {count}',
  'It may go into the still.': 'Er darf in die Apparatur.',
  'Warm it, stir it up, and read its gravity again tomorrow.':
    'Wärmen, aufrühren und die relative Dichte morgen noch einmal ablesen.',
  'Keep it warm, and read its gravity again tomorrow.':
    'Warm halten und die relative Dichte morgen noch einmal ablesen.',
  'day {day}, hour {hour}': 'Tag {day}, Stunde {hour}',
  'The week of {name}': 'Die Woche von {name}',
  'The line stands at {moment}.': 'Die Linie steht bei {moment}.',
  'Time in the week': 'Zeit in der Woche',
  'Judged then': 'Damals beurteilt',
  'Strength then': 'Damaliger Gehalt',
  '{name}, day {day}': '{name}, Tag {day}',
  'How warm': 'Wie warm',
  'Wanted: {low} to {high}.': 'Gewollt: {low} bis {high}.',
  'What comes next': 'Was als Nächstes kommt',
};
