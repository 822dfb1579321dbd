<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>BringIn</name>
    <message>
        <source>kept, not used</source>
        <translation>se conserva, no se usa</translation>
    </message>
    <message>
        <source>Code of the person</source>
        <translation>Código de la persona</translation>
    </message>
    <message>
        <source>Right eye, all in one cell</source>
        <translation>Ojo derecho, todo en una celda</translation>
    </message>
    <message>
        <source>Right eye: sphere</source>
        <translation>Ojo derecho: esfera</translation>
    </message>
    <message>
        <source>Right eye: cylinder</source>
        <translation>Ojo derecho: cilindro</translation>
    </message>
    <message>
        <source>Right eye: axis</source>
        <translation>Ojo derecho: eje</translation>
    </message>
    <message>
        <source>Right eye: prism</source>
        <translation>Ojo derecho: prisma</translation>
    </message>
    <message>
        <source>Right eye: base of the prism</source>
        <translation>Ojo derecho: base del prisma</translation>
    </message>
    <message>
        <source>Left eye, all in one cell</source>
        <translation>Ojo izquierdo, todo en una celda</translation>
    </message>
    <message>
        <source>Left eye: sphere</source>
        <translation>Ojo izquierdo: esfera</translation>
    </message>
    <message>
        <source>Left eye: cylinder</source>
        <translation>Ojo izquierdo: cilindro</translation>
    </message>
    <message>
        <source>Left eye: axis</source>
        <translation>Ojo izquierdo: eje</translation>
    </message>
    <message>
        <source>Left eye: prism</source>
        <translation>Ojo izquierdo: prisma</translation>
    </message>
    <message>
        <source>Left eye: base of the prism</source>
        <translation>Ojo izquierdo: base del prisma</translation>
    </message>
    <message>
        <source>Age in years</source>
        <translation>Edad en años</translation>
    </message>
    <message>
        <source>Addition of both eyes</source>
        <translation>Adición de ambos ojos</translation>
    </message>
    <message>
        <source>Right eye: addition</source>
        <translation>Ojo derecho: adición</translation>
    </message>
    <message>
        <source>Left eye: addition</source>
        <translation>Ojo izquierdo: adición</translation>
    </message>
    <message>
        <source>PD, mm</source>
        <translation>DP, mm</translation>
    </message>
    <message>
        <source>Right eye: PD, mm</source>
        <translation>Ojo derecho: DP, mm</translation>
    </message>
    <message>
        <source>Left eye: PD, mm</source>
        <translation>Ojo izquierdo: DP, mm</translation>
    </message>
    <message>
        <source>Near PD, mm</source>
        <translation>DP de cerca, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescriptor</translation>
    </message>
    <message>
        <source>Day it was written</source>
        <translation>Día en que se escribió</translation>
    </message>
</context>
<context>
    <name>ChartData</name>
    <message>
        <source>%1 of %2 at odds, %3</source>
        <translation>%1 de %2 en desacuerdo, %3</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>entregas evaluadas</translation>
    </message>
    <message>
        <source>pair and record at odds</source>
        <translation>gafas y lo anotado en desacuerdo</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Aún no se evaluó ninguna entrega.</translation>
    </message>
    <message>
        <source>mismatches in order</source>
        <translation>discordancias en orden</translation>
    </message>
    <message>
        <source>good hand-overs before it</source>
        <translation>entregas buenas antes</translation>
    </message>
    <message>
        <source>%1 good hand-overs before it</source>
        <translation>%1 entregas buenas antes</translation>
    </message>
    <message>
        <source>weeks in order</source>
        <translation>semanas en orden</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is writing in the ledger. Trying again; Escape gives up. Nothing is lost.</source>
        <translation>Otro programa está escribiendo en el registro. Se intenta de nuevo; Escape lo deja. No se pierde nada.</translation>
    </message>
    <message>
        <source>The program met something it does not know: %1. Nothing was written; close the program and open the folder again.</source>
        <translation>El programa encontró algo que no conoce: %1. No se escribió nada; cierre el programa y abra otra vez la carpeta.</translation>
    </message>
</context>
<context>
    <name>DeskOptions</name>
    <message>
        <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
        <translation>Asigna a prescripciones finales de gafas unas existencias de gafas premontadas y lentes.</translation>
    </message>
    <message>
        <source>light, dark or sun (black on white, large)</source>
        <translation>light, dark o sun (negro sobre blanco, grande)</translation>
    </message>
    <message>
        <source>mirrors the window; prescriptions stay left-to-right</source>
        <translation>refleja la ventana como en espejo; las prescripciones siguen de izquierda a derecha</translation>
    </message>
    <message>
        <source>language of the window, for example ar</source>
        <translation>idioma de la ventana, por ejemplo ar</translation>
    </message>
    <message>
        <source>size of the letters in per cent, 100 to 200</source>
        <translation>tamaño de las letras en por ciento, de 100 a 200</translation>
    </message>
    <message>
        <source>paints the window into a PNG file and leaves</source>
        <translation>dibuja la ventana en un archivo PNG y sale</translation>
    </message>
    <message>
        <source>size of the window in pixels, for example 1366x768</source>
        <translation>tamaño de la ventana en píxeles, por ejemplo 1366x768</translation>
    </message>
    <message>
        <source>loads this person of people.csv at the start</source>
        <translation>carga al empezar esta persona de people.csv</translation>
    </message>
    <message>
        <source>chooses this line of the stock at the start</source>
        <translation>elige al empezar esta línea de las existencias</translation>
    </message>
    <message>
        <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
        <translation>carpeta de campamento que abrir (stock.yaml, rules.yaml, ledger.sqlite)</translation>
    </message>
    <message>
        <source>--size %1 is not a size; write for example 1366x768</source>
        <translation>--size %1 no es un tamaño; escriba por ejemplo 1366x768</translation>
    </message>
    <message>
        <source>--text-scale %1 is not from 100 to 200</source>
        <translation>--text-scale %1 no está entre 100 y 200</translation>
    </message>
    <message>
        <source>--place %1 is not known; write one of %2</source>
        <translation>--place %1 no se conoce; escriba uno de %2</translation>
    </message>
    <message>
        <source>--theme %1 is not known; write light, dark or sun</source>
        <translation>--theme %1 no se conoce; escriba light, dark o sun</translation>
    </message>
    <message>
        <source>one camp folder at a time, not %1</source>
        <translation>una sola carpeta de campamento a la vez, no %1</translation>
    </message>
    <message>
        <source>no readable person %1 in people.csv</source>
        <translation>ninguna persona legible %1 en people.csv</translation>
    </message>
    <message>
        <source>no line %1 in this stock</source>
        <translation>no hay línea %1 en estas existencias</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>no se puede escribir %1</translation>
    </message>
    <message>
        <source>page to show at the start: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in or send-out</source>
        <translation>página que mostrar al inicio: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in o send-out</translation>
    </message>
    <message>
        <source>reads this file of prescriptions on the page bring-in at the start</source>
        <translation>lee este archivo de prescripciones en la página bring-in al inicio</translation>
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
        <translation>I %1</translation>
    </message>
    <message>
        <source>%1 add %2</source>
        <translation>%1 ad. %2</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin evaluar</translation>
    </message>
    <message>
        <source>%1 too strong</source>
        <translation>%1 demasiado fuerte</translation>
    </message>
    <message>
        <source>%1 too plus</source>
        <translation>%1 demasiado plus</translation>
    </message>
    <message>
        <source>%1 too weak</source>
        <translation>%1 demasiado débil</translation>
    </message>
    <message>
        <source>%1 too minus</source>
        <translation>%1 demasiado minus</translation>
    </message>
    <message>
        <source>cylinder %1 left</source>
        <translation>queda cilindro %1</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>no queda nada</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Suggested</source>
        <translation>Sugerido</translation>
    </message>
    <message>
        <source>Fits with caution</source>
        <translation>Sirve con precaución</translation>
    </message>
    <message>
        <source>On trial: type the acuity</source>
        <translation>A prueba: escriba la agudeza</translation>
    </message>
    <message>
        <source>Outside limit</source>
        <translation>Fuera del límite</translation>
    </message>
    <message>
        <source>right eye: %1</source>
        <translation>ojo derecho: %1</translation>
    </message>
    <message>
        <source>left eye: %1</source>
        <translation>ojo izquierdo: %1</translation>
    </message>
    <message>
        <source>Tried on: acceptable</source>
        <translation>Probadas: aceptable</translation>
    </message>
    <message>
        <source>Tried on: outside limit</source>
        <translation>Probadas: fuera del límite</translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>whole degrees up to 180</source>
        <translation>grados enteros hasta 180</translation>
    </message>
    <message>
        <source>quarters of a dioptre up to 6.75</source>
        <translation>cuartos de dioptría hasta 6.75</translation>
    </message>
    <message>
        <source>years up to 120</source>
        <translation>años hasta 120</translation>
    </message>
    <message>
        <source>millimetres, or right and left as 31/30.5</source>
        <translation>milímetros, o derecha e izquierda como 31/30.5</translation>
    </message>
    <message>
        <source>quarters of a dioptre, plus</source>
        <translation>cuartos de dioptría, más</translation>
    </message>
    <message>
        <source>a sign first, then quarters of a dioptre, the axis up to 180</source>
        <translation>primero un signo, luego cuartos de dioptría, el eje hasta 180</translation>
    </message>
    <message>
        <source>“%1” was not taken: %2</source>
        <translation>«%1» no se aceptó: %2</translation>
    </message>
</context>
<context>
    <name>PackingCurve</name>
    <message>
        <source>%1 % served for %2</source>
        <translation>%1 % atendidos por %2</translation>
    </message>
    <message>
        <source>money spent</source>
        <translation>dinero gastado</translation>
    </message>
    <message>
        <source>money spent, %1</source>
        <translation>dinero gastado, %1</translation>
    </message>
    <message>
        <source>share of needs served</source>
        <translation>parte de las necesidades atendidas</translation>
    </message>
    <message>
        <source>Plan first: the curve comes with it.</source>
        <translation>Planifique antes: la curva viene con el plan.</translation>
    </message>
    <message>
        <source>the knee</source>
        <translation>el codo</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>este plan</translation>
    </message>
</context>
<context>
    <name>PackingRows</name>
    <message>
        <source>Pack</source>
        <translation>Paquete</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Paquetes</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramos</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>without it %1 fewer served</source>
        <translation>sin él, %1 menos atendidos</translation>
    </message>
    <message>
        <source>a reserve</source>
        <translation>una reserva</translation>
    </message>
    <message>
        <source>nothing else for %1</source>
        <translation>nada más para %1</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>sirve a %1</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n en existencia</numerusform>
            <numerusform>%n en existencia</numerusform>
        </translation>
    </message>
    <message>
        <source>none on hand</source>
        <translation>ninguna en existencia</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Caja</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casilla</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Of these bought</source>
        <translation>De ellas, compradas</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nueva</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Served</source>
        <translation>Atendidos</translation>
    </message>
    <message>
        <source>First come</source>
        <translation>Por llegada</translation>
    </message>
    <message>
        <source>Spends</source>
        <translation>Gasta</translation>
    </message>
    <message>
        <source>what would do has run out by then</source>
        <translation>lo que serviría ya se ha agotado</translation>
    </message>
    <message>
        <source>no such power on hand or on offer</source>
        <translation>ninguna potencia así en existencia ni ofrecida</translation>
    </message>
    <message>
        <source>nothing on offer keeps the limit: %1</source>
        <translation>nada de lo ofrecido respeta el límite: %1</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Sin gafas</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>%1, children</source>
        <translation>%1, niños</translation>
    </message>
    <message>
        <source>%1, adults</source>
        <translation>%1, adultos</translation>
    </message>
    <message>
        <source>Days in a hundred</source>
        <translation>Días de cada cien</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Hacia la persona</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Por qué no</translation>
    </message>
    <message>
        <source>others do as well for the money</source>
        <translation>otros rinden lo mismo por ese dinero</translation>
    </message>
    <message>
        <source>nobody of this demand needs it</source>
        <translation>nadie de esta demanda lo necesita</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>Gastado</translation>
    </message>
    <message>
        <source>Served, planned for</source>
        <translation>Atendidos, según el plan</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>the curve bends here</source>
        <translation>la curva se dobla aquí</translation>
    </message>
</context>
<context>
    <name>PrescriptionCard</name>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Camp code of the person, as on the paper card</source>
        <translation>Código de campamento de la persona, como en la ficha de papel</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Edad en años; si no se sabe, se evalúa con las reglas más estrictas</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecho</translation>
    </message>
    <message>
        <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Ojo derecho: esfera, cilindro (dioptrías) y eje (grados). Arriba y Abajo cambian la esfera 0.25; Re Pág y Av Pág, 1.00</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierdo</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Adición</translation>
    </message>
    <message>
        <source>Near addition of both eyes, dioptres</source>
        <translation>Adición de cerca de ambos ojos, dioptrías</translation>
    </message>
    <message>
        <source>PD far</source>
        <translation>DP lejos</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>DP cerca</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; worked out from the far one when empty</source>
        <translation>Distancia entre las pupilas mirando de cerca, milímetros; se calcula de la de lejos si está vacía</translation>
    </message>
    <message>
        <source>Near, R</source>
        <translation>Cerca, D</translation>
    </message>
    <message>
        <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Ojo derecho: potencia de cerca completa hallada por prueba, dioptrías, en lugar de una adición</translation>
    </message>
    <message>
        <source>Near, L</source>
        <translation>Cerca, I</translation>
    </message>
    <message>
        <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Ojo izquierdo: potencia de cerca completa hallada por prueba, dioptrías, en lugar de una adición</translation>
    </message>
    <message>
        <source>Unaided, R</source>
        <translation>Sin gafas, D</translation>
    </message>
    <message>
        <source>Right eye: acuity without spectacles, for example 6/18</source>
        <translation>Ojo derecho: agudeza sin gafas, por ejemplo 6/18</translation>
    </message>
    <message>
        <source>Unaided, L</source>
        <translation>Sin gafas, I</translation>
    </message>
    <message>
        <source>Left eye: acuity without spectacles, for example 6/18</source>
        <translation>Ojo izquierdo: agudeza sin gafas, por ejemplo 6/18</translation>
    </message>
    <message>
        <source>Best, R</source>
        <translation>Mejor, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this prescription, for example 6/6</source>
        <translation>Ojo derecho: agudeza con esta prescripción, por ejemplo 6/6</translation>
    </message>
    <message>
        <source>Best, L</source>
        <translation>Mejor, I</translation>
    </message>
    <message>
        <source>Left eye: acuity with this prescription, for example 6/6</source>
        <translation>Ojo izquierdo: agudeza con esta prescripción, por ejemplo 6/6</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescriptor</translation>
    </message>
    <message>
        <source>Who signed the prescription; needed under 16 years</source>
        <translation>Quién firmó la prescripción; necesario antes de los 16 años</translation>
    </message>
    <message>
        <source>Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Ojo izquierdo: esfera, cilindro (dioptrías) y eje (grados); = toma los del ojo derecho. Arriba y Abajo cambian la esfera 0.25; Re Pág y Av Pág, 1.00</translation>
    </message>
    <message>
        <source>Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5</source>
        <translation>Distancia entre las pupilas mirando de lejos, milímetros; o a la derecha y a la izquierda de la nariz: 31/30.5</translation>
    </message>
    <message>
        <source>Objective, R</source>
        <translation>Objetiva, D</translation>
    </message>
    <message>
        <source>Right eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Ojo derecho: lectura del instrumento, dioptrías; de varias lecturas separadas por ; se hace la media y se indica su dispersión</translation>
    </message>
    <message>
        <source>Objective, L</source>
        <translation>Objetiva, I</translation>
    </message>
    <message>
        <source>Left eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Ojo izquierdo: lectura del instrumento, dioptrías; de varias lecturas separadas por ; se hace la media y se indica su dispersión</translation>
    </message>
    <message>
        <source>Own pair, R</source>
        <translation>Gafas propias, D</translation>
    </message>
    <message>
        <source>Right eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Ojo derecho: potencia de las gafas que lleva ahora, leída con frontofocómetro, dioptrías</translation>
    </message>
    <message>
        <source>Own pair, L</source>
        <translation>Gafas propias, I</translation>
    </message>
    <message>
        <source>Left eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Ojo izquierdo: potencia de las gafas que lleva ahora, leída con frontofocómetro, dioptrías</translation>
    </message>
    <message>
        <source>Pinhole, R</source>
        <translation>Estenopeico, D</translation>
    </message>
    <message>
        <source>Right eye: acuity through a pinhole, for example 6/9</source>
        <translation>Ojo derecho: agudeza con agujero estenopeico, por ejemplo 6/9</translation>
    </message>
    <message>
        <source>Pinhole, L</source>
        <translation>Estenopeico, I</translation>
    </message>
    <message>
        <source>Left eye: acuity through a pinhole, for example 6/9</source>
        <translation>Ojo izquierdo: agudeza con agujero estenopeico, por ejemplo 6/9</translation>
    </message>
    <message>
        <source>With own, R</source>
        <translation>Con las suyas, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Ojo derecho: agudeza con las gafas que lleva ahora, por ejemplo 6/12</translation>
    </message>
    <message>
        <source>With own, L</source>
        <translation>Con las suyas, I</translation>
    </message>
    <message>
        <source>Left eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Ojo izquierdo: agudeza con las gafas que lleva ahora, por ejemplo 6/12</translation>
    </message>
    <message>
        <source>Near, bare</source>
        <translation>Cerca, sin gafas</translation>
    </message>
    <message>
        <source>Smallest print read without spectacles, for example N12</source>
        <translation>Letra más pequeña leída sin gafas, por ejemplo N12</translation>
    </message>
    <message>
        <source>Near, best</source>
        <translation>Cerca, mejor</translation>
    </message>
    <message>
        <source>Smallest print read with this prescription, for example N6</source>
        <translation>Letra más pequeña leída con esta prescripción, por ejemplo N6</translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation>Vértice</translation>
    </message>
    <message>
        <source>Distance from the trial lens to the eye, millimetres; needed above 4.00 D</source>
        <translation>Distancia de la lente de prueba al ojo, milímetros; necesaria por encima de 4.00 D</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Distance of near work from the spectacles, millimetres; 400 when empty</source>
        <translation>Distancia del trabajo de cerca a las gafas, milímetros; 400 si está vacía</translation>
    </message>
    <message>
        <source>Complaints</source>
        <translation>Quejas</translation>
    </message>
    <message>
        <source>What the person complains of, in a few words</source>
        <translation>De qué se queja la persona, en pocas palabras</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Tutor</translation>
    </message>
    <message>
        <source>Who was told about a child’s prescription</source>
        <translation>A quién se informó de la prescripción de un niño</translation>
    </message>
    <message>
        <source>Right eye: %1</source>
        <translation>Ojo derecho: %1</translation>
    </message>
    <message>
        <source>Left eye: %1</source>
        <translation>Ojo izquierdo: %1</translation>
    </message>
</context>
<context>
    <name>ShareBars</name>
    <message>
        <source>Right: mean sphere</source>
        <translation>Derecho: esfera media</translation>
    </message>
    <message>
        <source>Left: mean sphere</source>
        <translation>Izquierdo: esfera media</translation>
    </message>
    <message>
        <source>Right: cylinder</source>
        <translation>Derecho: cilindro</translation>
    </message>
    <message>
        <source>Left: cylinder</source>
        <translation>Izquierdo: cilindro</translation>
    </message>
    <message>
        <source>Right: strain</source>
        <translation>Derecho: esfuerzo</translation>
    </message>
    <message>
        <source>Left: strain</source>
        <translation>Izquierdo: esfuerzo</translation>
    </message>
    <message>
        <source>Right, near: mean sphere</source>
        <translation>Derecho, cerca: esfera media</translation>
    </message>
    <message>
        <source>Left, near: mean sphere</source>
        <translation>Izquierdo, cerca: esfera media</translation>
    </message>
    <message>
        <source>Right, near: cylinder</source>
        <translation>Derecho, cerca: cilindro</translation>
    </message>
    <message>
        <source>Left, near: cylinder</source>
        <translation>Izquierdo, cerca: cilindro</translation>
    </message>
    <message>
        <source>the eye makes up for %1 D</source>
        <translation>el ojo compensa %1 D</translation>
    </message>
    <message>
        <source>error %1 D</source>
        <translation>error %1 D</translation>
    </message>
    <message>
        <source>sight lost, logMAR over the eyes</source>
        <translation>visión perdida, logMAR entre los ojos</translation>
    </message>
    <message>
        <source>part of the limit used up</source>
        <translation>parte del límite gastada</translation>
    </message>
    <message>
        <source>%1 of %2 %3; %4</source>
        <translation>%1 de %2 %3; %4</translation>
    </message>
    <message>
        <source>No criterion with a limit could be judged.</source>
        <translation>No se pudo evaluar ningún criterio con límite.</translation>
    </message>
    <message>
        <source>of 100 hand-overs judged</source>
        <translation>de 100 entregas evaluadas</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Aún no se evaluó ninguna entrega.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Judged again</source>
        <translation>Evaluadas otra vez</translation>
    </message>
    <message>
        <source>Pair and record agree</source>
        <translation>Gafas y lo anotado concuerdan</translation>
    </message>
    <message>
        <source>adds</source>
        <translation>suma</translation>
    </message>
    <message>
        <source>takes away</source>
        <translation>resta</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>total</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Derecho: %1</translation>
    </message>
    <message>
        <source>Left: %1</source>
        <translation>Izquierdo: %1</translation>
    </message>
