<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR">
<context>
    <name>Lapwright</name>
    <message>
        <source>
Note of A: %1</source>
        <translation>
Note de A : %1</translation>
    </message>
    <message>
        <source>
Note of B: %1</source>
        <translation>
Note de B : %1</translation>
    </message>
    <message>
        <source>
Note: %1</source>
        <translation>
Note : %1</translation>
    </message>
    <message>
        <source> %1 without a date stand last, in the table only; F2 in the list gives them one.</source>
        <translation> %1 sessions sans date viennent en dernier, dans le tableau seulement ; F2 dans la liste permet de les dater.</translation>
    </message>
    <message>
        <source> (derived)</source>
        <translation> (déduit)</translation>
    </message>
    <message>
        <source> Nothing had to be mended.</source>
        <translation> Rien n’a dû être réparé.</translation>
    </message>
    <message>
        <source> Of %1 the books said different things: &quot;lapwright book conflicts&quot; shows and settles them.</source>
        <translation> Sur %1, les carnets disent des choses différentes : « lapwright book conflicts » les montre et les règle.</translation>
    </message>
    <message>
        <source> Of the known ones %1 that were removed: the list of removed sessions brings them back.</source>
        <translation> Parmi celles déjà connues, %1 : la liste des sessions retirées les rétablit.</translation>
    </message>
    <message>
        <source> One without a date stands last, in the table only; F2 in the list gives it one.</source>
        <translation> Une session sans date vient en dernier, dans le tableau seulement ; F2 dans la liste permet de la dater.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source> at first, %1 at last</source>
        <translation> au début, %1 à la fin</translation>
    </message>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source> · video: %1</source>
        <translation> · vidéo : %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has this key now, and will lose it.</source>
        <translation>« %1 » a cette touche et va la perdre.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is taken as the %2</source>
        <translation>« %1 » est pris pour : %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is taken as the %2, this one kept without a meaning</source>
        <translation>« %1 » est prise comme %2, celle-ci gardée sans signification</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too long</source>
        <translation>« %1 » est trop long</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a number from %2 to %3</source>
        <translation>« %1 » doit être un nombre de %2 à %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be text</source>
        <translation>« %1 » doit être du texte</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no item of a setup with its value</source>
        <translation>« %1 » ne nomme pas un réglage avec sa valeur</translation>
    </message>
    <message>
        <source>&quot;Try next&quot; then speaks to the driver of %1 alone; the book remembers which car is yours. Press again for both drivers.</source>
        <translation>« À essayer » ne s’adresse alors qu’au pilote de %1 ; le carnet retient quelle voiture est la mienne. Appuyer encore pour les deux pilotes.</translation>
    </message>
    <message>
        <source>&quot;columns&quot; is missing</source>
        <translation>« columns » manque</translation>
    </message>
    <message>
        <source>&quot;conditions&quot; must be an object</source>
        <translation>« conditions » doit être un objet</translation>
    </message>
    <message>
        <source>&quot;decimal_mark&quot; is neither point nor comma</source>
        <translation>« decimal_mark » n’est ni un point ni une virgule</translation>
    </message>
    <message>
        <source>&quot;delimiter&quot; is neither one character nor &quot;blanks&quot;</source>
        <translation>« delimiter » n’est ni un seul caractère ni « blanks »</translation>
    </message>
    <message>
        <source>&quot;form&quot; is not known</source>
        <translation>« form » n’est pas connu</translation>
    </message>
    <message>
        <source>&quot;half_width_m&quot; is not a number from 1 to 60: a wider timing line would be crossed by other parts of the track</source>
        <translation>« half_width_m » n’est pas un nombre de 1 à 60 : une ligne de chrono plus large serait franchie par d’autres parties du circuit</translation>
    </message>
    <message>
        <source>&quot;items&quot; are too many</source>
        <translation>il y a trop de « items »</translation>
    </message>
    <message>
        <source>&quot;items&quot; must be a list</source>
        <translation>« items » doit être une liste</translation>
    </message>
    <message>
        <source>&quot;known&quot; must be an object</source>
        <translation>« known » doit être un objet</translation>
    </message>
    <message>
        <source>&quot;length_m&quot; is not a number from 0 to 50000</source>
        <translation>« length_m » n’est pas un nombre de 0 à 50000</translation>
    </message>
    <message>
        <source>&quot;meaning&quot; is not known</source>
        <translation>« meaning » n’est pas connu</translation>
    </message>
    <message>
        <source>&quot;row_rate_hz&quot; is outside 0.1 to 10,000</source>
        <translation>« row_rate_hz » est hors de 0,1 à 10000</translation>
    </message>
    <message>
        <source>&quot;scale&quot; is no usable number</source>
        <translation>« scale » n’est pas un nombre utilisable</translation>
    </message>
    <message>
        <source>&quot;segments&quot; has more than 500 entries, too many to tell anything of one</source>
        <translation>« segments » a plus de 500 entrées, trop pour dire quoi que ce soit de l’une</translation>
    </message>
    <message>
        <source>&quot;segments&quot; is not a list</source>
        <translation>« segments » n’est pas une liste</translation>
    </message>
    <message>
        <source>&quot;springs&quot; must be an object</source>
        <translation>« springs » doit être un objet</translation>
    </message>
    <message>
        <source>&quot;springs&quot; need both &quot;front_n_per_mm&quot; and &quot;rear_n_per_mm&quot;</source>
        <translation>« springs » a besoin de « front_n_per_mm » et de « rear_n_per_mm »</translation>
    </message>
    <message>
        <source>&quot;turns_m&quot; is not a list of rising distances on the lap</source>
        <translation>« turns_m » n’est pas une liste de distances croissantes sur le tour</translation>
    </message>
    <message>
        <source>&quot;unit&quot; is not known</source>
        <translation>« unit » n’est pas connu</translation>
    </message>
    <message>
        <source>&quot;use&quot; is not known</source>
        <translation>« use » n’est pas connu</translation>
    </message>
    <message>
        <source>%1  lap %2 · %3 · %4 s to A · %5</source>
        <translation>%1  tour %2 · %3 · %4 s à A · %5</translation>
    </message>
    <message>
        <source>%1 %2 %3, %4 UTC</source>
        <translation>%1 %2 %3, %4 UTC</translation>
    </message>
    <message>
        <source>%1 %2 later</source>
        <translation>%1 %2 plus tard</translation>
    </message>
    <message>
        <source>%1 %2 less</source>
        <translation>%1 %2 de moins</translation>
    </message>
    <message>
        <source>%1 %2 sooner</source>
        <translation>%1 %2 plus tôt</translation>
    </message>
    <message>
        <source>%1 (%2 s off its best)</source>
        <translation>%1 (à %2 s du meilleur)</translation>
    </message>
    <message>
        <source>%1 (A alone)</source>
        <translation>%1 (A seul)</translation>
    </message>
    <message>
        <source>%1 (B alone)</source>
        <translation>%1 (B seul)</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 Mo</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 contre %2</translation>
    </message>
    <message>
        <source>%1 ahead %2</source>
        <translation>%1 devant de %2</translation>
    </message>
    <message>
        <source>%1 ahead by %2</source>
        <translation>%1 devant de %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 et %2 autres</translation>
    </message>
    <message>
        <source>%1 and %2 were driven at the same time, so not with one car</source>
        <translation>%1 et %2 ont été roulées en même temps, donc pas avec une seule voiture</translation>
    </message>
    <message>
        <source>%1 and %2 were saved; the damaged book is kept as %3.</source>
        <translation>Récupéré : %1 et %2 ; le carnet abîmé est gardé sous le nom %3.</translation>
    </message>
    <message>
        <source>%1 are all plausible: taken as %2</source>
        <translation>%1 sont tous plausibles : pris comme %2</translation>
    </message>
    <message>
        <source>%1 are among those</source>
        <translation>%1 avaient été retirées</translation>
    </message>
    <message>
        <source>%1 are both plausible: taken as %2</source>
        <translation>%1 sont tous deux plausibles : pris comme %2</translation>
    </message>
    <message>
        <source>%1 are probably worth %2 a lap to %3, most %4</source>
        <translation>%1 : probablement %2 par tour au profit de %3, surtout %4</translation>
    </message>
    <message>
        <source>%1 are worth %2 a lap to %3, most %4</source>
        <translation>%1 : %2 par tour au profit de %3, surtout %4</translation>
    </message>
    <message>
        <source>%1 as a first step</source>
        <translation>%1, comme premier pas</translation>
    </message>
    <message>
        <source>%1 at %2, %3</source>
        <translation>%1 à %2, %3</translation>
    </message>
    <message>
        <source>%1 by its own line</source>
        <translation>%1 à sa propre ligne</translation>
    </message>
    <message>
        <source>%1 bytes of zeros at the end were left out: the logger may have lost power</source>
        <translation>%1 octets nuls à la fin ont été omis : l’enregistreur a pu perdre l’alimentation</translation>
    </message>
    <message>
        <source>%1 came from the friend&apos;s book, %2; with %3 and %4.</source>
        <translation>Du carnet de l’ami : %1, %2 ; avec %3 et %4.</translation>
    </message>
    <message>
        <source>%1 came out of the book: open its file to change what its columns mean.</source>
        <translation>%1 vient du carnet : ouvrir son fichier pour changer le sens de ses colonnes.</translation>
    </message>
    <message>
        <source>%1 cannot be told</source>
        <translation>%1 indéterminable</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>impossible d’écrire %1 : %2</translation>
    </message>
    <message>
        <source>%1 cell is not readable and was left out%2</source>
        <translation>%1 cellule n’est pas lisible et a été omise%2</translation>
    </message>
    <message>
        <source>%1 cell of %2 taken as &quot;no value&quot; and left out</source>
        <translation>%1 cellule à %2 prise comme « pas de valeur » et omise</translation>
    </message>
    <message>
        <source>%1 cells are not readable and were left out%2</source>
        <translation>%1 cellules ne sont pas lisibles et ont été omises%2</translation>
    </message>
    <message>
        <source>%1 cells of %2 taken as &quot;no value&quot; and left out</source>
        <translation>%1 cellules à %2 prises comme « pas de valeur » et omises</translation>
    </message>
    <message>
        <source>%1 characters of UTF-16 are cut or damaged</source>
        <translation>%1 caractères en UTF-16 sont coupés ou abîmés</translation>
    </message>
    <message>
        <source>%1 clean laps without the change, %2 with it; a drift of %3 s from lap to lap is taken out</source>
        <translation>%1 tours propres sans le changement, %2 avec ; une dérive de %3 s d’un tour à l’autre est retirée</translation>
    </message>
    <message>
        <source>%1 columns by %2: %3</source>
        <translation>%1 colonnes, %2 : %3</translation>
    </message>
    <message>
        <source>%1 costs %2, most %3</source>
        <translation>le facteur %1 coûte %2, surtout %3</translation>
    </message>
    <message>
        <source>%1 earns %2, most %3</source>
        <translation>le facteur %1 rapporte %2, surtout %3</translation>
    </message>
    <message>
        <source>%1 edits are not in the book</source>
        <translation>%1 modifications hors carnet</translation>
    </message>
    <message>
        <source>%1 edits are not in the book yet.</source>
        <translation>%1 modifications ne sont pas encore dans le carnet.</translation>
    </message>
    <message>
        <source>%1 fields</source>
        <translation>%1 champs</translation>
    </message>
    <message>
        <source>%1 fit the speed</source>
        <translation>%1 vont avec la vitesse</translation>
    </message>
    <message>
        <source>%1 fits the positions</source>
        <translation>%1 va avec les positions</translation>
    </message>
    <message>
        <source>%1 fits the speed between the positions</source>
        <translation>%1 va avec la vitesse entre les positions</translation>
    </message>
    <message>
        <source>%1 gap in %2 and what was sampled with it, the longest of %3 s at %4 s</source>
        <translation>%1 trou dans %2 et ce qui a été échantillonné avec, le plus long de %3 s à %4 s</translation>
    </message>
    <message>
        <source>%1 gaps in %2 and what was sampled with it, the longest of %3 s at %4 s</source>
        <translation>%1 trous dans %2 et ce qui a été échantillonné avec, le plus long de %3 s à %4 s</translation>
    </message>
    <message>
        <source>%1 gets quicker all the way to %2, worth %3 there.</source>
        <translation>%1 est de plus en plus rapide jusqu’à %2 d’appui, soit %3 à ce point.</translation>
    </message>
    <message>
        <source>%1 has no positions: aligned on cornering, so its error bars are wider%2</source>
        <translation>%1 n’a pas de positions : calée sur les virages, ses barres d’erreur sont donc plus larges%2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 is %2&apos;s.</source>
        <translation>%1 est à %2.</translation>
    </message>
    <message>
        <source>%1 is a setup sheet, but no single open session is of its driver and car, or has its name: open that session first, or read the sheet under Setup on the Causes page.</source>
        <translation>%1 est une fiche de réglages, mais il n’y a pas exactement une session ouverte avec son pilote et sa voiture, ou avec son nom : ouvrir d’abord cette session, ou lire la fiche sous Réglages à la page Causes.</translation>
    </message>
    <message>
        <source>%1 is also quicker on the straights, worth %2 s in all.</source>
        <translation>%1 est aussi plus rapide en ligne droite, %2 s au total.</translation>
    </message>
    <message>
        <source>%1 is left out: %2</source>
        <translation>%1 est exclu : %2</translation>
    </message>
    <message>
        <source>%1 is probably %2&apos;s.</source>
        <translation>%1 est probablement à %2.</translation>
    </message>
    <message>
        <source>%1 is probably quicker in %2, by %3.</source>
        <translation>%1 est probablement plus rapide dans %2, de %3.</translation>
    </message>
    <message>
        <source>%1 is probably worth %2 a lap to %3, most %4</source>
        <translation>%1 : probablement %2 par tour au profit de %3, surtout %4</translation>
    </message>
    <message>
        <source>%1 is probably worth %2 a lap to %3, most %4.</source>
        <translation>%1 : probablement %2 par tour au profit de %3, surtout %4.</translation>
    </message>
    <message>
        <source>%1 is quicker in %2, by %3.</source>
        <translation>%1 est plus rapide dans %2, de %3.</translation>
    </message>
    <message>
        <source>%1 is quicker on the straights, worth %2 s in all.</source>
        <translation>%1 est plus rapide en ligne droite, %2 s au total.</translation>
    </message>
    <message>
        <source>%1 is quicker there in %2 of %3 clean laps</source>
        <translation>%1 y est plus rapide dans %2 tours propres sur %3</translation>
    </message>
    <message>
        <source>%1 is quicker there in all %2 clean laps</source>
        <translation>%1 y est plus rapide à chacun de ses %2 tours propres</translation>
    </message>
    <message>
        <source>%1 is quickest with downforce %2 (%3 to %4), worth %5.</source>
        <translation>%1 est le plus rapide avec %2 d’appui (%3 à %4), ce qui vaut %5.</translation>
    </message>
    <message>
        <source>%1 is taken at full throttle: it bounds the grip from below only</source>
        <translation>%1 se passe à pleins gaz : cela ne borne le grip que par le bas</translation>
    </message>
    <message>
        <source>%1 is there twice</source>
        <translation>%1 y est deux fois</translation>
    </message>
    <message>
        <source>%1 is worth %2 a lap to %3, most %4</source>
        <translation>%1 : %2 par tour au profit de %3, surtout %4</translation>
    </message>
    <message>
        <source>%1 is worth %2 a lap to %3, most %4.</source>
        <translation>%1 : %2 par tour au profit de %3, surtout %4.</translation>
    </message>
    <message>
        <source>%1 is written, but by its values %2 is plausible too: taken as written</source>
        <translation>%1 est écrit, mais d’après ses valeurs %2 est plausible aussi : pris comme écrit</translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation>%1 est enregistré.</translation>
    </message>
    <message>
        <source>%1 kept pairings</source>
        <translation>%1 paires gardées</translation>
    </message>
    <message>
        <source>%1 lap %2</source>
        <translation>%1 tour %2</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 de moins</translation>
    </message>
    <message>
        <source>%1 line between the names and the readings is none of either and was left out%2</source>
        <translation>%1 ligne entre les noms et les mesures n’est ni l’un ni l’autre et a été écartée%2</translation>
    </message>
    <message>
        <source>%1 line holds no values and was left out%2</source>
        <translation>%1 ligne ne contient aucune valeur et a été omise%2</translation>
    </message>
    <message>
        <source>%1 line is a comment and left out%2</source>
        <translation>%1 ligne est un commentaire et a été omise%2</translation>
    </message>
    <message>
        <source>%1 line is no sentence and was left out%2</source>
        <translation>%1 ligne n’est pas une trame et a été omise%2</translation>
    </message>
    <message>
        <source>%1 lines are comments and left out%2</source>
        <translation>%1 lignes sont des commentaires et ont été omises%2</translation>
    </message>
    <message>
        <source>%1 lines are no sentences and were left out%2</source>
        <translation>%1 lignes ne sont pas des trames et ont été omises%2</translation>
    </message>
    <message>
        <source>%1 lines between the names and the readings are none of either and were left out%2</source>
        <translation>%1 lignes entre les noms et les mesures ne sont ni l’un ni l’autre et ont été écartées%2</translation>
    </message>
    <message>
        <source>%1 lines hold no values and were left out%2</source>
        <translation>%1 lignes ne contiennent aucune valeur et ont été omises%2</translation>
    </message>
    <message>
        <source>%1 looks to be taken below the limit</source>
        <translation>%1 semble se passer sous la limite</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 de plus</translation>
    </message>
    <message>
        <source>%1 m² of drag for each m² of downforce</source>
        <translation>%1 m² de traînée par m² d’appui</translation>
    </message>
    <message>
        <source>%1 new sessions</source>
        <translation>%1 nouvelles sessions</translation>
    </message>
    <message>
        <source>%1 no fit</source>
        <translation>%1 hors modèle</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 notes</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 of %2 judged predictions held: %3 to %4 % of such predictions do (95 % interval), and 95 % should.</source>
        <translation>%1 prévisions jugées sur %2 se sont vérifiées : %3 à %4 % de telles prévisions se vérifient (intervalle à 95 %), et 95 % le devraient.</translation>
    </message>
    <message>
        <source>%1 of %2 · </source>
        <translation>%1 sur %2 · </translation>
    </message>
    <message>
        <source>%1 pairings</source>
        <translation>%1 paires</translation>
    </message>
    <message>
        <source>%1 pairings, the last one first. Return opens one with both its sessions, Delete takes it out.</source>
        <translation>%1 paires, la dernière d’abord. Entrée en ouvre une avec ses deux sessions, Suppr la retire.</translation>
    </message>
    <message>
        <source>%1 position beyond 90° of latitude or 360° of longitude, or not readable: left out%2</source>
        <translation>%1 position au-delà de 90° de latitude ou de 360° de longitude, ou illisible : omise%2</translation>
    </message>
    <message>
        <source>%1 position of exactly 0, 0, as receivers write without a fix: left out%2</source>
        <translation>%1 position d’exactement 0, 0, comme en écrivent les récepteurs sans satellites : omise%2</translation>
    </message>
    <message>
        <source>%1 position with only one of latitude and longitude: left out%2</source>
        <translation>%1 position avec la latitude ou la longitude seule : omise%2</translation>
    </message>
    <message>
        <source>%1 positions</source>
        <translation>positions à %1</translation>
    </message>
    <message>
        <source>%1 positions beyond 90° of latitude or 360° of longitude, or not readable: left out%2</source>
        <translation>%1 positions au-delà de 90° de latitude ou de 360° de longitude, ou illisibles : omises%2</translation>
    </message>
    <message>
        <source>%1 positions of exactly 0, 0, as receivers write without a fix: left out%2</source>
        <translation>%1 positions d’exactement 0, 0, comme en écrivent les récepteurs sans satellites : omises%2</translation>
    </message>
    <message>
        <source>%1 positions only repeat another while the car drove on: they were left out</source>
        <translation>%1 positions ne font qu’en répéter une autre pendant que la voiture roulait : elles ont été omises</translation>
    </message>
    <message>
        <source>%1 positions with only one of latitude and longitude: left out%2</source>
        <translation>%1 positions avec la latitude ou la longitude seule : omises%2</translation>
    </message>
    <message>
        <source>%1 predicted: %2 a lap</source>
        <translation>%1 prévu : %2 par tour</translation>
    </message>
    <message>
        <source>%1 removed sessions can be brought back.</source>
        <translation>%1 sessions retirées peuvent être rétablies.</translation>
    </message>
    <message>
        <source>%1 row has no readable time and was left out</source>
        <translation>%1 ligne n’a pas de temps lisible et a été omise</translation>
    </message>
    <message>
        <source>%1 row has too few or too many cells and was left out%2</source>
        <translation>%1 ligne a trop peu ou trop de cellules et a été omise%2</translation>
    </message>
    <message>
        <source>%1 row is out of order in time and was left out</source>
        <translation>%1 ligne n’est pas à sa place dans le temps et a été omise</translation>
    </message>
    <message>
        <source>%1 row repeats the time of the row before and was left out</source>
        <translation>%1 ligne répète le temps de la ligne d’avant et a été omise</translation>
    </message>
    <message>
        <source>%1 rows are out of order in time and were left out</source>
        <translation>%1 lignes ne sont pas à leur place dans le temps et ont été omises</translation>
    </message>
    <message>
        <source>%1 rows have no readable time and were left out</source>
        <translation>%1 lignes n’ont pas de temps lisible et ont été omises</translation>
    </message>
    <message>
        <source>%1 rows have too few or too many cells and were left out%2</source>
        <translation>%1 lignes ont trop peu ou trop de cellules et ont été omises%2</translation>
    </message>
    <message>
        <source>%1 rows repeat the time of the row before and were left out</source>
        <translation>%1 lignes répètent le temps de la ligne d’avant et ont été omises</translation>
    </message>
    <message>
        <source>%1 s a lap</source>
        <translation>%1 s par tour</translation>
    </message>
    <message>
        <source>%1 s less coasting</source>
        <translation>%1 s de roue libre en moins</translation>
    </message>
    <message>
        <source>%1 s lost near %2 m</source>
        <translation>%1 s perdues vers %2 m</translation>
    </message>
    <message>
        <source>%1 s more coasting</source>
        <translation>%1 s de roue libre en plus</translation>
    </message>
    <message>
        <source>%1 s slower than the usual lap</source>
        <translation>plus lent de %1 s que le tour habituel</translation>
    </message>
    <message>
        <source>%1 s, 95 % between %2 and %3</source>
        <translation>%1 s, 95 % entre %2 et %3</translation>
    </message>
    <message>
        <source>%1 sentence has a wrong checksum and was left out%2</source>
        <translation>%1 trame a une somme de contrôle fausse et a été omise%2</translation>
    </message>
    <message>
        <source>%1 sentence was written without a fix</source>
        <translation>%1 trame a été écrite sans position valide</translation>
    </message>
    <message>
        <source>%1 sentences have a wrong checksum and were left out%2</source>
        <translation>%1 trames ont une somme de contrôle fausse et ont été omises%2</translation>
    </message>
    <message>
        <source>%1 sentences were written without a fix</source>
        <translation>%1 trames ont été écrites sans position valide</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 sessions</translation>
    </message>
    <message>
        <source>%1 sessions were timed at another line of the track than the rest, so that lap times differ a little without a reason: %2.</source>
        <translation>%1 sessions ont été chronométrées à une autre ligne du circuit que le reste, si bien que les temps au tour diffèrent un peu sans raison : %2.</translation>
    </message>
    <message>
        <source>%1 speed of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2</source>
        <translation>%1 vitesse d’exactement 0 entre des lignes d’une voiture qui roule, comme en écrivent les récepteurs sans satellites : omise%2</translation>
    </message>
    <message>
        <source>%1 speeds of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2</source>
        <translation>%1 vitesses d’exactement 0 entre des lignes d’une voiture qui roule, comme en écrivent les récepteurs sans satellites : omises%2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 to %2 s at %3 m²</source>
        <translation>%1 à %2 s pour %3 m²</translation>
    </message>
    <message>
        <source>%1 together are probably worth %2 s a lap, most %3</source>
        <translation>%1 ensemble : probablement %2 s par tour, surtout %3</translation>
    </message>
    <message>
        <source>%1 together are worth %2 s a lap, most %3</source>
        <translation>%1 ensemble : %2 s par tour, surtout %3</translation>
    </message>
    <message>
        <source>%1 was made for files of another shape: only columns of the same name follow it</source>
        <translation>%1 a été faite pour des fichiers d’une autre forme : seules les colonnes du même nom la suivent</translation>
    </message>
    <message>
        <source>%1 were known already</source>
        <translation>%1 déjà connues</translation>
    </message>
    <message>
        <source>%1 would be shorter than %2</source>
        <translation>%1 serait plus court que %2</translation>
    </message>
    <message>
        <source>%1 would be worth %2 a lap to %3</source>
        <translation>%1 : gain de %2 par tour pour %3</translation>
    </message>
    <message>
        <source>%1 would cost %2 a lap to %3</source>
        <translation>%1 coûterait %2 par tour à %3</translation>
    </message>
    <message>
        <source>%1&apos;s aero is probably worth %2 a lap: %3; %4.</source>
        <translation>L’aéro de %1 vaut probablement %2 par tour : %3 ; %4.</translation>
    </message>
    <message>
        <source>%1&apos;s aero is worth %2 a lap: %3; %4.</source>
        <translation>L’aéro de %1 vaut %2 par tour : %3 ; %4.</translation>
    </message>
    <message>
        <source>%1&apos;s lap has no such moment</source>
        <translation>le tour de %1 n’a pas de tel moment</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 with figures; </source>
        <translation>%1, %2 avec des chiffres ; </translation>
    </message>
    <message>
        <source>%1, %2, and the laps&apos; %3 disagree by %4 standard errors</source>
        <translation>%1, %2, et la valeur des tours, %3, diffèrent de %4 erreurs types</translation>
    </message>
    <message>
        <source>%1, %2: </source>
        <translation>%1, %2 : </translation>
    </message>
    <message>
        <source>%1, as it became known</source>
        <translation>%1, au fil de ce qu’on en sait</translation>
    </message>
    <message>
        <source>%1, as on another of your clean laps</source>
        <translation>%1, comme dans un autre de ses tours propres</translation>
    </message>
    <message>
        <source>%1, as the book knows it</source>
        <translation>%1, tel que le carnet le connaît</translation>
    </message>
    <message>
        <source>%1, but is read as a person has said</source>
        <translation>%1, mais est lue comme une personne l’a dit</translation>
    </message>
    <message>
        <source>%1, longest %2 s at %3 s</source>
        <translation>%1, le plus long de %2 s à %3 s</translation>
    </message>
    <message>
        <source>%1, my car: %2, lap %3, %4, %5 clean laps</source>
        <translation>%1, ma voiture : %2, tour %3, %4, %5 tours propres</translation>
    </message>
    <message>
        <source>%1, or chance</source>
        <translation>%1, ou hasard</translation>
    </message>
    <message>
        <source>%1, out at %2 against %3</source>
        <translation>%1, sortie à %2 contre %3</translation>
    </message>
    <message>
        <source>%1, the largest part in %2 (%3).</source>
        <translation>%1, la plus grande part dans %2 (%3).</translation>
    </message>
    <message>
        <source>%1, where you judge it safe: %2.</source>
        <translation>%1, là où c’est jugé sûr : %2.</translation>
    </message>
    <message>
        <source>%1, written %2</source>
        <translation>%1, écrit le %2</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2 clean laps say little about what repeats</source>
        <translation>%1 : %2 tours propres disent peu de ce qui se répète</translation>
    </message>
    <message>
        <source>%1: %2 laps, %3 to %4 s</source>
        <translation>%1 : %2 tours, de %3 à %4 s</translation>
    </message>
    <message>
        <source>%1: %2 laps, now %3, best %4, still to be won %5 s</source>
        <translation>%1 : %2 tours, actuel %3, meilleur %4, reste à gagner %5 s</translation>
    </message>
    <message>
        <source>%1: %2 points between %3 and %4</source>
        <translation>%1 : %2 points entre %3 et %4</translation>
    </message>
    <message>
        <source>%1: %2 sessions from %3 to %4, between %5 and %6</source>
        <translation>%1 : %2 sessions du %3 au %4, entre %5 et %6</translation>
    </message>
    <message>
        <source>%1: %2, lap %3, %4, %5 clean laps</source>
        <translation>%1 : %2, tour %3, %4, %5 tours propres</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>%1: A %2, B %3%4.</source>
        <translation>%1 : A %2, B %3%4.</translation>
    </message>
    <message>
        <source>%1: cannot be told</source>
        <translation>%1 : indéterminable</translation>
    </message>
    <message>
        <source>%1: from a file…</source>
        <translation>%1 : depuis un fichier…</translation>
    </message>
    <message>
        <source>%1: how far its map lies off the other did not settle: its laps are placed less surely</source>
        <translation>%1 : l’écart entre sa carte et l’autre ne s’est pas stabilisé : ses tours sont placés moins sûrement</translation>
    </message>
    <message>
        <source>%1: how much downforce is best cannot be told: %2.</source>
        <translation>%1 : le meilleur appui est indéterminable : %2.</translation>
    </message>
    <message>
        <source>%1: lap %2 is not clean</source>
        <translation>%1 : le tour %2 n’est pas propre</translation>
    </message>
    <message>
        <source>%1: lap %2 is not clean: %3</source>
        <translation>%1 : le tour %2 n’est pas propre : %3</translation>
    </message>
    <message>
        <source>%1: lap %2, %3, %4</source>
        <translation>%1 : tour %2, %3, %4</translation>
    </message>
    <message>
        <source>%1: lap time against now from %2 up to %3</source>
        <translation>%1 : temps au tour par rapport à l’actuel, de %2 jusqu’à %3</translation>
    </message>
    <message>
        <source>%1: no lap yet</source>
        <translation>%1 : pas encore de tour</translation>
    </message>
    <message>
        <source>%1: not used as a speed</source>
        <translation>%1 : non utilisée comme vitesse</translation>
    </message>
    <message>
        <source>%1: taken as %2</source>
        <translation>%1 : pris comme %2</translation>
    </message>
    <message>
        <source>%1: the uncertainty of this recording is not known</source>
        <translation>%1 : l’incertitude de cet enregistrement n’est pas connue</translation>
    </message>
    <message>
        <source>%1: this book can only be read here. Notes that you write stay in your settings, other changes of the book are not made — to edit it, copy it to a folder that you may write, and open the copy</source>
        <translation>%1 : ce carnet ne peut être que lu ici. Les notes écrites restent dans les préférences, les autres modifications du carnet ne sont pas faites — pour le modifier, le copier dans un dossier où l’on peut écrire, et ouvrir la copie</translation>
    </message>
    <message>
        <source>%1: tyre grip %2 to %3, downforce area %4 to %5 m²</source>
        <translation>%1 : grip pneus de %2 à %3, appui SCz de %4 à %5 m²</translation>
    </message>
    <message>
        <source>%1: whether more or less downforce than now is quicker here cannot be told.</source>
        <translation>%1 : on ne peut dire si plus ou moins d’appui qu’actuellement est plus rapide ici.</translation>
    </message>
    <message>
        <source>%1: which of its laps was the fastest cannot be told: another one is slower by %2 s %3</source>
        <translation>%1 : on ne peut dire lequel de ses tours était le plus rapide : un autre est plus lent de %2 s %3</translation>
    </message>
    <message>
        <source>%1: who wins time here cannot be told.</source>
        <translation>%1 : on ne peut dire qui gagne du temps ici.</translation>
    </message>
    <message>
        <source>%1: write a note here</source>
        <translation>%1 : écrire une note ici</translation>
    </message>
    <message>
        <source>%1; %2 brakes %3 later</source>
        <translation>%1 ; %2 freine %3 plus tard</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1 ; %2.</translation>
    </message>
    <message>
        <source>%1; try one step less wing and see what the corners pay.</source>
        <translation>%1 ; essayer un cran d’aileron de moins et voir ce que cela coûte en virage.</translation>
    </message>
    <message>
        <source>%1; try one step of the wing and come back to it.</source>
        <translation>%1 ; essayer un cran d’aileron, puis revenir en arrière.</translation>
    </message>
    <message>
        <source>&amp;%1  %2 — %3</source>
        <translation>&amp;%1  %2 — %3</translation>
    </message>
    <message>
        <source>&amp;About Lapwright</source>
        <translation>À &amp;propos de Lapwright</translation>
    </message>
    <message>
        <source>&amp;All of them</source>
        <translation>&amp;Tous</translation>
    </message>
    <message>
        <source>&amp;Bring back</source>
        <translation>Ré&amp;tablir</translation>
    </message>
    <message>
        <source>&amp;Bring it back</source>
        <translation>&amp;La rétablir</translation>
    </message>
    <message>
        <source>&amp;Change the keys…</source>
        <translation>&amp;Modifier les touches…</translation>
    </message>
    <message>
        <source>&amp;Check the whole book</source>
        <translation>&amp;Vérifier tout le carnet</translation>
    </message>
    <message>
        <source>&amp;Close this session</source>
        <translation>Fermer &amp;la session choisie</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Comparaison</translation>
    </message>
    <message>
        <source>&amp;Compare A and B</source>
        <translation>&amp;Comparer A et B</translation>
    </message>
    <message>
        <source>&amp;Copy as a table	Ctrl+C</source>
        <translation>&amp;Copier comme tableau	Ctrl+C</translation>
    </message>
    <message>
        <source>&amp;Corner or straight: make it the other</source>
        <translation>&amp;Virage ou ligne droite : inverser</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Sombre</translation>
    </message>
    <message>
        <source>&amp;Debrief</source>
        <translation>&amp;Débrief</translation>
    </message>
    <message>
        <source>&amp;Decimal mark</source>
        <translation>Signe &amp;décimal</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Supprimer</translation>
    </message>
    <message>
        <source>&amp;Dismiss the notices</source>
        <translation>Masquer les messa&amp;ges</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Modifier…</translation>
    </message>
    <message>
        <source>&amp;Fold the panel, or open it</source>
        <translation>&amp;Replier ou ouvrir le panneau</translation>
    </message>
    <message>
        <source>&amp;Forget the track&apos;s gate and corners</source>
        <translation>&amp;Oublier la ligne de chrono et les virages du circuit</translation>
    </message>
    <message>
        <source>&amp;Further channels</source>
        <translation>Autres vo&amp;ies</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>A&amp;ller à</translation>
    </message>
    <message>
        <source>&amp;Go to a corner, session, lap or command…</source>
        <translation>Aller à un &amp;virage, une session, un tour ou une commande…</translation>
    </message>
    <message>
        <source>&amp;Half</source>
        <translation>&amp;Moitié</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;ide</translation>
    </message>
    <message>
        <source>&amp;Imperial: mph, m</source>
        <translation>&amp;Impérial : mph, m</translation>
    </message>
    <message>
        <source>&amp;Import recipes…</source>
        <translation>Recettes d’&amp;import…</translation>
    </message>
    <message>
        <source>&amp;Join each corner with its straight</source>
        <translation>&amp;Joindre chaque virage à sa ligne droite</translation>
    </message>
    <message>
        <source>&amp;Join the segment with the next</source>
        <translation>&amp;Joindre le segment au suivant</translation>
    </message>
    <message>
        <source>&amp;Keep what is predicted…</source>
        <translation>&amp;Garder cette prévision…</translation>
    </message>
    <message>
        <source>&amp;Keys and mouse</source>
        <translation>&amp;Touches et souris</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <source>&amp;Merge a friend&apos;s book…</source>
        <translation>&amp;Fusionner le carnet d’un ami…</translation>
    </message>
    <message>
        <source>&amp;Metric: km/h, m</source>
        <translation>&amp;Métrique : km/h, m</translation>
    </message>
    <message>
        <source>&amp;Multiplied by</source>
        <translation>&amp;Multiplié par</translation>
    </message>
    <message>
        <source>&amp;Name of the segment</source>
        <translation>&amp;Nom du segment</translation>
    </message>
    <message>
        <source>&amp;Names and date…	F2</source>
        <translation>&amp;Noms et date…	F2</translation>
    </message>
    <message>
        <source>&amp;Names in line</source>
        <translation>Ligne des &amp;noms</translation>
    </message>
    <message>
        <source>&amp;Names, date and conditions</source>
        <translation>&amp;Noms, date et conditions</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nouveau</translation>
    </message>
    <message>
        <source>&amp;Next segment</source>
        <translation>Segment &amp;suivant</translation>
    </message>
    <message>
        <source>&amp;Notes, a line each</source>
        <translation>&amp;Notes, une par ligne</translation>
    </message>
    <message>
        <source>&amp;Of this session</source>
        <translation>De cette &amp;session</translation>
    </message>
    <message>
        <source>&amp;Open	Return</source>
        <translation>&amp;Ouvrir	Entrée</translation>
    </message>
    <message>
        <source>&amp;Open files…</source>
        <translation>&amp;Ouvrir des fichiers…</translation>
    </message>
    <message>
        <source>&amp;Pairing</source>
        <translation>&amp;Paire</translation>
    </message>
    <message>
        <source>&amp;Panels of the plots</source>
        <translation>Panneaux des &amp;graphiques</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>Papie&amp;r</translation>
    </message>
    <message>
        <source>&amp;Parted by</source>
        <translation>&amp;Séparateur</translation>
    </message>
    <message>
        <source>&amp;Play and pause</source>
        <translation>&amp;Lecture et pause</translation>
    </message>
    <message>
        <source>&amp;Previous segment</source>
        <translation>Segment &amp;précédent</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Reckon what the change is worth</source>
        <translation>&amp;Calculer ce que vaut le changement</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>Ré&amp;tablir</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>Ré&amp;tablir %1</translation>
    </message>
    <message>
        <source>&amp;Removed sessions…</source>
        <translation>Sessions ret&amp;irées…</translation>
    </message>
    <message>
        <source>&amp;Rename</source>
        <translation>&amp;Renommer</translation>
    </message>
    <message>
        <source>&amp;Save what the damaged book holds</source>
        <translation>&amp;Récupérer ce que contient le carnet abîmé</translation>
    </message>
    <message>
        <source>&amp;Season of a track or car…</source>
        <translation>&amp;Saison d’un circuit ou d’une voiture…</translation>
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
        <translation>Mettre la &amp;date</translation>
    </message>
    <message>
        <source>&amp;Sound of A</source>
        <translation>So&amp;n de A</translation>
    </message>
    <message>
        <source>&amp;Stay</source>
        <translation>R&amp;ester</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Stop</translation>
    </message>
    <message>
        <source>&amp;Swap A and B</source>
        <translation>Éc&amp;hanger A et B</translation>
    </message>
    <message>
        <source>&amp;Take from a file…</source>
        <translation>&amp;Depuis un fichier…</translation>
    </message>
    <message>
        <source>&amp;Take out of the book	Del</source>
        <translation>&amp;Retirer du carnet	Suppr</translation>
    </message>
    <message>
        <source>&amp;Taken for</source>
        <translation>&amp;Pris pour</translation>
    </message>
    <message>
        <source>&amp;Track</source>
        <translation>&amp;Circuit</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Réessayer</translation>
    </message>
    <message>
        <source>&amp;US: mph, ft</source>
        <translation>&amp;US : mph, ft</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>Ann&amp;uler</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>Ann&amp;uler %1</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>Un&amp;ité</translation>
    </message>
    <message>
        <source>&amp;Unite the two</source>
        <translation>Ré&amp;unir les deux</translation>
    </message>
    <message>
        <source>&amp;Values fill the view</source>
        <translation>Les valeurs re&amp;mplissent la vue</translation>
    </message>
    <message>
        <source>&amp;Videos of both beside the traces</source>
        <translation>Les deux &amp;vidéos à côté des courbes</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>Vers un &amp;fichier…</translation>
    </message>
    <message>
        <source>&amp;Write what waits into the book</source>
        <translation>Écrire dans le carnet ce qui &amp;attend</translation>
    </message>
    <message>
        <source>&amp;Write what waits into the book (%1)</source>
        <translation>Écrire dans le carnet ce qui &amp;attend (%1)</translation>
    </message>
    <message>
        <source>&amp;Written as</source>
        <translation>Écrit &amp;comme</translation>
    </message>
    <message>
        <source>(line %1)</source>
        <translation>(ligne %1)</translation>
    </message>
    <message>
        <source>(lines %1 and %2 more)</source>
        <translation>(lignes %1 et %2 autres)</translation>
    </message>
    <message>
        <source>(lines %1)</source>
        <translation>(lignes %1)</translation>
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
        <translation>, à %1 de leur vitesse</translation>
    </message>
    <message>
        <source>, behind A and B as %1</source>
        <translation>, derrière A et B comme %1</translation>
    </message>
    <message>
        <source>, radius %1</source>
        <translation>, rayon %1</translation>
    </message>
    <message>
        <source>, s</source>
        <translation>, s</translation>
    </message>
    <message>
        <source>, the curve goes from %1 to %2</source>
        <translation>, la courbe va de %1 à %2</translation>
    </message>
    <message>
        <source>0 s</source>
        <translation>0 s</translation>
    </message>
    <message>
        <source>0 to 1</source>
        <translation>0 à 1</translation>
    </message>
    <message>
        <source>1 % more grip</source>
        <translation>1 % de grip en plus</translation>
    </message>
    <message>
        <source>1 edit is not in the book</source>
        <translation>1 modification hors carnet</translation>
    </message>
    <message>
        <source>1 edit is not in the book yet.</source>
        <translation>1 modification n’est pas encore dans le carnet.</translation>
    </message>
    <message>
        <source>1 field</source>
        <translation>1 champ</translation>
    </message>
    <message>
        <source>1 is among those</source>
        <translation>1 avait été retirée</translation>
    </message>
    <message>
        <source>1 kept pairing</source>
        <translation>1 paire gardée</translation>
    </message>
    <message>
        <source>1 new session</source>
        <translation>1 nouvelle session</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 note</translation>
    </message>
    <message>
        <source>1 pairing</source>
        <translation>1 paire</translation>
    </message>
    <message>
        <source>1 removed session can be brought back.</source>
        <translation>1 session retirée peut être rétablie.</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 session</translation>
    </message>
    <message>
        <source>1 was known already</source>
        <translation>1 déjà connue</translation>
    </message>
    <message>
        <source>10 % less drag</source>
        <translation>10 % de traînée en moins</translation>
    </message>
    <message>
        <source>10 % more downforce</source>
        <translation>10 % d’appui en plus</translation>
    </message>
    <message>
        <source>10 kW more power</source>
        <translation>10 kW de puissance en plus</translation>
    </message>
    <message>
        <source>10 kg less mass</source>
        <translation>10 kg de masse en moins</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>intervalle à 95 %</translation>
    </message>
    <message>
        <source>; </source>
        <translation> ; </translation>
    </message>
    <message>
        <source>; 95 % band</source>
        <translation> ; bande à 95 %</translation>
    </message>
    <message>
        <source>; grip and downforce alone %1, because what either driver keeps in hand is not seen</source>
        <translation> ; grip et appui seuls %1, car ce que chaque pilote garde en réserve ne se voit pas</translation>
    </message>
    <message>
        <source>; how much of it is %1 cannot be told.</source>
        <translation> ; la part du facteur %1 y est indéterminable.</translation>
    </message>
    <message>
        <source>; no video of %1</source>
        <translation> ; pas de vidéo de %1</translation>
    </message>
    <message>
        <source>; of it %1 %2.</source>
        <translation> ; dont %1 %2.</translation>
    </message>
    <message>
        <source>; speeds and distances are as its wheels read them, all alike off by up to %1 %</source>
        <translation> ; vitesses et distances sont telles que ses roues les lisent, toutes fausses de la même façon, jusqu’à %1 %</translation>
    </message>
    <message>
        <source>; the video does not show this moment</source>
        <translation> ; la vidéo ne montre pas ce moment</translation>
    </message>
    <message>
        <source>; what %1 is worth %2</source>
        <translation> ; ce que vaut le facteur %1, %2</translation>
    </message>
    <message>
        <source>? doubtful</source>
        <translation>? douteux</translation>
    </message>
    <message>
        <source>A %1 inside</source>
        <translation>A %1 à l’intérieur</translation>
    </message>
    <message>
        <source>A %1 left</source>
        <translation>A %1 à gauche</translation>
    </message>
    <message>
        <source>A %1 outside</source>
        <translation>A %1 à l’extérieur</translation>
    </message>
    <message>
        <source>A %1 right</source>
        <translation>A %1 à droite</translation>
    </message>
    <message>
        <source>A &amp;quarter</source>
        <translation>Un &amp;quart</translation>
    </message>
    <message>
        <source>A and B are level</source>
        <translation>A et B sont à égalité</translation>
    </message>
    <message>
        <source>A car from all its sessions</source>
        <translation>Une voiture par toutes ses sessions</translation>
    </message>
    <message>
        <source>A change of downforce alone leans on how grip and downforce share the cornering, which these laps hardly tell: its interval says how much.</source>
        <translation>Un changement d’appui seul dépend de la façon dont grip et appui se partagent le passage en virage, ce que ces tours ne disent guère : son intervalle dit à quel point.</translation>
    </message>
    <message>
        <source>A few letters of a channel&apos;s name</source>
        <translation>Quelques lettres du nom d’une voie</translation>
    </message>
    <message>
        <source>A few letters of a command or a key</source>
        <translation>Quelques lettres d’une commande ou une touche</translation>
    </message>
    <message>
        <source>A few letters of its name</source>
        <translation>Quelques lettres du nom</translation>
    </message>
    <message>
        <source>A friend&apos;s book</source>
        <translation>Le carnet d’un ami</translation>
    </message>
    <message>
        <source>A is quicker in %1 of lap pairs.</source>
        <translation>A est plus rapide dans %1 des paires de tours.</translation>
    </message>
    <message>
        <source>A mark for each flying lap, hollow where it is not clean; the line runs through the later half of the laps, with the 95 % interval of its end.</source>
        <translation>Un point par tour lancé, creux s’il n’est pas propre ; la droite passe par la seconde moitié des tours, avec l’intervalle à 95 % de son extrémité.</translation>
    </message>
    <message>
        <source>A m² of downforce &amp;costs, in m² of drag:</source>
        <translation>Un m² d’appui &amp;coûte, en m² de traînée :</translation>
    </message>
    <message>
        <source>A solid, B dashed</source>
        <translation>A trait plein, B tirets</translation>
    </message>
    <message>
        <source>A wins time</source>
        <translation>A gagne du temps</translation>
    </message>
    <message>
        <source>About Lapwright</source>
        <translation>À propos de Lapwright</translation>
    </message>
    <message>
        <source>Acceleration at full throttle and fitted curve: A solid, B dashed</source>
        <translation>Accélération à fond, ajustée : A trait plein, B tirets</translation>
    </message>
    <message>
        <source>Aero, downforce and drag together: %1 (%2, %3).</source>
        <translation>Aéro, appui et traînée ensemble : %1 (%2, %3).</translation>
    </message>
    <message>
        <source>Air pressure at the track</source>
        <translation>Pression de l’air au circuit</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Température de l’air</translation>
    </message>
    <message>
        <source>All %1…</source>
        <translation>Les %1…</translation>
    </message>
    <message>
        <source>All cars</source>
        <translation>Toutes les voitures</translation>
    </message>
    <message>
        <source>All clean laps, quick is left; the ring is this lap</source>
        <translation>Tous les tours propres, rapide à gauche ; cerclé : ce tour</translation>
    </message>
    <message>
        <source>All segments</source>
        <translation>Tous les segments</translation>
    </message>
    <message>
        <source>All segments on a &amp;second page</source>
        <translation>Tous les segments en d&amp;euxième page</translation>
    </message>
    <message>
        <source>All sessions of this %1 get the new name.</source>
        <translation>Toutes les sessions avec ce nom (%1) prennent le nouveau.</translation>
    </message>
    <message>
        <source>All usual keys</source>
        <translation>Tout par défaut</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>Another name for its driver, car or track in all sessions, or its date (F2)</source>
        <translation>Un autre nom pour son pilote, sa voiture ou son circuit dans toutes les sessions, ou sa date (F2)</translation>
    </message>
    <message>
        <source>Any car</source>
        <translation>Toutes les voitures</translation>
    </message>
    <message>
        <source>Any driver</source>
        <translation>Tous les pilotes</translation>
    </message>
    <message>
        <source>Any track</source>
        <translation>Tous les circuits</translation>
    </message>
    <message>
        <source>Any tyre</source>
        <translation>Tous les pneus</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>avr.</translation>
    </message>
    <message>
        <source>As it &amp;was</source>
        <translation>&amp;Réelle</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Tel quel</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le s&amp;ystème</translation>
    </message>
    <message>
        <source>As the pro&amp;gram guesses</source>
        <translation>Comme le pro&amp;gramme devine</translation>
    </message>
    <message>
        <source>At most %1 laps can be seen behind A and B: take one of them away first.</source>
        <translation>On peut voir au plus %1 tours derrière A et B : en enlever un d’abord.</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>août</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>B wins time</source>
        <translation>B gagne du temps</translation>
    </message>
    <message>
        <source>Back to the open sessions</source>
        <translation>Revenir aux sessions ouvertes</translation>
    </message>
    <message>
        <source>Best (lap)</source>
        <translation>Meill. (tour)</translation>
    </message>
    <message>
        <source>Best lap</source>
        <translation>Meill. tour</translation>
    </message>
    <message>
        <source>Both cars are driven with more and with less of it…</source>
        <translation>Les deux voitures roulent avec plus et avec moins d’appui…</translation>
    </message>
    <message>
        <source>Both driven &amp;lines close up, and how far apart</source>
        <translation>Les deu&amp;x trajectoires en gros plan et leur écart</translation>
    </message>
    <message>
        <source>Both laps are of the same car in one session: what differs is the driving and chance.</source>
        <translation>Les deux tours sont de la même voiture dans une session : ce qui diffère, c’est le pilotage et le hasard.</translation>
    </message>
    <message>
        <source>Both let &amp;go at the chosen segment&apos;s start</source>
        <translation>Les deux partent au &amp;début du segment choisi</translation>
    </message>
    <message>
        <source>Braking point</source>
        <translation>Point de freinage</translation>
    </message>
    <message>
        <source>Brought back.</source>
        <translation>Rétablie.</translation>
    </message>
    <message>
        <source>C&amp;hoose channels, and sets of them…</source>
        <translation>C&amp;hoisir les voies et leurs jeux…</translation>
    </message>
    <message>
        <source>Ca&amp;uses</source>
        <translation>Ca&amp;uses</translation>
    </message>
    <message>
        <source>Car</source>
        <translation>Voiture</translation>
    </message>
    <message>
        <source>Car %1: %2, %3 a lap.

