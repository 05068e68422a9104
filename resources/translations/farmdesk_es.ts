<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AskLine</name>
    <message>
        <source>Enter writes it; Esc goes back</source>
        <translation>Intro lo escribe; Esc vuelve</translation>
    </message>
</context>
<context>
    <name>Balance</name>
    <message>
        <source>Mill: {of}. {pieces} kg.</source>
        <translation>Beneficio: {of}. {pieces} kg.</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>Mill</source>
        <translation>Beneficio</translation>
    </message>
</context>
<context>
    <name>BeginPage</name>
    <message>
        <source>1: {area}, drawn to scale</source>
        <translation>1: {area}, dibujada a escala</translation>
    </message>
    <message>
        <source>A farm of your own</source>
        <translation>Una finca propia</translation>
    </message>
    <message>
        <source>All of it is kept in one file in {folder}, and copied each time the program closes.</source>
        <translation>Todo se guarda en un archivo en {folder}, y se copia cada vez que el programa se cierra.</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>First bed</source>
        <translation>Primera cama</translation>
    </message>
    <message>
        <source>One file</source>
        <translation>Un archivo</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zona horaria</translation>
    </message>
    <message>
        <source>What is not known now can come later, or never.</source>
        <translation>Lo que no se sabe ahora puede venir después, o nunca.</translation>
    </message>
    <message>
        <source>begins</source>
        <translation>empieza</translation>
    </message>
    <message>
        <source>first bed: width</source>
        <translation>primera cama: ancho</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>salir</translation>
    </message>
    <message>
        <source>length</source>
        <translation>largo</translation>
    </message>
    <message>
        <source>name of the farm</source>
        <translation>nombre de la finca</translation>
    </message>
    <message>
        <source>next box, the last one begins</source>
        <translation>casilla siguiente, la última empieza</translation>
    </message>
    <message>
        <source>no zone is called so; type a part of a large town’s name</source>
        <translation>ninguna zona se llama así; escriba parte del nombre de una ciudad grande</translation>
    </message>
    <message>
        <source>none yet; beds can be added under Farm, registers</source>
        <translation>ninguna todavía; las camas se agregan en Finca, registros</translation>
    </message>
    <message>
        <source>or {zones}</source>
        <translation>o {zones}</translation>
    </message>
    <message>
        <source>season, two figures</source>
        <translation>temporada, dos cifras</translation>
    </message>
    <message>
        <source>time zone: part of its name</source>
        <translation>zona horaria: parte de su nombre</translation>
    </message>
    <message>
        <source>{zone}, where it is {hour} now</source>
        <translation>{zone}, donde ahora son las {hour}</translation>
    </message>
</context>
<context>
    <name>BlocksPane</name>
    <message>
        <source>All blocks</source>
        <translation>Todas las parcelas</translation>
    </message>
    <message>
        <source>Block {code}</source>
        <translation>Parcela {code}</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Parcelas</translation>
    </message>
    <message>
        <source>Boundary</source>
        <translation>Lindero</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>in {n} {n:block|blocks}</source>
        <translation>en {n} {n:parcela|parcelas}</translation>
    </message>
    <message>
        <source>it holds</source>
        <translation>encierra</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>árboles</translation>
    </message>
    <message>
        <source>trees on a hectare</source>
        <translation>árboles por hectárea</translation>
    </message>
</context>
<context>
    <name>Box</name>
    <message>
        <source>not meas.</source>
        <translation>no med.</translation>
    </message>
</context>
<context>
    <name>CareActs</name>
    <message>
        <source>Into which folder? It must be new or empty.</source>
        <translation>¿En qué carpeta? Tiene que ser nueva o estar vacía.</translation>
    </message>
    <message>
        <source>No stick is found. Put it in, or type a folder on another disk.</source>
        <translation>No se encuentra ninguna memoria. Conéctela, o escriba una carpeta en otro disco.</translation>
    </message>
    <message>
        <source>Set-up and stock go into a new season. Which two figures does it carry?</source>
        <translation>La finca y las existencias pasan a una temporada nueva. ¿Qué dos cifras lleva?</translation>
    </message>
    <message>
        <source>Stopped. What was written so far lies in {folder}: {tables} {tables:table|tables}, {rows} {rows:row|rows}, {sheets} {sheets:sheet|sheets}.</source>
        <translation>Detenido. Lo escrito hasta aquí está en {folder}: {tables} {tables:tabla|tablas}, {rows} {rows:fila|filas}, {sheets} {sheets:hoja|hojas}.</translation>
    </message>
    <message>
        <source>The file is whole, and as it was written.</source>
        <translation>El archivo está entero y tal como se escribió.</translation>
    </message>
    <message>
        <source>The first fault: {fault} ({more})</source>
        <translation>La primera falla: {fault} ({more})</translation>
    </message>
    <message>
        <source>The practice season is not carried over.</source>
        <translation>La temporada de práctica no pasa a otra.</translation>
    </message>
    <message>
        <source>There is no copy yet; one is made each time the program closes.</source>
        <translation>Todavía no hay copia; se hace una cada vez que se cierra el programa.</translation>
    </message>
    <message>
        <source>Where is the copy to lie instead?</source>
        <translation>¿Dónde debe quedar la copia entonces?</translation>
    </message>
    <message>
        <source>Where is the copy to lie? This disk was found.</source>
        <translation>¿Dónde debe quedar la copia? Se encontró este disco.</translation>
    </message>
    <message>
        <source>carrying over</source>
        <translation>pasando a la temporada nueva</translation>
    </message>
    <message>
        <source>copying, opening and comparing</source>
        <translation>copiando, abriendo y comparando</translation>
    </message>
    <message>
        <source>faults in all: {n}</source>
        <translation>fallas en total: {n}</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>abriendo</translation>
    </message>
    <message>
        <source>opening and counting</source>
        <translation>abriendo y contando</translation>
    </message>
    <message>
        <source>reading every row</source>
        <translation>leyendo cada fila</translation>
    </message>
    <message>
        <source>{n} of {all} rows and sheets; Esc stops</source>
        <translation>{n} de {all} filas y hojas; Esc detiene</translation>
    </message>
    <message>
        <source>{tables} {tables:table|tables} with {rows} {rows:row|rows}, season.json and {sheets} lot {sheets:sheet|sheets} lie in {folder}.</source>
        <translation>En {folder} quedan {tables} {tables:tabla|tablas} con {rows} {rows:fila|filas}, season.json y {sheets} {sheets:hoja de lote|hojas de lote}.</translation>
    </message>
    <message>
        <source>{text} Its last row was written {last}. The folder it was tried in is gone again.</source>
        <translation>{text} Su última fila se escribió el {last}. La carpeta de la prueba ya se borró.</translation>
    </message>
</context>
<context>
    <name>CarePage</name>
    <message>
        <source>Care of the data</source>
        <translation>Cuidado de los datos</translation>
    </message>
    <message>
        <source>Copies on this computer</source>
        <translation>Copias en esta computadora</translation>
    </message>
    <message>
        <source>Done just now</source>
        <translation>Hecho ahora mismo</translation>
    </message>
    <message>
        <source>Enter opens one to be read</source>
        <translation>Entrar abre una para leerla</translation>
    </message>
    <message>
        <source>In the practice season nothing can be lost.</source>
        <translation>En la temporada de práctica no se puede perder nada.</translation>
    </message>
    <message>
        <source>None yet; one is made each time the program closes.</source>
        <translation>Ninguna todavía; se hace una cada vez que se cierra el programa.</translation>
    </message>
    <message>
        <source>Other seasons here</source>
        <translation>Otras temporadas aquí</translation>
    </message>
    <message>
        <source>Seasons on this computer</source>
        <translation>Temporadas en esta computadora</translation>
    </message>
    <message>
        <source>The last copy on a stick was made {at}, {n} {n:day|days} ago.</source>
        <translation>La última copia en una memoria se hizo el {at}, hace {n} {n:día|días}.</translation>
    </message>
    <message>
        <source>The last copy on a stick was made {at}.</source>
        <translation>La última copia en una memoria se hizo el {at}.</translation>
    </message>
    <message>
        <source>The season file</source>
        <translation>El archivo de la temporada</translation>
    </message>
    <message>
        <source>There is no copy on a stick yet.</source>
        <translation>Todavía no hay copia en una memoria.</translation>
    </message>
    <message>
        <source>carry over</source>
        <translation>pasar a otra temporada</translation>
    </message>
    <message>
        <source>copy to the stick</source>
        <translation>copiar a la memoria</translation>
    </message>
    <message>
        <source>everything out</source>
        <translation>sacar todo</translation>
    </message>
    <message>
        <source>farm</source>
        <translation>finca</translation>
    </message>
    <message>
        <source>kept as</source>
        <translation>se guarda como</translation>
    </message>
    <message>
        <source>last written</source>
        <translation>último escrito</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hecha</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>one of the last 14</source>
        <translation>una de las últimas 14</translation>
    </message>
    <message>
        <source>past seasons</source>
        <translation>temporadas pasadas</translation>
    </message>
    <message>
        <source>season</source>
        <translation>temporada</translation>
    </message>
    <message>
        <source>size</source>
        <translation>tamaño</translation>
    </message>
    <message>
        <source>the last 14, and the last of each month</source>
        <translation>las últimas 14, y la última de cada mes</translation>
    </message>
    <message>
        <source>the month’s last</source>
        <translation>la última del mes</translation>
    </message>
    <message>
        <source>try a restore</source>
        <translation>probar una copia</translation>
    </message>
    <message>
        <source>verify</source>
        <translation>verificar</translation>
    </message>
    <message>
        <source>{name}, season {season}</source>
        <translation>{name}, temporada {season}</translation>
    </message>
    <message>
        <source>{rows} {rows:row|rows}, {lots} {lots:lot|lots}, {size}</source>
        <translation>{rows} {rows:renglón|renglones}, {lots} {lots:lote|lotes}, {size}</translation>
    </message>
</context>
<context>
    <name>Chart</name>
    <message>
        <source>There is nothing to draw yet.</source>
        <translation>Todavía no hay nada que dibujar.</translation>
    </message>
    <message>
        <source>{sentence} As a table.</source>
        <translation>{sentence} En tabla.</translation>
    </message>
</context>
<context>
    <name>ChecksPane</name>
    <message>
        <source>An instrument by its code or number; right: 1 yes, 2 no; without a day it was just now.</source>
        <translation>El instrumento por su código o número; bien: 1 sí, 2 no; sin día, fue ahora mismo.</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Revisiones</translation>
    </message>
    <message>
        <source>Trusted from–to</source>
        <translation>Fiable desde–hasta</translation>
    </message>
    <message>
        <source>at</source>
        <translation>a las</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>held against</source>
        <translation>comparado con</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>right</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>too high by</source>
        <translation>marca de más</translation>
    </message>
    <message>
        <source>written: {n}</source>
        <translation>escritas: {n}</translation>
    </message>
</context>
<context>
    <name>Clocks</name>
    <message>
        <source>Nothing is in a vessel.</source>
        <translation>No hay nada en las pilas.</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>The page Picking fills vessels: v.</source>
        <translation>La página Corte llena pilas y barriles: v.</translation>
    </message>
    <message>
        <source>look again by</source>
        <translation>volver a mirar antes de</translation>
    </message>
    <message>
        <source>look again by {time}</source>
        <translation>volver a mirar antes de {time}</translation>
    </message>
    <message>
        <source>method</source>
        <translation>método</translation>
    </message>
    <message>
        <source>since</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>listo</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>por hacer</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>latest</source>
        <translation>lo más tarde</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>from {time}</source>
        <translation>desde {time}</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation>desde {time}</translation>
    </message>
    <message>
        <source>pH not measured</source>
        <translation>pH no medido</translation>
    </message>
</context>
<context>
    <name>CodeBox</name>
    <message>
        <source>Code of one more lot; Enter adds it, minus takes the last away</source>
        <translation>Código de otro lote; Intro lo agrega, el menos quita el último</translation>
    </message>
    <message>
        <source>one more code, Enter; − takes the last away</source>
        <translation>otro código, Intro; − quita el último</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>More than {n} lines tell nothing apart.</source>
        <translation>Más de {n} líneas no se distinguen.</translation>
    </message>
    <message>
        <source>No lot has begun.</source>
        <translation>Ningún lote ha empezado.</translation>
    </message>
    <message>
        <source>Over one another</source>
        <translation>Uno sobre otro</translation>
    </message>
    <message>
        <source>dates</source>
        <translation>fechas</translation>
    </message>
    <message>
        <source>days since spread</source>
        <translation>días desde que se tendió</translation>
    </message>
    <message>
        <source>ferments</source>
        <translation>fermentos</translation>
    </message>
    <message>
        <source>good hours</source>
        <translation>horas buenas</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>figura</translation>
    </message>
    <message>
        <source>table</source>
        <translation>tabla</translation>
    </message>
    <message>
        <source>the lot</source>
        <translation>el lote</translation>
    </message>
</context>
<context>
    <name>Conclusions</name>
    <message>
        <source>To lay over it</source>
        <translation>Para poner encima</translation>
    </message>
    <message>
        <source>What may be concluded</source>
        <translation>Qué puede concluirse</translation>
    </message>
    <message>
        <source>block {blocks}</source>
        <translation>parcela {blocks}</translation>
    </message>
    <message>
        <source>↓ {n} more</source>
        <translation>↓ {n} más</translation>
    </message>
</context>
<context>
    <name>CorrectionsPane</name>
    <message>
        <source>A meter that reads 0.8 points too high counts −0.8. Readings before the first instant stay; raw values stay.</source>
        <translation>Un medidor que marca 0.8 puntos de más cuenta −0.8. Las lecturas anteriores al primer instante quedan; los valores crudos quedan.</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Correcciones</translation>
    </message>
    <message>
        <source>Last reading, old → new; so many readings change.</source>
        <translation>Última lectura, antes → ahora; tantas lecturas cambian.</translation>
    </message>
    <message>
        <source>Lots it moves</source>
        <translation>Lotes que mueve</translation>
    </message>
    <message>
        <source>While a correction is typed, the lots whose moisture changes stand here, old → new.</source>
        <translation>Mientras se escribe una corrección, los lotes cuya humedad cambia están aquí, antes → ahora.</translation>
    </message>
    <message>
        <source>and {n} more</source>
        <translation>y {n} más</translation>
    </message>
    <message>
        <source>at</source>
        <translation>a las</translation>
    </message>
    <message>
        <source>counts more</source>
        <translation>cuenta más</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>in force: {n}</source>
        <translation>vigentes: {n}</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>written {at}</source>
        <translation>escrita {at}</translation>
    </message>
</context>
<context>
    <name>CountView</name>
    <message>
        <source>Count at least 50 fruits; 100 is usual.</source>
        <translation>Contar al menos 50 frutos; lo usual es 100.</translation>
    </message>
    <message>
        <source>Counted before</source>
        <translation>Contado antes</translation>
    </message>
    <message>
        <source>Fewer than 50 fruits say little; count more.</source>
        <translation>Menos de 50 frutos dicen poco; contar más.</translation>
    </message>
    <message>
        <source>Fruits by class, in the order of the tray; half-day 1 morning, 2 afternoon. An empty box is none.</source>
        <translation>Frutos por clase, en el orden de la bandeja; media jornada 1 mañana, 2 tarde. Casilla vacía es ninguno.</translation>
    </message>
    <message>
        <source>Green above the limit of {limit} %, even at the low end of its range.</source>
        <translation>Verde sobre el límite de {limit} %, aun en lo bajo de su rango.</translation>
    </message>
    <message>
        <source>Green within the limit of {limit} % by its low end.</source>
        <translation>Verde dentro del límite de {limit} % por lo bajo de su rango.</translation>
    </message>
    <message>
        <source>Ripeness count</source>
        <translation>Conteo de maduración</translation>
    </message>
    <message>
        <source>What chance does</source>
        <translation>Lo que hace la suerte</translation>
    </message>
    <message>
        <source>between {low} and {high} %</source>
        <translation>entre {low} y {high} %</translation>
    </message>
    <message>
        <source>block</source>
        <translation>parcela</translation>
    </message>
    <message>
        <source>bored</source>
        <translation>brocado</translation>
    </message>
    <message>
        <source>dried</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>half-day</source>
        <translation>½ jornada</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>over-ripe</source>
        <translation>sobremaduro</translation>
    </message>
    <message>
        <source>ripe</source>
        <translation>maduro</translation>
    </message>
    <message>
        <source>ripe of {n} {n:fruit|fruits}</source>
        <translation>maduro de {n} {n:fruto|frutos}</translation>
    </message>
    <message>
        <source>turning</source>
        <translation>pintón</translation>
    </message>
    <message>
        <source>{low}–{high} % ripe of {n}</source>
        <translation>{low}–{high} % maduro de {n}</translation>
    </message>
</context>
<context>
    <name>Counts</name>
    <message>
        <source>How ripe it came</source>
        <translation>Qué tan maduro llegó</translation>
    </message>
    <message>
        <source>No ripeness was counted in the last seven days.</source>
        <translation>En los últimos siete días no se contó la maduración.</translation>
    </message>
    <message>
        <source>count</source>
        <translation>conteo</translation>
    </message>
    <message>
        <source>fruits</source>
        <translation>frutos</translation>
    </message>
    <message>
        <source>green %</source>
        <translation>verde %</translation>
    </message>
    <message>
        <source>green in 100, range 95 %</source>
        <translation>verdes en 100, rango 95 %</translation>
    </message>
    <message>
        <source>limit {n} %</source>
        <translation>límite {n} %</translation>
    </message>
    <message>
        <source>not counted in the last seven days</source>
        <translation>sin conteo en los últimos siete días</translation>
    </message>
    <message>
        <source>ripe %</source>
        <translation>maduro %</translation>
    </message>
    <message>
        <source>{count}: {ripe} % ripe, {green} % green. {chance}</source>
        <translation>{count}: {ripe} % maduro, {green} % verde. {chance}</translation>
    </message>
    <message>
        <source>{n} % of {all}</source>
        <translation>{n} % de {all}</translation>
    </message>
</context>
<context>
    <name>DayRail</name>
    <message>
        <source>who</source>
        <translation>quién</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>Due: {jobs}.</source>
        <translation>Pendiente: {jobs}.</translation>
    </message>
    <message>
        <source>The day, {n} {n:job|jobs}.</source>
        <translation>El día, {n} {n:tarea|tareas}.</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>El día</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>This is the past; go back to now to write.</source>
        <translation>Esto es el pasado; para escribir hay que volver a ahora.</translation>
    </message>
</context>
<context>
    <name>FamilyPage</name>
    <message>
        <source>Blocks</source>
        <translation>Parcelas</translation>
    </message>
    <message>
        <source>Came from, went to</source>
        <translation>De dónde vino, a dónde fue</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familia</translation>
    </message>
    <message>
        <source>No lot has begun.</source>
        <translation>Aún no empieza ningún lote.</translation>
    </message>
    <message>
        <source>Picked</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>The same blocks are in</source>
        <translation>Las mismas parcelas están en</translation>
    </message>
    <message>
        <source>also called</source>
        <translation>también llamado</translation>
    </message>
    <message>
        <source>bands as wide as their share</source>
        <translation>franjas tan anchas como su parte</translation>
    </message>
    <message>
        <source>filled {at}</source>
        <translation>llenado {at}</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>goes to</source>
        <translation>va a</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lies at</source>
        <translation>está en</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>merge</source>
        <translation>juntar</translation>
    </message>
    <message>
        <source>next forebear</source>
        <translation>siguiente origen</translation>
    </message>
    <message>
        <source>own lots? 1</source>
        <translation>¿lotes propios? 1</translation>
    </message>
    <message>
        <source>shares sum to 100 %</source>
        <translation>las partes suman 100 %</translation>
    </message>
    <message>
        <source>split</source>
        <translation>partir</translation>
    </message>
    <message>
        <source>the lot</source>
        <translation>el lote</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>with lot</source>
        <translation>con el lote</translation>
    </message>
</context>
<context>
    <name>FarmPage</name>
    <message>
        <source>Farm</source>
        <translation>Finca</translation>
    </message>
    <message>
        <source>Language of the screen</source>
        <translation>Idioma de la pantalla</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Claro u oscuro</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letra</translation>
    </message>
    <message>
        <source>Registers of the farm</source>
        <translation>Registros de la finca</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation>como la computadora</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>Nothing is written here yet; r begins.</source>
        <translation>Aquí no hay nada escrito todavía; r empieza.</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>care of the data</source>
        <translation>cuidado de los datos</translation>
    </message>
    <message>
        <source>change the registers</source>
        <translation>cambiar los registros</translation>
    </message>
    <message>
        <source>end of the season</source>
        <translation>fin de temporada</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>más grande</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>la más grande</translation>
    </message>
    <message>
        <source>{n} {n:copy|copies} kept by itself</source>
        <translation>{n} {n:copia guardada sola|copias guardadas solas}</translation>
    </message>
    <message>
        <source>{n} {n:lot|lots}, {rows} {rows:row|rows}</source>
        <translation>{n} {n:lote|lotes}, {rows} {rows:renglón|renglones}</translation>
    </message>
    <message>
        <source>blocks</source>
        <translation>parcelas</translation>
    </message>
    <message>
        <source>beds and patio</source>
        <translation>camas y patio</translation>
    </message>
    <message>
        <source>vessels</source>
        <translation>pilas y barriles</translation>
    </message>
    <message>
        <source>instruments</source>
        <translation>instrumentos</translation>
    </message>
    <message>
        <source>methods</source>
        <translation>métodos</translation>
    </message>
    <message>
        <source>people</source>
        <translation>gente</translation>
    </message>
    <message>
        <source>buyers</source>
        <translation>compradores</translation>
    </message>
    <message>
        <source>season {code}, {zone}</source>
        <translation>temporada {code}, {zone}</translation>
    </message>
    <message>
        <source>file {name}</source>
        <translation>archivo {name}</translation>
    </message>
    <message>
        <source>in {folder}</source>
        <translation>en {folder}</translation>
    </message>
    <message>
        <source>open a season</source>
        <translation>abrir temporada</translation>
    </message>
    <message>
        <source>practice season</source>
        <translation>temporada de práctica</translation>
    </message>
    <message>
        <source>block</source>
        <translation>parcela</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>area</source>
        <translation>área</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>variety</source>
        <translation>variedad</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>matas</translation>
    </message>
    <message>
        <source>planted</source>
        <translation>siembra</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>from west</source>
        <translation>desde el oeste</translation>
    </message>
    <message>
        <source>from south</source>
        <translation>desde el sur</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>new farm</source>
        <translation>finca nueva</translation>
    </message>
    <message>
        <source>to cover</source>
        <translation>para tapar</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>volumen</translation>
    </message>
    <message>
        <source>of it usable</source>
        <translation>útil</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>check every</source>
        <translation>revisar cada</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>letra</translation>
    </message>
    <message>
        <source>version</source>
        <translation>versión</translation>
    </message>
    <message>
        <source>method</source>
        <translation>método</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>loading</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>dry within</source>
        <translation>secar en</translation>
    </message>
    <message>
        <source>person</source>
        <translation>persona</translation>
    </message>
    <message>
        <source>work</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>pay</source>
        <translation>pago</translation>
    </message>
    <message>
        <source>buyer</source>
        <translation>comprador</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Temporadas</translation>
    </message>
    <message>
        <source>All files</source>
        <translation>Todos los archivos</translation>
    </message>
    <message>
        <source>Which season is to be opened?</source>
        <translation>¿Qué temporada se abre?</translation>
    </message>
    <message>
        <source>The season file</source>
        <translation>El archivo de la temporada</translation>
    </message>
</context>
<context>
    <name>FermentsPage</name>
    <message>
        <source>Ferments</source>
        <translation>Fermentos</translation>
    </message>
    <message>
        <source>{n} at work.</source>
        <translation>{n} en marcha.</translation>
    </message>
    <message>
        <source>Nothing is in a vessel.</source>
        <translation>No hay nada en las pilas.</translation>
    </message>
    <message>
        <source>{vessels}: empty.</source>
        <translation>{vessels}: vacío.</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>dibujo</translation>
    </message>
    <message>
        <source>table</source>
        <translation>tabla</translation>
    </message>
</context>
<context>
    <name>FiguresPane</name>
    <message>
        <source>A number or the beginning of a name opens a figure; an emptied value is as is common again.</source>
        <translation>Un número o el comienzo de un nombre abre una cifra; un valor vacío vuelve a lo común.</translation>
    </message>
    <message>
        <source>Each of these can be the farm’s own; papers and forecasts follow at once.</source>
        <translation>Cada una puede ser propia de la finca; los papeles y pronósticos siguen de inmediato.</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Qué hace</translation>
    </message>
    <message>
        <source>as is common</source>
        <translation>lo común</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>cifra</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>sin poner</translation>
    </message>
    <message>
        <source>own: {n} of {all}</source>
        <translation>propias: {n} de {all}</translation>
    </message>
    <message>
        <source>stands now</source>
        <translation>vale ahora</translation>
    </message>
    <message>
        <source>what it is here</source>
        <translation>cuánto es aquí</translation>
    </message>
</context>
<context>
    <name>FillView</name>
    <message>
        <source>Fill vessels</source>
        <translation>Llenar pilas</translation>
    </message>
    <message>
        <source>Mix in juice until it is within {step} of the mass.</source>
        <translation>Mezclar jugo hasta que esté a menos de {step} de la masa.</translation>
    </message>
    <message>
        <source>No lot waits at the intake.</source>
        <translation>No hay lote en espera en el recibo.</translation>
    </message>
    <message>
        <source>One vessel a row, by code or by its number in the list; its weight; the hour if it was not now.</source>
        <translation>Una pila por renglón, por código o por su número en la lista; su peso; la hora si no fue ahora.</translation>
    </message>
    <message>
        <source>That is in the night; filled at {hour} it would be ready when people are up.</source>
        <translation>Eso cae de noche; llenada a las {hour} estaría lista con la gente despierta.</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Pilas</translation>
    </message>
    <message>
        <source>Wake it in {water} of water at {best} ({low} to {high}); the maker’s sheet comes first. </source>
        <translation>Despertarla en {water} de agua a {best} ({low} a {high}); primero vale la hoja del fabricante. </translation>
    </message>
    <message>
        <source>Yeast</source>
        <translation>Levadura</translation>
    </message>
    <message>
        <source>at {dose} of what lies in the vessel</source>
        <translation>a {dose} de lo que hay en la pila</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>llenado</translation>
    </message>
    <message>
        <source>filled at</source>
        <translation>llenada a las</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>in {vessel} already</source>
        <translation>ya en {vessel}</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>then ready, as is typical</source>
        <translation>lista entonces, según lo usual</translation>
    </message>
    <message>
        <source>this needs, at {n} kg of cherry a litre</source>
        <translation>esto necesita, a {n} kg de uva por litro</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>waits at the intake</source>
        <translation>espera en el recibo</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>{n} too much for {vessel}.</source>
        <translation>{n} de más para {vessel}.</translation>
    </message>
    <message>
        <source>{vessel} takes</source>
        <translation>en {vessel} caben</translation>
    </message>
</context>
<context>
    <name>FilterBox</name>
    <message>
        <source>Filter the lots by code, method, block or place</source>
        <translation>Buscar lotes por código, método, parcela o lugar</translation>
    </message>
    <message>
        <source>l: code, method, block, place, “store”</source>
        <translation>l: código, método, parcela, lugar, “bodega”</translation>
    </message>
</context>
<context>
    <name>FormRow</name>
    <message>
        <source>not meas.</source>
        <translation>no med.</translation>
    </message>
</context>
<context>
    <name>GapList</name>
    <message>
        <source>Nothing is missing or doubtful.</source>
        <translation>No falta nada y nada es dudoso.</translation>
    </message>
    <message>
        <source>Missing or doubtful: {gaps}</source>
        <translation>Falta o dudoso: {gaps}</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>Missing or doubtful</source>
        <translation>Falta o dudoso</translation>
    </message>
    <message>
        <source>and {n} more; t shows all</source>
        <translation>y {n} más; t muestra todo</translation>
    </message>
</context>
<context>
    <name>GoBox</name>
    <message>
        <source>Go to a lot, bed, day or page</source>
        <translation>Ir a un lote, cama, día o página</translation>
    </message>
    <message>
        <source>back to now</source>
        <translation>volver a ahora</translation>
    </message>
    <message>
        <source>lot, bed, day or page</source>
        <translation>lote, cama, día o página</translation>
    </message>
</context>
<context>
    <name>Guard</name>
    <message>
        <source>0 goes back</source>
        <translation>0 vuelve</translation>
    </message>
</context>
<context>
    <name>Gutter</name>
    <message>
        <source>roof</source>
        <translation>techo</translation>
    </message>
    <message>
        <source>hoops</source>
        <translation>arcos</translation>
    </message>
    <message>
        <source>tarps</source>
        <translation>lonas</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>Camas</translation>
    </message>
    <message>
        <source>Area tide</source>
        <translation>Área usada</translation>
    </message>
    <message>
        <source>beds in use</source>
        <translation>camas en uso</translation>
    </message>
    <message>
        <source>of {n} usable</source>
        <translation>de {n} útiles</translation>
    </message>
    <message>
        <source>Page Down: store</source>
        <translation>Av Pág: bodega</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Bodega</translation>
    </message>
    <message>
        <source>Mill</source>
        <translation>Beneficio</translation>
    </message>
    <message>
        <source>Samples, sales</source>
        <translation>Muestras, ventas</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nada todavía</translation>
    </message>
</context>
<context>
    <name>Head</name>
    <message>
        <source>good hours</source>
        <translation>horas buenas</translation>
    </message>
    <message>
        <source>rain mm</source>
        <translation>lluvia mm</translation>
    </message>
    <message>
        <source>runs on</source>
        <translation>sigue</translation>
    </message>
    <message>
        <source>earliest to latest</source>
        <translation>lo más pronto a lo más tarde</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>picked, height = kg</source>
        <translation>corte, alto = kg</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>planeado</translation>
    </message>
</context>
<context>
    <name>Hill</name>
    <message>
        <source>A block’s range rests on its sample of trees; the sum adds variances. Pinned days are never moved.</source>
        <translation>El rango de una parcela se apoya en su muestra de matas; la suma junta las varianzas. Los días clavados nunca se mueven.</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Parcelas</translation>
    </message>
    <message>
        <source>Crop: {text}.</source>
        <translation>Cosecha: {text}.</translation>
    </message>
    <message>
        <source>No block is written yet. A lot can begin without one; the page Farm writes them: r.</source>
        <translation>Todavía no hay parcelas escritas. Un lote puede empezar sin ellas; la página Finca las escribe: r.</translation>
    </message>
    <message>
        <source>The hill, m</source>
        <translation>La ladera, m</translation>
    </message>
    <message>
        <source>block</source>
        <translation>parcela</translation>
    </message>
    <message>
        <source>crop kg</source>
        <translation>cosecha kg</translation>
    </message>
    <message>
        <source>height m</source>
        <translation>altura m</translation>
    </message>
    <message>
        <source>next round</source>
        <translation>próxima pasada</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>not picked yet</source>
        <translation>sin cortar aún</translation>
    </message>
    <message>
        <source>on the trees</source>
        <translation>en las matas</translation>
    </message>
    <message>
        <source>picked kg</source>
        <translation>cortado kg</translation>
    </message>
    <message>
        <source>picked, of the crop as estimated, kg</source>
        <translation>cortado, de la cosecha estimada, kg</translation>
    </message>
    <message>
        <source>pickers</source>
        <translation>cortadores</translation>
    </message>
    <message>
        <source>ripeness on the trees not looked at</source>
        <translation>no se vio la maduración en las matas</translation>
    </message>
    <message>
        <source>was due {days}</source>
        <translation>tocaba {days}</translation>
    </message>
    <message>
        <source>{days}, pinned</source>
        <translation>{days}, clavado</translation>
    </message>
    <message>
        <source>{n} {n:block|blocks} from {low} to {high} m. Crop: {crop}.</source>
        <translation>{n} {n:parcela|parcelas} de {low} a {high} m. Cosecha: {crop}.</translation>
    </message>
    <message>
        <source>{n} {n:tree|trees} looked at</source>
        <translation>{n} {n:mata vista|matas vistas}</translation>
    </message>
    <message>
        <source>{picked} of {low}–{high}</source>
        <translation>{picked} de {low}–{high}</translation>
    </message>
    <message>
        <source>{picked}; crop not counted</source>
        <translation>{picked}; cosecha sin contar</translation>
    </message>
    <message>
        <source>{share} on the trees</source>
        <translation>{share} en las matas</translation>
    </message>
</context>
<context>
    <name>HillView</name>
    <message>
        <source>Picking</source>
        <translation>Corte</translation>
    </message>
</context>
<context>
    <name>HourHandle</name>
    <message>
        <source>Hour handle, {label}</source>
        <translation>La hora, {label}</translation>
    </message>
    <message>
        <source>Hour handle</source>
        <translation>La hora</translation>
    </message>
    <message>
        <source>left, right: 1 hour</source>
        <translation>← → una hora</translation>
    </message>
    <message>
        <source>ahead: not known yet</source>
        <translation>adelante: no se sabe aún</translation>
    </message>
</context>
<context>
    <name>InstrumentRows</name>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
</context>
<context>
    <name>InstrumentsPane</name>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Not checked yet: {codes}</source>
        <translation>Sin revisar todavía: {codes}</translation>
    </message>
    <message>
        <source>Spread and last digit in the unit it shows: g, points of moisture, pH, °C.</source>
        <translation>Dispersión y último dígito en la unidad que muestra: g, puntos de humedad, pH, °C.</translation>
    </message>
    <message>
        <source>Trusted from–to</source>
        <translation>Fiable desde–hasta</translation>
    </message>
</context>
<context>
    <name>LotLink</name>
    <message>
        <source>go to lot {code}</source>
        <translation>ir al lote {code}</translation>
    </message>
</context>
<context>
    <name>LotView</name>
    <message>
        <source>f: next of {n}</source>
        <translation>f: otra de {n}</translation>
    </message>
    <message>
        <source>family</source>
        <translation>familia</translation>
    </message>
    <message>
        <source>how worked out</source>
        <translation>cómo se calculó</translation>
    </message>
    <message>
        <source>over others</source>
        <translation>sobre otras</translation>
    </message>
    <message>
        <source>table</source>
        <translation>tabla</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
