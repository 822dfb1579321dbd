<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>BringIn</name>
    <message>
        <source>kept, not used</source>
        <translation>gardé, non utilisé</translation>
    </message>
    <message>
        <source>Code of the person</source>
        <translation>Code de la personne</translation>
    </message>
    <message>
        <source>Right eye, all in one cell</source>
        <translation>Œil droit, tout dans une cellule</translation>
    </message>
    <message>
        <source>Right eye: sphere</source>
        <translation>Œil droit : sphère</translation>
    </message>
    <message>
        <source>Right eye: cylinder</source>
        <translation>Œil droit : cylindre</translation>
    </message>
    <message>
        <source>Right eye: axis</source>
        <translation>Œil droit : axe</translation>
    </message>
    <message>
        <source>Right eye: prism</source>
        <translation>Œil droit : prisme</translation>
    </message>
    <message>
        <source>Right eye: base of the prism</source>
        <translation>Œil droit : base du prisme</translation>
    </message>
    <message>
        <source>Left eye, all in one cell</source>
        <translation>Œil gauche, tout dans une cellule</translation>
    </message>
    <message>
        <source>Left eye: sphere</source>
        <translation>Œil gauche : sphère</translation>
    </message>
    <message>
        <source>Left eye: cylinder</source>
        <translation>Œil gauche : cylindre</translation>
    </message>
    <message>
        <source>Left eye: axis</source>
        <translation>Œil gauche : axe</translation>
    </message>
    <message>
        <source>Left eye: prism</source>
        <translation>Œil gauche : prisme</translation>
    </message>
    <message>
        <source>Left eye: base of the prism</source>
        <translation>Œil gauche : base du prisme</translation>
    </message>
    <message>
        <source>Age in years</source>
        <translation>Âge en années</translation>
    </message>
    <message>
        <source>Addition of both eyes</source>
        <translation>Addition des deux yeux</translation>
    </message>
    <message>
        <source>Right eye: addition</source>
        <translation>Œil droit : addition</translation>
    </message>
    <message>
        <source>Left eye: addition</source>
        <translation>Œil gauche : addition</translation>
    </message>
    <message>
        <source>PD, mm</source>
        <translation>EP, mm</translation>
    </message>
    <message>
        <source>Right eye: PD, mm</source>
        <translation>Œil droit : EP, mm</translation>
    </message>
    <message>
        <source>Left eye: PD, mm</source>
        <translation>Œil gauche : EP, mm</translation>
    </message>
    <message>
        <source>Near PD, mm</source>
        <translation>EP de près, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescripteur</translation>
    </message>
    <message>
        <source>Day it was written</source>
        <translation>Jour où elle a été écrite</translation>
    </message>
</context>
<context>
    <name>ChartData</name>
    <message>
        <source>%1 of %2 at odds, %3</source>
        <translation>%1 sur %2 en désaccord, %3</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>remises évaluées</translation>
    </message>
    <message>
        <source>pair and record at odds</source>
        <translation>paire et relevé en désaccord</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Aucune remise n’a encore été évaluée.</translation>
    </message>
    <message>
        <source>mismatches in order</source>
        <translation>discordances dans l’ordre</translation>
    </message>
    <message>
        <source>good hand-overs before it</source>
        <translation>bonnes remises avant elle</translation>
    </message>
    <message>
        <source>%1 good hand-overs before it</source>
        <translation>%1 bonnes remises avant elle</translation>
    </message>
    <message>
        <source>weeks in order</source>
        <translation>semaines dans l’ordre</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is writing in the ledger. Trying again; Escape gives up. Nothing is lost.</source>
        <translation>Un autre programme écrit dans le registre. Nouvel essai en cours ; Échap abandonne. Rien n’est perdu.</translation>
    </message>
    <message>
        <source>The program met something it does not know: %1. Nothing was written; close the program and open the folder again.</source>
        <translation>Le programme a rencontré quelque chose d’inconnu : %1. Rien n’a été écrit ; fermer le programme et rouvrir le dossier.</translation>
    </message>
</context>
<context>
    <name>DeskOptions</name>
    <message>
        <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
        <translation>Associe des prescriptions finales de lunettes à un stock de lunettes prémontées et de verres.</translation>
    </message>
    <message>
        <source>light, dark or sun (black on white, large)</source>
        <translation>light, dark ou sun (noir sur blanc, grand)</translation>
    </message>
    <message>
        <source>mirrors the window; prescriptions stay left-to-right</source>
        <translation>inverse la fenêtre en miroir ; les prescriptions restent de gauche à droite</translation>
    </message>
    <message>
        <source>language of the window, for example ar</source>
        <translation>langue de la fenêtre, par exemple ar</translation>
    </message>
    <message>
        <source>size of the letters in per cent, 100 to 200</source>
        <translation>taille des lettres en pour cent, de 100 à 200</translation>
    </message>
    <message>
        <source>paints the window into a PNG file and leaves</source>
        <translation>dessine la fenêtre dans un fichier PNG et quitte</translation>
    </message>
    <message>
        <source>size of the window in pixels, for example 1366x768</source>
        <translation>taille de la fenêtre en pixels, par exemple 1366x768</translation>
    </message>
    <message>
        <source>loads this person of people.csv at the start</source>
        <translation>charge au démarrage cette personne de people.csv</translation>
    </message>
    <message>
        <source>chooses this line of the stock at the start</source>
        <translation>choisit au démarrage cet article du stock</translation>
    </message>
    <message>
        <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
        <translation>dossier de camp à ouvrir (stock.yaml, rules.yaml, ledger.sqlite)</translation>
    </message>
    <message>
        <source>--size %1 is not a size; write for example 1366x768</source>
        <translation>--size %1 n’est pas une taille ; écrire par exemple 1366x768</translation>
    </message>
    <message>
        <source>--text-scale %1 is not from 100 to 200</source>
        <translation>--text-scale %1 n’est pas entre 100 et 200</translation>
    </message>
    <message>
        <source>--place %1 is not known; write one of %2</source>
        <translation>--place %1 est inconnu ; écrire l’un de %2</translation>
    </message>
    <message>
        <source>--theme %1 is not known; write light, dark or sun</source>
        <translation>--theme %1 est inconnu ; écrire light, dark ou sun</translation>
    </message>
    <message>
        <source>one camp folder at a time, not %1</source>
        <translation>un seul dossier de camp à la fois, pas %1</translation>
    </message>
    <message>
        <source>no readable person %1 in people.csv</source>
        <translation>aucune personne lisible %1 dans people.csv</translation>
    </message>
    <message>
        <source>no line %1 in this stock</source>
        <translation>aucun article %1 dans ce stock</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>impossible d’écrire %1</translation>
    </message>
    <message>
        <source>page to show at the start: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in or send-out</source>
        <translation>page à montrer au départ : dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in ou send-out</translation>
    </message>
    <message>
        <source>reads this file of prescriptions on the page bring-in at the start</source>
        <translation>lit ce fichier de prescriptions à la page bring-in au départ</translation>
    </message>
</context>
<context>
    <name>DeskWords</name>
    <message>
        <source>R %1</source>
        <translation>D %1</translation>
    </message>
    <message>
        <source>L %1</source>
        <translation>G %1</translation>
    </message>
    <message>
        <source>%1 add %2</source>
        <translation>%1 add %2</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>non évalué</translation>
    </message>
    <message>
        <source>%1 too strong</source>
        <translation>%1 trop fort</translation>
    </message>
    <message>
        <source>%1 too plus</source>
        <translation>%1 trop de plus</translation>
    </message>
    <message>
        <source>%1 too weak</source>
        <translation>%1 trop faible</translation>
    </message>
    <message>
        <source>%1 too minus</source>
        <translation>%1 trop de moins</translation>
    </message>
    <message>
        <source>cylinder %1 left</source>
        <translation>cylindre restant %1</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>rien ne reste</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Suggested</source>
        <translation>Proposé</translation>
    </message>
    <message>
        <source>Fits with caution</source>
        <translation>Convient avec prudence</translation>
    </message>
    <message>
        <source>On trial: type the acuity</source>
        <translation>À l’essai : saisir l’acuité</translation>
    </message>
    <message>
        <source>Outside limit</source>
        <translation>Hors limite</translation>
    </message>
    <message>
        <source>right eye: %1</source>
        <translation>œil droit : %1</translation>
    </message>
    <message>
        <source>left eye: %1</source>
        <translation>œil gauche : %1</translation>
    </message>
    <message>
        <source>Tried on: acceptable</source>
        <translation>Essayée : acceptable</translation>
    </message>
    <message>
        <source>Tried on: outside limit</source>
        <translation>Essayée : hors limite</translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>whole degrees up to 180</source>
        <translation>degrés entiers jusqu’à 180</translation>
    </message>
    <message>
        <source>quarters of a dioptre up to 6.75</source>
        <translation>quarts de dioptrie jusqu’à 6.75</translation>
    </message>
    <message>
        <source>years up to 120</source>
        <translation>années jusqu’à 120</translation>
    </message>
    <message>
        <source>millimetres, or right and left as 31/30.5</source>
        <translation>millimètres, ou droite et gauche comme 31/30.5</translation>
    </message>
    <message>
        <source>quarters of a dioptre, plus</source>
        <translation>quarts de dioptrie, plus</translation>
    </message>
    <message>
        <source>a sign first, then quarters of a dioptre, the axis up to 180</source>
        <translation>d’abord un signe, puis des quarts de dioptrie, l’axe jusqu’à 180</translation>
    </message>
    <message>
        <source>“%1” was not taken: %2</source>
        <translation>« %1 » n’a pas été accepté : %2</translation>
    </message>
</context>
<context>
    <name>PackingCurve</name>
    <message>
        <source>%1 % served for %2</source>
        <translation>%1 % servis pour %2</translation>
    </message>
    <message>
        <source>money spent</source>
        <translation>argent dépensé</translation>
    </message>
    <message>
        <source>money spent, %1</source>
        <translation>argent dépensé, %1</translation>
    </message>
    <message>
        <source>share of needs served</source>
        <translation>part des besoins servis</translation>
    </message>
    <message>
        <source>Plan first: the curve comes with it.</source>
        <translation>Planifier d’abord : la courbe vient avec le plan.</translation>
    </message>
    <message>
        <source>the knee</source>
        <translation>le coude</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>ce plan</translation>
    </message>
</context>
<context>
    <name>PackingRows</name>
    <message>
        <source>Pack</source>
        <translation>Paquet</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Paquets</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coût</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Grammes</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>without it %1 fewer served</source>
        <translation>sans lui %1 servis de moins</translation>
    </message>
    <message>
        <source>a reserve</source>
        <translation>une réserve</translation>
    </message>
    <message>
        <source>nothing else for %1</source>
        <translation>rien d’autre pour %1</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>convient à %1</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n en stock</numerusform>
            <numerusform>%n en stock</numerusform>
        </translation>
    </message>
    <message>
        <source>none on hand</source>
        <translation>aucune en stock</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Boîte</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casier</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Article</translation>
    </message>
    <message>
        <source>Of these bought</source>
        <translation>Dont achetées</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Served</source>
        <translation>Servis</translation>
    </message>
    <message>
        <source>First come</source>
        <translation>Premier arrivé</translation>
    </message>
    <message>
        <source>Spends</source>
        <translation>Dépense</translation>
    </message>
    <message>
        <source>what would do has run out by then</source>
        <translation>ce qui conviendrait est alors épuisé</translation>
    </message>
    <message>
        <source>no such power on hand or on offer</source>
        <translation>aucune puissance de ce genre en stock ni proposée</translation>
    </message>
    <message>
        <source>nothing on offer keeps the limit: %1</source>
        <translation>rien de proposé ne respecte la limite : %1</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Sans</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Sur</translation>
    </message>
    <message>
        <source>%1, children</source>
        <translation>%1, enfants</translation>
    </message>
    <message>
        <source>%1, adults</source>
        <translation>%1, adultes</translation>
    </message>
    <message>
        <source>Days in a hundred</source>
        <translation>Jours sur cent</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Vers la personne</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Pourquoi pas</translation>
    </message>
    <message>
        <source>others do as well for the money</source>
        <translation>d’autres font aussi bien pour cet argent</translation>
    </message>
    <message>
        <source>nobody of this demand needs it</source>
        <translation>personne de cette demande n’en a besoin</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>Dépensé</translation>
    </message>
    <message>
        <source>Served, planned for</source>
        <translation>Servis, selon le plan</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>the curve bends here</source>
        <translation>la courbe s’infléchit ici</translation>
    </message>
</context>
<context>
    <name>PrescriptionCard</name>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Camp code of the person, as on the paper card</source>
        <translation>Code de camp de la personne, comme sur la fiche papier</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Âge en années ; un âge inconnu est évalué selon les règles les plus strictes</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droit</translation>
    </message>
    <message>
        <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Œil droit : sphère, cylindre (dioptries) et axe (degrés). Haut et Bas changent la sphère de 0.25, Page préc. et Page suiv. de 1.00</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Addition</translation>
    </message>
    <message>
        <source>Near addition of both eyes, dioptres</source>
        <translation>Addition de près des deux yeux, dioptries</translation>
    </message>
    <message>
        <source>PD far</source>
        <translation>EP loin</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>EP près</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; worked out from the far one when empty</source>
        <translation>Distance entre les pupilles en vision de près, millimètres ; calculée à partir de celle de loin si vide</translation>
    </message>
    <message>
        <source>Near, R</source>
        <translation>Près, D</translation>
    </message>
    <message>
        <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Œil droit : puissance de près totale trouvée à l’essai, dioptries, au lieu d’une addition</translation>
    </message>
    <message>
        <source>Near, L</source>
        <translation>Près, G</translation>
    </message>
    <message>
        <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Œil gauche : puissance de près totale trouvée à l’essai, dioptries, au lieu d’une addition</translation>
    </message>
    <message>
        <source>Unaided, R</source>
        <translation>Sans corr., D</translation>
    </message>
    <message>
        <source>Right eye: acuity without spectacles, for example 6/18</source>
        <translation>Œil droit : acuité sans lunettes, par exemple 6/18</translation>
    </message>
    <message>
        <source>Unaided, L</source>
        <translation>Sans corr., G</translation>
    </message>
    <message>
        <source>Left eye: acuity without spectacles, for example 6/18</source>
        <translation>Œil gauche : acuité sans lunettes, par exemple 6/18</translation>
    </message>
    <message>
        <source>Best, R</source>
        <translation>Meilleure, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this prescription, for example 6/6</source>
        <translation>Œil droit : acuité avec cette prescription, par exemple 6/6</translation>
    </message>
    <message>
        <source>Best, L</source>
        <translation>Meilleure, G</translation>
    </message>
    <message>
        <source>Left eye: acuity with this prescription, for example 6/6</source>
        <translation>Œil gauche : acuité avec cette prescription, par exemple 6/6</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescripteur</translation>
    </message>
    <message>
        <source>Who signed the prescription; needed under 16 years</source>
        <translation>Qui a signé la prescription ; nécessaire avant 16 ans</translation>
    </message>
    <message>
        <source>Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Œil gauche : sphère, cylindre (dioptries) et axe (degrés) ; = reprend ceux de l’œil droit. Haut et Bas changent la sphère de 0.25, Page préc. et Page suiv. de 1.00</translation>
    </message>
    <message>
        <source>Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5</source>
        <translation>Distance entre les pupilles en vision de loin, millimètres ; ou à droite et à gauche du nez : 31/30.5</translation>
    </message>
    <message>
        <source>Objective, R</source>
        <translation>Objective, D</translation>
    </message>
    <message>
        <source>Right eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Œil droit : mesure de l’appareil, dioptries ; plusieurs mesures séparées par ; sont moyennées et leur dispersion est indiquée</translation>
    </message>
    <message>
        <source>Objective, L</source>
        <translation>Objective, G</translation>
    </message>
    <message>
        <source>Left eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Œil gauche : mesure de l’appareil, dioptries ; plusieurs mesures séparées par ; sont moyennées et leur dispersion est indiquée</translation>
    </message>
    <message>
        <source>Own pair, R</source>
        <translation>Propre paire, D</translation>
    </message>
    <message>
        <source>Right eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Œil droit : puissance de la paire portée maintenant, lue au frontofocomètre, dioptries</translation>
    </message>
    <message>
        <source>Own pair, L</source>
        <translation>Propre paire, G</translation>
    </message>
    <message>
        <source>Left eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Œil gauche : puissance de la paire portée maintenant, lue au frontofocomètre, dioptries</translation>
    </message>
    <message>
        <source>Pinhole, R</source>
        <translation>Trou sténop., D</translation>
    </message>
    <message>
        <source>Right eye: acuity through a pinhole, for example 6/9</source>
        <translation>Œil droit : acuité à travers un trou sténopéique, par exemple 6/9</translation>
    </message>
    <message>
        <source>Pinhole, L</source>
        <translation>Trou sténop., G</translation>
    </message>
    <message>
        <source>Left eye: acuity through a pinhole, for example 6/9</source>
        <translation>Œil gauche : acuité à travers un trou sténopéique, par exemple 6/9</translation>
    </message>
    <message>
        <source>With own, R</source>
        <translation>Avec la sienne, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Œil droit : acuité avec la paire portée maintenant, par exemple 6/12</translation>
    </message>
    <message>
        <source>With own, L</source>
        <translation>Avec la sienne, G</translation>
    </message>
    <message>
        <source>Left eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Œil gauche : acuité avec la paire portée maintenant, par exemple 6/12</translation>
    </message>
    <message>
        <source>Near, bare</source>
        <translation>Près, sans corr.</translation>
    </message>
    <message>
        <source>Smallest print read without spectacles, for example N12</source>
        <translation>Plus petit texte lu sans lunettes, par exemple N12</translation>
    </message>
    <message>
        <source>Near, best</source>
        <translation>Près, meilleure</translation>
    </message>
    <message>
        <source>Smallest print read with this prescription, for example N6</source>
        <translation>Plus petit texte lu avec cette prescription, par exemple N6</translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation>Vertex</translation>
    </message>
    <message>
        <source>Distance from the trial lens to the eye, millimetres; needed above 4.00 D</source>
        <translation>Distance du verre d’essai à l’œil, millimètres ; nécessaire au-delà de 4.00 D</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Distance of near work from the spectacles, millimetres; 400 when empty</source>
        <translation>Distance du travail de près aux lunettes, millimètres ; 400 si vide</translation>
    </message>
    <message>
        <source>Complaints</source>
        <translation>Plaintes</translation>
    </message>
    <message>
        <source>What the person complains of, in a few words</source>
        <translation>Ce dont la personne se plaint, en quelques mots</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Tuteur</translation>
    </message>
    <message>
        <source>Who was told about a child’s prescription</source>
        <translation>Qui a été informé de la prescription d’un enfant</translation>
    </message>
    <message>
        <source>Right eye: %1</source>
        <translation>Œil droit : %1</translation>
    </message>
    <message>
        <source>Left eye: %1</source>
        <translation>Œil gauche : %1</translation>
    </message>
</context>
<context>
    <name>ShareBars</name>
    <message>
        <source>Right: mean sphere</source>
        <translation>Droit : sphère moyenne</translation>
    </message>
    <message>
        <source>Left: mean sphere</source>
        <translation>Gauche : sphère moyenne</translation>
    </message>
    <message>
        <source>Right: cylinder</source>
        <translation>Droit : cylindre</translation>
    </message>
    <message>
        <source>Left: cylinder</source>
        <translation>Gauche : cylindre</translation>
    </message>
    <message>
        <source>Right: strain</source>
        <translation>Droit : effort</translation>
    </message>
    <message>
        <source>Left: strain</source>
        <translation>Gauche : effort</translation>
    </message>
    <message>
        <source>Right, near: mean sphere</source>
        <translation>Droit, près : sphère moyenne</translation>
    </message>
    <message>
        <source>Left, near: mean sphere</source>
        <translation>Gauche, près : sphère moyenne</translation>
    </message>
    <message>
        <source>Right, near: cylinder</source>
        <translation>Droit, près : cylindre</translation>
    </message>
    <message>
        <source>Left, near: cylinder</source>
        <translation>Gauche, près : cylindre</translation>
    </message>
    <message>
        <source>the eye makes up for %1 D</source>
        <translation>l’œil compense %1 D</translation>
    </message>
    <message>
        <source>error %1 D</source>
        <translation>erreur %1 D</translation>
    </message>
    <message>
        <source>sight lost, logMAR over the eyes</source>
        <translation>vision perdue, logMAR sur les deux yeux</translation>
    </message>
    <message>
        <source>part of the limit used up</source>
        <translation>part de la limite utilisée</translation>
    </message>
    <message>
        <source>%1 of %2 %3; %4</source>
        <translation>%1 sur %2 %3 ; %4</translation>
    </message>
    <message>
        <source>No criterion with a limit could be judged.</source>
        <translation>Aucun critère avec une limite n’a pu être évalué.</translation>
    </message>
    <message>
        <source>of 100 hand-overs judged</source>
        <translation>sur 100 remises évaluées</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Aucune remise n’a encore été évaluée.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Judged again</source>
        <translation>Réévaluées</translation>
    </message>
    <message>
        <source>Pair and record agree</source>
        <translation>Paire et relevé concordent</translation>
    </message>
    <message>
        <source>adds</source>
        <translation>ajoute</translation>
    </message>
    <message>
        <source>takes away</source>
        <translation>retire</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dedans</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>dehors</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>total</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Droit : %1</translation>
    </message>
    <message>
        <source>Left: %1</source>
        <translation>Gauche : %1</translation>
    </message>