How will the setup sheet say it once it is driven? Write it as
wing angle=7 deg; splitter=46 mm, or leave it empty and name the session then.</source>
        <translation>Voiture %1 : %2, %3 par tour.

Que dira la fiche de réglages une fois que ce sera roulé ? Par exemple :
wing angle=7 deg; splitter=46 mm. Ou laisser vide et indiquer la session plus tard.</translation>
    </message>
    <message>
        <source>Car: %1</source>
        <translation>Voiture : %1</translation>
    </message>
    <message>
        <source>Causes, whole lap</source>
        <translation>Causes, tour entier</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changement</translation>
    </message>
    <message>
        <source>Change front and rear together so that the balance stays, and feel it out before a quick lap.</source>
        <translation>Changer l’avant et l’arrière ensemble pour garder l’équilibre, et prendre ses marques avant un tour rapide.</translation>
    </message>
    <message>
        <source>Change its names or date</source>
        <translation>Changer ses noms ou sa date</translation>
    </message>
    <message>
        <source>Change the keys</source>
        <translation>Modifier les touches</translation>
    </message>
    <message>
        <source>Changed. Files that are open keep what they were read as until they are opened again.</source>
        <translation>Modifiée. Les fichiers ouverts restent lus comme avant jusqu’à ce qu’on les rouvre.</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Voie</translation>
    </message>
    <message>
        <source>Channel one place &amp;down</source>
        <translation>V&amp;oie d’un rang vers le bas</translation>
    </message>
    <message>
        <source>Channel one place &amp;up</source>
        <translation>Monter la voie d’&amp;un rang</translation>
    </message>
    <message>
        <source>Channels; Space shows or hides one</source>
        <translation>Voies ; Espace en montre ou en cache une</translation>
    </message>
    <message>
        <source>Choose a lap</source>
        <translation>Choisir un tour</translation>
    </message>
    <message>
        <source>Choose a lap of the session first: click it, or go there by Left and Right.</source>
        <translation>Choisir d’abord un tour de la session : cliquer dessus, ou y aller avec les flèches gauche et droite.</translation>
    </message>
    <message>
        <source>Choose a row or a stretch</source>
        <translation>Choisir une ligne ou une portion</translation>
    </message>
    <message>
        <source>Choose a segment</source>
        <translation>Choisir un segment</translation>
    </message>
    <message>
        <source>Choose at least one baseline and one session with the change.</source>
        <translation>Choisir au moins une référence et une session avec le changement.</translation>
    </message>
    <message>
        <source>Choose the video of %1</source>
        <translation>Choisir la vidéo de %1</translation>
    </message>
    <message>
        <source>Chosen segment</source>
        <translation>Segment choisi</translation>
    </message>
    <message>
        <source>Clean laps</source>
        <translation>Tours propres</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Close &amp;without them</source>
        <translation>Fermer &amp;sans elles</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Colonne</translation>
    </message>
    <message>
        <source>Columns of %1</source>
        <translation>Colonnes de %1</translation>
    </message>
    <message>
        <source>Columns of the file</source>
        <translation>Colonnes du fichier</translation>
    </message>
    <message>
        <source>Columns of this session&apos;s &amp;file…</source>
        <translation>Colonnes du &amp;fichier de cette session…</translation>
    </message>
    <message>
        <source>Columns…</source>
        <translation>Colonnes…</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Commande</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Commandes et leurs touches</translation>
    </message>
    <message>
        <source>Commands or keys with these letters</source>
        <translation>Commandes ou touches avec ces lettres</translation>
    </message>
    <message>
        <source>Compare A and B</source>
        <translation>Comparer A et B</translation>
    </message>
    <message>
        <source>Compared</source>
        <translation>Comparé le</translation>
    </message>
    <message>
        <source>Compared last</source>
        <translation>Dernières comparaisons</translation>
    </message>
    <message>
        <source>Compares two laps of two logger files, corner by corner, and says how sure it is.</source>
        <translation>Compare deux tours de deux fichiers d’acquisition, virage par virage, et indique le degré de certitude.</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Conditions</translation>
    </message>
    <message>
        <source>Copy as a &amp;table</source>
        <translation>Copier comme tab&amp;leau</translation>
    </message>
    <message>
        <source>Copy as a p&amp;icture</source>
        <translation>Copier comme &amp;image</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Virage %1</translation>
    </message>
    <message>
        <source>Corner of the stills</source>
        <translation>Virage des images fixes</translation>
    </message>
    <message>
        <source>Cornering acceleration against speed</source>
        <translation>Accélération latérale selon la vitesse</translation>
    </message>
    <message>
        <source>Cornering acceleration and fitted limit: A filled, B hollow; triangle: flat out</source>
        <translation>Accélération latérale, limite : A plein, B creux ; triangle : à fond</translation>
    </message>
    <message>
        <source>Cornering as driven (tyres, downforce and how much of them the drivers use): %1.</source>
        <translation>Passage en virage tel que roulé (pneus, appui et ce que les pilotes en exploitent) : %1.</translation>
    </message>
    <message>
        <source>Cornering as driven, which is tyres, downforce and how much of them the drivers use, is probably worth %1 a lap to %2, most %3%4.</source>
        <translation>Le passage en virage tel que roulé, c’est-à-dire pneus, appui et ce que les pilotes en exploitent, vaut probablement %1 par tour à %2, surtout %3%4.</translation>
    </message>
    <message>
        <source>Cornering as driven, which is tyres, downforce and how much of them the drivers use, is worth %1 a lap to %2, most %3%4.</source>
        <translation>Le passage en virage tel que roulé, c’est-à-dire pneus, appui et ce que les pilotes en exploitent, vaut %1 par tour à %2, surtout %3%4.</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Virages</translation>
    </message>
    <message>
        <source>Corners are shown with their straights: J shows them apart, to be named.</source>
        <translation>Les virages sont montrés avec leurs lignes droites : J les montre à part, pour les nommer.</translation>
    </message>
    <message>
        <source>Corners, and straights that matter</source>
        <translation>Virages et lignes droites qui comptent</translation>
    </message>
    <message>
        <source>Correct what is wrong; the answer is kept for all files of this shape.</source>
        <translation>Corriger ce qui est faux ; la réponse est gardée pour tous les fichiers de cette forme.</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Tendance</translation>
    </message>
    <message>
        <source>Course of each segment</source>
        <translation>Tendance de chaque segment</translation>
    </message>
    <message>
        <source>Ctrl and wheel</source>
        <translation>Ctrl et molette</translation>
    </message>
    <message>
        <source>Cursor</source>
        <translation>Curseur</translation>
    </message>
    <message>
        <source>Cursor &amp;back</source>
        <translation>Curseur en a&amp;rrière</translation>
    </message>
    <message>
        <source>Cursor &amp;far on</source>
        <translation>Curseur : grand pas en avan&amp;t</translation>
    </message>
    <message>
        <source>Cursor &amp;on</source>
        <translation>Curseur en &amp;avant</translation>
    </message>
    <message>
        <source>Cursor far b&amp;ack</source>
        <translation>Curseur : &amp;grand pas en arrière</translation>
    </message>
    <message>
        <source>Cursor to the &amp;end of the lap</source>
        <translation>Curseur à la &amp;fin du tour</translation>
    </message>
    <message>
        <source>Cursor to the &amp;start of the lap</source>
        <translation>Curseur au &amp;début du tour</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Date in UTC, as 2026-05-16 10:20</source>
        <translation>Date en UTC, comme 2026-05-16 10:20</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>déc.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>Deleted.</source>
        <translation>Supprimée.</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Masquer</translation>
    </message>
    <message>
        <source>Distance along the track</source>
        <translation>Distance le long du circuit</translation>
    </message>
    <message>
        <source>Down, Up in the first row</source>
        <translation>Flèche bas ; flèche haut sur la première ligne</translation>
    </message>
    <message>
        <source>Downforce area if known (0.5 ±0.1), m²</source>
        <translation>Appui SCz si connu (0,5 ±0,1), m²</translation>
    </message>
    <message>
        <source>Drag area if known (0.92 ±0.05), m²</source>
        <translation>Traînée SCx si connue (0,92 ±0,05), m²</translation>
    </message>
    <message>
        <source>Drag area that a square metre of downforce area costs</source>
        <translation>Traînée SCx que coûte un mètre carré d’appui SCz</translation>
    </message>
    <message>
        <source>Drive without the change, with it, and without it again: only so can the change be told from tyres that fade and a track that grips more. Sessions stand in the order in which they were driven.</source>
        <translation>Rouler sans le changement, avec, puis de nouveau sans : c’est la seule façon de le distinguer de pneus qui se dégradent et d’une piste qui gagne en grip. Les sessions sont dans l’ordre où elles ont été roulées.</translation>
    </message>
    <message>
        <source>Driven</source>
        <translation>Roulée le</translation>
    </message>
    <message>
        <source>Driven differently</source>
        <translation>Piloté autrement</translation>
    </message>
    <message>
        <source>Driven last</source>
        <translation>Derniers roulages</translation>
    </message>
    <message>
        <source>Driver</source>
        <translation>Pilote</translation>
    </message>
    <message>
        <source>Driver and rest</source>
        <translation>Pilote et reste</translation>
    </message>
    <message>
        <source>Drivers, %1</source>
        <translation>Pilotes, %1</translation>
    </message>
    <message>
        <source>Drivers, whole lap</source>
        <translation>Pilotes, tour entier</translation>
    </message>
    <message>
        <source>Driving acceleration against speed</source>
        <translation>Accélération motrice selon la vitesse</translation>
    </message>
    <message>
        <source>Drop logger files anywhere in this window, or open them. Files are read and never changed.</source>
        <translation>Déposer des fichiers d’acquisition n’importe où dans cette fenêtre, ou les ouvrir. Les fichiers sont lus, jamais modifiés.</translation>
    </message>
    <message>
        <source>Drop the logger files of two drivers here</source>
        <translation>Déposer ici les fichiers d’acquisition de deux pilotes</translation>
    </message>
    <message>
        <source>Each number is seconds, with the letter and in the colour of whoever it favours; a row adds up to what was measured. Filled: surely so. Dotted: may be chance. Of it: a part of the column before, bare where that is known better.</source>
        <translation>Chaque nombre est en secondes, avec la lettre et dans la couleur de celui qu’il avantage ; la somme d’une ligne est ce qui a été mesuré. Rempli : sûr. Pointillé : peut être le hasard. Dont : une part de la colonne d’avant, sans fond là où celle-ci est mieux connue.</translation>
    </message>
    <message>
        <source>Engine used: A %1, B %2</source>
        <translation>Moteur exploité : A %1, B %2</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Estimates from recorded data; intervals are 95 %. Motor sport is dangerous: the event&apos;s rules, scrutineering and licensed practice come first, and nothing here asks anyone to drive faster than they judge safe.</source>
        <translation>Estimations tirées de données enregistrées ; intervalles à 95 %. Le sport automobile est dangereux : le règlement de l’épreuve, les vérifications techniques et la pratique sous licence passent d’abord, et rien ici ne demande à quiconque de rouler plus vite qu’il ne le juge sûr.</translation>
    </message>
    <message>
        <source>Every segment</source>
        <translation>Chaque segment</translation>
    </message>
    <message>
        <source>Every session of %1 is read and put together: %2 %%3</source>
        <translation>Chaque session de %1 est lue et réunie aux autres : %2 %%3</translation>
    </message>
    <message>
        <source>Exit</source>
        <translation>Sortie</translation>
    </message>
    <message>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <source>Fastest %1 against %2</source>
        <translation>Maximum %1 contre %2</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>févr.</translation>
    </message>
    <message>
        <source>Figures of a car</source>
        <translation>Chiffres d’une voiture</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Finding %1: show it on the Compare page</source>
        <translation>Constat %1 : le montrer à la page Comparaison</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>First cells</source>
        <translation>Prem. cellules</translation>
    </message>
    <message>
        <source>First day, as 2026-05-16</source>
        <translation>Premier jour, comme 2026-05-16</translation>
    </message>
    <message>
        <source>First rows</source>
        <translation>Prem. lignes</translation>
    </message>
    <message>
        <source>Fold a panel, or open it</source>
        <translation>Replier ou ouvrir un panneau</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Supprimer ce jeu</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later (GPL-3.0-or-later); it comes without any warranty.</source>
        <translation>Logiciel libre sous licence publique générale GNU, version 3 ou ultérieure (GPL-3.0-or-later) ; sans aucune garantie.</translation>
    </message>
    <message>
        <source>From lap to lap, s</source>
        <translation>Évolution par tour, s</translation>
    </message>
    <message>
        <source>From the words to the list, and back</source>
        <translation>Des mots cherchés à la liste, et retour</translation>
    </message>
    <message>
        <source>Front spring rate at the wheel, N/mm</source>
        <translation>Raideur avant à la roue, N/mm</translation>
    </message>
    <message>
        <source>Full t&amp;hrottle again</source>
        <translation>De nouveau pleins &amp;gaz</translation>
    </message>
    <message>
        <source>Full throttle</source>
        <translation>Pleins gaz</translation>
    </message>
    <message>
        <source>Further channels</source>
        <translation>Autres voies</translation>
    </message>
    <message>
        <source>Further channels: &amp;back</source>
        <translation>Autres voies : r&amp;eculer</translation>
    </message>
    <message>
        <source>Further channels: &amp;on</source>
        <translation>Autres voies : &amp;avancer</translation>
    </message>
    <message>
        <source>Further items of %1</source>
        <translation>Autres éléments de %1</translation>
    </message>
    <message>
        <source>Further items,
