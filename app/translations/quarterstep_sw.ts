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
    <message>
        <source>%1 is not under 16; print the note for the person instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this person has no camp code; give one before anything is printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing of %1 asks for a referral; there is no letter to print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a label of this size does not hold its text; choose a larger one with --label-size, or a shorter name: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no printer %1, and no other is set up here; write a PDF with --output and print it where there is one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no printer %1; there are %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the printer %1 does not take the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printing was stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no font here has the script of %1; install the package %2 and print again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 does not wait in this table for that purpose, or stands in the list twice; take the row out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no line %1 in this box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more people were told %1 than there are pieces of it; take a row out of the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not drawn: counts under %1 are hidden on this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no rules.yaml; the rules built in apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this ledger had an older form and was brought up; as it was it stands in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no ledger here yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing that was handed over to %1 stands here; look at the code, or enter the look at the site that gave the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to be referred before any glasses are given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is needed for this purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>these lines do not make a pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on trial: type the acuity with this pair first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an unequal pair: read each eye with the focimeter first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none left of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pair chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hand-over with the id %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped as asked; nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1 is not in the ledger of %2; nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1 stands here by its name and by its code; write one row with the whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no line %1 in stock.yaml of %2; add it there with on hand: 0, or mend the name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a count needs two persons; %1 cannot be both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1: counted %2, the book says %3; say why, in the row or with --reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1: %2 were sent, %3 arrived; the sender should know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this order is “%1” already; take back its last step %2 first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing that was received of lot %1 is available</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no entry %1 to take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this hand-over is of %1; a hand-over is taken back on its day only; if the pair came back, enter it as returned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing was handed over to %1 today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was given %2 pairs today; say which with --entry %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this order is “%1”; “%2” cannot follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no open order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has %2 open orders; say which with --order %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be written: %1; check rights and free space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something has this name already; name a place that is free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is the ledger of the camp itself; name another one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing in the box is better for this person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loses no more than the best for this person; others need that one more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was promised to %2 before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 goes to %2, for whom nothing else will do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 goes to %2, so that most are served and all together lose least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing that would do is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what would do goes to others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what would do goes to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>told before, but none is left now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>told before; not planned again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked by hand: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no sample up to %1 tells these shares apart at this risk; allow a larger risk, or take shares that lie further apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its draw was taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the results of this lot are in already, entry %1; to enter them anew take that one back first with `quarterstep record entered-in-error --entry`</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this row is of the lot %1, the first one of %2; enter each lot by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this lot has %1 rows, spares included; there is no row %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing was handed over here in those days whose pair is recorded; there is nothing to draw from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plan reads %1 pairs and only %2 were handed over; read all of them (--sample %2), or take more days into the lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no lot was drawn here yet; `quarterstep audit draw` does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no row of the worksheet is filled in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the demand is %1 person; plan from more: nothing can be said of who comes next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the budget is 0: nothing is bought; give --budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody of this demand can be served by any line on offer; nothing is bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pack on offer is within the budget, the weight and the boxes; nothing is bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is on hand serves whoever can be served; nothing is bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the library for PINs cannot be used here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a PIN has %1 to %2 characters; nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is not enough memory to keep a PIN; close other programs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody of this demand can be served from this box; no day was simulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the colon stands how many lie in each bin, then centres, bin or round: write for example &quot;: 10 centres 62 bin A&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a size in millimetres; write for example 62</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a ready-made pair with a cylinder needs its axis; write for example -1.00 -0.50 x 90</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 to %2 is no whole number of steps of %3; write spheres and a step that meets the last one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stands in an earlier tray already; put the counts together, or give the two different centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a frame is given by its lens and bridge in millimetres; write for example frame 44-18: 12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a tray is written as powers, a colon and a count: for example &quot;near +1.00 to +3.50 by 0.50: 10&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>these trays make more than %1 lines of stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the camp has no name yet; give it one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is described yet; write a tray a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this folder cannot be made: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this folder has a stock.yaml already; nothing was written: open the folder, or choose another one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 does not wait for that purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this box has no such lines any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>say why another pair than the one planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none is left, or what is left was promised to others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mismatch, so there is no run between two of them to draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; there is no run of good ones to draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; a p-chart has no limits then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mismatch; a p-chart has no limits then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a p-chart compares groups over time, and there are not two yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could show at this share that things got better; look at the g-chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worn when seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carried, not worn when seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not worn any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the person was not met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after some weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after three to four months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after six months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same person had a pair for %1 by entry %2 already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 entries were taken back at one place on one day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1: counted %2 against the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1 was later put aside (%2); this pair was given before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time of this entry is later than now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered as not collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a letter was to be written beside this hand-over; none is recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checked and waiting for more than %1 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given until the order %1 comes, more than %2 days ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refused: %1 of %2 read failed, more than the %4 allowed among %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no more than the %4 allowed among %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed, no more than the %4 allowed among %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this pair may be given only with the acuity read with it; none was recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the record nothing was needed for this purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the centres of this pair were assumed, not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the PD was not measured; prism is judged at its worst likely value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right eye: read %1, recorded %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left eye: read %1, recorded %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was in the box (bin %2) and would have cost %3 logMAR less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside a limit, no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see the person again; read the pair with the focimeter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside a limit, with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read the reasons together; where one repeats, change stock or rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a clearly better pair was in the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look at the bin named: is it reachable, labelled, in its place?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pair is off its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarantine the line, read ten pieces, tell the supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acuity with the pair worse than predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refract again; where it repeats, look at the refraction of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on trial, no acuity recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>call the person back and read the acuity with the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing was needed by the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look at what is prescribed to whom; a pair not needed is one that somebody lacks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no check recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record the four checks at hand-over; draw a sample of these for the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PD or centres not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure the PD of everybody and the centres of every line from 1.50 D up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given from a line in quarantine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read the pair with the focimeter, or exchange it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a temporary pair never replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask the laboratory for the order, and the person to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an order not collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>send word to the person; bring the pair to the next visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a letter of referral not written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handed over twice for one purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count the line; where one piece is too many, take the second entry back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>many corrections on one day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask what was difficult that day: light, queue, a new hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a count differed from the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look for a line that differs the other way; it is likely beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record disagrees with what was measured beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>have the card read again by somebody who has not seen the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged again, the entry says something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep this ledger as it is and tell the makers of the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rules of the time are missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put the rules.yaml of that time into a copy of the camp and audit there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record is not there to judge by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing: the person was forgotten, or the entry was written before records were kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an entry from the future</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set the clock of that station right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither power, fit, acuity nor instructions are recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pair as it was judged, or part of the prescription, is not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the prescription is not recorded or was forgotten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it fits %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it does not fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meant as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sign of a sphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sign of a cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a transposition without the axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a transposition without the sphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an axis off by 90 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an axis read as its mirror image</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>digits of an axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sphere and cylinder exchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a decimal point in another place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a power misread by a step or two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the addition put on the distance power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right and left exchanged in the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the right eye written for the left as well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the prescription of the person before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the addition left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the addition taken as the whole near power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the PD of one eye recorded as that of both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the near PD recorded as distance PD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record, in a way that is none of those listed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pair from a bin beside the one meant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the power meant, other centres or size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked by the sphere, the cylinder left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked by sphere and whole cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked by the sphere less half the cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pair for the person&apos;s other purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pairs of two persons exchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right and left lens exchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lens turned when it was mounted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a piece that lay in another line&apos;s bin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another line recorded than given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the piece or its lot off the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one pair recorded twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another pair than the one meant, in a way not listed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record and pair meant as they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entry %1 records the same pair for the same purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded %1; what was read fits %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was read fits %1; the record says %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may have been given and another line recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1 may be off its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 would be suggested by this record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s near need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s distance need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pair given is a reader of the addition alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with right and left lens exchanged the pair fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pair given fits the person of entry %1, and that one fits here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is within the limits, or may be tried; %2 is outside one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal so far; %1 is less scarce in the box than %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 comes before %2 by name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 are the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above %1 D the vertex distance must be recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sphere would leave less cylinder than this lens does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prism by decentration is the prescriber&apos;s decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PD not taken: judged at the worst end of what is plausible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the centres of this pair are assumed, not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heights of the centres not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder left over %1 D, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 D of cylinder left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference between the eyes&apos; needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the eyes differ by %1 D, limit %2 D for one power in both lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the eyes differ by %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of the power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power %1 D, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high power: %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blur strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blur strength %1 D, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blur strength %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too much plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 D too much plus, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 D too much plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too much minus or too little plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference between the two lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance between the eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one eye %1 D off against the other, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one eye %1 D off against the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder of the lens beyond the need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lens has %1 D more cylinder than needed, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 D more cylinder than needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis off by %1 degrees, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis off by %1 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal prism</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal prism %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal prism %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical prism</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical prism %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical prism %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centres against PD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centres %1 mm off the PD, limit %2 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centres %1 mm off the PD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical imbalance at the reading level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame size class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame size off by %1 class, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame size off by %1 class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blur strength at near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blur strength at near %1 D, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blur strength at near %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near power too strong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near power %1 D too strong, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near power %1 D too strong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near power too weak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near power %1 D too weak, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near power %1 D too weak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sphere off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sphere off by %1 D, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sphere off by %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder off by %1 D, limit %2 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder off by %1 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis against the prescription</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acuity with the mean sphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR below the full correction, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acuity with this pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acuity with this pair is %1 logMAR beyond what is asked, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tried: acuity %1 logMAR short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sudden loss of sight: eye clinic the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>painful eye: eye clinic the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>red eye: eye clinic the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new flashes or floaters: eye clinic the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double vision: eye clinic the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white pupil: eye clinic the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a child&apos;s squint: refer before glasses are given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines look bent or broken: eye clinic soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part of the field of view is missing: eye clinic soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>halos around lights: eye clinic soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not reach 6/9 in each eye with the final prescription</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>presents worse than 6/60 in an eye, even if glasses help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.50 D or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.00 D or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean sphere beyond 6.00 D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be without its lens (aphakia): vertex distance needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription; pinhole not taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>objective reading and final prescription are %1 D apart in mean sphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 16: the prescriber&apos;s name stays with the pair, and the guardian is told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>age not recorded: the strictest limits that could apply are used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an objective reading only: a subjective refraction should follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the prescription is %1 months old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>symptoms recorded: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PD not taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near PD computed from the distance PD, not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an eye with a lens implant: additions differ between the eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above 4.00 D the vertex distance matters: record it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the PD of each eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the heights in the chosen frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the vertex distance of the refraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the prescriber&apos;s name, for a child</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single vision for %1 mm: whole power, nothing to be added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centration computed from the distance PD, not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each eye&apos;s PD is half of the binocular one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance lens: as its fellow, for looks and weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses are advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for a child: impact-resistant lenses are advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prism as prescribed, each eye its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refracted at a vertex distance of %1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from an objective reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the digits %1 do not go together: the last would be %2, not %3; scan again, or type what stands below the bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a code; write its thirteen digits (twelve take a 0 before them), or leave the code out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no line %1 in this camp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near glasses need an addition, or a near power found by trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this purpose needs an addition, or a near power found by trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small error and 6/9 or better without glasses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glasses gain the better eye less than two lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reads without spectacles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reads N6 without spectacles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the own pair still fits: a spare only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the PD: measure it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the vertex distance of this prescription: measure it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing in the box for this purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing in the box comes near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if the prescriber marks the left eye balance, %1 would fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if the prescriber marks the right eye balance, %1 would fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is used: clean it and read its power before it is given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>try %1 and type the acuity with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a rules profile named %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a final prescription for at least one eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not read N8 with the near correction: see where the rest is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half the addition is used: no distance was stated for this work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a child&apos;s eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a child&apos;s cylinders differ by 2.00 D or more: at risk of amblyopia</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would need better acuity with this very pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do once the vertex distance is recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do if the PD, once measured, is near %1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do if the prescriber allows prism by decentration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with centres %1 mm apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with both centres at the same height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with %1 in both lenses instead of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with %1 D in both lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with sphere %1 in the right lens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with sphere %1 in the left lens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with addition %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with a lens of its own for each eye: right %1, left %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would do with lenses made to the prescription, cylinder included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no acuity is written; write 6/9 or leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>log10(1 + b²): low blur of any kind; no axis and no pupil in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one line lost for every 0.25 to 0.5 D of blur</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies outside the powers the set %2 was made for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sphere meridian off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>addition off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>addition off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>addition off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal prism off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2: %3 too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical prism off by %1: shown only, the set has no limit for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no tolerance set “%1”; there are: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tolerance set “%1” is not enabled: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance %1 and near %2 differ in cylinder; no addition joins them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near %2 has less plus than distance %1; were they exchanged?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this text says it is the left eye, and stands for the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this text says it is the right eye, and stands for the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2 or %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is beyond %2 D; check the figure and write it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder %1 has no sign; write +%1 or -%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no sign; write +%1 or -%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>addition -%1 is negative; an addition is plus: check it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cylinder %1 has no axis; write it with its axis, as %1 x 90</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two prisms lie in one direction; write their sum once, as 1.5 base in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too few (%1 read): three or more tell how steady they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take readings until there are three or more; until then a published scatter is used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scattered again: look at the eye&apos;s health (cornea, lens, tears, fixation) before prescribing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repeat the readings, with blinks and steady fixation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use the mean of the readings kept; the ones left out are shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use the mean as the start of the subjective refraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere (limit 1) and %2 D in astigmatism (limit 0.5): confirm the final</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere; up to 0.5 is usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a movement of an entry “%1” names no line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 quarantined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an entry “%1” moves at least one line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an entry “%1” names a person by the camp code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“entered-in-error” names the entry it takes back, other kinds none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an entry “%1” needs “%2”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>transferred out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>transferred in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no spectacles needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>declined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repaired or adjusted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>order checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delivered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sent back to be remade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not collected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>referred</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not served from stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawn for the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read at the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered in error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stolen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>miscounted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mislabelled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recalled</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>The child was given glasses: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses are suggested for the child: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses are to be made for the child.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The child needs no glasses for this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The eye test is not finished; the child comes again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The child should see the eye clinic before any glasses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic in the next days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic when it next receives people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The eyes of your child were tested.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be worn (as the prescriber told)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: take them off and go to an eye clinic the same day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Told to (guardian), by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please help the child to wear them, and to keep them clean and in their case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please let the child sit where the board is read easily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell the guardian at once if an eye turns or hurts, or if the child sees worse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your glasses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses suggested for you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses to be made for you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No glasses needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not finished yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please go to the eye clinic first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the eye clinic today, and take the letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the eye clinic in the next days, and take the letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the eye clinic when it next receives people, and take the letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right lens %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left lens %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you were given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is suggested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished">Mstari</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside limit: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pair was worn by somebody before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You see with one eye: ask for lenses that do not break, and wear eye protection.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop wearing them and go to an eye clinic the same day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come back if your sight changes, and for a new eye test in two years.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in the box comes near enough, so glasses are to be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the optician</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Collect at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On or after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until then: temporary pair. Not for driving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something is missing before glasses can be given:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come back on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses wait until the clinic has seen your eyes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your prescription</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your eyes should be measured once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NEAR</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DISTANCE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ARM&apos;S LENGTH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BIFOCAL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centres %1 mm (assumed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centres %1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis set when mounted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules %1, program %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For near work only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day and place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box %1: %2 pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bin</source>
        <translation type="unfinished">Kisanduku</translation>
    </message>
    <message>
        <source>Power</source>
        <translation type="unfinished">Nguvu</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished">Vipande</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted again by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count what lies there. Two persons; what the book says is not asked before the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted by (initials)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second person (initials)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the pair with the focimeter, take the acuity with it, then compare with the record. Where they differ write: the record does not match the pair.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acuity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addition</source>
        <translation type="unfinished">Nyongeza</translation>
    </message>
    <message>
        <source>Prism</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minus cylinders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plus cylinders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vertex distance, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working distance, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation type="unfinished">Aliyeandika</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>* half of the distance between both eyes, not measured for this eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not to be sent before these are measured:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted by, signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses are being made for you: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring this paper. The glasses are measured and tried on you before you take them home.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly lost: do not wait, go to an eye clinic the same day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules %1, program version %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance lens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>artificial eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not see</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished">haijapimwa</translation>
    </message>
    <message>
        <source>Note for the person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label of a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label of a bin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audit worksheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order to the laboratory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter to the eye clinic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses to collect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note for the guardian</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note for the teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audit of hand-overs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance, as written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for near: reading, sewing, telephone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for work at arm&apos;s length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for far (upper part) and near (lower part)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for far: walking, school board, faces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For near work only. Not for walking, riding or driving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For work at arm&apos;s length only. Not for walking, riding or driving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lower part is for near: take care on steps and kerbs. Drive only if your sight with these meets the law where you live.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drive only if your sight with these meets the law where you live.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggested from the prescription of %1 of %2 by rules %3, version %4. This is not an eye examination.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(prescriber not named)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(no date)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond 95 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond 99.9 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At odds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 % limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Funnel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share at odds against the number judged; lines: the share of all %1, the limits of chance at 95 % (dashed) and 99.9 % (solid)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good ones before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good hand-overs between two at odds, in their order; centre %1, a run longer than %2 is better than the share says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>runs, the last one still open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>better than the share says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">wazi</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share at odds by week; centre %1, limits at three standard deviations, which step with the volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large lot accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This lot accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Failing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How likely a lot is accepted by the share that fails in it: %1 read, at most %2 may fail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>failing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell what the glasses are for, what is left, and when to come back; give the note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the program, then copy the whole folder to a stick at the end of the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a sample of pairs, read them, and look for the slip, not for somebody to blame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the camp code and the final prescription as written; signs always.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain, red eye, sudden loss, flashes, double vision: the clinic first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the distance between the eyes; for reading the near one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fetch what is suggested from its bin and scan the label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the pair with the focimeter: does it hold what the label says?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try it on the face; take the acuity of each eye with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside a limit: say no, or write the reason in your own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back what was tried and not taken, each into the bin of its label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a delivery by scanning it; a new lot waits until samples are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print labels for what came; one on each case, one on each bin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pair off its label goes into quarantine, never back into the bin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Returned pairs are cleaned and read before they are given again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count by two persons on the blind sheet; every difference has a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Send to another site with a list; what arrives is counted there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the rules with the prescriber, and name them to the team.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at what was given outside a limit, and at its reasons, each evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every letter to the clinic is counted when its lower part comes back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every pair that is ordered is followed until it is collected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Codes leave the camp, names do not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quick card: at the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quick card: keeper of the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quick card: supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Told with every pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A suggestion is not an eye examination. The prescriber and the optician decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Says that sight was lost suddenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Says that an eye hurts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An eye is red.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sees new flashes or floaters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sees double.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pupil looks white.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A child; the eyes do not look the same way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prescriber asks for a refraction with drops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight lines look bent or broken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part of the field of view is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sees rings round lights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A child who does not reach 6/9 in each eye with the final prescription.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A child who came with less than 6/60 in an eye.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A child with +3.50 D or more, or a cylinder of 1.50 D or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under 8 years; the eyes differ by 1.50 D or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less than 6/12 in the better eye with the best prescription found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mean sphere beyond 6.00 D.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sphere of +8.00 D or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was observed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the person&apos;s words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please see this person today, and tell us on the part below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please see this person in the next days, and tell us on the part below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please see this person at a usual appointment, and tell us on the part below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No glasses are given until you have seen the person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glasses were given today: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No glasses are recorded as given yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please return this part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Imefanyika</translation>
    </message>
    <message>
        <source>Glasses: may be given / wait / other prescription</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished">Umri</translation>
    </message>
    <message>
        <source>Name (write it in only if the person agrees)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prescription found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What we ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2, %3 (95 % limits %4 to %5)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dispensing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished">Akiba</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Desk (numbers of this report)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By kind of pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lenses in a frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody has looked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under-met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unmet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At odds: by the record, the pair is not one that the rules would call acceptable, or what was measured beside the record speaks against it. This page is about records; a person decides what they mean. Nothing here is a ranking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand-overs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation type="unfinished">Hupimwa kwa</translation>
    </message>
    <message>
        <source>Record and pair at odds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1 is not as it was written; only what stands before it was judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the records show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished">Endelea</translation>
    </message>
    <message>
        <source>Kinds found less often, in the detail: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p-chart by week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p-chart: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g-chart: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g-chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g-chart: half of the runs between two at odds are %1 good ones or fewer; one longer than %2 is better than the share says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read again at the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot was drawn yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 hand-overs, at most %3 may fail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Operating curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refused: read every pair of these days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the pair when seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Persons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effective coverage, distance, of %1 who came</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as they came</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as they are now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator 3154). It is defined for a sample of a population; here it is of those who came.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None to be listed one by one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more are not listed here; `audit --json` has them all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slip is a mistake in a record or in a pick, named by its likelihood and never proved by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stronger than written: hold things a little nearer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 weaker than written: hold things a little further away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more plus than written: far things are a little less sharp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more minus than written: the eye has to focus a little more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the cylinder is not in the lens: fine lines are a little less sharp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near part: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Things are clear from about %1 cm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Things are clear from about %1 to %2 cm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lenses have the power that was written for you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The middle of the lenses is not quite before the middle of the eyes: the first days may feel odd.</source>
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
<context>
    <name>words</name>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>custom order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no referral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a referral letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refer before any glasses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>routine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near</source>
        <translation type="unfinished">karibu</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance and near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits with caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished">haijapimwa</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no bin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bin %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RIGHT %1 bin %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LEFT %1 bin %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame %1 bin %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
