/** German of the room `cautions`. */
export const cautions: Readonly<Record<string, string>> = {
  'Strain and degas the ferment, and fill the pot to half at most.':
    'Den Gäransatz abseihen und entgasen und den Kolben höchstens zur Hälfte füllen.',
  'Pulp and gas froth up into the column and out of the rig; a full pot boils over.':
    'Fruchtfleisch und Gas schäumen in die Kolonne und aus der Apparatur; ein voller Kolben kocht über.',
  'The charge is strained and degassed, the pot at most half full':
    'Die Füllung ist abgeseiht und entgast, der Kolben höchstens halb voll',
  'Fresh boiling stones before each heating, into the cold pot.':
    'Vor jedem Erhitzen frische Siedesteine, in den kalten Kolben.',
  'Used ones no longer work, and any that fall into hot liquid make it boil over.':
    'Gebrauchte wirken nicht mehr, und solche, die in heiße Flüssigkeit fallen, lassen sie überkochen.',
  'Fresh boiling stones are in the cold pot': 'Frische Siedesteine liegen im kalten Kolben',
  'Never close the rig.': 'Die Apparatur nie verschließen.',
  'Pressure builds until the glass bursts: vent or receiver adapter stay open to the air.':
    'Der Druck steigt, bis das Glas birst: Entlüftung oder Vorstoß bleiben zur Luft offen.',
  'The way from pot to air is open': 'Der Weg vom Kolben zur Luft ist offen',
  'Clips on every hose and joint.': 'Klammern an jedem Schlauch und jedem Schliff.',
  'A hose that slips off stops the cooling and floods the bench; a joint that opens lets hot vapour out.':
    'Ein abrutschender Schlauch beendet die Kühlung und setzt den Tisch unter Wasser; ein sich öffnender Schliff lässt heißen Dampf heraus.',
  'Hoses and joints are clipped': 'Schläuche und Schliffe sind mit Klammern gesichert',
  'Cooling water first, heat second.': 'Erst das Kühlwasser, dann die Wärme.',
  'Without it, flammable vapour leaves the condenser. If it stops: heat off at once.':
    'Ohne Kühlwasser verlässt brennbarer Dampf den Kühler. Bleibt es aus: sofort Wärme weg.',
  'Cooling water runs: in at the bottom, out at the top':
    'Das Kühlwasser läuft: unten hinein, oben hinaus',
  'No flame, no spark, fresh air.': 'Keine Flamme, kein Funke, frische Luft.',
  'Ethanol vapour is heavier than air, creeps along the bench and catches fire from afar. Heat with a mantle or a bath; where your rules allow a burner all the same, it is out before a receiver is changed.':
    'Ethanoldampf ist schwerer als Luft, kriecht über den Tisch und entzündet sich aus der Ferne. Mit Heizhaube oder Heizbad erhitzen; wo die Regeln dennoch einen Brenner erlauben, ist er aus, bevor eine Vorlage gewechselt wird.',
  'No flame, no spark around the still; the room is aired':
    'Keine Flamme, kein Funke um die Apparatur; der Raum ist gelüftet',
  'The receiver in a tray, away from the heat; board and laptop above spill height and away from it.':
    'Die Vorlage in eine Wanne, weg von der Wärme; Platine und Laptop über Spritz- und Auslaufhöhe und weg davon.',
  'The distillate burns, also where it is spilt; boards, laptops and plugs can spark.':
    'Das Destillat brennt, auch wo es verschüttet ist; Platinen, Laptops und Stecker können Funken schlagen.',
  'Receiver in a tray, away from the heat; board and laptop above spill height':
    'Vorlage in einer Wanne, weg von der Wärme; Platine und Laptop über Auslaufhöhe',
  'Use heat that can be dropped at once.':
    'Eine Wärmequelle verwenden, die sofort wegzunehmen ist.',
  'A flame is put out; a mantle or bath is lowered or removed, for switched off alone it boils on.':
    'Eine Flamme wird gelöscht; Heizhaube oder Bad werden gesenkt oder entfernt, denn nur abgeschaltet sieden sie weiter.',
  'The heat can be dropped at once: flame out, or mantle down':
    'Die Wärme ist sofort wegzunehmen: Flamme aus oder Heizhaube gesenkt',
  'No mercury thermometer where it can be avoided.':
    'Kein Quecksilberthermometer, wo es zu vermeiden ist.',
  'Broken at a hot still it fills the room with poisonous vapour. A glass thermometer filled with spirit tells the head when the probe fails.':
    'Zerbricht es an der heißen Apparatur, füllt es den Raum mit giftigem Dampf. Ein Alkohol-Glasthermometer zeigt den Kopf, wenn die Sonde ausfällt.',
  'A glass thermometer at the head can be read by eye, without mercury if possible':
    'Ein Glasthermometer am Kopf ist mit dem Auge abzulesen, möglichst ohne Quecksilber',
  'Hang the whole bulb level with the lower edge of the side arm.':
    'Den ganzen Fühler auf die Höhe der Unterkante des Seitenrohrs hängen.',
  'One that hangs higher stays cooler than the vapour: the head seems stronger than it is, and the heat comes off late.':
    'Ein höher hängender bleibt kühler als der Dampf: der Kopf scheint stärker, als er ist, und die Wärme kommt zu spät weg.',
  'The whole bulb hangs level with the lower edge of the side arm':
    'Der ganze Fühler hängt auf der Höhe der Unterkante des Seitenrohrs',
  'At the head a probe with a metal tip and a PTFE or silicone cable.':
    'Am Kopf eine Sonde mit Metallspitze und Kabel aus PTFE oder Silikon.',
  'Hot ethanol attacks PVC: bare wires in the vapour can spark.':
    'Heißes Ethanol greift PVC an: blanke Drähte im Dampf können Funken schlagen.',
  'Eye protection on, hair tied back, sleeves close.':
    'Schutzbrille auf, Haare zusammengebunden, Ärmel anliegend.',
  'Splashes blind, and hair and loose cloth catch fire first: everybody near the bench.':
    'Spritzer machen blind, und Haare und lose Kleidung fangen zuerst Feuer: das gilt für alle am Tisch.',
  'Eye protection on, hair tied back, sleeves close':
    'Schutzbrille auf, Haare zusammengebunden, Ärmel anliegend',
  '{act} {because}': '{act} {because}',
  'Where no source is named: common practice in teaching laboratories, no source.':
    'Wo keine Quelle genannt ist: übliche Praxis in Unterrichtslaboren, ohne Quelle.',
  'The tool and the rules': 'Das Programm und die Regeln',
  'When something goes wrong': 'Wenn etwas schiefgeht',
  'While it ferments': 'Während der Gärung',
  'Before any heat': 'Vor jedem Erhitzen',
  'While it is hot': 'Solange es heiß ist',
  'What is collected': 'Was aufgefangen wird',
  'Proving it by burning a sample': 'Nachweis durch Abbrennen einer Probe',
  'Only if the rules here allow it, by a teacher or a technician.':
    'Nur wenn die Regeln hier es erlauben, und nur durch Lehrkraft oder technische Fachkraft.',
  'A naked flame beside distillate needs a permission of its own.':
    'Eine offene Flamme neben Destillat braucht eine eigene Erlaubnis.',
  'Heat off, still cold, receiver closed and away.':
    'Wärme weg, Apparatur kalt, Vorlage verschlossen und entfernt.',
  'Nothing may burn but what is in the dish.':
    'Nichts darf brennen als das, was in der Schale ist.',
  'At most 1 mL, in a dish on a heat-proof mat.':
    'Höchstens 1 mL, in einer Schale auf feuerfester Unterlage.',
  'More burns higher and longer than it can be watched, and a dish can crack.':
    'Mehr brennt höher und länger, als es sich überwachen lässt, und eine Schale kann springen.',
  'A long splint, lit away from the dish.': 'Ein langer Span, abseits der Schale entzündet.',
  'The vapour over the dish flares up: face, hands and sleeves stay clear.':
    'Der Dampf über der Schale flammt auf: Gesicht, Hände und Ärmel bleiben weg.',
  'A screen before the class, eye protection on.':
    'Eine Schutzscheibe vor der Klasse, Schutzbrille auf.',
  'A dish that cracks throws burning drops.':
    'Eine springende Schale schleudert brennende Tropfen.',
  'Lights dimmed.': 'Licht gedämpft.',
  'The flame is pale: in full light nobody sees that it still burns.':
    'Die Flamme ist blass: bei vollem Licht sieht niemand, dass es noch brennt.',
  'A lid to smother the flame lies ready.': 'Ein Deckel zum Ersticken der Flamme liegt bereit.',
  'It ends the flame at once; blowing spreads it.':
    'Er beendet die Flamme sofort; Blasen verbreitet sie.',
  'Never pour onto a flame or a warm dish; never refill.':
    'Nie auf eine Flamme oder eine warme Schale gießen; nie nachfüllen.',
  'Fire runs up the stream into the bottle and out over the class.':
    'Das Feuer läuft den Strahl hinauf in die Flasche und hinaus über die Klasse.',
  'US Chemical Safety Board, Key Lessons for Preventing Incidents from Flammable Chemicals in Educational Demonstrations, 2014 (from memory)':
    'US Chemical Safety Board, Key Lessons for Preventing Incidents from Flammable Chemicals in Educational Demonstrations, 2014 (aus dem Gedächtnis)',
  'This program is no safety device.': 'Dieses Programm ist keine Sicherheitseinrichtung.',
  'It advises and controls nothing; it cannot see a flame, a crack or a leak, it can be wrong, and it can fail. Watch the still: a person decides.':
    'Es berät und steuert nichts; es sieht keine Flamme, keinen Sprung und kein Leck, es kann sich irren, und es kann ausfallen. Die Apparatur beobachten: ein Mensch entscheidet.',
  'Local rules come first.': 'Die örtlichen Regeln gehen vor.',
  'Distilling alcohol needs permission in many places, in schools too. Where the law, your school or licensed practice says otherwise, this program is wrong.':
    'Alkohol zu destillieren ist vielerorts erlaubnispflichtig, auch in Schulen. Wo Gesetz, Schule oder zugelassene Praxis anderes sagen, hat dieses Programm unrecht.',
  'We may do this here': 'Wir dürfen das hier tun',
  'Strength from the head temperature is an estimate.':
    'Der Gehalt aus der Kopftemperatur ist eine Schätzung.',
  'It is worked out for ethanol and water alone and says nothing about methanol or anything else.':
    'Er ist nur für Ethanol und Wasser berechnet und sagt nichts über Methanol oder anderes.',
  'Nobody drinks any of it.': 'Niemand trinkt etwas davon.',
  'Methanol comes over in every fraction, no temperature shows it, and no cut takes it away. Nothing that comes out of this rig becomes drinkable.':
    'Methanol geht in jeder Fraktion über, keine Temperatur zeigt es, und kein Abtrennen nimmt es weg. Nichts, was aus dieser Apparatur kommt, wird trinkbar.',
  'this project’s simulator of a pear ferment, where most of the methanol comes in the main fraction':
    'der Simulator dieses Projekts für einen Birnen-Gäransatz, in dem das meiste Methanol im Hauptlauf kommt',
  'Label what is collected and store it closed.':
    'Aufgefangenes beschriften und verschlossen lagern.',
  'On the label: what it is, how strong, since when, and that it burns. Locked up, away from heat.':
    'Auf dem Etikett: was es ist, wie stark, seit wann, und dass es brennt. Weggeschlossen, fern von Wärme.',
  'Dispose of distillate and residue as your rules say, once they are cold.':
    'Destillat und Rückstand nach den Regeln entsorgen, sobald sie kalt sind.',
  'Ethanol burns in a drain too, and cloths wet with it burn in a bin.':
    'Ethanol brennt auch im Abfluss, und damit getränkte Tücher brennen im Abfalleimer.',
  'Fire on the bench: everybody out.': 'Feuer am Tisch: alle hinaus.',
  'Heat off only if your hand is clear of the fire. Blanket or extinguisher only if it is small and you are trained; else close the door and call the fire service.':
    'Wärme weg nur, wenn die Hand dabei dem Feuer fernbleibt. Löschdecke oder Löscher nur, wenn es klein ist und jemand dafür ausgebildet ist; sonst die Tür schließen und die Feuerwehr rufen.',
  'Extinguisher and fire blanket are within reach':
    'Feuerlöscher und Löschdecke sind in Reichweite',
  'An ethanol flame is pale.': 'Eine Ethanolflamme ist blass.',
  'In daylight it is next to invisible. Suspect fire where you feel heat.':
    'Bei Tageslicht ist sie fast unsichtbar. Wo Hitze zu spüren ist, Feuer vermuten.',
  'Cool a burn at once.': 'Eine Verbrennung sofort kühlen.',
  'Twenty minutes under cool running water, rings and watches off, nothing pulled away that sticks to the skin; then first aid.':
    'Zwanzig Minuten unter kühlem fließendem Wasser, Ringe und Uhren ab, nichts abziehen, was an der Haut klebt; dann Erste Hilfe.',
  'European Resuscitation Council, Guidelines 2021, First Aid: cooling for 20 min (from memory)':
    'European Resuscitation Council, Guidelines 2021, First Aid: Kühlen für 20 min (aus dem Gedächtnis)',
  'Ethanol spilt or smelt: no spark near it.':
    'Ethanol verschüttet oder zu riechen: kein Funke in der Nähe.',
  'Its vapour catches fire from afar. Heat off from where the air is clear, flames out, windows open; wipe up once everything is out.':
    'Sein Dampf entzündet sich aus der Ferne. Wärme weg von einer Stelle mit frischer Luft aus, Flammen aus, Fenster auf; aufwischen, wenn alles aus ist.',
  'Never leave a heated still alone.': 'Eine beheizte Apparatur nie allein lassen.',
  'What boils over, slips off or catches fire needs a hand at once. Somebody who knows the apparatus stays; whoever must leave takes the heat off first.':
    'Was überkocht, abrutscht oder Feuer fängt, braucht sofort eine Hand. Jemand, der die Apparatur kennt, bleibt; wer gehen muss, nimmt zuerst die Wärme weg.',
  'Somebody stays at the still from first heat to cold pot':
    'Jemand bleibt vom ersten Erhitzen bis zum kalten Kolben bei der Apparatur',
  'Never boil the pot dry.': 'Den Kolben nie trocken kochen.',
  'A pot boiled dry can crack, and its residue can char or catch fire. Heat off while liquid stands well above the bottom.':
    'Ein trocken gekochter Kolben kann springen, und sein Rückstand kann verkohlen oder Feuer fangen. Wärme weg, solange die Flüssigkeit deutlich über dem Boden steht.',
  'Hands off a hot head.': 'Hände weg von einem heißen Kopf.',
  'Vapour and hot glass burn. Heat off and cold before anybody touches or opens the head.':
    'Dampf und heißes Glas verbrennen. Wärme weg und kalt, bevor jemand den Kopf anfasst oder öffnet.',
  'Glass and mantle stay hot.': 'Glas und Heizhaube bleiben heiß.',
  'Long after the heat is off. Let them cool before you touch or open anything.':
    'Noch lange, nachdem die Wärme weg ist. Vor dem Anfassen oder Öffnen abkühlen lassen.',
  'Steam burns.': 'Dampf verbrennt.',
  'To check a probe in it, clamp the probe while the water is cold, keep hands away while it boils, and take it out when all is cold again.':
    'Um eine Sonde darin zu prüfen: die Sonde einspannen, solange das Wasser kalt ist, beim Sieden die Hände weghalten und sie herausnehmen, wenn alles wieder kalt ist.',
  'Never seal a vessel that ferments.': 'Ein gärendes Gefäß nie dicht verschließen.',
  'A kilogram of sugar gives hundreds of litres of gas: a closed vessel bursts. An air lock or a loose lid lets it out; see every day that it is not blocked.':
    'Ein Kilogramm Zucker gibt Hunderte Liter Gas: ein geschlossenes Gefäß birst. Ein Gärröhrchen oder ein loser Deckel lässt es hinaus; jeden Tag nachsehen, dass es nicht verstopft ist.',
  'Leave room for froth, a quarter of the vessel at least.':
    'Raum für Schaum lassen, mindestens ein Viertel des Gefäßes.',
  'Froth that climbs into the air lock blocks it, and the vessel is sealed.':
    'Schaum, der ins Gärröhrchen steigt, verstopft es, und das Gefäß ist verschlossen.',
  'Air the room where it ferments.': 'Den Raum lüften, in dem es gärt.',
  'Carbon dioxide is heavier than air, gathers in cellars, cupboards and low corners, and suffocates without warning.':
    'Kohlendioxid ist schwerer als Luft, sammelt sich in Kellern, Schränken und Senken und erstickt ohne Warnung.',
  'Nothing of the ferment is tasted or drunk.':
    'Vom Gäransatz wird nichts gekostet oder getrunken.',
  'It is made with laboratory vessels, and nobody knows all that has grown in it.':
    'Er wird in Laborgefäßen gemacht, und niemand weiß, was alles darin gewachsen ist.',
  'Source: {source}.': 'Quelle: {source}.',
  Cautions: 'Gefahren',
  Back: 'Zurück',
};
