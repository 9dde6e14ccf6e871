<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>Lapwright</name>
    <message>
        <source>
Note of A: %1</source>
        <translation>
Notiz von A: %1</translation>
    </message>
    <message>
        <source>
Note of B: %1</source>
        <translation>
Notiz von B: %1</translation>
    </message>
    <message>
        <source>
Note: %1</source>
        <translation>
Notiz: %1</translation>
    </message>
    <message>
        <source> %1 without a date stand last, in the table only; F2 in the list gives them one.</source>
        <translation> %1 Sessions ohne Datum stehen zuletzt, nur in der Tabelle; F2 in der Liste gibt ihnen ein Datum.</translation>
    </message>
    <message>
        <source> (derived)</source>
        <translation> (abgeleitet)</translation>
    </message>
    <message>
        <source> Nothing had to be mended.</source>
        <translation> Nichts musste repariert werden.</translation>
    </message>
    <message>
        <source> Of %1 the books said different things: &quot;lapwright book conflicts&quot; shows and settles them.</source>
        <translation> Bei %1 sagen die Bücher Verschiedenes: „lapwright book conflicts“ zeigt und klärt es.</translation>
    </message>
    <message>
        <source> Of the known ones %1 that were removed: the list of removed sessions brings them back.</source>
        <translation> Unter den bekannten %1: Die Liste der entfernten Sessions holt sie zurück.</translation>
    </message>
    <message>
        <source> One without a date stands last, in the table only; F2 in the list gives it one.</source>
        <translation> Eine Session ohne Datum steht zuletzt, nur in der Tabelle; F2 in der Liste gibt ihr ein Datum.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source> at first, %1 at last</source>
        <translation> anfangs, %1 zuletzt</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source> · video: %1</source>
        <translation> · Video: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has this key now, and will lose it.</source>
        <translation>„%1“ hat diese Taste jetzt und verliert sie.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is taken as the %2</source>
        <translation>„%1“ ist als „%2“ genommen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is taken as the %2, this one kept without a meaning</source>
        <translation>„%1“ gilt als %2, diese bleibt ohne Bedeutung</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too long</source>
        <translation>„%1“ ist zu lang</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a number from %2 to %3</source>
        <translation>„%1“ muss eine Zahl von %2 bis %3 sein</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be text</source>
        <translation>„%1“ muss Text sein</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no item of a setup with its value</source>
        <translation>„%1“ nennt keine Angabe eines Setups mit ihrem Wert</translation>
    </message>
    <message>
        <source>&quot;Try next&quot; then speaks to the driver of %1 alone; the book remembers which car is yours. Press again for both drivers.</source>
        <translation>„Als Nächstes“ wendet sich dann nur an den Fahrer von %1; das Buch merkt sich, welches Auto das eigene ist. Noch einmal drücken: wieder für beide Fahrer.</translation>
    </message>
    <message>
        <source>&quot;columns&quot; is missing</source>
        <translation>„columns“ fehlt</translation>
    </message>
    <message>
        <source>&quot;conditions&quot; must be an object</source>
        <translation>„conditions“ muss ein Objekt sein</translation>
    </message>
    <message>
        <source>&quot;decimal_mark&quot; is neither point nor comma</source>
        <translation>„decimal_mark“ ist weder Punkt noch Komma</translation>
    </message>
    <message>
        <source>&quot;delimiter&quot; is neither one character nor &quot;blanks&quot;</source>
        <translation>„delimiter“ ist weder ein einzelnes Zeichen noch „blanks“</translation>
    </message>
    <message>
        <source>&quot;form&quot; is not known</source>
        <translation>„form“ ist nicht bekannt</translation>
    </message>
    <message>
        <source>&quot;half_width_m&quot; is not a number from 1 to 60: a wider timing line would be crossed by other parts of the track</source>
        <translation>„half_width_m“ ist keine Zahl von 1 bis 60: eine breitere Messlinie würde von anderen Teilen der Strecke gekreuzt</translation>
    </message>
    <message>
        <source>&quot;items&quot; are too many</source>
        <translation>es sind zu viele „items“</translation>
    </message>
    <message>
        <source>&quot;items&quot; must be a list</source>
        <translation>„items“ muss eine Liste sein</translation>
    </message>
    <message>
        <source>&quot;known&quot; must be an object</source>
        <translation>„known“ muss ein Objekt sein</translation>
    </message>
    <message>
        <source>&quot;length_m&quot; is not a number from 0 to 50000</source>
        <translation>„length_m“ ist keine Zahl von 0 bis 50000</translation>
    </message>
    <message>
        <source>&quot;meaning&quot; is not known</source>
        <translation>„meaning“ ist nicht bekannt</translation>
    </message>
    <message>
        <source>&quot;row_rate_hz&quot; is outside 0.1 to 10,000</source>
        <translation>„row_rate_hz“ liegt außerhalb von 0,1 bis 10000</translation>
    </message>
    <message>
        <source>&quot;scale&quot; is no usable number</source>
        <translation>„scale“ ist keine brauchbare Zahl</translation>
    </message>
    <message>
        <source>&quot;segments&quot; has more than 500 entries, too many to tell anything of one</source>
        <translation>„segments“ hat mehr als 500 Einträge, zu viele, um über einen etwas zu sagen</translation>
    </message>
    <message>
        <source>&quot;segments&quot; is not a list</source>
        <translation>„segments“ ist keine Liste</translation>
    </message>
    <message>
        <source>&quot;springs&quot; must be an object</source>
        <translation>„springs“ muss ein Objekt sein</translation>
    </message>
    <message>
        <source>&quot;springs&quot; need both &quot;front_n_per_mm&quot; and &quot;rear_n_per_mm&quot;</source>
        <translation>„springs“ braucht sowohl „front_n_per_mm“ als auch „rear_n_per_mm“</translation>
    </message>
    <message>
        <source>&quot;turns_m&quot; is not a list of rising distances on the lap</source>
        <translation>„turns_m“ ist keine Liste steigender Distanzen auf der Runde</translation>
    </message>
    <message>
        <source>&quot;unit&quot; is not known</source>
        <translation>„unit“ ist nicht bekannt</translation>
    </message>
    <message>
        <source>&quot;use&quot; is not known</source>
        <translation>„use“ ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1  lap %2 · %3 · %4 s to A · %5</source>
        <translation>%1  Runde %2 · %3 · %4 s zu A · %5</translation>
    </message>
    <message>
        <source>%1 %2 %3, %4 UTC</source>
        <translation>%1. %2 %3, %4 UTC</translation>
    </message>
    <message>
        <source>%1 %2 later</source>
        <translation>%1 %2 später</translation>
    </message>
    <message>
        <source>%1 %2 less</source>
        <translation>%1 %2 weniger</translation>
    </message>
    <message>
        <source>%1 %2 sooner</source>
        <translation>%1 %2 früher</translation>
    </message>
    <message>
        <source>%1 (%2 s off its best)</source>
        <translation>%1 (%2 s hinter der besten Zeit)</translation>
    </message>
    <message>
        <source>%1 (A alone)</source>
        <translation>%1 (nur A)</translation>
    </message>
    <message>
        <source>%1 (B alone)</source>
        <translation>%1 (nur B)</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 MB</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 gegen %2</translation>
    </message>
    <message>
        <source>%1 ahead %2</source>
        <translation>%1 vorn %2</translation>
    </message>
    <message>
        <source>%1 ahead by %2</source>
        <translation>%1 mit %2 vorn</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>%1 and %2 were driven at the same time, so not with one car</source>
        <translation>%1 und %2 wurden gleichzeitig gefahren, also nicht mit einem Auto</translation>
    </message>
    <message>
        <source>%1 and %2 were saved; the damaged book is kept as %3.</source>
        <translation>Gerettet: %1 und %2; das beschädigte Buch bleibt als %3 erhalten.</translation>
    </message>
    <message>
        <source>%1 are all plausible: taken as %2</source>
        <translation>%1 sind alle plausibel: als %2 genommen</translation>
    </message>
    <message>
        <source>%1 are among those</source>
        <translation>sind %1 entfernte</translation>
    </message>
    <message>
        <source>%1 are both plausible: taken as %2</source>
        <translation>%1 sind beide plausibel: als %2 genommen</translation>
    </message>
    <message>
        <source>%1 are probably worth %2 a lap to %3, most %4</source>
        <translation>%1 bringen %3 wahrscheinlich %2 pro Runde, am meisten %4</translation>
    </message>
    <message>
        <source>%1 are worth %2 a lap to %3, most %4</source>
        <translation>%1 bringen %3 %2 pro Runde, am meisten %4</translation>
    </message>
    <message>
        <source>%1 as a first step</source>
        <translation>%1, als erster Schritt</translation>
    </message>
    <message>
        <source>%1 at %2, %3</source>
        <translation>%1 bei %2, %3</translation>
    </message>
    <message>
        <source>%1 by its own line</source>
        <translation>%1 an der eigenen Messlinie</translation>
    </message>
    <message>
        <source>%1 bytes of zeros at the end were left out: the logger may have lost power</source>
        <translation>%1 Nullbytes am Ende wurden weggelassen: der Logger war wohl ohne Strom</translation>
    </message>
    <message>
        <source>%1 came from the friend&apos;s book, %2; with %3 and %4.</source>
        <translation>Aus dem Buch des Freundes: %1, %2; dazu %3 und %4.</translation>
    </message>
    <message>
        <source>%1 came out of the book: open its file to change what its columns mean.</source>
        <translation>%1 kam aus dem Buch: seine Datei öffnen, um zu ändern, was die Spalten bedeuten.</translation>
    </message>
    <message>
        <source>%1 cannot be told</source>
        <translation>%1 nicht feststellbar</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>%1 kann nicht geschrieben werden: %2</translation>
    </message>
    <message>
        <source>%1 cell is not readable and was left out%2</source>
        <translation>%1 Zelle ist nicht lesbar und wurde weggelassen%2</translation>
    </message>
    <message>
        <source>%1 cell of %2 taken as &quot;no value&quot; and left out</source>
        <translation>%1 Zelle mit %2 gilt als „kein Wert“ und wurde weggelassen</translation>
    </message>
    <message>
        <source>%1 cells are not readable and were left out%2</source>
        <translation>%1 Zellen sind nicht lesbar und wurden weggelassen%2</translation>
    </message>
    <message>
        <source>%1 cells of %2 taken as &quot;no value&quot; and left out</source>
        <translation>%1 Zellen mit %2 gelten als „kein Wert“ und wurden weggelassen</translation>
    </message>
    <message>
        <source>%1 characters of UTF-16 are cut or damaged</source>
        <translation>%1 Zeichen in UTF-16 sind abgeschnitten oder beschädigt</translation>
    </message>
    <message>
        <source>%1 clean laps without the change, %2 with it; a drift of %3 s from lap to lap is taken out</source>
        <translation>%1 saubere Runden ohne die Änderung, %2 mit ihr; eine Drift von %3 s von Runde zu Runde ist herausgerechnet</translation>
    </message>
    <message>
        <source>%1 columns by %2: %3</source>
        <translation>%1 Spalten, %2: %3</translation>
    </message>
    <message>
        <source>%1 costs %2, most %3</source>
        <translation>%1 kostet %2, am meisten %3</translation>
    </message>
    <message>
        <source>%1 earns %2, most %3</source>
        <translation>%1 bringt %2, am meisten %3</translation>
    </message>
    <message>
        <source>%1 edits are not in the book</source>
        <translation>%1 Änderungen nicht im Buch</translation>
    </message>
    <message>
        <source>%1 edits are not in the book yet.</source>
        <translation>%1 Änderungen sind noch nicht im Buch.</translation>
    </message>
    <message>
        <source>%1 fields</source>
        <translation>%1 Feldern</translation>
    </message>
    <message>
        <source>%1 fit the speed</source>
        <translation>%1 passen zur Geschwindigkeit</translation>
    </message>
    <message>
        <source>%1 fits the positions</source>
        <translation>%1 passt zu den Positionen</translation>
    </message>
    <message>
        <source>%1 fits the speed between the positions</source>
        <translation>%1 passt zur Geschwindigkeit zwischen den Positionen</translation>
    </message>
    <message>
        <source>%1 gap in %2 and what was sampled with it, the longest of %3 s at %4 s</source>
        <translation>%1 Lücke in %2 und dem, was zugleich erfasst wurde, die längste mit %3 s bei %4 s</translation>
    </message>
    <message>
        <source>%1 gaps in %2 and what was sampled with it, the longest of %3 s at %4 s</source>
        <translation>%1 Lücken in %2 und dem, was zugleich erfasst wurde, die längste mit %3 s bei %4 s</translation>
    </message>
    <message>
        <source>%1 gets quicker all the way to %2, worth %3 there.</source>
        <translation>%1 wird durchweg schneller bis zu %2 Abtrieb; dort bringt das %3.</translation>
    </message>
    <message>
        <source>%1 has no positions: aligned on cornering, so its error bars are wider%2</source>
        <translation>%1 hat keine Positionen: an den Kurven ausgerichtet, daher sind die Fehlerbalken breiter%2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 is %2&apos;s.</source>
        <translation>%1 gehört %2.</translation>
    </message>
    <message>
        <source>%1 is a setup sheet, but no single open session is of its driver and car, or has its name: open that session first, or read the sheet under Setup on the Causes page.</source>
        <translation>%1 ist ein Setup-Blatt, aber es gibt nicht genau eine offene Session mit seinem Fahrer und Auto oder mit seinem Namen: erst diese Session öffnen, oder das Blatt unter „Setup“ auf der Seite „Ursachen“ einlesen.</translation>
    </message>
    <message>
        <source>%1 is also quicker on the straights, worth %2 s in all.</source>
        <translation>%1 ist auch auf den Geraden schneller, insgesamt %2 s.</translation>
    </message>
    <message>
        <source>%1 is left out: %2</source>
        <translation>%1 bleibt außen vor: %2</translation>
    </message>
    <message>
        <source>%1 is probably %2&apos;s.</source>
        <translation>%1 gehört wahrscheinlich %2.</translation>
    </message>
    <message>
        <source>%1 is probably quicker in %2, by %3.</source>
        <translation>%1 ist in %2 wahrscheinlich um %3 schneller.</translation>
    </message>
    <message>
        <source>%1 is probably worth %2 a lap to %3, most %4</source>
        <translation>%1 bringt %3 wahrscheinlich %2 pro Runde, am meisten %4</translation>
    </message>
    <message>
        <source>%1 is probably worth %2 a lap to %3, most %4.</source>
        <translation>%1 bringt %3 wahrscheinlich %2 pro Runde, am meisten %4.</translation>
    </message>
    <message>
        <source>%1 is quicker in %2, by %3.</source>
        <translation>%1 ist in %2 um %3 schneller.</translation>
    </message>
    <message>
        <source>%1 is quicker on the straights, worth %2 s in all.</source>
        <translation>%1 ist auf den Geraden schneller, insgesamt %2 s.</translation>
    </message>
    <message>
        <source>%1 is quicker there in %2 of %3 clean laps</source>
        <translation>%1 ist dort in %2 von %3 sauberen Runden schneller</translation>
    </message>
    <message>
        <source>%1 is quicker there in all %2 clean laps</source>
        <translation>%1 ist dort in allen %2 sauberen Runden schneller</translation>
    </message>
    <message>
        <source>%1 is quickest with downforce %2 (%3 to %4), worth %5.</source>
        <translation>%1 ist am schnellsten mit %2 Abtrieb (%3 bis %4), was %5 bringt.</translation>
    </message>
    <message>
        <source>%1 is taken at full throttle: it bounds the grip from below only</source>
        <translation>%1 wird mit Vollgas gefahren: das begrenzt den Grip nur nach unten</translation>
    </message>
    <message>
        <source>%1 is there twice</source>
        <translation>%1 ist zweimal dabei</translation>
    </message>
    <message>
        <source>%1 is worth %2 a lap to %3, most %4</source>
        <translation>%1 bringt %3 %2 pro Runde, am meisten %4</translation>
    </message>
    <message>
        <source>%1 is worth %2 a lap to %3, most %4.</source>
        <translation>%1 bringt %3 %2 pro Runde, am meisten %4.</translation>
    </message>
    <message>
        <source>%1 is written, but by its values %2 is plausible too: taken as written</source>
        <translation>%1 steht da, aber nach ihren Werten ist auch %2 plausibel: wie geschrieben genommen</translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation>%1 ist geschrieben.</translation>
    </message>
    <message>
        <source>%1 kept pairings</source>
        <translation>%1 behaltene Paarungen</translation>
    </message>
    <message>
        <source>%1 lap %2</source>
        <translation>%1 Runde %2</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 line between the names and the readings is none of either and was left out%2</source>
        <translation>%1 Zeile zwischen Namen und Messwerten ist weder das eine noch das andere und wurde weggelassen%2</translation>
    </message>
    <message>
        <source>%1 line holds no values and was left out%2</source>
        <translation>%1 Zeile enthält keine Werte und wurde weggelassen%2</translation>
    </message>
    <message>
        <source>%1 line is a comment and left out%2</source>
        <translation>%1 Zeile ist ein Kommentar und weggelassen%2</translation>
    </message>
    <message>
        <source>%1 line is no sentence and was left out%2</source>
        <translation>%1 Zeile ist kein Satz und wurde weggelassen%2</translation>
    </message>
    <message>
        <source>%1 lines are comments and left out%2</source>
        <translation>%1 Zeilen sind Kommentare und weggelassen%2</translation>
    </message>
    <message>
        <source>%1 lines are no sentences and were left out%2</source>
        <translation>%1 Zeilen sind keine Sätze und wurden weggelassen%2</translation>
    </message>
    <message>
        <source>%1 lines between the names and the readings are none of either and were left out%2</source>
        <translation>%1 Zeilen zwischen Namen und Messwerten sind weder das eine noch das andere und wurden weggelassen%2</translation>
    </message>
    <message>
        <source>%1 lines hold no values and were left out%2</source>
        <translation>%1 Zeilen enthalten keine Werte und wurden weggelassen%2</translation>
    </message>
    <message>
        <source>%1 looks to be taken below the limit</source>
        <translation>%1 wird wohl unter dem Limit gefahren</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 mehr</translation>
    </message>
    <message>
        <source>%1 m² of drag for each m² of downforce</source>
        <translation>%1 m² Widerstand für jeden m² Abtrieb</translation>
    </message>
    <message>
        <source>%1 new sessions</source>
        <translation>%1 neue Sessions</translation>
    </message>
    <message>
        <source>%1 no fit</source>
        <translation>%1 passt nicht</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Notizen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 of %2 judged predictions held: %3 to %4 % of such predictions do (95 % interval), and 95 % should.</source>
        <translation>%1 von %2 beurteilten Vorhersagen trafen zu: Von solchen Vorhersagen treffen %3 bis %4 % zu (95-%-Intervall), 95 % sollten es.</translation>
    </message>
    <message>
        <source>%1 of %2 · </source>
        <translation>%1 von %2 · </translation>
    </message>
    <message>
        <source>%1 pairings</source>
        <translation>%1 Paarungen</translation>
    </message>
    <message>
        <source>%1 pairings, the last one first. Return opens one with both its sessions, Delete takes it out.</source>
        <translation>%1 Paarungen, die letzte zuerst. Die Eingabetaste öffnet eine mit ihren beiden Sessions, Entf nimmt sie heraus.</translation>
    </message>
    <message>
        <source>%1 position beyond 90° of latitude or 360° of longitude, or not readable: left out%2</source>
        <translation>%1 Position jenseits von 90° Breite oder 360° Länge, oder nicht lesbar: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 position of exactly 0, 0, as receivers write without a fix: left out%2</source>
        <translation>%1 Position von genau 0, 0, wie sie Empfänger ohne Satelliten schreiben: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 position with only one of latitude and longitude: left out%2</source>
        <translation>%1 Position mit nur Breiten- oder nur Längengrad: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 positions</source>
        <translation>Positionen mit %1</translation>
    </message>
    <message>
        <source>%1 positions beyond 90° of latitude or 360° of longitude, or not readable: left out%2</source>
        <translation>%1 Positionen jenseits von 90° Breite oder 360° Länge, oder nicht lesbar: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 positions of exactly 0, 0, as receivers write without a fix: left out%2</source>
        <translation>%1 Positionen von genau 0, 0, wie sie Empfänger ohne Satelliten schreiben: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 positions only repeat another while the car drove on: they were left out</source>
        <translation>%1 Positionen wiederholen nur eine andere, während das Auto weiterfuhr: sie wurden weggelassen</translation>
    </message>
    <message>
        <source>%1 positions with only one of latitude and longitude: left out%2</source>
        <translation>%1 Positionen mit nur Breiten- oder nur Längengrad: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 predicted: %2 a lap</source>
        <translation>%1 vorhergesagt: %2 pro Runde</translation>
    </message>
    <message>
        <source>%1 removed sessions can be brought back.</source>
        <translation>%1 entfernte Sessions lassen sich zurückholen.</translation>
    </message>
    <message>
        <source>%1 row has no readable time and was left out</source>
        <translation>%1 Zeile hat keine lesbare Zeit und wurde weggelassen</translation>
    </message>
    <message>
        <source>%1 row has too few or too many cells and was left out%2</source>
        <translation>%1 Zeile hat zu wenige oder zu viele Zellen und wurde weggelassen%2</translation>
    </message>
    <message>
        <source>%1 row is out of order in time and was left out</source>
        <translation>%1 Zeile steht zeitlich nicht an ihrer Stelle und wurde weggelassen</translation>
    </message>
    <message>
        <source>%1 row repeats the time of the row before and was left out</source>
        <translation>%1 Zeile wiederholt die Zeit der Zeile davor und wurde weggelassen</translation>
    </message>
    <message>
        <source>%1 rows are out of order in time and were left out</source>
        <translation>%1 Zeilen stehen zeitlich nicht an ihrer Stelle und wurden weggelassen</translation>
    </message>
    <message>
        <source>%1 rows have no readable time and were left out</source>
        <translation>%1 Zeilen haben keine lesbare Zeit und wurden weggelassen</translation>
    </message>
    <message>
        <source>%1 rows have too few or too many cells and were left out%2</source>
        <translation>%1 Zeilen haben zu wenige oder zu viele Zellen und wurden weggelassen%2</translation>
    </message>
    <message>
        <source>%1 rows repeat the time of the row before and were left out</source>
        <translation>%1 Zeilen wiederholen die Zeit der Zeile davor und wurden weggelassen</translation>
    </message>
    <message>
        <source>%1 s a lap</source>
        <translation>%1 s pro Runde</translation>
    </message>
    <message>
        <source>%1 s less coasting</source>
        <translation>%1 s weniger Rollen</translation>
    </message>
    <message>
        <source>%1 s lost near %2 m</source>
        <translation>%1 s verloren bei %2 m</translation>
    </message>
    <message>
        <source>%1 s more coasting</source>
        <translation>%1 s mehr Rollen</translation>
    </message>
    <message>
        <source>%1 s slower than the usual lap</source>
        <translation>%1 s langsamer als die übliche Runde</translation>
    </message>
    <message>
        <source>%1 s, 95 % between %2 and %3</source>
        <translation>%1 s, 95 % zwischen %2 und %3</translation>
    </message>
    <message>
        <source>%1 sentence has a wrong checksum and was left out%2</source>
        <translation>%1 Satz hat eine falsche Prüfsumme und wurde weggelassen%2</translation>
    </message>
    <message>
        <source>%1 sentence was written without a fix</source>
        <translation>%1 Satz wurde ohne gültige Position geschrieben</translation>
    </message>
    <message>
        <source>%1 sentences have a wrong checksum and were left out%2</source>
        <translation>%1 Sätze haben eine falsche Prüfsumme und wurden weggelassen%2</translation>
    </message>
    <message>
        <source>%1 sentences were written without a fix</source>
        <translation>%1 Sätze wurden ohne gültige Position geschrieben</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 Sessions</translation>
    </message>
    <message>
        <source>%1 sessions were timed at another line of the track than the rest, so that lap times differ a little without a reason: %2.</source>
        <translation>%1 Sessions wurden an einer anderen Linie der Strecke gestoppt als die übrigen, sodass sich Rundenzeiten ohne Grund ein wenig unterscheiden: %2.</translation>
    </message>
    <message>
        <source>%1 speed of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2</source>
        <translation>%1 Geschwindigkeit von genau 0 zwischen Zeilen eines fahrenden Autos, wie sie Empfänger ohne Satelliten schreiben: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 speeds of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2</source>
        <translation>%1 Geschwindigkeiten von genau 0 zwischen Zeilen eines fahrenden Autos, wie sie Empfänger ohne Satelliten schreiben: weggelassen%2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2 s at %3 m²</source>
        <translation>%1 bis %2 s bei %3 m²</translation>
    </message>
    <message>
        <source>%1 together are probably worth %2 s a lap, most %3</source>
        <translation>%1 bringen zusammen wahrscheinlich %2 s pro Runde, am meisten %3</translation>
    </message>
    <message>
        <source>%1 together are worth %2 s a lap, most %3</source>
        <translation>%1 bringen zusammen %2 s pro Runde, am meisten %3</translation>
    </message>
    <message>
        <source>%1 was made for files of another shape: only columns of the same name follow it</source>
        <translation>%1 wurde für Dateien anderer Form gemacht: nur gleichnamige Spalten folgen ihm</translation>
    </message>
    <message>
        <source>%1 were known already</source>
        <translation>%1 waren schon bekannt</translation>
    </message>
    <message>
        <source>%1 would be shorter than %2</source>
        <translation>%1 wäre kürzer als %2</translation>
    </message>
    <message>
        <source>%1 would be worth %2 a lap to %3</source>
        <translation>%1 brächte %3 %2 pro Runde</translation>
    </message>
    <message>
        <source>%1 would cost %2 a lap to %3</source>
        <translation>%1 würde %3 %2 pro Runde kosten</translation>
    </message>
    <message>
        <source>%1&apos;s aero is probably worth %2 a lap: %3; %4.</source>
        <translation>Die Aero von %1 bringt wahrscheinlich %2 pro Runde: %3; %4.</translation>
    </message>
    <message>
        <source>%1&apos;s aero is worth %2 a lap: %3; %4.</source>
        <translation>Die Aero von %1 bringt %2 pro Runde: %3; %4.</translation>
    </message>
    <message>
        <source>%1&apos;s lap has no such moment</source>
        <translation>die Runde von %1 hat keinen solchen Moment</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 with figures; </source>
        <translation>%1, %2 mit Kennwerten; </translation>
    </message>
    <message>
        <source>%1, %2, and the laps&apos; %3 disagree by %4 standard errors</source>
        <translation>%1, %2, und der Wert der Runden, %3, liegen %4 Standardfehler auseinander</translation>
    </message>
    <message>
        <source>%1, %2: </source>
        <translation>%1, %2: </translation>
    </message>
    <message>
        <source>%1, as it became known</source>
        <translation>%1, wie nach und nach bekannt</translation>
    </message>
    <message>
        <source>%1, as on another of your clean laps</source>
        <translation>%1, wie in einer anderen eigenen sauberen Runde</translation>
    </message>
    <message>
        <source>%1, as the book knows it</source>
        <translation>%1, wie das Buch sie kennt</translation>
    </message>
    <message>
        <source>%1, but is read as a person has said</source>
        <translation>%1, wird aber gelesen, wie eine Person gesagt hat</translation>
    </message>
    <message>
        <source>%1, longest %2 s at %3 s</source>
        <translation>%1, die längste %2 s bei %3 s</translation>
    </message>
    <message>
        <source>%1, my car: %2, lap %3, %4, %5 clean laps</source>
        <translation>%1, eigenes Auto: %2, Runde %3, %4, %5 saubere Runden</translation>
    </message>
    <message>
        <source>%1, or chance</source>
        <translation>%1, oder Zufall</translation>
    </message>
    <message>
        <source>%1, out at %2 against %3</source>
        <translation>%1, Ausgang mit %2 gegen %3</translation>
    </message>
    <message>
        <source>%1, the largest part in %2 (%3).</source>
        <translation>%1, den größten Teil in %2 (%3).</translation>
    </message>
    <message>
        <source>%1, where you judge it safe: %2.</source>
        <translation>%1, wo es nach eigenem Urteil sicher ist: %2.</translation>
    </message>
    <message>
        <source>%1, written %2</source>
        <translation>%1, geschrieben %2</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 clean laps say little about what repeats</source>
        <translation>%1: %2 saubere Runden sagen wenig darüber, was sich wiederholt</translation>
    </message>
    <message>
        <source>%1: %2 laps, %3 to %4 s</source>
        <translation>%1: %2 Runden, %3 bis %4 s</translation>
    </message>
    <message>
        <source>%1: %2 laps, now %3, best %4, still to be won %5 s</source>
        <translation>%1: %2 Runden, jetzt %3, beste %4, noch zu holen %5 s</translation>
    </message>
    <message>
        <source>%1: %2 points between %3 and %4</source>
        <translation>%1: %2 Punkte zwischen %3 und %4</translation>
    </message>
    <message>
        <source>%1: %2 sessions from %3 to %4, between %5 and %6</source>
        <translation>%1: %2 Sessions vom %3 bis %4, zwischen %5 und %6</translation>
    </message>
    <message>
        <source>%1: %2, lap %3, %4, %5 clean laps</source>
        <translation>%1: %2, Runde %3, %4, %5 saubere Runden</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: A %2, B %3%4.</source>
        <translation>%1: A %2, B %3%4.</translation>
    </message>
    <message>
        <source>%1: cannot be told</source>
        <translation>%1: nicht feststellbar</translation>
    </message>
    <message>
        <source>%1: from a file…</source>
        <translation>%1: aus Datei…</translation>
    </message>
    <message>
        <source>%1: how far its map lies off the other did not settle: its laps are placed less surely</source>
        <translation>%1: Wie weit ihre Karte neben der anderen liegt, hat sich nicht eingependelt: ihre Runden sind weniger sicher eingeordnet</translation>
    </message>
    <message>
        <source>%1: how much downforce is best cannot be told: %2.</source>
        <translation>%1: Wie viel Abtrieb am besten ist, ist nicht feststellbar: %2.</translation>
    </message>
    <message>
        <source>%1: lap %2 is not clean</source>
        <translation>%1: Runde %2 ist nicht sauber</translation>
    </message>
    <message>
        <source>%1: lap %2 is not clean: %3</source>
        <translation>%1: Runde %2 ist nicht sauber: %3</translation>
    </message>
    <message>
        <source>%1: lap %2, %3, %4</source>
        <translation>%1: Runde %2, %3, %4</translation>
    </message>
    <message>
        <source>%1: lap time against now from %2 up to %3</source>
        <translation>%1: Rundenzeit gegenüber jetzt, von %2 hinauf bis %3</translation>
    </message>
    <message>
        <source>%1: no lap yet</source>
        <translation>%1: noch keine Runde</translation>
    </message>
    <message>
        <source>%1: not used as a speed</source>
        <translation>%1: nicht als Geschwindigkeit genutzt</translation>
    </message>
    <message>
        <source>%1: taken as %2</source>
        <translation>%1: als %2 genommen</translation>
    </message>
    <message>
        <source>%1: the uncertainty of this recording is not known</source>
        <translation>%1: die Unsicherheit dieser Aufzeichnung ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1: this book can only be read here. Notes that you write stay in your settings, other changes of the book are not made — to edit it, copy it to a folder that you may write, and open the copy</source>
        <translation>%1: Dieses Buch lässt sich hier nur lesen. Eigene Notizen bleiben in den Einstellungen, andere Änderungen am Buch finden nicht statt — zum Bearbeiten in einen beschreibbaren Ordner kopieren und die Kopie öffnen</translation>
    </message>
    <message>
        <source>%1: tyre grip %2 to %3, downforce area %4 to %5 m²</source>
        <translation>%1: Reifengrip %2 bis %3, Abtriebsfläche %4 bis %5 m²</translation>
    </message>
    <message>
        <source>%1: whether more or less downforce than now is quicker here cannot be told.</source>
        <translation>%1: Ob hier mehr oder weniger Abtrieb als jetzt schneller ist, ist nicht feststellbar.</translation>
    </message>
    <message>
        <source>%1: which of its laps was the fastest cannot be told: another one is slower by %2 s %3</source>
        <translation>%1: Welche ihrer Runden die schnellste war, ist nicht feststellbar: eine andere ist um %2 s %3 langsamer</translation>
    </message>
    <message>
        <source>%1: who wins time here cannot be told.</source>
        <translation>%1: Wer hier Zeit gewinnt, ist nicht feststellbar.</translation>
    </message>
    <message>
        <source>%1: write a note here</source>
        <translation>%1: hier eine Notiz schreiben</translation>
    </message>
    <message>
        <source>%1; %2 brakes %3 later</source>
        <translation>%1; %2 bremst %3 später</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1; %2.</translation>
    </message>
    <message>
        <source>%1; try one step less wing and see what the corners pay.</source>
        <translation>%1; eine Flügelstufe weniger versuchen und sehen, was das in den Kurven kostet.</translation>
    </message>
    <message>
        <source>%1; try one step of the wing and come back to it.</source>
        <translation>%1; eine Flügelstufe versuchen und wieder zurückgehen.</translation>
    </message>
    <message>
        <source>&amp;%1  %2 — %3</source>
        <translation>&amp;%1  %2 — %3</translation>
    </message>
    <message>
        <source>&amp;About Lapwright</source>
        <translation>Ü&amp;ber Lapwright</translation>
    </message>
    <message>
        <source>&amp;All of them</source>
        <translation>&amp;Alle zusammen</translation>
    </message>
    <message>
        <source>&amp;Bring back</source>
        <translation>&amp;Zurückholen</translation>
    </message>
    <message>
        <source>&amp;Bring it back</source>
        <translation>&amp;Zurückholen</translation>
    </message>
    <message>
        <source>&amp;Change the keys…</source>
        <translation>Taste&amp;n ändern…</translation>
    </message>
    <message>
        <source>&amp;Check the whole book</source>
        <translation>Ganzes Buch &amp;prüfen</translation>
    </message>
    <message>
        <source>&amp;Close this session</source>
        <translation>Diese Session s&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleich</translation>
    </message>
    <message>
        <source>&amp;Compare A and B</source>
        <translation>A und B &amp;vergleichen</translation>
    </message>
    <message>
        <source>&amp;Copy as a table	Ctrl+C</source>
        <translation>Als Tabelle &amp;kopieren	Strg+C</translation>
    </message>
    <message>
        <source>&amp;Corner or straight: make it the other</source>
        <translation>&amp;Kurve oder Gerade: umschalten</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Debrief</source>
        <translation>&amp;Debrief</translation>
    </message>
    <message>
        <source>&amp;Decimal mark</source>
        <translation>&amp;Dezimalzeichen</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>&amp;Dismiss the notices</source>
        <translation>&amp;Hinweise schließen</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Bearbeiten…</translation>
    </message>
    <message>
        <source>&amp;Fold the panel, or open it</source>
        <translation>Feld ein- oder aus&amp;klappen</translation>
    </message>
    <message>
        <source>&amp;Forget the track&apos;s gate and corners</source>
        <translation>Messlinie und Kurven der Strecke ver&amp;gessen</translation>
    </message>
    <message>
        <source>&amp;Further channels</source>
        <translation>Weitere &amp;Kanäle</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe</translation>
    </message>
    <message>
        <source>&amp;Go to a corner, session, lap or command…</source>
        <translation>&amp;Gehe zu Kurve, Session, Runde oder Befehl…</translation>
    </message>
    <message>
        <source>&amp;Half</source>
        <translation>&amp;Halb</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Imperial: mph, m</source>
        <translation>&amp;Britisch: mph, m</translation>
    </message>
    <message>
        <source>&amp;Import recipes…</source>
        <translation>I&amp;mportrezepte…</translation>
    </message>
    <message>
        <source>&amp;Join each corner with its straight</source>
        <translation>Jede Kurve mit i&amp;hrer Geraden verbinden</translation>
    </message>
    <message>
        <source>&amp;Join the segment with the next</source>
        <translation>Abschnitt mit dem nächsten &amp;verbinden</translation>
    </message>
    <message>
        <source>&amp;Keep what is predicted…</source>
        <translation>Vorhersage &amp;festhalten…</translation>
    </message>
    <message>
        <source>&amp;Keys and mouse</source>
        <translation>&amp;Tasten und Maus</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Merge a friend&apos;s book…</source>
        <translation>&amp;Buch eines Freundes zusammenführen…</translation>
    </message>
    <message>
        <source>&amp;Metric: km/h, m</source>
        <translation>&amp;Metrisch: km/h, m</translation>
    </message>
    <message>
        <source>&amp;Multiplied by</source>
        <translation>&amp;Multipliziert mit</translation>
    </message>
    <message>
        <source>&amp;Name of the segment</source>
        <translation>&amp;Name des Abschnitts</translation>
    </message>
    <message>
        <source>&amp;Names and date…	F2</source>
        <translation>&amp;Namen und Datum…	F2</translation>
    </message>
    <message>
        <source>&amp;Names in line</source>
        <translation>&amp;Namen in Zeile</translation>
    </message>
    <message>
        <source>&amp;Names, date and conditions</source>
        <translation>&amp;Namen, Datum und Bedingungen</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;Next segment</source>
        <translation>&amp;Nächster Abschnitt</translation>
    </message>
    <message>
        <source>&amp;Notes, a line each</source>
        <translation>&amp;Notizen, je eine Zeile</translation>
    </message>
    <message>
        <source>&amp;Of this session</source>
        <translation>Von dieser &amp;Session</translation>
    </message>
    <message>
        <source>&amp;Open	Return</source>
        <translation>Ö&amp;ffnen	Eingabe</translation>
    </message>
    <message>
        <source>&amp;Open files…</source>
        <translation>&amp;Dateien öffnen…</translation>
    </message>
    <message>
        <source>&amp;Pairing</source>
        <translation>&amp;Paar</translation>
    </message>
    <message>
        <source>&amp;Panels of the plots</source>
        <translation>Diagramm&amp;felder</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>Pap&amp;ier</translation>
    </message>
    <message>
        <source>&amp;Parted by</source>
        <translation>&amp;Trennzeichen</translation>
    </message>
    <message>
        <source>&amp;Play and pause</source>
        <translation>Abs&amp;pielen und anhalten</translation>
    </message>
    <message>
        <source>&amp;Previous segment</source>
        <translation>&amp;Voriger Abschnitt</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Reckon what the change is worth</source>
        <translation>&amp;Berechnen, was die Änderung bringt</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>%1 &amp;wiederholen</translation>
    </message>
    <message>
        <source>&amp;Removed sessions…</source>
        <translation>&amp;Entfernte Sessions…</translation>
    </message>
    <message>
        <source>&amp;Rename</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <source>&amp;Save what the damaged book holds</source>
        <translation>&amp;Retten, was das beschädigte Buch enthält</translation>
    </message>
    <message>
        <source>&amp;Season of a track or car…</source>
        <translation>&amp;Saison einer Strecke oder eines Autos…</translation>
    </message>
    <message>
        <source>&amp;Session</source>
        <translation>&amp;Session</translation>
    </message>
    <message>
        <source>&amp;Sessions</source>
        <translation>&amp;Sessions</translation>
    </message>
    <message>
        <source>&amp;Set the date</source>
        <translation>&amp;Datum setzen</translation>
    </message>
    <message>
        <source>&amp;Sound of A</source>
        <translation>T&amp;on von A</translation>
    </message>
    <message>
        <source>&amp;Stay</source>
        <translation>&amp;Bleiben</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Stopp</translation>
    </message>
    <message>
        <source>&amp;Swap A and B</source>
        <translation>A und B &amp;tauschen</translation>
    </message>
    <message>
        <source>&amp;Take from a file…</source>
        <translation>&amp;Aus einer Datei…</translation>
    </message>
    <message>
        <source>&amp;Take out of the book	Del</source>
        <translation>Aus dem &amp;Buch nehmen	Entf</translation>
    </message>
    <message>
        <source>&amp;Taken for</source>
        <translation>&amp;Gilt als</translation>
    </message>
    <message>
        <source>&amp;Track</source>
        <translation>S&amp;trecke</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Noch einmal</translation>
    </message>
    <message>
        <source>&amp;US: mph, ft</source>
        <translation>&amp;US: mph, ft</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>%1 &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Einheit</translation>
    </message>
    <message>
        <source>&amp;Unite the two</source>
        <translation>&amp;Beide vereinen</translation>
    </message>
    <message>
        <source>&amp;Values fill the view</source>
        <translation>W&amp;erte füllen die Ansicht</translation>
    </message>
    <message>
        <source>&amp;Videos of both beside the traces</source>
        <translation>&amp;Videos beider neben den Verläufen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>In eine &amp;Datei…</translation>
    </message>
    <message>
        <source>&amp;Write what waits into the book</source>
        <translation>&amp;Wartendes ins Buch schreiben</translation>
    </message>
    <message>
        <source>&amp;Write what waits into the book (%1)</source>
        <translation>&amp;Wartendes ins Buch schreiben (%1)</translation>
    </message>
    <message>
        <source>&amp;Written as</source>
        <translation>Sch&amp;reibweise</translation>
    </message>
    <message>
        <source>(line %1)</source>
        <translation>(Zeile %1)</translation>
    </message>
    <message>
        <source>(lines %1 and %2 more)</source>
        <translation>(Zeilen %1 und %2 weitere)</translation>
    </message>
    <message>
        <source>(lines %1)</source>
        <translation>(Zeilen %1)</translation>
    </message>
    <message>
        <source>+, −, W</source>
        <translation>+, −, W</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>, at %1 of their pace</source>
        <translation>, mit %1 des Tempos</translation>
    </message>
    <message>
        <source>, behind A and B as %1</source>
        <translation>, hinter A und B als %1</translation>
    </message>
    <message>
        <source>, radius %1</source>
        <translation>, Radius %1</translation>
    </message>
    <message>
        <source>, s</source>
        <translation>, s</translation>
    </message>
    <message>
        <source>, the curve goes from %1 to %2</source>
        <translation>, die Ausgleichskurve geht von %1 bis %2</translation>
    </message>
    <message>
        <source>0 s</source>
        <translation>0 s</translation>
    </message>
    <message>
        <source>0 to 1</source>
        <translation>0 bis 1</translation>
    </message>
    <message>
        <source>1 % more grip</source>
        <translation>1 % mehr Grip</translation>
    </message>
    <message>
        <source>1 edit is not in the book</source>
        <translation>1 Änderung nicht im Buch</translation>
    </message>
    <message>
        <source>1 edit is not in the book yet.</source>
        <translation>1 Änderung ist noch nicht im Buch.</translation>
    </message>
    <message>
        <source>1 field</source>
        <translation>1 Feld</translation>
    </message>
    <message>
        <source>1 is among those</source>
        <translation>ist 1 entfernte</translation>
    </message>
    <message>
        <source>1 kept pairing</source>
        <translation>1 behaltene Paarung</translation>
    </message>
    <message>
        <source>1 new session</source>
        <translation>1 neue Session</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 Notiz</translation>
    </message>
    <message>
        <source>1 pairing</source>
        <translation>1 Paarung</translation>
    </message>
    <message>
        <source>1 removed session can be brought back.</source>
        <translation>1 entfernte Session lässt sich zurückholen.</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 Session</translation>
    </message>
    <message>
        <source>1 was known already</source>
        <translation>1 war schon bekannt</translation>
    </message>
    <message>
        <source>10 % less drag</source>
        <translation>10 % weniger Widerstand</translation>
    </message>
    <message>
        <source>10 % more downforce</source>
        <translation>10 % mehr Abtrieb</translation>
    </message>
    <message>
        <source>10 kW more power</source>
        <translation>10 kW mehr Leistung</translation>
    </message>
    <message>
        <source>10 kg less mass</source>
        <translation>10 kg weniger Masse</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>; 95 % band</source>
        <translation>; 95-%-Band</translation>
    </message>
    <message>
        <source>; grip and downforce alone %1, because what either driver keeps in hand is not seen</source>
        <translation>; Grip und Abtrieb allein %1, denn was der jeweilige Fahrer in Reserve hält, ist nicht zu sehen</translation>
    </message>
    <message>
        <source>; how much of it is %1 cannot be told.</source>
        <translation>; wie viel davon %1 ist, ist nicht feststellbar.</translation>
    </message>
    <message>
        <source>; no video of %1</source>
        <translation>; kein Video von %1</translation>
    </message>
    <message>
        <source>; of it %1 %2.</source>
        <translation>; davon %1 %2.</translation>
    </message>
    <message>
        <source>; speeds and distances are as its wheels read them, all alike off by up to %1 %</source>
        <translation>; Geschwindigkeiten und Distanzen sind so, wie die Räder sie anzeigen, alle gleichermaßen um bis zu %1 % falsch</translation>
    </message>
    <message>
        <source>; the video does not show this moment</source>
        <translation>; das Video zeigt diesen Moment nicht</translation>
    </message>
    <message>
        <source>; what %1 is worth %2</source>
        <translation>; was %1 bringt, %2</translation>
    </message>
    <message>
        <source>? doubtful</source>
        <translation>? zweifelhaft</translation>
    </message>
    <message>
        <source>A %1 inside</source>
        <translation>A %1 innen</translation>
    </message>
    <message>
        <source>A %1 left</source>
        <translation>A %1 links</translation>
    </message>
    <message>
        <source>A %1 outside</source>
        <translation>A %1 außen</translation>
    </message>
    <message>
        <source>A %1 right</source>
        <translation>A %1 rechts</translation>
    </message>
    <message>
        <source>A &amp;quarter</source>
        <translation>Ein &amp;Viertel</translation>
    </message>
    <message>
        <source>A and B are level</source>
        <translation>A und B sind gleichauf</translation>
    </message>
    <message>
        <source>A car from all its sessions</source>
        <translation>Ein Auto aus allen seinen Sessions</translation>
    </message>
    <message>
        <source>A change of downforce alone leans on how grip and downforce share the cornering, which these laps hardly tell: its interval says how much.</source>
        <translation>Eine Änderung des Abtriebs allein hängt davon ab, wie sich Grip und Abtrieb die Kurvenfahrt teilen, was diese Runden kaum verraten: ihr Intervall sagt, wie sehr.</translation>
    </message>
    <message>
        <source>A few letters of a channel&apos;s name</source>
        <translation>Einige Buchstaben des Kanalnamens</translation>
    </message>
    <message>
        <source>A few letters of a command or a key</source>
        <translation>Einige Buchstaben eines Befehls oder eine Taste</translation>
    </message>
    <message>
        <source>A few letters of its name</source>
        <translation>Einige Buchstaben des Namens</translation>
    </message>
    <message>
        <source>A friend&apos;s book</source>
        <translation>Buch eines Freundes</translation>
    </message>
    <message>
        <source>A is quicker in %1 of lap pairs.</source>
        <translation>A ist in %1 der Rundenpaare schneller.</translation>
    </message>
    <message>
        <source>A mark for each flying lap, hollow where it is not clean; the line runs through the later half of the laps, with the 95 % interval of its end.</source>
        <translation>Ein Zeichen je fliegender Runde, hohl, wo sie nicht sauber ist; die Linie läuft durch die spätere Hälfte der Runden, mit dem 95-%-Intervall ihres Endes.</translation>
    </message>
    <message>
        <source>A m² of downforce &amp;costs, in m² of drag:</source>
        <translation>Ein m² Abtrieb &amp;kostet, in m² Widerstand:</translation>
    </message>
    <message>
        <source>A solid, B dashed</source>
        <translation>A durchgezogen, B gestrichelt</translation>
    </message>
    <message>
        <source>A wins time</source>
        <translation>A gewinnt Zeit</translation>
    </message>
    <message>
        <source>About Lapwright</source>
        <translation>Über Lapwright</translation>
    </message>
    <message>
        <source>Acceleration at full throttle and fitted curve: A solid, B dashed</source>
        <translation>Beschleunigung bei Vollgas, angepasst: A Linie, B Striche</translation>
    </message>
    <message>
        <source>Aero, downforce and drag together: %1 (%2, %3).</source>
        <translation>Aero, Abtrieb und Widerstand zusammen: %1 (%2, %3).</translation>
    </message>
    <message>
        <source>Air pressure at the track</source>
        <translation>Luftdruck an der Strecke</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>All %1…</source>
        <translation>Alle %1…</translation>
    </message>
    <message>
        <source>All cars</source>
        <translation>Alle Autos</translation>
    </message>
    <message>
        <source>All clean laps, quick is left; the ring is this lap</source>
        <translation>Alle sauberen Runden, schnell ist links; der Ring ist diese Runde</translation>
    </message>
    <message>
        <source>All segments</source>
        <translation>Alle Abschnitte</translation>
    </message>
    <message>
        <source>All segments on a &amp;second page</source>
        <translation>Alle Abschnitte auf &amp;zweiter Seite</translation>
    </message>
    <message>
        <source>All sessions of this %1 get the new name.</source>
        <translation>Alle Sessions mit diesem Namen (%1) bekommen den neuen.</translation>
    </message>
    <message>
        <source>All usual keys</source>
        <translation>Alle Standardtasten</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Meereshöhe</translation>
    </message>
    <message>
        <source>Another name for its driver, car or track in all sessions, or its date (F2)</source>
        <translation>Ein anderer Name für Fahrer, Auto oder Strecke in allen Sessions, oder das Datum (F2)</translation>
    </message>
    <message>
        <source>Any car</source>
        <translation>Alle Autos</translation>
    </message>
    <message>
        <source>Any driver</source>
        <translation>Alle Fahrer</translation>
    </message>
    <message>
        <source>Any track</source>
        <translation>Alle Strecken</translation>
    </message>
    <message>
        <source>Any tyre</source>
        <translation>Alle Reifen</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>Apr.</translation>
    </message>
    <message>
        <source>As it &amp;was</source>
        <translation>Wie &amp;gefahren</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>As the pro&amp;gram guesses</source>
        <translation>Wie das &amp;Programm vermutet</translation>
    </message>
    <message>
        <source>At most %1 laps can be seen behind A and B: take one of them away first.</source>
        <translation>Höchstens %1 Runden können hinter A und B zu sehen sein: erst eine davon wegnehmen.</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>Aug.</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>B wins time</source>
        <translation>B gewinnt Zeit</translation>
    </message>
    <message>
        <source>Back to the open sessions</source>
        <translation>Zurück zu den offenen Sessions</translation>
    </message>
    <message>
        <source>Best (lap)</source>
        <translation>Beste (Rd.)</translation>
    </message>
    <message>
        <source>Best lap</source>
        <translation>Bestzeit</translation>
    </message>
    <message>
        <source>Both cars are driven with more and with less of it…</source>
        <translation>Beide Autos werden mit mehr und mit weniger davon gefahren…</translation>
    </message>
    <message>
        <source>Both driven &amp;lines close up, and how far apart</source>
        <translation>Beide gefahrenen L&amp;inien aus der Nähe, und wie weit auseinander</translation>
    </message>
    <message>
        <source>Both laps are of the same car in one session: what differs is the driving and chance.</source>
        <translation>Beide Runden sind vom selben Auto in einer Session: Was sich unterscheidet, sind Fahrweise und Zufall.</translation>
    </message>
    <message>
        <source>Both let &amp;go at the chosen segment&apos;s start</source>
        <translation>Beide am Anfang des gewählten Abschnitts &amp;starten</translation>
    </message>
    <message>
        <source>Braking point</source>
        <translation>Bremspunkt</translation>
    </message>
    <message>
        <source>Brought back.</source>
        <translation>Zurückgeholt.</translation>
    </message>
    <message>
        <source>C&amp;hoose channels, and sets of them…</source>
        <translation>Kanäle und Kanalsätze wäh&amp;len…</translation>
    </message>
    <message>
        <source>Ca&amp;uses</source>
        <translation>&amp;Ursachen</translation>
    </message>
    <message>
        <source>Car</source>
        <translation>Auto</translation>
    </message>
    <message>
        <source>Car %1: %2, %3 a lap.

