<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt" sourcelanguage="en">
<context>
    <name>BringIn</name>
    <message>
        <source>kept, not used</source>
        <translation>guardado, não usado</translation>
    </message>
    <message>
        <source>Code of the person</source>
        <translation>Código da pessoa</translation>
    </message>
    <message>
        <source>Right eye, all in one cell</source>
        <translation>Olho direito, tudo numa célula</translation>
    </message>
    <message>
        <source>Right eye: sphere</source>
        <translation>Olho direito: esfera</translation>
    </message>
    <message>
        <source>Right eye: cylinder</source>
        <translation>Olho direito: cilindro</translation>
    </message>
    <message>
        <source>Right eye: axis</source>
        <translation>Olho direito: eixo</translation>
    </message>
    <message>
        <source>Right eye: prism</source>
        <translation>Olho direito: prisma</translation>
    </message>
    <message>
        <source>Right eye: base of the prism</source>
        <translation>Olho direito: base do prisma</translation>
    </message>
    <message>
        <source>Left eye, all in one cell</source>
        <translation>Olho esquerdo, tudo numa célula</translation>
    </message>
    <message>
        <source>Left eye: sphere</source>
        <translation>Olho esquerdo: esfera</translation>
    </message>
    <message>
        <source>Left eye: cylinder</source>
        <translation>Olho esquerdo: cilindro</translation>
    </message>
    <message>
        <source>Left eye: axis</source>
        <translation>Olho esquerdo: eixo</translation>
    </message>
    <message>
        <source>Left eye: prism</source>
        <translation>Olho esquerdo: prisma</translation>
    </message>
    <message>
        <source>Left eye: base of the prism</source>
        <translation>Olho esquerdo: base do prisma</translation>
    </message>
    <message>
        <source>Age in years</source>
        <translation>Idade em anos</translation>
    </message>
    <message>
        <source>Addition of both eyes</source>
        <translation>Adição dos dois olhos</translation>
    </message>
    <message>
        <source>Right eye: addition</source>
        <translation>Olho direito: adição</translation>
    </message>
    <message>
        <source>Left eye: addition</source>
        <translation>Olho esquerdo: adição</translation>
    </message>
    <message>
        <source>PD, mm</source>
        <translation>DP, mm</translation>
    </message>
    <message>
        <source>Right eye: PD, mm</source>
        <translation>Olho direito: DP, mm</translation>
    </message>
    <message>
        <source>Left eye: PD, mm</source>
        <translation>Olho esquerdo: DP, mm</translation>
    </message>
    <message>
        <source>Near PD, mm</source>
        <translation>DP de perto, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescritor</translation>
    </message>
    <message>
        <source>Day it was written</source>
        <translation>Dia em que foi escrita</translation>
    </message>
</context>
<context>
    <name>ChartData</name>
    <message>
        <source>%1 of %2 at odds, %3</source>
        <translation>%1 de %2 em desacordo, %3</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>entregas avaliadas</translation>
    </message>
    <message>
        <source>pair and record at odds</source>
        <translation>óculos e anotado em desacordo</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Ainda não se avaliou nenhuma entrega.</translation>
    </message>
    <message>
        <source>mismatches in order</source>
        <translation>discordâncias por ordem</translation>
    </message>
    <message>
        <source>good hand-overs before it</source>
        <translation>entregas boas antes</translation>
    </message>
    <message>
        <source>%1 good hand-overs before it</source>
        <translation>%1 entregas boas antes</translation>
    </message>
    <message>
        <source>weeks in order</source>
        <translation>semanas por ordem</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>e mais %n</numerusform>
            <numerusform>e mais %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program is writing in the ledger. Trying again; Escape gives up. Nothing is lost.</source>
        <translation>Outro programa está a escrever no registo. Nova tentativa; Escape desiste. Nada se perde.</translation>
    </message>
    <message>
        <source>The program met something it does not know: %1. Nothing was written; close the program and open the folder again.</source>
        <translation>O programa encontrou algo que não conhece: %1. Nada foi escrito; feche o programa e abra de novo a pasta.</translation>
    </message>
</context>
<context>
    <name>DeskOptions</name>
    <message>
        <source>Matches final spectacle prescriptions with a stock of ready-made spectacles and lenses.</source>
        <translation>Faz corresponder prescrições finais de óculos a um stock de óculos prontos e lentes.</translation>
    </message>
    <message>
        <source>light, dark or sun (black on white, large)</source>
        <translation>light, dark ou sun (preto sobre branco, grande)</translation>
    </message>
    <message>
        <source>mirrors the window; prescriptions stay left-to-right</source>
        <translation>espelha a janela; as prescrições continuam da esquerda para a direita</translation>
    </message>
    <message>
        <source>language of the window, for example ar</source>
        <translation>língua da janela, por exemplo ar</translation>
    </message>
    <message>
        <source>size of the letters in per cent, 100 to 200</source>
        <translation>tamanho das letras em percentagem, de 100 a 200</translation>
    </message>
    <message>
        <source>paints the window into a PNG file and leaves</source>
        <translation>desenha a janela num ficheiro PNG e sai</translation>
    </message>
    <message>
        <source>size of the window in pixels, for example 1366x768</source>
        <translation>tamanho da janela em píxeis, por exemplo 1366x768</translation>
    </message>
    <message>
        <source>loads this person of people.csv at the start</source>
        <translation>carrega no início esta pessoa de people.csv</translation>
    </message>
    <message>
        <source>chooses this line of the stock at the start</source>
        <translation>escolhe no início esta linha do stock</translation>
    </message>
    <message>
        <source>camp folder to open (stock.yaml, rules.yaml, ledger.sqlite)</source>
        <translation>pasta de acampamento a abrir (stock.yaml, rules.yaml, ledger.sqlite)</translation>
    </message>
    <message>
        <source>--size %1 is not a size; write for example 1366x768</source>
        <translation>--size %1 não é um tamanho; escreva por exemplo 1366x768</translation>
    </message>
    <message>
        <source>--text-scale %1 is not from 100 to 200</source>
        <translation>--text-scale %1 não está entre 100 e 200</translation>
    </message>
    <message>
        <source>--place %1 is not known; write one of %2</source>
        <translation>--place %1 não se conhece; escreva um de %2</translation>
    </message>
    <message>
        <source>--theme %1 is not known; write light, dark or sun</source>
        <translation>--theme %1 não se conhece; escreva light, dark ou sun</translation>
    </message>
    <message>
        <source>one camp folder at a time, not %1</source>
        <translation>uma só pasta de acampamento de cada vez, não %1</translation>
    </message>
    <message>
        <source>no readable person %1 in people.csv</source>
        <translation>nenhuma pessoa legível %1 em people.csv</translation>
    </message>
    <message>
        <source>no line %1 in this stock</source>
        <translation>não há linha %1 neste stock</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>não se pode escrever %1</translation>
    </message>
    <message>
        <source>page to show at the start: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in or send-out</source>
        <translation>página a mostrar no início: dispense, stock, stock-ladder, stock-box, stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, trays, settings, help, keys, bring-in ou send-out</translation>
    </message>
    <message>
        <source>reads this file of prescriptions on the page bring-in at the start</source>
        <translation>lê no início este ficheiro de prescrições na página bring-in</translation>
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
        <translation>E %1</translation>
    </message>
    <message>
        <source>%1 add %2</source>
        <translation>%1 ad. %2</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>não avaliado</translation>
    </message>
    <message>
        <source>%1 too strong</source>
        <translation>%1 forte demais</translation>
    </message>
    <message>
        <source>%1 too plus</source>
        <translation>%1 plus a mais</translation>
    </message>
    <message>
        <source>%1 too weak</source>
        <translation>%1 fraco demais</translation>
    </message>
    <message>
        <source>%1 too minus</source>
        <translation>%1 minus a mais</translation>
    </message>
    <message>
        <source>cylinder %1 left</source>
        <translation>resta cilindro %1</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>nada resta</translation>
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
        <translation>Serve com cautela</translation>
    </message>
    <message>
        <source>On trial: type the acuity</source>
        <translation>Em prova: escreva a acuidade</translation>
    </message>
    <message>
        <source>Outside limit</source>
        <translation>Fora do limite</translation>
    </message>
    <message>
        <source>right eye: %1</source>
        <translation>olho direito: %1</translation>
    </message>
    <message>
        <source>left eye: %1</source>
        <translation>olho esquerdo: %1</translation>
    </message>
    <message>
        <source>Tried on: acceptable</source>
        <translation>Provados: aceitável</translation>
    </message>
    <message>
        <source>Tried on: outside limit</source>
        <translation>Provados: fora do limite</translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>whole degrees up to 180</source>
        <translation>graus inteiros até 180</translation>
    </message>
    <message>
        <source>quarters of a dioptre up to 6.75</source>
        <translation>quartos de dioptria até 6.75</translation>
    </message>
    <message>
        <source>years up to 120</source>
        <translation>anos até 120</translation>
    </message>
    <message>
        <source>millimetres, or right and left as 31/30.5</source>
        <translation>milímetros, ou direita e esquerda como 31/30.5</translation>
    </message>
    <message>
        <source>quarters of a dioptre, plus</source>
        <translation>quartos de dioptria, mais</translation>
    </message>
    <message>
        <source>a sign first, then quarters of a dioptre, the axis up to 180</source>
        <translation>primeiro um sinal, depois quartos de dioptria, o eixo até 180</translation>
    </message>
    <message>
        <source>“%1” was not taken: %2</source>
        <translation>«%1» não foi aceite: %2</translation>
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
        <translation>dinheiro gasto</translation>
    </message>
    <message>
        <source>money spent, %1</source>
        <translation>dinheiro gasto, %1</translation>
    </message>
    <message>
        <source>share of needs served</source>
        <translation>parte das necessidades atendidas</translation>
    </message>
    <message>
        <source>Plan first: the curve comes with it.</source>
        <translation>Planeie primeiro: a curva vem com o plano.</translation>
    </message>
    <message>
        <source>the knee</source>
        <translation>o cotovelo</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>este plano</translation>
    </message>
</context>
<context>
    <name>PackingRows</name>
    <message>
        <source>Pack</source>
        <translation>Pacote</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Pacotes</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Peças</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Custo</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramas</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Porquê</translation>
    </message>
    <message>
        <source>without it %1 fewer served</source>
        <translation>sem ele, menos %1 atendidos</translation>
    </message>
    <message>
        <source>a reserve</source>
        <translation>uma reserva</translation>
    </message>
    <message>
        <source>nothing else for %1</source>
        <translation>mais nada para %1</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>serve a %1</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n em stock</numerusform>
            <numerusform>%n em stock</numerusform>
        </translation>
    </message>
    <message>
        <source>none on hand</source>
        <translation>nenhuma em stock</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Caixa</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Divisão</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linha</translation>
    </message>
    <message>
        <source>Of these bought</source>
        <translation>Destas, compradas</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nova</translation>
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
        <translation>Por chegada</translation>
    </message>
    <message>
        <source>Spends</source>
        <translation>Gasta</translation>
    </message>
    <message>
        <source>what would do has run out by then</source>
        <translation>o que serviria já se esgotou</translation>
    </message>
    <message>
        <source>no such power on hand or on offer</source>
        <translation>nenhuma potência assim em stock nem oferecida</translation>
    </message>
    <message>
        <source>nothing on offer keeps the limit: %1</source>
        <translation>nada do que se oferece respeita o limite: %1</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quem</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Sem óculos</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>%1, children</source>
        <translation>%1, crianças</translation>
    </message>
    <message>
        <source>%1, adults</source>
        <translation>%1, adultos</translation>
    </message>
    <message>
        <source>Days in a hundred</source>
        <translation>Dias em cada cem</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Pela pessoa</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Porque não</translation>
    </message>
    <message>
        <source>others do as well for the money</source>
        <translation>outros rendem o mesmo por esse dinheiro</translation>
    </message>
    <message>
        <source>nobody of this demand needs it</source>
        <translation>ninguém desta procura precisa dele</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>Gasto</translation>
    </message>
    <message>
        <source>Served, planned for</source>
        <translation>Atendidos, segundo o plano</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observação</translation>
    </message>
    <message>
        <source>the curve bends here</source>
        <translation>a curva dobra aqui</translation>
    </message>
</context>
<context>
    <name>PrescriptionCard</name>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
    </message>
    <message>
        <source>Camp code of the person, as on the paper card</source>
        <translation>Código de acampamento da pessoa, como na ficha de papel</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Idade</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Idade em anos; se não se sabe, avalia-se pelas regras mais estritas</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Direito</translation>
    </message>
    <message>
        <source>Right eye: sphere, cylinder (dioptres) and axis (degrees). Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Olho direito: esfera, cilindro (dioptrias) e eixo (graus). Seta acima e abaixo mudam a esfera 0.25; Page Up e Page Down, 1.00</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Esquerdo</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Adição</translation>
    </message>
    <message>
        <source>Near addition of both eyes, dioptres</source>
        <translation>Adição de perto dos dois olhos, dioptrias</translation>
    </message>
    <message>
        <source>PD far</source>
        <translation>DP longe</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>DP perto</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; worked out from the far one when empty</source>
        <translation>Distância entre as pupilas a olhar ao perto, milímetros; calcula-se da de longe se estiver vazia</translation>
    </message>
    <message>
        <source>Near, R</source>
        <translation>Perto, D</translation>
    </message>
    <message>
        <source>Right eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Olho direito: potência de perto completa achada por prova, dioptrias, em vez de uma adição</translation>
    </message>
    <message>
        <source>Near, L</source>
        <translation>Perto, E</translation>
    </message>
    <message>
        <source>Left eye: whole near power found by trial, dioptres, instead of an addition</source>
        <translation>Olho esquerdo: potência de perto completa achada por prova, dioptrias, em vez de uma adição</translation>
    </message>
    <message>
        <source>Unaided, R</source>
        <translation>Sem óculos, D</translation>
    </message>
    <message>
        <source>Right eye: acuity without spectacles, for example 6/18</source>
        <translation>Olho direito: acuidade sem óculos, por exemplo 6/18</translation>
    </message>
    <message>
        <source>Unaided, L</source>
        <translation>Sem óculos, E</translation>
    </message>
    <message>
        <source>Left eye: acuity without spectacles, for example 6/18</source>
        <translation>Olho esquerdo: acuidade sem óculos, por exemplo 6/18</translation>
    </message>
    <message>
        <source>Best, R</source>
        <translation>Melhor, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this prescription, for example 6/6</source>
        <translation>Olho direito: acuidade com esta prescrição, por exemplo 6/6</translation>
    </message>
    <message>
        <source>Best, L</source>
        <translation>Melhor, E</translation>
    </message>
    <message>
        <source>Left eye: acuity with this prescription, for example 6/6</source>
        <translation>Olho esquerdo: acuidade com esta prescrição, por exemplo 6/6</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescritor</translation>
    </message>
    <message>
        <source>Who signed the prescription; needed under 16 years</source>
        <translation>Quem assinou a prescrição; preciso abaixo dos 16 anos</translation>
    </message>
    <message>
        <source>Left eye: sphere, cylinder (dioptres) and axis (degrees); = takes the right eye’s. Up and Down step the sphere by 0.25, Page Up and Page Down by 1.00</source>
        <translation>Olho esquerdo: esfera, cilindro (dioptrias) e eixo (graus); = copia os do olho direito. Seta acima e abaixo mudam a esfera 0.25; Page Up e Page Down, 1.00</translation>
    </message>
    <message>
        <source>Distance between the pupils looking far, millimetres; or right and left of the nose: 31/30.5</source>
        <translation>Distância entre as pupilas a olhar ao longe, milímetros; ou à direita e à esquerda do nariz: 31/30.5</translation>
    </message>
    <message>
        <source>Objective, R</source>
        <translation>Objetiva, D</translation>
    </message>
    <message>
        <source>Right eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Olho direito: leitura do instrumento, dioptrias; de várias leituras separadas por ; faz-se a média e indica-se a dispersão</translation>
    </message>
    <message>
        <source>Objective, L</source>
        <translation>Objetiva, E</translation>
    </message>
    <message>
        <source>Left eye: reading of the instrument, dioptres; several readings separated by ; are averaged and their scatter is told</source>
        <translation>Olho esquerdo: leitura do instrumento, dioptrias; de várias leituras separadas por ; faz-se a média e indica-se a dispersão</translation>
    </message>
    <message>
        <source>Own pair, R</source>
        <translation>Óculos próprios, D</translation>
    </message>
    <message>
        <source>Right eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Olho direito: potência dos óculos que usa agora, lida com focímetro, dioptrias</translation>
    </message>
    <message>
        <source>Own pair, L</source>
        <translation>Óculos próprios, E</translation>
    </message>
    <message>
        <source>Left eye: power of the pair worn now, read by focimeter, dioptres</source>
        <translation>Olho esquerdo: potência dos óculos que usa agora, lida com focímetro, dioptrias</translation>
    </message>
    <message>
        <source>Pinhole, R</source>
        <translation>Estenopeico, D</translation>
    </message>
    <message>
        <source>Right eye: acuity through a pinhole, for example 6/9</source>
        <translation>Olho direito: acuidade com buraco estenopeico, por exemplo 6/9</translation>
    </message>
    <message>
        <source>Pinhole, L</source>
        <translation>Estenopeico, E</translation>
    </message>
    <message>
        <source>Left eye: acuity through a pinhole, for example 6/9</source>
        <translation>Olho esquerdo: acuidade com buraco estenopeico, por exemplo 6/9</translation>
    </message>
    <message>
        <source>With own, R</source>
        <translation>Com os seus, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Olho direito: acuidade com os óculos que usa agora, por exemplo 6/12</translation>
    </message>
    <message>
        <source>With own, L</source>
        <translation>Com os seus, E</translation>
    </message>
    <message>
        <source>Left eye: acuity with the pair worn now, for example 6/12</source>
        <translation>Olho esquerdo: acuidade com os óculos que usa agora, por exemplo 6/12</translation>
    </message>
    <message>
        <source>Near, bare</source>
        <translation>Perto, sem óculos</translation>
    </message>
    <message>
        <source>Smallest print read without spectacles, for example N12</source>
        <translation>Letra mais pequena lida sem óculos, por exemplo N12</translation>
    </message>
    <message>
        <source>Near, best</source>
        <translation>Perto, melhor</translation>
    </message>
    <message>
        <source>Smallest print read with this prescription, for example N6</source>
        <translation>Letra mais pequena lida com esta prescrição, por exemplo N6</translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation>Vértice</translation>
    </message>
    <message>
        <source>Distance from the trial lens to the eye, millimetres; needed above 4.00 D</source>
        <translation>Distância da lente de prova ao olho, milímetros; precisa acima de 4.00 D</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Trabalho</translation>
    </message>
    <message>
        <source>Distance of near work from the spectacles, millimetres; 400 when empty</source>
        <translation>Distância do trabalho de perto aos óculos, milímetros; 400 se estiver vazia</translation>
    </message>
    <message>
        <source>Complaints</source>
        <translation>Queixas</translation>
    </message>
    <message>
        <source>What the person complains of, in a few words</source>
        <translation>De que se queixa a pessoa, em poucas palavras</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Tutor</translation>
    </message>
    <message>
        <source>Who was told about a child’s prescription</source>
        <translation>Quem foi informado da prescrição de uma criança</translation>
    </message>
    <message>
        <source>Right eye: %1</source>
        <translation>Olho direito: %1</translation>
    </message>
    <message>
        <source>Left eye: %1</source>
        <translation>Olho esquerdo: %1</translation>
    </message>
</context>
<context>
    <name>ShareBars</name>
    <message>
        <source>Right: mean sphere</source>
        <translation>Direito: esfera média</translation>
    </message>
    <message>
        <source>Left: mean sphere</source>
        <translation>Esquerdo: esfera média</translation>
    </message>
    <message>
        <source>Right: cylinder</source>
        <translation>Direito: cilindro</translation>
    </message>
    <message>
        <source>Left: cylinder</source>
        <translation>Esquerdo: cilindro</translation>
    </message>
    <message>
        <source>Right: strain</source>
        <translation>Direito: esforço</translation>
    </message>
    <message>
        <source>Left: strain</source>
        <translation>Esquerdo: esforço</translation>
    </message>
    <message>
        <source>Right, near: mean sphere</source>
        <translation>Direito, perto: esfera média</translation>
    </message>
    <message>
        <source>Left, near: mean sphere</source>
        <translation>Esquerdo, perto: esfera média</translation>
    </message>
    <message>
        <source>Right, near: cylinder</source>
        <translation>Direito, perto: cilindro</translation>
    </message>
    <message>
        <source>Left, near: cylinder</source>
        <translation>Esquerdo, perto: cilindro</translation>
    </message>
    <message>
        <source>the eye makes up for %1 D</source>
        <translation>o olho compensa %1 D</translation>
    </message>
    <message>
        <source>error %1 D</source>
        <translation>erro %1 D</translation>
    </message>
    <message>
        <source>sight lost, logMAR over the eyes</source>
        <translation>visão perdida, logMAR nos dois olhos</translation>
    </message>
    <message>
        <source>part of the limit used up</source>
        <translation>parte do limite gasta</translation>
    </message>
    <message>
        <source>%1 of %2 %3; %4</source>
        <translation>%1 de %2 %3; %4</translation>
    </message>
    <message>
        <source>No criterion with a limit could be judged.</source>
        <translation>Nenhum critério com limite pôde ser avaliado.</translation>
    </message>
    <message>
        <source>of 100 hand-overs judged</source>
        <translation>de 100 entregas avaliadas</translation>
    </message>
    <message>
        <source>No hand-over was judged yet.</source>
        <translation>Ainda não se avaliou nenhuma entrega.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Judged again</source>
        <translation>Avaliadas de novo</translation>
    </message>
    <message>
        <source>Pair and record agree</source>
        <translation>Óculos e anotado concordam</translation>
    </message>
    <message>
        <source>adds</source>
        <translation>soma</translation>
    </message>
    <message>
        <source>takes away</source>
        <translation>retira</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fora</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>total</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Direito: %1</translation>
    </message>
    <message>
        <source>Left: %1</source>
        <translation>Esquerdo: %1</translation>
    </message>
