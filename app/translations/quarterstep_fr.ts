<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>ChartData</name>
    <message>
        <source>%1 of %2 at odds, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair and record at odds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mismatches in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good hand-overs before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 good hand-overs before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks in order</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskOptions</name>
    <message>
        <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light, dark or sun (black on white, large)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrors the window; prescriptions stay left-to-right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>language of the window, for example ar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of the letters in per cent, 100 to 200</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paints the window into a PNG file and leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of the window in pixels, for example 1366x768</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loads this person of people.csv at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chooses this line of the stock at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--size %1 is not a size; write for example 1366x768</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--text-scale %1 is not from 100 to 200</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--place %1 is not known; write one of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--theme %1 is not known; write light, dark or sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one camp folder at a time, not %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no readable person %1 in people.csv</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no line %1 in this stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page to show at the start: dispense, stock, stock-ladder, stock-box, audit, audit-charts, audit-bench, opening, trays, settings, help or keys</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskWords</name>
    <message>
        <source>R %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L %1</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tried on: outside limit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>whole degrees up to 180</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarters of a dioptre up to 6.75</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>years up to 120</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres, or right and left as 31/30.5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarters of a dioptre, plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sign first, then quarters of a dioptre, the axis up to 180</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” was not taken: %2</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droit</translation>
    </message>
    <message>
        <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near, R</source>
        <translation>Près, D</translation>
    </message>
    <message>
        <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near, L</source>
        <translation>Près, G</translation>
    </message>
    <message>
        <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unaided, R</source>
        <translation>Sans corr., D</translation>
    </message>
    <message>
        <source>Right eye: acuity without spectacles, for example 6/18</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unaided, L</source>
        <translation>Sans corr., G</translation>
    </message>
    <message>
        <source>Left eye: acuity without spectacles, for example 6/18</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best, R</source>
        <translation>Meilleure, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this prescription, for example 6/6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best, L</source>
        <translation>Meilleure, G</translation>
    </message>
    <message>
        <source>Left eye: acuity with this prescription, for example 6/6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescripteur</translation>
    </message>
    <message>
        <source>Who signed the prescription; needed under 16 years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Objective, R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Objective, L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own pair, R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own pair, L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pinhole, R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye: acuity through a pinhole, for example 6/9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pinhole, L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye: acuity through a pinhole, for example 6/9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With own, R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye: acuity with the pair worn now, for example 6/12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With own, L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye: acuity with the pair worn now, for example 6/12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near, bare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest print read without spectacles, for example N12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near, best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest print read with this prescription, for example N6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance from the trial lens to the eye, millimetres; needed above 4.00 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance of near work from the spectacles, millimetres; 400 when empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complaints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the person complains of, in a few words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who was told about a child’s prescription</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>the folder %1 for the sample cannot be made; check rights and free space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not the PIN; nothing was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write both parts of the PD, right then left: 31/30.5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to print</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
    <name>quarterstep::AuditPlace</name>
    <message>
        <source>Audit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every hand-over is judged again by the rules and the stock of its moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audit again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads the ledger from the first entry to the last (F5)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows findings of one class only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for a finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for a person, a line, a word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows only findings in which these words stand (Ctrl+F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is to be said of hand-overs, one by one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often, by site, week and kind of pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots read again, who is to be seen again, the report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a finding to see need, pair and slips beside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Funnel: shares against the size of the group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs of good hand-overs (g-chart)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks (p-chart)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which picture is drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the groups of the funnel are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. Circle: inside · triangle: beyond the inner limit · diamond: beyond the outer. Nothing is ranked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The numbers of the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why, criterion by criterion:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the pair that was given is judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Better pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the pair that lay in the box is judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Criteria of the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each criterion with its value, its limit and the source of the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slips that the record allows. It speaks of the record; a person decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slips and their arithmetic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probability of each slip, and how it comes about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judging hand-overs again…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the ledger …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other work is going on; audit again when it has ended (F5).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Nothing was written; audit again with F5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The audit ended before its time; the reason stands above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand-overs %1, judged again %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair and record at odds: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>findings %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more are counted and not listed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is whole: %1 entries, each follows the one before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is NOT whole: %1 entries could be read, up to the first bad one. Keep the folder and compare it with a copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by who handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by kind of pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished">Droit</translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished">Gauche</translation>
    </message>
    <message>
        <source>%1: not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, was given %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pair %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the box lay %1 (bin %2): %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No slip was looked for: record, pair and witnesses agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below each: prior × witnesses × pair; the probability is its part of the sum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slips of the record cannot be tested here: nothing was measured beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No finding is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a finding in the list: what was needed, what was given and what lay in the box stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About the course of events</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Need, pair and findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was needed, what was given, what lay in the box; the text can be copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was handed over in this camp yet, so there is nothing to audit.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::BenchPanel</name>
    <message>
        <source>Lots read again at the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pairs to read:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pairs to read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as few as will do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a lot…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draws hand-overs by lot, enters the draw and writes the sheet for the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet for the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads a filled-in sheet, judges it and enters results and decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet from the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May fail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots drawn in this camp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be seen again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Personne</translation>
    </message>
    <message>
        <source>Given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished">Quand</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">État</translation>
    </message>
    <message>
        <source>Persons to be seen again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report: no names and no initials; small counts are hidden on the page for the site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page for the site…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One page for a browser, to be read by everybody at the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In detail…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything, for the supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing happened in this camp yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wearers %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met %1, of them wearing %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effective coverage of those who came %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn: %1 of %2 hand-overs; the sheet is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The report is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the report…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other work is going on; try again when it has ended.</source>
        <translation type="unfinished"></translation>
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
        <translation>case %1, %2, disponible %3</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>aucune rangée</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond the inner limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond the outer limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group or run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartView</name>
    <message>
        <source>Chart of the audit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation type="unfinished"></translation>
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
        <source>not measured</source>
        <translation>non mesuré</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left, need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right, pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left, pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right, left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left, left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Quoi</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation type="unfinished">Puissance (D)</translation>
    </message>
    <message>
        <source>Higher (D)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower (D)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossView</name>
    <message>
        <source>Optical crosses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture of need, pair and what is left; the same values stand in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powers in dioptres on the meridians they act in, as the examiner sees the eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left over</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Nouvelle personne</translation>
    </message>
    <message>
        <source>Puts the people of a prescription table into the waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load people…</source>
        <translation>Charger des personnes…</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>Camps…</translation>
    </message>
    <message>
        <source>Look, language, printer, camp, PINs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The manual, at the page for where you are</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What lies in the box, and what happened to it</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which pairs went wrong, and what slip did it</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pairs to pull</source>
        <translation>Paires à sortir</translation>
    </message>
    <message>
        <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>Ce dossier n’a pas de people.csv. Saisir une prescription ci-dessous ou charger un tableau.</translation>
    </message>
    <message numerus="yes">
        <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger&apos;s counts are used until the edits are accepted or discarded in Stock.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
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
        <translation>Les paires à sortir apparaîtront ici, la meilleure d’abord, avec leur case.</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is served: people of the table, or custom orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished">Article</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole prescription, or the short way for plain readers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain reader</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stands in the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is entered as referred.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A custom order for %1 is entered; it stands under Orders.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This stands in the ledger already: %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingsModel</name>
    <message>
        <source>a slip is likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished">Quand</translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Personne</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Quoi</translation>
    </message>
    <message>
        <source>In detail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::FocimeterRow</name>
    <message>
        <source>Read, R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation type="unfinished">G</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right lens: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left lens: %1</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power of this very pair was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit on the face</source>
        <translation>Ajustement sur le visage</translation>
    </message>
    <message>
        <source>Sits well at nose and ears, pupils behind the centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acuity with the pair</source>
        <translation>Acuité avec la paire</translation>
    </message>
    <message>
        <source>Each eye read the chart with this pair on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructions given</source>
        <translation>Conseils donnés</translation>
    </message>
    <message>
        <source>What it is for, how to care for it, when to come back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With pair, R</source>
        <translation>Avec la paire, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this pair on, for example 6/9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation>G</translation>
    </message>
    <message>
        <source>Left eye: acuity with this pair on, for example 6/9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near</source>
        <translation>près</translation>
    </message>
    <message>
        <source>Smallest print read with this pair on, for example N8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Why this pair is given all the same; kept with the entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Vos initiales</translation>
    </message>
    <message>
        <source>Who hands over; kept with the entry, may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over, print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands over and prints the note (Ctrl+Shift+Return)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes back what was entered last for this person today (Ctrl+Z)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prints what this person takes home (Ctrl+P)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enters that this person goes without a pair, and why (Ctrl+Shift+W)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power by focimeter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each eye by focimeter</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>Texte de la page</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::LineModel</name>
    <message>
        <source>none: waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none left: look before saying it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by hand: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>promised; %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Personne</translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished">Pour</translation>
    </message>
    <message>
        <source>Gets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::LinePanel</name>
    <message>
        <source>Waiting line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who gets which pair and why. Drop a pair on a person to pick it by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason for a pair picked by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason, for a pair by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this person gets another pair than planned; kept with the promise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All arrive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everybody of the table who has nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card arrives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The person on the card (Ctrl+J)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans anew, or stops planning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Promise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The person was told: no plan takes it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give chosen pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pair chosen in the list, by hand and with a reason (Ctrl+G)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The person left the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished">Arrêter</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody waits yet. Let the people of the table stand in line, or the one on the card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 get a pair; first come, first served would be %3. %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan serves more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good, not proved best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unpromise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this pair for %1? Type the reason and press Enter.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>reorder %n</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>lasts %1 camp days as used so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many camps of 100 people the available pieces last, as used so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Case</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends this work; nothing is changed by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Arrêt…</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Puts this message away</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>Ouvrir le camp d’exemple</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>Recommencer l’exemple</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>Retour au camp ouvert</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>Ce qui a été trouvé, avec fichier, ligne et colonne</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>Créer un camp dans ce dossier…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Personne</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">État</translation>
    </message>
    <message>
        <source>Since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersPanel</name>
    <message>
        <source>Find an order by the code of the person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part of a camp code; empty shows the open orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Custom orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Custom orders, newest change first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason or note for this step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept with the step; making again needs a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason or note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It came from the laboratory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power, axis and centres were read and agree with the order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The person has it and was checked with it on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the laboratory; a reason is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The person did not come for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R %1 · L %2 · prism %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · chance %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance within</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::PaperWorker</name>
    <message>
        <source>%1: sent to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: written to %2.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen pair, left eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lenses</source>
        <translation>verres</translation>
    </message>
    <message>
        <source>ready-made pairs</source>
        <translation>paires prêtes</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Mean (D)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half cylinder (D)</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished">Tableau</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation type="unfinished">Plan des puissances</translation>
    </message>
    <message>
        <source>Shows the same values as a table (Ctrl+T)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation type="unfinished">Plan des puissances en tableau</translation>
    </message>
    <message>
        <source>Powers in dioptres and how many can be given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R, L: the person&apos;s eyes · disc: pairs · diamond: lenses · cross: none left · dot: ranks · open ring: chosen pair. The larger, the more there are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished">Image</translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>lenses %1: %n available</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>pairs %1: %n available</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::PowerFields</name>
    <message>
        <source>Right eye, sphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye, sphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye, cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye, cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye, axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye, axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Axis in degrees. Up and Down step 1, with Shift 5</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends the practice; the sample stays open</source>
        <translation type="unfinished"></translation>
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
        <translation>La meilleure paire est en tête, avec sa case. Vous iriez la chercher, avec une voisine. Cocher les quatre contrôles une fois la paire sur le visage.</translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty; a person, the right and the left eye are needed</source>
        <translation>%1 est vide ; il faut la personne, l’œil droit et le gauche</translation>
    </message>
    <message>
        <source>Measured besides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three fields an eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sphere, cylinder and axis in fields of their own (Ctrl+E)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quarterstep::ReaderCard</name>
    <message>
        <source>Age</source>
        <translation type="unfinished">Âge</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance fine?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the person see well far away without spectacles? + is yes, - is no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes (+)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no (-)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near power by trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PD near</source>
        <translation type="unfinished">EP près</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Personne</translation>
    </message>
    <message>
        <source>Camp code of the person; one is offered, the paper card&apos;s may be typed over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in each eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask first whether the person sees well far away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then a reader alone is not enough: refract, and use the full card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the near power in quarters of a dioptre: 2.25 or 225.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hand-over needs a code for the person.</source>
        <translation type="unfinished"></translation>
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
        <source>Supervisor: names, exports, PINs</source>
        <translation>Superviseur : noms, exports, PIN</translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Imprimante</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PINs</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>A guard against slips at the command line, no lock. Kept with the ledger.</source>
        <translation>Contre les erreurs à la ligne de commande ; pas une serrure. Gardé avec le registre.</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>PIN demandé maintenant</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>Nouveau PIN</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>Supprimer le PIN</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>Définir le PIN</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>Le PIN a été supprimé.</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>Le PIN a été défini.</translation>
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
        <translation>Chercher article, puissance, case</translation>
    </message>
    <message>
        <source>Shows only lines in which these words stand (Ctrl+F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Boîte</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>Articles du stock</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>Cases de la boîte</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready-made pairs</source>
        <translation>Paires prêtes</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>Verres</translation>
    </message>
    <message>
        <source>Bar: available · hatched: kept aside · line across: keep at least this many. A click looks for that power.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>Fiche de l’article</translation>
    </message>
    <message>
        <source>Everything that happened to this line, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A count is blind: what the book says comes back into sight once the count is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts edited in stock.yaml by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Reason, for taking them over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why the counts in the file are the right ones; kept with the entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the ledger&apos;s counts back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file gets the counts of the ledger again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the file&apos;s counts over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ledger gets an entry with the difference and the reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line is chosen</source>
        <translation>Aucun article choisi</translation>
    </message>
    <message>
        <source>Choose a line in the table or a bin in the box.</source>
        <translation>Choisir un article du tableau ou une case de la boîte.</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>case %1</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>%1 articles sur %2</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write why the counts in the file are the right ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) taken over from the file.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) put back to the ledger&apos;s.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Vos initiales</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>Secondes initiales</translation>
    </message>
    <message>
        <source>The other person who counted; stays for the next entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes it into the ledger (Enter in a field)</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trays, one a line: powers, a colon, how many in each bin</source>
        <translation>Les plateaux, un par ligne : puissances, deux-points, nombre par case</translation>
    </message>
    <message>
        <source>The trays</source>
        <translation>Les plateaux</translation>
    </message>
    <message>
        <source>Powers in dioptres with their sign, from … to … by a step; then a colon and the count. After the count: centres in mm, bin, round lens size in mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>Dossier de destination</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Choisir le dossier…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>Le stock obtenu</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>Créer ce camp</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear from %1 to %2 cm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this pair</source>
        <translation type="unfinished">Pourquoi cette paire</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished">Tableau</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished">Image</translation>
    </message>
    <message>
        <source>Why: criteria of the chosen pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured values and limits, each with its unit and source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Optical crosses as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powers in dioptres along their meridians, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chosen pair and</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pair to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other pair of the list that the chosen one is compared with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a pair: why it stands above or below another is said here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no other pair to compare with.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