</context>
<context>
    <name>command</name>
    <message>
        <source>this plan</source>
        <translation>este plan</translation>
    </message>
    <message>
        <source>greedy, without repairs</source>
        <translation>voraz, sin retoques</translation>
    </message>
    <message>
        <source>each line by its own demand (newsvendor)</source>
        <translation>cada línea según su propia demanda (modelo del vendedor de periódicos)</translation>
    </message>
    <message>
        <source>levels by past use</source>
        <translation>niveles según el uso pasado</translation>
    </message>
    <message>
        <source>what is on hand, nothing bought</source>
        <translation>lo que hay, sin comprar nada</translation>
    </message>
    <message>
        <source>spend %1 of %2 %3, %4 pieces, %5 kg</source>
        <translation>gasto %1 de %2 %3, %4 piezas, %5 kg</translation>
    </message>
    <message>
        <source>%1: serves %2 %, first come %3 %, spends %4</source>
        <translation>%1: atiende %2 %, por llegada %3 %, gasta %4</translation>
    </message>
    <message>
        <source>on the draws planned for: %1 %, no order serves more than %2 % (gap %3 %); on offer and on hand could serve %4 % at most</source>
        <translation>en los sorteos del plan: %1 %, ningún encargo atiende más de %2 % (diferencia %3 %); lo ofrecido y lo que hay podrían atender %4 % como máximo</translation>
    </message>
    <message>
        <source>the curve bends at %1: %2 % of the draws planned for</source>
        <translation>la curva se dobla en %1: %2 % de los sorteos del plan</translation>
    </message>
    <message>
        <source>%1 runs out on %2 days in a hundred, by person %3</source>
        <translation>%1 se agota %2 días de cada cien, hacia la persona %3</translation>
    </message>
    <message>
        <source>demand: %1, %2 people</source>
        <translation>demanda: %1, %2 personas</translation>
    </message>
    <message>
        <source>demand: the ledger, %1 people</source>
        <translation>demanda: el registro, %1 personas</translation>
    </message>
    <message>
        <source>left without a pair, %1: %2</source>
        <translation>sin gafas, %1: %2</translation>
    </message>
    <message>
        <source>entries without a prescription, not planned for: %1</source>
        <translation>anotaciones sin prescripción, no incluidas en el plan: %1</translation>
    </message>
    <message>
        <source>lines whose demand was raised, since they lay empty on some days: %1</source>
        <translation>líneas cuya demanda se aumentó, porque estuvieron agotadas algunos días: %1</translation>
    </message>
    <message>
        <source>mixed with the published mix of a camp, which makes %1 % of it</source>
        <translation>mezclada con la distribución publicada de un campamento, que es el %1 % de ella</translation>
    </message>
    <message>
        <source>PDs not taken, drawn from published distributions: %1</source>
        <translation>DP sin medir, sacadas de distribuciones publicadas: %1</translation>
    </message>
    <message>
        <source>assumed: where no PD was taken, it equals the centres of each pair</source>
        <translation>supuesto: donde no se tomó la DP, es igual a los centros de cada par</translation>
    </message>
    <message>
        <source>assumed: objective readings are final, and a prescriber is named</source>
        <translation>supuesto: las lecturas objetivas son finales y se nombra a quien prescribe</translation>
    </message>
    <message>
        <source>assumed: an unrecorded vertex distance is that of the stock</source>
        <translation>supuesto: una distancia de vértice no anotada es la de las existencias</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>the folder %1 for the sample cannot be made; check rights and free space</source>
        <translation>no se puede crear la carpeta %1 para el ejemplo; revise permisos y espacio libre</translation>
    </message>
    <message>
        <source>write both parts of the PD, right then left: 31/30.5</source>
        <translation>escriba las dos partes de la DP, derecha y luego izquierda: 31/30.5</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation>no se puede crear la carpeta %1</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to print</source>
        <translation>la prescripción de %1 no está completa; no hay encargo que imprimir</translation>
    </message>
    <message>
        <source>%1 is not under 16; print the note for the person instead</source>
        <translation>%1 no tiene menos de 16 años; imprima la nota para la persona</translation>
    </message>
    <message>
        <source>this person has no camp code; give one before anything is printed</source>
        <translation>esta persona no tiene código de campamento; dele uno antes de imprimir</translation>
    </message>
    <message>
        <source>nothing of %1 asks for a referral; there is no letter to print</source>
        <translation>nada de %1 pide derivación; no hay carta que imprimir</translation>
    </message>
    <message>
        <source>a label of this size does not hold its text; choose a larger one with --label-size, or a shorter name: %1</source>
        <translation>en una etiqueta de este tamaño no cabe su texto; elija una mayor con --label-size, o un nombre más corto: %1</translation>
    </message>
    <message>
        <source>there is no printer %1, and no other is set up here; write a PDF with --output and print it where there is one</source>
        <translation>no hay impresora %1, ni otra instalada aquí; escriba un PDF con --output e imprímalo donde haya una</translation>
    </message>
    <message>
        <source>there is no printer %1; there are %2</source>
        <translation>no hay impresora %1; hay %2</translation>
    </message>
    <message>
        <source>the printer %1 does not take the paper</source>
        <translation>la impresora %1 no acepta el papel</translation>
    </message>
    <message>
        <source>printing was stopped</source>
        <translation>se detuvo la impresión</translation>
    </message>
    <message>
        <source>no font here has the script of %1; install the package %2 and print again</source>
        <translation>ninguna fuente de aquí tiene la escritura de %1; instale el paquete %2 e imprima otra vez</translation>
    </message>
    <message>
        <source>%1 does not wait in this table for that purpose, or stands in the list twice; take the row out</source>
        <translation>%1 no espera en esta tabla para ese uso, o está dos veces en la lista; quite la fila</translation>
    </message>
    <message>
        <source>there is no line %1 in this box</source>
        <translation>no hay línea %1 en esta caja</translation>
    </message>
    <message>
        <source>more people were told %1 than there are pieces of it; take a row out of the list</source>
        <translation>se dijo %1 a más personas que piezas hay; quite una fila de la lista</translation>
    </message>
    <message>
        <source>not drawn: counts under %1 are hidden on this page</source>
        <translation>sin dibujar: los números menores de %1 se ocultan en esta página</translation>
    </message>
    <message>
        <source>there is no rules.yaml; the rules built in apply</source>
        <translation>no hay rules.yaml; se aplican las reglas incluidas</translation>
    </message>
    <message>
        <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
        <translation>este registro se escribió por última vez en otro lugar y está abierto solo para leer; si la carpeta se mudó aquí para siempre, dígalo, y no use más la otra copia</translation>
    </message>
    <message>
        <source>this ledger had an older form and was brought up; as it was it stands in %1</source>
        <translation>este registro tenía una forma más antigua y se actualizó; como estaba se guarda en %1</translation>
    </message>
    <message>
        <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
        <translation>la anotación %1 del registro no está como se escribió: %2; guarde la carpeta como está y compárela con una copia</translation>
    </message>
    <message>
        <source>there is no ledger here yet</source>
        <translation>aún no hay registro aquí</translation>
    </message>
    <message>
        <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
        <translation>el registro tiene la anotación, pero stock.yaml no se pudo actualizar; se corregirá en la próxima apertura</translation>
    </message>
    <message>
        <source>nothing that was handed over to %1 stands here; look at the code, or enter the look at the site that gave the pair</source>
        <translation>aquí no consta nada entregado a %1; revise el código, o anote la revisión en la sede que dio las gafas</translation>
    </message>
    <message>
        <source>to be referred before any glasses are given</source>
        <translation>derivar antes de dar gafas</translation>
    </message>
    <message>
        <source>nothing is needed for this purpose</source>
        <translation>no se necesita nada para este uso</translation>
    </message>
    <message>
        <source>these lines do not make a pair</source>
        <translation>estas líneas no forman unas gafas</translation>
    </message>
    <message>
        <source>on trial: type the acuity with this pair first</source>
        <translation>a prueba: escriba antes la agudeza con estas gafas</translation>
    </message>
    <message>
        <source>an unequal pair: read each eye with the focimeter first</source>
        <translation>gafas desiguales: lea antes cada ojo con el frontofocómetro</translation>
    </message>
    <message>
        <source>none left of %1</source>
        <translation>no queda ninguna de %1</translation>
    </message>
    <message>
        <source>no pair chosen</source>
        <translation>ningunas gafas elegidas</translation>
    </message>
    <message>
        <source>stopped as asked; nothing was written</source>
        <translation>detenido como se pidió; no se escribió nada</translation>
    </message>
    <message>
        <source>line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>la línea %1 tiene %2 en existencia, %3 reservadas y %4 en cuarentena, muy pocas para esto; no se escribió nada</translation>
    </message>
    <message>
        <source>line %1 is not in the ledger of %2; nothing was written</source>
        <translation>la línea %1 no está en el registro de %2; no se escribió nada</translation>
    </message>
    <message>
        <source>line %1 stands here by its name and by its code; write one row with the whole number</source>
        <translation>la línea %1 está aquí por su nombre y por su código; escriba una sola fila con el número total</translation>
    </message>
    <message>
        <source>there is no line %1 in stock.yaml of %2; add it there with on hand: 0, or mend the name</source>
        <translation>no hay línea %1 en stock.yaml de %2; añádala con on hand: 0, o corrija el nombre</translation>
    </message>
    <message>
        <source>a count needs two persons; %1 cannot be both</source>
        <translation>un recuento pide dos personas; %1 no puede ser ambas</translation>
    </message>
    <message>
        <source>line %1: counted %2, the book says %3; say why, in the row or with --reason</source>
        <translation>línea %1: contadas %2, el registro dice %3; diga por qué, en la fila o con --reason</translation>
    </message>
    <message>
        <source>line %1: %2 were sent, %3 arrived; the sender should know</source>
        <translation>línea %1: se enviaron %2, llegaron %3; conviene que el remitente lo sepa</translation>
    </message>
    <message>
        <source>this order is “%1” already; take back its last step %2 first</source>
        <translation>este encargo ya está «%1»; deshaga antes su último paso %2</translation>
    </message>
    <message>
        <source>nothing that was received of lot %1 is available</source>
        <translation>nada de lo recibido del lote %1 está disponible</translation>
    </message>
    <message>
        <source>there is no entry %1 to take back</source>
        <translation>no hay anotación %1 que deshacer</translation>
    </message>
    <message>
        <source>this hand-over is of %1; a hand-over is taken back on its day only; if the pair came back, enter it as returned</source>
        <translation>esta entrega es del %1; una entrega solo se deshace el mismo día; si las gafas volvieron, anótelas como devueltas</translation>
    </message>
    <message>
        <source>nothing was handed over to %1 today</source>
        <translation>hoy no se entregó nada a %1</translation>
    </message>
    <message>
        <source>%1 was given %2 pairs today; say which with --entry %3</source>
        <translation>%1 recibió hoy %2 gafas; diga cuáles con --entry %3</translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation>no hay encargo %1</translation>
    </message>
    <message>
        <source>this order is “%1”; “%2” cannot follow</source>
        <translation>este encargo está «%1»; «%2» no puede seguir</translation>
    </message>
    <message>
        <source>%1 has no open order</source>
        <translation>%1 no tiene encargos abiertos</translation>
    </message>
    <message>
        <source>%1 has %2 open orders; say which with --order %3</source>
        <translation>%1 tiene %2 encargos abiertos; diga cuál con --order %3</translation>
    </message>
    <message>
        <source>the file cannot be written: %1; check rights and free space</source>
        <translation>no se puede escribir el archivo: %1; revise permisos y espacio libre</translation>
    </message>
    <message>
        <source>something has this name already; name a place that is free</source>
        <translation>algo tiene ya este nombre; indique un lugar libre</translation>
    </message>
    <message>
        <source>this is the ledger of the camp itself; name another one</source>
        <translation>este es el registro del propio campamento; indique otro</translation>
    </message>
    <message>
        <source>nothing in the box is better for this person</source>
        <translation>nada en la caja es mejor para esta persona</translation>
    </message>
    <message>
        <source>loses no more than the best for this person; others need that one more</source>
        <translation>no pierde más que las mejores para esta persona; otros necesitan más aquellas</translation>
    </message>
    <message>
        <source>%1 was promised to %2 before</source>
        <translation>%1 se prometió antes a %2</translation>
    </message>
    <message>
        <source>%1 goes to %2, for whom nothing else will do</source>
        <translation>%1 va a %2, a quien no le sirve otra cosa</translation>
    </message>
    <message>
        <source>%1 goes to %2, so that most are served and all together lose least</source>
        <translation>%1 va a %2, para atender a más personas y que entre todas pierdan menos</translation>
    </message>
    <message>
        <source>nothing that would do is left</source>
        <translation>no queda nada que sirva</translation>
    </message>
    <message>
        <source>what would do goes to others</source>
        <translation>lo que serviría va a otros</translation>
    </message>
    <message>
        <source>what would do goes to %1</source>
        <translation>lo que serviría va a %1</translation>
    </message>
    <message>
        <source>told before, but none is left now</source>
        <translation>dicho antes, pero ya no queda</translation>
    </message>
    <message>
        <source>told before; not planned again</source>
        <translation>dicho antes; no se planifica otra vez</translation>
    </message>
    <message>
        <source>picked by hand: %1</source>
        <translation>elegido a mano: %1</translation>
    </message>
    <message>
        <source>no sample up to %1 tells these shares apart at this risk; allow a larger risk, or take shares that lie further apart</source>
        <translation>ninguna muestra hasta %1 distingue estas proporciones con este riesgo; admita un riesgo mayor, o tome proporciones más separadas</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its draw was taken back</source>
        <translation>no se sorteó el lote %1 en este registro; esta hoja es de otro campamento, o su sorteo se deshizo</translation>
    </message>
    <message>
        <source>the results of this lot are in already, entry %1; to enter them anew take that one back first with `quarterstep record entered-in-error --entry`</source>
        <translation>los resultados de este lote ya están, anotación %1; para anotarlos de nuevo deshaga antes esa con `quarterstep record entered-in-error --entry`</translation>
    </message>
    <message>
        <source>this row is of the lot %1, the first one of %2; enter each lot by itself</source>
        <translation>esta fila es del lote %1, la primera del %2; anote cada lote por separado</translation>
    </message>
    <message>
        <source>this lot has %1 rows, spares included; there is no row %2</source>
        <translation>este lote tiene %1 filas, con las de reserva; no hay fila %2</translation>
    </message>
    <message>
        <source>nothing was handed over here in those days whose pair is recorded; there is nothing to draw from</source>
        <translation>en esos días no se entregó aquí nada cuyas gafas consten; no hay de dónde sortear</translation>
    </message>
    <message>
        <source>the plan reads %1 pairs and only %2 were handed over; read all of them (--sample %2), or take more days into the lot</source>
        <translation>el plan lee %1 gafas y solo se entregaron %2; léalas todas (--sample %2), o tome más días en el lote</translation>
    </message>
    <message>
        <source>no lot was drawn here yet; `quarterstep audit draw` does</source>
        <translation>aún no se sorteó ningún lote aquí; `quarterstep audit draw` lo hace</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger</source>
        <translation>no se sorteó el lote %1 en este registro</translation>
    </message>
    <message>
        <source>no row of the worksheet is filled in</source>
        <translation>ninguna fila de la hoja está rellena</translation>
    </message>
    <message>
        <source>the demand is %1 person; plan from more: nothing can be said of who comes next</source>
        <translation>la demanda es de %1 persona; planifique con más: no se puede decir nada de quién vendrá</translation>
    </message>
    <message>
        <source>the budget is 0: nothing is bought; give --budget</source>
        <translation>el presupuesto es 0: no se compra nada; indique --budget</translation>
    </message>
    <message>
        <source>nobody of this demand can be served by any line on offer; nothing is bought</source>
        <translation>nadie de esta demanda puede ser atendido con ninguna línea ofrecida; no se compra nada</translation>
    </message>
    <message>
        <source>no pack on offer is within the budget, the weight and the boxes; nothing is bought</source>
        <translation>ningún paquete ofrecido cabe en el presupuesto, el peso y las cajas; no se compra nada</translation>
    </message>
    <message>
        <source>what is on hand serves whoever can be served; nothing is bought</source>
        <translation>lo que hay atiende a todos los que se puede atender; no se compra nada</translation>
    </message>
    <message>
        <source>the library for PINs cannot be used here</source>
        <translation>la biblioteca para los PIN no se puede usar aquí</translation>
    </message>
    <message>
        <source>a PIN has %1 to %2 characters; nothing was written</source>
        <translation>un PIN tiene de %1 a %2 caracteres; no se escribió nada</translation>
    </message>
    <message>
        <source>there is not enough memory to keep a PIN; close other programs</source>
        <translation>no hay memoria suficiente para guardar un PIN; cierre otros programas</translation>
    </message>
    <message>
        <source>nobody of this demand can be served from this box; no day was simulated</source>
        <translation>nadie de esta demanda puede ser atendido con esta caja; no se simuló ningún día</translation>
    </message>
    <message>
        <source>after the colon stands how many lie in each bin, then centres, bin or round: write for example &quot;: 10 centres 62 bin A&quot;</source>
        <translation>tras los dos puntos va cuántas hay por casilla, luego centres, bin o round: escriba por ejemplo &quot;: 10 centres 62 bin A&quot;</translation>
    </message>
    <message>
        <source>%1 is not a size in millimetres; write for example 62</source>
        <translation>%1 no es un tamaño en milímetros; escriba por ejemplo 62</translation>
    </message>
    <message>
        <source>a ready-made pair with a cylinder needs its axis; write for example -1.00 -0.50 x 90</source>
        <translation>unas gafas premontadas con cilindro necesitan su eje; escriba por ejemplo -1.00 -0.50 x 90</translation>
    </message>
    <message>
        <source>from %1 to %2 is no whole number of steps of %3; write spheres and a step that meets the last one</source>
        <translation>de %1 a %2 no es un número entero de pasos de %3; escriba esferas y un paso que llegue a la última</translation>
    </message>
    <message>
        <source>%1 stands in an earlier tray already; put the counts together, or give the two different centres</source>
        <translation>%1 ya está en una bandeja anterior; sume los números, o dé a las dos centros distintos</translation>
    </message>
    <message>
        <source>a frame is given by its lens and bridge in millimetres; write for example frame 44-18: 12</source>
        <translation>una montura se da por su lente y puente en milímetros; escriba por ejemplo frame 44-18: 12</translation>
    </message>
    <message>
        <source>a tray is written as powers, a colon and a count: for example &quot;near +1.00 to +3.50 by 0.50: 10&quot;</source>
        <translation>una bandeja se escribe con potencias, dos puntos y un número: por ejemplo &quot;near +1.00 to +3.50 by 0.50: 10&quot;</translation>
    </message>
    <message>
        <source>these trays make more than %1 lines of stock</source>
        <translation>estas bandejas dan más de %1 líneas de existencias</translation>
    </message>
    <message>
        <source>the camp has no name yet; give it one</source>
        <translation>el campamento aún no tiene nombre; dele uno</translation>
    </message>
    <message>
        <source>nothing is described yet; write a tray a line</source>
        <translation>aún no hay nada descrito; escriba una bandeja por línea</translation>
    </message>
    <message>
        <source>this folder cannot be made: %1</source>
        <translation>no se puede crear esta carpeta: %1</translation>
    </message>
    <message>
        <source>this folder has a stock.yaml already; nothing was written: open the folder, or choose another one</source>
        <translation>esta carpeta ya tiene stock.yaml; no se escribió nada: abra la carpeta o elija otra</translation>
    </message>
    <message>
        <source>%1 does not wait for that purpose</source>
        <translation>%1 no espera para ese uso</translation>
    </message>
    <message>
        <source>this box has no such lines any more</source>
        <translation>esta caja ya no tiene esas líneas</translation>
    </message>
    <message>
        <source>say why another pair than the one planned</source>
        <translation>diga por qué otras gafas que las planeadas</translation>
    </message>
    <message>
        <source>none is left, or what is left was promised to others</source>
        <translation>no queda ninguna, o lo que queda se prometió a otros</translation>
    </message>
    <message>
        <source>no mismatch, so there is no run between two of them to draw</source>
        <translation>ninguna discordancia, así que no hay serie entre dos que dibujar</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; there is no run of good ones to draw</source>
        <translation>cada entrega es una discordancia; no hay serie de buenas que dibujar</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; a p-chart has no limits then</source>
        <translation>cada entrega es una discordancia; un gráfico p no tiene entonces límites</translation>
    </message>
    <message>
        <source>no mismatch; a p-chart has no limits then</source>
        <translation>ninguna discordancia; un gráfico p no tiene entonces límites</translation>
    </message>
    <message>
        <source>a p-chart compares groups over time, and there are not two yet</source>
        <translation>un gráfico p compara grupos en el tiempo, y aún no hay dos</translation>
    </message>
    <message>
        <source>%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could show at this share that things got better; look at the g-chart</source>
        <translation>%1 de %2 grupos tienen menos de las %3 entregas con que un gráfico p podría mostrar una mejora con esta proporción; mire el gráfico g</translation>
    </message>
    <message>
        <source>%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart</source>
        <translation>%1 de %2 grupos no tienen discordancias, un cuarto o más; mire el gráfico g</translation>
    </message>
    <message>
        <source>worn when seen</source>
        <translation>puestas al revisar</translation>
    </message>
    <message>
        <source>carried, not worn when seen</source>
        <translation>las traía, sin llevarlas puestas</translation>
    </message>
    <message>
        <source>left at home</source>
        <translation>dejadas en casa</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>rotas</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdidas</translation>
    </message>
    <message>
        <source>not worn any more</source>
        <translation>ya no se usan</translation>
    </message>
    <message>
        <source>the person was not met</source>
        <translation>no se encontró a la persona</translation>
    </message>
    <message>
        <source>after some weeks</source>
        <translation>tras unas semanas</translation>
    </message>
    <message>
        <source>after three to four months</source>
        <translation>tras tres o cuatro meses</translation>
    </message>
    <message>
        <source>after six months</source>
        <translation>tras seis meses</translation>
    </message>
    <message>
        <source>the same person had a pair for %1 by entry %2 already</source>
        <translation>la misma persona ya tenía gafas para %1 por la anotación %2</translation>
    </message>
    <message>
        <source>%1 entries were taken back at one place on one day</source>
        <translation>%1 anotaciones se deshicieron en un mismo lugar en un día</translation>
    </message>
    <message>
        <source>line %1: counted %2 against the book</source>
        <translation>línea %1: contadas %2 frente al registro</translation>
    </message>
    <message>
        <source>line %1 was later put aside (%2); this pair was given before</source>
        <translation>la línea %1 se apartó más tarde (%2); estas gafas se dieron antes</translation>
    </message>
    <message>
        <source>the time of this entry is later than now</source>
        <translation>la hora de esta anotación es posterior a la actual</translation>
    </message>
    <message>
        <source>entered as not collected</source>
        <translation>anotado como no recogido</translation>
    </message>
    <message>
        <source>a letter was to be written beside this hand-over; none is recorded</source>
        <translation>debía escribirse una carta con esta entrega; no consta ninguna</translation>
    </message>
    <message>
        <source>checked and waiting for more than %1 days</source>
        <translation>comprobadas y en espera más de %1 días</translation>
    </message>
    <message>
        <source>given until the order %1 comes, more than %2 days ago</source>
        <translation>dadas hasta que llegue el encargo %1, hace más de %2 días</translation>
    </message>
    <message>
        <source>refused: %1 of %2 read failed, more than the %4 allowed among %3</source>
        <translation>rechazado: fallaron %1 de %2 leídas, más de las %4 admitidas entre %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no more than the %4 allowed among %3</source>
        <translation>aceptado: fallaron %1 de %2 leídas; aunque fallaran las %5 sin leer, no serían más de las %4 admitidas entre %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed, no more than the %4 allowed among %3</source>
        <translation>aceptado: fallaron %1 de %2 leídas, no más de las %4 admitidas entre %3</translation>
    </message>
    <message>
        <source>open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read</source>
        <translation>abierto: fallaron %1 de %2 leídas, se admiten %4 entre %3; faltan %5 gafas por leer</translation>
    </message>
    <message>
        <source>this pair may be given only with the acuity read with it; none was recorded</source>
        <translation>estas gafas solo se pueden dar con la agudeza leída con ellas; no consta ninguna</translation>
    </message>
    <message>
        <source>by the record nothing was needed for this purpose</source>
        <translation>según lo anotado no hacía falta nada para este uso</translation>
    </message>
    <message>
        <source>the centres of this pair were assumed, not measured</source>
        <translation>los centros de estas gafas se supusieron, no se midieron</translation>
    </message>
    <message>
        <source>the PD was not measured; prism is judged at its worst likely value</source>
        <translation>no se midió la DP; el prisma se evalúa en su peor valor probable</translation>
    </message>
    <message>
        <source>the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths</source>
        <translation>la anotación dice %1, evaluada de nuevo es %2; el coste era %3 y es %4 milésimas</translation>
    </message>
    <message>
        <source>right eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>ojo derecho: %1 con estas gafas, %2 logMAR peor de lo previsto</translation>
    </message>
    <message>
        <source>left eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>ojo izquierdo: %1 con estas gafas, %2 logMAR peor de lo previsto</translation>
    </message>
    <message>
        <source>right eye: read %1, recorded %2</source>
        <translation>ojo derecho: leído %1, anotado %2</translation>
    </message>
    <message>
        <source>left eye: read %1, recorded %2</source>
        <translation>ojo izquierdo: leído %1, anotado %2</translation>
    </message>
    <message>
        <source>%1 was in the box (bin %2) and would have cost %3 logMAR less</source>
        <translation>%1 estaba en la caja (casilla %2) y habría costado %3 logMAR menos</translation>
    </message>
    <message>
        <source>outside a limit, no reason given</source>
        <translation>fuera de un límite, sin motivo</translation>
    </message>
    <message>
        <source>see the person again; read the pair with the focimeter</source>
        <translation>vea otra vez a la persona; lea las gafas con el frontofocómetro</translation>
    </message>
    <message>
        <source>outside a limit, with a reason</source>
        <translation>fuera de un límite, con motivo</translation>
    </message>
    <message>
        <source>read the reasons together; where one repeats, change stock or rules</source>
        <translation>lea los motivos juntos; si uno se repite, cambie existencias o reglas</translation>
    </message>
    <message>
        <source>a clearly better pair was in the box</source>
        <translation>en la caja había gafas claramente mejores</translation>
    </message>
    <message>
        <source>look at the bin named: is it reachable, labelled, in its place?</source>
        <translation>mire la casilla indicada: ¿se alcanza, tiene etiqueta, está en su sitio?</translation>
    </message>
    <message>
        <source>the pair is off its label</source>
        <translation>las gafas no son como su etiqueta</translation>
    </message>
    <message>
        <source>quarantine the line, read ten pieces, tell the supplier</source>
        <translation>ponga la línea en cuarentena, lea diez piezas, avise al proveedor</translation>
    </message>
    <message>
        <source>acuity with the pair worse than predicted</source>
        <translation>agudeza con las gafas peor de lo previsto</translation>
    </message>
    <message>
        <source>refract again; where it repeats, look at the refraction of the day</source>
        <translation>refracte otra vez; si se repite, mire la refracción de ese día</translation>
    </message>
    <message>
        <source>on trial, no acuity recorded</source>
        <translation>a prueba, sin agudeza anotada</translation>
    </message>
    <message>
        <source>call the person back and read the acuity with the pair</source>
        <translation>llame a la persona y tome la agudeza con las gafas</translation>
    </message>
    <message>
        <source>nothing was needed by the record</source>
        <translation>según lo anotado no hacía falta nada</translation>
    </message>
    <message>
        <source>look at what is prescribed to whom; a pair not needed is one that somebody lacks</source>
        <translation>mire qué se prescribe y a quién; las gafas que no hacen falta le faltan a alguien</translation>
    </message>
    <message>
        <source>no check recorded</source>
        <translation>ninguna comprobación anotada</translation>
    </message>
    <message>
        <source>record the four checks at hand-over; draw a sample of these for the bench</source>
        <translation>anote las cuatro comprobaciones al entregar; saque de ellas una muestra para el banco</translation>
    </message>
    <message>
        <source>PD or centres not measured</source>
        <translation>DP o centros sin medir</translation>
    </message>
    <message>
        <source>measure the PD of everybody and the centres of every line from 1.50 D up</source>
        <translation>mida la DP de todos y los centros de cada línea desde 1.50 D</translation>
    </message>
    <message>
        <source>given from a line in quarantine</source>
        <translation>dadas de una línea en cuarentena</translation>
    </message>
    <message>
        <source>read the pair with the focimeter, or exchange it</source>
        <translation>lea las gafas con el frontofocómetro, o cámbielas</translation>
    </message>
    <message>
        <source>a temporary pair never replaced</source>
        <translation>gafas provisionales nunca sustituidas</translation>
    </message>
    <message>
        <source>ask the laboratory for the order, and the person to come</source>
        <translation>pregunte al laboratorio por el encargo, y pida a la persona que venga</translation>
    </message>
    <message>
        <source>an order not collected</source>
        <translation>un encargo sin recoger</translation>
    </message>
    <message>
        <source>send word to the person; bring the pair to the next visit</source>
        <translation>avise a la persona; lleve las gafas a la próxima visita</translation>
    </message>
    <message>
        <source>a letter of referral not written</source>
        <translation>una carta de derivación sin escribir</translation>
    </message>
    <message>
        <source>write it now</source>
        <translation>escríbala ahora</translation>
    </message>
    <message>
        <source>handed over twice for one purpose</source>
        <translation>entregado dos veces para un mismo uso</translation>
    </message>
    <message>
        <source>count the line; where one piece is too many, take the second entry back</source>
        <translation>cuente la línea; si sobra una pieza, deshaga la segunda anotación</translation>
    </message>
    <message>
        <source>many corrections on one day</source>
        <translation>muchas correcciones en un día</translation>
    </message>
    <message>
        <source>ask what was difficult that day: light, queue, a new hand</source>
        <translation>pregunte qué fue difícil ese día: luz, fila, persona nueva</translation>
    </message>
    <message>
        <source>a count differed from the book</source>
        <translation>un recuento difería del registro</translation>
    </message>
    <message>
        <source>look for a line that differs the other way; it is likely beside it</source>
        <translation>busque una línea que difiera al revés; probablemente está al lado</translation>
    </message>
    <message>
        <source>the record disagrees with what was measured beside it</source>
        <translation>lo anotado no concuerda con lo medido al lado</translation>
    </message>
    <message>
        <source>have the card read again by somebody who has not seen the record</source>
        <translation>haga leer otra vez la ficha a alguien que no haya visto lo anotado</translation>
    </message>
    <message>
        <source>judged again, the entry says something else</source>
        <translation>evaluada de nuevo, la anotación dice otra cosa</translation>
    </message>
    <message>
        <source>keep this ledger as it is and tell the makers of the program</source>
        <translation>guarde este registro como está y avise a los autores del programa</translation>
    </message>
    <message>
        <source>the rules of the time are missing</source>
        <translation>faltan las reglas de entonces</translation>
    </message>
    <message>
        <source>put the rules.yaml of that time into a copy of the camp and audit there</source>
        <translation>ponga el rules.yaml de entonces en una copia del campamento y audite allí</translation>
    </message>
    <message>
        <source>the record is not there to judge by</source>
        <translation>no hay datos anotados con que evaluar</translation>
    </message>
    <message>
        <source>nothing: the person was forgotten, or the entry was written before records were kept</source>
        <translation>nada: se olvidó a la persona, o la anotación es de antes de guardarse los datos</translation>
    </message>
    <message>
        <source>an entry from the future</source>
        <translation>una anotación del futuro</translation>
    </message>
    <message>
        <source>set the clock of that station right</source>
        <translation>ponga en hora el reloj de ese puesto</translation>
    </message>
    <message>
        <source>neither power, fit, acuity nor instructions are recorded</source>
        <translation>no constan potencia, ajuste, agudeza ni instrucciones</translation>
    </message>
    <message>
        <source>the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml</source>
        <translation>las reglas con la huella %1 (perfil %2) no están ni en el registro ni en rules.yaml</translation>
    </message>
    <message>
        <source>the pair as it was judged, or part of the prescription, is not recorded</source>
        <translation>no constan las gafas como se evaluaron, o parte de la prescripción</translation>
    </message>
    <message>
        <source>the prescription is not recorded or was forgotten</source>
        <translation>la prescripción no consta o se olvidó</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it fits %2</source>
        <translation>anotado %1; lo medido al lado corresponde a %2</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it does not fit</source>
        <translation>anotado %1; lo medido al lado no corresponde</translation>
    </message>
    <message>
        <source>meant as it is</source>
        <translation>querido tal como está</translation>
    </message>
    <message>
        <source>the sign of a sphere</source>
        <translation>el signo de una esfera</translation>
    </message>
    <message>
        <source>the sign of a cylinder</source>
        <translation>el signo de un cilindro</translation>
    </message>
    <message>
        <source>a transposition without the axis</source>
        <translation>una transposición sin el eje</translation>
    </message>
    <message>
        <source>a transposition without the sphere</source>
        <translation>una transposición sin la esfera</translation>
    </message>
    <message>
        <source>an axis off by 90 degrees</source>
        <translation>un eje desviado 90 grados</translation>
    </message>
    <message>
        <source>an axis read as its mirror image</source>
        <translation>un eje leído como en espejo</translation>
    </message>
    <message>
        <source>digits of an axis</source>
        <translation>cifras de un eje</translation>
    </message>
    <message>
        <source>sphere and cylinder exchanged</source>
        <translation>esfera y cilindro intercambiados</translation>
    </message>
    <message>
        <source>a decimal point in another place</source>
        <translation>un punto decimal en otro lugar</translation>
    </message>
    <message>
        <source>a power misread by a step or two</source>
        <translation>una potencia mal leída por uno o dos pasos</translation>
    </message>
    <message>
        <source>the addition put on the distance power</source>
        <translation>la adición puesta sobre la potencia de lejos</translation>
    </message>
    <message>
        <source>right and left exchanged in the record</source>
        <translation>derecho e izquierdo intercambiados en lo anotado</translation>
    </message>
    <message>
        <source>the right eye written for the left as well</source>
        <translation>el ojo derecho escrito también para el izquierdo</translation>
    </message>
    <message>
        <source>the prescription of the person before</source>
        <translation>la prescripción de la persona anterior</translation>
    </message>
    <message>
        <source>the addition left out</source>
        <translation>la adición omitida</translation>
    </message>
    <message>
        <source>the addition taken as the whole near power</source>
        <translation>la adición tomada como potencia de cerca completa</translation>
    </message>
    <message>
        <source>the PD of one eye recorded as that of both</source>
        <translation>la DP de un ojo anotada como la de ambos</translation>
    </message>
    <message>
        <source>the near PD recorded as distance PD</source>
        <translation>la DP de cerca anotada como DP de lejos</translation>
    </message>
    <message>
        <source>the record, in a way that is none of those listed</source>
        <translation>lo anotado, de un modo que no está en la lista</translation>
    </message>
    <message>
        <source>a pair from a bin beside the one meant</source>
        <translation>gafas de una casilla junto a la querida</translation>
    </message>
    <message>
        <source>the power meant, other centres or size</source>
        <translation>la potencia querida, otros centros o tamaño</translation>
    </message>
    <message>
        <source>picked by the sphere, the cylinder left out</source>
        <translation>elegidas por la esfera, sin el cilindro</translation>
    </message>
    <message>
        <source>picked by sphere and whole cylinder</source>
        <translation>elegidas por esfera y cilindro entero</translation>
    </message>
    <message>
        <source>picked by the sphere less half the cylinder</source>
        <translation>elegidas por la esfera menos medio cilindro</translation>
    </message>
    <message>
        <source>the pair for the person&apos;s other purpose</source>
        <translation>las gafas para el otro uso de la persona</translation>
    </message>
    <message>
        <source>the pairs of two persons exchanged</source>
        <translation>las gafas de dos personas intercambiadas</translation>
    </message>
    <message>
        <source>right and left lens exchanged</source>
        <translation>lentes derecha e izquierda intercambiadas</translation>
    </message>
    <message>
        <source>a lens turned when it was mounted</source>
        <translation>una lente girada al montarla</translation>
    </message>
    <message>
        <source>a piece that lay in another line&apos;s bin</source>
        <translation>una pieza que estaba en la casilla de otra línea</translation>
    </message>
    <message>
        <source>another line recorded than given</source>
        <translation>anotada otra línea que la dada</translation>
    </message>
    <message>
        <source>the piece or its lot off the label</source>
        <translation>la pieza o su lote no es como la etiqueta</translation>
    </message>
    <message>
        <source>one pair recorded twice</source>
        <translation>unas gafas anotadas dos veces</translation>
    </message>
    <message>
        <source>another pair than the one meant, in a way not listed</source>
        <translation>otras gafas que las queridas, de un modo que no está en la lista</translation>
    </message>
    <message>
        <source>record and pair meant as they are</source>
        <translation>lo anotado y las gafas, queridos tal como están</translation>
    </message>
    <message>
        <source>entry %1 records the same pair for the same purpose</source>
        <translation>la anotación %1 pone las mismas gafas para el mismo uso</translation>
    </message>
    <message>
        <source>recorded %1; what was read fits %2</source>
        <translation>anotado %1; lo leído corresponde a %2</translation>
    </message>
    <message>
        <source>what was read fits %1; the record says %2</source>
        <translation>lo leído corresponde a %1; lo anotado dice %2</translation>
    </message>
    <message>
        <source>%1 may have been given and another line recorded</source>
        <translation>puede haberse dado %1 y anotado otra línea</translation>
    </message>
    <message>
        <source>line %1 may be off its label</source>
        <translation>la línea %1 puede no ser como su etiqueta</translation>
    </message>
    <message>
        <source>%1 would be suggested by this record</source>
        <translation>con lo anotado se sugeriría %1</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s near need</source>
        <translation>las gafas dadas sirven para la necesidad de cerca de esta persona</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s distance need</source>
        <translation>las gafas dadas sirven para la necesidad de lejos de esta persona</translation>
    </message>
    <message>
        <source>the pair given is a reader of the addition alone</source>
        <translation>las gafas dadas son solo de lectura, con la adición</translation>
    </message>
    <message>
        <source>with right and left lens exchanged the pair fits</source>
        <translation>con las lentes derecha e izquierda intercambiadas las gafas sirven</translation>
    </message>
    <message>
        <source>the pair given fits the person of entry %1, and that one fits here</source>
        <translation>las gafas dadas sirven a la persona de la anotación %1, y aquellas sirven aquí</translation>
    </message>
    <message>
        <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
        <translation>%1 cuesta menos visión que %2: %3 frente a %4 logMAR entre los ojos</translation>
    </message>
    <message>
        <source>%1 is within the limits, or may be tried; %2 is outside one</source>
        <translation>%1 está dentro de los límites, o puede probarse; %2 está fuera de uno</translation>
    </message>
    <message>
        <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
        <translation>%1 es aceptable tal cual; %2 está a prueba hasta escribir la agudeza</translation>
    </message>
    <message>
        <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
        <translation>iguales en visión; %1 tiene menos precauciones que %2: %3 frente a %4</translation>
    </message>
    <message>
        <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
        <translation>iguales en visión y precauciones; %1 se desvía hacia el lado que se rechaza en menos ojos que %2: %3 frente a %4</translation>
    </message>
    <message>
        <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
        <translation>iguales hasta aquí; %1 mantiene los ojos más equilibrados que %2: %3 frente a %4 D de diferencia</translation>
    </message>
    <message>
        <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
        <translation>iguales hasta aquí; %1 tiene menos prisma horizontal que %2: %3 frente a %4 dioptrías prismáticas</translation>
    </message>
    <message>
        <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
        <translation>iguales hasta aquí; de cerca, base interna (%1) va antes que base externa (%2)</translation>
    </message>
    <message>
        <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
        <translation>iguales hasta aquí; la montura de %1 se acerca más al tamaño querido que %2: %3 frente a %4 clases de diferencia</translation>
    </message>
    <message>
        <source>equal so far; %1 is less scarce in the box than %2</source>
        <translation>iguales hasta aquí; %1 escasea menos en la caja que %2</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
        <translation>iguales en todo lo evaluado; %1 son menos piezas que %2: %3 frente a %4</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 comes before %2 by name</source>
        <translation>iguales en todo lo evaluado; %1 va antes que %2 por el nombre</translation>
    </message>
    <message>
        <source>%1 and %2 are the same</source>
        <translation>%1 y %2 son lo mismo</translation>
    </message>
    <message>
        <source>above %1 D the vertex distance must be recorded</source>
        <translation>por encima de %1 D debe anotarse la distancia de vértice</translation>
    </message>
    <message>
        <source>a sphere would leave less cylinder than this lens does</source>
        <translation>una esfera dejaría menos cilindro que esta lente</translation>
    </message>
    <message>
        <source>prism by decentration is the prescriber&apos;s decision</source>
        <translation>el prisma por descentramiento lo decide el prescriptor</translation>
    </message>
    <message>
        <source>PD not taken: judged at the worst end of what is plausible</source>
        <translation>DP sin tomar: se evalúa en el peor extremo de lo plausible</translation>
    </message>
    <message>
        <source>the centres of this pair are assumed, not measured</source>
        <translation>los centros de estas gafas son supuestos, no medidos</translation>
    </message>
    <message>
        <source>heights of the centres not measured</source>
        <translation>alturas de los centros sin medir</translation>
    </message>
    <message>
        <source>cylinder left over</source>
        <translation>cilindro restante</translation>
    </message>
    <message>
        <source>cylinder left over %1 D, limit %2 D</source>
        <translation>cilindro restante %1 D, límite %2 D</translation>
    </message>
    <message>
        <source>%1 D of cylinder left over</source>
        <translation>queda %1 D de cilindro</translation>
    </message>
    <message>
        <source>difference between the eyes&apos; needs</source>
        <translation>diferencia entre las necesidades de los ojos</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D, limit %2 D for one power in both lenses</source>
        <translation>los ojos difieren %1 D, límite %2 D para una misma potencia en ambas lentes</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D</source>
        <translation>los ojos difieren %1 D</translation>
    </message>
    <message>
        <source>size of the power</source>
        <translation>tamaño de la potencia</translation>
    </message>
    <message>
        <source>power %1 D, limit %2 D</source>
        <translation>potencia %1 D, límite %2 D</translation>
    </message>
    <message>
        <source>high power: %1 D</source>
        <translation>potencia alta: %1 D</translation>
    </message>
    <message>
        <source>blur strength</source>
        <translation>fuerza del desenfoque</translation>
    </message>
    <message>
        <source>blur strength %1 D, limit %2 D</source>
        <translation>fuerza del desenfoque %1 D, límite %2 D</translation>
    </message>
    <message>
        <source>blur strength %1 D</source>
        <translation>fuerza del desenfoque %1 D</translation>
    </message>
    <message>
        <source>too much plus</source>
        <translation>demasiado plus</translation>
    </message>
    <message>
        <source>%1 D too much plus, limit %2 D</source>
        <translation>%1 D demasiado plus, límite %2 D</translation>
    </message>
    <message>
        <source>%1 D too much plus</source>
        <translation>%1 D demasiado plus</translation>
    </message>
    <message>
        <source>too much minus or too little plus</source>
        <translation>demasiado minus o muy poco plus</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus, limit %2 D</source>
        <translation>%1 D demasiado minus o muy poco plus, límite %2 D</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus</source>
        <translation>%1 D demasiado minus o muy poco plus</translation>
    </message>
    <message>
        <source>difference between the two lenses</source>
        <translation>diferencia entre las dos lentes</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D, limit %2 D</source>
        <translation>las dos lentes difieren %1 D, límite %2 D</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D</source>
        <translation>las dos lentes difieren %1 D</translation>
    </message>
    <message>
        <source>balance between the eyes</source>
        <translation>equilibrio entre los ojos</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other, limit %2 D</source>
        <translation>un ojo desviado %1 D frente al otro, límite %2 D</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other</source>
        <translation>un ojo desviado %1 D frente al otro</translation>
    </message>
    <message>
        <source>cylinder of the lens beyond the need</source>
        <translation>cilindro de la lente mayor que la necesidad</translation>
    </message>
    <message>
        <source>the lens has %1 D more cylinder than needed, limit %2 D</source>
        <translation>la lente tiene %1 D más de cilindro del necesario, límite %2 D</translation>
    </message>
    <message>
        <source>%1 D more cylinder than needed</source>
        <translation>%1 D más de cilindro del necesario</translation>
    </message>
    <message>
        <source>axis off</source>
        <translation>eje desviado</translation>
    </message>
    <message>
        <source>axis off by %1 degrees, limit %2</source>
        <translation>eje desviado %1 grados, límite %2</translation>
    </message>
    <message>
        <source>axis off by %1 degrees</source>
        <translation>eje desviado %1 grados</translation>
    </message>
    <message>
        <source>horizontal prism</source>
        <translation>prisma horizontal</translation>
    </message>
    <message>
        <source>horizontal prism %1, limit %2</source>
        <translation>prisma horizontal %1, límite %2</translation>
    </message>
    <message>
        <source>horizontal prism %1</source>
        <translation>prisma horizontal %1</translation>
    </message>
    <message>
        <source>vertical prism</source>
        <translation>prisma vertical</translation>
    </message>
    <message>
        <source>vertical prism %1, limit %2</source>
        <translation>prisma vertical %1, límite %2</translation>
    </message>
    <message>
        <source>vertical prism %1</source>
        <translation>prisma vertical %1</translation>
    </message>
    <message>
        <source>centres against PD</source>
        <translation>centros frente a la DP</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD, limit %2 mm</source>
        <translation>centros a %1 mm de la DP, límite %2 mm</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD</source>
        <translation>centros a %1 mm de la DP</translation>
    </message>
    <message>
        <source>vertical imbalance at the reading level</source>
        <translation>desequilibrio vertical a la altura de lectura</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level, limit %2</source>
        <translation>desequilibrio vertical %1 a la altura de lectura, límite %2</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level</source>
        <translation>desequilibrio vertical %1 a la altura de lectura</translation>
    </message>
    <message>
        <source>frame size class</source>
        <translation>clase de tamaño de montura</translation>
    </message>
    <message>
        <source>frame size off by %1 class, limit %2</source>
        <translation>tamaño de montura a %1 clase de diferencia, límite %2</translation>
    </message>
    <message>
        <source>frame size off by %1 class</source>
        <translation>tamaño de montura a %1 clase de diferencia</translation>
    </message>
    <message>
        <source>blur strength at near</source>
        <translation>fuerza del desenfoque de cerca</translation>
    </message>
    <message>
        <source>blur strength at near %1 D, limit %2 D</source>
        <translation>fuerza del desenfoque de cerca %1 D, límite %2 D</translation>
    </message>
    <message>
        <source>blur strength at near %1 D</source>
        <translation>fuerza del desenfoque de cerca %1 D</translation>
    </message>
    <message>
        <source>near power too strong</source>
        <translation>potencia de cerca demasiado fuerte</translation>
    </message>
    <message>
        <source>near power %1 D too strong, limit %2 D</source>
        <translation>potencia de cerca %1 D demasiado fuerte, límite %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too strong</source>
        <translation>potencia de cerca %1 D demasiado fuerte</translation>
    </message>
    <message>
        <source>near power too weak</source>
        <translation>potencia de cerca demasiado débil</translation>
    </message>
    <message>
        <source>near power %1 D too weak, limit %2 D</source>
        <translation>potencia de cerca %1 D demasiado débil, límite %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too weak</source>
        <translation>potencia de cerca %1 D demasiado débil</translation>
    </message>
    <message>
        <source>sphere off</source>
        <translation>esfera desviada</translation>
    </message>
    <message>
        <source>sphere off by %1 D, limit %2 D</source>
        <translation>esfera desviada %1 D, límite %2 D</translation>
    </message>
    <message>
        <source>sphere off by %1 D</source>
        <translation>esfera desviada %1 D</translation>
    </message>
    <message>
        <source>cylinder off</source>
        <translation>cilindro desviado</translation>
    </message>
    <message>
        <source>cylinder off by %1 D, limit %2 D</source>
        <translation>cilindro desviado %1 D, límite %2 D</translation>
    </message>
    <message>
        <source>cylinder off by %1 D</source>
        <translation>cilindro desviado %1 D</translation>
    </message>
    <message>
        <source>axis against the prescription</source>
        <translation>eje frente a la prescripción</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription, limit %2</source>
        <translation>eje a %1 grados de la prescripción, límite %2</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription</source>
        <translation>eje a %1 grados de la prescripción</translation>
    </message>
    <message>
        <source>acuity with the mean sphere</source>
        <translation>agudeza con la esfera media</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR below the full correction, limit %2</source>
        <translation>agudeza con la esfera media %1 logMAR por debajo de la corrección completa, límite %2</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR lower</source>
        <translation>agudeza con la esfera media %1 logMAR más baja</translation>
    </message>
    <message>
        <source>acuity with this pair</source>
        <translation>agudeza con estas gafas</translation>
    </message>
    <message>
        <source>acuity with this pair is %1 logMAR beyond what is asked, limit %2</source>
        <translation>la agudeza con estas gafas pasa en %1 logMAR de lo que se pide, límite %2</translation>
    </message>
    <message>
        <source>tried: acuity %1 logMAR short</source>
        <translation>probadas: a la agudeza le faltan %1 logMAR</translation>
    </message>
    <message>
        <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
        <translation>la probabilidad de que el error real esté en su límite es %1 %: repita las lecturas</translation>
    </message>
    <message>
        <source>sudden loss of sight: eye clinic the same day</source>
        <translation>pérdida súbita de visión: clínica de ojos el mismo día</translation>
    </message>
    <message>
        <source>painful eye: eye clinic the same day</source>
        <translation>ojo doloroso: clínica de ojos el mismo día</translation>
    </message>
    <message>
        <source>red eye: eye clinic the same day</source>
        <translation>ojo rojo: clínica de ojos el mismo día</translation>
    </message>
    <message>
        <source>new flashes or floaters: eye clinic the same day</source>
        <translation>destellos o manchas nuevas: clínica de ojos el mismo día</translation>
    </message>
    <message>
        <source>double vision: eye clinic the same day</source>
        <translation>visión doble: clínica de ojos el mismo día</translation>
    </message>
    <message>
        <source>white pupil: eye clinic the same day</source>
        <translation>pupila blanca: clínica de ojos el mismo día</translation>
    </message>
    <message>
        <source>a child&apos;s squint: refer before glasses are given</source>
        <translation>estrabismo de un niño: derive antes de dar gafas</translation>
    </message>
    <message>
        <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
        <translation>se pidió refracción con cicloplejia: derive antes de dar gafas</translation>
    </message>
    <message>
        <source>lines look bent or broken: eye clinic soon</source>
        <translation>las líneas se ven torcidas o rotas: clínica de ojos pronto</translation>
    </message>
    <message>
        <source>part of the field of view is missing: eye clinic soon</source>
        <translation>falta parte del campo visual: clínica de ojos pronto</translation>
    </message>
    <message>
        <source>halos around lights: eye clinic soon</source>
        <translation>halos alrededor de luces: clínica de ojos pronto</translation>
    </message>
    <message>
        <source>does not reach 6/9 in each eye with the final prescription</source>
        <translation>no llega a 6/9 en cada ojo con la prescripción final</translation>
    </message>
    <message>
        <source>presents worse than 6/60 in an eye, even if glasses help</source>
        <translation>se presenta con menos de 6/60 en un ojo, aunque las gafas ayuden</translation>
    </message>
    <message>
        <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
        <translation>un niño con +3.50 D o más, o 1.50 D de cilindro o más</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.50 D or more</source>
        <translation>menos de 8 años y los ojos difieren 1.50 D o más</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.00 D or more</source>
        <translation>menos de 8 años y los ojos difieren 1.00 D o más</translation>
    </message>
    <message>
        <source>mean sphere beyond 6.00 D</source>
        <translation>esfera media más allá de 6.00 D</translation>
    </message>
    <message>
        <source>may be without its lens (aphakia): vertex distance needed</source>
        <translation>puede estar sin cristalino (afaquia): hace falta la distancia de vértice</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
        <translation>peor que 6/12 con la mejor prescripción y sin mejora con el estenopeico</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription; pinhole not taken</source>
        <translation>peor que 6/12 con la mejor prescripción; estenopeico sin tomar</translation>
    </message>
    <message>
        <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
        <translation>con el estenopeico ve dos líneas o más que con la prescripción final: refracte otra vez</translation>
    </message>
    <message>
        <source>objective reading and final prescription are %1 D apart in mean sphere</source>
        <translation>la lectura objetiva y la prescripción final difieren %1 D en esfera media</translation>
    </message>
    <message>
        <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
        <translation>la prescripción final repite la lectura objetiva en los seis números: ¿se afinó?</translation>
    </message>
    <message>
        <source>under 16: the prescriber&apos;s name stays with the pair, and the guardian is told</source>
        <translation>menos de 16 años: el nombre del prescriptor queda con las gafas, y se informa al tutor</translation>
    </message>
    <message>
        <source>age not recorded: the strictest limits that could apply are used</source>
        <translation>edad sin anotar: se usan los límites más estrictos que podrían aplicarse</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
        <translation>un solo ojo que ve: se aconsejan lentes resistentes a golpes y protección</translation>
    </message>
    <message>
        <source>an objective reading only: a subjective refraction should follow</source>
        <translation>solo una lectura objetiva: debería seguir una refracción subjetiva</translation>
    </message>
    <message>
        <source>the prescription is %1 months old</source>
        <translation>la prescripción tiene %1 meses</translation>
    </message>
    <message>
        <source>symptoms recorded: %1</source>
        <translation>síntomas anotados: %1</translation>
    </message>
    <message>
        <source>PD not taken</source>
        <translation>DP sin tomar</translation>
    </message>
    <message>
        <source>near PD computed from the distance PD, not measured</source>
        <translation>DP de cerca calculada de la DP de lejos, sin medir</translation>
    </message>
    <message>
        <source>an eye with a lens implant: additions differ between the eyes</source>
        <translation>un ojo con lente implantada: las adiciones difieren entre los ojos</translation>
    </message>
    <message>
        <source>above 4.00 D the vertex distance matters: record it</source>
        <translation>por encima de 4.00 D importa la distancia de vértice: anótela</translation>
    </message>
    <message>
        <source>the PD of each eye</source>
        <translation>la DP de cada ojo</translation>
    </message>
    <message>
        <source>the heights in the chosen frame</source>
        <translation>las alturas en la montura elegida</translation>
    </message>
    <message>
        <source>the vertex distance of the refraction</source>
        <translation>la distancia de vértice de la refracción</translation>
    </message>
    <message>
        <source>the frame</source>
        <translation>la montura</translation>
    </message>
    <message>
        <source>the prescriber&apos;s name, for a child</source>
        <translation>el nombre del prescriptor, para un niño</translation>
    </message>
    <message>
        <source>single vision for %1 mm: whole power, nothing to be added</source>
        <translation>monofocal para %1 mm: potencia completa, nada que sumar</translation>
    </message>
    <message>
        <source>centration computed from the distance PD, not measured</source>
        <translation>centrado calculado de la DP de lejos, sin medir</translation>
    </message>
    <message>
        <source>each eye&apos;s PD is half of the binocular one</source>
        <translation>la DP de cada ojo es la mitad de la binocular</translation>
    </message>
    <message>
        <source>balance lens: as its fellow, for looks and weight</source>
        <translation>lente de equilibrio: como la otra, por aspecto y peso</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses are advised</source>
        <translation>un solo ojo que ve: se aconsejan lentes resistentes a golpes</translation>
    </message>
    <message>
        <source>for a child: impact-resistant lenses are advised</source>
        <translation>para un niño: se aconsejan lentes resistentes a golpes</translation>
    </message>
    <message>
        <source>prism as prescribed, each eye its own</source>
        <translation>prisma como se prescribió, cada ojo el suyo</translation>
    </message>
    <message>
        <source>refracted at a vertex distance of %1 mm</source>
        <translation>refracción a una distancia de vértice de %1 mm</translation>
    </message>
    <message>
        <source>from an objective reading only</source>
        <translation>solo de una lectura objetiva</translation>
    </message>
    <message>
        <source>the digits %1 do not go together: the last would be %2, not %3; scan again, or type what stands below the bars</source>
        <translation>las cifras %1 no concuerdan: la última sería %2, no %3; escanee otra vez, o escriba lo que está bajo las barras</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a code; write its thirteen digits (twelve take a 0 before them), or leave the code out</source>
        <translation>&quot;%1&quot; no es un código; escriba sus trece cifras (doce llevan un 0 delante), o deje el código fuera</translation>
    </message>
    <message>
        <source>there is no line %1 in this camp</source>
        <translation>no hay línea %1 en este campamento</translation>
    </message>
    <message>
        <source>near glasses need an addition, or a near power found by trial</source>
        <translation>las gafas de cerca necesitan una adición, o una potencia de cerca hallada por prueba</translation>
    </message>
    <message>
        <source>this purpose needs an addition, or a near power found by trial</source>
        <translation>este uso necesita una adición, o una potencia de cerca hallada por prueba</translation>
    </message>
    <message>
        <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
        <translation>una refracción subjetiva: nunca se dan gafas a un niño solo con una lectura objetiva</translation>
    </message>
    <message>
        <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
        <translation>una adición antes de los 35 años debe confirmarse: agudeza de cerca con ella, o potencia de cerca por prueba</translation>
    </message>
    <message>
        <source>small error and 6/9 or better without glasses</source>
        <translation>error pequeño y 6/9 o mejor sin gafas</translation>
    </message>
    <message>
        <source>glasses gain the better eye less than two lines</source>
        <translation>con gafas el mejor ojo gana menos de dos líneas</translation>
    </message>
    <message>
        <source>reads without spectacles</source>
        <translation>lee sin gafas</translation>
    </message>
    <message>
        <source>reads N6 without spectacles</source>
        <translation>lee N6 sin gafas</translation>
    </message>
    <message>
        <source>the own pair still fits: a spare only</source>
        <translation>las gafas propias aún sirven: solo unas de repuesto</translation>
    </message>
    <message>
        <source>the PD: measure it</source>
        <translation>la DP: mídala</translation>
    </message>
    <message>
        <source>the vertex distance of this prescription: measure it</source>
        <translation>la distancia de vértice de esta prescripción: mídala</translation>
    </message>
    <message>
        <source>nothing in the box for this purpose</source>
        <translation>nada en la caja para este uso</translation>
    </message>
    <message>
        <source>if the prescriber marks the left eye balance, %1 would fit</source>
        <translation>si el prescriptor marca el ojo izquierdo como de equilibrio, serviría %1</translation>
    </message>
    <message>
        <source>if the prescriber marks the right eye balance, %1 would fit</source>
        <translation>si el prescriptor marca el ojo derecho como de equilibrio, serviría %1</translation>
    </message>
    <message>
        <source>%1 is used: clean it and read its power before it is given</source>
        <translation>%1 es usado: límpielo y lea su potencia antes de darlo</translation>
    </message>
    <message>
        <source>%1 fits</source>
        <translation>%1 sirve</translation>
    </message>
    <message>
        <source>try %1 and type the acuity with it</source>
        <translation>pruebe %1 y escriba la agudeza obtenida</translation>
    </message>
    <message>
        <source>a rules profile named %1</source>
        <translation>un perfil de reglas llamado %1</translation>
    </message>
    <message>
        <source>a final prescription for at least one eye</source>
        <translation>una prescripción final para al menos un ojo</translation>
    </message>
    <message>
        <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
        <translation>desde los 65 años un cambio de %1 D de una vez es mucho: caídas; pregunte al prescriptor</translation>
    </message>
    <message>
        <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
        <translation>a %1 D de las gafas propias: si ocurrió en meses, la clínica de ojos busca la causa</translation>
    </message>
    <message>
        <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
        <translation>desde los 65 años cuesta acostumbrarse a un eje oblicuo girado más de 10 grados; pregunte al prescriptor</translation>
    </message>
    <message>
        <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
        <translation>la adición %1 está a más de 0.75 D de toda tabla para esta edad: ¿se midió a %2 mm?</translation>
    </message>
    <message>
        <source>does not read N8 with the near correction: see where the rest is lost</source>
        <translation>no lee N8 con la corrección de cerca: vea dónde se pierde el resto</translation>
    </message>
    <message>
        <source>half the addition is used: no distance was stated for this work</source>
        <translation>se usa la mitad de la adición: no se indicó distancia para este trabajo</translation>
    </message>
    <message>
        <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
        <translation>las gafas propias están en los límites para este uso: quizá solo unas de repuesto</translation>
    </message>
    <message>
        <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
        <translation>un niño hipermétrope sin cicloplejia: la lectura puede ocultar unas 3 D más; decide el prescriptor</translation>
    </message>
    <message>
        <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
        <translation>un niño sin cicloplejia: esas lecturas quedan unas 0.4 D hacia el minus en miopes, más en otros</translation>
    </message>
    <message>
        <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
        <translation>menos de 8 años y miopía más allá de 3.00 D: riesgo de ambliopía</translation>
    </message>
    <message>
        <source>a child&apos;s eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
        <translation>los ojos de un niño difieren 1.00 D o más hacia el plus: riesgo de ambliopía</translation>
    </message>
    <message>
        <source>a child&apos;s cylinders differ by 2.00 D or more: at risk of amblyopia</source>
        <translation>los cilindros de un niño difieren 2.00 D o más: riesgo de ambliopía</translation>
    </message>
    <message>
        <source>would need better acuity with this very pair</source>
        <translation>necesitaría mejor agudeza con estas mismas gafas</translation>
    </message>
    <message>
        <source>would do once the vertex distance is recorded</source>
        <translation>serviría una vez anotada la distancia de vértice</translation>
    </message>
    <message>
        <source>would do if the PD, once measured, is near %1 mm</source>
        <translation>serviría si la DP, una vez medida, se acerca a %1 mm</translation>
    </message>
    <message>
        <source>would do if the prescriber allows prism by decentration</source>
        <translation>serviría si el prescriptor admite prisma por descentramiento</translation>
    </message>
    <message>
        <source>would do with centres %1 mm apart</source>
        <translation>serviría con centros separados %1 mm</translation>
    </message>
    <message>
        <source>would do with both centres at the same height</source>
        <translation>serviría con ambos centros a la misma altura</translation>
    </message>
    <message>
        <source>would do with %1 in both lenses instead of %2</source>
        <translation>serviría con %1 en ambas lentes en lugar de %2</translation>
    </message>
    <message>
        <source>would do with %1 D in both lenses</source>
        <translation>serviría con %1 D en ambas lentes</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the right lens</source>
        <translation>serviría con esfera %1 en la lente derecha</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the left lens</source>
        <translation>serviría con esfera %1 en la lente izquierda</translation>
    </message>
    <message>
        <source>would do with addition %1</source>
        <translation>serviría con adición %1</translation>
    </message>
    <message>
        <source>would do with a lens of its own for each eye: right %1, left %2</source>
        <translation>serviría con una lente propia para cada ojo: derecha %1, izquierda %2</translation>
    </message>
    <message>
        <source>would do with lenses made to the prescription, cylinder included</source>
        <translation>serviría con lentes hechas según la prescripción, con cilindro</translation>
    </message>
    <message>
        <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
        <translation>«%1» no es parte de una agudeza; escríbala como 6/9, 0.67 decimal o logMAR 0.2</translation>
    </message>
    <message>
        <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
        <translation>«%1» no es una agudeza; escriba 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL o NPL</translation>
    </message>
    <message>
        <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
        <translation>«%1» sería logMAR %2; la agudeza está entre logMAR -0.5 y 3: revísela</translation>
    </message>
    <message>
        <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
        <translation>ningún optotipo se lee a %1; escriba primero la distancia de la prueba, como 6/9 o 20/30</translation>
    </message>
    <message>
        <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
        <translation>«%1» no dice su escala; escriba «%1 decimal» o «logMAR %1»</translation>
    </message>
    <message>
        <source>no acuity is written; write 6/9 or leave it out</source>
        <translation>no hay agudeza escrita; escriba 6/9 o déjela fuera</translation>
    </message>
    <message>
        <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
        <translation>«%1» no es una agudeza de cerca; escriba N8, M 1.0 o 1.0M, y detrás «at 40 cm»</translation>
    </message>
    <message>
        <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
        <translation>no se lee la distancia en «%1»; escríbala como «at 40 cm», de 5 a 200 cm</translation>
    </message>
    <message>
        <source>log10(1 + b²): low blur of any kind; no axis and no pupil in it</source>
        <translation>log10(1 + b²): desenfoque bajo de cualquier tipo; sin eje ni pupila</translation>
    </message>
    <message>
        <source>0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place</source>
        <translation>0.017 C² + 0.125 C: cilindro restante C en présbitas, con la esfera media</translation>
    </message>
    <message>
        <source>0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far</source>
        <translation>0.18 a 0.22 logMAR por dioptría de cilindro, con la esfera media, de lejos</translation>
    </message>
    <message>
        <source>one line lost for every 0.25 to 0.5 D of blur</source>
        <translation>una línea perdida por cada 0.25 a 0.5 D de desenfoque</translation>
    </message>
    <message>
        <source>%1 lies outside the powers the set %2 was made for</source>
        <translation>%1 está fuera de las potencias para las que se hizo el conjunto %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2</source>
        <translation>meridiano de la esfera desviado %1, límite %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiano de la esfera desviado %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>sphere meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiano de la esfera desviado %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2</source>
        <translation>meridiano principal más positivo desviado %1, límite %2</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiano principal más positivo desviado %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiano principal más positivo desviado %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2</source>
        <translation>meridiano principal más negativo desviado %1, límite %2</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiano principal más negativo desviado %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiano principal más negativo desviado %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2</source>
        <translation>cilindro desviado %1, límite %2</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2: %3 too much</source>
        <translation>cilindro desviado %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>cylinder off by %1: shown only, the set has no limit for it</source>
        <translation>cilindro desviado %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2</source>
        <translation>eje desviado %1, límite %2</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2: %3 too much</source>
        <translation>eje desviado %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>axis off by %1: shown only, the set has no limit for it</source>
        <translation>eje desviado %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2</source>
        <translation>adición desviada %1, límite %2</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2: %3 too much</source>
        <translation>adición desviada %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>addition off by %1: shown only, the set has no limit for it</source>
        <translation>adición desviada %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2</source>
        <translation>prisma horizontal desviado %1, límite %2</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2: %3 too much</source>
        <translation>prisma horizontal desviado %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>horizontal prism off by %1: shown only, the set has no limit for it</source>
        <translation>prisma horizontal desviado %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2</source>
        <translation>prisma vertical desviado %1, límite %2</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2: %3 too much</source>
        <translation>prisma vertical desviado %1, límite %2: sobra %3</translation>
    </message>
    <message>
        <source>vertical prism off by %1: shown only, the set has no limit for it</source>
        <translation>prisma vertical desviado %1: solo se muestra, el conjunto no tiene límite para ello</translation>
    </message>
    <message>
        <source>there is no tolerance set “%1”; there are: %2</source>
        <translation>no hay conjunto de tolerancias «%1»; hay: %2</translation>
    </message>
    <message>
        <source>the tolerance set “%1” is not enabled: %2</source>
        <translation>el conjunto de tolerancias «%1» no está activado: %2</translation>
    </message>
    <message>
        <source>distance %1 and near %2 differ in cylinder; no addition joins them</source>
        <translation>lejos %1 y cerca %2 difieren en cilindro; ninguna adición los une</translation>
    </message>
    <message>
        <source>near %2 has less plus than distance %1; were they exchanged?</source>
        <translation>cerca %2 tiene menos plus que lejos %1; ¿se intercambiaron?</translation>
    </message>
    <message>
        <source>this text says it is the left eye, and stands for the right</source>
        <translation>este texto dice que es el ojo izquierdo, y está por el derecho</translation>
    </message>
    <message>
        <source>this text says it is the right eye, and stands for the left</source>
        <translation>este texto dice que es el ojo derecho, y está por el izquierdo</translation>
    </message>
    <message>
        <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
        <translation>nada escrito para este ojo; escriba su potencia, o balance, artificial, blind o not measured</translation>
    </message>
    <message>
        <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
        <translation>no hay potencia escrita; escríbala como +2.00, -0.75 o 0.00</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2 or %3</source>
        <translation>%1 no tiene punto decimal; escriba %2 o %3</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2</source>
        <translation>%1 no tiene punto decimal; escriba %2</translation>
    </message>
    <message>
        <source>%1 is beyond %2 D; check the figure and write it again</source>
        <translation>%1 pasa de %2 D; revise la cifra y escríbala otra vez</translation>
    </message>
    <message>
        <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
        <translation>no se lee ninguna potencia en «%1»; escríbala como +2.00, -0.75 o 0.00</translation>
    </message>
    <message>
        <source>cylinder %1 has no sign; write +%1 or -%1</source>
        <translation>el cilindro %1 no tiene signo; escriba +%1 o -%1</translation>
    </message>
    <message>
        <source>%1 has no sign; write +%1 or -%1</source>
        <translation>%1 no tiene signo; escriba +%1 o -%1</translation>
    </message>
    <message>
        <source>addition -%1 is negative; an addition is plus: check it</source>
        <translation>la adición -%1 es negativa; una adición es positiva: revísela</translation>
    </message>
    <message>
        <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
        <translation>el eje %1 está sin cilindro; escriba esfera, cilindro y eje, como -1.00 -0.50 x %1</translation>
    </message>
    <message>
        <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
        <translation>el eje %1 está fuera de 1..180 grados; el mismo meridiano sería %2: revíselo y escríbalo otra vez</translation>
    </message>
    <message>
        <source>cylinder %1 has no axis; write it with its axis, as %1 x 90</source>
        <translation>el cilindro %1 no tiene eje; escríbalo con su eje, como %1 x 90</translation>
    </message>
    <message>
        <source>“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90</source>
        <translation>«%1» no es parte de una prescripción legible; escríbala como -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>two prisms lie in one direction; write their sum once, as 1.5 base in</source>
        <translation>dos prismas van en una misma dirección; escriba su suma una vez, como 1.5 base in</translation>
    </message>
    <message>
        <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
        <translation>no se lee la base del prisma; escriba base in, out, up o down, o base 0..360</translation>
    </message>
    <message>
        <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
        <translation>el prisma %1 no está entre 0 y %2; escriba su tamaño y su base, como 2 base in</translation>
    </message>
    <message>
        <source>too few (%1 read): three or more tell how steady they are</source>
        <translation>muy pocas (%1 leídas): tres o más dicen si son estables</translation>
    </message>
    <message>
        <source>scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>dispersas: las lecturas están a %1 D de su media, el límite es %2 D; %3 de %4 excluidas</translation>
    </message>
    <message>
        <source>steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>estables: las lecturas están a %1 D de su media, el límite es %2 D; %3 de %4 excluidas</translation>
    </message>
    <message>
        <source>take readings until there are three or more; until then a published scatter is used</source>
        <translation>tome lecturas hasta tener tres o más; hasta entonces se usa una dispersión publicada</translation>
    </message>
    <message>
        <source>scattered again: look at the eye&apos;s health (cornea, lens, tears, fixation) before prescribing</source>
        <translation>dispersas otra vez: mire la salud del ojo (córnea, cristalino, lágrima, fijación) antes de prescribir</translation>
    </message>
    <message>
        <source>repeat the readings, with blinks and steady fixation</source>
        <translation>repita las lecturas, con parpadeos y fijación estable</translation>
    </message>
    <message>
        <source>use the mean of the readings kept; the ones left out are shown</source>
        <translation>use la media de las lecturas conservadas; las excluidas se muestran</translation>
    </message>
    <message>
        <source>use the mean as the start of the subjective refraction</source>
        <translation>use la media como inicio de la refracción subjetiva</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere (limit 1) and %2 D in astigmatism (limit 0.5): confirm the final</source>
        <translation>objetiva y final difieren %1 D en esfera media (límite 1) y %2 D en astigmatismo (límite 0.5): confirme la final</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere; up to 0.5 is usual</source>
        <translation>objetiva y final difieren %1 D en esfera media; hasta 0.5 es habitual</translation>
    </message>
    <message>
        <source>objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism</source>
        <translation>objetiva y final concuerdan: difieren %1 D en esfera media, %2 D en astigmatismo</translation>
    </message>
    <message>
        <source>a movement of an entry “%1” names no line</source>
        <translation>un movimiento de una anotación «%1» no nombra ninguna línea</translation>
    </message>
    <message>
        <source>an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 quarantined</source>
        <translation>una anotación «%1» no puede mover la línea %2 en %3 en existencia, %4 reservadas, %5 en cuarentena</translation>
    </message>
    <message>
        <source>an entry “%1” moves at least one line</source>
        <translation>una anotación «%1» mueve al menos una línea</translation>
    </message>
    <message>
        <source>an entry “%1” names a person by the camp code</source>
        <translation>una anotación «%1» nombra a una persona por el código de campamento</translation>
    </message>
    <message>
        <source>“entered-in-error” names the entry it takes back, other kinds none</source>
        <translation>«entered-in-error» nombra la anotación que deshace; los otros tipos, ninguna</translation>
    </message>
    <message>
        <source>an entry “%1” needs “%2”</source>
        <translation>una anotación «%1» necesita «%2»</translation>
    </message>
    <message>
        <source>entry %1 is the first that is not as it was written: %2; the audit stops before it</source>
        <translation>la anotación %1 es la primera que no está como se escribió: %2; la auditoría se detiene antes de ella</translation>
    </message>
    <message>
        <source>%1 stands in the waiting list already; the row is left out</source>
        <translation>%1 ya está en la lista de espera; la fila se omite</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM, %1, cannot be started: %2</source>
        <translation>el programa que lee y escribe DICOM, %1, no se puede iniciar: %2</translation>
    </message>
    <message>
        <source>%1 is there already; name a new file, or move that one away</source>
        <translation>%1 ya existe; indique un archivo nuevo, o aparte ese</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to write</source>
        <translation>la prescripción de %1 no está completa; no hay encargo que escribir</translation>
    </message>
    <message>
        <source>%1 is this site; name the other one</source>
        <translation>%1 es esta sede; indique la otra</translation>
    </message>
    <message>
        <source>entry %1 is not a transfer in the air; `quarterstep transfer` lists them</source>
        <translation>la anotación %1 no es una transferencia en camino; `quarterstep transfer` las lista</translation>
    </message>
    <message>
        <source>%1 has several purposes, or none that is complete; take them up in the list and choose the one that was ordered</source>
        <translation>%1 tiene varios usos, o ninguno completo; tómelos en la lista y elija el que se encargó</translation>
    </message>
    <message>
        <source>%1 is not in the list; load the table in which the prescription stands</source>
        <translation>%1 no está en la lista; cargue la tabla donde está la prescripción</translation>
    </message>
    <message>
        <source>the focimeter reads %1 right, the pair has %2</source>
        <translation>el frontofocómetro lee %1 a la derecha, las gafas tienen %2</translation>
    </message>
    <message>
        <source>the focimeter reads %1 left, the pair has %2</source>
        <translation>el frontofocómetro lee %1 a la izquierda, las gafas tienen %2</translation>
    </message>
    <message>
        <source>this is not the PIN of the %1; nothing was written</source>
        <translation>este no es el PIN de esta función: %1; no se escribió nada</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM gave no answer that is understood</source>
        <translation>el programa que lee y escribe DICOM no dio ninguna respuesta comprensible</translation>
    </message>
    <message>
        <source>rules.yaml is not as it was when this camp was opened; open it again</source>
        <translation>rules.yaml no está como cuando se abrió este campamento; ábralo de nuevo</translation>
    </message>
    <message>
        <source>this is no DICOM file: the letters DICM do not stand at byte 128</source>
        <translation>esto no es un archivo DICOM: las letras DICM no están en el byte 128</translation>
    </message>
    <message>
        <source>this is too large for a refraction: %1 bytes, %2 items</source>
        <translation>esto es demasiado grande para una refracción: %1 bytes, %2 elementos</translation>
    </message>
    <message>
        <source>the DICOM file is broken, or neither explicit nor implicit little endian: a length points out of it, or a part is not understood</source>
        <translation>el archivo DICOM está dañado, o no es little endian explícito ni implícito: una longitud apunta fuera de él, o una parte no se entiende</translation>
    </message>
    <message>
        <source>the DICOM file is broken: %1</source>
        <translation>el archivo DICOM está dañado: %1</translation>
    </message>
    <message>
        <source>the object &quot;%1&quot; is none of lensometry, autorefraction, subjective refraction or visual acuity</source>
        <translation>el objeto «%1» no es de lensometría, autorrefracción, refracción subjetiva ni agudeza visual</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>no se usa: %1</translation>
    </message>
    <message>
        <source>%1 of the %2 eye cannot be used as it stands</source>
        <translation>%1 del ojo %2 no se puede usar tal como está</translation>
    </message>
    <message>
        <source>there is a second refraction of %1; give only the one that counts</source>
        <translation>hay una segunda refracción de %1; dé solo la que vale</translation>
    </message>
    <message>
        <source>nothing is stated for the %1 eye; ask for it: a power, or that it is a balance lens, artificial, blind or not measured</source>
        <translation>no se indica nada para el ojo %1; pídalo: una potencia, o que es lente de equilibrio, artificial, ciego o no medido</translation>
    </message>
    <message>
        <source>there is a second reading of the %1 eye of %2; give only one</source>
        <translation>hay una segunda lectura del ojo %1 de %2; dé solo una</translation>
    </message>
    <message>
        <source>an acuity is kept without being used: &quot;%1&quot; at %2 is none that the table has</source>
        <translation>una agudeza se guarda sin usarse: «%1» a %2 no es ninguna que tenga la tabla</translation>
    </message>
    <message>
        <source>there is no subjective refraction of %1; what is here is no prescription</source>
        <translation>no hay refracción subjetiva de %1; lo que hay aquí no es una prescripción</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a patient id: at most 64 characters, no backslash</source>
        <translation>«%1» no puede ser un código de paciente: como mucho 64 caracteres, sin barra invertida</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot; stands in line %2 already; give each row a code of its own</source>
        <translation>la persona «%1» ya está en la línea %2; dé a cada fila un código propio</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write it as -1.25</source>
        <translation>«%1» no es un número; escríbalo como -1.25</translation>
    </message>
    <message>
        <source>%1 is outside -%2 to %2</source>
        <translation>%1 está fuera de -%2 a %2</translation>
    </message>
    <message>
        <source>%1 is finer than a thousandth; round it</source>
        <translation>%1 es más fino que una milésima; redondéelo</translation>
    </message>
    <message>
        <source>%1 of %2 stays here: it names people or is in their own words</source>
        <translation>%1 de %2 se queda aquí: nombra a personas o está en sus propias palabras</translation>
    </message>
    <message>
        <source>the eye is &quot;%1&quot;; right or left is wanted</source>
        <translation>el ojo es «%1»; se espera right o left</translation>
    </message>
    <message>
        <source>there is a second lens for the %1 eye; a resource for each purpose is understood, with one lens an eye</source>
        <translation>hay una segunda lente para el ojo %1; se entiende un recurso por uso, con una lente por ojo</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; a number without quotes is wanted, as -1.25</source>
        <translation>%1 es «%2»; se espera un número sin comillas, como -1.25</translation>
    </message>
    <message>
        <source>the sphere of the %1 eye is not stated; that is not zero: write 0.00 for plano, or balance, artificial, blind or not measured as the note</source>
        <translation>la esfera del ojo %1 no se indica; eso no es cero: escriba 0.00 si es plano, o balance, artificial, blind o not measured como nota</translation>
    </message>
    <message>
        <source>axis %1 is not a whole number of degrees</source>
        <translation>el eje %1 no es un número entero de grados</translation>
    </message>
    <message>
        <source>prism is a list of amounts and bases</source>
        <translation>prism es una lista de valores y bases</translation>
    </message>
    <message>
        <source>the prism %1 is below zero; turn its base instead</source>
        <translation>el prisma %1 está por debajo de cero; invierta su base</translation>
    </message>
    <message>
        <source>the base is &quot;%1&quot;; up, down, in or out is wanted</source>
        <translation>la base es «%1»; se espera up, down, in o out</translation>
    </message>
    <message>
        <source>&quot;%1&quot; inside a prism is not used</source>
        <translation>«%1» dentro de un prisma no se usa</translation>
    </message>
    <message>
        <source>the product is not coded as lens or contact; it is read as a spectacle lens</source>
        <translation>el producto no está codificado como lens ni contact; se lee como lente de gafas</translation>
    </message>
    <message>
        <source>axis %1 of %2 leaves as %3: FHIR takes whole degrees</source>
        <translation>el eje %1 de %2 sale como %3: FHIR admite grados enteros</translation>
    </message>
    <message>
        <source>%1 may change what the prescription means, and is not understood; ask for it without</source>
        <translation>%1 puede cambiar lo que significa la prescripción, y no se entiende; pídala sin ello</translation>
    </message>
    <message>
        <source>the status is &quot;%1&quot;; active is wanted</source>
        <translation>el estado es «%1»; se espera active</translation>
    </message>
    <message>
        <source>meta.%1 is left out: it belongs to the sender&apos;s copy</source>
        <translation>meta.%1 se omite: pertenece a la copia del remitente</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole date; how old the prescription is stays open</source>
        <translation>«%1» no es una fecha completa; no se sabe de cuándo es la prescripción</translation>
    </message>
    <message>
        <source>the narrative is left out: it repeats what is coded</source>
        <translation>el texto narrativo se omite: repite lo que está codificado</translation>
    </message>
    <message>
        <source>the resource %1 is left out: only VisionPrescription and its measures are read</source>
        <translation>el recurso %1 se omite: solo se leen VisionPrescription y sus medidas</translation>
    </message>
    <message>
        <source>of an observation left out: %1</source>
        <translation>de una observación se omite: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: it was entered in error</source>
        <translation>la observación %1 de %2 se omite: se anotó por error</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: its code is not known here</source>
        <translation>la observación %1 de %2 se omite: aquí no se conoce su código</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: something in it may change its meaning</source>
        <translation>la observación %1 de %2 se omite: algo en ella puede cambiar su significado</translation>
    </message>
    <message>
        <source>a measure without a code is left out: &quot;%1&quot;</source>
        <translation>una medida sin código se omite: «%1»</translation>
    </message>
    <message>
        <source>this is XML; ask for the same in JSON (application/fhir+json)</source>
        <translation>esto es XML; pida lo mismo en JSON (application/fhir+json)</translation>
    </message>
    <message>
        <source>this is no resource of FHIR: resourceType is missing</source>
        <translation>esto no es un recurso de FHIR: falta resourceType</translation>
    </message>
    <message>
        <source>of the Bundle left out: %1; it belongs to the sender&apos;s envelope</source>
        <translation>del Bundle se omite: %1; pertenece al sobre del remitente</translation>
    </message>
    <message>
        <source>there is no prescription for spectacles to take in here</source>
        <translation>aquí no hay ninguna prescripción de gafas que recibir</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: it is for contact lenses, whose powers and curves are no spectacles&apos;</source>
        <translation>la prescripción de %1 se omite: es de lentes de contacto, cuyas potencias y curvas no son las de unas gafas</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: its status is %2</source>
        <translation>la prescripción de %1 se omite: su estado es %2</translation>
    </message>
    <message>
        <source>kept without being used: %1</source>
        <translation>se guarda sin usarse: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: no prescription of theirs is taken in</source>
        <translation>la observación %1 de %2 se omite: no se recibe ninguna prescripción de esa persona</translation>
    </message>
    <message>
        <source>the column fhir.%1 of %2 is left out: its cell is no JSON</source>
        <translation>la columna fhir.%1 de %2 se omite: su celda no es JSON</translation>
    </message>
    <message>
        <source>each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>cada línea es un objeto, como {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>nothing stands in it; each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>no contiene nada; cada línea es un objeto, como {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>the value has ended here, “%1” is too much</source>
        <translation>el valor ya terminó aquí; «%1» sobra</translation>
    </message>
    <message>
        <source>more than %1 levels lie inside one another</source>
        <translation>hay más de %1 niveles unos dentro de otros</translation>
    </message>
    <message>
        <source>a comma or } belongs here</source>
        <translation>aquí va una coma o }</translation>
    </message>
    <message>
        <source>a comma or ] belongs here</source>
        <translation>aquí va una coma o ]</translation>
    </message>
    <message>
        <source>a name in quotes belongs here</source>
        <translation>aquí va un nombre entre comillas</translation>
    </message>
    <message>
        <source>a colon belongs here</source>
        <translation>aquí van dos puntos</translation>
    </message>
    <message>
        <source>“%1” stands twice in one object; keep one</source>
        <translation>«%1» está dos veces en un mismo objeto; deje uno</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>estas comillas no se cierran nunca</translation>
    </message>
    <message>
        <source>a line end or tab stands inside a text; write \n or \t</source>
        <translation>hay un fin de línea o un tabulador dentro de un texto; escriba \n o \t</translation>
    </message>
    <message>
        <source>“\%1” is no escape of JSON</source>
        <translation>«\%1» no es un escape de JSON</translation>
    </message>
    <message>
        <source>half of a character stands here alone</source>
        <translation>aquí hay solo la mitad de un carácter</translation>
    </message>
    <message>
        <source>four hexadecimal digits belong here</source>
        <translation>aquí van cuatro cifras hexadecimales</translation>
    </message>
    <message>
        <source>this is no number of JSON; write it as -1.25 or 0.5</source>
        <translation>esto no es un número de JSON; escríbalo como -1.25 o 0.5</translation>
    </message>
    <message>
        <source>the text ends where a value belongs</source>
        <translation>el texto termina donde va un valor</translation>
    </message>
    <message>
        <source>“%1” is no value of JSON</source>
        <translation>«%1» no es un valor de JSON</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the other decimal mark than the map says</source>
        <translation>«%1» tiene otro signo decimal que el que dice el mapa</translation>
    </message>
    <message>
        <source>the map names a column &quot;%1&quot; that the table does not have</source>
        <translation>el mapa nombra una columna «%1» que la tabla no tiene</translation>
    </message>
    <message>
        <source>no column is understood as %1; a map can say which one is, as in: %2</source>
        <translation>ninguna columna se entiende como %1; un mapa puede decir cuál es, como en: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; stands in the table twice; delete or rename one</source>
        <translation>la columna «%1» está dos veces en la tabla; borre una o cámbiele el nombre</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is kept but not used</source>
        <translation>la columna «%1» no se conoce; se guarda pero no se usa</translation>
    </message>
    <message>
        <source>the table is empty; its first line names the columns: %1</source>
        <translation>la tabla está vacía; su primera línea nombra las columnas: %1</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds the separator in quotes</source>
        <translation>la fila tiene %1 celdas, el encabezado %2; ponga entre comillas la celda que contiene el separador</translation>
    </message>
    <message>
        <source>%1 spheres have no sign; if this table leaves the plus out, a map says so: %2</source>
        <translation>%1 esferas no tienen signo; si esta tabla omite el más, un mapa lo dice: %2</translation>
    </message>
    <message>
        <source>%1 cylinders have no sign; ask whoever made the table, then a map says so: %2</source>
        <translation>%1 cilindros no tienen signo; pregunte a quien hizo la tabla, luego un mapa lo dice: %2</translation>
    </message>
    <message>
        <source>a record ends with CR LF; this one does not</source>
        <translation>un registro de datos termina con CR LF; este no</translation>
    </message>
    <message>
        <source>a character here is not plain ASCII</source>
        <translation>un carácter de aquí no es ASCII simple</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no record; write LABEL=value</source>
        <translation>«%1» no es un registro de datos; escriba LABEL=value</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no label: capitals and digits, at most 8</source>
        <translation>«%1» no es una etiqueta: mayúsculas y cifras, como mucho 8</translation>
    </message>
    <message>
        <source>the record %1 is passed over</source>
        <translation>el registro de datos %1 se pasa por alto</translation>
    </message>
    <message>
        <source>the record %1 stands twice</source>
        <translation>el registro de datos %1 está dos veces</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not what belongs here</source>
        <translation>«%1» no es lo que va aquí</translation>
    </message>
    <message>
        <source>DO is &quot;%1&quot;; a pair, B, is wanted</source>
        <translation>DO es «%1»; se esperan las dos, B</translation>
    </message>
    <message>
        <source>the record SPH is missing</source>
        <translation>falta el registro de datos SPH</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be written in plain letters; it leaves as &quot;%2&quot;</source>
        <translation>«%1» no se puede escribir con letras simples; sale como «%2»</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot stand in an order: plain letters and digits, at most 80, without ; = , ?</source>
        <translation>«%1» no puede estar en un encargo: letras simples y cifras, como mucho 80, sin ; = , ?</translation>
    </message>
    <message>
        <source>the eyes are written in two cylinder forms; both leave with minus cylinders</source>
        <translation>los ojos están escritos en dos formas de cilindro; ambos salen con cilindros negativos</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no line of a map; write heading = column</source>
        <translation>«%1» no es una línea de un mapa; escriba título = columna</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing a column can be: write right sphere (cylinder, axis, prism, base; left), a column of the prescription table, or - to leave it</source>
        <translation>«%1» no es nada que una columna pueda ser: escriba right sphere (cylinder, axis, prism, base; left), una columna de la tabla de prescripciones, o - para omitirla</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no separator; write , or ; or | or tab</source>
        <translation>«%1» no es un separador; escriba , o ; o | o tab</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not plus or minus</source>
        <translation>«%1» no es plus ni minus</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not point or comma</source>
        <translation>«%1» no es point ni comma</translation>
    </message>
    <message>
        <source>there are entries in this ledger already; nothing was written; take them over with `quarterstep import`, or name an empty ledger</source>
        <translation>ya hay anotaciones en este registro; no se escribió nada; incorpórelas con `quarterstep import`, o indique un registro vacío</translation>
    </message>
    <message>
        <source>this ledger was opened for reading only</source>
        <translation>este registro se abrió solo para leer</translation>
    </message>
    <message>
        <source>this ledger was last written at another place; if it moved here for good, say so first, and do not use the other copy any more</source>
        <translation>este registro se escribió por última vez en otro lugar; si se mudó aquí para siempre, dígalo antes, y no use más la otra copia</translation>
    </message>
    <message>
        <source>something was posted meanwhile; nothing was written; look again and repeat</source>
        <translation>entretanto se anotó algo; no se escribió nada; mire otra vez y repita</translation>
    </message>
    <message>
        <source>the ledger is empty; nothing happened yet</source>
        <translation>el registro está vacío; aún no ha pasado nada</translation>
    </message>
    <message>
        <source>the person is forgotten, but another program reads the ledger and old text stays in its journal; close it there and repeat</source>
        <translation>la persona está olvidada, pero otro programa lee el registro y queda texto antiguo en su diario; ciérrelo allí y repita</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; check the chain and put back the latest copy of the camp folder</source>
        <translation>una anotación de este registro no se puede leer; compruebe la cadena y vuelva a poner la última copia de la carpeta de campamento</translation>
    </message>
    <message>
        <source>the disk failed while the entry was written (%1); close the camp, open it again and look whether the entry is there before you repeat it</source>
        <translation>el disco falló mientras se escribía la anotación (%1); cierre el campamento, ábralo otra vez y mire si la anotación está antes de repetirla</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost while the entry was written (%1); open the camp again and look whether the entry is there before you repeat it</source>
        <translation>se perdió la conexión con el registro compartido mientras se escribía la anotación (%1); abra otra vez el campamento y mire si la anotación está antes de repetirla</translation>
    </message>
    <message>
        <source>line %1 has %2 left, %3 asked for; nothing was written</source>
        <translation>a la línea %1 le quedan %2, se piden %3; no se escribió nada</translation>
    </message>
    <message>
        <source>line %1 has %2 available, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>la línea %1 tiene %2 disponibles, %3 reservadas y %4 en cuarentena, muy pocas para esto; no se escribió nada</translation>
    </message>
    <message>
        <source>entry %1 was taken back already</source>
        <translation>la anotación %1 ya se deshizo</translation>
    </message>
    <message>
        <source>entry %1 takes back another one and cannot be taken back itself; enter what happened anew</source>
        <translation>la anotación %1 deshace otra y no se puede deshacer; anote de nuevo lo que pasó</translation>
    </message>
    <message>
        <source>entry %1 is “%2” and stays; a wrong count is put right by counting</source>
        <translation>la anotación %1 es «%2» y se queda; un número equivocado se corrige con un recuento</translation>
    </message>
    <message>
        <source>entry %1 of this ledger is not as it was written: %2; nothing was taken over</source>
        <translation>la anotación %1 de este registro no está como se escribió: %2; no se incorporó nada</translation>
    </message>
    <message>
        <source>station %1 has two entries number %2, %3 here and %4 there: its folder was copied and both copies went on as the same station; nothing was taken over, both files are as they were; count the stock of one and enter the difference</source>
        <translation>el puesto %1 tiene dos anotaciones número %2, %3 aquí y %4 allí: su carpeta se copió y ambas copias siguieron como el mismo puesto; no se incorporó nada, ambos archivos están como estaban; cuente las existencias de uno y anote la diferencia</translation>
    </message>
    <message>
        <source>entry %1 is in both ledgers with another content; one of them was changed; nothing was taken over</source>
        <translation>la anotación %1 está en ambos registros con otro contenido; uno de ellos se cambió; no se incorporó nada</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; nothing was taken over</source>
        <translation>una anotación de este registro no se puede leer; no se incorporó nada</translation>
    </message>
    <message>
        <source>entries %1 and %2 take back the same entry %3; nothing was taken over</source>
        <translation>las anotaciones %1 y %2 deshacen la misma anotación %3; no se incorporó nada</translation>
    </message>
    <message>
        <source>entry %1 takes back %2, which is in neither ledger; merge the ledger that has it first</source>
        <translation>la anotación %1 deshace %2, que no está en ninguno de los dos registros; combine antes el registro que la tiene</translation>
    </message>
    <message>
        <source>line %1 of %2 would go below zero: entries %3 and %4 took the same pieces; nothing was taken over; count the stock there and enter the difference first</source>
        <translation>la línea %1 de %2 quedaría por debajo de cero: las anotaciones %3 y %4 tomaron las mismas piezas; no se incorporó nada; cuente antes las existencias allí y anote la diferencia</translation>
    </message>
    <message>
        <source>entries of this very station came from a copy of its folder; do not use that copy any more</source>
        <translation>unas anotaciones de este mismo puesto vinieron de una copia de su carpeta; no use más esa copia</translation>
    </message>
    <message>
        <source>%1 has entries of %2 stations: its folder was copied and both were used; count its stock, since both began with the same pieces</source>
        <translation>%1 tiene anotaciones de %2 puestos: su carpeta se copió y ambas se usaron; cuente sus existencias, pues ambas empezaron con las mismas piezas</translation>
    </message>
    <message>
        <source>this is a database of another program, not a ledger; name another file in the key ledger of stock.yaml</source>
        <translation>esta es una base de datos de otro programa, no un registro; indique otro archivo en la clave ledger de stock.yaml</translation>
    </message>
    <message>
        <source>the head of this ledger is damaged (form %1); put back the latest copy of the camp folder</source>
        <translation>la cabecera de este registro está dañada (forma %1); vuelva a poner la última copia de la carpeta de campamento</translation>
    </message>
    <message>
        <source>this ledger was made by a newer version (form %1, known here up to %2); update this program</source>
        <translation>este registro lo hizo una versión más nueva (forma %1, conocida aquí hasta %2); actualice este programa</translation>
    </message>
    <message>
        <source>a rule of this ledger is missing or damaged (%1); put back the latest copy of the camp folder</source>
        <translation>una regla de este registro falta o está dañada (%1); vuelva a poner la última copia de la carpeta de campamento</translation>
    </message>
    <message>
        <source>a ledger file cannot be kept safely on a network share; keep the camp folder on this machine, or share a PostgreSQL ledger between stations</source>
        <translation>un archivo de registro no se puede guardar con seguridad en una carpeta de red; tenga la carpeta de campamento en este equipo, o comparta un registro PostgreSQL entre puestos</translation>
    </message>
    <message>
        <source>there is no ledger in this database yet; the keeper sets it up once with `quarterstep stock --set-up`</source>
        <translation>aún no hay registro en esta base de datos; el encargado lo prepara una vez con `quarterstep stock --set-up`</translation>
    </message>
    <message>
        <source>this database holds something else, not a ledger; name another one in the key ledger of stock.yaml</source>
        <translation>esta base de datos contiene otra cosa, no un registro; indique otra en la clave ledger de stock.yaml</translation>
    </message>
    <message>
        <source>the database refuses to write safely; nothing was opened</source>
        <translation>la base de datos se niega a escribir con seguridad; no se abrió nada</translation>
    </message>
    <message>
        <source>the client library of the server is missing; install %1</source>
        <translation>falta la biblioteca cliente del servidor; instale %1</translation>
    </message>
    <message>
        <source>the file was replaced, but the disk does not say that this will last: %1</source>
        <translation>el archivo se reemplazó, pero el disco no asegura que eso perdure: %1</translation>
    </message>
    <message>
        <source>another program is writing in this folder; wait a moment and repeat</source>
        <translation>otro programa está escribiendo en esta carpeta; espere un momento y repita</translation>
    </message>
    <message>
        <source>the folder cannot be locked: %1; check its name and rights</source>
        <translation>no se puede bloquear la carpeta: %1; revise su nombre y permisos</translation>
    </message>
    <message>
        <source>this is not the address of a shared ledger (%1); write postgresql://LOGIN@HOST:PORT/DATABASE</source>
        <translation>esta no es la dirección de un registro compartido (%1); escriba postgresql://LOGIN@HOST:PORT/DATABASE</translation>
    </message>
    <message>
        <source>a password stands in the address, and stock.yaml is carried about and copied; write it to ~/.pgpass (read by you alone) and take it out of the address</source>
        <translation>hay una contraseña en la dirección, y stock.yaml se lleva de un sitio a otro y se copia; escríbala en ~/.pgpass (que solo usted pueda leer) y quítela de la dirección</translation>
    </message>
    <message>
        <source>there is a ledger in this database already; nothing was changed</source>
        <translation>ya hay un registro en esta base de datos; no se cambió nada</translation>
    </message>
    <message>
        <source>this file system cannot keep a ledger safely (no shared memory beside the file); keep the camp folder on another disk</source>
        <translation>este sistema de archivos no puede guardar un registro con seguridad (sin memoria compartida junto al archivo); tenga la carpeta de campamento en otro disco</translation>
    </message>
    <message>
        <source>this is not a file; name another one in the key ledger of stock.yaml</source>
        <translation>esto no es un archivo; indique otro en la clave ledger de stock.yaml</translation>
    </message>
    <message>
        <source>this ledger was not closed and its folder cannot be written to; copy the whole folder to a place that can, and open it there</source>
        <translation>este registro no se cerró y no se puede escribir en su carpeta; copie toda la carpeta a un lugar donde se pueda, y ábrala allí</translation>
    </message>
    <message>
        <source>the ledger file was moved, removed or replaced while it was open; nothing was written; close the camp and open it again</source>
        <translation>el archivo del registro se movió, se quitó o se reemplazó mientras estaba abierto; no se escribió nada; cierre el campamento y ábralo otra vez</translation>
    </message>
    <message>
        <source>this ledger names no station of its own; put back the latest copy</source>
        <translation>este registro no nombra un puesto propio; vuelva a poner la última copia</translation>
    </message>
    <message>
        <source>the ledger cannot be made: %1; check the rights of the folder</source>
        <translation>no se puede crear el registro: %1; revise los permisos de la carpeta</translation>
    </message>
    <message>
        <source>the ledger cannot be opened for writing here; check the rights of the file and its folder</source>
        <translation>no se puede abrir aquí el registro para escribir; revise los permisos del archivo y de su carpeta</translation>
    </message>
    <message>
        <source>the disk is full; nothing was written; make room and repeat</source>
        <translation>el disco está lleno; no se escribió nada; haga sitio y repita</translation>
    </message>
    <message>
        <source>this is not a ledger, or it is damaged (%1); put back the latest copy of the camp folder</source>
        <translation>esto no es un registro, o está dañado (%1); vuelva a poner la última copia de la carpeta de campamento</translation>
    </message>
    <message>
        <source>the ledger failed: %1 (code %2); nothing was written</source>
        <translation>el registro falló: %1 (código %2); no se escribió nada</translation>
    </message>
    <message>
        <source>another program holds the ledger; nothing was written; close it there and repeat</source>
        <translation>otro programa retiene el registro; no se escribió nada; ciérrelo allí y repita</translation>
    </message>
    <message>
        <source>the shared ledger cannot be reached (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>no se alcanza el registro compartido (%1); no se escribió nada; revise la red y el servidor, y repita</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>se perdió la conexión con el registro compartido (%1); no se escribió nada; revise la red y el servidor, y repita</translation>
    </message>
    <message>
        <source>the shared ledger does not allow this login to do that (%1); nothing was written; ask the keeper</source>
        <translation>el registro compartido no permite eso a este usuario (%1); no se escribió nada; pregunte al encargado</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>el archivo no se puede leer</translation>
    </message>
    <message>
        <source>this is a link or a device; only a plain file can be kept up to date; put the file itself into the camp folder</source>
        <translation>esto es un enlace o un dispositivo; solo un archivo normal se puede mantener al día; ponga el archivo mismo en la carpeta de campamento</translation>
    </message>
    <message>
        <source>the file was written after entry %1 of another ledger; a new ledger begins with the counts of the file</source>
        <translation>el archivo se escribió tras la anotación %1 de otro registro; un registro nuevo empieza con los números del archivo</translation>
    </message>
    <message>
        <source>the file was written after entry %1, but the ledger ends at %2; is the ledger an older copy? Counts that differ are shown as edited</source>
        <translation>el archivo se escribió tras la anotación %1, pero el registro termina en %2; ¿es el registro una copia más antigua? Los números que difieren se muestran como editados</translation>
    </message>
    <message>
        <source>the ledger had nothing of the site %1; its lines begin with the counts of the file</source>
        <translation>el registro no tenía nada de la sede %1; sus líneas empiezan con los números del archivo</translation>
    </message>
    <message>
        <source>line %1 is new in the file and begins with %2 on hand</source>
        <translation>la línea %1 es nueva en el archivo y empieza con %2 en existencia</translation>
    </message>
    <message>
        <source>line %1 is not in the file any more, and the ledger has %2 of it on hand; put the line back, or count it as 0 first</source>
        <translation>la línea %1 ya no está en el archivo, y el registro tiene %2 de ella en existencia; vuelva a poner la línea, o antes cuéntela como 0</translation>
    </message>
    <message>
        <source>write the first and the last age, for example [40, 44]</source>
        <translation>escriba la primera y la última edad, por ejemplo [40, 44]</translation>
    </message>
    <message>
        <source>ages and values rise, and bands do not overlap</source>
        <translation>las edades y los valores suben, y las franjas no se solapan</translation>
    </message>
    <message>
        <source>write the rows as a list: [{ages: [40, 44], value: 0.65}, …]</source>
        <translation>escriba las filas como lista: [{ages: [40, 44], value: 0.65}, …]</translation>
    </message>
    <message>
        <source>this is not a file of age tables of this program; the first key should read format: %1</source>
        <translation>este no es un archivo de tablas de edad de este programa; la primera clave debe ser format: %1</translation>
    </message>
    <message>
        <source>`tables` is a list; begin each table with a dash</source>
        <translation>`tables` es una lista; empiece cada tabla con un guion</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a name here; write one of %2</source>
        <translation>«%1» no es un nombre aquí; escriba uno de %2</translation>
    </message>
    <message>
        <source>write a list: one name, value and source a line</source>
        <translation>escriba una lista: un nombre, un valor y una fuente por línea</translation>
    </message>
    <message>
        <source>this is not an audit file of this program; the first key should read format: %1</source>
        <translation>este no es un archivo de auditoría de este programa; la primera clave debe ser format: %1</translation>
    </message>
    <message>
        <source>these priors say that more than one hand-over in ten holds a slip; make them smaller</source>
        <translation>estas probabilidades previas dicen que más de una de cada diez entregas tiene un descuido; hágalas menores</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are lot, row, right and left</source>
        <translation>falta la columna «%1»; se necesitan lot, row, right y left</translation>
    </message>
    <message>
        <source>the row names no lot; keep the column as it was printed</source>
        <translation>la fila no nombra ningún lote; deje la columna como se imprimió</translation>
    </message>
    <message>
        <source>row %1 of this lot stands in the table twice; keep one</source>
        <translation>la fila %1 de este lote está dos veces en la tabla; deje una</translation>
    </message>
    <message>
        <source>“%1” is no reading of a focimeter; write sphere, cylinder and axis</source>
        <translation>«%1» no es una lectura de frontofocómetro; escriba esfera, cilindro y eje</translation>
    </message>
    <message>
        <source>the row says not-found and has a reading; delete one of the two</source>
        <translation>la fila dice not-found y tiene una lectura; borre una de las dos cosas</translation>
    </message>
    <message>
        <source>the row says read and has no reading; write both lenses or not-found</source>
        <translation>la fila dice read y no tiene lectura; escriba ambas lentes o not-found</translation>
    </message>
    <message>
        <source>“%1” is not an outcome; write read or not-found</source>
        <translation>«%1» no es un resultado; escriba read o not-found</translation>
    </message>
    <message>
        <source>a pair is read in both lenses; write this one too</source>
        <translation>unas gafas se leen en ambas lentes; escriba también esta</translation>
    </message>
    <message>
        <source>the format is &quot;%1&quot;, not &quot;%2&quot;</source>
        <translation>el formato es «%1», no «%2»</translation>
    </message>
    <message>
        <source>the limits must rise: fits, then caution, then trial</source>
        <translation>los límites deben subir: fits, luego caution, luego trial</translation>
    </message>
    <message>
        <source>a limit is missing here; write fits, caution or trial</source>
        <translation>aquí falta un límite; escriba fits, caution o trial</translation>
    </message>
    <message>
        <source>&quot;%1&quot; means nothing for this criterion; delete it</source>
        <translation>«%1» no significa nada para este criterio; bórrelo</translation>
    </message>
    <message>
        <source>write the steps as a list: [{up to: 0.50, fits: 7}, …]</source>
        <translation>escriba los pasos como lista: [{up to: 0.50, fits: 7}, …]</translation>
    </message>
    <message>
        <source>the steps must rise; put the smaller cylinder first</source>
        <translation>los pasos deben subir; ponga primero el cilindro menor</translation>
    </message>
    <message>
        <source>say where the limit comes from, or write: common practice</source>
        <translation>diga de dónde viene el límite, o escriba: common practice</translation>
    </message>
    <message>
        <source>shown only means no limits; keep one of the two</source>
        <translation>shown only significa sin límites; deje una de las dos cosas</translation>
    </message>
    <message>
        <source>a quote stands inside a cell; put the whole cell in quotes and double it</source>
        <translation>hay comillas dentro de una celda; ponga toda la celda entre comillas y duplíquelas dentro</translation>
    </message>
    <message>
        <source>a lone carriage return ends the line here; save the table with LF or CRLF line ends</source>
        <translation>un retorno de carro suelto termina aquí la línea; guarde la tabla con fines de línea LF o CRLF</translation>
    </message>
    <message>
        <source>this quote is never closed; close it before the next comma</source>
        <translation>estas comillas no se cierran nunca; ciérrelas antes de la coma siguiente</translation>
    </message>
    <message>
        <source>there is text behind the closing quote; move it inside, or double the quote</source>
        <translation>hay texto tras las comillas de cierre; páselo dentro, o duplique las comillas</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and name</source>
        <translation>falta la columna «%1»; se necesitan person y name</translation>
    </message>
    <message>
        <source>the row names no person</source>
        <translation>la fila no nombra a ninguna persona</translation>
    </message>
    <message>
        <source>%1 stands here twice, first in row %2</source>
        <translation>%1 está aquí dos veces, la primera en la fila %2</translation>
    </message>
    <message>
        <source>no name stands here; to erase one, use `quarterstep forget`</source>
        <translation>aquí no hay nombre; para borrar uno, use `quarterstep forget`</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write one from %2 to %3</source>
        <translation>«%1» no es un número; escriba uno de %2 a %3</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3</source>
        <translation>%1 está fuera de %2 a %3</translation>
    </message>
    <message>
        <source>a number is missing; write one from %1 to %2</source>
        <translation>falta un número; escriba uno de %1 a %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a decimal comma; in this file write %2</source>
        <translation>«%1» tiene coma decimal; en este archivo escriba %2</translation>
    </message>
    <message>
        <source>%1 is below zero; write 0 or more</source>
        <translation>%1 está por debajo de cero; escriba 0 o más</translation>
    </message>
    <message>
        <source>write %1 without a sign</source>
        <translation>escriba %1 sin signo</translation>
    </message>
    <message>
        <source>%1 is not a whole number; write digits only</source>
        <translation>%1 no es un número entero; escriba solo cifras</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number; write digits only, for example 14</source>
        <translation>«%1» no es un número entero; escriba solo cifras, por ejemplo 14</translation>
    </message>
    <message>
        <source>a whole number is missing; write one from %1 to %2</source>
        <translation>falta un número entero; escriba uno de %1 a %2</translation>
    </message>
    <message>
        <source>%1 begins with a zero, which some programs read as another number; write %2</source>
        <translation>%1 empieza con un cero, que algunos programas leen como otro número; escriba %2</translation>
    </message>
    <message>
        <source>%1 has more than three decimals; round it</source>
        <translation>%1 tiene más de tres decimales; redondéelo</translation>
    </message>
    <message>
        <source>the columns are not separated by commas; save the table with commas</source>
        <translation>las columnas no están separadas por comas; guarde la tabla con comas</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; person, right and left are needed</source>
        <translation>falta la columna «%1»; se necesitan person, right y left</translation>
    </message>
    <message>
        <source>this column has no name; write one</source>
        <translation>esta columna no tiene nombre; escriba uno</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say which acuity; write one of: %2</source>
        <translation>«%1» no dice qué agudeza; escriba uno de: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known and not used; did you mean &quot;%2&quot;?</source>
        <translation>la columna «%1» no se conoce y no se usa; ¿quiso decir «%2»?</translation>
    </message>
    <message>
        <source>the row ends after %1 cells, the header has %2; add the missing commas</source>
        <translation>la fila termina tras %1 celdas, el encabezado tiene %2; añada las comas que faltan</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds a comma in quotes</source>
        <translation>la fila tiene %1 celdas, el encabezado %2; ponga entre comillas la celda que contiene una coma</translation>
    </message>
    <message>
        <source>line %1 stands here twice, first in row %2; write one row with the whole number</source>
        <translation>la línea %1 está aquí dos veces, la primera en la fila %2; escriba una sola fila con el número total</translation>
    </message>
    <message>
        <source>“%1” is not a cause; write one of %2</source>
        <translation>«%1» no es una causa; escriba una de %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are line and quantity</source>
        <translation>falta la columna «%1»; se necesitan line y quantity</translation>
    </message>
    <message>
        <source>the row names no line</source>
        <translation>la fila no nombra ninguna línea</translation>
    </message>
    <message>
        <source>write format: %1</source>
        <translation>escriba format: %1</translation>
    </message>
    <message>
        <source>lines is a list, one item with line and quantity each</source>
        <translation>lines es una lista, cada elemento con line y quantity</translation>
    </message>
    <message>
        <source>one scanned line a row; a table begins with a row that names its columns: line,quantity</source>
        <translation>una línea escaneada por fila; una tabla empieza con una fila que nombra sus columnas: line,quantity</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person, eye and reading, or sphere, cylinder and axis in place of reading</source>
        <translation>falta la columna «%1»; se necesitan person, eye y reading, o sphere, cylinder y axis en lugar de reading</translation>
    </message>
    <message>
        <source>write each reading once: in the column reading, or in sphere, cylinder, axis</source>
        <translation>escriba cada lectura una vez: en la columna reading, o en sphere, cylinder, axis</translation>
    </message>
    <message>
        <source>the row has no person; write the code of the person</source>
        <translation>la fila no tiene persona; escriba el código de la persona</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an eye; write right or left</source>
        <translation>«%1» no es un ojo; escriba right o left</translation>
    </message>
    <message>
        <source>there is no reading here; write it, or delete the row</source>
        <translation>aquí no hay lectura; escríbala, o borre la fila</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an axis; a cylinder needs one from 1 to 180</source>
        <translation>«%1» no es un eje; un cilindro necesita uno de 1 a 180</translation>
    </message>
    <message>
        <source>readings of the right eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>lecturas del ojo derecho de «%1»: %2; tome tres o más</translation>
    </message>
    <message>
        <source>readings of the left eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>lecturas del ojo izquierdo de «%1»: %2; tome tres o más</translation>
    </message>
    <message>
        <source>the row has no person; write a code or a name</source>
        <translation>la fila no tiene persona; escriba un código o un nombre</translation>
    </message>
    <message>
        <source>%1 is no step of 0.25 or 0.125 D; look at the writing again (3 and 5, 2 and 7 are alike)</source>
        <translation>%1 no es un paso de 0.25 o 0.125 D; mire otra vez lo escrito (3 y 5, 2 y 7 se parecen)</translation>
    </message>
    <message>
        <source>one eye is written with a minus cylinder, the other with a plus cylinder; both are read as written: is that meant?</source>
        <translation>un ojo está escrito con cilindro negativo, el otro con cilindro positivo; ambos se leen como están escritos: ¿es lo que se quería?</translation>
    </message>
    <message>
        <source>age %1: is it right? Whether the rules for children count hangs on it</source>
        <translation>edad %1: ¿es correcta? De ella depende que valgan las reglas para niños</translation>
    </message>
    <message>
        <source>%1 mm is narrow for both eyes together; is it monocular? Then it goes into pd_right_mm or pd_left_mm</source>
        <translation>%1 mm es poco para ambos ojos juntos; ¿es monocular? Entonces va en pd_right_mm o pd_left_mm</translation>
    </message>
    <message>
        <source>the two monocular distances make %1 mm, not %2; the monocular ones are used</source>
        <translation>las dos distancias monoculares suman %1 mm, no %2; se usan las monoculares</translation>
    </message>
    <message>
        <source>the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?</source>
        <translation>la distancia de cerca %1 mm es mayor que la de lejos, %2 mm; ¿se intercambiaron?</translation>
    </message>
    <message>
        <source>the eye&apos;s text says addition %1, this column %2; keep one</source>
        <translation>el texto del ojo dice adición %1, esta columna %2; deje una</translation>
    </message>
    <message>
        <source>sphere and addition make %1 at near, the near power says %2; the near power is used</source>
        <translation>esfera y adición suman %1 de cerca, la potencia de cerca dice %2; se usa la potencia de cerca</translation>
    </message>
    <message>
        <source>the date %1 lies after today, %2; correct it</source>
        <translation>la fecha %1 es posterior a hoy, %2; corríjala</translation>
    </message>
    <message>
        <source>write two numbers in mm, for example [54, 74]</source>
        <translation>escriba dos números en mm, por ejemplo [54, 74]</translation>
    </message>
    <message>
        <source>the smaller number comes first</source>
        <translation>el número menor va primero</translation>
    </message>
    <message>
        <source>there is no profile &quot;%1&quot; to begin from; built in, or earlier in this file, are: %2</source>
        <translation>no hay perfil «%1» del que partir; incorporados, o antes en este archivo, están: %2</translation>
    </message>
    <message>
        <source>the profile has no name; write one</source>
        <translation>el perfil no tiene nombre; escriba uno</translation>
    </message>
    <message>
        <source>the profile &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>el perfil «%1» ya está en el archivo; dé otro nombre a este</translation>
    </message>
    <message>
        <source>this is not a rules file of this program; the first key should read format: %1</source>
        <translation>este no es un archivo de reglas de este programa; la primera clave debe ser format: %1</translation>
    </message>
    <message>
        <source>`profiles` is a list; begin each profile with a dash</source>
        <translation>`profiles` es una lista; empiece cada perfil con un guion</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is not used</source>
        <translation>la columna «%1» no se conoce; no se usa</translation>
    </message>
    <message>
        <source>this is not UTF-8 text; save the file as UTF-8</source>
        <translation>esto no es texto UTF-8; guarde el archivo como UTF-8</translation>
    </message>
    <message>
        <source>a control character (hexadecimal %1) stands here; delete it</source>
        <translation>aquí hay un carácter de control (hexadecimal %1); bórrelo</translation>
    </message>
    <message>
        <source>the file is larger than %1 MiB; split it</source>
        <translation>el archivo es mayor de %1 MiB; divídalo</translation>
    </message>
    <message>
        <source>there is no such file; check the name and the folder</source>
        <translation>no hay tal archivo; revise el nombre y la carpeta</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>el archivo no se puede leer: %1</translation>
    </message>
    <message>
        <source>this is a folder; name the file inside it</source>
        <translation>esto es una carpeta; indique el archivo dentro de ella</translation>
    </message>
    <message>
        <source>the file is UTF-16 text; save it as UTF-8 and try again</source>
        <translation>el archivo es texto UTF-16; guárdelo como UTF-8 e inténtelo otra vez</translation>
    </message>
    <message>
        <source>the file begins with two byte order marks; delete one</source>
        <translation>el archivo empieza con dos marcas de orden de bytes; borre una</translation>
    </message>
    <message>
        <source>write this value without quotes, or delete the whole `written` entry</source>
        <translation>escriba este valor sin comillas, o borre toda la entrada `written`</translation>
    </message>
    <message>
        <source>the value of `counts` is 8 digits of 0-9 and a-f put in by the program; delete the whole `written` entry if it was damaged</source>
        <translation>el valor de `counts` son 8 cifras de 0-9 y a-f que pone el programa; borre toda la entrada `written` si se dañó</translation>
    </message>
    <message>
        <source>`lines` is a list; begin each line with a dash, or write lines: []</source>
        <translation>`lines` es una lista; empiece cada línea con un guion, o escriba lines: []</translation>
    </message>
    <message>
        <source>the line &quot;%1&quot; stands in the file already, in line %2; give this one another name or add the counts together</source>
        <translation>la línea «%1» ya está en el archivo, en la línea %2; dé otro nombre a esta o sume los números</translation>
    </message>
    <message>
        <source>the code %1 stands in the file already, in line %2; each line has a code of its own</source>
        <translation>el código %1 ya está en el archivo, en la línea %2; cada línea tiene un código propio</translation>
    </message>
    <message>
        <source>put `lines:` at the beginning of a line of its own</source>
        <translation>ponga `lines:` al principio de una línea propia</translation>
    </message>
    <message>
        <source>this is not a stock file of this program; the first key should read format: %1</source>
        <translation>este no es un archivo de existencias de este programa; la primera clave debe ser format: %1</translation>
    </message>
    <message>
        <source>the site has no name; write the camp or box</source>
        <translation>la sede no tiene nombre; escriba el campamento o la caja</translation>
    </message>
    <message>
        <source>write the count as plain digits, without quotes: %1</source>
        <translation>escriba el número con cifras simples, sin comillas: %1</translation>
    </message>
    <message>
        <source>least (%1) is above most (%2); exchange them</source>
        <translation>least (%1) está por encima de most (%2); intercámbielos</translation>
    </message>
    <message>
        <source>write the lens shapes as a list, for example [round 44]</source>
        <translation>escriba las formas de lente como lista, por ejemplo [round 44]</translation>
    </message>
    <message>
        <source>centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure the pair again</source>
        <translation>los centros a %1 mm no concuerdan con lente + puente = %2 mm; se esperan de %3 a %4: mida otra vez las gafas</translation>
    </message>
    <message>
        <source>a lens of shape &quot;%1&quot; may fit one side only; write side: right, left or either</source>
        <translation>una lente de forma «%1» puede servir en un solo lado; escriba side: right, left o either</translation>
    </message>
    <message>
        <source>&quot;%1&quot; says nothing for a line of this kind and is not used</source>
        <translation>«%1» no dice nada para una línea de este tipo y no se usa</translation>
    </message>
    <message>
        <source>the line has no name; write what its label says</source>
        <translation>la línea no tiene nombre; escriba lo que dice su etiqueta</translation>
    </message>
    <message>
        <source>the addition %1 is outside +0.25 to +6.00</source>
        <translation>la adición %1 está fuera de +0.25 a +6.00</translation>
    </message>
    <message>
        <source>write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}</source>
        <translation>escriba una potencia, o {right: …, left: …}, o {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a bifocal&apos;s power is written {bifocal: +2.00, distance: 0.00}</source>
        <translation>la potencia de unas bifocales se escribe {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a lens with a cylinder needs axis: any (turned when mounting) or axis: degrees as mounted</source>
        <translation>una lente con cilindro necesita axis: any (se gira al montar) o axis: con los grados como está montada</translation>
    </message>
    <message>
        <source>the axis stands in the power already; keep one of the two</source>
        <translation>el eje ya está en la potencia; deje uno de los dos</translation>
    </message>
    <message>
        <source>write this value in one line and without quotes, so that it can be changed</source>
        <translation>escriba este valor en una línea y sin comillas, para que se pueda cambiar</translation>
    </message>
    <message>
        <source>this is a list; begin each item with a dash</source>
        <translation>esto es una lista; empiece cada elemento con un guion</translation>
    </message>
    <message>
        <source>“%1” stands in the list already, in line %2; keep one of the two</source>
        <translation>«%1» ya está en la lista, en la línea %2; deje uno de los dos</translation>
    </message>
    <message>
        <source>write the lines of the pack with their pieces, as {N+200-62M: 2}</source>
        <translation>escriba las líneas del paquete con sus piezas, como {N+200-62M: 2}</translation>
    </message>
    <message>
        <source>the pack holds &quot;%1&quot;, which is not among the lines of this list</source>
        <translation>el paquete contiene «%1», que no está entre las líneas de esta lista</translation>
    </message>
    <message>
        <source>contact lenses were worn during this reading; the row is left out</source>
        <translation>se llevaban lentes de contacto durante esta lectura; la fila se omite</translation>
    </message>
    <message>
        <source>neither eye has sphere, cylinder and axis; the row is left out</source>
        <translation>ningún ojo tiene esfera, cilindro y eje; la fila se omite</translation>
    </message>
    <message>
        <source>this eye has no complete reading and is taken as not measured</source>
        <translation>este ojo no tiene una lectura completa y se toma como no medido</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the words allowed here; write one of: %2</source>
        <translation>«%1» no es una de las palabras admitidas aquí; escriba una de: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds two numbers; write one here, each eye&apos;s own in pd_right_mm and pd_left_mm, the near one in near_pd_mm</source>
        <translation>«%1» contiene dos números; escriba uno aquí, el de cada ojo en pd_right_mm y pd_left_mm, el de cerca en near_pd_mm</translation>
    </message>
    <message>
        <source>%1 would be a distance in cm; write it in mm: %2</source>
        <translation>%1 sería una distancia en cm; escríbala en mm: %2</translation>
    </message>
    <message>
        <source>%1 mm is not a pupillary distance; expected are %2 to %3 mm</source>
        <translation>%1 mm no es una distancia pupilar; se esperan de %2 a %3 mm</translation>
    </message>
    <message>
        <source>an addition is never minus; %1 was read; write the addition, not the near power (that goes into near_right and near_left)</source>
        <translation>una adición nunca es negativa; se leyó %1; escriba la adición, no la potencia de cerca (esa va en near_right y near_left)</translation>
    </message>
    <message>
        <source>the addition %1 is outside 0.00 to +6.00</source>
        <translation>la adición %1 está fuera de 0.00 a +6.00</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date of the form 2026-03-01 (year-month-day)</source>
        <translation>«%1» no es una fecha de la forma 2026-03-01 (año-mes-día)</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot; in the table</source>
        <translation>no hay columna «%1» en la tabla</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and lines</source>
        <translation>falta la columna «%1»; se necesitan person y lines</translation>
    </message>
    <message>
        <source>“%1” is not a purpose; write distance, near, intermediate or bifocal</source>
        <translation>«%1» no es un uso; escriba distance, near, intermediate o bifocal</translation>
    </message>
    <message>
        <source>the row needs a person and lines</source>
        <translation>la fila necesita una persona y líneas</translation>
    </message>
    <message>
        <source>write one line, or frame + right lens + left lens</source>
        <translation>escriba una línea, o montura + lente derecha + lente izquierda</translation>
    </message>
    <message>
        <source>write two powers, for example [1.00, 3.50]</source>
        <translation>escriba dos potencias, por ejemplo [1.00, 3.50]</translation>
    </message>
    <message>
        <source>a set that is not enabled says why; add: why</source>
        <translation>un conjunto que no está activado dice por qué; añada: why</translation>
    </message>
    <message>
        <source>this set is enabled though its figures are from memory; once they are compared with the standard, say so under confidence</source>
        <translation>este conjunto está activado aunque sus cifras son de memoria; cuando se comparen con la norma, dígalo en confidence</translation>
    </message>
    <message>
        <source>the set &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>el conjunto «%1» ya está en el archivo; dé otro nombre a este</translation>
    </message>
    <message>
        <source>this is not a tolerance file of this program; the first key should read format: %1</source>
        <translation>este no es un archivo de tolerancias de este programa; la primera clave debe ser format: %1</translation>
    </message>
    <message>
        <source>`sets` is a list; begin each set with a dash</source>
        <translation>`sets` es una lista; empiece cada conjunto con un guion</translation>
    </message>
    <message>
        <source>write the rows as a list: [{power up to: 6.50, limit: 0.13}, …]</source>
        <translation>escriba las filas como lista: [{power up to: 6.50, limit: 0.13}, …]</translation>
    </message>
    <message>
        <source>a row has one of: limit, percent, or not judged: yes</source>
        <translation>una fila tiene una de estas: limit, percent o not judged: yes</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; it names the hand-over</source>
        <translation>falta la columna «%1»; nombra la entrega</translation>
    </message>
    <message>
        <source>the row names no hand-over</source>
        <translation>la fila no nombra ninguna entrega</translation>
    </message>
    <message>
        <source>%1 stands here twice</source>
        <translation>%1 está aquí dos veces</translation>
    </message>
    <message>
        <source>a single value is expected here, not a list or a map</source>
        <translation>aquí se espera un solo valor, no una lista ni un mapa</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds a line break or a control character; write it on one line</source>
        <translation>«%1» contiene un salto de línea o un carácter de control; escríbalo en una línea</translation>
    </message>
    <message>
        <source>keys with values are expected here, such as: %1</source>
        <translation>aquí se esperan claves con valores, como: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is written twice; the first stands in line %2; keep one</source>
        <translation>«%1» está escrito dos veces; el primero está en la línea %2; deje uno</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; known are: %2</source>
        <translation>la clave «%1» no se conoce aquí; se conocen: %2</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; did you mean &quot;%2&quot;?</source>
        <translation>la clave «%1» no se conoce aquí; ¿quiso decir «%2»?</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is missing here; add it</source>
        <translation>falta aquí la clave «%1»; añádala</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no value; write one after the colon</source>
        <translation>«%1» no tiene valor; escriba uno tras los dos puntos</translation>
    </message>
    <message>
        <source>a second document begins here; keep one document in the file</source>
        <translation>aquí empieza un segundo documento; deje un solo documento en el archivo</translation>
    </message>
    <message>
        <source>an alias (*name) is not read here; write the value out</source>
        <translation>un alias (*name) no se lee aquí; escriba el valor completo</translation>
    </message>
    <message>
        <source>this quote is never closed; close it on the same line</source>
        <translation>estas comillas no se cierran nunca; ciérrelas en la misma línea</translation>
    </message>
    <message>
        <source>an anchor (&amp;name) is not read here; delete it</source>
        <translation>un ancla (&amp;name) no se lee aquí; bórrela</translation>
    </message>
    <message>
        <source>a tag (!name) is not read here; delete it</source>
        <translation>una etiqueta (!name) no se lee aquí; bórrela</translation>
    </message>
    <message>
        <source>the nesting is deeper than %1; this is not such a file</source>
        <translation>el anidamiento pasa de %1 niveles; este no es un archivo de ese tipo</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>una clave debe ser una palabra simple</translation>
    </message>
    <message>
        <source>this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or a tab in the indentation, here or on the line above</source>
        <translation>esto no se puede leer como YAML: %1; busque dos puntos, comillas o un paréntesis que falten, o un tabulador en la sangría, aquí o en la línea anterior</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>opened</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>received</source>
        <translation>recibido</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>entregado</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>exchanged</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contado</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>dado de baja</translation>
    </message>
    <message>
        <source>held</source>
        <translation>reservado</translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation>en cuarentena</translation>
    </message>
    <message>
        <source>released</source>
        <translation>liberado</translation>
    </message>
    <message>
        <source>transferred out</source>
        <translation>transferido fuera</translation>
    </message>
    <message>
        <source>transferred in</source>
        <translation>transferido aquí</translation>
    </message>
    <message>
        <source>no spectacles needed</source>
        <translation>no necesita gafas</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>rechazado por la persona</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incompleto</translation>
    </message>
    <message>
        <source>repaired or adjusted</source>
        <translation>reparado o ajustado</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>encargado</translation>
    </message>
    <message>
        <source>order arrived</source>
        <translation>encargo llegado</translation>
    </message>
    <message>
        <source>order checked</source>
        <translation>encargo comprobado</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>recogido</translation>
    </message>
    <message>
        <source>sent back to be remade</source>
        <translation>devuelto para rehacer</translation>
    </message>
    <message>
        <source>not collected</source>
        <translation>no recogido</translation>
    </message>
    <message>
        <source>referred</source>
        <translation>derivado</translation>
    </message>
    <message>
        <source>not served from stock</source>
        <translation>no atendido con existencias</translation>
    </message>
    <message>
        <source>exported</source>
        <translation>exportado</translation>
    </message>
    <message>
        <source>drawn for the bench</source>
        <translation>sorteado para el banco</translation>
    </message>
    <message>
        <source>read at the bench</source>
        <translation>leído en el banco</translation>
    </message>
    <message>
        <source>seen again</source>
        <translation>visto otra vez</translation>
    </message>
    <message>
        <source>entered in error</source>
        <translation>anotado por error</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>dañado</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>robado</translation>
    </message>
    <message>
        <source>found</source>
        <translation>encontrado</translation>
    </message>
    <message>
        <source>miscounted</source>
        <translation>mal contado</translation>
    </message>
    <message>
        <source>off its label</source>
        <translation>distinto de su etiqueta</translation>
    </message>
    <message>
        <source>mislabelled</source>
        <translation>mal etiquetado</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>muestra</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>regalado</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>retirado</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>The child was given glasses: %1.</source>
        <translation>El niño recibió gafas: %1.</translation>
    </message>
    <message>
        <source>Glasses are suggested for the child: %1.</source>
        <translation>Se sugieren gafas para el niño: %1.</translation>
    </message>
    <message>
        <source>Glasses are to be made for the child.</source>
        <translation>Hay que hacer gafas para el niño.</translation>
    </message>
    <message>
        <source>The child needs no glasses for this.</source>
        <translation>El niño no necesita gafas para esto.</translation>
    </message>
    <message>
        <source>The eye test is not finished; the child comes again.</source>
        <translation>El examen de la vista no terminó; el niño vuelve.</translation>
    </message>
    <message>
        <source>The child should see the eye clinic before any glasses.</source>
        <translation>El niño debe ir a la clínica de ojos antes de recibir gafas.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic today.</source>
        <translation>Por favor, lleve hoy al niño y la carta a la clínica de ojos.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic in the next days.</source>
        <translation>Por favor, lleve al niño y la carta a la clínica de ojos en los próximos días.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic when it next receives people.</source>
        <translation>Por favor, lleve al niño y la carta a la clínica de ojos cuando vuelva a atender.</translation>
    </message>
    <message>
        <source>The eyes of your child were tested.</source>
        <translation>Se examinaron los ojos de su niño.</translation>
    </message>
    <message>
        <source>To be worn (as the prescriber told)</source>
        <translation>Cómo llevarlas (según dijo el prescriptor)</translation>
    </message>
    <message>
        <source>The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: take them off and go to an eye clinic the same day.</source>
        <translation>Las gafas pueden sentirse raras una semana. Visión doble, dolor o pérdida súbita de visión: quíteselas y vaya a una clínica de ojos el mismo día.</translation>
    </message>
    <message>
        <source>Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Vuelva en 6 a 12 meses, o enseguida si un ojo se desvía o ve peor.</translation>
    </message>
    <message>
        <source>Told to (guardian), by</source>
        <translation>Explicado al tutor, por</translation>
    </message>
    <message>
        <source>Please help the child to wear them, and to keep them clean and in their case.</source>
        <translation>Por favor, ayude al niño a llevarlas, y a guardarlas limpias y en su estuche.</translation>
    </message>
    <message>
        <source>Please let the child sit where the board is read easily.</source>
        <translation>Por favor, siente al niño donde se lea bien la pizarra.</translation>
    </message>
    <message>
        <source>Tell the guardian at once if an eye turns or hurts, or if the child sees worse.</source>
        <translation>Avise enseguida al tutor si un ojo se desvía o duele, o si el niño ve peor.</translation>
    </message>
    <message>
        <source>Your glasses</source>
        <translation>Sus gafas</translation>
    </message>
    <message>
        <source>Glasses suggested for you</source>
        <translation>Gafas sugeridas para usted</translation>
    </message>
    <message>
        <source>Glasses to be made for you</source>
        <translation>Gafas que se harán para usted</translation>
    </message>
    <message>
        <source>No glasses needed</source>
        <translation>No necesita gafas</translation>
    </message>
    <message>
        <source>Not finished yet</source>
        <translation>Aún sin terminar</translation>
    </message>
    <message>
        <source>Please go to the eye clinic first</source>
        <translation>Vaya antes a la clínica de ojos</translation>
    </message>
    <message>
        <source>Go to the eye clinic today, and take the letter.</source>
        <translation>Vaya hoy a la clínica de ojos y lleve la carta.</translation>
    </message>
    <message>
        <source>Go to the eye clinic in the next days, and take the letter.</source>
        <translation>Vaya a la clínica de ojos en los próximos días y lleve la carta.</translation>
    </message>
    <message>
        <source>Go to the eye clinic when it next receives people, and take the letter.</source>
        <translation>Vaya a la clínica de ojos cuando vuelva a atender y lleve la carta.</translation>
    </message>
    <message>
        <source>right lens %1</source>
        <translation>lente derecha %1</translation>
    </message>
    <message>
        <source>left lens %1</source>
        <translation>lente izquierda %1</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>montura %1</translation>
    </message>
    <message>
        <source>What you were given</source>
        <translation>Lo que recibió</translation>
    </message>
    <message>
        <source>What is suggested</source>
        <translation>Lo que se sugiere</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>ad. %1</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Montura</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Lo que queda</translation>
    </message>
    <message>
        <source>Outside limit: %1.</source>
        <translation>Fuera del límite: %1.</translation>
    </message>
    <message>
        <source>Given because</source>
        <translation>Dadas porque</translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation>Tenga en cuenta</translation>
    </message>
    <message>
        <source>This pair was worn by somebody before.</source>
        <translation>Estas gafas las llevó antes otra persona.</translation>
    </message>
    <message>
        <source>You see with one eye: ask for lenses that do not break, and wear eye protection.</source>
        <translation>Usted ve con un solo ojo: pida lentes que no se rompan y lleve protección ocular.</translation>
    </message>
    <message>
        <source>New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop wearing them and go to an eye clinic the same day.</source>
        <translation>Las gafas nuevas pueden sentirse raras una semana. Visión doble, dolor o pérdida súbita de visión: deje de llevarlas y vaya a una clínica de ojos el mismo día.</translation>
    </message>
    <message>
        <source>Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Llévelas como dijo el prescriptor. Vuelva en 6 a 12 meses, o enseguida si un ojo se desvía o ve peor.</translation>
    </message>
    <message>
        <source>Come back if your sight changes, and for a new eye test in two years.</source>
        <translation>Vuelva si cambia su vista, y para otro examen de la vista en dos años.</translation>
    </message>
    <message>
        <source>Nothing in the box comes near enough, so glasses are to be made.</source>
        <translation>Nada en la caja se acerca lo suficiente, así que se harán gafas.</translation>
    </message>
    <message>
        <source>For the optician</source>
        <translation>Para el óptico</translation>
    </message>
    <message>
        <source>Collect at</source>
        <translation>Recoger en</translation>
    </message>
    <message>
        <source>On or after</source>
        <translation>El, o después del</translation>
    </message>
    <message>
        <source>Until then: temporary pair. Not for driving.</source>
        <translation>Hasta entonces: gafas provisionales. No para conducir.</translation>
    </message>
    <message>
        <source>Something is missing before glasses can be given:</source>
        <translation>Falta algo antes de poder dar gafas:</translation>
    </message>
    <message>
        <source>Come back on</source>
        <translation>Vuelva el</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Porque</translation>
    </message>
    <message>
        <source>Glasses wait until the clinic has seen your eyes.</source>
        <translation>Las gafas esperan hasta que la clínica vea sus ojos.</translation>
    </message>
    <message>
        <source>Your prescription</source>
        <translation>Su prescripción</translation>
    </message>
    <message>
        <source>Your eyes should be measured once more.</source>
        <translation>Hay que medir sus ojos una vez más.</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>DERECHO</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>IZQUIERDO</translation>
    </message>
    <message>
        <source>NEAR</source>
        <translation>CERCA</translation>
    </message>
    <message>
        <source>DISTANCE</source>
        <translation>LEJOS</translation>
    </message>
    <message>
        <source>ARM&apos;S LENGTH</source>
        <translation>BRAZO EXTENDIDO</translation>
    </message>
    <message>
        <source>BIFOCAL</source>
        <translation>BIFOCAL</translation>
    </message>
    <message>
        <source>centres %1 mm (assumed)</source>
        <translation>centros %1 mm (supuestos)</translation>
    </message>
    <message>
        <source>centres %1 mm</source>
        <translation>centros %1 mm</translation>
    </message>
    <message>
        <source>size S</source>
        <translation>tamaño S</translation>
    </message>
    <message>
        <source>size M</source>
        <translation>tamaño M</translation>
    </message>
    <message>
        <source>size L</source>
        <translation>tamaño L</translation>
    </message>
    <message>
        <source>axis set when mounted</source>
        <translation>eje puesto al montar</translation>
    </message>
    <message>
        <source>used pair</source>
        <translation>gafas usadas</translation>
    </message>
    <message>
        <source>Rules %1, program %2.</source>
        <translation>Reglas %1, programa %2.</translation>
    </message>
    <message>
        <source>For near work only.</source>
        <translation>Solo para trabajo de cerca.</translation>
    </message>
    <message>
        <source>Day and place</source>
        <translation>Día y lugar</translation>
    </message>
    <message>
        <source>Box %1: %2 pieces</source>
        <translation>Caja %1: %2 piezas</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casilla</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Empacado</translation>
    </message>
    <message>
        <source>Packed by</source>
        <translation>Empacado por</translation>
    </message>
    <message>
        <source>Counted again by</source>
        <translation>Contado otra vez</translation>
    </message>
    <message>
        <source>Count what lies there. Two persons; what the book says is not asked before the end.</source>
        <translation>Cuente lo que hay. Dos personas; lo que dice el registro no se pregunta antes del final.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Counted by (initials)</source>
        <translation>Contado por (iniciales)</translation>
    </message>
    <message>
        <source>Second person (initials)</source>
        <translation>Segunda persona (iniciales)</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter, take the acuity with it, then compare with the record. Where they differ write: the record does not match the pair.</source>
        <translation>Lea las gafas con el frontofocómetro, tome la agudeza con ellas y compare con lo anotado. Si difieren escriba: lo anotado no corresponde a las gafas.</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Anotación</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Anotado</translation>
    </message>
    <message>
        <source>Read right</source>
        <translation>Leído derecho</translation>
    </message>
    <message>
        <source>Read left</source>
        <translation>Leído izquierdo</translation>
    </message>
    <message>
        <source>Acuity</source>
        <translation>Agudeza</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Leído por</translation>
    </message>
    <message>
        <source>no power</source>
        <translation>sin potencia</translation>
    </message>
    <message>
        <source>Eye</source>
        <translation>Ojo</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Adición</translation>
    </message>
    <message>
        <source>Prism</source>
        <translation>Prisma</translation>
    </message>
    <message>
        <source>Centre, mm</source>
        <translation>Centro, mm</translation>
    </message>
    <message>
        <source>Height, mm</source>
        <translation>Altura, mm</translation>
    </message>
    <message>
        <source>minus cylinders</source>
        <translation>cilindros negativos</translation>
    </message>
    <message>
        <source>plus cylinders</source>
        <translation>cilindros positivos</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>como se escribió</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Vertex distance, mm</source>
        <translation>Distancia de vértice, mm</translation>
    </message>
    <message>
        <source>Working distance, mm</source>
        <translation>Distancia de trabajo, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescriptor</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>* half of the distance between both eyes, not measured for this eye</source>
        <translation>* mitad de la distancia entre ambos ojos, sin medir en este ojo</translation>
    </message>
    <message>
        <source>Not to be sent before these are measured:</source>
        <translation>No enviar antes de medir:</translation>
    </message>
    <message>
        <source>Wanted by, signature</source>
        <translation>Pedido por, firma</translation>
    </message>
    <message>
        <source>Glasses are being made for you: %1.</source>
        <translation>Se están haciendo gafas para usted: %1.</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>Encargado el</translation>
    </message>
    <message>
        <source>Bring this paper. The glasses are measured and tried on you before you take them home.</source>
        <translation>Traiga este papel. Las gafas se miden y se le prueban antes de que se las lleve.</translation>
    </message>
    <message>
        <source>If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly lost: do not wait, go to an eye clinic the same day.</source>
        <translation>Si no puede venir, mande a alguien a decírnoslo. Si su vista empeora, duele o se pierde de repente: no espere, vaya a una clínica de ojos el mismo día.</translation>
    </message>
    <message>
        <source>Rules %1, program version %2.</source>
        <translation>Reglas %1, versión del programa %2.</translation>
    </message>
    <message>
        <source>balance lens</source>
        <translation>lente de equilibrio</translation>
    </message>
    <message>
        <source>artificial eye</source>
        <translation>ojo artificial</translation>
    </message>
    <message>
        <source>does not see</source>
        <translation>no ve</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>Note for the person</source>
        <translation>Nota para la persona</translation>
    </message>
    <message>
        <source>Label of a line</source>
        <translation>Etiqueta de una línea</translation>
    </message>
    <message>
        <source>Label of a bin</source>
        <translation>Etiqueta de una casilla</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Lista de empaque</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>Hoja de recuento</translation>
    </message>
    <message>
        <source>Audit worksheet</source>
        <translation>Hoja de auditoría</translation>
    </message>
    <message>
        <source>Order to the laboratory</source>
        <translation>Encargo al laboratorio</translation>
    </message>
    <message>
        <source>Letter to the eye clinic</source>
        <translation>Carta a la clínica de ojos</translation>
    </message>
    <message>
        <source>Glasses to collect</source>
        <translation>Gafas por recoger</translation>
    </message>
    <message>
        <source>Note for the guardian</source>
        <translation>Nota para el tutor</translation>
    </message>
    <message>
        <source>Note for the teacher</source>
        <translation>Nota para el maestro</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>Ficha rápida</translation>
    </message>
    <message>
        <source>Audit of hand-overs</source>
        <translation>Auditoría de entregas</translation>
    </message>
    <message>
        <source>Right eye</source>
        <translation>Ojo derecho</translation>
    </message>
    <message>
        <source>Left eye</source>
        <translation>Ojo izquierdo</translation>
    </message>
    <message>
        <source>Distance, as written</source>
        <translation>Lejos, como se escribió</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>for near: reading, sewing, telephone</source>
        <translation>para cerca: leer, coser, teléfono</translation>
    </message>
    <message>
        <source>for work at arm&apos;s length</source>
        <translation>para trabajo a la distancia del brazo</translation>
    </message>
    <message>
        <source>for far (upper part) and near (lower part)</source>
        <translation>para lejos (parte de arriba) y cerca (parte de abajo)</translation>
    </message>
    <message>
        <source>for far: walking, school board, faces</source>
        <translation>para lejos: caminar, pizarra, caras</translation>
    </message>
    <message>
        <source>For near work only. Not for walking, riding or driving.</source>
        <translation>Solo para trabajo de cerca. No para caminar, montar ni conducir.</translation>
    </message>
    <message>
        <source>For work at arm&apos;s length only. Not for walking, riding or driving.</source>
        <translation>Solo para trabajo a la distancia del brazo. No para caminar, montar ni conducir.</translation>
    </message>
    <message>
        <source>The lower part is for near: take care on steps and kerbs. Drive only if your sight with these meets the law where you live.</source>
        <translation>La parte de abajo es para cerca: cuidado con escalones y bordillos. Conduzca solo si su vista con estas cumple la ley de su país.</translation>
    </message>
    <message>
        <source>Drive only if your sight with these meets the law where you live.</source>
        <translation>Conduzca solo si su vista con estas cumple la ley de su país.</translation>
    </message>
    <message>
        <source>Suggested from the prescription of %1 of %2 by rules %3, version %4. This is not an eye examination.</source>
        <translation>Sugerido de la prescripción de %1 del %2 según las reglas %3, versión %4. Esto no es un examen de los ojos.</translation>
    </message>
    <message>
        <source>(prescriber not named)</source>
        <translation>(prescriptor sin nombrar)</translation>
    </message>
    <message>
        <source>(no date)</source>
        <translation>(sin fecha)</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>beyond 95 %</source>
        <translation>más allá del 95 %</translation>
    </message>
    <message>
        <source>beyond 99.9 %</source>
        <translation>más allá del 99.9 %</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Evaluadas</translation>
    </message>
    <message>
        <source>At odds</source>
        <translation>En desacuerdo</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Proporción</translation>
    </message>
    <message>
        <source>95 % limits</source>
        <translation>Límites del 95 %</translation>
    </message>
    <message>
        <source>Funnel</source>
        <translation>Embudo</translation>
    </message>
    <message>
        <source>Share at odds against the number judged; lines: the share of all %1, the limits of chance at 95 % (dashed) and 99.9 % (solid)</source>
        <translation>Proporción en desacuerdo frente al número evaluado; líneas: la proporción de todas %1, los límites del azar al 95 % (a trazos) y 99.9 % (continua)</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>entregas evaluadas</translation>
    </message>
    <message>
        <source>Good ones before it</source>
        <translation>Buenas antes</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Gráfico</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Serie</translation>
    </message>
    <message>
        <source>Good hand-overs between two at odds, in their order; centre %1, a run longer than %2 is better than the share says</source>
        <translation>Entregas buenas entre dos en desacuerdo, en su orden; centro %1, una serie más larga que %2 es mejor de lo que dice la proporción</translation>
    </message>
    <message>
        <source>runs, the last one still open</source>
        <translation>series, la última aún abierta</translation>
    </message>
    <message>
        <source>better than the share says</source>
        <translation>mejor de lo que dice la proporción</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semana del</translation>
    </message>
    <message>
        <source>Share at odds by week; centre %1, limits at three standard deviations, which step with the volume</source>
        <translation>Proporción en desacuerdo por semana; centro %1, límites a tres desviaciones típicas, que siguen el volumen</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>más allá</translation>
    </message>
    <message>
        <source>Large lot accepted</source>
        <translation>Lote grande aceptado</translation>
    </message>
    <message>
        <source>This lot accepted</source>
        <translation>Este lote aceptado</translation>
    </message>
    <message>
        <source>Failing</source>
        <translation>Que fallan</translation>
    </message>
    <message>
        <source>How likely a lot is accepted by the share that fails in it: %1 read, at most %2 may fail</source>
        <translation>Probabilidad de aceptar un lote según la proporción que falla: %1 leídas, como máximo pueden fallar %2</translation>
    </message>
    <message>
        <source>failing</source>
        <translation>que fallan</translation>
    </message>
    <message>
        <source>Tell what the glasses are for, what is left, and when to come back; give the note.</source>
        <translation>Diga para qué son las gafas, qué queda y cuándo volver; dé la nota.</translation>
    </message>
    <message>
        <source>Close the program, then copy the whole folder to a stick at the end of the day.</source>
        <translation>Cierre el programa y copie toda la carpeta a una memoria al final del día.</translation>
    </message>
    <message>
        <source>Take a sample of pairs, read them, and look for the slip, not for somebody to blame.</source>
        <translation>Tome una muestra de gafas, léalas y busque el descuido, no a quién culpar.</translation>
    </message>
    <message>
        <source>Type the camp code and the final prescription as written; signs always.</source>
        <translation>Escriba el código de campamento y la prescripción final como está escrita; siempre los signos.</translation>
    </message>
    <message>
        <source>Pain, red eye, sudden loss, flashes, double vision: the clinic first.</source>
        <translation>Dolor, ojo rojo, pérdida súbita, destellos, visión doble: primero la clínica.</translation>
    </message>
    <message>
        <source>Measure the distance between the eyes; for reading the near one.</source>
        <translation>Mida la distancia entre los ojos; para leer, la de cerca.</translation>
    </message>
    <message>
        <source>Fetch what is suggested from its bin and scan the label.</source>
        <translation>Traiga lo sugerido de su casilla y escanee la etiqueta.</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter: does it hold what the label says?</source>
        <translation>Lea las gafas con el frontofocómetro: ¿son como dice la etiqueta?</translation>
    </message>
    <message>
        <source>Try it on the face; take the acuity of each eye with it.</source>
        <translation>Pruébelas en la cara; tome la agudeza de cada ojo con ellas.</translation>
    </message>
    <message>
        <source>Outside a limit: say no, or write the reason in your own words.</source>
        <translation>Fuera de un límite: diga que no, o escriba el motivo con sus palabras.</translation>
    </message>
    <message>
        <source>Put back what was tried and not taken, each into the bin of its label.</source>
        <translation>Devuelva lo probado y no tomado, cada pieza a la casilla de su etiqueta.</translation>
    </message>
    <message>
        <source>Take in a delivery by scanning it; a new lot waits until samples are read.</source>
        <translation>Reciba una entrega escaneándola; un lote nuevo espera hasta leer muestras.</translation>
    </message>
    <message>
        <source>Print labels for what came; one on each case, one on each bin.</source>
        <translation>Imprima etiquetas para lo que llegó; una en cada estuche, una en cada casilla.</translation>
    </message>
    <message>
        <source>A pair off its label goes into quarantine, never back into the bin.</source>
        <translation>Unas gafas distintas de su etiqueta van a cuarentena, nunca de vuelta a la casilla.</translation>
    </message>
    <message>
        <source>Returned pairs are cleaned and read before they are given again.</source>
        <translation>Las gafas devueltas se limpian y se leen antes de darlas otra vez.</translation>
    </message>
    <message>
        <source>Count by two persons on the blind sheet; every difference has a reason.</source>
        <translation>Cuenten dos personas en la hoja ciega; cada diferencia tiene un motivo.</translation>
    </message>
    <message>
        <source>Send to another site with a list; what arrives is counted there.</source>
        <translation>Envíe a otra sede con una lista; lo que llega se cuenta allí.</translation>
    </message>
    <message>
        <source>Choose the rules with the prescriber, and name them to the team.</source>
        <translation>Elija las reglas con el prescriptor, y dígaselas al equipo.</translation>
    </message>
    <message>
        <source>Look at what was given outside a limit, and at its reasons, each evening.</source>
        <translation>Mire cada tarde lo que se dio fuera de un límite, y sus motivos.</translation>
    </message>
    <message>
        <source>Every letter to the clinic is counted when its lower part comes back.</source>
        <translation>Cada carta a la clínica cuenta cuando vuelve su parte de abajo.</translation>
    </message>
    <message>
        <source>Every pair that is ordered is followed until it is collected.</source>
        <translation>Cada encargo de gafas se sigue hasta que se recoge.</translation>
    </message>
    <message>
        <source>Codes leave the camp, names do not.</source>
        <translation>Los códigos salen del campamento, los nombres no.</translation>
    </message>
    <message>
        <source>Quick card: at the table</source>
        <translation>Ficha rápida: en la mesa</translation>
    </message>
    <message>
        <source>Quick card: keeper of the box</source>
        <translation>Ficha rápida: encargado de la caja</translation>
    </message>
    <message>
        <source>Quick card: supervisor</source>
        <translation>Ficha rápida: supervisor</translation>
    </message>
    <message>
        <source>Told with every pair</source>
        <translation>Se dice con cada entrega</translation>
    </message>
    <message>
        <source>A suggestion is not an eye examination. The prescriber and the optician decide.</source>
        <translation>Una sugerencia no es un examen de los ojos. Deciden el prescriptor y el óptico.</translation>
    </message>
    <message>
        <source>Says that sight was lost suddenly.</source>
        <translation>Dice que perdió la visión de repente.</translation>
    </message>
    <message>
        <source>Says that an eye hurts.</source>
        <translation>Dice que le duele un ojo.</translation>
    </message>
    <message>
        <source>An eye is red.</source>
        <translation>Un ojo está rojo.</translation>
    </message>
    <message>
        <source>Sees new flashes or floaters.</source>
        <translation>Ve destellos o manchas nuevas.</translation>
    </message>
    <message>
        <source>Sees double.</source>
        <translation>Ve doble.</translation>
    </message>
    <message>
        <source>A pupil looks white.</source>
        <translation>Una pupila se ve blanca.</translation>
    </message>
    <message>
        <source>A child; the eyes do not look the same way.</source>
        <translation>Un niño; los ojos no miran en la misma dirección.</translation>
    </message>
    <message>
        <source>The prescriber asks for a refraction with drops.</source>
        <translation>El prescriptor pide una refracción con gotas.</translation>
    </message>
    <message>
        <source>Straight lines look bent or broken.</source>
        <translation>Las líneas rectas se ven torcidas o rotas.</translation>
    </message>
    <message>
        <source>A part of the field of view is missing.</source>
        <translation>Falta una parte del campo visual.</translation>
    </message>
    <message>
        <source>Sees rings round lights.</source>
        <translation>Ve anillos alrededor de las luces.</translation>
    </message>
    <message>
        <source>A child who does not reach 6/9 in each eye with the final prescription.</source>
        <translation>Un niño que no llega a 6/9 en cada ojo con la prescripción final.</translation>
    </message>
    <message>
        <source>A child who came with less than 6/60 in an eye.</source>
        <translation>Un niño que vino con menos de 6/60 en un ojo.</translation>
    </message>
    <message>
        <source>A child with +3.50 D or more, or a cylinder of 1.50 D or more.</source>
        <translation>Un niño con +3.50 D o más, o un cilindro de 1.50 D o más.</translation>
    </message>
    <message>
        <source>Under 8 years; the eyes differ by 1.50 D or more.</source>
        <translation>Menos de 8 años; los ojos difieren 1.50 D o más.</translation>
    </message>
    <message>
        <source>Less than 6/12 in the better eye with the best prescription found.</source>
        <translation>Menos de 6/12 en el mejor ojo con la mejor prescripción hallada.</translation>
    </message>
    <message>
        <source>A mean sphere beyond 6.00 D.</source>
        <translation>Una esfera media más allá de 6.00 D.</translation>
    </message>
    <message>
        <source>A sphere of +8.00 D or more.</source>
        <translation>Una esfera de +8.00 D o más.</translation>
    </message>
    <message>
        <source>What was observed</source>
        <translation>Lo que se observó</translation>
    </message>
    <message>
        <source>In the person&apos;s words</source>
        <translation>En palabras de la persona</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>sin gafas</translation>
    </message>
    <message>
        <source>own pair</source>
        <translation>gafas propias</translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation>estenopeico</translation>
    </message>
    <message>
        <source>best</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>Please see this person today, and tell us on the part below.</source>
        <translation>Por favor, vean hoy a esta persona y respóndannos en la parte de abajo.</translation>
    </message>
    <message>
        <source>Please see this person in the next days, and tell us on the part below.</source>
        <translation>Por favor, vean a esta persona en los próximos días y respóndannos en la parte de abajo.</translation>
    </message>
    <message>
        <source>Please see this person at a usual appointment, and tell us on the part below.</source>
        <translation>Por favor, vean a esta persona en una cita normal y respóndannos en la parte de abajo.</translation>
    </message>
    <message>
        <source>No glasses are given until you have seen the person.</source>
        <translation>No se dan gafas hasta que ustedes hayan visto a la persona.</translation>
    </message>
    <message>
        <source>Glasses were given today: %1</source>
        <translation>Hoy se dieron gafas: %1</translation>
    </message>
    <message>
        <source>No glasses are recorded as given yet.</source>
        <translation>Aún no constan gafas dadas.</translation>
    </message>
    <message>
        <source>Please return this part</source>
        <translation>Por favor, devuelvan esta parte</translation>
    </message>
    <message>
        <source>Return to</source>
        <translation>Devolver a</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Visto el</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Hallado</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Glasses: may be given / wait / other prescription</source>
        <translation>Gafas: se pueden dar / esperar / otra prescripción</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Name (write it in only if the person agrees)</source>
        <translation>Nombre (escríbalo solo si la persona está de acuerdo)</translation>
    </message>
    <message>
        <source>Prescription found</source>
        <translation>Prescripción hallada</translation>
    </message>
    <message>
        <source>What we ask</source>
        <translation>Lo que pedimos</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguna</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (95 % limits %4 to %5)</source>
        <translation>%1 de %2, %3 (límites del 95 % %4 a %5)</translation>
    </message>
    <message>
        <source>Refraction</source>
        <translation>Refracción</translation>
    </message>
    <message>
        <source>Dispensing</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>Seguimiento</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Datos anotados</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Kind of pair</source>
        <translation>Tipo de gafas</translation>
    </message>
    <message>
        <source>Desk (numbers of this report)</source>
        <translation>Mesa (números de este informe)</translation>
    </message>
    <message>
        <source>By site</source>
        <translation>Por sede</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Por semana</translation>
    </message>
    <message>
        <source>By rules</source>
        <translation>Por reglas</translation>
    </message>
    <message>
        <source>By purpose</source>
        <translation>Por uso</translation>
    </message>
    <message>
        <source>By kind of pair</source>
        <translation>Por tipo de gafas</translation>
    </message>
    <message>
        <source>By desk</source>
        <translation>Por mesa</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>premontadas</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifocales</translation>
    </message>
    <message>
        <source>lenses in a frame</source>
        <translation>lentes en una montura</translation>
    </message>
    <message>
        <source>nobody has looked yet</source>
        <translation>nadie ha mirado aún</translation>
    </message>
    <message>
        <source>met</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>under-met</source>
        <translation>cubierta en parte</translation>
    </message>
    <message>
        <source>unmet</source>
        <translation>no cubierta</translation>
    </message>
    <message>
        <source>no need</source>
        <translation>sin necesidad</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>otra causa</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>At odds: by the record, the pair is not one that the rules would call acceptable, or what was measured beside the record speaks against it. This page is about records; a person decides what they mean. Nothing here is a ranking.</source>
        <translation>En desacuerdo: según lo anotado, las gafas no son de las que las reglas llamarían aceptables, o lo medido al lado habla en contra. Esta página trata de lo anotado; una persona decide qué significa. Nada aquí es una clasificación.</translation>
    </message>
    <message>
        <source>Hand-overs</source>
        <translation>Entregas</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 del %2 al %3</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Evaluado por</translation>
    </message>
    <message>
        <source>Record and pair at odds</source>
        <translation>Lo anotado y las gafas en desacuerdo</translation>
    </message>
    <message>
        <source>Entry %1 is not as it was written; only what stands before it was judged.</source>
        <translation>La anotación %1 no está como se escribió; solo se evaluó lo que hay antes de ella.</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>Qué hacer ahora</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>No se encontró nada.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>What the records show</source>
        <translation>Lo que muestran los datos anotados</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Veces</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Kinds found less often, in the detail: %1</source>
        <translation>Tipos hallados con menos frecuencia, en detalle: %1</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>En el tiempo</translation>
    </message>
    <message>
        <source>p-chart by week</source>
        <translation>gráfico p por semana</translation>
    </message>
    <message>
        <source>p-chart: %1</source>
        <translation>gráfico p: %1</translation>
    </message>
    <message>
        <source>g-chart: %1</source>
        <translation>gráfico g: %1</translation>
    </message>
    <message>
        <source>g-chart</source>
        <translation>gráfico g</translation>
    </message>
    <message>
        <source>g-chart: half of the runs between two at odds are %1 good ones or fewer; one longer than %2 is better than the share says</source>
        <translation>gráfico g: la mitad de las series entre dos en desacuerdo son de %1 buenas o menos; una más larga que %2 es mejor de lo que dice la proporción</translation>
    </message>
    <message>
        <source>Read again at the bench</source>
        <translation>Leídas otra vez en el banco</translation>
    </message>
    <message>
        <source>No lot was drawn yet.</source>
        <translation>Aún no se sorteó ningún lote.</translation>
    </message>
    <message>
        <source>%1 of %2 hand-overs, at most %3 may fail</source>
        <translation>%1 de %2 entregas, como máximo pueden fallar %3</translation>
    </message>
    <message>
        <source>Operating curve</source>
        <translation>Curva característica</translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation>aún sin resultados</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>refused: read every pair of these days</source>
        <translation>rechazado: lea todas las gafas de estos días</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Vistos otra vez</translation>
    </message>
    <message>
        <source>With the pair when seen</source>
        <translation>Con las gafas al revisar</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Due now</source>
        <translation>Pendientes ahora</translation>
    </message>
    <message>
        <source>Effective coverage, distance, of %1 who came</source>
        <translation>Cobertura efectiva, lejos, de %1 que vinieron</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>Cobertura</translation>
    </message>
    <message>
        <source>as they came</source>
        <translation>al venir</translation>
    </message>
    <message>
        <source>as they are now</source>
        <translation>como están ahora</translation>
    </message>
    <message>
        <source>Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator 3154). It is defined for a sample of a population; here it is of those who came.</source>
        <translation>Cubierta entre cubierta, cubierta en parte y no cubierta, mejor ojo, 6/12 (Organización Mundial de la Salud, indicador 3154). Se define para una muestra de una población; aquí es de quienes vinieron.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>In figures</source>
        <translation>En cifras</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Descuido más probable</translation>
    </message>
    <message>
        <source>None to be listed one by one.</source>
        <translation>Ninguno que listar uno por uno.</translation>
    </message>
    <message>
        <source>%1 more are not listed here; `audit --json` has them all.</source>
        <translation>%1 más no están en esta lista; `audit --json` los tiene todos.</translation>
    </message>
    <message>
        <source>A slip is a mistake in a record or in a pick, named by its likelihood and never proved by it.</source>
        <translation>Un descuido es un fallo al anotar o al elegir, nombrado por su probabilidad y nunca probado por ella.</translation>
    </message>
    <message>
        <source>%1 stronger than written: hold things a little nearer</source>
        <translation>%1 más fuerte que lo escrito: acerque un poco las cosas</translation>
    </message>
    <message>
        <source>%1 weaker than written: hold things a little further away</source>
        <translation>%1 más débil que lo escrito: aleje un poco las cosas</translation>
    </message>
    <message>
        <source>%1 more plus than written: far things are a little less sharp</source>
        <translation>%1 más plus que lo escrito: lo lejano se ve un poco menos nítido</translation>
    </message>
    <message>
        <source>%1 more minus than written: the eye has to focus a little more</source>
        <translation>%1 más minus que lo escrito: el ojo debe enfocar un poco más</translation>
    </message>
    <message>
        <source>%1 of the cylinder is not in the lens: fine lines are a little less sharp</source>
        <translation>%1 del cilindro no está en la lente: las líneas finas se ven un poco menos nítidas</translation>
    </message>
    <message>
        <source>near part: %1</source>
        <translation>parte de cerca: %1</translation>
    </message>
    <message>
        <source>Both eyes</source>
        <translation>Ambos ojos</translation>
    </message>
    <message>
        <source>Things are clear from about %1 cm.</source>
        <translation>Las cosas se ven claras desde unos %1 cm.</translation>
    </message>
    <message>
        <source>Things are clear from about %1 to %2 cm.</source>
        <translation>Las cosas se ven claras desde unos %1 hasta %2 cm.</translation>
    </message>
    <message>
        <source>The lenses have the power that was written for you.</source>
        <translation>Las lentes tienen la potencia escrita para usted.</translation>
    </message>
    <message>
        <source>The middle of the lenses is not quite before the middle of the eyes: the first days may feel odd.</source>
        <translation>El centro de las lentes no queda del todo ante el centro de los ojos: los primeros días pueden sentirse raras.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AnswerPanel</name>
    <message>
        <source>Needed: %1</source>
        <translation>Necesita: %1</translation>
    </message>
    <message>
        <source>Referral: %1, %2</source>
        <translation>Derivación: %1, %2</translation>
    </message>
    <message>
        <source>Measure again before handing over.</source>
        <translation>Mida otra vez antes de entregar.</translation>
    </message>
    <message>
        <source>Purpose shown</source>
        <translation>Uso mostrado</translation>
    </message>
    <message>
        <source>Each purpose is judged alone</source>
        <translation>Cada uso se evalúa por separado</translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>Reglas: %1</translation>
    </message>
    <message>
        <source>%1  (rules: %2)</source>
        <translation>%1  (reglas: %2)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCasePanel</name>
    <message>
        <source>Criteria and slips, or the picture of why not</source>
        <translation>Criterios y descuidos, o la imagen de por qué no</translation>
    </message>
    <message>
        <source>Criteria and slips</source>
        <translation>Criterios y descuidos</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Por qué no</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>Qué muestran las barras</translation>
    </message>
    <message>
        <source>From the better pair to the pair given, or the limits of one of them</source>
        <translation>De las gafas mejores a las dadas, o los límites de unas de ellas</translation>
    </message>
    <message>
        <source>From the better pair to the pair given</source>
        <translation>De las gafas mejores a las dadas</translation>
    </message>
    <message>
        <source>Where the cost of the pair given comes from</source>
        <translation>De dónde viene el coste de las gafas dadas</translation>
    </message>
    <message>
        <source>Limits used up by the pair given</source>
        <translation>Límites gastados por las gafas dadas</translation>
    </message>
    <message>
        <source>Limits used up by the better pair</source>
        <translation>Límites gastados por las gafas mejores</translation>
    </message>
    <message>
        <source>Choose a hand-over that could be judged: what kept it from its limits stands here.</source>
        <translation>Elija una entrega que se pudo evaluar: aquí está lo que la apartó de sus límites.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCharts</name>
    <message>
        <source>Of 100 hand-overs: why not</source>
        <translation>De 100 entregas: por qué no</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Guardar el gráfico</translation>
    </message>
    <message>
        <source>Pictures (*.png);;Tables (*.csv)</source>
        <translation>Imágenes (*.png);;Tablas (*.csv)</translation>
    </message>
    <message>
        <source>The chart is %1.</source>
        <translation>El gráfico está en %1.</translation>
    </message>
    <message>
        <source>Saves the chart as a PDF or a picture, or its numbers as a table (Ctrl+Shift+S)</source>
        <translation>Guarda el gráfico como PDF o imagen, o sus números como tabla (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Prints the chart with its numbers on the printer of the settings (Ctrl+P)</source>
        <translation>Imprime el gráfico con sus números en la impresora de los ajustes (Ctrl+P)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papel (*.pdf)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditPlace</name>
    <message>
        <source>Audit</source>
        <translation>Auditoría</translation>
    </message>
    <message>
        <source>Every hand-over is judged again by the rules and the stock of its moment.</source>
        <translation>Cada entrega se evalúa de nuevo con las reglas y existencias de su momento.</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translation>Auditar otra vez</translation>
    </message>
    <message>
        <source>Reads the ledger from the first entry to the last (F5)</source>
        <translation>Lee el registro de la primera anotación a la última (F5)</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Lo que se muestra</translation>
    </message>
    <message>
        <source>Shows findings of one class only</source>
        <translation>Muestra hallazgos de una sola clase</translation>
    </message>
    <message>
        <source>Look for a finding</source>
        <translation>Buscar un hallazgo</translation>
    </message>
    <message>
        <source>Look for a person, a line, a word</source>
        <translation>Buscar una persona, una línea, una palabra</translation>
    </message>
    <message>
        <source>Shows only findings in which these words stand (Ctrl+F)</source>
        <translation>Muestra solo hallazgos con estas palabras (Ctrl+F)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>What is to be said of hand-overs, one by one</source>
        <translation>Lo que hay que decir de las entregas, una por una</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Gráficos</translation>
    </message>
    <message>
        <source>How often, by site, week and kind of pair</source>
        <translation>Con qué frecuencia, por sede, semana y tipo de gafas</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Lots read again, who is to be seen again, the report</source>
        <translation>Lotes leídos otra vez, a quién ver otra vez, el informe</translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation>Hallazgos de la auditoría</translation>
    </message>
    <message>
        <source>Choose a finding to see need, pair and slips beside</source>
        <translation>Elija un hallazgo para ver al lado necesidad, gafas y descuidos</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Gráfico</translation>
    </message>
    <message>
        <source>Funnel: shares against the size of the group</source>
        <translation>Embudo: proporciones frente al tamaño del grupo</translation>
    </message>
    <message>
        <source>Runs of good hand-overs (g-chart)</source>
        <translation>Series de entregas buenas (gráfico g)</translation>
    </message>
    <message>
        <source>Weeks (p-chart)</source>
        <translation>Semanas (gráfico p)</translation>
    </message>
    <message>
        <source>Which picture is drawn</source>
        <translation>Qué imagen se dibuja</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Grupos</translation>
    </message>
    <message>
        <source>What the groups of the funnel are</source>
        <translation>Qué son los grupos del embudo</translation>
    </message>
    <message>
        <source>Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. Circle: inside · triangle: beyond the inner limit · diamond: beyond the outer. Nothing is ranked.</source>
        <translation>Continua: la proporción de todas · a trazos: límite interior, 95 % · punteada: límite exterior. Círculo: dentro · triángulo: más allá del límite interior · rombo: más allá del exterior. Nada se clasifica.</translation>
    </message>
    <message>
        <source>The numbers of the chart</source>
        <translation>Los números del gráfico</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Los mismos números que en la imagen</translation>
    </message>
    <message>
        <source>Why, criterion by criterion:</source>
        <translation>Por qué, criterio por criterio:</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Gafas dadas</translation>
    </message>
    <message>
        <source>How the pair that was given is judged</source>
        <translation>Cómo se evalúan las gafas dadas</translation>
    </message>
    <message>
        <source>Better pair</source>
        <translation>Gafas mejores</translation>
    </message>
    <message>
        <source>How the pair that lay in the box is judged</source>
        <translation>Cómo se evalúan las gafas que estaban en la caja</translation>
    </message>
    <message>
        <source>Criteria of the pair</source>
        <translation>Criterios de las gafas</translation>
    </message>
    <message>
        <source>Each criterion with its value, its limit and the source of the limit</source>
        <translation>Cada criterio con su valor, su límite y la fuente del límite</translation>
    </message>
    <message>
        <source>Slips that the record allows. It speaks of the record; a person decides.</source>
        <translation>Descuidos que permite lo anotado. Hablan de lo anotado; decide una persona.</translation>
    </message>
    <message>
        <source>Slips and their arithmetic</source>
        <translation>Descuidos y su cálculo</translation>
    </message>
    <message>
        <source>Probability of each slip, and how it comes about</source>
        <translation>Probabilidad de cada descuido, y cómo se obtiene</translation>
    </message>
    <message>
        <source>Judging hand-overs again…</source>
        <translation>Evaluando las entregas otra vez…</translation>
    </message>
    <message>
        <source>Reading the ledger …</source>
        <translation>Leyendo el registro …</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written; audit again with F5.</source>
        <translation>Detenido. No se escribió nada; audite otra vez con F5.</translation>
    </message>
    <message>
        <source>The audit ended before its time; the reason stands above.</source>
        <translation>La auditoría acabó antes de tiempo; el motivo está arriba.</translation>
    </message>
    <message>
        <source>hand-overs %1, judged again %2</source>
        <translation>entregas %1, evaluadas otra vez %2</translation>
    </message>
    <message>
        <source>pair and record at odds: %1</source>
        <translation>gafas y lo anotado en desacuerdo: %1</translation>
    </message>
    <message>
        <source>findings %1</source>
        <translation>hallazgos %1</translation>
    </message>
    <message>
        <source>%1 more are counted and not listed</source>
        <translation>%1 más se cuentan y no se listan</translation>
    </message>
    <message>
        <source>The record is whole: %1 entries, each follows the one before.</source>
        <translation>El registro está íntegro: %1 anotaciones, cada una sigue a la anterior.</translation>
    </message>
    <message>
        <source>Every finding</source>
        <translation>Todos los hallazgos</translation>
    </message>
    <message>
        <source>by site</source>
        <translation>por sede</translation>
    </message>
    <message>
        <source>by who handed over</source>
        <translation>por quién entregó</translation>
    </message>
    <message>
        <source>by week</source>
        <translation>por semana</translation>
    </message>
    <message>
        <source>by profile</source>
        <translation>por perfil</translation>
    </message>
    <message>
        <source>by purpose</source>
        <translation>por uso</translation>
    </message>
    <message>
        <source>by kind of pair</source>
        <translation>por tipo de gafas</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecho</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierdo</translation>
    </message>
    <message>
        <source>%1: not judged</source>
        <translation>%1: sin evaluar</translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation>%1: necesita %2</translation>
    </message>
    <message>
        <source>, was given %1</source>
        <translation>, recibió %1</translation>
    </message>
    <message>
        <source>Pair %1: %2</source>
        <translation>Gafas %1: %2</translation>
    </message>
    <message>
        <source>In the box lay %1 (bin %2): %3</source>
        <translation>En la caja había %1 (casilla %2): %3</translation>
    </message>
    <message>
        <source>No slip was looked for: record, pair and witnesses agree.</source>
        <translation>No se buscó ningún descuido: lo anotado, las gafas y los testigos concuerdan.</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>%1  %2: %3</translation>
    </message>
    <message>
        <source>Below each: prior × witnesses × pair; the probability is its part of the sum.</source>
        <translation>Debajo de cada uno: previa × testigos × gafas; la probabilidad es su parte de la suma.</translation>
    </message>
    <message>
        <source>Slips of the record cannot be tested here: nothing was measured beside it.</source>
        <translation>Los descuidos al anotar no se pueden probar aquí: no se midió nada al lado.</translation>
    </message>
    <message>
        <source>No finding is chosen</source>
        <translation>Ningún hallazgo elegido</translation>
    </message>
    <message>
        <source>Choose a finding in the list: what was needed, what was given and what lay in the box stand here.</source>
        <translation>Elija un hallazgo en la lista: aquí está lo que se necesitaba, lo que se dio y lo que había en la caja.</translation>
    </message>
    <message>
        <source>About the course of events</source>
        <translation>Sobre el curso de los hechos</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>%1, %2, anotación %3</translation>
    </message>
    <message>
        <source>Need, pair and findings</source>
        <translation>Necesidad, gafas y hallazgos</translation>
    </message>
    <message>
        <source>What was needed, what was given, what lay in the box; the text can be copied</source>
        <translation>Lo que se necesitaba, lo que se dio, lo que había en la caja; el texto se puede copiar</translation>
    </message>
    <message>
        <source>Nothing was handed over in this camp yet, so there is nothing to audit.</source>
        <translation>Aún no se entregó nada en este campamento, así que no hay nada que auditar.</translation>
    </message>
    <message>
        <source>Check the record</source>
        <translation>Comprobar el registro</translation>
    </message>
    <message>
        <source>Every entry, every text and every count of the ledger against the chain, in the background (F6)</source>
        <translation>Cada anotación, cada texto y cada número del registro frente a la cadena, en segundo plano (F6)</translation>
    </message>
    <message>
        <source>Save the report for the site</source>
        <translation>Guardar el informe para la sede</translation>
    </message>
    <message>
        <source>Checking the record…</source>
        <translation>Comprobando el registro…</translation>
    </message>
    <message>
        <source>Checking the record, entry by entry …</source>
        <translation>Comprobando el registro, anotación por anotación …</translation>
    </message>
    <message>
        <source>The check was stopped before its end.</source>
        <translation>La comprobación se detuvo antes del final.</translation>
    </message>
    <message>
        <source>Print the chart</source>
        <translation>Imprimir el gráfico</translation>
    </message>
    <message>
        <source>Save the chart…</source>
        <translation>Guardar el gráfico…</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditReports</name>
    <message>
        <source>For everybody at the site: text, page for a browser, PDF, table or JSON (Ctrl+S)</source>
        <translation>Para todos en la sede: texto, página para un navegador, PDF, tabla o JSON (Ctrl+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Prints the page for the site on the printer of the settings</source>
        <translation>Imprime la página para la sede en la impresora de los ajustes</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papel (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Texto (*.txt)</translation>
    </message>
    <message>
        <source>Data (*.json)</source>
        <translation>Datos (*.json)</translation>
    </message>
    <message>
        <source>No printer is chosen; choose one in the settings (Ctrl+,), or save a PDF.</source>
        <translation>No hay impresora elegida; elija una en los ajustes (Ctrl+,), o guarde un PDF.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Drawing the pages…</source>
        <translation>Dibujando las páginas…</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsModel</name>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Does</source>
        <translation>Efecto</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>De qué</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsView</name>
    <message>
        <source>Bars: why not</source>
        <translation>Barras: por qué no</translation>
    </message>
    <message>
        <source>Arrows scroll; the same numbers stand in the table</source>
        <translation>Las flechas desplazan; los mismos números están en la tabla</translation>
    </message>
    <message>
        <source>The numbers of the bars</source>
        <translation>Los números de las barras</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Los mismos números que en la imagen</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Los mismos números están en la tabla de al lado</translation>
    </message>
    <message>
        <source>Filled: whole · lines rising: adds · lines falling: takes away.</source>
        <translation>Relleno: total · líneas que suben: suma · líneas que bajan: resta.</translation>
    </message>
    <message>
        <source>Dots: inside · filled, with a diamond: outside · dashed: the limit.</source>
        <translation>Puntos: dentro · rellenos, con rombo: fuera · discontinua: el límite.</translation>
    </message>
</context>
<context>
    <name>quarterstep::BenchPanel</name>
    <message>
        <source>Lots read again at the bench</source>
        <translation>Lotes leídos otra vez en el banco</translation>
    </message>
    <message>
        <source>Pairs to read:</source>
        <translation>Gafas que leer:</translation>
    </message>
    <message>
        <source>Pairs to read</source>
        <translation>Gafas que leer</translation>
    </message>
    <message>
        <source>How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small</source>
        <translation>Cuántas gafas se sortean; «las menos posibles» mantiene pequeño el riesgo de decidir mal</translation>
    </message>
    <message>
        <source>as few as will do</source>
        <translation>las menos posibles</translation>
    </message>
    <message>
        <source>Draw a lot…</source>
        <translation>Sortear un lote…</translation>
    </message>
    <message>
        <source>Draws hand-overs by lot, enters the draw and writes the sheet for the bench</source>
        <translation>Sortea entregas, anota el sorteo y escribe la hoja para el banco</translation>
    </message>
    <message>
        <source>Sheet for the bench</source>
        <translation>Hoja para el banco</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>Take in a sheet…</source>
        <translation>Recibir una hoja…</translation>
    </message>
    <message>
        <source>Reads a filled-in sheet, judges it and enters results and decision</source>
        <translation>Lee una hoja rellena, la evalúa y anota resultados y decisión</translation>
    </message>
    <message>
        <source>Sheet from the bench</source>
        <translation>Hoja del banco</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Sorteado</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>Gafas</translation>
    </message>
    <message>
        <source>May fail</source>
        <translation>Pueden fallar</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisión</translation>
    </message>
    <message>
        <source>Lots drawn in this camp</source>
        <translation>Lotes sorteados en este campamento</translation>
    </message>
    <message>
        <source>To be seen again</source>
        <translation>Por ver otra vez</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Dadas</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Gafas</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Persons to be seen again</source>
        <translation>Personas por ver otra vez</translation>
    </message>
    <message>
        <source>Report: no names and no initials; small counts are hidden on the page for the site.</source>
        <translation>Informe: sin nombres ni iniciales; los números pequeños se ocultan en la página para la sede.</translation>
    </message>
    <message>
        <source>Page for the site…</source>
        <translation>Página para la sede…</translation>
    </message>
    <message>
        <source>In detail…</source>
        <translation>En detalle…</translation>
    </message>
    <message>
        <source>Everything, for the supervisor</source>
        <translation>Todo, para el supervisor</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation>Páginas (*.html)</translation>
    </message>
    <message>
        <source>Nothing happened in this camp yet.</source>
        <translation>Aún no pasó nada en este campamento.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>aún sin leer</translation>
    </message>
    <message>
        <source>wearers %1</source>
        <translation>las usan %1</translation>
    </message>
    <message>
        <source>met %1, of them wearing %2</source>
        <translation>encontrados %1, de ellos las usan %2</translation>
    </message>
    <message>
        <source>effective coverage of those who came %1 %</source>
        <translation>cobertura efectiva de quienes vinieron %1 %</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>due</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>late</source>
        <translation>con retraso</translation>
    </message>
    <message>
        <source>Drawn: %1 of %2 hand-overs; the sheet is %3.</source>
        <translation>Sorteado: %1 de %2 entregas; la hoja es %3.</translation>
    </message>
    <message>
        <source>Writing the report…</source>
        <translation>Escribiendo el informe…</translation>
    </message>
    <message>
        <source>Its sheet…</source>
        <translation>Su hoja…</translation>
    </message>
    <message>
        <source>Writes the sheet of the chosen lot again: to be filled in, or for paper</source>
        <translation>Escribe otra vez la hoja del lote elegido: para rellenar, o en papel</translation>
    </message>
    <message>
        <source>No lot was drawn yet; draw one first.</source>
        <translation>Aún no se sorteó ningún lote; sortee antes uno.</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Paper (*.pdf);;Text (*.txt)</source>
        <translation>Tablas (*.csv);;Papel (*.pdf);;Texto (*.txt)</translation>
    </message>
</context>
<context>
    <name>quarterstep::BoxModel</name>
    <message>
        <source>unequal eyes</source>
        <translation>ojos desiguales</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 líneas</translation>
    </message>
    <message>
        <source>%1 low</source>
        <translation>%1 bajo</translation>
    </message>
    <message>
        <source>bin %1, %2, available %3</source>
        <translation>casilla %1, %2, disponible %3</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>sin fila</translation>
    </message>
</context>
<context>
    <name>quarterstep::BringInPanel</name>
    <message>
        <source>Choose a file…</source>
        <translation>Elegir un archivo…</translation>
    </message>
    <message>
        <source>A table (CSV, TSV), lines of JSON, FHIR, or DICOM files of instruments</source>
        <translation>Una tabla (CSV, TSV), líneas de JSON, FHIR o archivos DICOM de instrumentos</translation>
    </message>
    <message>
        <source>Take the clipboard</source>
        <translation>Tomar el portapapeles</translation>
    </message>
    <message>
        <source>What was copied in a spreadsheet or another program</source>
        <translation>Lo que se copió en una hoja de cálculo u otro programa</translation>
    </message>
    <message>
        <source>How the table is read</source>
        <translation>Cómo se lee la tabla</translation>
    </message>
    <message>
        <source>Use a map…</source>
        <translation>Usar un mapa…</translation>
    </message>
    <message>
        <source>A file that says how such a table is read</source>
        <translation>Un archivo que dice cómo se lee una tabla así</translation>
    </message>
    <message>
        <source>Save this map…</source>
        <translation>Guardar este mapa…</translation>
    </message>
    <message>
        <source>For the next table of this kind; `quarterstep import --map` takes it, too</source>
        <translation>Para la próxima tabla de este tipo; `quarterstep import --map` también lo acepta</translation>
    </message>
    <message>
        <source>What is read: nothing is written yet</source>
        <translation>Lo que se lee: aún no se escribe nada</translation>
    </message>
    <message>
        <source>Only rows about which something was found</source>
        <translation>Solo las filas con algún hallazgo</translation>
    </message>
    <message>
        <source>Leaves out rows that were read without a finding</source>
        <translation>Omite las filas leídas sin hallazgo</translation>
    </message>
    <message>
        <source>Rows as they are read</source>
        <translation>Filas tal como se leen</translation>
    </message>
    <message>
        <source>Choose a row: what was found about it stands below</source>
        <translation>Elija una fila: lo que se halló en ella está abajo</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Kind, line and column in the file, what was found, and its code</source>
        <translation>Tipo, línea y columna en el archivo, lo que se halló y su código</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>To the place before; nothing is brought in</source>
        <translation>Al lugar anterior; no se importa nada</translation>
    </message>
    <message>
        <source>They come to stand in the waiting list</source>
        <translation>Pasan a la lista de espera</translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation>Importarlas</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>una tabla</translation>
    </message>
    <message>
        <source>lines of JSON</source>
        <translation>líneas de JSON</translation>
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
        <translation>Aún no se eligió nada.</translation>
    </message>
    <message>
        <source>Prescriptions to bring in</source>
        <translation>Prescripciones que importar</translation>
    </message>
    <message>
        <source>Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;All files (*)</source>
        <translation>Prescripciones (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>No text is in the clipboard; copy the rows with their headings first.</source>
        <translation>No hay texto en el portapapeles; copie antes las filas con sus títulos.</translation>
    </message>
    <message>
        <source>The clipboard</source>
        <translation>El portapapeles</translation>
    </message>
    <message numerus="yes">
        <source>%n files</source>
        <translation>
            <numerusform>%n archivo</numerusform>
            <numerusform>%n archivos</numerusform>
        </translation>
    </message>
    <message>
        <source>Use a map</source>
        <translation>Usar un mapa</translation>
    </message>
    <message>
        <source>Maps of tables (*.map);;All files (*)</source>
        <translation>Mapas de tablas (*.map);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Save this map</source>
        <translation>Guardar este mapa</translation>
    </message>
    <message>
        <source>Maps of tables (*.map)</source>
        <translation>Mapas de tablas (*.map)</translation>
    </message>
    <message>
        <source>The map is in %1.</source>
        <translation>El mapa está en %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was brought in.</source>
        <translation>Detenido. No se importó nada.</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>Importando…</translation>
    </message>
    <message>
        <source>%1 brought in, %2 left out. They stand in the list and in %3.</source>
        <translation>%1 importadas, %2 omitidas. Están en la lista y en %3.</translation>
    </message>
    <message>
        <source>It is being read…</source>
        <translation>Se está leyendo…</translation>
    </message>
    <message>
        <source>Choose a file, or copy rows and take the clipboard.</source>
        <translation>Elija un archivo, o copie filas y tome el portapapeles.</translation>
    </message>
    <message>
        <source>Read as %1: %2 to be brought in, %3 left out</source>
        <translation>Leído como %1: %2 para importar, %3 omitidas</translation>
    </message>
    <message>
        <source>Bring in %1, leave out %2</source>
        <translation>Importar %1, omitir %2</translation>
    </message>
    <message>
        <source>Found about row %1 (%2)</source>
        <translation>Hallado en la fila %1 (%2)</translation>
    </message>
    <message>
        <source>Found about the file as a whole</source>
        <translation>Hallado en el archivo en conjunto</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>Leído como %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::BroughtRowsModel</name>
    <message>
        <source>left out</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>taken, with a caution</source>
        <translation>tomada, con precaución</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>tomada</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Brought in?</source>
        <translation>¿Importada?</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Leído como</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo que se halló</translation>
    </message>
</context>
<context>
    <name>quarterstep::CampNotes</name>
    <message>
        <source>It lies here for good</source>
        <translation>Está aquí para siempre</translation>
    </message>
    <message>
        <source>It is a second station</source>
        <translation>Es un segundo puesto</translation>
    </message>
    <message>
        <source>Know first</source>
        <translation>Sepa primero</translation>
    </message>
    <message>
        <source>From now on this folder is written to; the copy it came from is used no more</source>
        <translation>Desde ahora se escribe en esta carpeta; la copia de la que vino ya no se usa</translation>
    </message>
    <message>
        <source>Both folders are used; what is handed over here is brought together with the other later</source>
        <translation>Se usan las dos carpetas; lo que se entrega aquí se reúne después con la otra</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>These notes do not come back while this camp is open</source>
        <translation>Estas notas no vuelven mientras este campamento está abierto</translation>
    </message>
    <message numerus="yes">
        <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger&apos;s counts are used until the edits are accepted or discarded in Stock.</source>
        <translation>
            <numerusform>Las cantidades de stock.yaml fueron editadas a mano en %n línea. Valen las del libro hasta que los cambios se acepten o descarten en Existencias.</numerusform>
            <numerusform>Las cantidades de stock.yaml fueron editadas a mano en %n líneas. Valen las del libro hasta que los cambios se acepten o descarten en Existencias.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::CardModel</name>
    <message>
        <source>held %1</source>
        <translation>reservado %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>en cuarentena %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartModel</name>
    <message>
        <source>inside the limits</source>
        <translation>dentro de los límites</translation>
    </message>
    <message>
        <source>beyond the inner limit</source>
        <translation>más allá del límite interior</translation>
    </message>
    <message>
        <source>beyond the outer limit</source>
        <translation>más allá del límite exterior</translation>
    </message>
    <message>
        <source>Group or run</source>
        <translation>Grupo o serie</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartView</name>
    <message>
        <source>Chart of the audit</source>
        <translation>Gráfico de la auditoría</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Los mismos números están en la tabla de al lado</translation>
    </message>
</context>
<context>
    <name>quarterstep::CriteriaModel</name>
    <message>
        <source>%1, right</source>
        <translation>%1, derecho</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, izquierdo</translation>
    </message>
    <message>
        <source>Criterion</source>
        <translation>Criterio</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Banda</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossModel</name>
    <message>
        <source>right, need</source>
        <translation>derecho, necesidad</translation>
    </message>
    <message>
        <source>left, need</source>
        <translation>izquierdo, necesidad</translation>
    </message>
    <message>
        <source>right, pair</source>
        <translation>derecho, gafas</translation>
    </message>
    <message>
        <source>left, pair</source>
        <translation>izquierdo, gafas</translation>
    </message>
    <message>
        <source>right, left over</source>
        <translation>derecho, resto</translation>
    </message>
    <message>
        <source>left, left over</source>
        <translation>izquierdo, resto</translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <translation>%1 a lo largo de %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Potencia (D)</translation>
    </message>
    <message>
        <source>Higher (D)</source>
        <translation>Mayor (D)</translation>
    </message>
    <message>
        <source>Lower (D)</source>
        <translation>Menor (D)</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossView</name>
    <message>
        <source>Optical crosses</source>
        <translation>Cruces ópticas</translation>
    </message>
    <message>
        <source>A picture of need, pair and what is left; the same values stand in the table</source>
        <translation>Una imagen de necesidad, gafas y lo que queda; los mismos valores están en la tabla</translation>
    </message>
    <message>
        <source>Powers in dioptres on the meridians they act in, as the examiner sees the eyes</source>
        <translation>Potencias en dioptrías en los meridianos donde actúan, como el examinador ve los ojos</translation>
    </message>
    <message>
        <source>need</source>
        <translation>necesidad</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>gafas</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>resto</translation>
    </message>
</context>
<context>
    <name>quarterstep::DeskWindow</name>
    <message>
        <source>Choosing a camp</source>
        <translation>Elegir un campamento</translation>
    </message>
    <message>
        <source>Dispense</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Starting a camp</source>
        <translation>Empezar un campamento</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>SAMPLE: invented people, nothing here counts</source>
        <translation>EJEMPLO: personas inventadas, aquí nada cuenta</translation>
    </message>
    <message>
        <source>Empties the card</source>
        <translation>Vacía la ficha</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Persona nueva</translation>
    </message>
    <message>
        <source>Puts the people of a prescription table into the waiting list</source>
        <translation>Pone a las personas de una tabla de prescripciones en la lista de espera</translation>
    </message>
    <message>
        <source>Load people…</source>
        <translation>Cargar personas…</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation>Abre otro campamento, el de ejemplo, o empieza uno</translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>Campamentos…</translation>
    </message>
    <message>
        <source>Look, language, printer, camp, PINs</source>
        <translation>Aspecto, idioma, impresora, campamento, PIN</translation>
    </message>
    <message>
        <source>The manual, at the page for where you are</source>
        <translation>El manual, en la página de donde usted está</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Look of the window</source>
        <translation>Aspecto de la ventana</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>Claro, oscuro o sol: negro sobre blanco y grande, para el exterior</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Who is served, and with what</source>
        <translation>A quién se atiende, y con qué</translation>
    </message>
    <message>
        <source>What lies in the box, and what happened to it</source>
        <translation>Qué hay en la caja, y qué pasó con ello</translation>
    </message>
    <message>
        <source>Every key of the window</source>
        <translation>Todas las teclas de la ventana</translation>
    </message>
    <message>
        <source>Next look: light, dark, sun</source>
        <translation>Siguiente aspecto: claro, oscuro, sol</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>Letras más grandes</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>Letras más pequeñas</translation>
    </message>
    <message>
        <source>Usual letters</source>
        <translation>Letras normales</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Plano de potencias como tabla</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Quarterstep</source>
        <translation>Quarterstep</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>Leyendo %1…</translation>
    </message>
    <message>
        <source>%1 was not opened; what was found stands below.</source>
        <translation>%1 no se abrió; abajo está lo que se encontró.</translation>
    </message>
    <message>
        <source>The card that was not handed over when the window went is back. Ctrl+N empties it.</source>
        <translation>La ficha sin entregar al cerrarse la ventana está de vuelta. Ctrl+N la vacía.</translation>
    </message>
    <message>
        <source>Open a camp folder</source>
        <translation>Abrir una carpeta de campamento</translation>
    </message>
    <message>
        <source>Load people</source>
        <translation>Cargar personas</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Tablas de prescripciones (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n en existencia</numerusform>
            <numerusform>%n en existencia</numerusform>
        </translation>
    </message>
    <message>
        <source>No camp is open</source>
        <translation>Ningún campamento abierto</translation>
    </message>
    <message>
        <source>SAMPLE: %1: Quarterstep</source>
        <translation>EJEMPLO: %1: Quarterstep</translation>
    </message>
    <message>
        <source>%1: Quarterstep</source>
        <translation>%1: Quarterstep</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Auditoría</translation>
    </message>
    <message>
        <source>Which pairs went wrong, and what slip did it</source>
        <translation>Qué gafas salieron mal, y por qué descuido</translation>
    </message>
    <message>
        <source>Brings prescriptions in from files, instruments or the clipboard, and sends them out</source>
        <translation>Importa prescripciones de archivos, instrumentos o el portapapeles, y las exporta</translation>
    </message>
    <message>
        <source>Bring in…</source>
        <translation>Importar…</translation>
    </message>
    <message>
        <source>Bringing in and sending out</source>
        <translation>Importar y exportar</translation>
    </message>
</context>
<context>
    <name>quarterstep::DispensePlace</name>
    <message numerus="yes">
        <source>%1: %n left</source>
        <translation>
            <numerusform>%1: quedan %n</numerusform>
            <numerusform>%1: quedan %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has %2. %3.</source>
        <translation>%1 tiene %2. %3.</translation>
    </message>
    <message>
        <source>Put back if pulled: %1</source>
        <translation>Devuelva si lo sacó: %1</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>devuelto en la mesa</translation>
    </message>
    <message>
        <source>People of the table</source>
        <translation>Personas de la tabla</translation>
    </message>
    <message>
        <source>Choose a person: the card fills and pairs are suggested</source>
        <translation>Elija una persona: la ficha se llena y se sugieren gafas</translation>
    </message>
    <message>
        <source>Prescription</source>
        <translation>Prescripción</translation>
    </message>
    <message>
        <source>Suggest pairs</source>
        <translation>Sugerir gafas</translation>
    </message>
    <message>
        <source>Searches the stock for this prescription (Enter in any field)</source>
        <translation>Busca en las existencias para esta prescripción (Intro en cualquier campo)</translation>
    </message>
    <message>
        <source>Pairs to pull</source>
        <translation>Gafas que sacar</translation>
    </message>
    <message>
        <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
        <translation>Las mejores primero: potencia en dioptrías, dónde traerlas, qué dejan en cada ojo, prisma</translation>
    </message>
    <message>
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>Esta carpeta no tiene people.csv. Escriba una prescripción abajo o cargue una tabla.</translation>
    </message>
    <message>
        <source>The table has no rows. Type a prescription below.</source>
        <translation>La tabla no tiene filas. Escriba una prescripción abajo.</translation>
    </message>
    <message>
        <source>Choose a person or type a prescription; Enter suggests pairs.</source>
        <translation>Elija una persona o escriba una prescripción; Intro sugiere gafas.</translation>
    </message>
    <message>
        <source>The pairs to pull will stand here, best first, with their bins.</source>
        <translation>Aquí aparecerán las gafas que sacar, las mejores primero, con su casilla.</translation>
    </message>
    <message>
        <source>Nothing to pull for this purpose.</source>
        <translation>Nada que sacar para este uso.</translation>
    </message>
    <message>
        <source>No pairs are shown until this is settled.</source>
        <translation>No se muestran gafas hasta resolver esto.</translation>
    </message>
    <message>
        <source>No pair of this stock comes near this need.</source>
        <translation>Ningunas gafas de estas existencias se acercan.</translation>
    </message>
    <message>
        <source>Taken back from %1: %2.</source>
        <translation>Deshecho de %1: %2.</translation>
    </message>
    <message>
        <source>Who is served: people of the table, or custom orders</source>
        <translation>A quién se atiende: personas de la tabla, o encargos a medida</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Encargos</translation>
    </message>
    <message>
        <source>The whole prescription, or the short way for plain readers</source>
        <translation>La prescripción completa, o la vía corta para simples gafas de lectura</translation>
    </message>
    <message>
        <source>Plain reader</source>
        <translation>Lectura simple</translation>
    </message>
    <message>
        <source>%1 stands in the line.</source>
        <translation>%1 está en la fila.</translation>
    </message>
    <message>
        <source>%1 is entered as referred.</source>
        <translation>%1 queda anotado como derivado.</translation>
    </message>
    <message>
        <source>A custom order for %1 is entered; it stands under Orders.</source>
        <translation>Se anotó un encargo a medida para %1; está en Encargos.</translation>
    </message>
    <message>
        <source>This stands in the ledger already: %1, %2.</source>
        <translation>Esto ya está en el registro: %1, %2.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>The laboratory file of %1 is %2.</source>
        <translation>El archivo de laboratorio de %1 es %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::ExchangePage</name>
    <message>
        <source>What comes in, or what goes out</source>
        <translation>Lo que entra, o lo que sale</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Send out</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>Reading what was brought in before…</source>
        <translation>Leyendo lo que se importó antes…</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingListModel</name>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
    <message>
        <source>error</source>
        <translation>error</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
</context>
<context>
    <name>quarterstep::FindingsModel</name>
    <message>
        <source>a slip is likely</source>
        <translation>es probable un descuido</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Gafas dadas</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>In detail</source>
        <translation>En detalle</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Descuido más probable</translation>
    </message>
</context>
<context>
    <name>quarterstep::FocimeterRow</name>
    <message>
        <source>Read, R</source>
        <translation>Leído, D</translation>
    </message>
    <message>
        <source>L</source>
        <translation>I</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it</source>
        <translation>Lente derecha como la lee el frontofocómetro</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it</source>
        <translation>Lente izquierda como la lee el frontofocómetro</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Lente derecha como la lee el frontofocómetro, dioptrías: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Lente izquierda como la lee el frontofocómetro, dioptrías: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>right lens: %1</source>
        <translation>lente derecha: %1</translation>
    </message>
    <message>
        <source>left lens: %1</source>
        <translation>lente izquierda: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::HandOverPanel</name>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Gives the chosen pair to this person and counts it down (Ctrl+Return)</source>
        <translation>Da las gafas elegidas a esta persona y las descuenta (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>The power of this very pair was read</source>
        <translation>Se leyó la potencia de estas mismas gafas</translation>
    </message>
    <message>
        <source>Fit on the face</source>
        <translation>Ajuste en la cara</translation>
    </message>
    <message>
        <source>Sits well at nose and ears, pupils behind the centres</source>
        <translation>Asientan bien en nariz y orejas, pupilas detrás de los centros</translation>
    </message>
    <message>
        <source>Acuity with the pair</source>
        <translation>Agudeza con las gafas</translation>
    </message>
    <message>
        <source>Each eye read the chart with this pair on</source>
        <translation>Cada ojo leyó el optotipo con estas gafas puestas</translation>
    </message>
    <message>
        <source>Instructions given</source>
        <translation>Instrucciones dadas</translation>
    </message>
    <message>
        <source>What it is for, how to care for it, when to come back</source>
        <translation>Para qué son, cómo cuidarlas, cuándo volver</translation>
    </message>
    <message>
        <source>With pair, R</source>
        <translation>Con gafas, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this pair on, for example 6/9</source>
        <translation>Ojo derecho: agudeza con estas gafas puestas, por ejemplo 6/9</translation>
    </message>
    <message>
        <source>L</source>
        <translation>I</translation>
    </message>
    <message>
        <source>Left eye: acuity with this pair on, for example 6/9</source>
        <translation>Ojo izquierdo: agudeza con estas gafas puestas, por ejemplo 6/9</translation>
    </message>
    <message>
        <source>near</source>
        <translation>cerca</translation>
    </message>
    <message>
        <source>Smallest print read with this pair on, for example N8</source>
        <translation>Letra más pequeña leída con estas gafas puestas, por ejemplo N8</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Why this pair is given all the same; kept with the entry</source>
        <translation>Por qué se dan estas gafas a pesar de todo; se guarda con la anotación</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Sus iniciales</translation>
    </message>
    <message>
        <source>Who hands over; kept with the entry, may stay empty</source>
        <translation>Quién entrega; se guarda con la anotación, puede quedar vacío</translation>
    </message>
    <message>
        <source>Hand over, print</source>
        <translation>Entregar, imprimir</translation>
    </message>
    <message>
        <source>Hands over and prints the note (Ctrl+Shift+Return)</source>
        <translation>Entrega e imprime la nota (Ctrl+Mayús+Intro)</translation>
    </message>
    <message>
        <source>Takes back what was entered last for this person today (Ctrl+Z)</source>
        <translation>Deshace lo último anotado hoy para esta persona (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Prints what this person takes home (Ctrl+P)</source>
        <translation>Imprime lo que esta persona se lleva (Ctrl+P)</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)</source>
        <translation>Anota la derivación e imprime la carta a la clínica (Ctrl+Mayús+L)</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Encargo</translation>
    </message>
    <message>
        <source>Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)</source>
        <translation>Anota un encargo a medida y lo imprime para el laboratorio (Ctrl+Mayús+O)</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Sin gafas</translation>
    </message>
    <message>
        <source>Enters that this person goes without a pair, and why (Ctrl+Shift+W)</source>
        <translation>Anota que esta persona se va sin gafas, y por qué (Ctrl+Mayús+W)</translation>
    </message>
    <message>
        <source>Power by focimeter</source>
        <translation>Potencia con frontofocómetro</translation>
    </message>
    <message>
        <source>Each eye by focimeter</source>
        <translation>Cada ojo con frontofocómetro</translation>
    </message>
    <message>
        <source>To what is still missing</source>
        <translation>A lo que aún falta</translation>
    </message>
    <message>
        <source>Puts the cursor where something is missing for a hand-over</source>
        <translation>Pone el cursor donde falta algo para una entrega</translation>
    </message>
</context>
<context>
    <name>quarterstep::HelpWindow</name>
    <message>
        <source>Help: Quarterstep</source>
        <translation>Ayuda: Quarterstep</translation>
    </message>
    <message>
        <source>Pages of the manual</source>
        <translation>Páginas del manual</translation>
    </message>
    <message>
        <source>Chooses a page of the manual</source>
        <translation>Elige una página del manual</translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>Texto de la página</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation>El manual; los enlaces llevan a otras páginas</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>quarterstep::KeySheet</name>
    <message>
        <source>Keys: Quarterstep</source>
        <translation>Teclas: Quarterstep</translation>
    </message>
    <message>
        <source>All keys of the window</source>
        <translation>Todas las teclas de la ventana</translation>
    </message>
    <message>
        <source>All keys of the window; Escape closes it</source>
        <translation>Todas las teclas de la ventana; Escape la cierra</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from field to field; Space presses the button that is framed.</source>
        <translation>Tab y Mayús+Tab van de campo en campo; Espacio pulsa el botón enmarcado.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LadderView</name>
    <message>
        <source>Stock ladder</source>
        <translation>Escala de existencias</translation>
    </message>
    <message>
        <source>A picture of how many pieces of each power there are; the same numbers stand in the table of lines</source>
        <translation>Una imagen de cuántas piezas hay de cada potencia; los mismos números están en la tabla de líneas</translation>
    </message>
    <message>
        <source>power (D)</source>
        <translation>potencia (D)</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>%1: available %2, kept aside %3, keep at least %4</source>
        <translation>%1: disponible %2, apartado %3, tener al menos %4</translation>
    </message>
</context>
<context>
    <name>quarterstep::LineModel</name>
    <message>
        <source>none: waits</source>
        <translation>ninguna: espera</translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation>no está en la fila</translation>
    </message>
    <message>
        <source>none left: look before saying it again</source>
        <translation>no quedan: mire antes de decirlo otra vez</translation>
    </message>
    <message>
        <source>with caution</source>
        <translation>con precaución</translation>
    </message>
    <message>
        <source>by hand: %1</source>
        <translation>a mano: %1</translation>
    </message>
    <message>
        <source>promised; %1</source>
        <translation>prometido; %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Gets</source>
        <translation>Recibe</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinePanel</name>
    <message>
        <source>Waiting line</source>
        <translation>Fila de espera</translation>
    </message>
    <message>
        <source>Who gets which pair and why. Drop a pair on a person to pick it by hand</source>
        <translation>Quién recibe qué gafas y por qué. Suelte unas gafas sobre una persona para elegirlas a mano</translation>
    </message>
    <message>
        <source>Reason for a pair picked by hand</source>
        <translation>Motivo de unas gafas elegidas a mano</translation>
    </message>
    <message>
        <source>Reason, for a pair by hand</source>
        <translation>Motivo, para gafas a mano</translation>
    </message>
    <message>
        <source>Why this person gets another pair than planned; kept with the promise</source>
        <translation>Por qué esta persona recibe otras gafas que las planeadas; se guarda con la promesa</translation>
    </message>
    <message>
        <source>All arrive</source>
        <translation>Llegan todos</translation>
    </message>
    <message>
        <source>Everybody of the table who has nothing yet</source>
        <translation>Todos los de la tabla que aún no tienen nada</translation>
    </message>
    <message>
        <source>Card arrives</source>
        <translation>Llega la ficha</translation>
    </message>
    <message>
        <source>The person on the card (Ctrl+J)</source>
        <translation>La persona de la ficha (Ctrl+J)</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Planificar otra vez</translation>
    </message>
    <message>
        <source>Plans anew, or stops planning</source>
        <translation>Planifica de nuevo, o deja de planificar</translation>
    </message>
    <message>
        <source>Promise</source>
        <translation>Prometer</translation>
    </message>
    <message>
        <source>The person was told: no plan takes it back</source>
        <translation>Se le dijo a la persona: ningún plan lo deshace</translation>
    </message>
    <message>
        <source>Give chosen pair</source>
        <translation>Dar las elegidas</translation>
    </message>
    <message>
        <source>The pair chosen in the list, by hand and with a reason (Ctrl+G)</source>
        <translation>Las gafas elegidas en la lista, a mano y con un motivo (Ctrl+G)</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Se fue</translation>
    </message>
    <message>
        <source>The person left the line</source>
        <translation>La persona dejó la fila</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planificando …</translation>
    </message>
    <message>
        <source>Nobody waits yet. Let the people of the table stand in line, or the one on the card.</source>
        <translation>Aún no espera nadie. Ponga en la fila a las personas de la tabla, o a la de la ficha.</translation>
    </message>
    <message>
        <source>%1 of %2 get a pair; first come, first served would be %3. %4</source>
        <translation>%1 de %2 reciben gafas; por orden de llegada serían %3. %4</translation>
    </message>
    <message>
        <source>No plan serves more.</source>
        <translation>Ningún plan atiende a más.</translation>
    </message>
    <message>
        <source>Good, not proved best.</source>
        <translation>Bueno, sin prueba de ser el mejor.</translation>
    </message>
    <message>
        <source>Unpromise</source>
        <translation>Quitar promesa</translation>
    </message>
    <message>
        <source>Why this pair for %1? Type the reason and press Enter.</source>
        <translation>¿Por qué estas gafas para %1? Escriba el motivo y pulse Intro.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinesModel</name>
    <message>
        <source>none left</source>
        <translation>no quedan</translation>
    </message>
    <message>
        <source>below least</source>
        <translation>bajo el mínimo</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>suficiente</translation>
    </message>
    <message>
        <source>above most</source>
        <translation>sobre el máximo</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>reservado %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>en cuarentena %1</translation>
    </message>
    <message>
        <source>keep at least %1, at most %2</source>
        <translation>tener al menos %1, como máximo %2</translation>
    </message>
    <message numerus="yes">
        <source>reorder %n</source>
        <translation>
            <numerusform>pedir %n</numerusform>
            <numerusform>pedir %n</numerusform>
        </translation>
    </message>
    <message>
        <source>lasts %1 camp days as used so far</source>
        <translation>dura %1 días de campamento al ritmo actual</translation>
    </message>
    <message>
        <source>How many camps of 100 people the available pieces last, as used so far</source>
        <translation>Para cuántos campamentos de 100 personas alcanzan las piezas disponibles, al ritmo actual</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casilla</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponible</translation>
    </message>
    <message>
        <source>Kept aside</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>Camps</source>
        <translation>Campamentos</translation>
    </message>
</context>
<context>
    <name>quarterstep::LongWork</name>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Cuánto ha avanzado</translation>
    </message>
    <message>
        <source>Ends this work; nothing is changed by it</source>
        <translation>Termina este trabajo; no cambia nada</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Parando…</translation>
    </message>
    <message>
        <source>After this: %1</source>
        <translation>Después: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::MappedColumnsModel</name>
    <message>
        <source>What this column holds; Enter or a click changes it</source>
        <translation>Lo que contiene esta columna; Intro o un clic lo cambia</translation>
    </message>
    <message>
        <source>Heading</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Ejemplo</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>Se toma como</translation>
    </message>
</context>
<context>
    <name>quarterstep::MeaningDelegate</name>
    <message>
        <source>What the column holds</source>
        <translation>Lo que contiene la columna</translation>
    </message>
</context>
<context>
    <name>quarterstep::MessageBar</name>
    <message>
        <source>Copy code</source>
        <translation>Copiar código</translation>
    </message>
    <message>
        <source>Copies the code of this message, to look it up in the help</source>
        <translation>Copia el código de este mensaje, para buscarlo en la ayuda</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Puts this message away</source>
        <translation>Quita este mensaje</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>No hecho</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>Esperando</translation>
    </message>
</context>
<context>
    <name>quarterstep::OpeningPage</name>
    <message>
        <source>Which camp?</source>
        <translation>¿Qué campamento?</translation>
    </message>
    <message>
        <source>A camp is a folder: stock.yaml says what exists and how many; the ledger of what was handed over is kept beside it.</source>
        <translation>Un campamento es una carpeta: stock.yaml dice qué hay y cuánto; el registro de entregas se guarda al lado.</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation>Dar un vistazo</translation>
    </message>
    <message>
        <source>A sample camp of invented people. What you do there stays in a copy of your own.</source>
        <translation>Un campamento de ejemplo con personas inventadas. Lo que haga queda en una copia suya.</translation>
    </message>
    <message>
        <source>Practise a hand-over, 3 minutes</source>
        <translation>Practicar una entrega, 3 minutos</translation>
    </message>
    <message>
        <source>Opens the sample and tells each step beside the work</source>
        <translation>Abre el ejemplo y explica cada paso junto al trabajo</translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>Abrir el campamento de ejemplo</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation>Abre su copia del ejemplo como la dejó</translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>Empezar de nuevo el ejemplo</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation>Tira lo que se hizo en su copia del ejemplo</translation>
    </message>
    <message>
        <source>Start my own camp</source>
        <translation>Empezar mi campamento</translation>
    </message>
    <message>
        <source>Describe the trays of your box in a few lines; the desk writes the stock file.</source>
        <translation>Describa las bandejas de su caja en pocas líneas; se escribe el archivo de existencias.</translation>
    </message>
    <message>
        <source>Describe my trays…</source>
        <translation>Describir mis bandejas…</translation>
    </message>
    <message>
        <source>A page where you type the trays and see the lines they make</source>
        <translation>Una página donde escribe las bandejas y ve las líneas que resultan</translation>
    </message>
    <message>
        <source>Open a camp</source>
        <translation>Abrir un campamento</translation>
    </message>
    <message>
        <source>A folder with a stock.yaml, on this laptop or on a stick.</source>
        <translation>Una carpeta con stock.yaml, en este portátil o en una memoria.</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>Elegir una carpeta…</translation>
    </message>
    <message>
        <source>Chooses the folder with stock.yaml</source>
        <translation>Elige la carpeta con stock.yaml</translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>Volver al campamento abierto</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation>Deja todo como está</translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>Lo que se encontró, con archivo, línea y columna</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation>Archivo, línea y columna de todo lo encontrado; se puede copiar</translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>Empezar un campamento en esta carpeta…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation>Describa las bandejas; el archivo de existencias se escribe en esta carpeta</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 no se abrió</translation>
    </message>
    <message>
        <source>This folder has no stock.yaml. Choose the folder that has one, or start a camp here.</source>
        <translation>Esta carpeta no tiene stock.yaml. Elija la que lo tiene o empiece aquí un campamento.</translation>
    </message>
    <message>
        <source>Mend the file at the line and column named, with any text editor, and open the folder again. Nothing was written.</source>
        <translation>Corrija el archivo en la línea y columna indicadas, con un editor de texto, y abra otra vez la carpeta. No se escribió nada.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Abrir %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersModel</name>
    <message numerus="yes">
        <source>remade %n time(s)</source>
        <translation>
            <numerusform>rehecho %n vez</numerusform>
            <numerusform>rehecho %n veces</numerusform>
        </translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>encargado %1</translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation>montura reservada: %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Encargado</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersPanel</name>
    <message>
        <source>Find an order by the code of the person</source>
        <translation>Buscar un encargo por el código de la persona</translation>
    </message>
    <message>
        <source>Part of a camp code; empty shows the open orders</source>
        <translation>Parte de un código de campamento; vacío muestra los encargos abiertos</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Custom orders</source>
        <translation>Encargos a medida</translation>
    </message>
    <message>
        <source>Custom orders, newest change first</source>
        <translation>Encargos a medida, el cambio más reciente primero</translation>
    </message>
    <message>
        <source>Reason or note for this step</source>
        <translation>Motivo o nota para este paso</translation>
    </message>
    <message>
        <source>Kept with the step; making again needs a reason</source>
        <translation>Se guarda con el paso; rehacer pide un motivo</translation>
    </message>
    <message>
        <source>Reason or note</source>
        <translation>Motivo o nota</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Llegado</translation>
    </message>
    <message>
        <source>It came from the laboratory</source>
        <translation>Llegó del laboratorio</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobado</translation>
    </message>
    <message>
        <source>Power, axis and centres were read and agree with the order</source>
        <translation>Se leyeron potencia, eje y centros y concuerdan con el encargo</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Recogido</translation>
    </message>
    <message>
        <source>The person has it and was checked with it on</source>
        <translation>La persona lo tiene y se comprobó puesto</translation>
    </message>
    <message>
        <source>Make again</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Back to the laboratory; a reason is needed</source>
        <translation>De vuelta al laboratorio; hace falta un motivo</translation>
    </message>
    <message>
        <source>Not collected</source>
        <translation>No recogido</translation>
    </message>
    <message>
        <source>The person did not come for it</source>
        <translation>La persona no vino a buscarlo</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Laboratory file</source>
        <translation>Archivo de laboratorio</translation>
    </message>
    <message>
        <source>Writes the order as a file for the laboratory into the folder papers</source>
        <translation>Escribe el encargo como archivo para el laboratorio en la carpeta papers</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingDraws</name>
    <message>
        <source>Assumptions, published mix, number of draws and lot (Ctrl+D)</source>
        <translation>Supuestos, mezcla publicada, número de sorteos y lote (Ctrl+D)</translation>
    </message>
    <message>
        <source>How the draws are made</source>
        <translation>Cómo se hacen los sorteos</translation>
    </message>
    <message>
        <source>PD as the pair&apos;s centres</source>
        <translation>DP como los centros del par</translation>
    </message>
    <message>
        <source>Where no PD was taken, it equals the centres of each pair</source>
        <translation>Donde no se tomó la DP, es igual a los centros de cada par</translation>
    </message>
    <message>
        <source>readings are final</source>
        <translation>lecturas son finales</translation>
    </message>
    <message>
        <source>Objective readings are final, and a prescriber is named</source>
        <translation>Las lecturas objetivas son finales y se nombra a quien prescribe</translation>
    </message>
    <message>
        <source>vertex as the stock</source>
        <translation>vértice como las existencias</translation>
    </message>
    <message>
        <source>An unrecorded vertex distance is that of the stock</source>
        <translation>Una distancia de vértice no anotada es la de las existencias</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>Published mix</source>
        <translation>Mezcla publicada</translation>
    </message>
    <message>
        <source>Mixes with the published mix of a camp, weighing as so many people; 0: not at all. By itself 30 where fewer than 100 people were seen</source>
        <translation>Mezcla con la composición publicada de un campamento, que pesa como tantas personas; 0: nada. Por sí solo 30 donde se vio a menos de 100 personas</translation>
    </message>
    <message>
        <source>by who was seen</source>
        <translation>según quién fue visto</translation>
    </message>
    <message>
        <source> people</source>
        <translation> personas</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Sorteos</translation>
    </message>
    <message>
        <source>Camps that are drawn and planned for, and as many again to check</source>
        <translation>Campamentos que se sortean y se planifican, y otros tantos para comprobar</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>The same lot draws the same people again</source>
        <translation>El mismo lote sortea otra vez a las mismas personas</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>plegado</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>desplegado</translation>
    </message>
    <message>
        <source>draws: %1</source>
        <translation>sorteos: %1</translation>
    </message>
    <message>
        <source>lot: %1</source>
        <translation>lote: %1</translation>
    </message>
    <message>
        <source>published mix: %1</source>
        <translation>mezcla publicada: %1</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>supuesto: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingPanel</name>
    <message>
        <source>Boxes for the next camp</source>
        <translation>Cajas para el próximo campamento</translation>
    </message>
    <message>
        <source>Plan the boxes</source>
        <translation>Planificar las cajas</translation>
    </message>
    <message>
        <source>Plans what to buy; nothing is entered (F5)</source>
        <translation>Planifica qué comprar; no se anota nada (F5)</translation>
    </message>
    <message>
        <source>Persons served against money</source>
        <translation>Personas atendidas según el dinero</translation>
    </message>
    <message>
        <source>Line: served on the draws planned for · triangle: the knee · diamond: this plan · dotted: no order passes it · upright: the budget.</source>
        <translation>Línea: atendidos en los sorteos del plan · triángulo: el codo · rombo: este plan · punteada: ningún encargo la supera · vertical: el presupuesto.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>The list of what a supplier sells (supplier.yaml)</source>
        <translation>La lista de lo que vende un proveedor (supplier.yaml)</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Whom to plan for</source>
        <translation>Para quién planificar</translation>
    </message>
    <message>
        <source>People as they were seen: of the ledger, or of a table of prescriptions</source>
        <translation>Personas como se vieron: del registro, o de una tabla de prescripciones</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>Demanda</translation>
    </message>
    <message>
        <source>People who come next</source>
        <translation>Personas que vendrán</translation>
    </message>
    <message>
        <source>How many people come to the next camp</source>
        <translation>Cuántas personas vendrán al próximo campamento</translation>
    </message>
    <message>
        <source> people</source>
        <translation> personas</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Money that may be spent, in the currency of the supplier&apos;s list</source>
        <translation>Dinero que se puede gastar, en la moneda de la lista del proveedor</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Kilograms of what is bought; 0: not limited</source>
        <translation>Kilogramos de lo que se compra; 0: sin límite</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source>any weight</source>
        <translation>cualquier peso</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Cajas</translation>
    </message>
    <message>
        <source>Boxes that are carried, what is on hand included; 0: as many as it takes</source>
        <translation>Cajas que se llevan, con lo que ya hay; 0: las que hagan falta</translation>
    </message>
    <message>
        <source>any number</source>
        <translation>cualquier número</translation>
    </message>
    <message>
        <source>Pieces in a box</source>
        <translation>Piezas por caja</translation>
    </message>
    <message>
        <source>How many pieces a box holds</source>
        <translation>Cuántas piezas caben en una caja</translation>
    </message>
    <message>
        <source> in each</source>
        <translation> por caja</translation>
    </message>
    <message>
        <source>What the plan comes to</source>
        <translation>Qué resulta del plan</translation>
    </message>
    <message>
        <source>Served, spent, and how sure that is; the text can be copied</source>
        <translation>Atendidos, gastado y con qué seguridad; el texto se puede copiar</translation>
    </message>
    <message>
        <source>What is shown of the plan</source>
        <translation>Lo que se muestra del plan</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Encargo</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Lista de empaque</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobado</translation>
    </message>
    <message>
        <source>Without a pair</source>
        <translation>Sin gafas</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>Se agota</translation>
    </message>
    <message>
        <source>Not bought</source>
        <translation>No comprado</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>The plan for the boxes</source>
        <translation>El plan de las cajas</translation>
    </message>
    <message>
        <source>The plan, row by row</source>
        <translation>El plan, fila por fila</translation>
    </message>
    <message>
        <source>Print packing list</source>
        <translation>Imprimir lista de empaque</translation>
    </message>
    <message>
        <source>The packing list as a paper (Ctrl+P)</source>
        <translation>La lista de empaque en papel (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save packing list…</source>
        <translation>Guardar lista de empaque…</translation>
    </message>
    <message>
        <source>Box by box, as a table (Ctrl+S)</source>
        <translation>Caja por caja, como tabla (Ctrl+S)</translation>
    </message>
    <message>
        <source>Save order…</source>
        <translation>Guardar encargo…</translation>
    </message>
    <message>
        <source>What to order, as a table (Ctrl+Shift+S)</source>
        <translation>Qué encargar, como tabla (Ctrl+Mayús+S)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>The order is %1.</source>
        <translation>El encargo está en %1.</translation>
    </message>
    <message>
        <source>The packing list is %1.</source>
        <translation>La lista de empaque está en %1.</translation>
    </message>
    <message>
        <source>The ledger of this camp</source>
        <translation>El registro de este campamento</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>Otra tabla…</translation>
    </message>
    <message>
        <source>List of a supplier</source>
        <translation>Lista de un proveedor</translation>
    </message>
    <message>
        <source>Suppliers&apos; lists (*.yaml)</source>
        <translation>Listas de proveedores (*.yaml)</translation>
    </message>
    <message>
        <source>Table of people</source>
        <translation>Tabla de personas</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Tablas de prescripciones (*.csv)</translation>
    </message>
    <message>
        <source>Choose what can be bought: the list of a supplier.</source>
        <translation>Elija lo que se puede comprar: la lista de un proveedor.</translation>
    </message>
    <message>
        <source>Planning the boxes…</source>
        <translation>Planificando las cajas…</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>ninguna elegida</translation>
    </message>
    <message>
        <source>Planning … “Stop” at the top ends it.</source>
        <translation>Planificando … «Parar» arriba lo termina.</translation>
    </message>
    <message>
        <source>Nothing is planned yet.</source>
        <translation>Aún no hay nada planificado.</translation>
    </message>
    <message>
        <source>The plan beside is of other figures; plan again (F5).</source>
        <translation>El plan de al lado es de otros números; planifique otra vez (F5).</translation>
    </message>
    <message>
        <source>For this money the curve says %1; plan again for the order (F5).</source>
        <translation>Por este dinero la curva dice %1; planifique otra vez para el encargo (F5).</translation>
    </message>
    <message>
        <source>On people who were not planned for: %1</source>
        <translation>En personas que no estaban en el plan: %1</translation>
    </message>
    <message>
        <source>Not checked: too few people to plan on one half and check on the other.</source>
        <translation>Sin comprobar: muy pocas personas para planificar con una mitad y comprobar con la otra.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of the table could not be read and were left out.</source>
        <translation>
            <numerusform>%n fila de la tabla no se pudo leer y se omitió.</numerusform>
            <numerusform>%n filas de la tabla no se pudieron leer y se omitieron.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to buy for the next camp so that most people are served: choose supplier, demand and money, then plan (F5). Nothing is entered.</source>
        <translation>Qué comprar para el próximo campamento para atender a más personas: elija proveedor, demanda y dinero, luego planifique (F5). No se anota nada.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PairsModel</name>
    <message numerus="yes">
        <source>%n here</source>
        <translation>
            <numerusform>%n aquí</numerusform>
            <numerusform>%n aquí</numerusform>
        </translation>
    </message>
    <message>
        <source>Nearest outside the limits</source>
        <translation>Lo más cercano fuera de los límites</translation>
    </message>
    <message>
        <source>same power: %1</source>
        <translation>misma potencia: %1</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Potencia (D)</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Sacar</translation>
    </message>
    <message>
        <source>Right eye (D)</source>
        <translation>Ojo derecho (D)</translation>
    </message>
    <message>
        <source>Left eye (D)</source>
        <translation>Ojo izquierdo (D)</translation>
    </message>
    <message>
        <source>Prism (Δ)</source>
        <translation>Prisma (Δ)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>R and L %1 · prism %2</source>
        <translation>D e I %1 · prisma %2</translation>
    </message>
    <message>
        <source>R %1 · L %2 · prism %3</source>
        <translation>D %1 · I %2 · prisma %3</translation>
    </message>
    <message>
        <source> · chance %1</source>
        <translation> · probabilidad %1</translation>
    </message>
    <message>
        <source>Chance within</source>
        <translation>Probabilidad dentro</translation>
    </message>
</context>
<context>
    <name>quarterstep::PaperWorker</name>
    <message>
        <source>%1: sent to %2.</source>
        <translation>%1: enviado a %2.</translation>
    </message>
    <message>
        <source>%1: written to %2.</source>
        <translation>%1: escrito en %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PinGuard</name>
    <message>
        <source>This needs the PIN of the optician.</source>
        <translation>Esto necesita el PIN del óptico.</translation>
    </message>
    <message>
        <source>This needs the PIN of the keeper.</source>
        <translation>Esto necesita el PIN del encargado.</translation>
    </message>
    <message>
        <source>This needs the PIN of the supervisor.</source>
        <translation>Esto necesita el PIN del supervisor.</translation>
    </message>
    <message>
        <source>A PIN is asked for</source>
        <translation>Se pide un PIN</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>It is good until this place is left, or ten minutes after the last use</source>
        <translation>Vale hasta salir de este lugar, o diez minutos después del último uso</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Does what was asked for (Enter)</source>
        <translation>Hace lo que se pidió (Intro)</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>No hacerlo</translation>
    </message>
    <message>
        <source>Nothing is written (Escape)</source>
        <translation>No se escribe nada (Escape)</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlaneModel</name>
    <message>
        <source>need, both eyes</source>
        <translation>necesidad, ambos ojos</translation>
    </message>
    <message>
        <source>need, right eye</source>
        <translation>necesidad, ojo derecho</translation>
    </message>
    <message>
        <source>need, left eye</source>
        <translation>necesidad, ojo izquierdo</translation>
    </message>
    <message>
        <source>chosen pair, right eye</source>
        <translation>gafas elegidas, ojo derecho</translation>
    </message>
    <message>
        <source>chosen pair, left eye</source>
        <translation>gafas elegidas, ojo izquierdo</translation>
    </message>
    <message>
        <source>lenses</source>
        <translation>lentes</translation>
    </message>
    <message>
        <source>ready-made pairs</source>
        <translation>gafas premontadas</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Mean (D)</source>
        <translation>Media (D)</translation>
    </message>
    <message>
        <source>Half cylinder (D)</source>
        <translation>Medio cilindro (D)</translation>
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
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation>Plano de potencias</translation>
    </message>
    <message>
        <source>Shows the same values as a table (Ctrl+T)</source>
        <translation>Muestra los mismos valores como tabla (Ctrl+T)</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Plano de potencias como tabla</translation>
    </message>
    <message>
        <source>Powers in dioptres and how many can be given</source>
        <translation>Potencias en dioptrías y cuántas se pueden dar</translation>
    </message>
    <message>
        <source>R, L: the person&apos;s eyes · disc: pairs · diamond: lenses · cross: none left · dot: ranks · open ring: chosen pair. The larger, the more there are.</source>
        <translation>D, I: los ojos de la persona · disco: gafas · rombo: lentes · cruz: no quedan · punto: rangos · anillo: gafas elegidas. Cuanto más grande, más hay.</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Imagen</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlotView</name>
    <message>
        <source>Power plane</source>
        <translation>Plano de potencias</translation>
    </message>
    <message>
        <source>A picture of the stock around this person&apos;s eyes; the same values stand in the table</source>
        <translation>Una imagen de las existencias en torno a los ojos de esta persona; los mismos valores están en la tabla</translation>
    </message>
    <message>
        <source>mean power (D)</source>
        <translation>potencia media (D)</translation>
    </message>
    <message>
        <source>half the cylinder (D)</source>
        <translation>medio cilindro (D)</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>sirve %1</translation>
    </message>
    <message>
        <source>on trial %1</source>
        <translation>a prueba %1</translation>
    </message>
    <message>
        <source>R %1 D</source>
        <translation>D %1 D</translation>
    </message>
    <message>
        <source>L %1 D</source>
        <translation>I %1 D</translation>
    </message>
    <message numerus="yes">
        <source>lenses %1: %n available</source>
        <translation>
            <numerusform>lentes %1: %n disponible</numerusform>
            <numerusform>lentes %1: %n disponibles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>pairs %1: %n available</source>
        <translation>
            <numerusform>gafas %1: %n disponible</numerusform>
            <numerusform>gafas %1: %n disponibles</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::PowerFields</name>
    <message>
        <source>Right eye, sphere</source>
        <translation>Ojo derecho, esfera</translation>
    </message>
    <message>
        <source>Left eye, sphere</source>
        <translation>Ojo izquierdo, esfera</translation>
    </message>
    <message>
        <source>Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Esfera en dioptrías, con su signo. Arriba y Abajo cambian 0.25; Re Pág y Av Pág, 1.00</translation>
    </message>
    <message>
        <source>Right eye, cylinder</source>
        <translation>Ojo derecho, cilindro</translation>
    </message>
    <message>
        <source>Left eye, cylinder</source>
        <translation>Ojo izquierdo, cilindro</translation>
    </message>
    <message>
        <source>Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Cilindro en dioptrías, con su signo. Arriba y Abajo cambian 0.25; Re Pág y Av Pág, 1.00</translation>
    </message>
    <message>
        <source>Right eye, axis</source>
        <translation>Ojo derecho, eje</translation>
    </message>
    <message>
        <source>Left eye, axis</source>
        <translation>Ojo izquierdo, eje</translation>
    </message>
    <message>
        <source>Axis in degrees. Up and Down step 1, with Shift 5</source>
        <translation>Eje en grados. Arriba y Abajo cambian 1, con Mayús 5</translation>
    </message>
</context>
<context>
    <name>quarterstep::PracticeStrip</name>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Dejar la práctica</translation>
    </message>
    <message>
        <source>Goes on without this step</source>
        <translation>Sigue sin este paso</translation>
    </message>
    <message>
        <source>Ends the practice; the sample stays open</source>
        <translation>Termina la práctica; el ejemplo sigue abierto</translation>
    </message>
    <message>
        <source>Somebody sits down. Press Ctrl+N for an empty card, and type the code %1 under Person.</source>
        <translation>Alguien se sienta. Pulse Ctrl+N para una ficha vacía y escriba el código %1 en Persona.</translation>
    </message>
    <message>
        <source>Tab to Age: type 30.</source>
        <translation>Tab hasta Edad: escriba 30.</translation>
    </message>
    <message>
        <source>Right eye: type %1. Tab to the left eye and type the same.</source>
        <translation>Ojo derecho: escriba %1. Tab al ojo izquierdo y escriba lo mismo.</translation>
    </message>
    <message>
        <source>PD far: type 62. Enter asks for pairs.</source>
        <translation>DP lejos: escriba 62. Intro pide gafas.</translation>
    </message>
    <message>
        <source>The best pair stands first, with its bin. You would fetch it, and one neighbour. Tick the four checks once the pair is on the face.</source>
        <translation>Las mejores gafas están primero, con su casilla. Las traería, con otras vecinas. Marque las cuatro comprobaciones con las gafas puestas.</translation>
    </message>
    <message>
        <source>Ctrl+Enter hands it over: the count goes down.</source>
        <translation>Ctrl+Intro las entrega: la cuenta baja.</translation>
    </message>
    <message>
        <source>A mistake? Ctrl+Z takes the hand-over back the same day. Try it.</source>
        <translation>¿Un error? Ctrl+Z deshace la entrega el mismo día. Pruébelo.</translation>
    </message>
    <message>
        <source>That was all. F1 opens the manual, Shift+F1 shows every key.</source>
        <translation>Eso es todo. F1 abre el manual, Mayús+F1 muestra todas las teclas.</translation>
    </message>
    <message>
        <source>Practice, step %1 of %2</source>
        <translation>Práctica, paso %1 de %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
</context>
<context>
    <name>quarterstep::PrescriptionCard</name>
    <message>
        <source>Wanted for</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>What the spectacles are for; left open, the prescription decides</source>
        <translation>Para qué son las gafas; si se deja abierto, decide la prescripción</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>Right eye, prescription</source>
        <translation>Ojo derecho, prescripción</translation>
    </message>
    <message>
        <source>Left eye, prescription</source>
        <translation>Ojo izquierdo, prescripción</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dolor</translation>
    </message>
    <message>
        <source>Sudden loss of sight</source>
        <translation>Pérdida súbita de visión</translation>
    </message>
    <message>
        <source>Red eye</source>
        <translation>Ojo rojo</translation>
    </message>
    <message>
        <source>New flashes or floaters</source>
        <translation>Destellos o manchas nuevos</translation>
    </message>
    <message>
        <source>Double vision</source>
        <translation>Visión doble</translation>
    </message>
    <message>
        <source>White pupil</source>
        <translation>Pupila blanca</translation>
    </message>
    <message>
        <source>Squint</source>
        <translation>Estrabismo</translation>
    </message>
    <message>
        <source>Drops asked for</source>
        <translation>Se piden gotas</translation>
    </message>
    <message>
        <source>Lines look bent</source>
        <translation>Líneas torcidas</translation>
    </message>
    <message>
        <source>Part of the view missing</source>
        <translation>Falta parte del campo</translation>
    </message>
    <message>
        <source>Halos around lights</source>
        <translation>Halos alrededor de luces</translation>
    </message>
    <message>
        <source>Signs seen or told</source>
        <translation>Signos vistos o contados</translation>
    </message>
    <message>
        <source>Tick when this was seen or told; it decides about a letter to the clinic</source>
        <translation>Marque si se vio o se contó; decide sobre una carta a la clínica</translation>
    </message>
    <message>
        <source>%1 is empty; a person, the right and the left eye are needed</source>
        <translation>%1 está vacío; hacen falta la persona, el ojo derecho y el izquierdo</translation>
    </message>
    <message>
        <source>Measured besides</source>
        <translation>Medido además</translation>
    </message>
    <message>
        <source>Three fields an eye</source>
        <translation>Tres campos por ojo</translation>
    </message>
    <message>
        <source>Sphere, cylinder and axis in fields of their own (Ctrl+E)</source>
        <translation>Esfera, cilindro y eje en campos propios (Ctrl+E)</translation>
    </message>
</context>
<context>
    <name>quarterstep::ReaderCard</name>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Edad en años; si no se sabe, se evalúa con las reglas más estrictas</translation>
    </message>
    <message>
        <source>Distance fine?</source>
        <translation>¿Lejos bien?</translation>
    </message>
    <message>
        <source>Does the person see well far away without spectacles? + is yes, - is no</source>
        <translation>¿Ve bien la persona de lejos sin gafas? + es sí, - es no</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>sin preguntar</translation>
    </message>
    <message>
        <source>yes (+)</source>
        <translation>sí (+)</translation>
    </message>
    <message>
        <source>no (-)</source>
        <translation>no (-)</translation>
    </message>
    <message>
        <source>Near power by trial</source>
        <translation>Potencia de cerca por prueba</translation>
    </message>
    <message>
        <source>Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225</source>
        <translation>Potencia con que la persona leyó mejor, la misma en ambos ojos, dioptrías: 2.25 o 225</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>DP cerca</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation>Distancia entre las pupilas mirando de cerca, milímetros; sin ella se evalúa lo peor plausible</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Camp code of the person; one is offered, the paper card&apos;s may be typed over it</source>
        <translation>Código de campamento de la persona; se ofrece uno, puede escribir encima el de la ficha de papel</translation>
    </message>
    <message>
        <source>%1 in each eye</source>
        <translation>%1 en cada ojo</translation>
    </message>
    <message>
        <source>Ask first whether the person sees well far away.</source>
        <translation>Pregunte antes si la persona ve bien de lejos.</translation>
    </message>
    <message>
        <source>Then a reader alone is not enough: refract, and use the full card.</source>
        <translation>Entonces no bastan gafas de lectura: refracte, y use la ficha completa.</translation>
    </message>
    <message>
        <source>Type the near power in quarters of a dioptre: 2.25 or 225.</source>
        <translation>Escriba la potencia de cerca en cuartos de dioptría: 2.25 o 225.</translation>
    </message>
    <message>
        <source>A hand-over needs a code for the person.</source>
        <translation>Una entrega necesita un código de la persona.</translation>
    </message>
</context>
<context>
    <name>quarterstep::SendOutPanel</name>
    <message>
        <source>As</source>
        <translation>Como</translation>
    </message>
    <message>
        <source>An open standard, or a table that any program takes</source>
        <translation>Un estándar abierto, o una tabla que acepta cualquier programa</translation>
    </message>
    <message>
        <source>HL7 FHIR (JSON, R4 and R5)</source>
        <translation>HL7 FHIR (JSON, R4 y R5)</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>Tabla (CSV)</translation>
    </message>
    <message>
        <source>Lines of JSON</source>
        <translation>Líneas de JSON</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>Everybody in the list, or the person on the card</source>
        <translation>Todos los de la lista, o la persona de la ficha</translation>
    </message>
    <message>
        <source>Everybody in the list</source>
        <translation>Todos los de la lista</translation>
    </message>
    <message>
        <source>The person on the card</source>
        <translation>La persona de la ficha</translation>
    </message>
    <message>
        <source>What stays here, or leaves otherwise</source>
        <translation>Lo que se queda aquí, o sale de otro modo</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>To the place before</source>
        <translation>Al lugar anterior</translation>
    </message>
    <message>
        <source>Write the file…</source>
        <translation>Escribir el archivo…</translation>
    </message>
    <message>
        <source>Asks for a name and writes; symptoms and the guardian stay here</source>
        <translation>Pide un nombre y escribe; los síntomas y el tutor se quedan aquí</translation>
    </message>
    <message>
        <source>Nobody is there to be sent out.</source>
        <translation>No hay nadie que exportar.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s), each with the profile, version and hash of the rules of this camp</source>
        <translation>
            <numerusform>%n prescripción, con el perfil, la versión y la huella de las reglas de este campamento</numerusform>
            <numerusform>%n prescripciones, cada una con el perfil, la versión y la huella de las reglas de este campamento</numerusform>
        </translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Escribir el archivo</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Escribiendo…</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) are in %1.</source>
        <translation>
            <numerusform>%n prescripción está en %1.</numerusform>
            <numerusform>%n prescripciones están en %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>DICOM (Subjective Refraction)</source>
        <translation>DICOM (refracción subjetiva)</translation>
    </message>
    <message>
        <source>Check first, or write; then it stands here.</source>
        <translation>Compruebe primero, o escriba; entonces aparece aquí.</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>Comprobar primero</translation>
    </message>
    <message>
        <source>Shows what stays here; nothing is written</source>
        <translation>Muestra lo que se queda aquí; no se escribe nada</translation>
    </message>
    <message>
        <source>one file a person, in a folder</source>
        <translation>un archivo por persona, en una carpeta</translation>
    </message>
    <message>
        <source>Write the files…</source>
        <translation>Escribir los archivos…</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>Carpeta para los archivos</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>Comprobando…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Detenido. No se escribió nada.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) can leave; nothing was written.</source>
        <translation>
            <numerusform>%n prescripción puede salir; no se escribió nada.</numerusform>
            <numerusform>%n prescripciones pueden salir; no se escribió nada.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::SettingsPage</name>
    <message>
        <source>Optician: hands over, orders</source>
        <translation>Óptico: entrega, encarga</translation>
    </message>
    <message>
        <source>Keeper: counts, receives, moves stock</source>
        <translation>Encargado: cuenta, recibe, mueve</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>Este portátil</translation>
    </message>
    <message>
        <source>Kept for you on this laptop.</source>
        <translation>Se guarda para usted en este portátil.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>Claro, oscuro o sol: negro sobre blanco y grande, para el exterior</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Tamaño de las letras</translation>
    </message>
    <message>
        <source>In per cent of the usual; also Ctrl++ and Ctrl+-</source>
        <translation>En por ciento de lo normal; también Ctrl++ y Ctrl+-</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Language of the window, at once</source>
        <translation>Idioma de la ventana, al momento</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Impresora</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation>Impresora de este portátil para fichas y cartas</translation>
    </message>
    <message>
        <source>This camp</source>
        <translation>Este campamento</translation>
    </message>
    <message>
        <source>Kept in the camp folder, for everybody who opens it.</source>
        <translation>Se guarda en la carpeta del campamento, para todos los que la abran.</translation>
    </message>
    <message>
        <source>Cylinders are written</source>
        <translation>Los cilindros se escriben</translation>
    </message>
    <message>
        <source>Form in which pairs and orders show a cylinder; typed prescriptions stay as typed</source>
        <translation>Forma en que gafas y encargos muestran un cilindro; las prescripciones escritas quedan como están</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>más</translation>
    </message>
    <message>
        <source>Acuities are shown</source>
        <translation>Las agudezas se muestran</translation>
    </message>
    <message>
        <source>Notation on the card; the record keeps what was typed</source>
        <translation>Notación en la ficha; el registro guarda lo que se escribió</translation>
    </message>
    <message>
        <source>as recorded</source>
        <translation>como se anotó</translation>
    </message>
    <message>
        <source>decimal</source>
        <translation>decimal</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Se evalúa según</translation>
    </message>
    <message>
        <source>Profile of limits for everybody; by itself the desk chooses by age and purpose</source>
        <translation>Perfil de límites para todos; si no, la mesa elige por edad y uso</translation>
    </message>
    <message>
        <source>PINs</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation>De quién es el PIN que se pone o se quita</translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>PIN necesario ahora</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation>El PIN del supervisor si lo hay; si no, el actual de esta función</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>PIN nuevo</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation>%1 a %2 caracteres</translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>Quitar el PIN</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation>Ya no se pide ningún PIN a esta función</translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>Poner el PIN</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation>Desde ahora se pide este PIN a esta función</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>como el sistema</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>ninguna elegida</translation>
    </message>
    <message>
        <source>%1 (not here now)</source>
        <translation>%1 (ahora no está)</translation>
    </message>
    <message>
        <source>chosen by age and purpose</source>
        <translation>elegido por edad y uso</translation>
    </message>
    <message>
        <source>No role has a PIN.</source>
        <translation>Ninguna función tiene PIN.</translation>
    </message>
    <message>
        <source>With a PIN: %1</source>
        <translation>Con PIN: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>Se quitó el PIN.</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>Se puso el PIN.</translation>
    </message>
    <message>
        <source>Supervisor: settings of the camp, lots, names, exports, PINs</source>
        <translation>Supervisor: ajustes del campamento, lotes, nombres, exportaciones, PIN</translation>
    </message>
    <message>
        <source>A guard against slips, no lock. Asked for here and at the command line. Kept with the ledger.</source>
        <translation>Una protección contra descuidos, no un candado. Se pide aquí y en la línea de órdenes. Se guarda con el registro.</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockPlace</name>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Look for a line</source>
        <translation>Buscar una línea</translation>
    </message>
    <message>
        <source>Look for a line, a power, a bin</source>
        <translation>Buscar línea, potencia, casilla</translation>
    </message>
    <message>
        <source>Shows only lines in which these words stand (Ctrl+F)</source>
        <translation>Muestra solo líneas con estas palabras (Ctrl+F)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation>Las líneas una debajo de otra</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation>Cuántas piezas de cada potencia</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Caja</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation>Las casillas como están en la caja</translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>Líneas de las existencias</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation>Elija una línea para ver su ficha y anotar lo que pasó</translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>Casillas de la caja</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation>Elija una casilla: su línea se muestra al lado</translation>
    </message>
    <message>
        <source>Ready-made pairs</source>
        <translation>Gafas premontadas</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>Lentes</translation>
    </message>
    <message>
        <source>Bar: available · hatched: kept aside · line across: keep at least this many. A click looks for that power.</source>
        <translation>Barra: disponible · rayado: apartado · raya: tener al menos tantas. Un clic busca esa potencia.</translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>Ficha de la línea</translation>
    </message>
    <message>
        <source>Everything that happened to this line, newest first</source>
        <translation>Todo lo que pasó con esta línea, lo más reciente primero</translation>
    </message>
    <message>
        <source>A count is blind: what the book says comes back into sight once the count is entered.</source>
        <translation>Un recuento es ciego: lo que dice el registro vuelve a verse cuando se anota el recuento.</translation>
    </message>
    <message>
        <source>Counts edited in stock.yaml by hand</source>
        <translation>Números cambiados a mano en stock.yaml</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Reason, for taking them over</source>
        <translation>Motivo, para aceptarlos</translation>
    </message>
    <message>
        <source>Why the counts in the file are the right ones; kept with the entry</source>
        <translation>Por qué los números del archivo son los correctos; se guarda con la anotación</translation>
    </message>
    <message>
        <source>Put the ledger&apos;s counts back</source>
        <translation>Volver a los números del registro</translation>
    </message>
    <message>
        <source>The file gets the counts of the ledger again</source>
        <translation>El archivo recibe otra vez los números del registro</translation>
    </message>
    <message>
        <source>Take the file&apos;s counts over</source>
        <translation>Aceptar los números del archivo</translation>
    </message>
    <message>
        <source>The ledger gets an entry with the difference and the reason</source>
        <translation>El registro recibe una anotación con la diferencia y el motivo</translation>
    </message>
    <message>
        <source>No line is chosen</source>
        <translation>Ninguna línea elegida</translation>
    </message>
    <message>
        <source>Choose a line in the table or a bin in the box.</source>
        <translation>Elija una línea de la tabla o una casilla de la caja.</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>casilla %1</translation>
    </message>
    <message>
        <source>lines %1</source>
        <translation>líneas %1</translation>
    </message>
    <message>
        <source>none left in %1</source>
        <translation>agotadas %1</translation>
    </message>
    <message>
        <source>within keep levels %1 of %2</source>
        <translation>en su nivel %1 de %2</translation>
    </message>
    <message>
        <source>to reorder %1</source>
        <translation>por pedir %1</translation>
    </message>
    <message>
        <source>handed over %1</source>
        <translation>entregado %1</translation>
    </message>
    <message>
        <source>Nothing matches “%1”; empty the field to see all %2 lines.</source>
        <translation>Nada coincide con «%1»; vacíe el campo para ver las %2 líneas.</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>%1 de %2 líneas</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation>en existencia %1, antes %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>devuelto en la mesa</translation>
    </message>
    <message>
        <source>Taken back: the counts are as before.</source>
        <translation>Deshecho: las cuentas están como antes.</translation>
    </message>
    <message>
        <source>%1: the file says %2, the ledger %3</source>
        <translation>%1: el archivo dice %2, el registro %3</translation>
    </message>
    <message>
        <source>Write why the counts in the file are the right ones.</source>
        <translation>Escriba por qué los números del archivo son los correctos.</translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) taken over from the file.</source>
        <translation>
            <numerusform>%n número aceptado del archivo.</numerusform>
            <numerusform>%n números aceptados del archivo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) put back to the ledger&apos;s.</source>
        <translation>
            <numerusform>%n número devuelto al del registro.</numerusform>
            <numerusform>%n números devueltos a los del registro.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count the bin that was used most</source>
        <translation>Contar la casilla más usada</translation>
    </message>
    <message>
        <source>Count it now</source>
        <translation>Contarla ahora</translation>
    </message>
    <message>
        <source>Begins a blind count of this one bin (F8)</source>
        <translation>Empieza un recuento ciego de esta sola casilla (F8)</translation>
    </message>
    <message numerus="yes">
        <source>Bin %1 was reached into %n time(s) since it was counted.</source>
        <translation>
            <numerusform>Se sacó de la casilla %1 %n vez desde que se contó.</numerusform>
            <numerusform>Se sacó de la casilla %1 %n veces desde que se contó.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more bin(s) wait for a count.</source>
        <translation>
            <numerusform>%n casilla más espera un recuento.</numerusform>
            <numerusform>%n casillas más esperan un recuento.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count bin %1: %2. Two persons; what the book says comes afterwards.</source>
        <translation>Cuente la casilla %1: %2. Dos personas; lo que dice el registro viene después.</translation>
    </message>
    <message>
        <source>Packing</source>
        <translation>Empaque</translation>
    </message>
    <message>
        <source>What to buy and pack for the next camp</source>
        <translation>Qué comprar y empacar para el próximo campamento</translation>
    </message>
    <message>
        <source>Transfers</source>
        <translation>Transferencias</translation>
    </message>
    <message>
        <source>Pieces sent to other sites, and what comes from them</source>
        <translation>Piezas enviadas a otras sedes, y lo que viene de ellas</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Existencias: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockWorkPanel</name>
    <message>
        <source>Enter in the ledger</source>
        <translation>Anotar en el registro</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>What is entered about the chosen line</source>
        <translation>Lo que se anota sobre la línea elegida</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Counted by two</source>
        <translation>Contado entre dos</translation>
    </message>
    <message>
        <source>Written off</source>
        <translation>Dado de baja</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Reservar</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>Quarantine</source>
        <translation>Cuarentena</translation>
    </message>
    <message>
        <source>Release from quarantine</source>
        <translation>Sacar de cuarentena</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Why the count changes</source>
        <translation>Por qué cambia el número</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>How many pieces</source>
        <translation>Cuántas piezas</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation>Código de campamento de la persona para quien se guardan; puede quedar vacío</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation>El motivo, o de quién vinieron; se guarda con la anotación</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Sus iniciales</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Quién anota esto; queda para la próxima anotación</translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>Segundas iniciales</translation>
    </message>
    <message>
        <source>The other person who counted; stays for the next entry</source>
        <translation>La otra persona que contó; queda para la próxima anotación</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Deshace la última anotación de este lugar (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Writes it into the ledger (Enter in a field)</source>
        <translation>Lo escribe en el registro (Intro en un campo)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Enter about %1</source>
        <translation>Anotar sobre %1</translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation>Elija una línea</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>Elija antes una línea.</translation>
    </message>
    <message>
        <source>Write the number of pieces in digits.</source>
        <translation>Escriba el número de piezas en cifras.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>Con 0 piezas no pasa nada.</translation>
    </message>
    <message>
        <source>A count needs the initials of two persons.</source>
        <translation>Un recuento pide las iniciales de dos personas.</translation>
    </message>
    <message>
        <source>Two different persons count.</source>
        <translation>Cuentan dos personas distintas.</translation>
    </message>
    <message>
        <source>Choose the cause.</source>
        <translation>Elija la causa.</translation>
    </message>
</context>
<context>
    <name>quarterstep::TableReading</name>
    <message>
        <source>Found: decimal %1; cylinders: %2 minus, %3 plus, %4 without a sign; %5 spheres without a sign</source>
        <translation>Hallado: decimales %1; cilindros: %2 en menos, %3 en más, %4 sin signo; %5 esferas sin signo</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation>Entre columnas</translation>
    </message>
    <message>
        <source>What stands between two cells</source>
        <translation>Lo que separa dos celdas</translation>
    </message>
    <message>
        <source>comma ,</source>
        <translation>coma ,</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <translation>punto y coma ;</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barra |</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>When one is chosen, a number with the other one is refused</source>
        <translation>Cuando se elige uno, un número con el otro se rechaza</translation>
    </message>
    <message>
        <source>point or comma</source>
        <translation>punto o coma</translation>
    </message>
    <message>
        <source>refuse the row</source>
        <translation>rechazar la fila</translation>
    </message>
    <message>
        <source>are plus</source>
        <translation>cuentan en más</translation>
    </message>
    <message>
        <source>are minus</source>
        <translation>cuentan en menos</translation>
    </message>
    <message>
        <source>Spheres without a sign</source>
        <translation>Esferas sin signo</translation>
    </message>
    <message>
        <source>Ask whoever made the table before you choose</source>
        <translation>Pregunte a quien hizo la tabla antes de elegir</translation>
    </message>
    <message>
        <source>Cylinders without a sign</source>
        <translation>Cilindros sin signo</translation>
    </message>
    <message>
        <source>Columns of the table</source>
        <translation>Columnas de la tabla</translation>
    </message>
    <message>
        <source>What each column is taken for; Enter, F2 or a click changes it</source>
        <translation>Como qué se toma cada columna; Intro, F2 o un clic lo cambia</translation>
    </message>
</context>
<context>
    <name>quarterstep::TransferPanel</name>
    <message>
        <source>In the air</source>
        <translation>En camino</translation>
    </message>
    <message>
        <source>Transfers in the air</source>
        <translation>Transferencias en camino</translation>
    </message>
    <message>
        <source>What was sent and not yet taken in; Enter takes the chosen one in</source>
        <translation>Lo enviado y aún no recibido; Intro recibe la elegida</translation>
    </message>
    <message>
        <source>Take in as sent</source>
        <translation>Recibir como se envió</translation>
    </message>
    <message>
        <source>Fills the list beside with what was sent, to be counted and entered</source>
        <translation>Llena la lista de al lado con lo enviado, para contarlo y anotarlo</translation>
    </message>
    <message>
        <source>Send or take in</source>
        <translation>Enviar o recibir</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Qué pasa</translation>
    </message>
    <message>
        <source>Whether pieces leave this site or come to it</source>
        <translation>Si las piezas salen de esta sede o llegan a ella</translation>
    </message>
    <message>
        <source>Send to another site</source>
        <translation>Enviar a otra sede</translation>
    </message>
    <message>
        <source>Take in from another site</source>
        <translation>Recibir de otra sede</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>The other site, as it is called in its stock.yaml</source>
        <translation>La otra sede, como se llama en su stock.yaml</translation>
    </message>
    <message>
        <source>Lines of this transfer</source>
        <translation>Líneas de esta transferencia</translation>
    </message>
    <message>
        <source>What goes or comes; choose a row to change its number</source>
        <translation>Lo que sale o llega; elija una fila para cambiar su número</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Kept with the entry</source>
        <translation>Se guarda con la anotación</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Sus iniciales</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Quién anota esto; queda para la próxima anotación</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Line, typed or scanned</source>
        <translation>Línea, escrita o escaneada</translation>
    </message>
    <message>
        <source>Name of a line, or the digits of its label; Enter goes on to the pieces</source>
        <translation>Nombre de una línea, o las cifras de su etiqueta; Intro pasa a las piezas</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>How many pieces; 0 takes the line out of the list</source>
        <translation>Cuántas piezas; 0 quita la línea de la lista</translation>
    </message>
    <message>
        <source>Into the list</source>
        <translation>A la lista</translation>
    </message>
    <message>
        <source>Puts line and pieces into the list (Enter in the pieces)</source>
        <translation>Pone línea y piezas en la lista (Intro en las piezas)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Deshace la última anotación de este lugar (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation>Vaciar la lista</translation>
    </message>
    <message>
        <source>Begins anew; nothing is entered (Ctrl+E)</source>
        <translation>Empieza de nuevo; no se anota nada (Ctrl+E)</translation>
    </message>
    <message>
        <source>Enter in the ledger</source>
        <translation>Anotar en el registro</translation>
    </message>
    <message>
        <source>Writes the list into the ledger (Ctrl+Enter)</source>
        <translation>Escribe la lista en el registro (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>Enviado</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>Nothing was sent that is not yet taken in, as far as this ledger knows.</source>
        <translation>No se envió nada que aún no se haya recibido, según este registro.</translation>
    </message>
    <message numerus="yes">
        <source>%n sent and not taken in</source>
        <translation>
            <numerusform>%n enviada y no recibida</numerusform>
            <numerusform>%n enviadas y no recibidas</numerusform>
        </translation>
    </message>
    <message>
        <source>to this site %1</source>
        <translation>a esta sede %1</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Casilla</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponible</translation>
    </message>
    <message>
        <source>%1: bin %2, available %3</source>
        <translation>%1: casilla %2, disponible %3</translation>
    </message>
    <message>
        <source>Put lines and pieces into the list first.</source>
        <translation>Ponga antes líneas y piezas en la lista.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>Con 0 piezas no pasa nada.</translation>
    </message>
    <message>
        <source>Name the other site.</source>
        <translation>Indique la otra sede.</translation>
    </message>
    <message numerus="yes">
        <source>Sent to %1: %n piece(s)</source>
        <translation>
            <numerusform>Enviado a %1: %n pieza</numerusform>
            <numerusform>Enviado a %1: %n piezas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken in from %1: %n piece(s)</source>
        <translation>
            <numerusform>Recibido de %1: %n pieza</numerusform>
            <numerusform>Recibido de %1: %n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on hand %2, was %3</source>
        <translation>%1 en existencia %2, antes %3</translation>
    </message>
</context>
<context>
    <name>quarterstep::TrayPage</name>
    <message>
        <source>Start my own camp</source>
        <translation>Empezar mi campamento</translation>
    </message>
    <message>
        <source>Name of the camp or box</source>
        <translation>Nombre del campamento o la caja</translation>
    </message>
    <message>
        <source>Stands on every paper and at the top of the window</source>
        <translation>Está en cada papel y arriba en la ventana</translation>
    </message>
    <message>
        <source>The trays, one a line: powers, a colon, how many in each bin</source>
        <translation>Las bandejas, una por línea: potencias, dos puntos, cuántas por casilla</translation>
    </message>
    <message>
        <source>The trays</source>
        <translation>Las bandejas</translation>
    </message>
    <message>
        <source>Powers in dioptres with their sign, from … to … by a step; then a colon and the count. After the count: centres in mm, bin, round lens size in mm</source>
        <translation>Potencias en dioptrías con su signo, de … a … (to) por un paso (by); luego dos puntos y el número. Tras el número: centros en mm (centres), casilla (bin), tamaño de lente redonda en mm (round)</translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>Carpeta de destino</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation>Se crea si falta; un stock.yaml que ya existe nunca se sobrescribe</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Elegir la carpeta…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation>Busca una carpeta en este portátil</translation>
    </message>
    <message>
        <source>Add readers</source>
        <translation>Añadir gafas de lectura</translation>
    </message>
    <message>
        <source>Add distance pairs</source>
        <translation>Añadir gafas de lejos</translation>
    </message>
    <message>
        <source>Add lenses and frames</source>
        <translation>Añadir lentes y monturas</translation>
    </message>
    <message>
        <source>Writes an example below the trays, to be changed</source>
        <translation>Escribe un ejemplo bajo las bandejas, para cambiarlo</translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>Las existencias que resultan</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation>Casilla, línea, potencia en dioptrías y número de cada línea</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation>Deja esta página; lo escrito queda mientras la ventana esté abierta</translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>Crear este campamento</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation>Escribe stock.yaml en la carpeta y la abre</translation>
    </message>
    <message>
        <source>my camp</source>
        <translation>mi campamento</translation>
    </message>
    <message>
        <source>Folder for the new camp</source>
        <translation>Carpeta del campamento nuevo</translation>
    </message>
    <message>
        <source>Line %1, character %2: %3</source>
        <translation>Línea %1, carácter %2: %3</translation>
    </message>
    <message>
        <source>The camp has no name yet.</source>
        <translation>El campamento aún no tiene nombre.</translation>
    </message>
    <message>
        <source>%1 lines, %2 pieces</source>
        <translation>%1 líneas, %2 piezas</translation>
    </message>
    <message>
        <source>Nothing is typed yet. The buttons under the trays write examples to change.</source>
        <translation>Aún no hay nada. Los botones bajo las bandejas escriben ejemplos que cambiar.</translation>
    </message>
</context>
<context>
    <name>quarterstep::WaitingModel</name>
    <message>
        <source>row %1</source>
        <translation>fila %1</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>ilegible</translation>
    </message>
    <message>
        <source>given %1</source>
        <translation>entregado %1</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>espera</translation>
    </message>
    <message>
        <source>Right %1</source>
        <translation>Derecho %1</translation>
    </message>
    <message>
        <source>Left %1</source>
        <translation>Izquierdo %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
</context>
<context>
    <name>quarterstep::WhyPanel</name>
    <message>
        <source>Clear from %1 cm on.</source>
        <translation>Claro desde %1 cm.</translation>
    </message>
    <message>
        <source>Clear from %1 to %2 cm.</source>
        <translation>Claro de %1 a %2 cm.</translation>
    </message>
    <message>
        <source>Why this pair</source>
        <translation>Por qué estas gafas</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Cruz</translation>
    </message>
    <message>
        <source>Above another</source>
        <translation>Antes que otras</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation>Muestra los mismos valores como tabla</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Imagen</translation>
    </message>
    <message>
        <source>Why: criteria of the chosen pair</source>
        <translation>Por qué: criterios de las gafas elegidas</translation>
    </message>
    <message>
        <source>Measured values and limits, each with its unit and source</source>
        <translation>Valores medidos y límites, cada uno con su unidad y fuente</translation>
    </message>
    <message>
        <source>Optical crosses as a table</source>
        <translation>Cruces ópticas como tabla</translation>
    </message>
    <message>
        <source>Powers in dioptres along their meridians, degrees</source>
        <translation>Potencias en dioptrías en sus meridianos, grados</translation>
    </message>
    <message>
        <source>The chosen pair and</source>
        <translation>Las gafas elegidas y</translation>
    </message>
    <message>
        <source>Pair to compare with</source>
        <translation>Gafas con que comparar</translation>
    </message>
    <message>
        <source>The other pair of the list that the chosen one is compared with</source>
        <translation>Las otras gafas de la lista con que se comparan las elegidas</translation>
    </message>
    <message>
        <source>Choose a pair: why it stands above or below another is said here.</source>
        <translation>Elija unas gafas: aquí se dice por qué están antes o después de otras.</translation>
    </message>
    <message>
        <source>There is no other pair to compare with.</source>
        <translation>No hay otras gafas con que comparar.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Por delante</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
    <message>
        <source>error</source>
        <translation>error</translation>
    </message>
    <message>
        <source>from stock</source>
        <translation>de existencias</translation>
    </message>
    <message>
        <source>custom order</source>
        <translation>encargo a medida</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>no hacen falta</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incompleto</translation>
    </message>
    <message>
        <source>refer</source>
        <translation>derivar</translation>
    </message>
    <message>
        <source>no referral</source>
        <translation>sin derivación</translation>
    </message>
    <message>
        <source>with a referral letter</source>
        <translation>con carta de derivación</translation>
    </message>
    <message>
        <source>refer before any glasses</source>
        <translation>derivar antes de dar gafas</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>pronto</translation>
    </message>
    <message>
        <source>same day</source>
        <translation>mismo día</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>lejos</translation>
    </message>
    <message>
        <source>near</source>
        <translation>cerca</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>intermedia</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifocales</translation>
    </message>
    <message>
        <source>distance and near</source>
        <translation>lejos y cerca</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>sirve</translation>
    </message>
    <message>
        <source>fits with caution</source>
        <translation>sirve con precaución</translation>
    </message>
    <message>
        <source>on trial</source>
        <translation>a prueba</translation>
    </message>
    <message>
        <source>outside limit</source>
        <translation>fuera del límite</translation>
    </message>
    <message>
        <source>shown only</source>
        <translation>solo se muestra</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>premontadas</translation>
    </message>
    <message>
        <source>lens</source>
        <translation>lente</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>montura</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
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
        <translation>sin casilla</translation>
    </message>
    <message>
        <source>%1 bin %2</source>
        <translation>%1 casilla %2</translation>
    </message>
    <message>
        <source>RIGHT %1 bin %2</source>
        <translation>DERECHO %1 casilla %2</translation>
    </message>
    <message>
        <source>LEFT %1 bin %2</source>
        <translation>IZQUIERDO %1 casilla %2</translation>
    </message>
    <message>
        <source>frame %1 bin %2</source>
        <translation>montura %1 casilla %2</translation>
    </message>
    <message>
        <source>right eye</source>
        <translation>ojo derecho</translation>
    </message>
    <message>
        <source>left eye</source>
        <translation>ojo izquierdo</translation>
    </message>
</context>
</TS>