How will the setup sheet say it once it is driven? Write it as
wing angle=7 deg; splitter=46 mm, or leave it empty and name the session then.</source>
        <translation>Auto %1: %2, %3 pro Runde.

Wie wird es im Setup-Blatt stehen, wenn es gefahren ist? Zum Beispiel so:
wing angle=7 deg; splitter=46 mm. Oder leer lassen und dann die Session nennen.</translation>
    </message>
    <message>
        <source>Car: %1</source>
        <translation>Auto: %1</translation>
    </message>
    <message>
        <source>Causes, whole lap</source>
        <translation>Ursachen, ganze Runde</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Change front and rear together so that the balance stays, and feel it out before a quick lap.</source>
        <translation>Vorn und hinten zusammen ändern, damit die Balance bleibt, und sich vor einer schnellen Runde herantasten.</translation>
    </message>
    <message>
        <source>Change its names or date</source>
        <translation>Namen oder Datum ändern</translation>
    </message>
    <message>
        <source>Change the keys</source>
        <translation>Tasten ändern</translation>
    </message>
    <message>
        <source>Changed. Files that are open keep what they were read as until they are opened again.</source>
        <translation>Geändert. Offene Dateien bleiben so gelesen, wie sie es waren, bis sie wieder geöffnet werden.</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Channel one place &amp;down</source>
        <translation>Kanal einen Platz nach &amp;unten</translation>
    </message>
    <message>
        <source>Channel one place &amp;up</source>
        <translation>Kanal einen Platz nach &amp;oben</translation>
    </message>
    <message>
        <source>Channels; Space shows or hides one</source>
        <translation>Kanäle; die Leertaste zeigt oder verbirgt einen</translation>
    </message>
    <message>
        <source>Choose a lap</source>
        <translation>Runde wählen</translation>
    </message>
    <message>
        <source>Choose a lap of the session first: click it, or go there by Left and Right.</source>
        <translation>Erst eine Runde der Session wählen: anklicken oder mit Pfeil links und rechts hingehen.</translation>
    </message>
    <message>
        <source>Choose a row or a stretch</source>
        <translation>Eine Zeile oder ein Stück wählen</translation>
    </message>
    <message>
        <source>Choose a segment</source>
        <translation>Abschnitt wählen</translation>
    </message>
    <message>
        <source>Choose at least one baseline and one session with the change.</source>
        <translation>Mindestens eine Basis und eine Session mit der Änderung wählen.</translation>
    </message>
    <message>
        <source>Choose the video of %1</source>
        <translation>Video von %1 wählen</translation>
    </message>
    <message>
        <source>Chosen segment</source>
        <translation>Gewählter Abschnitt</translation>
    </message>
    <message>
        <source>Clean laps</source>
        <translation>Saubere Rd.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close &amp;without them</source>
        <translation>&amp;Ohne sie schließen</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Columns of %1</source>
        <translation>Spalten von %1</translation>
    </message>
    <message>
        <source>Columns of the file</source>
        <translation>Spalten der Datei</translation>
    </message>
    <message>
        <source>Columns of this session&apos;s &amp;file…</source>
        <translation>Spalten d&amp;er Datei dieser Session…</translation>
    </message>
    <message>
        <source>Columns…</source>
        <translation>Spalten…</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Befehle und ihre Tasten</translation>
    </message>
    <message>
        <source>Commands or keys with these letters</source>
        <translation>Befehle oder Tasten mit diesen Buchstaben</translation>
    </message>
    <message>
        <source>Compare A and B</source>
        <translation>A und B vergleichen</translation>
    </message>
    <message>
        <source>Compared</source>
        <translation>Verglichen</translation>
    </message>
    <message>
        <source>Compared last</source>
        <translation>Zuletzt verglichen</translation>
    </message>
    <message>
        <source>Compares two laps of two logger files, corner by corner, and says how sure it is.</source>
        <translation>Vergleicht zwei Runden aus zwei Logger-Dateien, Kurve für Kurve, und sagt, wie sicher das ist.</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Copy as a &amp;table</source>
        <translation>Als &amp;Tabelle kopieren</translation>
    </message>
    <message>
        <source>Copy as a p&amp;icture</source>
        <translation>Als Bil&amp;d kopieren</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Kurve %1</translation>
    </message>
    <message>
        <source>Corner of the stills</source>
        <translation>Kurve der Standbilder</translation>
    </message>
    <message>
        <source>Cornering acceleration against speed</source>
        <translation>Querbeschleunigung über der Geschwindigkeit</translation>
    </message>
    <message>
        <source>Cornering acceleration and fitted limit: A filled, B hollow; triangle: flat out</source>
        <translation>Querbeschleunigung, Grenze: A voll, B hohl; Dreieck: Vollgas</translation>
    </message>
    <message>
        <source>Cornering as driven (tyres, downforce and how much of them the drivers use): %1.</source>
        <translation>Kurventempo wie gefahren (Reifen, Abtrieb und wie viel davon die Fahrer nutzen): %1.</translation>
    </message>
    <message>
        <source>Cornering as driven, which is tyres, downforce and how much of them the drivers use, is probably worth %1 a lap to %2, most %3%4.</source>
        <translation>Das Kurventempo wie gefahren, also Reifen, Abtrieb und wie viel davon die Fahrer nutzen, bringt %2 wahrscheinlich %1 pro Runde, am meisten %3%4.</translation>
    </message>
    <message>
        <source>Cornering as driven, which is tyres, downforce and how much of them the drivers use, is worth %1 a lap to %2, most %3%4.</source>
        <translation>Das Kurventempo wie gefahren, also Reifen, Abtrieb und wie viel davon die Fahrer nutzen, bringt %2 %1 pro Runde, am meisten %3%4.</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>Corners are shown with their straights: J shows them apart, to be named.</source>
        <translation>Kurven werden mit ihren Geraden gezeigt: J zeigt sie getrennt, zum Benennen.</translation>
    </message>
    <message>
        <source>Corners, and straights that matter</source>
        <translation>Kurven und Geraden, auf die es ankommt</translation>
    </message>
    <message>
        <source>Correct what is wrong; the answer is kept for all files of this shape.</source>
        <translation>Falsches berichtigen; die Antwort wird für alle Dateien dieser Form behalten.</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Course of each segment</source>
        <translation>Verlauf jedes Abschnitts</translation>
    </message>
    <message>
        <source>Ctrl and wheel</source>
        <translation>Strg und Mausrad</translation>
    </message>
    <message>
        <source>Cursor</source>
        <translation>Cursor</translation>
    </message>
    <message>
        <source>Cursor &amp;back</source>
        <translation>Cursor &amp;zurück</translation>
    </message>
    <message>
        <source>Cursor &amp;far on</source>
        <translation>Cursor &amp;weit vor</translation>
    </message>
    <message>
        <source>Cursor &amp;on</source>
        <translation>Cursor v&amp;or</translation>
    </message>
    <message>
        <source>Cursor far b&amp;ack</source>
        <translation>Cursor weit z&amp;urück</translation>
    </message>
    <message>
        <source>Cursor to the &amp;end of the lap</source>
        <translation>Cursor zum &amp;Ende der Runde</translation>
    </message>
    <message>
        <source>Cursor to the &amp;start of the lap</source>
        <translation>Cursor zum &amp;Anfang der Runde</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Date in UTC, as 2026-05-16 10:20</source>
        <translation>Datum in UTC, wie 2026-05-16 10:20</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>Dez.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Deleted.</source>
        <translation>Gelöscht.</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Distance along the track</source>
        <translation>Distanz entlang der Strecke</translation>
    </message>
    <message>
        <source>Down, Up in the first row</source>
        <translation>Pfeil ab; Pfeil auf in der ersten Zeile</translation>
    </message>
    <message>
        <source>Downforce area if known (0.5 ±0.1), m²</source>
        <translation>Abtriebsfläche, falls bekannt (0,5 ±0,1), m²</translation>
    </message>
    <message>
        <source>Drag area if known (0.92 ±0.05), m²</source>
        <translation>Widerstandsfläche, falls bekannt (0,92 ±0,05), m²</translation>
    </message>
    <message>
        <source>Drag area that a square metre of downforce area costs</source>
        <translation>Widerstandsfläche, die ein Quadratmeter Abtriebsfläche kostet</translation>
    </message>
    <message>
        <source>Drive without the change, with it, and without it again: only so can the change be told from tyres that fade and a track that grips more. Sessions stand in the order in which they were driven.</source>
        <translation>Ohne die Änderung fahren, mit ihr und wieder ohne: nur so ist die Änderung von nachlassenden Reifen und einer griffiger werdenden Strecke zu unterscheiden. Die Sessions stehen in der Reihenfolge, in der sie gefahren wurden.</translation>
    </message>
    <message>
        <source>Driven</source>
        <translation>Gefahren</translation>
    </message>
    <message>
        <source>Driven differently</source>
        <translation>Anders gefahren</translation>
    </message>
    <message>
        <source>Driven last</source>
        <translation>Zuletzt gefahren</translation>
    </message>
    <message>
        <source>Driver</source>
        <translation>Fahrer</translation>
    </message>
    <message>
        <source>Driver and rest</source>
        <translation>Fahrer samt Rest</translation>
    </message>
    <message>
        <source>Drivers, %1</source>
        <translation>Fahrer, %1</translation>
    </message>
    <message>
        <source>Drivers, whole lap</source>
        <translation>Fahrer, ganze Runde</translation>
    </message>
    <message>
        <source>Driving acceleration against speed</source>
        <translation>Antriebsbeschleunigung über der Geschwindigkeit</translation>
    </message>
    <message>
        <source>Drop logger files anywhere in this window, or open them. Files are read and never changed.</source>
        <translation>Logger-Dateien irgendwo in dieses Fenster ziehen oder öffnen. Dateien werden gelesen und nie verändert.</translation>
    </message>
    <message>
        <source>Drop the logger files of two drivers here</source>
        <translation>Logger-Dateien zweier Fahrer hierher ziehen</translation>
    </message>
    <message>
        <source>Each number is seconds, with the letter and in the colour of whoever it favours; a row adds up to what was measured. Filled: surely so. Dotted: may be chance. Of it: a part of the column before, bare where that is known better.</source>
        <translation>Jede Zahl in Sekunden, mit dem Buchstaben und in der Farbe dessen, dem sie nützt; die Summe einer Zeile ist das Gemessene. Gefüllt: sicher. Gepunktet: kann Zufall sein. Davon: ein Teil der Spalte davor, ohne Füllung, wo jene genauer bekannt ist.</translation>
    </message>
    <message>
        <source>Engine used: A %1, B %2</source>
        <translation>Motor genutzt: A %1, B %2</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Estimates from recorded data; intervals are 95 %. Motor sport is dangerous: the event&apos;s rules, scrutineering and licensed practice come first, and nothing here asks anyone to drive faster than they judge safe.</source>
        <translation>Schätzungen aus aufgezeichneten Daten; Intervalle zu 95 %. Motorsport ist gefährlich: Reglement der Veranstaltung, technische Abnahme und das Fahren mit Lizenz und Genehmigung gehen vor, und nichts hier fordert jemanden auf, schneller zu fahren, als er selbst für sicher hält.</translation>
    </message>
    <message>
        <source>Every segment</source>
        <translation>Jeder Abschnitt</translation>
    </message>
    <message>
        <source>Every session of %1 is read and put together: %2 %%3</source>
        <translation>Jede Session von %1 wird gelesen und zusammengeführt: %2 %%3</translation>
    </message>
    <message>
        <source>Exit</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <source>Fastest %1 against %2</source>
        <translation>Maximum %1 gegen %2</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>Feb.</translation>
    </message>
    <message>
        <source>Figures of a car</source>
        <translation>Kennwerte eines Autos</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Finding %1: show it on the Compare page</source>
        <translation>Befund %1: auf der Seite „Vergleich“ zeigen</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>First cells</source>
        <translation>Erste Zellen</translation>
    </message>
    <message>
        <source>First day, as 2026-05-16</source>
        <translation>Erster Tag, wie 2026-05-16</translation>
    </message>
    <message>
        <source>First rows</source>
        <translation>Erste Zeilen</translation>
    </message>
    <message>
        <source>Fold a panel, or open it</source>
        <translation>Feld ein- oder ausklappen</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later (GPL-3.0-or-later); it comes without any warranty.</source>
        <translation>Freie Software unter der GNU General Public License, Version 3 oder später (GPL-3.0-or-later); ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>From lap to lap, s</source>
        <translation>Von Runde zu Runde, s</translation>
    </message>
    <message>
        <source>From the words to the list, and back</source>
        <translation>Von den Suchwörtern zur Liste und zurück</translation>
    </message>
    <message>
        <source>Front spring rate at the wheel, N/mm</source>
        <translation>Federrate vorn am Rad, N/mm</translation>
    </message>
    <message>
        <source>Full t&amp;hrottle again</source>
        <translation>Wieder V&amp;ollgas</translation>
    </message>
    <message>
        <source>Full throttle</source>
        <translation>Vollgas</translation>
    </message>
    <message>
        <source>Further channels</source>
        <translation>Weitere Kanäle</translation>
    </message>
    <message>
        <source>Further channels: &amp;back</source>
        <translation>Weitere Kanäle: &amp;zurück</translation>
    </message>
    <message>
        <source>Further channels: &amp;on</source>
        <translation>Weitere Kanäle: &amp;vor</translation>
    </message>
    <message>
        <source>Further items of %1</source>
        <translation>Weitere Angaben zu %1</translation>
    </message>
    <message>
        <source>Further items,