</context>
<context>
    <name>command</name>
    <message>
        <source>this plan</source>
        <translation>este plano</translation>
    </message>
    <message>
        <source>greedy, without repairs</source>
        <translation>guloso, sem retoques</translation>
    </message>
    <message>
        <source>each line by its own demand (newsvendor)</source>
        <translation>cada linha pela sua própria procura (modelo do vendedor de jornais)</translation>
    </message>
    <message>
        <source>levels by past use</source>
        <translation>níveis segundo o uso passado</translation>
    </message>
    <message>
        <source>what is on hand, nothing bought</source>
        <translation>o que há em stock, sem comprar nada</translation>
    </message>
    <message>
        <source>spend %1 of %2 %3, %4 pieces, %5 kg</source>
        <translation>gasto %1 de %2 %3, %4 peças, %5 kg</translation>
    </message>
    <message>
        <source>%1: serves %2 %, first come %3 %, spends %4</source>
        <translation>%1: atende %2 %, por chegada %3 %, gasta %4</translation>
    </message>
    <message>
        <source>on the draws planned for: %1 %, no order serves more than %2 % (gap %3 %); on offer and on hand could serve %4 % at most</source>
        <translation>nos sorteios do plano: %1 %, nenhuma encomenda atende mais de %2 % (diferença %3 %); o oferecido e o que há poderiam atender %4 % no máximo</translation>
    </message>
    <message>
        <source>the curve bends at %1: %2 % of the draws planned for</source>
        <translation>a curva dobra em %1: %2 % nos sorteios do plano</translation>
    </message>
    <message>
        <source>%1 runs out on %2 days in a hundred, by person %3</source>
        <translation>%1 esgota-se em %2 dias em cada cem, pela pessoa %3</translation>
    </message>
    <message>
        <source>demand: %1, %2 people</source>
        <translation>procura: %1, %2 pessoas</translation>
    </message>
    <message>
        <source>demand: the ledger, %1 people</source>
        <translation>procura: o registo, %1 pessoas</translation>
    </message>
    <message>
        <source>left without a pair, %1: %2</source>
        <translation>ficaram sem óculos, %1: %2</translation>
    </message>
    <message>
        <source>entries without a prescription, not planned for: %1</source>
        <translation>inscrições sem prescrição, não incluídas no plano: %1</translation>
    </message>
    <message>
        <source>lines whose demand was raised, since they lay empty on some days: %1</source>
        <translation>linhas cuja procura foi aumentada, porque estiveram esgotadas alguns dias: %1</translation>
    </message>
    <message>
        <source>mixed with the published mix of a camp, which makes %1 % of it</source>
        <translation>misturada com a distribuição publicada de um acampamento, que faz %1 % dela</translation>
    </message>
    <message>
        <source>PDs not taken, drawn from published distributions: %1</source>
        <translation>DP não medidas, tiradas de distribuições publicadas: %1</translation>
    </message>
    <message>
        <source>assumed: where no PD was taken, it equals the centres of each pair</source>
        <translation>suposto: onde não se tirou a DP, ela é igual aos centros de cada par</translation>
    </message>
    <message>
        <source>assumed: objective readings are final, and a prescriber is named</source>
        <translation>suposto: as leituras objetivas são finais e há um prescritor nomeado</translation>
    </message>
    <message>
        <source>assumed: an unrecorded vertex distance is that of the stock</source>
        <translation>suposto: uma distância ao vértice não anotada é a do estoque</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>the folder %1 for the sample cannot be made; check rights and free space</source>
        <translation>não se pode criar a pasta %1 para o exemplo; veja as permissões e o espaço livre</translation>
    </message>
    <message>
        <source>write both parts of the PD, right then left: 31/30.5</source>
        <translation>escreva as duas partes da DP, direita e depois esquerda: 31/30.5</translation>
    </message>
    <message>
        <source>the folder %1 cannot be made</source>
        <translation>não se pode criar a pasta %1</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to print</source>
        <translation>a prescrição de %1 não está completa; não há encomenda a imprimir</translation>
    </message>
    <message>
        <source>%1 is not under 16; print the note for the person instead</source>
        <translation>%1 não tem menos de 16 anos; imprima antes a nota para a pessoa</translation>
    </message>
    <message>
        <source>this person has no camp code; give one before anything is printed</source>
        <translation>esta pessoa não tem código de acampamento; dê-lhe um antes de imprimir</translation>
    </message>
    <message>
        <source>nothing of %1 asks for a referral; there is no letter to print</source>
        <translation>nada de %1 pede encaminhamento; não há carta a imprimir</translation>
    </message>
    <message>
        <source>a label of this size does not hold its text; choose a larger one with --label-size, or a shorter name: %1</source>
        <translation>numa etiqueta deste tamanho não cabe o texto; escolha uma maior com --label-size, ou um nome mais curto: %1</translation>
    </message>
    <message>
        <source>there is no printer %1, and no other is set up here; write a PDF with --output and print it where there is one</source>
        <translation>não há impressora %1, nem outra instalada aqui; escreva um PDF com --output e imprima-o onde houver uma</translation>
    </message>
    <message>
        <source>there is no printer %1; there are %2</source>
        <translation>não há impressora %1; há %2</translation>
    </message>
    <message>
        <source>the printer %1 does not take the paper</source>
        <translation>a impressora %1 não aceita o papel</translation>
    </message>
    <message>
        <source>printing was stopped</source>
        <translation>a impressão foi parada</translation>
    </message>
    <message>
        <source>no font here has the script of %1; install the package %2 and print again</source>
        <translation>nenhum tipo de letra aqui tem a escrita de %1; instale o pacote %2 e imprima de novo</translation>
    </message>
    <message>
        <source>%1 does not wait in this table for that purpose, or stands in the list twice; take the row out</source>
        <translation>%1 não espera nesta tabela para esse uso, ou está duas vezes na lista; tire a linha da lista</translation>
    </message>
    <message>
        <source>there is no line %1 in this box</source>
        <translation>não há linha %1 nesta caixa</translation>
    </message>
    <message>
        <source>more people were told %1 than there are pieces of it; take a row out of the list</source>
        <translation>disse-se %1 a mais pessoas do que há peças; tire uma linha da lista</translation>
    </message>
    <message>
        <source>not drawn: counts under %1 are hidden on this page</source>
        <translation>não desenhado: os números abaixo de %1 escondem-se nesta página</translation>
    </message>
    <message>
        <source>there is no rules.yaml; the rules built in apply</source>
        <translation>não há rules.yaml; valem as regras incluídas</translation>
    </message>
    <message>
        <source>this ledger was last written at another place and is open for reading only; if the folder moved here for good, say so, and do not use the other copy any more</source>
        <translation>este registo foi escrito pela última vez noutro lugar e está aberto só para leitura; se a pasta mudou para aqui de vez, diga-o, e não use mais a outra cópia</translation>
    </message>
    <message>
        <source>this ledger had an older form and was brought up; as it was it stands in %1</source>
        <translation>este registo tinha uma forma mais antiga e foi atualizado; como era está em %1</translation>
    </message>
    <message>
        <source>ledger entry %1 is not as it was written: %2; keep the folder as it is and compare it with a copy</source>
        <translation>a inscrição %1 do registo não está como foi escrita: %2; guarde a pasta como está e compare-a com uma cópia</translation>
    </message>
    <message>
        <source>there is no ledger here yet</source>
        <translation>ainda não há registo aqui</translation>
    </message>
    <message>
        <source>the ledger has the entry, but stock.yaml could not be brought up to date; that is made good at the next opening</source>
        <translation>o registo tem a inscrição, mas stock.yaml não pôde ser atualizado; corrige-se na próxima abertura</translation>
    </message>
    <message>
        <source>nothing that was handed over to %1 stands here; look at the code, or enter the look at the site that gave the pair</source>
        <translation>aqui não consta nada entregue a %1; veja o código, ou inscreva a revisão no local que deu os óculos</translation>
    </message>
    <message>
        <source>to be referred before any glasses are given</source>
        <translation>a encaminhar antes de dar óculos</translation>
    </message>
    <message>
        <source>nothing is needed for this purpose</source>
        <translation>nada é preciso para este uso</translation>
    </message>
    <message>
        <source>these lines do not make a pair</source>
        <translation>estas linhas não formam uns óculos</translation>
    </message>
    <message>
        <source>on trial: type the acuity with this pair first</source>
        <translation>em prova: escreva primeiro a acuidade com estes óculos</translation>
    </message>
    <message>
        <source>an unequal pair: read each eye with the focimeter first</source>
        <translation>óculos desiguais: leia primeiro cada olho com o focímetro</translation>
    </message>
    <message>
        <source>none left of %1</source>
        <translation>não resta nenhum de %1</translation>
    </message>
    <message>
        <source>no pair chosen</source>
        <translation>nenhuns óculos escolhidos</translation>
    </message>
    <message>
        <source>stopped as asked; nothing was written</source>
        <translation>parado como se pediu; nada foi escrito</translation>
    </message>
    <message>
        <source>line %1 has %2 on hand, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>a linha %1 tem %2 em stock, %3 reservados e %4 em quarentena, poucos para isto; nada foi escrito</translation>
    </message>
    <message>
        <source>line %1 is not in the ledger of %2; nothing was written</source>
        <translation>a linha %1 não está no registo de %2; nada foi escrito</translation>
    </message>
    <message>
        <source>line %1 stands here by its name and by its code; write one row with the whole number</source>
        <translation>a linha %1 está aqui pelo nome e pelo código; escreva uma só linha na folha, com o número total</translation>
    </message>
    <message>
        <source>there is no line %1 in stock.yaml of %2; add it there with on hand: 0, or mend the name</source>
        <translation>não há linha %1 em stock.yaml de %2; junte-a lá com on hand: 0, ou corrija o nome</translation>
    </message>
    <message>
        <source>a count needs two persons; %1 cannot be both</source>
        <translation>uma contagem pede duas pessoas; %1 não pode ser ambas</translation>
    </message>
    <message>
        <source>line %1: counted %2, the book says %3; say why, in the row or with --reason</source>
        <translation>linha %1: contados %2, o registo diz %3; diga porquê, na folha ou com --reason</translation>
    </message>
    <message>
        <source>line %1: %2 were sent, %3 arrived; the sender should know</source>
        <translation>linha %1: foram enviados %2, chegaram %3; o remetente deve saber</translation>
    </message>
    <message>
        <source>this order is “%1” already; take back its last step %2 first</source>
        <translation>esta encomenda já está «%1»; desfaça primeiro o último passo %2</translation>
    </message>
    <message>
        <source>nothing that was received of lot %1 is available</source>
        <translation>nada do que se recebeu do lote %1 está disponível</translation>
    </message>
    <message>
        <source>there is no entry %1 to take back</source>
        <translation>não há inscrição %1 a desfazer</translation>
    </message>
    <message>
        <source>this hand-over is of %1; a hand-over is taken back on its day only; if the pair came back, enter it as returned</source>
        <translation>esta entrega é de %1; uma entrega só se desfaz no próprio dia; se os óculos voltaram, inscreva-os como devolvidos</translation>
    </message>
    <message>
        <source>nothing was handed over to %1 today</source>
        <translation>hoje nada foi entregue a %1</translation>
    </message>
    <message>
        <source>%1 was given %2 pairs today; say which with --entry %3</source>
        <translation>%1 recebeu hoje %2 óculos; diga quais com --entry %3</translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation>não há encomenda %1</translation>
    </message>
    <message>
        <source>this order is “%1”; “%2” cannot follow</source>
        <translation>esta encomenda está «%1»; «%2» não pode seguir-se</translation>
    </message>
    <message>
        <source>%1 has no open order</source>
        <translation>%1 não tem encomenda em aberto</translation>
    </message>
    <message>
        <source>%1 has %2 open orders; say which with --order %3</source>
        <translation>%1 tem %2 encomendas em aberto; diga qual com --order %3</translation>
    </message>
    <message>
        <source>the file cannot be written: %1; check rights and free space</source>
        <translation>não se pode escrever o ficheiro: %1; veja as permissões e o espaço livre</translation>
    </message>
    <message>
        <source>something has this name already; name a place that is free</source>
        <translation>algo já tem este nome; indique um lugar livre</translation>
    </message>
    <message>
        <source>this is the ledger of the camp itself; name another one</source>
        <translation>este é o registo do próprio acampamento; indique outro</translation>
    </message>
    <message>
        <source>nothing in the box is better for this person</source>
        <translation>nada na caixa é melhor para esta pessoa</translation>
    </message>
    <message>
        <source>loses no more than the best for this person; others need that one more</source>
        <translation>não perde mais do que os melhores para esta pessoa; outros precisam mais daqueles</translation>
    </message>
    <message>
        <source>%1 was promised to %2 before</source>
        <translation>%1 foi prometido antes a %2</translation>
    </message>
    <message>
        <source>%1 goes to %2, for whom nothing else will do</source>
        <translation>%1 vai para %2, a quem nada mais serve</translation>
    </message>
    <message>
        <source>%1 goes to %2, so that most are served and all together lose least</source>
        <translation>%1 vai para %2, para que mais pessoas sejam atendidas e todas juntas percam menos</translation>
    </message>
    <message>
        <source>nothing that would do is left</source>
        <translation>não resta nada que sirva</translation>
    </message>
    <message>
        <source>what would do goes to others</source>
        <translation>o que serviria vai para outros</translation>
    </message>
    <message>
        <source>what would do goes to %1</source>
        <translation>o que serviria vai para %1</translation>
    </message>
    <message>
        <source>told before, but none is left now</source>
        <translation>dito antes, mas já não resta nenhum</translation>
    </message>
    <message>
        <source>told before; not planned again</source>
        <translation>dito antes; não se planeia de novo</translation>
    </message>
    <message>
        <source>picked by hand: %1</source>
        <translation>escolhido à mão: %1</translation>
    </message>
    <message>
        <source>no sample up to %1 tells these shares apart at this risk; allow a larger risk, or take shares that lie further apart</source>
        <translation>nenhuma amostra até %1 distingue estas proporções com este risco; admita um risco maior, ou tome proporções mais afastadas</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger; this is the worksheet of another camp, or its draw was taken back</source>
        <translation>não se sorteou o lote %1 neste registo; esta folha é de outro acampamento, ou o sorteio foi desfeito</translation>
    </message>
    <message>
        <source>the results of this lot are in already, entry %1; to enter them anew take that one back first with `quarterstep record entered-in-error --entry`</source>
        <translation>os resultados deste lote já estão inscritos, inscrição %1; para os inscrever de novo desfaça-a primeiro com `quarterstep record entered-in-error --entry`</translation>
    </message>
    <message>
        <source>this row is of the lot %1, the first one of %2; enter each lot by itself</source>
        <translation>esta linha é do lote %1, a primeira é do %2; inscreva cada lote à parte</translation>
    </message>
    <message>
        <source>this lot has %1 rows, spares included; there is no row %2</source>
        <translation>este lote tem %1 linhas, com as de reserva; não há linha %2</translation>
    </message>
    <message>
        <source>nothing was handed over here in those days whose pair is recorded; there is nothing to draw from</source>
        <translation>nesses dias não se entregou aqui nada cujos óculos estejam anotados; não há de onde sortear</translation>
    </message>
    <message>
        <source>the plan reads %1 pairs and only %2 were handed over; read all of them (--sample %2), or take more days into the lot</source>
        <translation>o plano lê %1 óculos e só %2 foram entregues; leia-os todos (--sample %2), ou inclua mais dias no lote</translation>
    </message>
    <message>
        <source>no lot was drawn here yet; `quarterstep audit draw` does</source>
        <translation>ainda não se sorteou nenhum lote aqui; `quarterstep audit draw` fá-lo</translation>
    </message>
    <message>
        <source>no lot %1 was drawn in this ledger</source>
        <translation>não se sorteou o lote %1 neste registo</translation>
    </message>
    <message>
        <source>no row of the worksheet is filled in</source>
        <translation>nenhuma linha da folha está preenchida</translation>
    </message>
    <message>
        <source>the demand is %1 person; plan from more: nothing can be said of who comes next</source>
        <translation>a procura é de %1 pessoa; planeie com mais: nada se pode dizer de quem virá</translation>
    </message>
    <message>
        <source>the budget is 0: nothing is bought; give --budget</source>
        <translation>o orçamento é 0: nada se compra; indique --budget</translation>
    </message>
    <message>
        <source>nobody of this demand can be served by any line on offer; nothing is bought</source>
        <translation>ninguém desta procura pode ser atendido com as linhas oferecidas; nada se compra</translation>
    </message>
    <message>
        <source>no pack on offer is within the budget, the weight and the boxes; nothing is bought</source>
        <translation>nenhum pacote oferecido cabe no orçamento, no peso e nas caixas; nada se compra</translation>
    </message>
    <message>
        <source>what is on hand serves whoever can be served; nothing is bought</source>
        <translation>o que há atende todos os que podem ser atendidos; nada se compra</translation>
    </message>
    <message>
        <source>the library for PINs cannot be used here</source>
        <translation>a biblioteca para os PIN não pode ser usada aqui</translation>
    </message>
    <message>
        <source>a PIN has %1 to %2 characters; nothing was written</source>
        <translation>um PIN tem de %1 a %2 caracteres; nada foi escrito</translation>
    </message>
    <message>
        <source>there is not enough memory to keep a PIN; close other programs</source>
        <translation>não há memória suficiente para guardar um PIN; feche outros programas</translation>
    </message>
    <message>
        <source>nobody of this demand can be served from this box; no day was simulated</source>
        <translation>ninguém desta procura pode ser atendido com esta caixa; nenhum dia foi simulado</translation>
    </message>
    <message>
        <source>after the colon stands how many lie in each bin, then centres, bin or round: write for example &quot;: 10 centres 62 bin A&quot;</source>
        <translation>depois dos dois pontos vem quantos há em cada divisão, depois centres, bin ou round: escreva por exemplo &quot;: 10 centres 62 bin A&quot;</translation>
    </message>
    <message>
        <source>%1 is not a size in millimetres; write for example 62</source>
        <translation>%1 não é um tamanho em milímetros; escreva por exemplo 62</translation>
    </message>
    <message>
        <source>a ready-made pair with a cylinder needs its axis; write for example -1.00 -0.50 x 90</source>
        <translation>uns óculos prontos com cilindro precisam do eixo; escreva por exemplo -1.00 -0.50 x 90</translation>
    </message>
    <message>
        <source>from %1 to %2 is no whole number of steps of %3; write spheres and a step that meets the last one</source>
        <translation>de %1 a %2 não é um número inteiro de passos de %3; escreva esferas e um passo que chegue à última</translation>
    </message>
    <message>
        <source>%1 stands in an earlier tray already; put the counts together, or give the two different centres</source>
        <translation>%1 já está num tabuleiro anterior; some os números, ou dê aos dois centros diferentes</translation>
    </message>
    <message>
        <source>a frame is given by its lens and bridge in millimetres; write for example frame 44-18: 12</source>
        <translation>uma armação dá-se pela lente e pela ponte em milímetros; escreva por exemplo frame 44-18: 12</translation>
    </message>
    <message>
        <source>a tray is written as powers, a colon and a count: for example &quot;near +1.00 to +3.50 by 0.50: 10&quot;</source>
        <translation>um tabuleiro escreve-se com potências, dois pontos e um número: por exemplo &quot;near +1.00 to +3.50 by 0.50: 10&quot;</translation>
    </message>
    <message>
        <source>these trays make more than %1 lines of stock</source>
        <translation>estes tabuleiros dão mais de %1 linhas de stock</translation>
    </message>
    <message>
        <source>the camp has no name yet; give it one</source>
        <translation>o acampamento ainda não tem nome; dê-lhe um</translation>
    </message>
    <message>
        <source>nothing is described yet; write a tray a line</source>
        <translation>ainda nada está descrito; escreva um tabuleiro por linha</translation>
    </message>
    <message>
        <source>this folder cannot be made: %1</source>
        <translation>não se pode criar esta pasta: %1</translation>
    </message>
    <message>
        <source>this folder has a stock.yaml already; nothing was written: open the folder, or choose another one</source>
        <translation>esta pasta já tem um stock.yaml; nada foi escrito: abra a pasta ou escolha outra</translation>
    </message>
    <message>
        <source>%1 does not wait for that purpose</source>
        <translation>%1 não espera para esse uso</translation>
    </message>
    <message>
        <source>this box has no such lines any more</source>
        <translation>esta caixa já não tem essas linhas</translation>
    </message>
    <message>
        <source>say why another pair than the one planned</source>
        <translation>diga porquê outros óculos que não os planeados</translation>
    </message>
    <message>
        <source>none is left, or what is left was promised to others</source>
        <translation>não resta nenhum, ou o que resta foi prometido a outros</translation>
    </message>
    <message>
        <source>no mismatch, so there is no run between two of them to draw</source>
        <translation>nenhuma discordância, por isso não há sequência entre duas a desenhar</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; there is no run of good ones to draw</source>
        <translation>cada entrega é uma discordância; não há sequência de boas a desenhar</translation>
    </message>
    <message>
        <source>every hand-over is a mismatch; a p-chart has no limits then</source>
        <translation>cada entrega é uma discordância; um gráfico p não tem então limites</translation>
    </message>
    <message>
        <source>no mismatch; a p-chart has no limits then</source>
        <translation>nenhuma discordância; um gráfico p não tem então limites</translation>
    </message>
    <message>
        <source>a p-chart compares groups over time, and there are not two yet</source>
        <translation>um gráfico p compara grupos no tempo, e ainda não há dois</translation>
    </message>
    <message>
        <source>%1 of %2 groups have fewer than the %3 hand-overs from which a p-chart could show at this share that things got better; look at the g-chart</source>
        <translation>%1 de %2 grupos têm menos do que as %3 entregas com que um gráfico p poderia mostrar melhoria com esta proporção; veja o gráfico g</translation>
    </message>
    <message>
        <source>%1 of %2 groups have no mismatch, a quarter or more; look at the g-chart</source>
        <translation>%1 de %2 grupos não têm discordâncias, um quarto ou mais; veja o gráfico g</translation>
    </message>
    <message>
        <source>worn when seen</source>
        <translation>usados quando visto</translation>
    </message>
    <message>
        <source>carried, not worn when seen</source>
        <translation>trazia-os, sem os usar quando visto</translation>
    </message>
    <message>
        <source>left at home</source>
        <translation>deixados em casa</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>partidos</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdidos</translation>
    </message>
    <message>
        <source>not worn any more</source>
        <translation>já não se usam</translation>
    </message>
    <message>
        <source>the person was not met</source>
        <translation>a pessoa não foi encontrada</translation>
    </message>
    <message>
        <source>after some weeks</source>
        <translation>após algumas semanas</translation>
    </message>
    <message>
        <source>after three to four months</source>
        <translation>após três a quatro meses</translation>
    </message>
    <message>
        <source>after six months</source>
        <translation>após seis meses</translation>
    </message>
    <message>
        <source>the same person had a pair for %1 by entry %2 already</source>
        <translation>a mesma pessoa já tinha óculos para %1 pela inscrição %2</translation>
    </message>
    <message>
        <source>%1 entries were taken back at one place on one day</source>
        <translation>%1 inscrições foram desfeitas num só lugar num só dia</translation>
    </message>
    <message>
        <source>line %1: counted %2 against the book</source>
        <translation>linha %1: contados %2 face ao registo</translation>
    </message>
    <message>
        <source>line %1 was later put aside (%2); this pair was given before</source>
        <translation>a linha %1 foi posta de lado mais tarde (%2); estes óculos foram dados antes</translation>
    </message>
    <message>
        <source>the time of this entry is later than now</source>
        <translation>a hora desta inscrição é posterior à atual</translation>
    </message>
    <message>
        <source>entered as not collected</source>
        <translation>inscrito como não levantado</translation>
    </message>
    <message>
        <source>a letter was to be written beside this hand-over; none is recorded</source>
        <translation>devia escrever-se uma carta com esta entrega; nenhuma está anotada</translation>
    </message>
    <message>
        <source>checked and waiting for more than %1 days</source>
        <translation>verificados e à espera há mais de %1 dias</translation>
    </message>
    <message>
        <source>given until the order %1 comes, more than %2 days ago</source>
        <translation>dados até chegar a encomenda %1, há mais de %2 dias</translation>
    </message>
    <message>
        <source>refused: %1 of %2 read failed, more than the %4 allowed among %3</source>
        <translation>recusado: falharam %1 de %2 lidos, mais do que os %4 admitidos entre %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed; even if the %5 not read failed too, it would be no more than the %4 allowed among %3</source>
        <translation>aceite: falharam %1 de %2 lidos; mesmo que os %5 não lidos falhassem, não seriam mais do que os %4 admitidos entre %3</translation>
    </message>
    <message>
        <source>accepted: %1 of %2 read failed, no more than the %4 allowed among %3</source>
        <translation>aceite: falharam %1 de %2 lidos, não mais do que os %4 admitidos entre %3</translation>
    </message>
    <message>
        <source>open: %1 of %2 read failed, %4 are allowed among %3; %5 pairs are still to be read</source>
        <translation>em aberto: falharam %1 de %2 lidos, admitem-se %4 entre %3; faltam ler %5 óculos</translation>
    </message>
    <message>
        <source>this pair may be given only with the acuity read with it; none was recorded</source>
        <translation>estes óculos só podem ser dados com a acuidade lida com eles; nenhuma foi anotada</translation>
    </message>
    <message>
        <source>by the record nothing was needed for this purpose</source>
        <translation>segundo o anotado nada era preciso para este uso</translation>
    </message>
    <message>
        <source>the centres of this pair were assumed, not measured</source>
        <translation>os centros destes óculos foram supostos, não medidos</translation>
    </message>
    <message>
        <source>the PD was not measured; prism is judged at its worst likely value</source>
        <translation>a DP não foi medida; o prisma avalia-se no pior valor provável</translation>
    </message>
    <message>
        <source>the entry says %1, judged again it is %2; the cost was %3 and is %4 thousandths</source>
        <translation>a inscrição diz %1, avaliada de novo é %2; o custo era %3 e é %4 milésimos</translation>
    </message>
    <message>
        <source>right eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>olho direito: %1 com estes óculos, %2 logMAR pior do que o previsto</translation>
    </message>
    <message>
        <source>left eye: %1 with this pair, %2 logMAR worse than predicted</source>
        <translation>olho esquerdo: %1 com estes óculos, %2 logMAR pior do que o previsto</translation>
    </message>
    <message>
        <source>right eye: read %1, recorded %2</source>
        <translation>olho direito: lido %1, anotado %2</translation>
    </message>
    <message>
        <source>left eye: read %1, recorded %2</source>
        <translation>olho esquerdo: lido %1, anotado %2</translation>
    </message>
    <message>
        <source>%1 was in the box (bin %2) and would have cost %3 logMAR less</source>
        <translation>%1 estava na caixa (divisão %2) e teria custado menos %3 logMAR</translation>
    </message>
    <message>
        <source>outside a limit, no reason given</source>
        <translation>fora de um limite, sem motivo</translation>
    </message>
    <message>
        <source>see the person again; read the pair with the focimeter</source>
        <translation>veja de novo a pessoa; leia os óculos com o focímetro</translation>
    </message>
    <message>
        <source>outside a limit, with a reason</source>
        <translation>fora de um limite, com motivo</translation>
    </message>
    <message>
        <source>read the reasons together; where one repeats, change stock or rules</source>
        <translation>leia os motivos em conjunto; se um se repete, mude o stock ou as regras</translation>
    </message>
    <message>
        <source>a clearly better pair was in the box</source>
        <translation>havia na caixa óculos claramente melhores</translation>
    </message>
    <message>
        <source>look at the bin named: is it reachable, labelled, in its place?</source>
        <translation>veja a divisão indicada: alcança-se, tem etiqueta, está no seu lugar?</translation>
    </message>
    <message>
        <source>the pair is off its label</source>
        <translation>os óculos não são como a etiqueta</translation>
    </message>
    <message>
        <source>quarantine the line, read ten pieces, tell the supplier</source>
        <translation>ponha a linha em quarentena, leia dez peças, avise o fornecedor</translation>
    </message>
    <message>
        <source>acuity with the pair worse than predicted</source>
        <translation>acuidade com os óculos pior do que o previsto</translation>
    </message>
    <message>
        <source>refract again; where it repeats, look at the refraction of the day</source>
        <translation>refaça a refração; se se repete, veja a refração desse dia</translation>
    </message>
    <message>
        <source>on trial, no acuity recorded</source>
        <translation>em prova, sem acuidade anotada</translation>
    </message>
    <message>
        <source>call the person back and read the acuity with the pair</source>
        <translation>chame a pessoa e tome a acuidade com os óculos</translation>
    </message>
    <message>
        <source>nothing was needed by the record</source>
        <translation>segundo o anotado nada era preciso</translation>
    </message>
    <message>
        <source>look at what is prescribed to whom; a pair not needed is one that somebody lacks</source>
        <translation>veja o que se prescreve e a quem; uns óculos desnecessários faltam a alguém</translation>
    </message>
    <message>
        <source>no check recorded</source>
        <translation>nenhuma verificação anotada</translation>
    </message>
    <message>
        <source>record the four checks at hand-over; draw a sample of these for the bench</source>
        <translation>anote as quatro verificações na entrega; tire destas uma amostra para a bancada</translation>
    </message>
    <message>
        <source>PD or centres not measured</source>
        <translation>DP ou centros não medidos</translation>
    </message>
    <message>
        <source>measure the PD of everybody and the centres of every line from 1.50 D up</source>
        <translation>meça a DP de todos e os centros de cada linha a partir de 1.50 D</translation>
    </message>
    <message>
        <source>given from a line in quarantine</source>
        <translation>dados de uma linha em quarentena</translation>
    </message>
    <message>
        <source>read the pair with the focimeter, or exchange it</source>
        <translation>leia os óculos com o focímetro, ou troque-os</translation>
    </message>
    <message>
        <source>a temporary pair never replaced</source>
        <translation>óculos provisórios nunca substituídos</translation>
    </message>
    <message>
        <source>ask the laboratory for the order, and the person to come</source>
        <translation>pergunte ao laboratório pela encomenda, e peça à pessoa que venha</translation>
    </message>
    <message>
        <source>an order not collected</source>
        <translation>uma encomenda não levantada</translation>
    </message>
    <message>
        <source>send word to the person; bring the pair to the next visit</source>
        <translation>avise a pessoa; leve os óculos à próxima visita</translation>
    </message>
    <message>
        <source>a letter of referral not written</source>
        <translation>uma carta de encaminhamento por escrever</translation>
    </message>
    <message>
        <source>write it now</source>
        <translation>escreva-a agora</translation>
    </message>
    <message>
        <source>handed over twice for one purpose</source>
        <translation>entregue duas vezes para um mesmo uso</translation>
    </message>
    <message>
        <source>count the line; where one piece is too many, take the second entry back</source>
        <translation>conte a linha; se sobra uma peça, desfaça a segunda inscrição</translation>
    </message>
    <message>
        <source>many corrections on one day</source>
        <translation>muitas correções num só dia</translation>
    </message>
    <message>
        <source>ask what was difficult that day: light, queue, a new hand</source>
        <translation>pergunte o que foi difícil nesse dia: luz, fila, pessoa nova</translation>
    </message>
    <message>
        <source>a count differed from the book</source>
        <translation>uma contagem diferia do registo</translation>
    </message>
    <message>
        <source>look for a line that differs the other way; it is likely beside it</source>
        <translation>procure uma linha que difira ao contrário; é provável que esteja ao lado</translation>
    </message>
    <message>
        <source>the record disagrees with what was measured beside it</source>
        <translation>o anotado não concorda com o que se mediu ao lado</translation>
    </message>
    <message>
        <source>have the card read again by somebody who has not seen the record</source>
        <translation>mande reler a ficha a alguém que não tenha visto o anotado</translation>
    </message>
    <message>
        <source>judged again, the entry says something else</source>
        <translation>avaliada de novo, a inscrição diz outra coisa</translation>
    </message>
    <message>
        <source>keep this ledger as it is and tell the makers of the program</source>
        <translation>guarde este registo como está e avise os autores do programa</translation>
    </message>
    <message>
        <source>the rules of the time are missing</source>
        <translation>faltam as regras da altura</translation>
    </message>
    <message>
        <source>put the rules.yaml of that time into a copy of the camp and audit there</source>
        <translation>ponha o rules.yaml da altura numa cópia do acampamento e audite lá</translation>
    </message>
    <message>
        <source>the record is not there to judge by</source>
        <translation>não há dados anotados com que avaliar</translation>
    </message>
    <message>
        <source>nothing: the person was forgotten, or the entry was written before records were kept</source>
        <translation>nada: a pessoa foi esquecida, ou a inscrição é anterior a guardarem-se os dados</translation>
    </message>
    <message>
        <source>an entry from the future</source>
        <translation>uma inscrição do futuro</translation>
    </message>
    <message>
        <source>set the clock of that station right</source>
        <translation>acerte o relógio desse posto</translation>
    </message>
    <message>
        <source>neither power, fit, acuity nor instructions are recorded</source>
        <translation>não estão anotados potência, ajuste, acuidade nem instruções</translation>
    </message>
    <message>
        <source>the rules with the hash %1 (profile %2) are neither in the ledger nor in rules.yaml</source>
        <translation>as regras com o código de controlo %1 (perfil %2) não estão no registo nem em rules.yaml</translation>
    </message>
    <message>
        <source>the pair as it was judged, or part of the prescription, is not recorded</source>
        <translation>os óculos como foram avaliados, ou parte da prescrição, não estão anotados</translation>
    </message>
    <message>
        <source>the prescription is not recorded or was forgotten</source>
        <translation>a prescrição não está anotada ou foi esquecida</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it fits %2</source>
        <translation>anotado %1; o que se mediu ao lado corresponde a %2</translation>
    </message>
    <message>
        <source>recorded %1; what was measured beside it does not fit</source>
        <translation>anotado %1; o que se mediu ao lado não corresponde</translation>
    </message>
    <message>
        <source>meant as it is</source>
        <translation>querido tal como está</translation>
    </message>
    <message>
        <source>the sign of a sphere</source>
        <translation>o sinal de uma esfera</translation>
    </message>
    <message>
        <source>the sign of a cylinder</source>
        <translation>o sinal de um cilindro</translation>
    </message>
    <message>
        <source>a transposition without the axis</source>
        <translation>uma transposição sem o eixo</translation>
    </message>
    <message>
        <source>a transposition without the sphere</source>
        <translation>uma transposição sem a esfera</translation>
    </message>
    <message>
        <source>an axis off by 90 degrees</source>
        <translation>um eixo desviado 90 graus</translation>
    </message>
    <message>
        <source>an axis read as its mirror image</source>
        <translation>um eixo lido como em espelho</translation>
    </message>
    <message>
        <source>digits of an axis</source>
        <translation>algarismos de um eixo</translation>
    </message>
    <message>
        <source>sphere and cylinder exchanged</source>
        <translation>esfera e cilindro trocados</translation>
    </message>
    <message>
        <source>a decimal point in another place</source>
        <translation>um ponto decimal noutro lugar</translation>
    </message>
    <message>
        <source>a power misread by a step or two</source>
        <translation>uma potência mal lida por um ou dois passos</translation>
    </message>
    <message>
        <source>the addition put on the distance power</source>
        <translation>a adição posta na potência de longe</translation>
    </message>
    <message>
        <source>right and left exchanged in the record</source>
        <translation>direito e esquerdo trocados no anotado</translation>
    </message>
    <message>
        <source>the right eye written for the left as well</source>
        <translation>o olho direito escrito também para o esquerdo</translation>
    </message>
    <message>
        <source>the prescription of the person before</source>
        <translation>a prescrição da pessoa anterior</translation>
    </message>
    <message>
        <source>the addition left out</source>
        <translation>a adição omitida</translation>
    </message>
    <message>
        <source>the addition taken as the whole near power</source>
        <translation>a adição tomada como potência de perto completa</translation>
    </message>
    <message>
        <source>the PD of one eye recorded as that of both</source>
        <translation>a DP de um olho anotada como a dos dois</translation>
    </message>
    <message>
        <source>the near PD recorded as distance PD</source>
        <translation>a DP de perto anotada como DP de longe</translation>
    </message>
    <message>
        <source>the record, in a way that is none of those listed</source>
        <translation>o anotado, de um modo que não está na lista</translation>
    </message>
    <message>
        <source>a pair from a bin beside the one meant</source>
        <translation>óculos de uma divisão ao lado da querida</translation>
    </message>
    <message>
        <source>the power meant, other centres or size</source>
        <translation>a potência querida, outros centros ou tamanho</translation>
    </message>
    <message>
        <source>picked by the sphere, the cylinder left out</source>
        <translation>escolhidos pela esfera, sem o cilindro</translation>
    </message>
    <message>
        <source>picked by sphere and whole cylinder</source>
        <translation>escolhidos por esfera e cilindro inteiro</translation>
    </message>
    <message>
        <source>picked by the sphere less half the cylinder</source>
        <translation>escolhidos pela esfera menos meio cilindro</translation>
    </message>
    <message>
        <source>the pair for the person&apos;s other purpose</source>
        <translation>os óculos para o outro uso da pessoa</translation>
    </message>
    <message>
        <source>the pairs of two persons exchanged</source>
        <translation>os óculos de duas pessoas trocados</translation>
    </message>
    <message>
        <source>right and left lens exchanged</source>
        <translation>lentes direita e esquerda trocadas</translation>
    </message>
    <message>
        <source>a lens turned when it was mounted</source>
        <translation>uma lente rodada ao montar</translation>
    </message>
    <message>
        <source>a piece that lay in another line&apos;s bin</source>
        <translation>uma peça que estava na divisão de outra linha</translation>
    </message>
    <message>
        <source>another line recorded than given</source>
        <translation>anotada outra linha que não a dada</translation>
    </message>
    <message>
        <source>the piece or its lot off the label</source>
        <translation>a peça ou o lote não é como a etiqueta</translation>
    </message>
    <message>
        <source>one pair recorded twice</source>
        <translation>uns óculos anotados duas vezes</translation>
    </message>
    <message>
        <source>another pair than the one meant, in a way not listed</source>
        <translation>outros óculos que não os queridos, de um modo que não está na lista</translation>
    </message>
    <message>
        <source>record and pair meant as they are</source>
        <translation>anotado e óculos queridos tal como estão</translation>
    </message>
    <message>
        <source>entry %1 records the same pair for the same purpose</source>
        <translation>a inscrição %1 anota os mesmos óculos para o mesmo uso</translation>
    </message>
    <message>
        <source>recorded %1; what was read fits %2</source>
        <translation>anotado %1; o que se leu corresponde a %2</translation>
    </message>
    <message>
        <source>what was read fits %1; the record says %2</source>
        <translation>o que se leu corresponde a %1; o anotado diz %2</translation>
    </message>
    <message>
        <source>%1 may have been given and another line recorded</source>
        <translation>pode ter-se dado %1 e anotado outra linha</translation>
    </message>
    <message>
        <source>line %1 may be off its label</source>
        <translation>a linha %1 pode não ser como a etiqueta</translation>
    </message>
    <message>
        <source>%1 would be suggested by this record</source>
        <translation>com este anotado sugeria-se %1</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s near need</source>
        <translation>os óculos dados servem a necessidade de perto desta pessoa</translation>
    </message>
    <message>
        <source>the pair given fits this person&apos;s distance need</source>
        <translation>os óculos dados servem a necessidade de longe desta pessoa</translation>
    </message>
    <message>
        <source>the pair given is a reader of the addition alone</source>
        <translation>os óculos dados são só de leitura, com a adição</translation>
    </message>
    <message>
        <source>with right and left lens exchanged the pair fits</source>
        <translation>com as lentes direita e esquerda trocadas os óculos servem</translation>
    </message>
    <message>
        <source>the pair given fits the person of entry %1, and that one fits here</source>
        <translation>os óculos dados servem à pessoa da inscrição %1, e aqueles servem aqui</translation>
    </message>
    <message>
        <source>%1 costs less sight than %2: %3 against %4 logMAR over the eyes</source>
        <translation>%1 custa menos visão do que %2: %3 contra %4 logMAR nos dois olhos</translation>
    </message>
    <message>
        <source>%1 is within the limits, or may be tried; %2 is outside one</source>
        <translation>%1 está dentro dos limites, ou pode provar-se; %2 está fora de um</translation>
    </message>
    <message>
        <source>%1 is acceptable as it is; %2 is on trial until the acuity with it is typed</source>
        <translation>%1 é aceitável tal como está; %2 está em prova até se escrever a acuidade</translation>
    </message>
    <message>
        <source>equal in sight; %1 has fewer cautions than %2: %3 against %4</source>
        <translation>iguais na visão; %1 tem menos cautelas do que %2: %3 contra %4</translation>
    </message>
    <message>
        <source>equal in sight and cautions; %1 errs to the side that people reject in fewer eyes than %2: %3 against %4</source>
        <translation>iguais na visão e nas cautelas; %1 erra para o lado que se rejeita em menos olhos do que %2: %3 contra %4</translation>
    </message>
    <message>
        <source>equal so far; %1 keeps the eyes in better balance than %2: %3 against %4 D apart</source>
        <translation>iguais até aqui; %1 mantém os olhos mais equilibrados do que %2: %3 contra %4 D de diferença</translation>
    </message>
    <message>
        <source>equal so far; %1 has less horizontal prism than %2: %3 against %4 prism dioptres</source>
        <translation>iguais até aqui; %1 tem menos prisma horizontal do que %2: %3 contra %4 dioptrias prismáticas</translation>
    </message>
    <message>
        <source>equal so far; at near, base in (%1) comes before base out (%2)</source>
        <translation>iguais até aqui; ao perto, base interna (%1) vem antes de base externa (%2)</translation>
    </message>
    <message>
        <source>equal so far; the frame of %1 suits the size wanted better than %2: %3 against %4 classes off</source>
        <translation>iguais até aqui; a armação de %1 aproxima-se mais do tamanho querido do que %2: %3 contra %4 classes de diferença</translation>
    </message>
    <message>
        <source>equal so far; %1 is less scarce in the box than %2</source>
        <translation>iguais até aqui; %1 é menos escasso na caixa do que %2</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 is fewer pieces than %2: %3 against %4</source>
        <translation>iguais em tudo o que se avalia; %1 são menos peças do que %2: %3 contra %4</translation>
    </message>
    <message>
        <source>equal in all that is judged; %1 comes before %2 by name</source>
        <translation>iguais em tudo o que se avalia; %1 vem antes de %2 pelo nome</translation>
    </message>
    <message>
        <source>%1 and %2 are the same</source>
        <translation>%1 e %2 são o mesmo</translation>
    </message>
    <message>
        <source>above %1 D the vertex distance must be recorded</source>
        <translation>acima de %1 D deve anotar-se a distância ao vértice</translation>
    </message>
    <message>
        <source>a sphere would leave less cylinder than this lens does</source>
        <translation>uma esfera deixaria menos cilindro do que esta lente</translation>
    </message>
    <message>
        <source>prism by decentration is the prescriber&apos;s decision</source>
        <translation>o prisma por descentramento é decisão do prescritor</translation>
    </message>
    <message>
        <source>PD not taken: judged at the worst end of what is plausible</source>
        <translation>DP não tomada: avalia-se no pior extremo do plausível</translation>
    </message>
    <message>
        <source>the centres of this pair are assumed, not measured</source>
        <translation>os centros destes óculos são supostos, não medidos</translation>
    </message>
    <message>
        <source>heights of the centres not measured</source>
        <translation>alturas dos centros não medidas</translation>
    </message>
    <message>
        <source>cylinder left over</source>
        <translation>cilindro restante</translation>
    </message>
    <message>
        <source>cylinder left over %1 D, limit %2 D</source>
        <translation>cilindro restante %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D of cylinder left over</source>
        <translation>resta %1 D de cilindro</translation>
    </message>
    <message>
        <source>difference between the eyes&apos; needs</source>
        <translation>diferença entre as necessidades dos olhos</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D, limit %2 D for one power in both lenses</source>
        <translation>os olhos diferem %1 D, limite %2 D para uma só potência nas duas lentes</translation>
    </message>
    <message>
        <source>the eyes differ by %1 D</source>
        <translation>os olhos diferem %1 D</translation>
    </message>
    <message>
        <source>size of the power</source>
        <translation>tamanho da potência</translation>
    </message>
    <message>
        <source>power %1 D, limit %2 D</source>
        <translation>potência %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>high power: %1 D</source>
        <translation>potência alta: %1 D</translation>
    </message>
    <message>
        <source>blur strength</source>
        <translation>força da desfocagem</translation>
    </message>
    <message>
        <source>blur strength %1 D, limit %2 D</source>
        <translation>força da desfocagem %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>blur strength %1 D</source>
        <translation>força da desfocagem %1 D</translation>
    </message>
    <message>
        <source>too much plus</source>
        <translation>plus a mais</translation>
    </message>
    <message>
        <source>%1 D too much plus, limit %2 D</source>
        <translation>%1 D de plus a mais, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D too much plus</source>
        <translation>%1 D de plus a mais</translation>
    </message>
    <message>
        <source>too much minus or too little plus</source>
        <translation>minus a mais ou plus a menos</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus, limit %2 D</source>
        <translation>%1 D de minus a mais ou plus a menos, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D too much minus or too little plus</source>
        <translation>%1 D de minus a mais ou plus a menos</translation>
    </message>
    <message>
        <source>difference between the two lenses</source>
        <translation>diferença entre as duas lentes</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D, limit %2 D</source>
        <translation>as duas lentes diferem %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>the two lenses differ by %1 D</source>
        <translation>as duas lentes diferem %1 D</translation>
    </message>
    <message>
        <source>balance between the eyes</source>
        <translation>equilíbrio entre os olhos</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other, limit %2 D</source>
        <translation>um olho desviado %1 D face ao outro, limite %2 D</translation>
    </message>
    <message>
        <source>one eye %1 D off against the other</source>
        <translation>um olho desviado %1 D face ao outro</translation>
    </message>
    <message>
        <source>cylinder of the lens beyond the need</source>
        <translation>cilindro da lente além da necessidade</translation>
    </message>
    <message>
        <source>the lens has %1 D more cylinder than needed, limit %2 D</source>
        <translation>a lente tem %1 D de cilindro a mais, limite %2 D</translation>
    </message>
    <message>
        <source>%1 D more cylinder than needed</source>
        <translation>%1 D de cilindro a mais</translation>
    </message>
    <message>
        <source>axis off</source>
        <translation>eixo desviado</translation>
    </message>
    <message>
        <source>axis off by %1 degrees, limit %2</source>
        <translation>eixo desviado %1 graus, limite %2</translation>
    </message>
    <message>
        <source>axis off by %1 degrees</source>
        <translation>eixo desviado %1 graus</translation>
    </message>
    <message>
        <source>horizontal prism</source>
        <translation>prisma horizontal</translation>
    </message>
    <message>
        <source>horizontal prism %1, limit %2</source>
        <translation>prisma horizontal %1, limite %2</translation>
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
        <translation>prisma vertical %1, limite %2</translation>
    </message>
    <message>
        <source>vertical prism %1</source>
        <translation>prisma vertical %1</translation>
    </message>
    <message>
        <source>centres against PD</source>
        <translation>centros face à DP</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD, limit %2 mm</source>
        <translation>centros a %1 mm da DP, limite %2 mm</translation>
    </message>
    <message>
        <source>centres %1 mm off the PD</source>
        <translation>centros a %1 mm da DP</translation>
    </message>
    <message>
        <source>vertical imbalance at the reading level</source>
        <translation>desequilíbrio vertical à altura da leitura</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level, limit %2</source>
        <translation>desequilíbrio vertical %1 à altura da leitura, limite %2</translation>
    </message>
    <message>
        <source>vertical imbalance %1 at the reading level</source>
        <translation>desequilíbrio vertical %1 à altura da leitura</translation>
    </message>
    <message>
        <source>frame size class</source>
        <translation>classe de tamanho da armação</translation>
    </message>
    <message>
        <source>frame size off by %1 class, limit %2</source>
        <translation>tamanho da armação a %1 classe de diferença, limite %2</translation>
    </message>
    <message>
        <source>frame size off by %1 class</source>
        <translation>tamanho da armação a %1 classe de diferença</translation>
    </message>
    <message>
        <source>blur strength at near</source>
        <translation>força da desfocagem ao perto</translation>
    </message>
    <message>
        <source>blur strength at near %1 D, limit %2 D</source>
        <translation>força da desfocagem ao perto %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>blur strength at near %1 D</source>
        <translation>força da desfocagem ao perto %1 D</translation>
    </message>
    <message>
        <source>near power too strong</source>
        <translation>potência de perto forte demais</translation>
    </message>
    <message>
        <source>near power %1 D too strong, limit %2 D</source>
        <translation>potência de perto %1 D forte demais, limite %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too strong</source>
        <translation>potência de perto %1 D forte demais</translation>
    </message>
    <message>
        <source>near power too weak</source>
        <translation>potência de perto fraca demais</translation>
    </message>
    <message>
        <source>near power %1 D too weak, limit %2 D</source>
        <translation>potência de perto %1 D fraca demais, limite %2 D</translation>
    </message>
    <message>
        <source>near power %1 D too weak</source>
        <translation>potência de perto %1 D fraca demais</translation>
    </message>
    <message>
        <source>sphere off</source>
        <translation>esfera desviada</translation>
    </message>
    <message>
        <source>sphere off by %1 D, limit %2 D</source>
        <translation>esfera desviada %1 D, limite %2 D</translation>
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
        <translation>cilindro desviado %1 D, limite %2 D</translation>
    </message>
    <message>
        <source>cylinder off by %1 D</source>
        <translation>cilindro desviado %1 D</translation>
    </message>
    <message>
        <source>axis against the prescription</source>
        <translation>eixo face à prescrição</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription, limit %2</source>
        <translation>eixo a %1 graus da prescrição, limite %2</translation>
    </message>
    <message>
        <source>axis %1 degrees off the prescription</source>
        <translation>eixo a %1 graus da prescrição</translation>
    </message>
    <message>
        <source>acuity with the mean sphere</source>
        <translation>acuidade com a esfera média</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR below the full correction, limit %2</source>
        <translation>acuidade com a esfera média %1 logMAR abaixo da correção completa, limite %2</translation>
    </message>
    <message>
        <source>acuity with the mean sphere %1 logMAR lower</source>
        <translation>acuidade com a esfera média %1 logMAR mais baixa</translation>
    </message>
    <message>
        <source>acuity with this pair</source>
        <translation>acuidade com estes óculos</translation>
    </message>
    <message>
        <source>acuity with this pair is %1 logMAR beyond what is asked, limit %2</source>
        <translation>a acuidade com estes óculos passa em %1 logMAR o que se pede, limite %2</translation>
    </message>
    <message>
        <source>tried: acuity %1 logMAR short</source>
        <translation>provados: faltam %1 logMAR à acuidade</translation>
    </message>
    <message>
        <source>the chance that the true error lies within its limit is %1 %: repeat the readings</source>
        <translation>a probabilidade de o erro real estar no seu limite é %1 %: repita as leituras</translation>
    </message>
    <message>
        <source>sudden loss of sight: eye clinic the same day</source>
        <translation>perda súbita de visão: clínica de olhos no mesmo dia</translation>
    </message>
    <message>
        <source>painful eye: eye clinic the same day</source>
        <translation>olho doloroso: clínica de olhos no mesmo dia</translation>
    </message>
    <message>
        <source>red eye: eye clinic the same day</source>
        <translation>olho vermelho: clínica de olhos no mesmo dia</translation>
    </message>
    <message>
        <source>new flashes or floaters: eye clinic the same day</source>
        <translation>clarões ou manchas novos: clínica de olhos no mesmo dia</translation>
    </message>
    <message>
        <source>double vision: eye clinic the same day</source>
        <translation>visão dupla: clínica de olhos no mesmo dia</translation>
    </message>
    <message>
        <source>white pupil: eye clinic the same day</source>
        <translation>pupila branca: clínica de olhos no mesmo dia</translation>
    </message>
    <message>
        <source>a child&apos;s squint: refer before glasses are given</source>
        <translation>estrabismo de uma criança: encaminhe antes de dar óculos</translation>
    </message>
    <message>
        <source>refraction under cycloplegia was asked for: refer before glasses are given</source>
        <translation>foi pedida refração sob cicloplegia: encaminhe antes de dar óculos</translation>
    </message>
    <message>
        <source>lines look bent or broken: eye clinic soon</source>
        <translation>linhas parecem tortas ou partidas: clínica de olhos em breve</translation>
    </message>
    <message>
        <source>part of the field of view is missing: eye clinic soon</source>
        <translation>falta parte do campo visual: clínica de olhos em breve</translation>
    </message>
    <message>
        <source>halos around lights: eye clinic soon</source>
        <translation>halos à volta das luzes: clínica de olhos em breve</translation>
    </message>
    <message>
        <source>does not reach 6/9 in each eye with the final prescription</source>
        <translation>não chega a 6/9 em cada olho com a prescrição final</translation>
    </message>
    <message>
        <source>presents worse than 6/60 in an eye, even if glasses help</source>
        <translation>apresenta-se com menos de 6/60 num olho, mesmo que os óculos ajudem</translation>
    </message>
    <message>
        <source>a child with +3.50 D or more, or 1.50 D of cylinder or more</source>
        <translation>uma criança com +3.50 D ou mais, ou 1.50 D de cilindro ou mais</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.50 D or more</source>
        <translation>menos de 8 anos e os olhos diferem 1.50 D ou mais</translation>
    </message>
    <message>
        <source>under 8 years and the eyes differ by 1.00 D or more</source>
        <translation>menos de 8 anos e os olhos diferem 1.00 D ou mais</translation>
    </message>
    <message>
        <source>mean sphere beyond 6.00 D</source>
        <translation>esfera média além de 6.00 D</translation>
    </message>
    <message>
        <source>may be without its lens (aphakia): vertex distance needed</source>
        <translation>pode estar sem cristalino (afaquia): é precisa a distância ao vértice</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription and no gain through the pinhole</source>
        <translation>pior que 6/12 com a melhor prescrição e sem ganho com o buraco estenopeico</translation>
    </message>
    <message>
        <source>worse than 6/12 with the best prescription; pinhole not taken</source>
        <translation>pior que 6/12 com a melhor prescrição; buraco estenopeico não usado</translation>
    </message>
    <message>
        <source>the pinhole sees two lines or more better than the final prescription: refract again</source>
        <translation>com o buraco estenopeico vê duas linhas ou mais acima da prescrição final: refaça a refração</translation>
    </message>
    <message>
        <source>objective reading and final prescription are %1 D apart in mean sphere</source>
        <translation>a leitura objetiva e a prescrição final diferem %1 D na esfera média</translation>
    </message>
    <message>
        <source>the final prescription repeats the objective reading in all six numbers: was it refined?</source>
        <translation>a prescrição final repete a leitura objetiva nos seis números: foi afinada?</translation>
    </message>
    <message>
        <source>under 16: the prescriber&apos;s name stays with the pair, and the guardian is told</source>
        <translation>menos de 16 anos: o nome do prescritor fica com os óculos, e o tutor é informado</translation>
    </message>
    <message>
        <source>age not recorded: the strictest limits that could apply are used</source>
        <translation>idade não anotada: usam-se os limites mais estritos que se possam aplicar</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses and protective wear are advised</source>
        <translation>só um olho que vê: aconselham-se lentes resistentes ao impacto e proteção</translation>
    </message>
    <message>
        <source>an objective reading only: a subjective refraction should follow</source>
        <translation>só uma leitura objetiva: deve seguir-se uma refração subjetiva</translation>
    </message>
    <message>
        <source>the prescription is %1 months old</source>
        <translation>a prescrição tem %1 meses</translation>
    </message>
    <message>
        <source>symptoms recorded: %1</source>
        <translation>sintomas anotados: %1</translation>
    </message>
    <message>
        <source>PD not taken</source>
        <translation>DP não tomada</translation>
    </message>
    <message>
        <source>near PD computed from the distance PD, not measured</source>
        <translation>DP de perto calculada da DP de longe, não medida</translation>
    </message>
    <message>
        <source>an eye with a lens implant: additions differ between the eyes</source>
        <translation>um olho com lente implantada: as adições diferem entre os olhos</translation>
    </message>
    <message>
        <source>above 4.00 D the vertex distance matters: record it</source>
        <translation>acima de 4.00 D a distância ao vértice importa: anote-a</translation>
    </message>
    <message>
        <source>the PD of each eye</source>
        <translation>a DP de cada olho</translation>
    </message>
    <message>
        <source>the heights in the chosen frame</source>
        <translation>as alturas na armação escolhida</translation>
    </message>
    <message>
        <source>the vertex distance of the refraction</source>
        <translation>a distância ao vértice da refração</translation>
    </message>
    <message>
        <source>the frame</source>
        <translation>a armação</translation>
    </message>
    <message>
        <source>the prescriber&apos;s name, for a child</source>
        <translation>o nome do prescritor, para uma criança</translation>
    </message>
    <message>
        <source>single vision for %1 mm: whole power, nothing to be added</source>
        <translation>monofocal para %1 mm: potência completa, nada a somar</translation>
    </message>
    <message>
        <source>centration computed from the distance PD, not measured</source>
        <translation>centragem calculada da DP de longe, não medida</translation>
    </message>
    <message>
        <source>each eye&apos;s PD is half of the binocular one</source>
        <translation>a DP de cada olho é metade da binocular</translation>
    </message>
    <message>
        <source>balance lens: as its fellow, for looks and weight</source>
        <translation>lente de equilíbrio: como a outra, pelo aspeto e pelo peso</translation>
    </message>
    <message>
        <source>only one seeing eye: impact-resistant lenses are advised</source>
        <translation>só um olho que vê: aconselham-se lentes resistentes ao impacto</translation>
    </message>
    <message>
        <source>for a child: impact-resistant lenses are advised</source>
        <translation>para uma criança: aconselham-se lentes resistentes ao impacto</translation>
    </message>
    <message>
        <source>prism as prescribed, each eye its own</source>
        <translation>prisma como prescrito, cada olho o seu</translation>
    </message>
    <message>
        <source>refracted at a vertex distance of %1 mm</source>
        <translation>refração a uma distância ao vértice de %1 mm</translation>
    </message>
    <message>
        <source>from an objective reading only</source>
        <translation>só de uma leitura objetiva</translation>
    </message>
    <message>
        <source>the digits %1 do not go together: the last would be %2, not %3; scan again, or type what stands below the bars</source>
        <translation>os algarismos %1 não condizem: o último seria %2, não %3; leia o código de novo, ou escreva o que está por baixo das barras</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a code; write its thirteen digits (twelve take a 0 before them), or leave the code out</source>
        <translation>&quot;%1&quot; não é um código; escreva os treze algarismos (doze levam um 0 à frente), ou deixe o código de fora</translation>
    </message>
    <message>
        <source>there is no line %1 in this camp</source>
        <translation>não há linha %1 neste acampamento</translation>
    </message>
    <message>
        <source>near glasses need an addition, or a near power found by trial</source>
        <translation>óculos de perto precisam de uma adição, ou de uma potência de perto achada por prova</translation>
    </message>
    <message>
        <source>this purpose needs an addition, or a near power found by trial</source>
        <translation>este uso precisa de uma adição, ou de uma potência de perto achada por prova</translation>
    </message>
    <message>
        <source>a subjective refraction: a child is never given glasses from an objective reading alone</source>
        <translation>uma refração subjetiva: nunca se dão óculos a uma criança só com uma leitura objetiva</translation>
    </message>
    <message>
        <source>an addition under 35 years must be confirmed: near acuity with it, or a near power by trial</source>
        <translation>uma adição abaixo dos 35 anos tem de ser confirmada: acuidade de perto com ela, ou potência de perto por prova</translation>
    </message>
    <message>
        <source>small error and 6/9 or better without glasses</source>
        <translation>erro pequeno e 6/9 ou melhor sem óculos</translation>
    </message>
    <message>
        <source>glasses gain the better eye less than two lines</source>
        <translation>com óculos o melhor olho ganha menos de duas linhas</translation>
    </message>
    <message>
        <source>reads without spectacles</source>
        <translation>lê sem óculos</translation>
    </message>
    <message>
        <source>reads N6 without spectacles</source>
        <translation>lê N6 sem óculos</translation>
    </message>
    <message>
        <source>the own pair still fits: a spare only</source>
        <translation>os óculos próprios ainda servem: só uns de reserva</translation>
    </message>
    <message>
        <source>the PD: measure it</source>
        <translation>a DP: meça-a</translation>
    </message>
    <message>
        <source>the vertex distance of this prescription: measure it</source>
        <translation>a distância ao vértice desta prescrição: meça-a</translation>
    </message>
    <message>
        <source>nothing in the box for this purpose</source>
        <translation>nada na caixa para este uso</translation>
    </message>
    <message>
        <source>if the prescriber marks the left eye balance, %1 would fit</source>
        <translation>se o prescritor marcar o olho esquerdo como de equilíbrio, %1 serviria</translation>
    </message>
    <message>
        <source>if the prescriber marks the right eye balance, %1 would fit</source>
        <translation>se o prescritor marcar o olho direito como de equilíbrio, %1 serviria</translation>
    </message>
    <message>
        <source>%1 is used: clean it and read its power before it is given</source>
        <translation>%1 é usado: limpe-o e leia a potência antes de o dar</translation>
    </message>
    <message>
        <source>%1 fits</source>
        <translation>%1 serve</translation>
    </message>
    <message>
        <source>try %1 and type the acuity with it</source>
        <translation>prove %1 e escreva a acuidade obtida</translation>
    </message>
    <message>
        <source>a rules profile named %1</source>
        <translation>um perfil de regras chamado %1</translation>
    </message>
    <message>
        <source>a final prescription for at least one eye</source>
        <translation>uma prescrição final para pelo menos um olho</translation>
    </message>
    <message>
        <source>from 65 years a change of %1 D in one step is much: falls; ask the prescriber</source>
        <translation>a partir dos 65 anos uma mudança de %1 D de uma vez é muito: quedas; pergunte ao prescritor</translation>
    </message>
    <message>
        <source>%1 D away from the own pair: where that came within months, the eye clinic looks for the cause</source>
        <translation>a %1 D dos óculos próprios: se isso veio em meses, a clínica de olhos procura a causa</translation>
    </message>
    <message>
        <source>from 65 years an oblique axis turned by more than 10 degrees is hard to get used to; ask the prescriber</source>
        <translation>a partir dos 65 anos custa habituar-se a um eixo oblíquo rodado mais de 10 graus; pergunte ao prescritor</translation>
    </message>
    <message>
        <source>addition %1 is more than 0.75 D away from every table for this age: was it measured at %2 mm?</source>
        <translation>a adição %1 está a mais de 0.75 D de todas as tabelas para esta idade: foi medida a %2 mm?</translation>
    </message>
    <message>
        <source>does not read N8 with the near correction: see where the rest is lost</source>
        <translation>não lê N8 com a correção de perto: veja onde se perde o resto</translation>
    </message>
    <message>
        <source>half the addition is used: no distance was stated for this work</source>
        <translation>usa-se metade da adição: não se indicou distância para este trabalho</translation>
    </message>
    <message>
        <source>the own pair is within the limits for this purpose: perhaps a spare only</source>
        <translation>os óculos próprios estão nos limites para este uso: talvez só uns de reserva</translation>
    </message>
    <message>
        <source>a hyperopic child without cycloplegia: the reading may hide about 3 D more; the prescriber decides</source>
        <translation>uma criança hipermétrope sem cicloplegia: a leitura pode esconder cerca de mais 3 D; o prescritor decide</translation>
    </message>
    <message>
        <source>a child without cycloplegia: such readings lie about 0.4 D on the minus side in myopes, more in others</source>
        <translation>uma criança sem cicloplegia: estas leituras ficam cerca de 0.4 D para o lado minus em míopes, mais em outros</translation>
    </message>
    <message>
        <source>under 8 years and myopia beyond 3.00 D: at risk of amblyopia</source>
        <translation>menos de 8 anos e miopia além de 3.00 D: risco de ambliopia</translation>
    </message>
    <message>
        <source>a child&apos;s eyes differ by 1.00 D or more on the plus side: at risk of amblyopia</source>
        <translation>os olhos de uma criança diferem 1.00 D ou mais do lado plus: risco de ambliopia</translation>
    </message>
    <message>
        <source>a child&apos;s cylinders differ by 2.00 D or more: at risk of amblyopia</source>
        <translation>os cilindros de uma criança diferem 2.00 D ou mais: risco de ambliopia</translation>
    </message>
    <message>
        <source>would need better acuity with this very pair</source>
        <translation>precisaria de melhor acuidade com estes mesmos óculos</translation>
    </message>
    <message>
        <source>would do once the vertex distance is recorded</source>
        <translation>serviria depois de anotada a distância ao vértice</translation>
    </message>
    <message>
        <source>would do if the PD, once measured, is near %1 mm</source>
        <translation>serviria se a DP, depois de medida, estiver perto de %1 mm</translation>
    </message>
    <message>
        <source>would do if the prescriber allows prism by decentration</source>
        <translation>serviria se o prescritor admitir prisma por descentramento</translation>
    </message>
    <message>
        <source>would do with centres %1 mm apart</source>
        <translation>serviria com centros afastados %1 mm</translation>
    </message>
    <message>
        <source>would do with both centres at the same height</source>
        <translation>serviria com os dois centros à mesma altura</translation>
    </message>
    <message>
        <source>would do with %1 in both lenses instead of %2</source>
        <translation>serviria com %1 nas duas lentes em vez de %2</translation>
    </message>
    <message>
        <source>would do with %1 D in both lenses</source>
        <translation>serviria com %1 D nas duas lentes</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the right lens</source>
        <translation>serviria com esfera %1 na lente direita</translation>
    </message>
    <message>
        <source>would do with sphere %1 in the left lens</source>
        <translation>serviria com esfera %1 na lente esquerda</translation>
    </message>
    <message>
        <source>would do with addition %1</source>
        <translation>serviria com adição %1</translation>
    </message>
    <message>
        <source>would do with a lens of its own for each eye: right %1, left %2</source>
        <translation>serviria com uma lente própria para cada olho: direita %1, esquerda %2</translation>
    </message>
    <message>
        <source>would do with lenses made to the prescription, cylinder included</source>
        <translation>serviria com lentes feitas segundo a prescrição, com o cilindro</translation>
    </message>
    <message>
        <source>“%1” is not part of an acuity; write it as 6/9, 0.67 decimal or logMAR 0.2</source>
        <translation>«%1» não é parte de uma acuidade; escreva-a como 6/9, 0.67 decimal ou logMAR 0.2</translation>
    </message>
    <message>
        <source>“%1” is not an acuity; write 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL or NPL</source>
        <translation>«%1» não é uma acuidade; escreva 6/9, 20/30, 0.67 decimal, logMAR 0.2, CF, HM, PL ou NPL</translation>
    </message>
    <message>
        <source>“%1” would be logMAR %2; acuity lies between logMAR -0.5 and 3: check it</source>
        <translation>«%1» seria logMAR %2; a acuidade está entre logMAR -0.5 e 3: verifique-a</translation>
    </message>
    <message>
        <source>no chart is read at %1; write the test distance first, as 6/9 or 20/30</source>
        <translation>nenhuma tabela se lê a %1; escreva primeiro a distância do teste, como 6/9 ou 20/30</translation>
    </message>
    <message>
        <source>“%1” does not say its scale; write “%1 decimal” or “logMAR %1”</source>
        <translation>«%1» não diz a escala; escreva «%1 decimal» ou «logMAR %1»</translation>
    </message>
    <message>
        <source>no acuity is written; write 6/9 or leave it out</source>
        <translation>nenhuma acuidade escrita; escreva 6/9 ou deixe-a de fora</translation>
    </message>
    <message>
        <source>“%1” is not a near acuity; write N8, M 1.0 or 1.0M, and “at 40 cm” after it</source>
        <translation>«%1» não é uma acuidade de perto; escreva N8, M 1.0 ou 1.0M, e depois «at 40 cm»</translation>
    </message>
    <message>
        <source>the distance in “%1” is not read; write it as “at 40 cm”, 5 to 200 cm</source>
        <translation>a distância em «%1» não se lê; escreva-a como «at 40 cm», de 5 a 200 cm</translation>
    </message>
    <message>
        <source>log10(1 + b²): low blur of any kind; no axis and no pupil in it</source>
        <translation>log10(1 + b²): desfocagem baixa de qualquer tipo; sem eixo nem pupila</translation>
    </message>
    <message>
        <source>0.017 C² + 0.125 C: left-over cylinder C in presbyopes, mean sphere in place</source>
        <translation>0.017 C² + 0.125 C: cilindro restante C em presbitas, com a esfera média</translation>
    </message>
    <message>
        <source>0.18 to 0.22 logMAR a dioptre of cylinder, mean sphere in place, far</source>
        <translation>0.18 a 0.22 logMAR por dioptria de cilindro, com a esfera média, ao longe</translation>
    </message>
    <message>
        <source>one line lost for every 0.25 to 0.5 D of blur</source>
        <translation>uma linha perdida por cada 0.25 a 0.5 D de desfocagem</translation>
    </message>
    <message>
        <source>%1 lies outside the powers the set %2 was made for</source>
        <translation>%1 está fora das potências para que se fez o conjunto %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2</source>
        <translation>meridiano da esfera desviado %1, limite %2</translation>
    </message>
    <message>
        <source>sphere meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiano da esfera desviado %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>sphere meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiano da esfera desviado %1: só mostrado, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2</source>
        <translation>meridiano principal mais positivo desviado %1, limite %2</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiano principal mais positivo desviado %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>more plus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiano principal mais positivo desviado %1: só mostrado, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2</source>
        <translation>meridiano principal mais negativo desviado %1, limite %2</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1, limit %2: %3 too much</source>
        <translation>meridiano principal mais negativo desviado %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>more minus principal meridian off by %1: shown only, the set has no limit for it</source>
        <translation>meridiano principal mais negativo desviado %1: só mostrado, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2</source>
        <translation>cilindro desviado %1, limite %2</translation>
    </message>
    <message>
        <source>cylinder off by %1, limit %2: %3 too much</source>
        <translation>cilindro desviado %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>cylinder off by %1: shown only, the set has no limit for it</source>
        <translation>cilindro desviado %1: só mostrado, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2</source>
        <translation>eixo desviado %1, limite %2</translation>
    </message>
    <message>
        <source>axis off by %1, limit %2: %3 too much</source>
        <translation>eixo desviado %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>axis off by %1: shown only, the set has no limit for it</source>
        <translation>eixo desviado %1: só mostrado, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2</source>
        <translation>adição desviada %1, limite %2</translation>
    </message>
    <message>
        <source>addition off by %1, limit %2: %3 too much</source>
        <translation>adição desviada %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>addition off by %1: shown only, the set has no limit for it</source>
        <translation>adição desviada %1: só mostrada, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2</source>
        <translation>prisma horizontal desviado %1, limite %2</translation>
    </message>
    <message>
        <source>horizontal prism off by %1, limit %2: %3 too much</source>
        <translation>prisma horizontal desviado %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>horizontal prism off by %1: shown only, the set has no limit for it</source>
        <translation>prisma horizontal desviado %1: só mostrado, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2</source>
        <translation>prisma vertical desviado %1, limite %2</translation>
    </message>
    <message>
        <source>vertical prism off by %1, limit %2: %3 too much</source>
        <translation>prisma vertical desviado %1, limite %2: %3 a mais</translation>
    </message>
    <message>
        <source>vertical prism off by %1: shown only, the set has no limit for it</source>
        <translation>prisma vertical desviado %1: só mostrado, o conjunto não tem limite para isto</translation>
    </message>
    <message>
        <source>there is no tolerance set “%1”; there are: %2</source>
        <translation>não há conjunto de tolerâncias «%1»; há: %2</translation>
    </message>
    <message>
        <source>the tolerance set “%1” is not enabled: %2</source>
        <translation>o conjunto de tolerâncias «%1» não está ativado: %2</translation>
    </message>
    <message>
        <source>distance %1 and near %2 differ in cylinder; no addition joins them</source>
        <translation>longe %1 e perto %2 diferem no cilindro; nenhuma adição os une</translation>
    </message>
    <message>
        <source>near %2 has less plus than distance %1; were they exchanged?</source>
        <translation>perto %2 tem menos plus do que longe %1; foram trocados?</translation>
    </message>
    <message>
        <source>this text says it is the left eye, and stands for the right</source>
        <translation>este texto diz que é o olho esquerdo, e está pelo direito</translation>
    </message>
    <message>
        <source>this text says it is the right eye, and stands for the left</source>
        <translation>este texto diz que é o olho direito, e está pelo esquerdo</translation>
    </message>
    <message>
        <source>nothing is written for this eye; write its power, or balance, artificial, blind or not measured</source>
        <translation>nada está escrito para este olho; escreva a potência, ou balance, artificial, blind ou not measured</translation>
    </message>
    <message>
        <source>no power is written; write it as +2.00, -0.75 or 0.00</source>
        <translation>nenhuma potência escrita; escreva-a como +2.00, -0.75 ou 0.00</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2 or %3</source>
        <translation>%1 não tem ponto decimal; escreva %2 ou %3</translation>
    </message>
    <message>
        <source>%1 has no decimal point; write %2</source>
        <translation>%1 não tem ponto decimal; escreva %2</translation>
    </message>
    <message>
        <source>%1 is beyond %2 D; check the figure and write it again</source>
        <translation>%1 passa de %2 D; verifique o número e escreva-o de novo</translation>
    </message>
    <message>
        <source>no power is read at “%1”; write it as +2.00, -0.75 or 0.00</source>
        <translation>não se lê potência em «%1»; escreva-a como +2.00, -0.75 ou 0.00</translation>
    </message>
    <message>
        <source>cylinder %1 has no sign; write +%1 or -%1</source>
        <translation>o cilindro %1 não tem sinal; escreva +%1 ou -%1</translation>
    </message>
    <message>
        <source>%1 has no sign; write +%1 or -%1</source>
        <translation>%1 não tem sinal; escreva +%1 ou -%1</translation>
    </message>
    <message>
        <source>addition -%1 is negative; an addition is plus: check it</source>
        <translation>a adição -%1 é negativa; uma adição é positiva: verifique-a</translation>
    </message>
    <message>
        <source>axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1</source>
        <translation>o eixo %1 está sem cilindro; escreva esfera, cilindro e eixo, como -1.00 -0.50 x %1</translation>
    </message>
    <message>
        <source>axis %1 is outside 1..180 degrees; the same meridian would be %2: check and write it again</source>
        <translation>o eixo %1 está fora de 1..180 graus; o mesmo meridiano seria %2: verifique e escreva-o de novo</translation>
    </message>
    <message>
        <source>cylinder %1 has no axis; write it with its axis, as %1 x 90</source>
        <translation>o cilindro %1 não tem eixo; escreva-o com o eixo, como %1 x 90</translation>
    </message>
    <message>
        <source>“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90</source>
        <translation>«%1» não é parte de uma prescrição legível; escreva-a como -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>two prisms lie in one direction; write their sum once, as 1.5 base in</source>
        <translation>dois prismas estão numa mesma direção; escreva a soma uma só vez, como 1.5 base in</translation>
    </message>
    <message>
        <source>the base of the prism is not read; write base in, out, up or down, or base 0..360</source>
        <translation>a base do prisma não se lê; escreva base in, out, up ou down, ou base 0..360</translation>
    </message>
    <message>
        <source>prism %1 is not between 0 and %2; write its size and its base, as 2 base in</source>
        <translation>o prisma %1 não está entre 0 e %2; escreva o tamanho e a base, como 2 base in</translation>
    </message>
    <message>
        <source>too few (%1 read): three or more tell how steady they are</source>
        <translation>poucas (%1 lidas): três ou mais dizem se são estáveis</translation>
    </message>
    <message>
        <source>scattered: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>dispersas: as leituras estão a %1 D da média, o limite é %2 D; %3 de %4 excluídas</translation>
    </message>
    <message>
        <source>steady: readings lie %1 D from their mean, the limit is %2 D; %3 of %4 left out</source>
        <translation>estáveis: as leituras estão a %1 D da média, o limite é %2 D; %3 de %4 excluídas</translation>
    </message>
    <message>
        <source>take readings until there are three or more; until then a published scatter is used</source>
        <translation>faça leituras até ter três ou mais; até lá usa-se uma dispersão publicada</translation>
    </message>
    <message>
        <source>scattered again: look at the eye&apos;s health (cornea, lens, tears, fixation) before prescribing</source>
        <translation>de novo dispersas: veja a saúde do olho (córnea, cristalino, lágrima, fixação) antes de prescrever</translation>
    </message>
    <message>
        <source>repeat the readings, with blinks and steady fixation</source>
        <translation>repita as leituras, com pestanejos e fixação estável</translation>
    </message>
    <message>
        <source>use the mean of the readings kept; the ones left out are shown</source>
        <translation>use a média das leituras mantidas; as excluídas são mostradas</translation>
    </message>
    <message>
        <source>use the mean as the start of the subjective refraction</source>
        <translation>use a média como início da refração subjetiva</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere (limit 1) and %2 D in astigmatism (limit 0.5): confirm the final</source>
        <translation>objetiva e final diferem %1 D na esfera média (limite 1) e %2 D no astigmatismo (limite 0.5): confirme a final</translation>
    </message>
    <message>
        <source>objective and final are %1 D apart in mean sphere; up to 0.5 is usual</source>
        <translation>objetiva e final diferem %1 D na esfera média; até 0.5 é habitual</translation>
    </message>
    <message>
        <source>objective and final agree: %1 D apart in mean sphere, %2 D in astigmatism</source>
        <translation>objetiva e final concordam: diferem %1 D na esfera média, %2 D no astigmatismo</translation>
    </message>
    <message>
        <source>a movement of an entry “%1” names no line</source>
        <translation>um movimento de uma inscrição «%1» não indica nenhuma linha</translation>
    </message>
    <message>
        <source>an entry “%1” cannot move line %2 by %3 on hand, %4 held, %5 quarantined</source>
        <translation>uma inscrição «%1» não pode mover a linha %2 em %3 em stock, %4 reservados, %5 em quarentena</translation>
    </message>
    <message>
        <source>an entry “%1” moves at least one line</source>
        <translation>uma inscrição «%1» move pelo menos uma linha</translation>
    </message>
    <message>
        <source>an entry “%1” names a person by the camp code</source>
        <translation>uma inscrição «%1» indica uma pessoa pelo código de acampamento</translation>
    </message>
    <message>
        <source>“entered-in-error” names the entry it takes back, other kinds none</source>
        <translation>«entered-in-error» indica a inscrição que desfaz; os outros tipos, nenhuma</translation>
    </message>
    <message>
        <source>an entry “%1” needs “%2”</source>
        <translation>uma inscrição «%1» precisa de «%2»</translation>
    </message>
    <message>
        <source>entry %1 is the first that is not as it was written: %2; the audit stops before it</source>
        <translation>a inscrição %1 é a primeira que não está como foi escrita: %2; a auditoria para antes dela</translation>
    </message>
    <message>
        <source>%1 stands in the waiting list already; the row is left out</source>
        <translation>%1 já está na lista de espera; a linha fica de fora</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM, %1, cannot be started: %2</source>
        <translation>o programa que lê e escreve DICOM, %1, não pode ser iniciado: %2</translation>
    </message>
    <message>
        <source>%1 is there already; name a new file, or move that one away</source>
        <translation>%1 já existe; indique um ficheiro novo, ou afaste esse</translation>
    </message>
    <message>
        <source>the prescription of %1 is not complete; there is no order to write</source>
        <translation>a prescrição de %1 não está completa; não há encomenda a escrever</translation>
    </message>
    <message>
        <source>%1 is this site; name the other one</source>
        <translation>%1 é este local; indique o outro</translation>
    </message>
    <message>
        <source>entry %1 is not a transfer in the air; `quarterstep transfer` lists them</source>
        <translation>a inscrição %1 não é uma transferência a caminho; `quarterstep transfer` lista-as</translation>
    </message>
    <message>
        <source>%1 has several purposes, or none that is complete; take them up in the list and choose the one that was ordered</source>
        <translation>%1 tem vários usos, ou nenhum completo; abra-os na lista e escolha o que foi encomendado</translation>
    </message>
    <message>
        <source>%1 is not in the list; load the table in which the prescription stands</source>
        <translation>%1 não está na lista; carregue a tabela em que está a prescrição</translation>
    </message>
    <message>
        <source>the focimeter reads %1 right, the pair has %2</source>
        <translation>o focímetro lê %1 à direita, os óculos têm %2</translation>
    </message>
    <message>
        <source>the focimeter reads %1 left, the pair has %2</source>
        <translation>o focímetro lê %1 à esquerda, os óculos têm %2</translation>
    </message>
    <message>
        <source>this is not the PIN of the %1; nothing was written</source>
        <translation>este não é o PIN da função %1; nada foi escrito</translation>
    </message>
    <message>
        <source>the program that reads and writes DICOM gave no answer that is understood</source>
        <translation>o programa que lê e escreve DICOM não deu nenhuma resposta compreensível</translation>
    </message>
    <message>
        <source>rules.yaml is not as it was when this camp was opened; open it again</source>
        <translation>rules.yaml não está como quando este acampamento foi aberto; abra-o de novo</translation>
    </message>
    <message>
        <source>this is no DICOM file: the letters DICM do not stand at byte 128</source>
        <translation>isto não é um ficheiro DICOM: as letras DICM não estão no byte 128</translation>
    </message>
    <message>
        <source>this is too large for a refraction: %1 bytes, %2 items</source>
        <translation>isto é grande demais para uma refração: %1 bytes, %2 elementos</translation>
    </message>
    <message>
        <source>the DICOM file is broken, or neither explicit nor implicit little endian: a length points out of it, or a part is not understood</source>
        <translation>o ficheiro DICOM está danificado, ou não é little endian, explícito nem implícito: um comprimento aponta para fora dele, ou uma parte não se entende</translation>
    </message>
    <message>
        <source>the DICOM file is broken: %1</source>
        <translation>o ficheiro DICOM está danificado: %1</translation>
    </message>
    <message>
        <source>the object &quot;%1&quot; is none of lensometry, autorefraction, subjective refraction or visual acuity</source>
        <translation>o objeto &quot;%1&quot; não é lensometria, autorrefração, refração subjetiva nem acuidade visual</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>não usado: %1</translation>
    </message>
    <message>
        <source>%1 of the %2 eye cannot be used as it stands</source>
        <translation>%1 do olho %2 não se pode usar como está</translation>
    </message>
    <message>
        <source>there is a second refraction of %1; give only the one that counts</source>
        <translation>há uma segunda refração de %1; dê só a que vale</translation>
    </message>
    <message>
        <source>nothing is stated for the %1 eye; ask for it: a power, or that it is a balance lens, artificial, blind or not measured</source>
        <translation>nada está indicado para o olho %1; pergunte: uma potência, ou se é lente de equilíbrio, olho artificial, cego ou não medido</translation>
    </message>
    <message>
        <source>there is a second reading of the %1 eye of %2; give only one</source>
        <translation>há uma segunda leitura do olho %1 de %2; dê só uma</translation>
    </message>
    <message>
        <source>an acuity is kept without being used: &quot;%1&quot; at %2 is none that the table has</source>
        <translation>uma acuidade guarda-se sem ser usada: &quot;%1&quot; em %2 não é nenhuma das que a tabela tem</translation>
    </message>
    <message>
        <source>there is no subjective refraction of %1; what is here is no prescription</source>
        <translation>não há refração subjetiva de %1; o que está aqui não é uma prescrição</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a patient id: at most 64 characters, no backslash</source>
        <translation>&quot;%1&quot; não pode ser um código de paciente: no máximo 64 caracteres, sem barra invertida</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot; stands in line %2 already; give each row a code of its own</source>
        <translation>a pessoa &quot;%1&quot; já está na linha %2; dê a cada linha da tabela um código próprio</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write it as -1.25</source>
        <translation>&quot;%1&quot; não é um número; escreva-o como -1.25</translation>
    </message>
    <message>
        <source>%1 is outside -%2 to %2</source>
        <translation>%1 está fora de -%2 a %2</translation>
    </message>
    <message>
        <source>%1 is finer than a thousandth; round it</source>
        <translation>%1 é mais fino do que um milésimo; arredonde-o</translation>
    </message>
    <message>
        <source>%1 of %2 stays here: it names people or is in their own words</source>
        <translation>%1 de %2 fica aqui: indica pessoas ou está nas palavras delas</translation>
    </message>
    <message>
        <source>the eye is &quot;%1&quot;; right or left is wanted</source>
        <translation>o olho é &quot;%1&quot;; espera-se right ou left</translation>
    </message>
    <message>
        <source>there is a second lens for the %1 eye; a resource for each purpose is understood, with one lens an eye</source>
        <translation>há uma segunda lente para o olho %1; entende-se um recurso por uso, com uma lente por olho</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; a number without quotes is wanted, as -1.25</source>
        <translation>%1 é &quot;%2&quot;; espera-se um número sem aspas, como -1.25</translation>
    </message>
    <message>
        <source>the sphere of the %1 eye is not stated; that is not zero: write 0.00 for plano, or balance, artificial, blind or not measured as the note</source>
        <translation>a esfera do olho %1 não está indicada; isso não é zero: escreva 0.00 para plano, ou balance, artificial, blind ou not measured como nota</translation>
    </message>
    <message>
        <source>axis %1 is not a whole number of degrees</source>
        <translation>o eixo %1 não é um número inteiro de graus</translation>
    </message>
    <message>
        <source>prism is a list of amounts and bases</source>
        <translation>prism é uma lista de valores e bases</translation>
    </message>
    <message>
        <source>the prism %1 is below zero; turn its base instead</source>
        <translation>o prisma %1 está abaixo de zero; inverta antes a base</translation>
    </message>
    <message>
        <source>the base is &quot;%1&quot;; up, down, in or out is wanted</source>
        <translation>a base é &quot;%1&quot;; espera-se up, down, in ou out</translation>
    </message>
    <message>
        <source>&quot;%1&quot; inside a prism is not used</source>
        <translation>&quot;%1&quot; dentro de um prisma não se usa</translation>
    </message>
    <message>
        <source>the product is not coded as lens or contact; it is read as a spectacle lens</source>
        <translation>o produto não está codificado como lens nem contact; lê-se como lente de óculos</translation>
    </message>
    <message>
        <source>axis %1 of %2 leaves as %3: FHIR takes whole degrees</source>
        <translation>o eixo %1 de %2 sai como %3: FHIR aceita graus inteiros</translation>
    </message>
    <message>
        <source>%1 may change what the prescription means, and is not understood; ask for it without</source>
        <translation>%1 pode mudar o sentido da prescrição e não se entende; peça-a sem isso</translation>
    </message>
    <message>
        <source>the status is &quot;%1&quot;; active is wanted</source>
        <translation>o estado é &quot;%1&quot;; espera-se active</translation>
    </message>
    <message>
        <source>meta.%1 is left out: it belongs to the sender&apos;s copy</source>
        <translation>meta.%1 fica de fora: pertence à cópia do remetente</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole date; how old the prescription is stays open</source>
        <translation>&quot;%1&quot; não é uma data completa; a idade da prescrição fica em aberto</translation>
    </message>
    <message>
        <source>the narrative is left out: it repeats what is coded</source>
        <translation>a narrativa fica de fora: repete o que está codificado</translation>
    </message>
    <message>
        <source>the resource %1 is left out: only VisionPrescription and its measures are read</source>
        <translation>o recurso %1 fica de fora: só se leem VisionPrescription e as suas medidas</translation>
    </message>
    <message>
        <source>of an observation left out: %1</source>
        <translation>de uma observação fica de fora: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: it was entered in error</source>
        <translation>a observação %1 de %2 fica de fora: foi inscrita por engano</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: its code is not known here</source>
        <translation>a observação %1 de %2 fica de fora: o seu código não se conhece aqui</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: something in it may change its meaning</source>
        <translation>a observação %1 de %2 fica de fora: algo nela pode mudar-lhe o sentido</translation>
    </message>
    <message>
        <source>a measure without a code is left out: &quot;%1&quot;</source>
        <translation>uma medida sem código fica de fora: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this is XML; ask for the same in JSON (application/fhir+json)</source>
        <translation>isto é XML; peça o mesmo em JSON (application/fhir+json)</translation>
    </message>
    <message>
        <source>this is no resource of FHIR: resourceType is missing</source>
        <translation>isto não é um recurso de FHIR: falta resourceType</translation>
    </message>
    <message>
        <source>of the Bundle left out: %1; it belongs to the sender&apos;s envelope</source>
        <translation>do Bundle fica de fora: %1; pertence ao envelope do remetente</translation>
    </message>
    <message>
        <source>there is no prescription for spectacles to take in here</source>
        <translation>não há aqui prescrição de óculos a receber</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: it is for contact lenses, whose powers and curves are no spectacles&apos;</source>
        <translation>a prescrição de %1 fica de fora: é para lentes de contacto, cujas potências e curvas não são as de óculos</translation>
    </message>
    <message>
        <source>the prescription of %1 is left out: its status is %2</source>
        <translation>a prescrição de %1 fica de fora: o seu estado é %2</translation>
    </message>
    <message>
        <source>kept without being used: %1</source>
        <translation>guardado sem ser usado: %1</translation>
    </message>
    <message>
        <source>the observation %1 of %2 is left out: no prescription of theirs is taken in</source>
        <translation>a observação %1 de %2 fica de fora: não se recebe nenhuma prescrição dessa pessoa</translation>
    </message>
    <message>
        <source>the column fhir.%1 of %2 is left out: its cell is no JSON</source>
        <translation>a coluna fhir.%1 de %2 fica de fora: a célula não é JSON</translation>
    </message>
    <message>
        <source>each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>cada linha é um objeto, como {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>nothing stands in it; each line is one object, as {&quot;person&quot;:&quot;0042&quot;,…}</source>
        <translation>não contém nada; cada linha é um objeto, como {&quot;person&quot;:&quot;0042&quot;,…}</translation>
    </message>
    <message>
        <source>the value has ended here, “%1” is too much</source>
        <translation>o valor terminou aqui, «%1» está a mais</translation>
    </message>
    <message>
        <source>more than %1 levels lie inside one another</source>
        <translation>há mais de %1 níveis uns dentro dos outros</translation>
    </message>
    <message>
        <source>a comma or } belongs here</source>
        <translation>falta aqui uma vírgula ou }</translation>
    </message>
    <message>
        <source>a comma or ] belongs here</source>
        <translation>falta aqui uma vírgula ou ]</translation>
    </message>
    <message>
        <source>a name in quotes belongs here</source>
        <translation>falta aqui um nome entre aspas</translation>
    </message>
    <message>
        <source>a colon belongs here</source>
        <translation>faltam aqui dois pontos</translation>
    </message>
    <message>
        <source>“%1” stands twice in one object; keep one</source>
        <translation>«%1» está duas vezes num objeto; deixe um</translation>
    </message>
    <message>
        <source>this quote is never closed</source>
        <translation>estas aspas nunca se fecham</translation>
    </message>
    <message>
        <source>a line end or tab stands inside a text; write \n or \t</source>
        <translation>há um fim de linha ou tabulação dentro de um texto; escreva \n ou \t</translation>
    </message>
    <message>
        <source>“\%1” is no escape of JSON</source>
        <translation>«\%1» não é uma sequência de escape de JSON</translation>
    </message>
    <message>
        <source>half of a character stands here alone</source>
        <translation>está aqui sozinha metade de um carácter</translation>
    </message>
    <message>
        <source>four hexadecimal digits belong here</source>
        <translation>faltam aqui quatro algarismos hexadecimais</translation>
    </message>
    <message>
        <source>this is no number of JSON; write it as -1.25 or 0.5</source>
        <translation>isto não é um número de JSON; escreva-o como -1.25 ou 0.5</translation>
    </message>
    <message>
        <source>the text ends where a value belongs</source>
        <translation>o texto termina onde falta um valor</translation>
    </message>
    <message>
        <source>“%1” is no value of JSON</source>
        <translation>«%1» não é um valor de JSON</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has the other decimal mark than the map says</source>
        <translation>&quot;%1&quot; tem o outro separador decimal, não o que o mapa indica</translation>
    </message>
    <message>
        <source>the map names a column &quot;%1&quot; that the table does not have</source>
        <translation>o mapa indica uma coluna &quot;%1&quot; que a tabela não tem</translation>
    </message>
    <message>
        <source>no column is understood as %1; a map can say which one is, as in: %2</source>
        <translation>nenhuma coluna se entende como %1; um mapa pode dizer qual é, como em: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; stands in the table twice; delete or rename one</source>
        <translation>a coluna &quot;%1&quot; está duas vezes na tabela; apague uma ou mude-lhe o nome</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is kept but not used</source>
        <translation>a coluna &quot;%1&quot; não se conhece; guarda-se mas não se usa</translation>
    </message>
    <message>
        <source>the table is empty; its first line names the columns: %1</source>
        <translation>a tabela está vazia; a primeira linha indica as colunas: %1</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds the separator in quotes</source>
        <translation>a linha tem %1 células, o cabeçalho %2; ponha entre aspas a célula que contém o separador</translation>
    </message>
    <message>
        <source>%1 spheres have no sign; if this table leaves the plus out, a map says so: %2</source>
        <translation>%1 esferas não têm sinal; se esta tabela omite o mais, um mapa di-lo: %2</translation>
    </message>
    <message>
        <source>%1 cylinders have no sign; ask whoever made the table, then a map says so: %2</source>
        <translation>%1 cilindros não têm sinal; pergunte a quem fez a tabela, e depois um mapa di-lo: %2</translation>
    </message>
    <message>
        <source>a record ends with CR LF; this one does not</source>
        <translation>um registo termina com CR LF; este não</translation>
    </message>
    <message>
        <source>a character here is not plain ASCII</source>
        <translation>um carácter aqui não é ASCII simples</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no record; write LABEL=value</source>
        <translation>&quot;%1&quot; não é um registo; escreva LABEL=value</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no label: capitals and digits, at most 8</source>
        <translation>&quot;%1&quot; não é uma etiqueta: maiúsculas e algarismos, no máximo 8</translation>
    </message>
    <message>
        <source>the record %1 is passed over</source>
        <translation>salta-se o registo %1</translation>
    </message>
    <message>
        <source>the record %1 stands twice</source>
        <translation>o registo %1 está duas vezes</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not what belongs here</source>
        <translation>&quot;%1&quot; não é o que deve estar aqui</translation>
    </message>
    <message>
        <source>DO is &quot;%1&quot;; a pair, B, is wanted</source>
        <translation>DO é &quot;%1&quot;; espera-se um par, B</translation>
    </message>
    <message>
        <source>the record SPH is missing</source>
        <translation>falta o registo SPH</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be written in plain letters; it leaves as &quot;%2&quot;</source>
        <translation>&quot;%1&quot; não se pode escrever em letras simples; sai como &quot;%2&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot stand in an order: plain letters and digits, at most 80, without ; = , ?</source>
        <translation>&quot;%1&quot; não pode estar numa encomenda: letras simples e algarismos, no máximo 80, sem ; = , ?</translation>
    </message>
    <message>
        <source>the eyes are written in two cylinder forms; both leave with minus cylinders</source>
        <translation>os olhos estão escritos em duas formas de cilindro; ambos saem com cilindros negativos</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no line of a map; write heading = column</source>
        <translation>&quot;%1&quot; não é uma linha de um mapa; escreva título = coluna</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing a column can be: write right sphere (cylinder, axis, prism, base; left), a column of the prescription table, or - to leave it</source>
        <translation>&quot;%1&quot; não é nada que uma coluna possa ser: escreva right sphere (cylinder, axis, prism, base; left), uma coluna da tabela de prescrições, ou - para a deixar</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no separator; write , or ; or | or tab</source>
        <translation>&quot;%1&quot; não é um separador; escreva , ou ; ou | ou tab</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not plus or minus</source>
        <translation>&quot;%1&quot; não é plus nem minus</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not point or comma</source>
        <translation>&quot;%1&quot; não é point nem comma</translation>
    </message>
    <message>
        <source>there are entries in this ledger already; nothing was written; take them over with `quarterstep import`, or name an empty ledger</source>
        <translation>já há inscrições neste registo; nada foi escrito; importe-as com `quarterstep import`, ou indique um registo vazio</translation>
    </message>
    <message>
        <source>this ledger was opened for reading only</source>
        <translation>este registo foi aberto só para leitura</translation>
    </message>
    <message>
        <source>this ledger was last written at another place; if it moved here for good, say so first, and do not use the other copy any more</source>
        <translation>este registo foi escrito pela última vez noutro lugar; se mudou para aqui de vez, diga-o primeiro, e não use mais a outra cópia</translation>
    </message>
    <message>
        <source>something was posted meanwhile; nothing was written; look again and repeat</source>
        <translation>entretanto inscreveu-se algo; nada foi escrito; veja de novo e repita</translation>
    </message>
    <message>
        <source>the ledger is empty; nothing happened yet</source>
        <translation>o registo está vazio; ainda nada aconteceu</translation>
    </message>
    <message>
        <source>the person is forgotten, but another program reads the ledger and old text stays in its journal; close it there and repeat</source>
        <translation>a pessoa está esquecida, mas outro programa lê o registo e texto antigo fica no seu diário; feche-o lá e repita</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; check the chain and put back the latest copy of the camp folder</source>
        <translation>uma inscrição deste registo não se pode ler; verifique a cadeia e reponha a última cópia da pasta de acampamento</translation>
    </message>
    <message>
        <source>the disk failed while the entry was written (%1); close the camp, open it again and look whether the entry is there before you repeat it</source>
        <translation>o disco falhou enquanto se escrevia a inscrição (%1); feche o acampamento, abra-o de novo e veja se a inscrição lá está antes de a repetir</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost while the entry was written (%1); open the camp again and look whether the entry is there before you repeat it</source>
        <translation>a ligação ao registo partilhado perdeu-se enquanto se escrevia a inscrição (%1); abra de novo o acampamento e veja se a inscrição lá está antes de a repetir</translation>
    </message>
    <message>
        <source>line %1 has %2 left, %3 asked for; nothing was written</source>
        <translation>à linha %1 restam %2, pediram-se %3; nada foi escrito</translation>
    </message>
    <message>
        <source>line %1 has %2 available, %3 held and %4 in quarantine, too few for this; nothing was written</source>
        <translation>a linha %1 tem %2 disponíveis, %3 reservados e %4 em quarentena, poucos para isto; nada foi escrito</translation>
    </message>
    <message>
        <source>entry %1 was taken back already</source>
        <translation>a inscrição %1 já foi desfeita</translation>
    </message>
    <message>
        <source>entry %1 takes back another one and cannot be taken back itself; enter what happened anew</source>
        <translation>a inscrição %1 desfaz outra e não se pode desfazer; inscreva de novo o que aconteceu</translation>
    </message>
    <message>
        <source>entry %1 is “%2” and stays; a wrong count is put right by counting</source>
        <translation>a inscrição %1 é «%2» e fica; uma contagem errada corrige-se contando</translation>
    </message>
    <message>
        <source>entry %1 of this ledger is not as it was written: %2; nothing was taken over</source>
        <translation>a inscrição %1 deste registo não está como foi escrita: %2; nada foi importado</translation>
    </message>
    <message>
        <source>station %1 has two entries number %2, %3 here and %4 there: its folder was copied and both copies went on as the same station; nothing was taken over, both files are as they were; count the stock of one and enter the difference</source>
        <translation>o posto %1 tem duas inscrições número %2, %3 aqui e %4 lá: a sua pasta foi copiada e as duas cópias continuaram como o mesmo posto; nada foi importado, os dois ficheiros estão como estavam; conte o stock de um e inscreva a diferença</translation>
    </message>
    <message>
        <source>entry %1 is in both ledgers with another content; one of them was changed; nothing was taken over</source>
        <translation>a inscrição %1 está nos dois registos com conteúdo diferente; um deles foi alterado; nada foi importado</translation>
    </message>
    <message>
        <source>an entry of this ledger cannot be read; nothing was taken over</source>
        <translation>uma inscrição deste registo não se pode ler; nada foi importado</translation>
    </message>
    <message>
        <source>entries %1 and %2 take back the same entry %3; nothing was taken over</source>
        <translation>as inscrições %1 e %2 desfazem a mesma inscrição %3; nada foi importado</translation>
    </message>
    <message>
        <source>entry %1 takes back %2, which is in neither ledger; merge the ledger that has it first</source>
        <translation>a inscrição %1 desfaz %2, que não está em nenhum dos registos; junte primeiro o registo que a tem</translation>
    </message>
    <message>
        <source>line %1 of %2 would go below zero: entries %3 and %4 took the same pieces; nothing was taken over; count the stock there and enter the difference first</source>
        <translation>a linha %1 de %2 ficaria abaixo de zero: as inscrições %3 e %4 levaram as mesmas peças; nada foi importado; conte lá o stock e inscreva primeiro a diferença</translation>
    </message>
    <message>
        <source>entries of this very station came from a copy of its folder; do not use that copy any more</source>
        <translation>inscrições deste mesmo posto vieram de uma cópia da sua pasta; não use mais essa cópia</translation>
    </message>
    <message>
        <source>%1 has entries of %2 stations: its folder was copied and both were used; count its stock, since both began with the same pieces</source>
        <translation>%1 tem inscrições de %2 postos: a sua pasta foi copiada e as duas foram usadas; conte o stock, pois ambas começaram com as mesmas peças</translation>
    </message>
    <message>
        <source>this is a database of another program, not a ledger; name another file in the key ledger of stock.yaml</source>
        <translation>isto é uma base de dados de outro programa, não um registo; indique outro ficheiro na chave ledger de stock.yaml</translation>
    </message>
    <message>
        <source>the head of this ledger is damaged (form %1); put back the latest copy of the camp folder</source>
        <translation>o cabeçalho deste registo está danificado (forma %1); reponha a última cópia da pasta de acampamento</translation>
    </message>
    <message>
        <source>this ledger was made by a newer version (form %1, known here up to %2); update this program</source>
        <translation>este registo foi feito por uma versão mais nova (forma %1, aqui conhecem-se até %2); atualize este programa</translation>
    </message>
    <message>
        <source>a rule of this ledger is missing or damaged (%1); put back the latest copy of the camp folder</source>
        <translation>uma regra deste registo falta ou está danificada (%1); reponha a última cópia da pasta de acampamento</translation>
    </message>
    <message>
        <source>a ledger file cannot be kept safely on a network share; keep the camp folder on this machine, or share a PostgreSQL ledger between stations</source>
        <translation>um ficheiro de registo não se guarda em segurança numa partilha de rede; guarde a pasta de acampamento nesta máquina, ou partilhe um registo PostgreSQL entre postos</translation>
    </message>
    <message>
        <source>there is no ledger in this database yet; the keeper sets it up once with `quarterstep stock --set-up`</source>
        <translation>ainda não há registo nesta base de dados; o responsável prepara-o uma vez com `quarterstep stock --set-up`</translation>
    </message>
    <message>
        <source>this database holds something else, not a ledger; name another one in the key ledger of stock.yaml</source>
        <translation>esta base de dados contém outra coisa, não um registo; indique outra na chave ledger de stock.yaml</translation>
    </message>
    <message>
        <source>the database refuses to write safely; nothing was opened</source>
        <translation>a base de dados recusa escrever em segurança; nada foi aberto</translation>
    </message>
    <message>
        <source>the client library of the server is missing; install %1</source>
        <translation>falta a biblioteca de cliente do servidor; instale %1</translation>
    </message>
    <message>
        <source>the file was replaced, but the disk does not say that this will last: %1</source>
        <translation>o ficheiro foi substituído, mas o disco não garante que isso dure: %1</translation>
    </message>
    <message>
        <source>another program is writing in this folder; wait a moment and repeat</source>
        <translation>outro programa está a escrever nesta pasta; espere um momento e repita</translation>
    </message>
    <message>
        <source>the folder cannot be locked: %1; check its name and rights</source>
        <translation>a pasta não se pode bloquear: %1; veja o nome e as permissões</translation>
    </message>
    <message>
        <source>this is not the address of a shared ledger (%1); write postgresql://LOGIN@HOST:PORT/DATABASE</source>
        <translation>isto não é o endereço de um registo partilhado (%1); escreva postgresql://LOGIN@HOST:PORT/DATABASE</translation>
    </message>
    <message>
        <source>a password stands in the address, and stock.yaml is carried about and copied; write it to ~/.pgpass (read by you alone) and take it out of the address</source>
        <translation>há uma palavra-passe no endereço, e stock.yaml leva-se e copia-se; escreva-a em ~/.pgpass (lido só por si) e tire-a do endereço</translation>
    </message>
    <message>
        <source>there is a ledger in this database already; nothing was changed</source>
        <translation>já há um registo nesta base de dados; nada foi alterado</translation>
    </message>
    <message>
        <source>this file system cannot keep a ledger safely (no shared memory beside the file); keep the camp folder on another disk</source>
        <translation>este sistema de ficheiros não guarda um registo em segurança (sem memória partilhada junto do ficheiro); guarde a pasta de acampamento noutro disco</translation>
    </message>
    <message>
        <source>this is not a file; name another one in the key ledger of stock.yaml</source>
        <translation>isto não é um ficheiro; indique outro na chave ledger de stock.yaml</translation>
    </message>
    <message>
        <source>this ledger was not closed and its folder cannot be written to; copy the whole folder to a place that can, and open it there</source>
        <translation>este registo não foi fechado e não se pode escrever na sua pasta; copie a pasta inteira para um lugar onde se possa, e abra-o lá</translation>
    </message>
    <message>
        <source>the ledger file was moved, removed or replaced while it was open; nothing was written; close the camp and open it again</source>
        <translation>o ficheiro do registo foi movido, apagado ou substituído enquanto estava aberto; nada foi escrito; feche o acampamento e abra-o de novo</translation>
    </message>
    <message>
        <source>this ledger names no station of its own; put back the latest copy</source>
        <translation>este registo não indica um posto próprio; reponha a última cópia</translation>
    </message>
    <message>
        <source>the ledger cannot be made: %1; check the rights of the folder</source>
        <translation>o registo não se pode criar: %1; veja as permissões da pasta</translation>
    </message>
    <message>
        <source>the ledger cannot be opened for writing here; check the rights of the file and its folder</source>
        <translation>o registo não se pode abrir aqui para escrita; veja as permissões do ficheiro e da sua pasta</translation>
    </message>
    <message>
        <source>the disk is full; nothing was written; make room and repeat</source>
        <translation>o disco está cheio; nada foi escrito; liberte espaço e repita</translation>
    </message>
    <message>
        <source>this is not a ledger, or it is damaged (%1); put back the latest copy of the camp folder</source>
        <translation>isto não é um registo, ou está danificado (%1); reponha a última cópia da pasta de acampamento</translation>
    </message>
    <message>
        <source>the ledger failed: %1 (code %2); nothing was written</source>
        <translation>o registo falhou: %1 (código %2); nada foi escrito</translation>
    </message>
    <message>
        <source>another program holds the ledger; nothing was written; close it there and repeat</source>
        <translation>outro programa ocupa o registo; nada foi escrito; feche-o lá e repita</translation>
    </message>
    <message>
        <source>the shared ledger cannot be reached (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>o registo partilhado não responde (%1); nada foi escrito; veja a rede e o servidor, depois repita</translation>
    </message>
    <message>
        <source>the connection to the shared ledger was lost (%1); nothing was written; check the network and the server, then repeat</source>
        <translation>a ligação ao registo partilhado perdeu-se (%1); nada foi escrito; veja a rede e o servidor, depois repita</translation>
    </message>
    <message>
        <source>the shared ledger does not allow this login to do that (%1); nothing was written; ask the keeper</source>
        <translation>o registo partilhado não permite isso a este utilizador (%1); nada foi escrito; fale com o responsável</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>o ficheiro não se pode ler</translation>
    </message>
    <message>
        <source>this is a link or a device; only a plain file can be kept up to date; put the file itself into the camp folder</source>
        <translation>isto é uma ligação ou um dispositivo; só um ficheiro simples se pode manter atualizado; ponha o próprio ficheiro na pasta de acampamento</translation>
    </message>
    <message>
        <source>the file was written after entry %1 of another ledger; a new ledger begins with the counts of the file</source>
        <translation>o ficheiro foi escrito depois da inscrição %1 de outro registo; um registo novo começa com os números do ficheiro</translation>
    </message>
    <message>
        <source>the file was written after entry %1, but the ledger ends at %2; is the ledger an older copy? Counts that differ are shown as edited</source>
        <translation>o ficheiro foi escrito depois da inscrição %1, mas o registo termina em %2; será o registo uma cópia mais antiga? Os números que diferem mostram-se como editados</translation>
    </message>
    <message>
        <source>the ledger had nothing of the site %1; its lines begin with the counts of the file</source>
        <translation>o registo não tinha nada do local %1; as suas linhas começam com os números do ficheiro</translation>
    </message>
    <message>
        <source>line %1 is new in the file and begins with %2 on hand</source>
        <translation>a linha %1 é nova no ficheiro e começa com %2 em stock</translation>
    </message>
    <message>
        <source>line %1 is not in the file any more, and the ledger has %2 of it on hand; put the line back, or count it as 0 first</source>
        <translation>a linha %1 já não está no ficheiro, e o registo tem %2 dela em stock; reponha a linha, ou conte-a primeiro como 0</translation>
    </message>
    <message>
        <source>write the first and the last age, for example [40, 44]</source>
        <translation>escreva a primeira e a última idade, por exemplo [40, 44]</translation>
    </message>
    <message>
        <source>ages and values rise, and bands do not overlap</source>
        <translation>as idades e os valores sobem, e as faixas não se sobrepõem</translation>
    </message>
    <message>
        <source>write the rows as a list: [{ages: [40, 44], value: 0.65}, …]</source>
        <translation>escreva as linhas como lista: [{ages: [40, 44], value: 0.65}, …]</translation>
    </message>
    <message>
        <source>this is not a file of age tables of this program; the first key should read format: %1</source>
        <translation>isto não é um ficheiro de tabelas de idades deste programa; a primeira chave deve ser format: %1</translation>
    </message>
    <message>
        <source>`tables` is a list; begin each table with a dash</source>
        <translation>`tables` é uma lista; comece cada tabela com um traço</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a name here; write one of %2</source>
        <translation>&quot;%1&quot; não é um nome aqui; escreva um de %2</translation>
    </message>
    <message>
        <source>write a list: one name, value and source a line</source>
        <translation>escreva uma lista: um nome, valor e fonte por linha</translation>
    </message>
    <message>
        <source>this is not an audit file of this program; the first key should read format: %1</source>
        <translation>isto não é um ficheiro de auditoria deste programa; a primeira chave deve ser format: %1</translation>
    </message>
    <message>
        <source>these priors say that more than one hand-over in ten holds a slip; make them smaller</source>
        <translation>estas probabilidades prévias dizem que mais de uma entrega em dez tem um lapso; diminua-as</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are lot, row, right and left</source>
        <translation>falta a coluna &quot;%1&quot;; precisas são lot, row, right e left</translation>
    </message>
    <message>
        <source>the row names no lot; keep the column as it was printed</source>
        <translation>a linha não indica lote; deixe a coluna como foi impressa</translation>
    </message>
    <message>
        <source>row %1 of this lot stands in the table twice; keep one</source>
        <translation>a linha %1 deste lote está duas vezes na tabela; deixe uma</translation>
    </message>
    <message>
        <source>“%1” is no reading of a focimeter; write sphere, cylinder and axis</source>
        <translation>«%1» não é uma leitura de um focímetro; escreva esfera, cilindro e eixo</translation>
    </message>
    <message>
        <source>the row says not-found and has a reading; delete one of the two</source>
        <translation>a linha diz not-found e tem uma leitura; apague uma das duas</translation>
    </message>
    <message>
        <source>the row says read and has no reading; write both lenses or not-found</source>
        <translation>a linha diz read e não tem leitura; escreva as duas lentes ou not-found</translation>
    </message>
    <message>
        <source>“%1” is not an outcome; write read or not-found</source>
        <translation>«%1» não é um resultado; escreva read ou not-found</translation>
    </message>
    <message>
        <source>a pair is read in both lenses; write this one too</source>
        <translation>uns óculos leem-se nas duas lentes; escreva também esta</translation>
    </message>
    <message>
        <source>the format is &quot;%1&quot;, not &quot;%2&quot;</source>
        <translation>o formato é &quot;%1&quot;, não &quot;%2&quot;</translation>
    </message>
    <message>
        <source>the limits must rise: fits, then caution, then trial</source>
        <translation>os limites devem subir: fits, depois caution, depois trial</translation>
    </message>
    <message>
        <source>a limit is missing here; write fits, caution or trial</source>
        <translation>falta aqui um limite; escreva fits, caution ou trial</translation>
    </message>
    <message>
        <source>&quot;%1&quot; means nothing for this criterion; delete it</source>
        <translation>&quot;%1&quot; não significa nada para este critério; apague-o</translation>
    </message>
    <message>
        <source>write the steps as a list: [{up to: 0.50, fits: 7}, …]</source>
        <translation>escreva os passos como lista: [{up to: 0.50, fits: 7}, …]</translation>
    </message>
    <message>
        <source>the steps must rise; put the smaller cylinder first</source>
        <translation>os passos devem subir; ponha primeiro o cilindro menor</translation>
    </message>
    <message>
        <source>say where the limit comes from, or write: common practice</source>
        <translation>diga de onde vem o limite, ou escreva: common practice</translation>
    </message>
    <message>
        <source>shown only means no limits; keep one of the two</source>
        <translation>shown only quer dizer sem limites; deixe um dos dois</translation>
    </message>
    <message>
        <source>a quote stands inside a cell; put the whole cell in quotes and double it</source>
        <translation>há aspas dentro de uma célula; ponha a célula inteira entre aspas e duplique-as</translation>
    </message>
    <message>
        <source>a lone carriage return ends the line here; save the table with LF or CRLF line ends</source>
        <translation>um retorno de carro sozinho termina aqui a linha; guarde a tabela com fins de linha LF ou CRLF</translation>
    </message>
    <message>
        <source>this quote is never closed; close it before the next comma</source>
        <translation>estas aspas nunca se fecham; feche-as antes da vírgula seguinte</translation>
    </message>
    <message>
        <source>there is text behind the closing quote; move it inside, or double the quote</source>
        <translation>há texto depois das aspas finais; ponha-o dentro, ou duplique as aspas</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and name</source>
        <translation>falta a coluna &quot;%1&quot;; precisas são person e name</translation>
    </message>
    <message>
        <source>the row names no person</source>
        <translation>a linha não indica pessoa</translation>
    </message>
    <message>
        <source>%1 stands here twice, first in row %2</source>
        <translation>%1 está aqui duas vezes, primeiro na linha %2</translation>
    </message>
    <message>
        <source>no name stands here; to erase one, use `quarterstep forget`</source>
        <translation>não há nome aqui; para apagar um, use `quarterstep forget`</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number; write one from %2 to %3</source>
        <translation>&quot;%1&quot; não é um número; escreva um de %2 a %3</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3</source>
        <translation>%1 está fora de %2 a %3</translation>
    </message>
    <message>
        <source>a number is missing; write one from %1 to %2</source>
        <translation>falta um número; escreva um de %1 a %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a decimal comma; in this file write %2</source>
        <translation>&quot;%1&quot; tem vírgula decimal; neste ficheiro escreva %2</translation>
    </message>
    <message>
        <source>%1 is below zero; write 0 or more</source>
        <translation>%1 está abaixo de zero; escreva 0 ou mais</translation>
    </message>
    <message>
        <source>write %1 without a sign</source>
        <translation>escreva %1 sem sinal</translation>
    </message>
    <message>
        <source>%1 is not a whole number; write digits only</source>
        <translation>%1 não é um número inteiro; escreva só algarismos</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number; write digits only, for example 14</source>
        <translation>&quot;%1&quot; não é um número inteiro; escreva só algarismos, por exemplo 14</translation>
    </message>
    <message>
        <source>a whole number is missing; write one from %1 to %2</source>
        <translation>falta um número inteiro; escreva um de %1 a %2</translation>
    </message>
    <message>
        <source>%1 begins with a zero, which some programs read as another number; write %2</source>
        <translation>%1 começa com um zero, que alguns programas leem como outro número; escreva %2</translation>
    </message>
    <message>
        <source>%1 has more than three decimals; round it</source>
        <translation>%1 tem mais de três casas decimais; arredonde-o</translation>
    </message>
    <message>
        <source>the columns are not separated by commas; save the table with commas</source>
        <translation>as colunas não estão separadas por vírgulas; guarde a tabela com vírgulas</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; person, right and left are needed</source>
        <translation>falta a coluna &quot;%1&quot;; precisas são person, right e left</translation>
    </message>
    <message>
        <source>this column has no name; write one</source>
        <translation>esta coluna não tem nome; escreva um</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say which acuity; write one of: %2</source>
        <translation>&quot;%1&quot; não diz que acuidade; escreva uma de: %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known and not used; did you mean &quot;%2&quot;?</source>
        <translation>a coluna &quot;%1&quot; não se conhece nem se usa; queria dizer &quot;%2&quot;?</translation>
    </message>
    <message>
        <source>the row ends after %1 cells, the header has %2; add the missing commas</source>
        <translation>a linha termina após %1 células, o cabeçalho tem %2; junte as vírgulas que faltam</translation>
    </message>
    <message>
        <source>the row has %1 cells, the header %2; put a cell that holds a comma in quotes</source>
        <translation>a linha tem %1 células, o cabeçalho %2; ponha entre aspas a célula que contém uma vírgula</translation>
    </message>
    <message>
        <source>line %1 stands here twice, first in row %2; write one row with the whole number</source>
        <translation>a linha de stock %1 está aqui duas vezes, primeiro na linha %2 da tabela; escreva uma só, com o número total</translation>
    </message>
    <message>
        <source>“%1” is not a cause; write one of %2</source>
        <translation>«%1» não é uma causa; escreva uma de %2</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are line and quantity</source>
        <translation>falta a coluna &quot;%1&quot;; precisas são line e quantity</translation>
    </message>
    <message>
        <source>the row names no line</source>
        <translation>a linha da tabela não indica linha de stock</translation>
    </message>
    <message>
        <source>write format: %1</source>
        <translation>escreva format: %1</translation>
    </message>
    <message>
        <source>lines is a list, one item with line and quantity each</source>
        <translation>lines é uma lista, cada elemento com line e quantity</translation>
    </message>
    <message>
        <source>one scanned line a row; a table begins with a row that names its columns: line,quantity</source>
        <translation>uma linha de stock lida por cada linha da tabela; uma tabela começa com uma linha que indica as colunas: line,quantity</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person, eye and reading, or sphere, cylinder and axis in place of reading</source>
        <translation>falta a coluna &quot;%1&quot;; precisas são person, eye e reading, ou sphere, cylinder e axis em vez de reading</translation>
    </message>
    <message>
        <source>write each reading once: in the column reading, or in sphere, cylinder, axis</source>
        <translation>escreva cada leitura uma só vez: na coluna reading, ou em sphere, cylinder, axis</translation>
    </message>
    <message>
        <source>the row has no person; write the code of the person</source>
        <translation>a linha não tem pessoa; escreva o código da pessoa</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an eye; write right or left</source>
        <translation>&quot;%1&quot; não é um olho; escreva right ou left</translation>
    </message>
    <message>
        <source>there is no reading here; write it, or delete the row</source>
        <translation>não há leitura aqui; escreva-a, ou apague a linha</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an axis; a cylinder needs one from 1 to 180</source>
        <translation>&quot;%1&quot; não é um eixo; um cilindro precisa de um de 1 a 180</translation>
    </message>
    <message>
        <source>readings of the right eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>leituras do olho direito de &quot;%1&quot;: %2; tire três ou mais</translation>
    </message>
    <message>
        <source>readings of the left eye of &quot;%1&quot;: %2; take three or more</source>
        <translation>leituras do olho esquerdo de &quot;%1&quot;: %2; tire três ou mais</translation>
    </message>
    <message>
        <source>the row has no person; write a code or a name</source>
        <translation>a linha não tem pessoa; escreva um código ou um nome</translation>
    </message>
    <message>
        <source>%1 is no step of 0.25 or 0.125 D; look at the writing again (3 and 5, 2 and 7 are alike)</source>
        <translation>%1 não é um passo de 0.25 ou 0.125 D; veja de novo a escrita (3 e 5, 2 e 7 são parecidos)</translation>
    </message>
    <message>
        <source>one eye is written with a minus cylinder, the other with a plus cylinder; both are read as written: is that meant?</source>
        <translation>um olho está escrito com cilindro negativo, o outro com cilindro positivo; ambos se leem como escritos: é isso mesmo?</translation>
    </message>
    <message>
        <source>age %1: is it right? Whether the rules for children count hangs on it</source>
        <translation>idade %1: está certa? Disso depende se valem as regras para crianças</translation>
    </message>
    <message>
        <source>%1 mm is narrow for both eyes together; is it monocular? Then it goes into pd_right_mm or pd_left_mm</source>
        <translation>%1 mm é estreito para os dois olhos juntos; é monocular? Então vai em pd_right_mm ou pd_left_mm</translation>
    </message>
    <message>
        <source>the two monocular distances make %1 mm, not %2; the monocular ones are used</source>
        <translation>as duas distâncias monoculares dão %1 mm, não %2; usam-se as monoculares</translation>
    </message>
    <message>
        <source>the near distance %1 mm is wider than the far one, %2 mm; were they exchanged?</source>
        <translation>a distância de perto %1 mm é maior do que a de longe, %2 mm; foram trocadas?</translation>
    </message>
    <message>
        <source>the eye&apos;s text says addition %1, this column %2; keep one</source>
        <translation>o texto do olho diz adição %1, esta coluna %2; deixe uma</translation>
    </message>
    <message>
        <source>sphere and addition make %1 at near, the near power says %2; the near power is used</source>
        <translation>esfera e adição dão %1 ao perto, a potência de perto diz %2; usa-se a potência de perto</translation>
    </message>
    <message>
        <source>the date %1 lies after today, %2; correct it</source>
        <translation>a data %1 é posterior a hoje, %2; corrija-a</translation>
    </message>
    <message>
        <source>write two numbers in mm, for example [54, 74]</source>
        <translation>escreva dois números em mm, por exemplo [54, 74]</translation>
    </message>
    <message>
        <source>the smaller number comes first</source>
        <translation>o número menor vem primeiro</translation>
    </message>
    <message>
        <source>there is no profile &quot;%1&quot; to begin from; built in, or earlier in this file, are: %2</source>
        <translation>não há perfil &quot;%1&quot; por onde começar; incluídos, ou antes neste ficheiro, estão: %2</translation>
    </message>
    <message>
        <source>the profile has no name; write one</source>
        <translation>o perfil não tem nome; escreva um</translation>
    </message>
    <message>
        <source>the profile &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>o perfil &quot;%1&quot; já está no ficheiro; dê a este outro nome</translation>
    </message>
    <message>
        <source>this is not a rules file of this program; the first key should read format: %1</source>
        <translation>isto não é um ficheiro de regras deste programa; a primeira chave deve ser format: %1</translation>
    </message>
    <message>
        <source>`profiles` is a list; begin each profile with a dash</source>
        <translation>`profiles` é uma lista; comece cada perfil com um traço</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is not known; it is not used</source>
        <translation>a coluna &quot;%1&quot; não se conhece; não se usa</translation>
    </message>
    <message>
        <source>this is not UTF-8 text; save the file as UTF-8</source>
        <translation>isto não é texto UTF-8; guarde o ficheiro como UTF-8</translation>
    </message>
    <message>
        <source>a control character (hexadecimal %1) stands here; delete it</source>
        <translation>há aqui um carácter de controlo (hexadecimal %1); apague-o</translation>
    </message>
    <message>
        <source>the file is larger than %1 MiB; split it</source>
        <translation>o ficheiro é maior do que %1 MiB; divida-o</translation>
    </message>
    <message>
        <source>there is no such file; check the name and the folder</source>
        <translation>não existe esse ficheiro; veja o nome e a pasta</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>o ficheiro não se pode ler: %1</translation>
    </message>
    <message>
        <source>this is a folder; name the file inside it</source>
        <translation>isto é uma pasta; indique o ficheiro dentro dela</translation>
    </message>
    <message>
        <source>the file is UTF-16 text; save it as UTF-8 and try again</source>
        <translation>o ficheiro é texto UTF-16; guarde-o como UTF-8 e tente de novo</translation>
    </message>
    <message>
        <source>the file begins with two byte order marks; delete one</source>
        <translation>o ficheiro começa com duas marcas de ordem de bytes; apague uma</translation>
    </message>
    <message>
        <source>write this value without quotes, or delete the whole `written` entry</source>
        <translation>escreva este valor sem aspas, ou apague toda a entrada `written`</translation>
    </message>
    <message>
        <source>the value of `counts` is 8 digits of 0-9 and a-f put in by the program; delete the whole `written` entry if it was damaged</source>
        <translation>o valor de `counts` são 8 algarismos de 0-9 e a-f postos pelo programa; apague toda a entrada `written` se foi danificado</translation>
    </message>
    <message>
        <source>`lines` is a list; begin each line with a dash, or write lines: []</source>
        <translation>`lines` é uma lista; comece cada linha com um traço, ou escreva lines: []</translation>
    </message>
    <message>
        <source>the line &quot;%1&quot; stands in the file already, in line %2; give this one another name or add the counts together</source>
        <translation>a linha &quot;%1&quot; já está no ficheiro, na linha %2; dê a esta outro nome ou some os números</translation>
    </message>
    <message>
        <source>the code %1 stands in the file already, in line %2; each line has a code of its own</source>
        <translation>o código %1 já está no ficheiro, na linha %2; cada linha de stock tem um código próprio</translation>
    </message>
    <message>
        <source>put `lines:` at the beginning of a line of its own</source>
        <translation>ponha `lines:` no início de uma linha própria</translation>
    </message>
    <message>
        <source>this is not a stock file of this program; the first key should read format: %1</source>
        <translation>isto não é um ficheiro de stock deste programa; a primeira chave deve ser format: %1</translation>
    </message>
    <message>
        <source>the site has no name; write the camp or box</source>
        <translation>o local não tem nome; escreva o acampamento ou a caixa</translation>
    </message>
    <message>
        <source>write the count as plain digits, without quotes: %1</source>
        <translation>escreva o número em algarismos simples, sem aspas: %1</translation>
    </message>
    <message>
        <source>least (%1) is above most (%2); exchange them</source>
        <translation>least (%1) está acima de most (%2); troque-os</translation>
    </message>
    <message>
        <source>write the lens shapes as a list, for example [round 44]</source>
        <translation>escreva as formas de lente como lista, por exemplo [round 44]</translation>
    </message>
    <message>
        <source>centres %1 mm do not go with lens + bridge = %2 mm; expected are %3 to %4: measure the pair again</source>
        <translation>centros de %1 mm não condizem com lente + ponte = %2 mm; esperam-se %3 a %4: meça de novo os óculos</translation>
    </message>
    <message>
        <source>a lens of shape &quot;%1&quot; may fit one side only; write side: right, left or either</source>
        <translation>uma lente de forma &quot;%1&quot; pode servir só de um lado; escreva side: right, left ou either</translation>
    </message>
    <message>
        <source>&quot;%1&quot; says nothing for a line of this kind and is not used</source>
        <translation>&quot;%1&quot; não diz nada para uma linha deste tipo e não se usa</translation>
    </message>
    <message>
        <source>the line has no name; write what its label says</source>
        <translation>a linha não tem nome; escreva o que diz a sua etiqueta</translation>
    </message>
    <message>
        <source>the addition %1 is outside +0.25 to +6.00</source>
        <translation>a adição %1 está fora de +0.25 a +6.00</translation>
    </message>
    <message>
        <source>write one power, or {right: …, left: …}, or {bifocal: +2.00, distance: 0.00}</source>
        <translation>escreva uma potência, ou {right: …, left: …}, ou {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a bifocal&apos;s power is written {bifocal: +2.00, distance: 0.00}</source>
        <translation>a potência de um bifocal escreve-se {bifocal: +2.00, distance: 0.00}</translation>
    </message>
    <message>
        <source>a lens with a cylinder needs axis: any (turned when mounting) or axis: degrees as mounted</source>
        <translation>uma lente com cilindro precisa de axis: any (girada na montagem) ou axis: graus como montada</translation>
    </message>
    <message>
        <source>the axis stands in the power already; keep one of the two</source>
        <translation>o eixo já está na potência; deixe um dos dois</translation>
    </message>
    <message>
        <source>write this value in one line and without quotes, so that it can be changed</source>
        <translation>escreva este valor numa só linha e sem aspas, para que se possa alterar</translation>
    </message>
    <message>
        <source>this is a list; begin each item with a dash</source>
        <translation>isto é uma lista; comece cada elemento com um traço</translation>
    </message>
    <message>
        <source>“%1” stands in the list already, in line %2; keep one of the two</source>
        <translation>«%1» já está na lista, na linha %2; deixe um dos dois</translation>
    </message>
    <message>
        <source>write the lines of the pack with their pieces, as {N+200-62M: 2}</source>
        <translation>escreva as linhas do pacote com as suas peças, como {N+200-62M: 2}</translation>
    </message>
    <message>
        <source>the pack holds &quot;%1&quot;, which is not among the lines of this list</source>
        <translation>o pacote contém &quot;%1&quot;, que não está entre as linhas desta lista</translation>
    </message>
    <message>
        <source>contact lenses were worn during this reading; the row is left out</source>
        <translation>usavam-se lentes de contacto durante esta leitura; a linha fica de fora</translation>
    </message>
    <message>
        <source>neither eye has sphere, cylinder and axis; the row is left out</source>
        <translation>nenhum olho tem esfera, cilindro e eixo; a linha fica de fora</translation>
    </message>
    <message>
        <source>this eye has no complete reading and is taken as not measured</source>
        <translation>este olho não tem leitura completa e toma-se como não medido</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the words allowed here; write one of: %2</source>
        <translation>&quot;%1&quot; não é uma das palavras admitidas aqui; escreva uma de: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds two numbers; write one here, each eye&apos;s own in pd_right_mm and pd_left_mm, the near one in near_pd_mm</source>
        <translation>&quot;%1&quot; contém dois números; escreva aqui um, o de cada olho em pd_right_mm e pd_left_mm, o de perto em near_pd_mm</translation>
    </message>
    <message>
        <source>%1 would be a distance in cm; write it in mm: %2</source>
        <translation>%1 seria uma distância em cm; escreva-a em mm: %2</translation>
    </message>
    <message>
        <source>%1 mm is not a pupillary distance; expected are %2 to %3 mm</source>
        <translation>%1 mm não é uma distância pupilar; esperam-se %2 a %3 mm</translation>
    </message>
    <message>
        <source>an addition is never minus; %1 was read; write the addition, not the near power (that goes into near_right and near_left)</source>
        <translation>uma adição nunca é negativa; leu-se %1; escreva a adição, não a potência de perto (essa vai em near_right e near_left)</translation>
    </message>
    <message>
        <source>the addition %1 is outside 0.00 to +6.00</source>
        <translation>a adição %1 está fora de 0.00 a +6.00</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date of the form 2026-03-01 (year-month-day)</source>
        <translation>&quot;%1&quot; não é uma data da forma 2026-03-01 (ano-mês-dia)</translation>
    </message>
    <message>
        <source>there is no column &quot;%1&quot; in the table</source>
        <translation>não há coluna &quot;%1&quot; na tabela</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; needed are person and lines</source>
        <translation>falta a coluna &quot;%1&quot;; precisas são person e lines</translation>
    </message>
    <message>
        <source>“%1” is not a purpose; write distance, near, intermediate or bifocal</source>
        <translation>«%1» não é um uso; escreva distance, near, intermediate ou bifocal</translation>
    </message>
    <message>
        <source>the row needs a person and lines</source>
        <translation>a linha da tabela precisa de pessoa e de linhas de stock</translation>
    </message>
    <message>
        <source>write one line, or frame + right lens + left lens</source>
        <translation>escreva uma linha de stock, ou armação + lente direita + lente esquerda</translation>
    </message>
    <message>
        <source>write two powers, for example [1.00, 3.50]</source>
        <translation>escreva duas potências, por exemplo [1.00, 3.50]</translation>
    </message>
    <message>
        <source>a set that is not enabled says why; add: why</source>
        <translation>um conjunto que não está ativado diz porquê; junte: why</translation>
    </message>
    <message>
        <source>this set is enabled though its figures are from memory; once they are compared with the standard, say so under confidence</source>
        <translation>este conjunto está ativado embora os seus números sejam de memória; depois de comparados com a norma, diga-o em confidence</translation>
    </message>
    <message>
        <source>the set &quot;%1&quot; stands in the file already; give this one another name</source>
        <translation>o conjunto &quot;%1&quot; já está no ficheiro; dê a este outro nome</translation>
    </message>
    <message>
        <source>this is not a tolerance file of this program; the first key should read format: %1</source>
        <translation>isto não é um ficheiro de tolerâncias deste programa; a primeira chave deve ser format: %1</translation>
    </message>
    <message>
        <source>`sets` is a list; begin each set with a dash</source>
        <translation>`sets` é uma lista; comece cada conjunto com um traço</translation>
    </message>
    <message>
        <source>write the rows as a list: [{power up to: 6.50, limit: 0.13}, …]</source>
        <translation>escreva as linhas como lista: [{power up to: 6.50, limit: 0.13}, …]</translation>
    </message>
    <message>
        <source>a row has one of: limit, percent, or not judged: yes</source>
        <translation>uma linha tem um de: limit, percent, ou not judged: yes</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; is missing; it names the hand-over</source>
        <translation>falta a coluna &quot;%1&quot;; indica a entrega</translation>
    </message>
    <message>
        <source>the row names no hand-over</source>
        <translation>a linha não indica entrega</translation>
    </message>
    <message>
        <source>%1 stands here twice</source>
        <translation>%1 está aqui duas vezes</translation>
    </message>
    <message>
        <source>a single value is expected here, not a list or a map</source>
        <translation>espera-se aqui um só valor, não uma lista nem um mapa</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds a line break or a control character; write it on one line</source>
        <translation>&quot;%1&quot; contém uma quebra de linha ou um carácter de controlo; escreva-o numa só linha</translation>
    </message>
    <message>
        <source>keys with values are expected here, such as: %1</source>
        <translation>esperam-se aqui chaves com valores, como: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is written twice; the first stands in line %2; keep one</source>
        <translation>&quot;%1&quot; está escrito duas vezes; o primeiro está na linha %2; deixe um</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; known are: %2</source>
        <translation>a chave &quot;%1&quot; não se conhece aqui; conhecem-se: %2</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is not known here; did you mean &quot;%2&quot;?</source>
        <translation>a chave &quot;%1&quot; não se conhece aqui; queria dizer &quot;%2&quot;?</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; is missing here; add it</source>
        <translation>a chave &quot;%1&quot; falta aqui; junte-a</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no value; write one after the colon</source>
        <translation>&quot;%1&quot; não tem valor; escreva um depois dos dois pontos</translation>
    </message>
    <message>
        <source>a second document begins here; keep one document in the file</source>
        <translation>um segundo documento começa aqui; deixe um só documento no ficheiro</translation>
    </message>
    <message>
        <source>an alias (*name) is not read here; write the value out</source>
        <translation>um alias (*name) não se lê aqui; escreva o valor por extenso</translation>
    </message>
    <message>
        <source>this quote is never closed; close it on the same line</source>
        <translation>estas aspas nunca se fecham; feche-as na mesma linha</translation>
    </message>
    <message>
        <source>an anchor (&amp;name) is not read here; delete it</source>
        <translation>uma âncora (&amp;name) não se lê aqui; apague-a</translation>
    </message>
    <message>
        <source>a tag (!name) is not read here; delete it</source>
        <translation>uma etiqueta (!name) não se lê aqui; apague-a</translation>
    </message>
    <message>
        <source>the nesting is deeper than %1; this is not such a file</source>
        <translation>os níveis são mais fundos do que %1; isto não é um ficheiro desses</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>uma chave deve ser uma palavra simples</translation>
    </message>
    <message>
        <source>this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or a tab in the indentation, here or on the line above</source>
        <translation>isto não se pode ler como YAML: %1; procure dois pontos, aspas ou parêntese em falta, ou uma tabulação no recuo, aqui ou na linha acima</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>o ficheiro está vazio</translation>
    </message>
</context>
<context>
    <name>entry</name>
    <message>
        <source>opened</source>
        <translation>aberto</translation>
    </message>
    <message>
        <source>received</source>
        <translation>recebido</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>entregue</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>devolvido</translation>
    </message>
    <message>
        <source>exchanged</source>
        <translation>trocado</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contado</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>abatido</translation>
    </message>
    <message>
        <source>held</source>
        <translation>reservado</translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation>em quarentena</translation>
    </message>
    <message>
        <source>released</source>
        <translation>libertado</translation>
    </message>
    <message>
        <source>transferred out</source>
        <translation>transferido para fora</translation>
    </message>
    <message>
        <source>transferred in</source>
        <translation>transferido para aqui</translation>
    </message>
    <message>
        <source>no spectacles needed</source>
        <translation>não precisa de óculos</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>recusado pela pessoa</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incompleto</translation>
    </message>
    <message>
        <source>repaired or adjusted</source>
        <translation>reparado ou ajustado</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>encomendado</translation>
    </message>
    <message>
        <source>order arrived</source>
        <translation>encomenda chegada</translation>
    </message>
    <message>
        <source>order checked</source>
        <translation>encomenda verificada</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>levantado</translation>
    </message>
    <message>
        <source>sent back to be remade</source>
        <translation>devolvido para refazer</translation>
    </message>
    <message>
        <source>not collected</source>
        <translation>não levantado</translation>
    </message>
    <message>
        <source>referred</source>
        <translation>encaminhado</translation>
    </message>
    <message>
        <source>not served from stock</source>
        <translation>não atendido com o stock</translation>
    </message>
    <message>
        <source>exported</source>
        <translation>exportado</translation>
    </message>
    <message>
        <source>drawn for the bench</source>
        <translation>sorteado para a bancada</translation>
    </message>
    <message>
        <source>read at the bench</source>
        <translation>lido na bancada</translation>
    </message>
    <message>
        <source>seen again</source>
        <translation>visto de novo</translation>
    </message>
    <message>
        <source>entered in error</source>
        <translation>inscrito por engano</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>danificado</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>em falta</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>roubado</translation>
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
        <translation>diferente da etiqueta</translation>
    </message>
    <message>
        <source>mislabelled</source>
        <translation>mal etiquetado</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>amostra</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>oferecido</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>recolhido</translation>
    </message>
</context>
<context>
    <name>paper</name>
    <message>
        <source>The child was given glasses: %1.</source>
        <translation>A criança recebeu óculos: %1.</translation>
    </message>
    <message>
        <source>Glasses are suggested for the child: %1.</source>
        <translation>Sugerem-se óculos para a criança: %1.</translation>
    </message>
    <message>
        <source>Glasses are to be made for the child.</source>
        <translation>Vão ser feitos óculos para a criança.</translation>
    </message>
    <message>
        <source>The child needs no glasses for this.</source>
        <translation>A criança não precisa de óculos para isto.</translation>
    </message>
    <message>
        <source>The eye test is not finished; the child comes again.</source>
        <translation>O exame da vista não terminou; a criança volta.</translation>
    </message>
    <message>
        <source>The child should see the eye clinic before any glasses.</source>
        <translation>A criança deve ir à clínica de olhos antes de receber óculos.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic today.</source>
        <translation>Por favor, leve hoje a criança e a carta à clínica de olhos.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic in the next days.</source>
        <translation>Por favor, leve a criança e a carta à clínica de olhos nos próximos dias.</translation>
    </message>
    <message>
        <source>Please take the child and the letter to the eye clinic when it next receives people.</source>
        <translation>Por favor, leve a criança e a carta à clínica de olhos quando esta voltar a atender.</translation>
    </message>
    <message>
        <source>The eyes of your child were tested.</source>
        <translation>Os olhos da sua criança foram examinados.</translation>
    </message>
    <message>
        <source>To be worn (as the prescriber told)</source>
        <translation>Como usar (segundo o prescritor)</translation>
    </message>
    <message>
        <source>The glasses may feel strange for a week. Double vision, pain or sudden loss of sight: take them off and go to an eye clinic the same day.</source>
        <translation>Os óculos podem causar estranheza durante uma semana. Visão dupla, dor ou perda súbita de visão: tire-os e vá a uma clínica de olhos no mesmo dia.</translation>
    </message>
    <message>
        <source>Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Volte dentro de 6 a 12 meses, ou logo que um olho se desvie ou veja pior.</translation>
    </message>
    <message>
        <source>Told to (guardian), by</source>
        <translation>Explicado a (tutor), por</translation>
    </message>
    <message>
        <source>Please help the child to wear them, and to keep them clean and in their case.</source>
        <translation>Por favor, ajude a criança a usá-los, e a guardá-los limpos e no estojo.</translation>
    </message>
    <message>
        <source>Please let the child sit where the board is read easily.</source>
        <translation>Por favor, sente a criança onde se leia bem o quadro.</translation>
    </message>
    <message>
        <source>Tell the guardian at once if an eye turns or hurts, or if the child sees worse.</source>
        <translation>Avise logo o tutor se um olho se desvia ou dói, ou se a criança vê pior.</translation>
    </message>
    <message>
        <source>Your glasses</source>
        <translation>Os seus óculos</translation>
    </message>
    <message>
        <source>Glasses suggested for you</source>
        <translation>Óculos sugeridos para si</translation>
    </message>
    <message>
        <source>Glasses to be made for you</source>
        <translation>Óculos a fazer para si</translation>
    </message>
    <message>
        <source>No glasses needed</source>
        <translation>Não precisa de óculos</translation>
    </message>
    <message>
        <source>Not finished yet</source>
        <translation>Ainda não terminado</translation>
    </message>
    <message>
        <source>Please go to the eye clinic first</source>
        <translation>Por favor, vá primeiro à clínica de olhos</translation>
    </message>
    <message>
        <source>Go to the eye clinic today, and take the letter.</source>
        <translation>Vá hoje à clínica de olhos e leve a carta.</translation>
    </message>
    <message>
        <source>Go to the eye clinic in the next days, and take the letter.</source>
        <translation>Vá à clínica de olhos nos próximos dias e leve a carta.</translation>
    </message>
    <message>
        <source>Go to the eye clinic when it next receives people, and take the letter.</source>
        <translation>Vá à clínica de olhos quando esta voltar a atender e leve a carta.</translation>
    </message>
    <message>
        <source>right lens %1</source>
        <translation>lente direita %1</translation>
    </message>
    <message>
        <source>left lens %1</source>
        <translation>lente esquerda %1</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>armação %1</translation>
    </message>
    <message>
        <source>What you were given</source>
        <translation>O que recebeu</translation>
    </message>
    <message>
        <source>What is suggested</source>
        <translation>O que se sugere</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>ad. %1</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linha</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Armação</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>O que resta</translation>
    </message>
    <message>
        <source>Outside limit: %1.</source>
        <translation>Fora do limite: %1.</translation>
    </message>
    <message>
        <source>Given because</source>
        <translation>Dados porque</translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation>Tenha em atenção</translation>
    </message>
    <message>
        <source>This pair was worn by somebody before.</source>
        <translation>Estes óculos já foram usados por outra pessoa.</translation>
    </message>
    <message>
        <source>You see with one eye: ask for lenses that do not break, and wear eye protection.</source>
        <translation>Vê com um só olho: peça lentes que não se partam e use proteção para os olhos.</translation>
    </message>
    <message>
        <source>New glasses may feel strange for a week. Double vision, pain or sudden loss of sight: stop wearing them and go to an eye clinic the same day.</source>
        <translation>Óculos novos podem causar estranheza durante uma semana. Visão dupla, dor ou perda súbita de visão: deixe de os usar e vá a uma clínica de olhos no mesmo dia.</translation>
    </message>
    <message>
        <source>Wear them as the prescriber told. Come back in 6 to 12 months, or at once if an eye turns or sees worse.</source>
        <translation>Use-os como disse o prescritor. Volte dentro de 6 a 12 meses, ou logo que um olho se desvie ou veja pior.</translation>
    </message>
    <message>
        <source>Come back if your sight changes, and for a new eye test in two years.</source>
        <translation>Volte se a sua vista mudar, e para novo exame da vista dentro de dois anos.</translation>
    </message>
    <message>
        <source>Nothing in the box comes near enough, so glasses are to be made.</source>
        <translation>Nada na caixa se aproxima o suficiente, por isso vão ser feitos óculos.</translation>
    </message>
    <message>
        <source>For the optician</source>
        <translation>Para o ótico</translation>
    </message>
    <message>
        <source>Collect at</source>
        <translation>Levantar em</translation>
    </message>
    <message>
        <source>On or after</source>
        <translation>No dia, ou depois de</translation>
    </message>
    <message>
        <source>Until then: temporary pair. Not for driving.</source>
        <translation>Até lá: óculos provisórios. Não são para conduzir.</translation>
    </message>
    <message>
        <source>Something is missing before glasses can be given:</source>
        <translation>Falta algo antes de se poderem dar óculos:</translation>
    </message>
    <message>
        <source>Come back on</source>
        <translation>Volte em</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Porque</translation>
    </message>
    <message>
        <source>Glasses wait until the clinic has seen your eyes.</source>
        <translation>Os óculos esperam até a clínica ver os seus olhos.</translation>
    </message>
    <message>
        <source>Your prescription</source>
        <translation>A sua prescrição</translation>
    </message>
    <message>
        <source>Your eyes should be measured once more.</source>
        <translation>Os seus olhos devem ser medidos mais uma vez.</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>DIREITO</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>ESQUERDO</translation>
    </message>
    <message>
        <source>NEAR</source>
        <translation>PERTO</translation>
    </message>
    <message>
        <source>DISTANCE</source>
        <translation>LONGE</translation>
    </message>
    <message>
        <source>ARM&apos;S LENGTH</source>
        <translation>DISTÂNCIA DO BRAÇO</translation>
    </message>
    <message>
        <source>BIFOCAL</source>
        <translation>BIFOCAL</translation>
    </message>
    <message>
        <source>centres %1 mm (assumed)</source>
        <translation>centros %1 mm (supostos)</translation>
    </message>
    <message>
        <source>centres %1 mm</source>
        <translation>centros %1 mm</translation>
    </message>
    <message>
        <source>size S</source>
        <translation>tamanho S</translation>
    </message>
    <message>
        <source>size M</source>
        <translation>tamanho M</translation>
    </message>
    <message>
        <source>size L</source>
        <translation>tamanho L</translation>
    </message>
    <message>
        <source>axis set when mounted</source>
        <translation>eixo acertado ao montar</translation>
    </message>
    <message>
        <source>used pair</source>
        <translation>óculos usados</translation>
    </message>
    <message>
        <source>Rules %1, program %2.</source>
        <translation>Regras %1, programa %2.</translation>
    </message>
    <message>
        <source>For near work only.</source>
        <translation>Só para trabalho de perto.</translation>
    </message>
    <message>
        <source>Day and place</source>
        <translation>Dia e lugar</translation>
    </message>
    <message>
        <source>Box %1: %2 pieces</source>
        <translation>Caixa %1: %2 peças</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Divisão</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potência</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Peças</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Embalado</translation>
    </message>
    <message>
        <source>Packed by</source>
        <translation>Embalado por</translation>
    </message>
    <message>
        <source>Counted again by</source>
        <translation>Contado de novo por</translation>
    </message>
    <message>
        <source>Count what lies there. Two persons; what the book says is not asked before the end.</source>
        <translation>Conte o que lá está. Duas pessoas; o que diz o registo não se pergunta antes do fim.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observação</translation>
    </message>
    <message>
        <source>Counted by (initials)</source>
        <translation>Contado por (iniciais)</translation>
    </message>
    <message>
        <source>Second person (initials)</source>
        <translation>Segunda pessoa (iniciais)</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter, take the acuity with it, then compare with the record. Where they differ write: the record does not match the pair.</source>
        <translation>Leia os óculos com o focímetro, tome a acuidade com eles e compare com o anotado. Onde diferirem escreva: o anotado não corresponde aos óculos.</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Inscrição</translation>
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
        <translation>Lido, direito</translation>
    </message>
    <message>
        <source>Read left</source>
        <translation>Lido, esquerdo</translation>
    </message>
    <message>
        <source>Acuity</source>
        <translation>Acuidade</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constatação</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Lido por</translation>
    </message>
    <message>
        <source>no power</source>
        <translation>sem potência</translation>
    </message>
    <message>
        <source>Eye</source>
        <translation>Olho</translation>
    </message>
    <message>
        <source>Addition</source>
        <translation>Adição</translation>
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
        <translation>como escrito</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamanho</translation>
    </message>
    <message>
        <source>Vertex distance, mm</source>
        <translation>Distância ao vértice, mm</translation>
    </message>
    <message>
        <source>Working distance, mm</source>
        <translation>Distância de trabalho, mm</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Prescritor</translation>
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
        <translation>* metade da distância entre os dois olhos, não medida para este olho</translation>
    </message>
    <message>
        <source>Not to be sent before these are measured:</source>
        <translation>Não enviar antes de medir:</translation>
    </message>
    <message>
        <source>Wanted by, signature</source>
        <translation>Pedido por, assinatura</translation>
    </message>
    <message>
        <source>Glasses are being made for you: %1.</source>
        <translation>Estão a ser feitos óculos para si: %1.</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>Encomendado em</translation>
    </message>
    <message>
        <source>Bring this paper. The glasses are measured and tried on you before you take them home.</source>
        <translation>Traga este papel. Os óculos são medidos e provados em si antes de os levar.</translation>
    </message>
    <message>
        <source>If you cannot come, send somebody to tell us. Your sight gets worse, hurts or is suddenly lost: do not wait, go to an eye clinic the same day.</source>
        <translation>Se não puder vir, mande alguém avisar-nos. Se a sua vista piorar, doer ou se perder de repente: não espere, vá a uma clínica de olhos no mesmo dia.</translation>
    </message>
    <message>
        <source>Rules %1, program version %2.</source>
        <translation>Regras %1, versão do programa %2.</translation>
    </message>
    <message>
        <source>balance lens</source>
        <translation>lente de equilíbrio</translation>
    </message>
    <message>
        <source>artificial eye</source>
        <translation>olho artificial</translation>
    </message>
    <message>
        <source>does not see</source>
        <translation>não vê</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>não medido</translation>
    </message>
    <message>
        <source>Note for the person</source>
        <translation>Nota para a pessoa</translation>
    </message>
    <message>
        <source>Label of a line</source>
        <translation>Etiqueta de uma linha</translation>
    </message>
    <message>
        <source>Label of a bin</source>
        <translation>Etiqueta de uma divisão</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Lista de embalagem</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>Folha de contagem</translation>
    </message>
    <message>
        <source>Audit worksheet</source>
        <translation>Folha de auditoria</translation>
    </message>
    <message>
        <source>Order to the laboratory</source>
        <translation>Encomenda ao laboratório</translation>
    </message>
    <message>
        <source>Letter to the eye clinic</source>
        <translation>Carta à clínica de olhos</translation>
    </message>
    <message>
        <source>Glasses to collect</source>
        <translation>Óculos a levantar</translation>
    </message>
    <message>
        <source>Note for the guardian</source>
        <translation>Nota para o tutor</translation>
    </message>
    <message>
        <source>Note for the teacher</source>
        <translation>Nota para o professor</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>Ficha rápida</translation>
    </message>
    <message>
        <source>Audit of hand-overs</source>
        <translation>Auditoria das entregas</translation>
    </message>
    <message>
        <source>Right eye</source>
        <translation>Olho direito</translation>
    </message>
    <message>
        <source>Left eye</source>
        <translation>Olho esquerdo</translation>
    </message>
    <message>
        <source>Distance, as written</source>
        <translation>Longe, como escrito</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>Perto</translation>
    </message>
    <message>
        <source>for near: reading, sewing, telephone</source>
        <translation>para perto: ler, coser, telefone</translation>
    </message>
    <message>
        <source>for work at arm&apos;s length</source>
        <translation>para trabalho à distância do braço</translation>
    </message>
    <message>
        <source>for far (upper part) and near (lower part)</source>
        <translation>para longe (parte de cima) e perto (parte de baixo)</translation>
    </message>
    <message>
        <source>for far: walking, school board, faces</source>
        <translation>para longe: andar, quadro da escola, rostos</translation>
    </message>
    <message>
        <source>For near work only. Not for walking, riding or driving.</source>
        <translation>Só para trabalho de perto. Não são para andar, montar nem conduzir.</translation>
    </message>
    <message>
        <source>For work at arm&apos;s length only. Not for walking, riding or driving.</source>
        <translation>Só para trabalho à distância do braço. Não são para andar, montar nem conduzir.</translation>
    </message>
    <message>
        <source>The lower part is for near: take care on steps and kerbs. Drive only if your sight with these meets the law where you live.</source>
        <translation>A parte de baixo é para perto: cuidado com degraus e passeios. Conduza só se a sua vista com estes óculos cumprir a lei do lugar onde vive.</translation>
    </message>
    <message>
        <source>Drive only if your sight with these meets the law where you live.</source>
        <translation>Conduza só se a sua vista com estes óculos cumprir a lei do lugar onde vive.</translation>
    </message>
    <message>
        <source>Suggested from the prescription of %1 of %2 by rules %3, version %4. This is not an eye examination.</source>
        <translation>Sugerido a partir da prescrição de %1 de %2 pelas regras %3, versão %4. Isto não é um exame dos olhos.</translation>
    </message>
    <message>
        <source>(prescriber not named)</source>
        <translation>(prescritor não indicado)</translation>
    </message>
    <message>
        <source>(no date)</source>
        <translation>(sem data)</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>beyond 95 %</source>
        <translation>além de 95 %</translation>
    </message>
    <message>
        <source>beyond 99.9 %</source>
        <translation>além de 99.9 %</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Avaliadas</translation>
    </message>
    <message>
        <source>At odds</source>
        <translation>Em desacordo</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Proporção</translation>
    </message>
    <message>
        <source>95 % limits</source>
        <translation>Limites de 95 %</translation>
    </message>
    <message>
        <source>Funnel</source>
        <translation>Funil</translation>
    </message>
    <message>
        <source>Share at odds against the number judged; lines: the share of all %1, the limits of chance at 95 % (dashed) and 99.9 % (solid)</source>
        <translation>Proporção em desacordo face ao número avaliado; linhas: a proporção de todas %1, os limites do acaso a 95 % (tracejada) e 99.9 % (contínua)</translation>
    </message>
    <message>
        <source>hand-overs judged</source>
        <translation>entregas avaliadas</translation>
    </message>
    <message>
        <source>Good ones before it</source>
        <translation>Boas antes</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Gráfico</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Sequência</translation>
    </message>
    <message>
        <source>Good hand-overs between two at odds, in their order; centre %1, a run longer than %2 is better than the share says</source>
        <translation>Entregas boas entre duas em desacordo, por ordem; centro %1, uma sequência mais longa do que %2 é melhor do que diz a proporção</translation>
    </message>
    <message>
        <source>runs, the last one still open</source>
        <translation>sequências, a última ainda em aberto</translation>
    </message>
    <message>
        <source>better than the share says</source>
        <translation>melhor do que diz a proporção</translation>
    </message>
    <message>
        <source>open</source>
        <translation>em aberto</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semana de</translation>
    </message>
    <message>
        <source>Share at odds by week; centre %1, limits at three standard deviations, which step with the volume</source>
        <translation>Proporção em desacordo por semana; centro %1, limites a três desvios-padrão, que seguem o volume</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>além</translation>
    </message>
    <message>
        <source>Large lot accepted</source>
        <translation>Lote grande aceite</translation>
    </message>
    <message>
        <source>This lot accepted</source>
        <translation>Este lote aceite</translation>
    </message>
    <message>
        <source>Failing</source>
        <translation>A falhar</translation>
    </message>
    <message>
        <source>How likely a lot is accepted by the share that fails in it: %1 read, at most %2 may fail</source>
        <translation>Probabilidade de aceitar um lote segundo a proporção que nele falha: %1 lidos, podem falhar no máximo %2</translation>
    </message>
    <message>
        <source>failing</source>
        <translation>a falhar</translation>
    </message>
    <message>
        <source>Tell what the glasses are for, what is left, and when to come back; give the note.</source>
        <translation>Diga para que são os óculos, o que resta e quando voltar; dê a nota.</translation>
    </message>
    <message>
        <source>Close the program, then copy the whole folder to a stick at the end of the day.</source>
        <translation>Feche o programa e copie a pasta inteira para uma pen no fim do dia.</translation>
    </message>
    <message>
        <source>Take a sample of pairs, read them, and look for the slip, not for somebody to blame.</source>
        <translation>Tire uma amostra de óculos, leia-os e procure o lapso, não a quem culpar.</translation>
    </message>
    <message>
        <source>Type the camp code and the final prescription as written; signs always.</source>
        <translation>Escreva o código de acampamento e a prescrição final como está escrita; sempre os sinais.</translation>
    </message>
    <message>
        <source>Pain, red eye, sudden loss, flashes, double vision: the clinic first.</source>
        <translation>Dor, olho vermelho, perda súbita, clarões, visão dupla: primeiro a clínica.</translation>
    </message>
    <message>
        <source>Measure the distance between the eyes; for reading the near one.</source>
        <translation>Meça a distância entre os olhos; para ler, a de perto.</translation>
    </message>
    <message>
        <source>Fetch what is suggested from its bin and scan the label.</source>
        <translation>Traga o sugerido da sua divisão e leia o código da etiqueta.</translation>
    </message>
    <message>
        <source>Read the pair with the focimeter: does it hold what the label says?</source>
        <translation>Leia os óculos com o focímetro: são como diz a etiqueta?</translation>
    </message>
    <message>
        <source>Try it on the face; take the acuity of each eye with it.</source>
        <translation>Prove-os no rosto; tome a acuidade de cada olho com eles.</translation>
    </message>
    <message>
        <source>Outside a limit: say no, or write the reason in your own words.</source>
        <translation>Fora de um limite: diga que não, ou escreva o motivo por palavras suas.</translation>
    </message>
    <message>
        <source>Put back what was tried and not taken, each into the bin of its label.</source>
        <translation>Reponha o que foi provado e não levado, cada peça na divisão da sua etiqueta.</translation>
    </message>
    <message>
        <source>Take in a delivery by scanning it; a new lot waits until samples are read.</source>
        <translation>Receba uma remessa lendo-lhe os códigos; um lote novo espera até se lerem amostras.</translation>
    </message>
    <message>
        <source>Print labels for what came; one on each case, one on each bin.</source>
        <translation>Imprima etiquetas para o que chegou; uma em cada estojo, uma em cada divisão.</translation>
    </message>
    <message>
        <source>A pair off its label goes into quarantine, never back into the bin.</source>
        <translation>Óculos diferentes da etiqueta vão para quarentena, nunca de volta à divisão.</translation>
    </message>
    <message>
        <source>Returned pairs are cleaned and read before they are given again.</source>
        <translation>Óculos devolvidos são limpos e lidos antes de serem dados de novo.</translation>
    </message>
    <message>
        <source>Count by two persons on the blind sheet; every difference has a reason.</source>
        <translation>Contem duas pessoas na folha cega; cada diferença tem um motivo.</translation>
    </message>
    <message>
        <source>Send to another site with a list; what arrives is counted there.</source>
        <translation>Envie para outro local com uma lista; o que chega conta-se lá.</translation>
    </message>
    <message>
        <source>Choose the rules with the prescriber, and name them to the team.</source>
        <translation>Escolha as regras com o prescritor, e diga-as à equipa.</translation>
    </message>
    <message>
        <source>Look at what was given outside a limit, and at its reasons, each evening.</source>
        <translation>Veja cada fim de tarde o que se deu fora de um limite, e os motivos.</translation>
    </message>
    <message>
        <source>Every letter to the clinic is counted when its lower part comes back.</source>
        <translation>Cada carta à clínica conta quando volta a parte de baixo.</translation>
    </message>
    <message>
        <source>Every pair that is ordered is followed until it is collected.</source>
        <translation>Cada encomenda de óculos é seguida até ser levantada.</translation>
    </message>
    <message>
        <source>Codes leave the camp, names do not.</source>
        <translation>Os códigos saem do acampamento, os nomes não.</translation>
    </message>
    <message>
        <source>Quick card: at the table</source>
        <translation>Ficha rápida: na mesa</translation>
    </message>
    <message>
        <source>Quick card: keeper of the box</source>
        <translation>Ficha rápida: responsável da caixa</translation>
    </message>
    <message>
        <source>Quick card: supervisor</source>
        <translation>Ficha rápida: supervisor</translation>
    </message>
    <message>
        <source>Told with every pair</source>
        <translation>Diz-se com todos os óculos</translation>
    </message>
    <message>
        <source>A suggestion is not an eye examination. The prescriber and the optician decide.</source>
        <translation>Uma sugestão não é um exame dos olhos. Decidem o prescritor e o ótico.</translation>
    </message>
    <message>
        <source>Says that sight was lost suddenly.</source>
        <translation>Diz que perdeu a visão de repente.</translation>
    </message>
    <message>
        <source>Says that an eye hurts.</source>
        <translation>Diz que lhe dói um olho.</translation>
    </message>
    <message>
        <source>An eye is red.</source>
        <translation>Um olho está vermelho.</translation>
    </message>
    <message>
        <source>Sees new flashes or floaters.</source>
        <translation>Vê clarões ou manchas novos.</translation>
    </message>
    <message>
        <source>Sees double.</source>
        <translation>Vê a dobrar.</translation>
    </message>
    <message>
        <source>A pupil looks white.</source>
        <translation>Uma pupila parece branca.</translation>
    </message>
    <message>
        <source>A child; the eyes do not look the same way.</source>
        <translation>Uma criança; os olhos não olham na mesma direção.</translation>
    </message>
    <message>
        <source>The prescriber asks for a refraction with drops.</source>
        <translation>O prescritor pede uma refração com gotas.</translation>
    </message>
    <message>
        <source>Straight lines look bent or broken.</source>
        <translation>Linhas direitas parecem tortas ou partidas.</translation>
    </message>
    <message>
        <source>A part of the field of view is missing.</source>
        <translation>Falta uma parte do campo visual.</translation>
    </message>
    <message>
        <source>Sees rings round lights.</source>
        <translation>Vê anéis à volta das luzes.</translation>
    </message>
    <message>
        <source>A child who does not reach 6/9 in each eye with the final prescription.</source>
        <translation>Uma criança que não chega a 6/9 em cada olho com a prescrição final.</translation>
    </message>
    <message>
        <source>A child who came with less than 6/60 in an eye.</source>
        <translation>Uma criança que veio com menos de 6/60 num olho.</translation>
    </message>
    <message>
        <source>A child with +3.50 D or more, or a cylinder of 1.50 D or more.</source>
        <translation>Uma criança com +3.50 D ou mais, ou um cilindro de 1.50 D ou mais.</translation>
    </message>
    <message>
        <source>Under 8 years; the eyes differ by 1.50 D or more.</source>
        <translation>Menos de 8 anos; os olhos diferem 1.50 D ou mais.</translation>
    </message>
    <message>
        <source>Less than 6/12 in the better eye with the best prescription found.</source>
        <translation>Menos de 6/12 no melhor olho com a melhor prescrição achada.</translation>
    </message>
    <message>
        <source>A mean sphere beyond 6.00 D.</source>
        <translation>Uma esfera média além de 6.00 D.</translation>
    </message>
    <message>
        <source>A sphere of +8.00 D or more.</source>
        <translation>Uma esfera de +8.00 D ou mais.</translation>
    </message>
    <message>
        <source>What was observed</source>
        <translation>O que se observou</translation>
    </message>
    <message>
        <source>In the person&apos;s words</source>
        <translation>Pelas palavras da pessoa</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>sem óculos</translation>
    </message>
    <message>
        <source>own pair</source>
        <translation>óculos próprios</translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation>estenopeico</translation>
    </message>
    <message>
        <source>best</source>
        <translation>melhor</translation>
    </message>
    <message>
        <source>Please see this person today, and tell us on the part below.</source>
        <translation>Por favor, vejam hoje esta pessoa e respondam-nos na parte de baixo.</translation>
    </message>
    <message>
        <source>Please see this person in the next days, and tell us on the part below.</source>
        <translation>Por favor, vejam esta pessoa nos próximos dias e respondam-nos na parte de baixo.</translation>
    </message>
    <message>
        <source>Please see this person at a usual appointment, and tell us on the part below.</source>
        <translation>Por favor, vejam esta pessoa numa consulta normal e respondam-nos na parte de baixo.</translation>
    </message>
    <message>
        <source>No glasses are given until you have seen the person.</source>
        <translation>Não se dão óculos até terem visto a pessoa.</translation>
    </message>
    <message>
        <source>Glasses were given today: %1</source>
        <translation>Hoje foram dados óculos: %1</translation>
    </message>
    <message>
        <source>No glasses are recorded as given yet.</source>
        <translation>Ainda não estão anotados óculos dados.</translation>
    </message>
    <message>
        <source>Please return this part</source>
        <translation>Por favor, devolvam esta parte</translation>
    </message>
    <message>
        <source>Return to</source>
        <translation>Devolver a</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Visto em</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Feito</translation>
    </message>
    <message>
        <source>Glasses: may be given / wait / other prescription</source>
        <translation>Óculos: podem ser dados / esperar / outra prescrição</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Assinatura</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Idade</translation>
    </message>
    <message>
        <source>Name (write it in only if the person agrees)</source>
        <translation>Nome (escreva-o só se a pessoa concordar)</translation>
    </message>
    <message>
        <source>Prescription found</source>
        <translation>Prescrição achada</translation>
    </message>
    <message>
        <source>What we ask</source>
        <translation>O que pedimos</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ainda nenhuma</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2, %3 (95 % limits %4 to %5)</source>
        <translation>%1 de %2, %3 (limites de 95 % %4 a %5)</translation>
    </message>
    <message>
        <source>Refraction</source>
        <translation>Refração</translation>
    </message>
    <message>
        <source>Dispensing</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fornecedor</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>Seguimento</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Dados anotados</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Local</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regras</translation>
    </message>
    <message>
        <source>Kind of pair</source>
        <translation>Tipo de óculos</translation>
    </message>
    <message>
        <source>Desk (numbers of this report)</source>
        <translation>Mesa (números deste relatório)</translation>
    </message>
    <message>
        <source>By site</source>
        <translation>Por local</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Por semana</translation>
    </message>
    <message>
        <source>By rules</source>
        <translation>Por regras</translation>
    </message>
    <message>
        <source>By purpose</source>
        <translation>Por uso</translation>
    </message>
    <message>
        <source>By kind of pair</source>
        <translation>Por tipo de óculos</translation>
    </message>
    <message>
        <source>By desk</source>
        <translation>Por mesa</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>prontos</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifocais</translation>
    </message>
    <message>
        <source>lenses in a frame</source>
        <translation>lentes numa armação</translation>
    </message>
    <message>
        <source>nobody has looked yet</source>
        <translation>ainda ninguém viu</translation>
    </message>
    <message>
        <source>met</source>
        <translation>coberta</translation>
    </message>
    <message>
        <source>under-met</source>
        <translation>coberta em parte</translation>
    </message>
    <message>
        <source>unmet</source>
        <translation>não coberta</translation>
    </message>
    <message>
        <source>no need</source>
        <translation>sem necessidade</translation>
    </message>
    <message>
        <source>another cause</source>
        <translation>outra causa</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>não se sabe</translation>
    </message>
    <message>
        <source>At odds: by the record, the pair is not one that the rules would call acceptable, or what was measured beside the record speaks against it. This page is about records; a person decides what they mean. Nothing here is a ranking.</source>
        <translation>Em desacordo: segundo o anotado, os óculos não são dos que as regras chamariam aceitáveis, ou o que se mediu ao lado fala contra. Esta página trata do que foi anotado; uma pessoa decide o que significa. Nada aqui é uma classificação.</translation>
    </message>
    <message>
        <source>Hand-overs</source>
        <translation>Entregas</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 de %2 a %3</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Avaliado por</translation>
    </message>
    <message>
        <source>Record and pair at odds</source>
        <translation>Anotado e óculos em desacordo</translation>
    </message>
    <message>
        <source>Entry %1 is not as it was written; only what stands before it was judged.</source>
        <translation>A inscrição %1 não está como foi escrita; só se avaliou o que está antes dela.</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>O que fazer a seguir</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Nada foi encontrado.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>What the records show</source>
        <translation>O que mostram os dados anotados</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Vezes</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Seguinte</translation>
    </message>
    <message>
        <source>Kinds found less often, in the detail: %1</source>
        <translation>Tipos encontrados menos vezes, em pormenor: %1</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Ao longo do tempo</translation>
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
        <translation>gráfico g: metade das sequências entre duas em desacordo são de %1 boas ou menos; uma mais longa do que %2 é melhor do que diz a proporção</translation>
    </message>
    <message>
        <source>Read again at the bench</source>
        <translation>Lidos de novo na bancada</translation>
    </message>
    <message>
        <source>No lot was drawn yet.</source>
        <translation>Ainda não se sorteou nenhum lote.</translation>
    </message>
    <message>
        <source>%1 of %2 hand-overs, at most %3 may fail</source>
        <translation>%1 de %2 entregas, podem falhar no máximo %3</translation>
    </message>
    <message>
        <source>Operating curve</source>
        <translation>Curva característica</translation>
    </message>
    <message>
        <source>no results yet</source>
        <translation>ainda sem resultados</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceite</translation>
    </message>
    <message>
        <source>refused: read every pair of these days</source>
        <translation>recusado: leia todos os óculos destes dias</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Vistos de novo</translation>
    </message>
    <message>
        <source>With the pair when seen</source>
        <translation>Com os óculos quando visto</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>A ver</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>Pessoas</translation>
    </message>
    <message>
        <source>Due now</source>
        <translation>A ver agora</translation>
    </message>
    <message>
        <source>Effective coverage, distance, of %1 who came</source>
        <translation>Cobertura efetiva, longe, de %1 que vieram</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>Cobertura</translation>
    </message>
    <message>
        <source>as they came</source>
        <translation>como vieram</translation>
    </message>
    <message>
        <source>as they are now</source>
        <translation>como estão agora</translation>
    </message>
    <message>
        <source>Met over met, under-met and unmet, better eye, 6/12 (World Health Organization, indicator 3154). It is defined for a sample of a population; here it is of those who came.</source>
        <translation>Coberta sobre coberta, coberta em parte e não coberta, melhor olho, 6/12 (Organização Mundial da Saúde, indicador 3154). Define-se para uma amostra de uma população; aqui é de quem veio.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constatações</translation>
    </message>
    <message>
        <source>In figures</source>
        <translation>Em números</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Lapso mais provável</translation>
    </message>
    <message>
        <source>None to be listed one by one.</source>
        <translation>Nenhuma a listar uma por uma.</translation>
    </message>
    <message>
        <source>%1 more are not listed here; `audit --json` has them all.</source>
        <translation>Mais %1 não estão aqui listadas; `audit --json` tem todas.</translation>
    </message>
    <message>
        <source>A slip is a mistake in a record or in a pick, named by its likelihood and never proved by it.</source>
        <translation>Um lapso é um engano ao anotar ou ao escolher, indicado pela sua probabilidade e nunca provado por ela.</translation>
    </message>
    <message>
        <source>%1 stronger than written: hold things a little nearer</source>
        <translation>%1 mais forte do que o escrito: aproxime um pouco as coisas</translation>
    </message>
    <message>
        <source>%1 weaker than written: hold things a little further away</source>
        <translation>%1 mais fraco do que o escrito: afaste um pouco as coisas</translation>
    </message>
    <message>
        <source>%1 more plus than written: far things are a little less sharp</source>
        <translation>%1 mais plus do que o escrito: as coisas ao longe ficam um pouco menos nítidas</translation>
    </message>
    <message>
        <source>%1 more minus than written: the eye has to focus a little more</source>
        <translation>%1 mais minus do que o escrito: o olho tem de focar um pouco mais</translation>
    </message>
    <message>
        <source>%1 of the cylinder is not in the lens: fine lines are a little less sharp</source>
        <translation>%1 do cilindro não está na lente: as linhas finas ficam um pouco menos nítidas</translation>
    </message>
    <message>
        <source>near part: %1</source>
        <translation>parte de perto: %1</translation>
    </message>
    <message>
        <source>Both eyes</source>
        <translation>Os dois olhos</translation>
    </message>
    <message>
        <source>Things are clear from about %1 cm.</source>
        <translation>As coisas veem-se nítidas a partir de cerca de %1 cm.</translation>
    </message>
    <message>
        <source>Things are clear from about %1 to %2 cm.</source>
        <translation>As coisas veem-se nítidas de cerca de %1 a %2 cm.</translation>
    </message>
    <message>
        <source>The lenses have the power that was written for you.</source>
        <translation>As lentes têm a potência que foi escrita para si.</translation>
    </message>
    <message>
        <source>The middle of the lenses is not quite before the middle of the eyes: the first days may feel odd.</source>
        <translation>O meio das lentes não fica bem à frente do meio dos olhos: os primeiros dias podem parecer estranhos.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AnswerPanel</name>
    <message>
        <source>Needed: %1</source>
        <translation>Precisa: %1</translation>
    </message>
    <message>
        <source>Referral: %1, %2</source>
        <translation>Encaminhamento: %1, %2</translation>
    </message>
    <message>
        <source>Measure again before handing over.</source>
        <translation>Meça de novo antes de entregar.</translation>
    </message>
    <message>
        <source>Purpose shown</source>
        <translation>Uso mostrado</translation>
    </message>
    <message>
        <source>Each purpose is judged alone</source>
        <translation>Cada uso avalia-se à parte</translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>Regras: %1</translation>
    </message>
    <message>
        <source>%1  (rules: %2)</source>
        <translation>%1  (regras: %2)</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCasePanel</name>
    <message>
        <source>Criteria and slips, or the picture of why not</source>
        <translation>Critérios e lapsos, ou a imagem do porque não</translation>
    </message>
    <message>
        <source>Criteria and slips</source>
        <translation>Critérios e lapsos</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Porque não</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>O que mostram as barras</translation>
    </message>
    <message>
        <source>From the better pair to the pair given, or the limits of one of them</source>
        <translation>Dos óculos melhores aos dados, ou os limites de uns deles</translation>
    </message>
    <message>
        <source>From the better pair to the pair given</source>
        <translation>Dos óculos melhores aos dados</translation>
    </message>
    <message>
        <source>Where the cost of the pair given comes from</source>
        <translation>De onde vem o custo dos óculos dados</translation>
    </message>
    <message>
        <source>Limits used up by the pair given</source>
        <translation>Limites gastos pelos óculos dados</translation>
    </message>
    <message>
        <source>Limits used up by the better pair</source>
        <translation>Limites gastos pelos óculos melhores</translation>
    </message>
    <message>
        <source>Choose a hand-over that could be judged: what kept it from its limits stands here.</source>
        <translation>Escolha uma entrega que se pôde avaliar: aqui está o que a afastou dos limites.</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditCharts</name>
    <message>
        <source>Of 100 hand-overs: why not</source>
        <translation>De 100 entregas: porque não</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Guardar o gráfico</translation>
    </message>
    <message>
        <source>Pictures (*.png);;Tables (*.csv)</source>
        <translation>Imagens (*.png);;Tabelas (*.csv)</translation>
    </message>
    <message>
        <source>The chart is %1.</source>
        <translation>O gráfico está em %1.</translation>
    </message>
    <message>
        <source>Saves the chart as a PDF or a picture, or its numbers as a table (Ctrl+Shift+S)</source>
        <translation>Guarda o gráfico como PDF ou imagem, ou os seus números como tabela (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Prints the chart with its numbers on the printer of the settings (Ctrl+P)</source>
        <translation>Imprime o gráfico com os seus números na impressora das definições (Ctrl+P)</translation>
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
        <translation>Auditoria</translation>
    </message>
    <message>
        <source>Every hand-over is judged again by the rules and the stock of its moment.</source>
        <translation>Cada entrega é avaliada de novo pelas regras e pelo stock do seu momento.</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translation>Auditar de novo</translation>
    </message>
    <message>
        <source>Reads the ledger from the first entry to the last (F5)</source>
        <translation>Lê o registo da primeira inscrição à última (F5)</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>O que se mostra</translation>
    </message>
    <message>
        <source>Shows findings of one class only</source>
        <translation>Mostra constatações de uma só classe</translation>
    </message>
    <message>
        <source>Look for a finding</source>
        <translation>Procurar uma constatação</translation>
    </message>
    <message>
        <source>Look for a person, a line, a word</source>
        <translation>Procurar uma pessoa, uma linha, uma palavra</translation>
    </message>
    <message>
        <source>Shows only findings in which these words stand (Ctrl+F)</source>
        <translation>Mostra só constatações com estas palavras (Ctrl+F)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constatações</translation>
    </message>
    <message>
        <source>What is to be said of hand-overs, one by one</source>
        <translation>O que há a dizer das entregas, uma por uma</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Gráficos</translation>
    </message>
    <message>
        <source>How often, by site, week and kind of pair</source>
        <translation>Com que frequência, por local, semana e tipo de óculos</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Bancada</translation>
    </message>
    <message>
        <source>Lots read again, who is to be seen again, the report</source>
        <translation>Lotes lidos de novo, quem há a ver de novo, o relatório</translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation>Constatações da auditoria</translation>
    </message>
    <message>
        <source>Choose a finding to see need, pair and slips beside</source>
        <translation>Escolha uma constatação para ver ao lado necessidade, óculos e lapsos</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Gráfico</translation>
    </message>
    <message>
        <source>Funnel: shares against the size of the group</source>
        <translation>Funil: proporções face ao tamanho do grupo</translation>
    </message>
    <message>
        <source>Runs of good hand-overs (g-chart)</source>
        <translation>Sequências de entregas boas (gráfico g)</translation>
    </message>
    <message>
        <source>Weeks (p-chart)</source>
        <translation>Semanas (gráfico p)</translation>
    </message>
    <message>
        <source>Which picture is drawn</source>
        <translation>Que imagem se desenha</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Grupos</translation>
    </message>
    <message>
        <source>What the groups of the funnel are</source>
        <translation>O que são os grupos do funil</translation>
    </message>
    <message>
        <source>Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. Circle: inside · triangle: beyond the inner limit · diamond: beyond the outer. Nothing is ranked.</source>
        <translation>Contínua: a proporção de todas · tracejada: limite interior, 95 % · ponteada: limite exterior. Círculo: dentro · triângulo: além do limite interior · losango: além do exterior. Nada é classificado.</translation>
    </message>
    <message>
        <source>The numbers of the chart</source>
        <translation>Os números do gráfico</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Os mesmos números da imagem</translation>
    </message>
    <message>
        <source>Why, criterion by criterion:</source>
        <translation>Porquê, critério a critério:</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Óculos dados</translation>
    </message>
    <message>
        <source>How the pair that was given is judged</source>
        <translation>Como se avaliam os óculos dados</translation>
    </message>
    <message>
        <source>Better pair</source>
        <translation>Óculos melhores</translation>
    </message>
    <message>
        <source>How the pair that lay in the box is judged</source>
        <translation>Como se avaliam os óculos que estavam na caixa</translation>
    </message>
    <message>
        <source>Criteria of the pair</source>
        <translation>Critérios dos óculos</translation>
    </message>
    <message>
        <source>Each criterion with its value, its limit and the source of the limit</source>
        <translation>Cada critério com o valor, o limite e a fonte do limite</translation>
    </message>
    <message>
        <source>Slips that the record allows. It speaks of the record; a person decides.</source>
        <translation>Lapsos que o anotado permite. Fala-se do anotado; uma pessoa decide.</translation>
    </message>
    <message>
        <source>Slips and their arithmetic</source>
        <translation>Lapsos e o seu cálculo</translation>
    </message>
    <message>
        <source>Probability of each slip, and how it comes about</source>
        <translation>Probabilidade de cada lapso, e como se obtém</translation>
    </message>
    <message>
        <source>Judging hand-overs again…</source>
        <translation>A avaliar de novo as entregas…</translation>
    </message>
    <message>
        <source>Reading the ledger …</source>
        <translation>A ler o registo …</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written; audit again with F5.</source>
        <translation>Parado. Nada foi escrito; audite de novo com F5.</translation>
    </message>
    <message>
        <source>The audit ended before its time; the reason stands above.</source>
        <translation>A auditoria acabou antes do tempo; o motivo está em cima.</translation>
    </message>
    <message>
        <source>hand-overs %1, judged again %2</source>
        <translation>entregas %1, avaliadas de novo %2</translation>
    </message>
    <message>
        <source>pair and record at odds: %1</source>
        <translation>óculos e anotado em desacordo: %1</translation>
    </message>
    <message>
        <source>findings %1</source>
        <translation>constatações %1</translation>
    </message>
    <message>
        <source>%1 more are counted and not listed</source>
        <translation>mais %1 são contadas e não listadas</translation>
    </message>
    <message>
        <source>The record is whole: %1 entries, each follows the one before.</source>
        <translation>O registo está íntegro: %1 inscrições, cada uma segue a anterior.</translation>
    </message>
    <message>
        <source>Every finding</source>
        <translation>Todas as constatações</translation>
    </message>
    <message>
        <source>by site</source>
        <translation>por local</translation>
    </message>
    <message>
        <source>by who handed over</source>
        <translation>por quem entregou</translation>
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
        <translation>por tipo de óculos</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Direito</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Esquerdo</translation>
    </message>
    <message>
        <source>%1: not judged</source>
        <translation>%1: não avaliado</translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation>%1: precisa de %2</translation>
    </message>
    <message>
        <source>, was given %1</source>
        <translation>, recebeu %1</translation>
    </message>
    <message>
        <source>Pair %1: %2</source>
        <translation>Óculos %1: %2</translation>
    </message>
    <message>
        <source>In the box lay %1 (bin %2): %3</source>
        <translation>Na caixa estava %1 (divisão %2): %3</translation>
    </message>
    <message>
        <source>No slip was looked for: record, pair and witnesses agree.</source>
        <translation>Não se procurou nenhum lapso: anotado, óculos e testemunhos concordam.</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>%1  %2: %3</translation>
    </message>
    <message>
        <source>Below each: prior × witnesses × pair; the probability is its part of the sum.</source>
        <translation>Por baixo de cada um: prévia × testemunhos × óculos; a probabilidade é a sua parte da soma.</translation>
    </message>
    <message>
        <source>Slips of the record cannot be tested here: nothing was measured beside it.</source>
        <translation>Os lapsos no anotado não se podem testar aqui: nada foi medido ao lado.</translation>
    </message>
    <message>
        <source>No finding is chosen</source>
        <translation>Nenhuma constatação escolhida</translation>
    </message>
    <message>
        <source>Choose a finding in the list: what was needed, what was given and what lay in the box stand here.</source>
        <translation>Escolha uma constatação na lista: aqui está o que era preciso, o que se deu e o que estava na caixa.</translation>
    </message>
    <message>
        <source>About the course of events</source>
        <translation>Sobre o curso dos acontecimentos</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>%1, %2, inscrição %3</translation>
    </message>
    <message>
        <source>Need, pair and findings</source>
        <translation>Necessidade, óculos e constatações</translation>
    </message>
    <message>
        <source>What was needed, what was given, what lay in the box; the text can be copied</source>
        <translation>O que era preciso, o que se deu, o que estava na caixa; o texto pode ser copiado</translation>
    </message>
    <message>
        <source>Nothing was handed over in this camp yet, so there is nothing to audit.</source>
        <translation>Ainda nada foi entregue neste acampamento, por isso não há nada a auditar.</translation>
    </message>
    <message>
        <source>Check the record</source>
        <translation>Verificar o registo</translation>
    </message>
    <message>
        <source>Every entry, every text and every count of the ledger against the chain, in the background (F6)</source>
        <translation>Cada inscrição, cada texto e cada número do registo face à cadeia, em segundo plano (F6)</translation>
    </message>
    <message>
        <source>Save the report for the site</source>
        <translation>Guardar o relatório para o local</translation>
    </message>
    <message>
        <source>Checking the record…</source>
        <translation>A verificar o registo…</translation>
    </message>
    <message>
        <source>Checking the record, entry by entry …</source>
        <translation>A verificar o registo, inscrição a inscrição …</translation>
    </message>
    <message>
        <source>The check was stopped before its end.</source>
        <translation>A verificação foi parada antes do fim.</translation>
    </message>
    <message>
        <source>Print the chart</source>
        <translation>Imprimir o gráfico</translation>
    </message>
    <message>
        <source>Save the chart…</source>
        <translation>Guardar o gráfico…</translation>
    </message>
</context>
<context>
    <name>quarterstep::AuditReports</name>
    <message>
        <source>For everybody at the site: text, page for a browser, PDF, table or JSON (Ctrl+S)</source>
        <translation>Para todos no local: texto, página para um navegador, PDF, tabela ou JSON (Ctrl+S)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Prints the page for the site on the printer of the settings</source>
        <translation>Imprime a página para o local na impressora das definições</translation>
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
        <translation>Dados (*.json)</translation>
    </message>
    <message>
        <source>No printer is chosen; choose one in the settings (Ctrl+,), or save a PDF.</source>
        <translation>Nenhuma impressora está escolhida; escolha uma nas definições (Ctrl+,), ou guarde um PDF.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Drawing the pages…</source>
        <translation>A desenhar as páginas…</translation>
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
        <translation>Efeito</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>De quê</translation>
    </message>
</context>
<context>
    <name>quarterstep::BarsView</name>
    <message>
        <source>Bars: why not</source>
        <translation>Barras: porque não</translation>
    </message>
    <message>
        <source>Arrows scroll; the same numbers stand in the table</source>
        <translation>As setas deslocam; os mesmos números estão na tabela</translation>
    </message>
    <message>
        <source>The numbers of the bars</source>
        <translation>Os números das barras</translation>
    </message>
    <message>
        <source>The same numbers as in the picture</source>
        <translation>Os mesmos números da imagem</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Os mesmos números estão na tabela ao lado</translation>
    </message>
    <message>
        <source>Filled: whole · lines rising: adds · lines falling: takes away.</source>
        <translation>Cheio: o total · linhas a subir: soma · linhas a descer: tira.</translation>
    </message>
    <message>
        <source>Dots: inside · filled, with a diamond: outside · dashed: the limit.</source>
        <translation>Pontos: dentro · cheio, com losango: fora · tracejado: o limite.</translation>
    </message>
</context>
<context>
    <name>quarterstep::BenchPanel</name>
    <message>
        <source>Lots read again at the bench</source>
        <translation>Lotes lidos de novo na bancada</translation>
    </message>
    <message>
        <source>Pairs to read:</source>
        <translation>Óculos a ler:</translation>
    </message>
    <message>
        <source>Pairs to read</source>
        <translation>Óculos a ler</translation>
    </message>
    <message>
        <source>How many pairs are drawn; “as few as will do” keeps the risks of a wrong decision small</source>
        <translation>Quantos óculos se sorteiam; «os menos possíveis» mantém pequeno o risco de decidir mal</translation>
    </message>
    <message>
        <source>as few as will do</source>
        <translation>os menos possíveis</translation>
    </message>
    <message>
        <source>Draw a lot…</source>
        <translation>Sortear um lote…</translation>
    </message>
    <message>
        <source>Draws hand-overs by lot, enters the draw and writes the sheet for the bench</source>
        <translation>Sorteia entregas, inscreve o sorteio e escreve a folha para a bancada</translation>
    </message>
    <message>
        <source>Sheet for the bench</source>
        <translation>Folha para a bancada</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabelas (*.csv)</translation>
    </message>
    <message>
        <source>Take in a sheet…</source>
        <translation>Receber uma folha…</translation>
    </message>
    <message>
        <source>Reads a filled-in sheet, judges it and enters results and decision</source>
        <translation>Lê uma folha preenchida, avalia-a e inscreve resultados e decisão</translation>
    </message>
    <message>
        <source>Sheet from the bench</source>
        <translation>Folha da bancada</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Sorteado</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>Óculos</translation>
    </message>
    <message>
        <source>May fail</source>
        <translation>Podem falhar</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisão</translation>
    </message>
    <message>
        <source>Lots drawn in this camp</source>
        <translation>Lotes sorteados neste acampamento</translation>
    </message>
    <message>
        <source>To be seen again</source>
        <translation>A ver de novo</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Dados</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Óculos</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Persons to be seen again</source>
        <translation>Pessoas a ver de novo</translation>
    </message>
    <message>
        <source>Report: no names and no initials; small counts are hidden on the page for the site.</source>
        <translation>Relatório: sem nomes nem iniciais; os números pequenos escondem-se na página para o local.</translation>
    </message>
    <message>
        <source>Page for the site…</source>
        <translation>Página para o local…</translation>
    </message>
    <message>
        <source>In detail…</source>
        <translation>Em pormenor…</translation>
    </message>
    <message>
        <source>Everything, for the supervisor</source>
        <translation>Tudo, para o supervisor</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Relatório</translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation>Páginas (*.html)</translation>
    </message>
    <message>
        <source>Nothing happened in this camp yet.</source>
        <translation>Ainda nada aconteceu neste acampamento.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>ainda não lido</translation>
    </message>
    <message>
        <source>wearers %1</source>
        <translation>usam óculos %1</translation>
    </message>
    <message>
        <source>met %1, of them wearing %2</source>
        <translation>encontrados %1, destes usam óculos %2</translation>
    </message>
    <message>
        <source>effective coverage of those who came %1 %</source>
        <translation>cobertura efetiva de quem veio %1 %</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>em breve</translation>
    </message>
    <message>
        <source>due</source>
        <translation>a ver</translation>
    </message>
    <message>
        <source>late</source>
        <translation>atrasado</translation>
    </message>
    <message>
        <source>Drawn: %1 of %2 hand-overs; the sheet is %3.</source>
        <translation>Sorteado: %1 de %2 entregas; a folha é %3.</translation>
    </message>
    <message>
        <source>Writing the report…</source>
        <translation>A escrever o relatório…</translation>
    </message>
    <message>
        <source>Its sheet…</source>
        <translation>A sua folha…</translation>
    </message>
    <message>
        <source>Writes the sheet of the chosen lot again: to be filled in, or for paper</source>
        <translation>Escreve de novo a folha do lote escolhido: para preencher, ou em papel</translation>
    </message>
    <message>
        <source>No lot was drawn yet; draw one first.</source>
        <translation>Ainda não se sorteou nenhum lote; sorteie um primeiro.</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Paper (*.pdf);;Text (*.txt)</source>
        <translation>Tabelas (*.csv);;Papel (*.pdf);;Texto (*.txt)</translation>
    </message>
</context>
<context>
    <name>quarterstep::BoxModel</name>
    <message>
        <source>unequal eyes</source>
        <translation>olhos desiguais</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nenhum</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 linhas</translation>
    </message>
    <message>
        <source>%1 low</source>
        <translation>%1 baixo</translation>
    </message>
    <message>
        <source>bin %1, %2, available %3</source>
        <translation>divisão %1, %2, disponível %3</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>sem fila</translation>
    </message>
</context>
<context>
    <name>quarterstep::BringInPanel</name>
    <message>
        <source>Choose a file…</source>
        <translation>Escolher um ficheiro…</translation>
    </message>
    <message>
        <source>A table (CSV, TSV), lines of JSON, FHIR, or DICOM files of instruments</source>
        <translation>Uma tabela (CSV, TSV), linhas de JSON, FHIR, ou ficheiros DICOM de instrumentos</translation>
    </message>
    <message>
        <source>Take the clipboard</source>
        <translation>Usar a área de transferência</translation>
    </message>
    <message>
        <source>What was copied in a spreadsheet or another program</source>
        <translation>O que se copiou numa folha de cálculo ou noutro programa</translation>
    </message>
    <message>
        <source>How the table is read</source>
        <translation>Como se lê a tabela</translation>
    </message>
    <message>
        <source>Use a map…</source>
        <translation>Usar um mapa…</translation>
    </message>
    <message>
        <source>A file that says how such a table is read</source>
        <translation>Um ficheiro que diz como se lê uma tabela destas</translation>
    </message>
    <message>
        <source>Save this map…</source>
        <translation>Guardar este mapa…</translation>
    </message>
    <message>
        <source>For the next table of this kind; `quarterstep import --map` takes it, too</source>
        <translation>Para a próxima tabela deste tipo; `quarterstep import --map` também o aceita</translation>
    </message>
    <message>
        <source>What is read: nothing is written yet</source>
        <translation>O que se lê: ainda nada foi escrito</translation>
    </message>
    <message>
        <source>Only rows about which something was found</source>
        <translation>Só linhas com constatações</translation>
    </message>
    <message>
        <source>Leaves out rows that were read without a finding</source>
        <translation>Deixa de fora as linhas lidas sem nenhuma constatação</translation>
    </message>
    <message>
        <source>Rows as they are read</source>
        <translation>Linhas tal como são lidas</translation>
    </message>
    <message>
        <source>Choose a row: what was found about it stands below</source>
        <translation>Escolha uma linha: o que se encontrou nela está em baixo</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constatações</translation>
    </message>
    <message>
        <source>Kind, line and column in the file, what was found, and its code</source>
        <translation>Tipo, linha e coluna no ficheiro, o que se encontrou, e o seu código</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>To the place before; nothing is brought in</source>
        <translation>Ao lugar anterior; nada é trazido</translation>
    </message>
    <message>
        <source>They come to stand in the waiting list</source>
        <translation>Passam a estar na lista de espera</translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation>Trazer</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>uma tabela</translation>
    </message>
    <message>
        <source>lines of JSON</source>
        <translation>linhas de JSON</translation>
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
        <translation>Ainda nada foi escolhido.</translation>
    </message>
    <message>
        <source>Prescriptions to bring in</source>
        <translation>Prescrições a trazer</translation>
    </message>
    <message>
        <source>Prescriptions (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;All files (*)</source>
        <translation>Prescrições (*.csv *.tsv *.txt *.json *.jsonl *.ndjson *.dcm);;Todos os ficheiros (*)</translation>
    </message>
    <message>
        <source>No text is in the clipboard; copy the rows with their headings first.</source>
        <translation>Não há texto na área de transferência; copie primeiro as linhas com os seus títulos.</translation>
    </message>
    <message>
        <source>The clipboard</source>
        <translation>A área de transferência</translation>
    </message>
    <message numerus="yes">
        <source>%n files</source>
        <translation>
            <numerusform>%n ficheiro</numerusform>
            <numerusform>%n ficheiros</numerusform>
        </translation>
    </message>
    <message>
        <source>Use a map</source>
        <translation>Usar um mapa</translation>
    </message>
    <message>
        <source>Maps of tables (*.map);;All files (*)</source>
        <translation>Mapas de tabelas (*.map);;Todos os ficheiros (*)</translation>
    </message>
    <message>
        <source>Save this map</source>
        <translation>Guardar este mapa</translation>
    </message>
    <message>
        <source>Maps of tables (*.map)</source>
        <translation>Mapas de tabelas (*.map)</translation>
    </message>
    <message>
        <source>The map is in %1.</source>
        <translation>O mapa está em %1.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>A ler…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was brought in.</source>
        <translation>Parado. Nada foi trazido.</translation>
    </message>
    <message>
        <source>Bringing in…</source>
        <translation>A trazer…</translation>
    </message>
    <message>
        <source>%1 brought in, %2 left out. They stand in the list and in %3.</source>
        <translation>%1 trazidas, %2 deixadas de fora. Estão na lista e em %3.</translation>
    </message>
    <message>
        <source>It is being read…</source>
        <translation>Está a ser lido…</translation>
    </message>
    <message>
        <source>Choose a file, or copy rows and take the clipboard.</source>
        <translation>Escolha um ficheiro, ou copie linhas e use a área de transferência.</translation>
    </message>
    <message>
        <source>Read as %1: %2 to be brought in, %3 left out</source>
        <translation>Lido como %1: %2 a trazer, %3 deixadas de fora</translation>
    </message>
    <message>
        <source>Bring in %1, leave out %2</source>
        <translation>Trazer %1, deixar de fora %2</translation>
    </message>
    <message>
        <source>Found about row %1 (%2)</source>
        <translation>Encontrado na linha %1 (%2)</translation>
    </message>
    <message>
        <source>Found about the file as a whole</source>
        <translation>Encontrado no ficheiro como um todo</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>Lido como %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::BroughtRowsModel</name>
    <message>
        <source>left out</source>
        <translation>deixada de fora</translation>
    </message>
    <message>
        <source>taken, with a caution</source>
        <translation>aceite, com cautela</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>aceite</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Linha</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
    </message>
    <message>
        <source>Brought in?</source>
        <translation>Trazida?</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Lido como</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>O que se encontrou</translation>
    </message>
</context>
<context>
    <name>quarterstep::CampNotes</name>
    <message>
        <source>It lies here for good</source>
        <translation>Fica aqui de vez</translation>
    </message>
    <message>
        <source>It is a second station</source>
        <translation>É um segundo posto</translation>
    </message>
    <message>
        <source>Know first</source>
        <translation>Saiba primeiro</translation>
    </message>
    <message>
        <source>From now on this folder is written to; the copy it came from is used no more</source>
        <translation>De agora em diante escreve-se nesta pasta; a cópia de onde veio já não se usa</translation>
    </message>
    <message>
        <source>Both folders are used; what is handed over here is brought together with the other later</source>
        <translation>As duas pastas são usadas; o que se entrega aqui é reunido depois com a outra</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Arrumar</translation>
    </message>
    <message>
        <source>These notes do not come back while this camp is open</source>
        <translation>Estas notas não voltam enquanto este acampamento está aberto</translation>
    </message>
    <message numerus="yes">
        <source>Counts in stock.yaml were edited by hand in %n line(s). The ledger&apos;s counts are used until the edits are accepted or discarded in Stock.</source>
        <translation>
            <numerusform>As quantidades de stock.yaml foram editadas à mão em %n linha. Valem as do livro até que as mudanças sejam aceites ou rejeitadas em Estoque.</numerusform>
            <numerusform>As quantidades de stock.yaml foram editadas à mão em %n linhas. Valem as do livro até que as mudanças sejam aceites ou rejeitadas em Estoque.</numerusform>
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
        <translation>em quarentena %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>What</source>
        <translation>O quê</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Mudança</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Em stock</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palavras</translation>
    </message>
</context>
<context>
    <name>quarterstep::ChartModel</name>
    <message>
        <source>inside the limits</source>
        <translation>dentro dos limites</translation>
    </message>
    <message>
        <source>beyond the inner limit</source>
        <translation>além do limite interior</translation>
    </message>
    <message>
        <source>beyond the outer limit</source>
        <translation>além do limite exterior</translation>
    </message>
    <message>
        <source>Group or run</source>
        <translation>Grupo ou sequência</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Números</translation>
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
        <translation>Gráfico da auditoria</translation>
    </message>
    <message>
        <source>The same numbers stand in the table beside it</source>
        <translation>Os mesmos números estão na tabela ao lado</translation>
    </message>
</context>
<context>
    <name>quarterstep::CriteriaModel</name>
    <message>
        <source>%1, right</source>
        <translation>%1, direito</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, esquerdo</translation>
    </message>
    <message>
        <source>Criterion</source>
        <translation>Critério</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidade</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Faixa</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fonte</translation>
    </message>
</context>
<context>
    <name>quarterstep::CrossModel</name>
    <message>
        <source>right, need</source>
        <translation>direito, necessidade</translation>
    </message>
    <message>
        <source>left, need</source>
        <translation>esquerdo, necessidade</translation>
    </message>
    <message>
        <source>right, pair</source>
        <translation>direito, óculos</translation>
    </message>
    <message>
        <source>left, pair</source>
        <translation>esquerdo, óculos</translation>
    </message>
    <message>
        <source>right, left over</source>
        <translation>direito, resto</translation>
    </message>
    <message>
        <source>left, left over</source>
        <translation>esquerdo, resto</translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <translation>%1 ao longo de %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>O quê</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Potência (D)</translation>
    </message>
    <message>
        <source>Higher (D)</source>
        <translation>Maior (D)</translation>
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
        <translation>Cruzes óticas</translation>
    </message>
    <message>
        <source>A picture of need, pair and what is left; the same values stand in the table</source>
        <translation>Uma imagem da necessidade, dos óculos e do que resta; os mesmos valores estão na tabela</translation>
    </message>
    <message>
        <source>Powers in dioptres on the meridians they act in, as the examiner sees the eyes</source>
        <translation>Potências em dioptrias nos meridianos em que atuam, como o examinador vê os olhos</translation>
    </message>
    <message>
        <source>need</source>
        <translation>necessidade</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>óculos</translation>
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
        <translation>Escolher um acampamento</translation>
    </message>
    <message>
        <source>Dispense</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message>
        <source>Starting a camp</source>
        <translation>Começar um acampamento</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Definições</translation>
    </message>
    <message>
        <source>SAMPLE: invented people, nothing here counts</source>
        <translation>EXEMPLO: pessoas inventadas, aqui nada conta</translation>
    </message>
    <message>
        <source>Empties the card</source>
        <translation>Esvazia a ficha</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Nova pessoa</translation>
    </message>
    <message>
        <source>Puts the people of a prescription table into the waiting list</source>
        <translation>Põe as pessoas de uma tabela de prescrições na lista de espera</translation>
    </message>
    <message>
        <source>Load people…</source>
        <translation>Carregar pessoas…</translation>
    </message>
    <message>
        <source>Opens another camp, the sample, or starts one</source>
        <translation>Abre outro acampamento, o de exemplo, ou começa um</translation>
    </message>
    <message>
        <source>Camps…</source>
        <translation>Acampamentos…</translation>
    </message>
    <message>
        <source>Look, language, printer, camp, PINs</source>
        <translation>Aspeto, língua, impressora, acampamento, PIN</translation>
    </message>
    <message>
        <source>The manual, at the page for where you are</source>
        <translation>O manual, na página do lugar onde está</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ajuda</translation>
    </message>
    <message>
        <source>Look of the window</source>
        <translation>Aspeto da janela</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>Claro, escuro ou sol: preto sobre branco e grande, para o exterior</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Escuro</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Who is served, and with what</source>
        <translation>Quem é atendido, e com quê</translation>
    </message>
    <message>
        <source>What lies in the box, and what happened to it</source>
        <translation>O que está na caixa, e o que lhe aconteceu</translation>
    </message>
    <message>
        <source>Every key of the window</source>
        <translation>Todas as teclas da janela</translation>
    </message>
    <message>
        <source>Next look: light, dark, sun</source>
        <translation>Aspeto seguinte: claro, escuro, sol</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>Letras maiores</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>Letras menores</translation>
    </message>
    <message>
        <source>Usual letters</source>
        <translation>Letras normais</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Plano de potências em tabela</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Sair</translation>
    </message>
    <message>
        <source>Quarterstep</source>
        <translation>Quarterstep</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>A ler %1…</translation>
    </message>
    <message>
        <source>%1 was not opened; what was found stands below.</source>
        <translation>%1 não foi aberto; em baixo está o que se encontrou.</translation>
    </message>
    <message>
        <source>The card that was not handed over when the window went is back. Ctrl+N empties it.</source>
        <translation>A ficha não entregue quando a janela se fechou está de volta. Ctrl+N esvazia-a.</translation>
    </message>
    <message>
        <source>Open a camp folder</source>
        <translation>Abrir uma pasta de acampamento</translation>
    </message>
    <message>
        <source>Load people</source>
        <translation>Carregar pessoas</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Tabelas de prescrições (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%n on hand</source>
        <translation>
            <numerusform>%n em stock</numerusform>
            <numerusform>%n em stock</numerusform>
        </translation>
    </message>
    <message>
        <source>No camp is open</source>
        <translation>Nenhum acampamento aberto</translation>
    </message>
    <message>
        <source>SAMPLE: %1: Quarterstep</source>
        <translation>EXEMPLO: %1: Quarterstep</translation>
    </message>
    <message>
        <source>%1: Quarterstep</source>
        <translation>%1: Quarterstep</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Auditoria</translation>
    </message>
    <message>
        <source>Which pairs went wrong, and what slip did it</source>
        <translation>Que óculos correram mal, e por que lapso</translation>
    </message>
    <message>
        <source>Brings prescriptions in from files, instruments or the clipboard, and sends them out</source>
        <translation>Traz prescrições de ficheiros, de instrumentos ou da área de transferência, e envia-as para fora</translation>
    </message>
    <message>
        <source>Bring in…</source>
        <translation>Trazer…</translation>
    </message>
    <message>
        <source>Bringing in and sending out</source>
        <translation>Trazer e enviar</translation>
    </message>
</context>
<context>
    <name>quarterstep::DispensePlace</name>
    <message numerus="yes">
        <source>%1: %n left</source>
        <translation>
            <numerusform>%1: restam %n</numerusform>
            <numerusform>%1: restam %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has %2. %3.</source>
        <translation>%1 tem %2. %3.</translation>
    </message>
    <message>
        <source>Put back if pulled: %1</source>
        <translation>Reponha se tirou: %1</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>devolvido na mesa</translation>
    </message>
    <message>
        <source>People of the table</source>
        <translation>Pessoas da tabela</translation>
    </message>
    <message>
        <source>Choose a person: the card fills and pairs are suggested</source>
        <translation>Escolha uma pessoa: a ficha preenche-se e sugerem-se óculos</translation>
    </message>
    <message>
        <source>Prescription</source>
        <translation>Prescrição</translation>
    </message>
    <message>
        <source>Suggest pairs</source>
        <translation>Sugerir óculos</translation>
    </message>
    <message>
        <source>Searches the stock for this prescription (Enter in any field)</source>
        <translation>Procura no stock para esta prescrição (Enter em qualquer campo)</translation>
    </message>
    <message>
        <source>Pairs to pull</source>
        <translation>Óculos a tirar</translation>
    </message>
    <message>
        <source>Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism</source>
        <translation>Os melhores primeiro: potência em dioptrias, onde os ir buscar, o que deixam em cada olho, prisma</translation>
    </message>
    <message>
        <source>This folder has no people.csv. Type a prescription below, or load a table.</source>
        <translation>Esta pasta não tem people.csv. Escreva uma prescrição em baixo ou carregue uma tabela.</translation>
    </message>
    <message>
        <source>The table has no rows. Type a prescription below.</source>
        <translation>A tabela não tem linhas. Escreva uma prescrição em baixo.</translation>
    </message>
    <message>
        <source>Choose a person or type a prescription; Enter suggests pairs.</source>
        <translation>Escolha uma pessoa ou escreva uma prescrição; Enter sugere óculos.</translation>
    </message>
    <message>
        <source>The pairs to pull will stand here, best first, with their bins.</source>
        <translation>Aqui aparecerão os óculos a tirar, os melhores primeiro, com a sua divisão.</translation>
    </message>
    <message>
        <source>Nothing to pull for this purpose.</source>
        <translation>Nada a tirar para este uso.</translation>
    </message>
    <message>
        <source>No pairs are shown until this is settled.</source>
        <translation>Não se mostram óculos até isto ficar resolvido.</translation>
    </message>
    <message>
        <source>No pair of this stock comes near this need.</source>
        <translation>Nenhuns óculos deste stock se aproximam.</translation>
    </message>
    <message>
        <source>Taken back from %1: %2.</source>
        <translation>Desfeito de %1: %2.</translation>
    </message>
    <message>
        <source>Who is served: people of the table, or custom orders</source>
        <translation>Quem é atendido: pessoas da tabela, ou encomendas por medida</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Pessoas</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linha</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Encomendas</translation>
    </message>
    <message>
        <source>The whole prescription, or the short way for plain readers</source>
        <translation>A prescrição completa, ou a via curta para simples óculos de leitura</translation>
    </message>
    <message>
        <source>Plain reader</source>
        <translation>Leitura simples</translation>
    </message>
    <message>
        <source>%1 stands in the line.</source>
        <translation>%1 está na fila.</translation>
    </message>
    <message>
        <source>%1 is entered as referred.</source>
        <translation>%1 fica inscrito como encaminhado.</translation>
    </message>
    <message>
        <source>A custom order for %1 is entered; it stands under Orders.</source>
        <translation>Inscreveu-se uma encomenda por medida para %1; está em Encomendas.</translation>
    </message>
    <message>
        <source>This stands in the ledger already: %1, %2.</source>
        <translation>Isto já está no registo: %1, %2.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>The laboratory file of %1 is %2.</source>
        <translation>O ficheiro de laboratório de %1 é %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::ExchangePage</name>
    <message>
        <source>What comes in, or what goes out</source>
        <translation>O que entra, ou o que sai</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Trazer</translation>
    </message>
    <message>
        <source>Send out</source>
        <translation>Enviar</translation>
    </message>
    <message>
        <source>Reading what was brought in before…</source>
        <translation>A ler o que foi trazido antes…</translation>
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
        <translation>cautela</translation>
    </message>
    <message>
        <source>error</source>
        <translation>erro</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constatação</translation>
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
        <translation>é provável um lapso</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Pair given</source>
        <translation>Óculos dados</translation>
    </message>
    <message>
        <source>What</source>
        <translation>O quê</translation>
    </message>
    <message>
        <source>In detail</source>
        <translation>Em pormenor</translation>
    </message>
    <message>
        <source>Likeliest slip</source>
        <translation>Lapso mais provável</translation>
    </message>
</context>
<context>
    <name>quarterstep::FocimeterRow</name>
    <message>
        <source>Read, R</source>
        <translation>Lido, D</translation>
    </message>
    <message>
        <source>L</source>
        <translation>E</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it</source>
        <translation>Lente direita como a lê o focímetro</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it</source>
        <translation>Lente esquerda como a lê o focímetro</translation>
    </message>
    <message>
        <source>Right lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Lente direita como a lê o focímetro, dioptrias: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>Left lens as the focimeter reads it, dioptres: -1.25 -0.50 x 90</source>
        <translation>Lente esquerda como a lê o focímetro, dioptrias: -1.25 -0.50 x 90</translation>
    </message>
    <message>
        <source>right lens: %1</source>
        <translation>lente direita: %1</translation>
    </message>
    <message>
        <source>left lens: %1</source>
        <translation>lente esquerda: %1</translation>
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
        <translation>Desfazer</translation>
    </message>
    <message>
        <source>Gives the chosen pair to this person and counts it down (Ctrl+Return)</source>
        <translation>Dá os óculos escolhidos a esta pessoa e desconta-os (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>The power of this very pair was read</source>
        <translation>A potência destes mesmos óculos foi lida</translation>
    </message>
    <message>
        <source>Fit on the face</source>
        <translation>Ajuste no rosto</translation>
    </message>
    <message>
        <source>Sits well at nose and ears, pupils behind the centres</source>
        <translation>Assentam bem no nariz e nas orelhas, pupilas atrás dos centros</translation>
    </message>
    <message>
        <source>Acuity with the pair</source>
        <translation>Acuidade com os óculos</translation>
    </message>
    <message>
        <source>Each eye read the chart with this pair on</source>
        <translation>Cada olho leu a tabela com estes óculos postos</translation>
    </message>
    <message>
        <source>Instructions given</source>
        <translation>Instruções dadas</translation>
    </message>
    <message>
        <source>What it is for, how to care for it, when to come back</source>
        <translation>Para que são, como cuidar deles, quando voltar</translation>
    </message>
    <message>
        <source>With pair, R</source>
        <translation>Com óculos, D</translation>
    </message>
    <message>
        <source>Right eye: acuity with this pair on, for example 6/9</source>
        <translation>Olho direito: acuidade com estes óculos postos, por exemplo 6/9</translation>
    </message>
    <message>
        <source>L</source>
        <translation>E</translation>
    </message>
    <message>
        <source>Left eye: acuity with this pair on, for example 6/9</source>
        <translation>Olho esquerdo: acuidade com estes óculos postos, por exemplo 6/9</translation>
    </message>
    <message>
        <source>near</source>
        <translation>perto</translation>
    </message>
    <message>
        <source>Smallest print read with this pair on, for example N8</source>
        <translation>Letra mais pequena lida com estes óculos postos, por exemplo N8</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Why this pair is given all the same; kept with the entry</source>
        <translation>Porque se dão estes óculos apesar de tudo; guarda-se com a inscrição</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>As suas iniciais</translation>
    </message>
    <message>
        <source>Who hands over; kept with the entry, may stay empty</source>
        <translation>Quem entrega; guarda-se com a inscrição, pode ficar vazio</translation>
    </message>
    <message>
        <source>Hand over, print</source>
        <translation>Entregar, imprimir</translation>
    </message>
    <message>
        <source>Hands over and prints the note (Ctrl+Shift+Return)</source>
        <translation>Entrega e imprime a nota (Ctrl+Shift+Enter)</translation>
    </message>
    <message>
        <source>Takes back what was entered last for this person today (Ctrl+Z)</source>
        <translation>Desfaz o que se inscreveu por último hoje para esta pessoa (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Prints what this person takes home (Ctrl+P)</source>
        <translation>Imprime o que esta pessoa leva para casa (Ctrl+P)</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)</source>
        <translation>Inscreve o encaminhamento e imprime a carta à clínica (Ctrl+Shift+L)</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Encomenda</translation>
    </message>
    <message>
        <source>Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)</source>
        <translation>Inscreve uma encomenda por medida e imprime-a para o laboratório (Ctrl+Shift+O)</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Sem óculos</translation>
    </message>
    <message>
        <source>Enters that this person goes without a pair, and why (Ctrl+Shift+W)</source>
        <translation>Inscreve que esta pessoa fica sem óculos, e porquê (Ctrl+Shift+W)</translation>
    </message>
    <message>
        <source>Power by focimeter</source>
        <translation>Potência com focímetro</translation>
    </message>
    <message>
        <source>Each eye by focimeter</source>
        <translation>Cada olho com focímetro</translation>
    </message>
    <message>
        <source>To what is still missing</source>
        <translation>Ao que ainda falta</translation>
    </message>
    <message>
        <source>Puts the cursor where something is missing for a hand-over</source>
        <translation>Põe o cursor onde falta algo para uma entrega</translation>
    </message>
</context>
<context>
    <name>quarterstep::HelpWindow</name>
    <message>
        <source>Help: Quarterstep</source>
        <translation>Ajuda: Quarterstep</translation>
    </message>
    <message>
        <source>Pages of the manual</source>
        <translation>Páginas do manual</translation>
    </message>
    <message>
        <source>Chooses a page of the manual</source>
        <translation>Escolhe uma página do manual</translation>
    </message>
    <message>
        <source>Text of the page</source>
        <translation>Texto da página</translation>
    </message>
    <message>
        <source>The manual; links lead to other pages</source>
        <translation>O manual; as ligações levam a outras páginas</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
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
        <translation>Todas as teclas da janela</translation>
    </message>
    <message>
        <source>All keys of the window; Escape closes it</source>
        <translation>Todas as teclas da janela; Escape fecha-a</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Em toda a parte</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from field to field; Space presses the button that is framed.</source>
        <translation>Tab e Shift+Tab vão de campo em campo; Espaço carrega no botão emoldurado.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LadderView</name>
    <message>
        <source>Stock ladder</source>
        <translation>Escala do stock</translation>
    </message>
    <message>
        <source>A picture of how many pieces of each power there are; the same numbers stand in the table of lines</source>
        <translation>Uma imagem de quantas peças há de cada potência; os mesmos números estão na tabela das linhas</translation>
    </message>
    <message>
        <source>power (D)</source>
        <translation>potência (D)</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>peças</translation>
    </message>
    <message>
        <source>%1: available %2, kept aside %3, keep at least %4</source>
        <translation>%1: disponível %2, posto de lado %3, manter pelo menos %4</translation>
    </message>
</context>
<context>
    <name>quarterstep::LineModel</name>
    <message>
        <source>none: waits</source>
        <translation>nenhuns: espera</translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation>não está na fila</translation>
    </message>
    <message>
        <source>none left: look before saying it again</source>
        <translation>não resta nenhum: veja antes de o dizer outra vez</translation>
    </message>
    <message>
        <source>with caution</source>
        <translation>com cautela</translation>
    </message>
    <message>
        <source>by hand: %1</source>
        <translation>à mão: %1</translation>
    </message>
    <message>
        <source>promised; %1</source>
        <translation>prometido; %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Gets</source>
        <translation>Recebe</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Porquê</translation>
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
        <translation>Quem recebe que óculos e porquê. Largue uns óculos sobre uma pessoa para os escolher à mão</translation>
    </message>
    <message>
        <source>Reason for a pair picked by hand</source>
        <translation>Motivo de uns óculos escolhidos à mão</translation>
    </message>
    <message>
        <source>Reason, for a pair by hand</source>
        <translation>Motivo, para óculos à mão</translation>
    </message>
    <message>
        <source>Why this person gets another pair than planned; kept with the promise</source>
        <translation>Porque esta pessoa recebe outros óculos que não os planeados; guarda-se com a promessa</translation>
    </message>
    <message>
        <source>All arrive</source>
        <translation>Chegam todos</translation>
    </message>
    <message>
        <source>Everybody of the table who has nothing yet</source>
        <translation>Todos os da tabela que ainda não têm nada</translation>
    </message>
    <message>
        <source>Card arrives</source>
        <translation>Chega a ficha</translation>
    </message>
    <message>
        <source>The person on the card (Ctrl+J)</source>
        <translation>A pessoa da ficha (Ctrl+J)</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Planear de novo</translation>
    </message>
    <message>
        <source>Plans anew, or stops planning</source>
        <translation>Planeia de novo, ou para de planear</translation>
    </message>
    <message>
        <source>Promise</source>
        <translation>Prometer</translation>
    </message>
    <message>
        <source>The person was told: no plan takes it back</source>
        <translation>A pessoa foi informada: nenhum plano o desfaz</translation>
    </message>
    <message>
        <source>Give chosen pair</source>
        <translation>Dar os escolhidos</translation>
    </message>
    <message>
        <source>The pair chosen in the list, by hand and with a reason (Ctrl+G)</source>
        <translation>Os óculos escolhidos na lista, à mão e com um motivo (Ctrl+G)</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Saiu</translation>
    </message>
    <message>
        <source>The person left the line</source>
        <translation>A pessoa deixou a fila</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>A planear …</translation>
    </message>
    <message>
        <source>Nobody waits yet. Let the people of the table stand in line, or the one on the card.</source>
        <translation>Ainda ninguém espera. Ponha na fila as pessoas da tabela, ou a da ficha.</translation>
    </message>
    <message>
        <source>%1 of %2 get a pair; first come, first served would be %3. %4</source>
        <translation>%1 de %2 recebem óculos; por ordem de chegada seriam %3. %4</translation>
    </message>
    <message>
        <source>No plan serves more.</source>
        <translation>Nenhum plano atende mais.</translation>
    </message>
    <message>
        <source>Good, not proved best.</source>
        <translation>Bom, sem prova de ser o melhor.</translation>
    </message>
    <message>
        <source>Unpromise</source>
        <translation>Tirar promessa</translation>
    </message>
    <message>
        <source>Why this pair for %1? Type the reason and press Enter.</source>
        <translation>Porquê estes óculos para %1? Escreva o motivo e prima Enter.</translation>
    </message>
</context>
<context>
    <name>quarterstep::LinesModel</name>
    <message>
        <source>none left</source>
        <translation>esgotado</translation>
    </message>
    <message>
        <source>below least</source>
        <translation>abaixo do mínimo</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>suficiente</translation>
    </message>
    <message>
        <source>above most</source>
        <translation>acima do máximo</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>reservado %1</translation>
    </message>
    <message>
        <source>in quarantine %1</source>
        <translation>em quarentena %1</translation>
    </message>
    <message>
        <source>keep at least %1, at most %2</source>
        <translation>manter pelo menos %1, no máximo %2</translation>
    </message>
    <message numerus="yes">
        <source>reorder %n</source>
        <translation>
            <numerusform>encomendar %n</numerusform>
            <numerusform>encomendar %n</numerusform>
        </translation>
    </message>
    <message>
        <source>lasts %1 camp days as used so far</source>
        <translation>dura %1 dias de acampamento ao ritmo atual</translation>
    </message>
    <message>
        <source>How many camps of 100 people the available pieces last, as used so far</source>
        <translation>Para quantos acampamentos de 100 pessoas chegam as peças disponíveis, ao ritmo atual</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Divisão</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linha</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potência</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Em stock</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponível</translation>
    </message>
    <message>
        <source>Kept aside</source>
        <translation>Posto de lado</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nível</translation>
    </message>
    <message>
        <source>Camps</source>
        <translation>Acampamentos</translation>
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
        <translation>Até onde chegou</translation>
    </message>
    <message>
        <source>Ends this work; nothing is changed by it</source>
        <translation>Termina este trabalho; nada muda com isso</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>A parar…</translation>
    </message>
    <message>
        <source>After this: %1</source>
        <translation>Depois: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::MappedColumnsModel</name>
    <message>
        <source>What this column holds; Enter or a click changes it</source>
        <translation>O que esta coluna contém; Enter ou um clique muda-o</translation>
    </message>
    <message>
        <source>Heading</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Exemplo</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>Tomada por</translation>
    </message>
</context>
<context>
    <name>quarterstep::MeaningDelegate</name>
    <message>
        <source>What the column holds</source>
        <translation>O que a coluna contém</translation>
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
        <translation>Copia o código desta mensagem, para o procurar na ajuda</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
    </message>
    <message>
        <source>Puts this message away</source>
        <translation>Tira esta mensagem</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Feito</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Não feito</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>À espera</translation>
    </message>
</context>
<context>
    <name>quarterstep::OpeningPage</name>
    <message>
        <source>Which camp?</source>
        <translation>Que acampamento?</translation>
    </message>
    <message>
        <source>A camp is a folder: stock.yaml says what exists and how many; the ledger of what was handed over is kept beside it.</source>
        <translation>Um acampamento é uma pasta: stock.yaml diz o que existe e quanto; o registo das entregas fica ao lado.</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation>Dar uma vista de olhos</translation>
    </message>
    <message>
        <source>A sample camp of invented people. What you do there stays in a copy of your own.</source>
        <translation>Um acampamento de exemplo com pessoas inventadas. O que fizer fica numa cópia sua.</translation>
    </message>
    <message>
        <source>Practise a hand-over, 3 minutes</source>
        <translation>Praticar uma entrega, 3 minutos</translation>
    </message>
    <message>
        <source>Opens the sample and tells each step beside the work</source>
        <translation>Abre o exemplo e explica cada passo ao lado do trabalho</translation>
    </message>
    <message>
        <source>Open the sample camp</source>
        <translation>Abrir o acampamento de exemplo</translation>
    </message>
    <message>
        <source>Opens your copy of the sample as you left it</source>
        <translation>Abre a sua cópia do exemplo como a deixou</translation>
    </message>
    <message>
        <source>Begin the sample anew</source>
        <translation>Recomeçar o exemplo</translation>
    </message>
    <message>
        <source>Throws away what was done in your copy of the sample</source>
        <translation>Deita fora o que se fez na sua cópia do exemplo</translation>
    </message>
    <message>
        <source>Start my own camp</source>
        <translation>Começar o meu acampamento</translation>
    </message>
    <message>
        <source>Describe the trays of your box in a few lines; the desk writes the stock file.</source>
        <translation>Descreva os tabuleiros da sua caixa em poucas linhas; o ficheiro de stock é escrito por si.</translation>
    </message>
    <message>
        <source>Describe my trays…</source>
        <translation>Descrever os meus tabuleiros…</translation>
    </message>
    <message>
        <source>A page where you type the trays and see the lines they make</source>
        <translation>Uma página onde escreve os tabuleiros e vê as linhas que resultam</translation>
    </message>
    <message>
        <source>Open a camp</source>
        <translation>Abrir um acampamento</translation>
    </message>
    <message>
        <source>A folder with a stock.yaml, on this laptop or on a stick.</source>
        <translation>Uma pasta com stock.yaml, neste portátil ou numa pen.</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>Escolher uma pasta…</translation>
    </message>
    <message>
        <source>Chooses the folder with stock.yaml</source>
        <translation>Escolhe a pasta com stock.yaml</translation>
    </message>
    <message>
        <source>Back to the open camp</source>
        <translation>Voltar ao acampamento aberto</translation>
    </message>
    <message>
        <source>Leaves everything as it is</source>
        <translation>Deixa tudo como está</translation>
    </message>
    <message>
        <source>What was found, with file, line and column</source>
        <translation>O que se encontrou, com ficheiro, linha e coluna</translation>
    </message>
    <message>
        <source>File, line and column of everything found; can be copied</source>
        <translation>Ficheiro, linha e coluna de tudo o que se encontrou; pode ser copiado</translation>
    </message>
    <message>
        <source>Start a camp in this folder…</source>
        <translation>Começar um acampamento nesta pasta…</translation>
    </message>
    <message>
        <source>Describe the trays; the stock file is written into this folder</source>
        <translation>Descreva os tabuleiros; o ficheiro de stock escreve-se nesta pasta</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 não foi aberto</translation>
    </message>
    <message>
        <source>This folder has no stock.yaml. Choose the folder that has one, or start a camp here.</source>
        <translation>Esta pasta não tem stock.yaml. Escolha a que o tem ou comece aqui um acampamento.</translation>
    </message>
    <message>
        <source>Mend the file at the line and column named, with any text editor, and open the folder again. Nothing was written.</source>
        <translation>Corrija o ficheiro na linha e coluna indicadas, com um editor de texto, e abra de novo a pasta. Nada foi escrito.</translation>
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
            <numerusform>refeito %n vez</numerusform>
            <numerusform>refeito %n vezes</numerusform>
        </translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>encomendado %1</translation>
    </message>
    <message>
        <source>frame held: %1</source>
        <translation>armação reservada: %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
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
        <translation>Encomendado</translation>
    </message>
</context>
<context>
    <name>quarterstep::OrdersPanel</name>
    <message>
        <source>Find an order by the code of the person</source>
        <translation>Procurar uma encomenda pelo código da pessoa</translation>
    </message>
    <message>
        <source>Part of a camp code; empty shows the open orders</source>
        <translation>Parte de um código de acampamento; vazio mostra as encomendas em aberto</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Custom orders</source>
        <translation>Encomendas por medida</translation>
    </message>
    <message>
        <source>Custom orders, newest change first</source>
        <translation>Encomendas por medida, a mudança mais recente primeiro</translation>
    </message>
    <message>
        <source>Reason or note for this step</source>
        <translation>Motivo ou nota para este passo</translation>
    </message>
    <message>
        <source>Kept with the step; making again needs a reason</source>
        <translation>Guarda-se com o passo; refazer pede um motivo</translation>
    </message>
    <message>
        <source>Reason or note</source>
        <translation>Motivo ou nota</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Chegado</translation>
    </message>
    <message>
        <source>It came from the laboratory</source>
        <translation>Chegou do laboratório</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Verificado</translation>
    </message>
    <message>
        <source>Power, axis and centres were read and agree with the order</source>
        <translation>Potência, eixo e centros foram lidos e concordam com a encomenda</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Levantado</translation>
    </message>
    <message>
        <source>The person has it and was checked with it on</source>
        <translation>A pessoa tem-nos e foram verificados postos</translation>
    </message>
    <message>
        <source>Make again</source>
        <translation>Refazer</translation>
    </message>
    <message>
        <source>Back to the laboratory; a reason is needed</source>
        <translation>De volta ao laboratório; é preciso um motivo</translation>
    </message>
    <message>
        <source>Not collected</source>
        <translation>Não levantado</translation>
    </message>
    <message>
        <source>The person did not come for it</source>
        <translation>A pessoa não os veio buscar</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Laboratory file</source>
        <translation>Ficheiro de laboratório</translation>
    </message>
    <message>
        <source>Writes the order as a file for the laboratory into the folder papers</source>
        <translation>Escreve a encomenda como ficheiro para o laboratório na pasta papers</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingDraws</name>
    <message>
        <source>Assumptions, published mix, number of draws and lot (Ctrl+D)</source>
        <translation>Suposições, mistura publicada, número de sorteios e lote (Ctrl+D)</translation>
    </message>
    <message>
        <source>How the draws are made</source>
        <translation>Como se fazem os sorteios</translation>
    </message>
    <message>
        <source>PD as the pair&apos;s centres</source>
        <translation>DP como os centros do par</translation>
    </message>
    <message>
        <source>Where no PD was taken, it equals the centres of each pair</source>
        <translation>Onde não se tirou a DP, ela é igual aos centros de cada par</translation>
    </message>
    <message>
        <source>readings are final</source>
        <translation>leituras são finais</translation>
    </message>
    <message>
        <source>Objective readings are final, and a prescriber is named</source>
        <translation>As leituras objetivas são finais e há um prescritor nomeado</translation>
    </message>
    <message>
        <source>vertex as the stock</source>
        <translation>vértice como o estoque</translation>
    </message>
    <message>
        <source>An unrecorded vertex distance is that of the stock</source>
        <translation>Uma distância ao vértice não anotada é a do estoque</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Suposto</translation>
    </message>
    <message>
        <source>Published mix</source>
        <translation>Mistura publicada</translation>
    </message>
    <message>
        <source>Mixes with the published mix of a camp, weighing as so many people; 0: not at all. By itself 30 where fewer than 100 people were seen</source>
        <translation>Mistura com a composição publicada de um acampamento, que pesa como tantas pessoas; 0: nada. Por si só 30 onde menos de 100 pessoas foram vistas</translation>
    </message>
    <message>
        <source>by who was seen</source>
        <translation>conforme quem foi visto</translation>
    </message>
    <message>
        <source> people</source>
        <translation> pessoas</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Sorteios</translation>
    </message>
    <message>
        <source>Camps that are drawn and planned for, and as many again to check</source>
        <translation>Acampamentos que se sorteiam e planeiam, e outros tantos para verificar</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>The same lot draws the same people again</source>
        <translation>O mesmo lote sorteia de novo as mesmas pessoas</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>recolhido</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>aberto</translation>
    </message>
    <message>
        <source>draws: %1</source>
        <translation>sorteios: %1</translation>
    </message>
    <message>
        <source>lot: %1</source>
        <translation>lote: %1</translation>
    </message>
    <message>
        <source>published mix: %1</source>
        <translation>mistura publicada: %1</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>suposto: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::PackingPanel</name>
    <message>
        <source>Boxes for the next camp</source>
        <translation>Caixas para o próximo acampamento</translation>
    </message>
    <message>
        <source>Plan the boxes</source>
        <translation>Planear as caixas</translation>
    </message>
    <message>
        <source>Plans what to buy; nothing is entered (F5)</source>
        <translation>Planeia o que comprar; nada se inscreve (F5)</translation>
    </message>
    <message>
        <source>Persons served against money</source>
        <translation>Pessoas atendidas segundo o dinheiro</translation>
    </message>
    <message>
        <source>Line: served on the draws planned for · triangle: the knee · diamond: this plan · dotted: no order passes it · upright: the budget.</source>
        <translation>Linha: atendidos nos sorteios do plano · triângulo: o cotovelo · losango: este plano · ponteada: nenhuma encomenda a ultrapassa · vertical: o orçamento.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Escolher…</translation>
    </message>
    <message>
        <source>The list of what a supplier sells (supplier.yaml)</source>
        <translation>A lista do que um fornecedor vende (supplier.yaml)</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Fornecedor</translation>
    </message>
    <message>
        <source>Whom to plan for</source>
        <translation>Para quem planear</translation>
    </message>
    <message>
        <source>People as they were seen: of the ledger, or of a table of prescriptions</source>
        <translation>Pessoas como foram vistas: do registo, ou de uma tabela de prescrições</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>Procura</translation>
    </message>
    <message>
        <source>People who come next</source>
        <translation>Pessoas que virão</translation>
    </message>
    <message>
        <source>How many people come to the next camp</source>
        <translation>Quantas pessoas virão ao próximo acampamento</translation>
    </message>
    <message>
        <source> people</source>
        <translation> pessoas</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Orçamento</translation>
    </message>
    <message>
        <source>Money that may be spent, in the currency of the supplier&apos;s list</source>
        <translation>Dinheiro que se pode gastar, na moeda da lista do fornecedor</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Kilograms of what is bought; 0: not limited</source>
        <translation>Quilogramas do que se compra; 0: sem limite</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source>any weight</source>
        <translation>qualquer peso</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Caixas</translation>
    </message>
    <message>
        <source>Boxes that are carried, what is on hand included; 0: as many as it takes</source>
        <translation>Caixas que se levam, com o que já há em stock; 0: as que forem precisas</translation>
    </message>
    <message>
        <source>any number</source>
        <translation>qualquer número</translation>
    </message>
    <message>
        <source>Pieces in a box</source>
        <translation>Peças por caixa</translation>
    </message>
    <message>
        <source>How many pieces a box holds</source>
        <translation>Quantas peças cabem numa caixa</translation>
    </message>
    <message>
        <source> in each</source>
        <translation> por caixa</translation>
    </message>
    <message>
        <source>What the plan comes to</source>
        <translation>O que resulta do plano</translation>
    </message>
    <message>
        <source>Served, spent, and how sure that is; the text can be copied</source>
        <translation>Atendidos, gasto e com que certeza; o texto pode ser copiado</translation>
    </message>
    <message>
        <source>What is shown of the plan</source>
        <translation>O que se mostra do plano</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Encomenda</translation>
    </message>
    <message>
        <source>Packing list</source>
        <translation>Lista de embalagem</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Verificado</translation>
    </message>
    <message>
        <source>Without a pair</source>
        <translation>Sem óculos</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>Esgota-se</translation>
    </message>
    <message>
        <source>Not bought</source>
        <translation>Não comprado</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>The plan for the boxes</source>
        <translation>O plano das caixas</translation>
    </message>
    <message>
        <source>The plan, row by row</source>
        <translation>O plano, linha a linha</translation>
    </message>
    <message>
        <source>Print packing list</source>
        <translation>Imprimir lista de embalagem</translation>
    </message>
    <message>
        <source>The packing list as a paper (Ctrl+P)</source>
        <translation>A lista de embalagem em papel (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save packing list…</source>
        <translation>Guardar lista de embalagem…</translation>
    </message>
    <message>
        <source>Box by box, as a table (Ctrl+S)</source>
        <translation>Caixa a caixa, como tabela (Ctrl+S)</translation>
    </message>
    <message>
        <source>Save order…</source>
        <translation>Guardar encomenda…</translation>
    </message>
    <message>
        <source>What to order, as a table (Ctrl+Shift+S)</source>
        <translation>O que encomendar, como tabela (Ctrl+Shift+S)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabelas (*.csv)</translation>
    </message>
    <message>
        <source>The order is %1.</source>
        <translation>A encomenda está em %1.</translation>
    </message>
    <message>
        <source>The packing list is %1.</source>
        <translation>A lista de embalagem está em %1.</translation>
    </message>
    <message>
        <source>The ledger of this camp</source>
        <translation>O registo deste acampamento</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>Outra tabela…</translation>
    </message>
    <message>
        <source>List of a supplier</source>
        <translation>Lista de um fornecedor</translation>
    </message>
    <message>
        <source>Suppliers&apos; lists (*.yaml)</source>
        <translation>Listas de fornecedores (*.yaml)</translation>
    </message>
    <message>
        <source>Table of people</source>
        <translation>Tabela de pessoas</translation>
    </message>
    <message>
        <source>Prescription tables (*.csv)</source>
        <translation>Tabelas de prescrições (*.csv)</translation>
    </message>
    <message>
        <source>Choose what can be bought: the list of a supplier.</source>
        <translation>Escolha o que se pode comprar: a lista de um fornecedor.</translation>
    </message>
    <message>
        <source>Planning the boxes…</source>
        <translation>A planear as caixas…</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>nenhuma escolhida</translation>
    </message>
    <message>
        <source>Planning … “Stop” at the top ends it.</source>
        <translation>A planear … «Parar» no cimo termina-o.</translation>
    </message>
    <message>
        <source>Nothing is planned yet.</source>
        <translation>Ainda nada está planeado.</translation>
    </message>
    <message>
        <source>The plan beside is of other figures; plan again (F5).</source>
        <translation>O plano ao lado é de outros números; planeie de novo (F5).</translation>
    </message>
    <message>
        <source>For this money the curve says %1; plan again for the order (F5).</source>
        <translation>Por este dinheiro a curva diz %1; planeie de novo para a encomenda (F5).</translation>
    </message>
    <message>
        <source>On people who were not planned for: %1</source>
        <translation>Em pessoas que não estavam no plano: %1</translation>
    </message>
    <message>
        <source>Not checked: too few people to plan on one half and check on the other.</source>
        <translation>Não verificado: poucas pessoas para planear com uma metade e verificar com a outra.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of the table could not be read and were left out.</source>
        <translation>
            <numerusform>%n linha da tabela não pôde ser lida e ficou de fora.</numerusform>
            <numerusform>%n linhas da tabela não puderam ser lidas e ficaram de fora.</numerusform>
        </translation>
    </message>
    <message>
        <source>What to buy for the next camp so that most people are served: choose supplier, demand and money, then plan (F5). Nothing is entered.</source>
        <translation>O que comprar para o próximo acampamento para atender mais pessoas: escolha fornecedor, procura e dinheiro, depois planeie (F5). Nada se inscreve.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PairsModel</name>
    <message numerus="yes">
        <source>%n here</source>
        <translation>
            <numerusform>%n aqui</numerusform>
            <numerusform>%n aqui</numerusform>
        </translation>
    </message>
    <message>
        <source>Nearest outside the limits</source>
        <translation>O mais próximo fora dos limites</translation>
    </message>
    <message>
        <source>same power: %1</source>
        <translation>mesma potência: %1</translation>
    </message>
    <message>
        <source>Power (D)</source>
        <translation>Potência (D)</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Tirar</translation>
    </message>
    <message>
        <source>Right eye (D)</source>
        <translation>Olho direito (D)</translation>
    </message>
    <message>
        <source>Left eye (D)</source>
        <translation>Olho esquerdo (D)</translation>
    </message>
    <message>
        <source>Prism (Δ)</source>
        <translation>Prisma (Δ)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredito</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>R and L %1 · prism %2</source>
        <translation>D e E %1 · prisma %2</translation>
    </message>
    <message>
        <source>R %1 · L %2 · prism %3</source>
        <translation>D %1 · E %2 · prisma %3</translation>
    </message>
    <message>
        <source> · chance %1</source>
        <translation> · probabilidade %1</translation>
    </message>
    <message>
        <source>Chance within</source>
        <translation>Probabilidade dentro</translation>
    </message>
</context>
<context>
    <name>quarterstep::PaperWorker</name>
    <message>
        <source>%1: sent to %2.</source>
        <translation>%1: enviado para %2.</translation>
    </message>
    <message>
        <source>%1: written to %2.</source>
        <translation>%1: escrito em %2.</translation>
    </message>
</context>
<context>
    <name>quarterstep::PinGuard</name>
    <message>
        <source>This needs the PIN of the optician.</source>
        <translation>Isto precisa do PIN do ótico.</translation>
    </message>
    <message>
        <source>This needs the PIN of the keeper.</source>
        <translation>Isto precisa do PIN do responsável da caixa.</translation>
    </message>
    <message>
        <source>This needs the PIN of the supervisor.</source>
        <translation>Isto precisa do PIN do supervisor.</translation>
    </message>
    <message>
        <source>A PIN is asked for</source>
        <translation>Pede-se um PIN</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>It is good until this place is left, or ten minutes after the last use</source>
        <translation>Vale até se sair deste lugar, ou dez minutos depois do último uso</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Does what was asked for (Enter)</source>
        <translation>Faz o que se pediu (Enter)</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>Não fazer</translation>
    </message>
    <message>
        <source>Nothing is written (Escape)</source>
        <translation>Nada é escrito (Escape)</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlaneModel</name>
    <message>
        <source>need, both eyes</source>
        <translation>necessidade, ambos os olhos</translation>
    </message>
    <message>
        <source>need, right eye</source>
        <translation>necessidade, olho direito</translation>
    </message>
    <message>
        <source>need, left eye</source>
        <translation>necessidade, olho esquerdo</translation>
    </message>
    <message>
        <source>chosen pair, right eye</source>
        <translation>óculos escolhidos, olho direito</translation>
    </message>
    <message>
        <source>chosen pair, left eye</source>
        <translation>óculos escolhidos, olho esquerdo</translation>
    </message>
    <message>
        <source>lenses</source>
        <translation>lentes</translation>
    </message>
    <message>
        <source>ready-made pairs</source>
        <translation>óculos prontos</translation>
    </message>
    <message>
        <source>What</source>
        <translation>O quê</translation>
    </message>
    <message>
        <source>Mean (D)</source>
        <translation>Média (D)</translation>
    </message>
    <message>
        <source>Half cylinder (D)</source>
        <translation>Meio cilindro (D)</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponível</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlanePanel</name>
    <message>
        <source>Table</source>
        <translation>Tabela</translation>
    </message>
    <message>
        <source>Power plane</source>
        <translation>Plano de potências</translation>
    </message>
    <message>
        <source>Shows the same values as a table (Ctrl+T)</source>
        <translation>Mostra os mesmos valores em tabela (Ctrl+T)</translation>
    </message>
    <message>
        <source>Power plane as a table</source>
        <translation>Plano de potências em tabela</translation>
    </message>
    <message>
        <source>Powers in dioptres and how many can be given</source>
        <translation>Potências em dioptrias e quantos se podem dar</translation>
    </message>
    <message>
        <source>R, L: the person&apos;s eyes · disc: pairs · diamond: lenses · cross: none left · dot: ranks · open ring: chosen pair. The larger, the more there are.</source>
        <translation>D, E: os olhos da pessoa · disco: óculos · losango: lentes · cruz: esgotado · ponto: lugares na lista · anel aberto: óculos escolhidos. Quanto maior, mais há.</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Imagem</translation>
    </message>
</context>
<context>
    <name>quarterstep::PlotView</name>
    <message>
        <source>Power plane</source>
        <translation>Plano de potências</translation>
    </message>
    <message>
        <source>A picture of the stock around this person&apos;s eyes; the same values stand in the table</source>
        <translation>Uma imagem do stock à volta dos olhos desta pessoa; os mesmos valores estão na tabela</translation>
    </message>
    <message>
        <source>mean power (D)</source>
        <translation>potência média (D)</translation>
    </message>
    <message>
        <source>half the cylinder (D)</source>
        <translation>meio cilindro (D)</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>serve %1</translation>
    </message>
    <message>
        <source>on trial %1</source>
        <translation>em prova %1</translation>
    </message>
    <message>
        <source>R %1 D</source>
        <translation>D %1 D</translation>
    </message>
    <message>
        <source>L %1 D</source>
        <translation>E %1 D</translation>
    </message>
    <message numerus="yes">
        <source>lenses %1: %n available</source>
        <translation>
            <numerusform>lentes %1: %n disponível</numerusform>
            <numerusform>lentes %1: %n disponíveis</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>pairs %1: %n available</source>
        <translation>
            <numerusform>óculos %1: %n disponível</numerusform>
            <numerusform>óculos %1: %n disponíveis</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::PowerFields</name>
    <message>
        <source>Right eye, sphere</source>
        <translation>Olho direito, esfera</translation>
    </message>
    <message>
        <source>Left eye, sphere</source>
        <translation>Olho esquerdo, esfera</translation>
    </message>
    <message>
        <source>Sphere in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Esfera em dioptrias, com o sinal. Seta acima e abaixo mudam 0.25; Page Up e Page Down, 1.00</translation>
    </message>
    <message>
        <source>Right eye, cylinder</source>
        <translation>Olho direito, cilindro</translation>
    </message>
    <message>
        <source>Left eye, cylinder</source>
        <translation>Olho esquerdo, cilindro</translation>
    </message>
    <message>
        <source>Cylinder in dioptres, with its sign. Up and Down step 0.25, Page Up and Page Down 1.00</source>
        <translation>Cilindro em dioptrias, com o sinal. Seta acima e abaixo mudam 0.25; Page Up e Page Down, 1.00</translation>
    </message>
    <message>
        <source>Right eye, axis</source>
        <translation>Olho direito, eixo</translation>
    </message>
    <message>
        <source>Left eye, axis</source>
        <translation>Olho esquerdo, eixo</translation>
    </message>
    <message>
        <source>Axis in degrees. Up and Down step 1, with Shift 5</source>
        <translation>Eixo em graus. Seta acima e abaixo mudam 1, com Shift 5</translation>
    </message>
</context>
<context>
    <name>quarterstep::PracticeStrip</name>
    <message>
        <source>Next</source>
        <translation>Seguinte</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Sair da prática</translation>
    </message>
    <message>
        <source>Goes on without this step</source>
        <translation>Continua sem este passo</translation>
    </message>
    <message>
        <source>Ends the practice; the sample stays open</source>
        <translation>Termina a prática; o exemplo continua aberto</translation>
    </message>
    <message>
        <source>Somebody sits down. Press Ctrl+N for an empty card, and type the code %1 under Person.</source>
        <translation>Alguém senta-se. Prima Ctrl+N para uma ficha vazia e escreva o código %1 em Pessoa.</translation>
    </message>
    <message>
        <source>Tab to Age: type 30.</source>
        <translation>Tab até Idade: escreva 30.</translation>
    </message>
    <message>
        <source>Right eye: type %1. Tab to the left eye and type the same.</source>
        <translation>Olho direito: escreva %1. Tab para o olho esquerdo e escreva o mesmo.</translation>
    </message>
    <message>
        <source>PD far: type 62. Enter asks for pairs.</source>
        <translation>DP longe: escreva 62. Enter pede óculos.</translation>
    </message>
    <message>
        <source>The best pair stands first, with its bin. You would fetch it, and one neighbour. Tick the four checks once the pair is on the face.</source>
        <translation>Os melhores óculos estão primeiro, com a divisão. Iria buscá-los, com uns vizinhos. Marque as quatro verificações com os óculos postos.</translation>
    </message>
    <message>
        <source>Ctrl+Enter hands it over: the count goes down.</source>
        <translation>Ctrl+Enter entrega: a contagem desce.</translation>
    </message>
    <message>
        <source>A mistake? Ctrl+Z takes the hand-over back the same day. Try it.</source>
        <translation>Um erro? Ctrl+Z desfaz a entrega no mesmo dia. Experimente.</translation>
    </message>
    <message>
        <source>That was all. F1 opens the manual, Shift+F1 shows every key.</source>
        <translation>É tudo. F1 abre o manual, Shift+F1 mostra todas as teclas.</translation>
    </message>
    <message>
        <source>Practice, step %1 of %2</source>
        <translation>Prática, passo %1 de %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Feito</translation>
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
        <translation>Para que são os óculos; se ficar em aberto, decide a prescrição</translation>
    </message>
    <message>
        <source>open</source>
        <translation>em aberto</translation>
    </message>
    <message>
        <source>Right eye, prescription</source>
        <translation>Olho direito, prescrição</translation>
    </message>
    <message>
        <source>Left eye, prescription</source>
        <translation>Olho esquerdo, prescrição</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dor</translation>
    </message>
    <message>
        <source>Sudden loss of sight</source>
        <translation>Perda súbita de visão</translation>
    </message>
    <message>
        <source>Red eye</source>
        <translation>Olho vermelho</translation>
    </message>
    <message>
        <source>New flashes or floaters</source>
        <translation>Clarões ou manchas novos</translation>
    </message>
    <message>
        <source>Double vision</source>
        <translation>Visão dupla</translation>
    </message>
    <message>
        <source>White pupil</source>
        <translation>Pupila branca</translation>
    </message>
    <message>
        <source>Squint</source>
        <translation>Estrabismo</translation>
    </message>
    <message>
        <source>Drops asked for</source>
        <translation>Gotas pedidas</translation>
    </message>
    <message>
        <source>Lines look bent</source>
        <translation>Linhas tortas</translation>
    </message>
    <message>
        <source>Part of the view missing</source>
        <translation>Falta parte do campo</translation>
    </message>
    <message>
        <source>Halos around lights</source>
        <translation>Halos à volta das luzes</translation>
    </message>
    <message>
        <source>Signs seen or told</source>
        <translation>Sinais vistos ou contados</translation>
    </message>
    <message>
        <source>Tick when this was seen or told; it decides about a letter to the clinic</source>
        <translation>Marque quando isto foi visto ou contado; decide sobre uma carta à clínica</translation>
    </message>
    <message>
        <source>%1 is empty; a person, the right and the left eye are needed</source>
        <translation>%1 está vazio; são precisos a pessoa, o olho direito e o esquerdo</translation>
    </message>
    <message>
        <source>Measured besides</source>
        <translation>Medido além disso</translation>
    </message>
    <message>
        <source>Three fields an eye</source>
        <translation>Três campos por olho</translation>
    </message>
    <message>
        <source>Sphere, cylinder and axis in fields of their own (Ctrl+E)</source>
        <translation>Esfera, cilindro e eixo em campos próprios (Ctrl+E)</translation>
    </message>
</context>
<context>
    <name>quarterstep::ReaderCard</name>
    <message>
        <source>Age</source>
        <translation>Idade</translation>
    </message>
    <message>
        <source>Age in years; unknown age is judged by the strictest rules</source>
        <translation>Idade em anos; se não se sabe, avalia-se pelas regras mais estritas</translation>
    </message>
    <message>
        <source>Distance fine?</source>
        <translation>Longe bem?</translation>
    </message>
    <message>
        <source>Does the person see well far away without spectacles? + is yes, - is no</source>
        <translation>A pessoa vê bem ao longe sem óculos? + é sim, - é não</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>não perguntado</translation>
    </message>
    <message>
        <source>yes (+)</source>
        <translation>sim (+)</translation>
    </message>
    <message>
        <source>no (-)</source>
        <translation>não (-)</translation>
    </message>
    <message>
        <source>Near power by trial</source>
        <translation>Potência de perto por prova</translation>
    </message>
    <message>
        <source>Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225</source>
        <translation>Potência com que a pessoa leu melhor, a mesma nos dois olhos, dioptrias: 2.25 ou 225</translation>
    </message>
    <message>
        <source>PD near</source>
        <translation>DP perto</translation>
    </message>
    <message>
        <source>Distance between the pupils looking near, millimetres; without it the worst that is plausible is judged</source>
        <translation>Distância entre as pupilas a olhar ao perto, milímetros; sem ela avalia-se o pior plausível</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
    </message>
    <message>
        <source>Camp code of the person; one is offered, the paper card&apos;s may be typed over it</source>
        <translation>Código de acampamento da pessoa; é oferecido um, pode escrever por cima o da ficha de papel</translation>
    </message>
    <message>
        <source>%1 in each eye</source>
        <translation>%1 em cada olho</translation>
    </message>
    <message>
        <source>Ask first whether the person sees well far away.</source>
        <translation>Pergunte primeiro se a pessoa vê bem ao longe.</translation>
    </message>
    <message>
        <source>Then a reader alone is not enough: refract, and use the full card.</source>
        <translation>Então não bastam óculos de leitura: faça a refração, e use a ficha completa.</translation>
    </message>
    <message>
        <source>Type the near power in quarters of a dioptre: 2.25 or 225.</source>
        <translation>Escreva a potência de perto em quartos de dioptria: 2.25 ou 225.</translation>
    </message>
    <message>
        <source>A hand-over needs a code for the person.</source>
        <translation>Uma entrega precisa de um código da pessoa.</translation>
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
        <translation>Uma norma aberta, ou uma tabela que qualquer programa aceita</translation>
    </message>
    <message>
        <source>HL7 FHIR (JSON, R4 and R5)</source>
        <translation>HL7 FHIR (JSON, R4 e R5)</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>Tabela (CSV)</translation>
    </message>
    <message>
        <source>Lines of JSON</source>
        <translation>Linhas de JSON</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>Quem</translation>
    </message>
    <message>
        <source>Everybody in the list, or the person on the card</source>
        <translation>Todos os da lista, ou a pessoa da ficha</translation>
    </message>
    <message>
        <source>Everybody in the list</source>
        <translation>Todos os da lista</translation>
    </message>
    <message>
        <source>The person on the card</source>
        <translation>A pessoa da ficha</translation>
    </message>
    <message>
        <source>What stays here, or leaves otherwise</source>
        <translation>O que fica aqui, ou sai de outro modo</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>To the place before</source>
        <translation>Ao lugar anterior</translation>
    </message>
    <message>
        <source>Write the file…</source>
        <translation>Escrever o ficheiro…</translation>
    </message>
    <message>
        <source>Asks for a name and writes; symptoms and the guardian stay here</source>
        <translation>Pede um nome e escreve; os sintomas e o tutor ficam aqui</translation>
    </message>
    <message>
        <source>Nobody is there to be sent out.</source>
        <translation>Não há ninguém para enviar.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s), each with the profile, version and hash of the rules of this camp</source>
        <translation>
            <numerusform>%n prescrição, com o perfil, a versão e o código de controlo das regras deste acampamento</numerusform>
            <numerusform>%n prescrições, cada uma com o perfil, a versão e o código de controlo das regras deste acampamento</numerusform>
        </translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Escrever o ficheiro</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>A escrever…</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) are in %1.</source>
        <translation>
            <numerusform>%n prescrição está em %1.</numerusform>
            <numerusform>%n prescrições estão em %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>DICOM (Subjective Refraction)</source>
        <translation>DICOM (refração subjetiva)</translation>
    </message>
    <message>
        <source>Check first, or write; then it stands here.</source>
        <translation>Verifique primeiro, ou escreva; então aparece aqui.</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>Verificar primeiro</translation>
    </message>
    <message>
        <source>Shows what stays here; nothing is written</source>
        <translation>Mostra o que fica aqui; nada é escrito</translation>
    </message>
    <message>
        <source>one file a person, in a folder</source>
        <translation>um arquivo por pessoa, numa pasta</translation>
    </message>
    <message>
        <source>Write the files…</source>
        <translation>Escrever os arquivos…</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>Pasta para os arquivos</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>A verificar…</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Parado. Nada foi escrito.</translation>
    </message>
    <message numerus="yes">
        <source>%n prescription(s) can leave; nothing was written.</source>
        <translation>
            <numerusform>%n prescrição pode sair; nada foi escrito.</numerusform>
            <numerusform>%n prescrições podem sair; nada foi escrito.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>quarterstep::SettingsPage</name>
    <message>
        <source>Optician: hands over, orders</source>
        <translation>Ótico: entrega, encomenda</translation>
    </message>
    <message>
        <source>Keeper: counts, receives, moves stock</source>
        <translation>Responsável: conta, recebe, move</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>Este portátil</translation>
    </message>
    <message>
        <source>Kept for you on this laptop.</source>
        <translation>Guardado para si neste portátil.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspeto</translation>
    </message>
    <message>
        <source>Light, dark, or sun: black on white and large, for outdoors</source>
        <translation>Claro, escuro ou sol: preto sobre branco e grande, para o exterior</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Escuro</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Tamanho das letras</translation>
    </message>
    <message>
        <source>In per cent of the usual; also Ctrl++ and Ctrl+-</source>
        <translation>Em percentagem do normal; também Ctrl++ e Ctrl+-</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Língua</translation>
    </message>
    <message>
        <source>Language of the window, at once</source>
        <translation>Língua da janela, de imediato</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Impressora</translation>
    </message>
    <message>
        <source>Printer for cards and letters of this laptop</source>
        <translation>Impressora deste portátil para fichas e cartas</translation>
    </message>
    <message>
        <source>This camp</source>
        <translation>Este acampamento</translation>
    </message>
    <message>
        <source>Kept in the camp folder, for everybody who opens it.</source>
        <translation>Guardado na pasta do acampamento, para todos os que a abrirem.</translation>
    </message>
    <message>
        <source>Cylinders are written</source>
        <translation>Os cilindros escrevem-se</translation>
    </message>
    <message>
        <source>Form in which pairs and orders show a cylinder; typed prescriptions stay as typed</source>
        <translation>Forma em que óculos e encomendas mostram um cilindro; as prescrições escritas ficam como estão</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>mais</translation>
    </message>
    <message>
        <source>Acuities are shown</source>
        <translation>As acuidades mostram-se</translation>
    </message>
    <message>
        <source>Notation on the card; the record keeps what was typed</source>
        <translation>Notação na ficha; o registo guarda o que foi escrito</translation>
    </message>
    <message>
        <source>as recorded</source>
        <translation>como anotado</translation>
    </message>
    <message>
        <source>decimal</source>
        <translation>decimal</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Avaliado por</translation>
    </message>
    <message>
        <source>Profile of limits for everybody; by itself the desk chooses by age and purpose</source>
        <translation>Perfil de limites para todos; por si a mesa escolhe por idade e uso</translation>
    </message>
    <message>
        <source>PINs</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Função</translation>
    </message>
    <message>
        <source>Whose PIN is set or taken away</source>
        <translation>De quem é o PIN que se define ou tira</translation>
    </message>
    <message>
        <source>PIN that is needed now</source>
        <translation>PIN preciso agora</translation>
    </message>
    <message>
        <source>The supervisor&apos;s PIN when there is one, else the present one of this role</source>
        <translation>O PIN do supervisor quando há um; senão, o atual desta função</translation>
    </message>
    <message>
        <source>New PIN</source>
        <translation>Novo PIN</translation>
    </message>
    <message>
        <source>%1 to %2 characters</source>
        <translation>%1 a %2 caracteres</translation>
    </message>
    <message>
        <source>Take the PIN away</source>
        <translation>Tirar o PIN</translation>
    </message>
    <message>
        <source>This role is asked for no PIN any more</source>
        <translation>Já não se pede nenhum PIN a esta função</translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>Definir o PIN</translation>
    </message>
    <message>
        <source>This role is asked for this PIN from now on</source>
        <translation>A partir de agora pede-se este PIN a esta função</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>como o sistema</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>nenhuma escolhida</translation>
    </message>
    <message>
        <source>%1 (not here now)</source>
        <translation>%1 (agora não está)</translation>
    </message>
    <message>
        <source>chosen by age and purpose</source>
        <translation>escolhido por idade e uso</translation>
    </message>
    <message>
        <source>No role has a PIN.</source>
        <translation>Nenhuma função tem PIN.</translation>
    </message>
    <message>
        <source>With a PIN: %1</source>
        <translation>Com PIN: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The PIN was taken away.</source>
        <translation>O PIN foi tirado.</translation>
    </message>
    <message>
        <source>The PIN was set.</source>
        <translation>O PIN foi definido.</translation>
    </message>
    <message>
        <source>Supervisor: settings of the camp, lots, names, exports, PINs</source>
        <translation>Supervisor: definições do acampamento, lotes, nomes, exportações, PIN</translation>
    </message>
    <message>
        <source>A guard against slips, no lock. Asked for here and at the command line. Kept with the ledger.</source>
        <translation>Uma proteção contra lapsos, não uma fechadura. Pede-se aqui e na linha de comandos. Guarda-se com o registo.</translation>
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
        <translation>Procurar uma linha</translation>
    </message>
    <message>
        <source>Look for a line, a power, a bin</source>
        <translation>Procurar linha, potência, divisão</translation>
    </message>
    <message>
        <source>Shows only lines in which these words stand (Ctrl+F)</source>
        <translation>Mostra só linhas com estas palavras (Ctrl+F)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabela</translation>
    </message>
    <message>
        <source>The lines one below the other</source>
        <translation>As linhas umas por baixo das outras</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>How many pieces of each power</source>
        <translation>Quantas peças de cada potência</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Caixa</translation>
    </message>
    <message>
        <source>The bins as they stand in the box</source>
        <translation>As divisões como estão na caixa</translation>
    </message>
    <message>
        <source>Lines of the stock</source>
        <translation>Linhas do stock</translation>
    </message>
    <message>
        <source>Choose a line to see its card and to enter what happened</source>
        <translation>Escolha uma linha para ver a ficha e inscrever o que aconteceu</translation>
    </message>
    <message>
        <source>Bins of the box</source>
        <translation>Divisões da caixa</translation>
    </message>
    <message>
        <source>Choose a bin: its line is shown beside</source>
        <translation>Escolha uma divisão: a sua linha mostra-se ao lado</translation>
    </message>
    <message>
        <source>Ready-made pairs</source>
        <translation>Óculos prontos</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>Lentes</translation>
    </message>
    <message>
        <source>Bar: available · hatched: kept aside · line across: keep at least this many. A click looks for that power.</source>
        <translation>Barra: disponível · tracejado: posto de lado · risco: manter pelo menos estas. Um clique procura essa potência.</translation>
    </message>
    <message>
        <source>Stock card of the line</source>
        <translation>Ficha da linha</translation>
    </message>
    <message>
        <source>Everything that happened to this line, newest first</source>
        <translation>Tudo o que aconteceu a esta linha, o mais recente primeiro</translation>
    </message>
    <message>
        <source>A count is blind: what the book says comes back into sight once the count is entered.</source>
        <translation>Uma contagem é cega: o que diz o registo volta a ver-se depois de inscrita a contagem.</translation>
    </message>
    <message>
        <source>Counts edited in stock.yaml by hand</source>
        <translation>Números mudados à mão em stock.yaml</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Reason, for taking them over</source>
        <translation>Motivo, para os aceitar</translation>
    </message>
    <message>
        <source>Why the counts in the file are the right ones; kept with the entry</source>
        <translation>Porque os números do ficheiro são os certos; guarda-se com a inscrição</translation>
    </message>
    <message>
        <source>Put the ledger&apos;s counts back</source>
        <translation>Repor os números do registo</translation>
    </message>
    <message>
        <source>The file gets the counts of the ledger again</source>
        <translation>O ficheiro recebe de novo os números do registo</translation>
    </message>
    <message>
        <source>Take the file&apos;s counts over</source>
        <translation>Aceitar os números do ficheiro</translation>
    </message>
    <message>
        <source>The ledger gets an entry with the difference and the reason</source>
        <translation>O registo recebe uma inscrição com a diferença e o motivo</translation>
    </message>
    <message>
        <source>No line is chosen</source>
        <translation>Nenhuma linha escolhida</translation>
    </message>
    <message>
        <source>Choose a line in the table or a bin in the box.</source>
        <translation>Escolha uma linha da tabela ou uma divisão da caixa.</translation>
    </message>
    <message>
        <source>bin %1</source>
        <translation>divisão %1</translation>
    </message>
    <message>
        <source>lines %1</source>
        <translation>linhas %1</translation>
    </message>
    <message>
        <source>none left in %1</source>
        <translation>esgotadas %1</translation>
    </message>
    <message>
        <source>within keep levels %1 of %2</source>
        <translation>no nível %1 de %2</translation>
    </message>
    <message>
        <source>to reorder %1</source>
        <translation>a encomendar %1</translation>
    </message>
    <message>
        <source>handed over %1</source>
        <translation>entregue %1</translation>
    </message>
    <message>
        <source>Nothing matches “%1”; empty the field to see all %2 lines.</source>
        <translation>Nada corresponde a «%1»; esvazie o campo para ver todas as %2 linhas.</translation>
    </message>
    <message>
        <source>%1 of %2 lines</source>
        <translation>%1 de %2 linhas</translation>
    </message>
    <message>
        <source>on hand %1, was %2</source>
        <translation>em stock %1, antes %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>taken back at the desk</source>
        <translation>devolvido na mesa</translation>
    </message>
    <message>
        <source>Taken back: the counts are as before.</source>
        <translation>Desfeito: as contagens estão como antes.</translation>
    </message>
    <message>
        <source>%1: the file says %2, the ledger %3</source>
        <translation>%1: o ficheiro diz %2, o registo %3</translation>
    </message>
    <message>
        <source>Write why the counts in the file are the right ones.</source>
        <translation>Escreva porque os números do ficheiro são os certos.</translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) taken over from the file.</source>
        <translation>
            <numerusform>%n número aceite do ficheiro.</numerusform>
            <numerusform>%n números aceites do ficheiro.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n count(s) put back to the ledger&apos;s.</source>
        <translation>
            <numerusform>%n número reposto pelo do registo.</numerusform>
            <numerusform>%n números repostos pelos do registo.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count the bin that was used most</source>
        <translation>Contar a divisão mais usada</translation>
    </message>
    <message>
        <source>Count it now</source>
        <translation>Contá-la agora</translation>
    </message>
    <message>
        <source>Begins a blind count of this one bin (F8)</source>
        <translation>Começa uma contagem cega só desta divisão (F8)</translation>
    </message>
    <message numerus="yes">
        <source>Bin %1 was reached into %n time(s) since it was counted.</source>
        <translation>
            <numerusform>Tirou-se da divisão %1 %n vez desde que foi contada.</numerusform>
            <numerusform>Tirou-se da divisão %1 %n vezes desde que foi contada.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more bin(s) wait for a count.</source>
        <translation>
            <numerusform>Mais %n divisão espera uma contagem.</numerusform>
            <numerusform>Mais %n divisões esperam uma contagem.</numerusform>
        </translation>
    </message>
    <message>
        <source>Count bin %1: %2. Two persons; what the book says comes afterwards.</source>
        <translation>Conte a divisão %1: %2. Duas pessoas; o que diz o registo vem depois.</translation>
    </message>
    <message>
        <source>Packing</source>
        <translation>Embalagem</translation>
    </message>
    <message>
        <source>What to buy and pack for the next camp</source>
        <translation>O que comprar e embalar para o próximo acampamento</translation>
    </message>
    <message>
        <source>Transfers</source>
        <translation>Transferências</translation>
    </message>
    <message>
        <source>Pieces sent to other sites, and what comes from them</source>
        <translation>Peças enviadas para outros locais, e o que vem deles</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Stock: %1</translation>
    </message>
</context>
<context>
    <name>quarterstep::StockWorkPanel</name>
    <message>
        <source>Enter in the ledger</source>
        <translation>Inscrever no registo</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Desfazer</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>O que aconteceu</translation>
    </message>
    <message>
        <source>What is entered about the chosen line</source>
        <translation>O que se inscreve sobre a linha escolhida</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Recebido</translation>
    </message>
    <message>
        <source>Counted by two</source>
        <translation>Contado por dois</translation>
    </message>
    <message>
        <source>Written off</source>
        <translation>Abatido</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Reservar</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Libertar</translation>
    </message>
    <message>
        <source>Quarantine</source>
        <translation>Quarentena</translation>
    </message>
    <message>
        <source>Release from quarantine</source>
        <translation>Tirar da quarentena</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Why the count changes</source>
        <translation>Porque muda o número</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>não dito</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Peças</translation>
    </message>
    <message>
        <source>How many pieces</source>
        <translation>Quantas peças</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Camp code of the person they are kept for; may stay empty</source>
        <translation>Código de acampamento da pessoa para quem se guardam; pode ficar vazio</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palavras</translation>
    </message>
    <message>
        <source>The reason, or from whom they came; kept with the entry</source>
        <translation>O motivo, ou de quem vieram; guarda-se com a inscrição</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>As suas iniciais</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Quem inscreve isto; fica para a próxima inscrição</translation>
    </message>
    <message>
        <source>Second initials</source>
        <translation>Segundas iniciais</translation>
    </message>
    <message>
        <source>The other person who counted; stays for the next entry</source>
        <translation>A outra pessoa que contou; fica para a próxima inscrição</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Desfaz a última inscrição deste lugar (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Writes it into the ledger (Enter in a field)</source>
        <translation>Escreve-o no registo (Enter num campo)</translation>
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
        <translation>Inscrever sobre %1</translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation>Escolha uma linha</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>Escolha primeiro uma linha.</translation>
    </message>
    <message>
        <source>Write the number of pieces in digits.</source>
        <translation>Escreva o número de peças em algarismos.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>Com 0 peças nada acontece.</translation>
    </message>
    <message>
        <source>A count needs the initials of two persons.</source>
        <translation>Uma contagem pede as iniciais de duas pessoas.</translation>
    </message>
    <message>
        <source>Two different persons count.</source>
        <translation>Contam duas pessoas diferentes.</translation>
    </message>
    <message>
        <source>Choose the cause.</source>
        <translation>Escolha a causa.</translation>
    </message>
</context>
<context>
    <name>quarterstep::TableReading</name>
    <message>
        <source>Found: decimal %1; cylinders: %2 minus, %3 plus, %4 without a sign; %5 spheres without a sign</source>
        <translation>Encontrado: decimal %1; cilindros: %2 negativos, %3 positivos, %4 sem sinal; %5 esferas sem sinal</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>vírgula</translation>
    </message>
    <message>
        <source>point</source>
        <translation>ponto</translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation>Entre colunas</translation>
    </message>
    <message>
        <source>What stands between two cells</source>
        <translation>O que está entre duas células</translation>
    </message>
    <message>
        <source>comma ,</source>
        <translation>vírgula ,</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <translation>ponto e vírgula ;</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulação</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barra |</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Sinal decimal</translation>
    </message>
    <message>
        <source>When one is chosen, a number with the other one is refused</source>
        <translation>Quando se escolhe um, recusa-se um número com o outro</translation>
    </message>
    <message>
        <source>point or comma</source>
        <translation>ponto ou vírgula</translation>
    </message>
    <message>
        <source>refuse the row</source>
        <translation>recusar a linha</translation>
    </message>
    <message>
        <source>are plus</source>
        <translation>são positivos</translation>
    </message>
    <message>
        <source>are minus</source>
        <translation>são negativos</translation>
    </message>
    <message>
        <source>Spheres without a sign</source>
        <translation>Esferas sem sinal</translation>
    </message>
    <message>
        <source>Ask whoever made the table before you choose</source>
        <translation>Pergunte a quem fez a tabela antes de escolher</translation>
    </message>
    <message>
        <source>Cylinders without a sign</source>
        <translation>Cilindros sem sinal</translation>
    </message>
    <message>
        <source>Columns of the table</source>
        <translation>Colunas da tabela</translation>
    </message>
    <message>
        <source>What each column is taken for; Enter, F2 or a click changes it</source>
        <translation>Por que se toma cada coluna; Enter, F2 ou um clique muda-o</translation>
    </message>
</context>
<context>
    <name>quarterstep::TransferPanel</name>
    <message>
        <source>In the air</source>
        <translation>A caminho</translation>
    </message>
    <message>
        <source>Transfers in the air</source>
        <translation>Transferências a caminho</translation>
    </message>
    <message>
        <source>What was sent and not yet taken in; Enter takes the chosen one in</source>
        <translation>O que foi enviado e ainda não recebido; Enter recebe a escolhida</translation>
    </message>
    <message>
        <source>Take in as sent</source>
        <translation>Receber como enviado</translation>
    </message>
    <message>
        <source>Fills the list beside with what was sent, to be counted and entered</source>
        <translation>Enche a lista ao lado com o que foi enviado, para contar e inscrever</translation>
    </message>
    <message>
        <source>Send or take in</source>
        <translation>Enviar ou receber</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>O que acontece</translation>
    </message>
    <message>
        <source>Whether pieces leave this site or come to it</source>
        <translation>Se as peças saem deste local ou chegam a ele</translation>
    </message>
    <message>
        <source>Send to another site</source>
        <translation>Enviar para outro local</translation>
    </message>
    <message>
        <source>Take in from another site</source>
        <translation>Receber de outro local</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>The other site, as it is called in its stock.yaml</source>
        <translation>O outro local, como se chama no seu stock.yaml</translation>
    </message>
    <message>
        <source>Lines of this transfer</source>
        <translation>Linhas desta transferência</translation>
    </message>
    <message>
        <source>What goes or comes; choose a row to change its number</source>
        <translation>O que sai ou chega; escolha uma linha da lista para mudar o número</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Kept with the entry</source>
        <translation>Guarda-se com a inscrição</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>As suas iniciais</translation>
    </message>
    <message>
        <source>Who enters this; stays for the next entry</source>
        <translation>Quem inscreve isto; fica para a próxima inscrição</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linha</translation>
    </message>
    <message>
        <source>Line, typed or scanned</source>
        <translation>Linha, escrita ou lida por código</translation>
    </message>
    <message>
        <source>Name of a line, or the digits of its label; Enter goes on to the pieces</source>
        <translation>Nome de uma linha, ou os algarismos da etiqueta; Enter passa às peças</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Peças</translation>
    </message>
    <message>
        <source>How many pieces; 0 takes the line out of the list</source>
        <translation>Quantas peças; 0 tira a linha da lista</translation>
    </message>
    <message>
        <source>Into the list</source>
        <translation>Para a lista</translation>
    </message>
    <message>
        <source>Puts line and pieces into the list (Enter in the pieces)</source>
        <translation>Põe linha e peças na lista (Enter nas peças)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Desfazer</translation>
    </message>
    <message>
        <source>Takes the last entry of this place back (Ctrl+Z)</source>
        <translation>Desfaz a última inscrição deste lugar (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation>Esvaziar a lista</translation>
    </message>
    <message>
        <source>Begins anew; nothing is entered (Ctrl+E)</source>
        <translation>Começa de novo; nada se inscreve (Ctrl+E)</translation>
    </message>
    <message>
        <source>Enter in the ledger</source>
        <translation>Inscrever no registo</translation>
    </message>
    <message>
        <source>Writes the list into the ledger (Ctrl+Enter)</source>
        <translation>Escreve a lista no registo (Ctrl+Enter)</translation>
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
        <translation>Linhas</translation>
    </message>
    <message>
        <source>Nothing was sent that is not yet taken in, as far as this ledger knows.</source>
        <translation>Nada foi enviado que ainda não tenha sido recebido, segundo este registo.</translation>
    </message>
    <message numerus="yes">
        <source>%n sent and not taken in</source>
        <translation>
            <numerusform>%n enviada e não recebida</numerusform>
            <numerusform>%n enviadas e não recebidas</numerusform>
        </translation>
    </message>
    <message>
        <source>to this site %1</source>
        <translation>para este local %1</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Divisão</translation>
    </message>
    <message>
        <source>Available</source>
        <translation>Disponível</translation>
    </message>
    <message>
        <source>%1: bin %2, available %3</source>
        <translation>%1: divisão %2, disponível %3</translation>
    </message>
    <message>
        <source>Put lines and pieces into the list first.</source>
        <translation>Ponha primeiro linhas e peças na lista.</translation>
    </message>
    <message>
        <source>Nothing happens with 0 pieces.</source>
        <translation>Com 0 peças nada acontece.</translation>
    </message>
    <message>
        <source>Name the other site.</source>
        <translation>Indique o outro local.</translation>
    </message>
    <message numerus="yes">
        <source>Sent to %1: %n piece(s)</source>
        <translation>
            <numerusform>Enviado para %1: %n peça</numerusform>
            <numerusform>Enviado para %1: %n peças</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken in from %1: %n piece(s)</source>
        <translation>
            <numerusform>Recebido de %1: %n peça</numerusform>
            <numerusform>Recebido de %1: %n peças</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on hand %2, was %3</source>
        <translation>%1 em stock %2, antes %3</translation>
    </message>
</context>
<context>
    <name>quarterstep::TrayPage</name>
    <message>
        <source>Start my own camp</source>
        <translation>Começar o meu acampamento</translation>
    </message>
    <message>
        <source>Name of the camp or box</source>
        <translation>Nome do acampamento ou da caixa</translation>
    </message>
    <message>
        <source>Stands on every paper and at the top of the window</source>
        <translation>Está em cada papel e no cimo da janela</translation>
    </message>
    <message>
        <source>The trays, one a line: powers, a colon, how many in each bin</source>
        <translation>Os tabuleiros, um por linha: potências, dois pontos, quantos por divisão</translation>
    </message>
    <message>
        <source>The trays</source>
        <translation>Os tabuleiros</translation>
    </message>
    <message>
        <source>Powers in dioptres with their sign, from … to … by a step; then a colon and the count. After the count: centres in mm, bin, round lens size in mm</source>
        <translation>Potências em dioptrias com o sinal, de … a … (to) por um passo (by); depois dois pontos e o número. Depois do número: centros em mm (centres), divisão (bin), tamanho de lente redonda em mm (round)</translation>
    </message>
    <message>
        <source>Folder it goes into</source>
        <translation>Pasta de destino</translation>
    </message>
    <message>
        <source>Made when it is missing; a stock.yaml that is there is never overwritten</source>
        <translation>Cria-se se faltar; um stock.yaml que já lá está nunca é reescrito</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Escolher a pasta…</translation>
    </message>
    <message>
        <source>Looks for a folder on this laptop</source>
        <translation>Procura uma pasta neste portátil</translation>
    </message>
    <message>
        <source>Add readers</source>
        <translation>Juntar óculos de leitura</translation>
    </message>
    <message>
        <source>Add distance pairs</source>
        <translation>Juntar óculos de longe</translation>
    </message>
    <message>
        <source>Add lenses and frames</source>
        <translation>Juntar lentes e armações</translation>
    </message>
    <message>
        <source>Writes an example below the trays, to be changed</source>
        <translation>Escreve um exemplo por baixo dos tabuleiros, para mudar</translation>
    </message>
    <message>
        <source>The stock it makes</source>
        <translation>O stock que resulta</translation>
    </message>
    <message>
        <source>Bin, line, power in dioptres and count of every line</source>
        <translation>Divisão, linha, potência em dioptrias e número de cada linha</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>Leaves this page; what is typed stays while the window is open</source>
        <translation>Sai desta página; o que se escreveu fica enquanto a janela estiver aberta</translation>
    </message>
    <message>
        <source>Make this camp</source>
        <translation>Criar este acampamento</translation>
    </message>
    <message>
        <source>Writes stock.yaml into the folder and opens it</source>
        <translation>Escreve stock.yaml na pasta e abre-a</translation>
    </message>
    <message>
        <source>my camp</source>
        <translation>o meu acampamento</translation>
    </message>
    <message>
        <source>Folder for the new camp</source>
        <translation>Pasta do novo acampamento</translation>
    </message>
    <message>
        <source>Line %1, character %2: %3</source>
        <translation>Linha %1, carácter %2: %3</translation>
    </message>
    <message>
        <source>The camp has no name yet.</source>
        <translation>O acampamento ainda não tem nome.</translation>
    </message>
    <message>
        <source>%1 lines, %2 pieces</source>
        <translation>%1 linhas, %2 peças</translation>
    </message>
    <message>
        <source>Nothing is typed yet. The buttons under the trays write examples to change.</source>
        <translation>Ainda não há nada. Os botões por baixo escrevem exemplos para mudar.</translation>
    </message>
</context>
<context>
    <name>quarterstep::WaitingModel</name>
    <message>
        <source>row %1</source>
        <translation>linha %1</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>ilegível</translation>
    </message>
    <message>
        <source>given %1</source>
        <translation>entregue %1</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>espera</translation>
    </message>
    <message>
        <source>Right %1</source>
        <translation>Direito %1</translation>
    </message>
    <message>
        <source>Left %1</source>
        <translation>Esquerdo %1</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Pessoa</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Idade</translation>
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
        <translation>Nítido a partir de %1 cm.</translation>
    </message>
    <message>
        <source>Clear from %1 to %2 cm.</source>
        <translation>Nítido de %1 a %2 cm.</translation>
    </message>
    <message>
        <source>Why this pair</source>
        <translation>Porquê estes óculos</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Cruz</translation>
    </message>
    <message>
        <source>Above another</source>
        <translation>Acima de outros</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabela</translation>
    </message>
    <message>
        <source>Shows the same values as a table</source>
        <translation>Mostra os mesmos valores em tabela</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Imagem</translation>
    </message>
    <message>
        <source>Why: criteria of the chosen pair</source>
        <translation>Porquê: critérios dos óculos escolhidos</translation>
    </message>
    <message>
        <source>Measured values and limits, each with its unit and source</source>
        <translation>Valores medidos e limites, cada um com a unidade e a fonte</translation>
    </message>
    <message>
        <source>Optical crosses as a table</source>
        <translation>Cruzes óticas em tabela</translation>
    </message>
    <message>
        <source>Powers in dioptres along their meridians, degrees</source>
        <translation>Potências em dioptrias ao longo dos meridianos, graus</translation>
    </message>
    <message>
        <source>The chosen pair and</source>
        <translation>Os óculos escolhidos e</translation>
    </message>
    <message>
        <source>Pair to compare with</source>
        <translation>Óculos com que comparar</translation>
    </message>
    <message>
        <source>The other pair of the list that the chosen one is compared with</source>
        <translation>Os outros óculos da lista com que se comparam os escolhidos</translation>
    </message>
    <message>
        <source>Choose a pair: why it stands above or below another is said here.</source>
        <translation>Escolha uns óculos: aqui diz-se porque estão acima ou abaixo de outros.</translation>
    </message>
    <message>
        <source>There is no other pair to compare with.</source>
        <translation>Não há outros óculos com que comparar.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Porquê</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>À frente</translation>
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
        <translation>cautela</translation>
    </message>
    <message>
        <source>error</source>
        <translation>erro</translation>
    </message>
    <message>
        <source>from stock</source>
        <translation>do stock</translation>
    </message>
    <message>
        <source>custom order</source>
        <translation>encomenda por medida</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>não são precisos</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incompleto</translation>
    </message>
    <message>
        <source>refer</source>
        <translation>encaminhar</translation>
    </message>
    <message>
        <source>no referral</source>
        <translation>sem encaminhamento</translation>
    </message>
    <message>
        <source>with a referral letter</source>
        <translation>com carta de encaminhamento</translation>
    </message>
    <message>
        <source>refer before any glasses</source>
        <translation>encaminhar antes de dar óculos</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>em breve</translation>
    </message>
    <message>
        <source>same day</source>
        <translation>mesmo dia</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>não indicado</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>longe</translation>
    </message>
    <message>
        <source>near</source>
        <translation>perto</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>intermédia</translation>
    </message>
    <message>
        <source>bifocal</source>
        <translation>bifocais</translation>
    </message>
    <message>
        <source>distance and near</source>
        <translation>longe e perto</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>serve</translation>
    </message>
    <message>
        <source>fits with caution</source>
        <translation>serve com cautela</translation>
    </message>
    <message>
        <source>on trial</source>
        <translation>em prova</translation>
    </message>
    <message>
        <source>outside limit</source>
        <translation>fora do limite</translation>
    </message>
    <message>
        <source>shown only</source>
        <translation>só mostrado</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>não medido</translation>
    </message>
    <message>
        <source>ready-made</source>
        <translation>prontos</translation>
    </message>
    <message>
        <source>lens</source>
        <translation>lente</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>armação</translation>
    </message>
    <message>
        <source>other</source>
        <translation>outro</translation>
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
        <translation>sem divisão</translation>
    </message>
    <message>
        <source>%1 bin %2</source>
        <translation>%1 divisão %2</translation>
    </message>
    <message>
        <source>RIGHT %1 bin %2</source>
        <translation>DIREITO %1 divisão %2</translation>
    </message>
    <message>
        <source>LEFT %1 bin %2</source>
        <translation>ESQUERDO %1 divisão %2</translation>
    </message>
    <message>
        <source>frame %1 bin %2</source>
        <translation>armação %1 divisão %2</translation>
    </message>
    <message>
        <source>right eye</source>
        <translation>olho direito</translation>
    </message>
    <message>
        <source>left eye</source>
        <translation>olho esquerdo</translation>
    </message>
</context>
</TS>