</context>
<context>
    <name>command</name>
    <message>
        <source>this plan</source>
        <translation>ce plan</translation>
    </message>
    <message>
        <source>greedy, without repairs</source>
        <translation>glouton, sans corrections</translation>
    </message>
    <message>
        <source>each line by its own demand (newsvendor)</source>
        <translation>chaque article selon sa propre demande (modèle du vendeur de journaux)</translation>
    </message>
    <message>
        <source>levels by past use</source>
        <translation>niveaux d’après l’usage passé</translation>
    </message>
    <message>
        <source>what is on hand, nothing bought</source>
        <translation>ce qui est en stock, rien d’acheté</translation>
    </message>
    <message>
        <source>spend %1 of %2 %3, %4 pieces, %5 kg</source>
        <translation>dépense %1 sur %2 %3, %4 pièces, %5 kg</translation>
    </message>
    <message>
        <source>%1: serves %2 %, first come %3 %, spends %4</source>
        <translation>%1 : sert %2 %, premier arrivé %3 %, dépense %4</translation>
    </message>
    <message>
        <source>on the draws planned for: %1 %, no order serves more than %2 % (gap %3 %); on offer and on hand could serve %4 % at most</source>
        <translation>sur les tirages du plan : %1 %, aucune commande ne sert plus de %2 % (écart %3 %) ; ce qui est proposé et en stock pourrait servir %4 % au plus</translation>
    </message>
    <message>
        <source>the curve bends at %1: %2 % of the draws planned for</source>
        <translation>la courbe s’infléchit à %1 : %2 % sur les tirages du plan</translation>
    </message>
    <message>
        <source>%1 runs out on %2 days in a hundred, by person %3</source>
        <translation>%1 s’épuise %2 jours sur cent, vers la personne %3</translation>
    </message>
    <message>
        <source>demand: %1, %2 people</source>
        <translation>demande : %1, %2 personnes</translation>
    </message>
    <message>
        <source>demand: the ledger, %1 people</source>
        <translation>demande : le registre, %1 personnes</translation>
    </message>
    <message>
        <source>left without a pair, %1: %2</source>
        <translation>restés sans paire, %1 : %2</translation>
    </message>
    <message>
        <source>entries without a prescription, not planned for: %1</source>
        <translation>inscriptions sans prescription, non prises dans le plan : %1</translation>
    </message>
    <message>
        <source>lines whose demand was raised, since they lay empty on some days: %1</source>
        <translation>articles dont la demande a été relevée, car ils étaient épuisés certains jours : %1</translation>
    </message>
    <message>
        <source>mixed with the published mix of a camp, which makes %1 % of it</source>
        <translation>mêlée à la répartition publiée d’un camp, qui en fait %1 %</translation>
    </message>
    <message>
        <source>PDs not taken, drawn from published distributions: %1</source>
        <translation>EP non mesurés, tirés de distributions publiées : %1</translation>
    </message>
    <message>
        <source>assumed: where no PD was taken, it equals the centres of each pair</source>
        <translation>supposé : là où aucun écart pupillaire n&apos;a été pris, il est égal aux centres de chaque paire</translation>
    </message>
    <message>
        <source>assumed: objective readings are final, and a prescriber is named</source>
        <translation>supposé : les mesures objectives sont finales et un prescripteur est nommé</translation>
    </message>
    <message>
        <source>assumed: an unrecorded vertex distance is that of the stock</source>
        <translation>supposé : une distance verre-œil non notée est celle du stock</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>the folder %1 for the sample cannot be made; check rights and free space</source>
        <translation>impossible de créer le dossier %1 pour l’exemple ; vérifier les droits et l’espace libre</translation>
    </message>
    <message>
        <source>write both parts of the PD, right then left: 31/30.5</source>
        <translation>écrire les deux parties de l’EP, droite puis gauche : 31/30.5</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation>impossible de créer le dossier %1</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to print</source>
        <translation>la prescription de %1 n’est pas complète ; il n’y a pas de commande à imprimer</translation>
    </message>
    <message>
        <source>%1 is not under 16; print the note for the person instead</source>
        <translation>%1 n’a pas moins de 16 ans ; imprimer plutôt la note pour la personne</translation>
    </message>
    <message>
        <source>this person has no camp code; give one before anything is printed</source>
        <translation>cette personne n’a pas de code de camp ; en donner un avant d’imprimer</translation>
    </message>
    <message>
        <source>nothing of %1 asks for a referral; there is no letter to print</source>
        <translation>rien chez %1 ne demande une orientation ; il n’y a pas de lettre à imprimer</translation>
    </message>
    <message>
        <source>a label of this size does not hold its text; choose a larger one with --label-size, or a shorter name: %1</source>
        <translation>une étiquette de cette taille ne contient pas son texte ; en choisir une plus grande avec --label-size, ou un nom plus court : %1</translation>
    </message>
    <message>
        <source>there is no printer %1, and no other is set up here; write a PDF with --output and print it where there is one</source>
        <translation>il n’y a pas d’imprimante %1, et aucune autre n’est installée ici ; écrire un PDF avec --output et l’imprimer là où il y en a une</translation>
    </message>
    <message>
        <source>there is no printer %1; there are %2</source>
        <translation>il n’y a pas d’imprimante %1 ; il y a %2</translation>
    </message>
    <message>
        <source>the printer %1 does not take the paper</source>
        <translation>l’imprimante %1 n’accepte pas ce papier</translation>
    </message>
    <message>
        <source>printing was stopped</source>
        <translation>l’impression a été arrêtée</translation>
    </message>
    <message>
        <source>no font here has the script of %1; install the package %2 and print again</source>
        <translation>aucune police ici n’a l’écriture de %1 ; installer le paquet %2 et imprimer de nouveau</translation>
    </message>
    <message>
        <source>%1 does not wait in this table for that purpose, or stands in the list twice; take the row out</source>
        <translation>%1 n’attend pas dans ce tableau pour cet usage, ou figure deux fois dans la liste ; retirer la ligne</translation>
    </message>
    <message>
        <source>there is no line %1 in this box</source>
        <translation>il n’y a pas d’article %1 dans cette boîte</translation>
    </message>
    <message>
        <source>more people were told %1 than there are pieces of it; take a row out of the list</source>
        <translation>%1 a été annoncé à plus de personnes qu’il n’y a de pièces ; retirer une ligne de la liste</translation>
    </message>
    <message>
        <source>not drawn: counts under %1 are hidden on this page</source>
        <translation>non dessiné : les nombres sous %1 sont masqués sur cette page</translation>
    </message>
    <message>
        <source>there is no rules.yaml; the rules built in apply</source>
        <translation>il n’y a pas de rules.yaml ; les règles intégrées s’appliquent</translation>
    </message>
    <message>
        <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
        <translation>ce registre a été écrit en dernier à un autre endroit et n’est ouvert qu’en lecture ; si le dossier a été déplacé ici pour de bon, le dire, et ne plus utiliser l’autre copie</translation>
    </message>
    <message>
        <source>this ledger had an older form and was brought up; as it was it stands in %1</source>
        <translation>ce registre avait une forme plus ancienne et a été mis à jour ; son état d’avant se trouve dans %1</translation>
    </message>
    <message>
        <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
        <translation>l’inscription %1 du registre n’est plus comme elle a été écrite : %2 ; garder le dossier tel quel et le comparer à une copie</translation>
    </message>
    <message>
        <source>there is no ledger here yet</source>
        <translation>il n’y a pas encore de registre ici</translation>
    </message>
    <message>
        <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
        <translation>l’inscription est au registre, mais stock.yaml n’a pas pu être mis à jour ; ce sera fait à la prochaine ouverture</translation>
    </message>
    <message>
        <source>nothing that was handed over to %1 stands here; look at the code, or enter the look at the site that gave the pair</source>
        <translation>rien de remis à %1 ne figure ici ; vérifier le code, ou inscrire ce contrôle sur le site qui a donné la paire</translation>
    </message>
    <message>
        <source>to be referred before any glasses are given</source>
        <translation>à orienter avant de donner des lunettes</translation>
    </message>
    <message>
        <source>nothing is needed for this purpose</source>
        <translation>rien n’est nécessaire pour cet usage</translation>
    </message>
    <message>
        <source>these lines do not make a pair</source>
        <translation>ces articles ne forment pas une paire</translation>
    </message>
    <message>
        <source>on trial: type the acuity with this pair first</source>
        <translation>à l’essai : saisir d’abord l’acuité avec cette paire</translation>
    </message>
    <message>
        <source>an unequal pair: read each eye with the focimeter first</source>
        <translation>paire inégale : lire d’abord chaque œil au frontofocomètre</translation>
    </message>
    <message>
        <source>none left of %1</source>
        <translation>il ne reste plus de %1</translation>
    </message>
    <message>
        <source>no pair chosen</source>
        <translation>aucune paire choisie</translation>
    </message>
    <message>
        <source>stopped as asked; nothing was written</source>
        <translation>arrêté comme demandé ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>l’article %1 a %2 en stock, %3 réservés et %4 en quarantaine, trop peu pour cela ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>line %1 is not in the ledger of %2; nothing was written</source>
        <translation>l’article %1 n’est pas au registre de %2 ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>line %1 stands here by its name and by its code; write one row with the whole number</source>
        <translation>l’article %1 figure ici sous son nom et sous son code ; écrire une seule ligne avec le nombre total</translation>
    </message>
    <message>
        <source>there is no line %1 in stock.yaml of %2; add it there with on hand: 0, or mend the name</source>
        <translation>il n’y a pas d’article %1 dans stock.yaml de %2 ; l’y ajouter avec on hand: 0, ou corriger le nom</translation>
    </message>
    <message>
        <source>a count needs two persons; %1 cannot be both</source>
        <translation>un comptage demande deux personnes ; %1 ne peut pas être les deux</translation>
    </message>
    <message>
        <source>line %1: counted %2, the book says %3; say why, in the row or with --reason</source>
        <translation>article %1 : compté %2, le registre dit %3 ; dire pourquoi, dans la ligne ou avec --reason</translation>
    </message>
    <message>
        <source>line %1: %2 were sent, %3 arrived; the sender should know</source>
        <translation>article %1 : %2 ont été envoyés, %3 sont arrivés ; l’expéditeur devrait le savoir</translation>
    </message>
    <message>
        <source>this order is “%1” already; take back its last step %2 first</source>
        <translation>cette commande est déjà « %1 » ; annuler d’abord sa dernière étape %2</translation>
    </message>
    <message>
        <source>nothing that was received of lot %1 is available</source>
        <translation>rien de ce qui a été reçu du lot %1 n’est disponible</translation>
    </message>
    <message>
        <source>there is no entry %1 to take back</source>
        <translation>il n’y a pas d’inscription %1 à annuler</translation>
    </message>
    <message>
        <source>this hand-over is of %1; a hand-over is taken back on its day only; if the pair came back, enter it as returned</source>
        <translation>cette remise est du %1 ; une remise ne s’annule que le jour même ; si la paire est revenue, l’inscrire comme retournée</translation>
    </message>
    <message>
        <source>nothing was handed over to %1 today</source>
        <translation>rien n’a été remis à %1 aujourd’hui</translation>
    </message>
    <message>
        <source>%1 was given %2 pairs today; say which with --entry %3</source>
        <translation>%1 a reçu %2 paires aujourd’hui ; dire laquelle avec --entry %3</translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation>il n’y a pas de commande %1</translation>
    </message>
    <message>
        <source>this order is “%1”; “%2” cannot follow</source>
        <translation>cette commande est « %1 » ; « %2 » ne peut pas suivre</translation>
    </message>
    <message>
        <source>%1 has no open order</source>
        <translation>%1 n’a pas de commande en cours</translation>
    </message>
    <message>
        <source>%1 has %2 open orders; say which with --order %3</source>
        <translation>%1 a %2 commandes en cours ; dire laquelle avec --order %3</translation>
    </message>
    <message>
        <source>the file cannot be written: %1; check rights and free space</source>
        <translation>impossible d’écrire le fichier : %1 ; vérifier les droits et l’espace libre</translation>
    </message>
    <message>
        <source>something has this name already; name a place that is free</source>
        <translation>quelque chose porte déjà ce nom ; indiquer un emplacement libre</translation>
    </message>
    <message>
        <source>this is the ledger of the camp itself; name another one</source>
        <translation>c’est le registre du camp lui-même ; en nommer un autre</translation>
    </message>
    <message>
        <source>nothing in the box is better for this person</source>
        <translation>rien dans la boîte n’est meilleur pour cette personne</translation>
    </message>
    <message>
        <source>loses no more than the best for this person; others need that one more</source>
        <translation>ne perd pas plus que la meilleure pour cette personne ; d’autres ont davantage besoin de celle-là</translation>
    </message>
    <message>
        <source>%1 was promised to %2 before</source>
        <translation>%1 a été promis à %2 auparavant</translation>
    </message>
    <message>
        <source>%1 goes to %2, for whom nothing else will do</source>
        <translation>%1 va à %2, pour qui rien d’autre ne convient</translation>
    </message>
    <message>
        <source>%1 goes to %2, so that most are served and all together lose least</source>
        <translation>%1 va à %2, pour servir le plus de personnes et perdre le moins au total</translation>
    </message>
    <message>
        <source>nothing that would do is left</source>
        <translation>il ne reste rien qui convienne</translation>
    </message>
    <message>
        <source>what would do goes to others</source>
        <translation>ce qui conviendrait va à d’autres</translation>
    </message>
    <message>
        <source>what would do goes to %1</source>
        <translation>ce qui conviendrait va à %1</translation>
    </message>
    <message>
        <source>told before, but none is left now</source>
        <translation>annoncé auparavant, mais il n’en reste plus</translation>
    </message>
    <message>
        <source>told before; not planned again</source>
        <translation>annoncé auparavant ; n’est pas planifié de nouveau</translation>
    </message>
    <message>
        <source>picked by hand: %1</source>
        <translation>choisi à la main : %1</translation>
    </message>
    <message>
        <source>no sample up to %1 tells these shares apart at this risk; allow a larger risk, or take shares that lie further apart</source>
        <translation>aucun échantillon jusqu’à %1 ne distingue ces proportions à ce risque ; admettre un risque plus grand, ou prendre des proportions plus éloignées</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its draw was taken back</source>
        <translation>aucun lot %1 n’a été tiré dans ce registre ; cette feuille est celle d’un autre camp, ou son tirage a été annulé</translation>
    </message>
    <message>
        <source>the results of this lot are in already, entry %1; to enter them anew take that one back first with `quarterstep record entered-in-error --entry`</source>
        <translation>les résultats de ce lot sont déjà inscrits, inscription %1 ; pour les inscrire de nouveau, annuler d’abord celle-ci avec `quarterstep record entered-in-error --entry`</translation>
    </message>
    <message>
        <source>this row is of the lot %1, the first one of %2; enter each lot by itself</source>
        <translation>cette ligne est du lot %1, la première du lot %2 ; inscrire chaque lot séparément</translation>
    </message>
    <message>
        <source>this lot has %1 rows, spares included; there is no row %2</source>
        <translation>ce lot a %1 lignes, réserves comprises ; il n’y a pas de ligne %2</translation>
    </message>
    <message>
        <source>nothing was handed over here in those days whose pair is recorded; there is nothing to draw from</source>
        <translation>rien n’a été remis ici ces jours-là dont la paire soit notée ; il n’y a rien à tirer</translation>
    </message>
    <message>
        <source>the plan reads %1 pairs and only %2 were handed over; read all of them (--sample %2), or take more days into the lot</source>
        <translation>le plan lit %1 paires et %2 seulement ont été remises ; les lire toutes (--sample %2), ou prendre plus de jours dans le lot</translation>
    </message>
    <message>
        <source>no lot was drawn here yet; `quarterstep audit draw` does</source>
        <translation>aucun lot n’a encore été tiré ici ; `quarterstep audit draw` le fait</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger</source>
        <translation>aucun lot %1 n’a été tiré dans ce registre</translation>
    </message>
    <message>
        <source>no row of the worksheet is filled in</source>
        <translation>aucune ligne de la feuille n’est remplie</translation>
    </message>
    <message>
        <source>the demand is %1 person; plan from more: nothing can be said of who comes next</source>
        <translation>la demande est de %1 personne ; planifier à partir de plus : on ne peut rien dire de ceux qui viendront</translation>
    </message>
    <message>
        <source>the budget is 0: nothing is bought; give --budget</source>
        <translation>le budget est 0 : rien n’est acheté ; indiquer --budget</translation>
    </message>
    <message>
        <source>nobody of this demand can be served by any line on offer; nothing is bought</source>
        <translation>personne de cette demande ne peut être servi par un article proposé ; rien n’est acheté</translation>
    </message>
    <message>
        <source>no pack on offer is within the budget, the weight and the boxes; nothing is bought</source>
        <translation>aucun paquet proposé ne tient dans le budget, le poids et les boîtes ; rien n’est acheté</translation>
    </message>
    <message>
        <source>what is on hand serves whoever can be served; nothing is bought</source>
        <translation>ce qui est en stock sert tous ceux qui peuvent être servis ; rien n’est acheté</translation>
    </message>
    <message>
        <source>the library for PINs cannot be used here</source>
        <translation>la bibliothèque pour les PIN ne peut pas être utilisée ici</translation>
    </message>
    <message>
        <source>a PIN has %1 to %2 characters; nothing was written</source>
        <translation>un PIN a de %1 à %2 caractères ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>there is not enough memory to keep a PIN; close other programs</source>
        <translation>pas assez de mémoire pour garder un PIN ; fermer d’autres programmes</translation>
    </message>
    <message>
        <source>nobody of this demand can be served from this box; no day was simulated</source>
        <translation>personne de cette demande ne peut être servi avec cette boîte ; aucun jour n’a été simulé</translation>
    </message>
    <message>
        <source>after the colon stands how many lie in each bin, then centres, bin or round: write for example &quot;: 10 centres 62 bin A&quot;</source>
        <translation>après les deux-points vient le nombre par casier, puis centres, bin ou round : écrire par exemple &quot;: 10 centres 62 bin A&quot;</translation>
    </message>
    <message>
        <source>%1 is not a size in millimetres; write for example 62</source>
        <translation>%1 n’est pas une taille en millimètres ; écrire par exemple 62</translation>
    </message>
    <message>
        <source>a ready-made pair with a cylinder needs its axis; write for example -1.00 -0.50 x 90</source>
        <translation>une paire prémontée avec cylindre a besoin de son axe ; écrire par exemple -1.00 -0.50 x 90</translation>
    </message>
    <message>
        <source>from %1 to %2 is no whole number of steps of %3; write spheres and a step that meets the last one</source>
        <translation>de %1 à %2, ce n’est pas un nombre entier de pas de %3 ; écrire des sphères et un pas qui tombe sur la dernière</translation>
    </message>
    <message>
        <source>%1 stands in an earlier tray already; put the counts together, or give the two different centres</source>
        <translation>%1 figure déjà dans un plateau précédent ; réunir les nombres, ou donner des centres différents aux deux</translation>
    </message>
    <message>
        <source>a frame is given by its lens and bridge in millimetres; write for example frame 44-18: 12</source>
        <translation>une monture est donnée par son verre et son pont en millimètres ; écrire par exemple frame 44-18: 12</translation>
    </message>
    <message>
        <source>a tray is written as powers, a colon and a count: for example &quot;near +1.00 to +3.50 by 0.50: 10&quot;</source>
        <translation>un plateau s’écrit avec des puissances, deux-points et un nombre : par exemple &quot;near +1.00 to +3.50 by 0.50: 10&quot;</translation>
    </message>
    <message>
        <source>these trays make more than %1 lines of stock</source>
        <translation>ces plateaux donnent plus de %1 articles de stock</translation>
    </message>
    <message>
        <source>the camp has no name yet; give it one</source>
        <translation>le camp n’a pas encore de nom ; en donner un</translation>
    </message>
    <message>
        <source>nothing is described yet; write a tray a line</source>
        <translation>rien n’est encore décrit ; écrire un plateau par ligne</translation>
    </message>
    <message>
        <source>this folder cannot be made: %1</source>
        <translation>impossible de créer ce dossier : %1</translation>
    </message>
    <message>
        <source>this folder has a stock.yaml already; nothing was written: open the folder, or choose another one</source>
        <translation>ce dossier a déjà un stock.yaml ; rien n’a été écrit : ouvrir le dossier, ou en choisir un autre</translation>
    </message>
    <message>
        <source>%1 does not wait for that purpose</source>
        <translation>%1 n’attend pas pour cet usage</translation>
    </message>
    <message>
        <source>this box has no such lines any more</source>
        <translation>cette boîte n’a plus de tels articles</translation>
    </message>
    <message>
        <source>say why another pair than the one planned</source>
        <translation>dire pourquoi une autre paire que celle prévue</translation>
    </message>
    <message>
        <source>none is left, or what is left was promised to others</source>
        <translation>il n’en reste plus, ou ce qui reste a été promis à d’autres</translation>
    </message>
    <message>
        <source>no mismatch, so there is no run between two of them to draw</source>
        <translation>aucune discordance, donc aucune série entre deux à dessiner</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; there is no run of good ones to draw</source>
        <translation>chaque remise est une discordance ; aucune série de bonnes à dessiner</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; a p-chart has no limits then</source>
        <translation>chaque remise est une discordance ; une carte p n’a alors pas de limites</translation>
    </message>
    <message>
        <source>no mismatch; a p-chart has no limits then</source>
        <translation>aucune discordance ; une carte p n’a alors pas de limites</translation>
    </message>
    <message>
        <source>a p-chart compares groups over time, and there are not two yet</source>
        <translation>une carte p compare des groupes dans le temps, et il n’y en a pas encore deux</translation>
    </message>
    <message>
        <source>%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could show at this share that things got better; look at the g-chart</source>
        <translation>%1 groupes sur %2 ont moins que les %3 remises à partir desquelles une carte p pourrait montrer une amélioration à cette proportion ; regarder la carte g</translation>
    </message>
    <message>
        <source>%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart</source>
        <translation>%1 groupes sur %2 n’ont aucune discordance, un quart ou plus ; regarder la carte g</translation>
    </message>
    <message>
        <source>worn when seen</source>
        <translation>portées lors du contrôle</translation>
    </message>
    <message>
        <source>carried, not worn when seen</source>
        <translation>sur soi, non portées lors du contrôle</translation>
    </message>
    <message>
        <source>left at home</source>
        <translation>laissées à la maison</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>cassées</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdues</translation>
    </message>
    <message>
        <source>not worn any more</source>
        <translation>ne sont plus portées</translation>
    </message>
    <message>
        <source>the person was not met</source>
        <translation>la personne n’a pas été rencontrée</translation>
    </message>
    <message>
        <source>after some weeks</source>
        <translation>après quelques semaines</translation>
    </message>
    <message>
        <source>after three to four months</source>
        <translation>après trois à quatre mois</translation>
    </message>
    <message>
        <source>after six months</source>
        <translation>après six mois</translation>
    </message>
    <message>
        <source>the same person had a pair for %1 by entry %2 already</source>
        <translation>la même personne a déjà eu une paire pour %1 par l’inscription %2</translation>
    </message>
    <message>
        <source>%1 entries were taken back at one place on one day</source>
        <translation>%1 inscriptions ont été annulées au même endroit le même jour</translation>
    </message>
    <message>
        <source>line %1: counted %2 against the book</source>
        <translation>article %1 : compté %2 par rapport au registre</translation>
    </message>
    <message>
        <source>line %1 was later put aside (%2); this pair was given before</source>
        <translation>l’article %1 a été mis de côté plus tard (%2) ; cette paire a été donnée avant</translation>
    </message>
    <message>
        <source>the time of this entry is later than now</source>
        <translation>l’heure de cette inscription est dans le futur</translation>
    </message>
    <message>
        <source>entered as not collected</source>
        <translation>inscrit comme non retiré</translation>
    </message>
    <message>
        <source>a letter was to be written beside this hand-over; none is recorded</source>
        <translation>une lettre devait accompagner cette remise ; aucune n’est notée</translation>
    </message>
    <message>
        <source>checked and waiting for more than %1 days</source>
        <translation>vérifiée et en attente depuis plus de %1 jours</translation>
    </message>
    <message>
        <source>given until the order %1 comes, more than %2 days ago</source>
        <translation>donnée jusqu’à l’arrivée de la commande %1, il y a plus de %2 jours</translation>
    </message>
    <message>
        <source>refused: %1 of %2 read failed, more than the %4 allowed among %3</source>
        <translation>refusé : %1 échecs sur %2 lues, plus que les %4 admis parmi %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no more than the %4 allowed among %3</source>
        <translation>accepté : %1 échecs sur %2 lues ; même si les %5 non lues échouaient aussi, cela ne dépasserait pas les %4 admis parmi %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed, no more than the %4 allowed among %3</source>
        <translation>accepté : %1 échecs sur %2 lues, pas plus que les %4 admis parmi %3</translation>
    </message>
    <message>
        <source>open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read</source>
        <translation>en cours : %1 échecs sur %2 lues, %4 admis parmi %3 ; %5 paires restent à lire</translation>
    </message>
    <message>
        <source>this pair may be given only with the acuity read with it; none was recorded</source>
        <translation>cette paire ne peut être donnée qu’avec l’acuité lue avec elle ; aucune n’a été notée</translation>
    </message>
    <message>
        <source>by the record nothing was needed for this purpose</source>
        <translation>d’après le relevé, rien n’était nécessaire pour cet usage</translation>
    </message>
    <message>
        <source>the centres of this pair were assumed, not measured</source>
        <translation>les centres de cette paire ont été supposés, non mesurés</translation>
    </message>
    <message>
        <source>the PD was not measured; prism is judged at its worst likely value</source>
        <translation>l’EP n’a pas été mesuré ; le prisme est évalué à sa pire valeur probable</translation>
    </message>
    <message>
        <source>the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths</source>
        <translation>l’inscription dit %1, réévaluée c’est %2 ; le coût était de %3 et est de %4 millièmes</translation>
    </message>
    <message>
        <source>right eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>œil droit : %1 avec cette paire, %2 logMAR de moins bien que prévu</translation>
    </message>
    <message>
        <source>left eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>œil gauche : %1 avec cette paire, %2 logMAR de moins bien que prévu</translation>
    </message>
    <message>
        <source>right eye: read %1, recorded %2</source>
        <translation>œil droit : lu %1, noté %2</translation>
    </message>
    <message>
        <source>left eye: read %1, recorded %2</source>
        <translation>œil gauche : lu %1, noté %2</translation>
    </message>
    <message>
        <source>%1 was in the box (bin %2) and would have cost %3 logMAR less</source>
        <translation>%1 était dans la boîte (casier %2) et aurait coûté %3 logMAR de moins</translation>
    </message>
    <message>
        <source>outside a limit, no reason given</source>
        <translation>hors d’une limite, sans motif donné</translation>
    </message>
    <message>
        <source>see the person again; read the pair with the focimeter</source>
        <translation>revoir la personne ; lire la paire au frontofocomètre</translation>
    </message>
    <message>
        <source>outside a limit, with a reason</source>
        <translation>hors d’une limite, avec un motif</translation>
    </message>
    <message>
        <source>read the reasons together; where one repeats, change stock or rules</source>
        <translation>lire les motifs ensemble ; si l’un se répète, changer le stock ou les règles</translation>
    </message>
    <message>
        <source>a clearly better pair was in the box</source>
        <translation>une paire nettement meilleure était dans la boîte</translation>
    </message>
    <message>
        <source>look at the bin named: is it reachable, labelled, in its place?</source>
        <translation>voir le casier indiqué : est-il accessible, étiqueté, à sa place ?</translation>
    </message>
    <message>
        <source>the pair is off its label</source>
        <translation>la paire ne correspond pas à son étiquette</translation>
    </message>
    <message>
        <source>quarantine the line, read ten pieces, tell the supplier</source>
        <translation>mettre l’article en quarantaine, lire dix pièces, avertir le fournisseur</translation>
    </message>
    <message>
        <source>acuity with the pair worse than predicted</source>
        <translation>acuité avec la paire moins bonne que prévu</translation>
    </message>
    <message>
        <source>refract again; where it repeats, look at the refraction of the day</source>
        <translation>refaire la réfraction ; si cela se répète, examiner la réfraction de ce jour</translation>
    </message>
    <message>
        <source>on trial, no acuity recorded</source>
        <translation>à l’essai, aucune acuité notée</translation>
    </message>
    <message>
        <source>call the person back and read the acuity with the pair</source>
        <translation>rappeler la personne et mesurer l’acuité avec la paire</translation>
    </message>
    <message>
        <source>nothing was needed by the record</source>
        <translation>d’après le relevé, rien n’était nécessaire</translation>
    </message>
    <message>
        <source>look at what is prescribed to whom; a pair not needed is one that somebody lacks</source>
        <translation>regarder ce qui est prescrit et à qui ; une paire inutile manque à quelqu’un</translation>
    </message>
    <message>
        <source>no check recorded</source>
        <translation>aucun contrôle noté</translation>
    </message>
    <message>
        <source>record the four checks at hand-over; draw a sample of these for the bench</source>
        <translation>noter les quatre contrôles à la remise ; en tirer un échantillon pour le banc</translation>
    </message>
    <message>
        <source>PD or centres not measured</source>
        <translation>EP ou centres non mesurés</translation>
    </message>
    <message>
        <source>measure the PD of everybody and the centres of every line from 1.50 D up</source>
        <translation>mesurer l’EP de tous et les centres de chaque article à partir de 1.50 D</translation>
    </message>
    <message>
        <source>given from a line in quarantine</source>
        <translation>donnée d’un article en quarantaine</translation>
    </message>
    <message>
        <source>read the pair with the focimeter, or exchange it</source>
        <translation>lire la paire au frontofocomètre, ou l’échanger</translation>
    </message>
    <message>
        <source>a temporary pair never replaced</source>
        <translation>une paire provisoire jamais remplacée</translation>
    </message>
    <message>
        <source>ask the laboratory for the order, and the person to come</source>
        <translation>demander la commande au laboratoire, et à la personne de venir</translation>
    </message>
    <message>
        <source>an order not collected</source>
        <translation>une commande non retirée</translation>
    </message>
    <message>
        <source>send word to the person; bring the pair to the next visit</source>
        <translation>prévenir la personne ; apporter la paire à la prochaine visite</translation>
    </message>
    <message>
        <source>a letter of referral not written</source>
        <translation>une lettre d’orientation non écrite</translation>
    </message>
    <message>
        <source>write it now</source>
        <translation>l’écrire maintenant</translation>
    </message>
    <message>
        <source>handed over twice for one purpose</source>
        <translation>remis deux fois pour un même usage</translation>
    </message>
    <message>
        <source>count the line; where one piece is too many, take the second entry back</source>
        <translation>compter l’article ; s’il y a une pièce de trop, annuler la seconde inscription</translation>
    </message>
    <message>
        <source>many corrections on one day</source>
        <translation>beaucoup de corrections en un jour</translation>
    </message>
    <message>
        <source>ask what was difficult that day: light, queue, a new hand</source>
        <translation>demander ce qui était difficile ce jour-là : lumière, file, nouvelle personne</translation>
    </message>
    <message>
        <source>a count differed from the book</source>
        <translation>un comptage différait du registre</translation>
    </message>
    <message>
        <source>look for a line that differs the other way; it is likely beside it</source>
        <translation>chercher un article qui diffère en sens inverse ; il est probablement à côté</translation>
    </message>
    <message>
        <source>the record disagrees with what was measured beside it</source>
        <translation>le relevé contredit ce qui a été mesuré à côté</translation>
    </message>
    <message>
        <source>have the card read again by somebody who has not seen the record</source>
        <translation>faire relire la fiche par quelqu’un qui n’a pas vu le relevé</translation>
    </message>
    <message>
        <source>judged again, the entry says something else</source>
        <translation>réévaluée, l’inscription dit autre chose</translation>
    </message>
    <message>
        <source>keep this ledger as it is and tell the makers of the program</source>
        <translation>garder ce registre tel quel et prévenir les auteurs du programme</translation>
    </message>
    <message>
        <source>the rules of the time are missing</source>
        <translation>les règles de l’époque manquent</translation>
    </message>
    <message>
        <source>put the rules.yaml of that time into a copy of the camp and audit there</source>
        <translation>mettre le rules.yaml de cette époque dans une copie du camp et y faire l’audit</translation>
    </message>
    <message>
        <source>the record is not there to judge by</source>
        <translation>le relevé n’est pas là pour évaluer</translation>
    </message>
    <message>
        <source>nothing: the person was forgotten, or the entry was written before records were kept</source>
        <translation>rien : la personne a été oubliée, ou l’inscription date d’avant la conservation des relevés</translation>
    </message>
    <message>
        <source>an entry from the future</source>
        <translation>une inscription datée du futur</translation>
    </message>
    <message>
        <source>set the clock of that station right</source>
        <translation>régler l’horloge de ce poste</translation>
    </message>
    <message>
        <source>neither power, fit, acuity nor instructions are recorded</source>
        <translation>ni puissance, ni ajustement, ni acuité, ni conseils ne sont notés</translation>
    </message>
    <message>
        <source>the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml</source>
        <translation>les règles d’empreinte %1 (profil %2) ne sont ni dans le registre ni dans rules.yaml</translation>
    </message>
    <message>
        <source>the pair as it was judged, or part of the prescription, is not recorded</source>
        <translation>la paire telle qu’évaluée, ou une partie de la prescription, n’est pas notée</translation>
    </message>
    <message>
        <source>the prescription is not recorded or was forgotten</source>
        <translation>la prescription n’est pas notée ou a été oubliée</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it fits %2</source>
        <translation>noté %1 ; ce qui a été mesuré à côté correspond à %2</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it does not fit</source>
        <translation>noté %1 ; ce qui a été mesuré à côté ne correspond pas</translation>
    </message>
    <message>
        <source>meant as it is</source>
        <translation>voulu tel quel</translation>
    </message>
    <message>
        <source>the sign of a sphere</source>
        <translation>le signe d’une sphère</translation>
    </message>
    <message>
        <source>the sign of a cylinder</source>
        <translation>le signe d’un cylindre</translation>
    </message>
    <message>
        <source>a transposition without the axis</source>
        <translation>une transposition sans l’axe</translation>
    </message>
    <message>
        <source>a transposition without the sphere</source>
        <translation>une transposition sans la sphère</translation>
    </message>
    <message>
        <source>an axis off by 90 degrees</source>
        <translation>un axe décalé de 90 degrés</translation>
    </message>
    <message>
        <source>an axis read as its mirror image</source>
        <translation>un axe lu en miroir</translation>
    </message>
    <message>
        <source>digits of an axis</source>
        <translation>les chiffres d’un axe</translation>
    </message>
    <message>
        <source>sphere and cylinder exchanged</source>
        <translation>sphère et cylindre échangés</translation>
    </message>
    <message>
        <source>a decimal point in another place</source>
        <translation>un point décimal ailleurs</translation>
    </message>
    <message>
        <source>a power misread by a step or two</source>
        <translation>une puissance mal lue d’un pas ou deux</translation>
    </message>
    <message>
        <source>the addition put on the distance power</source>
        <translation>l’addition ajoutée à la puissance de loin</translation>
    </message>
    <message>
        <source>right and left exchanged in the record</source>
        <translation>droite et gauche échangées dans le relevé</translation>
    </message>
    <message>
        <source>the right eye written for the left as well</source>
        <translation>l’œil droit écrit aussi pour le gauche</translation>
    </message>
    <message>
        <source>the prescription of the person before</source>
        <translation>la prescription de la personne précédente</translation>
    </message>
    <message>
        <source>the addition left out</source>
        <translation>l’addition omise</translation>
    </message>
    <message>
        <source>the addition taken as the whole near power</source>
        <translation>l’addition prise pour la puissance de près totale</translation>
    </message>
    <message>
        <source>the PD of one eye recorded as that of both</source>
        <translation>l’EP d’un œil noté comme celui des deux</translation>
    </message>
    <message>
        <source>the near PD recorded as distance PD</source>
        <translation>l’EP de près noté comme EP de loin</translation>
    </message>
    <message>
        <source>the record, in a way that is none of those listed</source>
        <translation>le relevé, d’une façon qui n’est pas dans la liste</translation>
    </message>
    <message>
        <source>a pair from a bin beside the one meant</source>
        <translation>une paire d’un casier voisin de celui voulu</translation>
    </message>
    <message>
        <source>the power meant, other centres or size</source>
        <translation>la puissance voulue, autres centres ou taille</translation>
    </message>
    <message>
        <source>picked by the sphere, the cylinder left out</source>
        <translation>choisie par la sphère, le cylindre omis</translation>
    </message>
    <message>
        <source>picked by sphere and whole cylinder</source>
        <translation>choisie par la sphère et le cylindre entier</translation>
    </message>
    <message>
        <source>picked by the sphere less half the cylinder</source>
        <translation>choisie par la sphère moins la moitié du cylindre</translation>
    </message>
    <message>
        <source>the pair for the person&apos;s other purpose</source>
        <translation>la paire pour l’autre usage de la personne</translation>
    </message>
    <message>
        <source>the pairs of two persons exchanged</source>
        <translation>les paires de deux personnes échangées</translation>
    </message>
    <message>
        <source>right and left lens exchanged</source>
        <translation>verres droit et gauche échangés</translation>
    </message>
    <message>
        <source>a lens turned when it was mounted</source>
        <translation>un verre tourné au montage</translation>
    </message>
    <message>
        <source>a piece that lay in another line&apos;s bin</source>
        <translation>une pièce qui se trouvait dans le casier d’un autre article</translation>
    </message>
    <message>
        <source>another line recorded than given</source>
        <translation>un autre article noté que celui donné</translation>
    </message>
    <message>
        <source>the piece or its lot off the label</source>
        <translation>la pièce ou son lot ne correspond pas à l’étiquette</translation>
    </message>
    <message>
        <source>one pair recorded twice</source>
        <translation>une paire notée deux fois</translation>
    </message>
    <message>
        <source>another pair than the one meant, in a way not listed</source>
        <translation>une autre paire que celle voulue, d’une façon qui n’est pas dans la liste</translation>
    </message>
    <message>
        <source>record and pair meant as they are</source>
        <translation>relevé et paire voulus tels quels</translation>
    </message>
    <message>
        <source>entry %1 records the same pair for the same purpose</source>
        <translation>l’inscription %1 note la même paire pour le même usage</translation>
    </message>
    <message>
        <source>recorded %1; what was read fits %2</source>
        <translation>noté %1 ; ce qui a été lu correspond à %2</translation>
    </message>
    <message>
        <source>what was read fits %1; the record says %2</source>
        <translation>ce qui a été lu correspond à %1 ; le relevé dit %2</translation>
    </message>
    <message>
        <source>%1 may have been given and another line recorded</source>
        <translation>%1 a peut-être été donné et un autre article noté</translation>
    </message>
    <message>
        <source>line %1 may be off its label</source>
        <translation>l’article %1 ne correspond peut-être pas à son étiquette</translation>
    </message>
    <message>
        <source>%1 would be suggested by this record</source>
        <translation>%1 serait proposé d’après ce relevé</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s near need</source>
        <translation>la paire donnée convient au besoin de près de cette personne</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s distance need</source>
        <translation>la paire donnée convient au besoin de loin de cette personne</translation>
    </message>
    <message>
        <source>the pair given is a reader of the addition alone</source>
        <translation>la paire donnée n’est qu’une lunette de lecture de l’addition</translation>
    </message>
    <message>
        <source>with right and left lens exchanged the pair fits</source>
        <translation>avec les verres droit et gauche échangés, la paire convient</translation>
    </message>
    <message>
        <source>the pair given fits the person of entry %1, and that one fits here</source>
        <translation>la paire donnée convient à la personne de l’inscription %1, et l’autre convient ici</translation>
    </message>
    <message>
        <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
        <translation>%1 coûte moins de vision que %2 : %3 contre %4 logMAR sur les deux yeux</translation>
    </message>
    <message>
        <source>%1 is within the limits, or may be tried; %2 is outside one</source>
        <translation>%1 est dans les limites, ou peut être essayé ; %2 est hors d’une limite</translation>
    </message>
    <message>
        <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
        <translation>%1 est acceptable tel quel ; %2 est à l’essai jusqu’à la saisie de l’acuité</translation>
    </message>
    <message>
        <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
        <translation>égaux pour la vision ; %1 a moins de réserves que %2 : %3 contre %4</translation>
    </message>
    <message>
        <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
        <translation>égaux pour la vision et les réserves ; %1 s’écarte du côté mal toléré sur moins d’yeux que %2 : %3 contre %4</translation>
    </message>
    <message>
        <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
        <translation>égaux jusqu’ici ; %1 garde mieux l’équilibre entre les yeux que %2 : %3 contre %4 D d’écart</translation>
    </message>
    <message>
        <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
        <translation>égaux jusqu’ici ; %1 a moins de prisme horizontal que %2 : %3 contre %4 dioptries prismatiques</translation>
    </message>
    <message>
        <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
        <translation>égaux jusqu’ici ; de près, base interne (%1) passe avant base externe (%2)</translation>
    </message>
    <message>
        <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
        <translation>égaux jusqu’ici ; la monture de %1 convient mieux à la taille voulue que %2 : %3 contre %4 classes d’écart</translation>
    </message>
    <message>
        <source>equal so far; %1 is less scarce in the box than %2</source>
        <translation>égaux jusqu’ici ; %1 est moins rare dans la boîte que %2</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
        <translation>égaux en tout ce qui est évalué ; %1 compte moins de pièces que %2 : %3 contre %4</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 comes before %2 by name</source>
        <translation>égaux en tout ce qui est évalué ; %1 vient avant %2 par le nom</translation>
    </message>
    <message>
        <source>%1 and %2 are the same</source>
        <translation>%1 et %2 sont identiques</translation>
    </message>
    <message>
        <source>above %1 D the vertex distance must be recorded</source>
        <translation>au-delà de %1 D, la distance verre-œil doit être notée</translation>
    </message>
    <message>
        <source>a sphere would leave less cylinder than this lens does</source>
        <translation>une sphère laisserait moins de cylindre que ce verre</translation>
    </message>
    <message>
        <source>prism by decentration is the prescriber&apos;s decision</source>
        <translation>le prisme par décentrement relève du prescripteur</translation>
    </message>
    <message>
        <source>PD not taken: judged at the worst end of what is plausible</source>
        <translation>EP non mesuré : évalué à la limite la plus défavorable du plausible</translation>
    </message>
    <message>
        <source>the centres of this pair are assumed, not measured</source>
        <translation>les centres de cette paire sont supposés, non mesurés</translation>
    </message>
    <message>
        <source>heights of the centres not measured</source>
        <translation>hauteurs des centres non mesurées</translation>
    </message>
    <message>
        <source>cylinder left over</source>
        <translation>cylindre restant</translation>
    </message>
    <message>
        <source>cylinder left over %1 D, limit %2 D</source>
        <translation>cylindre restant %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D of cylinder left over</source>
        <translation>%1 D de cylindre restant</translation>
    </message>
    <message>
        <source>difference between the eyes&apos; needs</source>
        <translation>différence entre les besoins des yeux</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D, limit %2 D for one power in both lenses</source>
        <translation>les yeux diffèrent de %1 D, limite %2 D pour une même puissance dans les deux verres</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D</source>
        <translation>les yeux diffèrent de %1 D</translation>
    </message>
    <message>
        <source>size of the power</source>
        <translation>importance de la puissance</translation>
    </message>
    <message>
        <source>power %1 D, limit %2 D</source>
        <translation>puissance %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>high power: %1 D</source>
        <translation>puissance forte : %1 D</translation>
    </message>
    <message>
        <source>blur strength</source>
        <translation>force du flou</translation>
    </message>
    <message>
        <source>blur strength %1 D, limit %2 D</source>
        <translation>force du flou %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>blur strength %1 D</source>
        <translation>force du flou %1 D</translation>
    </message>
    <message>
        <source>too much plus</source>
        <translation>trop de plus</translation>
    </message>
    <message>
        <source>%1 D too much plus, limit %2 D</source>
        <translation>%1 D trop de plus, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D too much plus</source>
        <translation>%1 D trop de plus</translation>
    </message>
    <message>
        <source>too much minus or too little plus</source>
        <translation>trop de moins ou pas assez de plus</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus, limit %2 D</source>
        <translation>%1 D trop de moins ou pas assez de plus, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus</source>
        <translation>%1 D trop de moins ou pas assez de plus</translation>
    </message>
    <message>
        <source>difference between the two lenses</source>
        <translation>différence entre les deux verres</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D, limit %2 D</source>
        <translation>les deux verres diffèrent de %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D</source>
        <translation>les deux verres diffèrent de %1 D</translation>
    </message>
    <message>
        <source>balance between the eyes</source>
        <translation>équilibre entre les yeux</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other, limit %2 D</source>
        <translation>un œil décalé de %1 D par rapport à l’autre, limite %2 D</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other</source>
        <translation>un œil décalé de %1 D par rapport à l’autre</translation>
    </message>
    <message>
        <source>cylinder of the lens beyond the need</source>
        <translation>cylindre du verre au-delà du besoin</translation>
    </message>
    <message>
        <source>the lens has %1 D more cylinder than needed, limit %2 D</source>
        <translation>le verre a %1 D de cylindre de plus que nécessaire, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D more cylinder than needed</source>
        <translation>%1 D de cylindre de plus que nécessaire</translation>
    </message>
    <message>
        <source>axis off</source>
        <translation>écart d’axe</translation>
    </message>
    <message>
        <source>axis off by %1 degrees, limit %2</source>
        <translation>écart d’axe de %1 degrés, limite %2</translation>
    </message>
    <message>
        <source>axis off by %1 degrees</source>
        <translation>écart d’axe de %1 degrés</translation>
    </message>
    <message>
        <source>horizontal prism</source>
        <translation>prisme horizontal</translation>
    </message>
    <message>
        <source>horizontal prism %1, limit %2</source>
        <translation>prisme horizontal %1, limite %2</translation>
    </message>
    <message>
        <source>horizontal prism %1</source>
        <translation>prisme horizontal %1</translation>
    </message>
    <message>
        <source>vertical prism</source>
        <translation>prisme vertical</translation>
    </message>
    <message>
        <source>vertical prism %1, limit %2</source>
        <translation>prisme vertical %1, limite %2</translation>
    </message>
    <message>
        <source>vertical prism %1</source>
        <translation>prisme vertical %1</translation>
    </message>
    <message>
        <source>centres against PD</source>
        <translation>centres par rapport à l’EP</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD, limit %2 mm</source>
        <translation>centres à %1 mm de l’EP, limite %2 mm</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD</source>
        <translation>centres à %1 mm de l’EP</translation>
    </message>
    <message>
        <source>vertical imbalance at the reading level</source>
        <translation>déséquilibre vertical au niveau de lecture</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level, limit %2</source>
        <translation>déséquilibre vertical %1 au niveau de lecture, limite %2</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level</source>
        <translation>déséquilibre vertical %1 au niveau de lecture</translation>
    </message>
    <message>
        <source>frame size class</source>
        <translation>classe de taille de monture</translation>
    </message>
    <message>
        <source>frame size off by %1 class, limit %2</source>
        <translation>taille de monture à %1 classe d’écart, limite %2</translation>
    </message>
    <message>
        <source>frame size off by %1 class</source>
        <translation>taille de monture à %1 classe d’écart</translation>
    </message>
    <message>
        <source>blur strength at near</source>
        <translation>force du flou de près</translation>
    </message>
    <message>
        <source>blur strength at near %1 D, limit %2 D</source>
        <translation>force du flou de près %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>blur strength at near %1 D</source>
        <translation>force du flou de près %1 D</translation>
    </message>
    <message>
        <source>near power too strong</source>
        <translation>puissance de près trop forte</translation>
    </message>
    <message>
        <source>near power %1 D too strong, limit %2 D</source>
        <translation>puissance de près trop forte de %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too strong</source>
        <translation>puissance de près trop forte de %1 D</translation>
    </message>
    <message>
        <source>near power too weak</source>
        <translation>puissance de près trop faible</translation>
    </message>
    <message>
        <source>near power %1 D too weak, limit %2 D</source>
        <translation>puissance de près trop faible de %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too weak</source>
        <translation>puissance de près trop faible de %1 D</translation>
    </message>
    <message>
        <source>sphere off</source>
        <translation>écart de sphère</translation>
    </message>
    <message>
        <source>sphere off by %1 D, limit %2 D</source>
        <translation>écart de sphère de %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>sphere off by %1 D</source>
        <translation>écart de sphère de %1 D</translation>
    </message>
    <message>
        <source>cylinder off</source>
        <translation>écart de cylindre</translation>
    </message>
    <message>
        <source>cylinder off by %1 D, limit %2 D</source>
        <translation>écart de cylindre de %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>cylinder off by %1 D</source>
        <translation>écart de cylindre de %1 D</translation>
    </message>
    <message>
        <source>axis against the prescription</source>
        <translation>axe par rapport à la prescription</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription, limit %2</source>
        <translation>axe à %1 degrés de la prescription, limite %2</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription</source>
        <translation>axe à %1 degrés de la prescription</translation>
    </message>
    <message>
        <source>acuity with the mean sphere</source>
        <translation>acuité avec la sphère moyenne</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR below the full correction, limit %2</source>
        <translation>acuité avec la sphère moyenne %1 logMAR sous la correction complète, limite %2</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR lower</source>
        <translation>acuité avec la sphère moyenne %1 logMAR plus basse</translation>
    </message>
    <message>
        <source>acuity with this pair</source>
        <translation>acuité avec cette paire</translation>
    </message>
    <message>
        <source>acuity with this pair is %1 logMAR beyond what is asked, limit %2</source>
        <translation>l’acuité avec cette paire dépasse de %1 logMAR ce qui est demandé, limite %2</translation>
    </message>
    <message>
        <source>tried: acuity %1 logMAR short</source>
        <translation>essayée : il manque %1 logMAR d’acuité</translation>
    </message>
    <message>
        <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
        <translation>la probabilité que l’erreur vraie soit dans sa limite est de %1 % : répéter les mesures</translation>
    </message>
    <message>
        <source>sudden loss of sight: eye clinic the same day</source>
        <translation>perte soudaine de vue : clinique des yeux le jour même</translation>
    </message>
    <message>
        <source>painful eye: eye clinic the same day</source>
        <translation>œil douloureux : clinique des yeux le jour même</translation>
    </message>
    <message>
        <source>red eye: eye clinic the same day</source>
        <translation>œil rouge : clinique des yeux le jour même</translation>
    </message>
    <message>
        <source>new flashes or floaters: eye clinic the same day</source>
        <translation>éclairs ou taches récents : clinique des yeux le jour même</translation>
    </message>
    <message>
        <source>double vision: eye clinic the same day</source>
        <translation>vision double : clinique des yeux le jour même</translation>
    </message>
    <message>
        <source>white pupil: eye clinic the same day</source>
        <translation>pupille blanche : clinique des yeux le jour même</translation>
    </message>
    <message>
        <source>a child&apos;s squint: refer before glasses are given</source>
        <translation>strabisme d’un enfant : orienter avant de donner des lunettes</translation>
    </message>
    <message>
        <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
        <translation>une réfraction sous cycloplégie a été demandée : orienter avant de donner des lunettes</translation>
    </message>
    <message>
        <source>lines look bent or broken: eye clinic soon</source>
        <translation>les lignes paraissent courbes ou brisées : clinique des yeux bientôt</translation>
    </message>
    <message>
        <source>part of the field of view is missing: eye clinic soon</source>
        <translation>une partie du champ de vision manque : clinique des yeux bientôt</translation>
    </message>
    <message>
        <source>halos around lights: eye clinic soon</source>
        <translation>halos autour des lumières : clinique des yeux bientôt</translation>
    </message>
    <message>
        <source>does not reach 6/9 in each eye with the final prescription</source>
        <translation>n’atteint pas 6/9 à chaque œil avec la prescription finale</translation>
    </message>
    <message>
        <source>presents worse than 6/60 in an eye, even if glasses help</source>
        <translation>se présente à moins de 6/60 à un œil, même si des lunettes aident</translation>
    </message>
    <message>
        <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
        <translation>un enfant avec +3.50 D ou plus, ou 1.50 D de cylindre ou plus</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.50 D or more</source>
        <translation>moins de 8 ans et les yeux diffèrent de 1.50 D ou plus</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.00 D or more</source>
        <translation>moins de 8 ans et les yeux diffèrent de 1.00 D ou plus</translation>
    </message>
    <message>
        <source>mean sphere beyond 6.00 D</source>
        <translation>sphère moyenne au-delà de 6.00 D</translation>
    </message>
    <message>
        <source>may be without its lens (aphakia): vertex distance needed</source>
        <translation>peut être sans cristallin (aphakie) : distance verre-œil nécessaire</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
        <translation>moins de 6/12 avec la meilleure prescription et aucun gain au trou sténopéique</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription; pinhole not taken</source>
        <translation>moins de 6/12 avec la meilleure prescription ; trou sténopéique non testé</translation>
    </message>
    <message>
        <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
        <translation>le trou sténopéique donne deux lignes ou plus de mieux que la prescription finale : refaire la réfraction</translation>
    </message>
    <message>
        <source>objective reading and final prescription are %1 D apart in mean sphere</source>
        <translation>la mesure objective et la prescription finale diffèrent de %1 D en sphère moyenne</translation>
    </message>
    <message>
        <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
        <translation>la prescription finale répète la mesure objective pour les six nombres : a-t-elle été affinée ?</translation>
    </message>
    <message>
        <source>under 16: the prescriber&apos;s name stays with the pair, and the guardian is told</source>
        <translation>moins de 16 ans : le nom du prescripteur reste avec la paire, et le tuteur est informé</translation>
    </message>
    <message>
        <source>age not recorded: the strictest limits that could apply are used</source>
        <translation>âge non noté : les limites les plus strictes possibles sont utilisées</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
        <translation>un seul œil voyant : verres résistants aux chocs et protection conseillés</translation>
    </message>
    <message>
        <source>an objective reading only: a subjective refraction should follow</source>
        <translation>mesure objective seulement : une réfraction subjective devrait suivre</translation>
    </message>
    <message>
        <source>the prescription is %1 months old</source>
        <translation>la prescription date de %1 mois</translation>
    </message>
    <message>
        <source>symptoms recorded: %1</source>
        <translation>symptômes notés : %1</translation>
    </message>
    <message>
        <source>PD not taken</source>
        <translation>EP non mesuré</translation>
    </message>
    <message>
        <source>near PD computed from the distance PD, not measured</source>
        <translation>EP de près calculé à partir de l’EP de loin, non mesuré</translation>
    </message>
    <message>
        <source>an eye with a lens implant: additions differ between the eyes</source>
        <translation>un œil avec implant : les additions diffèrent entre les yeux</translation>
    </message>
    <message>
        <source>above 4.00 D the vertex distance matters: record it</source>
        <translation>au-delà de 4.00 D, la distance verre-œil compte : la noter</translation>
    </message>
    <message>
        <source>the PD of each eye</source>
        <translation>l’EP de chaque œil</translation>
    </message>
    <message>
        <source>the heights in the chosen frame</source>
        <translation>les hauteurs dans la monture choisie</translation>
    </message>
    <message>
        <source>the vertex distance of the refraction</source>
        <translation>la distance verre-œil de la réfraction</translation>
    </message>
    <message>
        <source>the frame</source>
        <translation>la monture</translation>
    </message>
    <message>
        <source>the prescriber&apos;s name, for a child</source>
        <translation>le nom du prescripteur, pour un enfant</translation>
    </message>
    <message>
        <source>single vision for %1 mm: whole power, nothing to be added</source>
        <translation>unifocal pour %1 mm : puissance totale, rien à ajouter</translation>
    </message>
    <message>
        <source>centration computed from the distance PD, not measured</source>
        <translation>centrage calculé à partir de l’EP de loin, non mesuré</translation>
    </message>
    <message>
        <source>each eye&apos;s PD is half of the binocular one</source>
        <translation>l’EP de chaque œil est la moitié du binoculaire</translation>
    </message>
    <message>
        <source>balance lens: as its fellow, for looks and weight</source>
        <translation>verre d’équilibre : comme l’autre, pour l’aspect et le poids</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses are advised</source>
        <translation>un seul œil voyant : verres résistants aux chocs conseillés</translation>
    </message>
    <message>
        <source>for a child: impact-resistant lenses are advised</source>
        <translation>pour un enfant : verres résistants aux chocs conseillés</translation>
    </message>
    <message>
        <source>prism as prescribed, each eye its own</source>
        <translation>prisme comme prescrit, à chaque œil le sien</translation>
    </message>
    <message>
        <source>refracted at a vertex distance of %1 mm</source>
        <translation>réfraction faite à une distance verre-œil de %1 mm</translation>
    </message>
    <message>
        <source>from an objective reading only</source>
        <translation>d’une mesure objective seulement</translation>
    </message>
    <message>
        <source>the digits %1 do not go together: the last would be %2, not %3; scan again, or type what stands below the bars</source>
        <translation>les chiffres %1 ne vont pas ensemble : le dernier serait %2, pas %3 ; scanner de nouveau, ou saisir ce qui figure sous les barres</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a code; write its thirteen digits (twelve take a 0 before them), or leave the code out</source>
        <translation>&quot;%1&quot; n’est pas un code ; écrire ses treize chiffres (douze prennent un 0 devant), ou omettre le code</translation>
    </message>
    <message>
        <source>there is no line %1 in this camp</source>
        <translation>il n’y a pas d’article %1 dans ce camp</translation>
    </message>
    <message>
        <source>near glasses need an addition, or a near power found by trial</source>
        <translation>des lunettes de près demandent une addition, ou une puissance de près trouvée à l’essai</translation>
    </message>
    <message>
        <source>this purpose needs an addition, or a near power found by trial</source>
        <translation>cet usage demande une addition, ou une puissance de près trouvée à l’essai</translation>
    </message>
    <message>
        <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
        <translation>une réfraction subjective : on ne donne jamais de lunettes à un enfant sur une mesure objective seule</translation>
    </message>
    <message>
        <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
        <translation>une addition avant 35 ans doit être confirmée : acuité de près avec elle, ou puissance de près à l’essai</translation>
    </message>
    <message>
        <source>small error and 6/9 or better without glasses</source>
        <translation>faible erreur et 6/9 ou mieux sans lunettes</translation>
    </message>
    <message>
        <source>glasses gain the better eye less than two lines</source>
        <translation>les lunettes font gagner moins de deux lignes au meilleur œil</translation>
    </message>
    <message>
        <source>reads without spectacles</source>
        <translation>lit sans lunettes</translation>
    </message>
    <message>
        <source>reads N6 without spectacles</source>
        <translation>lit N6 sans lunettes</translation>
    </message>
    <message>
        <source>the own pair still fits: a spare only</source>
        <translation>la propre paire convient encore : seulement une paire de secours</translation>
    </message>
    <message>
        <source>the PD: measure it</source>
        <translation>l’EP : le mesurer</translation>
    </message>
    <message>
        <source>the vertex distance of this prescription: measure it</source>
        <translation>la distance verre-œil de cette prescription : la mesurer</translation>
    </message>
    <message>
        <source>nothing in the box for this purpose</source>
        <translation>rien dans la boîte pour cet usage</translation>
    </message>
    <message>
        <source>if the prescriber marks the left eye balance, %1 would fit</source>
        <translation>si le prescripteur marque l’œil gauche comme équilibre, %1 conviendrait</translation>
    </message>
    <message>
        <source>if the prescriber marks the right eye balance, %1 would fit</source>
        <translation>si le prescripteur marque l’œil droit comme équilibre, %1 conviendrait</translation>
    </message>
    <message>
        <source>%1 is used: clean it and read its power before it is given</source>
        <translation>%1 est d’occasion : nettoyer et lire la puissance avant de donner</translation>
    </message>
    <message>
        <source>%1 fits</source>
        <translation>%1 convient</translation>
    </message>
    <message>
        <source>try %1 and type the acuity with it</source>
        <translation>essayer %1 et saisir l’acuité obtenue</translation>
    </message>
    <message>
        <source>a rules profile named %1</source>
        <translation>un profil de règles nommé %1</translation>
    </message>
    <message>
        <source>a final prescription for at least one eye</source>
        <translation>une prescription finale pour au moins un œil</translation>
    </message>
    <message>
        <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
        <translation>à partir de 65 ans, un changement de %1 D en une fois est beaucoup : chutes ; demander au prescripteur</translation>
    </message>
    <message>
        <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
        <translation>à %1 D de la propre paire : si c’est venu en quelques mois, la clinique des yeux cherche la cause</translation>
    </message>
    <message>
        <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
        <translation>à partir de 65 ans, un axe oblique tourné de plus de 10 degrés est difficile à supporter ; demander au prescripteur</translation>
    </message>
    <message>
        <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
        <translation>l’addition %1 est à plus de 0.75 D de toutes les tables pour cet âge : a-t-elle été mesurée à %2 mm ?</translation>
    </message>
    <message>
        <source>does not read N8 with the near correction: see where the rest is lost</source>
        <translation>ne lit pas N8 avec la correction de près : chercher où se perd le reste</translation>
    </message>
    <message>
        <source>half the addition is used: no distance was stated for this work</source>
        <translation>la moitié de l’addition est utilisée : aucune distance n’a été indiquée pour ce travail</translation>
    </message>
    <message>
        <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
        <translation>la propre paire est dans les limites pour cet usage : peut-être seulement une paire de secours</translation>
    </message>
    <message>
        <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
        <translation>un enfant hypermétrope sans cycloplégie : la mesure peut cacher environ 3 D de plus ; le prescripteur décide</translation>
    </message>
    <message>
        <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
        <translation>un enfant sans cycloplégie : ces mesures sont environ 0.4 D trop négatives chez les myopes, davantage chez les autres</translation>
    </message>
    <message>
        <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
        <translation>moins de 8 ans et myopie au-delà de 3.00 D : risque d’amblyopie</translation>
    </message>
    <message>
        <source>a child&apos;s eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
        <translation>les yeux d’un enfant diffèrent de 1.00 D ou plus côté plus : risque d’amblyopie</translation>
    </message>
    <message>
        <source>a child&apos;s cylinders differ by 2.00 D or more: at risk of amblyopia</source>
        <translation>les cylindres d’un enfant diffèrent de 2.00 D ou plus : risque d’amblyopie</translation>
    </message>
    <message>
        <source>would need better acuity with this very pair</source>
        <translation>demanderait une meilleure acuité avec cette paire précise</translation>
    </message>
    <message>
        <source>would do once the vertex distance is recorded</source>
        <translation>conviendrait une fois la distance verre-œil notée</translation>
    </message>
    <message>
        <source>would do if the PD, once measured, is near %1 mm</source>
        <translation>conviendrait si l’EP, une fois mesuré, est proche de %1 mm</translation>
    </message>
    <message>
        <source>would do if the prescriber allows prism by decentration</source>
        <translation>conviendrait si le prescripteur admet un prisme par décentrement</translation>
    </message>
    <message>
        <source>would do with centres %1 mm apart</source>
        <translation>conviendrait avec des centres à %1 mm l’un de l’autre</translation>
    </message>
    <message>
        <source>would do with both centres at the same height</source>
        <translation>conviendrait avec les deux centres à la même hauteur</translation>
    </message>
    <message>
        <source>would do with %1 in both lenses instead of %2</source>
        <translation>conviendrait avec %1 dans les deux verres au lieu de %2</translation>
    </message>
    <message>
        <source>would do with %1 D in both lenses</source>
        <translation>conviendrait avec %1 D dans les deux verres</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the right lens</source>
        <translation>conviendrait avec la sphère %1 dans le verre droit</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the left lens</source>
        <translation>conviendrait avec la sphère %1 dans le verre gauche</translation>
    </message>
    <message>
        <source>would do with addition %1</source>
        <translation>conviendrait avec l’addition %1</translation>
    </message>
    <message>
        <source>would do with a lens of its own for each eye: right %1, left %2</source>
        <translation>conviendrait avec un verre propre à chaque œil : droit %1, gauche %2</translation>
    </message>
    <message>
        <source>would do with lenses made to the prescription, cylinder included</source>
        <translation>conviendrait avec des verres faits selon la prescription, cylindre compris</translation>
    </message>
    <message>
        <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
        <translation>« %1 » ne fait pas partie d’une acuité ; écrire 6/9, 0.67 decimal ou logMAR 0.2</translation>
    </message>
    <message>
        <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
        <translation>« %1 » n’est pas une acuité ; écrire 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL ou NPL</translation>
    </message>
    <message>
        <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
        <translation>« %1 » serait logMAR %2 ; l’acuité est entre logMAR -0.5 et 3 : vérifier</translation>
    </message>
    <message>
        <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
        <translation>aucune échelle ne se lit à %1 ; écrire d’abord la distance du test, comme 6/9 ou 20/30</translation>
    </message>
    <message>
        <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
        <translation>« %1 » ne dit pas son échelle ; écrire « %1 decimal » ou « logMAR %1 »</translation>
    </message>
    <message>
        <source>no acuity is written; write 6/9 or leave it out</source>
        <translation>aucune acuité n’est écrite ; écrire 6/9 ou l’omettre</translation>
    </message>
    <message>
        <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
        <translation>« %1 » n’est pas une acuité de près ; écrire N8, M 1.0 ou 1.0M, puis « at 40 cm »</translation>
    </message>
    <message>
        <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
        <translation>la distance dans « %1 » n’est pas lue ; l’écrire « at 40 cm », de 5 à 200 cm</translation>
    </message>
    <message>
        <source>log10(1 + b²): low blur of any kind; no axis and no pupil in it</source>
        <translation>log10(1 + b²) : faible flou de toute sorte ; ni axe ni pupille</translation>
    </message>
    <message>
        <source>0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place</source>
        <translation>0.017 C² + 0.125 C : cylindre restant C chez les presbytes, sphère moyenne en place</translation>
    </message>
    <message>
        <source>0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far</source>
        <translation>0.18 à 0.22 logMAR par dioptrie de cylindre, sphère moyenne en place, de loin</translation>
    </message>
    <message>
        <source>one line lost for every 0.25 to 0.5 D of blur</source>
        <translation>une ligne perdue pour 0.25 à 0.5 D de flou</translation>
    </message>
    <message>
        <source>%1 lies outside the powers the set %2 was made for</source>
        <translation>%1 est hors des puissances pour lesquelles le jeu %2 a été fait</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2</source>
        <translation>écart du méridien de sphère de %1, limite %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2: %3 too much</source>
        <translation>écart du méridien de sphère de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>sphere meridian off by %1: shown only, the set has no limit for it</source>
        <translation>écart du méridien de sphère de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2</source>
        <translation>écart du méridien principal le plus positif de %1, limite %2</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>écart du méridien principal le plus positif de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>écart du méridien principal le plus positif de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2</source>
        <translation>écart du méridien principal le plus négatif de %1, limite %2</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>écart du méridien principal le plus négatif de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>écart du méridien principal le plus négatif de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2</source>
        <translation>écart de cylindre de %1, limite %2</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2: %3 too much</source>
        <translation>écart de cylindre de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>cylinder off by %1: shown only, the set has no limit for it</source>
        <translation>écart de cylindre de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2</source>
        <translation>écart d’axe de %1, limite %2</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2: %3 too much</source>
        <translation>écart d’axe de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>axis off by %1: shown only, the set has no limit for it</source>
        <translation>écart d’axe de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2</source>
        <translation>écart d’addition de %1, limite %2</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2: %3 too much</source>
        <translation>écart d’addition de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>addition off by %1: shown only, the set has no limit for it</source>
        <translation>écart d’addition de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2</source>
        <translation>écart de prisme horizontal de %1, limite %2</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2: %3 too much</source>
        <translation>écart de prisme horizontal de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>horizontal prism off by %1: shown only, the set has no limit for it</source>
        <translation>écart de prisme horizontal de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2</source>
        <translation>écart de prisme vertical de %1, limite %2</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2: %3 too much</source>
        <translation>écart de prisme vertical de %1, limite %2 : %3 de trop</translation>
    </message>
    <message>
        <source>vertical prism off by %1: shown only, the set has no limit for it</source>
        <translation>écart de prisme vertical de %1 : affiché seulement, le jeu n’a pas de limite pour cela</translation>
    </message>
    <message>
        <source>there is no tolerance set “%1”; there are: %2</source>
        <translation>il n’y a pas de jeu de tolérances « %1 » ; il y a : %2</translation>
    </message>
    <message>
        <source>the tolerance set “%1” is not enabled: %2</source>
        <translation>le jeu de tolérances « %1 » n’est pas activé : %2</translation>
    </message>
    <message>
        <source>distance %1 and near %2 differ in cylinder; no addition joins them</source>
        <translation>loin %1 et près %2 diffèrent en cylindre ; aucune addition ne les relie</translation>
    </message>
    <message>
        <source>near %2 has less plus than distance %1; were they exchanged?</source>
        <translation>près %2 a moins de plus que loin %1 ; ont-ils été échangés ?</translation>
    </message>
    <message>
        <source>this text says it is the left eye, and stands for the right</source>
        <translation>ce texte dit être l’œil gauche, et figure pour le droit</translation>
    </message>
    <message>
        <source>this text says it is the right eye, and stands for the left</source>
        <translation>ce texte dit être l’œil droit, et figure pour le gauche</translation>
    </message>
    <message>
        <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
        <translation>rien n’est écrit pour cet œil ; écrire sa puissance, ou balance, artificial, blind ou not measured</translation>
    </message>
    <message>
        <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
        <translation>aucune puissance n’est écrite ; écrire +2.00, -0.75 ou 0.00</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2 or %3</source>
        <translation>%1 n’a pas de point décimal ; écrire %2 ou %3</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2</source>
        <translation>%1 n’a pas de point décimal ; écrire %2</translation>
    </message>
    <message>
        <source>%1 is beyond %2 D; check the figure and write it again</source>
        <translation>%1 dépasse %2 D ; vérifier le chiffre et l’écrire de nouveau</translation>
    </message>
    <message>
        <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
        <translation>aucune puissance n’est lue à « %1 » ; écrire +2.00, -0.75 ou 0.00</translation>
    </message>
    <message>
        <source>cylinder %1 has no sign; write +%1 or -%1</source>
        <translation>le cylindre %1 n’a pas de signe ; écrire +%1 ou -%1</translation>
    </message>
    <message>
        <source>%1 has no sign; write +%1 or -%1</source>
        <translation>%1 n’a pas de signe ; écrire +%1 ou -%1</translation>
    </message>
    <message>
        <source>addition -%1 is negative; an addition is plus: check it</source>
        <translation>l’addition -%1 est négative ; une addition est positive : vérifier</translation>
    </message>
    <message>
        <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
        <translation>l’axe %1 est sans cylindre ; écrire sphère, cylindre et axe, comme -1.00 -0.50 x %1</translation>
    </message>
    <message>
        <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
        <translation>l’axe %1 est hors de 1..180 degrés ; le même méridien serait %2 : vérifier et écrire de nouveau</translation>
    </message>
    <message>
        <source>cylinder %1 has no axis; write it with its axis, as %1 x 90</source>
        <translation>le cylindre %1 n’a pas d’axe ; l’écrire avec son axe, comme %1 x 90</translation>
    </message>
    <message>
        <source>“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90</source>
        <translation>« %1 » ne fait pas partie d’une prescription lisible ; écrire comme -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>two prisms lie in one direction; write their sum once, as 1.5 base in</source>
        <translation>deux prismes ont la même direction ; écrire leur somme une fois, comme 1.5 base in</translation>
    </message>
    <message>
        <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
        <translation>la base du prisme n’est pas lue ; écrire base in, out, up ou down, ou base 0..360</translation>
    </message>
    <message>
        <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
        <translation>le prisme %1 n’est pas entre 0 et %2 ; écrire sa valeur et sa base, comme 2 base in</translation>
    </message>
    <message>
        <source>too few (%1 read): three or more tell how steady they are</source>
        <translation>trop peu (%1 lues) : trois ou plus disent si elles sont stables</translation>
    </message>
    <message>
        <source>scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>dispersées : les mesures sont à %1 D de leur moyenne, la limite est %2 D ; %3 sur %4 écartées</translation>
    </message>
    <message>
        <source>steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>stables : les mesures sont à %1 D de leur moyenne, la limite est %2 D ; %3 sur %4 écartées</translation>
    </message>
    <message>
        <source>take readings until there are three or more; until then a published scatter is used</source>
        <translation>continuer jusqu’à trois mesures ou plus ; d’ici là une dispersion publiée est utilisée</translation>
    </message>
    <message>
        <source>scattered again: look at the eye&apos;s health (cornea, lens, tears, fixation) before prescribing</source>
        <translation>encore dispersées : examiner la santé de l’œil (cornée, cristallin, larmes, fixation) avant de prescrire</translation>
    </message>
    <message>
        <source>repeat the readings, with blinks and steady fixation</source>
        <translation>répéter les mesures, avec clignements et fixation stable</translation>
    </message>
    <message>
        <source>use the mean of the readings kept; the ones left out are shown</source>
        <translation>utiliser la moyenne des mesures gardées ; celles écartées sont affichées</translation>
    </message>
    <message>
        <source>use the mean as the start of the subjective refraction</source>
        <translation>utiliser la moyenne comme départ de la réfraction subjective</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere (limit 1) and %2 D in astigmatism (limit 0.5): confirm the final</source>
        <translation>objective et finale diffèrent de %1 D en sphère moyenne (limite 1) et de %2 D en astigmatisme (limite 0.5) : confirmer la finale</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere; up to 0.5 is usual</source>
        <translation>objective et finale diffèrent de %1 D en sphère moyenne ; jusqu’à 0.5 est habituel</translation>
    </message>
    <message>
        <source>objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism</source>
        <translation>objective et finale concordent : écart de %1 D en sphère moyenne, %2 D en astigmatisme</translation>
    </message>
    <message>
        <source>a movement of an entry “%1” names no line</source>
        <translation>un mouvement d’une inscription « %1 » ne nomme aucun article</translation>
    </message>
    <message>
        <source>an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 quarantined</source>
        <translation>une inscription « %1 » ne peut pas changer l’article %2 de %3 en stock, %4 réservés, %5 en quarantaine</translation>
    </message>
    <message>
        <source>an entry “%1” moves at least one line</source>
        <translation>une inscription « %1 » change au moins un article</translation>
    </message>
    <message>
        <source>an entry “%1” names a person by the camp code</source>
        <translation>une inscription « %1 » nomme une personne par le code de camp</translation>
    </message>
    <message>
        <source>“entered-in-error” names the entry it takes back, other kinds none</source>
        <translation>« entered-in-error » nomme l’inscription qu’elle annule, les autres n’en nomment aucune</translation>
    </message>
    <message>
        <source>an entry “%1” needs “%2”</source>
        <translation>une inscription « %1 » demande « %2 »</translation>
    </message>
    <message>
        <source>entry %1 is the first that is not as it was written: %2; the audit stops before it</source>
        <translation>l’inscription %1 est la première qui n’est plus comme elle a été écrite : %2 ; l’audit s’arrête avant elle</translation>
    </message>
    <message>
        <source>%1 stands in the waiting list already; the row is left out</source>
        <translation>%1 figure déjà dans la file d’attente ; la ligne est omise</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM, %1, cannot be started: %2</source>
        <translation>le programme qui lit et écrit le DICOM, %1, ne peut pas démarrer : %2</translation>
    </message>
    <message>
        <source>%1 is there already; name a new file, or move that one away</source>
        <translation>%1 existe déjà ; nommer un nouveau fichier, ou déplacer celui-là</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to write</source>
        <translation>la prescription de %1 n’est pas complète ; il n’y a pas de commande à écrire</translation>
    </message>
    <message>
        <source>%1 is this site; name the other one</source>
        <translation>%1 est ce site ; nommer l’autre</translation>
    </message>
    <message>
        <source>entry %1 is not a transfer in the air; `quarterstep transfer` lists them</source>
        <translation>l’inscription %1 n’est pas un transfert en route ; `quarterstep transfer` les liste</translation>
    </message>
    <message>
        <source>%1 has several purposes, or none that is complete; take them up in the list and choose the one that was ordered</source>
        <translation>%1 a plusieurs usages, ou aucun qui soit complet ; les reprendre dans la liste et choisir celui qui a été commandé</translation>
    </message>
    <message>
        <source>%1 is not in the list; load the table in which the prescription stands</source>
        <translation>%1 n’est pas dans la liste ; charger le tableau où figure la prescription</translation>
    </message>
    <message>
        <source>the focimeter reads %1 right, the pair has %2</source>
        <translation>le frontofocomètre lit %1 à droite, la paire a %2</translation>
    </message>
    <message>
        <source>the focimeter reads %1 left, the pair has %2</source>
        <translation>le frontofocomètre lit %1 à gauche, la paire a %2</translation>
    </message>
    <message>
        <source>this is not the PIN of the %1; nothing was written</source>
        <translation>ce n’est pas le PIN de ce rôle : %1 ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM gave no answer that is understood</source>
        <translation>le programme qui lit et écrit DICOM n&apos;a donné aucune réponse compréhensible</translation>
    </message>
    <message>
        <source>rules.yaml is not as it was when this camp was opened; open it again</source>
        <translation>rules.yaml n&apos;est plus comme à l&apos;ouverture de ce camp ; ouvrez-le à nouveau</translation>
    </message>
    <message>
        <source>this is no DICOM file: the letters DICM do not stand at byte 128</source>
        <translation>ce n’est pas un fichier DICOM : les lettres DICM ne sont pas à l’octet 128</translation>
    </message>
    <message>
        <source>this is too large for a refraction: %1 bytes, %2 items</source>
        <translation>c’est trop grand pour une réfraction : %1 octets, %2 éléments</translation>
    </message>
    <message>
        <source>the DICOM file is broken, or neither explicit nor implicit little endian: a length points out of it, or a part is not understood</source>
        <translation>le fichier DICOM est abîmé, ou n’est ni explicit ni implicit little endian : une longueur pointe hors du fichier, ou une partie n’est pas comprise</translation>
    </message>
    <message>
        <source>the DICOM file is broken: %1</source>
        <translation>le fichier DICOM est abîmé : %1</translation>
    </message>
    <message>
        <source>the object &quot;%1&quot; is none of lensometry, autorefraction, subjective refraction or visual acuity</source>
        <translation>l’objet &quot;%1&quot; n’est ni une frontofocométrie, ni une autoréfraction, ni une réfraction subjective, ni une acuité visuelle</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>non utilisé : %1</translation>
    </message>
    <message>
        <source>%1 of the %2 eye cannot be used as it stands</source>
        <translation>%1 de l’œil %2 n’est pas utilisable en l’état</translation>
    </message>
    <message>
        <source>there is a second refraction of %1; give only the one that counts</source>
        <translation>il y a une seconde réfraction de %1 ; ne donner que celle qui compte</translation>
    </message>
    <message>
        <source>nothing is stated for the %1 eye; ask for it: a power, or that it is a balance lens, artificial, blind or not measured</source>
        <translation>rien n’est indiqué pour l’œil %1 ; le demander : une puissance, ou s’il s’agit d’un verre d’équilibre, d’un œil artificiel, aveugle ou non mesuré</translation>
    </message>
    <message>
        <source>there is a second reading of the %1 eye of %2; give only one</source>
        <translation>il y a une seconde mesure de l’œil %1 de %2 ; n’en donner qu’une</translation>
    </message>
    <message>
        <source>an acuity is kept without being used: &quot;%1&quot; at %2 is none that the table has</source>
        <translation>une acuité est gardée sans être utilisée : &quot;%1&quot; à %2 n’est pas de celles du tableau</translation>
    </message>
    <message>
        <source>there is no subjective refraction of %1; what is here is no prescription</source>
        <translation>il n’y a pas de réfraction subjective de %1 ; ce qui est ici n’est pas une prescription</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a patient id: at most 64 characters, no backslash</source>
        <translation>&quot;%1&quot; ne peut pas être un identifiant de patient : au plus 64 caractères, pas de barre oblique inverse</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot; stands in line %2 already; give each row a code of its own</source>
        <translation>la personne &quot;%1&quot; figure déjà à la ligne %2 ; donner à chaque ligne son propre code</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write it as -1.25</source>
        <translation>&quot;%1&quot; n’est pas un nombre ; l’écrire comme -1.25</translation>
    </message>
    <message>
        <source>%1 is outside -%2 to %2</source>
        <translation>%1 est hors de -%2 à %2</translation>
    </message>
    <message>
        <source>%1 is finer than a thousandth; round it</source>
        <translation>%1 est plus fin qu’un millième ; l’arrondir</translation>
    </message>
    <message>
        <source>%1 of %2 stays here: it names people or is in their own words</source>
        <translation>%1 de %2 reste ici : cela nomme des personnes ou reprend leurs propres mots</translation>
    </message>
    <message>
        <source>the eye is &quot;%1&quot;; right or left is wanted</source>
        <translation>l’œil est &quot;%1&quot; ; right ou left est attendu</translation>
    </message>
    <message>
        <source>there is a second lens for the %1 eye; a resource for each purpose is understood, with one lens an eye</source>
        <translation>il y a un second verre pour l’œil %1 ; une ressource par usage est comprise, avec un verre par œil</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; a number without quotes is wanted, as -1.25</source>
        <translation>%1 est &quot;%2&quot; ; un nombre sans guillemets est attendu, comme -1.25</translation>
    </message>
    <message>
        <source>the sphere of the %1 eye is not stated; that is not zero: write 0.00 for plano, or balance, artificial, blind or not measured as the note</source>
        <translation>la sphère de l’œil %1 n’est pas indiquée ; ce n’est pas zéro : écrire 0.00 pour plan, ou balance, artificial, blind ou not measured comme note</translation>
    </message>
    <message>
        <source>axis %1 is not a whole number of degrees</source>
        <translation>l’axe %1 n’est pas un nombre entier de degrés</translation>
    </message>
    <message>
        <source>prism is a list of amounts and bases</source>
        <translation>le prisme est une liste de valeurs et de bases</translation>
    </message>
    <message>
        <source>the prism %1 is below zero; turn its base instead</source>
        <translation>le prisme %1 est inférieur à zéro ; tourner plutôt sa base</translation>
    </message>
    <message>
        <source>the base is &quot;%1&quot;; up, down, in or out is wanted</source>
        <translation>la base est &quot;%1&quot; ; up, down, in ou out est attendu</translation>
    </message>
    <message>
        <source>&quot;%1&quot; inside a prism is not used</source>
        <translation>&quot;%1&quot; dans un prisme n’est pas utilisé</translation>
    </message>
    <message>
        <source>the product is not coded as lens or contact; it is read as a spectacle lens</source>
        <translation>le produit n’est codé ni lens ni contact ; il est lu comme un verre de lunettes</translation>
    </message>
    <message>
        <source>axis %1 of %2 leaves as %3: FHIR takes whole degrees</source>
        <translation>l’axe %1 de %2 part comme %3 : FHIR prend des degrés entiers</translation>
    </message>
    <message>
        <source>%1 may change what the prescription means, and is not understood; ask for it without</source>
        <translation>%1 peut changer le sens de la prescription et n’est pas compris ; la demander sans cela</translation>
    </message>
    <message>
        <source>the status is &quot;%1&quot;; active is wanted</source>
        <translation>le statut est &quot;%1&quot; ; active est attendu</translation>
    </message>
    <message>
        <source>meta.%1 is left out: it belongs to the sender&apos;s copy</source>
        <translation>meta.%1 est omis : il appartient à la copie de l’expéditeur</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole date; how old the prescription is stays open</source>
        <translation>&quot;%1&quot; n’est pas une date complète ; l’âge de la prescription reste inconnu</translation>
    </message>
    <message>
        <source>the narrative is left out: it repeats what is coded</source>
        <translation>le texte libre est omis : il répète ce qui est codé</translation>
    </message>
    <message>
        <source>the resource %1 is left out: only VisionPrescription and its measures are read</source>
        <translation>la ressource %1 est omise : seules VisionPrescription et ses mesures sont lues</translation>
    </message>
    <message>
        <source>of an observation left out: %1</source>
        <translation>omis d’une observation : %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: it was entered in error</source>
        <translation>l’observation %1 de %2 est omise : elle a été inscrite par erreur</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: its code is not known here</source>
        <translation>l’observation %1 de %2 est omise : son code n’est pas connu ici</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: something in it may change its meaning</source>
        <translation>l’observation %1 de %2 est omise : quelque chose peut y changer son sens</translation>
    </message>
    <message>
        <source>a measure without a code is left out: &quot;%1&quot;</source>
        <translation>une mesure sans code est omise : &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this is XML; ask for the same in JSON (application/fhir+json)</source>
        <translation>c’est du XML ; demander la même chose en JSON (application/fhir+json)</translation>
    </message>
    <message>
        <source>this is no resource of FHIR: resourceType is missing</source>
        <translation>ce n’est pas une ressource de FHIR : resourceType manque</translation>
    </message>
    <message>
        <source>of the Bundle left out: %1; it belongs to the sender&apos;s envelope</source>
        <translation>omis du Bundle : %1 ; cela appartient à l’enveloppe de l’expéditeur</translation>
    </message>
    <message>
        <source>there is no prescription for spectacles to take in here</source>
        <translation>il n’y a ici aucune prescription de lunettes à reprendre</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: it is for contact lenses, whose powers and curves are no spectacles&apos;</source>
        <translation>la prescription de %1 est omise : elle est pour des lentilles de contact, dont les puissances et les courbures ne sont pas celles de lunettes</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: its status is %2</source>
        <translation>la prescription de %1 est omise : son statut est %2</translation>
    </message>
    <message>
        <source>kept without being used: %1</source>
        <translation>gardé sans être utilisé : %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: no prescription of theirs is taken in</source>
        <translation>l’observation %1 de %2 est omise : aucune prescription de cette personne n’est reprise</translation>
    </message>
    <message>
        <source>the column fhir.%1 of %2 is left out: its cell is no JSON</source>
        <translation>la colonne fhir.%1 de %2 est omise : sa cellule n’est pas du JSON</translation>
    </message>
    <message>
        <source>each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>chaque ligne est un objet, comme {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>nothing stands in it; each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>il n’y a rien dedans ; chaque ligne est un objet, comme {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>the value has ended here, “%1” is too much</source>
        <translation>la valeur est finie ici, « %1 » est de trop</translation>
    </message>
    <message>
        <source>more than %1 levels lie inside one another</source>
        <translation>plus de %1 niveaux sont imbriqués</translation>
    </message>
    <message>
        <source>a comma or } belongs here</source>
        <translation>une virgule ou } est attendue ici</translation>
    </message>
    <message>
        <source>a comma or ] belongs here</source>
        <translation>une virgule ou ] est attendue ici</translation>
    </message>
    <message>
        <source>a name in quotes belongs here</source>
        <translation>un nom entre guillemets est attendu ici</translation>
    </message>
    <message>
        <source>a colon belongs here</source>
        <translation>un deux-points est attendu ici</translation>
    </message>
    <message>
        <source>“%1” stands twice in one object; keep one</source>
        <translation>« %1 » figure deux fois dans un même objet ; n’en garder qu’un</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>ce guillemet n’est jamais fermé</translation>
    </message>
    <message>
        <source>a line end or tab stands inside a text; write \n or \t</source>
        <translation>une fin de ligne ou une tabulation est dans un texte ; écrire \n ou \t</translation>
    </message>
    <message>
        <source>“\%1” is no escape of JSON</source>
        <translation>« \%1 » n’est pas un échappement de JSON</translation>
    </message>
    <message>
        <source>half of a character stands here alone</source>
        <translation>une moitié de caractère est seule ici</translation>
    </message>
    <message>
        <source>four hexadecimal digits belong here</source>
        <translation>quatre chiffres hexadécimaux sont attendus ici</translation>
    </message>
    <message>
        <source>this is no number of JSON; write it as -1.25 or 0.5</source>
        <translation>ce n’est pas un nombre JSON ; l’écrire comme -1.25 ou 0.5</translation>
    </message>
    <message>
        <source>the text ends where a value belongs</source>
        <translation>le texte finit là où une valeur est attendue</translation>
    </message>
    <message>
        <source>“%1” is no value of JSON</source>
        <translation>« %1 » n’est pas une valeur JSON</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the other decimal mark than the map says</source>
        <translation>&quot;%1&quot; n’a pas le signe décimal qu’indique la correspondance</translation>
    </message>
    <message>
        <source>the map names a column &quot;%1&quot; that the table does not have</source>
        <translation>la correspondance nomme une colonne &quot;%1&quot; que le tableau n’a pas</translation>
    </message>
    <message>
        <source>no column is understood as %1; a map can say which one is, as in: %2</source>
        <translation>aucune colonne n’est comprise comme %1 ; une correspondance peut dire laquelle l’est, comme : %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; stands in the table twice; delete or rename one</source>
        <translation>la colonne &quot;%1&quot; figure deux fois dans le tableau ; en supprimer ou en renommer une</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is kept but not used</source>
        <translation>la colonne &quot;%1&quot; n’est pas connue ; elle est gardée mais pas utilisée</translation>
    </message>
    <message>
        <source>the table is empty; its first line names the columns: %1</source>
        <translation>le tableau est vide ; sa première ligne nomme les colonnes : %1</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds the separator in quotes</source>
        <translation>la ligne a %1 cellules, l’en-tête %2 ; mettre entre guillemets une cellule qui contient le séparateur</translation>
    </message>
    <message>
        <source>%1 spheres have no sign; if this table leaves the plus out, a map says so: %2</source>
        <translation>%1 sphères n’ont pas de signe ; si ce tableau omet le plus, une correspondance le dit : %2</translation>
    </message>
    <message>
        <source>%1 cylinders have no sign; ask whoever made the table, then a map says so: %2</source>
        <translation>%1 cylindres n’ont pas de signe ; demander à qui a fait le tableau, puis une correspondance le dit : %2</translation>
    </message>
    <message>
        <source>a record ends with CR LF; this one does not</source>
        <translation>un enregistrement se termine par CR LF ; celui-ci non</translation>
    </message>
    <message>
        <source>a character here is not plain ASCII</source>
        <translation>un caractère ici n’est pas de l’ASCII simple</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no record; write LABEL=value</source>
        <translation>&quot;%1&quot; n’est pas un enregistrement ; écrire LABEL=value</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no label: capitals and digits, at most 8</source>
        <translation>&quot;%1&quot; n’est pas une étiquette : majuscules et chiffres, au plus 8</translation>
    </message>
    <message>
        <source>the record %1 is passed over</source>
        <translation>l’enregistrement %1 est ignoré</translation>
    </message>
    <message>
        <source>the record %1 stands twice</source>
        <translation>l’enregistrement %1 figure deux fois</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not what belongs here</source>
        <translation>&quot;%1&quot; n’est pas ce qui est attendu ici</translation>
    </message>
    <message>
        <source>DO is &quot;%1&quot;; a pair, B, is wanted</source>
        <translation>DO est &quot;%1&quot; ; une paire, B, est attendue</translation>
    </message>
    <message>
        <source>the record SPH is missing</source>
        <translation>l’enregistrement SPH manque</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be written in plain letters; it leaves as &quot;%2&quot;</source>
        <translation>&quot;%1&quot; ne peut pas s’écrire en lettres simples ; cela part comme &quot;%2&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot stand in an order: plain letters and digits, at most 80, without ; = , ?</source>
        <translation>&quot;%1&quot; ne peut pas figurer dans une commande : lettres et chiffres simples, au plus 80, sans ; = , ?</translation>
    </message>
    <message>
        <source>the eyes are written in two cylinder forms; both leave with minus cylinders</source>
        <translation>les yeux sont écrits sous deux formes de cylindre ; les deux partent avec des cylindres négatifs</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no line of a map; write heading = column</source>
        <translation>&quot;%1&quot; n’est pas une ligne de correspondance ; écrire titre = colonne</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing a column can be: write right sphere (cylinder, axis, prism, base; left), a column of the prescription table, or - to leave it</source>
        <translation>&quot;%1&quot; n’est rien qu’une colonne puisse être : écrire right sphere (cylinder, axis, prism, base; left), une colonne du tableau des prescriptions, ou - pour la laisser</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no separator; write , or ; or | or tab</source>
        <translation>&quot;%1&quot; n’est pas un séparateur ; écrire , ou ; ou | ou tab</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not plus or minus</source>
        <translation>&quot;%1&quot; n’est ni plus ni minus</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not point or comma</source>
        <translation>&quot;%1&quot; n’est ni point ni comma</translation>
    </message>
    <message>
        <source>there are entries in this ledger already; nothing was written; take them over with `quarterstep import`, or name an empty ledger</source>
        <translation>il y a déjà des inscriptions dans ce registre ; rien n’a été écrit ; les reprendre avec `quarterstep import`, ou nommer un registre vide</translation>
    </message>
    <message>
        <source>this ledger was opened for reading only</source>
        <translation>ce registre a été ouvert en lecture seule</translation>
    </message>
    <message>
        <source>this ledger was last written at another place; if it moved here for good, say so first, and do not use the other copy any more</source>
        <translation>ce registre a été écrit en dernier à un autre endroit ; s’il a été déplacé ici pour de bon, le dire d’abord, et ne plus utiliser l’autre copie</translation>
    </message>
    <message>
        <source>something was posted meanwhile; nothing was written; look again and repeat</source>
        <translation>quelque chose a été inscrit entre-temps ; rien n’a été écrit ; regarder de nouveau et recommencer</translation>
    </message>
    <message>
        <source>the ledger is empty; nothing happened yet</source>
        <translation>le registre est vide ; rien ne s’est encore passé</translation>
    </message>
    <message>
        <source>the person is forgotten, but another program reads the ledger and old text stays in its journal; close it there and repeat</source>
        <translation>la personne est oubliée, mais un autre programme lit le registre et l’ancien texte reste dans son journal ; y fermer le registre et recommencer</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; check the chain and put back the latest copy of the camp folder</source>
        <translation>une inscription de ce registre n’est pas lisible ; vérifier la chaîne et remettre la dernière copie du dossier de camp</translation>
    </message>
    <message>
        <source>the disk failed while the entry was written (%1); close the camp, open it again and look whether the entry is there before you repeat it</source>
        <translation>le disque a failli pendant l’écriture de l’inscription (%1) ; fermer le camp, le rouvrir et regarder si l’inscription y est avant de la refaire</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost while the entry was written (%1); open the camp again and look whether the entry is there before you repeat it</source>
        <translation>la connexion au registre partagé a été perdue pendant l’écriture de l’inscription (%1) ; rouvrir le camp et regarder si l’inscription y est avant de la refaire</translation>
    </message>
    <message>
        <source>line %1 has %2 left, %3 asked for; nothing was written</source>
        <translation>l’article %1 n’en a plus que %2, %3 demandés ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>line %1 has %2 available, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>l’article %1 a %2 disponibles, %3 réservés et %4 en quarantaine, trop peu pour cela ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>entry %1 was taken back already</source>
        <translation>l’inscription %1 a déjà été annulée</translation>
    </message>
    <message>
        <source>entry %1 takes back another one and cannot be taken back itself; enter what happened anew</source>
        <translation>l’inscription %1 en annule une autre et ne peut pas être annulée elle-même ; inscrire de nouveau ce qui s’est passé</translation>
    </message>
    <message>
        <source>entry %1 is “%2” and stays; a wrong count is put right by counting</source>
        <translation>l’inscription %1 est « %2 » et reste ; un comptage faux se corrige par un comptage</translation>
    </message>
    <message>
        <source>entry %1 of this ledger is not as it was written: %2; nothing was taken over</source>
        <translation>l’inscription %1 de ce registre n’est plus comme elle a été écrite : %2 ; rien n’a été repris</translation>
    </message>
    <message>
        <source>station %1 has two entries number %2, %3 here and %4 there: its folder was copied and both copies went on as the same station; nothing was taken over, both files are as they were; count the stock of one and enter the difference</source>
        <translation>le poste %1 a deux inscriptions numéro %2, %3 ici et %4 là-bas : son dossier a été copié et les deux copies ont continué comme le même poste ; rien n’a été repris, les deux fichiers sont restés tels quels ; compter le stock de l’un et inscrire la différence</translation>
    </message>
    <message>
        <source>entry %1 is in both ledgers with another content; one of them was changed; nothing was taken over</source>
        <translation>l’inscription %1 est dans les deux registres avec un autre contenu ; l’un d’eux a été modifié ; rien n’a été repris</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; nothing was taken over</source>
        <translation>une inscription de ce registre n’est pas lisible ; rien n’a été repris</translation>
    </message>
    <message>
        <source>entries %1 and %2 take back the same entry %3; nothing was taken over</source>
        <translation>les inscriptions %1 et %2 annulent la même inscription %3 ; rien n’a été repris</translation>
    </message>
    <message>
        <source>entry %1 takes back %2, which is in neither ledger; merge the ledger that has it first</source>
        <translation>l’inscription %1 annule %2, qui n’est dans aucun des deux registres ; fusionner d’abord le registre qui l’a</translation>
    </message>
    <message>
        <source>line %1 of %2 would go below zero: entries %3 and %4 took the same pieces; nothing was taken over; count the stock there and enter the difference first</source>
        <translation>l’article %1 de %2 passerait sous zéro : les inscriptions %3 et %4 ont pris les mêmes pièces ; rien n’a été repris ; y compter le stock et inscrire d’abord la différence</translation>
    </message>
    <message>
        <source>entries of this very station came from a copy of its folder; do not use that copy any more</source>
        <translation>des inscriptions de ce poste même viennent d’une copie de son dossier ; ne plus utiliser cette copie</translation>
    </message>
    <message>
        <source>%1 has entries of %2 stations: its folder was copied and both were used; count its stock, since both began with the same pieces</source>
        <translation>%1 a des inscriptions de %2 postes : son dossier a été copié et les deux ont servi ; compter son stock, car les deux ont commencé avec les mêmes pièces</translation>
    </message>
    <message>
        <source>this is a database of another program, not a ledger; name another file in the key ledger of stock.yaml</source>
        <translation>c’est une base de données d’un autre programme, pas un registre ; nommer un autre fichier dans la clé ledger de stock.yaml</translation>
    </message>
    <message>
        <source>the head of this ledger is damaged (form %1); put back the latest copy of the camp folder</source>
        <translation>la tête de ce registre est abîmée (forme %1) ; remettre la dernière copie du dossier de camp</translation>
    </message>
    <message>
        <source>this ledger was made by a newer version (form %1, known here up to %2); update this program</source>
        <translation>ce registre a été fait par une version plus récente (forme %1, connue ici jusqu’à %2) ; mettre ce programme à jour</translation>
    </message>
    <message>
        <source>a rule of this ledger is missing or damaged (%1); put back the latest copy of the camp folder</source>
        <translation>une règle de ce registre manque ou est abîmée (%1) ; remettre la dernière copie du dossier de camp</translation>
    </message>
    <message>
        <source>a ledger file cannot be kept safely on a network share; keep the camp folder on this machine, or share a PostgreSQL ledger between stations</source>
        <translation>un fichier de registre ne peut pas être gardé sûrement sur un partage réseau ; garder le dossier de camp sur cette machine, ou partager un registre PostgreSQL entre postes</translation>
    </message>
    <message>
        <source>there is no ledger in this database yet; the keeper sets it up once with `quarterstep stock --set-up`</source>
        <translation>il n’y a pas encore de registre dans cette base de données ; le gardien le met en place une fois avec `quarterstep stock --set-up`</translation>
    </message>
    <message>
        <source>this database holds something else, not a ledger; name another one in the key ledger of stock.yaml</source>
        <translation>cette base de données contient autre chose, pas un registre ; en nommer une autre dans la clé ledger de stock.yaml</translation>
    </message>
    <message>
        <source>the database refuses to write safely; nothing was opened</source>
        <translation>la base de données refuse d’écrire sûrement ; rien n’a été ouvert</translation>
    </message>
    <message>
        <source>the client library of the server is missing; install %1</source>
        <translation>la bibliothèque cliente du serveur manque ; installer %1</translation>
    </message>
    <message>
        <source>the file was replaced, but the disk does not say that this will last: %1</source>
        <translation>le fichier a été remplacé, mais le disque ne confirme pas que cela tiendra : %1</translation>
    </message>
    <message>
        <source>another program is writing in this folder; wait a moment and repeat</source>
        <translation>un autre programme écrit dans ce dossier ; attendre un instant et recommencer</translation>
    </message>
    <message>
        <source>the folder cannot be locked: %1; check its name and rights</source>
        <translation>le dossier ne peut pas être verrouillé : %1 ; vérifier son nom et ses droits</translation>
    </message>
    <message>
        <source>this is not the address of a shared ledger (%1); write postgresql://LOGIN@HOST:PORT/DATABASE</source>
        <translation>ce n’est pas l’adresse d’un registre partagé (%1) ; écrire postgresql://LOGIN@HOST:PORT/DATABASE</translation>
    </message>
    <message>
        <source>a password stands in the address, and stock.yaml is carried about and copied; write it to ~/.pgpass (read by you alone) and take it out of the address</source>
        <translation>un mot de passe est dans l’adresse, et stock.yaml est transporté et copié ; l’écrire dans ~/.pgpass (lisible par vous seul) et l’ôter de l’adresse</translation>
    </message>
    <message>
        <source>there is a ledger in this database already; nothing was changed</source>
        <translation>il y a déjà un registre dans cette base de données ; rien n’a été changé</translation>
    </message>
    <message>
        <source>this file system cannot keep a ledger safely (no shared memory beside the file); keep the camp folder on another disk</source>
        <translation>ce système de fichiers ne peut pas garder un registre sûrement (pas de mémoire partagée à côté du fichier) ; garder le dossier de camp sur un autre disque</translation>
    </message>
    <message>
        <source>this is not a file; name another one in the key ledger of stock.yaml</source>
        <translation>ce n’est pas un fichier ; en nommer un autre dans la clé ledger de stock.yaml</translation>
    </message>
    <message>
        <source>this ledger was not closed and its folder cannot be written to; copy the whole folder to a place that can, and open it there</source>
        <translation>ce registre n’a pas été fermé et on ne peut pas écrire dans son dossier ; copier tout le dossier à un endroit où on le peut, et l’ouvrir là</translation>
    </message>
    <message>
        <source>the ledger file was moved, removed or replaced while it was open; nothing was written; close the camp and open it again</source>
        <translation>le fichier du registre a été déplacé, supprimé ou remplacé pendant qu’il était ouvert ; rien n’a été écrit ; fermer le camp et le rouvrir</translation>
    </message>
    <message>
        <source>this ledger names no station of its own; put back the latest copy</source>
        <translation>ce registre ne nomme pas son propre poste ; remettre la dernière copie</translation>
    </message>
    <message>
        <source>the ledger cannot be made: %1; check the rights of the folder</source>
        <translation>le registre ne peut pas être créé : %1 ; vérifier les droits du dossier</translation>
    </message>
    <message>
        <source>the ledger cannot be opened for writing here; check the rights of the file and its folder</source>
        <translation>le registre ne peut pas être ouvert ici en écriture ; vérifier les droits du fichier et de son dossier</translation>
    </message>
    <message>
        <source>the disk is full; nothing was written; make room and repeat</source>
        <translation>le disque est plein ; rien n’a été écrit ; faire de la place et recommencer</translation>
    </message>
    <message>
        <source>this is not a ledger, or it is damaged (%1); put back the latest copy of the camp folder</source>
        <translation>ce n’est pas un registre, ou il est abîmé (%1) ; remettre la dernière copie du dossier de camp</translation>
    </message>
    <message>
        <source>the ledger failed: %1 (code %2); nothing was written</source>
        <translation>le registre a échoué : %1 (code %2) ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>another program holds the ledger; nothing was written; close it there and repeat</source>
        <translation>un autre programme tient le registre ; rien n’a été écrit ; l’y fermer et recommencer</translation>
    </message>
    <message>
        <source>the shared ledger cannot be reached (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>le registre partagé n’est pas joignable (%1) ; rien n’a été écrit ; vérifier le réseau et le serveur, puis recommencer</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>la connexion au registre partagé a été perdue (%1) ; rien n’a été écrit ; vérifier le réseau et le serveur, puis recommencer</translation>
    </message>
    <message>
        <source>the shared ledger does not allow this login to do that (%1); nothing was written; ask the keeper</source>
        <translation>le registre partagé ne permet pas cela à cet identifiant (%1) ; rien n’a été écrit ; demander au gardien</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>le fichier n’est pas lisible</translation>
    </message>
    <message>
        <source>this is a link or a device; only a plain file can be kept up to date; put the file itself into the camp folder</source>
        <translation>c’est un lien ou un périphérique ; seul un simple fichier peut être tenu à jour ; mettre le fichier lui-même dans le dossier de camp</translation>
    </message>
    <message>
        <source>the file was written after entry %1 of another ledger; a new ledger begins with the counts of the file</source>
        <translation>le fichier a été écrit après l’inscription %1 d’un autre registre ; un nouveau registre commence avec les nombres du fichier</translation>
    </message>
    <message>
        <source>the file was written after entry %1, but the ledger ends at %2; is the ledger an older copy? Counts that differ are shown as edited</source>
        <translation>le fichier a été écrit après l’inscription %1, mais le registre finit à %2 ; le registre est-il une copie plus ancienne ? Les nombres qui diffèrent sont montrés comme modifiés</translation>
    </message>
    <message>
        <source>the ledger had nothing of the site %1; its lines begin with the counts of the file</source>
        <translation>le registre n’avait rien du site %1 ; ses articles commencent avec les nombres du fichier</translation>
    </message>
    <message>
        <source>line %1 is new in the file and begins with %2 on hand</source>
        <translation>l’article %1 est nouveau dans le fichier et commence avec %2 en stock</translation>
    </message>
    <message>
        <source>line %1 is not in the file any more, and the ledger has %2 of it on hand; put the line back, or count it as 0 first</source>
        <translation>l’article %1 n’est plus dans le fichier, et le registre en a %2 en stock ; remettre l’article, ou le compter d’abord à 0</translation>
    </message>
    <message>
        <source>write the first and the last age, for example [40, 44]</source>
        <translation>écrire le premier et le dernier âge, par exemple [40, 44]</translation>
    </message>
    <message>
        <source>ages and values rise, and bands do not overlap</source>
        <translation>les âges et les valeurs montent, et les tranches ne se chevauchent pas</translation>
    </message>
    <message>
        <source>write the rows as a list: [{ages: [40, 44], value: 0.65}, …]</source>
        <translation>écrire les lignes comme une liste : [{ages: [40, 44], value: 0.65}, …]</translation>
    </message>
    <message>
        <source>this is not a file of age tables of this program; the first key should read format: %1</source>
        <translation>ce n’est pas un fichier de tables d’âge de ce programme ; la première clé devrait être format: %1</translation>
    </message>
    <message>
        <source>`tables` is a list; begin each table with a dash</source>
        <translation>`tables` est une liste ; commencer chaque table par un tiret</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a name here; write one of %2</source>
        <translation>&quot;%1&quot; n’est pas un nom ici ; en écrire un de %2</translation>
    </message>
    <message>
        <source>write a list: one name, value and source a line</source>
        <translation>écrire une liste : un nom, une valeur et une source par ligne</translation>
    </message>
    <message>
        <source>this is not an audit file of this program; the first key should read format: %1</source>
        <translation>ce n’est pas un fichier d’audit de ce programme ; la première clé devrait être format: %1</translation>
    </message>
    <message>
        <source>these priors say that more than one hand-over in ten holds a slip; make them smaller</source>
        <translation>ces probabilités a priori disent que plus d’une remise sur dix contient une erreur ; les diminuer</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are lot, row, right and left</source>
        <translation>la colonne &quot;%1&quot; manque ; il faut lot, row, right et left</translation>
    </message>
    <message>
        <source>the row names no lot; keep the column as it was printed</source>
        <translation>la ligne ne nomme pas de lot ; laisser la colonne comme elle a été imprimée</translation>
    </message>
    <message>
        <source>row %1 of this lot stands in the table twice; keep one</source>
        <translation>la ligne %1 de ce lot figure deux fois dans le tableau ; n’en garder qu’une</translation>
    </message>
    <message>
        <source>“%1” is no reading of a focimeter; write sphere, cylinder and axis</source>
        <translation>« %1 » n’est pas une mesure de frontofocomètre ; écrire sphère, cylindre et axe</translation>
    </message>
    <message>
        <source>the row says not-found and has a reading; delete one of the two</source>
        <translation>la ligne dit not-found et a une mesure ; supprimer l’un des deux</translation>
    </message>
    <message>
        <source>the row says read and has no reading; write both lenses or not-found</source>
        <translation>la ligne dit read et n’a pas de mesure ; écrire les deux verres ou not-found</translation>
    </message>
    <message>
        <source>“%1” is not an outcome; write read or not-found</source>
        <translation>« %1 » n’est pas un résultat ; écrire read ou not-found</translation>
    </message>
    <message>
        <source>a pair is read in both lenses; write this one too</source>
        <translation>une paire se lit dans les deux verres ; écrire aussi celui-ci</translation>
    </message>
    <message>
        <source>the format is &quot;%1&quot;, not &quot;%2&quot;</source>
        <translation>le format est &quot;%1&quot;, pas &quot;%2&quot;</translation>
    </message>
    <message>
        <source>the limits must rise: fits, then caution, then trial</source>
        <translation>les limites doivent monter : fits, puis caution, puis trial</translation>
    </message>
    <message>
        <source>a limit is missing here; write fits, caution or trial</source>
        <translation>une limite manque ici ; écrire fits, caution ou trial</translation>
    </message>
    <message>
        <source>&quot;%1&quot; means nothing for this criterion; delete it</source>
        <translation>&quot;%1&quot; n’a pas de sens pour ce critère ; le supprimer</translation>
    </message>
    <message>
        <source>write the steps as a list: [{up to: 0.50, fits: 7}, …]</source>
        <translation>écrire les paliers comme une liste : [{up to: 0.50, fits: 7}, …]</translation>
    </message>
    <message>
        <source>the steps must rise; put the smaller cylinder first</source>
        <translation>les paliers doivent monter ; mettre le plus petit cylindre d’abord</translation>
    </message>
    <message>
        <source>say where the limit comes from, or write: common practice</source>
        <translation>dire d’où vient la limite, ou écrire : common practice</translation>
    </message>
    <message>
        <source>shown only means no limits; keep one of the two</source>
        <translation>shown only veut dire sans limites ; garder l’un des deux</translation>
    </message>
    <message>
        <source>a quote stands inside a cell; put the whole cell in quotes and double it</source>
        <translation>un guillemet est à l’intérieur d’une cellule ; mettre toute la cellule entre guillemets et le doubler</translation>
    </message>
    <message>
        <source>a lone carriage return ends the line here; save the table with LF or CRLF line ends</source>
        <translation>un retour chariot seul termine la ligne ici ; enregistrer le tableau avec des fins de ligne LF ou CRLF</translation>
    </message>
    <message>
        <source>this quote is never closed; close it before the next comma</source>
        <translation>ce guillemet n’est jamais fermé ; le fermer avant la virgule suivante</translation>
    </message>
    <message>
        <source>there is text behind the closing quote; move it inside, or double the quote</source>
        <translation>il y a du texte après le guillemet fermant ; le mettre à l’intérieur, ou doubler le guillemet</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and name</source>
        <translation>la colonne &quot;%1&quot; manque ; il faut person et name</translation>
    </message>
    <message>
        <source>the row names no person</source>
        <translation>la ligne ne nomme pas de personne</translation>
    </message>
    <message>
        <source>%1 stands here twice, first in row %2</source>
        <translation>%1 figure deux fois ici, d’abord à la ligne %2</translation>
    </message>
    <message>
        <source>no name stands here; to erase one, use `quarterstep forget`</source>
        <translation>aucun nom n’est ici ; pour en effacer un, utiliser `quarterstep forget`</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write one from %2 to %3</source>
        <translation>&quot;%1&quot; n’est pas un nombre ; en écrire un de %2 à %3</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3</source>
        <translation>%1 est hors de %2 à %3</translation>
    </message>
    <message>
        <source>a number is missing; write one from %1 to %2</source>
        <translation>un nombre manque ; en écrire un de %1 à %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a decimal comma; in this file write %2</source>
        <translation>&quot;%1&quot; a une virgule décimale ; dans ce fichier, écrire %2</translation>
    </message>
    <message>
        <source>%1 is below zero; write 0 or more</source>
        <translation>%1 est inférieur à zéro ; écrire 0 ou plus</translation>
    </message>
    <message>
        <source>write %1 without a sign</source>
        <translation>écrire %1 sans signe</translation>
    </message>
    <message>
        <source>%1 is not a whole number; write digits only</source>
        <translation>%1 n’est pas un nombre entier ; n’écrire que des chiffres</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number; write digits only, for example 14</source>
        <translation>&quot;%1&quot; n’est pas un nombre entier ; n’écrire que des chiffres, par exemple 14</translation>
    </message>
    <message>
        <source>a whole number is missing; write one from %1 to %2</source>
        <translation>un nombre entier manque ; en écrire un de %1 à %2</translation>
    </message>
    <message>
        <source>%1 begins with a zero, which some programs read as another number; write %2</source>
        <translation>%1 commence par un zéro, que certains programmes lisent comme un autre nombre ; écrire %2</translation>
    </message>
    <message>
        <source>%1 has more than three decimals; round it</source>
        <translation>%1 a plus de trois décimales ; l’arrondir</translation>
    </message>
    <message>
        <source>the columns are not separated by commas; save the table with commas</source>
        <translation>les colonnes ne sont pas séparées par des virgules ; enregistrer le tableau avec des virgules</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; person, right and left are needed</source>
        <translation>la colonne &quot;%1&quot; manque ; il faut person, right et left</translation>
    </message>
    <message>
        <source>this column has no name; write one</source>
        <translation>cette colonne n’a pas de nom ; en écrire un</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say which acuity; write one of: %2</source>
        <translation>&quot;%1&quot; ne dit pas quelle acuité ; écrire l’une de : %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known and not used; did you mean &quot;%2&quot;?</source>
        <translation>la colonne &quot;%1&quot; n’est pas connue et pas utilisée ; fallait-il &quot;%2&quot; ?</translation>
    </message>
    <message>
        <source>the row ends after %1 cells, the header has %2; add the missing commas</source>
        <translation>la ligne finit après %1 cellules, l’en-tête en a %2 ; ajouter les virgules qui manquent</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds a comma in quotes</source>
        <translation>la ligne a %1 cellules, l’en-tête %2 ; mettre entre guillemets une cellule qui contient une virgule</translation>
    </message>
    <message>
        <source>line %1 stands here twice, first in row %2; write one row with the whole number</source>
        <translation>l’article %1 figure deux fois ici, d’abord à la ligne %2 ; écrire une seule ligne avec le nombre total</translation>
    </message>
    <message>
        <source>“%1” is not a cause; write one of %2</source>
        <translation>« %1 » n’est pas une cause ; en écrire une de %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are line and quantity</source>
        <translation>la colonne &quot;%1&quot; manque ; il faut line et quantity</translation>
    </message>
    <message>
        <source>the row names no line</source>
        <translation>la ligne ne nomme pas d’article</translation>
    </message>
    <message>
        <source>write format: %1</source>
        <translation>écrire format: %1</translation>
    </message>
    <message>
        <source>lines is a list, one item with line and quantity each</source>
        <translation>lines est une liste, chaque élément avec line et quantity</translation>
    </message>
    <message>
        <source>one scanned line a row; a table begins with a row that names its columns: line,quantity</source>
        <translation>un article scanné par ligne ; un tableau commence par une ligne qui nomme ses colonnes : line,quantity</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person, eye and reading, or sphere, cylinder and axis in place of reading</source>
        <translation>la colonne &quot;%1&quot; manque ; il faut person, eye et reading, ou sphere, cylinder et axis au lieu de reading</translation>
    </message>
    <message>
        <source>write each reading once: in the column reading, or in sphere, cylinder, axis</source>
        <translation>écrire chaque mesure une seule fois : dans la colonne reading, ou dans sphere, cylinder, axis</translation>
    </message>
    <message>
        <source>the row has no person; write the code of the person</source>
        <translation>la ligne n’a pas de personne ; écrire le code de la personne</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an eye; write right or left</source>
        <translation>&quot;%1&quot; n’est pas un œil ; écrire right ou left</translation>
    </message>
    <message>
        <source>there is no reading here; write it, or delete the row</source>
        <translation>il n’y a pas de mesure ici ; l’écrire, ou supprimer la ligne</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an axis; a cylinder needs one from 1 to 180</source>
        <translation>&quot;%1&quot; n’est pas un axe ; un cylindre a besoin d’un axe de 1 à 180</translation>
    </message>
    <message>
        <source>readings of the right eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>mesures de l’œil droit de &quot;%1&quot; : %2 ; en prendre trois ou plus</translation>
    </message>
    <message>
        <source>readings of the left eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>mesures de l’œil gauche de &quot;%1&quot; : %2 ; en prendre trois ou plus</translation>
    </message>
    <message>
        <source>the row has no person; write a code or a name</source>
        <translation>la ligne n’a pas de personne ; écrire un code ou un nom</translation>
    </message>
    <message>
        <source>%1 is no step of 0.25 or 0.125 D; look at the writing again (3 and 5, 2 and 7 are alike)</source>
        <translation>%1 n’est pas un pas de 0.25 ou 0.125 D ; revoir l’écriture (3 et 5, 2 et 7 se ressemblent)</translation>
    </message>
    <message>
        <source>one eye is written with a minus cylinder, the other with a plus cylinder; both are read as written: is that meant?</source>
        <translation>un œil est écrit avec un cylindre négatif, l’autre avec un cylindre positif ; les deux sont lus comme écrits : est-ce voulu ?</translation>
    </message>
    <message>
        <source>age %1: is it right? Whether the rules for children count hangs on it</source>
        <translation>âge %1 : est-ce juste ? L’application des règles pour enfants en dépend</translation>
    </message>
    <message>
        <source>%1 mm is narrow for both eyes together; is it monocular? Then it goes into pd_right_mm or pd_left_mm</source>
        <translation>%1 mm est étroit pour les deux yeux ensemble ; est-ce monoculaire ? Alors cela va dans pd_right_mm ou pd_left_mm</translation>
    </message>
    <message>
        <source>the two monocular distances make %1 mm, not %2; the monocular ones are used</source>
        <translation>les deux écarts monoculaires font %1 mm, pas %2 ; les monoculaires sont utilisés</translation>
    </message>
    <message>
        <source>the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?</source>
        <translation>l’écart de près %1 mm est plus large que celui de loin, %2 mm ; ont-ils été échangés ?</translation>
    </message>
    <message>
        <source>the eye&apos;s text says addition %1, this column %2; keep one</source>
        <translation>le texte de l’œil dit addition %1, cette colonne %2 ; garder l’une des deux</translation>
    </message>
    <message>
        <source>sphere and addition make %1 at near, the near power says %2; the near power is used</source>
        <translation>sphère et addition font %1 de près, la puissance de près dit %2 ; la puissance de près est utilisée</translation>
    </message>
    <message>
        <source>the date %1 lies after today, %2; correct it</source>
        <translation>la date %1 est après aujourd’hui, %2 ; la corriger</translation>
    </message>
    <message>
        <source>write two numbers in mm, for example [54, 74]</source>
        <translation>écrire deux nombres en mm, par exemple [54, 74]</translation>
    </message>
    <message>
        <source>the smaller number comes first</source>
        <translation>le plus petit nombre vient d’abord</translation>
    </message>
    <message>
        <source>there is no profile &quot;%1&quot; to begin from; built in, or earlier in this file, are: %2</source>
        <translation>il n’y a pas de profil &quot;%1&quot; d’où partir ; intégrés, ou plus haut dans ce fichier, il y a : %2</translation>
    </message>
    <message>
        <source>the profile has no name; write one</source>
        <translation>le profil n’a pas de nom ; en écrire un</translation>
    </message>
    <message>
        <source>the profile &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>le profil &quot;%1&quot; figure déjà dans le fichier ; donner un autre nom à celui-ci</translation>
    </message>
    <message>
        <source>this is not a rules file of this program; the first key should read format: %1</source>
        <translation>ce n’est pas un fichier de règles de ce programme ; la première clé devrait être format: %1</translation>
    </message>
    <message>
        <source>`profiles` is a list; begin each profile with a dash</source>
        <translation>`profiles` est une liste ; commencer chaque profil par un tiret</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is not used</source>
        <translation>la colonne &quot;%1&quot; n’est pas connue ; elle n’est pas utilisée</translation>
    </message>
    <message>
        <source>this is not UTF-8 text; save the file as UTF-8</source>
        <translation>ce n’est pas du texte UTF-8 ; enregistrer le fichier en UTF-8</translation>
    </message>
    <message>
        <source>a control character (hexadecimal %1) stands here; delete it</source>
        <translation>un caractère de contrôle (hexadécimal %1) est ici ; le supprimer</translation>
    </message>
    <message>
        <source>the file is larger than %1 MiB; split it</source>
        <translation>le fichier dépasse %1 MiB ; le diviser</translation>
    </message>
    <message>
        <source>there is no such file; check the name and the folder</source>
        <translation>ce fichier n’existe pas ; vérifier le nom et le dossier</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>le fichier n’est pas lisible : %1</translation>
    </message>
    <message>
        <source>this is a folder; name the file inside it</source>
        <translation>c’est un dossier ; nommer le fichier qui est dedans</translation>
    </message>
    <message>
        <source>the file is UTF-16 text; save it as UTF-8 and try again</source>
        <translation>le fichier est du texte UTF-16 ; l’enregistrer en UTF-8 et réessayer</translation>
    </message>
    <message>
        <source>the file begins with two byte order marks; delete one</source>
        <translation>le fichier commence par deux marques d’ordre des octets ; en supprimer une</translation>
    </message>
    <message>
        <source>write this value without quotes, or delete the whole `written` entry</source>
        <translation>écrire cette valeur sans guillemets, ou supprimer toute l’entrée `written`</translation>
    </message>
    <message>
        <source>the value of `counts` is 8 digits of 0-9 and a-f put in by the program; delete the whole `written` entry if it was damaged</source>
        <translation>la valeur de `counts` est de 8 chiffres de 0-9 et a-f mis par le programme ; supprimer toute l’entrée `written` si elle a été abîmée</translation>
    </message>
    <message>
        <source>`lines` is a list; begin each line with a dash, or write lines: []</source>
        <translation>`lines` est une liste ; commencer chaque article par un tiret, ou écrire lines: []</translation>
    </message>
    <message>
        <source>the line &quot;%1&quot; stands in the file already, in line %2; give this one another name or add the counts together</source>
        <translation>l’article &quot;%1&quot; figure déjà dans le fichier, à la ligne %2 ; donner un autre nom à celui-ci ou additionner les nombres</translation>
    </message>
    <message>
        <source>the code %1 stands in the file already, in line %2; each line has a code of its own</source>
        <translation>le code %1 figure déjà dans le fichier, à la ligne %2 ; chaque article a son propre code</translation>
    </message>
    <message>
        <source>put `lines:` at the beginning of a line of its own</source>
        <translation>mettre `lines:` au début de sa propre ligne</translation>
    </message>
    <message>
        <source>this is not a stock file of this program; the first key should read format: %1</source>
        <translation>ce n’est pas un fichier de stock de ce programme ; la première clé devrait être format: %1</translation>
    </message>
    <message>
        <source>the site has no name; write the camp or box</source>
        <translation>le site n’a pas de nom ; écrire le camp ou la boîte</translation>
    </message>
    <message>
        <source>write the count as plain digits, without quotes: %1</source>
        <translation>écrire le nombre en chiffres simples, sans guillemets : %1</translation>
    </message>
    <message>
        <source>least (%1) is above most (%2); exchange them</source>
        <translation>least (%1) est au-dessus de most (%2) ; les échanger</translation>
    </message>
    <message>
        <source>write the lens shapes as a list, for example [round 44]</source>
        <translation>écrire les formes des verres comme une liste, par exemple [round 44]</translation>
    </message>
    <message>
        <source>centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure the pair again</source>
        <translation>les centres %1 mm ne vont pas avec verre + pont = %2 mm ; %3 à %4 sont attendus : remesurer la paire</translation>
    </message>
    <message>
        <source>a lens of shape &quot;%1&quot; may fit one side only; write side: right, left or either</source>
        <translation>un verre de forme &quot;%1&quot; peut n’aller que d’un côté ; écrire side: right, left ou either</translation>
    </message>
    <message>
        <source>&quot;%1&quot; says nothing for a line of this kind and is not used</source>
        <translation>&quot;%1&quot; ne dit rien pour un article de ce type et n’est pas utilisé</translation>
    </message>
    <message>
        <source>the line has no name; write what its label says</source>
        <translation>l’article n’a pas de nom ; écrire ce que dit son étiquette</translation>
    </message>
    <message>
        <source>the addition %1 is outside +0.25 to +6.00</source>
        <translation>l’addition %1 est hors de +0.25 à +6.00</translation>
    </message>
    <message>
        <source>write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}</source>
        <translation>écrire une puissance, ou {right: …, left: …}, ou {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a bifocal&apos;s power is written {bifocal: +2.00, distance: 0.00}</source>
        <translation>la puissance d’une bifocale s’écrit {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a lens with a cylinder needs axis: any (turned when mounting) or axis: degrees as mounted</source>
        <translation>un verre avec cylindre a besoin de axis: any (tourné au montage) ou de axis: avec les degrés tels que monté</translation>
    </message>
    <message>
        <source>the axis stands in the power already; keep one of the two</source>
        <translation>l’axe est déjà dans la puissance ; garder l’un des deux</translation>
    </message>
    <message>
        <source>write this value in one line and without quotes, so that it can be changed</source>
        <translation>écrire cette valeur sur une ligne et sans guillemets, pour qu’elle puisse être changée</translation>
    </message>
    <message>
        <source>this is a list; begin each item with a dash</source>
        <translation>c’est une liste ; commencer chaque élément par un tiret</translation>
    </message>
    <message>
        <source>“%1” stands in the list already, in line %2; keep one of the two</source>
        <translation>« %1 » figure déjà dans la liste, à la ligne %2 ; garder l’un des deux</translation>
    </message>
    <message>
        <source>write the lines of the pack with their pieces, as {N+200-62M: 2}</source>
        <translation>écrire les articles du paquet avec leurs pièces, comme {N+200-62M: 2}</translation>
    </message>
    <message>
        <source>the pack holds &quot;%1&quot;, which is not among the lines of this list</source>
        <translation>le paquet contient &quot;%1&quot;, qui n’est pas parmi les articles de cette liste</translation>
    </message>
    <message>
        <source>contact lenses were worn during this reading; the row is left out</source>
        <translation>des lentilles de contact étaient portées pendant cette mesure ; la ligne est omise</translation>
    </message>
    <message>
        <source>neither eye has sphere, cylinder and axis; the row is left out</source>
        <translation>aucun œil n’a sphère, cylindre et axe ; la ligne est omise</translation>
    </message>
    <message>
        <source>this eye has no complete reading and is taken as not measured</source>
        <translation>cet œil n’a pas de mesure complète et est pris comme non mesuré</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the words allowed here; write one of: %2</source>
        <translation>&quot;%1&quot; n’est pas un des mots permis ici ; écrire l’un de : %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds two numbers; write one here, each eye&apos;s own in pd_right_mm and pd_left_mm, the near one in near_pd_mm</source>
        <translation>&quot;%1&quot; contient deux nombres ; en écrire un ici, ceux de chaque œil dans pd_right_mm et pd_left_mm, celui de près dans near_pd_mm</translation>
    </message>
    <message>
        <source>%1 would be a distance in cm; write it in mm: %2</source>
        <translation>%1 serait un écart en cm ; l’écrire en mm : %2</translation>
    </message>
    <message>
        <source>%1 mm is not a pupillary distance; expected are %2 to %3 mm</source>
        <translation>%1 mm n’est pas un écart pupillaire ; %2 à %3 mm sont attendus</translation>
    </message>
    <message>
        <source>an addition is never minus; %1 was read; write the addition, not the near power (that goes into near_right and near_left)</source>
        <translation>une addition n’est jamais négative ; %1 a été lu ; écrire l’addition, pas la puissance de près (celle-ci va dans near_right et near_left)</translation>
    </message>
    <message>
        <source>the addition %1 is outside 0.00 to +6.00</source>
        <translation>l’addition %1 est hors de 0.00 à +6.00</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date of the form 2026-03-01 (year-month-day)</source>
        <translation>&quot;%1&quot; n’est pas une date de la forme 2026-03-01 (année-mois-jour)</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot; in the table</source>
        <translation>il n’y a pas de colonne &quot;%1&quot; dans le tableau</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and lines</source>
        <translation>la colonne &quot;%1&quot; manque ; il faut person et lines</translation>
    </message>
    <message>
        <source>“%1” is not a purpose; write distance, near, intermediate or bifocal</source>
        <translation>« %1 » n’est pas un usage ; écrire distance, near, intermediate ou bifocal</translation>
    </message>
    <message>
        <source>the row needs a person and lines</source>
        <translation>la ligne a besoin d’une personne et d’articles</translation>
    </message>
    <message>
        <source>write one line, or frame + right lens + left lens</source>
        <translation>écrire un article, ou monture + verre droit + verre gauche</translation>
    </message>
    <message>
        <source>write two powers, for example [1.00, 3.50]</source>
        <translation>écrire deux puissances, par exemple [1.00, 3.50]</translation>
    </message>
    <message>
        <source>a set that is not enabled says why; add: why</source>
        <translation>un jeu qui n’est pas activé dit pourquoi ; ajouter : why</translation>
    </message>
    <message>
        <source>this set is enabled though its figures are from memory; once they are compared with the standard, say so under confidence</source>
        <translation>ce jeu est activé alors que ses chiffres sont de mémoire ; une fois comparés à la norme, le dire sous confidence</translation>
    </message>
    <message>
        <source>the set &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>le jeu &quot;%1&quot; figure déjà dans le fichier ; donner un autre nom à celui-ci</translation>
    </message>
    <message>
        <source>this is not a tolerance file of this program; the first key should read format: %1</source>
        <translation>ce n’est pas un fichier de tolérances de ce programme ; la première clé devrait être format: %1</translation>
    </message>
    <message>
        <source>`sets` is a list; begin each set with a dash</source>
        <translation>`sets` est une liste ; commencer chaque jeu par un tiret</translation>
    </message>
    <message>
        <source>write the rows as a list: [{power up to: 6.50, limit: 0.13}, …]</source>
        <translation>écrire les lignes comme une liste : [{power up to: 6.50, limit: 0.13}, …]</translation>
    </message>
    <message>
        <source>a row has one of: limit, percent, or not judged: yes</source>
        <translation>une ligne a l’un de : limit, percent ou not judged: yes</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; it names the hand-over</source>
        <translation>la colonne &quot;%1&quot; manque ; elle nomme la remise</translation>
    </message>
    <message>
        <source>the row names no hand-over</source>
        <translation>la ligne ne nomme pas de remise</translation>
    </message>
    <message>
        <source>%1 stands here twice</source>
        <translation>%1 figure deux fois ici</translation>
    </message>
    <message>
        <source>a single value is expected here, not a list or a map</source>
        <translation>une seule valeur est attendue ici, pas une liste ni des clés avec valeurs</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds a line break or a control character; write it on one line</source>
        <translation>&quot;%1&quot; contient un saut de ligne ou un caractère de contrôle ; l’écrire sur une ligne</translation>
    </message>
    <message>
        <source>keys with values are expected here, such as: %1</source>
        <translation>des clés avec valeurs sont attendues ici, comme : %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is written twice; the first stands in line %2; keep one</source>
        <translation>&quot;%1&quot; est écrit deux fois ; le premier est à la ligne %2 ; n’en garder qu’un</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; known are: %2</source>
        <translation>la clé &quot;%1&quot; n’est pas connue ici ; connues : %2</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; did you mean &quot;%2&quot;?</source>
        <translation>la clé &quot;%1&quot; n’est pas connue ici ; fallait-il &quot;%2&quot; ?</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is missing here; add it</source>
        <translation>la clé &quot;%1&quot; manque ici ; l’ajouter</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no value; write one after the colon</source>
        <translation>&quot;%1&quot; n’a pas de valeur ; en écrire une après le deux-points</translation>
    </message>
    <message>
        <source>a second document begins here; keep one document in the file</source>
        <translation>un second document commence ici ; garder un seul document dans le fichier</translation>
    </message>
    <message>
        <source>an alias (*name) is not read here; write the value out</source>
        <translation>un alias (*name) n’est pas lu ici ; écrire la valeur en entier</translation>
    </message>
    <message>
        <source>this quote is never closed; close it on the same line</source>
        <translation>ce guillemet n’est jamais fermé ; le fermer sur la même ligne</translation>
    </message>
    <message>
        <source>an anchor (&amp;name) is not read here; delete it</source>
        <translation>une ancre (&amp;name) n’est pas lue ici ; la supprimer</translation>
    </message>
    <message>
        <source>a tag (!name) is not read here; delete it</source>
        <translation>une balise (!name) n’est pas lue ici ; la supprimer</translation>
    </message>
    <message>
        <source>the nesting is deeper than %1; this is not such a file</source>
        <translation>l’imbrication dépasse %1 niveaux ; ce n’est pas un tel fichier</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>une clé doit être un mot simple</translation>
    </message>
    <message>
        <source>this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or a tab in the indentation, here or on the line above</source>
        <translation>cela ne se lit pas comme YAML : %1 ; chercher un deux-points, un guillemet ou un crochet manquant, ou une tabulation dans le retrait, ici ou sur la ligne au-dessus</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>le fichier est vide</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>opened</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>received</source>
        <translation>reçu</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>remis</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>retourné</translation>
    </message>
    <message>
        <source>exchanged</source>
        <translation>échangé</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>compté</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>sorti du stock</translation>
    </message>
    <message>
        <source>held</source>
        <translation>réservé</translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation>mis en quarantaine</translation>
    </message>
    <message>
        <source>released</source>
        <translation>libéré</translation>
    </message>
    <message>
        <source>transferred out</source>
        <translation>transféré ailleurs</translation>
    </message>
    <message>
        <source>transferred in</source>
        <translation>transféré ici</translation>
    </message>
    <message>
        <source>no spectacles needed</source>
        <translation>lunettes non nécessaires</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>refusé par la personne</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incomplet</translation>
    </message>
    <message>
        <source>repaired or adjusted</source>
        <translation>réparé ou ajusté</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>commandé</translation>
    </message>
    <message>
        <source>order arrived</source>
        <translation>commande arrivée</translation>
    </message>
    <message>
        <source>order checked</source>
        <translation>commande vérifiée</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>livré</translation>
    </message>
    <message>
        <source>sent back to be remade</source>
        <translation>renvoyé pour être refait</translation>
    </message>
    <message>
        <source>not collected</source>
        <translation>non retiré</translation>
    </message>
    <message>
        <source>referred</source>
        <translation>orienté</translation>
    </message>
    <message>
        <source>not served from stock</source>
        <translation>non servi du stock</translation>
    </message>
    <message>
        <source>exported</source>
        <translation>exporté</translation>
    </message>
    <message>
        <source>drawn for the bench</source>
        <translation>tiré pour le banc</translation>
    </message>
    <message>
        <source>read at the bench</source>
        <translation>lu au banc</translation>
    </message>
    <message>
        <source>seen again</source>
        <translation>revu</translation>
    </message>
    <message>
        <source>entered in error</source>
        <translation>inscrit par erreur</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>abîmé</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manquant</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>volé</translation>
    </message>
    <message>
        <source>found</source>
        <translation>retrouvé</translation>
    </message>
    <message>
        <source>miscounted</source>
        <translation>mal compté</translation>
    </message>
    <message>
        <source>off its label</source>
        <translation>non conforme à l’étiquette</translation>
    </message>
    <message>
        <source>mislabelled</source>
        <translation>mal étiqueté</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>échantillon</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>offert</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>rappelé</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>The child was given glasses: %1.</source>
        <translation>L’enfant a reçu des lunettes : %1.</translation>
    </message>
    <message>
        <source>Glasses are suggested for the child: %1.</source>
        <translation>Des lunettes sont proposées pour l’enfant : %1.</translation>
    </message>
    <message>
        <source>Glasses are to be made for the child.</source>
        <translation>Des lunettes sont à fabriquer pour l’enfant.</translation>
    </message>
    <message>
        <source>The child needs no glasses for this.</source>
        <translation>L’enfant n’a pas besoin de lunettes pour cela.</translation>
    </message>
    <message>
        <source>The eye test is not finished; the child comes again.</source>
        <translation>L’examen de la vue n’est pas terminé ; l’enfant revient.</translation>
    </message>
    <message>
        <source>The child should see the eye clinic before any glasses.</source>
        <translation>L’enfant doit aller à la clinique des yeux avant toute paire de lunettes.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic today.</source>
        <translation>Merci d’amener l’enfant, avec la lettre, à la clinique des yeux aujourd’hui.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic in the next days.</source>
        <translation>Merci d’amener l’enfant, avec la lettre, à la clinique des yeux dans les prochains jours.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic when it next receives people.</source>
        <translation>Merci d’amener l’enfant, avec la lettre, à la clinique des yeux à sa prochaine consultation.</translation>
    </message>
    <message>
        <source>The eyes of your child were tested.</source>
        <translation>Les yeux de votre enfant ont été examinés.</translation>
    </message>
    <message>
        <source>To be worn (as the prescriber told)</source>
        <translation>À porter (comme l’a dit le prescripteur)</translation>
    </message>
    <message>
        <source>The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: take them off and go to an eye clinic the same day.</source>
        <translation>Les lunettes peuvent surprendre pendant une semaine. Vision double, douleur ou perte soudaine de vue : les enlever et aller dans une clinique des yeux le jour même.</translation>
    </message>
    <message>
        <source>Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Revenez dans 6 à 12 mois, ou tout de suite si un œil dévie ou voit moins bien.</translation>
    </message>
    <message>
        <source>Told to (guardian), by</source>
        <translation>Expliqué au tuteur, par</translation>
    </message>
    <message>
        <source>Please help the child to wear them, and to keep them clean and in their case.</source>
        <translation>Merci d’aider l’enfant à les porter, et à les garder propres et dans leur étui.</translation>
    </message>
    <message>
        <source>Please let the child sit where the board is read easily.</source>
        <translation>Merci de placer l’enfant là où le tableau se lit facilement.</translation>
    </message>
    <message>
        <source>Tell the guardian at once if an eye turns or hurts, or if the child sees worse.</source>
        <translation>Prévenez tout de suite le tuteur si un œil dévie ou fait mal, ou si l’enfant voit moins bien.</translation>
    </message>
    <message>
        <source>Your glasses</source>
        <translation>Vos lunettes</translation>
    </message>
    <message>
        <source>Glasses suggested for you</source>
        <translation>Lunettes proposées pour vous</translation>
    </message>
    <message>
        <source>Glasses to be made for you</source>
        <translation>Lunettes à fabriquer pour vous</translation>
    </message>
    <message>
        <source>No glasses needed</source>
        <translation>Pas besoin de lunettes</translation>
    </message>
    <message>
        <source>Not finished yet</source>
        <translation>Pas encore terminé</translation>
    </message>
    <message>
        <source>Please go to the eye clinic first</source>
        <translation>Allez d’abord à la clinique des yeux</translation>
    </message>
    <message>
        <source>Go to the eye clinic today, and take the letter.</source>
        <translation>Allez à la clinique des yeux aujourd’hui, avec la lettre.</translation>
    </message>
    <message>
        <source>Go to the eye clinic in the next days, and take the letter.</source>
        <translation>Allez à la clinique des yeux dans les prochains jours, avec la lettre.</translation>
    </message>
    <message>
        <source>Go to the eye clinic when it next receives people, and take the letter.</source>
        <translation>Allez à la clinique des yeux à sa prochaine consultation, avec la lettre.</translation>
    </message>
    <message>
        <source>right lens %1</source>
        <translation>verre droit %1</translation>
    </message>
    <message>
        <source>left lens %1</source>
        <translation>verre gauche %1</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>monture %1</translation>
    </message>
    <message>
        <source>What you were given</source>
        <translation>Ce que vous avez reçu</translation>
    </message>
    <message>
        <source>What is suggested</source>
        <translation>Ce qui est proposé</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>add %1</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Article</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Monture</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Ce qui reste</translation>
    </message>
    <message>
        <source>Outside limit: %1.</source>
        <translation>Hors limite : %1.</translation>
    </message>
    <message>
        <source>Given because</source>
        <translation>Donnée parce que</translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation>À savoir</translation>
    </message>
    <message>
        <source>This pair was worn by somebody before.</source>
        <translation>Cette paire a déjà été portée par quelqu’un.</translation>
    </message>
    <message>
        <source>You see with one eye: ask for lenses that do not break, and wear eye protection.</source>
        <translation>Vous voyez d’un seul œil : demandez des verres incassables, et portez une protection des yeux.</translation>
    </message>
    <message>
        <source>New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop wearing them and go to an eye clinic the same day.</source>
        <translation>Des lunettes neuves peuvent surprendre pendant une semaine. Vision double, douleur ou perte soudaine de vue : ne les portez plus et allez dans une clinique des yeux le jour même.</translation>
    </message>
    <message>
        <source>Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Portez-les comme l’a dit le prescripteur. Revenez dans 6 à 12 mois, ou tout de suite si un œil dévie ou voit moins bien.</translation>
    </message>
    <message>
        <source>Come back if your sight changes, and for a new eye test in two years.</source>
        <translation>Revenez si votre vue change, et pour un nouvel examen de la vue dans deux ans.</translation>
    </message>
    <message>
        <source>Nothing in the box comes near enough, so glasses are to be made.</source>
        <translation>Rien dans la boîte n’est assez proche ; des lunettes sont donc à fabriquer.</translation>
    </message>
    <message>
        <source>For the optician</source>
        <translation>Pour l’opticien</translation>
    </message>
    <message>
        <source>Collect at</source>
        <translation>À retirer à</translation>
    </message>
    <message>
        <source>On or after</source>
        <translation>Le, ou après le</translation>
    </message>
    <message>
        <source>Until then: temporary pair. Not for driving.</source>
        <translation>D’ici là : paire provisoire. Pas pour conduire.</translation>
    </message>
    <message>
        <source>Something is missing before glasses can be given:</source>
        <translation>Il manque quelque chose avant de pouvoir donner des lunettes :</translation>
    </message>
    <message>
        <source>Come back on</source>
        <translation>Revenez le</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Parce que</translation>
    </message>
    <message>
        <source>Glasses wait until the clinic has seen your eyes.</source>
        <translation>Les lunettes attendent que la clinique ait vu vos yeux.</translation>
    </message>
    <message>
        <source>Your prescription</source>
        <translation>Votre prescription</translation>
    </message>
    <message>
        <source>Your eyes should be measured once more.</source>
        <translation>Vos yeux doivent être mesurés encore une fois.</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>DROIT</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>GAUCHE</translation>
    </message>
    <message>
        <source>NEAR</source>
        <translation>PRÈS</translation>
    </message>
    <message>
        <source>DISTANCE</source>
        <translation>LOIN</translation>
    </message>
    <message>
        <source>ARM&apos;S LENGTH</source>
        <translation>BRAS TENDU</translation>
    </message>
    <message>
        <source>BIFOCAL</source>
        <translation>BIFOCAL</translation>
    </message>
    <message>
        <source>centres %1 mm (assumed)</source>
        <translation>centres %1 mm (supposés)</translation>
    </message>
    <message>
        <source>centres %1 mm</source>
        <translation>centres %1 mm</translation>
    </message>
    <message>
        <source>size S</source>
        <translation>taille S</translation>
    </message>
    <message>
        <source>size M</source>
        <translation>taille M</translation>
    </message>
    <message>
        <source>size L</source>
        <translation>taille L</translation>
    </message>
    <message>
        <source>axis set when mounted</source>
        <translation>axe réglé au montage</translation>
    </message>
    <message>
        <source>used pair</source>
        <translation>paire d’occasion</translation>
    </message>
    <message>
        <source>Rules %1, program %2.</source>
        <translation>Règles %1, programme %2.</translation>
    </message>
    <message>
        <source>For near work only.</source>
        <translation>Pour la vision de près seulement.</translation>
    </message>
    <message>
        <source>Day and place</source>
        <translation>Jour et lieu</translation>
    </message>
    <message>
        <source>Box %1: %2 pieces</source>
        <translation>Boîte %1 : %2 pièces</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casier</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Puissance</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Emballé</translation>
    </message>
    <message>
        <source>Packed by</source>
        <translation>Emballé par</translation>
    </message>
    <message>
        <source>Counted again by</source>
        <translation>Recompté par</translation>
    </message>
    <message>
        <source>Count what lies there. Two persons; what the book says is not asked before the end.</source>
        <translation>Comptez ce qui s’y trouve. Deux personnes ; ce que dit le registre n’est demandé qu’à la fin.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Counted by (initials)</source>
        <translation>Compté par (initiales)</translation>
    </message>
    <message>
        <source>Second person (initials)</source>
        <translation>Seconde personne (initiales)</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter, take the acuity with it, then compare with the record. Where they differ write: the record does not match the pair.</source>
        <translation>Lire la paire au frontofocomètre, mesurer l’acuité avec elle, puis comparer au relevé. S’ils diffèrent, écrire : le relevé ne correspond pas à la paire.</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Inscription</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Noté</translation>
    </message>
    <message>
        <source>Read right</source>
        <translation>Lu, droit</translation>
    </message>
    <message>
        <source>Read left</source>
        <translation>Lu, gauche</translation>
    </message>
    <message>
        <source>Acuity</source>
        <translation>Acuité</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Lu par</translation>
    </message>
    <message>
        <source>no power</source>
        <translation>sans puissance</translation>
    </message>
    <message>
        <source>Eye</source>
        <translation>Œil</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Addition</translation>
    </message>
    <message>
        <source>Prism</source>
        <translation>Prisme</translation>
    </message>
    <message>
        <source>Centre, mm</source>
        <translation>Centre, mm</translation>
    </message>
    <message>
        <source>Height, mm</source>
        <translation>Hauteur, mm</translation>
    </message>
    <message>
        <source>minus cylinders</source>
        <translation>cylindres négatifs</translation>
    </message>
    <message>
        <source>plus cylinders</source>
        <translation>cylindres positifs</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>comme écrit</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Vertex distance, mm</source>
        <translation>Distance verre-œil, mm</translation>
    </message>
    <message>
        <source>Working distance, mm</source>
        <translation>Distance de travail, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescripteur</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Usage</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>* half of the distance between both eyes, not measured for this eye</source>
        <translation>* moitié de la distance entre les deux yeux, non mesurée pour cet œil</translation>
    </message>
    <message>
        <source>Not to be sent before these are measured:</source>
        <translation>À ne pas envoyer avant d’avoir mesuré :</translation>
    </message>
    <message>
        <source>Wanted by, signature</source>
        <translation>Demandé par, signature</translation>
    </message>
    <message>
        <source>Glasses are being made for you: %1.</source>
        <translation>Des lunettes sont en fabrication pour vous : %1.</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>Commandé le</translation>
    </message>
    <message>
        <source>Bring this paper. The glasses are measured and tried on you before you take them home.</source>
        <translation>Apportez ce papier. Les lunettes sont mesurées et essayées sur vous avant que vous les emportiez.</translation>
    </message>
    <message>
        <source>If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly lost: do not wait, go to an eye clinic the same day.</source>
        <translation>Si vous ne pouvez pas venir, envoyez quelqu’un nous le dire. Votre vue baisse, fait mal ou se perd soudain : n’attendez pas, allez dans une clinique des yeux le jour même.</translation>
    </message>
    <message>
        <source>Rules %1, program version %2.</source>
        <translation>Règles %1, version du programme %2.</translation>
    </message>
    <message>
        <source>balance lens</source>
        <translation>verre d’équilibre</translation>
    </message>
    <message>
        <source>artificial eye</source>
        <translation>œil artificiel</translation>
    </message>
    <message>
        <source>does not see</source>
        <translation>ne voit pas</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>Note for the person</source>
        <translation>Note pour la personne</translation>
    </message>
    <message>
        <source>Label of a line</source>
        <translation>Étiquette d’un article</translation>
    </message>
    <message>
        <source>Label of a bin</source>
        <translation>Étiquette d’un casier</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Liste d’emballage</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>Feuille de comptage</translation>
    </message>
    <message>
        <source>Audit worksheet</source>
        <translation>Feuille d’audit</translation>
    </message>
    <message>
        <source>Order to the laboratory</source>
        <translation>Commande au laboratoire</translation>
    </message>
    <message>
        <source>Letter to the eye clinic</source>
        <translation>Lettre à la clinique des yeux</translation>
    </message>
    <message>
        <source>Glasses to collect</source>
        <translation>Lunettes à retirer</translation>
    </message>
    <message>
        <source>Note for the guardian</source>
        <translation>Note pour le tuteur</translation>
    </message>
    <message>
        <source>Note for the teacher</source>
        <translation>Note pour l’enseignant</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>Fiche rapide</translation>
    </message>
    <message>
        <source>Audit of hand-overs</source>
        <translation>Audit des remises</translation>
    </message>
    <message>
        <source>Right eye</source>
        <translation>Œil droit</translation>
    </message>
    <message>
        <source>Left eye</source>
        <translation>Œil gauche</translation>
    </message>
    <message>
        <source>Distance, as written</source>
        <translation>Loin, comme écrit</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>Près</translation>
    </message>
    <message>
        <source>for near: reading, sewing, telephone</source>
        <translation>pour le près : lecture, couture, téléphone</translation>
    </message>
    <message>
        <source>for work at arm&apos;s length</source>
        <translation>pour le travail à bout de bras</translation>
    </message>
    <message>
        <source>for far (upper part) and near (lower part)</source>
        <translation>pour le loin (partie haute) et le près (partie basse)</translation>
    </message>
    <message>
        <source>for far: walking, school board, faces</source>
        <translation>pour le loin : marche, tableau de l’école, visages</translation>
    </message>
    <message>
        <source>For near work only. Not for walking, riding or driving.</source>
        <translation>Pour la vision de près seulement. Ni pour marcher, ni pour rouler, ni pour conduire.</translation>
    </message>
    <message>
        <source>For work at arm&apos;s length only. Not for walking, riding or driving.</source>
        <translation>Pour le travail à bout de bras seulement. Ni pour marcher, ni pour rouler, ni pour conduire.</translation>
    </message>
    <message>
        <source>The lower part is for near: take care on steps and kerbs. Drive only if your sight with these meets the law where you live.</source>
        <translation>La partie basse est pour le près : attention aux marches et aux trottoirs. Ne conduisez que si votre vue avec ces lunettes respecte la loi de votre pays.</translation>
    </message>
    <message>
        <source>Drive only if your sight with these meets the law where you live.</source>
        <translation>Ne conduisez que si votre vue avec ces lunettes respecte la loi de votre pays.</translation>
    </message>
    <message>
        <source>Suggested from the prescription of %1 of %2 by rules %3, version %4. This is not an eye examination.</source>
        <translation>Proposé d’après la prescription de %1 du %2 selon les règles %3, version %4. Ceci n’est pas un examen des yeux.</translation>
    </message>
    <message>
        <source>(prescriber not named)</source>
        <translation>(prescripteur non nommé)</translation>
    </message>
    <message>
        <source>(no date)</source>
        <translation>(sans date)</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dedans</translation>
    </message>
    <message>
        <source>beyond 95 %</source>
        <translation>au-delà de 95 %</translation>
    </message>
    <message>
        <source>beyond 99.9 %</source>
        <translation>au-delà de 99.9 %</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Évaluées</translation>
    </message>
    <message>
        <source>At odds</source>
        <translation>En désaccord</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Proportion</translation>
    </message>
    <message>
        <source>95 % limits</source>
        <translation>Limites à 95 %</translation>
    </message>
    <message>
        <source>Funnel</source>
        <translation>Entonnoir</translation>
    </message>
    <message>
        <source>Share at odds against the number judged; lines: the share of all %1, the limits of chance at 95 % (dashed) and 99.9 % (solid)</source>
        <translation>Proportion en désaccord selon le nombre évalué ; lignes : la proportion de l’ensemble %1, les limites du hasard à 95 % (tirets) et 99.9 % (trait plein)</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>remises évaluées</translation>
    </message>
    <message>
        <source>Good ones before it</source>
        <translation>Bonnes avant elle</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Graphique</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Série</translation>
    </message>
    <message>
        <source>Good hand-overs between two at odds, in their order; centre %1, a run longer than %2 is better than the share says</source>
        <translation>Bonnes remises entre deux en désaccord, dans l’ordre ; centre %1, une série plus longue que %2 est meilleure que ne le dit la proportion</translation>
    </message>
    <message>
        <source>runs, the last one still open</source>
        <translation>séries, la dernière encore ouverte</translation>
    </message>
    <message>
        <source>better than the share says</source>
        <translation>meilleur que ne le dit la proportion</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semaine du</translation>
    </message>
    <message>
        <source>Share at odds by week; centre %1, limits at three standard deviations, which step with the volume</source>
        <translation>Proportion en désaccord par semaine ; centre %1, limites à trois écarts-types, qui suivent le volume</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semaines</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>au-delà</translation>
    </message>
    <message>
        <source>Large lot accepted</source>
        <translation>Grand lot accepté</translation>
    </message>
    <message>
        <source>This lot accepted</source>
        <translation>Ce lot accepté</translation>
    </message>
    <message>
        <source>Failing</source>
        <translation>Échecs</translation>
    </message>
    <message>
        <source>How likely a lot is accepted by the share that fails in it: %1 read, at most %2 may fail</source>
        <translation>Probabilité d’accepter un lot selon la proportion d’échecs : %1 lues, au plus %2 peuvent échouer</translation>
    </message>
    <message>
        <source>failing</source>
        <translation>échecs</translation>
    </message>
    <message>
        <source>Tell what the glasses are for, what is left, and when to come back; give the note.</source>
        <translation>Dire à quoi servent les lunettes, ce qui reste, et quand revenir ; donner la note.</translation>
    </message>
    <message>
        <source>Close the program, then copy the whole folder to a stick at the end of the day.</source>
        <translation>Fermer le programme, puis copier tout le dossier sur une clé en fin de journée.</translation>
    </message>
    <message>
        <source>Take a sample of pairs, read them, and look for the slip, not for somebody to blame.</source>
        <translation>Prendre un échantillon de paires, les lire, et chercher l’erreur, pas un coupable.</translation>
    </message>
    <message>
        <source>Type the camp code and the final prescription as written; signs always.</source>
        <translation>Saisir le code de camp et la prescription finale comme écrite ; toujours les signes.</translation>
    </message>
    <message>
        <source>Pain, red eye, sudden loss, flashes, double vision: the clinic first.</source>
        <translation>Douleur, œil rouge, perte soudaine, éclairs, vision double : d’abord la clinique.</translation>
    </message>
    <message>
        <source>Measure the distance between the eyes; for reading the near one.</source>
        <translation>Mesurer la distance entre les yeux ; pour la lecture, celle de près.</translation>
    </message>
    <message>
        <source>Fetch what is suggested from its bin and scan the label.</source>
        <translation>Prendre ce qui est proposé dans son casier et scanner l’étiquette.</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter: does it hold what the label says?</source>
        <translation>Lire la paire au frontofocomètre : est-elle conforme à l’étiquette ?</translation>
    </message>
    <message>
        <source>Try it on the face; take the acuity of each eye with it.</source>
        <translation>L’essayer sur le visage ; mesurer l’acuité de chaque œil avec elle.</translation>
    </message>
    <message>
        <source>Outside a limit: say no, or write the reason in your own words.</source>
        <translation>Hors d’une limite : dire non, ou écrire le motif avec ses propres mots.</translation>
    </message>
    <message>
        <source>Put back what was tried and not taken, each into the bin of its label.</source>
        <translation>Remettre en place ce qui a été essayé et non pris, chaque pièce dans le casier de son étiquette.</translation>
    </message>
    <message>
        <source>Take in a delivery by scanning it; a new lot waits until samples are read.</source>
        <translation>Recevoir une livraison en la scannant ; un nouveau lot attend que des échantillons soient lus.</translation>
    </message>
    <message>
        <source>Print labels for what came; one on each case, one on each bin.</source>
        <translation>Imprimer les étiquettes de ce qui est arrivé ; une sur chaque étui, une sur chaque casier.</translation>
    </message>
    <message>
        <source>A pair off its label goes into quarantine, never back into the bin.</source>
        <translation>Une paire non conforme à son étiquette va en quarantaine, jamais dans le casier.</translation>
    </message>
    <message>
        <source>Returned pairs are cleaned and read before they are given again.</source>
        <translation>Les paires retournées sont nettoyées et lues avant d’être redonnées.</translation>
    </message>
    <message>
        <source>Count by two persons on the blind sheet; every difference has a reason.</source>
        <translation>Compter à deux sur la feuille aveugle ; chaque différence a un motif.</translation>
    </message>
    <message>
        <source>Send to another site with a list; what arrives is counted there.</source>
        <translation>Envoyer à un autre site avec une liste ; ce qui arrive y est compté.</translation>
    </message>
    <message>
        <source>Choose the rules with the prescriber, and name them to the team.</source>
        <translation>Choisir les règles avec le prescripteur, et les indiquer à l’équipe.</translation>
    </message>
    <message>
        <source>Look at what was given outside a limit, and at its reasons, each evening.</source>
        <translation>Regarder chaque soir ce qui a été donné hors d’une limite, et les motifs.</translation>
    </message>
    <message>
        <source>Every letter to the clinic is counted when its lower part comes back.</source>
        <translation>Chaque lettre à la clinique est comptée quand sa partie basse revient.</translation>
    </message>
    <message>
        <source>Every pair that is ordered is followed until it is collected.</source>
        <translation>Chaque paire commandée est suivie jusqu’à son retrait.</translation>
    </message>
    <message>
        <source>Codes leave the camp, names do not.</source>
        <translation>Les codes quittent le camp, pas les noms.</translation>
    </message>
    <message>
        <source>Quick card: at the table</source>
        <translation>Fiche rapide : à la table</translation>
    </message>
    <message>
        <source>Quick card: keeper of the box</source>
        <translation>Fiche rapide : gardien de la boîte</translation>
    </message>
    <message>
        <source>Quick card: supervisor</source>
        <translation>Fiche rapide : superviseur</translation>
    </message>
    <message>
        <source>Told with every pair</source>
        <translation>Dit avec chaque paire</translation>
    </message>
    <message>
        <source>A suggestion is not an eye examination. The prescriber and the optician decide.</source>
        <translation>Une proposition n’est pas un examen des yeux. Le prescripteur et l’opticien décident.</translation>
    </message>
    <message>
        <source>Says that sight was lost suddenly.</source>
        <translation>Dit avoir perdu la vue soudainement.</translation>
    </message>
    <message>
        <source>Says that an eye hurts.</source>
        <translation>Dit qu’un œil fait mal.</translation>
    </message>
    <message>
        <source>An eye is red.</source>
        <translation>Un œil est rouge.</translation>
    </message>
    <message>
        <source>Sees new flashes or floaters.</source>
        <translation>Voit des éclairs ou des taches récents.</translation>
    </message>
    <message>
        <source>Sees double.</source>
        <translation>Voit double.</translation>
    </message>
    <message>
        <source>A pupil looks white.</source>
        <translation>Une pupille paraît blanche.</translation>
    </message>
    <message>
        <source>A child; the eyes do not look the same way.</source>
        <translation>Un enfant ; les yeux ne regardent pas dans la même direction.</translation>
    </message>
    <message>
        <source>The prescriber asks for a refraction with drops.</source>
        <translation>Le prescripteur demande une réfraction avec des gouttes.</translation>
    </message>
    <message>
        <source>Straight lines look bent or broken.</source>
        <translation>Les lignes droites paraissent courbes ou brisées.</translation>
    </message>
    <message>
        <source>A part of the field of view is missing.</source>
        <translation>Une partie du champ de vision manque.</translation>
    </message>
    <message>
        <source>Sees rings round lights.</source>
        <translation>Voit des anneaux autour des lumières.</translation>
    </message>
    <message>
        <source>A child who does not reach 6/9 in each eye with the final prescription.</source>
        <translation>Un enfant qui n’atteint pas 6/9 à chaque œil avec la prescription finale.</translation>
    </message>
    <message>
        <source>A child who came with less than 6/60 in an eye.</source>
        <translation>Un enfant venu avec moins de 6/60 à un œil.</translation>
    </message>
    <message>
        <source>A child with +3.50 D or more, or a cylinder of 1.50 D or more.</source>
        <translation>Un enfant avec +3.50 D ou plus, ou un cylindre de 1.50 D ou plus.</translation>
    </message>
    <message>
        <source>Under 8 years; the eyes differ by 1.50 D or more.</source>
        <translation>Moins de 8 ans ; les yeux diffèrent de 1.50 D ou plus.</translation>
    </message>
    <message>
        <source>Less than 6/12 in the better eye with the best prescription found.</source>
        <translation>Moins de 6/12 au meilleur œil avec la meilleure prescription trouvée.</translation>
    </message>
    <message>
        <source>A mean sphere beyond 6.00 D.</source>
        <translation>Une sphère moyenne au-delà de 6.00 D.</translation>
    </message>
    <message>
        <source>A sphere of +8.00 D or more.</source>
        <translation>Une sphère de +8.00 D ou plus.</translation>
    </message>
    <message>
        <source>What was observed</source>
        <translation>Ce qui a été observé</translation>
    </message>
    <message>
        <source>In the person&apos;s words</source>
        <translation>Avec les mots de la personne</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>sans correction</translation>
    </message>
    <message>
        <source>own pair</source>
        <translation>propre paire</translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation>trou sténopéique</translation>
    </message>
    <message>
        <source>best</source>
        <translation>meilleure</translation>
    </message>
    <message>
        <source>Please see this person today, and tell us on the part below.</source>
        <translation>Merci de voir cette personne aujourd’hui, et de nous répondre sur la partie ci-dessous.</translation>
    </message>
    <message>
        <source>Please see this person in the next days, and tell us on the part below.</source>
        <translation>Merci de voir cette personne dans les prochains jours, et de nous répondre sur la partie ci-dessous.</translation>
    </message>
    <message>
        <source>Please see this person at a usual appointment, and tell us on the part below.</source>
        <translation>Merci de voir cette personne à un rendez-vous habituel, et de nous répondre sur la partie ci-dessous.</translation>
    </message>
    <message>
        <source>No glasses are given until you have seen the person.</source>
        <translation>Pas de lunettes données avant que vous ayez vu la personne.</translation>
    </message>
    <message>
        <source>Glasses were given today: %1</source>
        <translation>Des lunettes ont été données aujourd’hui : %1</translation>
    </message>
    <message>
        <source>No glasses are recorded as given yet.</source>
        <translation>Aucune paire de lunettes n’est encore notée comme donnée.</translation>
    </message>
    <message>
        <source>Please return this part</source>
        <translation>Merci de renvoyer cette partie</translation>
    </message>
    <message>
        <source>Return to</source>
        <translation>Renvoyer à</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Vu le</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Glasses: may be given / wait / other prescription</source>
        <translation>Lunettes : peuvent être données / attendre / autre prescription</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Name (write it in only if the person agrees)</source>
        <translation>Nom (à écrire seulement si la personne est d’accord)</translation>
    </message>
    <message>
        <source>Prescription found</source>
        <translation>Prescription trouvée</translation>
    </message>
    <message>
        <source>What we ask</source>
        <translation>Ce que nous demandons</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucune encore</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (95 % limits %4 to %5)</source>
        <translation>%1 sur %2, %3 (limites à 95 % %4 à %5)</translation>
    </message>
    <message>
        <source>Refraction</source>
        <translation>Réfraction</translation>
    </message>
    <message>
        <source>Dispensing</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>Suivi</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Site</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Règles</translation>
    </message>
    <message>
        <source>Kind of pair</source>
        <translation>Type de paire</translation>
    </message>
    <message>
        <source>Desk (numbers of this report)</source>
        <translation>Poste (numéros de ce rapport)</translation>
    </message>
    <message>
        <source>By site</source>
        <translation>Par site</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Par semaine</translation>
    </message>
    <message>
        <source>By rules</source>
        <translation>Par règles</translation>
    </message>
    <message>
        <source>By purpose</source>
        <translation>Par usage</translation>
    </message>
    <message>
        <source>By kind of pair</source>
        <translation>Par type de paire</translation>
    </message>
    <message>
        <source>By desk</source>
        <translation>Par poste</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>prémontée</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifocale</translation>
    </message>
    <message>
        <source>lenses in a frame</source>
        <translation>verres dans une monture</translation>
    </message>
    <message>
        <source>nobody has looked yet</source>
        <translation>personne n’a encore vérifié</translation>
    </message>
    <message>
        <source>met</source>
        <translation>satisfait</translation>
    </message>
    <message>
        <source>under-met</source>
        <translation>insuffisamment satisfait</translation>
    </message>
    <message>
        <source>unmet</source>
        <translation>non satisfait</translation>
    </message>
    <message>
        <source>no need</source>
        <translation>aucun besoin</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>autre cause</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>At odds: by the record, the pair is not one that the rules would call acceptable, or what was measured beside the record speaks against it. This page is about records; a person decides what they mean. Nothing here is a ranking.</source>
        <translation>En désaccord : d’après le relevé, la paire n’est pas de celles que les règles diraient acceptables, ou ce qui a été mesuré à côté du relevé la contredit. Cette page parle de relevés ; une personne décide de leur sens. Rien ici n’est un classement.</translation>
    </message>
    <message>
        <source>Hand-overs</source>
        <translation>Remises</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 du %2 au %3</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Évalué selon</translation>
    </message>
    <message>
        <source>Record and pair at odds</source>
        <translation>Relevé et paire en désaccord</translation>
    </message>
    <message>
        <source>Entry %1 is not as it was written; only what stands before it was judged.</source>
        <translation>L’inscription %1 n’est plus comme elle a été écrite ; seul ce qui la précède a été évalué.</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>Que faire ensuite</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Rien n’a été trouvé.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>What the records show</source>
        <translation>Ce que montrent les relevés</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Fois</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>Kinds found less often, in the detail: %1</source>
        <translation>Types trouvés moins souvent, dans le détail : %1</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Dans le temps</translation>
    </message>
    <message>
        <source>p-chart by week</source>
        <translation>carte p par semaine</translation>
    </message>
    <message>
        <source>p-chart: %1</source>
        <translation>carte p : %1</translation>
    </message>
    <message>
        <source>g-chart: %1</source>
        <translation>carte g : %1</translation>
    </message>
    <message>
        <source>g-chart</source>
        <translation>carte g</translation>
    </message>
    <message>
        <source>g-chart: half of the runs between two at odds are %1 good ones or fewer; one longer than %2 is better than the share says</source>
        <translation>carte g : la moitié des séries entre deux en désaccord compte %1 bonnes ou moins ; une plus longue que %2 est meilleure que ne le dit la proportion</translation>
    </message>
    <message>
        <source>Read again at the bench</source>
        <translation>Relues au banc</translation>
    </message>
    <message>
        <source>No lot was drawn yet.</source>
        <translation>Aucun lot n’a encore été tiré.</translation>
    </message>
    <message>
        <source>%1 of %2 hand-overs, at most %3 may fail</source>
        <translation>%1 remises sur %2, au plus %3 peuvent échouer</translation>
    </message>
    <message>
        <source>Operating curve</source>
        <translation>Courbe d’efficacité</translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation>pas encore de résultats</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>accepté</translation>
    </message>
    <message>
        <source>refused: read every pair of these days</source>
        <translation>refusé : lire chaque paire de ces jours</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Revus</translation>
    </message>
    <message>
        <source>With the pair when seen</source>
        <translation>Avec la paire lors du contrôle</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>À revoir</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Due now</source>
        <translation>À revoir maintenant</translation>
    </message>
    <message>
        <source>Effective coverage, distance, of %1 who came</source>
        <translation>Couverture effective, loin, des %1 venus</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>Couverture</translation>
    </message>
    <message>
        <source>as they came</source>
        <translation>à leur arrivée</translation>
    </message>
    <message>
        <source>as they are now</source>
        <translation>à présent</translation>
    </message>
    <message>
        <source>Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator 3154). It is defined for a sample of a population; here it is of those who came.</source>
        <translation>Satisfait sur satisfait, insuffisamment satisfait et non satisfait, meilleur œil, 6/12 (Organisation mondiale de la Santé, indicateur 3154). Défini pour un échantillon d’une population ; ici il porte sur ceux qui sont venus.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>In figures</source>
        <translation>En chiffres</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Erreur la plus probable</translation>
    </message>
    <message>
        <source>None to be listed one by one.</source>
        <translation>Aucun à lister un par un.</translation>
    </message>
    <message>
        <source>%1 more are not listed here; `audit --json` has them all.</source>
        <translation>%1 de plus ne sont pas listés ici ; `audit --json` les donne tous.</translation>
    </message>
    <message>
        <source>A slip is a mistake in a record or in a pick, named by its likelihood and never proved by it.</source>
        <translation>Une erreur est une faute dans un relevé ou dans un choix, nommée par sa vraisemblance et jamais prouvée par elle.</translation>
    </message>
    <message>
        <source>%1 stronger than written: hold things a little nearer</source>
        <translation>%1 plus fort qu’écrit : tenir les choses un peu plus près</translation>
    </message>
    <message>
        <source>%1 weaker than written: hold things a little further away</source>
        <translation>%1 plus faible qu’écrit : tenir les choses un peu plus loin</translation>
    </message>
    <message>
        <source>%1 more plus than written: far things are a little less sharp</source>
        <translation>%1 plus positif qu’écrit : le lointain est un peu moins net</translation>
    </message>
    <message>
        <source>%1 more minus than written: the eye has to focus a little more</source>
        <translation>%1 plus négatif qu’écrit : l’œil doit accommoder un peu plus</translation>
    </message>
    <message>
        <source>%1 of the cylinder is not in the lens: fine lines are a little less sharp</source>
        <translation>%1 du cylindre n’est pas dans le verre : les traits fins sont un peu moins nets</translation>
    </message>
    <message>
        <source>near part: %1</source>
        <translation>partie de près : %1</translation>
    </message>
    <message>
        <source>Both eyes</source>
        <translation>Les deux yeux</translation>
    </message>
    <message>
        <source>Things are clear from about %1 cm.</source>
        <translation>Les choses sont nettes à partir d’environ %1 cm.</translation>
    </message>
    <message>
        <source>Things are clear from about %1 to %2 cm.</source>
        <translation>Les choses sont nettes d’environ %1 à %2 cm.</translation>
    </message>
    <message>
        <source>The lenses have the power that was written for you.</source>
        <translation>Les verres ont la puissance écrite pour vous.</translation>
    </message>
    <message>
        <source>The middle of the lenses is not quite before the middle of the eyes: the first days may feel odd.</source>
        <translation>Le milieu des verres n’est pas tout à fait devant le milieu des yeux : les premiers jours peuvent surprendre.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AnswerPanel</name>
    <message>
        <source>Needed: %1</source>
        <translation>Besoin : %1</translation>
    </message>
    <message>
        <source>Referral: %1, %2</source>
        <translation>Orientation : %1, %2</translation>
    </message>
    <message>
        <source>Measure again before handing over.</source>
        <translation>Mesurer de nouveau avant de remettre.</translation>
    </message>
    <message>
        <source>Purpose shown</source>
        <translation>Usage affiché</translation>
    </message>
    <message>
        <source>Each purpose is judged alone</source>
        <translation>Chaque usage est évalué séparément</translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>Règles : %1</translation>
    </message>
    <message>
        <source>%1  (rules: %2)</source>
        <translation>%1  (règles : %2)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCasePanel</name>
    <message>
        <source>Criteria and slips, or the picture of why not</source>
        <translation>Critères et erreurs, ou l’image du pourquoi pas</translation>
    </message>
    <message>
        <source>Criteria and slips</source>
        <translation>Critères et erreurs</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Pourquoi pas</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>Ce que montrent les barres</translation>
    </message>
    <message>
        <source>From the better pair to the pair given, or the limits of one of them</source>
        <translation>De la meilleure paire à la paire donnée, ou les limites de l’une d’elles</translation>
    </message>
    <message>
        <source>From the better pair to the pair given</source>
        <translation>De la meilleure paire à la paire donnée</translation>
    </message>
    <message>
        <source>Where the cost of the pair given comes from</source>
        <translation>D’où vient le coût de la paire donnée</translation>
    </message>
    <message>
        <source>Limits used up by the pair given</source>
        <translation>Limites utilisées par la paire donnée</translation>
    </message>
    <message>
        <source>Limits used up by the better pair</source>
        <translation>Limites utilisées par la meilleure paire</translation>
    </message>
    <message>
        <source>Choose a hand-over that could be judged: what kept it from its limits stands here.</source>
        <translation>Choisir une remise qui a pu être évaluée : ce qui l’a écartée de ses limites figure ici.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCharts</name>
    <message>
        <source>Of 100 hand-overs: why not</source>
        <translation>Sur 100 remises : pourquoi pas</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Enregistrer…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Enregistrer le graphique</translation>
    </message>
    <message>
        <source>Pictures (*.png);;Tables (*.csv)</source>
        <translation>Images (*.png);;Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>The chart is %1.</source>
        <translation>Le graphique est dans %1.</translation>
    </message>
    <message>
        <source>Saves the chart as a PDF or a picture, or its numbers as a table (Ctrl+Shift+S)</source>
        <translation>Enregistre le graphique en PDF ou en image, ou ses chiffres en table (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Prints the chart with its numbers on the printer of the settings (Ctrl+P)</source>
        <translation>Imprime le graphique avec ses chiffres sur l&apos;imprimante des réglages (Ctrl+P)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papier (*.pdf)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditPlace</name>
    <message>
        <source>Audit</source>
        <translation>Audit</translation>
    </message>
    <message>
        <source>Every hand-over is judged again by the rules and the stock of its moment.</source>
        <translation>Chaque remise est réévaluée selon les règles et le stock du moment.</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translation>Refaire l’audit</translation>
    </message>
    <message>
        <source>Reads the ledger from the first entry to the last (F5)</source>
        <translation>Lit le registre de la première à la dernière inscription (F5)</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est affiché</translation>
    </message>
    <message>
        <source>Shows findings of one class only</source>
        <translation>Affiche les constats d’une seule classe</translation>
    </message>
    <message>
        <source>Look for a finding</source>
        <translation>Chercher un constat</translation>
    </message>
    <message>
        <source>Look for a person, a line, a word</source>
        <translation>Chercher une personne, un article, un mot</translation>
    </message>
    <message>
        <source>Shows only findings in which these words stand (Ctrl+F)</source>
        <translation>Affiche seulement les constats contenant ces mots (Ctrl+F)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>What is to be said of hand-overs, one by one</source>
        <translation>Ce qu’il y a à dire des remises, une par une</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Graphiques</translation>
    </message>
    <message>
        <source>How often, by site, week and kind of pair</source>
        <translation>Combien souvent, par site, semaine et type de paire</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banc</translation>
    </message>
    <message>
        <source>Lots read again, who is to be seen again, the report</source>
        <translation>Lots relus, personnes à revoir, rapport</translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation>Constats de l’audit</translation>
    </message>
    <message>
        <source>Choose a finding to see need, pair and slips beside</source>
        <translation>Choisir un constat pour voir à côté besoin, paire et erreurs</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Graphique</translation>
    </message>
    <message>
        <source>Funnel: shares against the size of the group</source>
        <translation>Entonnoir : proportions selon la taille du groupe</translation>
    </message>
    <message>
        <source>Runs of good hand-overs (g-chart)</source>
        <translation>Séries de bonnes remises (carte g)</translation>
    </message>
    <message>
        <source>Weeks (p-chart)</source>
        <translation>Semaines (carte p)</translation>
    </message>
    <message>
        <source>Which picture is drawn</source>
        <translation>Quelle image est dessinée</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Groupes</translation>
    </message>
    <message>
        <source>What the groups of the funnel are</source>
        <translation>Ce que sont les groupes de l’entonnoir</translation>
    </message>
    <message>
        <source>Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. Circle: inside · triangle: beyond the inner limit · diamond: beyond the outer. Nothing is ranked.</source>
        <translation>Plein : la proportion de l’ensemble · tirets : limite interne, 95 % · pointillés : limite externe. Cercle : dedans · triangle : au-delà de la limite interne · losange : au-delà de l’externe. Rien n’est classé.</translation>
    </message>
    <message>
        <source>The numbers of the chart</source>
        <translation>Les nombres du graphique</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Les mêmes nombres que dans l’image</translation>
    </message>
    <message>
        <source>Why, criterion by criterion:</source>
        <translation>Pourquoi, critère par critère :</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Paire donnée</translation>
    </message>
    <message>
        <source>How the pair that was given is judged</source>
        <translation>Comment la paire donnée est évaluée</translation>
    </message>
    <message>
        <source>Better pair</source>
        <translation>Meilleure paire</translation>
    </message>
    <message>
        <source>How the pair that lay in the box is judged</source>
        <translation>Comment la paire qui était dans la boîte est évaluée</translation>
    </message>
    <message>
        <source>Criteria of the pair</source>
        <translation>Critères de la paire</translation>
    </message>
    <message>
        <source>Each criterion with its value, its limit and the source of the limit</source>
        <translation>Chaque critère avec sa valeur, sa limite et la source de la limite</translation>
    </message>
    <message>
        <source>Slips that the record allows. It speaks of the record; a person decides.</source>
        <translation>Erreurs que le relevé permet. Elles parlent du relevé ; une personne décide.</translation>
    </message>
    <message>
        <source>Slips and their arithmetic</source>
        <translation>Erreurs et leur calcul</translation>
    </message>
    <message>
        <source>Probability of each slip, and how it comes about</source>
        <translation>Probabilité de chaque erreur, et comment elle s’obtient</translation>
    </message>
    <message>
        <source>Judging hand-overs again…</source>
        <translation>Réévaluation des remises…</translation>
    </message>
    <message>
        <source>Reading the ledger …</source>
        <translation>Lecture du registre …</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written; audit again with F5.</source>
        <translation>Arrêté. Rien n’a été écrit ; refaire l’audit avec F5.</translation>
    </message>
    <message>
        <source>The audit ended before its time; the reason stands above.</source>
        <translation>L’audit s’est terminé avant la fin ; la raison figure ci-dessus.</translation>
    </message>
    <message>
        <source>hand-overs %1, judged again %2</source>
        <translation>remises %1, réévaluées %2</translation>
    </message>
    <message>
        <source>pair and record at odds: %1</source>
        <translation>paire et relevé en désaccord : %1</translation>
    </message>
    <message>
        <source>findings %1</source>
        <translation>constats %1</translation>
    </message>
    <message>
        <source>%1 more are counted and not listed</source>
        <translation>%1 de plus sont comptés et non listés</translation>
    </message>
    <message>
        <source>The record is whole: %1 entries, each follows the one before.</source>
        <translation>Le registre est intact : %1 inscriptions, chacune suit la précédente.</translation>
    </message>
    <message>
        <source>Every finding</source>
        <translation>Tous les constats</translation>
    </message>
    <message>
        <source>by site</source>
        <translation>par site</translation>
    </message>
    <message>
        <source>by who handed over</source>
        <translation>par qui a remis</translation>
    </message>
    <message>
        <source>by week</source>
        <translation>par semaine</translation>
    </message>
    <message>
        <source>by profile</source>
        <translation>par profil</translation>
    </message>
    <message>
        <source>by purpose</source>
        <translation>par usage</translation>
    </message>
    <message>
        <source>by kind of pair</source>
        <translation>par type de paire</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droit</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>%1: not judged</source>
        <translation>%1 : non évalué</translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation>%1 : besoin %2</translation>
    </message>
    <message>
        <source>, was given %1</source>
        <translation>, a reçu %1</translation>
    </message>
    <message>
        <source>Pair %1: %2</source>
        <translation>Paire %1 : %2</translation>
    </message>
    <message>
        <source>In the box lay %1 (bin %2): %3</source>
        <translation>Dans la boîte se trouvait %1 (casier %2) : %3</translation>
    </message>
    <message>
        <source>No slip was looked for: record, pair and witnesses agree.</source>
        <translation>Aucune erreur n’a été cherchée : relevé, paire et témoins concordent.</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>%1  %2 : %3</translation>
    </message>
    <message>
        <source>Below each: prior × witnesses × pair; the probability is its part of the sum.</source>
        <translation>Sous chacune : a priori × témoins × paire ; la probabilité est sa part de la somme.</translation>
    </message>
    <message>
        <source>Slips of the record cannot be tested here: nothing was measured beside it.</source>
        <translation>Les erreurs du relevé ne peuvent pas être testées ici : rien n’a été mesuré à côté.</translation>
    </message>
    <message>
        <source>No finding is chosen</source>
        <translation>Aucun constat choisi</translation>
    </message>
    <message>
        <source>Choose a finding in the list: what was needed, what was given and what lay in the box stand here.</source>
        <translation>Choisir un constat dans la liste : ce qui était nécessaire, ce qui a été donné et ce qui était dans la boîte figurent ici.</translation>
    </message>
    <message>
        <source>About the course of events</source>
        <translation>Sur le déroulement</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>%1, %2, inscription %3</translation>
    </message>
    <message>
        <source>Need, pair and findings</source>
        <translation>Besoin, paire et constats</translation>
    </message>
    <message>
        <source>What was needed, what was given, what lay in the box; the text can be copied</source>
        <translation>Ce qui était nécessaire, ce qui a été donné, ce qui était dans la boîte ; le texte peut être copié</translation>
    </message>
    <message>
        <source>Nothing was handed over in this camp yet, so there is nothing to audit.</source>
        <translation>Rien n’a encore été remis dans ce camp, il n’y a donc rien à auditer.</translation>
    </message>
    <message>
        <source>Check the record</source>
        <translation>Vérifier le registre</translation>
    </message>
    <message>
        <source>Every entry, every text and every count of the ledger against the chain, in the background (F6)</source>
        <translation>Chaque inscription, chaque texte et chaque nombre du registre par rapport à la chaîne, en arrière-plan (F6)</translation>
    </message>
    <message>
        <source>Save the report for the site</source>
        <translation>Enregistrer le rapport pour le site</translation>
    </message>
    <message>
        <source>Checking the record…</source>
        <translation>Vérification du registre…</translation>
    </message>
    <message>
        <source>Checking the record, entry by entry …</source>
        <translation>Vérification du registre, inscription par inscription …</translation>
    </message>
    <message>
        <source>The check was stopped before its end.</source>
        <translation>La vérification a été arrêtée avant la fin.</translation>
    </message>
    <message>
        <source>Print the chart</source>
        <translation>Imprimer le graphique</translation>
    </message>
    <message>
        <source>Save the chart…</source>
        <translation>Enregistrer le graphique…</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditReports</name>
    <message>
        <source>For everybody at the site: text, page for a browser, PDF, table or JSON (Ctrl+S)</source>
        <translation>Pour tous sur le site : texte, page pour un navigateur, PDF, tableau ou JSON (Ctrl+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Prints the page for the site on the printer of the settings</source>
        <translation>Imprime la page pour le site sur l’imprimante des réglages</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papier (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Texte (*.txt)</translation>
    </message>
    <message>
        <source>Data (*.json)</source>
        <translation>Données (*.json)</translation>
    </message>
    <message>
        <source>No printer is chosen; choose one in the settings (Ctrl+,), or save a PDF.</source>
        <translation>Aucune imprimante n’est choisie ; en choisir une dans les réglages (Ctrl+,), ou enregistrer un PDF.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Écrit : %1</translation>
    </message>
    <message>
        <source>Drawing the pages…</source>
        <translation>Dessin des pages…</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsModel</name>
    <message>
        <source>Part</source>
        <translation>Partie</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Effet</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>De quoi</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsView</name>
    <message>
        <source>Bars: why not</source>
        <translation>Barres : pourquoi pas</translation>
    </message>
    <message>
        <source>Arrows scroll; the same numbers stand in the table</source>
        <translation>Les flèches font défiler ; les mêmes nombres figurent dans le tableau</translation>
    </message>
    <message>
        <source>The numbers of the bars</source>
        <translation>Les nombres des barres</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Les mêmes nombres que dans l’image</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Les mêmes nombres figurent dans le tableau à côté</translation>
    </message>
    <message>
        <source>Filled: whole · lines rising: adds · lines falling: takes away.</source>
        <translation>Plein : total · traits montants : ajoute · traits descendants : retire.</translation>
    </message>
    <message>
        <source>Dots: inside · filled, with a diamond: outside · dashed: the limit.</source>
        <translation>Points : dedans · pleins, avec un losange : dehors · tirets : la limite.</translation>
    </message>
</context>
<context>
    <name>quarterstep::BenchPanel</name>
    <message>
        <source>Lots read again at the bench</source>
        <translation>Lots relus au banc</translation>
    </message>
    <message>
        <source>Pairs to read:</source>
        <translation>Paires à lire :</translation>
    </message>
    <message>
        <source>Pairs to read</source>
        <translation>Paires à lire</translation>
    </message>
    <message>
        <source>How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small</source>
        <translation>Combien de paires sont tirées ; « le moins possible » garde faibles les risques d’une mauvaise décision</translation>
    </message>
    <message>
        <source>as few as will do</source>
        <translation>le moins possible</translation>
    </message>
    <message>
        <source>Draw a lot…</source>
        <translation>Tirer un lot…</translation>
    </message>
    <message>
        <source>Draws hand-overs by lot, enters the draw and writes the sheet for the bench</source>
        <translation>Tire des remises au sort, inscrit le tirage et écrit la feuille pour le banc</translation>
    </message>
    <message>
        <source>Sheet for the bench</source>
        <translation>Feuille pour le banc</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>Take in a sheet…</source>
        <translation>Reprendre une feuille…</translation>
    </message>
    <message>
        <source>Reads a filled-in sheet, judges it and enters results and decision</source>
        <translation>Lit une feuille remplie, l’évalue et inscrit résultats et décision</translation>
    </message>
    <message>
        <source>Sheet from the bench</source>
        <translation>Feuille du banc</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Tiré</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>Paires</translation>
    </message>
    <message>
        <source>May fail</source>
        <translation>Échecs admis</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Lots drawn in this camp</source>
        <translation>Lots tirés dans ce camp</translation>
    </message>
    <message>
        <source>To be seen again</source>
        <translation>À revoir</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Donnée</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Paire</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Persons to be seen again</source>
        <translation>Personnes à revoir</translation>
    </message>
    <message>
        <source>Report: no names and no initials; small counts are hidden on the page for the site.</source>
        <translation>Rapport : ni noms ni initiales ; les petits nombres sont masqués sur la page pour le site.</translation>
    </message>
    <message>
        <source>Page for the site…</source>
        <translation>Page pour le site…</translation>
    </message>
    <message>
        <source>In detail…</source>
        <translation>En détail…</translation>
    </message>
    <message>
        <source>Everything, for the supervisor</source>
        <translation>Tout, pour le superviseur</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation>Pages (*.html)</translation>
    </message>
    <message>
        <source>Nothing happened in this camp yet.</source>
        <translation>Rien ne s’est encore passé dans ce camp.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>pas encore lu</translation>
    </message>
    <message>
        <source>wearers %1</source>
        <translation>porteurs %1</translation>
    </message>
    <message>
        <source>met %1, of them wearing %2</source>
        <translation>rencontrés %1, dont porteurs %2</translation>
    </message>
    <message>
        <source>effective coverage of those who came %1 %</source>
        <translation>couverture effective des venus %1 %</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bientôt</translation>
    </message>
    <message>
        <source>due</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>late</source>
        <translation>en retard</translation>
    </message>
    <message>
        <source>Drawn: %1 of %2 hand-overs; the sheet is %3.</source>
        <translation>Tiré : %1 remises sur %2 ; la feuille est %3.</translation>
    </message>
    <message>
        <source>Writing the report…</source>
        <translation>Écriture du rapport…</translation>
    </message>
    <message>
        <source>Its sheet…</source>
        <translation>Sa feuille…</translation>
    </message>
    <message>
        <source>Writes the sheet of the chosen lot again: to be filled in, or for paper</source>
        <translation>Écrit de nouveau la feuille du lot choisi : à remplir, ou sur papier</translation>
    </message>
    <message>
        <source>No lot was drawn yet; draw one first.</source>
        <translation>Aucun lot n’a encore été tiré ; en tirer un d’abord.</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Paper (*.pdf);;Text (*.txt)</source>
        <translation>Tableaux (*.csv);;Papier (*.pdf);;Texte (*.txt)</translation>
    </message>
</context>
<context>
    <name>quarterstep::BoxModel</name>
    <message>
        <source>unequal eyes</source>
        <translation>yeux inégaux</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 articles</translation>
    </message>
    <message>
        <source>%1 low</source>
        <translation>%1 bas</translation>
    </message>
    <message>
        <source>bin %1, %2, available %3</source>
        <translation>casier %1, %2, disponible %3</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>aucune rangée</translation>
    </message>
</context>
<context>
    <name>quarterstep::BringInPanel</name>
    <message>
        <source>Choose a file…</source>
        <translation>Choisir un fichier…</translation>
    </message>
    <message>
        <source>A table (CSV, TSV), lines of JSON, FHIR, or DICOM files of instruments</source>
        <translation>Un tableau (CSV, TSV), des lignes de JSON, du FHIR, ou des fichiers DICOM d’appareils</translation>
    </message>
    <message>
        <source>Take the clipboard</source>
        <translation>Prendre le presse-papiers</translation>
    </message>
    <message>
        <source>What was copied in a spreadsheet or another program</source>
        <translation>Ce qui a été copié dans un tableur ou un autre programme</translation>
    </message>
    <message>
        <source>How the table is read</source>
        <translation>Comment le tableau est lu</translation>
    </message>
    <message>
        <source>Use a map…</source>
        <translation>Utiliser une correspondance…</translation>
    </message>
    <message>
        <source>A file that says how such a table is read</source>
        <translation>Un fichier qui dit comment lire un tel tableau</translation>
    </message>
    <message>
        <source>Save this map…</source>
        <translation>Enregistrer cette correspondance…</translation>
    </message>
    <message>
        <source>For the next table of this kind; `quarterstep import --map` takes it, too</source>
        <translation>Pour le prochain tableau de ce genre ; `quarterstep import --map` la prend aussi</translation>
    </message>
    <message>
        <source>What is read: nothing is written yet</source>
        <translation>Ce qui est lu : rien n’est encore écrit</translation>
    </message>
    <message>
        <source>Only rows about which something was found</source>
        <translation>Seulement les lignes avec un constat</translation>
    </message>
    <message>
        <source>Leaves out rows that were read without a finding</source>
        <translation>Omet les lignes lues sans constat</translation>
    </message>
    <message>
        <source>Rows as they are read</source>
        <translation>Lignes telles qu’elles sont lues</translation>
    </message>
    <message>
        <source>Choose a row: what was found about it stands below</source>
        <translation>Choisir une ligne : ce qui a été constaté figure en dessous</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Kind, line and column in the file, what was found, and its code</source>
        <translation>Genre, ligne et colonne dans le fichier, ce qui a été constaté, et son code</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>To the place before; nothing is brought in</source>
        <translation>À l’endroit d’avant ; rien n’est importé</translation>
    </message>
    <message>
        <source>They come to stand in the waiting list</source>
        <translation>Elles seront placées dans la file d’attente</translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation>Les importer</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>un tableau</translation>
    </message>
    <message>
        <source>lines of JSON</source>
        <translation>lignes de JSON</translation>
    </message>
    <message>
        <source>DICOM</source>
        <translation>DICOM</translation>
    </message>
    <message>
        <source>FHIR</source>
        <translation>FHIR</translation>
    </message>
    <message>
        <source>Nothing is chosen yet.</source>
        <translation>Rien n’est encore choisi.</translation>
    </message>
    <message>
        <source>Prescriptions to bring in</source>
        <translation>Prescriptions à importer</translation>
    </message>
    <message>
        <source>Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;All files (*)</source>
        <translation>Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>No text is in the clipboard; copy the rows with their headings first.</source>
        <translation>Aucun texte dans le presse-papiers ; copier d’abord les lignes avec leurs titres.</translation>
    </message>
    <message>
        <source>The clipboard</source>
        <translation>Le presse-papiers</translation>
    </message>
    <message numerus="yes">
        <source>%n files</source>
        <translation>
            <numerusform>%n fichier</numerusform>
            <numerusform>%n fichiers</numerusform>
        </translation>
    </message>
    <message>
        <source>Use a map</source>
        <translation>Utiliser une correspondance</translation>
    </message>
    <message>
        <source>Maps of tables (*.map);;All files (*)</source>
        <translation>Correspondances de tableaux (*.map);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Save this map</source>
        <translation>Enregistrer cette correspondance</translation>
    </message>
    <message>
        <source>Maps of tables (*.map)</source>
        <translation>Correspondances de tableaux (*.map)</translation>
    </message>
    <message>
        <source>The map is in %1.</source>
        <translation>La correspondance est dans %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was brought in.</source>
        <translation>Arrêté. Rien n’a été importé.</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>Importation…</translation>
    </message>
    <message>
        <source>%1 brought in, %2 left out. They stand in the list and in %3.</source>
        <translation>%1 importées, %2 omises. Elles figurent dans la liste et dans %3.</translation>
    </message>
    <message>
        <source>It is being read…</source>
        <translation>Lecture en cours…</translation>
    </message>
    <message>
        <source>Choose a file, or copy rows and take the clipboard.</source>
        <translation>Choisir un fichier, ou copier des lignes et prendre le presse-papiers.</translation>
    </message>
    <message>
        <source>Read as %1: %2 to be brought in, %3 left out</source>
        <translation>Lu comme %1 : %2 à importer, %3 omises</translation>
    </message>
    <message>
        <source>Bring in %1, leave out %2</source>
        <translation>Importer %1, omettre %2</translation>
    </message>
    <message>
        <source>Found about row %1 (%2)</source>
        <translation>Constaté à la ligne %1 (%2)</translation>
    </message>
    <message>
        <source>Found about the file as a whole</source>
        <translation>Constaté pour le fichier entier</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>Lu comme %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::BroughtRowsModel</name>
    <message>
        <source>left out</source>
        <translation>omise</translation>
    </message>
    <message>
        <source>taken, with a caution</source>
        <translation>prise, avec prudence</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Brought in?</source>
        <translation>Importée ?</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Lu comme</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été constaté</translation>
    </message>
</context>
<context>
    <name>quarterstep::CampNotes</name>
    <message>
        <source>It lies here for good</source>
        <translation>Il est ici pour de bon</translation>
    </message>
    <message>
        <source>It is a second station</source>
        <translation>C&apos;est un second poste</translation>
    </message>
    <message>
        <source>Know first</source>
        <translation>À savoir d&apos;abord</translation>
    </message>
    <message>
        <source>From now on this folder is written to; the copy it came from is used no more</source>
        <translation>Dès maintenant on écrit dans ce dossier ; la copie d&apos;où il vient n&apos;est plus utilisée</translation>
    </message>
    <message>
        <source>Both folders are used; what is handed over here is brought together with the other later</source>
        <translation>Les deux dossiers servent ; ce qui est remis ici est réuni plus tard avec l&apos;autre</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ranger</translation>
    </message>
    <message>
        <source>These notes do not come back while this camp is open</source>
        <translation>Ces notes ne reviennent pas tant que ce camp est ouvert</translation>
    </message>
    <message numerus="yes">
        <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger&apos;s counts are used until the edits are accepted or discarded in Stock.</source>
        <translation>
            <numerusform>Les quantités de stock.yaml ont été modifiées à la main sur %n ligne. Celles du registre valent jusqu&apos;à ce que les changements soient acceptés ou rejetés dans Stock.</numerusform>
            <numerusform>Les quantités de stock.yaml ont été modifiées à la main sur %n lignes. Celles du registre valent jusqu&apos;à ce que les changements soient acceptés ou rejetés dans Stock.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::CardModel</name>
    <message>
        <source>held %1</source>
        <translation>réservé %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>en quarantaine %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Variation</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>En stock</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Remarque</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartModel</name>
    <message>
        <source>inside the limits</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>beyond the inner limit</source>
        <translation>au-delà de la limite interne</translation>
    </message>
    <message>
        <source>beyond the outer limit</source>
        <translation>au-delà de la limite externe</translation>
    </message>
    <message>
        <source>Group or run</source>
        <translation>Groupe ou série</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Chiffres</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartView</name>
    <message>
        <source>Chart of the audit</source>
        <translation>Graphique de l’audit</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Les mêmes nombres figurent dans le tableau à côté</translation>
    </message>
</context>
<context>
    <name>quarterstep::CriteriaModel</name>
    <message>
        <source>%1, right</source>
        <translation>%1, droit</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, gauche</translation>
    </message>
    <message>
        <source>Criterion</source>
        <translation>Critère</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossModel</name>
    <message>
        <source>right, need</source>
        <translation>droit, besoin</translation>
    </message>
    <message>
        <source>left, need</source>
        <translation>gauche, besoin</translation>
    </message>
    <message>
        <source>right, pair</source>
        <translation>droit, paire</translation>
    </message>
    <message>
        <source>left, pair</source>
        <translation>gauche, paire</translation>
    </message>
    <message>
        <source>right, left over</source>
        <translation>droit, reste</translation>
    </message>
    <message>
        <source>left, left over</source>
        <translation>gauche, reste</translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <translation>%1 le long de %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Puissance (D)</translation>
    </message>
    <message>
        <source>Higher (D)</source>
        <translation>Haute (D)</translation>
    </message>
    <message>
        <source>Lower (D)</source>
        <translation>Basse (D)</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossView</name>
    <message>
        <source>Optical crosses</source>
        <translation>Croix optiques</translation>
    </message>
    <message>
        <source>A picture of need, pair and what is left; the same values stand in the table</source>
        <translation>Une image du besoin, de la paire et du reste ; les mêmes valeurs figurent dans le tableau</translation>
    </message>
    <message>
        <source>Powers in dioptres on the meridians they act in, as the examiner sees the eyes</source>
        <translation>Puissances en dioptries sur les méridiens où elles agissent, comme l’examinateur voit les yeux</translation>
    </message>
    <message>
        <source>need</source>
        <translation>besoin</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>paire</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>reste</translation>
    </message>
</context>
<context>
    <name>quarterstep::DeskWindow</name>
    <message>
        <source>Choosing a camp</source>
        <translation>Choix du camp</translation>
    </message>
    <message>
        <source>Dispense</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message>
        <source>Starting a camp</source>
        <translation>Nouveau camp</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>SAMPLE: invented people, nothing here counts</source>
        <translation>EXEMPLE : personnes inventées, rien ne compte ici</translation>
    </message>
    <message>
        <source>Empties the card</source>
        <translation>Vide la fiche</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Nouvelle personne</translation>
    </message>
    <message>
        <source>Puts the people of a prescription table into the waiting list</source>
        <translation>Met les personnes d’un tableau de prescriptions dans la file d’attente</translation>
    </message>
    <message>
        <source>Load people…</source>
        <translation>Charger des personnes…</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation>Ouvre un autre camp, l’exemple, ou en crée un</translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>Camps…</translation>
    </message>
    <message>
        <source>Look, language, printer, camp, PINs</source>
        <translation>Apparence, langue, imprimante, camp, PIN</translation>
    </message>
    <message>
        <source>The manual, at the page for where you are</source>
        <translation>Le manuel, à la page de l’endroit où vous êtes</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
    <message>
        <source>Look of the window</source>
        <translation>Apparence de la fenêtre</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>Clair, sombre ou soleil : noir sur blanc et grand, pour le plein air</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Soleil</translation>
    </message>
    <message>
        <source>Who is served, and with what</source>
        <translation>Qui est servi, et avec quoi</translation>
    </message>
    <message>
        <source>What lies in the box, and what happened to it</source>
        <translation>Ce qui est dans la boîte, et ce qui lui est arrivé</translation>
    </message>
    <message>
        <source>Every key of the window</source>
        <translation>Toutes les touches de la fenêtre</translation>
    </message>
    <message>
        <source>Next look: light, dark, sun</source>
        <translation>Apparence suivante : clair, sombre, soleil</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>Lettres plus grandes</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>Lettres plus petites</translation>
    </message>
    <message>
        <source>Usual letters</source>
        <translation>Lettres normales</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Plan des puissances en tableau</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Quarterstep</source>
        <translation>Quarterstep</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>Lecture de %1…</translation>
    </message>
    <message>
        <source>%1 was not opened; what was found stands below.</source>
        <translation>%1 n’a pas été ouvert ; ce qui a été trouvé figure ci-dessous.</translation>
    </message>
    <message>
        <source>The card that was not handed over when the window went is back. Ctrl+N empties it.</source>
        <translation>La fiche non remise à la fermeture de la fenêtre est de retour. Ctrl+N la vide.</translation>
    </message>
    <message>
        <source>Open a camp folder</source>
        <translation>Ouvrir un dossier de camp</translation>
    </message>
    <message>
        <source>Load people</source>
        <translation>Charger des personnes</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Tableaux de prescriptions (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n en stock</numerusform>
            <numerusform>%n en stock</numerusform>
        </translation>
    </message>
    <message>
        <source>No camp is open</source>
        <translation>Aucun camp ouvert</translation>
    </message>
    <message>
        <source>SAMPLE: %1: Quarterstep</source>
        <translation>EXEMPLE : %1 : Quarterstep</translation>
    </message>
    <message>
        <source>%1: Quarterstep</source>
        <translation>%1 : Quarterstep</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Audit</translation>
    </message>
    <message>
        <source>Which pairs went wrong, and what slip did it</source>
        <translation>Quelles paires étaient mauvaises, et par quelle erreur</translation>
    </message>
    <message>
        <source>Brings prescriptions in from files, instruments or the clipboard, and sends them out</source>
        <translation>Importe des prescriptions de fichiers, d’appareils ou du presse-papiers, et les exporte</translation>
    </message>
    <message>
        <source>Bring in…</source>
        <translation>Importer…</translation>
    </message>
    <message>
        <source>Bringing in and sending out</source>
        <translation>Importer et exporter</translation>
    </message>
</context>
<context>
    <name>quarterstep::DispensePlace</name>
    <message numerus="yes">
        <source>%1: %n left</source>
        <translation>
            <numerusform>%1 : reste %n</numerusform>
            <numerusform>%1 : reste %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has %2. %3.</source>
        <translation>%1 a %2. %3.</translation>
    </message>
    <message>
        <source>Put back if pulled: %1</source>
        <translation>À remettre en place si sorti : %1</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>repris au poste</translation>
    </message>
    <message>
        <source>People of the table</source>
        <translation>Personnes du tableau</translation>
    </message>
    <message>
        <source>Choose a person: the card fills and pairs are suggested</source>
        <translation>Choisir une personne : la fiche se remplit et des paires sont proposées</translation>
    </message>
    <message>
        <source>Prescription</source>
        <translation>Prescription</translation>
    </message>
    <message>
        <source>Suggest pairs</source>
        <translation>Proposer des paires</translation>
    </message>
    <message>
        <source>Searches the stock for this prescription (Enter in any field)</source>
        <translation>Cherche dans le stock pour cette prescription (Entrée dans tout champ)</translation>
    </message>
    <message>
        <source>Pairs to pull</source>
        <translation>Paires à sortir</translation>
    </message>
    <message>
        <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
        <translation>La meilleure d’abord : puissance en dioptries, où la prendre, ce qu’elle laisse à chaque œil, prisme</translation>
    </message>
    <message>
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>Ce dossier n’a pas de people.csv. Saisir une prescription ci-dessous ou charger un tableau.</translation>
    </message>
    <message>
        <source>The table has no rows. Type a prescription below.</source>
        <translation>Le tableau est vide. Saisir une prescription ci-dessous.</translation>
    </message>
    <message>
        <source>Choose a person or type a prescription; Enter suggests pairs.</source>
        <translation>Choisir une personne ou saisir une prescription ; Entrée propose des paires.</translation>
    </message>
    <message>
        <source>The pairs to pull will stand here, best first, with their bins.</source>
        <translation>Les paires à sortir apparaîtront ici, la meilleure d’abord, avec leur casier.</translation>
    </message>
    <message>
        <source>Nothing to pull for this purpose.</source>
        <translation>Rien à sortir pour cet usage.</translation>
    </message>
    <message>
        <source>No pairs are shown until this is settled.</source>
        <translation>Aucune paire tant que cela n’est pas réglé.</translation>
    </message>
    <message>
        <source>No pair of this stock comes near this need.</source>
        <translation>Aucune paire de ce stock n’approche ce besoin.</translation>
    </message>
    <message>
        <source>Taken back from %1: %2.</source>
        <translation>Repris à %1 : %2.</translation>
    </message>
    <message>
        <source>Who is served: people of the table, or custom orders</source>
        <translation>Qui est servi : personnes du tableau, ou commandes sur mesure</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Article</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Commandes</translation>
    </message>
    <message>
        <source>The whole prescription, or the short way for plain readers</source>
        <translation>La prescription entière, ou la voie courte pour de simples lunettes de lecture</translation>
    </message>
    <message>
        <source>Plain reader</source>
        <translation>Lecture simple</translation>
    </message>
    <message>
        <source>%1 stands in the line.</source>
        <translation>%1 est dans la file.</translation>
    </message>
    <message>
        <source>%1 is entered as referred.</source>
        <translation>%1 est inscrit comme orienté.</translation>
    </message>
    <message>
        <source>A custom order for %1 is entered; it stands under Orders.</source>
        <translation>Une commande sur mesure pour %1 est inscrite ; elle figure sous Commandes.</translation>
    </message>
    <message>
        <source>This stands in the ledger already: %1, %2.</source>
        <translation>Ceci figure déjà au registre : %1, %2.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>The laboratory file of %1 is %2.</source>
        <translation>Le fichier de laboratoire de %1 est %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::ExchangePage</name>
    <message>
        <source>What comes in, or what goes out</source>
        <translation>Ce qui entre, ou ce qui sort</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>Send out</source>
        <translation>Exporter</translation>
    </message>
    <message>
        <source>Reading what was brought in before…</source>
        <translation>Lecture de ce qui a été importé auparavant…</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingListModel</name>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>prudence</translation>
    </message>
    <message>
        <source>error</source>
        <translation>erreur</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingsModel</name>
    <message>
        <source>a slip is likely</source>
        <translation>une erreur est probable</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Usage</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Paire donnée</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>In detail</source>
        <translation>En détail</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Erreur la plus probable</translation>
    </message>
</context>
<context>
    <name>quarterstep::FocimeterRow</name>
    <message>
        <source>Read, R</source>
        <translation>Lu, D</translation>
    </message>
    <message>
        <source>L</source>
        <translation>G</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it</source>
        <translation>Verre droit comme lu au frontofocomètre</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it</source>
        <translation>Verre gauche comme lu au frontofocomètre</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Verre droit comme lu au frontofocomètre, dioptries : -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Verre gauche comme lu au frontofocomètre, dioptries : -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>right lens: %1</source>
        <translation>verre droit : %1</translation>
    </message>
    <message>
        <source>left lens: %1</source>
        <translation>verre gauche : %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::HandOverPanel</name>
    <message>
        <source>Hand over</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Gives the chosen pair to this person and counts it down (Ctrl+Return)</source>
        <translation>Donne la paire choisie à cette personne et la décompte (Ctrl+Entrée)</translation>
    </message>
    <message>
        <source>The power of this very pair was read</source>
        <translation>La puissance de cette paire précise a été lue</translation>
    </message>
    <message>
        <source>Fit on the face</source>
        <translation>Ajustement sur le visage</translation>
    </message>
    <message>
        <source>Sits well at nose and ears, pupils behind the centres</source>
        <translation>Bien posée sur le nez et les oreilles, pupilles derrière les centres</translation>
    </message>
    <message>
        <source>Acuity with the pair</source>
        <translation>Acuité avec la paire</translation>
    </message>
    <message>
        <source>Each eye read the chart with this pair on</source>
        <translation>Chaque œil a lu l’échelle avec cette paire</translation>
    </message>
    <message>
        <source>Instructions given</source>
        <translation>Conseils donnés</translation>
    </message>
    <message>
        <source>What it is for, how to care for it, when to come back</source>
        <translation>À quoi elle sert, comment l’entretenir, quand revenir</translation>
    </message>
    <message>
        <source>With pair, R</source>
        <translation>Avec la paire, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this pair on, for example 6/9</source>
        <translation>Œil droit : acuité avec cette paire, par exemple 6/9</translation>
    </message>
    <message>
        <source>L</source>
        <translation>G</translation>
    </message>
    <message>
        <source>Left eye: acuity with this pair on, for example 6/9</source>
        <translation>Œil gauche : acuité avec cette paire, par exemple 6/9</translation>
    </message>
    <message>
        <source>near</source>
        <translation>près</translation>
    </message>
    <message>
        <source>Smallest print read with this pair on, for example N8</source>
        <translation>Plus petit texte lu avec cette paire, par exemple N8</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Why this pair is given all the same; kept with the entry</source>
        <translation>Pourquoi cette paire est donnée malgré tout ; gardé avec l’inscription</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Vos initiales</translation>
    </message>
    <message>
        <source>Who hands over; kept with the entry, may stay empty</source>
        <translation>Qui remet ; gardé avec l’inscription, peut rester vide</translation>
    </message>
    <message>
        <source>Hand over, print</source>
        <translation>Remettre, imprimer</translation>
    </message>
    <message>
        <source>Hands over and prints the note (Ctrl+Shift+Return)</source>
        <translation>Remet et imprime la note (Ctrl+Maj+Entrée)</translation>
    </message>
    <message>
        <source>Takes back what was entered last for this person today (Ctrl+Z)</source>
        <translation>Annule la dernière inscription de cette personne aujourd’hui (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Prints what this person takes home (Ctrl+P)</source>
        <translation>Imprime ce que cette personne emporte (Ctrl+P)</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Lettre</translation>
    </message>
    <message>
        <source>Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)</source>
        <translation>Inscrit l’orientation et imprime la lettre à la clinique (Ctrl+Maj+L)</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Commande</translation>
    </message>
    <message>
        <source>Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)</source>
        <translation>Inscrit une commande sur mesure et l’imprime pour le laboratoire (Ctrl+Maj+O)</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Sans</translation>
    </message>
    <message>
        <source>Enters that this person goes without a pair, and why (Ctrl+Shift+W)</source>
        <translation>Inscrit que cette personne part sans paire, et pourquoi (Ctrl+Maj+W)</translation>
    </message>
    <message>
        <source>Power by focimeter</source>
        <translation>Puissance au frontofocomètre</translation>
    </message>
    <message>
        <source>Each eye by focimeter</source>
        <translation>Chaque œil au frontofocomètre</translation>
    </message>
    <message>
        <source>To what is still missing</source>
        <translation>À ce qui manque encore</translation>
    </message>
    <message>
        <source>Puts the cursor where something is missing for a hand-over</source>
        <translation>Place le curseur là où quelque chose manque pour une remise</translation>
    </message>
</context>
<context>
    <name>quarterstep::HelpWindow</name>
    <message>
        <source>Help: Quarterstep</source>
        <translation>Aide : Quarterstep</translation>
    </message>
    <message>
        <source>Pages of the manual</source>
        <translation>Pages du manuel</translation>
    </message>
    <message>
        <source>Chooses a page of the manual</source>
        <translation>Choisit une page du manuel</translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>Texte de la page</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation>Le manuel ; les liens mènent à d’autres pages</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>quarterstep::KeySheet</name>
    <message>
        <source>Keys: Quarterstep</source>
        <translation>Touches : Quarterstep</translation>
    </message>
    <message>
        <source>All keys of the window</source>
        <translation>Toutes les touches de la fenêtre</translation>
    </message>
    <message>
        <source>All keys of the window; Escape closes it</source>
        <translation>Toutes les touches de la fenêtre ; Échap la ferme</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Partout</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from field to field; Space presses the button that is framed.</source>
        <translation>Tab et Maj+Tab passent d’un champ à l’autre ; Espace presse le bouton encadré.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LadderView</name>
    <message>
        <source>Stock ladder</source>
        <translation>Échelle du stock</translation>
    </message>
    <message>
        <source>A picture of how many pieces of each power there are; the same numbers stand in the table of lines</source>
        <translation>Une image du nombre de pièces de chaque puissance ; les mêmes nombres figurent dans le tableau des articles</translation>
    </message>
    <message>
        <source>power (D)</source>
        <translation>puissance (D)</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>pièces</translation>
    </message>
    <message>
        <source>%1: available %2, kept aside %3, keep at least %4</source>
        <translation>%1 : disponible %2, mis de côté %3, garder au moins %4</translation>
    </message>
</context>
<context>
    <name>quarterstep::LineModel</name>
    <message>
        <source>none: waits</source>
        <translation>aucune : attend</translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation>pas dans la file</translation>
    </message>
    <message>
        <source>none left: look before saying it again</source>
        <translation>épuisé : vérifier avant de le redire</translation>
    </message>
    <message>
        <source>with caution</source>
        <translation>avec prudence</translation>
    </message>
    <message>
        <source>by hand: %1</source>
        <translation>à la main : %1</translation>
    </message>
    <message>
        <source>promised; %1</source>
        <translation>promis ; %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Gets</source>
        <translation>Reçoit</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinePanel</name>
    <message>
        <source>Waiting line</source>
        <translation>File d’attente</translation>
    </message>
    <message>
        <source>Who gets which pair and why. Drop a pair on a person to pick it by hand</source>
        <translation>Qui reçoit quelle paire et pourquoi. Déposer une paire sur une personne pour la choisir à la main</translation>
    </message>
    <message>
        <source>Reason for a pair picked by hand</source>
        <translation>Motif d’une paire choisie à la main</translation>
    </message>
    <message>
        <source>Reason, for a pair by hand</source>
        <translation>Motif, pour une paire à la main</translation>
    </message>
    <message>
        <source>Why this person gets another pair than planned; kept with the promise</source>
        <translation>Pourquoi cette personne reçoit une autre paire que prévu ; gardé avec la promesse</translation>
    </message>
    <message>
        <source>All arrive</source>
        <translation>Tous arrivent</translation>
    </message>
    <message>
        <source>Everybody of the table who has nothing yet</source>
        <translation>Tous ceux du tableau qui n’ont encore rien</translation>
    </message>
    <message>
        <source>Card arrives</source>
        <translation>Fiche arrive</translation>
    </message>
    <message>
        <source>The person on the card (Ctrl+J)</source>
        <translation>La personne de la fiche (Ctrl+J)</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Replanifier</translation>
    </message>
    <message>
        <source>Plans anew, or stops planning</source>
        <translation>Planifie de nouveau, ou arrête la planification</translation>
    </message>
    <message>
        <source>Promise</source>
        <translation>Promettre</translation>
    </message>
    <message>
        <source>The person was told: no plan takes it back</source>
        <translation>La personne a été prévenue : aucun plan ne l’annule</translation>
    </message>
    <message>
        <source>Give chosen pair</source>
        <translation>Donner la paire choisie</translation>
    </message>
    <message>
        <source>The pair chosen in the list, by hand and with a reason (Ctrl+G)</source>
        <translation>La paire choisie dans la liste, à la main et avec un motif (Ctrl+G)</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Partie</translation>
    </message>
    <message>
        <source>The person left the line</source>
        <translation>La personne a quitté la file</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planification …</translation>
    </message>
    <message>
        <source>Nobody waits yet. Let the people of the table stand in line, or the one on the card.</source>
        <translation>Personne n’attend encore. Mettre dans la file les personnes du tableau, ou celle de la fiche.</translation>
    </message>
    <message>
        <source>%1 of %2 get a pair; first come, first served would be %3. %4</source>
        <translation>%1 sur %2 reçoivent une paire ; premier arrivé, premier servi donnerait %3. %4</translation>
    </message>
    <message>
        <source>No plan serves more.</source>
        <translation>Aucun plan n’en sert plus.</translation>
    </message>
    <message>
        <source>Good, not proved best.</source>
        <translation>Bon, non prouvé meilleur.</translation>
    </message>
    <message>
        <source>Unpromise</source>
        <translation>Ôter la promesse</translation>
    </message>
    <message>
        <source>Why this pair for %1? Type the reason and press Enter.</source>
        <translation>Pourquoi cette paire pour %1 ? Saisir le motif et presser Entrée.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinesModel</name>
    <message>
        <source>none left</source>
        <translation>épuisé</translation>
    </message>
    <message>
        <source>below least</source>
        <translation>sous le minimum</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>suffisant</translation>
    </message>
    <message>
        <source>above most</source>
        <translation>au-dessus du maximum</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>réservé %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>en quarantaine %1</translation>
    </message>
    <message>
        <source>keep at least %1, at most %2</source>
        <translation>garder au moins %1, au plus %2</translation>
    </message>
    <message numerus="yes">
        <source>reorder %n</source>
        <translation>
            <numerusform>commander %n</numerusform>
            <numerusform>commander %n</numerusform>
        </translation>
    </message>
    <message>
        <source>lasts %1 camp days as used so far</source>
        <translation>dure %1 jours de camp au rythme actuel</translation>
    </message>
    <message>
        <source>How many camps of 100 people the available pieces last, as used so far</source>
        <translation>Pour combien de camps de 100 personnes les pièces disponibles suffisent, au rythme actuel</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casier</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Article</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Puissance</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>En stock</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponible</translation>
    </message>
    <message>
        <source>Kept aside</source>
        <translation>Mis de côté</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Niveau</translation>
    </message>
    <message>
        <source>Camps</source>
        <translation>Camps</translation>
    </message>
</context>
<context>
    <name>quarterstep::LongWork</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Où en est le travail</translation>
    </message>
    <message>
        <source>Ends this work; nothing is changed by it</source>
        <translation>Met fin à ce travail ; rien n’en est modifié</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Arrêt…</translation>
    </message>
    <message>
        <source>After this: %1</source>
        <translation>Ensuite : %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::MappedColumnsModel</name>
    <message>
        <source>What this column holds; Enter or a click changes it</source>
        <translation>Ce que contient cette colonne ; Entrée ou un clic le change</translation>
    </message>
    <message>
        <source>Heading</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Exemple</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>Prise pour</translation>
    </message>
</context>
<context>
    <name>quarterstep::MeaningDelegate</name>
    <message>
        <source>What the column holds</source>
        <translation>Ce que contient la colonne</translation>
    </message>
</context>
<context>
    <name>quarterstep::MessageBar</name>
    <message>
        <source>Copy code</source>
        <translation>Copier le code</translation>
    </message>
    <message>
        <source>Copies the code of this message, to look it up in the help</source>
        <translation>Copie le code de ce message, pour le chercher dans l’aide</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Puts this message away</source>
        <translation>Retire ce message</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Non fait</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En attente</translation>
    </message>
</context>
<context>
    <name>quarterstep::OpeningPage</name>
    <message>
        <source>Which camp?</source>
        <translation>Quel camp ?</translation>
    </message>
    <message>
        <source>A camp is a folder: stock.yaml says what exists and how many; the ledger of what was handed over is kept beside it.</source>
        <translation>Un camp est un dossier : stock.yaml dit ce qui existe et combien ; le registre des remises est gardé à côté.</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation>Découvrir</translation>
    </message>
    <message>
        <source>A sample camp of invented people. What you do there stays in a copy of your own.</source>
        <translation>Un camp d’exemple aux personnes inventées. Ce que vous y faites reste dans votre copie.</translation>
    </message>
    <message>
        <source>Practise a hand-over, 3 minutes</source>
        <translation>S’exercer à une remise, 3 minutes</translation>
    </message>
    <message>
        <source>Opens the sample and tells each step beside the work</source>
        <translation>Ouvre l’exemple et explique chaque étape à côté du travail</translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>Ouvrir le camp d’exemple</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation>Ouvre votre copie de l’exemple comme vous l’avez laissée</translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>Recommencer l’exemple</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation>Efface ce qui a été fait dans votre copie de l’exemple</translation>
    </message>
    <message>
        <source>Start my own camp</source>
        <translation>Créer mon camp</translation>
    </message>
    <message>
        <source>Describe the trays of your box in a few lines; the desk writes the stock file.</source>
        <translation>Décrivez les plateaux de votre boîte en quelques lignes ; le fichier de stock est écrit pour vous.</translation>
    </message>
    <message>
        <source>Describe my trays…</source>
        <translation>Décrire mes plateaux…</translation>
    </message>
    <message>
        <source>A page where you type the trays and see the lines they make</source>
        <translation>Une page où vous saisissez les plateaux et voyez les articles obtenus</translation>
    </message>
    <message>
        <source>Open a camp</source>
        <translation>Ouvrir un camp</translation>
    </message>
    <message>
        <source>A folder with a stock.yaml, on this laptop or on a stick.</source>
        <translation>Un dossier avec stock.yaml, sur cet ordinateur ou une clé.</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>Choisir un dossier…</translation>
    </message>
    <message>
        <source>Chooses the folder with stock.yaml</source>
        <translation>Choisit le dossier avec stock.yaml</translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>Retour au camp ouvert</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation>Laisse tout tel quel</translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>Ce qui a été trouvé, avec fichier, ligne et colonne</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation>Fichier, ligne et colonne de tout ce qui a été trouvé ; peut être copié</translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>Créer un camp dans ce dossier…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation>Décrire les plateaux ; le fichier de stock est écrit dans ce dossier</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 n’a pas été ouvert</translation>
    </message>
    <message>
        <source>This folder has no stock.yaml. Choose the folder that has one, or start a camp here.</source>
        <translation>Ce dossier n’a pas de stock.yaml. Choisir celui qui en a un, ou créer un camp ici.</translation>
    </message>
    <message>
        <source>Mend the file at the line and column named, with any text editor, and open the folder again. Nothing was written.</source>
        <translation>Corriger le fichier à la ligne et la colonne indiquées, avec un éditeur de texte, puis rouvrir le dossier. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Ouvrir %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersModel</name>
    <message numerus="yes">
        <source>remade %n time(s)</source>
        <translation>
            <numerusform>refait %n fois</numerusform>
            <numerusform>refait %n fois</numerusform>
        </translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>commandé %1</translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation>monture réservée : %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Depuis</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Commandé</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersPanel</name>
    <message>
        <source>Find an order by the code of the person</source>
        <translation>Trouver une commande par le code de la personne</translation>
    </message>
    <message>
        <source>Part of a camp code; empty shows the open orders</source>
        <translation>Partie d’un code de camp ; vide montre les commandes en cours</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Custom orders</source>
        <translation>Commandes sur mesure</translation>
    </message>
    <message>
        <source>Custom orders, newest change first</source>
        <translation>Commandes sur mesure, dernier changement d’abord</translation>
    </message>
    <message>
        <source>Reason or note for this step</source>
        <translation>Motif ou note pour cette étape</translation>
    </message>
    <message>
        <source>Kept with the step; making again needs a reason</source>
        <translation>Gardé avec l’étape ; refaire demande un motif</translation>
    </message>
    <message>
        <source>Reason or note</source>
        <translation>Motif ou note</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Arrivée</translation>
    </message>
    <message>
        <source>It came from the laboratory</source>
        <translation>Elle est arrivée du laboratoire</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Vérifiée</translation>
    </message>
    <message>
        <source>Power, axis and centres were read and agree with the order</source>
        <translation>Puissance, axe et centres ont été lus et concordent avec la commande</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Retirée</translation>
    </message>
    <message>
        <source>The person has it and was checked with it on</source>
        <translation>La personne l’a et a été contrôlée avec</translation>
    </message>
    <message>
        <source>Make again</source>
        <translation>Refaire</translation>
    </message>
    <message>
        <source>Back to the laboratory; a reason is needed</source>
        <translation>Retour au laboratoire ; un motif est nécessaire</translation>
    </message>
    <message>
        <source>Not collected</source>
        <translation>Non retirée</translation>
    </message>
    <message>
        <source>The person did not come for it</source>
        <translation>La personne n’est pas venue la chercher</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>Laboratory file</source>
        <translation>Fichier de laboratoire</translation>
    </message>
    <message>
        <source>Writes the order as a file for the laboratory into the folder papers</source>
        <translation>Écrit la commande en fichier pour le laboratoire dans le dossier papers</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingDraws</name>
    <message>
        <source>Assumptions, published mix, number of draws and lot (Ctrl+D)</source>
        <translation>Suppositions, mélange publié, nombre de tirages et lot (Ctrl+D)</translation>
    </message>
    <message>
        <source>How the draws are made</source>
        <translation>Comment les tirages sont faits</translation>
    </message>
    <message>
        <source>PD as the pair&apos;s centres</source>
        <translation>écart comme les centres de la paire</translation>
    </message>
    <message>
        <source>Where no PD was taken, it equals the centres of each pair</source>
        <translation>Là où aucun écart pupillaire n&apos;a été pris, il est égal aux centres de chaque paire</translation>
    </message>
    <message>
        <source>readings are final</source>
        <translation>mesures finales</translation>
    </message>
    <message>
        <source>Objective readings are final, and a prescriber is named</source>
        <translation>Les mesures objectives sont finales et un prescripteur est nommé</translation>
    </message>
    <message>
        <source>vertex as the stock</source>
        <translation>distance verre-œil comme le stock</translation>
    </message>
    <message>
        <source>An unrecorded vertex distance is that of the stock</source>
        <translation>Une distance verre-œil non notée est celle du stock</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supposé</translation>
    </message>
    <message>
        <source>Published mix</source>
        <translation>Mélange publié</translation>
    </message>
    <message>
        <source>Mixes with the published mix of a camp, weighing as so many people; 0: not at all. By itself 30 where fewer than 100 people were seen</source>
        <translation>Mélange avec la composition publiée d&apos;un camp, pesant comme tant de personnes ; 0 : pas du tout. De lui-même 30 où moins de 100 personnes ont été vues</translation>
    </message>
    <message>
        <source>by who was seen</source>
        <translation>d&apos;après qui a été vu</translation>
    </message>
    <message>
        <source> people</source>
        <translation> personnes</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Tirages</translation>
    </message>
    <message>
        <source>Camps that are drawn and planned for, and as many again to check</source>
        <translation>Camps qui sont tirés et planifiés, et autant pour vérifier</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>The same lot draws the same people again</source>
        <translation>Le même lot tire à nouveau les mêmes personnes</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>replié</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>déplié</translation>
    </message>
    <message>
        <source>draws: %1</source>
        <translation>tirages : %1</translation>
    </message>
    <message>
        <source>lot: %1</source>
        <translation>lot : %1</translation>
    </message>
    <message>
        <source>published mix: %1</source>
        <translation>mélange publié : %1</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>supposé : %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingPanel</name>
    <message>
        <source>Boxes for the next camp</source>
        <translation>Boîtes pour le prochain camp</translation>
    </message>
    <message>
        <source>Plan the boxes</source>
        <translation>Planifier les boîtes</translation>
    </message>
    <message>
        <source>Plans what to buy; nothing is entered (F5)</source>
        <translation>Planifie les achats ; rien n’est inscrit (F5)</translation>
    </message>
    <message>
        <source>Persons served against money</source>
        <translation>Personnes servies selon l’argent</translation>
    </message>
    <message>
        <source>Line: served on the draws planned for · triangle: the knee · diamond: this plan · dotted: no order passes it · upright: the budget.</source>
        <translation>Ligne : servis sur les tirages du plan · triangle : le coude · losange : ce plan · pointillés : aucune commande ne fait mieux · vertical : le budget.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>The list of what a supplier sells (supplier.yaml)</source>
        <translation>La liste de ce que vend un fournisseur (supplier.yaml)</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fournisseur</translation>
    </message>
    <message>
        <source>Whom to plan for</source>
        <translation>Pour qui planifier</translation>
    </message>
    <message>
        <source>People as they were seen: of the ledger, or of a table of prescriptions</source>
        <translation>Personnes telles qu’elles ont été vues : du registre, ou d’un tableau de prescriptions</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>Demande</translation>
    </message>
    <message>
        <source>People who come next</source>
        <translation>Personnes à venir</translation>
    </message>
    <message>
        <source>How many people come to the next camp</source>
        <translation>Combien de personnes viennent au prochain camp</translation>
    </message>
    <message>
        <source> people</source>
        <translation> personnes</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>Money that may be spent, in the currency of the supplier&apos;s list</source>
        <translation>Argent qui peut être dépensé, dans la monnaie de la liste du fournisseur</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Kilograms of what is bought; 0: not limited</source>
        <translation>Kilogrammes de ce qui est acheté ; 0 : sans limite</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source>any weight</source>
        <translation>tout poids</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Boîtes</translation>
    </message>
    <message>
        <source>Boxes that are carried, what is on hand included; 0: as many as it takes</source>
        <translation>Boîtes emportées, y compris ce qui est en stock ; 0 : autant qu’il en faut</translation>
    </message>
    <message>
        <source>any number</source>
        <translation>tout nombre</translation>
    </message>
    <message>
        <source>Pieces in a box</source>
        <translation>Pièces par boîte</translation>
    </message>
    <message>
        <source>How many pieces a box holds</source>
        <translation>Combien de pièces contient une boîte</translation>
    </message>
    <message>
        <source> in each</source>
        <translation> par boîte</translation>
    </message>
    <message>
        <source>What the plan comes to</source>
        <translation>Ce que donne le plan</translation>
    </message>
    <message>
        <source>Served, spent, and how sure that is; the text can be copied</source>
        <translation>Servis, dépensé, et avec quelle certitude ; le texte peut être copié</translation>
    </message>
    <message>
        <source>What is shown of the plan</source>
        <translation>Ce qui est montré du plan</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Commande</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Liste d’emballage</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Vérifié</translation>
    </message>
    <message>
        <source>Without a pair</source>
        <translation>Sans paire</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>S’épuise</translation>
    </message>
    <message>
        <source>Not bought</source>
        <translation>Non acheté</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Courbe</translation>
    </message>
    <message>
        <source>The plan for the boxes</source>
        <translation>Le plan des boîtes</translation>
    </message>
    <message>
        <source>The plan, row by row</source>
        <translation>Le plan, ligne par ligne</translation>
    </message>
    <message>
        <source>Print packing list</source>
        <translation>Imprimer la liste d’emballage</translation>
    </message>
    <message>
        <source>The packing list as a paper (Ctrl+P)</source>
        <translation>La liste d’emballage sur papier (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save packing list…</source>
        <translation>Enregistrer la liste d’emballage…</translation>
    </message>
    <message>
        <source>Box by box, as a table (Ctrl+S)</source>
        <translation>Boîte par boîte, en tableau (Ctrl+S)</translation>
    </message>
    <message>
        <source>Save order…</source>
        <translation>Enregistrer la commande…</translation>
    </message>
    <message>
        <source>What to order, as a table (Ctrl+Shift+S)</source>
        <translation>Ce qu’il faut commander, en tableau (Ctrl+Maj+S)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>The order is %1.</source>
        <translation>La commande est dans %1.</translation>
    </message>
    <message>
        <source>The packing list is %1.</source>
        <translation>La liste d’emballage est dans %1.</translation>
    </message>
    <message>
        <source>The ledger of this camp</source>
        <translation>Le registre de ce camp</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>Un autre tableau…</translation>
    </message>
    <message>
        <source>List of a supplier</source>
        <translation>Liste d’un fournisseur</translation>
    </message>
    <message>
        <source>Suppliers&apos; lists (*.yaml)</source>
        <translation>Listes de fournisseurs (*.yaml)</translation>
    </message>
    <message>
        <source>Table of people</source>
        <translation>Tableau de personnes</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Tableaux de prescriptions (*.csv)</translation>
    </message>
    <message>
        <source>Choose what can be bought: the list of a supplier.</source>
        <translation>Choisir ce qui peut être acheté : la liste d’un fournisseur.</translation>
    </message>
    <message>
        <source>Planning the boxes…</source>
        <translation>Planification des boîtes…</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>aucune choisie</translation>
    </message>
    <message>
        <source>Planning … “Stop” at the top ends it.</source>
        <translation>Planification … « Arrêter » en haut y met fin.</translation>
    </message>
    <message>
        <source>Nothing is planned yet.</source>
        <translation>Rien n’est encore planifié.</translation>
    </message>
    <message>
        <source>The plan beside is of other figures; plan again (F5).</source>
        <translation>Le plan à côté repose sur d’autres chiffres ; replanifier (F5).</translation>
    </message>
    <message>
        <source>For this money the curve says %1; plan again for the order (F5).</source>
        <translation>Pour cet argent la courbe indique %1 ; replanifier pour avoir la commande (F5).</translation>
    </message>
    <message>
        <source>On people who were not planned for: %1</source>
        <translation>Sur des personnes qui n’étaient pas dans le plan : %1</translation>
    </message>
    <message>
        <source>Not checked: too few people to plan on one half and check on the other.</source>
        <translation>Non vérifié : trop peu de personnes pour planifier sur une moitié et vérifier sur l’autre.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of the table could not be read and were left out.</source>
        <translation>
            <numerusform>%n ligne du tableau n’a pas pu être lue et a été omise.</numerusform>
            <numerusform>%n lignes du tableau n’ont pas pu être lues et ont été omises.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to buy for the next camp so that most people are served: choose supplier, demand and money, then plan (F5). Nothing is entered.</source>
        <translation>Qu’acheter pour le prochain camp afin de servir le plus de personnes : choisir fournisseur, demande et argent, puis planifier (F5). Rien n’est inscrit.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PairsModel</name>
    <message numerus="yes">
        <source>%n here</source>
        <translation>
            <numerusform>%n ici</numerusform>
            <numerusform>%n ici</numerusform>
        </translation>
    </message>
    <message>
        <source>Nearest outside the limits</source>
        <translation>Les plus proches hors limites</translation>
    </message>
    <message>
        <source>same power: %1</source>
        <translation>même puissance : %1</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Puissance (D)</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Sortir</translation>
    </message>
    <message>
        <source>Right eye (D)</source>
        <translation>Œil droit (D)</translation>
    </message>
    <message>
        <source>Left eye (D)</source>
        <translation>Œil gauche (D)</translation>
    </message>
    <message>
        <source>Prism (Δ)</source>
        <translation>Prisme (Δ)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>R and L %1 · prism %2</source>
        <translation>D et G %1 · prisme %2</translation>
    </message>
    <message>
        <source>R %1 · L %2 · prism %3</source>
        <translation>D %1 · G %2 · prisme %3</translation>
    </message>
    <message>
        <source> · chance %1</source>
        <translation> · probabilité %1</translation>
    </message>
    <message>
        <source>Chance within</source>
        <translation>Probabilité dedans</translation>
    </message>
</context>
<context>
    <name>quarterstep::PaperWorker</name>
    <message>
        <source>%1: sent to %2.</source>
        <translation>%1 : envoyé à %2.</translation>
    </message>
    <message>
        <source>%1: written to %2.</source>
        <translation>%1 : écrit dans %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PinGuard</name>
    <message>
        <source>This needs the PIN of the optician.</source>
        <translation>Ceci demande le PIN de l’opticien.</translation>
    </message>
    <message>
        <source>This needs the PIN of the keeper.</source>
        <translation>Ceci demande le PIN du gardien.</translation>
    </message>
    <message>
        <source>This needs the PIN of the supervisor.</source>
        <translation>Ceci demande le PIN du superviseur.</translation>
    </message>
    <message>
        <source>A PIN is asked for</source>
        <translation>Un PIN est demandé</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>It is good until this place is left, or ten minutes after the last use</source>
        <translation>Il vaut jusqu’à la sortie de cet endroit, ou dix minutes après le dernier usage</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Does what was asked for (Enter)</source>
        <translation>Fait ce qui a été demandé (Entrée)</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>Ne pas le faire</translation>
    </message>
    <message>
        <source>Nothing is written (Escape)</source>
        <translation>Rien n’est écrit (Échap)</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlaneModel</name>
    <message>
        <source>need, both eyes</source>
        <translation>besoin, deux yeux</translation>
    </message>
    <message>
        <source>need, right eye</source>
        <translation>besoin, œil droit</translation>
    </message>
    <message>
        <source>need, left eye</source>
        <translation>besoin, œil gauche</translation>
    </message>
    <message>
        <source>chosen pair, right eye</source>
        <translation>paire choisie, œil droit</translation>
    </message>
    <message>
        <source>chosen pair, left eye</source>
        <translation>paire choisie, œil gauche</translation>
    </message>
    <message>
        <source>lenses</source>
        <translation>verres</translation>
    </message>
    <message>
        <source>ready-made pairs</source>
        <translation>paires prémontées</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Mean (D)</source>
        <translation>Moyenne (D)</translation>
    </message>
    <message>
        <source>Half cylinder (D)</source>
        <translation>Demi-cylindre (D)</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponible</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlanePanel</name>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation>Plan des puissances</translation>
    </message>
    <message>
        <source>Shows the same values as a table (Ctrl+T)</source>
        <translation>Montre les mêmes valeurs en tableau (Ctrl+T)</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Plan des puissances en tableau</translation>
    </message>
    <message>
        <source>Powers in dioptres and how many can be given</source>
        <translation>Puissances en dioptries et combien peuvent être données</translation>
    </message>
    <message>
        <source>R, L: the person&apos;s eyes · disc: pairs · diamond: lenses · cross: none left · dot: ranks · open ring: chosen pair. The larger, the more there are.</source>
        <translation>D, G : les yeux de la personne · disque : paires · losange : verres · croix : épuisé · point : rangs · anneau : paire choisie. Plus c’est grand, plus il y en a.</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Image</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlotView</name>
    <message>
        <source>Power plane</source>
        <translation>Plan des puissances</translation>
    </message>
    <message>
        <source>A picture of the stock around this person&apos;s eyes; the same values stand in the table</source>
        <translation>Une image du stock autour des yeux de cette personne ; les mêmes valeurs figurent dans le tableau</translation>
    </message>
    <message>
        <source>mean power (D)</source>
        <translation>puissance moyenne (D)</translation>
    </message>
    <message>
        <source>half the cylinder (D)</source>
        <translation>demi-cylindre (D)</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>convient %1</translation>
    </message>
    <message>
        <source>on trial %1</source>
        <translation>à l’essai %1</translation>
    </message>
    <message>
        <source>R %1 D</source>
        <translation>D %1 D</translation>
    </message>
    <message>
        <source>L %1 D</source>
        <translation>G %1 D</translation>
    </message>
    <message numerus="yes">
        <source>lenses %1: %n available</source>
        <translation>
            <numerusform>verres %1 : %n disponible</numerusform>
            <numerusform>verres %1 : %n disponibles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>pairs %1: %n available</source>
        <translation>
            <numerusform>paires %1 : %n disponible</numerusform>
            <numerusform>paires %1 : %n disponibles</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::PowerFields</name>
    <message>
        <source>Right eye, sphere</source>
        <translation>Œil droit, sphère</translation>
    </message>
    <message>
        <source>Left eye, sphere</source>
        <translation>Œil gauche, sphère</translation>
    </message>
    <message>
        <source>Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Sphère en dioptries, avec son signe. Haut et Bas changent de 0.25, Page préc. et Page suiv. de 1.00</translation>
    </message>
    <message>
        <source>Right eye, cylinder</source>
        <translation>Œil droit, cylindre</translation>
    </message>
    <message>
        <source>Left eye, cylinder</source>
        <translation>Œil gauche, cylindre</translation>
    </message>
    <message>
        <source>Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Cylindre en dioptries, avec son signe. Haut et Bas changent de 0.25, Page préc. et Page suiv. de 1.00</translation>
    </message>
    <message>
        <source>Right eye, axis</source>
        <translation>Œil droit, axe</translation>
    </message>
    <message>
        <source>Left eye, axis</source>
        <translation>Œil gauche, axe</translation>
    </message>
    <message>
        <source>Axis in degrees. Up and Down step 1, with Shift 5</source>
        <translation>Axe en degrés. Haut et Bas changent de 1, avec Maj de 5</translation>
    </message>
</context>
<context>
    <name>quarterstep::PracticeStrip</name>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Quitter l’exercice</translation>
    </message>
    <message>
        <source>Goes on without this step</source>
        <translation>Continue sans cette étape</translation>
    </message>
    <message>
        <source>Ends the practice; the sample stays open</source>
        <translation>Termine l’exercice ; l’exemple reste ouvert</translation>
    </message>
    <message>
        <source>Somebody sits down. Press Ctrl+N for an empty card, and type the code %1 under Person.</source>
        <translation>Quelqu’un s’assied. Ctrl+N donne une fiche vide ; saisir le code %1 sous Personne.</translation>
    </message>
    <message>
        <source>Tab to Age: type 30.</source>
        <translation>Tab jusqu’à Âge : saisir 30.</translation>
    </message>
    <message>
        <source>Right eye: type %1. Tab to the left eye and type the same.</source>
        <translation>Œil droit : saisir %1. Tab vers l’œil gauche, saisir la même chose.</translation>
    </message>
    <message>
        <source>PD far: type 62. Enter asks for pairs.</source>
        <translation>EP loin : saisir 62. Entrée demande des paires.</translation>
    </message>
    <message>
        <source>The best pair stands first, with its bin. You would fetch it, and one neighbour. Tick the four checks once the pair is on the face.</source>
        <translation>La meilleure paire est en tête, avec son casier. Vous iriez la chercher, avec une voisine. Cocher les quatre contrôles une fois la paire sur le visage.</translation>
    </message>
    <message>
        <source>Ctrl+Enter hands it over: the count goes down.</source>
        <translation>Ctrl+Entrée la remet : le compte diminue.</translation>
    </message>
    <message>
        <source>A mistake? Ctrl+Z takes the hand-over back the same day. Try it.</source>
        <translation>Une erreur ? Ctrl+Z annule la remise le jour même. Essayez.</translation>
    </message>
    <message>
        <source>That was all. F1 opens the manual, Shift+F1 shows every key.</source>
        <translation>C’est tout. F1 ouvre le manuel, Maj+F1 montre toutes les touches.</translation>
    </message>
    <message>
        <source>Practice, step %1 of %2</source>
        <translation>Exercice, étape %1 sur %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
</context>
<context>
    <name>quarterstep::PrescriptionCard</name>
    <message>
        <source>Wanted for</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>What the spectacles are for; left open, the prescription decides</source>
        <translation>À quoi servent les lunettes ; laissé libre, la prescription décide</translation>
    </message>
    <message>
        <source>open</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>Right eye, prescription</source>
        <translation>Œil droit, prescription</translation>
    </message>
    <message>
        <source>Left eye, prescription</source>
        <translation>Œil gauche, prescription</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Douleur</translation>
    </message>
    <message>
        <source>Sudden loss of sight</source>
        <translation>Perte soudaine de vue</translation>
    </message>
    <message>
        <source>Red eye</source>
        <translation>Œil rouge</translation>
    </message>
    <message>
        <source>New flashes or floaters</source>
        <translation>Éclairs ou taches récents</translation>
    </message>
    <message>
        <source>Double vision</source>
        <translation>Vision double</translation>
    </message>
    <message>
        <source>White pupil</source>
        <translation>Pupille blanche</translation>
    </message>
    <message>
        <source>Squint</source>
        <translation>Strabisme</translation>
    </message>
    <message>
        <source>Drops asked for</source>
        <translation>Gouttes demandées</translation>
    </message>
    <message>
        <source>Lines look bent</source>
        <translation>Lignes déformées</translation>
    </message>
    <message>
        <source>Part of the view missing</source>
        <translation>Partie du champ absente</translation>
    </message>
    <message>
        <source>Halos around lights</source>
        <translation>Halos autour des lumières</translation>
    </message>
    <message>
        <source>Signs seen or told</source>
        <translation>Signes vus ou dits</translation>
    </message>
    <message>
        <source>Tick when this was seen or told; it decides about a letter to the clinic</source>
        <translation>Cocher si cela a été vu ou dit ; décide d’une lettre à la clinique</translation>
    </message>
    <message>
        <source>%1 is empty; a person, the right and the left eye are needed</source>
        <translation>%1 est vide ; il faut la personne, l’œil droit et le gauche</translation>
    </message>
    <message>
        <source>Measured besides</source>
        <translation>Mesuré en plus</translation>
    </message>
    <message>
        <source>Three fields an eye</source>
        <translation>Trois champs par œil</translation>
    </message>
    <message>
        <source>Sphere, cylinder and axis in fields of their own (Ctrl+E)</source>
        <translation>Sphère, cylindre et axe dans des champs séparés (Ctrl+E)</translation>
    </message>
</context>
<context>
    <name>quarterstep::ReaderCard</name>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Âge en années ; un âge inconnu est évalué selon les règles les plus strictes</translation>
    </message>
    <message>
        <source>Distance fine?</source>
        <translation>De loin, bien ?</translation>
    </message>
    <message>
        <source>Does the person see well far away without spectacles? + is yes, - is no</source>
        <translation>La personne voit-elle bien de loin sans lunettes ? + pour oui, - pour non</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>non demandé</translation>
    </message>
    <message>
        <source>yes (+)</source>
        <translation>oui (+)</translation>
    </message>
    <message>
        <source>no (-)</source>
        <translation>non (-)</translation>
    </message>
    <message>
        <source>Near power by trial</source>
        <translation>Puissance de près à l’essai</translation>
    </message>
    <message>
        <source>Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225</source>
        <translation>Puissance avec laquelle la personne lit le mieux, la même aux deux yeux, dioptries : 2.25 ou 225</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>EP près</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation>Distance entre les pupilles en vision de près, millimètres ; sans elle, le pire plausible est évalué</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Camp code of the person; one is offered, the paper card&apos;s may be typed over it</source>
        <translation>Code de camp de la personne ; un code est proposé, celui de la fiche papier peut le remplacer</translation>
    </message>
    <message>
        <source>%1 in each eye</source>
        <translation>%1 à chaque œil</translation>
    </message>
    <message>
        <source>Ask first whether the person sees well far away.</source>
        <translation>Demander d’abord si la personne voit bien de loin.</translation>
    </message>
    <message>
        <source>Then a reader alone is not enough: refract, and use the full card.</source>
        <translation>Alors des lunettes de lecture seules ne suffisent pas : faire la réfraction, et utiliser la fiche complète.</translation>
    </message>
    <message>
        <source>Type the near power in quarters of a dioptre: 2.25 or 225.</source>
        <translation>Saisir la puissance de près en quarts de dioptrie : 2.25 ou 225.</translation>
    </message>
    <message>
        <source>A hand-over needs a code for the person.</source>
        <translation>Une remise demande un code pour la personne.</translation>
    </message>
</context>
<context>
    <name>quarterstep::SendOutPanel</name>
    <message>
        <source>As</source>
        <translation>Sous forme de</translation>
    </message>
    <message>
        <source>An open standard, or a table that any program takes</source>
        <translation>Un standard ouvert, ou un tableau que tout programme accepte</translation>
    </message>
    <message>
        <source>HL7 FHIR (JSON, R4 and R5)</source>
        <translation>HL7 FHIR (JSON, R4 et R5)</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>Tableau (CSV)</translation>
    </message>
    <message>
        <source>Lines of JSON</source>
        <translation>Lignes de JSON</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Everybody in the list, or the person on the card</source>
        <translation>Tous ceux de la liste, ou la personne de la fiche</translation>
    </message>
    <message>
        <source>Everybody in the list</source>
        <translation>Tous ceux de la liste</translation>
    </message>
    <message>
        <source>The person on the card</source>
        <translation>La personne de la fiche</translation>
    </message>
    <message>
        <source>What stays here, or leaves otherwise</source>
        <translation>Ce qui reste ici, ou sort autrement</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>To the place before</source>
        <translation>À l’endroit d’avant</translation>
    </message>
    <message>
        <source>Write the file…</source>
        <translation>Écrire le fichier…</translation>
    </message>
    <message>
        <source>Asks for a name and writes; symptoms and the guardian stay here</source>
        <translation>Demande un nom et écrit ; les symptômes et le tuteur restent ici</translation>
    </message>
    <message>
        <source>Nobody is there to be sent out.</source>
        <translation>Il n’y a personne à exporter.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s), each with the profile, version and hash of the rules of this camp</source>
        <translation>
            <numerusform>%n prescription, avec le profil, la version et l’empreinte des règles de ce camp</numerusform>
            <numerusform>%n prescriptions, chacune avec le profil, la version et l’empreinte des règles de ce camp</numerusform>
        </translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Écrire le fichier</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Écriture…</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) are in %1.</source>
        <translation>
            <numerusform>%n prescription est dans %1.</numerusform>
            <numerusform>%n prescriptions sont dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>DICOM (Subjective Refraction)</source>
        <translation>DICOM (réfraction subjective)</translation>
    </message>
    <message>
        <source>Check first, or write; then it stands here.</source>
        <translation>Vérifiez d&apos;abord, ou écrivez ; cela apparaît alors ici.</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>Vérifier d&apos;abord</translation>
    </message>
    <message>
        <source>Shows what stays here; nothing is written</source>
        <translation>Montre ce qui reste ici ; rien n&apos;est écrit</translation>
    </message>
    <message>
        <source>one file a person, in a folder</source>
        <translation>un fichier par personne, dans un dossier</translation>
    </message>
    <message>
        <source>Write the files…</source>
        <translation>Écrire les fichiers…</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>Dossier pour les fichiers</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>Vérification…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Arrêté. Rien n&apos;a été écrit.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) can leave; nothing was written.</source>
        <translation>
            <numerusform>%n prescription peut partir ; rien n&apos;a été écrit.</numerusform>
            <numerusform>%n prescriptions peuvent partir ; rien n&apos;a été écrit.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::SettingsPage</name>
    <message>
        <source>Optician: hands over, orders</source>
        <translation>Opticien : remet, commande</translation>
    </message>
    <message>
        <source>Keeper: counts, receives, moves stock</source>
        <translation>Gardien : compte, reçoit, déplace</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>Cet ordinateur</translation>
    </message>
    <message>
        <source>Kept for you on this laptop.</source>
        <translation>Gardé pour vous sur cet ordinateur.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Apparence</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>Clair, sombre ou soleil : noir sur blanc et grand, pour le plein air</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Soleil</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Taille des lettres</translation>
    </message>
    <message>
        <source>In per cent of the usual; also Ctrl++ and Ctrl+-</source>
        <translation>En pour cent de la taille normale ; aussi Ctrl++ et Ctrl+-</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Language of the window, at once</source>
        <translation>Langue de la fenêtre, tout de suite</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Imprimante</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation>Imprimante de cet ordinateur pour fiches et lettres</translation>
    </message>
    <message>
        <source>This camp</source>
        <translation>Ce camp</translation>
    </message>
    <message>
        <source>Kept in the camp folder, for everybody who opens it.</source>
        <translation>Gardé dans le dossier du camp, pour tous ceux qui l’ouvrent.</translation>
    </message>
    <message>
        <source>Cylinders are written</source>
        <translation>Cylindres écrits en</translation>
    </message>
    <message>
        <source>Form in which pairs and orders show a cylinder; typed prescriptions stay as typed</source>
        <translation>Forme sous laquelle paires et commandes montrent un cylindre ; les prescriptions saisies restent telles quelles</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>moins</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>Acuities are shown</source>
        <translation>Acuités affichées</translation>
    </message>
    <message>
        <source>Notation on the card; the record keeps what was typed</source>
        <translation>Notation sur la fiche ; le relevé garde ce qui a été saisi</translation>
    </message>
    <message>
        <source>as recorded</source>
        <translation>comme noté</translation>
    </message>
    <message>
        <source>decimal</source>
        <translation>décimal</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Évalué selon</translation>
    </message>
    <message>
        <source>Profile of limits for everybody; by itself the desk chooses by age and purpose</source>
        <translation>Profil de limites pour tous ; sinon le poste choisit selon l’âge et l’usage</translation>
    </message>
    <message>
        <source>PINs</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation>De qui le PIN est défini ou supprimé</translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>PIN demandé maintenant</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation>Le PIN du superviseur s’il y en a un, sinon le PIN actuel de ce rôle</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>Nouveau PIN</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation>%1 à %2 caractères</translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>Supprimer le PIN</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation>Aucun PIN n’est plus demandé à ce rôle</translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>Définir le PIN</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation>Ce PIN est désormais demandé à ce rôle</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>comme le système</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>aucune choisie</translation>
    </message>
    <message>
        <source>%1 (not here now)</source>
        <translation>%1 (absente)</translation>
    </message>
    <message>
        <source>chosen by age and purpose</source>
        <translation>choisi selon l’âge et l’usage</translation>
    </message>
    <message>
        <source>No role has a PIN.</source>
        <translation>Aucun rôle n’a de PIN.</translation>
    </message>
    <message>
        <source>With a PIN: %1</source>
        <translation>Avec PIN : %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>Le PIN a été supprimé.</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>Le PIN a été défini.</translation>
    </message>
    <message>
        <source>Supervisor: settings of the camp, lots, names, exports, PINs</source>
        <translation>Superviseur : réglages du camp, lots, noms, exports, PIN</translation>
    </message>
    <message>
        <source>A guard against slips, no lock. Asked for here and at the command line. Kept with the ledger.</source>
        <translation>Une protection contre les erreurs, pas un verrou. Demandé ici et en ligne de commande. Gardé avec le registre.</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockPlace</name>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message>
        <source>Look for a line</source>
        <translation>Chercher un article</translation>
    </message>
    <message>
        <source>Look for a line, a power, a bin</source>
        <translation>Chercher article, puissance, casier</translation>
    </message>
    <message>
        <source>Shows only lines in which these words stand (Ctrl+F)</source>
        <translation>Montre seulement les articles contenant ces mots (Ctrl+F)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation>Les articles l’un sous l’autre</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation>Combien de pièces de chaque puissance</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Boîte</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation>Les casiers comme ils sont dans la boîte</translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>Articles du stock</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation>Choisir un article pour voir sa fiche et inscrire ce qui s’est passé</translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>Casiers de la boîte</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation>Choisir un casier : son article est montré à côté</translation>
    </message>
    <message>
        <source>Ready-made pairs</source>
        <translation>Paires prémontées</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>Verres</translation>
    </message>
    <message>
        <source>Bar: available · hatched: kept aside · line across: keep at least this many. A click looks for that power.</source>
        <translation>Barre : disponible · hachures : mis de côté · trait : garder au moins autant. Un clic cherche cette puissance.</translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>Fiche de l’article</translation>
    </message>
    <message>
        <source>Everything that happened to this line, newest first</source>
        <translation>Tout ce qui est arrivé à cet article, le plus récent d’abord</translation>
    </message>
    <message>
        <source>A count is blind: what the book says comes back into sight once the count is entered.</source>
        <translation>Un comptage est aveugle : ce que dit le registre réapparaît une fois le comptage inscrit.</translation>
    </message>
    <message>
        <source>Counts edited in stock.yaml by hand</source>
        <translation>Nombres modifiés à la main dans stock.yaml</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Reason, for taking them over</source>
        <translation>Motif, pour les reprendre</translation>
    </message>
    <message>
        <source>Why the counts in the file are the right ones; kept with the entry</source>
        <translation>Pourquoi les nombres du fichier sont les bons ; gardé avec l’inscription</translation>
    </message>
    <message>
        <source>Put the ledger&apos;s counts back</source>
        <translation>Remettre les nombres du registre</translation>
    </message>
    <message>
        <source>The file gets the counts of the ledger again</source>
        <translation>Le fichier retrouve les nombres du registre</translation>
    </message>
    <message>
        <source>Take the file&apos;s counts over</source>
        <translation>Reprendre les nombres du fichier</translation>
    </message>
    <message>
        <source>The ledger gets an entry with the difference and the reason</source>
        <translation>Le registre reçoit une inscription avec la différence et le motif</translation>
    </message>
    <message>
        <source>No line is chosen</source>
        <translation>Aucun article choisi</translation>
    </message>
    <message>
        <source>Choose a line in the table or a bin in the box.</source>
        <translation>Choisir un article du tableau ou un casier de la boîte.</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>casier %1</translation>
    </message>
    <message>
        <source>lines %1</source>
        <translation>articles %1</translation>
    </message>
    <message>
        <source>none left in %1</source>
        <translation>épuisés %1</translation>
    </message>
    <message>
        <source>within keep levels %1 of %2</source>
        <translation>niveaux respectés %1 sur %2</translation>
    </message>
    <message>
        <source>to reorder %1</source>
        <translation>à commander %1</translation>
    </message>
    <message>
        <source>handed over %1</source>
        <translation>remis %1</translation>
    </message>
    <message>
        <source>Nothing matches “%1”; empty the field to see all %2 lines.</source>
        <translation>Rien ne correspond à « %1 » ; vider le champ pour voir les %2 articles.</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>%1 articles sur %2</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation>en stock %1, était %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>repris au poste</translation>
    </message>
    <message>
        <source>Taken back: the counts are as before.</source>
        <translation>Annulé : les comptes sont comme avant.</translation>
    </message>
    <message>
        <source>%1: the file says %2, the ledger %3</source>
        <translation>%1 : le fichier dit %2, le registre %3</translation>
    </message>
    <message>
        <source>Write why the counts in the file are the right ones.</source>
        <translation>Écrire pourquoi les nombres du fichier sont les bons.</translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) taken over from the file.</source>
        <translation>
            <numerusform>%n nombre repris du fichier.</numerusform>
            <numerusform>%n nombres repris du fichier.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) put back to the ledger&apos;s.</source>
        <translation>
            <numerusform>%n nombre remis à celui du registre.</numerusform>
            <numerusform>%n nombres remis à ceux du registre.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count the bin that was used most</source>
        <translation>Compter le casier le plus utilisé</translation>
    </message>
    <message>
        <source>Count it now</source>
        <translation>Le compter maintenant</translation>
    </message>
    <message>
        <source>Begins a blind count of this one bin (F8)</source>
        <translation>Commence un comptage aveugle de ce seul casier (F8)</translation>
    </message>
    <message numerus="yes">
        <source>Bin %1 was reached into %n time(s) since it was counted.</source>
        <translation>
            <numerusform>On a puisé %n fois dans le casier %1 depuis son dernier comptage.</numerusform>
            <numerusform>On a puisé %n fois dans le casier %1 depuis son dernier comptage.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more bin(s) wait for a count.</source>
        <translation>
            <numerusform>%n autre casier attend un comptage.</numerusform>
            <numerusform>%n autres casiers attendent un comptage.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count bin %1: %2. Two persons; what the book says comes afterwards.</source>
        <translation>Compter le casier %1 : %2. Deux personnes ; ce que dit le registre vient après.</translation>
    </message>
    <message>
        <source>Packing</source>
        <translation>Emballage</translation>
    </message>
    <message>
        <source>What to buy and pack for the next camp</source>
        <translation>Qu’acheter et emballer pour le prochain camp</translation>
    </message>
    <message>
        <source>Transfers</source>
        <translation>Transferts</translation>
    </message>
    <message>
        <source>Pieces sent to other sites, and what comes from them</source>
        <translation>Pièces envoyées à d’autres sites, et ce qui en vient</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Stock : %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockWorkPanel</name>
    <message>
        <source>Enter in the ledger</source>
        <translation>Inscrire au registre</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>What is entered about the chosen line</source>
        <translation>Ce qui est inscrit pour l’article choisi</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Reçu</translation>
    </message>
    <message>
        <source>Counted by two</source>
        <translation>Compté à deux</translation>
    </message>
    <message>
        <source>Written off</source>
        <translation>Sorti du stock</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Réserver</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Libérer</translation>
    </message>
    <message>
        <source>Quarantine</source>
        <translation>Quarantaine</translation>
    </message>
    <message>
        <source>Release from quarantine</source>
        <translation>Sortir de quarantaine</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Cause</translation>
    </message>
    <message>
        <source>Why the count changes</source>
        <translation>Pourquoi le nombre change</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non dit</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>How many pieces</source>
        <translation>Combien de pièces</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation>Code de camp de la personne pour qui elles sont gardées ; peut rester vide</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation>Le motif, ou de qui elles viennent ; gardé avec l’inscription</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Vos initiales</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Qui inscrit ceci ; reste pour l’inscription suivante</translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>Secondes initiales</translation>
    </message>
    <message>
        <source>The other person who counted; stays for the next entry</source>
        <translation>L’autre personne qui a compté ; reste pour l’inscription suivante</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Annule la dernière inscription de cet endroit (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Writes it into the ledger (Enter in a field)</source>
        <translation>L’écrit au registre (Entrée dans un champ)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Enter about %1</source>
        <translation>Inscrire pour %1</translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation>Choisir un article</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>Choisir d’abord un article.</translation>
    </message>
    <message>
        <source>Write the number of pieces in digits.</source>
        <translation>Écrire le nombre de pièces en chiffres.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>Rien ne se passe avec 0 pièce.</translation>
    </message>
    <message>
        <source>A count needs the initials of two persons.</source>
        <translation>Un comptage demande les initiales de deux personnes.</translation>
    </message>
    <message>
        <source>Two different persons count.</source>
        <translation>Deux personnes différentes comptent.</translation>
    </message>
    <message>
        <source>Choose the cause.</source>
        <translation>Choisir la cause.</translation>
    </message>
</context>
<context>
    <name>quarterstep::TableReading</name>
    <message>
        <source>Found: decimal %1; cylinders: %2 minus, %3 plus, %4 without a sign; %5 spheres without a sign</source>
        <translation>Trouvé : décimales %1 ; cylindres : %2 en moins, %3 en plus, %4 sans signe ; %5 sphères sans signe</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation>Entre colonnes</translation>
    </message>
    <message>
        <source>What stands between two cells</source>
        <translation>Ce qui sépare deux cellules</translation>
    </message>
    <message>
        <source>comma ,</source>
        <translation>virgule ,</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <translation>point-virgule ;</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barre |</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signe décimal</translation>
    </message>
    <message>
        <source>When one is chosen, a number with the other one is refused</source>
        <translation>Quand l’un est choisi, un nombre avec l’autre est refusé</translation>
    </message>
    <message>
        <source>point or comma</source>
        <translation>point ou virgule</translation>
    </message>
    <message>
        <source>refuse the row</source>
        <translation>refuser la ligne</translation>
    </message>
    <message>
        <source>are plus</source>
        <translation>comptent en plus</translation>
    </message>
    <message>
        <source>are minus</source>
        <translation>comptent en moins</translation>
    </message>
    <message>
        <source>Spheres without a sign</source>
        <translation>Sphères sans signe</translation>
    </message>
    <message>
        <source>Ask whoever made the table before you choose</source>
        <translation>Demander à l’auteur du tableau avant de choisir</translation>
    </message>
    <message>
        <source>Cylinders without a sign</source>
        <translation>Cylindres sans signe</translation>
    </message>
    <message>
        <source>Columns of the table</source>
        <translation>Colonnes du tableau</translation>
    </message>
    <message>
        <source>What each column is taken for; Enter, F2 or a click changes it</source>
        <translation>Ce pour quoi chaque colonne est prise ; Entrée, F2 ou un clic le change</translation>
    </message>
</context>
<context>
    <name>quarterstep::TransferPanel</name>
    <message>
        <source>In the air</source>
        <translation>En route</translation>
    </message>
    <message>
        <source>Transfers in the air</source>
        <translation>Transferts en route</translation>
    </message>
    <message>
        <source>What was sent and not yet taken in; Enter takes the chosen one in</source>
        <translation>Ce qui a été envoyé et pas encore reçu ; Entrée reçoit le transfert choisi</translation>
    </message>
    <message>
        <source>Take in as sent</source>
        <translation>Recevoir comme envoyé</translation>
    </message>
    <message>
        <source>Fills the list beside with what was sent, to be counted and entered</source>
        <translation>Remplit la liste à côté avec ce qui a été envoyé, à compter et à inscrire</translation>
    </message>
    <message>
        <source>Send or take in</source>
        <translation>Envoyer ou recevoir</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Ce qui se passe</translation>
    </message>
    <message>
        <source>Whether pieces leave this site or come to it</source>
        <translation>Si des pièces quittent ce site ou y arrivent</translation>
    </message>
    <message>
        <source>Send to another site</source>
        <translation>Envoyer à un autre site</translation>
    </message>
    <message>
        <source>Take in from another site</source>
        <translation>Recevoir d’un autre site</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>The other site, as it is called in its stock.yaml</source>
        <translation>L’autre site, tel qu’il est nommé dans son stock.yaml</translation>
    </message>
    <message>
        <source>Lines of this transfer</source>
        <translation>Articles de ce transfert</translation>
    </message>
    <message>
        <source>What goes or comes; choose a row to change its number</source>
        <translation>Ce qui part ou arrive ; choisir une ligne pour changer son nombre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Kept with the entry</source>
        <translation>Gardé avec l’inscription</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Vos initiales</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Qui inscrit ceci ; reste pour l’inscription suivante</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Article</translation>
    </message>
    <message>
        <source>Line, typed or scanned</source>
        <translation>Article, saisi ou scanné</translation>
    </message>
    <message>
        <source>Name of a line, or the digits of its label; Enter goes on to the pieces</source>
        <translation>Nom d’un article, ou les chiffres de son étiquette ; Entrée passe aux pièces</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>How many pieces; 0 takes the line out of the list</source>
        <translation>Combien de pièces ; 0 retire l’article de la liste</translation>
    </message>
    <message>
        <source>Into the list</source>
        <translation>Dans la liste</translation>
    </message>
    <message>
        <source>Puts line and pieces into the list (Enter in the pieces)</source>
        <translation>Met l’article et les pièces dans la liste (Entrée dans les pièces)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Annule la dernière inscription de cet endroit (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation>Vider la liste</translation>
    </message>
    <message>
        <source>Begins anew; nothing is entered (Ctrl+E)</source>
        <translation>Recommence à neuf ; rien n’est inscrit (Ctrl+E)</translation>
    </message>
    <message>
        <source>Enter in the ledger</source>
        <translation>Inscrire au registre</translation>
    </message>
    <message>
        <source>Writes the list into the ledger (Ctrl+Enter)</source>
        <translation>Écrit la liste dans le registre (Ctrl+Entrée)</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>Envoyé</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Articles</translation>
    </message>
    <message>
        <source>Nothing was sent that is not yet taken in, as far as this ledger knows.</source>
        <translation>Rien n’a été envoyé qui ne soit déjà reçu, d’après ce registre.</translation>
    </message>
    <message numerus="yes">
        <source>%n sent and not taken in</source>
        <translation>
            <numerusform>%n envoyé et non reçu</numerusform>
            <numerusform>%n envoyés et non reçus</numerusform>
        </translation>
    </message>
    <message>
        <source>to this site %1</source>
        <translation>vers ce site %1</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casier</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponible</translation>
    </message>
    <message>
        <source>%1: bin %2, available %3</source>
        <translation>%1 : casier %2, disponible %3</translation>
    </message>
    <message>
        <source>Put lines and pieces into the list first.</source>
        <translation>Mettre d’abord articles et pièces dans la liste.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>Rien ne se passe avec 0 pièce.</translation>
    </message>
    <message>
        <source>Name the other site.</source>
        <translation>Nommer l’autre site.</translation>
    </message>
    <message numerus="yes">
        <source>Sent to %1: %n piece(s)</source>
        <translation>
            <numerusform>Envoyé à %1 : %n pièce</numerusform>
            <numerusform>Envoyé à %1 : %n pièces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken in from %1: %n piece(s)</source>
        <translation>
            <numerusform>Reçu de %1 : %n pièce</numerusform>
            <numerusform>Reçu de %1 : %n pièces</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on hand %2, was %3</source>
        <translation>%1 en stock %2, était %3</translation>
    </message>
</context>
<context>
    <name>quarterstep::TrayPage</name>
    <message>
        <source>Start my own camp</source>
        <translation>Créer mon camp</translation>
    </message>
    <message>
        <source>Name of the camp or box</source>
        <translation>Nom du camp ou de la boîte</translation>
    </message>
    <message>
        <source>Stands on every paper and at the top of the window</source>
        <translation>Figure sur chaque papier et en haut de la fenêtre</translation>
    </message>
    <message>
        <source>The trays, one a line: powers, a colon, how many in each bin</source>
        <translation>Les plateaux, un par ligne : puissances, deux-points, nombre par casier</translation>
    </message>
    <message>
        <source>The trays</source>
        <translation>Les plateaux</translation>
    </message>
    <message>
        <source>Powers in dioptres with their sign, from … to … by a step; then a colon and the count. After the count: centres in mm, bin, round lens size in mm</source>
        <translation>Puissances en dioptries avec leur signe, de … à … (to) par un pas (by) ; puis deux-points et le nombre. Après le nombre : centres en mm (centres), casier (bin), taille du verre rond en mm (round)</translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>Dossier de destination</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation>Créé s’il manque ; un stock.yaml déjà présent n’est jamais remplacé</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Choisir le dossier…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation>Cherche un dossier sur cet ordinateur</translation>
    </message>
    <message>
        <source>Add readers</source>
        <translation>Ajouter des lunettes de lecture</translation>
    </message>
    <message>
        <source>Add distance pairs</source>
        <translation>Ajouter des paires de loin</translation>
    </message>
    <message>
        <source>Add lenses and frames</source>
        <translation>Ajouter verres et montures</translation>
    </message>
    <message>
        <source>Writes an example below the trays, to be changed</source>
        <translation>Écrit un exemple sous les plateaux, à modifier</translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>Le stock obtenu</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation>Casier, article, puissance en dioptries et nombre de chaque article</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation>Quitte cette page ; ce qui est saisi reste tant que la fenêtre est ouverte</translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>Créer ce camp</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation>Écrit stock.yaml dans le dossier et l’ouvre</translation>
    </message>
    <message>
        <source>my camp</source>
        <translation>mon camp</translation>
    </message>
    <message>
        <source>Folder for the new camp</source>
        <translation>Dossier du nouveau camp</translation>
    </message>
    <message>
        <source>Line %1, character %2: %3</source>
        <translation>Ligne %1, caractère %2 : %3</translation>
    </message>
    <message>
        <source>The camp has no name yet.</source>
        <translation>Le camp n’a pas encore de nom.</translation>
    </message>
    <message>
        <source>%1 lines, %2 pieces</source>
        <translation>%1 articles, %2 pièces</translation>
    </message>
    <message>
        <source>Nothing is typed yet. The buttons under the trays write examples to change.</source>
        <translation>Rien n’est encore saisi. Les boutons sous les plateaux écrivent des exemples à modifier.</translation>
    </message>
</context>
<context>
    <name>quarterstep::WaitingModel</name>
    <message>
        <source>row %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>given %1</source>
        <translation>remis %1</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>attend</translation>
    </message>
    <message>
        <source>Right %1</source>
        <translation>Droit %1</translation>
    </message>
    <message>
        <source>Left %1</source>
        <translation>Gauche %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
</context>
<context>
    <name>quarterstep::WhyPanel</name>
    <message>
        <source>Clear from %1 cm on.</source>
        <translation>Net à partir de %1 cm.</translation>
    </message>
    <message>
        <source>Clear from %1 to %2 cm.</source>
        <translation>Net de %1 à %2 cm.</translation>
    </message>
    <message>
        <source>Why this pair</source>
        <translation>Pourquoi cette paire</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Croix</translation>
    </message>
    <message>
        <source>Above another</source>
        <translation>Avant une autre</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation>Montre les mêmes valeurs en tableau</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Image</translation>
    </message>
    <message>
        <source>Why: criteria of the chosen pair</source>
        <translation>Pourquoi : critères de la paire choisie</translation>
    </message>
    <message>
        <source>Measured values and limits, each with its unit and source</source>
        <translation>Valeurs mesurées et limites, chacune avec son unité et sa source</translation>
    </message>
    <message>
        <source>Optical crosses as a table</source>
        <translation>Croix optiques en tableau</translation>
    </message>
    <message>
        <source>Powers in dioptres along their meridians, degrees</source>
        <translation>Puissances en dioptries le long de leurs méridiens, degrés</translation>
    </message>
    <message>
        <source>The chosen pair and</source>
        <translation>La paire choisie et</translation>
    </message>
    <message>
        <source>Pair to compare with</source>
        <translation>Paire à comparer</translation>
    </message>
    <message>
        <source>The other pair of the list that the chosen one is compared with</source>
        <translation>L’autre paire de la liste à laquelle la paire choisie est comparée</translation>
    </message>
    <message>
        <source>Choose a pair: why it stands above or below another is said here.</source>
        <translation>Choisir une paire : pourquoi elle est avant ou après une autre est dit ici.</translation>
    </message>
    <message>
        <source>There is no other pair to compare with.</source>
        <translation>Il n’y a pas d’autre paire à comparer.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Devant</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>prudence</translation>
    </message>
    <message>
        <source>error</source>
        <translation>erreur</translation>
    </message>
    <message>
        <source>from stock</source>
        <translation>du stock</translation>
    </message>
    <message>
        <source>custom order</source>
        <translation>commande sur mesure</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>non nécessaire</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incomplet</translation>
    </message>
    <message>
        <source>refer</source>
        <translation>orienter</translation>
    </message>
    <message>
        <source>no referral</source>
        <translation>sans orientation</translation>
    </message>
    <message>
        <source>with a referral letter</source>
        <translation>avec une lettre d’orientation</translation>
    </message>
    <message>
        <source>refer before any glasses</source>
        <translation>orienter avant toutes lunettes</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>habituel</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bientôt</translation>
    </message>
    <message>
        <source>same day</source>
        <translation>le jour même</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>loin</translation>
    </message>
    <message>
        <source>near</source>
        <translation>près</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>intermédiaire</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifocale</translation>
    </message>
    <message>
        <source>distance and near</source>
        <translation>loin et près</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>convient</translation>
    </message>
    <message>
        <source>fits with caution</source>
        <translation>convient avec prudence</translation>
    </message>
    <message>
        <source>on trial</source>
        <translation>à l’essai</translation>
    </message>
    <message>
        <source>outside limit</source>
        <translation>hors limite</translation>
    </message>
    <message>
        <source>shown only</source>
        <translation>affiché seulement</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>prémontée</translation>
    </message>
    <message>
        <source>lens</source>
        <translation>verre</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>monture</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 int.</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>%1 ext.</translation>
    </message>
    <message>
        <source>no bin</source>
        <translation>sans casier</translation>
    </message>
    <message>
        <source>%1 bin %2</source>
        <translation>%1 casier %2</translation>
    </message>
    <message>
        <source>RIGHT %1 bin %2</source>
        <translation>DROIT %1 casier %2</translation>
    </message>
    <message>
        <source>LEFT %1 bin %2</source>
        <translation>GAUCHE %1 casier %2</translation>
    </message>
    <message>
        <source>frame %1 bin %2</source>
        <translation>monture %1 casier %2</translation>
    </message>
    <message>
        <source>right eye</source>
        <translation>œil droit</translation>
    </message>
    <message>
        <source>left eye</source>
        <translation>œil gauche</translation>
    </message>
</context>
</TS>
