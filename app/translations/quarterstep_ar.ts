<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar" sourcelanguage="en">
<context>
    <name>BringIn</name>
    <message>
        <source>kept, not used</source>
        <translation>يُحفظ ولا يُستعمل</translation>
    </message>
    <message>
        <source>Code of the person</source>
        <translation>رمز الشخص</translation>
    </message>
    <message>
        <source>Right eye, all in one cell</source>
        <translation>العين اليمنى، كلها في خلية واحدة</translation>
    </message>
    <message>
        <source>Right eye: sphere</source>
        <translation>العين اليمنى: الكرة</translation>
    </message>
    <message>
        <source>Right eye: cylinder</source>
        <translation>العين اليمنى: الأسطوانة</translation>
    </message>
    <message>
        <source>Right eye: axis</source>
        <translation>العين اليمنى: المحور</translation>
    </message>
    <message>
        <source>Right eye: prism</source>
        <translation>العين اليمنى: المنشور</translation>
    </message>
    <message>
        <source>Right eye: base of the prism</source>
        <translation>العين اليمنى: قاعدة المنشور</translation>
    </message>
    <message>
        <source>Left eye, all in one cell</source>
        <translation>العين اليسرى، كلها في خلية واحدة</translation>
    </message>
    <message>
        <source>Left eye: sphere</source>
        <translation>العين اليسرى: الكرة</translation>
    </message>
    <message>
        <source>Left eye: cylinder</source>
        <translation>العين اليسرى: الأسطوانة</translation>
    </message>
    <message>
        <source>Left eye: axis</source>
        <translation>العين اليسرى: المحور</translation>
    </message>
    <message>
        <source>Left eye: prism</source>
        <translation>العين اليسرى: المنشور</translation>
    </message>
    <message>
        <source>Left eye: base of the prism</source>
        <translation>العين اليسرى: قاعدة المنشور</translation>
    </message>
    <message>
        <source>Age in years</source>
        <translation>العمر بالسنوات</translation>
    </message>
    <message>
        <source>Addition of both eyes</source>
        <translation>إضافة العينين</translation>
    </message>
    <message>
        <source>Right eye: addition</source>
        <translation>العين اليمنى: الإضافة</translation>
    </message>
    <message>
        <source>Left eye: addition</source>
        <translation>العين اليسرى: الإضافة</translation>
    </message>
    <message>
        <source>PD, mm</source>
        <translation>PD، ‏mm</translation>
    </message>
    <message>
        <source>Right eye: PD, mm</source>
        <translation>العين اليمنى: PD، ‏mm</translation>
    </message>
    <message>
        <source>Left eye: PD, mm</source>
        <translation>العين اليسرى: PD، ‏mm</translation>
    </message>
    <message>
        <source>Near PD, mm</source>
        <translation>PD للقرب، mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>واصف النظارة</translation>
    </message>
    <message>
        <source>Day it was written</source>
        <translation>يوم كتابتها</translation>
    </message>
</context>
<context>
    <name>ChartData</name>
    <message>
        <source>%1 of %2 at odds, %3</source>
        <translation>يتعارض %1 من %2، %3</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>عمليات تسليم قُيّمت</translation>
    </message>
    <message>
        <source>pair and record at odds</source>
        <translation>النظارة والسجل متعارضان</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>لم يُقيَّم أي تسليم بعد.</translation>
    </message>
    <message>
        <source>mismatches in order</source>
        <translation>حالات عدم التطابق بالترتيب</translation>
    </message>
    <message>
        <source>good hand-overs before it</source>
        <translation>عمليات تسليم سليمة قبلها</translation>
    </message>
    <message>
        <source>%1 good hand-overs before it</source>
        <translation>عمليات تسليم سليمة قبلها: %1</translation>
    </message>
    <message>
        <source>weeks in order</source>
        <translation>الأسابيع بالترتيب</translation>
    </message>
</context>
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
    <message>
        <source>Another program is writing in the ledger. Trying again; Escape gives up. Nothing is lost.</source>
        <translation>برنامج آخر يكتب في السجل. تُعاد المحاولة؛ Escape للتخلي. لم يُفقد شيء.</translation>
    </message>
</context>
<context>
    <name>DeskOptions</name>
    <message>
        <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
        <translation>يطابق وصفات النظارات النهائية مع مخزون من النظارات الجاهزة والعدسات.</translation>
    </message>
    <message>
        <source>light, dark or sun (black on white, large)</source>
        <translation>light أو dark أو sun (أسود على أبيض، بحروف كبيرة)</translation>
    </message>
    <message>
        <source>mirrors the window; prescriptions stay left-to-right</source>
        <translation>يعكس النافذة؛ وتبقى الوصفات من اليسار إلى اليمين</translation>
    </message>
    <message>
        <source>language of the window, for example ar</source>
        <translation>لغة النافذة، مثلًا ar</translation>
    </message>
    <message>
        <source>paints the window into a PNG file and leaves</source>
        <translation>يرسم النافذة في ملف PNG ثم يخرج</translation>
    </message>
    <message>
        <source>size of the window in pixels, for example 1366x768</source>
        <translation>قياس النافذة بالبكسل، مثلًا 1366x768</translation>
    </message>
    <message>
        <source>loads this person of people.csv at the start</source>
        <translation>يحمّل هذا الشخص من people.csv عند البدء</translation>
    </message>
    <message>
        <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
        <translation>مجلد المخيم الذي يُفتح (stock.yaml و rules.yaml و ledger.sqlite)</translation>
    </message>
    <message>
        <source>--size %1 is not a size; write for example 1366x768</source>
        <translation>‏--size %1 ليس قياسًا؛ اكتب مثلًا 1366x768</translation>
    </message>
    <message>
        <source>--theme %1 is not known; write light, dark or sun</source>
        <translation>‏--theme %1 غير معروف؛ اكتب light أو dark أو sun</translation>
    </message>
    <message>
        <source>one camp folder at a time, not %1</source>
        <translation>مجلد مخيم واحد في كل مرة، لا %1</translation>
    </message>
    <message>
        <source>no readable person %1 in people.csv</source>
        <translation>لا يوجد في people.csv شخص مقروء برمز %1</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>تتعذر كتابة %1</translation>
    </message>
    <message>
        <source>chooses this line of the stock at the start</source>
        <translation>يختار هذا الصنف من المخزون عند البدء</translation>
    </message>
    <message>
        <source>no line %1 in this stock</source>
        <translation>لا يوجد صنف %1 في هذا المخزون</translation>
    </message>
    <message>
        <source>--text-scale %1 is not from 100 to 200</source>
        <translation>⁦--text-scale %1⁩ ليس بين 100 و200</translation>
    </message>
    <message>
        <source>size of the letters in per cent, 100 to 200</source>
        <translation>حجم الحروف بالمئة، من 100 إلى 200</translation>
    </message>
    <message>
        <source>--place %1 is not known; write one of %2</source>
        <translation>⁦--place %1⁩ غير معروف؛ اكتب واحدًا من %2</translation>
    </message>
    <message>
        <source>page to show at the start: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in or send-out</source>
        <translation>الصفحة التي تُعرض عند البدء: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in أو send-out</translation>
    </message>
    <message>
        <source>reads this file of prescriptions on the page bring-in at the start</source>
        <translation>يقرأ ملف الوصفات هذا في الصفحة bring-in عند البدء</translation>
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
    <message>
        <source>Tried on: acceptable</source>
        <translation>جُرّبت: مقبولة</translation>
    </message>
    <message>
        <source>Tried on: outside limit</source>
        <translation>جُرّبت: خارج الحد</translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>whole degrees up to 180</source>
        <translation>درجات صحيحة حتى 180</translation>
    </message>
    <message>
        <source>quarters of a dioptre up to 6.75</source>
        <translation>أرباع ديوبتر حتى 6.75</translation>
    </message>
    <message>
        <source>years up to 120</source>
        <translation>سنوات حتى 120</translation>
    </message>
    <message>
        <source>millimetres, or right and left as 31/30.5</source>
        <translation>مليمترات، أو اليمنى واليسرى هكذا 31/30.5</translation>
    </message>
    <message>
        <source>quarters of a dioptre, plus</source>
        <translation>أرباع ديوبتر، موجب</translation>
    </message>
    <message>
        <source>a sign first, then quarters of a dioptre, the axis up to 180</source>
        <translation>الإشارة أولًا، ثم أرباع ديوبتر، والمحور حتى 180</translation>
    </message>
    <message>
        <source>“%1” was not taken: %2</source>
        <translation>لم يُقبل “%1”: %2</translation>
    </message>
</context>
<context>
    <name>PackingCurve</name>
    <message>
        <source>%1 % served for %2</source>
        <translation>يُخدم %1 % مقابل %2</translation>
    </message>
    <message>
        <source>money spent</source>
        <translation>المال المنفَق</translation>
    </message>
    <message>
        <source>money spent, %1</source>
        <translation>المال المنفَق، %1</translation>
    </message>
    <message>
        <source>share of needs served</source>
        <translation>نسبة الحاجات المخدومة</translation>
    </message>
    <message>
        <source>Plan first: the curve comes with it.</source>
        <translation>خطط أولًا: يأتي المنحنى مع الخطة.</translation>
    </message>
    <message>
        <source>the knee</source>
        <translation>نقطة الانعطاف</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>هذه الخطة</translation>
    </message>
</context>
<context>
    <name>PackingRows</name>
    <message>
        <source>Pack</source>
        <translation>العبوة</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>العبوات</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>القطع</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>الكلفة</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>الغرامات</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>السبب</translation>
    </message>
    <message>
        <source>without it %1 fewer served</source>
        <translation>دونها يُخدم أقل بمقدار %1</translation>
    </message>
    <message>
        <source>a reserve</source>
        <translation>احتياطي</translation>
    </message>
    <message>
        <source>nothing else for %1</source>
        <translation>لا شيء غيرها لـ %1</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>مناسب %1</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>none on hand</source>
        <translation>لا شيء موجود</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>الصندوق</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>الخانة</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>الصنف</translation>
    </message>
    <message>
        <source>Of these bought</source>
        <translation>منها مشترى</translation>
    </message>
    <message>
        <source>new</source>
        <translation>جديد</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>الطريقة</translation>
    </message>
    <message>
        <source>Served</source>
        <translation>المخدومون</translation>
    </message>
    <message>
        <source>First come</source>
        <translation>بأسبقية الحضور</translation>
    </message>
    <message>
        <source>Spends</source>
        <translation>الإنفاق</translation>
    </message>
    <message>
        <source>what would do has run out by then</source>
        <translation>ما يفي بالحاجة يكون قد نفد حينئذ</translation>
    </message>
    <message>
        <source>no such power on hand or on offer</source>
        <translation>لا قوة كهذه في الموجود ولا في المعروض</translation>
    </message>
    <message>
        <source>nothing on offer keeps the limit: %1</source>
        <translation>لا شيء معروض يحفظ الحد: %1</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>من</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>بلا نظارة</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>من أصل</translation>
    </message>
    <message>
        <source>%1, children</source>
        <translation>‏%1، أطفال</translation>
    </message>
    <message>
        <source>%1, adults</source>
        <translation>‏%1، بالغون</translation>
    </message>
    <message>
        <source>Days in a hundred</source>
        <translation>أيام من كل مئة</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>عند الشخص</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>لِمَ لا</translation>
    </message>
    <message>
        <source>others do as well for the money</source>
        <translation>غيره يفي بالقدر نفسه مقابل المال</translation>
    </message>
    <message>
        <source>nobody of this demand needs it</source>
        <translation>لا أحد من هذا الاحتياج يحتاج إليه</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>المنفَق</translation>
    </message>
    <message>
        <source>Served, planned for</source>
        <translation>المخدومون، بحسب التخطيط</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>ملاحظة</translation>
    </message>
    <message>
        <source>the curve bends here</source>
        <translation>ينعطف المنحنى هنا</translation>
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
    <message>
        <source>Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>العين اليسرى: الكرة والأسطوانة (ديوبتر) والمحور (درجات)؛ العلامة = تأخذ قيم العين اليمنى. السهمان يغيّران الكرة بمقدار 0.25، ومفتاحا الصفحة بمقدار 1.00</translation>
    </message>
    <message>
        <source>Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5</source>
        <translation>المسافة بين الحدقتين عند النظر بعيدًا، مليمتر؛ أو يمين الأنف ويساره: 31/30.5</translation>
    </message>
    <message>
        <source>Objective, R</source>
        <translation>الموضوعية، اليمنى</translation>
    </message>
    <message>
        <source>Right eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>العين اليمنى: قراءة الجهاز، ديوبتر؛ عدة قراءات تفصلها العلامة ; يؤخذ متوسطها ويُذكر تشتتها</translation>
    </message>
    <message>
        <source>Objective, L</source>
        <translation>الموضوعية، اليسرى</translation>
    </message>
    <message>
        <source>Left eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>العين اليسرى: قراءة الجهاز، ديوبتر؛ عدة قراءات تفصلها العلامة ; يؤخذ متوسطها ويُذكر تشتتها</translation>
    </message>
    <message>
        <source>Own pair, R</source>
        <translation>نظارته الحالية، اليمنى</translation>
    </message>
    <message>
        <source>Right eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>العين اليمنى: قوة النظارة الملبوسة الآن، مقروءة بمقياس العدسات، ديوبتر</translation>
    </message>
    <message>
        <source>Own pair, L</source>
        <translation>نظارته الحالية، اليسرى</translation>
    </message>
    <message>
        <source>Left eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>العين اليسرى: قوة النظارة الملبوسة الآن، مقروءة بمقياس العدسات، ديوبتر</translation>
    </message>
    <message>
        <source>Pinhole, R</source>
        <translation>الثقب، اليمنى</translation>
    </message>
    <message>
        <source>Right eye: acuity through a pinhole, for example 6/9</source>
        <translation>العين اليمنى: حدة الإبصار عبر الثقب، مثل 6/9</translation>
    </message>
    <message>
        <source>Pinhole, L</source>
        <translation>الثقب، اليسرى</translation>
    </message>
    <message>
        <source>Left eye: acuity through a pinhole, for example 6/9</source>
        <translation>العين اليسرى: حدة الإبصار عبر الثقب، مثل 6/9</translation>
    </message>
    <message>
        <source>With own, R</source>
        <translation>بنظارته، اليمنى</translation>
    </message>
    <message>
        <source>Right eye: acuity with the pair worn now, for example 6/12</source>
        <translation>العين اليمنى: حدة الإبصار بالنظارة الملبوسة الآن، مثل 6/12</translation>
    </message>
    <message>
        <source>With own, L</source>
        <translation>بنظارته، اليسرى</translation>
    </message>
    <message>
        <source>Left eye: acuity with the pair worn now, for example 6/12</source>
        <translation>العين اليسرى: حدة الإبصار بالنظارة الملبوسة الآن، مثل 6/12</translation>
    </message>
    <message>
        <source>Near, bare</source>
        <translation>القرب، دون نظارة</translation>
    </message>
    <message>
        <source>Smallest print read without spectacles, for example N12</source>
        <translation>أصغر خط يُقرأ دون نظارة، مثل N12</translation>
    </message>
    <message>
        <source>Near, best</source>
        <translation>القرب، الأفضل</translation>
    </message>
    <message>
        <source>Smallest print read with this prescription, for example N6</source>
        <translation>أصغر خط يُقرأ بهذه الوصفة، مثل N6</translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation>مسافة القمة</translation>
    </message>
    <message>
        <source>Distance from the trial lens to the eye, millimetres; needed above 4.00 D</source>
        <translation>المسافة من عدسة التجربة إلى العين، مليمتر؛ لازمة فوق 4.00 D</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>مسافة العمل</translation>
    </message>
    <message>
        <source>Distance of near work from the spectacles, millimetres; 400 when empty</source>
        <translation>مسافة العمل القريب من النظارة، مليمتر؛ 400 إذا تُركت فارغة</translation>
    </message>
    <message>
        <source>Complaints</source>
        <translation>الشكاوى</translation>
    </message>
    <message>
        <source>What the person complains of, in a few words</source>
        <translation>مم يشكو الشخص، في كلمات قليلة</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>ولي الأمر</translation>
    </message>
    <message>
        <source>Who was told about a child’s prescription</source>
        <translation>من أُبلغ بوصفة الطفل</translation>
    </message>
    <message>
        <source>Right eye: %1</source>
        <translation>العين اليمنى: %1</translation>
    </message>
    <message>
        <source>Left eye: %1</source>
        <translation>العين اليسرى: %1</translation>
    </message>
</context>
<context>
    <name>ShareBars</name>
    <message>
        <source>Right: mean sphere</source>
        <translation>اليمنى: الكرة المتوسطة</translation>
    </message>
    <message>
        <source>Left: mean sphere</source>
        <translation>اليسرى: الكرة المتوسطة</translation>
    </message>
    <message>
        <source>Right: cylinder</source>
        <translation>اليمنى: الأسطوانة</translation>
    </message>
    <message>
        <source>Left: cylinder</source>
        <translation>اليسرى: الأسطوانة</translation>
    </message>
    <message>
        <source>Right: strain</source>
        <translation>اليمنى: إجهاد العين</translation>
    </message>
    <message>
        <source>Left: strain</source>
        <translation>اليسرى: إجهاد العين</translation>
    </message>
    <message>
        <source>Right, near: mean sphere</source>
        <translation>اليمنى، قرب: الكرة المتوسطة</translation>
    </message>
    <message>
        <source>Left, near: mean sphere</source>
        <translation>اليسرى، قرب: الكرة المتوسطة</translation>
    </message>
    <message>
        <source>Right, near: cylinder</source>
        <translation>اليمنى، قرب: الأسطوانة</translation>
    </message>
    <message>
        <source>Left, near: cylinder</source>
        <translation>اليسرى، قرب: الأسطوانة</translation>
    </message>
    <message>
        <source>the eye makes up for %1 D</source>
        <translation>تعوّض العين %1 D</translation>
    </message>
    <message>
        <source>error %1 D</source>
        <translation>الخطأ %1 D</translation>
    </message>
    <message>
        <source>sight lost, logMAR over the eyes</source>
        <translation>الفقد في الإبصار، logMAR للعينين</translation>
    </message>
    <message>
        <source>part of the limit used up</source>
        <translation>الجزء المستنفَد من الحد</translation>
    </message>
    <message>
        <source>%1 of %2 %3; %4</source>
        <translation>‏%1 من %2 %3؛ %4</translation>
    </message>
    <message>
        <source>No criterion with a limit could be judged.</source>
        <translation>لم يمكن تقييم أي معيار له حد.</translation>
    </message>
    <message>
        <source>of 100 hand-overs judged</source>
        <translation>من 100 عملية تسليم قُيّمت</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>لم يُقيَّم أي تسليم بعد.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>‏%1 من %2</translation>
    </message>
    <message>
        <source>Judged again</source>
        <translation>أُعيد تقييمه</translation>
    </message>
    <message>
        <source>Pair and record agree</source>
        <translation>النظارة والسجل متفقان</translation>
    </message>
    <message>
        <source>adds</source>
        <translation>يزيد</translation>
    </message>
    <message>
        <source>takes away</source>
        <translation>ينقص</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>داخل الحد</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>خارج الحد</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>الكل</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>اليمنى: %1</translation>
    </message>
    <message>
        <source>Left: %1</source>
        <translation>اليسرى: %1</translation>
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
        <source>%1: not refracted, not judged</source>
        <translation>‏%1: لم يُقَس انكساره ولم يُقيَّم</translation>
    </message>
    <message>
        <source>no power does the same at %1 mm</source>
        <translation>لا قوة تؤدي الأثر نفسه عند %1 mm</translation>
    </message>
    <message>
        <source>at %1 mm: %2</source>
        <translation>عند %1 mm: %2</translation>
    </message>
    <message>
        <source>%1: not read: %2</source>
        <translation>‏%1: لم يُقرأ: %2</translation>
    </message>
    <message>
        <source>%1: no number</source>
        <translation>‏%1: لا رقم له</translation>
    </message>
    <message>
        <source>needs judged     %1</source>
        <translation>حاجات قُيّمت       %1</translation>
    </message>
    <message>
        <source>served           %1</source>
        <translation>خُدم              %1</translation>
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
        <translation>صفوف لم تُقرأ     %1</translation>
    </message>
    <message>
        <source>share served     %1 %</source>
        <translation>نسبة من خُدم      %1 %</translation>
    </message>
    <message>
        <source>second pair held back: somebody waits without any</source>
        <translation>أُرجئت النظارة الثانية: هناك من ينتظر دون أي نظارة</translation>
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
        <translation>مُرجأ %1</translation>
    </message>
    <message>
        <source>ran out: %1</source>
        <translation>نفد: %1</translation>
    </message>
    <message>
        <source>on hand %1 before, %2 after</source>
        <translation>الموجود %1 قبلًا، %2 بعدًا</translation>
    </message>
    <message>
        <source>dry run: nothing was written</source>
        <translation>تشغيل تجريبي: لم يُكتب شيء</translation>
    </message>
    <message>
        <source>prescription table (CSV); - reads standard input</source>
        <translation>جدول الوصفات (CSV)؛ والعلامة - تقرأ الدخل القياسي</translation>
    </message>
    <message>
        <source>one eye each, as written; - reads lines of standard input</source>
        <translation>عين واحدة في كل نص كما كُتبت؛ والعلامة - تقرأ أسطر الدخل القياسي</translation>
    </message>
    <message>
        <source>Quarterstep finds which stocked spectacles serve a finished prescription, and how well.</source>
        <translation>يجد Quarterstep أي نظارات المخزون تخدم وصفة منتهية، وإلى أي حد.</translation>
    </message>
    <message>
        <source>Examples:</source>
        <translation>أمثلة:</translation>
    </message>
    <message>
        <source>Verbs:</source>
        <translation>الأفعال:</translation>
    </message>
    <message>
        <source>Ends with 0 when done, 1 when somebody is left without acceptable stock or incomplete, 2 for a slip in the command, 3 for bad data, 4 when something is locked or cannot be reached.</source>
        <translation>ينتهي بالرمز 0 عند التمام، و1 إذا بقي أحد دون مخزون مقبول أو كان ناقصًا، و2 لهفوة في الأمر، و3 لبيانات معيبة، و4 إذا كان شيء مقفلًا أو يتعذر الوصول إليه.</translation>
    </message>
    <message>
        <source>%1; row not read: %2</source>
        <translation>‏%1؛ لم يُقرأ الصف: %2</translation>
    </message>
    <message>
        <source>rows not read %1</source>
        <translation>صفوف لم تُقرأ %1</translation>
    </message>
    <message>
        <source>on hand %1  available %2</source>
        <translation>الموجود %1  المتاح %2</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>الخانة %1</translation>
    </message>
    <message>
        <source>no ledger yet</source>
        <translation>لا سجل بعد</translation>
    </message>
    <message>
        <source>ledger: %1 entries, all in order</source>
        <translation>السجل: عدد القيود %1، كلها على حالها</translation>
    </message>
    <message>
        <source>ledger: %1 entries, not in order</source>
        <translation>السجل: عدد القيود %1، ليست كلها على حالها</translation>
    </message>
    <message>
        <source>the camp folder: stock.yaml, rules.yaml and the ledger</source>
        <translation>مجلد المخيم: stock.yaml و rules.yaml والسجل</translation>
    </message>
    <message>
        <source>a stock file alone, without a ledger</source>
        <translation>ملف مخزون وحده، دون سجل</translation>
    </message>
    <message>
        <source>rules of fit to go with --stock; the usual ones when left out</source>
        <translation>قواعد الملاءمة التي ترافق ⁦--stock⁩؛ والقواعد المعتادة إذا لم تُذكر</translation>
    </message>
    <message>
        <source>answer in JSON</source>
        <translation>الجواب بصيغة JSON</translation>
    </message>
    <message>
        <source>say what would be done and write nothing</source>
        <translation>يذكر ما كان سيُفعل ولا يكتب شيئًا</translation>
    </message>
    <message>
        <source>leave rows with errors out and name them</source>
        <translation>يترك الصفوف التي فيها أخطاء ويذكرها</translation>
    </message>
    <message>
        <source>distance acuity of the right eye with this pair</source>
        <translation>حدة إبصار العين اليمنى للبعد بهذه النظارة</translation>
    </message>
    <message>
        <source>distance acuity of the left eye with this pair</source>
        <translation>حدة إبصار العين اليسرى للبعد بهذه النظارة</translation>
    </message>
    <message>
        <source>near acuity with this pair, as N6</source>
        <translation>حدة إبصار القرب بهذه النظارة، مثل N6</translation>
    </message>
    <message>
        <source>what was checked with this pair: power,fit,instructions</source>
        <translation>ما فُحص بهذه النظارة: power,fit,instructions</translation>
    </message>
    <message>
        <source>check every entry of the ledger and end with 3 if one is bad</source>
        <translation>يفحص كل قيد في السجل وينتهي بالرمز 3 إذا كان أحدها معيبًا</translation>
    </message>
    <message>
        <source>also at another vertex distance, in mm</source>
        <translation>أيضًا عند مسافة قمة أخرى، بوحدة mm</translation>
    </message>
    <message>
        <source>the texts are acuities, not powers</source>
        <translation>النصوص حدّات إبصار لا قوى</translation>
    </message>
    <message>
        <source>which stocked pair serves each person, and how well</source>
        <translation>أي نظارة من المخزون تخدم كل شخص، وإلى أي حد</translation>
    </message>
    <message>
        <source>hand over: the best acceptable pair to each person in order, or one picked pair</source>
        <translation>تسليم: أفضل نظارة مقبولة لكل شخص بالترتيب، أو نظارة واحدة مختارة</translation>
    </message>
    <message>
        <source>what is in the box and what the ledger says</source>
        <translation>ما في الصندوق وما يقوله السجل</translation>
    </message>
    <message>
        <source>how many of a table the stock serves, and why not the others</source>
        <translation>كم شخصًا من الجدول يخدمهم المخزون، ولماذا لا يخدم الآخرين</translation>
    </message>
    <message>
        <source>written powers in both cylinder forms and as power vectors</source>
        <translation>القوى المكتوبة بصيغتي الأسطوانة وكمتجهات قوة</translation>
    </message>
    <message>
        <source>handed over as picked: %1</source>
        <translation>سُلّم كما أُخرج: %1</translation>
    </message>
    <message>
        <source>chance %1: repeat the readings</source>
        <translation>الاحتمال %1: كرّر القراءات</translation>
    </message>
    <message>
        <source>chance %1</source>
        <translation>الاحتمال %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Temporary pair. Not for driving.</source>
        <translation>نظارة مؤقتة. ليست للقيادة.</translation>
    </message>
    <message>
        <source>addition %1</source>
        <translation>إضافة %1</translation>
    </message>
    <message>
        <source>  at %1 mm</source>
        <translation>  عند %1 mm</translation>
    </message>
    <message>
        <source>centre %1 mm in and %2 mm up</source>
        <translation>المركز %1 mm للداخل و%2 mm إلى أعلى</translation>
    </message>
    <message>
        <source>centre %1 mm in and %2 mm up, or any place along the meridian without power</source>
        <translation>المركز %1 mm للداخل و%2 mm إلى أعلى، أو أي موضع على خط الزوال الذي لا قوة فيه</translation>
    </message>
    <message>
        <source>not by moving the centre: %1 cannot be had from this lens</source>
        <translation>ليس بتحريك المركز: لا يمكن الحصول على %1 من هذه العدسة</translation>
    </message>
    <message>
        <source>not by moving the centre: the lens has no power</source>
        <translation>ليس بتحريك المركز: العدسة بلا قوة</translation>
    </message>
    <message>
        <source>loses, logMAR: %1</source>
        <translation>الفقد، logMAR: %1</translation>
    </message>
    <message>
        <source>prism %1 mm right, %2 mm up: %3</source>
        <translation>المنشور عند %1 mm يمينًا و%2 mm إلى أعلى: %3</translation>
    </message>
    <message>
        <source>together %1</source>
        <translation>معًا %1</translation>
    </message>
    <message>
        <source>along %1: %2</source>
        <translation>على خط الزوال %1: %2</translation>
    </message>
    <message>
        <source>%1 ± %2  %3 (%4)</source>
        <translation>%1 ± %2  %3 (%4)</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>ممارسة شائعة</translation>
    </message>
    <message>
        <source>Starting points that disagree: the addition is found by trial.</source>
        <translation>نقاط انطلاق غير متفقة: الإضافة تُحدَّد بالتجربة.</translation>
    </message>
    <message>
        <source>%1 mm between the boxed centres; each centre %2 mm in</source>
        <translation>‏%1 mm بين مركزي الصندوقين؛ وكل مركز %2 mm للداخل</translation>
    </message>
    <message>
        <source>at %1 mm: PD %2 mm, each centre %3 mm farther in</source>
        <translation>عند %1 mm: ‏PD %2 mm، وكل مركز %3 mm أكثر للداخل</translation>
    </message>
    <message>
        <source>least uncut diameter %1 mm for a round lens, 2 mm for edging included</source>
        <translation>أصغر قطر قبل القص %1 mm لعدسة مستديرة، ومنه 2 mm للقص</translation>
    </message>
    <message>
        <source>none</source>
        <translation>لا شيء</translation>
    </message>
    <message>
        <source>back vertex power %1, front vertex power %2, nominal %3</source>
        <translation>القوة القمية الخلفية %1، القوة القمية الأمامية %2، الاسمية %3</translation>
    </message>
    <message>
        <source>right</source>
        <translation>اليمنى</translation>
    </message>
    <message>
        <source>left</source>
        <translation>اليسرى</translation>
    </message>
    <message>
        <source>%1 %2: mean %3 of %4 readings</source>
        <translation>‏%1 %2: المتوسط %3 من قراءات عددها %4</translation>
    </message>
    <message>
        <source>left out: %1, too far from the others</source>
        <translation>تُرك: %1، بعيد جدًا عن البقية</translation>
    </message>
    <message>
        <source>counted %1, book %2, difference %3</source>
        <translation>المعدود %1، الدفتر %2، الفرق %3</translation>
    </message>
    <message>
        <source>%1 lines counted, %2 as in the book</source>
        <translation>أصناف معدودة %1، منها كما في الدفتر %2</translation>
    </message>
    <message>
        <source>assumed: where no PD was taken, it equals the centres of each pair</source>
        <translation>افتُرض: حيث لم تُقس PD، فهي تساوي مراكز كل نظارة</translation>
    </message>
    <message>
        <source>assumed: objective readings are final, and a prescriber is named</source>
        <translation>افتُرض: القراءات الموضوعية نهائية، وكاتب الوصفة مذكور</translation>
    </message>
    <message>
        <source>assumed: an unrecorded vertex distance is that of the stock</source>
        <translation>افتُرض: مسافة القمة غير المسجلة هي مسافة المخزون</translation>
    </message>
    <message>
        <source>%1 along %2, %3 along %4</source>
        <translation>‏%1 على خط الزوال %2، و%3 على خط الزوال %4</translation>
    </message>
    <message>
        <source>%1 eye: not judged</source>
        <translation>العين %1: لم تُقيَّم</translation>
    </message>
    <message>
        <source>%1 eye</source>
        <translation>العين %1</translation>
    </message>
    <message>
        <source>need</source>
        <translation>الحاجة</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>النظارة</translation>
    </message>
    <message>
        <source>error</source>
        <translation>الخطأ</translation>
    </message>
    <message>
        <source>  M %1, J0 %2, J45 %3, blur strength %4 D; expected loss %5 logMAR (Blendowske, Optom Vis Sci 2015)</source>
        <translation>  ‏M %1، J0 %2، J45 %3، شدة التشوش %4 D؛ الفقد المتوقع %5 logMAR (Blendowske, Optom Vis Sci 2015)</translation>
    </message>
    <message>
        <source>  near portion: M %1, blur strength %2 D</source>
        <translation>  جزء القرب: M %1، شدة التشوش %2 D</translation>
    </message>
    <message>
        <source>  chance that the true blur lies within its limit: %1</source>
        <translation>  احتمال أن يكون التشوش الحقيقي ضمن حده: %1</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>الحد %1</translation>
    </message>
    <message>
        <source>source: %1</source>
        <translation>المصدر: %1</translation>
    </message>
    <message>
        <source>horizontal prism %1, vertical prism %2</source>
        <translation>المنشور الأفقي %1، المنشور العمودي %2</translation>
    </message>
    <message>
        <source>vertical imbalance 10 mm below the centres: %1, of the full correction %2, excess %3</source>
        <translation>الاختلال العمودي على 10 mm تحت المراكز: %1، وللتصحيح الكامل %2، والزيادة %3</translation>
    </message>
    <message>
        <source>clear from %1 cm on</source>
        <translation>واضح ابتداءً من %1 cm</translation>
    </message>
    <message>
        <source>clear from %1 to %2 cm</source>
        <translation>واضح من %1 إلى %2 cm</translation>
    </message>
    <message>
        <source>%1, %2, by the rules %3 (version %4): %5</source>
        <translation>‏%1، %2، بحسب القواعد %3 (الإصدار %4): %5</translation>
    </message>
    <message>
        <source>answer for this person: %1; %2</source>
        <translation>الجواب لهذا الشخص: %1؛ %2</translation>
    </message>
    <message>
        <source>criteria:</source>
        <translation>المعايير:</translation>
    </message>
    <message>
        <source>single change: %1</source>
        <translation>تغيير واحد: %1</translation>
    </message>
    <message>
        <source>no single change would bring it within the limits</source>
        <translation>لا تغيير واحد يجعلها ضمن الحدود</translation>
    </message>
    <message>
        <source>scatter of the refraction from: %1</source>
        <translation>تشتت قياس الانكسار من: %1</translation>
    </message>
    <message>
        <source>note: %1; source: %2</source>
        <translation>ملاحظة: %1؛ المصدر: %2</translation>
    </message>
    <message>
        <source>%1 rows in %2</source>
        <translation>صفوف عددها %1 في %2</translation>
    </message>
    <message>
        <source>%1: name erased %2, reasons and notes blanked %3; %4 entries stay under the code with what was prescribed and given</source>
        <translation>‏%1: أسماء مُحيت %2، أسباب وملاحظات أُفرغت %3؛ تبقى تحت الرمز قيود عددها %4 بما وُصف وما سُلّم</translation>
    </message>
    <message>
        <source>lines and quantities (CSV or YAML), or scanned lines, one a row; - reads standard input</source>
        <translation>أصناف وكميات (CSV أو YAML)، أو أصناف ممسوحة، واحد في كل صف؛ والعلامة - تقرأ الدخل القياسي</translation>
    </message>
    <message>
        <source>Topics of `quarterstep help`:</source>
        <translation>مواضيع ⁦`quarterstep help`⁩:</translation>
    </message>
    <message>
        <source>entries new %1, known already %2, texts forgotten %3</source>
        <translation>قيود جديدة %1، معروفة من قبل %2، نصوص نُسيت %3</translation>
    </message>
    <message>
        <source>%1 sent and not taken in</source>
        <translation>أُرسل ولم يُستلم بعد: %1</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation>الموجود %1، وكان %2</translation>
    </message>
    <message>
        <source>held %1, was %2</source>
        <translation>محجوز %1، وكان %2</translation>
    </message>
    <message>
        <source>in quarantine %1, was %2</source>
        <translation>معزول %1، وكان %2</translation>
    </message>
    <message>
        <source>entry %1: %2, %3</source>
        <translation>القيد %1: %2، %3</translation>
    </message>
    <message>
        <source>nothing to write</source>
        <translation>لا شيء يُكتب</translation>
    </message>
    <message>
        <source>judged by the rules: %1</source>
        <translation>قُيّم بالقواعد: %1</translation>
    </message>
    <message>
        <source>everything, not only the six best groups or what is open</source>
        <translation>كل شيء، لا أفضل ست مجموعات فقط ولا المفتوح فقط</translation>
    </message>
    <message>
        <source>the person, by the camp code</source>
        <translation>الشخص، برمزه في المخيم</translation>
    </message>
    <message>
        <source>why, in your own words: a pair outside a limit, a difference, a loss</source>
        <translation>السبب، بكلماتك: نظارة خارج حد، فرق، فقد</translation>
    </message>
    <message>
        <source>who does it, for the ledger</source>
        <translation>من يقوم بذلك، للسجل</translation>
    </message>
    <message>
        <source>also the prism at a point of the lens, mm from its centre as seen by whoever faces the wearer</source>
        <translation>أيضًا المنشور عند نقطة من العدسة، بوحدة mm من مركزها كما يراها من يقابل لابس النظارة</translation>
    </message>
    <message>
        <source>also as two crossed cylinders</source>
        <translation>أيضًا كأسطوانتين متعامدتين</translation>
    </message>
    <message>
        <source>this pair for this person in full: crosses, every criterion, sources</source>
        <translation>هذه النظارة لهذا الشخص بالتفصيل: الصلبان البصرية، وكل معيار، والمصادر</translation>
    </message>
    <message>
        <source>what the table leaves out is taken as given: centred (PD = centres of each pair), final (readings are final), vertex (that of the stock)</source>
        <translation>ما يغيب عن الجدول يُعدّ معطى: centred (تساوي PD المراكز)، final (القراءات نهائية)، vertex (مسافة المخزون)</translation>
    </message>
    <message>
        <source>with --explain: which of the two stands above the other, and why</source>
        <translation>مع ⁦--explain⁩: أيهما فوق الأخرى، ولماذا</translation>
    </message>
    <message>
        <source>cylinders of the laboratory order: minus (when left out), plus or as-written</source>
        <translation>أسطوانات طلب المختبر: minus (إذا لم يُذكر) أو plus أو as-written</translation>
    </message>
    <message>
        <source>also together with this power: worn and found over it, or crossed</source>
        <translation>أيضًا مع هذه القوة: ملبوسة ووُجدت فوقها، أو متقاطعة</translation>
    </message>
    <message>
        <source>also the power along a meridian</source>
        <translation>أيضًا القوة على امتداد خط زوال</translation>
    </message>
    <message>
        <source>also where to move the centre for a prism, Δ base in and base up (out and down negative)</source>
        <translation>أيضًا إلى أين يُحرَّك المركز من أجل منشور، Δ القاعدة للداخل والقاعدة إلى أعلى (للخارج وإلى أسفل سالب)</translation>
    </message>
    <message>
        <source>also the addition that makes this near power of it</source>
        <translation>أيضًا الإضافة التي تجعلها قوة القرب هذه</translation>
    </message>
    <message>
        <source>also the acuity lost if this were the error left over, by each model</source>
        <translation>أيضًا حدة الإبصار المفقودة لو كان هذا هو الخطأ الباقي، بحسب كل نموذج</translation>
    </message>
    <message>
        <source>repeated readings of each eye (CSV): summed up, or their scatter goes into the chance shown</source>
        <translation>قراءات متكررة لكل عين (CSV): تُلخَّص، أو يدخل تشتتها في الاحتمال المعروض</translation>
    </message>
    <message>
        <source>with --readings: compared with the final prescriptions of a table</source>
        <translation>مع ⁦--readings⁩: تُقارن بالوصفات النهائية في جدول</translation>
    </message>
    <message>
        <source>instead of texts: near additions usual at this age, by each model</source>
        <translation>بدل النصوص: إضافات القرب المعتادة في هذا العمر، بحسب كل نموذج</translation>
    </message>
    <message>
        <source>near additions from a measured amplitude of accommodation</source>
        <translation>إضافات القرب من سعة مطابقة مقيسة</translation>
    </message>
    <message>
        <source>working distance from the spectacle plane; 400 when left out</source>
        <translation>مسافة العمل من مستوى النظارة؛ 400 إذا لم تُذكر</translation>
    </message>
    <message>
        <source>instead of texts: centration of a frame, boxed sizes in mm</source>
        <translation>بدل النصوص: تمركز إطار، بمقاسات الصندوق بوحدة mm</translation>
    </message>
    <message>
        <source>instead of texts: vertex powers of a thick lens</source>
        <translation>بدل النصوص: القوى القمية لعدسة سميكة</translation>
    </message>
    <message>
        <source>tolerance set; ansi-z80.1-2015 when left out</source>
        <translation>مجموعة التفاوتات؛ ansi-z80.1-2015 إذا لم تُذكر</translation>
    </message>
    <message>
        <source>tolerance sets of your own (YAML)</source>
        <translation>مجموعات تفاوتات خاصة بك (YAML)</translation>
    </message>
    <message>
        <source>one line of the stock</source>
        <translation>صنف واحد من المخزون</translation>
    </message>
    <message>
        <source>how many pieces of --line; 1 when left out</source>
        <translation>عدد القطع من ⁦--line⁩؛ و1 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>supplier, donor or site it comes from</source>
        <translation>المورّد أو المتبرع أو الموقع الذي تأتي منه</translation>
    </message>
    <message>
        <source>the site it goes to</source>
        <translation>الموقع الذي تذهب إليه</translation>
    </message>
    <message>
        <source>the entry with which the other site sent it</source>
        <translation>القيد الذي أرسلها به الموقع الآخر</translation>
    </message>
    <message>
        <source>a remark to keep with the entry</source>
        <translation>ملاحظة تُحفظ مع القيد</translation>
    </message>
    <message>
        <source>into quarantine, or out of it</source>
        <translation>إلى العزل، أو منه</translation>
    </message>
    <message>
        <source>of the pieces held</source>
        <translation>من القطع المحجوزة</translation>
    </message>
    <message>
        <source>returned, cleaned and read: straight back to stock</source>
        <translation>أُعيدت ونُظّفت وقُرئت: مباشرة إلى المخزون</translation>
    </message>
    <message>
        <source>a sheet for this bin alone</source>
        <translation>ورقة لهذه الخانة وحدها</translation>
    </message>
    <message>
        <source>who counted</source>
        <translation>من عدّ</translation>
    </message>
    <message>
        <source>the second person of a count</source>
        <translation>الشخص الثاني في العدّ</translation>
    </message>
    <message>
        <source>damaged, missing, stolen, found, miscounted, off-label, mislabelled, sample, given-away or recalled</source>
        <translation>العلة: damaged أو missing أو stolen أو found أو miscounted أو off-label أو mislabelled أو sample أو given-away أو recalled</translation>
    </message>
    <message>
        <source>what comes back in an exchange</source>
        <translation>ما يعود في الاستبدال</translation>
    </message>
    <message>
        <source>the entry to take back</source>
        <translation>القيد الذي يُلغى</translation>
    </message>
    <message>
        <source>the order, by its entry</source>
        <translation>الطلب، بقيده</translation>
    </message>
    <message>
        <source>people seen at one camp, for camps of stock; 100 when left out</source>
        <translation>عدد من يُفحصون في مخيم واحد، لحساب المخيمات التي يكفيها المخزون؛ 100 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>a new folder for a copy of the whole camp</source>
        <translation>مجلد جديد لنسخة من المخيم كله</translation>
    </message>
    <message>
        <source>aggregate (counts, small ones hidden), rows (persons by numbers) or full</source>
        <translation>المستوى: aggregate (أعداد، والصغيرة منها مخفية) أو rows (الأشخاص بأرقام) أو full</translation>
    </message>
    <message>
        <source>take counts changed by hand in stock.yaml over into the ledger</source>
        <translation>اعتماد الأعداد التي غُيّرت يدويًا في stock.yaml ونقلها إلى السجل</translation>
    </message>
    <message>
        <source>put the ledger&apos;s counts back into stock.yaml</source>
        <translation>إعادة أعداد السجل إلى stock.yaml</translation>
    </message>
    <message>
        <source>this folder was moved here; the other copy is used no more</source>
        <translation>نُقل هذا المجلد إلى هنا؛ ولم تعد النسخة الأخرى تُستعمل</translation>
    </message>
    <message>
        <source>this folder was copied here and both are used</source>
        <translation>نُسخ هذا المجلد إلى هنا وتُستعمل النسختان</translation>
    </message>
    <message>
        <source>%1 since %2, ordered %3</source>
        <translation>‏%1 منذ %2، طُلب %3</translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation>الإطار المحجوز: %1</translation>
    </message>
    <message>
        <source>remade %1 times</source>
        <translation>مرات إعادة الصنع: %1</translation>
    </message>
    <message>
        <source>orders: %1</source>
        <translation>الطلبات: %1</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>محجوز %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>معزول %1</translation>
    </message>
    <message>
        <source>reorder %1</source>
        <translation>يُطلب من جديد %1</translation>
    </message>
    <message>
        <source>lasts %1 days, %2 camps</source>
        <translation>يكفي أيامًا: %1، ومخيمات: %2</translation>
    </message>
    <message>
        <source>lines out of stock %1, to reorder %2</source>
        <translation>أصناف نفدت %1، تُطلب من جديد %2</translation>
    </message>
    <message>
        <source>within their levels %1</source>
        <translation>ضمن الحدود %1</translation>
    </message>
    <message>
        <source>counted as in the book %1</source>
        <translation>عُدّ كما في الدفتر %1</translation>
    </message>
    <message>
        <source>days with hand-overs %1, hand-overs %2, people seen %3, came back %4; people at a camp %5</source>
        <translation>أيام فيها تسليم %1، عمليات تسليم %2، أشخاص فُحصوا %3، عادوا %4؛ أشخاص في المخيم الواحد %5</translation>
    </message>
    <message>
        <source>held: %1 of %2 for %3, until %4</source>
        <translation>محجوز: %1 من %2 لأجل %3، حتى %4</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>بواسطة %1</translation>
    </message>
    <message>
        <source>keep at least %1, at most %2</source>
        <translation>الحد الأدنى %1، الأعلى %2</translation>
    </message>
    <message>
        <source>file %1, ledger %2</source>
        <translation>الملف %1، السجل %2</translation>
    </message>
    <message>
        <source>%1 counts taken over from the file</source>
        <translation>اعتُمدت من الملف أعداد عددها %1</translation>
    </message>
    <message>
        <source>%1 counts put back to the ledger&apos;s</source>
        <translation>أُعيدت إلى أعداد السجل: %1</translation>
    </message>
    <message>
        <source>the ledger already belongs here</source>
        <translation>السجل تابع لهذا المكان من قبل</translation>
    </message>
    <message>
        <source>a second station: its entries are numbered apart and can be merged; what it hands over must have been transferred to it</source>
        <translation>محطة ثانية: تُرقَّم قيودها على حدة ويمكن دمجها؛ وما تسلّمه يجب أن يكون قد نُقل إليها</translation>
    </message>
    <message>
        <source>the ledger lives here from now on; do not use the other copy any more</source>
        <translation>مكان السجل هنا من الآن فصاعدًا؛ لا تستعمل النسخة الأخرى بعد الآن</translation>
    </message>
    <message>
        <source>%1  %2 → %3: %4; entry %5</source>
        <translation>‏%1  %2 → %3: %4؛ القيد %5</translation>
    </message>
    <message>
        <source>a delivery into the box, by list, by scanning or one line</source>
        <translation>توريد إلى الصندوق، بقائمة أو بالمسح أو صنفًا واحدًا</translation>
    </message>
    <message>
        <source>a blind sheet to count by, or the sheet two persons filled in</source>
        <translation>ورقة عمياء للعدّ، أو الورقة التي ملأها شخصان</translation>
    </message>
    <message>
        <source>out to another site, in from one; alone: what is in the air</source>
        <translation>إلى موقع آخر، أو من موقع إلى هنا؛ ووحده: ما هو في الطريق</translation>
    </message>
    <message>
        <source>erase a person: name, reasons and notes; entries keep the camp code</source>
        <translation>محو شخص: الاسم والأسباب والملاحظات؛ وتحتفظ القيود برمز المخيم</translation>
    </message>
    <message>
        <source>what a focimeter reads against what was ordered, by a tolerance set</source>
        <translation>ما يقرؤه مقياس العدسات مقابل ما طُلب، بمجموعة تفاوتات</translation>
    </message>
    <message>
        <source>this help, or that of one verb or topic</source>
        <translation>هذه المساعدة، أو مساعدة فعل واحد أو موضوع واحد</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>للعرض فقط</translation>
    </message>
    <message>
        <source>passes</source>
        <translation>ضمن الحد</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation>خارج الحد</translation>
    </message>
    <message>
        <source>Within tolerance by %1 (%2 %3)</source>
        <translation>ضمن التفاوت المسموح بحسب %1 (%2 %3)</translation>
    </message>
    <message>
        <source>Out of tolerance by %1 (%2 %3)</source>
        <translation>خارج التفاوت المسموح بحسب %1 (%2 %3)</translation>
    </message>
    <message>
        <source>Figures: %1</source>
        <translation>الأرقام: %1</translation>
    </message>
    <message>
        <source>how a pair is judged: every limit, its source, every flag</source>
        <translation>كيف تُقيَّم النظارة: كل حد ومصدره وكل تنبيه</translation>
    </message>
    <message>
        <source>how powers, prisms and acuities may be written</source>
        <translation>كيف يجوز أن تُكتب القوى والمناشير وحدّة الإبصار</translation>
    </message>
    <message>
        <source>every formula, with range, error and source</source>
        <translation>كل صيغة، مع مداها وخطئها ومصدرها</translation>
    </message>
    <message>
        <source>a focimeter reading against what was ordered</source>
        <translation>قراءة مقياس العدسات مقابل ما طُلب</translation>
    </message>
    <message>
        <source>what is promised about records, and how it is tested</source>
        <translation>ما يُتعهَّد به في شأن السجلات، وكيف يُختبر</translation>
    </message>
    <message>
        <source>files, exit codes and the codes of findings</source>
        <translation>الملفات ورموز الخروج ورموز الملاحظات</translation>
    </message>
    <message>
        <source>prism up to %1</source>
        <translation>المنشور حتى %1</translation>
    </message>
    <message>
        <source>one more piece of these would help:</source>
        <translation>قطعة أخرى من هذه تفيد:</translation>
    </message>
    <message>
        <source>%1: serves %2 more, saves %3 logMAR; wanted by %4, there are %5</source>
        <translation>‏%1: تخدم %2 إضافةً، وتوفر %3 logMAR؛ يريدها %4، والموجود %5</translation>
    </message>
    <message>
        <source>of none</source>
        <translation>من لا شيء</translation>
    </message>
    <message>
        <source>told before</source>
        <translation>أُبلغ به من قبل</translation>
    </message>
    <message>
        <source>no pair: what would do goes to others</source>
        <translation>لا نظارة: ما يصلح يذهب إلى آخرين</translation>
    </message>
    <message>
        <source>no pair: %1</source>
        <translation>لا نظارة: %1</translation>
    </message>
    <message>
        <source>in the line %1, served %2; first come, first served would serve %3</source>
        <translation>في القائمة %1، خُدم %2؛ وبأسبقية الحضور يُخدم %3</translation>
    </message>
    <message>
        <source>expected loss %1 logMAR over all served; first come %2</source>
        <translation>الفقد المتوقع %1 logMAR لكل من خُدموا؛ بأسبقية الحضور %2</translation>
    </message>
    <message>
        <source>chosen: %1</source>
        <translation>المختار: %1</translation>
    </message>
    <message>
        <source>not in the line %1: see `match`</source>
        <translation>ليسوا في القائمة %1: انظر ⁦`match`⁩</translation>
    </message>
    <message>
        <source>%1 %2: %3 of %4, %5 % (95 %: %6 to %7), funnel %8</source>
        <translation>‏%1 %2: ‏%3 من %4، ‏%5 % (95 %: من %6 إلى %7)، القمع %8</translation>
    </message>
    <message>
        <source>g-chart: between two mismatches half the time at most %1 hand-overs; more than %2 in a row is better than this</source>
        <translation>مخطط g: بين حالتي عدم تطابق نصف الوقت %1 من عمليات التسليم على الأكثر؛ وأكثر من %2 متتالية أفضل من ذلك</translation>
    </message>
    <message>
        <source>a p-chart needs camps of %1 hand-overs or more at this share to show that things got better</source>
        <translation>يحتاج مخطط p إلى مخيمات فيها %1 من عمليات التسليم أو أكثر عند هذه النسبة ليُظهر أن الأمور تحسنت</translation>
    </message>
    <message>
        <source>likeliest, %1 of 100: %2; %3</source>
        <translation>الأرجح، %1 من 100: ‏%2؛ %3</translation>
    </message>
    <message>
        <source>entries %1, hand-overs %2, judged again %3, record and pair at odds %4</source>
        <translation>القيود %1، عمليات التسليم %2، أُعيد تقييمها %3، تعارض المسجَّل والنظارة %4</translation>
    </message>
    <message>
        <source>the ledger is empty: nothing to audit</source>
        <translation>السجل فارغ: لا شيء يُراجَع</translation>
    </message>
    <message>
        <source>no slip was looked for: record, pair and witnesses agree</source>
        <translation>لم يُبحث عن هفوة: المسجَّل والنظارة والشواهد متفقة</translation>
    </message>
    <message>
        <source>probability = prior × witnesses × pair, over the sum; witnesses and pair are against what was recorded</source>
        <translation>الاحتمال = المسبق × الشواهد × النظارة، على المجموع؛ والشواهد والنظارة بالنسبة إلى المسجَّل</translation>
    </message>
    <message>
        <source>slips of the record are not testable here: nothing was measured beside it (objective reading, own pair, acuity with the pair)</source>
        <translation>هفوات المسجَّل لا يمكن اختبارها هنا: لم يُقس شيء إلى جانبه (قراءة موضوعية، نظارته الحالية، حدة الإبصار بالنظارة)</translation>
    </message>
    <message>
        <source>handed over today already: nothing is given twice</source>
        <translation>سُلّم اليوم من قبل: لا شيء يُسلَّم مرتين</translation>
    </message>
    <message>
        <source>given before %1</source>
        <translation>سُلّم من قبل %1</translation>
    </message>
    <message>
        <source>  addition: %1 of the pair, %2 needed (shown, not judged)</source>
        <translation>  الإضافة: في النظارة %1، المطلوبة %2 (للعرض لا للتقييم)</translation>
    </message>
    <message>
        <source>%1 names kept beside the entries, %2 of them changed</source>
        <translation>أسماء محفوظة بجانب القيود %1، منها ما تغيّر %2</translation>
    </message>
    <message>
        <source>children</source>
        <translation>الأطفال</translation>
    </message>
    <message>
        <source>adults</source>
        <translation>البالغون</translation>
    </message>
    <message>
        <source>first pairs before second pairs</source>
        <translation>النظارات الأولى قبل الثانية</translation>
    </message>
    <message>
        <source>children before adults</source>
        <translation>الأطفال قبل البالغين</translation>
    </message>
    <message>
        <source>the worst sight without a pair first</source>
        <translation>الأسوأ إبصارًا دون نظارة أولًا</translation>
    </message>
    <message>
        <source>%1 count %2 times</source>
        <translation>‏%1: يُحسب الواحد %2</translation>
    </message>
    <message>
        <source>%1: at least %2 in a hundred of those who wait</source>
        <translation>‏%1: على الأقل %2 في المئة ممن ينتظرون</translation>
    </message>
    <message>
        <source>proved: no plan serves more than %1 (%2)</source>
        <translation>مُثبت: لا خطة تخدم أكثر من %1 ‏(%2)</translation>
    </message>
    <message>
        <source>not proved: no plan serves more than %1, this one %2; gap %3 % (%4)</source>
        <translation>غير مُثبت: لا خطة تخدم أكثر من %1، وهذه %2؛ الفرق %3 % ‏(%4)</translation>
    </message>
    <message>
        <source>what was picked: a ready-made pair, or frame, right lens and left lens; - reads scanned labels from standard input</source>
        <translation>ما أُخرج: نظارة جاهزة، أو إطار وعدسة يمنى وعدسة يسرى؛ والعلامة - تقرأ الملصقات الممسوحة من الدخل القياسي</translation>
    </message>
    <message>
        <source>thresholds and priors of slips of your own (YAML)</source>
        <translation>حدود واحتمالات مسبقة للهفوات خاصة بك (YAML)</translation>
    </message>
    <message>
        <source>one hand-over in full, with the arithmetic of every slip</source>
        <translation>تسليم واحد بالتفصيل، مع حساب كل هفوة</translation>
    </message>
    <message>
        <source>the file to write: CSV (standard output when left out), or for print one that ends in .pdf or .png</source>
        <translation>الملف الذي يُكتب: CSV (والخرج القياسي إذا لم يُذكر)، أو مع print ملف ينتهي بـ .pdf أو .png</translation>
    </message>
    <message>
        <source>the paper as lines of text</source>
        <translation>الورقة كأسطر نص</translation>
    </message>
    <message>
        <source>the printer to print on</source>
        <translation>الطابعة التي يُطبع عليها</translation>
    </message>
    <message>
        <source>language of the paper: en, ar or hi</source>
        <translation>لغة الورقة: en أو ar أو hi</translation>
    </message>
    <message>
        <source>a4, a5, a6, roll-80, roll-58 or label; the usual one when left out</source>
        <translation>‏a4 أو a5 أو a6 أو roll-80 أو roll-58 أو label؛ والمعتاد إذا لم يُذكر</translation>
    </message>
    <message>
        <source>width and height of a label; 63.5x38.1 when left out</source>
        <translation>عرض الملصق وارتفاعه؛ 63.5x38.1 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>large print</source>
        <translation>طباعة بحروف كبيرة</translation>
    </message>
    <message>
        <source>dots an inch of a picture, those of the printer; 300 when left out</source>
        <translation>نقاط الصورة في البوصة، كنقاط الطابعة؛ 300 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>of a quick card: optician, keeper or supervisor</source>
        <translation>للبطاقة السريعة: optician أو keeper أو supervisor</translation>
    </message>
    <message>
        <source>who comes first when not all can be served: children, first-pairs, worst-sight; the first named matters most</source>
        <translation>من يُقدَّم إذا لم يمكن خدمة الجميع: children أو first-pairs أو worst-sight؛ والمذكور أولًا هو الأهم</translation>
    </message>
    <message>
        <source>what one person of a group counts, as children=3; groups: children, adults, distance, near, intermediate, bifocal</source>
        <translation>كم يُحسب الشخص الواحد من فئة، مثل children=3؛ الفئات: children, adults, distance, near, intermediate, bifocal</translation>
    </message>
    <message>
        <source>serve at least this part of a group that waits, as children=80</source>
        <translation>خدمة هذا الجزء على الأقل من فئة تنتظر، مثل children=80</translation>
    </message>
    <message>
        <source>who was told a pair already (CSV: person, purpose, lines); kept</source>
        <translation>من أُبلغ بنظارة من قبل (CSV: ‏person, purpose, lines)؛ يُحفظ له ذلك</translation>
    </message>
    <message>
        <source>also what one more piece of each line would change</source>
        <translation>أيضًا ما تغيّره قطعة أخرى من كل صنف</translation>
    </message>
    <message>
        <source>what a supplier sells (YAML)</source>
        <translation>ما يبيعه المورّد (YAML)</translation>
    </message>
    <message>
        <source>money that may be spent, in the supplier&apos;s currency</source>
        <translation>المال الذي يجوز إنفاقه، بعملة المورّد</translation>
    </message>
    <message>
        <source>most that what is bought may weigh</source>
        <translation>أقصى وزن لما يُشترى</translation>
    </message>
    <message>
        <source>boxes that are carried, what is on hand included</source>
        <translation>الصناديق التي تُحمل، ومنها الموجود</translation>
    </message>
    <message>
        <source>pieces that fit into a box; 60 when left out</source>
        <translation>القطع التي يتسع لها الصندوق؛ 60 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>people who come next; 100 when left out</source>
        <translation>عدد الأشخاص القادمين؛ 100 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>draws planned for; 50 when left out</source>
        <translation>عدد السحوبات التي يُخطط لها؛ 50 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>days to simulate; 200 when left out</source>
        <translation>عدد الأيام التي تُحاكى؛ 200 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>people planned for together; 20 when left out</source>
        <translation>عدد الأشخاص الذين يُخطط لهم معًا؛ 20 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>of what is drawn by lot; 1 when left out</source>
        <translation>بذرة ما يُسحب بالقرعة؛ 1 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>mix with the published mix of a camp, weighing as N people; 30 for fewer than 100, else 0</source>
        <translation>المزج مع المزيج المنشور لمخيم، بوزن N من الأشخاص؛ 30 لأقل من 100، وإلا 0</translation>
    </message>
    <message>
        <source>the packing list by box and bin to write (CSV)</source>
        <translation>قائمة التعبئة بحسب الصندوق والخانة التي تُكتب (CSV)</translation>
    </message>
    <message>
        <source>names of persons (CSV: person,name), kept beside the entries under the camp code</source>
        <translation>أسماء الأشخاص (CSV: ‏person,name)، تُحفظ بجانب القيود تحت رمز المخيم</translation>
    </message>
    <message>
        <source>ask for a PIN from now on: optician, keeper or supervisor</source>
        <translation>طلب رمز PIN من الآن فصاعدًا: optician أو keeper أو supervisor</translation>
    </message>
    <message>
        <source>ask for no PIN any more</source>
        <translation>عدم طلب رمز PIN بعد الآن</translation>
    </message>
    <message>
        <source>read the PIN from this file descriptor; or set QUARTERSTEP_PIN</source>
        <translation>قراءة رمز PIN من واصف الملف هذا؛ أو اضبط QUARTERSTEP_PIN</translation>
    </message>
    <message>
        <source>read the new PIN from this file descriptor; or set QUARTERSTEP_NEW_PIN</source>
        <translation>قراءة رمز PIN الجديد من واصف الملف هذا؛ أو اضبط QUARTERSTEP_NEW_PIN</translation>
    </message>
    <message>
        <source>make a shared ledger in the empty database of this address; with --dry-run the script is printed</source>
        <translation>إنشاء سجل مشترك في قاعدة البيانات الفارغة بهذا العنوان؛ ومع ⁦--dry-run⁩ يُطبع النص البرمجي</translation>
    </message>
    <message>
        <source>move everything to the shared ledger of this address, or to this new file</source>
        <translation>نقل كل شيء إلى السجل المشترك بهذا العنوان، أو إلى هذا الملف الجديد</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>هذه الخطة</translation>
    </message>
    <message>
        <source>greedy, without repairs</source>
        <translation>جشعة، دون إصلاحات</translation>
    </message>
    <message>
        <source>each line by its own demand (newsvendor)</source>
        <translation>كل صنف باحتياجه وحده (newsvendor)</translation>
    </message>
    <message>
        <source>levels by past use</source>
        <translation>الحدود بحسب الاستعمال السابق</translation>
    </message>
    <message>
        <source>what is on hand, nothing bought</source>
        <translation>الموجود، دون شراء شيء</translation>
    </message>
    <message>
        <source>not checked: too few people to plan on one half and check on the other</source>
        <translation>لم يُتحقق منها: الأشخاص أقل من أن يُخطط لنصفهم ويُتحقق على النصف الآخر</translation>
    </message>
    <message>
        <source>checked on people that were not planned for (planned on one half, served the other):</source>
        <translation>جرى التحقق على أشخاص لم يُخطط لهم (خُطط لنصف، وخُدم الآخر):</translation>
    </message>
    <message>
        <source>%1: serves %2 %, first come %3 %, spends %4</source>
        <translation>‏%1: تخدم %2 %، أسبقية الحضور %3 %، الإنفاق %4</translation>
    </message>
    <message>
        <source>nothing on offer serves %1 %: %2</source>
        <translation>لا شيء معروض يخدم %1 %: ‏%2</translation>
    </message>
    <message>
        <source>not bought, since others do as well for the money: %1</source>
        <translation>لم يُشترَ، لأن غيره يفي بالمال نفسه: %1</translation>
    </message>
    <message>
        <source>not bought, since nobody of this demand needs them: %1</source>
        <translation>لم يُشترَ، إذ لا أحد من هذا الاحتياج يحتاج إليه: %1</translation>
    </message>
    <message>
        <source>%1 runs out on %2 days in a hundred, by person %3</source>
        <translation>ينفد %1 في %2 من كل مئة يوم، عند الشخص %3</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>الصندوق %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>جديد</translation>
    </message>
    <message>
        <source>order for the next %1 people:</source>
        <translation>طلب للأشخاص القادمين وعددهم %1:</translation>
    </message>
    <message>
        <source>%1: %2 packs, %3 pieces, %4</source>
        <translation>‏%1: عبوات %2، قطع %3، ‏%4</translation>
    </message>
    <message>
        <source>spend %1 of %2 %3, %4 pieces, %5 kg</source>
        <translation>الإنفاق %1 من %2 ‏%3، قطع %4، ‏%5 kg</translation>
    </message>
    <message>
        <source>the curve bends at %1: %2 % of the draws planned for</source>
        <translation>ينعطف المنحنى عند %1: ‏%2 % من السحوبات التي خُطط لها</translation>
    </message>
    <message>
        <source>PIN of the %1</source>
        <translation>رمز PIN لدور %1</translation>
    </message>
    <message>
        <source>new PIN of the %1</source>
        <translation>رمز PIN الجديد لدور %1</translation>
    </message>
    <message>
        <source>the PIN of the %1 is set</source>
        <translation>ضُبط رمز PIN لدور %1</translation>
    </message>
    <message>
        <source>no PIN is asked of the %1 any more</source>
        <translation>لم يعد رمز PIN يُطلب من دور %1</translation>
    </message>
    <message>
        <source>demand: the ledger, %1 people</source>
        <translation>الاحتياج: السجل، أشخاص %1</translation>
    </message>
    <message>
        <source>left without a pair, %1: %2</source>
        <translation>بقوا دون نظارة، %1: ‏%2</translation>
    </message>
    <message>
        <source>entries without a prescription, not planned for: %1</source>
        <translation>قيود بلا وصفة، لم يُخطط لها: %1</translation>
    </message>
    <message>
        <source>lines whose demand was raised, since they lay empty on some days: %1</source>
        <translation>أصناف رُفع احتياجها لأنها كانت فارغة في بعض الأيام: %1</translation>
    </message>
    <message>
        <source>demand: %1, %2 people</source>
        <translation>الاحتياج: %1، أشخاص %2</translation>
    </message>
    <message>
        <source>mixed with the published mix of a camp, which makes %1 % of it</source>
        <translation>مُزج مع المزيج المنشور لمخيم، وهو يشكل منه %1 %</translation>
    </message>
    <message>
        <source>PDs not taken, drawn from published distributions: %1</source>
        <translation>مسافات PD لم تُقس، سُحبت من توزيعات منشورة: %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>الصفحة %1 من %2</translation>
    </message>
    <message>
        <source>%1 days of %2 people, %3 needs in the line a day (seed %4)</source>
        <translation>أيام %1، في كل منها أشخاص %2، وحاجات في القائمة كل يوم %3 (البذرة %4)</translation>
    </message>
    <message>
        <source>first come         %1 % (%2 to %3 on nine days in ten)</source>
        <translation>أسبقية الحضور      %1 % (من %2 إلى %3 في تسعة أيام من عشرة)</translation>
    </message>
    <message>
        <source>planned again      %1 % (%2 to %3)</source>
        <translation>تخطيط متجدد        %1 % (من %2 إلى %3)</translation>
    </message>
    <message>
        <source>if nothing ran out %1 % (%2 to %3)</source>
        <translation>لو لم ينفد شيء     %1 % (من %2 إلى %3)</translation>
    </message>
    <message>
        <source>with %1 such boxes: %2 %</source>
        <translation>مع صناديق كهذه عددها %1: ‏%2 %</translation>
    </message>
    <message>
        <source>carry %1 for 95 % of what they could serve</source>
        <translation>احمل %1 لبلوغ 95 % مما يمكنها أن تخدمه</translation>
    </message>
    <message>
        <source>no number of such boxes looked at serves 95 % of what they could</source>
        <translation>لا عدد مما نُظر فيه من هذه الصناديق يخدم 95 % مما يمكنها</translation>
    </message>
    <message>
        <source>ledger: %1 entries, the last %2 in order; --check reads them all</source>
        <translation>السجل: القيود %1، وآخر %2 منها سليمة الترتيب؛ يقرؤها ⁦--check⁩ كلها</translation>
    </message>
    <message>
        <source>%1 can be used; add the logins of stations to the group quarterstep_station</source>
        <translation>يمكن استعمال %1؛ أضف حسابات دخول المحطات إلى المجموعة quarterstep_station</translation>
    </message>
    <message>
        <source>%1 entries in %2; the old ledger is not used from here any more</source>
        <translation>القيود %1 في %2؛ لم يعد السجل القديم يُستعمل من هنا</translation>
    </message>
    <message>
        <source>the waiting line: who should get which pair, so that most are served</source>
        <translation>قائمة الانتظار: من يستلم أي نظارة، ليُخدم أكبر عدد</translation>
    </message>
    <message>
        <source>the boxes for the next camp: what to order under a budget, and why</source>
        <translation>صناديق المخيم القادم: ماذا يُطلب ضمن ميزانية، ولماذا</translation>
    </message>
    <message>
        <source>camp days drawn from a demand: who is served, what runs out when</source>
        <translation>أيام مخيم مسحوبة من احتياج: من يُخدم، وماذا ينفد ومتى</translation>
    </message>
    <message>
        <source>every paper that is printed, and how</source>
        <translation>كل ورقة تُطبع، وكيف</translation>
    </message>
    <message>
        <source>the waiting line and the next boxes: what is optimal, bounded, assumed</source>
        <translation>قائمة الانتظار والصناديق القادمة: ما هو أمثل، وما هو محدود، وما هو مفترض</translation>
    </message>
    <message>
        <source>what an audit finds, which slips it can see and which it cannot</source>
        <translation>ما تجده المراجعة، وأي هفوات تراها وأيها لا تراها</translation>
    </message>
    <message>
        <source>of pairs that are equal to a person, the one that others of the table need less</source>
        <translation>من بين نظارات متساوية لشخص ما، التي يحتاج إليها الآخرون في الجدول أقل</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>قريبًا</translation>
    </message>
    <message>
        <source>due</source>
        <translation>حان موعده</translation>
    </message>
    <message>
        <source>late</source>
        <translation>متأخر</translation>
    </message>
    <message>
        <source>met %1, under-met %2, unmet %3; no need %4, another cause %5, not known %6</source>
        <translation>ملبّاة %1، ملبّاة جزئيًا %2، غير ملبّاة %3؛ لا حاجة %4، سبب آخر %5، غير معروف %6</translation>
    </message>
    <message>
        <source>nobody has been seen again yet</source>
        <translation>لم يُعاين أحد من جديد بعد</translation>
    </message>
    <message>
        <source>seen again %1, with the pair %2, %3 % (95 %: %4 to %5)</source>
        <translation>عُوينوا من جديد %1، مع النظارة %2، ‏%3 % (95 %: من %4 إلى %5)</translation>
    </message>
    <message>
        <source>%1  %2: %3, %4, given %5, %6 days ago</source>
        <translation>‏%1  %2: ‏%3، ‏%4، سُلّم %5، قبل أيام %6</translation>
    </message>
    <message>
        <source>nobody is due to be seen again</source>
        <translation>لا أحد حان موعد معاينته من جديد</translation>
    </message>
    <message>
        <source>effective coverage for distance, of %1 persons with a record</source>
        <translation>التغطية الفعالة للبعد، من %1 شخصًا لهم تسجيل</translation>
    </message>
    <message>
        <source>as they came %1</source>
        <translation>كما حضروا %1</translation>
    </message>
    <message>
        <source>as they are now %1</source>
        <translation>كما هم الآن %1</translation>
    </message>
    <message>
        <source>slips of the addition are not testable here (own pair&apos;s addition, near acuity)</source>
        <translation>هفوات الإضافة لا يمكن اختبارها هنا (إضافة نظارته الحالية، حدة القرب)</translation>
    </message>
    <message>
        <source>slips of the PD are not testable here (near PD, card read again)</source>
        <translation>هفوات PD لا يمكن اختبارها هنا (PD القرب، إعادة قراءة البطاقة)</translation>
    </message>
    <message>
        <source>the pair itself was not read again by focimeter</source>
        <translation>النظارة نفسها لم تُعَد قراءتها بمقياس العدسات</translation>
    </message>
    <message>
        <source>plan: read %1 of %2 hand-overs; accept when at most %3 fail</source>
        <translation>الخطة: اقرأ %1 من %2 من عمليات التسليم؛ واقبل إذا أخفق %3 على الأكثر</translation>
    </message>
    <message>
        <source>with %1 % failing a lot is refused %2 times in 100, with %3 % accepted %4 times in 100</source>
        <translation>عند إخفاق %1 % تُرفض الدفعة %2 مرة من 100، وعند إخفاق %3 % تُقبل %4 مرة من 100</translation>
    </message>
    <message>
        <source>failing %  accepted %  of this lot %</source>
        <translation>المخفق %  يُقبل %  من هذه الدفعة %</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>لم تُقرأ</translation>
    </message>
    <message>
        <source>reads as recorded</source>
        <translation>القراءة كما سُجّل</translation>
    </message>
    <message>
        <source>the record does not match the pair</source>
        <translation>المسجَّل لا يطابق النظارة</translation>
    </message>
    <message>
        <source>reads as recorded, outside a limit without a reason</source>
        <translation>القراءة كما سُجّل، خارج أحد الحدود دون سبب</translation>
    </message>
    <message>
        <source>row %1: %2</source>
        <translation>الصف %1: ‏%2</translation>
    </message>
    <message>
        <source>%1 more were read than the plan asks for; they are kept and not counted</source>
        <translation>قُرئ %1 فوق ما تطلبه الخطة؛ يُحفظ ولا يُحسب</translation>
    </message>
    <message>
        <source>%1 of %2: %3 of %4, at most %5 may fail</source>
        <translation>‏%1 من %2: ‏%3 من %4، ويجوز أن يخفق %5 على الأكثر</translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation>لا نتائج بعد</translation>
    </message>
    <message>
        <source>no lot was drawn here yet</source>
        <translation>لم تُسحب هنا دفعة بعد</translation>
    </message>
    <message>
        <source>with the pieces there: %1 in the line, planned %2, first come %3</source>
        <translation>بالقطع الموجودة: في القائمة %1، بالتخطيط %2، بأسبقية الحضور %3</translation>
    </message>
    <message>
        <source>%1: %2 in the line, planned %3, first come %4</source>
        <translation>‏%1: في القائمة %2، بالتخطيط %3، بأسبقية الحضور %4</translation>
    </message>
    <message>
        <source>short: %1, there are %2, wanted by %3; one more serves %4</source>
        <translation>نقص: %1، الموجود %2، يريدها %3؛ وقطعة أخرى تخدم %4</translation>
    </message>
    <message>
        <source>prescriptions written %1</source>
        <translation>وصفات كُتبت %1</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>السطر %1: ‏%2</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>مرفوض</translation>
    </message>
    <message>
        <source>decimals: %1; cylinders: minus %2, plus %3, without a sign %4</source>
        <translation>الفاصلة العشرية: %1؛ الأسطوانات: السالبة %2، الموجبة %3، بلا إشارة %4</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>فاصلة</translation>
    </message>
    <message>
        <source>point</source>
        <translation>نقطة</translation>
    </message>
    <message>
        <source>not understood, kept: %1</source>
        <translation>غير مفهوم، محفوظ: %1</translation>
    </message>
    <message>
        <source>prescriptions taken %1, refused %2</source>
        <translation>وصفات استُلمت %1، رُفضت %2</translation>
    </message>
    <message>
        <source>rules to judge by: school, adult-distance, adult-near, strict, school-guideline or the camp&apos;s own</source>
        <translation>القواعد التي يُقيَّم بها: school أو adult-distance أو adult-near أو strict أو school-guideline أو قواعد المخيم نفسه</translation>
    </message>
    <message>
        <source>the purpose meant: distance, near, intermediate or bifocal</source>
        <translation>الغرض المقصود: distance أو near أو intermediate أو bifocal</translation>
    </message>
    <message>
        <source>the lot it belongs to, or a lot drawn for the bench by its entry</source>
        <translation>الدفعة التي ينتمي إليها، أو دفعة سُحبت لطاولة القياس، بقيدها</translation>
    </message>
    <message>
        <source>how long it is held, or the last day, as 2026-03-01</source>
        <translation>إلى متى يُحجز، أو اليوم الأخير، مثل ⁦2026-03-01⁩</translation>
    </message>
    <message>
        <source>read again afterwards, without the record: cards, pairs by focimeter (CSV)</source>
        <translation>أُعيدت قراءته فيما بعد دون المسجَّل: بطاقات، أو نظارات بمقياس العدسات (CSV)</translation>
    </message>
    <message>
        <source>pairs of a lot that are read; worked out when left out</source>
        <translation>عدد النظارات التي تُقرأ من الدفعة؛ يُحسب إذا لم يُذكر</translation>
    </message>
    <message>
        <source>failures that are allowed among them</source>
        <translation>الإخفاقات المسموح بها بينها</translation>
    </message>
    <message>
        <source>share of failures that is as good as it gets; 5 when left out</source>
        <translation>نسبة الإخفاق التي لا يُنتظر أفضل منها؛ 5 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>share of failures that must not pass; 25 when left out</source>
        <translation>نسبة الإخفاق التي يجب ألا تمر؛ 25 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>largest risk of either mistake, without --sample; 12 when left out</source>
        <translation>أكبر مخاطرة بأي من الخطأين، دون ⁦--sample⁩؛ 12 إذا لم يُذكر</translation>
    </message>
    <message>
        <source>the first day, as 2026-03-01</source>
        <translation>اليوم الأول، مثل ⁦2026-03-01⁩</translation>
    </message>
    <message>
        <source>as on this day, not as of today</source>
        <translation>كما في هذا اليوم لا كما في اليوم الحالي</translation>
    </message>
    <message>
        <source>for the supervisor: every finding, nothing hidden</source>
        <translation>للمشرف: كل ملاحظة، لا شيء مخفي</translation>
    </message>
    <message>
        <source>when seen again: worn, with-them, at-home, broken, lost, stopped or not-found</source>
        <translation>عند المعاينة من جديد: worn أو with-them أو at-home أو broken أو lost أو stopped أو not-found</translation>
    </message>
    <message>
        <source>coverage: also with the pieces that are there, first come and planned</source>
        <translation>التغطية: أيضًا بالقطع الموجودة، بأسبقية الحضور وبالتخطيط</translation>
    </message>
    <message>
        <source>the format: see `quarterstep help exchange`</source>
        <translation>الصيغة: انظر ⁦`quarterstep help exchange`⁩</translation>
    </message>
    <message>
        <source>what the columns of another program&apos;s table hold, with --as table</source>
        <translation>ما في أعمدة جدول برنامج آخر، مع ⁦--as table⁩</translation>
    </message>
    <message>
        <source>order of %1 written</source>
        <translation>كُتب طلب %1</translation>
    </message>
    <message>
        <source>on the draws planned for: %1 %, no order serves more than %2 % (gap %3 %); on offer and on hand could serve %4 % at most</source>
        <translation>على السحوبات التي خُطط لها: %1 %، لا طلب يخدم أكثر من %2 % (الفرق %3 %)؛ والمعروض مع الموجود يخدم %4 % على الأكثر</translation>
    </message>
    <message>
        <source>one thing that happened: returned, exchanged, written-off, held, quarantined, released, not-needed, declined, incomplete, adjusted, referred, followed-up, entered-in-error</source>
        <translation>أمر واحد جرى: returned أو exchanged أو written-off أو held أو quarantined أو released أو not-needed أو declined أو incomplete أو adjusted أو referred أو followed-up أو entered-in-error</translation>
    </message>
    <message>
        <source>custom spectacles: ordered, arrived, checked, delivered, remade, not-collected; alone: the open orders; file: the order for a laboratory</source>
        <translation>نظارات خاصة: ordered أو arrived أو checked أو delivered أو remade أو not-collected؛ ووحده: الطلبات المفتوحة؛ file: طلب إلى مختبر</translation>
    </message>
    <message>
        <source>merge the ledger of another camp or station into this one; names of persons; or prescriptions from other programs and instruments</source>
        <translation>دمج سجل مخيم آخر أو محطة أخرى في هذا السجل؛ أو أسماء أشخاص؛ أو وصفات من برامج وأجهزة أخرى</translation>
    </message>
    <message>
        <source>a copy of the camp folder, a table at one of three levels of privacy, or prescriptions in an open standard</source>
        <translation>نسخة من مجلد المخيم، أو جدول بأحد ثلاثة مستويات من الخصوصية، أو وصفات بمعيار مفتوح</translation>
    </message>
    <message>
        <source>every hand-over judged again: where record and pair are at odds, and why; draw, sheet, read, lots: a lot for the bench; due: who is to be seen again; report</source>
        <translation>إعادة تقييم كل تسليم: أين يتعارض المسجَّل والنظارة، ولماذا؛ draw و sheet و read و lots: دفعة لطاولة القياس؛ due: من حان موعد معاينته من جديد؛ report</translation>
    </message>
    <message>
        <source>papers: note, letter, lab-order, collection, guardian-note, teacher-note, label, bin-label, packing-list, count-sheet, audit-sheet, quick-card, audit-report</source>
        <translation>الأوراق: note, letter, lab-order, collection, guardian-note, teacher-note, label, bin-label, packing-list, count-sheet, audit-sheet, quick-card, audit-report</translation>
    </message>
    <message>
        <source>the first day of the optician, the keeper, the supervisor</source>
        <translation>اليوم الأول لفني البصريات وأمين المخزن والمشرف</translation>
    </message>
    <message>
        <source>the window: beginning, drafts, settings, languages</source>
        <translation>النافذة: البدء والمسودات والإعدادات واللغات</translation>
    </message>
    <message>
        <source>powers as vectors, in pictures</source>
        <translation>القوى كمتجهات، في صور</translation>
    </message>
    <message>
        <source>children, signs, driving, high powers: what to mind</source>
        <translation>الأطفال والعلامات والقيادة والقوى العالية: ما يُنتبه إليه</translation>
    </message>
    <message>
        <source>what is kept of persons, what leaves, how to forget</source>
        <translation>ما يُحفظ عن الأشخاص، وما يخرج، وكيف يُنسى</translation>
    </message>
    <message>
        <source>how firm the published ground is, and what nobody knows</source>
        <translation>مدى متانة الأساس المنشور، وما لا يعرفه أحد</translation>
    </message>
    <message>
        <source>prescriptions from elsewhere, and in open standards</source>
        <translation>الوصفات من أماكن أخرى، وبمعايير مفتوحة</translation>
    </message>
    <message>
        <source>picture: %1</source>
        <translation>الصورة: %1</translation>
    </message>
    <message>
        <source>every file that is read or written, as grammar</source>
        <translation>كل ملف يُقرأ أو يُكتب، في صورة قواعد صياغة</translation>
    </message>
    <message>
        <source>what the focimeter reads of the right lens of this pair</source>
        <translation>ما يقرؤه مقياس العدسات للعدسة اليمنى في هذه النظارة</translation>
    </message>
    <message>
        <source>what the focimeter reads of the left lens of this pair</source>
        <translation>ما يقرؤه مقياس العدسات للعدسة اليسرى في هذه النظارة</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>“%1” is not a vertex distance; write 0 to 50 mm, as --vertex 12 0</source>
        <translation>‏«%1» ليس مسافة قمة؛ اكتب من 0 إلى 50 mm، مثل ⁦--vertex 12 0⁩</translation>
    </message>
    <message>
        <source>row of %1 left out</source>
        <translation>تُرك صف %1</translation>
    </message>
    <message>
        <source>nothing was handed over; mend the rows above or leave them out with --skip-bad-rows</source>
        <translation>لم يُسلَّم شيء؛ أصلح الصفوف أعلاه أو اتركها بالخيار ⁦--skip-bad-rows⁩</translation>
    </message>
    <message>
        <source>“%1” is not a check; write power, fit or instructions</source>
        <translation>‏«%1» ليس فحصًا؛ اكتب power أو fit أو instructions</translation>
    </message>
    <message>
        <source>nobody in %1 has the code %2</source>
        <translation>لا أحد في %1 له الرمز %2</translation>
    </message>
    <message>
        <source>%1 is not a purpose of this person</source>
        <translation>‏%1 ليس غرضًا لهذا الشخص</translation>
    </message>
    <message>
        <source>this person needs more than one pair; say which with --purpose %1 or --purpose %2</source>
        <translation>يحتاج هذا الشخص إلى أكثر من نظارة؛ حدد أيها بالخيار ⁦--purpose %1⁩ أو ⁦--purpose %2⁩</translation>
    </message>
    <message>
        <source>there is no line %1 in this camp</source>
        <translation>لا يوجد صنف %1 في هذا المخيم</translation>
    </message>
    <message>
        <source>%1 is for one person; add --person CODE</source>
        <translation>‏%1 لشخص واحد؛ أضف ⁦--person CODE⁩</translation>
    </message>
    <message>
        <source>“%1” is not a purpose; write distance, near, intermediate or bifocal</source>
        <translation>‏«%1» ليس غرضًا؛ اكتب distance أو near أو intermediate أو bifocal</translation>
    </message>
    <message>
        <source>`%1` needs either --camp FOLDER or --stock FILE</source>
        <translation>يحتاج ⁦`%1`⁩ إلى ⁦--camp FOLDER⁩ أو ⁦--stock FILE⁩</translation>
    </message>
    <message>
        <source>--rules goes with --stock; a camp folder has its own rules</source>
        <translation>الخيار ⁦--rules⁩ يرافق ⁦--stock⁩؛ ولمجلد المخيم قواعده</translation>
    </message>
    <message>
        <source>there is no profile “%1”; there are %2</source>
        <translation>لا توجد مجموعة قواعد «%1»؛ الموجود: %2</translation>
    </message>
    <message>
        <source>there is no option “%1” here; `quarterstep help` lists them</source>
        <translation>لا يوجد هنا خيار «%1»؛ يسرد ⁦`quarterstep help`⁩ الخيارات</translation>
    </message>
    <message>
        <source>there is no option “%1” here; did you mean “%2”?</source>
        <translation>لا يوجد هنا خيار «%1»؛ هل قصدت «%2»؟</translation>
    </message>
    <message>
        <source>`%1` needs %2; see `quarterstep help %1`</source>
        <translation>يحتاج ⁦`%1`⁩ إلى %2؛ انظر ⁦`quarterstep help %1`⁩</translation>
    </message>
    <message>
        <source>“%1” is one too many; put a text with blanks into quotes</source>
        <translation>‏«%1» زائد؛ ضع النص الذي فيه فراغات بين علامتي اقتباس</translation>
    </message>
    <message>
        <source>the options are not understood: %1</source>
        <translation>الخيارات غير مفهومة: %1</translation>
    </message>
    <message>
        <source>there is no verb “%1”; `quarterstep help` lists them</source>
        <translation>لا يوجد فعل «%1»؛ يسرد ⁦`quarterstep help`⁩ الأفعال</translation>
    </message>
    <message>
        <source>there is no verb “%1”; did you mean “%2”?</source>
        <translation>لا يوجد فعل «%1»؛ هل قصدت «%2»؟</translation>
    </message>
    <message>
        <source>it cannot go on: %1</source>
        <translation>تتعذر المتابعة: %1</translation>
    </message>
    <message>
        <source>the answer could not be written to the end</source>
        <translation>تعذرت كتابة الجواب حتى نهايته</translation>
    </message>
    <message>
        <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
        <translation>قيد السجل %1 ليس كما كُتب: %2؛ أبقِ المجلد كما هو وقارنه بنسخة</translation>
    </message>
    <message>
        <source>there is no rules.yaml; the rules built in apply</source>
        <translation>لا يوجد rules.yaml؛ تسري القواعد المدمجة</translation>
    </message>
    <message>
        <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
        <translation>كُتب في هذا السجل آخر مرة في مكان آخر وهو مفتوح للقراءة فقط؛ إذا نُقل المجلد إلى هنا نهائيًا فاذكر ذلك، ولا تستعمل النسخة الأخرى بعد الآن</translation>
    </message>
    <message>
        <source>there is no ledger here yet</source>
        <translation>لا يوجد سجل هنا بعد</translation>
    </message>
    <message>
        <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
        <translation>القيد في السجل، لكن تعذر تحديث stock.yaml؛ يُستدرك ذلك عند الفتح التالي</translation>
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
        <source>above %1 D the vertex distance must be recorded</source>
        <translation>فوق %1 D يجب تسجيل مسافة القمة</translation>
    </message>
    <message>
        <source>a sphere would leave less cylinder than this lens does</source>
        <translation>عدسة كروية تُبقي أسطوانة أقل مما تُبقيه هذه العدسة</translation>
    </message>
    <message>
        <source>prism by decentration is the prescriber&apos;s decision</source>
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
        <source>difference between the eyes&apos; needs</source>
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
        <translation>يبتعد مقاس الإطار بفئات عددها %1، الحد %2</translation>
    </message>
    <message>
        <source>frame size off by %1 class</source>
        <translation>يبتعد مقاس الإطار بفئات عددها %1</translation>
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
        <translation>تبتعد حدة الإبصار بهذه النظارة عن المطلوب بمقدار %1 logMAR، الحد %2</translation>
    </message>
    <message>
        <source>tried: acuity %1 logMAR short</source>
        <translation>جُرّبت: تنقص حدة الإبصار بمقدار %1 logMAR</translation>
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
        <source>a child&apos;s squint: refer before glasses are given</source>
        <translation>حَوَل عند طفل: إحالة قبل تسليم نظارة</translation>
    </message>
    <message>
        <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
        <translation>طُلب قياس الانكسار تحت شلّ المطابقة: إحالة قبل تسليم نظارة</translation>
    </message>
    <message>
        <source>does not reach 6/9 in each eye with the final prescription</source>
        <translation>لا يبلغ 6/9 في كل عين بالوصفة النهائية</translation>
    </message>
    <message>
        <source>presents worse than 6/60 in an eye, even if glasses help</source>
        <translation>حضر وإبصار إحدى عينيه أسوأ من 6/60، حتى لو أفادت النظارة</translation>
    </message>
    <message>
        <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
        <translation>طفل له ⁦+3.50 D⁩ أو أكثر، أو أسطوانة 1.50 D أو أكثر</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.50 D or more</source>
        <translation>دون 8 سنوات والعينان تختلفان بمقدار 1.50 D أو أكثر</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.00 D or more</source>
        <translation>دون 8 سنوات والعينان تختلفان بمقدار 1.00 D أو أكثر</translation>
    </message>
    <message>
        <source>mean sphere beyond 6.00 D</source>
        <translation>الكرة المتوسطة تتجاوز 6.00 D</translation>
    </message>
    <message>
        <source>may be without its lens (aphakia): vertex distance needed</source>
        <translation>ربما كانت العين دون عدستها (aphakia): مسافة القمة لازمة</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
        <translation>أسوأ من 6/12 بأفضل وصفة ولا كسب عبر الثقب الدبوسي</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription; pinhole not taken</source>
        <translation>أسوأ من 6/12 بأفضل وصفة؛ لم يُجرَّب الثقب الدبوسي</translation>
    </message>
    <message>
        <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
        <translation>يرى عبر الثقب الدبوسي سطرين أو أكثر فوق الوصفة النهائية: أعد قياس الانكسار</translation>
    </message>
    <message>
        <source>objective reading and final prescription are %1 D apart in mean sphere</source>
        <translation>تبتعد القراءة الموضوعية عن الوصفة النهائية بمقدار %1 D في الكرة المتوسطة</translation>
    </message>
    <message>
        <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
        <translation>تكرر الوصفة النهائية القراءة الموضوعية في الأرقام الستة كلها: هل دُقّقت؟</translation>
    </message>
    <message>
        <source>under 16: the prescriber&apos;s name stays with the pair, and the guardian is told</source>
        <translation>دون 16: يبقى اسم كاتب الوصفة مع النظارة ويُبلَّغ ولي الأمر</translation>
    </message>
    <message>
        <source>age not recorded: the strictest limits that could apply are used</source>
        <translation>العمر غير مسجل: تُستعمل أشد الحدود الممكنة</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
        <translation>عين واحدة مبصرة فقط: يُنصح بعدسات مقاومة للصدم ووقاية للعين</translation>
    </message>
    <message>
        <source>an objective reading only: a subjective refraction should follow</source>
        <translation>قراءة موضوعية فقط: ينبغي أن يليها قياس انكسار ذاتي</translation>
    </message>
    <message>
        <source>the prescription is %1 months old</source>
        <translation>عمر الوصفة بالأشهر: %1</translation>
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
        <translation>عين فيها عدسة مزروعة: تختلف الإضافة بين العينين</translation>
    </message>
    <message>
        <source>above 4.00 D the vertex distance matters: record it</source>
        <translation>فوق 4.00 D تهم مسافة القمة: سجّلها</translation>
    </message>
    <message>
        <source>near glasses need an addition, or a near power found by trial</source>
        <translation>نظارة القريب تحتاج إلى إضافة، أو قوة للقريب وُجدت بالتجربة</translation>
    </message>
    <message>
        <source>this purpose needs an addition, or a near power found by trial</source>
        <translation>هذا الغرض يحتاج إلى إضافة، أو قوة للقريب وُجدت بالتجربة</translation>
    </message>
    <message>
        <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
        <translation>قياس ذاتي: لا تُعطى نظارة لطفل من قراءة موضوعية وحدها</translation>
    </message>
    <message>
        <source>the prescriber&apos;s name, for a child</source>
        <translation>اسم كاتب الوصفة، لطفل</translation>
    </message>
    <message>
        <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
        <translation>الإضافة دون 35 سنة يجب تأكيدها: حدة القريب بها، أو قوة للقريب بالتجربة</translation>
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
        <translation>مسافة القرنية لهذه الوصفة: قسها</translation>
    </message>
    <message>
        <source>nothing in the box for this purpose</source>
        <translation>لا شيء في الصندوق لهذا الغرض</translation>
    </message>
    <message>
        <source>if the prescriber marks the left eye balance, %1 would fit</source>
        <translation>إذا علّم كاتب الوصفة العين اليسرى balance فإن %1 يناسب</translation>
    </message>
    <message>
        <source>if the prescriber marks the right eye balance, %1 would fit</source>
        <translation>إذا علّم كاتب الوصفة العين اليمنى balance فإن %1 يناسب</translation>
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
        <translation>مجموعة قواعد باسم %1</translation>
    </message>
    <message>
        <source>a final prescription for at least one eye</source>
        <translation>وصفة نهائية لعين واحدة على الأقل</translation>
    </message>
    <message>
        <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
        <translation>‏«%1» ليس جزءًا من حدة إبصار؛ اكتبه مثل 6/9 أو ⁦0.67 decimal⁩ أو logMAR 0.2</translation>
    </message>
    <message>
        <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
        <translation>‏«%1» ليس حدة إبصار؛ اكتب 6/9 أو 20/30 أو ⁦0.67 decimal⁩ أو logMAR 0.2 أو CF أو HM أو PL أو NPL</translation>
    </message>
    <message>
        <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
        <translation>‏«%1» يعني logMAR %2؛ وتقع حدة الإبصار بين logMAR -0.5 و3: راجعها</translation>
    </message>
    <message>
        <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
        <translation>لا تُقرأ لوحة على مسافة %1؛ اكتب مسافة الفحص أولًا، مثل 6/9 أو 20/30</translation>
    </message>
    <message>
        <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
        <translation>‏«%1» لا يذكر سلّمه؛ اكتب ⁦“%1 decimal”⁩ أو ⁦“logMAR %1”⁩</translation>
    </message>
    <message>
        <source>no acuity is written; write 6/9 or leave it out</source>
        <translation>لم تُكتب حدة إبصار؛ اكتب 6/9 أو اتركها</translation>
    </message>
    <message>
        <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
        <translation>‏«%1» ليس حدة إبصار للقرب؛ اكتب N8 أو M 1.0 أو 1.0M، وبعدها “at 40 cm”</translation>
    </message>
    <message>
        <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
        <translation>المسافة في «%1» لا تُقرأ؛ اكتبها هكذا “at 40 cm”، من 5 إلى 200 cm</translation>
    </message>
    <message>
        <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
        <translation>لم يُكتب شيء لهذه العين؛ اكتب قوتها، أو balance أو artificial أو blind أو not measured</translation>
    </message>
    <message>
        <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
        <translation>لم تُكتب قوة؛ اكتبها مثل ⁦+2.00⁩ أو ⁦-0.75⁩ أو 0.00</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2 or %3</source>
        <translation>‏%1 دون فاصلة عشرية؛ اكتب %2 أو %3</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2</source>
        <translation>‏%1 دون فاصلة عشرية؛ اكتب %2</translation>
    </message>
    <message>
        <source>%1 is beyond %2 D; check the figure and write it again</source>
        <translation>‏%1 يتجاوز %2 D؛ راجع الرقم واكتبه من جديد</translation>
    </message>
    <message>
        <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
        <translation>لا تُقرأ قوة عند «%1»؛ اكتبها مثل ⁦+2.00⁩ أو ⁦-0.75⁩ أو 0.00</translation>
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
        <translation>الإضافة ⁦-%1⁩ سالبة؛ والإضافة موجبة: راجعها</translation>
    </message>
    <message>
        <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
        <translation>المحور %1 دون أسطوانة؛ اكتب الكرة والأسطوانة والمحور، مثل ⁦-1.00 -0.50 x %1⁩</translation>
    </message>
    <message>
        <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
        <translation>المحور %1 خارج ⁦1..180⁩ درجة؛ وخط الزوال نفسه هو %2: راجعه واكتبه من جديد</translation>
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
        <translation>منشوران في اتجاه واحد؛ اكتب مجموعهما مرة واحدة، مثل ⁦1.5 base in⁩</translation>
    </message>
    <message>
        <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
        <translation>قاعدة المنشور لا تُقرأ؛ اكتب base in أو out أو up أو down، أو base 0..360</translation>
    </message>
    <message>
        <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
        <translation>المنشور %1 ليس بين 0 و%2؛ اكتب مقداره وقاعدته، مثل ⁦2 base in⁩</translation>
    </message>
    <message>
        <source>another program holds the ledger; nothing was written; close it there and repeat</source>
        <translation>برنامج آخر يمسك السجل؛ لم يُكتب شيء؛ أغلقه هناك ثم كرّر</translation>
    </message>
    <message>
        <source>the ledger cannot be opened for writing here; check the rights of the file and its folder</source>
        <translation>لا يمكن فتح السجل للكتابة هنا؛ راجع أذونات الملف ومجلده</translation>
    </message>
    <message>
        <source>the disk is full; nothing was written; make room and repeat</source>
        <translation>القرص ممتلئ؛ لم يُكتب شيء؛ أفسح مكانًا ثم كرّر</translation>
    </message>
    <message>
        <source>this is not a ledger, or it is damaged (%1); put back the latest copy of the camp folder</source>
        <translation>هذا ليس سجلًا، أو هو تالف (%1)؛ أعد أحدث نسخة من مجلد المخيم</translation>
    </message>
    <message>
        <source>the ledger failed: %1 (code %2); nothing was written</source>
        <translation>تعطل السجل: %1 (الرمز %2)؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>the ledger cannot be made: %1; check the rights of the folder</source>
        <translation>لا يمكن إنشاء السجل: %1؛ راجع أذونات المجلد</translation>
    </message>
    <message>
        <source>this file system cannot keep a ledger safely (no shared memory beside the file); keep the camp folder on another disk</source>
        <translation>لا يحفظ نظام الملفات هذا سجلًا دون خطر (لا ذاكرة مشتركة بجانب الملف)؛ ضع مجلد المخيم على قرص آخر</translation>
    </message>
    <message>
        <source>this ledger was not closed and its folder cannot be written to; copy the whole folder to a place that can, and open it there</source>
        <translation>لم يُغلق هذا السجل ولا يمكن الكتابة في مجلده؛ انسخ المجلد كله إلى مكان يقبل الكتابة وافتحه هناك</translation>
    </message>
    <message>
        <source>the ledger is empty; nothing happened yet</source>
        <translation>السجل فارغ؛ لم يجرِ شيء بعد</translation>
    </message>
    <message>
        <source>the database refuses to write safely; nothing was opened</source>
        <translation>ترفض قاعدة البيانات الكتابة دون خطر؛ لم يُفتح شيء</translation>
    </message>
    <message>
        <source>this ledger names no station of its own; put back the latest copy</source>
        <translation>لا يذكر هذا السجل محطة خاصة به؛ أعد أحدث نسخة</translation>
    </message>
    <message>
        <source>this ledger was opened for reading only</source>
        <translation>فُتح هذا السجل للقراءة فقط</translation>
    </message>
    <message>
        <source>this ledger was last written at another place; if it moved here for good, say so first, and do not use the other copy any more</source>
        <translation>كُتب في هذا السجل آخر مرة في مكان آخر؛ إذا نُقل إلى هنا نهائيًا فاذكر ذلك أولًا، ولا تستعمل النسخة الأخرى بعد الآن</translation>
    </message>
    <message>
        <source>the ledger file was moved, removed or replaced while it was open; nothing was written; close the camp and open it again</source>
        <translation>نُقل ملف السجل أو أُزيل أو استُبدل وهو مفتوح؛ لم يُكتب شيء؛ أغلق المخيم وافتحه من جديد</translation>
    </message>
    <message>
        <source>line %1 has %2 left, %3 asked for; nothing was written</source>
        <translation>الصنف %1 بقي منه %2 والمطلوب %3؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>line %1 is not in the ledger of %2; nothing was written</source>
        <translation>الصنف %1 ليس في سجل %2؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>there is no entry %1 to take back</source>
        <translation>لا يوجد قيد %1 ليُلغى</translation>
    </message>
    <message>
        <source>entry %1 was taken back already</source>
        <translation>القيد %1 أُلغي من قبل</translation>
    </message>
    <message>
        <source>entry %1 takes back another one and cannot be taken back itself; enter what happened anew</source>
        <translation>القيد %1 يلغي قيدًا آخر ولا يمكن إلغاؤه هو؛ أدخل ما جرى من جديد</translation>
    </message>
    <message>
        <source>this is not a file; name another one in the key ledger of stock.yaml</source>
        <translation>هذا ليس ملفًا؛ سمِّ غيره في المفتاح ledger من stock.yaml</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; check the chain and put back the latest copy of the camp folder</source>
        <translation>قيد في هذا السجل لا يُقرأ؛ افحص السلسلة وأعد أحدث نسخة من مجلد المخيم</translation>
    </message>
    <message>
        <source>this is a database of another program, not a ledger; name another file in the key ledger of stock.yaml</source>
        <translation>هذه قاعدة بيانات برنامج آخر لا سجل؛ سمِّ ملفًا آخر في المفتاح ledger من stock.yaml</translation>
    </message>
    <message>
        <source>this ledger was made by a newer version (form %1, known here up to %2); update this program</source>
        <translation>أنشأ هذا السجلَ إصدارٌ أحدث (الصيغة %1، والمعروف هنا حتى %2)؛ حدّث هذا البرنامج</translation>
    </message>
    <message>
        <source>a ledger file cannot be kept safely on a network share; keep the camp folder on this machine, or share a PostgreSQL ledger between stations</source>
        <translation>لا يُحفظ ملف السجل دون خطر على مشاركة شبكية؛ أبقِ مجلد المخيم على هذا الجهاز، أو شارك سجل PostgreSQL بين المحطات</translation>
    </message>
    <message>
        <source>the file cannot be written: %1; check rights and free space</source>
        <translation>لا يمكن كتابة الملف: %1؛ راجع الأذونات والمساحة الخالية</translation>
    </message>
    <message>
        <source>the file was replaced, but the disk does not say that this will last: %1</source>
        <translation>استُبدل الملف، لكن القرص لا يؤكد أن ذلك سيدوم: %1</translation>
    </message>
    <message>
        <source>another program is writing in this folder; wait a moment and repeat</source>
        <translation>برنامج آخر يكتب في هذا المجلد؛ انتظر لحظة ثم كرّر</translation>
    </message>
    <message>
        <source>the folder cannot be locked: %1; check its name and rights</source>
        <translation>لا يمكن قفل المجلد: %1؛ راجع اسمه وأذوناته</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>لا يمكن قراءة الملف</translation>
    </message>
    <message>
        <source>this is a link or a device; only a plain file can be kept up to date; put the file itself into the camp folder</source>
        <translation>هذا رابط أو جهاز؛ لا يُحدَّث إلا ملف عادي؛ ضع الملف نفسه في مجلد المخيم</translation>
    </message>
    <message>
        <source>the file was written after entry %1 of another ledger; a new ledger begins with the counts of the file</source>
        <translation>كُتب الملف بعد القيد %1 من سجل آخر؛ ويبدأ سجل جديد بأعداد الملف</translation>
    </message>
    <message>
        <source>the file was written after entry %1, but the ledger ends at %2; is the ledger an older copy? Counts that differ are shown as edited</source>
        <translation>كُتب الملف بعد القيد %1، لكن السجل ينتهي عند %2؛ هل السجل نسخة أقدم؟ تُعرض الأعداد المختلفة على أنها معدَّلة</translation>
    </message>
    <message>
        <source>the limits must rise: fits, then caution, then trial</source>
        <translation>يجب أن تتصاعد الحدود: fits ثم caution ثم trial</translation>
    </message>
    <message>
        <source>a limit is missing here; write fits, caution or trial</source>
        <translation>ينقص هنا حد؛ اكتب fits أو caution أو trial</translation>
    </message>
    <message>
        <source>&quot;%1&quot; means nothing for this criterion; delete it</source>
        <translation>‏&quot;%1&quot; لا يعني شيئًا لهذا المعيار؛ احذفه</translation>
    </message>
    <message>
        <source>write the steps as a list: [{up to: 0.50, fits: 7}, …]</source>
        <translation>اكتب الدرجات كقائمة: ⁦[{up to: 0.50, fits: 7}, …]⁩</translation>
    </message>
    <message>
        <source>the steps must rise; put the smaller cylinder first</source>
        <translation>يجب أن تتصاعد الدرجات؛ ضع الأسطوانة الأصغر أولًا</translation>
    </message>
    <message>
        <source>say where the limit comes from, or write: common practice</source>
        <translation>اذكر مصدر الحد، أو اكتب: common practice</translation>
    </message>
    <message>
        <source>shown only means no limits; keep one of the two</source>
        <translation>المفتاح shown only يعني ألّا حدود؛ أبقِ أحدهما</translation>
    </message>
    <message>
        <source>a quote stands inside a cell; put the whole cell in quotes and double it</source>
        <translation>علامة اقتباس داخل خلية؛ ضع الخلية كلها بين علامتي اقتباس وضاعف العلامة</translation>
    </message>
    <message>
        <source>a lone carriage return ends the line here; save the table with LF or CRLF line ends</source>
        <translation>ينتهي السطر هنا بمحرف CR وحده؛ احفظ الجدول بنهايات أسطر LF أو CRLF</translation>
    </message>
    <message>
        <source>this quote is never closed; close it before the next comma</source>
        <translation>علامة الاقتباس هذه لا تُغلق؛ أغلقها قبل الفاصلة التالية</translation>
    </message>
    <message>
        <source>there is text behind the closing quote; move it inside, or double the quote</source>
        <translation>نص بعد علامة الاقتباس الختامية؛ انقله إلى الداخل أو ضاعف العلامة</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write one from %2 to %3</source>
        <translation>‏&quot;%1&quot; ليس رقمًا؛ اكتب رقمًا من %2 إلى %3</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3</source>
        <translation>‏%1 خارج المدى من %2 إلى %3</translation>
    </message>
    <message>
        <source>a number is missing; write one from %1 to %2</source>
        <translation>ينقص رقم؛ اكتب رقمًا من %1 إلى %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a decimal comma; in this file write %2</source>
        <translation>‏&quot;%1&quot; فيه فاصلة عشرية على شكل فاصلة؛ اكتب في هذا الملف %2</translation>
    </message>
    <message>
        <source>%1 is below zero; write 0 or more</source>
        <translation>‏%1 أقل من الصفر؛ اكتب 0 أو أكثر</translation>
    </message>
    <message>
        <source>write %1 without a sign</source>
        <translation>اكتب %1 دون إشارة</translation>
    </message>
    <message>
        <source>%1 is not a whole number; write digits only</source>
        <translation>‏%1 ليس عددًا بلا كسور؛ اكتب أرقامًا فقط</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number; write digits only, for example 14</source>
        <translation>‏&quot;%1&quot; ليس عددًا بلا كسور؛ اكتب أرقامًا فقط، مثل 14</translation>
    </message>
    <message>
        <source>a whole number is missing; write one from %1 to %2</source>
        <translation>ينقص عدد بلا كسور؛ اكتب عددًا من %1 إلى %2</translation>
    </message>
    <message>
        <source>%1 begins with a zero, which some programs read as another number; write %2</source>
        <translation>‏%1 يبدأ بصفر، وبعض البرامج تقرؤه رقمًا آخر؛ اكتب %2</translation>
    </message>
    <message>
        <source>%1 has more than three decimals; round it</source>
        <translation>‏%1 فيه أكثر من ثلاث منازل عشرية؛ قرّبه</translation>
    </message>
    <message>
        <source>the table is empty; its first line names the columns: %1</source>
        <translation>الجدول فارغ؛ سطره الأول يسمي الأعمدة: %1</translation>
    </message>
    <message>
        <source>the columns are not separated by commas; save the table with commas</source>
        <translation>الأعمدة غير مفصولة بفواصل؛ احفظ الجدول بفواصل</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; person, right and left are needed</source>
        <translation>العمود &quot;%1&quot; غير موجود؛ المطلوب person و right و left</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; stands in the table twice; delete or rename one</source>
        <translation>العمود &quot;%1&quot; موجود في الجدول مرتين؛ احذف أحدهما أو سمِّه باسم آخر</translation>
    </message>
    <message>
        <source>this column has no name; write one</source>
        <translation>هذا العمود بلا اسم؛ اكتب له اسمًا</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say which acuity; write one of: %2</source>
        <translation>‏&quot;%1&quot; لا يذكر أي حدة إبصار؛ اكتب واحدًا من: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is kept but not used</source>
        <translation>العمود &quot;%1&quot; غير معروف؛ يُحفظ ولا يُستعمل</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known and not used; did you mean &quot;%2&quot;?</source>
        <translation>العمود &quot;%1&quot; غير معروف ولا يُستعمل؛ هل قصدت &quot;%2&quot;؟</translation>
    </message>
    <message>
        <source>the row ends after %1 cells, the header has %2; add the missing commas</source>
        <translation>ينتهي الصف بعد خلايا عددها %1، وفي رأس الجدول %2؛ أضف الفواصل الناقصة</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds a comma in quotes</source>
        <translation>في الصف خلايا عددها %1، وفي رأس الجدول %2؛ ضع الخلية التي فيها فاصلة بين علامتي اقتباس</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot; stands in line %2 already; give each row a code of its own</source>
        <translation>الشخص &quot;%1&quot; موجود في السطر %2 من قبل؛ أعطِ كل صف رمزًا خاصًا به</translation>
    </message>
    <message>
        <source>the row has no person; write a code or a name</source>
        <translation>الصف بلا شخص؛ اكتب رمزًا أو اسمًا</translation>
    </message>
    <message>
        <source>%1 mm is narrow for both eyes together; is it monocular? Then it goes into pd_right_mm or pd_left_mm</source>
        <translation>‏%1 mm ضيقة للعينين معًا؛ هل هي لعين واحدة؟ إذن مكانها pd_right_mm أو pd_left_mm</translation>
    </message>
    <message>
        <source>the two monocular distances make %1 mm, not %2; the monocular ones are used</source>
        <translation>مجموع مسافتي العينين %1 mm لا %2؛ وتُستعمل مسافة كل عين</translation>
    </message>
    <message>
        <source>the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?</source>
        <translation>مسافة القرب %1 mm أوسع من مسافة البعد %2 mm؛ هل بُدّلتا؟</translation>
    </message>
    <message>
        <source>the eye&apos;s text says addition %1, this column %2; keep one</source>
        <translation>يقول نص العين إن الإضافة %1، ويقول هذا العمود %2؛ أبقِ واحدة</translation>
    </message>
    <message>
        <source>sphere and addition make %1 at near, the near power says %2; the near power is used</source>
        <translation>الكرة مع الإضافة تساوي %1 للقرب، وقوة القرب تقول %2؛ تُستعمل قوة القرب</translation>
    </message>
    <message>
        <source>the date %1 lies after today, %2; correct it</source>
        <translation>التاريخ %1 بعد اليوم، %2؛ أصلحه</translation>
    </message>
    <message>
        <source>write two numbers in mm, for example [54, 74]</source>
        <translation>اكتب رقمين بوحدة mm، مثل ⁦[54, 74]⁩</translation>
    </message>
    <message>
        <source>the smaller number comes first</source>
        <translation>الرقم الأصغر أولًا</translation>
    </message>
    <message>
        <source>there is no profile &quot;%1&quot; to begin from; built in, or earlier in this file, are: %2</source>
        <translation>لا توجد مجموعة قواعد &quot;%1&quot; للبدء منها؛ المدمج أو ما سبق في هذا الملف: %2</translation>
    </message>
    <message>
        <source>the profile has no name; write one</source>
        <translation>مجموعة القواعد بلا اسم؛ اكتب لها اسمًا</translation>
    </message>
    <message>
        <source>the profile &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>مجموعة القواعد &quot;%1&quot; موجودة في الملف من قبل؛ سمِّ هذه باسم آخر</translation>
    </message>
    <message>
        <source>this is not a rules file of this program; the first key should read format: %1</source>
        <translation>هذا ليس ملف قواعد لهذا البرنامج؛ ينبغي أن يكون المفتاح الأول format: %1</translation>
    </message>
    <message>
        <source>`profiles` is a list; begin each profile with a dash</source>
        <translation>المفتاح ⁦`profiles`⁩ قائمة؛ ابدأ كل مجموعة قواعد بشرطة</translation>
    </message>
    <message>
        <source>this is not UTF-8 text; save the file as UTF-8</source>
        <translation>هذا ليس نص UTF-8؛ احفظ الملف بترميز UTF-8</translation>
    </message>
    <message>
        <source>a control character (hexadecimal %1) stands here; delete it</source>
        <translation>هنا محرف تحكم (ست عشري %1)؛ احذفه</translation>
    </message>
    <message>
        <source>the file is larger than %1 MiB; split it</source>
        <translation>الملف أكبر من %1 MiB؛ قسّمه</translation>
    </message>
    <message>
        <source>there is no such file; check the name and the folder</source>
        <translation>لا يوجد ملف كهذا؛ راجع الاسم والمجلد</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>لا يمكن قراءة الملف: %1</translation>
    </message>
    <message>
        <source>this is a folder; name the file inside it</source>
        <translation>هذا مجلد؛ سمِّ الملف الذي فيه</translation>
    </message>
    <message>
        <source>the file is UTF-16 text; save it as UTF-8 and try again</source>
        <translation>الملف نص UTF-16؛ احفظه بترميز UTF-8 ثم حاول من جديد</translation>
    </message>
    <message>
        <source>the file begins with two byte order marks; delete one</source>
        <translation>يبدأ الملف بعلامتي ترتيب بايت؛ احذف واحدة</translation>
    </message>
    <message>
        <source>write this value without quotes, or delete the whole `written` entry</source>
        <translation>اكتب هذه القيمة دون علامتي اقتباس، أو احذف البند ⁦`written`⁩ كله</translation>
    </message>
    <message>
        <source>the value of `counts` is 8 digits of 0-9 and a-f put in by the program; delete the whole `written` entry if it was damaged</source>
        <translation>قيمة ⁦`counts`⁩ هي 8 محارف من ⁦0-9⁩ و a-f يضعها البرنامج؛ احذف البند ⁦`written`⁩ كله إن تلف</translation>
    </message>
    <message>
        <source>`lines` is a list; begin each line with a dash, or write lines: []</source>
        <translation>المفتاح ⁦`lines`⁩ قائمة؛ ابدأ كل صنف بشرطة، أو اكتب ⁦lines: []⁩</translation>
    </message>
    <message>
        <source>the line &quot;%1&quot; stands in the file already, in line %2; give this one another name or add the counts together</source>
        <translation>الصنف &quot;%1&quot; موجود في الملف من قبل، في السطر %2؛ سمِّ هذا باسم آخر أو اجمع العددين</translation>
    </message>
    <message>
        <source>put `lines:` at the beginning of a line of its own</source>
        <translation>ضع ⁦`lines:`⁩ في أول سطر خاص به</translation>
    </message>
    <message>
        <source>this is not a stock file of this program; the first key should read format: %1</source>
        <translation>هذا ليس ملف مخزون لهذا البرنامج؛ ينبغي أن يكون المفتاح الأول format: %1</translation>
    </message>
    <message>
        <source>the site has no name; write the camp or box</source>
        <translation>الموقع بلا اسم؛ اكتب المخيم أو الصندوق</translation>
    </message>
    <message>
        <source>write the count as plain digits, without quotes: %1</source>
        <translation>اكتب العدد بأرقام عادية دون علامتي اقتباس: %1</translation>
    </message>
    <message>
        <source>least (%1) is above most (%2); exchange them</source>
        <translation>الحد الأدنى least (%1) فوق الحد الأعلى most (%2)؛ بدّلهما</translation>
    </message>
    <message>
        <source>write the lens shapes as a list, for example [round 44]</source>
        <translation>اكتب أشكال العدسات كقائمة، مثل ⁦[round 44]⁩</translation>
    </message>
    <message>
        <source>centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure the pair again</source>
        <translation>المراكز %1 mm لا توافق العدسة + الجسر = %2 mm؛ المتوقع من %3 إلى %4: قِس النظارة من جديد</translation>
    </message>
    <message>
        <source>a lens of shape &quot;%1&quot; may fit one side only; write side: right, left or either</source>
        <translation>عدسة شكلها &quot;%1&quot; قد لا تركب إلا في جهة واحدة؛ اكتب side: right أو left أو either</translation>
    </message>
    <message>
        <source>&quot;%1&quot; says nothing for a line of this kind and is not used</source>
        <translation>‏&quot;%1&quot; لا يقول شيئًا لصنف من هذا النوع ولا يُستعمل</translation>
    </message>
    <message>
        <source>the line has no name; write what its label says</source>
        <translation>الصنف بلا اسم؛ اكتب ما على ملصقه</translation>
    </message>
    <message>
        <source>the addition %1 is outside +0.25 to +6.00</source>
        <translation>الإضافة %1 خارج المدى من ⁦+0.25⁩ إلى ⁦+6.00⁩</translation>
    </message>
    <message>
        <source>write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}</source>
        <translation>اكتب قوة واحدة، أو ⁦{right: …, left: …}⁩، أو ⁦{bifocal: +2.00, distance: 0.00}⁩</translation>
    </message>
    <message>
        <source>a bifocal&apos;s power is written {bifocal: +2.00, distance: 0.00}</source>
        <translation>قوة ثنائي البؤرة تُكتب ⁦{bifocal: +2.00, distance: 0.00}⁩</translation>
    </message>
    <message>
        <source>a lens with a cylinder needs axis: any (turned when mounting) or axis: degrees as mounted</source>
        <translation>العدسة ذات الأسطوانة تحتاج إلى axis: any (تُدار عند التركيب) أو axis: مع الدرجات كما رُكّبت</translation>
    </message>
    <message>
        <source>the axis stands in the power already; keep one of the two</source>
        <translation>المحور مذكور في القوة من قبل؛ أبقِ أحدهما</translation>
    </message>
    <message>
        <source>contact lenses were worn during this reading; the row is left out</source>
        <translation>كانت العدسات اللاصقة ملبوسة أثناء هذه القراءة؛ تُرك الصف</translation>
    </message>
    <message>
        <source>neither eye has sphere, cylinder and axis; the row is left out</source>
        <translation>لا كرة وأسطوانة ومحور في أي من العينين؛ تُرك الصف</translation>
    </message>
    <message>
        <source>this eye has no complete reading and is taken as not measured</source>
        <translation>هذه العين بلا قراءة تامة وتُعدّ غير مقيسة</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the words allowed here; write one of: %2</source>
        <translation>‏&quot;%1&quot; ليس من الكلمات المسموح بها هنا؛ اكتب واحدة من: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds two numbers; write one here, each eye&apos;s own in pd_right_mm and pd_left_mm, the near one in near_pd_mm</source>
        <translation>‏&quot;%1&quot; فيه رقمان؛ اكتب هنا رقمًا واحدًا، ورقم كل عين في pd_right_mm و pd_left_mm، ورقم القرب في near_pd_mm</translation>
    </message>
    <message>
        <source>%1 would be a distance in cm; write it in mm: %2</source>
        <translation>‏%1 قد تكون مسافة بوحدة cm؛ اكتبها بوحدة mm: %2</translation>
    </message>
    <message>
        <source>%1 mm is not a pupillary distance; expected are %2 to %3 mm</source>
        <translation>‏%1 mm ليست مسافة بين حدقتين؛ المتوقع من %2 إلى %3 mm</translation>
    </message>
    <message>
        <source>an addition is never minus; %1 was read; write the addition, not the near power (that goes into near_right and near_left)</source>
        <translation>الإضافة لا تكون سالبة أبدًا؛ والمقروء %1؛ اكتب الإضافة لا قوة القرب (فمكانها near_right و near_left)</translation>
    </message>
    <message>
        <source>the addition %1 is outside 0.00 to +6.00</source>
        <translation>الإضافة %1 خارج المدى من 0.00 إلى ⁦+6.00⁩</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date of the form 2026-03-01 (year-month-day)</source>
        <translation>‏&quot;%1&quot; ليس تاريخًا بالصيغة ⁦2026-03-01⁩ (سنة-شهر-يوم)</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot; in the table</source>
        <translation>لا يوجد عمود &quot;%1&quot; في الجدول</translation>
    </message>
    <message>
        <source>a single value is expected here, not a list or a map</source>
        <translation>المتوقع هنا قيمة واحدة، لا قائمة ولا مفاتيح</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds a line break or a control character; write it on one line</source>
        <translation>‏&quot;%1&quot; فيه نهاية سطر أو محرف تحكم؛ اكتبه في سطر واحد</translation>
    </message>
    <message>
        <source>keys with values are expected here, such as: %1</source>
        <translation>المتوقع هنا مفاتيح لها قيم، مثل: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is written twice; the first stands in line %2; keep one</source>
        <translation>‏&quot;%1&quot; مكتوب مرتين؛ الأول في السطر %2؛ أبقِ واحدًا</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; known are: %2</source>
        <translation>المفتاح &quot;%1&quot; غير معروف هنا؛ المعروف: %2</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; did you mean &quot;%2&quot;?</source>
        <translation>المفتاح &quot;%1&quot; غير معروف هنا؛ هل قصدت &quot;%2&quot;؟</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is missing here; add it</source>
        <translation>المفتاح &quot;%1&quot; غير موجود هنا؛ أضفه</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no value; write one after the colon</source>
        <translation>‏&quot;%1&quot; بلا قيمة؛ اكتب قيمة بعد النقطتين</translation>
    </message>
    <message>
        <source>a second document begins here; keep one document in the file</source>
        <translation>يبدأ هنا مستند ثانٍ؛ أبقِ في الملف مستندًا واحدًا</translation>
    </message>
    <message>
        <source>an alias (*name) is not read here; write the value out</source>
        <translation>الاسم المستعار (⁦*name⁩) لا يُقرأ هنا؛ اكتب القيمة نفسها</translation>
    </message>
    <message>
        <source>this quote is never closed; close it on the same line</source>
        <translation>علامة الاقتباس هذه لا تُغلق؛ أغلقها في السطر نفسه</translation>
    </message>
    <message>
        <source>an anchor (&amp;name) is not read here; delete it</source>
        <translation>المرساة (⁦&amp;name⁩) لا تُقرأ هنا؛ احذفها</translation>
    </message>
    <message>
        <source>a tag (!name) is not read here; delete it</source>
        <translation>الوسم (⁦!name⁩) لا يُقرأ هنا؛ احذفه</translation>
    </message>
    <message>
        <source>the nesting is deeper than %1; this is not such a file</source>
        <translation>التداخل أعمق من %1؛ ليس هذا ملفًا من هذا النوع</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>يجب أن يكون المفتاح كلمة عادية</translation>
    </message>
    <message>
        <source>this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or a tab in the indentation, here or on the line above</source>
        <translation>لا يُقرأ هذا على أنه YAML: %1؛ ابحث عن نقطتين أو علامة اقتباس أو قوس ناقص، أو عن محرف جدولة في المسافة البادئة، هنا أو في السطر السابق</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>الملف فارغ</translation>
    </message>
    <message>
        <source>the disk failed while the entry was written (%1); close the camp, open it again and look whether the entry is there before you repeat it</source>
        <translation>تعطل القرص أثناء كتابة القيد (%1)؛ أغلق المخيم وافتحه من جديد وانظر هل القيد موجود قبل أن تكرره</translation>
    </message>
    <message>
        <source>“%1” cannot stand beside %2, which takes the place of texts</source>
        <translation>لا يجتمع «%1» مع %2 الذي يحل محل النصوص</translation>
    </message>
    <message>
        <source>“%1” behind %2 is no power: write it as -0.50 or &quot;-0.50 -1.00 x 30&quot;</source>
        <translation>‏«%1» بعد %2 ليس قوة: اكتبها مثل ⁦-0.50⁩ أو ⁦&quot;-0.50 -1.00 x 30&quot;⁩</translation>
    </message>
    <message>
        <source>“%1” is not a place on a lens; write mm to the observer&apos;s right and up from its centre, -50 to 50, as --prism 2.5 -11</source>
        <translation>‏«%1» ليس موضعًا على عدسة؛ اكتب mm إلى يمين الناظر وإلى أعلى من مركزها، من ⁦-50⁩ إلى 50، مثل ⁦--prism 2.5 -11⁩</translation>
    </message>
    <message>
        <source>“%1” is no prism; write Δ base in and base up, -20 to 20 (out and down negative), as --decentre 2 -0.5</source>
        <translation>‏«%1» ليس منشورًا؛ اكتب Δ القاعدة للداخل والقاعدة إلى أعلى، من ⁦-20⁩ إلى 20 (للخارج وإلى أسفل سالب)، مثل ⁦--decentre 2 -0.5⁩</translation>
    </message>
    <message>
        <source>“%1” is no meridian; write degrees from 0 to 180, as --meridian 60</source>
        <translation>‏«%1» ليس خط زوال؛ اكتب درجات من 0 إلى 180، مثل ⁦--meridian 60⁩</translation>
    </message>
    <message>
        <source>“%1” is no amplitude of accommodation; write 0 to 25 D</source>
        <translation>‏«%1» ليس سعة مطابقة؛ اكتب من 0 إلى 25 D</translation>
    </message>
    <message>
        <source>“%1” is no working distance; write 100 to 2000 mm</source>
        <translation>‏«%1» ليس مسافة عمل؛ اكتب من 100 إلى 2000 mm</translation>
    </message>
    <message>
        <source>“%1” is no age; write years from 0 to 120</source>
        <translation>‏«%1» ليس عمرًا؛ اكتب سنوات من 0 إلى 120</translation>
    </message>
    <message>
        <source>“%1” is no size of a frame; write the boxed lens width, the distance between lenses and the PD in mm, as --box 48 18 62</source>
        <translation>‏«%1» ليس مقاس إطار؛ اكتب عرض العدسة بنظام الصندوق والمسافة بين العدستين وPD بوحدة mm، مثل ⁦--box 48 18 62⁩</translation>
    </message>
    <message>
        <source>“%1” is out of range; write front and back surface in D (-40 to 40), thickness in mm (0 to 30) and index (1.3 to 2.0)</source>
        <translation>‏«%1» خارج المدى؛ اكتب السطح الأمامي والخلفي بوحدة D (من ⁦-40⁩ إلى 40)، والسماكة بوحدة mm (من 0 إلى 30)، ومعامل الانكسار (من 1.3 إلى 2.0)</translation>
    </message>
    <message>
        <source>%1 goes with a filled-in sheet; name it</source>
        <translation>‏%1 يرافق ورقة مملوءة؛ سمِّها</translation>
    </message>
    <message>
        <source>`count` needs the initials of two persons: --counted-by and --second</source>
        <translation>يحتاج ⁦`count`⁩ إلى الأحرف الأولى لشخصين: ⁦--counted-by⁩ و ⁦--second⁩</translation>
    </message>
    <message>
        <source>“%1” cannot be assumed; write centred, final or vertex</source>
        <translation>لا يمكن افتراض «%1»؛ اكتب centred أو final أو vertex</translation>
    </message>
    <message>
        <source>%1 does not make a pair; name a ready-made pair, or frame, right lens, left lens separated by commas</source>
        <translation>‏%1 لا يكوّن نظارة؛ سمِّ نظارة جاهزة، أو إطارًا وعدسة يمنى وعدسة يسرى مفصولة بفواصل</translation>
    </message>
    <message>
        <source>nothing can be judged for %1 yet: the prescription is not complete</source>
        <translation>لا يمكن تقييم شيء لـ %1 بعد: الوصفة غير تامة</translation>
    </message>
    <message>
        <source>“%1” is not a level; write aggregate, rows or full</source>
        <translation>‏«%1» ليس مستوى؛ اكتب aggregate أو rows أو full</translation>
    </message>
    <message>
        <source>`export` needs either --folder FOLDER or --level aggregate, rows or full</source>
        <translation>يحتاج ⁦`export`⁩ إلى ⁦--folder FOLDER⁩ أو ⁦--level aggregate⁩ أو rows أو full</translation>
    </message>
    <message>
        <source>--level full names persons; say why with --reason TEXT, it stays in the ledger</source>
        <translation>الخيار ⁦--level full⁩ يذكر أسماء الأشخاص؛ اذكر السبب بالخيار ⁦--reason TEXT⁩، ويبقى في السجل</translation>
    </message>
    <message>
        <source>--output writes CSV; leave --json out</source>
        <translation>الخيار ⁦--output⁩ يكتب CSV؛ اترك ⁦--json⁩</translation>
    </message>
    <message>
        <source>copies and backups of this folder, ledgers it was merged into, exported tables and paper are not reached; deal with them too</source>
        <translation>لا يصل ذلك إلى نسخ هذا المجلد ونسخه الاحتياطية ولا إلى السجلات التي دُمج فيها ولا إلى الجداول المصدَّرة والأوراق؛ عالجها أيضًا</translation>
    </message>
    <message>
        <source>this copy of an older form still has everything; delete it when it is not needed any more</source>
        <translation>هذه النسخة بالصيغة الأقدم ما زال فيها كل شيء؛ احذفها حين لا تعود لازمة</translation>
    </message>
    <message>
        <source>%1 entries of an older form have their reason in the chain itself; it cannot be blanked</source>
        <translation>قيود بصيغة أقدم عددها %1 سببها في السلسلة نفسها؛ ولا يمكن إفراغه</translation>
    </message>
    <message>
        <source>nobody in the ledger has the code %1</source>
        <translation>لا أحد في السجل له الرمز %1</translation>
    </message>
    <message>
        <source>no line here can be matched: the box holds no pair, lens or frame</source>
        <translation>لا يمكن مطابقة أي صنف هنا: ليس في الصندوق نظارة ولا عدسة ولا إطار</translation>
    </message>
    <message>
        <source>nothing is left in any line: count the box, or take in stock</source>
        <translation>لم يبق شيء في أي صنف: عُدّ الصندوق أو استلم مخزونًا</translation>
    </message>
    <message>
        <source>“%1” is not a cause; write one of %2</source>
        <translation>‏«%1» ليس علة؛ اكتب واحدة من %2</translation>
    </message>
    <message>
        <source>line %1 was changed by hand to %2, the ledger had %3; take it over with `quarterstep stock --accept-edits` or put it back with --discard-edits</source>
        <translation>غُيّر الصنف %1 يدويًا إلى %2، وكان في السجل %3؛ اعتمده بالأمر ⁦`quarterstep stock --accept-edits`⁩ أو أعده بالخيار ⁦--discard-edits⁩</translation>
    </message>
    <message>
        <source>`%1` needs either a list or --line LINE [--quantity N]</source>
        <translation>يحتاج ⁦`%1`⁩ إلى قائمة أو إلى ⁦--line LINE [--quantity N]⁩</translation>
    </message>
    <message>
        <source>nothing was written; mend what stands above and repeat</source>
        <translation>لم يُكتب شيء؛ أصلح ما ورد أعلاه ثم كرّر</translation>
    </message>
    <message>
        <source>“%1” is not a form; write minus, plus or as-written</source>
        <translation>‏«%1» ليس صيغة؛ اكتب minus أو plus أو as-written</translation>
    </message>
    <message>
        <source>nobody in the table has the code %1; these readings are not used</source>
        <translation>لا أحد في الجدول له الرمز %1؛ لا تُستعمل هذه القراءات</translation>
    </message>
    <message>
        <source>%1 goes with --explain PERSON LINE</source>
        <translation>‏%1 يرافق ⁦--explain PERSON LINE⁩</translation>
    </message>
    <message>
        <source>“%1” is no step of an order; write one of %2</source>
        <translation>‏«%1» ليس خطوة من طلب؛ اكتب واحدة من %2</translation>
    </message>
    <message>
        <source>`order %1` needs --person CODE</source>
        <translation>يحتاج ⁦`order %1`⁩ إلى ⁦--person CODE⁩</translation>
    </message>
    <message>
        <source>`order %1` needs --order ID, or --person CODE</source>
        <translation>يحتاج ⁦`order %1`⁩ إلى ⁦--order ID⁩ أو ⁦--person CODE⁩</translation>
    </message>
    <message>
        <source>`order %1` needs %2</source>
        <translation>يحتاج ⁦`order %1`⁩ إلى %2</translation>
    </message>
    <message>
        <source>“%1” is nothing to record; write one of %2</source>
        <translation>‏«%1» ليس مما يُسجَّل؛ اكتب واحدًا من %2</translation>
    </message>
    <message>
        <source>`record %1` needs %2</source>
        <translation>يحتاج ⁦`record %1`⁩ إلى %2</translation>
    </message>
    <message>
        <source>“%1” is not a day; write it as 2026-03-01</source>
        <translation>‏«%1» ليس يومًا؛ اكتبه مثل ⁦2026-03-01⁩</translation>
    </message>
    <message>
        <source>`record %1` needs --entry ID, or --person CODE for the hand-over of today</source>
        <translation>يحتاج ⁦`record %1`⁩ إلى ⁦--entry ID⁩، أو إلى ⁦--person CODE⁩ لتسليم اليوم</translation>
    </message>
    <message>
        <source>line %1 has pieces held and in quarantine; say --quarantine or --held</source>
        <translation>الصنف %1 له قطع محجوزة وقطع معزولة؛ اذكر ⁦--quarantine⁩ أو ⁦--held⁩</translation>
    </message>
    <message>
        <source>%1 goes with --accept-edits, --discard-edits, --moved-here or --second-station</source>
        <translation>‏%1 يرافق ⁦--accept-edits⁩ أو ⁦--discard-edits⁩ أو ⁦--moved-here⁩ أو ⁦--second-station⁩</translation>
    </message>
    <message>
        <source>only one of %1 at a time</source>
        <translation>واحد فقط في كل مرة من %1</translation>
    </message>
    <message>
        <source>--accept-edits needs --reason TEXT</source>
        <translation>يحتاج الخيار ⁦--accept-edits⁩ إلى ⁦--reason TEXT⁩</translation>
    </message>
    <message>
        <source>`transfer out` needs --to SITE</source>
        <translation>يحتاج ⁦`transfer out`⁩ إلى ⁦--to SITE⁩</translation>
    </message>
    <message>
        <source>%1 is this site; name the other one</source>
        <translation>‏%1 هو هذا الموقع؛ سمِّ الآخر</translation>
    </message>
    <message>
        <source>entry %1 is not a transfer in the air; `quarterstep transfer` lists them</source>
        <translation>القيد %1 ليس نقلًا في الطريق؛ يسرد ⁦`quarterstep transfer`⁩ ما في الطريق</translation>
    </message>
    <message>
        <source>say what came in: a list, or --line; only a transfer that this ledger has is known by --sent alone</source>
        <translation>اذكر ما دخل: قائمة أو ⁦--line⁩؛ لا يُعرف بالخيار ⁦--sent⁩ وحده إلا نقل موجود في هذا السجل</translation>
    </message>
    <message>
        <source>`transfer in` needs --from SITE</source>
        <translation>يحتاج ⁦`transfer in`⁩ إلى ⁦--from SITE⁩</translation>
    </message>
    <message>
        <source>“%1” is neither out nor in</source>
        <translation>‏«%1» ليس out ولا in</translation>
    </message>
    <message>
        <source>“%1” is no power that could be compared; write sphere, cylinder and axis</source>
        <translation>‏«%1» ليس قوة يمكن مقارنتها؛ اكتب الكرة والأسطوانة والمحور</translation>
    </message>
    <message>
        <source>this set judges prism between both lenses; give order and reading of the left one too</source>
        <translation>تقيّم هذه المجموعة المنشور بين العدستين؛ أعطِ طلب اليسرى وقراءتها أيضًا</translation>
    </message>
    <message>
        <source>write order and reading of one lens, or order and reading of the right lens and then of the left</source>
        <translation>اكتب طلب عدسة واحدة وقراءتها، أو طلب العدسة اليمنى وقراءتها ثم اليسرى</translation>
    </message>
    <message>
        <source>this ledger had an older form and was brought up; as it was it stands in %1</source>
        <translation>كان هذا السجل بصيغة أقدم وحُدّث؛ ونسخته كما كان في %1</translation>
    </message>
    <message>
        <source>line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>الصنف %1: الموجود %2، المحجوز %3، المعزول %4، وهذا لا يكفي؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>there is no line %1 in stock.yaml of %2; add it there with on hand: 0, or mend the name</source>
        <translation>لا يوجد صنف %1 في stock.yaml لدى %2؛ أضفه هناك مع on hand: 0، أو أصلح الاسم</translation>
    </message>
    <message>
        <source>a count needs two persons; %1 cannot be both</source>
        <translation>العدّ يحتاج إلى شخصين؛ لا يمكن أن يكون %1 كليهما</translation>
    </message>
    <message>
        <source>line %1: counted %2, the book says %3; say why, in the row or with --reason</source>
        <translation>الصنف %1: المعدود %2، وفي الدفتر %3؛ اذكر السبب، في الصف أو بالخيار ⁦--reason⁩</translation>
    </message>
    <message>
        <source>line %1: %2 were sent, %3 arrived; the sender should know</source>
        <translation>الصنف %1: أُرسل %2 ووصل %3؛ ينبغي أن يعلم المرسل</translation>
    </message>
    <message>
        <source>this order is “%1” already; take back its last step %2 first</source>
        <translation>هذا الطلب «%1» من قبل؛ ألغِ أولًا خطوته الأخيرة %2</translation>
    </message>
    <message>
        <source>nothing that was received of lot %1 is available</source>
        <translation>لا يتاح شيء مما استُلم من الدفعة %1</translation>
    </message>
    <message>
        <source>this hand-over is of %1; a hand-over is taken back on its day only; if the pair came back, enter it as returned</source>
        <translation>هذا التسليم بتاريخ %1؛ لا يُلغى التسليم إلا في يومه؛ إذا عادت النظارة فأدخلها على أنها أُعيدت</translation>
    </message>
    <message>
        <source>nothing was handed over to %1 today</source>
        <translation>لم يُسلَّم شيء اليوم إلى %1</translation>
    </message>
    <message>
        <source>%1 was given %2 pairs today; say which with --entry %3</source>
        <translation>استلم %1 اليوم نظارات عددها %2؛ حدد أيها بالخيار ⁦--entry %3⁩</translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation>لا يوجد طلب %1</translation>
    </message>
    <message>
        <source>this order is “%1”; “%2” cannot follow</source>
        <translation>هذا الطلب «%1»؛ ولا يمكن أن يليه «%2»</translation>
    </message>
    <message>
        <source>%1 has no open order</source>
        <translation>ليس لـ %1 طلب مفتوح</translation>
    </message>
    <message>
        <source>%1 has %2 open orders; say which with --order %3</source>
        <translation>لـ %1 طلبات مفتوحة عددها %2؛ حدد أيها بالخيار ⁦--order %3⁩</translation>
    </message>
    <message>
        <source>something has this name already; name a place that is free</source>
        <translation>يوجد شيء بهذا الاسم من قبل؛ سمِّ مكانًا خاليًا</translation>
    </message>
    <message>
        <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
        <translation>‏%1 يكلّف من الإبصار أقل من %2: %3 مقابل %4 logMAR للعينين</translation>
    </message>
    <message>
        <source>%1 is within the limits, or may be tried; %2 is outside one</source>
        <translation>‏%1 ضمن الحدود أو يجوز تجربته؛ و%2 خارج أحد الحدود</translation>
    </message>
    <message>
        <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
        <translation>‏%1 مقبول كما هو؛ و%2 قيد التجربة حتى تُكتب حدة الإبصار به</translation>
    </message>
    <message>
        <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
        <translation>متساويان في الإبصار؛ تحفظات %1 أقل من تحفظات %2: %3 مقابل %4</translation>
    </message>
    <message>
        <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
        <translation>متساويان في الإبصار والتحفظات؛ يميل %1 إلى الجهة التي يرفضها الناس في عيون أقل من %2: %3 مقابل %4</translation>
    </message>
    <message>
        <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
        <translation>متساويان حتى هنا؛ يحفظ %1 توازن العينين أكثر من %2: الفرق %3 مقابل %4 D</translation>
    </message>
    <message>
        <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
        <translation>متساويان حتى هنا؛ المنشور الأفقي في %1 أقل منه في %2: %3 مقابل %4 ديوبتر منشوري</translation>
    </message>
    <message>
        <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
        <translation>متساويان حتى هنا؛ للقرب تأتي القاعدة للداخل (%1) قبل القاعدة للخارج (%2)</translation>
    </message>
    <message>
        <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
        <translation>متساويان حتى هنا؛ يلائم إطار %1 المقاس المطلوب أكثر من %2: يبتعد بفئات عددها %3 مقابل %4</translation>
    </message>
    <message>
        <source>equal so far; %1 is less scarce in the box than %2</source>
        <translation>متساويان حتى هنا؛ %1 أقل ندرة في الصندوق من %2</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
        <translation>متساويان في كل ما يُقيَّم؛ قطع %1 أقل من قطع %2: %3 مقابل %4</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 comes before %2 by name</source>
        <translation>متساويان في كل ما يُقيَّم؛ يأتي %1 قبل %2 بالاسم</translation>
    </message>
    <message>
        <source>%1 and %2 are the same</source>
        <translation>‏%1 و%2 شيء واحد</translation>
    </message>
    <message>
        <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
        <translation>احتمال أن يكون الخطأ الحقيقي ضمن حده %1 %: كرّر القراءات</translation>
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
        <translation>بُعد كل حدقة</translation>
    </message>
    <message>
        <source>the heights in the chosen frame</source>
        <translation>الارتفاعان في الإطار المختار</translation>
    </message>
    <message>
        <source>the vertex distance of the refraction</source>
        <translation>مسافة القرنية عند القياس</translation>
    </message>
    <message>
        <source>the frame</source>
        <translation>الإطار</translation>
    </message>
    <message>
        <source>single vision for %1 mm: whole power, nothing to be added</source>
        <translation>أحادية البؤرة لمسافة %1 مم: القوة كاملة، لا يضاف شيء</translation>
    </message>
    <message>
        <source>centration computed from the distance PD, not measured</source>
        <translation>المركز محسوب من بُعد الحدقتين للبعيد، غير مقيس</translation>
    </message>
    <message>
        <source>each eye&apos;s PD is half of the binocular one</source>
        <translation>بُعد كل حدقة نصف البُعد الكلي</translation>
    </message>
    <message>
        <source>balance lens: as its fellow, for looks and weight</source>
        <translation>عدسة موازنة: كأختها، للشكل والوزن</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses are advised</source>
        <translation>عين واحدة مبصرة: يُنصح بعدسات مقاومة للصدم</translation>
    </message>
    <message>
        <source>for a child: impact-resistant lenses are advised</source>
        <translation>لطفل: يُنصح بعدسات مقاومة للصدم</translation>
    </message>
    <message>
        <source>prism as prescribed, each eye its own</source>
        <translation>المنشور كما وُصف، لكل عين منشورها</translation>
    </message>
    <message>
        <source>refracted at a vertex distance of %1 mm</source>
        <translation>قيس على مسافة قرنية %1 مم</translation>
    </message>
    <message>
        <source>from an objective reading only</source>
        <translation>من قراءة موضوعية فقط</translation>
    </message>
    <message>
        <source>%1 is used: clean it and read its power before it is given</source>
        <translation>‏%1 مستعمل: نظّفه واقرأ قوته قبل تسليمه</translation>
    </message>
    <message>
        <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
        <translation>من عمر 65 سنة يكون التغيير بمقدار %1 D دفعة واحدة كبيرًا: خطر السقوط؛ اسأل كاتب الوصفة</translation>
    </message>
    <message>
        <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
        <translation>تبتعد عن نظارته الحالية بمقدار %1 D: إذا جرى ذلك خلال أشهر فعيادة العيون تبحث عن السبب</translation>
    </message>
    <message>
        <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
        <translation>من عمر 65 سنة يصعب التعود على محور مائل دار أكثر من 10 درجات؛ اسأل كاتب الوصفة</translation>
    </message>
    <message>
        <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
        <translation>تبتعد الإضافة %1 أكثر من 0.75 D عن كل جدول لهذا العمر: هل قيست على %2 mm؟</translation>
    </message>
    <message>
        <source>does not read N8 with the near correction: see where the rest is lost</source>
        <translation>لا يقرأ N8 بتصحيح القرب: ابحث أين يُفقد الباقي</translation>
    </message>
    <message>
        <source>half the addition is used: no distance was stated for this work</source>
        <translation>يُستعمل نصف الإضافة: لم تُذكر مسافة لهذا العمل</translation>
    </message>
    <message>
        <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
        <translation>نظارته الحالية ضمن الحدود لهذا الغرض: ربما احتياطية فقط</translation>
    </message>
    <message>
        <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
        <translation>طفل طويل النظر دون شلّ المطابقة: قد تخفي القراءة نحو 3 D إضافية؛ والقرار لكاتب الوصفة</translation>
    </message>
    <message>
        <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
        <translation>طفل دون شلّ المطابقة: تميل هذه القراءات نحو 0.4 D إلى جهة السالب عند قصار النظر، وأكثر عند غيرهم</translation>
    </message>
    <message>
        <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
        <translation>دون 8 سنوات وقصر النظر يتجاوز 3.00 D: معرّض للغمش (كسل العين)</translation>
    </message>
    <message>
        <source>a child&apos;s eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
        <translation>تختلف عينا طفل بمقدار 1.00 D أو أكثر في جهة الموجب: معرّض للغمش (كسل العين)</translation>
    </message>
    <message>
        <source>a child&apos;s cylinders differ by 2.00 D or more: at risk of amblyopia</source>
        <translation>تختلف أسطوانتا طفل بمقدار 2.00 D أو أكثر: معرّض للغمش (كسل العين)</translation>
    </message>
    <message>
        <source>would need better acuity with this very pair</source>
        <translation>يلزمه إبصار أحدّ بهذه النظارة نفسها</translation>
    </message>
    <message>
        <source>would do once the vertex distance is recorded</source>
        <translation>يفي بالحاجة متى سُجّلت مسافة القمة</translation>
    </message>
    <message>
        <source>would do if the PD, once measured, is near %1 mm</source>
        <translation>يفي بالحاجة إذا كانت PD عند قياسها قريبة من %1 mm</translation>
    </message>
    <message>
        <source>would do if the prescriber allows prism by decentration</source>
        <translation>يفي بالحاجة إذا أذن كاتب الوصفة بالمنشور بإزاحة المركز</translation>
    </message>
    <message>
        <source>would do with centres %1 mm apart</source>
        <translation>يفي بالحاجة لو كان بين المركزين %1 mm</translation>
    </message>
    <message>
        <source>would do with both centres at the same height</source>
        <translation>يفي بالحاجة لو كان المركزان على ارتفاع واحد</translation>
    </message>
    <message>
        <source>would do with %1 in both lenses instead of %2</source>
        <translation>يفي بالحاجة لو كان في العدستين %1 بدل %2</translation>
    </message>
    <message>
        <source>would do with %1 D in both lenses</source>
        <translation>يفي بالحاجة لو كان في العدستين %1 D</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the right lens</source>
        <translation>يفي بالحاجة لو كانت الكرة %1 في العدسة اليمنى</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the left lens</source>
        <translation>يفي بالحاجة لو كانت الكرة %1 في العدسة اليسرى</translation>
    </message>
    <message>
        <source>would do with addition %1</source>
        <translation>يفي بالحاجة لو كانت الإضافة %1</translation>
    </message>
    <message>
        <source>would do with a lens of its own for each eye: right %1, left %2</source>
        <translation>يفي بالحاجة لو كانت لكل عين عدستها: اليمنى %1، اليسرى %2</translation>
    </message>
    <message>
        <source>would do with lenses made to the prescription, cylinder included</source>
        <translation>يفي بالحاجة لو صُنعت العدسات بحسب الوصفة مع الأسطوانة</translation>
    </message>
    <message>
        <source>log10(1 + b²): low blur of any kind; no axis and no pupil in it</source>
        <translation>‏⁦log10(1 + b²)⁩: لتشوش قليل من أي نوع؛ لا محور فيه ولا حدقة</translation>
    </message>
    <message>
        <source>0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place</source>
        <translation>‏⁦0.017 C² + 0.125 C⁩: لأسطوانة باقية C عند المصابين بطول النظر الشيخوخي، والكرة المتوسطة في موضعها</translation>
    </message>
    <message>
        <source>0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far</source>
        <translation>من 0.18 إلى 0.22 logMAR لكل ديوبتر من الأسطوانة، والكرة المتوسطة في موضعها، للبعد</translation>
    </message>
    <message>
        <source>one line lost for every 0.25 to 0.5 D of blur</source>
        <translation>يُفقد سطر واحد لكل 0.25 إلى 0.5 D من التشوش</translation>
    </message>
    <message>
        <source>%1 lies outside the powers the set %2 was made for</source>
        <translation>‏%1 خارج القوى التي وُضعت لها المجموعة %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2</source>
        <translation>انحراف خط زوال الكرة %1، الحد %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2: %3 too much</source>
        <translation>انحراف خط زوال الكرة %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>sphere meridian off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف خط زوال الكرة %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2</source>
        <translation>انحراف خط الزوال الرئيسي الأكثر إيجابًا %1، الحد %2</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>انحراف خط الزوال الرئيسي الأكثر إيجابًا %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف خط الزوال الرئيسي الأكثر إيجابًا %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2</source>
        <translation>انحراف خط الزوال الرئيسي الأكثر سلبًا %1، الحد %2</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>انحراف خط الزوال الرئيسي الأكثر سلبًا %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف خط الزوال الرئيسي الأكثر سلبًا %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2</source>
        <translation>انحراف الأسطوانة %1، الحد %2</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2: %3 too much</source>
        <translation>انحراف الأسطوانة %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>cylinder off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف الأسطوانة %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2</source>
        <translation>انحراف المحور %1، الحد %2</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2: %3 too much</source>
        <translation>انحراف المحور %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>axis off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف المحور %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2</source>
        <translation>انحراف الإضافة %1، الحد %2</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2: %3 too much</source>
        <translation>انحراف الإضافة %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>addition off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف الإضافة %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2</source>
        <translation>انحراف المنشور الأفقي %1، الحد %2</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2: %3 too much</source>
        <translation>انحراف المنشور الأفقي %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>horizontal prism off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف المنشور الأفقي %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2</source>
        <translation>انحراف المنشور العمودي %1، الحد %2</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2: %3 too much</source>
        <translation>انحراف المنشور العمودي %1، الحد %2: زيادة %3</translation>
    </message>
    <message>
        <source>vertical prism off by %1: shown only, the set has no limit for it</source>
        <translation>انحراف المنشور العمودي %1: للعرض فقط، لا حد له في المجموعة</translation>
    </message>
    <message>
        <source>there is no tolerance set “%1”; there are: %2</source>
        <translation>لا توجد مجموعة تفاوتات «%1»؛ الموجود: %2</translation>
    </message>
    <message>
        <source>the tolerance set “%1” is not enabled: %2</source>
        <translation>مجموعة التفاوتات «%1» غير مفعّلة: %2</translation>
    </message>
    <message>
        <source>distance %1 and near %2 differ in cylinder; no addition joins them</source>
        <translation>البعد %1 والقرب %2 مختلفان في الأسطوانة؛ ولا إضافة تجمعهما</translation>
    </message>
    <message>
        <source>near %2 has less plus than distance %1; were they exchanged?</source>
        <translation>القرب %2 أقل إيجابًا من البعد %1؛ هل بُدّلا؟</translation>
    </message>
    <message>
        <source>this text says it is the left eye, and stands for the right</source>
        <translation>يقول هذا النص إنه للعين اليسرى، ومكانه لليمنى</translation>
    </message>
    <message>
        <source>this text says it is the right eye, and stands for the left</source>
        <translation>يقول هذا النص إنه للعين اليمنى، ومكانه لليسرى</translation>
    </message>
    <message>
        <source>too few (%1 read): three or more tell how steady they are</source>
        <translation>قليل جدًا (المقروء %1): ثلاث قراءات أو أكثر تُظهر مدى ثباتها</translation>
    </message>
    <message>
        <source>scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>مشتتة: تبتعد القراءات %1 D عن متوسطها والحد %2 D؛ تُرك %3 من %4</translation>
    </message>
    <message>
        <source>steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>ثابتة: تبتعد القراءات %1 D عن متوسطها والحد %2 D؛ تُرك %3 من %4</translation>
    </message>
    <message>
        <source>take readings until there are three or more; until then a published scatter is used</source>
        <translation>خذ قراءات حتى تصير ثلاثًا أو أكثر؛ وحتى ذلك يُستعمل تشتت منشور</translation>
    </message>
    <message>
        <source>scattered again: look at the eye&apos;s health (cornea, lens, tears, fixation) before prescribing</source>
        <translation>مشتتة من جديد: انظر في صحة العين (القرنية والعدسة والدموع والتثبيت) قبل كتابة الوصفة</translation>
    </message>
    <message>
        <source>repeat the readings, with blinks and steady fixation</source>
        <translation>كرّر القراءات مع الرمش وتثبيت النظر</translation>
    </message>
    <message>
        <source>use the mean of the readings kept; the ones left out are shown</source>
        <translation>استعمل متوسط القراءات المحفوظة؛ وتُعرض القراءات المتروكة</translation>
    </message>
    <message>
        <source>use the mean as the start of the subjective refraction</source>
        <translation>استعمل المتوسط بداية لقياس الانكسار الذاتي</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere (limit 1) and %2 D in astigmatism (limit 0.5): confirm the final</source>
        <translation>تبتعد القراءة الموضوعية عن النهائية بمقدار %1 D في الكرة المتوسطة (الحد 1) و%2 D في اللابؤرية (الحد 0.5): أكّد النهائية</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere; up to 0.5 is usual</source>
        <translation>تبتعد القراءة الموضوعية عن النهائية بمقدار %1 D في الكرة المتوسطة؛ والمعتاد حتى 0.5</translation>
    </message>
    <message>
        <source>objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism</source>
        <translation>القراءة الموضوعية والنهائية متفقتان: الفرق %1 D في الكرة المتوسطة و%2 D في اللابؤرية</translation>
    </message>
    <message>
        <source>a movement of an entry “%1” names no line</source>
        <translation>حركة في قيد «%1» لا تذكر صنفًا</translation>
    </message>
    <message>
        <source>an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 quarantined</source>
        <translation>لا يمكن لقيد «%1» أن يحرّك الصنف %2 بمقدار %3 في الموجود و%4 في المحجوز و%5 في المعزول</translation>
    </message>
    <message>
        <source>an entry “%1” moves at least one line</source>
        <translation>قيد «%1» يحرّك صنفًا واحدًا على الأقل</translation>
    </message>
    <message>
        <source>an entry “%1” names a person by the camp code</source>
        <translation>قيد «%1» يذكر شخصًا برمز المخيم</translation>
    </message>
    <message>
        <source>“entered-in-error” names the entry it takes back, other kinds none</source>
        <translation>قيد “entered-in-error” يذكر القيد الذي يلغيه، ولا تذكره الأنواع الأخرى</translation>
    </message>
    <message>
        <source>an entry “%1” needs “%2”</source>
        <translation>قيد «%1» يحتاج إلى «%2»</translation>
    </message>
    <message>
        <source>line %1 has %2 available, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>الصنف %1: المتاح %2، المحجوز %3، المعزول %4، وهذا لا يكفي؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>entry %1 is “%2” and stays; a wrong count is put right by counting</source>
        <translation>القيد %1 هو «%2» ويبقى؛ العدد الخاطئ يُصلَح بالعدّ</translation>
    </message>
    <message>
        <source>something was posted meanwhile; nothing was written; look again and repeat</source>
        <translation>قُيّد شيء في هذه الأثناء؛ لم يُكتب شيء؛ انظر من جديد ثم كرّر</translation>
    </message>
    <message>
        <source>the person is forgotten, but another program reads the ledger and old text stays in its journal; close it there and repeat</source>
        <translation>نُسي الشخص، لكن برنامجًا آخر يقرأ السجل ويبقى نص قديم في دفتر يومياته؛ أغلقه هناك ثم كرّر</translation>
    </message>
    <message>
        <source>this is the ledger of the camp itself; name another one</source>
        <translation>هذا سجل المخيم نفسه؛ سمِّ سجلًا آخر</translation>
    </message>
    <message>
        <source>entry %1 of this ledger is not as it was written: %2; nothing was taken over</source>
        <translation>القيد %1 من هذا السجل ليس كما كُتب: %2؛ لم يُؤخذ شيء</translation>
    </message>
    <message>
        <source>station %1 has two entries number %2, %3 here and %4 there: its folder was copied and both copies went on as the same station; nothing was taken over, both files are as they were; count the stock of one and enter the difference</source>
        <translation>للمحطة %1 قيدان برقم %2، هنا %3 وهناك %4: نُسخ مجلدها واستمرت النسختان كمحطة واحدة؛ لم يُؤخذ شيء والملفان كما كانا؛ عُدّ مخزون أحدهما وأدخل الفرق</translation>
    </message>
    <message>
        <source>entry %1 is in both ledgers with another content; one of them was changed; nothing was taken over</source>
        <translation>القيد %1 في السجلين بمحتوى مختلف؛ غُيّر أحدهما؛ لم يُؤخذ شيء</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; nothing was taken over</source>
        <translation>قيد في هذا السجل لا يُقرأ؛ لم يُؤخذ شيء</translation>
    </message>
    <message>
        <source>entries %1 and %2 take back the same entry %3; nothing was taken over</source>
        <translation>القيدان %1 و%2 يلغيان القيد نفسه %3؛ لم يُؤخذ شيء</translation>
    </message>
    <message>
        <source>entry %1 takes back %2, which is in neither ledger; merge the ledger that has it first</source>
        <translation>القيد %1 يلغي %2، وهو ليس في أي من السجلين؛ ادمج أولًا السجل الذي فيه</translation>
    </message>
    <message>
        <source>line %1 of %2 would go below zero: entries %3 and %4 took the same pieces; nothing was taken over; count the stock there and enter the difference first</source>
        <translation>ينزل الصنف %1 من %2 تحت الصفر: القيدان %3 و%4 أخذا القطع نفسها؛ لم يُؤخذ شيء؛ عُدّ المخزون هناك وأدخل الفرق أولًا</translation>
    </message>
    <message>
        <source>entries of this very station came from a copy of its folder; do not use that copy any more</source>
        <translation>جاءت قيود هذه المحطة نفسها من نسخة من مجلدها؛ لا تستعمل تلك النسخة بعد الآن</translation>
    </message>
    <message>
        <source>%1 has entries of %2 stations: its folder was copied and both were used; count its stock, since both began with the same pieces</source>
        <translation>في %1 قيود محطات عددها %2: نُسخ مجلده واستُعملت النسختان؛ عُدّ مخزونه، فكلتاهما بدأت بالقطع نفسها</translation>
    </message>
    <message>
        <source>write the first and the last age, for example [40, 44]</source>
        <translation>اكتب أول عمر وآخر عمر، مثل ⁦[40, 44]⁩</translation>
    </message>
    <message>
        <source>ages and values rise, and bands do not overlap</source>
        <translation>تتصاعد الأعمار والقيم، ولا تتداخل الفئات</translation>
    </message>
    <message>
        <source>write the rows as a list: [{ages: [40, 44], value: 0.65}, …]</source>
        <translation>اكتب الصفوف كقائمة: ⁦[{ages: [40, 44], value: 0.65}, …]⁩</translation>
    </message>
    <message>
        <source>this is not a file of age tables of this program; the first key should read format: %1</source>
        <translation>هذا ليس ملف جداول أعمار لهذا البرنامج؛ ينبغي أن يكون المفتاح الأول format: %1</translation>
    </message>
    <message>
        <source>`tables` is a list; begin each table with a dash</source>
        <translation>المفتاح ⁦`tables`⁩ قائمة؛ ابدأ كل جدول بشرطة</translation>
    </message>
    <message>
        <source>line %1 stands here twice, first in row %2; write one row with the whole number</source>
        <translation>الصنف %1 موجود هنا مرتين، أولًا في الصف %2؛ اكتب صفًا واحدًا بالعدد كله</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is not used</source>
        <translation>العمود &quot;%1&quot; غير معروف؛ لا يُستعمل</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are line and quantity</source>
        <translation>العمود &quot;%1&quot; غير موجود؛ المطلوب line و quantity</translation>
    </message>
    <message>
        <source>the row names no line</source>
        <translation>الصف لا يذكر صنفًا</translation>
    </message>
    <message>
        <source>write format: %1</source>
        <translation>اكتب format: %1</translation>
    </message>
    <message>
        <source>lines is a list, one item with line and quantity each</source>
        <translation>المفتاح lines قائمة، في كل بند منها line و quantity</translation>
    </message>
    <message>
        <source>one scanned line a row; a table begins with a row that names its columns: line,quantity</source>
        <translation>صنف ممسوح واحد في كل صف؛ والجدول يبدأ بصف يسمي أعمدته: line,quantity</translation>
    </message>
    <message>
        <source>write each reading once: in the column reading, or in sphere, cylinder, axis</source>
        <translation>اكتب كل قراءة مرة واحدة: في العمود reading، أو في sphere, cylinder, axis</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person, eye and reading, or sphere, cylinder and axis in place of reading</source>
        <translation>العمود &quot;%1&quot; غير موجود؛ المطلوب person و eye و reading، أو sphere و cylinder و axis بدل reading</translation>
    </message>
    <message>
        <source>the row has no person; write the code of the person</source>
        <translation>الصف بلا شخص؛ اكتب رمز الشخص</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an eye; write right or left</source>
        <translation>‏&quot;%1&quot; ليس عينًا؛ اكتب right أو left</translation>
    </message>
    <message>
        <source>there is no reading here; write it, or delete the row</source>
        <translation>لا قراءة هنا؛ اكتبها أو احذف الصف</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an axis; a cylinder needs one from 1 to 180</source>
        <translation>‏&quot;%1&quot; ليس محورًا؛ الأسطوانة تحتاج إلى محور من 1 إلى 180</translation>
    </message>
    <message>
        <source>readings of the right eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>قراءات العين اليمنى لـ &quot;%1&quot;: %2؛ خذ ثلاثًا أو أكثر</translation>
    </message>
    <message>
        <source>readings of the left eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>قراءات العين اليسرى لـ &quot;%1&quot;: %2؛ خذ ثلاثًا أو أكثر</translation>
    </message>
    <message>
        <source>%1 is no step of 0.25 or 0.125 D; look at the writing again (3 and 5, 2 and 7 are alike)</source>
        <translation>‏%1 ليس من درجات 0.25 أو 0.125 D؛ راجع الخط من جديد (3 و5 متشابهان، و2 و7 كذلك)</translation>
    </message>
    <message>
        <source>one eye is written with a minus cylinder, the other with a plus cylinder; both are read as written: is that meant?</source>
        <translation>كُتبت إحدى العينين بأسطوانة سالبة والأخرى بأسطوانة موجبة؛ تُقرأ كل منهما كما كُتبت: هل هذا مقصود؟</translation>
    </message>
    <message>
        <source>age %1: is it right? Whether the rules for children count hangs on it</source>
        <translation>العمر %1: هل هو كذلك؟ يتوقف عليه هل تسري قواعد الأطفال</translation>
    </message>
    <message>
        <source>write two powers, for example [1.00, 3.50]</source>
        <translation>اكتب قوتين، مثل ⁦[1.00, 3.50]⁩</translation>
    </message>
    <message>
        <source>a set that is not enabled says why; add: why</source>
        <translation>المجموعة غير المفعّلة تذكر السبب؛ أضف ⁦why:⁩</translation>
    </message>
    <message>
        <source>this set is enabled though its figures are from memory; once they are compared with the standard, say so under confidence</source>
        <translation>هذه المجموعة مفعّلة مع أن أرقامها من الذاكرة؛ متى قورنت بالمعيار فاذكر ذلك في confidence</translation>
    </message>
    <message>
        <source>the set &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>المجموعة &quot;%1&quot; موجودة في الملف من قبل؛ سمِّ هذه باسم آخر</translation>
    </message>
    <message>
        <source>this is not a tolerance file of this program; the first key should read format: %1</source>
        <translation>هذا ليس ملف تفاوتات لهذا البرنامج؛ ينبغي أن يكون المفتاح الأول format: %1</translation>
    </message>
    <message>
        <source>`sets` is a list; begin each set with a dash</source>
        <translation>المفتاح ⁦`sets`⁩ قائمة؛ ابدأ كل مجموعة بشرطة</translation>
    </message>
    <message>
        <source>write the rows as a list: [{power up to: 6.50, limit: 0.13}, …]</source>
        <translation>اكتب الصفوف كقائمة: ⁦[{power up to: 6.50, limit: 0.13}, …]⁩</translation>
    </message>
    <message>
        <source>a row has one of: limit, percent, or not judged: yes</source>
        <translation>في كل صف واحد من: limit أو percent أو not judged: yes</translation>
    </message>
    <message>
        <source>nobody in this table can be given anything from this box; the plan is empty</source>
        <translation>لا أحد في هذا الجدول يمكن أن يُسلَّم شيئًا من هذا الصندوق؛ الخطة فارغة</translation>
    </message>
    <message>
        <source>there is no profile named %1 in these rules</source>
        <translation>لا توجد في هذه القواعد مجموعة باسم %1</translation>
    </message>
    <message>
        <source>entry %1 is the first that is not as it was written: %2; the audit stops before it</source>
        <translation>القيد %1 هو أول قيد ليس كما كُتب: %2؛ تتوقف المراجعة قبله</translation>
    </message>
    <message>
        <source>no standing hand-over with the id %1</source>
        <translation>لا يوجد تسليم قائم بالمعرّف %1</translation>
    </message>
    <message>
        <source>standard input is the table already; name a file for one of the two</source>
        <translation>الدخل القياسي هو الجدول من قبل؛ سمِّ ملفًا لأحد الاثنين</translation>
    </message>
    <message>
        <source>`import` needs either a LEDGER or --names FILE</source>
        <translation>يحتاج ⁦`import`⁩ إلى LEDGER أو إلى ⁦--names FILE⁩</translation>
    </message>
    <message>
        <source>this row was left out</source>
        <translation>تُرك هذا الصف</translation>
    </message>
    <message>
        <source>“%1” cannot come first; write children, first-pairs or worst-sight</source>
        <translation>لا يمكن أن يأتي “%1” أولًا؛ اكتب children أو first-pairs أو worst-sight</translation>
    </message>
    <message>
        <source>“%1” is not understood; write a group (children, adults, distance, near, intermediate or bifocal), = and a whole number, as children=3</source>
        <translation>‏“%1” غير مفهوم؛ اكتب فئة (children أو adults أو distance أو near أو intermediate أو bifocal) ثم = وعددًا بلا كسور، مثل children=3</translation>
    </message>
    <message>
        <source>no line was scanned into standard input</source>
        <translation>لم يُمسح أي صنف إلى الدخل القياسي</translation>
    </message>
    <message>
        <source>this needs the PIN of the %1: type it, set QUARTERSTEP_PIN, or give it with --pin-fd; nothing was written</source>
        <translation>يحتاج هذا إلى رمز PIN الخاص بدور %1: اكتبه، أو اضبط QUARTERSTEP_PIN، أو أعطه بالخيار ⁦--pin-fd⁩؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>this is not the PIN of the %1; nothing was written</source>
        <translation>ليس هذا رمز PIN الخاص بدور %1؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>“%1” is not a role; write optician, keeper or supervisor</source>
        <translation>‏“%1” ليس دورًا؛ اكتب optician أو keeper أو supervisor</translation>
    </message>
    <message>
        <source>name a table of people, or --camp to plan from its ledger</source>
        <translation>سمِّ جدول أشخاص، أو استعمل ⁦--camp⁩ للتخطيط من سجله</translation>
    </message>
    <message>
        <source>“%1” is not a paper; write one of %2</source>
        <translation>‏“%1” ليس ورقة؛ اكتب واحدة من %2</translation>
    </message>
    <message>
        <source>there is no catalogue for “%1”; there are %2</source>
        <translation>لا توجد ترجمة للغة “%1”؛ الموجود %2</translation>
    </message>
    <message>
        <source>“%1” is not a size of labels; write width and height in mm, as 63.5x38.1</source>
        <translation>‏“%1” ليس قياس ملصقات؛ اكتب العرض والارتفاع بوحدة mm، مثل 63.5x38.1</translation>
    </message>
    <message>
        <source>“%1” is not a resolution; write 100 to 1200 dots an inch</source>
        <translation>‏“%1” ليس دقة طباعة؛ اكتب من 100 إلى 1200 نقطة في البوصة</translation>
    </message>
    <message>
        <source>say where to print: one of --text, --json, --output FILE.pdf, --output FILE.png or --printer NAME</source>
        <translation>حدد أين يُطبع: واحد من ⁦--text⁩ أو ⁦--json⁩ أو ⁦--output FILE.pdf⁩ أو ⁦--output FILE.png⁩ أو ⁦--printer NAME⁩</translation>
    </message>
    <message>
        <source>“%1” is neither a PDF nor a PNG; end its name in .pdf or .png</source>
        <translation>‏“%1” ليس PDF ولا PNG؛ اجعل اسمه ينتهي بـ .pdf أو .png</translation>
    </message>
    <message>
        <source>“%1” is not a size of paper; write a4, a5, a6, roll-80, roll-58 or label</source>
        <translation>‏“%1” ليس قياس ورق؛ اكتب a4 أو a5 أو a6 أو roll-80 أو roll-58 أو label</translation>
    </message>
    <message>
        <source>the bars of %1 are too long for this paper; it stands there in words alone: give it a code of thirteen digits, or choose a wider label</source>
        <translation>خطوط الرمز الشريطي في %1 أطول من هذا الورق؛ يظهر بالكلمات وحدها: أعطه رمزًا من ثلاثة عشر رقمًا، أو اختر ملصقًا أعرض</translation>
    </message>
    <message>
        <source>the program that draws papers, %1, cannot be started: %2; --text prints without it</source>
        <translation>يتعذر تشغيل البرنامج الذي يرسم الأوراق، %1: %2؛ يطبع الخيار ⁦--text⁩ دونه</translation>
    </message>
    <message>
        <source>there is nothing to print: nobody and nothing here asks for this paper: %1</source>
        <translation>لا شيء للطباعة: لا أحد ولا شيء هنا يحتاج إلى هذه الورقة: %1</translation>
    </message>
    <message>
        <source>`print %1` needs a list of lines and quantities</source>
        <translation>يحتاج ⁦`print %1`⁩ إلى قائمة أصناف وكميات</translation>
    </message>
    <message>
        <source>say whose card with --role: optician, keeper or supervisor</source>
        <translation>حدد لمن البطاقة بالخيار ⁦--role⁩: ‏optician أو keeper أو supervisor</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to print</source>
        <translation>وصفة %1 غير مكتملة؛ لا طلب للطباعة</translation>
    </message>
    <message>
        <source>`print %1` needs the prescription table</source>
        <translation>يحتاج ⁦`print %1`⁩ إلى جدول الوصفات</translation>
    </message>
    <message>
        <source>%1 is not under 16; print the note for the person instead</source>
        <translation>عمر %1 ليس دون 16؛ اطبع الورقة الموجهة إلى الشخص بدلًا منها</translation>
    </message>
    <message>
        <source>this person has no camp code; give one before anything is printed</source>
        <translation>ليس لهذا الشخص رمز مخيم؛ أعطه رمزًا قبل طباعة أي شيء</translation>
    </message>
    <message>
        <source>nothing of %1 asks for a referral; there is no letter to print</source>
        <translation>لا شيء لدى %1 يستدعي إحالة؛ لا رسالة للطباعة</translation>
    </message>
    <message>
        <source>a label of this size does not hold its text; choose a larger one with --label-size, or a shorter name: %1</source>
        <translation>ملصق بهذا القياس لا يتسع لنصه؛ اختر أكبر منه بالخيار ⁦--label-size⁩، أو اسمًا أقصر: %1</translation>
    </message>
    <message>
        <source>there is no printer %1, and no other is set up here; write a PDF with --output and print it where there is one</source>
        <translation>لا توجد طابعة %1، ولا طابعة أخرى معدّة هنا؛ اكتب ملف PDF بالخيار ⁦--output⁩ واطبعه حيث توجد طابعة</translation>
    </message>
    <message>
        <source>there is no printer %1; there are %2</source>
        <translation>لا توجد طابعة %1؛ الموجود %2</translation>
    </message>
    <message>
        <source>the printer %1 does not take the paper</source>
        <translation>الطابعة %1 لا تقبل هذا الورق</translation>
    </message>
    <message>
        <source>printing was stopped</source>
        <translation>أُوقفت الطباعة</translation>
    </message>
    <message>
        <source>no font here has the script of %1; install the package %2 and print again</source>
        <translation>لا يوجد هنا خط فيه كتابة %1؛ ثبّت الحزمة %2 واطبع من جديد</translation>
    </message>
    <message>
        <source>there is no line %1 in this box</source>
        <translation>لا يوجد صنف %1 في هذا الصندوق</translation>
    </message>
    <message>
        <source>more people were told %1 than there are pieces of it; take a row out of the list</source>
        <translation>عدد من أُبلغوا بالصنف %1 أكثر من قطعه؛ احذف صفًا من القائمة</translation>
    </message>
    <message>
        <source>%1 does not wait in this table for that purpose, or stands in the list twice; take the row out</source>
        <translation>‏%1 لا ينتظر في هذا الجدول لهذا الغرض، أو ورد في القائمة مرتين؛ احذف الصف</translation>
    </message>
    <message>
        <source>stopped as asked; nothing was written</source>
        <translation>توقف كما طُلب؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>line %1 stands here by its name and by its code; write one row with the whole number</source>
        <translation>ورد الصنف %1 هنا باسمه وبرمزه؛ اكتب صفًا واحدًا بالعدد كله</translation>
    </message>
    <message>
        <source>the demand is %1 person; plan from more: nothing can be said of who comes next</source>
        <translation>عدد أشخاص الاحتياج %1؛ خطط من عدد أكبر: لا يمكن قول شيء عمن يأتي بعد ذلك</translation>
    </message>
    <message>
        <source>the budget is 0: nothing is bought; give --budget</source>
        <translation>الميزانية 0: لا يُشترى شيء؛ أعطِ ⁦--budget⁩</translation>
    </message>
    <message>
        <source>nobody of this demand can be served by any line on offer; nothing is bought</source>
        <translation>لا أحد من هذا الاحتياج يخدمه أي صنف معروض؛ لا يُشترى شيء</translation>
    </message>
    <message>
        <source>no pack on offer is within the budget, the weight and the boxes; nothing is bought</source>
        <translation>لا توجد عبوة معروضة ضمن الميزانية والوزن والصناديق؛ لا يُشترى شيء</translation>
    </message>
    <message>
        <source>what is on hand serves whoever can be served; nothing is bought</source>
        <translation>الموجود يخدم كل من يمكن خدمته؛ لا يُشترى شيء</translation>
    </message>
    <message>
        <source>the library for PINs cannot be used here</source>
        <translation>لا يمكن استعمال مكتبة رموز PIN هنا</translation>
    </message>
    <message>
        <source>a PIN has %1 to %2 characters; nothing was written</source>
        <translation>رمز PIN من %1 إلى %2 من الحروف؛ لم يُكتب شيء</translation>
    </message>
    <message>
        <source>there is not enough memory to keep a PIN; close other programs</source>
        <translation>الذاكرة لا تكفي لحفظ رمز PIN؛ أغلق برامج أخرى</translation>
    </message>
    <message>
        <source>nobody of this demand can be served from this box; no day was simulated</source>
        <translation>لا أحد من هذا الاحتياج يمكن خدمته من هذا الصندوق؛ لم يُحاكَ أي يوم</translation>
    </message>
    <message>
        <source>the same person had a pair for %1 by entry %2 already</source>
        <translation>استلم الشخص نفسه من قبل نظارة لغرض %1 بالقيد %2</translation>
    </message>
    <message>
        <source>%1 entries were taken back at one place on one day</source>
        <translation>أُلغيت قيود عددها %1 في مكان واحد في يوم واحد</translation>
    </message>
    <message>
        <source>line %1: counted %2 against the book</source>
        <translation>الصنف %1: المعدود %2 مقابل الدفتر</translation>
    </message>
    <message>
        <source>line %1 was later put aside (%2); this pair was given before</source>
        <translation>وُضع الصنف %1 جانبًا فيما بعد (%2)؛ وسُلّمت هذه النظارة قبل ذلك</translation>
    </message>
    <message>
        <source>the time of this entry is later than now</source>
        <translation>وقت هذا القيد بعد الآن</translation>
    </message>
    <message>
        <source>entered as not collected</source>
        <translation>أُدخل على أنه لم يُستلم</translation>
    </message>
    <message>
        <source>a letter was to be written beside this hand-over; none is recorded</source>
        <translation>كان يجب كتابة رسالة مع هذا التسليم؛ لا رسالة مسجلة</translation>
    </message>
    <message>
        <source>checked and waiting for more than %1 days</source>
        <translation>فُحصت وتنتظر منذ أكثر من %1 من الأيام</translation>
    </message>
    <message>
        <source>given until the order %1 comes, more than %2 days ago</source>
        <translation>سُلّمت إلى أن يصل الطلب %1، قبل أكثر من %2 من الأيام</translation>
    </message>
    <message>
        <source>this pair may be given only with the acuity read with it; none was recorded</source>
        <translation>لا يجوز تسليم هذه النظارة إلا مع حدة إبصار مقروءة بها؛ لم تُسجَّل أي حدة</translation>
    </message>
    <message>
        <source>by the record nothing was needed for this purpose</source>
        <translation>بحسب المسجَّل لم تكن حاجة إلى شيء لهذا الغرض</translation>
    </message>
    <message>
        <source>the centres of this pair were assumed, not measured</source>
        <translation>مراكز هذه النظارة مفترضة لا مقيسة</translation>
    </message>
    <message>
        <source>the PD was not measured; prism is judged at its worst likely value</source>
        <translation>لم تُقس PD؛ يُقيَّم المنشور عند أسوأ قيمة محتملة له</translation>
    </message>
    <message>
        <source>the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths</source>
        <translation>يقول القيد %1، وبإعادة التقييم هو %2؛ كانت الكلفة %3 وصارت %4 من الألف</translation>
    </message>
    <message>
        <source>right eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>العين اليمنى: %1 بهذه النظارة، أسوأ من المتوقع بمقدار %2 logMAR</translation>
    </message>
    <message>
        <source>left eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>العين اليسرى: %1 بهذه النظارة، أسوأ من المتوقع بمقدار %2 logMAR</translation>
    </message>
    <message>
        <source>%1 was in the box (bin %2) and would have cost %3 logMAR less</source>
        <translation>كان %1 في الصندوق (الخانة %2) وكان سيكلف أقل بمقدار %3 logMAR</translation>
    </message>
    <message>
        <source>outside a limit, no reason given</source>
        <translation>خارج أحد الحدود دون ذكر سبب</translation>
    </message>
    <message>
        <source>see the person again; read the pair with the focimeter</source>
        <translation>افحص الشخص من جديد؛ واقرأ النظارة بمقياس العدسات</translation>
    </message>
    <message>
        <source>outside a limit, with a reason</source>
        <translation>خارج أحد الحدود مع ذكر سبب</translation>
    </message>
    <message>
        <source>read the reasons together; where one repeats, change stock or rules</source>
        <translation>اقرأ الأسباب معًا؛ وحيث يتكرر سبب غيّر المخزون أو القواعد</translation>
    </message>
    <message>
        <source>a clearly better pair was in the box</source>
        <translation>كان في الصندوق نظارة أفضل بوضوح</translation>
    </message>
    <message>
        <source>look at the bin named: is it reachable, labelled, in its place?</source>
        <translation>انظر إلى الخانة المذكورة: هل يسهل الوصول إليها، وعليها ملصق، وفي مكانها؟</translation>
    </message>
    <message>
        <source>the pair is off its label</source>
        <translation>النظارة تخالف ملصقها</translation>
    </message>
    <message>
        <source>quarantine the line, read ten pieces, tell the supplier</source>
        <translation>اعزل الصنف، واقرأ عشر قطع، وأبلغ المورّد</translation>
    </message>
    <message>
        <source>acuity with the pair worse than predicted</source>
        <translation>حدة الإبصار بالنظارة أسوأ من المتوقع</translation>
    </message>
    <message>
        <source>refract again; where it repeats, look at the refraction of the day</source>
        <translation>أعد قياس الانكسار؛ وحيث يتكرر ذلك راجع قياسات ذلك اليوم</translation>
    </message>
    <message>
        <source>on trial, no acuity recorded</source>
        <translation>قيد التجربة، ولا حدة إبصار مسجلة</translation>
    </message>
    <message>
        <source>call the person back and read the acuity with the pair</source>
        <translation>استدعِ الشخص واقرأ حدة الإبصار بالنظارة</translation>
    </message>
    <message>
        <source>nothing was needed by the record</source>
        <translation>لم تكن حاجة إلى شيء بحسب المسجَّل</translation>
    </message>
    <message>
        <source>look at what is prescribed to whom; a pair not needed is one that somebody lacks</source>
        <translation>راجع ما يوصف ولمن؛ فالنظارة التي لا حاجة إليها تنقص شخصًا آخر</translation>
    </message>
    <message>
        <source>no check recorded</source>
        <translation>لم يُسجَّل أي فحص</translation>
    </message>
    <message>
        <source>record the four checks at hand-over; draw a sample of these for the bench</source>
        <translation>سجّل الفحوص الأربعة عند التسليم؛ واسحب عينة من هذه لطاولة القياس</translation>
    </message>
    <message>
        <source>PD or centres not measured</source>
        <translation>لم تُقس PD أو المراكز</translation>
    </message>
    <message>
        <source>measure the PD of everybody and the centres of every line from 1.50 D up</source>
        <translation>قِس PD لكل شخص، ومراكز كل صنف من 1.50 D فما فوق</translation>
    </message>
    <message>
        <source>given from a line in quarantine</source>
        <translation>سُلّمت من صنف معزول</translation>
    </message>
    <message>
        <source>read the pair with the focimeter, or exchange it</source>
        <translation>اقرأ النظارة بمقياس العدسات، أو استبدلها</translation>
    </message>
    <message>
        <source>a temporary pair never replaced</source>
        <translation>نظارة مؤقتة لم تُستبدل قط</translation>
    </message>
    <message>
        <source>ask the laboratory for the order, and the person to come</source>
        <translation>اسأل المختبر عن الطلب، واطلب من الشخص الحضور</translation>
    </message>
    <message>
        <source>an order not collected</source>
        <translation>طلب لم يُستلم</translation>
    </message>
    <message>
        <source>send word to the person; bring the pair to the next visit</source>
        <translation>أرسل خبرًا إلى الشخص؛ وأحضر النظارة في الزيارة القادمة</translation>
    </message>
    <message>
        <source>a letter of referral not written</source>
        <translation>رسالة إحالة لم تُكتب</translation>
    </message>
    <message>
        <source>write it now</source>
        <translation>اكتبها الآن</translation>
    </message>
    <message>
        <source>handed over twice for one purpose</source>
        <translation>تسليم مرتين لغرض واحد</translation>
    </message>
    <message>
        <source>count the line; where one piece is too many, take the second entry back</source>
        <translation>عُدّ الصنف؛ وإن زادت قطعة فألغِ القيد الثاني</translation>
    </message>
    <message>
        <source>many corrections on one day</source>
        <translation>تصحيحات كثيرة في يوم واحد</translation>
    </message>
    <message>
        <source>ask what was difficult that day: light, queue, a new hand</source>
        <translation>اسأل عما كان صعبًا في ذلك اليوم: الإضاءة، أو الازدحام، أو عامل جديد</translation>
    </message>
    <message>
        <source>a count differed from the book</source>
        <translation>عدّ يخالف الدفتر</translation>
    </message>
    <message>
        <source>look for a line that differs the other way; it is likely beside it</source>
        <translation>ابحث عن صنف يخالف في الاتجاه الآخر؛ والأرجح أنه بجانبه</translation>
    </message>
    <message>
        <source>the record disagrees with what was measured beside it</source>
        <translation>المسجَّل يخالف ما قيس إلى جانبه</translation>
    </message>
    <message>
        <source>have the card read again by somebody who has not seen the record</source>
        <translation>ليقرأ البطاقة من جديد شخص لم ير المسجَّل</translation>
    </message>
    <message>
        <source>judged again, the entry says something else</source>
        <translation>بإعادة التقييم يقول القيد شيئًا آخر</translation>
    </message>
    <message>
        <source>keep this ledger as it is and tell the makers of the program</source>
        <translation>أبقِ هذا السجل كما هو وأبلغ صانعي البرنامج</translation>
    </message>
    <message>
        <source>the rules of the time are missing</source>
        <translation>قواعد ذلك الوقت غير موجودة</translation>
    </message>
    <message>
        <source>put the rules.yaml of that time into a copy of the camp and audit there</source>
        <translation>ضع ملف rules.yaml لذلك الوقت في نسخة من المخيم وراجع هناك</translation>
    </message>
    <message>
        <source>the record is not there to judge by</source>
        <translation>المسجَّل غير موجود ليُقيَّم به</translation>
    </message>
    <message>
        <source>nothing: the person was forgotten, or the entry was written before records were kept</source>
        <translation>لا شيء: نُسي الشخص، أو كُتب القيد قبل حفظ الوصفات</translation>
    </message>
    <message>
        <source>an entry from the future</source>
        <translation>قيد من المستقبل</translation>
    </message>
    <message>
        <source>set the clock of that station right</source>
        <translation>اضبط ساعة تلك المحطة</translation>
    </message>
    <message>
        <source>neither power, fit, acuity nor instructions are recorded</source>
        <translation>لم تُسجَّل القوة ولا الملاءمة ولا حدة الإبصار ولا التعليمات</translation>
    </message>
    <message>
        <source>the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml</source>
        <translation>القواعد ذات البصمة %1 (مجموعة القواعد %2) ليست في السجل ولا في rules.yaml</translation>
    </message>
    <message>
        <source>the pair as it was judged, or part of the prescription, is not recorded</source>
        <translation>النظارة كما قُيّمت، أو جزء من الوصفة، غير مسجل</translation>
    </message>
    <message>
        <source>the prescription is not recorded or was forgotten</source>
        <translation>الوصفة غير مسجلة أو نُسيت</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it fits %2</source>
        <translation>المسجَّل %1؛ ويناسب %2 ما قيس إلى جانبه</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it does not fit</source>
        <translation>المسجَّل %1؛ ولا يناسب ما قيس إلى جانبه</translation>
    </message>
    <message>
        <source>meant as it is</source>
        <translation>مقصود كما هو</translation>
    </message>
    <message>
        <source>the sign of a sphere</source>
        <translation>إشارة كرة</translation>
    </message>
    <message>
        <source>the sign of a cylinder</source>
        <translation>إشارة أسطوانة</translation>
    </message>
    <message>
        <source>a transposition without the axis</source>
        <translation>تحويل دون المحور</translation>
    </message>
    <message>
        <source>a transposition without the sphere</source>
        <translation>تحويل دون الكرة</translation>
    </message>
    <message>
        <source>an axis off by 90 degrees</source>
        <translation>محور منحرف 90 درجة</translation>
    </message>
    <message>
        <source>an axis read as its mirror image</source>
        <translation>محور قُرئ معكوسًا كما في المرآة</translation>
    </message>
    <message>
        <source>digits of an axis</source>
        <translation>أرقام محور</translation>
    </message>
    <message>
        <source>sphere and cylinder exchanged</source>
        <translation>تبادل الكرة والأسطوانة</translation>
    </message>
    <message>
        <source>a decimal point in another place</source>
        <translation>فاصلة عشرية في موضع آخر</translation>
    </message>
    <message>
        <source>a power misread by a step or two</source>
        <translation>قوة قُرئت خطأً بخطوة أو خطوتين</translation>
    </message>
    <message>
        <source>the addition put on the distance power</source>
        <translation>الإضافة وُضعت على قوة البعد</translation>
    </message>
    <message>
        <source>right and left exchanged in the record</source>
        <translation>تبادل اليمنى واليسرى في المسجَّل</translation>
    </message>
    <message>
        <source>the right eye written for the left as well</source>
        <translation>كُتبت العين اليمنى لليسرى أيضًا</translation>
    </message>
    <message>
        <source>the prescription of the person before</source>
        <translation>وصفة الشخص السابق</translation>
    </message>
    <message>
        <source>the record, in a way that is none of those listed</source>
        <translation>المسجَّل، على نحو ليس من المذكور</translation>
    </message>
    <message>
        <source>a pair from a bin beside the one meant</source>
        <translation>نظارة من خانة بجانب المقصودة</translation>
    </message>
    <message>
        <source>the power meant, other centres or size</source>
        <translation>القوة المقصودة، بمراكز أو مقاس آخر</translation>
    </message>
    <message>
        <source>picked by the sphere, the cylinder left out</source>
        <translation>اختيرت بالكرة وتُركت الأسطوانة</translation>
    </message>
    <message>
        <source>picked by sphere and whole cylinder</source>
        <translation>اختيرت بالكرة والأسطوانة كلها</translation>
    </message>
    <message>
        <source>picked by the sphere less half the cylinder</source>
        <translation>اختيرت بالكرة ناقصًا نصف الأسطوانة</translation>
    </message>
    <message>
        <source>the pair for the person&apos;s other purpose</source>
        <translation>النظارة لغرض الشخص الآخر</translation>
    </message>
    <message>
        <source>the pairs of two persons exchanged</source>
        <translation>تبادل نظارتي شخصين</translation>
    </message>
    <message>
        <source>right and left lens exchanged</source>
        <translation>تبادل العدسة اليمنى واليسرى</translation>
    </message>
    <message>
        <source>another pair than the one meant, in a way not listed</source>
        <translation>نظارة غير المقصودة، على نحو ليس من المذكور</translation>
    </message>
    <message>
        <source>record and pair meant as they are</source>
        <translation>المسجَّل والنظارة مقصودان كما هما</translation>
    </message>
    <message>
        <source>%1 would be suggested by this record</source>
        <translation>كان هذا المسجَّل سيقترح %1</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s near need</source>
        <translation>النظارة المسلَّمة تناسب حاجة هذا الشخص للقرب</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s distance need</source>
        <translation>النظارة المسلَّمة تناسب حاجة هذا الشخص للبعد</translation>
    </message>
    <message>
        <source>with right and left lens exchanged the pair fits</source>
        <translation>بتبادل العدسة اليمنى واليسرى تصبح النظارة مناسبة</translation>
    </message>
    <message>
        <source>the pair given fits the person of entry %1, and that one fits here</source>
        <translation>النظارة المسلَّمة تناسب شخص القيد %1، ونظارته تناسب هنا</translation>
    </message>
    <message>
        <source>the digits %1 do not go together: the last would be %2, not %3; scan again, or type what stands below the bars</source>
        <translation>الأرقام %1 غير متوافقة: كان الأخير سيكون %2 لا %3؛ امسح من جديد، أو اكتب ما هو تحت الخطوط</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a code; write its thirteen digits (twelve take a 0 before them), or leave the code out</source>
        <translation>‏&quot;%1&quot; ليس رمزًا؛ اكتب أرقامه الثلاثة عشر (واثنا عشر رقمًا يسبقها 0)، أو اترك الرمز</translation>
    </message>
    <message>
        <source>there are entries in this ledger already; nothing was written; take them over with `quarterstep import`, or name an empty ledger</source>
        <translation>في هذا السجل قيود من قبل؛ لم يُكتب شيء؛ انقلها بالأمر ⁦`quarterstep import`⁩، أو سمِّ سجلًا فارغًا</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost while the entry was written (%1); open the camp again and look whether the entry is there before you repeat it</source>
        <translation>انقطع الاتصال بالسجل المشترك أثناء كتابة القيد (%1)؛ افتح المخيم من جديد وانظر هل القيد موجود قبل أن تكرره</translation>
    </message>
    <message>
        <source>the head of this ledger is damaged (form %1); put back the latest copy of the camp folder</source>
        <translation>رأس هذا السجل تالف (الصيغة %1)؛ أعد أحدث نسخة من مجلد المخيم</translation>
    </message>
    <message>
        <source>a rule of this ledger is missing or damaged (%1); put back the latest copy of the camp folder</source>
        <translation>قاعدة من قواعد هذا السجل ناقصة أو تالفة (%1)؛ أعد أحدث نسخة من مجلد المخيم</translation>
    </message>
    <message>
        <source>there is no ledger in this database yet; the keeper sets it up once with `quarterstep stock --set-up`</source>
        <translation>لا سجل في قاعدة البيانات هذه بعد؛ ينشئه أمين المخزن مرة واحدة بالأمر ⁦`quarterstep stock --set-up`⁩</translation>
    </message>
    <message>
        <source>this database holds something else, not a ledger; name another one in the key ledger of stock.yaml</source>
        <translation>في قاعدة البيانات هذه شيء آخر، لا سجل؛ سمِّ غيرها في المفتاح ledger في stock.yaml</translation>
    </message>
    <message>
        <source>this is not the address of a shared ledger (%1); write postgresql://LOGIN@HOST:PORT/DATABASE</source>
        <translation>ليس هذا عنوان سجل مشترك (%1)؛ اكتب ⁦postgresql://LOGIN@HOST:PORT/DATABASE⁩</translation>
    </message>
    <message>
        <source>a password stands in the address, and stock.yaml is carried about and copied; write it to ~/.pgpass (read by you alone) and take it out of the address</source>
        <translation>في العنوان كلمة مرور، وملف stock.yaml يُنقل ويُنسخ؛ اكتبها في ⁦~/.pgpass⁩ (لا يقرؤه غيرك) واحذفها من العنوان</translation>
    </message>
    <message>
        <source>there is a ledger in this database already; nothing was changed</source>
        <translation>في قاعدة البيانات هذه سجل من قبل؛ لم يُغيَّر شيء</translation>
    </message>
    <message>
        <source>the shared ledger cannot be reached (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>يتعذر الوصول إلى السجل المشترك (%1)؛ لم يُكتب شيء؛ افحص الشبكة والخادم ثم كرّر</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>انقطع الاتصال بالسجل المشترك (%1)؛ لم يُكتب شيء؛ افحص الشبكة والخادم ثم كرّر</translation>
    </message>
    <message>
        <source>the shared ledger does not allow this login to do that (%1); nothing was written; ask the keeper</source>
        <translation>لا يسمح السجل المشترك لحساب الدخول هذا بفعل ذلك (%1)؛ لم يُكتب شيء؛ اسأل أمين المخزن</translation>
    </message>
    <message>
        <source>the ledger had nothing of the site %1; its lines begin with the counts of the file</source>
        <translation>لم يكن في السجل شيء من الموقع %1؛ تبدأ أصنافه بأعداد الملف</translation>
    </message>
    <message>
        <source>line %1 is new in the file and begins with %2 on hand</source>
        <translation>الصنف %1 جديد في الملف ويبدأ وموجوده %2</translation>
    </message>
    <message>
        <source>line %1 is not in the file any more, and the ledger has %2 of it on hand; put the line back, or count it as 0 first</source>
        <translation>لم يعد الصنف %1 في الملف، وفي السجل منه %2؛ أعد الصنف، أو عُدّه 0 أولًا</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a name here; write one of %2</source>
        <translation>‏&quot;%1&quot; ليس اسمًا هنا؛ اكتب واحدًا من %2</translation>
    </message>
    <message>
        <source>write a list: one name, value and source a line</source>
        <translation>اكتب قائمة: اسم واحد وقيمة ومصدر في كل سطر</translation>
    </message>
    <message>
        <source>this is not an audit file of this program; the first key should read format: %1</source>
        <translation>ليس هذا ملف مراجعة لهذا البرنامج؛ ينبغي أن يكون المفتاح الأول format: %1</translation>
    </message>
    <message>
        <source>these priors say that more than one hand-over in ten holds a slip; make them smaller</source>
        <translation>تقول هذه الاحتمالات المسبقة إن أكثر من تسليم واحد في كل عشرة فيه هفوة؛ صغّرها</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and name</source>
        <translation>العمود &quot;%1&quot; غير موجود؛ المطلوب person و name</translation>
    </message>
    <message>
        <source>the row names no person</source>
        <translation>الصف لا يسمي شخصًا</translation>
    </message>
    <message>
        <source>%1 stands here twice, first in row %2</source>
        <translation>ورد %1 هنا مرتين، أولًا في الصف %2</translation>
    </message>
    <message>
        <source>no name stands here; to erase one, use `quarterstep forget`</source>
        <translation>لا اسم هنا؛ لمحو اسم استعمل ⁦`quarterstep forget`⁩</translation>
    </message>
    <message>
        <source>the code %1 stands in the file already, in line %2; each line has a code of its own</source>
        <translation>الرمز %1 موجود في الملف من قبل، في السطر %2؛ لكل صنف رمز خاص به</translation>
    </message>
    <message>
        <source>write this value in one line and without quotes, so that it can be changed</source>
        <translation>اكتب هذه القيمة في سطر واحد ودون علامات اقتباس، ليمكن تغييرها</translation>
    </message>
    <message>
        <source>this is a list; begin each item with a dash</source>
        <translation>هذه قائمة؛ ابدأ كل بند بشَرطة</translation>
    </message>
    <message>
        <source>“%1” stands in the list already, in line %2; keep one of the two</source>
        <translation>‏“%1” موجود في القائمة من قبل، في السطر %2؛ أبقِ أحد الاثنين</translation>
    </message>
    <message>
        <source>write the lines of the pack with their pieces, as {N+200-62M: 2}</source>
        <translation>اكتب أصناف العبوة مع قطعها، مثل ⁦{N+200-62M: 2}⁩</translation>
    </message>
    <message>
        <source>the pack holds &quot;%1&quot;, which is not among the lines of this list</source>
        <translation>في العبوة &quot;%1&quot;، وهو ليس من أصناف هذه القائمة</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and lines</source>
        <translation>العمود &quot;%1&quot; غير موجود؛ المطلوب person و lines</translation>
    </message>
    <message>
        <source>the row needs a person and lines</source>
        <translation>يحتاج الصف إلى شخص وأصناف</translation>
    </message>
    <message>
        <source>write one line, or frame + right lens + left lens</source>
        <translation>اكتب صنفًا واحدًا، أو إطارًا + عدسة يمنى + عدسة يسرى</translation>
    </message>
    <message>
        <source>--fine is the share that may fail and must be smaller than --bad, the share that must not pass</source>
        <translation>الخيار ⁦--fine⁩ هو النسبة التي يجوز أن تخفق ويجب أن تكون أصغر من ⁦--bad⁩، وهي النسبة التي يجب ألا تمر</translation>
    </message>
    <message>
        <source>a plan that allows %1 failures among %2 accepts everything; allow fewer</source>
        <translation>خطة تسمح بإخفاقات عددها %1 من %2 تقبل كل شيء؛ اسمح بأقل</translation>
    </message>
    <message>
        <source>“%1” is no page, paper or table; end its name in .html, .pdf or .csv</source>
        <translation>‏“%1” ليس صفحة ولا ورقة ولا جدولًا؛ اجعل اسمه ينتهي بـ .html أو .pdf أو .csv</translation>
    </message>
    <message>
        <source>“%1” is no step of an audit; write draw, sheet, read, lots, due or report</source>
        <translation>‏“%1” ليس خطوة من مراجعة؛ اكتب draw أو sheet أو read أو lots أو due أو report</translation>
    </message>
    <message>
        <source>`audit %1` needs the worksheet that was filled in</source>
        <translation>يحتاج ⁦`audit %1`⁩ إلى ورقة العمل المملوءة</translation>
    </message>
    <message>
        <source>`audit %1` takes no file</source>
        <translation>لا يأخذ ⁦`audit %1`⁩ ملفًا</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM, %1, cannot be started: %2</source>
        <translation>يتعذر تشغيل البرنامج الذي يقرأ DICOM ويكتبه، %1: %2</translation>
    </message>
    <message>
        <source>a TABLE goes with --as FORMAT</source>
        <translation>الجدول TABLE يرافق ⁦--as FORMAT⁩</translation>
    </message>
    <message>
        <source>a camp folder has its own rules; leave --rules out</source>
        <translation>لمجلد المخيم قواعده؛ اترك ⁦--rules⁩</translation>
    </message>
    <message>
        <source>nothing was written; mend what stands above, or leave it out with --skip-bad-rows</source>
        <translation>لم يُكتب شيء؛ أصلح ما ورد أعلاه، أو اتركه بالخيار ⁦--skip-bad-rows⁩</translation>
    </message>
    <message>
        <source>nobody in %1 can be exported</source>
        <translation>لا أحد في %1 يمكن تصديره</translation>
    </message>
    <message>
        <source>“%1” is no format of `%2`; write one of %3</source>
        <translation>‏“%1” ليس صيغة للأمر ⁦`%2`⁩؛ اكتب واحدة من %3</translation>
    </message>
    <message>
        <source>%1 is there already; name a new file, or move that one away</source>
        <translation>‏%1 موجود من قبل؛ سمِّ ملفًا جديدًا، أو انقل ذلك الملف</translation>
    </message>
    <message>
        <source>`export --as %1` needs the prescription table</source>
        <translation>يحتاج ⁦`export --as %1`⁩ إلى جدول الوصفات</translation>
    </message>
    <message>
        <source>`export --as dicom` needs --output FILE</source>
        <translation>يحتاج ⁦`export --as dicom`⁩ إلى ⁦--output FILE⁩</translation>
    </message>
    <message>
        <source>`import --as dicom` needs the FILES of the instruments</source>
        <translation>يحتاج ⁦`import --as dicom`⁩ إلى ملفات الأجهزة FILES</translation>
    </message>
    <message>
        <source>`import --as %1` needs one FILE, or - for standard input</source>
        <translation>يحتاج ⁦`import --as %1`⁩ إلى ملف واحد FILE، أو - للدخل القياسي</translation>
    </message>
    <message>
        <source>--map goes with --as table</source>
        <translation>الخيار ⁦--map⁩ يرافق ⁦--as table⁩</translation>
    </message>
    <message>
        <source>there is no line %1 in the stock</source>
        <translation>لا يوجد صنف %1 في المخزون</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to write</source>
        <translation>وصفة %1 غير مكتملة؛ لا طلب يُكتب</translation>
    </message>
    <message>
        <source>an order file has its own form; leave --json out</source>
        <translation>لملف الطلب صيغته الخاصة؛ اترك ⁦--json⁩</translation>
    </message>
    <message>
        <source>`print %1` needs --camp FOLDER</source>
        <translation>يحتاج ⁦`print %1`⁩ إلى ⁦--camp FOLDER⁩</translation>
    </message>
    <message>
        <source>“%1” is no outcome; write one of worn, with-them, at-home, broken, lost, stopped, not-found</source>
        <translation>‏“%1” ليس نتيجة؛ اكتب واحدة من worn أو with-them أو at-home أو broken أو lost أو stopped أو not-found</translation>
    </message>
    <message>
        <source>write both parts of the PD, right then left: 31/30.5</source>
        <translation>اكتب جزأي PD، اليمنى ثم اليسرى: 31/30.5</translation>
    </message>
    <message>
        <source>the folder %1 for the sample cannot be made; check rights and free space</source>
        <translation>يتعذر إنشاء المجلد %1 للعينة؛ افحص الصلاحيات والمساحة الخالية</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation>يتعذر إنشاء المجلد %1</translation>
    </message>
    <message>
        <source>not drawn: counts under %1 are hidden on this page</source>
        <translation>لم يُرسم: الأعداد دون %1 مخفية في هذه الصفحة</translation>
    </message>
    <message>
        <source>nothing that was handed over to %1 stands here; look at the code, or enter the look at the site that gave the pair</source>
        <translation>لا شيء هنا سُلّم إلى %1؛ راجع الرمز، أو أدخل المعاينة في الموقع الذي سلّم النظارة</translation>
    </message>
    <message>
        <source>nothing in the box is better for this person</source>
        <translation>لا شيء في الصندوق أفضل لهذا الشخص</translation>
    </message>
    <message>
        <source>loses no more than the best for this person; others need that one more</source>
        <translation>لا يفقد أكثر من الأفضل لهذا الشخص؛ وغيره أحوج إلى ذاك</translation>
    </message>
    <message>
        <source>%1 was promised to %2 before</source>
        <translation>وُعد %2 بالصنف %1 من قبل</translation>
    </message>
    <message>
        <source>%1 goes to %2, for whom nothing else will do</source>
        <translation>يذهب %1 إلى %2، إذ لا يصلح له غيره</translation>
    </message>
    <message>
        <source>%1 goes to %2, so that most are served and all together lose least</source>
        <translation>يذهب %1 إلى %2، ليُخدم أكبر عدد ويكون الفقد الكلي أقل ما يمكن</translation>
    </message>
    <message>
        <source>nothing that would do is left</source>
        <translation>لم يبق شيء يصلح</translation>
    </message>
    <message>
        <source>what would do goes to others</source>
        <translation>ما يصلح يذهب إلى آخرين</translation>
    </message>
    <message>
        <source>what would do goes to %1</source>
        <translation>ما يصلح يذهب إلى %1</translation>
    </message>
    <message>
        <source>told before, but none is left now</source>
        <translation>أُبلغ به من قبل، لكن لم يبق منه شيء الآن</translation>
    </message>
    <message>
        <source>told before; not planned again</source>
        <translation>أُبلغ به من قبل؛ لا يُخطط له من جديد</translation>
    </message>
    <message>
        <source>picked by hand: %1</source>
        <translation>اختير يدويًا: %1</translation>
    </message>
    <message>
        <source>no sample up to %1 tells these shares apart at this risk; allow a larger risk, or take shares that lie further apart</source>
        <translation>لا عينة حتى %1 تميز هاتين النسبتين بهذه المخاطرة؛ اسمح بمخاطرة أكبر، أو خذ نسبتين أبعد إحداهما عن الأخرى</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its draw was taken back</source>
        <translation>لم تُسحب دفعة %1 في هذا السجل؛ هذه ورقة عمل مخيم آخر، أو أُلغي سحبها</translation>
    </message>
    <message>
        <source>the results of this lot are in already, entry %1; to enter them anew take that one back first with `quarterstep record entered-in-error --entry`</source>
        <translation>نتائج هذه الدفعة مُدخلة من قبل، القيد %1؛ لإدخالها من جديد ألغِ ذلك القيد أولًا بالأمر ⁦`quarterstep record entered-in-error --entry`⁩</translation>
    </message>
    <message>
        <source>this row is of the lot %1, the first one of %2; enter each lot by itself</source>
        <translation>هذا الصف من الدفعة %1، والصف الأول من %2؛ أدخل كل دفعة على حدة</translation>
    </message>
    <message>
        <source>this lot has %1 rows, spares included; there is no row %2</source>
        <translation>في هذه الدفعة صفوف عددها %1 مع الاحتياطية؛ لا يوجد صف %2</translation>
    </message>
    <message>
        <source>nothing was handed over here in those days whose pair is recorded; there is nothing to draw from</source>
        <translation>لم يُسلَّم هنا في تلك الأيام شيء نظارته مسجلة؛ لا شيء يُسحب منه</translation>
    </message>
    <message>
        <source>the plan reads %1 pairs and only %2 were handed over; read all of them (--sample %2), or take more days into the lot</source>
        <translation>تقرأ الخطة %1 من النظارات ولم يُسلَّم إلا %2؛ اقرأها كلها (⁦--sample %2⁩)، أو خذ أيامًا أكثر في الدفعة</translation>
    </message>
    <message>
        <source>no lot was drawn here yet; `quarterstep audit draw` does</source>
        <translation>لم تُسحب هنا دفعة بعد؛ يسحبها ⁦`quarterstep audit draw`⁩</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger</source>
        <translation>لم تُسحب دفعة %1 في هذا السجل</translation>
    </message>
    <message>
        <source>no row of the worksheet is filled in</source>
        <translation>لا صف مملوء في ورقة العمل</translation>
    </message>
    <message>
        <source>after the colon stands how many lie in each bin, then centres, bin or round: write for example &quot;: 10 centres 62 bin A&quot;</source>
        <translation>بعد النقطتين يأتي العدد في كل خانة، ثم centres أو bin أو round: اكتب مثلًا ⁦&quot;: 10 centres 62 bin A&quot;⁩</translation>
    </message>
    <message>
        <source>%1 is not a size in millimetres; write for example 62</source>
        <translation>‏%1 ليس قياسًا بالمليمتر؛ اكتب مثلًا 62</translation>
    </message>
    <message>
        <source>a ready-made pair with a cylinder needs its axis; write for example -1.00 -0.50 x 90</source>
        <translation>النظارة الجاهزة ذات الأسطوانة تحتاج إلى محورها؛ اكتب مثلًا ⁦-1.00 -0.50 x 90⁩</translation>
    </message>
    <message>
        <source>from %1 to %2 is no whole number of steps of %3; write spheres and a step that meets the last one</source>
        <translation>من %1 إلى %2 ليس عددًا بلا كسور من الخطوات %3؛ اكتب كرات وخطوة تبلغ آخرها</translation>
    </message>
    <message>
        <source>%1 stands in an earlier tray already; put the counts together, or give the two different centres</source>
        <translation>‏%1 موجود في صينية سابقة؛ اجمع العددين، أو أعطِ المركزين المختلفين</translation>
    </message>
    <message>
        <source>a frame is given by its lens and bridge in millimetres; write for example frame 44-18: 12</source>
        <translation>يُحدَّد الإطار بالعدسة والجسر بالمليمتر؛ اكتب مثلًا ⁦frame 44-18: 12⁩</translation>
    </message>
    <message>
        <source>a tray is written as powers, a colon and a count: for example &quot;near +1.00 to +3.50 by 0.50: 10&quot;</source>
        <translation>تُكتب الصينية قوى ثم نقطتين ثم عددًا: مثلًا ⁦&quot;near +1.00 to +3.50 by 0.50: 10&quot;⁩</translation>
    </message>
    <message>
        <source>these trays make more than %1 lines of stock</source>
        <translation>تنتج هذه الصواني أكثر من %1 من أصناف المخزون</translation>
    </message>
    <message>
        <source>the camp has no name yet; give it one</source>
        <translation>ليس للمخيم اسم بعد؛ أعطه اسمًا</translation>
    </message>
    <message>
        <source>nothing is described yet; write a tray a line</source>
        <translation>لم يوصف شيء بعد؛ اكتب صينية في كل سطر</translation>
    </message>
    <message>
        <source>this folder cannot be made: %1</source>
        <translation>يتعذر إنشاء هذا المجلد: %1</translation>
    </message>
    <message>
        <source>this folder has a stock.yaml already; nothing was written: open the folder, or choose another one</source>
        <translation>في هذا المجلد ملف stock.yaml من قبل؛ لم يُكتب شيء: افتح المجلد، أو اختر غيره</translation>
    </message>
    <message>
        <source>%1 does not wait for that purpose</source>
        <translation>‏%1 لا ينتظر لهذا الغرض</translation>
    </message>
    <message>
        <source>this box has no such lines any more</source>
        <translation>لم تعد في هذا الصندوق أصناف كهذه</translation>
    </message>
    <message>
        <source>say why another pair than the one planned</source>
        <translation>اذكر لماذا نظارة غير المخطط لها</translation>
    </message>
    <message>
        <source>none is left, or what is left was promised to others</source>
        <translation>لم يبق شيء، أو ما بقي وُعد به آخرون</translation>
    </message>
    <message>
        <source>no mismatch, so there is no run between two of them to draw</source>
        <translation>لا عدم تطابق، فلا سلسلة بين اثنين منه تُرسم</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; there is no run of good ones to draw</source>
        <translation>كل تسليم غير مطابق؛ لا سلسلة من السليم تُرسم</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; a p-chart has no limits then</source>
        <translation>كل تسليم غير مطابق؛ ولا حدود عندئذ لمخطط p</translation>
    </message>
    <message>
        <source>no mismatch; a p-chart has no limits then</source>
        <translation>لا عدم تطابق؛ ولا حدود عندئذ لمخطط p</translation>
    </message>
    <message>
        <source>a p-chart compares groups over time, and there are not two yet</source>
        <translation>يقارن مخطط p مجموعات عبر الزمن، وليس هنا مجموعتان بعد</translation>
    </message>
    <message>
        <source>%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could show at this share that things got better; look at the g-chart</source>
        <translation>في %1 من %2 من المجموعات أقل من %3 من عمليات التسليم، وهو أقل عدد يُظهر به مخطط p تحسنًا عند هذه النسبة؛ انظر إلى مخطط g</translation>
    </message>
    <message>
        <source>%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart</source>
        <translation>في %1 من %2 من المجموعات لا عدم تطابق، أي الربع أو أكثر؛ انظر إلى مخطط g</translation>
    </message>
    <message>
        <source>worn when seen</source>
        <translation>ملبوسة عند المعاينة</translation>
    </message>
    <message>
        <source>carried, not worn when seen</source>
        <translation>معه، وغير ملبوسة عند المعاينة</translation>
    </message>
    <message>
        <source>left at home</source>
        <translation>متروكة في البيت</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>مكسورة</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>ضائعة</translation>
    </message>
    <message>
        <source>not worn any more</source>
        <translation>لم تعد تُلبس</translation>
    </message>
    <message>
        <source>the person was not met</source>
        <translation>لم يُلتقَ بالشخص</translation>
    </message>
    <message>
        <source>after some weeks</source>
        <translation>بعد بضعة أسابيع</translation>
    </message>
    <message>
        <source>after three to four months</source>
        <translation>بعد ثلاثة إلى أربعة أشهر</translation>
    </message>
    <message>
        <source>after six months</source>
        <translation>بعد ستة أشهر</translation>
    </message>
    <message>
        <source>refused: %1 of %2 read failed, more than the %4 allowed among %3</source>
        <translation>مرفوضة: أخفق %1 من %2 قُرئت، وهو أكثر من %4 المسموح بها من %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no more than the %4 allowed among %3</source>
        <translation>مقبولة: أخفق %1 من %2 قُرئت؛ وحتى لو أخفقت أيضًا %5 لم تُقرأ فلن يزيد ذلك على %4 المسموح بها من %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed, no more than the %4 allowed among %3</source>
        <translation>مقبولة: أخفق %1 من %2 قُرئت، وهو لا يزيد على %4 المسموح بها من %3</translation>
    </message>
    <message>
        <source>open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read</source>
        <translation>مفتوحة: أخفق %1 من %2 قُرئت، والمسموح %4 من %3؛ وبقي من النظارات %5 لتُقرأ</translation>
    </message>
    <message>
        <source>right eye: read %1, recorded %2</source>
        <translation>العين اليمنى: المقروء %1، المسجَّل %2</translation>
    </message>
    <message>
        <source>left eye: read %1, recorded %2</source>
        <translation>العين اليسرى: المقروء %1، المسجَّل %2</translation>
    </message>
    <message>
        <source>the addition left out</source>
        <translation>تُركت الإضافة</translation>
    </message>
    <message>
        <source>the addition taken as the whole near power</source>
        <translation>عُدّت الإضافة قوة القرب كلها</translation>
    </message>
    <message>
        <source>the PD of one eye recorded as that of both</source>
        <translation>سُجّلت PD عين واحدة على أنها للعينين</translation>
    </message>
    <message>
        <source>the near PD recorded as distance PD</source>
        <translation>سُجّلت PD القرب على أنها PD البعد</translation>
    </message>
    <message>
        <source>a lens turned when it was mounted</source>
        <translation>دارت عدسة عند تركيبها</translation>
    </message>
    <message>
        <source>a piece that lay in another line&apos;s bin</source>
        <translation>قطعة كانت في خانة صنف آخر</translation>
    </message>
    <message>
        <source>another line recorded than given</source>
        <translation>سُجّل صنف غير الذي سُلّم</translation>
    </message>
    <message>
        <source>the piece or its lot off the label</source>
        <translation>القطعة أو دفعتها تخالف الملصق</translation>
    </message>
    <message>
        <source>one pair recorded twice</source>
        <translation>نظارة واحدة سُجّلت مرتين</translation>
    </message>
    <message>
        <source>entry %1 records the same pair for the same purpose</source>
        <translation>يسجل القيد %1 النظارة نفسها للغرض نفسه</translation>
    </message>
    <message>
        <source>recorded %1; what was read fits %2</source>
        <translation>المسجَّل %1؛ ويناسب المقروء %2</translation>
    </message>
    <message>
        <source>what was read fits %1; the record says %2</source>
        <translation>يناسب المقروء %1؛ ويقول المسجَّل %2</translation>
    </message>
    <message>
        <source>%1 may have been given and another line recorded</source>
        <translation>ربما سُلّم %1 وسُجّل صنف آخر</translation>
    </message>
    <message>
        <source>line %1 may be off its label</source>
        <translation>ربما يخالف الصنف %1 ملصقه</translation>
    </message>
    <message>
        <source>the pair given is a reader of the addition alone</source>
        <translation>النظارة المسلَّمة نظارة قراءة بالإضافة وحدها</translation>
    </message>
    <message>
        <source>%1 of the %2 eye cannot be used as it stands</source>
        <translation>‏%1 للعين %2 لا يمكن استعماله كما هو</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>لم يُستعمل: %1</translation>
    </message>
    <message>
        <source>there is a second refraction of %1; give only the one that counts</source>
        <translation>لدى %1 قياس انكسار ثانٍ؛ أعطِ المعتمد وحده</translation>
    </message>
    <message>
        <source>nothing is stated for the %1 eye; ask for it: a power, or that it is a balance lens, artificial, blind or not measured</source>
        <translation>لم يُذكر شيء للعين %1؛ اسأل عنها: قوة، أو أنها عدسة موازنة، أو اصطناعية، أو كفيفة، أو لم تُقس</translation>
    </message>
    <message>
        <source>there is a second reading of the %1 eye of %2; give only one</source>
        <translation>لدى %2 قراءة ثانية للعين %1؛ أعطِ واحدة فقط</translation>
    </message>
    <message>
        <source>an acuity is kept without being used: &quot;%1&quot; at %2 is none that the table has</source>
        <translation>تُحفظ حدة إبصار دون استعمالها: &quot;%1&quot; عند %2 ليست مما في الجدول</translation>
    </message>
    <message>
        <source>there is no subjective refraction of %1; what is here is no prescription</source>
        <translation>لا قياس انكسار ذاتي لدى %1؛ وما هنا ليس وصفة</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a patient id: at most 64 characters, no backslash</source>
        <translation>لا يصلح &quot;%1&quot; معرّفًا للمريض: 64 حرفًا على الأكثر، دون شرطة مائلة عكسية</translation>
    </message>
    <message>
        <source>this is no DICOM file: the letters DICM do not stand at byte 128</source>
        <translation>هذا ليس ملف DICOM: الحروف DICM غير موجودة عند البايت 128</translation>
    </message>
    <message>
        <source>this is too large for a refraction: %1 bytes, %2 items</source>
        <translation>هذا أكبر من أن يكون قياس انكسار: بايتات %1، عناصر %2</translation>
    </message>
    <message>
        <source>the DICOM file is broken, or neither explicit nor implicit little endian: a length points out of it, or a part is not understood</source>
        <translation>ملف DICOM معطوب، أو ليس explicit ولا implicit little endian: طول يشير إلى خارجه، أو جزء غير مفهوم</translation>
    </message>
    <message>
        <source>the DICOM file is broken: %1</source>
        <translation>ملف DICOM معطوب: %1</translation>
    </message>
    <message>
        <source>the object &quot;%1&quot; is none of lensometry, autorefraction, subjective refraction or visual acuity</source>
        <translation>الكائن &quot;%1&quot; ليس قياس عدسات ولا قياس انكسار آليًا ولا قياس انكسار ذاتيًا ولا حدة إبصار</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write it as -1.25</source>
        <translation>‏&quot;%1&quot; ليس رقمًا؛ اكتبه مثل ⁦-1.25⁩</translation>
    </message>
    <message>
        <source>%1 is outside -%2 to %2</source>
        <translation>‏%1 خارج المدى من ⁦-%2⁩ إلى %2</translation>
    </message>
    <message>
        <source>%1 is finer than a thousandth; round it</source>
        <translation>‏%1 أدق من جزء من الألف؛ قرّبه</translation>
    </message>
    <message>
        <source>%1 of %2 stays here: it names people or is in their own words</source>
        <translation>يبقى هنا %1 من %2: فيه أسماء أشخاص أو كلامهم</translation>
    </message>
    <message>
        <source>the eye is &quot;%1&quot;; right or left is wanted</source>
        <translation>العين &quot;%1&quot;؛ المطلوب right أو left</translation>
    </message>
    <message>
        <source>there is a second lens for the %1 eye; a resource for each purpose is understood, with one lens an eye</source>
        <translation>هناك عدسة ثانية للعين %1؛ المفهوم مورد لكل غرض، وفيه عدسة لكل عين</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; a number without quotes is wanted, as -1.25</source>
        <translation>‏%1 هو &quot;%2&quot;؛ المطلوب رقم دون علامات اقتباس، مثل ⁦-1.25⁩</translation>
    </message>
    <message>
        <source>the sphere of the %1 eye is not stated; that is not zero: write 0.00 for plano, or balance, artificial, blind or not measured as the note</source>
        <translation>لم تُذكر كرة العين %1؛ وليس ذلك صفرًا: اكتب 0.00 لعدسة بلا قوة، أو اكتب في الملاحظة balance أو artificial أو blind أو not measured</translation>
    </message>
    <message>
        <source>axis %1 is not a whole number of degrees</source>
        <translation>المحور %1 ليس عددًا بلا كسور من الدرجات</translation>
    </message>
    <message>
        <source>prism is a list of amounts and bases</source>
        <translation>المنشور قائمة من مقادير وقواعد</translation>
    </message>
    <message>
        <source>the prism %1 is below zero; turn its base instead</source>
        <translation>المنشور %1 أقل من الصفر؛ اعكس قاعدته بدلًا من ذلك</translation>
    </message>
    <message>
        <source>the base is &quot;%1&quot;; up, down, in or out is wanted</source>
        <translation>القاعدة &quot;%1&quot;؛ المطلوب up أو down أو in أو out</translation>
    </message>
    <message>
        <source>&quot;%1&quot; inside a prism is not used</source>
        <translation>لا يُستعمل &quot;%1&quot; داخل منشور</translation>
    </message>
    <message>
        <source>the product is not coded as lens or contact; it is read as a spectacle lens</source>
        <translation>المنتج غير مرمّز على أنه lens أو contact؛ يُقرأ على أنه عدسة نظارة</translation>
    </message>
    <message>
        <source>this is XML; ask for the same in JSON (application/fhir+json)</source>
        <translation>هذا XML؛ اطلب الشيء نفسه بصيغة JSON ⁦(application/fhir+json)⁩</translation>
    </message>
    <message>
        <source>this is no resource of FHIR: resourceType is missing</source>
        <translation>هذا ليس موردًا من FHIR: ينقص resourceType</translation>
    </message>
    <message>
        <source>the resource %1 is left out: only VisionPrescription and its measures are read</source>
        <translation>يُترك المورد %1: لا يُقرأ إلا VisionPrescription وقياساته</translation>
    </message>
    <message>
        <source>there is no prescription for spectacles to take in here</source>
        <translation>لا توجد هنا وصفة نظارة لاستلامها</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: it is for contact lenses, whose powers and curves are no spectacles&apos;</source>
        <translation>تُترك وصفة %1: هي لعدسات لاصقة، وقواها وتقوساتها ليست للنظارات</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: its status is %2</source>
        <translation>تُترك وصفة %1: حالتها %2</translation>
    </message>
    <message>
        <source>the narrative is left out: it repeats what is coded</source>
        <translation>يُترك النص السردي: هو يكرر ما هو مرمّز</translation>
    </message>
    <message>
        <source>%1 may change what the prescription means, and is not understood; ask for it without</source>
        <translation>قد يغيّر %1 معنى الوصفة، وهو غير مفهوم؛ اطلبها دونه</translation>
    </message>
    <message>
        <source>the status is &quot;%1&quot;; active is wanted</source>
        <translation>الحالة &quot;%1&quot;؛ المطلوب active</translation>
    </message>
    <message>
        <source>meta.%1 is left out: it belongs to the sender&apos;s copy</source>
        <translation>يُترك ⁦meta.%1⁩: هو خاص بنسخة المرسل</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole date; how old the prescription is stays open</source>
        <translation>‏&quot;%1&quot; ليس تاريخًا كاملًا؛ يبقى عمر الوصفة غير محدد</translation>
    </message>
    <message>
        <source>kept without being used: %1</source>
        <translation>حُفظ دون استعمال: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: it was entered in error</source>
        <translation>تُترك المشاهدة %1 لدى %2: أُدخلت خطأً</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: its code is not known here</source>
        <translation>تُترك المشاهدة %1 لدى %2: رمزها غير معروف هنا</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: no prescription of theirs is taken in</source>
        <translation>تُترك المشاهدة %1 لدى %2: لا تُستلم له أي وصفة</translation>
    </message>
    <message>
        <source>the column fhir.%1 of %2 is left out: its cell is no JSON</source>
        <translation>يُترك العمود ⁦fhir.%1⁩ لدى %2: خليته ليست JSON</translation>
    </message>
    <message>
        <source>axis %1 of %2 leaves as %3: FHIR takes whole degrees</source>
        <translation>المحور %1 لدى %2 يخرج على أنه %3: يقبل FHIR درجات بلا كسور</translation>
    </message>
    <message>
        <source>each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>كل سطر كائن واحد، مثل ⁦{&quot;person&quot;:&quot;0042&quot;,…}⁩</translation>
    </message>
    <message>
        <source>nothing stands in it; each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>لا شيء فيه؛ كل سطر كائن واحد، مثل ⁦{&quot;person&quot;:&quot;0042&quot;,…}⁩</translation>
    </message>
    <message>
        <source>the value has ended here, “%1” is too much</source>
        <translation>انتهت القيمة هنا، و“%1” زائد</translation>
    </message>
    <message>
        <source>more than %1 levels lie inside one another</source>
        <translation>أكثر من %1 من المستويات متداخل بعضها في بعض</translation>
    </message>
    <message>
        <source>a comma or } belongs here</source>
        <translation>موضع فاصلة أو ⁦}⁩ هنا</translation>
    </message>
    <message>
        <source>a comma or ] belongs here</source>
        <translation>موضع فاصلة أو ⁦]⁩ هنا</translation>
    </message>
    <message>
        <source>a name in quotes belongs here</source>
        <translation>موضع اسم بين علامتي اقتباس هنا</translation>
    </message>
    <message>
        <source>a colon belongs here</source>
        <translation>موضع نقطتين هنا</translation>
    </message>
    <message>
        <source>“%1” stands twice in one object; keep one</source>
        <translation>ورد “%1” مرتين في كائن واحد؛ أبقِ أحدهما</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>علامة الاقتباس هذه لا تُغلق</translation>
    </message>
    <message>
        <source>a line end or tab stands inside a text; write \n or \t</source>
        <translation>في النص نهاية سطر أو علامة جدولة؛ اكتب \n أو \t</translation>
    </message>
    <message>
        <source>“\%1” is no escape of JSON</source>
        <translation>‏⁦“\%1”⁩ ليس من رموز الهروب في JSON</translation>
    </message>
    <message>
        <source>half of a character stands here alone</source>
        <translation>نصف حرف وحده هنا</translation>
    </message>
    <message>
        <source>four hexadecimal digits belong here</source>
        <translation>موضع أربعة أرقام ست عشرية هنا</translation>
    </message>
    <message>
        <source>this is no number of JSON; write it as -1.25 or 0.5</source>
        <translation>هذا ليس رقمًا في JSON؛ اكتبه مثل ⁦-1.25⁩ أو 0.5</translation>
    </message>
    <message>
        <source>the text ends where a value belongs</source>
        <translation>ينتهي النص حيث موضع قيمة</translation>
    </message>
    <message>
        <source>“%1” is no value of JSON</source>
        <translation>‏“%1” ليس قيمة في JSON</translation>
    </message>
    <message>
        <source>the map names a column &quot;%1&quot; that the table does not have</source>
        <translation>تسمي الخريطة عمودًا &quot;%1&quot; ليس في الجدول</translation>
    </message>
    <message>
        <source>no column is understood as %1; a map can say which one is, as in: %2</source>
        <translation>لا عمود مفهوم على أنه %1؛ يمكن لخريطة أن تحدده، كما في: %2</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds the separator in quotes</source>
        <translation>في الصف خلايا عددها %1، وفي رأس الجدول %2؛ ضع الخلية التي فيها الفاصل بين علامتي اقتباس</translation>
    </message>
    <message>
        <source>%1 spheres have no sign; if this table leaves the plus out, a map says so: %2</source>
        <translation>كرات بلا إشارة عددها %1؛ إذا كان هذا الجدول يترك الموجب دون إشارة فلتذكر ذلك خريطة: %2</translation>
    </message>
    <message>
        <source>%1 cylinders have no sign; ask whoever made the table, then a map says so: %2</source>
        <translation>أسطوانات بلا إشارة عددها %1؛ اسأل من وضع الجدول، ثم لتذكر ذلك خريطة: %2</translation>
    </message>
    <message>
        <source>a record ends with CR LF; this one does not</source>
        <translation>ينتهي السجل الجزئي بالحرفين CR LF؛ وهذا لا ينتهي بهما</translation>
    </message>
    <message>
        <source>a character here is not plain ASCII</source>
        <translation>حرف هنا ليس من ASCII البسيط</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no record; write LABEL=value</source>
        <translation>‏&quot;%1&quot; ليس سجلًا جزئيًا؛ اكتب LABEL=value</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no label: capitals and digits, at most 8</source>
        <translation>‏&quot;%1&quot; ليس وسمًا: حروف كبيرة وأرقام، 8 على الأكثر</translation>
    </message>
    <message>
        <source>the record %1 is passed over</source>
        <translation>يُتجاوز السجل الجزئي %1</translation>
    </message>
    <message>
        <source>the record %1 stands twice</source>
        <translation>ورد السجل الجزئي %1 مرتين</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not what belongs here</source>
        <translation>‏&quot;%1&quot; ليس ما موضعه هنا</translation>
    </message>
    <message>
        <source>DO is &quot;%1&quot;; a pair, B, is wanted</source>
        <translation>القيمة DO هي &quot;%1&quot;؛ المطلوب نظارة، B</translation>
    </message>
    <message>
        <source>the record SPH is missing</source>
        <translation>ينقص السجل الجزئي SPH</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be written in plain letters; it leaves as &quot;%2&quot;</source>
        <translation>لا يمكن كتابة &quot;%1&quot; بحروف بسيطة؛ يخرج على أنه &quot;%2&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot stand in an order: plain letters and digits, at most 80, without ; = , ?</source>
        <translation>لا يمكن أن يرد &quot;%1&quot; في طلب: حروف بسيطة وأرقام، 80 على الأكثر، دون ⁦; = , ?⁩</translation>
    </message>
    <message>
        <source>the eyes are written in two cylinder forms; both leave with minus cylinders</source>
        <translation>العينان مكتوبتان بصيغتي أسطوانة مختلفتين؛ تخرجان معًا بأسطوانات سالبة</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no line of a map; write heading = column</source>
        <translation>‏&quot;%1&quot; ليس سطرًا من خريطة؛ اكتب ⁦heading = column⁩</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing a column can be: write right sphere (cylinder, axis, prism, base; left), a column of the prescription table, or - to leave it</source>
        <translation>لا يمكن أن يكون عمود &quot;%1&quot;؛ اكتب right sphere ‏(cylinder أو axis أو prism أو base؛ أو left)، أو عمودًا من جدول الوصفات، أو - لتركه</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no separator; write , or ; or | or tab</source>
        <translation>‏&quot;%1&quot; ليس فاصلًا؛ اكتب ⁦,⁩ أو ⁦;⁩ أو ⁦|⁩ أو tab</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not plus or minus</source>
        <translation>‏&quot;%1&quot; ليس plus ولا minus</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are lot, row, right and left</source>
        <translation>العمود &quot;%1&quot; غير موجود؛ المطلوب lot و row و right و left</translation>
    </message>
    <message>
        <source>the row names no lot; keep the column as it was printed</source>
        <translation>الصف لا يسمي دفعة؛ أبقِ العمود كما طُبع</translation>
    </message>
    <message>
        <source>row %1 of this lot stands in the table twice; keep one</source>
        <translation>الصف %1 من هذه الدفعة موجود في الجدول مرتين؛ أبقِ أحدهما</translation>
    </message>
    <message>
        <source>“%1” is no reading of a focimeter; write sphere, cylinder and axis</source>
        <translation>‏“%1” ليس قراءة مقياس عدسات؛ اكتب الكرة والأسطوانة والمحور</translation>
    </message>
    <message>
        <source>the row says not-found and has a reading; delete one of the two</source>
        <translation>يقول الصف not-found وفيه قراءة؛ احذف أحد الاثنين</translation>
    </message>
    <message>
        <source>the row says read and has no reading; write both lenses or not-found</source>
        <translation>يقول الصف read وليس فيه قراءة؛ اكتب العدستين أو not-found</translation>
    </message>
    <message>
        <source>“%1” is not an outcome; write read or not-found</source>
        <translation>‏“%1” ليس نتيجة؛ اكتب read أو not-found</translation>
    </message>
    <message>
        <source>a pair is read in both lenses; write this one too</source>
        <translation>تُقرأ النظارة في العدستين؛ اكتب هذه أيضًا</translation>
    </message>
    <message>
        <source>the format is &quot;%1&quot;, not &quot;%2&quot;</source>
        <translation>الصيغة &quot;%1&quot; لا &quot;%2&quot;</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; it names the hand-over</source>
        <translation>العمود &quot;%1&quot; غير موجود؛ وهو الذي يسمي التسليم</translation>
    </message>
    <message>
        <source>the row names no hand-over</source>
        <translation>الصف لا يسمي تسليمًا</translation>
    </message>
    <message>
        <source>%1 stands here twice</source>
        <translation>ورد %1 هنا مرتين</translation>
    </message>
    <message>
        <source>%1 stands in the waiting list already; the row is left out</source>
        <translation>‏%1 موجود في قائمة الانتظار من قبل؛ تُرك الصف</translation>
    </message>
    <message>
        <source>of an observation left out: %1</source>
        <translation>تُرك من مشاهدة: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: something in it may change its meaning</source>
        <translation>تُترك المشاهدة %1 لدى %2: فيها ما قد يغيّر معناها</translation>
    </message>
    <message>
        <source>a measure without a code is left out: &quot;%1&quot;</source>
        <translation>يُترك قياس بلا رمز: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>of the Bundle left out: %1; it belongs to the sender&apos;s envelope</source>
        <translation>تُرك من Bundle: ‏%1؛ فهو من غلاف المرسل</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the other decimal mark than the map says</source>
        <translation>في &quot;%1&quot; علامة عشرية غير التي تذكرها الخريطة</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not point or comma</source>
        <translation>‏&quot;%1&quot; ليس نقطة ولا فاصلة</translation>
    </message>
    <message>
        <source>the client library of the server is missing; install %1</source>
        <translation>مكتبة الاتصال بالخادم غير موجودة؛ ثبّت %1</translation>
    </message>
    <message>
        <source>there is no help on “%1”; did you mean “%2”? type `quarterstep help %2`</source>
        <translation>لا مساعدة عن “%1”؛ هل تقصد “%2”؟ اكتب ⁦`quarterstep help %2`⁩</translation>
    </message>
    <message>
        <source>there is no page on “%1”; it stands in %2: type `quarterstep help %3`</source>
        <translation>لا صفحة عن “%1”؛ يرد ذلك في %2: اكتب ⁦`quarterstep help %3`⁩</translation>
    </message>
    <message>
        <source>there is no help on “%1”; pages are %2: type `quarterstep help %3`, or `quarterstep help` for the verbs</source>
        <translation>لا مساعدة عن “%1”؛ الصفحات هي %2: اكتب ⁦`quarterstep help %3`⁩، أو ⁦`quarterstep help`⁩ لعرض الأوامر</translation>
    </message>
    <message>
        <source>%1 has several purposes, or none that is complete; take them up in the list and choose the one that was ordered</source>
        <translation>لدى %1 عدة أغراض، أو لا غرض مكتمل؛ افتحه في القائمة واختر الغرض الذي طُلب</translation>
    </message>
    <message>
        <source>%1 is not in the list; load the table in which the prescription stands</source>
        <translation>‏%1 ليس في القائمة؛ حمّل الجدول الذي فيه الوصفة</translation>
    </message>
    <message>
        <source>the focimeter reads %1 right, the pair has %2</source>
        <translation>يقرأ مقياس العدسات %1 لليمنى، وفي النظارة %2</translation>
    </message>
    <message>
        <source>the focimeter reads %1 left, the pair has %2</source>
        <translation>يقرأ مقياس العدسات %1 لليسرى، وفي النظارة %2</translation>
    </message>
    <message>
        <source>--json goes with --output FILE or --dry-run</source>
        <translation>يأتي ‎--json مع ‎--output FILE أو ‎--dry-run</translation>
    </message>
    <message>
        <source>a TABLE goes with `order file` and `order ordered`</source>
        <translation>يأتي TABLE مع ‎`order file` و ‎`order ordered`</translation>
    </message>
    <message>
        <source>`order file` needs the prescription table, or --camp FOLDER with either --order ID or --person CODE</source>
        <translation>يحتاج ‎`order file` إلى جدول الوصفات، أو إلى ‎--camp FOLDER مع ‎--order ID أو ‎--person CODE</translation>
    </message>
    <message>
        <source>no prescription stands with the order %1; name the table that has it</source>
        <translation>لا توجد وصفة مع الطلب %1؛ سمِّ الجدول الذي يحتويها</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM gave no answer that is understood</source>
        <translation>لم يعط البرنامج الذي يقرأ DICOM ويكتبها جوابًا مفهومًا</translation>
    </message>
    <message>
        <source>rules.yaml is not as it was when this camp was opened; open it again</source>
        <translation>ليس rules.yaml كما كان عند فتح هذا المخيم؛ افتحه من جديد</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>opened</source>
        <translation>رصيد أول</translation>
    </message>
    <message>
        <source>received</source>
        <translation>استُلم</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>سُلّم</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>أُعيد</translation>
    </message>
    <message>
        <source>exchanged</source>
        <translation>استُبدل</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>عُدّ</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>شُطب</translation>
    </message>
    <message>
        <source>held</source>
        <translation>حُجز</translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation>عُزل</translation>
    </message>
    <message>
        <source>released</source>
        <translation>أُطلق</translation>
    </message>
    <message>
        <source>transferred out</source>
        <translation>نُقل إلى موقع آخر</translation>
    </message>
    <message>
        <source>transferred in</source>
        <translation>نُقل من موقع آخر</translation>
    </message>
    <message>
        <source>no spectacles needed</source>
        <translation>لا حاجة إلى نظارة</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>رفض</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>ناقص</translation>
    </message>
    <message>
        <source>repaired or adjusted</source>
        <translation>أُصلح أو ضُبط</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>طُلب</translation>
    </message>
    <message>
        <source>order arrived</source>
        <translation>وصل الطلب</translation>
    </message>
    <message>
        <source>order checked</source>
        <translation>فُحص الطلب</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>سُلّم الطلب</translation>
    </message>
    <message>
        <source>sent back to be remade</source>
        <translation>أُعيد لإعادة الصنع</translation>
    </message>
    <message>
        <source>not collected</source>
        <translation>لم يُستلم</translation>
    </message>
    <message>
        <source>referred</source>
        <translation>أُحيل</translation>
    </message>
    <message>
        <source>exported</source>
        <translation>صُدّر</translation>
    </message>
    <message>
        <source>entered in error</source>
        <translation>أُدخل خطأً</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>تالف</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>مفقود</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>مسروق</translation>
    </message>
    <message>
        <source>found</source>
        <translation>وُجد</translation>
    </message>
    <message>
        <source>miscounted</source>
        <translation>خطأ في العدّ</translation>
    </message>
    <message>
        <source>off its label</source>
        <translation>يخالف ملصقه</translation>
    </message>
    <message>
        <source>mislabelled</source>
        <translation>ملصق خاطئ</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>عيّنة</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>وُهب</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>سُحب</translation>
    </message>
    <message>
        <source>not served from stock</source>
        <translation>لم يُخدم من المخزون</translation>
    </message>
    <message>
        <source>drawn for the bench</source>
        <translation>سُحب لمنضدة الفحص</translation>
    </message>
    <message>
        <source>read at the bench</source>
        <translation>قُرئ على منضدة الفحص</translation>
    </message>
    <message>
        <source>seen again</source>
        <translation>فُحص ثانية</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>The child was given glasses: %1.</source>
        <translation>أُعطي الطفل نظارة: %1.</translation>
    </message>
    <message>
        <source>Glasses are suggested for the child: %1.</source>
        <translation>نقترح نظارة للطفل: %1.</translation>
    </message>
    <message>
        <source>Glasses are to be made for the child.</source>
        <translation>ستُصنع نظارة للطفل.</translation>
    </message>
    <message>
        <source>The child needs no glasses for this.</source>
        <translation>لا يحتاج الطفل إلى نظارة لهذا الغرض.</translation>
    </message>
    <message>
        <source>The eye test is not finished; the child comes again.</source>
        <translation>لم يكتمل فحص العينين؛ يعود الطفل مرة أخرى.</translation>
    </message>
    <message>
        <source>The child should see the eye clinic before any glasses.</source>
        <translation>ينبغي أن ترى عيادة العيون الطفل قبل أي نظارة.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic today.</source>
        <translation>يرجى أخذ الطفل والرسالة إلى عيادة العيون اليوم.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic in the next days.</source>
        <translation>يرجى أخذ الطفل والرسالة إلى عيادة العيون في الأيام القادمة.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic when it next receives people.</source>
        <translation>يرجى أخذ الطفل والرسالة إلى عيادة العيون عند موعد استقبالها القادم.</translation>
    </message>
    <message>
        <source>The eyes of your child were tested.</source>
        <translation>فُحصت عينا طفلكم.</translation>
    </message>
    <message>
        <source>To be worn (as the prescriber told)</source>
        <translation>تُلبس (كما قال واصف النظارة)</translation>
    </message>
    <message>
        <source>The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: take them off and go to an eye clinic the same day.</source>
        <translation>قد تبدو النظارة غريبة مدة أسبوع. ازدواج الرؤية أو ألم أو فقدان مفاجئ للبصر: انزعوها واذهبوا إلى عيادة العيون في اليوم نفسه.</translation>
    </message>
    <message>
        <source>Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>عودوا بعد 6 إلى 12 شهرًا، أو فورًا إذا انحرفت عين أو ضعف بصرها.</translation>
    </message>
    <message>
        <source>Told to (guardian), by</source>
        <translation>أُبلغ (ولي الأمر)، من</translation>
    </message>
    <message>
        <source>Please help the child to wear them, and to keep them clean and in their case.</source>
        <translation>يرجى مساعدة الطفل على لبسها وحفظها نظيفة وفي علبتها.</translation>
    </message>
    <message>
        <source>Please let the child sit where the board is read easily.</source>
        <translation>يرجى إجلاس الطفل حيث تسهل قراءة السبورة.</translation>
    </message>
    <message>
        <source>Tell the guardian at once if an eye turns or hurts, or if the child sees worse.</source>
        <translation>أخبروا ولي الأمر فورًا إذا انحرفت عين أو آلمت أو ضعف بصر الطفل.</translation>
    </message>
    <message>
        <source>Your glasses</source>
        <translation>نظارتك</translation>
    </message>
    <message>
        <source>Glasses suggested for you</source>
        <translation>نظارة مقترحة لك</translation>
    </message>
    <message>
        <source>Glasses to be made for you</source>
        <translation>نظارة تُصنع لك</translation>
    </message>
    <message>
        <source>No glasses needed</source>
        <translation>لا حاجة إلى نظارة</translation>
    </message>
    <message>
        <source>Not finished yet</source>
        <translation>لم يكتمل بعد</translation>
    </message>
    <message>
        <source>Please go to the eye clinic first</source>
        <translation>اذهب إلى عيادة العيون أولًا من فضلك</translation>
    </message>
    <message>
        <source>Go to the eye clinic today, and take the letter.</source>
        <translation>اذهب إلى عيادة العيون اليوم وخذ الرسالة معك.</translation>
    </message>
    <message>
        <source>Go to the eye clinic in the next days, and take the letter.</source>
        <translation>اذهب إلى عيادة العيون في الأيام القادمة وخذ الرسالة معك.</translation>
    </message>
    <message>
        <source>Go to the eye clinic when it next receives people, and take the letter.</source>
        <translation>اذهب إلى عيادة العيون عند موعد استقبالها القادم وخذ الرسالة معك.</translation>
    </message>
    <message>
        <source>right lens %1</source>
        <translation>العدسة اليمنى %1</translation>
    </message>
    <message>
        <source>left lens %1</source>
        <translation>العدسة اليسرى %1</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>الإطار %1</translation>
    </message>
    <message>
        <source>What you were given</source>
        <translation>ما أُعطي لك</translation>
    </message>
    <message>
        <source>What is suggested</source>
        <translation>ما نقترحه</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>إضافة %1</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>الصنف</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>الإطار</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>ما يبقى</translation>
    </message>
    <message>
        <source>Outside limit: %1.</source>
        <translation>خارج الحد: %1.</translation>
    </message>
    <message>
        <source>Given because</source>
        <translation>أُعطي لأن</translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation>يرجى الانتباه</translation>
    </message>
    <message>
        <source>This pair was worn by somebody before.</source>
        <translation>لبس هذه النظارة شخص من قبل.</translation>
    </message>
    <message>
        <source>You see with one eye: ask for lenses that do not break, and wear eye protection.</source>
        <translation>ترى بعين واحدة: اطلب عدسات لا تنكسر والبس واقيًا للعينين.</translation>
    </message>
    <message>
        <source>New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop wearing them and go to an eye clinic the same day.</source>
        <translation>قد تبدو النظارة الجديدة غريبة مدة أسبوع. ازدواج الرؤية أو ألم أو فقدان مفاجئ للبصر: توقف عن لبسها واذهب إلى عيادة العيون في اليوم نفسه.</translation>
    </message>
    <message>
        <source>Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>البسها كما قال واصف النظارة. عد بعد 6 إلى 12 شهرًا، أو فورًا إذا انحرفت عين أو ضعف بصرها.</translation>
    </message>
    <message>
        <source>Come back if your sight changes, and for a new eye test in two years.</source>
        <translation>عد إذا تغير بصرك، ولفحص جديد للعينين بعد سنتين.</translation>
    </message>
    <message>
        <source>Nothing in the box comes near enough, so glasses are to be made.</source>
        <translation>لا شيء في الصندوق قريب بما يكفي، لذا تُصنع نظارة.</translation>
    </message>
    <message>
        <source>For the optician</source>
        <translation>لأخصائي البصريات</translation>
    </message>
    <message>
        <source>Collect at</source>
        <translation>تُستلم في</translation>
    </message>
    <message>
        <source>On or after</source>
        <translation>في هذا اليوم أو بعده</translation>
    </message>
    <message>
        <source>Until then: temporary pair. Not for driving.</source>
        <translation>حتى ذلك الحين: نظارة مؤقتة. ليست للقيادة.</translation>
    </message>
    <message>
        <source>Something is missing before glasses can be given:</source>
        <translation>ينقص شيء قبل إعطاء نظارة:</translation>
    </message>
    <message>
        <source>Come back on</source>
        <translation>عد في يوم</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>لأن</translation>
    </message>
    <message>
        <source>Glasses wait until the clinic has seen your eyes.</source>
        <translation>تنتظر النظارة حتى ترى العيادة عينيك.</translation>
    </message>
    <message>
        <source>Your prescription</source>
        <translation>وصفتك</translation>
    </message>
    <message>
        <source>Your eyes should be measured once more.</source>
        <translation>ينبغي قياس عينيك مرة أخرى.</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>يمين</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>يسار</translation>
    </message>
    <message>
        <source>NEAR</source>
        <translation>قريب</translation>
    </message>
    <message>
        <source>DISTANCE</source>
        <translation>بعيد</translation>
    </message>
    <message>
        <source>ARM&apos;S LENGTH</source>
        <translation>مدى الذراع</translation>
    </message>
    <message>
        <source>BIFOCAL</source>
        <translation>ثنائي البؤرة</translation>
    </message>
    <message>
        <source>centres %1 mm (assumed)</source>
        <translation>المركزان %1 مم (مفترض)</translation>
    </message>
    <message>
        <source>centres %1 mm</source>
        <translation>المركزان %1 مم</translation>
    </message>
    <message>
        <source>size S</source>
        <translation>مقاس صغير</translation>
    </message>
    <message>
        <source>size M</source>
        <translation>مقاس متوسط</translation>
    </message>
    <message>
        <source>size L</source>
        <translation>مقاس كبير</translation>
    </message>
    <message>
        <source>axis set when mounted</source>
        <translation>يُضبط المحور عند التركيب</translation>
    </message>
    <message>
        <source>used pair</source>
        <translation>نظارة مستعملة</translation>
    </message>
    <message>
        <source>Rules %1, program %2.</source>
        <translation>القواعد %1، البرنامج %2.</translation>
    </message>
    <message>
        <source>For near work only.</source>
        <translation>للعمل القريب فقط.</translation>
    </message>
    <message>
        <source>Day and place</source>
        <translation>اليوم والمكان</translation>
    </message>
    <message>
        <source>Box %1: %2 pieces</source>
        <translation>الصندوق %1: %2 قطعة</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>الخانة</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>القوة</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>العدد</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>وُضع</translation>
    </message>
    <message>
        <source>Packed by</source>
        <translation>وضعها</translation>
    </message>
    <message>
        <source>Counted again by</source>
        <translation>عدها ثانية</translation>
    </message>
    <message>
        <source>Count what lies there. Two persons; what the book says is not asked before the end.</source>
        <translation>عدّوا ما هو موجود. شخصان؛ ولا يُسأل عما في الدفتر قبل النهاية.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>العدد المعدود</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>ملاحظة</translation>
    </message>
    <message>
        <source>Counted by (initials)</source>
        <translation>عدّها (الأحرف الأولى)</translation>
    </message>
    <message>
        <source>Second person (initials)</source>
        <translation>الشخص الثاني (الأحرف الأولى)</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter, take the acuity with it, then compare with the record. Where they differ write: the record does not match the pair.</source>
        <translation>اقرأ النظارة بمقياس البؤرة، وخذ حدة البصر بها، ثم قارن بالسجل. حيث يختلفان اكتب: السجل لا يطابق النظارة.</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>القيد</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>الرمز</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>المسجَّل</translation>
    </message>
    <message>
        <source>Read right</source>
        <translation>قراءة اليمنى</translation>
    </message>
    <message>
        <source>Read left</source>
        <translation>قراءة اليسرى</translation>
    </message>
    <message>
        <source>Acuity</source>
        <translation>حدة البصر</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>النتيجة</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>قرأها</translation>
    </message>
    <message>
        <source>no power</source>
        <translation>بلا قوة</translation>
    </message>
    <message>
        <source>Eye</source>
        <translation>العين</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>الإضافة</translation>
    </message>
    <message>
        <source>Prism</source>
        <translation>المنشور</translation>
    </message>
    <message>
        <source>Centre, mm</source>
        <translation>المركز، مم</translation>
    </message>
    <message>
        <source>Height, mm</source>
        <translation>الارتفاع، مم</translation>
    </message>
    <message>
        <source>minus cylinders</source>
        <translation>أسطوانات سالبة</translation>
    </message>
    <message>
        <source>plus cylinders</source>
        <translation>أسطوانات موجبة</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>كما كُتب</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>المقاس</translation>
    </message>
    <message>
        <source>Vertex distance, mm</source>
        <translation>مسافة القرنية، مم</translation>
    </message>
    <message>
        <source>Working distance, mm</source>
        <translation>مسافة العمل، مم</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>واصف النظارة</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>الغرض</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>الصيغة</translation>
    </message>
    <message>
        <source>* half of the distance between both eyes, not measured for this eye</source>
        <translation>* نصف المسافة بين العينين، لم تُقس لهذه العين</translation>
    </message>
    <message>
        <source>Not to be sent before these are measured:</source>
        <translation>لا يُرسل قبل قياس ما يلي:</translation>
    </message>
    <message>
        <source>Wanted by, signature</source>
        <translation>مطلوب قبل، التوقيع</translation>
    </message>
    <message>
        <source>Glasses are being made for you: %1.</source>
        <translation>تُصنع لك نظارة: %1.</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>طُلبت في</translation>
    </message>
    <message>
        <source>Bring this paper. The glasses are measured and tried on you before you take them home.</source>
        <translation>أحضر هذه الورقة. تُقاس النظارة وتُجرَّب عليك قبل أن تأخذها.</translation>
    </message>
    <message>
        <source>If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly lost: do not wait, go to an eye clinic the same day.</source>
        <translation>إن لم تستطع الحضور فأرسل من يخبرنا. إذا ضعف بصرك أو آلمك أو فُقد فجأة فلا تنتظر: اذهب إلى عيادة العيون في اليوم نفسه.</translation>
    </message>
    <message>
        <source>Rules %1, program version %2.</source>
        <translation>القواعد %1، إصدار البرنامج %2.</translation>
    </message>
    <message>
        <source>balance lens</source>
        <translation>عدسة موازنة</translation>
    </message>
    <message>
        <source>artificial eye</source>
        <translation>عين صناعية</translation>
    </message>
    <message>
        <source>does not see</source>
        <translation>لا تبصر</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>لم تُقس</translation>
    </message>
    <message>
        <source>Note for the person</source>
        <translation>ورقة للشخص</translation>
    </message>
    <message>
        <source>Label of a line</source>
        <translation>ملصق صنف</translation>
    </message>
    <message>
        <source>Label of a bin</source>
        <translation>ملصق خانة</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>قائمة التعبئة</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>ورقة العد</translation>
    </message>
    <message>
        <source>Audit worksheet</source>
        <translation>ورقة عمل للتدقيق</translation>
    </message>
    <message>
        <source>Order to the laboratory</source>
        <translation>طلب إلى المعمل</translation>
    </message>
    <message>
        <source>Letter to the eye clinic</source>
        <translation>رسالة إلى عيادة العيون</translation>
    </message>
    <message>
        <source>Glasses to collect</source>
        <translation>نظارة للاستلام</translation>
    </message>
    <message>
        <source>Note for the guardian</source>
        <translation>ورقة لولي الأمر</translation>
    </message>
    <message>
        <source>Note for the teacher</source>
        <translation>ورقة للمعلم</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>بطاقة سريعة</translation>
    </message>
    <message>
        <source>Right eye</source>
        <translation>العين اليمنى</translation>
    </message>
    <message>
        <source>Left eye</source>
        <translation>العين اليسرى</translation>
    </message>
    <message>
        <source>Distance, as written</source>
        <translation>البعيد كما كُتب</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>القريب</translation>
    </message>
    <message>
        <source>for near: reading, sewing, telephone</source>
        <translation>للقريب: القراءة والخياطة والهاتف</translation>
    </message>
    <message>
        <source>for work at arm&apos;s length</source>
        <translation>للعمل على مدى الذراع</translation>
    </message>
    <message>
        <source>for far (upper part) and near (lower part)</source>
        <translation>للبعيد (الجزء العلوي) والقريب (الجزء السفلي)</translation>
    </message>
    <message>
        <source>for far: walking, school board, faces</source>
        <translation>للبعيد: المشي والسبورة والوجوه</translation>
    </message>
    <message>
        <source>For near work only. Not for walking, riding or driving.</source>
        <translation>للعمل القريب فقط. ليست للمشي ولا للركوب ولا للقيادة.</translation>
    </message>
    <message>
        <source>For work at arm&apos;s length only. Not for walking, riding or driving.</source>
        <translation>للعمل على مدى الذراع فقط. ليست للمشي ولا للركوب ولا للقيادة.</translation>
    </message>
    <message>
        <source>The lower part is for near: take care on steps and kerbs. Drive only if your sight with these meets the law where you live.</source>
        <translation>الجزء السفلي للقريب: احذر عند الدرج والأرصفة. لا تقُد إلا إذا بلغ بصرك بها ما يشترطه القانون حيث تعيش.</translation>
    </message>
    <message>
        <source>Drive only if your sight with these meets the law where you live.</source>
        <translation>لا تقُد إلا إذا بلغ بصرك بها ما يشترطه القانون حيث تعيش.</translation>
    </message>
    <message>
        <source>Suggested from the prescription of %1 of %2 by rules %3, version %4. This is not an eye examination.</source>
        <translation>مقترح من وصفة %1 بتاريخ %2 حسب القواعد %3، الإصدار %4. ليس هذا فحصًا للعينين.</translation>
    </message>
    <message>
        <source>(prescriber not named)</source>
        <translation>(الواصف غير مسمى)</translation>
    </message>
    <message>
        <source>(no date)</source>
        <translation>(بلا تاريخ)</translation>
    </message>
    <message>
        <source>Type the camp code and the final prescription as written; signs always.</source>
        <translation>اكتب رمز المخيم والوصفة النهائية كما كُتبت؛ مع الإشارات دائمًا.</translation>
    </message>
    <message>
        <source>Pain, red eye, sudden loss, flashes, double vision: the clinic first.</source>
        <translation>ألم أو عين حمراء أو فقدان مفاجئ أو ومضات أو ازدواج: العيادة أولًا.</translation>
    </message>
    <message>
        <source>Measure the distance between the eyes; for reading the near one.</source>
        <translation>قس المسافة بين العينين؛ وللقراءة مسافة القريب.</translation>
    </message>
    <message>
        <source>Fetch what is suggested from its bin and scan the label.</source>
        <translation>أحضر المقترح من خانته وامسح ملصقه.</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter: does it hold what the label says?</source>
        <translation>اقرأ النظارة بمقياس البؤرة: هل فيها ما يقوله الملصق؟</translation>
    </message>
    <message>
        <source>Try it on the face; take the acuity of each eye with it.</source>
        <translation>جربها على الوجه؛ وخذ حدة بصر كل عين بها.</translation>
    </message>
    <message>
        <source>Outside a limit: say no, or write the reason in your own words.</source>
        <translation>خارج الحد: قل لا، أو اكتب السبب بكلماتك.</translation>
    </message>
    <message>
        <source>Tell what the glasses are for, what is left, and when to come back; give the note.</source>
        <translation>قل لأي غرض النظارة وما يبقى ومتى يعود؛ وأعط الورقة.</translation>
    </message>
    <message>
        <source>Put back what was tried and not taken, each into the bin of its label.</source>
        <translation>أعد ما جُرّب ولم يؤخذ، كلًّا إلى خانة ملصقه.</translation>
    </message>
    <message>
        <source>Take in a delivery by scanning it; a new lot waits until samples are read.</source>
        <translation>تسلّم الوارد بمسحه؛ والدفعة الجديدة تنتظر حتى تُقرأ عينات منها.</translation>
    </message>
    <message>
        <source>Print labels for what came; one on each case, one on each bin.</source>
        <translation>اطبع ملصقات للوارد؛ واحدًا على كل علبة وواحدًا على كل خانة.</translation>
    </message>
    <message>
        <source>A pair off its label goes into quarantine, never back into the bin.</source>
        <translation>نظارة تخالف ملصقها تذهب إلى الحجر ولا تعود إلى الخانة.</translation>
    </message>
    <message>
        <source>Returned pairs are cleaned and read before they are given again.</source>
        <translation>النظارات المعادة تُنظف وتُقرأ قبل إعطائها ثانية.</translation>
    </message>
    <message>
        <source>Count by two persons on the blind sheet; every difference has a reason.</source>
        <translation>العد لشخصين على الورقة الخالية؛ ولكل فرق سبب.</translation>
    </message>
    <message>
        <source>Send to another site with a list; what arrives is counted there.</source>
        <translation>أرسل إلى موقع آخر مع قائمة؛ وما يصل يُعد هناك.</translation>
    </message>
    <message>
        <source>Close the program, then copy the whole folder to a stick at the end of the day.</source>
        <translation>أغلق البرنامج ثم انسخ المجلد كله إلى ذاكرة في آخر اليوم.</translation>
    </message>
    <message>
        <source>Choose the rules with the prescriber, and name them to the team.</source>
        <translation>اختر القواعد مع واصف النظارات وسمّها للفريق.</translation>
    </message>
    <message>
        <source>Look at what was given outside a limit, and at its reasons, each evening.</source>
        <translation>انظر كل مساء في ما أُعطي خارج الحد وفي أسبابه.</translation>
    </message>
    <message>
        <source>Every letter to the clinic is counted when its lower part comes back.</source>
        <translation>كل رسالة إلى العيادة تُحسب حين يعود جزؤها السفلي.</translation>
    </message>
    <message>
        <source>Every pair that is ordered is followed until it is collected.</source>
        <translation>كل نظارة مطلوبة تُتابع حتى تُستلم.</translation>
    </message>
    <message>
        <source>Take a sample of pairs, read them, and look for the slip, not for somebody to blame.</source>
        <translation>خذ عينة من النظارات واقرأها وابحث عن الزلة لا عمن تلومه.</translation>
    </message>
    <message>
        <source>Codes leave the camp, names do not.</source>
        <translation>الرموز تخرج من المخيم، والأسماء لا.</translation>
    </message>
    <message>
        <source>Quick card: at the table</source>
        <translation>بطاقة سريعة: عند الطاولة</translation>
    </message>
    <message>
        <source>Quick card: keeper of the box</source>
        <translation>بطاقة سريعة: أمين الصندوق</translation>
    </message>
    <message>
        <source>Quick card: supervisor</source>
        <translation>بطاقة سريعة: المشرف</translation>
    </message>
    <message>
        <source>Told with every pair</source>
        <translation>يقال مع كل نظارة</translation>
    </message>
    <message>
        <source>A suggestion is not an eye examination. The prescriber and the optician decide.</source>
        <translation>الاقتراح ليس فحصًا للعينين. القرار لواصف النظارة ولأخصائي البصريات.</translation>
    </message>
    <message>
        <source>Says that sight was lost suddenly.</source>
        <translation>يقول إن البصر فُقد فجأة.</translation>
    </message>
    <message>
        <source>Says that an eye hurts.</source>
        <translation>يقول إن عينًا تؤلمه.</translation>
    </message>
    <message>
        <source>An eye is red.</source>
        <translation>عين حمراء.</translation>
    </message>
    <message>
        <source>Sees new flashes or floaters.</source>
        <translation>يرى ومضات أو عوائم جديدة.</translation>
    </message>
    <message>
        <source>Sees double.</source>
        <translation>يرى مزدوجًا.</translation>
    </message>
    <message>
        <source>A pupil looks white.</source>
        <translation>حدقة تبدو بيضاء.</translation>
    </message>
    <message>
        <source>A child; the eyes do not look the same way.</source>
        <translation>طفل؛ لا تنظر العينان إلى جهة واحدة.</translation>
    </message>
    <message>
        <source>The prescriber asks for a refraction with drops.</source>
        <translation>يطلب الواصف قياسًا بالقطرات.</translation>
    </message>
    <message>
        <source>Straight lines look bent or broken.</source>
        <translation>تبدو الخطوط المستقيمة منحنية أو مكسورة.</translation>
    </message>
    <message>
        <source>A part of the field of view is missing.</source>
        <translation>جزء من مجال النظر مفقود.</translation>
    </message>
    <message>
        <source>Sees rings round lights.</source>
        <translation>يرى حلقات حول الأضواء.</translation>
    </message>
    <message>
        <source>A child who does not reach 6/9 in each eye with the final prescription.</source>
        <translation>طفل لا يبلغ ⁦6/9⁩ في كل عين بالوصفة النهائية.</translation>
    </message>
    <message>
        <source>A child who came with less than 6/60 in an eye.</source>
        <translation>طفل جاء ببصر دون ⁦6/60⁩ في عين.</translation>
    </message>
    <message>
        <source>A child with +3.50 D or more, or a cylinder of 1.50 D or more.</source>
        <translation>طفل لديه ⁦+3.50⁩ أو أكثر، أو أسطوانة ⁦1.50⁩ أو أكثر.</translation>
    </message>
    <message>
        <source>Under 8 years; the eyes differ by 1.50 D or more.</source>
        <translation>دون 8 سنوات؛ تختلف العينان بمقدار ⁦1.50⁩ أو أكثر.</translation>
    </message>
    <message>
        <source>Less than 6/12 in the better eye with the best prescription found.</source>
        <translation>دون ⁦6/12⁩ في العين الأفضل بأفضل وصفة وُجدت.</translation>
    </message>
    <message>
        <source>A mean sphere beyond 6.00 D.</source>
        <translation>متوسط الكرة يتجاوز ⁦6.00⁩.</translation>
    </message>
    <message>
        <source>A sphere of +8.00 D or more.</source>
        <translation>كرة ⁦+8.00⁩ أو أكثر.</translation>
    </message>
    <message>
        <source>What was observed</source>
        <translation>ما لوحظ</translation>
    </message>
    <message>
        <source>In the person&apos;s words</source>
        <translation>بكلمات الشخص</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>بلا نظارة</translation>
    </message>
    <message>
        <source>own pair</source>
        <translation>نظارته</translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation>الثقب</translation>
    </message>
    <message>
        <source>best</source>
        <translation>الأفضل</translation>
    </message>
    <message>
        <source>Please see this person today, and tell us on the part below.</source>
        <translation>يرجى رؤية هذا الشخص اليوم، وإخبارنا على الجزء أدناه.</translation>
    </message>
    <message>
        <source>Please see this person in the next days, and tell us on the part below.</source>
        <translation>يرجى رؤية هذا الشخص في الأيام القادمة، وإخبارنا على الجزء أدناه.</translation>
    </message>
    <message>
        <source>Please see this person at a usual appointment, and tell us on the part below.</source>
        <translation>يرجى رؤية هذا الشخص في موعد عادي، وإخبارنا على الجزء أدناه.</translation>
    </message>
    <message>
        <source>No glasses are given until you have seen the person.</source>
        <translation>لا تُعطى نظارة حتى تروا الشخص.</translation>
    </message>
    <message>
        <source>Glasses were given today: %1</source>
        <translation>أُعطيت نظارة اليوم: %1</translation>
    </message>
    <message>
        <source>No glasses are recorded as given yet.</source>
        <translation>لم يُسجل إعطاء نظارة بعد.</translation>
    </message>
    <message>
        <source>Please return this part</source>
        <translation>يرجى إعادة هذا الجزء</translation>
    </message>
    <message>
        <source>Return to</source>
        <translation>يعاد إلى</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>شوهد في</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>وُجد</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>عُمل</translation>
    </message>
    <message>
        <source>Glasses: may be given / wait / other prescription</source>
        <translation>النظارة: يمكن إعطاؤها / تنتظر / وصفة أخرى</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>التوقيع</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>العمر</translation>
    </message>
    <message>
        <source>Name (write it in only if the person agrees)</source>
        <translation>الاسم (لا يُكتب إلا بموافقة الشخص)</translation>
    </message>
    <message>
        <source>Prescription found</source>
        <translation>الوصفة التي وُجدت</translation>
    </message>
    <message>
        <source>What we ask</source>
        <translation>ما نطلبه</translation>
    </message>
    <message>
        <source>%1 stronger than written: hold things a little nearer</source>
        <translation>أقوى مما كُتب بمقدار %1: قرّب الأشياء قليلًا</translation>
    </message>
    <message>
        <source>%1 weaker than written: hold things a little further away</source>
        <translation>أضعف مما كُتب بمقدار %1: أبعد الأشياء قليلًا</translation>
    </message>
    <message>
        <source>%1 more plus than written: far things are a little less sharp</source>
        <translation>موجب أكثر مما كُتب بمقدار %1: البعيد أقل وضوحًا قليلًا</translation>
    </message>
    <message>
        <source>%1 more minus than written: the eye has to focus a little more</source>
        <translation>سالب أكثر مما كُتب بمقدار %1: تجهد العين أكثر قليلًا</translation>
    </message>
    <message>
        <source>%1 of the cylinder is not in the lens: fine lines are a little less sharp</source>
        <translation>%1 من الأسطوانة ليس في العدسة: الخطوط الدقيقة أقل وضوحًا قليلًا</translation>
    </message>
    <message>
        <source>near part: %1</source>
        <translation>الجزء القريب: %1</translation>
    </message>
    <message>
        <source>Both eyes</source>
        <translation>كلتا العينين</translation>
    </message>
    <message>
        <source>Things are clear from about %1 cm.</source>
        <translation>الأشياء واضحة من نحو %1 سم.</translation>
    </message>
    <message>
        <source>Things are clear from about %1 to %2 cm.</source>
        <translation>الأشياء واضحة من نحو %1 إلى %2 سم.</translation>
    </message>
    <message>
        <source>The lenses have the power that was written for you.</source>
        <translation>في العدستين القوة التي كُتبت لك.</translation>
    </message>
    <message>
        <source>The middle of the lenses is not quite before the middle of the eyes: the first days may feel odd.</source>
        <translation>وسط العدستين ليس أمام وسط العينين تمامًا: قد تبدو الأيام الأولى غريبة.</translation>
    </message>
    <message>
        <source>Audit of hand-overs</source>
        <translation>مراجعة عمليات التسليم</translation>
    </message>
    <message>
        <source>within</source>
        <translation>ضمن الحد</translation>
    </message>
    <message>
        <source>beyond 95 %</source>
        <translation>خارج 95 %</translation>
    </message>
    <message>
        <source>beyond 99.9 %</source>
        <translation>خارج 99.9 %</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>قُيّمت</translation>
    </message>
    <message>
        <source>At odds</source>
        <translation>متعارضة</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>النسبة</translation>
    </message>
    <message>
        <source>95 % limits</source>
        <translation>حدود 95 %</translation>
    </message>
    <message>
        <source>Funnel</source>
        <translation>مخطط القمع</translation>
    </message>
    <message>
        <source>Share at odds against the number judged; lines: the share of all %1, the limits of chance at 95 % (dashed) and 99.9 % (solid)</source>
        <translation>نسبة المتعارض مقابل عدد ما قُيّم؛ الخطوط: نسبة الجميع %1، وحدود المصادفة عند 95 % (متقطع) و99.9 % (متصل)</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>عمليات تسليم قُيّمت</translation>
    </message>
    <message>
        <source>Good ones before it</source>
        <translation>السليم قبلها</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>المخطط</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>السلسلة</translation>
    </message>
    <message>
        <source>Good hand-overs between two at odds, in their order; centre %1, a run longer than %2 is better than the share says</source>
        <translation>عمليات التسليم السليمة بين اثنتين متعارضتين، بترتيبها؛ المركز %1، والسلسلة الأطول من %2 أفضل مما تقوله النسبة</translation>
    </message>
    <message>
        <source>runs, the last one still open</source>
        <translation>السلاسل، والأخيرة ما زالت مفتوحة</translation>
    </message>
    <message>
        <source>better than the share says</source>
        <translation>أفضل مما تقوله النسبة</translation>
    </message>
    <message>
        <source>open</source>
        <translation>مفتوحة</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>الحدود</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>أسبوع يبدأ من</translation>
    </message>
    <message>
        <source>Share at odds by week; centre %1, limits at three standard deviations, which step with the volume</source>
        <translation>نسبة المتعارض بالأسبوع؛ المركز %1، والحدود عند ثلاثة انحرافات معيارية، وتتدرج مع العدد</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>أسابيع</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>خارج الحد</translation>
    </message>
    <message>
        <source>Large lot accepted</source>
        <translation>قبول دفعة كبيرة</translation>
    </message>
    <message>
        <source>This lot accepted</source>
        <translation>قبول هذه الدفعة</translation>
    </message>
    <message>
        <source>Failing</source>
        <translation>المخفق</translation>
    </message>
    <message>
        <source>How likely a lot is accepted by the share that fails in it: %1 read, at most %2 may fail</source>
        <translation>مدى احتمال قبول دفعة بحسب النسبة المخفقة فيها: تُقرأ %1، ويجوز أن تخفق %2 على الأكثر</translation>
    </message>
    <message>
        <source>failing</source>
        <translation>مخفق</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>دون %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>لا شيء بعد</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>‏%1 من %2</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (95 % limits %4 to %5)</source>
        <translation>‏%1 من %2، %3 (حدود 95 % من %4 إلى %5)</translation>
    </message>
    <message>
        <source>Refraction</source>
        <translation>قياس الانكسار</translation>
    </message>
    <message>
        <source>Dispensing</source>
        <translation>الصرف</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>المورّد</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>المخزون</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>المتابعة</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>المسجَّل</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>الموقع</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>القواعد</translation>
    </message>
    <message>
        <source>Kind of pair</source>
        <translation>نوع النظارة</translation>
    </message>
    <message>
        <source>Desk (numbers of this report)</source>
        <translation>المكتب (أرقام هذا التقرير)</translation>
    </message>
    <message>
        <source>By site</source>
        <translation>بحسب الموقع</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>بحسب الأسبوع</translation>
    </message>
    <message>
        <source>By rules</source>
        <translation>بحسب القواعد</translation>
    </message>
    <message>
        <source>By purpose</source>
        <translation>بحسب الغرض</translation>
    </message>
    <message>
        <source>By kind of pair</source>
        <translation>بحسب نوع النظارة</translation>
    </message>
    <message>
        <source>By desk</source>
        <translation>بحسب المكتب</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>جاهزة</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>ثنائي البؤرة</translation>
    </message>
    <message>
        <source>lenses in a frame</source>
        <translation>عدسات في إطار</translation>
    </message>
    <message>
        <source>nobody has looked yet</source>
        <translation>لم يعاين أحد بعد</translation>
    </message>
    <message>
        <source>met</source>
        <translation>حاجة ملبّاة</translation>
    </message>
    <message>
        <source>under-met</source>
        <translation>حاجة ملبّاة جزئيًا</translation>
    </message>
    <message>
        <source>unmet</source>
        <translation>حاجة غير ملبّاة</translation>
    </message>
    <message>
        <source>no need</source>
        <translation>لا حاجة</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>سبب آخر</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>غير معروف</translation>
    </message>
    <message>
        <source>At odds: by the record, the pair is not one that the rules would call acceptable, or what was measured beside the record speaks against it. This page is about records; a person decides what they mean. Nothing here is a ranking.</source>
        <translation>متعارضة: بحسب المسجَّل ليست النظارة مما تقبله القواعد، أو يعارض المسجَّل ما قيس إلى جانبه. هذه الصفحة عن المسجَّل؛ والإنسان هو من يقرر معناه. لا شيء هنا ترتيب تفاضلي.</translation>
    </message>
    <message>
        <source>Hand-overs</source>
        <translation>عمليات التسليم</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>‏%1 من %2 إلى %3</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>قُيّمت بحسب</translation>
    </message>
    <message>
        <source>Record and pair at odds</source>
        <translation>تعارض المسجَّل والنظارة</translation>
    </message>
    <message>
        <source>Entry %1 is not as it was written; only what stands before it was judged.</source>
        <translation>القيد %1 ليس كما كُتب؛ لم يُقيَّم إلا ما قبله.</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>ما يُفعل بعد ذلك</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>لم يوجد شيء.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>أين</translation>
    </message>
    <message>
        <source>What the records show</source>
        <translation>ما يُظهره المسجَّل</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>المرات</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
    <message>
        <source>Kinds found less often, in the detail: %1</source>
        <translation>أنواع وُجدت أقل من ذلك، في التفصيل: %1</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>عبر الزمن</translation>
    </message>
    <message>
        <source>p-chart by week</source>
        <translation>مخطط p بالأسبوع</translation>
    </message>
    <message>
        <source>p-chart: %1</source>
        <translation>مخطط p: ‏%1</translation>
    </message>
    <message>
        <source>g-chart: %1</source>
        <translation>مخطط g: ‏%1</translation>
    </message>
    <message>
        <source>g-chart</source>
        <translation>مخطط g</translation>
    </message>
    <message>
        <source>g-chart: half of the runs between two at odds are %1 good ones or fewer; one longer than %2 is better than the share says</source>
        <translation>مخطط g: نصف السلاسل بين اثنتين متعارضتين فيه %1 من السليمة أو أقل؛ والأطول من %2 أفضل مما تقوله النسبة</translation>
    </message>
    <message>
        <source>Read again at the bench</source>
        <translation>أُعيدت قراءتها على طاولة القياس</translation>
    </message>
    <message>
        <source>No lot was drawn yet.</source>
        <translation>لم تُسحب دفعة بعد.</translation>
    </message>
    <message>
        <source>%1 of %2 hand-overs, at most %3 may fail</source>
        <translation>‏%1 من %2 من عمليات التسليم، ويجوز أن يخفق %3 على الأكثر</translation>
    </message>
    <message>
        <source>Operating curve</source>
        <translation>منحنى القبول</translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation>لا نتائج بعد</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>مقبولة</translation>
    </message>
    <message>
        <source>refused: read every pair of these days</source>
        <translation>مرفوضة: اقرأ كل نظارات هذه الأيام</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>المعاينة من جديد</translation>
    </message>
    <message>
        <source>With the pair when seen</source>
        <translation>مع النظارة عند المعاينة</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>الموعد</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>الأشخاص</translation>
    </message>
    <message>
        <source>Due now</source>
        <translation>حان موعدهم الآن</translation>
    </message>
    <message>
        <source>Effective coverage, distance, of %1 who came</source>
        <translation>التغطية الفعالة للبعد، من %1 حضروا</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>التغطية</translation>
    </message>
    <message>
        <source>as they came</source>
        <translation>كما حضروا</translation>
    </message>
    <message>
        <source>as they are now</source>
        <translation>كما هم الآن</translation>
    </message>
    <message>
        <source>Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator 3154). It is defined for a sample of a population; here it is of those who came.</source>
        <translation>الملبّاة مقسومة على الملبّاة والملبّاة جزئيًا وغير الملبّاة، العين الأفضل، 6/12 (منظمة الصحة العالمية، المؤشر 3154). وهي معرّفة لعينة من السكان؛ وهي هنا لمن حضروا.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>الملاحظات</translation>
    </message>
    <message>
        <source>In figures</source>
        <translation>بالأرقام</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>الهفوة الأرجح</translation>
    </message>
    <message>
        <source>None to be listed one by one.</source>
        <translation>لا شيء منها يُذكر على حدة.</translation>
    </message>
    <message>
        <source>%1 more are not listed here; `audit --json` has them all.</source>
        <translation>لم يُذكر هنا %1 غيرها؛ كلها في ⁦`audit --json`⁩.</translation>
    </message>
    <message>
        <source>A slip is a mistake in a record or in a pick, named by its likelihood and never proved by it.</source>
        <translation>الهفوة خطأ في تسجيل أو في اختيار، تُسمى بحسب رجحانها ولا تثبت به أبدًا.</translation>
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
    <name>quarterstep::AuditCasePanel</name>
    <message>
        <source>Criteria and slips, or the picture of why not</source>
        <translation>المعايير والهفوات، أو صورة «لِمَ لا»</translation>
    </message>
    <message>
        <source>Criteria and slips</source>
        <translation>المعايير والهفوات</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>لِمَ لا</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>ما تعرضه الأعمدة</translation>
    </message>
    <message>
        <source>From the better pair to the pair given, or the limits of one of them</source>
        <translation>من النظارة الأفضل إلى المسلَّمة، أو حدود إحداهما</translation>
    </message>
    <message>
        <source>From the better pair to the pair given</source>
        <translation>من النظارة الأفضل إلى النظارة المسلَّمة</translation>
    </message>
    <message>
        <source>Where the cost of the pair given comes from</source>
        <translation>من أين يأتي فقد النظارة المسلَّمة</translation>
    </message>
    <message>
        <source>Limits used up by the pair given</source>
        <translation>ما استنفدته النظارة المسلَّمة من الحدود</translation>
    </message>
    <message>
        <source>Limits used up by the better pair</source>
        <translation>ما استنفدته النظارة الأفضل من الحدود</translation>
    </message>
    <message>
        <source>Choose a hand-over that could be judged: what kept it from its limits stands here.</source>
        <translation>اختر تسليمًا أمكن تقييمه: يظهر هنا ما أبعده عن حدوده.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCharts</name>
    <message>
        <source>Of 100 hand-overs: why not</source>
        <translation>من 100 عملية تسليم: لِمَ لا</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>حفظ…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>حفظ المخطط</translation>
    </message>
    <message>
        <source>Pictures (*.png);;Tables (*.csv)</source>
        <translation>صور (*.png);;جداول (*.csv)</translation>
    </message>
    <message>
        <source>The chart is %1.</source>
        <translation>المخطط هو %1.</translation>
    </message>
    <message>
        <source>Saves the chart as a PDF or a picture, or its numbers as a table (Ctrl+Shift+S)</source>
        <translation>يحفظ الرسم بصيغة PDF أو صورة، أو أرقامه جدولًا (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>طباعة</translation>
    </message>
    <message>
        <source>Prints the chart with its numbers on the printer of the settings (Ctrl+P)</source>
        <translation>يطبع الرسم مع أرقامه على طابعة الإعدادات (Ctrl+P)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>ورقة (*.pdf)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditPlace</name>
    <message>
        <source>Audit</source>
        <translation>التدقيق</translation>
    </message>
    <message>
        <source>Every hand-over is judged again by the rules and the stock of its moment.</source>
        <translation>يُقيَّم كل تسليم ثانية بقواعد وقته ومخزونه.</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translation>إعادة التدقيق</translation>
    </message>
    <message>
        <source>Reads the ledger from the first entry to the last (F5)</source>
        <translation>يقرأ السجل من أول قيد إلى آخره (F5)</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>ما يُعرض</translation>
    </message>
    <message>
        <source>Shows findings of one class only</source>
        <translation>يعرض ملاحظات فئة واحدة فقط</translation>
    </message>
    <message>
        <source>Look for a finding</source>
        <translation>ابحث عن ملاحظة</translation>
    </message>
    <message>
        <source>Look for a person, a line, a word</source>
        <translation>ابحث عن شخص أو صنف أو كلمة</translation>
    </message>
    <message>
        <source>Shows only findings in which these words stand (Ctrl+F)</source>
        <translation>يُظهر فقط الملاحظات التي فيها هذه الكلمات (Ctrl+F)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>الملاحظات</translation>
    </message>
    <message>
        <source>What is to be said of hand-overs, one by one</source>
        <translation>ما يقال عن عمليات التسليم، واحدة واحدة</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>المخططات</translation>
    </message>
    <message>
        <source>How often, by site, week and kind of pair</source>
        <translation>كم مرة، بحسب الموقع والأسبوع ونوع النظارة</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>منضدة الفحص</translation>
    </message>
    <message>
        <source>Lots read again, who is to be seen again, the report</source>
        <translation>العينات المقروءة ثانية، ومن يُفحص ثانية، والتقرير</translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation>ملاحظات التدقيق</translation>
    </message>
    <message>
        <source>Choose a finding to see need, pair and slips beside</source>
        <translation>اختر ملاحظة لترى بجانبها الحاجة والنظارة والهفوات</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>المخطط</translation>
    </message>
    <message>
        <source>Funnel: shares against the size of the group</source>
        <translation>القمع: النسب مقابل حجم المجموعة</translation>
    </message>
    <message>
        <source>Runs of good hand-overs (g-chart)</source>
        <translation>سلاسل التسليم السليم (g-chart)</translation>
    </message>
    <message>
        <source>Weeks (p-chart)</source>
        <translation>الأسابيع (p-chart)</translation>
    </message>
    <message>
        <source>Which picture is drawn</source>
        <translation>أي صورة تُرسم</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>المجموعات</translation>
    </message>
    <message>
        <source>What the groups of the funnel are</source>
        <translation>ما مجموعات القمع</translation>
    </message>
    <message>
        <source>Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. Circle: inside · triangle: beyond the inner limit · diamond: beyond the outer. Nothing is ranked.</source>
        <translation>المتصل: نسبة الجميع · المتقطع: الحد الداخلي، 95 % · المنقط: الحد الخارجي. دائرة: في الداخل · مثلث: خارج الحد الداخلي · معيّن: خارج الحد الخارجي. لا ترتيب هنا.</translation>
    </message>
    <message>
        <source>The numbers of the chart</source>
        <translation>أرقام المخطط</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>الأرقام نفسها كما في الصورة</translation>
    </message>
    <message>
        <source>Why, criterion by criterion:</source>
        <translation>السبب، معيارًا معيارًا:</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>النظارة المسلَّمة</translation>
    </message>
    <message>
        <source>How the pair that was given is judged</source>
        <translation>كيف تُقيَّم النظارة التي سُلّمت</translation>
    </message>
    <message>
        <source>Better pair</source>
        <translation>نظارة أفضل</translation>
    </message>
    <message>
        <source>How the pair that lay in the box is judged</source>
        <translation>كيف تُقيَّم النظارة التي كانت في الصندوق</translation>
    </message>
    <message>
        <source>Criteria of the pair</source>
        <translation>معايير النظارة</translation>
    </message>
    <message>
        <source>Each criterion with its value, its limit and the source of the limit</source>
        <translation>كل معيار بقيمته وحده ومصدر الحد</translation>
    </message>
    <message>
        <source>Slips that the record allows. It speaks of the record; a person decides.</source>
        <translation>الهفوات التي يحتملها السجل. الكلام عن السجل؛ والقرار لإنسان.</translation>
    </message>
    <message>
        <source>Slips and their arithmetic</source>
        <translation>الهفوات وحسابها</translation>
    </message>
    <message>
        <source>Probability of each slip, and how it comes about</source>
        <translation>احتمال كل هفوة، وكيف يُحسب</translation>
    </message>
    <message>
        <source>Judging hand-overs again…</source>
        <translation>يُعاد تقييم عمليات التسليم…</translation>
    </message>
    <message>
        <source>Reading the ledger …</source>
        <translation>يُقرأ السجل …</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written; audit again with F5.</source>
        <translation>أُوقف. لم يُكتب شيء؛ أعد التدقيق بـ F5.</translation>
    </message>
    <message>
        <source>The audit ended before its time; the reason stands above.</source>
        <translation>انتهى التدقيق قبل أوانه؛ السبب مذكور أعلاه.</translation>
    </message>
    <message>
        <source>hand-overs %1, judged again %2</source>
        <translation>عمليات تسليم %1، قُيّم منها ثانية %2</translation>
    </message>
    <message>
        <source>pair and record at odds: %1</source>
        <translation>النظارة والسجل متعارضان: %1</translation>
    </message>
    <message>
        <source>findings %1</source>
        <translation>الملاحظات %1</translation>
    </message>
    <message>
        <source>%1 more are counted and not listed</source>
        <translation>معدود غير مدرج: %1 أخرى</translation>
    </message>
    <message>
        <source>The record is whole: %1 entries, each follows the one before.</source>
        <translation>السجل سليم: عدد القيود %1، وكل قيد يتبع سابقه.</translation>
    </message>
    <message>
        <source>Every finding</source>
        <translation>كل الملاحظات</translation>
    </message>
    <message>
        <source>by site</source>
        <translation>بحسب الموقع</translation>
    </message>
    <message>
        <source>by who handed over</source>
        <translation>بحسب من سلّم</translation>
    </message>
    <message>
        <source>by week</source>
        <translation>بحسب الأسبوع</translation>
    </message>
    <message>
        <source>by profile</source>
        <translation>بحسب مجموعة القواعد</translation>
    </message>
    <message>
        <source>by purpose</source>
        <translation>بحسب الغرض</translation>
    </message>
    <message>
        <source>by kind of pair</source>
        <translation>بحسب نوع النظارة</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>اليمنى</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>اليسرى</translation>
    </message>
    <message>
        <source>%1: not judged</source>
        <translation>‏%1: لم تُقيَّم</translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation>‏%1: تحتاج إلى %2</translation>
    </message>
    <message>
        <source>, was given %1</source>
        <translation>، وأُعطيت %1</translation>
    </message>
    <message>
        <source>Pair %1: %2</source>
        <translation>النظارة %1: %2</translation>
    </message>
    <message>
        <source>In the box lay %1 (bin %2): %3</source>
        <translation>كان في الصندوق %1 (الخانة %2): %3</translation>
    </message>
    <message>
        <source>No slip was looked for: record, pair and witnesses agree.</source>
        <translation>لم يُبحث عن هفوة: السجل والنظارة والشواهد متفقة.</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>‏%1  %2: %3</translation>
    </message>
    <message>
        <source>Below each: prior × witnesses × pair; the probability is its part of the sum.</source>
        <translation>تحت كل هفوة: الاحتمال القبلي × الشواهد × النظارة؛ واحتمالها هو حصتها من المجموع.</translation>
    </message>
    <message>
        <source>Slips of the record cannot be tested here: nothing was measured beside it.</source>
        <translation>لا يمكن اختبار هفوات السجل هنا: لم يُقس شيء إلى جانبه.</translation>
    </message>
    <message>
        <source>No finding is chosen</source>
        <translation>لم تُختر ملاحظة</translation>
    </message>
    <message>
        <source>Choose a finding in the list: what was needed, what was given and what lay in the box stand here.</source>
        <translation>اختر ملاحظة من القائمة: يظهر هنا ما كان مطلوبًا وما سُلّم وما كان في الصندوق.</translation>
    </message>
    <message>
        <source>About the course of events</source>
        <translation>عن مجرى الأحداث</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>‏%1، %2، القيد %3</translation>
    </message>
    <message>
        <source>Need, pair and findings</source>
        <translation>الحاجة والنظارة والملاحظات</translation>
    </message>
    <message>
        <source>What was needed, what was given, what lay in the box; the text can be copied</source>
        <translation>ما كان مطلوبًا وما سُلّم وما كان في الصندوق؛ يمكن نسخ النص</translation>
    </message>
    <message>
        <source>Nothing was handed over in this camp yet, so there is nothing to audit.</source>
        <translation>لم يُسلَّم شيء في هذا المخيم بعد، فلا شيء للتدقيق.</translation>
    </message>
    <message>
        <source>Check the record</source>
        <translation>فحص السجل</translation>
    </message>
    <message>
        <source>Every entry, every text and every count of the ledger against the chain, in the background (F6)</source>
        <translation>كل قيد وكل نص وكل عدد في السجل مقابل السلسلة، في الخلفية (F6)</translation>
    </message>
    <message>
        <source>Save the report for the site</source>
        <translation>حفظ التقرير للموقع</translation>
    </message>
    <message>
        <source>Checking the record…</source>
        <translation>يُفحص السجل…</translation>
    </message>
    <message>
        <source>Checking the record, entry by entry …</source>
        <translation>يُفحص السجل، قيدًا قيدًا …</translation>
    </message>
    <message>
        <source>The check was stopped before its end.</source>
        <translation>أُوقف الفحص قبل نهايته.</translation>
    </message>
    <message>
        <source>Print the chart</source>
        <translation>طباعة الرسم</translation>
    </message>
    <message>
        <source>Save the chart…</source>
        <translation>حفظ الرسم…</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditReports</name>
    <message>
        <source>For everybody at the site: text, page for a browser, PDF, table or JSON (Ctrl+S)</source>
        <translation>للجميع في الموقع: نص أو صفحة للمتصفح أو PDF أو جدول أو JSON (Ctrl+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>طباعة</translation>
    </message>
    <message>
        <source>Prints the page for the site on the printer of the settings</source>
        <translation>يطبع صفحة الموقع على الطابعة المختارة في الإعدادات</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>ورق (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>نص (*.txt)</translation>
    </message>
    <message>
        <source>Data (*.json)</source>
        <translation>بيانات (*.json)</translation>
    </message>
    <message>
        <source>No printer is chosen; choose one in the settings (Ctrl+,), or save a PDF.</source>
        <translation>لم تُختر طابعة؛ اختر واحدة في الإعدادات (Ctrl+,)، أو احفظ ملف PDF.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>كُتب: %1</translation>
    </message>
    <message>
        <source>Drawing the pages…</source>
        <translation>تُرسم الصفحات…</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsModel</name>
    <message>
        <source>Part</source>
        <translation>الجزء</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>الرقم</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>الأثر</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>من ماذا</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsView</name>
    <message>
        <source>Bars: why not</source>
        <translation>الأعمدة: لِمَ لا</translation>
    </message>
    <message>
        <source>Arrows scroll; the same numbers stand in the table</source>
        <translation>الأسهم تحرّك العرض؛ والأرقام نفسها في الجدول</translation>
    </message>
    <message>
        <source>The numbers of the bars</source>
        <translation>أرقام الأعمدة</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>الأرقام نفسها كما في الصورة</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>الأرقام نفسها في الجدول بجانبه</translation>
    </message>
    <message>
        <source>Filled: whole · lines rising: adds · lines falling: takes away.</source>
        <translation>المملوء: الكل · خطوط صاعدة: يزيد · خطوط نازلة: يُنقص.</translation>
    </message>
    <message>
        <source>Dots: inside · filled, with a diamond: outside · dashed: the limit.</source>
        <translation>النقاط: في الداخل · مملوءة مع معيّن: في الخارج · المتقطع: الحد.</translation>
    </message>
</context>
<context>
    <name>quarterstep::BenchPanel</name>
    <message>
        <source>Lots read again at the bench</source>
        <translation>عينات تُقرأ ثانية على منضدة الفحص</translation>
    </message>
    <message>
        <source>Pairs to read:</source>
        <translation>النظارات التي تُقرأ:</translation>
    </message>
    <message>
        <source>Pairs to read</source>
        <translation>النظارات التي تُقرأ</translation>
    </message>
    <message>
        <source>How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small</source>
        <translation>عدد النظارات المسحوبة؛ “أقل ما يكفي” يُبقي خطر القرار الخاطئ صغيرًا</translation>
    </message>
    <message>
        <source>as few as will do</source>
        <translation>أقل ما يكفي</translation>
    </message>
    <message>
        <source>Draw a lot…</source>
        <translation>سحب عينة…</translation>
    </message>
    <message>
        <source>Draws hand-overs by lot, enters the draw and writes the sheet for the bench</source>
        <translation>يسحب عمليات تسليم بالقرعة، ويقيّد السحب، ويكتب ورقة منضدة الفحص</translation>
    </message>
    <message>
        <source>Sheet for the bench</source>
        <translation>ورقة لمنضدة الفحص</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>جداول (*.csv)</translation>
    </message>
    <message>
        <source>Take in a sheet…</source>
        <translation>إدخال ورقة…</translation>
    </message>
    <message>
        <source>Reads a filled-in sheet, judges it and enters results and decision</source>
        <translation>يقرأ ورقة مملوءة ويقيّمها ويقيّد النتائج والقرار</translation>
    </message>
    <message>
        <source>Sheet from the bench</source>
        <translation>ورقة من منضدة الفحص</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>المسحوب</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>النظارات</translation>
    </message>
    <message>
        <source>May fail</source>
        <translation>المسموح بإخفاقه</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>القرار</translation>
    </message>
    <message>
        <source>Lots drawn in this camp</source>
        <translation>العينات المسحوبة في هذا المخيم</translation>
    </message>
    <message>
        <source>To be seen again</source>
        <translation>يُفحص ثانية</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>الشخص</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>المسلَّم</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>النظارة</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>State</source>
        <translation>الحالة</translation>
    </message>
    <message>
        <source>Persons to be seen again</source>
        <translation>أشخاص يُفحصون ثانية</translation>
    </message>
    <message>
        <source>Report: no names and no initials; small counts are hidden on the page for the site.</source>
        <translation>التقرير: بلا أسماء ولا أحرف أولى؛ وتُخفى الأعداد الصغيرة في صفحة الموقع.</translation>
    </message>
    <message>
        <source>Page for the site…</source>
        <translation>صفحة للموقع…</translation>
    </message>
    <message>
        <source>In detail…</source>
        <translation>بالتفصيل…</translation>
    </message>
    <message>
        <source>Everything, for the supervisor</source>
        <translation>كل شيء، للمشرف</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>التقرير</translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation>صفحات (*.html)</translation>
    </message>
    <message>
        <source>Nothing happened in this camp yet.</source>
        <translation>لم يجرِ شيء في هذا المخيم بعد.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>‏%1 من %2</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>لم تُقرأ بعد</translation>
    </message>
    <message>
        <source>wearers %1</source>
        <translation>لابسو النظارات %1</translation>
    </message>
    <message>
        <source>met %1, of them wearing %2</source>
        <translation>لُقي %1، منهم من يلبسها %2</translation>
    </message>
    <message>
        <source>effective coverage of those who came %1 %</source>
        <translation>التغطية الفعالة لمن حضروا %1 %</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>قريبًا</translation>
    </message>
    <message>
        <source>due</source>
        <translation>حان موعده</translation>
    </message>
    <message>
        <source>late</source>
        <translation>متأخر</translation>
    </message>
    <message>
        <source>Drawn: %1 of %2 hand-overs; the sheet is %3.</source>
        <translation>سُحب: %1 من %2 من عمليات التسليم؛ الورقة هي %3.</translation>
    </message>
    <message>
        <source>Writing the report…</source>
        <translation>يُكتب التقرير…</translation>
    </message>
    <message>
        <source>Its sheet…</source>
        <translation>ورقتها…</translation>
    </message>
    <message>
        <source>Writes the sheet of the chosen lot again: to be filled in, or for paper</source>
        <translation>يكتب ورقة الدفعة المختارة من جديد: للملء أو للطباعة على الورق</translation>
    </message>
    <message>
        <source>No lot was drawn yet; draw one first.</source>
        <translation>لم تُسحب دفعة بعد؛ اسحب واحدة أولًا.</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Paper (*.pdf);;Text (*.txt)</source>
        <translation>جداول (*.csv);;ورق (*.pdf);;نص (*.txt)</translation>
    </message>
</context>
<context>
    <name>quarterstep::BoxModel</name>
    <message>
        <source>unequal eyes</source>
        <translation>عينان مختلفتان</translation>
    </message>
    <message>
        <source>none</source>
        <translation>لا شيء</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>‏%1 أصناف</translation>
    </message>
    <message>
        <source>%1 low</source>
        <translation>‏%1 قليل</translation>
    </message>
    <message>
        <source>bin %1, %2, available %3</source>
        <translation>الخانة %1، %2، المتاح %3</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>بلا صف</translation>
    </message>
</context>
<context>
    <name>quarterstep::BringInPanel</name>
    <message>
        <source>Choose a file…</source>
        <translation>اختر ملفًا…</translation>
    </message>
    <message>
        <source>A table (CSV, TSV), lines of JSON, FHIR, or DICOM files of instruments</source>
        <translation>جدول (CSV، TSV)، أو أسطر JSON، أو FHIR، أو ملفات DICOM من الأجهزة</translation>
    </message>
    <message>
        <source>Take the clipboard</source>
        <translation>خذ من الحافظة</translation>
    </message>
    <message>
        <source>What was copied in a spreadsheet or another program</source>
        <translation>ما نُسخ من جدول بيانات أو من برنامج آخر</translation>
    </message>
    <message>
        <source>How the table is read</source>
        <translation>كيف يُقرأ الجدول</translation>
    </message>
    <message>
        <source>Use a map…</source>
        <translation>استعمل خريطة…</translation>
    </message>
    <message>
        <source>A file that says how such a table is read</source>
        <translation>ملف يبيّن كيف يُقرأ مثل هذا الجدول</translation>
    </message>
    <message>
        <source>Save this map…</source>
        <translation>احفظ هذه الخريطة…</translation>
    </message>
    <message>
        <source>For the next table of this kind; `quarterstep import --map` takes it, too</source>
        <translation>للجدول القادم من هذا النوع؛ ويقبلها ⁦`quarterstep import --map`⁩ أيضًا</translation>
    </message>
    <message>
        <source>What is read: nothing is written yet</source>
        <translation>ما يُقرأ: لم يُكتب شيء بعد</translation>
    </message>
    <message>
        <source>Only rows about which something was found</source>
        <translation>الصفوف التي وُجد فيها شيء فقط</translation>
    </message>
    <message>
        <source>Leaves out rows that were read without a finding</source>
        <translation>يُخفي الصفوف التي قُرئت دون ملاحظة</translation>
    </message>
    <message>
        <source>Rows as they are read</source>
        <translation>الصفوف كما تُقرأ</translation>
    </message>
    <message>
        <source>Choose a row: what was found about it stands below</source>
        <translation>اختر صفًا: ما وُجد فيه يظهر أدناه</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>الملاحظات</translation>
    </message>
    <message>
        <source>Kind, line and column in the file, what was found, and its code</source>
        <translation>النوع، والسطر والعمود في الملف، وما وُجد، ورمزه</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>To the place before; nothing is brought in</source>
        <translation>إلى الموضع السابق؛ لا يُستورد شيء</translation>
    </message>
    <message>
        <source>They come to stand in the waiting list</source>
        <translation>تُوضع في قائمة الانتظار</translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation>استوردها</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>جدول</translation>
    </message>
    <message>
        <source>lines of JSON</source>
        <translation>أسطر JSON</translation>
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
        <translation>لم يُختر شيء بعد.</translation>
    </message>
    <message>
        <source>Prescriptions to bring in</source>
        <translation>وصفات للاستيراد</translation>
    </message>
    <message>
        <source>Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;All files (*)</source>
        <translation>وصفات (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;كل الملفات (*)</translation>
    </message>
    <message>
        <source>No text is in the clipboard; copy the rows with their headings first.</source>
        <translation>لا نص في الحافظة؛ انسخ الصفوف مع عناوينها أولًا.</translation>
    </message>
    <message>
        <source>The clipboard</source>
        <translation>الحافظة</translation>
    </message>
    <message numerus="yes">
        <source>%n files</source>
        <translation>
            <numerusform>الملفات: %n</numerusform>
            <numerusform>الملفات: %n</numerusform>
            <numerusform>الملفات: %n</numerusform>
            <numerusform>الملفات: %n</numerusform>
            <numerusform>الملفات: %n</numerusform>
            <numerusform>الملفات: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Use a map</source>
        <translation>استعمال خريطة</translation>
    </message>
    <message>
        <source>Maps of tables (*.map);;All files (*)</source>
        <translation>خرائط الجداول (*.map);;كل الملفات (*)</translation>
    </message>
    <message>
        <source>Save this map</source>
        <translation>حفظ هذه الخريطة</translation>
    </message>
    <message>
        <source>Maps of tables (*.map)</source>
        <translation>خرائط الجداول (*.map)</translation>
    </message>
    <message>
        <source>The map is in %1.</source>
        <translation>الخريطة في %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>تجري القراءة…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was brought in.</source>
        <translation>أُوقف. لم يُستورد شيء.</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>يجري الاستيراد…</translation>
    </message>
    <message>
        <source>%1 brought in, %2 left out. They stand in the list and in %3.</source>
        <translation>استُورد: %1، تُرك: %2. وهي في القائمة وفي %3.</translation>
    </message>
    <message>
        <source>It is being read…</source>
        <translation>تجري قراءته…</translation>
    </message>
    <message>
        <source>Choose a file, or copy rows and take the clipboard.</source>
        <translation>اختر ملفًا، أو انسخ صفوفًا وخذ من الحافظة.</translation>
    </message>
    <message>
        <source>Read as %1: %2 to be brought in, %3 left out</source>
        <translation>قُرئ على أنه %1: للاستيراد %2، متروك %3</translation>
    </message>
    <message>
        <source>Bring in %1, leave out %2</source>
        <translation>استورد %1، واترك %2</translation>
    </message>
    <message>
        <source>Found about row %1 (%2)</source>
        <translation>ما وُجد في الصف %1 (%2)</translation>
    </message>
    <message>
        <source>Found about the file as a whole</source>
        <translation>ما وُجد في الملف كله</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>قُرئ على أنه %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::BroughtRowsModel</name>
    <message>
        <source>left out</source>
        <translation>تُرك</translation>
    </message>
    <message>
        <source>taken, with a caution</source>
        <translation>أُخذ، مع تحفظ</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>أُخذ</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>الصف</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>الشخص</translation>
    </message>
    <message>
        <source>Brought in?</source>
        <translation>هل استُورد؟</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>قُرئ على أنه</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>ما وُجد</translation>
    </message>
</context>
<context>
    <name>quarterstep::CampNotes</name>
    <message>
        <source>It lies here for good</source>
        <translation>هو هنا نهائيًا</translation>
    </message>
    <message>
        <source>It is a second station</source>
        <translation>هي محطة ثانية</translation>
    </message>
    <message>
        <source>Know first</source>
        <translation>اعلم أولًا</translation>
    </message>
    <message>
        <source>From now on this folder is written to; the copy it came from is used no more</source>
        <translation>من الآن يُكتب في هذا المجلد؛ والنسخة التي جاء منها لا تُستعمل بعد ذلك</translation>
    </message>
    <message>
        <source>Both folders are used; what is handed over here is brought together with the other later</source>
        <translation>يُستعمل المجلدان كلاهما؛ وما يُسلَّم هنا يُجمع مع الآخر لاحقًا</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>ضعها جانبًا</translation>
    </message>
    <message>
        <source>These notes do not come back while this camp is open</source>
        <translation>لا تعود هذه الملاحظات ما دام هذا المخيم مفتوحًا</translation>
    </message>
    <message numerus="yes">
        <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger&apos;s counts are used until the edits are accepted or discarded in Stock.</source>
        <translation>
            <numerusform>عُدِّلت أعداد stock.yaml يدويًا، عدد الأسطر: %n. تُعتمد أعداد السجل حتى تُقبل التعديلات أو تُرفض في المخزون.</numerusform>
            <numerusform>عُدِّلت أعداد stock.yaml يدويًا، عدد الأسطر: %n. تُعتمد أعداد السجل حتى تُقبل التعديلات أو تُرفض في المخزون.</numerusform>
            <numerusform>عُدِّلت أعداد stock.yaml يدويًا، عدد الأسطر: %n. تُعتمد أعداد السجل حتى تُقبل التعديلات أو تُرفض في المخزون.</numerusform>
            <numerusform>عُدِّلت أعداد stock.yaml يدويًا، عدد الأسطر: %n. تُعتمد أعداد السجل حتى تُقبل التعديلات أو تُرفض في المخزون.</numerusform>
            <numerusform>عُدِّلت أعداد stock.yaml يدويًا، عدد الأسطر: %n. تُعتمد أعداد السجل حتى تُقبل التعديلات أو تُرفض في المخزون.</numerusform>
            <numerusform>عُدِّلت أعداد stock.yaml يدويًا، عدد الأسطر: %n. تُعتمد أعداد السجل حتى تُقبل التعديلات أو تُرفض في المخزون.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::CardModel</name>
    <message>
        <source>held %1</source>
        <translation>محجوز %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>معزول %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>بواسطة %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>What</source>
        <translation>ماذا</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>التغيّر</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>الموجود</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>كلمات</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartModel</name>
    <message>
        <source>inside the limits</source>
        <translation>داخل الحدود</translation>
    </message>
    <message>
        <source>beyond the inner limit</source>
        <translation>خارج الحد الداخلي</translation>
    </message>
    <message>
        <source>beyond the outer limit</source>
        <translation>خارج الحد الخارجي</translation>
    </message>
    <message>
        <source>Group or run</source>
        <translation>المجموعة أو السلسلة</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>الأرقام</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>الحدود</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartView</name>
    <message>
        <source>Chart of the audit</source>
        <translation>مخطط التدقيق</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>الأرقام نفسها في الجدول بجانبه</translation>
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
    <name>quarterstep::CrossModel</name>
    <message>
        <source>right, need</source>
        <translation>اليمنى، الحاجة</translation>
    </message>
    <message>
        <source>left, need</source>
        <translation>اليسرى، الحاجة</translation>
    </message>
    <message>
        <source>right, pair</source>
        <translation>اليمنى، النظارة</translation>
    </message>
    <message>
        <source>left, pair</source>
        <translation>اليسرى، النظارة</translation>
    </message>
    <message>
        <source>right, left over</source>
        <translation>اليمنى، الباقي</translation>
    </message>
    <message>
        <source>left, left over</source>
        <translation>اليسرى، الباقي</translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <translation>‏%1 على خط الزوال %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>ماذا</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>القوة (D)</translation>
    </message>
    <message>
        <source>Higher (D)</source>
        <translation>الأعلى (D)</translation>
    </message>
    <message>
        <source>Lower (D)</source>
        <translation>الأدنى (D)</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossView</name>
    <message>
        <source>Optical crosses</source>
        <translation>الصلبان البصرية</translation>
    </message>
    <message>
        <source>A picture of need, pair and what is left; the same values stand in the table</source>
        <translation>صورة للحاجة والنظارة وما يبقى؛ والقيم نفسها في الجدول</translation>
    </message>
    <message>
        <source>Powers in dioptres on the meridians they act in, as the examiner sees the eyes</source>
        <translation>القوى بالديوبتر على خطوط الزوال التي تعمل فيها، كما يرى الفاحص العينين</translation>
    </message>
    <message>
        <source>need</source>
        <translation>الحاجة</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>النظارة</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>الباقي</translation>
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
        <source>Load people</source>
        <translation>تحميل أشخاص</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>جداول الوصفات (*.csv)</translation>
    </message>
    <message>
        <source>No camp is open</source>
        <translation>لا مخيم مفتوح</translation>
    </message>
    <message>
        <source>%1: Quarterstep</source>
        <translation>%1: Quarterstep</translation>
    </message>
    <message>
        <source>Dispense</source>
        <translation>الصرف</translation>
    </message>
    <message>
        <source>Who is served, and with what</source>
        <translation>من يُخدم وبماذا</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>المخزون</translation>
    </message>
    <message>
        <source>What lies in the box, and what happened to it</source>
        <translation>ما في الصندوق وما جرى له</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
            <numerusform>الموجود: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Choosing a camp</source>
        <translation>اختيار مخيم</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>التدقيق</translation>
    </message>
    <message>
        <source>Starting a camp</source>
        <translation>بدء مخيم</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>SAMPLE: invented people, nothing here counts</source>
        <translation>تجريبي: أشخاص مختلقون، ولا يُحتسب شيء هنا</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation>يفتح مخيمًا آخر أو المخيم التجريبي، أو يبدأ مخيمًا</translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>المخيمات…</translation>
    </message>
    <message>
        <source>Look, language, printer, camp, PINs</source>
        <translation>المظهر واللغة والطابعة والمخيم ورموز PIN</translation>
    </message>
    <message>
        <source>The manual, at the page for where you are</source>
        <translation>الدليل، عند صفحة المكان الذي أنت فيه</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>مساعدة</translation>
    </message>
    <message>
        <source>Which pairs went wrong, and what slip did it</source>
        <translation>أي النظارات جانبت الصواب، وأي هفوة سببت ذلك</translation>
    </message>
    <message>
        <source>Every key of the window</source>
        <translation>كل مفاتيح النافذة</translation>
    </message>
    <message>
        <source>Next look: light, dark, sun</source>
        <translation>المظهر التالي: فاتح، داكن، شمس</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>حروف أكبر</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>حروف أصغر</translation>
    </message>
    <message>
        <source>Usual letters</source>
        <translation>الحروف المعتادة</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>يُقرأ %1…</translation>
    </message>
    <message>
        <source>%1 was not opened; what was found stands below.</source>
        <translation>لم يُفتح %1؛ ما وُجد مذكور أدناه.</translation>
    </message>
    <message>
        <source>The card that was not handed over when the window went is back. Ctrl+N empties it.</source>
        <translation>عادت البطاقة التي لم تُسلَّم حين أُغلقت النافذة. Ctrl+N يفرغها.</translation>
    </message>
    <message>
        <source>SAMPLE: %1: Quarterstep</source>
        <translation>تجريبي: %1: ‏Quarterstep</translation>
    </message>
    <message>
        <source>Brings prescriptions in from files, instruments or the clipboard, and sends them out</source>
        <translation>يستورد الوصفات من ملفات أو أجهزة أو من الحافظة، ويرسلها إلى الخارج</translation>
    </message>
    <message>
        <source>Bring in…</source>
        <translation>استيراد…</translation>
    </message>
    <message>
        <source>Bringing in and sending out</source>
        <translation>الاستيراد والإرسال</translation>
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
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>ليس في هذا المجلد people.csv. اكتب وصفة أدناه أو حمّل جدولًا.</translation>
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
        <source>Taken back from %1: %2.</source>
        <translation>استُرجع من %1: %2.</translation>
    </message>
    <message>
        <source>Who is served: people of the table, or custom orders</source>
        <translation>من يُخدم: أشخاص الجدول، أو الطلبات الخاصة</translation>
    </message>
    <message>
        <source>People</source>
        <translation>الأشخاص</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>قائمة الانتظار</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>الطلبات</translation>
    </message>
    <message>
        <source>The whole prescription, or the short way for plain readers</source>
        <translation>الوصفة كاملة، أو الطريق القصير لنظارات القراءة البسيطة</translation>
    </message>
    <message>
        <source>Plain reader</source>
        <translation>نظارة قراءة بسيطة</translation>
    </message>
    <message>
        <source>%1 stands in the line.</source>
        <translation>‏%1 في قائمة الانتظار.</translation>
    </message>
    <message>
        <source>%1 is entered as referred.</source>
        <translation>قُيّد %1 على أنه أُحيل.</translation>
    </message>
    <message>
        <source>A custom order for %1 is entered; it stands under Orders.</source>
        <translation>قُيّد طلب خاص لأجل %1؛ وهو في «الطلبات».</translation>
    </message>
    <message>
        <source>This stands in the ledger already: %1, %2.</source>
        <translation>هذا موجود في السجل من قبل: %1، %2.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>‏%1: %2.</translation>
    </message>
    <message>
        <source>The laboratory file of %1 is %2.</source>
        <translation>ملف المختبر للطلب %1 هو %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::ExchangePage</name>
    <message>
        <source>What comes in, or what goes out</source>
        <translation>ما يدخل، أو ما يخرج</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>استيراد</translation>
    </message>
    <message>
        <source>Send out</source>
        <translation>إرسال</translation>
    </message>
    <message>
        <source>Reading what was brought in before…</source>
        <translation>يُقرأ ما استُورد من قبل…</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingListModel</name>
    <message>
        <source>note</source>
        <translation>تنبيه</translation>
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
        <source>Kind</source>
        <translation>النوع</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>الموضع</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>الملاحظة</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>الرمز</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingsModel</name>
    <message>
        <source>a slip is likely</source>
        <translation>يُرجَّح وقوع هفوة</translation>
    </message>
    <message>
        <source>When</source>
        <translation>متى</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>الشخص</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>الغرض</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>النظارة المسلَّمة</translation>
    </message>
    <message>
        <source>What</source>
        <translation>ماذا</translation>
    </message>
    <message>
        <source>In detail</source>
        <translation>بالتفصيل</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>الهفوة الأرجح</translation>
    </message>
</context>
<context>
    <name>quarterstep::FocimeterRow</name>
    <message>
        <source>Read, R</source>
        <translation>المقروء، اليمنى</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it</source>
        <translation>العدسة اليمنى كما يقرؤها مقياس العدسات</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it</source>
        <translation>العدسة اليسرى كما يقرؤها مقياس العدسات</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>العدسة اليمنى كما يقرؤها مقياس العدسات، ديوبتر: ⁦-1.25 -0.50 x 90⁩</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>العدسة اليسرى كما يقرؤها مقياس العدسات، ديوبتر: ⁦-1.25 -0.50 x 90⁩</translation>
    </message>
    <message>
        <source>right lens: %1</source>
        <translation>العدسة اليمنى: %1</translation>
    </message>
    <message>
        <source>left lens: %1</source>
        <translation>العدسة اليسرى: %1</translation>
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
    <message>
        <source>Hand over, print</source>
        <translation>تسليم وطباعة</translation>
    </message>
    <message>
        <source>Hands over and prints the note (Ctrl+Shift+Return)</source>
        <translation>يسلّم ويطبع الورقة (Ctrl+Shift+Return)</translation>
    </message>
    <message>
        <source>Takes back what was entered last for this person today (Ctrl+Z)</source>
        <translation>يسترجع آخر ما قُيّد لهذا الشخص اليوم (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>ورقة</translation>
    </message>
    <message>
        <source>Prints what this person takes home (Ctrl+P)</source>
        <translation>يطبع ما يأخذه هذا الشخص إلى بيته (Ctrl+P)</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>رسالة</translation>
    </message>
    <message>
        <source>Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)</source>
        <translation>يقيّد الإحالة ويطبع الرسالة إلى العيادة (Ctrl+Shift+L)</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>طلب</translation>
    </message>
    <message>
        <source>Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)</source>
        <translation>يقيّد طلبًا خاصًا ويطبعه للمختبر (Ctrl+Shift+O)</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>بلا نظارة</translation>
    </message>
    <message>
        <source>Enters that this person goes without a pair, and why (Ctrl+Shift+W)</source>
        <translation>يقيّد أن هذا الشخص يذهب بلا نظارة، ولماذا (Ctrl+Shift+W)</translation>
    </message>
    <message>
        <source>Power by focimeter</source>
        <translation>القوة بمقياس العدسات</translation>
    </message>
    <message>
        <source>Each eye by focimeter</source>
        <translation>كل عين بمقياس العدسات</translation>
    </message>
    <message>
        <source>To what is still missing</source>
        <translation>إلى ما لا يزال ناقصًا</translation>
    </message>
    <message>
        <source>Puts the cursor where something is missing for a hand-over</source>
        <translation>يضع المؤشر حيث ينقص شيء لازم للتسليم</translation>
    </message>
</context>
<context>
    <name>quarterstep::HelpWindow</name>
    <message>
        <source>Help: Quarterstep</source>
        <translation>مساعدة: Quarterstep</translation>
    </message>
    <message>
        <source>Pages of the manual</source>
        <translation>صفحات الدليل</translation>
    </message>
    <message>
        <source>Chooses a page of the manual</source>
        <translation>يختار صفحة من الدليل</translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>نص الصفحة</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation>الدليل؛ الروابط تقود إلى صفحات أخرى</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>إغلاق</translation>
    </message>
</context>
<context>
    <name>quarterstep::KeySheet</name>
    <message>
        <source>Keys: Quarterstep</source>
        <translation>المفاتيح: Quarterstep</translation>
    </message>
    <message>
        <source>All keys of the window</source>
        <translation>كل مفاتيح النافذة</translation>
    </message>
    <message>
        <source>All keys of the window; Escape closes it</source>
        <translation>كل مفاتيح النافذة؛ Escape يغلقها</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>إغلاق</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>في كل مكان</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from field to field; Space presses the button that is framed.</source>
        <translation>المفتاحان Tab وShift+Tab للتنقل بين الحقول؛ وSpace يضغط الزر المؤطَّر.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LadderView</name>
    <message>
        <source>Stock ladder</source>
        <translation>سلّم المخزون</translation>
    </message>
    <message>
        <source>A picture of how many pieces of each power there are; the same numbers stand in the table of lines</source>
        <translation>صورة لعدد القطع من كل قوة؛ والأعداد نفسها في جدول الأصناف</translation>
    </message>
    <message>
        <source>power (D)</source>
        <translation>القوة (D)</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>القطع</translation>
    </message>
    <message>
        <source>%1: available %2, kept aside %3, keep at least %4</source>
        <translation>‏%1: المتاح %2، المحفوظ جانبًا %3، الحد الأدنى %4</translation>
    </message>
</context>
<context>
    <name>quarterstep::LineModel</name>
    <message>
        <source>none: waits</source>
        <translation>لا شيء: ينتظر</translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation>ليس في قائمة الانتظار</translation>
    </message>
    <message>
        <source>none left: look before saying it again</source>
        <translation>نفد: انظر قبل أن تقولها ثانية</translation>
    </message>
    <message>
        <source>with caution</source>
        <translation>مع تحفظ</translation>
    </message>
    <message>
        <source>by hand: %1</source>
        <translation>يدويًا: %1</translation>
    </message>
    <message>
        <source>promised; %1</source>
        <translation>موعود به؛ %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>الشخص</translation>
    </message>
    <message>
        <source>For</source>
        <translation>لمن</translation>
    </message>
    <message>
        <source>Gets</source>
        <translation>يأخذ</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>السبب</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinePanel</name>
    <message>
        <source>Waiting line</source>
        <translation>قائمة الانتظار</translation>
    </message>
    <message>
        <source>Who gets which pair and why. Drop a pair on a person to pick it by hand</source>
        <translation>من يأخذ أي نظارة ولماذا. أفلت نظارة على شخص لاختيارها يدويًا</translation>
    </message>
    <message>
        <source>Reason for a pair picked by hand</source>
        <translation>سبب اختيار النظارة يدويًا</translation>
    </message>
    <message>
        <source>Reason, for a pair by hand</source>
        <translation>السبب، لنظارة مختارة يدويًا</translation>
    </message>
    <message>
        <source>Why this person gets another pair than planned; kept with the promise</source>
        <translation>لماذا يأخذ هذا الشخص نظارة غير المخطط لها؛ يُحفظ مع الوعد</translation>
    </message>
    <message>
        <source>All arrive</source>
        <translation>الجميع حضروا</translation>
    </message>
    <message>
        <source>Everybody of the table who has nothing yet</source>
        <translation>كل من في الجدول ممن لم يأخذ شيئًا بعد</translation>
    </message>
    <message>
        <source>Card arrives</source>
        <translation>حضر صاحب البطاقة</translation>
    </message>
    <message>
        <source>The person on the card (Ctrl+J)</source>
        <translation>الشخص الذي في البطاقة (Ctrl+J)</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>إعادة التخطيط</translation>
    </message>
    <message>
        <source>Plans anew, or stops planning</source>
        <translation>يخطط من جديد، أو يوقف التخطيط</translation>
    </message>
    <message>
        <source>Promise</source>
        <translation>وعد</translation>
    </message>
    <message>
        <source>The person was told: no plan takes it back</source>
        <translation>أُبلغ الشخص: لا تسترجعها أي خطة</translation>
    </message>
    <message>
        <source>Give chosen pair</source>
        <translation>إعطاء النظارة المختارة</translation>
    </message>
    <message>
        <source>The pair chosen in the list, by hand and with a reason (Ctrl+G)</source>
        <translation>النظارة المختارة في القائمة، يدويًا ومع سبب (Ctrl+G)</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>انصرف</translation>
    </message>
    <message>
        <source>The person left the line</source>
        <translation>غادر الشخص قائمة الانتظار</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>يجري التخطيط …</translation>
    </message>
    <message>
        <source>Nobody waits yet. Let the people of the table stand in line, or the one on the card.</source>
        <translation>لا أحد ينتظر بعد. أدخل أشخاص الجدول في قائمة الانتظار، أو صاحب البطاقة.</translation>
    </message>
    <message>
        <source>%1 of %2 get a pair; first come, first served would be %3. %4</source>
        <translation>يأخذ نظارة %1 من %2؛ وبأسبقية الحضور يكون العدد %3. %4</translation>
    </message>
    <message>
        <source>No plan serves more.</source>
        <translation>لا خطة تخدم أكثر.</translation>
    </message>
    <message>
        <source>Good, not proved best.</source>
        <translation>جيدة، ولم يثبت أنها الأفضل.</translation>
    </message>
    <message>
        <source>Unpromise</source>
        <translation>سحب الوعد</translation>
    </message>
    <message>
        <source>Why this pair for %1? Type the reason and press Enter.</source>
        <translation>لماذا هذه النظارة لأجل %1؟ اكتب السبب واضغط Enter.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinesModel</name>
    <message>
        <source>none left</source>
        <translation>نفد</translation>
    </message>
    <message>
        <source>below least</source>
        <translation>دون الحد الأدنى</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>كافٍ</translation>
    </message>
    <message>
        <source>above most</source>
        <translation>فوق الحد الأعلى</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>محجوز %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>معزول %1</translation>
    </message>
    <message>
        <source>keep at least %1, at most %2</source>
        <translation>الحد الأدنى %1، الأعلى %2</translation>
    </message>
    <message numerus="yes">
        <source>reorder %n</source>
        <translation>
            <numerusform>يُطلب من جديد: %n</numerusform>
            <numerusform>يُطلب من جديد: %n</numerusform>
            <numerusform>يُطلب من جديد: %n</numerusform>
            <numerusform>يُطلب من جديد: %n</numerusform>
            <numerusform>يُطلب من جديد: %n</numerusform>
            <numerusform>يُطلب من جديد: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>lasts %1 camp days as used so far</source>
        <translation>يكفي %1 من أيام المخيم بحسب الاستعمال حتى الآن</translation>
    </message>
    <message>
        <source>How many camps of 100 people the available pieces last, as used so far</source>
        <translation>كم مخيمًا من 100 شخص تكفي القطع المتاحة، بحسب الاستعمال حتى الآن</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>الخانة</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>الصنف</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>القوة</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>الموجود</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>المتاح</translation>
    </message>
    <message>
        <source>Kept aside</source>
        <translation>محفوظ جانبًا</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>المستوى</translation>
    </message>
    <message>
        <source>Camps</source>
        <translation>مخيمات</translation>
    </message>
</context>
<context>
    <name>quarterstep::LongWork</name>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>مقدار التقدم</translation>
    </message>
    <message>
        <source>Ends this work; nothing is changed by it</source>
        <translation>ينهي هذا العمل؛ ولا يتغير به شيء</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>يجري الإيقاف…</translation>
    </message>
    <message>
        <source>After this: %1</source>
        <translation>بعد ذلك: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::MappedColumnsModel</name>
    <message>
        <source>What this column holds; Enter or a click changes it</source>
        <translation>ما يحويه هذا العمود؛ Enter أو نقرة تغيّره</translation>
    </message>
    <message>
        <source>Heading</source>
        <translation>العنوان</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>مثال</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>يُؤخذ على أنه</translation>
    </message>
</context>
<context>
    <name>quarterstep::MeaningDelegate</name>
    <message>
        <source>What the column holds</source>
        <translation>ما يحويه العمود</translation>
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
    <message>
        <source>Waiting</source>
        <translation>الانتظار</translation>
    </message>
</context>
<context>
    <name>quarterstep::OpeningPage</name>
    <message>
        <source>Which camp?</source>
        <translation>أي مخيم؟</translation>
    </message>
    <message>
        <source>A camp is a folder: stock.yaml says what exists and how many; the ledger of what was handed over is kept beside it.</source>
        <translation>المخيم مجلد: يذكر stock.yaml الموجود وعدده؛ ويُحفظ بجانبه سجل ما تم تسليمه.</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation>جولة</translation>
    </message>
    <message>
        <source>A sample camp of invented people. What you do there stays in a copy of your own.</source>
        <translation>مخيم تجريبي بأشخاص مختلقين. ما تفعله فيه يبقى في نسخة خاصة بك.</translation>
    </message>
    <message>
        <source>Practise a hand-over, 3 minutes</source>
        <translation>تدرّب على تسليم، 3 دقائق</translation>
    </message>
    <message>
        <source>Opens the sample and tells each step beside the work</source>
        <translation>يفتح المخيم التجريبي ويشرح كل خطوة بجانب العمل</translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>افتح المخيم التجريبي</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation>يفتح نسختك من المخيم التجريبي كما تركتها</translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>ابدأ المخيم التجريبي من جديد</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation>يحذف ما جرى في نسختك من المخيم التجريبي</translation>
    </message>
    <message>
        <source>Start my own camp</source>
        <translation>ابدأ مخيمي</translation>
    </message>
    <message>
        <source>Describe the trays of your box in a few lines; the desk writes the stock file.</source>
        <translation>صِف صواني صندوقك في أسطر قليلة؛ والمكتب يكتب ملف المخزون.</translation>
    </message>
    <message>
        <source>Describe my trays…</source>
        <translation>وصف الصواني…</translation>
    </message>
    <message>
        <source>A page where you type the trays and see the lines they make</source>
        <translation>صفحة تكتب فيها الصواني وترى الأصناف التي تنتج عنها</translation>
    </message>
    <message>
        <source>Open a camp</source>
        <translation>افتح مخيمًا</translation>
    </message>
    <message>
        <source>A folder with a stock.yaml, on this laptop or on a stick.</source>
        <translation>مجلد فيه stock.yaml، على هذا الحاسوب أو على ذاكرة USB.</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>اختر مجلدًا…</translation>
    </message>
    <message>
        <source>Chooses the folder with stock.yaml</source>
        <translation>يختار المجلد الذي فيه stock.yaml</translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>عودة إلى المخيم المفتوح</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation>يترك كل شيء كما هو</translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>ما وُجد، مع الملف والسطر والعمود</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation>الملف والسطر والعمود لكل ما وُجد؛ يمكن نسخه</translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>ابدأ مخيمًا في هذا المجلد…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation>صِف الصواني؛ يُكتب ملف المخزون في هذا المجلد</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>لم يُفتح %1</translation>
    </message>
    <message>
        <source>This folder has no stock.yaml. Choose the folder that has one, or start a camp here.</source>
        <translation>لا يوجد stock.yaml في هذا المجلد. اختر المجلد الذي هو فيه، أو ابدأ مخيمًا هنا.</translation>
    </message>
    <message>
        <source>Mend the file at the line and column named, with any text editor, and open the folder again. Nothing was written.</source>
        <translation>أصلح الملف عند السطر والعمود المذكورين بأي محرر نصوص، وافتح المجلد ثانية. لم يُكتب شيء.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>فتح %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersModel</name>
    <message numerus="yes">
        <source>remade %n time(s)</source>
        <translation>
            <numerusform>عدد مرات إعادة الصنع: %n</numerusform>
            <numerusform>عدد مرات إعادة الصنع: %n</numerusform>
            <numerusform>عدد مرات إعادة الصنع: %n</numerusform>
            <numerusform>عدد مرات إعادة الصنع: %n</numerusform>
            <numerusform>عدد مرات إعادة الصنع: %n</numerusform>
            <numerusform>عدد مرات إعادة الصنع: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>طُلب %1</translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation>الإطار المحجوز: %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>الشخص</translation>
    </message>
    <message>
        <source>State</source>
        <translation>الحالة</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>منذ</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>طُلب</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersPanel</name>
    <message>
        <source>Find an order by the code of the person</source>
        <translation>ابحث عن طلب برمز الشخص</translation>
    </message>
    <message>
        <source>Part of a camp code; empty shows the open orders</source>
        <translation>جزء من رمز المخيم؛ الحقل الفارغ يعرض الطلبات المفتوحة</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>الرمز</translation>
    </message>
    <message>
        <source>Custom orders</source>
        <translation>الطلبات الخاصة</translation>
    </message>
    <message>
        <source>Custom orders, newest change first</source>
        <translation>الطلبات الخاصة، الأحدث تغيّرًا أولًا</translation>
    </message>
    <message>
        <source>Reason or note for this step</source>
        <translation>سبب أو ملاحظة لهذه الخطوة</translation>
    </message>
    <message>
        <source>Kept with the step; making again needs a reason</source>
        <translation>يُحفظ مع الخطوة؛ إعادة الصنع تحتاج إلى سبب</translation>
    </message>
    <message>
        <source>Reason or note</source>
        <translation>سبب أو ملاحظة</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>وصل</translation>
    </message>
    <message>
        <source>It came from the laboratory</source>
        <translation>جاء من المختبر</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>فُحص</translation>
    </message>
    <message>
        <source>Power, axis and centres were read and agree with the order</source>
        <translation>قُرئت القوة والمحور والمراكز وهي توافق الطلب</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>استُلم</translation>
    </message>
    <message>
        <source>The person has it and was checked with it on</source>
        <translation>استلمه الشخص وفُحص وهو يلبسه</translation>
    </message>
    <message>
        <source>Make again</source>
        <translation>إعادة الصنع</translation>
    </message>
    <message>
        <source>Back to the laboratory; a reason is needed</source>
        <translation>يعود إلى المختبر؛ يلزم سبب</translation>
    </message>
    <message>
        <source>Not collected</source>
        <translation>لم يُستلم</translation>
    </message>
    <message>
        <source>The person did not come for it</source>
        <translation>لم يأتِ الشخص لأخذه</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>‏%1: %2.</translation>
    </message>
    <message>
        <source>Laboratory file</source>
        <translation>ملف المختبر</translation>
    </message>
    <message>
        <source>Writes the order as a file for the laboratory into the folder papers</source>
        <translation>يكتب الطلب ملفًا للمختبر في المجلد papers</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingDraws</name>
    <message>
        <source>Assumptions, published mix, number of draws and lot (Ctrl+D)</source>
        <translation>الافتراضات والمزيج المنشور وعدد السحوبات والدفعة (Ctrl+D)</translation>
    </message>
    <message>
        <source>How the draws are made</source>
        <translation>كيف تُجرى السحوبات</translation>
    </message>
    <message>
        <source>PD as the pair&apos;s centres</source>
        <translation>PD كمركزي الزوج</translation>
    </message>
    <message>
        <source>Where no PD was taken, it equals the centres of each pair</source>
        <translation>حيث لم تُقس PD فهي تساوي مركزي كل زوج</translation>
    </message>
    <message>
        <source>readings are final</source>
        <translation>القراءات نهائية</translation>
    </message>
    <message>
        <source>Objective readings are final, and a prescriber is named</source>
        <translation>القراءات الموضوعية نهائية، ومن وصف مذكور</translation>
    </message>
    <message>
        <source>vertex as the stock</source>
        <translation>المسافة القمية كالمخزون</translation>
    </message>
    <message>
        <source>An unrecorded vertex distance is that of the stock</source>
        <translation>المسافة القمية غير المدوَّنة هي مسافة المخزون</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>مُفترض</translation>
    </message>
    <message>
        <source>Published mix</source>
        <translation>المزيج المنشور</translation>
    </message>
    <message>
        <source>Mixes with the published mix of a camp, weighing as so many people; 0: not at all. By itself 30 where fewer than 100 people were seen</source>
        <translation>يمزج مع المزيج المنشور لمخيم، بوزن هذا العدد من الناس؛ 0: لا شيء. تلقائيًا 30 حيث رُئي أقل من 100 شخص</translation>
    </message>
    <message>
        <source>by who was seen</source>
        <translation>بحسب من رُئي</translation>
    </message>
    <message>
        <source> people</source>
        <translation> أشخاص</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>السحوبات</translation>
    </message>
    <message>
        <source>Camps that are drawn and planned for, and as many again to check</source>
        <translation>مخيمات تُسحب ويُخطَّط لها، ومثلها للتحقق</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>الدفعة</translation>
    </message>
    <message>
        <source>The same lot draws the same people again</source>
        <translation>الدفعة نفسها تسحب الأشخاص أنفسهم من جديد</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>مطوي</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>مفتوح</translation>
    </message>
    <message>
        <source>draws: %1</source>
        <translation>السحوبات: %1</translation>
    </message>
    <message>
        <source>lot: %1</source>
        <translation>الدفعة: %1</translation>
    </message>
    <message>
        <source>published mix: %1</source>
        <translation>المزيج المنشور: %1</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>مُفترض: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingPanel</name>
    <message>
        <source>Boxes for the next camp</source>
        <translation>صناديق المخيم القادم</translation>
    </message>
    <message>
        <source>Plan the boxes</source>
        <translation>تخطيط الصناديق</translation>
    </message>
    <message>
        <source>Plans what to buy; nothing is entered (F5)</source>
        <translation>يخطط ما يُشترى؛ لا يُقيَّد شيء (F5)</translation>
    </message>
    <message>
        <source>Persons served against money</source>
        <translation>الأشخاص المخدومون مقابل المال</translation>
    </message>
    <message>
        <source>Line: served on the draws planned for · triangle: the knee · diamond: this plan · dotted: no order passes it · upright: the budget.</source>
        <translation>الخط: المخدومون في السحوبات المخطط لها · المثلث: نقطة الانعطاف · المعيّن: هذه الخطة · المنقّط: لا طلب يتجاوزه · العمودي: الميزانية.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>اختيار…</translation>
    </message>
    <message>
        <source>The list of what a supplier sells (supplier.yaml)</source>
        <translation>قائمة ما يبيعه المورّد (supplier.yaml)</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>المورّد</translation>
    </message>
    <message>
        <source>Whom to plan for</source>
        <translation>لمن يُخطط</translation>
    </message>
    <message>
        <source>People as they were seen: of the ledger, or of a table of prescriptions</source>
        <translation>الأشخاص كما فُحصوا: من السجل، أو من جدول وصفات</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>الاحتياج</translation>
    </message>
    <message>
        <source>People who come next</source>
        <translation>الأشخاص القادمون</translation>
    </message>
    <message>
        <source>How many people come to the next camp</source>
        <translation>كم شخصًا يأتي إلى المخيم القادم</translation>
    </message>
    <message>
        <source> people</source>
        <translation> شخص</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>الميزانية</translation>
    </message>
    <message>
        <source>Money that may be spent, in the currency of the supplier&apos;s list</source>
        <translation>المال الذي يجوز إنفاقه، بعملة قائمة المورّد</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>الوزن</translation>
    </message>
    <message>
        <source>Kilograms of what is bought; 0: not limited</source>
        <translation>كيلوغرامات ما يُشترى؛ 0: بلا حد</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source>any weight</source>
        <translation>أي وزن</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>الصناديق</translation>
    </message>
    <message>
        <source>Boxes that are carried, what is on hand included; 0: as many as it takes</source>
        <translation>الصناديق التي تُحمل، ومنها الموجود؛ 0: بقدر ما يلزم</translation>
    </message>
    <message>
        <source>any number</source>
        <translation>أي عدد</translation>
    </message>
    <message>
        <source>Pieces in a box</source>
        <translation>القطع في الصندوق</translation>
    </message>
    <message>
        <source>How many pieces a box holds</source>
        <translation>كم قطعة يتسع لها الصندوق</translation>
    </message>
    <message>
        <source> in each</source>
        <translation> في كل صندوق</translation>
    </message>
    <message>
        <source>What the plan comes to</source>
        <translation>حصيلة الخطة</translation>
    </message>
    <message>
        <source>Served, spent, and how sure that is; the text can be copied</source>
        <translation>المخدومون والمنفَق ومدى الثقة بذلك؛ يمكن نسخ النص</translation>
    </message>
    <message>
        <source>What is shown of the plan</source>
        <translation>ما يُعرض من الخطة</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>الطلب</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>قائمة التعبئة</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>فُحص</translation>
    </message>
    <message>
        <source>Without a pair</source>
        <translation>بلا نظارة</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>ما ينفد</translation>
    </message>
    <message>
        <source>Not bought</source>
        <translation>لم يُشترَ</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>المنحنى</translation>
    </message>
    <message>
        <source>The plan for the boxes</source>
        <translation>خطة الصناديق</translation>
    </message>
    <message>
        <source>The plan, row by row</source>
        <translation>الخطة، صفًا صفًا</translation>
    </message>
    <message>
        <source>Print packing list</source>
        <translation>طباعة قائمة التعبئة</translation>
    </message>
    <message>
        <source>The packing list as a paper (Ctrl+P)</source>
        <translation>قائمة التعبئة على ورق (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save packing list…</source>
        <translation>حفظ قائمة التعبئة…</translation>
    </message>
    <message>
        <source>Box by box, as a table (Ctrl+S)</source>
        <translation>صندوقًا صندوقًا، في جدول (Ctrl+S)</translation>
    </message>
    <message>
        <source>Save order…</source>
        <translation>حفظ الطلب…</translation>
    </message>
    <message>
        <source>What to order, as a table (Ctrl+Shift+S)</source>
        <translation>ما يُطلب، في جدول (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>جداول (*.csv)</translation>
    </message>
    <message>
        <source>The order is %1.</source>
        <translation>الطلب هو %1.</translation>
    </message>
    <message>
        <source>The packing list is %1.</source>
        <translation>قائمة التعبئة هي %1.</translation>
    </message>
    <message>
        <source>The ledger of this camp</source>
        <translation>سجل هذا المخيم</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>جدول آخر…</translation>
    </message>
    <message>
        <source>List of a supplier</source>
        <translation>قائمة مورّد</translation>
    </message>
    <message>
        <source>Suppliers&apos; lists (*.yaml)</source>
        <translation>قوائم المورّدين (*.yaml)</translation>
    </message>
    <message>
        <source>Table of people</source>
        <translation>جدول أشخاص</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>جداول الوصفات (*.csv)</translation>
    </message>
    <message>
        <source>Choose what can be bought: the list of a supplier.</source>
        <translation>اختر ما يمكن شراؤه: قائمة مورّد.</translation>
    </message>
    <message>
        <source>Planning the boxes…</source>
        <translation>تُخطط الصناديق…</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>لم يُختر شيء</translation>
    </message>
    <message>
        <source>Planning … “Stop” at the top ends it.</source>
        <translation>يجري التخطيط … زر «إيقاف» في الأعلى ينهيه.</translation>
    </message>
    <message>
        <source>Nothing is planned yet.</source>
        <translation>لم يُخطط شيء بعد.</translation>
    </message>
    <message>
        <source>The plan beside is of other figures; plan again (F5).</source>
        <translation>الخطة بجانبه لأرقام أخرى؛ خطط من جديد (F5).</translation>
    </message>
    <message>
        <source>For this money the curve says %1; plan again for the order (F5).</source>
        <translation>لهذا المال يقول المنحنى %1؛ خطط من جديد للحصول على الطلب (F5).</translation>
    </message>
    <message>
        <source>On people who were not planned for: %1</source>
        <translation>على أشخاص لم يُخطط لهم: %1</translation>
    </message>
    <message>
        <source>Not checked: too few people to plan on one half and check on the other.</source>
        <translation>لم يُتحقق: عدد الأشخاص أقل من أن يُخطط على نصف ويُتحقق على الآخر.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of the table could not be read and were left out.</source>
        <translation>
            <numerusform>صفوف من الجدول لم يمكن قراءتها فتُركت: %n.</numerusform>
            <numerusform>صفوف من الجدول لم يمكن قراءتها فتُركت: %n.</numerusform>
            <numerusform>صفوف من الجدول لم يمكن قراءتها فتُركت: %n.</numerusform>
            <numerusform>صفوف من الجدول لم يمكن قراءتها فتُركت: %n.</numerusform>
            <numerusform>صفوف من الجدول لم يمكن قراءتها فتُركت: %n.</numerusform>
            <numerusform>صفوف من الجدول لم يمكن قراءتها فتُركت: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to buy for the next camp so that most people are served: choose supplier, demand and money, then plan (F5). Nothing is entered.</source>
        <translation>ما يُشترى للمخيم القادم ليُخدم أكبر عدد: اختر المورّد والاحتياج والمال ثم خطط (F5). لا يُقيَّد شيء.</translation>
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
    <message>
        <source>R and L %1 · prism %2</source>
        <translation>‏R وL ‏%1 · المنشور %2</translation>
    </message>
    <message>
        <source>R %1 · L %2 · prism %3</source>
        <translation>‏R %1 · L %2 · المنشور %3</translation>
    </message>
    <message>
        <source> · chance %1</source>
        <translation> · الاحتمال %1</translation>
    </message>
    <message>
        <source>Chance within</source>
        <translation>احتمال الوقوع ضمن الحدود</translation>
    </message>
</context>
<context>
    <name>quarterstep::PaperWorker</name>
    <message>
        <source>%1: sent to %2.</source>
        <translation>‏%1: أُرسل إلى %2.</translation>
    </message>
    <message>
        <source>%1: written to %2.</source>
        <translation>‏%1: كُتب في %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PinGuard</name>
    <message>
        <source>This needs the PIN of the optician.</source>
        <translation>يلزم لهذا رمز PIN لفني البصريات.</translation>
    </message>
    <message>
        <source>This needs the PIN of the keeper.</source>
        <translation>يلزم لهذا رمز PIN لأمين المخزن.</translation>
    </message>
    <message>
        <source>This needs the PIN of the supervisor.</source>
        <translation>يلزم لهذا رمز PIN للمشرف.</translation>
    </message>
    <message>
        <source>A PIN is asked for</source>
        <translation>يُطلب رمز PIN</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>رمز PIN</translation>
    </message>
    <message>
        <source>It is good until this place is left, or ten minutes after the last use</source>
        <translation>يبقى صالحًا حتى مغادرة هذا الموضع، أو عشر دقائق بعد آخر استعمال</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>متابعة</translation>
    </message>
    <message>
        <source>Does what was asked for (Enter)</source>
        <translation>ينفّذ ما طُلب (Enter)</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>لا تنفّذ</translation>
    </message>
    <message>
        <source>Nothing is written (Escape)</source>
        <translation>لا يُكتب شيء (Escape)</translation>
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
    <name>quarterstep::PlanePanel</name>
    <message>
        <source>Table</source>
        <translation>جدول</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation>مستوى القوى</translation>
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
        <source>R, L: the person&apos;s eyes · disc: pairs · diamond: lenses · cross: none left · dot: ranks · open ring: chosen pair. The larger, the more there are.</source>
        <translation>‏R وL: عينا الشخص · قرص: نظارات · معيّن: عدسات · علامة ×: لم يبق شيء · نقطة: الرتب · حلقة مفتوحة: النظارة المختارة. كلما كبرت العلامة زاد العدد.</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>صورة</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlotView</name>
    <message>
        <source>Power plane</source>
        <translation>مستوى القوى</translation>
    </message>
    <message>
        <source>A picture of the stock around this person&apos;s eyes; the same values stand in the table</source>
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
    <name>quarterstep::PowerFields</name>
    <message>
        <source>Right eye, sphere</source>
        <translation>العين اليمنى، الكرة</translation>
    </message>
    <message>
        <source>Left eye, sphere</source>
        <translation>العين اليسرى، الكرة</translation>
    </message>
    <message>
        <source>Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>الكرة بالديوبتر مع إشارتها. السهمان يغيّران بمقدار 0.25، ومفتاحا الصفحة بمقدار 1.00</translation>
    </message>
    <message>
        <source>Right eye, cylinder</source>
        <translation>العين اليمنى، الأسطوانة</translation>
    </message>
    <message>
        <source>Left eye, cylinder</source>
        <translation>العين اليسرى، الأسطوانة</translation>
    </message>
    <message>
        <source>Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>الأسطوانة بالديوبتر مع إشارتها. السهمان يغيّران بمقدار 0.25، ومفتاحا الصفحة بمقدار 1.00</translation>
    </message>
    <message>
        <source>Right eye, axis</source>
        <translation>العين اليمنى، المحور</translation>
    </message>
    <message>
        <source>Left eye, axis</source>
        <translation>العين اليسرى، المحور</translation>
    </message>
    <message>
        <source>Axis in degrees. Up and Down step 1, with Shift 5</source>
        <translation>المحور بالدرجات. السهمان يغيّران بمقدار 1، ومع Shift بمقدار 5</translation>
    </message>
</context>
<context>
    <name>quarterstep::PracticeStrip</name>
    <message>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>إنهاء التدريب</translation>
    </message>
    <message>
        <source>Goes on without this step</source>
        <translation>يتابع دون هذه الخطوة</translation>
    </message>
    <message>
        <source>Ends the practice; the sample stays open</source>
        <translation>ينهي التدريب؛ ويبقى المخيم التجريبي مفتوحًا</translation>
    </message>
    <message>
        <source>Somebody sits down. Press Ctrl+N for an empty card, and type the code %1 under Person.</source>
        <translation>جلس شخص أمامك. اضغط Ctrl+N لبطاقة فارغة، واكتب الرمز %1 في «الشخص».</translation>
    </message>
    <message>
        <source>Tab to Age: type 30.</source>
        <translation>انتقل بـ Tab إلى «العمر»: اكتب 30.</translation>
    </message>
    <message>
        <source>Right eye: type %1. Tab to the left eye and type the same.</source>
        <translation>العين اليمنى: اكتب %1. انتقل بـ Tab إلى العين اليسرى واكتب القيمة نفسها.</translation>
    </message>
    <message>
        <source>PD far: type 62. Enter asks for pairs.</source>
        <translation>حقل PD للبعد: اكتب 62. Enter يطلب النظارات.</translation>
    </message>
    <message>
        <source>The best pair stands first, with its bin. You would fetch it, and one neighbour. Tick the four checks once the pair is on the face.</source>
        <translation>النظارة الأفضل أولًا، مع خانتها. في العمل تُحضرها مع واحدة مجاورة. علّم الفحوص الأربعة متى صارت النظارة على الوجه.</translation>
    </message>
    <message>
        <source>Ctrl+Enter hands it over: the count goes down.</source>
        <translation>المفتاح Ctrl+Enter يسلّمها: ينقص العدد.</translation>
    </message>
    <message>
        <source>A mistake? Ctrl+Z takes the hand-over back the same day. Try it.</source>
        <translation>أخطأت؟ Ctrl+Z يسترجع التسليم في اليوم نفسه. جرّبه.</translation>
    </message>
    <message>
        <source>That was all. F1 opens the manual, Shift+F1 shows every key.</source>
        <translation>هذا كل شيء. F1 يفتح الدليل، وShift+F1 يعرض كل المفاتيح.</translation>
    </message>
    <message>
        <source>Practice, step %1 of %2</source>
        <translation>التدريب، الخطوة %1 من %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>تم</translation>
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
    <message>
        <source>Measured besides</source>
        <translation>قياسات أخرى</translation>
    </message>
    <message>
        <source>Three fields an eye</source>
        <translation>ثلاثة حقول لكل عين</translation>
    </message>
    <message>
        <source>Sphere, cylinder and axis in fields of their own (Ctrl+E)</source>
        <translation>الكرة والأسطوانة والمحور كل في حقله (Ctrl+E)</translation>
    </message>
</context>
<context>
    <name>quarterstep::ReaderCard</name>
    <message>
        <source>Age</source>
        <translation>العمر</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>العمر بالسنوات؛ العمر المجهول يُقيَّم بأشد القواعد</translation>
    </message>
    <message>
        <source>Distance fine?</source>
        <translation>البعد سليم؟</translation>
    </message>
    <message>
        <source>Does the person see well far away without spectacles? + is yes, - is no</source>
        <translation>هل يرى الشخص البعيد جيدًا دون نظارة؟ العلامة + نعم، والعلامة - لا</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>لم يُسأل</translation>
    </message>
    <message>
        <source>yes (+)</source>
        <translation>نعم (+)</translation>
    </message>
    <message>
        <source>no (-)</source>
        <translation>لا (-)</translation>
    </message>
    <message>
        <source>Near power by trial</source>
        <translation>قوة القرب بالتجربة</translation>
    </message>
    <message>
        <source>Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225</source>
        <translation>القوة التي قرأ بها الشخص أفضل قراءة، نفسها للعينين، ديوبتر: 2.25 أو 225</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>PD للقرب</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation>المسافة بين الحدقتين عند النظر قريبًا، مليمتر؛ دونها يُقيَّم عند أسوأ قيمة معقولة</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>الشخص</translation>
    </message>
    <message>
        <source>Camp code of the person; one is offered, the paper card&apos;s may be typed over it</source>
        <translation>رمز الشخص في المخيم؛ يُقترح رمز، ويجوز أن يُكتب مكانه رمز البطاقة الورقية</translation>
    </message>
    <message>
        <source>%1 in each eye</source>
        <translation>‏%1 في كل عين</translation>
    </message>
    <message>
        <source>Ask first whether the person sees well far away.</source>
        <translation>اسأل أولًا هل يرى الشخص البعيد جيدًا.</translation>
    </message>
    <message>
        <source>Then a reader alone is not enough: refract, and use the full card.</source>
        <translation>عندها لا تكفي نظارة القراءة وحدها: افحص الانكسار واستعمل البطاقة الكاملة.</translation>
    </message>
    <message>
        <source>Type the near power in quarters of a dioptre: 2.25 or 225.</source>
        <translation>اكتب قوة القرب بأرباع الديوبتر: 2.25 أو 225.</translation>
    </message>
    <message>
        <source>A hand-over needs a code for the person.</source>
        <translation>التسليم يحتاج إلى رمز للشخص.</translation>
    </message>
</context>
<context>
    <name>quarterstep::SendOutPanel</name>
    <message>
        <source>As</source>
        <translation>بصيغة</translation>
    </message>
    <message>
        <source>An open standard, or a table that any program takes</source>
        <translation>معيار مفتوح، أو جدول يقرؤه أي برنامج</translation>
    </message>
    <message>
        <source>HL7 FHIR (JSON, R4 and R5)</source>
        <translation>HL7 FHIR (JSON, R4 وR5)</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>جدول (CSV)</translation>
    </message>
    <message>
        <source>Lines of JSON</source>
        <translation>أسطر JSON</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>مَن</translation>
    </message>
    <message>
        <source>Everybody in the list, or the person on the card</source>
        <translation>كل من في القائمة، أو الشخص الذي في البطاقة</translation>
    </message>
    <message>
        <source>Everybody in the list</source>
        <translation>كل من في القائمة</translation>
    </message>
    <message>
        <source>The person on the card</source>
        <translation>الشخص الذي في البطاقة</translation>
    </message>
    <message>
        <source>What stays here, or leaves otherwise</source>
        <translation>ما يبقى هنا، أو يخرج بصورة أخرى</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>To the place before</source>
        <translation>إلى الموضع السابق</translation>
    </message>
    <message>
        <source>Write the file…</source>
        <translation>اكتب الملف…</translation>
    </message>
    <message>
        <source>Asks for a name and writes; symptoms and the guardian stay here</source>
        <translation>يسأل عن اسم ثم يكتب؛ الأعراض وولي الأمر يبقيان هنا</translation>
    </message>
    <message>
        <source>Nobody is there to be sent out.</source>
        <translation>لا أحد لإرسال وصفته.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s), each with the profile, version and hash of the rules of this camp</source>
        <translation>
            <numerusform>الوصفات: %n، ومع كل منها مجموعة قواعد هذا المخيم وإصدارها وبصمتها</numerusform>
            <numerusform>الوصفات: %n، ومع كل منها مجموعة قواعد هذا المخيم وإصدارها وبصمتها</numerusform>
            <numerusform>الوصفات: %n، ومع كل منها مجموعة قواعد هذا المخيم وإصدارها وبصمتها</numerusform>
            <numerusform>الوصفات: %n، ومع كل منها مجموعة قواعد هذا المخيم وإصدارها وبصمتها</numerusform>
            <numerusform>الوصفات: %n، ومع كل منها مجموعة قواعد هذا المخيم وإصدارها وبصمتها</numerusform>
            <numerusform>الوصفات: %n، ومع كل منها مجموعة قواعد هذا المخيم وإصدارها وبصمتها</numerusform>
        </translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>كتابة الملف</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>تجري الكتابة…</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) are in %1.</source>
        <translation>
            <numerusform>الوصفات في %1: ‏%n.</numerusform>
            <numerusform>الوصفات في %1: ‏%n.</numerusform>
            <numerusform>الوصفات في %1: ‏%n.</numerusform>
            <numerusform>الوصفات في %1: ‏%n.</numerusform>
            <numerusform>الوصفات في %1: ‏%n.</numerusform>
            <numerusform>الوصفات في %1: ‏%n.</numerusform>
        </translation>
    </message>
    <message>
        <source>DICOM (Subjective Refraction)</source>
        <translation>DICOM (الانكسار الذاتي)</translation>
    </message>
    <message>
        <source>Check first, or write; then it stands here.</source>
        <translation>تحقق أولًا، أو اكتب؛ عندئذ يظهر هنا.</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>تحقق أولًا</translation>
    </message>
    <message>
        <source>Shows what stays here; nothing is written</source>
        <translation>يُظهر ما يبقى هنا؛ ولا يُكتب شيء</translation>
    </message>
    <message>
        <source>one file a person, in a folder</source>
        <translation>ملف لكل شخص، في مجلد</translation>
    </message>
    <message>
        <source>Write the files…</source>
        <translation>كتابة الملفات…</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>مجلد للملفات</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>جارٍ التحقق…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>توقف. لم يُكتب شيء.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) can leave; nothing was written.</source>
        <translation>
            <numerusform>وصفات يمكن أن تخرج: %n؛ لم يُكتب شيء.</numerusform>
            <numerusform>وصفات يمكن أن تخرج: %n؛ لم يُكتب شيء.</numerusform>
            <numerusform>وصفات يمكن أن تخرج: %n؛ لم يُكتب شيء.</numerusform>
            <numerusform>وصفات يمكن أن تخرج: %n؛ لم يُكتب شيء.</numerusform>
            <numerusform>وصفات يمكن أن تخرج: %n؛ لم يُكتب شيء.</numerusform>
            <numerusform>وصفات يمكن أن تخرج: %n؛ لم يُكتب شيء.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::SettingsPage</name>
    <message>
        <source>Optician: hands over, orders</source>
        <translation>فني البصريات: يسلّم ويطلب</translation>
    </message>
    <message>
        <source>Keeper: counts, receives, moves stock</source>
        <translation>أمين المخزون: يعدّ ويستلم وينقل المخزون</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>هذا الحاسوب</translation>
    </message>
    <message>
        <source>Kept for you on this laptop.</source>
        <translation>يُحفظ لك على هذا الحاسوب.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>المظهر</translation>
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
        <source>Size of the letters</source>
        <translation>حجم الحروف</translation>
    </message>
    <message>
        <source>In per cent of the usual; also Ctrl++ and Ctrl+-</source>
        <translation>بالمئة من المعتاد؛ وأيضًا ⁦Ctrl++⁩ و⁦Ctrl+-⁩</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>اللغة</translation>
    </message>
    <message>
        <source>Language of the window, at once</source>
        <translation>لغة النافذة، فورًا</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>الطابعة</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation>طابعة البطاقات والرسائل لهذا الحاسوب</translation>
    </message>
    <message>
        <source>This camp</source>
        <translation>هذا المخيم</translation>
    </message>
    <message>
        <source>Kept in the camp folder, for everybody who opens it.</source>
        <translation>يُحفظ في مجلد المخيم، لكل من يفتحه.</translation>
    </message>
    <message>
        <source>Cylinders are written</source>
        <translation>كتابة الأسطوانات</translation>
    </message>
    <message>
        <source>Form in which pairs and orders show a cylinder; typed prescriptions stay as typed</source>
        <translation>الصيغة التي تُعرض بها الأسطوانة في النظارات والطلبات؛ الوصفات المكتوبة تبقى كما كُتبت</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>سالب</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>موجب</translation>
    </message>
    <message>
        <source>Acuities are shown</source>
        <translation>عرض حدّات الإبصار</translation>
    </message>
    <message>
        <source>Notation on the card; the record keeps what was typed</source>
        <translation>الترميز على البطاقة؛ ويحتفظ السجل بما كُتب</translation>
    </message>
    <message>
        <source>as recorded</source>
        <translation>كما سُجّلت</translation>
    </message>
    <message>
        <source>decimal</source>
        <translation>عشري</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>قُيّمت بحسب</translation>
    </message>
    <message>
        <source>Profile of limits for everybody; by itself the desk chooses by age and purpose</source>
        <translation>مجموعة حدود للجميع؛ من تلقاء نفسه يختار المكتب بحسب العمر والغرض</translation>
    </message>
    <message>
        <source>PINs</source>
        <translation>رموز PIN</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>الدور</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation>من يُضبط رمز PIN الخاص به أو يُزال</translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>رمز PIN اللازم الآن</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation>رمز PIN للمشرف إن وُجد، وإلا فالرمز الحالي لهذا الدور</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>رمز PIN جديد</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation>من %1 إلى %2 من الأحرف</translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>إزالة رمز PIN</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation>لا يُطلب من هذا الدور رمز PIN بعد الآن</translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>ضبط رمز PIN</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation>يُطلب من هذا الدور رمز PIN هذا من الآن</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>كالنظام</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>لم يُختر شيء</translation>
    </message>
    <message>
        <source>%1 (not here now)</source>
        <translation>‏%1 (ليس هنا الآن)</translation>
    </message>
    <message>
        <source>chosen by age and purpose</source>
        <translation>تُختار بحسب العمر والغرض</translation>
    </message>
    <message>
        <source>No role has a PIN.</source>
        <translation>لا دور له رمز PIN.</translation>
    </message>
    <message>
        <source>With a PIN: %1</source>
        <translation>برمز PIN: ‏%1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>، </translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>أُزيل رمز PIN.</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>ضُبط رمز PIN.</translation>
    </message>
    <message>
        <source>Supervisor: settings of the camp, lots, names, exports, PINs</source>
        <translation>المشرف: إعدادات المخيم والدفعات والأسماء والتصدير ورموز PIN</translation>
    </message>
    <message>
        <source>A guard against slips, no lock. Asked for here and at the command line. Kept with the ledger.</source>
        <translation>حماية من الهفوات، لا قفل. يُطلب هنا وفي سطر الأوامر. يُحفظ مع السجل.</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockPlace</name>
    <message>
        <source>Stock</source>
        <translation>المخزون</translation>
    </message>
    <message>
        <source>Look for a line</source>
        <translation>ابحث عن صنف</translation>
    </message>
    <message>
        <source>Look for a line, a power, a bin</source>
        <translation>ابحث عن صنف أو قوة أو خانة</translation>
    </message>
    <message>
        <source>Shows only lines in which these words stand (Ctrl+F)</source>
        <translation>يُظهر فقط الأصناف التي فيها هذه الكلمات (Ctrl+F)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>جدول</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation>الأصناف واحدًا تحت الآخر</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>سلّم</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation>عدد القطع من كل قوة</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>صندوق</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation>الخانات كما هي في الصندوق</translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>أصناف المخزون</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation>اختر صنفًا لترى بطاقته ولتُدخل ما جرى</translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>خانات الصندوق</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation>اختر خانة: يظهر صنفها بجانبها</translation>
    </message>
    <message>
        <source>Ready-made pairs</source>
        <translation>نظارات جاهزة</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>عدسات</translation>
    </message>
    <message>
        <source>Bar: available · hatched: kept aside · line across: keep at least this many. A click looks for that power.</source>
        <translation>العمود: المتاح · المخطط: المحفوظ جانبًا · الخط المعترض: الحد الأدنى. النقر يبحث عن تلك القوة.</translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>بطاقة الصنف</translation>
    </message>
    <message>
        <source>Everything that happened to this line, newest first</source>
        <translation>كل ما جرى لهذا الصنف، الأحدث أولًا</translation>
    </message>
    <message>
        <source>A count is blind: what the book says comes back into sight once the count is entered.</source>
        <translation>العدّ أعمى: يعود ما في الدفتر إلى الظهور بعد إدخال العدد.</translation>
    </message>
    <message>
        <source>Counts edited in stock.yaml by hand</source>
        <translation>أعداد عُدّلت في stock.yaml يدويًا</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>السبب</translation>
    </message>
    <message>
        <source>Reason, for taking them over</source>
        <translation>السبب، لاعتمادها</translation>
    </message>
    <message>
        <source>Why the counts in the file are the right ones; kept with the entry</source>
        <translation>لماذا أعداد الملف هي الصحيحة؛ يُحفظ مع القيد</translation>
    </message>
    <message>
        <source>Put the ledger&apos;s counts back</source>
        <translation>إعادة أعداد السجل</translation>
    </message>
    <message>
        <source>The file gets the counts of the ledger again</source>
        <translation>يعود الملف إلى أعداد السجل</translation>
    </message>
    <message>
        <source>Take the file&apos;s counts over</source>
        <translation>اعتماد أعداد الملف</translation>
    </message>
    <message>
        <source>The ledger gets an entry with the difference and the reason</source>
        <translation>يُكتب في السجل قيد بالفرق والسبب</translation>
    </message>
    <message>
        <source>No line is chosen</source>
        <translation>لم يُختر صنف</translation>
    </message>
    <message>
        <source>Choose a line in the table or a bin in the box.</source>
        <translation>اختر صنفًا في الجدول أو خانة في الصندوق.</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>الخانة %1</translation>
    </message>
    <message>
        <source>lines %1</source>
        <translation>الأصناف %1</translation>
    </message>
    <message>
        <source>none left in %1</source>
        <translation>نفد منها %1</translation>
    </message>
    <message>
        <source>within keep levels %1 of %2</source>
        <translation>ضمن الحدود %1 من %2</translation>
    </message>
    <message>
        <source>to reorder %1</source>
        <translation>تُطلب من جديد %1</translation>
    </message>
    <message>
        <source>handed over %1</source>
        <translation>سُلّم %1</translation>
    </message>
    <message>
        <source>Nothing matches “%1”; empty the field to see all %2 lines.</source>
        <translation>لا شيء يطابق «%1»؛ أفرغ الحقل لترى الأصناف كلها (%2).</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>‏%1 من %2 من الأصناف</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation>الموجود %1، وكان %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>‏%1: %2</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>أُعيد عند المكتب</translation>
    </message>
    <message>
        <source>Taken back: the counts are as before.</source>
        <translation>أُلغي: الأعداد كما كانت.</translation>
    </message>
    <message>
        <source>%1: the file says %2, the ledger %3</source>
        <translation>‏%1: في الملف %2، وفي السجل %3</translation>
    </message>
    <message>
        <source>Write why the counts in the file are the right ones.</source>
        <translation>اكتب لماذا أعداد الملف هي الصحيحة.</translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) taken over from the file.</source>
        <translation>
            <numerusform>اعتُمدت من الملف أعداد عددها %n.</numerusform>
            <numerusform>اعتُمدت من الملف أعداد عددها %n.</numerusform>
            <numerusform>اعتُمدت من الملف أعداد عددها %n.</numerusform>
            <numerusform>اعتُمدت من الملف أعداد عددها %n.</numerusform>
            <numerusform>اعتُمدت من الملف أعداد عددها %n.</numerusform>
            <numerusform>اعتُمدت من الملف أعداد عددها %n.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) put back to the ledger&apos;s.</source>
        <translation>
            <numerusform>أُعيدت إلى أعداد السجل: %n.</numerusform>
            <numerusform>أُعيدت إلى أعداد السجل: %n.</numerusform>
            <numerusform>أُعيدت إلى أعداد السجل: %n.</numerusform>
            <numerusform>أُعيدت إلى أعداد السجل: %n.</numerusform>
            <numerusform>أُعيدت إلى أعداد السجل: %n.</numerusform>
            <numerusform>أُعيدت إلى أعداد السجل: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count the bin that was used most</source>
        <translation>عُدّ الخانة الأكثر استعمالًا</translation>
    </message>
    <message>
        <source>Count it now</source>
        <translation>عُدّها الآن</translation>
    </message>
    <message>
        <source>Begins a blind count of this one bin (F8)</source>
        <translation>يبدأ عدًّا أعمى لهذه الخانة وحدها (F8)</translation>
    </message>
    <message numerus="yes">
        <source>Bin %1 was reached into %n time(s) since it was counted.</source>
        <translation>
            <numerusform>مرات الأخذ من الخانة %1 منذ عدّها: %n.</numerusform>
            <numerusform>مرات الأخذ من الخانة %1 منذ عدّها: %n.</numerusform>
            <numerusform>مرات الأخذ من الخانة %1 منذ عدّها: %n.</numerusform>
            <numerusform>مرات الأخذ من الخانة %1 منذ عدّها: %n.</numerusform>
            <numerusform>مرات الأخذ من الخانة %1 منذ عدّها: %n.</numerusform>
            <numerusform>مرات الأخذ من الخانة %1 منذ عدّها: %n.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more bin(s) wait for a count.</source>
        <translation>
            <numerusform>خانات أخرى تنتظر العدّ: %n.</numerusform>
            <numerusform>خانات أخرى تنتظر العدّ: %n.</numerusform>
            <numerusform>خانات أخرى تنتظر العدّ: %n.</numerusform>
            <numerusform>خانات أخرى تنتظر العدّ: %n.</numerusform>
            <numerusform>خانات أخرى تنتظر العدّ: %n.</numerusform>
            <numerusform>خانات أخرى تنتظر العدّ: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count bin %1: %2. Two persons; what the book says comes afterwards.</source>
        <translation>عُدّ الخانة %1: ‏%2. شخصان؛ وما في الدفتر يظهر بعد ذلك.</translation>
    </message>
    <message>
        <source>Packing</source>
        <translation>التعبئة</translation>
    </message>
    <message>
        <source>What to buy and pack for the next camp</source>
        <translation>ما يُشترى ويُعبأ للمخيم القادم</translation>
    </message>
    <message>
        <source>Transfers</source>
        <translation>النقل</translation>
    </message>
    <message>
        <source>Pieces sent to other sites, and what comes from them</source>
        <translation>القطع المرسلة إلى مواقع أخرى، وما يأتي منها</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>المخزون: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockWorkPanel</name>
    <message>
        <source>Enter in the ledger</source>
        <translation>إدخال في السجل</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>إلغاء الأخير</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>ما الذي جرى</translation>
    </message>
    <message>
        <source>What is entered about the chosen line</source>
        <translation>ما يُدخل عن الصنف المختار</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>استلام</translation>
    </message>
    <message>
        <source>Counted by two</source>
        <translation>عدّ من شخصين</translation>
    </message>
    <message>
        <source>Written off</source>
        <translation>شطب</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>حجز</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>إطلاق المحجوز</translation>
    </message>
    <message>
        <source>Quarantine</source>
        <translation>عزل</translation>
    </message>
    <message>
        <source>Release from quarantine</source>
        <translation>إخراج من العزل</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>العلة</translation>
    </message>
    <message>
        <source>Why the count changes</source>
        <translation>لماذا يتغير العدد</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>غير مذكورة</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>القطع</translation>
    </message>
    <message>
        <source>How many pieces</source>
        <translation>عدد القطع</translation>
    </message>
    <message>
        <source>For</source>
        <translation>لأجل</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation>رمز الشخص الذي تُحجز له؛ يجوز تركه فارغًا</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>كلمات</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation>السبب، أو ممن جاءت؛ يُحفظ مع القيد</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>الأحرف الأولى لاسمك</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>من يُدخل هذا؛ يبقى للقيد التالي</translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>الأحرف الأولى للثاني</translation>
    </message>
    <message>
        <source>The other person who counted; stays for the next entry</source>
        <translation>الشخص الآخر الذي عدّ؛ يبقى للقيد التالي</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>يلغي آخر قيد أُدخل هنا (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Writes it into the ledger (Enter in a field)</source>
        <translation>يكتبه في السجل (Enter في أي حقل)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>من</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>السبب</translation>
    </message>
    <message>
        <source>Enter about %1</source>
        <translation>إدخال عن %1</translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation>اختر صنفًا</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>اختر صنفًا أولًا.</translation>
    </message>
    <message>
        <source>Write the number of pieces in digits.</source>
        <translation>اكتب عدد القطع بالأرقام.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>لا يحدث شيء بصفر من القطع.</translation>
    </message>
    <message>
        <source>A count needs the initials of two persons.</source>
        <translation>العدّ يحتاج إلى الأحرف الأولى لشخصين.</translation>
    </message>
    <message>
        <source>Two different persons count.</source>
        <translation>يعدّ شخصان مختلفان.</translation>
    </message>
    <message>
        <source>Choose the cause.</source>
        <translation>اختر العلة.</translation>
    </message>
</context>
<context>
    <name>quarterstep::TableReading</name>
    <message>
        <source>Found: decimal %1; cylinders: %2 minus, %3 plus, %4 without a sign; %5 spheres without a sign</source>
        <translation>وُجد: العلامة العشرية %1؛ الأسطوانات: سالبة %2، موجبة %3، بلا إشارة %4؛ كرات بلا إشارة %5</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>فاصلة</translation>
    </message>
    <message>
        <source>point</source>
        <translation>نقطة</translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation>بين الأعمدة</translation>
    </message>
    <message>
        <source>What stands between two cells</source>
        <translation>ما يفصل بين خليتين</translation>
    </message>
    <message>
        <source>comma ,</source>
        <translation>فاصلة ,</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <translation>فاصلة منقوطة ;</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>علامة جدولة</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>خط عمودي |</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>العلامة العشرية</translation>
    </message>
    <message>
        <source>When one is chosen, a number with the other one is refused</source>
        <translation>عند اختيار إحداهما يُرفض العدد المكتوب بالأخرى</translation>
    </message>
    <message>
        <source>point or comma</source>
        <translation>نقطة أو فاصلة</translation>
    </message>
    <message>
        <source>refuse the row</source>
        <translation>رفض الصف</translation>
    </message>
    <message>
        <source>are plus</source>
        <translation>موجبة</translation>
    </message>
    <message>
        <source>are minus</source>
        <translation>سالبة</translation>
    </message>
    <message>
        <source>Spheres without a sign</source>
        <translation>كرات بلا إشارة</translation>
    </message>
    <message>
        <source>Ask whoever made the table before you choose</source>
        <translation>اسأل من أعد الجدول قبل أن تختار</translation>
    </message>
    <message>
        <source>Cylinders without a sign</source>
        <translation>أسطوانات بلا إشارة</translation>
    </message>
    <message>
        <source>Columns of the table</source>
        <translation>أعمدة الجدول</translation>
    </message>
    <message>
        <source>What each column is taken for; Enter, F2 or a click changes it</source>
        <translation>ما يُؤخذ عليه كل عمود؛ Enter أو F2 أو نقرة تغيّره</translation>
    </message>
</context>
<context>
    <name>quarterstep::TransferPanel</name>
    <message>
        <source>In the air</source>
        <translation>في الطريق</translation>
    </message>
    <message>
        <source>Transfers in the air</source>
        <translation>عمليات نقل في الطريق</translation>
    </message>
    <message>
        <source>What was sent and not yet taken in; Enter takes the chosen one in</source>
        <translation>ما أُرسل ولم يُستلم بعد؛ Enter يستلم المختار</translation>
    </message>
    <message>
        <source>Take in as sent</source>
        <translation>استلام كما أُرسل</translation>
    </message>
    <message>
        <source>Fills the list beside with what was sent, to be counted and entered</source>
        <translation>يملأ القائمة المجاورة بما أُرسل، ليُعدّ ويُدخل</translation>
    </message>
    <message>
        <source>Send or take in</source>
        <translation>إرسال أو استلام</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>ما الذي يجري</translation>
    </message>
    <message>
        <source>Whether pieces leave this site or come to it</source>
        <translation>هل تغادر القطع هذا الموقع أم تأتي إليه</translation>
    </message>
    <message>
        <source>Send to another site</source>
        <translation>إرسال إلى موقع آخر</translation>
    </message>
    <message>
        <source>Take in from another site</source>
        <translation>استلام من موقع آخر</translation>
    </message>
    <message>
        <source>To</source>
        <translation>إلى</translation>
    </message>
    <message>
        <source>The other site, as it is called in its stock.yaml</source>
        <translation>الموقع الآخر، كما يُسمى في ملفه stock.yaml</translation>
    </message>
    <message>
        <source>Lines of this transfer</source>
        <translation>أصناف هذا النقل</translation>
    </message>
    <message>
        <source>What goes or comes; choose a row to change its number</source>
        <translation>ما يذهب أو يأتي؛ اختر صفًا لتغيير عدده</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>ملاحظة</translation>
    </message>
    <message>
        <source>Kept with the entry</source>
        <translation>تُحفظ مع القيد</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>الأحرف الأولى لاسمك</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>من يُدخل هذا؛ يبقى للقيد التالي</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>الصنف</translation>
    </message>
    <message>
        <source>Line, typed or scanned</source>
        <translation>الصنف، مكتوبًا أو ممسوحًا</translation>
    </message>
    <message>
        <source>Name of a line, or the digits of its label; Enter goes on to the pieces</source>
        <translation>اسم الصنف، أو أرقام ملصقه؛ Enter ينتقل إلى القطع</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>القطع</translation>
    </message>
    <message>
        <source>How many pieces; 0 takes the line out of the list</source>
        <translation>عدد القطع؛ 0 يخرج الصنف من القائمة</translation>
    </message>
    <message>
        <source>Into the list</source>
        <translation>إلى القائمة</translation>
    </message>
    <message>
        <source>Puts line and pieces into the list (Enter in the pieces)</source>
        <translation>يضع الصنف والقطع في القائمة (Enter في القطع)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>إلغاء الأخير</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>يلغي آخر قيد أُدخل هنا (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation>إفراغ القائمة</translation>
    </message>
    <message>
        <source>Begins anew; nothing is entered (Ctrl+E)</source>
        <translation>يبدأ من جديد؛ لا يُقيَّد شيء (Ctrl+E)</translation>
    </message>
    <message>
        <source>Enter in the ledger</source>
        <translation>إدخال في السجل</translation>
    </message>
    <message>
        <source>Writes the list into the ledger (Ctrl+Enter)</source>
        <translation>يكتب القائمة في السجل (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>أُرسل</translation>
    </message>
    <message>
        <source>From</source>
        <translation>من</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>الأصناف</translation>
    </message>
    <message>
        <source>Nothing was sent that is not yet taken in, as far as this ledger knows.</source>
        <translation>لا شيء أُرسل ولم يُستلم بعد، بحسب ما يعرفه هذا السجل.</translation>
    </message>
    <message numerus="yes">
        <source>%n sent and not taken in</source>
        <translation>
            <numerusform>أُرسل ولم يُستلم: %n</numerusform>
            <numerusform>أُرسل ولم يُستلم: %n</numerusform>
            <numerusform>أُرسل ولم يُستلم: %n</numerusform>
            <numerusform>أُرسل ولم يُستلم: %n</numerusform>
            <numerusform>أُرسل ولم يُستلم: %n</numerusform>
            <numerusform>أُرسل ولم يُستلم: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>to this site %1</source>
        <translation>إلى هذا الموقع %1</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>الخانة</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>المتاح</translation>
    </message>
    <message>
        <source>%1: bin %2, available %3</source>
        <translation>‏%1: الخانة %2، المتاح %3</translation>
    </message>
    <message>
        <source>Put lines and pieces into the list first.</source>
        <translation>ضع أصنافًا وقطعًا في القائمة أولًا.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>لا يحدث شيء بصفر من القطع.</translation>
    </message>
    <message>
        <source>Name the other site.</source>
        <translation>سمِّ الموقع الآخر.</translation>
    </message>
    <message numerus="yes">
        <source>Sent to %1: %n piece(s)</source>
        <translation>
            <numerusform>أُرسل إلى %1، عدد القطع: %n</numerusform>
            <numerusform>أُرسل إلى %1، عدد القطع: %n</numerusform>
            <numerusform>أُرسل إلى %1، عدد القطع: %n</numerusform>
            <numerusform>أُرسل إلى %1، عدد القطع: %n</numerusform>
            <numerusform>أُرسل إلى %1، عدد القطع: %n</numerusform>
            <numerusform>أُرسل إلى %1، عدد القطع: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken in from %1: %n piece(s)</source>
        <translation>
            <numerusform>استُلم من %1، عدد القطع: %n</numerusform>
            <numerusform>استُلم من %1، عدد القطع: %n</numerusform>
            <numerusform>استُلم من %1، عدد القطع: %n</numerusform>
            <numerusform>استُلم من %1، عدد القطع: %n</numerusform>
            <numerusform>استُلم من %1، عدد القطع: %n</numerusform>
            <numerusform>استُلم من %1، عدد القطع: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on hand %2, was %3</source>
        <translation>‏%1: الموجود %2، وكان %3</translation>
    </message>
</context>
<context>
    <name>quarterstep::TrayPage</name>
    <message>
        <source>Start my own camp</source>
        <translation>ابدأ مخيمي</translation>
    </message>
    <message>
        <source>Name of the camp or box</source>
        <translation>اسم المخيم أو الصندوق</translation>
    </message>
    <message>
        <source>Stands on every paper and at the top of the window</source>
        <translation>يظهر على كل ورقة وفي أعلى النافذة</translation>
    </message>
    <message>
        <source>The trays, one a line: powers, a colon, how many in each bin</source>
        <translation>الصواني، واحدة في كل سطر: القوى، نقطتان، العدد في كل خانة</translation>
    </message>
    <message>
        <source>The trays</source>
        <translation>الصواني</translation>
    </message>
    <message>
        <source>Powers in dioptres with their sign, from … to … by a step; then a colon and the count. After the count: centres in mm, bin, round lens size in mm</source>
        <translation>القوى بالديوبتر مع إشارتها، من … إلى … بخطوة؛ ثم نقطتان والعدد. وبعد العدد: المراكز بوحدة mm، الخانة، قياس العدسة المستديرة بوحدة mm</translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>المجلد الذي يُحفظ فيه</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation>يُنشأ إن لم يوجد؛ ولا يُكتب أبدًا فوق stock.yaml موجود</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>اختر المجلد…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation>يبحث عن مجلد على هذا الحاسوب</translation>
    </message>
    <message>
        <source>Add readers</source>
        <translation>إضافة نظارات قراءة</translation>
    </message>
    <message>
        <source>Add distance pairs</source>
        <translation>إضافة نظارات بعد</translation>
    </message>
    <message>
        <source>Add lenses and frames</source>
        <translation>إضافة عدسات وإطارات</translation>
    </message>
    <message>
        <source>Writes an example below the trays, to be changed</source>
        <translation>يكتب مثالًا تحت الصواني، لتعديله</translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>المخزون الناتج</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation>الخانة والصنف والقوة بالديوبتر والعدد لكل صنف</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation>يغادر هذه الصفحة؛ ويبقى المكتوب ما دامت النافذة مفتوحة</translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>إنشاء هذا المخيم</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation>يكتب stock.yaml في المجلد ويفتحه</translation>
    </message>
    <message>
        <source>my camp</source>
        <translation>مخيمي</translation>
    </message>
    <message>
        <source>Folder for the new camp</source>
        <translation>مجلد للمخيم الجديد</translation>
    </message>
    <message>
        <source>Line %1, character %2: %3</source>
        <translation>السطر %1، الحرف %2: %3</translation>
    </message>
    <message>
        <source>The camp has no name yet.</source>
        <translation>لا اسم للمخيم بعد.</translation>
    </message>
    <message>
        <source>%1 lines, %2 pieces</source>
        <translation>الأصناف %1، القطع %2</translation>
    </message>
    <message>
        <source>Nothing is typed yet. The buttons under the trays write examples to change.</source>
        <translation>لم يُكتب شيء بعد. الأزرار تحت الصواني تكتب أمثلة لتعديلها.</translation>
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
    <name>quarterstep::WhyPanel</name>
    <message>
        <source>Clear from %1 cm on.</source>
        <translation>واضح ابتداءً من %1 cm.</translation>
    </message>
    <message>
        <source>Clear from %1 to %2 cm.</source>
        <translation>واضح من %1 إلى %2 cm.</translation>
    </message>
    <message>
        <source>Why this pair</source>
        <translation>لماذا هذه النظارة</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>الصليب البصري</translation>
    </message>
    <message>
        <source>Above another</source>
        <translation>فوق أخرى</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>جدول</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation>يعرض القيم نفسها كجدول</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>صورة</translation>
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
        <source>Optical crosses as a table</source>
        <translation>الصلبان البصرية كجدول</translation>
    </message>
    <message>
        <source>Powers in dioptres along their meridians, degrees</source>
        <translation>القوى بالديوبتر على خطوط زوالها، درجات</translation>
    </message>
    <message>
        <source>The chosen pair and</source>
        <translation>النظارة المختارة و</translation>
    </message>
    <message>
        <source>Pair to compare with</source>
        <translation>النظارة التي يُقارن بها</translation>
    </message>
    <message>
        <source>The other pair of the list that the chosen one is compared with</source>
        <translation>النظارة الأخرى في القائمة التي تُقارن بها المختارة</translation>
    </message>
    <message>
        <source>Choose a pair: why it stands above or below another is said here.</source>
        <translation>اختر نظارة: يُذكر هنا لماذا هي فوق أخرى أو تحتها.</translation>
    </message>
    <message>
        <source>There is no other pair to compare with.</source>
        <translation>لا توجد نظارة أخرى للمقارنة.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>لماذا</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>قبل غيرها</translation>
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
    <message>
        <source>right eye</source>
        <translation>العين اليمنى</translation>
    </message>
    <message>
        <source>left eye</source>
        <translation>العين اليسرى</translation>
    </message>
</context>
</TS>