</context>
<context>
    <name>LotsPage</name>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>No lot has begun. The page Picking begins one: g.</source>
        <translation>Ningún lote ha empezado. La página Corte empieza uno: g.</translation>
    </message>
    <message>
        <source>lot sheet</source>
        <translation>hoja del lote</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>{all} {all:lot|lots}</source>
        <translation>{all} {all:lote|lotes}</translation>
    </message>
    <message>
        <source>{n} of {all} {all:lot|lots}</source>
        <translation>{n} de {all} {all:lote|lotes}</translation>
    </message>
    <message>
        <source>good hours</source>
        <translation>horas buenas</translation>
    </message>
    <message>
        <source>dates</source>
        <translation>fechas</translation>
    </message>
    <message>
        <source>curves</source>
        <translation>curvas</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>list</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>answer the file</source>
        <translation>responder al archivo</translation>
    </message>
    <message>
        <source>watch folder</source>
        <translation>vigilar carpeta</translation>
    </message>
    <message>
        <source>Where do the loggers leave their files?</source>
        <translation>¿Dónde dejan sus archivos los registradores?</translation>
    </message>
    <message>
        <source>Files that grow in {folder} are read by themselves.</source>
        <translation>Los archivos que crecen en {folder} se leen solos.</translation>
    </message>
    <message>
        <source>{lot} lies in no vessel and on no bed, so there is nothing to read.</source>
        <translation>{lot} no está en ninguna pila ni cama; no hay nada que leer.</translation>
    </message>
</context>
<context>
    <name>MethodsPane</name>
    <message>
        <source>A lot keeps the version it was begun with, whatever the method says later.</source>
        <translation>Un lote conserva la versión con que empezó, diga lo que diga después el método.</translation>
    </message>
    <message>
        <source>Methods</source>
        <translation>Métodos</translation>
    </message>
    <message>
        <source>Methods by version</source>
        <translation>Métodos por versión</translation>
    </message>
    <message>
        <source>Methods, {n} {n:version|versions}</source>
        <translation>Métodos, {n} {n:versión|versiones}</translation>
    </message>
    <message>
        <source>The next version</source>
        <translation>La versión siguiente</translation>
    </message>
    <message>
        <source>Version {n} of {letter}</source>
        <translation>Versión {n} de {letter}</translation>
    </message>
    <message>
        <source>Versions stay</source>
        <translation>Las versiones quedan</translation>
    </message>
    <message>
        <source>Written as the next version of {letter}; lots begun from now on are made by it.</source>
        <translation>Se escribe como la versión siguiente de {letter}; los lotes que empiecen desde ahora se hacen con ella.</translation>
    </message>
    <message>
        <source>a new method</source>
        <translation>un método nuevo</translation>
    </message>
    <message>
        <source>dry within</source>
        <translation>seco en</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>letra</translation>
    </message>
    <message>
        <source>loading</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>lots made</source>
        <translation>lotes hechos</translation>
    </message>
    <message>
        <source>method</source>
        <translation>método</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>reposo</translation>
    </message>
    <message>
        <source>version</source>
        <translation>versión</translation>
    </message>
    <message>
        <source>↑ ↓ choose a version, Enter copies it into the boxes: + writes it as the next one.</source>
        <translation>↑ ↓ eligen una versión, Intro la copia en las casillas: + la escribe como la siguiente.</translation>
    </message>
</context>
<context>
    <name>NewLotView</name>
    <message>
        <source>A lot begins</source>
        <translation>Empieza un lote</translation>
    </message>
    <message>
        <source>Method by letter or number; the code is proposed; a typed check character must be the right one.</source>
        <translation>Método por letra o número; el código se propone; si se escribe el signo de control, debe ser el correcto.</translation>
    </message>
    <message>
        <source>Methods</source>
        <translation>Métodos</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Planeado</translation>
    </message>
    <message>
        <source>The small character guards a hand-copied code; it is written behind it on every paper.</source>
        <translation>El signo pequeño cuida un código copiado a mano; va detrás de él en cada papel.</translation>
    </message>
    <message>
        <source>also called</source>
        <translation>también llamado</translation>
    </message>
    <message>
        <source>code</source>
        <translation>código</translation>
    </message>
    <message>
        <source>method</source>
        <translation>método</translation>
    </message>
    <message>
        <source>new lot</source>
        <translation>lote nuevo</translation>
    </message>
    <message>
        <source>{said}. Weigh-in is next: Esc, then w.</source>
        <translation>{said}. Sigue la pesada: Esc, luego w.</translation>
    </message>
</context>
<context>
    <name>NotebookPage</name>
    <message>
        <source>Notebook</source>
        <translation>Cuaderno</translation>
    </message>
    <message>
        <source>Rows of the notebook</source>
        <translation>Renglones del cuaderno</translation>
    </message>
    <message>
        <source>Nothing is written yet.</source>
        <translation>Nada escrito todavía.</translation>
    </message>
    <message>
        <source>search</source>
        <translation>buscar</translation>
    </message>
    <message>
        <source>strike out</source>
        <translation>tachar</translation>
    </message>
    <message>
        <source>bring back</source>
        <translation>recuperar</translation>
    </message>
    <message>
        <source>written</source>
        <translation>escrito</translation>
    </message>
    <message>
        <source>happened</source>
        <translation>ocurrió</translation>
    </message>
    <message>
        <source>None of {n} {n:row|rows} says so; Esc shows all again.</source>
        <translation>Ninguno de {n} {n:renglón|renglones} lo dice; Esc los muestra todos.</translation>
    </message>
    <message>
        <source>by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>tachado</translation>
    </message>
    <message>
        <source>where</source>
        <translation>dónde</translation>
    </message>
    <message>
        <source>{found} of {n} {n:row|rows}; Esc shows all again.</source>
        <translation>{found} de {n} {n:renglón|renglones}; Esc los muestra todos.</translation>
    </message>
    <message>
        <source>{n} {n:row|rows}; the last was written {at}.</source>
        <translation>{n} {n:renglón|renglones}; el último se escribió {at}.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>with</source>
        <translation>con</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Why is “{row}” struck out? The row stays to be read.</source>
        <translation>¿Por qué se tacha “{row}”? El renglón se sigue leyendo.</translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>made from</source>
        <translation>hecho de</translation>
    </message>
    <message>
        <source>went into</source>
        <translation>pasó a</translation>
    </message>
    <message>
        <source>Nothing differed from the method and nothing is doubtful.</source>
        <translation>Nada se apartó del método y nada es dudoso.</translation>
    </message>
    <message>
        <source>and {n} more: m</source>
        <translation>y {n} más: m</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Esc closes this</source>
        <translation>Esc cierra esto</translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>{name} {own}, {of} {normal}</source>
        <translation>{name} {own}, {of} {normal}</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>lo medido</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>table</source>
        <translation>tabla</translation>
    </message>
</context>
<context>
    <name>PapersPage</name>
    <message>
        <source>Papers</source>
        <translation>Papeles</translation>
    </message>
    <message>
        <source>Lot of the lot sheet</source>
        <translation>Lote de la hoja</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Greys</source>
        <translation>Grises</translation>
    </message>
    <message>
        <source>Yard sheet</source>
        <translation>Hoja del patio</translation>
    </message>
    <message>
        <source>opening, readings, for the yard</source>
        <translation>destapar y lecturas, para el patio</translation>
    </message>
    <message>
        <source>Night sheet</source>
        <translation>Hoja de noche</translation>
    </message>
    <message>
        <source>vessels and their likely ends</source>
        <translation>pilas y su final probable</translation>
    </message>
    <message>
        <source>Rain list</source>
        <translation>Antes de la lluvia</translation>
    </message>
    <message>
        <source>the order of covering, by the tarps</source>
        <translation>en qué orden tapar, junto a las lonas</translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>Hoja del lote</translation>
    </message>
    <message>
        <source>one lot on one page, for a buyer</source>
        <translation>un lote en una página, al comprador</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>qué es</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>lo usual</translation>
    </message>
    <message>
        <source>with greys</source>
        <translation>con grises</translation>
    </message>
    <message>
        <source>black only</source>
        <translation>solo negro</translation>
    </message>
    <message>
        <source>Pay sheet</source>
        <translation>Planilla</translation>
    </message>
    <message>
        <source>Sack tags</source>
        <translation>Etiquetas de saco</translation>
    </message>
    <message>
        <source>The season has no lot yet; the sheets for the crew can be made.</source>
        <translation>La temporada aún no tiene lote; se pueden hacer las hojas de la cuadrilla.</translation>
    </message>
    <message>
        <source>Weigh-in sheet</source>
        <translation>Hoja de pesadas</translation>
    </message>
    <message>
        <source>codes down, half-days across</source>
        <translation>por código y media jornada</translation>
    </message>
    <message>
        <source>the block’s letter, the lot, the half-day</source>
        <translation>parcela, lote y media jornada</translation>
    </message>
    <message>
        <source>{n} {n:page|pages}</source>
        <translation>{n} {n:página|páginas}</translation>
    </message>
    <message>
        <source>to be signed, with notes and coins</source>
        <translation>para firmar, con billetes y monedas</translation>
    </message>
    <message>
        <source>{paper}: {pages}.</source>
        <translation>{paper}: {pages}.</translation>
    </message>
    <message>
        <source>write the PDF</source>
        <translation>escribir el PDF</translation>
    </message>
    <message>
        <source>print</source>
        <translation>imprimir</translation>
    </message>
    <message>
        <source>Where is the PDF to be written?</source>
        <translation>¿Dónde se escribe el PDF?</translation>
    </message>
    <message>
        <source>{file} could not be written: {why}.</source>
        <translation>{file} no se pudo escribir: {why}.</translation>
    </message>
    <message>
        <source>{file} was written.</source>
        <translation>{file} quedó escrito.</translation>
    </message>
</context>
<context>
    <name>PaySide</name>
    <message>
        <source>Envelope of {picker}</source>
        <translation>Sobre de {picker}</translation>
    </message>
    <message>
        <source>For the bank</source>
        <translation>Para el banco</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Semanas</translation>
    </message>
    <message>
        <source>advance</source>
        <translation>adelanto</translation>
    </message>
    <message>
        <source>day work</source>
        <translation>jornal</translation>
    </message>
    <message>
        <source>from signed weeks</source>
        <translation>de semanas firmadas</translation>
    </message>
    <message>
        <source>notes and coins, all envelopes</source>
        <translation>billetes y monedas, todos los sobres</translation>
    </message>
    <message>
        <source>open</source>
        <translation>sin firmar</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>without a known picker</source>
        <translation>sin cortador conocido</translation>
    </message>
    <message>
        <source>{n} {n:picker|pickers}, {state}</source>
        <translation>{n} {n:cortador|cortadores}, {state}</translation>
    </message>
    <message>
        <source>← → another</source>
        <translation>← → otra</translation>
    </message>
</context>
<context>
    <name>PayView</name>
    <message>
        <source>Pay</source>
        <translation>Pago</translation>
    </message>
    <message>
        <source>Pay by picker</source>
        <translation>Pago por cortador</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>advance</source>
        <translation>adelanto</translation>
    </message>
    <message>
        <source>bonus</source>
        <translation>bono</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>day work</source>
        <translation>jornal</translation>
    </message>
    <message>
        <source>for the day</source>
        <translation>por el día</translation>
    </message>
    <message>
        <source>for what</source>
        <translation>para qué</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>name {n} {n:sack|sacks}</source>
        <translation>nombrar {n} {n:saco|sacos}</translation>
    </message>
    <message>
        <source>{n} {n:envelope|envelopes}</source>
        <translation>{n} {n:sobre|sobres}</translation>
    </message>
    <message>
        <source>net</source>
        <translation>a pagar</translation>
    </message>
    <message>
        <source>overview</source>
        <translation>resumen</translation>
    </message>
    <message>
        <source>part of it</source>
        <translation>parte del día</translation>
    </message>
    <message>
        <source>pay sheet on paper</source>
        <translation>planilla en papel</translation>
    </message>
    <message>
        <source>picker</source>
        <translation>código</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>destajo</translation>
    </message>
    <message>
        <source>sign the week</source>
        <translation>firmar la semana</translation>
    </message>
    <message>
        <source>task</source>
        <translation>tarea</translation>
    </message>
    <message>
        <source>top-up</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>{what}: written</source>
        <translation>{what}: escrito</translation>
    </message>
</context>
<context>
    <name>PeoplePane</name>
    <message>
        <source>All people</source>
        <translation>Toda la gente</translation>
    </message>
    <message>
        <source>Papers show the code. A name leaves the farm only where “on papers” says yes; a year of birth never.</source>
        <translation>Los papeles muestran el código. Un nombre sale de la finca solo donde “en papeles” dice sí; un año de nacimiento, nunca.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Under 18 no hazardous work (ILO convention 182); local rules may say more.</source>
        <translation>Menores de 18, ningún trabajo peligroso (convenio 182 de la OIT); las reglas locales pueden decir más.</translation>
    </message>
    <message>
        <source>codes</source>
        <translation>códigos</translation>
    </message>
    <message>
        <source>may be under 18: {codes}</source>
        <translation>puede tener menos de 18: {codes}</translation>
    </message>
</context>
<context>
    <name>PickerZone</name>
    <message>
        <source>Pickers</source>
        <translation>Cortadores</translation>
    </message>
</context>
<context>
    <name>PickingPage</name>
    <message>
        <source>Picking</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>begin a lot</source>
        <translation>empezar un lote</translation>
    </message>
    <message>
        <source>fill vessels</source>
        <translation>llenar pilas</translation>
    </message>
    <message>
        <source>pay</source>
        <translation>pago</translation>
    </message>
    <message>
        <source>ripeness</source>
        <translation>maduración</translation>
    </message>
    <message>
        <source>sort and float</source>
        <translation>escogida y flotes</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>tender</translation>
    </message>
    <message>
        <source>weigh-in</source>
        <translation>pesada</translation>
    </message>
</context>
<context>
    <name>PlacesPane</name>
    <message>
        <source>Beds and patio</source>
        <translation>Camas y patio</translation>
    </message>
    <message>
        <source>Measured from the yard’s south-west corner. A code that is there already opens its row.</source>
        <translation>Se mide desde la esquina suroeste del patio. Un código que ya existe abre su fila.</translation>
    </message>
    <message>
        <source>The yard</source>
        <translation>El patio</translation>
    </message>
    <message>
        <source>lies over {codes}</source>
        <translation>está encima de {codes}</translation>
    </message>
    <message>
        <source>{code} as typed</source>
        <translation>{code} tal como se escribe</translation>
    </message>
    <message>
        <source>{n} {n:bed|beds}, {m} {m:place|places} in all</source>
        <translation>{n} {n:cama|camas}, {m} {m:lugar|lugares} en total</translation>
    </message>
</context>
<context>
    <name>ReadingForm</name>
    <message>
        <source>Reading of {lot}</source>
        <translation>Lectura de {lot}</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>mass °C</source>
        <translation>masa °C</translation>
    </message>
    <message>
        <source>°Bx</source>
        <translation>°Bx</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>tray {tray}, g</source>
        <translation>bandeja {tray}, g</translation>
    </message>
    <message>
        <source>tray g</source>
        <translation>bandeja g</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>bean °C</source>
        <translation>grano °C</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>written {hour}</source>
        <translation>escrito {hour}</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ninguna aún</translation>
    </message>
    <message>
        <source>Enter writes   + next box   − box before   * not measured   Esc leaves</source>
        <translation>Intro escribe   + sigue   − atrás   * no medido   Esc sale</translation>
    </message>
    <message>
        <source>written {hour}; / corrects, Ctrl+Z takes it back</source>
        <translation>escrito {hour}; / corrige, Ctrl+Z lo quita</translation>
    </message>
</context>
<context>
    <name>RegisterPane</name>
    <message>
        <source>A code that is there already opens its row. What is not known stays empty.</source>
        <translation>Un código que ya existe abre su fila. Lo que no se sabe queda vacío.</translation>
    </message>
    <message>
        <source>Buyers</source>
        <translation>Compradores</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Bandejas</translation>
    </message>
    <message>
        <source>or other words</source>
        <translation>u otras palabras</translation>
    </message>
    <message>
        <source>rows: {n}</source>
        <translation>filas: {n}</translation>
    </message>
</context>
<context>
    <name>RegistersPage</name>
    <message>
        <source>Registers</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Registers: Enter types in one, Esc leaves</source>
        <translation>Registros: Intro para escribir en uno, Esc para salir</translation>
    </message>
    <message>
        <source>beds and patio</source>
        <translation>camas y patio</translation>
    </message>
    <message>
        <source>blocks</source>
        <translation>parcelas</translation>
    </message>
    <message>
        <source>buyers</source>
        <translation>compradores</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>revisiones</translation>
    </message>
    <message>
        <source>corrections</source>
        <translation>correcciones</translation>
    </message>
    <message>
        <source>figures</source>
        <translation>cifras</translation>
    </message>
    <message>
        <source>instruments</source>
        <translation>instrumentos</translation>
    </message>
    <message>
        <source>methods</source>
        <translation>métodos</translation>
    </message>
    <message>
        <source>people</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>standards</source>
        <translation>patrones</translation>
    </message>
    <message>
        <source>trays</source>
        <translation>bandejas</translation>
    </message>
    <message>
        <source>vessels</source>
        <translation>pilas y barriles</translation>
    </message>
    <message>
        <source>words</source>
        <translation>palabras</translation>
    </message>
</context>
<context>
    <name>RightZone</name>
    <message>
        <source>{minutes} to cover everything.</source>
        <translation>{minutes} para tapar todo.</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>fruta</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>esperan</translation>
    </message>
    <message>
        <source>where or who</source>
        <translation>dónde o quién</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>Cover {beds}.</source>
        <translation>Tapar {beds}.</translation>
    </message>
    <message>
        <source>First {first}, then {last}.</source>
        <translation>Primero {first}, luego {last}.</translation>
    </message>
    <message>
        <source>First {first}, then {middle}, last {last}.</source>
        <translation>Primero {first}, luego {middle}, al final {last}.</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>to cover everything</source>
        <translation>para tapar todo</translation>
    </message>
    <message>
        <source>This afternoon’s fruit</source>
        <translation>La uva de esta tarde</translation>
    </message>
    <message>
        <source>Someone waits</source>
        <translation>Alguien espera</translation>
    </message>
    <message>
        <source>and {n} more; t shows all</source>
        <translation>y {n} más; t muestra todo</translation>
    </message>
</context>
<context>
    <name>River</name>
    <message>
        <source>{kg} kg {name} left</source>
        <translation>{kg} kg {name} salió</translation>
    </message>
    <message>
        <source>Weights: {stages} kg.</source>
        <translation>Pesos: {stages} kg.</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>etapa</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>of it dry, kg</source>
        <translation>de eso seco, kg</translation>
    </message>
    <message>
        <source>left before it, kg</source>
        <translation>salió antes, kg</translation>
    </message>
    <message>
        <source>{kg} kg dry, unexplained</source>
        <translation>{kg} kg seco, sin explicar</translation>
    </message>
    <message>
        <source>nothing weighed twice yet</source>
        <translation>nada pesado dos veces aún</translation>
    </message>
    <message>
        <source>Weight river</source>
        <translation>Río de pesos</translation>
    </message>
    <message>
        <source>inner band: dry matter; it narrows only where a stream is named</source>
        <translation>franja interior: materia seca; se angosta solo donde una salida tiene nombre</translation>
    </message>
</context>
<context>
    <name>Road</name>
    <message>
        <source>Road</source>
        <translation>Camino</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Hoy</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>&amp;Temporada</translation>
    </message>
    <message>
        <source>&amp;Lots</source>
        <translation>&amp;Lotes</translation>
    </message>
    <message>
        <source>&amp;Picking</source>
        <translation>&amp;Corte</translation>
    </message>
    <message>
        <source>&amp;Ferments</source>
        <translation>&amp;Fermentos</translation>
    </message>
    <message>
        <source>&amp;Yard</source>
        <translation>&amp;Patio</translation>
    </message>
    <message>
        <source>St&amp;ore</source>
        <translation>&amp;Bodega</translation>
    </message>
    <message>
        <source>&amp;Mill</source>
        <translation>Be&amp;neficio</translation>
    </message>
    <message>
        <source>&amp;Cup &amp;&amp; grade</source>
        <translation>T&amp;aza y grado</translation>
    </message>
    <message>
        <source>S&amp;amples &amp;&amp; sales</source>
        <translation>&amp;Muestras y ventas</translation>
    </message>
    <message>
        <source>&amp;Notebook</source>
        <translation>C&amp;uaderno</translation>
    </message>
    <message>
        <source>Pap&amp;ers</source>
        <translation>Pap&amp;eles</translation>
    </message>
    <message>
        <source>Fa&amp;rm</source>
        <translation>F&amp;inca</translation>
    </message>
    <message>
        <source>Off&amp;ice</source>
        <translation>&amp;Oficina</translation>
    </message>
    <message>
        <source>day {n}</source>
        <translation>día {n}</translation>
    </message>
    <message>
        <source>{n} begun</source>
        <translation>{n} empezados</translation>
    </message>
    <message>
        <source>season {code}</source>
        <translation>temporada {code}</translation>
    </message>
</context>
<context>
    <name>RowsPane</name>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>correct the row above</source>
        <translation>corregir el de arriba</translation>
    </message>
    <message>
        <source>decimal</source>
        <translation>decimal</translation>
    </message>
    <message>
        <source>next box</source>
        <translation>siguiente casilla</translation>
    </message>
    <message>
        <source>next row</source>
        <translation>siguiente renglón</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>row back</source>
        <translation>renglón atrás</translation>
    </message>
</context>
<context>
    <name>Ruler</name>
    <message>
        <source>typing {at}</source>
        <translation>escribiendo {at}</translation>
    </message>
    <message>
        <source>as known {at}</source>
        <translation>como se sabía {at}</translation>
    </message>
    <message>
        <source>Season&apos;s ruler, {label}</source>
        <translation>Regla de la temporada, {label}</translation>
    </message>
</context>
<context>
    <name>SearchBox</name>
    <message>
        <source>Search the notebook</source>
        <translation>Buscar en el cuaderno</translation>
    </message>
    <message>
        <source>s: lot, person, b12, 23 Jan, word</source>
        <translation>s: lote, persona, b12, 23 ene, palabra</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Nothing is written yet; p goes to Picking, where the first sack is weighed.</source>
        <translation>Nada escrito todavía; p va a Corte, donde se pesa el primer saco.</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>dibujo</translation>
    </message>
    <message>
        <source>table</source>
        <translation>tabla</translation>
    </message>
    <message>
        <source>whole season</source>
        <translation>toda la temporada</translation>
    </message>
    <message>
        <source>weigh the first sack</source>
        <translation>pesar el primer saco</translation>
    </message>
</context>
<context>
    <name>SheetSide</name>
    <message>
        <source>Each row is on disk before the next one opens.</source>
        <translation>Cada renglón está en el disco antes de abrir el siguiente.</translation>
    </message>
    <message>
        <source>For the gap list tonight</source>
        <translation>Para lo que falta de esta noche</translation>
    </message>
    <message>
        <source>Written so far</source>
        <translation>Escrito hasta ahora</translation>
    </message>
    <message>
        <source>bed {bed}, {lot}: no reading</source>
        <translation>cama {bed}, {lot}: sin lectura</translation>
    </message>
    <message>
        <source>{n} of {m} {m:row|rows}, the last at {hour}.</source>
        <translation>{n} de {m} {m:renglón|renglones}, el último {hour}.</translation>
    </message>
    <message>
        <source>{n} of {m} {m:row|rows}.</source>
        <translation>{n} de {m} {m:renglón|renglones}.</translation>
    </message>
</context>
<context>
    <name>ShortForm</name>
    <message>
        <source>It will come to</source>
        <translation>Quedará en</translation>
    </message>
    <message>
        <source>no lot</source>
        <translation>ningún lote</translation>
    </message>
    <message>
        <source>written {hour}</source>
        <translation>escrito {hour}</translation>
    </message>
    <message>
        <source>{n} written</source>
        <translation>{n} escritos</translation>
    </message>
</context>
<context>
    <name>SortView</name>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>No lot waits to be sorted.</source>
        <translation>No hay lote en espera de escogida.</translation>
    </message>
    <message>
        <source>Sort and float</source>
        <translation>Escogida y flotes</translation>
    </message>
    <message>
        <source>Weighed wet: {low}–{high} kg of it may be water on the skin.</source>
        <translation>Pesado mojado: de ello {low}–{high} kg pueden ser agua en la cáscara.</translation>
    </message>
    <message>
        <source>What was sorted out by hand, and what floated; what stays is accepted. Nothing is 0, not measured is *.</source>
        <translation>Lo que se escogió a mano y lo que flotó; lo que queda es aceptado. Nada es 0, no medido es *.</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>entregado</translation>
    </message>
    <message>
        <source>floaters</source>
        <translation>flotes</translation>
    </message>
    <message>
        <source>if wet, drained</source>
        <translation>si mojado, escurrió</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>of {all} delivered</source>
        <translation>de {all} entregados</translation>
    </message>
    <message>
        <source>own normal {low}–{high} %, {n} {n:lot|lots} of this method</source>
        <translation>lo propio usual {low}–{high} %, {n} {n:lote|lotes} de este método</translation>
    </message>
    <message>
        <source>wet parchment to expect: {wet}, {n} own {n:lot|lots}</source>
        <translation>pergamino húmedo que se espera: {wet}, {n} {n:lote propio|lotes propios}</translation>
    </message>
    <message>
        <source>sorted out</source>
        <translation>escogida</translation>
    </message>
    <message>
        <source>too few own lots of this method to say what is normal</source>
        <translation>muy pocos lotes propios de este método para decir lo usual</translation>
    </message>
</context>
<context>
    <name>SpreadView</name>
    <message>
        <source>Bed and its weight, up to five; + writes them together, for what was not weighed is pulp and juice.</source>
        <translation>Cama y su peso, hasta cinco; + los escribe juntos, pues lo que no se pesó es pulpa y jugo.</translation>
    </message>
    <message>
        <source>Free beds</source>
        <translation>Camas libres</translation>
    </message>
    <message>
        <source>How thick it lies</source>
        <translation>Qué tan grueso queda</translation>
    </message>
    <message>
        <source>No lot waits to be spread.</source>
        <translation>No hay lote en espera de tender.</translation>
    </message>
    <message>
        <source>Nothing is on a bed yet.</source>
        <translation>Todavía no hay nada en una cama.</translation>
    </message>
    <message>
        <source>Spread on beds</source>
        <translation>Tender en camas</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>as is common</source>
        <translation>lo común</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>bed {bed}</source>
        <translation>cama {bed}</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>on {places}</source>
        <translation>en {places}</translation>
    </message>
    <message>
        <source>own {n} {n:lot|lots}</source>
        <translation>{n} {n:lote propio|lotes propios}</translation>
    </message>
    <message>
        <source>to expect, {rests}</source>
        <translation>se espera, {rests}</translation>
    </message>
    <message>
        <source>{method}: {n} kg/m² is meant</source>
        <translation>{method}: se quieren {n} kg/m²</translation>
    </message>
</context>
<context>
    <name>StandardsPane</name>
    <message>
        <source>Published tables</source>
        <translation>Tablas publicadas</translation>
    </message>
    <message>
        <source>Standards</source>
        <translation>Patrones</translation>
    </message>
    <message>
        <source>The farm’s own table: its name and sample. Published tables that judge each count too: by their numbers.</source>
        <translation>La tabla propia de la finca: su nombre y su muestra. Las publicadas que juzgan también cada conteo: por su número.</translation>
    </message>
    <message>
        <source>beans for one</source>
        <translation>granos por uno</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>defecto</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>judge also by</source>
        <translation>juzgar también por</translation>
    </message>
    <message>
        <source>kinds: {n}</source>
        <translation>clases: {n}</translation>
    </message>
    <message>
        <source>name of the own table</source>
        <translation>nombre de la tabla propia</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>regla</translation>
    </message>
    <message>
        <source>sample, g</source>
        <translation>muestra, g</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>year</source>
        <translation>año</translation>
    </message>
    <message>
        <source>{sample}, {year}; {rule}. A defect by its word or number; ↑ above the first row: the head.</source>
        <translation>{sample}, {year}; {rule}. El defecto por su palabra o número; ↑ sobre la primera fila: el encabezado.</translation>
    </message>
    <message>
        <source>{year}; {rule}. {source}</source>
        <translation>{year}; {rule}. {source}</translation>
    </message>
</context>
<context>
    <name>StripWidget</name>
    <message>
        <source>picked</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>still in it</source>
        <translation>sigue dentro</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>camas</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>into the store</source>
        <translation>entra a bodega</translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation>va al beneficio</translation>
    </message>
    <message>
        <source>milled</source>
        <translation>trillado</translation>
    </message>
    <message>
        <source>rest ends</source>
        <translation>fin del reposo</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>where</source>
        <translation>dónde</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>dato</translation>
    </message>
</context>
<context>
    <name>Title</name>
    <message>
        <source>practice</source>
        <translation>práctica</translation>
    </message>
    <message>
        <source>what if</source>
        <translation>y si…</translation>
    </message>
</context>
<context>
    <name>Today</name>
    <message>
        <source>Weigh-in</source>
        <translation>Pesadas</translation>
    </message>
    <message>
        <source>afternoon</source>
        <translation>tarde</translation>
    </message>
    <message>
        <source>block</source>
        <translation>parcela</translation>
    </message>
    <message>
        <source>half-day</source>
        <translation>media jornada</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>morning</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>nothing weighed in yet</source>
        <translation>nada pesado aún</translation>
    </message>
    <message>
        <source>of ≈ {plan} kg planned</source>
        <translation>de ≈ {plan} kg planeados</translation>
    </message>
    <message>
        <source>sacks</source>
        <translation>sacos</translation>
    </message>
    <message>
        <source>{block} {half}, {n} {n:sack|sacks}</source>
        <translation>{block} {half}, {n} {n:saco|sacos}</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>begin a lot</source>
        <translation>empezar un lote</translation>
    </message>
    <message>
        <source>office</source>
        <translation>oficina</translation>
    </message>
    <message>
        <source>sky</source>
        <translation>cielo</translation>
    </message>
    <message>
        <source>wet side</source>
        <translation>pilas</translation>
    </message>
    <message>
        <source>work day</source>
        <translation>día de trabajo</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>patio</translation>
    </message>
    <message>
        <source>{n} of {m}</source>
        <translation>{n} de {m}</translation>
    </message>
    <message>
        <source>on the beds</source>
        <translation>en las camas</translation>
    </message>
    <message>
        <source>still to leave</source>
        <translation>agua por salir</translation>
    </message>
    <message>
        <source>day sheet</source>
        <translation>hoja del día</translation>
    </message>
    <message>
        <source>type the yard sheet</source>
        <translation>copiar la hoja del patio</translation>
    </message>
    <message>
        <source>rain list</source>
        <translation>antes de la lluvia</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>This one cannot be answered with “not measured”; Enter goes to it.</source>
        <translation>Esta no se puede responder con “no medido”; Intro va a ella.</translation>
    </message>
    <message>
        <source>Enter answers the first one; “n” writes “not measured”.</source>
        <translation>Intro responde la primera; “n” escribe “no medido”.</translation>
    </message>
</context>
<context>
    <name>Tree</name>
    <message>
        <source>block {code}</source>
        <translation>parcela {code}</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>nothing has left it yet</source>
        <translation>aún no ha salido nada</translation>
    </message>
    <message>
        <source>share of the lot</source>
        <translation>parte del lote</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>{lot}: {blocks}. Went to: {went}.</source>
        <translation>{lot}: {blocks}. Pasó a: {went}.</translation>
    </message>
    <message>
        <source>{vessel}; filled {hours}.</source>
        <translation>{vessel}; llenado {hours}.</translation>
    </message>
</context>
<context>
    <name>TypedPane</name>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>empty first box</source>
        <translation>primera casilla vacía</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>salir</translation>
    </message>
    <message>
        <source>next box, the last one writes</source>
        <translation>casilla siguiente, la última escribe</translation>
    </message>
    <message>
        <source>writes</source>
        <translation>escribe</translation>
    </message>
    <message>
        <source>takes the row out</source>
        <translation>quita la fila</translation>
    </message>
    <message>
        <source>walk the rows</source>
        <translation>recorrer las filas</translation>
    </message>
</context>
<context>
    <name>VesselZone</name>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>since</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>listo</translation>
    </message>
    <message>
        <source>Open first</source>
        <translation>Destapar primero</translation>
    </message>
    <message>
        <source>likely {time}</source>
        <translation>probable {time}</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>por hacer</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>Wash first</source>
        <translation>Lavar primero</translation>
    </message>
    <message>
        <source>In the vessels</source>
        <translation>En las pilas</translation>
    </message>
    <message>
        <source>Nothing is in a vessel.</source>
        <translation>No hay nada en las pilas.</translation>
    </message>
    <message>
        <source>{vessels}: empty</source>
        <translation>{vessels}: vacío</translation>
    </message>
    <message>
        <source>ready; likely {time}</source>
        <translation>listo; probable {time}</translation>
    </message>
    <message>
        <source>end not known</source>
        <translation>final no se sabe</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation>desde {time}</translation>
    </message>
    <message>
        <source>pH not measured</source>
        <translation>pH no medido</translation>
    </message>
    <message>
        <source>latest</source>
        <translation>lo más tarde</translation>
    </message>
</context>
<context>
    <name>VesselsPane</name>
    <message>
        <source>All vessels</source>
        <translation>Todas las pilas</translation>
    </message>
    <message>
        <source>It</source>
        <translation>Esta</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Pilas</translation>
    </message>
    <message>
        <source>pulped, at {n} kg a litre</source>
        <translation>despulpado, a {n} kg por litro</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>utilizable</translation>
    </message>
    <message>
        <source>whole cherry, at {n} kg a litre</source>
        <translation>cereza entera, a {n} kg por litro</translation>
    </message>
    <message>
        <source>{code} takes</source>
        <translation>En {code} caben</translation>
    </message>
