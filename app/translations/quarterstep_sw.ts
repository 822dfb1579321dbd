<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="sw" sourcelanguage="en">
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
            <numerusform>na zaidi %n</numerusform>
            <numerusform>na zaidi %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is writing in the ledger. Trying again; Escape gives up. Nothing is lost.</source>
        <translation>Programu nyingine inaandika kwenye daftari. Inajaribu tena; Escape huacha. Hakuna kilichopotea.</translation>
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
        <translation>haijapimwa</translation>
    </message>
    <message>
        <source>%1 too strong</source>
        <translation>%1 kali mno</translation>
    </message>
    <message>
        <source>%1 too plus</source>
        <translation>%1 plus imezidi</translation>
    </message>
    <message>
        <source>%1 too weak</source>
        <translation>%1 dhaifu mno</translation>
    </message>
    <message>
        <source>%1 too minus</source>
        <translation>%1 minus imezidi</translation>
    </message>
    <message>
        <source>cylinder %1 left</source>
        <translation>silinda %1 imebaki</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>hakuna kilichobaki</translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggested</source>
        <translation>Imependekezwa</translation>
    </message>
    <message>
        <source>Fits with caution</source>
        <translation>Inafaa kwa tahadhari</translation>
    </message>
    <message>
        <source>On trial: type the acuity</source>
        <translation>Majaribio: andika uwezo wa kuona</translation>
    </message>
    <message>
        <source>Outside limit</source>
        <translation>Nje ya kikomo</translation>
    </message>
    <message>
        <source>right eye: %1</source>
        <translation>jicho la kulia: %1</translation>
    </message>
    <message>
        <source>left eye: %1</source>
        <translation>jicho la kushoto: %1</translation>
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
        <translation>Mtu</translation>
    </message>
    <message>
        <source>Camp code of the person, as on the paper card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Umri</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Kulia</translation>
    </message>
    <message>
        <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Kushoto</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Nyongeza</translation>
    </message>
    <message>
        <source>Near addition of both eyes, dioptres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PD far</source>
        <translation>PD mbali</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>PD karibu</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; worked out from the far one when empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near, R</source>
        <translation>Karibu, K</translation>
    </message>
    <message>
        <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near, L</source>
        <translation>Karibu, Ks</translation>
    </message>
    <message>
        <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unaided, R</source>
        <translation>Bila miwani, K</translation>
    </message>
    <message>
        <source>Right eye: acuity without spectacles, for example 6/18</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unaided, L</source>
        <translation>Bila miwani, Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity without spectacles, for example 6/18</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best, R</source>
        <translation>Bora, K</translation>
    </message>
    <message>
        <source>Right eye: acuity with this prescription, for example 6/6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best, L</source>
        <translation>Bora, Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity with this prescription, for example 6/6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Aliyeandika</translation>
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
        <translation>Inahitajika: %1</translation>
    </message>
    <message>
        <source>Referral: %1, %2</source>
        <translation>Rufaa: %1, %2</translation>
    </message>
    <message>
        <source>Measure again before handing over.</source>
        <translation>Pima tena kabla ya kukabidhi.</translation>
    </message>
    <message>
        <source>Purpose shown</source>
        <translation>Matumizi yanayoonyeshwa</translation>
    </message>
    <message>
        <source>Each purpose is judged alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>Kanuni: %1</translation>
    </message>
    <message>
        <source>%1  (rules: %2)</source>
        <translation>%1  (kanuni: %2)</translation>
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
        <translation type="unfinished">Kulia</translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished">Kushoto</translation>
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
        <translation type="unfinished">Mtu</translation>
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
        <translation type="unfinished">Lini</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">Hali</translation>
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
        <translation>macho yasiyolingana</translation>
    </message>
    <message>
        <source>none</source>
        <translation>hakuna</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>mistari %1</translation>
    </message>
    <message>
        <source>%1 low</source>
        <translation>%1 kidogo</translation>
    </message>
    <message>
        <source>bin %1, %2, available %3</source>
        <translation>kisanduku %1, %2, zipo %3</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>hakuna safu</translation>
    </message>