one a line: name: value</source>
        <translation>Autres éléments,
un par ligne : nom: valeur</translation>
    </message>
    <message>
        <source>Gap with 95 % band, s: above zero A is ahead</source>
        <translation>Écart, bande à 95 %, s : en haut, A devant</translation>
    </message>
    <message>
        <source>Gap, s: above zero A is ahead</source>
        <translation>Écart, s : en haut, A devant</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Trous</translation>
    </message>
    <message>
        <source>Getting quicker by %1.</source>
        <translation>Progresse de %1.</translation>
    </message>
    <message>
        <source>Getting slower by %1.</source>
        <translation>Ralentit de %1.</translation>
    </message>
    <message>
        <source>Give it this key</source>
        <translation>Affecter cette touche</translation>
    </message>
    <message>
        <source>Go on to further channels; where all is in view, show less or more</source>
        <translation>Passer aux autres voies ; là où tout est visible, montrer moins ou plus</translation>
    </message>
    <message>
        <source>Go to a corner, session, lap or command</source>
        <translation>Aller à un virage, une session, un tour ou une commande</translation>
    </message>
    <message>
        <source>Go to another session</source>
        <translation>Aller à une autre session</translation>
    </message>
    <message>
        <source>Go to…</source>
        <translation>Aller à…</translation>
    </message>
    <message>
        <source>Grip and downforce that the laps allow: A solid, B dashed</source>
        <translation>Grip et appui possibles : A trait plein, B tirets</translation>
    </message>
    <message>
        <source>Grip as used: A %1, B %2.</source>
        <translation>Grip utilisé : A %1, B %2.</translation>
    </message>
    <message>
        <source>Guessed</source>
        <translation>Deviné</translation>
    </message>
    <message>
        <source>HTML files (*.html *.htm)</source>
        <translation>Fichiers HTML (*.html *.htm)</translation>
    </message>
    <message>
        <source>How far each clean lap is behind the fastest of the open sessions, with the 95 % margin of its time; a click on &quot;lap&quot; or &quot;time&quot; sorts</source>
        <translation>Retard de chaque tour propre sur le plus rapide des sessions ouvertes, avec la marge à 95 % de son temps ; un clic sur « tour » ou « temps » trie</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Avancement</translation>
    </message>
    <message>
        <source>How much &amp;wing…</source>
        <translation>Combien d’ai&amp;leron…</translation>
    </message>
    <message>
        <source>How much wing</source>
        <translation>Combien d’aileron</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Certitude</translation>
    </message>
    <message>
        <source>How sure (one standard deviation)</source>
        <translation>Incertitude (un écart-type)</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Import recipe</source>
        <translation>Recette d’import</translation>
    </message>
    <message>
        <source>Import recipes</source>
        <translation>Recettes d’import</translation>
    </message>
    <message>
        <source>Import recipes (*.recipe.json *.json)</source>
        <translation>Recettes d’import (*.recipe.json *.json)</translation>
    </message>
    <message>
        <source>Import recipes (*.recipe.json *.json);;All files (*)</source>
        <translation>Recettes d’import (*.recipe.json *.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>In full…</source>
        <translation>En entier…</translation>
    </message>
    <message>
        <source>Is this the trial that you mean? %1. Press the button again to reckon it all the same.</source>
        <translation>Est-ce bien l’essai voulu ? %1. Appuyer de nouveau sur le bouton pour calculer quand même.</translation>
    </message>
    <message>
        <source>It is &amp;right</source>
        <translation>C’est &amp;juste</translation>
    </message>
    <message>
        <source>It is spread over the lap: no single segment stands out.</source>
        <translation>C’est réparti sur le tour : aucun segment ne ressort.</translation>
    </message>
    <message>
        <source>It sends nothing anywhere and changes no source file.</source>
        <translation>Lapwright n’envoie rien nulle part et ne modifie aucun fichier source.</translation>
    </message>
    <message>
        <source>Its usual key</source>
        <translation>Touche par défaut</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>janv.</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>juil.</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>juin</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Keep a prediction</source>
        <translation>Garder une prévision</translation>
    </message>
    <message>
        <source>Keep for &amp;A…</source>
        <translation>Garder pour &amp;A…</translation>
    </message>
    <message>
        <source>Keep for &amp;B…</source>
        <translation>Garder pour &amp;B…</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>La garder</translation>
    </message>
    <message>
        <source>Keep this recipe</source>
        <translation>Garder la recette</translation>
    </message>
    <message>
        <source>Keep what is predicted for the quickest in the book, to be held against what happens</source>
        <translation>Garder dans le carnet ce qui est prévu pour le plus rapide, pour le comparer à ce qui arrivera</translation>
    </message>
    <message>
        <source>Keep what is predicted in the book, to be held against what happens</source>
        <translation>Garder dans le carnet ce qui est prévu, pour le comparer à ce qui arrivera</translation>
    </message>
    <message>
        <source>Keep…</source>
        <translation>Garder…</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Gardée</translation>
    </message>
    <message>
        <source>Kept &amp;pairings…</source>
        <translation>&amp;Paires gardées…</translation>
    </message>
    <message>
        <source>Kept as rec&amp;ipe</source>
        <translation>Nom de la rece&amp;tte</translation>
    </message>
    <message>
        <source>Kept pairings</source>
        <translation>Paires gardées</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Touche</translation>
    </message>
    <message>
        <source>Keys and mouse</source>
        <translation>Touches et souris</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>Tour</translation>
    </message>
    <message>
        <source>Lap %1</source>
        <translation>Tour %1</translation>
    </message>
    <message>
        <source>Lap %1 counts, because</source>
        <translation>Tour %1 compté, raison :</translation>
    </message>
    <message>
        <source>Lap %1 is set aside, because</source>
        <translation>Tour %1 écarté, raison :</translation>
    </message>
    <message>
        <source>Lap A</source>
        <translation>Tour A</translation>
    </message>
    <message>
        <source>Lap B</source>
        <translation>Tour B</translation>
    </message>
    <message>
        <source>Lap time over more or less downforce</source>
        <translation>Temps au tour selon plus ou moins d’appui</translation>
    </message>
    <message>
        <source>Lap times stay level.</source>
        <translation>Les temps au tour restent égaux.</translation>
    </message>
    <message>
        <source>Laps by time, the &amp;fastest first</source>
        <translation>Tours par te&amp;mps, le plus rapide d’abord</translation>
    </message>
    <message>
        <source>Laps of a track or figures of a car</source>
        <translation>Tours d’un circuit ou chiffres d’une voiture</translation>
    </message>
    <message>
        <source>Laps on a track</source>
        <translation>Tours sur un circuit</translation>
    </message>
    <message>
        <source>Laps on the Sessions page</source>
        <translation>Tours à la page Sessions</translation>
    </message>
    <message>
        <source>Lapwright %1</source>
        <translation>Lapwright %1</translation>
    </message>
    <message>
        <source>Last day, as 2026-05-16</source>
        <translation>Dernier jour, comme 2026-05-16</translation>
    </message>
    <message>
        <source>Lateral, from motion</source>
        <translation>Latérale, d’après le mouvement</translation>
    </message>
    <message>
        <source>Learnin&amp;g: laps and corners over the session…</source>
        <translation>&amp;Apprentissage : tours et virages au fil de la session…</translation>
    </message>
    <message>
        <source>Learning has stopped in %1.</source>
        <translation>Les progrès se sont arrêtés dans %1.</translation>
    </message>
    <message>
        <source>Learning: %1</source>
        <translation>Apprentissage : %1</translation>
    </message>
    <message>
        <source>Leave them closed</source>
        <translation>Laisser fermé</translation>
    </message>
    <message>
        <source>Leaves it at %1 against %2</source>
        <translation>Sortie à %1 contre %2</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omis</translation>
    </message>
    <message>
        <source>Left, Right, Tab</source>
        <translation>Flèches gauche et droite, Tab</translation>
    </message>
    <message>
        <source>Less, more, all of the season</source>
        <translation>Moins, plus, toute la saison</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Lever de pied</translation>
    </message>
    <message>
        <source>Line and corners of %1 come from %2.</source>
        <translation>La ligne de chrono et les virages de %1 viennent de %2.</translation>
    </message>
    <message>
        <source>Line%1: above zero A is further left</source>
        <translation>Trajectoire%1 : en haut, A plus à gauche</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Traj.</translation>
    </message>
    <message>
        <source>Longitudinal, from motion</source>
        <translation>Longitudinale, d’après le mouvement</translation>
    </message>
    <message>
        <source>Loo&amp;k</source>
        <translation>&amp;Apparence</translation>
    </message>
    <message>
        <source>Made from %1 (A) and %2 (B), grid %3 m. Lapwright %4.</source>
        <translation>Tiré de %1 (A) et %2 (B), pas de %3 m. Lapwright %4.</translation>
    </message>
    <message>
        <source>Make a panel taller or lower</source>
        <translation>Rendre un panneau plus haut ou plus bas</translation>
    </message>
    <message>
        <source>Make this lap &amp;A</source>
        <translation>Ce tour devient &amp;A</translation>
    </message>
    <message>
        <source>Make this lap &amp;B</source>
        <translation>Ce tour devient &amp;B</translation>
    </message>
    <message>
        <source>Map of the track, coloured by who wins time</source>
        <translation>Carte du circuit, colorée selon qui gagne du temps</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>mars</translation>
    </message>
    <message>
        <source>Mass with driver and fuel</source>
        <translation>Masse avec pilote et carburant</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mai</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>Médiane</translation>
    </message>
    <message>
        <source>Mended</source>
        <translation>Réparé</translation>
    </message>
    <message>
        <source>Most in %1.</source>
        <translation>Surtout : %1.</translation>
    </message>
    <message>
        <source>Most is still to be won in %1.</source>
        <translation>Il reste le plus à gagner dans %1.</translation>
    </message>
    <message>
        <source>Most of it is %1: %2 gains %3 there</source>
        <translation>L’essentiel est %1 : %2 y gagne %3</translation>
    </message>
    <message>
        <source>Most of it is probably %1: %2 gains %3 there</source>
        <translation>L’essentiel est probablement %1 : %2 y gagne %3</translation>
    </message>
    <message>
        <source>Motor sport is dangerous. The event&apos;s rules, scrutineering and licensed practice come first, and nothing here is an instruction to drive faster than you judge safe.</source>
        <translation>Le sport automobile est dangereux. Le règlement de l’épreuve, les vérifications techniques et la pratique sous licence passent d’abord, et rien ici n’invite à rouler plus vite qu’on ne le juge sûr.</translation>
    </message>
    <message>
        <source>Mouse on the plots</source>
        <translation>Souris sur les graphiques</translation>
    </message>
    <message>
        <source>Move a control to see the predicted lap.</source>
        <translation>Changer une valeur pour voir le tour prévu.</translation>
    </message>
    <message>
        <source>Move a further channel</source>
        <translation>Déplacer une autre voie</translation>
    </message>
    <message>
        <source>Move an end, or the timing line</source>
        <translation>Déplacer une limite ou la ligne de chrono</translation>
    </message>
    <message>
        <source>Multiplied by: a number that is not 0.</source>
        <translation>Multiplié par : un nombre autre que 0.</translation>
    </message>
    <message>
        <source>Name of a channel</source>
        <translation>Nom d’une voie</translation>
    </message>
    <message>
        <source>Name of a corner, session, lap or command</source>
        <translation>Nom d’un virage, d’une session, d’un tour ou d’une commande</translation>
    </message>
    <message>
        <source>Names and date</source>
        <translation>Noms et date</translation>
    </message>
    <message>
        <source>Names, date…</source>
        <translation>Noms, date…</translation>
    </message>
    <message>
        <source>Ne&amp;xt question</source>
        <translation>Question s&amp;uivante</translation>
    </message>
    <message>
        <source>New files, not opened yet</source>
        <translation>Nouveaux fichiers, pas encore ouverts</translation>
    </message>
    <message>
        <source>New files: %1</source>
        <translation>Nouveaux fichiers : %1</translation>
    </message>
    <message>
        <source>New key of the chosen command</source>
        <translation>Nouvelle touche de la commande choisie</translation>
    </message>
    <message>
        <source>New name or date</source>
        <translation>Nouveau nom ou nouvelle date</translation>
    </message>
    <message>
        <source>Nex&amp;t units</source>
        <translation>Chang&amp;er d’unités</translation>
    </message>
    <message>
        <source>No key</source>
        <translation>Aucune touche</translation>
    </message>
    <message>
        <source>No pairing yet: compare two laps, and what came out is kept here.</source>
        <translation>Pas encore de paire : comparer deux tours, et le résultat est gardé ici.</translation>
    </message>
    <message>
        <source>No prediction has been judged yet.</source>
        <translation>Aucune prévision n’a encore été vérifiée.</translation>
    </message>
    <message>
        <source>No prediction yet: keep what What if or How much wing predicts, and once it was driven it is held against what happened here.</source>
        <translation>Pas encore de prévision : garder ce que prédit « Et si » ou « Combien d’aileron » ; une fois roulé, c’est comparé ici à ce qui est arrivé.</translation>
    </message>
    <message>
        <source>No segment chosen</source>
        <translation>Aucun segment choisi</translation>
    </message>
    <message>
        <source>No session has all of these words.</source>
        <translation>Aucune session ne contient tous ces mots.</translation>
    </message>
    <message>
        <source>No session is all of this.</source>
        <translation>Aucune session ne répond à tout cela.</translation>
    </message>
    <message>
        <source>No session of the book says its car; the name comes with the logger&apos;s file.</source>
        <translation>Aucune session du carnet ne dit sa voiture ; le nom vient avec le fichier d’acquisition.</translation>
    </message>
    <message>
        <source>No session of the book says its track. Open one together with its track file: its laps are then seen here through the season.</source>
        <translation>Aucune session du carnet ne dit son circuit. En ouvrir une avec son fichier de circuit : ses tours se voient alors ici au fil de la saison.</translation>
    </message>
    <message>
        <source>No session on %1 is in the book.</source>
        <translation>Aucune session sur %1 n’est dans le carnet.</translation>
    </message>
    <message>
        <source>No session was taken out of the book.</source>
        <translation>Aucune session n’a été retirée du carnet.</translation>
    </message>
    <message>
        <source>No video is in step with these laps: choose one on the Compare page (Y).</source>
        <translation>Aucune vidéo n’est synchronisée avec ces tours : en choisir une à la page Comparaison (Y).</translation>
    </message>
    <message>
        <source>No video of %1: choose one, and it is put in step by itself</source>
        <translation>Pas de vidéo de %1 : en choisir une, elle se synchronise d’elle-même</translation>
    </message>
    <message>
        <source>Not in the book yet</source>
        <translation>Pas encore dans le carnet</translation>
    </message>
    <message>
        <source>Not in the book yet: %1. It is tried again at the next edit, and by a click on the sign above.</source>
        <translation>Pas encore dans le carnet : %1. Nouvel essai à la prochaine modification, ou d’un clic sur le signe en haut.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Note of A</source>
        <translation>Note de A</translation>
    </message>
    <message>
        <source>Note of A on %1</source>
        <translation>Note de A sur %1</translation>
    </message>
    <message>
        <source>Note of B</source>
        <translation>Note de B</translation>
    </message>
    <message>
        <source>Note of B on %1</source>
        <translation>Note de B sur %1</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Note sur %1</translation>
    </message>
    <message>
        <source>Note on the segment as &amp;A drove it</source>
        <translation>Note sur le segment de &amp;A</translation>
    </message>
    <message>
        <source>Note on the segment as &amp;B drove it</source>
        <translation>Note sur le segment de &amp;B</translation>
    </message>
    <message>
        <source>Note on this &amp;lap</source>
        <translation>Note sur ce t&amp;our</translation>
    </message>
    <message>
        <source>Note on this &amp;session</source>
        <translation>Note sur cette &amp;session</translation>
    </message>
    <message>
        <source>Note on this lap</source>
        <translation>Note sur ce tour</translation>
    </message>
    <message>
        <source>Note on this session</source>
        <translation>Note sur cette session</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Notes for the sheet</source>
        <translation>Notes pour la fiche</translation>
    </message>
    <message>
        <source>Nothing is fitted to the laps of %1 yet: compare one of its sessions and look at the Causes page; what the data say of the car is then kept here.</source>
        <translation>Rien n’est encore estimé pour %1 : comparer une de ses sessions et regarder la page Causes ; ce que les données disent de la voiture est alors gardé ici.</translation>
    </message>
    <message>
        <source>Nothing is predicted yet: move a control of What if on the Causes page, then keep it.</source>
        <translation>Rien n’est encore prévu : changer une valeur de « Et si » sur la page des causes, puis la garder.</translation>
    </message>
    <message>
        <source>Nothing was guessed, left out or mended.</source>
        <translation>Rien n’a été deviné, omis ou réparé.</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>nov.</translation>
    </message>
    <message>
        <source>Now less the best; &quot;or chance&quot; where the best of as many equal laps may lie as low</source>
        <translation>L’actuel moins le meilleur ; « ou hasard » là où le meilleur d’autant de tours égaux peut être aussi bas</translation>
    </message>
    <message>
        <source>Now, s</source>
        <translation>Actuel, s</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>oct.</translation>
    </message>
    <message>
        <source>Of the car it changed: %1.</source>
        <translation>Sur la voiture, il a changé : %1.</translation>
    </message>
    <message>
        <source>Offset to the left of the reference line</source>
        <translation>Décalage à gauche de la ligne de référence</translation>
    </message>
    <message>
        <source>On average %1 s, 95 % between %2 and %3.</source>
        <translation>En moyenne %1 s (intervalle à 95 % : %2 à %3).</translation>
    </message>
    <message>
        <source>On the &amp;track of:</source>
        <translation>Sur le &amp;circuit de :</translation>
    </message>
    <message>
        <source>Once it was driven, the book&apos;s predictions say what happened (%1).</source>
        <translation>Une fois le réglage roulé, les prévisions du carnet diront ce qu’il en est (%1).</translation>
    </message>
    <message>
        <source>One frame &amp;on</source>
        <translation>Image &amp;suivante</translation>
    </message>
    <message>
        <source>One frame bac&amp;k</source>
        <translation>Image &amp;précédente</translation>
    </message>
    <message>
        <source>One pairing. Return opens it with both its sessions, Delete takes it out.</source>
        <translation>Une paire. Entrée l’ouvre avec ses deux sessions, Suppr la retire.</translation>
    </message>
    <message>
        <source>One session was timed at another line of the track than the rest, so that lap times differ a little without a reason: %2.</source>
        <translation>Une session a été chronométrée à une autre ligne du circuit que le reste, si bien que les temps au tour diffèrent un peu sans raison : %2.</translation>
    </message>
    <message>
        <source>Only a flying lap can be set aside or counted.</source>
        <translation>Seul un tour lancé peut être écarté ou compté.</translation>
    </message>
    <message>
        <source>Only with a clear track behind and where the organiser allows it.</source>
        <translation>Seulement si personne ne suit et là où l’organisateur le permet.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Open a setup sheet</source>
        <translation>Ouvrir une fiche de réglages</translation>
    </message>
    <message>
        <source>Open again what was open &amp;when the program stopped</source>
        <translation>Rou&amp;vrir ce qui l’était à l’arrêt du programme</translation>
    </message>
    <message>
        <source>Open files…</source>
        <translation>Ouvrir des fichiers…</translation>
    </message>
    <message>
        <source>Open logger files</source>
        <translation>Ouvrir des fichiers d’acquisition</translation>
    </message>
    <message>
        <source>Open sessions</source>
        <translation>Sessions ouvertes</translation>
    </message>
    <message>
        <source>Open them again</source>
        <translation>Les rouvrir</translation>
    </message>
    <message>
        <source>Open what is chosen</source>
        <translation>Ouvrir ce qui est choisi</translation>
    </message>
    <message>
        <source>Opened &amp;lately</source>
        <translation>Ouverts &amp;récemment</translation>
    </message>
    <message>
        <source>Over %1: %2. %3. %4 Segment by segment, in seconds: %5.</source>
        <translation>Sur %1 : %2. %3. %4 Segment par segment, en secondes : %5.</translation>
    </message>
    <message>
        <source>Over all laps, where the 95 % interval tells it</source>
        <translation>Sur tous les tours, là où l’intervalle à 95 % permet de le dire</translation>
    </message>
    <message>
        <source>P&amp;rint the debrief sheet…</source>
        <translation>&amp;Imprimer la fiche de débrief…</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Pa&amp;ce</source>
        <translation>Vit&amp;esse</translation>
    </message>
    <message>
        <source>Pairings that the book keeps</source>
        <translation>Paires que garde le carnet</translation>
    </message>
    <message>
        <source>Pan</source>
        <translation>Décaler</translation>
    </message>
    <message>
        <source>Pan &amp;back</source>
        <translation>Décaler vers l’a&amp;rrière</translation>
    </message>
    <message>
        <source>Pan &amp;on</source>
        <translation>Décaler vers l’a&amp;vant</translation>
    </message>
    <message>
        <source>Panel &amp;lower</source>
        <translation>Panneau plus &amp;bas</translation>
    </message>
    <message>
        <source>Panel &amp;taller</source>
        <translation>Panneau plus &amp;haut</translation>
    </message>
    <message>
        <source>Part in the trial</source>
        <translation>Rôle dans l’essai</translation>
    </message>
    <message>
        <source>Part of %1</source>
        <translation>Rôle de %1</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png)</source>
        <translation>Images (*.svg *.png)</translation>
    </message>
    <message>
        <source>Play the chosen segment again and again</source>
        <translation>Lire le segment choisi en boucle</translation>
    </message>
    <message>
        <source>Plots over distance</source>
        <translation>Graphiques selon la distance</translation>
    </message>
    <message>
        <source>Power at the wheels if known</source>
        <translation>Puissance à la roue si connue</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Predictions</source>
        <translation>Prévisions</translation>
    </message>
    <message>
        <source>Predictions that the book keeps</source>
        <translation>Prévisions gardées par le carnet</translation>
    </message>
    <message>
        <source>Predictions, and how often the&amp;y held…</source>
        <translation>Pré&amp;visions et leur vérification…</translation>
    </message>
    <message>
        <source>Preparing the print…</source>
        <translation>Préparation de l’impression…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Put the timing &amp;line at the cursor</source>
        <translation>Placer la &amp;ligne de chrono au curseur</translation>
    </message>
    <message>
        <source>Quicker by %1 over all laps, but no more in the later half of them.</source>
        <translation>Plus rapide de %1 sur tous les tours, mais sans progrès dans leur seconde moitié.</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Fréq.</translation>
    </message>
    <message>
        <source>Rate, range and gaps of every channel; what was guessed, left out and mended</source>
        <translation>Fréquence, plage et trous de chaque voie ; ce qui a été deviné, omis et réparé</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Lu comme</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Lu d’après</translation>
    </message>
    <message>
        <source>Reading the whole book</source>
        <translation>Lecture de tout le carnet</translation>
    </message>
    <message>
        <source>Rear spring rate at the wheel, N/mm</source>
        <translation>Raideur arrière à la roue, N/mm</translation>
    </message>
    <message>
        <source>Remember this set</source>
        <translation>Garder ce jeu</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>La retirer</translation>
    </message>
    <message>
        <source>Removed sessions</source>
        <translation>Sessions retirées</translation>
    </message>
    <message>
        <source>Remove…</source>
        <translation>Retirer…</translation>
    </message>
    <message>
        <source>Renamed.</source>
        <translation>Renommée.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source>Return keeps the note, Shift+Return begins a new line, Escape leaves it as it was</source>
        <translation>Entrée garde la note, Maj+Entrée commence une ligne, Échap la laisse telle qu’elle était</translation>
    </message>
    <message>
        <source>Return names the session that was driven with one, Delete takes it back.</source>
        <translation>Entrée : indiquer la session roulée ainsi ; Suppr : retirer la prévision.</translation>
    </message>
    <message>
        <source>Return opens what is chosen; Shift and the arrows choose several</source>
        <translation>Entrée ouvre ce qui est choisi ; Maj et les flèches en choisissent plusieurs</translation>
    </message>
    <message>
        <source>Return, double-click</source>
        <translation>Entrée, double-clic</translation>
    </message>
    <message>
        <source>Rows per &amp;second</source>
        <translation>&amp;Lignes par seconde</translation>
    </message>
    <message>
        <source>Rows per second: a number from 0.1 to 10,000, or nothing.</source>
        <translation>Lignes par seconde : un nombre de 0,1 à 10000, ou rien.</translation>
    </message>
    <message>
        <source>Run home</source>
        <translation>Arrivée</translation>
    </message>
    <message>
        <source>S&amp;lowest point</source>
        <translation>P&amp;oint le plus lent</translation>
    </message>
    <message>
        <source>S&amp;plit the segment at the cursor</source>
        <translation>&amp;Couper le segment au curseur</translation>
    </message>
    <message>
        <source>Sa&amp;ve the track as a file…</source>
        <translation>&amp;Enregistrer le circuit dans un fichier…</translation>
    </message>
    <message>
        <source>Save as HTML…</source>
        <translation>Enregistrer en HTML…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>Save the &amp;table as CSV…</source>
        <translation>Enregistrer le tableau en C&amp;SV…</translation>
    </message>
    <message>
        <source>Save the debrief sheet</source>
        <translation>Enregistrer la fiche de débrief</translation>
    </message>
    <message>
        <source>Save the debrief sheet as &amp;HTML…</source>
        <translation>Enregistrer la fiche de débrief en H&amp;TML…</translation>
    </message>
    <message>
        <source>Save the debrief sheet as &amp;PDF…</source>
        <translation>Enregistrer la fiche de débrief en &amp;PDF…</translation>
    </message>
    <message>
        <source>Save the p&amp;lots as SVG or PNG…</source>
        <translation>Enregistrer les &amp;graphiques en SVG ou PNG…</translation>
    </message>
    <message>
        <source>Save the plots as SVG or PNG</source>
        <translation>Enregistrer les graphiques en SVG ou PNG</translation>
    </message>
    <message>
        <source>Save the table: %1</source>
        <translation>Enregistrer le tableau : %1</translation>
    </message>
    <message>
        <source>Save the track</source>
        <translation>Enregistrer le circuit</translation>
    </message>
    <message>
        <source>Saving what can be read</source>
        <translation>Récupération de ce qui est lisible</translation>
    </message>
    <message>
        <source>Se&amp;t the lap aside, count it, or leave it to the program</source>
        <translation>Écart&amp;er le tour, le compter ou laisser décider le programme</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Seconds of each segment by cause</source>
        <translation>Secondes de chaque segment par cause</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Seen from above, north up: a lap of %1 m with %2 corners: %3</source>
        <translation>Vu d’en haut, nord en haut : un tour de %1 m avec %2 virages : %3</translation>
    </message>
    <message>
        <source>Segment</source>
        <translation>Segment</translation>
    </message>
    <message>
        <source>Segment times of all clean laps</source>
        <translation>Temps sur le segment de tous les tours propres</translation>
    </message>
    <message>
        <source>Segments</source>
        <translation>Segments</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>sept.</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Session</translation>
    </message>
    <message>
        <source>Sessions of the &amp;book…</source>
        <translation>Sessions du &amp;carnet…</translation>
    </message>
    <message>
        <source>Sessions of the book</source>
        <translation>Sessions du carnet</translation>
    </message>
    <message>
        <source>Sessions of the season</source>
        <translation>Sessions de la saison</translation>
    </message>
    <message>
        <source>Sessions of the trial</source>
        <translation>Sessions de l’essai</translation>
    </message>
    <message>
        <source>Sessions through time</source>
        <translation>Sessions au fil du temps</translation>
    </message>
    <message>
        <source>Set of channels</source>
        <translation>Jeu de voies</translation>
    </message>
    <message>
        <source>Set&amp;up of both cars…</source>
        <translation>Réglages des deux &amp;voitures…</translation>
    </message>
    <message>
        <source>Setup of A: %1. Setup of B: %2.</source>
        <translation>Réglages de A : %1. Réglages de B : %2.</translation>
    </message>
    <message>
        <source>Setup of both cars</source>
        <translation>Réglages des deux voitures</translation>
    </message>
    <message>
        <source>Setup sheet then</source>
        <translation>Fiche de réglages d’alors</translation>
    </message>
    <message>
        <source>Setup sheets (*.setup.json *.json);;All files (*)</source>
        <translation>Fiches de réglages (*.setup.json *.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Setup since the one before</source>
        <translation>Réglages depuis la précédente</translation>
    </message>
    <message>
        <source>Setup tri&amp;al…</source>
        <translation>&amp;Essai de réglage…</translation>
    </message>
    <message>
        <source>Setup trial</source>
        <translation>Essai de réglage</translation>
    </message>
    <message>
        <source>Setup trial…</source>
        <translation>Essai de réglage…</translation>
    </message>
    <message>
        <source>Setup, A · B</source>
        <translation>Réglages, A · B</translation>
    </message>
    <message>
        <source>Setup…</source>
        <translation>Réglages…</translation>
    </message>
    <message>
        <source>Show &amp;less of the lap</source>
        <translation>Montrer m&amp;oins du tour</translation>
    </message>
    <message>
        <source>Show &amp;more of the lap</source>
        <translation>Montrer &amp;plus du tour</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Tout montrer</translation>
    </message>
    <message>
        <source>Show less or more, at the pointer</source>
        <translation>Montrer moins ou plus, au pointeur</translation>
    </message>
    <message>
        <source>Show the &amp;whole lap</source>
        <translation>Montrer tout le &amp;tour</translation>
    </message>
    <message>
        <source>Show the chosen segment close &amp;up</source>
        <translation>&amp;Zoomer sur le segment choisi</translation>
    </message>
    <message>
        <source>Show the first three</source>
        <translation>Montrer les trois premiers</translation>
    </message>
    <message>
        <source>Show the folder of the &amp;log…</source>
        <translation>Montrer le dossier du &amp;journal…</translation>
    </message>
    <message>
        <source>Show the whole page</source>
        <translation>Montrer la page entière</translation>
    </message>
    <message>
        <source>Show this lap be&amp;hind A and B, or no more</source>
        <translation>Afficher ou masquer ce tour &amp;derrière A et B</translation>
    </message>
    <message>
        <source>Show this place on the Compare page</source>
        <translation>Montrer cet endroit à la page Comparaison</translation>
    </message>
    <message>
        <source>Simulated: the driver uses the tyres as now. A setup trial of your own wing tells what it costs; change it in small steps, and within the event&apos;s rules.</source>
        <translation>Simulé : le pilote exploite les pneus comme maintenant. Un essai de réglage de son propre aileron dit ce qu’il coûte ; le changer par petits pas, et dans le cadre du règlement.</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Slowest %1 against %2</source>
        <translation>Minimum %1 contre %2</translation>
    </message>
    <message>
        <source>Slowest speed in a corner, fastest on a straight, %1</source>
        <translation>Vitesse la plus basse dans un virage, la plus haute dans une ligne droite, %1</translation>
    </message>
    <message>
        <source>So&amp;und of B</source>
        <translation>S&amp;on de B</translation>
    </message>
    <message>
        <source>Sort the laps</source>
        <translation>Trier les tours</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Speed at the end of the segment, %1</source>
        <translation>Vitesse à la fin du segment, %1</translation>
    </message>
    <message>
        <source>Speed of A and B, and the gap, over the distance along the track</source>
        <translation>Vitesse de A et B, et l’écart, selon la distance le long du circuit</translation>
    </message>
    <message>
        <source>Spread of each driver&apos;s &amp;other clean laps</source>
        <translation>Dispersion des autres tours propres de cha&amp;que pilote</translation>
    </message>
    <message>
        <source>St&amp;ills of both videos, a page</source>
        <translation>I&amp;mages fixes des deux vidéos, une page</translation>
    </message>
    <message>
        <source>Start straight</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Still to be won, s</source>
        <translation>Reste à gagner, s</translation>
    </message>
    <message>
        <source>Stills of both videos on the debrief sheet</source>
        <translation>Images fixes des deux vidéos sur la fiche de débrief</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Stop what is &amp;running</source>
        <translation>Arrêter ce qui est en co&amp;urs</translation>
    </message>
    <message>
        <source>Stopped. Choose the car again to begin anew.</source>
        <translation>Arrêté. Choisir la voiture à nouveau pour recommencer.</translation>
    </message>
    <message>
        <source>Stopped: nothing was reckoned.</source>
        <translation>Arrêté : rien n’a été calculé.</translation>
    </message>
    <message>
        <source>Stopped: the causes were not worked out. Choose the page again to start anew.</source>
        <translation>Arrêté : les causes n’ont pas été calculées. Choisir la page à nouveau pour recommencer.</translation>
    </message>
    <message>
        <source>Straights that matter</source>
        <translation>Lignes droites qui comptent</translation>
    </message>
    <message>
        <source>Sure?</source>
        <translation>Sûr ?</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>Échanger A et B</translation>
    </message>
    <message>
        <source>Sweep: felt planted, could lift later</source>
        <translation>Grande courbe : bien posée, lever plus tard possible</translation>
    </message>
    <message>
        <source>T&amp;he book itself</source>
        <translation>Le carne&amp;t lui-même</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>Take %1 out of the book? </source>
        <translation>Retirer %1 du carnet ? </translation>
    </message>
    <message>
        <source>Take a recipe from a file</source>
        <translation>Reprendre une recette d’un fichier</translation>
    </message>
    <message>
        <source>Take a session or a pairing out of the book</source>
        <translation>Retirer une session ou une paire du carnet</translation>
    </message>
    <message>
        <source>Take the &amp;next panel in hand</source>
        <translation>&amp;Sélectionner le panneau suivant</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>Pris pour</translation>
    </message>
    <message>
        <source>Taken, in place of &quot;%1&quot;, which was made for the same files.</source>
        <translation>Reprise, à la place de « %1 », faite pour les mêmes fichiers.</translation>
    </message>
    <message>
        <source>Taken.</source>
        <translation>Reprise.</translation>
    </message>
    <message>
        <source>Takes the session off this page; its file stays as it is</source>
        <translation>Enlève la session de cette page ; son fichier reste tel quel</translation>
    </message>
    <message>
        <source>Takes the session out of the book; its file stays as it is (Delete)</source>
        <translation>Retire la session du carnet ; son fichier reste tel quel (Suppr)</translation>
    </message>
    <message>
        <source>Taking in the other book</source>
        <translation>Reprise de l’autre carnet</translation>
    </message>
    <message>
        <source>Text, GPX or NMEA, from any logger. They are read and never changed.</source>
        <translation>Texte, GPX ou NMEA, de n’importe quel enregistreur. Ils sont lus, jamais modifiés.</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>Le carnet</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Its sessions can still be opened; &quot;lapwright book salvage&quot; makes a whole book of what can be read, when no window has it open.</source>
        <translation>Le carnet est abîmé : %1. Ses sessions s’ouvrent encore ; « lapwright book salvage » refait un carnet intact de ce qui est lisible, quand aucune fenêtre ne l’a ouvert.</translation>
    </message>
    <message>
        <source>The book is empty: open a file, and its session is in it.</source>
        <translation>Le carnet est vide : ouvrir un fichier, et sa session y est.</translation>
    </message>
    <message>
        <source>The book is whole; nothing was changed.</source>
        <translation>Le carnet est intact ; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>The book on the Sessions page</source>
        <translation>Le carnet à la page Sessions</translation>
    </message>
    <message>
        <source>The book was read to its end and is whole.</source>
        <translation>Le carnet a été lu jusqu’au bout et il est intact.</translation>
    </message>
    <message>
        <source>The book…</source>
        <translation>Le carnet…</translation>
    </message>
    <message>
        <source>The car is quickest as it is now: nothing is predicted to change.</source>
        <translation>La voiture est la plus rapide telle qu’elle est : aucun changement n’est prévu.</translation>
    </message>
    <message>
        <source>The car of %1 is yours</source>
        <translation>Ma voiture est celle de %1</translation>
    </message>
    <message>
        <source>The change (95 %), times in s a lap</source>
        <translation>Effet du changement (95 %), s par tour</translation>
    </message>
    <message>
        <source>The change costs %1 a lap</source>
        <translation>Le changement coûte %1 par tour</translation>
    </message>
    <message>
        <source>The change is worth %1 a lap</source>
        <translation>Le changement fait gagner %1 par tour</translation>
    </message>
    <message>
        <source>The debrief sheet</source>
        <translation>La fiche de débrief</translation>
    </message>
    <message>
        <source>The debrief sheet as it will print</source>
        <translation>La fiche de débrief telle qu’elle s’imprimera</translation>
    </message>
    <message>
        <source>The first %1 rows make %2 channels over %3 s.</source>
        <translation>Les %1 premières lignes donnent %2 voies sur %3 s.</translation>
    </message>
    <message>
        <source>The language changes when Lapwright is started the next time.</source>
        <translation>La langue change au prochain démarrage de Lapwright.</translation>
    </message>
    <message>
        <source>The lap of %1 is not clean (%2).</source>
        <translation>Le tour de %1 n’est pas propre (%2).</translation>
    </message>
    <message>
        <source>The lap of %1 is not clean.</source>
        <translation>Le tour de %1 n’est pas propre.</translation>
    </message>
    <message>
        <source>The largest part is %1: %2 gains %3 there</source>
        <translation>Le plus gros écart est à %1 : %2 y gagne %3</translation>
    </message>
    <message>
        <source>The largest part is probably %1: %2 gains %3 there</source>
        <translation>Le plus gros écart est probablement à %1 : %2 y gagne %3</translation>
    </message>
    <message>
        <source>The mass of car %1 is not known: figures are per kilogram, and mass is not a cause of its own. Enter it under Setup.</source>
        <translation>La masse de la voiture %1 n’est pas connue : les valeurs sont par kilogramme, et la masse n’est pas une cause à part. La saisir sous Réglages.</translation>
    </message>
    <message>
        <source>The mass of neither car is known: figures are per kilogram, and mass is not a cause of its own. Enter it under Setup.</source>
        <translation>La masse d’aucune des deux voitures n’est connue : les valeurs sont par kilogramme, et la masse n’est pas une cause à part. La saisir sous Réglages.</translation>
    </message>
    <message>
        <source>The model does not fit here: </source>
        <translation>Le modèle ne convient pas ici : </translation>
    </message>
    <message>
        <source>The next test that tells most</source>
        <translation>L’essai suivant le plus instructif</translation>
    </message>
    <message>
        <source>The program ended before its window was closed. These were open: %1.</source>
        <translation>Le programme s’est arrêté avant la fermeture de sa fenêtre. Étaient ouverts : %1.</translation>
    </message>
    <message>
        <source>The program has no question.</source>
        <translation>Aucune question en suspens.</translation>
    </message>
    <message>
        <source>The program is not sure of %1 columns, marked with a question mark.</source>
        <translation>Le programme n’est pas sûr de %1 colonnes, marquées d’un point d’interrogation.</translation>
    </message>
    <message>
        <source>The program is not sure of one column, marked with a question mark.</source>
        <translation>Le programme n’est pas sûr d’une colonne, marquée d’un point d’interrogation.</translation>
    </message>
    <message>
        <source>The program took it for: %1 (%2)</source>
        <translation>Le programme l’a prise pour : %1 (%2)</translation>
    </message>
    <message>
        <source>The quickest clean lap there</source>
        <translation>Le tour propre le plus rapide à cet endroit</translation>
    </message>
    <message>
        <source>The segment &amp;ends at the cursor</source>
        <translation>Le segment &amp;finit au curseur</translation>
    </message>
    <message>
        <source>The segment &amp;starts at the cursor</source>
        <translation>Le segment com&amp;mence au curseur</translation>
    </message>
    <message>
        <source>The session was driven on %1.</source>
        <translation>La session a été roulée le %1.</translation>
    </message>
    <message>
        <source>The setup of %1 was read from %2.</source>
        <translation>Les réglages de %1 ont été lus dans %2.</translation>
    </message>
    <message>
        <source>The system&apos;s &amp;language</source>
        <translation>La &amp;langue du système</translation>
    </message>
    <message>
        <source>The track from above, with the places of the findings</source>
        <translation>Le circuit vu d’en haut, avec les lieux des constats</translation>
    </message>
    <message>
        <source>The track that is asked about</source>
        <translation>Le circuit sur lequel porte la question</translation>
    </message>
    <message>
        <source>The trend over all laps; minus is quicker</source>
        <translation>La tendance sur tous les tours ; moins veut dire plus rapide</translation>
    </message>
    <message>
        <source>The video begins this long behind the recording. Put the cursor at a place that you know in the picture, and move this until the picture is there.</source>
        <translation>Retard du début de la vidéo sur l’enregistrement. Mettre le curseur à un endroit reconnaissable à l’image, puis changer cette valeur jusqu’à ce que l’image y soit.</translation>
    </message>
    <message>
        <source>The video is being opened</source>
        <translation>Ouverture de la vidéo</translation>
    </message>
    <message>
        <source>The video of %1 begins this long behind the recording</source>
        <translation>Retard du début de la vidéo de %1 sur l’enregistrement</translation>
    </message>
    <message>
        <source>The videos do not show these moments.</source>
        <translation>Les vidéos ne montrent pas ces moments.</translation>
    </message>
    <message>
        <source>The window goes on without its book. %1</source>
        <translation>La fenêtre continue sans son carnet. %1</translation>
    </message>
    <message>
        <source>There are none yet. One is kept whenever the columns of a file are answered for.</source>
        <translation>Aucune pour l’instant. Une recette est gardée dès que les colonnes d’un fichier sont précisées.</translation>
    </message>
    <message>
        <source>There is a %1 &quot;%2&quot; already: the two become one, and all sessions of &quot;%3&quot; are then of &quot;%2&quot;.</source>
        <translation>Existe déjà (%1) : « %2 ». Les deux seront réunis, et toutes les sessions de « %3 » seront alors de « %2 ».</translation>
    </message>
    <message>
        <source>There is no book that can be written: it is what keeps predictions.</source>
        <translation>Il n’y a pas de carnet où écrire : c’est lui qui garde les prévisions.</translation>
    </message>
    <message>
        <source>These rows make no session: %1</source>
        <translation>Ces lignes ne font pas une session : %1</translation>
    </message>
    <message>
        <source>These sessions were taken out of the book. One comes back with its laps, notes and pairings, as it was.</source>
        <translation>Ces sessions ont été retirées du carnet. Une session rétablie revient avec ses tours, notes et paires, telle qu’elle était.</translation>
    </message>
    <message>
        <source>This recipe is used for files of its shape: the same delimiter and the same names of columns.</source>
        <translation>Cette recette sert aux fichiers de sa forme : même séparateur et mêmes noms de colonnes.</translation>
    </message>
    <message>
        <source>Time won, s: A up, B down; outline: within its error</source>
        <translation>Gain, s : A en haut, B en bas ; contour seul : dans l’erreur</translation>
    </message>
    <message>
        <source>Times over the laps</source>
        <translation>Temps au fil des tours</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>To keep in mind</source>
        <translation>À garder en tête</translation>
    </message>
    <message>
        <source>Top speed</source>
        <translation>Vitesse max</translation>
    </message>
    <message>
        <source>Touch the plot, or use the arrow keys: both speeds and the gap at that place.</source>
        <translation>Toucher le graphique ou utiliser les flèches : les deux vitesses et l’écart à cet endroit.</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Circuit</translation>
    </message>
    <message>
        <source>Track files (*.json)</source>
        <translation>Fichiers de circuit (*.json)</translation>
    </message>
    <message>
        <source>Track without a name</source>
        <translation>Circuit sans nom</translation>
    </message>
    <message>
        <source>Track, unrolled: bumps up are left-handers</source>
        <translation>Circuit déroulé : bosse en haut = gauche</translation>
    </message>
    <message>
        <source>Trust r&amp;eport of this session</source>
        <translation>Rapport de fia&amp;bilité de cette session</translation>
    </message>
    <message>
        <source>Try next: %1</source>
        <translation>À essayer : %1</translation>
    </message>
    <message>
        <source>Try the sample sessions</source>
        <translation>Essayer les exemples</translation>
    </message>
    <message>
        <source>Tyre</source>
        <translation>Pneu</translation>
    </message>
    <message>
        <source>Tyre grip and downforce that the laps allow</source>
        <translation>Grip pneus et appui compatibles avec les tours</translation>
    </message>
    <message>
        <source>Tyres used: A %1, B %2</source>
        <translation>Pneus exploités : A %1, B %2</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Un&amp;its</source>
        <translation>U&amp;nités</translation>
    </message>
    <message>
        <source>Uncertainty b&amp;and on the gap</source>
        <translation>&amp;Bande d’incertitude sur l’écart</translation>
    </message>
    <message>
        <source>Undo brings all of it back; its file stays as it is.</source>
        <translation>Annuler la remet en entier ; son fichier reste tel quel.</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Flèches haut et bas</translation>
    </message>
    <message>
        <source>Use and keep</source>
        <translation>Utiliser et garder</translation>
    </message>
    <message>
        <source>Used for files with</source>
        <translation>Pour les fichiers avec</translation>
    </message>
    <message>
        <source>Usual key</source>
        <translation>Par défaut</translation>
    </message>
    <message>
        <source>Values of the first rows</source>
        <translation>Valeurs des premières lignes</translation>
    </message>
    <message>
        <source>Vi&amp;deo</source>
        <translation>&amp;Vidéo</translation>
    </message>
    <message>
        <source>Video of %1</source>
        <translation>Vidéo de %1</translation>
    </message>
    <message>
        <source>Video of %1, all files of it that the camera wrote</source>
        <translation>Vidéo de %1, tous les fichiers que la caméra en a écrits</translation>
    </message>
    <message>
        <source>Video of &amp;A…</source>
        <translation>Vidéo de &amp;A…</translation>
    </message>
    <message>
        <source>Video of &amp;B…</source>
        <translation>Vidéo de &amp;B…</translation>
    </message>
    <message>
        <source>Videos</source>
        <translation>Vidéos</translation>
    </message>
    <message>
        <source>Videos: %1</source>
        <translation>Vidéos : %1</translation>
    </message>
    <message>
        <source>Video…</source>
        <translation>Vidéo…</translation>
    </message>
    <message>
        <source>What %1 are worth cannot be told.</source>
        <translation>Ce que valent les facteurs %1 est indéterminable.</translation>
    </message>
    <message>
        <source>What %1 is worth cannot be told.</source>
        <translation>Ce que vaut le facteur %1 est indéterminable.</translation>
    </message>
    <message>
        <source>What both drivers do</source>
        <translation>Ce que font les deux pilotes</translation>
    </message>
    <message>
        <source>What came out</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>What can be done there</source>
        <translation>Ce qu’on peut y faire</translation>
    </message>
    <message>
        <source>What comes out</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>What each column of the file was taken for; correct it here</source>
        <translation>Pour quoi chaque colonne du fichier a été prise ; à corriger ici</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Résultat constaté</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Et si</translation>
    </message>
    <message>
        <source>What is a change worth? Sessions without it and with it, compared segment by segment</source>
        <translation>Que vaut un changement ? Sessions sans lui et avec lui, comparées segment par segment</translation>
    </message>
    <message>
        <source>What is changed</source>
        <translation>Ce qui change</translation>
    </message>
    <message>
        <source>What it did to the car cannot be told: %1.</source>
        <translation>Son effet sur la voiture est indéterminable : %1.</translation>
    </message>
    <message>
        <source>What it shows are estimates from recorded data. They can be wrong, and they know nothing of the next lap&apos;s weather, traffic or tyres.</source>
        <translation>Ce sont des estimations tirées de données enregistrées. Elles peuvent être fausses et ne savent rien de la météo, du trafic ni des pneus du prochain tour.</translation>
    </message>
    <message>
        <source>What makes the difference between the cars cannot be told from these laps.</source>
        <translation>Ces tours ne disent pas ce qui fait la différence entre les voitures.</translation>
    </message>
    <message>
        <source>What the aero is worth cannot be told: %1.</source>
        <translation>Ce que vaut l’aéro est indéterminable : %1.</translation>
    </message>
    <message>
        <source>What the change is worth cannot be told from these laps: %1 a lap.</source>
        <translation>Ces tours ne disent pas ce que vaut le changement : %1 par tour.</translation>
    </message>
    <message>
        <source>What the change is worth, by segment</source>
        <translation>Ce que vaut le changement, par segment</translation>
    </message>
    <message>
        <source>What the data say of each car</source>
        <translation>Ce que les données disent de chaque voiture</translation>
    </message>
    <message>
        <source>What the drivers make of it cannot be told apart from the cars.</source>
        <translation>Ce que les pilotes en font ne peut être séparé des voitures.</translation>
    </message>
    <message>
        <source>What was driven since is being looked at…</source>
        <translation>Examen des sessions roulées depuis…</translation>
    </message>
    <message>
        <source>What was open was a part of another book: start the program with that book.</source>
        <translation>Ce qui était ouvert faisait partie d’un autre carnet : lancer le programme avec ce carnet-là.</translation>
    </message>
    <message>
        <source>Wheel speed and satellite speed agree within %1 %.</source>
        <translation>La vitesse des roues et celle des satellites concordent à %1 % près.</translation>
    </message>
    <message>
        <source>Wheel speed reads %1 % high against satellite speed.</source>
        <translation>La vitesse des roues est trop haute de %1 % par rapport à celle des satellites.</translation>
    </message>
    <message>
        <source>Wheel speed reads %1 % low against satellite speed.</source>
        <translation>La vitesse des roues est trop basse de %1 % par rapport à celle des satellites.</translation>
    </message>
    <message>
        <source>When the session was driven, in UTC; the day alone will do.</source>
        <translation>Quand la session a été roulée, en UTC ; le jour seul suffit.</translation>
    </message>
    <message>
        <source>Where both cars drove, close up on the chosen segment, and how far apart they were</source>
        <translation>Où les deux voitures sont passées, en gros plan sur le segment choisi, et leur écart</translation>
    </message>
    <message>
        <source>Where it &amp;turns in</source>
        <translation>Point de &amp;braquage</translation>
    </message>
    <message>
        <source>Where the trend of the later half of the laps ends</source>
        <translation>Où finit la tendance de la seconde moitié des tours</translation>
    </message>
    <message>
        <source>Whether the aero of either car pays off cannot be told from these laps.</source>
        <translation>Ces tours ne disent pas si l’aéro de l’une ou l’autre voiture est payante.</translation>
    </message>
    <message>
        <source>Whether the lap times fall cannot be told from %1.</source>
        <translation>On ne peut dire si les temps au tour baissent : %1.</translation>
    </message>
    <message>
        <source>Whether the lap times fall cannot be told: %1.</source>
        <translation>On ne peut dire si les temps au tour baissent : %1.</translation>
    </message>
    <message>
        <source>Which car is yours?</source>
        <translation>Laquelle est ma voiture ?</translation>
    </message>
    <message>
        <source>Which lap is quicker cannot be told from these recordings.</source>
        <translation>Ces enregistrements ne disent pas quel tour est le plus rapide.</translation>
    </message>
    <message>
        <source>Which session was driven with it?</source>
        <translation>Quelle session a été roulée avec ?</translation>
    </message>
    <message>
        <source>Which sessions or figure</source>
        <translation>Quelles sessions ou quel chiffre</translation>
    </message>
    <message>
        <source>Which track or car</source>
        <translation>Quel circuit ou quelle voiture</translation>
    </message>
    <message>
        <source>Who corners faster cannot be told from these laps.</source>
        <translation>Ces tours ne disent pas qui passe plus vite en virage.</translation>
    </message>
    <message>
        <source>Who is quicker in %1 cannot be told.</source>
        <translation>On ne peut dire qui est plus rapide dans %1.</translation>
    </message>
    <message>
        <source>Whole lap</source>
        <translation>Tour entier</translation>
    </message>
    <message>
        <source>Whom %1 favours cannot be told from these laps.</source>
        <translation>Ces tours ne disent pas qui le facteur %1 avantage.</translation>
    </message>
    <message>
        <source>Whom %1 together favour cannot be told from these laps.</source>
        <translation>Ces tours ne disent pas qui avantagent ensemble les facteurs %1.</translation>
    </message>
    <message>
        <source>With it go its laps and samples, %1. </source>
        <translation>Avec elle partent ses tours et ses mesures, %1. </translation>
    </message>
    <message>
        <source>Within %1 s of the quickest it is from %2 to %3.</source>
        <translation>À %1 s près du plus rapide : de %2 à %3.</translation>
    </message>
    <message>
        <source>Won by</source>
        <translation>Gain de</translation>
    </message>
    <message>
        <source>Words that the sessions of the book are searched for</source>
        <translation>Mots cherchés dans les sessions du carnet</translation>
    </message>
    <message>
        <source>Words: track, car, driver, tyre, or what stands in a note</source>
        <translation>Mots : circuit, voiture, pilote, pneu ou texte d’une note</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>En cours</translation>
    </message>
    <message>
        <source>Working out why…</source>
        <translation>Recherche des causes…</translation>
    </message>
    <message>
        <source>Write the recipe to a file</source>
        <translation>Écrire la recette dans un fichier</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>Écriture de %1…</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Écrit le</translation>
    </message>
    <message>
        <source>Your car:</source>
        <translation>Ma voiture :</translation>
    </message>
    <message>
        <source>a few draws run away from the others</source>
        <translation>quelques tirages s’éloignent des autres</translation>
    </message>
    <message>
        <source>a lap</source>
        <translation>par tour</translation>
    </message>
    <message>
        <source>a line is longer than 1 MiB</source>
        <translation>une ligne dépasse 1 Mio</translation>
    </message>
    <message>
        <source>a number in it is beyond what can be stored</source>
        <translation>un nombre y dépasse ce qui peut être enregistré</translation>
    </message>
    <message>
        <source>a picture of the video cannot be converted</source>
        <translation>une image de la vidéo ne peut être convertie</translation>
    </message>
    <message>
        <source>a picture of the video cannot be made a still</source>
        <translation>une image de la vidéo ne peut devenir une image fixe</translation>
    </message>
    <message>
        <source>a rate beside accelerations: kept as it is</source>
        <translation>une vitesse de rotation à côté d’accélérations : gardée telle quelle</translation>
    </message>
    <message>
        <source>a recipe without a title</source>
        <translation>une recette sans titre</translation>
    </message>
    <message>
        <source>a segment needs &quot;name&quot;, &quot;kind&quot; (corner or straight), &quot;start_m&quot; &lt; &quot;end_m&quot;, and follows the one before it</source>
        <translation>un segment a besoin de « name », « kind » (corner ou straight), « start_m » &lt; « end_m », et suit celui d’avant</translation>
    </message>
    <message>
        <source>a session</source>
        <translation>une session</translation>
    </message>
    <message>
        <source>a session of the book</source>
        <translation>une session du carnet</translation>
    </message>
    <message>
        <source>a still of the video cannot be read</source>
        <translation>une image fixe de la vidéo ne peut être lue</translation>
    </message>
    <message>
        <source>a trial needs four clean laps or more</source>
        <translation>un essai demande au moins quatre tours propres</translation>
    </message>
    <message>
        <source>a trial tells of a change of one car with one driver on one track: leave one of them out</source>
        <translation>un essai juge un changement d’une voiture avec un pilote sur un circuit : laisser l’un des deux de côté</translation>
    </message>
    <message>
        <source>a usual step is worth</source>
        <translation>effet d’un pas courant</translation>
    </message>
    <message>
        <source>aero</source>
        <translation>aéro</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>air %1</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>pression de l’air</translation>
    </message>
    <message>
        <source>air temperature</source>
        <translation>température de l’air</translation>
    </message>
    <message>
        <source>all laps were driven with the same setup</source>
        <translation>tous les tours ont été roulés avec le même réglage</translation>
    </message>
    <message>
        <source>all positions lie within a few hundredths of a second</source>
        <translation>toutes les positions tiennent en quelques centièmes de seconde</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>an angle beside roll and pitch: kept as it is</source>
        <translation>un angle à côté du roulis et du tangage : gardé tel quel</translation>
    </message>
    <message>
        <source>an entry of &quot;columns&quot; is no object</source>
        <translation>une entrée de « columns » n’est pas un objet</translation>
    </message>
    <message>
        <source>and %1 further channels</source>
        <translation>et %1 autres voies</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>another length than the other laps</source>
        <translation>autre longueur que les autres tours</translation>
    </message>
    <message>
        <source>another program is writing to the book, which can only be read here</source>
        <translation>un autre programme écrit dans le carnet, qui ne peut être que lu ici</translation>
    </message>
    <message>
        <source>another window is busy with the book: nothing was changed</source>
        <translation>une autre fenêtre est occupée avec le carnet : rien n’a été modifié</translation>
    </message>
    <message>
        <source>as entered here</source>
        <translation>tels que saisis ici</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>tel quel</translation>
    </message>
    <message>
        <source>as much as now</source>
        <translation>autant</translation>
    </message>
    <message>
        <source>as the time</source>
        <translation>selon le temps</translation>
    </message>
    <message>
        <source>as you say</source>
        <translation>comme indiqué</translation>
    </message>
    <message>
        <source>ask for another change</source>
        <translation>demandez un autre changement</translation>
    </message>
    <message>
        <source>band: where A may be, seen from B</source>
        <translation>bande : où A peut être, vu de B</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barre |</translation>
    </message>
    <message>
        <source>bar: 95 % interval; hollow: not decided by the data</source>
        <translation>barre : intervalle à 95 % ; creux : les données ne tranchent pas</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>référence</translation>
    </message>
    <message>
        <source>beacon</source>
        <translation>balise</translation>
    </message>
    <message>
        <source>beacon channel of the file</source>
        <translation>voie balise du fichier</translation>
    </message>
    <message>
        <source>begins on the way</source>
        <translation>commence en route</translation>
    </message>
    <message>
        <source>behind</source>
        <translation>retard</translation>
    </message>
    <message>
        <source>behind the last segment lies the timing line</source>
        <translation>derrière le dernier segment se trouve la ligne de chrono</translation>
    </message>
    <message>
        <source>beside a speed from satellites, so taken as the wheels&apos;</source>
        <translation>à côté d’une vitesse par satellites, donc prise pour celle des roues</translation>
    </message>
    <message>
        <source>best %1</source>
        <translation>meilleur %1</translation>
    </message>
    <message>
        <source>best segments of %1 put together: %2; laps that differ by chance alone would give %3</source>
        <translation>meilleurs segments de %1 mis bout à bout : %2 ; des tours qui ne diffèrent que par hasard donneraient %3</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>espaces</translation>
    </message>
    <message>
        <source>both at the same place%1; B plays %2 times as fast as it was</source>
        <translation>les deux au même endroit%1 ; B lue à %2 fois sa vitesse réelle</translation>
    </message>
    <message>
        <source>both let go at the same moment%1</source>
        <translation>les deux partent au même moment%1</translation>
    </message>
    <message>
        <source>brake</source>
        <translation>frein</translation>
    </message>
    <message>
        <source>brake pressure</source>
        <translation>pression de frein</translation>
    </message>
    <message>
        <source>brakes %1 earlier</source>
        <translation>freine %1 plus tôt</translation>
    </message>
    <message>
        <source>brakes %1 later</source>
        <translation>freine %1 plus tard</translation>
    </message>
    <message>
        <source>brakes, %1 before slowest</source>
        <translation>freine, %1 avant le minimum</translation>
    </message>
    <message>
        <source>bringing the maps together</source>
        <translation>mise en correspondance des cartes</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>à la main</translation>
    </message>
    <message>
        <source>by the positions it counts the other way round: turned, so that forward and left are positive</source>
        <translation>d’après les positions elle compte dans l’autre sens : retournée, pour que l’avant et la gauche soient positifs</translation>
    </message>
    <message>
        <source>by the setup sheets</source>
        <translation>d’après les fiches de réglages</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>indéterminable</translation>
    </message>
    <message>
        <source>cannot be told from these sessions</source>
        <translation>indéterminable d’après ces sessions</translation>
    </message>
    <message>
        <source>cannot be told: %1</source>
        <translation>indéterminable : %1</translation>
    </message>
    <message>
        <source>cannot be told: %1 is too wide to judge by</source>
        <translation>impossible à dire : %1 est trop large pour juger</translation>
    </message>
    <message>
        <source>car</source>
        <translation>voiture</translation>
    </message>
    <message>
        <source>car A</source>
        <translation>voiture A</translation>
    </message>
    <message>
        <source>car B</source>
        <translation>voiture B</translation>
    </message>
    <message>
        <source>car?</source>
        <translation>voiture ?</translation>
    </message>
    <message>
        <source>carry up to %1 more to the slowest point</source>
        <translation>garder jusqu’à %1 de plus au point le plus lent</translation>
    </message>
    <message>
        <source>change</source>
        <translation>modif.</translation>
    </message>
    <message>
        <source>channel %1 is damaged in the book and was left out: import the file again</source>
        <translation>la voie %1 est abîmée dans le carnet et a été omise : importer le fichier de nouveau</translation>
    </message>
    <message>
        <source>check its folder and your rights to it</source>
        <translation>vérifier son dossier et les droits sur celui-ci</translation>
    </message>
    <message>
        <source>check its name and your rights to it</source>
        <translation>vérifier son nom et les droits sur celui-ci</translation>
    </message>
    <message>
        <source>check that it is there and may be read</source>
        <translation>vérifier qu’elle est là et qu’on a le droit de la lire</translation>
    </message>
    <message>
        <source>check that the track file belongs to this track</source>
        <translation>vérifier que le fichier de circuit est bien celui de ce circuit</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>vérifier le disque</translation>
    </message>
    <message>
        <source>check the disk or card</source>
        <translation>vérifier le disque ou la carte</translation>
    </message>
    <message>
        <source>check the folder, your rights to it and the room on the disk</source>
        <translation>vérifier le dossier, les droits sur celui-ci et la place sur le disque</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>vérifier le nom</translation>
    </message>
    <message>
        <source>check the name and that it may be read</source>
        <translation>vérifier le nom et le droit de lecture</translation>
    </message>
    <message>
        <source>check the name, or begin a book with &quot;lapwright book add&quot; or in the window</source>
        <translation>vérifier le nom, ou commencer un carnet avec « lapwright book add » ou dans la fenêtre</translation>
    </message>
    <message>
        <source>check the unit of its speed</source>
        <translation>vérifier l’unité de sa vitesse</translation>
    </message>
    <message>
        <source>check your rights to its folder</source>
        <translation>vérifier les droits sur son dossier</translation>
    </message>
    <message>
        <source>checking the book</source>
        <translation>vérification du carnet</translation>
    </message>
    <message>
        <source>checking the samples</source>
        <translation>vérification des mesures</translation>
    </message>
    <message>
        <source>choice of lap A</source>
        <translation>le choix du tour A</translation>
    </message>
    <message>
        <source>choice of lap B</source>
        <translation>le choix du tour B</translation>
    </message>
    <message>
        <source>choice of your car</source>
        <translation>le choix de ma voiture</translation>
    </message>
    <message>
        <source>choose a logger&apos;s file, or look into the book&apos;s list</source>
        <translation>choisir un fichier d’acquisition, ou regarder dans la liste du carnet</translation>
    </message>
    <message>
        <source>choose a place further away</source>
        <translation>choisir un endroit plus éloigné</translation>
    </message>
    <message>
        <source>choose a place on the lap</source>
        <translation>choisir un endroit du tour</translation>
    </message>
    <message>
        <source>choose a recording with at least one whole lap</source>
        <translation>choisir un enregistrement avec au moins un tour entier</translation>
    </message>
    <message>
        <source>choose a session with at least one lap from the timing line to the timing line</source>
        <translation>choisir une session avec au moins un tour de la ligne de chrono à la ligne de chrono</translation>
    </message>
    <message>
        <source>choose a session with whole laps</source>
        <translation>choisir une session avec des tours entiers</translation>
    </message>
    <message>
        <source>choose another file name</source>
        <translation>choisir un autre nom de fichier</translation>
    </message>
    <message>
        <source>choose another folder or file name</source>
        <translation>choisir un autre dossier ou nom de fichier</translation>
    </message>
    <message>
        <source>choose another lap</source>
        <translation>choisir un autre tour</translation>
    </message>
    <message>
        <source>choose another lap, or two sessions of the same track</source>
        <translation>choisir un autre tour, ou deux sessions du même circuit</translation>
    </message>
    <message>
        <source>choose another name, or add --unite to make the two one</source>
        <translation>choisir un autre nom, ou ajouter --unite pour réunir les deux</translation>
    </message>
    <message>
        <source>choose another session</source>
        <translation>choisir une autre session</translation>
    </message>
    <message>
        <source>choose it again where it lies now</source>
        <translation>la choisir de nouveau là où elle se trouve maintenant</translation>
    </message>
    <message>
        <source>choose one</source>
        <translation>en choisir un</translation>
    </message>
    <message>
        <source>choose sessions of the same track and direction</source>
        <translation>choisir des sessions du même circuit et du même sens</translation>
    </message>
    <message>
        <source>choose sessions with and without the change</source>
        <translation>choisir des sessions avec et sans le changement</translation>
    </message>
    <message>
        <source>choose two sessions at the same track</source>
        <translation>choisir deux sessions sur le même circuit</translation>
    </message>
    <message>
        <source>click</source>
        <translation>clic</translation>
    </message>
    <message>
        <source>click on &quot;lap&quot; or &quot;time&quot; above them</source>
        <translation>clic sur « tour » ou « temps » au-dessus</translation>
    </message>
    <message>
        <source>click on its name</source>
        <translation>clic sur son nom</translation>
    </message>
    <message>
        <source>close it there and do it again</source>
        <translation>l’y fermer et recommencer</translation>
    </message>
    <message>
        <source>close other programs</source>
        <translation>fermer d’autres programmes</translation>
    </message>
    <message>
        <source>coast less between throttle and brake</source>
        <translation>moins de roue libre entre gaz et frein</translation>
    </message>
    <message>
        <source>coast with the clutch down from %1 to %2 on the longest straight, and enter the drag area that it gives, 2 × mass × (deceleration − %3 m/s²) / (air density × speed²), good to %4 m²</source>
        <translation>laisser filer, débrayé, de %1 à %2 dans la plus longue ligne droite, et saisir le SCx obtenu, 2 × masse × (décélération − %3 m/s²) / (densité de l’air × vitesse²), à %4 m² près</translation>
    </message>
    <message>
        <source>column &quot;%1&quot;:</source>
        <translation>colonne « %1 » :</translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation>colonne %1 : %2</translation>
    </message>
    <message>
        <source>columns are read as %1 says</source>
        <translation>les colonnes sont lues comme le dit %1</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>compare sessions that were recorded the same way</source>
        <translation>comparer des sessions enregistrées de la même façon</translation>
    </message>
    <message>
        <source>conditions?</source>
        <translation>conditions ?</translation>
    </message>
    <message>
        <source>convert it to 4K or less</source>
        <translation>la convertir en 4K ou moins</translation>
    </message>
    <message>
        <source>convert it to H.264</source>
        <translation>la convertir en H.264</translation>
    </message>
    <message>
        <source>convert it to MP4</source>
        <translation>la convertir en MP4</translation>
    </message>
    <message>
        <source>convert the video to H.264</source>
        <translation>convertir la vidéo en H.264</translation>
    </message>
    <message>
        <source>copy it from the camera again</source>
        <translation>la copier de nouveau depuis la caméra</translation>
    </message>
    <message>
        <source>copy it from the camera again, or let the camera repair it</source>
        <translation>la copier de nouveau depuis la caméra, ou la faire réparer par la caméra</translation>
    </message>
    <message>
        <source>copy it to a folder that you may write, and open the copy</source>
        <translation>le copier dans un dossier où l’on peut écrire, et ouvrir la copie</translation>
    </message>
    <message>
        <source>copy the book with all files that begin with its name to a folder that you may write</source>
        <translation>copier le carnet avec tous les fichiers qui commencent par son nom dans un dossier où l’on peut écrire</translation>
    </message>
    <message>
        <source>copy the file from the logger again</source>
        <translation>copier de nouveau le fichier depuis l’enregistreur</translation>
    </message>
    <message>
        <source>cornering as driven</source>
        <translation>passage en virage tel que roulé</translation>
    </message>
    <message>
        <source>correct it in the setup sheet</source>
        <translation>le corriger dans la fiche de réglages</translation>
    </message>
    <message>
        <source>counting of %1</source>
        <translation>la prise en compte du %1</translation>
    </message>
    <message>
        <source>course</source>
        <translation>cap</translation>
    </message>
    <message>
        <source>d MMM
hh:mm</source>
        <translation>d MMM
hh:mm</translation>
    </message>
    <message>
        <source>d MMM
yyyy</source>
        <translation>d MMM
yyyy</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>date and time of day</source>
        <translation>date et heure du jour</translation>
    </message>
    <message>
        <source>date of %1</source>
        <translation>la date de %1</translation>
    </message>
    <message>
        <source>date: %1</source>
        <translation>date : %1</translation>
    </message>
    <message>
        <source>date?</source>
        <translation>date ?</translation>
    </message>
    <message>
        <source>dates can be read as day/month or month/day: taken as day/month</source>
        <translation>les dates peuvent se lire jour/mois ou mois/jour : prises comme jour/mois</translation>
    </message>
    <message>
        <source>days with fractions</source>
        <translation>jours avec fractions</translation>
    </message>
    <message>
        <source>days with fractions by its values</source>
        <translation>d’après ses valeurs, des jours avec fractions</translation>
    </message>
    <message>
        <source>ddmm.mmmm without marks</source>
        <translation>ddmm.mmmm sans signes</translation>
    </message>
    <message>
        <source>ddmmyy without marks</source>
        <translation>ddmmyy sans séparateurs</translation>
    </message>
    <message>
        <source>degrees and minutes without a mark (ddmm.mmmm) by their size</source>
        <translation>d’après leur taille, degrés et minutes sans signe (ddmm.mmmm)</translation>
    </message>
    <message>
        <source>degrees by their values</source>
        <translation>d’après leurs valeurs, des degrés</translation>
    </message>
    <message>
        <source>degrees fit the speed</source>
        <translation>les degrés vont avec la vitesse</translation>
    </message>
    <message>
        <source>degrees with marks or letters, O is east</source>
        <translation>degrés avec signes ou lettres, O = est</translation>
    </message>
    <message>
        <source>degrees with marks or letters, O is west</source>
        <translation>degrés avec signes ou lettres, O = ouest</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>distance</translation>
    </message>
    <message>
        <source>distance along the track · speed: A solid, B dashed</source>
        <translation>distance le long du circuit · vitesse : A trait plein, B tirets</translation>
    </message>
    <message>
        <source>do it again in a moment</source>
        <translation>recommencer dans un instant</translation>
    </message>
    <message>
        <source>does not follow the track all the way</source>
        <translation>ne suit pas le circuit jusqu’au bout</translation>
    </message>
    <message>
        <source>double-click</source>
        <translation>double-clic</translation>
    </message>
    <message>
        <source>downforce</source>
        <translation>appui</translation>
    </message>
    <message>
        <source>downforce area</source>
        <translation>appui SCz</translation>
    </message>
    <message>
        <source>downforce area, m²</source>
        <translation>appui SCz, m²</translation>
    </message>
    <message>
        <source>downforce area, m² on a tonne</source>
        <translation>appui SCz, m² par tonne</translation>
    </message>
    <message>
        <source>downforce at %1</source>
        <translation>appui à %1</translation>
    </message>
    <message>
        <source>downforce more than now, m²</source>
        <translation>appui en plus de l’actuel, m²</translation>
    </message>
    <message>
        <source>downforce more than now, m² on a tonne</source>
        <translation>appui en plus de l’actuel, m² par tonne</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>traînée</translation>
    </message>
    <message>
        <source>drag +
power</source>
        <translation>traînée +
puiss.</translation>
    </message>
    <message>
        <source>drag + power</source>
        <translation>traînée + puissance</translation>
    </message>
    <message>
        <source>drag and power</source>
        <translation>traînée et puissance</translation>
    </message>
    <message>
        <source>drag area</source>
        <translation>traînée SCx</translation>
    </message>
    <message>
        <source>drag area, m²</source>
        <translation>traînée SCx, m²</translation>
    </message>
    <message>
        <source>drag area, m² on a tonne</source>
        <translation>traînée SCx, m² par tonne</translation>
    </message>
    <message>
        <source>drag at %1</source>
        <translation>traînée à %1</translation>
    </message>
    <message>
        <source>drag it by its name to another&apos;s place</source>
        <translation>la tirer par son nom à la place d’une autre</translation>
    </message>
    <message>
        <source>drag its mark on ribbon or map</source>
        <translation>tirer son repère sur le ruban ou la carte</translation>
    </message>
    <message>
        <source>drag the border between two</source>
        <translation>tirer la limite entre deux</translation>
    </message>
    <message>
        <source>drag, or wheel sideways</source>
        <translation>tirer, ou molette de côté</translation>
    </message>
    <message>
        <source>drawing the ensemble</source>
        <translation>tirage de l’ensemble</translation>
    </message>
    <message>
        <source>drawing the line through all laps</source>
        <translation>tracé de la ligne à travers tous les tours</translation>
    </message>
    <message>
        <source>drive more laps of each setup</source>
        <translation>rouler plus de tours avec chaque réglage</translation>
    </message>
    <message>
        <source>drive the baseline once more after the change</source>
        <translation>rouler encore une fois la référence après le changement</translation>
    </message>
    <message>
        <source>driver</source>
        <translation>pilote</translation>
    </message>
    <message>
        <source>driver &amp; rest</source>
        <translation>pilote &amp; reste</translation>
    </message>
    <message>
        <source>driver?</source>
        <translation>pilote ?</translation>
    </message>
    <message>
        <source>east</source>
        <translation>est</translation>
    </message>
    <message>
        <source>end of %1</source>
        <translation>la fin de %1</translation>
    </message>
    <message>
        <source>ends on the way</source>
        <translation>finit en route</translation>
    </message>
    <message>
        <source>engine speed</source>
        <translation>régime moteur</translation>
    </message>
    <message>
        <source>engine speed was not recorded: how power changes with speed is hardly known, so it and the drag are known less well</source>
        <translation>le régime moteur n’a pas été enregistré : on sait à peine comment la puissance change avec la vitesse, elle et la traînée sont donc moins bien connues</translation>
    </message>
    <message>
        <source>engine used</source>
        <translation>moteur exploité</translation>
    </message>
    <message>
        <source>engine used on straights</source>
        <translation>moteur exploité en ligne droite</translation>
    </message>
    <message>
        <source>enter the power at the wheels from a dynamometer, good to 3 %</source>
        <translation>saisir la puissance aux roues mesurée au banc, à 3 % près</translation>
    </message>
    <message>
        <source>enter the spring rates in the setup (suspension travel was recorded)</source>
        <translation>saisir les raideurs dans les réglages (le débattement a été enregistré)</translation>
    </message>
    <message>
        <source>every comma stands before three digits: taken as decimal commas</source>
        <translation>chaque virgule précède trois chiffres : prises comme virgules décimales</translation>
    </message>
    <message>
        <source>every item needs a &quot;name&quot; and a &quot;value&quot;</source>
        <translation>chaque élément de « items » a besoin de « name » et de « value »</translation>
    </message>
    <message>
        <source>every session has the same setup sheet: write down what is changed, and what it does is told here</source>
        <translation>chaque session a la même fiche de réglages : noter ce qui change, et l’effet s’affiche ici</translation>
    </message>
    <message>
        <source>exit A</source>
        <translation>sortie A</translation>
    </message>
    <message>
        <source>exit A · B</source>
        <translation>sortie A · B</translation>
    </message>
    <message>
        <source>export fewer channels</source>
        <translation>exporter moins de voies</translation>
    </message>
    <message>
        <source>export one session alone</source>
        <translation>exporter une seule session</translation>
    </message>
    <message>
        <source>export the session as delimited text</source>
        <translation>exporter la session en texte avec séparateurs</translation>
    </message>
    <message>
        <source>export the session as delimited text, GPX or NMEA 0183</source>
        <translation>exporter la session en texte avec séparateurs, GPX ou NMEA 0183</translation>
    </message>
    <message>
        <source>export the session with its lap column, or with positions</source>
        <translation>exporter la session avec sa colonne de tours, ou avec des positions</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude</source>
        <translation>exporter la session avec latitude et longitude</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude, or with a speed</source>
        <translation>exporter la session avec latitude et longitude, ou avec une vitesse</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude, or with its speed throughout</source>
        <translation>exporter la session avec latitude et longitude, ou avec sa vitesse tout du long</translation>
    </message>
    <message>
        <source>export the track as plain GPX 1.1</source>
        <translation>exporter la trace en GPX 1.1 simple</translation>
    </message>
    <message>
        <source>export the track with times</source>
        <translation>exporter la trace avec les temps</translation>
    </message>
    <message>
        <source>export with semicolons or tabs, or with decimal points</source>
        <translation>exporter avec des points-virgules ou des tabulations, ou avec des points décimaux</translation>
    </message>
    <message>
        <source>fastest</source>
        <translation>meilleur</translation>
    </message>
    <message>
        <source>few clean laps: what differs from lap to lap is hardly known</source>
        <translation>peu de tours propres : on sait à peine ce qui varie d’un tour à l’autre</translation>
    </message>
    <message>
        <source>fewer than five flying laps</source>
        <translation>moins de cinq tours lancés</translation>
    </message>
    <message>
        <source>fewer than ten flying laps</source>
        <translation>moins de dix tours lancés</translation>
    </message>
    <message>
        <source>fewer than two track points have a time and a position</source>
        <translation>moins de deux points de trace ont un temps et une position</translation>
    </message>
    <message>
        <source>filled: best clean lap; hollow, dashed: median of the clean laps</source>
        <translation>plein : meilleur tour propre ; creux, tirets : médiane des tours propres</translation>
    </message>
    <message>
        <source>finding the laps</source>
        <translation>recherche des tours</translation>
    </message>
    <message>
        <source>for now %1 s earlier</source>
        <translation>pour l’instant %1 s plus tôt</translation>
    </message>
    <message>
        <source>for now %1 s later</source>
        <translation>pour l’instant %1 s plus tard</translation>
    </message>
    <message>
        <source>forces and power in place of figures per kilogram, and mass as a cause</source>
        <translation>forces et puissance au lieu de valeurs par kilogramme, et la masse comme cause</translation>
    </message>
    <message>
        <source>forgetting of %1</source>
        <translation>l’oubli de %1</translation>
    </message>
    <message>
        <source>from %1, which lies beside it</source>
        <translation>de %1, qui est à côté</translation>
    </message>
    <message>
        <source>from 2026-05-16</source>
        <translation>dès 2026-05-16</translation>
    </message>
    <message>
        <source>from the book</source>
        <translation>du carnet</translation>
    </message>
    <message>
        <source>from the book, as %1 beside the file has it</source>
        <translation>du carnet, comme dans %1 à côté du fichier</translation>
    </message>
    <message>
        <source>from the book; %1 beside the file says otherwise</source>
        <translation>du carnet ; %1 à côté du fichier dit autre chose</translation>
    </message>
    <message>
        <source>front spring rate</source>
        <translation>raideur avant</translation>
    </message>
    <message>
        <source>full throttle</source>
        <translation>pleins gaz</translation>
    </message>
    <message>
        <source>full throttle %1 later</source>
        <translation>pleins gaz %1 plus tard</translation>
    </message>
    <message>
        <source>full throttle %1 sooner</source>
        <translation>pleins gaz %1 plus tôt</translation>
    </message>
    <message>
        <source>full throttle, %1 after slowest</source>
        <translation>pleins gaz, %1 après le minimum</translation>
    </message>
    <message>
        <source>further channel</source>
        <translation>autre voie</translation>
    </message>
    <message>
        <source>gains %1</source>
        <translation>gagne %1</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>gap, s: A ahead is up</source>
        <translation>écart, s : A devant est en haut</translation>
    </message>
    <message>
        <source>gear</source>
        <translation>rapport</translation>
    </message>
    <message>
        <source>getting quicker</source>
        <translation>progresse</translation>
    </message>
    <message>
        <source>getting slower</source>
        <translation>ralentit</translation>
    </message>
    <message>
        <source>give a session with a whole lap of that track</source>
        <translation>donner une session avec un tour entier de ce circuit</translation>
    </message>
    <message>
        <source>give a shorter one</source>
        <translation>en donner un plus court</translation>
    </message>
    <message>
        <source>give an MP4, MOV, MKV, AVI or TS file</source>
        <translation>donner un fichier MP4, MOV, MKV, AVI ou TS</translation>
    </message>
    <message>
        <source>give another name</source>
        <translation>donner un autre nom</translation>
    </message>
    <message>
        <source>give it alone</source>
        <translation>la donner seule</translation>
    </message>
    <message>
        <source>give it one</source>
        <translation>lui en donner un</translation>
    </message>
    <message>
        <source>give one</source>
        <translation>en donner un</translation>
    </message>
    <message>
        <source>give the video, not its sound alone</source>
        <translation>donner la vidéo, non son seul son</translation>
    </message>
    <message>
        <source>grip +
downforce</source>
        <translation>grip +
appui</translation>
    </message>
    <message>
        <source>grip + downforce</source>
        <translation>grip + appui</translation>
    </message>
    <message>
        <source>grip as used</source>
        <translation>grip utilisé</translation>
    </message>
    <message>
        <source>held: it was %1</source>
        <translation>vérifiée : c’était %1</translation>
    </message>
    <message>
        <source>hhmmss without marks</source>
        <translation>hhmmss sans séparateurs</translation>
    </message>
    <message>
        <source>hold tyre, pressure and temperature against the other car&apos;s.</source>
        <translation>comparer pneus, pression et température à ceux de l’autre voiture.</translation>
    </message>
    <message>
        <source>hold tyre, pressure and temperature against the other car&apos;s; %1.</source>
        <translation>comparer pneus, pression et température à ceux de l’autre voiture ; %1.</translation>
    </message>
    <message>
        <source>holding predictions against what was driven</source>
        <translation>comparaison des prévisions avec ce qui a été roulé</translation>
    </message>
    <message>
        <source>hours, minutes and seconds without marks by its values</source>
        <translation>d’après ses valeurs, heures, minutes et secondes sans signes</translation>
    </message>
    <message>
        <source>hours:minutes:seconds</source>
        <translation>heures:minutes:secondes</translation>
    </message>
    <message>
        <source>hours:minutes:seconds:parts, %1 a second</source>
        <translation>heures:minutes:secondes:parties, %1 par seconde</translation>
    </message>
    <message>
        <source>how the car turns is not known</source>
        <translation>on ne sait pas comment la voiture tourne</translation>
    </message>
    <message>
        <source>how the car turns is not known, so that the picture tells nothing</source>
        <translation>on ne sait pas comment la voiture tourne, l’image ne dit donc rien</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>in %1 and %2</source>
        <translation>dans %1 et %2</translation>
    </message>
    <message>
        <source>in lap</source>
        <translation>tour de rentrée</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incomplet</translation>
    </message>
    <message>
        <source>install the newer version</source>
        <translation>installer la version plus récente</translation>
    </message>
    <message>
        <source>install the whole package of Lapwright</source>
        <translation>installer le paquet complet de Lapwright</translation>
    </message>
    <message>
        <source>is there</source>
        <translation>avéré</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>it changes every %1 s, which no lap takes: not used as the number of the lap</source>
        <translation>elle change toutes les %1 s, trop peu pour un tour : non utilisée comme numéro du tour</translation>
    </message>
    <message>
        <source>it does not follow the positions as the %1 acceleration would: its axis points elsewhere, kept without a meaning</source>
        <translation>elle ne suit pas les positions comme le ferait l’accélération %1 : son axe pointe ailleurs, gardée sans signification</translation>
    </message>
    <message>
        <source>it does not follow the speed between the positions</source>
        <translation>elle ne suit pas la vitesse entre les positions</translation>
    </message>
    <message>
        <source>it fits the positions where one is %1 %2: taken so</source>
        <translation>elle s’accorde aux positions si un vaut %1 %2 : prise ainsi</translation>
    </message>
    <message>
        <source>it reads %1 times the speed between the positions</source>
        <translation>elle indique %1 fois la vitesse entre les positions</translation>
    </message>
    <message>
        <source>it would be more than the two cars allow</source>
        <translation>ce serait plus que ce que permettent les deux voitures</translation>
    </message>
    <message>
        <source>its O is east</source>
        <translation>son O est l’est</translation>
    </message>
    <message>
        <source>its O is west</source>
        <translation>son O est l’ouest</translation>
    </message>
    <message>
        <source>its cells bear the letters of a %1</source>
        <translation>ses cellules portent les lettres d’une donnée « %1 »</translation>
    </message>
    <message>
        <source>its corners are not those of %1</source>
        <translation>ses virages ne sont pas ceux de %1</translation>
    </message>
    <message>
        <source>its corners stay as the program finds them</source>
        <translation>ses virages restent tels que le programme les trouve</translation>
    </message>
    <message>
        <source>its laps are too short or too long to be compared</source>
        <translation>ses tours sont trop courts ou trop longs pour être comparés</translation>
    </message>
    <message>
        <source>its laps are too short or too long to be laps</source>
        <translation>ses tours sont trop courts ou trop longs pour être des tours</translation>
    </message>
    <message>
        <source>its name does not say what it is, but it follows %1 in %2</source>
        <translation>son nom ne dit pas ce que c’est, mais elle suit %1 en %2</translation>
    </message>
    <message>
        <source>its name does not say what it is: in %1 it may be the %2, which nothing else in the file confirms, kept without a meaning</source>
        <translation>son nom ne dit pas ce qu’elle est : en %1, elle peut être « %2 », ce que rien d’autre ne confirme dans le fichier, gardée sans signification</translation>
    </message>
    <message>
        <source>its name does not say what it is: in %1 it moves as the %2 does, kept without a meaning</source>
        <translation>son nom ne dit pas ce qu’elle est : en %1, elle bouge comme « %2 », gardée sans signification</translation>
    </message>
    <message>
        <source>its name does not say what it is: taken as the %1 in %2, because it follows %3</source>
        <translation>son nom ne dit pas ce qu’elle est : prise comme %1 en %2, car elle suit : %3</translation>
    </message>
    <message>
        <source>its name is not known, but it moves as %1 does</source>
        <translation>son nom est inconnu, mais elle varie comme %1</translation>
    </message>
    <message>
        <source>its name is not known, but its readings advance evenly like a clock&apos;s</source>
        <translation>son nom est inconnu, mais ses valeurs avancent régulièrement comme une horloge</translation>
    </message>
    <message>
        <source>its name is not known, but its values look like a position</source>
        <translation>son nom est inconnu, mais ses valeurs ressemblent à une position</translation>
    </message>
    <message>
        <source>its name is not known: kept as it is</source>
        <translation>son nom est inconnu : gardée telle quelle</translation>
    </message>
    <message>
        <source>its name says %1, but its cells cannot be read as that: not used</source>
        <translation>son nom dit %1, mais ses cellules ne peuvent être lues ainsi : non utilisée</translation>
    </message>
    <message>
        <source>its name says an axis and no direction: taken as the %1 one</source>
        <translation>son nom dit un axe, mais pas de direction : prise comme accélération %1</translation>
    </message>
    <message>
        <source>its name says on which side of zero it lies</source>
        <translation>son nom dit de quel côté de zéro elle se trouve</translation>
    </message>
    <message>
        <source>its sentences bear no checksum: damage in them cannot be found</source>
        <translation>ses phrases n’ont pas de somme de contrôle : les dommages ne peuvent y être trouvés</translation>
    </message>
    <message>
        <source>its unit does not measure its meaning</source>
        <translation>son unité ne mesure pas ce qu’elle signifie</translation>
    </message>
    <message>
        <source>its unit is written as %1, but it fits the positions in %2</source>
        <translation>son unité est écrite %1, mais elle va avec les positions en %2</translation>
    </message>
    <message>
        <source>its values go beyond 100, so that they are no percent: kept as written, without a meaning</source>
        <translation>ses valeurs dépassent 100, ce ne sont donc pas des pour cent : gardées comme écrites, sans signification</translation>
    </message>
    <message>
        <source>its values look like degrees: taken as %1</source>
        <translation>ses valeurs ressemblent à des degrés : prise comme %1</translation>
    </message>
    <message>
        <source>join of %1</source>
        <translation>la jonction de %1</translation>
    </message>
    <message>
        <source>keep sessions with clean laps of that car in the book</source>
        <translation>garder dans le carnet des sessions avec des tours propres de cette voiture</translation>
    </message>
    <message>
        <source>keeping of a prediction</source>
        <translation>conservation d’une prévision</translation>
    </message>
    <message>
        <source>kind of %1</source>
        <translation>le type de %1</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>tour</translation>
    </message>
    <message>
        <source>lap %1</source>
        <translation>tour %1</translation>
    </message>
    <message>
        <source>lap %1 leaves the track on which A is driven</source>
        <translation>le tour %1 quitte le circuit sur lequel A a roulé</translation>
    </message>
    <message>
        <source>lap %1 leaves the track on which the two are compared</source>
        <translation>le tour %1 quitte le circuit sur lequel les deux sont comparés</translation>
    </message>
    <message>
        <source>lap %1 of %2</source>
        <translation>tour %1 de %2</translation>
    </message>
    <message>
        <source>lap %1 · %2</source>
        <translation>tour %1 · %2</translation>
    </message>
    <message>
        <source>lap %1 · %2 (%3)</source>
        <translation>tour %1 · %2 (%3)</translation>
    </message>
    <message>
        <source>lap %1, %2, %3</source>
        <translation>tour %1, %2, %3</translation>
    </message>
    <message>
        <source>lap column of the file</source>
        <translation>colonne des tours du fichier</translation>
    </message>
    <message>
        <source>lap number</source>
        <translation>numéro de tour</translation>
    </message>
    <message>
        <source>lap time</source>
        <translation>temps au tour</translation>
    </message>
    <message>
        <source>lap time against now, s</source>
        <translation>écart de temps au tour, s</translation>
    </message>
    <message>
        <source>lap, to be A</source>
        <translation>tour, comme A</translation>
    </message>
    <message>
        <source>lap, to be B</source>
        <translation>tour, comme B</translation>
    </message>
    <message>
        <source>laps behind A and B</source>
        <translation>les tours derrière A et B</translation>
    </message>
    <message>
        <source>lapwright laps lists them</source>
        <translation>lapwright laps en donne la liste</translation>
    </message>
    <message>
        <source>lateral</source>
        <translation>latérale</translation>
    </message>
    <message>
        <source>lateral acceleration</source>
        <translation>accélération latérale</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitude</translation>
    </message>
    <message>
        <source>latitude and longitude are the position: kept as it is</source>
        <translation>la latitude et la longitude sont la position : gardée telle quelle</translation>
    </message>
    <message>
        <source>latitude and longitude fit the speed only when they are exchanged: taken so</source>
        <translation>latitude et longitude ne vont avec la vitesse qu’échangées : prises ainsi</translation>
    </message>
    <message>
        <source>latitudes end at 90°: latitude and longitude are taken exchanged</source>
        <translation>les latitudes finissent à 90° : latitude et longitude sont prises échangées</translation>
    </message>
    <message>
        <source>leads nowhere</source>
        <translation>ne mène nulle part</translation>
    </message>
    <message>
        <source>learning has stopped</source>
        <translation>progrès arrêtés</translation>
    </message>
    <message>
        <source>learning how both drivers use their cars</source>
        <translation>recherche de la façon dont les deux pilotes exploitent leurs voitures</translation>
    </message>
    <message>
        <source>learning the noise</source>
        <translation>évaluation du bruit</translation>
    </message>
    <message>
        <source>learning what the cars can do</source>
        <translation>recherche de ce dont les voitures sont capables</translation>
    </message>
    <message>
        <source>leave one of the two out</source>
        <translation>laisser l’une des deux de côté</translation>
    </message>
    <message>
        <source>leave the stills out</source>
        <translation>se passer des images fixes</translation>
    </message>
    <message>
        <source>leave the track file out: the program finds a timing line</source>
        <translation>se passer du fichier de circuit : le programme trouve une ligne de chrono</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>exclue</translation>
    </message>
    <message>
        <source>let the program save what can be read</source>
        <translation>laisser le programme récupérer ce qui est lisible</translation>
    </message>
    <message>
        <source>letter E or W</source>
        <translation>lettre E ou W</translation>
    </message>
    <message>
        <source>letter N or S</source>
        <translation>lettre N ou S</translation>
    </message>
    <message>
        <source>letter, O is east</source>
        <translation>lettre, O = est</translation>
    </message>
    <message>
        <source>letter, O is west</source>
        <translation>lettre, O = ouest</translation>
    </message>
    <message>
        <source>letters beside the %1</source>
        <translation>lettres à côté de « %1 »</translation>
    </message>
    <message>
        <source>level</source>
        <translation>égal</translation>
    </message>
    <message>
        <source>lift to brakes, s</source>
        <translation>lever de pied à freinage, s</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>traj. : %1</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitude</translation>
    </message>
    <message>
        <source>longitudinal</source>
        <translation>longitudinale</translation>
    </message>
    <message>
        <source>longitudinal acceleration</source>
        <translation>accélération longitudinale</translation>
    </message>
    <message>
        <source>look at the book&apos;s list again</source>
        <translation>regarder de nouveau la liste du carnet</translation>
    </message>
    <message>
        <source>look at the book&apos;s list for the names that it has</source>
        <translation>regarder dans la liste du carnet les noms qu’il contient</translation>
    </message>
    <message>
        <source>look at the book&apos;s predictions</source>
        <translation>regardez les prévisions du carnet</translation>
    </message>
    <message>
        <source>look at the permissions of the file</source>
        <translation>regarder les droits du fichier</translation>
    </message>
    <message>
        <source>look for a missing comma, quote or brace</source>
        <translation>chercher une virgule, un guillemet ou une accolade qui manque</translation>
    </message>
    <message>
        <source>look for up to %1 at the exit of the corner before it</source>
        <translation>chercher jusqu’à %1 à la sortie du virage d’avant</translation>
    </message>
    <message>
        <source>look whether it was moved</source>
        <translation>regarder si elle a été déplacée</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>vérifié</translation>
    </message>
    <message>
        <source>loses %1</source>
        <translation>perd %1</translation>
    </message>
    <message>
        <source>lost in shifts, s</source>
        <translation>perdu aux passages, s</translation>
    </message>
    <message>
        <source>make room on the disk and do it again</source>
        <translation>faire de la place sur le disque et recommencer</translation>
    </message>
    <message>
        <source>make room on the disk, or copy the book to another disk</source>
        <translation>faire de la place sur le disque, ou copier le carnet sur un autre disque</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masse</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>measured pressure, standard temperature</source>
        <translation>pression mesurée, température normale</translation>
    </message>
    <message>
        <source>measured temperature and pressure</source>
        <translation>température et pression mesurées</translation>
    </message>
    <message>
        <source>measured temperature, pressure and humidity</source>
        <translation>température, pression et humidité mesurées</translation>
    </message>
    <message>
        <source>measured temperature, standard pressure</source>
        <translation>température mesurée, pression normale</translation>
    </message>
    <message>
        <source>measuring both laps</source>
        <translation>mesure des deux tours</translation>
    </message>
    <message>
        <source>measuring every lap</source>
        <translation>mesure de chaque tour</translation>
    </message>
    <message>
        <source>microseconds since 1970 by their size</source>
        <translation>d’après leur taille, microsecondes depuis 1970</translation>
    </message>
    <message>
        <source>milliseconds since 1970 by their size</source>
        <translation>d’après leur taille, millisecondes depuis 1970</translation>
    </message>
    <message>
        <source>min/top A</source>
        <translation>min/max A</translation>
    </message>
    <message>
        <source>minutes of arc by their size</source>
        <translation>d’après leur taille, minutes d’arc</translation>
    </message>
    <message>
        <source>missed: it was %1</source>
        <translation>manquée : c’était %1</translation>
    </message>
    <message>
        <source>move the braking point up to %1 later</source>
        <translation>retarder le point de freinage de %1 au plus</translation>
    </message>
    <message>
        <source>move the pointer</source>
        <translation>déplacer le pointeur</translation>
    </message>
    <message>
        <source>move the timing line first</source>
        <translation>déplacer d’abord la ligne de chrono</translation>
    </message>
    <message>
        <source>move the timing line to move this end</source>
        <translation>déplacer la ligne de chrono pour déplacer cette limite</translation>
    </message>
    <message>
        <source>much slower than the session&apos;s other lap</source>
        <translation>bien plus lent que l’autre tour de la session</translation>
    </message>
    <message>
        <source>m² on a tonne</source>
        <translation>m² par tonne</translation>
    </message>
    <message>
        <source>name %1</source>
        <translation>le nom %1</translation>
    </message>
    <message>
        <source>name a recipe</source>
        <translation>donner une recette</translation>
    </message>
    <message>
        <source>name a single file</source>
        <translation>donner un seul fichier</translation>
    </message>
    <message>
        <source>name a video file</source>
        <translation>donner un fichier vidéo</translation>
    </message>
    <message>
        <source>name another file</source>
        <translation>donner un autre fichier</translation>
    </message>
    <message>
        <source>name of a set</source>
        <translation>nom d’un jeu</translation>
    </message>
    <message>
        <source>name one of its corners as the comparison does</source>
        <translation>donner un de ses virages comme le fait la comparaison</translation>
    </message>
    <message>
        <source>name the other book&apos;s file</source>
        <translation>donner le fichier de l’autre carnet</translation>
    </message>
    <message>
        <source>name what will be changed, as it will be written then</source>
        <translation>nommez ce qui sera changé, tel que ce sera écrit alors</translation>
    </message>
    <message>
        <source>named &quot;%1&quot;</source>
        <translation>nommée « %1 »</translation>
    </message>
    <message>
        <source>named &quot;%1&quot;; no unit written, %2 fits %3 to %4 %</source>
        <translation>nommée « %1 » ; aucune unité écrite, %2 va avec %3 à %4 % près</translation>
    </message>
    <message>
        <source>names of %1</source>
        <translation>les noms de %1</translation>
    </message>
    <message>
        <source>nanoseconds since 1970 by their size</source>
        <translation>d’après leur taille, nanosecondes depuis 1970</translation>
    </message>
    <message>
        <source>needs mass</source>
        <translation>masse requise</translation>
    </message>
    <message>
        <source>neither engine speed nor speed was recorded for the sound to follow</source>
        <translation>ni régime moteur ni vitesse n’ont été enregistrés, que le son puisse suivre</translation>
    </message>
    <message>
        <source>neither pedal, s</source>
        <translation>aucune pédale, s</translation>
    </message>
    <message>
        <source>neither positions nor a speed were recorded</source>
        <translation>ni positions ni vitesse n’ont été enregistrées</translation>
    </message>
    <message>
        <source>new name of %1</source>
        <translation>le nouveau nom de %1</translation>
    </message>
    <message>
        <source>next test, %1</source>
        <translation>prochain essai, %1</translation>
    </message>
    <message>
        <source>no RMC or ZDA sentence gives the date</source>
        <translation>aucune trame RMC ou ZDA ne donne la date</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>aucun changement</translation>
    </message>
    <message>
        <source>no clean lap</source>
        <translation>aucun tour propre</translation>
    </message>
    <message>
        <source>no corner could be found</source>
        <translation>aucun virage n’a été trouvé</translation>
    </message>
    <message>
        <source>no engine is heard that follows the recording</source>
        <translation>on n’entend aucun moteur qui suive l’enregistrement</translation>
    </message>
    <message>
        <source>no lap</source>
        <translation>pas un tour</translation>
    </message>
    <message>
        <source>no lap follows the track all the way round</source>
        <translation>aucun tour ne suit le circuit en entier</translation>
    </message>
    <message>
        <source>no laps</source>
        <translation>pas de tours</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>aucune ligne</translation>
    </message>
    <message>
        <source>no line names the columns: their meanings are guessed by their values</source>
        <translation>aucune ligne ne nomme les colonnes : leur signification est devinée d’après leurs valeurs</translation>
    </message>
    <message>
        <source>no longer where it was</source>
        <translation>n’est plus où elle était</translation>
    </message>
    <message>
        <source>no mass was given: figures are per kilogram</source>
        <translation>aucune masse donnée : les valeurs sont par kilogramme</translation>
    </message>
    <message>
        <source>no offset stands out at which the engine that is heard follows the recording</source>
        <translation>aucun décalage ne ressort où le moteur entendu suit l’enregistrement</translation>
    </message>
    <message>
        <source>no offset stands out at which the picture turns as the car does</source>
        <translation>aucun décalage ne ressort où l’image tourne comme la voiture</translation>
    </message>
    <message>
        <source>no other clock stands in the file, and it advances evenly from row to row</source>
        <translation>le fichier n’a pas d’autre horloge, et elle avance régulièrement de ligne en ligne</translation>
    </message>
    <message>
        <source>no place is passed twice in the same direction, so there are no laps</source>
        <translation>aucun endroit n’est passé deux fois dans le même sens, donc il n’y a pas de tours</translation>
    </message>
    <message>
        <source>no positions, %1 speed</source>
        <translation>pas de positions, vitesse à %1</translation>
    </message>
    <message>
        <source>no positions, no speed</source>
        <translation>pas de positions, pas de vitesse</translation>
    </message>
    <message>
        <source>no positions: distance is integrated speed, brought to the lap&apos;s length and aligned on cornering, so error bars are wider and the map is a sketch%1</source>
        <translation>pas de positions : la distance est la vitesse intégrée, ramenée à la longueur du tour et calée sur les virages, les barres d’erreur sont donc plus larges et la carte est une esquisse%1</translation>
    </message>
    <message>
        <source>no segment lies there</source>
        <translation>il n’y a pas de segment là</translation>
    </message>
    <message>
        <source>no session of %1 tells anything of the car: %2</source>
        <translation>aucune session de %1 ne dit rien de la voiture : %2</translation>
    </message>
    <message>
        <source>no session since has this setup on this track</source>
        <translation>aucune session depuis n’a ce réglage sur ce circuit</translation>
    </message>
    <message>
        <source>no session&apos;s straights tell power and drag</source>
        <translation>aucune session ne dit puissance et traînée par ses lignes droites</translation>
    </message>
    <message>
        <source>no sound of %1: it plays slower than it was</source>
        <translation>pas de son de %1 : la vidéo défile plus lentement qu’en réalité</translation>
    </message>
    <message>
        <source>no sound of B: it is stretched; let both go on one clock to hear it</source>
        <translation>pas de son de B : la vidéo est étirée ; faire partir les deux sur une même horloge pour l’entendre</translation>
    </message>
    <message>
        <source>no sound: %1</source>
        <translation>pas de son : %1</translation>
    </message>
    <message>
        <source>no stretch at full throttle could be found</source>
        <translation>aucune portion à pleins gaz n’a été trouvée</translation>
    </message>
    <message>
        <source>no table of numbers is found in this file</source>
        <translation>aucun tableau de nombres n’a été trouvé dans ce fichier</translation>
    </message>
    <message>
        <source>no two sentences give a time and a position</source>
        <translation>il n’y a pas deux trames qui donnent un temps et une position</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation>sans unité</translation>
    </message>
    <message>
        <source>no unit is written; %1</source>
        <translation>aucune unité n’est écrite ; %1</translation>
    </message>
    <message>
        <source>no unit written, Pa by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs Pa</translation>
    </message>
    <message>
        <source>no unit written, bar by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs bar</translation>
    </message>
    <message>
        <source>no unit written, beyond 100</source>
        <translation>aucune unité écrite, au-delà de 100</translation>
    </message>
    <message>
        <source>no unit written, degrees by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs des degrés</translation>
    </message>
    <message>
        <source>no unit written, g by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs g</translation>
    </message>
    <message>
        <source>no unit written, hPa by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs hPa</translation>
    </message>
    <message>
        <source>no unit written, kPa by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs kPa</translation>
    </message>
    <message>
        <source>no unit written, m/s² by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs m/s²</translation>
    </message>
    <message>
        <source>no unit written, mm by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs mm</translation>
    </message>
    <message>
        <source>no unit written, ms by its steps</source>
        <translation>aucune unité écrite, d’après ses pas ms</translation>
    </message>
    <message>
        <source>no unit written, ms by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs ms</translation>
    </message>
    <message>
        <source>no unit written, parts of one by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs des parts de un</translation>
    </message>
    <message>
        <source>no unit written, percent by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs des pour cent</translation>
    </message>
    <message>
        <source>no unit written, rpm by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs rpm</translation>
    </message>
    <message>
        <source>no unit written, seconds by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs des secondes</translation>
    </message>
    <message>
        <source>no unit written, taken as bar</source>
        <translation>aucune unité écrite, pris pour bar</translation>
    </message>
    <message>
        <source>no unit written, taken as degrees</source>
        <translation>aucune unité écrite, pris pour des degrés</translation>
    </message>
    <message>
        <source>no unit written, taken as g</source>
        <translation>aucune unité écrite, pris pour g</translation>
    </message>
    <message>
        <source>no unit written, taken as km/h</source>
        <translation>aucune unité écrite, pris pour km/h</translation>
    </message>
    <message>
        <source>no unit written, taken as metres</source>
        <translation>aucune unité écrite, pris pour des mètres</translation>
    </message>
    <message>
        <source>no unit written, taken as ms</source>
        <translation>aucune unité écrite, pris pour ms</translation>
    </message>
    <message>
        <source>no unit written, taken as percent</source>
        <translation>aucune unité écrite, pris pour des pour cent</translation>
    </message>
    <message>
        <source>no unit written, taken as psi</source>
        <translation>aucune unité écrite, pris pour psi</translation>
    </message>
    <message>
        <source>no unit written, taken as rad/s</source>
        <translation>aucune unité écrite, pris pour rad/s</translation>
    </message>
    <message>
        <source>no unit written, taken as rpm</source>
        <translation>aucune unité écrite, pris pour rpm</translation>
    </message>
    <message>
        <source>no unit written, taken as seconds</source>
        <translation>aucune unité écrite, pris pour des secondes</translation>
    </message>
    <message>
        <source>no unit written, taken as °C</source>
        <translation>aucune unité écrite, pris pour °C</translation>
    </message>
    <message>
        <source>no unit written, thousands a minute by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs des milliers par minute</translation>
    </message>
    <message>
        <source>no unit written, thousandths of g by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs des millièmes de g</translation>
    </message>
    <message>
        <source>no unit written, °/s by its values</source>
        <translation>aucune unité écrite, d’après ses valeurs °/s</translation>
    </message>
    <message>
        <source>no unit written, µs by its size</source>
        <translation>aucune unité écrite, d’après sa taille µs</translation>
    </message>
    <message>
        <source>no unit written, µs by its steps</source>
        <translation>aucune unité écrite, d’après ses pas µs</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>none has a clean lap.</source>
        <translation>aucune n’a de tour propre.</translation>
    </message>
    <message>
        <source>north</source>
        <translation>nord</translation>
    </message>
    <message>
        <source>not every session has the car&apos;s mass: areas and power are on a tonne</source>
        <translation>toutes les sessions n’ont pas la masse de la voiture : surfaces et puissance sont par tonne</translation>
    </message>
    <message>
        <source>not every session says when it was driven: they are taken in the order given</source>
        <translation>toutes les sessions ne disent pas quand elles ont été roulées : elles sont prises dans l’ordre donné</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>not in step: move the offset until the picture is where the cursor is</source>
        <translation>non synchronisée : changer le décalage jusqu’à ce que l’image soit au curseur</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>non connue</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>non lu</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>non utilisée</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>pas encore : %1</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>la note sur %1</translation>
    </message>
    <message>
        <source>note on lap %1</source>
        <translation>la note sur le tour %1</translation>
    </message>
    <message>
        <source>note on the session</source>
        <translation>la note sur la session</translation>
    </message>
    <message>
        <source>note that was being typed</source>
        <translation>la note en cours de frappe</translation>
    </message>
    <message>
        <source>nowhere in particular</source>
        <translation>nulle part en particulier</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>number with its unit</source>
        <translation>nombre avec son unité</translation>
    </message>
    <message>
        <source>of it
%1</source>
        <translation>dont
%1</translation>
    </message>
    <message>
        <source>of it %1</source>
        <translation>dont %1</translation>
    </message>
    <message>
        <source>of it aero</source>
        <translation>dont aéro</translation>
    </message>
    <message>
        <source>offset of the video of %1</source>
        <translation>le décalage de la vidéo de %1</translation>
    </message>
    <message>
        <source>on the straights</source>
        <translation>en ligne droite</translation>
    </message>
    <message>
        <source>one part of %1</source>
        <translation>une partie de %1</translation>
    </message>
    <message>
        <source>one session</source>
        <translation>une session</translation>
    </message>
    <message>
        <source>one session alone: what another setup changes is told from two on</source>
        <translation>une seule session : ce que change un autre réglage ne se voit qu’à partir de deux</translation>
    </message>
    <message>
        <source>one session has positions by latitude and longitude, the other none or in metres of its own</source>
        <translation>une session a des positions en latitude et longitude, l’autre aucune ou en mètres qui lui sont propres</translation>
    </message>
    <message>
        <source>only grip and downforce together can be told</source>
        <translation>seuls grip et appui ensemble sont déterminables</translation>
    </message>
    <message>
        <source>open it again</source>
        <translation>l’ouvrir de nouveau</translation>
    </message>
    <message>
        <source>open it as it is</source>
        <translation>l’ouvrir tel quel</translation>
    </message>
    <message>
        <source>open its file again</source>
        <translation>rouvrir son fichier</translation>
    </message>
    <message>
        <source>open the throttle up to %1 sooner</source>
        <translation>remettre les gaz jusqu’à %1 plus tôt</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>out lap</source>
        <translation>tour de sortie</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>parting places</source>
        <translation>séparation des positions</translation>
    </message>
    <message>
        <source>parts of a day by its steps</source>
        <translation>d’après ses pas, des parts de jour</translation>
    </message>
    <message>
        <source>parts of one</source>
        <translation>parties de un</translation>
    </message>
    <message>
        <source>placing both laps on one line</source>
        <translation>placement des deux tours sur une même ligne</translation>
    </message>
    <message>
        <source>placing further laps</source>
        <translation>placement des autres tours</translation>
    </message>
    <message>
        <source>placing laps by their cornering</source>
        <translation>placement des tours d’après leurs virages</translation>
    </message>
    <message>
        <source>placing the positions</source>
        <translation>placement des positions</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>position</source>
        <translation>position</translation>
    </message>
    <message>
        <source>position accuracy</source>
        <translation>précision de position</translation>
    </message>
    <message>
        <source>position dilution</source>
        <translation>dilution de position</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>power at the wheels</source>
        <translation>puissance aux roues</translation>
    </message>
    <message>
        <source>power at the wheels, W on a kg</source>
        <translation>puissance aux roues, W par kg</translation>
    </message>
    <message>
        <source>power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it hardly changes</source>
        <translation>la puissance est la moyenne sur les régimes des lignes droites, %1 à %2 tr/min ; elle y change à peine</translation>
    </message>
    <message>
        <source>power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it runs from %3 to %4 % of that</source>
        <translation>la puissance est la moyenne sur les régimes des lignes droites, %1 à %2 tr/min ; elle y va de %3 à %4 % de celle-ci</translation>
    </message>
    <message>
        <source>press a key here</source>
        <translation>appuyer sur une touche</translation>
    </message>
    <message>
        <source>prior</source>
        <translation>hypothèse</translation>
    </message>
    <message>
        <source>program&apos;s word on %1</source>
        <translation>le jugement du programme sur le %1</translation>
    </message>
    <message>
        <source>proposed by the program on a fast straight at steady speed</source>
        <translation>proposée par le programme sur une ligne droite rapide, à vitesse régulière</translation>
    </message>
    <message>
        <source>putting readings side by side</source>
        <translation>mise côte à côte des relevés</translation>
    </message>
    <message>
        <source>putting the sessions together</source>
        <translation>réunion des sessions</translation>
    </message>
    <message>
        <source>quicker at the exit by %1</source>
        <translation>plus rapide de %1 à la sortie</translation>
    </message>
    <message>
        <source>quicker at the slowest point by %1</source>
        <translation>plus rapide de %1 au point le plus lent</translation>
    </message>
    <message>
        <source>quicker at the top by %1</source>
        <translation>%1 de plus en vitesse max</translation>
    </message>
    <message>
        <source>quicker onto it by %1</source>
        <translation>plus rapide de %1 à l’entrée</translation>
    </message>
    <message>
        <source>quicker there in %1 % of all pairs of clean laps</source>
        <translation>y est plus rapide dans %1 % des paires de tours propres</translation>
    </message>
    <message>
        <source>quickest clean lap %1, %2</source>
        <translation>tour propre le plus rapide %1, %2</translation>
    </message>
    <message>
        <source>radians fit the speed</source>
        <translation>les radians vont avec la vitesse</translation>
    </message>
    <message>
        <source>read as %1</source>
        <translation>lu comme %1</translation>
    </message>
    <message>
        <source>reading characters</source>
        <translation>lecture des caractères</translation>
    </message>
    <message>
        <source>reading from the book</source>
        <translation>lecture du carnet</translation>
    </message>
    <message>
        <source>reading sentences</source>
        <translation>lecture des trames</translation>
    </message>
    <message>
        <source>reading the sessions</source>
        <translation>lecture des sessions</translation>
    </message>
    <message>
        <source>reading track points</source>
        <translation>lecture des points de trace</translation>
    </message>
    <message>
        <source>rear spring rate</source>
        <translation>raideur arrière</translation>
    </message>
    <message>
        <source>record GGA or RMC sentences with a fix</source>
        <translation>enregistrer des trames GGA ou RMC avec une position valide</translation>
    </message>
    <message>
        <source>record more clean laps at full effort</source>
        <translation>enregistrer plus de tours propres à fond</translation>
    </message>
    <message>
        <source>removal of %1</source>
        <translation>le retrait de %1</translation>
    </message>
    <message>
        <source>removal of the pairing %1 against %2</source>
        <translation>le retrait de la paire %1 contre %2</translation>
    </message>
    <message>
        <source>removed on %1</source>
        <translation>retirée le %1</translation>
    </message>
    <message>
        <source>rename by hand</source>
        <translation>renommer à la main</translation>
    </message>
    <message>
        <source>return of %1</source>
        <translation>le rétablissement de %1</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>right click</source>
        <translation>clic droit</translation>
    </message>
    <message>
        <source>rows have more cells than there are names, as if commas were decimal marks and delimiters at once</source>
        <translation>des lignes ont plus de cellules qu’il n’y a de noms, comme si les virgules étaient à la fois signes décimaux et séparateurs</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>s a lap</source>
        <translation>s par tour</translation>
    </message>
    <message>
        <source>said by %1</source>
        <translation>dit par %1</translation>
    </message>
    <message>
        <source>satellites</source>
        <translation>satellites</translation>
    </message>
    <message>
        <source>say what the time column is counted in</source>
        <translation>dire en quelle unité compte la colonne de temps</translation>
    </message>
    <message>
        <source>say which session was driven with it</source>
        <translation>dites quelle session a été roulée avec</translation>
    </message>
    <message>
        <source>seconds by its steps</source>
        <translation>d’après ses pas, des secondes</translation>
    </message>
    <message>
        <source>seconds since 1970 by their size</source>
        <translation>d’après leur taille, secondes depuis 1970</translation>
    </message>
    <message>
        <source>see README.md for what a setup sheet holds</source>
        <translation>voir dans README.md ce que contient une fiche de réglages</translation>
    </message>
    <message>
        <source>see README.md for what a track file holds</source>
        <translation>voir dans README.md ce que contient un fichier de circuit</translation>
    </message>
    <message>
        <source>segment</source>
        <translation>segment</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>point-virgule</translation>
    </message>
    <message>
        <source>separating the causes</source>
        <translation>séparation des causes</translation>
    </message>
    <message>
        <source>session</source>
        <translation>session</translation>
    </message>
    <message>
        <source>session of a prediction</source>
        <translation>session d’une prévision</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>écarté</translation>
    </message>
    <message>
        <source>set aside by hand</source>
        <translation>écarté à la main</translation>
    </message>
    <message>
        <source>set aside by hand: %1</source>
        <translation>écarté à la main : %1</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>mis à la main</translation>
    </message>
    <message>
        <source>setting aside of %1</source>
        <translation>la mise à l’écart du %1</translation>
    </message>
    <message>
        <source>setup</source>
        <translation>réglages</translation>
    </message>
    <message>
        <source>setup of %1</source>
        <translation>les réglages de %1</translation>
    </message>
    <message>
        <source>setup of A</source>
        <translation>les réglages de A</translation>
    </message>
    <message>
        <source>setup of B</source>
        <translation>les réglages de B</translation>
    </message>
    <message>
        <source>setups</source>
        <translation>les réglages</translation>
    </message>
    <message>
        <source>shifts</source>
        <translation>rapports passés</translation>
    </message>
    <message>
        <source>shifts less often</source>
        <translation>change moins souvent de rapport</translation>
    </message>
    <message>
        <source>sideways × %1</source>
        <translation>latéral × %1</translation>
    </message>
    <message>
        <source>slower at the exit by %1</source>
        <translation>plus lent de %1 à la sortie</translation>
    </message>
    <message>
        <source>slower at the slowest point by %1</source>
        <translation>plus lent de %1 au point le plus lent</translation>
    </message>
    <message>
        <source>slower at the top by %1</source>
        <translation>%1 de moins en vitesse max</translation>
    </message>
    <message>
        <source>slower onto it by %1</source>
        <translation>plus lent de %1 à l’entrée</translation>
    </message>
    <message>
        <source>slowest A · B, %1</source>
        <translation>minimum A · B, %1</translation>
    </message>
    <message>
        <source>slowest point</source>
        <translation>point le plus lent</translation>
    </message>
    <message>
        <source>so it fits the motion</source>
        <translation>ainsi cela va avec le mouvement</translation>
    </message>
    <message>
        <source>sound and picture disagree by %1 s: by the sound %2, by the picture %3</source>
        <translation>son et image diffèrent de %1 s : d’après le son %2, d’après l’image %3</translation>
    </message>
    <message>
        <source>sound of %1</source>
        <translation>son de %1</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>vitesse</translation>
    </message>
    <message>
        <source>speed and gear</source>
        <translation>vitesse et rapport</translation>
    </message>
    <message>
        <source>speed of the car</source>
        <translation>vitesse de la voiture</translation>
    </message>
    <message>
        <source>speed, %1</source>
        <translation>vitesse, %1</translation>
    </message>
    <message>
        <source>split of %1</source>
        <translation>la coupe de %1</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>ressorts</translation>
    </message>
    <message>
        <source>standard atmosphere at the track&apos;s altitude</source>
        <translation>atmosphère type à l’altitude du circuit</translation>
    </message>
    <message>
        <source>standard atmosphere, altitude unknown</source>
        <translation>atmosphère type, altitude inconnue</translation>
    </message>
    <message>
        <source>standstill</source>
        <translation>arrêt</translation>
    </message>
    <message>
        <source>start it with the book, or open the session&apos;s file</source>
        <translation>la lancer avec le carnet, ou ouvrir le fichier de la session</translation>
    </message>
    <message>
        <source>start of %1</source>
        <translation>le début de %1</translation>
    </message>
    <message>
        <source>steering angle</source>
        <translation>angle de volant</translation>
    </message>
    <message>
        <source>straight, %1</source>
        <translation>ligne droite, %1</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sûr</translation>
    </message>
    <message>
        <source>suspension front left</source>
        <translation>suspension avant gauche</translation>
    </message>
    <message>
        <source>suspension front right</source>
        <translation>suspension avant droite</translation>
    </message>
    <message>
        <source>suspension rear left</source>
        <translation>suspension arrière gauche</translation>
    </message>
    <message>
        <source>suspension rear right</source>
        <translation>suspension arrière droite</translation>
    </message>
    <message>
        <source>suspension travel does not follow the braking: it cannot be told which way it counts</source>
        <translation>le débattement ne suit pas le freinage : on ne peut dire dans quel sens il compte</translation>
    </message>
    <message>
        <source>suspension travel was recorded on too few straights to tell the downforce</source>
        <translation>le débattement a été enregistré sur trop peu de lignes droites pour dire l’appui</translation>
    </message>
    <message>
        <source>suspension travel was recorded: with mass and spring rates in the setup sheet it would tell the downforce</source>
        <translation>le débattement a été enregistré : avec la masse et les raideurs dans la fiche de réglages, il dirait l’appui</translation>
    </message>
    <message>
        <source>swap of A and B</source>
        <translation>l’échange de A et B</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>take one of those that &quot;lapwright book table --help&quot; names</source>
        <translation>prendre une de celles que donne « lapwright book table --help »</translation>
    </message>
    <message>
        <source>taken as %1 by its values</source>
        <translation>prise comme %1 d’après ses valeurs</translation>
    </message>
    <message>
        <source>taken as %1, because it advances evenly</source>
        <translation>prise comme %1, parce qu’elle avance régulièrement</translation>
    </message>
    <message>
        <source>taken as minutes of arc</source>
        <translation>prise comme minutes d’arc</translation>
    </message>
    <message>
        <source>taken for %1, which its name does not say for sure</source>
        <translation>prise comme %1, ce que son nom ne dit pas à coup sûr</translation>
    </message>
    <message>
        <source>taking back of a prediction</source>
        <translation>retrait d’une prévision</translation>
    </message>
    <message>
        <source>telling what the change did to the car</source>
        <translation>recherche de l’effet du changement sur la voiture</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texte</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 of them do not pass the timing line and %4 pass it more than once: these laps are merged or cut here</source>
        <translation>%1 : %2 tours marqués, mais %3 d’entre eux ne passent pas la ligne de chrono et %4 la passent plus d’une fois : ces tours sont ici réunis ou coupés</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 of them do not pass the timing line: these laps are merged or cut here</source>
        <translation>%1 : %2 tours marqués, mais %3 d’entre eux ne passent pas la ligne de chrono : ces tours sont ici réunis ou coupés</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 pass it more than once: these laps are merged or cut here</source>
        <translation>%1 : %2 tours marqués, mais %3 passent la ligne de chrono plus d’une fois : ces tours sont ici réunis ou coupés</translation>
    </message>
    <message>
        <source>the XML declares entities or nests too deeply</source>
        <translation>le XML déclare des entités ou s’imbrique trop profondément</translation>
    </message>
    <message>
        <source>the XML is broken here (%1): what comes behind is lost</source>
        <translation>le XML est cassé ici (%1) : ce qui suit est perdu</translation>
    </message>
    <message>
        <source>the book answers: %1</source>
        <translation>le carnet répond : %1</translation>
    </message>
    <message>
        <source>the book cannot be exported onto itself</source>
        <translation>le carnet ne peut être exporté sur lui-même</translation>
    </message>
    <message>
        <source>the book cannot be opened</source>
        <translation>impossible d’ouvrir le carnet</translation>
    </message>
    <message>
        <source>the book cannot be saved: there is no room or no right to write beside it</source>
        <translation>le carnet ne peut être récupéré : pas de place ou pas de droit pour écrire à côté</translation>
    </message>
    <message>
        <source>the book cannot be written here: nothing was changed</source>
        <translation>impossible d’écrire le carnet ici : rien n’a été modifié</translation>
    </message>
    <message>
        <source>the book does not know its car and its track: give them names</source>
        <translation>le carnet ne connaît ni la voiture ni le circuit : donnez-leur un nom</translation>
    </message>
    <message>
        <source>the book does not know the track of every session: there, corners are not held against those of other sessions</source>
        <translation>le carnet ne connaît pas le circuit de chaque session : là, les virages ne sont pas comparés à ceux des autres sessions</translation>
    </message>
    <message>
        <source>the book has no session of a car &quot;%1&quot;</source>
        <translation>le carnet n’a aucune session d’une voiture « %1 »</translation>
    </message>
    <message>
        <source>the book is damaged</source>
        <translation>le carnet est abîmé</translation>
    </message>
    <message>
        <source>the book is damaged, and open in another window or program</source>
        <translation>le carnet est abîmé, et ouvert dans une autre fenêtre ou un autre programme</translation>
    </message>
    <message>
        <source>the book was written by a newer version of the program</source>
        <translation>le carnet a été écrit par une version plus récente du programme</translation>
    </message>
    <message>
        <source>the book was written by an older version of the program and cannot be brought up to date here, because it cannot be written</source>
        <translation>le carnet a été écrit par une version plus ancienne du programme et ne peut être mis à jour ici, parce qu’on ne peut pas y écrire</translation>
    </message>
    <message>
        <source>the book&apos;s last edits lie in a log beside it, which cannot be read where nothing can be written</source>
        <translation>les dernières modifications du carnet sont dans un journal à côté, qui ne peut être lu là où rien ne peut être écrit</translation>
    </message>
    <message>
        <source>the braking of the car</source>
        <translation>le freinage de la voiture</translation>
    </message>
    <message>
        <source>the camera&apos;s clock alone: a rough start</source>
        <translation>l’horloge de la caméra seule : un départ grossier</translation>
    </message>
    <message>
        <source>the car is not known well enough to be simulated</source>
        <translation>la voiture n’est pas assez connue pour être simulée</translation>
    </message>
    <message>
        <source>the change cannot be told from a drift of tyres or track</source>
        <translation>le changement ne se distingue pas d’une dérive des pneus ou de la piste</translation>
    </message>
    <message>
        <source>the clock is coarser than the rows: rows of one stamp were spread evenly</source>
        <translation>l’horloge est plus grossière que les lignes : les lignes d’un même horodatage ont été réparties régulièrement</translation>
    </message>
    <message>
        <source>the clock is set by an hour here, as summer time begins or ends: the time goes on</source>
        <translation>l’horloge est réglée d’une heure ici, l’heure d’été commençant ou finissant : le temps continue</translation>
    </message>
    <message>
        <source>the clock jumps %1 time: the recording is split there, nothing is joined across</source>
        <translation>l’horloge saute %1 fois : l’enregistrement y est coupé, rien n’est joint par-dessus</translation>
    </message>
    <message>
        <source>the clock jumps %1 times: the recording is split there, nothing is joined across</source>
        <translation>l’horloge saute %1 fois : l’enregistrement y est coupé, rien n’est joint par-dessus</translation>
    </message>
    <message>
        <source>the clock passes midnight here: the time goes on</source>
        <translation>l’horloge passe minuit ici : le temps continue</translation>
    </message>
    <message>
        <source>the clocks of camera and logger say another offset: one of them was not set</source>
        <translation>les horloges de la caméra et de l’enregistreur disent un autre décalage : l’une d’elles n’était pas à l’heure</translation>
    </message>
    <message>
        <source>the corner that decides</source>
        <translation>le virage décisif</translation>
    </message>
    <message>
        <source>the disk did not read or write: nothing was changed in the book</source>
        <translation>le disque n’a pas lu ou écrit : rien n’a été modifié dans le carnet</translation>
    </message>
    <message>
        <source>the disk is full or cannot be written: nothing was changed in the book</source>
        <translation>le disque est plein ou protégé en écriture : rien n’a été modifié dans le carnet</translation>
    </message>
    <message>
        <source>the distant picture turns as the car does</source>
        <translation>le lointain de l’image tourne comme la voiture</translation>
    </message>
    <message>
        <source>the distant picture turns as the car does at the same offset</source>
        <translation>le lointain de l’image tourne comme la voiture au même décalage</translation>
    </message>
    <message>
        <source>the downforce area given</source>
        <translation>l’appui SCz donné</translation>
    </message>
    <message>
        <source>the drag area given</source>
        <translation>la traînée SCx donnée</translation>
    </message>
    <message>
        <source>the engine in the sound follows the recorded engine speed</source>
        <translation>le moteur dans le son suit le régime enregistré</translation>
    </message>
    <message>
        <source>the engine in the sound follows the speed within each gear</source>
        <translation>le moteur dans le son suit la vitesse dans chaque rapport</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>impossible de lire le fichier</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>impossible de lire le fichier jusqu’au bout</translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation>impossible d’écrire le fichier</translation>
    </message>
    <message>
        <source>the file holds more fixes than can be held</source>
        <translation>le fichier contient plus de positions qu’on ne peut en tenir</translation>
    </message>
    <message>
        <source>the file holds more points than can be held</source>
        <translation>le fichier contient plus de points qu’on ne peut en tenir</translation>
    </message>
    <message>
        <source>the file holds no speed: it was derived from the positions, and is no finer than they are</source>
        <translation>le fichier ne contient pas de vitesse : elle a été déduite des positions, et n’est pas plus fine qu’elles</translation>
    </message>
    <message>
        <source>the file is larger than 4 GiB</source>
        <translation>le fichier dépasse 4 Gio</translation>
    </message>
    <message>
        <source>the file lists one reading a row: those of one time were put side by side, and lines are counted so</source>
        <translation>le fichier donne un relevé par ligne : ceux d’un même temps ont été mis côte à côte, et les lignes sont comptées ainsi</translation>
    </message>
    <message>
        <source>the fit of grip and downforce over the sessions has not settled</source>
        <translation>l’ajustement du grip et de l’appui sur les sessions ne s’est pas stabilisé</translation>
    </message>
    <message>
        <source>the fit of the corners has not settled</source>
        <translation>l’ajustement des virages ne s’est pas stabilisé</translation>
    </message>
    <message>
        <source>the fit of the corners of %1 has not settled</source>
        <translation>l’ajustement des virages de %1 ne s’est pas stabilisé</translation>
    </message>
    <message>
        <source>the fit of the straights has not settled</source>
        <translation>l’ajustement des lignes droites ne s’est pas stabilisé</translation>
    </message>
    <message>
        <source>the gate needs &quot;latitude_deg&quot;, &quot;longitude_deg&quot; and &quot;heading_deg&quot; as numbers</source>
        <translation>« gate » a besoin de « latitude_deg », « longitude_deg » et « heading_deg » en nombres</translation>
    </message>
    <message>
        <source>the header stands again %1 time%2</source>
        <translation>l’en-tête revient %1 fois%2</translation>
    </message>
    <message>
        <source>the header stands again %1 times%2</source>
        <translation>l’en-tête revient %1 fois%2</translation>
    </message>
    <message>
        <source>the lap begins and ends at the timing line</source>
        <translation>le tour commence et finit à la ligne de chrono</translation>
    </message>
    <message>
        <source>the laps allow more than a car can have</source>
        <translation>les tours permettent plus qu’une voiture ne peut avoir</translation>
    </message>
    <message>
        <source>the laps do not tell the %1 of %2</source>
        <translation>les tours ne disent rien du facteur %1 de %2</translation>
    </message>
    <message>
        <source>the laps do not tell the downforce; it is mostly what such cars usually have</source>
        <translation>les tours ne disent rien de l’appui ; c’est surtout ce que de telles voitures ont d’habitude</translation>
    </message>
    <message>
        <source>the laps do not tell the drag; it is mostly what such cars usually have</source>
        <translation>les tours ne disent rien de la traînée ; c’est surtout ce que de telles voitures ont d’habitude</translation>
    </message>
    <message>
        <source>the letter O can be east (German, Dutch) or west (French, Spanish, Italian): taken as east</source>
        <translation>la lettre O peut être l’est (allemand, néerlandais) ou l’ouest (français, espagnol, italien) : prise comme est</translation>
    </message>
    <message>
        <source>the memory does not suffice for this file</source>
        <translation>la mémoire ne suffit pas pour ce fichier</translation>
    </message>
    <message>
        <source>the name is empty</source>
        <translation>le nom est vide</translation>
    </message>
    <message>
        <source>the name is longer than %1 characters</source>
        <translation>le nom dépasse %1 caractères</translation>
    </message>
    <message>
        <source>the new name is empty</source>
        <translation>le nouveau nom est vide</translation>
    </message>
    <message>
        <source>the newest row stands first: the table is read from its end</source>
        <translation>la ligne la plus récente est en premier : le tableau est lu depuis sa fin</translation>
    </message>
    <message>
        <source>the noise of the sensors did not settle, the greater one is taken: %1</source>
        <translation>le bruit des capteurs ne s’est pas stabilisé, le plus grand est pris : %1</translation>
    </message>
    <message>
        <source>the number of the lap goes down %1 time</source>
        <translation>le numéro du tour diminue %1 fois</translation>
    </message>
    <message>
        <source>the number of the lap goes down %1 times</source>
        <translation>le numéro du tour diminue %1 fois</translation>
    </message>
    <message>
        <source>the offset is being looked for</source>
        <translation>recherche du décalage</translation>
    </message>
    <message>
        <source>the picture does not turn as the car does at any offset</source>
        <translation>l’image ne tourne comme la voiture à aucun décalage</translation>
    </message>
    <message>
        <source>the picture of the video is shorter than 40 seconds</source>
        <translation>l’image de la vidéo dure moins de 40 secondes</translation>
    </message>
    <message>
        <source>the positions</source>
        <translation>les positions</translation>
    </message>
    <message>
        <source>the positions stand in rows of %1 Hz but change at about %2 Hz: repeated values are no measurements</source>
        <translation>les positions sont dans des lignes à %1 Hz mais changent à environ %2 Hz : les valeurs répétées ne sont pas des mesures</translation>
    </message>
    <message>
        <source>the power given</source>
        <translation>la puissance donnée</translation>
    </message>
    <message>
        <source>the prediction is not in the book (any more)</source>
        <translation>la prévision n’est pas (ou plus) dans le carnet</translation>
    </message>
    <message>
        <source>the recipe</source>
        <translation>la recette</translation>
    </message>
    <message>
        <source>the recipe &quot;%1&quot;</source>
        <translation>la recette « %1 »</translation>
    </message>
    <message>
        <source>the recipe cannot be opened</source>
        <translation>impossible d’ouvrir la recette</translation>
    </message>
    <message>
        <source>the recipe cannot be read</source>
        <translation>impossible de lire la recette</translation>
    </message>
    <message>
        <source>the recipe cannot be removed</source>
        <translation>impossible de retirer la recette</translation>
    </message>
    <message>
        <source>the recorded speed does not follow the positions: it was not used</source>
        <translation>la vitesse enregistrée ne suit pas les positions : elle n’a pas été utilisée</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too high against the positions, as a wheel&apos;s does: its scale was estimated</source>
        <translation>la vitesse enregistrée est trop haute de %1 % par rapport aux positions, comme celle d’une roue : son échelle a été estimée</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too high against the positions: it was not used</source>
        <translation>la vitesse enregistrée est trop haute de %1 % par rapport aux positions : elle n’a pas été utilisée</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too low against the positions, as a wheel&apos;s does: its scale was estimated</source>
        <translation>la vitesse enregistrée est trop basse de %1 % par rapport aux positions, comme celle d’une roue : son échelle a été estimée</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too low against the positions: it was not used</source>
        <translation>la vitesse enregistrée est trop basse de %1 % par rapport aux positions : elle n’a pas été utilisée</translation>
    </message>
    <message>
        <source>the recording does not say when it was made</source>
        <translation>l’enregistrement ne dit pas quand il a été fait</translation>
    </message>
    <message>
        <source>the recording has a hole in it</source>
        <translation>l’enregistrement a un trou</translation>
    </message>
    <message>
        <source>the recording is too short</source>
        <translation>l’enregistrement est trop court</translation>
    </message>
    <message>
        <source>the recording pauses %1 time for more than a minute: nothing is joined across</source>
        <translation>l’enregistrement s’interrompt %1 fois plus d’une minute : rien n’est joint par-dessus</translation>
    </message>
    <message>
        <source>the recording pauses %1 times for more than a minute: nothing is joined across</source>
        <translation>l’enregistrement s’interrompt %1 fois plus d’une minute : rien n’est joint par-dessus</translation>
    </message>
    <message>
        <source>the session has no positions that follow each other</source>
        <translation>la session n’a pas de positions qui se suivent</translation>
    </message>
    <message>
        <source>the sessions are taken in the order of their start times, not as given</source>
        <translation>les sessions sont prises dans l’ordre de leurs heures de départ, non dans l’ordre donné</translation>
    </message>
    <message>
        <source>the sessions do not tell what it does to this</source>
        <translation>les sessions n’en disent pas l’effet ici</translation>
    </message>
    <message>
        <source>the sessions named were not driven by this driver with this car on this track after the prediction was kept, or have no date</source>
        <translation>les sessions nommées n’ont pas été roulées par ce pilote avec cette voiture sur ce circuit après l’enregistrement de la prévision, ou n’ont pas de date</translation>
    </message>
    <message>
        <source>the sessions were driven at different tracks</source>
        <translation>les sessions ont été roulées sur des circuits différents</translation>
    </message>
    <message>
        <source>the setup sheet cannot be opened</source>
        <translation>la fiche de réglages ne s’ouvre pas</translation>
    </message>
    <message>
        <source>the setup sheet is not a JSON object</source>
        <translation>la fiche de réglages n’est pas un objet JSON</translation>
    </message>
    <message>
        <source>the setup sheet says &quot;%1&quot; already</source>
        <translation>la fiche de réglages dit déjà « %1 »</translation>
    </message>
    <message>
        <source>the setup sheets of the baseline differ: %1</source>
        <translation>les fiches de réglages de la référence diffèrent : %1</translation>
    </message>
    <message>
        <source>the setup sheets show no change from %1 to %2</source>
        <translation>les fiches de réglages ne montrent aucun changement de %1 à %2</translation>
    </message>
    <message>
        <source>the sheet</source>
        <translation>la fiche</translation>
    </message>
    <message>
        <source>the simulated car of %1 is %2 s too quick here, whatever the driver does</source>
        <translation>la voiture simulée de %1 est ici trop rapide de %2 s, quoi que fasse le pilote</translation>
    </message>
    <message>
        <source>the simulated car of %1 is %2 s too slow here, whatever the driver does</source>
        <translation>la voiture simulée de %1 est ici trop lente de %2 s, quoi que fasse le pilote</translation>
    </message>
    <message>
        <source>the simulated cars miss the measured times by %1 s a lap</source>
        <translation>les voitures simulées s’écartent des temps mesurés de %1 s par tour</translation>
    </message>
    <message>
        <source>the simulation of some draws came to nothing</source>
        <translation>la simulation de quelques tirages n’a rien donné</translation>
    </message>
    <message>
        <source>the sound of the video is shorter than 40 seconds</source>
        <translation>le son de la vidéo dure moins de 40 secondes</translation>
    </message>
    <message>
        <source>the spring rates do not fit what braking does to the suspension: check their units</source>
        <translation>les raideurs ne vont pas avec ce que le freinage fait à la suspension : vérifier leurs unités</translation>
    </message>
    <message>
        <source>the suspension&apos;s downforce area</source>
        <translation>l’appui SCz de la suspension</translation>
    </message>
    <message>
        <source>the table has more than 4096 columns</source>
        <translation>le tableau a plus de 4096 colonnes</translation>
    </message>
    <message>
        <source>the table has more values than can be held</source>
        <translation>le tableau a plus de valeurs qu’on ne peut en tenir</translation>
    </message>
    <message>
        <source>the time starts again with each lap: the laps are put end to end, each %1 s after the last row of the one before</source>
        <translation>le temps repart à chaque tour : les tours sont mis bout à bout, chacun %1 s après la dernière ligne du précédent</translation>
    </message>
    <message>
        <source>the timing line is never crossed</source>
        <translation>la ligne de chrono n’est jamais franchie</translation>
    </message>
    <message>
        <source>the timing line lies there already</source>
        <translation>la ligne de chrono y est déjà</translation>
    </message>
    <message>
        <source>the track file cannot be opened</source>
        <translation>le fichier de circuit ne s’ouvre pas</translation>
    </message>
    <message>
        <source>the track file has no &quot;gate&quot;</source>
        <translation>le fichier de circuit n’a pas de « gate »</translation>
    </message>
    <message>
        <source>the track file is not a JSON object</source>
        <translation>le fichier de circuit n’est pas un objet JSON</translation>
    </message>
    <message>
        <source>the track file tells its timing line by latitude and longitude, the recording&apos;s positions are metres of its own</source>
        <translation>le fichier de circuit donne sa ligne de chrono en latitude et longitude, les positions de l’enregistrement sont en mètres qui lui sont propres</translation>
    </message>
    <message>
        <source>the track has no corner of the name %1</source>
        <translation>le circuit n’a pas de virage du nom de %1</translation>
    </message>
    <message>
        <source>the track has no corner to show stills of</source>
        <translation>le circuit n’a pas de virage à montrer en images fixes</translation>
    </message>
    <message>
        <source>the track has no name</source>
        <translation>le circuit n’a pas de nom</translation>
    </message>
    <message>
        <source>the track&apos;s name is too long</source>
        <translation>le nom du circuit est trop long</translation>
    </message>
    <message>
        <source>the track&apos;s record</source>
        <translation>les données du circuit</translation>
    </message>
    <message>
        <source>the unit %1 is not known, taken as %2</source>
        <translation>l’unité %1 n’est pas connue, prise comme %2</translation>
    </message>
    <message>
        <source>the unit %1 is not known, values are kept as written</source>
        <translation>l’unité %1 n’est pas connue, les valeurs restent comme écrites</translation>
    </message>
    <message>
        <source>the video begins %1 before the recording&apos;s start</source>
        <translation>la vidéo débute %1 avant l’enregistrement</translation>
    </message>
    <message>
        <source>the video begins %1 behind the recording&apos;s start</source>
        <translation>la vidéo débute %1 après l’enregistrement</translation>
    </message>
    <message>
        <source>the video cannot be decoded</source>
        <translation>impossible de décoder la vidéo</translation>
    </message>
    <message>
        <source>the video cannot be read</source>
        <translation>impossible de lire la vidéo</translation>
    </message>
    <message>
        <source>the video cannot be wound back</source>
        <translation>la vidéo ne peut être rembobinée</translation>
    </message>
    <message>
        <source>the video does not say how long it is, so that nothing can be joined to it</source>
        <translation>la vidéo ne dit pas sa durée, rien ne peut donc y être joint</translation>
    </message>
    <message>
        <source>the video does not say when it was taken</source>
        <translation>la vidéo ne dit pas quand elle a été prise</translation>
    </message>
    <message>
        <source>the video has no sound</source>
        <translation>la vidéo n’a pas de son</translation>
    </message>
    <message>
        <source>the video holds no frame that can be decoded</source>
        <translation>la vidéo ne contient aucune image décodable</translation>
    </message>
    <message>
        <source>the video holds none</source>
        <translation>la vidéo n’en contient pas</translation>
    </message>
    <message>
        <source>the video is empty</source>
        <translation>la vidéo est vide</translation>
    </message>
    <message>
        <source>the video is no longer there, nor beside the recording</source>
        <translation>la vidéo n’est plus là, ni à côté de l’enregistrement</translation>
    </message>
    <message>
        <source>the video is not there</source>
        <translation>la vidéo n’est pas là</translation>
    </message>
    <message>
        <source>the video may not be read</source>
        <translation>la vidéo ne peut être lue, faute de droits</translation>
    </message>
    <message>
        <source>the video was cut off before its index was written</source>
        <translation>la vidéo a été coupée avant que son index soit écrit</translation>
    </message>
    <message>
        <source>the video was taken at another time of the day</source>
        <translation>la vidéo a été prise à une autre heure du jour</translation>
    </message>
    <message>
        <source>the video was taken on another day</source>
        <translation>la vidéo a été prise un autre jour</translation>
    </message>
    <message>
        <source>the work was cancelled</source>
        <translation>le travail a été interrompu</translation>
    </message>
    <message>
        <source>there is a segment &quot;%1&quot; already</source>
        <translation>il y a déjà un segment « %1 »</translation>
    </message>
    <message>
        <source>there is no clean lap</source>
        <translation>il n’y a aucun tour propre</translation>
    </message>
    <message>
        <source>there is no clean lap to learn the car from</source>
        <translation>il n’y a aucun tour propre pour connaître la voiture</translation>
    </message>
    <message>
        <source>there is no flying lap in it</source>
        <translation>elle ne contient aucun tour lancé</translation>
    </message>
    <message>
        <source>there is no flying lap in it that follows the track</source>
        <translation>elle ne contient aucun tour lancé qui suive le circuit</translation>
    </message>
    <message>
        <source>there is no flying lap with the number %1</source>
        <translation>il n’y a pas de tour lancé numéro %1</translation>
    </message>
    <message>
        <source>there is no picture in this file</source>
        <translation>il n’y a pas d’image dans ce fichier</translation>
    </message>
    <message>
        <source>there is no such book</source>
        <translation>il n’y a pas de tel carnet</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>il n’y a pas de tel fichier</translation>
    </message>
    <message>
        <source>there is no such segment</source>
        <translation>il n’y a pas de tel segment</translation>
    </message>
    <message>
        <source>there is no whole lap in it</source>
        <translation>elle ne contient aucun tour entier</translation>
    </message>
    <message>
        <source>there is not enough memory for the video</source>
        <translation>il n’y a pas assez de mémoire pour la vidéo</translation>
    </message>
    <message>
        <source>these are two cars, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>ce sont deux voitures, « %1 » et « %2 »</translation>
    </message>
    <message>
        <source>these are two drivers, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>ce sont deux pilotes, « %1 » et « %2 »</translation>
    </message>
    <message>
        <source>these are two tracks, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>ce sont deux circuits, « %1 » et « %2 »</translation>
    </message>
    <message>
        <source>this belongs to something that is not in the book (any more)</source>
        <translation>cela appartient à quelque chose qui n’est pas (ou plus) dans le carnet</translation>
    </message>
    <message>
        <source>this comparison</source>
        <translation>cette comparaison</translation>
    </message>
    <message>
        <source>this file has no columns to choose</source>
        <translation>ce fichier n’a pas de colonnes à choisir</translation>
    </message>
    <message>
        <source>this file is no book</source>
        <translation>ce fichier n’est pas un carnet</translation>
    </message>
    <message>
        <source>this installation has no video decoder</source>
        <translation>cette installation n’a pas de décodeur vidéo</translation>
    </message>
    <message>
        <source>this is a folder or a device</source>
        <translation>c’est un dossier ou un périphérique</translation>
    </message>
    <message>
        <source>this is no JSON document</source>
        <translation>ce n’est pas un document JSON</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>ce n’est pas un fichier</translation>
    </message>
    <message>
        <source>this is no file of data</source>
        <translation>ce n’est pas un fichier de données</translation>
    </message>
    <message>
        <source>this is no import recipe of version 1</source>
        <translation>ce n’est pas une recette d’import de version 1</translation>
    </message>
    <message>
        <source>this is no video of a kind that can be read</source>
        <translation>ce n’est pas une vidéo d’un type lisible</translation>
    </message>
    <message>
        <source>this is not valid JSON</source>
        <translation>ce n’est pas du JSON valide</translation>
    </message>
    <message>
        <source>this is the book itself</source>
        <translation>c’est le carnet lui-même</translation>
    </message>
    <message>
        <source>this is too large to be a recipe</source>
        <translation>c’est trop grand pour une recette</translation>
    </message>
    <message>
        <source>this is too long for a setup sheet</source>
        <translation>c’est trop long pour une fiche de réglages</translation>
    </message>
    <message>
        <source>this is too long for a track file</source>
        <translation>c’est trop long pour un fichier de circuit</translation>
    </message>
    <message>
        <source>this machine has no device for it</source>
        <translation>cette machine n’a pas de périphérique pour cela</translation>
    </message>
    <message>
        <source>this pairing is not in the book (any more)</source>
        <translation>cette paire n’est pas (ou plus) dans le carnet</translation>
    </message>
    <message>
        <source>this prediction is kept already, and what was said first counts</source>
        <translation>cette prévision est déjà gardée, et c’est ce qui a été dit d’abord qui compte</translation>
    </message>
    <message>
        <source>this session is in the book, and the window has none</source>
        <translation>cette session est dans le carnet, et la fenêtre n’en a pas</translation>
    </message>
    <message>
        <source>this session is not in the book</source>
        <translation>cette session n’est pas dans le carnet</translation>
    </message>
    <message>
        <source>this session is not in the book (any more)</source>
        <translation>cette session n’est pas (ou plus) dans le carnet</translation>
    </message>
    <message>
        <source>this session never drives the lap of %1</source>
        <translation>cette session ne fait jamais le tour de %1</translation>
    </message>
    <message>
        <source>this track has no place on the earth: the files have no positions in latitude and longitude</source>
        <translation>ce circuit n’a pas de lieu sur la Terre : les fichiers n’ont pas de positions en latitude et longitude</translation>
    </message>
    <message>
        <source>three laps, three with one step of the wing, three as before, held together as a trial</source>
        <translation>trois tours tels quels, trois avec un cran d’aileron, trois de nouveau tels quels, comparés dans un essai de réglage</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>accélérateur</translation>
    </message>
    <message>
        <source>throttle opens, %1 after slowest</source>
        <translation>remet les gaz, %1 après le minimum</translation>
    </message>
    <message>
        <source>time</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>time won</source>
        <translation>temps gagné</translation>
    </message>
    <message>
        <source>times are written without a time zone: taken as UTC</source>
        <translation>les temps sont écrits sans fuseau horaire : pris comme UTC</translation>
    </message>
    <message>
        <source>timing line</source>
        <translation>la ligne de chrono</translation>
    </message>
    <message>
        <source>timing line: %1</source>
        <translation>ligne de chrono : %1</translation>
    </message>
    <message>
        <source>timing the laps</source>
        <translation>chronométrage des tours</translation>
    </message>
    <message>
        <source>too few corners are driven at the limit with and without the change</source>
        <translation>trop peu de virages sont pris à la limite avec et sans le changement</translation>
    </message>
    <message>
        <source>too few straights are driven at full throttle with and without the change</source>
        <translation>trop peu de lignes droites sont prises à pleins gaz avec et sans le changement</translation>
    </message>
    <message>
        <source>too long to be a lap</source>
        <translation>trop long pour un tour</translation>
    </message>
    <message>
        <source>too short to be a lap</source>
        <translation>trop court pour un tour</translation>
    </message>
    <message>
        <source>too slow to be a lap</source>
        <translation>trop lent pour un tour</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>max %1</translation>
    </message>
    <message>
        <source>track</source>
        <translation>circuit</translation>
    </message>
    <message>
        <source>track?</source>
        <translation>circuit ?</translation>
    </message>
    <message>
        <source>traffic, a mistake, a flag; Return without a word does too</source>
        <translation>trafic, erreur, drapeau… ou Entrée sans rien écrire</translation>
    </message>
    <message>
        <source>turn-in</source>
        <translation>point de braquage</translation>
    </message>
    <message>
        <source>tyre</source>
        <translation>pneu</translation>
    </message>
    <message>
        <source>tyre grip</source>
        <translation>grip pneus</translation>
    </message>
    <message>
        <source>tyre grip and downforce</source>
        <translation>grip pneus et appui</translation>
    </message>
    <message>
        <source>tyres used</source>
        <translation>exploitation des pneus</translation>
    </message>
    <message>
        <source>tyres used in corners</source>
        <translation>exploitation des pneus en virage</translation>
    </message>
    <message>
        <source>uncertainty of the mass</source>
        <translation>incertitude de la masse</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>unit %1 as its cells write</source>
        <translation>unité %1 comme l’écrivent ses cellules</translation>
    </message>
    <message>
        <source>unit %1 as written</source>
        <translation>unité %1 comme écrit</translation>
    </message>
    <message>
        <source>units that are not written were told from the values: %1</source>
        <translation>les unités non écrites ont été tirées des valeurs : %1</translation>
    </message>
    <message>
        <source>until 2026-05-16</source>
        <translation>jusqu’à 2026-05-16</translation>
    </message>
    <message>
        <source>vertical acceleration</source>
        <translation>accélération verticale</translation>
    </message>
    <message>
        <source>weigh the car with driver and fuel as driven, and enter the mass, good to 3 kg</source>
        <translation>peser la voiture avec pilote et carburant comme roulée, et saisir la masse, à 3 kg près</translation>
    </message>
    <message>
        <source>what %1 does to it cannot be told</source>
        <translation>la part du facteur %1 est indéterminable</translation>
    </message>
    <message>
        <source>what %1 is worth cannot be told: %2</source>
        <translation>ce que vaut le facteur %1 est indéterminable : %2</translation>
    </message>
    <message>
        <source>what driver and rest are worth cannot be told: %1</source>
        <translation>ce que valent pilote et reste est indéterminable : %1</translation>
    </message>
    <message>
        <source>what if</source>
        <translation>et si</translation>
    </message>
    <message>
        <source>what the change does to the lap was not told</source>
        <translation>l’effet du changement sur le tour n’a pas été donné</translation>
    </message>
    <message>
        <source>what the change is worth on this track, to %1 s a lap</source>
        <translation>ce que vaut le changement sur ce circuit, à %1 s par tour près</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>molette</translation>
    </message>
    <message>
        <source>wheel speed</source>
        <translation>vitesse de roue</translation>
    </message>
    <message>
        <source>wheel speed reads %1 % high against the speed over the ground</source>
        <translation>la vitesse de roue est trop haute de %1 % par rapport à la vitesse au sol</translation>
    </message>
    <message>
        <source>wheel speed reads %1 % low against the speed over the ground</source>
        <translation>la vitesse de roue est trop basse de %1 % par rapport à la vitesse au sol</translation>
    </message>
    <message>
        <source>where on the track the corners of %1 lap lie did not settle: placed by distance alone, less surely</source>
        <translation>où se trouvent sur le circuit les virages de %1 tour ne s’est pas stabilisé : placé par la distance seule, moins sûrement</translation>
    </message>
    <message>
        <source>where on the track the corners of %1 laps lie did not settle: placed by distance alone, less surely</source>
        <translation>où se trouvent sur le circuit les virages de %1 tours ne s’est pas stabilisé : placés par la distance seule, moins sûrement</translation>
    </message>
    <message>
        <source>whole lap</source>
        <translation>tour entier</translation>
    </message>
    <message>
        <source>whole parts of a degree by their size</source>
        <translation>d’après leur taille, parties entières d’un degré</translation>
    </message>
    <message>
        <source>whole ten-millionths of a degree by their size</source>
        <translation>d’après leur taille, dix-millionièmes de degré entiers</translation>
    </message>
    <message>
        <source>with the change</source>
        <translation>avec le changement</translation>
    </message>
    <message>
        <source>without positions laps come from a lap column or a beacon, and it shows no whole lap</source>
        <translation>sans positions, les tours viennent d’une colonne de tours ou d’une balise, et on n’y voit aucun tour entier</translation>
    </message>
    <message>
        <source>without positions there is too little speed to follow the car by</source>
        <translation>sans positions, la vitesse enregistrée ne suffit pas pour suivre la voiture</translation>
    </message>
    <message>
        <source>without the mass of both cars power, drag and downforce count per kilogram, and mass is part of them</source>
        <translation>sans la masse des deux voitures, puissance, traînée et appui comptent par kilogramme, et la masse en fait partie</translation>
    </message>
    <message>
        <source>without the mass what the setup sheet knows of downforce, drag and power does not count</source>
        <translation>sans la masse, ce que la fiche de réglages sait de l’appui, de la traînée et de la puissance ne compte pas</translation>
    </message>
    <message>
        <source>won by, s</source>
        <translation>gain de, s</translation>
    </message>
    <message>
        <source>write a note here by the Edit menu</source>
        <translation>écrire une note ici par le menu Édition</translation>
    </message>
    <message>
        <source>write it as &quot;wing angle=7 deg&quot;</source>
        <translation>écrivez-le ainsi : « wing angle=7 deg »</translation>
    </message>
    <message>
        <source>write it as 2026-05-16</source>
        <translation>l’écrire comme 2026-05-16</translation>
    </message>
    <message>
        <source>write it as 2026-05-16 10:20</source>
        <translation>l’écrire comme 2026-05-16 10:20</translation>
    </message>
    <message>
        <source>write it as 2026-05-16 10:20, with 0 to 23 hours</source>
        <translation>l’écrire comme 2026-05-16 10:20, avec 0 à 23 heures</translation>
    </message>
    <message>
        <source>write the recipe again from the column dialog</source>
        <translation>écrire la recette de nouveau depuis la fenêtre des colonnes</translation>
    </message>
    <message>
        <source>written like the %1</source>
        <translation>écrite comme « %1 »</translation>
    </message>
    <message>
        <source>yaw rate</source>
        <translation>vitesse de lacet</translation>
    </message>
    <message>
        <source>± is half of the 95 % interval. “prior”: the data could not tell, a stated assumption did; “setup”: from the setup sheet; all else the data decided.</source>
        <translation>± est la moitié de l’intervalle à 95 %. « hypothèse » : les données ne tranchaient pas, une hypothèse énoncée l’a fait ; « réglages » : de la fiche de réglages ; tout le reste, les données l’ont tranché.</translation>
    </message>
    <message>
        <source>≈ taken from the motion, because the pedal was not recorded</source>
        <translation>≈ tiré du mouvement, car la pédale n’a pas été enregistrée</translation>
    </message>
</context>
</TS>