</context>
<context>
    <name>WeighInView</name>
    <message>
        <source>Same order of boxes as the paper. Weighed {hour}, {scale}; numbers in {unit}. − above the first row: another sheet.</source>
        <translation>Casillas en el orden del papel. Pesado {hour}, {scale}; números en {unit}. − sobre el primer renglón: otra hoja.</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesadas</translation>
    </message>
    <message>
        <source>Which sheet? Blocks by letter or number; half-day 1 morning, 2 afternoon; unit 1 kg, 2 lb, 3 qq.</source>
        <translation>¿Qué hoja? Parcela por letra o número; media jornada 1 mañana, 2 tarde; unidad 1 kg, 2 lb, 3 qq.</translation>
    </message>
    <message>
        <source>block</source>
        <translation>parcela</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>gross</source>
        <translation>bruto</translation>
    </message>
    <message>
        <source>half-day</source>
        <translation>½ jornada</translation>
    </message>
    <message>
        <source>kept {at}</source>
        <translation>guardado {at}</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>net kg</source>
        <translation>neto kg</translation>
    </message>
    <message>
        <source>picker</source>
        <translation>cortador</translation>
    </message>
    <message>
        <source>row {n} of {all}</source>
        <translation>renglón {n} de {all}</translation>
    </message>
    <message>
        <source>scale’s total of the day</source>
        <translation>total del día en la báscula</translation>
    </message>
    <message>
        <source>tare, kept</source>
        <translation>tara, guardada</translation>
    </message>
    <message>
        <source>total written under the column</source>
        <translation>total escrito bajo la columna</translation>
    </message>
    <message>
        <source>unassigned, {note}</source>
        <translation>sin nombre, {note}</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>usual</translation>
    </message>
    <message>
        <source>weighed at</source>
        <translation>pesado a las</translation>
    </message>
    <message>
        <source>written {hour}</source>
        <translation>escrito {hour}</translation>
    </message>
    <message>
        <source>{n} {n:row|rows}</source>
        <translation>{n} {n:renglón|renglones}</translation>
    </message>
</context>
<context>
    <name>WeighSide</name>
    <message>
        <source>Each row is on disk before the next one opens.</source>
        <translation>Cada renglón está en el disco antes de abrir el siguiente.</translation>
    </message>
    <message>
        <source>No row yet.</source>
        <translation>Ningún renglón aún.</translation>
    </message>
    <message>
        <source>Same slips</source>
        <translation>Las mismas boletas</translation>
    </message>
    <message>
        <source>Written so far</source>
        <translation>Escrito hasta ahora</translation>
    </message>
    <message>
        <source>afternoon</source>
        <translation>tarde</translation>
    </message>
    <message>
        <source>block {block}</source>
        <translation>parcela {block}</translation>
    </message>
    <message>
        <source>block {block}, {half}, {n} {n:sack|sacks}</source>
        <translation>parcela {block}, {half}, {n} {n:saco|sacos}</translation>
    </message>
    <message>
        <source>usually {low}–{high} kg, last {n} {n:sack|sacks}</source>
        <translation>usual {low}–{high} kg, {n:último|últimos} {n} {n:saco|sacos}</translation>
    </message>
    <message>
        <source>{n} {n:row|rows}, the last at {at}.</source>
        <translation>{n} {n:renglón|renglones}, el último {at}.</translation>
    </message>
    <message>
        <source>{n} {n:sack|sacks} on this sheet</source>
        <translation>{n} {n:saco|sacos} en esta hoja</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>guardado</translation>
    </message>
    <message>
        <source>kept once; nothing is written twice</source>
        <translation>guardadas una vez; nada se escribe dos veces</translation>
    </message>
    <message>
        <source>morning</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>the scale’s own total</source>
        <translation>el total de la báscula</translation>
    </message>
    <message>
        <source>too few sacks to say what is usual</source>
        <translation>muy pocos sacos para decir lo usual</translation>
    </message>
    <message>
        <source>typed now</source>
        <translation>escrito ahora</translation>
    </message>
    <message>
        <source>{codes}: unassigned, to be named before pay</source>
        <translation>{codes}: sin nombre, falta nombrarlos antes del pago</translation>
    </message>
    <message>
        <source>{n} asked</source>
        <translation>{n} preguntadas</translation>
    </message>
    <message>
        <source>{n} of {all} kept slips typed again</source>
        <translation>{n} de {all} boletas guardadas, escritas otra vez</translation>
    </message>
    <message>
        <source>{sum} kg of ≈ {plan} planned, all sheets</source>
        <translation>{sum} kg de ≈ {plan} planeados, todas las hojas</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Something went wrong in the program and was written down. What you typed is kept.</source>
        <translation>Algo falló en el programa y quedó anotado. Lo escrito está guardado.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
</context>
<context>
    <name>WordsPane</name>
    <message>
        <source>Any word the screens or sheets say can be the farm’s own.</source>
        <translation>Toda palabra de las pantallas o las hojas puede ser la propia de la finca.</translation>
    </message>
    <message>
        <source>Language: 1 English, 2 Español. A phrase wins over a word; sentences change, old records do not.</source>
        <translation>Idioma: 1 English, 2 Español. Una frase gana a una palabra; cambian las frases, no los registros viejos.</translation>
    </message>
    <message>
        <source>Said otherwise elsewhere</source>
        <translation>Dicho de otro modo en otra parte</translation>
    </message>
    <message>
        <source>Sentences with it</source>
        <translation>Frases con ella</translation>
    </message>
    <message>
        <source>The program does not say “{word}”.</source>
        <translation>El programa no dice «{word}».</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>language</source>
        <translation>idioma</translation>
    </message>
    <message>
        <source>own words: {n}</source>
        <translation>palabras propias: {n}</translation>
    </message>
    <message>
        <source>sentences of screens and sheets: {n}</source>
        <translation>frases de pantallas y hojas: {n}</translation>
    </message>
    <message>
        <source>the farm says</source>
        <translation>la finca dice</translation>
    </message>
    <message>
        <source>the program says</source>
        <translation>el programa dice</translation>
    </message>
</context>
<context>
    <name>WorkedOutPane</name>
    <message>
        <source>How was this worked out?</source>
        <translation>¿Cómo se calculó esto?</translation>
    </message>
    <message>
        <source>Nothing of this lot was worked out; all of it was measured.</source>
        <translation>Nada de este lote se calculó; todo se midió.</translation>
    </message>
    <message>
        <source>formula</source>
        <translation>fórmula</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>vale</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
</context>
<context>
    <name>YardFormPage</name>
    <message>
        <source>All rows are written.</source>
        <translation>Todos los renglones están escritos.</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Nothing lay on the beds.</source>
        <translation>No había nada en las camas.</translation>
    </message>
    <message>
        <source>Same order of boxes as the paper. Another tray: 2:938.</source>
        <translation>Casillas en el orden del papel. Otra bandeja: 2:938.</translation>
    </message>
    <message>
        <source>Yard sheet</source>
        <translation>Hoja del patio</translation>
    </message>
    <message>
        <source>Yard sheet, readings at {hour}</source>
        <translation>Hoja del patio, lecturas de las {hour}</translation>
    </message>
    <message>
        <source>bean °C</source>
        <translation>grano °C</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>bed {bed}, {lot}, row {n} of {m}</source>
        <translation>cama {bed}, {lot}, renglón {n} de {m}</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>correct the row above</source>
        <translation>corregir el de arriba</translation>
    </message>
    <message>
        <source>corrected on the yard sheet</source>
        <translation>corregido en la hoja del patio</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>salir</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>next box</source>
        <translation>siguiente casilla</translation>
    </message>
    <message>
        <source>next row</source>
        <translation>siguiente renglón</translation>
    </message>
    <message>
        <source>not meas.</source>
        <translation>no med.</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>práctica</translation>
    </message>
    <message>
        <source>row back</source>
        <translation>renglón atrás</translation>
    </message>
    <message>
        <source>row {n} of {m}</source>
        <translation>renglón {n} de {m}</translation>
    </message>
    <message>
        <source>tray g</source>
        <translation>bandeja g</translation>
    </message>
    <message>
        <source>type</source>
        <translation>escribir</translation>
    </message>
    <message>
        <source>written {hour}</source>
        <translation>escrito {hour}</translation>
    </message>
    <message>
        <source>{told}, whole lot</source>
        <translation>{told}, todo</translation>
    </message>
</context>
<context>
    <name>YardPage</name>
    <message>
        <source>Yard</source>
        <translation>Patio</translation>
    </message>
    <message>
        <source>Nothing lies here; p goes to Picking, where the coffee comes from.</source>
        <translation>Aquí no hay nada; p va a Corte, de donde viene el café.</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>dibujo</translation>
    </message>
    <message>
        <source>table</source>
        <translation>tabla</translation>
    </message>
    <message>
        <source>hour handle</source>
        <translation>la hora</translation>
    </message>
    <message>
        <source>picking</source>
        <translation>corte</translation>
    </message>
</context>
<context>
    <name>YardPlan</name>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>still to leave</source>
        <translation>agua por salir</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>due</source>
        <translation>toca</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>covered</source>
        <translation>tapado</translation>
    </message>
    <message>
        <source>open</source>
        <translation>destapado</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>{lot} comes</source>
        <translation>llega {lot}</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>store</source>
        <translation>bodega</translation>
    </message>
</context>
<context>
    <name>YardSheet</name>
    <message>
        <source>patio {cells}, empty</source>
        <translation>patio {cells}, vacío</translation>
    </message>
    <message>
        <source>clear roof</source>
        <translation>techo claro</translation>
    </message>
    <message>
        <source>hoops</source>
        <translation>arcos</translation>
    </message>
    <message>
        <source>hand tarps</source>
        <translation>lonas a mano</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>al aire libre</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>{cover} below</source>
        <translation>{cover} abajo</translation>
    </message>
    <message>
        <source>{cover} above</source>
        <translation>{cover} arriba</translation>
    </message>
    <message>
        <source>hoops, up</source>
        <translation>arcos, arriba</translation>
    </message>
    <message>
        <source>hand tarps, off</source>
        <translation>lonas a mano, quitadas</translation>
    </message>
    <message>
        <source>hoops, down over {beds}</source>
        <translation>arcos, abajo sobre {beds}</translation>
    </message>
    <message>
        <source>hand tarps, on {beds}</source>
        <translation>lonas a mano, en {beds}</translation>
    </message>
    <message>
        <source>hoops, down</source>
        <translation>arcos, abajo</translation>
    </message>
    <message>
        <source>hand tarps, on</source>
        <translation>lonas a mano, puestas</translation>
    </message>
    <message>
        <source>hoops, down since {when}</source>
        <translation>arcos, abajo desde {when}</translation>
    </message>
    <message>
        <source>hand tarps, on since {when}</source>
        <translation>lonas a mano, puestas desde {when}</translation>
    </message>
    <message>
        <source>N ↑</source>
        <translation>N ↑</translation>
    </message>
</context>
<context>
    <name>YardSide</name>
    <message>
        <source>What changed since {when}</source>
        <translation>Qué cambió desde {when}</translation>
    </message>
    <message>
        <source>Nothing was written in that time.</source>
        <translation>En ese tiempo no se escribió nada.</translation>
    </message>
    <message>
        <source>and {n} before it</source>
        <translation>y {n} antes de eso</translation>
    </message>
    <message>
        <source>Nothing on the yard waits for a hand.</source>
        <translation>Nada en el patio espera una mano.</translation>
    </message>
    <message>
        <source>Act now</source>
        <translation>Actuar ya</translation>
    </message>
    <message>
        <source>Act before tonight</source>
        <translation>Actuar antes de la noche</translation>
    </message>
    <message>
        <source>Water still to leave</source>
        <translation>Agua por salir</translation>
    </message>
    <message>
        <source>A usual day takes about {litres} from this yard.</source>
        <translation>Un día usual saca unos {litres} de este patio.</translation>
    </message>
    <message>
        <source>Stronger blue = more water, by tray or meter; hatched = estimated, crossed = doubtful.</source>
        <translation>Azul más fuerte = más agua, por bandeja o medidor; rayado = estimado, cruzado = dudoso.</translation>
    </message>
    <message>
        <source>and {n} more {n:lot|lots}, {litres}</source>
        <translation>y {n} {n:lote|lotes} más, {litres}</translation>
    </message>
    <message>
        <source>bed {beds}</source>
        <translation>cama {beds}</translation>
    </message>
    <message>
        <source>beds {beds}</source>
        <translation>camas {beds}</translation>
    </message>
</context>
<context>
    <name>YardZone</name>
    <message>
        <source>Open, then shut</source>
        <translation>Destapar, luego tapar</translation>
    </message>
    <message>
        <source>The yard</source>
        <translation>El patio</translation>
    </message>
    <message>
        <source>stronger blue = more water to leave; north up</source>
        <translation>azul más fuerte = más agua por salir; norte arriba</translation>
    </message>
</context>
<context>
    <name>Zone</name>
    <message>
        <source>open</source>
        <translation>sin fin</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation>desde {time}</translation>
    </message>
    <message>
        <source>from {time}</source>
        <translation>desde {time}</translation>
    </message>
</context>
<context>
    <name>_OpenFirst</name>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>camas</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
</context>
<context>
    <name>accounts</name>
    <message>
        <source>top</source>
        <translation>primera</translation>
    </message>
    <message>
        <source>light</source>
        <translation>liviano</translation>
    </message>
    <message>
        <source>small</source>
        <translation>menudo</translation>
    </message>
    <message>
        <source>peaberry</source>
        <translation>caracol</translation>
    </message>
    <message>
        <source>retained</source>
        <translation>contramuestra</translation>
    </message>
    <message>
        <source>store</source>
        <translation>bodega</translation>
    </message>
    <message>
        <source>mill</source>
        <translation>beneficio</translation>
    </message>
    <message>
        <source>receiving</source>
        <translation>recibo</translation>
    </message>
    <message>
        <source>husk</source>
        <translation>cáscara</translation>
    </message>
    <message>
        <source>unexplained</source>
        <translation>sin explicar</translation>
    </message>
    <message>
        <source>sorted out</source>
        <translation>escogida</translation>
    </message>
    <message>
        <source>floaters</source>
        <translation>flotes</translation>
    </message>
    <message>
        <source>pulp, mucilage, juice</source>
        <translation>pulpa, mucílago, jugo</translation>
    </message>
    <message>
        <source>juice</source>
        <translation>jugo</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>gas</source>
        <translation>gas</translation>
    </message>
    <message>
        <source>picked out</source>
        <translation>sacado a mano</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>muestras</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendido</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>pruebas</translation>
    </message>
</context>
<context>
    <name>ahead</name>
    <message>
        <source>There is nothing to count a range from.</source>
        <translation>No hay de qué contar un rango.</translation>
    </message>
    <message>
        <source>Typical for this method: your own {n} finished lots.</source>
        <translation>Lo usual de este método: {n} lotes propios terminados.</translation>
    </message>
    <message>
        <source>Typical hours must be above zero, and earliest before likely before latest.</source>
        <translation>Las horas usuales deben pasar de cero, y lo más pronto ir antes de lo probable y esto antes de lo más tarde.</translation>
    </message>
    <message>
        <source>{rests_on} {remark}</source>
        <translation>{rests_on} {remark}</translation>
    </message>
    <message>
        <source>The share of lots that never get there must lie between 0 and 1.</source>
        <translation>La parte de lotes que nunca llega debe estar entre 0 y 1.</translation>
    </message>
    <message>
        <source>Typical for this method, from the settings; no reading of this lot says more yet.</source>
        <translation>Lo usual de este método, según los ajustes; ninguna lectura de este lote dice más todavía.</translation>
    </message>
    <message>
        <source>It has taken longer than such lots do.</source>
        <translation>Ha tardado más que otros lotes así.</translation>
    </message>
</context>
<context>
    <name>balance</name>
    <message>
        <source>At the mill {missing} ({share}) are unexplained: beyond the {allowed} that scales may differ.</source>
        <translation>En el beneficio {missing} ({share}) quedan sin explicar: más de los {allowed} que pueden diferir las básculas.</translation>
    </message>
    <message>
        <source>At the mill {missing} ({share}) are unexplained; up to {allowed} scales may differ.</source>
        <translation>En el beneficio {missing} ({share}) quedan sin explicar; hasta {allowed} pueden diferir las básculas.</translation>
    </message>
    <message>
        <source>On the beds {missing} of dry matter ({share}) are missing and unexplained, give or take {spread}.</source>
        <translation>En las camas faltan {missing} de materia seca ({share}) sin explicar, más o menos {spread}.</translation>
    </message>
    <message>
        <source>On the beds {missing} of dry matter unexplained, give or take {spread}: nothing to look for.</source>
        <translation>En las camas {missing} de materia seca sin explicar, más o menos {spread}: nada que buscar.</translation>
    </message>
    <message>
        <source>mill</source>
        <translation>beneficio</translation>
    </message>
    <message>
        <source>{green} of green, joined</source>
        <translation>{green} de oro, juntado</translation>
    </message>
    <message>
        <source>{sent} of {form} sent; outturn {green}, {share}</source>
        <translation>{sent} de {form} enviado; rendimiento {green}, {share}</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>camas</translation>
    </message>
</context>
<context>
    <name>boundaries</name>
    <message>
        <source>A boundary is latitude, longitude; and so on: 14.123456, -88.123456; …</source>
        <translation>Un lindero es latitud, longitud; y así: 14.123456, -88.123456; …</translation>
    </message>
    <message>
        <source>A corner of block {code} has fewer than {n} decimals, too few where a plot must be named. Keep it?</source>
        <translation>Una esquina de la parcela {code} tiene menos de {n} decimales, muy pocos donde hay que nombrar un terreno. ¿Dejarla?</translation>
    </message>
    <message>
        <source>A latitude is at most 90: latitude comes first, then longitude.</source>
        <translation>Una latitud es 90 cuando más: primero va la latitud, luego la longitud.</translation>
    </message>
    <message>
        <source>Block {code} would lie {far} from block {other}. Latitude and longitude swapped?</source>
        <translation>La parcela {code} quedaría a {far} de la parcela {other}. ¿Latitud y longitud al revés?</translation>
    </message>
    <message>
        <source>Blocks {a} and {b} share {area}. Is the boundary right?</source>
        <translation>Las parcelas {a} y {b} comparten {area}. ¿Está bien el lindero?</translation>
    </message>
    <message>
        <source>The boundary of block {code} crosses itself; type its corners in order.</source>
        <translation>El lindero de la parcela {code} se cruza a sí mismo; escriba sus esquinas en orden.</translation>
    </message>
    <message>
        <source>The boundary of block {code} holds {area}, but {typed} is typed. Keep both?</source>
        <translation>El lindero de la parcela {code} encierra {area}, pero está escrito {typed}. ¿Dejar los dos?</translation>
    </message>
</context>
<context>
    <name>cards</name>
    <message>
        <source>Being picked</source>
        <translation>En corte</translation>
    </message>
    <message>
        <source>In a tank</source>
        <translation>En pila</translation>
    </message>
    <message>
        <source>On beds</source>
        <translation>En camas</translation>
    </message>
    <message>
        <source>In store</source>
        <translation>En bodega</translation>
    </message>
    <message>
        <source>At the mill</source>
        <translation>En el beneficio</translation>
    </message>
    <message>
        <source>Green</source>
        <translation>Oro</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Ya salió</translation>
    </message>
    <message>
        <source>Still to come</source>
        <translation>Por venir</translation>
    </message>
    <message>
        <source>block {code}</source>
        <translation>parcela {code}</translation>
    </message>
    <message>
        <source>from {moment}</source>
        <translation>desde {moment}</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>not weighed yet</source>
        <translation>sin pesar aún</translation>
    </message>
    <message>
        <source>now {weight}</source>
        <translation>ahora {weight}</translation>
    </message>
    <message>
        <source>ready since {moment}</source>
        <translation>listo desde {moment}</translation>
    </message>
    <message>
        <source>{group}: {n} {n:lot|lots}, {weight}. Type “{word}” to see them.</source>
        <translation>{group}: {n} {n:lote|lotes}, {weight}. Escribir “{word}” para verlos.</translation>
    </message>
    <message>
        <source>{group}: {n} {n:lot|lots}. Type “{word}” to see them.</source>
        <translation>{group}: {n} {n:lote|lotes}. Escribir “{word}” para verlos.</translation>
    </message>
    <message>
        <source>{n} {n:doubt|doubts}</source>
        <translation>{n} {n:duda|dudas}</translation>
    </message>
    <message>
        <source>{target} not before {day}</source>
        <translation>{target} no antes de {day}</translation>
    </message>
    <message>
        <source>{target} {days}</source>
        <translation>{target} {days}</translation>
    </message>
</context>
<context>
    <name>carrying</name>
    <message>
        <source>Choose another folder, or make room.</source>
        <translation>Elegir otra carpeta, o hacer espacio.</translation>
    </message>
    <message>
        <source>Put the stick in, or name a folder that is there.</source>
        <translation>Conecte la memoria, o escriba una carpeta que exista.</translation>
    </message>
    <message>
        <source>That is the disk the season itself lies on: when it goes, both go. Is there another one?</source>
        <translation>Ese es el disco donde está la misma temporada: si se daña, se pierden las dos. ¿Hay otro?</translation>
    </message>
    <message>
        <source>The copy opens and holds all of it: {entries} {entries:row|rows}, {lots} {lots:lot|lots}.</source>
        <translation>La copia abre y tiene todo: {entries} {entries:renglón|renglones}, {lots} {lots:lote|lotes}.</translation>
    </message>
    <message>
        <source>The copy opens and holds {entries} {entries:row|rows} and {lots} {lots:lot|lots}; the season in use holds {more} {more:row|rows}.</source>
        <translation>La copia abre y tiene {entries} {entries:renglón|renglones} y {lots} {lots:lote|lotes}; la temporada en uso tiene {more} {more:renglón|renglones}.</translation>
    </message>
    <message>
        <source>The folder {folder} cannot be written: {why}.</source>
        <translation>No se puede escribir en la carpeta {folder}: {why}.</translation>
    </message>
    <message>
        <source>The folder {folder} is not empty; choose a new one.</source>
        <translation>La carpeta {folder} no está vacía; elegir una nueva.</translation>
    </message>
    <message>
        <source>The next season is two other figures than {season}.</source>
        <translation>La próxima temporada son otras dos cifras que {season}.</translation>
    </message>
    <message>
        <source>There is no folder {folder}.</source>
        <translation>No hay ninguna carpeta {folder}.</translation>
    </message>
    <message>
        <source>copy it there all the same</source>
        <translation>copiarla ahí de todos modos</translation>
    </message>
    <message>
        <source>{file} holds {rows} {rows:row|rows} and {lots} {lots:lot|lots}, {size}; it was opened and compared</source>
        <translation>{file} tiene {rows} {rows:renglón|renglones} y {lots} {lots:lote|lotes}, {size}; se abrió y se comparó</translation>
    </message>
    <message>
        <source>{lot} carried over</source>
        <translation>{lot} pasa a la otra temporada</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>against days since it was spread</source>
        <translation>según los días desde que se tendió</translation>
    </message>
    <message>
        <source>against good drying hours</source>
        <translation>contra horas buenas de secado</translation>
    </message>
    <message>
        <source>against hours</source>
        <translation>contra horas</translation>
    </message>
    <message>
        <source>against hours at 20 °C since it was filled</source>
        <translation>según las horas a 20 °C desde que se llenó</translation>
    </message>
    <message>
        <source>earliest, likely, latest</source>
        <translation>lo más pronto, probable, lo más tarde</translation>
    </message>
    <message>
        <source>{value} asked</source>
        <translation>se pide {value}</translation>
    </message>
</context>
<context>
    <name>cli</name>
    <message>
        <source>{lot}: not before {first}, open at the end.</source>
        <translation>{lot}: no antes de {first}, sin fin conocido.</translation>
    </message>
    <message>
        <source>{lot}: open.</source>
        <translation>{lot}: sin fin conocido.</translation>
    </message>
    <message>
        <source>{lot}: {days}, likely {likely}.</source>
        <translation>{lot}: {days}, probable {likely}.</translation>
    </message>
    <message>
        <source>{lot}: {days}.</source>
        <translation>{lot}: {days}.</translation>
    </message>
</context>
<context>
    <name>clock</name>
    <message>
        <source>There is no time zone called {name}.</source>
        <translation>No hay huso horario llamado {name}.</translation>
    </message>
    <message>
        <source>{hour} (night of {day})</source>
        <translation>{hour} (noche del {day})</translation>
    </message>
    <message>
        <source>{moment}</source>
        <translation>{moment}</translation>
    </message>
    <message>
        <source>“{typed}” is not a date and time; write it like 2025-01-14T18:41.</source>
        <translation>“{typed}” no es fecha y hora; se escribe así: 2025-01-14T18:41.</translation>
    </message>
    <message>
        <source>“{typed}” is not a time of day; write it like 15:20.</source>
        <translation>“{typed}” no es una hora; se escribe así: 15:20.</translation>
    </message>
</context>
<context>
    <name>codes</name>
    <message>
        <source>{code} carries the check character {right}, not {typed}: was another lot meant?</source>
        <translation>{code} lleva el signo de control {right}, no {typed}: ¿era otro lote?</translation>
    </message>
    <message>
        <source>“{typed}” is not a lot code; one looks like 25-13W.</source>
        <translation>“{typed}” no es código de lote; uno se ve así: 25-13W.</translation>
    </message>
</context>
<context>
    <name>compare</name>
    <message>
        <source>Cup score</source>
        <translation>Puntaje de taza</translation>
    </message>
    <message>
        <source>Days to {target}</source>
        <translation>Días hasta {target}</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>Ferments</source>
        <translation>Fermentos</translation>
    </message>
    <message>
        <source>Good drying hours to {target}</source>
        <translation>Horas buenas de secado hasta {target}</translation>
    </message>
    <message>
        <source>Hours at 20 °C to the target pH</source>
        <translation>Horas a 20 °C hasta el pH meta</translation>
    </message>
    <message>
        <source>One lot alone tells nothing of another; type a code to lay it over this one.</source>
        <translation>Un lote solo no dice nada de otro; escriba un código para ponerlo encima de este.</translation>
    </message>
    <message>
        <source>One to {most} lots can lie over one another.</source>
        <translation>Se pueden poner uno sobre otro de uno a {most} lotes.</translation>
    </message>
    <message>
        <source>block</source>
        <translation>parcela</translation>
    </message>
    <message>
        <source>month</source>
        <translation>mes</translation>
    </message>
    <message>
        <source>{lot}</source>
        <translation>{lot}</translation>
    </message>
    <message>
        <source>{lot} aims at no pH</source>
        <translation>{lot} no busca un pH</translation>
    </message>
    <message>
        <source>{lot} not there yet</source>
        <translation>{lot} todavía no llega</translation>
    </message>
    <message>
        <source>{lot} was not read</source>
        <translation>{lot} no se leyó</translation>
    </message>
    <message>
        <source>{lot} {took}</source>
        <translation>{lot} {took}</translation>
    </message>
    <message>
        <source>{said} {doubt}</source>
        <translation>{said} {doubt}</translation>
    </message>
    <message>
        <source>{seen} It may not be credited to {first}. {doubts}</source>
        <translation>{seen} No puede atribuirse a {first}. {doubts}</translation>
    </message>
    <message>
        <source>{seen} They met in the same blocks and months, and chance seldom parts them so far: the difference may go with the method.</source>
        <translation>{seen} Coincidieron en las mismas parcelas y meses, y el azar rara vez los separa tanto: la diferencia puede ir con el método.</translation>
    </message>
    <message>
        <source>{what}, all finished lots: {first} {a} (lots: {n}), {second} {b} (lots: {m}), a gap of {low} to {high}.</source>
        <translation>{what}, todos los lotes terminados: {first} {a} (lotes: {n}), {second} {b} (lotes: {m}), una diferencia de {low} a {high}.</translation>
    </message>
    <message>
        <source>{what}: all are {method}. They may be compared as lots; of methods nothing can be concluded.</source>
        <translation>{what}: todos son {method}. Pueden compararse como lotes; de los métodos no puede concluirse nada.</translation>
    </message>
    <message>
        <source>{what}: no finished {method} lot has it, so nothing can be concluded.</source>
        <translation>{what}: ningún lote {method} terminado lo tiene, así que no puede concluirse nada.</translation>
    </message>
    <message>
        <source>{what}: {lots}.</source>
        <translation>{what}: {lots}.</translation>
    </message>
</context>
<context>
    <name>counting</name>
    <message>
        <source>Two groups with a value or more each are needed, without gaps.</source>
        <translation>Hacen falta dos grupos con al menos un valor cada uno, sin huecos.</translation>
    </message>
    <message>
        <source>A level</source>
        <translation>Un nivel</translation>
    </message>
    <message>
        <source>A count</source>
        <translation>Un conteo</translation>
    </message>
    <message>
        <source>Chance alone parts such groups as far in {share} of cases.</source>
        <translation>La pura suerte separa así estos grupos en {share} de los casos.</translation>
    </message>
    <message>
        <source>Every {first} lot (lots: {n}) comes from {factor} {where}; {others}. The difference cannot be given to {first}.</source>
        <translation>Todos los lotes {first} (lotes: {n}) vienen de {factor} {where}; {others}. La diferencia no se le puede atribuir a {first}.</translation>
    </message>
    <message>
        <source>No {factor} is written down for the {first} lots. The difference cannot be given to {first}.</source>
        <translation>De los lotes {first} no está anotado: {factor}. La diferencia no se puede atribuir a {first}.</translation>
    </message>
    <message>
        <source>One value alone has no range.</source>
        <translation>Un solo valor no tiene rango.</translation>
    </message>
    <message>
        <source>from {label} no {group}</source>
        <translation>de {label} ninguno {group}</translation>
    </message>
    <message>
        <source>from {label} only {codes} of {group}</source>
        <translation>de {label} solo {codes} de {group}</translation>
    </message>
    <message>
        <source>from {label} only {codes} of {group}, in part</source>
        <translation>de {label} solo {codes} de {group}, en parte</translation>
    </message>
    <message>
        <source>{group} (lots: {n}): under {least} is too few to say.</source>
        <translation>{group} (lotes: {n}): menos de {least} son muy pocos para decir.</translation>
    </message>
    <message>
        <source>{hits} of {tries} is no share.</source>
        <translation>{hits} de {tries} no es una parte.</translation>
    </message>
    <message>
        <source>{what} is a whole number, 0 or more.</source>
        <translation>{what} es un número entero, 0 o más.</translation>
    </message>
    <message>
        <source>A slope needs three points or more, without gaps.</source>
        <translation>Una pendiente necesita al menos tres puntos, sin huecos.</translation>
    </message>
    <message>
        <source>All points stand at the same place.</source>
        <translation>Todos los puntos están en el mismo lugar.</translation>
    </message>
</context>
<context>
    <name>crop</name>
    <message>
        <source>An estimate needs two trees at least; 250 are asked for an error under a fifth.</source>
        <translation>Un estimado necesita al menos dos matas; se piden 250 para un error menor de un quinto.</translation>
    </message>
    <message>
        <source>Block {block} was picked {days} before. Again so soon?</source>
        <translation>La parcela {block} se cortó hace {days}. ¿Otra vez tan pronto?</translation>
    </message>
    <message>
        <source>No trees were counted yet.</source>
        <translation>Todavía no se contó ninguna mata.</translation>
    </message>
    <message>
        <source>The farm has no block {block}.</source>
        <translation>La finca no tiene parcela {block}.</translation>
    </message>
    <message>
        <source>Too few own lots are milled to say what {lot} will come to.</source>
        <translation>Muy pocos lotes propios trillados para decir en qué quedará {lot}.</translation>
    </message>
    <message>
        <source>crop estimate of block {block}</source>
        <translation>estimado de cosecha de la parcela {block}</translation>
    </message>
    <message>
        <source>ripeness of block {block}</source>
        <translation>maduración de la parcela {block}</translation>
    </message>
    <message>
        <source>round of block {block}</source>
        <translation>pasada de la parcela {block}</translation>
    </message>
    <message>
        <source>too few weigh-ins of block {block} to say how many pickers</source>
        <translation>muy pocas pesadas de la parcela {block} para decir cuántos cortadores</translation>
    </message>
    <message>
        <source>{few}–{many} pickers, likely {likely}; each brought {each} a day in the last {n} {n:round|rounds}</source>
        <translation>{few}–{many} cortadores, probable {likely}; cada uno trajo {each} por día en {n:la última|las últimas} {n} {n:pasada|pasadas}</translation>
    </message>
    <message>
        <source>{low}–{high} of cherry from {n} {n:block|blocks}</source>
        <translation>{low}–{high} de uva de {n} {n:parcela|parcelas}</translation>
    </message>
    <message>
        <source>{low}–{high} of top grade: {n} {n:box|boxes} of {box} and {rest} rest</source>
        <translation>{low}–{high} de primera: {n} {n:caja|cajas} de {box} y {rest} de resto</translation>
    </message>
    <message>
        <source>{top} of top grade: {n} {n:box|boxes} of {box} and {rest} rest</source>
        <translation>{top} de primera: {n} {n:caja|cajas} de {box} y {rest} de resto</translation>
    </message>
    <message>
        <source>{low}–{high} ripe</source>
        <translation>{low}–{high} maduro</translation>
    </message>
    <message>
        <source>{ripe} of {all} cannot be a count.</source>
        <translation>{ripe} de {all} no puede ser un conteo.</translation>
    </message>
    <message>
        <source>{text}; under 250 trees were looked at in {blocks}</source>
        <translation>{text}; se vieron menos de 250 matas en {blocks}</translation>
    </message>
</context>
<context>
    <name>dates</name>
    <message>
        <source>Jan</source>
        <translation>ene</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>feb</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>abr</translation>
    </message>
    <message>
        <source>May</source>
        <translation>may</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>jun</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>jul</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>ago</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>sep</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>oct</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>nov</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>dic</translation>
    </message>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>May </source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <source>{day} {month}</source>
        <translation>{day} de {month}</translation>
    </message>
    <message>
        <source>{day} {month} {year}</source>
        <translation>{day} de {month} de {year}</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>lunes</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>martes</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>miércoles</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>jueves</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>viernes</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>sábado</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>domingo</translation>
    </message>