</context>
<context>
    <name>quarterstep::CardModel</name>
    <message>
        <source>held %1</source>
        <translation>imeshikiliwa %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>karantini %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>na %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Lini</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Nini</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Badiliko</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Zilizopo</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Maneno</translation>
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
        <translation>%1, kulia</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, kushoto</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>haijapimwa</translation>
    </message>
    <message>
        <source>Criterion</source>
        <translation>Kigezo</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Thamani</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Kikomo</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Kipimo</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Daraja</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Chanzo</translation>
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
        <translation type="unfinished">Nini</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation type="unfinished">Nguvu (D)</translation>
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
        <translation>Kuchagua kambi</translation>
    </message>
    <message>
        <source>Dispense</source>
        <translation>Kutoa miwani</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Akiba</translation>
    </message>
    <message>
        <source>Starting a camp</source>
        <translation>Kuanzisha kambi</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Mipangilio</translation>
    </message>
    <message>
        <source>SAMPLE: invented people, nothing here counts</source>
        <translation>MFANO: watu wa kubuni, hapa hakuna kinachohesabika</translation>
    </message>
    <message>
        <source>Empties the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Mtu mpya</translation>
    </message>
    <message>
        <source>Puts the people of a prescription table into the waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load people…</source>
        <translation>Pakia watu…</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>Kambi…</translation>
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
        <translation>Msaada</translation>
    </message>
    <message>
        <source>Look of the window</source>
        <translation>Sura ya dirisha</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Nuru</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Giza</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Jua</translation>
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
        <translation>Vitufe vyote vya dirisha</translation>
    </message>
    <message>
        <source>Next look: light, dark, sun</source>
        <translation>Sura ifuatayo: nuru, giza, jua</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>Herufi kubwa zaidi</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>Herufi ndogo zaidi</translation>
    </message>
    <message>
        <source>Usual letters</source>
        <translation>Herufi za kawaida</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Mchoro wa nguvu kama jedwali</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Ondoka</translation>
    </message>
    <message>
        <source>Quarterstep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>Inasoma %1…</translation>
    </message>
    <message>
        <source>%1 was not opened; what was found stands below.</source>
        <translation>%1 haikufunguliwa; kilichopatikana kiko hapa chini.</translation>
    </message>
    <message>
        <source>The card that was not handed over when the window went is back. Ctrl+N empties it.</source>
        <translation>Kadi ambayo haikukabidhiwa dirisha lilipofungwa imerudi. Ctrl+N huifuta.</translation>
    </message>
    <message>
        <source>Open a camp folder</source>
        <translation>Fungua folda ya kambi</translation>
    </message>
    <message>
        <source>Load people</source>
        <translation>Pakia watu</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Majedwali ya maagizo (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n zipo</numerusform>
            <numerusform>%n zipo</numerusform>
        </translation>
    </message>
    <message>
        <source>No camp is open</source>
        <translation>Hakuna kambi iliyofunguliwa</translation>
    </message>
    <message>
        <source>SAMPLE: %1: Quarterstep</source>
        <translation>MFANO: %1: Quarterstep</translation>
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
            <numerusform>%1: zimebaki %n</numerusform>
            <numerusform>%1: zimebaki %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has %2. %3.</source>
        <translation>%1 ana %2. %3.</translation>
    </message>
    <message>
        <source>Put back if pulled: %1</source>
        <translation>Rudisha kama ilitolewa: %1</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>imerudishwa mezani</translation>
    </message>
    <message>
        <source>People of the table</source>
        <translation>Watu wa jedwali</translation>
    </message>
    <message>
        <source>Choose a person: the card fills and pairs are suggested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prescription</source>
        <translation>Agizo la miwani</translation>
    </message>
    <message>
        <source>Suggest pairs</source>
        <translation>Pendekeza miwani</translation>
    </message>
    <message>
        <source>Searches the stock for this prescription (Enter in any field)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pairs to pull</source>
        <translation>Miwani ya kutoa</translation>
    </message>
    <message>
        <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>Folda hii haina people.csv. Andika agizo hapa chini, au pakia jedwali.</translation>
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
        <translation>Jedwali halina safu. Andika agizo hapa chini.</translation>
    </message>
    <message>
        <source>Choose a person or type a prescription; Enter suggests pairs.</source>
        <translation>Chagua mtu au andika agizo; Enter hupendekeza miwani.</translation>
    </message>
    <message>
        <source>The pairs to pull will stand here, best first, with their bins.</source>
        <translation>Miwani ya kutoa itaonekana hapa, bora kwanza, na visanduku vyake.</translation>
    </message>
    <message>
        <source>Nothing to pull for this purpose.</source>
        <translation>Hakuna cha kutoa kwa matumizi haya.</translation>
    </message>
    <message>
        <source>No pairs are shown until this is settled.</source>
        <translation>Miwani haitaonyeshwa hadi hili litatuliwe.</translation>
    </message>
    <message>
        <source>No pair of this stock comes near this need.</source>
        <translation>Hakuna miwani ya akiba hii inayokaribia hitaji hili.</translation>
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
        <translation type="unfinished">Mstari</translation>
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
        <translation type="unfinished">Lini</translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Mtu</translation>
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
        <translation type="unfinished">Nini</translation>
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
        <translation type="unfinished">Ks</translation>
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
        <translation>Kabidhi</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Rudisha</translation>
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
        <translation>Inakaa vizuri usoni</translation>
    </message>
    <message>
        <source>Sits well at nose and ears, pupils behind the centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acuity with the pair</source>
        <translation>Uwezo wa kuona na miwani</translation>
    </message>
    <message>
        <source>Each eye read the chart with this pair on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructions given</source>
        <translation>Maelezo yametolewa</translation>
    </message>
    <message>
        <source>What it is for, how to care for it, when to come back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With pair, R</source>
        <translation>Na miwani, K</translation>
    </message>
    <message>
        <source>Right eye: acuity with this pair on, for example 6/9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation>Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity with this pair on, for example 6/9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near</source>
        <translation>karibu</translation>
    </message>
    <message>
        <source>Smallest print read with this pair on, for example N8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Sababu</translation>
    </message>
    <message>
        <source>Why this pair is given all the same; kept with the entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Herufi zako</translation>
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
        <translation>Msaada: Quarterstep</translation>
    </message>
    <message>
        <source>Pages of the manual</source>
        <translation>Kurasa za mwongozo</translation>
    </message>
    <message>
        <source>Chooses a page of the manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>Maandishi ya ukurasa</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Funga</translation>
    </message>
</context>
<context>
    <name>quarterstep::KeySheet</name>
    <message>
        <source>Keys: Quarterstep</source>
        <translation>Vitufe: Quarterstep</translation>
    </message>
    <message>
        <source>All keys of the window</source>
        <translation>Vitufe vyote vya dirisha</translation>
    </message>
    <message>
        <source>All keys of the window; Escape closes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Funga</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Kila mahali</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from field to field; Space presses the button that is framed.</source>
        <translation>Tab na Shift+Tab huenda sehemu hadi sehemu; Space hubonyeza kitufe kilichozungushiwa.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LadderView</name>
    <message>
        <source>Stock ladder</source>
        <translation>Ngazi ya akiba</translation>
    </message>
    <message>
        <source>A picture of how many pieces of each power there are; the same numbers stand in the table of lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power (D)</source>
        <translation>nguvu (D)</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>vipande</translation>
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
        <translation type="unfinished">Mtu</translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished">Kwa</translation>
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
        <translation type="unfinished">Simamisha</translation>
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
        <translation>hakuna iliyobaki</translation>
    </message>
    <message>
        <source>below least</source>
        <translation>chini ya kiwango</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>inatosha</translation>
    </message>
    <message>
        <source>above most</source>
        <translation>juu ya kiwango</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>imeshikiliwa %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>karantini %1</translation>
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
        <translation>Kisanduku</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Mstari</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Nguvu</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Zilizopo</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Zinazopatikana</translation>
    </message>
    <message>
        <source>Kept aside</source>
        <translation>Zilizowekwa kando</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Kiwango</translation>
    </message>
    <message>
        <source>Camps</source>
        <translation>Kambi</translation>
    </message>
</context>
<context>
    <name>quarterstep::LongWork</name>
    <message>
        <source>Stop</source>
        <translation>Simamisha</translation>
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
        <translation>Inasimama…</translation>
    </message>
</context>
<context>
    <name>quarterstep::MessageBar</name>
    <message>
        <source>Copy code</source>
        <translation>Nakili msimbo</translation>
    </message>
    <message>
        <source>Copies the code of this message, to look it up in the help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Funga</translation>
    </message>
    <message>
        <source>Puts this message away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Imefanyika</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Haikufanyika</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>Inasubiri</translation>
    </message>
</context>
<context>
    <name>quarterstep::OpeningPage</name>
    <message>
        <source>Which camp?</source>
        <translation>Kambi gani?</translation>
    </message>
    <message>
        <source>A camp is a folder: stock.yaml says what exists and how many; the ledger of what was handed over is kept beside it.</source>
        <translation>Kambi ni folda: stock.yaml inasema kuna nini na ngapi; daftari la vilivyokabidhiwa liko kando yake.</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation>Tazama tu</translation>
    </message>
    <message>
        <source>A sample camp of invented people. What you do there stays in a copy of your own.</source>
        <translation>Kambi ya mfano yenye watu wa kubuni. Unachofanya kinabaki kwenye nakala yako.</translation>
    </message>
    <message>
        <source>Practise a hand-over, 3 minutes</source>
        <translation>Jizoeze kukabidhi, dakika 3</translation>
    </message>
    <message>
        <source>Opens the sample and tells each step beside the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>Fungua kambi ya mfano</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>Anza mfano upya</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start my own camp</source>
        <translation>Anzisha kambi yangu</translation>
    </message>
    <message>
        <source>Describe the trays of your box in a few lines; the desk writes the stock file.</source>
        <translation>Eleza trei za sanduku lako kwa mistari michache; faili ya akiba itaandikwa.</translation>
    </message>
    <message>
        <source>Describe my trays…</source>
        <translation>Eleza trei zangu…</translation>
    </message>
    <message>
        <source>A page where you type the trays and see the lines they make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a camp</source>
        <translation>Fungua kambi</translation>
    </message>
    <message>
        <source>A folder with a stock.yaml, on this laptop or on a stick.</source>
        <translation>Folda yenye stock.yaml, kwenye kompyuta hii au kifaa cha USB.</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>Chagua folda…</translation>
    </message>
    <message>
        <source>Chooses the folder with stock.yaml</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>Rudi kwenye kambi iliyofunguliwa</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>Kilichopatikana, na faili, mstari na safu</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>Anzisha kambi katika folda hii…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 haikufunguliwa</translation>
    </message>
    <message>
        <source>This folder has no stock.yaml. Choose the folder that has one, or start a camp here.</source>
        <translation>Folda hii haina stock.yaml. Chagua iliyo nayo, au anzisha kambi hapa.</translation>
    </message>
    <message>
        <source>Mend the file at the line and column named, with any text editor, and open the folder again. Nothing was written.</source>
        <translation>Rekebisha faili kwenye mstari na safu zilizotajwa, kwa kihariri chochote, kisha fungua folda tena. Hakuna kilichoandikwa.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Fungua %1</translation>
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
        <translation type="unfinished">Mtu</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">Hali</translation>
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
            <numerusform>%n hapa</numerusform>
            <numerusform>%n hapa</numerusform>
        </translation>
    </message>
    <message>
        <source>Nearest outside the limits</source>
        <translation>Iliyo karibu zaidi nje ya vikomo</translation>
    </message>
    <message>
        <source>same power: %1</source>
        <translation>nguvu sawa: %1</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Nguvu (D)</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye (D)</source>
        <translation>Jicho la kulia (D)</translation>
    </message>
    <message>
        <source>Left eye (D)</source>
        <translation>Jicho la kushoto (D)</translation>
    </message>
    <message>
        <source>Prism (Δ)</source>
        <translation>Prizimu (Δ)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Uamuzi</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Sababu</translation>
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
        <translation>hitaji, macho yote</translation>
    </message>
    <message>
        <source>need, right eye</source>
        <translation>hitaji, jicho la kulia</translation>
    </message>
    <message>
        <source>need, left eye</source>
        <translation>hitaji, jicho la kushoto</translation>
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
        <translation>lenzi</translation>
    </message>
    <message>
        <source>ready-made pairs</source>
        <translation>miwani iliyo tayari</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Nini</translation>
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
        <translation>Zinazopatikana</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlanePanel</name>
    <message>
        <source>Table</source>
        <translation type="unfinished">Jedwali</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation type="unfinished">Mchoro wa nguvu</translation>
    </message>
    <message>
        <source>Shows the same values as a table (Ctrl+T)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation type="unfinished">Mchoro wa nguvu kama jedwali</translation>
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
        <translation type="unfinished">Picha</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlotView</name>
    <message>
        <source>Power plane</source>
        <translation>Mchoro wa nguvu</translation>
    </message>
    <message>
        <source>A picture of the stock around this person&apos;s eyes; the same values stand in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean power (D)</source>
        <translation>nguvu ya wastani (D)</translation>
    </message>
    <message>
        <source>half the cylinder (D)</source>
        <translation>nusu ya silinda (D)</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>inafaa %1</translation>
    </message>
    <message>
        <source>on trial %1</source>
        <translation>majaribio %1</translation>
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
        <translation>Endelea</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Acha mazoezi</translation>
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
        <translation>Mtu anaketi. Bonyeza Ctrl+N upate kadi tupu, uandike msimbo %1 chini ya Mtu.</translation>
    </message>
    <message>
        <source>Tab to Age: type 30.</source>
        <translation>Tab hadi Umri: andika 30.</translation>
    </message>
    <message>
        <source>Right eye: type %1. Tab to the left eye and type the same.</source>
        <translation>Jicho la kulia: andika %1. Tab hadi jicho la kushoto, andika vivyo hivyo.</translation>
    </message>
    <message>
        <source>PD far: type 62. Enter asks for pairs.</source>
        <translation>PD mbali: andika 62. Enter huomba miwani.</translation>
    </message>
    <message>
        <source>The best pair stands first, with its bin. You would fetch it, and one neighbour. Tick the four checks once the pair is on the face.</source>
        <translation>Miwani bora iko kwanza, na kisanduku chake. Ungeileta, na jirani mmoja. Weka alama kwenye ukaguzi wote minne miwani ikiwa usoni.</translation>
    </message>
    <message>
        <source>Ctrl+Enter hands it over: the count goes down.</source>
        <translation>Ctrl+Enter hukabidhi: hesabu hupungua.</translation>
    </message>
    <message>
        <source>A mistake? Ctrl+Z takes the hand-over back the same day. Try it.</source>
        <translation>Kosa? Ctrl+Z hurudisha siku hiyo hiyo. Jaribu.</translation>
    </message>
    <message>
        <source>That was all. F1 opens the manual, Shift+F1 shows every key.</source>
        <translation>Ni hayo tu. F1 hufungua mwongozo, Shift+F1 huonyesha vitufe vyote.</translation>
    </message>
    <message>
        <source>Practice, step %1 of %2</source>
        <translation>Mazoezi, hatua %1 ya %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Imefanyika</translation>
    </message>
</context>
<context>
    <name>quarterstep::PrescriptionCard</name>
    <message>
        <source>Wanted for</source>
        <translation>Kwa ajili ya</translation>
    </message>
    <message>
        <source>What the spectacles are for; left open, the prescription decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation>wazi</translation>
    </message>
    <message>
        <source>Right eye, prescription</source>
        <translation>Jicho la kulia, agizo</translation>
    </message>
    <message>
        <source>Left eye, prescription</source>
        <translation>Jicho la kushoto, agizo</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Maumivu</translation>
    </message>
    <message>
        <source>Sudden loss of sight</source>
        <translation>Kupoteza kuona ghafla</translation>
    </message>
    <message>
        <source>Red eye</source>
        <translation>Jicho jekundu</translation>
    </message>
    <message>
        <source>New flashes or floaters</source>
        <translation>Mimweko au madoa mapya</translation>
    </message>
    <message>
        <source>Double vision</source>
        <translation>Kuona maradufu</translation>
    </message>
    <message>
        <source>White pupil</source>
        <translation>Mboni nyeupe</translation>
    </message>
    <message>
        <source>Squint</source>
        <translation>Makengeza</translation>
    </message>
    <message>
        <source>Drops asked for</source>
        <translation>Matone yameombwa</translation>
    </message>
    <message>
        <source>Lines look bent</source>
        <translation>Mistari inaonekana imepinda</translation>
    </message>
    <message>
        <source>Part of the view missing</source>
        <translation>Sehemu ya uoni haipo</translation>
    </message>
    <message>
        <source>Halos around lights</source>
        <translation>Miviringo kwenye taa</translation>
    </message>
    <message>
        <source>Signs seen or told</source>
        <translation>Dalili zilizoonekana au kusemwa</translation>
    </message>
    <message>
        <source>Tick when this was seen or told; it decides about a letter to the clinic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty; a person, the right and the left eye are needed</source>
        <translation>%1 ni tupu; mtu, jicho la kulia na la kushoto vinahitajika</translation>
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
        <translation type="unfinished">Umri</translation>
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
        <translation type="unfinished">PD karibu</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Mtu</translation>
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
        <translation>Mtaalamu wa miwani: hukabidhi, huagiza</translation>
    </message>
    <message>
        <source>Keeper: counts, receives, moves stock</source>
        <translation>Mtunza: huhesabu, hupokea, huhamisha</translation>
    </message>
    <message>
        <source>Supervisor: names, exports, PINs</source>
        <translation>Msimamizi: majina, usafirishaji, PIN</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>Kompyuta hii</translation>
    </message>
    <message>
        <source>Kept for you on this laptop.</source>
        <translation>Huhifadhiwa kwa ajili yako kwenye kompyuta hii.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Sura</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Nuru</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Giza</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Jua</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Ukubwa wa herufi</translation>
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
        <translation>Lugha</translation>
    </message>
    <message>
        <source>Language of the window, at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Printa</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This camp</source>
        <translation>Kambi hii</translation>
    </message>
    <message>
        <source>Kept in the camp folder, for everybody who opens it.</source>
        <translation>Huhifadhiwa kwenye folda ya kambi, kwa kila anayeifungua.</translation>
    </message>
    <message>
        <source>Cylinders are written</source>
        <translation>Silinda huandikwa</translation>
    </message>
    <message>
        <source>Form in which pairs and orders show a cylinder; typed prescriptions stay as typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minus</source>
        <translation>minus</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>Acuities are shown</source>
        <translation>Uwezo wa kuona huonyeshwa</translation>
    </message>
    <message>
        <source>Notation on the card; the record keeps what was typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as recorded</source>
        <translation>kama ilivyoandikwa</translation>
    </message>
    <message>
        <source>decimal</source>
        <translation>desimali</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Hupimwa kwa</translation>
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
        <translation>Kinga dhidi ya makosa kwenye mstari wa amri, si kufuli. Huhifadhiwa na daftari.</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Jukumu</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>PIN inayohitajika sasa</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>PIN mpya</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>Ondoa PIN</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>Weka PIN</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>kama mfumo</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>hakuna iliyochaguliwa</translation>
    </message>
    <message>
        <source>%1 (not here now)</source>
        <translation>%1 (haipo sasa)</translation>
    </message>
    <message>
        <source>chosen by age and purpose</source>
        <translation>huchaguliwa kwa umri na matumizi</translation>
    </message>
    <message>
        <source>No role has a PIN.</source>
        <translation>Hakuna jukumu lenye PIN.</translation>
    </message>
    <message>
        <source>With a PIN: %1</source>
        <translation>Yenye PIN: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>PIN imeondolewa.</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>PIN imewekwa.</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockPlace</name>
    <message>
        <source>Stock</source>
        <translation>Akiba</translation>
    </message>
    <message>
        <source>Look for a line</source>
        <translation>Tafuta mstari</translation>
    </message>
    <message>
        <source>Look for a line, a power, a bin</source>
        <translation>Tafuta mstari, nguvu, kisanduku</translation>
    </message>
    <message>
        <source>Shows only lines in which these words stand (Ctrl+F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Jedwali</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Ngazi</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Sanduku</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>Mistari ya akiba</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>Visanduku vya sanduku</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready-made pairs</source>
        <translation>Miwani iliyo tayari</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>Lenzi</translation>
    </message>
    <message>
        <source>Bar: available · hatched: kept aside · line across: keep at least this many. A click looks for that power.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>Kadi ya mstari</translation>
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
        <translation>Sababu</translation>
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
        <translation>Hakuna mstari uliochaguliwa</translation>
    </message>
    <message>
        <source>Choose a line in the table or a bin in the box.</source>
        <translation>Chagua mstari kwenye jedwali au kisanduku.</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>kisanduku %1</translation>
    </message>
    <message>
        <source>lines %1</source>
        <translation>mistari %1</translation>
    </message>
    <message>
        <source>none left in %1</source>
        <translation>zilizoisha %1</translation>
    </message>
    <message>
        <source>within keep levels %1 of %2</source>
        <translation>ndani ya kiwango %1 kati ya %2</translation>
    </message>
    <message>
        <source>to reorder %1</source>
        <translation>kuagiza %1</translation>
    </message>
    <message>
        <source>handed over %1</source>
        <translation>zilizokabidhiwa %1</translation>
    </message>
    <message>
        <source>Nothing matches “%1”; empty the field to see all %2 lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>mistari %1 kati ya %2</translation>
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
        <translation>imerudishwa mezani</translation>
    </message>
    <message>
        <source>Taken back: the counts are as before.</source>
        <translation>Imerudishwa: hesabu ni kama mwanzo.</translation>
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
        <translation>Andika kwenye daftari</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Rudisha</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Kilichotokea</translation>
    </message>
    <message>
        <source>What is entered about the chosen line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Imepokelewa</translation>
    </message>
    <message>
        <source>Counted by two</source>
        <translation>Imehesabiwa na wawili</translation>
    </message>
    <message>
        <source>Written off</source>
        <translation>Imefutwa</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Shikilia</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Achilia</translation>
    </message>
    <message>
        <source>Quarantine</source>
        <translation>Karantini</translation>
    </message>
    <message>
        <source>Release from quarantine</source>
        <translation>Toa karantini</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Chanzo</translation>
    </message>
    <message>
        <source>Why the count changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said</source>
        <translation>haikusemwa</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Vipande</translation>
    </message>
    <message>
        <source>How many pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation>Kwa</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Maneno</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Herufi zako</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>Herufi za pili</translation>
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
        <translation>Kutoka</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Sababu</translation>
    </message>
    <message>
        <source>Enter about %1</source>
        <translation>Andika kuhusu %1</translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation>Chagua mstari</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>Chagua mstari kwanza.</translation>
    </message>
    <message>
        <source>Write the number of pieces in digits.</source>
        <translation>Andika idadi ya vipande kwa tarakimu.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A count needs the initials of two persons.</source>
        <translation>Hesabu inahitaji herufi za watu wawili.</translation>
    </message>
    <message>
        <source>Two different persons count.</source>
        <translation>Watu wawili tofauti huhesabu.</translation>
    </message>
    <message>
        <source>Choose the cause.</source>
        <translation>Chagua chanzo.</translation>
    </message>
</context>
<context>
    <name>quarterstep::TrayPage</name>
    <message>
        <source>Start my own camp</source>
        <translation>Anzisha kambi yangu</translation>
    </message>
    <message>
        <source>Name of the camp or box</source>
        <translation>Jina la kambi au sanduku</translation>
    </message>
    <message>
        <source>Stands on every paper and at the top of the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trays, one a line: powers, a colon, how many in each bin</source>
        <translation>Trei, moja kwa mstari: nguvu, nukta mbili, ngapi kwa kisanduku</translation>
    </message>
    <message>
        <source>The trays</source>
        <translation>Trei</translation>
    </message>
    <message>
        <source>Powers in dioptres with their sign, from … to … by a step; then a colon and the count. After the count: centres in mm, bin, round lens size in mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>Folda ya kuwekwa</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Chagua folda…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add readers</source>
        <translation>Ongeza miwani ya kusomea</translation>
    </message>
    <message>
        <source>Add distance pairs</source>
        <translation>Ongeza miwani ya mbali</translation>
    </message>
    <message>
        <source>Add lenses and frames</source>
        <translation>Ongeza lenzi na fremu</translation>
    </message>
    <message>
        <source>Writes an example below the trays, to be changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>Akiba inayotokana</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rudi</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>Tengeneza kambi hii</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>my camp</source>
        <translation>kambi yangu</translation>
    </message>
    <message>
        <source>Folder for the new camp</source>
        <translation>Folda ya kambi mpya</translation>
    </message>
    <message>
        <source>Line %1, character %2: %3</source>
        <translation>Mstari %1, herufi %2: %3</translation>
    </message>
    <message>
        <source>The camp has no name yet.</source>
        <translation>Kambi bado haina jina.</translation>
    </message>
    <message>
        <source>%1 lines, %2 pieces</source>
        <translation>mistari %1, vipande %2</translation>
    </message>
    <message>
        <source>Nothing is typed yet. The buttons under the trays write examples to change.</source>
        <translation>Bado hakuna kilichoandikwa. Vitufe chini ya trei huandika mifano ya kubadilisha.</translation>
    </message>
</context>
<context>
    <name>quarterstep::WaitingModel</name>
    <message>
        <source>row %1</source>
        <translation>safu %1</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>haisomeki</translation>
    </message>
    <message>
        <source>given %1</source>
        <translation>imepewa %1</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>anasubiri</translation>
    </message>
    <message>
        <source>Right %1</source>
        <translation>Kulia %1</translation>
    </message>
    <message>
        <source>Left %1</source>
        <translation>Kushoto %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Mtu</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Umri</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Hali</translation>
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
        <translation type="unfinished">Kwa nini miwani hii</translation>
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
        <translation type="unfinished">Jedwali</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished">Picha</translation>
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