one a line: name: value</source>
        <translation>Weitere Angaben,
je Zeile „Name: Wert“</translation>
    </message>
    <message>
        <source>Gap with 95 % band, s: above zero A is ahead</source>
        <translation>Abstand mit 95-%-Band, s: über null liegt A vorn</translation>
    </message>
    <message>
        <source>Gap, s: above zero A is ahead</source>
        <translation>Abstand, s: über null liegt A vorn</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <source>Getting quicker by %1.</source>
        <translation>Wird um %1 schneller.</translation>
    </message>
    <message>
        <source>Getting slower by %1.</source>
        <translation>Wird um %1 langsamer.</translation>
    </message>
    <message>
        <source>Give it this key</source>
        <translation>Taste zuweisen</translation>
    </message>
    <message>
        <source>Go on to further channels; where all is in view, show less or more</source>
        <translation>Zu weiteren Kanälen gehen; wo alle zu sehen sind, weniger oder mehr zeigen</translation>
    </message>
    <message>
        <source>Go to a corner, session, lap or command</source>
        <translation>Gehe zu Kurve, Session, Runde oder Befehl</translation>
    </message>
    <message>
        <source>Go to another session</source>
        <translation>Zu einer anderen Session gehen</translation>
    </message>
    <message>
        <source>Go to…</source>
        <translation>Gehe zu…</translation>
    </message>
    <message>
        <source>Grip and downforce that the laps allow: A solid, B dashed</source>
        <translation>Möglicher Grip und Abtrieb: A Linie, B Striche</translation>
    </message>
    <message>
        <source>Grip as used: A %1, B %2.</source>
        <translation>Genutzter Grip: A %1, B %2.</translation>
    </message>
    <message>
        <source>Guessed</source>
        <translation>Vermutet</translation>
    </message>
    <message>
        <source>HTML files (*.html *.htm)</source>
        <translation>HTML-Dateien (*.html *.htm)</translation>
    </message>
    <message>
        <source>How far each clean lap is behind the fastest of the open sessions, with the 95 % margin of its time; a click on &quot;lap&quot; or &quot;time&quot; sorts</source>
        <translation>Wie weit jede saubere Runde hinter der schnellsten der offenen Sessions liegt, mit der 95-%-Spanne ihrer Zeit; ein Klick auf „Runde“ oder „Zeit“ sortiert</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>How much &amp;wing…</source>
        <translation>Wie viel &amp;Flügel…</translation>
    </message>
    <message>
        <source>How much wing</source>
        <translation>Wie viel Flügel</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>How sure (one standard deviation)</source>
        <translation>Wie sicher (eine Standardabweichung)</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Import recipe</source>
        <translation>Importrezept</translation>
    </message>
    <message>
        <source>Import recipes</source>
        <translation>Importrezepte</translation>
    </message>
    <message>
        <source>Import recipes (*.recipe.json *.json)</source>
        <translation>Importrezepte (*.recipe.json *.json)</translation>
    </message>
    <message>
        <source>Import recipes (*.recipe.json *.json);;All files (*)</source>
        <translation>Importrezepte (*.recipe.json *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>In full…</source>
        <translation>Ganz…</translation>
    </message>
    <message>
        <source>Is this the trial that you mean? %1. Press the button again to reckon it all the same.</source>
        <translation>Ist das der gemeinte Versuch? %1. Den Knopf noch einmal drücken, um trotzdem zu rechnen.</translation>
    </message>
    <message>
        <source>It is &amp;right</source>
        <translation>Stimmt s&amp;o</translation>
    </message>
    <message>
        <source>It is spread over the lap: no single segment stands out.</source>
        <translation>Es verteilt sich über die Runde: kein Abschnitt sticht heraus.</translation>
    </message>
    <message>
        <source>It sends nothing anywhere and changes no source file.</source>
        <translation>Es sendet nichts irgendwohin und verändert keine Quelldatei.</translation>
    </message>
    <message>
        <source>Its usual key</source>
        <translation>Standardtaste</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>Jan.</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Festhalten</translation>
    </message>
    <message>
        <source>Keep a prediction</source>
        <translation>Eine Vorhersage festhalten</translation>
    </message>
    <message>
        <source>Keep for &amp;A…</source>
        <translation>Für &amp;A festhalten…</translation>
    </message>
    <message>
        <source>Keep for &amp;B…</source>
        <translation>Für &amp;B festhalten…</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep this recipe</source>
        <translation>Rezept behalten</translation>
    </message>
    <message>
        <source>Keep what is predicted for the quickest in the book, to be held against what happens</source>
        <translation>Was für den schnellsten Stand vorhergesagt ist, im Buch festhalten, um es an dem zu messen, was geschieht</translation>
    </message>
    <message>
        <source>Keep what is predicted in the book, to be held against what happens</source>
        <translation>Das Vorhergesagte im Buch festhalten, um es an dem zu messen, was geschieht</translation>
    </message>
    <message>
        <source>Keep…</source>
        <translation>Festhalten…</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Festgehalten</translation>
    </message>
    <message>
        <source>Kept &amp;pairings…</source>
        <translation>Behaltene &amp;Paarungen…</translation>
    </message>
    <message>
        <source>Kept as rec&amp;ipe</source>
        <translation>Als Re&amp;zept</translation>
    </message>
    <message>
        <source>Kept pairings</source>
        <translation>Behaltene Paarungen</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Taste</translation>
    </message>
    <message>
        <source>Keys and mouse</source>
        <translation>Tasten und Maus</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Lap %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>Lap %1 counts, because</source>
        <translation>Runde %1 gewertet, Grund:</translation>
    </message>
    <message>
        <source>Lap %1 is set aside, because</source>
        <translation>Runde %1 aussortiert, Grund:</translation>
    </message>
    <message>
        <source>Lap A</source>
        <translation>Runde A</translation>
    </message>
    <message>
        <source>Lap B</source>
        <translation>Runde B</translation>
    </message>
    <message>
        <source>Lap time over more or less downforce</source>
        <translation>Rundenzeit über mehr oder weniger Abtrieb</translation>
    </message>
    <message>
        <source>Lap times stay level.</source>
        <translation>Die Rundenzeiten bleiben gleich.</translation>
    </message>
    <message>
        <source>Laps by time, the &amp;fastest first</source>
        <translation>Runden nach &amp;Zeit, die schnellste zuerst</translation>
    </message>
    <message>
        <source>Laps of a track or figures of a car</source>
        <translation>Runden einer Strecke oder Kennwerte eines Autos</translation>
    </message>
    <message>
        <source>Laps on a track</source>
        <translation>Runden auf einer Strecke</translation>
    </message>
    <message>
        <source>Laps on the Sessions page</source>
        <translation>Runden auf der Seite „Sessions“</translation>
    </message>
    <message>
        <source>Lapwright %1</source>
        <translation>Lapwright %1</translation>
    </message>
    <message>
        <source>Last day, as 2026-05-16</source>
        <translation>Letzter Tag, wie 2026-05-16</translation>
    </message>
    <message>
        <source>Lateral, from motion</source>
        <translation>Quer, aus der Bewegung</translation>
    </message>
    <message>
        <source>Learnin&amp;g: laps and corners over the session…</source>
        <translation>&amp;Lernkurve: Runden und Kurven über die Session…</translation>
    </message>
    <message>
        <source>Learning has stopped in %1.</source>
        <translation>Kein Fortschritt mehr in %1.</translation>
    </message>
    <message>
        <source>Learning: %1</source>
        <translation>Lernkurve: %1</translation>
    </message>
    <message>
        <source>Leave them closed</source>
        <translation>Geschlossen lassen</translation>
    </message>
    <message>
        <source>Leaves it at %1 against %2</source>
        <translation>Ausgang mit %1 gegen %2</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Weggelassen</translation>
    </message>
    <message>
        <source>Left, Right, Tab</source>
        <translation>Pfeil links, Pfeil rechts, Tab</translation>
    </message>
    <message>
        <source>Less, more, all of the season</source>
        <translation>Weniger, mehr, ganze Saison</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Vom Gas</translation>
    </message>
    <message>
        <source>Line and corners of %1 come from %2.</source>
        <translation>Messlinie und Kurven von %1 kommen aus %2.</translation>
    </message>
    <message>
        <source>Line%1: above zero A is further left</source>
        <translation>Linie%1: über null liegt A weiter links</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Linien</translation>
    </message>
    <message>
        <source>Longitudinal, from motion</source>
        <translation>Längs, aus der Bewegung</translation>
    </message>
    <message>
        <source>Loo&amp;k</source>
        <translation>Ers&amp;cheinungsbild</translation>
    </message>
    <message>
        <source>Made from %1 (A) and %2 (B), grid %3 m. Lapwright %4.</source>
        <translation>Aus %1 (A) und %2 (B), Raster %3 m. Lapwright %4.</translation>
    </message>
    <message>
        <source>Make a panel taller or lower</source>
        <translation>Feld höher oder niedriger machen</translation>
    </message>
    <message>
        <source>Make this lap &amp;A</source>
        <translation>Diese Runde wird &amp;A</translation>
    </message>
    <message>
        <source>Make this lap &amp;B</source>
        <translation>Diese Runde wird &amp;B</translation>
    </message>
    <message>
        <source>Map of the track, coloured by who wins time</source>
        <translation>Karte der Strecke, gefärbt danach, wer Zeit gewinnt</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>März</translation>
    </message>
    <message>
        <source>Mass with driver and fuel</source>
        <translation>Masse mit Fahrer und Kraftstoff</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>Median</translation>
    </message>
    <message>
        <source>Mended</source>
        <translation>Repariert</translation>
    </message>
    <message>
        <source>Most in %1.</source>
        <translation>Am meisten: %1.</translation>
    </message>
    <message>
        <source>Most is still to be won in %1.</source>
        <translation>Am meisten ist noch zu holen in %1.</translation>
    </message>
    <message>
        <source>Most of it is %1: %2 gains %3 there</source>
        <translation>Das meiste davon ist %1: %2 gewinnt dort %3</translation>
    </message>
    <message>
        <source>Most of it is probably %1: %2 gains %3 there</source>
        <translation>Das meiste davon ist wahrscheinlich %1: %2 gewinnt dort %3</translation>
    </message>
    <message>
        <source>Motor sport is dangerous. The event&apos;s rules, scrutineering and licensed practice come first, and nothing here is an instruction to drive faster than you judge safe.</source>
        <translation>Motorsport ist gefährlich. Das Reglement der Veranstaltung, die technische Abnahme und das Fahren mit Lizenz und Genehmigung gehen vor, und nichts hier fordert dazu auf, schneller zu fahren, als man selbst für sicher hält.</translation>
    </message>
    <message>
        <source>Mouse on the plots</source>
        <translation>Maus auf den Diagrammen</translation>
    </message>
    <message>
        <source>Move a control to see the predicted lap.</source>
        <translation>Einen Regler bewegen, um die vorhergesagte Runde zu sehen.</translation>
    </message>
    <message>
        <source>Move a further channel</source>
        <translation>Weiteren Kanal verschieben</translation>
    </message>
    <message>
        <source>Move an end, or the timing line</source>
        <translation>Ein Ende oder die Messlinie verschieben</translation>
    </message>
    <message>
        <source>Multiplied by: a number that is not 0.</source>
        <translation>Multipliziert mit: eine Zahl, die nicht 0 ist.</translation>
    </message>
    <message>
        <source>Name of a channel</source>
        <translation>Name eines Kanals</translation>
    </message>
    <message>
        <source>Name of a corner, session, lap or command</source>
        <translation>Name von Kurve, Session, Runde oder Befehl</translation>
    </message>
    <message>
        <source>Names and date</source>
        <translation>Namen und Datum</translation>
    </message>
    <message>
        <source>Names, date…</source>
        <translation>Namen, Datum…</translation>
    </message>
    <message>
        <source>Ne&amp;xt question</source>
        <translation>Nä&amp;chste Frage</translation>
    </message>
    <message>
        <source>New files, not opened yet</source>
        <translation>Neue Dateien, noch nicht geöffnet</translation>
    </message>
    <message>
        <source>New files: %1</source>
        <translation>Neue Dateien: %1</translation>
    </message>
    <message>
        <source>New key of the chosen command</source>
        <translation>Neue Taste des gewählten Befehls</translation>
    </message>
    <message>
        <source>New name or date</source>
        <translation>Neuer Name oder neues Datum</translation>
    </message>
    <message>
        <source>Nex&amp;t units</source>
        <translation>Nächs&amp;te Einheiten</translation>
    </message>
    <message>
        <source>No key</source>
        <translation>Keine Taste</translation>
    </message>
    <message>
        <source>No pairing yet: compare two laps, and what came out is kept here.</source>
        <translation>Noch keine Paarung: zwei Runden vergleichen, und das Ergebnis wird hier behalten.</translation>
    </message>
    <message>
        <source>No prediction has been judged yet.</source>
        <translation>Noch wurde keine Vorhersage überprüft.</translation>
    </message>
    <message>
        <source>No prediction yet: keep what What if or How much wing predicts, and once it was driven it is held against what happened here.</source>
        <translation>Noch keine Vorhersage: festhalten, was „Was wäre, wenn“ oder „Wie viel Flügel“ vorhersagt; sobald es gefahren ist, wird es hier an dem gemessen, was geschah.</translation>
    </message>
    <message>
        <source>No segment chosen</source>
        <translation>Kein Abschnitt gewählt</translation>
    </message>
    <message>
        <source>No session has all of these words.</source>
        <translation>Keine Session enthält alle diese Wörter.</translation>
    </message>
    <message>
        <source>No session is all of this.</source>
        <translation>Keine Session erfüllt all dies.</translation>
    </message>
    <message>
        <source>No session of the book says its car; the name comes with the logger&apos;s file.</source>
        <translation>Keine Session des Buchs nennt ihr Auto; der Name kommt mit der Logger-Datei.</translation>
    </message>
    <message>
        <source>No session of the book says its track. Open one together with its track file: its laps are then seen here through the season.</source>
        <translation>Keine Session des Buchs nennt ihre Strecke. Eine zusammen mit ihrer Streckendatei öffnen: ihre Runden sind dann hier durch die Saison zu sehen.</translation>
    </message>
    <message>
        <source>No session on %1 is in the book.</source>
        <translation>Keine Session auf %1 ist im Buch.</translation>
    </message>
    <message>
        <source>No session was taken out of the book.</source>
        <translation>Keine Session wurde aus dem Buch genommen.</translation>
    </message>
    <message>
        <source>No video is in step with these laps: choose one on the Compare page (Y).</source>
        <translation>Kein Video ist mit diesen Runden synchron: eines auf der Seite „Vergleich“ wählen (Y).</translation>
    </message>
    <message>
        <source>No video of %1: choose one, and it is put in step by itself</source>
        <translation>Kein Video von %1: eines wählen, es wird von selbst synchronisiert</translation>
    </message>
    <message>
        <source>Not in the book yet</source>
        <translation>Noch nicht im Buch</translation>
    </message>
    <message>
        <source>Not in the book yet: %1. It is tried again at the next edit, and by a click on the sign above.</source>
        <translation>Noch nicht im Buch: %1. Es wird bei der nächsten Änderung wieder versucht und bei einem Klick auf das Zeichen oben.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note of A</source>
        <translation>Notiz von A</translation>
    </message>
    <message>
        <source>Note of A on %1</source>
        <translation>Notiz von A zu %1</translation>
    </message>
    <message>
        <source>Note of B</source>
        <translation>Notiz von B</translation>
    </message>
    <message>
        <source>Note of B on %1</source>
        <translation>Notiz von B zu %1</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>Note on the segment as &amp;A drove it</source>
        <translation>Notiz zum Abschnitt, wie &amp;A ihn fuhr</translation>
    </message>
    <message>
        <source>Note on the segment as &amp;B drove it</source>
        <translation>Notiz zum Abschnitt, wie &amp;B ihn fuhr</translation>
    </message>
    <message>
        <source>Note on this &amp;lap</source>
        <translation>Notiz zu dieser &amp;Runde</translation>
    </message>
    <message>
        <source>Note on this &amp;session</source>
        <translation>Notiz zu dieser &amp;Session</translation>
    </message>
    <message>
        <source>Note on this lap</source>
        <translation>Notiz zu dieser Runde</translation>
    </message>
    <message>
        <source>Note on this session</source>
        <translation>Notiz zu dieser Session</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Notes for the sheet</source>
        <translation>Notizen für das Blatt</translation>
    </message>
    <message>
        <source>Nothing is fitted to the laps of %1 yet: compare one of its sessions and look at the Causes page; what the data say of the car is then kept here.</source>
        <translation>Von %1 ist noch nichts geschätzt: eine Session dieses Autos vergleichen und die Seite „Ursachen“ ansehen; was die Daten über das Auto sagen, bleibt dann hier.</translation>
    </message>
    <message>
        <source>Nothing is predicted yet: move a control of What if on the Causes page, then keep it.</source>
        <translation>Noch ist nichts vorhergesagt: auf der Seite der Ursachen einen Regler von „Was wäre, wenn“ bewegen, dann festhalten.</translation>
    </message>
    <message>
        <source>Nothing was guessed, left out or mended.</source>
        <translation>Nichts wurde vermutet, weggelassen oder repariert.</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>Nov.</translation>
    </message>
    <message>
        <source>Now less the best; &quot;or chance&quot; where the best of as many equal laps may lie as low</source>
        <translation>Jetzt minus Beste; „oder Zufall“, wo die beste von ebenso vielen gleichen Runden so tief liegen kann</translation>
    </message>
    <message>
        <source>Now, s</source>
        <translation>Jetzt, s</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>Okt.</translation>
    </message>
    <message>
        <source>Of the car it changed: %1.</source>
        <translation>Am Auto änderte sie: %1.</translation>
    </message>
    <message>
        <source>Offset to the left of the reference line</source>
        <translation>Versatz nach links von der Referenzlinie</translation>
    </message>
    <message>
        <source>On average %1 s, 95 % between %2 and %3.</source>
        <translation>Im Mittel %1 s, 95 % zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>On the &amp;track of:</source>
        <translation>Auf der &amp;Strecke von:</translation>
    </message>
    <message>
        <source>Once it was driven, the book&apos;s predictions say what happened (%1).</source>
        <translation>Sobald es gefahren ist, sagen die Vorhersagen des Buchs, was geschah (%1).</translation>
    </message>
    <message>
        <source>One frame &amp;on</source>
        <translation>Ein Bild &amp;weiter</translation>
    </message>
    <message>
        <source>One frame bac&amp;k</source>
        <translation>Ein Bild &amp;zurück</translation>
    </message>
    <message>
        <source>One pairing. Return opens it with both its sessions, Delete takes it out.</source>
        <translation>Eine Paarung. Die Eingabetaste öffnet sie mit ihren beiden Sessions, Entf nimmt sie heraus.</translation>
    </message>
    <message>
        <source>One session was timed at another line of the track than the rest, so that lap times differ a little without a reason: %2.</source>
        <translation>Eine Session wurde an einer anderen Linie der Strecke gestoppt als die übrigen, sodass sich Rundenzeiten ohne Grund ein wenig unterscheiden: %2.</translation>
    </message>
    <message>
        <source>Only a flying lap can be set aside or counted.</source>
        <translation>Nur eine fliegende Runde kann aussortiert oder gewertet werden.</translation>
    </message>
    <message>
        <source>Only with a clear track behind and where the organiser allows it.</source>
        <translation>Nur mit freier Strecke dahinter und wo der Veranstalter es erlaubt.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open a setup sheet</source>
        <translation>Setup-Blatt öffnen</translation>
    </message>
    <message>
        <source>Open again what was open &amp;when the program stopped</source>
        <translation>&amp;Wieder öffnen, was beim Abbruch des Programms offen war</translation>
    </message>
    <message>
        <source>Open files…</source>
        <translation>Dateien öffnen…</translation>
    </message>
    <message>
        <source>Open logger files</source>
        <translation>Logger-Dateien öffnen</translation>
    </message>
    <message>
        <source>Open sessions</source>
        <translation>Offene Sessions</translation>
    </message>
    <message>
        <source>Open them again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Open what is chosen</source>
        <translation>Gewähltes öffnen</translation>
    </message>
    <message>
        <source>Opened &amp;lately</source>
        <translation>Zuletzt &amp;geöffnet</translation>
    </message>
    <message>
        <source>Over %1: %2. %3. %4 Segment by segment, in seconds: %5.</source>
        <translation>Über %1: %2. %3. %4 Abschnitt für Abschnitt, in Sekunden: %5.</translation>
    </message>
    <message>
        <source>Over all laps, where the 95 % interval tells it</source>
        <translation>Über alle Runden, soweit das 95-%-Intervall es erkennen lässt</translation>
    </message>
    <message>
        <source>P&amp;rint the debrief sheet…</source>
        <translation>Debrief-Blatt d&amp;rucken…</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Pa&amp;ce</source>
        <translation>&amp;Tempo</translation>
    </message>
    <message>
        <source>Pairings that the book keeps</source>
        <translation>Paarungen, die das Buch behält</translation>
    </message>
    <message>
        <source>Pan</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Pan &amp;back</source>
        <translation>&amp;Zurück verschieben</translation>
    </message>
    <message>
        <source>Pan &amp;on</source>
        <translation>V&amp;or verschieben</translation>
    </message>
    <message>
        <source>Panel &amp;lower</source>
        <translation>Feld n&amp;iedriger</translation>
    </message>
    <message>
        <source>Panel &amp;taller</source>
        <translation>Feld &amp;höher</translation>
    </message>
    <message>
        <source>Part in the trial</source>
        <translation>Rolle im Versuch</translation>
    </message>
    <message>
        <source>Part of %1</source>
        <translation>Rolle von %1</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png)</source>
        <translation>Bilder (*.svg *.png)</translation>
    </message>
    <message>
        <source>Play the chosen segment again and again</source>
        <translation>Gewählten Abschnitt immer wieder abspielen</translation>
    </message>
    <message>
        <source>Plots over distance</source>
        <translation>Diagramme über der Distanz</translation>
    </message>
    <message>
        <source>Power at the wheels if known</source>
        <translation>Leistung am Rad, falls bekannt</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>Vorhergesagt</translation>
    </message>
    <message>
        <source>Predictions</source>
        <translation>Vorhersagen</translation>
    </message>
    <message>
        <source>Predictions that the book keeps</source>
        <translation>Vorhersagen, die das Buch festhält</translation>
    </message>
    <message>
        <source>Predictions, and how often the&amp;y held…</source>
        <translation>&amp;Vorhersagen, und wie oft sie zutrafen…</translation>
    </message>
    <message>
        <source>Preparing the print…</source>
        <translation>Druck wird vorbereitet…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Put the timing &amp;line at the cursor</source>
        <translation>&amp;Messlinie an den Cursor setzen</translation>
    </message>
    <message>
        <source>Quicker by %1 over all laps, but no more in the later half of them.</source>
        <translation>Über alle Runden um %1 schneller, in deren späterer Hälfte aber nicht mehr.</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Rate</translation>
    </message>
    <message>
        <source>Rate, range and gaps of every channel; what was guessed, left out and mended</source>
        <translation>Rate, Bereich und Lücken jedes Kanals; was vermutet, weggelassen und repariert wurde</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Gelesen nach</translation>
    </message>
    <message>
        <source>Reading the whole book</source>
        <translation>Das ganze Buch wird gelesen</translation>
    </message>
    <message>
        <source>Rear spring rate at the wheel, N/mm</source>
        <translation>Federrate hinten am Rad, N/mm</translation>
    </message>
    <message>
        <source>Remember this set</source>
        <translation>Satz merken</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Removed sessions</source>
        <translation>Entfernte Sessions</translation>
    </message>
    <message>
        <source>Remove…</source>
        <translation>Entfernen…</translation>
    </message>
    <message>
        <source>Renamed.</source>
        <translation>Umbenannt.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Return keeps the note, Shift+Return begins a new line, Escape leaves it as it was</source>
        <translation>Eingabetaste behält die Notiz, Umschalt+Eingabetaste beginnt eine neue Zeile, Esc lässt sie, wie sie war</translation>
    </message>
    <message>
        <source>Return names the session that was driven with one, Delete takes it back.</source>
        <translation>Die Eingabetaste nennt die Session, die damit gefahren wurde, Entf nimmt sie zurück.</translation>
    </message>
    <message>
        <source>Return opens what is chosen; Shift and the arrows choose several</source>
        <translation>Eingabetaste öffnet das Gewählte; Umschalt und die Pfeiltasten wählen mehrere</translation>
    </message>
    <message>
        <source>Return, double-click</source>
        <translation>Eingabetaste, Doppelklick</translation>
    </message>
    <message>
        <source>Rows per &amp;second</source>
        <translation>Zeilen pro &amp;Sekunde</translation>
    </message>
    <message>
        <source>Rows per second: a number from 0.1 to 10,000, or nothing.</source>
        <translation>Zeilen pro Sekunde: eine Zahl von 0,1 bis 10000 oder nichts.</translation>
    </message>
    <message>
        <source>Run home</source>
        <translation>Zielgerade</translation>
    </message>
    <message>
        <source>S&amp;lowest point</source>
        <translation>Langsamster P&amp;unkt</translation>
    </message>
    <message>
        <source>S&amp;plit the segment at the cursor</source>
        <translation>Abschnitt am Cursor &amp;teilen</translation>
    </message>
    <message>
        <source>Sa&amp;ve the track as a file…</source>
        <translation>&amp;Strecke als Datei speichern…</translation>
    </message>
    <message>
        <source>Save as HTML…</source>
        <translation>Als HTML speichern…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Save the &amp;table as CSV…</source>
        <translation>Tabelle als &amp;CSV speichern…</translation>
    </message>
    <message>
        <source>Save the debrief sheet</source>
        <translation>Debrief-Blatt speichern</translation>
    </message>
    <message>
        <source>Save the debrief sheet as &amp;HTML…</source>
        <translation>Debrief-Blatt als HT&amp;ML speichern…</translation>
    </message>
    <message>
        <source>Save the debrief sheet as &amp;PDF…</source>
        <translation>Debrief-Blatt als &amp;PDF speichern…</translation>
    </message>
    <message>
        <source>Save the p&amp;lots as SVG or PNG…</source>
        <translation>&amp;Diagramme als SVG oder PNG speichern…</translation>
    </message>
    <message>
        <source>Save the plots as SVG or PNG</source>
        <translation>Diagramme als SVG oder PNG speichern</translation>
    </message>
    <message>
        <source>Save the table: %1</source>
        <translation>Tabelle speichern: %1</translation>
    </message>
    <message>
        <source>Save the track</source>
        <translation>Strecke speichern</translation>
    </message>
    <message>
        <source>Saving what can be read</source>
        <translation>Lesbares wird gerettet</translation>
    </message>
    <message>
        <source>Se&amp;t the lap aside, count it, or leave it to the program</source>
        <translation>&amp;Runde aussortieren, werten oder dem Programm überlassen</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Seconds of each segment by cause</source>
        <translation>Sekunden jedes Abschnitts nach Ursache</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Seen from above, north up: a lap of %1 m with %2 corners: %3</source>
        <translation>Von oben gesehen, Norden oben: eine Runde von %1 m mit %2 Kurven: %3</translation>
    </message>
    <message>
        <source>Segment</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Segment times of all clean laps</source>
        <translation>Abschnittszeiten aller sauberen Runden</translation>
    </message>
    <message>
        <source>Segments</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>Sep.</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Session</translation>
    </message>
    <message>
        <source>Sessions of the &amp;book…</source>
        <translation>Sessions des B&amp;uchs…</translation>
    </message>
    <message>
        <source>Sessions of the book</source>
        <translation>Sessions des Buchs</translation>
    </message>
    <message>
        <source>Sessions of the season</source>
        <translation>Sessions der Saison</translation>
    </message>
    <message>
        <source>Sessions of the trial</source>
        <translation>Sessions des Versuchs</translation>
    </message>
    <message>
        <source>Sessions through time</source>
        <translation>Sessions im Lauf der Zeit</translation>
    </message>
    <message>
        <source>Set of channels</source>
        <translation>Kanalsatz</translation>
    </message>
    <message>
        <source>Set&amp;up of both cars…</source>
        <translation>&amp;Setup beider Autos…</translation>
    </message>
    <message>
        <source>Setup of A: %1. Setup of B: %2.</source>
        <translation>Setup von A: %1. Setup von B: %2.</translation>
    </message>
    <message>
        <source>Setup of both cars</source>
        <translation>Setup beider Autos</translation>
    </message>
    <message>
        <source>Setup sheet then</source>
        <translation>Setup-Blatt dann</translation>
    </message>
    <message>
        <source>Setup sheets (*.setup.json *.json);;All files (*)</source>
        <translation>Setup-Blätter (*.setup.json *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Setup since the one before</source>
        <translation>Setup seit der vorigen</translation>
    </message>
    <message>
        <source>Setup tri&amp;al…</source>
        <translation>Set&amp;up-Versuch…</translation>
    </message>
    <message>
        <source>Setup trial</source>
        <translation>Setup-Versuch</translation>
    </message>
    <message>
        <source>Setup trial…</source>
        <translation>Setup-Versuch…</translation>
    </message>
    <message>
        <source>Setup, A · B</source>
        <translation>Setup, A · B</translation>
    </message>
    <message>
        <source>Setup…</source>
        <translation>Setup…</translation>
    </message>
    <message>
        <source>Show &amp;less of the lap</source>
        <translation>&amp;Weniger von der Runde zeigen</translation>
    </message>
    <message>
        <source>Show &amp;more of the lap</source>
        <translation>&amp;Mehr von der Runde zeigen</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <source>Show less or more, at the pointer</source>
        <translation>Am Mauszeiger weniger oder mehr zeigen</translation>
    </message>
    <message>
        <source>Show the &amp;whole lap</source>
        <translation>Ganze &amp;Runde zeigen</translation>
    </message>
    <message>
        <source>Show the chosen segment close &amp;up</source>
        <translation>Gewählten &amp;Abschnitt aus der Nähe zeigen</translation>
    </message>
    <message>
        <source>Show the first three</source>
        <translation>Die ersten drei zeigen</translation>
    </message>
    <message>
        <source>Show the folder of the &amp;log…</source>
        <translation>Ordner des &amp;Protokolls zeigen…</translation>
    </message>
    <message>
        <source>Show the whole page</source>
        <translation>Ganze Seite zeigen</translation>
    </message>
    <message>
        <source>Show this lap be&amp;hind A and B, or no more</source>
        <translation>Diese Runde &amp;hinter A und B zeigen oder nicht mehr</translation>
    </message>
    <message>
        <source>Show this place on the Compare page</source>
        <translation>Diese Stelle auf der Seite „Vergleich“ zeigen</translation>
    </message>
    <message>
        <source>Simulated: the driver uses the tyres as now. A setup trial of your own wing tells what it costs; change it in small steps, and within the event&apos;s rules.</source>
        <translation>Simuliert: Der Fahrer nutzt die Reifen wie jetzt. Ein Setup-Versuch mit dem eigenen Flügel zeigt, was er kostet; in kleinen Schritten ändern und im Rahmen des Reglements.</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Slowest %1 against %2</source>
        <translation>Minimum %1 gegen %2</translation>
    </message>
    <message>
        <source>Slowest speed in a corner, fastest on a straight, %1</source>
        <translation>Kleinste Geschwindigkeit in einer Kurve, größte auf einer Geraden, %1</translation>
    </message>
    <message>
        <source>So&amp;und of B</source>
        <translation>To&amp;n von B</translation>
    </message>
    <message>
        <source>Sort the laps</source>
        <translation>Runden sortieren</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Speed at the end of the segment, %1</source>
        <translation>Geschwindigkeit am Ende des Abschnitts, %1</translation>
    </message>
    <message>
        <source>Speed of A and B, and the gap, over the distance along the track</source>
        <translation>Geschwindigkeit von A und B und der Abstand, über der Distanz entlang der Strecke</translation>
    </message>
    <message>
        <source>Spread of each driver&apos;s &amp;other clean laps</source>
        <translation>Streuung der übri&amp;gen sauberen Runden jedes Fahrers</translation>
    </message>
    <message>
        <source>St&amp;ills of both videos, a page</source>
        <translation>Stan&amp;dbilder beider Videos, eine Seite</translation>
    </message>
    <message>
        <source>Start straight</source>
        <translation>Startgerade</translation>
    </message>
    <message>
        <source>Still to be won, s</source>
        <translation>Noch zu holen, s</translation>
    </message>
    <message>
        <source>Stills of both videos on the debrief sheet</source>
        <translation>Standbilder beider Videos auf dem Debrief-Blatt</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Stop what is &amp;running</source>
        <translation>L&amp;aufendes abbrechen</translation>
    </message>
    <message>
        <source>Stopped. Choose the car again to begin anew.</source>
        <translation>Abgebrochen. Zum Neubeginn das Auto noch einmal wählen.</translation>
    </message>
    <message>
        <source>Stopped: nothing was reckoned.</source>
        <translation>Abgebrochen: nichts wurde berechnet.</translation>
    </message>
    <message>
        <source>Stopped: the causes were not worked out. Choose the page again to start anew.</source>
        <translation>Abgebrochen: Die Ursachen wurden nicht ermittelt. Zum Neubeginn die Seite noch einmal wählen.</translation>
    </message>
    <message>
        <source>Straights that matter</source>
        <translation>Geraden, auf die es ankommt</translation>
    </message>
    <message>
        <source>Sure?</source>
        <translation>Sicher?</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>A und B tauschen</translation>
    </message>
    <message>
        <source>Sweep: felt planted, could lift later</source>
        <translation>Bogen: lag satt, vom Gas ginge später</translation>
    </message>
    <message>
        <source>T&amp;he book itself</source>
        <translation>Das Buch se&amp;lbst</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Take %1 out of the book? </source>
        <translation>%1 aus dem Buch nehmen? </translation>
    </message>
    <message>
        <source>Take a recipe from a file</source>
        <translation>Rezept aus einer Datei übernehmen</translation>
    </message>
    <message>
        <source>Take a session or a pairing out of the book</source>
        <translation>Session oder Paarung aus dem Buch nehmen</translation>
    </message>
    <message>
        <source>Take the &amp;next panel in hand</source>
        <translation>&amp;Nächstes Feld nehmen</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>Gilt als</translation>
    </message>
    <message>
        <source>Taken, in place of &quot;%1&quot;, which was made for the same files.</source>
        <translation>Übernommen, anstelle von „%1“, das für dieselben Dateien gemacht war.</translation>
    </message>
    <message>
        <source>Taken.</source>
        <translation>Übernommen.</translation>
    </message>
    <message>
        <source>Takes the session off this page; its file stays as it is</source>
        <translation>Nimmt die Session von dieser Seite; ihre Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>Takes the session out of the book; its file stays as it is (Delete)</source>
        <translation>Nimmt die Session aus dem Buch; ihre Datei bleibt, wie sie ist (Entf)</translation>
    </message>
    <message>
        <source>Taking in the other book</source>
        <translation>Das andere Buch wird übernommen</translation>
    </message>
    <message>
        <source>Text, GPX or NMEA, from any logger. They are read and never changed.</source>
        <translation>Text, GPX oder NMEA, von jedem Logger. Sie werden gelesen und nie verändert.</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>Das Buch</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Its sessions can still be opened; &quot;lapwright book salvage&quot; makes a whole book of what can be read, when no window has it open.</source>
        <translation>Das Buch ist beschädigt: %1. Seine Sessions lassen sich weiterhin öffnen; „lapwright book salvage“ macht aus dem, was lesbar ist, ein unversehrtes Buch, wenn kein Fenster es offen hat.</translation>
    </message>
    <message>
        <source>The book is empty: open a file, and its session is in it.</source>
        <translation>Das Buch ist leer: eine Datei öffnen, und ihre Session steht darin.</translation>
    </message>
    <message>
        <source>The book is whole; nothing was changed.</source>
        <translation>Das Buch ist unversehrt; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The book on the Sessions page</source>
        <translation>Das Buch auf der Seite „Sessions“</translation>
    </message>
    <message>
        <source>The book was read to its end and is whole.</source>
        <translation>Das Buch wurde bis zum Ende gelesen und ist unversehrt.</translation>
    </message>
    <message>
        <source>The book…</source>
        <translation>Das Buch…</translation>
    </message>
    <message>
        <source>The car is quickest as it is now: nothing is predicted to change.</source>
        <translation>Das Auto ist so am schnellsten, wie es ist: Es ist keine Änderung vorhergesagt.</translation>
    </message>
    <message>
        <source>The car of %1 is yours</source>
        <translation>Das Auto von %1 ist das eigene</translation>
    </message>
    <message>
        <source>The change (95 %), times in s a lap</source>
        <translation>Die Änderung (95 %), Zeiten in s pro Runde</translation>
    </message>
    <message>
        <source>The change costs %1 a lap</source>
        <translation>Die Änderung kostet %1 pro Runde</translation>
    </message>
    <message>
        <source>The change is worth %1 a lap</source>
        <translation>Die Änderung bringt %1 pro Runde</translation>
    </message>
    <message>
        <source>The debrief sheet</source>
        <translation>Das Debrief-Blatt</translation>
    </message>
    <message>
        <source>The debrief sheet as it will print</source>
        <translation>Das Debrief-Blatt, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>The first %1 rows make %2 channels over %3 s.</source>
        <translation>Die ersten %1 Zeilen ergeben %2 Kanäle über %3 s.</translation>
    </message>
    <message>
        <source>The language changes when Lapwright is started the next time.</source>
        <translation>Die Sprache wechselt beim nächsten Start von Lapwright.</translation>
    </message>
    <message>
        <source>The lap of %1 is not clean (%2).</source>
        <translation>Die Runde von %1 ist nicht sauber (%2).</translation>
    </message>
    <message>
        <source>The lap of %1 is not clean.</source>
        <translation>Die Runde von %1 ist nicht sauber.</translation>
    </message>
    <message>
        <source>The largest part is %1: %2 gains %3 there</source>
        <translation>Der größte Teil ist %1: %2 gewinnt dort %3</translation>
    </message>
    <message>
        <source>The largest part is probably %1: %2 gains %3 there</source>
        <translation>Der größte Teil ist wahrscheinlich %1: %2 gewinnt dort %3</translation>
    </message>
    <message>
        <source>The mass of car %1 is not known: figures are per kilogram, and mass is not a cause of its own. Enter it under Setup.</source>
        <translation>Die Masse von Auto %1 ist nicht bekannt: Werte gelten je Kilogramm, und die Masse ist keine eigene Ursache. Einzutragen unter „Setup“.</translation>
    </message>
    <message>
        <source>The mass of neither car is known: figures are per kilogram, and mass is not a cause of its own. Enter it under Setup.</source>
        <translation>Die Masse keines der beiden Autos ist bekannt: Werte gelten je Kilogramm, und die Masse ist keine eigene Ursache. Einzutragen unter „Setup“.</translation>
    </message>
    <message>
        <source>The model does not fit here: </source>
        <translation>Das Modell passt hier nicht: </translation>
    </message>
    <message>
        <source>The next test that tells most</source>
        <translation>Der nächste Test, der am meisten verrät</translation>
    </message>
    <message>
        <source>The program ended before its window was closed. These were open: %1.</source>
        <translation>Das Programm endete, bevor sein Fenster geschlossen wurde. Offen waren: %1.</translation>
    </message>
    <message>
        <source>The program has no question.</source>
        <translation>Keine Spalte ist unklar.</translation>
    </message>
    <message>
        <source>The program is not sure of %1 columns, marked with a question mark.</source>
        <translation>Das Programm ist sich bei %1 Spalten nicht sicher; sie tragen ein Fragezeichen.</translation>
    </message>
    <message>
        <source>The program is not sure of one column, marked with a question mark.</source>
        <translation>Das Programm ist sich bei einer Spalte nicht sicher; sie trägt ein Fragezeichen.</translation>
    </message>
    <message>
        <source>The program took it for: %1 (%2)</source>
        <translation>Das Programm hielt sie für: %1 (%2)</translation>
    </message>
    <message>
        <source>The quickest clean lap there</source>
        <translation>Die schnellste saubere Runde dort</translation>
    </message>
    <message>
        <source>The segment &amp;ends at the cursor</source>
        <translation>Der Abschnitt &amp;endet am Cursor</translation>
    </message>
    <message>
        <source>The segment &amp;starts at the cursor</source>
        <translation>Der Abschnitt &amp;beginnt am Cursor</translation>
    </message>
    <message>
        <source>The session was driven on %1.</source>
        <translation>Die Session wurde am %1 gefahren.</translation>
    </message>
    <message>
        <source>The setup of %1 was read from %2.</source>
        <translation>Das Setup von %1 wurde aus %2 gelesen.</translation>
    </message>
    <message>
        <source>The system&apos;s &amp;language</source>
        <translation>Die Sprache des &amp;Systems</translation>
    </message>
    <message>
        <source>The track from above, with the places of the findings</source>
        <translation>Die Strecke von oben, mit den Stellen der Befunde</translation>
    </message>
    <message>
        <source>The track that is asked about</source>
        <translation>Die Strecke, nach der gefragt wird</translation>
    </message>
    <message>
        <source>The trend over all laps; minus is quicker</source>
        <translation>Der Trend über alle Runden; minus ist schneller</translation>
    </message>
    <message>
        <source>The video begins this long behind the recording. Put the cursor at a place that you know in the picture, and move this until the picture is there.</source>
        <translation>So viel später als die Aufzeichnung beginnt das Video. Den Cursor an eine Stelle setzen, die im Bild bekannt ist, und dies verschieben, bis das Bild dort ist.</translation>
    </message>
    <message>
        <source>The video is being opened</source>
        <translation>Das Video wird geöffnet</translation>
    </message>
    <message>
        <source>The video of %1 begins this long behind the recording</source>
        <translation>So viel später als die Aufzeichnung beginnt das Video von %1</translation>
    </message>
    <message>
        <source>The videos do not show these moments.</source>
        <translation>Die Videos zeigen diese Momente nicht.</translation>
    </message>
    <message>
        <source>The window goes on without its book. %1</source>
        <translation>Das Fenster läuft ohne sein Buch weiter. %1</translation>
    </message>
    <message>
        <source>There are none yet. One is kept whenever the columns of a file are answered for.</source>
        <translation>Noch kein Rezept. Eines wird behalten, sobald die Spalten einer Datei geklärt sind.</translation>
    </message>
    <message>
        <source>There is a %1 &quot;%2&quot; already: the two become one, and all sessions of &quot;%3&quot; are then of &quot;%2&quot;.</source>
        <translation>Schon vorhanden (%1): „%2“. Die beiden werden eins, und alle Sessions von „%3“ sind dann von „%2“.</translation>
    </message>
    <message>
        <source>There is no book that can be written: it is what keeps predictions.</source>
        <translation>Es gibt kein Buch, in das geschrieben werden kann: Es ist das, was Vorhersagen festhält.</translation>
    </message>
    <message>
        <source>These rows make no session: %1</source>
        <translation>Diese Zeilen ergeben keine Session: %1</translation>
    </message>
    <message>
        <source>These sessions were taken out of the book. One comes back with its laps, notes and pairings, as it was.</source>
        <translation>Diese Sessions wurden aus dem Buch genommen. Eine zurückgeholte kommt mit ihren Runden, Notizen und Paarungen wieder, wie sie war.</translation>
    </message>
    <message>
        <source>This recipe is used for files of its shape: the same delimiter and the same names of columns.</source>
        <translation>Dieses Rezept gilt für Dateien seiner Form: gleiches Trennzeichen und gleiche Spaltennamen.</translation>
    </message>
    <message>
        <source>Time won, s: A up, B down; outline: within its error</source>
        <translation>Zeitgewinn, s: A auf, B ab; nur Umriss: innerhalb des Fehlers</translation>
    </message>
    <message>
        <source>Times over the laps</source>
        <translation>Zeiten über die Runden</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>To keep in mind</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Top speed</source>
        <translation>Topspeed</translation>
    </message>
    <message>
        <source>Touch the plot, or use the arrow keys: both speeds and the gap at that place.</source>
        <translation>Diagramm berühren oder Pfeiltasten: beide Geschwindigkeiten und der Abstand an dieser Stelle.</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>Track files (*.json)</source>
        <translation>Streckendateien (*.json)</translation>
    </message>
    <message>
        <source>Track without a name</source>
        <translation>Strecke ohne Namen</translation>
    </message>
    <message>
        <source>Track, unrolled: bumps up are left-handers</source>
        <translation>Strecke, abgewickelt: oben sind Linkskurven</translation>
    </message>
    <message>
        <source>Trust r&amp;eport of this session</source>
        <translation>Prü&amp;fbericht dieser Session</translation>
    </message>
    <message>
        <source>Try next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>Try the sample sessions</source>
        <translation>Beispiele ausprobieren</translation>
    </message>
    <message>
        <source>Tyre</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>Tyre grip and downforce that the laps allow</source>
        <translation>Reifengrip und Abtrieb, die zu den Runden passen</translation>
    </message>
    <message>
        <source>Tyres used: A %1, B %2</source>
        <translation>Reifen genutzt: A %1, B %2</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Un&amp;its</source>
        <translation>Ei&amp;nheiten</translation>
    </message>
    <message>
        <source>Uncertainty b&amp;and on the gap</source>
        <translation>Unsicherheits&amp;band am Abstand</translation>
    </message>
    <message>
        <source>Undo brings all of it back; its file stays as it is.</source>
        <translation>Zurücknehmen bringt alles wieder; die Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Pfeil auf, Pfeil ab</translation>
    </message>
    <message>
        <source>Use and keep</source>
        <translation>Anwenden und merken</translation>
    </message>
    <message>
        <source>Used for files with</source>
        <translation>Gilt für Dateien mit</translation>
    </message>
    <message>
        <source>Usual key</source>
        <translation>Standard</translation>
    </message>
    <message>
        <source>Values of the first rows</source>
        <translation>Werte der ersten Zeilen</translation>
    </message>
    <message>
        <source>Vi&amp;deo</source>
        <translation>&amp;Video</translation>
    </message>
    <message>
        <source>Video of %1</source>
        <translation>Video von %1</translation>
    </message>
    <message>
        <source>Video of %1, all files of it that the camera wrote</source>
        <translation>Video von %1, alle Dateien davon, die die Kamera schrieb</translation>
    </message>
    <message>
        <source>Video of &amp;A…</source>
        <translation>Video von &amp;A…</translation>
    </message>
    <message>
        <source>Video of &amp;B…</source>
        <translation>Video von &amp;B…</translation>
    </message>
    <message>
        <source>Videos</source>
        <translation>Videos</translation>
    </message>
    <message>
        <source>Videos: %1</source>
        <translation>Videos: %1</translation>
    </message>
    <message>
        <source>Video…</source>
        <translation>Video…</translation>
    </message>
    <message>
        <source>What %1 are worth cannot be told.</source>
        <translation>Was %1 bringen, ist nicht feststellbar.</translation>
    </message>
    <message>
        <source>What %1 is worth cannot be told.</source>
        <translation>Was %1 bringt, ist nicht feststellbar.</translation>
    </message>
    <message>
        <source>What both drivers do</source>
        <translation>Was beide Fahrer tun</translation>
    </message>
    <message>
        <source>What came out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>What can be done there</source>
        <translation>Was dort möglich ist</translation>
    </message>
    <message>
        <source>What comes out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>What each column of the file was taken for; correct it here</source>
        <translation>Als was jede Spalte der Datei gilt; hier zu berichtigen</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>What is a change worth? Sessions without it and with it, compared segment by segment</source>
        <translation>Was bringt eine Änderung? Sessions ohne und mit ihr, Abschnitt für Abschnitt verglichen</translation>
    </message>
    <message>
        <source>What is changed</source>
        <translation>Was geändert wird</translation>
    </message>
    <message>
        <source>What it did to the car cannot be told: %1.</source>
        <translation>Was sie am Auto bewirkte, ist nicht feststellbar: %1.</translation>
    </message>
    <message>
        <source>What it shows are estimates from recorded data. They can be wrong, and they know nothing of the next lap&apos;s weather, traffic or tyres.</source>
        <translation>Gezeigt werden Schätzungen aus aufgezeichneten Daten. Sie können falsch sein, und von Wetter, Verkehr und Reifen der nächsten Runde wissen sie nichts.</translation>
    </message>
    <message>
        <source>What makes the difference between the cars cannot be told from these laps.</source>
        <translation>Was den Unterschied zwischen den Autos macht, ist aus diesen Runden nicht feststellbar.</translation>
    </message>
    <message>
        <source>What the aero is worth cannot be told: %1.</source>
        <translation>Was die Aero bringt, ist nicht feststellbar: %1.</translation>
    </message>
    <message>
        <source>What the change is worth cannot be told from these laps: %1 a lap.</source>
        <translation>Was die Änderung bringt, ist aus diesen Runden nicht feststellbar: %1 pro Runde.</translation>
    </message>
    <message>
        <source>What the change is worth, by segment</source>
        <translation>Was die Änderung bringt, je Abschnitt</translation>
    </message>
    <message>
        <source>What the data say of each car</source>
        <translation>Was die Daten über jedes Auto sagen</translation>
    </message>
    <message>
        <source>What the drivers make of it cannot be told apart from the cars.</source>
        <translation>Was die Fahrer daraus machen, ist nicht von den Autos zu trennen.</translation>
    </message>
    <message>
        <source>What was driven since is being looked at…</source>
        <translation>Was seither gefahren wurde, wird angesehen…</translation>
    </message>
    <message>
        <source>What was open was a part of another book: start the program with that book.</source>
        <translation>Was offen war, gehörte zu einem anderen Buch: das Programm mit jenem Buch starten.</translation>
    </message>
    <message>
        <source>Wheel speed and satellite speed agree within %1 %.</source>
        <translation>Rad- und Satellitengeschwindigkeit stimmen auf %1 % überein.</translation>
    </message>
    <message>
        <source>Wheel speed reads %1 % high against satellite speed.</source>
        <translation>Die Radgeschwindigkeit liegt %1 % über der Satellitengeschwindigkeit.</translation>
    </message>
    <message>
        <source>Wheel speed reads %1 % low against satellite speed.</source>
        <translation>Die Radgeschwindigkeit liegt %1 % unter der Satellitengeschwindigkeit.</translation>
    </message>
    <message>
        <source>When the session was driven, in UTC; the day alone will do.</source>
        <translation>Wann die Session gefahren wurde, in UTC; der Tag allein genügt.</translation>
    </message>
    <message>
        <source>Where both cars drove, close up on the chosen segment, and how far apart they were</source>
        <translation>Wo beide Autos fuhren, am gewählten Abschnitt aus der Nähe, und wie weit sie auseinander waren</translation>
    </message>
    <message>
        <source>Where it &amp;turns in</source>
        <translation>Ein&amp;lenken</translation>
    </message>
    <message>
        <source>Where the trend of the later half of the laps ends</source>
        <translation>Wo der Trend der späteren Hälfte der Runden endet</translation>
    </message>
    <message>
        <source>Whether the aero of either car pays off cannot be told from these laps.</source>
        <translation>Ob sich die Aero eines der beiden Autos auszahlt, ist aus diesen Runden nicht feststellbar.</translation>
    </message>
    <message>
        <source>Whether the lap times fall cannot be told from %1.</source>
        <translation>Ob die Rundenzeiten fallen, ist nicht feststellbar: %1.</translation>
    </message>
    <message>
        <source>Whether the lap times fall cannot be told: %1.</source>
        <translation>Ob die Rundenzeiten fallen, ist nicht feststellbar: %1.</translation>
    </message>
    <message>
        <source>Which car is yours?</source>
        <translation>Welches ist das eigene Auto?</translation>
    </message>
    <message>
        <source>Which lap is quicker cannot be told from these recordings.</source>
        <translation>Welche Runde schneller ist, ist aus diesen Aufzeichnungen nicht feststellbar.</translation>
    </message>
    <message>
        <source>Which session was driven with it?</source>
        <translation>Welche Session wurde damit gefahren?</translation>
    </message>
    <message>
        <source>Which sessions or figure</source>
        <translation>Welche Sessions oder welcher Kennwert</translation>
    </message>
    <message>
        <source>Which track or car</source>
        <translation>Welche Strecke oder welches Auto</translation>
    </message>
    <message>
        <source>Who corners faster cannot be told from these laps.</source>
        <translation>Wer schneller durch die Kurven fährt, ist aus diesen Runden nicht feststellbar.</translation>
    </message>
    <message>
        <source>Who is quicker in %1 cannot be told.</source>
        <translation>Wer in %1 schneller ist, ist nicht feststellbar.</translation>
    </message>
    <message>
        <source>Whole lap</source>
        <translation>Ganze Runde</translation>
    </message>
    <message>
        <source>Whom %1 favours cannot be told from these laps.</source>
        <translation>Wem %1 nützt, ist aus diesen Runden nicht feststellbar.</translation>
    </message>
    <message>
        <source>Whom %1 together favour cannot be told from these laps.</source>
        <translation>Wem %1 zusammen nützen, ist aus diesen Runden nicht feststellbar.</translation>
    </message>
    <message>
        <source>With it go its laps and samples, %1. </source>
        <translation>Damit gehen ihre Runden und Messwerte, %1. </translation>
    </message>
    <message>
        <source>Within %1 s of the quickest it is from %2 to %3.</source>
        <translation>Bis auf %1 s so schnell wie am schnellsten: von %2 bis %3.</translation>
    </message>
    <message>
        <source>Won by</source>
        <translation>Gewinnt</translation>
    </message>
    <message>
        <source>Words that the sessions of the book are searched for</source>
        <translation>Wörter, nach denen die Sessions des Buchs durchsucht werden</translation>
    </message>
    <message>
        <source>Words: track, car, driver, tyre, or what stands in a note</source>
        <translation>Wörter: Strecke, Auto, Fahrer, Reifen oder was in einer Notiz steht</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>In Arbeit</translation>
    </message>
    <message>
        <source>Working out why…</source>
        <translation>Ursachen werden gesucht…</translation>
    </message>
    <message>
        <source>Write the recipe to a file</source>
        <translation>Rezept in eine Datei schreiben</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>%1 wird geschrieben …</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Your car:</source>
        <translation>Eigenes Auto:</translation>
    </message>
    <message>
        <source>a few draws run away from the others</source>
        <translation>einige Ziehungen laufen von den anderen weg</translation>
    </message>
    <message>
        <source>a lap</source>
        <translation>pro Runde</translation>
    </message>
    <message>
        <source>a line is longer than 1 MiB</source>
        <translation>eine Zeile ist länger als 1 MiB</translation>
    </message>
    <message>
        <source>a number in it is beyond what can be stored</source>
        <translation>eine Zahl darin ist größer, als sich speichern lässt</translation>
    </message>
    <message>
        <source>a picture of the video cannot be converted</source>
        <translation>ein Bild des Videos kann nicht umgewandelt werden</translation>
    </message>
    <message>
        <source>a picture of the video cannot be made a still</source>
        <translation>aus einem Bild des Videos kann kein Standbild werden</translation>
    </message>
    <message>
        <source>a rate beside accelerations: kept as it is</source>
        <translation>eine Drehrate neben Beschleunigungen: bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>a recipe without a title</source>
        <translation>ein Rezept ohne Titel</translation>
    </message>
    <message>
        <source>a segment needs &quot;name&quot;, &quot;kind&quot; (corner or straight), &quot;start_m&quot; &lt; &quot;end_m&quot;, and follows the one before it</source>
        <translation>ein Abschnitt braucht „name“, „kind“ (corner oder straight), „start_m“ &lt; „end_m“, und folgt auf den davor</translation>
    </message>
    <message>
        <source>a session</source>
        <translation>eine Session</translation>
    </message>
    <message>
        <source>a session of the book</source>
        <translation>eine Session des Buchs</translation>
    </message>
    <message>
        <source>a still of the video cannot be read</source>
        <translation>ein Standbild des Videos kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>a trial needs four clean laps or more</source>
        <translation>ein Versuch braucht mindestens vier saubere Runden</translation>
    </message>
    <message>
        <source>a trial tells of a change of one car with one driver on one track: leave one of them out</source>
        <translation>ein Versuch beurteilt eine Änderung an einem Auto mit einem Fahrer auf einer Strecke: eines von beiden weglassen</translation>
    </message>
    <message>
        <source>a usual step is worth</source>
        <translation>ein üblicher Schritt bringt</translation>
    </message>
    <message>
        <source>aero</source>
        <translation>Aero</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>Luft %1</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>all laps were driven with the same setup</source>
        <translation>alle Runden wurden mit demselben Setup gefahren</translation>
    </message>
    <message>
        <source>all positions lie within a few hundredths of a second</source>
        <translation>alle Positionen liegen innerhalb weniger Hundertstelsekunden</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>Meereshöhe</translation>
    </message>
    <message>
        <source>an angle beside roll and pitch: kept as it is</source>
        <translation>ein Winkel neben Rollen und Nicken: bleibt, wie er ist</translation>
    </message>
    <message>
        <source>an entry of &quot;columns&quot; is no object</source>
        <translation>ein Eintrag von „columns“ ist kein Objekt</translation>
    </message>
    <message>
        <source>and %1 further channels</source>
        <translation>und %1 weitere Kanäle</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 mehr</translation>
    </message>
    <message>
        <source>another length than the other laps</source>
        <translation>andere Länge als die übrigen Runden</translation>
    </message>
    <message>
        <source>another program is writing to the book, which can only be read here</source>
        <translation>ein anderes Programm schreibt gerade in das Buch, das hier nur gelesen werden kann</translation>
    </message>
    <message>
        <source>another window is busy with the book: nothing was changed</source>
        <translation>ein anderes Fenster ist mit dem Buch beschäftigt: nichts wurde geändert</translation>
    </message>
    <message>
        <source>as entered here</source>
        <translation>wie hier eingetragen</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>wie es ist</translation>
    </message>
    <message>
        <source>as much as now</source>
        <translation>ebenso viel</translation>
    </message>
    <message>
        <source>as the time</source>
        <translation>wie die Zeit</translation>
    </message>
    <message>
        <source>as you say</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>ask for another change</source>
        <translation>nach einer anderen Änderung fragen</translation>
    </message>
    <message>
        <source>band: where A may be, seen from B</source>
        <translation>Band: wo A sein kann, von B aus gesehen</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>Strich |</translation>
    </message>
    <message>
        <source>bar: 95 % interval; hollow: not decided by the data</source>
        <translation>Balken: 95-%-Intervall; hohl: aus den Daten nicht bestimmbar</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Basis</translation>
    </message>
    <message>
        <source>beacon</source>
        <translation>Beacon</translation>
    </message>
    <message>
        <source>beacon channel of the file</source>
        <translation>Beacon-Kanal der Datei</translation>
    </message>
    <message>
        <source>begins on the way</source>
        <translation>beginnt unterwegs</translation>
    </message>
    <message>
        <source>behind</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>behind the last segment lies the timing line</source>
        <translation>hinter dem letzten Abschnitt liegt die Messlinie</translation>
    </message>
    <message>
        <source>beside a speed from satellites, so taken as the wheels&apos;</source>
        <translation>neben einer Geschwindigkeit aus Satelliten, also als die der Räder genommen</translation>
    </message>
    <message>
        <source>best %1</source>
        <translation>beste %1</translation>
    </message>
    <message>
        <source>best segments of %1 put together: %2; laps that differ by chance alone would give %3</source>
        <translation>beste Abschnitte von %1 zusammengesetzt: %2; Runden mit nur zufälligen Unterschieden ergäben %3</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>both at the same place%1; B plays %2 times as fast as it was</source>
        <translation>beide an derselben Stelle%1; B läuft %2-mal so schnell wie gefahren</translation>
    </message>
    <message>
        <source>both let go at the same moment%1</source>
        <translation>beide im selben Moment gestartet%1</translation>
    </message>
    <message>
        <source>brake</source>
        <translation>Bremse</translation>
    </message>
    <message>
        <source>brake pressure</source>
        <translation>Bremsdruck</translation>
    </message>
    <message>
        <source>brakes %1 earlier</source>
        <translation>bremst %1 früher</translation>
    </message>
    <message>
        <source>brakes %1 later</source>
        <translation>bremst %1 später</translation>
    </message>
    <message>
        <source>brakes, %1 before slowest</source>
        <translation>bremst, %1 vor Minimum</translation>
    </message>
    <message>
        <source>bringing the maps together</source>
        <translation>Karten werden zur Deckung gebracht</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>by the positions it counts the other way round: turned, so that forward and left are positive</source>
        <translation>nach den Positionen zählt sie andersherum: umgedreht, so dass vorwärts und links positiv sind</translation>
    </message>
    <message>
        <source>by the setup sheets</source>
        <translation>nach den Setup-Blättern</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>nicht feststellbar</translation>
    </message>
    <message>
        <source>cannot be told from these sessions</source>
        <translation>aus diesen Sessions nicht feststellbar</translation>
    </message>
    <message>
        <source>cannot be told: %1</source>
        <translation>nicht feststellbar: %1</translation>
    </message>
    <message>
        <source>cannot be told: %1 is too wide to judge by</source>
        <translation>lässt sich nicht sagen: %1 ist zu breit, um zu urteilen</translation>
    </message>
    <message>
        <source>car</source>
        <translation>Auto</translation>
    </message>
    <message>
        <source>car A</source>
        <translation>Auto A</translation>
    </message>
    <message>
        <source>car B</source>
        <translation>Auto B</translation>
    </message>
    <message>
        <source>car?</source>
        <translation>Auto?</translation>
    </message>
    <message>
        <source>carry up to %1 more to the slowest point</source>
        <translation>bis zu %1 mehr zum langsamsten Punkt mitnehmen</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>channel %1 is damaged in the book and was left out: import the file again</source>
        <translation>Kanal %1 ist im Buch beschädigt und wurde weggelassen: die Datei noch einmal einlesen</translation>
    </message>
    <message>
        <source>check its folder and your rights to it</source>
        <translation>seinen Ordner und die eigenen Rechte daran prüfen</translation>
    </message>
    <message>
        <source>check its name and your rights to it</source>
        <translation>ihren Namen und die eigenen Rechte daran prüfen</translation>
    </message>
    <message>
        <source>check that it is there and may be read</source>
        <translation>prüfen, ob es da ist und gelesen werden darf</translation>
    </message>
    <message>
        <source>check that the track file belongs to this track</source>
        <translation>prüfen, ob die Streckendatei zu dieser Strecke gehört</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>den Datenträger prüfen</translation>
    </message>
    <message>
        <source>check the disk or card</source>
        <translation>Datenträger oder Karte prüfen</translation>
    </message>
    <message>
        <source>check the folder, your rights to it and the room on the disk</source>
        <translation>den Ordner, die eigenen Rechte daran und den Platz auf dem Datenträger prüfen</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>den Namen prüfen</translation>
    </message>
    <message>
        <source>check the name and that it may be read</source>
        <translation>Namen und Leserecht prüfen</translation>
    </message>
    <message>
        <source>check the name, or begin a book with &quot;lapwright book add&quot; or in the window</source>
        <translation>den Namen prüfen, oder mit „lapwright book add“ oder im Fenster ein Buch beginnen</translation>
    </message>
    <message>
        <source>check the unit of its speed</source>
        <translation>die Einheit ihrer Geschwindigkeit prüfen</translation>
    </message>
    <message>
        <source>check your rights to its folder</source>
        <translation>die Rechte an seinem Ordner prüfen</translation>
    </message>
    <message>
        <source>checking the book</source>
        <translation>das Buch wird geprüft</translation>
    </message>
    <message>
        <source>checking the samples</source>
        <translation>die Messwerte werden geprüft</translation>
    </message>
    <message>
        <source>choice of lap A</source>
        <translation>Wahl von Runde A</translation>
    </message>
    <message>
        <source>choice of lap B</source>
        <translation>Wahl von Runde B</translation>
    </message>
    <message>
        <source>choice of your car</source>
        <translation>Wahl des eigenen Autos</translation>
    </message>
    <message>
        <source>choose a logger&apos;s file, or look into the book&apos;s list</source>
        <translation>eine Logger-Datei wählen, oder in der Liste des Buchs nachsehen</translation>
    </message>
    <message>
        <source>choose a place further away</source>
        <translation>eine weiter entfernte Stelle wählen</translation>
    </message>
    <message>
        <source>choose a place on the lap</source>
        <translation>eine Stelle auf der Runde wählen</translation>
    </message>
    <message>
        <source>choose a recording with at least one whole lap</source>
        <translation>eine Aufzeichnung mit mindestens einer ganzen Runde wählen</translation>
    </message>
    <message>
        <source>choose a session with at least one lap from the timing line to the timing line</source>
        <translation>eine Session mit mindestens einer Runde von Messlinie zu Messlinie wählen</translation>
    </message>
    <message>
        <source>choose a session with whole laps</source>
        <translation>eine Session mit ganzen Runden wählen</translation>
    </message>
    <message>
        <source>choose another file name</source>
        <translation>einen anderen Dateinamen wählen</translation>
    </message>
    <message>
        <source>choose another folder or file name</source>
        <translation>einen anderen Ordner oder Dateinamen wählen</translation>
    </message>
    <message>
        <source>choose another lap</source>
        <translation>eine andere Runde wählen</translation>
    </message>
    <message>
        <source>choose another lap, or two sessions of the same track</source>
        <translation>eine andere Runde wählen, oder zwei Sessions derselben Strecke</translation>
    </message>
    <message>
        <source>choose another name, or add --unite to make the two one</source>
        <translation>einen anderen Namen wählen, oder --unite hinzufügen, um die beiden zu vereinen</translation>
    </message>
    <message>
        <source>choose another session</source>
        <translation>eine andere Session wählen</translation>
    </message>
    <message>
        <source>choose it again where it lies now</source>
        <translation>es dort neu wählen, wo es jetzt liegt</translation>
    </message>
    <message>
        <source>choose one</source>
        <translation>einen wählen</translation>
    </message>
    <message>
        <source>choose sessions of the same track and direction</source>
        <translation>Sessions derselben Strecke und Richtung wählen</translation>
    </message>
    <message>
        <source>choose sessions with and without the change</source>
        <translation>Sessions mit und ohne die Änderung wählen</translation>
    </message>
    <message>
        <source>choose two sessions at the same track</source>
        <translation>zwei Sessions auf derselben Strecke wählen</translation>
    </message>
    <message>
        <source>click</source>
        <translation>Klick</translation>
    </message>
    <message>
        <source>click on &quot;lap&quot; or &quot;time&quot; above them</source>
        <translation>Klick auf „Runde“ oder „Zeit“ darüber</translation>
    </message>
    <message>
        <source>click on its name</source>
        <translation>Klick auf seinen Namen</translation>
    </message>
    <message>
        <source>close it there and do it again</source>
        <translation>es dort schließen und es noch einmal tun</translation>
    </message>
    <message>
        <source>close other programs</source>
        <translation>andere Programme schließen</translation>
    </message>
    <message>
        <source>coast less between throttle and brake</source>
        <translation>zwischen Gas und Bremse weniger rollen</translation>
    </message>
    <message>
        <source>coast with the clutch down from %1 to %2 on the longest straight, and enter the drag area that it gives, 2 × mass × (deceleration − %3 m/s²) / (air density × speed²), good to %4 m²</source>
        <translation>auf der längsten Geraden mit getretener Kupplung von %1 auf %2 ausrollen und die Widerstandsfläche eintragen, die sich ergibt, 2 × Masse × (Verzögerung − %3 m/s²) / (Luftdichte × Geschwindigkeit²), auf %4 m² genau</translation>
    </message>
    <message>
        <source>column &quot;%1&quot;:</source>
        <translation>Spalte „%1“:</translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation>Spalte %1: %2</translation>
    </message>
    <message>
        <source>columns are read as %1 says</source>
        <translation>Spalten werden gelesen, wie %1 es sagt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>compare sessions that were recorded the same way</source>
        <translation>Sessions vergleichen, die auf dieselbe Weise aufgezeichnet wurden</translation>
    </message>
    <message>
        <source>conditions?</source>
        <translation>Bedingungen?</translation>
    </message>
    <message>
        <source>convert it to 4K or less</source>
        <translation>es in 4K oder weniger umwandeln</translation>
    </message>
    <message>
        <source>convert it to H.264</source>
        <translation>es in H.264 umwandeln</translation>
    </message>
    <message>
        <source>convert it to MP4</source>
        <translation>es in MP4 umwandeln</translation>
    </message>
    <message>
        <source>convert the video to H.264</source>
        <translation>das Video in H.264 umwandeln</translation>
    </message>
    <message>
        <source>copy it from the camera again</source>
        <translation>es noch einmal von der Kamera kopieren</translation>
    </message>
    <message>
        <source>copy it from the camera again, or let the camera repair it</source>
        <translation>es noch einmal von der Kamera kopieren, oder von der Kamera reparieren lassen</translation>
    </message>
    <message>
        <source>copy it to a folder that you may write, and open the copy</source>
        <translation>es in einen beschreibbaren Ordner kopieren und die Kopie öffnen</translation>
    </message>
    <message>
        <source>copy the book with all files that begin with its name to a folder that you may write</source>
        <translation>das Buch mit allen Dateien, die mit seinem Namen beginnen, in einen beschreibbaren Ordner kopieren</translation>
    </message>
    <message>
        <source>copy the file from the logger again</source>
        <translation>die Datei noch einmal vom Logger kopieren</translation>
    </message>
    <message>
        <source>cornering as driven</source>
        <translation>Kurventempo wie gefahren</translation>
    </message>
    <message>
        <source>correct it in the setup sheet</source>
        <translation>sie im Setup-Blatt berichtigen</translation>
    </message>
    <message>
        <source>counting of %1</source>
        <translation>Werten von %1</translation>
    </message>
    <message>
        <source>course</source>
        <translation>Kurs</translation>
    </message>
    <message>
        <source>d MMM
hh:mm</source>
        <translation>d. MMM
hh:mm</translation>
    </message>
    <message>
        <source>d MMM
yyyy</source>
        <translation>d. MMM
yyyy</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>date and time of day</source>
        <translation>Datum und Tageszeit</translation>
    </message>
    <message>
        <source>date of %1</source>
        <translation>Datum von %1</translation>
    </message>
    <message>
        <source>date: %1</source>
        <translation>Datum: %1</translation>
    </message>
    <message>
        <source>date?</source>
        <translation>Datum?</translation>
    </message>
    <message>
        <source>dates can be read as day/month or month/day: taken as day/month</source>
        <translation>Daten lassen sich als Tag/Monat oder Monat/Tag lesen: als Tag/Monat genommen</translation>
    </message>
    <message>
        <source>days with fractions</source>
        <translation>Tage mit Bruchteilen</translation>
    </message>
    <message>
        <source>days with fractions by its values</source>
        <translation>den Werten nach Tage mit Bruchteilen</translation>
    </message>
    <message>
        <source>ddmm.mmmm without marks</source>
        <translation>ddmm.mmmm ohne Zeichen</translation>
    </message>
    <message>
        <source>ddmmyy without marks</source>
        <translation>ddmmyy ohne Trennzeichen</translation>
    </message>
    <message>
        <source>degrees and minutes without a mark (ddmm.mmmm) by their size</source>
        <translation>der Größe nach Grad und Minuten ohne Zeichen (ddmm.mmmm)</translation>
    </message>
    <message>
        <source>degrees by their values</source>
        <translation>den Werten nach Grad</translation>
    </message>
    <message>
        <source>degrees fit the speed</source>
        <translation>Grad passen zur Geschwindigkeit</translation>
    </message>
    <message>
        <source>degrees with marks or letters, O is east</source>
        <translation>Grad mit Zeichen oder Buchstaben, O ist Ost</translation>
    </message>
    <message>
        <source>degrees with marks or letters, O is west</source>
        <translation>Grad mit Zeichen oder Buchstaben, O ist West</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>distance along the track · speed: A solid, B dashed</source>
        <translation>Distanz entlang der Strecke · Geschwindigkeit: A durchgezogen, B gestrichelt</translation>
    </message>
    <message>
        <source>do it again in a moment</source>
        <translation>gleich noch einmal versuchen</translation>
    </message>
    <message>
        <source>does not follow the track all the way</source>
        <translation>folgt nicht überall der Strecke</translation>
    </message>
    <message>
        <source>double-click</source>
        <translation>Doppelklick</translation>
    </message>
    <message>
        <source>downforce</source>
        <translation>Abtrieb</translation>
    </message>
    <message>
        <source>downforce area</source>
        <translation>Abtriebsfläche</translation>
    </message>
    <message>
        <source>downforce area, m²</source>
        <translation>Abtriebsfläche, m²</translation>
    </message>
    <message>
        <source>downforce area, m² on a tonne</source>
        <translation>Abtriebsfläche, m² je Tonne</translation>
    </message>
    <message>
        <source>downforce at %1</source>
        <translation>Abtrieb bei %1</translation>
    </message>
    <message>
        <source>downforce more than now, m²</source>
        <translation>mehr Abtrieb als jetzt, m²</translation>
    </message>
    <message>
        <source>downforce more than now, m² on a tonne</source>
        <translation>mehr Abtrieb als jetzt, m² je Tonne</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>drag +
power</source>
        <translation>Widerstand +
Leistung</translation>
    </message>
    <message>
        <source>drag + power</source>
        <translation>Widerstand + Leistung</translation>
    </message>
    <message>
        <source>drag and power</source>
        <translation>Widerstand und Leistung</translation>
    </message>
    <message>
        <source>drag area</source>
        <translation>Widerstandsfläche</translation>
    </message>
    <message>
        <source>drag area, m²</source>
        <translation>Widerstandsfläche, m²</translation>
    </message>
    <message>
        <source>drag area, m² on a tonne</source>
        <translation>Widerstandsfläche, m² je Tonne</translation>
    </message>
    <message>
        <source>drag at %1</source>
        <translation>Widerstand bei %1</translation>
    </message>
    <message>
        <source>drag it by its name to another&apos;s place</source>
        <translation>am Namen an die Stelle eines anderen ziehen</translation>
    </message>
    <message>
        <source>drag its mark on ribbon or map</source>
        <translation>Marke auf Streckenband oder Karte ziehen</translation>
    </message>
    <message>
        <source>drag the border between two</source>
        <translation>Grenze zwischen zweien ziehen</translation>
    </message>
    <message>
        <source>drag, or wheel sideways</source>
        <translation>ziehen, oder Mausrad seitwärts</translation>
    </message>
    <message>
        <source>drawing the ensemble</source>
        <translation>Varianten der Bewegung werden gezogen</translation>
    </message>
    <message>
        <source>drawing the line through all laps</source>
        <translation>die Linie durch alle Runden wird gezogen</translation>
    </message>
    <message>
        <source>drive more laps of each setup</source>
        <translation>mehr Runden mit jedem Setup fahren</translation>
    </message>
    <message>
        <source>drive the baseline once more after the change</source>
        <translation>nach der Änderung noch einmal die Basis fahren</translation>
    </message>
    <message>
        <source>driver</source>
        <translation>Fahrer</translation>
    </message>
    <message>
        <source>driver &amp; rest</source>
        <translation>Fahrer &amp; Rest</translation>
    </message>
    <message>
        <source>driver?</source>
        <translation>Fahrer?</translation>
    </message>
    <message>
        <source>east</source>
        <translation>Ost</translation>
    </message>
    <message>
        <source>end of %1</source>
        <translation>Ende von %1</translation>
    </message>
    <message>
        <source>ends on the way</source>
        <translation>endet unterwegs</translation>
    </message>
    <message>
        <source>engine speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>engine speed was not recorded: how power changes with speed is hardly known, so it and the drag are known less well</source>
        <translation>die Drehzahl wurde nicht aufgezeichnet: wie sich die Leistung mit der Geschwindigkeit ändert, ist kaum bekannt, daher sind sie und der Widerstand weniger genau bekannt</translation>
    </message>
    <message>
        <source>engine used</source>
        <translation>Motor genutzt</translation>
    </message>
    <message>
        <source>engine used on straights</source>
        <translation>auf Geraden genutzter Motor</translation>
    </message>
    <message>
        <source>enter the power at the wheels from a dynamometer, good to 3 %</source>
        <translation>die Leistung am Rad von einem Prüfstand eintragen, auf 3 % genau</translation>
    </message>
    <message>
        <source>enter the spring rates in the setup (suspension travel was recorded)</source>
        <translation>die Federraten im Setup eintragen (der Federweg wurde aufgezeichnet)</translation>
    </message>
    <message>
        <source>every comma stands before three digits: taken as decimal commas</source>
        <translation>jedes Komma steht vor drei Ziffern: als Dezimalkomma genommen</translation>
    </message>
    <message>
        <source>every item needs a &quot;name&quot; and a &quot;value&quot;</source>
        <translation>jedes Element von „items“ braucht „name“ und „value“</translation>
    </message>
    <message>
        <source>every session has the same setup sheet: write down what is changed, and what it does is told here</source>
        <translation>jede Session hat dasselbe Setup-Blatt: aufschreiben, was geändert wird, und hier steht, was es bewirkt</translation>
    </message>
    <message>
        <source>exit A</source>
        <translation>Ausg. A</translation>
    </message>
    <message>
        <source>exit A · B</source>
        <translation>Ausgang A · B</translation>
    </message>
    <message>
        <source>export fewer channels</source>
        <translation>weniger Kanäle exportieren</translation>
    </message>
    <message>
        <source>export one session alone</source>
        <translation>eine Session allein exportieren</translation>
    </message>
    <message>
        <source>export the session as delimited text</source>
        <translation>die Session als Text mit Trennzeichen exportieren</translation>
    </message>
    <message>
        <source>export the session as delimited text, GPX or NMEA 0183</source>
        <translation>die Session als Text mit Trennzeichen, GPX oder NMEA 0183 exportieren</translation>
    </message>
    <message>
        <source>export the session with its lap column, or with positions</source>
        <translation>die Session mit ihrer Rundenspalte oder mit Positionen exportieren</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude</source>
        <translation>die Session mit Breiten- und Längengrad exportieren</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude, or with a speed</source>
        <translation>die Session mit Breiten- und Längengrad oder mit einer Geschwindigkeit exportieren</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude, or with its speed throughout</source>
        <translation>die Session mit Breiten- und Längengrad exportieren, oder mit durchgehender Geschwindigkeit</translation>
    </message>
    <message>
        <source>export the track as plain GPX 1.1</source>
        <translation>den Track als einfaches GPX 1.1 exportieren</translation>
    </message>
    <message>
        <source>export the track with times</source>
        <translation>den Track mit Zeiten exportieren</translation>
    </message>
    <message>
        <source>export with semicolons or tabs, or with decimal points</source>
        <translation>mit Semikolons oder Tabulatoren exportieren, oder mit Dezimalpunkten</translation>
    </message>
    <message>
        <source>fastest</source>
        <translation>Bestzeit</translation>
    </message>
    <message>
        <source>few clean laps: what differs from lap to lap is hardly known</source>
        <translation>wenige saubere Runden: was von Runde zu Runde schwankt, ist kaum bekannt</translation>
    </message>
    <message>
        <source>fewer than five flying laps</source>
        <translation>weniger als fünf fliegende Runden</translation>
    </message>
    <message>
        <source>fewer than ten flying laps</source>
        <translation>weniger als zehn fliegende Runden</translation>
    </message>
    <message>
        <source>fewer than two track points have a time and a position</source>
        <translation>weniger als zwei Trackpunkte haben Zeit und Position</translation>
    </message>
    <message>
        <source>filled: best clean lap; hollow, dashed: median of the clean laps</source>
        <translation>gefüllt: beste saubere Runde; hohl, gestrichelt: Median der sauberen Runden</translation>
    </message>
    <message>
        <source>finding the laps</source>
        <translation>Runden werden gesucht</translation>
    </message>
    <message>
        <source>for now %1 s earlier</source>
        <translation>vorläufig %1 s früher</translation>
    </message>
    <message>
        <source>for now %1 s later</source>
        <translation>vorläufig %1 s später</translation>
    </message>
    <message>
        <source>forces and power in place of figures per kilogram, and mass as a cause</source>
        <translation>Kräfte und Leistung statt Werten je Kilogramm, und Masse als Ursache</translation>
    </message>
    <message>
        <source>forgetting of %1</source>
        <translation>Vergessen von %1</translation>
    </message>
    <message>
        <source>from %1, which lies beside it</source>
        <translation>aus %1, das daneben liegt</translation>
    </message>
    <message>
        <source>from 2026-05-16</source>
        <translation>ab 2026-05-16</translation>
    </message>
    <message>
        <source>from the book</source>
        <translation>aus dem Buch</translation>
    </message>
    <message>
        <source>from the book, as %1 beside the file has it</source>
        <translation>aus dem Buch, wie auch %1 neben der Datei es hat</translation>
    </message>
    <message>
        <source>from the book; %1 beside the file says otherwise</source>
        <translation>aus dem Buch; %1 neben der Datei sagt anderes</translation>
    </message>
    <message>
        <source>front spring rate</source>
        <translation>Federrate vorn</translation>
    </message>
    <message>
        <source>full throttle</source>
        <translation>Vollgas</translation>
    </message>
    <message>
        <source>full throttle %1 later</source>
        <translation>Vollgas %1 später</translation>
    </message>
    <message>
        <source>full throttle %1 sooner</source>
        <translation>Vollgas %1 früher</translation>
    </message>
    <message>
        <source>full throttle, %1 after slowest</source>
        <translation>Vollgas, %1 nach Minimum</translation>
    </message>
    <message>
        <source>further channel</source>
        <translation>weiterer Kanal</translation>
    </message>
    <message>
        <source>gains %1</source>
        <translation>gewinnt %1</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>gap, s: A ahead is up</source>
        <translation>Abstand, s: A vorn ist oben</translation>
    </message>
    <message>
        <source>gear</source>
        <translation>Gang</translation>
    </message>
    <message>
        <source>getting quicker</source>
        <translation>wird schneller</translation>
    </message>
    <message>
        <source>getting slower</source>
        <translation>wird langsamer</translation>
    </message>
    <message>
        <source>give a session with a whole lap of that track</source>
        <translation>eine Session mit einer ganzen Runde dieser Strecke angeben</translation>
    </message>
    <message>
        <source>give a shorter one</source>
        <translation>einen kürzeren angeben</translation>
    </message>
    <message>
        <source>give an MP4, MOV, MKV, AVI or TS file</source>
        <translation>eine MP4-, MOV-, MKV-, AVI- oder TS-Datei angeben</translation>
    </message>
    <message>
        <source>give another name</source>
        <translation>einen anderen Namen angeben</translation>
    </message>
    <message>
        <source>give it alone</source>
        <translation>es allein angeben</translation>
    </message>
    <message>
        <source>give it one</source>
        <translation>ihr einen geben</translation>
    </message>
    <message>
        <source>give one</source>
        <translation>einen angeben</translation>
    </message>
    <message>
        <source>give the video, not its sound alone</source>
        <translation>das Video angeben, nicht nur seinen Ton</translation>
    </message>
    <message>
        <source>grip +
downforce</source>
        <translation>Grip +
Abtrieb</translation>
    </message>
    <message>
        <source>grip + downforce</source>
        <translation>Grip + Abtrieb</translation>
    </message>
    <message>
        <source>grip as used</source>
        <translation>genutzter Grip</translation>
    </message>
    <message>
        <source>held: it was %1</source>
        <translation>zugetroffen: es waren %1</translation>
    </message>
    <message>
        <source>hhmmss without marks</source>
        <translation>hhmmss ohne Trennzeichen</translation>
    </message>
    <message>
        <source>hold tyre, pressure and temperature against the other car&apos;s.</source>
        <translation>Reifen, Druck und Temperatur mit denen des anderen Autos vergleichen.</translation>
    </message>
    <message>
        <source>hold tyre, pressure and temperature against the other car&apos;s; %1.</source>
        <translation>Reifen, Druck und Temperatur mit denen des anderen Autos vergleichen; %1.</translation>
    </message>
    <message>
        <source>holding predictions against what was driven</source>
        <translation>Vorhersagen an dem messen, was gefahren wurde</translation>
    </message>
    <message>
        <source>hours, minutes and seconds without marks by its values</source>
        <translation>den Werten nach Stunden, Minuten und Sekunden ohne Zeichen</translation>
    </message>
    <message>
        <source>hours:minutes:seconds</source>
        <translation>Stunden:Minuten:Sekunden</translation>
    </message>
    <message>
        <source>hours:minutes:seconds:parts, %1 a second</source>
        <translation>Stunden:Minuten:Sekunden:Teile, %1 je Sekunde</translation>
    </message>
    <message>
        <source>how the car turns is not known</source>
        <translation>wie sich das Auto dreht, ist nicht bekannt</translation>
    </message>
    <message>
        <source>how the car turns is not known, so that the picture tells nothing</source>
        <translation>wie sich das Auto dreht, ist nicht bekannt, daher verrät das Bild nichts</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>in %1 and %2</source>
        <translation>in %1 und %2</translation>
    </message>
    <message>
        <source>in lap</source>
        <translation>Inlap</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>install the newer version</source>
        <translation>die neuere Version installieren</translation>
    </message>
    <message>
        <source>install the whole package of Lapwright</source>
        <translation>das ganze Paket von Lapwright installieren</translation>
    </message>
    <message>
        <source>is there</source>
        <translation>nachweisbar</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>it changes every %1 s, which no lap takes: not used as the number of the lap</source>
        <translation>sie wechselt alle %1 s, so kurz ist keine Runde: nicht als Nummer der Runde genutzt</translation>
    </message>
    <message>
        <source>it does not follow the positions as the %1 acceleration would: its axis points elsewhere, kept without a meaning</source>
        <translation>sie folgt den Positionen nicht, wie es die Beschleunigung %1 täte: ihre Achse zeigt woandershin, ohne Bedeutung behalten</translation>
    </message>
    <message>
        <source>it does not follow the speed between the positions</source>
        <translation>sie folgt nicht der Geschwindigkeit zwischen den Positionen</translation>
    </message>
    <message>
        <source>it fits the positions where one is %1 %2: taken so</source>
        <translation>sie passt zu den Positionen, wenn eins %1 %2 ist: so genommen</translation>
    </message>
    <message>
        <source>it reads %1 times the speed between the positions</source>
        <translation>sie zeigt das %1-Fache der Geschwindigkeit zwischen den Positionen</translation>
    </message>
    <message>
        <source>it would be more than the two cars allow</source>
        <translation>es wäre mehr, als die beiden Autos zulassen</translation>
    </message>
    <message>
        <source>its O is east</source>
        <translation>ihr O ist Osten</translation>
    </message>
    <message>
        <source>its O is west</source>
        <translation>ihr O ist Westen</translation>
    </message>
    <message>
        <source>its cells bear the letters of a %1</source>
        <translation>ihre Zellen tragen die Buchstaben einer Angabe „%1“</translation>
    </message>
    <message>
        <source>its corners are not those of %1</source>
        <translation>ihre Kurven sind nicht die von %1</translation>
    </message>
    <message>
        <source>its corners stay as the program finds them</source>
        <translation>ihre Kurven bleiben, wie das Programm sie findet</translation>
    </message>
    <message>
        <source>its laps are too short or too long to be compared</source>
        <translation>ihre Runden sind zu kurz oder zu lang zum Vergleichen</translation>
    </message>
    <message>
        <source>its laps are too short or too long to be laps</source>
        <translation>ihre Runden sind zu kurz oder zu lang, um Runden zu sein</translation>
    </message>
    <message>
        <source>its name does not say what it is, but it follows %1 in %2</source>
        <translation>ihr Name sagt nicht, was sie ist, aber sie folgt %1 in %2</translation>
    </message>
    <message>
        <source>its name does not say what it is: in %1 it may be the %2, which nothing else in the file confirms, kept without a meaning</source>
        <translation>ihr Name sagt nicht, was sie ist: in %1 kann sie „%2“ sein, was sonst nichts in der Datei bestätigt, ohne Bedeutung behalten</translation>
    </message>
    <message>
        <source>its name does not say what it is: in %1 it moves as the %2 does, kept without a meaning</source>
        <translation>ihr Name sagt nicht, was sie ist: in %1 bewegt sie sich wie „%2“, ohne Bedeutung behalten</translation>
    </message>
    <message>
        <source>its name does not say what it is: taken as the %1 in %2, because it follows %3</source>
        <translation>ihr Name sagt nicht, was sie ist: als %1 in %2 genommen, denn sie folgt dem, was hier steht: %3</translation>
    </message>
    <message>
        <source>its name is not known, but it moves as %1 does</source>
        <translation>ihr Name ist nicht bekannt, aber sie bewegt sich wie %1</translation>
    </message>
    <message>
        <source>its name is not known, but its readings advance evenly like a clock&apos;s</source>
        <translation>ihr Name ist nicht bekannt, aber ihre Werte laufen gleichmäßig wie eine Uhr</translation>
    </message>
    <message>
        <source>its name is not known, but its values look like a position</source>
        <translation>ihr Name ist nicht bekannt, aber ihre Werte sehen nach einer Position aus</translation>
    </message>
    <message>
        <source>its name is not known: kept as it is</source>
        <translation>ihr Name ist nicht bekannt: bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>its name says %1, but its cells cannot be read as that: not used</source>
        <translation>ihr Name sagt %1, aber ihre Zellen lassen sich nicht so lesen: nicht genutzt</translation>
    </message>
    <message>
        <source>its name says an axis and no direction: taken as the %1 one</source>
        <translation>ihr Name nennt eine Achse, aber keine Richtung: als Beschleunigung %1 genommen</translation>
    </message>
    <message>
        <source>its name says on which side of zero it lies</source>
        <translation>ihr Name sagt, auf welcher Seite der Null sie liegt</translation>
    </message>
    <message>
        <source>its sentences bear no checksum: damage in them cannot be found</source>
        <translation>ihre Sätze tragen keine Prüfsumme: Schäden darin lassen sich nicht erkennen</translation>
    </message>
    <message>
        <source>its unit does not measure its meaning</source>
        <translation>ihre Einheit passt nicht zu ihrer Bedeutung</translation>
    </message>
    <message>
        <source>its unit is written as %1, but it fits the positions in %2</source>
        <translation>als ihre Einheit steht %1 da, aber zu den Positionen passt sie in %2</translation>
    </message>
    <message>
        <source>its values go beyond 100, so that they are no percent: kept as written, without a meaning</source>
        <translation>ihre Werte gehen über 100, sie sind also keine Prozent: wie geschrieben behalten, ohne Bedeutung</translation>
    </message>
    <message>
        <source>its values look like degrees: taken as %1</source>
        <translation>ihre Werte sehen nach Grad aus: als %1 genommen</translation>
    </message>
    <message>
        <source>join of %1</source>
        <translation>Verbinden von %1</translation>
    </message>
    <message>
        <source>keep sessions with clean laps of that car in the book</source>
        <translation>Sessions mit sauberen Runden dieses Autos im Buch behalten</translation>
    </message>
    <message>
        <source>keeping of a prediction</source>
        <translation>Festhalten einer Vorhersage</translation>
    </message>
    <message>
        <source>kind of %1</source>
        <translation>Art von %1</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>lap %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>lap %1 leaves the track on which A is driven</source>
        <translation>Runde %1 verlässt die Strecke, auf der A gefahren ist</translation>
    </message>
    <message>
        <source>lap %1 leaves the track on which the two are compared</source>
        <translation>Runde %1 verlässt die Strecke, auf der die beiden verglichen werden</translation>
    </message>
    <message>
        <source>lap %1 of %2</source>
        <translation>Runde %1 von %2</translation>
    </message>
    <message>
        <source>lap %1 · %2</source>
        <translation>Runde %1 · %2</translation>
    </message>
    <message>
        <source>lap %1 · %2 (%3)</source>
        <translation>Runde %1 · %2 (%3)</translation>
    </message>
    <message>
        <source>lap %1, %2, %3</source>
        <translation>Runde %1, %2, %3</translation>
    </message>
    <message>
        <source>lap column of the file</source>
        <translation>Rundenspalte der Datei</translation>
    </message>
    <message>
        <source>lap number</source>
        <translation>Rundennummer</translation>
    </message>
    <message>
        <source>lap time</source>
        <translation>Rundenzeit</translation>
    </message>
    <message>
        <source>lap time against now, s</source>
        <translation>Rundenzeit gegenüber jetzt, s</translation>
    </message>
    <message>
        <source>lap, to be A</source>
        <translation>Runde, als A</translation>
    </message>
    <message>
        <source>lap, to be B</source>
        <translation>Runde, als B</translation>
    </message>
    <message>
        <source>laps behind A and B</source>
        <translation>Runden hinter A und B</translation>
    </message>
    <message>
        <source>lapwright laps lists them</source>
        <translation>lapwright laps listet sie auf</translation>
    </message>
    <message>
        <source>lateral</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>lateral acceleration</source>
        <translation>Querbeschleunigung</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breitengrad</translation>
    </message>
    <message>
        <source>latitude and longitude are the position: kept as it is</source>
        <translation>Breiten- und Längengrad sind die Position: bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>latitude and longitude fit the speed only when they are exchanged: taken so</source>
        <translation>Breiten- und Längengrad passen nur vertauscht zur Geschwindigkeit: so genommen</translation>
    </message>
    <message>
        <source>latitudes end at 90°: latitude and longitude are taken exchanged</source>
        <translation>Breitengrade enden bei 90°: Breiten- und Längengrad gelten als vertauscht</translation>
    </message>
    <message>
        <source>leads nowhere</source>
        <translation>führt nirgendwohin</translation>
    </message>
    <message>
        <source>learning has stopped</source>
        <translation>kein Fortschritt mehr</translation>
    </message>
    <message>
        <source>learning how both drivers use their cars</source>
        <translation>ermittelt wird, wie beide Fahrer ihre Autos nutzen</translation>
    </message>
    <message>
        <source>learning the noise</source>
        <translation>das Rauschen wird ermittelt</translation>
    </message>
    <message>
        <source>learning what the cars can do</source>
        <translation>ermittelt wird, was die Autos können</translation>
    </message>
    <message>
        <source>leave one of the two out</source>
        <translation>eine von beiden weglassen</translation>
    </message>
    <message>
        <source>leave the stills out</source>
        <translation>die Standbilder weglassen</translation>
    </message>
    <message>
        <source>leave the track file out: the program finds a timing line</source>
        <translation>die Streckendatei weglassen: das Programm findet eine Messlinie</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>nicht dabei</translation>
    </message>
    <message>
        <source>let the program save what can be read</source>
        <translation>das Programm retten lassen, was lesbar ist</translation>
    </message>
    <message>
        <source>letter E or W</source>
        <translation>Buchstabe E oder W</translation>
    </message>
    <message>
        <source>letter N or S</source>
        <translation>Buchstabe N oder S</translation>
    </message>
    <message>
        <source>letter, O is east</source>
        <translation>Buchstabe, O ist Ost</translation>
    </message>
    <message>
        <source>letter, O is west</source>
        <translation>Buchstabe, O ist West</translation>
    </message>
    <message>
        <source>letters beside the %1</source>
        <translation>Buchstaben neben „%1“</translation>
    </message>
    <message>
        <source>level</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>lift to brakes, s</source>
        <translation>vom Gas bis Bremse, s</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wohl</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Linie %1</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>Längengrad</translation>
    </message>
    <message>
        <source>longitudinal</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>longitudinal acceleration</source>
        <translation>Längsbeschleunigung</translation>
    </message>
    <message>
        <source>look at the book&apos;s list again</source>
        <translation>noch einmal in der Liste des Buchs nachsehen</translation>
    </message>
    <message>
        <source>look at the book&apos;s list for the names that it has</source>
        <translation>in der Liste des Buchs nach den Namen sehen, die es hat</translation>
    </message>
    <message>
        <source>look at the book&apos;s predictions</source>
        <translation>die Vorhersagen des Buchs ansehen</translation>
    </message>
    <message>
        <source>look at the permissions of the file</source>
        <translation>die Rechte der Datei prüfen</translation>
    </message>
    <message>
        <source>look for a missing comma, quote or brace</source>
        <translation>nach einem fehlenden Komma, Anführungszeichen oder einer fehlenden Klammer suchen</translation>
    </message>
    <message>
        <source>look for up to %1 at the exit of the corner before it</source>
        <translation>bis zu %1 am Ausgang der Kurve davor suchen</translation>
    </message>
    <message>
        <source>look whether it was moved</source>
        <translation>nachsehen, ob es verschoben wurde</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>loses %1</source>
        <translation>verliert %1</translation>
    </message>
    <message>
        <source>lost in shifts, s</source>
        <translation>beim Schalten verloren, s</translation>
    </message>
    <message>
        <source>make room on the disk and do it again</source>
        <translation>auf dem Datenträger Platz schaffen und es noch einmal tun</translation>
    </message>
    <message>
        <source>make room on the disk, or copy the book to another disk</source>
        <translation>auf dem Datenträger Platz schaffen, oder das Buch auf einen anderen kopieren</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>measured pressure, standard temperature</source>
        <translation>gemessener Druck, Normtemperatur</translation>
    </message>
    <message>
        <source>measured temperature and pressure</source>
        <translation>gemessene Temperatur und gemessener Druck</translation>
    </message>
    <message>
        <source>measured temperature, pressure and humidity</source>
        <translation>Temperatur, Druck und Feuchte gemessen</translation>
    </message>
    <message>
        <source>measured temperature, standard pressure</source>
        <translation>gemessene Temperatur, Normdruck</translation>
    </message>
    <message>
        <source>measuring both laps</source>
        <translation>beide Runden werden vermessen</translation>
    </message>
    <message>
        <source>measuring every lap</source>
        <translation>jede Runde wird vermessen</translation>
    </message>
    <message>
        <source>microseconds since 1970 by their size</source>
        <translation>der Größe nach Mikrosekunden seit 1970</translation>
    </message>
    <message>
        <source>milliseconds since 1970 by their size</source>
        <translation>der Größe nach Millisekunden seit 1970</translation>
    </message>
    <message>
        <source>min/top A</source>
        <translation>min/max A</translation>
    </message>
    <message>
        <source>minutes of arc by their size</source>
        <translation>der Größe nach Bogenminuten</translation>
    </message>
    <message>
        <source>missed: it was %1</source>
        <translation>nicht zugetroffen: es waren %1</translation>
    </message>
    <message>
        <source>move the braking point up to %1 later</source>
        <translation>den Bremspunkt bis zu %1 später setzen</translation>
    </message>
    <message>
        <source>move the pointer</source>
        <translation>Mauszeiger bewegen</translation>
    </message>
    <message>
        <source>move the timing line first</source>
        <translation>erst die Messlinie verschieben</translation>
    </message>
    <message>
        <source>move the timing line to move this end</source>
        <translation>die Messlinie verschieben, um dieses Ende zu verschieben</translation>
    </message>
    <message>
        <source>much slower than the session&apos;s other lap</source>
        <translation>viel langsamer als die andere Runde der Session</translation>
    </message>
    <message>
        <source>m² on a tonne</source>
        <translation>m² je Tonne</translation>
    </message>
    <message>
        <source>name %1</source>
        <translation>Namen %1</translation>
    </message>
    <message>
        <source>name a recipe</source>
        <translation>ein Rezept nennen</translation>
    </message>
    <message>
        <source>name a single file</source>
        <translation>eine einzelne Datei nennen</translation>
    </message>
    <message>
        <source>name a video file</source>
        <translation>eine Videodatei nennen</translation>
    </message>
    <message>
        <source>name another file</source>
        <translation>eine andere Datei nennen</translation>
    </message>
    <message>
        <source>name of a set</source>
        <translation>Name eines Satzes</translation>
    </message>
    <message>
        <source>name one of its corners as the comparison does</source>
        <translation>eine ihrer Kurven so nennen, wie der Vergleich es tut</translation>
    </message>
    <message>
        <source>name the other book&apos;s file</source>
        <translation>die Datei des anderen Buchs nennen</translation>
    </message>
    <message>
        <source>name what will be changed, as it will be written then</source>
        <translation>nennen, was geändert wird, so wie es dann geschrieben steht</translation>
    </message>
    <message>
        <source>named &quot;%1&quot;</source>
        <translation>heißt „%1“</translation>
    </message>
    <message>
        <source>named &quot;%1&quot;; no unit written, %2 fits %3 to %4 %</source>
        <translation>heißt „%1“; keine Einheit angegeben, %2 passt zu %3 auf %4 %</translation>
    </message>
    <message>
        <source>names of %1</source>
        <translation>Namen von %1</translation>
    </message>
    <message>
        <source>nanoseconds since 1970 by their size</source>
        <translation>der Größe nach Nanosekunden seit 1970</translation>
    </message>
    <message>
        <source>needs mass</source>
        <translation>braucht Masse</translation>
    </message>
    <message>
        <source>neither engine speed nor speed was recorded for the sound to follow</source>
        <translation>weder Drehzahl noch Geschwindigkeit wurden aufgezeichnet, denen der Ton folgen könnte</translation>
    </message>
    <message>
        <source>neither pedal, s</source>
        <translation>kein Pedal, s</translation>
    </message>
    <message>
        <source>neither positions nor a speed were recorded</source>
        <translation>weder Positionen noch eine Geschwindigkeit wurden aufgezeichnet</translation>
    </message>
    <message>
        <source>new name of %1</source>
        <translation>Neuen Namen von %1</translation>
    </message>
    <message>
        <source>next test, %1</source>
        <translation>nächster Test, %1</translation>
    </message>
    <message>
        <source>no RMC or ZDA sentence gives the date</source>
        <translation>kein RMC- oder ZDA-Satz gibt das Datum an</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>keine Änderung</translation>
    </message>
    <message>
        <source>no clean lap</source>
        <translation>keine saubere Runde</translation>
    </message>
    <message>
        <source>no corner could be found</source>
        <translation>es war keine Kurve zu finden</translation>
    </message>
    <message>
        <source>no engine is heard that follows the recording</source>
        <translation>es ist kein Motor zu hören, der der Aufzeichnung folgt</translation>
    </message>
    <message>
        <source>no lap</source>
        <translation>keine Runde</translation>
    </message>
    <message>
        <source>no lap follows the track all the way round</source>
        <translation>keine Runde folgt der Strecke ganz herum</translation>
    </message>
    <message>
        <source>no laps</source>
        <translation>keine Runden</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>keine Zeile</translation>
    </message>
    <message>
        <source>no line names the columns: their meanings are guessed by their values</source>
        <translation>keine Zeile benennt die Spalten: ihre Bedeutung wird aus ihren Werten vermutet</translation>
    </message>
    <message>
        <source>no longer where it was</source>
        <translation>nicht mehr am alten Ort</translation>
    </message>
    <message>
        <source>no mass was given: figures are per kilogram</source>
        <translation>keine Masse angegeben: Werte gelten je Kilogramm</translation>
    </message>
    <message>
        <source>no offset stands out at which the engine that is heard follows the recording</source>
        <translation>kein Versatz sticht heraus, bei dem der hörbare Motor der Aufzeichnung folgt</translation>
    </message>
    <message>
        <source>no offset stands out at which the picture turns as the car does</source>
        <translation>kein Versatz sticht heraus, bei dem sich das Bild wie das Auto dreht</translation>
    </message>
    <message>
        <source>no other clock stands in the file, and it advances evenly from row to row</source>
        <translation>in der Datei steht keine andere Uhr, und sie läuft gleichmäßig von Zeile zu Zeile</translation>
    </message>
    <message>
        <source>no place is passed twice in the same direction, so there are no laps</source>
        <translation>keine Stelle wird zweimal in derselben Richtung passiert, also gibt es keine Runden</translation>
    </message>
    <message>
        <source>no positions, %1 speed</source>
        <translation>keine Positionen, Geschwindigkeit mit %1</translation>
    </message>
    <message>
        <source>no positions, no speed</source>
        <translation>keine Positionen, keine Geschwindigkeit</translation>
    </message>
    <message>
        <source>no positions: distance is integrated speed, brought to the lap&apos;s length and aligned on cornering, so error bars are wider and the map is a sketch%1</source>
        <translation>keine Positionen: Die Distanz ist aufsummierte Geschwindigkeit, auf die Länge der Runde gebracht und an den Kurven ausgerichtet, daher sind die Fehlerbalken breiter und die Karte ist eine Skizze%1</translation>
    </message>
    <message>
        <source>no segment lies there</source>
        <translation>dort liegt kein Abschnitt</translation>
    </message>
    <message>
        <source>no session of %1 tells anything of the car: %2</source>
        <translation>keine Session von %1 sagt etwas über das Auto: %2</translation>
    </message>
    <message>
        <source>no session since has this setup on this track</source>
        <translation>keine Session seither hat dieses Setup auf dieser Strecke</translation>
    </message>
    <message>
        <source>no session&apos;s straights tell power and drag</source>
        <translation>die Geraden keiner Session verraten Leistung und Widerstand</translation>
    </message>
    <message>
        <source>no sound of %1: it plays slower than it was</source>
        <translation>kein Ton von %1: das Video läuft langsamer als gefahren</translation>
    </message>
    <message>
        <source>no sound of B: it is stretched; let both go on one clock to hear it</source>
        <translation>kein Ton von B: das Video ist gedehnt; beide nach einer Uhr laufen lassen, um ihn zu hören</translation>
    </message>
    <message>
        <source>no sound: %1</source>
        <translation>kein Ton: %1</translation>
    </message>
    <message>
        <source>no stretch at full throttle could be found</source>
        <translation>es war kein Stück mit Vollgas zu finden</translation>
    </message>
    <message>
        <source>no table of numbers is found in this file</source>
        <translation>in dieser Datei ist keine Zahlentabelle zu finden</translation>
    </message>
    <message>
        <source>no two sentences give a time and a position</source>
        <translation>keine zwei Sätze geben Zeit und Position an</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation>ohne Einheit</translation>
    </message>
    <message>
        <source>no unit is written; %1</source>
        <translation>es steht keine Einheit da; %1</translation>
    </message>
    <message>
        <source>no unit written, Pa by its values</source>
        <translation>keine Einheit angegeben, den Werten nach Pa</translation>
    </message>
    <message>
        <source>no unit written, bar by its values</source>
        <translation>keine Einheit angegeben, den Werten nach bar</translation>
    </message>
    <message>
        <source>no unit written, beyond 100</source>
        <translation>keine Einheit angegeben, über 100</translation>
    </message>
    <message>
        <source>no unit written, degrees by its values</source>
        <translation>keine Einheit angegeben, den Werten nach Grad</translation>
    </message>
    <message>
        <source>no unit written, g by its values</source>
        <translation>keine Einheit angegeben, den Werten nach g</translation>
    </message>
    <message>
        <source>no unit written, hPa by its values</source>
        <translation>keine Einheit angegeben, den Werten nach hPa</translation>
    </message>
    <message>
        <source>no unit written, kPa by its values</source>
        <translation>keine Einheit angegeben, den Werten nach kPa</translation>
    </message>
    <message>
        <source>no unit written, m/s² by its values</source>
        <translation>keine Einheit angegeben, den Werten nach m/s²</translation>
    </message>
    <message>
        <source>no unit written, mm by its values</source>
        <translation>keine Einheit angegeben, den Werten nach mm</translation>
    </message>
    <message>
        <source>no unit written, ms by its steps</source>
        <translation>keine Einheit angegeben, den Schritten nach ms</translation>
    </message>
    <message>
        <source>no unit written, ms by its values</source>
        <translation>keine Einheit angegeben, den Werten nach ms</translation>
    </message>
    <message>
        <source>no unit written, parts of one by its values</source>
        <translation>keine Einheit angegeben, den Werten nach Anteile von eins</translation>
    </message>
    <message>
        <source>no unit written, percent by its values</source>
        <translation>keine Einheit angegeben, den Werten nach Prozent</translation>
    </message>
    <message>
        <source>no unit written, rpm by its values</source>
        <translation>keine Einheit angegeben, den Werten nach rpm</translation>
    </message>
    <message>
        <source>no unit written, seconds by its values</source>
        <translation>keine Einheit angegeben, den Werten nach Sekunden</translation>
    </message>
    <message>
        <source>no unit written, taken as bar</source>
        <translation>keine Einheit angegeben, als bar genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as degrees</source>
        <translation>keine Einheit angegeben, als Grad genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as g</source>
        <translation>keine Einheit angegeben, als g genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as km/h</source>
        <translation>keine Einheit angegeben, als km/h genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as metres</source>
        <translation>keine Einheit angegeben, als Meter genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as ms</source>
        <translation>keine Einheit angegeben, als ms genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as percent</source>
        <translation>keine Einheit angegeben, als Prozent genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as psi</source>
        <translation>keine Einheit angegeben, als psi genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as rad/s</source>
        <translation>keine Einheit angegeben, als rad/s genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as rpm</source>
        <translation>keine Einheit angegeben, als rpm genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as seconds</source>
        <translation>keine Einheit angegeben, als Sekunden genommen</translation>
    </message>
    <message>
        <source>no unit written, taken as °C</source>
        <translation>keine Einheit angegeben, als °C genommen</translation>
    </message>
    <message>
        <source>no unit written, thousands a minute by its values</source>
        <translation>keine Einheit angegeben, den Werten nach Tausend je Minute</translation>
    </message>
    <message>
        <source>no unit written, thousandths of g by its values</source>
        <translation>keine Einheit angegeben, den Werten nach Tausendstel g</translation>
    </message>
    <message>
        <source>no unit written, °/s by its values</source>
        <translation>keine Einheit angegeben, den Werten nach °/s</translation>
    </message>
    <message>
        <source>no unit written, µs by its size</source>
        <translation>keine Einheit angegeben, der Größe nach µs</translation>
    </message>
    <message>
        <source>no unit written, µs by its steps</source>
        <translation>keine Einheit angegeben, den Schritten nach µs</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none has a clean lap.</source>
        <translation>keine hat eine saubere Runde.</translation>
    </message>
    <message>
        <source>north</source>
        <translation>Nord</translation>
    </message>
    <message>
        <source>not every session has the car&apos;s mass: areas and power are on a tonne</source>
        <translation>nicht jede Session hat die Masse des Autos: Flächen und Leistung gelten je Tonne</translation>
    </message>
    <message>
        <source>not every session says when it was driven: they are taken in the order given</source>
        <translation>nicht jede Session sagt, wann sie gefahren wurde: sie gelten in der angegebenen Reihenfolge</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not in step: move the offset until the picture is where the cursor is</source>
        <translation>nicht synchron: den Versatz ändern, bis das Bild am Cursor ist</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gelesen</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht genutzt</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>noch nicht: %1</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>note on lap %1</source>
        <translation>Notiz zu Runde %1</translation>
    </message>
    <message>
        <source>note on the session</source>
        <translation>Notiz zur Session</translation>
    </message>
    <message>
        <source>note that was being typed</source>
        <translation>Gerade getippte Notiz</translation>
    </message>
    <message>
        <source>nowhere in particular</source>
        <translation>nirgends besonders</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>number with its unit</source>
        <translation>Zahl mit ihrer Einheit</translation>
    </message>
    <message>
        <source>of it
%1</source>
        <translation>davon
%1</translation>
    </message>
    <message>
        <source>of it %1</source>
        <translation>davon %1</translation>
    </message>
    <message>
        <source>of it aero</source>
        <translation>davon Aero</translation>
    </message>
    <message>
        <source>offset of the video of %1</source>
        <translation>Versatz des Videos von %1</translation>
    </message>
    <message>
        <source>on the straights</source>
        <translation>auf den Geraden</translation>
    </message>
    <message>
        <source>one part of %1</source>
        <translation>ein Teil von %1</translation>
    </message>
    <message>
        <source>one session</source>
        <translation>eine Session</translation>
    </message>
    <message>
        <source>one session alone: what another setup changes is told from two on</source>
        <translation>nur eine Session: was ein anderes Setup ändert, zeigt sich erst ab zweien</translation>
    </message>
    <message>
        <source>one session has positions by latitude and longitude, the other none or in metres of its own</source>
        <translation>eine Session hat Positionen in Breiten- und Längengrad, die andere keine oder in eigenen Metern</translation>
    </message>
    <message>
        <source>only grip and downforce together can be told</source>
        <translation>nur Grip und Abtrieb zusammen sind feststellbar</translation>
    </message>
    <message>
        <source>open it again</source>
        <translation>es noch einmal öffnen</translation>
    </message>
    <message>
        <source>open it as it is</source>
        <translation>sie so öffnen, wie sie ist</translation>
    </message>
    <message>
        <source>open its file again</source>
        <translation>ihre Datei noch einmal öffnen</translation>
    </message>
    <message>
        <source>open the throttle up to %1 sooner</source>
        <translation>bis zu %1 früher ans Gas gehen</translation>
    </message>
    <message>
        <source>other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>out lap</source>
        <translation>Outlap</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>parting places</source>
        <translation>Positionen werden zerlegt</translation>
    </message>
    <message>
        <source>parts of a day by its steps</source>
        <translation>den Schritten nach Bruchteile eines Tages</translation>
    </message>
    <message>
        <source>parts of one</source>
        <translation>Teilen von eins</translation>
    </message>
    <message>
        <source>placing both laps on one line</source>
        <translation>beide Runden werden auf eine Linie gelegt</translation>
    </message>
    <message>
        <source>placing further laps</source>
        <translation>weitere Runden werden eingeordnet</translation>
    </message>
    <message>
        <source>placing laps by their cornering</source>
        <translation>Runden werden nach ihrer Kurvenfahrt eingeordnet</translation>
    </message>
    <message>
        <source>placing the positions</source>
        <translation>Positionen werden eingeordnet</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>position accuracy</source>
        <translation>Positionsgenauigkeit</translation>
    </message>
    <message>
        <source>position dilution</source>
        <translation>Genauigkeitsfaktor (DOP)</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>power at the wheels</source>
        <translation>Leistung am Rad</translation>
    </message>
    <message>
        <source>power at the wheels, W on a kg</source>
        <translation>Leistung am Rad, W je kg</translation>
    </message>
    <message>
        <source>power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it hardly changes</source>
        <translation>die Leistung ist das Mittel über die Drehzahlen der Geraden, %1 bis %2 1/min; in diesem Bereich ändert sie sich kaum</translation>
    </message>
    <message>
        <source>power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it runs from %3 to %4 % of that</source>
        <translation>die Leistung ist das Mittel über die Drehzahlen der Geraden, %1 bis %2 1/min; in diesem Bereich reicht sie von %3 bis %4 % davon</translation>
    </message>
    <message>
        <source>press a key here</source>
        <translation>hier Taste drücken</translation>
    </message>
    <message>
        <source>prior</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>program&apos;s word on %1</source>
        <translation>Urteil des Programms über %1</translation>
    </message>
    <message>
        <source>proposed by the program on a fast straight at steady speed</source>
        <translation>vom Programm vorgeschlagen, auf einer schnellen Geraden mit gleichmäßiger Geschwindigkeit</translation>
    </message>
    <message>
        <source>putting readings side by side</source>
        <translation>Ablesungen werden nebeneinandergestellt</translation>
    </message>
    <message>
        <source>putting the sessions together</source>
        <translation>Sessions werden zusammengeführt</translation>
    </message>
    <message>
        <source>quicker at the exit by %1</source>
        <translation>am Ausgang %1 schneller</translation>
    </message>
    <message>
        <source>quicker at the slowest point by %1</source>
        <translation>am langsamsten Punkt %1 schneller</translation>
    </message>
    <message>
        <source>quicker at the top by %1</source>
        <translation>%1 mehr Topspeed</translation>
    </message>
    <message>
        <source>quicker onto it by %1</source>
        <translation>am Anfang %1 schneller</translation>
    </message>
    <message>
        <source>quicker there in %1 % of all pairs of clean laps</source>
        <translation>dort in %1 % aller Paare sauberer Runden schneller</translation>
    </message>
    <message>
        <source>quickest clean lap %1, %2</source>
        <translation>schnellste saubere Runde %1, %2</translation>
    </message>
    <message>
        <source>radians fit the speed</source>
        <translation>Radiant passen zur Geschwindigkeit</translation>
    </message>
    <message>
        <source>read as %1</source>
        <translation>gelesen als %1</translation>
    </message>
    <message>
        <source>reading characters</source>
        <translation>Zeichen werden gelesen</translation>
    </message>
    <message>
        <source>reading from the book</source>
        <translation>aus dem Buch wird gelesen</translation>
    </message>
    <message>
        <source>reading sentences</source>
        <translation>Sätze werden gelesen</translation>
    </message>
    <message>
        <source>reading the sessions</source>
        <translation>Sessions werden gelesen</translation>
    </message>
    <message>
        <source>reading track points</source>
        <translation>Trackpunkte werden gelesen</translation>
    </message>
    <message>
        <source>rear spring rate</source>
        <translation>Federrate hinten</translation>
    </message>
    <message>
        <source>record GGA or RMC sentences with a fix</source>
        <translation>GGA- oder RMC-Sätze mit gültiger Position aufzeichnen</translation>
    </message>
    <message>
        <source>record more clean laps at full effort</source>
        <translation>mehr saubere Runden mit vollem Einsatz aufzeichnen</translation>
    </message>
    <message>
        <source>removal of %1</source>
        <translation>Entfernen von %1</translation>
    </message>
    <message>
        <source>removal of the pairing %1 against %2</source>
        <translation>Entfernen der Paarung %1 gegen %2</translation>
    </message>
    <message>
        <source>removed on %1</source>
        <translation>entfernt am %1</translation>
    </message>
    <message>
        <source>rename by hand</source>
        <translation>von Hand umbenennen</translation>
    </message>
    <message>
        <source>return of %1</source>
        <translation>Zurückholen von %1</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>right click</source>
        <translation>Rechtsklick</translation>
    </message>
    <message>
        <source>rows have more cells than there are names, as if commas were decimal marks and delimiters at once</source>
        <translation>Zeilen haben mehr Zellen, als es Namen gibt, als wären Kommas Dezimal- und Trennzeichen zugleich</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>s a lap</source>
        <translation>s pro Runde</translation>
    </message>
    <message>
        <source>said by %1</source>
        <translation>gesagt von %1</translation>
    </message>
    <message>
        <source>satellites</source>
        <translation>Satelliten</translation>
    </message>
    <message>
        <source>say what the time column is counted in</source>
        <translation>angeben, in welcher Einheit die Zeitspalte zählt</translation>
    </message>
    <message>
        <source>say which session was driven with it</source>
        <translation>sagen, welche Session damit gefahren wurde</translation>
    </message>
    <message>
        <source>seconds by its steps</source>
        <translation>den Schritten nach Sekunden</translation>
    </message>
    <message>
        <source>seconds since 1970 by their size</source>
        <translation>der Größe nach Sekunden seit 1970</translation>
    </message>
    <message>
        <source>see README.md for what a setup sheet holds</source>
        <translation>was ein Setup-Blatt enthält, steht in README.md</translation>
    </message>
    <message>
        <source>see README.md for what a track file holds</source>
        <translation>was eine Streckendatei enthält, steht in README.md</translation>
    </message>
    <message>
        <source>segment</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>separating the causes</source>
        <translation>Ursachen werden getrennt</translation>
    </message>
    <message>
        <source>session</source>
        <translation>Session</translation>
    </message>
    <message>
        <source>session of a prediction</source>
        <translation>Session einer Vorhersage</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>aussortiert</translation>
    </message>
    <message>
        <source>set aside by hand</source>
        <translation>von Hand aussortiert</translation>
    </message>
    <message>
        <source>set aside by hand: %1</source>
        <translation>von Hand aussortiert: %1</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>von Hand gesetzt</translation>
    </message>
    <message>
        <source>setting aside of %1</source>
        <translation>Aussortieren von %1</translation>
    </message>
    <message>
        <source>setup</source>
        <translation>Setup</translation>
    </message>
    <message>
        <source>setup of %1</source>
        <translation>Setup von %1</translation>
    </message>
    <message>
        <source>setup of A</source>
        <translation>Setup von A</translation>
    </message>
    <message>
        <source>setup of B</source>
        <translation>Setup von B</translation>
    </message>
    <message>
        <source>setups</source>
        <translation>Setups</translation>
    </message>
    <message>
        <source>shifts</source>
        <translation>Schaltvorgänge</translation>
    </message>
    <message>
        <source>shifts less often</source>
        <translation>schaltet seltener</translation>
    </message>
    <message>
        <source>sideways × %1</source>
        <translation>quer × %1</translation>
    </message>
    <message>
        <source>slower at the exit by %1</source>
        <translation>am Ausgang %1 langsamer</translation>
    </message>
    <message>
        <source>slower at the slowest point by %1</source>
        <translation>am langsamsten Punkt %1 langsamer</translation>
    </message>
    <message>
        <source>slower at the top by %1</source>
        <translation>%1 weniger Topspeed</translation>
    </message>
    <message>
        <source>slower onto it by %1</source>
        <translation>am Anfang %1 langsamer</translation>
    </message>
    <message>
        <source>slowest A · B, %1</source>
        <translation>Minimum A · B, %1</translation>
    </message>
    <message>
        <source>slowest point</source>
        <translation>langsamster Punkt</translation>
    </message>
    <message>
        <source>so it fits the motion</source>
        <translation>so passt es zur Bewegung</translation>
    </message>
    <message>
        <source>sound and picture disagree by %1 s: by the sound %2, by the picture %3</source>
        <translation>Ton und Bild weichen um %1 s voneinander ab: nach dem Ton %2, nach dem Bild %3</translation>
    </message>
    <message>
        <source>sound of %1</source>
        <translation>Ton von %1</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>speed and gear</source>
        <translation>Geschwindigkeit und Gang</translation>
    </message>
    <message>
        <source>speed of the car</source>
        <translation>Geschwindigkeit des Autos</translation>
    </message>
    <message>
        <source>speed, %1</source>
        <translation>Geschwindigkeit, %1</translation>
    </message>
    <message>
        <source>split of %1</source>
        <translation>Teilen von %1</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>Federn</translation>
    </message>
    <message>
        <source>standard atmosphere at the track&apos;s altitude</source>
        <translation>Normatmosphäre auf der Höhe der Strecke</translation>
    </message>
    <message>
        <source>standard atmosphere, altitude unknown</source>
        <translation>Normatmosphäre, Höhe unbekannt</translation>
    </message>
    <message>
        <source>standstill</source>
        <translation>Stillstand</translation>
    </message>
    <message>
        <source>start it with the book, or open the session&apos;s file</source>
        <translation>es mit dem Buch starten, oder die Datei der Session öffnen</translation>
    </message>
    <message>
        <source>start of %1</source>
        <translation>Anfang von %1</translation>
    </message>
    <message>
        <source>steering angle</source>
        <translation>Lenkwinkel</translation>
    </message>
    <message>
        <source>straight, %1</source>
        <translation>Gerade, %1</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>suspension front left</source>
        <translation>Federweg vorn links</translation>
    </message>
    <message>
        <source>suspension front right</source>
        <translation>Federweg vorn rechts</translation>
    </message>
    <message>
        <source>suspension rear left</source>
        <translation>Federweg hinten links</translation>
    </message>
    <message>
        <source>suspension rear right</source>
        <translation>Federweg hinten rechts</translation>
    </message>
    <message>
        <source>suspension travel does not follow the braking: it cannot be told which way it counts</source>
        <translation>der Federweg folgt dem Bremsen nicht: es ist nicht feststellbar, in welche Richtung er zählt</translation>
    </message>
    <message>
        <source>suspension travel was recorded on too few straights to tell the downforce</source>
        <translation>der Federweg wurde auf zu wenigen Geraden aufgezeichnet, um den Abtrieb zu zeigen</translation>
    </message>
    <message>
        <source>suspension travel was recorded: with mass and spring rates in the setup sheet it would tell the downforce</source>
        <translation>der Federweg wurde aufgezeichnet: mit Masse und Federraten im Setup-Blatt würde er den Abtrieb zeigen</translation>
    </message>
    <message>
        <source>swap of A and B</source>
        <translation>Tausch von A und B</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>take one of those that &quot;lapwright book table --help&quot; names</source>
        <translation>eine von denen nehmen, die „lapwright book table --help“ nennt</translation>
    </message>
    <message>
        <source>taken as %1 by its values</source>
        <translation>nach ihren Werten als %1 genommen</translation>
    </message>
    <message>
        <source>taken as %1, because it advances evenly</source>
        <translation>als %1 genommen, weil sie gleichmäßig fortschreitet</translation>
    </message>
    <message>
        <source>taken as minutes of arc</source>
        <translation>als Bogenminuten genommen</translation>
    </message>
    <message>
        <source>taken for %1, which its name does not say for sure</source>
        <translation>als %1 genommen, was ihr Name nicht sicher sagt</translation>
    </message>
    <message>
        <source>taking back of a prediction</source>
        <translation>Zurücknehmen einer Vorhersage</translation>
    </message>
    <message>
        <source>telling what the change did to the car</source>
        <translation>ermittelt wird, was die Änderung am Auto bewirkte</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 of them do not pass the timing line and %4 pass it more than once: these laps are merged or cut here</source>
        <translation>%1: %2 Runden markiert, aber %3 davon überqueren die Messlinie nicht und %4 mehr als einmal: diese Runden sind hier verschmolzen oder zerschnitten</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 of them do not pass the timing line: these laps are merged or cut here</source>
        <translation>%1: %2 Runden markiert, aber %3 davon überqueren die Messlinie nicht: diese Runden sind hier verschmolzen oder zerschnitten</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 pass it more than once: these laps are merged or cut here</source>
        <translation>%1: %2 Runden markiert, aber %3 überqueren die Messlinie mehr als einmal: diese Runden sind hier verschmolzen oder zerschnitten</translation>
    </message>
    <message>
        <source>the XML declares entities or nests too deeply</source>
        <translation>das XML deklariert Entities oder ist zu tief verschachtelt</translation>
    </message>
    <message>
        <source>the XML is broken here (%1): what comes behind is lost</source>
        <translation>das XML ist hier fehlerhaft (%1): was dahinter kommt, ist verloren</translation>
    </message>
    <message>
        <source>the book answers: %1</source>
        <translation>das Buch antwortet: %1</translation>
    </message>
    <message>
        <source>the book cannot be exported onto itself</source>
        <translation>das Buch kann nicht auf sich selbst exportiert werden</translation>
    </message>
    <message>
        <source>the book cannot be opened</source>
        <translation>das Buch kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>the book cannot be saved: there is no room or no right to write beside it</source>
        <translation>das Buch kann nicht gerettet werden: daneben ist kein Platz oder kein Recht zum Schreiben</translation>
    </message>
    <message>
        <source>the book cannot be written here: nothing was changed</source>
        <translation>das Buch kann hier nicht geschrieben werden: nichts wurde geändert</translation>
    </message>
    <message>
        <source>the book does not know its car and its track: give them names</source>
        <translation>das Buch kennt Auto und Strecke nicht: ihnen Namen geben</translation>
    </message>
    <message>
        <source>the book does not know the track of every session: there, corners are not held against those of other sessions</source>
        <translation>das Buch kennt nicht von jeder Session die Strecke: Dort werden Kurven nicht mit denen anderer Sessions verglichen</translation>
    </message>
    <message>
        <source>the book has no session of a car &quot;%1&quot;</source>
        <translation>das Buch hat keine Session eines Autos „%1“</translation>
    </message>
    <message>
        <source>the book is damaged</source>
        <translation>das Buch ist beschädigt</translation>
    </message>
    <message>
        <source>the book is damaged, and open in another window or program</source>
        <translation>das Buch ist beschädigt und in einem anderen Fenster oder Programm offen</translation>
    </message>
    <message>
        <source>the book was written by a newer version of the program</source>
        <translation>das Buch wurde von einer neueren Version des Programms geschrieben</translation>
    </message>
    <message>
        <source>the book was written by an older version of the program and cannot be brought up to date here, because it cannot be written</source>
        <translation>das Buch wurde von einer älteren Version des Programms geschrieben und kann hier nicht auf den neuesten Stand gebracht werden, weil es nicht beschreibbar ist</translation>
    </message>
    <message>
        <source>the book&apos;s last edits lie in a log beside it, which cannot be read where nothing can be written</source>
        <translation>die letzten Änderungen des Buchs liegen in einem Protokoll daneben, das sich nicht lesen lässt, wo nichts geschrieben werden kann</translation>
    </message>
    <message>
        <source>the braking of the car</source>
        <translation>das Bremsen des Autos</translation>
    </message>
    <message>
        <source>the camera&apos;s clock alone: a rough start</source>
        <translation>nur die Uhr der Kamera: ein grober Anfang</translation>
    </message>
    <message>
        <source>the car is not known well enough to be simulated</source>
        <translation>das Auto ist nicht gut genug bekannt, um simuliert zu werden</translation>
    </message>
    <message>
        <source>the change cannot be told from a drift of tyres or track</source>
        <translation>die Änderung ist nicht von einer Drift der Reifen oder der Strecke zu trennen</translation>
    </message>
    <message>
        <source>the clock is coarser than the rows: rows of one stamp were spread evenly</source>
        <translation>die Uhr ist gröber als die Zeilen: Zeilen mit einem Zeitstempel wurden gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>the clock is set by an hour here, as summer time begins or ends: the time goes on</source>
        <translation>die Uhr wird hier um eine Stunde gestellt, weil die Sommerzeit beginnt oder endet: die Zeit läuft weiter</translation>
    </message>
    <message>
        <source>the clock jumps %1 time: the recording is split there, nothing is joined across</source>
        <translation>die Uhr springt %1 Mal: die Aufzeichnung ist dort geteilt, nichts wird darüber hinweg verbunden</translation>
    </message>
    <message>
        <source>the clock jumps %1 times: the recording is split there, nothing is joined across</source>
        <translation>die Uhr springt %1 Mal: die Aufzeichnung ist dort geteilt, nichts wird darüber hinweg verbunden</translation>
    </message>
    <message>
        <source>the clock passes midnight here: the time goes on</source>
        <translation>die Uhr geht hier über Mitternacht: die Zeit läuft weiter</translation>
    </message>
    <message>
        <source>the clocks of camera and logger say another offset: one of them was not set</source>
        <translation>die Uhren von Kamera und Logger sagen einen anderen Versatz: eine davon war nicht gestellt</translation>
    </message>
    <message>
        <source>the corner that decides</source>
        <translation>die entscheidende Kurve</translation>
    </message>
    <message>
        <source>the disk did not read or write: nothing was changed in the book</source>
        <translation>der Datenträger hat nicht gelesen oder geschrieben: im Buch wurde nichts geändert</translation>
    </message>
    <message>
        <source>the disk is full or cannot be written: nothing was changed in the book</source>
        <translation>der Datenträger ist voll oder nicht beschreibbar: im Buch wurde nichts geändert</translation>
    </message>
    <message>
        <source>the distant picture turns as the car does</source>
        <translation>die Ferne im Bild dreht sich wie das Auto</translation>
    </message>
    <message>
        <source>the distant picture turns as the car does at the same offset</source>
        <translation>die Ferne im Bild dreht sich beim selben Versatz wie das Auto</translation>
    </message>
    <message>
        <source>the downforce area given</source>
        <translation>die angegebene Abtriebsfläche</translation>
    </message>
    <message>
        <source>the drag area given</source>
        <translation>die angegebene Widerstandsfläche</translation>
    </message>
    <message>
        <source>the engine in the sound follows the recorded engine speed</source>
        <translation>der Motor im Ton folgt der aufgezeichneten Drehzahl</translation>
    </message>
    <message>
        <source>the engine in the sound follows the speed within each gear</source>
        <translation>der Motor im Ton folgt in jedem Gang der Geschwindigkeit</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>die Datei kann nicht bis zum Ende gelesen werden</translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation>die Datei kann nicht geschrieben werden</translation>
    </message>
    <message>
        <source>the file holds more fixes than can be held</source>
        <translation>die Datei enthält mehr Positionsbestimmungen, als sich halten lassen</translation>
    </message>
    <message>
        <source>the file holds more points than can be held</source>
        <translation>die Datei enthält mehr Punkte, als sich halten lassen</translation>
    </message>
    <message>
        <source>the file holds no speed: it was derived from the positions, and is no finer than they are</source>
        <translation>die Datei enthält keine Geschwindigkeit: sie wurde aus den Positionen abgeleitet und ist nicht feiner als sie</translation>
    </message>
    <message>
        <source>the file is larger than 4 GiB</source>
        <translation>die Datei ist größer als 4 GiB</translation>
    </message>
    <message>
        <source>the file lists one reading a row: those of one time were put side by side, and lines are counted so</source>
        <translation>die Datei listet eine Ablesung je Zeile: die einer Zeit wurden nebeneinandergestellt, und Zeilen werden so gezählt</translation>
    </message>
    <message>
        <source>the fit of grip and downforce over the sessions has not settled</source>
        <translation>die Anpassung von Grip und Abtrieb über die Sessions hat sich nicht eingependelt</translation>
    </message>
    <message>
        <source>the fit of the corners has not settled</source>
        <translation>die Anpassung der Kurven hat sich nicht eingependelt</translation>
    </message>
    <message>
        <source>the fit of the corners of %1 has not settled</source>
        <translation>die Anpassung der Kurven von %1 hat sich nicht eingependelt</translation>
    </message>
    <message>
        <source>the fit of the straights has not settled</source>
        <translation>die Anpassung der Geraden hat sich nicht eingependelt</translation>
    </message>
    <message>
        <source>the gate needs &quot;latitude_deg&quot;, &quot;longitude_deg&quot; and &quot;heading_deg&quot; as numbers</source>
        <translation>„gate“ braucht „latitude_deg“, „longitude_deg“ und „heading_deg“ als Zahlen</translation>
    </message>
    <message>
        <source>the header stands again %1 time%2</source>
        <translation>die Kopfzeile steht noch %1 Mal da%2</translation>
    </message>
    <message>
        <source>the header stands again %1 times%2</source>
        <translation>die Kopfzeile steht noch %1 Mal da%2</translation>
    </message>
    <message>
        <source>the lap begins and ends at the timing line</source>
        <translation>die Runde beginnt und endet an der Messlinie</translation>
    </message>
    <message>
        <source>the laps allow more than a car can have</source>
        <translation>die Runden lassen mehr zu, als ein Auto haben kann</translation>
    </message>
    <message>
        <source>the laps do not tell the %1 of %2</source>
        <translation>die Runden sagen nichts über %1 von %2</translation>
    </message>
    <message>
        <source>the laps do not tell the downforce; it is mostly what such cars usually have</source>
        <translation>die Runden sagen nichts über den Abtrieb; er ist vor allem, was solche Autos üblicherweise haben</translation>
    </message>
    <message>
        <source>the laps do not tell the drag; it is mostly what such cars usually have</source>
        <translation>die Runden sagen nichts über den Widerstand; er ist vor allem, was solche Autos üblicherweise haben</translation>
    </message>
    <message>
        <source>the letter O can be east (German, Dutch) or west (French, Spanish, Italian): taken as east</source>
        <translation>der Buchstabe O kann Ost (deutsch, niederländisch) oder West (französisch, spanisch, italienisch) sein: als Ost genommen</translation>
    </message>
    <message>
        <source>the memory does not suffice for this file</source>
        <translation>der Speicher reicht für diese Datei nicht aus</translation>
    </message>
    <message>
        <source>the name is empty</source>
        <translation>der Name ist leer</translation>
    </message>
    <message>
        <source>the name is longer than %1 characters</source>
        <translation>der Name ist länger als %1 Zeichen</translation>
    </message>
    <message>
        <source>the new name is empty</source>
        <translation>der neue Name ist leer</translation>
    </message>
    <message>
        <source>the newest row stands first: the table is read from its end</source>
        <translation>die neueste Zeile steht zuerst: die Tabelle wird von ihrem Ende her gelesen</translation>
    </message>
    <message>
        <source>the noise of the sensors did not settle, the greater one is taken: %1</source>
        <translation>das Rauschen der Sensoren hat sich nicht eingependelt, das größere gilt: %1</translation>
    </message>
    <message>
        <source>the number of the lap goes down %1 time</source>
        <translation>die Nummer der Runde geht %1 Mal zurück</translation>
    </message>
    <message>
        <source>the number of the lap goes down %1 times</source>
        <translation>die Nummer der Runde geht %1 Mal zurück</translation>
    </message>
    <message>
        <source>the offset is being looked for</source>
        <translation>der Versatz wird gesucht</translation>
    </message>
    <message>
        <source>the picture does not turn as the car does at any offset</source>
        <translation>das Bild dreht sich bei keinem Versatz wie das Auto</translation>
    </message>
    <message>
        <source>the picture of the video is shorter than 40 seconds</source>
        <translation>das Bild des Videos ist kürzer als 40 Sekunden</translation>
    </message>
    <message>
        <source>the positions</source>
        <translation>die Positionen</translation>
    </message>
    <message>
        <source>the positions stand in rows of %1 Hz but change at about %2 Hz: repeated values are no measurements</source>
        <translation>die Positionen stehen in Zeilen mit %1 Hz, ändern sich aber mit etwa %2 Hz: wiederholte Werte sind keine Messungen</translation>
    </message>
    <message>
        <source>the power given</source>
        <translation>die angegebene Leistung</translation>
    </message>
    <message>
        <source>the prediction is not in the book (any more)</source>
        <translation>die Vorhersage ist nicht (mehr) im Buch</translation>
    </message>
    <message>
        <source>the recipe</source>
        <translation>das Rezept</translation>
    </message>
    <message>
        <source>the recipe &quot;%1&quot;</source>
        <translation>das Rezept „%1“</translation>
    </message>
    <message>
        <source>the recipe cannot be opened</source>
        <translation>das Rezept kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>the recipe cannot be read</source>
        <translation>das Rezept kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>the recipe cannot be removed</source>
        <translation>das Rezept kann nicht entfernt werden</translation>
    </message>
    <message>
        <source>the recorded speed does not follow the positions: it was not used</source>
        <translation>die aufgezeichnete Geschwindigkeit folgt den Positionen nicht: sie wurde nicht genutzt</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too high against the positions, as a wheel&apos;s does: its scale was estimated</source>
        <translation>die aufgezeichnete Geschwindigkeit ist gegenüber den Positionen %1 % zu hoch, wie die eines Rades: ihr Maßstab wurde geschätzt</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too high against the positions: it was not used</source>
        <translation>die aufgezeichnete Geschwindigkeit ist gegenüber den Positionen %1 % zu hoch: sie wurde nicht genutzt</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too low against the positions, as a wheel&apos;s does: its scale was estimated</source>
        <translation>die aufgezeichnete Geschwindigkeit ist gegenüber den Positionen %1 % zu niedrig, wie die eines Rades: ihr Maßstab wurde geschätzt</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too low against the positions: it was not used</source>
        <translation>die aufgezeichnete Geschwindigkeit ist gegenüber den Positionen %1 % zu niedrig: sie wurde nicht genutzt</translation>
    </message>
    <message>
        <source>the recording does not say when it was made</source>
        <translation>die Aufzeichnung sagt nicht, wann sie entstand</translation>
    </message>
    <message>
        <source>the recording has a hole in it</source>
        <translation>in der Aufzeichnung ist eine Lücke</translation>
    </message>
    <message>
        <source>the recording is too short</source>
        <translation>die Aufzeichnung ist zu kurz</translation>
    </message>
    <message>
        <source>the recording pauses %1 time for more than a minute: nothing is joined across</source>
        <translation>die Aufzeichnung pausiert %1 Mal länger als eine Minute: nichts wird darüber hinweg verbunden</translation>
    </message>
    <message>
        <source>the recording pauses %1 times for more than a minute: nothing is joined across</source>
        <translation>die Aufzeichnung pausiert %1 Mal länger als eine Minute: nichts wird darüber hinweg verbunden</translation>
    </message>
    <message>
        <source>the session has no positions that follow each other</source>
        <translation>die Session hat keine Positionen, die aufeinander folgen</translation>
    </message>
    <message>
        <source>the sessions are taken in the order of their start times, not as given</source>
        <translation>die Sessions gelten in der Reihenfolge ihrer Startzeiten, nicht wie angegeben</translation>
    </message>
    <message>
        <source>the sessions do not tell what it does to this</source>
        <translation>die Sessions sagen nicht, wie es sich hierauf auswirkt</translation>
    </message>
    <message>
        <source>the sessions named were not driven by this driver with this car on this track after the prediction was kept, or have no date</source>
        <translation>die genannten Sessions wurden nicht nach dem Festhalten der Vorhersage von diesem Fahrer mit diesem Auto auf dieser Strecke gefahren, oder sie haben kein Datum</translation>
    </message>
    <message>
        <source>the sessions were driven at different tracks</source>
        <translation>die Sessions wurden auf verschiedenen Strecken gefahren</translation>
    </message>
    <message>
        <source>the setup sheet cannot be opened</source>
        <translation>das Setup-Blatt lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>the setup sheet is not a JSON object</source>
        <translation>das Setup-Blatt ist kein JSON-Objekt</translation>
    </message>
    <message>
        <source>the setup sheet says &quot;%1&quot; already</source>
        <translation>das Setup-Blatt sagt schon „%1“</translation>
    </message>
    <message>
        <source>the setup sheets of the baseline differ: %1</source>
        <translation>die Setup-Blätter der Basis unterscheiden sich: %1</translation>
    </message>
    <message>
        <source>the setup sheets show no change from %1 to %2</source>
        <translation>die Setup-Blätter zeigen keine Änderung von %1 zu %2</translation>
    </message>
    <message>
        <source>the sheet</source>
        <translation>das Blatt</translation>
    </message>
    <message>
        <source>the simulated car of %1 is %2 s too quick here, whatever the driver does</source>
        <translation>das simulierte Auto von %1 ist hier %2 s zu schnell, was der Fahrer auch tut</translation>
    </message>
    <message>
        <source>the simulated car of %1 is %2 s too slow here, whatever the driver does</source>
        <translation>das simulierte Auto von %1 ist hier %2 s zu langsam, was der Fahrer auch tut</translation>
    </message>
    <message>
        <source>the simulated cars miss the measured times by %1 s a lap</source>
        <translation>die simulierten Autos verfehlen die gemessenen Zeiten um %1 s pro Runde</translation>
    </message>
    <message>
        <source>the simulation of some draws came to nothing</source>
        <translation>die Simulation einiger Ziehungen führte zu nichts</translation>
    </message>
    <message>
        <source>the sound of the video is shorter than 40 seconds</source>
        <translation>der Ton des Videos ist kürzer als 40 Sekunden</translation>
    </message>
    <message>
        <source>the spring rates do not fit what braking does to the suspension: check their units</source>
        <translation>die Federraten passen nicht zu dem, was das Bremsen mit der Federung macht: ihre Einheiten prüfen</translation>
    </message>
    <message>
        <source>the suspension&apos;s downforce area</source>
        <translation>die Abtriebsfläche aus dem Federweg</translation>
    </message>
    <message>
        <source>the table has more than 4096 columns</source>
        <translation>die Tabelle hat mehr als 4096 Spalten</translation>
    </message>
    <message>
        <source>the table has more values than can be held</source>
        <translation>die Tabelle hat mehr Werte, als sich halten lassen</translation>
    </message>
    <message>
        <source>the time starts again with each lap: the laps are put end to end, each %1 s after the last row of the one before</source>
        <translation>die Zeit beginnt mit jeder Runde von vorn: die Runden sind aneinandergereiht, jede %1 s nach der letzten Zeile der Runde davor</translation>
    </message>
    <message>
        <source>the timing line is never crossed</source>
        <translation>die Messlinie wird nie überfahren</translation>
    </message>
    <message>
        <source>the timing line lies there already</source>
        <translation>die Messlinie liegt schon dort</translation>
    </message>
    <message>
        <source>the track file cannot be opened</source>
        <translation>die Streckendatei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>the track file has no &quot;gate&quot;</source>
        <translation>die Streckendatei hat kein „gate“</translation>
    </message>
    <message>
        <source>the track file is not a JSON object</source>
        <translation>die Streckendatei ist kein JSON-Objekt</translation>
    </message>
    <message>
        <source>the track file tells its timing line by latitude and longitude, the recording&apos;s positions are metres of its own</source>
        <translation>die Streckendatei gibt ihre Messlinie in Breiten- und Längengrad an, die Positionen der Aufzeichnung sind Meter eigener Art</translation>
    </message>
    <message>
        <source>the track has no corner of the name %1</source>
        <translation>die Strecke hat keine Kurve mit dem Namen %1</translation>
    </message>
    <message>
        <source>the track has no corner to show stills of</source>
        <translation>die Strecke hat keine Kurve für Standbilder</translation>
    </message>
    <message>
        <source>the track has no name</source>
        <translation>die Strecke hat keinen Namen</translation>
    </message>
    <message>
        <source>the track&apos;s name is too long</source>
        <translation>der Name der Strecke ist zu lang</translation>
    </message>
    <message>
        <source>the track&apos;s record</source>
        <translation>Angaben zur Strecke</translation>
    </message>
    <message>
        <source>the unit %1 is not known, taken as %2</source>
        <translation>die Einheit %1 ist nicht bekannt, als %2 genommen</translation>
    </message>
    <message>
        <source>the unit %1 is not known, values are kept as written</source>
        <translation>die Einheit %1 ist nicht bekannt, Werte bleiben wie geschrieben</translation>
    </message>
    <message>
        <source>the video begins %1 before the recording&apos;s start</source>
        <translation>das Video beginnt %1 vor der Aufzeichnung</translation>
    </message>
    <message>
        <source>the video begins %1 behind the recording&apos;s start</source>
        <translation>das Video beginnt %1 nach der Aufzeichnung</translation>
    </message>
    <message>
        <source>the video cannot be decoded</source>
        <translation>das Video kann nicht dekodiert werden</translation>
    </message>
    <message>
        <source>the video cannot be read</source>
        <translation>das Video kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>the video cannot be wound back</source>
        <translation>das Video lässt sich nicht zurückspulen</translation>
    </message>
    <message>
        <source>the video does not say how long it is, so that nothing can be joined to it</source>
        <translation>das Video sagt nicht, wie lang es ist, daher kann nichts daran angefügt werden</translation>
    </message>
    <message>
        <source>the video does not say when it was taken</source>
        <translation>das Video sagt nicht, wann es aufgenommen wurde</translation>
    </message>
    <message>
        <source>the video has no sound</source>
        <translation>das Video hat keinen Ton</translation>
    </message>
    <message>
        <source>the video holds no frame that can be decoded</source>
        <translation>das Video enthält kein Bild, das sich dekodieren lässt</translation>
    </message>
    <message>
        <source>the video holds none</source>
        <translation>das Video enthält keinen</translation>
    </message>
    <message>
        <source>the video is empty</source>
        <translation>das Video ist leer</translation>
    </message>
    <message>
        <source>the video is no longer there, nor beside the recording</source>
        <translation>das Video ist nicht mehr dort, auch nicht neben der Aufzeichnung</translation>
    </message>
    <message>
        <source>the video is not there</source>
        <translation>das Video ist nicht da</translation>
    </message>
    <message>
        <source>the video may not be read</source>
        <translation>das Video darf nicht gelesen werden</translation>
    </message>
    <message>
        <source>the video was cut off before its index was written</source>
        <translation>das Video wurde abgeschnitten, bevor sein Index geschrieben war</translation>
    </message>
    <message>
        <source>the video was taken at another time of the day</source>
        <translation>das Video wurde zu einer anderen Tageszeit aufgenommen</translation>
    </message>
    <message>
        <source>the video was taken on another day</source>
        <translation>das Video wurde an einem anderen Tag aufgenommen</translation>
    </message>
    <message>
        <source>the work was cancelled</source>
        <translation>die Arbeit wurde abgebrochen</translation>
    </message>
    <message>
        <source>there is a segment &quot;%1&quot; already</source>
        <translation>es gibt schon einen Abschnitt „%1“</translation>
    </message>
    <message>
        <source>there is no clean lap</source>
        <translation>es gibt keine saubere Runde</translation>
    </message>
    <message>
        <source>there is no clean lap to learn the car from</source>
        <translation>es gibt keine saubere Runde, an der das Auto kennenzulernen wäre</translation>
    </message>
    <message>
        <source>there is no flying lap in it</source>
        <translation>sie enthält keine fliegende Runde</translation>
    </message>
    <message>
        <source>there is no flying lap in it that follows the track</source>
        <translation>sie enthält keine fliegende Runde, die der Strecke folgt</translation>
    </message>
    <message>
        <source>there is no flying lap with the number %1</source>
        <translation>es gibt keine fliegende Runde mit der Nummer %1</translation>
    </message>
    <message>
        <source>there is no picture in this file</source>
        <translation>in dieser Datei ist kein Bild</translation>
    </message>
    <message>
        <source>there is no such book</source>
        <translation>es gibt kein solches Buch</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <source>there is no such segment</source>
        <translation>es gibt keinen solchen Abschnitt</translation>
    </message>
    <message>
        <source>there is no whole lap in it</source>
        <translation>sie enthält keine ganze Runde</translation>
    </message>
    <message>
        <source>there is not enough memory for the video</source>
        <translation>für das Video ist nicht genug Speicher da</translation>
    </message>
    <message>
        <source>these are two cars, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>das sind zwei Autos, „%1“ und „%2“</translation>
    </message>
    <message>
        <source>these are two drivers, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>das sind zwei Fahrer, „%1“ und „%2“</translation>
    </message>
    <message>
        <source>these are two tracks, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>das sind zwei Strecken, „%1“ und „%2“</translation>
    </message>
    <message>
        <source>this belongs to something that is not in the book (any more)</source>
        <translation>dies gehört zu etwas, das nicht (mehr) im Buch ist</translation>
    </message>
    <message>
        <source>this comparison</source>
        <translation>dieser Vergleich</translation>
    </message>
    <message>
        <source>this file has no columns to choose</source>
        <translation>diese Datei hat keine wählbaren Spalten</translation>
    </message>
    <message>
        <source>this file is no book</source>
        <translation>diese Datei ist kein Buch</translation>
    </message>
    <message>
        <source>this installation has no video decoder</source>
        <translation>diese Installation hat keinen Video-Decoder</translation>
    </message>
    <message>
        <source>this is a folder or a device</source>
        <translation>das ist ein Ordner oder ein Gerät</translation>
    </message>
    <message>
        <source>this is no JSON document</source>
        <translation>das ist kein JSON-Dokument</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>this is no file of data</source>
        <translation>das ist keine Datei mit Daten</translation>
    </message>
    <message>
        <source>this is no import recipe of version 1</source>
        <translation>das ist kein Importrezept der Version 1</translation>
    </message>
    <message>
        <source>this is no video of a kind that can be read</source>
        <translation>das ist kein Video einer lesbaren Art</translation>
    </message>
    <message>
        <source>this is not valid JSON</source>
        <translation>das ist kein gültiges JSON</translation>
    </message>
    <message>
        <source>this is the book itself</source>
        <translation>das ist das Buch selbst</translation>
    </message>
    <message>
        <source>this is too large to be a recipe</source>
        <translation>das ist zu groß für ein Rezept</translation>
    </message>
    <message>
        <source>this is too long for a setup sheet</source>
        <translation>das ist zu lang für ein Setup-Blatt</translation>
    </message>
    <message>
        <source>this is too long for a track file</source>
        <translation>das ist zu lang für eine Streckendatei</translation>
    </message>
    <message>
        <source>this machine has no device for it</source>
        <translation>dieser Rechner hat kein Gerät dafür</translation>
    </message>
    <message>
        <source>this pairing is not in the book (any more)</source>
        <translation>diese Paarung ist nicht (mehr) im Buch</translation>
    </message>
    <message>
        <source>this prediction is kept already, and what was said first counts</source>
        <translation>diese Vorhersage ist schon festgehalten, und es zählt, was zuerst gesagt wurde</translation>
    </message>
    <message>
        <source>this session is in the book, and the window has none</source>
        <translation>diese Session ist im Buch, und das Fenster hat keines</translation>
    </message>
    <message>
        <source>this session is not in the book</source>
        <translation>diese Session ist nicht im Buch</translation>
    </message>
    <message>
        <source>this session is not in the book (any more)</source>
        <translation>diese Session ist nicht (mehr) im Buch</translation>
    </message>
    <message>
        <source>this session never drives the lap of %1</source>
        <translation>diese Session fährt nie die Runde von %1</translation>
    </message>
    <message>
        <source>this track has no place on the earth: the files have no positions in latitude and longitude</source>
        <translation>diese Strecke hat keinen Ort auf der Erde: die Dateien haben keine Positionen in Breiten- und Längengrad</translation>
    </message>
    <message>
        <source>three laps, three with one step of the wing, three as before, held together as a trial</source>
        <translation>drei Runden wie jetzt, drei mit einer Flügelstufe mehr oder weniger, drei wieder wie jetzt, als Versuch verglichen</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>throttle opens, %1 after slowest</source>
        <translation>geht ans Gas, %1 nach Minimum</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>time won</source>
        <translation>Zeitgewinn</translation>
    </message>
    <message>
        <source>times are written without a time zone: taken as UTC</source>
        <translation>Zeiten sind ohne Zeitzone geschrieben: als UTC genommen</translation>
    </message>
    <message>
        <source>timing line</source>
        <translation>Messlinie</translation>
    </message>
    <message>
        <source>timing line: %1</source>
        <translation>Messlinie: %1</translation>
    </message>
    <message>
        <source>timing the laps</source>
        <translation>Runden werden gestoppt</translation>
    </message>
    <message>
        <source>too few corners are driven at the limit with and without the change</source>
        <translation>zu wenige Kurven werden mit und ohne die Änderung am Limit gefahren</translation>
    </message>
    <message>
        <source>too few straights are driven at full throttle with and without the change</source>
        <translation>zu wenige Geraden werden mit und ohne die Änderung mit Vollgas gefahren</translation>
    </message>
    <message>
        <source>too long to be a lap</source>
        <translation>zu lang für eine Runde</translation>
    </message>
    <message>
        <source>too short to be a lap</source>
        <translation>zu kurz für eine Runde</translation>
    </message>
    <message>
        <source>too slow to be a lap</source>
        <translation>zu langsam für eine Runde</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>max %1</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>track?</source>
        <translation>Strecke?</translation>
    </message>
    <message>
        <source>traffic, a mistake, a flag; Return without a word does too</source>
        <translation>Verkehr, ein Fehler, eine Flagge; oder leer lassen und Eingabetaste</translation>
    </message>
    <message>
        <source>turn-in</source>
        <translation>Einlenken</translation>
    </message>
    <message>
        <source>tyre</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>tyre grip</source>
        <translation>Reifengrip</translation>
    </message>
    <message>
        <source>tyre grip and downforce</source>
        <translation>Reifengrip und Abtrieb</translation>
    </message>
    <message>
        <source>tyres used</source>
        <translation>Reifen genutzt</translation>
    </message>
    <message>
        <source>tyres used in corners</source>
        <translation>in Kurven genutzte Reifen</translation>
    </message>
    <message>
        <source>uncertainty of the mass</source>
        <translation>Unsicherheit der Masse</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>unit %1 as its cells write</source>
        <translation>Einheit %1, wie ihre Zellen sie schreiben</translation>
    </message>
    <message>
        <source>unit %1 as written</source>
        <translation>Einheit %1 wie angegeben</translation>
    </message>
    <message>
        <source>units that are not written were told from the values: %1</source>
        <translation>nicht geschriebene Einheiten wurden aus den Werten erschlossen: %1</translation>
    </message>
    <message>
        <source>until 2026-05-16</source>
        <translation>bis 2026-05-16</translation>
    </message>
    <message>
        <source>vertical acceleration</source>
        <translation>Vertikalbeschleunigung</translation>
    </message>
    <message>
        <source>weigh the car with driver and fuel as driven, and enter the mass, good to 3 kg</source>
        <translation>das Auto mit Fahrer und Kraftstoff wie gefahren wiegen und die Masse eintragen, auf 3 kg genau</translation>
    </message>
    <message>
        <source>what %1 does to it cannot be told</source>
        <translation>was %1 dazu beiträgt, ist nicht feststellbar</translation>
    </message>
    <message>
        <source>what %1 is worth cannot be told: %2</source>
        <translation>was %1 bringt, ist nicht feststellbar: %2</translation>
    </message>
    <message>
        <source>what driver and rest are worth cannot be told: %1</source>
        <translation>was Fahrer und Rest bringen, ist nicht feststellbar: %1</translation>
    </message>
    <message>
        <source>what if</source>
        <translation>was wenn</translation>
    </message>
    <message>
        <source>what the change does to the lap was not told</source>
        <translation>was die Änderung mit der Runde macht, war nicht zu sagen</translation>
    </message>
    <message>
        <source>what the change is worth on this track, to %1 s a lap</source>
        <translation>was die Änderung auf dieser Strecke bringt, auf %1 s pro Runde genau</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>Mausrad</translation>
    </message>
    <message>
        <source>wheel speed</source>
        <translation>Radgeschwindigkeit</translation>
    </message>
    <message>
        <source>wheel speed reads %1 % high against the speed over the ground</source>
        <translation>die Radgeschwindigkeit zeigt %1 % mehr als die Geschwindigkeit über Grund</translation>
    </message>
    <message>
        <source>wheel speed reads %1 % low against the speed over the ground</source>
        <translation>die Radgeschwindigkeit zeigt %1 % weniger als die Geschwindigkeit über Grund</translation>
    </message>
    <message>
        <source>where on the track the corners of %1 lap lie did not settle: placed by distance alone, less surely</source>
        <translation>wo auf der Strecke die Kurven von %1 Runde liegen, hat sich nicht eingependelt: nur nach Distanz eingeordnet, weniger sicher</translation>
    </message>
    <message>
        <source>where on the track the corners of %1 laps lie did not settle: placed by distance alone, less surely</source>
        <translation>wo auf der Strecke die Kurven von %1 Runden liegen, hat sich nicht eingependelt: nur nach Distanz eingeordnet, weniger sicher</translation>
    </message>
    <message>
        <source>whole lap</source>
        <translation>ganze Runde</translation>
    </message>
    <message>
        <source>whole parts of a degree by their size</source>
        <translation>der Größe nach ganze Teile eines Grads</translation>
    </message>
    <message>
        <source>whole ten-millionths of a degree by their size</source>
        <translation>der Größe nach ganze Zehnmillionstel Grad</translation>
    </message>
    <message>
        <source>with the change</source>
        <translation>mit der Änderung</translation>
    </message>
    <message>
        <source>without positions laps come from a lap column or a beacon, and it shows no whole lap</source>
        <translation>ohne Positionen kommen Runden aus einer Rundenspalte oder einem Beacon, und hier zeigt sich keine ganze Runde</translation>
    </message>
    <message>
        <source>without positions there is too little speed to follow the car by</source>
        <translation>ohne Positionen reicht die aufgezeichnete Geschwindigkeit nicht, um dem Auto zu folgen</translation>
    </message>
    <message>
        <source>without the mass of both cars power, drag and downforce count per kilogram, and mass is part of them</source>
        <translation>ohne die Masse beider Autos zählen Leistung, Widerstand und Abtrieb je Kilogramm, und die Masse ist ein Teil davon</translation>
    </message>
    <message>
        <source>without the mass what the setup sheet knows of downforce, drag and power does not count</source>
        <translation>ohne die Masse zählt nicht, was das Setup-Blatt über Abtrieb, Widerstand und Leistung weiß</translation>
    </message>
    <message>
        <source>won by, s</source>
        <translation>gewinnt, s</translation>
    </message>
    <message>
        <source>write a note here by the Edit menu</source>
        <translation>hier über das Menü „Bearbeiten“ eine Notiz schreiben</translation>
    </message>
    <message>
        <source>write it as &quot;wing angle=7 deg&quot;</source>
        <translation>so schreiben: „wing angle=7 deg“</translation>
    </message>
    <message>
        <source>write it as 2026-05-16</source>
        <translation>in der Form 2026-05-16 schreiben</translation>
    </message>
    <message>
        <source>write it as 2026-05-16 10:20</source>
        <translation>in der Form 2026-05-16 10:20 schreiben</translation>
    </message>
    <message>
        <source>write it as 2026-05-16 10:20, with 0 to 23 hours</source>
        <translation>in der Form 2026-05-16 10:20 schreiben, mit 0 bis 23 Stunden</translation>
    </message>
    <message>
        <source>write the recipe again from the column dialog</source>
        <translation>das Rezept aus dem Spaltenfenster neu schreiben</translation>
    </message>
    <message>
        <source>written like the %1</source>
        <translation>geschrieben wie „%1“</translation>
    </message>
    <message>
        <source>yaw rate</source>
        <translation>Gierrate</translation>
    </message>
    <message>
        <source>± is half of the 95 % interval. “prior”: the data could not tell, a stated assumption did; “setup”: from the setup sheet; all else the data decided.</source>
        <translation>± ist die Hälfte des 95-%-Intervalls. „Annahme“: Die Daten ließen es offen, eine genannte Annahme entschied; „Setup“: aus dem Setup-Blatt; alles andere entschieden die Daten.</translation>
    </message>
    <message>
        <source>≈ taken from the motion, because the pedal was not recorded</source>
        <translation>≈ aus der Bewegung, weil das Pedal nicht aufgezeichnet wurde</translation>
    </message>
</context>
</TS>