</context>
<context>
    <name>defects</name>
    <message>
        <source>full black</source>
        <translation>negro completo</translation>
    </message>
    <message>
        <source>partial black</source>
        <translation>negro parcial</translation>
    </message>
    <message>
        <source>broken black</source>
        <translation>negro quebrado</translation>
    </message>
    <message>
        <source>full sour</source>
        <translation>agrio completo</translation>
    </message>
    <message>
        <source>partial sour</source>
        <translation>agrio parcial</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>dried cherry</source>
        <translation>cereza seca (bola)</translation>
    </message>
    <message>
        <source>fungus damage</source>
        <translation>daño por hongo</translation>
    </message>
    <message>
        <source>foreign matter</source>
        <translation>materia extraña</translation>
    </message>
    <message>
        <source>The table {table} speaks of {what}.</source>
        <translation>La tabla {table} habla de {what}.</translation>
    </message>
    <message>
        <source>There is no kind of defect called {kind}.</source>
        <translation>No hay un tipo de defecto llamado {kind}.</translation>
    </message>
    <message>
        <source>There is no measure called {name}.</source>
        <translation>No hay una medida llamada {name}.</translation>
    </message>
    <message>
        <source>large stone, stick or clod</source>
        <translation>piedra, palo o terrón grande</translation>
    </message>
    <message>
        <source>medium stone, stick or clod</source>
        <translation>piedra, palo o terrón mediano</translation>
    </message>
    <message>
        <source>not measured: {what}</source>
        <translation>no medido: {what}</translation>
    </message>
    <message>
        <source>small stone, stick or clod</source>
        <translation>piedra, palo o terrón pequeño</translation>
    </message>
    <message>
        <source>{kind}: a count</source>
        <translation>{kind}: un conteo</translation>
    </message>
    <message>
        <source>{kind}: a count is a whole number.</source>
        <translation>{kind}: un conteo es un número entero.</translation>
    </message>
    <message>
        <source>{number} {what}</source>
        <translation>{number} {what}</translation>
    </message>
    <message>
        <source>{table}: not counted by its own kinds</source>
        <translation>{table}: no contado por sus propios tipos</translation>
    </message>
    <message>
        <source>{table}: {result}</source>
        <translation>{table}: {result}</translation>
    </message>
    <message>
        <source>{table}: {result} (scaled from {sample})</source>
        <translation>{table}: {result} (llevado desde {sample})</translation>
    </message>
    <message>
        <source>{value}, the limit is {limit}</source>
        <translation>{value}, el límite es {limit}</translation>
    </message>
    <message>
        <source>insect damage, three holes or more</source>
        <translation>brocado, tres hoyos o más</translation>
    </message>
    <message>
        <source>insect damage, under three holes</source>
        <translation>brocado, menos de tres hoyos</translation>
    </message>
    <message>
        <source>insect damage, one hole</source>
        <translation>brocado, un hoyo</translation>
    </message>
    <message>
        <source>insect damage, two holes</source>
        <translation>brocado, dos hoyos</translation>
    </message>
    <message>
        <source>bored, clean</source>
        <translation>brocado limpio</translation>
    </message>
    <message>
        <source>bored, laced</source>
        <translation>brocado calado</translation>
    </message>
    <message>
        <source>bored, dirty</source>
        <translation>brocado sucio</translation>
    </message>
    <message>
        <source>broken, chipped or cut</source>
        <translation>quebrado, mordido o cortado</translation>
    </message>
    <message>
        <source>immature</source>
        <translation>inmaduro</translation>
    </message>
    <message>
        <source>withered</source>
        <translation>arrugado</translation>
    </message>
    <message>
        <source>shell</source>
        <translation>concha</translation>
    </message>
    <message>
        <source>floater</source>
        <translation>flotador</translation>
    </message>
    <message>
        <source>spotted</source>
        <translation>manchado</translation>
    </message>
    <message>
        <source>bean in parchment</source>
        <translation>grano en pergamino</translation>
    </message>
    <message>
        <source>large piece of parchment</source>
        <translation>pergamino, pedazo grande</translation>
    </message>
    <message>
        <source>medium piece of parchment</source>
        <translation>pergamino, pedazo mediano</translation>
    </message>
    <message>
        <source>small piece of parchment</source>
        <translation>pergamino, pedazo pequeño</translation>
    </message>
    <message>
        <source>husk</source>
        <translation>cáscara</translation>
    </message>
    <message>
        <source>large piece of husk</source>
        <translation>cáscara, pedazo grande</translation>
    </message>
    <message>
        <source>medium piece of husk</source>
        <translation>cáscara, pedazo mediano</translation>
    </message>
    <message>
        <source>small piece of husk</source>
        <translation>cáscara, pedazo pequeño</translation>
    </message>
    <message>
        <source>full imperfection</source>
        <translation>imperfección completa</translation>
    </message>
    <message>
        <source>lesser imperfection</source>
        <translation>imperfección menor</translation>
    </message>
    <message>
        <source>defects</source>
        <translation>defectos</translation>
    </message>
    <message>
        <source>primary full defects</source>
        <translation>defectos completos primarios</translation>
    </message>
    <message>
        <source>secondary full defects</source>
        <translation>defectos completos secundarios</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>actividad de agua</translation>
    </message>
    <message>
        <source>quakers in 100 g roasted</source>
        <translation>granos pálidos (quakers) en 100 g tostados</translation>
    </message>
    <message>
        <source>defective beans by weight</source>
        <translation>granos con defecto, en peso</translation>
    </message>
    <message>
        <source>black or mouldy beans by weight</source>
        <translation>granos negros o con moho, en peso</translation>
    </message>
    <message>
        <source>beans of the other type by weight</source>
        <translation>granos del otro tipo, en peso</translation>
    </message>
    <message>
        <source>A sample weight</source>
        <translation>Un peso de muestra</translation>
    </message>
</context>
<context>
    <name>doubts</name>
    <message>
        <source>{a} and {b} both lie at {place} in the books.</source>
        <translation>{a} y {b} están los dos en {place} según el cuaderno.</translation>
    </message>
    <message>
        <source>{lot}: nothing lies at {place} in the books, but it was moved from there.</source>
        <translation>{lot}: según el cuaderno no hay nada en {place}, pero de ahí se movió.</translation>
    </message>
    <message>
        <source>{lot}: weighed {more} more than the books hold there.</source>
        <translation>{lot}: pesó {more} más que en el cuaderno.</translation>
    </message>
    <message>
        <source>{lot}: written before the lot was made; its beginning is missing.</source>
        <translation>{lot}: escrito antes de que el lote existiera; falta su principio.</translation>
    </message>
    <message>
        <source>{lot}: {short} more left {place} than the books hold; a paper is missing.</source>
        <translation>{lot}: de {place} salió {short} más de lo que tiene el cuaderno; falta un papel.</translation>
    </message>
</context>
<context>
    <name>drying</name>
    <message>
        <source>A target moisture</source>
        <translation>Una humedad meta</translation>
    </message>
    <message>
        <source>A loading</source>
        <translation>Una carga</translation>
    </message>
    <message>
        <source>A starting moisture</source>
        <translation>Una humedad inicial</translation>
    </message>
    <message>
        <source>A doubt of the starting moisture</source>
        <translation>Una duda de la humedad inicial</translation>
    </message>
    <message>
        <source>A tray weight</source>
        <translation>Un peso de bandeja</translation>
    </message>
    <message>
        <source>A meter reading</source>
        <translation>Una lectura de medidor</translation>
    </message>
    <message>
        <source>Repeats of a meter reading</source>
        <translation>Las repeticiones de una lectura</translation>
    </message>
    <message>
        <source>A reading lies before the coffee was spread or after now.</source>
        <translation>Una lectura es de antes de tender el café o de después de ahora.</translation>
    </message>
    <message>
        <source>The coffee is not spread yet at that instant.</source>
        <translation>A esa hora el café todavía no está tendido.</translation>
    </message>
    <message>
        <source>A moisture on dry basis</source>
        <translation>Una humedad en base seca</translation>
    </message>
    <message>
        <source>A drive</source>
        <translation>Un empuje de secado</translation>
    </message>
    <message>
        <source>An equilibrium moisture on dry basis</source>
        <translation>Una humedad de equilibrio en base seca</translation>
    </message>
    <message>
        <source>A drying rate</source>
        <translation>Una velocidad de secado</translation>
    </message>
    <message>
        <source>A drying curve needs four readings or more; here are {n}.</source>
        <translation>Una curva de secado necesita al menos cuatro lecturas; aquí hay {n}.</translation>
    </message>
    <message>
        <source>A layer resistance</source>
        <translation>Una resistencia de la capa</translation>
    </message>
    <message>
        <source>A shape of the drying curve</source>
        <translation>Una forma de la curva de secado</translation>
    </message>
    <message>
        <source>At {t} the meter misreads; let the beans cool. Keep it?</source>
        <translation>A {t} el medidor lee mal; dejar enfriar el grano. ¿Se guarda?</translation>
    </message>
    <message>
        <source>Changing weather needs one drive for each step.</source>
        <translation>Con tiempo cambiante hace falta un empuje por cada paso.</translation>
    </message>
    <message>
        <source>A drying time</source>
        <translation>Un tiempo de secado</translation>
    </message>
    <message>
        <source>A vapour pressure deficit</source>
        <translation>Un déficit de presión de vapor</translation>
    </message>
    <message>
        <source>A moisture ratio</source>
        <translation>Una razón de humedad</translation>
    </message>
    <message>
        <source>A Page exponent</source>
        <translation>Un exponente de Page</translation>
    </message>
    <message>
        <source>It will not reach {target} in this weather: the air would hold it at about {rest}.</source>
        <translation>No llegará a {target} con este tiempo: el aire lo dejaría en unos {rest}.</translation>
    </message>
    <message>
        <source>Newton</source>
        <translation>Newton</translation>
    </message>
    <message>
        <source>Nothing of {lot} lies on {place} in the books. Move it all the same?</source>
        <translation>Según el cuaderno no hay nada de {lot} en {place}. ¿Moverlo todo de todos modos?</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Page</translation>
    </message>
    <message>
        <source>Henderson and Pabis</source>
        <translation>Henderson y Pabis</translation>
    </message>
    <message>
        <source>Rests on {meter} meter {meter:reading|readings} over {days}, your weather log, and what to expect {speed}.</source>
        <translation>Se apoya en {meter} {meter:lectura|lecturas} de medidor en {days}, el registro del tiempo y lo esperado {speed}.</translation>
    </message>
    <message>
        <source>Rests on {trays} tray {trays:weight|weights} and {meter} meter {meter:reading|readings} over {days}, your weather log, and what to expect {speed}.</source>
        <translation>Se apoya en {trays} {trays:peso|pesos} de bandeja y {meter} {meter:lectura|lecturas} de medidor en {days}, el registro del tiempo y lo esperado {speed}.</translation>
    </message>
    <message>
        <source>Rests on {trays} tray {trays:weight|weights} over {days} and no meter reading yet, your weather log, and what to expect {speed}.</source>
        <translation>Se apoya en {trays} {trays:peso|pesos} de bandeja en {days} y ninguna lectura de medidor aún, el registro del tiempo y lo esperado {speed}.</translation>
    </message>
    <message>
        <source>logarithmic</source>
        <translation>logarítmico</translation>
    </message>
    <message>
        <source>reading of {lot}</source>
        <translation>lectura de {lot}</translation>
    </message>
    <message>
        <source>two-term</source>
        <translation>de dos términos</translation>
    </message>
    <message>
        <source>Midilli</source>
        <translation>Midilli</translation>
    </message>
    <message>
        <source>Wang and Singh</source>
        <translation>Wang y Singh</translation>
    </message>
    <message>
        <source>diffusion approach</source>
        <translation>aproximación por difusión</translation>
    </message>
    <message>
        <source>Verma</source>
        <translation>Verma</translation>
    </message>
    <message>
        <source>two-term exponential</source>
        <translation>exponencial de dos términos</translation>
    </message>
    <message>
        <source>Thompson</source>
        <translation>Thompson</translation>
    </message>
    <message>
        <source>The hours of a drying curve must rise.</source>
        <translation>Las horas de una curva de secado deben ir subiendo.</translation>
    </message>
    <message>
        <source>A Fourier number</source>
        <translation>Un número de Fourier</translation>
    </message>
    <message>
        <source>A number of terms</source>
        <translation>Un número de términos</translation>
    </message>
    <message>
        <source>A temperature</source>
        <translation>Una temperatura</translation>
    </message>
    <message>
        <source>An activation energy</source>
        <translation>Una energía de activación</translation>
    </message>
    <message>
        <source>No coffee lies out for {lain}; look at the day it was spread.</source>
        <translation>Ningún café queda tendido {lain}; revise el día en que se tendió.</translation>
    </message>
    <message>
        <source>Readings must follow each other in time.</source>
        <translation>Las lecturas deben seguirse en el tiempo.</translation>
    </message>
    <message>
        <source>Readings need an instant and a value each.</source>
        <translation>Cada lectura necesita una hora y un valor.</translation>
    </message>
    <message>
        <source>The instant of a wetting</source>
        <translation>El momento de una mojada</translation>
    </message>
    <message>
        <source>The lowest, {low}, is above the highest, {high}.</source>
        <translation>La más baja, {low}, pasa de la más alta, {high}.</translation>
    </message>
    <message>
        <source>The sky is dry, cloud or rain, not “{typed}”.</source>
        <translation>El cielo es seco, nublado o lluvia, no “{typed}”.</translation>
    </message>
    <message>
        <source>There is no bed or cell {code} in the yard.</source>
        <translation>No hay cama ni celda {code} en el patio.</translation>
    </message>
    <message>
        <source>There is no drying surface called “{name}”.</source>
        <translation>No hay superficie de secado llamada “{name}”.</translation>
    </message>
    <message>
        <source>There is no tray {code}; its empty weight is needed.</source>
        <translation>No hay bandeja {code}; hace falta su peso vacía.</translation>
    </message>
    <message>
        <source>There is no way of drying called “{name}”.</source>
        <translation>No hay forma de secar llamada “{name}”.</translation>
    </message>
    <message>
        <source>Tray {code} weighs {tare} when empty; {gross} is not more.</source>
        <translation>La bandeja {code} pesa {tare} vacía; {gross} no es más.</translation>
    </message>
    <message>
        <source>Tray {tray} is {more} heavier than last time. Rain, dew, or another tray?</source>
        <translation>La bandeja {tray} pesa {more} más que la vez pasada. ¿Lluvia, sereno u otra bandeja?</translation>
    </message>
    <message>
        <source>Typical for this method in your weather, {speed}; no reading of this lot says more yet.</source>
        <translation>Lo usual de este método con este tiempo, {speed}; ninguna lectura de este lote dice más todavía.</translation>
    </message>
    <message>
        <source>beds covered</source>
        <translation>camas tapadas</translation>
    </message>
    <message>
        <source>beds opened</source>
        <translation>camas destapadas</translation>
    </message>
    <message>
        <source>weather of {day}</source>
        <translation>tiempo del {day}</translation>
    </message>
    <message>
        <source>{high} is {gap} points above the lowest reading. Is it right? Then the bed is uneven: rake it.</source>
        <translation>{high} está {gap} puntos sobre la lectura más baja. ¿Está bien? Entonces la cama está dispareja: rastrillar.</translation>
    </message>
    <message>
        <source>{lot} moved</source>
        <translation>{lot} movido</translation>
    </message>
    <message>
        <source>{other} lies on {bed} in the books. Is {lot} to lie there too?</source>
        <translation>Según el cuaderno {other} está en {bed}. ¿{lot} también va ahí?</translation>
    </message>
    <message>
        <source>{value} is above what a meter can tell; the tray can. Keep it?</source>
        <translation>{value} es más de lo que el medidor puede decir; la bandeja sí. ¿Se guarda?</translation>
    </message>
    <message>
        <source>{weight} of {lot} spread</source>
        <translation>{weight} de {lot} tendido</translation>
    </message>
    <message>
        <source>Nothing was read: give a moisture or a tray weight.</source>
        <translation>No se leyó nada: dar una humedad o un peso de bandeja.</translation>
    </message>
    <message>
        <source>outlook</source>
        <translation>tiempo esperado</translation>
    </message>
</context>
<context>
    <name>family</name>
    <message>
        <source>Each place stands there once, with its weight.</source>
        <translation>Cada lugar está una vez, con su peso.</translation>
    </message>
    <message>
        <source>Nothing was weighed in yet.</source>
        <translation>Nada pesado todavía.</translation>
    </message>
    <message>
        <source>There is no place {place}.</source>
        <translation>No hay lugar {place}.</translation>
    </message>
    <message>
        <source>block {block} {share}</source>
        <translation>parcela {block} {share}</translation>
    </message>
    <message>
        <source>kept back</source>
        <translation>contramuestra</translation>
    </message>
    <message>
        <source>not organic</source>
        <translation>no orgánico</translation>
    </message>
    <message>
        <source>not organic: its blocks differ in status</source>
        <translation>no orgánico: sus parcelas difieren</translation>
    </message>
    <message>
        <source>organic: all its blocks are certified</source>
        <translation>orgánico: todas sus parcelas certificadas</translation>
    </message>
    <message>
        <source>sample to {buyer}, {day}</source>
        <translation>muestra a {buyer}, {day}</translation>
    </message>
    <message>
        <source>sold to {buyer}, {day}</source>
        <translation>vendido a {buyer}, {day}</translation>
    </message>
    <message>
        <source>{blocks}</source>
        <translation>{blocks}</translation>
    </message>
    <message>
        <source>{blocks}; of {parents}</source>
        <translation>{blocks}; de {parents}</translation>
    </message>
    <message>
        <source>{vessel}, {weight}: {shares}</source>
        <translation>{vessel}, {weight}: {shares}</translation>
    </message>
</context>
<context>
    <name>farm</name>
    <message>
        <source>There is no such row in the notebook.</source>
        <translation>No hay tal renglón en el cuaderno.</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>tachado</translation>
    </message>
    <message>
        <source>farm set-up</source>
        <translation>datos de la finca</translation>
    </message>
    <message>
        <source>There is no lot {code} in this season.</source>
        <translation>No hay lote {code} en esta temporada.</translation>
    </message>
    <message>
        <source>This is a copy that can only be read.</source>
        <translation>Esta es una copia que solo se puede leer.</translation>
    </message>
    <message>
        <source>Close the other window, then open the season again.</source>
        <translation>Cerrar la otra ventana y volver a abrir la temporada.</translation>
    </message>
</context>
<context>
    <name>ferment</name>
    <message>
        <source>No temperature of the mass: plain clock hours.</source>
        <translation>Sin temperatura de la masa: horas de reloj.</translation>
    </message>
    <message>
        <source>The readings do not lie on a usual curve; check the probe and take another.</source>
        <translation>Las lecturas no siguen una curva usual; revisar la sonda y tomar otra.</translation>
    </message>
    <message>
        <source>The pH says nothing yet.</source>
        <translation>El pH todavía no dice nada.</translation>
    </message>
    <message>
        <source>A curve&apos;s parameter</source>
        <translation>Un parámetro de la curva</translation>
    </message>
    <message>
        <source>A factor on the spread</source>
        <translation>Un factor de la dispersión</translation>
    </message>
    <message>
        <source>A rate</source>
        <translation>Una tasa</translation>
    </message>
    <message>
        <source>A temperature of the wetting water</source>
        <translation>Una temperatura del agua para hidratar</translation>
    </message>
    <message>
        <source>Carbon dioxide: at most {day} over a working day; {danger} is dangerous at once (NIOSH, IDLH documentation 124-38-9, 1994). Nothing here measures the air. Local safety rules come first.</source>
        <translation>Dióxido de carbono: lo más {day} en una jornada; {danger} es peligroso de inmediato (NIOSH, documentación IDLH 124-38-9, 1994). Aquí nada mide el aire. Primero valen las reglas locales de seguridad.</translation>
    </message>
    <message>
        <source>Cool it now: at {temp} yeast and good bacteria die.</source>
        <translation>Enfriar ya: a {temp} mueren la levadura y las bacterias buenas.</translation>
    </message>
    <message>
        <source>Cool it now: the mass is at {temp}.</source>
        <translation>Enfriar ya: la masa está a {temp}.</translation>
    </message>
    <message>
        <source>Cool it: the mass is at {temp}.</source>
        <translation>Enfriar: la masa está a {temp}.</translation>
    </message>
    <message>
        <source>End it now: pH {ph} is at or below {limit}.</source>
        <translation>Terminar ya: pH {ph}, en {limit} o menos.</translation>
    </message>
    <message>
        <source>Feel and smell it: pH {ph} is at or below {limit}.</source>
        <translation>Tocar y oler: pH {ph}, en {limit} o menos.</translation>
    </message>
    <message>
        <source>Feel and smell it: {used} of the Brix is gone.</source>
        <translation>Tocar y oler: ya se fue {used} del Brix.</translation>
    </message>
    <message>
        <source>It will be slow: the mass is at {temp}.</source>
        <translation>Irá lento: la masa está a {temp}.</translation>
    </message>
    <message>
        <source>Look at the yeast: pH is still {ph} after {hours}.</source>
        <translation>Revisar la levadura: el pH sigue en {ph} después de {hours}.</translation>
    </message>
    <message>
        <source>Open it and smell: pH has risen again to {ph}, which is the sign of spoilage.</source>
        <translation>Destapar y oler: el pH subió otra vez a {ph}, señal de que se daña.</translation>
    </message>
    <message>
        <source>Open it: no pH below {limit} after {hours} in a shut vessel; harmful germs may have grown.</source>
        <translation>Destapar: ningún pH bajo {limit} después de {hours} en recipiente cerrado; pueden haber crecido gérmenes dañinos.</translation>
    </message>
    <message>
        <source>Open outdoors and stand aside. The gas kills without a smell. Never lean in, never open alone in a closed room.</source>
        <translation>Destapar al aire libre y hacerse a un lado. El gas mata sin olor. Nunca asomarse, nunca destapar solo en un cuarto cerrado.</translation>
    </message>
    <message>
        <source>Rinse it: the hand test passed {hours} ago.</source>
        <translation>Lavar: la prueba de mano pasó hace {hours}.</translation>
    </message>
    <message>
        <source>Take a pH: none below {limit} yet after {hours} in a shut vessel.</source>
        <translation>Tomar pH: ninguno bajo {limit} aún después de {hours} en recipiente cerrado.</translation>
    </message>
    <message>
        <source>Take a pH: none was read in {hours} in a shut vessel.</source>
        <translation>Tomar pH: no se leyó ninguno en {hours} en recipiente cerrado.</translation>
    </message>
    <message>
        <source>The latest end lies further ahead than the readings reach back; take it as open.</source>
        <translation>Lo más tarde queda más lejos de lo que alcanzan las lecturas; tomarlo como abierto.</translation>
    </message>
    <message>
        <source>The target was met by the readings themselves.</source>
        <translation>Las mismas lecturas ya llegaron a la meta.</translation>
    </message>
    <message>
        <source>There is no way of fermenting called “{name}”.</source>
        <translation>No hay un modo de fermentar llamado «{name}».</translation>
    </message>
    <message>
        <source>Typical for this method, {says}; one reading says no more.</source>
        <translation>Lo usual de este método, {says}; una lectura no dice más.</translation>
    </message>
    <message>
        <source>Wetting water of {temp} harms the yeast; take {low} to {high}.</source>
        <translation>Agua de remojo a {temp} daña la levadura; usar de {low} a {high}.</translation>
    </message>
    <message>
        <source>The target pH is reached; feel and smell decide.</source>
        <translation>El pH llegó a la meta; deciden el tacto y el olfato.</translation>
    </message>
    <message>
        <source>A lot with fewer than two pH readings teaches nothing.</source>
        <translation>Un lote con menos de dos lecturas de pH no enseña nada.</translation>
    </message>
    <message>
        <source>Ferment readings need an instant and a value each.</source>
        <translation>Cada lectura de fermento necesita una hora y un valor.</translation>
    </message>
    <message>
        <source>Ferment readings must follow each other in time.</source>
        <translation>Las lecturas de fermento deben seguirse en el tiempo.</translation>
    </message>
    <message>
        <source>A reading lies before the vessel was filled or after now.</source>
        <translation>Una lectura es de antes de llenar la pila o de después de ahora.</translation>
    </message>
    <message>
        <source>Rests on {n} {n:reading|readings} and mostly on what is typical, {says}.</source>
        <translation>Se apoya en {n} {n:lectura|lecturas} y más que todo en lo usual, {says}.</translation>
    </message>
    <message>
        <source>Rests on {n} {n:reading|readings}; about {part} of the range is still what is typical, {says}.</source>
        <translation>Se apoya en {n} {n:lectura|lecturas}; cerca de {part} del rango sigue siendo lo usual, {says}.</translation>
    </message>
    <message>
        <source>The vessel is not filled yet at that instant.</source>
        <translation>A esa hora la pila todavía no está llena.</translation>
    </message>
    <message>
        <source>A pH</source>
        <translation>Un pH</translation>
    </message>
    <message>
        <source>A target pH</source>
        <translation>Un pH meta</translation>
    </message>
    <message>
        <source>A mass temperature</source>
        <translation>Una temperatura de la masa</translation>
    </message>
    <message>
        <source>A weight of coffee</source>
        <translation>Un peso de café</translation>
    </message>
    <message>
        <source>A dose of yeast</source>
        <translation>Una dosis de levadura</translation>
    </message>
    <message>
        <source>A fall of pH</source>
        <translation>Una bajada de pH</translation>
    </message>
    <message>
        <source>A share of the fall</source>
        <translation>Una parte de la bajada</translation>
    </message>
    <message>
        <source>A curve&apos;s parameters must be above zero.</source>
        <translation>Los parámetros de una curva deben pasar de cero.</translation>
    </message>
    <message>
        <source>Ferment hours</source>
        <translation>Las horas de fermento</translation>
    </message>
    <message>
        <source>A weight of sugar</source>
        <translation>Un peso de azúcar</translation>
    </message>
    <message>
        <source>A share of sugar</source>
        <translation>Una parte de azúcar</translation>
    </message>
    <message>
        <source>A yield</source>
        <translation>Un rendimiento</translation>
    </message>
    <message>
        <source>A weight of gas</source>
        <translation>Un peso de gas</translation>
    </message>
    <message>
        <source>A volume</source>
        <translation>Un volumen</translation>
    </message>
    <message>
        <source>A room</source>
        <translation>Un cuarto</translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation>El aire fresco</translation>
    </message>
    <message>
        <source>A flow of gas</source>
        <translation>Un flujo de gas</translation>
    </message>
    <message>
        <source>A headspace</source>
        <translation>Un espacio vacío arriba</translation>
    </message>
    <message>
        <source>Purges</source>
        <translation>Las purgas</translation>
    </message>
    <message>
        <source>Carbon dioxide</source>
        <translation>El dióxido de carbono</translation>
    </message>
    <message>
        <source>A water seal</source>
        <translation>Un sello de agua</translation>
    </message>
    <message>
        <source>A temperature</source>
        <translation>Una temperatura</translation>
    </message>
    <message>
        <source>An air pressure</source>
        <translation>Una presión del aire</translation>
    </message>
    <message>
        <source>A Brix reading</source>
        <translation>Una lectura de Brix</translation>
    </message>
    <message>
        <source>A specific gravity</source>
        <translation>Un peso específico</translation>
    </message>
    <message>
        <source>The Brix rose; take a new sample from several depths.</source>
        <translation>El Brix subió; tomar otra muestra de varias profundidades.</translation>
    </message>
    <message>
        <source>Cardinal temperatures must rise, with the best one nearer to the highest than the lowest.</source>
        <translation>Las temperaturas cardinales deben ir subiendo, y la mejor estar más cerca de la más alta que de la más baja.</translation>
    </message>
    <message>
        <source>Ferment readings need instants that rise, each with its temperature or a gap.</source>
        <translation>Las lecturas de fermento necesitan horas que suban, cada una con su temperatura o un hueco.</translation>
    </message>
</context>
<context>
    <name>fermenting</name>
    <message>
        <source>Nothing was read: give a pH, a temperature or a Brix.</source>
        <translation>No se leyó nada: dar un pH, una temperatura o un Brix.</translation>
    </message>
    <message>
        <source>That is {dose}; is the weight of yeast right?</source>
        <translation>Eso es {dose}; ¿está bien el peso de levadura?</translation>
    </message>
    <message>
        <source>The farm has no vessel {code}.</source>
        <translation>La finca no tiene pila ni barril {code}.</translation>
    </message>
    <message>
        <source>pH rose from {old} to {new}. Is the probe clean?</source>
        <translation>El pH subió de {old} a {new}. ¿Está limpia la sonda?</translation>
    </message>
    <message>
        <source>pH {ph} is outside what coffee shows. Is it right?</source>
        <translation>pH {ph} está fuera de lo que muestra el café. ¿Está bien?</translation>
    </message>
    <message>
        <source>reading of {lot}</source>
        <translation>lectura de {lot}</translation>
    </message>
    <message>
        <source>rinse of {lot}</source>
        <translation>lavado de {lot}</translation>
    </message>
    <message>
        <source>yeast for {lot}</source>
        <translation>levadura para {lot}</translation>
    </message>
    <message>
        <source>{over} too much for {vessel}: at {each} of cherry a litre it is {litres}, and {vessel} takes {room}.</source>
        <translation>{over} de más para {vessel}: a {each} de uva por litro son {litres}, y en {vessel} caben {room}.</translation>
    </message>
    <message>
        <source>{step} of {place} with {lot}</source>
        <translation>{step}: {place} con {lot}</translation>
    </message>
    <message>
        <source>{value} in a ferment is unusual. Is it right?</source>
        <translation>{value} en un fermento es raro. ¿Está bien?</translation>
    </message>
    <message>
        <source>{weight} of {lot} filled</source>
        <translation>{weight} de {lot} llenado</translation>
    </message>
    <message>
        <source>“{step}” is not done to a vessel.</source>
        <translation>“{step}” no se le hace a una pila.</translation>
    </message>
</context>
<context>
    <name>figures</name>
    <message>
        <source>target</source>
        <translation>meta</translation>
    </message>
    <message>
        <source>Ferment</source>
        <translation>Fermento</translation>
    </message>
    <message>
        <source>fill {n} of {all}, {vessel}</source>
        <translation>carga {n} de {all}, {vessel}</translation>
    </message>
    <message>
        <source>mass °C</source>
        <translation>masa °C</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>no reading for {hours}</source>
        <translation>sin lectura por {hours}</translation>
    </message>
    <message>
        <source>opened {at}</source>
        <translation>destapado {at}</translation>
    </message>
    <message>
        <source>pH was not measured in {vessel}.</source>
        <translation>No se midió el pH en {vessel}.</translation>
    </message>
    <message>
        <source>pH {first} at the start.</source>
        <translation>pH {first} al inicio.</translation>
    </message>
    <message>
        <source>pH {first} to {last} in {hours}.</source>
        <translation>pH {first} a {last} en {hours}.</translation>
    </message>
    <message>
        <source>pH {first} to {last} in {hours}; target {low}–{high}.</source>
        <translation>pH {first} a {last} en {hours}; meta {low}–{high}.</translation>
    </message>
    <message>
        <source>squares: tray, hung on the meter; dots: meter</source>
        <translation>cuadros: bandeja, colgada del medidor; puntos: medidor</translation>
    </message>
    <message>
        <source>washed {at}</source>
        <translation>lavado {at}</translation>
    </message>
    <message>
        <source>{at}</source>
        <translation>{at}</translation>
    </message>
    <message>
        <source>{day}</source>
        <translation>{day}</translation>
    </message>
    <message>
        <source>{moisture} on {day}, {source}.</source>
        <translation>{moisture} el {day}, {source}.</translation>
    </message>
    <message>
        <source>{moisture} on {day}, {source}. {target} not before {first}; the end is open.</source>
        <translation>{moisture} el {day}, {source}. {target} no antes del {first}; sin fin conocido.</translation>
    </message>
    <message>
        <source>{moisture} on {day}, {source}. {target} on {days}.</source>
        <translation>{moisture} el {day}, {source}. {target} el {days}.</translation>
    </message>
    <message>
        <source>{said} No reading between {a} and {b}.</source>
        <translation>{said} Sin lectura entre {a} y {b}.</translation>
    </message>
    <message>
        <source>{target}</source>
        <translation>{target}</translation>
    </message>
    <message>
        <source>{vessel}</source>
        <translation>{vessel}</translation>
    </message>
    <message>
        <source>squares: tray, from the usual starting moisture; no meter reading it could hang on</source>
        <translation>cuadros: bandeja desde lo usual; medidor aún no</translation>
    </message>
    <message>
        <source>dots: meter</source>
        <translation>puntos: medidor</translation>
    </message>
    <message>
        <source>Moisture was not measured.</source>
        <translation>No se midió la humedad.</translation>
    </message>
    <message>
        <source>Mass {low}–{high}.</source>
        <translation>Masa {low}–{high}.</translation>
    </message>
    <message>
        <source>by meter</source>
        <translation>con medidor</translation>
    </message>
    <message>
        <source>by tray</source>
        <translation>con bandeja</translation>
    </message>
</context>
<context>
    <name>forms</name>
    <message>
        <source>whole cherry</source>
        <translation>uva entera</translation>
    </message>
    <message>
        <source>dry cherry</source>
        <translation>cereza seca</translation>
    </message>
    <message>
        <source>wet parchment</source>
        <translation>pergamino húmedo</translation>
    </message>
    <message>
        <source>dry parchment</source>
        <translation>pergamino seco</translation>
    </message>
