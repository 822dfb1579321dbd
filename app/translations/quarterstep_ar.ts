<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar" sourcelanguage="en">
    <context>
        <name>Commands</name>
        <message numerus="yes">
            <source>and %n more</source>
            <translation>
                <numerusform>والمزيد: %n</numerusform>
                <numerusform>والمزيد: %n</numerusform>
                <numerusform>والمزيد: %n</numerusform>
                <numerusform>والمزيد: %n</numerusform>
                <numerusform>والمزيد: %n</numerusform>
                <numerusform>والمزيد: %n</numerusform>
            </translation>
        </message>
        <message>
            <source>The program met something it does not know: %1. Nothing was written; close the program and open the folder again.</source>
            <translation>واجه البرنامج أمرًا لا يعرفه: %1. لم يُكتب شيء؛ أغلق البرنامج وافتح المجلد من جديد.</translation>
        </message>
    </context>
    <context>
        <name>DeskOptions</name>
        <message>
            <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>light, dark or sun (black on white, large)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>mirrors the window; prescriptions stay left-to-right</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>language of the window, for example ar</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>paints the window into a PNG file and leaves</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>size of the window in pixels, for example 1366x768</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>loads this person of people.csv at the start</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>--size %1 is not a size; write for example 1366x768</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>--theme %1 is not known; write light, dark or sun</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>one camp folder at a time, not %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no readable person %1 in people.csv</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cannot write %1</source>
            <translation type="unfinished" />
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
            <translation>%1 إضافة %2</translation>
        </message>
        <message>
            <source>not judged</source>
            <translation>لم يُقيَّم</translation>
        </message>
        <message>
            <source>%1 too strong</source>
            <translation>أقوى من اللازم بمقدار %1</translation>
        </message>
        <message>
            <source>%1 too plus</source>
            <translation>زائد الموجب بمقدار %1</translation>
        </message>
        <message>
            <source>%1 too weak</source>
            <translation>أضعف من اللازم بمقدار %1</translation>
        </message>
        <message>
            <source>%1 too minus</source>
            <translation>زائد السالب بمقدار %1</translation>
        </message>
        <message>
            <source>cylinder %1 left</source>
            <translation>يبقى من الأسطوانة %1</translation>
        </message>
        <message>
            <source>nothing left</source>
            <translation>لا يبقى شيء</translation>
        </message>
        <message>
            <source>, </source>
            <translation>، </translation>
        </message>
        <message>
            <source>Suggested</source>
            <translation>مقترح</translation>
        </message>
        <message>
            <source>Fits with caution</source>
            <translation>مناسب مع تحفظ</translation>
        </message>
        <message>
            <source>On trial: type the acuity</source>
            <translation>قيد التجربة: اكتب حدة الإبصار</translation>
        </message>
        <message>
            <source>Outside limit</source>
            <translation>خارج الحد</translation>
        </message>
        <message>
            <source>right eye: %1</source>
            <translation>العين اليمنى: %1</translation>
        </message>
        <message>
            <source>left eye: %1</source>
            <translation>العين اليسرى: %1</translation>
        </message>
    </context>
    <context>
        <name>PrescriptionCard</name>
        <message>
            <source>Person</source>
            <translation>الشخص</translation>
        </message>
        <message>
            <source>Camp code of the person, as on the paper card</source>
            <translation>رمز الشخص في المخيم كما في البطاقة الورقية</translation>
        </message>
        <message>
            <source>Age</source>
            <translation>العمر</translation>
        </message>
        <message>
            <source>Age in years; unknown age is judged by the strictest rules</source>
            <translation>العمر بالسنوات؛ العمر المجهول يُقيَّم بأشد القواعد</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>اليمنى</translation>
        </message>
        <message>
            <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
            <translation>العين اليمنى: الكرة والأسطوانة (ديوبتر) والمحور (درجات). السهمان يغيّران الكرة بمقدار 0.25، ومفتاحا الصفحة بمقدار 1.00</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>اليسرى</translation>
        </message>
        <message>
            <source>Left eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
            <translation>العين اليسرى: الكرة والأسطوانة (ديوبتر) والمحور (درجات). السهمان يغيّران الكرة بمقدار 0.25، ومفتاحا الصفحة بمقدار 1.00</translation>
        </message>
        <message>
            <source>Addition</source>
            <translation>الإضافة</translation>
        </message>
        <message>
            <source>Near addition of both eyes, dioptres</source>
            <translation>إضافة القرب للعينين، ديوبتر</translation>
        </message>
        <message>
            <source>PD far</source>
            <translation>PD للبعد</translation>
        </message>
        <message>
            <source>Distance between the pupils looking far, millimetres</source>
            <translation>المسافة بين الحدقتين عند النظر بعيدًا، مليمتر</translation>
        </message>
        <message>
            <source>PD near</source>
            <translation>PD للقرب</translation>
        </message>
        <message>
            <source>Distance between the pupils looking near, millimetres; worked out from the far one when empty</source>
            <translation>المسافة بين الحدقتين عند النظر قريبًا، مليمتر؛ تُحسب من البعيدة إذا تُركت فارغة</translation>
        </message>
        <message>
            <source>Near, R</source>
            <translation>القرب، اليمنى</translation>
        </message>
        <message>
            <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
            <translation>العين اليمنى: قوة القرب الكاملة بالتجربة، ديوبتر، بدل الإضافة</translation>
        </message>
        <message>
            <source>Near, L</source>
            <translation>القرب، اليسرى</translation>
        </message>
        <message>
            <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
            <translation>العين اليسرى: قوة القرب الكاملة بالتجربة، ديوبتر، بدل الإضافة</translation>
        </message>
        <message>
            <source>Unaided, R</source>
            <translation>دون نظارة، R</translation>
        </message>
        <message>
            <source>Right eye: acuity without spectacles, for example 6/18</source>
            <translation>العين اليمنى: حدة الإبصار دون نظارة، مثل 6/18</translation>
        </message>
        <message>
            <source>Unaided, L</source>
            <translation>دون نظارة، L</translation>
        </message>
        <message>
            <source>Left eye: acuity without spectacles, for example 6/18</source>
            <translation>العين اليسرى: حدة الإبصار دون نظارة، مثل 6/18</translation>
        </message>
        <message>
            <source>Best, R</source>
            <translation>الأفضل، R</translation>
        </message>
        <message>
            <source>Right eye: acuity with this prescription, for example 6/6</source>
            <translation>العين اليمنى: حدة الإبصار بهذه الوصفة، مثل 6/6</translation>
        </message>
        <message>
            <source>Best, L</source>
            <translation>الأفضل، L</translation>
        </message>
        <message>
            <source>Left eye: acuity with this prescription, for example 6/6</source>
            <translation>العين اليسرى: حدة الإبصار بهذه الوصفة، مثل 6/6</translation>
        </message>
        <message>
            <source>Prescriber</source>
            <translation>كاتب الوصفة</translation>
        </message>
        <message>
            <source>Who signed the prescription; needed under 16 years</source>
            <translation>من وقّع الوصفة؛ مطلوب دون 16 سنة</translation>
        </message>
    </context>
    <context>
        <name>command</name>
        <message>
            <source>R</source>
            <translation>R</translation>
        </message>
        <message>
            <source>L</source>
            <translation>L</translation>
        </message>
        <message>
            <source>prism %1</source>
            <translation>المنشور %1</translation>
        </message>
        <message>
            <source>measure again</source>
            <translation>أعد القياس</translation>
        </message>
        <message>
            <source>temporary pair: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: not refracted, not judged</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no power does the same at %1 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>at %1 mm: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: not read: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1: no number</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>needs judged     %1</source>
            <translation>حاجات قُيّمت       %1</translation>
        </message>
        <message>
            <source>served           %1</source>
            <translation>خُدموا           %1</translation>
        </message>
        <message>
            <source>  with caution   %1</source>
            <translation>  مع تحفظ        %1</translation>
        </message>
        <message>
            <source>on trial         %1</source>
            <translation>قيد التجربة      %1</translation>
        </message>
        <message>
            <source>none needed      %1</source>
            <translation>لا حاجة          %1</translation>
        </message>
        <message>
            <source>incomplete       %1</source>
            <translation>ناقص             %1</translation>
        </message>
        <message>
            <source>rows not read    %1</source>
            <translation>صفوف لم تُقرأ      %1</translation>
        </message>
        <message>
            <source>share served     %1 %</source>
            <translation>نسبة من خُدموا     %1 %</translation>
        </message>
        <message>
            <source>second pair held back: somebody waits without any</source>
            <translation>أُجّلت النظارة الثانية: هناك من ينتظر دون أي نظارة</translation>
        </message>
        <message>
            <source>ran out today</source>
            <translation>نفد اليوم</translation>
        </message>
        <message>
            <source>from stock %1</source>
            <translation>من المخزون %1</translation>
        </message>
        <message>
            <source>on trial %1</source>
            <translation>قيد التجربة %1</translation>
        </message>
        <message>
            <source>custom %1</source>
            <translation>طلب خاص %1</translation>
        </message>
        <message>
            <source>none needed %1</source>
            <translation>لا حاجة %1</translation>
        </message>
        <message>
            <source>incomplete %1</source>
            <translation>ناقص %1</translation>
        </message>
        <message>
            <source>refer %1</source>
            <translation>إحالة %1</translation>
        </message>
        <message>
            <source>held back %1</source>
            <translation>أُجّل %1</translation>
        </message>
        <message>
            <source>ran out: %1</source>
            <translation>نفد: %1</translation>
        </message>
        <message>
            <source>on hand %1 before, %2 after</source>
            <translation>الموجود %1 قبل، %2 بعد</translation>
        </message>
        <message>
            <source>dry run: nothing was written</source>
            <translation>تجربة فقط: لم يُكتب شيء</translation>
        </message>
        <message>
            <source>prescription table (CSV); - reads standard input</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>one eye each, as written; - reads lines of standard input</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Quarterstep finds which stocked spectacles serve a finished prescription, and how well.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Examples:</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Verbs:</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>Ends with 0 when done, 1 when somebody is left without acceptable stock or incomplete, 2 for a slip in the command, 3 for bad data, 4 when something is locked or cannot be reached.</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1; row not read: %2</source>
            <translation>%1؛ لم يُقرأ الصف: %2</translation>
        </message>
        <message>
            <source>rows not read %1</source>
            <translation>صفوف لم تُقرأ %1</translation>
        </message>
        <message>
            <source>on hand %1  available %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>bin %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no ledger yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>ledger: %1 entries, all in order</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>ledger: %1 entries, not in order</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the camp folder: stock.yaml, rules.yaml and the ledger</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a stock file alone, without a ledger</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>rules of fit to go with --stock; the usual ones when left out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>rules to judge by: school, adult-distance, adult-near, strict or the camp's own</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>answer in JSON</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>every line, not only the six best groups</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>say what would be done and write nothing</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>leave rows with errors out and name them</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>hand over to this person of the table only</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>distance, near, intermediate or bifocal, with --person or --explain</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what was picked: a ready-made pair, or frame, right lens and left lens</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>why this pair, when it is outside a limit</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>distance acuity of the right eye with this pair</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>distance acuity of the left eye with this pair</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>near acuity with this pair, as N6</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what was checked with this pair: power,fit,instructions</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>who hands over, for the ledger</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>check every entry of the ledger and end with 3 if one is bad</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>also at another vertex distance, in mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the texts are acuities, not powers</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>which stocked pair serves each person, and how well</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>hand over: the best acceptable pair to each person in order, or one picked pair</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>what is in the box and what the ledger says</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>how many of a table the stock serves, and why not the others</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>written powers in both cylinder forms and as power vectors</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this help, or that of one verb</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>handed over as picked: %1</source>
            <translation>سُلّم كما اختير: %1</translation>
        </message>
        <message>
            <source>  M %1, J0 %2, J45 %3, blur strength %4 D; expected loss %5 logMAR (Blendowske, Optom Vis Sci 2015)</source>
            <translation>  ‏M %1، J0 %2، J45 %3، شدة التشوش %4 D؛ الفقد المتوقع %5 logMAR ‏(Blendowske, Optom Vis Sci 2015)</translation>
        </message>
        <message>
            <source>  addition: %1 of the pair, %2 needed (shown, not judged)</source>
            <translation>  الإضافة: في النظارة %1، المطلوبة %2 (للعرض لا للتقييم)</translation>
        </message>
        <message>
            <source>  chance that the true blur lies within its limit: %1</source>
            <translation>  احتمال وقوع التشوش الحقيقي داخل حده: %1</translation>
        </message>
        <message>
            <source>  near portion: M %1, blur strength %2 D</source>
            <translation>  جزء القرب: M %1، شدة التشوش %2 D</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 along %2, %3 along %4</source>
            <translation>%1 على %2، %3 على %4</translation>
        </message>
        <message>
            <source>%1 eye</source>
            <translation>العين %1</translation>
        </message>
        <message>
            <source>%1 eye: not judged</source>
            <translation>العين %1: لم تُقيَّم</translation>
        </message>
        <message>
            <source>%1, %2, by the rules %3 (version %4): %5</source>
            <translation>%1، %2، حسب القواعد %3 (الإصدار %4): %5</translation>
        </message>
        <message>
            <source>Temporary pair. Not for driving.</source>
            <translation>نظارة مؤقتة. ليست للقيادة.</translation>
        </message>
        <message>
            <source>answer for this person: %1; %2</source>
            <translation>الجواب لهذا الشخص: %1؛ %2</translation>
        </message>
        <message>
            <source>assumed: an unrecorded vertex distance is that of the stock</source>
            <translation>مفترض: المسافة غير المسجلة بين العين والعدسة هي مسافة المخزون</translation>
        </message>
        <message>
            <source>assumed: objective readings are final, and a prescriber is named</source>
            <translation>مفترض: القراءات الموضوعية نهائية، واسم كاتب الوصفة مذكور</translation>
        </message>
        <message>
            <source>assumed: where no PD was taken, it equals the centres of each pair</source>
            <translation>مفترض: حيث لم تُقس PD فهي تساوي مراكز كل نظارة</translation>
        </message>
        <message>
            <source>chance %1</source>
            <translation>الاحتمال %1</translation>
        </message>
        <message>
            <source>chance %1: repeat the readings</source>
            <translation>الاحتمال %1: أعد القراءات</translation>
        </message>
        <message>
            <source>clear from %1 cm on</source>
            <translation>واضح من %1 cm فأبعد</translation>
        </message>
        <message>
            <source>clear from %1 to %2 cm</source>
            <translation>واضح من %1 إلى %2 cm</translation>
        </message>
        <message>
            <source>criteria:</source>
            <translation>المعايير:</translation>
        </message>
        <message>
            <source>error</source>
            <translation>الخطأ</translation>
        </message>
        <message>
            <source>horizontal prism %1, vertical prism %2</source>
            <translation>المنشور الأفقي %1، المنشور العمودي %2</translation>
        </message>
        <message>
            <source>judged by the rules: %1</source>
            <translation>قُيّم حسب القواعد: %1</translation>
        </message>
        <message>
            <source>left</source>
            <translation>اليسرى</translation>
        </message>
        <message>
            <source>limit %1</source>
            <translation>الحد %1</translation>
        </message>
        <message>
            <source>need</source>
            <translation>الحاجة</translation>
        </message>
        <message>
            <source>no single change would bring it within the limits</source>
            <translation>لا تغيير واحد يجعله داخل الحدود</translation>
        </message>
        <message>
            <source>note: %1; source: %2</source>
            <translation>ملاحظة: %1؛ المصدر: %2</translation>
        </message>
        <message>
            <source>pair</source>
            <translation>النظارة</translation>
        </message>
        <message>
            <source>prism up to %1</source>
            <translation>المنشور حتى %1</translation>
        </message>
        <message>
            <source>right</source>
            <translation>اليمنى</translation>
        </message>
        <message>
            <source>scatter of the refraction from: %1</source>
            <translation>تشتت فحص الانكسار من: %1</translation>
        </message>
        <message>
            <source>single change: %1</source>
            <translation>تغيير واحد: %1</translation>
        </message>
        <message>
            <source>source: %1</source>
            <translation>المصدر: %1</translation>
        </message>
        <message>
            <source>vertical imbalance 10 mm below the centres: %1, of the full correction %2, excess %3</source>
            <translation>اختلال عمودي 10 mm تحت المراكز: %1، للتصحيح الكامل %2، الزيادة %3</translation>
        </message>
    </context>
    <context>
        <name>core</name>
        <message>
            <source>“%1” is not a vertex distance; write 0 to 50 mm, as --vertex 12 0</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>row of %1 left out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nothing was handed over; mend the rows above or leave them out with --skip-bad-rows</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>“%1” is not a check; write power, fit or instructions</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nobody in %1 has the code %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is not a purpose of this person</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this person needs more than one pair; say which with --purpose %1 or --purpose %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no line %1 in this camp</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is for one person; add --person CODE</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>“%1” is not a purpose; write distance, near, intermediate or bifocal</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>`%1` needs either --camp FOLDER or --stock FILE</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>--rules goes with --stock; a camp folder has its own rules</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no profile “%1”; there are %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no option “%1” here; `quarterstep help` lists them</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no option “%1” here; did you mean “%2”?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>`%1` needs %2; see `quarterstep help %1`</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>“%1” is one too many; put a text with blanks into quotes</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the options are not understood: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no verb “%1”; `quarterstep help` lists them</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no verb “%1”; did you mean “%2”?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>it cannot go on: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the answer could not be written to the end</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this version opens SQLite ledgers only; name a file beside stock.yaml in the key ledger, for example ledger.sqlite</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no rules.yaml; the rules built in apply</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no ledger here yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>to be referred before any glasses are given</source>
            <translation>يُحال قبل تسليم أي نظارة</translation>
        </message>
        <message>
            <source>nothing is needed for this purpose</source>
            <translation>لا حاجة إلى شيء لهذا الغرض</translation>
        </message>
        <message>
            <source>these lines do not make a pair</source>
            <translation>هذه الأصناف لا تكوّن نظارة</translation>
        </message>
        <message>
            <source>on trial: type the acuity with this pair first</source>
            <translation>قيد التجربة: اكتب أولًا حدة الإبصار بهذه النظارة</translation>
        </message>
        <message>
            <source>an unequal pair: read each eye with the focimeter first</source>
            <translation>نظارة غير متساوية: اقرأ كل عين بمقياس العدسات أولًا</translation>
        </message>
        <message>
            <source>none left of %1</source>
            <translation>لم يبق شيء من %1</translation>
        </message>
        <message>
            <source>no pair chosen</source>
            <translation>لم تُختر نظارة</translation>
        </message>
        <message>
            <source>no hand-over with the id %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>above %1 D the vertex distance must be recorded</source>
            <translation>فوق %1 D يجب تسجيل المسافة بين العين والعدسة</translation>
        </message>
        <message>
            <source>a sphere would leave less cylinder than this lens does</source>
            <translation>عدسة كروية تُبقي أسطوانة أقل مما تُبقيه هذه العدسة</translation>
        </message>
        <message>
            <source>prism by decentration is the prescriber's decision</source>
            <translation>المنشور بإزاحة المركز قرار كاتب الوصفة</translation>
        </message>
        <message>
            <source>PD not taken: judged at the worst end of what is plausible</source>
            <translation>لم تُقس PD: قُيّم عند أسوأ قيمة معقولة</translation>
        </message>
        <message>
            <source>the centres of this pair are assumed, not measured</source>
            <translation>مراكز هذه النظارة مفترضة لا مقاسة</translation>
        </message>
        <message>
            <source>heights of the centres not measured</source>
            <translation>ارتفاعات المراكز لم تُقس</translation>
        </message>
        <message>
            <source>cylinder left over</source>
            <translation>الأسطوانة الباقية</translation>
        </message>
        <message>
            <source>cylinder left over %1 D, limit %2 D</source>
            <translation>الأسطوانة الباقية %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>%1 D of cylinder left over</source>
            <translation>تبقى أسطوانة %1 D</translation>
        </message>
        <message>
            <source>difference between the eyes' needs</source>
            <translation>الفرق بين حاجتي العينين</translation>
        </message>
        <message>
            <source>the eyes differ by %1 D, limit %2 D for one power in both lenses</source>
            <translation>تختلف العينان بمقدار %1 D، الحد %2 D لقوة واحدة في العدستين</translation>
        </message>
        <message>
            <source>the eyes differ by %1 D</source>
            <translation>تختلف العينان بمقدار %1 D</translation>
        </message>
        <message>
            <source>size of the power</source>
            <translation>مقدار القوة</translation>
        </message>
        <message>
            <source>power %1 D, limit %2 D</source>
            <translation>القوة %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>high power: %1 D</source>
            <translation>قوة عالية: %1 D</translation>
        </message>
        <message>
            <source>blur strength</source>
            <translation>شدة التشوش</translation>
        </message>
        <message>
            <source>blur strength %1 D, limit %2 D</source>
            <translation>شدة التشوش %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>blur strength %1 D</source>
            <translation>شدة التشوش %1 D</translation>
        </message>
        <message>
            <source>too much plus</source>
            <translation>موجب زائد</translation>
        </message>
        <message>
            <source>%1 D too much plus, limit %2 D</source>
            <translation>موجب زائد %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>%1 D too much plus</source>
            <translation>موجب زائد %1 D</translation>
        </message>
        <message>
            <source>too much minus or too little plus</source>
            <translation>سالب زائد أو موجب ناقص</translation>
        </message>
        <message>
            <source>%1 D too much minus or too little plus, limit %2 D</source>
            <translation>سالب زائد أو موجب ناقص %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>%1 D too much minus or too little plus</source>
            <translation>سالب زائد أو موجب ناقص %1 D</translation>
        </message>
        <message>
            <source>difference between the two lenses</source>
            <translation>الفرق بين العدستين</translation>
        </message>
        <message>
            <source>the two lenses differ by %1 D, limit %2 D</source>
            <translation>تختلف العدستان بمقدار %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>the two lenses differ by %1 D</source>
            <translation>تختلف العدستان بمقدار %1 D</translation>
        </message>
        <message>
            <source>balance between the eyes</source>
            <translation>التوازن بين العينين</translation>
        </message>
        <message>
            <source>one eye %1 D off against the other, limit %2 D</source>
            <translation>تنحرف عين عن الأخرى بمقدار %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>one eye %1 D off against the other</source>
            <translation>تنحرف عين عن الأخرى بمقدار %1 D</translation>
        </message>
        <message>
            <source>cylinder of the lens beyond the need</source>
            <translation>أسطوانة العدسة فوق الحاجة</translation>
        </message>
        <message>
            <source>the lens has %1 D more cylinder than needed, limit %2 D</source>
            <translation>أسطوانة العدسة تزيد على الحاجة بمقدار %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>%1 D more cylinder than needed</source>
            <translation>أسطوانة زائدة %1 D</translation>
        </message>
        <message>
            <source>axis off</source>
            <translation>انحراف المحور</translation>
        </message>
        <message>
            <source>axis off by %1 degrees, limit %2</source>
            <translation>انحراف المحور %1 درجة، الحد %2</translation>
        </message>
        <message>
            <source>axis off by %1 degrees</source>
            <translation>انحراف المحور %1 درجة</translation>
        </message>
        <message>
            <source>horizontal prism</source>
            <translation>المنشور الأفقي</translation>
        </message>
        <message>
            <source>horizontal prism %1, limit %2</source>
            <translation>المنشور الأفقي %1، الحد %2</translation>
        </message>
        <message>
            <source>horizontal prism %1</source>
            <translation>المنشور الأفقي %1</translation>
        </message>
        <message>
            <source>vertical prism</source>
            <translation>المنشور العمودي</translation>
        </message>
        <message>
            <source>vertical prism %1, limit %2</source>
            <translation>المنشور العمودي %1، الحد %2</translation>
        </message>
        <message>
            <source>vertical prism %1</source>
            <translation>المنشور العمودي %1</translation>
        </message>
        <message>
            <source>centres against PD</source>
            <translation>المراكز مقابل PD</translation>
        </message>
        <message>
            <source>centres %1 mm off the PD, limit %2 mm</source>
            <translation>تبتعد المراكز عن PD بمقدار %1 mm، الحد %2 mm</translation>
        </message>
        <message>
            <source>centres %1 mm off the PD</source>
            <translation>تبتعد المراكز عن PD بمقدار %1 mm</translation>
        </message>
        <message>
            <source>vertical imbalance at the reading level</source>
            <translation>اختلال عمودي عند مستوى القراءة</translation>
        </message>
        <message>
            <source>vertical imbalance %1 at the reading level, limit %2</source>
            <translation>اختلال عمودي %1 عند مستوى القراءة، الحد %2</translation>
        </message>
        <message>
            <source>vertical imbalance %1 at the reading level</source>
            <translation>اختلال عمودي %1 عند مستوى القراءة</translation>
        </message>
        <message>
            <source>frame size class</source>
            <translation>فئة مقاس الإطار</translation>
        </message>
        <message>
            <source>frame size off by %1 class, limit %2</source>
            <translation>يبتعد مقاس الإطار بمقدار %1 فئة، الحد %2</translation>
        </message>
        <message>
            <source>frame size off by %1 class</source>
            <translation>يبتعد مقاس الإطار بمقدار %1 فئة</translation>
        </message>
        <message>
            <source>blur strength at near</source>
            <translation>شدة التشوش للقرب</translation>
        </message>
        <message>
            <source>blur strength at near %1 D, limit %2 D</source>
            <translation>شدة التشوش للقرب %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>blur strength at near %1 D</source>
            <translation>شدة التشوش للقرب %1 D</translation>
        </message>
        <message>
            <source>near power too strong</source>
            <translation>قوة القرب أقوى من اللازم</translation>
        </message>
        <message>
            <source>near power %1 D too strong, limit %2 D</source>
            <translation>قوة القرب أقوى من اللازم بمقدار %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>near power %1 D too strong</source>
            <translation>قوة القرب أقوى من اللازم بمقدار %1 D</translation>
        </message>
        <message>
            <source>near power too weak</source>
            <translation>قوة القرب أضعف من اللازم</translation>
        </message>
        <message>
            <source>near power %1 D too weak, limit %2 D</source>
            <translation>قوة القرب أضعف من اللازم بمقدار %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>near power %1 D too weak</source>
            <translation>قوة القرب أضعف من اللازم بمقدار %1 D</translation>
        </message>
        <message>
            <source>sphere off</source>
            <translation>انحراف الكرة</translation>
        </message>
        <message>
            <source>sphere off by %1 D, limit %2 D</source>
            <translation>انحراف الكرة %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>sphere off by %1 D</source>
            <translation>انحراف الكرة %1 D</translation>
        </message>
        <message>
            <source>cylinder off</source>
            <translation>انحراف الأسطوانة</translation>
        </message>
        <message>
            <source>cylinder off by %1 D, limit %2 D</source>
            <translation>انحراف الأسطوانة %1 D، الحد %2 D</translation>
        </message>
        <message>
            <source>cylinder off by %1 D</source>
            <translation>انحراف الأسطوانة %1 D</translation>
        </message>
        <message>
            <source>axis against the prescription</source>
            <translation>المحور مقابل الوصفة</translation>
        </message>
        <message>
            <source>axis %1 degrees off the prescription, limit %2</source>
            <translation>يبتعد المحور عن الوصفة %1 درجة، الحد %2</translation>
        </message>
        <message>
            <source>axis %1 degrees off the prescription</source>
            <translation>يبتعد المحور عن الوصفة %1 درجة</translation>
        </message>
        <message>
            <source>acuity with the mean sphere</source>
            <translation>حدة الإبصار بالكرة المتوسطة</translation>
        </message>
        <message>
            <source>acuity with the mean sphere %1 logMAR below the full correction, limit %2</source>
            <translation>حدة الإبصار بالكرة المتوسطة دون التصحيح الكامل بمقدار %1 logMAR، الحد %2</translation>
        </message>
        <message>
            <source>acuity with the mean sphere %1 logMAR lower</source>
            <translation>حدة الإبصار بالكرة المتوسطة أدنى بمقدار %1 logMAR</translation>
        </message>
        <message>
            <source>acuity with this pair</source>
            <translation>حدة الإبصار بهذه النظارة</translation>
        </message>
        <message>
            <source>acuity with this pair is %1 logMAR beyond what is asked, limit %2</source>
            <translation>حدة الإبصار بهذه النظارة دون المطلوب بمقدار %1 logMAR، الحد %2</translation>
        </message>
        <message>
            <source>tried: acuity %1 logMAR short</source>
            <translation>جُرّبت: تنقص حدة الإبصار %1 logMAR</translation>
        </message>
        <message>
            <source>sudden loss of sight: eye clinic the same day</source>
            <translation>فقد إبصار مفاجئ: عيادة العيون في اليوم نفسه</translation>
        </message>
        <message>
            <source>painful eye: eye clinic the same day</source>
            <translation>ألم في العين: عيادة العيون في اليوم نفسه</translation>
        </message>
        <message>
            <source>red eye: eye clinic the same day</source>
            <translation>احمرار العين: عيادة العيون في اليوم نفسه</translation>
        </message>
        <message>
            <source>new flashes or floaters: eye clinic the same day</source>
            <translation>ومضات أو عوائم جديدة: عيادة العيون في اليوم نفسه</translation>
        </message>
        <message>
            <source>double vision: eye clinic the same day</source>
            <translation>ازدواج الرؤية: عيادة العيون في اليوم نفسه</translation>
        </message>
        <message>
            <source>white pupil: eye clinic the same day</source>
            <translation>حدقة بيضاء: عيادة العيون في اليوم نفسه</translation>
        </message>
        <message>
            <source>a child's squint: refer before glasses are given</source>
            <translation>حَوَل عند طفل: إحالة قبل تسليم نظارة</translation>
        </message>
        <message>
            <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
            <translation>طُلب فحص الانكسار مع شلل التكيف: إحالة قبل تسليم نظارة</translation>
        </message>
        <message>
            <source>does not reach 6/9 in each eye with the final prescription</source>
            <translation>لا يبلغ 6/9 في كل عين بالوصفة النهائية</translation>
        </message>
        <message>
            <source>presents worse than 6/60 in an eye, even if glasses help</source>
            <translation>جاء بأقل من 6/60 في إحدى العينين وإن أفادت النظارة</translation>
        </message>
        <message>
            <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
            <translation>طفل لديه +3.50 D أو أكثر، أو أسطوانة 1.50 D أو أكثر</translation>
        </message>
        <message>
            <source>under 8 years and the eyes differ by 1.50 D or more</source>
            <translation>دون 8 سنوات وتختلف العينان بمقدار 1.50 D أو أكثر</translation>
        </message>
        <message>
            <source>under 8 years and the eyes differ by 1.00 D or more</source>
            <translation>دون 8 سنوات وتختلف العينان بمقدار 1.00 D أو أكثر</translation>
        </message>
        <message>
            <source>mean sphere beyond 6.00 D</source>
            <translation>الكرة المتوسطة تتجاوز 6.00 D</translation>
        </message>
        <message>
            <source>may be without its lens (aphakia): vertex distance needed</source>
            <translation>قد تكون العين بلا عدستها: يلزم قياس المسافة بين العين والعدسة</translation>
        </message>
        <message>
            <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
            <translation>أقل من 6/12 بأفضل وصفة ولا تحسّن عبر الثقب</translation>
        </message>
        <message>
            <source>worse than 6/12 with the best prescription; pinhole not taken</source>
            <translation>أقل من 6/12 بأفضل وصفة؛ لم يُجرَ فحص الثقب</translation>
        </message>
        <message>
            <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
            <translation>الإبصار عبر الثقب أفضل من الوصفة النهائية بسطرين أو أكثر: أعد فحص الانكسار</translation>
        </message>
        <message>
            <source>objective reading and final prescription are %1 D apart in mean sphere</source>
            <translation>تبتعد القراءة الموضوعية عن الوصفة النهائية بمقدار %1 D في الكرة المتوسطة</translation>
        </message>
        <message>
            <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
            <translation>تكرر الوصفة النهائية القراءة الموضوعية في الأرقام الستة كلها: هل نُقّحت؟</translation>
        </message>
        <message>
            <source>under 16: the prescriber's name stays with the pair, and the guardian is told</source>
            <translation>دون 16: يبقى اسم كاتب الوصفة مع النظارة ويُبلَّغ ولي الأمر</translation>
        </message>
        <message>
            <source>age not recorded: the strictest limits that could apply are used</source>
            <translation>العمر غير مسجل: تُستعمل أشد الحدود الممكنة</translation>
        </message>
        <message>
            <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
            <translation>عين مبصرة واحدة فقط: يُنصح بعدسات مقاومة للصدمات ونظارة واقية</translation>
        </message>
        <message>
            <source>an objective reading only: a subjective refraction should follow</source>
            <translation>قراءة موضوعية فقط: ينبغي أن يتبعها فحص ذاتي للانكسار</translation>
        </message>
        <message>
            <source>the prescription is %1 months old</source>
            <translation>عمر الوصفة %1 شهرًا</translation>
        </message>
        <message>
            <source>symptoms recorded: %1</source>
            <translation>أعراض مسجلة: %1</translation>
        </message>
        <message>
            <source>PD not taken</source>
            <translation>لم تُقس PD</translation>
        </message>
        <message>
            <source>near PD computed from the distance PD, not measured</source>
            <translation>حُسبت PD القرب من PD البعد ولم تُقس</translation>
        </message>
        <message>
            <source>an eye with a lens implant: additions differ between the eyes</source>
            <translation>عين بعدسة مزروعة: تختلف الإضافة بين العينين</translation>
        </message>
        <message>
            <source>above 4.00 D the vertex distance matters: record it</source>
            <translation>فوق 4.00 D تؤثر المسافة بين العين والعدسة: سجّلها</translation>
        </message>
        <message>
            <source>near glasses need an addition, or a near power found by trial</source>
            <translation>تحتاج نظارة القرب إلى إضافة، أو قوة قرب وُجدت بالتجربة</translation>
        </message>
        <message>
            <source>this purpose needs an addition, or a near power found by trial</source>
            <translation>يحتاج هذا الغرض إلى إضافة، أو قوة قرب وُجدت بالتجربة</translation>
        </message>
        <message>
            <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
            <translation>فحص ذاتي للانكسار: لا يُعطى الطفل نظارة من قراءة موضوعية وحدها</translation>
        </message>
        <message>
            <source>the prescriber's name, for a child</source>
            <translation>اسم كاتب الوصفة، لطفل</translation>
        </message>
        <message>
            <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
            <translation>الإضافة دون 35 سنة يجب تأكيدها: حدة القرب بها، أو قوة قرب بالتجربة</translation>
        </message>
        <message>
            <source>small error and 6/9 or better without glasses</source>
            <translation>خطأ صغير و6/9 أو أفضل دون نظارة</translation>
        </message>
        <message>
            <source>glasses gain the better eye less than two lines</source>
            <translation>النظارة تكسب العين الأفضل أقل من سطرين</translation>
        </message>
        <message>
            <source>reads without spectacles</source>
            <translation>يقرأ دون نظارة</translation>
        </message>
        <message>
            <source>reads N6 without spectacles</source>
            <translation>يقرأ N6 دون نظارة</translation>
        </message>
        <message>
            <source>the own pair still fits: a spare only</source>
            <translation>نظارته الحالية ما زالت مناسبة: احتياطية فقط</translation>
        </message>
        <message>
            <source>the PD: measure it</source>
            <translation>PD: قِسها</translation>
        </message>
        <message>
            <source>the vertex distance of this prescription: measure it</source>
            <translation>المسافة بين العين والعدسة لهذه الوصفة: قِسها</translation>
        </message>
        <message>
            <source>nothing in the box for this purpose</source>
            <translation>لا شيء في الصندوق لهذا الغرض</translation>
        </message>
        <message>
            <source>nothing in the box comes near</source>
            <translation>لا شيء في الصندوق يقارب الحاجة</translation>
        </message>
        <message>
            <source>if the prescriber marks the left eye balance, %1 would fit</source>
            <translation>إن وسم كاتب الوصفة العين اليسرى بأنها للموازنة فإن %1 مناسب</translation>
        </message>
        <message>
            <source>if the prescriber marks the right eye balance, %1 would fit</source>
            <translation>إن وسم كاتب الوصفة العين اليمنى بأنها للموازنة فإن %1 مناسب</translation>
        </message>
        <message>
            <source>%1 fits</source>
            <translation>%1 مناسب</translation>
        </message>
        <message>
            <source>try %1 and type the acuity with it</source>
            <translation>جرّب %1 واكتب حدة الإبصار به</translation>
        </message>
        <message>
            <source>a rules profile named %1</source>
            <translation>ملف قواعد باسم %1</translation>
        </message>
        <message>
            <source>a final prescription for at least one eye</source>
            <translation>وصفة نهائية لعين واحدة على الأقل</translation>
        </message>
        <message>
            <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no acuity is written; write 6/9 or leave it out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 has no decimal point; write %2 or %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 has no decimal point; write %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is beyond %2 D; check the figure and write it again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cylinder %1 has no sign; write +%1 or -%1</source>
            <translation>الأسطوانة %1 دون إشارة؛ اكتب +%1 أو -%1</translation>
        </message>
        <message>
            <source>%1 has no sign; write +%1 or -%1</source>
            <translation>‏%1 دون إشارة؛ اكتب +%1 أو -%1</translation>
        </message>
        <message>
            <source>addition -%1 is negative; an addition is plus: check it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>cylinder %1 has no axis; write it with its axis, as %1 x 90</source>
            <translation>الأسطوانة %1 دون محور؛ اكتبها مع محورها، مثل %1 x 90</translation>
        </message>
        <message>
            <source>“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90</source>
            <translation>«%1» ليس جزءًا من وصفة يمكن قراءتها؛ اكتب مثل -1.25 -0.50 x 90</translation>
        </message>
        <message>
            <source>two prisms lie in one direction; write their sum once, as 1.5 base in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the SQLite driver of Qt is missing; install libqt6sql6-sqlite</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>another program holds the ledger; nothing was written; close it there and repeat</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the ledger cannot be opened for writing here; check the rights of the file and its folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the disk is full; nothing was written; make room and repeat</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is not a ledger, or it is damaged (%1); put back the latest copy of the camp folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the ledger failed: %1 (code %2); nothing was written</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the ledger cannot be made: %1; check the rights of the folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this file system cannot keep a ledger safely (no shared memory beside the file); keep the camp folder on another disk</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this ledger was not closed and its folder cannot be written to; copy the whole folder to a place that can, and open it there</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the ledger is empty; nothing happened yet</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the database refuses to write safely; nothing was opened</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this ledger names no station of its own; put back the latest copy</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this ledger was opened for reading only</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this ledger was last written at another place; if it moved here for good, say so first, and do not use the other copy any more</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the ledger file was moved, removed or replaced while it was open; nothing was written; close the camp and open it again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>line %1 has %2 left, %3 asked for; nothing was written</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>line %1 is not in the ledger of %2; nothing was written</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no entry %1 to take back</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>entry %1 was taken back already</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>entry %1 takes back another one and cannot be taken back itself; enter what happened anew</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is not a file; name another one in the key ledger of stock.yaml</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>an entry of this ledger cannot be read; check the chain and put back the latest copy of the camp folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is a database of another program, not a ledger; name another file in the key ledger of stock.yaml</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this ledger was made by a newer version (form %1, known here up to %2); update this program</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a ledger file cannot be kept safely on a network share; keep the camp folder on this machine, or share a PostgreSQL ledger between stations</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file cannot be written: %1; check rights and free space</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file was replaced, but the disk does not say that this will last: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>another program is writing in this folder; wait a moment and repeat</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the folder cannot be locked: %1; check its name and rights</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file cannot be read</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is a link or a device; only a plain file can be kept up to date; put the file itself into the camp folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file was written after entry %1 of another ledger; a new ledger begins with the counts of the file</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file was written after entry %1, but the ledger ends at %2; is the ledger an older copy? Counts that differ are shown as edited</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the limits must rise: fits, then caution, then trial</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a limit is missing here; write fits, caution or trial</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" means nothing for this criterion; delete it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>write the steps as a list: [{up to: 0.50, fits: 7}, …]</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the steps must rise; put the smaller cylinder first</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>say where the limit comes from, or write: common practice</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>shown only means no limits; keep one of the two</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a quote stands inside a cell; put the whole cell in quotes and double it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a lone carriage return ends the line here; save the table with LF or CRLF line ends</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this quote is never closed; close it before the next comma</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is text behind the closing quote; move it inside, or double the quote</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" is not a number; write one from %2 to %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is outside %2 to %3</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a number is missing; write one from %1 to %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" has a decimal comma; in this file write %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is below zero; write 0 or more</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>write %1 without a sign</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 is not a whole number; write digits only</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" is not a whole number; write digits only, for example 14</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a whole number is missing; write one from %1 to %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 begins with a zero, which some programs read as another number; write %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 has more than three decimals; round it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the table is empty; its first line names the columns: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the columns are not separated by commas; save the table with commas</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the column "%1" is missing; person, right and left are needed</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the column "%1" stands in the table twice; delete or rename one</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this column has no name; write one</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" does not say which acuity; write one of: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the column "%1" is not known; it is kept but not used</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the column "%1" is not known and not used; did you mean "%2"?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the row ends after %1 cells, the header has %2; add the missing commas</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the row has %1 cells, the header %2; put a cell that holds a comma in quotes</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the person "%1" stands in line %2 already; give each row a code of its own</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the row has no person; write a code or a name</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 mm is narrow for both eyes together; is it monocular? Then it goes into pd_right_mm or pd_left_mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the two monocular distances make %1 mm, not %2; the monocular ones are used</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the eye's text says addition %1, this column %2; keep one</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>sphere and addition make %1 at near, the near power says %2; the near power is used</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the date %1 lies after today, %2; correct it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>write two numbers in mm, for example [54, 74]</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the smaller number comes first</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no profile "%1" to begin from; built in, or earlier in this file, are: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the profile has no name; write one</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the profile "%1" stands in the file already; give this one another name</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is not a rules file of this program; the first key should read format: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>`profiles` is a list; begin each profile with a dash</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is not UTF-8 text; save the file as UTF-8</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a control character (hexadecimal %1) stands here; delete it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file is larger than %1 MiB; split it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no such file; check the name and the folder</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file cannot be read: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is a folder; name the file inside it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file is UTF-16 text; save it as UTF-8 and try again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file begins with two byte order marks; delete one</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>write this value without quotes, or delete the whole `written` entry</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the value of `counts` is 8 digits of 0-9 and a-f put in by the program; delete the whole `written` entry if it was damaged</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>`lines` is a list; begin each line with a dash, or write lines: []</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the line "%1" stands in the file already, in line %2; give this one another name or add the counts together</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>put `lines:` at the beginning of a line of its own</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this is not a stock file of this program; the first key should read format: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the site has no name; write the camp or box</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>write the count as plain digits, without quotes: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>least (%1) is above most (%2); exchange them</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>write the lens shapes as a list, for example [round 44]</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure the pair again</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a lens of shape "%1" may fit one side only; write side: right, left or either</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" says nothing for a line of this kind and is not used</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the line has no name; write what its label says</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the addition %1 is outside +0.25 to +6.00</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a bifocal's power is written {bifocal: +2.00, distance: 0.00}</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a lens with a cylinder needs axis: any (turned when mounting) or axis: degrees as mounted</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the axis stands in the power already; keep one of the two</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>contact lenses were worn during this reading; the row is left out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>neither eye has sphere, cylinder and axis; the row is left out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this eye has no complete reading and is taken as not measured</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" is not one of the words allowed here; write one of: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" holds two numbers; write one here, each eye's own in pd_right_mm and pd_left_mm, the near one in near_pd_mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 would be a distance in cm; write it in mm: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 mm is not a pupillary distance; expected are %2 to %3 mm</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>an addition is never minus; %1 was read; write the addition, not the near power (that goes into near_right and near_left)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the addition %1 is outside 0.00 to +6.00</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" is not a date of the form 2026-03-01 (year-month-day)</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>there is no column "%1" in the table</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a single value is expected here, not a list or a map</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" holds a line break or a control character; write it on one line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>keys with values are expected here, such as: %1</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" is written twice; the first stands in line %2; keep one</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the key "%1" is not known here; known are: %2</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the key "%1" is not known here; did you mean "%2"?</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the key "%1" is missing here; add it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>"%1" has no value; write one after the colon</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a second document begins here; keep one document in the file</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>an alias (*name) is not read here; write the value out</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this quote is never closed; close it on the same line</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>an anchor (&amp;name) is not read here; delete it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a tag (!name) is not read here; delete it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the nesting is deeper than %1; this is not such a file</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>a key must be a plain word</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or a tab in the indentation, here or on the line above</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the file is empty</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>the disk failed while the entry was written (%1); close the camp, open it again and look whether the entry is there before you repeat it</source>
            <translation type="unfinished" />
        </message>
        <message>
            <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
            <translation>يكلّف %1 من الإبصار أقل من %2: ‏%3 مقابل %4 logMAR للعينين معًا</translation>
        </message>
        <message>
            <source>%1 is within the limits, or may be tried; %2 is outside one</source>
            <translation>%1 داخل الحدود أو يمكن تجربته؛ %2 خارج أحدها</translation>
        </message>
        <message>
            <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
            <translation>%1 مقبول كما هو؛ %2 قيد التجربة حتى تُكتب حدة الإبصار به</translation>
        </message>
        <message>
            <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
            <translation>متساويان في الإبصار؛ تحفظات %1 أقل من %2: ‏%3 مقابل %4</translation>
        </message>
        <message>
            <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
            <translation>متساويان في الإبصار والتحفظات؛ يميل %1 إلى الجهة التي يرفضها الناس في عيون أقل من %2: ‏%3 مقابل %4</translation>
        </message>
        <message>
            <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
            <translation>متساويان حتى هنا؛ توازن العينين مع %1 أفضل منه مع %2: الفرق %3 مقابل %4 D</translation>
        </message>
        <message>
            <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
            <translation>متساويان حتى هنا؛ المنشور الأفقي في %1 أقل منه في %2: ‏%3 مقابل %4 ديوبتر منشوري</translation>
        </message>
        <message>
            <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
            <translation>متساويان حتى هنا؛ للقرب تتقدم القاعدة للداخل (%1) على القاعدة للخارج (%2)</translation>
        </message>
        <message>
            <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
            <translation>متساويان حتى هنا؛ إطار %1 أنسب للمقاس المطلوب من %2: البعد %3 مقابل %4 فئة</translation>
        </message>
        <message>
            <source>equal so far; %1 is less scarce in the box than %2</source>
            <translation>متساويان حتى هنا؛ %1 أقل ندرة في الصندوق من %2</translation>
        </message>
        <message>
            <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
            <translation>متساويان في كل ما يُقيَّم؛ قطع %1 أقل من قطع %2: ‏%3 مقابل %4</translation>
        </message>
        <message>
            <source>equal in all that is judged; %1 comes before %2 by name</source>
            <translation>متساويان في كل ما يُقيَّم؛ يسبق %1 الصنف %2 بالاسم</translation>
        </message>
        <message>
            <source>%1 and %2 are the same</source>
            <translation>%1 و%2 سواء</translation>
        </message>
        <message>
            <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
            <translation>احتمال وقوع الخطأ الحقيقي داخل حده %1 %: أعد القراءات</translation>
        </message>
        <message>
            <source>lines look bent or broken: eye clinic soon</source>
            <translation>تبدو الخطوط منحنية أو مكسورة: عيادة العيون قريبًا</translation>
        </message>
        <message>
            <source>part of the field of view is missing: eye clinic soon</source>
            <translation>جزء من مجال الرؤية مفقود: عيادة العيون قريبًا</translation>
        </message>
        <message>
            <source>halos around lights: eye clinic soon</source>
            <translation>هالات حول الأضواء: عيادة العيون قريبًا</translation>
        </message>
        <message>
            <source>the PD of each eye</source>
            <translation>PD لكل عين</translation>
        </message>
        <message>
            <source>the heights in the chosen frame</source>
            <translation>الارتفاعات في الإطار المختار</translation>
        </message>
        <message>
            <source>the vertex distance of the refraction</source>
            <translation>المسافة بين العين والعدسة عند الفحص</translation>
        </message>
        <message>
            <source>the frame</source>
            <translation>الإطار</translation>
        </message>
        <message>
            <source>single vision for %1 mm: whole power, nothing to be added</source>
            <translation>عدسة أحادية لمسافة %1 mm: القوة كاملة، لا يضاف إليها شيء</translation>
        </message>
        <message>
            <source>centration computed from the distance PD, not measured</source>
            <translation>حُسب التمركز من PD البعد ولم يُقس</translation>
        </message>
        <message>
            <source>each eye's PD is half of the binocular one</source>
            <translation>PD كل عين نصف PD العينين معًا</translation>
        </message>
        <message>
            <source>balance lens: as its fellow, for looks and weight</source>
            <translation>عدسة موازنة: كأختها، للمظهر والوزن</translation>
        </message>
        <message>
            <source>only one seeing eye: impact-resistant lenses are advised</source>
            <translation>عين مبصرة واحدة فقط: يُنصح بعدسات مقاومة للصدمات</translation>
        </message>
        <message>
            <source>for a child: impact-resistant lenses are advised</source>
            <translation>لطفل: يُنصح بعدسات مقاومة للصدمات</translation>
        </message>
        <message>
            <source>prism as prescribed, each eye its own</source>
            <translation>المنشور كما وُصف، لكل عين منشورها</translation>
        </message>
        <message>
            <source>refracted at a vertex distance of %1 mm</source>
            <translation>جرى الفحص والمسافة بين العين والعدسة %1 mm</translation>
        </message>
        <message>
            <source>from an objective reading only</source>
            <translation>من قراءة موضوعية فقط</translation>
        </message>
        <message>
            <source>%1 is used: clean it and read its power before it is given</source>
            <translation>%1 مستعمل: نظّفه واقرأ قوته قبل تسليمه</translation>
        </message>
        <message>
            <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
            <translation>من 65 سنة تغيّر %1 D دفعة واحدة كثير: خطر السقوط؛ اسأل كاتب الوصفة</translation>
        </message>
        <message>
            <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
            <translation>يبتعد عن نظارته الحالية بمقدار %1 D: إن حدث ذلك خلال أشهر تبحث عيادة العيون عن السبب</translation>
        </message>
        <message>
            <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
            <translation>من 65 سنة يصعب الاعتياد على محور مائل دار أكثر من 10 درجات؛ اسأل كاتب الوصفة</translation>
        </message>
        <message>
            <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
            <translation>تبتعد الإضافة %1 أكثر من 0.75 D عن كل جداول هذا العمر: هل قيست على مسافة %2 mm؟</translation>
        </message>
        <message>
            <source>does not read N8 with the near correction: see where the rest is lost</source>
            <translation>لا يقرأ N8 بتصحيح القرب: ابحث أين يضيع الباقي</translation>
        </message>
        <message>
            <source>half the addition is used: no distance was stated for this work</source>
            <translation>استُعمل نصف الإضافة: لم تُذكر مسافة لهذا العمل</translation>
        </message>
        <message>
            <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
            <translation>نظارته الحالية داخل الحدود لهذا الغرض: ربما احتياطية فقط</translation>
        </message>
        <message>
            <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
            <translation>طفل طويل النظر دون شلل التكيف: قد تخفي القراءة نحو 3 D أخرى؛ القرار لكاتب الوصفة</translation>
        </message>
        <message>
            <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
            <translation>طفل دون شلل التكيف: تميل هذه القراءات نحو 0.4 D إلى السالب عند قصيري النظر، وأكثر عند غيرهم</translation>
        </message>
        <message>
            <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
            <translation>دون 8 سنوات وقصر نظر يتجاوز 3.00 D: معرّض لكسل العين</translation>
        </message>
        <message>
            <source>a child's eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
            <translation>تختلف عينا الطفل بمقدار 1.00 D أو أكثر في جهة الموجب: معرّض لكسل العين</translation>
        </message>
        <message>
            <source>a child's cylinders differ by 2.00 D or more: at risk of amblyopia</source>
            <translation>تختلف أسطوانتا الطفل بمقدار 2.00 D أو أكثر: معرّض لكسل العين</translation>
        </message>
        <message>
            <source>would need better acuity with this very pair</source>
            <translation>تلزم حدة إبصار أفضل بهذه النظارة نفسها</translation>
        </message>
        <message>
            <source>would do once the vertex distance is recorded</source>
            <translation>يصلح متى سُجّلت المسافة بين العين والعدسة</translation>
        </message>
        <message>
            <source>would do if the PD, once measured, is near %1 mm</source>
            <translation>يصلح إن كانت PD بعد قياسها قرب %1 mm</translation>
        </message>
        <message>
            <source>would do if the prescriber allows prism by decentration</source>
            <translation>يصلح إن أجاز كاتب الوصفة المنشور بإزاحة المركز</translation>
        </message>
        <message>
            <source>would do with centres %1 mm apart</source>
            <translation>يصلح لو كان بين المركزين %1 mm</translation>
        </message>
        <message>
            <source>would do with both centres at the same height</source>
            <translation>يصلح لو كان المركزان على ارتفاع واحد</translation>
        </message>
        <message>
            <source>would do with %1 in both lenses instead of %2</source>
            <translation>يصلح بقوة %1 في العدستين بدل %2</translation>
        </message>
        <message>
            <source>would do with %1 D in both lenses</source>
            <translation>يصلح بقوة %1 D في العدستين</translation>
        </message>
        <message>
            <source>would do with sphere %1 in the right lens</source>
            <translation>يصلح بكرة %1 في العدسة اليمنى</translation>
        </message>
        <message>
            <source>would do with sphere %1 in the left lens</source>
            <translation>يصلح بكرة %1 في العدسة اليسرى</translation>
        </message>
        <message>
            <source>would do with addition %1</source>
            <translation>يصلح بإضافة %1</translation>
        </message>
        <message>
            <source>would do with a lens of its own for each eye: right %1, left %2</source>
            <translation>يصلح بعدسة خاصة لكل عين: اليمنى %1، اليسرى %2</translation>
        </message>
        <message>
            <source>would do with lenses made to the prescription, cylinder included</source>
            <translation>يصلح بعدسات تُصنع على الوصفة مع الأسطوانة</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::AnswerPanel</name>
        <message>
            <source>Needed: %1</source>
            <translation>مطلوب: %1</translation>
        </message>
        <message>
            <source>Referral: %1, %2</source>
            <translation>الإحالة: %1، %2</translation>
        </message>
        <message>
            <source>Measure again before handing over.</source>
            <translation>أعد القياس قبل التسليم.</translation>
        </message>
        <message>
            <source>Purpose shown</source>
            <translation>الغرض المعروض</translation>
        </message>
        <message>
            <source>Each purpose is judged alone</source>
            <translation>يُقيَّم كل غرض وحده</translation>
        </message>
        <message>
            <source>Rules: %1</source>
            <translation>القواعد: %1</translation>
        </message>
        <message>
            <source>%1  (rules: %2)</source>
            <translation>%1  (القواعد: %2)</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::CriteriaModel</name>
        <message>
            <source>%1, right</source>
            <translation>%1، اليمنى</translation>
        </message>
        <message>
            <source>%1, left</source>
            <translation>%1، اليسرى</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>لم يُقَس</translation>
        </message>
        <message>
            <source>Criterion</source>
            <translation>المعيار</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>القيمة</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>الحد</translation>
        </message>
        <message>
            <source>Unit</source>
            <translation>الوحدة</translation>
        </message>
        <message>
            <source>Band</source>
            <translation>النطاق</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>المصدر</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::DeskWindow</name>
        <message>
            <source>Quarterstep</source>
            <translation>Quarterstep</translation>
        </message>
        <message>
            <source>Power plane as a table</source>
            <translation>مستوى القوى كجدول</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>خروج</translation>
        </message>
        <message>
            <source>New person</source>
            <translation>شخص جديد</translation>
        </message>
        <message>
            <source>Empties the card</source>
            <translation>يفرغ البطاقة</translation>
        </message>
        <message>
            <source>Load people…</source>
            <translation>تحميل أشخاص…</translation>
        </message>
        <message>
            <source>Puts the people of a prescription table into the waiting list</source>
            <translation>يضع أشخاص جدول الوصفات في قائمة الانتظار</translation>
        </message>
        <message>
            <source>Open camp…</source>
            <translation>فتح مخيم…</translation>
        </message>
        <message>
            <source>Opens a camp folder</source>
            <translation>يفتح مجلد مخيم</translation>
        </message>
        <message>
            <source>Look of the window</source>
            <translation>مظهر النافذة</translation>
        </message>
        <message>
            <source>Light, dark, or sun: black on white and large, for outdoors</source>
            <translation>فاتح أو داكن أو شمس: أسود على أبيض وكبير للعمل في الخارج</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>فاتح</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>داكن</translation>
        </message>
        <message>
            <source>Sun</source>
            <translation>شمس</translation>
        </message>
        <message>
            <source>Open a camp folder</source>
            <translation>افتح مجلد مخيم</translation>
        </message>
        <message>
            <source>A camp folder holds stock.yaml (what exists and how many) and, when there is one, rules.yaml and people.csv.
