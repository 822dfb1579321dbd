<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="sw" sourcelanguage="en">
<context>
    <name>BringIn</name>
    <message>
        <source>kept, not used</source>
        <translation>imehifadhiwa, haitumiki</translation>
    </message>
    <message>
        <source>Code of the person</source>
        <translation>Msimbo wa mtu</translation>
    </message>
    <message>
        <source>Right eye, all in one cell</source>
        <translation>Jicho la kulia, yote katika seli moja</translation>
    </message>
    <message>
        <source>Right eye: sphere</source>
        <translation>Jicho la kulia: sfia</translation>
    </message>
    <message>
        <source>Right eye: cylinder</source>
        <translation>Jicho la kulia: silinda</translation>
    </message>
    <message>
        <source>Right eye: axis</source>
        <translation>Jicho la kulia: mhimili</translation>
    </message>
    <message>
        <source>Right eye: prism</source>
        <translation>Jicho la kulia: prizimu</translation>
    </message>
    <message>
        <source>Right eye: base of the prism</source>
        <translation>Jicho la kulia: base ya prizimu</translation>
    </message>
    <message>
        <source>Left eye, all in one cell</source>
        <translation>Jicho la kushoto, yote katika seli moja</translation>
    </message>
    <message>
        <source>Left eye: sphere</source>
        <translation>Jicho la kushoto: sfia</translation>
    </message>
    <message>
        <source>Left eye: cylinder</source>
        <translation>Jicho la kushoto: silinda</translation>
    </message>
    <message>
        <source>Left eye: axis</source>
        <translation>Jicho la kushoto: mhimili</translation>
    </message>
    <message>
        <source>Left eye: prism</source>
        <translation>Jicho la kushoto: prizimu</translation>
    </message>
    <message>
        <source>Left eye: base of the prism</source>
        <translation>Jicho la kushoto: base ya prizimu</translation>
    </message>
    <message>
        <source>Age in years</source>
        <translation>Umri kwa miaka</translation>
    </message>
    <message>
        <source>Addition of both eyes</source>
        <translation>Nyongeza ya macho yote</translation>
    </message>
    <message>
        <source>Right eye: addition</source>
        <translation>Jicho la kulia: nyongeza</translation>
    </message>
    <message>
        <source>Left eye: addition</source>
        <translation>Jicho la kushoto: nyongeza</translation>
    </message>
    <message>
        <source>PD, mm</source>
        <translation>PD, mm</translation>
    </message>
    <message>
        <source>Right eye: PD, mm</source>
        <translation>Jicho la kulia: PD, mm</translation>
    </message>
    <message>
        <source>Left eye: PD, mm</source>
        <translation>Jicho la kushoto: PD, mm</translation>
    </message>
    <message>
        <source>Near PD, mm</source>
        <translation>PD ya karibu, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Aliyeandika agizo</translation>
    </message>
    <message>
        <source>Day it was written</source>
        <translation>Siku lilipoandikwa</translation>
    </message>
</context>
<context>
    <name>ChartData</name>
    <message>
        <source>%1 of %2 at odds, %3</source>
        <translation>%1 kati ya %2 hayalingani, %3</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>makabidhiano yaliyopimwa</translation>
    </message>
    <message>
        <source>pair and record at odds</source>
        <translation>miwani na rekodi havilingani</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Bado hakuna makabidhiano yaliyopimwa.</translation>
    </message>
    <message>
        <source>mismatches in order</source>
        <translation>yasiyolingana, kwa mpangilio</translation>
    </message>
    <message>
        <source>good hand-overs before it</source>
        <translation>makabidhiano mazuri kabla yake</translation>
    </message>
    <message>
        <source>%1 good hand-overs before it</source>
        <translation>makabidhiano mazuri %1 kabla yake</translation>
    </message>
    <message>
        <source>weeks in order</source>
        <translation>wiki, kwa mpangilio</translation>
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
        <translation>Programu imekutana na kitu isichokijua: %1. Hakuna kilichoandikwa; funga programu kisha fungua folda tena.</translation>
    </message>
</context>
<context>
    <name>DeskOptions</name>
    <message>
        <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
        <translation>Hulinganisha maagizo ya mwisho ya miwani na akiba ya miwani iliyo tayari na lenzi.</translation>
    </message>
    <message>
        <source>light, dark or sun (black on white, large)</source>
        <translation>light, dark au sun (nyeusi juu ya nyeupe, kubwa)</translation>
    </message>
    <message>
        <source>mirrors the window; prescriptions stay left-to-right</source>
        <translation>hugeuza upande wa dirisha; maagizo hubaki kushoto kwenda kulia</translation>
    </message>
    <message>
        <source>language of the window, for example ar</source>
        <translation>lugha ya dirisha, kwa mfano ar</translation>
    </message>
    <message>
        <source>size of the letters in per cent, 100 to 200</source>
        <translation>ukubwa wa herufi kwa asilimia, 100 hadi 200</translation>
    </message>
    <message>
        <source>paints the window into a PNG file and leaves</source>
        <translation>huchora dirisha kwenye faili ya PNG kisha huondoka</translation>
    </message>
    <message>
        <source>size of the window in pixels, for example 1366x768</source>
        <translation>ukubwa wa dirisha kwa pikseli, kwa mfano 1366x768</translation>
    </message>
    <message>
        <source>loads this person of people.csv at the start</source>
        <translation>hupakia mtu huyu wa people.csv mwanzoni</translation>
    </message>
    <message>
        <source>chooses this line of the stock at the start</source>
        <translation>huchagua mstari huu wa akiba mwanzoni</translation>
    </message>
    <message>
        <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
        <translation>folda ya kambi ya kufungua (stock.yaml, rules.yaml, ledger.sqlite)</translation>
    </message>
    <message>
        <source>--size %1 is not a size; write for example 1366x768</source>
        <translation>--size %1 si ukubwa; andika kwa mfano 1366x768</translation>
    </message>
    <message>
        <source>--text-scale %1 is not from 100 to 200</source>
        <translation>--text-scale %1 si kati ya 100 na 200</translation>
    </message>
    <message>
        <source>--place %1 is not known; write one of %2</source>
        <translation>--place %1 haijulikani; andika mojawapo ya %2</translation>
    </message>
    <message>
        <source>--theme %1 is not known; write light, dark or sun</source>
        <translation>--theme %1 haijulikani; andika light, dark au sun</translation>
    </message>
    <message>
        <source>one camp folder at a time, not %1</source>
        <translation>folda moja ya kambi kwa wakati, si %1</translation>
    </message>
    <message>
        <source>no readable person %1 in people.csv</source>
        <translation>hakuna mtu %1 anayesomeka katika people.csv</translation>
    </message>
    <message>
        <source>no line %1 in this stock</source>
        <translation>hakuna mstari %1 katika akiba hii</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>haiwezi kuandika %1</translation>
    </message>
    <message>
        <source>page to show at the start: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in or send-out</source>
        <translation>ukurasa wa kuonyesha mwanzoni: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in au send-out</translation>
    </message>
    <message>
        <source>reads this file of prescriptions on the page bring-in at the start</source>
        <translation>husoma mwanzoni faili hili la maagizo kwenye ukurasa bring-in</translation>
    </message>
</context>
<context>
    <name>DeskWords</name>
    <message>
        <source>R %1</source>
        <translation>K %1</translation>
    </message>
    <message>
        <source>L %1</source>
        <translation>Ks %1</translation>
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
        <translation>, </translation>
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
        <translation>Imejaribiwa: inakubalika</translation>
    </message>
    <message>
        <source>Tried on: outside limit</source>
        <translation>Imejaribiwa: nje ya kikomo</translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>whole degrees up to 180</source>
        <translation>digrii kamili hadi 180</translation>
    </message>
    <message>
        <source>quarters of a dioptre up to 6.75</source>
        <translation>robo za dioptri hadi 6.75</translation>
    </message>
    <message>
        <source>years up to 120</source>
        <translation>miaka hadi 120</translation>
    </message>
    <message>
        <source>millimetres, or right and left as 31/30.5</source>
        <translation>milimita, au kulia na kushoto kama 31/30.5</translation>
    </message>
    <message>
        <source>quarters of a dioptre, plus</source>
        <translation>robo za dioptri, plus</translation>
    </message>
    <message>
        <source>a sign first, then quarters of a dioptre, the axis up to 180</source>
        <translation>alama kwanza, kisha robo za dioptri, mhimili hadi 180</translation>
    </message>
    <message>
        <source>“%1” was not taken: %2</source>
        <translation>“%1” haikukubaliwa: %2</translation>
    </message>
</context>
<context>
    <name>PackingCurve</name>
    <message>
        <source>%1 % served for %2</source>
        <translation>%1 % wanahudumiwa kwa %2</translation>
    </message>
    <message>
        <source>money spent</source>
        <translation>fedha zilizotumika</translation>
    </message>
    <message>
        <source>money spent, %1</source>
        <translation>fedha zilizotumika, %1</translation>
    </message>
    <message>
        <source>share of needs served</source>
        <translation>sehemu ya mahitaji yaliyohudumiwa</translation>
    </message>
    <message>
        <source>Plan first: the curve comes with it.</source>
        <translation>Panga kwanza: mkunjo huja pamoja na mpango.</translation>
    </message>
    <message>
        <source>the knee</source>
        <translation>mpindo</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>mpango huu</translation>
    </message>
</context>
<context>
    <name>PackingRows</name>
    <message>
        <source>Pack</source>
        <translation>Pakiti</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Idadi ya pakiti</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Vipande</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Gharama</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramu</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Kwa nini</translation>
    </message>
    <message>
        <source>without it %1 fewer served</source>
        <translation>bila hiyo wanaohudumiwa hupungua %1</translation>
    </message>
    <message>
        <source>a reserve</source>
        <translation>ya akiba</translation>
    </message>
    <message>
        <source>nothing else for %1</source>
        <translation>hakuna kingine kwa %1</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>inafaa %1</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n zipo</numerusform>
            <numerusform>%n zipo</numerusform>
        </translation>
    </message>
    <message>
        <source>none on hand</source>
        <translation>hakuna iliyopo</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Sanduku</translation>
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
        <source>Of these bought</source>
        <translation>Kati yake zilizonunuliwa</translation>
    </message>
    <message>
        <source>new</source>
        <translation>mpya</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Njia</translation>
    </message>
    <message>
        <source>Served</source>
        <translation>Waliohudumiwa</translation>
    </message>
    <message>
        <source>First come</source>
        <translation>Anayewahi kwanza</translation>
    </message>
    <message>
        <source>Spends</source>
        <translation>Matumizi</translation>
    </message>
    <message>
        <source>what would do has run out by then</source>
        <translation>kinachofaa kinakuwa kimeisha kufikia hapo</translation>
    </message>
    <message>
        <source>no such power on hand or on offer</source>
        <translation>hakuna nguvu hiyo iliyopo wala inayouzwa</translation>
    </message>
    <message>
        <source>nothing on offer keeps the limit: %1</source>
        <translation>hakuna kinachouzwa kinachofuata kikomo: %1</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Nani</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Bila miwani</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Kati ya</translation>
    </message>
    <message>
        <source>%1, children</source>
        <translation>%1, watoto</translation>
    </message>
    <message>
        <source>%1, adults</source>
        <translation>%1, watu wazima</translation>
    </message>
    <message>
        <source>Days in a hundred</source>
        <translation>Siku katika mia</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Kufikia mtu</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Kwa nini siyo</translation>
    </message>
    <message>
        <source>others do as well for the money</source>
        <translation>nyingine zinafaa sawa kwa fedha hizo</translation>
    </message>
    <message>
        <source>nobody of this demand needs it</source>
        <translation>hakuna wa mahitaji haya anayeihitaji</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>Zilizotumika</translation>
    </message>
    <message>
        <source>Served, planned for</source>
        <translation>Waliohudumiwa, kwa mpango</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Maoni</translation>
    </message>
    <message>
        <source>the curve bends here</source>
        <translation>mkunjo unapinda hapa</translation>
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
        <translation>Msimbo wa kambi wa mtu, kama ulivyo kwenye kadi ya karatasi</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Umri</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Umri kwa miaka; umri usiojulikana hupimwa kwa kanuni kali zaidi</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Kulia</translation>
    </message>
    <message>
        <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Jicho la kulia: sfia, silinda (dioptri) na mhimili (digrii). Up na Down hubadilisha sfia kwa 0.25, Page Up na Page Down kwa 1.00</translation>
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
        <translation>Nyongeza ya karibu ya macho yote, dioptri</translation>
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
        <translation>Umbali kati ya mboni ukitazama karibu, milimita; hukokotolewa kutoka ule wa mbali ukiachwa wazi</translation>
    </message>
    <message>
        <source>Near, R</source>
        <translation>Karibu, K</translation>
    </message>
    <message>
        <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Jicho la kulia: nguvu yote ya karibu iliyopatikana kwa majaribio, dioptri, badala ya nyongeza</translation>
    </message>
    <message>
        <source>Near, L</source>
        <translation>Karibu, Ks</translation>
    </message>
    <message>
        <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Jicho la kushoto: nguvu yote ya karibu iliyopatikana kwa majaribio, dioptri, badala ya nyongeza</translation>
    </message>
    <message>
        <source>Unaided, R</source>
        <translation>Bila miwani, K</translation>
    </message>
    <message>
        <source>Right eye: acuity without spectacles, for example 6/18</source>
        <translation>Jicho la kulia: uwezo wa kuona bila miwani, kwa mfano 6/18</translation>
    </message>
    <message>
        <source>Unaided, L</source>
        <translation>Bila miwani, Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity without spectacles, for example 6/18</source>
        <translation>Jicho la kushoto: uwezo wa kuona bila miwani, kwa mfano 6/18</translation>
    </message>
    <message>
        <source>Best, R</source>
        <translation>Bora, K</translation>
    </message>
    <message>
        <source>Right eye: acuity with this prescription, for example 6/6</source>
        <translation>Jicho la kulia: uwezo wa kuona na agizo hili, kwa mfano 6/6</translation>
    </message>
    <message>
        <source>Best, L</source>
        <translation>Bora, Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity with this prescription, for example 6/6</source>
        <translation>Jicho la kushoto: uwezo wa kuona na agizo hili, kwa mfano 6/6</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Aliyeandika</translation>
    </message>
    <message>
        <source>Who signed the prescription; needed under 16 years</source>
        <translation>Aliyesaini agizo; huhitajika chini ya miaka 16</translation>
    </message>
    <message>
        <source>Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Jicho la kushoto: sfia, silinda (dioptri) na mhimili (digrii); = huchukua ya jicho la kulia. Up na Down hubadilisha sfia kwa 0.25, Page Up na Page Down kwa 1.00</translation>
    </message>
    <message>
        <source>Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5</source>
        <translation>Umbali kati ya mboni ukitazama mbali, milimita; au kulia na kushoto kwa pua: 31/30.5</translation>
    </message>
    <message>
        <source>Objective, R</source>
        <translation>Mashine, K</translation>
    </message>
    <message>
        <source>Right eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Jicho la kulia: usomaji wa mashine, dioptri; masomo kadhaa yaliyotenganishwa kwa ; hupewa wastani na mtawanyiko wake husemwa</translation>
    </message>
    <message>
        <source>Objective, L</source>
        <translation>Mashine, Ks</translation>
    </message>
    <message>
        <source>Left eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Jicho la kushoto: usomaji wa mashine, dioptri; masomo kadhaa yaliyotenganishwa kwa ; hupewa wastani na mtawanyiko wake husemwa</translation>
    </message>
    <message>
        <source>Own pair, R</source>
        <translation>Miwani yake, K</translation>
    </message>
    <message>
        <source>Right eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Jicho la kulia: nguvu ya miwani inayovaliwa sasa, iliyosomwa kwa fosimita, dioptri</translation>
    </message>
    <message>
        <source>Own pair, L</source>
        <translation>Miwani yake, Ks</translation>
    </message>
    <message>
        <source>Left eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Jicho la kushoto: nguvu ya miwani inayovaliwa sasa, iliyosomwa kwa fosimita, dioptri</translation>
    </message>
    <message>
        <source>Pinhole, R</source>
        <translation>Tundu dogo, K</translation>
    </message>
    <message>
        <source>Right eye: acuity through a pinhole, for example 6/9</source>
        <translation>Jicho la kulia: uwezo wa kuona kupitia tundu dogo, kwa mfano 6/9</translation>
    </message>
    <message>
        <source>Pinhole, L</source>
        <translation>Tundu dogo, Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity through a pinhole, for example 6/9</source>
        <translation>Jicho la kushoto: uwezo wa kuona kupitia tundu dogo, kwa mfano 6/9</translation>
    </message>
    <message>
        <source>With own, R</source>
        <translation>Na miwani yake, K</translation>
    </message>
    <message>
        <source>Right eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Jicho la kulia: uwezo wa kuona na miwani inayovaliwa sasa, kwa mfano 6/12</translation>
    </message>
    <message>
        <source>With own, L</source>
        <translation>Na miwani yake, Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Jicho la kushoto: uwezo wa kuona na miwani inayovaliwa sasa, kwa mfano 6/12</translation>
    </message>
    <message>
        <source>Near, bare</source>
        <translation>Karibu, bila miwani</translation>
    </message>
    <message>
        <source>Smallest print read without spectacles, for example N12</source>
        <translation>Maandishi madogo zaidi yaliyosomwa bila miwani, kwa mfano N12</translation>
    </message>
    <message>
        <source>Near, best</source>
        <translation>Karibu, bora</translation>
    </message>
    <message>
        <source>Smallest print read with this prescription, for example N6</source>
        <translation>Maandishi madogo zaidi yaliyosomwa na agizo hili, kwa mfano N6</translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation>Vertex</translation>
    </message>
    <message>
        <source>Distance from the trial lens to the eye, millimetres; needed above 4.00 D</source>
        <translation>Umbali kutoka lenzi ya majaribio hadi jicho, milimita; huhitajika juu ya 4.00 D</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Umbali wa kazi</translation>
    </message>
    <message>
        <source>Distance of near work from the spectacles, millimetres; 400 when empty</source>
        <translation>Umbali wa kazi ya karibu kutoka miwani, milimita; 400 ukiachwa wazi</translation>
    </message>
    <message>
        <source>Complaints</source>
        <translation>Malalamiko</translation>
    </message>
    <message>
        <source>What the person complains of, in a few words</source>
        <translation>Anacholalamikia mtu, kwa maneno machache</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Mlezi</translation>
    </message>
    <message>
        <source>Who was told about a child’s prescription</source>
        <translation>Aliyeambiwa kuhusu agizo la mtoto</translation>
    </message>
    <message>
        <source>Right eye: %1</source>
        <translation>Jicho la kulia: %1</translation>
    </message>
    <message>
        <source>Left eye: %1</source>
        <translation>Jicho la kushoto: %1</translation>
    </message>
</context>
<context>
    <name>ShareBars</name>
    <message>
        <source>Right: mean sphere</source>
        <translation>Kulia: sfia ya wastani</translation>
    </message>
    <message>
        <source>Left: mean sphere</source>
        <translation>Kushoto: sfia ya wastani</translation>
    </message>
    <message>
        <source>Right: cylinder</source>
        <translation>Kulia: silinda</translation>
    </message>
    <message>
        <source>Left: cylinder</source>
        <translation>Kushoto: silinda</translation>
    </message>
    <message>
        <source>Right: strain</source>
        <translation>Kulia: jitihada ya jicho</translation>
    </message>
    <message>
        <source>Left: strain</source>
        <translation>Kushoto: jitihada ya jicho</translation>
    </message>
    <message>
        <source>Right, near: mean sphere</source>
        <translation>Kulia, karibu: sfia ya wastani</translation>
    </message>
    <message>
        <source>Left, near: mean sphere</source>
        <translation>Kushoto, karibu: sfia ya wastani</translation>
    </message>
    <message>
        <source>Right, near: cylinder</source>
        <translation>Kulia, karibu: silinda</translation>
    </message>
    <message>
        <source>Left, near: cylinder</source>
        <translation>Kushoto, karibu: silinda</translation>
    </message>
    <message>
        <source>the eye makes up for %1 D</source>
        <translation>jicho linafidia %1 D</translation>
    </message>
    <message>
        <source>error %1 D</source>
        <translation>tofauti %1 D</translation>
    </message>
    <message>
        <source>sight lost, logMAR over the eyes</source>
        <translation>kuona kulikopotea, logMAR kwa macho yote</translation>
    </message>
    <message>
        <source>part of the limit used up</source>
        <translation>sehemu ya kikomo iliyotumika</translation>
    </message>
    <message>
        <source>%1 of %2 %3; %4</source>
        <translation>%1 kati ya %2 %3; %4</translation>
    </message>
    <message>
        <source>No criterion with a limit could be judged.</source>
        <translation>Hakuna kigezo chenye kikomo kilichoweza kupimwa.</translation>
    </message>
    <message>
        <source>of 100 hand-overs judged</source>
        <translation>kati ya makabidhiano 100 yaliyopimwa</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Bado hakuna makabidhiano yaliyopimwa.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 kati ya %2</translation>
    </message>
    <message>
        <source>Judged again</source>
        <translation>Yaliyopimwa tena</translation>
    </message>
    <message>
        <source>Pair and record agree</source>
        <translation>Miwani na rekodi vinakubaliana</translation>
    </message>
    <message>
        <source>adds</source>
        <translation>huongeza</translation>
    </message>
    <message>
        <source>takes away</source>
        <translation>hupunguza</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>ndani</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>nje</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>jumla</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Kulia: %1</translation>
    </message>
    <message>
        <source>Left: %1</source>
        <translation>Kushoto: %1</translation>
    </message>