</context>
<context>
    <name>gaps</name>
    <message>
        <source>bed {place}</source>
        <translation>cama {place}</translation>
    </message>
    <message>
        <source>beds {places}</source>
        <translation>camas {places}</translation>
    </message>
    <message>
        <source>last copy on a stick {day}: put the stick in</source>
        <translation>última copia en la memoria {day}: conecte la memoria</translation>
    </message>
    <message>
        <source>no copy on a stick yet: put the stick in</source>
        <translation>aún no hay copia en la memoria: ponerla</translation>
    </message>
    <message>
        <source>sample of {lot} to {buyer}: due {day}, not arrived</source>
        <translation>muestra de {lot} a {buyer}: debía llegar {day}, no ha llegado</translation>
    </message>
    <message>
        <source>weather of {day} is not written</source>
        <translation>falta escribir el tiempo del {day}</translation>
    </message>
    <message>
        <source>{code}: last good check {day}, {n} ago</source>
        <translation>{code}: última revisión buena {day}, hace {n}</translation>
    </message>
    <message>
        <source>{lot}, {places}: no reading since {day}</source>
        <translation>{lot}, {places}: sin lectura desde {day}</translation>
    </message>
    <message>
        <source>{lot}: sacks sum to {sum}, the platform says {total}</source>
        <translation>{lot}: los sacos suman {sum}, la plataforma dice {total}</translation>
    </message>
    <message>
        <source>{lot}: weights by {scale} since its last good check: {n}; it failed on {day}</source>
        <translation>{lot}: pesos con {scale} desde su última revisión buena: {n}; falló el {day}</translation>
    </message>
    <message>
        <source>{lot}: {picker} brought {weight}, usually {low}–{high}</source>
        <translation>{lot}: {picker} trajo {weight}, suele traer {low}–{high}</translation>
    </message>
    <message>
        <source>{vessel} with {lot}: not read for {hours}</source>
        <translation>{vessel} con {lot}: sin leer por {hours}</translation>
    </message>
</context>
<context>
    <name>gas</name>
    <message>
        <source>Air the room and lead the gas outdoors; never lean into the vessel. Shut up, it would come to {ppm}; {limit} is the limit for a working day.</source>
        <translation>Ventilar el cuarto y sacar el gas afuera; nunca asomarse al recipiente. Cerrado llegaría a {ppm}; {limit} es el límite para una jornada.</translation>
    </message>
    <message>
        <source>Keep the room aired. Shut up, this gas would come to {ppm}.</source>
        <translation>Mantener ventilado el cuarto. Cerrado, este gas llegaría a {ppm}.</translation>
    </message>
    <message>
        <source>Open doors and wait before anyone goes in; never lean into the vessel. Shut up, this gas alone would come to {ppm}; above {limit} minutes are dangerous. Nobody goes in to fetch another.</source>
        <translation>Abrir puertas y esperar antes de que alguien entre; nunca asomarse al recipiente. Cerrado, solo este gas llegaría a {ppm}; sobre {limit} bastan minutos para ser peligroso. Nadie entra a sacar a otro.</translation>
    </message>
    <message>
        <source>Open outdoors. Gas in here can kill without smell. Never lean in.</source>
        <translation>Destapar al aire libre. El gas de aquí puede matar sin olor. Nunca asomarse.</translation>
    </message>
</context>
<context>
    <name>grading</name>
    <message>
        <source>A defect count needs its sample&apos;s grams and a count.</source>
        <translation>Un conteo de defectos necesita los gramos de su muestra y un número.</translation>
    </message>
    <message>
        <source>cup table of {lot}</source>
        <translation>mesa de taza de {lot}</translation>
    </message>
    <message>
        <source>defects of {lot}</source>
        <translation>defectos de {lot}</translation>
    </message>
    <message>
        <source>reading of {lot}</source>
        <translation>lectura de {lot}</translation>
    </message>
    <message>
        <source>“{quantity}” is not read on green coffee here.</source>
        <translation>“{quantity}” no se lee aquí en café oro.</translation>
    </message>
</context>
<context>
    <name>guards</name>
    <message>
        <source>A weight cannot be below nothing; “{typed}” is.</source>
        <translation>Un peso no puede ser menos que nada; “{typed}” lo es.</translation>
    </message>
    <message>
        <source>The books hold {books} of {lot} at {place}; {grams} would leave it. A paper may be missing.</source>
        <translation>El cuaderno tiene {books} de {lot} en {place}; saldrían {grams}. Puede faltar un papel.</translation>
    </message>
    <message>
        <source>it is right</source>
        <translation>está bien</translation>
    </message>
    <message>
        <source>{when} is still to come. Is the time right?</source>
        <translation>{when} todavía no ha llegado. ¿Está bien la hora?</translation>
    </message>
    <message>
        <source>{value} cannot be: a percentage lies between 0 and 100.</source>
        <translation>{value} no puede ser: un porcentaje está entre 0 y 100.</translation>
    </message>
    <message>
        <source>{value} cannot be: it must lie between {low} and {high}.</source>
        <translation>{value} no puede ser: debe estar entre {low} y {high}.</translation>
    </message>
    <message>
        <source>{weight} is more than one weighing can be.</source>
        <translation>{weight} es más de lo que cabe en una pesada.</translation>
    </message>
    <message>
        <source>correct it</source>
        <translation>corregir</translation>
    </message>
</context>
<context>
    <name>hulling</name>
    <message>
        <source>A weight</source>
        <translation>Un peso</translation>
    </message>
    <message>
        <source>A share of green coffee</source>
        <translation>Una parte de café oro</translation>
    </message>
    <message>
        <source>Parchment per top green</source>
        <translation>El pergamino por oro de primera</translation>
    </message>
    <message>
        <source>A yield factor</source>
        <translation>Un factor de rendimiento</translation>
    </message>
    <message>
        <source>A bag</source>
        <translation>Un saco</translation>
    </message>
    <message>
        <source>A hull test needs a sample.</source>
        <translation>Una prueba de trilla necesita una muestra.</translation>
    </message>
    <message>
        <source>A hull test needs {least} or more.</source>
        <translation>Una prueba de trilla necesita {least} o más.</translation>
    </message>
    <message>
        <source>A number of weighings</source>
        <translation>Un número de pesadas</translation>
    </message>
    <message>
        <source>Take 250 to 300 g, two or three times.</source>
        <translation>Tomar de 250 a 300 g, dos o tres veces.</translation>
    </message>
    <message>
        <source>The parts of this sample weigh more than the sample.</source>
        <translation>Las partes de esta muestra pesan más que la muestra.</translation>
    </message>
    <message>
        <source>The top grade weighs more than all the green.</source>
        <translation>El mejor grado pesa más que todo el verde.</translation>
    </message>
    <message>
        <source>There is no agreed factor for {form}.</source>
        <translation>No hay factor acordado para {form}.</translation>
    </message>
    <message>
        <source>Together {share}, normal: about {mass} of {poor} was labelled {rich}.</source>
        <translation>Junto da {share}, normal: unos {mass} de {poor} llevaban el nombre {rich}.</translation>
    </message>
    <message>
        <source>{back} came back of {sent} sent.</source>
        <translation>Volvieron {back} de {sent} enviados.</translation>
    </message>
    <message>
        <source>{green} of {sent} is {share}; it cannot be more than {most}.</source>
        <translation>{green} de {sent} es {share}; no puede pasar de {most}.</translation>
    </message>
    <message>
        <source>A share of husk</source>
        <translation>Una parte de cascarilla</translation>
    </message>
</context>
<context>
    <name>instruments</name>
    <message>
        <source>A correction of nothing corrects nothing.</source>
        <translation>Una corrección de nada no corrige nada.</translation>
    </message>
    <message>
        <source>Overdue: {codes}</source>
        <translation>Vencidas: {codes}</translation>
    </message>
    <message>
        <source>as it reads</source>
        <translation>como se lee</translation>
    </message>
    <message>
        <source>aw</source>
        <translation>aw</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>{was} → {now}</source>
        <translation>{was} → {now}</translation>
    </message>
    <message>
        <source>°Bx</source>
        <translation>°Bx</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
</context>
<context>
    <name>intake</name>
    <message>
        <source>Bed {bed} and its weight belong together.</source>
        <translation>La cama {bed} y su peso van juntos.</translation>
    </message>
    <message>
        <source>Bed {bed} stands there twice.</source>
        <translation>La cama {bed} está dos veces.</translation>
    </message>
    <message>
        <source>its dry weight</source>
        <translation>su peso seco</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>rests on {dry} and {out}</source>
        <translation>se apoya en {dry} y {out}</translation>
    </message>
    <message>
        <source>{lot}, block {block}, {day}, {weight}</source>
        <translation>{lot}, parcela {block}, {day}, {weight}</translation>
    </message>
    <message>
        <source>{low}–{high} of green; boxes of {box}: {n}, rest {rest}, for samples first</source>
        <translation>{low}–{high} de oro; cajas de {box}: {n}, resto {rest}, primero para muestras</translation>
    </message>
    <message>
        <source>{text}; the mill takes no less than {least} dry</source>
        <translation>{text}; el beneficio no recibe menos de {least} en seco</translation>
    </message>
    <message>
        <source>{name}</source>
        <translation>{name}</translation>
    </message>
    <message>
        <source>{ratio} as is common, no own lots yet</source>
        <translation>{ratio}, lo común, sin lotes propios aún</translation>
    </message>
    <message>
        <source>{ratio} of {n} own {n:lot|lots}</source>
        <translation>{ratio} de {n} {n:lote propio|lotes propios}</translation>
    </message>
</context>
<context>
    <name>keeping</name>
    <message>
        <source>A remark needs words.</source>
        <translation>Una anotación necesita palabras.</translation>
    </message>
    <message>
        <source>A remark is a note, a deviation, an event or a lesson.</source>
        <translation>Una anotación es nota, desvío, suceso o lección.</translation>
    </message>
    <message>
        <source>correction of {instrument}</source>
        <translation>corrección de {instrument}</translation>
    </message>
    <message>
        <source>plan for {lot}, {weight}</source>
        <translation>plan para {lot}, {weight}</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>anotación</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>A correction needs its reason.</source>
        <translation>Una corrección necesita su motivo.</translation>
    </message>
    <message>
        <source>The farm has no instrument {code}.</source>
        <translation>La finca no tiene instrumento {code}.</translation>
    </message>
    <message>
        <source>check of {instrument}</source>
        <translation>revisión de {instrument}</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <source>{paper} of {lot}</source>
        <translation>{paper} de {lot}</translation>
    </message>
    <message>
        <source>A correction must end after it begins.</source>
        <translation>Una corrección debe terminar después de empezar.</translation>
    </message>
</context>
<context>
    <name>learning</name>
    <message>
        <source>There is no default for “{key}”.</source>
        <translation>No hay valor de inicio para “{key}”.</translation>
    </message>
    <message>
        <source>from the settings</source>
        <translation>según los ajustes</translation>
    </message>
    <message>
        <source>from {n} own {n:lot|lots}</source>
        <translation>según {n} {n:lote propio|lotes propios}</translation>
    </message>
    <message>
        <source>from {n} own {n:lot|lots} of other methods</source>
        <translation>según {n} {n:lote propio|lotes propios} de otros métodos</translation>
    </message>
    <message>
        <source>from one own lot</source>
        <translation>según un lote propio</translation>
    </message>
</context>
<context>
    <name>logger</name>
    <message>
        <source>no date</source>
        <translation>sin fecha</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>sin número</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>sin valor</translation>
    </message>
    <message>
        <source>no possible value</source>
        <translation>valor imposible</translation>
    </message>
    <message>
        <source>From line {line} on the times go back, {n} {n:time|times} in all; they are sorted.</source>
        <translation>Desde la línea {line} las horas retroceden, {n} {n:vez|veces} en total; se ordenaron.</translation>
    </message>
    <message>
        <source>Yes: move its readings by {hours}, and remember it</source>
        <translation>Sí: mover sus lecturas {hours}, y recordarlo</translation>
    </message>
    <message>
        <source>column {number}, at first {value}</source>
        <translation>columna {number}, primero {value}</translation>
    </message>
    <message>
        <source>two values at one time</source>
        <translation>dos valores a una hora</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>sin lectura</translation>
    </message>
    <message>
        <source>In {file} a comma parts both the columns and the decimals.</source>
        <translation>En {file} la coma separa tanto columnas como decimales.</translation>
    </message>
    <message>
        <source>Line {line} gives a second value for {moment}; the first counts.</source>
        <translation>La línea {line} da un segundo valor para {moment}; cuenta el primero.</translation>
    </message>
    <message>
        <source>Line {line}: {value} is no possible {quantity}.</source>
        <translation>Línea {line}: {value} no es {quantity} posible.</translation>
    </message>
    <message>
        <source>No column of {file} holds {quantity}.</source>
        <translation>Ninguna columna de {file} tiene {quantity}.</translation>
    </message>
    <message>
        <source>No line of {file} could be read as a reading.</source>
        <translation>Ninguna línea de {file} se pudo leer como lectura.</translation>
    </message>
    <message>
        <source>No line of {file} holds both a date with its hour and a number.</source>
        <translation>Ninguna línea de {file} tiene fecha con hora y un número.</translation>
    </message>
    <message>
        <source>No reading for {long}, from {begin} to {end}.</source>
        <translation>Sin lectura por {long}, de {begin} a {end}.</translation>
    </message>
    <message>
        <source>No: its clock is right</source>
        <translation>No: su reloj está bien</translation>
    </message>
    <message>
        <source>Outside {low} to {high}: {n} of the readings, from {least} to {most}. Are they true?</source>
        <translation>Fuera de {low} a {high}: {n} de las lecturas, de {least} a {most}. ¿Son ciertas?</translation>
    </message>
    <message>
        <source>Reading {file} was stopped; nothing was kept.</source>
        <translation>Se detuvo la lectura de {file}; no se guardó nada.</translation>
    </message>
    <message>
        <source>The first reading says {first}, but it was filled {filled}. Is the logger&apos;s clock in UTC?</source>
        <translation>La primera lectura dice {first}, pero se llenó {filled}. ¿El reloj del registrador está en UTC?</translation>
    </message>
    <message>
        <source>The first reading says {first}, but it was filled {filled}. Is the logger&apos;s clock wrong?</source>
        <translation>La primera lectura dice {first}, pero se llenó {filled}. ¿Está mal el reloj del registrador?</translation>
    </message>
    <message>
        <source>The last {hours} stand at {value} to the last digit, from {moment}. Did the logger stop?</source>
        <translation>Las últimas {hours} quedan en {value} hasta la última cifra, desde {moment}. ¿Se paró el registrador?</translation>
    </message>
    <message>
        <source>The readings run around {value} and name no unit. Are they °F?</source>
        <translation>Las lecturas andan por {value} y no dicen unidad. ¿Son °F?</translation>
    </message>
    <message>
        <source>Which day does this logger mean by {written}?</source>
        <translation>¿Qué día quiere decir este registrador con {written}?</translation>
    </message>
    <message>
        <source>Yes: keep them</source>
        <translation>Sí: guardarlas</translation>
    </message>
    <message>
        <source>{day}</source>
        <translation>{day}</translation>
    </message>
    <message>
        <source>{file} cannot be read: {why}.</source>
        <translation>No se puede leer {file}: {why}.</translation>
    </message>
    <message>
        <source>{file} is a workbook, not a table of text.</source>
        <translation>{file} es un libro de cálculo, no una tabla de texto.</translation>
    </message>
    <message>
        <source>{file} is empty.</source>
        <translation>{file} está vacío.</translation>
    </message>
    <message>
        <source>{file} is shorter than it was: the logger began it anew.</source>
        <translation>{file} es más corto que antes: el registrador empezó de nuevo.</translation>
    </message>
    <message>
        <source>{name}, at first {value}</source>
        <translation>{name}, primero {value}</translation>
    </message>
    <message>
        <source>{n} more of the kind “{kind}”.</source>
        <translation>{n} más del tipo “{kind}”.</translation>
    </message>
    <message>
        <source>{n} {n:reading stands|readings stand} in an hour that the clock showed twice; {n:it counts|they count} as the first.</source>
        <translation>{n} {n:lectura cae|lecturas caen} en una hora que el reloj mostró dos veces; {n:cuenta|cuentan} como la primera.</translation>
    </message>
    <message>
        <source>{n} {n:reading stands|readings stand} twice, the first on line {line}; each counts once.</source>
        <translation>{n} {n:lectura está|lecturas están} dos veces, la primera en la línea {line}; cada una cuenta una vez.</translation>
    </message>
    <message>
        <source>No: leave them out</source>
        <translation>No: dejarlas fuera</translation>
    </message>
    <message>
        <source>Yes: leave the flat part out</source>
        <translation>Sí: dejar fuera la parte plana</translation>
    </message>
    <message>
        <source>No: keep it</source>
        <translation>No: guardarla</translation>
    </message>
    <message>
        <source>Yes: they are °F</source>
        <translation>Sí: son °F</translation>
    </message>
    <message>
        <source>No: they are °C</source>
        <translation>No: son °C</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>air humidity</source>
        <translation>humedad del aire</translation>
    </message>
    <message>
        <source>Save it as CSV in the program it comes from, then read that file.</source>
        <translation>Guardarlo como CSV en el programa de donde viene, y leer ese archivo.</translation>
    </message>
    <message>
        <source>Copy it to this computer&apos;s own disk, close the program that holds it, and try again.</source>
        <translation>Copiarlo al disco de esta computadora, cerrar el programa que lo tiene y probar otra vez.</translation>
    </message>
    <message>
        <source>It must be a table with a column of dates and times and one of readings.</source>
        <translation>Debe ser una tabla con una columna de fechas y horas y una de lecturas.</translation>
    </message>
    <message>
        <source>Choose the column by hand, or another quantity.</source>
        <translation>Elegir la columna a mano, u otra medida.</translation>
    </message>
    <message>
        <source>Write it once more with semicolons between the columns, or with a decimal point.</source>
        <translation>Escribirlo otra vez con punto y coma entre columnas, o con punto decimal.</translation>
    </message>
    <message>
        <source>Which column holds the readings?</source>
        <translation>¿Qué columna tiene las lecturas?</translation>
    </message>
    <message>
        <source>It may be laid out otherwise than this logger&apos;s last file; choose its columns again.</source>
        <translation>Puede venir ordenado distinto del último archivo de este registrador; elegir otra vez sus columnas.</translation>
    </message>
    <message>
        <source>Read the whole file once more.</source>
        <translation>Leer otra vez el archivo entero.</translation>
    </message>
    <message>
        <source>Line {line}: “{typed}” is no date with its hour.</source>
        <translation>Línea {line}: “{typed}” no es fecha con su hora.</translation>
    </message>
    <message>
        <source>Line {line}: “{typed}” is no number.</source>
        <translation>Línea {line}: “{typed}” no es un número.</translation>
    </message>
    <message>
        <source>Line {line} has a time and no value.</source>
        <translation>La línea {line} tiene hora y no valor.</translation>
    </message>
</context>
<context>
    <name>lots</name>
    <message>
        <source>The moisture meter read {off} points high {when}; its readings are shown corrected.</source>
        <translation>El medidor de humedad leía {off} puntos de más {when}; sus lecturas se muestran corregidas.</translation>
    </message>
    <message>
        <source>The moisture meter read {off} points low {when}; its readings are shown corrected.</source>
        <translation>El medidor de humedad leía {off} puntos de menos {when}; sus lecturas se muestran corregidas.</translation>
    </message>
    <message>
        <source>There is no lot {code} in this season at this time.</source>
        <translation>No hay lote {code} en esta temporada a esta hora.</translation>
    </message>
    <message>
        <source>from {first} to {last}</source>
        <translation>del {first} al {last}</translation>
    </message>
    <message>
        <source>last reading pH {value}, {at}</source>
        <translation>última lectura pH {value}, {at}</translation>
    </message>
    <message>
        <source>last reading {at}</source>
        <translation>última lectura {at}</translation>
    </message>
    <message>
        <source>last reading {value}, {at}</source>
        <translation>última lectura {value}, {at}</translation>
    </message>
    <message>
        <source>since {first}</source>
        <translation>desde el {first}</translation>
    </message>
    <message>
        <source>{code} was in no vessel and on no bed then, so there is no end to ask for.</source>
        <translation>{code} no estaba entonces en pila ni en cama; no hay final que preguntar.</translation>
    </message>
    <message>
        <source>{day}: {text}</source>
        <translation>{day}: {text}</translation>
    </message>
    <message>
        <source>{line}, now {now}</source>
        <translation>{line}, ahora {now}</translation>
    </message>
    <message>
        <source>{line}, now {now} at {moisture}</source>
        <translation>{line}, ahora {now} a {moisture}</translation>
    </message>
    <message>
        <source>{method}, block {block}, picked {days}, {where}</source>
        <translation>{method}, parcela {block}, corte {days}, {where}</translation>
    </message>
    <message>
        <source>{method}, joint lot {alias}, block {block}, {where}</source>
        <translation>{method}, lote junto {alias}, parcela {block}, {where}</translation>
    </message>
    <message>
        <source>{method}, {where}</source>
        <translation>{method}, {where}</translation>
    </message>
</context>
<context>
    <name>methods</name>
    <message>
        <source>washed</source>
        <translation>lavado</translation>
    </message>
    <message>
        <source>sealed, washed</source>
        <translation>sellado, lavado</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natural</translation>
    </message>
    <message>
        <source>sealed whole, dried whole</source>
        <translation>sellado entero, seco entero</translation>
    </message>
    <message>
        <source>joint lot</source>
        <translation>lote junto</translation>
    </message>
    <message>
        <source>method not written</source>
        <translation>método sin escribir</translation>
    </message>
</context>
<context>
    <name>moves</name>
    <message>
        <source>digits swapped</source>
        <translation>cifras cambiadas</translation>
    </message>
    <message>
        <source>it was pounds</source>
        <translation>eran libras</translation>
    </message>
    <message>
        <source>nothing else</source>
        <translation>nada más</translation>
    </message>
    <message>
        <source>pay of {picker} {was} → {now}</source>
        <translation>pago de {picker} {was} → {now}</translation>
    </message>
    <message>
        <source>read wrong</source>
        <translation>mal leído</translation>
    </message>
    <message>
        <source>the week from {day} is signed and stays; {picker} gets {money} in the next</source>
        <translation>la semana del {day} está firmada y queda así; {picker} recibe {money} en la próxima</translation>
    </message>
    <message>
        <source>yeast stays {grams}, {was} → {now} on a kilogram</source>
        <translation>la levadura sigue en {grams}, {was} → {now} por kilo</translation>
    </message>
    <message>
        <source>{lot} {was} → {now} delivered</source>
        <translation>{lot} {was} → {now} entregado</translation>
    </message>
    <message>
        <source>{paper} {n} of {day} went out with the old weight</source>
        <translation>{paper} {n} del {day} salió con el peso viejo</translation>
    </message>
    <message>
        <source>{picker}: {was} → {now}. It moves: {follows}. Why?</source>
        <translation>{picker}: {was} → {now}. Cambia: {follows}. ¿Por qué?</translation>
    </message>
</context>
<context>
    <name>normals</name>
    <message>
        <source>ripe</source>
        <translation>maduro</translation>
    </message>
    <message>
        <source>floaters</source>
        <translation>flotes</translation>
    </message>
    <message>
        <source>ferment</source>
        <translation>fermento</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>own normal, {n} other lots of this method</source>
        <translation>lo propio usual, otros {n} lotes de este método</translation>
    </message>
    <message>
        <source>own normal: {n} other {n:lot|lots} of this method, too few to say</source>
        <translation>lo propio usual: {n:otro|otros} {n} {n:lote|lotes} de este método, muy pocos para decir</translation>
    </message>
    <message>
        <source>wet for accepted</source>
        <translation>húmedo por aceptado</translation>
    </message>
    <message>
        <source>{low}–{high}</source>
        <translation>{low}–{high}</translation>
    </message>
    <message>
        <source>{value}</source>
        <translation>{value}</translation>
    </message>
    <message>
        <source>{weight} of {lot}: by your {n} other lots of this method {low}–{high}. Is the weight right?</source>
        <translation>{weight} de {lot}: según sus otros {n} lotes de este método, {low}–{high}. ¿Está bien el peso?</translation>
    </message>
    <message>
        <source>loading</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>secado</translation>
    </message>
    <message>
        <source>dry for accepted</source>
        <translation>seco por aceptado</translation>
    </message>
    <message>
        <source>bed-days for accepted</source>
        <translation>días-cama por aceptado</translation>
    </message>
    <message>
        <source>outturn</source>
        <translation>rendimiento</translation>
    </message>
</context>
<context>
    <name>notebook</name>
    <message>
        <source>Choose another folder or another name.</source>
        <translation>Elegir otra carpeta u otro nombre.</translation>
    </message>
    <message>
        <source>Try again, or take another stick.</source>
        <translation>Probar otra vez, o con otra memoria.</translation>
    </message>
    <message>
        <source>Name where the difference comes from or goes.</source>
        <translation>Decir de dónde viene o a dónde va la diferencia.</translation>
    </message>
    <message>
        <source>Open it, or choose another name.</source>
        <translation>Abrirlo, o elegir otro nombre.</translation>
    </message>
    <message>
        <source>Choose where it is now, or open a copy.</source>
        <translation>Elegir dónde está ahora, o abrir una copia.</translation>
    </message>
    <message>
        <source>The last {n} {n:row is|rows are} missing: {n:it was|they were} taken out by hand.</source>
        <translation>{n:Falta el último|Faltan los últimos} {n} {n:renglón: se quitó|renglones: se quitaron} a mano.</translation>
    </message>
    <message>
        <source>This is a copy to read; nothing can be written here.</source>
        <translation>Esta es una copia para leer; aquí no se puede escribir.</translation>
    </message>
    <message>
        <source>Write on the computer that has the season open, or close it there first.</source>
        <translation>Escribir en la computadora que tiene abierta la temporada, o cerrarla allá primero.</translation>
    </message>
    <message>
        <source>Close it there, then try again. Nothing was changed.</source>
        <translation>Cerrarla allá y probar otra vez. No cambió nada.</translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation>Copiarlo a una carpeta propia y abrirlo ahí.</translation>
    </message>
    <message>
        <source>What was saved before is safe. Check the stick or the disk, or save a copy elsewhere.</source>
        <translation>Lo guardado antes está a salvo. Revisar la memoria o el disco, o guardar una copia en otro lado.</translation>
    </message>
    <message>
        <source>Open the newest copy from the folder of copies or from the stick; leave this file as it is.</source>
        <translation>Abrir la copia más nueva de la carpeta de copias o de la memoria; dejar este archivo como está.</translation>
    </message>
    <message>
        <source>Make room on the disk, then try again.</source>
        <translation>Hacer espacio en el disco y probar otra vez.</translation>
    </message>
    <message>
        <source>Check that the folder and the file are still there, and that you may open them.</source>
        <translation>Ver que la carpeta y el archivo sigan ahí y que se puedan abrir.</translation>
    </message>
    <message>
        <source>Another program has this season open. You are reading a copy made at {copied}; nothing can be written here.</source>
        <translation>Otro programa tiene abierta esta temporada. Se lee una copia hecha {copied}; no se puede escribir aquí.</translation>
    </message>
    <message>
        <source>Another program is using {file} just now.</source>
        <translation>Otro programa está usando {file} en este momento.</translation>
    </message>
    <message>
        <source>Choose the file that this program wrote.</source>
        <translation>Elegir el archivo que escribió este programa.</translation>
    </message>
    <message>
        <source>Install the newer version here, or open the file on the other computer.</source>
        <translation>Instalar aquí la versión más nueva, o abrir el archivo en la otra computadora.</translation>
    </message>
    <message>
        <source>More arrives than leaves: {over} come from nowhere. Nothing was written.</source>
        <translation>Llega más de lo que sale: {over} salen de la nada. No se escribió nada.</translation>
    </message>
    <message>
        <source>More leaves than arrives: {over} go nowhere. Nothing was written.</source>
        <translation>Sale más de lo que llega: {over} no van a ningún lado. No se escribió nada.</translation>
    </message>
    <message>
        <source>Nothing can be written to {file}: the file, its folder or the stick is write-protected.</source>
        <translation>No se puede escribir en {file}: el archivo, su carpeta o la memoria está protegida.</translation>
    </message>
    <message>
        <source>Row {n}, written {at}, was changed by hand.</source>
        <translation>El renglón {n}, escrito {at}, se cambió a mano.</translation>
    </message>
    <message>
        <source>Rows of “{name}” belong to no entry.</source>
        <translation>Renglones de “{name}” no son de ningún apunte.</translation>
    </message>
    <message>
        <source>The copy {file} is not the same as the season file; it was removed.</source>
        <translation>La copia {file} no es igual al archivo de la temporada; se quitó.</translation>
    </message>
    <message>
        <source>The disk did not do its part while {file} was in use.</source>
        <translation>El disco no hizo su parte mientras {file} estaba en uso.</translation>
    </message>
    <message>
        <source>The disk is full; nothing was written to {file}.</source>
        <translation>El disco está lleno; no se escribió nada en {file}.</translation>
    </message>
    <message>
        <source>The file is damaged: {what}.</source>
        <translation>El archivo está dañado: {what}.</translation>
    </message>
    <message>
        <source>{n} {n:row|rows} before the one written {at} {n:is|are} missing: {n:it was|they were} taken out by hand.</source>
        <translation>{n:Falta|Faltan} {n} {n:renglón|renglones} antes del escrito {at}: {n:se quitó|se quitaron} a mano.</translation>
    </message>
    <message>
        <source>The notebook cannot be folded: {what}.</source>
        <translation>No se puede repasar el cuaderno: {what}.</translation>
    </message>
    <message>
        <source>The weights of this row do not sum to zero: {over} over.</source>
        <translation>Los pesos de este renglón no suman cero: sobran {over}.</translation>
    </message>
    <message>
        <source>The {kind} “{name}” of the file is not as this program made it.</source>
        <translation>{kind} “{name}” del archivo no está como lo hizo este programa.</translation>
    </message>
    <message>
        <source>There is a file called {file} already.</source>
        <translation>Ya hay un archivo llamado {file}.</translation>
    </message>
    <message>
        <source>There is no file called {file} here any more.</source>
        <translation>Ya no hay aquí un archivo llamado {file}.</translation>
    </message>
    <message>
        <source>Version {version} of method {letter} stays as it is; save the change as version {next}.</source>
        <translation>La versión {version} del método {letter} queda como está; guardar el cambio como versión {next}.</translation>
    </message>
    <message>
        <source>{file} cannot be copied onto itself.</source>
        <translation>{file} no se puede copiar sobre sí mismo.</translation>
    </message>
    <message>
        <source>{file} cannot be opened.</source>
        <translation>No se puede abrir {file}.</translation>
    </message>
    <message>
        <source>{file} is damaged and cannot be read whole.</source>
        <translation>{file} está dañado y no se puede leer entero.</translation>
    </message>
    <message>
        <source>{file} is not a season file.</source>
        <translation>{file} no es un archivo de temporada.</translation>
    </message>
    <message>
        <source>{file} was written by a newer version of this program; it was not touched.</source>
        <translation>{file} lo escribió una versión más nueva de este programa; no se tocó.</translation>
    </message>
    <message>
        <source>{who} has this season open since {since}. You are reading a copy made at {copied}; nothing can be written here.</source>
        <translation>{who} tiene abierta esta temporada desde {since}. Se lee una copia hecha {copied}; no se puede escribir aquí.</translation>
    </message>
</context>
<context>
    <name>notebook_page</name>
    <message>
        <source>Say why the row is struck out.</source>
        <translation>Decir por qué se tacha el renglón.</translation>
    </message>
    <message>
        <source>The row is struck out already.</source>
        <translation>El renglón ya está tachado.</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>tachado</translation>
    </message>
    <message>
        <source>a row that is not here</source>
        <translation>un renglón que no está aquí</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>movido</translation>
    </message>
    <message>
        <source>sorted</source>
        <translation>escogido</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>llenado</translation>
    </message>
    <message>
        <source>crop count in {block}: {n} {n:tree|trees}, {mean} a tree</source>
        <translation>conteo de cosecha en {block}: {n} {n:mata|matas}, {mean} por mata</translation>
    </message>
    <message>
        <source>cup {score}, {n} {n:sitting|sittings}</source>
        <translation>taza {score}, {n} {n:sesión|sesiones}</translation>
    </message>
    <message>
        <source>rinsed {n} {n:time|times}</source>
        <translation>lavado {n} {n:vez|veces}</translation>
    </message>
    <message>
        <source>rinsed {n} {n:time|times}, {litres}</source>
        <translation>lavado {n} {n:vez|veces}, {litres}</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>tendido</translation>
    </message>
    <message>
        <source>weather of {day}: {low}–{high}, {rh}, {rain}, {good} good</source>
        <translation>tiempo del {day}: {low}–{high}, {rh}, {rain}, {good} buenas</translation>
    </message>
    <message>
        <source>weigh-in of {who}, block {block}: {weight}</source>
        <translation>pesada de {who}, parcela {block}: {weight}</translation>
    </message>
    <message>
        <source>weighed into the store</source>
        <translation>pesado a bodega</translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation>enviado al beneficio</translation>
    </message>
    <message>
        <source>back from the mill</source>
        <translation>vuelve del beneficio</translation>
    </message>
    <message>
        <source>used for tests</source>
        <translation>usado en pruebas</translation>
    </message>
    <message>
        <source>kept as a sample</source>
        <translation>guardado como muestra</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>juntado</translation>
    </message>
    <message>
        <source>cut off</source>
        <translation>apartado del lote</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>advance to {who}: {amount}</source>
        <translation>adelanto a {who}: {amount}</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>block {block}: {ripe} ripe of {n} looked at</source>
        <translation>parcela {block}: {ripe} maduros de {n} vistos</translation>
    </message>
    <message>
        <source>check of {tool}: good</source>
        <translation>revisión de {tool}: bien</translation>
    </message>
    <message>
        <source>check of {tool}: off</source>
        <translation>revisión de {tool}: mal</translation>
    </message>
    <message>
        <source>correction of {tool} from {day}</source>
        <translation>corrección de {tool} desde {day}</translation>
    </message>
    <message>
        <source>day work of {who} on {day}: {amount}</source>
        <translation>jornal de {who} el {day}: {amount}</translation>
    </message>
    <message>
        <source>defects counted in {g}</source>
        <translation>defectos contados en {g}</translation>
    </message>
    <message>
        <source>expected of {day}: {words}</source>
        <translation>se espera el {day}: {words}</translation>
    </message>
    <message>
        <source>hull test: {g} green of {all}</source>
        <translation>prueba de trilla: {g} oro de {all}</translation>
    </message>
    <message>
        <source>in {place}</source>
        <translation>en {place}</translation>
    </message>
    <message>
        <source>not measured on {day}</source>
        <translation>no medido el {day}</translation>
    </message>
    <message>
        <source>on {place}</source>
        <translation>en {place}</translation>
    </message>
    <message>
        <source>paper given, version {n}</source>
        <translation>papel entregado, versión {n}</translation>
    </message>
    <message>
        <source>pay closed, {first} to {last}</source>
        <translation>pago cerrado, {first} a {last}</translation>
    </message>
    <message>
        <source>plan: {weight} of {block} on {day}</source>
        <translation>plan: {weight} de {block} el {day}</translation>
    </message>
    <message>
        <source>platform total {weight}</source>
        <translation>total de plataforma {weight}</translation>
    </message>
    <message>
        <source>weighed wet, drained for</source>
        <translation>pesado mojado, escurrido</translation>
    </message>
    <message>
        <source>{n} {n:bag|bags} on pallet {pallet}</source>
        <translation>{n} {n:saco|sacos} en la tarima {pallet}</translation>
    </message>
    <message>
        <source>{n} {n:row|rows} of {logger} read from {file}</source>
        <translation>{n} {n:renglón|renglones} de {logger} leídos de {file}</translation>
    </message>
    <message>
        <source>round in {block} on {day}, {weight}</source>
        <translation>pasada en {block} el {day}, {weight}</translation>
    </message>
    <message>
        <source>sample of {weight} to {buyer}</source>
        <translation>muestra de {weight} a {buyer}</translation>
    </message>
    <message>
        <source>screens: {weight}</source>
        <translation>cribas: {weight}</translation>
    </message>
    <message>
        <source>struck out: {row}</source>
        <translation>tachado: {row}</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>azúcar</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>{act}: {parts}</source>
        <translation>{act}: {parts}</translation>
    </message>
    <message>
        <source>{act}: {places}</source>
        <translation>{act}: {places}</translation>
    </message>
    <message>
        <source>{name} {values}</source>
        <translation>{name} {values}</translation>
    </message>
    <message>
        <source>{ripe} ripe of {n} counted</source>
        <translation>{ripe} maduros de {n} contados</translation>
    </message>
    <message>
        <source>{weight} held for {buyer}</source>
        <translation>{weight} apartado para {buyer}</translation>
    </message>
    <message>
        <source>{weight} of yeast pitched</source>
        <translation>{weight} de levadura puesta</translation>
    </message>
    <message>
        <source>{weight} sold to {buyer}</source>
        <translation>{weight} vendido a {buyer}</translation>
    </message>
    <message>
        <source>{weight} sold to {buyer}, if approved</source>
        <translation>{weight} vendido a {buyer}, si aprueba</translation>
    </message>
    <message>
        <source>{weight} {account}</source>
        <translation>{weight} {account}</translation>
    </message>
    <message>
        <source>{words}</source>
        <translation>{words}</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>actividad de agua</translation>
    </message>
    <message>
        <source>air of the store</source>
        <translation>aire de la bodega</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidad</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>cloud</source>
        <translation>nublado</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>sellado</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>destapado</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>lavado</translation>
    </message>
    <message>
        <source>cooled</source>
        <translation>enfriado</translation>
    </message>
    <message>
        <source>sample arrived</source>
        <translation>muestra llegó</translation>
    </message>
    <message>
        <source>sample lost</source>
        <translation>muestra perdida</translation>
    </message>
    <message>
        <source>sample answered</source>
        <translation>muestra respondida</translation>
    </message>
    <message>
        <source>lot begun</source>
        <translation>lote empezado</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>covered</source>
        <translation>tapado</translation>
    </message>
    <message>
        <source>news of a sample</source>
        <translation>noticia de una muestra</translation>
    </message>
    <message>
        <source>The row is not struck out.</source>
        <translation>El renglón no está tachado.</translation>
    </message>
    <message>
        <source>brought back</source>
        <translation>recuperado</translation>
    </message>
