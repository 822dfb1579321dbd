<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="hi" sourcelanguage="en">
<context>
    <name>BringIn</name>
    <message>
        <source>kept, not used</source>
        <translation>रखा, इस्तेमाल नहीं</translation>
    </message>
    <message>
        <source>Code of the person</source>
        <translation>व्यक्ति का कोड</translation>
    </message>
    <message>
        <source>Right eye, all in one cell</source>
        <translation>दाईं आँख, सब एक खाने में</translation>
    </message>
    <message>
        <source>Right eye: sphere</source>
        <translation>दाईं आँख: स्फ़ियर</translation>
    </message>
    <message>
        <source>Right eye: cylinder</source>
        <translation>दाईं आँख: सिलिंडर</translation>
    </message>
    <message>
        <source>Right eye: axis</source>
        <translation>दाईं आँख: धुरी</translation>
    </message>
    <message>
        <source>Right eye: prism</source>
        <translation>दाईं आँख: प्रिज़्म</translation>
    </message>
    <message>
        <source>Right eye: base of the prism</source>
        <translation>दाईं आँख: प्रिज़्म का बेस</translation>
    </message>
    <message>
        <source>Left eye, all in one cell</source>
        <translation>बाईं आँख, सब एक खाने में</translation>
    </message>
    <message>
        <source>Left eye: sphere</source>
        <translation>बाईं आँख: स्फ़ियर</translation>
    </message>
    <message>
        <source>Left eye: cylinder</source>
        <translation>बाईं आँख: सिलिंडर</translation>
    </message>
    <message>
        <source>Left eye: axis</source>
        <translation>बाईं आँख: धुरी</translation>
    </message>
    <message>
        <source>Left eye: prism</source>
        <translation>बाईं आँख: प्रिज़्म</translation>
    </message>
    <message>
        <source>Left eye: base of the prism</source>
        <translation>बाईं आँख: प्रिज़्म का बेस</translation>
    </message>
    <message>
        <source>Age in years</source>
        <translation>उम्र, वर्षों में</translation>
    </message>
    <message>
        <source>Addition of both eyes</source>
        <translation>दोनों आँखों का ऐड</translation>
    </message>
    <message>
        <source>Right eye: addition</source>
        <translation>दाईं आँख: ऐड</translation>
    </message>
    <message>
        <source>Left eye: addition</source>
        <translation>बाईं आँख: ऐड</translation>
    </message>
    <message>
        <source>PD, mm</source>
        <translation>PD, मिमी</translation>
    </message>
    <message>
        <source>Right eye: PD, mm</source>
        <translation>दाईं आँख: PD, मिमी</translation>
    </message>
    <message>
        <source>Left eye: PD, mm</source>
        <translation>बाईं आँख: PD, मिमी</translation>
    </message>
    <message>
        <source>Near PD, mm</source>
        <translation>PD पास, मिमी</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>चश्मा लिखने वाला</translation>
    </message>
    <message>
        <source>Day it was written</source>
        <translation>लिखने का दिन</translation>
    </message>
</context>
<context>
    <name>ChartData</name>
    <message>
        <source>%1 of %2 at odds, %3</source>
        <translation>%2 में से %1 बेमेल, %3</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>जाँचे गए वितरण</translation>
    </message>
    <message>
        <source>pair and record at odds</source>
        <translation>चश्मा और अभिलेख बेमेल</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>अभी तक कोई वितरण नहीं जाँचा गया।</translation>
    </message>
    <message>
        <source>mismatches in order</source>
        <translation>बेमेल, क्रम से</translation>
    </message>
    <message>
        <source>good hand-overs before it</source>
        <translation>इससे पहले सही वितरण</translation>
    </message>
    <message>
        <source>%1 good hand-overs before it</source>
        <translation>इससे पहले %1 सही वितरण</translation>
    </message>
    <message>
        <source>weeks in order</source>
        <translation>सप्ताह, क्रम से</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>और %n</numerusform>
            <numerusform>और %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is writing in the ledger. Trying again; Escape gives up. Nothing is lost.</source>
        <translation>कोई दूसरा प्रोग्राम बही में लिख रहा है। फिर कोशिश हो रही है; Escape से छोड़ें। कुछ भी नहीं खोया।</translation>
    </message>
    <message>
        <source>The program met something it does not know: %1. Nothing was written; close the program and open the folder again.</source>
        <translation>प्रोग्राम को कुछ अनजाना मिला: %1। कुछ लिखा नहीं गया; प्रोग्राम बंद करें और फ़ोल्डर फिर खोलें।</translation>
    </message>
</context>
<context>
    <name>DeskOptions</name>
    <message>
        <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
        <translation>चश्मे के अंतिम नुस्ख़ों को तैयार चश्मों और लेंसों के स्टॉक से मिलाता है।</translation>
    </message>
    <message>
        <source>light, dark or sun (black on white, large)</source>
        <translation>light, dark या sun (सफ़ेद पर काला, बड़ा)</translation>
    </message>
    <message>
        <source>mirrors the window; prescriptions stay left-to-right</source>
        <translation>खिड़की को उलटी दिशा में दिखाता है; नुस्ख़े बाएँ से दाएँ ही रहते हैं</translation>
    </message>
    <message>
        <source>language of the window, for example ar</source>
        <translation>खिड़की की भाषा, जैसे ar</translation>
    </message>
    <message>
        <source>size of the letters in per cent, 100 to 200</source>
        <translation>अक्षरों का आकार प्रतिशत में, 100 से 200</translation>
    </message>
    <message>
        <source>paints the window into a PNG file and leaves</source>
        <translation>खिड़की का चित्र PNG फ़ाइल में बनाकर बंद हो जाता है</translation>
    </message>
    <message>
        <source>size of the window in pixels, for example 1366x768</source>
        <translation>खिड़की का आकार पिक्सेल में, जैसे 1366x768</translation>
    </message>
    <message>
        <source>loads this person of people.csv at the start</source>
        <translation>शुरू में people.csv का यह व्यक्ति लाता है</translation>
    </message>
    <message>
        <source>chooses this line of the stock at the start</source>
        <translation>शुरू में स्टॉक की यह पंक्ति चुनता है</translation>
    </message>
    <message>
        <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
        <translation>खोलने के लिए शिविर का फ़ोल्डर (stock.yaml, rules.yaml, ledger.sqlite)</translation>
    </message>
    <message>
        <source>--size %1 is not a size; write for example 1366x768</source>
        <translation>--size %1 कोई आकार नहीं है; लिखें जैसे 1366x768</translation>
    </message>
    <message>
        <source>--text-scale %1 is not from 100 to 200</source>
        <translation>--text-scale %1 100 से 200 के बीच नहीं है</translation>
    </message>
    <message>
        <source>--place %1 is not known; write one of %2</source>
        <translation>--place %1 ज्ञात नहीं है; इनमें से एक लिखें: %2</translation>
    </message>
    <message>
        <source>--theme %1 is not known; write light, dark or sun</source>
        <translation>--theme %1 ज्ञात नहीं है; light, dark या sun लिखें</translation>
    </message>
    <message>
        <source>one camp folder at a time, not %1</source>
        <translation>एक बार में शिविर का एक ही फ़ोल्डर, %1 नहीं</translation>
    </message>
    <message>
        <source>no readable person %1 in people.csv</source>
        <translation>people.csv में पढ़ने लायक व्यक्ति %1 नहीं है</translation>
    </message>
    <message>
        <source>no line %1 in this stock</source>
        <translation>इस स्टॉक में पंक्ति %1 नहीं है</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>%1 लिखा नहीं जा सकता</translation>
    </message>
    <message>
        <source>page to show at the start: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in or send-out</source>
        <translation>शुरू में दिखाने का पन्ना: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in या send-out</translation>
    </message>
    <message>
        <source>reads this file of prescriptions on the page bring-in at the start</source>
        <translation>शुरू में bring-in पन्ने पर नुस्ख़ों की यह फ़ाइल पढ़ता है</translation>
    </message>
</context>
<context>
    <name>DeskWords</name>
    <message>
        <source>R %1</source>
        <translation>R %1</translation>
    </message>
    <message>
        <source>L %1</source>
        <translation>L %1</translation>
    </message>
    <message>
        <source>%1 add %2</source>
        <translation>%1 add %2</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>जाँचा नहीं गया</translation>
    </message>
    <message>
        <source>%1 too strong</source>
        <translation>%1 ज़्यादा तेज़</translation>
    </message>
    <message>
        <source>%1 too plus</source>
        <translation>%1 ज़्यादा प्लस</translation>
    </message>
    <message>
        <source>%1 too weak</source>
        <translation>%1 ज़्यादा कमज़ोर</translation>
    </message>
    <message>
        <source>%1 too minus</source>
        <translation>%1 ज़्यादा माइनस</translation>
    </message>
    <message>
        <source>cylinder %1 left</source>
        <translation>सिलिंडर %1 बाकी</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>कुछ बाकी नहीं</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Suggested</source>
        <translation>सुझाया गया</translation>
    </message>
    <message>
        <source>Fits with caution</source>
        <translation>सावधानी के साथ ठीक</translation>
    </message>
    <message>
        <source>On trial: type the acuity</source>
        <translation>परीक्षण पर: दृष्टि लिखें</translation>
    </message>
    <message>
        <source>Outside limit</source>
        <translation>सीमा से बाहर</translation>
    </message>
    <message>
        <source>right eye: %1</source>
        <translation>दाईं आँख: %1</translation>
    </message>
    <message>
        <source>left eye: %1</source>
        <translation>बाईं आँख: %1</translation>
    </message>
    <message>
        <source>Tried on: acceptable</source>
        <translation>पहनाकर देखा: स्वीकार्य</translation>
    </message>
    <message>
        <source>Tried on: outside limit</source>
        <translation>पहनाकर देखा: सीमा से बाहर</translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>whole degrees up to 180</source>
        <translation>180 तक पूरे अंश</translation>
    </message>
    <message>
        <source>quarters of a dioptre up to 6.75</source>
        <translation>6.75 तक, चौथाई डायोप्टर में</translation>
    </message>
    <message>
        <source>years up to 120</source>
        <translation>120 तक साल</translation>
    </message>
    <message>
        <source>millimetres, or right and left as 31/30.5</source>
        <translation>मिलीमीटर, या दायाँ और बायाँ जैसे 31/30.5</translation>
    </message>
    <message>
        <source>quarters of a dioptre, plus</source>
        <translation>चौथाई डायोप्टर में, प्लस</translation>
    </message>
    <message>
        <source>a sign first, then quarters of a dioptre, the axis up to 180</source>
        <translation>पहले चिह्न, फिर चौथाई डायोप्टर में, धुरी 180 तक</translation>
    </message>
    <message>
        <source>“%1” was not taken: %2</source>
        <translation>“%1” नहीं लिया गया: %2</translation>
    </message>
</context>
<context>
    <name>PackingCurve</name>
    <message>
        <source>%1 % served for %2</source>
        <translation>%2 में %1 % की ज़रूरत पूरी</translation>
    </message>
    <message>
        <source>money spent</source>
        <translation>ख़र्च की गई रक़म</translation>
    </message>
    <message>
        <source>money spent, %1</source>
        <translation>ख़र्च की गई रक़म, %1</translation>
    </message>
    <message>
        <source>share of needs served</source>
        <translation>पूरी हुई ज़रूरतों का हिस्सा</translation>
    </message>
    <message>
        <source>Plan first: the curve comes with it.</source>
        <translation>पहले योजना बनाएँ: वक्र उसके साथ आता है।</translation>
    </message>
    <message>
        <source>the knee</source>
        <translation>मोड़</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>यह योजना</translation>
    </message>
</context>
<context>
    <name>PackingRows</name>
    <message>
        <source>Pack</source>
        <translation>पैक</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>पैक संख्या</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>लागत</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>ग्राम</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>क्यों</translation>
    </message>
    <message>
        <source>without it %1 fewer served</source>
        <translation>इसके बिना %1 कम को मिलेगा</translation>
    </message>
    <message>
        <source>a reserve</source>
        <translation>अतिरिक्त</translation>
    </message>
    <message>
        <source>nothing else for %1</source>
        <translation>%1 के लिए और कुछ नहीं</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>ठीक %1</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n मौजूद</numerusform>
            <numerusform>%n मौजूद</numerusform>
        </translation>
    </message>
    <message>
        <source>none on hand</source>
        <translation>कोई मौजूद नहीं</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>बक्सा</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>खाना</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>पंक्ति</translation>
    </message>
    <message>
        <source>Of these bought</source>
        <translation>इनमें ख़रीदे</translation>
    </message>
    <message>
        <source>new</source>
        <translation>नया</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>तरीका</translation>
    </message>
    <message>
        <source>Served</source>
        <translation>जिन्हें मिला</translation>
    </message>
    <message>
        <source>First come</source>
        <translation>पहले आओ पहले पाओ</translation>
    </message>
    <message>
        <source>Spends</source>
        <translation>ख़र्च</translation>
    </message>
    <message>
        <source>what would do has run out by then</source>
        <translation>जो ठीक रहता वह तब तक ख़त्म हो चुका होता है</translation>
    </message>
    <message>
        <source>no such power on hand or on offer</source>
        <translation>ऐसी पावर न मौजूद है, न बिक्री में</translation>
    </message>
    <message>
        <source>nothing on offer keeps the limit: %1</source>
        <translation>बिक्री में कुछ भी सीमा में नहीं रहता: %1</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>कौन</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>बिना चश्मे</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>कुल</translation>
    </message>
    <message>
        <source>%1, children</source>
        <translation>%1, बच्चे</translation>
    </message>
    <message>
        <source>%1, adults</source>
        <translation>%1, वयस्क</translation>
    </message>
    <message>
        <source>Days in a hundred</source>
        <translation>सौ में कितने दिन</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>किस व्यक्ति पर</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>क्यों नहीं</translation>
    </message>
    <message>
        <source>others do as well for the money</source>
        <translation>इस रक़म में दूसरे भी उतना ही काम देते हैं</translation>
    </message>
    <message>
        <source>nobody of this demand needs it</source>
        <translation>इस माँग में किसी को इसकी ज़रूरत नहीं</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>ख़र्च रक़म</translation>
    </message>
    <message>
        <source>Served, planned for</source>
        <translation>मिला, योजना में</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>टिप्पणी</translation>
    </message>
    <message>
        <source>the curve bends here</source>
        <translation>वक्र यहाँ मुड़ता है</translation>
    </message>
</context>
<context>
    <name>PrescriptionCard</name>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>Camp code of the person, as on the paper card</source>
        <translation>व्यक्ति का शिविर कोड, जैसा काग़ज़ के कार्ड पर है</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>उम्र</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>उम्र साल में; उम्र पता न हो तो सबसे कड़े नियमों से जाँचा जाता है</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>दाईं</translation>
    </message>
    <message>
        <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>दाईं आँख: स्फ़ियर, सिलिंडर (डायोप्टर) और धुरी (अंश)। Up और Down स्फ़ियर को 0.25 बदलते हैं, Page Up और Page Down 1.00</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>बाईं</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>ऐडिशन</translation>
    </message>
    <message>
        <source>Near addition of both eyes, dioptres</source>
        <translation>दोनों आँखों का पास का ऐड, डायोप्टर</translation>
    </message>
    <message>
        <source>PD far</source>
        <translation>PD दूर</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>PD पास</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; worked out from the far one when empty</source>
        <translation>पास देखते समय पुतलियों के बीच की दूरी, मिलीमीटर; खाली हो तो दूर वाली से निकाली जाती है</translation>
    </message>
    <message>
        <source>Near, R</source>
        <translation>पास, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>दाईं आँख: आज़माकर मिली पास की पूरी पावर, डायोप्टर, ऐड की जगह</translation>
    </message>
    <message>
        <source>Near, L</source>
        <translation>पास, बायाँ</translation>
    </message>
    <message>
        <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>बाईं आँख: आज़माकर मिली पास की पूरी पावर, डायोप्टर, ऐड की जगह</translation>
    </message>
    <message>
        <source>Unaided, R</source>
        <translation>बिना चश्मे, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: acuity without spectacles, for example 6/18</source>
        <translation>दाईं आँख: बिना चश्मे दृष्टि, जैसे 6/18</translation>
    </message>
    <message>
        <source>Unaided, L</source>
        <translation>बिना चश्मे, बायाँ</translation>
    </message>
    <message>
        <source>Left eye: acuity without spectacles, for example 6/18</source>
        <translation>बाईं आँख: बिना चश्मे दृष्टि, जैसे 6/18</translation>
    </message>
    <message>
        <source>Best, R</source>
        <translation>सर्वोत्तम, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: acuity with this prescription, for example 6/6</source>
        <translation>दाईं आँख: इस नुस्ख़े के साथ दृष्टि, जैसे 6/6</translation>
    </message>
    <message>
        <source>Best, L</source>
        <translation>सर्वोत्तम, बायाँ</translation>
    </message>
    <message>
        <source>Left eye: acuity with this prescription, for example 6/6</source>
        <translation>बाईं आँख: इस नुस्ख़े के साथ दृष्टि, जैसे 6/6</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>लिखने वाला</translation>
    </message>
    <message>
        <source>Who signed the prescription; needed under 16 years</source>
        <translation>नुस्ख़े पर किसने हस्ताक्षर किए; 16 साल से कम में ज़रूरी</translation>
    </message>
    <message>
        <source>Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>बाईं आँख: स्फ़ियर, सिलिंडर (डायोप्टर) और धुरी (अंश); = दाईं आँख का ले लेता है। Up और Down स्फ़ियर को 0.25 बदलते हैं, Page Up और Page Down 1.00</translation>
    </message>
    <message>
        <source>Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5</source>
        <translation>दूर देखते समय पुतलियों के बीच की दूरी, मिलीमीटर; या नाक से दाएँ और बाएँ: 31/30.5</translation>
    </message>
    <message>
        <source>Objective, R</source>
        <translation>मशीन, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>दाईं आँख: मशीन की रीडिंग, डायोप्टर; ; से अलग की गई कई रीडिंग का औसत लिया जाता है और उनका बिखराव बताया जाता है</translation>
    </message>
    <message>
        <source>Objective, L</source>
        <translation>मशीन, बायाँ</translation>
    </message>
    <message>
        <source>Left eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>बाईं आँख: मशीन की रीडिंग, डायोप्टर; ; से अलग की गई कई रीडिंग का औसत लिया जाता है और उनका बिखराव बताया जाता है</translation>
    </message>
    <message>
        <source>Own pair, R</source>
        <translation>अपना चश्मा, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>दाईं आँख: अभी पहने चश्मे की पावर, फ़ोसीमीटर से पढ़ी, डायोप्टर</translation>
    </message>
    <message>
        <source>Own pair, L</source>
        <translation>अपना चश्मा, बायाँ</translation>
    </message>
    <message>
        <source>Left eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>बाईं आँख: अभी पहने चश्मे की पावर, फ़ोसीमीटर से पढ़ी, डायोप्टर</translation>
    </message>
    <message>
        <source>Pinhole, R</source>
        <translation>पिनहोल, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: acuity through a pinhole, for example 6/9</source>
        <translation>दाईं आँख: पिनहोल से दृष्टि, जैसे 6/9</translation>
    </message>
    <message>
        <source>Pinhole, L</source>
        <translation>पिनहोल, बायाँ</translation>
    </message>
    <message>
        <source>Left eye: acuity through a pinhole, for example 6/9</source>
        <translation>बाईं आँख: पिनहोल से दृष्टि, जैसे 6/9</translation>
    </message>
    <message>
        <source>With own, R</source>
        <translation>अपने चश्मे से, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: acuity with the pair worn now, for example 6/12</source>
        <translation>दाईं आँख: अभी पहने चश्मे के साथ दृष्टि, जैसे 6/12</translation>
    </message>
    <message>
        <source>With own, L</source>
        <translation>अपने चश्मे से, बायाँ</translation>
    </message>
    <message>
        <source>Left eye: acuity with the pair worn now, for example 6/12</source>
        <translation>बाईं आँख: अभी पहने चश्मे के साथ दृष्टि, जैसे 6/12</translation>
    </message>
    <message>
        <source>Near, bare</source>
        <translation>पास, बिना चश्मे</translation>
    </message>
    <message>
        <source>Smallest print read without spectacles, for example N12</source>
        <translation>बिना चश्मे पढ़ा गया सबसे छोटा अक्षर, जैसे N12</translation>
    </message>
    <message>
        <source>Near, best</source>
        <translation>पास, सर्वोत्तम</translation>
    </message>
    <message>
        <source>Smallest print read with this prescription, for example N6</source>
        <translation>इस नुस्ख़े के साथ पढ़ा गया सबसे छोटा अक्षर, जैसे N6</translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation>वर्टेक्स</translation>
    </message>
    <message>
        <source>Distance from the trial lens to the eye, millimetres; needed above 4.00 D</source>
        <translation>ट्रायल लेंस से आँख की दूरी, मिलीमीटर; 4.00 D से ऊपर ज़रूरी</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>काम की दूरी</translation>
    </message>
    <message>
        <source>Distance of near work from the spectacles, millimetres; 400 when empty</source>
        <translation>चश्मे से पास के काम की दूरी, मिलीमीटर; खाली हो तो 400</translation>
    </message>
    <message>
        <source>Complaints</source>
        <translation>शिकायतें</translation>
    </message>
    <message>
        <source>What the person complains of, in a few words</source>
        <translation>व्यक्ति की शिकायत, थोड़े शब्दों में</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>अभिभावक</translation>
    </message>
    <message>
        <source>Who was told about a child’s prescription</source>
        <translation>बच्चे के नुस्ख़े के बारे में किसे बताया गया</translation>
    </message>
    <message>
        <source>Right eye: %1</source>
        <translation>दाईं आँख: %1</translation>
    </message>
    <message>
        <source>Left eye: %1</source>
        <translation>बाईं आँख: %1</translation>
    </message>
</context>
<context>
    <name>ShareBars</name>
    <message>
        <source>Right: mean sphere</source>
        <translation>दायाँ: औसत स्फ़ियर</translation>
    </message>
    <message>
        <source>Left: mean sphere</source>
        <translation>बायाँ: औसत स्फ़ियर</translation>
    </message>
    <message>
        <source>Right: cylinder</source>
        <translation>दायाँ: सिलिंडर</translation>
    </message>
    <message>
        <source>Left: cylinder</source>
        <translation>बायाँ: सिलिंडर</translation>
    </message>
    <message>
        <source>Right: strain</source>
        <translation>दायाँ: आँख पर ज़ोर</translation>
    </message>
    <message>
        <source>Left: strain</source>
        <translation>बायाँ: आँख पर ज़ोर</translation>
    </message>
    <message>
        <source>Right, near: mean sphere</source>
        <translation>दायाँ, पास: औसत स्फ़ियर</translation>
    </message>
    <message>
        <source>Left, near: mean sphere</source>
        <translation>बायाँ, पास: औसत स्फ़ियर</translation>
    </message>
    <message>
        <source>Right, near: cylinder</source>
        <translation>दायाँ, पास: सिलिंडर</translation>
    </message>
    <message>
        <source>Left, near: cylinder</source>
        <translation>बायाँ, पास: सिलिंडर</translation>
    </message>
    <message>
        <source>the eye makes up for %1 D</source>
        <translation>आँख %1 D की भरपाई करती है</translation>
    </message>
    <message>
        <source>error %1 D</source>
        <translation>फ़र्क %1 D</translation>
    </message>
    <message>
        <source>sight lost, logMAR over the eyes</source>
        <translation>दृष्टि की हानि, दोनों आँखों में logMAR</translation>
    </message>
    <message>
        <source>part of the limit used up</source>
        <translation>सीमा का इस्तेमाल हुआ भाग</translation>
    </message>
    <message>
        <source>%1 of %2 %3; %4</source>
        <translation>%2 %3 में से %1; %4</translation>
    </message>
    <message>
        <source>No criterion with a limit could be judged.</source>
        <translation>सीमा वाली कोई कसौटी जाँची नहीं जा सकी।</translation>
    </message>
    <message>
        <source>of 100 hand-overs judged</source>
        <translation>जाँचे गए 100 वितरणों में से</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>अभी तक कोई वितरण नहीं जाँचा गया।</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 में से %1</translation>
    </message>
    <message>
        <source>Judged again</source>
        <translation>फिर जाँचे गए</translation>
    </message>
    <message>
        <source>Pair and record agree</source>
        <translation>चश्मा और अभिलेख मेल खाते हैं</translation>
    </message>
    <message>
        <source>adds</source>
        <translation>बढ़ाता है</translation>
    </message>
    <message>
        <source>takes away</source>
        <translation>घटाता है</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>भीतर</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>बाहर</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>पूरा</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>दायाँ: %1</translation>
    </message>
    <message>
        <source>Left: %1</source>
        <translation>बायाँ: %1</translation>
    </message>
</context>
<context>
    <name>command</name>
    <message>
        <source>this plan</source>
        <translation>यह योजना</translation>
    </message>
    <message>
        <source>greedy, without repairs</source>
        <translation>लालची तरीका, बिना सुधार</translation>
    </message>
    <message>
        <source>each line by its own demand (newsvendor)</source>
        <translation>हर पंक्ति अपनी माँग से (newsvendor)</translation>
    </message>
    <message>
        <source>levels by past use</source>
        <translation>पिछली खपत के अनुसार स्तर</translation>
    </message>
    <message>
        <source>what is on hand, nothing bought</source>
        <translation>जो मौजूद है, बिना कुछ ख़रीदे</translation>
    </message>
    <message>
        <source>spend %1 of %2 %3, %4 pieces, %5 kg</source>
        <translation>%2 %3 में से %1 ख़र्च, %4 नग, %5 किग्रा</translation>
    </message>
    <message>
        <source>%1: serves %2 %, first come %3 %, spends %4</source>
        <translation>%1: %2 % को मिलता है, पहले आओ पहले पाओ से %3 % को, ख़र्च %4</translation>
    </message>
    <message>
        <source>on the draws planned for: %1 %, no order serves more than %2 % (gap %3 %); on offer and on hand could serve %4 % at most</source>
        <translation>योजना के नमूनों में: %1 %, कोई ऑर्डर %2 % से अधिक को नहीं देता (अंतर %3 %); बिक्री का और मौजूद माल अधिक से अधिक %4 % को दे सकता है</translation>
    </message>
    <message>
        <source>the curve bends at %1: %2 % of the draws planned for</source>
        <translation>वक्र %1 पर मुड़ता है: योजना के नमूनों का %2 %</translation>
    </message>
    <message>
        <source>%1 runs out on %2 days in a hundred, by person %3</source>
        <translation>%1 सौ में से %2 दिन ख़त्म होता है, व्यक्ति %3 तक</translation>
    </message>
    <message>
        <source>demand: %1, %2 people</source>
        <translation>माँग: %1, %2 लोग</translation>
    </message>
    <message>
        <source>demand: the ledger, %1 people</source>
        <translation>माँग: बही, %1 लोग</translation>
    </message>
    <message>
        <source>left without a pair, %1: %2</source>
        <translation>बिना चश्मे रहे, %1: %2</translation>
    </message>
    <message>
        <source>entries without a prescription, not planned for: %1</source>
        <translation>बिना नुस्ख़े की प्रविष्टियाँ, योजना में नहीं ली गईं: %1</translation>
    </message>
    <message>
        <source>lines whose demand was raised, since they lay empty on some days: %1</source>
        <translation>पंक्तियाँ जिनकी माँग बढ़ाई गई, क्योंकि वे कुछ दिन खाली रहीं: %1</translation>
    </message>
    <message>
        <source>mixed with the published mix of a camp, which makes %1 % of it</source>
        <translation>एक शिविर के प्रकाशित मिश्रण के साथ मिलाया गया, जो इसका %1 % है</translation>
    </message>
    <message>
        <source>PDs not taken, drawn from published distributions: %1</source>
        <translation>पीडी नहीं नापी गई, प्रकाशित आँकड़ों से ली गई: %1</translation>
    </message>
    <message>
        <source>assumed: where no PD was taken, it equals the centres of each pair</source>
        <translation>मान लिया गया: जहाँ PD नहीं ली गई, वह हर जोड़ी के केंद्रों के बराबर है</translation>
    </message>
    <message>
        <source>assumed: objective readings are final, and a prescriber is named</source>
        <translation>मान लिया गया: वस्तुनिष्ठ माप अंतिम हैं, और लिखने वाले का नाम है</translation>
    </message>
    <message>
        <source>assumed: an unrecorded vertex distance is that of the stock</source>
        <translation>मान लिया गया: न लिखी गई वर्टेक्स दूरी भंडार की ही है</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>the PD of each eye</source>
        <translation>हर आँख की पीडी</translation>
    </message>
    <message>
        <source>the heights in the chosen frame</source>
        <translation>चुने फ़्रेम में ऊँचाइयाँ</translation>
    </message>
    <message>
        <source>the vertex distance of the refraction</source>
        <translation>जाँच के समय की वर्टेक्स दूरी</translation>
    </message>
    <message>
        <source>the frame</source>
        <translation>फ़्रेम</translation>
    </message>
    <message>
        <source>the prescriber&apos;s name, for a child</source>
        <translation>चश्मा लिखने वाले का नाम, बच्चे के लिए</translation>
    </message>
    <message>
        <source>single vision for %1 mm: whole power, nothing to be added</source>
        <translation>%1 मिमी के लिए एकल दृष्टि: पूरी पावर, कुछ नहीं जोड़ना</translation>
    </message>
    <message>
        <source>centration computed from the distance PD, not measured</source>
        <translation>केंद्र दूर की पीडी से निकाला गया, नापा नहीं गया</translation>
    </message>
    <message>
        <source>each eye&apos;s PD is half of the binocular one</source>
        <translation>हर आँख की पीडी दोनों की पीडी की आधी है</translation>
    </message>
    <message>
        <source>balance lens: as its fellow, for looks and weight</source>
        <translation>संतुलन लेंस: दूसरे जैसा, रूप और वज़न के लिए</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses are advised</source>
        <translation>एक ही आँख देखती है: चोट सहने वाले लेंस की सलाह</translation>
    </message>
    <message>
        <source>for a child: impact-resistant lenses are advised</source>
        <translation>बच्चे के लिए: चोट सहने वाले लेंस की सलाह</translation>
    </message>
    <message>
        <source>prism as prescribed, each eye its own</source>
        <translation>प्रिज़्म जैसा लिखा है, हर आँख का अपना</translation>
    </message>
    <message>
        <source>refracted at a vertex distance of %1 mm</source>
        <translation>%1 मिमी वर्टेक्स दूरी पर जाँचा गया</translation>
    </message>
    <message>
        <source>from an objective reading only</source>
        <translation>केवल मशीन की रीडिंग से</translation>
    </message>
    <message>
        <source>near glasses need an addition, or a near power found by trial</source>
        <translation>पास के चश्मे के लिए ऐड चाहिए, या आज़माकर मिली पास की पावर</translation>
    </message>
    <message>
        <source>this purpose needs an addition, or a near power found by trial</source>
        <translation>इस उद्देश्य के लिए ऐड चाहिए, या आज़माकर मिली पास की पावर</translation>
    </message>
    <message>
        <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
        <translation>पूछकर की गई जाँच: केवल मशीन की रीडिंग से बच्चे को चश्मा कभी नहीं दिया जाता</translation>
    </message>
    <message>
        <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
        <translation>35 साल से कम में ऐड की पुष्टि चाहिए: उसके साथ पास की दृष्टि, या आज़माकर मिली पास की पावर</translation>
    </message>
    <message>
        <source>small error and 6/9 or better without glasses</source>
        <translation>थोड़ा दोष और बिना चश्मे 6/9 या बेहतर</translation>
    </message>
    <message>
        <source>glasses gain the better eye less than two lines</source>
        <translation>चश्मे से बेहतर आँख को दो पंक्ति से कम लाभ</translation>
    </message>
    <message>
        <source>reads without spectacles</source>
        <translation>बिना चश्मे पढ़ते हैं</translation>
    </message>
    <message>
        <source>reads N6 without spectacles</source>
        <translation>बिना चश्मे N6 पढ़ते हैं</translation>
    </message>
    <message>
        <source>the own pair still fits: a spare only</source>
        <translation>अपना चश्मा अब भी ठीक बैठता है: केवल अतिरिक्त</translation>
    </message>
    <message>
        <source>the PD: measure it</source>
        <translation>पीडी: नापें</translation>
    </message>
    <message>
        <source>the vertex distance of this prescription: measure it</source>
        <translation>इस नुस्ख़े की वर्टेक्स दूरी: नापें</translation>
    </message>
    <message>
        <source>none left of %1</source>
        <translation>%1 में से कुछ नहीं बचा</translation>
    </message>
    <message>
        <source>nothing in the box for this purpose</source>
        <translation>इस उद्देश्य के लिए डिब्बे में कुछ नहीं</translation>
    </message>
    <message>
        <source>try %1 and type the acuity with it</source>
        <translation>%1 पहनाकर देखें और उसके साथ दृष्टि लिखें</translation>
    </message>
    <message>
        <source>a rules profile named %1</source>
        <translation>%1 नाम की नियमावली</translation>
    </message>
    <message>
        <source>a final prescription for at least one eye</source>
        <translation>कम से कम एक आँख का अंतिम नुस्ख़ा</translation>
    </message>
    <message>
        <source>cylinder left over</source>
        <translation>बचा सिलिंडर</translation>
    </message>
    <message>
        <source>difference between the eyes&apos; needs</source>
        <translation>आँखों की ज़रूरत का अंतर</translation>
    </message>
    <message>
        <source>size of the power</source>
        <translation>पावर की मात्रा</translation>
    </message>
    <message>
        <source>blur strength</source>
        <translation>धुंधलापन</translation>
    </message>
    <message>
        <source>too much plus</source>
        <translation>अधिक प्लस</translation>
    </message>
    <message>
        <source>too much minus or too little plus</source>
        <translation>अधिक माइनस या कम प्लस</translation>
    </message>
    <message>
        <source>difference between the two lenses</source>
        <translation>दोनों लेंसों का अंतर</translation>
    </message>
    <message>
        <source>balance between the eyes</source>
        <translation>आँखों का संतुलन</translation>
    </message>
    <message>
        <source>cylinder of the lens beyond the need</source>
        <translation>ज़रूरत से अधिक सिलिंडर</translation>
    </message>
    <message>
        <source>axis off</source>
        <translation>धुरी का फ़र्क</translation>
    </message>
    <message>
        <source>horizontal prism</source>
        <translation>आड़ा प्रिज़्म</translation>
    </message>
    <message>
        <source>vertical prism</source>
        <translation>खड़ा प्रिज़्म</translation>
    </message>
    <message>
        <source>centres against PD</source>
        <translation>पीडी से केंद्रों का फ़र्क</translation>
    </message>
    <message>
        <source>vertical imbalance at the reading level</source>
        <translation>पढ़ने के स्तर पर खड़ा असंतुलन</translation>
    </message>
    <message>
        <source>frame size class</source>
        <translation>फ़्रेम का आकार</translation>
    </message>
    <message>
        <source>blur strength at near</source>
        <translation>पास में धुंधलापन</translation>
    </message>
    <message>
        <source>near power too strong</source>
        <translation>पास की पावर अधिक</translation>
    </message>
    <message>
        <source>near power too weak</source>
        <translation>पास की पावर कम</translation>
    </message>
    <message>
        <source>sphere off</source>
        <translation>स्फ़ियर का फ़र्क</translation>
    </message>
    <message>
        <source>cylinder off</source>
        <translation>सिलिंडर का फ़र्क</translation>
    </message>
    <message>
        <source>axis against the prescription</source>
        <translation>नुस्ख़े से धुरी का फ़र्क</translation>
    </message>
    <message>
        <source>acuity with the mean sphere</source>
        <translation>औसत स्फ़ियर के साथ दृष्टि</translation>
    </message>
    <message>
        <source>acuity with this pair</source>
        <translation>इस चश्मे के साथ दृष्टि</translation>
    </message>
    <message>
        <source>cylinder left over %1 D, limit %2 D</source>
        <translation>बचा सिलिंडर %1 D, सीमा %2 D</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D, limit %2 D for one power in both lenses</source>
        <translation>आँखों में %1 D का अंतर, दोनों लेंसों में एक पावर की सीमा %2 D</translation>
    </message>
    <message>
        <source>power %1 D, limit %2 D</source>
        <translation>पावर %1 D, सीमा %2 D</translation>
    </message>
    <message>
        <source>blur strength %1 D, limit %2 D</source>
        <translation>धुंधलापन %1 D, सीमा %2 D</translation>
    </message>
    <message>
        <source>%1 D too much plus, limit %2 D</source>
        <translation>%1 D अधिक प्लस, सीमा %2 D</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus, limit %2 D</source>
        <translation>%1 D अधिक माइनस या कम प्लस, सीमा %2 D</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D, limit %2 D</source>
        <translation>दोनों लेंसों में %1 D का अंतर, सीमा %2 D</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other, limit %2 D</source>
        <translation>एक आँख दूसरी से %1 D अलग, सीमा %2 D</translation>
    </message>
    <message>
        <source>axis off by %1 degrees, limit %2</source>
        <translation>धुरी में %1 अंश का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>horizontal prism %1, limit %2</source>
        <translation>आड़ा प्रिज़्म %1, सीमा %2</translation>
    </message>
    <message>
        <source>vertical prism %1, limit %2</source>
        <translation>खड़ा प्रिज़्म %1, सीमा %2</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD, limit %2 mm</source>
        <translation>केंद्र पीडी से %1 मिमी दूर, सीमा %2 मिमी</translation>
    </message>
    <message>
        <source>above %1 D the vertex distance must be recorded</source>
        <translation>%1 D से ऊपर वर्टेक्स दूरी लिखी होनी चाहिए</translation>
    </message>
    <message>
        <source>%1 is not under 16; print the note for the person instead</source>
        <translation>%1 की उम्र 16 से कम नहीं है; इसकी जगह व्यक्ति के लिए पर्ची छापें</translation>
    </message>
    <message>
        <source>this person has no camp code; give one before anything is printed</source>
        <translation>इस व्यक्ति का शिविर कोड नहीं है; कुछ छापने से पहले कोड दें</translation>
    </message>
    <message>
        <source>nothing of %1 asks for a referral; there is no letter to print</source>
        <translation>%1 में रेफ़रल का कोई कारण नहीं है; छापने के लिए पत्र नहीं है</translation>
    </message>
    <message>
        <source>a label of this size does not hold its text; choose a larger one with --label-size, or a shorter name: %1</source>
        <translation>इस आकार के लेबल में लिखा पूरा नहीं आता; --label-size से बड़ा लेबल चुनें, या छोटा नाम रखें: %1</translation>
    </message>
    <message>
        <source>there is no printer %1, and no other is set up here; write a PDF with --output and print it where there is one</source>
        <translation>प्रिंटर %1 नहीं है, और यहाँ कोई दूसरा भी नहीं लगा; --output से PDF बनाएँ और जहाँ प्रिंटर हो वहाँ छापें</translation>
    </message>
    <message>
        <source>there is no printer %1; there are %2</source>
        <translation>प्रिंटर %1 नहीं है; ये हैं: %2</translation>
    </message>
    <message>
        <source>the printer %1 does not take the paper</source>
        <translation>प्रिंटर %1 यह काग़ज़ नहीं लेता</translation>
    </message>
    <message>
        <source>printing was stopped</source>
        <translation>छपाई रोक दी गई</translation>
    </message>
    <message>
        <source>no font here has the script of %1; install the package %2 and print again</source>
        <translation>यहाँ किसी फ़ॉन्ट में %1 की लिपि नहीं है; पैकेज %2 लगाएँ और फिर छापें</translation>
    </message>
    <message>
        <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
        <translation>%1 में %2 से कम दृष्टि जाती है: दोनों आँखों में %3, उसमें %4 logMAR</translation>
    </message>
    <message>
        <source>%1 is within the limits, or may be tried; %2 is outside one</source>
        <translation>%1 सीमा के भीतर है, या पहनाकर देखा जा सकता है; %2 किसी सीमा से बाहर है</translation>
    </message>
    <message>
        <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
        <translation>%1 ऐसे ही स्वीकार्य है; %2 परीक्षण पर है, जब तक उसके साथ दृष्टि न लिखी जाए</translation>
    </message>
    <message>
        <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
        <translation>दृष्टि बराबर; %1 में %2 से कम सावधानियाँ हैं: %3, उसमें %4</translation>
    </message>
    <message>
        <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
        <translation>दृष्टि और सावधानियाँ बराबर; लोग जिस ओर की ग़लती नापसंद करते हैं, वह %1 में %2 से कम आँखों में है: %3, उसमें %4</translation>
    </message>
    <message>
        <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
        <translation>अब तक बराबर; %1 आँखों को %2 से बेहतर संतुलन में रखता है: अंतर %3, उसमें %4 D</translation>
    </message>
    <message>
        <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
        <translation>अब तक बराबर; %1 में %2 से कम आड़ा प्रिज़्म है: %3, उसमें %4 प्रिज़्म डायोप्टर</translation>
    </message>
    <message>
        <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
        <translation>अब तक बराबर; पास में बेस इन (%1) बेस आउट (%2) से पहले आता है</translation>
    </message>
    <message>
        <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
        <translation>अब तक बराबर; %1 का फ़्रेम चाहे गए आकार पर %2 से बेहतर बैठता है: फ़र्क %3, उसमें %4 दर्जे</translation>
    </message>
    <message>
        <source>equal so far; %1 is less scarce in the box than %2</source>
        <translation>अब तक बराबर; बक्से में %1 की कमी %2 से कम है</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
        <translation>हर कसौटी पर बराबर; %1 में %2 से कम नग लगते हैं: %3, उसमें %4</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 comes before %2 by name</source>
        <translation>हर कसौटी पर बराबर; नाम के क्रम में %1 %2 से पहले आता है</translation>
    </message>
    <message>
        <source>%1 and %2 are the same</source>
        <translation>%1 और %2 एक ही हैं</translation>
    </message>
    <message>
        <source>a sphere would leave less cylinder than this lens does</source>
        <translation>केवल स्फ़ियर इस लेंस से कम सिलिंडर बाकी छोड़ेगा</translation>
    </message>
    <message>
        <source>prism by decentration is the prescriber&apos;s decision</source>
        <translation>केंद्र खिसकाकर प्रिज़्म देना चश्मा लिखने वाले का निर्णय है</translation>
    </message>
    <message>
        <source>PD not taken: judged at the worst end of what is plausible</source>
        <translation>पीडी नहीं नापी: जो हो सकती है उसमें सबसे बुरी मानकर जाँचा</translation>
    </message>
    <message>
        <source>the centres of this pair are assumed, not measured</source>
        <translation>इस चश्मे के केंद्र माने गए हैं, नापे नहीं</translation>
    </message>
    <message>
        <source>heights of the centres not measured</source>
        <translation>केंद्रों की ऊँचाई नहीं नापी</translation>
    </message>
    <message>
        <source>%1 D of cylinder left over</source>
        <translation>%1 D सिलिंडर बाकी</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D</source>
        <translation>आँखों में %1 D का अंतर</translation>
    </message>
    <message>
        <source>high power: %1 D</source>
        <translation>तेज़ पावर: %1 D</translation>
    </message>
    <message>
        <source>blur strength %1 D</source>
        <translation>धुंधलापन %1 D</translation>
    </message>
    <message>
        <source>%1 D too much plus</source>
        <translation>%1 D अधिक प्लस</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus</source>
        <translation>%1 D अधिक माइनस या कम प्लस</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D</source>
        <translation>दोनों लेंसों में %1 D का अंतर</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other</source>
        <translation>एक आँख दूसरी से %1 D अलग</translation>
    </message>
    <message>
        <source>the lens has %1 D more cylinder than needed, limit %2 D</source>
        <translation>लेंस में ज़रूरत से %1 D अधिक सिलिंडर, सीमा %2 D</translation>
    </message>
    <message>
        <source>%1 D more cylinder than needed</source>
        <translation>ज़रूरत से %1 D अधिक सिलिंडर</translation>
    </message>
    <message>
        <source>axis off by %1 degrees</source>
        <translation>धुरी में %1 अंश का फ़र्क</translation>
    </message>
    <message>
        <source>horizontal prism %1</source>
        <translation>आड़ा प्रिज़्म %1</translation>
    </message>
    <message>
        <source>vertical prism %1</source>
        <translation>खड़ा प्रिज़्म %1</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD</source>
        <translation>केंद्र पीडी से %1 मिमी दूर</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level, limit %2</source>
        <translation>पढ़ने के स्तर पर खड़ा असंतुलन %1, सीमा %2</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level</source>
        <translation>पढ़ने के स्तर पर खड़ा असंतुलन %1</translation>
    </message>
    <message>
        <source>frame size off by %1 class, limit %2</source>
        <translation>फ़्रेम के आकार में %1 दर्जे का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>frame size off by %1 class</source>
        <translation>फ़्रेम के आकार में %1 दर्जे का फ़र्क</translation>
    </message>
    <message>
        <source>blur strength at near %1 D, limit %2 D</source>
        <translation>पास में धुंधलापन %1 D, सीमा %2 D</translation>
    </message>
    <message>
        <source>blur strength at near %1 D</source>
        <translation>पास में धुंधलापन %1 D</translation>
    </message>
    <message>
        <source>near power %1 D too strong, limit %2 D</source>
        <translation>पास की पावर %1 D अधिक, सीमा %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too strong</source>
        <translation>पास की पावर %1 D अधिक</translation>
    </message>
    <message>
        <source>near power %1 D too weak, limit %2 D</source>
        <translation>पास की पावर %1 D कम, सीमा %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too weak</source>
        <translation>पास की पावर %1 D कम</translation>
    </message>
    <message>
        <source>sphere off by %1 D, limit %2 D</source>
        <translation>स्फ़ियर में %1 D का फ़र्क, सीमा %2 D</translation>
    </message>
    <message>
        <source>sphere off by %1 D</source>
        <translation>स्फ़ियर में %1 D का फ़र्क</translation>
    </message>
    <message>
        <source>cylinder off by %1 D, limit %2 D</source>
        <translation>सिलिंडर में %1 D का फ़र्क, सीमा %2 D</translation>
    </message>
    <message>
        <source>cylinder off by %1 D</source>
        <translation>सिलिंडर में %1 D का फ़र्क</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription, limit %2</source>
        <translation>धुरी नुस्ख़े से %1 अंश अलग, सीमा %2</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription</source>
        <translation>धुरी नुस्ख़े से %1 अंश अलग</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR below the full correction, limit %2</source>
        <translation>औसत स्फ़ियर के साथ दृष्टि पूरे नुस्ख़े से %1 logMAR कम, सीमा %2</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR lower</source>
        <translation>औसत स्फ़ियर के साथ दृष्टि %1 logMAR कम</translation>
    </message>
    <message>
        <source>acuity with this pair is %1 logMAR beyond what is asked, limit %2</source>
        <translation>इस चश्मे के साथ दृष्टि चाही गई से %1 logMAR कम, सीमा %2</translation>
    </message>
    <message>
        <source>tried: acuity %1 logMAR short</source>
        <translation>पहनाकर देखा: दृष्टि %1 logMAR कम</translation>
    </message>
    <message>
        <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
        <translation>असली फ़र्क के अपनी सीमा में होने की संभावना %1 % है: रीडिंग दोबारा लें</translation>
    </message>
    <message>
        <source>sudden loss of sight: eye clinic the same day</source>
        <translation>अचानक दिखना बंद: उसी दिन नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>painful eye: eye clinic the same day</source>
        <translation>आँख में दर्द: उसी दिन नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>red eye: eye clinic the same day</source>
        <translation>लाल आँख: उसी दिन नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>new flashes or floaters: eye clinic the same day</source>
        <translation>नई चमक या तैरते धब्बे: उसी दिन नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>double vision: eye clinic the same day</source>
        <translation>दोहरा दिखना: उसी दिन नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>white pupil: eye clinic the same day</source>
        <translation>सफ़ेद पुतली: उसी दिन नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>a child&apos;s squint: refer before glasses are given</source>
        <translation>बच्चे का भेंगापन: चश्मा देने से पहले रेफ़र करें</translation>
    </message>
    <message>
        <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
        <translation>बूँदों के साथ जाँच माँगी गई है: चश्मा देने से पहले रेफ़र करें</translation>
    </message>
    <message>
        <source>lines look bent or broken: eye clinic soon</source>
        <translation>रेखाएँ टेढ़ी या टूटी दिखती हैं: जल्दी नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>part of the field of view is missing: eye clinic soon</source>
        <translation>देखने के दायरे का एक भाग नहीं दिखता: जल्दी नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>halos around lights: eye clinic soon</source>
        <translation>रोशनी के चारों ओर घेरे: जल्दी नेत्र चिकित्सालय</translation>
    </message>
    <message>
        <source>does not reach 6/9 in each eye with the final prescription</source>
        <translation>अंतिम नुस्ख़े से हर आँख में 6/9 तक नहीं पहुँचते</translation>
    </message>
    <message>
        <source>presents worse than 6/60 in an eye, even if glasses help</source>
        <translation>आए तब एक आँख में 6/60 से कम, चाहे चश्मे से लाभ हो</translation>
    </message>
    <message>
        <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
        <translation>बच्चा, +3.50 D या अधिक, या 1.50 D या अधिक सिलिंडर</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.50 D or more</source>
        <translation>8 साल से कम और आँखों में 1.50 D या अधिक का अंतर</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.00 D or more</source>
        <translation>8 साल से कम और आँखों में 1.00 D या अधिक का अंतर</translation>
    </message>
    <message>
        <source>mean sphere beyond 6.00 D</source>
        <translation>औसत स्फ़ियर 6.00 D से अधिक</translation>
    </message>
    <message>
        <source>may be without its lens (aphakia): vertex distance needed</source>
        <translation>आँख में लेंस न हो, ऐसा हो सकता है (अफ़ेकिया): वर्टेक्स दूरी चाहिए</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
        <translation>सबसे अच्छे नुस्ख़े से भी 6/12 से कम, और पिनहोल से लाभ नहीं</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription; pinhole not taken</source>
        <translation>सबसे अच्छे नुस्ख़े से भी 6/12 से कम; पिनहोल नहीं लिया गया</translation>
    </message>
    <message>
        <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
        <translation>पिनहोल से अंतिम नुस्ख़े से दो या अधिक पंक्तियाँ बेहतर दिखता है: फिर जाँच करें</translation>
    </message>
    <message>
        <source>objective reading and final prescription are %1 D apart in mean sphere</source>
        <translation>मशीन की रीडिंग और अंतिम नुस्ख़े के औसत स्फ़ियर में %1 D का अंतर</translation>
    </message>
    <message>
        <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
        <translation>अंतिम नुस्ख़े के छहों अंक मशीन की रीडिंग जैसे ही हैं: क्या पूछकर सुधारा गया?</translation>
    </message>
    <message>
        <source>under 16: the prescriber&apos;s name stays with the pair, and the guardian is told</source>
        <translation>16 से कम: चश्मा लिखने वाले का नाम चश्मे के साथ रहता है, और अभिभावक को बताया जाता है</translation>
    </message>
    <message>
        <source>age not recorded: the strictest limits that could apply are used</source>
        <translation>उम्र नहीं लिखी: जो सबसे कड़ी सीमाएँ लग सकती हैं वे लगीं</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
        <translation>एक ही आँख देखती है: चोट सहने वाले लेंस और बचाव पहनने की सलाह</translation>
    </message>
    <message>
        <source>an objective reading only: a subjective refraction should follow</source>
        <translation>केवल मशीन की रीडिंग: इसके बाद पूछकर जाँच हो</translation>
    </message>
    <message>
        <source>the prescription is %1 months old</source>
        <translation>नुस्ख़ा %1 महीने पुराना है</translation>
    </message>
    <message>
        <source>symptoms recorded: %1</source>
        <translation>लिखे गए लक्षण: %1</translation>
    </message>
    <message>
        <source>PD not taken</source>
        <translation>पीडी नहीं नापी</translation>
    </message>
    <message>
        <source>near PD computed from the distance PD, not measured</source>
        <translation>पास की पीडी दूर की पीडी से निकाली गई, नापी नहीं</translation>
    </message>
    <message>
        <source>an eye with a lens implant: additions differ between the eyes</source>
        <translation>आँख में लगा लेंस है: दोनों आँखों के ऐड अलग होते हैं</translation>
    </message>
    <message>
        <source>above 4.00 D the vertex distance matters: record it</source>
        <translation>4.00 D से ऊपर वर्टेक्स दूरी का असर होता है: उसे लिखें</translation>
    </message>
    <message>
        <source>the digits %1 do not go together: the last would be %2, not %3; scan again, or type what stands below the bars</source>
        <translation>अंक %1 आपस में मेल नहीं खाते: आख़िरी %2 होता, %3 नहीं; फिर स्कैन करें, या धारियों के नीचे लिखा टाइप करें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a code; write its thirteen digits (twelve take a 0 before them), or leave the code out</source>
        <translation>&quot;%1&quot; कोई कोड नहीं है; इसके तेरह अंक लिखें (बारह हों तो पहले 0 लगता है), या कोड छोड़ दें</translation>
    </message>
    <message>
        <source>there is no line %1 in this camp</source>
        <translation>इस शिविर में पंक्ति %1 नहीं है</translation>
    </message>
    <message>
        <source>if the prescriber marks the left eye balance, %1 would fit</source>
        <translation>यदि चश्मा लिखने वाला बाईं आँख को संतुलन (balance) लिखे, तो %1 ठीक बैठेगा</translation>
    </message>
    <message>
        <source>if the prescriber marks the right eye balance, %1 would fit</source>
        <translation>यदि चश्मा लिखने वाला दाईं आँख को संतुलन (balance) लिखे, तो %1 ठीक बैठेगा</translation>
    </message>
    <message>
        <source>%1 is used: clean it and read its power before it is given</source>
        <translation>%1 पहले पहना हुआ है: देने से पहले साफ़ करें और पावर पढ़ें</translation>
    </message>
    <message>
        <source>%1 fits</source>
        <translation>%1 ठीक बैठता है</translation>
    </message>
    <message>
        <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
        <translation>65 साल से ऊपर एक बार में %1 D का बदलाव बहुत है: गिरने का डर; चश्मा लिखने वाले से पूछें</translation>
    </message>
    <message>
        <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
        <translation>अपने चश्मे से %1 D अलग: यदि यह कुछ महीनों में हुआ, तो नेत्र चिकित्सालय कारण देखे</translation>
    </message>
    <message>
        <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
        <translation>65 साल से ऊपर 10 अंश से अधिक घूमी तिरछी धुरी की आदत कठिन है; चश्मा लिखने वाले से पूछें</translation>
    </message>
    <message>
        <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
        <translation>ऐड %1 इस उम्र की हर तालिका से 0.75 D से अधिक दूर है: क्या वह %2 मिमी पर नापा गया?</translation>
    </message>
    <message>
        <source>does not read N8 with the near correction: see where the rest is lost</source>
        <translation>पास के नंबर से N8 नहीं पढ़ते: देखें बाकी दृष्टि कहाँ जाती है</translation>
    </message>
    <message>
        <source>half the addition is used: no distance was stated for this work</source>
        <translation>आधा ऐड लिया गया: इस काम की दूरी नहीं बताई गई</translation>
    </message>
    <message>
        <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
        <translation>इस उद्देश्य के लिए अपना चश्मा सीमा के भीतर है: शायद केवल अतिरिक्त</translation>
    </message>
    <message>
        <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
        <translation>दूरदृष्टि दोष वाला बच्चा, बिना बूँदों के: रीडिंग लगभग 3 D और छिपा सकती है; निर्णय चश्मा लिखने वाले का</translation>
    </message>
    <message>
        <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
        <translation>बच्चा, बिना बूँदों के: ऐसी रीडिंग निकट दृष्टि दोष में लगभग 0.4 D माइनस की ओर होती है, बाकी में और अधिक</translation>
    </message>
    <message>
        <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
        <translation>8 साल से कम और निकट दृष्टि दोष 3.00 D से अधिक: एम्ब्लियोपिया का ख़तरा</translation>
    </message>
    <message>
        <source>a child&apos;s eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
        <translation>बच्चे की आँखों में प्लस की ओर 1.00 D या अधिक का अंतर: एम्ब्लियोपिया का ख़तरा</translation>
    </message>
    <message>
        <source>a child&apos;s cylinders differ by 2.00 D or more: at risk of amblyopia</source>
        <translation>बच्चे के सिलिंडरों में 2.00 D या अधिक का अंतर: एम्ब्लियोपिया का ख़तरा</translation>
    </message>
    <message>
        <source>would need better acuity with this very pair</source>
        <translation>इसी चश्मे के साथ बेहतर दृष्टि चाहिए होगी</translation>
    </message>
    <message>
        <source>would do once the vertex distance is recorded</source>
        <translation>वर्टेक्स दूरी लिखने पर चलेगा</translation>
    </message>
    <message>
        <source>would do if the PD, once measured, is near %1 mm</source>
        <translation>पीडी नापने पर %1 मिमी के पास निकले तो चलेगा</translation>
    </message>
    <message>
        <source>would do if the prescriber allows prism by decentration</source>
        <translation>यदि चश्मा लिखने वाला केंद्र खिसकाकर प्रिज़्म की अनुमति दे तो चलेगा</translation>
    </message>
    <message>
        <source>would do with centres %1 mm apart</source>
        <translation>केंद्र %1 मिमी की दूरी पर हों तो चलेगा</translation>
    </message>
    <message>
        <source>would do with both centres at the same height</source>
        <translation>दोनों केंद्र एक ऊँचाई पर हों तो चलेगा</translation>
    </message>
    <message>
        <source>would do with %1 in both lenses instead of %2</source>
        <translation>दोनों लेंसों में %2 की जगह %1 हो तो चलेगा</translation>
    </message>
    <message>
        <source>would do with %1 D in both lenses</source>
        <translation>दोनों लेंसों में %1 D हो तो चलेगा</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the right lens</source>
        <translation>दाएँ लेंस में स्फ़ियर %1 हो तो चलेगा</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the left lens</source>
        <translation>बाएँ लेंस में स्फ़ियर %1 हो तो चलेगा</translation>
    </message>
    <message>
        <source>would do with addition %1</source>
        <translation>ऐड %1 हो तो चलेगा</translation>
    </message>
    <message>
        <source>would do with a lens of its own for each eye: right %1, left %2</source>
        <translation>हर आँख का अपना लेंस हो तो चलेगा: दायाँ %1, बायाँ %2</translation>
    </message>
    <message>
        <source>would do with lenses made to the prescription, cylinder included</source>
        <translation>नुस्ख़े के अनुसार, सिलिंडर समेत बने लेंसों से चलेगा</translation>
    </message>
    <message>
        <source>the folder %1 for the sample cannot be made; check rights and free space</source>
        <translation>नमूने का फ़ोल्डर %1 नहीं बन सकता; अनुमति और ख़ाली जगह देखें</translation>
    </message>
    <message>
        <source>write both parts of the PD, right then left: 31/30.5</source>
        <translation>पीडी के दोनों भाग लिखें, दायाँ फिर बायाँ: 31/30.5</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation>फ़ोल्डर %1 नहीं बन सकता</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to print</source>
        <translation>%1 का नुस्ख़ा पूरा नहीं है; छापने के लिए ऑर्डर नहीं है</translation>
    </message>
    <message>
        <source>%1 does not wait in this table for that purpose, or stands in the list twice; take the row out</source>
        <translation>%1 इस तालिका में उस उद्देश्य के लिए प्रतीक्षा में नहीं है, या सूची में दो बार है; वह कतार हटा दें</translation>
    </message>
    <message>
        <source>there is no line %1 in this box</source>
        <translation>इस बक्से में पंक्ति %1 नहीं है</translation>
    </message>
    <message>
        <source>more people were told %1 than there are pieces of it; take a row out of the list</source>
        <translation>%1 जितने नग हैं उससे अधिक लोगों को बताया गया; सूची से एक कतार हटा दें</translation>
    </message>
    <message>
        <source>not drawn: counts under %1 are hidden on this page</source>
        <translation>नहीं बनाया गया: %1 से कम गिनतियाँ इस पन्ने पर छिपाई जाती हैं</translation>
    </message>
    <message>
        <source>there is no rules.yaml; the rules built in apply</source>
        <translation>rules.yaml नहीं है; प्रोग्राम के अपने नियम लागू हैं</translation>
    </message>
    <message>
        <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
        <translation>इस बही में पिछली बार दूसरी जगह लिखा गया था और यह केवल पढ़ने के लिए खुली है; यदि फ़ोल्डर हमेशा के लिए यहाँ आ गया है तो यह बताएँ, और दूसरी प्रति अब काम में न लें</translation>
    </message>
    <message>
        <source>this ledger had an older form and was brought up; as it was it stands in %1</source>
        <translation>यह बही पुराने रूप की थी और नए रूप में लाई गई; जैसी थी वैसी %1 में रखी है</translation>
    </message>
    <message>
        <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
        <translation>बही की प्रविष्टि %1 वैसी नहीं है जैसी लिखी गई थी: %2; फ़ोल्डर जैसा है वैसा रखें और उसे किसी प्रति से मिलाएँ</translation>
    </message>
    <message>
        <source>there is no ledger here yet</source>
        <translation>यहाँ अभी कोई बही नहीं है</translation>
    </message>
    <message>
        <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
        <translation>बही में प्रविष्टि है, पर stock.yaml ताज़ा नहीं हो सकी; अगली बार खोलने पर यह ठीक हो जाएगा</translation>
    </message>
    <message>
        <source>nothing that was handed over to %1 stands here; look at the code, or enter the look at the site that gave the pair</source>
        <translation>यहाँ %1 को दी गई कोई चीज़ दर्ज नहीं है; कोड देखें, या दोबारा देखने की प्रविष्टि वहाँ करें जहाँ चश्मा दिया गया</translation>
    </message>
    <message>
        <source>to be referred before any glasses are given</source>
        <translation>कोई भी चश्मा देने से पहले रेफ़र करना है</translation>
    </message>
    <message>
        <source>nothing is needed for this purpose</source>
        <translation>इस उद्देश्य के लिए कुछ नहीं चाहिए</translation>
    </message>
    <message>
        <source>these lines do not make a pair</source>
        <translation>इन पंक्तियों से चश्मा नहीं बनता</translation>
    </message>
    <message>
        <source>on trial: type the acuity with this pair first</source>
        <translation>परीक्षण पर: पहले इस चश्मे के साथ दृष्टि लिखें</translation>
    </message>
    <message>
        <source>an unequal pair: read each eye with the focimeter first</source>
        <translation>असमान चश्मा: पहले हर आँख फ़ोसीमीटर से पढ़ें</translation>
    </message>
    <message>
        <source>no pair chosen</source>
        <translation>कोई चश्मा नहीं चुना</translation>
    </message>
    <message>
        <source>stopped as asked; nothing was written</source>
        <translation>कहने पर रोका गया; कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>पंक्ति %1 में %2 मौजूद, %3 रोके और %4 क्वारंटीन में हैं, इसके लिए कम; कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>line %1 is not in the ledger of %2; nothing was written</source>
        <translation>पंक्ति %1 %2 की बही में नहीं है; कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>line %1 stands here by its name and by its code; write one row with the whole number</source>
        <translation>पंक्ति %1 यहाँ नाम से भी है और कोड से भी; पूरी संख्या के साथ एक ही कतार लिखें</translation>
    </message>
    <message>
        <source>there is no line %1 in stock.yaml of %2; add it there with on hand: 0, or mend the name</source>
        <translation>%2 की stock.yaml में पंक्ति %1 नहीं है; उसे वहाँ on hand: 0 के साथ जोड़ें, या नाम सुधारें</translation>
    </message>
    <message>
        <source>a count needs two persons; %1 cannot be both</source>
        <translation>गिनती में दो लोग चाहिए; %1 दोनों नहीं हो सकते</translation>
    </message>
    <message>
        <source>line %1: counted %2, the book says %3; say why, in the row or with --reason</source>
        <translation>पंक्ति %1: गिना %2, बही में %3; कारण बताएँ, कतार में या --reason से</translation>
    </message>
    <message>
        <source>line %1: %2 were sent, %3 arrived; the sender should know</source>
        <translation>पंक्ति %1: %2 भेजे गए, %3 पहुँचे; भेजने वाले को बताएँ</translation>
    </message>
    <message>
        <source>this order is “%1” already; take back its last step %2 first</source>
        <translation>यह ऑर्डर पहले से “%1” है; पहले इसका पिछला कदम %2 वापस लें</translation>
    </message>
    <message>
        <source>nothing that was received of lot %1 is available</source>
        <translation>खेप %1 से मिला कुछ भी उपलब्ध नहीं है</translation>
    </message>
    <message>
        <source>there is no entry %1 to take back</source>
        <translation>वापस लेने के लिए प्रविष्टि %1 नहीं है</translation>
    </message>
    <message>
        <source>this hand-over is of %1; a hand-over is taken back on its day only; if the pair came back, enter it as returned</source>
        <translation>यह वितरण %1 का है; वितरण उसी दिन ही वापस लिया जाता है; यदि चश्मा लौट आया है, तो उसे लौटाया हुआ लिखें</translation>
    </message>
    <message>
        <source>nothing was handed over to %1 today</source>
        <translation>आज %1 को कुछ नहीं दिया गया</translation>
    </message>
    <message>
        <source>%1 was given %2 pairs today; say which with --entry %3</source>
        <translation>आज %1 को %2 चश्मे दिए गए; --entry %3 से बताएँ कौन सा</translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation>ऑर्डर %1 नहीं है</translation>
    </message>
    <message>
        <source>this order is “%1”; “%2” cannot follow</source>
        <translation>यह ऑर्डर “%1” है; इसके बाद “%2” नहीं आ सकता</translation>
    </message>
    <message>
        <source>%1 has no open order</source>
        <translation>%1 का कोई खुला ऑर्डर नहीं है</translation>
    </message>
    <message>
        <source>%1 has %2 open orders; say which with --order %3</source>
        <translation>%1 के %2 खुले ऑर्डर हैं; --order %3 से बताएँ कौन सा</translation>
    </message>
    <message>
        <source>the file cannot be written: %1; check rights and free space</source>
        <translation>फ़ाइल लिखी नहीं जा सकती: %1; अनुमति और ख़ाली जगह देखें</translation>
    </message>
    <message>
        <source>something has this name already; name a place that is free</source>
        <translation>इस नाम से पहले ही कुछ है; ख़ाली जगह का नाम दें</translation>
    </message>
    <message>
        <source>this is the ledger of the camp itself; name another one</source>
        <translation>यह शिविर की अपनी बही है; दूसरी बताएँ</translation>
    </message>
    <message>
        <source>nothing in the box is better for this person</source>
        <translation>बक्से में इस व्यक्ति के लिए इससे बेहतर कुछ नहीं</translation>
    </message>
    <message>
        <source>loses no more than the best for this person; others need that one more</source>
        <translation>इस व्यक्ति को सबसे अच्छे से अधिक हानि नहीं; वह दूसरों को अधिक चाहिए</translation>
    </message>
    <message>
        <source>%1 was promised to %2 before</source>
        <translation>%1 का वादा पहले ही %2 से किया जा चुका है</translation>
    </message>
    <message>
        <source>%1 goes to %2, for whom nothing else will do</source>
        <translation>%1 %2 को जाता है, जिन्हें और कुछ नहीं चलेगा</translation>
    </message>
    <message>
        <source>%1 goes to %2, so that most are served and all together lose least</source>
        <translation>%1 %2 को जाता है, ताकि सबसे अधिक लोगों को मिले और कुल हानि सबसे कम हो</translation>
    </message>
    <message>
        <source>nothing that would do is left</source>
        <translation>जो चलता, उसमें से कुछ नहीं बचा</translation>
    </message>
    <message>
        <source>what would do goes to others</source>
        <translation>जो चलता, वह दूसरों को जाता है</translation>
    </message>
    <message>
        <source>what would do goes to %1</source>
        <translation>जो चलता, वह %1 को जाता है</translation>
    </message>
    <message>
        <source>told before, but none is left now</source>
        <translation>पहले बताया गया, पर अब कुछ नहीं बचा</translation>
    </message>
    <message>
        <source>told before; not planned again</source>
        <translation>पहले बताया गया; दोबारा योजना नहीं की गई</translation>
    </message>
    <message>
        <source>picked by hand: %1</source>
        <translation>हाथ से चुना: %1</translation>
    </message>
    <message>
        <source>no sample up to %1 tells these shares apart at this risk; allow a larger risk, or take shares that lie further apart</source>
        <translation>इस जोखिम पर %1 तक का कोई नमूना इन हिस्सों में फ़र्क नहीं कर सकता; बड़ा जोखिम मानें, या अधिक दूर के हिस्से लें</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its draw was taken back</source>
        <translation>इस बही में लॉट %1 नहीं निकाला गया; यह पर्ची दूसरे शिविर की है, या उसका निकालना वापस लिया गया</translation>
    </message>
    <message>
        <source>the results of this lot are in already, entry %1; to enter them anew take that one back first with `quarterstep record entered-in-error --entry`</source>
        <translation>इस लॉट के नतीजे पहले से हैं, प्रविष्टि %1; फिर से लिखने के लिए पहले उसे `quarterstep record entered-in-error --entry` से वापस लें</translation>
    </message>
    <message>
        <source>this row is of the lot %1, the first one of %2; enter each lot by itself</source>
        <translation>यह कतार लॉट %1 की है, पहली %2 की; हर लॉट अलग से लिखें</translation>
    </message>
    <message>
        <source>this lot has %1 rows, spares included; there is no row %2</source>
        <translation>इस लॉट में अतिरिक्त मिलाकर %1 कतारें हैं; कतार %2 नहीं है</translation>
    </message>
    <message>
        <source>nothing was handed over here in those days whose pair is recorded; there is nothing to draw from</source>
        <translation>उन दिनों यहाँ ऐसा कुछ नहीं दिया गया जिसका चश्मा अभिलेख में हो; निकालने के लिए कुछ नहीं है</translation>
    </message>
    <message>
        <source>the plan reads %1 pairs and only %2 were handed over; read all of them (--sample %2), or take more days into the lot</source>
        <translation>योजना में %1 चश्मे पढ़ने हैं और केवल %2 दिए गए; सब पढ़ें (--sample %2), या लॉट में अधिक दिन लें</translation>
    </message>
    <message>
        <source>no lot was drawn here yet; `quarterstep audit draw` does</source>
        <translation>यहाँ अभी कोई लॉट नहीं निकाला गया; `quarterstep audit draw` से निकलता है</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger</source>
        <translation>इस बही में लॉट %1 नहीं निकाला गया</translation>
    </message>
    <message>
        <source>no row of the worksheet is filled in</source>
        <translation>पर्ची की कोई कतार नहीं भरी है</translation>
    </message>
    <message>
        <source>the demand is %1 person; plan from more: nothing can be said of who comes next</source>
        <translation>माँग %1 व्यक्ति की है; अधिक लोगों से योजना बनाएँ: आगे कौन आएगा, इस पर कुछ नहीं कहा जा सकता</translation>
    </message>
    <message>
        <source>the budget is 0: nothing is bought; give --budget</source>
        <translation>बजट 0 है: कुछ नहीं ख़रीदा जाता; --budget दें</translation>
    </message>
    <message>
        <source>nobody of this demand can be served by any line on offer; nothing is bought</source>
        <translation>इस माँग में किसी को उपलब्ध किसी पंक्ति से नहीं दिया जा सकता; कुछ नहीं ख़रीदा जाता</translation>
    </message>
    <message>
        <source>no pack on offer is within the budget, the weight and the boxes; nothing is bought</source>
        <translation>कोई उपलब्ध पैक बजट, वज़न और बक्सों में नहीं आता; कुछ नहीं ख़रीदा जाता</translation>
    </message>
    <message>
        <source>what is on hand serves whoever can be served; nothing is bought</source>
        <translation>जिन्हें दिया जा सकता है, मौजूद माल से मिल जाता है; कुछ नहीं ख़रीदा जाता</translation>
    </message>
    <message>
        <source>the library for PINs cannot be used here</source>
        <translation>PIN की लाइब्रेरी यहाँ काम नहीं आ सकती</translation>
    </message>
    <message>
        <source>a PIN has %1 to %2 characters; nothing was written</source>
        <translation>PIN में %1 से %2 अक्षर होते हैं; कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>there is not enough memory to keep a PIN; close other programs</source>
        <translation>PIN रखने के लिए मेमोरी कम है; दूसरे प्रोग्राम बंद करें</translation>
    </message>
    <message>
        <source>nobody of this demand can be served from this box; no day was simulated</source>
        <translation>इस माँग में किसी को इस बक्से से नहीं दिया जा सकता; किसी दिन का अनुमान नहीं चलाया गया</translation>
    </message>
    <message>
        <source>after the colon stands how many lie in each bin, then centres, bin or round: write for example &quot;: 10 centres 62 bin A&quot;</source>
        <translation>कोलन के बाद हर खाने में कितने हैं, फिर centres, bin या round: जैसे लिखें &quot;: 10 centres 62 bin A&quot;</translation>
    </message>
    <message>
        <source>%1 is not a size in millimetres; write for example 62</source>
        <translation>%1 मिलीमीटर में आकार नहीं है; लिखें जैसे 62</translation>
    </message>
    <message>
        <source>a ready-made pair with a cylinder needs its axis; write for example -1.00 -0.50 x 90</source>
        <translation>सिलिंडर वाले तैयार चश्मे की धुरी चाहिए; लिखें जैसे -1.00 -0.50 x 90</translation>
    </message>
    <message>
        <source>from %1 to %2 is no whole number of steps of %3; write spheres and a step that meets the last one</source>
        <translation>%1 से %2 तक %3 के पूरे कदम नहीं बनते; ऐसे स्फ़ियर और कदम लिखें जो आख़िरी तक पहुँचें</translation>
    </message>
    <message>
        <source>%1 stands in an earlier tray already; put the counts together, or give the two different centres</source>
        <translation>%1 पहले की ट्रे में आ चुका है; गिनती जोड़ दें, या दोनों को अलग केंद्र दें</translation>
    </message>
    <message>
        <source>a frame is given by its lens and bridge in millimetres; write for example frame 44-18: 12</source>
        <translation>फ़्रेम लेंस और ब्रिज के मिलीमीटर से लिखा जाता है; जैसे frame 44-18: 12</translation>
    </message>
    <message>
        <source>a tray is written as powers, a colon and a count: for example &quot;near +1.00 to +3.50 by 0.50: 10&quot;</source>
        <translation>ट्रे ऐसे लिखी जाती है: पावर, कोलन और गिनती; जैसे &quot;near +1.00 to +3.50 by 0.50: 10&quot;</translation>
    </message>
    <message>
        <source>these trays make more than %1 lines of stock</source>
        <translation>इन ट्रे से स्टॉक की %1 से अधिक पंक्तियाँ बनती हैं</translation>
    </message>
    <message>
        <source>the camp has no name yet; give it one</source>
        <translation>शिविर का नाम अभी नहीं है; नाम दें</translation>
    </message>
    <message>
        <source>nothing is described yet; write a tray a line</source>
        <translation>अभी कुछ नहीं बताया गया; हर पंक्ति में एक ट्रे लिखें</translation>
    </message>
    <message>
        <source>this folder cannot be made: %1</source>
        <translation>यह फ़ोल्डर नहीं बन सकता: %1</translation>
    </message>
    <message>
        <source>this folder has a stock.yaml already; nothing was written: open the folder, or choose another one</source>
        <translation>इस फ़ोल्डर में stock.yaml पहले से है; कुछ लिखा नहीं गया: फ़ोल्डर खोलें, या दूसरा चुनें</translation>
    </message>
    <message>
        <source>%1 does not wait for that purpose</source>
        <translation>%1 उस उद्देश्य के लिए प्रतीक्षा में नहीं है</translation>
    </message>
    <message>
        <source>this box has no such lines any more</source>
        <translation>इस बक्से में अब ऐसी पंक्तियाँ नहीं हैं</translation>
    </message>
    <message>
        <source>say why another pair than the one planned</source>
        <translation>बताएँ कि योजना से अलग चश्मा क्यों</translation>
    </message>
    <message>
        <source>none is left, or what is left was promised to others</source>
        <translation>कुछ नहीं बचा, या जो बचा उसका वादा दूसरों से है</translation>
    </message>
    <message>
        <source>no mismatch, so there is no run between two of them to draw</source>
        <translation>कोई बेमेल नहीं, इसलिए दो के बीच बनाने को कोई सिलसिला नहीं</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; there is no run of good ones to draw</source>
        <translation>हर वितरण बेमेल है; बनाने को सही वितरणों का कोई सिलसिला नहीं</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; a p-chart has no limits then</source>
        <translation>हर वितरण बेमेल है; तब p-चार्ट की सीमाएँ नहीं होतीं</translation>
    </message>
    <message>
        <source>no mismatch; a p-chart has no limits then</source>
        <translation>कोई बेमेल नहीं; तब p-चार्ट की सीमाएँ नहीं होतीं</translation>
    </message>
    <message>
        <source>a p-chart compares groups over time, and there are not two yet</source>
        <translation>p-चार्ट समय के साथ समूहों की तुलना करता है, और अभी दो समूह नहीं हैं</translation>
    </message>
    <message>
        <source>%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could show at this share that things got better; look at the g-chart</source>
        <translation>%2 में से %1 समूहों में %3 से कम वितरण हैं, जिनसे इस हिस्से पर p-चार्ट सुधार दिखा सके; g-चार्ट देखें</translation>
    </message>
    <message>
        <source>%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart</source>
        <translation>%2 में से %1 समूहों में कोई बेमेल नहीं, यानी चौथाई या अधिक; g-चार्ट देखें</translation>
    </message>
    <message>
        <source>worn when seen</source>
        <translation>देखते समय पहना हुआ</translation>
    </message>
    <message>
        <source>carried, not worn when seen</source>
        <translation>साथ था, देखते समय पहना नहीं</translation>
    </message>
    <message>
        <source>left at home</source>
        <translation>घर पर छोड़ा</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>टूटा</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>खोया</translation>
    </message>
    <message>
        <source>not worn any more</source>
        <translation>अब नहीं पहनते</translation>
    </message>
    <message>
        <source>the person was not met</source>
        <translation>व्यक्ति नहीं मिला</translation>
    </message>
    <message>
        <source>after some weeks</source>
        <translation>कुछ सप्ताह बाद</translation>
    </message>
    <message>
        <source>after three to four months</source>
        <translation>तीन से चार महीने बाद</translation>
    </message>
    <message>
        <source>after six months</source>
        <translation>छह महीने बाद</translation>
    </message>
    <message>
        <source>the same person had a pair for %1 by entry %2 already</source>
        <translation>इसी व्यक्ति को %1 के लिए चश्मा प्रविष्टि %2 से पहले ही मिल चुका था</translation>
    </message>
    <message>
        <source>%1 entries were taken back at one place on one day</source>
        <translation>एक जगह एक दिन में %1 प्रविष्टियाँ वापस ली गईं</translation>
    </message>
    <message>
        <source>line %1: counted %2 against the book</source>
        <translation>पंक्ति %1: गिना %2, बही से अलग</translation>
    </message>
    <message>
        <source>line %1 was later put aside (%2); this pair was given before</source>
        <translation>पंक्ति %1 बाद में अलग रखी गई (%2); यह चश्मा उससे पहले दिया गया</translation>
    </message>
    <message>
        <source>the time of this entry is later than now</source>
        <translation>इस प्रविष्टि का समय अभी से आगे का है</translation>
    </message>
    <message>
        <source>entered as not collected</source>
        <translation>नहीं ले गए, ऐसा लिखा गया</translation>
    </message>
    <message>
        <source>a letter was to be written beside this hand-over; none is recorded</source>
        <translation>इस वितरण के साथ पत्र लिखना था; कोई दर्ज नहीं</translation>
    </message>
    <message>
        <source>checked and waiting for more than %1 days</source>
        <translation>जाँचा गया और %1 दिन से अधिक से प्रतीक्षा में</translation>
    </message>
    <message>
        <source>given until the order %1 comes, more than %2 days ago</source>
        <translation>ऑर्डर %1 आने तक के लिए दिया गया, %2 दिन से अधिक पहले</translation>
    </message>
    <message>
        <source>refused: %1 of %2 read failed, more than the %4 allowed among %3</source>
        <translation>अस्वीकृत: पढ़े गए %2 में से %1 ग़लत निकले, %3 में %4 की छूट से अधिक</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no more than the %4 allowed among %3</source>
        <translation>स्वीकृत: पढ़े गए %2 में से %1 ग़लत निकले; न पढ़े %5 भी ग़लत हों तो भी %3 में %4 की छूट से अधिक नहीं होंगे</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed, no more than the %4 allowed among %3</source>
        <translation>स्वीकृत: पढ़े गए %2 में से %1 ग़लत निकले, %3 में %4 की छूट से अधिक नहीं</translation>
    </message>
    <message>
        <source>open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read</source>
        <translation>खुला: पढ़े गए %2 में से %1 ग़लत निकले, %3 में %4 की छूट है; %5 चश्मे अभी पढ़ने हैं</translation>
    </message>
    <message>
        <source>this pair may be given only with the acuity read with it; none was recorded</source>
        <translation>यह चश्मा उसके साथ पढ़ी गई दृष्टि के बिना नहीं दिया जा सकता; कोई दर्ज नहीं थी</translation>
    </message>
    <message>
        <source>by the record nothing was needed for this purpose</source>
        <translation>अभिलेख के अनुसार इस उद्देश्य के लिए कुछ नहीं चाहिए था</translation>
    </message>
    <message>
        <source>the centres of this pair were assumed, not measured</source>
        <translation>इस चश्मे के केंद्र माने गए थे, नापे नहीं</translation>
    </message>
    <message>
        <source>the PD was not measured; prism is judged at its worst likely value</source>
        <translation>पीडी नहीं नापी गई; प्रिज़्म सबसे बुरे संभव मान पर जाँचा जाता है</translation>
    </message>
    <message>
        <source>the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths</source>
        <translation>प्रविष्टि में %1 है, दोबारा जाँचने पर %2; हानि %3 थी और %4 हज़ारवाँ भाग है</translation>
    </message>
    <message>
        <source>right eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>दाईं आँख: इस चश्मे से %1, अनुमान से %2 logMAR कम</translation>
    </message>
    <message>
        <source>left eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>बाईं आँख: इस चश्मे से %1, अनुमान से %2 logMAR कम</translation>
    </message>
    <message>
        <source>right eye: read %1, recorded %2</source>
        <translation>दाईं आँख: पढ़ा %1, अभिलेख %2</translation>
    </message>
    <message>
        <source>left eye: read %1, recorded %2</source>
        <translation>बाईं आँख: पढ़ा %1, अभिलेख %2</translation>
    </message>
    <message>
        <source>%1 was in the box (bin %2) and would have cost %3 logMAR less</source>
        <translation>%1 बक्से में था (खाना %2) और उससे %3 logMAR कम हानि होती</translation>
    </message>
    <message>
        <source>outside a limit, no reason given</source>
        <translation>सीमा से बाहर, कारण नहीं दिया</translation>
    </message>
    <message>
        <source>see the person again; read the pair with the focimeter</source>
        <translation>व्यक्ति को फिर देखें; चश्मा फ़ोसीमीटर से पढ़ें</translation>
    </message>
    <message>
        <source>outside a limit, with a reason</source>
        <translation>सीमा से बाहर, कारण के साथ</translation>
    </message>
    <message>
        <source>read the reasons together; where one repeats, change stock or rules</source>
        <translation>कारण साथ मिलकर पढ़ें; जहाँ कोई बार-बार आए, स्टॉक या नियम बदलें</translation>
    </message>
    <message>
        <source>a clearly better pair was in the box</source>
        <translation>साफ़ तौर पर बेहतर चश्मा बक्से में था</translation>
    </message>
    <message>
        <source>look at the bin named: is it reachable, labelled, in its place?</source>
        <translation>बताए गए खाने को देखें: क्या वह पहुँच में है, लेबल लगा है, अपनी जगह पर है?</translation>
    </message>
    <message>
        <source>the pair is off its label</source>
        <translation>चश्मा अपने लेबल से अलग है</translation>
    </message>
    <message>
        <source>quarantine the line, read ten pieces, tell the supplier</source>
        <translation>पंक्ति को अलग रखें (क्वारंटीन), दस नग पढ़ें, आपूर्तिकर्ता को बताएँ</translation>
    </message>
    <message>
        <source>acuity with the pair worse than predicted</source>
        <translation>चश्मे के साथ दृष्टि अनुमान से कम</translation>
    </message>
    <message>
        <source>refract again; where it repeats, look at the refraction of the day</source>
        <translation>फिर जाँच करें; जहाँ बार-बार हो, उस दिन की आँखों की जाँच को देखें</translation>
    </message>
    <message>
        <source>on trial, no acuity recorded</source>
        <translation>परीक्षण पर, दृष्टि दर्ज नहीं</translation>
    </message>
    <message>
        <source>call the person back and read the acuity with the pair</source>
        <translation>व्यक्ति को बुलाएँ और चश्मे के साथ दृष्टि नापें</translation>
    </message>
    <message>
        <source>nothing was needed by the record</source>
        <translation>अभिलेख के अनुसार कुछ नहीं चाहिए था</translation>
    </message>
    <message>
        <source>look at what is prescribed to whom; a pair not needed is one that somebody lacks</source>
        <translation>देखें किसे क्या लिखा जाता है; बेज़रूरत दिया चश्मा किसी और को कम पड़ता है</translation>
    </message>
    <message>
        <source>no check recorded</source>
        <translation>कोई जाँच दर्ज नहीं</translation>
    </message>
    <message>
        <source>record the four checks at hand-over; draw a sample of these for the bench</source>
        <translation>देते समय चारों जाँच लिखें; जाँच मेज़ के लिए इनमें से नमूना निकालें</translation>
    </message>
    <message>
        <source>PD or centres not measured</source>
        <translation>पीडी या केंद्र नहीं नापे</translation>
    </message>
    <message>
        <source>measure the PD of everybody and the centres of every line from 1.50 D up</source>
        <translation>सबकी पीडी नापें और 1.50 D से ऊपर की हर पंक्ति के केंद्र नापें</translation>
    </message>
    <message>
        <source>given from a line in quarantine</source>
        <translation>क्वारंटीन में रखी पंक्ति से दिया गया</translation>
    </message>
    <message>
        <source>read the pair with the focimeter, or exchange it</source>
        <translation>चश्मा फ़ोसीमीटर से पढ़ें, या बदल दें</translation>
    </message>
    <message>
        <source>a temporary pair never replaced</source>
        <translation>अस्थायी चश्मा कभी बदला नहीं गया</translation>
    </message>
    <message>
        <source>ask the laboratory for the order, and the person to come</source>
        <translation>प्रयोगशाला से ऑर्डर पूछें, और व्यक्ति को बुलाएँ</translation>
    </message>
    <message>
        <source>an order not collected</source>
        <translation>ऑर्डर नहीं ले जाया गया</translation>
    </message>
    <message>
        <source>send word to the person; bring the pair to the next visit</source>
        <translation>व्यक्ति को ख़बर भेजें; चश्मा अगले दौरे पर ले जाएँ</translation>
    </message>
    <message>
        <source>a letter of referral not written</source>
        <translation>रेफ़रल पत्र नहीं लिखा गया</translation>
    </message>
    <message>
        <source>write it now</source>
        <translation>अभी लिखें</translation>
    </message>
    <message>
        <source>handed over twice for one purpose</source>
        <translation>एक उद्देश्य के लिए दो बार दिया गया</translation>
    </message>
    <message>
        <source>count the line; where one piece is too many, take the second entry back</source>
        <translation>पंक्ति गिनें; जहाँ एक नग अधिक हो, दूसरी प्रविष्टि वापस लें</translation>
    </message>
    <message>
        <source>many corrections on one day</source>
        <translation>एक दिन में बहुत सुधार</translation>
    </message>
    <message>
        <source>ask what was difficult that day: light, queue, a new hand</source>
        <translation>पूछें उस दिन क्या कठिन था: रोशनी, कतार, नया साथी</translation>
    </message>
    <message>
        <source>a count differed from the book</source>
        <translation>गिनती बही से अलग थी</translation>
    </message>
    <message>
        <source>look for a line that differs the other way; it is likely beside it</source>
        <translation>दूसरी ओर के फ़र्क वाली पंक्ति खोजें; वह शायद इसके पास ही हो</translation>
    </message>
    <message>
        <source>the record disagrees with what was measured beside it</source>
        <translation>अभिलेख अपने साथ नापी गई बात से मेल नहीं खाता</translation>
    </message>
    <message>
        <source>have the card read again by somebody who has not seen the record</source>
        <translation>कार्ड किसी ऐसे से फिर पढ़वाएँ जिसने अभिलेख न देखा हो</translation>
    </message>
    <message>
        <source>judged again, the entry says something else</source>
        <translation>दोबारा जाँचने पर प्रविष्टि कुछ और कहती है</translation>
    </message>
    <message>
        <source>keep this ledger as it is and tell the makers of the program</source>
        <translation>यह बही जैसी है वैसी रखें और प्रोग्राम बनाने वालों को बताएँ</translation>
    </message>
    <message>
        <source>the rules of the time are missing</source>
        <translation>उस समय के नियम नहीं मिले</translation>
    </message>
    <message>
        <source>put the rules.yaml of that time into a copy of the camp and audit there</source>
        <translation>उस समय की rules.yaml शिविर की एक प्रति में रखें और वहाँ ऑडिट करें</translation>
    </message>
    <message>
        <source>the record is not there to judge by</source>
        <translation>जाँचने के लिए अभिलेख नहीं है</translation>
    </message>
    <message>
        <source>nothing: the person was forgotten, or the entry was written before records were kept</source>
        <translation>कुछ नहीं: व्यक्ति का ब्योरा मिटाया गया, या प्रविष्टि अभिलेख रखना शुरू होने से पहले की है</translation>
    </message>
    <message>
        <source>an entry from the future</source>
        <translation>आगे के समय की प्रविष्टि</translation>
    </message>
    <message>
        <source>set the clock of that station right</source>
        <translation>उस मशीन की घड़ी ठीक करें</translation>
    </message>
    <message>
        <source>neither power, fit, acuity nor instructions are recorded</source>
        <translation>पावर, बैठना, दृष्टि और समझाना, इनमें से कुछ दर्ज नहीं</translation>
    </message>
    <message>
        <source>the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml</source>
        <translation>हैश %1 वाले नियम (प्रोफ़ाइल %2) न बही में हैं न rules.yaml में</translation>
    </message>
    <message>
        <source>the pair as it was judged, or part of the prescription, is not recorded</source>
        <translation>जैसा चश्मा जाँचा गया था वह, या नुस्ख़े का कोई भाग, दर्ज नहीं</translation>
    </message>
    <message>
        <source>the prescription is not recorded or was forgotten</source>
        <translation>नुस्ख़ा दर्ज नहीं है या मिटाया गया</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it fits %2</source>
        <translation>दर्ज %1; साथ नापी गई बात %2 से मेल खाती है</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it does not fit</source>
        <translation>दर्ज %1; साथ नापी गई बात मेल नहीं खाती</translation>
    </message>
    <message>
        <source>meant as it is</source>
        <translation>जैसा है वैसा ही सोचा गया था</translation>
    </message>
    <message>
        <source>the sign of a sphere</source>
        <translation>स्फ़ियर का चिह्न</translation>
    </message>
    <message>
        <source>the sign of a cylinder</source>
        <translation>सिलिंडर का चिह्न</translation>
    </message>
    <message>
        <source>a transposition without the axis</source>
        <translation>बिना धुरी बदले ट्रांसपोज़िशन</translation>
    </message>
    <message>
        <source>a transposition without the sphere</source>
        <translation>बिना स्फ़ियर बदले ट्रांसपोज़िशन</translation>
    </message>
    <message>
        <source>an axis off by 90 degrees</source>
        <translation>धुरी में 90 अंश का फ़र्क</translation>
    </message>
    <message>
        <source>an axis read as its mirror image</source>
        <translation>धुरी उलटी (दर्पण जैसी) पढ़ी</translation>
    </message>
    <message>
        <source>digits of an axis</source>
        <translation>धुरी के अंक</translation>
    </message>
    <message>
        <source>sphere and cylinder exchanged</source>
        <translation>स्फ़ियर और सिलिंडर अदल-बदल</translation>
    </message>
    <message>
        <source>a decimal point in another place</source>
        <translation>दशमलव बिंदु दूसरी जगह</translation>
    </message>
    <message>
        <source>a power misread by a step or two</source>
        <translation>पावर एक-दो कदम ग़लत पढ़ी</translation>
    </message>
    <message>
        <source>the addition put on the distance power</source>
        <translation>ऐड दूर की पावर में जोड़ दिया</translation>
    </message>
    <message>
        <source>right and left exchanged in the record</source>
        <translation>अभिलेख में दायाँ और बायाँ अदल-बदल</translation>
    </message>
    <message>
        <source>the right eye written for the left as well</source>
        <translation>दाईं आँख का नंबर बाईं में भी लिख दिया</translation>
    </message>
    <message>
        <source>the prescription of the person before</source>
        <translation>पिछले व्यक्ति का नुस्ख़ा</translation>
    </message>
    <message>
        <source>the addition left out</source>
        <translation>ऐड छूट गया</translation>
    </message>
    <message>
        <source>the addition taken as the whole near power</source>
        <translation>ऐड को पास की पूरी पावर मान लिया</translation>
    </message>
    <message>
        <source>the PD of one eye recorded as that of both</source>
        <translation>एक आँख की पीडी दोनों की पीडी लिख दी</translation>
    </message>
    <message>
        <source>the near PD recorded as distance PD</source>
        <translation>पास की पीडी दूर की पीडी लिख दी</translation>
    </message>
    <message>
        <source>the record, in a way that is none of those listed</source>
        <translation>अभिलेख में चूक, जो सूची में नहीं है</translation>
    </message>
    <message>
        <source>a pair from a bin beside the one meant</source>
        <translation>सोचे गए के पास वाले खाने का चश्मा</translation>
    </message>
    <message>
        <source>the power meant, other centres or size</source>
        <translation>पावर वही, केंद्र या आकार दूसरे</translation>
    </message>
    <message>
        <source>picked by the sphere, the cylinder left out</source>
        <translation>स्फ़ियर से चुना, सिलिंडर छोड़ दिया</translation>
    </message>
    <message>
        <source>picked by sphere and whole cylinder</source>
        <translation>स्फ़ियर और पूरे सिलिंडर से चुना</translation>
    </message>
    <message>
        <source>picked by the sphere less half the cylinder</source>
        <translation>स्फ़ियर से आधा सिलिंडर घटाकर चुना</translation>
    </message>
    <message>
        <source>the pair for the person&apos;s other purpose</source>
        <translation>व्यक्ति के दूसरे उद्देश्य का चश्मा</translation>
    </message>
    <message>
        <source>the pairs of two persons exchanged</source>
        <translation>दो लोगों के चश्मे अदल-बदल</translation>
    </message>
    <message>
        <source>right and left lens exchanged</source>
        <translation>दायाँ और बायाँ लेंस अदल-बदल</translation>
    </message>
    <message>
        <source>a lens turned when it was mounted</source>
        <translation>लगाते समय लेंस घूम गया</translation>
    </message>
    <message>
        <source>a piece that lay in another line&apos;s bin</source>
        <translation>नग जो दूसरी पंक्ति के खाने में पड़ा था</translation>
    </message>
    <message>
        <source>another line recorded than given</source>
        <translation>दी गई से अलग पंक्ति लिखी गई</translation>
    </message>
    <message>
        <source>the piece or its lot off the label</source>
        <translation>नग या उसकी खेप लेबल से अलग</translation>
    </message>
    <message>
        <source>one pair recorded twice</source>
        <translation>एक चश्मा दो बार दर्ज</translation>
    </message>
    <message>
        <source>another pair than the one meant, in a way not listed</source>
        <translation>सोचे गए से अलग चश्मा, जो सूची में नहीं है</translation>
    </message>
    <message>
        <source>record and pair meant as they are</source>
        <translation>अभिलेख और चश्मा जैसे हैं वैसे ही सोचे गए थे</translation>
    </message>
    <message>
        <source>entry %1 records the same pair for the same purpose</source>
        <translation>प्रविष्टि %1 में वही चश्मा उसी उद्देश्य के लिए दर्ज है</translation>
    </message>
    <message>
        <source>recorded %1; what was read fits %2</source>
        <translation>दर्ज %1; जो पढ़ा गया वह %2 से मेल खाता है</translation>
    </message>
    <message>
        <source>what was read fits %1; the record says %2</source>
        <translation>जो पढ़ा गया वह %1 से मेल खाता है; अभिलेख में %2 है</translation>
    </message>
    <message>
        <source>%1 may have been given and another line recorded</source>
        <translation>शायद %1 दिया गया और दूसरी पंक्ति लिखी गई</translation>
    </message>
    <message>
        <source>line %1 may be off its label</source>
        <translation>पंक्ति %1 शायद अपने लेबल से अलग है</translation>
    </message>
    <message>
        <source>%1 would be suggested by this record</source>
        <translation>इस अभिलेख से %1 सुझाया जाता</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s near need</source>
        <translation>दिया गया चश्मा इस व्यक्ति की पास की ज़रूरत पर ठीक है</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s distance need</source>
        <translation>दिया गया चश्मा इस व्यक्ति की दूर की ज़रूरत पर ठीक है</translation>
    </message>
    <message>
        <source>the pair given is a reader of the addition alone</source>
        <translation>दिया गया चश्मा केवल ऐड वाला पढ़ने का चश्मा है</translation>
    </message>
    <message>
        <source>with right and left lens exchanged the pair fits</source>
        <translation>दायाँ और बायाँ लेंस बदल दें तो चश्मा ठीक है</translation>
    </message>
    <message>
        <source>the pair given fits the person of entry %1, and that one fits here</source>
        <translation>दिया गया चश्मा प्रविष्टि %1 के व्यक्ति पर ठीक है, और उसका यहाँ ठीक है</translation>
    </message>
    <message>
        <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
        <translation>“%1” दृष्टि का भाग नहीं है; ऐसे लिखें: 6/9, 0.67 decimal या logMAR 0.2</translation>
    </message>
    <message>
        <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
        <translation>“%1” दृष्टि नहीं है; लिखें 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL या NPL</translation>
    </message>
    <message>
        <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
        <translation>“%1” logMAR %2 होगा; दृष्टि logMAR -0.5 और 3 के बीच होती है: देख लें</translation>
    </message>
    <message>
        <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
        <translation>%1 पर कोई चार्ट नहीं पढ़ा जाता; पहले जाँच की दूरी लिखें, जैसे 6/9 या 20/30</translation>
    </message>
    <message>
        <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
        <translation>“%1” अपना पैमाना नहीं बताता; “%1 decimal” या “logMAR %1” लिखें</translation>
    </message>
    <message>
        <source>no acuity is written; write 6/9 or leave it out</source>
        <translation>दृष्टि नहीं लिखी; 6/9 लिखें या छोड़ दें</translation>
    </message>
    <message>
        <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
        <translation>“%1” पास की दृष्टि नहीं है; लिखें N8, M 1.0 या 1.0M, और उसके बाद “at 40 cm”</translation>
    </message>
    <message>
        <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
        <translation>“%1” में दूरी पढ़ी नहीं जाती; ऐसे लिखें: “at 40 cm”, 5 से 200 सेमी</translation>
    </message>
    <message>
        <source>log10(1 + b²): low blur of any kind; no axis and no pupil in it</source>
        <translation>log10(1 + b²): हर तरह का हल्का धुंधलापन; इसमें धुरी और पुतली नहीं</translation>
    </message>
    <message>
        <source>0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place</source>
        <translation>0.017 C² + 0.125 C: प्रेस्बायोपिया में बाकी सिलिंडर C, औसत स्फ़ियर सही</translation>
    </message>
    <message>
        <source>0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far</source>
        <translation>सिलिंडर के हर डायोप्टर पर 0.18 से 0.22 logMAR, औसत स्फ़ियर सही, दूर</translation>
    </message>
    <message>
        <source>one line lost for every 0.25 to 0.5 D of blur</source>
        <translation>हर 0.25 से 0.5 D धुंधलेपन पर एक पंक्ति कम</translation>
    </message>
    <message>
        <source>%1 lies outside the powers the set %2 was made for</source>
        <translation>%1 उन पावरों से बाहर है जिनके लिए सेट %2 बना था</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2</source>
        <translation>स्फ़ियर मेरिडियन में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2: %3 too much</source>
        <translation>स्फ़ियर मेरिडियन में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>sphere meridian off by %1: shown only, the set has no limit for it</source>
        <translation>स्फ़ियर मेरिडियन में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2</source>
        <translation>अधिक प्लस वाले मुख्य मेरिडियन में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>अधिक प्लस वाले मुख्य मेरिडियन में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>अधिक प्लस वाले मुख्य मेरिडियन में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2</source>
        <translation>अधिक माइनस वाले मुख्य मेरिडियन में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>अधिक माइनस वाले मुख्य मेरिडियन में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>अधिक माइनस वाले मुख्य मेरिडियन में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2</source>
        <translation>सिलिंडर में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2: %3 too much</source>
        <translation>सिलिंडर में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>cylinder off by %1: shown only, the set has no limit for it</source>
        <translation>सिलिंडर में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2</source>
        <translation>धुरी में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2: %3 too much</source>
        <translation>धुरी में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>axis off by %1: shown only, the set has no limit for it</source>
        <translation>धुरी में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2</source>
        <translation>ऐड में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2: %3 too much</source>
        <translation>ऐड में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>addition off by %1: shown only, the set has no limit for it</source>
        <translation>ऐड में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2</source>
        <translation>आड़े प्रिज़्म में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2: %3 too much</source>
        <translation>आड़े प्रिज़्म में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>horizontal prism off by %1: shown only, the set has no limit for it</source>
        <translation>आड़े प्रिज़्म में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2</source>
        <translation>खड़े प्रिज़्म में %1 का फ़र्क, सीमा %2</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2: %3 too much</source>
        <translation>खड़े प्रिज़्म में %1 का फ़र्क, सीमा %2: %3 अधिक</translation>
    </message>
    <message>
        <source>vertical prism off by %1: shown only, the set has no limit for it</source>
        <translation>खड़े प्रिज़्म में %1 का फ़र्क: केवल दिखाया, सेट में इसकी सीमा नहीं</translation>
    </message>
    <message>
        <source>there is no tolerance set “%1”; there are: %2</source>
        <translation>“%1” नाम का टॉलरेंस सेट नहीं है; ये हैं: %2</translation>
    </message>
    <message>
        <source>the tolerance set “%1” is not enabled: %2</source>
        <translation>टॉलरेंस सेट “%1” चालू नहीं है: %2</translation>
    </message>
    <message>
        <source>distance %1 and near %2 differ in cylinder; no addition joins them</source>
        <translation>दूर %1 और पास %2 के सिलिंडर अलग हैं; इन्हें कोई ऐड नहीं जोड़ता</translation>
    </message>
    <message>
        <source>near %2 has less plus than distance %1; were they exchanged?</source>
        <translation>पास %2 में दूर %1 से कम प्लस है; क्या ये अदल-बदल हो गए?</translation>
    </message>
    <message>
        <source>this text says it is the left eye, and stands for the right</source>
        <translation>यह लिखा ख़ुद को बाईं आँख बताता है, और दाईं की जगह है</translation>
    </message>
    <message>
        <source>this text says it is the right eye, and stands for the left</source>
        <translation>यह लिखा ख़ुद को दाईं आँख बताता है, और बाईं की जगह है</translation>
    </message>
    <message>
        <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
        <translation>इस आँख के लिए कुछ नहीं लिखा; पावर लिखें, या balance, artificial, blind या not measured</translation>
    </message>
    <message>
        <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
        <translation>पावर नहीं लिखी; ऐसे लिखें: +2.00, -0.75 या 0.00</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2 or %3</source>
        <translation>%1 में दशमलव बिंदु नहीं है; %2 या %3 लिखें</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2</source>
        <translation>%1 में दशमलव बिंदु नहीं है; %2 लिखें</translation>
    </message>
    <message>
        <source>%1 is beyond %2 D; check the figure and write it again</source>
        <translation>%1 %2 D से अधिक है; अंक देखें और फिर लिखें</translation>
    </message>
    <message>
        <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
        <translation>“%1” पर कोई पावर नहीं पढ़ी जाती; ऐसे लिखें: +2.00, -0.75 या 0.00</translation>
    </message>
    <message>
        <source>cylinder %1 has no sign; write +%1 or -%1</source>
        <translation>सिलिंडर %1 का चिह्न नहीं है; +%1 या -%1 लिखें</translation>
    </message>
    <message>
        <source>%1 has no sign; write +%1 or -%1</source>
        <translation>%1 का चिह्न नहीं है; +%1 या -%1 लिखें</translation>
    </message>
    <message>
        <source>addition -%1 is negative; an addition is plus: check it</source>
        <translation>ऐड -%1 माइनस है; ऐड प्लस होता है: देख लें</translation>
    </message>
    <message>
        <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
        <translation>धुरी %1 बिना सिलिंडर के है; स्फ़ियर, सिलिंडर और धुरी लिखें, जैसे -1.00 -0.50 x %1</translation>
    </message>
    <message>
        <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
        <translation>धुरी %1 1..180 अंश से बाहर है; वही मेरिडियन %2 होगा: देखें और फिर लिखें</translation>
    </message>
    <message>
        <source>cylinder %1 has no axis; write it with its axis, as %1 x 90</source>
        <translation>सिलिंडर %1 की धुरी नहीं है; धुरी के साथ लिखें, जैसे %1 x 90</translation>
    </message>
    <message>
        <source>“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90</source>
        <translation>“%1” नुस्ख़े का पढ़ा जा सकने वाला भाग नहीं है; ऐसे लिखें: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>two prisms lie in one direction; write their sum once, as 1.5 base in</source>
        <translation>दो प्रिज़्म एक ही दिशा में हैं; उनका जोड़ एक बार लिखें, जैसे 1.5 base in</translation>
    </message>
    <message>
        <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
        <translation>प्रिज़्म का बेस पढ़ा नहीं जाता; लिखें base in, out, up या down, या base 0..360</translation>
    </message>
    <message>
        <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
        <translation>प्रिज़्म %1 0 और %2 के बीच नहीं है; मात्रा और बेस लिखें, जैसे 2 base in</translation>
    </message>
    <message>
        <source>too few (%1 read): three or more tell how steady they are</source>
        <translation>बहुत कम (%1 पढ़ीं): तीन या अधिक से पता चलता है कि वे कितनी स्थिर हैं</translation>
    </message>
    <message>
        <source>scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>बिखरी हुई: रीडिंग अपने औसत से %1 D दूर हैं, सीमा %2 D है; %4 में से %3 छोड़ी गईं</translation>
    </message>
    <message>
        <source>steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>स्थिर: रीडिंग अपने औसत से %1 D दूर हैं, सीमा %2 D है; %4 में से %3 छोड़ी गईं</translation>
    </message>
    <message>
        <source>take readings until there are three or more; until then a published scatter is used</source>
        <translation>तीन या अधिक होने तक रीडिंग लें; तब तक प्रकाशित बिखराव लिया जाता है</translation>
    </message>
    <message>
        <source>scattered again: look at the eye&apos;s health (cornea, lens, tears, fixation) before prescribing</source>
        <translation>फिर बिखरी हुई: नुस्ख़ा लिखने से पहले आँख का स्वास्थ्य देखें (कॉर्निया, लेंस, आँसू, टिकी नज़र)</translation>
    </message>
    <message>
        <source>repeat the readings, with blinks and steady fixation</source>
        <translation>रीडिंग दोबारा लें, पलकें झपकाकर और नज़र टिकाकर</translation>
    </message>
    <message>
        <source>use the mean of the readings kept; the ones left out are shown</source>
        <translation>रखी गई रीडिंग का औसत लें; छोड़ी गई दिखाई गई हैं</translation>
    </message>
    <message>
        <source>use the mean as the start of the subjective refraction</source>
        <translation>औसत से पूछकर जाँच शुरू करें</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere (limit 1) and %2 D in astigmatism (limit 0.5): confirm the final</source>
        <translation>मशीन और अंतिम के औसत स्फ़ियर में %1 D (सीमा 1) और एस्टिग्मैटिज़्म में %2 D (सीमा 0.5) का अंतर: अंतिम की पुष्टि करें</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere; up to 0.5 is usual</source>
        <translation>मशीन और अंतिम के औसत स्फ़ियर में %1 D का अंतर; 0.5 तक सामान्य है</translation>
    </message>
    <message>
        <source>objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism</source>
        <translation>मशीन और अंतिम मेल खाते हैं: औसत स्फ़ियर में %1 D, एस्टिग्मैटिज़्म में %2 D का अंतर</translation>
    </message>
    <message>
        <source>a movement of an entry “%1” names no line</source>
        <translation>“%1” प्रविष्टि का कोई बदलाव पंक्ति का नाम नहीं बताता</translation>
    </message>
    <message>
        <source>an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 quarantined</source>
        <translation>“%1” प्रविष्टि पंक्ति %2 को मौजूद %3, रोका %4, क्वारंटीन %5 से नहीं बदल सकती</translation>
    </message>
    <message>
        <source>an entry “%1” moves at least one line</source>
        <translation>“%1” प्रविष्टि कम से कम एक पंक्ति बदलती है</translation>
    </message>
    <message>
        <source>an entry “%1” names a person by the camp code</source>
        <translation>“%1” प्रविष्टि व्यक्ति को शिविर कोड से बताती है</translation>
    </message>
    <message>
        <source>“entered-in-error” names the entry it takes back, other kinds none</source>
        <translation>“entered-in-error” उस प्रविष्टि को बताती है जिसे वह वापस लेती है, दूसरी किसी को नहीं</translation>
    </message>
    <message>
        <source>an entry “%1” needs “%2”</source>
        <translation>“%1” प्रविष्टि में “%2” चाहिए</translation>
    </message>
    <message>
        <source>entry %1 is the first that is not as it was written: %2; the audit stops before it</source>
        <translation>प्रविष्टि %1 पहली है जो वैसी नहीं है जैसी लिखी गई थी: %2; ऑडिट उससे पहले रुकता है</translation>
    </message>
    <message>
        <source>%1 stands in the waiting list already; the row is left out</source>
        <translation>%1 प्रतीक्षा सूची में पहले से है; कतार छोड़ दी गई</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM, %1, cannot be started: %2</source>
        <translation>DICOM पढ़ने और लिखने वाला प्रोग्राम, %1, शुरू नहीं हो सकता: %2</translation>
    </message>
    <message>
        <source>%1 is there already; name a new file, or move that one away</source>
        <translation>%1 पहले से है; नई फ़ाइल का नाम दें, या उसे कहीं और ले जाएँ</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to write</source>
        <translation>%1 का नुस्ख़ा पूरा नहीं है; लिखने के लिए ऑर्डर नहीं है</translation>
    </message>
    <message>
        <source>%1 is this site; name the other one</source>
        <translation>%1 यही जगह है; दूसरी का नाम दें</translation>
    </message>
    <message>
        <source>entry %1 is not a transfer in the air; `quarterstep transfer` lists them</source>
        <translation>प्रविष्टि %1 रास्ते में कोई स्थानांतरण नहीं है; `quarterstep transfer` उनकी सूची देता है</translation>
    </message>
    <message>
        <source>%1 has several purposes, or none that is complete; take them up in the list and choose the one that was ordered</source>
        <translation>%1 के कई उद्देश्य हैं, या कोई पूरा नहीं है; उन्हें सूची में खोलें और वह चुनें जिसका ऑर्डर हुआ था</translation>
    </message>
    <message>
        <source>%1 is not in the list; load the table in which the prescription stands</source>
        <translation>%1 सूची में नहीं है; वह तालिका लोड करें जिसमें नुस्ख़ा है</translation>
    </message>
    <message>
        <source>the focimeter reads %1 right, the pair has %2</source>
        <translation>फ़ोसीमीटर दायाँ %1 पढ़ता है, चश्मे में %2 है</translation>
    </message>
    <message>
        <source>the focimeter reads %1 left, the pair has %2</source>
        <translation>फ़ोसीमीटर बायाँ %1 पढ़ता है, चश्मे में %2 है</translation>
    </message>
    <message>
        <source>this is not the PIN of the %1; nothing was written</source>
        <translation>यह भूमिका %1 का PIN नहीं है; कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM gave no answer that is understood</source>
        <translation>DICOM पढ़ने और लिखने वाले प्रोग्राम ने समझ में आने वाला उत्तर नहीं दिया</translation>
    </message>
    <message>
        <source>rules.yaml is not as it was when this camp was opened; open it again</source>
        <translation>rules.yaml वैसी नहीं है जैसी यह शिविर खोलते समय थी; इसे फिर से खोलें</translation>
    </message>
    <message>
        <source>this is no DICOM file: the letters DICM do not stand at byte 128</source>
        <translation>यह DICOM फ़ाइल नहीं है: बाइट 128 पर DICM अक्षर नहीं हैं</translation>
    </message>
    <message>
        <source>this is too large for a refraction: %1 bytes, %2 items</source>
        <translation>यह एक आँख-जाँच के लिए बहुत बड़ी है: %1 बाइट, %2 मद</translation>
    </message>
    <message>
        <source>the DICOM file is broken, or neither explicit nor implicit little endian: a length points out of it, or a part is not understood</source>
        <translation>DICOM फ़ाइल टूटी है, या न explicit है न implicit little endian: कोई लंबाई फ़ाइल से बाहर जाती है, या कोई हिस्सा समझ में नहीं आया</translation>
    </message>
    <message>
        <source>the DICOM file is broken: %1</source>
        <translation>DICOM फ़ाइल टूटी है: %1</translation>
    </message>
    <message>
        <source>the object &quot;%1&quot; is none of lensometry, autorefraction, subjective refraction or visual acuity</source>
        <translation>ऑब्जेक्ट &quot;%1&quot; इनमें से कोई नहीं: चश्मे की माप (lensometry), मशीन की जाँच (autorefraction), पूछकर की गई जाँच (subjective refraction) या दृष्टि (visual acuity)</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>काम में नहीं लिया गया: %1</translation>
    </message>
    <message>
        <source>%1 of the %2 eye cannot be used as it stands</source>
        <translation>%2 आँख का %1 जैसा है वैसा काम में नहीं आ सकता</translation>
    </message>
    <message>
        <source>there is a second refraction of %1; give only the one that counts</source>
        <translation>%1 की दूसरी आँख-जाँच भी है; केवल वही दें जो मान्य है</translation>
    </message>
    <message>
        <source>nothing is stated for the %1 eye; ask for it: a power, or that it is a balance lens, artificial, blind or not measured</source>
        <translation>%1 आँख के लिए कुछ नहीं बताया गया; पूछें: पावर, या यह कि संतुलन लेंस (balance) है, कृत्रिम (artificial), दृष्टिहीन (blind) या नहीं नापी (not measured)</translation>
    </message>
    <message>
        <source>there is a second reading of the %1 eye of %2; give only one</source>
        <translation>%2 की %1 आँख की दूसरी रीडिंग भी है; केवल एक दें</translation>
    </message>
    <message>
        <source>an acuity is kept without being used: &quot;%1&quot; at %2 is none that the table has</source>
        <translation>एक दृष्टि बिना काम में लिए रखी गई: %2 पर &quot;%1&quot; तालिका में नहीं है</translation>
    </message>
    <message>
        <source>there is no subjective refraction of %1; what is here is no prescription</source>
        <translation>%1 की पूछकर की गई जाँच नहीं है; यहाँ जो है वह नुस्ख़ा नहीं है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a patient id: at most 64 characters, no backslash</source>
        <translation>&quot;%1&quot; व्यक्ति का id नहीं हो सकता: अधिक से अधिक 64 अक्षर, backslash नहीं</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot; stands in line %2 already; give each row a code of its own</source>
        <translation>व्यक्ति &quot;%1&quot; पंक्ति %2 में पहले से है; हर कतार को अपना कोड दें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write it as -1.25</source>
        <translation>&quot;%1&quot; संख्या नहीं है; इसे -1.25 की तरह लिखें</translation>
    </message>
    <message>
        <source>%1 is outside -%2 to %2</source>
        <translation>%1 -%2 से %2 के बाहर है</translation>
    </message>
    <message>
        <source>%1 is finer than a thousandth; round it</source>
        <translation>%1 हज़ारवें हिस्से से बारीक है; पूरा करके लिखें</translation>
    </message>
    <message>
        <source>%1 of %2 stays here: it names people or is in their own words</source>
        <translation>%2 का %1 यहीं रहता है: उसमें लोगों के नाम हैं या वह उनके अपने शब्दों में है</translation>
    </message>
    <message>
        <source>the eye is &quot;%1&quot;; right or left is wanted</source>
        <translation>आँख &quot;%1&quot; लिखी है; right या left चाहिए</translation>
    </message>
    <message>
        <source>there is a second lens for the %1 eye; a resource for each purpose is understood, with one lens an eye</source>
        <translation>%1 आँख के लिए दूसरा लेंस भी है; हर उद्देश्य का एक resource समझा जाता है, हर आँख के एक लेंस के साथ</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; a number without quotes is wanted, as -1.25</source>
        <translation>%1 &quot;%2&quot; है; बिना उद्धरण चिह्न की संख्या चाहिए, जैसे -1.25</translation>
    </message>
    <message>
        <source>the sphere of the %1 eye is not stated; that is not zero: write 0.00 for plano, or balance, artificial, blind or not measured as the note</source>
        <translation>%1 आँख का स्फ़ियर नहीं बताया गया; वह शून्य नहीं है: plano के लिए 0.00 लिखें, या टिप्पणी में balance, artificial, blind या not measured</translation>
    </message>
    <message>
        <source>axis %1 is not a whole number of degrees</source>
        <translation>धुरी %1 पूरे अंशों में नहीं है</translation>
    </message>
    <message>
        <source>prism is a list of amounts and bases</source>
        <translation>prism मात्राओं और बेस की सूची है</translation>
    </message>
    <message>
        <source>the prism %1 is below zero; turn its base instead</source>
        <translation>प्रिज़्म %1 शून्य से कम है; इसकी जगह उसका बेस पलटें</translation>
    </message>
    <message>
        <source>the base is &quot;%1&quot;; up, down, in or out is wanted</source>
        <translation>बेस &quot;%1&quot; है; up, down, in या out चाहिए</translation>
    </message>
    <message>
        <source>&quot;%1&quot; inside a prism is not used</source>
        <translation>prism के भीतर &quot;%1&quot; काम में नहीं लिया जाता</translation>
    </message>
    <message>
        <source>the product is not coded as lens or contact; it is read as a spectacle lens</source>
        <translation>product का कोड lens या contact नहीं है; इसे चश्मे का लेंस माना गया</translation>
    </message>
    <message>
        <source>axis %1 of %2 leaves as %3: FHIR takes whole degrees</source>
        <translation>%2 की धुरी %1 बाहर %3 बनकर जाती है: FHIR पूरे अंश लेता है</translation>
    </message>
    <message>
        <source>%1 may change what the prescription means, and is not understood; ask for it without</source>
        <translation>%1 नुस्ख़े का अर्थ बदल सकता है, और समझ में नहीं आया; इसके बिना माँगें</translation>
    </message>
    <message>
        <source>the status is &quot;%1&quot;; active is wanted</source>
        <translation>status &quot;%1&quot; है; active चाहिए</translation>
    </message>
    <message>
        <source>meta.%1 is left out: it belongs to the sender&apos;s copy</source>
        <translation>meta.%1 छोड़ दिया गया: वह भेजने वाले की प्रति का है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole date; how old the prescription is stays open</source>
        <translation>&quot;%1&quot; पूरी तारीख़ नहीं है; नुस्ख़ा कितना पुराना है, यह खुला रहता है</translation>
    </message>
    <message>
        <source>the narrative is left out: it repeats what is coded</source>
        <translation>narrative छोड़ दिया गया: वह कोड में लिखी बात ही दोहराता है</translation>
    </message>
    <message>
        <source>the resource %1 is left out: only VisionPrescription and its measures are read</source>
        <translation>resource %1 छोड़ दिया गया: केवल VisionPrescription और उसकी माप पढ़ी जाती हैं</translation>
    </message>
    <message>
        <source>of an observation left out: %1</source>
        <translation>observation से छोड़ा गया: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: it was entered in error</source>
        <translation>%2 का observation %1 छोड़ दिया गया: वह ग़लती से लिखा गया था</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: its code is not known here</source>
        <translation>%2 का observation %1 छोड़ दिया गया: उसका कोड यहाँ नहीं जाना जाता</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: something in it may change its meaning</source>
        <translation>%2 का observation %1 छोड़ दिया गया: उसमें कुछ है जो उसका अर्थ बदल सकता है</translation>
    </message>
    <message>
        <source>a measure without a code is left out: &quot;%1&quot;</source>
        <translation>बिना कोड की एक माप छोड़ दी गई: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this is XML; ask for the same in JSON (application/fhir+json)</source>
        <translation>यह XML है; यही JSON में माँगें (application/fhir+json)</translation>
    </message>
    <message>
        <source>this is no resource of FHIR: resourceType is missing</source>
        <translation>यह FHIR का resource नहीं है: resourceType नहीं है</translation>
    </message>
    <message>
        <source>of the Bundle left out: %1; it belongs to the sender&apos;s envelope</source>
        <translation>Bundle से छोड़ा गया: %1; वह भेजने वाले के लिफ़ाफ़े का है</translation>
    </message>
    <message>
        <source>there is no prescription for spectacles to take in here</source>
        <translation>यहाँ लेने के लिए चश्मे का कोई नुस्ख़ा नहीं है</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: it is for contact lenses, whose powers and curves are no spectacles&apos;</source>
        <translation>%1 का नुस्ख़ा छोड़ दिया गया: वह कॉन्टैक्ट लेंस का है, जिसकी पावर और वक्रता चश्मे की नहीं होतीं</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: its status is %2</source>
        <translation>%1 का नुस्ख़ा छोड़ दिया गया: उसका status %2 है</translation>
    </message>
    <message>
        <source>kept without being used: %1</source>
        <translation>बिना काम में लिए रखा गया: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: no prescription of theirs is taken in</source>
        <translation>%2 का observation %1 छोड़ दिया गया: उनका कोई नुस्ख़ा नहीं लिया गया</translation>
    </message>
    <message>
        <source>the column fhir.%1 of %2 is left out: its cell is no JSON</source>
        <translation>%2 का स्तंभ fhir.%1 छोड़ दिया गया: उसका खाना JSON नहीं है</translation>
    </message>
    <message>
        <source>each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>हर पंक्ति एक ऑब्जेक्ट है, जैसे {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>nothing stands in it; each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>इसमें कुछ नहीं है; हर पंक्ति एक ऑब्जेक्ट है, जैसे {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>the value has ended here, “%1” is too much</source>
        <translation>मान यहाँ समाप्त हो गया, “%1” अधिक है</translation>
    </message>
    <message>
        <source>more than %1 levels lie inside one another</source>
        <translation>%1 से अधिक स्तर एक दूसरे के भीतर हैं</translation>
    </message>
    <message>
        <source>a comma or } belongs here</source>
        <translation>यहाँ अल्पविराम (,) या } होना चाहिए</translation>
    </message>
    <message>
        <source>a comma or ] belongs here</source>
        <translation>यहाँ अल्पविराम (,) या ] होना चाहिए</translation>
    </message>
    <message>
        <source>a name in quotes belongs here</source>
        <translation>यहाँ उद्धरण चिह्नों में नाम होना चाहिए</translation>
    </message>
    <message>
        <source>a colon belongs here</source>
        <translation>यहाँ कोलन होना चाहिए</translation>
    </message>
    <message>
        <source>“%1” stands twice in one object; keep one</source>
        <translation>“%1” एक ऑब्जेक्ट में दो बार है; एक रखें</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>यह उद्धरण चिह्न कहीं बंद नहीं होता</translation>
    </message>
    <message>
        <source>a line end or tab stands inside a text; write \n or \t</source>
        <translation>पाठ के भीतर पंक्ति का अंत या टैब है; \n या \t लिखें</translation>
    </message>
    <message>
        <source>“\%1” is no escape of JSON</source>
        <translation>“\%1” JSON का escape नहीं है</translation>
    </message>
    <message>
        <source>half of a character stands here alone</source>
        <translation>यहाँ आधा अक्षर अकेला है</translation>
    </message>
    <message>
        <source>four hexadecimal digits belong here</source>
        <translation>यहाँ चार हेक्साडेसिमल अंक होने चाहिए</translation>
    </message>
    <message>
        <source>this is no number of JSON; write it as -1.25 or 0.5</source>
        <translation>यह JSON की संख्या नहीं है; इसे -1.25 या 0.5 की तरह लिखें</translation>
    </message>
    <message>
        <source>the text ends where a value belongs</source>
        <translation>जहाँ मान होना चाहिए वहाँ पाठ समाप्त हो जाता है</translation>
    </message>
    <message>
        <source>“%1” is no value of JSON</source>
        <translation>“%1” JSON का मान नहीं है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the other decimal mark than the map says</source>
        <translation>&quot;%1&quot; में दशमलव चिह्न मानचित्र में बताए चिह्न से अलग है</translation>
    </message>
    <message>
        <source>the map names a column &quot;%1&quot; that the table does not have</source>
        <translation>मानचित्र में स्तंभ &quot;%1&quot; है जो तालिका में नहीं है</translation>
    </message>
    <message>
        <source>no column is understood as %1; a map can say which one is, as in: %2</source>
        <translation>कोई स्तंभ %1 नहीं समझा गया; मानचित्र बता सकता है कि कौन सा है, जैसे: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; stands in the table twice; delete or rename one</source>
        <translation>स्तंभ &quot;%1&quot; तालिका में दो बार है; एक को हटाएँ या उसका नाम बदलें</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is kept but not used</source>
        <translation>स्तंभ &quot;%1&quot; जाना नहीं जाता; वह रखा जाता है पर काम में नहीं लिया जाता</translation>
    </message>
    <message>
        <source>the table is empty; its first line names the columns: %1</source>
        <translation>तालिका खाली है; पहली पंक्ति में स्तंभों के नाम होते हैं: %1</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds the separator in quotes</source>
        <translation>कतार में %1 खाने हैं, शीर्षक में %2; जिस खाने में विभाजक हो उसे उद्धरण चिह्नों में रखें</translation>
    </message>
    <message>
        <source>%1 spheres have no sign; if this table leaves the plus out, a map says so: %2</source>
        <translation>%1 स्फ़ियर बिना चिह्न के हैं; यदि इस तालिका में प्लस नहीं लिखा जाता, तो मानचित्र में यह लिखें: %2</translation>
    </message>
    <message>
        <source>%1 cylinders have no sign; ask whoever made the table, then a map says so: %2</source>
        <translation>%1 सिलिंडर बिना चिह्न के हैं; तालिका बनाने वाले से पूछें, फिर मानचित्र में यह लिखें: %2</translation>
    </message>
    <message>
        <source>a record ends with CR LF; this one does not</source>
        <translation>रिकॉर्ड CR LF से समाप्त होता है; यह नहीं होता</translation>
    </message>
    <message>
        <source>a character here is not plain ASCII</source>
        <translation>यहाँ का एक अक्षर सादा ASCII नहीं है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no record; write LABEL=value</source>
        <translation>&quot;%1&quot; रिकॉर्ड नहीं है; LABEL=value लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no label: capitals and digits, at most 8</source>
        <translation>&quot;%1&quot; लेबल नहीं है: बड़े अक्षर और अंक, अधिक से अधिक 8</translation>
    </message>
    <message>
        <source>the record %1 is passed over</source>
        <translation>रिकॉर्ड %1 छोड़ दिया गया</translation>
    </message>
    <message>
        <source>the record %1 stands twice</source>
        <translation>रिकॉर्ड %1 दो बार है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not what belongs here</source>
        <translation>&quot;%1&quot; यहाँ नहीं होना चाहिए</translation>
    </message>
    <message>
        <source>DO is &quot;%1&quot;; a pair, B, is wanted</source>
        <translation>DO &quot;%1&quot; है; जोड़ी, यानी B, चाहिए</translation>
    </message>
    <message>
        <source>the record SPH is missing</source>
        <translation>रिकॉर्ड SPH नहीं है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be written in plain letters; it leaves as &quot;%2&quot;</source>
        <translation>&quot;%1&quot; सादे अक्षरों में नहीं लिखा जा सकता; वह &quot;%2&quot; बनकर बाहर जाता है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot stand in an order: plain letters and digits, at most 80, without ; = , ?</source>
        <translation>&quot;%1&quot; ऑर्डर में नहीं आ सकता: सादे अक्षर और अंक, अधिक से अधिक 80, ; = , ? के बिना</translation>
    </message>
    <message>
        <source>the eyes are written in two cylinder forms; both leave with minus cylinders</source>
        <translation>आँखें दो सिलिंडर रूपों में लिखी हैं; दोनों माइनस सिलिंडर के साथ बाहर जाती हैं</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no line of a map; write heading = column</source>
        <translation>&quot;%1&quot; मानचित्र की पंक्ति नहीं है; शीर्षक = स्तंभ लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing a column can be: write right sphere (cylinder, axis, prism, base; left), a column of the prescription table, or - to leave it</source>
        <translation>&quot;%1&quot; कोई स्तंभ नहीं हो सकता: right sphere (cylinder, axis, prism, base; left), नुस्ख़ों की तालिका का कोई स्तंभ, या छोड़ने के लिए - लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no separator; write , or ; or | or tab</source>
        <translation>&quot;%1&quot; विभाजक नहीं है; , या ; या | या tab लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not plus or minus</source>
        <translation>&quot;%1&quot; plus या minus नहीं है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not point or comma</source>
        <translation>&quot;%1&quot; point या comma नहीं है</translation>
    </message>
    <message>
        <source>there are entries in this ledger already; nothing was written; take them over with `quarterstep import`, or name an empty ledger</source>
        <translation>इस बही में पहले से प्रविष्टियाँ हैं; कुछ लिखा नहीं गया; उन्हें `quarterstep import` से लें, या किसी खाली बही का नाम दें</translation>
    </message>
    <message>
        <source>this ledger was opened for reading only</source>
        <translation>यह बही केवल पढ़ने के लिए खोली गई थी</translation>
    </message>
    <message>
        <source>this ledger was last written at another place; if it moved here for good, say so first, and do not use the other copy any more</source>
        <translation>इस बही में पिछली बार दूसरी जगह लिखा गया था; यदि यह हमेशा के लिए यहाँ आ गई है, तो पहले यह बताएँ, और दूसरी प्रति अब काम में न लें</translation>
    </message>
    <message>
        <source>something was posted meanwhile; nothing was written; look again and repeat</source>
        <translation>इस बीच कुछ दर्ज हुआ; कुछ लिखा नहीं गया; फिर देखें और दोहराएँ</translation>
    </message>
    <message>
        <source>the ledger is empty; nothing happened yet</source>
        <translation>बही खाली है; अभी कुछ नहीं हुआ</translation>
    </message>
    <message>
        <source>the person is forgotten, but another program reads the ledger and old text stays in its journal; close it there and repeat</source>
        <translation>व्यक्ति का ब्योरा मिटाया गया, पर कोई दूसरा प्रोग्राम बही पढ़ रहा है और पुराना पाठ उसके जर्नल में बना है; वहाँ उसे बंद करें और दोहराएँ</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; check the chain and put back the latest copy of the camp folder</source>
        <translation>इस बही की एक प्रविष्टि पढ़ी नहीं जा सकती; शृंखला जाँचें और शिविर के फ़ोल्डर की सबसे नई प्रति वापस रखें</translation>
    </message>
    <message>
        <source>the disk failed while the entry was written (%1); close the camp, open it again and look whether the entry is there before you repeat it</source>
        <translation>प्रविष्टि लिखते समय डिस्क ने काम नहीं किया (%1); शिविर बंद करें, फिर खोलें और दोहराने से पहले देखें कि प्रविष्टि है या नहीं</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost while the entry was written (%1); open the camp again and look whether the entry is there before you repeat it</source>
        <translation>प्रविष्टि लिखते समय साझा बही से संपर्क टूट गया (%1); शिविर फिर खोलें और दोहराने से पहले देखें कि प्रविष्टि है या नहीं</translation>
    </message>
    <message>
        <source>line %1 has %2 left, %3 asked for; nothing was written</source>
        <translation>पंक्ति %1 में %2 बचे हैं, %3 माँगे गए; कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>line %1 has %2 available, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>पंक्ति %1 में %2 उपलब्ध, %3 रोके और %4 क्वारंटीन में हैं, इसके लिए कम; कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>entry %1 was taken back already</source>
        <translation>प्रविष्टि %1 पहले ही वापस ली जा चुकी है</translation>
    </message>
    <message>
        <source>entry %1 takes back another one and cannot be taken back itself; enter what happened anew</source>
        <translation>प्रविष्टि %1 किसी दूसरी को वापस लेती है और ख़ुद वापस नहीं ली जा सकती; जो हुआ उसे नए सिरे से लिखें</translation>
    </message>
    <message>
        <source>entry %1 is “%2” and stays; a wrong count is put right by counting</source>
        <translation>प्रविष्टि %1 “%2” है और बनी रहती है; ग़लत गिनती फिर गिनने से ठीक होती है</translation>
    </message>
    <message>
        <source>entry %1 of this ledger is not as it was written: %2; nothing was taken over</source>
        <translation>इस बही की प्रविष्टि %1 वैसी नहीं है जैसी लिखी गई थी: %2; कुछ लिया नहीं गया</translation>
    </message>
    <message>
        <source>station %1 has two entries number %2, %3 here and %4 there: its folder was copied and both copies went on as the same station; nothing was taken over, both files are as they were; count the stock of one and enter the difference</source>
        <translation>केंद्र %1 में संख्या %2 की दो प्रविष्टियाँ हैं, यहाँ %3 और वहाँ %4: उसका फ़ोल्डर कॉपी हुआ और दोनों प्रतियाँ उसी केंद्र के रूप में चलती रहीं; कुछ लिया नहीं गया, दोनों फ़ाइलें जैसी थीं वैसी हैं; एक का स्टॉक गिनें और अंतर लिखें</translation>
    </message>
    <message>
        <source>entry %1 is in both ledgers with another content; one of them was changed; nothing was taken over</source>
        <translation>प्रविष्टि %1 दोनों बहियों में अलग सामग्री के साथ है; उनमें से एक बदली गई; कुछ लिया नहीं गया</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; nothing was taken over</source>
        <translation>इस बही की एक प्रविष्टि पढ़ी नहीं जा सकती; कुछ लिया नहीं गया</translation>
    </message>
    <message>
        <source>entries %1 and %2 take back the same entry %3; nothing was taken over</source>
        <translation>प्रविष्टियाँ %1 और %2 एक ही प्रविष्टि %3 को वापस लेती हैं; कुछ लिया नहीं गया</translation>
    </message>
    <message>
        <source>entry %1 takes back %2, which is in neither ledger; merge the ledger that has it first</source>
        <translation>प्रविष्टि %1 %2 को वापस लेती है, जो दोनों में से किसी बही में नहीं है; पहले वह बही मिलाएँ जिसमें वह है</translation>
    </message>
    <message>
        <source>line %1 of %2 would go below zero: entries %3 and %4 took the same pieces; nothing was taken over; count the stock there and enter the difference first</source>
        <translation>%2 की पंक्ति %1 शून्य से नीचे चली जाएगी: प्रविष्टियों %3 और %4 ने वही नग लिए; कुछ लिया नहीं गया; पहले वहाँ स्टॉक गिनें और अंतर लिखें</translation>
    </message>
    <message>
        <source>entries of this very station came from a copy of its folder; do not use that copy any more</source>
        <translation>इसी केंद्र की प्रविष्टियाँ उसके फ़ोल्डर की एक प्रति से आईं; वह प्रति अब काम में न लें</translation>
    </message>
    <message>
        <source>%1 has entries of %2 stations: its folder was copied and both were used; count its stock, since both began with the same pieces</source>
        <translation>%1 में %2 केंद्रों की प्रविष्टियाँ हैं: उसका फ़ोल्डर कॉपी हुआ और दोनों काम में लिए गए; उसका स्टॉक गिनें, क्योंकि दोनों एक ही नगों से शुरू हुए</translation>
    </message>
    <message>
        <source>this is a database of another program, not a ledger; name another file in the key ledger of stock.yaml</source>
        <translation>यह किसी दूसरे प्रोग्राम का डेटाबेस है, बही नहीं; stock.yaml की कुंजी ledger में दूसरी फ़ाइल का नाम दें</translation>
    </message>
    <message>
        <source>the head of this ledger is damaged (form %1); put back the latest copy of the camp folder</source>
        <translation>इस बही का शीर्ष भाग ख़राब है (रूप %1); शिविर के फ़ोल्डर की सबसे नई प्रति वापस रखें</translation>
    </message>
    <message>
        <source>this ledger was made by a newer version (form %1, known here up to %2); update this program</source>
        <translation>यह बही नए संस्करण से बनी है (रूप %1, यहाँ %2 तक जाना जाता है); इस प्रोग्राम को अपडेट करें</translation>
    </message>
    <message>
        <source>a rule of this ledger is missing or damaged (%1); put back the latest copy of the camp folder</source>
        <translation>इस बही का कोई नियम गायब या ख़राब है (%1); शिविर के फ़ोल्डर की सबसे नई प्रति वापस रखें</translation>
    </message>
    <message>
        <source>a ledger file cannot be kept safely on a network share; keep the camp folder on this machine, or share a PostgreSQL ledger between stations</source>
        <translation>बही की फ़ाइल नेटवर्क शेयर पर सुरक्षित नहीं रखी जा सकती; शिविर का फ़ोल्डर इसी मशीन पर रखें, या केंद्रों के बीच PostgreSQL बही साझा करें</translation>
    </message>
    <message>
        <source>there is no ledger in this database yet; the keeper sets it up once with `quarterstep stock --set-up`</source>
        <translation>इस डेटाबेस में अभी बही नहीं है; रखवाला उसे एक बार `quarterstep stock --set-up` से बनाता है</translation>
    </message>
    <message>
        <source>this database holds something else, not a ledger; name another one in the key ledger of stock.yaml</source>
        <translation>इस डेटाबेस में कुछ और है, बही नहीं; stock.yaml की कुंजी ledger में दूसरे का नाम दें</translation>
    </message>
    <message>
        <source>the database refuses to write safely; nothing was opened</source>
        <translation>डेटाबेस सुरक्षित ढंग से लिखने से मना करता है; कुछ नहीं खोला गया</translation>
    </message>
    <message>
        <source>the client library of the server is missing; install %1</source>
        <translation>सर्वर की क्लाइंट लाइब्रेरी नहीं है; %1 लगाएँ</translation>
    </message>
    <message>
        <source>the file was replaced, but the disk does not say that this will last: %1</source>
        <translation>फ़ाइल बदल दी गई, पर डिस्क यह नहीं कहती कि यह टिका रहेगा: %1</translation>
    </message>
    <message>
        <source>another program is writing in this folder; wait a moment and repeat</source>
        <translation>कोई दूसरा प्रोग्राम इस फ़ोल्डर में लिख रहा है; थोड़ा रुकें और दोहराएँ</translation>
    </message>
    <message>
        <source>the folder cannot be locked: %1; check its name and rights</source>
        <translation>फ़ोल्डर लॉक नहीं हो सकता: %1; उसका नाम और अनुमति देखें</translation>
    </message>
    <message>
        <source>this is not the address of a shared ledger (%1); write postgresql://LOGIN@HOST:PORT/DATABASE</source>
        <translation>यह साझा बही का पता नहीं है (%1); postgresql://LOGIN@HOST:PORT/DATABASE लिखें</translation>
    </message>
    <message>
        <source>a password stands in the address, and stock.yaml is carried about and copied; write it to ~/.pgpass (read by you alone) and take it out of the address</source>
        <translation>पते में पासवर्ड लिखा है, और stock.yaml साथ ले जाई और कॉपी की जाती है; उसे ~/.pgpass में लिखें (जिसे केवल आप पढ़ सकें) और पते से निकाल दें</translation>
    </message>
    <message>
        <source>there is a ledger in this database already; nothing was changed</source>
        <translation>इस डेटाबेस में पहले से बही है; कुछ बदला नहीं गया</translation>
    </message>
    <message>
        <source>this file system cannot keep a ledger safely (no shared memory beside the file); keep the camp folder on another disk</source>
        <translation>यह फ़ाइल सिस्टम बही को सुरक्षित नहीं रख सकता (फ़ाइल के साथ साझा मेमोरी नहीं); शिविर का फ़ोल्डर दूसरी डिस्क पर रखें</translation>
    </message>
    <message>
        <source>this is not a file; name another one in the key ledger of stock.yaml</source>
        <translation>यह फ़ाइल नहीं है; stock.yaml की कुंजी ledger में दूसरी का नाम दें</translation>
    </message>
    <message>
        <source>this ledger was not closed and its folder cannot be written to; copy the whole folder to a place that can, and open it there</source>
        <translation>यह बही बंद नहीं की गई थी और इसके फ़ोल्डर में लिखा नहीं जा सकता; पूरा फ़ोल्डर ऐसी जगह कॉपी करें जहाँ लिखा जा सके, और वहाँ खोलें</translation>
    </message>
    <message>
        <source>the ledger file was moved, removed or replaced while it was open; nothing was written; close the camp and open it again</source>
        <translation>बही की फ़ाइल खुली रहते हटाई, मिटाई या बदली गई; कुछ लिखा नहीं गया; शिविर बंद करें और फिर खोलें</translation>
    </message>
    <message>
        <source>this ledger names no station of its own; put back the latest copy</source>
        <translation>इस बही में अपने केंद्र का नाम नहीं है; सबसे नई प्रति वापस रखें</translation>
    </message>
    <message>
        <source>the ledger cannot be made: %1; check the rights of the folder</source>
        <translation>बही नहीं बन सकती: %1; फ़ोल्डर की अनुमति देखें</translation>
    </message>
    <message>
        <source>the ledger cannot be opened for writing here; check the rights of the file and its folder</source>
        <translation>बही यहाँ लिखने के लिए नहीं खुल सकती; फ़ाइल और उसके फ़ोल्डर की अनुमति देखें</translation>
    </message>
    <message>
        <source>the disk is full; nothing was written; make room and repeat</source>
        <translation>डिस्क भर गई है; कुछ लिखा नहीं गया; जगह बनाएँ और दोहराएँ</translation>
    </message>
    <message>
        <source>this is not a ledger, or it is damaged (%1); put back the latest copy of the camp folder</source>
        <translation>यह बही नहीं है, या ख़राब है (%1); शिविर के फ़ोल्डर की सबसे नई प्रति वापस रखें</translation>
    </message>
    <message>
        <source>the ledger failed: %1 (code %2); nothing was written</source>
        <translation>बही ने काम नहीं किया: %1 (कोड %2); कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>another program holds the ledger; nothing was written; close it there and repeat</source>
        <translation>कोई दूसरा प्रोग्राम बही को रोके हुए है; कुछ लिखा नहीं गया; वहाँ उसे बंद करें और दोहराएँ</translation>
    </message>
    <message>
        <source>the shared ledger cannot be reached (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>साझा बही तक पहुँच नहीं है (%1); कुछ लिखा नहीं गया; नेटवर्क और सर्वर देखें, फिर दोहराएँ</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>साझा बही से संपर्क टूट गया (%1); कुछ लिखा नहीं गया; नेटवर्क और सर्वर देखें, फिर दोहराएँ</translation>
    </message>
    <message>
        <source>the shared ledger does not allow this login to do that (%1); nothing was written; ask the keeper</source>
        <translation>साझा बही इस लॉगिन को यह करने नहीं देती (%1); कुछ लिखा नहीं गया; रखवाले से पूछें</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>फ़ाइल पढ़ी नहीं जा सकती</translation>
    </message>
    <message>
        <source>this is a link or a device; only a plain file can be kept up to date; put the file itself into the camp folder</source>
        <translation>यह लिंक या उपकरण है; केवल सादी फ़ाइल ताज़ा रखी जा सकती है; फ़ाइल को ही शिविर के फ़ोल्डर में रखें</translation>
    </message>
    <message>
        <source>the file was written after entry %1 of another ledger; a new ledger begins with the counts of the file</source>
        <translation>फ़ाइल किसी दूसरी बही की प्रविष्टि %1 के बाद लिखी गई; नई बही फ़ाइल की गिनतियों से शुरू होती है</translation>
    </message>
    <message>
        <source>the file was written after entry %1, but the ledger ends at %2; is the ledger an older copy? Counts that differ are shown as edited</source>
        <translation>फ़ाइल प्रविष्टि %1 के बाद लिखी गई, पर बही %2 पर समाप्त होती है; क्या बही पुरानी प्रति है? जो गिनतियाँ अलग हैं वे बदली हुई दिखाई गई हैं</translation>
    </message>
    <message>
        <source>the ledger had nothing of the site %1; its lines begin with the counts of the file</source>
        <translation>बही में जगह %1 का कुछ नहीं था; उसकी पंक्तियाँ फ़ाइल की गिनतियों से शुरू होती हैं</translation>
    </message>
    <message>
        <source>line %1 is new in the file and begins with %2 on hand</source>
        <translation>पंक्ति %1 फ़ाइल में नई है और %2 मौजूद से शुरू होती है</translation>
    </message>
    <message>
        <source>line %1 is not in the file any more, and the ledger has %2 of it on hand; put the line back, or count it as 0 first</source>
        <translation>पंक्ति %1 अब फ़ाइल में नहीं है, और बही में उसके %2 मौजूद हैं; पंक्ति वापस रखें, या पहले उसे 0 गिनें</translation>
    </message>
    <message>
        <source>write the first and the last age, for example [40, 44]</source>
        <translation>पहली और आख़िरी उम्र लिखें, जैसे [40, 44]</translation>
    </message>
    <message>
        <source>ages and values rise, and bands do not overlap</source>
        <translation>उम्र और मान बढ़ते हैं, और दर्जे एक दूसरे पर नहीं चढ़ते</translation>
    </message>
    <message>
        <source>write the rows as a list: [{ages: [40, 44], value: 0.65}, …]</source>
        <translation>कतारें सूची की तरह लिखें: [{ages: [40, 44], value: 0.65}, …]</translation>
    </message>
    <message>
        <source>this is not a file of age tables of this program; the first key should read format: %1</source>
        <translation>यह इस प्रोग्राम की उम्र-तालिकाओं की फ़ाइल नहीं है; पहली कुंजी यह होनी चाहिए: format: %1</translation>
    </message>
    <message>
        <source>`tables` is a list; begin each table with a dash</source>
        <translation>`tables` सूची है; हर तालिका डैश से शुरू करें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a name here; write one of %2</source>
        <translation>&quot;%1&quot; यहाँ नाम नहीं है; %2 में से एक लिखें</translation>
    </message>
    <message>
        <source>write a list: one name, value and source a line</source>
        <translation>सूची लिखें: हर पंक्ति में एक name, value और source</translation>
    </message>
    <message>
        <source>this is not an audit file of this program; the first key should read format: %1</source>
        <translation>यह इस प्रोग्राम की ऑडिट फ़ाइल नहीं है; पहली कुंजी यह होनी चाहिए: format: %1</translation>
    </message>
    <message>
        <source>these priors say that more than one hand-over in ten holds a slip; make them smaller</source>
        <translation>ये पूर्व संभावनाएँ कहती हैं कि दस में एक से अधिक वितरण में चूक है; उन्हें घटाएँ</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are lot, row, right and left</source>
        <translation>स्तंभ &quot;%1&quot; नहीं है; lot, row, right और left चाहिए</translation>
    </message>
    <message>
        <source>the row names no lot; keep the column as it was printed</source>
        <translation>कतार में लॉट का नाम नहीं है; स्तंभ जैसा छपा था वैसा रखें</translation>
    </message>
    <message>
        <source>row %1 of this lot stands in the table twice; keep one</source>
        <translation>इस लॉट की कतार %1 तालिका में दो बार है; एक रखें</translation>
    </message>
    <message>
        <source>“%1” is no reading of a focimeter; write sphere, cylinder and axis</source>
        <translation>“%1” फ़ोसीमीटर की रीडिंग नहीं है; स्फ़ियर, सिलिंडर और धुरी लिखें</translation>
    </message>
    <message>
        <source>the row says not-found and has a reading; delete one of the two</source>
        <translation>कतार में not-found है और रीडिंग भी है; दोनों में से एक हटाएँ</translation>
    </message>
    <message>
        <source>the row says read and has no reading; write both lenses or not-found</source>
        <translation>कतार में read है और रीडिंग नहीं है; दोनों लेंस या not-found लिखें</translation>
    </message>
    <message>
        <source>“%1” is not an outcome; write read or not-found</source>
        <translation>“%1” नतीजा नहीं है; read या not-found लिखें</translation>
    </message>
    <message>
        <source>a pair is read in both lenses; write this one too</source>
        <translation>चश्मे के दोनों लेंस पढ़े जाते हैं; यह भी लिखें</translation>
    </message>
    <message>
        <source>the format is &quot;%1&quot;, not &quot;%2&quot;</source>
        <translation>format &quot;%1&quot; है, &quot;%2&quot; नहीं</translation>
    </message>
    <message>
        <source>the limits must rise: fits, then caution, then trial</source>
        <translation>सीमाएँ बढ़नी चाहिए: fits, फिर caution, फिर trial</translation>
    </message>
    <message>
        <source>a limit is missing here; write fits, caution or trial</source>
        <translation>यहाँ एक सीमा नहीं है; fits, caution या trial लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; means nothing for this criterion; delete it</source>
        <translation>&quot;%1&quot; का इस कसौटी के लिए कोई अर्थ नहीं है; इसे हटाएँ</translation>
    </message>
    <message>
        <source>write the steps as a list: [{up to: 0.50, fits: 7}, …]</source>
        <translation>कदम सूची की तरह लिखें: [{up to: 0.50, fits: 7}, …]</translation>
    </message>
    <message>
        <source>the steps must rise; put the smaller cylinder first</source>
        <translation>कदम बढ़ने चाहिए; छोटा सिलिंडर पहले रखें</translation>
    </message>
    <message>
        <source>say where the limit comes from, or write: common practice</source>
        <translation>लिखें कि सीमा कहाँ से आई, या लिखें: common practice</translation>
    </message>
    <message>
        <source>shown only means no limits; keep one of the two</source>
        <translation>shown only का अर्थ है कोई सीमा नहीं; दोनों में से एक रखें</translation>
    </message>
    <message>
        <source>a quote stands inside a cell; put the whole cell in quotes and double it</source>
        <translation>खाने के भीतर उद्धरण चिह्न है; पूरा खाना उद्धरण चिह्नों में रखें और उसे दोहरा लिखें</translation>
    </message>
    <message>
        <source>a lone carriage return ends the line here; save the table with LF or CRLF line ends</source>
        <translation>यहाँ अकेला CR (carriage return) पंक्ति समाप्त करता है; तालिका को LF या CRLF पंक्ति-अंत के साथ सहेजें</translation>
    </message>
    <message>
        <source>this quote is never closed; close it before the next comma</source>
        <translation>यह उद्धरण चिह्न कहीं बंद नहीं होता; अगले अल्पविराम से पहले बंद करें</translation>
    </message>
    <message>
        <source>there is text behind the closing quote; move it inside, or double the quote</source>
        <translation>बंद होने वाले उद्धरण चिह्न के बाद पाठ है; उसे भीतर करें, या उद्धरण चिह्न दोहरा लिखें</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and name</source>
        <translation>स्तंभ &quot;%1&quot; नहीं है; person और name चाहिए</translation>
    </message>
    <message>
        <source>the row names no person</source>
        <translation>कतार में व्यक्ति का नाम नहीं है</translation>
    </message>
    <message>
        <source>%1 stands here twice, first in row %2</source>
        <translation>%1 यहाँ दो बार है, पहली बार कतार %2 में</translation>
    </message>
    <message>
        <source>no name stands here; to erase one, use `quarterstep forget`</source>
        <translation>यहाँ नाम नहीं है; मिटाने के लिए `quarterstep forget` इस्तेमाल करें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write one from %2 to %3</source>
        <translation>&quot;%1&quot; संख्या नहीं है; %2 से %3 तक की लिखें</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3</source>
        <translation>%1 %2 से %3 के बाहर है</translation>
    </message>
    <message>
        <source>a number is missing; write one from %1 to %2</source>
        <translation>संख्या नहीं है; %1 से %2 तक की लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a decimal comma; in this file write %2</source>
        <translation>&quot;%1&quot; में दशमलव अल्पविराम है; इस फ़ाइल में %2 लिखें</translation>
    </message>
    <message>
        <source>%1 is below zero; write 0 or more</source>
        <translation>%1 शून्य से कम है; 0 या अधिक लिखें</translation>
    </message>
    <message>
        <source>write %1 without a sign</source>
        <translation>%1 बिना चिह्न के लिखें</translation>
    </message>
    <message>
        <source>%1 is not a whole number; write digits only</source>
        <translation>%1 पूर्ण संख्या नहीं है; केवल अंक लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number; write digits only, for example 14</source>
        <translation>&quot;%1&quot; पूर्ण संख्या नहीं है; केवल अंक लिखें, जैसे 14</translation>
    </message>
    <message>
        <source>a whole number is missing; write one from %1 to %2</source>
        <translation>पूर्ण संख्या नहीं है; %1 से %2 तक की लिखें</translation>
    </message>
    <message>
        <source>%1 begins with a zero, which some programs read as another number; write %2</source>
        <translation>%1 शून्य से शुरू होता है, जिसे कुछ प्रोग्राम दूसरी संख्या पढ़ते हैं; %2 लिखें</translation>
    </message>
    <message>
        <source>%1 has more than three decimals; round it</source>
        <translation>%1 में तीन से अधिक दशमलव अंक हैं; पूरा करके लिखें</translation>
    </message>
    <message>
        <source>the columns are not separated by commas; save the table with commas</source>
        <translation>स्तंभ अल्पविराम से अलग नहीं हैं; तालिका अल्पविराम के साथ सहेजें</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; person, right and left are needed</source>
        <translation>स्तंभ &quot;%1&quot; नहीं है; person, right और left चाहिए</translation>
    </message>
    <message>
        <source>this column has no name; write one</source>
        <translation>इस स्तंभ का नाम नहीं है; लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say which acuity; write one of: %2</source>
        <translation>&quot;%1&quot; नहीं बताता कि कौन सी दृष्टि; इनमें से एक लिखें: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known and not used; did you mean &quot;%2&quot;?</source>
        <translation>स्तंभ &quot;%1&quot; जाना नहीं जाता और काम में नहीं लिया जाता; क्या &quot;%2&quot; लिखना था?</translation>
    </message>
    <message>
        <source>the row ends after %1 cells, the header has %2; add the missing commas</source>
        <translation>कतार %1 खानों के बाद समाप्त होती है, शीर्षक में %2 हैं; छूटे अल्पविराम लगाएँ</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds a comma in quotes</source>
        <translation>कतार में %1 खाने हैं, शीर्षक में %2; जिस खाने में अल्पविराम हो उसे उद्धरण चिह्नों में रखें</translation>
    </message>
    <message>
        <source>line %1 stands here twice, first in row %2; write one row with the whole number</source>
        <translation>पंक्ति %1 यहाँ दो बार है, पहली बार कतार %2 में; पूरी संख्या के साथ एक ही कतार लिखें</translation>
    </message>
    <message>
        <source>“%1” is not a cause; write one of %2</source>
        <translation>“%1” वजह नहीं है; %2 में से एक लिखें</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are line and quantity</source>
        <translation>स्तंभ &quot;%1&quot; नहीं है; line और quantity चाहिए</translation>
    </message>
    <message>
        <source>the row names no line</source>
        <translation>कतार में पंक्ति का नाम नहीं है</translation>
    </message>
    <message>
        <source>write format: %1</source>
        <translation>format: %1 लिखें</translation>
    </message>
    <message>
        <source>lines is a list, one item with line and quantity each</source>
        <translation>lines सूची है, हर मद में line और quantity</translation>
    </message>
    <message>
        <source>one scanned line a row; a table begins with a row that names its columns: line,quantity</source>
        <translation>हर कतार में एक स्कैन की हुई पंक्ति; तालिका ऐसी कतार से शुरू होती है जिसमें स्तंभों के नाम हों: line,quantity</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person, eye and reading, or sphere, cylinder and axis in place of reading</source>
        <translation>स्तंभ &quot;%1&quot; नहीं है; person, eye और reading चाहिए, या reading की जगह sphere, cylinder और axis</translation>
    </message>
    <message>
        <source>write each reading once: in the column reading, or in sphere, cylinder, axis</source>
        <translation>हर रीडिंग एक बार लिखें: स्तंभ reading में, या sphere, cylinder, axis में</translation>
    </message>
    <message>
        <source>the row has no person; write the code of the person</source>
        <translation>कतार में व्यक्ति नहीं है; व्यक्ति का कोड लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an eye; write right or left</source>
        <translation>&quot;%1&quot; आँख नहीं है; right या left लिखें</translation>
    </message>
    <message>
        <source>there is no reading here; write it, or delete the row</source>
        <translation>यहाँ रीडिंग नहीं है; लिखें, या कतार हटाएँ</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an axis; a cylinder needs one from 1 to 180</source>
        <translation>&quot;%1&quot; धुरी नहीं है; सिलिंडर को 1 से 180 तक की धुरी चाहिए</translation>
    </message>
    <message>
        <source>readings of the right eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>&quot;%1&quot; की दाईं आँख की रीडिंग: %2; तीन या अधिक लें</translation>
    </message>
    <message>
        <source>readings of the left eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>&quot;%1&quot; की बाईं आँख की रीडिंग: %2; तीन या अधिक लें</translation>
    </message>
    <message>
        <source>the row has no person; write a code or a name</source>
        <translation>कतार में व्यक्ति नहीं है; कोड या नाम लिखें</translation>
    </message>
    <message>
        <source>%1 is no step of 0.25 or 0.125 D; look at the writing again (3 and 5, 2 and 7 are alike)</source>
        <translation>%1 0.25 या 0.125 D का कदम नहीं है; लिखावट फिर देखें (3 और 5, 2 और 7 मिलते-जुलते हैं)</translation>
    </message>
    <message>
        <source>one eye is written with a minus cylinder, the other with a plus cylinder; both are read as written: is that meant?</source>
        <translation>एक आँख माइनस सिलिंडर से लिखी है, दूसरी प्लस सिलिंडर से; दोनों जैसी लिखी हैं वैसी पढ़ी गईं: क्या यही मतलब है?</translation>
    </message>
    <message>
        <source>age %1: is it right? Whether the rules for children count hangs on it</source>
        <translation>उम्र %1: क्या यह सही है? बच्चों के नियम लगेंगे या नहीं, यह इसी पर टिका है</translation>
    </message>
    <message>
        <source>%1 mm is narrow for both eyes together; is it monocular? Then it goes into pd_right_mm or pd_left_mm</source>
        <translation>%1 मिमी दोनों आँखों के लिए मिलाकर कम है; क्या यह एक आँख का है? तब इसे pd_right_mm या pd_left_mm में लिखें</translation>
    </message>
    <message>
        <source>the two monocular distances make %1 mm, not %2; the monocular ones are used</source>
        <translation>एक-एक आँख की दोनों दूरियाँ मिलकर %1 मिमी होती हैं, %2 नहीं; एक-एक आँख वाली ली गईं</translation>
    </message>
    <message>
        <source>the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?</source>
        <translation>पास की दूरी %1 मिमी दूर वाली %2 मिमी से अधिक है; क्या दोनों की अदला-बदली हो गई?</translation>
    </message>
    <message>
        <source>the eye&apos;s text says addition %1, this column %2; keep one</source>
        <translation>आँख के पाठ में ऐड %1 है, इस स्तंभ में %2; एक रखें</translation>
    </message>
    <message>
        <source>sphere and addition make %1 at near, the near power says %2; the near power is used</source>
        <translation>स्फ़ियर और ऐड मिलकर पास में %1 होते हैं, पास की पावर %2 कहती है; पास की पावर ली गई</translation>
    </message>
    <message>
        <source>the date %1 lies after today, %2; correct it</source>
        <translation>तारीख़ %1 आज, %2, के बाद की है; ठीक करें</translation>
    </message>
    <message>
        <source>write two numbers in mm, for example [54, 74]</source>
        <translation>मिमी में दो संख्याएँ लिखें, जैसे [54, 74]</translation>
    </message>
    <message>
        <source>the smaller number comes first</source>
        <translation>छोटी संख्या पहले आती है</translation>
    </message>
    <message>
        <source>there is no profile &quot;%1&quot; to begin from; built in, or earlier in this file, are: %2</source>
        <translation>शुरू करने के लिए &quot;%1&quot; नाम की प्रोफ़ाइल नहीं है; पहले से बनी, या इस फ़ाइल में इससे पहले, ये हैं: %2</translation>
    </message>
    <message>
        <source>the profile has no name; write one</source>
        <translation>प्रोफ़ाइल का नाम नहीं है; लिखें</translation>
    </message>
    <message>
        <source>the profile &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>प्रोफ़ाइल &quot;%1&quot; फ़ाइल में पहले से है; इसे दूसरा नाम दें</translation>
    </message>
    <message>
        <source>this is not a rules file of this program; the first key should read format: %1</source>
        <translation>यह इस प्रोग्राम की नियमों की फ़ाइल नहीं है; पहली कुंजी यह होनी चाहिए: format: %1</translation>
    </message>
    <message>
        <source>`profiles` is a list; begin each profile with a dash</source>
        <translation>`profiles` सूची है; हर प्रोफ़ाइल डैश से शुरू करें</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is not used</source>
        <translation>स्तंभ &quot;%1&quot; जाना नहीं जाता; वह काम में नहीं लिया जाता</translation>
    </message>
    <message>
        <source>this is not UTF-8 text; save the file as UTF-8</source>
        <translation>यह UTF-8 पाठ नहीं है; फ़ाइल को UTF-8 में सहेजें</translation>
    </message>
    <message>
        <source>a control character (hexadecimal %1) stands here; delete it</source>
        <translation>यहाँ नियंत्रण वर्ण (हेक्साडेसिमल %1) है; इसे हटाएँ</translation>
    </message>
    <message>
        <source>the file is larger than %1 MiB; split it</source>
        <translation>फ़ाइल %1 MiB से बड़ी है; इसे बाँटें</translation>
    </message>
    <message>
        <source>there is no such file; check the name and the folder</source>
        <translation>ऐसी फ़ाइल नहीं है; नाम और फ़ोल्डर देखें</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>फ़ाइल पढ़ी नहीं जा सकती: %1</translation>
    </message>
    <message>
        <source>this is a folder; name the file inside it</source>
        <translation>यह फ़ोल्डर है; इसके भीतर की फ़ाइल का नाम दें</translation>
    </message>
    <message>
        <source>the file is UTF-16 text; save it as UTF-8 and try again</source>
        <translation>फ़ाइल UTF-16 पाठ है; UTF-8 में सहेजें और फिर कोशिश करें</translation>
    </message>
    <message>
        <source>the file begins with two byte order marks; delete one</source>
        <translation>फ़ाइल दो byte order mark से शुरू होती है; एक हटाएँ</translation>
    </message>
    <message>
        <source>write this value without quotes, or delete the whole `written` entry</source>
        <translation>यह मान बिना उद्धरण चिह्नों के लिखें, या पूरी `written` प्रविष्टि हटाएँ</translation>
    </message>
    <message>
        <source>the value of `counts` is 8 digits of 0-9 and a-f put in by the program; delete the whole `written` entry if it was damaged</source>
        <translation>`counts` का मान 0-9 और a-f के 8 अंक हैं, जो प्रोग्राम लिखता है; यदि वह ख़राब हो गया है तो पूरी `written` प्रविष्टि हटाएँ</translation>
    </message>
    <message>
        <source>`lines` is a list; begin each line with a dash, or write lines: []</source>
        <translation>`lines` सूची है; हर पंक्ति डैश से शुरू करें, या lines: [] लिखें</translation>
    </message>
    <message>
        <source>the line &quot;%1&quot; stands in the file already, in line %2; give this one another name or add the counts together</source>
        <translation>पंक्ति &quot;%1&quot; फ़ाइल में पहले से है, पंक्ति %2 में; इसे दूसरा नाम दें या गिनतियाँ जोड़ दें</translation>
    </message>
    <message>
        <source>the code %1 stands in the file already, in line %2; each line has a code of its own</source>
        <translation>कोड %1 फ़ाइल में पहले से है, पंक्ति %2 में; हर पंक्ति का अपना कोड होता है</translation>
    </message>
    <message>
        <source>put `lines:` at the beginning of a line of its own</source>
        <translation>`lines:` को उसकी अपनी पंक्ति की शुरुआत में रखें</translation>
    </message>
    <message>
        <source>this is not a stock file of this program; the first key should read format: %1</source>
        <translation>यह इस प्रोग्राम की स्टॉक फ़ाइल नहीं है; पहली कुंजी यह होनी चाहिए: format: %1</translation>
    </message>
    <message>
        <source>the site has no name; write the camp or box</source>
        <translation>जगह का नाम नहीं है; शिविर या बक्सा लिखें</translation>
    </message>
    <message>
        <source>write the count as plain digits, without quotes: %1</source>
        <translation>गिनती सादे अंकों में लिखें, बिना उद्धरण चिह्नों के: %1</translation>
    </message>
    <message>
        <source>least (%1) is above most (%2); exchange them</source>
        <translation>सबसे कम (%1) सबसे अधिक (%2) से बड़ा है; दोनों की अदला-बदली करें</translation>
    </message>
    <message>
        <source>write the lens shapes as a list, for example [round 44]</source>
        <translation>लेंस के आकार सूची की तरह लिखें, जैसे [round 44]</translation>
    </message>
    <message>
        <source>centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure the pair again</source>
        <translation>केंद्र %1 मिमी लेंस + ब्रिज = %2 मिमी से मेल नहीं खाते; %3 से %4 की उम्मीद है: चश्मा फिर नापें</translation>
    </message>
    <message>
        <source>a lens of shape &quot;%1&quot; may fit one side only; write side: right, left or either</source>
        <translation>&quot;%1&quot; आकार का लेंस शायद एक ही तरफ़ लगे; side: right, left या either लिखें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; says nothing for a line of this kind and is not used</source>
        <translation>&quot;%1&quot; इस प्रकार की पंक्ति के लिए कुछ नहीं बताता और काम में नहीं लिया जाता</translation>
    </message>
    <message>
        <source>the line has no name; write what its label says</source>
        <translation>पंक्ति का नाम नहीं है; उसके लेबल पर जो है वह लिखें</translation>
    </message>
    <message>
        <source>the addition %1 is outside +0.25 to +6.00</source>
        <translation>ऐड %1 +0.25 से +6.00 के बाहर है</translation>
    </message>
    <message>
        <source>write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}</source>
        <translation>एक पावर लिखें, या {right: …, left: …}, या {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a bifocal&apos;s power is written {bifocal: +2.00, distance: 0.00}</source>
        <translation>बाइफ़ोकल की पावर ऐसे लिखी जाती है: {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a lens with a cylinder needs axis: any (turned when mounting) or axis: degrees as mounted</source>
        <translation>सिलिंडर वाले लेंस को axis: any (लगाते समय घुमाया जाता है) या axis: लगे लेंस के अंश चाहिए</translation>
    </message>
    <message>
        <source>the axis stands in the power already; keep one of the two</source>
        <translation>धुरी पावर में पहले से है; दोनों में से एक रखें</translation>
    </message>
    <message>
        <source>write this value in one line and without quotes, so that it can be changed</source>
        <translation>यह मान एक पंक्ति में और बिना उद्धरण चिह्नों के लिखें, ताकि बदला जा सके</translation>
    </message>
    <message>
        <source>this is a list; begin each item with a dash</source>
        <translation>यह सूची है; हर मद डैश से शुरू करें</translation>
    </message>
    <message>
        <source>“%1” stands in the list already, in line %2; keep one of the two</source>
        <translation>“%1” सूची में पहले से है, पंक्ति %2 में; दोनों में से एक रखें</translation>
    </message>
    <message>
        <source>write the lines of the pack with their pieces, as {N+200-62M: 2}</source>
        <translation>पैक की पंक्तियाँ उनके नगों के साथ लिखें, जैसे {N+200-62M: 2}</translation>
    </message>
    <message>
        <source>the pack holds &quot;%1&quot;, which is not among the lines of this list</source>
        <translation>पैक में &quot;%1&quot; है, जो इस सूची की पंक्तियों में नहीं है</translation>
    </message>
    <message>
        <source>contact lenses were worn during this reading; the row is left out</source>
        <translation>इस रीडिंग के समय कॉन्टैक्ट लेंस पहने थे; कतार छोड़ दी गई</translation>
    </message>
    <message>
        <source>neither eye has sphere, cylinder and axis; the row is left out</source>
        <translation>किसी आँख में स्फ़ियर, सिलिंडर और धुरी नहीं हैं; कतार छोड़ दी गई</translation>
    </message>
    <message>
        <source>this eye has no complete reading and is taken as not measured</source>
        <translation>इस आँख की पूरी रीडिंग नहीं है और इसे नहीं नापी माना गया</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the words allowed here; write one of: %2</source>
        <translation>&quot;%1&quot; यहाँ चलने वाले शब्दों में नहीं है; इनमें से एक लिखें: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds two numbers; write one here, each eye&apos;s own in pd_right_mm and pd_left_mm, the near one in near_pd_mm</source>
        <translation>&quot;%1&quot; में दो संख्याएँ हैं; यहाँ एक लिखें, हर आँख की अपनी pd_right_mm और pd_left_mm में, पास वाली near_pd_mm में</translation>
    </message>
    <message>
        <source>%1 would be a distance in cm; write it in mm: %2</source>
        <translation>%1 सेमी में दूरी होगी; इसे मिमी में लिखें: %2</translation>
    </message>
    <message>
        <source>%1 mm is not a pupillary distance; expected are %2 to %3 mm</source>
        <translation>%1 मिमी पुतलियों के बीच की दूरी नहीं हो सकती; %2 से %3 मिमी की उम्मीद है</translation>
    </message>
    <message>
        <source>an addition is never minus; %1 was read; write the addition, not the near power (that goes into near_right and near_left)</source>
        <translation>ऐड कभी माइनस नहीं होता; %1 पढ़ा गया; ऐड लिखें, पास की पावर नहीं (वह near_right और near_left में जाती है)</translation>
    </message>
    <message>
        <source>the addition %1 is outside 0.00 to +6.00</source>
        <translation>ऐड %1 0.00 से +6.00 के बाहर है</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date of the form 2026-03-01 (year-month-day)</source>
        <translation>&quot;%1&quot; 2026-03-01 जैसी तारीख़ नहीं है (वर्ष-माह-दिन)</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot; in the table</source>
        <translation>तालिका में स्तंभ &quot;%1&quot; नहीं है</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and lines</source>
        <translation>स्तंभ &quot;%1&quot; नहीं है; person और lines चाहिए</translation>
    </message>
    <message>
        <source>“%1” is not a purpose; write distance, near, intermediate or bifocal</source>
        <translation>“%1” उद्देश्य नहीं है; distance, near, intermediate या bifocal लिखें</translation>
    </message>
    <message>
        <source>the row needs a person and lines</source>
        <translation>कतार में person और lines चाहिए</translation>
    </message>
    <message>
        <source>write one line, or frame + right lens + left lens</source>
        <translation>एक पंक्ति लिखें, या फ़्रेम + दायाँ लेंस + बायाँ लेंस</translation>
    </message>
    <message>
        <source>write two powers, for example [1.00, 3.50]</source>
        <translation>दो पावर लिखें, जैसे [1.00, 3.50]</translation>
    </message>
    <message>
        <source>a set that is not enabled says why; add: why</source>
        <translation>जो सेट चालू नहीं है वह कारण बताता है; जोड़ें: why</translation>
    </message>
    <message>
        <source>this set is enabled though its figures are from memory; once they are compared with the standard, say so under confidence</source>
        <translation>यह सेट चालू है, जबकि इसके अंक याद से लिखे हैं; मानक से मिला लेने के बाद confidence में यह लिखें</translation>
    </message>
    <message>
        <source>the set &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>सेट &quot;%1&quot; फ़ाइल में पहले से है; इसे दूसरा नाम दें</translation>
    </message>
    <message>
        <source>this is not a tolerance file of this program; the first key should read format: %1</source>
        <translation>यह इस प्रोग्राम की टॉलरेंस फ़ाइल नहीं है; पहली कुंजी यह होनी चाहिए: format: %1</translation>
    </message>
    <message>
        <source>`sets` is a list; begin each set with a dash</source>
        <translation>`sets` सूची है; हर सेट डैश से शुरू करें</translation>
    </message>
    <message>
        <source>write the rows as a list: [{power up to: 6.50, limit: 0.13}, …]</source>
        <translation>कतारें सूची की तरह लिखें: [{power up to: 6.50, limit: 0.13}, …]</translation>
    </message>
    <message>
        <source>a row has one of: limit, percent, or not judged: yes</source>
        <translation>कतार में इनमें से एक होता है: limit, percent, या not judged: yes</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; it names the hand-over</source>
        <translation>स्तंभ &quot;%1&quot; नहीं है; उसमें वितरण का नाम होता है</translation>
    </message>
    <message>
        <source>the row names no hand-over</source>
        <translation>कतार में वितरण का नाम नहीं है</translation>
    </message>
    <message>
        <source>%1 stands here twice</source>
        <translation>%1 यहाँ दो बार है</translation>
    </message>
    <message>
        <source>a single value is expected here, not a list or a map</source>
        <translation>यहाँ एक ही मान चाहिए, सूची या कुंजी-मान नहीं</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds a line break or a control character; write it on one line</source>
        <translation>&quot;%1&quot; में पंक्ति का अंत या नियंत्रण वर्ण है; इसे एक पंक्ति में लिखें</translation>
    </message>
    <message>
        <source>keys with values are expected here, such as: %1</source>
        <translation>यहाँ मानों के साथ कुंजियाँ चाहिए, जैसे: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is written twice; the first stands in line %2; keep one</source>
        <translation>&quot;%1&quot; दो बार लिखा है; पहला पंक्ति %2 में है; एक रखें</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; known are: %2</source>
        <translation>कुंजी &quot;%1&quot; यहाँ नहीं जानी जाती; ये जानी जाती हैं: %2</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; did you mean &quot;%2&quot;?</source>
        <translation>कुंजी &quot;%1&quot; यहाँ नहीं जानी जाती; क्या &quot;%2&quot; लिखना था?</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is missing here; add it</source>
        <translation>यहाँ कुंजी &quot;%1&quot; नहीं है; जोड़ें</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no value; write one after the colon</source>
        <translation>&quot;%1&quot; का मान नहीं है; कोलन के बाद लिखें</translation>
    </message>
    <message>
        <source>a second document begins here; keep one document in the file</source>
        <translation>यहाँ दूसरा document शुरू होता है; फ़ाइल में एक ही document रखें</translation>
    </message>
    <message>
        <source>an alias (*name) is not read here; write the value out</source>
        <translation>alias (*name) यहाँ नहीं पढ़ा जाता; मान पूरा लिखें</translation>
    </message>
    <message>
        <source>this quote is never closed; close it on the same line</source>
        <translation>यह उद्धरण चिह्न कहीं बंद नहीं होता; इसी पंक्ति में बंद करें</translation>
    </message>
    <message>
        <source>an anchor (&amp;name) is not read here; delete it</source>
        <translation>anchor (&amp;name) यहाँ नहीं पढ़ा जाता; इसे हटाएँ</translation>
    </message>
    <message>
        <source>a tag (!name) is not read here; delete it</source>
        <translation>tag (!name) यहाँ नहीं पढ़ा जाता; इसे हटाएँ</translation>
    </message>
    <message>
        <source>the nesting is deeper than %1; this is not such a file</source>
        <translation>स्तर %1 से अधिक गहरे हैं; यह ऐसी फ़ाइल नहीं है</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>कुंजी सादा शब्द होनी चाहिए</translation>
    </message>
    <message>
        <source>this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or a tab in the indentation, here or on the line above</source>
        <translation>यह YAML के रूप में नहीं पढ़ा जा सकता: %1; छूटा कोलन, उद्धरण चिह्न या कोष्ठक, या शुरू की खाली जगह में टैब खोजें, यहाँ या ऊपर की पंक्ति में</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>फ़ाइल खाली है</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>opened</source>
        <translation>खोला</translation>
    </message>
    <message>
        <source>received</source>
        <translation>मिला</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>दिया</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>लौटा</translation>
    </message>
    <message>
        <source>exchanged</source>
        <translation>बदला</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>गिना</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>हटाया</translation>
    </message>
    <message>
        <source>held</source>
        <translation>रोका</translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation>क्वारंटीन में रखा</translation>
    </message>
    <message>
        <source>released</source>
        <translation>क्वारंटीन से निकाला</translation>
    </message>
    <message>
        <source>transferred out</source>
        <translation>बाहर भेजा</translation>
    </message>
    <message>
        <source>transferred in</source>
        <translation>दूसरी जगह से आया</translation>
    </message>
    <message>
        <source>no spectacles needed</source>
        <translation>चश्मे की ज़रूरत नहीं</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>मना किया</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>अधूरा</translation>
    </message>
    <message>
        <source>repaired or adjusted</source>
        <translation>मरम्मत या समायोजन</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>मँगाया</translation>
    </message>
    <message>
        <source>order arrived</source>
        <translation>ऑर्डर आया</translation>
    </message>
    <message>
        <source>order checked</source>
        <translation>ऑर्डर जाँचा</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>सौंपा</translation>
    </message>
    <message>
        <source>sent back to be remade</source>
        <translation>फिर बनाने भेजा</translation>
    </message>
    <message>
        <source>not collected</source>
        <translation>नहीं ले गए</translation>
    </message>
    <message>
        <source>referred</source>
        <translation>रेफ़र किया</translation>
    </message>
    <message>
        <source>not served from stock</source>
        <translation>स्टॉक से नहीं मिला</translation>
    </message>
    <message>
        <source>exported</source>
        <translation>निर्यात किया</translation>
    </message>
    <message>
        <source>drawn for the bench</source>
        <translation>जाँच मेज़ के लिए निकाला</translation>
    </message>
    <message>
        <source>read at the bench</source>
        <translation>जाँच मेज़ पर पढ़ा</translation>
    </message>
    <message>
        <source>seen again</source>
        <translation>फिर देखा</translation>
    </message>
    <message>
        <source>entered in error</source>
        <translation>ग़लती से लिखा</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>ख़राब</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>नहीं मिला</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>चोरी</translation>
    </message>
    <message>
        <source>found</source>
        <translation>मिल गया</translation>
    </message>
    <message>
        <source>miscounted</source>
        <translation>ग़लत गिना</translation>
    </message>
    <message>
        <source>off its label</source>
        <translation>लेबल से अलग</translation>
    </message>
    <message>
        <source>mislabelled</source>
        <translation>ग़लत लेबल</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>नमूना</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>दान में दिया</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>वापस मँगाया गया</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>The child was given glasses: %1.</source>
        <translation>बच्चे को चश्मा दिया गया: %1।</translation>
    </message>
    <message>
        <source>Glasses are suggested for the child: %1.</source>
        <translation>बच्चे के लिए चश्मे का सुझाव है: %1।</translation>
    </message>
    <message>
        <source>Glasses are to be made for the child.</source>
        <translation>बच्चे के लिए चश्मा बनाया जाएगा।</translation>
    </message>
    <message>
        <source>The child needs no glasses for this.</source>
        <translation>इसके लिए बच्चे को चश्मे की ज़रूरत नहीं है।</translation>
    </message>
    <message>
        <source>The eye test is not finished; the child comes again.</source>
        <translation>आँखों की जाँच पूरी नहीं हुई; बच्चा फिर आए।</translation>
    </message>
    <message>
        <source>The child should see the eye clinic before any glasses.</source>
        <translation>कोई भी चश्मा देने से पहले नेत्र चिकित्सालय बच्चे को देखे।</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic today.</source>
        <translation>कृपया आज ही बच्चे और पत्र को नेत्र चिकित्सालय ले जाएँ।</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic in the next days.</source>
        <translation>कृपया अगले कुछ दिनों में बच्चे और पत्र को नेत्र चिकित्सालय ले जाएँ।</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic when it next receives people.</source>
        <translation>कृपया नेत्र चिकित्सालय के अगले खुले दिन बच्चे और पत्र को वहाँ ले जाएँ।</translation>
    </message>
    <message>
        <source>The eyes of your child were tested.</source>
        <translation>आपके बच्चे की आँखों की जाँच हुई।</translation>
    </message>
    <message>
        <source>To be worn (as the prescriber told)</source>
        <translation>कब पहनें (जैसा चश्मा लिखने वाले ने बताया)</translation>
    </message>
    <message>
        <source>The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: take them off and go to an eye clinic the same day.</source>
        <translation>चश्मा एक सप्ताह तक अजीब लग सकता है। दोहरा दिखे, दर्द हो या अचानक दिखना बंद हो: चश्मा उतार दें और उसी दिन नेत्र चिकित्सालय जाएँ।</translation>
    </message>
    <message>
        <source>Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>6 से 12 महीने में फिर आएँ, या आँख तिरछी होने या कम दिखने पर तुरंत।</translation>
    </message>
    <message>
        <source>Told to (guardian), by</source>
        <translation>किसे बताया (अभिभावक), किसने</translation>
    </message>
    <message>
        <source>Please help the child to wear them, and to keep them clean and in their case.</source>
        <translation>कृपया बच्चे को चश्मा पहनने और उसे साफ़ व डिब्बे में रखने में मदद करें।</translation>
    </message>
    <message>
        <source>Please let the child sit where the board is read easily.</source>
        <translation>कृपया बच्चे को वहाँ बैठाएँ जहाँ से बोर्ड आसानी से पढ़ा जाए।</translation>
    </message>
    <message>
        <source>Tell the guardian at once if an eye turns or hurts, or if the child sees worse.</source>
        <translation>आँख तिरछी हो, दर्द करे या बच्चे को कम दिखे तो अभिभावक को तुरंत बताएँ।</translation>
    </message>
    <message>
        <source>Your glasses</source>
        <translation>आपका चश्मा</translation>
    </message>
    <message>
        <source>Glasses suggested for you</source>
        <translation>आपके लिए सुझाया गया चश्मा</translation>
    </message>
    <message>
        <source>Glasses to be made for you</source>
        <translation>आपके लिए चश्मा बनाया जाएगा</translation>
    </message>
    <message>
        <source>No glasses needed</source>
        <translation>चश्मे की ज़रूरत नहीं</translation>
    </message>
    <message>
        <source>Not finished yet</source>
        <translation>अभी पूरा नहीं हुआ</translation>
    </message>
    <message>
        <source>Please go to the eye clinic first</source>
        <translation>कृपया पहले नेत्र चिकित्सालय जाएँ</translation>
    </message>
    <message>
        <source>Go to the eye clinic today, and take the letter.</source>
        <translation>आज ही नेत्र चिकित्सालय जाएँ और पत्र साथ ले जाएँ।</translation>
    </message>
    <message>
        <source>Go to the eye clinic in the next days, and take the letter.</source>
        <translation>अगले कुछ दिनों में नेत्र चिकित्सालय जाएँ और पत्र साथ ले जाएँ।</translation>
    </message>
    <message>
        <source>Go to the eye clinic when it next receives people, and take the letter.</source>
        <translation>नेत्र चिकित्सालय के अगले खुले दिन वहाँ जाएँ और पत्र साथ ले जाएँ।</translation>
    </message>
    <message>
        <source>right lens %1</source>
        <translation>दायाँ लेंस %1</translation>
    </message>
    <message>
        <source>left lens %1</source>
        <translation>बायाँ लेंस %1</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>फ़्रेम %1</translation>
    </message>
    <message>
        <source>What you were given</source>
        <translation>आपको क्या दिया गया</translation>
    </message>
    <message>
        <source>What is suggested</source>
        <translation>क्या सुझाया गया है</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>ऐड %1</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>लाइन</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>फ़्रेम</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>क्या बाकी रहता है</translation>
    </message>
    <message>
        <source>Outside limit: %1.</source>
        <translation>सीमा से बाहर: %1।</translation>
    </message>
    <message>
        <source>Given because</source>
        <translation>देने का कारण</translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation>कृपया ध्यान दें</translation>
    </message>
    <message>
        <source>This pair was worn by somebody before.</source>
        <translation>यह चश्मा पहले किसी और ने पहना था।</translation>
    </message>
    <message>
        <source>You see with one eye: ask for lenses that do not break, and wear eye protection.</source>
        <translation>आप एक आँख से देखते हैं: न टूटने वाले लेंस माँगें और आँखों का बचाव पहनें।</translation>
    </message>
    <message>
        <source>New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop wearing them and go to an eye clinic the same day.</source>
        <translation>नया चश्मा एक सप्ताह तक अजीब लग सकता है। दोहरा दिखे, दर्द हो या अचानक दिखना बंद हो: पहनना बंद करें और उसी दिन नेत्र चिकित्सालय जाएँ।</translation>
    </message>
    <message>
        <source>Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>जैसा चश्मा लिखने वाले ने बताया वैसे पहनें। 6 से 12 महीने में फिर आएँ, या आँख तिरछी होने या कम दिखने पर तुरंत।</translation>
    </message>
    <message>
        <source>Come back if your sight changes, and for a new eye test in two years.</source>
        <translation>नज़र बदले तो फिर आएँ, और दो साल में आँखों की नई जाँच के लिए।</translation>
    </message>
    <message>
        <source>Nothing in the box comes near enough, so glasses are to be made.</source>
        <translation>डिब्बे में कुछ भी काफ़ी पास का नहीं है, इसलिए चश्मा बनाया जाएगा।</translation>
    </message>
    <message>
        <source>For the optician</source>
        <translation>ऑप्टिशियन के लिए</translation>
    </message>
    <message>
        <source>Collect at</source>
        <translation>कहाँ से लें</translation>
    </message>
    <message>
        <source>On or after</source>
        <translation>इस दिन या उसके बाद</translation>
    </message>
    <message>
        <source>Until then: temporary pair. Not for driving.</source>
        <translation>तब तक: अस्थायी चश्मा। गाड़ी चलाने के लिए नहीं।</translation>
    </message>
    <message>
        <source>Something is missing before glasses can be given:</source>
        <translation>चश्मा देने से पहले कुछ बाकी है:</translation>
    </message>
    <message>
        <source>Come back on</source>
        <translation>फिर आने का दिन</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>क्योंकि</translation>
    </message>
    <message>
        <source>Glasses wait until the clinic has seen your eyes.</source>
        <translation>जब तक चिकित्सालय आपकी आँखें न देख ले, चश्मा रुकेगा।</translation>
    </message>
    <message>
        <source>Your prescription</source>
        <translation>आपका नुस्ख़ा</translation>
    </message>
    <message>
        <source>Your eyes should be measured once more.</source>
        <translation>आपकी आँखें एक बार फिर नापी जानी चाहिए।</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>दायाँ</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>बायाँ</translation>
    </message>
    <message>
        <source>NEAR</source>
        <translation>पास</translation>
    </message>
    <message>
        <source>DISTANCE</source>
        <translation>दूर</translation>
    </message>
    <message>
        <source>ARM&apos;S LENGTH</source>
        <translation>हाथ की दूरी</translation>
    </message>
    <message>
        <source>BIFOCAL</source>
        <translation>बाइफ़ोकल</translation>
    </message>
    <message>
        <source>centres %1 mm (assumed)</source>
        <translation>केंद्र %1 मिमी (अनुमान)</translation>
    </message>
    <message>
        <source>centres %1 mm</source>
        <translation>केंद्र %1 मिमी</translation>
    </message>
    <message>
        <source>size S</source>
        <translation>आकार छोटा</translation>
    </message>
    <message>
        <source>size M</source>
        <translation>आकार मध्यम</translation>
    </message>
    <message>
        <source>size L</source>
        <translation>आकार बड़ा</translation>
    </message>
    <message>
        <source>axis set when mounted</source>
        <translation>धुरी लगाते समय तय होगी</translation>
    </message>
    <message>
        <source>used pair</source>
        <translation>पहले पहना हुआ</translation>
    </message>
    <message>
        <source>Rules %1, program %2.</source>
        <translation>नियम %1, प्रोग्राम %2।</translation>
    </message>
    <message>
        <source>For near work only.</source>
        <translation>केवल पास के काम के लिए।</translation>
    </message>
    <message>
        <source>Day and place</source>
        <translation>दिन और जगह</translation>
    </message>
    <message>
        <source>Box %1: %2 pieces</source>
        <translation>डिब्बा %1: %2 नग</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>खाना</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>पावर</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>रखा</translation>
    </message>
    <message>
        <source>Packed by</source>
        <translation>किसने रखा</translation>
    </message>
    <message>
        <source>Counted again by</source>
        <translation>किसने दोबारा गिना</translation>
    </message>
    <message>
        <source>Count what lies there. Two persons; what the book says is not asked before the end.</source>
        <translation>जो रखा है उसे गिनें। दो लोग; बही में क्या है, यह अंत से पहले न पूछें।</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>गिना</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>टिप्पणी</translation>
    </message>
    <message>
        <source>Counted by (initials)</source>
        <translation>किसने गिना (आद्याक्षर)</translation>
    </message>
    <message>
        <source>Second person (initials)</source>
        <translation>दूसरा व्यक्ति (आद्याक्षर)</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter, take the acuity with it, then compare with the record. Where they differ write: the record does not match the pair.</source>
        <translation>फ़ोसीमीटर से चश्मा पढ़ें, उसके साथ दृष्टि नापें, फिर अभिलेख से मिलाएँ। जहाँ फ़र्क हो वहाँ लिखें: अभिलेख चश्मे से मेल नहीं खाता।</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>प्रविष्टि</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>कोड</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>अभिलेख</translation>
    </message>
    <message>
        <source>Read right</source>
        <translation>दायाँ पढ़ा</translation>
    </message>
    <message>
        <source>Read left</source>
        <translation>बायाँ पढ़ा</translation>
    </message>
    <message>
        <source>Acuity</source>
        <translation>दृष्टि</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>निष्कर्ष</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>किसने पढ़ा</translation>
    </message>
    <message>
        <source>no power</source>
        <translation>बिना पावर</translation>
    </message>
    <message>
        <source>Eye</source>
        <translation>आँख</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>ऐड</translation>
    </message>
    <message>
        <source>Prism</source>
        <translation>प्रिज़्म</translation>
    </message>
    <message>
        <source>Centre, mm</source>
        <translation>केंद्र, मिमी</translation>
    </message>
    <message>
        <source>Height, mm</source>
        <translation>ऊँचाई, मिमी</translation>
    </message>
    <message>
        <source>minus cylinders</source>
        <translation>माइनस सिलिंडर</translation>
    </message>
    <message>
        <source>plus cylinders</source>
        <translation>प्लस सिलिंडर</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>जैसा लिखा है</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>आकार</translation>
    </message>
    <message>
        <source>Vertex distance, mm</source>
        <translation>वर्टेक्स दूरी, मिमी</translation>
    </message>
    <message>
        <source>Working distance, mm</source>
        <translation>काम की दूरी, मिमी</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>चश्मा लिखने वाला</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>उद्देश्य</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>रूप</translation>
    </message>
    <message>
        <source>* half of the distance between both eyes, not measured for this eye</source>
        <translation>* दोनों आँखों की दूरी का आधा, इस आँख के लिए नापा नहीं गया</translation>
    </message>
    <message>
        <source>Not to be sent before these are measured:</source>
        <translation>इन्हें नापने से पहले न भेजें:</translation>
    </message>
    <message>
        <source>Wanted by, signature</source>
        <translation>कब तक चाहिए, हस्ताक्षर</translation>
    </message>
    <message>
        <source>Glasses are being made for you: %1.</source>
        <translation>आपके लिए चश्मा बन रहा है: %1।</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>मँगाने का दिन</translation>
    </message>
    <message>
        <source>Bring this paper. The glasses are measured and tried on you before you take them home.</source>
        <translation>यह काग़ज़ लाएँ। घर ले जाने से पहले चश्मा नापा और आपको पहनाकर देखा जाएगा।</translation>
    </message>
    <message>
        <source>If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly lost: do not wait, go to an eye clinic the same day.</source>
        <translation>आ न सकें तो किसी को बताने भेजें। नज़र घटे, दर्द हो या अचानक दिखना बंद हो: रुकें नहीं, उसी दिन नेत्र चिकित्सालय जाएँ।</translation>
    </message>
    <message>
        <source>Rules %1, program version %2.</source>
        <translation>नियम %1, प्रोग्राम संस्करण %2।</translation>
    </message>
    <message>
        <source>balance lens</source>
        <translation>संतुलन लेंस</translation>
    </message>
    <message>
        <source>artificial eye</source>
        <translation>कृत्रिम आँख</translation>
    </message>
    <message>
        <source>does not see</source>
        <translation>नहीं दिखता</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>नापा नहीं गया</translation>
    </message>
    <message>
        <source>Note for the person</source>
        <translation>व्यक्ति के लिए पर्ची</translation>
    </message>
    <message>
        <source>Label of a line</source>
        <translation>लाइन का लेबल</translation>
    </message>
    <message>
        <source>Label of a bin</source>
        <translation>खाने का लेबल</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>पैकिंग सूची</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>गिनती की पर्ची</translation>
    </message>
    <message>
        <source>Audit worksheet</source>
        <translation>जाँच की पर्ची</translation>
    </message>
    <message>
        <source>Order to the laboratory</source>
        <translation>प्रयोगशाला को ऑर्डर</translation>
    </message>
    <message>
        <source>Letter to the eye clinic</source>
        <translation>नेत्र चिकित्सालय के नाम पत्र</translation>
    </message>
    <message>
        <source>Glasses to collect</source>
        <translation>चश्मा ले जाने की पर्ची</translation>
    </message>
    <message>
        <source>Note for the guardian</source>
        <translation>अभिभावक के लिए पर्ची</translation>
    </message>
    <message>
        <source>Note for the teacher</source>
        <translation>शिक्षक के लिए पर्ची</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>त्वरित कार्ड</translation>
    </message>
    <message>
        <source>Right eye</source>
        <translation>दायीं आँख</translation>
    </message>
    <message>
        <source>Left eye</source>
        <translation>बायीं आँख</translation>
    </message>
    <message>
        <source>Distance, as written</source>
        <translation>दूर, जैसा लिखा है</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>पास</translation>
    </message>
    <message>
        <source>for near: reading, sewing, telephone</source>
        <translation>पास के लिए: पढ़ना, सिलाई, फ़ोन</translation>
    </message>
    <message>
        <source>for work at arm&apos;s length</source>
        <translation>हाथ की दूरी के काम के लिए</translation>
    </message>
    <message>
        <source>for far (upper part) and near (lower part)</source>
        <translation>दूर (ऊपरी भाग) और पास (निचला भाग) के लिए</translation>
    </message>
    <message>
        <source>for far: walking, school board, faces</source>
        <translation>दूर के लिए: चलना, बोर्ड, चेहरे</translation>
    </message>
    <message>
        <source>For near work only. Not for walking, riding or driving.</source>
        <translation>केवल पास के काम के लिए। चलने, सवारी या गाड़ी चलाने के लिए नहीं।</translation>
    </message>
    <message>
        <source>For work at arm&apos;s length only. Not for walking, riding or driving.</source>
        <translation>केवल हाथ की दूरी के काम के लिए। चलने, सवारी या गाड़ी चलाने के लिए नहीं।</translation>
    </message>
    <message>
        <source>The lower part is for near: take care on steps and kerbs. Drive only if your sight with these meets the law where you live.</source>
        <translation>निचला भाग पास के लिए है: सीढ़ी और किनारों पर ध्यान रखें। गाड़ी तभी चलाएँ जब इसके साथ आपकी नज़र आपके यहाँ के क़ानून पर खरी उतरे।</translation>
    </message>
    <message>
        <source>Drive only if your sight with these meets the law where you live.</source>
        <translation>गाड़ी तभी चलाएँ जब इसके साथ आपकी नज़र आपके यहाँ के क़ानून पर खरी उतरे।</translation>
    </message>
    <message>
        <source>Suggested from the prescription of %1 of %2 by rules %3, version %4. This is not an eye examination.</source>
        <translation>%1 के %2 के नुस्ख़े से, नियम %3, संस्करण %4 के अनुसार सुझाया गया। यह आँखों की जाँच नहीं है।</translation>
    </message>
    <message>
        <source>(prescriber not named)</source>
        <translation>(लिखने वाले का नाम नहीं)</translation>
    </message>
    <message>
        <source>(no date)</source>
        <translation>(बिना तारीख)</translation>
    </message>
    <message>
        <source>Type the camp code and the final prescription as written; signs always.</source>
        <translation>शिविर कोड और अंतिम नुस्ख़ा जैसा लिखा है वैसा भरें; चिह्न हमेशा लिखें।</translation>
    </message>
    <message>
        <source>Pain, red eye, sudden loss, flashes, double vision: the clinic first.</source>
        <translation>दर्द, लाल आँख, अचानक न दिखना, चमक, दोहरा दिखना: पहले चिकित्सालय।</translation>
    </message>
    <message>
        <source>Measure the distance between the eyes; for reading the near one.</source>
        <translation>आँखों के बीच की दूरी नापें; पढ़ने के लिए पास की।</translation>
    </message>
    <message>
        <source>Fetch what is suggested from its bin and scan the label.</source>
        <translation>जो सुझाया गया उसे खाने से लाएँ और लेबल स्कैन करें।</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter: does it hold what the label says?</source>
        <translation>फ़ोसीमीटर से पढ़ें: क्या वही है जो लेबल कहता है?</translation>
    </message>
    <message>
        <source>Try it on the face; take the acuity of each eye with it.</source>
        <translation>चेहरे पर पहनाकर देखें; हर आँख की दृष्टि नापें।</translation>
    </message>
    <message>
        <source>Outside a limit: say no, or write the reason in your own words.</source>
        <translation>सीमा से बाहर: मना करें, या कारण अपने शब्दों में लिखें।</translation>
    </message>
    <message>
        <source>Tell what the glasses are for, what is left, and when to come back; give the note.</source>
        <translation>बताएँ चश्मा किस लिए है, क्या बाकी है और कब आना है; पर्ची दें।</translation>
    </message>
    <message>
        <source>Put back what was tried and not taken, each into the bin of its label.</source>
        <translation>जो आज़माया पर लिया नहीं, उसे उसके लेबल के खाने में लौटाएँ।</translation>
    </message>
    <message>
        <source>Take in a delivery by scanning it; a new lot waits until samples are read.</source>
        <translation>आया माल स्कैन करके लें; नई खेप नमूने पढ़े जाने तक रुके।</translation>
    </message>
    <message>
        <source>Print labels for what came; one on each case, one on each bin.</source>
        <translation>आए माल के लेबल छापें; हर डिब्बी पर एक, हर खाने पर एक।</translation>
    </message>
    <message>
        <source>A pair off its label goes into quarantine, never back into the bin.</source>
        <translation>लेबल से अलग चश्मा अलग रखा जाए, खाने में कभी न लौटे।</translation>
    </message>
    <message>
        <source>Returned pairs are cleaned and read before they are given again.</source>
        <translation>लौटे चश्मे दोबारा देने से पहले साफ़ और पढ़े जाएँ।</translation>
    </message>
    <message>
        <source>Count by two persons on the blind sheet; every difference has a reason.</source>
        <translation>दो लोग कोरी पर्ची पर गिनें; हर फ़र्क का कारण हो।</translation>
    </message>
    <message>
        <source>Send to another site with a list; what arrives is counted there.</source>
        <translation>दूसरी जगह सूची के साथ भेजें; जो पहुँचे वह वहाँ गिना जाए।</translation>
    </message>
    <message>
        <source>Close the program, then copy the whole folder to a stick at the end of the day.</source>
        <translation>दिन के अंत में प्रोग्राम बंद करें, फिर पूरा फ़ोल्डर स्टिक पर उतारें।</translation>
    </message>
    <message>
        <source>Choose the rules with the prescriber, and name them to the team.</source>
        <translation>नियम चश्मा लिखने वाले के साथ चुनें और टीम को बताएँ।</translation>
    </message>
    <message>
        <source>Look at what was given outside a limit, and at its reasons, each evening.</source>
        <translation>सीमा से बाहर क्या दिया गया और क्यों, हर शाम देखें।</translation>
    </message>
    <message>
        <source>Every letter to the clinic is counted when its lower part comes back.</source>
        <translation>चिकित्सालय का हर पत्र तब गिना जाए जब उसका निचला भाग लौटे।</translation>
    </message>
    <message>
        <source>Every pair that is ordered is followed until it is collected.</source>
        <translation>हर मँगाए चश्मे पर नज़र रहे जब तक वह ले न लिया जाए।</translation>
    </message>
    <message>
        <source>Take a sample of pairs, read them, and look for the slip, not for somebody to blame.</source>
        <translation>कुछ चश्मे लेकर पढ़ें; चूक खोजें, दोषी नहीं।</translation>
    </message>
    <message>
        <source>Codes leave the camp, names do not.</source>
        <translation>शिविर से कोड बाहर जाएँ, नाम नहीं।</translation>
    </message>
    <message>
        <source>Quick card: at the table</source>
        <translation>त्वरित कार्ड: मेज़ पर</translation>
    </message>
    <message>
        <source>Quick card: keeper of the box</source>
        <translation>त्वरित कार्ड: डिब्बे का रखवाला</translation>
    </message>
    <message>
        <source>Quick card: supervisor</source>
        <translation>त्वरित कार्ड: पर्यवेक्षक</translation>
    </message>
    <message>
        <source>Told with every pair</source>
        <translation>हर चश्मे के साथ बताएँ</translation>
    </message>
    <message>
        <source>A suggestion is not an eye examination. The prescriber and the optician decide.</source>
        <translation>सुझाव आँखों की जाँच नहीं है। निर्णय चश्मा लिखने वाले और ऑप्टिशियन का है।</translation>
    </message>
    <message>
        <source>Says that sight was lost suddenly.</source>
        <translation>कहते हैं कि अचानक दिखना बंद हुआ।</translation>
    </message>
    <message>
        <source>Says that an eye hurts.</source>
        <translation>कहते हैं कि आँख में दर्द है।</translation>
    </message>
    <message>
        <source>An eye is red.</source>
        <translation>आँख लाल है।</translation>
    </message>
    <message>
        <source>Sees new flashes or floaters.</source>
        <translation>नई चमक या तैरते धब्बे दिखते हैं।</translation>
    </message>
    <message>
        <source>Sees double.</source>
        <translation>दोहरा दिखता है।</translation>
    </message>
    <message>
        <source>A pupil looks white.</source>
        <translation>पुतली सफ़ेद दिखती है।</translation>
    </message>
    <message>
        <source>A child; the eyes do not look the same way.</source>
        <translation>बच्चा; आँखें एक ओर नहीं देखतीं।</translation>
    </message>
    <message>
        <source>The prescriber asks for a refraction with drops.</source>
        <translation>लिखने वाला बूँदों के साथ जाँच चाहता है।</translation>
    </message>
    <message>
        <source>Straight lines look bent or broken.</source>
        <translation>सीधी रेखाएँ टेढ़ी या टूटी दिखती हैं।</translation>
    </message>
    <message>
        <source>A part of the field of view is missing.</source>
        <translation>देखने के दायरे का एक भाग नहीं दिखता।</translation>
    </message>
    <message>
        <source>Sees rings round lights.</source>
        <translation>रोशनी के चारों ओर घेरे दिखते हैं।</translation>
    </message>
    <message>
        <source>A child who does not reach 6/9 in each eye with the final prescription.</source>
        <translation>बच्चा, जो अंतिम नुस्ख़े से हर आँख में 6/9 तक नहीं पहुँचता।</translation>
    </message>
    <message>
        <source>A child who came with less than 6/60 in an eye.</source>
        <translation>बच्चा, जिसकी एक आँख की दृष्टि 6/60 से कम थी।</translation>
    </message>
    <message>
        <source>A child with +3.50 D or more, or a cylinder of 1.50 D or more.</source>
        <translation>बच्चा, ⁦+3.50⁩ D या अधिक, या 1.50 D या अधिक का सिलिंडर।</translation>
    </message>
    <message>
        <source>Under 8 years; the eyes differ by 1.50 D or more.</source>
        <translation>8 साल से कम; आँखों में 1.50 D या अधिक का अंतर।</translation>
    </message>
    <message>
        <source>Less than 6/12 in the better eye with the best prescription found.</source>
        <translation>पाए गए सबसे अच्छे नुस्ख़े से बेहतर आँख में 6/12 से कम।</translation>
    </message>
    <message>
        <source>A mean sphere beyond 6.00 D.</source>
        <translation>औसत स्फ़ियर 6.00 D से अधिक।</translation>
    </message>
    <message>
        <source>A sphere of +8.00 D or more.</source>
        <translation>स्फ़ियर ⁦+8.00⁩ D या अधिक।</translation>
    </message>
    <message>
        <source>What was observed</source>
        <translation>क्या देखा गया</translation>
    </message>
    <message>
        <source>In the person&apos;s words</source>
        <translation>व्यक्ति के शब्दों में</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>बिना चश्मे</translation>
    </message>
    <message>
        <source>own pair</source>
        <translation>अपना चश्मा</translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation>पिनहोल</translation>
    </message>
    <message>
        <source>best</source>
        <translation>सबसे अच्छा</translation>
    </message>
    <message>
        <source>Please see this person today, and tell us on the part below.</source>
        <translation>कृपया इन्हें आज देखें और नीचे के भाग पर हमें बताएँ।</translation>
    </message>
    <message>
        <source>Please see this person in the next days, and tell us on the part below.</source>
        <translation>कृपया इन्हें अगले कुछ दिनों में देखें और नीचे के भाग पर हमें बताएँ।</translation>
    </message>
    <message>
        <source>Please see this person at a usual appointment, and tell us on the part below.</source>
        <translation>कृपया इन्हें सामान्य समय पर देखें और नीचे के भाग पर हमें बताएँ।</translation>
    </message>
    <message>
        <source>No glasses are given until you have seen the person.</source>
        <translation>जब तक आप न देख लें, चश्मा नहीं दिया जाएगा।</translation>
    </message>
    <message>
        <source>Glasses were given today: %1</source>
        <translation>आज चश्मा दिया गया: %1</translation>
    </message>
    <message>
        <source>No glasses are recorded as given yet.</source>
        <translation>अभी चश्मा देने का कोई अभिलेख नहीं है।</translation>
    </message>
    <message>
        <source>Please return this part</source>
        <translation>कृपया यह भाग लौटाएँ</translation>
    </message>
    <message>
        <source>Return to</source>
        <translation>किसे लौटाएँ</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>देखने का दिन</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>क्या पाया</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>क्या किया</translation>
    </message>
    <message>
        <source>Glasses: may be given / wait / other prescription</source>
        <translation>चश्मा: दे सकते हैं / रुकें / दूसरा नुस्ख़ा</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>हस्ताक्षर</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>उम्र</translation>
    </message>
    <message>
        <source>Name (write it in only if the person agrees)</source>
        <translation>नाम (व्यक्ति की सहमति हो तभी लिखें)</translation>
    </message>
    <message>
        <source>Prescription found</source>
        <translation>पाया गया नुस्ख़ा</translation>
    </message>
    <message>
        <source>What we ask</source>
        <translation>हमारा अनुरोध</translation>
    </message>
    <message>
        <source>%1 stronger than written: hold things a little nearer</source>
        <translation>लिखे से %1 तेज़: चीज़ें थोड़ी पास रखें</translation>
    </message>
    <message>
        <source>%1 weaker than written: hold things a little further away</source>
        <translation>लिखे से %1 हल्का: चीज़ें थोड़ी दूर रखें</translation>
    </message>
    <message>
        <source>%1 more plus than written: far things are a little less sharp</source>
        <translation>लिखे से %1 अधिक प्लस: दूर की चीज़ें थोड़ी कम साफ़</translation>
    </message>
    <message>
        <source>%1 more minus than written: the eye has to focus a little more</source>
        <translation>लिखे से %1 अधिक माइनस: आँख को थोड़ा अधिक ज़ोर लगेगा</translation>
    </message>
    <message>
        <source>%1 of the cylinder is not in the lens: fine lines are a little less sharp</source>
        <translation>सिलिंडर का %1 लेंस में नहीं है: बारीक रेखाएँ थोड़ी कम साफ़</translation>
    </message>
    <message>
        <source>near part: %1</source>
        <translation>पास का भाग: %1</translation>
    </message>
    <message>
        <source>Both eyes</source>
        <translation>दोनों आँखें</translation>
    </message>
    <message>
        <source>Things are clear from about %1 cm.</source>
        <translation>चीज़ें लगभग %1 सेमी से साफ़ दिखेंगी।</translation>
    </message>
    <message>
        <source>Things are clear from about %1 to %2 cm.</source>
        <translation>चीज़ें लगभग %1 से %2 सेमी तक साफ़ दिखेंगी।</translation>
    </message>
    <message>
        <source>The lenses have the power that was written for you.</source>
        <translation>लेंसों में वही पावर है जो आपके लिए लिखी गई थी।</translation>
    </message>
    <message>
        <source>The middle of the lenses is not quite before the middle of the eyes: the first days may feel odd.</source>
        <translation>लेंसों का बीच आँखों के बीच के ठीक सामने नहीं है: शुरू के दिन अजीब लग सकते हैं।</translation>
    </message>
    <message>
        <source>Audit of hand-overs</source>
        <translation>वितरणों का ऑडिट</translation>
    </message>
    <message>
        <source>within</source>
        <translation>भीतर</translation>
    </message>
    <message>
        <source>beyond 95 %</source>
        <translation>95 % से बाहर</translation>
    </message>
    <message>
        <source>beyond 99.9 %</source>
        <translation>99.9 % से बाहर</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>जाँचे</translation>
    </message>
    <message>
        <source>At odds</source>
        <translation>बेमेल</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>हिस्सा</translation>
    </message>
    <message>
        <source>95 % limits</source>
        <translation>95 % सीमाएँ</translation>
    </message>
    <message>
        <source>Funnel</source>
        <translation>फ़नल</translation>
    </message>
    <message>
        <source>Share at odds against the number judged; lines: the share of all %1, the limits of chance at 95 % (dashed) and 99.9 % (solid)</source>
        <translation>जाँची गई संख्या के सामने बेमेल का हिस्सा; रेखाएँ: सबका हिस्सा %1, संयोग की सीमाएँ 95 % (टूटी रेखा) और 99.9 % (पूरी रेखा)</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>जाँचे गए वितरण</translation>
    </message>
    <message>
        <source>Good ones before it</source>
        <translation>इससे पहले सही</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>चार्ट</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>सिलसिला</translation>
    </message>
    <message>
        <source>Good hand-overs between two at odds, in their order; centre %1, a run longer than %2 is better than the share says</source>
        <translation>दो बेमेल के बीच सही वितरण, क्रम से; मध्य %1, %2 से लंबा सिलसिला हिस्से से बेहतर है</translation>
    </message>
    <message>
        <source>runs, the last one still open</source>
        <translation>सिलसिले, आख़िरी अभी खुला</translation>
    </message>
    <message>
        <source>better than the share says</source>
        <translation>हिस्से से बेहतर</translation>
    </message>
    <message>
        <source>open</source>
        <translation>खुला</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>सीमाएँ</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>सप्ताह, से</translation>
    </message>
    <message>
        <source>Share at odds by week; centre %1, limits at three standard deviations, which step with the volume</source>
        <translation>सप्ताह के अनुसार बेमेल का हिस्सा; मध्य %1, सीमाएँ तीन मानक विचलन पर, जो संख्या के साथ बदलती हैं</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>सप्ताह</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>बाहर</translation>
    </message>
    <message>
        <source>Large lot accepted</source>
        <translation>बड़ा लॉट स्वीकृत</translation>
    </message>
    <message>
        <source>This lot accepted</source>
        <translation>यह लॉट स्वीकृत</translation>
    </message>
    <message>
        <source>Failing</source>
        <translation>ग़लत निकले</translation>
    </message>
    <message>
        <source>How likely a lot is accepted by the share that fails in it: %1 read, at most %2 may fail</source>
        <translation>लॉट में ग़लत के हिस्से के अनुसार उसके स्वीकृत होने की संभावना: %1 पढ़े, अधिक से अधिक %2 ग़लत हो सकते हैं</translation>
    </message>
    <message>
        <source>failing</source>
        <translation>ग़लत</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 से कम</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>अभी कोई नहीं</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 में से %1</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (95 % limits %4 to %5)</source>
        <translation>%2 में से %1, %3 (95 % सीमाएँ %4 से %5)</translation>
    </message>
    <message>
        <source>Refraction</source>
        <translation>आँखों की जाँच</translation>
    </message>
    <message>
        <source>Dispensing</source>
        <translation>चश्मा देना</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>आपूर्तिकर्ता</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>स्टॉक</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>बाद की देखभाल</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>अभिलेख</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>जगह</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>नियम</translation>
    </message>
    <message>
        <source>Kind of pair</source>
        <translation>चश्मे का प्रकार</translation>
    </message>
    <message>
        <source>Desk (numbers of this report)</source>
        <translation>डेस्क (इस रिपोर्ट के नंबर)</translation>
    </message>
    <message>
        <source>By site</source>
        <translation>जगह के अनुसार</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>सप्ताह के अनुसार</translation>
    </message>
    <message>
        <source>By rules</source>
        <translation>नियम के अनुसार</translation>
    </message>
    <message>
        <source>By purpose</source>
        <translation>उद्देश्य के अनुसार</translation>
    </message>
    <message>
        <source>By kind of pair</source>
        <translation>चश्मे के प्रकार के अनुसार</translation>
    </message>
    <message>
        <source>By desk</source>
        <translation>डेस्क के अनुसार</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>तैयार</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>बाइफ़ोकल</translation>
    </message>
    <message>
        <source>lenses in a frame</source>
        <translation>फ़्रेम में लेंस</translation>
    </message>
    <message>
        <source>nobody has looked yet</source>
        <translation>अभी किसी ने नहीं देखा</translation>
    </message>
    <message>
        <source>met</source>
        <translation>ज़रूरत पूरी</translation>
    </message>
    <message>
        <source>under-met</source>
        <translation>ज़रूरत आधी पूरी</translation>
    </message>
    <message>
        <source>unmet</source>
        <translation>ज़रूरत पूरी नहीं</translation>
    </message>
    <message>
        <source>no need</source>
        <translation>ज़रूरत नहीं</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>दूसरा कारण</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>पता नहीं</translation>
    </message>
    <message>
        <source>At odds: by the record, the pair is not one that the rules would call acceptable, or what was measured beside the record speaks against it. This page is about records; a person decides what they mean. Nothing here is a ranking.</source>
        <translation>बेमेल: अभिलेख के अनुसार यह वह चश्मा नहीं जिसे नियम स्वीकार्य कहें, या अभिलेख के साथ नापी गई बात उससे मेल नहीं खाती। यह पन्ना अभिलेखों के बारे में है; उनका अर्थ कोई व्यक्ति तय करता है। यहाँ किसी का दर्जा नहीं बनाया गया।</translation>
    </message>
    <message>
        <source>Hand-overs</source>
        <translation>वितरण</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1, %2 से %3</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>किससे जाँचा</translation>
    </message>
    <message>
        <source>Record and pair at odds</source>
        <translation>अभिलेख और चश्मा बेमेल</translation>
    </message>
    <message>
        <source>Entry %1 is not as it was written; only what stands before it was judged.</source>
        <translation>प्रविष्टि %1 वैसी नहीं है जैसी लिखी गई थी; केवल उससे पहले का जाँचा गया।</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>आगे क्या करें</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>कुछ नहीं मिला।</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>कहाँ</translation>
    </message>
    <message>
        <source>What the records show</source>
        <translation>अभिलेख क्या दिखाते हैं</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>बार</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>आगे</translation>
    </message>
    <message>
        <source>Kinds found less often, in the detail: %1</source>
        <translation>कम मिलने वाले प्रकार, विस्तार में: %1</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>समय के साथ</translation>
    </message>
    <message>
        <source>p-chart by week</source>
        <translation>सप्ताह का p-चार्ट</translation>
    </message>
    <message>
        <source>p-chart: %1</source>
        <translation>p-चार्ट: %1</translation>
    </message>
    <message>
        <source>g-chart: %1</source>
        <translation>g-चार्ट: %1</translation>
    </message>
    <message>
        <source>g-chart</source>
        <translation>g-चार्ट</translation>
    </message>
    <message>
        <source>g-chart: half of the runs between two at odds are %1 good ones or fewer; one longer than %2 is better than the share says</source>
        <translation>g-चार्ट: दो बेमेल के बीच के आधे सिलसिले %1 सही या कम के हैं; %2 से लंबा सिलसिला हिस्से से बेहतर है</translation>
    </message>
    <message>
        <source>Read again at the bench</source>
        <translation>जाँच मेज़ पर फिर पढ़े गए</translation>
    </message>
    <message>
        <source>No lot was drawn yet.</source>
        <translation>अभी कोई लॉट नहीं निकाला गया।</translation>
    </message>
    <message>
        <source>%1 of %2 hand-overs, at most %3 may fail</source>
        <translation>%2 वितरणों में से %1, अधिक से अधिक %3 ग़लत हो सकते हैं</translation>
    </message>
    <message>
        <source>Operating curve</source>
        <translation>स्वीकृति वक्र</translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation>अभी नतीजे नहीं</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>स्वीकृत</translation>
    </message>
    <message>
        <source>refused: read every pair of these days</source>
        <translation>अस्वीकृत: इन दिनों का हर चश्मा पढ़ें</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>फिर देखे गए</translation>
    </message>
    <message>
        <source>With the pair when seen</source>
        <translation>देखते समय चश्मे के साथ</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>समय हुआ</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>लोग</translation>
    </message>
    <message>
        <source>Due now</source>
        <translation>अब समय हुआ</translation>
    </message>
    <message>
        <source>Effective coverage, distance, of %1 who came</source>
        <translation>प्रभावी कवरेज, दूर, आए हुए %1 में</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>कवरेज</translation>
    </message>
    <message>
        <source>as they came</source>
        <translation>जैसे आए थे</translation>
    </message>
    <message>
        <source>as they are now</source>
        <translation>जैसे अब हैं</translation>
    </message>
    <message>
        <source>Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator 3154). It is defined for a sample of a population; here it is of those who came.</source>
        <translation>पूरी ज़रूरत को पूरी, आधी पूरी और न पूरी के जोड़ से भाग दें, बेहतर आँख, 6/12 (विश्व स्वास्थ्य संगठन, सूचक 3154)। यह आबादी के नमूने के लिए परिभाषित है; यहाँ यह आए हुए लोगों का है।</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>निष्कर्ष</translation>
    </message>
    <message>
        <source>In figures</source>
        <translation>अंकों में</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>सबसे संभव चूक</translation>
    </message>
    <message>
        <source>None to be listed one by one.</source>
        <translation>अलग-अलग लिखने को कोई नहीं।</translation>
    </message>
    <message>
        <source>%1 more are not listed here; `audit --json` has them all.</source>
        <translation>%1 और यहाँ नहीं लिखे हैं; `audit --json` में सब हैं।</translation>
    </message>
    <message>
        <source>A slip is a mistake in a record or in a pick, named by its likelihood and never proved by it.</source>
        <translation>चूक अभिलेख या चुनाव में हुई ग़लती है; उसे संभावना से बताया जाता है, उससे सिद्ध कभी नहीं होती।</translation>
    </message>
</context>
<context>
    <name>quarterstep::AnswerPanel</name>
    <message>
        <source>Needed: %1</source>
        <translation>ज़रूरत: %1</translation>
    </message>
    <message>
        <source>Referral: %1, %2</source>
        <translation>रेफ़रल: %1, %2</translation>
    </message>
    <message>
        <source>Measure again before handing over.</source>
        <translation>देने से पहले फिर नापें।</translation>
    </message>
    <message>
        <source>Purpose shown</source>
        <translation>दिखाया गया उपयोग</translation>
    </message>
    <message>
        <source>Each purpose is judged alone</source>
        <translation>हर उद्देश्य अलग जाँचा जाता है</translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>नियम: %1</translation>
    </message>
    <message>
        <source>%1  (rules: %2)</source>
        <translation>%1  (नियम: %2)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCasePanel</name>
    <message>
        <source>Criteria and slips, or the picture of why not</source>
        <translation>कसौटियाँ और चूकें, या “क्यों नहीं” का चित्र</translation>
    </message>
    <message>
        <source>Criteria and slips</source>
        <translation>कसौटियाँ और चूकें</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>क्यों नहीं</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>पट्टियाँ क्या दिखाती हैं</translation>
    </message>
    <message>
        <source>From the better pair to the pair given, or the limits of one of them</source>
        <translation>बेहतर चश्मे से दिए गए चश्मे तक, या उनमें से एक की सीमाएँ</translation>
    </message>
    <message>
        <source>From the better pair to the pair given</source>
        <translation>बेहतर चश्मे से दिए गए चश्मे तक</translation>
    </message>
    <message>
        <source>Where the cost of the pair given comes from</source>
        <translation>दिए गए चश्मे की हानि कहाँ से आती है</translation>
    </message>
    <message>
        <source>Limits used up by the pair given</source>
        <translation>दिए गए चश्मे में सीमाओं का इस्तेमाल</translation>
    </message>
    <message>
        <source>Limits used up by the better pair</source>
        <translation>बेहतर चश्मे में सीमाओं का इस्तेमाल</translation>
    </message>
    <message>
        <source>Choose a hand-over that could be judged: what kept it from its limits stands here.</source>
        <translation>ऐसा वितरण चुनें जो जाँचा जा सका: वह अपनी सीमाओं में क्यों नहीं रहा, यहाँ दिखेगा।</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCharts</name>
    <message>
        <source>Of 100 hand-overs: why not</source>
        <translation>100 वितरणों में से: क्यों नहीं</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>सहेजें…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>चार्ट सहेजें</translation>
    </message>
    <message>
        <source>Pictures (*.png);;Tables (*.csv)</source>
        <translation>चित्र (*.png);;तालिकाएँ (*.csv)</translation>
    </message>
    <message>
        <source>The chart is %1.</source>
        <translation>चार्ट %1 है।</translation>
    </message>
    <message>
        <source>Saves the chart as a PDF or a picture, or its numbers as a table (Ctrl+Shift+S)</source>
        <translation>चार्ट को PDF या चित्र के रूप में, या उसकी संख्याएँ तालिका के रूप में सहेजता है (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>छापें</translation>
    </message>
    <message>
        <source>Prints the chart with its numbers on the printer of the settings (Ctrl+P)</source>
        <translation>चार्ट को उसकी संख्याओं सहित सेटिंग के प्रिंटर पर छापता है (Ctrl+P)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>काग़ज़ (*.pdf)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditPlace</name>
    <message>
        <source>Audit</source>
        <translation>ऑडिट</translation>
    </message>
    <message>
        <source>Every hand-over is judged again by the rules and the stock of its moment.</source>
        <translation>हर वितरण अपने समय के नियमों और स्टॉक से दोबारा जाँचा जाता है।</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translation>फिर ऑडिट करें</translation>
    </message>
    <message>
        <source>Reads the ledger from the first entry to the last (F5)</source>
        <translation>बही को पहली से आख़िरी प्रविष्टि तक पढ़ता है (F5)</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>क्या दिखाया गया है</translation>
    </message>
    <message>
        <source>Shows findings of one class only</source>
        <translation>केवल एक वर्ग के निष्कर्ष दिखाता है</translation>
    </message>
    <message>
        <source>Look for a finding</source>
        <translation>निष्कर्ष खोजें</translation>
    </message>
    <message>
        <source>Look for a person, a line, a word</source>
        <translation>व्यक्ति, पंक्ति, शब्द खोजें</translation>
    </message>
    <message>
        <source>Shows only findings in which these words stand (Ctrl+F)</source>
        <translation>केवल वे निष्कर्ष दिखाता है जिनमें ये शब्द हैं (Ctrl+F)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>निष्कर्ष</translation>
    </message>
    <message>
        <source>What is to be said of hand-overs, one by one</source>
        <translation>वितरणों के बारे में क्या कहना है, एक-एक करके</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>चार्ट</translation>
    </message>
    <message>
        <source>How often, by site, week and kind of pair</source>
        <translation>कितनी बार, जगह, सप्ताह और चश्मे के प्रकार के अनुसार</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>जाँच मेज़</translation>
    </message>
    <message>
        <source>Lots read again, who is to be seen again, the report</source>
        <translation>फिर पढ़े गए लॉट, किसे फिर देखना है, रिपोर्ट</translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation>ऑडिट के निष्कर्ष</translation>
    </message>
    <message>
        <source>Choose a finding to see need, pair and slips beside</source>
        <translation>निष्कर्ष चुनें; ज़रूरत, चश्मा और चूकें साथ में दिखेंगी</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>चार्ट</translation>
    </message>
    <message>
        <source>Funnel: shares against the size of the group</source>
        <translation>फ़नल: समूह के आकार के सामने हिस्से</translation>
    </message>
    <message>
        <source>Runs of good hand-overs (g-chart)</source>
        <translation>सही वितरणों के सिलसिले (g-चार्ट)</translation>
    </message>
    <message>
        <source>Weeks (p-chart)</source>
        <translation>सप्ताह (p-चार्ट)</translation>
    </message>
    <message>
        <source>Which picture is drawn</source>
        <translation>कौन सा चित्र बनाया जाए</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>समूह</translation>
    </message>
    <message>
        <source>What the groups of the funnel are</source>
        <translation>फ़नल के समूह क्या हैं</translation>
    </message>
    <message>
        <source>Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. Circle: inside · triangle: beyond the inner limit · diamond: beyond the outer. Nothing is ranked.</source>
        <translation>पूरी रेखा: सबका हिस्सा · टूटी रेखा: भीतरी सीमा, 95 % · बिंदु रेखा: बाहरी सीमा। गोला: भीतर · त्रिकोण: भीतरी सीमा से बाहर · हीरा: बाहरी से बाहर। किसी का दर्जा नहीं बनाया जाता।</translation>
    </message>
    <message>
        <source>The numbers of the chart</source>
        <translation>चार्ट के अंक</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>वही अंक जो चित्र में हैं</translation>
    </message>
    <message>
        <source>Why, criterion by criterion:</source>
        <translation>क्यों, एक-एक कसौटी:</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>दिया गया चश्मा</translation>
    </message>
    <message>
        <source>How the pair that was given is judged</source>
        <translation>दिया गया चश्मा कैसा आँका गया</translation>
    </message>
    <message>
        <source>Better pair</source>
        <translation>बेहतर चश्मा</translation>
    </message>
    <message>
        <source>How the pair that lay in the box is judged</source>
        <translation>बक्से में रखा चश्मा कैसा आँका गया</translation>
    </message>
    <message>
        <source>Criteria of the pair</source>
        <translation>चश्मे की कसौटियाँ</translation>
    </message>
    <message>
        <source>Each criterion with its value, its limit and the source of the limit</source>
        <translation>हर कसौटी अपने मान, सीमा और सीमा के स्रोत के साथ</translation>
    </message>
    <message>
        <source>Slips that the record allows. It speaks of the record; a person decides.</source>
        <translation>चूकें जो अभिलेख से संभव हैं। यह अभिलेख की बात है; निर्णय कोई व्यक्ति करता है।</translation>
    </message>
    <message>
        <source>Slips and their arithmetic</source>
        <translation>चूकें और उनका हिसाब</translation>
    </message>
    <message>
        <source>Probability of each slip, and how it comes about</source>
        <translation>हर चूक की संभावना, और वह कैसे निकली</translation>
    </message>
    <message>
        <source>Judging hand-overs again…</source>
        <translation>वितरण दोबारा जाँचे जा रहे हैं…</translation>
    </message>
    <message>
        <source>Reading the ledger …</source>
        <translation>बही पढ़ी जा रही है …</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written; audit again with F5.</source>
        <translation>रोका गया। कुछ लिखा नहीं गया; F5 से फिर ऑडिट करें।</translation>
    </message>
    <message>
        <source>The audit ended before its time; the reason stands above.</source>
        <translation>ऑडिट समय से पहले रुक गया; कारण ऊपर है।</translation>
    </message>
    <message>
        <source>hand-overs %1, judged again %2</source>
        <translation>वितरण %1, दोबारा जाँचे %2</translation>
    </message>
    <message>
        <source>pair and record at odds: %1</source>
        <translation>चश्मा और अभिलेख बेमेल: %1</translation>
    </message>
    <message>
        <source>findings %1</source>
        <translation>निष्कर्ष %1</translation>
    </message>
    <message>
        <source>%1 more are counted and not listed</source>
        <translation>%1 और गिने गए, सूची में नहीं</translation>
    </message>
    <message>
        <source>The record is whole: %1 entries, each follows the one before.</source>
        <translation>अभिलेख पूरा है: %1 प्रविष्टियाँ, हर एक पिछली से जुड़ी।</translation>
    </message>
    <message>
        <source>Every finding</source>
        <translation>हर निष्कर्ष</translation>
    </message>
    <message>
        <source>by site</source>
        <translation>जगह के अनुसार</translation>
    </message>
    <message>
        <source>by who handed over</source>
        <translation>देने वाले के अनुसार</translation>
    </message>
    <message>
        <source>by week</source>
        <translation>सप्ताह के अनुसार</translation>
    </message>
    <message>
        <source>by profile</source>
        <translation>प्रोफ़ाइल के अनुसार</translation>
    </message>
    <message>
        <source>by purpose</source>
        <translation>उद्देश्य के अनुसार</translation>
    </message>
    <message>
        <source>by kind of pair</source>
        <translation>चश्मे के प्रकार के अनुसार</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>दायाँ</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>बायाँ</translation>
    </message>
    <message>
        <source>%1: not judged</source>
        <translation>%1: जाँचा नहीं गया</translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation>%1: ज़रूरत %2</translation>
    </message>
    <message>
        <source>, was given %1</source>
        <translation>, दिया गया %1</translation>
    </message>
    <message>
        <source>Pair %1: %2</source>
        <translation>चश्मा %1: %2</translation>
    </message>
    <message>
        <source>In the box lay %1 (bin %2): %3</source>
        <translation>बक्से में %1 था (खाना %2): %3</translation>
    </message>
    <message>
        <source>No slip was looked for: record, pair and witnesses agree.</source>
        <translation>कोई चूक नहीं खोजी गई: अभिलेख, चश्मा और साथ की बातें मेल खाती हैं।</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>%1  %2: %3</translation>
    </message>
    <message>
        <source>Below each: prior × witnesses × pair; the probability is its part of the sum.</source>
        <translation>हर एक के नीचे: पूर्व संभावना × साथ की बातें × चश्मा; संभावना योग में उसका हिस्सा है।</translation>
    </message>
    <message>
        <source>Slips of the record cannot be tested here: nothing was measured beside it.</source>
        <translation>अभिलेख की चूकें यहाँ परखी नहीं जा सकतीं: उसके साथ कुछ नापा नहीं गया।</translation>
    </message>
    <message>
        <source>No finding is chosen</source>
        <translation>कोई निष्कर्ष नहीं चुना</translation>
    </message>
    <message>
        <source>Choose a finding in the list: what was needed, what was given and what lay in the box stand here.</source>
        <translation>सूची में निष्कर्ष चुनें: क्या चाहिए था, क्या दिया गया और बक्से में क्या था, यहाँ दिखेगा।</translation>
    </message>
    <message>
        <source>About the course of events</source>
        <translation>घटनाओं के क्रम के बारे में</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>%1, %2, प्रविष्टि %3</translation>
    </message>
    <message>
        <source>Need, pair and findings</source>
        <translation>ज़रूरत, चश्मा और निष्कर्ष</translation>
    </message>
    <message>
        <source>What was needed, what was given, what lay in the box; the text can be copied</source>
        <translation>क्या चाहिए था, क्या दिया गया, बक्से में क्या था; पाठ कॉपी हो सकता है</translation>
    </message>
    <message>
        <source>Nothing was handed over in this camp yet, so there is nothing to audit.</source>
        <translation>इस शिविर में अभी कुछ नहीं दिया गया, इसलिए ऑडिट करने को कुछ नहीं है।</translation>
    </message>
    <message>
        <source>Check the record</source>
        <translation>अभिलेख जाँचें</translation>
    </message>
    <message>
        <source>Every entry, every text and every count of the ledger against the chain, in the background (F6)</source>
        <translation>बही की हर प्रविष्टि, हर पाठ और हर गिनती शृंखला से मिलाई जाती है, पृष्ठभूमि में (F6)</translation>
    </message>
    <message>
        <source>Save the report for the site</source>
        <translation>जगह के लिए रिपोर्ट सहेजें</translation>
    </message>
    <message>
        <source>Checking the record…</source>
        <translation>अभिलेख जाँचा जा रहा है…</translation>
    </message>
    <message>
        <source>Checking the record, entry by entry …</source>
        <translation>अभिलेख जाँचा जा रहा है, एक-एक प्रविष्टि …</translation>
    </message>
    <message>
        <source>The check was stopped before its end.</source>
        <translation>जाँच पूरी होने से पहले रोकी गई।</translation>
    </message>
    <message>
        <source>Print the chart</source>
        <translation>चार्ट छापें</translation>
    </message>
    <message>
        <source>Save the chart…</source>
        <translation>चार्ट सहेजें…</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditReports</name>
    <message>
        <source>For everybody at the site: text, page for a browser, PDF, table or JSON (Ctrl+S)</source>
        <translation>जगह पर सबके लिए: पाठ, ब्राउज़र का पन्ना, PDF, तालिका या JSON (Ctrl+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>छापें</translation>
    </message>
    <message>
        <source>Prints the page for the site on the printer of the settings</source>
        <translation>जगह का पन्ना सेटिंग में चुने प्रिंटर पर छापता है</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>काग़ज़ (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>पाठ (*.txt)</translation>
    </message>
    <message>
        <source>Data (*.json)</source>
        <translation>डेटा (*.json)</translation>
    </message>
    <message>
        <source>No printer is chosen; choose one in the settings (Ctrl+,), or save a PDF.</source>
        <translation>कोई प्रिंटर नहीं चुना; सेटिंग में चुनें (Ctrl+,), या PDF सहेजें।</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>लिखा गया: %1</translation>
    </message>
    <message>
        <source>Drawing the pages…</source>
        <translation>पन्ने बनाए जा रहे हैं…</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsModel</name>
    <message>
        <source>Part</source>
        <translation>भाग</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>अंक</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>असर</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>किसका</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsView</name>
    <message>
        <source>Bars: why not</source>
        <translation>पट्टियाँ: क्यों नहीं</translation>
    </message>
    <message>
        <source>Arrows scroll; the same numbers stand in the table</source>
        <translation>तीर की कुंजियों से खिसकाएँ; वही अंक तालिका में हैं</translation>
    </message>
    <message>
        <source>The numbers of the bars</source>
        <translation>पट्टियों के अंक</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>वही अंक जो चित्र में हैं</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>वही अंक पास की तालिका में हैं</translation>
    </message>
    <message>
        <source>Filled: whole · lines rising: adds · lines falling: takes away.</source>
        <translation>भरा: पूरा · चढ़ती रेखाएँ: जोड़ता है · उतरती रेखाएँ: घटाता है।</translation>
    </message>
    <message>
        <source>Dots: inside · filled, with a diamond: outside · dashed: the limit.</source>
        <translation>बिंदु: भीतर · भरा, हीरे के साथ: बाहर · टूटी रेखा: सीमा।</translation>
    </message>
</context>
<context>
    <name>quarterstep::BenchPanel</name>
    <message>
        <source>Lots read again at the bench</source>
        <translation>जाँच मेज़ पर फिर पढ़े गए लॉट</translation>
    </message>
    <message>
        <source>Pairs to read:</source>
        <translation>कितने चश्मे पढ़ने हैं:</translation>
    </message>
    <message>
        <source>Pairs to read</source>
        <translation>कितने चश्मे पढ़ने हैं</translation>
    </message>
    <message>
        <source>How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small</source>
        <translation>कितने चश्मे निकाले जाएँ; “जितने कम से काम चले” ग़लत निर्णय का जोखिम छोटा रखता है</translation>
    </message>
    <message>
        <source>as few as will do</source>
        <translation>जितने कम से काम चले</translation>
    </message>
    <message>
        <source>Draw a lot…</source>
        <translation>लॉट निकालें…</translation>
    </message>
    <message>
        <source>Draws hand-overs by lot, enters the draw and writes the sheet for the bench</source>
        <translation>वितरणों को लॉटरी से निकालता है, बही में लिखता है और जाँच मेज़ की पर्ची बनाता है</translation>
    </message>
    <message>
        <source>Sheet for the bench</source>
        <translation>जाँच मेज़ की पर्ची</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>तालिकाएँ (*.csv)</translation>
    </message>
    <message>
        <source>Take in a sheet…</source>
        <translation>पर्ची लें…</translation>
    </message>
    <message>
        <source>Reads a filled-in sheet, judges it and enters results and decision</source>
        <translation>भरी पर्ची पढ़ता है, जाँचता है और नतीजे व निर्णय लिखता है</translation>
    </message>
    <message>
        <source>Sheet from the bench</source>
        <translation>जाँच मेज़ से आई पर्ची</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>निकाला</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>चश्मे</translation>
    </message>
    <message>
        <source>May fail</source>
        <translation>ग़लत की छूट</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>निर्णय</translation>
    </message>
    <message>
        <source>Lots drawn in this camp</source>
        <translation>इस शिविर में निकाले गए लॉट</translation>
    </message>
    <message>
        <source>To be seen again</source>
        <translation>फिर देखना है</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>दिया गया</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>चश्मा</translation>
    </message>
    <message>
        <source>When</source>
        <translation>कब</translation>
    </message>
    <message>
        <source>State</source>
        <translation>स्थिति</translation>
    </message>
    <message>
        <source>Persons to be seen again</source>
        <translation>लोग जिन्हें फिर देखना है</translation>
    </message>
    <message>
        <source>Report: no names and no initials; small counts are hidden on the page for the site.</source>
        <translation>रिपोर्ट: न नाम, न आद्याक्षर; जगह के पन्ने पर छोटी गिनतियाँ छिपी रहती हैं।</translation>
    </message>
    <message>
        <source>Page for the site…</source>
        <translation>जगह के लिए पन्ना…</translation>
    </message>
    <message>
        <source>In detail…</source>
        <translation>विस्तार से…</translation>
    </message>
    <message>
        <source>Everything, for the supervisor</source>
        <translation>सब कुछ, निरीक्षक के लिए</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>रिपोर्ट</translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation>पन्ने (*.html)</translation>
    </message>
    <message>
        <source>Nothing happened in this camp yet.</source>
        <translation>इस शिविर में अभी कुछ नहीं हुआ।</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 में से %1</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>अभी पढ़ा नहीं गया</translation>
    </message>
    <message>
        <source>wearers %1</source>
        <translation>पहनने वाले %1</translation>
    </message>
    <message>
        <source>met %1, of them wearing %2</source>
        <translation>मिले %1, उनमें से पहने हुए %2</translation>
    </message>
    <message>
        <source>effective coverage of those who came %1 %</source>
        <translation>आए हुए लोगों की प्रभावी कवरेज %1 %</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>जल्दी</translation>
    </message>
    <message>
        <source>due</source>
        <translation>समय हुआ</translation>
    </message>
    <message>
        <source>late</source>
        <translation>देर हुई</translation>
    </message>
    <message>
        <source>Drawn: %1 of %2 hand-overs; the sheet is %3.</source>
        <translation>निकाले: %2 वितरणों में से %1; पर्ची %3 है।</translation>
    </message>
    <message>
        <source>Writing the report…</source>
        <translation>रिपोर्ट लिखी जा रही है…</translation>
    </message>
    <message>
        <source>Its sheet…</source>
        <translation>इसकी पर्ची…</translation>
    </message>
    <message>
        <source>Writes the sheet of the chosen lot again: to be filled in, or for paper</source>
        <translation>चुने लॉट की पर्ची फिर से लिखता है: भरने के लिए, या काग़ज़ पर</translation>
    </message>
    <message>
        <source>No lot was drawn yet; draw one first.</source>
        <translation>अभी कोई लॉट नहीं निकाला गया; पहले एक निकालें।</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Paper (*.pdf);;Text (*.txt)</source>
        <translation>तालिकाएँ (*.csv);;काग़ज़ (*.pdf);;पाठ (*.txt)</translation>
    </message>
</context>
<context>
    <name>quarterstep::BoxModel</name>
    <message>
        <source>unequal eyes</source>
        <translation>आँखें असमान</translation>
    </message>
    <message>
        <source>none</source>
        <translation>कोई नहीं</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 पंक्तियाँ</translation>
    </message>
    <message>
        <source>%1 low</source>
        <translation>%1 कम</translation>
    </message>
    <message>
        <source>bin %1, %2, available %3</source>
        <translation>खाना %1, %2, उपलब्ध %3</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>कोई कतार नहीं</translation>
    </message>
</context>
<context>
    <name>quarterstep::BringInPanel</name>
    <message>
        <source>Choose a file…</source>
        <translation>फ़ाइल चुनें…</translation>
    </message>
    <message>
        <source>A table (CSV, TSV), lines of JSON, FHIR, or DICOM files of instruments</source>
        <translation>तालिका (CSV, TSV), JSON की पंक्तियाँ, FHIR, या उपकरणों की DICOM फ़ाइलें</translation>
    </message>
    <message>
        <source>Take the clipboard</source>
        <translation>क्लिपबोर्ड से लें</translation>
    </message>
    <message>
        <source>What was copied in a spreadsheet or another program</source>
        <translation>जो स्प्रेडशीट या किसी दूसरे प्रोग्राम में कॉपी किया गया</translation>
    </message>
    <message>
        <source>How the table is read</source>
        <translation>तालिका कैसे पढ़ी जाती है</translation>
    </message>
    <message>
        <source>Use a map…</source>
        <translation>मानचित्र इस्तेमाल करें…</translation>
    </message>
    <message>
        <source>A file that says how such a table is read</source>
        <translation>फ़ाइल जो बताती है कि ऐसी तालिका कैसे पढ़ी जाए</translation>
    </message>
    <message>
        <source>Save this map…</source>
        <translation>यह मानचित्र सहेजें…</translation>
    </message>
    <message>
        <source>For the next table of this kind; `quarterstep import --map` takes it, too</source>
        <translation>इस तरह की अगली तालिका के लिए; `quarterstep import --map` भी इसे लेता है</translation>
    </message>
    <message>
        <source>What is read: nothing is written yet</source>
        <translation>जो पढ़ा जाता है: अभी कुछ लिखा नहीं गया</translation>
    </message>
    <message>
        <source>Only rows about which something was found</source>
        <translation>केवल वे कतारें जिनमें कुछ मिला</translation>
    </message>
    <message>
        <source>Leaves out rows that were read without a finding</source>
        <translation>बिना निष्कर्ष पढ़ी गई कतारें छोड़ देता है</translation>
    </message>
    <message>
        <source>Rows as they are read</source>
        <translation>कतारें, जैसी पढ़ी जाती हैं</translation>
    </message>
    <message>
        <source>Choose a row: what was found about it stands below</source>
        <translation>कतार चुनें: उसमें जो मिला, नीचे दिखता है</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>निष्कर्ष</translation>
    </message>
    <message>
        <source>Kind, line and column in the file, what was found, and its code</source>
        <translation>प्रकार, फ़ाइल में पंक्ति और स्तंभ, जो मिला, और उसका कोड</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>वापस</translation>
    </message>
    <message>
        <source>To the place before; nothing is brought in</source>
        <translation>पिछली जगह पर; कुछ भीतर नहीं लाया जाता</translation>
    </message>
    <message>
        <source>They come to stand in the waiting list</source>
        <translation>वे प्रतीक्षा सूची में आ जाते हैं</translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation>उन्हें भीतर लाएँ</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>तालिका</translation>
    </message>
    <message>
        <source>lines of JSON</source>
        <translation>JSON की पंक्तियाँ</translation>
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
        <translation>अभी कुछ नहीं चुना।</translation>
    </message>
    <message>
        <source>Prescriptions to bring in</source>
        <translation>भीतर लाने के नुस्ख़े</translation>
    </message>
    <message>
        <source>Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;All files (*)</source>
        <translation>नुस्ख़े (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;सब फ़ाइलें (*)</translation>
    </message>
    <message>
        <source>No text is in the clipboard; copy the rows with their headings first.</source>
        <translation>क्लिपबोर्ड में कोई पाठ नहीं है; पहले कतारें उनके शीर्षकों के साथ कॉपी करें।</translation>
    </message>
    <message>
        <source>The clipboard</source>
        <translation>क्लिपबोर्ड</translation>
    </message>
    <message numerus="yes">
        <source>%n files</source>
        <translation>
            <numerusform>%n फ़ाइल</numerusform>
            <numerusform>%n फ़ाइलें</numerusform>
        </translation>
    </message>
    <message>
        <source>Use a map</source>
        <translation>मानचित्र इस्तेमाल करें</translation>
    </message>
    <message>
        <source>Maps of tables (*.map);;All files (*)</source>
        <translation>तालिकाओं के मानचित्र (*.map);;सब फ़ाइलें (*)</translation>
    </message>
    <message>
        <source>Save this map</source>
        <translation>यह मानचित्र सहेजें</translation>
    </message>
    <message>
        <source>Maps of tables (*.map)</source>
        <translation>तालिकाओं के मानचित्र (*.map)</translation>
    </message>
    <message>
        <source>The map is in %1.</source>
        <translation>मानचित्र %1 में है।</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>पढ़ा जा रहा है…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was brought in.</source>
        <translation>रोका गया। कुछ भीतर नहीं लाया गया।</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>भीतर लाया जा रहा है…</translation>
    </message>
    <message>
        <source>%1 brought in, %2 left out. They stand in the list and in %3.</source>
        <translation>%1 भीतर लाए गए, %2 छोड़े गए। वे सूची में और %3 में हैं।</translation>
    </message>
    <message>
        <source>It is being read…</source>
        <translation>पढ़ा जा रहा है…</translation>
    </message>
    <message>
        <source>Choose a file, or copy rows and take the clipboard.</source>
        <translation>फ़ाइल चुनें, या कतारें कॉपी करके क्लिपबोर्ड से लें।</translation>
    </message>
    <message>
        <source>Read as %1: %2 to be brought in, %3 left out</source>
        <translation>%1 के रूप में पढ़ा: %2 भीतर लाने हैं, %3 छोड़े गए</translation>
    </message>
    <message>
        <source>Bring in %1, leave out %2</source>
        <translation>%1 भीतर लाएँ, %2 छोड़ें</translation>
    </message>
    <message>
        <source>Found about row %1 (%2)</source>
        <translation>कतार %1 में मिला (%2)</translation>
    </message>
    <message>
        <source>Found about the file as a whole</source>
        <translation>पूरी फ़ाइल के बारे में मिला</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>%1 के रूप में पढ़ा गया</translation>
    </message>
</context>
<context>
    <name>quarterstep::BroughtRowsModel</name>
    <message>
        <source>left out</source>
        <translation>छोड़ा गया</translation>
    </message>
    <message>
        <source>taken, with a caution</source>
        <translation>लिया, सावधानी के साथ</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>लिया</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>कतार</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>Brought in?</source>
        <translation>भीतर लाया?</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>कैसे पढ़ा</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>जो मिला</translation>
    </message>
</context>
<context>
    <name>quarterstep::CampNotes</name>
    <message>
        <source>It lies here for good</source>
        <translation>यह अब यहीं रहेगा</translation>
    </message>
    <message>
        <source>It is a second station</source>
        <translation>यह दूसरा केंद्र है</translation>
    </message>
    <message>
        <source>Know first</source>
        <translation>पहले जान लें</translation>
    </message>
    <message>
        <source>From now on this folder is written to; the copy it came from is used no more</source>
        <translation>अब से इसी फ़ोल्डर में लिखा जाएगा; जिस प्रति से यह आया वह आगे काम में नहीं आएगी</translation>
    </message>
    <message>
        <source>Both folders are used; what is handed over here is brought together with the other later</source>
        <translation>दोनों फ़ोल्डर काम में आते हैं; यहाँ जो दिया जाता है वह बाद में दूसरे के साथ मिलाया जाता है</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>हटा दें</translation>
    </message>
    <message>
        <source>These notes do not come back while this camp is open</source>
        <translation>जब तक यह शिविर खुला है, ये बातें फिर नहीं आतीं</translation>
    </message>
    <message numerus="yes">
        <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger&apos;s counts are used until the edits are accepted or discarded in Stock.</source>
        <translation>
            <numerusform>stock.yaml में %n पंक्ति की गिनती हाथ से बदली गई। जब तक बदलाव भंडार में माने या छोड़े नहीं जाते, बही की गिनती चलती है।</numerusform>
            <numerusform>stock.yaml में %n पंक्तियों की गिनती हाथ से बदली गई। जब तक बदलाव भंडार में माने या छोड़े नहीं जाते, बही की गिनती चलती है।</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::CardModel</name>
    <message>
        <source>held %1</source>
        <translation>रोका %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>अलग रखा %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>%1 द्वारा</translation>
    </message>
    <message>
        <source>When</source>
        <translation>कब</translation>
    </message>
    <message>
        <source>What</source>
        <translation>क्या</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>बदलाव</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>मौजूद</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>शब्द</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartModel</name>
    <message>
        <source>inside the limits</source>
        <translation>सीमाओं के भीतर</translation>
    </message>
    <message>
        <source>beyond the inner limit</source>
        <translation>भीतरी सीमा से बाहर</translation>
    </message>
    <message>
        <source>beyond the outer limit</source>
        <translation>बाहरी सीमा से बाहर</translation>
    </message>
    <message>
        <source>Group or run</source>
        <translation>समूह या सिलसिला</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>अंक</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>सीमाएँ</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartView</name>
    <message>
        <source>Chart of the audit</source>
        <translation>ऑडिट का चार्ट</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>वही अंक पास की तालिका में हैं</translation>
    </message>
</context>
<context>
    <name>quarterstep::CriteriaModel</name>
    <message>
        <source>%1, right</source>
        <translation>%1, दायाँ</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, बायाँ</translation>
    </message>
    <message>
        <source>Criterion</source>
        <translation>कसौटी</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>मान</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>सीमा</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>इकाई</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>दर्जा</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>स्रोत</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossModel</name>
    <message>
        <source>right, need</source>
        <translation>दायाँ, ज़रूरत</translation>
    </message>
    <message>
        <source>left, need</source>
        <translation>बायाँ, ज़रूरत</translation>
    </message>
    <message>
        <source>right, pair</source>
        <translation>दायाँ, चश्मा</translation>
    </message>
    <message>
        <source>left, pair</source>
        <translation>बायाँ, चश्मा</translation>
    </message>
    <message>
        <source>right, left over</source>
        <translation>दायाँ, बाकी</translation>
    </message>
    <message>
        <source>left, left over</source>
        <translation>बायाँ, बाकी</translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <translation>%2 पर %1</translation>
    </message>
    <message>
        <source>What</source>
        <translation>क्या</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>पावर (D)</translation>
    </message>
    <message>
        <source>Higher (D)</source>
        <translation>अधिक (D)</translation>
    </message>
    <message>
        <source>Lower (D)</source>
        <translation>कम (D)</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossView</name>
    <message>
        <source>Optical crosses</source>
        <translation>ऑप्टिकल क्रॉस</translation>
    </message>
    <message>
        <source>A picture of need, pair and what is left; the same values stand in the table</source>
        <translation>ज़रूरत, चश्मे और बाकी का चित्र; वही मान तालिका में हैं</translation>
    </message>
    <message>
        <source>Powers in dioptres on the meridians they act in, as the examiner sees the eyes</source>
        <translation>पावर डायोप्टर में, जिस मेरिडियन पर काम करती है, जैसे जाँचने वाला आँखें देखता है</translation>
    </message>
    <message>
        <source>need</source>
        <translation>ज़रूरत</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>चश्मा</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>बाकी</translation>
    </message>
</context>
<context>
    <name>quarterstep::DeskWindow</name>
    <message>
        <source>Choosing a camp</source>
        <translation>शिविर चुनना</translation>
    </message>
    <message>
        <source>Dispense</source>
        <translation>चश्मा देना</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>स्टॉक</translation>
    </message>
    <message>
        <source>Starting a camp</source>
        <translation>शिविर शुरू करना</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>सेटिंग</translation>
    </message>
    <message>
        <source>SAMPLE: invented people, nothing here counts</source>
        <translation>नमूना: काल्पनिक लोग, यहाँ कुछ असली नहीं</translation>
    </message>
    <message>
        <source>Empties the card</source>
        <translation>कार्ड खाली करता है</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>नया व्यक्ति</translation>
    </message>
    <message>
        <source>Puts the people of a prescription table into the waiting list</source>
        <translation>नुस्ख़ा तालिका के लोगों को प्रतीक्षा सूची में डालता है</translation>
    </message>
    <message>
        <source>Load people…</source>
        <translation>लोग जोड़ें…</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation>दूसरा शिविर या नमूना खोलता है, या शिविर शुरू करता है</translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>शिविर…</translation>
    </message>
    <message>
        <source>Look, language, printer, camp, PINs</source>
        <translation>रूप, भाषा, प्रिंटर, शिविर, PIN</translation>
    </message>
    <message>
        <source>The manual, at the page for where you are</source>
        <translation>पुस्तिका, जहाँ आप हैं उस पन्ने पर</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>सहायता</translation>
    </message>
    <message>
        <source>Look of the window</source>
        <translation>खिड़की का रूप</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>हल्का, गहरा या धूप: बाहर के लिए सफ़ेद पर काला और बड़ा</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>हल्का</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>गहरा</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>धूप</translation>
    </message>
    <message>
        <source>Who is served, and with what</source>
        <translation>किसे दिया जा रहा है, और क्या</translation>
    </message>
    <message>
        <source>What lies in the box, and what happened to it</source>
        <translation>बक्से में क्या है, और उसके साथ क्या हुआ</translation>
    </message>
    <message>
        <source>Every key of the window</source>
        <translation>खिड़की की सब कुंजियाँ</translation>
    </message>
    <message>
        <source>Next look: light, dark, sun</source>
        <translation>अगला रूप: हल्का, गहरा, धूप</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>बड़े अक्षर</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>छोटे अक्षर</translation>
    </message>
    <message>
        <source>Usual letters</source>
        <translation>सामान्य अक्षर</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>पावर-चित्र तालिका में</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>बाहर जाएँ</translation>
    </message>
    <message>
        <source>Quarterstep</source>
        <translation>Quarterstep</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>%1 पढ़ा जा रहा है…</translation>
    </message>
    <message>
        <source>%1 was not opened; what was found stands below.</source>
        <translation>%1 नहीं खुला; जो मिला वह नीचे है।</translation>
    </message>
    <message>
        <source>The card that was not handed over when the window went is back. Ctrl+N empties it.</source>
        <translation>खिड़की बंद होने पर जो कार्ड अधूरा था वह वापस है। Ctrl+N उसे खाली करता है।</translation>
    </message>
    <message>
        <source>Open a camp folder</source>
        <translation>शिविर का फ़ोल्डर खोलें</translation>
    </message>
    <message>
        <source>Load people</source>
        <translation>लोग जोड़ें</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>नुस्ख़ा तालिकाएँ (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n मौजूद</numerusform>
            <numerusform>%n मौजूद</numerusform>
        </translation>
    </message>
    <message>
        <source>No camp is open</source>
        <translation>कोई शिविर नहीं खुला</translation>
    </message>
    <message>
        <source>SAMPLE: %1: Quarterstep</source>
        <translation>नमूना: %1: Quarterstep</translation>
    </message>
    <message>
        <source>%1: Quarterstep</source>
        <translation>%1: Quarterstep</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>ऑडिट</translation>
    </message>
    <message>
        <source>Which pairs went wrong, and what slip did it</source>
        <translation>कौन से चश्मे ग़लत गए, और किस चूक से</translation>
    </message>
    <message>
        <source>Brings prescriptions in from files, instruments or the clipboard, and sends them out</source>
        <translation>फ़ाइलों, उपकरणों या क्लिपबोर्ड से नुस्ख़े भीतर लाता है, और उन्हें बाहर भेजता है</translation>
    </message>
    <message>
        <source>Bring in…</source>
        <translation>भीतर लाएँ…</translation>
    </message>
    <message>
        <source>Bringing in and sending out</source>
        <translation>भीतर लाना और बाहर भेजना</translation>
    </message>
</context>
<context>
    <name>quarterstep::DispensePlace</name>
    <message numerus="yes">
        <source>%1: %n left</source>
        <translation>
            <numerusform>%1: %n बाकी</numerusform>
            <numerusform>%1: %n बाकी</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has %2. %3.</source>
        <translation>%1 को %2 मिला। %3।</translation>
    </message>
    <message>
        <source>Put back if pulled: %1</source>
        <translation>निकाला हो तो वापस रखें: %1</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>मेज़ पर वापस लिया</translation>
    </message>
    <message>
        <source>People of the table</source>
        <translation>तालिका के लोग</translation>
    </message>
    <message>
        <source>Choose a person: the card fills and pairs are suggested</source>
        <translation>व्यक्ति चुनें: कार्ड भर जाता है और चश्मे सुझाए जाते हैं</translation>
    </message>
    <message>
        <source>Prescription</source>
        <translation>नुस्ख़ा</translation>
    </message>
    <message>
        <source>Suggest pairs</source>
        <translation>चश्मे सुझाएँ</translation>
    </message>
    <message>
        <source>Searches the stock for this prescription (Enter in any field)</source>
        <translation>इस नुस्ख़े के लिए स्टॉक खोजता है (किसी भी जगह Enter)</translation>
    </message>
    <message>
        <source>Pairs to pull</source>
        <translation>निकालने के चश्मे</translation>
    </message>
    <message>
        <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
        <translation>सबसे अच्छा पहले: पावर डायोप्टर में, कहाँ से लाएँ, हर आँख में क्या बाकी, प्रिज़्म</translation>
    </message>
    <message>
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>इस फ़ोल्डर में people.csv नहीं है। नीचे नुस्ख़ा लिखें या तालिका जोड़ें।</translation>
    </message>
    <message>
        <source>The table has no rows. Type a prescription below.</source>
        <translation>तालिका खाली है। नीचे नुस्ख़ा लिखें।</translation>
    </message>
    <message>
        <source>Choose a person or type a prescription; Enter suggests pairs.</source>
        <translation>व्यक्ति चुनें या नुस्ख़ा लिखें; Enter चश्मे सुझाता है।</translation>
    </message>
    <message>
        <source>The pairs to pull will stand here, best first, with their bins.</source>
        <translation>निकालने के चश्मे यहाँ दिखेंगे, सबसे अच्छा पहले, खाने के साथ।</translation>
    </message>
    <message>
        <source>Nothing to pull for this purpose.</source>
        <translation>इस काम के लिए कुछ नहीं निकालना।</translation>
    </message>
    <message>
        <source>No pairs are shown until this is settled.</source>
        <translation>जब तक यह न सुलझे चश्मे नहीं दिखेंगे।</translation>
    </message>
    <message>
        <source>No pair of this stock comes near this need.</source>
        <translation>इस स्टॉक में ज़रूरत के पास का कोई चश्मा नहीं।</translation>
    </message>
    <message>
        <source>Taken back from %1: %2.</source>
        <translation>%1 से वापस लिया: %2।</translation>
    </message>
    <message>
        <source>Who is served: people of the table, or custom orders</source>
        <translation>किसे दिया जा रहा है: तालिका के लोग, या ऑर्डर</translation>
    </message>
    <message>
        <source>People</source>
        <translation>लोग</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>कतार</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>ऑर्डर</translation>
    </message>
    <message>
        <source>The whole prescription, or the short way for plain readers</source>
        <translation>पूरा नुस्ख़ा, या सादे पढ़ने के चश्मे का छोटा तरीका</translation>
    </message>
    <message>
        <source>Plain reader</source>
        <translation>सादा पढ़ने का चश्मा</translation>
    </message>
    <message>
        <source>%1 stands in the line.</source>
        <translation>%1 कतार में है।</translation>
    </message>
    <message>
        <source>%1 is entered as referred.</source>
        <translation>%1 रेफ़र किया गया, लिख दिया।</translation>
    </message>
    <message>
        <source>A custom order for %1 is entered; it stands under Orders.</source>
        <translation>%1 के लिए ऑर्डर लिख दिया; वह ऑर्डर में है।</translation>
    </message>
    <message>
        <source>This stands in the ledger already: %1, %2.</source>
        <translation>यह बही में पहले से है: %1, %2।</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2।</translation>
    </message>
    <message>
        <source>The laboratory file of %1 is %2.</source>
        <translation>%1 की प्रयोगशाला फ़ाइल %2 है।</translation>
    </message>
</context>
<context>
    <name>quarterstep::ExchangePage</name>
    <message>
        <source>What comes in, or what goes out</source>
        <translation>जो भीतर आता है, या जो बाहर जाता है</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>भीतर लाएँ</translation>
    </message>
    <message>
        <source>Send out</source>
        <translation>बाहर भेजें</translation>
    </message>
    <message>
        <source>Reading what was brought in before…</source>
        <translation>पहले भीतर लाया हुआ पढ़ा जा रहा है…</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingListModel</name>
    <message>
        <source>note</source>
        <translation>सूचना</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>सावधानी</translation>
    </message>
    <message>
        <source>error</source>
        <translation>त्रुटि</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>प्रकार</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>कहाँ</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>निष्कर्ष</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>कोड</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingsModel</name>
    <message>
        <source>a slip is likely</source>
        <translation>चूक की संभावना है</translation>
    </message>
    <message>
        <source>When</source>
        <translation>कब</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>उद्देश्य</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>दिया गया चश्मा</translation>
    </message>
    <message>
        <source>What</source>
        <translation>क्या</translation>
    </message>
    <message>
        <source>In detail</source>
        <translation>विस्तार से</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>सबसे संभव चूक</translation>
    </message>
</context>
<context>
    <name>quarterstep::FocimeterRow</name>
    <message>
        <source>Read, R</source>
        <translation>पढ़ा, दायाँ</translation>
    </message>
    <message>
        <source>L</source>
        <translation>बायाँ</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it</source>
        <translation>दायाँ लेंस, जैसा फ़ोसीमीटर पढ़ता है</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it</source>
        <translation>बायाँ लेंस, जैसा फ़ोसीमीटर पढ़ता है</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>दायाँ लेंस, जैसा फ़ोसीमीटर पढ़ता है, डायोप्टर: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>बायाँ लेंस, जैसा फ़ोसीमीटर पढ़ता है, डायोप्टर: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>right lens: %1</source>
        <translation>दायाँ लेंस: %1</translation>
    </message>
    <message>
        <source>left lens: %1</source>
        <translation>बायाँ लेंस: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::HandOverPanel</name>
    <message>
        <source>Hand over</source>
        <translation>दे दें</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>वापस लें</translation>
    </message>
    <message>
        <source>Gives the chosen pair to this person and counts it down (Ctrl+Return)</source>
        <translation>चुना चश्मा इस व्यक्ति को देता है और गिनती घटाता है (Ctrl+Return)</translation>
    </message>
    <message>
        <source>The power of this very pair was read</source>
        <translation>इसी चश्मे की पावर पढ़ी गई</translation>
    </message>
    <message>
        <source>Fit on the face</source>
        <translation>चेहरे पर सही बैठा</translation>
    </message>
    <message>
        <source>Sits well at nose and ears, pupils behind the centres</source>
        <translation>नाक और कान पर ठीक बैठता है, पुतलियाँ केंद्रों के पीछे</translation>
    </message>
    <message>
        <source>Acuity with the pair</source>
        <translation>चश्मे के साथ दृष्टि</translation>
    </message>
    <message>
        <source>Each eye read the chart with this pair on</source>
        <translation>हर आँख ने यह चश्मा पहनकर चार्ट पढ़ा</translation>
    </message>
    <message>
        <source>Instructions given</source>
        <translation>समझा दिया</translation>
    </message>
    <message>
        <source>What it is for, how to care for it, when to come back</source>
        <translation>किस लिए है, कैसे रखें, कब आएँ</translation>
    </message>
    <message>
        <source>With pair, R</source>
        <translation>चश्मे के साथ, दायाँ</translation>
    </message>
    <message>
        <source>Right eye: acuity with this pair on, for example 6/9</source>
        <translation>दाईं आँख: यह चश्मा पहनकर दृष्टि, जैसे 6/9</translation>
    </message>
    <message>
        <source>L</source>
        <translation>बायाँ</translation>
    </message>
    <message>
        <source>Left eye: acuity with this pair on, for example 6/9</source>
        <translation>बाईं आँख: यह चश्मा पहनकर दृष्टि, जैसे 6/9</translation>
    </message>
    <message>
        <source>near</source>
        <translation>पास</translation>
    </message>
    <message>
        <source>Smallest print read with this pair on, for example N8</source>
        <translation>यह चश्मा पहनकर पढ़ा गया सबसे छोटा अक्षर, जैसे N8</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>कारण</translation>
    </message>
    <message>
        <source>Why this pair is given all the same; kept with the entry</source>
        <translation>फिर भी यह चश्मा क्यों दिया; प्रविष्टि के साथ रहता है</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके आद्याक्षर</translation>
    </message>
    <message>
        <source>Who hands over; kept with the entry, may stay empty</source>
        <translation>कौन दे रहा है; प्रविष्टि के साथ रहता है, खाली रह सकता है</translation>
    </message>
    <message>
        <source>Hand over, print</source>
        <translation>दें, छापें</translation>
    </message>
    <message>
        <source>Hands over and prints the note (Ctrl+Shift+Return)</source>
        <translation>देता है और पर्ची छापता है (Ctrl+Shift+Return)</translation>
    </message>
    <message>
        <source>Takes back what was entered last for this person today (Ctrl+Z)</source>
        <translation>आज इस व्यक्ति के लिए जो आख़िर में लिखा गया उसे वापस लेता है (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>पर्ची</translation>
    </message>
    <message>
        <source>Prints what this person takes home (Ctrl+P)</source>
        <translation>व्यक्ति के घर ले जाने की पर्ची छापता है (Ctrl+P)</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>पत्र</translation>
    </message>
    <message>
        <source>Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)</source>
        <translation>रेफ़रल लिखता है और चिकित्सालय का पत्र छापता है (Ctrl+Shift+L)</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>ऑर्डर</translation>
    </message>
    <message>
        <source>Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)</source>
        <translation>ऑर्डर लिखता है और प्रयोगशाला के लिए छापता है (Ctrl+Shift+O)</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>बिना चश्मे</translation>
    </message>
    <message>
        <source>Enters that this person goes without a pair, and why (Ctrl+Shift+W)</source>
        <translation>लिखता है कि यह व्यक्ति बिना चश्मे जाता है, और क्यों (Ctrl+Shift+W)</translation>
    </message>
    <message>
        <source>Power by focimeter</source>
        <translation>फ़ोसीमीटर से पावर</translation>
    </message>
    <message>
        <source>Each eye by focimeter</source>
        <translation>हर आँख फ़ोसीमीटर से</translation>
    </message>
    <message>
        <source>To what is still missing</source>
        <translation>जो अभी बाकी है, उस पर</translation>
    </message>
    <message>
        <source>Puts the cursor where something is missing for a hand-over</source>
        <translation>कर्सर वहाँ रखता है जहाँ देने के लिए कुछ बाकी है</translation>
    </message>
</context>
<context>
    <name>quarterstep::HelpWindow</name>
    <message>
        <source>Help: Quarterstep</source>
        <translation>सहायता: Quarterstep</translation>
    </message>
    <message>
        <source>Pages of the manual</source>
        <translation>पुस्तिका के पन्ने</translation>
    </message>
    <message>
        <source>Chooses a page of the manual</source>
        <translation>पुस्तिका का पन्ना चुनता है</translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>पन्ने का पाठ</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation>पुस्तिका; लिंक दूसरे पन्नों पर ले जाते हैं</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>बंद करें</translation>
    </message>
</context>
<context>
    <name>quarterstep::KeySheet</name>
    <message>
        <source>Keys: Quarterstep</source>
        <translation>कुंजियाँ: Quarterstep</translation>
    </message>
    <message>
        <source>All keys of the window</source>
        <translation>खिड़की की सब कुंजियाँ</translation>
    </message>
    <message>
        <source>All keys of the window; Escape closes it</source>
        <translation>खिड़की की सब कुंजियाँ; Escape बंद करता है</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>बंद करें</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>हर जगह</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from field to field; Space presses the button that is framed.</source>
        <translation>Tab और Shift+Tab एक खाने से दूसरे में ले जाते हैं; Space घेरे वाला बटन दबाता है।</translation>
    </message>
</context>
<context>
    <name>quarterstep::LadderView</name>
    <message>
        <source>Stock ladder</source>
        <translation>स्टॉक की सीढ़ी</translation>
    </message>
    <message>
        <source>A picture of how many pieces of each power there are; the same numbers stand in the table of lines</source>
        <translation>हर पावर के कितने नग हैं, इसका चित्र; वही अंक पंक्तियों की तालिका में हैं</translation>
    </message>
    <message>
        <source>power (D)</source>
        <translation>पावर (D)</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>%1: available %2, kept aside %3, keep at least %4</source>
        <translation>%1: उपलब्ध %2, अलग रखा %3, कम से कम रखें %4</translation>
    </message>
</context>
<context>
    <name>quarterstep::LineModel</name>
    <message>
        <source>none: waits</source>
        <translation>कोई नहीं: प्रतीक्षा में</translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation>कतार में नहीं</translation>
    </message>
    <message>
        <source>none left: look before saying it again</source>
        <translation>कुछ नहीं बचा: फिर कहने से पहले देखें</translation>
    </message>
    <message>
        <source>with caution</source>
        <translation>सावधानी के साथ</translation>
    </message>
    <message>
        <source>by hand: %1</source>
        <translation>हाथ से: %1</translation>
    </message>
    <message>
        <source>promised; %1</source>
        <translation>वादा किया; %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>For</source>
        <translation>किसके लिए</translation>
    </message>
    <message>
        <source>Gets</source>
        <translation>क्या मिलेगा</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>क्यों</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinePanel</name>
    <message>
        <source>Waiting line</source>
        <translation>प्रतीक्षा की कतार</translation>
    </message>
    <message>
        <source>Who gets which pair and why. Drop a pair on a person to pick it by hand</source>
        <translation>किसे कौन सा चश्मा और क्यों। हाथ से चुनने के लिए चश्मा व्यक्ति पर छोड़ें</translation>
    </message>
    <message>
        <source>Reason for a pair picked by hand</source>
        <translation>हाथ से चुने चश्मे का कारण</translation>
    </message>
    <message>
        <source>Reason, for a pair by hand</source>
        <translation>कारण, हाथ से चुना चश्मा</translation>
    </message>
    <message>
        <source>Why this person gets another pair than planned; kept with the promise</source>
        <translation>इस व्यक्ति को योजना से अलग चश्मा क्यों; वादे के साथ रहता है</translation>
    </message>
    <message>
        <source>All arrive</source>
        <translation>सब आए</translation>
    </message>
    <message>
        <source>Everybody of the table who has nothing yet</source>
        <translation>तालिका के सब लोग जिन्हें अभी कुछ नहीं मिला</translation>
    </message>
    <message>
        <source>Card arrives</source>
        <translation>कार्ड वाला आया</translation>
    </message>
    <message>
        <source>The person on the card (Ctrl+J)</source>
        <translation>कार्ड वाला व्यक्ति (Ctrl+J)</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>फिर योजना</translation>
    </message>
    <message>
        <source>Plans anew, or stops planning</source>
        <translation>नए सिरे से योजना बनाता है, या रोकता है</translation>
    </message>
    <message>
        <source>Promise</source>
        <translation>वादा करें</translation>
    </message>
    <message>
        <source>The person was told: no plan takes it back</source>
        <translation>व्यक्ति को बता दिया: कोई योजना इसे वापस नहीं लेती</translation>
    </message>
    <message>
        <source>Give chosen pair</source>
        <translation>चुना चश्मा दें</translation>
    </message>
    <message>
        <source>The pair chosen in the list, by hand and with a reason (Ctrl+G)</source>
        <translation>सूची में चुना चश्मा, हाथ से और कारण के साथ (Ctrl+G)</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>चले गए</translation>
    </message>
    <message>
        <source>The person left the line</source>
        <translation>व्यक्ति कतार से चला गया</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>रोकें</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>योजना बन रही है …</translation>
    </message>
    <message>
        <source>Nobody waits yet. Let the people of the table stand in line, or the one on the card.</source>
        <translation>अभी कोई प्रतीक्षा में नहीं। तालिका के लोगों को, या कार्ड वाले को कतार में लाएँ।</translation>
    </message>
    <message>
        <source>%1 of %2 get a pair; first come, first served would be %3. %4</source>
        <translation>%2 में से %1 को चश्मा मिलता है; पहले आओ पहले पाओ से %3 को मिलता। %4</translation>
    </message>
    <message>
        <source>No plan serves more.</source>
        <translation>कोई योजना इससे अधिक को नहीं देती।</translation>
    </message>
    <message>
        <source>Good, not proved best.</source>
        <translation>अच्छी, पर सबसे अच्छी सिद्ध नहीं।</translation>
    </message>
    <message>
        <source>Unpromise</source>
        <translation>वादा हटाएँ</translation>
    </message>
    <message>
        <source>Why this pair for %1? Type the reason and press Enter.</source>
        <translation>%1 के लिए यह चश्मा क्यों? कारण लिखें और Enter दबाएँ।</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinesModel</name>
    <message>
        <source>none left</source>
        <translation>कुछ नहीं बचा</translation>
    </message>
    <message>
        <source>below least</source>
        <translation>न्यूनतम से कम</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>पर्याप्त</translation>
    </message>
    <message>
        <source>above most</source>
        <translation>अधिकतम से ऊपर</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>रोका %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>अलग रखा %1</translation>
    </message>
    <message>
        <source>keep at least %1, at most %2</source>
        <translation>कम से कम %1, अधिक से अधिक %2 रखें</translation>
    </message>
    <message numerus="yes">
        <source>reorder %n</source>
        <translation>
            <numerusform>%n मँगाएँ</numerusform>
            <numerusform>%n मँगाएँ</numerusform>
        </translation>
    </message>
    <message>
        <source>lasts %1 camp days as used so far</source>
        <translation>अब तक की खपत से शिविर के %1 दिन चलेगा</translation>
    </message>
    <message>
        <source>How many camps of 100 people the available pieces last, as used so far</source>
        <translation>अब तक की खपत से उपलब्ध नग 100 लोगों के कितने शिविर चलेंगे</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>खाना</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>पंक्ति</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>पावर</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>मौजूद</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>उपलब्ध</translation>
    </message>
    <message>
        <source>Kept aside</source>
        <translation>अलग रखा</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>स्तर</translation>
    </message>
    <message>
        <source>Camps</source>
        <translation>शिविर</translation>
    </message>
</context>
<context>
    <name>quarterstep::LongWork</name>
    <message>
        <source>Stop</source>
        <translation>रोकें</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>कितना हो चुका है</translation>
    </message>
    <message>
        <source>Ends this work; nothing is changed by it</source>
        <translation>यह काम रोकता है; इससे कुछ नहीं बदलता</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>रुक रहा है…</translation>
    </message>
    <message>
        <source>After this: %1</source>
        <translation>इसके बाद: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::MappedColumnsModel</name>
    <message>
        <source>What this column holds; Enter or a click changes it</source>
        <translation>इस स्तंभ में क्या है; Enter या क्लिक से बदलता है</translation>
    </message>
    <message>
        <source>Heading</source>
        <translation>शीर्षक</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>उदाहरण</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>क्या माना</translation>
    </message>
</context>
<context>
    <name>quarterstep::MeaningDelegate</name>
    <message>
        <source>What the column holds</source>
        <translation>स्तंभ में क्या है</translation>
    </message>
</context>
<context>
    <name>quarterstep::MessageBar</name>
    <message>
        <source>Copy code</source>
        <translation>कोड कॉपी करें</translation>
    </message>
    <message>
        <source>Copies the code of this message, to look it up in the help</source>
        <translation>इस संदेश का कोड कॉपी करता है, सहायता में देखने के लिए</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>बंद करें</translation>
    </message>
    <message>
        <source>Puts this message away</source>
        <translation>यह संदेश हटाता है</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>हो गया</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>नहीं हुआ</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>प्रतीक्षा</translation>
    </message>
</context>
<context>
    <name>quarterstep::OpeningPage</name>
    <message>
        <source>Which camp?</source>
        <translation>कौन सा शिविर?</translation>
    </message>
    <message>
        <source>A camp is a folder: stock.yaml says what exists and how many; the ledger of what was handed over is kept beside it.</source>
        <translation>शिविर एक फ़ोल्डर है: stock.yaml बताता है क्या और कितना है; जो दिया गया उसकी बही पास में रहती है।</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation>देखकर समझें</translation>
    </message>
    <message>
        <source>A sample camp of invented people. What you do there stays in a copy of your own.</source>
        <translation>काल्पनिक लोगों का नमूना शिविर। आपका काम आपकी अपनी प्रति में रहता है।</translation>
    </message>
    <message>
        <source>Practise a hand-over, 3 minutes</source>
        <translation>चश्मा देने का अभ्यास, 3 मिनट</translation>
    </message>
    <message>
        <source>Opens the sample and tells each step beside the work</source>
        <translation>नमूना खोलता है और काम के साथ हर कदम बताता है</translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>नमूना शिविर खोलें</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation>नमूने की आपकी प्रति वैसी खोलता है जैसी आपने छोड़ी</translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>नमूना नए सिरे से</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation>नमूने की आपकी प्रति में किया काम मिटाता है</translation>
    </message>
    <message>
        <source>Start my own camp</source>
        <translation>अपना शिविर शुरू करें</translation>
    </message>
    <message>
        <source>Describe the trays of your box in a few lines; the desk writes the stock file.</source>
        <translation>अपने बक्से की ट्रे कुछ पंक्तियों में बताएँ; स्टॉक फ़ाइल बन जाएगी।</translation>
    </message>
    <message>
        <source>Describe my trays…</source>
        <translation>मेरी ट्रे बताएँ…</translation>
    </message>
    <message>
        <source>A page where you type the trays and see the lines they make</source>
        <translation>एक पन्ना जहाँ आप ट्रे लिखते हैं और उनसे बनी पंक्तियाँ देखते हैं</translation>
    </message>
    <message>
        <source>Open a camp</source>
        <translation>शिविर खोलें</translation>
    </message>
    <message>
        <source>A folder with a stock.yaml, on this laptop or on a stick.</source>
        <translation>stock.yaml वाला फ़ोल्डर, इस लैपटॉप या पेन ड्राइव पर।</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>फ़ोल्डर चुनें…</translation>
    </message>
    <message>
        <source>Chooses the folder with stock.yaml</source>
        <translation>stock.yaml वाला फ़ोल्डर चुनता है</translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>खुले शिविर पर लौटें</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation>सब कुछ जैसा है वैसा छोड़ता है</translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>जो मिला, फ़ाइल, पंक्ति और स्तंभ के साथ</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation>जो भी मिला उसकी फ़ाइल, पंक्ति और स्तंभ; कॉपी हो सकता है</translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>इस फ़ोल्डर में शिविर शुरू करें…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation>ट्रे बताएँ; स्टॉक फ़ाइल इस फ़ोल्डर में लिखी जाती है</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 नहीं खुला</translation>
    </message>
    <message>
        <source>This folder has no stock.yaml. Choose the folder that has one, or start a camp here.</source>
        <translation>इस फ़ोल्डर में stock.yaml नहीं है। जिसमें हो उसे चुनें, या यहाँ शिविर शुरू करें।</translation>
    </message>
    <message>
        <source>Mend the file at the line and column named, with any text editor, and open the folder again. Nothing was written.</source>
        <translation>बताई पंक्ति और स्तंभ पर फ़ाइल को किसी टेक्स्ट एडिटर से सुधारें और फ़ोल्डर फिर खोलें। कुछ लिखा नहीं गया।</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 खोलें</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersModel</name>
    <message numerus="yes">
        <source>remade %n time(s)</source>
        <translation>
            <numerusform>%n बार फिर बना</numerusform>
            <numerusform>%n बार फिर बना</numerusform>
        </translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>मँगाया %1</translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation>फ़्रेम रोका: %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>State</source>
        <translation>स्थिति</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>कब से</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>मँगाया</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersPanel</name>
    <message>
        <source>Find an order by the code of the person</source>
        <translation>व्यक्ति के कोड से ऑर्डर खोजें</translation>
    </message>
    <message>
        <source>Part of a camp code; empty shows the open orders</source>
        <translation>शिविर कोड का भाग; खाली हो तो खुले ऑर्डर दिखते हैं</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>कोड</translation>
    </message>
    <message>
        <source>Custom orders</source>
        <translation>ऑर्डर</translation>
    </message>
    <message>
        <source>Custom orders, newest change first</source>
        <translation>ऑर्डर, सबसे नया बदलाव पहले</translation>
    </message>
    <message>
        <source>Reason or note for this step</source>
        <translation>इस कदम का कारण या टिप्पणी</translation>
    </message>
    <message>
        <source>Kept with the step; making again needs a reason</source>
        <translation>कदम के साथ रहता है; फिर बनाने के लिए कारण चाहिए</translation>
    </message>
    <message>
        <source>Reason or note</source>
        <translation>कारण या टिप्पणी</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>आया</translation>
    </message>
    <message>
        <source>It came from the laboratory</source>
        <translation>प्रयोगशाला से आया</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>जाँचा</translation>
    </message>
    <message>
        <source>Power, axis and centres were read and agree with the order</source>
        <translation>पावर, धुरी और केंद्र पढ़े गए और ऑर्डर से मेल खाते हैं</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>ले गए</translation>
    </message>
    <message>
        <source>The person has it and was checked with it on</source>
        <translation>व्यक्ति को मिल गया और पहनाकर जाँचा गया</translation>
    </message>
    <message>
        <source>Make again</source>
        <translation>फिर बनाएँ</translation>
    </message>
    <message>
        <source>Back to the laboratory; a reason is needed</source>
        <translation>वापस प्रयोगशाला को; कारण चाहिए</translation>
    </message>
    <message>
        <source>Not collected</source>
        <translation>नहीं ले गए</translation>
    </message>
    <message>
        <source>The person did not come for it</source>
        <translation>व्यक्ति लेने नहीं आया</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2।</translation>
    </message>
    <message>
        <source>Laboratory file</source>
        <translation>प्रयोगशाला फ़ाइल</translation>
    </message>
    <message>
        <source>Writes the order as a file for the laboratory into the folder papers</source>
        <translation>ऑर्डर को प्रयोगशाला के लिए फ़ाइल के रूप में papers फ़ोल्डर में लिखता है</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingDraws</name>
    <message>
        <source>Assumptions, published mix, number of draws and lot (Ctrl+D)</source>
        <translation>मानी गई बातें, प्रकाशित मिश्रण, ड्रॉ की संख्या और लॉट (Ctrl+D)</translation>
    </message>
    <message>
        <source>How the draws are made</source>
        <translation>ड्रॉ कैसे किए जाते हैं</translation>
    </message>
    <message>
        <source>PD as the pair&apos;s centres</source>
        <translation>PD जोड़ी के केंद्रों जितनी</translation>
    </message>
    <message>
        <source>Where no PD was taken, it equals the centres of each pair</source>
        <translation>जहाँ PD नहीं ली गई, वह हर जोड़ी के केंद्रों के बराबर है</translation>
    </message>
    <message>
        <source>readings are final</source>
        <translation>माप अंतिम हैं</translation>
    </message>
    <message>
        <source>Objective readings are final, and a prescriber is named</source>
        <translation>वस्तुनिष्ठ माप अंतिम हैं, और लिखने वाले का नाम है</translation>
    </message>
    <message>
        <source>vertex as the stock</source>
        <translation>वर्टेक्स भंडार जैसा</translation>
    </message>
    <message>
        <source>An unrecorded vertex distance is that of the stock</source>
        <translation>न लिखी गई वर्टेक्स दूरी भंडार की ही है</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>मान लिया गया</translation>
    </message>
    <message>
        <source>Published mix</source>
        <translation>प्रकाशित मिश्रण</translation>
    </message>
    <message>
        <source>Mixes with the published mix of a camp, weighing as so many people; 0: not at all. By itself 30 where fewer than 100 people were seen</source>
        <translation>शिविर के प्रकाशित मिश्रण के साथ मिलाता है, जिसका वज़न इतने लोगों जितना है; 0: बिलकुल नहीं। अपने आप 30, जहाँ 100 से कम लोग देखे गए</translation>
    </message>
    <message>
        <source>by who was seen</source>
        <translation>जितने लोग देखे गए उनके अनुसार</translation>
    </message>
    <message>
        <source> people</source>
        <translation> लोग</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>ड्रॉ</translation>
    </message>
    <message>
        <source>Camps that are drawn and planned for, and as many again to check</source>
        <translation>शिविर जो निकाले और जिनकी योजना बनाई जाती है, और उतने ही जाँचने के लिए</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>लॉट</translation>
    </message>
    <message>
        <source>The same lot draws the same people again</source>
        <translation>वही लॉट फिर वही लोग निकालता है</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>सिमटा हुआ</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>खुला हुआ</translation>
    </message>
    <message>
        <source>draws: %1</source>
        <translation>ड्रॉ: %1</translation>
    </message>
    <message>
        <source>lot: %1</source>
        <translation>लॉट: %1</translation>
    </message>
    <message>
        <source>published mix: %1</source>
        <translation>प्रकाशित मिश्रण: %1</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>मान लिया गया: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingPanel</name>
    <message>
        <source>Boxes for the next camp</source>
        <translation>अगले शिविर के बक्से</translation>
    </message>
    <message>
        <source>Plan the boxes</source>
        <translation>बक्सों की योजना</translation>
    </message>
    <message>
        <source>Plans what to buy; nothing is entered (F5)</source>
        <translation>क्या ख़रीदना है, इसकी योजना बनाता है; कुछ लिखा नहीं जाता (F5)</translation>
    </message>
    <message>
        <source>Persons served against money</source>
        <translation>रक़म के सामने जिन लोगों को मिला</translation>
    </message>
    <message>
        <source>Line: served on the draws planned for · triangle: the knee · diamond: this plan · dotted: no order passes it · upright: the budget.</source>
        <translation>रेखा: योजना के नमूनों में मिला · त्रिकोण: मोड़ · हीरा: यह योजना · बिंदीदार: कोई ऑर्डर इससे आगे नहीं · खड़ी: बजट।</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>चुनें…</translation>
    </message>
    <message>
        <source>The list of what a supplier sells (supplier.yaml)</source>
        <translation>आपूर्तिकर्ता क्या बेचता है, उसकी सूची (supplier.yaml)</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>आपूर्तिकर्ता</translation>
    </message>
    <message>
        <source>Whom to plan for</source>
        <translation>किनके लिए योजना</translation>
    </message>
    <message>
        <source>People as they were seen: of the ledger, or of a table of prescriptions</source>
        <translation>लोग जैसे देखे गए: बही के, या नुस्ख़ा तालिका के</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>माँग</translation>
    </message>
    <message>
        <source>People who come next</source>
        <translation>आगे आने वाले लोग</translation>
    </message>
    <message>
        <source>How many people come to the next camp</source>
        <translation>अगले शिविर में कितने लोग आएँगे</translation>
    </message>
    <message>
        <source> people</source>
        <translation> लोग</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>बजट</translation>
    </message>
    <message>
        <source>Money that may be spent, in the currency of the supplier&apos;s list</source>
        <translation>जितनी रक़म ख़र्च की जा सकती है, आपूर्तिकर्ता की सूची की मुद्रा में</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>वज़न</translation>
    </message>
    <message>
        <source>Kilograms of what is bought; 0: not limited</source>
        <translation>ख़रीदे माल के किलोग्राम; 0: कोई सीमा नहीं</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> किग्रा</translation>
    </message>
    <message>
        <source>any weight</source>
        <translation>कोई भी वज़न</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>बक्से</translation>
    </message>
    <message>
        <source>Boxes that are carried, what is on hand included; 0: as many as it takes</source>
        <translation>ले जाए जाने वाले बक्से, मौजूद माल समेत; 0: जितने लगें</translation>
    </message>
    <message>
        <source>any number</source>
        <translation>कितने भी</translation>
    </message>
    <message>
        <source>Pieces in a box</source>
        <translation>एक बक्से में नग</translation>
    </message>
    <message>
        <source>How many pieces a box holds</source>
        <translation>एक बक्से में कितने नग आते हैं</translation>
    </message>
    <message>
        <source> in each</source>
        <translation> हर बक्से में</translation>
    </message>
    <message>
        <source>What the plan comes to</source>
        <translation>योजना का नतीजा</translation>
    </message>
    <message>
        <source>Served, spent, and how sure that is; the text can be copied</source>
        <translation>कितनों को मिला, कितना ख़र्च, और यह कितना पक्का है; पाठ कॉपी हो सकता है</translation>
    </message>
    <message>
        <source>What is shown of the plan</source>
        <translation>योजना का क्या दिखाया जाए</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>ऑर्डर</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>पैकिंग सूची</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>जाँचा</translation>
    </message>
    <message>
        <source>Without a pair</source>
        <translation>बिना चश्मे</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>ख़त्म होगा</translation>
    </message>
    <message>
        <source>Not bought</source>
        <translation>नहीं ख़रीदा</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>वक्र</translation>
    </message>
    <message>
        <source>The plan for the boxes</source>
        <translation>बक्सों की योजना</translation>
    </message>
    <message>
        <source>The plan, row by row</source>
        <translation>योजना, एक-एक कतार</translation>
    </message>
    <message>
        <source>Print packing list</source>
        <translation>पैकिंग सूची छापें</translation>
    </message>
    <message>
        <source>The packing list as a paper (Ctrl+P)</source>
        <translation>पैकिंग सूची काग़ज़ पर (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save packing list…</source>
        <translation>पैकिंग सूची सहेजें…</translation>
    </message>
    <message>
        <source>Box by box, as a table (Ctrl+S)</source>
        <translation>एक-एक बक्सा, तालिका के रूप में (Ctrl+S)</translation>
    </message>
    <message>
        <source>Save order…</source>
        <translation>ऑर्डर सहेजें…</translation>
    </message>
    <message>
        <source>What to order, as a table (Ctrl+Shift+S)</source>
        <translation>क्या मँगाना है, तालिका के रूप में (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>तालिकाएँ (*.csv)</translation>
    </message>
    <message>
        <source>The order is %1.</source>
        <translation>ऑर्डर %1 है।</translation>
    </message>
    <message>
        <source>The packing list is %1.</source>
        <translation>पैकिंग सूची %1 है।</translation>
    </message>
    <message>
        <source>The ledger of this camp</source>
        <translation>इस शिविर की बही</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>दूसरी तालिका…</translation>
    </message>
    <message>
        <source>List of a supplier</source>
        <translation>आपूर्तिकर्ता की सूची</translation>
    </message>
    <message>
        <source>Suppliers&apos; lists (*.yaml)</source>
        <translation>आपूर्तिकर्ताओं की सूचियाँ (*.yaml)</translation>
    </message>
    <message>
        <source>Table of people</source>
        <translation>लोगों की तालिका</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>नुस्ख़ा तालिकाएँ (*.csv)</translation>
    </message>
    <message>
        <source>Choose what can be bought: the list of a supplier.</source>
        <translation>चुनें कि क्या ख़रीदा जा सकता है: आपूर्तिकर्ता की सूची।</translation>
    </message>
    <message>
        <source>Planning the boxes…</source>
        <translation>बक्सों की योजना बन रही है…</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>कोई नहीं चुना</translation>
    </message>
    <message>
        <source>Planning … “Stop” at the top ends it.</source>
        <translation>योजना बन रही है … ऊपर “रोकें” से रुक जाएगी।</translation>
    </message>
    <message>
        <source>Nothing is planned yet.</source>
        <translation>अभी कोई योजना नहीं बनी।</translation>
    </message>
    <message>
        <source>The plan beside is of other figures; plan again (F5).</source>
        <translation>साथ की योजना दूसरे अंकों की है; फिर योजना बनाएँ (F5)।</translation>
    </message>
    <message>
        <source>For this money the curve says %1; plan again for the order (F5).</source>
        <translation>इस रक़म के लिए वक्र %1 बताता है; ऑर्डर के लिए फिर योजना बनाएँ (F5)।</translation>
    </message>
    <message>
        <source>On people who were not planned for: %1</source>
        <translation>जिन लोगों के लिए योजना नहीं थी, उन पर: %1</translation>
    </message>
    <message>
        <source>Not checked: too few people to plan on one half and check on the other.</source>
        <translation>नहीं परखा गया: लोग इतने कम हैं कि आधों पर योजना बनाकर बाकी आधों पर परखा नहीं जा सकता।</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of the table could not be read and were left out.</source>
        <translation>
            <numerusform>तालिका की %n कतार पढ़ी नहीं जा सकी और छोड़ दी गई।</numerusform>
            <numerusform>तालिका की %n कतारें पढ़ी नहीं जा सकीं और छोड़ दी गईं।</numerusform>
        </translation>
    </message>
    <message>
        <source>What to buy for the next camp so that most people are served: choose supplier, demand and money, then plan (F5). Nothing is entered.</source>
        <translation>अगले शिविर के लिए क्या ख़रीदें कि सबसे अधिक लोगों को मिले: आपूर्तिकर्ता, माँग और रक़म चुनें, फिर योजना बनाएँ (F5)। कुछ लिखा नहीं जाता।</translation>
    </message>
</context>
<context>
    <name>quarterstep::PairsModel</name>
    <message numerus="yes">
        <source>%n here</source>
        <translation>
            <numerusform>यहाँ %n</numerusform>
            <numerusform>यहाँ %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Nearest outside the limits</source>
        <translation>सीमा से बाहर सबसे पास</translation>
    </message>
    <message>
        <source>same power: %1</source>
        <translation>वही पावर: %1</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>पावर (D)</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>निकालें</translation>
    </message>
    <message>
        <source>Right eye (D)</source>
        <translation>दाईं आँख (D)</translation>
    </message>
    <message>
        <source>Left eye (D)</source>
        <translation>बाईं आँख (D)</translation>
    </message>
    <message>
        <source>Prism (Δ)</source>
        <translation>प्रिज़्म (Δ)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>निर्णय</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>कारण</translation>
    </message>
    <message>
        <source>R and L %1 · prism %2</source>
        <translation>दायाँ और बायाँ %1 · प्रिज़्म %2</translation>
    </message>
    <message>
        <source>R %1 · L %2 · prism %3</source>
        <translation>दायाँ %1 · बायाँ %2 · प्रिज़्म %3</translation>
    </message>
    <message>
        <source> · chance %1</source>
        <translation> · संभावना %1</translation>
    </message>
    <message>
        <source>Chance within</source>
        <translation>सीमा में होने की संभावना</translation>
    </message>
</context>
<context>
    <name>quarterstep::PaperWorker</name>
    <message>
        <source>%1: sent to %2.</source>
        <translation>%1: %2 को भेजा।</translation>
    </message>
    <message>
        <source>%1: written to %2.</source>
        <translation>%1: %2 में लिखा।</translation>
    </message>
</context>
<context>
    <name>quarterstep::PinGuard</name>
    <message>
        <source>This needs the PIN of the optician.</source>
        <translation>इसके लिए ऑप्टिशियन का PIN चाहिए।</translation>
    </message>
    <message>
        <source>This needs the PIN of the keeper.</source>
        <translation>इसके लिए रखवाले का PIN चाहिए।</translation>
    </message>
    <message>
        <source>This needs the PIN of the supervisor.</source>
        <translation>इसके लिए निरीक्षक का PIN चाहिए।</translation>
    </message>
    <message>
        <source>A PIN is asked for</source>
        <translation>PIN माँगा गया है</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>It is good until this place is left, or ten minutes after the last use</source>
        <translation>यह जगह छोड़ने तक, या आख़िरी इस्तेमाल के दस मिनट बाद तक चलता है</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>आगे बढ़ें</translation>
    </message>
    <message>
        <source>Does what was asked for (Enter)</source>
        <translation>जो माँगा गया वह करता है (Enter)</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>न करें</translation>
    </message>
    <message>
        <source>Nothing is written (Escape)</source>
        <translation>कुछ लिखा नहीं जाता (Escape)</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlaneModel</name>
    <message>
        <source>need, both eyes</source>
        <translation>ज़रूरत, दोनों आँखें</translation>
    </message>
    <message>
        <source>need, right eye</source>
        <translation>ज़रूरत, दाईं आँख</translation>
    </message>
    <message>
        <source>need, left eye</source>
        <translation>ज़रूरत, बाईं आँख</translation>
    </message>
    <message>
        <source>chosen pair, right eye</source>
        <translation>चुना चश्मा, दाईं आँख</translation>
    </message>
    <message>
        <source>chosen pair, left eye</source>
        <translation>चुना चश्मा, बाईं आँख</translation>
    </message>
    <message>
        <source>lenses</source>
        <translation>लेंस</translation>
    </message>
    <message>
        <source>ready-made pairs</source>
        <translation>तैयार चश्मे</translation>
    </message>
    <message>
        <source>What</source>
        <translation>क्या</translation>
    </message>
    <message>
        <source>Mean (D)</source>
        <translation>औसत (D)</translation>
    </message>
    <message>
        <source>Half cylinder (D)</source>
        <translation>आधा सिलिंडर (D)</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>उपलब्ध</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlanePanel</name>
    <message>
        <source>Table</source>
        <translation>तालिका</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation>पावर-चित्र</translation>
    </message>
    <message>
        <source>Shows the same values as a table (Ctrl+T)</source>
        <translation>वही मान तालिका में दिखाता है (Ctrl+T)</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>पावर-चित्र तालिका में</translation>
    </message>
    <message>
        <source>Powers in dioptres and how many can be given</source>
        <translation>पावर डायोप्टर में और कितने दिए जा सकते हैं</translation>
    </message>
    <message>
        <source>R, L: the person&apos;s eyes · disc: pairs · diamond: lenses · cross: none left · dot: ranks · open ring: chosen pair. The larger, the more there are.</source>
        <translation>R, L: व्यक्ति की आँखें · चकती: चश्मे · हीरा: लेंस · क्रॉस: कुछ नहीं बचा · बिंदु: क्रम · खुला घेरा: चुना चश्मा। जितना बड़ा, उतने अधिक नग।</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>चित्र</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlotView</name>
    <message>
        <source>Power plane</source>
        <translation>पावर-चित्र</translation>
    </message>
    <message>
        <source>A picture of the stock around this person&apos;s eyes; the same values stand in the table</source>
        <translation>इस व्यक्ति की आँखों के आसपास के स्टॉक का चित्र; वही मान तालिका में हैं</translation>
    </message>
    <message>
        <source>mean power (D)</source>
        <translation>औसत पावर (D)</translation>
    </message>
    <message>
        <source>half the cylinder (D)</source>
        <translation>आधा सिलिंडर (D)</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>ठीक %1</translation>
    </message>
    <message>
        <source>on trial %1</source>
        <translation>परीक्षण %1</translation>
    </message>
    <message>
        <source>R %1 D</source>
        <translation>R %1 D</translation>
    </message>
    <message>
        <source>L %1 D</source>
        <translation>L %1 D</translation>
    </message>
    <message numerus="yes">
        <source>lenses %1: %n available</source>
        <translation>
            <numerusform>लेंस %1: %n उपलब्ध</numerusform>
            <numerusform>लेंस %1: %n उपलब्ध</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>pairs %1: %n available</source>
        <translation>
            <numerusform>चश्मे %1: %n उपलब्ध</numerusform>
            <numerusform>चश्मे %1: %n उपलब्ध</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::PowerFields</name>
    <message>
        <source>Right eye, sphere</source>
        <translation>दाईं आँख, स्फ़ियर</translation>
    </message>
    <message>
        <source>Left eye, sphere</source>
        <translation>बाईं आँख, स्फ़ियर</translation>
    </message>
    <message>
        <source>Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>स्फ़ियर डायोप्टर में, चिह्न के साथ। Up और Down 0.25 बदलते हैं, Page Up और Page Down 1.00</translation>
    </message>
    <message>
        <source>Right eye, cylinder</source>
        <translation>दाईं आँख, सिलिंडर</translation>
    </message>
    <message>
        <source>Left eye, cylinder</source>
        <translation>बाईं आँख, सिलिंडर</translation>
    </message>
    <message>
        <source>Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>सिलिंडर डायोप्टर में, चिह्न के साथ। Up और Down 0.25 बदलते हैं, Page Up और Page Down 1.00</translation>
    </message>
    <message>
        <source>Right eye, axis</source>
        <translation>दाईं आँख, धुरी</translation>
    </message>
    <message>
        <source>Left eye, axis</source>
        <translation>बाईं आँख, धुरी</translation>
    </message>
    <message>
        <source>Axis in degrees. Up and Down step 1, with Shift 5</source>
        <translation>धुरी अंश में। Up और Down 1 बदलते हैं, Shift के साथ 5</translation>
    </message>
</context>
<context>
    <name>quarterstep::PracticeStrip</name>
    <message>
        <source>Next</source>
        <translation>आगे</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>अभ्यास छोड़ें</translation>
    </message>
    <message>
        <source>Goes on without this step</source>
        <translation>इस कदम के बिना आगे जाता है</translation>
    </message>
    <message>
        <source>Ends the practice; the sample stays open</source>
        <translation>अभ्यास ख़त्म करता है; नमूना खुला रहता है</translation>
    </message>
    <message>
        <source>Somebody sits down. Press Ctrl+N for an empty card, and type the code %1 under Person.</source>
        <translation>कोई आकर बैठता है। खाली कार्ड के लिए Ctrl+N दबाएँ और व्यक्ति में कोड %1 लिखें।</translation>
    </message>
    <message>
        <source>Tab to Age: type 30.</source>
        <translation>Tab से उम्र पर: 30 लिखें।</translation>
    </message>
    <message>
        <source>Right eye: type %1. Tab to the left eye and type the same.</source>
        <translation>दाईं आँख: %1 लिखें। Tab से बाईं आँख पर, वही लिखें।</translation>
    </message>
    <message>
        <source>PD far: type 62. Enter asks for pairs.</source>
        <translation>PD दूर: 62 लिखें। Enter चश्मे माँगता है।</translation>
    </message>
    <message>
        <source>The best pair stands first, with its bin. You would fetch it, and one neighbour. Tick the four checks once the pair is on the face.</source>
        <translation>सबसे अच्छा चश्मा पहले है, खाने के साथ। उसे और एक पड़ोसी को लाएँ। चश्मा चेहरे पर हो तो चारों जाँच पर निशान लगाएँ।</translation>
    </message>
    <message>
        <source>Ctrl+Enter hands it over: the count goes down.</source>
        <translation>Ctrl+Enter से दे दें: गिनती घटती है।</translation>
    </message>
    <message>
        <source>A mistake? Ctrl+Z takes the hand-over back the same day. Try it.</source>
        <translation>ग़लती? Ctrl+Z उसी दिन वापस लेता है। आज़माएँ।</translation>
    </message>
    <message>
        <source>That was all. F1 opens the manual, Shift+F1 shows every key.</source>
        <translation>बस इतना ही। F1 पुस्तिका खोलता है, Shift+F1 सब कुंजियाँ दिखाता है।</translation>
    </message>
    <message>
        <source>Practice, step %1 of %2</source>
        <translation>अभ्यास, कदम %1 / %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>हो गया</translation>
    </message>
</context>
<context>
    <name>quarterstep::PrescriptionCard</name>
    <message>
        <source>Wanted for</source>
        <translation>किसलिए</translation>
    </message>
    <message>
        <source>What the spectacles are for; left open, the prescription decides</source>
        <translation>चश्मा किस लिए है; न चुनें तो नुस्ख़े से तय होता है</translation>
    </message>
    <message>
        <source>open</source>
        <translation>खुला</translation>
    </message>
    <message>
        <source>Right eye, prescription</source>
        <translation>दाईं आँख, नुस्ख़ा</translation>
    </message>
    <message>
        <source>Left eye, prescription</source>
        <translation>बाईं आँख, नुस्ख़ा</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>दर्द</translation>
    </message>
    <message>
        <source>Sudden loss of sight</source>
        <translation>अचानक दिखना बंद</translation>
    </message>
    <message>
        <source>Red eye</source>
        <translation>लाल आँख</translation>
    </message>
    <message>
        <source>New flashes or floaters</source>
        <translation>नई चमक या धब्बे</translation>
    </message>
    <message>
        <source>Double vision</source>
        <translation>दोहरा दिखना</translation>
    </message>
    <message>
        <source>White pupil</source>
        <translation>सफ़ेद पुतली</translation>
    </message>
    <message>
        <source>Squint</source>
        <translation>भेंगापन</translation>
    </message>
    <message>
        <source>Drops asked for</source>
        <translation>बूँदें माँगी गईं</translation>
    </message>
    <message>
        <source>Lines look bent</source>
        <translation>रेखाएँ टेढ़ी दिखें</translation>
    </message>
    <message>
        <source>Part of the view missing</source>
        <translation>दृश्य का भाग ग़ायब</translation>
    </message>
    <message>
        <source>Halos around lights</source>
        <translation>रोशनी के चारों ओर घेरे</translation>
    </message>
    <message>
        <source>Signs seen or told</source>
        <translation>दिखे या बताए लक्षण</translation>
    </message>
    <message>
        <source>Tick when this was seen or told; it decides about a letter to the clinic</source>
        <translation>यह दिखा या बताया गया हो तो निशान लगाएँ; इससे चिकित्सालय के पत्र का निर्णय होता है</translation>
    </message>
    <message>
        <source>%1 is empty; a person, the right and the left eye are needed</source>
        <translation>%1 खाली है; व्यक्ति, दाईं और बाईं आँख चाहिए</translation>
    </message>
    <message>
        <source>Measured besides</source>
        <translation>इसके अलावा नापा गया</translation>
    </message>
    <message>
        <source>Three fields an eye</source>
        <translation>हर आँख के तीन खाने</translation>
    </message>
    <message>
        <source>Sphere, cylinder and axis in fields of their own (Ctrl+E)</source>
        <translation>स्फ़ियर, सिलिंडर और धुरी अपने-अपने खाने में (Ctrl+E)</translation>
    </message>
</context>
<context>
    <name>quarterstep::ReaderCard</name>
    <message>
        <source>Age</source>
        <translation>उम्र</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>उम्र साल में; उम्र पता न हो तो सबसे कड़े नियमों से जाँचा जाता है</translation>
    </message>
    <message>
        <source>Distance fine?</source>
        <translation>दूर ठीक?</translation>
    </message>
    <message>
        <source>Does the person see well far away without spectacles? + is yes, - is no</source>
        <translation>क्या व्यक्ति बिना चश्मे दूर अच्छा देखता है? + हाँ है, - नहीं है</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>नहीं पूछा</translation>
    </message>
    <message>
        <source>yes (+)</source>
        <translation>हाँ (+)</translation>
    </message>
    <message>
        <source>no (-)</source>
        <translation>नहीं (-)</translation>
    </message>
    <message>
        <source>Near power by trial</source>
        <translation>आज़माकर पास की पावर</translation>
    </message>
    <message>
        <source>Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225</source>
        <translation>जिस पावर से व्यक्ति ने सबसे अच्छा पढ़ा, दोनों आँखों में एक, डायोप्टर: 2.25 या 225</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>PD पास</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation>पास देखते समय पुतलियों के बीच की दूरी, मिलीमीटर; इसके बिना सबसे बुरी संभव मानकर जाँचा जाता है</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>Camp code of the person; one is offered, the paper card&apos;s may be typed over it</source>
        <translation>व्यक्ति का शिविर कोड; एक सुझाया गया है, उसकी जगह काग़ज़ के कार्ड वाला लिख सकते हैं</translation>
    </message>
    <message>
        <source>%1 in each eye</source>
        <translation>हर आँख में %1</translation>
    </message>
    <message>
        <source>Ask first whether the person sees well far away.</source>
        <translation>पहले पूछें कि व्यक्ति दूर अच्छा देखता है या नहीं।</translation>
    </message>
    <message>
        <source>Then a reader alone is not enough: refract, and use the full card.</source>
        <translation>तब केवल पढ़ने का चश्मा काफ़ी नहीं: आँखों की जाँच करें और पूरा कार्ड भरें।</translation>
    </message>
    <message>
        <source>Type the near power in quarters of a dioptre: 2.25 or 225.</source>
        <translation>पास की पावर चौथाई डायोप्टर में लिखें: 2.25 या 225।</translation>
    </message>
    <message>
        <source>A hand-over needs a code for the person.</source>
        <translation>चश्मा देने के लिए व्यक्ति का कोड चाहिए।</translation>
    </message>
</context>
<context>
    <name>quarterstep::SendOutPanel</name>
    <message>
        <source>As</source>
        <translation>किस रूप में</translation>
    </message>
    <message>
        <source>An open standard, or a table that any program takes</source>
        <translation>एक खुला मानक, या तालिका जिसे कोई भी प्रोग्राम लेता है</translation>
    </message>
    <message>
        <source>HL7 FHIR (JSON, R4 and R5)</source>
        <translation>HL7 FHIR (JSON, R4 और R5)</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>तालिका (CSV)</translation>
    </message>
    <message>
        <source>Lines of JSON</source>
        <translation>JSON की पंक्तियाँ</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>किसे</translation>
    </message>
    <message>
        <source>Everybody in the list, or the person on the card</source>
        <translation>सूची के सब लोग, या कार्ड वाला व्यक्ति</translation>
    </message>
    <message>
        <source>Everybody in the list</source>
        <translation>सूची के सब लोग</translation>
    </message>
    <message>
        <source>The person on the card</source>
        <translation>कार्ड वाला व्यक्ति</translation>
    </message>
    <message>
        <source>What stays here, or leaves otherwise</source>
        <translation>जो यहीं रहता है, या बदलकर जाता है</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>वापस</translation>
    </message>
    <message>
        <source>To the place before</source>
        <translation>पिछली जगह पर</translation>
    </message>
    <message>
        <source>Write the file…</source>
        <translation>फ़ाइल लिखें…</translation>
    </message>
    <message>
        <source>Asks for a name and writes; symptoms and the guardian stay here</source>
        <translation>नाम पूछता है और लिखता है; लक्षण और अभिभावक यहीं रहते हैं</translation>
    </message>
    <message>
        <source>Nobody is there to be sent out.</source>
        <translation>बाहर भेजने के लिए कोई नहीं है।</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s), each with the profile, version and hash of the rules of this camp</source>
        <translation>
            <numerusform>%n नुस्ख़ा, इस शिविर के नियमों की प्रोफ़ाइल, संस्करण और हैश के साथ</numerusform>
            <numerusform>%n नुस्ख़े, हर एक इस शिविर के नियमों की प्रोफ़ाइल, संस्करण और हैश के साथ</numerusform>
        </translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>फ़ाइल लिखें</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>लिखा जा रहा है…</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) are in %1.</source>
        <translation>
            <numerusform>%1 में %n नुस्ख़ा है।</numerusform>
            <numerusform>%1 में %n नुस्ख़े हैं।</numerusform>
        </translation>
    </message>
    <message>
        <source>DICOM (Subjective Refraction)</source>
        <translation>DICOM (व्यक्तिनिष्ठ अपवर्तन)</translation>
    </message>
    <message>
        <source>Check first, or write; then it stands here.</source>
        <translation>पहले जाँचें, या लिखें; तब वह यहाँ दिखेगा।</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>पहले जाँचें</translation>
    </message>
    <message>
        <source>Shows what stays here; nothing is written</source>
        <translation>दिखाता है कि क्या यहीं रह जाता है; कुछ लिखा नहीं जाता</translation>
    </message>
    <message>
        <source>one file a person, in a folder</source>
        <translation>हर व्यक्ति की एक फ़ाइल, एक फ़ोल्डर में</translation>
    </message>
    <message>
        <source>Write the files…</source>
        <translation>फ़ाइलें लिखें…</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>फ़ाइलों का फ़ोल्डर</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>जाँच हो रही है…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>रोका गया। कुछ नहीं लिखा गया।</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) can leave; nothing was written.</source>
        <translation>
            <numerusform>%n नुस्ख़ा जा सकता है; कुछ नहीं लिखा गया।</numerusform>
            <numerusform>%n नुस्ख़े जा सकते हैं; कुछ नहीं लिखा गया।</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::SettingsPage</name>
    <message>
        <source>Optician: hands over, orders</source>
        <translation>ऑप्टिशियन: देता, मँगाता है</translation>
    </message>
    <message>
        <source>Keeper: counts, receives, moves stock</source>
        <translation>भंडारी: गिनता, लेता, हटाता है</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>यह लैपटॉप</translation>
    </message>
    <message>
        <source>Kept for you on this laptop.</source>
        <translation>आपके लिए इस लैपटॉप पर रखा जाता है।</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>रूप</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>हल्का, गहरा या धूप: बाहर के लिए सफ़ेद पर काला और बड़ा</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>हल्का</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>गहरा</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>धूप</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>अक्षरों का आकार</translation>
    </message>
    <message>
        <source>In per cent of the usual; also Ctrl++ and Ctrl+-</source>
        <translation>सामान्य के प्रतिशत में; Ctrl++ और Ctrl+- से भी</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>भाषा</translation>
    </message>
    <message>
        <source>Language of the window, at once</source>
        <translation>खिड़की की भाषा, तुरंत</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>प्रिंटर</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation>इस लैपटॉप का कार्ड और पत्र छापने वाला प्रिंटर</translation>
    </message>
    <message>
        <source>This camp</source>
        <translation>यह शिविर</translation>
    </message>
    <message>
        <source>Kept in the camp folder, for everybody who opens it.</source>
        <translation>शिविर के फ़ोल्डर में रहता है, हर खोलने वाले के लिए।</translation>
    </message>
    <message>
        <source>Cylinders are written</source>
        <translation>सिलिंडर लिखे जाते हैं</translation>
    </message>
    <message>
        <source>Form in which pairs and orders show a cylinder; typed prescriptions stay as typed</source>
        <translation>चश्मे और ऑर्डर सिलिंडर किस रूप में दिखाएँ; लिखे गए नुस्ख़े जैसे लिखे वैसे रहते हैं</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>माइनस</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>प्लस</translation>
    </message>
    <message>
        <source>Acuities are shown</source>
        <translation>दृष्टि दिखाई जाती है</translation>
    </message>
    <message>
        <source>Notation on the card; the record keeps what was typed</source>
        <translation>कार्ड पर लिखने का ढंग; अभिलेख में जैसा लिखा वैसा रहता है</translation>
    </message>
    <message>
        <source>as recorded</source>
        <translation>जैसा लिखा गया</translation>
    </message>
    <message>
        <source>decimal</source>
        <translation>दशमलव</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>किससे जाँचें</translation>
    </message>
    <message>
        <source>Profile of limits for everybody; by itself the desk chooses by age and purpose</source>
        <translation>सबके लिए सीमाओं की प्रोफ़ाइल; न चुनें तो उम्र और उद्देश्य से चुनी जाती है</translation>
    </message>
    <message>
        <source>PINs</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>भूमिका</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation>किसका PIN रखना या हटाना है</translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>अभी ज़रूरी PIN</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation>निरीक्षक का PIN हो तो वह, नहीं तो इस भूमिका का अभी का PIN</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>नया PIN</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation>%1 से %2 अक्षर</translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>PIN हटाएँ</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation>इस भूमिका से अब PIN नहीं पूछा जाएगा</translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>PIN रखें</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation>इस भूमिका से अब से यह PIN पूछा जाएगा</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>सिस्टम जैसा</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>कोई नहीं चुना</translation>
    </message>
    <message>
        <source>%1 (not here now)</source>
        <translation>%1 (अभी यहाँ नहीं)</translation>
    </message>
    <message>
        <source>chosen by age and purpose</source>
        <translation>उम्र और काम से चुना</translation>
    </message>
    <message>
        <source>No role has a PIN.</source>
        <translation>किसी भूमिका का PIN नहीं है।</translation>
    </message>
    <message>
        <source>With a PIN: %1</source>
        <translation>PIN के साथ: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>PIN हटा दिया गया।</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>PIN रख दिया गया।</translation>
    </message>
    <message>
        <source>Supervisor: settings of the camp, lots, names, exports, PINs</source>
        <translation>निरीक्षक: शिविर की सेटिंग, लॉट, नाम, निर्यात, PIN</translation>
    </message>
    <message>
        <source>A guard against slips, no lock. Asked for here and at the command line. Kept with the ledger.</source>
        <translation>चूक से बचाव, ताला नहीं। यहाँ और कमांड लाइन पर माँगा जाता है। बही के साथ रखा जाता है।</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockPlace</name>
    <message>
        <source>Stock</source>
        <translation>स्टॉक</translation>
    </message>
    <message>
        <source>Look for a line</source>
        <translation>पंक्ति खोजें</translation>
    </message>
    <message>
        <source>Look for a line, a power, a bin</source>
        <translation>पंक्ति, पावर, खाना खोजें</translation>
    </message>
    <message>
        <source>Shows only lines in which these words stand (Ctrl+F)</source>
        <translation>केवल वे पंक्तियाँ दिखाता है जिनमें ये शब्द हैं (Ctrl+F)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>तालिका</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation>पंक्तियाँ एक के नीचे एक</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>सीढ़ी</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation>हर पावर के कितने नग</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>बक्सा</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation>खाने, जैसे बक्से में रखे हैं</translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>स्टॉक की पंक्तियाँ</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation>पंक्ति चुनें; उसका कार्ड दिखेगा और जो हुआ वह लिख सकेंगे</translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>बक्से के खाने</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation>खाना चुनें: उसकी पंक्ति साथ में दिखेगी</translation>
    </message>
    <message>
        <source>Ready-made pairs</source>
        <translation>तैयार चश्मे</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>लेंस</translation>
    </message>
    <message>
        <source>Bar: available · hatched: kept aside · line across: keep at least this many. A click looks for that power.</source>
        <translation>पट्टी: उपलब्ध · धारीदार: अलग रखा · आड़ी रेखा: कम से कम इतने रखें। क्लिक से वह पावर खोजी जाती है।</translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>पंक्ति का कार्ड</translation>
    </message>
    <message>
        <source>Everything that happened to this line, newest first</source>
        <translation>इस पंक्ति के साथ जो भी हुआ, सबसे नया पहले</translation>
    </message>
    <message>
        <source>A count is blind: what the book says comes back into sight once the count is entered.</source>
        <translation>गिनती बिना देखे होती है: बही में क्या है, यह गिनती लिखने के बाद ही फिर दिखता है।</translation>
    </message>
    <message>
        <source>Counts edited in stock.yaml by hand</source>
        <translation>stock.yaml में हाथ से बदली गई गिनतियाँ</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>कारण</translation>
    </message>
    <message>
        <source>Reason, for taking them over</source>
        <translation>कारण, इन्हें मानने का</translation>
    </message>
    <message>
        <source>Why the counts in the file are the right ones; kept with the entry</source>
        <translation>फ़ाइल की गिनतियाँ सही क्यों हैं; प्रविष्टि के साथ रहता है</translation>
    </message>
    <message>
        <source>Put the ledger&apos;s counts back</source>
        <translation>बही की गिनती वापस रखें</translation>
    </message>
    <message>
        <source>The file gets the counts of the ledger again</source>
        <translation>फ़ाइल में फिर बही की गिनती आ जाती है</translation>
    </message>
    <message>
        <source>Take the file&apos;s counts over</source>
        <translation>फ़ाइल की गिनती मानें</translation>
    </message>
    <message>
        <source>The ledger gets an entry with the difference and the reason</source>
        <translation>बही में फ़र्क और कारण की प्रविष्टि होती है</translation>
    </message>
    <message>
        <source>No line is chosen</source>
        <translation>कोई पंक्ति नहीं चुनी</translation>
    </message>
    <message>
        <source>Choose a line in the table or a bin in the box.</source>
        <translation>तालिका में पंक्ति या बक्से में खाना चुनें।</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>खाना %1</translation>
    </message>
    <message>
        <source>lines %1</source>
        <translation>पंक्तियाँ %1</translation>
    </message>
    <message>
        <source>none left in %1</source>
        <translation>ख़त्म %1</translation>
    </message>
    <message>
        <source>within keep levels %1 of %2</source>
        <translation>स्तर के भीतर %1 / %2</translation>
    </message>
    <message>
        <source>to reorder %1</source>
        <translation>मँगाना %1</translation>
    </message>
    <message>
        <source>handed over %1</source>
        <translation>दिया %1</translation>
    </message>
    <message>
        <source>Nothing matches “%1”; empty the field to see all %2 lines.</source>
        <translation>“%1” से कुछ मेल नहीं खाता; सब %2 पंक्तियाँ देखने के लिए जगह खाली करें।</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>%2 में से %1 पंक्तियाँ</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation>मौजूद %1, पहले %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>मेज़ पर वापस लिया</translation>
    </message>
    <message>
        <source>Taken back: the counts are as before.</source>
        <translation>वापस लिया: गिनती पहले जैसी है।</translation>
    </message>
    <message>
        <source>%1: the file says %2, the ledger %3</source>
        <translation>%1: फ़ाइल में %2, बही में %3</translation>
    </message>
    <message>
        <source>Write why the counts in the file are the right ones.</source>
        <translation>लिखें कि फ़ाइल की गिनतियाँ सही क्यों हैं।</translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) taken over from the file.</source>
        <translation>
            <numerusform>फ़ाइल की %n गिनती मानी गई।</numerusform>
            <numerusform>फ़ाइल की %n गिनतियाँ मानी गईं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) put back to the ledger&apos;s.</source>
        <translation>
            <numerusform>%n गिनती बही जैसी की गई।</numerusform>
            <numerusform>%n गिनतियाँ बही जैसी की गईं।</numerusform>
        </translation>
    </message>
    <message>
        <source>Count the bin that was used most</source>
        <translation>सबसे अधिक इस्तेमाल हुआ खाना गिनें</translation>
    </message>
    <message>
        <source>Count it now</source>
        <translation>अभी गिनें</translation>
    </message>
    <message>
        <source>Begins a blind count of this one bin (F8)</source>
        <translation>केवल इस खाने की बिना देखे गिनती शुरू करता है (F8)</translation>
    </message>
    <message numerus="yes">
        <source>Bin %1 was reached into %n time(s) since it was counted.</source>
        <translation>
            <numerusform>गिनती के बाद खाने %1 में %n बार हाथ डाला गया।</numerusform>
            <numerusform>गिनती के बाद खाने %1 में %n बार हाथ डाला गया।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more bin(s) wait for a count.</source>
        <translation>
            <numerusform>%n और खाना गिनती की प्रतीक्षा में है।</numerusform>
            <numerusform>%n और खाने गिनती की प्रतीक्षा में हैं।</numerusform>
        </translation>
    </message>
    <message>
        <source>Count bin %1: %2. Two persons; what the book says comes afterwards.</source>
        <translation>खाना %1 गिनें: %2। दो लोग; बही में क्या है, यह बाद में दिखेगा।</translation>
    </message>
    <message>
        <source>Packing</source>
        <translation>पैकिंग</translation>
    </message>
    <message>
        <source>What to buy and pack for the next camp</source>
        <translation>अगले शिविर के लिए क्या ख़रीदें और पैक करें</translation>
    </message>
    <message>
        <source>Transfers</source>
        <translation>स्थानांतरण</translation>
    </message>
    <message>
        <source>Pieces sent to other sites, and what comes from them</source>
        <translation>दूसरी जगहों को भेजे नग, और वहाँ से आने वाले</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>स्टॉक: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockWorkPanel</name>
    <message>
        <source>Enter in the ledger</source>
        <translation>बही में लिखें</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>वापस लें</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>क्या हुआ</translation>
    </message>
    <message>
        <source>What is entered about the chosen line</source>
        <translation>चुनी पंक्ति के बारे में क्या लिखा जाए</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>मिला</translation>
    </message>
    <message>
        <source>Counted by two</source>
        <translation>दो ने गिना</translation>
    </message>
    <message>
        <source>Written off</source>
        <translation>हटाया</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>रोकें</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>छोड़ें</translation>
    </message>
    <message>
        <source>Quarantine</source>
        <translation>अलग रखें</translation>
    </message>
    <message>
        <source>Release from quarantine</source>
        <translation>वापस स्टॉक में</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>वजह</translation>
    </message>
    <message>
        <source>Why the count changes</source>
        <translation>गिनती क्यों बदली</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>नहीं बताया</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>How many pieces</source>
        <translation>कितने नग</translation>
    </message>
    <message>
        <source>For</source>
        <translation>के लिए</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation>जिस व्यक्ति के लिए रखे हैं उसका शिविर कोड; खाली रह सकता है</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>शब्द</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation>कारण, या किससे आए; प्रविष्टि के साथ रहता है</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके आद्याक्षर</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>कौन लिख रहा है; अगली प्रविष्टि के लिए बना रहता है</translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>दूसरे आद्याक्षर</translation>
    </message>
    <message>
        <source>The other person who counted; stays for the next entry</source>
        <translation>गिनने वाला दूसरा व्यक्ति; अगली प्रविष्टि के लिए बना रहता है</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>इस जगह की आख़िरी प्रविष्टि वापस लेता है (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Writes it into the ledger (Enter in a field)</source>
        <translation>बही में लिखता है (खाने में Enter)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>किससे</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>कारण</translation>
    </message>
    <message>
        <source>Enter about %1</source>
        <translation>%1 के बारे में लिखें</translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation>पंक्ति चुनें</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>पहले पंक्ति चुनें।</translation>
    </message>
    <message>
        <source>Write the number of pieces in digits.</source>
        <translation>नग अंकों में लिखें।</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>0 नग से कुछ नहीं होता।</translation>
    </message>
    <message>
        <source>A count needs the initials of two persons.</source>
        <translation>गिनती में दो लोगों के आद्याक्षर चाहिए।</translation>
    </message>
    <message>
        <source>Two different persons count.</source>
        <translation>दो अलग लोग गिनते हैं।</translation>
    </message>
    <message>
        <source>Choose the cause.</source>
        <translation>वजह चुनें।</translation>
    </message>
</context>
<context>
    <name>quarterstep::TableReading</name>
    <message>
        <source>Found: decimal %1; cylinders: %2 minus, %3 plus, %4 without a sign; %5 spheres without a sign</source>
        <translation>मिला: दशमलव %1; सिलिंडर: %2 माइनस, %3 प्लस, %4 बिना चिह्न; %5 स्फ़ियर बिना चिह्न</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>अल्पविराम</translation>
    </message>
    <message>
        <source>point</source>
        <translation>बिंदु</translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation>स्तंभों के बीच</translation>
    </message>
    <message>
        <source>What stands between two cells</source>
        <translation>दो खानों के बीच क्या है</translation>
    </message>
    <message>
        <source>comma ,</source>
        <translation>अल्पविराम ,</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <translation>अर्धविराम ;</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>टैब</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>खड़ी रेखा |</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>दशमलव चिह्न</translation>
    </message>
    <message>
        <source>When one is chosen, a number with the other one is refused</source>
        <translation>एक चुनने पर दूसरे वाली संख्या अस्वीकार होती है</translation>
    </message>
    <message>
        <source>point or comma</source>
        <translation>बिंदु या अल्पविराम</translation>
    </message>
    <message>
        <source>refuse the row</source>
        <translation>कतार अस्वीकार करें</translation>
    </message>
    <message>
        <source>are plus</source>
        <translation>प्लस हैं</translation>
    </message>
    <message>
        <source>are minus</source>
        <translation>माइनस हैं</translation>
    </message>
    <message>
        <source>Spheres without a sign</source>
        <translation>बिना चिह्न के स्फ़ियर</translation>
    </message>
    <message>
        <source>Ask whoever made the table before you choose</source>
        <translation>चुनने से पहले तालिका बनाने वाले से पूछें</translation>
    </message>
    <message>
        <source>Cylinders without a sign</source>
        <translation>बिना चिह्न के सिलिंडर</translation>
    </message>
    <message>
        <source>Columns of the table</source>
        <translation>तालिका के स्तंभ</translation>
    </message>
    <message>
        <source>What each column is taken for; Enter, F2 or a click changes it</source>
        <translation>हर स्तंभ को क्या माना; Enter, F2 या क्लिक से बदलता है</translation>
    </message>
</context>
<context>
    <name>quarterstep::TransferPanel</name>
    <message>
        <source>In the air</source>
        <translation>रास्ते में</translation>
    </message>
    <message>
        <source>Transfers in the air</source>
        <translation>रास्ते में स्थानांतरण</translation>
    </message>
    <message>
        <source>What was sent and not yet taken in; Enter takes the chosen one in</source>
        <translation>जो भेजा गया और अभी लिया नहीं गया; Enter चुने हुए को लेता है</translation>
    </message>
    <message>
        <source>Take in as sent</source>
        <translation>जैसा भेजा वैसा लें</translation>
    </message>
    <message>
        <source>Fills the list beside with what was sent, to be counted and entered</source>
        <translation>साथ की सूची में वही भरता है जो भेजा गया, ताकि गिनकर लिखा जाए</translation>
    </message>
    <message>
        <source>Send or take in</source>
        <translation>भेजें या लें</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>क्या हो रहा है</translation>
    </message>
    <message>
        <source>Whether pieces leave this site or come to it</source>
        <translation>नग इस जगह से जा रहे हैं या यहाँ आ रहे हैं</translation>
    </message>
    <message>
        <source>Send to another site</source>
        <translation>दूसरी जगह भेजें</translation>
    </message>
    <message>
        <source>Take in from another site</source>
        <translation>दूसरी जगह से लें</translation>
    </message>
    <message>
        <source>To</source>
        <translation>किसे</translation>
    </message>
    <message>
        <source>The other site, as it is called in its stock.yaml</source>
        <translation>दूसरी जगह, जैसा नाम उसकी stock.yaml में है</translation>
    </message>
    <message>
        <source>Lines of this transfer</source>
        <translation>इस स्थानांतरण की पंक्तियाँ</translation>
    </message>
    <message>
        <source>What goes or comes; choose a row to change its number</source>
        <translation>क्या जाता या आता है; संख्या बदलने के लिए कतार चुनें</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>टिप्पणी</translation>
    </message>
    <message>
        <source>Kept with the entry</source>
        <translation>प्रविष्टि के साथ रहती है</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके आद्याक्षर</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>कौन लिख रहा है; अगली प्रविष्टि के लिए बना रहता है</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>पंक्ति</translation>
    </message>
    <message>
        <source>Line, typed or scanned</source>
        <translation>पंक्ति, लिखी या स्कैन की हुई</translation>
    </message>
    <message>
        <source>Name of a line, or the digits of its label; Enter goes on to the pieces</source>
        <translation>पंक्ति का नाम, या उसके लेबल के अंक; Enter नगों पर ले जाता है</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>How many pieces; 0 takes the line out of the list</source>
        <translation>कितने नग; 0 से पंक्ति सूची से हट जाती है</translation>
    </message>
    <message>
        <source>Into the list</source>
        <translation>सूची में डालें</translation>
    </message>
    <message>
        <source>Puts line and pieces into the list (Enter in the pieces)</source>
        <translation>पंक्ति और नग सूची में डालता है (नगों में Enter)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>वापस लें</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>इस जगह की आख़िरी प्रविष्टि वापस लेता है (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation>सूची खाली करें</translation>
    </message>
    <message>
        <source>Begins anew; nothing is entered (Ctrl+E)</source>
        <translation>नए सिरे से शुरू करता है; कुछ लिखा नहीं जाता (Ctrl+E)</translation>
    </message>
    <message>
        <source>Enter in the ledger</source>
        <translation>बही में लिखें</translation>
    </message>
    <message>
        <source>Writes the list into the ledger (Ctrl+Enter)</source>
        <translation>सूची को बही में लिखता है (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>भेजा</translation>
    </message>
    <message>
        <source>From</source>
        <translation>किससे</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>पंक्तियाँ</translation>
    </message>
    <message>
        <source>Nothing was sent that is not yet taken in, as far as this ledger knows.</source>
        <translation>जहाँ तक इस बही को पता है, भेजा गया सब लिया जा चुका है।</translation>
    </message>
    <message numerus="yes">
        <source>%n sent and not taken in</source>
        <translation>
            <numerusform>%n भेजा, लिया नहीं गया</numerusform>
            <numerusform>%n भेजे, लिए नहीं गए</numerusform>
        </translation>
    </message>
    <message>
        <source>to this site %1</source>
        <translation>इस जगह को %1</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>खाना</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>उपलब्ध</translation>
    </message>
    <message>
        <source>%1: bin %2, available %3</source>
        <translation>%1: खाना %2, उपलब्ध %3</translation>
    </message>
    <message>
        <source>Put lines and pieces into the list first.</source>
        <translation>पहले पंक्तियाँ और नग सूची में डालें।</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>0 नग से कुछ नहीं होता।</translation>
    </message>
    <message>
        <source>Name the other site.</source>
        <translation>दूसरी जगह का नाम दें।</translation>
    </message>
    <message numerus="yes">
        <source>Sent to %1: %n piece(s)</source>
        <translation>
            <numerusform>%1 को भेजा: %n नग</numerusform>
            <numerusform>%1 को भेजे: %n नग</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken in from %1: %n piece(s)</source>
        <translation>
            <numerusform>%1 से लिया: %n नग</numerusform>
            <numerusform>%1 से लिए: %n नग</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on hand %2, was %3</source>
        <translation>%1 मौजूद %2, पहले %3</translation>
    </message>
</context>
<context>
    <name>quarterstep::TrayPage</name>
    <message>
        <source>Start my own camp</source>
        <translation>अपना शिविर शुरू करें</translation>
    </message>
    <message>
        <source>Name of the camp or box</source>
        <translation>शिविर या बक्से का नाम</translation>
    </message>
    <message>
        <source>Stands on every paper and at the top of the window</source>
        <translation>हर काग़ज़ पर और खिड़की के ऊपर रहता है</translation>
    </message>
    <message>
        <source>The trays, one a line: powers, a colon, how many in each bin</source>
        <translation>ट्रे, हर पंक्ति में एक: पावर, कोलन, हर खाने में कितने</translation>
    </message>
    <message>
        <source>The trays</source>
        <translation>ट्रे</translation>
    </message>
    <message>
        <source>Powers in dioptres with their sign, from … to … by a step; then a colon and the count. After the count: centres in mm, bin, round lens size in mm</source>
        <translation>पावर डायोप्टर में चिह्न के साथ, … to … by कदम; फिर कोलन और गिनती। गिनती के बाद: centres मिमी में, bin, round लेंस का आकार मिमी में</translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>किस फ़ोल्डर में</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation>न हो तो बनाया जाता है; मौजूद stock.yaml पर कभी नहीं लिखा जाता</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>फ़ोल्डर चुनें…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation>इस लैपटॉप पर फ़ोल्डर खोजता है</translation>
    </message>
    <message>
        <source>Add readers</source>
        <translation>पढ़ने के चश्मे जोड़ें</translation>
    </message>
    <message>
        <source>Add distance pairs</source>
        <translation>दूर के चश्मे जोड़ें</translation>
    </message>
    <message>
        <source>Add lenses and frames</source>
        <translation>लेंस और फ़्रेम जोड़ें</translation>
    </message>
    <message>
        <source>Writes an example below the trays, to be changed</source>
        <translation>ट्रे के नीचे एक उदाहरण लिखता है, बदलने के लिए</translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>इससे बना स्टॉक</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation>हर पंक्ति का खाना, नाम, पावर डायोप्टर में और गिनती</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>वापस</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation>यह पन्ना छोड़ता है; लिखा हुआ खिड़की खुली रहने तक रहता है</translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>यह शिविर बनाएँ</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation>stock.yaml फ़ोल्डर में लिखता है और उसे खोलता है</translation>
    </message>
    <message>
        <source>my camp</source>
        <translation>मेरा शिविर</translation>
    </message>
    <message>
        <source>Folder for the new camp</source>
        <translation>नए शिविर का फ़ोल्डर</translation>
    </message>
    <message>
        <source>Line %1, character %2: %3</source>
        <translation>पंक्ति %1, अक्षर %2: %3</translation>
    </message>
    <message>
        <source>The camp has no name yet.</source>
        <translation>शिविर का नाम अभी नहीं है।</translation>
    </message>
    <message>
        <source>%1 lines, %2 pieces</source>
        <translation>%1 पंक्तियाँ, %2 नग</translation>
    </message>
    <message>
        <source>Nothing is typed yet. The buttons under the trays write examples to change.</source>
        <translation>अभी कुछ नहीं लिखा। ट्रे के नीचे के बटन बदलने योग्य उदाहरण लिखते हैं।</translation>
    </message>
</context>
<context>
    <name>quarterstep::WaitingModel</name>
    <message>
        <source>row %1</source>
        <translation>पंक्ति %1</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>पढ़ा नहीं जाता</translation>
    </message>
    <message>
        <source>given %1</source>
        <translation>दिया %1</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>प्रतीक्षा में</translation>
    </message>
    <message>
        <source>Right %1</source>
        <translation>दायाँ %1</translation>
    </message>
    <message>
        <source>Left %1</source>
        <translation>बायाँ %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>व्यक्ति</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>उम्र</translation>
    </message>
    <message>
        <source>State</source>
        <translation>स्थिति</translation>
    </message>
</context>
<context>
    <name>quarterstep::WhyPanel</name>
    <message>
        <source>Clear from %1 cm on.</source>
        <translation>%1 सेमी से आगे साफ़।</translation>
    </message>
    <message>
        <source>Clear from %1 to %2 cm.</source>
        <translation>%1 से %2 सेमी तक साफ़।</translation>
    </message>
    <message>
        <source>Why this pair</source>
        <translation>यह चश्मा क्यों</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>क्रॉस</translation>
    </message>
    <message>
        <source>Above another</source>
        <translation>दूसरे से ऊपर</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>तालिका</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation>वही मान तालिका में दिखाता है</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>चित्र</translation>
    </message>
    <message>
        <source>Why: criteria of the chosen pair</source>
        <translation>क्यों: चुने चश्मे की कसौटियाँ</translation>
    </message>
    <message>
        <source>Measured values and limits, each with its unit and source</source>
        <translation>नापे गए मान और सीमाएँ, हर एक अपनी इकाई और स्रोत के साथ</translation>
    </message>
    <message>
        <source>Optical crosses as a table</source>
        <translation>ऑप्टिकल क्रॉस तालिका में</translation>
    </message>
    <message>
        <source>Powers in dioptres along their meridians, degrees</source>
        <translation>मेरिडियन पर पावर डायोप्टर में, अंश</translation>
    </message>
    <message>
        <source>The chosen pair and</source>
        <translation>चुना चश्मा और</translation>
    </message>
    <message>
        <source>Pair to compare with</source>
        <translation>तुलना का चश्मा</translation>
    </message>
    <message>
        <source>The other pair of the list that the chosen one is compared with</source>
        <translation>सूची का दूसरा चश्मा जिससे चुने की तुलना होती है</translation>
    </message>
    <message>
        <source>Choose a pair: why it stands above or below another is said here.</source>
        <translation>चश्मा चुनें: वह दूसरे से ऊपर या नीचे क्यों है, यहाँ बताया जाता है।</translation>
    </message>
    <message>
        <source>There is no other pair to compare with.</source>
        <translation>तुलना के लिए दूसरा चश्मा नहीं है।</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>क्यों</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>ऊपर</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>distance</source>
        <translation>दूर</translation>
    </message>
    <message>
        <source>near</source>
        <translation>पास</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>हाथ की दूरी</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>बाइफ़ोकल</translation>
    </message>
    <message>
        <source>note</source>
        <translation>टिप्पणी</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>सावधानी</translation>
    </message>
    <message>
        <source>error</source>
        <translation>त्रुटि</translation>
    </message>
    <message>
        <source>from stock</source>
        <translation>स्टॉक से</translation>
    </message>
    <message>
        <source>custom order</source>
        <translation>बनवाने का ऑर्डर</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>ज़रूरत नहीं</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>अधूरा</translation>
    </message>
    <message>
        <source>refer</source>
        <translation>रेफ़र करें</translation>
    </message>
    <message>
        <source>no referral</source>
        <translation>रेफ़रल नहीं</translation>
    </message>
    <message>
        <source>with a referral letter</source>
        <translation>रेफ़रल पत्र के साथ</translation>
    </message>
    <message>
        <source>refer before any glasses</source>
        <translation>कोई भी चश्मा देने से पहले रेफ़र करें</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>सामान्य</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>जल्दी</translation>
    </message>
    <message>
        <source>same day</source>
        <translation>उसी दिन</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>नहीं बताया</translation>
    </message>
    <message>
        <source>distance and near</source>
        <translation>दूर और पास</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>ठीक</translation>
    </message>
    <message>
        <source>fits with caution</source>
        <translation>सावधानी के साथ ठीक</translation>
    </message>
    <message>
        <source>on trial</source>
        <translation>परीक्षण पर</translation>
    </message>
    <message>
        <source>outside limit</source>
        <translation>सीमा से बाहर</translation>
    </message>
    <message>
        <source>shown only</source>
        <translation>केवल दिखाया</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>नापा नहीं</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>तैयार</translation>
    </message>
    <message>
        <source>lens</source>
        <translation>लेंस</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>फ़्रेम</translation>
    </message>
    <message>
        <source>other</source>
        <translation>दूसरा</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 इन</translation>
    </message>
    <message>
        <source>%1 out</source>
        <translation>%1 आउट</translation>
    </message>
    <message>
        <source>no bin</source>
        <translation>कोई खाना नहीं</translation>
    </message>
    <message>
        <source>%1 bin %2</source>
        <translation>%1 खाना %2</translation>
    </message>
    <message>
        <source>RIGHT %1 bin %2</source>
        <translation>दायाँ %1 खाना %2</translation>
    </message>
    <message>
        <source>LEFT %1 bin %2</source>
        <translation>बायाँ %1 खाना %2</translation>
    </message>
    <message>
        <source>frame %1 bin %2</source>
        <translation>फ़्रेम %1 खाना %2</translation>
    </message>
    <message>
        <source>right eye</source>
        <translation>दाईं आँख</translation>
    </message>
    <message>
        <source>left eye</source>
        <translation>बाईं आँख</translation>
    </message>
</context>
</TS>
