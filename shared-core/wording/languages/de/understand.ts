/** German of the room `understand`. */
export const understand: Readonly<Record<string, string>> = {
  'The numbers': 'Die Zahlen',
  'share of the charge’s ethanol collected, %': 'Anteil des aufgefangenen Ethanols der Füllung, %',
  'mean strength, % vol': 'mittlerer Gehalt, % vol',
  'stop at {leastMean} % vol on average': 'Ende bei {leastMean} % vol im Mittel',
  'ethanol in liquid or vapour, mol %': 'Ethanol in Flüssigkeit oder Dampf, mol %',
  'Boiling at {pressure}': 'Sieden bei {pressure}',
  pot: 'Kolben',
  head: 'Kopf',
  'Pot, head and azeotrope': 'Kolben, Kopf und Azeotrop',
  Azeotrope: 'Azeotrop',
  'no reading': 'kein Wert',
  'no vapour at the bulb': 'kein Dampf am Fühler',
  Pot: 'Kolben',
  'Pot boils at': 'Kolben siedet bei',
  'vapour (dew curve)': 'Dampf (Taukurve)',
  'liquid (bubble curve)': 'Flüssigkeit (Siedekurve)',
  '{start}What the pot holds by now is not known: book a volume, or put a probe in the pot.':
    '{start}Was der Kolben jetzt enthält, ist nicht bekannt: eine Menge buchen oder eine Sonde in den Kolben hängen.',
  'No vapour bathes the bulb fully': 'Kein Dampf umspült den Fühler ganz',
  'The head temperature tells no strength of its vapour at this moment':
    'Aus der Kopftemperatur lässt sich in diesem Augenblick keine Stärke des Dampfes ablesen',
  '{noStrength}; the pot, at {strength}, boils near {boils}, and the vapour straight above it is about {overAbv} % vol.':
    '{noStrength}; der Kolben, mit {strength}, siedet nahe {boils}, und der Dampf direkt darüber hat etwa {overAbv} % vol.',
  '{noStrength}; the pot, at {strength}, would boil near {boils}, and the vapour straight above it is about {overAbv} % vol.':
    '{noStrength}; der Kolben, mit {strength}, würde nahe {boils} sieden, und der Dampf direkt darüber hätte etwa {overAbv} % vol.',
  'The pot, at {strength}, boils near {boils}; the vapour at the head condenses at {head} to {vapour}: the column has lifted it that far.':
    'Der Kolben, mit {strength}, siedet nahe {boils}; der Dampf am Kopf kondensiert bei {head} zu {vapour}: so weit hat ihn die Kolonne gehoben.',
  '{lift} It cannot be told from the azeotrope, the lowest point of the curves, which no column passes.':
    '{lift} Er ist vom Azeotrop nicht zu unterscheiden, dem tiefsten Punkt der Kurven, den keine Kolonne überschreitet.',
  'The vapour at the head condenses at {head} to {strength}.':
    'Der Dampf am Kopf kondensiert bei {head} zu {strength}.',
  'from the probe in the pot': 'aus der Sonde im Kolben',
  'from what has come over': 'aus dem Übergegangenen',
  'as charged': 'wie gefüllt',
  Cursor: 'Zeiger',
  '{time} in the run': '{time} im Versuch',
  'Follows the run': 'Läuft mit dem Versuch',
  'Follow the run': 'Mit dem Versuch laufen',
  'As estimated': 'Wie geschätzt',
  'All back': 'Alles zurück',
  'Plates between pot and head': 'Böden zwischen Kolben und Kopf',
  'ethanol in the liquid, mol %': 'Ethanol in der Flüssigkeit, mol %',
  'ethanol in the vapour, mol %': 'Ethanol im Dampf, mol %',
  equilibrium: 'Gleichgewicht',
  'Liquid going back per distillate': 'Rücklaufende Flüssigkeit je Destillat',
  'The present reflux is not known: it takes booked volumes, and the column’s heat loss or the heater’s power in Prepare.':
    'Der jetzige Rücklauf ist nicht bekannt: dafür braucht es gebuchte Mengen und den Wärmeverlust der Kolonne oder die Heizleistung unter „Vorbereiten“.',
  'Plates and reflux': 'Böden und Rücklauf',
  'Present reflux ratio': 'Jetziges Rücklaufverhältnis',
  'Drawn for': 'Gezeichnet für',
  'all going back': 'alles läuft zurück',
  'Least reflux that would do': 'Kleinster Rücklauf, der genügt',
  'Theoretical plates, pot counted': 'Theoretische Böden, Kolben mitgezählt',
  'none would do': 'keine Zahl genügt',
  'The steps are drawn once vapour bathes the bulb.':
    'Die Stufen werden gezeichnet, sobald Dampf den Fühler umspült.',
  'The steps need the pot’s strength: book a volume, or put a probe in the pot.':
    'Die Stufen brauchen den Gehalt des Kolbens: eine Menge buchen oder eine Sonde in den Kolben hängen.',
  'The vapour at the head is no richer than the pot: there is nothing to step off.':
    'Der Dampf am Kopf ist nicht reicher als der Kolben: es gibt nichts abzustufen.',
  'at least {count}': 'mindestens {count}',
  'about {count}': 'etwa {count}',
  '{start}, about 1 theoretical plate, the pot itself, leads from the pot to this head.':
    '{start}: etwa 1 theoretischer Boden, der Kolben selbst, führt vom Kolben zu diesem Kopf.',
  '{start}, {stages} theoretical plates, the pot counted, lead from the pot to this head.':
    '{start}: {stages} theoretische Böden, der Kolben mitgezählt, führen vom Kolben zu diesem Kopf.',
  '{start}, the steps shrink to nothing: no number of plates passes the azeotrope.':
    '{start}: die Stufen schrumpfen zu nichts, keine Zahl von Böden überschreitet das Azeotrop.',
  '{start}, as estimated, a steady column could not make this head: it needs more than {least} times. Either the estimate is low, or the column is still giving up the rich liquid it holds.':
    '{start}, wie geschätzt, könnte eine eingeschwungene Kolonne diesen Kopf nicht erreichen: dafür braucht es mehr als das {least}-Fache. Entweder ist die Schätzung zu niedrig, oder die Kolonne gibt noch ihre reiche Flüssigkeit ab.',
  '{start}, no number of plates would make this head in a steady column: it takes more than {least} times.':
    '{start} würde in einer eingeschwungenen Kolonne keine Zahl von Böden diesen Kopf erreichen: dafür braucht es mehr als das {least}-Fache.',
  'With all liquid going back and nothing taken':
    'Wenn alle Flüssigkeit zurückläuft und nichts entnommen wird',
  'With {range} times as much liquid going back as comes over':
    'Wenn {range}-mal so viel Flüssigkeit zurückläuft, wie übergeht',
  'Up to the last booking {percent} of the charge’s ethanol has come over, at {meanStrength} on average: going on adds ethanol and takes away strength.':
    'Bis zur letzten Buchung sind {percent} des Ethanols der Füllung übergegangen, im Mittel mit {meanStrength}: weiter zu destillieren bringt Ethanol und nimmt Gehalt.',
  'Nothing is booked yet: book a volume in the receiver, and this curve shows how much of the ethanol has come over, and how strong it is.':
    'Noch ist nichts gebucht: eine Menge in der Vorlage buchen, dann zeigt diese Kurve, wie viel vom Ethanol übergegangen ist und wie stark.',
  'Strength against recovery so far': 'Gehalt gegen Ausbeute bisher',
  'Collected so far': 'Bisher aufgefangen',
  Booked: 'Gebucht',
  nothing: 'nichts',
  'Mean strength': 'Mittlerer Gehalt',
  'Share of the ethanol': 'Anteil am Ethanol',
  Understand: 'Verstehen',
  'Understand this moment': 'Diesen Moment verstehen',
};