</context>
<context>
    <name>papers</name>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>done by</source>
        <translation>hecho por</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>mass °C</source>
        <translation>masa °C</translation>
    </message>
    <message>
        <source>version {n}</source>
        <translation>versión {n}</translation>
    </message>
    <message>
        <source>{code} {check}, version {n}.</source>
        <translation>{code} {check}, versión {n}.</translation>
    </message>
    <message>
        <source>{file} could not be written: {why}.</source>
        <translation>{file} no se pudo escribir: {why}.</translation>
    </message>
    <message>
        <source>{lot}, {method}, {weight}</source>
        <translation>{lot}, {method}, {weight}</translation>
    </message>
    <message>
        <source>{name} {weight}</source>
        <translation>{name} {weight}</translation>
    </message>
    <message>
        <source>{n} of {all}</source>
        <translation>{n} de {all}</translation>
    </message>
    <message>
        <source>{n} {n:envelope|envelopes}</source>
        <translation>{n} {n:sobre|sobres}</translation>
    </message>
    <message>
        <source>{said}; look again by {time}</source>
        <translation>{said}; volver a mirar antes de {time}</translation>
    </message>
    <message>
        <source>{title}, {farm}, made {at}.</source>
        <translation>{title}, {farm}, hecha {at}.</translation>
    </message>
    <message>
        <source>{title}, {farm}, {lot}, {day}; cut along the lines.</source>
        <translation>{title}, {farm}, {lot}, {day}; cortar por las líneas.</translation>
    </message>
    <message>
        <source>{weight}   {share}</source>
        <translation>{weight}   {share}</translation>
    </message>
    <message>
        <source>°Bx</source>
        <translation>°Bx</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>A wet tarp is heavy: lift it by two.</source>
        <translation>La lona mojada pesa: entre dos.</translation>
    </message>
    <message>
        <source>At most {load} alone and close to the body (NIOSH 94-110, 1994).</source>
        <translation>Una persona sola, lo más {load} y pegado al cuerpo (NIOSH 94-110, 1994).</translation>
    </message>
    <message>
        <source>Lot sheet {code}</source>
        <translation>Hoja del lote {code}</translation>
    </message>
    <message>
        <source>Mill, {day}</source>
        <translation>Beneficio, {day}</translation>
    </message>
    <message>
        <source>Night sheet</source>
        <translation>Hoja de noche</translation>
    </message>
    <message>
        <source>No vessel is at work tonight.</source>
        <translation>Esta noche no trabaja ninguna pila.</translation>
    </message>
    <message>
        <source>Notes and coins</source>
        <translation>Billetes y monedas</translation>
    </message>
    <message>
        <source>Pay sheet</source>
        <translation>Planilla</translation>
    </message>
    <message>
        <source>Readings, {hour}</source>
        <translation>Lecturas, {hour}</translation>
    </message>
    <message>
        <source>Sack tags</source>
        <translation>Etiquetas de saco</translation>
    </message>
    <message>
        <source>Struck: above {limit} the meter does not serve, only the tray.</source>
        <translation>Raya: arriba de {limit} el medidor no sirve, solo la bandeja.</translation>
    </message>
    <message>
        <source>Weigh-in sheet</source>
        <translation>Hoja de pesadas</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>advance</source>
        <translation>adelanto</translation>
    </message>
    <message>
        <source>after {minutes}</source>
        <translation>a los {minutes}</translation>
    </message>
    <message>
        <source>all of it takes {minutes}</source>
        <translation>todo toma {minutes}</translation>
    </message>
    <message>
        <source>and block … , kg</source>
        <translation>y parcela … , kg</translation>
    </message>
    <message>
        <source>and {n} more in the notebook</source>
        <translation>y {n} más en el cuaderno</translation>
    </message>
    <message>
        <source>beds {days}</source>
        <translation>camas {days}</translation>
    </message>
    <message>
        <source>beds {days}, {a} → {b}</source>
        <translation>camas {days}, {a} → {b}</translation>
    </message>
    <message>
        <source>block {block} {variety}</source>
        <translation>parcela {block} {variety}</translation>
    </message>
    <message>
        <source>block {code}</source>
        <translation>parcela {code}</translation>
    </message>
    <message>
        <source>blocks {codes}</source>
        <translation>parcelas {codes}</translation>
    </message>
    <message>
        <source>bonus</source>
        <translation>bono</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>code</source>
        <translation>código</translation>
    </message>
    <message>
        <source>day work</source>
        <translation>jornal</translation>
    </message>
    <message>
        <source>dry on {days}, expected</source>
        <translation>seco {days}, esperado</translation>
    </message>
    <message>
        <source>dry on {day} at the earliest</source>
        <translation>seco {day} lo más pronto</translation>
    </message>
    <message>
        <source>empty sack, kg</source>
        <translation>saco vacío, kg</translation>
    </message>
    <message>
        <source>end not known</source>
        <translation>final no se sabe</translation>
    </message>
    <message>
        <source>end not known; by the method at latest {at}</source>
        <translation>final no se sabe; por el método lo más tarde {at}</translation>
    </message>
    <message>
        <source>ferment ends on {days}, expected</source>
        <translation>fin del fermento {days}, esperado</translation>
    </message>
    <message>
        <source>ferment ends on {day} at the earliest</source>
        <translation>fin del fermento {day} lo más pronto</translation>
    </message>
    <message>
        <source>in the night: {end}</source>
        <translation>en la noche: {end}</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>last {values} at {at}</source>
        <translation>última {values}, {at}</translation>
    </message>
    <message>
        <source>mass {value}</source>
        <translation>masa {value}</translation>
    </message>
    <message>
        <source>milled {day}</source>
        <translation>trillado {day}</translation>
    </message>
    <message>
        <source>mixed: this block, kg</source>
        <translation>mezclado: esta parcela, kg</translation>
    </message>
    <message>
        <source>net</source>
        <translation>a pagar</translation>
    </message>
    <message>
        <source>night of {day}</source>
        <translation>noche del {day}</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>sin medir aún</translation>
    </message>
    <message>
        <source>Yard sheet</source>
        <translation>Hoja del patio</translation>
    </message>
    <message>
        <source>Nothing lies on the beds.</source>
        <translation>No hay nada en las camas.</translation>
    </message>
    <message>
        <source>three depths; beans cooled in the shade</source>
        <translation>tres profundidades; grano enfriado a la sombra</translation>
    </message>
    <message>
        <source>Open, in this order</source>
        <translation>Destapar, en este orden</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>last</source>
        <translation>última</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>at rest, {n} {n:day|days}</source>
        <translation>en reposo, {n} {n:día|días}</translation>
    </message>
    <message>
        <source>at rest, {n} {n:day|days} so far</source>
        <translation>en reposo, {n} {n:día|días} hasta hoy</translation>
    </message>
    <message>
        <source>of {total}; round holes, 1/64 inch</source>
        <translation>de {total}; hoyo redondo, 1/64 de pulgada</translation>
    </message>
    <message>
        <source>pH {value}</source>
        <translation>pH {value}</translation>
    </message>
    <message>
        <source>picked {days}</source>
        <translation>corte {days}</translation>
    </message>
    <message>
        <source>pickers</source>
        <translation>cortadores</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>destajo</translation>
    </message>
    <message>
        <source>ready {a} at the earliest, end open</source>
        <translation>listo {a} lo más pronto, fin abierto</translation>
    </message>
    <message>
        <source>ready {a}–{b}</source>
        <translation>listo {a}–{b}</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>redondeo</translation>
    </message>
    <message>
        <source>signature or thumb</source>
        <translation>firma o huella</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>since {since}; {last}</source>
        <translation>desde {since}; {last}</translation>
    </message>
    <message>
        <source>store {day}</source>
        <translation>bodega {day}</translation>
    </message>
    <message>
        <source>sum</source>
        <translation>suma</translation>
    </message>
    <message>
        <source>test weight</source>
        <translation>peso de prueba</translation>
    </message>
    <message>
        <source>to be signed</source>
        <translation>para firmar</translation>
    </message>
    <message>
        <source>together {total}</source>
        <translation>junto {total}</translation>
    </message>
    <message>
        <source>top-up</source>
        <translation>al mínimo</translation>
    </message>
    <message>
        <source>total</source>
        <translation>total</translation>
    </message>
    <message>
        <source>tray g</source>
        <translation>bandeja g</translation>
    </message>
    <message>
        <source>bean °C</source>
        <translation>grano °C</translation>
    </message>
    <message>
        <source>If rain comes</source>
        <translation>Si viene lluvia</translation>
    </message>
    <message>
        <source>No bed in the open holds coffee.</source>
        <translation>Ninguna cama al aire libre tiene café.</translation>
    </message>
    <message>
        <source>Cover in this order</source>
        <translation>Tapar, en este orden</translation>
    </message>
    <message>
        <source>covered at</source>
        <translation>tapado a las</translation>
    </message>
    <message>
        <source>darker: more water, in %; dashed: free; north ↑</source>
        <translation>más oscuro: más agua, en %; punteado: libre; norte ↑</translation>
    </message>
    <message>
        <source>earliest, likely, latest</source>
        <translation>lo más pronto, probable, lo más tarde</translation>
    </message>
    <message>
        <source>triangles: where it hangs</source>
        <translation>triángulos: de donde cuelga</translation>
    </message>
    <message>
        <source>crosses: as read, before the correction</source>
        <translation>cruces: como se leyó, antes de corregir</translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>Hoja del lote</translation>
    </message>
    <message>
        <source>Solid marks were measured with an instrument; hollow or hatched ones were computed or estimated; darker on the strip is wetter.</source>
        <translation>Las marcas llenas se midieron con instrumento; las huecas o rayadas se calcularon o estimaron; más oscuro en la franja es más mojado.</translation>
    </message>
    <message>
        <source>No people are named on this sheet, and no place is given by coordinates.</source>
        <translation>Esta hoja no nombra personas ni da lugares por coordenadas.</translation>
    </message>
    <message>
        <source>(the rest stands in the notebook)</source>
        <translation>(lo demás está en el cuaderno)</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>moisture, % wet basis</source>
        <translation>humedad, % base húmeda</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Pesos</translation>
    </message>
    <message>
        <source>Mill</source>
        <translation>Beneficio</translation>
    </message>
    <message>
        <source>Green coffee</source>
        <translation>Café oro</translation>
    </message>
    <message>
        <source>Screens</source>
        <translation>Cribas</translation>
    </message>
    <message>
        <source>What differed from the method</source>
        <translation>Qué se apartó del método</translation>
    </message>
    <message>
        <source>Close it in other programs, or choose another folder.</source>
        <translation>Cerrarlo en otros programas, o elegir otra carpeta.</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>práctica</translation>
    </message>
    <message>
        <source>in vessels</source>
        <translation>en pilas</translation>
    </message>
    <message>
        <source>store</source>
        <translation>bodega</translation>
    </message>
    <message>
        <source>good hours</source>
        <translation>horas buenas</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
</context>
<context>
    <name>pay</name>
    <message>
        <source>No picking rate is set, so nothing can be paid by weight.</source>
        <translation>No hay precio de corte; no se puede pagar por peso.</translation>
    </message>
    <message>
        <source>A share of a day lies between nothing and one.</source>
        <translation>Una parte de día está entre nada y uno.</translation>
    </message>
    <message>
        <source>Add the code on the page Farm, under people.</source>
        <translation>Agregar el código en la página Finca, en gente.</translation>
    </message>
    <message>
        <source>An amount of money must be above nothing.</source>
        <translation>Una cantidad de dinero debe pasar de nada.</translation>
    </message>
    <message>
        <source>Set the rate for a kilogram on the page Farm: r, figures.</source>
        <translation>Ponga el precio del kilogramo en la página Finca: r, cifras.</translation>
    </message>
    <message>
        <source>The farm has no picker {code}.</source>
        <translation>La finca no tiene cortador {code}.</translation>
    </message>
    <message>
        <source>The week from {day} is signed already.</source>
        <translation>La semana del {day} ya está firmada.</translation>
    </message>
    <message>
        <source>advance to {picker}</source>
        <translation>adelanto a {picker}</translation>
    </message>
    <message>
        <source>day work of {picker}</source>
        <translation>jornal de {picker}</translation>
    </message>
    <message>
        <source>pay of the week from {day}</source>
        <translation>pago de la semana del {day}</translation>
    </message>
    <message>
        <source>{amount} cannot be paid out: the smallest coin is {coin}.</source>
        <translation>{amount} no se puede pagar: la moneda más chica es {coin}.</translation>
    </message>
    <message>
        <source>{n} {n:sack has|sacks have} no known picker; name {n:it|them} before the week is signed.</source>
        <translation>{n} {n:saco no tiene|sacos no tienen} cortador conocido; nombrarlo antes de firmar la semana.</translation>
    </message>
</context>
<context>
    <name>pay_page</name>
    <message>
        <source>Sign {days}? A signed week never changes; what is found later is settled in the next one.</source>
        <translation>¿Firmar {days}? Una semana firmada no cambia; lo que se halle después se arregla en la próxima.</translation>
    </message>
    <message>
        <source>signed by all</source>
        <translation>firmada por todos</translation>
    </message>
</context>
<context>
    <name>pay_story</name>
    <message>
        <source>Nobody has worked in the week {days}.</source>
        <translation>Nadie trabajó en la semana {days}.</translation>
    </message>
    <message>
        <source>Nothing to pay.</source>
        <translation>Nada que pagar.</translation>
    </message>
    <message>
        <source>{days} is signed: {total} for {n} {n:picker|pickers}.</source>
        <translation>{days} está firmada: {total} para {n} {n:cortador|cortadores}.</translation>
    </message>
    <message>
        <source>{days}: {total} for {n} {n:picker|pickers}, not signed yet.</source>
        <translation>{days}: {total} para {n} {n:cortador|cortadores}, sin firmar aún.</translation>
    </message>
    <message>
        <source>{days}: {total} for {n} {n:picker|pickers}; {loose} {loose:sack has|sacks have} no known picker.</source>
        <translation>{days}: {total} para {n} {n:cortador|cortadores}; {loose} {loose:saco no tiene|sacos no tienen} cortador conocido.</translation>
    </message>
</context>
<context>
    <name>picking</name>
    <message>
        <source>the same, kept once</source>
        <translation>la misma, guardada una vez</translation>
    </message>
    <message>
        <source>another sack</source>
        <translation>otro saco</translation>
    </message>
    <message>
        <source>A half-day is 1 for the morning or 2 for the afternoon.</source>
        <translation>Una media jornada es 1 para la mañana o 2 para la tarde.</translation>
    </message>
    <message>
        <source>A half-day is am or pm, not “{typed}”.</source>
        <translation>Una media jornada es am o pm, no “{typed}”.</translation>
    </message>
    <message>
        <source>A sheet is in kg, lb or qq.</source>
        <translation>Una hoja va en kg, lb o qq.</translation>
    </message>
    <message>
        <source>Neither what was sorted out nor what floated is there.</source>
        <translation>Falta tanto la escogida como los flotes.</translation>
    </message>
    <message>
        <source>The farm has no block {block}.</source>
        <translation>La finca no tiene parcela {block}.</translation>
    </message>
    <message>
        <source>The farm has no method {letter}.</source>
        <translation>La finca no tiene método {letter}.</translation>
    </message>
    <message>
        <source>The rows sum to {sum}, the paper says {total}: {apart} apart.</source>
        <translation>Los renglones suman {sum}, el papel dice {total}: {apart} de diferencia.</translation>
    </message>
    <message>
        <source>The slip of {picker} kept {at} says {kept}; this one says {now}. Which is right?</source>
        <translation>La boleta de {picker} guardada {at} dice {kept}; esta dice {now}. ¿Cuál está bien?</translation>
    </message>
    <message>
        <source>The tare of {tare} is not less than {gross}.</source>
        <translation>La tara de {tare} no es menos que {gross}.</translation>
    </message>
    <message>
        <source>There is no lot {code} in this season.</source>
        <translation>No hay lote {code} en esta temporada.</translation>
    </message>
    <message>
        <source>it is right</source>
        <translation>está bien</translation>
    </message>
    <message>
        <source>no total written</source>
        <translation>sin total escrito</translation>
    </message>
    <message>
        <source>platform total {weight} for {lot}</source>
        <translation>total de plataforma {weight} de {lot}</translation>
    </message>
    <message>
        <source>pounds: {weight}</source>
        <translation>libras: {weight}</translation>
    </message>
    <message>
        <source>ripeness count for {lot}</source>
        <translation>conteo de maduro de {lot}</translation>
    </message>
    <message>
        <source>sort and float of {lot}</source>
        <translation>escogida y flotes de {lot}</translation>
    </message>
    <message>
        <source>the one kept</source>
        <translation>la guardada</translation>
    </message>
    <message>
        <source>this one, correct it</source>
        <translation>esta, corregirla</translation>
    </message>
    <message>
        <source>{apart} {why}</source>
        <translation>{apart} {why}</translation>
    </message>
    <message>
        <source>{code} begun</source>
        <translation>{code} empezado</translation>
    </message>
    <message>
        <source>{code} exists already.</source>
        <translation>{code} ya existe.</translation>
    </message>
    <message>
        <source>{n} {n:row sums|rows sum} to {sum}, as the paper says</source>
        <translation>{n} {n:renglón suma|renglones suman} {sum}, como dice el papel</translation>
    </message>
    <message>
        <source>{n} {n:row|rows} kept, the last at {at}</source>
        <translation>{n} {n:renglón|renglones} guardados, el último {at}</translation>
    </message>
    <message>
        <source>{n} {n:row|rows} of {all} kept, the last at {at}</source>
        <translation>{n} {n:renglón|renglones} de {all} guardados, el último {at}</translation>
    </message>
    <message>
        <source>{other} is meant</source>
        <translation>quiso decir {other}</translation>
    </message>
    <message>
        <source>{picker} usually brings {low}–{high}; {typed} does not fit, {other} would. Is the point right?</source>
        <translation>{picker} suele traer {low}–{high}; {typed} no cabe, {other} sí. ¿Está bien el punto?</translation>
    </message>
    <message>
        <source>{picker} {weight} stands there already; {n} {n:row|rows} of this sheet {n:was|were} kept, the last {at}. Same slips?</source>
        <translation>{picker} {weight} ya está ahí; de esta hoja se {n:guardó|guardaron} {n} {n:renglón|renglones}, el último {at}. ¿Las mismas boletas?</translation>
    </message>
    <message>
        <source>{other}, swapped</source>
        <translation>{other}, cambiadas</translation>
    </message>
    <message>
        <source>{picker} is kept already</source>
        <translation>{picker} ya está guardado</translation>
    </message>
    <message>
        <source>{picker} usually brings {low}–{high}; {typed} does not fit, {other} would. Digits swapped?</source>
        <translation>{picker} suele traer {low}–{high}; {typed} no calza, {other} sí. ¿Cifras cambiadas?</translation>
    </message>
    <message>
        <source>{picker} {weight} as {other} would close it.</source>
        <translation>{picker} {weight} como {other} lo cuadraría.</translation>
    </message>
    <message>
        <source>{picker} {weight} taken as pounds would close it.</source>
        <translation>{picker} {weight} tomado como libras lo cuadraría.</translation>
    </message>
    <message>
        <source>{picker} {weight} was written at {at} already. The same slip?</source>
        <translation>{picker} {weight} ya se escribió {at}. ¿La misma boleta?</translation>
    </message>
    <message>
        <source>{share} of this delivery floated; usually it is under a quarter.</source>
        <translation>{share} de esta entrega flotó; lo usual es menos de un cuarto.</translation>
    </message>
    <message>
        <source>{typed} is right</source>
        <translation>{typed} está bien</translation>
    </message>
    <message>
        <source>{typed} is {ratio} times what {picker} usually brings. Kilograms or pounds?</source>
        <translation>{typed} es {ratio} veces lo que suele traer {picker}. ¿Kilos o libras?</translation>
    </message>
    <message>
        <source>{weight} is more than a platform scale reaches. Is it right?</source>
        <translation>{weight} es más de lo que alcanza una báscula de plataforma. ¿Está bien?</translation>
    </message>
    <message>
        <source>{weight} is {ratio} times what {picker} usually brings. Is it right?</source>
        <translation>{weight} es {ratio} veces lo que suele traer {picker}. ¿Está bien?</translation>
    </message>
    <message>
        <source>{weight} of {picker} for {lot}</source>
        <translation>{weight} de {picker} para {lot}</translation>
    </message>
    <message>
        <source>“{typed}” is no day; write it like 14 or 14.1.</source>
        <translation>“{typed}” no es un día; se escribe 14 o 14.1.</translation>
    </message>
    <message>
        <source>both: another sack</source>
        <translation>las dos: otro saco</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilos</translation>
    </message>
    <message>
        <source>correction of a slip</source>
        <translation>corrección de una boleta</translation>
    </message>
    <message>
        <source>There is no such row on the sheet.</source>
        <translation>No hay tal renglón en la hoja.</translation>
    </message>
    <message>
        <source>A correction needs its reason.</source>
        <translation>Una corrección necesita su motivo.</translation>
    </message>
    <message>
        <source>the rows are right</source>
        <translation>los renglones están bien</translation>
    </message>
    <message>
        <source>Begin it first: g on the page Picking.</source>
        <translation>Empezarlo primero: g en la página Corte.</translation>
    </message>
    <message>
        <source>A count needs whole numbers of fruits in its classes.</source>
        <translation>Un conteo necesita números enteros de frutos en sus clases.</translation>
    </message>
</context>
<context>
    <name>picking_story</name>
    <message>
        <source>Nothing weighed in today</source>
        <translation>Nada pesado hoy</translation>
    </message>
    <message>
        <source>each brought {each} a day; last {n} {n:round|rounds}</source>
        <translation>cada uno trajo {each} por día; {n:última|últimas} {n} {n:pasada|pasadas}</translation>
    </message>
    <message>
        <source>{a} green in {n} may be {a_low}–{a_high}, {b} in {n} may be {b_low}–{b_high}: the ranges overlap, so it is no difference.</source>
        <translation>{a} verdes en {n} pueden ser {a_low}–{a_high}, {b} en {n} pueden ser {b_low}–{b_high}: los rangos se traslapan, no hay diferencia.</translation>
    </message>
    <message>
        <source>{block} together, {n} counts</source>
        <translation>{block} junto, {n} conteos</translation>
    </message>
    <message>
        <source>{block} {day} {half}</source>
        <translation>{block} {day} {half}</translation>
    </message>
    <message>
        <source>{block} {half}</source>
        <translation>{block} {half}</translation>
    </message>
    <message>
        <source>{few}–{many} pickers, likely {likely}</source>
        <translation>{few}–{many} cortadores, quizá {likely}</translation>
    </message>
    <message>
        <source>{now}.</source>
        <translation>{now}.</translation>
    </message>
    <message>
        <source>{now}. Next block {block}, {days}.</source>
        <translation>{now}. Próxima parcela {block}, {days}.</translation>
    </message>
    <message>
        <source>{weight} weighed in today</source>
        <translation>{weight} pesados hoy</translation>
    </message>
    <message>
        <source>{weight} weighed in today from {blocks}</source>
        <translation>{weight} pesados hoy de {blocks}</translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>still to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>at the receiving scale</source>
        <translation>en la báscula de recibo</translation>
    </message>
    <message>
        <source>bed {bed}</source>
        <translation>cama {bed}</translation>
    </message>
    <message>
        <source>beds {beds}</source>
        <translation>camas {beds}</translation>
    </message>
    <message>
        <source>in the store</source>
        <translation>en bodega</translation>
    </message>
    <message>
        <source>patio {cells}</source>
        <translation>patio {cells}</translation>
    </message>
    <message>
        <source>{vessels} since {since}</source>
        <translation>{vessels} desde {since}</translation>
    </message>
    <message>
        <source>at the mill</source>
        <translation>en el beneficio</translation>
    </message>
    <message>
        <source>green, on the farm</source>
        <translation>oro, en la finca</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>ya salió</translation>
    </message>
</context>
<context>
    <name>points</name>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>from–to</source>
        <translation>de–a</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>good hours</source>
        <translation>horas buenas</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>hours at 20 °C</source>
        <translation>horas a 20 °C</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>medidor</translation>
    </message>
    <message>
        <source>anchor</source>
        <translation>punto fijo</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source>logger</source>
        <translation>registrador</translation>
    </message>
    <message>
        <source>as read, before it was corrected</source>
        <translation>como se leyó, antes de corregir</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>usual</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>adelante</translation>
    </message>
</context>
<context>
    <name>portioning</name>
    <message>
        <source>A merge takes two lots at least.</source>
        <translation>Para juntar hacen falta al menos dos lotes.</translation>
    </message>
    <message>
        <source>Nothing of {lot} lies at {place} in the books.</source>
        <translation>Según el cuaderno no hay nada de {lot} en {place}.</translation>
    </message>
    <message>
        <source>The parts sum to {total}, the books hold {books}. Where are the other {missing}?</source>
        <translation>Las partes suman {total}, el cuaderno tiene {books}. ¿Dónde están los otros {missing}?</translation>
    </message>
    <message>
        <source>Their blocks differ in organic status; the joint lot has none.</source>
        <translation>Sus parcelas difieren en lo orgánico; el lote junto no lo tendrá.</translation>
    </message>
    <message>
        <source>They are of several varieties: {names}.</source>
        <translation>Son de varias variedades: {names}.</translation>
    </message>
    <message>
        <source>They are {gap} points apart, {low} and {high}.</source>
        <translation>Tienen {gap} puntos de diferencia, {low} y {high}.</translation>
    </message>
    <message>
        <source>{differences} Merge all the same?</source>
        <translation>{differences} ¿Juntar de todos modos?</translation>
    </message>
    <message>
        <source>{lots} merged as {joint}</source>
        <translation>{lots} juntados como {joint}</translation>
    </message>
    <message>
        <source>{lot} split</source>
        <translation>{lot} partido</translation>
    </message>
</context>
<context>
    <name>portions</name>
    <message>
        <source>not known</source>
        <translation>sin saber</translation>
    </message>
</context>
<context>
    <name>reading</name>
    <message>
        <source>{lot} does not lie at {typed}; it lies at {places}.</source>
        <translation>{lot} no está en {typed}; está en {places}.</translation>
    </message>
</context>
<context>
    <name>reading_in</name>
    <message>
        <source>Reading {file} was stopped; nothing was kept.</source>
        <translation>Se detuvo la lectura de {file}; no se guardó nada.</translation>
    </message>
    <message>
        <source>{n} {n:row|rows} of {logger}</source>
        <translation>{n} {n:renglón|renglones} de {logger}</translation>
    </message>
</context>
<context>
    <name>registers</name>
    <message>
        <source>A code stays as it is: {code} may stand on papers.</source>
        <translation>Un código queda como está: {code} puede estar en papeles.</translation>
    </message>
    <message>
        <source>A version of a method stays: lots point to it.</source>
        <translation>Una versión de un método se queda: hay lotes que la usan.</translation>
    </message>
    <message>
        <source>No row names {code}. Take it out of the register?</source>
        <translation>Ninguna fila nombra {code}. ¿Quitarlo del registro?</translation>
    </message>
    <message>
        <source>There is no {code} in this register.</source>
        <translation>No hay {code} en este registro.</translation>
    </message>
    <message>
        <source>What has been written must always be able to say what it was about.</source>
        <translation>Lo escrito siempre debe poder decir de qué trataba.</translation>
    </message>
    <message>
        <source>Write a new row, and take the old one out.</source>
        <translation>Escriba una fila nueva y quite la vieja.</translation>
    </message>
    <message>
        <source>air humidity</source>
        <translation>humedad del aire</translation>
    </message>
    <message>
        <source>air °C</source>
        <translation>aire °C</translation>
    </message>
    <message>
        <source>area, ha</source>
        <translation>área, ha</translation>
    </message>
    <message>
        <source>barrel</source>
        <translation>barril</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>bench scale</source>
        <translation>balanza de mesa</translation>
    </message>
    <message>
        <source>block</source>
        <translation>parcela</translation>
    </message>
    <message>
        <source>born, year</source>
        <translation>nació, año</translation>
    </message>
    <message>
        <source>boundary</source>
        <translation>lindero</translation>
    </message>
    <message>
        <source>box</source>
        <translation>caja</translation>
    </message>
    <message>
        <source>buyer</source>
        <translation>comprador</translation>
    </message>
    <message>
        <source>by weight</source>
        <translation>por peso</translation>
    </message>
    <message>
        <source>called here</source>
        <translation>aquí se llama</translation>
    </message>
    <message>
        <source>check, days</source>
        <translation>revisión, días</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>reloj</translation>
    </message>
    <message>
        <source>clock off, h</source>
        <translation>desfase del reloj, h</translation>
    </message>
    <message>
        <source>code</source>
        <translation>código</translation>
    </message>
    <message>
        <source>converting</source>
        <translation>conversión</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>day work</source>
        <translation>jornal</translation>
    </message>
    <message>
        <source>dried whole</source>
        <translation>secado entero</translation>
    </message>
    <message>
        <source>dry within, days</source>
        <translation>seco en, días</translation>
    </message>
    <message>
        <source>empty, g</source>
        <translation>vacío, g</translation>
    </message>
    <message>
        <source>ends by</source>
        <translation>termina por</translation>
    </message>
    <message>
        <source>field foreman</source>
        <translation>capataz de campo</translation>
    </message>
    <message>
        <source>from south, m</source>
        <translation>desde el sur, m</translation>
    </message>
    <message>
        <source>from west, m</source>
        <translation>desde el oeste, m</translation>
    </message>
    <message>
        <source>from, m</source>
        <translation>desde, m</translation>
    </message>
    <message>
        <source>hand tarp</source>
        <translation>lona a mano</translation>
    </message>
    <message>
        <source>hand test</source>
        <translation>prueba de mano</translation>
    </message>
    <message>
        <source>high</source>
        <translation>mucha</translation>
    </message>
    <message>
        <source>holds, L</source>
        <translation>capacidad, L</translation>
    </message>
    <message>
        <source>hoops</source>
        <translation>arcos</translation>
    </message>
    <message>
        <source>hours from</source>
        <translation>horas desde</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>higrómetro</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>last digit</source>
        <translation>último dígito</translation>
    </message>
    <message>
        <source>length, m</source>
        <translation>largo, m</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>letra</translation>
    </message>
    <message>
        <source>light</source>
        <translation>poca</translation>
    </message>
    <message>
        <source>liner</source>
        <translation>bolsa hermética</translation>
    </message>
    <message>
        <source>loading, kg/m²</source>
        <translation>carga, kg/m²</translation>
    </message>
    <message>
        <source>logger</source>
        <translation>registrador</translation>
    </message>
    <message>
        <source>mass at most, °C</source>
        <translation>masa máxima, °C</translation>
    </message>
    <message>
        <source>mass °C</source>
        <translation>masa °C</translation>
    </message>
    <message>
        <source>max and min thermometer</source>
        <translation>termómetro máx. y mín.</translation>
    </message>
    <message>
        <source>measures</source>
        <translation>mide</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>media</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>moisture meter</source>
        <translation>medidor de humedad</translation>
    </message>
    <message>
        <source>monthly</source>
        <translation>mensual</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>on papers</source>
        <translation>en papeles</translation>
    </message>
    <message>
        <source>organic</source>
        <translation>orgánico</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>pH aimed at</source>
        <translation>pH buscado</translation>
    </message>
    <message>
        <source>pH from</source>
        <translation>pH desde</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation>pH-metro</translation>
    </message>
    <message>
        <source>pH to</source>
        <translation>pH hasta</translation>
    </message>
    <message>
        <source>patio</source>
        <translation>patio</translation>
    </message>
    <message>
        <source>pay</source>
        <translation>pago</translation>
    </message>
    <message>
        <source>picker</source>
        <translation>recolector</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>planted</source>
        <translation>plantado</translation>
    </message>
    <message>
        <source>platform scale</source>
        <translation>báscula de plataforma</translation>
    </message>
    <message>
        <source>processor</source>
        <translation>procesador</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>rain gauge</source>
        <translation>pluviómetro</translation>
    </message>
    <message>
        <source>refractometer</source>
        <translation>refractómetro</translation>
    </message>
    <message>
        <source>rest, days</source>
        <translation>reposo, días</translation>
    </message>
    <message>
        <source>right</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>rinses</source>
        <translation>enjuagues</translation>
    </message>
    <message>
        <source>roof</source>
        <translation>techo</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>sellado</translation>
    </message>
    <message>
        <source>sealed tank</source>
        <translation>tanque sellado</translation>
    </message>
    <message>
        <source>shade</source>
        <translation>sombra</translation>
    </message>
    <message>
        <source>spread, ±</source>
        <translation>dispersión, ±</translation>
    </message>
    <message>
        <source>store from, %</source>
        <translation>bodega desde, %</translation>
    </message>
    <message>
        <source>take it out</source>
        <translation>quitarlo</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>tanque</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termómetro</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>to cover, min</source>
        <translation>para cubrir, min</translation>
    </message>
    <message>
        <source>to, %</source>
        <translation>hasta, %</translation>
    </message>
    <message>
        <source>to, m</source>
        <translation>hasta, m</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>árboles</translation>
    </message>
    <message>
        <source>usable, L or %</source>
        <translation>utilizable, L o %</translation>
    </message>
    <message>
        <source>variety</source>
        <translation>variedad</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>actividad de agua</translation>
    </message>
    <message>
        <source>water when spread, %</source>
        <translation>agua al tender, %</translation>
    </message>
    <message>
        <source>weigh clerk</source>
        <translation>pesador</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>wet-side hand</source>
        <translation>obrero del beneficio húmedo</translation>
    </message>
    <message>
        <source>width, m</source>
        <translation>ancho, m</translation>
    </message>
    <message>
        <source>work</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>yard hand</source>
        <translation>obrero de patio</translation>
    </message>
    <message>
        <source>yeast, g/kg</source>
        <translation>levadura, g/kg</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>{box}: “{typed}” is no whole number.</source>
        <translation>{box}: «{typed}» no es un número entero.</translation>
    </message>
    <message>
        <source>{box}: “{typed}” is none of {ways}.</source>
        <translation>{box}: «{typed}» no es ninguno de {ways}.</translation>
    </message>
    <message>
        <source>{code} is named in the notebook ({n}×), so it stays.</source>
        <translation>{code} se nombra en el cuaderno ({n}×), por eso se queda.</translation>
    </message>
    <message>
        <source>{n} {way}</source>
        <translation>{n} {way}</translation>
    </message>
    <message>
        <source>°Bx</source>
        <translation>°Bx</translation>
    </message>
    <message>
        <source>± points</source>
        <translation>± puntos</translation>
    </message>