The ledger of what was handed over is made in it.</source>
            <translation>يحوي مجلد المخيم الملف stock.yaml (الموجود وعدده) وكذلك rules.yaml و people.csv إن وُجدا.
ويُنشأ فيه سجل ما تم تسليمه.</translation>
        </message>
        <message>
            <source>Open a camp folder…</source>
            <translation>افتح مجلد مخيم…</translation>
        </message>
        <message>
            <source>Chooses the folder with stock.yaml (Ctrl+O)</source>
            <translation>اختيار المجلد الذي فيه stock.yaml (Ctrl+O)</translation>
        </message>
        <message>
            <source>Load people</source>
            <translation>تحميل أشخاص</translation>
        </message>
        <message>
            <source>Prescription tables (*.csv)</source>
            <translation>جداول الوصفات (*.csv)</translation>
        </message>
        <message numerus="yes">
            <source>Dispense  ·  %n on hand</source>
            <translation>
                <numerusform>الصرف  ·  الموجود: %n</numerusform>
                <numerusform>الصرف  ·  الموجود: %n</numerusform>
                <numerusform>الصرف  ·  الموجود: %n</numerusform>
                <numerusform>الصرف  ·  الموجود: %n</numerusform>
                <numerusform>الصرف  ·  الموجود: %n</numerusform>
                <numerusform>الصرف  ·  الموجود: %n</numerusform>
            </translation>
        </message>
        <message>
            <source>No camp is open</source>
            <translation>لا مخيم مفتوح</translation>
        </message>
        <message>
            <source>%1: Quarterstep</source>
            <translation>%1: Quarterstep</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::DispensePlace</name>
        <message numerus="yes">
            <source>%1: %n left</source>
            <translation>
                <numerusform>%1: بقي %n</numerusform>
                <numerusform>%1: بقي %n</numerusform>
                <numerusform>%1: بقي %n</numerusform>
                <numerusform>%1: بقي %n</numerusform>
                <numerusform>%1: بقي %n</numerusform>
                <numerusform>%1: بقي %n</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 has %2. %3.</source>
            <translation>‏%1 استلم %2. ‏%3.</translation>
        </message>
        <message>
            <source>Put back if pulled: %1</source>
            <translation>أعد إلى مكانه إن كان قد أُخرج: %1</translation>
        </message>
        <message>
            <source>taken back at the desk</source>
            <translation>استُرجع عند المكتب</translation>
        </message>
        <message>
            <source>Taken back from %1: %2 is in stock again.</source>
            <translation>استُرجع من %1: عاد %2 إلى المخزون.</translation>
        </message>
        <message>
            <source>People of the table</source>
            <translation>أشخاص الجدول</translation>
        </message>
        <message>
            <source>Choose a person: the card fills and pairs are suggested</source>
            <translation>اختر شخصًا: تُملأ البطاقة وتُقترح النظارات</translation>
        </message>
        <message>
            <source>Prescription</source>
            <translation>الوصفة</translation>
        </message>
        <message>
            <source>Suggest pairs</source>
            <translation>اقترح نظارات</translation>
        </message>
        <message>
            <source>Searches the stock for this prescription (Enter in any field)</source>
            <translation>يبحث في المخزون لهذه الوصفة (Enter في أي حقل)</translation>
        </message>
        <message>
            <source>Pairs to pull</source>
            <translation>نظارات لإخراجها</translation>
        </message>
        <message>
            <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
            <translation>الأفضل أولًا: القوة بالديوبتر، ومكانها، وما يبقى في كل عين، والمنشور</translation>
        </message>
        <message>
            <source>Power plane</source>
            <translation>مستوى القوى</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>جدول</translation>
        </message>
        <message>
            <source>Shows the same values as a table (Ctrl+T)</source>
            <translation>يعرض القيم نفسها كجدول (Ctrl+T)</translation>
        </message>
        <message>
            <source>Power plane as a table</source>
            <translation>مستوى القوى كجدول</translation>
        </message>
        <message>
            <source>Powers in dioptres and how many can be given</source>
            <translation>القوى بالديوبتر وكم يمكن تسليمه</translation>
        </message>
        <message>
            <source>R, L: the person's eyes · disc: pairs · diamond: lenses · cross: none left · open ring: chosen pair. The larger, the more there are.</source>
            <translation>‏R وL: عينا الشخص · قرص: نظارات · معيّن: عدسات · علامة ×: لم يبق شيء · حلقة مفتوحة: النظارة المختارة. كلما كبرت العلامة زاد العدد.</translation>
        </message>
        <message>
            <source>Why this pair</source>
            <translation>لماذا هذه النظارة</translation>
        </message>
        <message>
            <source>Why: criteria of the chosen pair</source>
            <translation>السبب: معايير النظارة المختارة</translation>
        </message>
        <message>
            <source>Measured values and limits, each with its unit and source</source>
            <translation>القيم المقاسة والحدود، كل منها بوحدته ومصدره</translation>
        </message>
        <message>
            <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
            <translation>ليس في هذا المجلد people.csv. اكتب وصفة أدناه أو حمّل جدولًا.</translation>
        </message>
        <message numerus="yes">
            <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger's counts are used until the edits are accepted or discarded.</source>
            <translation>
                <numerusform>عُدّلت الأعداد في stock.yaml يدويًا (عدد الأسطر: %n). تُستعمل أعداد السجل حتى يُقبل التعديل أو يُهمل.</numerusform>
                <numerusform>عُدّلت الأعداد في stock.yaml يدويًا (عدد الأسطر: %n). تُستعمل أعداد السجل حتى يُقبل التعديل أو يُهمل.</numerusform>
                <numerusform>عُدّلت الأعداد في stock.yaml يدويًا (عدد الأسطر: %n). تُستعمل أعداد السجل حتى يُقبل التعديل أو يُهمل.</numerusform>
                <numerusform>عُدّلت الأعداد في stock.yaml يدويًا (عدد الأسطر: %n). تُستعمل أعداد السجل حتى يُقبل التعديل أو يُهمل.</numerusform>
                <numerusform>عُدّلت الأعداد في stock.yaml يدويًا (عدد الأسطر: %n). تُستعمل أعداد السجل حتى يُقبل التعديل أو يُهمل.</numerusform>
                <numerusform>عُدّلت الأعداد في stock.yaml يدويًا (عدد الأسطر: %n). تُستعمل أعداد السجل حتى يُقبل التعديل أو يُهمل.</numerusform>
            </translation>
        </message>
        <message>
            <source>The table has no rows. Type a prescription below.</source>
            <translation>لا صفوف في الجدول. اكتب وصفة أدناه.</translation>
        </message>
        <message>
            <source>Choose a person or type a prescription; Enter suggests pairs.</source>
            <translation>اختر شخصًا أو اكتب وصفة؛ Enter يقترح نظارات.</translation>
        </message>
        <message>
            <source>The pairs to pull will stand here, best first, with their bins.</source>
            <translation>هنا تظهر النظارات المطلوب إخراجها، الأفضل أولًا، مع أماكنها.</translation>
        </message>
        <message>
            <source>Nothing to pull for this purpose.</source>
            <translation>لا شيء يُخرج لهذا الغرض.</translation>
        </message>
        <message>
            <source>No pairs are shown until this is settled.</source>
            <translation>لا تُعرض نظارات حتى يُحسم هذا الأمر.</translation>
        </message>
        <message>
            <source>No pair of this stock comes near this need.</source>
            <translation>لا نظارة في هذا المخزون تقارب هذه الحاجة.</translation>
        </message>
        <message>
            <source>Picture</source>
            <translation>صورة</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::HandOverPanel</name>
        <message>
            <source>Hand over</source>
            <translation>تسليم</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>استرجاع</translation>
        </message>
        <message>
            <source>Gives the chosen pair to this person and counts it down (Ctrl+Return)</source>
            <translation>يسلّم النظارة المختارة لهذا الشخص ويُنقص العدد (Ctrl+Return)</translation>
        </message>
        <message>
            <source>Takes back the last hand-over of this window (Ctrl+Z)</source>
            <translation>يسترجع آخر تسليم في هذه النافذة (Ctrl+Z)</translation>
        </message>
        <message>
            <source>Power read by focimeter</source>
            <translation>قُرئت القوة بمقياس العدسات</translation>
        </message>
        <message>
            <source>The power of this very pair was read</source>
            <translation>قُرئت قوة هذه النظارة نفسها</translation>
        </message>
        <message>
            <source>Fit on the face</source>
            <translation>الثبات على الوجه</translation>
        </message>
        <message>
            <source>Sits well at nose and ears, pupils behind the centres</source>
            <translation>ثابتة على الأنف والأذنين، والحدقتان خلف المركزين</translation>
        </message>
        <message>
            <source>Acuity with the pair</source>
            <translation>حدة الإبصار بالنظارة</translation>
        </message>
        <message>
            <source>Each eye read the chart with this pair on</source>
            <translation>قرأت كل عين اللوحة بهذه النظارة</translation>
        </message>
        <message>
            <source>Instructions given</source>
            <translation>أُعطيت التعليمات</translation>
        </message>
        <message>
            <source>What it is for, how to care for it, when to come back</source>
            <translation>لِمَ هي، وكيف يُعتنى بها، ومتى العودة</translation>
        </message>
        <message>
            <source>With pair, R</source>
            <translation>بالنظارة، R</translation>
        </message>
        <message>
            <source>Right eye: acuity with this pair on, for example 6/9</source>
            <translation>العين اليمنى: حدة الإبصار بهذه النظارة، مثل 6/9</translation>
        </message>
        <message>
            <source>L</source>
            <translation>L</translation>
        </message>
        <message>
            <source>Left eye: acuity with this pair on, for example 6/9</source>
            <translation>العين اليسرى: حدة الإبصار بهذه النظارة، مثل 6/9</translation>
        </message>
        <message>
            <source>near</source>
            <translation>قرب</translation>
        </message>
        <message>
            <source>Smallest print read with this pair on, for example N8</source>
            <translation>أصغر خط يُقرأ بهذه النظارة، مثل N8</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>السبب</translation>
        </message>
        <message>
            <source>Why this pair is given all the same; kept with the entry</source>
            <translation>لماذا تُسلَّم هذه النظارة رغم ذلك؛ يُحفظ مع القيد</translation>
        </message>
        <message>
            <source>Your initials</source>
            <translation>الأحرف الأولى</translation>
        </message>
        <message>
            <source>Who hands over; kept with the entry, may stay empty</source>
            <translation>من يسلّم؛ يُحفظ مع القيد ويجوز تركه فارغًا</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::MessageBar</name>
        <message>
            <source>Copy code</source>
            <translation>نسخ الرمز</translation>
        </message>
        <message>
            <source>Copies the code of this message, to look it up in the help</source>
            <translation>ينسخ رمز هذه الرسالة للبحث عنه في التعليمات</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>إغلاق</translation>
        </message>
        <message>
            <source>Puts this message away</source>
            <translation>يخفي هذه الرسالة</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>تم</translation>
        </message>
        <message>
            <source>Not done</source>
            <translation>لم يتم</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::PairsModel</name>
        <message numerus="yes">
            <source>%n here</source>
            <translation>
                <numerusform>المتاح %n</numerusform>
                <numerusform>المتاح %n</numerusform>
                <numerusform>المتاح %n</numerusform>
                <numerusform>المتاح %n</numerusform>
                <numerusform>المتاح %n</numerusform>
                <numerusform>المتاح %n</numerusform>
            </translation>
        </message>
        <message>
            <source>R and L %1  ·  prism %2</source>
            <translation>‏R وL: %1  ·  المنشور %2</translation>
        </message>
        <message>
            <source>R %1  ·  L %2  ·  prism %3</source>
            <translation>‏R: %1  ·  L: %2  ·  المنشور %3</translation>
        </message>
        <message>
            <source>Nearest outside the limits</source>
            <translation>الأقرب خارج الحدود</translation>
        </message>
        <message>
            <source>same power: %1</source>
            <translation>القوة نفسها: %1</translation>
        </message>
        <message>
            <source>Power (D)</source>
            <translation>القوة (D)</translation>
        </message>
        <message>
            <source>Pull</source>
            <translation>المكان</translation>
        </message>
        <message>
            <source>Right eye (D)</source>
            <translation>العين اليمنى (D)</translation>
        </message>
        <message>
            <source>Left eye (D)</source>
            <translation>العين اليسرى (D)</translation>
        </message>
        <message>
            <source>Prism (Δ)</source>
            <translation>المنشور (Δ)</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>الحكم</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>السبب</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::PlaneModel</name>
        <message>
            <source>need, both eyes</source>
            <translation>الحاجة، العينان</translation>
        </message>
        <message>
            <source>need, right eye</source>
            <translation>الحاجة، اليمنى</translation>
        </message>
        <message>
            <source>need, left eye</source>
            <translation>الحاجة، اليسرى</translation>
        </message>
        <message>
            <source>chosen pair, right eye</source>
            <translation>النظارة المختارة، اليمنى</translation>
        </message>
        <message>
            <source>chosen pair, left eye</source>
            <translation>النظارة المختارة، اليسرى</translation>
        </message>
        <message>
            <source>lenses</source>
            <translation>عدسات</translation>
        </message>
        <message>
            <source>ready-made pairs</source>
            <translation>نظارات جاهزة</translation>
        </message>
        <message>
            <source>What</source>
            <translation>ما هو</translation>
        </message>
        <message>
            <source>Available</source>
            <translation>المتاح</translation>
        </message>
        <message>
            <source>Mean (D)</source>
            <translation>المتوسط (D)</translation>
        </message>
        <message>
            <source>Half cylinder (D)</source>
            <translation>نصف الأسطوانة (D)</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::PlotView</name>
        <message>
            <source>Power plane</source>
            <translation>مستوى القوى</translation>
        </message>
        <message>
            <source>A picture of the stock around this person's eyes; the same values stand in the table</source>
            <translation>صورة للمخزون حول عيني هذا الشخص؛ القيم نفسها في الجدول</translation>
        </message>
        <message>
            <source>mean power (D)</source>
            <translation>القوة المتوسطة (D)</translation>
        </message>
        <message>
            <source>half the cylinder (D)</source>
            <translation>نصف الأسطوانة (D)</translation>
        </message>
        <message>
            <source>fits %1</source>
            <translation>مناسب %1</translation>
        </message>
        <message>
            <source>on trial %1</source>
            <translation>قيد التجربة %1</translation>
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
                <numerusform>عدسات %1: المتاح %n</numerusform>
                <numerusform>عدسات %1: المتاح %n</numerusform>
                <numerusform>عدسات %1: المتاح %n</numerusform>
                <numerusform>عدسات %1: المتاح %n</numerusform>
                <numerusform>عدسات %1: المتاح %n</numerusform>
                <numerusform>عدسات %1: المتاح %n</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>pairs %1: %n available</source>
            <translation>
                <numerusform>نظارات %1: المتاح %n</numerusform>
                <numerusform>نظارات %1: المتاح %n</numerusform>
                <numerusform>نظارات %1: المتاح %n</numerusform>
                <numerusform>نظارات %1: المتاح %n</numerusform>
                <numerusform>نظارات %1: المتاح %n</numerusform>
                <numerusform>نظارات %1: المتاح %n</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>quarterstep::PrescriptionCard</name>
        <message>
            <source>Wanted for</source>
            <translation>الغرض</translation>
        </message>
        <message>
            <source>What the spectacles are for; left open, the prescription decides</source>
            <translation>الغرض من النظارة؛ إذا تُرك مفتوحًا فالوصفة تقرر</translation>
        </message>
        <message>
            <source>open</source>
            <translation>مفتوح</translation>
        </message>
        <message>
            <source>Right eye, prescription</source>
            <translation>العين اليمنى، الوصفة</translation>
        </message>
        <message>
            <source>Left eye, prescription</source>
            <translation>العين اليسرى، الوصفة</translation>
        </message>
        <message>
            <source>Pain</source>
            <translation>ألم</translation>
        </message>
        <message>
            <source>Sudden loss of sight</source>
            <translation>فقد إبصار مفاجئ</translation>
        </message>
        <message>
            <source>Red eye</source>
            <translation>احمرار العين</translation>
        </message>
        <message>
            <source>New flashes or floaters</source>
            <translation>ومضات أو عوائم جديدة</translation>
        </message>
        <message>
            <source>Double vision</source>
            <translation>ازدواج الرؤية</translation>
        </message>
        <message>
            <source>White pupil</source>
            <translation>حدقة بيضاء</translation>
        </message>
        <message>
            <source>Lines look bent</source>
            <translation>تبدو الخطوط منحنية</translation>
        </message>
        <message>
            <source>Part of the view missing</source>
            <translation>جزء من مجال الرؤية مفقود</translation>
        </message>
        <message>
            <source>Halos around lights</source>
            <translation>هالات حول الأضواء</translation>
        </message>
        <message>
            <source>Squint</source>
            <translation>حَوَل</translation>
        </message>
        <message>
            <source>Drops asked for</source>
            <translation>طُلبت قطرات</translation>
        </message>
        <message>
            <source>Signs seen or told</source>
            <translation>علامات لوحظت أو ذُكرت</translation>
        </message>
        <message>
            <source>Tick when this was seen or told; it decides about a letter to the clinic</source>
            <translation>ضع علامة إن لوحظ أو ذُكر؛ فهو يقرر رسالة إلى العيادة</translation>
        </message>
        <message>
            <source>%1 is empty; a person, the right and the left eye are needed</source>
            <translation>الحقل «%1» فارغ؛ المطلوب الشخص والعين اليمنى والعين اليسرى</translation>
        </message>
    </context>
    <context>
        <name>quarterstep::WaitingModel</name>
        <message>
            <source>row %1</source>
            <translation>الصف %1</translation>
        </message>
        <message>
            <source>cannot be read</source>
            <translation>لا يُقرأ</translation>
        </message>
        <message>
            <source>given %1</source>
            <translation>استلم %1</translation>
        </message>
        <message>
            <source>waiting</source>
            <translation>ينتظر</translation>
        </message>
        <message>
            <source>Right %1</source>
            <translation>اليمنى %1</translation>
        </message>
        <message>
            <source>Left %1</source>
            <translation>اليسرى %1</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>الشخص</translation>
        </message>
        <message>
            <source>Age</source>
            <translation>العمر</translation>
        </message>
        <message>
            <source>State</source>
            <translation>الحالة</translation>
        </message>
    </context>
    <context>
        <name>words</name>
        <message>
            <source>note</source>
            <translation>ملاحظة</translation>
        </message>
        <message>
            <source>caution</source>
            <translation>تحفظ</translation>
        </message>
        <message>
            <source>error</source>
            <translation>خطأ</translation>
        </message>
        <message>
            <source>from stock</source>
            <translation>من المخزون</translation>
        </message>
        <message>
            <source>custom order</source>
            <translation>طلب خاص</translation>
        </message>
        <message>
            <source>none needed</source>
            <translation>لا حاجة</translation>
        </message>
        <message>
            <source>incomplete</source>
            <translation>ناقص</translation>
        </message>
        <message>
            <source>refer</source>
            <translation>إحالة</translation>
        </message>
        <message>
            <source>no referral</source>
            <translation>دون إحالة</translation>
        </message>
        <message>
            <source>with a referral letter</source>
            <translation>مع رسالة إحالة</translation>
        </message>
        <message>
            <source>refer before any glasses</source>
            <translation>إحالة قبل أي نظارة</translation>
        </message>
        <message>
            <source>routine</source>
            <translation>اعتيادي</translation>
        </message>
        <message>
            <source>soon</source>
            <translation>قريبًا</translation>
        </message>
        <message>
            <source>same day</source>
            <translation>في اليوم نفسه</translation>
        </message>
        <message>
            <source>not stated</source>
            <translation>غير مذكور</translation>
        </message>
        <message>
            <source>distance</source>
            <translation>بعد</translation>
        </message>
        <message>
            <source>near</source>
            <translation>قرب</translation>
        </message>
        <message>
            <source>intermediate</source>
            <translation>متوسط</translation>
        </message>
        <message>
            <source>bifocal</source>
            <translation>ثنائي البؤرة</translation>
        </message>
        <message>
            <source>distance and near</source>
            <translation>بعد وقرب</translation>
        </message>
        <message>
            <source>fits</source>
            <translation>مناسب</translation>
        </message>
        <message>
            <source>fits with caution</source>
            <translation>مناسب مع تحفظ</translation>
        </message>
        <message>
            <source>on trial</source>
            <translation>قيد التجربة</translation>
        </message>
        <message>
            <source>outside limit</source>
            <translation>خارج الحد</translation>
        </message>
        <message>
            <source>shown only</source>
            <translation>للعرض فقط</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>لم يُقَس</translation>
        </message>
        <message>
            <source>ready-made</source>
            <translation>جاهزة</translation>
        </message>
        <message>
            <source>lens</source>
            <translation>عدسة</translation>
        </message>
        <message>
            <source>frame</source>
            <translation>إطار</translation>
        </message>
        <message>
            <source>other</source>
            <translation>أخرى</translation>
        </message>
        <message>
            <source>%1 in</source>
            <translation>%1 للداخل</translation>
        </message>
        <message>
            <source>%1 out</source>
            <translation>%1 للخارج</translation>
        </message>
        <message>
            <source>no bin</source>
            <translation>دون صندوق</translation>
        </message>
        <message>
            <source>%1 bin %2</source>
            <translation>%1 صندوق %2</translation>
        </message>
        <message>
            <source>RIGHT %1 bin %2</source>
            <translation>اليمنى %1 صندوق %2</translation>
        </message>
        <message>
            <source>LEFT %1 bin %2</source>
            <translation>اليسرى %1 صندوق %2</translation>
        </message>
        <message>
            <source>frame %1 bin %2</source>
            <translation>إطار %1 صندوق %2</translation>
        </message>
    </context>
</TS>