</context>
<context>
    <name>command</name>
    <message>
        <source>this plan</source>
        <translation>mpango huu</translation>
    </message>
    <message>
        <source>greedy, without repairs</source>
        <translation>kwa pupa, bila marekebisho</translation>
    </message>
    <message>
        <source>each line by its own demand (newsvendor)</source>
        <translation>kila mstari kwa mahitaji yake (newsvendor)</translation>
    </message>
    <message>
        <source>levels by past use</source>
        <translation>viwango kwa matumizi yaliyopita</translation>
    </message>
    <message>
        <source>what is on hand, nothing bought</source>
        <translation>zilizopo, bila kununua chochote</translation>
    </message>
    <message>
        <source>spend %1 of %2 %3, %4 pieces, %5 kg</source>
        <translation>matumizi %1 kati ya %2 %3, vipande %4, kg %5</translation>
    </message>
    <message>
        <source>%1: serves %2 %, first come %3 %, spends %4</source>
        <translation>%1: inahudumia %2 %, anayewahi kwanza %3 %, inatumia %4</translation>
    </message>
    <message>
        <source>on the draws planned for: %1 %, no order serves more than %2 % (gap %3 %); on offer and on hand could serve %4 % at most</source>
        <translation>kwa sampuli zilizopangiwa: %1 %, hakuna oda inayohudumia zaidi ya %2 % (pengo %3 %); zinazouzwa na zilizopo zinaweza kuhudumia %4 % kwa wingi</translation>
    </message>
    <message>
        <source>the curve bends at %1: %2 % of the draws planned for</source>
        <translation>mkunjo unapinda kwa %1: %2 % ya sampuli zilizopangiwa</translation>
    </message>
    <message>
        <source>%1 runs out on %2 days in a hundred, by person %3</source>
        <translation>%1 huisha siku %2 katika mia, kufikia mtu wa %3</translation>
    </message>
    <message>
        <source>demand: %1, %2 people</source>
        <translation>mahitaji: %1, watu %2</translation>
    </message>
    <message>
        <source>demand: the ledger, %1 people</source>
        <translation>mahitaji: daftari, watu %1</translation>
    </message>
    <message>
        <source>left without a pair, %1: %2</source>
        <translation>walioachwa bila miwani, %1: %2</translation>
    </message>
    <message>
        <source>entries without a prescription, not planned for: %1</source>
        <translation>maingizo yasiyo na agizo, hayakupangiwa: %1</translation>
    </message>
    <message>
        <source>lines whose demand was raised, since they lay empty on some days: %1</source>
        <translation>mistari ambayo mahitaji yake yaliongezwa, kwa kuwa ilikuwa tupu siku kadhaa: %1</translation>
    </message>
    <message>
        <source>mixed with the published mix of a camp, which makes %1 % of it</source>
        <translation>imechanganywa na mchanganyiko uliochapishwa wa kambi, ambao ni %1 % yake</translation>
    </message>
    <message>
        <source>PDs not taken, drawn from published distributions: %1</source>
        <translation>PD ambazo hazikupimwa, zimechukuliwa kutoka takwimu zilizochapishwa: %1</translation>
    </message>
    <message>
        <source>assumed: where no PD was taken, it equals the centres of each pair</source>
        <translation>imechukuliwa: pale PD haikupimwa, ni sawa na vituo vya kila jozi</translation>
    </message>
    <message>
        <source>assumed: objective readings are final, and a prescriber is named</source>
        <translation>imechukuliwa: vipimo vya mashine ni vya mwisho, na aliyeandika ametajwa</translation>
    </message>
    <message>
        <source>assumed: an unrecorded vertex distance is that of the stock</source>
        <translation>imechukuliwa: umbali wa vertex usioandikwa ni ule wa akiba</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>the folder %1 for the sample cannot be made; check rights and free space</source>
        <translation>folda %1 ya mfano haiwezi kutengenezwa; angalia ruhusa na nafasi iliyobaki</translation>
    </message>
    <message>
        <source>write both parts of the PD, right then left: 31/30.5</source>
        <translation>andika sehemu zote mbili za PD, kulia kisha kushoto: 31/30.5</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation>folda %1 haiwezi kutengenezwa</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to print</source>
        <translation>agizo la %1 halijakamilika; hakuna oda ya kuchapisha</translation>
    </message>
    <message>
        <source>%1 is not under 16; print the note for the person instead</source>
        <translation>%1 hayuko chini ya miaka 16; chapisha karatasi ya mtu badala yake</translation>
    </message>
    <message>
        <source>this person has no camp code; give one before anything is printed</source>
        <translation>mtu huyu hana msimbo wa kambi; mpe kabla ya kuchapisha chochote</translation>
    </message>
    <message>
        <source>nothing of %1 asks for a referral; there is no letter to print</source>
        <translation>hakuna chochote cha %1 kinachohitaji rufaa; hakuna barua ya kuchapisha</translation>
    </message>
    <message>
        <source>a label of this size does not hold its text; choose a larger one with --label-size, or a shorter name: %1</source>
        <translation>lebo ya ukubwa huu haitoshi maandishi yake; chagua kubwa zaidi kwa --label-size, au jina fupi zaidi: %1</translation>
    </message>
    <message>
        <source>there is no printer %1, and no other is set up here; write a PDF with --output and print it where there is one</source>
        <translation>hakuna printa %1, na hakuna nyingine hapa; andika PDF kwa --output na uichapishe palipo na printa</translation>
    </message>
    <message>
        <source>there is no printer %1; there are %2</source>
        <translation>hakuna printa %1; zipo %2</translation>
    </message>
    <message>
        <source>the printer %1 does not take the paper</source>
        <translation>printa %1 haipokei karatasi hiyo</translation>
    </message>
    <message>
        <source>printing was stopped</source>
        <translation>uchapishaji umesimamishwa</translation>
    </message>
    <message>
        <source>no font here has the script of %1; install the package %2 and print again</source>
        <translation>hakuna fonti hapa yenye hati ya %1; sakinisha kifurushi %2 kisha chapisha tena</translation>
    </message>
    <message>
        <source>%1 does not wait in this table for that purpose, or stands in the list twice; take the row out</source>
        <translation>%1 hasubiri katika jedwali hili kwa matumizi hayo, au yuko mara mbili kwenye orodha; ondoa safu hiyo</translation>
    </message>
    <message>
        <source>there is no line %1 in this box</source>
        <translation>hakuna mstari %1 katika sanduku hili</translation>
    </message>
    <message>
        <source>more people were told %1 than there are pieces of it; take a row out of the list</source>
        <translation>watu walioahidiwa %1 ni wengi kuliko vipande vilivyopo; ondoa safu moja kwenye orodha</translation>
    </message>
    <message>
        <source>not drawn: counts under %1 are hidden on this page</source>
        <translation>haikuchorwa: hesabu chini ya %1 hufichwa kwenye ukurasa huu</translation>
    </message>
    <message>
        <source>there is no rules.yaml; the rules built in apply</source>
        <translation>hakuna rules.yaml; kanuni za ndani ya programu zinatumika</translation>
    </message>
    <message>
        <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
        <translation>daftari hili liliandikwa mwisho mahali pengine na limefunguliwa kusomwa tu; ikiwa folda imehamia hapa kabisa, sema hivyo, na usitumie tena nakala nyingine</translation>
    </message>
    <message>
        <source>this ledger had an older form and was brought up; as it was it stands in %1</source>
        <translation>daftari hili lilikuwa la muundo wa zamani na limesasishwa; lilivyokuwa liko katika %1</translation>
    </message>
    <message>
        <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
        <translation>ingizo %1 la daftari haliko kama lilivyoandikwa: %2; acha folda kama ilivyo na uilinganishe na nakala</translation>
    </message>
    <message>
        <source>there is no ledger here yet</source>
        <translation>bado hakuna daftari hapa</translation>
    </message>
    <message>
        <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
        <translation>daftari lina ingizo hilo, lakini stock.yaml haikuweza kusasishwa; itarekebishwa itakapofunguliwa tena</translation>
    </message>
    <message>
        <source>nothing that was handed over to %1 stands here; look at the code, or enter the look at the site that gave the pair</source>
        <translation>hakuna kilichokabidhiwa kwa %1 hapa; angalia msimbo, au ingiza ziara hiyo kwenye kituo kilichotoa miwani</translation>
    </message>
    <message>
        <source>to be referred before any glasses are given</source>
        <translation>apewe rufaa kabla ya miwani yoyote</translation>
    </message>
    <message>
        <source>nothing is needed for this purpose</source>
        <translation>hakuna kinachohitajika kwa matumizi haya</translation>
    </message>
    <message>
        <source>these lines do not make a pair</source>
        <translation>mistari hii haitengenezi miwani</translation>
    </message>
    <message>
        <source>on trial: type the acuity with this pair first</source>
        <translation>majaribio: kwanza andika uwezo wa kuona na miwani hii</translation>
    </message>
    <message>
        <source>an unequal pair: read each eye with the focimeter first</source>
        <translation>miwani isiyolingana: kwanza soma kila jicho kwa fosimita</translation>
    </message>
    <message>
        <source>none left of %1</source>
        <translation>hakuna iliyobaki ya %1</translation>
    </message>
    <message>
        <source>no pair chosen</source>
        <translation>hakuna miwani iliyochaguliwa</translation>
    </message>
    <message>
        <source>stopped as asked; nothing was written</source>
        <translation>imesimamishwa kama ulivyoomba; hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>mstari %1 una %2 zilizopo, %3 zilizoshikiliwa na %4 karantini, hazitoshi kwa hili; hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>line %1 is not in the ledger of %2; nothing was written</source>
        <translation>mstari %1 haupo katika daftari la %2; hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>line %1 stands here by its name and by its code; write one row with the whole number</source>
        <translation>mstari %1 upo hapa kwa jina na kwa msimbo; andika safu moja yenye idadi yote</translation>
    </message>
    <message>
        <source>there is no line %1 in stock.yaml of %2; add it there with on hand: 0, or mend the name</source>
        <translation>hakuna mstari %1 katika stock.yaml ya %2; uongeze huko na on hand: 0, au rekebisha jina</translation>
    </message>
    <message>
        <source>a count needs two persons; %1 cannot be both</source>
        <translation>hesabu inahitaji watu wawili; %1 hawezi kuwa wote wawili</translation>
    </message>
    <message>
        <source>line %1: counted %2, the book says %3; say why, in the row or with --reason</source>
        <translation>mstari %1: zilizohesabiwa %2, daftari linasema %3; sema kwa nini, kwenye safu au kwa --reason</translation>
    </message>
    <message>
        <source>line %1: %2 were sent, %3 arrived; the sender should know</source>
        <translation>mstari %1: zilitumwa %2, zimefika %3; mtumaji ajulishwe</translation>
    </message>
    <message>
        <source>this order is “%1” already; take back its last step %2 first</source>
        <translation>oda hii tayari ni “%1”; kwanza rudisha hatua yake ya mwisho %2</translation>
    </message>
    <message>
        <source>nothing that was received of lot %1 is available</source>
        <translation>hakuna kilichopokelewa cha shehena %1 kinachopatikana</translation>
    </message>
    <message>
        <source>there is no entry %1 to take back</source>
        <translation>hakuna ingizo %1 la kurudisha</translation>
    </message>
    <message>
        <source>this hand-over is of %1; a hand-over is taken back on its day only; if the pair came back, enter it as returned</source>
        <translation>makabidhiano haya ni ya %1; makabidhiano hurudishwa siku yake tu; ikiwa miwani imerudi, ingiza kuwa imerejeshwa</translation>
    </message>
    <message>
        <source>nothing was handed over to %1 today</source>
        <translation>hakuna kilichokabidhiwa kwa %1 leo</translation>
    </message>
    <message>
        <source>%1 was given %2 pairs today; say which with --entry %3</source>
        <translation>%1 amepewa miwani %2 leo; sema ipi kwa --entry %3</translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation>hakuna oda %1</translation>
    </message>
    <message>
        <source>this order is “%1”; “%2” cannot follow</source>
        <translation>oda hii ni “%1”; “%2” haiwezi kufuata</translation>
    </message>
    <message>
        <source>%1 has no open order</source>
        <translation>%1 hana oda iliyo wazi</translation>
    </message>
    <message>
        <source>%1 has %2 open orders; say which with --order %3</source>
        <translation>%1 ana oda %2 zilizo wazi; sema ipi kwa --order %3</translation>
    </message>
    <message>
        <source>the file cannot be written: %1; check rights and free space</source>
        <translation>faili haiwezi kuandikwa: %1; angalia ruhusa na nafasi iliyobaki</translation>
    </message>
    <message>
        <source>something has this name already; name a place that is free</source>
        <translation>jina hili limeshatumika; taja mahali palipo wazi</translation>
    </message>
    <message>
        <source>this is the ledger of the camp itself; name another one</source>
        <translation>hili ni daftari la kambi yenyewe; taja lingine</translation>
    </message>
    <message>
        <source>nothing in the box is better for this person</source>
        <translation>hakuna kilicho bora zaidi kwa mtu huyu ndani ya sanduku</translation>
    </message>
    <message>
        <source>loses no more than the best for this person; others need that one more</source>
        <translation>hapotezi zaidi kuliko kwa ile bora; wengine wanaihitaji zaidi ile nyingine</translation>
    </message>
    <message>
        <source>%1 was promised to %2 before</source>
        <translation>%1 ilishaahidiwa %2</translation>
    </message>
    <message>
        <source>%1 goes to %2, for whom nothing else will do</source>
        <translation>%1 inakwenda kwa %2, ambaye hakuna kingine kinachomfaa</translation>
    </message>
    <message>
        <source>%1 goes to %2, so that most are served and all together lose least</source>
        <translation>%1 inakwenda kwa %2, ili wengi wahudumiwe na wote wapoteze kidogo zaidi</translation>
    </message>
    <message>
        <source>nothing that would do is left</source>
        <translation>hakuna kinachofaa kilichobaki</translation>
    </message>
    <message>
        <source>what would do goes to others</source>
        <translation>kinachofaa kinakwenda kwa wengine</translation>
    </message>
    <message>
        <source>what would do goes to %1</source>
        <translation>kinachofaa kinakwenda kwa %1</translation>
    </message>
    <message>
        <source>told before, but none is left now</source>
        <translation>iliahidiwa awali, lakini sasa hakuna iliyobaki</translation>
    </message>
    <message>
        <source>told before; not planned again</source>
        <translation>iliahidiwa awali; haikupangwa tena</translation>
    </message>
    <message>
        <source>picked by hand: %1</source>
        <translation>imechaguliwa kwa mkono: %1</translation>
    </message>
    <message>
        <source>no sample up to %1 tells these shares apart at this risk; allow a larger risk, or take shares that lie further apart</source>
        <translation>hakuna sampuli hadi %1 inayotofautisha sehemu hizi kwa hatari hii; ruhusu hatari kubwa zaidi, au chukua sehemu zilizo mbali zaidi</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its draw was taken back</source>
        <translation>hakuna fungu %1 lililochaguliwa katika daftari hili; hii ni karatasi ya kambi nyingine, au uchaguzi wake umerudishwa</translation>
    </message>
    <message>
        <source>the results of this lot are in already, entry %1; to enter them anew take that one back first with `quarterstep record entered-in-error --entry`</source>
        <translation>matokeo ya fungu hili yameshaingizwa, ingizo %1; kuyaingiza upya kwanza rudisha hilo kwa `quarterstep record entered-in-error --entry`</translation>
    </message>
    <message>
        <source>this row is of the lot %1, the first one of %2; enter each lot by itself</source>
        <translation>safu hii ni ya fungu %1, ya kwanza ni ya %2; ingiza kila fungu peke yake</translation>
    </message>
    <message>
        <source>this lot has %1 rows, spares included; there is no row %2</source>
        <translation>fungu hili lina safu %1, pamoja na za ziada; hakuna safu %2</translation>
    </message>
    <message>
        <source>nothing was handed over here in those days whose pair is recorded; there is nothing to draw from</source>
        <translation>siku hizo hakuna kilichokabidhiwa hapa ambacho miwani yake iko kwenye rekodi; hakuna cha kuchagua</translation>
    </message>
    <message>
        <source>the plan reads %1 pairs and only %2 were handed over; read all of them (--sample %2), or take more days into the lot</source>
        <translation>mpango unasoma miwani %1 na ni %2 tu zilizokabidhiwa; soma zote (--sample %2), au ongeza siku kwenye fungu</translation>
    </message>
    <message>
        <source>no lot was drawn here yet; `quarterstep audit draw` does</source>
        <translation>bado hakuna fungu lililochaguliwa hapa; `quarterstep audit draw` hufanya hivyo</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger</source>
        <translation>hakuna fungu %1 lililochaguliwa katika daftari hili</translation>
    </message>
    <message>
        <source>no row of the worksheet is filled in</source>
        <translation>hakuna safu ya karatasi iliyojazwa</translation>
    </message>
    <message>
        <source>the demand is %1 person; plan from more: nothing can be said of who comes next</source>
        <translation>mahitaji ni ya mtu %1; panga kutoka kwa wengi zaidi: hakuna kinachoweza kusemwa kuhusu anayefuata</translation>
    </message>
    <message>
        <source>the budget is 0: nothing is bought; give --budget</source>
        <translation>bajeti ni 0: hakuna kinachonunuliwa; toa --budget</translation>
    </message>
    <message>
        <source>nobody of this demand can be served by any line on offer; nothing is bought</source>
        <translation>hakuna mtu wa mahitaji haya anayeweza kuhudumiwa na mstari wowote unaopatikana; hakuna kinachonunuliwa</translation>
    </message>
    <message>
        <source>no pack on offer is within the budget, the weight and the boxes; nothing is bought</source>
        <translation>hakuna pakiti iliyo ndani ya bajeti, uzito na masanduku; hakuna kinachonunuliwa</translation>
    </message>
    <message>
        <source>what is on hand serves whoever can be served; nothing is bought</source>
        <translation>zilizopo zinawahudumia wote wanaoweza kuhudumiwa; hakuna kinachonunuliwa</translation>
    </message>
    <message>
        <source>the library for PINs cannot be used here</source>
        <translation>maktaba ya PIN haiwezi kutumika hapa</translation>
    </message>
    <message>
        <source>a PIN has %1 to %2 characters; nothing was written</source>
        <translation>PIN ina herufi %1 hadi %2; hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>there is not enough memory to keep a PIN; close other programs</source>
        <translation>hakuna kumbukumbu ya kutosha kuhifadhi PIN; funga programu nyingine</translation>
    </message>
    <message>
        <source>nobody of this demand can be served from this box; no day was simulated</source>
        <translation>hakuna mtu wa mahitaji haya anayeweza kuhudumiwa kutoka sanduku hili; hakuna siku iliyoigizwa</translation>
    </message>
    <message>
        <source>after the colon stands how many lie in each bin, then centres, bin or round: write for example &quot;: 10 centres 62 bin A&quot;</source>
        <translation>baada ya nukta mbili ni idadi katika kila kisanduku, kisha centres, bin au round: andika kwa mfano &quot;: 10 centres 62 bin A&quot;</translation>
    </message>
    <message>
        <source>%1 is not a size in millimetres; write for example 62</source>
        <translation>%1 si ukubwa kwa milimita; andika kwa mfano 62</translation>
    </message>
    <message>
        <source>a ready-made pair with a cylinder needs its axis; write for example -1.00 -0.50 x 90</source>
        <translation>miwani iliyo tayari yenye silinda inahitaji mhimili wake; andika kwa mfano -1.00 -0.50 x 90</translation>
    </message>
    <message>
        <source>from %1 to %2 is no whole number of steps of %3; write spheres and a step that meets the last one</source>
        <translation>kutoka %1 hadi %2 si idadi kamili ya hatua za %3; andika sfia na hatua inayofikia ya mwisho</translation>
    </message>
    <message>
        <source>%1 stands in an earlier tray already; put the counts together, or give the two different centres</source>
        <translation>%1 iko tayari kwenye trei ya awali; jumlisha hesabu, au zipe zote mbili vitovu tofauti</translation>
    </message>
    <message>
        <source>a frame is given by its lens and bridge in millimetres; write for example frame 44-18: 12</source>
        <translation>fremu huandikwa kwa lenzi na daraja lake kwa milimita; andika kwa mfano frame 44-18: 12</translation>
    </message>
    <message>
        <source>a tray is written as powers, a colon and a count: for example &quot;near +1.00 to +3.50 by 0.50: 10&quot;</source>
        <translation>trei huandikwa kama nguvu, nukta mbili na idadi: kwa mfano &quot;near +1.00 to +3.50 by 0.50: 10&quot;</translation>
    </message>
    <message>
        <source>these trays make more than %1 lines of stock</source>
        <translation>trei hizi hutengeneza zaidi ya mistari %1 ya akiba</translation>
    </message>
    <message>
        <source>the camp has no name yet; give it one</source>
        <translation>kambi bado haina jina; ipe jina</translation>
    </message>
    <message>
        <source>nothing is described yet; write a tray a line</source>
        <translation>bado hakuna kilichoelezwa; andika trei moja kwa mstari</translation>
    </message>
    <message>
        <source>this folder cannot be made: %1</source>
        <translation>folda hii haiwezi kutengenezwa: %1</translation>
    </message>
    <message>
        <source>this folder has a stock.yaml already; nothing was written: open the folder, or choose another one</source>
        <translation>folda hii ina stock.yaml tayari; hakuna kilichoandikwa: fungua folda, au chagua nyingine</translation>
    </message>
    <message>
        <source>%1 does not wait for that purpose</source>
        <translation>%1 hasubiri kwa matumizi hayo</translation>
    </message>
    <message>
        <source>this box has no such lines any more</source>
        <translation>sanduku hili halina tena mistari hiyo</translation>
    </message>
    <message>
        <source>say why another pair than the one planned</source>
        <translation>sema kwa nini miwani tofauti na iliyopangwa</translation>
    </message>
    <message>
        <source>none is left, or what is left was promised to others</source>
        <translation>hakuna iliyobaki, au iliyobaki imeahidiwa wengine</translation>
    </message>
    <message>
        <source>no mismatch, so there is no run between two of them to draw</source>
        <translation>hakuna kutolingana, kwa hiyo hakuna mfululizo wa kuchora kati ya mawili</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; there is no run of good ones to draw</source>
        <translation>kila makabidhiano hayalingani; hakuna mfululizo wa mazuri wa kuchora</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; a p-chart has no limits then</source>
        <translation>kila makabidhiano hayalingani; chati ya p haina vikomo hapo</translation>
    </message>
    <message>
        <source>no mismatch; a p-chart has no limits then</source>
        <translation>hakuna kutolingana; chati ya p haina vikomo hapo</translation>
    </message>
    <message>
        <source>a p-chart compares groups over time, and there are not two yet</source>
        <translation>chati ya p hulinganisha makundi kwa wakati, na bado hakuna mawili</translation>
    </message>
    <message>
        <source>%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could show at this share that things got better; look at the g-chart</source>
        <translation>makundi %1 kati ya %2 yana chini ya makabidhiano %3 ambayo chati ya p ingeweza kuonyesha kwa sehemu hii kuwa mambo yameboreka; tazama chati ya g</translation>
    </message>
    <message>
        <source>%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart</source>
        <translation>makundi %1 kati ya %2 hayana kutolingana, robo au zaidi; tazama chati ya g</translation>
    </message>
    <message>
        <source>worn when seen</source>
        <translation>amevaa alipoonwa</translation>
    </message>
    <message>
        <source>carried, not worn when seen</source>
        <translation>anayo, hajavaa alipoonwa</translation>
    </message>
    <message>
        <source>left at home</source>
        <translation>imeachwa nyumbani</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>imevunjika</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>imepotea</translation>
    </message>
    <message>
        <source>not worn any more</source>
        <translation>haivaliwi tena</translation>
    </message>
    <message>
        <source>the person was not met</source>
        <translation>mtu hakupatikana</translation>
    </message>
    <message>
        <source>after some weeks</source>
        <translation>baada ya wiki kadhaa</translation>
    </message>
    <message>
        <source>after three to four months</source>
        <translation>baada ya miezi mitatu hadi minne</translation>
    </message>
    <message>
        <source>after six months</source>
        <translation>baada ya miezi sita</translation>
    </message>
    <message>
        <source>the same person had a pair for %1 by entry %2 already</source>
        <translation>mtu yule yule alishapata miwani ya %1 kwa ingizo %2</translation>
    </message>
    <message>
        <source>%1 entries were taken back at one place on one day</source>
        <translation>maingizo %1 yalirudishwa mahali pamoja siku moja</translation>
    </message>
    <message>
        <source>line %1: counted %2 against the book</source>
        <translation>mstari %1: zilizohesabiwa %2, tofauti na daftari</translation>
    </message>
    <message>
        <source>line %1 was later put aside (%2); this pair was given before</source>
        <translation>mstari %1 uliwekwa kando baadaye (%2); miwani hii ilitolewa kabla</translation>
    </message>
    <message>
        <source>the time of this entry is later than now</source>
        <translation>wakati wa ingizo hili ni baada ya sasa</translation>
    </message>
    <message>
        <source>entered as not collected</source>
        <translation>imeingizwa kuwa haikuchukuliwa</translation>
    </message>
    <message>
        <source>a letter was to be written beside this hand-over; none is recorded</source>
        <translation>barua ilipaswa kuandikwa pamoja na makabidhiano haya; hakuna iliyorekodiwa</translation>
    </message>
    <message>
        <source>checked and waiting for more than %1 days</source>
        <translation>imekaguliwa na inasubiri kwa zaidi ya siku %1</translation>
    </message>
    <message>
        <source>given until the order %1 comes, more than %2 days ago</source>
        <translation>imetolewa hadi oda %1 ifike, zaidi ya siku %2 zilizopita</translation>
    </message>
    <message>
        <source>refused: %1 of %2 read failed, more than the %4 allowed among %3</source>
        <translation>limekataliwa: %1 kati ya %2 zilizosomwa zimeshindwa, zaidi ya %4 zinazoruhusiwa kati ya %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no more than the %4 allowed among %3</source>
        <translation>limekubaliwa: %1 kati ya %2 zilizosomwa zimeshindwa; hata kama %5 ambazo hazijasomwa zingeshindwa pia, zisingezidi %4 zinazoruhusiwa kati ya %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed, no more than the %4 allowed among %3</source>
        <translation>limekubaliwa: %1 kati ya %2 zilizosomwa zimeshindwa, si zaidi ya %4 zinazoruhusiwa kati ya %3</translation>
    </message>
    <message>
        <source>open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read</source>
        <translation>liko wazi: %1 kati ya %2 zilizosomwa zimeshindwa, %4 zinaruhusiwa kati ya %3; miwani %5 bado kusomwa</translation>
    </message>
    <message>
        <source>this pair may be given only with the acuity read with it; none was recorded</source>
        <translation>miwani hii hutolewa tu baada ya kupima uwezo wa kuona nayo; hakuna kipimo kilichorekodiwa</translation>
    </message>
    <message>
        <source>by the record nothing was needed for this purpose</source>
        <translation>kwa rekodi hakuna kilichohitajika kwa matumizi haya</translation>
    </message>
    <message>
        <source>the centres of this pair were assumed, not measured</source>
        <translation>vitovu vya miwani hii vilikadiriwa, havikupimwa</translation>
    </message>
    <message>
        <source>the PD was not measured; prism is judged at its worst likely value</source>
        <translation>PD haikupimwa; prizimu hupimwa kwa thamani mbaya zaidi inayowezekana</translation>
    </message>
    <message>
        <source>the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths</source>
        <translation>ingizo linasema %1, ikipimwa tena ni %2; gharama ilikuwa %3 na sasa ni %4 kwa elfu</translation>
    </message>
    <message>
        <source>right eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>jicho la kulia: %1 na miwani hii, logMAR %2 mbaya kuliko ilivyotarajiwa</translation>
    </message>
    <message>
        <source>left eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>jicho la kushoto: %1 na miwani hii, logMAR %2 mbaya kuliko ilivyotarajiwa</translation>
    </message>
    <message>
        <source>right eye: read %1, recorded %2</source>
        <translation>jicho la kulia: imesomwa %1, imerekodiwa %2</translation>
    </message>
    <message>
        <source>left eye: read %1, recorded %2</source>
        <translation>jicho la kushoto: imesomwa %1, imerekodiwa %2</translation>
    </message>
    <message>
        <source>%1 was in the box (bin %2) and would have cost %3 logMAR less</source>
        <translation>%1 ilikuwa ndani ya sanduku (kisanduku %2) na ingepoteza logMAR %3 pungufu</translation>
    </message>
    <message>
        <source>outside a limit, no reason given</source>
        <translation>nje ya kikomo, bila sababu</translation>
    </message>
    <message>
        <source>see the person again; read the pair with the focimeter</source>
        <translation>mwone mtu tena; soma miwani kwa fosimita</translation>
    </message>
    <message>
        <source>outside a limit, with a reason</source>
        <translation>nje ya kikomo, na sababu</translation>
    </message>
    <message>
        <source>read the reasons together; where one repeats, change stock or rules</source>
        <translation>someni sababu pamoja; inayojirudia, badilisheni akiba au kanuni</translation>
    </message>
    <message>
        <source>a clearly better pair was in the box</source>
        <translation>miwani bora waziwazi ilikuwa ndani ya sanduku</translation>
    </message>
    <message>
        <source>look at the bin named: is it reachable, labelled, in its place?</source>
        <translation>angalia kisanduku kilichotajwa: kinafikika, kina lebo, kiko mahali pake?</translation>
    </message>
    <message>
        <source>the pair is off its label</source>
        <translation>miwani haiendani na lebo yake</translation>
    </message>
    <message>
        <source>quarantine the line, read ten pieces, tell the supplier</source>
        <translation>weka mstari karantini, soma vipande kumi, mwambie msambazaji</translation>
    </message>
    <message>
        <source>acuity with the pair worse than predicted</source>
        <translation>uwezo wa kuona na miwani ni mbaya kuliko ilivyotarajiwa</translation>
    </message>
    <message>
        <source>refract again; where it repeats, look at the refraction of the day</source>
        <translation>pima macho tena; ikijirudia, angalia upimaji wa macho wa siku hiyo</translation>
    </message>
    <message>
        <source>on trial, no acuity recorded</source>
        <translation>majaribio, uwezo wa kuona haukurekodiwa</translation>
    </message>
    <message>
        <source>call the person back and read the acuity with the pair</source>
        <translation>mwite mtu tena na upime uwezo wa kuona na miwani</translation>
    </message>
    <message>
        <source>nothing was needed by the record</source>
        <translation>hakuna kilichohitajika kwa rekodi</translation>
    </message>
    <message>
        <source>look at what is prescribed to whom; a pair not needed is one that somebody lacks</source>
        <translation>angalia nani anaandikiwa nini; miwani isiyohitajika ni ile anayoikosa mwingine</translation>
    </message>
    <message>
        <source>no check recorded</source>
        <translation>hakuna ukaguzi uliorekodiwa</translation>
    </message>
    <message>
        <source>record the four checks at hand-over; draw a sample of these for the bench</source>
        <translation>rekodi ukaguzi wote minne wakati wa kukabidhi; chagua sampuli yake kwa meza ya vipimo</translation>
    </message>
    <message>
        <source>PD or centres not measured</source>
        <translation>PD au vitovu havikupimwa</translation>
    </message>
    <message>
        <source>measure the PD of everybody and the centres of every line from 1.50 D up</source>
        <translation>pima PD ya kila mtu na vitovu vya kila mstari kuanzia 1.50 D</translation>
    </message>
    <message>
        <source>given from a line in quarantine</source>
        <translation>imetolewa kutoka mstari ulio karantini</translation>
    </message>
    <message>
        <source>read the pair with the focimeter, or exchange it</source>
        <translation>soma miwani kwa fosimita, au ibadilishe</translation>
    </message>
    <message>
        <source>a temporary pair never replaced</source>
        <translation>miwani ya muda ambayo haikubadilishwa</translation>
    </message>
    <message>
        <source>ask the laboratory for the order, and the person to come</source>
        <translation>uliza maabara kuhusu oda, na umwite mtu</translation>
    </message>
    <message>
        <source>an order not collected</source>
        <translation>oda ambayo haikuchukuliwa</translation>
    </message>
    <message>
        <source>send word to the person; bring the pair to the next visit</source>
        <translation>mpelekee mtu ujumbe; leta miwani kwenye ziara ijayo</translation>
    </message>
    <message>
        <source>a letter of referral not written</source>
        <translation>barua ya rufaa haikuandikwa</translation>
    </message>
    <message>
        <source>write it now</source>
        <translation>iandike sasa</translation>
    </message>
    <message>
        <source>handed over twice for one purpose</source>
        <translation>imekabidhiwa mara mbili kwa matumizi mamoja</translation>
    </message>
    <message>
        <source>count the line; where one piece is too many, take the second entry back</source>
        <translation>hesabu mstari; palipo na kipande kimoja cha ziada, rudisha ingizo la pili</translation>
    </message>
    <message>
        <source>many corrections on one day</source>
        <translation>masahihisho mengi siku moja</translation>
    </message>
    <message>
        <source>ask what was difficult that day: light, queue, a new hand</source>
        <translation>uliza nini kilikuwa kigumu siku hiyo: mwanga, foleni, mfanyakazi mpya</translation>
    </message>
    <message>
        <source>a count differed from the book</source>
        <translation>hesabu ilitofautiana na daftari</translation>
    </message>
    <message>
        <source>look for a line that differs the other way; it is likely beside it</source>
        <translation>tafuta mstari wenye tofauti ya upande mwingine; huenda uko karibu yake</translation>
    </message>
    <message>
        <source>the record disagrees with what was measured beside it</source>
        <translation>rekodi haikubaliani na kilichopimwa pamoja nayo</translation>
    </message>
    <message>
        <source>have the card read again by somebody who has not seen the record</source>
        <translation>kadi isomwe tena na mtu ambaye hajaona rekodi</translation>
    </message>
    <message>
        <source>judged again, the entry says something else</source>
        <translation>ikipimwa tena, ingizo linasema kitu kingine</translation>
    </message>
    <message>
        <source>keep this ledger as it is and tell the makers of the program</source>
        <translation>acha daftari hili kama lilivyo na uwaambie watengenezaji wa programu</translation>
    </message>
    <message>
        <source>the rules of the time are missing</source>
        <translation>kanuni za wakati huo hazipo</translation>
    </message>
    <message>
        <source>put the rules.yaml of that time into a copy of the camp and audit there</source>
        <translation>weka rules.yaml ya wakati huo kwenye nakala ya kambi na ufanye ukaguzi huko</translation>
    </message>
    <message>
        <source>the record is not there to judge by</source>
        <translation>rekodi ya kupimia haipo</translation>
    </message>
    <message>
        <source>nothing: the person was forgotten, or the entry was written before records were kept</source>
        <translation>hakuna: taarifa za mtu zilifutwa, au ingizo liliandikwa kabla ya rekodi kuanza kuhifadhiwa</translation>
    </message>
    <message>
        <source>an entry from the future</source>
        <translation>ingizo la wakati ujao</translation>
    </message>
    <message>
        <source>set the clock of that station right</source>
        <translation>rekebisha saa ya kituo hicho</translation>
    </message>
    <message>
        <source>neither power, fit, acuity nor instructions are recorded</source>
        <translation>nguvu, kukaa usoni, uwezo wa kuona wala maelezo havikurekodiwa</translation>
    </message>
    <message>
        <source>the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml</source>
        <translation>kanuni zenye hashi %1 (wasifu %2) hazipo kwenye daftari wala katika rules.yaml</translation>
    </message>
    <message>
        <source>the pair as it was judged, or part of the prescription, is not recorded</source>
        <translation>miwani kama ilivyopimwa, au sehemu ya agizo, haikurekodiwa</translation>
    </message>
    <message>
        <source>the prescription is not recorded or was forgotten</source>
        <translation>agizo halikurekodiwa au lilifutwa</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it fits %2</source>
        <translation>imerekodiwa %1; kilichopimwa pamoja nayo kinafaa %2</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it does not fit</source>
        <translation>imerekodiwa %1; kilichopimwa pamoja nayo hakifai</translation>
    </message>
    <message>
        <source>meant as it is</source>
        <translation>ilikusudiwa hivyo</translation>
    </message>
    <message>
        <source>the sign of a sphere</source>
        <translation>alama ya sfia</translation>
    </message>
    <message>
        <source>the sign of a cylinder</source>
        <translation>alama ya silinda</translation>
    </message>
    <message>
        <source>a transposition without the axis</source>
        <translation>ubadilishaji bila mhimili</translation>
    </message>
    <message>
        <source>a transposition without the sphere</source>
        <translation>ubadilishaji bila sfia</translation>
    </message>
    <message>
        <source>an axis off by 90 degrees</source>
        <translation>mhimili umekosea kwa digrii 90</translation>
    </message>
    <message>
        <source>an axis read as its mirror image</source>
        <translation>mhimili umesomwa kinyume kama kwenye kioo</translation>
    </message>
    <message>
        <source>digits of an axis</source>
        <translation>tarakimu za mhimili</translation>
    </message>
    <message>
        <source>sphere and cylinder exchanged</source>
        <translation>sfia na silinda zimebadilishana</translation>
    </message>
    <message>
        <source>a decimal point in another place</source>
        <translation>nukta ya desimali mahali pengine</translation>
    </message>
    <message>
        <source>a power misread by a step or two</source>
        <translation>nguvu imesomwa vibaya kwa hatua moja au mbili</translation>
    </message>
    <message>
        <source>the addition put on the distance power</source>
        <translation>nyongeza imewekwa kwenye nguvu ya mbali</translation>
    </message>
    <message>
        <source>right and left exchanged in the record</source>
        <translation>kulia na kushoto vimebadilishana kwenye rekodi</translation>
    </message>
    <message>
        <source>the right eye written for the left as well</source>
        <translation>jicho la kulia limeandikwa na kwa la kushoto pia</translation>
    </message>
    <message>
        <source>the prescription of the person before</source>
        <translation>agizo la mtu aliyetangulia</translation>
    </message>
    <message>
        <source>the addition left out</source>
        <translation>nyongeza imeachwa</translation>
    </message>
    <message>
        <source>the addition taken as the whole near power</source>
        <translation>nyongeza imechukuliwa kama nguvu yote ya karibu</translation>
    </message>
    <message>
        <source>the PD of one eye recorded as that of both</source>
        <translation>PD ya jicho moja imerekodiwa kama ya yote mawili</translation>
    </message>
    <message>
        <source>the near PD recorded as distance PD</source>
        <translation>PD ya karibu imerekodiwa kama PD ya mbali</translation>
    </message>
    <message>
        <source>the record, in a way that is none of those listed</source>
        <translation>rekodi, kwa namna isiyo kwenye orodha</translation>
    </message>
    <message>
        <source>a pair from a bin beside the one meant</source>
        <translation>miwani ya kisanduku kilicho kando ya kilichokusudiwa</translation>
    </message>
    <message>
        <source>the power meant, other centres or size</source>
        <translation>nguvu iliyokusudiwa, vitovu au ukubwa mwingine</translation>
    </message>
    <message>
        <source>picked by the sphere, the cylinder left out</source>
        <translation>imechaguliwa kwa sfia, silinda imeachwa</translation>
    </message>
    <message>
        <source>picked by sphere and whole cylinder</source>
        <translation>imechaguliwa kwa sfia na silinda nzima</translation>
    </message>
    <message>
        <source>picked by the sphere less half the cylinder</source>
        <translation>imechaguliwa kwa sfia kutoa nusu ya silinda</translation>
    </message>
    <message>
        <source>the pair for the person&apos;s other purpose</source>
        <translation>miwani ya matumizi mengine ya mtu huyo</translation>
    </message>
    <message>
        <source>the pairs of two persons exchanged</source>
        <translation>miwani ya watu wawili imebadilishana</translation>
    </message>
    <message>
        <source>right and left lens exchanged</source>
        <translation>lenzi ya kulia na ya kushoto zimebadilishana</translation>
    </message>
    <message>
        <source>a lens turned when it was mounted</source>
        <translation>lenzi iligeuka ilipowekwa</translation>
    </message>
    <message>
        <source>a piece that lay in another line&apos;s bin</source>
        <translation>kipande kilichokuwa kwenye kisanduku cha mstari mwingine</translation>
    </message>
    <message>
        <source>another line recorded than given</source>
        <translation>mstari uliorekodiwa si uliotolewa</translation>
    </message>
    <message>
        <source>the piece or its lot off the label</source>
        <translation>kipande au shehena yake haiendani na lebo</translation>
    </message>
    <message>
        <source>one pair recorded twice</source>
        <translation>miwani moja imerekodiwa mara mbili</translation>
    </message>
    <message>
        <source>another pair than the one meant, in a way not listed</source>
        <translation>miwani tofauti na iliyokusudiwa, kwa namna isiyo kwenye orodha</translation>
    </message>
    <message>
        <source>record and pair meant as they are</source>
        <translation>rekodi na miwani vilikusudiwa hivyo</translation>
    </message>
    <message>
        <source>entry %1 records the same pair for the same purpose</source>
        <translation>ingizo %1 limerekodi miwani ile ile kwa matumizi yale yale</translation>
    </message>
    <message>
        <source>recorded %1; what was read fits %2</source>
        <translation>imerekodiwa %1; kilichosomwa kinafaa %2</translation>
    </message>
    <message>
        <source>what was read fits %1; the record says %2</source>
        <translation>kilichosomwa kinafaa %1; rekodi inasema %2</translation>
    </message>
    <message>
        <source>%1 may have been given and another line recorded</source>
        <translation>huenda %1 ilitolewa na mstari mwingine ukarekodiwa</translation>
    </message>
    <message>
        <source>line %1 may be off its label</source>
        <translation>huenda mstari %1 hauendani na lebo yake</translation>
    </message>
    <message>
        <source>%1 would be suggested by this record</source>
        <translation>%1 ingependekezwa na rekodi hii</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s near need</source>
        <translation>miwani iliyotolewa inafaa hitaji la karibu la mtu huyu</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s distance need</source>
        <translation>miwani iliyotolewa inafaa hitaji la mbali la mtu huyu</translation>
    </message>
    <message>
        <source>the pair given is a reader of the addition alone</source>
        <translation>miwani iliyotolewa ni ya kusomea ya nyongeza peke yake</translation>
    </message>
    <message>
        <source>with right and left lens exchanged the pair fits</source>
        <translation>lenzi ya kulia na kushoto zikibadilishwa miwani inafaa</translation>
    </message>
    <message>
        <source>the pair given fits the person of entry %1, and that one fits here</source>
        <translation>miwani iliyotolewa inamfaa mtu wa ingizo %1, na ya huyo inafaa hapa</translation>
    </message>
    <message>
        <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
        <translation>%1 inapunguza kuona kidogo kuliko %2: logMAR %3 dhidi ya %4 kwa macho yote</translation>
    </message>
    <message>
        <source>%1 is within the limits, or may be tried; %2 is outside one</source>
        <translation>%1 iko ndani ya vikomo, au inaweza kujaribiwa; %2 iko nje ya kimoja</translation>
    </message>
    <message>
        <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
        <translation>%1 inakubalika kama ilivyo; %2 iko majaribio hadi uwezo wa kuona nayo uandikwe</translation>
    </message>
    <message>
        <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
        <translation>sawa kwa kuona; %1 ina tahadhari chache kuliko %2: %3 dhidi ya %4</translation>
    </message>
    <message>
        <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
        <translation>sawa kwa kuona na tahadhari; %1 inakosea upande ambao watu huukataa kwa macho machache kuliko %2: %3 dhidi ya %4</translation>
    </message>
    <message>
        <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
        <translation>sawa hadi hapa; %1 inaweka macho katika usawa bora kuliko %2: tofauti ya %3 dhidi ya %4 D</translation>
    </message>
    <message>
        <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
        <translation>sawa hadi hapa; %1 ina prizimu ya mlalo kidogo kuliko %2: dioptri za prizimu %3 dhidi ya %4</translation>
    </message>
    <message>
        <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
        <translation>sawa hadi hapa; kwa karibu, base in (%1) hutangulia base out (%2)</translation>
    </message>
    <message>
        <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
        <translation>sawa hadi hapa; fremu ya %1 inafaa ukubwa unaotakiwa kuliko %2: tofauti ya madaraja %3 dhidi ya %4</translation>
    </message>
    <message>
        <source>equal so far; %1 is less scarce in the box than %2</source>
        <translation>sawa hadi hapa; %1 si adimu sana kwenye sanduku kama %2</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
        <translation>sawa kwa vyote vinavyopimwa; %1 ni vipande vichache kuliko %2: %3 dhidi ya %4</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 comes before %2 by name</source>
        <translation>sawa kwa vyote vinavyopimwa; %1 hutangulia %2 kwa jina</translation>
    </message>
    <message>
        <source>%1 and %2 are the same</source>
        <translation>%1 na %2 ni sawa</translation>
    </message>
    <message>
        <source>above %1 D the vertex distance must be recorded</source>
        <translation>juu ya %1 D umbali wa vertex lazima urekodiwe</translation>
    </message>
    <message>
        <source>a sphere would leave less cylinder than this lens does</source>
        <translation>sfia pekee ingeacha silinda kidogo kuliko lenzi hii</translation>
    </message>
    <message>
        <source>prism by decentration is the prescriber&apos;s decision</source>
        <translation>prizimu kwa kusogeza vitovu ni uamuzi wa aliyeandika agizo</translation>
    </message>
    <message>
        <source>PD not taken: judged at the worst end of what is plausible</source>
        <translation>PD haikuchukuliwa: imepimwa kwa hali mbaya zaidi inayowezekana</translation>
    </message>
    <message>
        <source>the centres of this pair are assumed, not measured</source>
        <translation>vitovu vya miwani hii vimekadiriwa, havikupimwa</translation>
    </message>
    <message>
        <source>heights of the centres not measured</source>
        <translation>urefu wa vitovu haukupimwa</translation>
    </message>
    <message>
        <source>cylinder left over</source>
        <translation>silinda iliyobaki</translation>
    </message>
    <message>
        <source>cylinder left over %1 D, limit %2 D</source>
        <translation>silinda iliyobaki %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>%1 D of cylinder left over</source>
        <translation>silinda %1 D imebaki</translation>
    </message>
    <message>
        <source>difference between the eyes&apos; needs</source>
        <translation>tofauti ya mahitaji ya macho</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D, limit %2 D for one power in both lenses</source>
        <translation>macho yanatofautiana kwa %1 D, kikomo %2 D kwa nguvu moja katika lenzi zote mbili</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D</source>
        <translation>macho yanatofautiana kwa %1 D</translation>
    </message>
    <message>
        <source>size of the power</source>
        <translation>ukubwa wa nguvu</translation>
    </message>
    <message>
        <source>power %1 D, limit %2 D</source>
        <translation>nguvu %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>high power: %1 D</source>
        <translation>nguvu kubwa: %1 D</translation>
    </message>
    <message>
        <source>blur strength</source>
        <translation>kiasi cha ukungu</translation>
    </message>
    <message>
        <source>blur strength %1 D, limit %2 D</source>
        <translation>kiasi cha ukungu %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>blur strength %1 D</source>
        <translation>kiasi cha ukungu %1 D</translation>
    </message>
    <message>
        <source>too much plus</source>
        <translation>plus imezidi</translation>
    </message>
    <message>
        <source>%1 D too much plus, limit %2 D</source>
        <translation>plus imezidi kwa %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>%1 D too much plus</source>
        <translation>plus imezidi kwa %1 D</translation>
    </message>
    <message>
        <source>too much minus or too little plus</source>
        <translation>minus imezidi au plus imepungua</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus, limit %2 D</source>
        <translation>minus imezidi au plus imepungua kwa %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus</source>
        <translation>minus imezidi au plus imepungua kwa %1 D</translation>
    </message>
    <message>
        <source>difference between the two lenses</source>
        <translation>tofauti kati ya lenzi mbili</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D, limit %2 D</source>
        <translation>lenzi mbili zinatofautiana kwa %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D</source>
        <translation>lenzi mbili zinatofautiana kwa %1 D</translation>
    </message>
    <message>
        <source>balance between the eyes</source>
        <translation>usawa kati ya macho</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other, limit %2 D</source>
        <translation>jicho moja liko tofauti na lingine kwa %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other</source>
        <translation>jicho moja liko tofauti na lingine kwa %1 D</translation>
    </message>
    <message>
        <source>cylinder of the lens beyond the need</source>
        <translation>silinda ya lenzi inayozidi hitaji</translation>
    </message>
    <message>
        <source>the lens has %1 D more cylinder than needed, limit %2 D</source>
        <translation>lenzi ina silinda %1 D zaidi ya inayohitajika, kikomo %2 D</translation>
    </message>
    <message>
        <source>%1 D more cylinder than needed</source>
        <translation>silinda %1 D zaidi ya inayohitajika</translation>
    </message>
    <message>
        <source>axis off</source>
        <translation>tofauti ya mhimili</translation>
    </message>
    <message>
        <source>axis off by %1 degrees, limit %2</source>
        <translation>mhimili una tofauti ya digrii %1, kikomo %2</translation>
    </message>
    <message>
        <source>axis off by %1 degrees</source>
        <translation>mhimili una tofauti ya digrii %1</translation>
    </message>
    <message>
        <source>horizontal prism</source>
        <translation>prizimu ya mlalo</translation>
    </message>
    <message>
        <source>horizontal prism %1, limit %2</source>
        <translation>prizimu ya mlalo %1, kikomo %2</translation>
    </message>
    <message>
        <source>horizontal prism %1</source>
        <translation>prizimu ya mlalo %1</translation>
    </message>
    <message>
        <source>vertical prism</source>
        <translation>prizimu ya wima</translation>
    </message>
    <message>
        <source>vertical prism %1, limit %2</source>
        <translation>prizimu ya wima %1, kikomo %2</translation>
    </message>
    <message>
        <source>vertical prism %1</source>
        <translation>prizimu ya wima %1</translation>
    </message>
    <message>
        <source>centres against PD</source>
        <translation>vitovu dhidi ya PD</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD, limit %2 mm</source>
        <translation>vitovu viko mm %1 mbali na PD, kikomo mm %2</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD</source>
        <translation>vitovu viko mm %1 mbali na PD</translation>
    </message>
    <message>
        <source>vertical imbalance at the reading level</source>
        <translation>kutolingana kwa wima kwenye usawa wa kusoma</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level, limit %2</source>
        <translation>kutolingana kwa wima %1 kwenye usawa wa kusoma, kikomo %2</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level</source>
        <translation>kutolingana kwa wima %1 kwenye usawa wa kusoma</translation>
    </message>
    <message>
        <source>frame size class</source>
        <translation>daraja la ukubwa wa fremu</translation>
    </message>
    <message>
        <source>frame size off by %1 class, limit %2</source>
        <translation>ukubwa wa fremu una tofauti ya daraja %1, kikomo %2</translation>
    </message>
    <message>
        <source>frame size off by %1 class</source>
        <translation>ukubwa wa fremu una tofauti ya daraja %1</translation>
    </message>
    <message>
        <source>blur strength at near</source>
        <translation>kiasi cha ukungu karibu</translation>
    </message>
    <message>
        <source>blur strength at near %1 D, limit %2 D</source>
        <translation>kiasi cha ukungu karibu %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>blur strength at near %1 D</source>
        <translation>kiasi cha ukungu karibu %1 D</translation>
    </message>
    <message>
        <source>near power too strong</source>
        <translation>nguvu ya karibu kali mno</translation>
    </message>
    <message>
        <source>near power %1 D too strong, limit %2 D</source>
        <translation>nguvu ya karibu kali mno kwa %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too strong</source>
        <translation>nguvu ya karibu kali mno kwa %1 D</translation>
    </message>
    <message>
        <source>near power too weak</source>
        <translation>nguvu ya karibu dhaifu mno</translation>
    </message>
    <message>
        <source>near power %1 D too weak, limit %2 D</source>
        <translation>nguvu ya karibu dhaifu mno kwa %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too weak</source>
        <translation>nguvu ya karibu dhaifu mno kwa %1 D</translation>
    </message>
    <message>
        <source>sphere off</source>
        <translation>tofauti ya sfia</translation>
    </message>
    <message>
        <source>sphere off by %1 D, limit %2 D</source>
        <translation>sfia ina tofauti ya %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>sphere off by %1 D</source>
        <translation>sfia ina tofauti ya %1 D</translation>
    </message>
    <message>
        <source>cylinder off</source>
        <translation>tofauti ya silinda</translation>
    </message>
    <message>
        <source>cylinder off by %1 D, limit %2 D</source>
        <translation>silinda ina tofauti ya %1 D, kikomo %2 D</translation>
    </message>
    <message>
        <source>cylinder off by %1 D</source>
        <translation>silinda ina tofauti ya %1 D</translation>
    </message>
    <message>
        <source>axis against the prescription</source>
        <translation>mhimili dhidi ya agizo</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription, limit %2</source>
        <translation>mhimili uko digrii %1 mbali na agizo, kikomo %2</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription</source>
        <translation>mhimili uko digrii %1 mbali na agizo</translation>
    </message>
    <message>
        <source>acuity with the mean sphere</source>
        <translation>uwezo wa kuona na sfia ya wastani</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR below the full correction, limit %2</source>
        <translation>uwezo wa kuona na sfia ya wastani uko logMAR %1 chini ya agizo kamili, kikomo %2</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR lower</source>
        <translation>uwezo wa kuona na sfia ya wastani uko chini kwa logMAR %1</translation>
    </message>
    <message>
        <source>acuity with this pair</source>
        <translation>uwezo wa kuona na miwani hii</translation>
    </message>
    <message>
        <source>acuity with this pair is %1 logMAR beyond what is asked, limit %2</source>
        <translation>uwezo wa kuona na miwani hii umepungua kwa logMAR %1 kuliko unaotakiwa, kikomo %2</translation>
    </message>
    <message>
        <source>tried: acuity %1 logMAR short</source>
        <translation>imejaribiwa: uwezo wa kuona umepungua kwa logMAR %1</translation>
    </message>
    <message>
        <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
        <translation>uwezekano kwamba tofauti halisi iko ndani ya kikomo chake ni %1 %: rudia usomaji</translation>
    </message>
    <message>
        <source>sudden loss of sight: eye clinic the same day</source>
        <translation>kupoteza kuona ghafla: kliniki ya macho siku hiyo hiyo</translation>
    </message>
    <message>
        <source>painful eye: eye clinic the same day</source>
        <translation>jicho linauma: kliniki ya macho siku hiyo hiyo</translation>
    </message>
    <message>
        <source>red eye: eye clinic the same day</source>
        <translation>jicho jekundu: kliniki ya macho siku hiyo hiyo</translation>
    </message>
    <message>
        <source>new flashes or floaters: eye clinic the same day</source>
        <translation>mimweko au madoa mapya: kliniki ya macho siku hiyo hiyo</translation>
    </message>
    <message>
        <source>double vision: eye clinic the same day</source>
        <translation>kuona maradufu: kliniki ya macho siku hiyo hiyo</translation>
    </message>
    <message>
        <source>white pupil: eye clinic the same day</source>
        <translation>mboni nyeupe: kliniki ya macho siku hiyo hiyo</translation>
    </message>
    <message>
        <source>a child&apos;s squint: refer before glasses are given</source>
        <translation>makengeza ya mtoto: toa rufaa kabla ya kutoa miwani</translation>
    </message>
    <message>
        <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
        <translation>upimaji kwa matone uliombwa: toa rufaa kabla ya kutoa miwani</translation>
    </message>
    <message>
        <source>lines look bent or broken: eye clinic soon</source>
        <translation>mistari inaonekana imepinda au imekatika: kliniki ya macho hivi karibuni</translation>
    </message>
    <message>
        <source>part of the field of view is missing: eye clinic soon</source>
        <translation>sehemu ya uoni haipo: kliniki ya macho hivi karibuni</translation>
    </message>
    <message>
        <source>halos around lights: eye clinic soon</source>
        <translation>miviringo kwenye taa: kliniki ya macho hivi karibuni</translation>
    </message>
    <message>
        <source>does not reach 6/9 in each eye with the final prescription</source>
        <translation>hafikii 6/9 kwa kila jicho na agizo la mwisho</translation>
    </message>
    <message>
        <source>presents worse than 6/60 in an eye, even if glasses help</source>
        <translation>amekuja na chini ya 6/60 kwa jicho moja, hata kama miwani inasaidia</translation>
    </message>
    <message>
        <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
        <translation>mtoto mwenye +3.50 D au zaidi, au silinda ya 1.50 D au zaidi</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.50 D or more</source>
        <translation>chini ya miaka 8 na macho yanatofautiana kwa 1.50 D au zaidi</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.00 D or more</source>
        <translation>chini ya miaka 8 na macho yanatofautiana kwa 1.00 D au zaidi</translation>
    </message>
    <message>
        <source>mean sphere beyond 6.00 D</source>
        <translation>sfia ya wastani zaidi ya 6.00 D</translation>
    </message>
    <message>
        <source>may be without its lens (aphakia): vertex distance needed</source>
        <translation>huenda jicho halina lenzi yake (aphakia): umbali wa vertex unahitajika</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
        <translation>chini ya 6/12 na agizo bora, na tundu dogo halisaidii</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription; pinhole not taken</source>
        <translation>chini ya 6/12 na agizo bora; tundu dogo halikupimwa</translation>
    </message>
    <message>
        <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
        <translation>tundu dogo linaona mistari miwili au zaidi kuliko agizo la mwisho: pima macho tena</translation>
    </message>
    <message>
        <source>objective reading and final prescription are %1 D apart in mean sphere</source>
        <translation>usomaji wa mashine na agizo la mwisho vinatofautiana kwa %1 D katika sfia ya wastani</translation>
    </message>
    <message>
        <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
        <translation>agizo la mwisho linarudia usomaji wa mashine katika namba zote sita: je, liliboreshwa?</translation>
    </message>
    <message>
        <source>under 16: the prescriber&apos;s name stays with the pair, and the guardian is told</source>
        <translation>chini ya miaka 16: jina la aliyeandika agizo hubaki na miwani, na mlezi huambiwa</translation>
    </message>
    <message>
        <source>age not recorded: the strictest limits that could apply are used</source>
        <translation>umri haukurekodiwa: vikomo vikali zaidi vinavyoweza kuhusika vinatumika</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
        <translation>jicho moja tu linaona: lenzi zinazohimili pigo na kinga ya macho vinashauriwa</translation>
    </message>
    <message>
        <source>an objective reading only: a subjective refraction should follow</source>
        <translation>usomaji wa mashine tu: upimaji wa kuuliza ufuate</translation>
    </message>
    <message>
        <source>the prescription is %1 months old</source>
        <translation>agizo lina miezi %1</translation>
    </message>
    <message>
        <source>symptoms recorded: %1</source>
        <translation>dalili zilizorekodiwa: %1</translation>
    </message>
    <message>
        <source>PD not taken</source>
        <translation>PD haikuchukuliwa</translation>
    </message>
    <message>
        <source>near PD computed from the distance PD, not measured</source>
        <translation>PD ya karibu imekokotolewa kutoka PD ya mbali, haikupimwa</translation>
    </message>
    <message>
        <source>an eye with a lens implant: additions differ between the eyes</source>
        <translation>jicho lenye lenzi ya kupandikizwa: nyongeza hutofautiana kati ya macho</translation>
    </message>
    <message>
        <source>above 4.00 D the vertex distance matters: record it</source>
        <translation>juu ya 4.00 D umbali wa vertex una athari: urekodi</translation>
    </message>
    <message>
        <source>the PD of each eye</source>
        <translation>PD ya kila jicho</translation>
    </message>
    <message>
        <source>the heights in the chosen frame</source>
        <translation>urefu katika fremu iliyochaguliwa</translation>
    </message>
    <message>
        <source>the vertex distance of the refraction</source>
        <translation>umbali wa vertex wa upimaji wa macho</translation>
    </message>
    <message>
        <source>the frame</source>
        <translation>fremu</translation>
    </message>
    <message>
        <source>the prescriber&apos;s name, for a child</source>
        <translation>jina la aliyeandika agizo, kwa mtoto</translation>
    </message>
    <message>
        <source>single vision for %1 mm: whole power, nothing to be added</source>
        <translation>lenzi ya umbali mmoja kwa mm %1: nguvu yote, hakuna cha kuongeza</translation>
    </message>
    <message>
        <source>centration computed from the distance PD, not measured</source>
        <translation>vitovu vimekokotolewa kutoka PD ya mbali, havikupimwa</translation>
    </message>
    <message>
        <source>each eye&apos;s PD is half of the binocular one</source>
        <translation>PD ya kila jicho ni nusu ya ile ya macho yote</translation>
    </message>
    <message>
        <source>balance lens: as its fellow, for looks and weight</source>
        <translation>lenzi ya usawa: kama mwenzake, kwa mwonekano na uzito</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses are advised</source>
        <translation>jicho moja tu linaona: lenzi zinazohimili pigo zinashauriwa</translation>
    </message>
    <message>
        <source>for a child: impact-resistant lenses are advised</source>
        <translation>kwa mtoto: lenzi zinazohimili pigo zinashauriwa</translation>
    </message>
    <message>
        <source>prism as prescribed, each eye its own</source>
        <translation>prizimu kama ilivyoandikwa, kila jicho yake</translation>
    </message>
    <message>
        <source>refracted at a vertex distance of %1 mm</source>
        <translation>macho yamepimwa kwa umbali wa vertex wa mm %1</translation>
    </message>
    <message>
        <source>from an objective reading only</source>
        <translation>kutoka usomaji wa mashine tu</translation>
    </message>
    <message>
        <source>the digits %1 do not go together: the last would be %2, not %3; scan again, or type what stands below the bars</source>
        <translation>tarakimu %1 hazilingani: ya mwisho ingekuwa %2, si %3; skani tena, au andika kilicho chini ya mistari</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a code; write its thirteen digits (twelve take a 0 before them), or leave the code out</source>
        <translation>&quot;%1&quot; si msimbo; andika tarakimu zake kumi na tatu (zikiwa kumi na mbili weka 0 mbele), au acha msimbo</translation>
    </message>
    <message>
        <source>there is no line %1 in this camp</source>
        <translation>hakuna mstari %1 katika kambi hii</translation>
    </message>
    <message>
        <source>near glasses need an addition, or a near power found by trial</source>
        <translation>miwani ya karibu inahitaji nyongeza, au nguvu ya karibu iliyopatikana kwa majaribio</translation>
    </message>
    <message>
        <source>this purpose needs an addition, or a near power found by trial</source>
        <translation>matumizi haya yanahitaji nyongeza, au nguvu ya karibu iliyopatikana kwa majaribio</translation>
    </message>
    <message>
        <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
        <translation>upimaji wa kuuliza: mtoto hapewi kamwe miwani kwa usomaji wa mashine peke yake</translation>
    </message>
    <message>
        <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
        <translation>nyongeza chini ya miaka 35 lazima ithibitishwe: uwezo wa kuona karibu nayo, au nguvu ya karibu kwa majaribio</translation>
    </message>
    <message>
        <source>small error and 6/9 or better without glasses</source>
        <translation>kasoro ndogo na 6/9 au bora zaidi bila miwani</translation>
    </message>
    <message>
        <source>glasses gain the better eye less than two lines</source>
        <translation>miwani inaongeza chini ya mistari miwili kwa jicho bora</translation>
    </message>
    <message>
        <source>reads without spectacles</source>
        <translation>anasoma bila miwani</translation>
    </message>
    <message>
        <source>reads N6 without spectacles</source>
        <translation>anasoma N6 bila miwani</translation>
    </message>
    <message>
        <source>the own pair still fits: a spare only</source>
        <translation>miwani yake bado inafaa: ya akiba tu</translation>
    </message>
    <message>
        <source>the PD: measure it</source>
        <translation>PD: ipime</translation>
    </message>
    <message>
        <source>the vertex distance of this prescription: measure it</source>
        <translation>umbali wa vertex wa agizo hili: upime</translation>
    </message>
    <message>
        <source>nothing in the box for this purpose</source>
        <translation>hakuna kitu kwenye sanduku kwa matumizi haya</translation>
    </message>
    <message>
        <source>if the prescriber marks the left eye balance, %1 would fit</source>
        <translation>ikiwa aliyeandika agizo ataweka jicho la kushoto kuwa la usawa (balance), %1 ingefaa</translation>
    </message>
    <message>
        <source>if the prescriber marks the right eye balance, %1 would fit</source>
        <translation>ikiwa aliyeandika agizo ataweka jicho la kulia kuwa la usawa (balance), %1 ingefaa</translation>
    </message>
    <message>
        <source>%1 is used: clean it and read its power before it is given</source>
        <translation>%1 imetumika: isafishe na usome nguvu yake kabla ya kuitoa</translation>
    </message>
    <message>
        <source>%1 fits</source>
        <translation>%1 inafaa</translation>
    </message>
    <message>
        <source>try %1 and type the acuity with it</source>
        <translation>jaribu %1 na uandike uwezo wa kuona nayo</translation>
    </message>
    <message>
        <source>a rules profile named %1</source>
        <translation>wasifu wa kanuni uitwao %1</translation>
    </message>
    <message>
        <source>a final prescription for at least one eye</source>
        <translation>agizo la mwisho kwa angalau jicho moja</translation>
    </message>
    <message>
        <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
        <translation>kuanzia miaka 65 badiliko la %1 D kwa mara moja ni kubwa: kuanguka; muulize aliyeandika agizo</translation>
    </message>
    <message>
        <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
        <translation>%1 D mbali na miwani yake: ikiwa ilitokea ndani ya miezi, kliniki ya macho itafute sababu</translation>
    </message>
    <message>
        <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
        <translation>kuanzia miaka 65 ni vigumu kuzoea mhimili wa mshazari uliogeuka zaidi ya digrii 10; muulize aliyeandika agizo</translation>
    </message>
    <message>
        <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
        <translation>nyongeza %1 iko zaidi ya 0.75 D mbali na kila jedwali la umri huu: je, ilipimwa kwa mm %2?</translation>
    </message>
    <message>
        <source>does not read N8 with the near correction: see where the rest is lost</source>
        <translation>hasomi N8 na nguvu ya karibu: angalia sehemu nyingine inapotea wapi</translation>
    </message>
    <message>
        <source>half the addition is used: no distance was stated for this work</source>
        <translation>nusu ya nyongeza imetumika: umbali wa kazi hii haukutajwa</translation>
    </message>
    <message>
        <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
        <translation>miwani yake iko ndani ya vikomo kwa matumizi haya: labda ya akiba tu</translation>
    </message>
    <message>
        <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
        <translation>mtoto mwenye hyperopia bila matone: usomaji unaweza kuficha kama 3 D zaidi; aliyeandika agizo huamua</translation>
    </message>
    <message>
        <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
        <translation>mtoto bila matone: usomaji kama huo huwa kama 0.4 D upande wa minus kwa wenye myopia, zaidi kwa wengine</translation>
    </message>
    <message>
        <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
        <translation>chini ya miaka 8 na myopia zaidi ya 3.00 D: hatari ya jicho vivu (amblyopia)</translation>
    </message>
    <message>
        <source>a child&apos;s eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
        <translation>macho ya mtoto yanatofautiana kwa 1.00 D au zaidi upande wa plus: hatari ya jicho vivu (amblyopia)</translation>
    </message>
    <message>
        <source>a child&apos;s cylinders differ by 2.00 D or more: at risk of amblyopia</source>
        <translation>silinda za mtoto zinatofautiana kwa 2.00 D au zaidi: hatari ya jicho vivu (amblyopia)</translation>
    </message>
    <message>
        <source>would need better acuity with this very pair</source>
        <translation>ingehitaji uwezo bora wa kuona na miwani hii hii</translation>
    </message>
    <message>
        <source>would do once the vertex distance is recorded</source>
        <translation>ingefaa umbali wa vertex ukirekodiwa</translation>
    </message>
    <message>
        <source>would do if the PD, once measured, is near %1 mm</source>
        <translation>ingefaa ikiwa PD, ikipimwa, iko karibu na mm %1</translation>
    </message>
    <message>
        <source>would do if the prescriber allows prism by decentration</source>
        <translation>ingefaa ikiwa aliyeandika agizo ataruhusu prizimu kwa kusogeza vitovu</translation>
    </message>
    <message>
        <source>would do with centres %1 mm apart</source>
        <translation>ingefaa vitovu vikiwa mm %1 kati yake</translation>
    </message>
    <message>
        <source>would do with both centres at the same height</source>
        <translation>ingefaa vitovu vyote vikiwa urefu mmoja</translation>
    </message>
    <message>
        <source>would do with %1 in both lenses instead of %2</source>
        <translation>ingefaa kwa %1 katika lenzi zote mbili badala ya %2</translation>
    </message>
    <message>
        <source>would do with %1 D in both lenses</source>
        <translation>ingefaa kwa %1 D katika lenzi zote mbili</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the right lens</source>
        <translation>ingefaa kwa sfia %1 katika lenzi ya kulia</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the left lens</source>
        <translation>ingefaa kwa sfia %1 katika lenzi ya kushoto</translation>
    </message>
    <message>
        <source>would do with addition %1</source>
        <translation>ingefaa kwa nyongeza %1</translation>
    </message>
    <message>
        <source>would do with a lens of its own for each eye: right %1, left %2</source>
        <translation>ingefaa kwa lenzi yake kila jicho: kulia %1, kushoto %2</translation>
    </message>
    <message>
        <source>would do with lenses made to the prescription, cylinder included</source>
        <translation>ingefaa kwa lenzi zilizotengenezwa kwa agizo, pamoja na silinda</translation>
    </message>
    <message>
        <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
        <translation>“%1” si sehemu ya uwezo wa kuona; andika kama 6/9, 0.67 decimal au logMAR 0.2</translation>
    </message>
    <message>
        <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
        <translation>“%1” si uwezo wa kuona; andika 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL au NPL</translation>
    </message>
    <message>
        <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
        <translation>“%1” ingekuwa logMAR %2; uwezo wa kuona uko kati ya logMAR -0.5 na 3: uhakiki</translation>
    </message>
    <message>
        <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
        <translation>hakuna chati inayosomwa kwa %1; andika kwanza umbali wa kipimo, kama 6/9 au 20/30</translation>
    </message>
    <message>
        <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
        <translation>“%1” haisemi kipimo chake; andika “%1 decimal” au “logMAR %1”</translation>
    </message>
    <message>
        <source>no acuity is written; write 6/9 or leave it out</source>
        <translation>hakuna uwezo wa kuona ulioandikwa; andika 6/9 au uache</translation>
    </message>
    <message>
        <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
        <translation>“%1” si uwezo wa kuona karibu; andika N8, M 1.0 au 1.0M, na “at 40 cm” baada yake</translation>
    </message>
    <message>
        <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
        <translation>umbali katika “%1” hausomeki; uandike kama “at 40 cm”, cm 5 hadi 200</translation>
    </message>
    <message>
        <source>log10(1 + b²): low blur of any kind; no axis and no pupil in it</source>
        <translation>log10(1 + b²): ukungu mdogo wa aina yoyote; bila mhimili wala mboni</translation>
    </message>
    <message>
        <source>0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place</source>
        <translation>0.017 C² + 0.125 C: silinda iliyobaki C kwa wenye presbyopia, sfia ya wastani ikiwa sawa</translation>
    </message>
    <message>
        <source>0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far</source>
        <translation>logMAR 0.18 hadi 0.22 kwa dioptri ya silinda, sfia ya wastani ikiwa sawa, mbali</translation>
    </message>
    <message>
        <source>one line lost for every 0.25 to 0.5 D of blur</source>
        <translation>mstari mmoja hupotea kwa kila 0.25 hadi 0.5 D ya ukungu</translation>
    </message>
    <message>
        <source>%1 lies outside the powers the set %2 was made for</source>
        <translation>%1 iko nje ya nguvu ambazo seti %2 ilitengenezewa</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2</source>
        <translation>meridiani ya sfia ina tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiani ya sfia ina tofauti ya %1, kikomo %2: imezidi kwa %3</translation>
    </message>
    <message>
        <source>sphere meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiani ya sfia ina tofauti ya %1: inaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2</source>
        <translation>meridiani kuu yenye plus zaidi ina tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiani kuu yenye plus zaidi ina tofauti ya %1, kikomo %2: imezidi kwa %3</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiani kuu yenye plus zaidi ina tofauti ya %1: inaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2</source>
        <translation>meridiani kuu yenye minus zaidi ina tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiani kuu yenye minus zaidi ina tofauti ya %1, kikomo %2: imezidi kwa %3</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiani kuu yenye minus zaidi ina tofauti ya %1: inaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2</source>
        <translation>silinda ina tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2: %3 too much</source>
        <translation>silinda ina tofauti ya %1, kikomo %2: imezidi kwa %3</translation>
    </message>
    <message>
        <source>cylinder off by %1: shown only, the set has no limit for it</source>
        <translation>silinda ina tofauti ya %1: inaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2</source>
        <translation>mhimili una tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2: %3 too much</source>
        <translation>mhimili una tofauti ya %1, kikomo %2: umezidi kwa %3</translation>
    </message>
    <message>
        <source>axis off by %1: shown only, the set has no limit for it</source>
        <translation>mhimili una tofauti ya %1: unaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2</source>
        <translation>nyongeza ina tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2: %3 too much</source>
        <translation>nyongeza ina tofauti ya %1, kikomo %2: imezidi kwa %3</translation>
    </message>
    <message>
        <source>addition off by %1: shown only, the set has no limit for it</source>
        <translation>nyongeza ina tofauti ya %1: inaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2</source>
        <translation>prizimu ya mlalo ina tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2: %3 too much</source>
        <translation>prizimu ya mlalo ina tofauti ya %1, kikomo %2: imezidi kwa %3</translation>
    </message>
    <message>
        <source>horizontal prism off by %1: shown only, the set has no limit for it</source>
        <translation>prizimu ya mlalo ina tofauti ya %1: inaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2</source>
        <translation>prizimu ya wima ina tofauti ya %1, kikomo %2</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2: %3 too much</source>
        <translation>prizimu ya wima ina tofauti ya %1, kikomo %2: imezidi kwa %3</translation>
    </message>
    <message>
        <source>vertical prism off by %1: shown only, the set has no limit for it</source>
        <translation>prizimu ya wima ina tofauti ya %1: inaonyeshwa tu, seti haina kikomo chake</translation>
    </message>
    <message>
        <source>there is no tolerance set “%1”; there are: %2</source>
        <translation>hakuna seti ya vikomo “%1”; zipo: %2</translation>
    </message>
    <message>
        <source>the tolerance set “%1” is not enabled: %2</source>
        <translation>seti ya vikomo “%1” haijawashwa: %2</translation>
    </message>
    <message>
        <source>distance %1 and near %2 differ in cylinder; no addition joins them</source>
        <translation>mbali %1 na karibu %2 zina silinda tofauti; hakuna nyongeza inayoziunganisha</translation>
    </message>
    <message>
        <source>near %2 has less plus than distance %1; were they exchanged?</source>
        <translation>karibu %2 ina plus kidogo kuliko mbali %1; je, zilibadilishana?</translation>
    </message>
    <message>
        <source>this text says it is the left eye, and stands for the right</source>
        <translation>maandishi haya yanasema ni jicho la kushoto, na yako mahali pa la kulia</translation>
    </message>
    <message>
        <source>this text says it is the right eye, and stands for the left</source>
        <translation>maandishi haya yanasema ni jicho la kulia, na yako mahali pa la kushoto</translation>
    </message>
    <message>
        <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
        <translation>hakuna kilichoandikwa kwa jicho hili; andika nguvu yake, au balance, artificial, blind au not measured</translation>
    </message>
    <message>
        <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
        <translation>hakuna nguvu iliyoandikwa; andika kama +2.00, -0.75 au 0.00</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2 or %3</source>
        <translation>%1 haina nukta ya desimali; andika %2 au %3</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2</source>
        <translation>%1 haina nukta ya desimali; andika %2</translation>
    </message>
    <message>
        <source>%1 is beyond %2 D; check the figure and write it again</source>
        <translation>%1 imezidi %2 D; hakiki namba na uiandike tena</translation>
    </message>
    <message>
        <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
        <translation>hakuna nguvu inayosomeka kwenye “%1”; andika kama +2.00, -0.75 au 0.00</translation>
    </message>
    <message>
        <source>cylinder %1 has no sign; write +%1 or -%1</source>
        <translation>silinda %1 haina alama; andika +%1 au -%1</translation>
    </message>
    <message>
        <source>%1 has no sign; write +%1 or -%1</source>
        <translation>%1 haina alama; andika +%1 au -%1</translation>
    </message>
    <message>
        <source>addition -%1 is negative; an addition is plus: check it</source>
        <translation>nyongeza -%1 ni hasi; nyongeza ni plus: ihakiki</translation>
    </message>
    <message>
        <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
        <translation>mhimili %1 uko bila silinda; andika sfia, silinda na mhimili, kama -1.00 -0.50 x %1</translation>
    </message>
    <message>
        <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
        <translation>mhimili %1 uko nje ya digrii 1..180; meridiani hiyo hiyo ingekuwa %2: hakiki na uandike tena</translation>
    </message>
    <message>
        <source>cylinder %1 has no axis; write it with its axis, as %1 x 90</source>
        <translation>silinda %1 haina mhimili; iandike na mhimili wake, kama %1 x 90</translation>
    </message>
    <message>
        <source>“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90</source>
        <translation>“%1” si sehemu ya agizo linalosomeka; andika kama -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>two prisms lie in one direction; write their sum once, as 1.5 base in</source>
        <translation>prizimu mbili ziko upande mmoja; andika jumla yake mara moja, kama 1.5 base in</translation>
    </message>
    <message>
        <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
        <translation>base ya prizimu haisomeki; andika base in, out, up au down, au base 0..360</translation>
    </message>
    <message>
        <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
        <translation>prizimu %1 haiko kati ya 0 na %2; andika ukubwa na base yake, kama 2 base in</translation>
    </message>
    <message>
        <source>too few (%1 read): three or more tell how steady they are</source>
        <translation>chache mno (zimesomwa %1): tatu au zaidi huonyesha uthabiti wake</translation>
    </message>
    <message>
        <source>scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>zimetawanyika: masomo yako %1 D kutoka wastani wake, kikomo ni %2 D; %3 kati ya %4 yameachwa</translation>
    </message>
    <message>
        <source>steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>ni thabiti: masomo yako %1 D kutoka wastani wake, kikomo ni %2 D; %3 kati ya %4 yameachwa</translation>
    </message>
    <message>
        <source>take readings until there are three or more; until then a published scatter is used</source>
        <translation>chukua masomo hadi yawe matatu au zaidi; hadi hapo mtawanyiko uliochapishwa hutumika</translation>
    </message>
    <message>
        <source>scattered again: look at the eye&apos;s health (cornea, lens, tears, fixation) before prescribing</source>
        <translation>yametawanyika tena: angalia afya ya jicho (konea, lenzi, machozi, kukaza macho) kabla ya kuandika agizo</translation>
    </message>
    <message>
        <source>repeat the readings, with blinks and steady fixation</source>
        <translation>rudia masomo, kwa kupepesa na kukaza macho</translation>
    </message>
    <message>
        <source>use the mean of the readings kept; the ones left out are shown</source>
        <translation>tumia wastani wa masomo yaliyobakizwa; yaliyoachwa yanaonyeshwa</translation>
    </message>
    <message>
        <source>use the mean as the start of the subjective refraction</source>
        <translation>tumia wastani kama mwanzo wa upimaji wa kuuliza</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere (limit 1) and %2 D in astigmatism (limit 0.5): confirm the final</source>
        <translation>mashine na la mwisho vinatofautiana kwa %1 D katika sfia ya wastani (kikomo 1) na %2 D katika astigmatism (kikomo 0.5): thibitisha la mwisho</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere; up to 0.5 is usual</source>
        <translation>mashine na la mwisho vinatofautiana kwa %1 D katika sfia ya wastani; hadi 0.5 ni kawaida</translation>
    </message>
    <message>
        <source>objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism</source>
        <translation>mashine na la mwisho vinakubaliana: tofauti ya %1 D katika sfia ya wastani, %2 D katika astigmatism</translation>
    </message>
    <message>
        <source>a movement of an entry “%1” names no line</source>
        <translation>badiliko la ingizo “%1” halitaji mstari</translation>
    </message>
    <message>
        <source>an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 quarantined</source>
        <translation>ingizo “%1” haliwezi kubadilisha mstari %2 kwa %3 zilizopo, %4 zilizoshikiliwa, %5 karantini</translation>
    </message>
    <message>
        <source>an entry “%1” moves at least one line</source>
        <translation>ingizo “%1” hubadilisha angalau mstari mmoja</translation>
    </message>
    <message>
        <source>an entry “%1” names a person by the camp code</source>
        <translation>ingizo “%1” humtaja mtu kwa msimbo wa kambi</translation>
    </message>
    <message>
        <source>“entered-in-error” names the entry it takes back, other kinds none</source>
        <translation>“entered-in-error” hutaja ingizo linalorudishwa, aina nyingine hazitaji</translation>
    </message>
    <message>
        <source>an entry “%1” needs “%2”</source>
        <translation>ingizo “%1” linahitaji “%2”</translation>
    </message>
    <message>
        <source>entry %1 is the first that is not as it was written: %2; the audit stops before it</source>
        <translation>ingizo %1 ni la kwanza lisilo kama lilivyoandikwa: %2; ukaguzi unaishia kabla yake</translation>
    </message>
    <message>
        <source>%1 stands in the waiting list already; the row is left out</source>
        <translation>%1 yuko kwenye orodha ya kusubiri tayari; safu imeachwa</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM, %1, cannot be started: %2</source>
        <translation>programu inayosoma na kuandika DICOM, %1, haiwezi kuanzishwa: %2</translation>
    </message>
    <message>
        <source>%1 is there already; name a new file, or move that one away</source>
        <translation>%1 ipo tayari; taja faili mpya, au hamisha hiyo</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to write</source>
        <translation>agizo la %1 halijakamilika; hakuna oda ya kuandika</translation>
    </message>
    <message>
        <source>%1 is this site; name the other one</source>
        <translation>%1 ni kituo hiki; taja kingine</translation>
    </message>
    <message>
        <source>entry %1 is not a transfer in the air; `quarterstep transfer` lists them</source>
        <translation>ingizo %1 si uhamisho ulio njiani; `quarterstep transfer` huorodhesha uliopo</translation>
    </message>
    <message>
        <source>%1 has several purposes, or none that is complete; take them up in the list and choose the one that was ordered</source>
        <translation>%1 ana matumizi kadhaa, au hakuna lililokamilika; yafungue kwenye orodha na uchague lililoagizwa</translation>
    </message>
    <message>
        <source>%1 is not in the list; load the table in which the prescription stands</source>
        <translation>%1 hayuko kwenye orodha; pakia jedwali lenye agizo hilo</translation>
    </message>
    <message>
        <source>the focimeter reads %1 right, the pair has %2</source>
        <translation>fosimita inasoma %1 kulia, miwani ina %2</translation>
    </message>
    <message>
        <source>the focimeter reads %1 left, the pair has %2</source>
        <translation>fosimita inasoma %1 kushoto, miwani ina %2</translation>
    </message>
    <message>
        <source>this is not the PIN of the %1; nothing was written</source>
        <translation>hii si PIN ya jukumu %1; hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM gave no answer that is understood</source>
        <translation>programu inayosoma na kuandika DICOM haikutoa jibu linaloeleweka</translation>
    </message>
    <message>
        <source>rules.yaml is not as it was when this camp was opened; open it again</source>
        <translation>rules.yaml si kama ilivyokuwa kambi hii ilipofunguliwa; ifungue tena</translation>
    </message>
    <message>
        <source>this is no DICOM file: the letters DICM do not stand at byte 128</source>
        <translation>hii si faili ya DICOM: herufi DICM hazipo kwenye baiti 128</translation>
    </message>
    <message>
        <source>this is too large for a refraction: %1 bytes, %2 items</source>
        <translation>hii ni kubwa mno kwa upimaji wa macho: baiti %1, vipengele %2</translation>
    </message>
    <message>
        <source>the DICOM file is broken, or neither explicit nor implicit little endian: a length points out of it, or a part is not understood</source>
        <translation>faili ya DICOM imeharibika, au si explicit wala implicit little endian: urefu unaelekeza nje ya faili, au sehemu haieleweki</translation>
    </message>
    <message>
        <source>the DICOM file is broken: %1</source>
        <translation>faili ya DICOM imeharibika: %1</translation>
    </message>
    <message>
        <source>the object &quot;%1&quot; is none of lensometry, autorefraction, subjective refraction or visual acuity</source>
        <translation>kitu &quot;%1&quot; si usomaji wa miwani kwa fosimita, upimaji wa mashine, upimaji wa kumuuliza mtu wala uwezo wa kuona</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>haikutumika: %1</translation>
    </message>
    <message>
        <source>%1 of the %2 eye cannot be used as it stands</source>
        <translation>%1 ya jicho la %2 haiwezi kutumika kama ilivyo</translation>
    </message>
    <message>
        <source>there is a second refraction of %1; give only the one that counts</source>
        <translation>kuna upimaji wa macho wa pili wa %1; toa ule tu unaohesabika</translation>
    </message>
    <message>
        <source>nothing is stated for the %1 eye; ask for it: a power, or that it is a balance lens, artificial, blind or not measured</source>
        <translation>hakuna kilichotajwa kwa jicho la %1; uliza: nguvu, au kwamba ni lenzi ya usawa, jicho la bandia, kipofu au halikupimwa</translation>
    </message>
    <message>
        <source>there is a second reading of the %1 eye of %2; give only one</source>
        <translation>kuna usomaji wa pili wa jicho la %1 wa %2; toa mmoja tu</translation>
    </message>
    <message>
        <source>an acuity is kept without being used: &quot;%1&quot; at %2 is none that the table has</source>
        <translation>uwezo wa kuona umehifadhiwa bila kutumika: &quot;%1&quot; kwa %2 haupo kwenye jedwali</translation>
    </message>
    <message>
        <source>there is no subjective refraction of %1; what is here is no prescription</source>
        <translation>hakuna upimaji wa kumuuliza mtu wa %1; kilichopo hapa si agizo</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a patient id: at most 64 characters, no backslash</source>
        <translation>&quot;%1&quot; haiwezi kuwa kitambulisho cha mgonjwa: herufi zisizozidi 64, bila backslash</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot; stands in line %2 already; give each row a code of its own</source>
        <translation>mtu &quot;%1&quot; yupo tayari kwenye mstari %2; ipe kila safu msimbo wake</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write it as -1.25</source>
        <translation>&quot;%1&quot; si namba; iandike kama -1.25</translation>
    </message>
    <message>
        <source>%1 is outside -%2 to %2</source>
        <translation>%1 iko nje ya -%2 hadi %2</translation>
    </message>
    <message>
        <source>%1 is finer than a thousandth; round it</source>
        <translation>%1 ni ndogo kuliko sehemu ya elfu; izungushe</translation>
    </message>
    <message>
        <source>%1 of %2 stays here: it names people or is in their own words</source>
        <translation>%1 ya %2 inabaki hapa: inataja watu au ni maneno yao wenyewe</translation>
    </message>
    <message>
        <source>the eye is &quot;%1&quot;; right or left is wanted</source>
        <translation>jicho ni &quot;%1&quot;; right au left inahitajika</translation>
    </message>
    <message>
        <source>there is a second lens for the %1 eye; a resource for each purpose is understood, with one lens an eye</source>
        <translation>kuna lenzi ya pili kwa jicho la %1; hueleweka rasilimali moja kwa kila matumizi, yenye lenzi moja kwa jicho</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; a number without quotes is wanted, as -1.25</source>
        <translation>%1 ni &quot;%2&quot;; namba bila alama za nukuu inahitajika, kama -1.25</translation>
    </message>
    <message>
        <source>the sphere of the %1 eye is not stated; that is not zero: write 0.00 for plano, or balance, artificial, blind or not measured as the note</source>
        <translation>sfia ya jicho la %1 haikutajwa; hiyo si sifuri: andika 0.00 kwa plano, au balance, artificial, blind au not measured kama maelezo</translation>
    </message>
    <message>
        <source>axis %1 is not a whole number of degrees</source>
        <translation>mhimili %1 si digrii kamili</translation>
    </message>
    <message>
        <source>prism is a list of amounts and bases</source>
        <translation>prism ni orodha ya kiasi na base</translation>
    </message>
    <message>
        <source>the prism %1 is below zero; turn its base instead</source>
        <translation>prizimu %1 iko chini ya sifuri; badala yake geuza base yake</translation>
    </message>
    <message>
        <source>the base is &quot;%1&quot;; up, down, in or out is wanted</source>
        <translation>base ni &quot;%1&quot;; up, down, in au out inahitajika</translation>
    </message>
    <message>
        <source>&quot;%1&quot; inside a prism is not used</source>
        <translation>&quot;%1&quot; ndani ya prizimu haitumiki</translation>
    </message>
    <message>
        <source>the product is not coded as lens or contact; it is read as a spectacle lens</source>
        <translation>bidhaa haina msimbo wa lens wala contact; inasomwa kama lenzi ya miwani</translation>
    </message>
    <message>
        <source>axis %1 of %2 leaves as %3: FHIR takes whole degrees</source>
        <translation>mhimili %1 wa %2 unatoka kama %3: FHIR hupokea digrii kamili</translation>
    </message>
    <message>
        <source>%1 may change what the prescription means, and is not understood; ask for it without</source>
        <translation>%1 inaweza kubadilisha maana ya agizo, na haieleweki; omba lisilo nayo</translation>
    </message>
    <message>
        <source>the status is &quot;%1&quot;; active is wanted</source>
        <translation>hali ni &quot;%1&quot;; active inahitajika</translation>
    </message>
    <message>
        <source>meta.%1 is left out: it belongs to the sender&apos;s copy</source>
        <translation>meta.%1 imeachwa: ni ya nakala ya mtumaji</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole date; how old the prescription is stays open</source>
        <translation>&quot;%1&quot; si tarehe kamili; umri wa agizo haujulikani</translation>
    </message>
    <message>
        <source>the narrative is left out: it repeats what is coded</source>
        <translation>maelezo ya maandishi yameachwa: yanarudia yaliyo kwenye misimbo</translation>
    </message>
    <message>
        <source>the resource %1 is left out: only VisionPrescription and its measures are read</source>
        <translation>rasilimali %1 imeachwa: husomwa VisionPrescription na vipimo vyake tu</translation>
    </message>
    <message>
        <source>of an observation left out: %1</source>
        <translation>imeachwa kutoka uchunguzi: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: it was entered in error</source>
        <translation>uchunguzi %1 wa %2 umeachwa: uliingizwa kimakosa</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: its code is not known here</source>
        <translation>uchunguzi %1 wa %2 umeachwa: msimbo wake haujulikani hapa</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: something in it may change its meaning</source>
        <translation>uchunguzi %1 wa %2 umeachwa: kitu ndani yake kinaweza kubadilisha maana yake</translation>
    </message>
    <message>
        <source>a measure without a code is left out: &quot;%1&quot;</source>
        <translation>kipimo bila msimbo kimeachwa: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this is XML; ask for the same in JSON (application/fhir+json)</source>
        <translation>hii ni XML; omba hiyo hiyo kwa JSON (application/fhir+json)</translation>
    </message>
    <message>
        <source>this is no resource of FHIR: resourceType is missing</source>
        <translation>hii si rasilimali ya FHIR: resourceType haipo</translation>
    </message>
    <message>
        <source>of the Bundle left out: %1; it belongs to the sender&apos;s envelope</source>
        <translation>imeachwa kutoka Bundle: %1; ni ya bahasha ya mtumaji</translation>
    </message>
    <message>
        <source>there is no prescription for spectacles to take in here</source>
        <translation>hakuna agizo la miwani la kuingiza hapa</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: it is for contact lenses, whose powers and curves are no spectacles&apos;</source>
        <translation>agizo la %1 limeachwa: ni la lenzi za kugusa jicho, ambazo nguvu na mikunjo yake si ya miwani</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: its status is %2</source>
        <translation>agizo la %1 limeachwa: hali yake ni %2</translation>
    </message>
    <message>
        <source>kept without being used: %1</source>
        <translation>imehifadhiwa bila kutumika: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: no prescription of theirs is taken in</source>
        <translation>uchunguzi %1 wa %2 umeachwa: hakuna agizo lake linaloingizwa</translation>
    </message>
    <message>
        <source>the column fhir.%1 of %2 is left out: its cell is no JSON</source>
        <translation>safuwima fhir.%1 ya %2 imeachwa: seli yake si JSON</translation>
    </message>
    <message>
        <source>each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>kila mstari ni kitu kimoja, kama {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>nothing stands in it; each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>hakuna kitu ndani yake; kila mstari ni kitu kimoja, kama {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>the value has ended here, “%1” is too much</source>
        <translation>thamani imeishia hapa, “%1” imezidi</translation>
    </message>
    <message>
        <source>more than %1 levels lie inside one another</source>
        <translation>kuna zaidi ya ngazi %1, moja ndani ya nyingine</translation>
    </message>
    <message>
        <source>a comma or } belongs here</source>
        <translation>mkato au } inahitajika hapa</translation>
    </message>
    <message>
        <source>a comma or ] belongs here</source>
        <translation>mkato au ] inahitajika hapa</translation>
    </message>
    <message>
        <source>a name in quotes belongs here</source>
        <translation>jina ndani ya alama za nukuu linahitajika hapa</translation>
    </message>
    <message>
        <source>a colon belongs here</source>
        <translation>nukta mbili zinahitajika hapa</translation>
    </message>
    <message>
        <source>“%1” stands twice in one object; keep one</source>
        <translation>“%1” iko mara mbili katika kitu kimoja; bakiza moja</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>alama hii ya nukuu haikufungwa</translation>
    </message>
    <message>
        <source>a line end or tab stands inside a text; write \n or \t</source>
        <translation>mwisho wa mstari au tab iko ndani ya maandishi; andika \n au \t</translation>
    </message>
    <message>
        <source>“\%1” is no escape of JSON</source>
        <translation>“\%1” si escape ya JSON</translation>
    </message>
    <message>
        <source>half of a character stands here alone</source>
        <translation>nusu ya herufi iko hapa peke yake</translation>
    </message>
    <message>
        <source>four hexadecimal digits belong here</source>
        <translation>tarakimu nne za heksadesimali zinahitajika hapa</translation>
    </message>
    <message>
        <source>this is no number of JSON; write it as -1.25 or 0.5</source>
        <translation>hii si namba ya JSON; iandike kama -1.25 au 0.5</translation>
    </message>
    <message>
        <source>the text ends where a value belongs</source>
        <translation>maandishi yanaishia mahali panapohitaji thamani</translation>
    </message>
    <message>
        <source>“%1” is no value of JSON</source>
        <translation>“%1” si thamani ya JSON</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the other decimal mark than the map says</source>
        <translation>&quot;%1&quot; ina alama ya desimali tofauti na ile ya ramani</translation>
    </message>
    <message>
        <source>the map names a column &quot;%1&quot; that the table does not have</source>
        <translation>ramani inataja safuwima &quot;%1&quot; ambayo jedwali halina</translation>
    </message>
    <message>
        <source>no column is understood as %1; a map can say which one is, as in: %2</source>
        <translation>hakuna safuwima inayoeleweka kama %1; ramani inaweza kusema ni ipi, kama: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; stands in the table twice; delete or rename one</source>
        <translation>safuwima &quot;%1&quot; iko mara mbili kwenye jedwali; futa moja au ubadilishe jina lake</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is kept but not used</source>
        <translation>safuwima &quot;%1&quot; haijulikani; imehifadhiwa lakini haitumiki</translation>
    </message>
    <message>
        <source>the table is empty; its first line names the columns: %1</source>
        <translation>jedwali ni tupu; mstari wake wa kwanza hutaja safuwima: %1</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds the separator in quotes</source>
        <translation>safu ina seli %1, kichwa kina %2; weka seli yenye kitenganishi ndani ya alama za nukuu</translation>
    </message>
    <message>
        <source>%1 spheres have no sign; if this table leaves the plus out, a map says so: %2</source>
        <translation>sfia %1 hazina alama; ikiwa jedwali hili huacha plus, ramani husema hivyo: %2</translation>
    </message>
    <message>
        <source>%1 cylinders have no sign; ask whoever made the table, then a map says so: %2</source>
        <translation>silinda %1 hazina alama; muulize aliyetengeneza jedwali, kisha ramani husema hivyo: %2</translation>
    </message>
    <message>
        <source>a record ends with CR LF; this one does not</source>
        <translation>rekodi huishia na CR LF; hii haiishii hivyo</translation>
    </message>
    <message>
        <source>a character here is not plain ASCII</source>
        <translation>herufi iliyo hapa si ASCII ya kawaida</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no record; write LABEL=value</source>
        <translation>&quot;%1&quot; si rekodi; andika LABEL=value</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no label: capitals and digits, at most 8</source>
        <translation>&quot;%1&quot; si lebo: herufi kubwa na tarakimu, zisizozidi 8</translation>
    </message>
    <message>
        <source>the record %1 is passed over</source>
        <translation>rekodi %1 imerukwa</translation>
    </message>
    <message>
        <source>the record %1 stands twice</source>
        <translation>rekodi %1 iko mara mbili</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not what belongs here</source>
        <translation>&quot;%1&quot; si kinachohitajika hapa</translation>
    </message>
    <message>
        <source>DO is &quot;%1&quot;; a pair, B, is wanted</source>
        <translation>DO ni &quot;%1&quot;; jozi, B, inahitajika</translation>
    </message>
    <message>
        <source>the record SPH is missing</source>
        <translation>rekodi SPH haipo</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be written in plain letters; it leaves as &quot;%2&quot;</source>
        <translation>&quot;%1&quot; haiwezi kuandikwa kwa herufi za kawaida; inatoka kama &quot;%2&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot stand in an order: plain letters and digits, at most 80, without ; = , ?</source>
        <translation>&quot;%1&quot; haiwezi kuwa kwenye oda: herufi za kawaida na tarakimu, zisizozidi 80, bila ; = , ?</translation>
    </message>
    <message>
        <source>the eyes are written in two cylinder forms; both leave with minus cylinders</source>
        <translation>macho yameandikwa kwa aina mbili za silinda; yote mawili yanatoka na silinda za minus</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no line of a map; write heading = column</source>
        <translation>&quot;%1&quot; si mstari wa ramani; andika kichwa = safuwima</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing a column can be: write right sphere (cylinder, axis, prism, base; left), a column of the prescription table, or - to leave it</source>
        <translation>&quot;%1&quot; si kitu ambacho safuwima inaweza kuwa: andika right sphere (cylinder, axis, prism, base; left), safuwima ya jedwali la maagizo, au - kuiacha</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no separator; write , or ; or | or tab</source>
        <translation>&quot;%1&quot; si kitenganishi; andika , au ; au | au tab</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not plus or minus</source>
        <translation>&quot;%1&quot; si plus wala minus</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not point or comma</source>
        <translation>&quot;%1&quot; si point wala comma</translation>
    </message>
    <message>
        <source>there are entries in this ledger already; nothing was written; take them over with `quarterstep import`, or name an empty ledger</source>
        <translation>kuna maingizo tayari katika daftari hili; hakuna kilichoandikwa; yachukue kwa `quarterstep import`, au taja daftari tupu</translation>
    </message>
    <message>
        <source>this ledger was opened for reading only</source>
        <translation>daftari hili limefunguliwa kusomwa tu</translation>
    </message>
    <message>
        <source>this ledger was last written at another place; if it moved here for good, say so first, and do not use the other copy any more</source>
        <translation>daftari hili liliandikwa mwisho mahali pengine; ikiwa limehamia hapa kabisa, sema hivyo kwanza, na usitumie tena nakala nyingine</translation>
    </message>
    <message>
        <source>something was posted meanwhile; nothing was written; look again and repeat</source>
        <translation>kuna kilichoingizwa wakati huo; hakuna kilichoandikwa; angalia tena kisha urudie</translation>
    </message>
    <message>
        <source>the ledger is empty; nothing happened yet</source>
        <translation>daftari ni tupu; bado hakuna kilichotokea</translation>
    </message>
    <message>
        <source>the person is forgotten, but another program reads the ledger and old text stays in its journal; close it there and repeat</source>
        <translation>taarifa za mtu zimefutwa, lakini programu nyingine inasoma daftari na maandishi ya zamani yamebaki katika jarida lake; lifunge huko kisha urudie</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; check the chain and put back the latest copy of the camp folder</source>
        <translation>ingizo la daftari hili haliwezi kusomwa; hakiki mnyororo na urudishe nakala ya mwisho ya folda ya kambi</translation>
    </message>
    <message>
        <source>the disk failed while the entry was written (%1); close the camp, open it again and look whether the entry is there before you repeat it</source>
        <translation>diski ilishindwa wakati ingizo lilipoandikwa (%1); funga kambi, ifungue tena na uangalie kama ingizo lipo kabla ya kulirudia</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost while the entry was written (%1); open the camp again and look whether the entry is there before you repeat it</source>
        <translation>muunganisho na daftari la pamoja ulikatika wakati ingizo lilipoandikwa (%1); fungua kambi tena na uangalie kama ingizo lipo kabla ya kulirudia</translation>
    </message>
    <message>
        <source>line %1 has %2 left, %3 asked for; nothing was written</source>
        <translation>mstari %1 una %2 zilizobaki, zimeombwa %3; hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>line %1 has %2 available, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>mstari %1 una %2 zinazopatikana, %3 zilizoshikiliwa na %4 karantini, hazitoshi kwa hili; hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>entry %1 was taken back already</source>
        <translation>ingizo %1 limesharudishwa</translation>
    </message>
    <message>
        <source>entry %1 takes back another one and cannot be taken back itself; enter what happened anew</source>
        <translation>ingizo %1 linarudisha lingine na lenyewe haliwezi kurudishwa; ingiza upya kilichotokea</translation>
    </message>
    <message>
        <source>entry %1 is “%2” and stays; a wrong count is put right by counting</source>
        <translation>ingizo %1 ni “%2” na linabaki; hesabu yenye makosa hurekebishwa kwa kuhesabu</translation>
    </message>
    <message>
        <source>entry %1 of this ledger is not as it was written: %2; nothing was taken over</source>
        <translation>ingizo %1 la daftari hili haliko kama lilivyoandikwa: %2; hakuna kilichochukuliwa</translation>
    </message>
    <message>
        <source>station %1 has two entries number %2, %3 here and %4 there: its folder was copied and both copies went on as the same station; nothing was taken over, both files are as they were; count the stock of one and enter the difference</source>
        <translation>kituo %1 kina maingizo mawili namba %2, %3 hapa na %4 huko: folda yake ilinakiliwa na nakala zote mbili ziliendelea kama kituo kile kile; hakuna kilichochukuliwa, faili zote mbili ziko kama zilivyokuwa; hesabu akiba ya moja na uingize tofauti</translation>
    </message>
    <message>
        <source>entry %1 is in both ledgers with another content; one of them was changed; nothing was taken over</source>
        <translation>ingizo %1 liko katika madaftari yote mawili na maudhui tofauti; moja lilibadilishwa; hakuna kilichochukuliwa</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; nothing was taken over</source>
        <translation>ingizo la daftari hili haliwezi kusomwa; hakuna kilichochukuliwa</translation>
    </message>
    <message>
        <source>entries %1 and %2 take back the same entry %3; nothing was taken over</source>
        <translation>maingizo %1 na %2 yanarudisha ingizo lile lile %3; hakuna kilichochukuliwa</translation>
    </message>
    <message>
        <source>entry %1 takes back %2, which is in neither ledger; merge the ledger that has it first</source>
        <translation>ingizo %1 linarudisha %2, ambalo halipo katika daftari lolote kati ya haya mawili; kwanza unganisha daftari lenye hilo</translation>
    </message>
    <message>
        <source>line %1 of %2 would go below zero: entries %3 and %4 took the same pieces; nothing was taken over; count the stock there and enter the difference first</source>
        <translation>mstari %1 wa %2 ungeshuka chini ya sifuri: maingizo %3 na %4 yalichukua vipande vile vile; hakuna kilichochukuliwa; kwanza hesabu akiba huko na uingize tofauti</translation>
    </message>
    <message>
        <source>entries of this very station came from a copy of its folder; do not use that copy any more</source>
        <translation>maingizo ya kituo hiki hiki yalitoka kwenye nakala ya folda yake; usitumie tena nakala hiyo</translation>
    </message>
    <message>
        <source>%1 has entries of %2 stations: its folder was copied and both were used; count its stock, since both began with the same pieces</source>
        <translation>%1 ina maingizo ya vituo %2: folda yake ilinakiliwa na zote mbili zilitumika; hesabu akiba yake, kwa kuwa zote mbili zilianza na vipande vile vile</translation>
    </message>
    <message>
        <source>this is a database of another program, not a ledger; name another file in the key ledger of stock.yaml</source>
        <translation>hii ni hifadhidata ya programu nyingine, si daftari; taja faili nyingine kwenye ufunguo ledger wa stock.yaml</translation>
    </message>
    <message>
        <source>the head of this ledger is damaged (form %1); put back the latest copy of the camp folder</source>
        <translation>kichwa cha daftari hili kimeharibika (muundo %1); rudisha nakala ya mwisho ya folda ya kambi</translation>
    </message>
    <message>
        <source>this ledger was made by a newer version (form %1, known here up to %2); update this program</source>
        <translation>daftari hili lilitengenezwa na toleo jipya zaidi (muundo %1, unaojulikana hapa hadi %2); sasisha programu hii</translation>
    </message>
    <message>
        <source>a rule of this ledger is missing or damaged (%1); put back the latest copy of the camp folder</source>
        <translation>kanuni ya daftari hili haipo au imeharibika (%1); rudisha nakala ya mwisho ya folda ya kambi</translation>
    </message>
    <message>
        <source>a ledger file cannot be kept safely on a network share; keep the camp folder on this machine, or share a PostgreSQL ledger between stations</source>
        <translation>faili ya daftari haiwezi kuhifadhiwa salama kwenye hifadhi ya mtandao; weka folda ya kambi kwenye mashine hii, au tumieni daftari la PostgreSQL kwa pamoja kati ya vituo</translation>
    </message>
    <message>
        <source>there is no ledger in this database yet; the keeper sets it up once with `quarterstep stock --set-up`</source>
        <translation>bado hakuna daftari katika hifadhidata hii; mtunza sanduku huliandaa mara moja kwa `quarterstep stock --set-up`</translation>
    </message>
    <message>
        <source>this database holds something else, not a ledger; name another one in the key ledger of stock.yaml</source>
        <translation>hifadhidata hii ina kitu kingine, si daftari; taja nyingine kwenye ufunguo ledger wa stock.yaml</translation>
    </message>
    <message>
        <source>the database refuses to write safely; nothing was opened</source>
        <translation>hifadhidata inakataa kuandika kwa usalama; hakuna kilichofunguliwa</translation>
    </message>
    <message>
        <source>the client library of the server is missing; install %1</source>
        <translation>maktaba ya kuunganisha na seva haipo; sakinisha %1</translation>
    </message>
    <message>
        <source>the file was replaced, but the disk does not say that this will last: %1</source>
        <translation>faili ilibadilishwa, lakini diski haisemi kwamba hilo litadumu: %1</translation>
    </message>
    <message>
        <source>another program is writing in this folder; wait a moment and repeat</source>
        <translation>programu nyingine inaandika katika folda hii; subiri kidogo kisha urudie</translation>
    </message>
    <message>
        <source>the folder cannot be locked: %1; check its name and rights</source>
        <translation>folda haiwezi kufungwa kwa kufuli: %1; angalia jina lake na ruhusa zake</translation>
    </message>
    <message>
        <source>this is not the address of a shared ledger (%1); write postgresql://LOGIN@HOST:PORT/DATABASE</source>
        <translation>hii si anwani ya daftari la pamoja (%1); andika postgresql://LOGIN@HOST:PORT/DATABASE</translation>
    </message>
    <message>
        <source>a password stands in the address, and stock.yaml is carried about and copied; write it to ~/.pgpass (read by you alone) and take it out of the address</source>
        <translation>kuna nenosiri kwenye anwani, na stock.yaml hubebwa na kunakiliwa; liandike katika ~/.pgpass (linalosomwa na wewe pekee) na uliondoe kwenye anwani</translation>
    </message>
    <message>
        <source>there is a ledger in this database already; nothing was changed</source>
        <translation>kuna daftari tayari katika hifadhidata hii; hakuna kilichobadilishwa</translation>
    </message>
    <message>
        <source>this file system cannot keep a ledger safely (no shared memory beside the file); keep the camp folder on another disk</source>
        <translation>mfumo huu wa faili hauwezi kuhifadhi daftari salama (hakuna kumbukumbu ya pamoja kando ya faili); weka folda ya kambi kwenye diski nyingine</translation>
    </message>
    <message>
        <source>this is not a file; name another one in the key ledger of stock.yaml</source>
        <translation>hii si faili; taja nyingine kwenye ufunguo ledger wa stock.yaml</translation>
    </message>
    <message>
        <source>this ledger was not closed and its folder cannot be written to; copy the whole folder to a place that can, and open it there</source>
        <translation>daftari hili halikufungwa na folda yake haiwezi kuandikwa; nakili folda yote mahali panapoandikika, na ulifungue huko</translation>
    </message>
    <message>
        <source>the ledger file was moved, removed or replaced while it was open; nothing was written; close the camp and open it again</source>
        <translation>faili ya daftari ilihamishwa, iliondolewa au ilibadilishwa wakati ikiwa wazi; hakuna kilichoandikwa; funga kambi na uifungue tena</translation>
    </message>
    <message>
        <source>this ledger names no station of its own; put back the latest copy</source>
        <translation>daftari hili halitaji kituo chake; rudisha nakala ya mwisho</translation>
    </message>
    <message>
        <source>the ledger cannot be made: %1; check the rights of the folder</source>
        <translation>daftari haliwezi kutengenezwa: %1; angalia ruhusa za folda</translation>
    </message>
    <message>
        <source>the ledger cannot be opened for writing here; check the rights of the file and its folder</source>
        <translation>daftari haliwezi kufunguliwa kwa kuandika hapa; angalia ruhusa za faili na folda yake</translation>
    </message>
    <message>
        <source>the disk is full; nothing was written; make room and repeat</source>
        <translation>diski imejaa; hakuna kilichoandikwa; pata nafasi kisha urudie</translation>
    </message>
    <message>
        <source>this is not a ledger, or it is damaged (%1); put back the latest copy of the camp folder</source>
        <translation>hili si daftari, au limeharibika (%1); rudisha nakala ya mwisho ya folda ya kambi</translation>
    </message>
    <message>
        <source>the ledger failed: %1 (code %2); nothing was written</source>
        <translation>daftari limeshindwa: %1 (msimbo %2); hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>another program holds the ledger; nothing was written; close it there and repeat</source>
        <translation>programu nyingine imeshikilia daftari; hakuna kilichoandikwa; lifunge huko kisha urudie</translation>
    </message>
    <message>
        <source>the shared ledger cannot be reached (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>daftari la pamoja halifikiki (%1); hakuna kilichoandikwa; angalia mtandao na seva, kisha urudie</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>muunganisho na daftari la pamoja umekatika (%1); hakuna kilichoandikwa; angalia mtandao na seva, kisha urudie</translation>
    </message>
    <message>
        <source>the shared ledger does not allow this login to do that (%1); nothing was written; ask the keeper</source>
        <translation>daftari la pamoja haliruhusu login hii kufanya hivyo (%1); hakuna kilichoandikwa; muulize mtunza sanduku</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>faili haiwezi kusomwa</translation>
    </message>
    <message>
        <source>this is a link or a device; only a plain file can be kept up to date; put the file itself into the camp folder</source>
        <translation>hiki ni kiungo au kifaa; ni faili ya kawaida tu inayoweza kusasishwa; weka faili yenyewe kwenye folda ya kambi</translation>
    </message>
    <message>
        <source>the file was written after entry %1 of another ledger; a new ledger begins with the counts of the file</source>
        <translation>faili iliandikwa baada ya ingizo %1 la daftari lingine; daftari jipya huanza na hesabu za faili</translation>
    </message>
    <message>
        <source>the file was written after entry %1, but the ledger ends at %2; is the ledger an older copy? Counts that differ are shown as edited</source>
        <translation>faili iliandikwa baada ya ingizo %1, lakini daftari linaishia %2; je, daftari ni nakala ya zamani? Hesabu zinazotofautiana zinaonyeshwa kama zilizohaririwa</translation>
    </message>
    <message>
        <source>the ledger had nothing of the site %1; its lines begin with the counts of the file</source>
        <translation>daftari halikuwa na chochote cha kituo %1; mistari yake huanza na hesabu za faili</translation>
    </message>
    <message>
        <source>line %1 is new in the file and begins with %2 on hand</source>
        <translation>mstari %1 ni mpya katika faili na unaanza na %2 zilizopo</translation>
    </message>
    <message>
        <source>line %1 is not in the file any more, and the ledger has %2 of it on hand; put the line back, or count it as 0 first</source>
        <translation>mstari %1 haupo tena katika faili, na daftari lina %2 zake zilizopo; rudisha mstari, au uhesabu kuwa 0 kwanza</translation>
    </message>
    <message>
        <source>write the first and the last age, for example [40, 44]</source>
        <translation>andika umri wa kwanza na wa mwisho, kwa mfano [40, 44]</translation>
    </message>
    <message>
        <source>ages and values rise, and bands do not overlap</source>
        <translation>umri na thamani hupanda, na makundi ya umri hayaingiliani</translation>
    </message>
    <message>
        <source>write the rows as a list: [{ages: [40, 44], value: 0.65}, …]</source>
        <translation>andika safu kama orodha: [{ages: [40, 44], value: 0.65}, …]</translation>
    </message>
    <message>
        <source>this is not a file of age tables of this program; the first key should read format: %1</source>
        <translation>hii si faili ya majedwali ya umri ya programu hii; ufunguo wa kwanza unapaswa kuwa format: %1</translation>
    </message>
    <message>
        <source>`tables` is a list; begin each table with a dash</source>
        <translation>`tables` ni orodha; anza kila jedwali kwa kistari</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a name here; write one of %2</source>
        <translation>&quot;%1&quot; si jina hapa; andika mojawapo ya %2</translation>
    </message>
    <message>
        <source>write a list: one name, value and source a line</source>
        <translation>andika orodha: name, value na source moja kwa kila mstari</translation>
    </message>
    <message>
        <source>this is not an audit file of this program; the first key should read format: %1</source>
        <translation>hii si faili ya ukaguzi ya programu hii; ufunguo wa kwanza unapaswa kuwa format: %1</translation>
    </message>
    <message>
        <source>these priors say that more than one hand-over in ten holds a slip; make them smaller</source>
        <translation>uwezekano huu wa awali unasema kwamba makabidhiano zaidi ya moja kati ya kumi yana kosa; upunguze</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are lot, row, right and left</source>
        <translation>safuwima &quot;%1&quot; haipo; zinahitajika lot, row, right na left</translation>
    </message>
    <message>
        <source>the row names no lot; keep the column as it was printed</source>
        <translation>safu haitaji fungu; acha safuwima kama ilivyochapishwa</translation>
    </message>
    <message>
        <source>row %1 of this lot stands in the table twice; keep one</source>
        <translation>safu %1 ya fungu hili iko mara mbili kwenye jedwali; bakiza moja</translation>
    </message>
    <message>
        <source>“%1” is no reading of a focimeter; write sphere, cylinder and axis</source>
        <translation>“%1” si usomaji wa fosimita; andika sfia, silinda na mhimili</translation>
    </message>
    <message>
        <source>the row says not-found and has a reading; delete one of the two</source>
        <translation>safu inasema not-found na ina usomaji; futa kimoja kati ya hivyo viwili</translation>
    </message>
    <message>
        <source>the row says read and has no reading; write both lenses or not-found</source>
        <translation>safu inasema read na haina usomaji; andika lenzi zote mbili au not-found</translation>
    </message>
    <message>
        <source>“%1” is not an outcome; write read or not-found</source>
        <translation>“%1” si matokeo; andika read au not-found</translation>
    </message>
    <message>
        <source>a pair is read in both lenses; write this one too</source>
        <translation>miwani husomwa katika lenzi zote mbili; andika na hii pia</translation>
    </message>
    <message>
        <source>the format is &quot;%1&quot;, not &quot;%2&quot;</source>
        <translation>format ni &quot;%1&quot;, si &quot;%2&quot;</translation>
    </message>
    <message>
        <source>the limits must rise: fits, then caution, then trial</source>
        <translation>vikomo lazima vipande: fits, kisha caution, kisha trial</translation>
    </message>
    <message>
        <source>a limit is missing here; write fits, caution or trial</source>
        <translation>kikomo kimoja hakipo hapa; andika fits, caution au trial</translation>
    </message>
    <message>
        <source>&quot;%1&quot; means nothing for this criterion; delete it</source>
        <translation>&quot;%1&quot; haina maana kwa kigezo hiki; ifute</translation>
    </message>
    <message>
        <source>write the steps as a list: [{up to: 0.50, fits: 7}, …]</source>
        <translation>andika hatua kama orodha: [{up to: 0.50, fits: 7}, …]</translation>
    </message>
    <message>
        <source>the steps must rise; put the smaller cylinder first</source>
        <translation>hatua lazima zipande; weka silinda ndogo kwanza</translation>
    </message>
    <message>
        <source>say where the limit comes from, or write: common practice</source>
        <translation>sema kikomo kinatoka wapi, au andika: common practice</translation>
    </message>
    <message>
        <source>shown only means no limits; keep one of the two</source>
        <translation>shown only inamaanisha hakuna vikomo; bakiza kimoja kati ya viwili</translation>
    </message>
    <message>
        <source>a quote stands inside a cell; put the whole cell in quotes and double it</source>
        <translation>kuna alama ya nukuu ndani ya seli; weka seli yote ndani ya alama za nukuu na uandike alama hiyo mara mbili</translation>
    </message>
    <message>
        <source>a lone carriage return ends the line here; save the table with LF or CRLF line ends</source>
        <translation>carriage return iliyo peke yake inamaliza mstari hapa; hifadhi jedwali kwa miisho ya mistari ya LF au CRLF</translation>
    </message>
    <message>
        <source>this quote is never closed; close it before the next comma</source>
        <translation>alama hii ya nukuu haikufungwa; ifunge kabla ya mkato unaofuata</translation>
    </message>
    <message>
        <source>there is text behind the closing quote; move it inside, or double the quote</source>
        <translation>kuna maandishi baada ya alama ya nukuu ya kufunga; yasogeze ndani, au andika alama hiyo mara mbili</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and name</source>
        <translation>safuwima &quot;%1&quot; haipo; zinahitajika person na name</translation>
    </message>
    <message>
        <source>the row names no person</source>
        <translation>safu haitaji mtu</translation>
    </message>
    <message>
        <source>%1 stands here twice, first in row %2</source>
        <translation>%1 iko hapa mara mbili, ya kwanza kwenye safu %2</translation>
    </message>
    <message>
        <source>no name stands here; to erase one, use `quarterstep forget`</source>
        <translation>hakuna jina hapa; kufuta moja, tumia `quarterstep forget`</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write one from %2 to %3</source>
        <translation>&quot;%1&quot; si namba; andika moja kutoka %2 hadi %3</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3</source>
        <translation>%1 iko nje ya %2 hadi %3</translation>
    </message>
    <message>
        <source>a number is missing; write one from %1 to %2</source>
        <translation>namba haipo; andika moja kutoka %1 hadi %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a decimal comma; in this file write %2</source>
        <translation>&quot;%1&quot; ina mkato wa desimali; katika faili hii andika %2</translation>
    </message>
    <message>
        <source>%1 is below zero; write 0 or more</source>
        <translation>%1 iko chini ya sifuri; andika 0 au zaidi</translation>
    </message>
    <message>
        <source>write %1 without a sign</source>
        <translation>andika %1 bila alama</translation>
    </message>
    <message>
        <source>%1 is not a whole number; write digits only</source>
        <translation>%1 si namba nzima; andika tarakimu tu</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number; write digits only, for example 14</source>
        <translation>&quot;%1&quot; si namba nzima; andika tarakimu tu, kwa mfano 14</translation>
    </message>
    <message>
        <source>a whole number is missing; write one from %1 to %2</source>
        <translation>namba nzima haipo; andika moja kutoka %1 hadi %2</translation>
    </message>
    <message>
        <source>%1 begins with a zero, which some programs read as another number; write %2</source>
        <translation>%1 inaanza na sifuri, ambayo programu nyingine huisoma kama namba tofauti; andika %2</translation>
    </message>
    <message>
        <source>%1 has more than three decimals; round it</source>
        <translation>%1 ina zaidi ya desimali tatu; izungushe</translation>
    </message>
    <message>
        <source>the columns are not separated by commas; save the table with commas</source>
        <translation>safuwima hazikutenganishwa kwa mkato; hifadhi jedwali kwa mikato</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; person, right and left are needed</source>
        <translation>safuwima &quot;%1&quot; haipo; person, right na left zinahitajika</translation>
    </message>
    <message>
        <source>this column has no name; write one</source>
        <translation>safuwima hii haina jina; andika moja</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say which acuity; write one of: %2</source>
        <translation>&quot;%1&quot; haisemi uwezo gani wa kuona; andika mojawapo ya: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known and not used; did you mean &quot;%2&quot;?</source>
        <translation>safuwima &quot;%1&quot; haijulikani na haitumiki; ulimaanisha &quot;%2&quot;?</translation>
    </message>
    <message>
        <source>the row ends after %1 cells, the header has %2; add the missing commas</source>
        <translation>safu inaishia baada ya seli %1, kichwa kina %2; ongeza mikato iliyokosekana</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds a comma in quotes</source>
        <translation>safu ina seli %1, kichwa kina %2; weka seli yenye mkato ndani ya alama za nukuu</translation>
    </message>
    <message>
        <source>line %1 stands here twice, first in row %2; write one row with the whole number</source>
        <translation>mstari %1 uko hapa mara mbili, wa kwanza kwenye safu %2; andika safu moja yenye idadi yote</translation>
    </message>
    <message>
        <source>“%1” is not a cause; write one of %2</source>
        <translation>“%1” si sababu; andika mojawapo ya %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are line and quantity</source>
        <translation>safuwima &quot;%1&quot; haipo; zinahitajika line na quantity</translation>
    </message>
    <message>
        <source>the row names no line</source>
        <translation>safu haitaji mstari</translation>
    </message>
    <message>
        <source>write format: %1</source>
        <translation>andika format: %1</translation>
    </message>
    <message>
        <source>lines is a list, one item with line and quantity each</source>
        <translation>lines ni orodha, kila kipengele kina line na quantity</translation>
    </message>
    <message>
        <source>one scanned line a row; a table begins with a row that names its columns: line,quantity</source>
        <translation>mstari mmoja ulioskaniwa kwa safu; jedwali huanza na safu inayotaja safuwima zake: line,quantity</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person, eye and reading, or sphere, cylinder and axis in place of reading</source>
        <translation>safuwima &quot;%1&quot; haipo; zinahitajika person, eye na reading, au sphere, cylinder na axis badala ya reading</translation>
    </message>
    <message>
        <source>write each reading once: in the column reading, or in sphere, cylinder, axis</source>
        <translation>andika kila usomaji mara moja: kwenye safuwima reading, au kwenye sphere, cylinder, axis</translation>
    </message>
    <message>
        <source>the row has no person; write the code of the person</source>
        <translation>safu haina mtu; andika msimbo wa mtu</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an eye; write right or left</source>
        <translation>&quot;%1&quot; si jicho; andika right au left</translation>
    </message>
    <message>
        <source>there is no reading here; write it, or delete the row</source>
        <translation>hakuna usomaji hapa; uandike, au futa safu</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an axis; a cylinder needs one from 1 to 180</source>
        <translation>&quot;%1&quot; si mhimili; silinda inahitaji mmoja kutoka 1 hadi 180</translation>
    </message>
    <message>
        <source>readings of the right eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>masomo ya jicho la kulia ya &quot;%1&quot;: %2; chukua matatu au zaidi</translation>
    </message>
    <message>
        <source>readings of the left eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>masomo ya jicho la kushoto ya &quot;%1&quot;: %2; chukua matatu au zaidi</translation>
    </message>
    <message>
        <source>the row has no person; write a code or a name</source>
        <translation>safu haina mtu; andika msimbo au jina</translation>
    </message>
    <message>
        <source>%1 is no step of 0.25 or 0.125 D; look at the writing again (3 and 5, 2 and 7 are alike)</source>
        <translation>%1 si hatua ya 0.25 au 0.125 D; angalia tena maandishi (3 na 5, 2 na 7 hufanana)</translation>
    </message>
    <message>
        <source>one eye is written with a minus cylinder, the other with a plus cylinder; both are read as written: is that meant?</source>
        <translation>jicho moja limeandikwa kwa silinda ya minus, jingine kwa silinda ya plus; yote mawili yanasomwa kama yalivyoandikwa: je, ndivyo ilivyokusudiwa?</translation>
    </message>
    <message>
        <source>age %1: is it right? Whether the rules for children count hangs on it</source>
        <translation>umri %1: je, ni sahihi? Kuhusika kwa kanuni za watoto kunategemea umri</translation>
    </message>
    <message>
        <source>%1 mm is narrow for both eyes together; is it monocular? Then it goes into pd_right_mm or pd_left_mm</source>
        <translation>mm %1 ni nyembamba kwa macho yote mawili pamoja; je, ni ya jicho moja? Basi iende kwenye pd_right_mm au pd_left_mm</translation>
    </message>
    <message>
        <source>the two monocular distances make %1 mm, not %2; the monocular ones are used</source>
        <translation>umbali wa kila jicho peke yake ukijumlishwa ni mm %1, si %2; wa kila jicho unatumika</translation>
    </message>
    <message>
        <source>the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?</source>
        <translation>umbali wa karibu mm %1 ni mpana kuliko wa mbali, mm %2; je, umbali huo umebadilishana?</translation>
    </message>
    <message>
        <source>the eye&apos;s text says addition %1, this column %2; keep one</source>
        <translation>maandishi ya jicho yanasema nyongeza %1, safuwima hii %2; bakiza moja</translation>
    </message>
    <message>
        <source>sphere and addition make %1 at near, the near power says %2; the near power is used</source>
        <translation>sfia na nyongeza ni %1 kwa karibu, nguvu ya karibu inasema %2; nguvu ya karibu inatumika</translation>
    </message>
    <message>
        <source>the date %1 lies after today, %2; correct it</source>
        <translation>tarehe %1 ni baada ya leo, %2; irekebishe</translation>
    </message>
    <message>
        <source>write two numbers in mm, for example [54, 74]</source>
        <translation>andika namba mbili kwa mm, kwa mfano [54, 74]</translation>
    </message>
    <message>
        <source>the smaller number comes first</source>
        <translation>namba ndogo hutangulia</translation>
    </message>
    <message>
        <source>there is no profile &quot;%1&quot; to begin from; built in, or earlier in this file, are: %2</source>
        <translation>hakuna wasifu &quot;%1&quot; wa kuanzia; zilizo ndani ya programu, au za awali katika faili hii, ni: %2</translation>
    </message>
    <message>
        <source>the profile has no name; write one</source>
        <translation>wasifu hauna jina; andika moja</translation>
    </message>
    <message>
        <source>the profile &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>wasifu &quot;%1&quot; upo tayari katika faili; upe huu jina lingine</translation>
    </message>
    <message>
        <source>this is not a rules file of this program; the first key should read format: %1</source>
        <translation>hii si faili ya kanuni ya programu hii; ufunguo wa kwanza unapaswa kuwa format: %1</translation>
    </message>
    <message>
        <source>`profiles` is a list; begin each profile with a dash</source>
        <translation>`profiles` ni orodha; anza kila wasifu kwa kistari</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is not used</source>
        <translation>safuwima &quot;%1&quot; haijulikani; haitumiki</translation>
    </message>
    <message>
        <source>this is not UTF-8 text; save the file as UTF-8</source>
        <translation>haya si maandishi ya UTF-8; hifadhi faili kama UTF-8</translation>
    </message>
    <message>
        <source>a control character (hexadecimal %1) stands here; delete it</source>
        <translation>herufi ya udhibiti (heksadesimali %1) iko hapa; ifute</translation>
    </message>
    <message>
        <source>the file is larger than %1 MiB; split it</source>
        <translation>faili ni kubwa kuliko MiB %1; igawanye</translation>
    </message>
    <message>
        <source>there is no such file; check the name and the folder</source>
        <translation>hakuna faili kama hiyo; angalia jina na folda</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>faili haiwezi kusomwa: %1</translation>
    </message>
    <message>
        <source>this is a folder; name the file inside it</source>
        <translation>hii ni folda; taja faili iliyo ndani yake</translation>
    </message>
    <message>
        <source>the file is UTF-16 text; save it as UTF-8 and try again</source>
        <translation>faili ni maandishi ya UTF-16; ihifadhi kama UTF-8 kisha ujaribu tena</translation>
    </message>
    <message>
        <source>the file begins with two byte order marks; delete one</source>
        <translation>faili inaanza na alama mbili za mpangilio wa baiti (BOM); futa moja</translation>
    </message>
    <message>
        <source>write this value without quotes, or delete the whole `written` entry</source>
        <translation>andika thamani hii bila alama za nukuu, au futa ingizo lote la `written`</translation>
    </message>
    <message>
        <source>the value of `counts` is 8 digits of 0-9 and a-f put in by the program; delete the whole `written` entry if it was damaged</source>
        <translation>thamani ya `counts` ni tarakimu 8 za 0-9 na a-f zinazowekwa na programu; futa ingizo lote la `written` ikiwa imeharibika</translation>
    </message>
    <message>
        <source>`lines` is a list; begin each line with a dash, or write lines: []</source>
        <translation>`lines` ni orodha; anza kila mstari kwa kistari, au andika lines: []</translation>
    </message>
    <message>
        <source>the line &quot;%1&quot; stands in the file already, in line %2; give this one another name or add the counts together</source>
        <translation>mstari &quot;%1&quot; upo tayari katika faili, kwenye mstari %2; upe huu jina lingine au jumlisha hesabu</translation>
    </message>
    <message>
        <source>the code %1 stands in the file already, in line %2; each line has a code of its own</source>
        <translation>msimbo %1 upo tayari katika faili, kwenye mstari %2; kila mstari una msimbo wake</translation>
    </message>
    <message>
        <source>put `lines:` at the beginning of a line of its own</source>
        <translation>weka `lines:` mwanzoni mwa mstari wake wenyewe</translation>
    </message>
    <message>
        <source>this is not a stock file of this program; the first key should read format: %1</source>
        <translation>hii si faili ya akiba ya programu hii; ufunguo wa kwanza unapaswa kuwa format: %1</translation>
    </message>
    <message>
        <source>the site has no name; write the camp or box</source>
        <translation>kituo hakina jina; andika kambi au sanduku</translation>
    </message>
    <message>
        <source>write the count as plain digits, without quotes: %1</source>
        <translation>andika hesabu kwa tarakimu tu, bila alama za nukuu: %1</translation>
    </message>
    <message>
        <source>least (%1) is above most (%2); exchange them</source>
        <translation>least (%1) iko juu ya most (%2); zibadilishane</translation>
    </message>
    <message>
        <source>write the lens shapes as a list, for example [round 44]</source>
        <translation>andika maumbo ya lenzi kama orodha, kwa mfano [round 44]</translation>
    </message>
    <message>
        <source>centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure the pair again</source>
        <translation>vitovu mm %1 havilingani na lenzi + daraja = mm %2; zinatarajiwa %3 hadi %4: pima miwani tena</translation>
    </message>
    <message>
        <source>a lens of shape &quot;%1&quot; may fit one side only; write side: right, left or either</source>
        <translation>lenzi ya umbo &quot;%1&quot; inaweza kufaa upande mmoja tu; andika side: right, left au either</translation>
    </message>
    <message>
        <source>&quot;%1&quot; says nothing for a line of this kind and is not used</source>
        <translation>&quot;%1&quot; haina maana kwa mstari wa aina hii na haitumiki</translation>
    </message>
    <message>
        <source>the line has no name; write what its label says</source>
        <translation>mstari hauna jina; andika kile lebo yake inachosema</translation>
    </message>
    <message>
        <source>the addition %1 is outside +0.25 to +6.00</source>
        <translation>nyongeza %1 iko nje ya +0.25 hadi +6.00</translation>
    </message>
    <message>
        <source>write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}</source>
        <translation>andika nguvu moja, au {right: …, left: …}, au {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a bifocal&apos;s power is written {bifocal: +2.00, distance: 0.00}</source>
        <translation>nguvu ya bifokali huandikwa {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a lens with a cylinder needs axis: any (turned when mounting) or axis: degrees as mounted</source>
        <translation>lenzi yenye silinda inahitaji axis: any (hugeuzwa inapowekwa) au axis: digrii kama ilivyowekwa</translation>
    </message>
    <message>
        <source>the axis stands in the power already; keep one of the two</source>
        <translation>mhimili umo tayari kwenye nguvu; bakiza mmoja kati ya miwili</translation>
    </message>
    <message>
        <source>write this value in one line and without quotes, so that it can be changed</source>
        <translation>andika thamani hii kwenye mstari mmoja na bila alama za nukuu, ili iweze kubadilishwa</translation>
    </message>
    <message>
        <source>this is a list; begin each item with a dash</source>
        <translation>hii ni orodha; anza kila kipengele kwa kistari</translation>
    </message>
    <message>
        <source>“%1” stands in the list already, in line %2; keep one of the two</source>
        <translation>“%1” ipo tayari kwenye orodha, kwenye mstari %2; bakiza moja kati ya mbili</translation>
    </message>
    <message>
        <source>write the lines of the pack with their pieces, as {N+200-62M: 2}</source>
        <translation>andika mistari ya pakiti pamoja na vipande vyake, kama {N+200-62M: 2}</translation>
    </message>
    <message>
        <source>the pack holds &quot;%1&quot;, which is not among the lines of this list</source>
        <translation>pakiti ina &quot;%1&quot;, ambayo haipo kati ya mistari ya orodha hii</translation>
    </message>
    <message>
        <source>contact lenses were worn during this reading; the row is left out</source>
        <translation>lenzi za kugusa jicho zilivaliwa wakati wa usomaji huu; safu imeachwa</translation>
    </message>
    <message>
        <source>neither eye has sphere, cylinder and axis; the row is left out</source>
        <translation>hakuna jicho lenye sfia, silinda na mhimili; safu imeachwa</translation>
    </message>
    <message>
        <source>this eye has no complete reading and is taken as not measured</source>
        <translation>jicho hili halina usomaji kamili na linachukuliwa kuwa halikupimwa</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the words allowed here; write one of: %2</source>
        <translation>&quot;%1&quot; si mojawapo ya maneno yanayoruhusiwa hapa; andika mojawapo ya: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds two numbers; write one here, each eye&apos;s own in pd_right_mm and pd_left_mm, the near one in near_pd_mm</source>
        <translation>&quot;%1&quot; ina namba mbili; andika moja hapa, ya kila jicho kwenye pd_right_mm na pd_left_mm, ya karibu kwenye near_pd_mm</translation>
    </message>
    <message>
        <source>%1 would be a distance in cm; write it in mm: %2</source>
        <translation>%1 ungekuwa umbali kwa cm; uandike kwa mm: %2</translation>
    </message>
    <message>
        <source>%1 mm is not a pupillary distance; expected are %2 to %3 mm</source>
        <translation>mm %1 si umbali kati ya mboni; unatarajiwa mm %2 hadi %3</translation>
    </message>
    <message>
        <source>an addition is never minus; %1 was read; write the addition, not the near power (that goes into near_right and near_left)</source>
        <translation>nyongeza haiwi minus kamwe; imesomwa %1; andika nyongeza, si nguvu ya karibu (hiyo huenda kwenye near_right na near_left)</translation>
    </message>
    <message>
        <source>the addition %1 is outside 0.00 to +6.00</source>
        <translation>nyongeza %1 iko nje ya 0.00 hadi +6.00</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date of the form 2026-03-01 (year-month-day)</source>
        <translation>&quot;%1&quot; si tarehe ya muundo 2026-03-01 (mwaka-mwezi-siku)</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot; in the table</source>
        <translation>hakuna safuwima &quot;%1&quot; kwenye jedwali</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and lines</source>
        <translation>safuwima &quot;%1&quot; haipo; zinahitajika person na lines</translation>
    </message>
    <message>
        <source>“%1” is not a purpose; write distance, near, intermediate or bifocal</source>
        <translation>“%1” si matumizi; andika distance, near, intermediate au bifocal</translation>
    </message>
    <message>
        <source>the row needs a person and lines</source>
        <translation>safu inahitaji mtu na mistari</translation>
    </message>
    <message>
        <source>write one line, or frame + right lens + left lens</source>
        <translation>andika mstari mmoja, au fremu + lenzi ya kulia + lenzi ya kushoto</translation>
    </message>
    <message>
        <source>write two powers, for example [1.00, 3.50]</source>
        <translation>andika nguvu mbili, kwa mfano [1.00, 3.50]</translation>
    </message>
    <message>
        <source>a set that is not enabled says why; add: why</source>
        <translation>seti isiyowashwa husema kwa nini; ongeza: why</translation>
    </message>
    <message>
        <source>this set is enabled though its figures are from memory; once they are compared with the standard, say so under confidence</source>
        <translation>seti hii imewashwa ingawa namba zake ni za kukumbuka; zikishalinganishwa na kiwango, sema hivyo chini ya confidence</translation>
    </message>
    <message>
        <source>the set &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>seti &quot;%1&quot; ipo tayari katika faili; ipe hii jina lingine</translation>
    </message>
    <message>
        <source>this is not a tolerance file of this program; the first key should read format: %1</source>
        <translation>hii si faili ya vikomo ya programu hii; ufunguo wa kwanza unapaswa kuwa format: %1</translation>
    </message>
    <message>
        <source>`sets` is a list; begin each set with a dash</source>
        <translation>`sets` ni orodha; anza kila seti kwa kistari</translation>
    </message>
    <message>
        <source>write the rows as a list: [{power up to: 6.50, limit: 0.13}, …]</source>
        <translation>andika safu kama orodha: [{power up to: 6.50, limit: 0.13}, …]</translation>
    </message>
    <message>
        <source>a row has one of: limit, percent, or not judged: yes</source>
        <translation>safu ina kimoja kati ya: limit, percent, au not judged: yes</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; it names the hand-over</source>
        <translation>safuwima &quot;%1&quot; haipo; ndiyo inayotaja makabidhiano</translation>
    </message>
    <message>
        <source>the row names no hand-over</source>
        <translation>safu haitaji makabidhiano</translation>
    </message>
    <message>
        <source>%1 stands here twice</source>
        <translation>%1 iko hapa mara mbili</translation>
    </message>
    <message>
        <source>a single value is expected here, not a list or a map</source>
        <translation>thamani moja inatarajiwa hapa, si orodha wala funguo zenye thamani</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds a line break or a control character; write it on one line</source>
        <translation>&quot;%1&quot; ina mkatiko wa mstari au herufi ya udhibiti; iandike kwenye mstari mmoja</translation>
    </message>
    <message>
        <source>keys with values are expected here, such as: %1</source>
        <translation>funguo zenye thamani zinatarajiwa hapa, kama: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is written twice; the first stands in line %2; keep one</source>
        <translation>&quot;%1&quot; imeandikwa mara mbili; ya kwanza iko kwenye mstari %2; bakiza moja</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; known are: %2</source>
        <translation>ufunguo &quot;%1&quot; haujulikani hapa; zinazojulikana ni: %2</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; did you mean &quot;%2&quot;?</source>
        <translation>ufunguo &quot;%1&quot; haujulikani hapa; ulimaanisha &quot;%2&quot;?</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is missing here; add it</source>
        <translation>ufunguo &quot;%1&quot; haupo hapa; uongeze</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no value; write one after the colon</source>
        <translation>&quot;%1&quot; haina thamani; andika moja baada ya nukta mbili</translation>
    </message>
    <message>
        <source>a second document begins here; keep one document in the file</source>
        <translation>hati ya pili inaanza hapa; bakiza hati moja katika faili</translation>
    </message>
    <message>
        <source>an alias (*name) is not read here; write the value out</source>
        <translation>alias (*name) haisomwi hapa; andika thamani yote</translation>
    </message>
    <message>
        <source>this quote is never closed; close it on the same line</source>
        <translation>alama hii ya nukuu haikufungwa; ifunge kwenye mstari huo huo</translation>
    </message>
    <message>
        <source>an anchor (&amp;name) is not read here; delete it</source>
        <translation>anchor (&amp;name) haisomwi hapa; ifute</translation>
    </message>
    <message>
        <source>a tag (!name) is not read here; delete it</source>
        <translation>tag (!name) haisomwi hapa; ifute</translation>
    </message>
    <message>
        <source>the nesting is deeper than %1; this is not such a file</source>
        <translation>upachikaji umeingia ndani zaidi ya %1; hii si faili ya aina hiyo</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>ufunguo lazima uwe neno la kawaida</translation>
    </message>
    <message>
        <source>this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or a tab in the indentation, here or on the line above</source>
        <translation>hii haiwezi kusomwa kama YAML: %1; tafuta nukta mbili, alama ya nukuu au mabano yaliyokosekana, au tab kwenye nafasi za mwanzo wa mstari, hapa au kwenye mstari wa juu</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>faili ni tupu</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>opened</source>
        <translation>limefunguliwa</translation>
    </message>
    <message>
        <source>received</source>
        <translation>imepokelewa</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>imekabidhiwa</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>imerejeshwa</translation>
    </message>
    <message>
        <source>exchanged</source>
        <translation>imebadilishwa</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>imehesabiwa</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>imefutwa</translation>
    </message>
    <message>
        <source>held</source>
        <translation>imeshikiliwa</translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation>imewekwa karantini</translation>
    </message>
    <message>
        <source>released</source>
        <translation>imetolewa karantini</translation>
    </message>
    <message>
        <source>transferred out</source>
        <translation>imehamishwa nje</translation>
    </message>
    <message>
        <source>transferred in</source>
        <translation>imehamishwa ndani</translation>
    </message>
    <message>
        <source>no spectacles needed</source>
        <translation>miwani haihitajiki</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>amekataa</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>haijakamilika</translation>
    </message>
    <message>
        <source>repaired or adjusted</source>
        <translation>imetengenezwa au kurekebishwa</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>imeagizwa</translation>
    </message>
    <message>
        <source>order arrived</source>
        <translation>oda imefika</translation>
    </message>
    <message>
        <source>order checked</source>
        <translation>oda imekaguliwa</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>imewasilishwa</translation>
    </message>
    <message>
        <source>sent back to be remade</source>
        <translation>imerudishwa itengenezwe upya</translation>
    </message>
    <message>
        <source>not collected</source>
        <translation>haikuchukuliwa</translation>
    </message>
    <message>
        <source>referred</source>
        <translation>amepewa rufaa</translation>
    </message>
    <message>
        <source>not served from stock</source>
        <translation>hakuhudumiwa kutoka akiba</translation>
    </message>
    <message>
        <source>exported</source>
        <translation>imesafirishwa</translation>
    </message>
    <message>
        <source>drawn for the bench</source>
        <translation>imechaguliwa kwa meza ya vipimo</translation>
    </message>
    <message>
        <source>read at the bench</source>
        <translation>imesomwa kwenye meza ya vipimo</translation>
    </message>
    <message>
        <source>seen again</source>
        <translation>ameonwa tena</translation>
    </message>
    <message>
        <source>entered in error</source>
        <translation>imeingizwa kimakosa</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>imeharibika</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>haipo</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>imeibiwa</translation>
    </message>
    <message>
        <source>found</source>
        <translation>imepatikana</translation>
    </message>
    <message>
        <source>miscounted</source>
        <translation>imehesabiwa vibaya</translation>
    </message>
    <message>
        <source>off its label</source>
        <translation>haiendani na lebo</translation>
    </message>
    <message>
        <source>mislabelled</source>
        <translation>lebo si sahihi</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>sampuli</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>imetolewa bure</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>imerudishwa na mtengenezaji</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>The child was given glasses: %1.</source>
        <translation>Mtoto amepewa miwani: %1.</translation>
    </message>
    <message>
        <source>Glasses are suggested for the child: %1.</source>
        <translation>Miwani imependekezwa kwa mtoto: %1.</translation>
    </message>
    <message>
        <source>Glasses are to be made for the child.</source>
        <translation>Miwani itatengenezwa kwa ajili ya mtoto.</translation>
    </message>
    <message>
        <source>The child needs no glasses for this.</source>
        <translation>Mtoto hahitaji miwani kwa hili.</translation>
    </message>
    <message>
        <source>The eye test is not finished; the child comes again.</source>
        <translation>Upimaji wa macho haujakamilika; mtoto aje tena.</translation>
    </message>
    <message>
        <source>The child should see the eye clinic before any glasses.</source>
        <translation>Mtoto aonwe na kliniki ya macho kabla ya miwani yoyote.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic today.</source>
        <translation>Tafadhali mpeleke mtoto na barua kwenye kliniki ya macho leo.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic in the next days.</source>
        <translation>Tafadhali mpeleke mtoto na barua kwenye kliniki ya macho siku chache zijazo.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic when it next receives people.</source>
        <translation>Tafadhali mpeleke mtoto na barua kwenye kliniki ya macho itakapopokea watu tena.</translation>
    </message>
    <message>
        <source>The eyes of your child were tested.</source>
        <translation>Macho ya mtoto wako yamepimwa.</translation>
    </message>
    <message>
        <source>To be worn (as the prescriber told)</source>
        <translation>Wakati wa kuvaa (kama alivyosema aliyeandika)</translation>
    </message>
    <message>
        <source>The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: take them off and go to an eye clinic the same day.</source>
        <translation>Miwani inaweza kuhisiwa tofauti kwa wiki moja. Kuona maradufu, maumivu au kupoteza kuona ghafla: ivue na uende kliniki ya macho siku hiyo hiyo.</translation>
    </message>
    <message>
        <source>Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Rudi baada ya miezi 6 hadi 12, au mara moja jicho likigeuka au likiona vibaya zaidi.</translation>
    </message>
    <message>
        <source>Told to (guardian), by</source>
        <translation>Aliyeambiwa (mlezi), na nani</translation>
    </message>
    <message>
        <source>Please help the child to wear them, and to keep them clean and in their case.</source>
        <translation>Tafadhali msaidie mtoto kuivaa, na kuiweka safi na ndani ya kifuko chake.</translation>
    </message>
    <message>
        <source>Please let the child sit where the board is read easily.</source>
        <translation>Tafadhali mkalishe mtoto mahali ambapo ubao unasomeka kwa urahisi.</translation>
    </message>
    <message>
        <source>Tell the guardian at once if an eye turns or hurts, or if the child sees worse.</source>
        <translation>Mwambie mlezi mara moja jicho likigeuka au likiuma, au mtoto akiona vibaya zaidi.</translation>
    </message>
    <message>
        <source>Your glasses</source>
        <translation>Miwani yako</translation>
    </message>
    <message>
        <source>Glasses suggested for you</source>
        <translation>Miwani uliyopendekezewa</translation>
    </message>
    <message>
        <source>Glasses to be made for you</source>
        <translation>Miwani utakayotengenezewa</translation>
    </message>
    <message>
        <source>No glasses needed</source>
        <translation>Miwani haihitajiki</translation>
    </message>
    <message>
        <source>Not finished yet</source>
        <translation>Bado haijakamilika</translation>
    </message>
    <message>
        <source>Please go to the eye clinic first</source>
        <translation>Tafadhali nenda kwanza kliniki ya macho</translation>
    </message>
    <message>
        <source>Go to the eye clinic today, and take the letter.</source>
        <translation>Nenda kliniki ya macho leo, na uchukue barua.</translation>
    </message>
    <message>
        <source>Go to the eye clinic in the next days, and take the letter.</source>
        <translation>Nenda kliniki ya macho siku chache zijazo, na uchukue barua.</translation>
    </message>
    <message>
        <source>Go to the eye clinic when it next receives people, and take the letter.</source>
        <translation>Nenda kliniki ya macho itakapopokea watu tena, na uchukue barua.</translation>
    </message>
    <message>
        <source>right lens %1</source>
        <translation>lenzi ya kulia %1</translation>
    </message>
    <message>
        <source>left lens %1</source>
        <translation>lenzi ya kushoto %1</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>fremu %1</translation>
    </message>
    <message>
        <source>What you were given</source>
        <translation>Ulichopewa</translation>
    </message>
    <message>
        <source>What is suggested</source>
        <translation>Kinachopendekezwa</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>nyongeza %1</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Mstari</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Fremu</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Kinachobaki</translation>
    </message>
    <message>
        <source>Outside limit: %1.</source>
        <translation>Nje ya kikomo: %1.</translation>
    </message>
    <message>
        <source>Given because</source>
        <translation>Imetolewa kwa sababu</translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation>Tafadhali zingatia</translation>
    </message>
    <message>
        <source>This pair was worn by somebody before.</source>
        <translation>Miwani hii ilivaliwa na mtu mwingine awali.</translation>
    </message>
    <message>
        <source>You see with one eye: ask for lenses that do not break, and wear eye protection.</source>
        <translation>Unaona kwa jicho moja: omba lenzi zisizovunjika, na vaa kinga ya macho.</translation>
    </message>
    <message>
        <source>New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop wearing them and go to an eye clinic the same day.</source>
        <translation>Miwani mipya inaweza kuhisiwa tofauti kwa wiki moja. Kuona maradufu, maumivu au kupoteza kuona ghafla: acha kuivaa na uende kliniki ya macho siku hiyo hiyo.</translation>
    </message>
    <message>
        <source>Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Ivae kama alivyosema aliyeandika. Rudi baada ya miezi 6 hadi 12, au mara moja jicho likigeuka au likiona vibaya zaidi.</translation>
    </message>
    <message>
        <source>Come back if your sight changes, and for a new eye test in two years.</source>
        <translation>Rudi ikiwa kuona kwako kutabadilika, na kwa upimaji mpya wa macho baada ya miaka miwili.</translation>
    </message>
    <message>
        <source>Nothing in the box comes near enough, so glasses are to be made.</source>
        <translation>Hakuna kwenye sanduku kinachokaribia vya kutosha, kwa hiyo miwani itatengenezwa.</translation>
    </message>
    <message>
        <source>For the optician</source>
        <translation>Kwa mtaalamu wa miwani</translation>
    </message>
    <message>
        <source>Collect at</source>
        <translation>Chukulia</translation>
    </message>
    <message>
        <source>On or after</source>
        <translation>Tarehe hii au baadaye</translation>
    </message>
    <message>
        <source>Until then: temporary pair. Not for driving.</source>
        <translation>Hadi hapo: miwani ya muda. Si ya kuendesha gari.</translation>
    </message>
    <message>
        <source>Something is missing before glasses can be given:</source>
        <translation>Kuna kitu kinakosekana kabla miwani haijatolewa:</translation>
    </message>
    <message>
        <source>Come back on</source>
        <translation>Rudi tarehe</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Kwa sababu</translation>
    </message>
    <message>
        <source>Glasses wait until the clinic has seen your eyes.</source>
        <translation>Miwani inasubiri hadi kliniki ione macho yako.</translation>
    </message>
    <message>
        <source>Your prescription</source>
        <translation>Agizo lako</translation>
    </message>
    <message>
        <source>Your eyes should be measured once more.</source>
        <translation>Macho yako yapimwe mara moja tena.</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>KULIA</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>KUSHOTO</translation>
    </message>
    <message>
        <source>NEAR</source>
        <translation>KARIBU</translation>
    </message>
    <message>
        <source>DISTANCE</source>
        <translation>MBALI</translation>
    </message>
    <message>
        <source>ARM&apos;S LENGTH</source>
        <translation>UREFU WA MKONO</translation>
    </message>
    <message>
        <source>BIFOCAL</source>
        <translation>BIFOKALI</translation>
    </message>
    <message>
        <source>centres %1 mm (assumed)</source>
        <translation>vitovu mm %1 (vimekadiriwa)</translation>
    </message>
    <message>
        <source>centres %1 mm</source>
        <translation>vitovu mm %1</translation>
    </message>
    <message>
        <source>size S</source>
        <translation>ukubwa mdogo</translation>
    </message>
    <message>
        <source>size M</source>
        <translation>ukubwa wa kati</translation>
    </message>
    <message>
        <source>size L</source>
        <translation>ukubwa mkubwa</translation>
    </message>
    <message>
        <source>axis set when mounted</source>
        <translation>mhimili hupangwa wakati wa kuweka</translation>
    </message>
    <message>
        <source>used pair</source>
        <translation>miwani iliyotumika</translation>
    </message>
    <message>
        <source>Rules %1, program %2.</source>
        <translation>Kanuni %1, programu %2.</translation>
    </message>
    <message>
        <source>For near work only.</source>
        <translation>Kwa kazi ya karibu tu.</translation>
    </message>
    <message>
        <source>Day and place</source>
        <translation>Siku na mahali</translation>
    </message>
    <message>
        <source>Box %1: %2 pieces</source>
        <translation>Sanduku %1: vipande %2</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Kisanduku</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Nguvu</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Vipande</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Vilivyofungwa</translation>
    </message>
    <message>
        <source>Packed by</source>
        <translation>Aliyefunga</translation>
    </message>
    <message>
        <source>Counted again by</source>
        <translation>Aliyehesabu tena</translation>
    </message>
    <message>
        <source>Count what lies there. Two persons; what the book says is not asked before the end.</source>
        <translation>Hesabu kilichopo. Watu wawili; kilichoandikwa kwenye daftari hakiulizwi kabla ya mwisho.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Zilizohesabiwa</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Maoni</translation>
    </message>
    <message>
        <source>Counted by (initials)</source>
        <translation>Aliyehesabu (herufi)</translation>
    </message>
    <message>
        <source>Second person (initials)</source>
        <translation>Mtu wa pili (herufi)</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter, take the acuity with it, then compare with the record. Where they differ write: the record does not match the pair.</source>
        <translation>Soma miwani kwa fosimita, pima uwezo wa kuona nayo, kisha linganisha na rekodi. Vikitofautiana andika: rekodi hailingani na miwani.</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Ingizo</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Msimbo</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Iliyorekodiwa</translation>
    </message>
    <message>
        <source>Read right</source>
        <translation>Kulia iliyosomwa</translation>
    </message>
    <message>
        <source>Read left</source>
        <translation>Kushoto iliyosomwa</translation>
    </message>
    <message>
        <source>Acuity</source>
        <translation>Uwezo wa kuona</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Matokeo</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Aliyesoma</translation>
    </message>
    <message>
        <source>no power</source>
        <translation>bila nguvu</translation>
    </message>
    <message>
        <source>Eye</source>
        <translation>Jicho</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Nyongeza</translation>
    </message>
    <message>
        <source>Prism</source>
        <translation>Prizimu</translation>
    </message>
    <message>
        <source>Centre, mm</source>
        <translation>Kitovu, mm</translation>
    </message>
    <message>
        <source>Height, mm</source>
        <translation>Urefu, mm</translation>
    </message>
    <message>
        <source>minus cylinders</source>
        <translation>silinda za minus</translation>
    </message>
    <message>
        <source>plus cylinders</source>
        <translation>silinda za plus</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>kama ilivyoandikwa</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Ukubwa</translation>
    </message>
    <message>
        <source>Vertex distance, mm</source>
        <translation>Umbali wa vertex, mm</translation>
    </message>
    <message>
        <source>Working distance, mm</source>
        <translation>Umbali wa kazi, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Aliyeandika agizo</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Matumizi</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Muundo</translation>
    </message>
    <message>
        <source>* half of the distance between both eyes, not measured for this eye</source>
        <translation>* nusu ya umbali kati ya macho yote, haukupimwa kwa jicho hili</translation>
    </message>
    <message>
        <source>Not to be sent before these are measured:</source>
        <translation>Isitumwe kabla ya kupima haya:</translation>
    </message>
    <message>
        <source>Wanted by, signature</source>
        <translation>Inatakiwa lini, saini</translation>
    </message>
    <message>
        <source>Glasses are being made for you: %1.</source>
        <translation>Miwani yako inatengenezwa: %1.</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>Tarehe ya kuagiza</translation>
    </message>
    <message>
        <source>Bring this paper. The glasses are measured and tried on you before you take them home.</source>
        <translation>Leta karatasi hii. Miwani hupimwa na kujaribiwa usoni mwako kabla ya kuipeleka nyumbani.</translation>
    </message>
    <message>
        <source>If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly lost: do not wait, go to an eye clinic the same day.</source>
        <translation>Ukishindwa kuja, tuma mtu atuambie. Kuona kukipungua, jicho likiuma au ukipoteza kuona ghafla: usisubiri, nenda kliniki ya macho siku hiyo hiyo.</translation>
    </message>
    <message>
        <source>Rules %1, program version %2.</source>
        <translation>Kanuni %1, toleo la programu %2.</translation>
    </message>
    <message>
        <source>balance lens</source>
        <translation>lenzi ya usawa</translation>
    </message>
    <message>
        <source>artificial eye</source>
        <translation>jicho la bandia</translation>
    </message>
    <message>
        <source>does not see</source>
        <translation>haoni</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>haijapimwa</translation>
    </message>
    <message>
        <source>Note for the person</source>
        <translation>Karatasi ya mtu</translation>
    </message>
    <message>
        <source>Label of a line</source>
        <translation>Lebo ya mstari</translation>
    </message>
    <message>
        <source>Label of a bin</source>
        <translation>Lebo ya kisanduku</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Orodha ya kufungasha</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>Karatasi ya kuhesabu</translation>
    </message>
    <message>
        <source>Audit worksheet</source>
        <translation>Karatasi ya ukaguzi</translation>
    </message>
    <message>
        <source>Order to the laboratory</source>
        <translation>Oda kwa maabara</translation>
    </message>
    <message>
        <source>Letter to the eye clinic</source>
        <translation>Barua kwa kliniki ya macho</translation>
    </message>
    <message>
        <source>Glasses to collect</source>
        <translation>Miwani ya kuchukua</translation>
    </message>
    <message>
        <source>Note for the guardian</source>
        <translation>Karatasi ya mlezi</translation>
    </message>
    <message>
        <source>Note for the teacher</source>
        <translation>Karatasi ya mwalimu</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>Kadi ya haraka</translation>
    </message>
    <message>
        <source>Audit of hand-overs</source>
        <translation>Ukaguzi wa makabidhiano</translation>
    </message>
    <message>
        <source>Right eye</source>
        <translation>Jicho la kulia</translation>
    </message>
    <message>
        <source>Left eye</source>
        <translation>Jicho la kushoto</translation>
    </message>
    <message>
        <source>Distance, as written</source>
        <translation>Mbali, kama ilivyoandikwa</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>Karibu</translation>
    </message>
    <message>
        <source>for near: reading, sewing, telephone</source>
        <translation>kwa karibu: kusoma, kushona, simu</translation>
    </message>
    <message>
        <source>for work at arm&apos;s length</source>
        <translation>kwa kazi ya urefu wa mkono</translation>
    </message>
    <message>
        <source>for far (upper part) and near (lower part)</source>
        <translation>kwa mbali (sehemu ya juu) na karibu (sehemu ya chini)</translation>
    </message>
    <message>
        <source>for far: walking, school board, faces</source>
        <translation>kwa mbali: kutembea, ubao wa shule, nyuso</translation>
    </message>
    <message>
        <source>For near work only. Not for walking, riding or driving.</source>
        <translation>Kwa kazi ya karibu tu. Si ya kutembea, kupanda chombo au kuendesha.</translation>
    </message>
    <message>
        <source>For work at arm&apos;s length only. Not for walking, riding or driving.</source>
        <translation>Kwa kazi ya urefu wa mkono tu. Si ya kutembea, kupanda chombo au kuendesha.</translation>
    </message>
    <message>
        <source>The lower part is for near: take care on steps and kerbs. Drive only if your sight with these meets the law where you live.</source>
        <translation>Sehemu ya chini ni ya karibu: kuwa mwangalifu kwenye ngazi na kingo. Endesha tu ikiwa kuona kwako nayo kunatimiza sheria ya unapoishi.</translation>
    </message>
    <message>
        <source>Drive only if your sight with these meets the law where you live.</source>
        <translation>Endesha tu ikiwa kuona kwako nayo kunatimiza sheria ya unapoishi.</translation>
    </message>
    <message>
        <source>Suggested from the prescription of %1 of %2 by rules %3, version %4. This is not an eye examination.</source>
        <translation>Imependekezwa kutoka agizo la %1 la %2 kwa kanuni %3, toleo %4. Huu si uchunguzi wa macho.</translation>
    </message>
    <message>
        <source>(prescriber not named)</source>
        <translation>(aliyeandika hakutajwa)</translation>
    </message>
    <message>
        <source>(no date)</source>
        <translation>(bila tarehe)</translation>
    </message>
    <message>
        <source>within</source>
        <translation>ndani</translation>
    </message>
    <message>
        <source>beyond 95 %</source>
        <translation>zaidi ya 95 %</translation>
    </message>
    <message>
        <source>beyond 99.9 %</source>
        <translation>zaidi ya 99.9 %</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Yaliyopimwa</translation>
    </message>
    <message>
        <source>At odds</source>
        <translation>Yasiyolingana</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Sehemu</translation>
    </message>
    <message>
        <source>95 % limits</source>
        <translation>Vikomo vya 95 %</translation>
    </message>
    <message>
        <source>Funnel</source>
        <translation>Faneli</translation>
    </message>
    <message>
        <source>Share at odds against the number judged; lines: the share of all %1, the limits of chance at 95 % (dashed) and 99.9 % (solid)</source>
        <translation>Sehemu isiyolingana dhidi ya idadi iliyopimwa; mistari: sehemu ya yote %1, vikomo vya bahati kwa 95 % (vistari) na 99.9 % (mstari mzima)</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>makabidhiano yaliyopimwa</translation>
    </message>
    <message>
        <source>Good ones before it</source>
        <translation>Mazuri kabla yake</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Chati</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Mfululizo</translation>
    </message>
    <message>
        <source>Good hand-overs between two at odds, in their order; centre %1, a run longer than %2 is better than the share says</source>
        <translation>Makabidhiano mazuri kati ya mawili yasiyolingana, kwa mpangilio; katikati %1, mfululizo mrefu kuliko %2 ni bora kuliko sehemu inavyosema</translation>
    </message>
    <message>
        <source>runs, the last one still open</source>
        <translation>mifululizo, wa mwisho bado wazi</translation>
    </message>
    <message>
        <source>better than the share says</source>
        <translation>bora kuliko sehemu inavyosema</translation>
    </message>
    <message>
        <source>open</source>
        <translation>wazi</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Vikomo</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Wiki kuanzia</translation>
    </message>
    <message>
        <source>Share at odds by week; centre %1, limits at three standard deviations, which step with the volume</source>
        <translation>Sehemu isiyolingana kwa wiki; katikati %1, vikomo kwa mikengeuko sanifu mitatu, ambavyo hubadilika na idadi</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>wiki</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>zaidi ya kikomo</translation>
    </message>
    <message>
        <source>Large lot accepted</source>
        <translation>Fungu kubwa limekubaliwa</translation>
    </message>
    <message>
        <source>This lot accepted</source>
        <translation>Fungu hili limekubaliwa</translation>
    </message>
    <message>
        <source>Failing</source>
        <translation>Zinazoshindwa</translation>
    </message>
    <message>
        <source>How likely a lot is accepted by the share that fails in it: %1 read, at most %2 may fail</source>
        <translation>Uwezekano wa fungu kukubaliwa kwa sehemu inayoshindwa ndani yake: zimesomwa %1, zisizozidi %2 zinaweza kushindwa</translation>
    </message>
    <message>
        <source>failing</source>
        <translation>zinazoshindwa</translation>
    </message>
    <message>
        <source>Tell what the glasses are for, what is left, and when to come back; give the note.</source>
        <translation>Eleza miwani ni ya nini, nini kinabaki, na arudi lini; toa karatasi.</translation>
    </message>
    <message>
        <source>Close the program, then copy the whole folder to a stick at the end of the day.</source>
        <translation>Funga programu, kisha nakili folda nzima kwenye kifaa cha USB mwisho wa siku.</translation>
    </message>
    <message>
        <source>Take a sample of pairs, read them, and look for the slip, not for somebody to blame.</source>
        <translation>Chukua sampuli ya miwani, isome, na utafute kosa, si mtu wa kulaumu.</translation>
    </message>
    <message>
        <source>Type the camp code and the final prescription as written; signs always.</source>
        <translation>Andika msimbo wa kambi na agizo la mwisho kama lilivyoandikwa; alama daima.</translation>
    </message>
    <message>
        <source>Pain, red eye, sudden loss, flashes, double vision: the clinic first.</source>
        <translation>Maumivu, jicho jekundu, kupoteza kuona ghafla, mimweko, kuona maradufu: kliniki kwanza.</translation>
    </message>
    <message>
        <source>Measure the distance between the eyes; for reading the near one.</source>
        <translation>Pima umbali kati ya macho; kwa kusoma ule wa karibu.</translation>
    </message>
    <message>
        <source>Fetch what is suggested from its bin and scan the label.</source>
        <translation>Leta iliyopendekezwa kutoka kisanduku chake na uskani lebo.</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter: does it hold what the label says?</source>
        <translation>Soma miwani kwa fosimita: je, ni kama lebo inavyosema?</translation>
    </message>
    <message>
        <source>Try it on the face; take the acuity of each eye with it.</source>
        <translation>Ijaribu usoni; pima uwezo wa kuona wa kila jicho nayo.</translation>
    </message>
    <message>
        <source>Outside a limit: say no, or write the reason in your own words.</source>
        <translation>Nje ya kikomo: kataa, au andika sababu kwa maneno yako.</translation>
    </message>
    <message>
        <source>Put back what was tried and not taken, each into the bin of its label.</source>
        <translation>Rudisha iliyojaribiwa na haikuchukuliwa, kila moja kwenye kisanduku cha lebo yake.</translation>
    </message>
    <message>
        <source>Take in a delivery by scanning it; a new lot waits until samples are read.</source>
        <translation>Pokea mzigo kwa kuuskani; shehena mpya husubiri hadi sampuli zisomwe.</translation>
    </message>
    <message>
        <source>Print labels for what came; one on each case, one on each bin.</source>
        <translation>Chapisha lebo za zilizofika; moja kwa kila kifuko, moja kwa kila kisanduku.</translation>
    </message>
    <message>
        <source>A pair off its label goes into quarantine, never back into the bin.</source>
        <translation>Miwani isiyoendana na lebo huwekwa karantini, kamwe hairudi kisandukuni.</translation>
    </message>
    <message>
        <source>Returned pairs are cleaned and read before they are given again.</source>
        <translation>Miwani iliyorejeshwa husafishwa na kusomwa kabla ya kutolewa tena.</translation>
    </message>
    <message>
        <source>Count by two persons on the blind sheet; every difference has a reason.</source>
        <translation>Hesabuni watu wawili kwenye karatasi isiyoonyesha idadi; kila tofauti ina sababu.</translation>
    </message>
    <message>
        <source>Send to another site with a list; what arrives is counted there.</source>
        <translation>Tuma kwenye kituo kingine pamoja na orodha; kinachofika huhesabiwa huko.</translation>
    </message>
    <message>
        <source>Choose the rules with the prescriber, and name them to the team.</source>
        <translation>Chagua kanuni pamoja na anayeandika maagizo, na uwaambie timu.</translation>
    </message>
    <message>
        <source>Look at what was given outside a limit, and at its reasons, each evening.</source>
        <translation>Tazama kila jioni kilichotolewa nje ya kikomo, na sababu zake.</translation>
    </message>
    <message>
        <source>Every letter to the clinic is counted when its lower part comes back.</source>
        <translation>Kila barua kwa kliniki huhesabiwa sehemu yake ya chini inaporudi.</translation>
    </message>
    <message>
        <source>Every pair that is ordered is followed until it is collected.</source>
        <translation>Kila miwani iliyoagizwa hufuatiliwa hadi ichukuliwe.</translation>
    </message>
    <message>
        <source>Codes leave the camp, names do not.</source>
        <translation>Misimbo hutoka kambini, majina hayatoki.</translation>
    </message>
    <message>
        <source>Quick card: at the table</source>
        <translation>Kadi ya haraka: mezani</translation>
    </message>
    <message>
        <source>Quick card: keeper of the box</source>
        <translation>Kadi ya haraka: mtunza sanduku</translation>
    </message>
    <message>
        <source>Quick card: supervisor</source>
        <translation>Kadi ya haraka: msimamizi</translation>
    </message>
    <message>
        <source>Told with every pair</source>
        <translation>Huelezwa kwa kila miwani</translation>
    </message>
    <message>
        <source>A suggestion is not an eye examination. The prescriber and the optician decide.</source>
        <translation>Pendekezo si uchunguzi wa macho. Aliyeandika agizo na mtaalamu wa miwani huamua.</translation>
    </message>
    <message>
        <source>Says that sight was lost suddenly.</source>
        <translation>Anasema alipoteza kuona ghafla.</translation>
    </message>
    <message>
        <source>Says that an eye hurts.</source>
        <translation>Anasema jicho linauma.</translation>
    </message>
    <message>
        <source>An eye is red.</source>
        <translation>Jicho ni jekundu.</translation>
    </message>
    <message>
        <source>Sees new flashes or floaters.</source>
        <translation>Anaona mimweko au madoa mapya.</translation>
    </message>
    <message>
        <source>Sees double.</source>
        <translation>Anaona maradufu.</translation>
    </message>
    <message>
        <source>A pupil looks white.</source>
        <translation>Mboni inaonekana nyeupe.</translation>
    </message>
    <message>
        <source>A child; the eyes do not look the same way.</source>
        <translation>Mtoto; macho hayatazami upande mmoja.</translation>
    </message>
    <message>
        <source>The prescriber asks for a refraction with drops.</source>
        <translation>Aliyeandika agizo anaomba upimaji kwa matone.</translation>
    </message>
    <message>
        <source>Straight lines look bent or broken.</source>
        <translation>Mistari iliyonyooka inaonekana imepinda au imekatika.</translation>
    </message>
    <message>
        <source>A part of the field of view is missing.</source>
        <translation>Sehemu ya uoni haipo.</translation>
    </message>
    <message>
        <source>Sees rings round lights.</source>
        <translation>Anaona miviringo kwenye taa.</translation>
    </message>
    <message>
        <source>A child who does not reach 6/9 in each eye with the final prescription.</source>
        <translation>Mtoto asiyefikia 6/9 kwa kila jicho na agizo la mwisho.</translation>
    </message>
    <message>
        <source>A child who came with less than 6/60 in an eye.</source>
        <translation>Mtoto aliyekuja na chini ya 6/60 kwa jicho moja.</translation>
    </message>
    <message>
        <source>A child with +3.50 D or more, or a cylinder of 1.50 D or more.</source>
        <translation>Mtoto mwenye +3.50 D au zaidi, au silinda ya 1.50 D au zaidi.</translation>
    </message>
    <message>
        <source>Under 8 years; the eyes differ by 1.50 D or more.</source>
        <translation>Chini ya miaka 8; macho yanatofautiana kwa 1.50 D au zaidi.</translation>
    </message>
    <message>
        <source>Less than 6/12 in the better eye with the best prescription found.</source>
        <translation>Chini ya 6/12 kwa jicho bora na agizo bora lililopatikana.</translation>
    </message>
    <message>
        <source>A mean sphere beyond 6.00 D.</source>
        <translation>Sfia ya wastani zaidi ya 6.00 D.</translation>
    </message>
    <message>
        <source>A sphere of +8.00 D or more.</source>
        <translation>Sfia ya +8.00 D au zaidi.</translation>
    </message>
    <message>
        <source>What was observed</source>
        <translation>Kilichoonekana</translation>
    </message>
    <message>
        <source>In the person&apos;s words</source>
        <translation>Kwa maneno ya mtu</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>bila miwani</translation>
    </message>
    <message>
        <source>own pair</source>
        <translation>miwani yake</translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation>tundu dogo</translation>
    </message>
    <message>
        <source>best</source>
        <translation>bora</translation>
    </message>
    <message>
        <source>Please see this person today, and tell us on the part below.</source>
        <translation>Tafadhali mwone mtu huyu leo, na utuambie kwenye sehemu ya chini.</translation>
    </message>
    <message>
        <source>Please see this person in the next days, and tell us on the part below.</source>
        <translation>Tafadhali mwone mtu huyu siku chache zijazo, na utuambie kwenye sehemu ya chini.</translation>
    </message>
    <message>
        <source>Please see this person at a usual appointment, and tell us on the part below.</source>
        <translation>Tafadhali mwone mtu huyu kwa miadi ya kawaida, na utuambie kwenye sehemu ya chini.</translation>
    </message>
    <message>
        <source>No glasses are given until you have seen the person.</source>
        <translation>Miwani haitatolewa hadi umwone mtu huyu.</translation>
    </message>
    <message>
        <source>Glasses were given today: %1</source>
        <translation>Miwani imetolewa leo: %1</translation>
    </message>
    <message>
        <source>No glasses are recorded as given yet.</source>
        <translation>Bado hakuna miwani iliyorekodiwa kuwa imetolewa.</translation>
    </message>
    <message>
        <source>Please return this part</source>
        <translation>Tafadhali rudisha sehemu hii</translation>
    </message>
    <message>
        <source>Return to</source>
        <translation>Rudisha kwa</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Ameonwa tarehe</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Kilichopatikana</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Kilichofanyika</translation>
    </message>
    <message>
        <source>Glasses: may be given / wait / other prescription</source>
        <translation>Miwani: inaweza kutolewa / isubiri / agizo lingine</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Saini</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Umri</translation>
    </message>
    <message>
        <source>Name (write it in only if the person agrees)</source>
        <translation>Jina (liandike tu ikiwa mtu anakubali)</translation>
    </message>
    <message>
        <source>Prescription found</source>
        <translation>Agizo lililopatikana</translation>
    </message>
    <message>
        <source>What we ask</source>
        <translation>Tunachoomba</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>chini ya %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>bado hakuna</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 kati ya %2</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (95 % limits %4 to %5)</source>
        <translation>%1 kati ya %2, %3 (vikomo vya 95 % %4 hadi %5)</translation>
    </message>
    <message>
        <source>Refraction</source>
        <translation>Upimaji wa macho</translation>
    </message>
    <message>
        <source>Dispensing</source>
        <translation>Kutoa miwani</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Msambazaji</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Akiba</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>Ufuatiliaji</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Rekodi</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Kituo</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Kanuni</translation>
    </message>
    <message>
        <source>Kind of pair</source>
        <translation>Aina ya miwani</translation>
    </message>
    <message>
        <source>Desk (numbers of this report)</source>
        <translation>Dawati (namba za ripoti hii)</translation>
    </message>
    <message>
        <source>By site</source>
        <translation>Kwa kituo</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Kwa wiki</translation>
    </message>
    <message>
        <source>By rules</source>
        <translation>Kwa kanuni</translation>
    </message>
    <message>
        <source>By purpose</source>
        <translation>Kwa matumizi</translation>
    </message>
    <message>
        <source>By kind of pair</source>
        <translation>Kwa aina ya miwani</translation>
    </message>
    <message>
        <source>By desk</source>
        <translation>Kwa dawati</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>iliyo tayari</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifokali</translation>
    </message>
    <message>
        <source>lenses in a frame</source>
        <translation>lenzi ndani ya fremu</translation>
    </message>
    <message>
        <source>nobody has looked yet</source>
        <translation>bado hakuna aliyetazama</translation>
    </message>
    <message>
        <source>met</source>
        <translation>limetimizwa</translation>
    </message>
    <message>
        <source>under-met</source>
        <translation>limetimizwa kiasi</translation>
    </message>
    <message>
        <source>unmet</source>
        <translation>halijatimizwa</translation>
    </message>
    <message>
        <source>no need</source>
        <translation>hakuna hitaji</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>sababu nyingine</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>haijulikani</translation>
    </message>
    <message>
        <source>At odds: by the record, the pair is not one that the rules would call acceptable, or what was measured beside the record speaks against it. This page is about records; a person decides what they mean. Nothing here is a ranking.</source>
        <translation>Yasiyolingana: kwa rekodi, miwani si ile ambayo kanuni zingeikubali, au kilichopimwa pamoja na rekodi kinaipinga. Ukurasa huu unahusu rekodi; mtu huamua maana yake. Hakuna upangaji wa nafasi hapa.</translation>
    </message>
    <message>
        <source>Hand-overs</source>
        <translation>Makabidhiano</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 kuanzia %2 hadi %3</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Hupimwa kwa</translation>
    </message>
    <message>
        <source>Record and pair at odds</source>
        <translation>Rekodi na miwani hazilingani</translation>
    </message>
    <message>
        <source>Entry %1 is not as it was written; only what stands before it was judged.</source>
        <translation>Ingizo %1 haliko kama lilivyoandikwa; yaliyo kabla yake tu ndiyo yaliyopimwa.</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>Cha kufanya baadaye</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Hakuna kilichopatikana.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wapi</translation>
    </message>
    <message>
        <source>What the records show</source>
        <translation>Rekodi zinaonyesha nini</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Mara</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Kinachofuata</translation>
    </message>
    <message>
        <source>Kinds found less often, in the detail: %1</source>
        <translation>Aina zinazopatikana mara chache, kwa undani: %1</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Kwa wakati</translation>
    </message>
    <message>
        <source>p-chart by week</source>
        <translation>chati ya p kwa wiki</translation>
    </message>
    <message>
        <source>p-chart: %1</source>
        <translation>chati ya p: %1</translation>
    </message>
    <message>
        <source>g-chart: %1</source>
        <translation>chati ya g: %1</translation>
    </message>
    <message>
        <source>g-chart</source>
        <translation>chati ya g</translation>
    </message>
    <message>
        <source>g-chart: half of the runs between two at odds are %1 good ones or fewer; one longer than %2 is better than the share says</source>
        <translation>chati ya g: nusu ya mifululizo kati ya mawili yasiyolingana ina mazuri %1 au pungufu; mrefu kuliko %2 ni bora kuliko sehemu inavyosema</translation>
    </message>
    <message>
        <source>Read again at the bench</source>
        <translation>Zilizosomwa tena kwenye meza ya vipimo</translation>
    </message>
    <message>
        <source>No lot was drawn yet.</source>
        <translation>Bado hakuna fungu lililochaguliwa.</translation>
    </message>
    <message>
        <source>%1 of %2 hand-overs, at most %3 may fail</source>
        <translation>makabidhiano %1 kati ya %2, yasiyozidi %3 yanaweza kushindwa</translation>
    </message>
    <message>
        <source>Operating curve</source>
        <translation>Mkunjo wa kukubali</translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation>bado hakuna matokeo</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>limekubaliwa</translation>
    </message>
    <message>
        <source>refused: read every pair of these days</source>
        <translation>limekataliwa: soma kila miwani ya siku hizi</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Walioonwa tena</translation>
    </message>
    <message>
        <source>With the pair when seen</source>
        <translation>Walio na miwani walipoonwa</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Wakati umefika</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>Watu</translation>
    </message>
    <message>
        <source>Due now</source>
        <translation>Wakati umefika sasa</translation>
    </message>
    <message>
        <source>Effective coverage, distance, of %1 who came</source>
        <translation>Ufikiaji wenye ufanisi, mbali, kwa %1 waliokuja</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>Ufikiaji</translation>
    </message>
    <message>
        <source>as they came</source>
        <translation>walivyokuja</translation>
    </message>
    <message>
        <source>as they are now</source>
        <translation>walivyo sasa</translation>
    </message>
    <message>
        <source>Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator 3154). It is defined for a sample of a population; here it is of those who came.</source>
        <translation>Yaliyotimizwa gawanya kwa yaliyotimizwa, yaliyotimizwa kiasi na yasiyotimizwa, jicho bora, 6/12 (Shirika la Afya Duniani, kiashiria 3154). Kimefafanuliwa kwa sampuli ya idadi ya watu; hapa ni cha waliokuja.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Yaliyobainika</translation>
    </message>
    <message>
        <source>In figures</source>
        <translation>Kwa namba</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Kosa linalowezekana zaidi</translation>
    </message>
    <message>
        <source>None to be listed one by one.</source>
        <translation>Hakuna la kuorodheshwa moja moja.</translation>
    </message>
    <message>
        <source>%1 more are not listed here; `audit --json` has them all.</source>
        <translation>%1 zaidi hayajaorodheshwa hapa; `audit --json` inayo yote.</translation>
    </message>
    <message>
        <source>A slip is a mistake in a record or in a pick, named by its likelihood and never proved by it.</source>
        <translation>Kosa ni dosari kwenye rekodi au katika kuchagua; hutajwa kwa uwezekano wake na halithibitishwi nao kamwe.</translation>
    </message>
    <message>
        <source>%1 stronger than written: hold things a little nearer</source>
        <translation>%1 kali kuliko ilivyoandikwa: shika vitu karibu kidogo</translation>
    </message>
    <message>
        <source>%1 weaker than written: hold things a little further away</source>
        <translation>%1 dhaifu kuliko ilivyoandikwa: shika vitu mbali kidogo</translation>
    </message>
    <message>
        <source>%1 more plus than written: far things are a little less sharp</source>
        <translation>plus %1 zaidi ya ilivyoandikwa: vitu vya mbali havitaonekana wazi sana</translation>
    </message>
    <message>
        <source>%1 more minus than written: the eye has to focus a little more</source>
        <translation>minus %1 zaidi ya ilivyoandikwa: jicho litajitahidi zaidi kidogo</translation>
    </message>
    <message>
        <source>%1 of the cylinder is not in the lens: fine lines are a little less sharp</source>
        <translation>%1 ya silinda haipo kwenye lenzi: mistari myembamba haitaonekana wazi sana</translation>
    </message>
    <message>
        <source>near part: %1</source>
        <translation>sehemu ya karibu: %1</translation>
    </message>
    <message>
        <source>Both eyes</source>
        <translation>Macho yote</translation>
    </message>
    <message>
        <source>Things are clear from about %1 cm.</source>
        <translation>Vitu vinaonekana wazi kuanzia karibu cm %1.</translation>
    </message>
    <message>
        <source>Things are clear from about %1 to %2 cm.</source>
        <translation>Vitu vinaonekana wazi kuanzia karibu cm %1 hadi %2.</translation>
    </message>
    <message>
        <source>The lenses have the power that was written for you.</source>
        <translation>Lenzi zina nguvu uliyoandikiwa.</translation>
    </message>
    <message>
        <source>The middle of the lenses is not quite before the middle of the eyes: the first days may feel odd.</source>
        <translation>Katikati ya lenzi haiko sawasawa mbele ya katikati ya macho: siku za kwanza zinaweza kuhisiwa tofauti.</translation>
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
        <translation>Kila matumizi hupimwa peke yake</translation>
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
    <name>quarterstep::AuditCasePanel</name>
    <message>
        <source>Criteria and slips, or the picture of why not</source>
        <translation>Vigezo na makosa, au mchoro wa kwa nini siyo</translation>
    </message>
    <message>
        <source>Criteria and slips</source>
        <translation>Vigezo na makosa</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Kwa nini siyo</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>Pau zinaonyesha nini</translation>
    </message>
    <message>
        <source>From the better pair to the pair given, or the limits of one of them</source>
        <translation>Kutoka miwani bora zaidi hadi iliyotolewa, au vikomo vya mojawapo</translation>
    </message>
    <message>
        <source>From the better pair to the pair given</source>
        <translation>Kutoka miwani bora zaidi hadi miwani iliyotolewa</translation>
    </message>
    <message>
        <source>Where the cost of the pair given comes from</source>
        <translation>Hasara ya miwani iliyotolewa inatoka wapi</translation>
    </message>
    <message>
        <source>Limits used up by the pair given</source>
        <translation>Vikomo vilivyotumiwa na miwani iliyotolewa</translation>
    </message>
    <message>
        <source>Limits used up by the better pair</source>
        <translation>Vikomo vilivyotumiwa na miwani bora zaidi</translation>
    </message>
    <message>
        <source>Choose a hand-over that could be judged: what kept it from its limits stands here.</source>
        <translation>Chagua makabidhiano yaliyoweza kupimwa: kilichoyazuia kufikia vikomo vyake kitaonekana hapa.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCharts</name>
    <message>
        <source>Of 100 hand-overs: why not</source>
        <translation>Kati ya makabidhiano 100: kwa nini siyo</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Hifadhi…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Hifadhi chati</translation>
    </message>
    <message>
        <source>Pictures (*.png);;Tables (*.csv)</source>
        <translation>Picha (*.png);;Majedwali (*.csv)</translation>
    </message>
    <message>
        <source>The chart is %1.</source>
        <translation>Chati ni %1.</translation>
    </message>
    <message>
        <source>Saves the chart as a PDF or a picture, or its numbers as a table (Ctrl+Shift+S)</source>
        <translation>Huhifadhi chati kama PDF au picha, au namba zake kama jedwali (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Chapisha</translation>
    </message>
    <message>
        <source>Prints the chart with its numbers on the printer of the settings (Ctrl+P)</source>
        <translation>Huchapisha chati pamoja na namba zake kwenye printa ya mipangilio (Ctrl+P)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Karatasi (*.pdf)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditPlace</name>
    <message>
        <source>Audit</source>
        <translation>Ukaguzi</translation>
    </message>
    <message>
        <source>Every hand-over is judged again by the rules and the stock of its moment.</source>
        <translation>Kila makabidhiano hupimwa tena kwa kanuni na akiba ya wakati wake.</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translation>Kagua tena</translation>
    </message>
    <message>
        <source>Reads the ledger from the first entry to the last (F5)</source>
        <translation>Husoma daftari kutoka ingizo la kwanza hadi la mwisho (F5)</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Kinachoonyeshwa</translation>
    </message>
    <message>
        <source>Shows findings of one class only</source>
        <translation>Huonyesha mambo ya daraja moja tu</translation>
    </message>
    <message>
        <source>Look for a finding</source>
        <translation>Tafuta jambo</translation>
    </message>
    <message>
        <source>Look for a person, a line, a word</source>
        <translation>Tafuta mtu, mstari, neno</translation>
    </message>
    <message>
        <source>Shows only findings in which these words stand (Ctrl+F)</source>
        <translation>Huonyesha tu mambo yenye maneno haya (Ctrl+F)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Yaliyobainika</translation>
    </message>
    <message>
        <source>What is to be said of hand-overs, one by one</source>
        <translation>Ya kusemwa kuhusu makabidhiano, moja moja</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Chati</translation>
    </message>
    <message>
        <source>How often, by site, week and kind of pair</source>
        <translation>Mara ngapi, kwa kituo, wiki na aina ya miwani</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Meza ya vipimo</translation>
    </message>
    <message>
        <source>Lots read again, who is to be seen again, the report</source>
        <translation>Mafungu yaliyosomwa tena, wa kuonwa tena, ripoti</translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation>Yaliyobainika kwenye ukaguzi</translation>
    </message>
    <message>
        <source>Choose a finding to see need, pair and slips beside</source>
        <translation>Chagua jambo uone hitaji, miwani na makosa kando yake</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Chati</translation>
    </message>
    <message>
        <source>Funnel: shares against the size of the group</source>
        <translation>Faneli: sehemu dhidi ya ukubwa wa kundi</translation>
    </message>
    <message>
        <source>Runs of good hand-overs (g-chart)</source>
        <translation>Mifululizo ya makabidhiano mazuri (chati ya g)</translation>
    </message>
    <message>
        <source>Weeks (p-chart)</source>
        <translation>Wiki (chati ya p)</translation>
    </message>
    <message>
        <source>Which picture is drawn</source>
        <translation>Mchoro upi uchorwe</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Makundi</translation>
    </message>
    <message>
        <source>What the groups of the funnel are</source>
        <translation>Makundi ya faneli ni yapi</translation>
    </message>
    <message>
        <source>Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. Circle: inside · triangle: beyond the inner limit · diamond: beyond the outer. Nothing is ranked.</source>
        <translation>Mstari mzima: sehemu ya yote · vistari: kikomo cha ndani, 95 % · vitone: kikomo cha nje. Duara: ndani · pembetatu: zaidi ya kikomo cha ndani · almasi: zaidi ya cha nje. Hakuna kinachopangwa kwa nafasi.</translation>
    </message>
    <message>
        <source>The numbers of the chart</source>
        <translation>Namba za chati</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Namba zile zile za kwenye mchoro</translation>
    </message>
    <message>
        <source>Why, criterion by criterion:</source>
        <translation>Kwa nini, kigezo kwa kigezo:</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Miwani iliyotolewa</translation>
    </message>
    <message>
        <source>How the pair that was given is judged</source>
        <translation>Jinsi miwani iliyotolewa inavyopimwa</translation>
    </message>
    <message>
        <source>Better pair</source>
        <translation>Miwani bora zaidi</translation>
    </message>
    <message>
        <source>How the pair that lay in the box is judged</source>
        <translation>Jinsi miwani iliyokuwa ndani ya sanduku inavyopimwa</translation>
    </message>
    <message>
        <source>Criteria of the pair</source>
        <translation>Vigezo vya miwani</translation>
    </message>
    <message>
        <source>Each criterion with its value, its limit and the source of the limit</source>
        <translation>Kila kigezo na thamani yake, kikomo chake na chanzo cha kikomo</translation>
    </message>
    <message>
        <source>Slips that the record allows. It speaks of the record; a person decides.</source>
        <translation>Makosa ambayo rekodi inaruhusu. Inahusu rekodi; mtu huamua.</translation>
    </message>
    <message>
        <source>Slips and their arithmetic</source>
        <translation>Makosa na hesabu zake</translation>
    </message>
    <message>
        <source>Probability of each slip, and how it comes about</source>
        <translation>Uwezekano wa kila kosa, na jinsi unavyopatikana</translation>
    </message>
    <message>
        <source>Judging hand-overs again…</source>
        <translation>Inapima makabidhiano tena…</translation>
    </message>
    <message>
        <source>Reading the ledger …</source>
        <translation>Inasoma daftari …</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written; audit again with F5.</source>
        <translation>Imesimamishwa. Hakuna kilichoandikwa; kagua tena kwa F5.</translation>
    </message>
    <message>
        <source>The audit ended before its time; the reason stands above.</source>
        <translation>Ukaguzi uliisha kabla ya wakati; sababu iko juu.</translation>
    </message>
    <message>
        <source>hand-overs %1, judged again %2</source>
        <translation>makabidhiano %1, yaliyopimwa tena %2</translation>
    </message>
    <message>
        <source>pair and record at odds: %1</source>
        <translation>miwani na rekodi havilingani: %1</translation>
    </message>
    <message>
        <source>findings %1</source>
        <translation>mambo %1</translation>
    </message>
    <message>
        <source>%1 more are counted and not listed</source>
        <translation>%1 zaidi yamehesabiwa na hayajaorodheshwa</translation>
    </message>
    <message>
        <source>The record is whole: %1 entries, each follows the one before.</source>
        <translation>Rekodi ni kamili: maingizo %1, kila moja linafuata la kabla.</translation>
    </message>
    <message>
        <source>Every finding</source>
        <translation>Kila jambo</translation>
    </message>
    <message>
        <source>by site</source>
        <translation>kwa kituo</translation>
    </message>
    <message>
        <source>by who handed over</source>
        <translation>kwa aliyekabidhi</translation>
    </message>
    <message>
        <source>by week</source>
        <translation>kwa wiki</translation>
    </message>
    <message>
        <source>by profile</source>
        <translation>kwa wasifu</translation>
    </message>
    <message>
        <source>by purpose</source>
        <translation>kwa matumizi</translation>
    </message>
    <message>
        <source>by kind of pair</source>
        <translation>kwa aina ya miwani</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Kulia</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Kushoto</translation>
    </message>
    <message>
        <source>%1: not judged</source>
        <translation>%1: haijapimwa</translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation>%1: inahitaji %2</translation>
    </message>
    <message>
        <source>, was given %1</source>
        <translation>, imepewa %1</translation>
    </message>
    <message>
        <source>Pair %1: %2</source>
        <translation>Miwani %1: %2</translation>
    </message>
    <message>
        <source>In the box lay %1 (bin %2): %3</source>
        <translation>Ndani ya sanduku kulikuwa na %1 (kisanduku %2): %3</translation>
    </message>
    <message>
        <source>No slip was looked for: record, pair and witnesses agree.</source>
        <translation>Hakuna kosa lililotafutwa: rekodi, miwani na ushahidi vinakubaliana.</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>%1  %2: %3</translation>
    </message>
    <message>
        <source>Below each: prior × witnesses × pair; the probability is its part of the sum.</source>
        <translation>Chini ya kila moja: uwezekano wa awali × ushahidi × miwani; uwezekano ni sehemu yake ya jumla.</translation>
    </message>
    <message>
        <source>Slips of the record cannot be tested here: nothing was measured beside it.</source>
        <translation>Makosa ya rekodi hayawezi kujaribiwa hapa: hakuna kilichopimwa pamoja nayo.</translation>
    </message>
    <message>
        <source>No finding is chosen</source>
        <translation>Hakuna jambo lililochaguliwa</translation>
    </message>
    <message>
        <source>Choose a finding in the list: what was needed, what was given and what lay in the box stand here.</source>
        <translation>Chagua jambo kwenye orodha: kilichohitajika, kilichotolewa na kilichokuwa ndani ya sanduku vitaonekana hapa.</translation>
    </message>
    <message>
        <source>About the course of events</source>
        <translation>Kuhusu mfuatano wa matukio</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>%1, %2, ingizo %3</translation>
    </message>
    <message>
        <source>Need, pair and findings</source>
        <translation>Hitaji, miwani na yaliyobainika</translation>
    </message>
    <message>
        <source>What was needed, what was given, what lay in the box; the text can be copied</source>
        <translation>Kilichohitajika, kilichotolewa, kilichokuwa ndani ya sanduku; maandishi yanaweza kunakiliwa</translation>
    </message>
    <message>
        <source>Nothing was handed over in this camp yet, so there is nothing to audit.</source>
        <translation>Bado hakuna kilichokabidhiwa katika kambi hii, kwa hiyo hakuna cha kukagua.</translation>
    </message>
    <message>
        <source>Check the record</source>
        <translation>Hakiki rekodi</translation>
    </message>
    <message>
        <source>Every entry, every text and every count of the ledger against the chain, in the background (F6)</source>
        <translation>Kila ingizo, kila maandishi na kila hesabu ya daftari dhidi ya mnyororo, chinichini (F6)</translation>
    </message>
    <message>
        <source>Save the report for the site</source>
        <translation>Hifadhi ripoti ya kituo</translation>
    </message>
    <message>
        <source>Checking the record…</source>
        <translation>Inahakiki rekodi…</translation>
    </message>
    <message>
        <source>Checking the record, entry by entry …</source>
        <translation>Inahakiki rekodi, ingizo kwa ingizo …</translation>
    </message>
    <message>
        <source>The check was stopped before its end.</source>
        <translation>Uhakiki ulisimamishwa kabla ya mwisho.</translation>
    </message>
    <message>
        <source>Print the chart</source>
        <translation>Chapisha chati</translation>
    </message>
    <message>
        <source>Save the chart…</source>
        <translation>Hifadhi chati…</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditReports</name>
    <message>
        <source>For everybody at the site: text, page for a browser, PDF, table or JSON (Ctrl+S)</source>
        <translation>Kwa kila mtu kituoni: maandishi, ukurasa wa kivinjari, PDF, jedwali au JSON (Ctrl+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Chapisha</translation>
    </message>
    <message>
        <source>Prints the page for the site on the printer of the settings</source>
        <translation>Huchapisha ukurasa wa kituo kwa printa ya mipangilio</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Karatasi (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Maandishi (*.txt)</translation>
    </message>
    <message>
        <source>Data (*.json)</source>
        <translation>Data (*.json)</translation>
    </message>
    <message>
        <source>No printer is chosen; choose one in the settings (Ctrl+,), or save a PDF.</source>
        <translation>Hakuna printa iliyochaguliwa; chagua moja kwenye mipangilio (Ctrl+,), au hifadhi PDF.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Imeandikwa: %1</translation>
    </message>
    <message>
        <source>Drawing the pages…</source>
        <translation>Inachora kurasa…</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsModel</name>
    <message>
        <source>Part</source>
        <translation>Sehemu</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Namba</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Athari</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>Ya nini</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsView</name>
    <message>
        <source>Bars: why not</source>
        <translation>Pau: kwa nini siyo</translation>
    </message>
    <message>
        <source>Arrows scroll; the same numbers stand in the table</source>
        <translation>Mishale husogeza; namba zile zile ziko kwenye jedwali</translation>
    </message>
    <message>
        <source>The numbers of the bars</source>
        <translation>Namba za pau</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Namba zile zile za kwenye mchoro</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Namba zile zile ziko kwenye jedwali kando yake</translation>
    </message>
    <message>
        <source>Filled: whole · lines rising: adds · lines falling: takes away.</source>
        <translation>Iliyojazwa: jumla · mistari inayopanda: huongeza · mistari inayoshuka: hupunguza.</translation>
    </message>
    <message>
        <source>Dots: inside · filled, with a diamond: outside · dashed: the limit.</source>
        <translation>Nukta: ndani · iliyojazwa, yenye almasi: nje · mstari wa vipande: kikomo.</translation>
    </message>
</context>
<context>
    <name>quarterstep::BenchPanel</name>
    <message>
        <source>Lots read again at the bench</source>
        <translation>Mafungu yaliyosomwa tena kwenye meza ya vipimo</translation>
    </message>
    <message>
        <source>Pairs to read:</source>
        <translation>Idadi ya miwani ya kusomwa:</translation>
    </message>
    <message>
        <source>Pairs to read</source>
        <translation>Idadi ya miwani ya kusomwa</translation>
    </message>
    <message>
        <source>How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small</source>
        <translation>Miwani ngapi ichaguliwe; “chache zinazotosha” huweka hatari ya uamuzi mbaya kuwa ndogo</translation>
    </message>
    <message>
        <source>as few as will do</source>
        <translation>chache zinazotosha</translation>
    </message>
    <message>
        <source>Draw a lot…</source>
        <translation>Chagua fungu…</translation>
    </message>
    <message>
        <source>Draws hand-overs by lot, enters the draw and writes the sheet for the bench</source>
        <translation>Huchagua makabidhiano kwa kura, huingiza uchaguzi na huandika karatasi ya meza ya vipimo</translation>
    </message>
    <message>
        <source>Sheet for the bench</source>
        <translation>Karatasi ya meza ya vipimo</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Majedwali (*.csv)</translation>
    </message>
    <message>
        <source>Take in a sheet…</source>
        <translation>Pokea karatasi…</translation>
    </message>
    <message>
        <source>Reads a filled-in sheet, judges it and enters results and decision</source>
        <translation>Husoma karatasi iliyojazwa, huipima na huingiza matokeo na uamuzi</translation>
    </message>
    <message>
        <source>Sheet from the bench</source>
        <translation>Karatasi kutoka meza ya vipimo</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Tarehe ya kuchagua</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>Miwani</translation>
    </message>
    <message>
        <source>May fail</source>
        <translation>Zinazoruhusiwa kushindwa</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Uamuzi</translation>
    </message>
    <message>
        <source>Lots drawn in this camp</source>
        <translation>Mafungu yaliyochaguliwa katika kambi hii</translation>
    </message>
    <message>
        <source>To be seen again</source>
        <translation>Wa kuonwa tena</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Mtu</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Imetolewa</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Miwani</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Lini</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Hali</translation>
    </message>
    <message>
        <source>Persons to be seen again</source>
        <translation>Watu wa kuonwa tena</translation>
    </message>
    <message>
        <source>Report: no names and no initials; small counts are hidden on the page for the site.</source>
        <translation>Ripoti: bila majina wala herufi; hesabu ndogo hufichwa kwenye ukurasa wa kituo.</translation>
    </message>
    <message>
        <source>Page for the site…</source>
        <translation>Ukurasa wa kituo…</translation>
    </message>
    <message>
        <source>In detail…</source>
        <translation>Kwa undani…</translation>
    </message>
    <message>
        <source>Everything, for the supervisor</source>
        <translation>Kila kitu, kwa msimamizi</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Ripoti</translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation>Kurasa (*.html)</translation>
    </message>
    <message>
        <source>Nothing happened in this camp yet.</source>
        <translation>Bado hakuna kilichotokea katika kambi hii.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 kati ya %2</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>bado haijasomwa</translation>
    </message>
    <message>
        <source>wearers %1</source>
        <translation>wanaovaa %1</translation>
    </message>
    <message>
        <source>met %1, of them wearing %2</source>
        <translation>waliopatikana %1, wanaovaa kati yao %2</translation>
    </message>
    <message>
        <source>effective coverage of those who came %1 %</source>
        <translation>ufikiaji wenye ufanisi wa waliokuja %1 %</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>hivi karibuni</translation>
    </message>
    <message>
        <source>due</source>
        <translation>wakati umefika</translation>
    </message>
    <message>
        <source>late</source>
        <translation>imechelewa</translation>
    </message>
    <message>
        <source>Drawn: %1 of %2 hand-overs; the sheet is %3.</source>
        <translation>Yamechaguliwa: makabidhiano %1 kati ya %2; karatasi ni %3.</translation>
    </message>
    <message>
        <source>Writing the report…</source>
        <translation>Inaandika ripoti…</translation>
    </message>
    <message>
        <source>Its sheet…</source>
        <translation>Karatasi yake…</translation>
    </message>
    <message>
        <source>Writes the sheet of the chosen lot again: to be filled in, or for paper</source>
        <translation>Huandika tena karatasi ya fungu lililochaguliwa: ya kujazwa, au ya kuchapishwa</translation>
    </message>
    <message>
        <source>No lot was drawn yet; draw one first.</source>
        <translation>Bado hakuna fungu lililochaguliwa; chagua moja kwanza.</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Paper (*.pdf);;Text (*.txt)</source>
        <translation>Majedwali (*.csv);;Karatasi (*.pdf);;Maandishi (*.txt)</translation>
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
    <name>quarterstep::BringInPanel</name>
    <message>
        <source>Choose a file…</source>
        <translation>Chagua faili…</translation>
    </message>
    <message>
        <source>A table (CSV, TSV), lines of JSON, FHIR, or DICOM files of instruments</source>
        <translation>Jedwali (CSV, TSV), mistari ya JSON, FHIR, au faili za DICOM za vifaa</translation>
    </message>
    <message>
        <source>Take the clipboard</source>
        <translation>Tumia ubao wa kunakili</translation>
    </message>
    <message>
        <source>What was copied in a spreadsheet or another program</source>
        <translation>Kilichonakiliwa kwenye lahajedwali au programu nyingine</translation>
    </message>
    <message>
        <source>How the table is read</source>
        <translation>Jinsi jedwali linavyosomwa</translation>
    </message>
    <message>
        <source>Use a map…</source>
        <translation>Tumia ramani…</translation>
    </message>
    <message>
        <source>A file that says how such a table is read</source>
        <translation>Faili linalosema jinsi jedwali kama hilo linavyosomwa</translation>
    </message>
    <message>
        <source>Save this map…</source>
        <translation>Hifadhi ramani hii…</translation>
    </message>
    <message>
        <source>For the next table of this kind; `quarterstep import --map` takes it, too</source>
        <translation>Kwa jedwali lijalo la aina hii; `quarterstep import --map` huipokea pia</translation>
    </message>
    <message>
        <source>What is read: nothing is written yet</source>
        <translation>Kinachosomwa: bado hakuna kilichoandikwa</translation>
    </message>
    <message>
        <source>Only rows about which something was found</source>
        <translation>Safu zenye jambo lililobainika tu</translation>
    </message>
    <message>
        <source>Leaves out rows that were read without a finding</source>
        <translation>Huacha safu zilizosomwa bila jambo lolote</translation>
    </message>
    <message>
        <source>Rows as they are read</source>
        <translation>Safu kama zinavyosomwa</translation>
    </message>
    <message>
        <source>Choose a row: what was found about it stands below</source>
        <translation>Chagua safu: yaliyobainika kuihusu yako hapa chini</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Yaliyobainika</translation>
    </message>
    <message>
        <source>Kind, line and column in the file, what was found, and its code</source>
        <translation>Aina, mstari na safuwima katika faili, kilichobainika, na msimbo wake</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rudi</translation>
    </message>
    <message>
        <source>To the place before; nothing is brought in</source>
        <translation>Kwenye mahali pa awali; hakuna kinachoingizwa</translation>
    </message>
    <message>
        <source>They come to stand in the waiting list</source>
        <translation>Watakuwa kwenye orodha ya kusubiri</translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation>Waingize</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>jedwali</translation>
    </message>
    <message>
        <source>lines of JSON</source>
        <translation>mistari ya JSON</translation>
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
        <translation>Bado hakuna kilichochaguliwa.</translation>
    </message>
    <message>
        <source>Prescriptions to bring in</source>
        <translation>Maagizo ya kuingiza</translation>
    </message>
    <message>
        <source>Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;All files (*)</source>
        <translation>Maagizo (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;Faili zote (*)</translation>
    </message>
    <message>
        <source>No text is in the clipboard; copy the rows with their headings first.</source>
        <translation>Hakuna maandishi kwenye ubao wa kunakili; kwanza nakili safu pamoja na vichwa vyake.</translation>
    </message>
    <message>
        <source>The clipboard</source>
        <translation>Ubao wa kunakili</translation>
    </message>
    <message numerus="yes">
        <source>%n files</source>
        <translation>
            <numerusform>Faili %n</numerusform>
            <numerusform>Faili %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Use a map</source>
        <translation>Tumia ramani</translation>
    </message>
    <message>
        <source>Maps of tables (*.map);;All files (*)</source>
        <translation>Ramani za majedwali (*.map);;Faili zote (*)</translation>
    </message>
    <message>
        <source>Save this map</source>
        <translation>Hifadhi ramani hii</translation>
    </message>
    <message>
        <source>Maps of tables (*.map)</source>
        <translation>Ramani za majedwali (*.map)</translation>
    </message>
    <message>
        <source>The map is in %1.</source>
        <translation>Ramani iko katika %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Inasoma…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was brought in.</source>
        <translation>Imesimamishwa. Hakuna kilichoingizwa.</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>Inaingiza…</translation>
    </message>
    <message>
        <source>%1 brought in, %2 left out. They stand in the list and in %3.</source>
        <translation>%1 yameingizwa, %2 yameachwa. Yako kwenye orodha na katika %3.</translation>
    </message>
    <message>
        <source>It is being read…</source>
        <translation>Inasomwa…</translation>
    </message>
    <message>
        <source>Choose a file, or copy rows and take the clipboard.</source>
        <translation>Chagua faili, au nakili safu na utumie ubao wa kunakili.</translation>
    </message>
    <message>
        <source>Read as %1: %2 to be brought in, %3 left out</source>
        <translation>Imesomwa kama %1: %2 za kuingizwa, %3 zimeachwa</translation>
    </message>
    <message>
        <source>Bring in %1, leave out %2</source>
        <translation>Ingiza %1, acha %2</translation>
    </message>
    <message>
        <source>Found about row %1 (%2)</source>
        <translation>Yaliyobainika kuhusu safu %1 (%2)</translation>
    </message>
    <message>
        <source>Found about the file as a whole</source>
        <translation>Yaliyobainika kuhusu faili zima</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>Imesomwa kama %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::BroughtRowsModel</name>
    <message>
        <source>left out</source>
        <translation>imeachwa</translation>
    </message>
    <message>
        <source>taken, with a caution</source>
        <translation>imepokelewa, kwa tahadhari</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>imepokelewa</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Safu</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Mtu</translation>
    </message>
    <message>
        <source>Brought in?</source>
        <translation>Imeingizwa?</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Imesomwa kama</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Kilichobainika</translation>
    </message>
</context>
<context>
    <name>quarterstep::CampNotes</name>
    <message>
        <source>It lies here for good</source>
        <translation>Iko hapa moja kwa moja</translation>
    </message>
    <message>
        <source>It is a second station</source>
        <translation>Ni kituo cha pili</translation>
    </message>
    <message>
        <source>Know first</source>
        <translation>Jua kwanza</translation>
    </message>
    <message>
        <source>From now on this folder is written to; the copy it came from is used no more</source>
        <translation>Kuanzia sasa folda hii huandikwa; nakala ilikotoka haitumiki tena</translation>
    </message>
    <message>
        <source>Both folders are used; what is handed over here is brought together with the other later</source>
        <translation>Folda zote mbili hutumika; kinachotolewa hapa huunganishwa na nyingine baadaye</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weka kando</translation>
    </message>
    <message>
        <source>These notes do not come back while this camp is open</source>
        <translation>Maelezo haya hayarudi kambi hii ikiwa wazi</translation>
    </message>
    <message numerus="yes">
        <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger&apos;s counts are used until the edits are accepted or discarded in Stock.</source>
        <translation>
            <numerusform>Hesabu za stock.yaml zilihaririwa kwa mkono katika mstari %n. Hesabu za daftari zinatumika hadi mabadiliko yakubaliwe au yaachwe katika Akiba.</numerusform>
            <numerusform>Hesabu za stock.yaml zilihaririwa kwa mkono katika mistari %n. Hesabu za daftari zinatumika hadi mabadiliko yakubaliwe au yaachwe katika Akiba.</numerusform>
        </translation>
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
        <translation>ndani ya vikomo</translation>
    </message>
    <message>
        <source>beyond the inner limit</source>
        <translation>zaidi ya kikomo cha ndani</translation>
    </message>
    <message>
        <source>beyond the outer limit</source>
        <translation>zaidi ya kikomo cha nje</translation>
    </message>
    <message>
        <source>Group or run</source>
        <translation>Kundi au mfululizo</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Namba</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Vikomo</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartView</name>
    <message>
        <source>Chart of the audit</source>
        <translation>Chati ya ukaguzi</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Namba zile zile ziko kwenye jedwali kando yake</translation>
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
        <translation>kulia, hitaji</translation>
    </message>
    <message>
        <source>left, need</source>
        <translation>kushoto, hitaji</translation>
    </message>
    <message>
        <source>right, pair</source>
        <translation>kulia, miwani</translation>
    </message>
    <message>
        <source>left, pair</source>
        <translation>kushoto, miwani</translation>
    </message>
    <message>
        <source>right, left over</source>
        <translation>kulia, kinachobaki</translation>
    </message>
    <message>
        <source>left, left over</source>
        <translation>kushoto, kinachobaki</translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <translation>%1 kwenye %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Nini</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Nguvu (D)</translation>
    </message>
    <message>
        <source>Higher (D)</source>
        <translation>Kubwa (D)</translation>
    </message>
    <message>
        <source>Lower (D)</source>
        <translation>Ndogo (D)</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossView</name>
    <message>
        <source>Optical crosses</source>
        <translation>Misalaba ya nguvu</translation>
    </message>
    <message>
        <source>A picture of need, pair and what is left; the same values stand in the table</source>
        <translation>Mchoro wa hitaji, miwani na kinachobaki; thamani zile zile ziko kwenye jedwali</translation>
    </message>
    <message>
        <source>Powers in dioptres on the meridians they act in, as the examiner sees the eyes</source>
        <translation>Nguvu kwa dioptri kwenye meridiani zinapofanya kazi, kama mpimaji anavyoona macho</translation>
    </message>
    <message>
        <source>need</source>
        <translation>hitaji</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>miwani</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>kinachobaki</translation>
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
        <translation>Hufuta kadi</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Mtu mpya</translation>
    </message>
    <message>
        <source>Puts the people of a prescription table into the waiting list</source>
        <translation>Huweka watu wa jedwali la maagizo kwenye orodha ya kusubiri</translation>
    </message>
    <message>
        <source>Load people…</source>
        <translation>Pakia watu…</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation>Hufungua kambi nyingine, mfano, au huanzisha kambi</translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>Kambi…</translation>
    </message>
    <message>
        <source>Look, language, printer, camp, PINs</source>
        <translation>Sura, lugha, printa, kambi, PIN</translation>
    </message>
    <message>
        <source>The manual, at the page for where you are</source>
        <translation>Mwongozo, kwenye ukurasa wa hapo ulipo</translation>
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
        <translation>Nuru, giza, au jua: nyeusi juu ya nyeupe na kubwa, kwa nje</translation>
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
        <translation>Anayehudumiwa, na anachopewa</translation>
    </message>
    <message>
        <source>What lies in the box, and what happened to it</source>
        <translation>Kilicho ndani ya sanduku, na kilichokipata</translation>
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
        <translation>Quarterstep</translation>
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
        <translation>%1: Quarterstep</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Ukaguzi</translation>
    </message>
    <message>
        <source>Which pairs went wrong, and what slip did it</source>
        <translation>Miwani ipi ilikosewa, na kwa kosa gani</translation>
    </message>
    <message>
        <source>Brings prescriptions in from files, instruments or the clipboard, and sends them out</source>
        <translation>Huingiza maagizo kutoka faili, vifaa au ubao wa kunakili, na huyatuma nje</translation>
    </message>
    <message>
        <source>Bring in…</source>
        <translation>Ingiza…</translation>
    </message>
    <message>
        <source>Bringing in and sending out</source>
        <translation>Kuingiza na kutuma nje</translation>
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
        <translation>Chagua mtu: kadi hujazwa na miwani hupendekezwa</translation>
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
        <translation>Hutafuta akiba kwa agizo hili (Enter katika sehemu yoyote)</translation>
    </message>
    <message>
        <source>Pairs to pull</source>
        <translation>Miwani ya kutoa</translation>
    </message>
    <message>
        <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
        <translation>Bora kwanza: nguvu kwa dioptri, mahali pa kuichukua, inachobakiza kwa kila jicho, prizimu</translation>
    </message>
    <message>
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>Folda hii haina people.csv. Andika agizo hapa chini, au pakia jedwali.</translation>
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
        <translation>Imerudishwa kutoka kwa %1: %2.</translation>
    </message>
    <message>
        <source>Who is served: people of the table, or custom orders</source>
        <translation>Anayehudumiwa: watu wa jedwali, au oda maalum</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Watu</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Mstari</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Oda</translation>
    </message>
    <message>
        <source>The whole prescription, or the short way for plain readers</source>
        <translation>Agizo lote, au njia fupi ya miwani ya kusomea tu</translation>
    </message>
    <message>
        <source>Plain reader</source>
        <translation>Miwani ya kusomea tu</translation>
    </message>
    <message>
        <source>%1 stands in the line.</source>
        <translation>%1 yuko kwenye foleni.</translation>
    </message>
    <message>
        <source>%1 is entered as referred.</source>
        <translation>%1 ameingizwa kuwa amepewa rufaa.</translation>
    </message>
    <message>
        <source>A custom order for %1 is entered; it stands under Orders.</source>
        <translation>Oda maalum ya %1 imeingizwa; iko chini ya Oda.</translation>
    </message>
    <message>
        <source>This stands in the ledger already: %1, %2.</source>
        <translation>Hii iko kwenye daftari tayari: %1, %2.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>The laboratory file of %1 is %2.</source>
        <translation>Faili la maabara la %1 ni %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::ExchangePage</name>
    <message>
        <source>What comes in, or what goes out</source>
        <translation>Kinachoingia, au kinachotoka</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Ingiza</translation>
    </message>
    <message>
        <source>Send out</source>
        <translation>Tuma nje</translation>
    </message>
    <message>
        <source>Reading what was brought in before…</source>
        <translation>Inasoma yaliyoingizwa awali…</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingListModel</name>
    <message>
        <source>note</source>
        <translation>maelezo</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>tahadhari</translation>
    </message>
    <message>
        <source>error</source>
        <translation>kosa</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Aina</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wapi</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Jambo</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Msimbo</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingsModel</name>
    <message>
        <source>a slip is likely</source>
        <translation>huenda kuna kosa</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Lini</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Mtu</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Matumizi</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Miwani iliyotolewa</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Nini</translation>
    </message>
    <message>
        <source>In detail</source>
        <translation>Kwa undani</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Kosa linalowezekana zaidi</translation>
    </message>
</context>
<context>
    <name>quarterstep::FocimeterRow</name>
    <message>
        <source>Read, R</source>
        <translation>Iliyosomwa, K</translation>
    </message>
    <message>
        <source>L</source>
        <translation>Ks</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it</source>
        <translation>Lenzi ya kulia kama fosimita inavyoisoma</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it</source>
        <translation>Lenzi ya kushoto kama fosimita inavyoisoma</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Lenzi ya kulia kama fosimita inavyoisoma, dioptri: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Lenzi ya kushoto kama fosimita inavyoisoma, dioptri: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>right lens: %1</source>
        <translation>lenzi ya kulia: %1</translation>
    </message>
    <message>
        <source>left lens: %1</source>
        <translation>lenzi ya kushoto: %1</translation>
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
        <translation>Humpa mtu huyu miwani iliyochaguliwa na kupunguza hesabu (Ctrl+Return)</translation>
    </message>
    <message>
        <source>The power of this very pair was read</source>
        <translation>Nguvu ya miwani hii hii imesomwa</translation>
    </message>
    <message>
        <source>Fit on the face</source>
        <translation>Inakaa vizuri usoni</translation>
    </message>
    <message>
        <source>Sits well at nose and ears, pupils behind the centres</source>
        <translation>Inakaa vizuri puani na masikioni, mboni nyuma ya vitovu</translation>
    </message>
    <message>
        <source>Acuity with the pair</source>
        <translation>Uwezo wa kuona na miwani</translation>
    </message>
    <message>
        <source>Each eye read the chart with this pair on</source>
        <translation>Kila jicho limesoma chati na miwani hii usoni</translation>
    </message>
    <message>
        <source>Instructions given</source>
        <translation>Maelezo yametolewa</translation>
    </message>
    <message>
        <source>What it is for, how to care for it, when to come back</source>
        <translation>Ni ya nini, jinsi ya kuitunza, arudi lini</translation>
    </message>
    <message>
        <source>With pair, R</source>
        <translation>Na miwani, K</translation>
    </message>
    <message>
        <source>Right eye: acuity with this pair on, for example 6/9</source>
        <translation>Jicho la kulia: uwezo wa kuona na miwani hii, kwa mfano 6/9</translation>
    </message>
    <message>
        <source>L</source>
        <translation>Ks</translation>
    </message>
    <message>
        <source>Left eye: acuity with this pair on, for example 6/9</source>
        <translation>Jicho la kushoto: uwezo wa kuona na miwani hii, kwa mfano 6/9</translation>
    </message>
    <message>
        <source>near</source>
        <translation>karibu</translation>
    </message>
    <message>
        <source>Smallest print read with this pair on, for example N8</source>
        <translation>Maandishi madogo zaidi yaliyosomwa na miwani hii, kwa mfano N8</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Sababu</translation>
    </message>
    <message>
        <source>Why this pair is given all the same; kept with the entry</source>
        <translation>Kwa nini miwani hii inatolewa hata hivyo; huhifadhiwa na ingizo</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Herufi zako</translation>
    </message>
    <message>
        <source>Who hands over; kept with the entry, may stay empty</source>
        <translation>Anayekabidhi; huhifadhiwa na ingizo, inaweza kuachwa wazi</translation>
    </message>
    <message>
        <source>Hand over, print</source>
        <translation>Kabidhi, chapisha</translation>
    </message>
    <message>
        <source>Hands over and prints the note (Ctrl+Shift+Return)</source>
        <translation>Hukabidhi na kuchapisha karatasi (Ctrl+Shift+Return)</translation>
    </message>
    <message>
        <source>Takes back what was entered last for this person today (Ctrl+Z)</source>
        <translation>Hurudisha kilichoingizwa mwisho kwa mtu huyu leo (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Karatasi</translation>
    </message>
    <message>
        <source>Prints what this person takes home (Ctrl+P)</source>
        <translation>Huchapisha karatasi ambayo mtu huyu huipeleka nyumbani (Ctrl+P)</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Barua</translation>
    </message>
    <message>
        <source>Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)</source>
        <translation>Huingiza rufaa na kuchapisha barua kwa kliniki (Ctrl+Shift+L)</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Oda</translation>
    </message>
    <message>
        <source>Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)</source>
        <translation>Huingiza oda maalum na kuichapisha kwa maabara (Ctrl+Shift+O)</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Bila miwani</translation>
    </message>
    <message>
        <source>Enters that this person goes without a pair, and why (Ctrl+Shift+W)</source>
        <translation>Huingiza kwamba mtu huyu anaondoka bila miwani, na kwa nini (Ctrl+Shift+W)</translation>
    </message>
    <message>
        <source>Power by focimeter</source>
        <translation>Nguvu kwa fosimita</translation>
    </message>
    <message>
        <source>Each eye by focimeter</source>
        <translation>Kila jicho kwa fosimita</translation>
    </message>
    <message>
        <source>To what is still missing</source>
        <translation>Kwenye kinachokosekana bado</translation>
    </message>
    <message>
        <source>Puts the cursor where something is missing for a hand-over</source>
        <translation>Huweka kishale mahali panapokosekana kitu cha kukabidhi</translation>
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
        <translation>Huchagua ukurasa wa mwongozo</translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>Maandishi ya ukurasa</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation>Mwongozo; viungo huelekeza kurasa nyingine</translation>
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
        <translation>Vitufe vyote vya dirisha; Escape hulifunga</translation>
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
        <translation>Mchoro wa idadi ya vipande vya kila nguvu; namba zile zile ziko kwenye jedwali la mistari</translation>
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
        <translation>%1: zinazopatikana %2, zilizowekwa kando %3, weka angalau %4</translation>
    </message>
</context>
<context>
    <name>quarterstep::LineModel</name>
    <message>
        <source>none: waits</source>
        <translation>hakuna: anasubiri</translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation>hayuko kwenye foleni</translation>
    </message>
    <message>
        <source>none left: look before saying it again</source>
        <translation>hakuna iliyobaki: angalia kabla ya kusema tena</translation>
    </message>
    <message>
        <source>with caution</source>
        <translation>kwa tahadhari</translation>
    </message>
    <message>
        <source>by hand: %1</source>
        <translation>kwa mkono: %1</translation>
    </message>
    <message>
        <source>promised; %1</source>
        <translation>imeahidiwa; %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Mtu</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Kwa</translation>
    </message>
    <message>
        <source>Gets</source>
        <translation>Anapata</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Kwa nini</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinePanel</name>
    <message>
        <source>Waiting line</source>
        <translation>Foleni ya kusubiri</translation>
    </message>
    <message>
        <source>Who gets which pair and why. Drop a pair on a person to pick it by hand</source>
        <translation>Nani anapata miwani ipi na kwa nini. Dondosha miwani juu ya mtu ili kuichagua kwa mkono</translation>
    </message>
    <message>
        <source>Reason for a pair picked by hand</source>
        <translation>Sababu ya miwani iliyochaguliwa kwa mkono</translation>
    </message>
    <message>
        <source>Reason, for a pair by hand</source>
        <translation>Sababu, kwa miwani ya mkono</translation>
    </message>
    <message>
        <source>Why this person gets another pair than planned; kept with the promise</source>
        <translation>Kwa nini mtu huyu anapata miwani tofauti na iliyopangwa; huhifadhiwa na ahadi</translation>
    </message>
    <message>
        <source>All arrive</source>
        <translation>Wote wamefika</translation>
    </message>
    <message>
        <source>Everybody of the table who has nothing yet</source>
        <translation>Kila mtu wa jedwali ambaye bado hana kitu</translation>
    </message>
    <message>
        <source>Card arrives</source>
        <translation>Wa kadi amefika</translation>
    </message>
    <message>
        <source>The person on the card (Ctrl+J)</source>
        <translation>Mtu aliye kwenye kadi (Ctrl+J)</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Panga tena</translation>
    </message>
    <message>
        <source>Plans anew, or stops planning</source>
        <translation>Hupanga upya, au huacha kupanga</translation>
    </message>
    <message>
        <source>Promise</source>
        <translation>Ahidi</translation>
    </message>
    <message>
        <source>The person was told: no plan takes it back</source>
        <translation>Mtu ameambiwa: hakuna mpango unaoirudisha</translation>
    </message>
    <message>
        <source>Give chosen pair</source>
        <translation>Toa iliyochaguliwa</translation>
    </message>
    <message>
        <source>The pair chosen in the list, by hand and with a reason (Ctrl+G)</source>
        <translation>Miwani iliyochaguliwa kwenye orodha, kwa mkono na kwa sababu (Ctrl+G)</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Ameondoka</translation>
    </message>
    <message>
        <source>The person left the line</source>
        <translation>Mtu ameondoka kwenye foleni</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Simamisha</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Inapanga …</translation>
    </message>
    <message>
        <source>Nobody waits yet. Let the people of the table stand in line, or the one on the card.</source>
        <translation>Bado hakuna anayesubiri. Weka watu wa jedwali kwenye foleni, au aliye kwenye kadi.</translation>
    </message>
    <message>
        <source>%1 of %2 get a pair; first come, first served would be %3. %4</source>
        <translation>%1 kati ya %2 wanapata miwani; kwa anayewahi kuhudumiwa kwanza ingekuwa %3. %4</translation>
    </message>
    <message>
        <source>No plan serves more.</source>
        <translation>Hakuna mpango unaohudumia wengi zaidi.</translation>
    </message>
    <message>
        <source>Good, not proved best.</source>
        <translation>Ni mzuri, haujathibitishwa kuwa bora.</translation>
    </message>
    <message>
        <source>Unpromise</source>
        <translation>Ondoa ahadi</translation>
    </message>
    <message>
        <source>Why this pair for %1? Type the reason and press Enter.</source>
        <translation>Kwa nini miwani hii kwa %1? Andika sababu na ubonyeze Enter.</translation>
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
        <translation>weka angalau %1, isiyozidi %2</translation>
    </message>
    <message numerus="yes">
        <source>reorder %n</source>
        <translation>
            <numerusform>agiza %n</numerusform>
            <numerusform>agiza %n</numerusform>
        </translation>
    </message>
    <message>
        <source>lasts %1 camp days as used so far</source>
        <translation>inatosha siku %1 za kambi kwa matumizi ya hadi sasa</translation>
    </message>
    <message>
        <source>How many camps of 100 people the available pieces last, as used so far</source>
        <translation>Vipande vinavyopatikana vinatosha kambi ngapi za watu 100, kwa matumizi ya hadi sasa</translation>
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
        <translation>Imefikia wapi</translation>
    </message>
    <message>
        <source>Ends this work; nothing is changed by it</source>
        <translation>Husimamisha kazi hii; hakuna kinachobadilika</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Inasimama…</translation>
    </message>
    <message>
        <source>After this: %1</source>
        <translation>Baada ya hii: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::MappedColumnsModel</name>
    <message>
        <source>What this column holds; Enter or a click changes it</source>
        <translation>Kilicho kwenye safuwima hii; Enter au kubofya hukibadilisha</translation>
    </message>
    <message>
        <source>Heading</source>
        <translation>Kichwa</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Mfano</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>Huchukuliwa kama</translation>
    </message>
</context>
<context>
    <name>quarterstep::MeaningDelegate</name>
    <message>
        <source>What the column holds</source>
        <translation>Kilicho kwenye safuwima</translation>
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
        <translation>Hunakili msimbo wa ujumbe huu, ili kuutafuta kwenye msaada</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Funga</translation>
    </message>
    <message>
        <source>Puts this message away</source>
        <translation>Huondoa ujumbe huu</translation>
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
        <translation>Hufungua mfano na kueleza kila hatua kando ya kazi</translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>Fungua kambi ya mfano</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation>Hufungua nakala yako ya mfano kama ulivyoiacha</translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>Anza mfano upya</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation>Hutupa yaliyofanywa kwenye nakala yako ya mfano</translation>
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
        <translation>Ukurasa wa kuandika trei na kuona mistari inayotokana</translation>
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
        <translation>Huchagua folda yenye stock.yaml</translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>Rudi kwenye kambi iliyofunguliwa</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation>Huacha kila kitu kama kilivyo</translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>Kilichopatikana, na faili, mstari na safu</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation>Faili, mstari na safu ya kila kilichopatikana; inaweza kunakiliwa</translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>Anzisha kambi katika folda hii…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation>Eleza trei; faili ya akiba huandikwa kwenye folda hii</translation>
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
        <translation>
            <numerusform>imetengenezwa upya mara %n</numerusform>
            <numerusform>imetengenezwa upya mara %n</numerusform>
        </translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>imeagizwa %1</translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation>fremu imeshikiliwa: %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Mtu</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Hali</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Tangu</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Iliyoagizwa</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersPanel</name>
    <message>
        <source>Find an order by the code of the person</source>
        <translation>Tafuta oda kwa msimbo wa mtu</translation>
    </message>
    <message>
        <source>Part of a camp code; empty shows the open orders</source>
        <translation>Sehemu ya msimbo wa kambi; ikiachwa wazi huonyesha oda zilizo wazi</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Msimbo</translation>
    </message>
    <message>
        <source>Custom orders</source>
        <translation>Oda maalum</translation>
    </message>
    <message>
        <source>Custom orders, newest change first</source>
        <translation>Oda maalum, badiliko jipya kwanza</translation>
    </message>
    <message>
        <source>Reason or note for this step</source>
        <translation>Sababu au maelezo ya hatua hii</translation>
    </message>
    <message>
        <source>Kept with the step; making again needs a reason</source>
        <translation>Huhifadhiwa na hatua; kutengeneza upya kunahitaji sababu</translation>
    </message>
    <message>
        <source>Reason or note</source>
        <translation>Sababu au maelezo</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Imefika</translation>
    </message>
    <message>
        <source>It came from the laboratory</source>
        <translation>Imetoka maabara</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Imekaguliwa</translation>
    </message>
    <message>
        <source>Power, axis and centres were read and agree with the order</source>
        <translation>Nguvu, mhimili na vitovu vimesomwa na vinalingana na oda</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Imechukuliwa</translation>
    </message>
    <message>
        <source>The person has it and was checked with it on</source>
        <translation>Mtu anayo na imekaguliwa akiwa ameivaa</translation>
    </message>
    <message>
        <source>Make again</source>
        <translation>Tengeneza upya</translation>
    </message>
    <message>
        <source>Back to the laboratory; a reason is needed</source>
        <translation>Irudi maabara; sababu inahitajika</translation>
    </message>
    <message>
        <source>Not collected</source>
        <translation>Haikuchukuliwa</translation>
    </message>
    <message>
        <source>The person did not come for it</source>
        <translation>Mtu hakuja kuichukua</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Laboratory file</source>
        <translation>Faili la maabara</translation>
    </message>
    <message>
        <source>Writes the order as a file for the laboratory into the folder papers</source>
        <translation>Huandika oda kama faili la maabara kwenye folda papers</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingDraws</name>
    <message>
        <source>Assumptions, published mix, number of draws and lot (Ctrl+D)</source>
        <translation>Yanayochukuliwa, mchanganyiko uliochapishwa, idadi ya kura na kundi (Ctrl+D)</translation>
    </message>
    <message>
        <source>How the draws are made</source>
        <translation>Jinsi kura zinavyopigwa</translation>
    </message>
    <message>
        <source>PD as the pair&apos;s centres</source>
        <translation>PD kama vituo vya jozi</translation>
    </message>
    <message>
        <source>Where no PD was taken, it equals the centres of each pair</source>
        <translation>Pale PD haikupimwa, ni sawa na vituo vya kila jozi</translation>
    </message>
    <message>
        <source>readings are final</source>
        <translation>vipimo ni vya mwisho</translation>
    </message>
    <message>
        <source>Objective readings are final, and a prescriber is named</source>
        <translation>Vipimo vya mashine ni vya mwisho, na aliyeandika ametajwa</translation>
    </message>
    <message>
        <source>vertex as the stock</source>
        <translation>vertex kama akiba</translation>
    </message>
    <message>
        <source>An unrecorded vertex distance is that of the stock</source>
        <translation>Umbali wa vertex usioandikwa ni ule wa akiba</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Imechukuliwa</translation>
    </message>
    <message>
        <source>Published mix</source>
        <translation>Mchanganyiko uliochapishwa</translation>
    </message>
    <message>
        <source>Mixes with the published mix of a camp, weighing as so many people; 0: not at all. By itself 30 where fewer than 100 people were seen</source>
        <translation>Huchanganya na mchanganyiko uliochapishwa wa kambi, wenye uzito wa watu wengi hivi; 0: hapana kabisa. Wenyewe ni 30 pale watu chini ya 100 walipoonwa</translation>
    </message>
    <message>
        <source>by who was seen</source>
        <translation>kulingana na walioonwa</translation>
    </message>
    <message>
        <source> people</source>
        <translation> watu</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Kura</translation>
    </message>
    <message>
        <source>Camps that are drawn and planned for, and as many again to check</source>
        <translation>Kambi zinazochaguliwa na kupangiwa, na nyingine idadi hiyo za kukagua</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Kundi</translation>
    </message>
    <message>
        <source>The same lot draws the same people again</source>
        <translation>Kundi lile lile huchagua tena watu wale wale</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>imekunjwa</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>imefunguliwa</translation>
    </message>
    <message>
        <source>draws: %1</source>
        <translation>kura: %1</translation>
    </message>
    <message>
        <source>lot: %1</source>
        <translation>kundi: %1</translation>
    </message>
    <message>
        <source>published mix: %1</source>
        <translation>mchanganyiko uliochapishwa: %1</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>imechukuliwa: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingPanel</name>
    <message>
        <source>Boxes for the next camp</source>
        <translation>Masanduku ya kambi ijayo</translation>
    </message>
    <message>
        <source>Plan the boxes</source>
        <translation>Panga masanduku</translation>
    </message>
    <message>
        <source>Plans what to buy; nothing is entered (F5)</source>
        <translation>Hupanga cha kununua; hakuna kinachoingizwa (F5)</translation>
    </message>
    <message>
        <source>Persons served against money</source>
        <translation>Watu waliohudumiwa dhidi ya fedha</translation>
    </message>
    <message>
        <source>Line: served on the draws planned for · triangle: the knee · diamond: this plan · dotted: no order passes it · upright: the budget.</source>
        <translation>Mstari: waliohudumiwa kwa sampuli zilizopangiwa · pembetatu: mpindo · almasi: mpango huu · nukta: hakuna oda inayoipita · wima: bajeti.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Chagua…</translation>
    </message>
    <message>
        <source>The list of what a supplier sells (supplier.yaml)</source>
        <translation>Orodha ya anachouza msambazaji (supplier.yaml)</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Msambazaji</translation>
    </message>
    <message>
        <source>Whom to plan for</source>
        <translation>Kumpangia nani</translation>
    </message>
    <message>
        <source>People as they were seen: of the ledger, or of a table of prescriptions</source>
        <translation>Watu kama walivyoonwa: wa daftari, au wa jedwali la maagizo</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>Mahitaji</translation>
    </message>
    <message>
        <source>People who come next</source>
        <translation>Watu watakaofuata</translation>
    </message>
    <message>
        <source>How many people come to the next camp</source>
        <translation>Watu wangapi watakuja kwenye kambi ijayo</translation>
    </message>
    <message>
        <source> people</source>
        <translation> watu</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Bajeti</translation>
    </message>
    <message>
        <source>Money that may be spent, in the currency of the supplier&apos;s list</source>
        <translation>Fedha zinazoweza kutumika, kwa sarafu ya orodha ya msambazaji</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Uzito</translation>
    </message>
    <message>
        <source>Kilograms of what is bought; 0: not limited</source>
        <translation>Kilo za kinachonunuliwa; 0: bila kikomo</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source>any weight</source>
        <translation>uzito wowote</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Masanduku</translation>
    </message>
    <message>
        <source>Boxes that are carried, what is on hand included; 0: as many as it takes</source>
        <translation>Masanduku yanayobebwa, pamoja na zilizopo; 0: mengi kadiri inavyohitajika</translation>
    </message>
    <message>
        <source>any number</source>
        <translation>idadi yoyote</translation>
    </message>
    <message>
        <source>Pieces in a box</source>
        <translation>Vipande kwa sanduku</translation>
    </message>
    <message>
        <source>How many pieces a box holds</source>
        <translation>Sanduku linabeba vipande vingapi</translation>
    </message>
    <message>
        <source> in each</source>
        <translation> kwa kila moja</translation>
    </message>
    <message>
        <source>What the plan comes to</source>
        <translation>Matokeo ya mpango</translation>
    </message>
    <message>
        <source>Served, spent, and how sure that is; the text can be copied</source>
        <translation>Waliohudumiwa, zilizotumika, na uhakika wake; maandishi yanaweza kunakiliwa</translation>
    </message>
    <message>
        <source>What is shown of the plan</source>
        <translation>Kinachoonyeshwa cha mpango</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Oda</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Orodha ya kufungasha</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Imekaguliwa</translation>
    </message>
    <message>
        <source>Without a pair</source>
        <translation>Bila miwani</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>Zitakazoisha</translation>
    </message>
    <message>
        <source>Not bought</source>
        <translation>Hazikununuliwa</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Mkunjo</translation>
    </message>
    <message>
        <source>The plan for the boxes</source>
        <translation>Mpango wa masanduku</translation>
    </message>
    <message>
        <source>The plan, row by row</source>
        <translation>Mpango, safu kwa safu</translation>
    </message>
    <message>
        <source>Print packing list</source>
        <translation>Chapisha orodha ya kufungasha</translation>
    </message>
    <message>
        <source>The packing list as a paper (Ctrl+P)</source>
        <translation>Orodha ya kufungasha kwenye karatasi (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save packing list…</source>
        <translation>Hifadhi orodha ya kufungasha…</translation>
    </message>
    <message>
        <source>Box by box, as a table (Ctrl+S)</source>
        <translation>Sanduku kwa sanduku, kama jedwali (Ctrl+S)</translation>
    </message>
    <message>
        <source>Save order…</source>
        <translation>Hifadhi oda…</translation>
    </message>
    <message>
        <source>What to order, as a table (Ctrl+Shift+S)</source>
        <translation>Cha kuagiza, kama jedwali (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Majedwali (*.csv)</translation>
    </message>
    <message>
        <source>The order is %1.</source>
        <translation>Oda ni %1.</translation>
    </message>
    <message>
        <source>The packing list is %1.</source>
        <translation>Orodha ya kufungasha ni %1.</translation>
    </message>
    <message>
        <source>The ledger of this camp</source>
        <translation>Daftari la kambi hii</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>Jedwali lingine…</translation>
    </message>
    <message>
        <source>List of a supplier</source>
        <translation>Orodha ya msambazaji</translation>
    </message>
    <message>
        <source>Suppliers&apos; lists (*.yaml)</source>
        <translation>Orodha za wasambazaji (*.yaml)</translation>
    </message>
    <message>
        <source>Table of people</source>
        <translation>Jedwali la watu</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Majedwali ya maagizo (*.csv)</translation>
    </message>
    <message>
        <source>Choose what can be bought: the list of a supplier.</source>
        <translation>Chagua kinachoweza kununuliwa: orodha ya msambazaji.</translation>
    </message>
    <message>
        <source>Planning the boxes…</source>
        <translation>Inapanga masanduku…</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>hakuna iliyochaguliwa</translation>
    </message>
    <message>
        <source>Planning … “Stop” at the top ends it.</source>
        <translation>Inapanga … “Simamisha” hapo juu huikomesha.</translation>
    </message>
    <message>
        <source>Nothing is planned yet.</source>
        <translation>Bado hakuna kilichopangwa.</translation>
    </message>
    <message>
        <source>The plan beside is of other figures; plan again (F5).</source>
        <translation>Mpango ulio kando ni wa namba nyingine; panga tena (F5).</translation>
    </message>
    <message>
        <source>For this money the curve says %1; plan again for the order (F5).</source>
        <translation>Kwa fedha hizi mkunjo unasema %1; panga tena upate oda (F5).</translation>
    </message>
    <message>
        <source>On people who were not planned for: %1</source>
        <translation>Kwa watu ambao hawakupangiwa: %1</translation>
    </message>
    <message>
        <source>Not checked: too few people to plan on one half and check on the other.</source>
        <translation>Haikuhakikiwa: watu ni wachache mno kupanga kwa nusu na kuhakiki kwa nusu nyingine.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of the table could not be read and were left out.</source>
        <translation>
            <numerusform>Safu %n ya jedwali haikuweza kusomwa na imeachwa.</numerusform>
            <numerusform>Safu %n za jedwali hazikuweza kusomwa na zimeachwa.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to buy for the next camp so that most people are served: choose supplier, demand and money, then plan (F5). Nothing is entered.</source>
        <translation>Cha kununua kwa kambi ijayo ili watu wengi zaidi wahudumiwe: chagua msambazaji, mahitaji na fedha, kisha panga (F5). Hakuna kinachoingizwa.</translation>
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
        <translation>Toa</translation>
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
        <translation>K na Ks %1 · prizimu %2</translation>
    </message>
    <message>
        <source>R %1 · L %2 · prism %3</source>
        <translation>K %1 · Ks %2 · prizimu %3</translation>
    </message>
    <message>
        <source> · chance %1</source>
        <translation> · uwezekano %1</translation>
    </message>
    <message>
        <source>Chance within</source>
        <translation>Uwezekano wa kuwa ndani</translation>
    </message>
</context>
<context>
    <name>quarterstep::PaperWorker</name>
    <message>
        <source>%1: sent to %2.</source>
        <translation>%1: imetumwa kwa %2.</translation>
    </message>
    <message>
        <source>%1: written to %2.</source>
        <translation>%1: imeandikwa kwa %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PinGuard</name>
    <message>
        <source>This needs the PIN of the optician.</source>
        <translation>Hii inahitaji PIN ya mtaalamu wa miwani.</translation>
    </message>
    <message>
        <source>This needs the PIN of the keeper.</source>
        <translation>Hii inahitaji PIN ya mtunza sanduku.</translation>
    </message>
    <message>
        <source>This needs the PIN of the supervisor.</source>
        <translation>Hii inahitaji PIN ya msimamizi.</translation>
    </message>
    <message>
        <source>A PIN is asked for</source>
        <translation>PIN inaulizwa</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>It is good until this place is left, or ten minutes after the last use</source>
        <translation>Inafaa hadi mahali hapa paachwe, au dakika kumi baada ya matumizi ya mwisho</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Endelea</translation>
    </message>
    <message>
        <source>Does what was asked for (Enter)</source>
        <translation>Hufanya kilichoombwa (Enter)</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>Usifanye</translation>
    </message>
    <message>
        <source>Nothing is written (Escape)</source>
        <translation>Hakuna kinachoandikwa (Escape)</translation>
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
        <translation>miwani iliyochaguliwa, jicho la kulia</translation>
    </message>
    <message>
        <source>chosen pair, left eye</source>
        <translation>miwani iliyochaguliwa, jicho la kushoto</translation>
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
        <translation>Wastani (D)</translation>
    </message>
    <message>
        <source>Half cylinder (D)</source>
        <translation>Nusu ya silinda (D)</translation>
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
        <translation>Jedwali</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation>Mchoro wa nguvu</translation>
    </message>
    <message>
        <source>Shows the same values as a table (Ctrl+T)</source>
        <translation>Huonyesha thamani zile zile kama jedwali (Ctrl+T)</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Mchoro wa nguvu kama jedwali</translation>
    </message>
    <message>
        <source>Powers in dioptres and how many can be given</source>
        <translation>Nguvu kwa dioptri na ngapi zinaweza kutolewa</translation>
    </message>
    <message>
        <source>R, L: the person&apos;s eyes · disc: pairs · diamond: lenses · cross: none left · dot: ranks · open ring: chosen pair. The larger, the more there are.</source>
        <translation>R, L: macho ya mtu · duara: miwani · almasi: lenzi · msalaba: hakuna iliyobaki · nukta: mpangilio · pete wazi: miwani iliyochaguliwa. Kubwa zaidi, zipo nyingi zaidi.</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Mchoro</translation>
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
        <translation>Mchoro wa akiba karibu na macho ya mtu huyu; thamani zile zile ziko kwenye jedwali</translation>
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
        <translation>K %1 D</translation>
    </message>
    <message>
        <source>L %1 D</source>
        <translation>Ks %1 D</translation>
    </message>
    <message numerus="yes">
        <source>lenses %1: %n available</source>
        <translation>
            <numerusform>lenzi %1: inapatikana %n</numerusform>
            <numerusform>lenzi %1: zinapatikana %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>pairs %1: %n available</source>
        <translation>
            <numerusform>miwani %1: inapatikana %n</numerusform>
            <numerusform>miwani %1: zinapatikana %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::PowerFields</name>
    <message>
        <source>Right eye, sphere</source>
        <translation>Jicho la kulia, sfia</translation>
    </message>
    <message>
        <source>Left eye, sphere</source>
        <translation>Jicho la kushoto, sfia</translation>
    </message>
    <message>
        <source>Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Sfia kwa dioptri, na alama yake. Up na Down hubadilisha 0.25, Page Up na Page Down 1.00</translation>
    </message>
    <message>
        <source>Right eye, cylinder</source>
        <translation>Jicho la kulia, silinda</translation>
    </message>
    <message>
        <source>Left eye, cylinder</source>
        <translation>Jicho la kushoto, silinda</translation>
    </message>
    <message>
        <source>Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Silinda kwa dioptri, na alama yake. Up na Down hubadilisha 0.25, Page Up na Page Down 1.00</translation>
    </message>
    <message>
        <source>Right eye, axis</source>
        <translation>Jicho la kulia, mhimili</translation>
    </message>
    <message>
        <source>Left eye, axis</source>
        <translation>Jicho la kushoto, mhimili</translation>
    </message>
    <message>
        <source>Axis in degrees. Up and Down step 1, with Shift 5</source>
        <translation>Mhimili kwa digrii. Up na Down hubadilisha 1, na Shift 5</translation>
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
        <translation>Huendelea bila hatua hii</translation>
    </message>
    <message>
        <source>Ends the practice; the sample stays open</source>
        <translation>Humaliza mazoezi; mfano hubaki wazi</translation>
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
        <translation>Miwani ni ya nini; ikiachwa wazi, agizo huamua</translation>
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
        <translation>Weka alama hili likionekana au kusemwa; huamua kuhusu barua kwa kliniki</translation>
    </message>
    <message>
        <source>%1 is empty; a person, the right and the left eye are needed</source>
        <translation>%1 ni tupu; mtu, jicho la kulia na la kushoto vinahitajika</translation>
    </message>
    <message>
        <source>Measured besides</source>
        <translation>Kingine kilichopimwa</translation>
    </message>
    <message>
        <source>Three fields an eye</source>
        <translation>Sehemu tatu kwa jicho</translation>
    </message>
    <message>
        <source>Sphere, cylinder and axis in fields of their own (Ctrl+E)</source>
        <translation>Sfia, silinda na mhimili kila moja sehemu yake (Ctrl+E)</translation>
    </message>
</context>
<context>
    <name>quarterstep::ReaderCard</name>
    <message>
        <source>Age</source>
        <translation>Umri</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Umri kwa miaka; umri usiojulikana hupimwa kwa kanuni kali zaidi</translation>
    </message>
    <message>
        <source>Distance fine?</source>
        <translation>Mbali sawa?</translation>
    </message>
    <message>
        <source>Does the person see well far away without spectacles? + is yes, - is no</source>
        <translation>Je, mtu anaona vizuri mbali bila miwani? + ni ndiyo, - ni hapana</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>haijaulizwa</translation>
    </message>
    <message>
        <source>yes (+)</source>
        <translation>ndiyo (+)</translation>
    </message>
    <message>
        <source>no (-)</source>
        <translation>hapana (-)</translation>
    </message>
    <message>
        <source>Near power by trial</source>
        <translation>Nguvu ya karibu kwa majaribio</translation>
    </message>
    <message>
        <source>Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225</source>
        <translation>Nguvu ambayo mtu alisoma nayo vizuri zaidi, sawa kwa macho yote, dioptri: 2.25 au 225</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>PD karibu</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation>Umbali kati ya mboni ukitazama karibu, milimita; bila huo hupimwa kwa hali mbaya zaidi inayowezekana</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Mtu</translation>
    </message>
    <message>
        <source>Camp code of the person; one is offered, the paper card&apos;s may be typed over it</source>
        <translation>Msimbo wa kambi wa mtu; mmoja unapendekezwa, wa kadi ya karatasi unaweza kuandikwa juu yake</translation>
    </message>
    <message>
        <source>%1 in each eye</source>
        <translation>%1 katika kila jicho</translation>
    </message>
    <message>
        <source>Ask first whether the person sees well far away.</source>
        <translation>Kwanza uliza kama mtu anaona vizuri mbali.</translation>
    </message>
    <message>
        <source>Then a reader alone is not enough: refract, and use the full card.</source>
        <translation>Basi miwani ya kusomea peke yake haitoshi: pima macho, na utumie kadi kamili.</translation>
    </message>
    <message>
        <source>Type the near power in quarters of a dioptre: 2.25 or 225.</source>
        <translation>Andika nguvu ya karibu kwa robo za dioptri: 2.25 au 225.</translation>
    </message>
    <message>
        <source>A hand-over needs a code for the person.</source>
        <translation>Makabidhiano yanahitaji msimbo wa mtu.</translation>
    </message>
</context>
<context>
    <name>quarterstep::SendOutPanel</name>
    <message>
        <source>As</source>
        <translation>Kama</translation>
    </message>
    <message>
        <source>An open standard, or a table that any program takes</source>
        <translation>Kiwango huria, au jedwali ambalo programu yoyote hupokea</translation>
    </message>
    <message>
        <source>HL7 FHIR (JSON, R4 and R5)</source>
        <translation>HL7 FHIR (JSON, R4 na R5)</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>Jedwali (CSV)</translation>
    </message>
    <message>
        <source>Lines of JSON</source>
        <translation>Mistari ya JSON</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>Nani</translation>
    </message>
    <message>
        <source>Everybody in the list, or the person on the card</source>
        <translation>Wote walio kwenye orodha, au mtu aliye kwenye kadi</translation>
    </message>
    <message>
        <source>Everybody in the list</source>
        <translation>Wote walio kwenye orodha</translation>
    </message>
    <message>
        <source>The person on the card</source>
        <translation>Mtu aliye kwenye kadi</translation>
    </message>
    <message>
        <source>What stays here, or leaves otherwise</source>
        <translation>Kinachobaki hapa, au kinachotoka kwa njia nyingine</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rudi</translation>
    </message>
    <message>
        <source>To the place before</source>
        <translation>Kwenye mahali pa awali</translation>
    </message>
    <message>
        <source>Write the file…</source>
        <translation>Andika faili…</translation>
    </message>
    <message>
        <source>Asks for a name and writes; symptoms and the guardian stay here</source>
        <translation>Huuliza jina na kuandika; dalili na mlezi hubaki hapa</translation>
    </message>
    <message>
        <source>Nobody is there to be sent out.</source>
        <translation>Hakuna mtu wa kutumwa nje.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s), each with the profile, version and hash of the rules of this camp</source>
        <translation>
            <numerusform>Agizo %n, pamoja na wasifu, toleo na hashi ya kanuni za kambi hii</numerusform>
            <numerusform>Maagizo %n, kila moja na wasifu, toleo na hashi ya kanuni za kambi hii</numerusform>
        </translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Andika faili</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Inaandika…</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) are in %1.</source>
        <translation>
            <numerusform>Agizo %n liko katika %1.</numerusform>
            <numerusform>Maagizo %n yako katika %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>DICOM (Subjective Refraction)</source>
        <translation>DICOM (kipimo cha mhusika)</translation>
    </message>
    <message>
        <source>Check first, or write; then it stands here.</source>
        <translation>Kagua kwanza, au andika; kisha itaonekana hapa.</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>Kagua kwanza</translation>
    </message>
    <message>
        <source>Shows what stays here; nothing is written</source>
        <translation>Huonyesha kinachobaki hapa; hakuna kinachoandikwa</translation>
    </message>
    <message>
        <source>one file a person, in a folder</source>
        <translation>faili moja kwa kila mtu, katika folda</translation>
    </message>
    <message>
        <source>Write the files…</source>
        <translation>Andika faili…</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>Folda ya faili</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>Inakagua…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Imesimamishwa. Hakuna kilichoandikwa.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) can leave; nothing was written.</source>
        <translation>
            <numerusform>Agizo %n linaweza kutoka; hakuna kilichoandikwa.</numerusform>
            <numerusform>Maagizo %n yanaweza kutoka; hakuna kilichoandikwa.</numerusform>
        </translation>
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
        <translation>Nuru, giza, au jua: nyeusi juu ya nyeupe na kubwa, kwa nje</translation>
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
        <translation>Kwa asilimia ya kawaida; pia Ctrl++ na Ctrl+-</translation>
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
        <translation>Lugha ya dirisha, mara moja</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Printa</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation>Printa ya kadi na barua ya kompyuta hii</translation>
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
        <translation>Namna miwani na oda zinavyoonyesha silinda; maagizo yaliyoandikwa hubaki yalivyoandikwa</translation>
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
        <translation>Mwandiko kwenye kadi; rekodi huhifadhi kilichoandikwa</translation>
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
        <translation>Wasifu wa vikomo kwa kila mtu; usipochagua, huchaguliwa kwa umri na matumizi</translation>
    </message>
    <message>
        <source>PINs</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Jukumu</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation>PIN ya nani inawekwa au kuondolewa</translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>PIN inayohitajika sasa</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation>PIN ya msimamizi ikiwepo, la sivyo ya sasa ya jukumu hili</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>PIN mpya</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation>herufi %1 hadi %2</translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>Ondoa PIN</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation>Jukumu hili haliulizwi tena PIN</translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>Weka PIN</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation>Jukumu hili litaulizwa PIN hii kuanzia sasa</translation>
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
        <translation>, </translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>PIN imeondolewa.</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>PIN imewekwa.</translation>
    </message>
    <message>
        <source>Supervisor: settings of the camp, lots, names, exports, PINs</source>
        <translation>Msimamizi: mipangilio ya kambi, mafungu, majina, kutoa data nje, PIN</translation>
    </message>
    <message>
        <source>A guard against slips, no lock. Asked for here and at the command line. Kept with the ledger.</source>
        <translation>Kinga dhidi ya makosa, si kufuli. Huulizwa hapa na kwenye mstari wa amri. Huhifadhiwa pamoja na daftari.</translation>
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
        <translation>Huonyesha tu mistari yenye maneno haya (Ctrl+F)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Jedwali</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation>Mistari mmoja chini ya mwingine</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Ngazi</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation>Vipande vingapi vya kila nguvu</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Sanduku</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation>Visanduku kama vilivyo ndani ya sanduku</translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>Mistari ya akiba</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation>Chagua mstari uone kadi yake na uingize kilichotokea</translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>Visanduku vya sanduku</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation>Chagua kisanduku: mstari wake huonyeshwa kando</translation>
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
        <translation>Pau: zinazopatikana · mistari ya mshazari: zilizowekwa kando · mstari wa kukata: weka angalau hizi. Kubofya hutafuta nguvu hiyo.</translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>Kadi ya mstari</translation>
    </message>
    <message>
        <source>Everything that happened to this line, newest first</source>
        <translation>Kila kilichotokea kwa mstari huu, kipya kwanza</translation>
    </message>
    <message>
        <source>A count is blind: what the book says comes back into sight once the count is entered.</source>
        <translation>Hesabu hufanywa bila kuona: daftari linachosema huonekana tena hesabu ikishaingizwa.</translation>
    </message>
    <message>
        <source>Counts edited in stock.yaml by hand</source>
        <translation>Hesabu zilizobadilishwa kwa mkono katika stock.yaml</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Sababu</translation>
    </message>
    <message>
        <source>Reason, for taking them over</source>
        <translation>Sababu ya kuzichukua</translation>
    </message>
    <message>
        <source>Why the counts in the file are the right ones; kept with the entry</source>
        <translation>Kwa nini hesabu za faili ndizo sahihi; huhifadhiwa na ingizo</translation>
    </message>
    <message>
        <source>Put the ledger&apos;s counts back</source>
        <translation>Rudisha hesabu za daftari</translation>
    </message>
    <message>
        <source>The file gets the counts of the ledger again</source>
        <translation>Faili hupata tena hesabu za daftari</translation>
    </message>
    <message>
        <source>Take the file&apos;s counts over</source>
        <translation>Chukua hesabu za faili</translation>
    </message>
    <message>
        <source>The ledger gets an entry with the difference and the reason</source>
        <translation>Daftari hupata ingizo lenye tofauti na sababu</translation>
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
        <translation>Hakuna kinacholingana na “%1”; futa sehemu uone mistari yote %2.</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>mistari %1 kati ya %2</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation>zilizopo %1, zilikuwa %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
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
        <translation>%1: faili inasema %2, daftari %3</translation>
    </message>
    <message>
        <source>Write why the counts in the file are the right ones.</source>
        <translation>Andika kwa nini hesabu za faili ndizo sahihi.</translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) taken over from the file.</source>
        <translation>
            <numerusform>Hesabu %n imechukuliwa kutoka faili.</numerusform>
            <numerusform>Hesabu %n zimechukuliwa kutoka faili.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) put back to the ledger&apos;s.</source>
        <translation>
            <numerusform>Hesabu %n imerudishwa kama ya daftari.</numerusform>
            <numerusform>Hesabu %n zimerudishwa kama za daftari.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count the bin that was used most</source>
        <translation>Hesabu kisanduku kilichotumika zaidi</translation>
    </message>
    <message>
        <source>Count it now</source>
        <translation>Hesabu sasa</translation>
    </message>
    <message>
        <source>Begins a blind count of this one bin (F8)</source>
        <translation>Huanza hesabu bila kuona ya kisanduku hiki kimoja (F8)</translation>
    </message>
    <message numerus="yes">
        <source>Bin %1 was reached into %n time(s) since it was counted.</source>
        <translation>
            <numerusform>Kisanduku %1 kimechukuliwa vipande mara %n tangu kihesabiwe.</numerusform>
            <numerusform>Kisanduku %1 kimechukuliwa vipande mara %n tangu kihesabiwe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more bin(s) wait for a count.</source>
        <translation>
            <numerusform>Kisanduku %n zaidi kinasubiri kuhesabiwa.</numerusform>
            <numerusform>Visanduku %n zaidi vinasubiri kuhesabiwa.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count bin %1: %2. Two persons; what the book says comes afterwards.</source>
        <translation>Hesabu kisanduku %1: %2. Watu wawili; daftari linachosema huonekana baadaye.</translation>
    </message>
    <message>
        <source>Packing</source>
        <translation>Kufungasha</translation>
    </message>
    <message>
        <source>What to buy and pack for the next camp</source>
        <translation>Cha kununua na kufungasha kwa kambi ijayo</translation>
    </message>
    <message>
        <source>Transfers</source>
        <translation>Uhamisho</translation>
    </message>
    <message>
        <source>Pieces sent to other sites, and what comes from them</source>
        <translation>Vipande vilivyotumwa vituo vingine, na vinavyotoka huko</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Akiba: %1</translation>
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
        <translation>Kinachoingizwa kuhusu mstari uliochaguliwa</translation>
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
        <translation>Kwa nini hesabu inabadilika</translation>
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
        <translation>Vipande vingapi</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Kwa</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation>Msimbo wa kambi wa mtu anayewekewa; unaweza kuachwa wazi</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Maneno</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation>Sababu, au zilitoka kwa nani; huhifadhiwa na ingizo</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Herufi zako</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Anayeingiza hii; hubaki kwa ingizo lijalo</translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>Herufi za pili</translation>
    </message>
    <message>
        <source>The other person who counted; stays for the next entry</source>
        <translation>Mtu mwingine aliyehesabu; hubaki kwa ingizo lijalo</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Hurudisha ingizo la mwisho la mahali hapa (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Writes it into the ledger (Enter in a field)</source>
        <translation>Huiandika kwenye daftari (Enter katika sehemu)</translation>
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
        <translation>Hakuna kinachotokea kwa vipande 0.</translation>
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
    <name>quarterstep::TableReading</name>
    <message>
        <source>Found: decimal %1; cylinders: %2 minus, %3 plus, %4 without a sign; %5 spheres without a sign</source>
        <translation>Imebainika: desimali %1; silinda: %2 za minus, %3 za plus, %4 bila alama; sfia %5 bila alama</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>mkato</translation>
    </message>
    <message>
        <source>point</source>
        <translation>nukta</translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation>Kati ya safuwima</translation>
    </message>
    <message>
        <source>What stands between two cells</source>
        <translation>Kilicho kati ya seli mbili</translation>
    </message>
    <message>
        <source>comma ,</source>
        <translation>mkato ,</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <translation>nukta mkato ;</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tab</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>mstari wima |</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Alama ya desimali</translation>
    </message>
    <message>
        <source>When one is chosen, a number with the other one is refused</source>
        <translation>Moja ikichaguliwa, namba yenye nyingine hukataliwa</translation>
    </message>
    <message>
        <source>point or comma</source>
        <translation>nukta au mkato</translation>
    </message>
    <message>
        <source>refuse the row</source>
        <translation>kataa safu</translation>
    </message>
    <message>
        <source>are plus</source>
        <translation>ni plus</translation>
    </message>
    <message>
        <source>are minus</source>
        <translation>ni minus</translation>
    </message>
    <message>
        <source>Spheres without a sign</source>
        <translation>Sfia bila alama</translation>
    </message>
    <message>
        <source>Ask whoever made the table before you choose</source>
        <translation>Muulize aliyetengeneza jedwali kabla ya kuchagua</translation>
    </message>
    <message>
        <source>Cylinders without a sign</source>
        <translation>Silinda bila alama</translation>
    </message>
    <message>
        <source>Columns of the table</source>
        <translation>Safuwima za jedwali</translation>
    </message>
    <message>
        <source>What each column is taken for; Enter, F2 or a click changes it</source>
        <translation>Kila safuwima inachukuliwa kama nini; Enter, F2 au kubofya hukibadilisha</translation>
    </message>
</context>
<context>
    <name>quarterstep::TransferPanel</name>
    <message>
        <source>In the air</source>
        <translation>Njiani</translation>
    </message>
    <message>
        <source>Transfers in the air</source>
        <translation>Uhamisho ulio njiani</translation>
    </message>
    <message>
        <source>What was sent and not yet taken in; Enter takes the chosen one in</source>
        <translation>Kilichotumwa na bado hakijapokelewa; Enter hupokea kilichochaguliwa</translation>
    </message>
    <message>
        <source>Take in as sent</source>
        <translation>Pokea kama ilivyotumwa</translation>
    </message>
    <message>
        <source>Fills the list beside with what was sent, to be counted and entered</source>
        <translation>Hujaza orodha iliyo kando kwa kilichotumwa, kihesabiwe na kuingizwa</translation>
    </message>
    <message>
        <source>Send or take in</source>
        <translation>Tuma au pokea</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Kinachofanyika</translation>
    </message>
    <message>
        <source>Whether pieces leave this site or come to it</source>
        <translation>Kama vipande vinaondoka kituo hiki au vinakuja</translation>
    </message>
    <message>
        <source>Send to another site</source>
        <translation>Tuma kituo kingine</translation>
    </message>
    <message>
        <source>Take in from another site</source>
        <translation>Pokea kutoka kituo kingine</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Kwenda</translation>
    </message>
    <message>
        <source>The other site, as it is called in its stock.yaml</source>
        <translation>Kituo kingine, kama kinavyoitwa katika stock.yaml yake</translation>
    </message>
    <message>
        <source>Lines of this transfer</source>
        <translation>Mistari ya uhamisho huu</translation>
    </message>
    <message>
        <source>What goes or comes; choose a row to change its number</source>
        <translation>Kinachokwenda au kinachokuja; chagua safu kubadilisha idadi yake</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Maelezo</translation>
    </message>
    <message>
        <source>Kept with the entry</source>
        <translation>Huhifadhiwa na ingizo</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Herufi zako</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Anayeingiza hii; hubaki kwa ingizo lijalo</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Mstari</translation>
    </message>
    <message>
        <source>Line, typed or scanned</source>
        <translation>Mstari, ulioandikwa au kuskaniwa</translation>
    </message>
    <message>
        <source>Name of a line, or the digits of its label; Enter goes on to the pieces</source>
        <translation>Jina la mstari, au tarakimu za lebo yake; Enter huenda kwenye vipande</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Vipande</translation>
    </message>
    <message>
        <source>How many pieces; 0 takes the line out of the list</source>
        <translation>Vipande vingapi; 0 huondoa mstari kwenye orodha</translation>
    </message>
    <message>
        <source>Into the list</source>
        <translation>Weka kwenye orodha</translation>
    </message>
    <message>
        <source>Puts line and pieces into the list (Enter in the pieces)</source>
        <translation>Huweka mstari na vipande kwenye orodha (Enter kwenye vipande)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Rudisha</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Hurudisha ingizo la mwisho la mahali hapa (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation>Futa orodha</translation>
    </message>
    <message>
        <source>Begins anew; nothing is entered (Ctrl+E)</source>
        <translation>Huanza upya; hakuna kinachoingizwa (Ctrl+E)</translation>
    </message>
    <message>
        <source>Enter in the ledger</source>
        <translation>Andika kwenye daftari</translation>
    </message>
    <message>
        <source>Writes the list into the ledger (Ctrl+Enter)</source>
        <translation>Huandika orodha kwenye daftari (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>Imetumwa</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Kutoka</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Mistari</translation>
    </message>
    <message>
        <source>Nothing was sent that is not yet taken in, as far as this ledger knows.</source>
        <translation>Hakuna kilichotumwa ambacho hakijapokelewa, kwa kadiri daftari hili linavyojua.</translation>
    </message>
    <message numerus="yes">
        <source>%n sent and not taken in</source>
        <translation>
            <numerusform>%n imetumwa, haijapokelewa</numerusform>
            <numerusform>%n zimetumwa, hazijapokelewa</numerusform>
        </translation>
    </message>
    <message>
        <source>to this site %1</source>
        <translation>kuja kituo hiki %1</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Kisanduku</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Zinazopatikana</translation>
    </message>
    <message>
        <source>%1: bin %2, available %3</source>
        <translation>%1: kisanduku %2, zipo %3</translation>
    </message>
    <message>
        <source>Put lines and pieces into the list first.</source>
        <translation>Weka mistari na vipande kwenye orodha kwanza.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>Hakuna kinachotokea kwa vipande 0.</translation>
    </message>
    <message>
        <source>Name the other site.</source>
        <translation>Taja kituo kingine.</translation>
    </message>
    <message numerus="yes">
        <source>Sent to %1: %n piece(s)</source>
        <translation>
            <numerusform>Imetumwa kwa %1: kipande %n</numerusform>
            <numerusform>Vimetumwa kwa %1: vipande %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken in from %1: %n piece(s)</source>
        <translation>
            <numerusform>Imepokelewa kutoka %1: kipande %n</numerusform>
            <numerusform>Vimepokelewa kutoka %1: vipande %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on hand %2, was %3</source>
        <translation>%1 zilizopo %2, zilikuwa %3</translation>
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
        <translation>Huwa kwenye kila karatasi na juu ya dirisha</translation>
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
        <translation>Nguvu kwa dioptri na alama yake, … to … by hatua; kisha nukta mbili na idadi. Baada ya idadi: centres kwa mm, bin, round ukubwa wa lenzi kwa mm</translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>Folda ya kuwekwa</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation>Hutengenezwa ikiwa haipo; stock.yaml iliyopo haiandikwi juu yake kamwe</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Chagua folda…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation>Hutafuta folda kwenye kompyuta hii</translation>
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
        <translation>Huandika mfano chini ya trei, wa kubadilisha</translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>Akiba inayotokana</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation>Kisanduku, mstari, nguvu kwa dioptri na idadi ya kila mstari</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rudi</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation>Huondoka ukurasa huu; kilichoandikwa hubaki dirisha likiwa wazi</translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>Tengeneza kambi hii</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation>Huandika stock.yaml kwenye folda na kuifungua</translation>
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
        <translation>Wazi kuanzia cm %1.</translation>
    </message>
    <message>
        <source>Clear from %1 to %2 cm.</source>
        <translation>Wazi kuanzia cm %1 hadi %2.</translation>
    </message>
    <message>
        <source>Why this pair</source>
        <translation>Kwa nini miwani hii</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Msalaba</translation>
    </message>
    <message>
        <source>Above another</source>
        <translation>Juu ya nyingine</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Jedwali</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation>Huonyesha thamani zile zile kama jedwali</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Mchoro</translation>
    </message>
    <message>
        <source>Why: criteria of the chosen pair</source>
        <translation>Kwa nini: vigezo vya miwani iliyochaguliwa</translation>
    </message>
    <message>
        <source>Measured values and limits, each with its unit and source</source>
        <translation>Thamani zilizopimwa na vikomo, kila moja na kipimo na chanzo chake</translation>
    </message>
    <message>
        <source>Optical crosses as a table</source>
        <translation>Misalaba ya nguvu kama jedwali</translation>
    </message>
    <message>
        <source>Powers in dioptres along their meridians, degrees</source>
        <translation>Nguvu kwa dioptri kwenye meridiani zake, digrii</translation>
    </message>
    <message>
        <source>The chosen pair and</source>
        <translation>Miwani iliyochaguliwa na</translation>
    </message>
    <message>
        <source>Pair to compare with</source>
        <translation>Miwani ya kulinganisha</translation>
    </message>
    <message>
        <source>The other pair of the list that the chosen one is compared with</source>
        <translation>Miwani nyingine ya orodha inayolinganishwa na iliyochaguliwa</translation>
    </message>
    <message>
        <source>Choose a pair: why it stands above or below another is said here.</source>
        <translation>Chagua miwani: kwa nini iko juu au chini ya nyingine husemwa hapa.</translation>
    </message>
    <message>
        <source>There is no other pair to compare with.</source>
        <translation>Hakuna miwani nyingine ya kulinganisha.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Kwa nini</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Juu</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>note</source>
        <translation>maelezo</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>tahadhari</translation>
    </message>
    <message>
        <source>error</source>
        <translation>kosa</translation>
    </message>
    <message>
        <source>from stock</source>
        <translation>kutoka akiba</translation>
    </message>
    <message>
        <source>custom order</source>
        <translation>oda maalum</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>haihitajiki</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>haijakamilika</translation>
    </message>
    <message>
        <source>refer</source>
        <translation>toa rufaa</translation>
    </message>
    <message>
        <source>no referral</source>
        <translation>hakuna rufaa</translation>
    </message>
    <message>
        <source>with a referral letter</source>
        <translation>pamoja na barua ya rufaa</translation>
    </message>
    <message>
        <source>refer before any glasses</source>
        <translation>toa rufaa kabla ya miwani yoyote</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>ya kawaida</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>hivi karibuni</translation>
    </message>
    <message>
        <source>same day</source>
        <translation>siku hiyo hiyo</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>haikutajwa</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>mbali</translation>
    </message>
    <message>
        <source>near</source>
        <translation>karibu</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>urefu wa mkono</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifokali</translation>
    </message>
    <message>
        <source>distance and near</source>
        <translation>mbali na karibu</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>inafaa</translation>
    </message>
    <message>
        <source>fits with caution</source>
        <translation>inafaa kwa tahadhari</translation>
    </message>
    <message>
        <source>on trial</source>
        <translation>majaribio</translation>
    </message>
    <message>
        <source>outside limit</source>
        <translation>nje ya kikomo</translation>
    </message>
    <message>
        <source>shown only</source>
        <translation>inaonyeshwa tu</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>haijapimwa</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>iliyo tayari</translation>
    </message>
    <message>
        <source>lens</source>
        <translation>lenzi</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>fremu</translation>
    </message>
    <message>
        <source>other</source>
        <translation>nyingine</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 ndani</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>%1 nje</translation>
    </message>
    <message>
        <source>no bin</source>
        <translation>hakuna kisanduku</translation>
    </message>
    <message>
        <source>%1 bin %2</source>
        <translation>%1 kisanduku %2</translation>
    </message>
    <message>
        <source>RIGHT %1 bin %2</source>
        <translation>KULIA %1 kisanduku %2</translation>
    </message>
    <message>
        <source>LEFT %1 bin %2</source>
        <translation>KUSHOTO %1 kisanduku %2</translation>
    </message>
    <message>
        <source>frame %1 bin %2</source>
        <translation>fremu %1 kisanduku %2</translation>
    </message>
    <message>
        <source>right eye</source>
        <translation>jicho la kulia</translation>
    </message>
    <message>
        <source>left eye</source>
        <translation>jicho la kushoto</translation>
    </message>
</context>
</TS>