</context>
<context>
    <name>river</name>
    <message>
        <source>{grams} {name}, left upwards</source>
        <translation>{grams} {name}, se fue hacia arriba</translation>
    </message>
</context>
<context>
    <name>road</name>
    <message>
        <source>{buyer} waits</source>
        <translation>espera {buyer}</translation>
    </message>
    <message>
        <source>{n} {n:sample|samples} out</source>
        <translation>{n} {n:muestra|muestras} fuera</translation>
    </message>
    <message>
        <source>{weight}</source>
        <translation>{weight}</translation>
    </message>
    <message>
        <source>{weight} planned</source>
        <translation>{weight} planeados</translation>
    </message>
</context>
<context>
    <name>science</name>
    <message>
        <source>An air temperature</source>
        <translation>Una temperatura del aire</translation>
    </message>
    <message>
        <source>A relative humidity</source>
        <translation>Una humedad relativa</translation>
    </message>
    <message>
        <source>An air pressure</source>
        <translation>Una presión del aire</translation>
    </message>
    <message>
        <source>An altitude</source>
        <translation>Una altura sobre el mar</translation>
    </message>
    <message>
        <source>A humidity ratio</source>
        <translation>Una razón de humedad</translation>
    </message>
    <message>
        <source>A vapour pressure</source>
        <translation>Una presión de vapor</translation>
    </message>
    <message>
        <source>A wind speed</source>
        <translation>Una velocidad del viento</translation>
    </message>
    <message>
        <source>A mast height</source>
        <translation>Una altura de mástil</translation>
    </message>
    <message>
        <source>A latitude</source>
        <translation>Una latitud</translation>
    </message>
    <message>
        <source>A day of the year</source>
        <translation>Un día del año</translation>
    </message>
    <message>
        <source>A share of the day with sunshine</source>
        <translation>Una parte del día con sol</translation>
    </message>
    <message>
        <source>The day&apos;s lowest temperature is above its highest.</source>
        <translation>La temperatura más baja del día pasa de la más alta.</translation>
    </message>
    <message>
        <source>A day&apos;s sun</source>
        <translation>El sol de un día</translation>
    </message>
    <message>
        <source>A moisture on dry basis</source>
        <translation>Una humedad en base seca</translation>
    </message>
    <message>
        <source>A temperature for this isotherm</source>
        <translation>Una temperatura para esta isoterma</translation>
    </message>
    <message>
        <source>A humidity for this isotherm</source>
        <translation>Una humedad del aire para esta isoterma</translation>
    </message>
    <message>
        <source>An anchor table needs two rows or more of humidity and moisture.</source>
        <translation>Una tabla de puntos fijos necesita al menos dos filas de humedad del aire y del grano.</translation>
    </message>
    <message>
        <source>In an anchor table humidity and moisture rise together from row to row.</source>
        <translation>En una tabla de puntos fijos las dos humedades suben juntas de fila en fila.</translation>
    </message>
    <message>
        <source>An isotherm needs a source.</source>
        <translation>Una isoterma necesita su fuente.</translation>
    </message>
    <message>
        <source>A coefficient</source>
        <translation>Un coeficiente</translation>
    </message>
    <message>
        <source>A dew point</source>
        <translation>Un punto de rocío</translation>
    </message>
    <message>
        <source>A psychrometer constant</source>
        <translation>Una constante del psicrómetro</translation>
    </message>
    <message>
        <source>The {form} form takes {count} coefficients.</source>
        <translation>La forma {form} lleva {count} coeficientes.</translation>
    </message>
    <message>
        <source>There is no isotherm form called {form}.</source>
        <translation>No hay forma de isoterma llamada {form}.</translation>
    </message>
    <message>
        <source>These rows of numbers do not have the same length.</source>
        <translation>Estas series de números no tienen el mismo largo.</translation>
    </message>
    <message>
        <source>This isotherm knows coffee from {low} to {high}, on dry basis.</source>
        <translation>Esta isoterma conoce el café de {low} a {high}, en base seca.</translation>
    </message>
    <message>
        <source>With these figures moisture does not rise with humidity.</source>
        <translation>Con estos números la humedad del grano no sube con la del aire.</translation>
    </message>
    <message>
        <source>{what} is missing.</source>
        <translation>Falta: {what}.</translation>
    </message>
    <message>
        <source>{what} is not a number.</source>
        <translation>{what} no es un número.</translation>
    </message>
    <message>
        <source>{what} of {value} is outside {low} to {high}.</source>
        <translation>{what} de {value} está fuera de {low} a {high}.</translation>
    </message>
    <message>
        <source>{what}: one number is wanted here.</source>
        <translation>{what}: aquí va un solo número.</translation>
    </message>
    <message>
        <source>A coffee temperature</source>
        <translation>Una temperatura del café</translation>
    </message>
    <message>
        <source>A moisture</source>
        <translation>Una humedad</translation>
    </message>
    <message>
        <source>A weight</source>
        <translation>Un peso</translation>
    </message>
    <message>
        <source>A weight of zero says nothing about moisture.</source>
        <translation>Un peso de cero no dice nada de la humedad.</translation>
    </message>
    <message>
        <source>A share</source>
        <translation>Una parte</translation>
    </message>
</context>
<context>
    <name>season</name>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>where</source>
        <translation>dónde</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>dato</translation>
    </message>
    <message>
        <source>Picking, weigh-in: {kept}.</source>
        <translation>Corte, pesada: {kept}.</translation>
    </message>
    <message>
        <source>Season {code} is only read here; nothing can be written.</source>
        <translation>La temporada {code} aquí solo se lee; no se puede escribir nada.</translation>
    </message>
    <message>
        <source>This computer’s clock shows {shown}, but the last row was written {last}. Set the clock; until then new rows are dated {last}.</source>
        <translation>El reloj de esta computadora marca {shown}, pero el último renglón se escribió {last}. Poner el reloj en hora; mientras tanto los renglones nuevos llevan fecha {last}.</translation>
    </message>
    <message>
        <source>This computer’s clock shows {shown}, {n} h after the last row. Where that is wrong, set the clock first.</source>
        <translation>El reloj de esta computadora marca {shown}, {n} h después de la última fila. Si no es así, ponga primero el reloj en hora.</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>adelante</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>desde {day}</translation>
    </message>
    <message>
        <source>picked</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>picking planned</source>
        <translation>corte planeado</translation>
    </message>
    <message>
        <source>sample to {buyer}</source>
        <translation>muestra a {buyer}</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>pila</translation>
    </message>
    <message>
        <source>{days}</source>
        <translation>{days}</translation>
    </message>
    <message>
        <source>{kg} sent to the mill on {day}: {lots}.</source>
        <translation>{kg} al beneficio el {day}: {lots}.</translation>
    </message>
    <message>
        <source>{line}, {pct} on {day}</source>
        <translation>{line}, {pct} el {day}</translation>
    </message>
    <message>
        <source>{line}.</source>
        <translation>{line}.</translation>
    </message>
    <message>
        <source>{line}; done not before {early}, likely {likely}.</source>
        <translation>{line}; listo no antes de {early}, probable {likely}.</translation>
    </message>
    <message>
        <source>{line}; done {range}, likely {likely}.</source>
        <translation>{line}; listo {range}, probable {likely}.</translation>
    </message>
    <message>
        <source>{lot} in the store since {came}, {kg}.</source>
        <translation>{lot} en bodega desde {came}, {kg}.</translation>
    </message>
    <message>
        <source>{lot} in the store {came} to {sent}, {kg}.</source>
        <translation>{lot} en bodega {came} a {sent}, {kg}.</translation>
    </message>
    <message>
        <source>{lot} in {vessels} since {since}.</source>
        <translation>{lot} en {vessels} desde {since}.</translation>
    </message>
    <message>
        <source>{lot} in {vessels}, {since} to {until}.</source>
        <translation>{lot} en {vessels}, {since} a {until}.</translation>
    </message>
    <message>
        <source>{lot} on {beds} since {day}</source>
        <translation>{lot} en {beds} desde {day}</translation>
    </message>
    <message>
        <source>{lot} on {beds}, {day} to {last}</source>
        <translation>{lot} en {beds}, {day} a {last}</translation>
    </message>
    <message>
        <source>{lot} planned for {beds} from {day}</source>
        <translation>{lot} planeado para {beds} desde {day}</translation>
    </message>
    <message>
        <source>{lot} planned for {vessels}, {since}.</source>
        <translation>{lot} planeado para {vessels}, {since}.</translation>
    </message>
    <message>
        <source>{lot} planned, {days}</source>
        <translation>{lot} planeado, {days}</translation>
    </message>
    <message>
        <source>{lot}: picking planned in block {block}, {day}, about {kg}.</source>
        <translation>{lot}: corte planeado en parcela {block}, {day}, unos {kg}.</translation>
    </message>
    <message>
        <source>{lot}: {kg} picked in block {block}, {day}.</source>
        <translation>{lot}: {kg} de corte en parcela {block}, {day}.</translation>
    </message>
    <message>
        <source>{lot}: {what}, {day}.</source>
        <translation>{lot}: {what}, {day}.</translation>
    </message>
    <message>
        <source>{n} {n:lot|lots}; every bed is free.</source>
        <translation>{n} {n:lote|lotes}; todas las camas libres.</translation>
    </message>
    <message>
        <source>{n} {n:lot|lots}; {used} of {beds} {beds:bed|beds} in use.</source>
        <translation>{n} {n:lote|lotes}; {used} de {beds} {beds:cama|camas} en uso.</translation>
    </message>
    <message>
        <source>{n} {n:lot|lots}; {used} of {beds} {beds:bed|beds} in use; the next may come free {when}.</source>
        <translation>{n} {n:lote|lotes}; {used} de {beds} {beds:cama|camas} en uso; la próxima puede quedar libre {when}.</translation>
    </message>
    <message>
        <source>{range}, likely {day}</source>
        <translation>{range}, probable {day}</translation>
    </message>
    <message>
        <source>{weight} held for {buyer}</source>
        <translation>{weight} apartado para {buyer}</translation>
    </message>
    <message>
        <source>{weight} sold to {buyer}</source>
        <translation>{weight} vendido a {buyer}</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>camas</translation>
    </message>
    <message>
        <source>beds planned</source>
        <translation>camas planeadas</translation>
    </message>
    <message>
        <source>store</source>
        <translation>bodega</translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation>enviado al beneficio</translation>
    </message>
    <message>
        <source>still there</source>
        <translation>sigue ahí</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>Nothing is written yet; the season begins with the first sack weighed.</source>
        <translation>Nada escrito todavía; la temporada empieza con el primer saco pesado.</translation>
    </message>
</context>
<context>
    <name>seasons</name>
    <message>
        <source>Free some room on the disk, or name another folder in FARMDESK_DATA.</source>
        <translation>Hacer espacio en el disco, o nombrar otra carpeta en FARMDESK_DATA.</translation>
    </message>
    <message>
        <source>The practice season could not be laid out in {folder}.</source>
        <translation>No se pudo poner la temporada de práctica en {folder}.</translation>
    </message>
</context>
<context>
    <name>selling</name>
    <message>
        <source>A sample cannot be due before it is sent.</source>
        <translation>Una muestra no puede tocar antes de enviarse.</translation>
    </message>
    <message>
        <source>A sample cannot arrive before it was sent.</source>
        <translation>Una muestra no puede llegar antes de enviarse.</translation>
    </message>
    <message>
        <source>A hold must end after it begins.</source>
        <translation>Un apartado debe terminar después de empezar.</translation>
    </message>
    <message>
        <source>sample of {lot} to {buyer}</source>
        <translation>muestra de {lot} a {buyer}</translation>
    </message>
    <message>
        <source>sample of {lot}: {news}</source>
        <translation>muestra de {lot}: {news}</translation>
    </message>
    <message>
        <source>{weight} of {lot} held for {buyer}</source>
        <translation>{weight} de {lot} apartado para {buyer}</translation>
    </message>
    <message>
        <source>{weight} of {lot} sold to {buyer}</source>
        <translation>{weight} de {lot} vendido a {buyer}</translation>
    </message>
    <message>
        <source>“{news}” is no news of a parcel.</source>
        <translation>“{news}” no es noticia de un envío.</translation>
    </message>
</context>
<context>
    <name>settings</name>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>A block and its number, and so on, like D 7.20 E 6.80.</source>
        <translation>Una parcela y su número, y así, como D 7.20 E 6.80.</translation>
    </message>
    <message>
        <source>The setting {name} is “{text}”, which is no list of numbers.</source>
        <translation>El ajuste {name} es “{text}”, que no es una lista de números.</translation>
    </message>
    <message>
        <source>The setting {name} is “{text}”, which is not a number.</source>
        <translation>El ajuste {name} es “{text}”, que no es un número.</translation>
    </message>
    <message>
        <source>There is no such figure; type its number or the beginning of its name.</source>
        <translation>No hay tal cifra; escriba su número o el comienzo de su nombre.</translation>
    </message>
    <message>
        <source>a box of green coffee</source>
        <translation>una caja de café oro</translation>
    </message>
    <message>
        <source>as is common</source>
        <translation>lo común</translation>
    </message>
    <message>
        <source>bonus for a clean picking</source>
        <translation>bono por corte limpio</translation>
    </message>
    <message>
        <source>bonus from so much ripe</source>
        <translation>bono desde tanto maduro</translation>
    </message>
    <message>
        <source>day work</source>
        <translation>jornal</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>from flowering to harvest</source>
        <translation>de la floración a la cosecha</translation>
    </message>
    <message>
        <source>from one round to the next, at least</source>
        <translation>de una pasada a la otra, mínimo</translation>
    </message>
    <message>
        <source>from one round to the next, at most</source>
        <translation>de una pasada a la otra, máximo</translation>
    </message>
    <message>
        <source>green fruit at most</source>
        <translation>verde, cuando más</translation>
    </message>
    <message>
        <source>hands that cover the beds</source>
        <translation>manos que tapan las camas</translation>
    </message>
    <message>
        <source>hour of the day</source>
        <translation>hora del día</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>kg a litre</source>
        <translation>kg por litro</translation>
    </message>
    <message>
        <source>least pay for a day of picking</source>
        <translation>pago mínimo por día de corte</translation>
    </message>
    <message>
        <source>money</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>money for a kg</source>
        <translation>moneda por kg</translation>
    </message>
    <message>
        <source>m³</source>
        <translation>m³</translation>
    </message>
    <message>
        <source>notes and coins, from the largest</source>
        <translation>billetes y monedas, del mayor al menor</translation>
    </message>
    <message>
        <source>of the cherry goes with the pulp</source>
        <translation>de la uva se va con la pulpa</translation>
    </message>
    <message>
        <source>other prices by block: D 7.20 E 6.80</source>
        <translation>otros precios por parcela: D 7.20 E 6.80</translation>
    </message>
    <message>
        <source>people</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>people sleep from</source>
        <translation>la gente duerme desde</translation>
    </message>
    <message>
        <source>picking, for ripe cherry</source>
        <translation>corte, por uva madura</translation>
    </message>
    <message>
        <source>pulped coffee</source>
        <translation>café despulpado</translation>
    </message>
    <message>
        <source>sign of the money</source>
        <translation>signo de la moneda</translation>
    </message>
    <message>
        <source>the closed room where vessels stand</source>
        <translation>el cuarto cerrado de las pilas y barriles</translation>
    </message>
    <message>
        <source>the mill takes at least, dry</source>
        <translation>el beneficio recibe al menos, seco</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>whole cherry</source>
        <translation>uva entera</translation>
    </message>
    <message>
        <source>{figure}: {value}</source>
        <translation>{figure}: {value}</translation>
    </message>
    <message>
        <source>{figure}: “{typed}” cannot be.</source>
        <translation>{figure}: “{typed}” no puede ser.</translation>
    </message>
</context>
<context>
    <name>setup</name>
    <message>
        <source>The farm needs a name; it stands on every paper.</source>
        <translation>La finca necesita un nombre; va en cada papel.</translation>
    </message>
    <message>
        <source>It needs a code.</source>
        <translation>Necesita un código.</translation>
    </message>
    <message>
        <source>A bed needs its width and its length in metres; or leave both empty.</source>
        <translation>Una cama necesita su ancho y su largo en metros; o deje ambos vacíos.</translation>
    </message>
    <message>
        <source>A season is two figures, like 25; “{typed}” is not.</source>
        <translation>Una temporada son dos cifras, como 25; “{typed}” no.</translation>
    </message>
    <message>
        <source>Block {code} would have {n} trees on a hectare. Is that right?</source>
        <translation>La parcela {code} tendría {n} matas por hectárea. ¿Está bien?</translation>
    </message>
    <message>
        <source>Block {code}: area or heights cannot be so.</source>
        <translation>Parcela {code}: el área o las alturas no pueden ser así.</translation>
    </message>
    <message>
        <source>Lots were made by version {n} of method {letter}, so it stays as it was.</source>
        <translation>Con la versión {n} del método {letter} se hicieron lotes; queda como estaba.</translation>
    </message>
    <message>
        <source>Method {letter} needs a latest hour: “until it smells right” is no limit.</source>
        <translation>El método {letter} necesita una hora límite: “hasta que huela bien” no es límite.</translation>
    </message>
    <message>
        <source>Nobody at work was born in {year}.</source>
        <translation>Nadie que trabaje nació en {year}.</translation>
    </message>
    <message>
        <source>Of {gross} not {usable} can be used.</source>
        <translation>De {gross} no se pueden usar {usable}.</translation>
    </message>
    <message>
        <source>There is no time zone like “{typed}”.</source>
        <translation>No hay zona horaria como «{typed}».</translation>
    </message>
    <message>
        <source>Tray {code} needs its empty weight in grams.</source>
        <translation>La bandeja {code} necesita su peso vacía en gramos.</translation>
    </message>
    <message>
        <source>Type a part of the nearest large town’s name.</source>
        <translation>Escriba parte del nombre de la ciudad grande más cercana.</translation>
    </message>
    <message>
        <source>Vessel {code} needs its volume in litres.</source>
        <translation>La pila {code} necesita su volumen en litros.</translation>
    </message>
    <message>
        <source>Zone and season stay as they are once something is written.</source>
        <translation>Huso horario y temporada quedan como están una vez escrito algo.</translation>
    </message>
    <message>
        <source>{a} would lie over {b} on the plan. Is that right?</source>
        <translation>{a} quedaría encima de {b} en el plano. ¿Está bien?</translation>
    </message>
    <message>
        <source>{code} has no name that could stand on papers.</source>
        <translation>{code} no tiene nombre que pueda ir en papeles.</translation>
    </message>
    <message>
        <source>{code} is taken already.</source>
        <translation>{code} ya está tomado.</translation>
    </message>
    <message>
        <source>{code} needs its width and length in metres.</source>
        <translation>{code} necesita su ancho y largo en metros.</translation>
    </message>
    <message>
        <source>Save it under the next version.</source>
        <translation>Guardarlo como la versión siguiente.</translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>peaberry</source>
        <translation>caracol</translation>
    </message>
    <message>
        <source>under 14</source>
        <translation>bajo 14</translation>
    </message>
    <message>
        <source>Picked</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Sorted</source>
        <translation>Escogida</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>sellado</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Pilas</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Added</source>
        <translation>Agregado</translation>
    </message>
    <message>
        <source>Rinsed</source>
        <translation>Lavado</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>Camas</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>Not finished: {where}. What is not yet known is left open.</source>
        <translation>Sin terminar: {where}. Lo que aún no se sabe queda abierto.</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Bodega</translation>
    </message>
    <message>
        <source>block {code}</source>
        <translation>parcela {code}</translation>
    </message>
    <message>
        <source>block {code}, {name}, {variety}, {heights}</source>
        <translation>parcela {code}, {name}, {variety}, {heights}</translation>
    </message>
    <message>
        <source>block {code}, {name}, {variety}, {heights} ({share})</source>
        <translation>parcela {code}, {name}, {variety}, {heights} ({share})</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>medidor</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>since {day}, {good} of good drying so far</source>
        <translation>desde {day}, {good} de buen secado hasta hoy</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>actividad de agua</translation>
    </message>
    <message>
        <source>yeast, {grams}</source>
        <translation>levadura, {grams}</translation>
    </message>
    <message>
        <source>{days}, {good} of good drying</source>
        <translation>{days}, {good} de buen secado</translation>
    </message>
    <message>
        <source>{day}, {weight}, moisture not measured</source>
        <translation>{day}, {weight}, humedad no medida</translation>
    </message>
    <message>
        <source>{day}, {weight}, {moisture}</source>
        <translation>{day}, {weight}, {moisture}</translation>
    </message>
    <message>
        <source>{first} to {last}; mass temperature not measured</source>
        <translation>{first} a {last}; temperatura de la masa no medida</translation>
    </message>
    <message>
        <source>{first} to {last}; mass {low}–{high}</source>
        <translation>{first} a {last}; masa {low}–{high}</translation>
    </message>
    <message>
        <source>{first} to {last}; mass {mean}, readings cover {share} of the time</source>
        <translation>{first} a {last}; masa {mean}, las lecturas cubren {share} del tiempo</translation>
    </message>
    <message>
        <source>{free}</source>
        <translation>{free}</translation>
    </message>
    <message>
        <source>{free}: {n} × {size}, {rest} rest</source>
        <translation>{free}: {n} × {size}, {rest} de resto</translation>
    </message>
    <message>
        <source>{low}–{high}</source>
        <translation>{low}–{high}</translation>
    </message>
    <message>
        <source>{method}, joined from {alias}; {blocks}.</source>
        <translation>{method}, juntado de {alias}; {blocks}.</translation>
    </message>
    <message>
        <source>{method}; {blocks}.</source>
        <translation>{method}; {blocks}.</translation>
    </message>
    <message>
        <source>{method}; {blocks}. Picked {days}.</source>
        <translation>{method}; {blocks}. Corte {days}.</translation>
    </message>
    <message>
        <source>{name} ({local})</source>
        <translation>{local} ({name})</translation>
    </message>
    <message>
        <source>{n}</source>
        <translation>{n}</translation>
    </message>
    <message>
        <source>{n} {n:bean|beans} in {grams}, {standard}</source>
        <translation>{n} {n:grano|granos} en {grams}, {standard}</translation>
    </message>
    <message>
        <source>{n} {n:day|days}</source>
        <translation>{n} {n:día|días}</translation>
    </message>
    <message>
        <source>{n} {n:time|times}, {litres}</source>
        <translation>{n} {n:vez|veces}, {litres}</translation>
    </message>
    <message>
        <source>{n} {n:time|times}; litres not measured</source>
        <translation>{n} {n:vez|veces}; litros no medidos</translation>
    </message>
    <message>
        <source>{results}</source>
        <translation>{results}</translation>
    </message>
    <message>
        <source>{score} at own table, {n} {n:sitting|sittings}: {words}</source>
        <translation>{score} en mesa propia, {n} {n:sesión|sesiones}: {words}</translation>
    </message>
    <message>
        <source>{score} at own table, {n} {n:sitting|sittings}; words not recorded</source>
        <translation>{score} en mesa propia, {n} {n:sesión|sesiones}; palabras sin anotar</translation>
    </message>
    <message>
        <source>{total} on {n} {n:day|days}</source>
        <translation>{total} en {n} {n:día|días}</translation>
    </message>
    <message>
        <source>{n} full in {grams}, {standard}</source>
        <translation>{n} completos en {grams}, {standard}</translation>
    </message>
    <message>
        <source>{n} full, {standard}</source>
        <translation>{n} completos, {standard}</translation>
    </message>
    <message>
        <source>{n}: {beds}</source>
        <translation>{n}: {beds}</translation>
    </message>
    <message>
        <source>{n}: {beds}; {loading}</source>
        <translation>{n}: {beds}; {loading}</translation>
    </message>
    <message>
        <source>{ratio} of cherry for 1 kg of green</source>
        <translation>{ratio} de uva por 1 kg de oro</translation>
    </message>
    <message>
        <source>{ripe} ripe by count; {weight}</source>
        <translation>{ripe} maduro por conteo; {weight}</translation>
    </message>
    <message>
        <source>{sorted} by hand, {floated} floated off</source>
        <translation>{sorted} a mano, {floated} por flotes</translation>
    </message>
    <message>
        <source>{text}</source>
        <translation>{text}</translation>
    </message>
    <message>
        <source>{total} on {days}</source>
        <translation>{total} el {days}</translation>
    </message>
    <message>
        <source>{value}</source>
        <translation>{value}</translation>
    </message>
    <message>
        <source>{value} by {tool}, {day}, {form}</source>
        <translation>{value} con {tool}, {day}, {form}</translation>
    </message>
    <message>
        <source>{vessels}, {a}–{b}, {how}</source>
        <translation>{vessels}, {a}–{b}, {how}</translation>
    </message>
    <message>
        <source>{vessels}, {hours}, {how}</source>
        <translation>{vessels}, {hours}, {how}</translation>
    </message>
    <message>
        <source>{vessels}, {how}, still in it</source>
        <translation>{vessels}, {how}, sigue dentro</translation>
    </message>
    <message>
        <source>{weight}; ripeness not counted</source>
        <translation>{weight}; maduro sin contar</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidad</translation>
    </message>
    <message>
        <source>defects</source>
        <translation>defectos</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>taza</translation>
    </message>
    <message>
        <source>free</source>
        <translation>disponible</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>no queda nada</translation>
    </message>
    <message>
        <source>The lot was not mixed with another.</source>
        <translation>El lote no se juntó con otro.</translation>
    </message>
</context>
<context>
    <name>sieves</name>
    <message>
        <source>A screen number</source>
        <translation>Un número de criba</translation>
    </message>
    <message>
        <source>If it is a screen number, type it as a screen.</source>
        <translation>Si es número de criba, escribirlo como criba.</translation>
    </message>
    <message>
        <source>A hole size</source>
        <translation>Un tamaño de hoyo</translation>
    </message>
    <message>
        <source>Two screens are needed for this.</source>
        <translation>Para esto hacen falta dos cribas.</translation>
    </message>
    <message>
        <source>Name one screen or more.</source>
        <translation>Nombrar al menos una criba.</translation>
    </message>
    <message>
        <source>A weight on a screen</source>
        <translation>Un peso en una criba</translation>
    </message>
    <message>
        <source>A sample weight</source>
        <translation>Un peso de muestra</translation>
    </message>
    <message>
        <source>No hole size is printed there for screen {screen}.</source>
        <translation>Ahí no viene tamaño de hoyo para la criba {screen}.</translation>
    </message>
    <message>
        <source>Nothing lies on the screens.</source>
        <translation>No hay nada en las cribas.</translation>
    </message>
    <message>
        <source>Sample and screens seem to be in different units: g and {unit}?</source>
        <translation>La muestra y las cribas parecen en unidades distintas: ¿g y {unit}?</translation>
    </message>
    <message>
        <source>The screens add up to {found}, the sample was {start}: {share} apart.</source>
        <translation>Las cribas suman {found}, la muestra era {start}: {share} de diferencia.</translation>
    </message>
    <message>
        <source>flat, large</source>
        <translation>plano, grande</translation>
    </message>
    <message>
        <source>flat, medium</source>
        <translation>plano, mediano</translation>
    </message>
    <message>
        <source>flat, small</source>
        <translation>plano, pequeño</translation>
    </message>
    <message>
        <source>peaberry, large</source>
        <translation>caracol, grande</translation>
    </message>
    <message>
        <source>peaberry, medium</source>
        <translation>caracol, mediano</translation>
    </message>
    <message>
        <source>peaberry, small</source>
        <translation>caracol, pequeño</translation>
    </message>
    <message>
        <source>run of mill (bica corrida)</source>
        <translation>sin clasificar (bica corrida)</translation>
    </message>
    <message>
        <source>{value} is wider than any bean.</source>
        <translation>{value} es más ancho que cualquier grano.</translation>
    </message>
</context>
<context>
    <name>stage</name>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>not skin-dry</source>
        <translation>sin orear</translation>
    </message>
    <message>
        <source>skin drying</source>
        <translation>oreándose</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>soft black</source>
        <translation>negro suave</translation>
    </message>
    <message>
        <source>medium black</source>
        <translation>negro medio</translation>
    </message>
    <message>
        <source>hard black</source>
        <translation>negro duro</translation>
    </message>
    <message>
        <source>wilted</source>
        <translation>marchito</translation>
    </message>
    <message>
        <source>half dry</source>
        <translation>medio seco</translation>
    </message>
    <message>
        <source>rattling</source>
        <translation>suena</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>over-dried</source>
        <translation>pasado de seco</translation>
    </message>
</context>
<context>
    <name>stages</name>
    <message>
        <source>delivered</source>
        <translation>entregado</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>sent to the mill</source>
        <translation>al beneficio</translation>
    </message>
    <message>
        <source>green</source>
        <translation>oro</translation>
    </message>
    <message>
        <source>skin-dry</source>
        <translation>oreado</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>soft black</source>
        <translation>negro suave</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>hard black</source>
        <translation>negro duro</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>esperado</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>wilted</source>
        <translation>marchito</translation>
    </message>
    <message>
        <source>half dry</source>
        <translation>medio seco</translation>
    </message>
    <message>
        <source>rattling</source>
        <translation>suena</translation>
    </message>
    <message>
        <source>top grade</source>
        <translation>primera</translation>
    </message>
</context>
<context>
    <name>standards</name>
    <message>
        <source>A sample has 20 to 5,000 g.</source>
        <translation>Una muestra tiene de 20 a 5000 g.</translation>
    </message>
    <message>
        <source>A table needs its name; it stands beside every result.</source>
        <translation>Una tabla necesita su nombre; va junto a cada resultado.</translation>
    </message>
    <message>
        <source>How many beans make one full defect? A whole number, from 1.</source>
        <translation>¿Cuántos granos hacen un defecto completo? Un número entero, desde 1.</translation>
    </message>
    <message>
        <source>The published tables are numbered 1 to {n}.</source>
        <translation>Las tablas publicadas llevan los números 1 a {n}.</translation>
    </message>
    <message>
        <source>There is no kind of defect called {kind}.</source>
        <translation>No hay clase de defecto llamada {kind}.</translation>
    </message>
    <message>
        <source>Typed by the farm itself.</source>
        <translation>Escrita por la propia finca.</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>defecto</translation>
    </message>
    <message>
        <source>each rounded down</source>
        <translation>cada uno hacia abajo</translation>
    </message>
    <message>
        <source>fractions added</source>
        <translation>se suman las fracciones</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>primary</source>
        <translation>primario</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>regla</translation>
    </message>
    <message>
        <source>secondary</source>
        <translation>secundario</translation>
    </message>
    <message>
        <source>the farm’s own table of defects</source>
        <translation>la tabla de defectos propia de la finca</translation>
    </message>
    <message>
        <source>{kind} stands in the table already.</source>
        <translation>{kind} ya está en la tabla.</translation>
    </message>
    <message>
        <source>{name}, the farm’s own</source>
        <translation>{name}, la propia de la finca</translation>
    </message>
