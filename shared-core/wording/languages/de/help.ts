/** German of the room `help`. */
export const help: Readonly<Record<string, string>> = {
  Help: 'Hilfe',
  'A problem report': 'Ein Fehlerbericht',
  Licences: 'Lizenzen',
  'The folder of runs': 'Der Ordner der Versuche',
  'Find in the help': 'In der Hilfe suchen',
  'Topics of the help': 'Themen der Hilfe',
  'No page holds all of these words.': 'Keine Seite enthält alle diese Wörter.',
  'One page.': 'Eine Seite.',
  '{count} pages.': '{count} Seiten.',
  '3 to 4 mm': '3 bis 4 mm',
  'This program is under the MIT licence. It holds the work of others, with their licences:':
    'Dieses Programm steht unter der MIT-Lizenz. Es enthält die Arbeit anderer, mit deren Lizenzen:',
  'For whoever mends this program. It is sent nowhere: save it, read it, and hand it on yourself, with a sentence on what you did and what came of it.':
    'Für alle, die dieses Programm ausbessern. Der Bericht wird nirgendwohin gesendet: ihn sichern, lesen und selbst weitergeben, mit einem Satz dazu, was getan wurde und was daraus wurde.',
  'It holds what stands below and nothing else: versions, this computer’s system, what went wrong lately, how the window is set, how the probe was heard, the room on the disk. It holds no names of people, no folders, no readings.':
    'Er enthält, was unten steht, und sonst nichts: Fassungen, das System dieses Computers, was zuletzt schiefging, wie das Fenster eingestellt ist, wie die Sonde zu hören war, den Platz auf dem Laufwerk. Er enthält keine Namen von Menschen, keine Ordner, keine Werte.',
  'With the names of runs': 'Mit den Namen der Versuche',
  'Putting the report together …': 'Der Bericht wird zusammengestellt …',
  'Save this report': 'Diesen Bericht sichern',
};