</context>
<context>
    <name>states</name>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>picking</source>
        <translation>en corte</translation>
    </message>
    <message>
        <source>in a vessel</source>
        <translation>en pila</translation>
    </message>
    <message>
        <source>on beds</source>
        <translation>en camas</translation>
    </message>
    <message>
        <source>in store</source>
        <translation>en bodega</translation>
    </message>
    <message>
        <source>at the mill</source>
        <translation>en el beneficio</translation>
    </message>
    <message>
        <source>green</source>
        <translation>oro</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>ya salió</translation>
    </message>
</context>
<context>
    <name>storing</name>
    <message>
        <source>air of the store</source>
        <translation>aire de la bodega</translation>
    </message>
    <message>
        <source>A joint lot is made of two lots at least.</source>
        <translation>Un lote junto se hace de al menos dos lotes.</translation>
    </message>
    <message>
        <source>None of these lots has green coffee to join.</source>
        <translation>Ninguno de estos lotes tiene café oro para juntar.</translation>
    </message>
    <message>
        <source>The mill returned {green} of {lot} for {sent} sent.</source>
        <translation>El beneficio devolvió {green} de {lot} por {sent} enviados.</translation>
    </message>
    <message>
        <source>The slip&apos;s grades are top, light, small and peaberry, not “{name}”.</source>
        <translation>Los grados de la boleta son primera, liviano, menudo y caracol, no “{name}”.</translation>
    </message>
    <message>
        <source>hull test of {lot}</source>
        <translation>prueba de trilla de {lot}</translation>
    </message>
    <message>
        <source>retained sample of {lot}</source>
        <translation>contramuestra de {lot}</translation>
    </message>
    <message>
        <source>tests of {lot}</source>
        <translation>pruebas de {lot}</translation>
    </message>
    <message>
        <source>{lots} joined as {joint}</source>
        <translation>{lots} juntados como {joint}</translation>
    </message>
    <message>
        <source>{lot} has no meter reading. Into the store all the same?</source>
        <translation>{lot} no tiene lectura de medidor. ¿A bodega de todos modos?</translation>
    </message>
    <message>
        <source>{lot} last read {value}, above 12.5 %. Into the store all the same?</source>
        <translation>{lot} leyó al final {value}, más de 12.5 %. ¿A bodega de todos modos?</translation>
    </message>
    <message>
        <source>{lot} lies on no bed in the books, so nothing can come into the store.</source>
        <translation>Según el cuaderno {lot} no está en ninguna cama; nada puede entrar a bodega.</translation>
    </message>
    <message>
        <source>{parts} came out of {whole}: more than went in.</source>
        <translation>De {whole} salieron {parts}: más de lo que entró.</translation>
    </message>
    <message>
        <source>{weight} of {lot} back from the mill</source>
        <translation>{weight} de {lot} de vuelta del beneficio</translation>
    </message>
    <message>
        <source>{weight} of {lot} into the store</source>
        <translation>{weight} de {lot} a bodega</translation>
    </message>
    <message>
        <source>{weight} of {lot} to the mill</source>
        <translation>{weight} de {lot} al beneficio</translation>
    </message>
</context>
<context>
    <name>strip</name>
    <message>
        <source>at rest, {n} {n:day|days}</source>
        <translation>en reposo, {n} {n:día|días}</translation>
    </message>
    <message>
        <source>beds</source>
        <translation>camas</translation>
    </message>
    <message>
        <source>ferment ends not before {day}</source>
        <translation>el fermento no termina antes del {day}</translation>
    </message>
    <message>
        <source>ferment ends {days}</source>
        <translation>termina el fermento {days}</translation>
    </message>
    <message>
        <source>gate not before {day}</source>
        <translation>entrada no antes de {day}</translation>
    </message>
    <message>
        <source>gate {days}</source>
        <translation>entrada {days}</translation>
    </message>
    <message>
        <source>milled {day}</source>
        <translation>trillado {day}</translation>
    </message>
    <message>
        <source>picked</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>rest {n} {n:day|days}, until {day}</source>
        <translation>reposo {n} {n:día|días}, hasta {day}</translation>
    </message>
</context>
<context>
    <name>tables</name>
    <message>
        <source>300 g defects by type, Brazil 2003</source>
        <translation>300 g, defectos por tipo, Brasil 2003</translation>
    </message>
    <message>
        <source>300 g imperfections, Hawaii 4-143</source>
        <translation>300 g, imperfecciones, Hawái 4-143</translation>
    </message>
    <message>
        <source>300 g weighted defects, Indonesia 2008</source>
        <translation>300 g, defectos con peso, Indonesia 2008</translation>
    </message>
    <message>
        <source>350 g full defects, 2018</source>
        <translation>350 g, defectos completos, 2018</translation>
    </message>
    <message>
        <source>A farm&apos;s own count by a published table, not a certificate of the body that publishes it.</source>
        <translation>Conteo propio de la finca con una tabla publicada, no un certificado de quien la publica.</translation>
    </message>
    <message>
        <source>Export limits, ICO resolution 420</source>
        <translation>Límites de exportación, OIC 420</translation>
    </message>
    <message>
        <source>Extra Fancy</source>
        <translation>Extra Fancy</translation>
    </message>
    <message>
        <source>Fancy</source>
        <translation>Fancy</translation>
    </message>
    <message>
        <source>Natural Prime</source>
        <translation>Natural Prime</translation>
    </message>
    <message>
        <source>No. 1</source>
        <translation>No. 1</translation>
    </message>
    <message>
        <source>No. 3</source>
        <translation>No. 3</translation>
    </message>
    <message>
        <source>Prime</source>
        <translation>Prime</translation>
    </message>
    <message>
        <source>Round holes, India</source>
        <translation>Hoyo redondo, India</translation>
    </message>
    <message>
        <source>Round holes, Indonesia 2008</source>
        <translation>Hoyo redondo, Indonesia 2008</translation>
    </message>
    <message>
        <source>Select</source>
        <translation>Select</translation>
    </message>
    <message>
        <source>The table prints whole numbers (11, then 12): here anything over 11 is grade 2. Insect-damaged beans not told apart by holes count as more than one hole.</source>
        <translation>La tabla trae números enteros (11, luego 12): aquí todo lo que pasa de 11 es grado 2. Los granos brocados sin distinguir por hoyos cuentan como de más de un hoyo.</translation>
    </message>
    <message>
        <source>Voluntary targets for exported coffee; moisture by ISO 6673.</source>
        <translation>Metas voluntarias para café de exportación; humedad por ISO 6673.</translation>
    </message>
    <message>
        <source>Where the rule prints a range (2 to 5 insect-bored beans, 2 to 3 small husks) the kinds below say which end is used; the three kinds of bored bean are common practice.</source>
        <translation>Donde la regla trae un rango (2 a 5 granos brocados, 2 a 3 cáscaras pequeñas), los tipos de abajo dicen qué extremo se usa; los tres tipos de brocado son práctica común.</translation>
    </message>
    <message>
        <source>Which beans are full and which lesser imperfections stands in 4-143-6(i), which could not be read: sort them by the rule itself and count the two kinds. Bean size (type I on 19, 18 or 16; type II on 13, 12 or 10) is judged by the inspector; an inspection tolerance of 0.2 points of moisture is reported, the rule says 12 %.</source>
        <translation>Qué granos son imperfección completa o menor está en 4-143-6(i), que no se pudo leer: separarlos por la propia regla y contar los dos tipos. El tamaño (tipo I en 19, 18 o 16; tipo II en 13, 12 o 10) lo juzga el inspector; se habla de una tolerancia de inspección de 0.2 puntos de humedad, la regla dice 12 %.</translation>
    </message>
    <message>
        <source>grade 1</source>
        <translation>grado 1</translation>
    </message>
    <message>
        <source>grade 2</source>
        <translation>grado 2</translation>
    </message>
    <message>
        <source>grade 3</source>
        <translation>grado 3</translation>
    </message>
    <message>
        <source>grade 4</source>
        <translation>grado 4</translation>
    </message>
    <message>
        <source>grade 4a</source>
        <translation>grado 4a</translation>
    </message>
    <message>
        <source>grade 4b</source>
        <translation>grado 4b</translation>
    </message>
    <message>
        <source>grade 5</source>
        <translation>grado 5</translation>
    </message>
    <message>
        <source>grade 6</source>
        <translation>grado 6</translation>
    </message>
    <message>
        <source>type 2</source>
        <translation>tipo 2</translation>
    </message>
    <message>
        <source>type 3</source>
        <translation>tipo 3</translation>
    </message>
    <message>
        <source>type 4</source>
        <translation>tipo 4</translation>
    </message>
    <message>
        <source>type 5</source>
        <translation>tipo 5</translation>
    </message>
    <message>
        <source>type 6</source>
        <translation>tipo 6</translation>
    </message>
    <message>
        <source>type 7</source>
        <translation>tipo 7</translation>
    </message>
    <message>
        <source>type 8</source>
        <translation>tipo 8</translation>
    </message>
    <message>
        <source>within the export limits</source>
        <translation>dentro de los límites de exportación</translation>
    </message>
    <message>
        <source>within the limits for specialty</source>
        <translation>dentro de los límites de especialidad</translation>
    </message>
</context>
<context>
    <name>today</name>
    <message>
        <source>Nothing is due. The yard may rest, and so may you.</source>
        <translation>Nada pendiente. El patio puede descansar, y la gente también.</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primero</translation>
    </message>
    <message>
        <source>read {n} {n:bed|beds}</source>
        <translation>leer {n} {n:cama|camas}</translation>
    </message>
    <message>
        <source>when RH is under {rh}</source>
        <translation>cuando la HR baje de {rh}</translation>
    </message>
    <message>
        <source>yesterday {low}–{high} · {rh} · {rain}</source>
        <translation>ayer {low}–{high} · {rh} · {rain}</translation>
    </message>
    <message>
        <source>you expect no rain</source>
        <translation>no se espera lluvia</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>method not written</source>
        <translation>método sin escribir</translation>
    </message>
    <message>
        <source>No lot has begun yet. Press g to begin the first.</source>
        <translation>Todavía no ha empezado ningún lote. Pulse g para empezar el primero.</translation>
    </message>
    <message>
        <source>cover, {minutes}</source>
        <translation>tapar, {minutes}</translation>
    </message>
    <message>
        <source>free beds</source>
        <translation>camas libres</translation>
    </message>
    <message>
        <source>good hours, usually {a}–{b}</source>
        <translation>horas buenas, usual {a}–{b}</translation>
    </message>
    <message>
        <source>hold of {weight} of {lot} ends {day}</source>
        <translation>apartado de {weight} de {lot} vence {day}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>sample of {lot}, due {day}</source>
        <translation>muestra de {lot}, toca {day}</translation>
    </message>
    <message>
        <source>type the sheets</source>
        <translation>copiar las hojas</translation>
    </message>
    <message>
        <source>you expect rain from {day}</source>
        <translation>se espera lluvia desde {day}</translation>
    </message>
    <message>
        <source>{a}–{b}</source>
        <translation>{a}–{b}</translation>
    </message>
    <message>
        <source>{beds}</source>
        <translation>{beds}</translation>
    </message>
    <message>
        <source>{lot} to beds {beds}</source>
        <translation>{lot} a camas {beds}</translation>
    </message>
    <message>
        <source>{lot} to beds {beds}; not free yet: {taken}</source>
        <translation>{lot} a camas {beds}; no libres aún: {taken}</translation>
    </message>
    <message>
        <source>{lot}, {weight}</source>
        <translation>{lot}, {weight}</translation>
    </message>
    <message>
        <source>{vessel} {lot} from {at}</source>
        <translation>{vessel} {lot} desde {at}</translation>
    </message>
    <message>
        <source>{wet}: in damper air they would take water up</source>
        <translation>{wet}: con aire más húmedo agarran agua</translation>
    </message>
    <message>
        <source>{wet}: wetter than any morning air</source>
        <translation>{wet}: más mojado que cualquier aire de la mañana</translation>
    </message>
    <message>
        <source>{when}: {weight} for {lot}</source>
        <translation>{when}: {weight} para {lot}</translation>
    </message>
</context>
<context>
    <name>units</name>
    <message>
        <source>Is {typed} {big} or {small}?</source>
        <translation>¿{typed} es {big} o {small}?</translation>
    </message>
    <message>
        <source>{n}</source>
        <translation>{n}</translation>
    </message>
    <message>
        <source>“{typed}” has a unit; this is read without one.</source>
        <translation>“{typed}” lleva unidad; esto se lee sin ella.</translation>
    </message>
    <message>
        <source>“{typed}” is in another unit; this is read in {unit}.</source>
        <translation>“{typed}” está en otra unidad; esto se lee en {unit}.</translation>
    </message>
    <message>
        <source>“{typed}” is not a number.</source>
        <translation>“{typed}” no es un número.</translation>
    </message>
    <message>
        <source>“{unit}” is not a temperature; use C or F.</source>
        <translation>“{unit}” no es una temperatura; usar C o F.</translation>
    </message>
    <message>
        <source>“{unit}” is not a weight; use kg, g, lb, oz or qq.</source>
        <translation>“{unit}” no es un peso; usar kg, g, lb, oz o qq.</translation>
    </message>
</context>
<context>
    <name>watch</name>
    <message>
        <source>not of this lot</source>
        <translation>no es de este lote</translation>
    </message>
    <message>
        <source>{file} is new in the watched folder. Where does it measure {lot}?</source>
        <translation>{file} es nuevo en la carpeta vigilada. ¿Dónde mide {lot}?</translation>
    </message>
    <message>
        <source>{vessel}, logger {logger}</source>
        <translation>{vessel}, registrador {logger}</translation>
    </message>
    <message>
        <source>leave this file alone</source>
        <translation>dejar en paz este archivo</translation>
    </message>
</context>
<context>
    <name>weather</name>
    <message>
        <source>Every weather day needs all its columns.</source>
        <translation>Cada día de tiempo necesita todas sus columnas.</translation>
    </message>
    <message>
        <source>Weather days must follow each other, one row a day.</source>
        <translation>Los días de tiempo deben seguirse, un renglón por día.</translation>
    </message>
    <message>
        <source>Good drying hours</source>
        <translation>Las horas buenas de secado</translation>
    </message>
    <message>
        <source>A lowest temperature</source>
        <translation>Una temperatura más baja</translation>
    </message>
    <message>
        <source>A highest temperature</source>
        <translation>Una temperatura más alta</translation>
    </message>
    <message>
        <source>A mean humidity</source>
        <translation>Una humedad media</translation>
    </message>
    <message>
        <source>A day&apos;s rain</source>
        <translation>La lluvia de un día</translation>
    </message>
    <message>
        <source>An outlook is one of sun, mixed, grey or rain.</source>
        <translation>Lo esperado es sol, mixto, gris o lluvia.</translation>
    </message>
</context>
<context>
    <name>weigh_grid</name>
    <message>
        <source>Begin one: g on the page Picking.</source>
        <translation>Empezar uno: g en la página Corte.</translation>
    </message>
    <message>
        <source>No lot has begun, so there is nothing to weigh in.</source>
        <translation>No ha empezado ningún lote; no hay nada que pesar.</translation>
    </message>
    <message>
        <source>afternoon</source>
        <translation>tarde</translation>
    </message>
    <message>
        <source>block {block}, {half}, {day}</source>
        <translation>parcela {block}, {half}, {day}</translation>
    </message>
    <message>
        <source>morning</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>planned for {lot}</source>
        <translation>planeado para {lot}</translation>
    </message>
    <message>
        <source>round of block {block} planned for {day}</source>
        <translation>pasada de parcela {block} planeada para {day}</translation>
    </message>
    <message>
        <source>{n} {n:row|rows} of {all} kept, the last at {at}</source>
        <translation>{n} {n:renglón|renglones} de {all} guardados, el último {at}</translation>
    </message>
    <message>
        <source>{weight}</source>
        <translation>{weight}</translation>
    </message>
    <message>
        <source>{weight} of {plan} planned</source>
        <translation>{weight} de {plan} planeados</translation>
    </message>
    <message>
        <source>{weight} today; nothing was planned</source>
        <translation>{weight} hoy; no había nada planeado</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>A word has no braces and no &amp; in it.</source>
        <translation>Una palabra no lleva llaves ni &amp;.</translation>
    </message>
    <message>
        <source>Both words are needed: what the program says, and what the farm says.</source>
        <translation>Hacen falta las dos palabras: la que dice el programa y la que dice la finca.</translation>
    </message>
    <message>
        <source>“{said}” has a word already.</source>
        <translation>«{said}» ya tiene palabra.</translation>
    </message>
    <message>
        <source>“{was}” is now “{now}”</source>
        <translation>«{was}» ahora es «{now}»</translation>
    </message>
</context>
<context>
    <name>worked_out</name>
    <message>
        <source>Beyond {n} times its spread somebody should look; within it there is nothing to look for. It holds as long as every weighing was of the whole lot.</source>
        <translation>Más allá de {n} veces su dispersión alguien debe mirar; dentro de ella no hay nada que buscar. Vale mientras cada pesada fue del lote entero.</translation>
    </message>
    <message>
        <source>Beyond {share} of what was sent, or {least} where that is more, somebody should look: scales differ by so much. It holds as long as every weighing was of the whole lot.</source>
        <translation>Más allá de {share} de lo enviado, o de {least} donde eso es más, alguien debe mirar: tanto difieren las básculas. Vale mientras cada pesada fue del lote entero.</translation>
    </message>
    <message>
        <source>Conservation of mass; spreads added in squares. Cherry 60 to 70 % water: Alves et al. 2013 (Coffee Science 8:238). What breathing and picking take is from memory.</source>
        <translation>Conservación de la masa; las dispersiones se suman en cuadrados. Cereza con 60 a 70 % de agua: Alves et al. 2013 (Coffee Science 8:238). Lo que se llevan la respiración y el escogido es de memoria.</translation>
    </message>
    <message>
        <source>For lots made and dried as the farm&apos;s others were. It knows neither the weather nor this lot; the first readings replace it.</source>
        <translation>Para lotes hechos y secados como los demás de la finca. No conoce ni el tiempo ni este lote; las primeras lecturas lo reemplazan.</translation>
    </message>
    <message>
        <source>Gompertz curve and its logistic twin as written by Zwietering et al. 1990 (AEM 56:1875). Hours at 20 °C: Rosso, Lobry and Flandrois 1993 (J. Theor. Biol. 162:447). Own lots: Robinson 1991 (Stat. Sci. 6:15).</source>
        <translation>Curva de Gompertz y su gemela logística como las escriben Zwietering et al. 1990 (AEM 56:1875). Horas a 20 °C: Rosso, Lobry y Flandrois 1993 (J. Theor. Biol. 162:447). Lotes propios: Robinson 1991 (Stat. Sci. 6:15).</translation>
    </message>
    <message>
        <source>Median and median absolute deviation of the logarithm of the hours; a count of own lots.</source>
        <translation>Mediana y desviación absoluta mediana del logaritmo de las horas; un recuento de lotes propios.</translation>
    </message>
    <message>
        <source>Meter above {top} shown, not fitted (Jiménez and Bulgarelli 1992). Air {cold} to {warm} and {dry} to {damp} humidity. Looks {days} ahead at most; a lot not dry by then is open.</source>
        <translation>Medidor por encima de {top}: se muestra, no se ajusta (Jiménez y Bulgarelli 1992). Aire de {cold} a {warm} y de {dry} a {damp} de humedad. Mira a lo sumo {days} adelante; un lote que para entonces no está seco queda abierto.</translation>
    </message>
    <message>
        <source>Meter readings of {top} or less, at the tray&apos;s own place and within six hours of its weighing. No dry matter may leave the tray but by breathing, which is not taken out here.</source>
        <translation>Lecturas del medidor de {top} o menos, en el lugar de la bandeja y a menos de seis horas de su pesada. De la bandeja no puede salir materia seca sino por respiración, que aquí no se descuenta.</translation>
    </message>
    <message>
        <source>Moisture is one minus dry matter over weight. The tray&apos;s dry matter is the mean of two: its first weight at the method&apos;s usual moisture, and its weights beside each meter reading, the surer counting for more. The whole curve hangs on it and moves when the meter is corrected.</source>
        <translation>La humedad es uno menos materia seca sobre peso. La materia seca de la bandeja es la media de dos: su primer peso con la humedad usual del método, y sus pesos junto a cada lectura del medidor; la más segura cuenta más. Toda la curva depende de ella y se mueve cuando se corrige el medidor.</translation>
    </message>
    <message>
        <source>Nothing of this lot&apos;s own readings went in. Its beginning plus how long such lots take: the middle of the farm&apos;s own finished lots and their spread, or, with fewer than {n}, the hours and days of the method in the settings. Ends that lie in the past are left out.</source>
        <translation>No entró ninguna lectura de este lote. Su comienzo más lo que tardan lotes así: el centro de los lotes propios terminados y su dispersión, o, con menos de {n}, las horas y días del método en los ajustes. Los finales que ya pasaron se dejan fuera.</translation>
    </message>
    <message>
        <source>The curve of the tray</source>
        <translation>La curva de la bandeja</translation>
    </message>
    <message>
        <source>The curve of the tray on {place}</source>
        <translation>La curva de la bandeja en {place}</translation>
    </message>
    <message>
        <source>The law is this program&apos;s own; warmer, drier air after Parra-Coronado et al. 2008 (Rev. Bras. Eng. Agríc. Amb. 12:415). Rest moisture: Trejos, Roa and Oliveros 1989 (Cenicafé 40:5), from memory. Usual rates: Osorio et al. 2022 (Cenicafé 73:e73101), Dardengo et al. 2013. Weathers: Lall and Sharma 1996 (Water Resour. Res. 32:679). Own lots: Robinson 1991 (Stat. Sci. 6:15).</source>
        <translation>La ley es propia de este programa; aire más caliente y seco según Parra-Coronado et al. 2008 (Rev. Bras. Eng. Agríc. Amb. 12:415). Humedad de reposo: Trejos, Roa y Oliveros 1989 (Cenicafé 40:5), de memoria. Velocidades usuales: Osorio et al. 2022 (Cenicafé 73:e73101), Dardengo et al. 2013. Tiempos: Lall y Sharma 1996 (Water Resour. Res. 32:679). Lotes propios: Robinson 1991 (Stat. Sci. 6:15).</translation>
    </message>
    <message>
        <source>Unexplained at the mill</source>
        <translation>Sin explicar en el beneficio</translation>
    </message>
    <message>
        <source>Unexplained on the beds</source>
        <translation>Sin explicar en las camas</translation>
    </message>
    <message>
        <source>Water leaves through two resistances one after the other: what sun and air can carry off a square metre, and the bean itself, which gives off the slower the nearer it is to the air. Good drying hours drive it, six to a day. Tray weights give the shape of the curve and the meter its height; what they leave open is drawn many times and carried on through many possible weathers, and the range is counted from the draws.</source>
        <translation>El agua sale por dos resistencias, una tras otra: lo que el sol y el aire pueden llevarse de un metro cuadrado, y el propio grano, que la suelta más despacio cuanto más cerca está del aire. La mueven las horas buenas de secado, seis por día. Los pesos de la bandeja dan la forma de la curva y el medidor su altura; lo que dejan abierto se sortea muchas veces y se lleva adelante por muchos tiempos posibles, y el rango se cuenta de los sorteos.</translation>
    </message>
    <message>
        <source>Weighing by certainty is plain statistics. The noise of a meter, 0.75 points and more above 18 %, is from memory, after Jiménez and Bulgarelli 1992 (Agron. Costarric. 16:211).</source>
        <translation>Pesar por certeza es simple estadística. El ruido de un medidor, 0.75 puntos y más por encima de 18 %, es de memoria, según Jiménez y Bulgarelli 1992 (Agron. Costarric. 16:211).</translation>
    </message>
    <message>
        <source>Wet weight changes all day, dry matter does not: what went in, less every stream with a name, less what came out. What is left over is unexplained, and is held against the spread of all that led to it.</source>
        <translation>El peso húmedo cambia todo el día, la materia seca no: lo que entró, menos cada corriente con nombre, menos lo que salió. Lo que sobra queda sin explicar, y se compara con la dispersión de todo lo que llevó a ello.</translation>
    </message>
    <message>
        <source>When it will be dry</source>
        <translation>Cuándo estará seco</translation>
    </message>
    <message>
        <source>When the ferment in {vessel} will be done</source>
        <translation>Cuándo terminará el fermento en {vessel}</translation>
    </message>
    <message>
        <source>breathed off</source>
        <translation>ido en respiración</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>sorteos</translation>
    </message>
    <message>
        <source>dry matter in it</source>
        <translation>materia seca que lleva</translation>
    </message>
    <message>
        <source>dry matter on the tray</source>
        <translation>materia seca en la bandeja</translation>
    </message>
    <message>
        <source>earliest, likely, latest</source>
        <translation>lo antes, lo probable, lo más tarde</translation>
    </message>
    <message>
        <source>filled to last reading</source>
        <translation>llenado a última lectura</translation>
    </message>
    <message>
        <source>husk</source>
        <translation>cáscara</translation>
    </message>
    <message>
        <source>judged by</source>
        <translation>medido contra</translation>
    </message>
    <message>
        <source>loading</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>medidor</translation>
    </message>
    <message>
        <source>meter above {top}, not used</source>
        <translation>medidor sobre {top}, no usado</translation>
    </message>
    <message>
        <source>meter correction</source>
        <translation>corrección del medidor</translation>
    </message>
    <message>
        <source>meter readings it hangs on</source>
        <translation>lecturas del medidor de que depende</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>faltan</translation>
    </message>
    <message>
        <source>moisture when spread</source>
        <translation>humedad al tender</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>none in force</source>
        <translation>ninguna vigente</translation>
    </message>
    <message>
        <source>not read: clock hours stand in</source>
        <translation>no leída: valen horas de reloj</translation>
    </message>
    <message>
        <source>of these corrected</source>
        <translation>de ellas corregidas</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>own lots that taught it</source>
        <translation>lotes propios que le enseñaron</translation>
    </message>
    <message>
        <source>pH falls along a curve with a lag, a steepest fall and a floor, in hours at 20 °C: an hour in a warmer mass counts for more, in a colder one for less. The curve is fitted to the readings and to what such lots do, what they leave open is drawn many times, and the range is counted from the hours at which the draws meet the target.</source>
        <translation>El pH baja por una curva con una espera, una caída máxima y un fondo, en horas a 20 °C: una hora en una masa más caliente cuenta más, en una más fría menos. La curva se ajusta a las lecturas y a lo que hacen lotes así; lo que dejan abierto se sortea muchas veces, y el rango se cuenta de las horas en que los sorteos llegan a la meta.</translation>
    </message>
    <message>
        <source>pH readings</source>
        <translation>lecturas de pH</translation>
    </message>
    <message>
        <source>pH {low} to {high}; growth between {cold} and {warm} of the mass, never of the air. A curve is drawn from {n} readings and a fall of {fall} on; before that the range is mostly what is typical. Looks {hours} ahead. Nose and hand decide.</source>
        <translation>pH {low} a {high}; crecimiento entre {cold} y {warm} de la masa, nunca del aire. Se traza una curva desde {n} lecturas y una caída de {fall}; antes el rango es sobre todo lo típico. Mira {hours} adelante. Deciden la nariz y la mano.</translation>
    </message>
    <message>
        <source>pH {value}</source>
        <translation>pH {value}</translation>
    </message>
    <message>
        <source>picked out</source>
        <translation>escogido</translation>
    </message>
    <message>
        <source>pitched</source>
        <translation>inoculado</translation>
    </message>
    <message>
        <source>rests on</source>
        <translation>se apoya en</translation>
    </message>
    <message>
        <source>scales may differ</source>
        <translation>las básculas pueden diferir</translation>
    </message>
    <message>
        <source>target</source>
        <translation>meta</translation>
    </message>
    <message>
        <source>that makes the start</source>
        <translation>lo que da el comienzo</translation>
    </message>
    <message>
        <source>the last of them</source>
        <translation>la última de ellas</translation>
    </message>
    <message>
        <source>the moistures when spread and at the store</source>
        <translation>las humedades al tender y en bodega</translation>
    </message>
    <message>
        <source>the scales, at one moisture</source>
        <translation>las básculas, a una misma humedad</translation>
    </message>
    <message>
        <source>the tray&apos;s weights, first to last</source>
        <translation>los pesos de la bandeja, del primero al último</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>weather rows</source>
        <translation>filas del tiempo</translation>
    </message>
    <message>
        <source>weighings</source>
        <translation>pesadas</translation>
    </message>
    <message>
        <source>weighings: {n}; trays: {trays}</source>
        <translation>pesadas: {n}; bandejas: {trays}</translation>
    </message>
    <message>
        <source>weight now</source>
        <translation>peso ahora</translation>
    </message>
    <message>
        <source>wetted again</source>
        <translation>mojado otra vez</translation>
    </message>
    <message>
        <source>yeast</source>
        <translation>levadura</translation>
    </message>
    <message>
        <source>{all}</source>
        <translation>{all}</translation>
    </message>
    <message>
        <source>{at}</source>
        <translation>{at}</translation>
    </message>
    <message>
        <source>{dry} ± {sd}</source>
        <translation>{dry} ± {sd}</translation>
    </message>
    <message>
        <source>{ends}</source>
        <translation>{ends}</translation>
    </message>
    <message>
        <source>{moisture} on {day}</source>
        <translation>{moisture} el {day}</translation>
    </message>
    <message>
        <source>{n} curves, {ends} ends, the same ones every time</source>
        <translation>{n} curvas, {ends} finales, las mismas cada vez</translation>
    </message>
    <message>
        <source>{n} {n:day|days}, {days}</source>
        <translation>{n} {n:día|días}, {days}</translation>
    </message>
    <message>
        <source>{n} {n:reading|readings}</source>
        <translation>{n} {n:lectura|lecturas}</translation>
    </message>
    <message>
        <source>{n} {n:reading|readings} of {repeats} {repeats:repeat|repeats}; {wet} above {top} left out</source>
        <translation>{n} {n:lectura|lecturas} de {repeats} {repeats:repetición|repeticiones}; {wet} sobre {top} fuera</translation>
    </message>
    <message>
        <source>{n} {n:temperature|temperatures}, the middle one {warm}</source>
        <translation>{n} {n:temperatura|temperaturas}, la del medio {warm}</translation>
    </message>
    <message>
        <source>{n} {n:time|times}</source>
        <translation>{n} {n:vez|veces}</translation>
    </message>
    <message>
        <source>{n} {n:vessel|vessels} of finished lots, of all methods</source>
        <translation>{n} {n:pila|pilas} de lotes terminados, de todos los métodos</translation>
    </message>
    <message>
        <source>{n} finished, of all methods</source>
        <translation>{n} terminados, de todos los métodos</translation>
    </message>
    <message>
        <source>{n}, the same ones every time</source>
        <translation>{n}, los mismos cada vez</translation>
    </message>
    <message>
        <source>{n}, {first} to {last}</source>
        <translation>{n}, {first} a {last}</translation>
    </message>
    <message>
        <source>{n}, {paper} of them with paper</source>
        <translation>{n}, {paper} de ellas con papel</translation>
    </message>
    <message>
        <source>{start} ± {sd}, of the method</source>
        <translation>{start} ± {sd}, del método</translation>
    </message>
    <message>
        <source>{value}</source>
        <translation>{value}</translation>
    </message>
    <message>
        <source>{what}</source>
        <translation>{what}</translation>
    </message>
</context>
<context>
    <name>yard</name>
    <message>
        <source>Covered {beds}.</source>
        <translation>Tapado {beds}.</translation>
    </message>
    <message>
        <source>Opened {beds}.</source>
        <translation>Destapado {beds}.</translation>
    </message>
    <message>
        <source>{at}. Nothing lies on the beds.</source>
        <translation>{at}. No hay nada en las camas.</translation>
    </message>
    <message>
        <source>{at}. {used} of {beds} {beds:bed|beds} in use</source>
        <translation>{at}. {used} de {beds} {beds:cama|camas} en uso</translation>
    </message>
    <message>
        <source>{line}.</source>
        <translation>{line}.</translation>
    </message>
    <message>
        <source>{line}; {n} to see to at once.</source>
        <translation>{line}; {n} por atender ya.</translation>
    </message>
    <message>
        <source>{line}; {rain} of rain today</source>
        <translation>{line}; {rain} de lluvia hoy</translation>
    </message>
    <message>
        <source>{lot} covered since {since}: open as soon as it is dry</source>
        <translation>{lot} tapado desde {since}: destapar en cuanto seque</translation>
    </message>
    <message>
        <source>{lot} filled into {places}.</source>
        <translation>{lot} llenado en {places}.</translation>
    </message>
    <message>
        <source>{lot} is at {m}: weigh it into the store</source>
        <translation>{lot} está a {m}: pesarlo a bodega</translation>
    </message>
    <message>
        <source>{lot} moved to {places}.</source>
        <translation>{lot} movido a {places}.</translation>
    </message>
    <message>
        <source>{lot} on {place}</source>
        <translation>{lot} en {place}</translation>
    </message>
    <message>
        <source>{lot} spread on {places}.</source>
        <translation>{lot} tendido en {places}.</translation>
    </message>
    <message>
        <source>{lot} took up water, {a} to {b}: keep it apart</source>
        <translation>{lot} agarró agua, {a} a {b}: tenerlo aparte</translation>
    </message>
    <message>
        <source>{lot} weighed into the store.</source>
        <translation>{lot} pesado a bodega.</translation>
    </message>
    <message>
        <source>{text}</source>
        <translation>{text}</translation>
    </message>
    <message>
        <source>{weight}</source>
        <translation>{weight}</translation>
    </message>
</context>
<context>
    <name>yard_sheet</name>
    <message>
        <source>The beans’ warmth alone is no reading.</source>
        <translation>Solo lo tibio del grano no es lectura.</translation>
    </message>
</context>
</TS>
