<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_US">
<context>
    <name>AccountDialog</name>
    <message>
        <source>Account of {name}</source>
        <translation>Estado de cuenta de {name}</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>&amp;Month before</source>
        <translation>&amp;Mes anterior</translation>
    </message>
    <message>
        <source>Month &amp;after</source>
        <translation>Mes &amp;siguiente</translation>
    </message>
    <message>
        <source>On &amp;paper… (Ctrl+P)</source>
        <translation>En &amp;papel… (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save as CS&amp;V</source>
        <translation>Guardar como CS&amp;V</translation>
    </message>
    <message>
        <source>Money for &amp;before…</source>
        <translation>Dinero por lo de &amp;antes…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Reading the books</source>
        <translation>Leyendo los libros</translation>
    </message>
    <message>
        <source>Brought forward {opening}, charged {charged}, taken off {off}, closing {closing}.</source>
        <translation>Saldo anterior {opening}, cargos {charged}, abonos {off}, saldo final {closing}.</translation>
    </message>
    <message>
        <source>Below nothing, the shop owes the customer.</source>
        <translation>Bajo cero, la planta le debe al cliente.</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>El archivo no se escribió</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Concepto</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Cargos</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Abonos</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Saldo</translation>
    </message>
    <message>
        <source>Closing balance</source>
        <translation>Saldo final</translation>
    </message>
    <message>
        <source>Brought forward</source>
        <translation>Saldo anterior</translation>
    </message>
</context>
<context>
    <name>AnimalList</name>
    <message>
        <source>Tag</source>
        <translation>Arete</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Owners</source>
        <translation>Dueños</translation>
    </message>
    <message>
        <source>Live</source>
        <translation>Vivo</translation>
    </message>
    <message>
        <source>Hot</source>
        <translation>Caliente</translation>
    </message>
    <message>
        <source>Hangs at</source>
        <translation>Cuelga en</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
</context>
<context>
    <name>AnimalPanel</name>
    <message>
        <source>Hangs at (rail and hoo&amp;k)</source>
        <translation>Cuelga en (riel y &amp;gancho)</translation>
    </message>
    <message>
        <source>Correct a weight (F8)</source>
        <translation>Corregir un peso (F8)</translation>
    </message>
    <message>
        <source>A part is gone (F9)</source>
        <translation>Falta una parte (F9)</translation>
    </message>
    <message>
        <source>Print its tags (Ctrl+P)</source>
        <translation>Imprimir sus etiquetas (Ctrl+P)</translation>
    </message>
    <message>
        <source>Producer&apos;s report</source>
        <translation>Informe al productor</translation>
    </message>
    <message>
        <source>Scales (Ctrl+E)</source>
        <translation>Básculas (Ctrl+E)</translation>
    </message>
    <message>
        <source>Calendar (Ctrl+K)</source>
        <translation>Calendario (Ctrl+K)</translation>
    </message>
    <message>
        <source>Cooler (Ctrl+L)</source>
        <translation>Cámara fría (Ctrl+L)</translation>
    </message>
    <message>
        <source>Weights (Ctrl+W)</source>
        <translation>Pesos (Ctrl+W)</translation>
    </message>
    <message>
        <source>Weights of the day</source>
        <translation>Pesos del día</translation>
    </message>
    <message>
        <source>One more (Ctrl+N)</source>
        <translation>Uno más (Ctrl+N)</translation>
    </message>
    <message>
        <source>One more came than was booked</source>
        <translation>Vino uno más de lo apartado</translation>
    </message>
    <message>
        <source>Large letters (F11)</source>
        <translation>Letras grandes (F11)</translation>
    </message>
    <message>
        <source>Measures (Ctrl+G)</source>
        <translation>Medidas (Ctrl+G)</translation>
    </message>
    <message>
        <source>Dressing (Ctrl+D)</source>
        <translation>Faenado (Ctrl+D)</translation>
    </message>
    <message>
        <source>Choose an animal in the list.</source>
        <translation>Escoja un animal de la lista.</translation>
    </message>
    <message>
        <source>&amp;Check in</source>
        <translation>&amp;Recibir</translation>
    </message>
    <message>
        <source>Hold it (Ctrl+H)</source>
        <translation>Retenerlo (Ctrl+H)</translation>
    </message>
    <message>
        <source>Tag {tag}</source>
        <translation>Arete {tag}</translation>
    </message>
    <message>
        <source>Tag, sex, age</source>
        <translation>Arete, sexo, edad</translation>
    </message>
    <message>
        <source>Retained: locked until the inspector releases it.</source>
        <translation>Retenido: cerrado hasta que el inspector lo libere.</translation>
    </message>
    <message>
        <source>Let it go (Ctrl+H)</source>
        <translation>Soltarlo (Ctrl+H)</translation>
    </message>
    <message>
        <source>lot {number}</source>
        <translation>lote {number}</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>inspeccionado</translation>
    </message>
    <message>
        <source>custom, not for sale</source>
        <translation>exento, no se vende</translation>
    </message>
</context>
<context>
    <name>AnimalStates</name>
    <message>
        <source>retained</source>
        <translation>retenido</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>It came after all, or will</source>
        <translation>Llegó al fin, o va a llegar</translation>
    </message>
    <message>
        <source>Take a step back</source>
        <translation>Dar un paso atrás</translation>
    </message>
    <message>
        <source>&amp;Accepted</source>
        <translation>&amp;Aceptado</translation>
    </message>
    <message>
        <source>Inspector &amp;passed</source>
        <translation>El inspector lo a&amp;probó</translation>
    </message>
    <message>
        <source>Re&amp;tained</source>
        <translation>Re&amp;tenido</translation>
    </message>
    <message>
        <source>Release it</source>
        <translation>Liberarlo</translation>
    </message>
    <message>
        <source>Didn&apos;t come (Ctrl+M)</source>
        <translation>No llegó (Ctrl+M)</translation>
    </message>
    <message>
        <source>Why is it booked again?</source>
        <translation>¿Por qué se aparta de nuevo?</translation>
    </message>
    <message>
        <source>Why did the inspector retain it?</source>
        <translation>¿Por qué lo retuvo el inspector?</translation>
    </message>
    <message>
        <source>Con&amp;demned</source>
        <translation>&amp;Decomisado</translation>
    </message>
    <message>
        <source>on hold</source>
        <translation>en espera</translation>
    </message>
    <message>
        <source>&amp;Refuse it</source>
        <translation>Recha&amp;zarlo</translation>
    </message>
    <message>
        <source>&amp;Hang it</source>
        <translation>C&amp;olgarlo</translation>
    </message>
    <message>
        <source>Why does it go back?</source>
        <translation>¿Por qué regresa?</translation>
    </message>
    <message>
        <source>Why did the inspector condemn it?</source>
        <translation>¿Por qué lo decomisó el inspector?</translation>
    </message>
    <message>
        <source>Why is it refused?</source>
        <translation>¿Por qué se rechaza?</translation>
    </message>
</context>
<context>
    <name>AnswerPanel</name>
    <message>
        <source>Last time also {line}: not here.</source>
        <translation>La vez pasada también {line}: aquí no.</translation>
    </message>
    <message>
        <source>What would work, by Alt and its number:</source>
        <translation>Lo que sí se puede, con Alt y su número:</translation>
    </message>
    <message>
        <source>{owners}:</source>
        <translation>{owners}:</translation>
    </message>
    <message>
        <source>Alt+{number}</source>
        <translation>Alt+{number}</translation>
    </message>
    <message>
        <source>The same of {count} more lines.</source>
        <translation>Lo mismo de {count} líneas más.</translation>
    </message>
    <message>
        <source>{names} and {count} more</source>
        <translation>{names} y {count} más</translation>
    </message>
    <message>
        <source>Still open: {names}. F9 cuts them as usual.</source>
        <translation>Falta decidir: {names}. F9 lo corta como de costumbre.</translation>
    </message>
    <message>
        <source>Nothing is asked yet. Enter cuts a primal as the house usually does and goes on to the next, 1 to 9 take another way, letters find a cut by its name. F9 cuts all of it as usual, Ctrl+L as last time.</source>
        <translation>Todavía no se pide nada. Intro corta una pieza mayor como suele la casa y sigue con la próxima, del 1 al 9 se toma otra manera, las letras buscan un corte por su nombre. F9 corta todo como siempre, Ctrl+L como la vez pasada.</translation>
    </message>
</context>
<context>
    <name>ApartDialog</name>
    <message>
        <source>Take two entries apart</source>
        <translation>Separar dos fichas</translation>
    </message>
    <message>
        <source>Who was joined into another entry stands alone again. What was written since for the entry that stayed is left with that.</source>
        <translation>La ficha que se juntó con otra vuelve a estar sola. Lo que se escribió desde entonces para la ficha que quedó se deja con ella.</translation>
    </message>
    <message>
        <source>&amp;Take apart</source>
        <translation>&amp;Separar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>Who &amp;stands alone again</source>
        <translation>La ficha que vuelve a estar so&amp;la</translation>
    </message>
    <message>
        <source>{name}, joined into {into}</source>
        <translation>{name}, junta con {into}</translation>
    </message>
    <message>
        <source>It stands alone already.</source>
        <translation>Ya está sola.</translation>
    </message>
    <message>
        <source>Joined by {who} on {when}.</source>
        <translation>Las juntó {who}, {when}.</translation>
    </message>
</context>
<context>
    <name>Arrivals</name>
    <message>
        <source>Write the time like 7:30 or 6:30 pm.</source>
        <translation>Escriba la hora como 7:30 o 6:30 pm.</translation>
    </message>
    <message>
        <source>&amp;Condition</source>
        <translation>&amp;Condición</translation>
    </message>
    <message>
        <source>Age known &amp;by</source>
        <translation>Edad sabida &amp;por</translation>
    </message>
    <message>
        <source>Wh&amp;o said the age</source>
        <translation>&amp;Quién dijo la edad</translation>
    </message>
    <message>
        <source>In the &amp;pen since (time)</source>
        <translation>En el c&amp;orral desde (hora)</translation>
    </message>
    <message>
        <source>Said to be &amp;healthy</source>
        <translation>Dicen que está &amp;sano</translation>
    </message>
    <message>
        <source>&amp;Withdrawal times over</source>
        <translation>Tiempos de &amp;retiro cumplidos</translation>
    </message>
    <message>
        <source>Stated b&amp;y</source>
        <translation>&amp;Declarado por</translation>
    </message>
    <message>
        <source>&amp;Medicines given</source>
        <translation>&amp;Medicinas dadas</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>sound, walks</source>
        <translation>sano, camina</translation>
    </message>
    <message>
        <source>lame, walks</source>
        <translation>cojo, camina</translation>
    </message>
    <message>
        <source>can&apos;t walk</source>
        <translation>no puede caminar</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerto</translation>
    </message>
    <message>
        <source>teeth</source>
        <translation>dientes</translation>
    </message>
    <message>
        <source>papers</source>
        <translation>papeles</translation>
    </message>
    <message>
        <source>owner&apos;s word only</source>
        <translation>solo la palabra del dueño</translation>
    </message>
    <message>
        <source>Dead on arrival: not for food. Tell the inspector, whose word holds.</source>
        <translation>Llegó muerto: no es para comer. Avise al inspector; vale su palabra.</translation>
    </message>
    <message>
        <source>It can&apos;t walk: the inspector decides, before anything else is done.</source>
        <translation>No puede caminar: decide el inspector, antes de hacer otra cosa.</translation>
    </message>
    <message>
        <source>It can&apos;t walk. Cattle that can&apos;t are not taken for food; of any other, ask your inspection office before anything is done.</source>
        <translation>No puede caminar. El ganado vacuno que no puede no se toma para comer; de los demás, pregunte a su oficina de inspección antes de hacer nada.</translation>
    </message>
    <message>
        <source>A withdrawal time still runs: not to be killed for food before it is over. The medicine&apos;s label says when, and the inspector&apos;s word holds.</source>
        <translation>Corre todavía un tiempo de retiro: no se mata para comer antes de que termine. La etiqueta de la medicina dice cuándo, y vale la palabra del inspector.</translation>
    </message>
    <message>
        <source>Over 24 hours in the pen: see that it has feed as well as water; your inspector or office says what is asked.</source>
        <translation>Más de 24 horas en el corral: vea que tenga alimento además de agua; su inspector o su oficina dice qué se pide.</translation>
    </message>
    <message>
        <source>Not said to be healthy: the inspector, or your office, decides first.</source>
        <translation>No se dijo que esté sano: decide antes el inspector o su oficina.</translation>
    </message>
    <message>
        <source>Ask for the owner&apos;s word: healthy, and no medicine whose withdrawal time still runs.</source>
        <translation>Pida la palabra del dueño: sano, y sin medicina cuyo tiempo de retiro corra todavía.</translation>
    </message>
    <message>
        <source>Age is read from teeth or papers; the inspector decides. Not shown, it is cut as 30 months and over: no backbone goes to the owner (9 CFR 310.22).</source>
        <translation>La edad se lee en los dientes o en papeles; decide el inspector. Si no consta, se corta como de 30 meses o más: el espinazo no va al dueño (9 CFR 310.22).</translation>
    </message>
</context>
<context>
    <name>BalancesPage</name>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Open balances: {total}</source>
        <translation>Saldos pendientes: {total}</translation>
    </message>
    <message>
        <source>No open balances</source>
        <translation>No hay saldos pendientes</translation>
    </message>
    <message>
        <source>Bills and credits issued</source>
        <translation>Cuentas y créditos emitidos</translation>
    </message>
    <message>
        <source>Bills and credits issued, the newest {count}</source>
        <translation>Cuentas y créditos emitidos, los {count} más nuevos</translation>
    </message>
    <message>
        <source>Find an owner or a &amp;number</source>
        <translation>Buscar dueño o &amp;número</translation>
    </message>
    <message>
        <source>Orders with a balance</source>
        <translation>Órdenes con saldo</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Núm.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>bill</source>
        <translation>cuenta</translation>
    </message>
    <message>
        <source>credit</source>
        <translation>crédito</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Emitida</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Saldo</translation>
    </message>
</context>
<context>
    <name>BankDialog</name>
    <message>
        <source>Cash to the bank</source>
        <translation>Efectivo al banco</translation>
    </message>
    <message>
        <source>The books have {sum} in the drawer.</source>
        <translation>Los libros tienen {sum} en el cajón.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>Impor&amp;te</translation>
    </message>
    <message>
        <source>&amp;Which way</source>
        <translation>&amp;En qué sentido</translation>
    </message>
    <message>
        <source>from the drawer to the bank</source>
        <translation>del cajón al banco</translation>
    </message>
    <message>
        <source>from the bank to the drawer, as change</source>
        <translation>del banco al cajón, para cambio</translation>
    </message>
    <message>
        <source>&amp;Note, e.g. the number of the slip</source>
        <translation>&amp;Nota, p. ej. el número de la ficha</translation>
    </message>
    <message>
        <source>Say an amount above nothing.</source>
        <translation>Diga un importe mayor que cero.</translation>
    </message>
    <message>
        <source>Only {sum} is there.</source>
        <translation>Solo hay {sum}.</translation>
    </message>
</context>
<context>
    <name>BatchesDialog</name>
    <message>
        <source>Cure, smoke and sausage</source>
        <translation>Cura, humo y embutido</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Tandas</translation>
    </message>
    <message>
        <source>What is in the batch</source>
        <translation>Lo que tiene la tanda</translation>
    </message>
    <message>
        <source>&amp;New batch… (Ctrl+N)</source>
        <translation>Tanda &amp;nueva… (Ctrl+N)</translation>
    </message>
    <message>
        <source>&amp;Put meat in… (F8)</source>
        <translation>&amp;Meter carne… (F8)</translation>
    </message>
    <message>
        <source>&amp;Take it out…</source>
        <translation>&amp;Sacarla…</translation>
    </message>
    <message>
        <source>&amp;Cure… (F9)</source>
        <translation>&amp;Cura… (F9)</translation>
    </message>
    <message>
        <source>&amp;Sheet (Ctrl+P)</source>
        <translation>&amp;Hoja (Ctrl+P)</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>C&amp;errar</translation>
    </message>
    <message>
        <source>There is no recipe yet: Office (F6), Recipes.</source>
        <translation>Todavía no hay receta: Oficina (F6), Recetas.</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Sacarla</translation>
    </message>
    <message>
        <source>It stays in the record. Why does it not go in?</source>
        <translation>Queda en el registro. ¿Por qué no entra?</translation>
    </message>
    <message>
        <source>Only what was added is in it: put an owner&apos;s meat in, or take it out.</source>
        <translation>Solo tiene lo agregado: meta carne de un dueño o sáquelo.</translation>
    </message>
    <message>
        <source>Nothing is in the batch yet.</source>
        <translation>La tanda todavía no tiene nada.</translation>
    </message>
    <message>
        <source>No batch</source>
        <translation>Sin tanda</translation>
    </message>
    <message>
        <source>A batch is one owner&apos;s, or of one animal&apos;s co-owners.</source>
        <translation>Una tanda es de un dueño, o de los codueños de un animal.</translation>
    </message>
    <message>
        <source>Into c&amp;ure</source>
        <translation>A c&amp;ura</translation>
    </message>
    <message>
        <source>Into s&amp;moke</source>
        <translation>A hu&amp;mo</translation>
    </message>
    <message>
        <source>Done, &amp;weigh it…</source>
        <translation>Listo, &amp;pesarlo…</translation>
    </message>
    <message>
        <source>Pac&amp;ked</source>
        <translation>Empa&amp;cado</translation>
    </message>
    <message>
        <source>Next stage</source>
        <translation>Etapa siguiente</translation>
    </message>
    <message>
        <source>{state} since {day}, day {number}</source>
        <translation>{state} desde {day}, día {number}</translation>
    </message>
    <message>
        <source>{weight} in</source>
        <translation>entraron {weight}</translation>
    </message>
    <message>
        <source>{weight} of it {what} ({source})</source>
        <translation>de eso {weight} {what} ({source})</translation>
    </message>
    <message>
        <source>{weight} finished, {percent} %</source>
        <translation>{weight} terminado, {percent} %</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Tanda</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Entró</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminado</translation>
    </message>
    <message>
        <source>Added, from {source}</source>
        <translation>Agregado, de {source}</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
</context>
<context>
    <name>BeginBatch</name>
    <message>
        <source>New batch</source>
        <translation>Tanda nueva</translation>
    </message>
    <message>
        <source>One owner&apos;s meat, or that of one animal&apos;s co-owners.</source>
        <translation>Carne de un dueño, o de los codueños de un animal.</translation>
    </message>
    <message>
        <source>&amp;Begin</source>
        <translation>&amp;Empezar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation>&amp;Receta</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
</context>
<context>
    <name>Bill</name>
    <message>
        <source>{due} is due; {tendered} is more. Only cash can give change.</source>
        <translation>Se deben {due}; {tendered} es más. Solo el efectivo da cambio.</translation>
    </message>
    <message>
        <source>Nothing is due; take it as a deposit, or bill the order first.</source>
        <translation>No se debe nada; tómelo como depósito o haga primero la cuenta de la orden.</translation>
    </message>
    <message>
        <source>{owed} is owed to the customer; {asked} is more.</source>
        <translation>Al cliente se le deben {owed}; {asked} es más.</translation>
    </message>
    <message>
        <source>{due} is due; {asked} is more.</source>
        <translation>Se deben {due}; {asked} es más.</translation>
    </message>
    <message>
        <source>Say an amount above nothing.</source>
        <translation>Diga un importe mayor que cero.</translation>
    </message>
    <message>
        <source>Say why.</source>
        <translation>Diga por qué.</translation>
    </message>
    <message>
        <source>Some of these lines are on an earlier bill; read the order again.</source>
        <translation>Algunas de estas líneas están en una cuenta anterior; lea la orden otra vez.</translation>
    </message>
    <message>
        <source>There is nothing left on that bill to credit.</source>
        <translation>En esa cuenta no queda nada por abonar.</translation>
    </message>
    <message>
        <source>That is more than the line was billed.</source>
        <translation>Es más de lo que se cobró por esa línea.</translation>
    </message>
    <message>
        <source>It no longer comes to what was checked; read the bills again.</source>
        <translation>Ya no suma lo que se revisó; lea las cuentas otra vez.</translation>
    </message>
    <message>
        <source>The day lies in a period that is closed; see Books.</source>
        <translation>El día está en un período cerrado; vea Libros.</translation>
    </message>
    <message>
        <source>That day is still to come; money is dated the day it came.</source>
        <translation>Ese día todavía no llega; el dinero lleva la fecha en que llegó.</translation>
    </message>
    <message>
        <source>What is also on this bill was changed meanwhile; read the order again.</source>
        <translation>Lo que va además en esta cuenta se cambió entretanto; vuelva a leer la orden.</translation>
    </message>
    <message>
        <source>A charge falls to the producer, whose rate card lacks it.</source>
        <translation>Un cargo le toca al productor, pero no está en su tarifa.</translation>
    </message>
    <message>
        <source>Shift+F12 at the wrap weighs it together</source>
        <translation>Mayús+F12 en empaque lo pesa todo junto</translation>
    </message>
    <message>
        <source>Choose the line the amount is of.</source>
        <translation>Elija la línea a la que toca el importe.</translation>
    </message>
    <message>
        <source>No rate card holds for this lot; add one under Rates (Alt+3).</source>
        <translation>Ninguna tarifa vale para este lote; añada una en Tarifas (Alt+3).</translation>
    </message>
    <message>
        <source>An animal has no hanging weight yet; weigh it at the Rail.</source>
        <translation>Un animal no tiene aún peso en canal; péselo en el Riel.</translation>
    </message>
    <message>
        <source>The quarters of a side don&apos;t agree with the side; see the Rail.</source>
        <translation>Los cuartos de una media canal no cuadran con ella; vea el Riel.</translation>
    </message>
    <message>
        <source>A part of an animal is held by two shares; mend it at the Counter.</source>
        <translation>Dos partes tienen lo mismo de un animal; corríjalo en el Mostrador.</translation>
    </message>
    <message>
        <source>The shop&apos;s fore share is not between 0 and 100 %; see Shop.</source>
        <translation>La parte delantera de la planta no está entre 0 y 100 %; vea Planta.</translation>
    </message>
    <message>
        <source>{rate} is more than any rate here.</source>
        <translation>{rate} es más que cualquier precio de aquí.</translation>
    </message>
    <message>
        <source>A rate can&apos;t be below nothing.</source>
        <translation>Un precio no puede ser menor que cero.</translation>
    </message>
    <message>
        <source>It can&apos;t be billed: {code}.</source>
        <translation>No se puede cobrar: {code}.</translation>
    </message>
</context>
<context>
    <name>BillColumns</name>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Billed</source>
        <translation>Cuenta</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Se debe</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Cobrado por</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>espera</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>completa</translation>
    </message>
    <message>
        <source>at the block</source>
        <translation>en la mesa</translation>
    </message>
    <message>
        <source>being wrapped</source>
        <translation>en empaque</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>entregada</translation>
    </message>
</context>
<context>
    <name>BillPanel</name>
    <message>
        <source>This bill</source>
        <translation>Esta cuenta</translation>
    </message>
    <message>
        <source>Billed</source>
        <translation>Total de cuentas</translation>
    </message>
    <message>
        <source>Credited</source>
        <translation>Acreditado</translation>
    </message>
    <message>
        <source>Deposits</source>
        <translation>Anticipos</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Saldo</translation>
    </message>
    <message>
        <source>&amp;Issue bill (Ctrl+Enter)</source>
        <translation>&amp;Emitir (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>Sho&amp;w bill (F9)</source>
        <translation>&amp;Ver cuenta (F9)</translation>
    </message>
    <message>
        <source>&amp;Money… (F8)</source>
        <translation>&amp;Dinero… (F8)</translation>
    </message>
    <message>
        <source>R&amp;eceipt</source>
        <translation>&amp;Recibo</translation>
    </message>
    <message>
        <source>&amp;Credit…</source>
        <translation>&amp;Crédito…</translation>
    </message>
    <message>
        <source>Producer&apos;s s&amp;tatement…</source>
        <translation>Es&amp;tado del productor…</translation>
    </message>
    <message>
        <source>&amp;Quote</source>
        <translation>Coti&amp;zación</translation>
    </message>
    <message>
        <source>Weig&amp;ht ticket</source>
        <translation>Boleta de &amp;peso</translation>
    </message>
    <message>
        <source>&amp;Also on this bill… (F11)</source>
        <translation>&amp;También en esta cuenta… (F11)</translation>
    </message>
    <message>
        <source>Acco&amp;unt…</source>
        <translation>Estado de c&amp;uenta…</translation>
    </message>
    <message>
        <source>Mo&amp;ve a deposit…</source>
        <translation>Pasar un &amp;anticipo…</translation>
    </message>
    <message>
        <source>C&amp;lose order</source>
        <translation>Cerrar &amp;orden</translation>
    </message>
    <message>
        <source>Interest on la&amp;te payment…</source>
        <translation>In&amp;terés por pago tardío…</translation>
    </message>
    <message>
        <source>&amp;Producer&apos;s bill</source>
        <translation>Cuenta del &amp;productor</translation>
    </message>
    <message>
        <source>No order chosen</source>
        <translation>Ninguna orden escogida</translation>
    </message>
    <message>
        <source>Lot {number}, {producer}</source>
        <translation>Lote {number}, {producer}</translation>
    </message>
    <message>
        <source>Order {number}, {owner}</source>
        <translation>Orden {number}, {owner}</translation>
    </message>
</context>
<context>
    <name>BillsBar</name>
    <message>
        <source>O&amp;rders shown</source>
        <translation>Ó&amp;rdenes a la vista</translation>
    </message>
    <message>
        <source>ready or handed over</source>
        <translation>listas o entregadas</translation>
    </message>
    <message>
        <source>all that are open</source>
        <translation>todas las abiertas</translation>
    </message>
    <message>
        <source>&amp;Bill all that is ready… (F7)</source>
        <translation>Hacer la cuenta de &amp;todo lo listo… (F7)</translation>
    </message>
    <message>
        <source>{most} of {count} orders, those with no bill first. Find any other with Ctrl+F.</source>
        <translation>{most} de {count} órdenes, primero las que no tienen cuenta. Busque cualquier otra con Ctrl+F.</translation>
    </message>
    <message>
        <source>Stopped: the bills of {done} of {count} open orders agree with the scale. The others were not checked.</source>
        <translation>Detenido: las cuentas de {done} de {count} órdenes abiertas concuerdan con la báscula. Las demás no se revisaron.</translation>
    </message>
    <message>
        <source>Bills, {count}</source>
        <translation>Cuentas, {count}</translation>
    </message>
    <message>
        <source>Chec&amp;k with the scale (F12)</source>
        <translation>Verificar con la báscu&amp;la (F12)</translation>
    </message>
    <message>
        <source>All bills of open orders agree with the scale.</source>
        <translation>Todas las cuentas de órdenes abiertas coinciden con la báscula.</translation>
    </message>
    <message>
        <source>{count} bills no longer agree with the scale: credit and bill again.</source>
        <translation>{count} cuentas ya no coinciden con la báscula: acredite y vuelva a cobrar.</translation>
    </message>
    <message>
        <source>1 bill no longer agrees with the scale: credit and bill again.</source>
        <translation>1 cuenta ya no coincide con la báscula: acredite y vuelva a cobrar.</translation>
    </message>
    <message>
        <source>Credited: {credits}. Billed again: {bills}.</source>
        <translation>Acreditadas: {credits}. Cobradas de nuevo: {bills}.</translation>
    </message>
</context>
<context>
    <name>BillsPage</name>
    <message>
        <source>Orders to bill</source>
        <translation>Órdenes por cobrar</translation>
    </message>
    <message>
        <source>Lines of the bill</source>
        <translation>Líneas de la cuenta</translation>
    </message>
    <message>
        <source>Orders come here to be billed once they are wrapped and ready</source>
        <translation>Las órdenes llegan aquí para cobrarse cuando están empacadas y listas</translation>
    </message>
    <message>
        <source>Choose an order above</source>
        <translation>Escoja una orden arriba</translation>
    </message>
    <message>
        <source>Bill {number}, issued</source>
        <translation>Cuenta {number}, emitida</translation>
    </message>
    <message>
        <source>Bill to issue</source>
        <translation>Cuenta por emitir</translation>
    </message>
    <message>
        <source>No bill can be made yet</source>
        <translation>Todavía no se puede hacer la cuenta</translation>
    </message>
    <message>
        <source>A weight or rate was changed after the first bill; mend it by a credit.</source>
        <translation>Un peso o un precio cambió después de la primera cuenta; corríjalo con un crédito.</translation>
    </message>
    <message>
        <source>Bill {number} is issued: {total}.</source>
        <translation>Se emitió la cuenta {number}: {total}.</translation>
    </message>
    <message>
        <source>Choose an order first.</source>
        <translation>Escoja primero una orden.</translation>
    </message>
    <message>
        <source>{amount} kept.</source>
        <translation>Se guardó {amount}.</translation>
    </message>
    <message>
        <source>Change: {change}.</source>
        <translation>Cambio: {change}.</translation>
    </message>
    <message>
        <source>Credit {number} is issued: {total}.</source>
        <translation>Se emitió el crédito {number}: {total}.</translation>
    </message>
    <message>
        <source>{who} has changed it meanwhile.</source>
        <translation>{who} lo cambió mientras tanto.</translation>
    </message>
    <message>
        <source>Order {number} is closed.</source>
        <translation>La orden {number} está cerrada.</translation>
    </message>
    <message>
        <source>The goods are not handed over yet.</source>
        <translation>La carne todavía no se entrega.</translation>
    </message>
    <message>
        <source>The order is not billed yet.</source>
        <translation>La orden todavía no tiene cuenta.</translation>
    </message>
    <message>
        <source>The balance is not nothing yet.</source>
        <translation>El saldo todavía no es cero.</translation>
    </message>
</context>
<context>
    <name>BlockCautions</name>
    <message>
        <source>30 months and over.</source>
        <translation>30 meses o más.</translation>
    </message>
    <message>
        <source>Age not known: cut as 30 months and over.</source>
        <translation>No se sabe la edad: se corta como de 30 meses o más.</translation>
    </message>
    <message>
        <source>No backbone goes to the owner; the inspector decides.</source>
        <translation>Al dueño no le va espinazo; decide el inspector.</translation>
    </message>
    <message>
        <source>Not released: {owner}. Leave that part whole.</source>
        <translation>Sin pasar a la mesa: {owner}. Deje entera esa parte.</translation>
    </message>
    <message>
        <source>{owner} has changed the order since sheet {number}; ask the counter first.</source>
        <translation>{owner} cambió la orden después de la hoja {number}; pregunte primero en el mostrador.</translation>
    </message>
    <message>
        <source>No backbone goes to the owner; in doubt ask your state or FSIS contact.</source>
        <translation>Ningún espinazo va al dueño; en la duda, pregunte a su contacto estatal o del FSIS.</translation>
    </message>
    <message>
        <source>No longer stands: {what}</source>
        <translation>Ya no vale: {what}</translation>
    </message>
    <message>
        <source>Custom: every package is marked NOT FOR SALE.</source>
        <translation>Exento: cada paquete se marca NOT FOR SALE (no se vende).</translation>
    </message>
    <message>
        <source>{owner}: {note}</source>
        <translation>{owner}: {note}</translation>
    </message>
    <message>
        <source>side {side}</source>
        <translation>media canal {side}</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>Gone: {what}. {reason}</source>
        <translation>Retirado: {what}. {reason}</translation>
    </message>
</context>
<context>
    <name>BlockLines</name>
    <message>
        <source>{lean} % lean</source>
        <translation>{lean} % magra</translation>
    </message>
    <message>
        <source>{what}, all that is left</source>
        <translation>{what}, todo lo que queda</translation>
    </message>
    <message>
        <source>all that is left</source>
        <translation>todo lo que queda</translation>
    </message>
    <message>
        <source>{weight} each</source>
        <translation>{weight} cada pieza</translation>
    </message>
    <message>
        <source>{ribs} ribs</source>
        <translation>{ribs} costillas</translation>
    </message>
    <message>
        <source>of both sides or the animal</source>
        <translation>de las dos medias canales o del animal</translation>
    </message>
    <message>
        <source>about {pounds}</source>
        <translation>unas {pounds}</translation>
    </message>
    <message>
        <source>{owner} with {led}, packages dealt</source>
        <translation>{owner} con {led}, paquetes repartidos</translation>
    </message>
    <message>
        <source>toward the head</source>
        <translation>hacia la cabeza</translation>
    </message>
    <message>
        <source>toward the tail</source>
        <translation>hacia la cola</translation>
    </message>
    <message>
        <source>number {place} from the head</source>
        <translation>número {place} desde la cabeza</translation>
    </message>
    <message>
        <source>{count} to a package</source>
        <translation>{count} por paquete</translation>
    </message>
    <message>
        <source>packages of {weight}</source>
        <translation>paquetes de {weight}</translation>
    </message>
</context>
<context>
    <name>BlockList</name>
    <message>
        <source>Tag</source>
        <translation>Arete</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Owners</source>
        <translation>Dueños</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Hangs at</source>
        <translation>Cuelga en</translation>
    </message>
    <message>
        <source>Hot</source>
        <translation>Caliente</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>sheet {number}</source>
        <translation>hoja {number}</translation>
    </message>
    <message>
        <source>sheet {number}, new</source>
        <translation>hoja {number}, nueva</translation>
    </message>
</context>
<context>
    <name>BlockPlace</name>
    <message>
        <source>Block</source>
        <translation>Mesa</translation>
    </message>
    <message>
        <source>Enter opens a carcass. A new sheet is read before the knife.</source>
        <translation>Intro abre una canal. La hoja nueva se lee antes del cuchillo.</translation>
    </message>
    <message>
        <source>Carcasses to cut</source>
        <translation>Canales por cortar</translation>
    </message>
    <message>
        <source>Nothing to cut</source>
        <translation>Nada que cortar</translation>
    </message>
    <message>
        <source>Carcasses stand here once they hang (Rail, F3) and their sheet is released (Counter, F2).</source>
        <translation>Aquí están las canales ya colgadas (Riel, F3) cuya hoja pasó a la mesa (Mostrador, F2).</translation>
    </message>
    <message>
        <source>Block sheet {number}, lot {lot}</source>
        <translation>Hoja de mesa {number}, lote {lot}</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Kept and planned again. The counter rings: {owners}.</source>
        <translation>Guardado y planeado otra vez. El mostrador llama a: {owners}.</translation>
    </message>
    <message>
        <source>Kept and planned again. Nothing else changes.</source>
        <translation>Guardado y planeado otra vez. No cambia nada más.</translation>
    </message>
    <message>
        <source>Not ticked</source>
        <translation>Sin marcar</translation>
    </message>
    <message>
        <source>Lines not ticked as made: {count}. Is the carcass cut all the same?</source>
        <translation>Líneas sin marcar como hechas: {count}. ¿De todos modos ya está cortada la canal?</translation>
    </message>
    <message>
        <source>It is cut</source>
        <translation>Ya está cortada</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Tag {tag} is cut.</source>
        <translation>La canal {tag} está cortada.</translation>
    </message>
    <message>
        <source>To be wrapped: {owners}.</source>
        <translation>Por empacar: {owners}.</translation>
    </message>
    <message>
        <source>Not changed</source>
        <translation>No se cambió</translation>
    </message>
    <message>
        <source>Another station has changed this carcass. It is read again now.</source>
        <translation>Otra estación cambió esta canal. Se lee otra vez ahora.</translation>
    </message>
</context>
<context>
    <name>BlockTold</name>
    <message>
        <source>{owner} adds: {now} ({who})</source>
        <translation>{owner} agrega: {now} ({who})</translation>
    </message>
    <message>
        <source>{owner} takes off: {was} ({who})</source>
        <translation>{owner} quita: {was} ({who})</translation>
    </message>
    <message>
        <source>{owner}: {was} becomes {now} ({who})</source>
        <translation>{owner}: antes {was}; ahora {now} ({who})</translation>
    </message>
</context>
<context>
    <name>BookDialog</name>
    <message>
        <source>Book animals</source>
        <translation>Apartar animales</translation>
    </message>
    <message>
        <source>A share left empty is to be named; until then it is the producer&apos;s.</source>
        <translation>Una parte vacía se nombra después; hasta entonces es del productor.</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>A&amp;partar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>&amp;Head</source>
        <translation>&amp;Cabezas</translation>
    </message>
    <message>
        <source>&amp;Day of the kill</source>
        <translation>&amp;Día de matanza</translation>
    </message>
    <message>
        <source>&amp;Producer</source>
        <translation>Pr&amp;oductor</translation>
    </message>
    <message>
        <source>name, or a new name and phone</source>
        <translation>nombre, o nombre y teléfono nuevos</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>Hanging &amp;weight, a guess</source>
        <translation>Pe&amp;so en canal, a ojo</translation>
    </message>
    <message>
        <source>Sk&amp;inned or scalded</source>
        <translation>Desollado o &amp;escaldado</translation>
    </message>
    <message>
        <source>Keeps hide, &amp;offal</source>
        <translation>Se &amp;queda con cuero, vísceras</translation>
    </message>
    <message>
        <source>&amp;Shared as</source>
        <translation>Co&amp;mpartido como</translation>
    </message>
    <message>
        <source>Deposit asked of &amp;each</source>
        <translation>A&amp;nticipo de cada uno</translation>
    </message>
    <message>
        <source>Share {number}</source>
        <translation>Parte {number}</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>Book it all the same, because</source>
        <translation>Apartarlo de todos modos, porque</translation>
    </message>
    <message>
        <source>The day is too full: another day, or say why.</source>
        <translation>El día está muy lleno: otro día, o diga por qué.</translation>
    </message>
    <message>
        <source>Another station has just taken the place.</source>
        <translation>Otra estación acaba de tomar el lugar.</translation>
    </message>
    <message>
        <source>This can&apos;t be booked as it stands.</source>
        <translation>Así como está no se puede apartar.</translation>
    </message>
    <message>
        <source>Say who waits.</source>
        <translation>Diga quién espera.</translation>
    </message>
    <message>
        <source>On the waiting list. Nothing is booked.</source>
        <translation>En la lista de espera. No se apartó nada.</translation>
    </message>
    <message>
        <source>The shares come to more than the animal.</source>
        <translation>Las partes suman más que el animal.</translation>
    </message>
    <message>
        <source>The shares don&apos;t come to the whole animal.</source>
        <translation>Las partes no completan el animal.</translation>
    </message>
    <message>
        <source>At most {most} owners in one booking: book the others apart.</source>
        <translation>A lo más {most} dueños en un apartado: aparte a los demás en otro.</translation>
    </message>
    <message>
        <source>whole, one owner</source>
        <translation>entero, un dueño</translation>
    </message>
    <message>
        <source>two halves</source>
        <translation>dos mitades</translation>
    </message>
    <message>
        <source>four quarters: fore and hind of each side</source>
        <translation>cuatro cuartos: delantero y trasero de cada media canal</translation>
    </message>
    <message>
        <source>one half, a forequarter and a hindquarter</source>
        <translation>una mitad, un cuarto delantero y un cuarto trasero</translation>
    </message>
    <message>
        <source>four split quarters: each side shared by two</source>
        <translation>cuatro cuartos mixtos: cada media canal entre dos</translation>
    </message>
    <message>
        <source>each animal its own owner</source>
        <translation>cada animal con su dueño</translation>
    </message>
</context>
<context>
    <name>BookLists</name>
    <message>
        <source>Who owes what</source>
        <translation>Quién debe qué</translation>
    </message>
    <message>
        <source>Deposits held</source>
        <translation>Anticipos guardados</translation>
    </message>
    <message>
        <source>Takings by day</source>
        <translation>Entradas por día</translation>
    </message>
    <message>
        <source>Drawer counts</source>
        <translation>Conteos del cajón</translation>
    </message>
    <message>
        <source>Tax by rate</source>
        <translation>Impuesto por tasa</translation>
    </message>
    <message>
        <source>Income by service and species</source>
        <translation>Ingreso por servicio y especie</translation>
    </message>
    <message>
        <source>Closed periods</source>
        <translation>Periodos cerrados</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Owed</source>
        <translation>Debe</translation>
    </message>
    <message>
        <source>To 30 days</source>
        <translation>Hasta 30 días</translation>
    </message>
    <message>
        <source>31 to 60</source>
        <translation>31 a 60</translation>
    </message>
    <message>
        <source>61 to 90</source>
        <translation>61 a 90</translation>
    </message>
    <message>
        <source>Over 90</source>
        <translation>Más de 90</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Means</source>
        <translation>Forma de pago</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Tomado</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Se espera</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Tasa</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>Vendido</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuesto</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Servicio</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Especie</translation>
    </message>
    <message>
        <source>Income</source>
        <translation>Ingreso</translation>
    </message>
    <message>
        <source>not told apart</source>
        <translation>sin separar</translation>
    </message>
    <message>
        <source>Closed through</source>
        <translation>Cerrado hasta</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>BookingDialog</name>
    <message>
        <source>Lot {number}: {head} {animals}.</source>
        <translation>Lote {number}: {head} {animals}.</translation>
    </message>
    <message>
        <source>Change the booking</source>
        <translation>Cambiar lo apartado</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Day of the kill</source>
        <translation>&amp;Día de matanza</translation>
    </message>
    <message>
        <source>&amp;Producer</source>
        <translation>Pr&amp;oductor</translation>
    </message>
    <message>
        <source>K&amp;ind</source>
        <translation>T&amp;ipo</translation>
    </message>
    <message>
        <source>Skinned &amp;or scalded</source>
        <translation>Desollado o &amp;escaldado</translation>
    </message>
    <message>
        <source>Hanging &amp;weight, a guess</source>
        <translation>&amp;Peso en canal, a ojo</translation>
    </message>
    <message>
        <source>Keeps &amp;hide, offal</source>
        <translation>Se queda con cue&amp;ro, vísceras</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>&amp;Shared as</source>
        <translation>&amp;Compartido como</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>tal como está</translation>
    </message>
    <message>
        <source>Share {number}</source>
        <translation>Parte {number}</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>Move it all the same, because</source>
        <translation>Moverlo de todos modos, porque</translation>
    </message>
    <message>
        <source>&amp;Cancel the booking</source>
        <translation>Cancelar &amp;lo apartado</translation>
    </message>
    <message>
        <source>One animal to ano&amp;ther day…</source>
        <translation>Un animal a o&amp;tro día…</translation>
    </message>
    <message>
        <source>The day is too full: another day, or say why.</source>
        <translation>El día está muy lleno: otro día, o diga por qué.</translation>
    </message>
    <message>
        <source>Another station has just taken the place.</source>
        <translation>Otra estación acaba de tomar el lugar.</translation>
    </message>
    <message>
        <source>One animal to another day</source>
        <translation>Un animal a otro día</translation>
    </message>
    <message>
        <source>It is lot {number} on {day} now. Tell its owners.</source>
        <translation>Ahora es el lote {number}, el {day}. Avise a sus dueños.</translation>
    </message>
    <message>
        <source>Why is lot {number} cancelled? The place becomes free.</source>
        <translation>¿Por qué se cancela el lote {number}? El lugar queda libre.</translation>
    </message>
    <message>
        <source>{amount} was paid: give it back in the Office.</source>
        <translation>Se pagó {amount}: devuélvalo en la Oficina.</translation>
    </message>
    <message>
        <source>Cancel the booking</source>
        <translation>Cancelar lo apartado</translation>
    </message>
    <message>
        <source>{name} has just changed this lot: look again.</source>
        <translation>{name} acaba de cambiar este lote: mire otra vez.</translation>
    </message>
    <message>
        <source>A share with a cut order would vanish: clear its lines first.</source>
        <translation>Se perdería una parte con orden de corte: quite antes sus líneas.</translation>
    </message>
    <message>
        <source>The animals have come: the rail says what became of them.</source>
        <translation>Los animales llegaron: el riel dice en qué quedaron.</translation>
    </message>
    <message>
        <source>The shares don&apos;t come to the whole animal.</source>
        <translation>Las partes no suman el animal entero.</translation>
    </message>
    <message>
        <source>{owner} is cut as {other} says; shared so that ends, and {owner} is asked for cuts.</source>
        <translation>{owner} se corta como dice {other}; repartido así eso termina, y a {owner} se le piden sus cortes.</translation>
    </message>
    <message>
        <source>Keep it again if that is meant.</source>
        <translation>Guárdelo otra vez si es así.</translation>
    </message>
    <message>
        <source>After the kill the day, the kind and the owners are fixed.</source>
        <translation>Después de la matanza quedan fijos el día, el tipo y los dueños.</translation>
    </message>
    <message>
        <source>After the kill the day, the kind and the shares are fixed.</source>
        <translation>Después de la matanza quedan fijos el día, el tipo y las partes.</translation>
    </message>
    <message>
        <source>Too many owners for one booking: book them apart.</source>
        <translation>Demasiados dueños para una vez: apártelos por separado.</translation>
    </message>
    <message>
        <source>{name} waits longest for {day}, {head} head. Waiting in all: {count}.</source>
        <translation>{name} es quien más espera para {day}, {head} cabezas. Esperan en total: {count}.</translation>
    </message>
    <message>
        <source>A place is free</source>
        <translation>Hay un lugar libre</translation>
    </message>
    <message>
        <source>They are told</source>
        <translation>Ya lo saben</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
</context>
<context>
    <name>BooksPage</name>
    <message>
        <source>&amp;List</source>
        <translation>&amp;Lista</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>T&amp;o, or as of</source>
        <translation>&amp;Hasta, o al</translation>
    </message>
    <message>
        <source>Fi&amp;nd in the list</source>
        <translation>&amp;Buscar en la lista</translation>
    </message>
    <message>
        <source>On pape&amp;r… (Ctrl+P)</source>
        <translation>En pape&amp;l… (Ctrl+P)</translation>
    </message>
    <message>
        <source>Save as CS&amp;V</source>
        <translation>Guardar como CS&amp;V</translation>
    </message>
    <message>
        <source>&amp;Journal as CSV</source>
        <translation>D&amp;iario como CSV</translation>
    </message>
    <message>
        <source>Journal as &amp;plain text</source>
        <translation>Diario como &amp;texto</translation>
    </message>
    <message>
        <source>Openin&amp;g balance</source>
        <translation>Saldo &amp;inicial</translation>
    </message>
    <message>
        <source>Cash to the &amp;bank</source>
        <translation>Efectivo al &amp;banco</translation>
    </message>
    <message>
        <source>Count the &amp;drawer</source>
        <translation>&amp;Contar el cajón</translation>
    </message>
    <message>
        <source>&amp;Close a period</source>
        <translation>C&amp;errar un periodo</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Reading the books</source>
        <translation>Leyendo los libros</translation>
    </message>
    <message>
        <source>Stopped; nothing is shown</source>
        <translation>Detenido; no se muestra nada</translation>
    </message>
    <message>
        <source>{count} rows</source>
        <translation>{count} filas</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 fila</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Del</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Al</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>A la fecha</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Con</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>El archivo no se escribió</translation>
    </message>
    <message>
        <source>Written: {path}</source>
        <translation>Escrito: {path}</translation>
    </message>
    <message>
        <source>The drawer is counted</source>
        <translation>El cajón está contado</translation>
    </message>
    <message>
        <source>The opening balance is kept</source>
        <translation>El saldo inicial está guardado</translation>
    </message>
    <message>
        <source>Kept. {sum} is left in the drawer.</source>
        <translation>Guardado. En el cajón quedan {sum}.</translation>
    </message>
    <message>
        <source>Close a period</source>
        <translation>Cerrar un periodo</translation>
    </message>
    <message>
        <source>Say the last day to be closed.</source>
        <translation>Diga el último día que se cierra.</translation>
    </message>
    <message>
        <source>Nothing can be dated {day} or before any more. It never opens again.</source>
        <translation>Ya nada podrá llevar fecha {day} o anterior. No vuelve a abrirse.</translation>
    </message>
    <message>
        <source>Close the period</source>
        <translation>Cerrar el periodo</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Only a day that is over can be closed.</source>
        <translation>Solo se cierra un día que ya pasó.</translation>
    </message>
    <message>
        <source>That day is closed already.</source>
        <translation>Ese día ya está cerrado.</translation>
    </message>
    <message>
        <source>Closed through {day}</source>
        <translation>Cerrado hasta {day}</translation>
    </message>
</context>
<context>
    <name>BoxDialog</name>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Box</source>
        <translation>&amp;Caja</translation>
    </message>
    <message>
        <source>&amp;Freezer or locker</source>
        <translation>C&amp;ongelador o casillero</translation>
    </message>
    <message>
        <source>F&amp;reezing</source>
        <translation>Co&amp;ngelado</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>como estaba</translation>
    </message>
    <message>
        <source>frozen through</source>
        <translation>bien congelado</translation>
    </message>
    <message>
        <source>in a freezer</source>
        <translation>en un congelador</translation>
    </message>
    <message>
        <source>in no freezer</source>
        <translation>en ningún congelador</translation>
    </message>
    <message>
        <source>&amp;Hours in it already</source>
        <translation>&amp;Horas que lleva dentro</translation>
    </message>
    <message>
        <source>Freezing is said &amp;of</source>
        <translation>La congelación se dice &amp;de</translation>
    </message>
    <message>
        <source>this product</source>
        <translation>este producto</translation>
    </message>
    <message>
        <source>all that is here</source>
        <translation>todo lo que hay aquí</translation>
    </message>
    <message>
        <source>{person} said on {day}: in no freezer.</source>
        <translation>{person} dijo el {day}: en ningún congelador.</translation>
    </message>
    <message>
        <source>{person} said on {day}: in a freezer since {since}.</source>
        <translation>{person} dijo el {day}: en un congelador desde el {since}.</translation>
    </message>
    <message>
        <source>Say in which box it lies.</source>
        <translation>Diga en qué caja está.</translation>
    </message>
</context>
<context>
    <name>BoxesDialog</name>
    <message>
        <source>Boxes of order {number}</source>
        <translation>Cajas de la orden {number}</translation>
    </message>
    <message>
        <source>What lies loose goes into the box; its label is printed.</source>
        <translation>Lo que está suelto va a la caja; se imprime su etiqueta.</translation>
    </message>
    <message>
        <source>&amp;Pack the box</source>
        <translation>&amp;Llenar la caja</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>Ce&amp;rrar</translation>
    </message>
    <message>
        <source>&amp;Box</source>
        <translation>&amp;Caja</translation>
    </message>
    <message>
        <source>&amp;Freezer or locker</source>
        <translation>C&amp;ongelador o casillero</translation>
    </message>
    <message>
        <source>S&amp;can what goes in</source>
        <translation>Esca&amp;near lo que entra</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Suelto</translation>
    </message>
    <message>
        <source>In boxes</source>
        <translation>En cajas</translation>
    </message>
    <message>
        <source>Packages in no box</source>
        <translation>Paquetes en ninguna caja</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>Cajas</translation>
    </message>
    <message>
        <source>&amp;Stays out (Space)</source>
        <translation>&amp;Queda fuera (Espacio)</translation>
    </message>
    <message>
        <source>L&amp;abel of the box (F9)</source>
        <translation>&amp;Etiqueta de la caja (F9)</translation>
    </message>
    <message>
        <source>Scanned: {count}. Only what is scanned goes into the box.</source>
        <translation>Escaneados: {count}. Solo lo escaneado va a la caja.</translation>
    </message>
    <message>
        <source>Scanned: {count}, {moved} of them out of another box. Only what is scanned goes into the box.</source>
        <translation>Escaneados: {count}, {moved} de ellos de otra caja. Solo lo escaneado va a la caja.</translation>
    </message>
    <message>
        <source>{count} of {all} in</source>
        <translation>entran {count} de {all}</translation>
    </message>
    <message>
        <source>Nothing goes in: no package lies loose.</source>
        <translation>No entra nada: no hay paquetes sueltos.</translation>
    </message>
    <message>
        <source>Box {box} stands elsewhere: give this one another name.</source>
        <translation>La caja {box} está en otro lugar: dé otro nombre a esta.</translation>
    </message>
    <message>
        <source>Choose a box first.</source>
        <translation>Elija antes una caja.</translation>
    </message>
    <message>
        <source>Box {box}</source>
        <translation>Caja {box}</translation>
    </message>
    <message>
        <source>Box {box} is packed. No label printer is set; F9 shows its label.</source>
        <translation>La caja {box} está lista. No hay impresora de etiquetas; F9 muestra su etiqueta.</translation>
    </message>
    <message>
        <source>Box {box} is packed, its label printed.</source>
        <translation>La caja {box} está lista, con su etiqueta impresa.</translation>
    </message>
    <message>
        <source>Box {box} is packed, but no label was printed; F9 shows it.</source>
        <translation>La caja {box} está lista, pero no se imprimió su etiqueta; F9 la muestra.</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Caja</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>stays out</source>
        <translation>queda fuera</translation>
    </message>
    <message>
        <source>goes in</source>
        <translation>entra</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Paquetes</translation>
    </message>
    <message>
        <source>Pounds</source>
        <translation>Libras</translation>
    </message>
</context>
<context>
    <name>CalendarDays</name>
    <message>
        <source>Closed</source>
        <translation>Cerrado</translation>
    </message>
    <message>
        <source>other places</source>
        <translation>otros lugares</translation>
    </message>
    <message>
        <source>{taken} of {there} {animals}</source>
        <translation>{taken} de {there} {animals}</translation>
    </message>
    <message>
        <source>{taken} of {there} hooks</source>
        <translation>{taken} de {there} ganchos</translation>
    </message>
    <message>
        <source>{taken}/{there} min block</source>
        <translation>{taken}/{there} min de mesa</translation>
    </message>
</context>
<context>
    <name>CalendarDialog</name>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Cabezas</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Producer</source>
        <translation>Productor</translation>
    </message>
    <message>
        <source>Kill calendar</source>
        <translation>Calendario de matanza</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Bookings of the day, in their turn</source>
        <translation>Lo apartado del día, en su turno</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>&amp;Forward</source>
        <translation>A&amp;delante</translation>
    </message>
    <message>
        <source>As a &amp;week</source>
        <translation>Por &amp;semana</translation>
    </message>
    <message>
        <source>As a &amp;month</source>
        <translation>Por &amp;mes</translation>
    </message>
    <message>
        <source>&amp;Kill days</source>
        <translation>Días d&amp;e matanza</translation>
    </message>
    <message>
        <source>Block min&amp;utes</source>
        <translation>M&amp;inutos de mesa</translation>
    </message>
    <message>
        <source>&amp;This date</source>
        <translation>Esta &amp;fecha</translation>
    </message>
    <message>
        <source>&amp;List of the day</source>
        <translation>&amp;Lista del día</translation>
    </message>
    <message>
        <source>Block &amp;sheets due next</source>
        <translation>&amp;Hojas de la mesa que siguen</translation>
    </message>
    <message>
        <source>Save as &amp;calendar file</source>
        <translation>Guardar como archivo de &amp;calendario</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>{day}: {head} head</source>
        <translation>{day}: {head} cabezas</translation>
    </message>
    <message>
        <source>Arrows choose a day, Page up and down turn, Enter goes to its bookings, M picks one up, W changes the view. Or drag it with the mouse.</source>
        <translation>Las flechas eligen un día, Re Pág y Av Pág pasan, Intro va a lo apartado, M toma uno, W cambia la vista. O arrástrelo con el ratón.</translation>
    </message>
    <message>
        <source>Lot {number} of {producer} in hand: Enter puts it on the chosen day, Esc lets go.</source>
        <translation>Lote {number} de {producer} en la mano: Intro lo pone en el día elegido, Esc lo suelta.</translation>
    </message>
</context>
<context>
    <name>CalendarMove</name>
    <message>
        <source>The next day that can take it: {day}.</source>
        <translation>El próximo día que lo admite: {day}.</translation>
    </message>
    <message>
        <source>Move it all the same?</source>
        <translation>¿Moverlo de todos modos?</translation>
    </message>
    <message>
        <source>Say why it is moved there all the same.</source>
        <translation>Diga por qué se mueve ahí de todos modos.</translation>
    </message>
    <message>
        <source>Not moved.</source>
        <translation>No se movió.</translation>
    </message>
    <message>
        <source>Not moved: after the kill a day is fixed.</source>
        <translation>No se movió: después de la matanza el día queda fijo.</translation>
    </message>
    <message>
        <source>Lot {number} is on {day} now.</source>
        <translation>El lote {number} está ahora en {day}.</translation>
    </message>
</context>
<context>
    <name>CalendarPapers</name>
    <message>
        <source>List of the day</source>
        <translation>Lista del día</translation>
    </message>
    <message>
        <source>Block sheets due next</source>
        <translation>Hojas de la mesa que siguen</translation>
    </message>
    <message>
        <source>No block sheets</source>
        <translation>Sin hojas de la mesa</translation>
    </message>
    <message>
        <source>No released sheet is due at the block in the next {days} days.</source>
        <translation>Ninguna hoja liberada toca en la mesa en los próximos {days} días.</translation>
    </message>
    <message>
        <source>Save as calendar file</source>
        <translation>Guardar como archivo de calendario</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>El archivo no se escribió</translation>
    </message>
</context>
<context>
    <name>CallsDialog</name>
    <message>
        <source>To ring</source>
        <translation>Por llamar</translation>
    </message>
    <message>
        <source>First what was lost, then orders not settled that are due, then who waits for a place. Enter on a line opens the order, or books; Ctrl+Enter logs the call.</source>
        <translation>Primero lo que se perdió, luego las órdenes sin completar que vencen, luego quien espera lugar. Intro en una línea abre la orden, o aparta; Ctrl+Intro anota la llamada.</translation>
    </message>
    <message>
        <source>&amp;Log the call</source>
        <translation>A&amp;notar la llamada</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Rang</source>
        <translation>&amp;Resultado</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>&amp;Told to, if not the owner</source>
        <translation>&amp;Dicho a, si no fue al dueño</translation>
    </message>
    <message>
        <source>Owners to ring</source>
        <translation>Dueños por llamar</translation>
    </message>
    <message>
        <source>Choose the owner that was rung.</source>
        <translation>Elija al dueño al que se llamó.</translation>
    </message>
    <message>
        <source>Another station has rung meanwhile: look again.</source>
        <translation>Otra estación llamó entretanto: mire otra vez.</translation>
    </message>
    <message>
        <source>Nobody is to be rung. Orders that come due, owners who must agree and who lost something come here by themselves.</source>
        <translation>No hay a quién llamar. Las órdenes que vencen, los dueños que deben ponerse de acuerdo y quienes perdieron algo aparecen aquí solos.</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>no contestó</translation>
    </message>
    <message>
        <source>message left</source>
        <translation>se dejó recado</translation>
    </message>
    <message>
        <source>spoke</source>
        <translation>se habló</translation>
    </message>
    <message>
        <source>a place is free: {animal}, {count}</source>
        <translation>hay un lugar libre: {animal}, {count}</translation>
    </message>
    <message>
        <source>no cut sheet</source>
        <translation>sin hoja de corte</translation>
    </message>
    <message>
        <source>cut sheet not settled</source>
        <translation>hoja de corte sin completar</translation>
    </message>
    <message>
        <source>the inspector stopped the animal</source>
        <translation>el inspector retuvo el animal</translation>
    </message>
    <message>
        <source>something was lost</source>
        <translation>se perdió algo</translation>
    </message>
    <message>
        <source>owners must agree</source>
        <translation>los dueños deben ponerse de acuerdo</translation>
    </message>
    <message>
        <source>rung {count} times: the house&apos;s usual</source>
        <translation>{count} llamadas: lo usual de la casa</translation>
    </message>
    <message>
        <source>rung {count} times: let it hang</source>
        <translation>{count} llamadas: que siga colgado</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>What about</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Last call</source>
        <translation>Última llamada</translation>
    </message>
</context>
<context>
    <name>ChargeDialog</name>
    <message>
        <source>Charge</source>
        <translation>Cargo</translation>
    </message>
    <message>
        <source>Steps: above so much another rate holds, as in 5: $5; 10: $7.50.</source>
        <translation>Tramos: por encima de tanto rige otro precio, como en 5: $5; 10: $7.50.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;What for</source>
        <translation>Por &amp;qué</translation>
    </message>
    <message>
        <source>&amp;Charged</source>
        <translation>&amp;Se cobra</translation>
    </message>
    <message>
        <source>&amp;Rate</source>
        <translation>Pre&amp;cio</translation>
    </message>
    <message>
        <source>&amp;Minimum</source>
        <translation>&amp;Mínimo</translation>
    </message>
    <message>
        <source>&amp;Steps</source>
        <translation>T&amp;ramos</translation>
    </message>
    <message>
        <source>&amp;Tax, %</source>
        <translation>&amp;Impuesto, %</translation>
    </message>
    <message>
        <source>S&amp;hrink off the hot weight, %</source>
        <translation>Merma &amp;del peso caliente, %</translation>
    </message>
    <message>
        <source>Animals &amp;from, lb hot</source>
        <translation>&amp;Animales desde, lb caliente</translation>
    </message>
    <message>
        <source>Animals &amp;below, lb hot</source>
        <translation>Animales de&amp;bajo de, lb caliente</translation>
    </message>
    <message>
        <source>M&amp;inimum holds for</source>
        <translation>El mí&amp;nimo vale para</translation>
    </message>
    <message>
        <source>each animal</source>
        <translation>cada animal</translation>
    </message>
    <message>
        <source>each share</source>
        <translation>cada parte</translation>
    </message>
    <message>
        <source>&amp;Paid by</source>
        <translation>Lo &amp;paga</translation>
    </message>
    <message>
        <source>the owner</source>
        <translation>el dueño</translation>
    </message>
    <message>
        <source>the producer</source>
        <translation>el productor</translation>
    </message>
    <message>
        <source>&amp;On a bill</source>
        <translation>En la c&amp;uenta</translation>
    </message>
    <message>
        <source>always</source>
        <translation>siempre</translation>
    </message>
    <message>
        <source>only where asked for</source>
        <translation>solo si se pide</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>se descuenta</translation>
    </message>
    <message>
        <source>O&amp;nly cuts that are</source>
        <translation>Sol&amp;o cortes que son</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>Kin&amp;d of cut</source>
        <translation>Clas&amp;e de corte</translation>
    </message>
    <message>
        <source>Only these cuts</source>
        <translation>Solo estos cortes</translation>
    </message>
    <message>
        <source>every cut</source>
        <translation>todos los cortes</translation>
    </message>
    <message>
        <source>Choose c&amp;uts… (F4)</source>
        <translation>Escoger cor&amp;tes… (F4)</translation>
    </message>
    <message>
        <source>&amp;Age of the animal</source>
        <translation>Edad de&amp;l animal</translation>
    </message>
    <message>
        <source>None of the cuts chosen is of this kind; it would never be billed.</source>
        <translation>Ninguno de los cortes escogidos es de este tipo; nunca se cobraría.</translation>
    </message>
    <message>
        <source>The card has this charge already.</source>
        <translation>La tarifa ya tiene este cargo.</translation>
    </message>
    <message>
        <source>Say the pounds as a number, as in 600.</source>
        <translation>Diga las libras como número, como 600.</translation>
    </message>
</context>
<context>
    <name>ChargeList</name>
    <message>
        <source>Charge</source>
        <translation>Cargo</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Se cobra</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Paid by</source>
        <translation>Lo paga</translation>
    </message>
    <message>
        <source>the producer</source>
        <translation>el productor</translation>
    </message>
    <message>
        <source>the owner</source>
        <translation>el dueño</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Además</translation>
    </message>
</context>
<context>
    <name>Charges</name>
    <message>
        <source>taken off</source>
        <translation>se descuenta</translation>
    </message>
    <message>
        <source>at least {amount} a share</source>
        <translation>al menos {amount} por parte</translation>
    </message>
    <message>
        <source>at least {amount} an animal</source>
        <translation>al menos {amount} por animal</translation>
    </message>
    <message>
        <source>{rate} above {above}</source>
        <translation>{rate} por encima de {above}</translation>
    </message>
    <message>
        <source>less {part} shrink</source>
        <translation>menos {part} de merma</translation>
    </message>
    <message>
        <source>tax {part}</source>
        <translation>impuesto {part}</translation>
    </message>
    <message>
        <source>where asked</source>
        <translation>si se pide</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>roasts</source>
        <translation>asados</translation>
    </message>
    <message>
        <source>steaks and chops</source>
        <translation>bistecs y chuletas</translation>
    </message>
    <message>
        <source>ribs</source>
        <translation>costillas</translation>
    </message>
    <message>
        <source>cuts left whole</source>
        <translation>cortes enteros</translation>
    </message>
    <message>
        <source>ground, stew and sausage</source>
        <translation>molida, guisado y embutido</translation>
    </message>
    <message>
        <source>offal</source>
        <translation>vísceras</translation>
    </message>
    <message>
        <source>bones</source>
        <translation>huesos</translation>
    </message>
    <message>
        <source>fat</source>
        <translation>grasa</translation>
    </message>
    <message>
        <source>what goes to the grind</source>
        <translation>lo que va a molida</translation>
    </message>
    <message>
        <source>under 30 months</source>
        <translation>menos de 30 meses</translation>
    </message>
    <message>
        <source>age not known</source>
        <translation>edad desconocida</translation>
    </message>
    <message>
        <source>30 months and over</source>
        <translation>30 meses o más</translation>
    </message>
    <message>
        <source>from {pounds} lb hot</source>
        <translation>desde {pounds} lb en caliente</translation>
    </message>
    <message>
        <source>below {pounds} lb hot</source>
        <translation>menos de {pounds} lb en caliente</translation>
    </message>
    <message>
        <source>; of these only </source>
        <translation>; de estos solo </translation>
    </message>
    <message>
        <source>Holds for every cut.</source>
        <translation>Vale para todos los cortes.</translation>
    </message>
    <message>
        <source>Counts only what is made as: {what}.</source>
        <translation>Solo cuenta lo que se hace como: {what}.</translation>
    </message>
    <message>
        <source>Billed only to owners who ordered some of: {what}.</source>
        <translation>Solo se cobra a los dueños que pidieron algo de: {what}.</translation>
    </message>
</context>
<context>
    <name>CheckInDialog</name>
    <message>
        <source>Check in a {animal}</source>
        <translation>Recibir: {animal}</translation>
    </message>
    <message>
        <source>What is known of tag {tag}</source>
        <translation>Lo que se sabe del arete {tag}</translation>
    </message>
    <message>
        <source>Ctrl+Enter at any time; what isn&apos;t known stays empty.</source>
        <translation>Ctrl+Intro en cualquier momento; lo que no se sabe queda vacío.</translation>
    </message>
    <message>
        <source>Check &amp;in</source>
        <translation>Rec&amp;ibir</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Tag</source>
        <translation>&amp;Arete</translation>
    </message>
    <message>
        <source>&amp;Sex or class</source>
        <translation>&amp;Sexo o clase</translation>
    </message>
    <message>
        <source>&amp;Age</source>
        <translation>&amp;Edad</translation>
    </message>
    <message>
        <source>Ski&amp;n</source>
        <translation>C&amp;uero</translation>
    </message>
    <message>
        <source>Tag {tag} is on an animal of lot {lot} that is still here.</source>
        <translation>El arete {tag} está en un animal del lote {lot} que sigue aquí.</translation>
    </message>
    <message>
        <source>Fill this in.</source>
        <translation>Llene esto.</translation>
    </message>
    <message>
        <source>Another station has changed this animal. Leave this and open it again.</source>
        <translation>Otra estación cambió este animal. Déjelo y ábralo otra vez.</translation>
    </message>
    <message>
        <source>Swap the tags</source>
        <translation>Cambiar los aretes entre sí</translation>
    </message>
    <message>
        <source>Tag {tag} is on another animal here. If the two carry each other&apos;s tag, say why, and they are swapped. Weights and losses stay with the animal they were kept for: correct those taken by the wrong tag (F8).</source>
        <translation>El arete {tag} lo lleva otro animal de aquí. Si cada uno lleva el del otro, diga por qué y se cambian. Los pesos y las pérdidas se quedan con el animal para el que se guardaron: corrija los tomados con el arete equivocado (F8).</translation>
    </message>
</context>
<context>
    <name>ChoiceField</name>
    <message>
        <source>“{text}” may be {found}; type a little more.</source>
        <translation>“{text}” puede ser {found}; escriba un poco más.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>“{text}” is not among the choices here.</source>
        <translation>“{text}” no está entre lo que se puede escoger aquí.</translation>
    </message>
    <message>
        <source>“{text}” is not among the choices here: {choices}.</source>
        <translation>“{text}” no está entre lo que se puede escoger aquí: {choices}.</translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message>
        <source>all</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation>el resto</translation>
    </message>
    <message>
        <source>so many pieces</source>
        <translation>tantas piezas</translation>
    </message>
    <message>
        <source>so many slices</source>
        <translation>tantas rebanadas</translation>
    </message>
    <message>
        <source>so many pounds</source>
        <translation>tantas libras</translation>
    </message>
    <message>
        <source>a fraction</source>
        <translation>una fracción</translation>
    </message>
    <message>
        <source>up to so many</source>
        <translation>hasta tantos</translation>
    </message>
    <message>
        <source>at least so many</source>
        <translation>al menos tantos</translation>
    </message>
    <message>
        <source>{count} ribs</source>
        <translation>{count} costillas</translation>
    </message>
    <message>
        <source>{weight} each</source>
        <translation>{weight} cada pieza</translation>
    </message>
    <message>
        <source>{percent} % lean</source>
        <translation>{percent} % magra</translation>
    </message>
    <message>
        <source>{weight} a package</source>
        <translation>{weight} por paquete</translation>
    </message>
    <message>
        <source>{count} to a package</source>
        <translation>{count} por paquete</translation>
    </message>
    <message>
        <source>with {stock}</source>
        <translation>con {stock}</translation>
    </message>
    <message>
        <source>fresh or cured?</source>
        <translation>¿fresco o curado?</translation>
    </message>
</context>
<context>
    <name>CoolerDialog</name>
    <message>
        <source>Cooler</source>
        <translation>Cámara fría</translation>
    </message>
    <message>
        <source>What hangs in the cooler</source>
        <translation>Lo que cuelga en la cámara fría</translation>
    </message>
    <message>
        <source>&amp;Hangs elsewhere… (F8)</source>
        <translation>&amp;Cuelga en otro lado… (F8)</translation>
    </message>
    <message>
        <source>&amp;Days wished… (F9)</source>
        <translation>&amp;Días deseados… (F9)</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>C&amp;errar</translation>
    </message>
    <message>
        <source>Nothing hangs. A carcass comes here when the rail hangs it.</source>
        <translation>No cuelga nada. Una canal llega aquí cuando el riel la cuelga.</translation>
    </message>
    <message>
        <source>{count} hang; {due} due to cut, {late} overdue.</source>
        <translation>Cuelgan {count}; {due} por cortar, {late} con atraso.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Arete</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Hangs at</source>
        <translation>Cuelga en</translation>
    </message>
    <message>
        <source>Owners</source>
        <translation>Dueños</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>To hang</source>
        <translation>Debe colgar</translation>
    </message>
    <message>
        <source>Cut on</source>
        <translation>Se corta</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Se espera</translation>
    </message>
    <message>
        <source>{days}, wished</source>
        <translation>{days}, deseado</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source>on the block</source>
        <translation>en la mesa</translation>
    </message>
    <message>
        <source>hangs</source>
        <translation>cuelga</translation>
    </message>
    <message>
        <source>due to cut</source>
        <translation>por cortar</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>con atraso</translation>
    </message>
</context>
<context>
    <name>CorrectionDialog</name>
    <message>
        <source>Correct a weight</source>
        <translation>Corregir un peso</translation>
    </message>
    <message>
        <source>The first weight stays on record beside the right one.</source>
        <translation>El primer peso queda anotado junto al correcto.</translation>
    </message>
    <message>
        <source>&amp;Correct it</source>
        <translation>&amp;Corregirlo</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Which weight</source>
        <translation>C&amp;uál peso</translation>
    </message>
    <message>
        <source>&amp;Right weight</source>
        <translation>&amp;Peso correcto</translation>
    </message>
    <message>
        <source>Re&amp;ason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Dressing</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Está bien</translation>
    </message>
    <message>
        <source>Weigh again</source>
        <translation>Pesar otra vez</translation>
    </message>
    <message>
        <source>Weigh it again.</source>
        <translation>Péselo otra vez.</translation>
    </message>
    <message>
        <source>A weight is more than nothing.</source>
        <translation>Un peso es más que nada.</translation>
    </message>
    <message>
        <source>Another station has corrected this weight. Leave this and look again.</source>
        <translation>Otra estación corrigió este peso. Déjelo y mire otra vez.</translation>
    </message>
</context>
<context>
    <name>CountField</name>
    <message>
        <source>A whole number from {least} to {most} goes here.</source>
        <translation>Aquí va un número entero de {least} a {most}.</translation>
    </message>
    <message>
        <source>A whole number goes here, not “{text}”.</source>
        <translation>Aquí va un número entero, no “{text}”.</translation>
    </message>
    <message>
        <source>Steelyard reads whole numbers like 12; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee números enteros como 12; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>CountStrip</name>
    <message>
        <source>&amp;Packages by count</source>
        <translation>&amp;Paquetes por conteo</translation>
    </message>
    <message>
        <source>&amp;Add packages</source>
        <translation>&amp;Agregar paquetes</translation>
    </message>
    <message>
        <source>By count: no weight, no label. The paper itself says NOT FOR SALE.</source>
        <translation>Por conteo: sin peso ni etiqueta. El papel mismo dice NOT FOR SALE.</translation>
    </message>
</context>
<context>
    <name>CounterPlace</name>
    <message>
        <source>Counter</source>
        <translation>Mostrador</translation>
    </message>
    <message>
        <source>Booked as lot {number}.</source>
        <translation>Apartado como lote {number}.</translation>
    </message>
    <message>
        <source>Making the sheet for the block…</source>
        <translation>Haciendo la hoja para la mesa…</translation>
    </message>
    <message>
        <source>The order changed meanwhile: look again and release it.</source>
        <translation>La orden cambió mientras tanto: mírela otra vez y pásela a la mesa.</translation>
    </message>
    <message>
        <source>Sheet {number} is at the block.</source>
        <translation>La hoja {number} está en la mesa.</translation>
    </message>
    <message>
        <source>Block sheet {number}</source>
        <translation>Hoja de mesa {number}</translation>
    </message>
    <message>
        <source>{amount} taken.</source>
        <translation>Se recibió {amount}.</translation>
    </message>
    <message>
        <source>Give back {change}.</source>
        <translation>Devuelva {change}.</translation>
    </message>
    <message>
        <source>The order is closed.</source>
        <translation>La orden está cerrada.</translation>
    </message>
    <message>
        <source>Nobody is named yet: F11 names the owner.</source>
        <translation>Todavía no hay nombre: F11 nombra al dueño.</translation>
    </message>
    <message>
        <source>Lot {number} is cancelled.</source>
        <translation>El lote {number} está cancelado.</translation>
    </message>
    <message>
        <source>Booking of lot {number} changed.</source>
        <translation>Cambió lo apartado del lote {number}.</translation>
    </message>
    <message>
        <source>The counter has nothing to take back here.</source>
        <translation>El mostrador no tiene nada que regresar aquí.</translation>
    </message>
    <message>
        <source>Take the order back</source>
        <translation>Regresar la orden</translation>
    </message>
    <message>
        <source>Why does it go back to {state}?</source>
        <translation>¿Por qué vuelve a “{state}”?</translation>
    </message>
    <message>
        <source>It is handed over once Wrap has said it is ready.</source>
        <translation>Se entrega cuando Empaque diga que está lista.</translation>
    </message>
    <message>
        <source>Handed over and closed.</source>
        <translation>Entregada y cerrada.</translation>
    </message>
    <message>
        <source>Handed over.</source>
        <translation>Entregada.</translation>
    </message>
    <message>
        <source>Some of it is handed over; the rest waits for another pick-up.</source>
        <translation>Una parte está entregada; lo demás espera otra entrega.</translation>
    </message>
</context>
<context>
    <name>CrashReport</name>
    <message>
        <source>Steelyard has a fault</source>
        <translation>Steelyard tiene una falla</translation>
    </message>
    <message>
        <source>Something in the program went wrong.</source>
        <translation>Algo salió mal en el programa.</translation>
    </message>
    <message>
        <source>What was saved is safe, and you can go on working. If it happens again, copy this report and send it to whoever looks after the program.</source>
        <translation>Lo guardado está a salvo y puede seguir trabajando. Si pasa otra vez, copie este informe y mándelo a quien cuida el programa.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source>&amp;Copy report</source>
        <translation>&amp;Copiar informe</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>C&amp;errar</translation>
    </message>
</context>
<context>
    <name>CreditDialog</name>
    <message>
        <source>Credit</source>
        <translation>Crédito</translation>
    </message>
    <message>
        <source>An issued bill is never changed; a mistake is mended by a credit.</source>
        <translation>Una cuenta emitida nunca se cambia; un error se corrige con un crédito.</translation>
    </message>
    <message>
        <source>&amp;Issue credit</source>
        <translation>&amp;Emitir crédito</translation>
    </message>
    <message>
        <source>L&amp;eave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Línea</translation>
    </message>
    <message>
        <source>the whole bill</source>
        <translation>toda la cuenta</translation>
    </message>
    <message>
        <source>&amp;Amount, if not all of the line</source>
        <translation>&amp;Importe, si no es toda la línea</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Choose the line the amount is of.</source>
        <translation>Elija la línea a la que toca el importe.</translation>
    </message>
    <message>
        <source>Making the credit.</source>
        <translation>Haciendo el crédito.</translation>
    </message>
</context>
<context>
    <name>CureFacts</name>
    <message>
        <source>Cure of batch {number}</source>
        <translation>Cura de la tanda {number}</translation>
    </message>
    <message>
        <source>&amp;Check it</source>
        <translation>&amp;Comprobarla</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>Cure mi&amp;x that went in</source>
        <translation>Me&amp;zcla de cura que entró</translation>
    </message>
    <message>
        <source>Whole &amp;brine, cure and all</source>
        <translation>&amp;Salmuera entera, con la cura</translation>
    </message>
    <message>
        <source>&amp;Pick-up, in percent of the raw weight</source>
        <translation>&amp;Ganancia, en por ciento del peso crudo</translation>
    </message>
    <message>
        <source>A percentage above nothing, like 12.5.</source>
        <translation>Un por ciento mayor que cero, como 12.5.</translation>
    </message>
    <message>
        <source>Say the pick-up as it was weighed.</source>
        <translation>Diga la ganancia como se pesó.</translation>
    </message>
    <message>
        <source>Another station has changed this batch. Look again.</source>
        <translation>Otra estación cambió esta tanda. Mire otra vez.</translation>
    </message>
</context>
<context>
    <name>CustomerDialog</name>
    <message>
        <source>What is kept of a customer</source>
        <translation>Lo que se guarda de un cliente</translation>
    </message>
    <message>
        <source>It stands on papers made from now on; bills and sheets that were issued stay as they are.</source>
        <translation>Está en los papeles que se hagan desde ahora; las cuentas y hojas ya emitidas quedan como están.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Phone</source>
        <translation>&amp;Teléfono</translation>
    </message>
    <message>
        <source>&amp;Mail</source>
        <translation>&amp;Correo</translation>
    </message>
    <message>
        <source>Papers &amp;in</source>
        <translation>Papeles &amp;en</translation>
    </message>
    <message>
        <source>&amp;Address</source>
        <translation>&amp;Dirección</translation>
    </message>
    <message>
        <source>No&amp;tes, on no paper</source>
        <translation>N&amp;otas, en ningún papel</translation>
    </message>
    <message>
        <source>&amp;Group, for rates of its own</source>
        <translation>G&amp;rupo, para tarifas propias</translation>
    </message>
    <message>
        <source>{who} has changed this meanwhile. Leave it and open it again.</source>
        <translation>{who} lo ha cambiado entretanto. Déjelo y ábralo otra vez.</translation>
    </message>
    <message>
        <source>Write a name here.</source>
        <translation>Escriba un nombre aquí.</translation>
    </message>
</context>
<context>
    <name>CustomerField</name>
    <message>
        <source>Write the name before the phone.</source>
        <translation>Escriba el nombre antes del teléfono.</translation>
    </message>
    <message>
        <source>{known} is known already, with the same phone.</source>
        <translation>{known} ya está anotado, con el mismo teléfono.</translation>
    </message>
    <message>
        <source>{known} is known already, written nearly the same.</source>
        <translation>{known} ya está anotado, escrito casi igual.</translation>
    </message>
    <message>
        <source>{known} is known already, with the same name.</source>
        <translation>{known} ya está anotado, con el mismo nombre.</translation>
    </message>
    <message>
        <source>{name}, written nearly so</source>
        <translation>{name}, escrito casi así</translation>
    </message>
    <message>
        <source>Add {name} as another</source>
        <translation>Agregar a {name} como otra persona</translation>
    </message>
    <message>
        <source>Known already?</source>
        <translation>¿Ya está anotado?</translation>
    </message>
    <message>
        <source>Go back and choose</source>
        <translation>Volver a escoger</translation>
    </message>
    <message>
        <source>Write a name here.</source>
        <translation>Escriba aquí un nombre.</translation>
    </message>
</context>
<context>
    <name>CutsDialog</name>
    <message>
        <source>Only these cuts</source>
        <translation>Solo estos cortes</translation>
    </message>
    <message>
        <source>Type a part of the name, up and down to the cut, Enter takes it in or leaves it out. With none taken in, the charge holds for every cut.</source>
        <translation>Escriba parte del nombre, arriba y abajo hasta el corte; Intro lo incluye o lo deja fuera. Sin ninguno incluido, el cargo vale para todos los cortes.</translation>
    </message>
    <message>
        <source>&amp;Keep (Ctrl+Enter)</source>
        <translation>&amp;Guardar (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>Fi&amp;nd a cut</source>
        <translation>&amp;Buscar un corte</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Cortes</translation>
    </message>
    <message>
        <source>No cut of these animals is called “{text}”.</source>
        <translation>Ningún corte de estos animales se llama “{text}”.</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Se cobra</translation>
    </message>
    <message>
        <source>taken in</source>
        <translation>incluido</translation>
    </message>
    <message>
        <source>none of these animals</source>
        <translation>ninguno de estos animales</translation>
    </message>
</context>
<context>
    <name>CuttingView</name>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>Report (Ctrl+R)</source>
        <translation>Dar aviso (Ctrl+R)</translation>
    </message>
    <message>
        <source>Sheet (Ctrl+P)</source>
        <translation>Hoja (Ctrl+P)</translation>
    </message>
    <message>
        <source>List (Esc)</source>
        <translation>Lista (Esc)</translation>
    </message>
    <message>
        <source>&amp;Start cutting</source>
        <translation>&amp;Empezar a cortar</translation>
    </message>
    <message>
        <source>Tag {tag}</source>
        <translation>Arete {tag}</translation>
    </message>
    <message>
        <source>{owners} · sheet {number} · step {at} of {all}</source>
        <translation>{owners} · hoja {number} · paso {at} de {all}</translation>
    </message>
    <message>
        <source>changed at the counter</source>
        <translation>cambiado en el mostrador</translation>
    </message>
    <message>
        <source>&amp;Read on</source>
        <translation>&amp;Seguir leyendo</translation>
    </message>
    <message>
        <source>I have &amp;read sheet {number}</source>
        <translation>Ya &amp;leí la hoja {number}</translation>
    </message>
    <message>
        <source>I have &amp;read the changes</source>
        <translation>He &amp;leído los cambios</translation>
    </message>
    <message>
        <source>&amp;Next: {step}</source>
        <translation>&amp;Sigue: {step}</translation>
    </message>
    <message>
        <source>&amp;Finish: the carcass is cut</source>
        <translation>&amp;Terminar: la canal está cortada</translation>
    </message>
    <message>
        <source>before the knife</source>
        <translation>antes del cuchillo</translation>
    </message>
    <message>
        <source>ground and bones</source>
        <translation>molida y huesos</translation>
    </message>
    <message>
        <source>side {side}, {primal}</source>
        <translation>media canal {side}, {primal}</translation>
    </message>
</context>
<context>
    <name>DateField</name>
    <message>
        <source>Steelyard reads days like 12/3, Dec 3, friday, yesterday or -2; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee días como 12/3, 3 dic, viernes, ayer o -2; no puede leer “{text}”.</translation>
    </message>
    <message>
        <source>Steelyard reads days like 12/3, Dec 3, friday, tomorrow or +7; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee días como 12/3, Dec 3, friday, tomorrow o +7; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>DayBillsDialog</name>
    <message>
        <source>Bills of all that is ready</source>
        <translation>Cuentas de todo lo listo</translation>
    </message>
    <message>
        <source>Look them over, then issue them in one go. A line that waits comes on a bill of its own later. An issued bill is never changed.</source>
        <translation>Revíselas y emítalas de una vez. Una línea que espera va después en su propia cuenta. Una cuenta emitida no se cambia nunca.</translation>
    </message>
    <message>
        <source>Bills to issue</source>
        <translation>Cuentas por emitir</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>C&amp;errar</translation>
    </message>
    <message>
        <source>Sho&amp;w what was issued (F9)</source>
        <translation>&amp;Ver lo emitido (F9)</translation>
    </message>
    <message>
        <source>Nothing is to be billed: no order is ready or handed over without its bill. An order comes here once it is wrapped and ready.</source>
        <translation>No hay nada que cobrar: ninguna orden lista o entregada está sin su cuenta. Una orden llega aquí cuando está empacada y lista.</translation>
    </message>
    <message>
        <source>Stopped: {done} of {count} orders were looked at, those with no bill first. Open this again to look at all.</source>
        <translation>Detenido: se miraron {done} de {count} órdenes, primero las que no tienen cuenta. Abra esto otra vez para mirarlas todas.</translation>
    </message>
    <message>
        <source>To issue: {count}, {total}.</source>
        <translation>Por emitir: {count}, {total}.</translation>
    </message>
    <message>
        <source>Issued: {count}, {total}.</source>
        <translation>Emitidas: {count}, {total}.</translation>
    </message>
    <message>
        <source>&amp;Issue {count} (Ctrl+Enter)</source>
        <translation>E&amp;mitir {count} (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>&amp;Take it in again (Space)</source>
        <translation>Volver a &amp;incluir (Espacio)</translation>
    </message>
    <message>
        <source>Leave it &amp;out (Space)</source>
        <translation>&amp;Dejar fuera (Espacio)</translation>
    </message>
    <message>
        <source>Not issued: {count}. The list says why.</source>
        <translation>No emitidas: {count}. La lista dice por qué.</translation>
    </message>
    <message>
        <source>Stopped. What was issued by then stays issued.</source>
        <translation>Detenido. Lo emitido hasta entonces queda emitido.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Payer</source>
        <translation>Quien paga</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>Cuenta</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>Espera</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>issued, no. {number}</source>
        <translation>emitida, n.º {number}</translation>
    </message>
    <message>
        <source>can&apos;t be issued</source>
        <translation>no se puede emitir</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>to issue</source>
        <translation>por emitir</translation>
    </message>
</context>
<context>
    <name>DayRoom</name>
    <message>
        <source>Take the ne&amp;xt day</source>
        <translation>Tomar el pró&amp;ximo</translation>
    </message>
    <message>
        <source>Put on the wa&amp;iting list</source>
        <translation>Poner en la lista de es&amp;pera</translation>
    </message>
    <message>
        <source>{day} can still take {left} {animals}.</source>
        <translation>El {day} todavía puede tomar {left} {animals}.</translation>
    </message>
    <message>
        <source>Next that can take it: {days}.</source>
        <translation>Los próximos que pueden tomarlo: {days}.</translation>
    </message>
    <message>
        <source>{day} is closed.</source>
        <translation>El {day} está cerrado.</translation>
    </message>
    <message>
        <source>{day} has no places for this animal.</source>
        <translation>El {day} no tiene lugares para este animal.</translation>
    </message>
    <message>
        <source>{day} is too full: {taken} of {there} places taken, {needed} needed.</source>
        <translation>El {day} está muy lleno: {taken} de {there} lugares tomados, se necesitan {needed}.</translation>
    </message>
    <message>
        <source>Cooler too full on {day}: {taken} of {there} hooks taken, {needed} needed.</source>
        <translation>Cámara muy llena el {day}: {taken} de {there} ganchos tomados, se necesitan {needed}.</translation>
    </message>
    <message>
        <source>Block too full on {day}: {taken} of {there} minutes taken, {needed} needed.</source>
        <translation>Mesa muy llena el {day}: {taken} de {there} minutos tomados, se necesitan {needed}.</translation>
    </message>
</context>
<context>
    <name>Deer</name>
    <message>
        <source>hunter</source>
        <translation>cazador</translation>
    </message>
    <message>
        <source>license</source>
        <translation>licencia</translation>
    </message>
    <message>
        <source>game tag</source>
        <translation>marca de caza</translation>
    </message>
    <message>
        <source>day of kill</source>
        <translation>día de la caza</translation>
    </message>
    <message>
        <source>county</source>
        <translation>condado</translation>
    </message>
    <message>
        <source>batch agreed in writing</source>
        <translation>tanda común acordada por escrito</translation>
    </message>
</context>
<context>
    <name>DeerDialog</name>
    <message>
        <source>&amp;Hunter</source>
        <translation>&amp;Cazador</translation>
    </message>
    <message>
        <source>Hunting li&amp;cense</source>
        <translation>&amp;Licencia de caza</translation>
    </message>
    <message>
        <source>&amp;Game tag number</source>
        <translation>Número de la &amp;marca de caza</translation>
    </message>
    <message>
        <source>Killed &amp;on</source>
        <translation>Cazado &amp;el</translation>
    </message>
    <message>
        <source>Co&amp;unty of kill</source>
        <translation>C&amp;ondado de la caza</translation>
    </message>
    <message>
        <source>Ca&amp;pe</source>
        <translation>&amp;Piel del cuello</translation>
    </message>
    <message>
        <source>Hea&amp;d</source>
        <translation>Cabe&amp;za</translation>
    </message>
    <message>
        <source>A&amp;ntlers</source>
        <translation>As&amp;tas</translation>
    </message>
    <message>
        <source>&amp;Meat</source>
        <translation>C&amp;arne</translation>
    </message>
    <message>
        <source>Batch agreed in &amp;writing by</source>
        <translation>Tanda común acordada por e&amp;scrito por</translation>
    </message>
    <message>
        <source>Held for a test (sample num&amp;ber)</source>
        <translation>&amp;Retenido por una prueba (núm. de muestra)</translation>
    </message>
    <message>
        <source>owner keeps it</source>
        <translation>para el dueño</translation>
    </message>
    <message>
        <source>plant discards it</source>
        <translation>la planta la desecha</translation>
    </message>
    <message>
        <source>keep mine apart</source>
        <translation>la mía aparte</translation>
    </message>
    <message>
        <source>batch with others</source>
        <translation>en tanda con otros</translation>
    </message>
    <message>
        <source>Your state says what must be shown, what of a deer from a wasting-disease area may be brought in, and how long tags and records are kept: ask its wildlife agency. Deer are cut apart from other animals, last or on another day.</source>
        <translation>Su estado dice qué debe mostrarse, qué de un venado de una zona con enfermedad de desgaste se puede traer, y cuánto se guardan marcas y registros: pregunte a su agencia de vida silvestre. El venado se corta aparte de otros animales, al final u otro día.</translation>
    </message>
    <message>
        <source>A batch needs the owner&apos;s word in writing: whose?</source>
        <translation>Una tanda común pide la palabra del dueño por escrito: ¿de quién?</translation>
    </message>
    <message>
        <source>Still to ask: {what}.</source>
        <translation>Falta preguntar: {what}.</translation>
    </message>
</context>
<context>
    <name>DepositMoving</name>
    <message>
        <source>Move a deposit</source>
        <translation>Pasar un anticipo</translation>
    </message>
    <message>
        <source>Nothing is held on order {number}.</source>
        <translation>No hay nada guardado en la orden {number}.</translation>
    </message>
    <message>
        <source>Order {number}, {animal}, {day}</source>
        <translation>Orden {number}, {animal}, {day}</translation>
    </message>
    <message>
        <source>to order {number}</source>
        <translation>a la orden {number}</translation>
    </message>
    <message>
        <source>from order {number}</source>
        <translation>de la orden {number}</translation>
    </message>
    <message>
        <source>{amount} moved from order {number} to order {other}, {owner}.</source>
        <translation>{amount} pasaron de la orden {number} a la orden {other}, {owner}.</translation>
    </message>
    <message>
        <source>That order is closed or its booking cancelled; choose another.</source>
        <translation>Esa orden está cerrada o su apartado cancelado; elija otra.</translation>
    </message>
</context>
<context>
    <name>Doubts</name>
    <message>
        <source>It is right</source>
        <translation>Está bien</translation>
    </message>
    <message>
        <source>Weigh again</source>
        <translation>Pesar otra vez</translation>
    </message>
    <message>
        <source>{number} is also the tag of an animal here. Is it a weight?</source>
        <translation>{number} es también el arete de un animal de aquí. ¿Es un peso?</translation>
    </message>
    <message>
        <source>A tag in place of a weight</source>
        <translation>Un arete en lugar de un peso</translation>
    </message>
    <message>
        <source>{weight} can&apos;t stand on {scale}: it shows steps of {division}. Is the weight right?</source>
        <translation>{weight} no puede salir en {scale}, que marca pasos de {division}. ¿Está bien el peso?</translation>
    </message>
    <message>
        <source>The scale&apos;s divisions</source>
        <translation>Las divisiones de la báscula</translation>
    </message>
    <message>
        <source>Dressing</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>{chilled} chilled is more than {hot} hot. Is the weight right?</source>
        <translation>{chilled} frío es más que {hot} caliente. ¿Está bien el peso?</translation>
    </message>
    <message>
        <source>Heavier than hot</source>
        <translation>Más que en caliente</translation>
    </message>
</context>
<context>
    <name>DrawerDialog</name>
    <message>
        <source>Count the drawer</source>
        <translation>Contar el cajón</translation>
    </message>
    <message>
        <source>The books expect {sum}. Cash that went to the bank is no shortage: say it first, under Cash to the bank.</source>
        <translation>Los libros esperan {sum}. El efectivo que fue al banco no es un faltante: dígalo primero, en Efectivo al banco.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Counted</source>
        <translation>&amp;Contado</translation>
    </message>
    <message>
        <source>&amp;Reason, if it differs</source>
        <translation>&amp;Motivo, si difiere</translation>
    </message>
    <message>
        <source>Say what is in the drawer.</source>
        <translation>Diga qué hay en el cajón.</translation>
    </message>
    <message>
        <source>It differs by {sum}; say why.</source>
        <translation>Difiere en {sum}; diga por qué.</translation>
    </message>
    <message>
        <source>Today lies in a closed period.</source>
        <translation>Hoy cae en un periodo cerrado.</translation>
    </message>
</context>
<context>
    <name>Dressing</name>
    <message>
        <source>Dresses {share}. Usual here: {low} to {high}.</source>
        <translation>Rinde {share}. Lo usual aquí: {low} a {high}.</translation>
    </message>
    <message>
        <source>Dresses {share}, outside the usual {low} to {high}. Taken as weighed.</source>
        <translation>Rinde {share}, fuera de lo usual, {low} a {high}. Se toma como se pesó.</translation>
    </message>
    <message>
        <source>Dresses {share}; {low} to {high} is usual. Read the scale again.</source>
        <translation>Rinde {share}; lo usual es {low} a {high}. Lea la báscula otra vez.</translation>
    </message>
    <message>
        <source>This carcass would dress {share}; {low} to {high} is usual, and this is hardly possible. Is the weight right?</source>
        <translation>Esta canal rendiría {share}; lo usual es {low} a {high}, y esto casi no puede ser. ¿Está bien el peso?</translation>
    </message>
    <message>
        <source>Without a hot weight there is no shrink.</source>
        <translation>Sin peso caliente no hay merma.</translation>
    </message>
    <message>
        <source>Lost {share} in the cooler. {usual} is usual here.</source>
        <translation>Perdió {share} en la cámara. Aquí lo usual es {usual}.</translation>
    </message>
    <message>
        <source>Lost {share} in the cooler, without the {taken} taken off. {usual} is usual here.</source>
        <translation>Perdió {share} en la cámara fría, sin contar {taken} que se quitaron. Aquí lo usual es {usual}.</translation>
    </message>
    <message>
        <source>Lost {share} since the hot weight, with what was taken off unweighed; {usual} is usual in the cooler.</source>
        <translation>Perdió {share} desde el peso en caliente, con lo que se quitó sin pesar; lo usual en la cámara fría es {usual}.</translation>
    </message>
    <message>
        <source>Without the {taken} taken off it lost {share}, with what was taken off unweighed; {usual} is usual in the cooler.</source>
        <translation>Sin contar {taken} que se quitaron perdió {share}, con lo que se quitó sin pesar; lo usual en la cámara fría es {usual}.</translation>
    </message>
</context>
<context>
    <name>DressingDialog</name>
    <message>
        <source>How it was dressed</source>
        <translation>Cómo se faenó</translation>
    </message>
    <message>
        <source>As it hung on the scale. The plan and the forecast are made for it.</source>
        <translation>Como colgó en la báscula. El plan y lo que se espera se hacen para eso.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Head</source>
        <translation>&amp;Cabeza</translation>
    </message>
    <message>
        <source>&amp;Feet</source>
        <translation>&amp;Patas</translation>
    </message>
    <message>
        <source>Leaf or kidney f&amp;at</source>
        <translation>Grasa de r&amp;iñonada</translation>
    </message>
    <message>
        <source>K&amp;idneys</source>
        <translation>&amp;Riñones</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>como siempre</translation>
    </message>
    <message>
        <source>on</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>off</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>in</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>out</source>
        <translation>fuera</translation>
    </message>
</context>
<context>
    <name>ExtrasDialog</name>
    <message>
        <source>Also on this bill</source>
        <translation>También en esta cuenta</translation>
    </message>
    <message>
        <source>&amp;Put on the bill</source>
        <translation>&amp;Poner en la cuenta</translation>
    </message>
    <message>
        <source>What the rate card doesn&apos;t have can&apos;t be chosen; add it under Rates.</source>
        <translation>Lo que no está en la tarifa no se puede elegir; agréguelo en Tarifas.</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Days of storage</source>
        <translation>&amp;Días de almacenaje</translation>
    </message>
    <message>
        <source>&amp;Miles of delivery</source>
        <translation>&amp;Millas de entrega</translation>
    </message>
    <message>
        <source>&amp;Taken off</source>
        <translation>D&amp;escuento</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>M&amp;otivo</translation>
    </message>
    <message>
        <source>D&amp;elivery</source>
        <translation>E&amp;ntrega</translation>
    </message>
    <message>
        <source>&amp;Offal</source>
        <translation>&amp;Vísceras</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Said by {who}, {day}.</source>
        <translation>Lo dijo {who}, {day}.</translation>
    </message>
    <message>
        <source>Storage: new days since bill {number}, {since}: {days}.</source>
        <translation>Almacenaje: días nuevos desde la cuenta {number}, {since}: {days}.</translation>
    </message>
    <message>
        <source>Storage: days since ready, {since}: {days}; charged from {first}.</source>
        <translation>Almacenaje: días desde que está lista, {since}: {days}; se cobra desde {first}.</translation>
    </message>
    <message>
        <source>Counted are working days, as set under Shop.</source>
        <translation>Se cuentan días hábiles, como se fijó en Negocio.</translation>
    </message>
    <message>
        <source>Bill {number} has the days before; new ones: {days}.</source>
        <translation>La cuenta {number} ya tiene los días anteriores; nuevos: {days}.</translation>
    </message>
    <message>
        <source>Say why it is taken off.</source>
        <translation>Diga por qué se descuenta.</translation>
    </message>
</context>
<context>
    <name>Field</name>
    <message>
        <source>Fill this in.</source>
        <translation>Llene esto.</translation>
    </message>
</context>
<context>
    <name>FiguresPage</name>
    <message>
        <source>What the block reported. A mistake of ours waits for its credit or a reason.</source>
        <translation>Lo que informó la mesa. Un error nuestro espera su crédito o un motivo.</translation>
    </message>
    <message>
        <source>&amp;Credited… (Ctrl+Enter)</source>
        <translation>&amp;Acreditado… (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>&amp;No credit…</source>
        <translation>Si&amp;n crédito…</translation>
    </message>
    <message>
        <source>Reports of the block</source>
        <translation>Informes de la mesa</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>&amp;Own figures</source>
        <translation>Cifras &amp;propias</translation>
    </message>
    <message>
        <source>shown only</source>
        <translation>solo se muestran</translation>
    </message>
    <message>
        <source>used for what is expected</source>
        <translation>se usan para lo que se espera</translation>
    </message>
    <message>
        <source>Made beside what the table foretells, of carcasses that are wrapped. Only a cut that differs by more than chance is used.</source>
        <translation>Lo hecho al lado de lo que predice la tabla, de canales ya empacadas. Solo se usa un corte que difiere más que por azar.</translation>
    </message>
    <message>
        <source>Own figures</source>
        <translation>Cifras propias</translation>
    </message>
    <message>
        <source>The block has reported nothing</source>
        <translation>La mesa no ha informado nada</translation>
    </message>
    <message>
        <source>Who cuts says at the carcass (Block, Ctrl+R) what ran longer or shorter, what was lost and what was cut otherwise. It stands here, and a mistake of ours waits here until it is credited.</source>
        <translation>Quien corta dice en la canal (Mesa, Ctrl+R) qué salió más largo o más corto, qué se perdió y qué se cortó de otro modo. Queda aquí, y un error nuestro espera aquí hasta que se abone.</translation>
    </message>
    <message>
        <source>No figures of your own yet</source>
        <translation>Todavía no hay cifras propias</translation>
    </message>
    <message>
        <source>Once orders of this animal are wrapped and ready, each cut&apos;s made weight stands here beside what the table foretells. What was wrapped by count gives none.</source>
        <translation>Cuando haya órdenes de este animal empacadas y listas, el peso hecho de cada corte queda aquí junto a lo que prevé la tabla. Lo empacado por conteo no da ninguna.</translation>
    </message>
    <message>
        <source>Credited</source>
        <translation>Acreditado</translation>
    </message>
    <message>
        <source>No credit</source>
        <translation>Sin crédito</translation>
    </message>
    <message>
        <source>Which credit, of which bill? Write the credit at the bill of order {number}.</source>
        <translation>¿Qué crédito, de qué cuenta? Escriba el crédito en la cuenta de la orden {number}.</translation>
    </message>
    <message>
        <source>Why is there no credit for order {number}?</source>
        <translation>¿Por qué no hay crédito para la orden {number}?</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Guardado.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Arete</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Reported by</source>
        <translation>Lo informó</translation>
    </message>
    <message>
        <source>Credit</source>
        <translation>Crédito</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Made, % of the table</source>
        <translation>Hecho, % de la tabla</translation>
    </message>
    <message>
        <source>Taken as, %</source>
        <translation>Tomado como, %</translation>
    </message>
    <message>
        <source>By more than chance</source>
        <translation>Más que por azar</translation>
    </message>
    <message>
        <source>side {side}</source>
        <translation>media canal {side}</translation>
    </message>
    <message>
        <source>{pounds} lost</source>
        <translation>{pounds} perdidas</translation>
    </message>
    <message>
        <source>report taken back</source>
        <translation>aviso retirado</translation>
    </message>
    <message>
        <source>ours: to credit</source>
        <translation>nuestro: por acreditar</translation>
    </message>
    <message>
        <source>credited</source>
        <translation>acreditado</translation>
    </message>
    <message>
        <source>no credit</source>
        <translation>sin crédito</translation>
    </message>
    <message>
        <source>yes, differs</source>
        <translation>sí, difiere</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>FileOut</name>
    <message>
        <source>{path} can&apos;t be written ({why}).</source>
        <translation>No se puede escribir {path} ({why}).</translation>
    </message>
    <message>
        <source>{path} was not written: the disk is full. Make room, or choose another.</source>
        <translation>No se escribió {path}: el disco está lleno. Haga lugar o elija otro.</translation>
    </message>
    <message>
        <source>{path} can&apos;t be written: it is not allowed there. Choose another folder.</source>
        <translation>No se puede escribir {path}: ahí no está permitido. Elija otra carpeta.</translation>
    </message>
    <message>
        <source>There is no folder {folder}. Choose one that is there.</source>
        <translation>No existe la carpeta {folder}. Elija una que exista.</translation>
    </message>
    <message>
        <source>{path} is a folder. Give the file a name of its own.</source>
        <translation>{path} es una carpeta. Dé al archivo un nombre propio.</translation>
    </message>
</context>
<context>
    <name>FilledFormDialog</name>
    <message>
        <source>&amp;Put on the order</source>
        <translation>&amp;Poner en la orden</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>What the form asks for</source>
        <translation>Lo que pide la forma</translation>
    </message>
    <message>
        <source>What was not understood: ask the owner</source>
        <translation>Lo que no se entendió: pregunte al dueño</translation>
    </message>
    <message>
        <source>The owner&apos;s note, which goes to the order&apos;s note (F12): {note}</source>
        <translation>La nota del dueño, que va a la nota de la orden (F12): {note}</translation>
    </message>
    <message>
        <source>Of the form {count} more weren&apos;t understood.</source>
        <translation>De la forma no se entendieron {count} más.</translation>
    </message>
    <message>
        <source>Nothing is ticked or written on it. Was it saved after it was filled?</source>
        <translation>No tiene nada marcado ni escrito. ¿Se guardó después de llenarla?</translation>
    </message>
    <message>
        <source>Understood: {lines}. Not understood: {missed}.</source>
        <translation>Entendido: {lines}. Sin entender: {missed}.</translation>
    </message>
</context>
<context>
    <name>FindBox</name>
    <message>
        <source>Find (Ctrl+F)</source>
        <translation>Buscar (Ctrl+F)</translation>
    </message>
    <message>
        <source>Any part of a name, tag, number or phone; or scan a label</source>
        <translation>Cualquier parte de un nombre, arete, número o teléfono; o escanee una etiqueta</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>Parecido</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Nada encontrado</translation>
    </message>
</context>
<context>
    <name>FirstUse</name>
    <message>
        <source>Name and address, for papers and labels: Office, Shop (F6, Alt+4).</source>
        <translation>Nombre y dirección, para papeles y etiquetas: Oficina, Planta (F6, Alt+4).</translation>
    </message>
    <message>
        <source>A rate card, for prices and bills: Office, Rates (F6, Alt+3).</source>
        <translation>Una tarifa, para precios y cuentas: Oficina, Tarifas (F6, Alt+3).</translation>
    </message>
    <message>
        <source>Kill days and what each takes, if you like: Rail, calendar (F3, Ctrl+K).</source>
        <translation>Días de matanza y lo que toma cada uno, si quiere: Riel, calendario (F3, Ctrl+K).</translation>
    </message>
    <message>
        <source>Not set up yet; booking works without it:</source>
        <translation>Todavía falta; se puede apartar sin ello:</translation>
    </message>
</context>
<context>
    <name>FormDialog</name>
    <message>
        <source>What was typed here is not kept. Esc again drops it.</source>
        <translation>Lo escrito aquí no está guardado. Esc otra vez lo desecha.</translation>
    </message>
</context>
<context>
    <name>Gone</name>
    <message>
        <source>all of the {primal}</source>
        <translation>todo: {primal}</translation>
    </message>
    <message>
        <source>side {side}</source>
        <translation>media canal {side}</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>Condemned: {what}. {reason}</source>
        <translation>Decomisado: {what}. {reason}</translation>
    </message>
    <message>
        <source>Trimmed off: {what}. {reason}</source>
        <translation>Recortado: {what}. {reason}</translation>
    </message>
    <message>
        <source>Discarded: {what}. {reason}</source>
        <translation>Desechado: {what}. {reason}</translation>
    </message>
    <message>
        <source>Gone: {what}. {reason}</source>
        <translation>Ya no está: {what}. {reason}</translation>
    </message>
</context>
<context>
    <name>GradesDialog</name>
    <message>
        <source>Measures of tag {tag}</source>
        <translation>Medidas del arete {tag}</translation>
    </message>
    <message>
        <source>Taken with the carcass ribbed. What comes of it is calculated, not a USDA grade; it never goes on a label.</source>
        <translation>Se toman con la canal cortada entre costillas. Lo que sale es calculado, no es un grado del USDA; nunca va en una etiqueta.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Fat over the 12th rib, in</source>
        <translation>Grasa &amp;en la costilla 12, pulg</translation>
    </message>
    <message>
        <source>&amp;Ribeye, sq in</source>
        <translation>&amp;Ojo de la costilla, pulg²</translation>
    </message>
    <message>
        <source>&amp;Kidney, pelvic and heart fat, %</source>
        <translation>Grasa de &amp;riñón, pelvis y corazón, %</translation>
    </message>
    <message>
        <source>&amp;Body wall, in</source>
        <translation>&amp;Pared del cuerpo, pulg</translation>
    </message>
    <message>
        <source>&amp;Last-rib backfat, in</source>
        <translation>Grasa dorsal, ú&amp;ltima costilla, pulg</translation>
    </message>
    <message>
        <source>&amp;Tenth-rib fat, in</source>
        <translation>Grasa, &amp;décima costilla, pulg</translation>
    </message>
    <message>
        <source>&amp;Muscling</source>
        <translation>&amp;Musculatura</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>delgada</translation>
    </message>
    <message>
        <source>average</source>
        <translation>media</translation>
    </message>
    <message>
        <source>thick</source>
        <translation>gruesa</translation>
    </message>
    <message>
        <source>A measure like 0.40; fat in inches.</source>
        <translation>Una medida como 0.40; la grasa en pulgadas.</translation>
    </message>
    <message>
        <source>Change that measure.</source>
        <translation>Cambie esa medida.</translation>
    </message>
    <message>
        <source>Nothing is measured yet.</source>
        <translation>Todavía no se midió nada.</translation>
    </message>
    <message>
        <source>Grade {grade} ({figure}), calculated, not a USDA grade.</source>
        <translation>Grado {grade} ({figure}), calculado, no es un grado del USDA.</translation>
    </message>
    <message>
        <source>Closely trimmed cuts {percent} %, equation from memory.</source>
        <translation>Cortes bien recortados {percent} %, ecuación de memoria.</translation>
    </message>
    <message>
        <source>Fat-free lean {percent} %.</source>
        <translation>Magro sin grasa {percent} %.</translation>
    </message>
    <message>
        <source>Weigh the hot carcass first.</source>
        <translation>Pese antes la canal caliente.</translation>
    </message>
</context>
<context>
    <name>GroundFields</name>
    <message>
        <source>&amp;Seasoning</source>
        <translation>&amp;Sazón</translation>
    </message>
    <message>
        <source>&amp;Grind in</source>
        <translation>Moler con&amp;tra</translation>
    </message>
    <message>
        <source>Part of it, per cent</source>
        <translation>Parte de ella, por ciento</translation>
    </message>
    <message>
        <source>empty: to the lean asked</source>
        <translation>vacío: hasta el magro pedido</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>The trim gives at most, by lean: {all}</source>
        <translation>El recorte da a lo más, según lo magro: {all}</translation>
    </message>
    <message>
        <source>pork fat</source>
        <translation>grasa de cerdo</translation>
    </message>
    <message>
        <source>pork trim</source>
        <translation>recorte de cerdo</translation>
    </message>
    <message>
        <source>beef fat</source>
        <translation>grasa de res</translation>
    </message>
</context>
<context>
    <name>HandOverDialog</name>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>Hand over order {number}</source>
        <translation>Entregar la orden {number}</translation>
    </message>
    <message>
        <source>{owner}. Packages: {count}, {weight}. Count them off together.</source>
        <translation>{owner}: {count} paquetes, {weight}. Cuéntenlos juntos.</translation>
    </message>
    <message>
        <source>&amp;Hand over</source>
        <translation>&amp;Entregar</translation>
    </message>
    <message>
        <source>&amp;Fetched by, if another</source>
        <translation>&amp;Lo recoge, si es otro</translation>
    </message>
    <message>
        <source>Labeled packages scanned: all {here}.</source>
        <translation>Paquetes con etiqueta escaneados: todos, {here}.</translation>
    </message>
    <message>
        <source>Some of it was fetched before, last on {day} by {whom}.</source>
        <translation>Una parte ya se recogió, la última vez el {day}, por {whom}.</translation>
    </message>
    <message>
        <source>&amp;Why it leaves unpaid</source>
        <translation>&amp;Por qué sale sin pagar</translation>
    </message>
    <message>
        <source>Packages that are here</source>
        <translation>Paquetes que están aquí</translation>
    </message>
    <message>
        <source>{owner}. Packages: {count}, {by_count} of them by count, the others {weight}. Count them off together.</source>
        <translation>{owner}. Paquetes: {count}, {by_count} de ellos por conteo, los demás {weight}. Cuéntenlos juntos.</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>S&amp;can a box or package</source>
        <translation>Es&amp;canear una caja o un paquete</translation>
    </message>
    <message>
        <source>&amp;Stays for later (Space)</source>
        <translation>Queda &amp;para después (Espacio)</translation>
    </message>
    <message>
        <source>&amp;Box and place… (F8)</source>
        <translation>Caja &amp;y lugar… (F8)</translation>
    </message>
    <message>
        <source>Sli&amp;p to sign (Ctrl+P)</source>
        <translation>Papel para &amp;firmar (Ctrl+P)</translation>
    </message>
    <message>
        <source>Wrapped by count: it has no label and goes in no box.</source>
        <translation>Empacado por conteo: no tiene etiqueta y no va en ninguna caja.</translation>
    </message>
    <message>
        <source>Nothing leaves: choose what is fetched now.</source>
        <translation>No sale nada: elija lo que se llevan ahora.</translation>
    </message>
    <message>
        <source>Another station has handed some of it over: look again.</source>
        <translation>Otra estación ya entregó una parte: mire de nuevo.</translation>
    </message>
    <message>
        <source>It isn&apos;t ready, or another station has changed it: look again.</source>
        <translation>No está lista, u otra estación la cambió: mire otra vez.</translation>
    </message>
    <message>
        <source>Scanned: {now} of {here} labeled packages. The others stay here.</source>
        <translation>Escaneados: {now} de {here} paquetes con etiqueta. Los demás se quedan aquí.</translation>
    </message>
    <message>
        <source>Comes later: {what}.</source>
        <translation>Viene después: {what}.</translation>
    </message>
    <message>
        <source>&amp;Why it leaves unpaid and not frozen</source>
        <translation>Por &amp;qué sale sin pagar y sin congelar</translation>
    </message>
    <message>
        <source>&amp;Why it leaves not frozen</source>
        <translation>Por &amp;qué sale sin congelar</translation>
    </message>
    <message>
        <source>{names} and {count} more</source>
        <translation>{names} y {count} más</translation>
    </message>
    <message>
        <source>Fetched fresh, as agreed on the order: {names}.</source>
        <translation>Se lleva fresco, como se acordó en la orden: {names}.</translation>
    </message>
    <message>
        <source>Not frozen: {names}. It is held. F8 says since when it freezes, or that it is frozen; Space lets it stay for another pick-up.</source>
        <translation>Sin congelar: {names}. Se retiene. F8 dice desde cuándo se congela, o que ya está congelado; Espacio lo deja para otra entrega.</translation>
    </message>
    <message>
        <source>Ready since {day}, {count} days; storage is billed in the Office (F11).</source>
        <translation>Lista desde {day}, {count} días; el almacenaje se cobra en la Oficina (F11).</translation>
    </message>
    <message>
        <source>Ready since {day}, one day; storage is billed in the Office (F11).</source>
        <translation>Lista desde {day}, un día; el almacenaje se cobra en la Oficina (F11).</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelado</translation>
    </message>
    <message>
        <source>in no freezer</source>
        <translation>en ningún congelador</translation>
    </message>
    <message>
        <source>No bill yet.</source>
        <translation>Todavía no hay cuenta.</translation>
    </message>
    <message>
        <source>Billed {billed}, paid {paid}, due {due}.</source>
        <translation>Cuenta: {billed}; pagado: {paid}; se debe: {due}.</translation>
    </message>
    <message>
        <source>F7 on the order takes the payment.</source>
        <translation>F7 en la orden recibe el pago.</translation>
    </message>
    <message>
        <source>{now} of {here}</source>
        <translation>{now} de {here}</translation>
    </message>
    <message>
        <source>by count</source>
        <translation>por conteo</translation>
    </message>
    <message>
        <source>Package</source>
        <translation>Paquete</translation>
    </message>
    <message>
        <source>Box, place</source>
        <translation>Caja, lugar</translation>
    </message>
    <message>
        <source>Freezer</source>
        <translation>Congelador</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>will be frozen {day} {time}</source>
        <translation>estará congelado {day} {time}</translation>
    </message>
    <message>
        <source>leaves</source>
        <translation>sale</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Paquetes</translation>
    </message>
    <message>
        <source>Pounds</source>
        <translation>Libras</translation>
    </message>
</context>
<context>
    <name>HelpWindow</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Page of the manual</source>
        <translation>Página del manual</translation>
    </message>
    <message>
        <source>&amp;Contents</source>
        <translation>&amp;Contenido</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>C&amp;errar</translation>
    </message>
</context>
<context>
    <name>HistoryDialog</name>
    <message>
        <source>Who changed order {number}</source>
        <translation>Quién cambió la orden {number}</translation>
    </message>
    <message>
        <source>The newest change first. Nothing here is ever rewritten.</source>
        <translation>Primero el cambio más nuevo. Aquí nunca se reescribe nada.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Changes of the order</source>
        <translation>Cambios de la orden</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>It was</source>
        <translation>Era</translation>
    </message>
    <message>
        <source>It became</source>
        <translation>Quedó</translation>
    </message>
</context>
<context>
    <name>Holding</name>
    <message>
        <source>Let it go</source>
        <translation>Soltarlo</translation>
    </message>
    <message>
        <source>Hold it</source>
        <translation>Retenerlo</translation>
    </message>
    <message>
        <source>What came of it? It goes to the block again.</source>
        <translation>¿En qué quedó? Vuelve a la mesa.</translation>
    </message>
    <message>
        <source>What is it held for? It isn&apos;t cut until then.</source>
        <translation>¿Por qué se retiene? No se corta hasta entonces.</translation>
    </message>
</context>
<context>
    <name>Holds</name>
    <message>
        <source>Held until its test result: {reason}. Not to the block.</source>
        <translation>Retenido hasta el resultado de su prueba: {reason}. No va a la mesa.</translation>
    </message>
    <message>
        <source>Held: {reason}. Not to the block.</source>
        <translation>Retenido: {reason}. No va a la mesa.</translation>
    </message>
    <message>
        <source>age by {by}</source>
        <translation>edad por {by}</translation>
    </message>
    <message>
        <source>in the pen {hours} h</source>
        <translation>en el corral {hours} h</translation>
    </message>
    <message>
        <source>game tag {tag}</source>
        <translation>marca de caza {tag}</translation>
    </message>
    <message>
        <source>license {number}</source>
        <translation>licencia {number}</translation>
    </message>
    <message>
        <source>meat kept apart</source>
        <translation>carne aparte</translation>
    </message>
    <message>
        <source>meat to a batch, agreed in writing</source>
        <translation>carne en tanda común, acordada por escrito</translation>
    </message>
    <message>
        <source>keep the cape</source>
        <translation>guardar la piel del cuello</translation>
    </message>
    <message>
        <source>keep the head</source>
        <translation>guardar la cabeza</translation>
    </message>
    <message>
        <source>keep the antlers</source>
        <translation>guardar las astas</translation>
    </message>
    <message>
        <source>head on</source>
        <translation>con cabeza</translation>
    </message>
    <message>
        <source>head off</source>
        <translation>sin cabeza</translation>
    </message>
    <message>
        <source>feet on</source>
        <translation>con patas</translation>
    </message>
    <message>
        <source>feet off</source>
        <translation>sin patas</translation>
    </message>
    <message>
        <source>leaf fat in</source>
        <translation>con riñonada</translation>
    </message>
    <message>
        <source>leaf fat out</source>
        <translation>sin riñonada</translation>
    </message>
    <message>
        <source>kidneys in</source>
        <translation>con riñones</translation>
    </message>
    <message>
        <source>kidneys out</source>
        <translation>sin riñones</translation>
    </message>
</context>
<context>
    <name>InARow</name>
    <message>
        <source>We&amp;igh</source>
        <translation>P&amp;esar</translation>
    </message>
    <message>
        <source>Tag (F7)</source>
        <translation>Arete (F7)</translation>
    </message>
    <message>
        <source>No animal here has tag {tag}.</source>
        <translation>Ningún animal de aquí tiene el arete {tag}.</translation>
    </message>
    <message>
        <source>Tag {tag} isn&apos;t here any more: {state}.</source>
        <translation>El arete {tag} ya no está aquí: {state}.</translation>
    </message>
</context>
<context>
    <name>JoinDialog</name>
    <message>
        <source>Join two entries of one person</source>
        <translation>Juntar dos fichas de una persona</translation>
    </message>
    <message>
        <source>&amp;Join</source>
        <translation>&amp;Juntar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>D&amp;ejarlo</translation>
    </message>
    <message>
        <source>The &amp;duplicate</source>
        <translation>La ficha &amp;repetida</translation>
    </message>
    <message>
        <source>Nobody kept is called this. Choose from the list.</source>
        <translation>Nadie guardado se llama así. Escoja de la lista.</translation>
    </message>
    <message>
        <source>Join these two?</source>
        <translation>¿Juntar estas dos?</translation>
    </message>
    <message>
        <source>Join them</source>
        <translation>Juntarlas</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>Regresar</translation>
    </message>
    <message>
        <source>Not joined: both entries are as they were.</source>
        <translation>No se juntaron: las dos fichas están como estaban.</translation>
    </message>
    <message>
        <source>No paper is rewritten, and Ctrl+Shift+J takes them apart again.</source>
        <translation>Ningún papel se vuelve a escribir, y Ctrl+Mayús+J las separa otra vez.</translation>
    </message>
    <message>
        <source>{duplicate} becomes {stays}.</source>
        <translation>{duplicate} pasa a ser {stays}.</translation>
    </message>
    <message>
        <source>&amp;The entry that stays</source>
        <translation>La ficha &amp;que queda</translation>
    </message>
    <message>
        <source>Orders, bills and payments stay as they were written, and are found under either name. Lists and new papers show the entry that stays. Ctrl+Shift+J takes two apart again.</source>
        <translation>Órdenes, cuentas y pagos quedan como se escribieron, y se encuentran con cualquiera de los dos nombres. Las listas y los papeles nuevos muestran la ficha que queda. Ctrl+Mayús+J separa dos otra vez.</translation>
    </message>
    <message>
        <source>That is one and the same entry.</source>
        <translation>Es una sola y misma ficha.</translation>
    </message>
</context>
<context>
    <name>Joining</name>
    <message>
        <source>orders {count} ({open} not closed)</source>
        <translation>órdenes {count} ({open} sin cerrar)</translation>
    </message>
    <message>
        <source>orders {count}</source>
        <translation>órdenes {count}</translation>
    </message>
    <message>
        <source>bookings as producer {count}</source>
        <translation>apartados como productor {count}</translation>
    </message>
    <message>
        <source>bills {count}</source>
        <translation>cuentas {count}</translation>
    </message>
    <message>
        <source>payments {count}</source>
        <translation>pagos {count}</translation>
    </message>
    <message>
        <source>on the waiting list {count}</source>
        <translation>en la lista de espera {count}</translation>
    </message>
    <message>
        <source>No order, booking, bill or payment goes along.</source>
        <translation>No pasa ninguna orden, apartado, cuenta ni pago.</translation>
    </message>
    <message>
        <source>Goes along: {what}.</source>
        <translation>Pasa con ella: {what}.</translation>
    </message>
    <message>
        <source>No order, booking, bill or payment goes back with it.</source>
        <translation>No regresa con ella ninguna orden, apartado, cuenta ni pago.</translation>
    </message>
    <message>
        <source>Goes back with it: {what}.</source>
        <translation>Regresa con ella: {what}.</translation>
    </message>
    <message>
        <source>the phone {it}</source>
        <translation>el teléfono {it}</translation>
    </message>
    <message>
        <source>the mail {it}</source>
        <translation>el correo {it}</translation>
    </message>
    <message>
        <source>the address {it}</source>
        <translation>la dirección {it}</translation>
    </message>
    <message>
        <source>The entry that stays has none, so it takes over {what}.</source>
        <translation>La ficha que queda no lo tiene, así que recibe {what}.</translation>
    </message>
    <message>
        <source>Joined: both are {name} now. Ctrl+Shift+J takes them apart.</source>
        <translation>Juntas: las dos son ahora {name}. Ctrl+Mayús+J las separa.</translation>
    </message>
    <message>
        <source>Nobody is joined into another entry.</source>
        <translation>Ninguna ficha está junta con otra.</translation>
    </message>
    <message>
        <source>Taken apart: {name} stands alone again.</source>
        <translation>Separadas: {name} vuelve a estar sola.</translation>
    </message>
</context>
<context>
    <name>Label</name>
    <message>
        <source>The label needs the shop&apos;s name: Office, Shop.</source>
        <translation>A la etiqueta le falta el nombre de la planta: Oficina, Planta.</translation>
    </message>
    <message>
        <source>The label needs the shop&apos;s address: Office, Shop.</source>
        <translation>A la etiqueta le falta la dirección de la planta: Oficina, Planta.</translation>
    </message>
    <message>
        <source>A custom-exempt label needs its owner: name the share first.</source>
        <translation>A la etiqueta de un animal exento le falta el dueño: nombre primero la parte.</translation>
    </message>
    <message>
        <source>Keep a recipe for the cure or seasoning: Office, Recipes.</source>
        <translation>Guarde una receta para el curado o la sazón: Oficina, Recetas.</translation>
    </message>
    <message>
        <source>Say the recipe&apos;s allergens: Office, Recipes.</source>
        <translation>Diga los alérgenos de la receta: Oficina, Recetas.</translation>
    </message>
    <message>
        <source>An inspected label needs the plant&apos;s approved legend: Office, Shop, Marks.</source>
        <translation>Una etiqueta inspeccionada necesita la leyenda aprobada de la planta: Oficina, Planta, Marcas.</translation>
    </message>
    <message>
        <source>An inspected label needs the establishment&apos;s number: Office, Shop, Marks.</source>
        <translation>Una etiqueta inspeccionada necesita el número del establecimiento: Oficina, Planta, Marcas.</translation>
    </message>
    <message>
        <source>The product&apos;s GTIN can&apos;t be used: Office, Shop, Marks.</source>
        <translation>El GTIN del producto no sirve: Oficina, Planta, Marcas.</translation>
    </message>
    <message>
        <source>This stock holds too little for it; choose a larger one.</source>
        <translation>En esta etiqueta no cabe; elija una más grande.</translation>
    </message>
    <message>
        <source>The label stock set in the Office is not one known here.</source>
        <translation>La etiqueta elegida en la Oficina no se conoce aquí.</translation>
    </message>
    <message>
        <source>A lean figure can&apos;t stand on a label; name the product without it.</source>
        <translation>El porcentaje de magro no puede ir en una etiqueta; nombre el producto sin él.</translation>
    </message>
    <message>
        <source>Not all the label must say fits on it; choose larger stock (Office, Shop).</source>
        <translation>No cabe todo lo que la etiqueta debe decir; elija un papel de etiqueta más grande (Oficina, Planta).</translation>
    </message>
    <message>
        <source>Say whether the finish is fully cooked.</source>
        <translation>Diga si el acabado está totalmente cocido.</translation>
    </message>
    <message>
        <source>A label needs a net weight above nothing.</source>
        <translation>Una etiqueta necesita un peso neto mayor que cero.</translation>
    </message>
    <message>
        <source>The label lacks something it must say.</source>
        <translation>A la etiqueta le falta algo que debe decir.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>Not all the label must say fits on this stock; it fits on {stocks} (Office, Shop).</source>
        <translation>No cabe en este papel todo lo que la etiqueta debe decir; cabe en {stocks} (Oficina, Planta).</translation>
    </message>
</context>
<context>
    <name>LastTime</name>
    <message>
        <source>is on the order already</source>
        <translation>ya está en la orden</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>como estaba</translation>
    </message>
    <message>
        <source>now {line}</source>
        <translation>ahora {line}</translation>
    </message>
    <message>
        <source>left out: {why}</source>
        <translation>queda fuera: {why}</translation>
    </message>
    <message>
        <source>left out: it isn&apos;t cut here any more</source>
        <translation>queda fuera: aquí ya no se corta</translation>
    </message>
    <message>
        <source>left out: nothing is left for it</source>
        <translation>queda fuera: no queda nada para ello</translation>
    </message>
</context>
<context>
    <name>LastTimeDialog</name>
    <message>
        <source>As last time</source>
        <translation>Como la vez pasada</translation>
    </message>
    <message>
        <source>What is asked already stays; the earlier lines are planned beside it.</source>
        <translation>Lo ya pedido queda; las líneas de antes se planean al lado.</translation>
    </message>
    <message>
        <source>&amp;Put on the order</source>
        <translation>&amp;Poner en la orden</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>Earlier orders</source>
        <translation>Órdenes anteriores</translation>
    </message>
    <message>
        <source>What becomes of each line here</source>
        <translation>En qué queda cada línea aquí</translation>
    </message>
    <message>
        <source>Nothing more of that order can be had here.</source>
        <translation>De esa orden ya no se puede tener nada más aquí.</translation>
    </message>
    <message>
        <source>Nothing of that order can be had here.</source>
        <translation>Nada de esa orden se puede tener aquí.</translation>
    </message>
    <message>
        <source>Planning it on this carcass …</source>
        <translation>Se planea en esta canal…</translation>
    </message>
    <message>
        <source>Killed</source>
        <translation>Sacrificado</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Cortes</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>La vez pasada</translation>
    </message>
    <message>
        <source>This time</source>
        <translation>Esta vez</translation>
    </message>
</context>
<context>
    <name>LateBilling</name>
    <message>
        <source>Interest on late payment</source>
        <translation>Interés por pago atrasado</translation>
    </message>
    <message>
        <source>Nothing is late beyond the {days} days without interest, or too little.</source>
        <translation>Nada está atrasado más allá de los {days} días sin interés, o es muy poco.</translation>
    </message>
    <message>
        <source>{payer} is late. Simple interest at {rate} % a year up to {day}: {total}. It is a bill of its own; interest bears no interest. Local law bounds such interest: ask somebody who knows before charging it.</source>
        <translation>{payer} está atrasado. Interés simple al {rate} % anual hasta el {day}: {total}. Es una cuenta propia; el interés no genera interés. La ley local limita este interés: pregunte a quien sepa antes de cobrarlo.</translation>
    </message>
    <message>
        <source>Bill the interest</source>
        <translation>Cobrar el interés</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
</context>
<context>
    <name>LateDialog</name>
    <message>
        <source>Late payment</source>
        <translation>Pago atrasado</translation>
    </message>
    <message>
        <source>Local law bounds such interest: ask somebody who knows before charging it.</source>
        <translation>La ley local limita este interés: pregunte a quien sepa antes de cobrarlo.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Interest a year, %</source>
        <translation>&amp;Interés al año, %</translation>
    </message>
    <message>
        <source>&amp;Days without interest</source>
        <translation>&amp;Días sin interés</translation>
    </message>
    <message>
        <source>&amp;Not billed below</source>
        <translation>&amp;No se cobra debajo de</translation>
    </message>
</context>
<context>
    <name>LeadDialog</name>
    <message>
        <source>How order {number} is cut</source>
        <translation>Cómo se corta la orden {number}</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>&amp;Corte</translation>
    </message>
    <message>
        <source>on its own</source>
        <translation>por su cuenta</translation>
    </message>
    <message>
        <source>as {owner} says</source>
        <translation>como diga {owner}</translation>
    </message>
    <message>
        <source>Cut as another says, its packages are dealt in turn from that order.</source>
        <translation>Si se corta como diga otro, sus paquetes se reparten por turno de esa orden.</translation>
    </message>
    <message>
        <source>Its own lines come off ({count}); “Who changed what” keeps them.</source>
        <translation>Sus propias líneas se quitan ({count}); “Quién cambió qué” las guarda.</translation>
    </message>
    <message>
        <source>The block needs a new sheet then.</source>
        <translation>La mesa necesita entonces una hoja nueva.</translation>
    </message>
    <message>
        <source>Ctrl+Z takes it back.</source>
        <translation>Ctrl+Z lo deshace.</translation>
    </message>
</context>
<context>
    <name>LengthField</name>
    <message>
        <source>Steelyard measures in in, mm and cm; it can&apos;t read “{text}”.</source>
        <translation>Steelyard mide en in, mm y cm; no puede leer “{text}”.</translation>
    </message>
    <message>
        <source>Write “{text}” in one unit.</source>
        <translation>Escriba “{text}” en una sola unidad.</translation>
    </message>
    <message>
        <source>A length can&apos;t be below nothing.</source>
        <translation>Una medida no puede ser menos que nada.</translation>
    </message>
    <message>
        <source>“{text}” falls between what a saw can be set to.</source>
        <translation>“{text}” queda entre lo que se puede fijar en la sierra.</translation>
    </message>
    <message>
        <source>“{text}” is longer than any carcass.</source>
        <translation>“{text}” es más largo que cualquier canal.</translation>
    </message>
    <message>
        <source>Steelyard reads lengths like 1¼ in, 3/4 in, 2 cm; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee medidas como 1¼ in, 3/4 in, 2 cm; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>LineColumns</name>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Planeado</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Se espera</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
    <message>
        <source>by count, not weighed</source>
        <translation>por conteo, sin pesar</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>by count</source>
        <translation>por conteo</translation>
    </message>
    <message>
        <source>{count} packages by count, weighed together: {pounds}</source>
        <translation>{count} paquetes por conteo, pesados juntos: {pounds}</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>fuera de orden</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>no planeado</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>to wrap</source>
        <translation>por empacar</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>empezado</translation>
    </message>
    <message>
        <source>more than planned</source>
        <translation>más de lo planeado</translation>
    </message>
</context>
<context>
    <name>LineDialog</name>
    <message>
        <source>Change the line</source>
        <translation>Cambiar la línea</translation>
    </message>
    <message>
        <source>Add to the order</source>
        <translation>Agregar a la orden</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Put on the &amp;order</source>
        <translation>Poner en la &amp;orden</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>&amp;Corte</translation>
    </message>
    <message>
        <source>&amp;How much</source>
        <translation>C&amp;uánto</translation>
    </message>
    <message>
        <source>How man&amp;y</source>
        <translation>Cuán&amp;tos</translation>
    </message>
    <message>
        <source>Pou&amp;nds</source>
        <translation>Li&amp;bras</translation>
    </message>
    <message>
        <source>&amp;Fraction of each side</source>
        <translation>&amp;Fracción de cada media canal</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>G&amp;rueso</translation>
    </message>
    <message>
        <source>&amp;Weight of a piece</source>
        <translation>&amp;Peso de una pieza</translation>
    </message>
    <message>
        <source>&amp;Ribs</source>
        <translation>Co&amp;stillas</translation>
    </message>
    <message>
        <source>L&amp;ean, per cent</source>
        <translation>&amp;Magra, por ciento</translation>
    </message>
    <message>
        <source>Cut fro&amp;m</source>
        <translation>Cortar &amp;de</translation>
    </message>
    <message>
        <source>&amp;Pieces to a package</source>
        <translation>Pie&amp;zas por paquete</translation>
    </message>
    <message>
        <source>or poun&amp;ds to a package</source>
        <translation>o &amp;libras por paquete</translation>
    </message>
    <message>
        <source>Note for the &amp;block</source>
        <translation>Nota para la m&amp;esa</translation>
    </message>
    <message>
        <source>wherever it fits</source>
        <translation>donde quepa</translation>
    </message>
    <message>
        <source>The saw holds {least} and thicker here.</source>
        <translation>Aquí la sierra corta de {least} o más grueso.</translation>
    </message>
    <message>
        <source>Pack by pieces or by pounds: empty one of the two.</source>
        <translation>Empaque por piezas o por libras: vacíe uno de los dos.</translation>
    </message>
</context>
<context>
    <name>LossDialog</name>
    <message>
        <source>A part is gone</source>
        <translation>Falta una parte</translation>
    </message>
    <message>
        <source>Trimmed off, condemned or discarded. The owners&apos; plans are made again.</source>
        <translation>Recortada, decomisada o tirada. Se planea otra vez lo de los dueños.</translation>
    </message>
    <message>
        <source>&amp;Record it</source>
        <translation>&amp;Anotarlo</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Part</source>
        <translation>&amp;Parte</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>Media cana&amp;l</translation>
    </message>
    <message>
        <source>Po&amp;unds (empty: all of it)</source>
        <translation>Li&amp;bras (vacío: todo)</translation>
    </message>
    <message>
        <source>Taken &amp;off</source>
        <translation>Se &amp;retiró</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>C&amp;ómo</translation>
    </message>
    <message>
        <source>condemned by the inspector</source>
        <translation>decomisado por el inspector</translation>
    </message>
    <message>
        <source>trimmed by the plant</source>
        <translation>recortado por la planta</translation>
    </message>
    <message>
        <source>discarded by the plant</source>
        <translation>desechado por la planta</translation>
    </message>
    <message>
        <source>Re&amp;ason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Side 1</source>
        <translation>Media canal 1</translation>
    </message>
    <message>
        <source>Side 2</source>
        <translation>Media canal 2</translation>
    </message>
    <message>
        <source>The animal</source>
        <translation>El animal</translation>
    </message>
    <message>
        <source>after the hot weight</source>
        <translation>después del peso caliente</translation>
    </message>
    <message>
        <source>before the hot weight</source>
        <translation>antes del peso caliente</translation>
    </message>
    <message>
        <source>all of the {primal}</source>
        <translation>todo: {primal}</translation>
    </message>
    <message>
        <source>Say which side.</source>
        <translation>Diga de qué media canal.</translation>
    </message>
    <message>
        <source>There is one to an animal.</source>
        <translation>Hay uno por animal.</translation>
    </message>
    <message>
        <source>Pounds are said of one part; name it.</source>
        <translation>Las libras se dicen de una parte; nómbrela.</translation>
    </message>
    <message>
        <source>Say why.</source>
        <translation>Diga por qué.</translation>
    </message>
</context>
<context>
    <name>MailedPaper</name>
    <message>
        <source>Write a &amp;mail (F7)</source>
        <translation>Escribir un c&amp;orreo (F7)</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>{owner} has no mail address that can be read: print or save it.</source>
        <translation>{owner} no tiene una dirección de correo legible: imprímalo o guárdelo.</translation>
    </message>
    <message>
        <source>It was not saved: {path} can&apos;t be written ({why}).</source>
        <translation>No se guardó: no se puede escribir {path} ({why}).</translation>
    </message>
    <message>
        <source>This computer has no mail program set up. The paper is at {path}.</source>
        <translation>Esta computadora no tiene programa de correo. El papel está en {path}.</translation>
    </message>
    <message>
        <source>Attach the paper to the mail: where it lies is on the clipboard, {path}.</source>
        <translation>Adjunte el papel al correo: su lugar está en el portapapeles, {path}.</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Shop menu</source>
        <translation>Menú de la planta</translation>
    </message>
    <message>
        <source>Shop menu (F10)</source>
        <translation>Menú de la planta (F10)</translation>
    </message>
    <message>
        <source>Who is working: {name}</source>
        <translation>Trabaja ahora: {name}</translation>
    </message>
    <message>
        <source>Who is working here; press to change</source>
        <translation>Quién trabaja aquí; oprima para cambiar</translation>
    </message>
    <message>
        <source>Steelyard</source>
        <translation>Steelyard</translation>
    </message>
</context>
<context>
    <name>MarksDialog</name>
    <message>
        <source>Marks of inspected goods</source>
        <translation>Marcas de la carne inspeccionada</translation>
    </message>
    <message>
        <source>Only your own legend, as it was approved for your establishment. The inspector and the rules of labeling have the last word; custom-exempt labels never bear it.</source>
        <translation>Solo su propio sello, como fue aprobado para su establecimiento. El inspector y las reglas de etiquetado tienen la última palabra; las etiquetas de carne exenta nunca lo llevan.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Establishment number</source>
        <translation>Número de &amp;establecimiento</translation>
    </message>
    <message>
        <source>Inspection le&amp;gend</source>
        <translation>&amp;Sello de inspección</translation>
    </message>
    <message>
        <source>none: no labels of inspected goods</source>
        <translation>ninguno: sin etiquetas de carne inspeccionada</translation>
    </message>
    <message>
        <source>printed on the label stock already</source>
        <translation>ya impreso en las etiquetas</translation>
    </message>
    <message>
        <source>our approved artwork, placed</source>
        <translation>nuestro diseño aprobado, colocado</translation>
    </message>
    <message>
        <source>Packages lea&amp;ve</source>
        <translation>Los paquetes &amp;van</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelados</translation>
    </message>
    <message>
        <source>refrigerated</source>
        <translation>refrigerados</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Producto</translation>
    </message>
    <message>
        <source>G&amp;TIN of its weighed packages</source>
        <translation>G&amp;TIN de sus paquetes pesados</translation>
    </message>
    <message>
        <source>14 digits, first a 9</source>
        <translation>14 dígitos, primero un 9</translation>
    </message>
    <message>
        <source>Choose the art&amp;work…</source>
        <translation>Elegir el &amp;diseño…</translation>
    </message>
    <message>
        <source>Take it awa&amp;y</source>
        <translation>&amp;Quitarlo</translation>
    </message>
    <message>
        <source>The legend&apos;s artwork</source>
        <translation>Diseño del sello</translation>
    </message>
    <message>
        <source>The approved legend</source>
        <translation>El sello aprobado</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg *.pdf *.jpg *.jpeg *.bmp)</source>
        <translation>Imágenes (*.png *.svg *.pdf *.jpg *.jpeg *.bmp)</translation>
    </message>
    <message>
        <source>{name} is no picture that can be read.</source>
        <translation>{name} no es una imagen que se pueda leer.</translation>
    </message>
    <message>
        <source>Letters, digits and - only, at most 12; the label says Est. itself.</source>
        <translation>Solo letras, cifras y -, a lo más 12; la etiqueta ya dice Est.</translation>
    </message>
    <message>
        <source>Choose the artwork, or say that the stock bears the legend.</source>
        <translation>Elija el diseño, o diga que las etiquetas ya llevan el sello.</translation>
    </message>
    <message>
        <source>The legend goes with the number: fill it in.</source>
        <translation>El sello va con el número: escríbalo.</translation>
    </message>
    <message>
        <source>{who} has changed this meanwhile. Leave it and open it again.</source>
        <translation>{who} lo ha cambiado entretanto. Déjelo y ábralo otra vez.</translation>
    </message>
    <message>
        <source>The last digit should be {expected}: look at it again.</source>
        <translation>La última cifra debería ser {expected}: mírelo otra vez.</translation>
    </message>
    <message>
        <source>A weighed package&apos;s GTIN has 14 digits and begins with 9.</source>
        <translation>El GTIN de un paquete pesado tiene 14 cifras y empieza por 9.</translation>
    </message>
    <message>
        <source>A GTIN is 14 digits.</source>
        <translation>Un GTIN tiene 14 cifras.</translation>
    </message>
    <message>
        <source>The image has {wide} × {high} dots; this printer needs {needed} the longer way.</source>
        <translation>La imagen tiene {wide} × {high} puntos; esta impresora necesita {needed} en su lado largo.</translation>
    </message>
    <message>
        <source>The file is too large: 2 MB fit.</source>
        <translation>El archivo es demasiado grande: caben 2 MB.</translation>
    </message>
    <message>
        <source>No artwork yet.</source>
        <translation>Sin diseño todavía.</translation>
    </message>
</context>
<context>
    <name>Messages</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>MinutesDialog</name>
    <message>
        <source>Block minutes</source>
        <translation>Minutos de mesa</translation>
    </message>
    <message>
        <source>Minutes that breaking a side takes, and that each line of an order takes on each side. Who hasn&apos;t answered counts as the house&apos;s usual. Empty: not counted.</source>
        <translation>Minutos que lleva abrir una media canal, y cada línea de una orden en cada media canal. Quien no ha respondido cuenta como lo usual de la casa. Vacío: no se cuenta.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Block minutes a day</source>
        <translation>&amp;Minutos de mesa al día</translation>
    </message>
    <message>
        <source>Roasts</source>
        <translation>Asados</translation>
    </message>
    <message>
        <source>Steaks, chops</source>
        <translation>Bistecs, chuletas</translation>
    </message>
    <message>
        <source>Ground, stew</source>
        <translation>Molida, guiso</translation>
    </message>
    <message>
        <source>Finishes</source>
        <translation>Acabados</translation>
    </message>
    <message>
        <source>A side</source>
        <translation>Media canal</translation>
    </message>
</context>
<context>
    <name>Missing</name>
    <message>
        <source>Didn&apos;t come</source>
        <translation>No llegó</translation>
    </message>
    <message>
        <source>An animal of lot {number} ({owners}) didn&apos;t come. Why, if known?</source>
        <translation>Un animal del lote {number} ({owners}) no llegó. ¿Por qué, si se sabe?</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>No se hizo</translation>
    </message>
    <message>
        <source>Another station has changed this animal. Look again.</source>
        <translation>Otra estación cambió este animal. Mire otra vez.</translation>
    </message>
    <message>
        <source>Its place on the day is free.</source>
        <translation>Su lugar del día queda libre.</translation>
    </message>
    <message>
        <source>Tell {owners}: they stand on the counter&apos;s list to ring. For another day book again at the counter (F2).</source>
        <translation>Avise a {owners}: están en la lista de llamadas del mostrador. Otro día se aparta en el mostrador (F2).</translation>
    </message>
    <message>
        <source>{amount} was paid on the lot: give it back in the Office (F8).</source>
        <translation>Se pagaron {amount} por el lote: devuélvalos en la Oficina (F8).</translation>
    </message>
    <message>
        <source>Condemned</source>
        <translation>Decomisado</translation>
    </message>
    <message>
        <source>Tag {tag} has no hot weight. Had it been killed? The kill is billed only if it had.</source>
        <translation>El arete {tag} no tiene peso en caliente. ¿Ya se había sacrificado? La matanza se cobra solo en ese caso.</translation>
    </message>
    <message>
        <source>It was killed</source>
        <translation>Ya sacrificado</translation>
    </message>
    <message>
        <source>Not killed</source>
        <translation>No sacrificado</translation>
    </message>
</context>
<context>
    <name>MoneyDialog</name>
    <message>
        <source>Money</source>
        <translation>Dinero</translation>
    </message>
    <message>
        <source>Cash above what is due comes back as change.</source>
        <translation>El efectivo de más se devuelve como cambio.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Paid by</source>
        <translation>Lo &amp;paga</translation>
    </message>
    <message>
        <source>An&amp;other means (Ctrl+N)</source>
        <translation>&amp;Otro medio (Ctrl+N)</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>&amp;Qué es</translation>
    </message>
    <message>
        <source>payment</source>
        <translation>pago</translation>
    </message>
    <message>
        <source>deposit</source>
        <translation>anticipo</translation>
    </message>
    <message>
        <source>given back</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>incobrable</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>Impor&amp;te</translation>
    </message>
    <message>
        <source>&amp;Means</source>
        <translation>&amp;Medio</translation>
    </message>
    <message>
        <source>&amp;Note, check number or reason</source>
        <translation>&amp;Nota, número de cheque o motivo</translation>
    </message>
    <message>
        <source>cash</source>
        <translation>efectivo</translation>
    </message>
    <message>
        <source>check</source>
        <translation>cheque</translation>
    </message>
    <message>
        <source>card</source>
        <translation>tarjeta</translation>
    </message>
    <message>
        <source>transfer</source>
        <translation>transferencia</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>{due} is owed to the customer.</source>
        <translation>Se le deben {due} al cliente.</translation>
    </message>
    <message>
        <source>{due} of the deposit asked for is still to come.</source>
        <translation>Faltan {due} del anticipo pedido.</translation>
    </message>
    <message>
        <source>{due} is due.</source>
        <translation>Se deben {due}.</translation>
    </message>
    <message>
        <source>Change: {change}.</source>
        <translation>Cambio: {change}.</translation>
    </message>
    <message>
        <source>{left} stays open.</source>
        <translation>Quedan pendientes {left}.</translation>
    </message>
    <message>
        <source>Say the amount and how it was paid.</source>
        <translation>Diga el importe y cómo se pagó.</translation>
    </message>
    <message>
        <source>Keep it again if that is meant.</source>
        <translation>Guárdela otra vez si así debe ser.</translation>
    </message>
    <message>
        <source>{given} is more than the bill: {change} goes back as change.</source>
        <translation>{given} es más que la cuenta: {change} se devuelve como cambio.</translation>
    </message>
    <message>
        <source>{given} is more than the deposit asked for, {due}.</source>
        <translation>{given} es más que el anticipo pedido, {due}.</translation>
    </message>
</context>
<context>
    <name>MoneyField</name>
    <message>
        <source>An amount can&apos;t be below nothing.</source>
        <translation>Un importe no puede ser menor que cero.</translation>
    </message>
    <message>
        <source>Money goes to the cent; “{text}” goes further.</source>
        <translation>El dinero llega al centavo; “{text}” va más allá.</translation>
    </message>
    <message>
        <source>“{text}” is more than any bill here.</source>
        <translation>“{text}” es más que cualquier cuenta de aquí.</translation>
    </message>
    <message>
        <source>Steelyard reads amounts like $1,250.00 or 12.50; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee importes como $1,250.00 o 12.50; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>MoveDialog</name>
    <message>
        <source>Move a deposit</source>
        <translation>Pasar un anticipo</translation>
    </message>
    <message>
        <source>{amount} is held on order {number}, {owner}. No money changes hands.</source>
        <translation>Hay {amount} guardados en la orden {number}, {owner}. No se mueve dinero.</translation>
    </message>
    <message>
        <source>&amp;Move it</source>
        <translation>&amp;Pasarlo</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>Impor&amp;te</translation>
    </message>
    <message>
        <source>&amp;To the customer&apos;s order</source>
        <translation>A la orden del &amp;cliente</translation>
    </message>
    <message>
        <source>&amp;Or to the order of this number</source>
        <translation>O a la orden con este &amp;número</translation>
    </message>
    <message>
        <source>To &amp;order</source>
        <translation>A la &amp;orden</translation>
    </message>
    <message>
        <source>There is no order {number}.</source>
        <translation>No hay orden {number}.</translation>
    </message>
    <message>
        <source>It is held on that order already.</source>
        <translation>Ya está guardado en esa orden.</translation>
    </message>
    <message>
        <source>Say which order.</source>
        <translation>Diga qué orden.</translation>
    </message>
    <message>
        <source>Order {number} is {other}&apos;s: what {owner} paid would be {other}&apos;s. Move it again if that is meant.</source>
        <translation>La orden {number} es de {other}: lo que pagó {owner} sería de {other}. Páselo otra vez si es así.</translation>
    </message>
    <message>
        <source>the producer</source>
        <translation>el productor</translation>
    </message>
</context>
<context>
    <name>NameDialog</name>
    <message>
        <source>Name the owner</source>
        <translation>Nombrar al dueño</translation>
    </message>
    <message>
        <source>Lot {number}, share {share}.</source>
        <translation>Lote {number}, parte {share}.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombrar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Owner</source>
        <translation>&amp;Dueño</translation>
    </message>
    <message>
        <source>name, or a new name and phone</source>
        <translation>nombre, o nombre y teléfono nuevos</translation>
    </message>
    <message>
        <source>{name} has just changed this lot: look again.</source>
        <translation>{name} acaba de cambiar este lote: mire otra vez.</translation>
    </message>
    <message>
        <source>Owners of a custom animal are fixed before the kill.</source>
        <translation>Los dueños de un animal exento se fijan antes de la matanza.</translation>
    </message>
</context>
<context>
    <name>News</name>
    <message>
        <source>Tag {tag}, {what}</source>
        <translation>Arete {tag}, {what}</translation>
    </message>
    <message>
        <source>no {cut} any more</source>
        <translation>ya sin {cut}</translation>
    </message>
    <message>
        <source>less {cut}</source>
        <translation>menos {cut}</translation>
    </message>
    <message>
        <source>what fell can be had again</source>
        <translation>lo que cayó se puede tener otra vez</translation>
    </message>
    <message>
        <source>What works: {ways}</source>
        <translation>Lo que sirve: {ways}</translation>
    </message>
    <message>
        <source>What would work is being planned…</source>
        <translation>Se está planeando qué serviría…</translation>
    </message>
    <message>
        <source>The {animal} didn&apos;t come; another day can be offered</source>
        <translation>El animal ({animal}) no llegó; se puede ofrecer otro día</translation>
    </message>
    <message>
        <source>the whole animal condemned</source>
        <translation>el animal entero decomisado</translation>
    </message>
    <message>
        <source>the animal refused at the pen</source>
        <translation>el animal rechazado en el corral</translation>
    </message>
    <message>
        <source>the block reports</source>
        <translation>la mesa avisa</translation>
    </message>
    <message>
        <source>held</source>
        <translation>retenido</translation>
    </message>
    <message>
        <source>{offer} ({amount} more, estimated)</source>
        <translation>{offer} ({amount} más, estimado)</translation>
    </message>
    <message>
        <source>{offer} ({amount} less, estimated)</source>
        <translation>{offer} ({amount} menos, estimado)</translation>
    </message>
</context>
<context>
    <name>NoteField</name>
    <message>
        <source>{most} letters fit here; these are {found}.</source>
        <translation>Aquí caben {most} letras; estas son {found}.</translation>
    </message>
</context>
<context>
    <name>OddPackage</name>
    <message>
        <source>Odd package</source>
        <translation>Paquete fuera de orden</translation>
    </message>
    <message>
        <source>A package that is on no line of the order. Say why it is there.</source>
        <translation>Un paquete que no está en ninguna línea de la orden. Diga por qué está.</translation>
    </message>
    <message>
        <source>&amp;Add package</source>
        <translation>&amp;Agregar paquete</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Producto</translation>
    </message>
    <message>
        <source>&amp;Net weight, or gross with tare</source>
        <translation>Peso &amp;neto, o bruto con tara</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>P&amp;ieces</source>
        <translation>P&amp;iezas</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Say the product and its weight.</source>
        <translation>Diga el producto y su peso.</translation>
    </message>
    <message>
        <source>The tare is more than the gross weight.</source>
        <translation>La tara es más que el peso bruto.</translation>
    </message>
</context>
<context>
    <name>OfficePapers</name>
    <message>
        <source>Bill, draft, order {number}</source>
        <translation>Cuenta, borrador, orden {number}</translation>
    </message>
    <message>
        <source>Bill {number}</source>
        <translation>Cuenta {number}</translation>
    </message>
    <message>
        <source>Credit {number}</source>
        <translation>Crédito {number}</translation>
    </message>
    <message>
        <source>Quote, order {number}</source>
        <translation>Cotización, orden {number}</translation>
    </message>
    <message>
        <source>Weight ticket, order {number}</source>
        <translation>Boleta de peso, orden {number}</translation>
    </message>
    <message>
        <source>Receipt {number}</source>
        <translation>Recibo {number}</translation>
    </message>
    <message>
        <source>Producer&apos;s statement, order {number}</source>
        <translation>Estado del productor, orden {number}</translation>
    </message>
</context>
<context>
    <name>OfficePlace</name>
    <message>
        <source>Office</source>
        <translation>Oficina</translation>
    </message>
    <message>
        <source>&amp;1 Bills</source>
        <translation>&amp;1 Cuentas</translation>
    </message>
    <message>
        <source>&amp;2 Balances</source>
        <translation>&amp;2 Saldos</translation>
    </message>
    <message>
        <source>&amp;3 Rates</source>
        <translation>&amp;3 Tarifas</translation>
    </message>
    <message>
        <source>&amp;4 Shop</source>
        <translation>&amp;4 Planta</translation>
    </message>
    <message>
        <source>&amp;5 Recipes</source>
        <translation>&amp;5 Recetas</translation>
    </message>
    <message>
        <source>&amp;6 Usual</source>
        <translation>&amp;6 Lo usual</translation>
    </message>
    <message>
        <source>&amp;7 From the block</source>
        <translation>&amp;7 De la mesa</translation>
    </message>
    <message>
        <source>&amp;8 Books</source>
        <translation>&amp;8 Libros</translation>
    </message>
    <message>
        <source>&amp;9 Reports</source>
        <translation>&amp;9 Informes</translation>
    </message>
    <message>
        <source>Parts of the office</source>
        <translation>Partes de la oficina</translation>
    </message>
</context>
<context>
    <name>OnAccountDialog</name>
    <message>
        <source>Money for what was owed before</source>
        <translation>Dinero por lo que se debía antes</translation>
    </message>
    <message>
        <source>{due} is owed from before these books. Any part may be paid.</source>
        <translation>Se deben {due} de antes de estos libros. Se puede pagar cualquier parte.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>Impor&amp;te</translation>
    </message>
    <message>
        <source>&amp;Means</source>
        <translation>&amp;Medio</translation>
    </message>
    <message>
        <source>&amp;Note or check number</source>
        <translation>&amp;Nota o número de cheque</translation>
    </message>
    <message>
        <source>Only {due} is owed from before.</source>
        <translation>Solo se deben {due} de antes.</translation>
    </message>
</context>
<context>
    <name>OnTheirWay</name>
    <message>
        <source>Steelyard ended while these labels went to the printer: {numbers}. They may be printed already. Look before you stick one or print it again (Ctrl+F9).</source>
        <translation>Steelyard se cerró mientras estas etiquetas iban a la impresora: {numbers}. Puede que ya estén impresas. Mire antes de pegar una o de imprimirla otra vez (Ctrl+F9).</translation>
    </message>
    <message>
        <source>Printed already?</source>
        <translation>¿Ya impresas?</translation>
    </message>
    <message>
        <source>Steelyard ended while labels {numbers} went to the printer, and can&apos;t know whether they came out. Look on the packages and at the printer: two labels of one number make one package count twice.</source>
        <translation>Steelyard se cerró mientras las etiquetas {numbers} iban a la impresora, y no puede saber si salieron. Mire en los paquetes y en la impresora: dos etiquetas de un mismo número hacen contar un paquete dos veces.</translation>
    </message>
    <message>
        <source>Print them again</source>
        <translation>Imprimirlas otra vez</translation>
    </message>
    <message>
        <source>They are there</source>
        <translation>Ahí están</translation>
    </message>
</context>
<context>
    <name>OneAnimalDialog</name>
    <message>
        <source>One animal to another day</source>
        <translation>Un animal a otro día</translation>
    </message>
    <message>
        <source>Lot {number} stays on {day}; the animal becomes a lot of its own. An owner of it alone takes his order and his deposit along.</source>
        <translation>El lote {number} sigue el {day}; el animal pasa a ser un lote aparte. Quien solo tiene parte en él se lleva su orden y su anticipo.</translation>
    </message>
    <message>
        <source>&amp;Move it</source>
        <translation>&amp;Pasarlo</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>&amp;Day of the kill</source>
        <translation>Día de la &amp;matanza</translation>
    </message>
    <message>
        <source>Move it all the same, &amp;because</source>
        <translation>Pasarlo de todos modos, porq&amp;ue</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>No. {number} of {all}, {owners}</source>
        <translation>N.º {number} de {all}, {owners}</translation>
    </message>
    <message>
        <source>It is booked on that day already.</source>
        <translation>Ya está apartado para ese día.</translation>
    </message>
    <message>
        <source>The day is too full: another day, or say why.</source>
        <translation>El día está demasiado lleno: otro día, o diga por qué.</translation>
    </message>
    <message>
        <source>Another station has just taken the place.</source>
        <translation>Otra estación acaba de tomar el lugar.</translation>
    </message>
    <message>
        <source>on {day}, lot {number}</source>
        <translation>el {day}, lote {number}</translation>
    </message>
    <message>
        <source>to order {number}</source>
        <translation>a la orden {number}</translation>
    </message>
    <message>
        <source>from order {number}</source>
        <translation>de la orden {number}</translation>
    </message>
    <message>
        <source>It was changed meanwhile: look at the booking again.</source>
        <translation>Cambió entretanto: vuelva a mirar el apartado.</translation>
    </message>
</context>
<context>
    <name>OpeningDialog</name>
    <message>
        <source>Opening balance</source>
        <translation>Saldo inicial</translation>
    </message>
    <message>
        <source>What stood in the old books when these began.</source>
        <translation>Lo que estaba en los libros de antes cuando empezaron éstos.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;What stood</source>
        <translation>&amp;Qué estaba</translation>
    </message>
    <message>
        <source>a customer owed the shop</source>
        <translation>un cliente le debía a la planta</translation>
    </message>
    <message>
        <source>cash in the drawer</source>
        <translation>efectivo en el cajón</translation>
    </message>
    <message>
        <source>money in the bank</source>
        <translation>dinero en el banco</translation>
    </message>
    <message>
        <source>tax still to be paid</source>
        <translation>impuesto por pagar</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>Impor&amp;te</translation>
    </message>
    <message>
        <source>&amp;Customer</source>
        <translation>&amp;Cliente</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>Say an amount above nothing.</source>
        <translation>Diga un importe mayor que cero.</translation>
    </message>
</context>
<context>
    <name>OrderDialogs</name>
    <message>
        <source>The program ended while this was being typed. It is all here again.</source>
        <translation>El programa terminó mientras se escribía esto. Aquí está todo otra vez.</translation>
    </message>
    <message>
        <source>This owner has no earlier order of this kind of animal here.</source>
        <translation>Este dueño no tiene aquí una orden anterior de este animal.</translation>
    </message>
    <message>
        <source>No other owner divides exactly the same side or quarter.</source>
        <translation>Ningún otro dueño comparte exactamente la misma media canal o el mismo cuarto.</translation>
    </message>
</context>
<context>
    <name>OrderFigures</name>
    <message>
        <source>nothing yet</source>
        <translation>todavía nada</translation>
    </message>
    <message>
        <source>Take-home</source>
        <translation>Para llevar a casa</translation>
    </message>
    <message>
        <source>Lines by the tables</source>
        <translation>Líneas según las tablas</translation>
    </message>
    <message>
        <source>Take-home as plants see it</source>
        <translation>A casa, según las plantas</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Paquetes</translation>
    </message>
    <message>
        <source>Freezer, 25 to 40 lb a ft³</source>
        <translation>Congelador, 25 a 40 lb por pie³</translation>
    </message>
    <message>
        <source>{span} ft³</source>
        <translation>{span} pie³</translation>
    </message>
    <message>
        <source>Whole lot chilled, by {basis}</source>
        <translation>Lote entero en frío, por {basis}</translation>
    </message>
    <message>
        <source>Price so far</source>
        <translation>Precio hasta ahora</translation>
    </message>
    <message>
        <source>no rates for this yet</source>
        <translation>todavía sin tarifa</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>espera</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuesto</translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation>{count} más</translation>
    </message>
    <message>
        <source>Price so far, by the rates</source>
        <translation>Precio hasta ahora, según tarifa</translation>
    </message>
</context>
<context>
    <name>OrderForm</name>
    <message>
        <source>Order form of order {number}</source>
        <translation>Forma de la orden {number}</translation>
    </message>
    <message>
        <source>A filled order form</source>
        <translation>Una forma llena</translation>
    </message>
</context>
<context>
    <name>OrderHeading</name>
    <message>
        <source>Order {number}</source>
        <translation>Orden {number}</translation>
    </message>
    <message>
        <source>cut as {owner} says</source>
        <translation>se corta como diga {owner}</translation>
    </message>
    <message>
        <source>changed since sheet {n}</source>
        <translation>cambiada desde la hoja {n}</translation>
    </message>
    <message>
        <source>tag {tags}</source>
        <translation>arete {tags}</translation>
    </message>
</context>
<context>
    <name>OrderHistory</name>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>on its own</source>
        <translation>por su cuenta</translation>
    </message>
    <message>
        <source>as share {number} says</source>
        <translation>como diga la parte {number}</translation>
    </message>
    <message>
        <source>how it is cut</source>
        <translation>cómo se corta</translation>
    </message>
    <message>
        <source>rung: no answer</source>
        <translation>llamada: sin respuesta</translation>
    </message>
    <message>
        <source>rung: message left</source>
        <translation>llamada: se dejó recado</translation>
    </message>
    <message>
        <source>rung: spoke</source>
        <translation>llamada: se habló</translation>
    </message>
    <message>
        <source>offered: {ways}</source>
        <translation>se ofreció: {ways}</translation>
    </message>
    <message>
        <source>told to {name}</source>
        <translation>dicho a {name}</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiada</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>side fixed</source>
        <translation>media canal fijada</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>cortada</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>deshecha</translation>
    </message>
    <message>
        <source>done again</source>
        <translation>rehecha</translation>
    </message>
</context>
<context>
    <name>OrderList</name>
    <message>
        <source>No order has “{text}”.</source>
        <translation>Ninguna orden tiene “{text}”.</translation>
    </message>
    <message>
        <source>No open order has “{text}”. It may be among the closed ones.</source>
        <translation>Ninguna orden abierta tiene “{text}”. Puede estar entre las cerradas.</translation>
    </message>
    <message>
        <source>&amp;Find an owner, tag or number</source>
        <translation>&amp;Busque un dueño, arete o número</translation>
    </message>
    <message>
        <source>C&amp;losed orders too</source>
        <translation>Ta&amp;mbién las cerradas</translation>
    </message>
    <message>
        <source>&amp;To ring  Ctrl+R</source>
        <translation>Por &amp;llamar  Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Weights of the day  Ctrl+W</source>
        <translation>&amp;Pesos del día  Ctrl+W</translation>
    </message>
    <message>
        <source>&amp;Book animals  Ctrl+N</source>
        <translation>&amp;Apartar animales  Ctrl+N</translation>
    </message>
    <message>
        <source>Orders by day</source>
        <translation>Órdenes por día</translation>
    </message>
    <message>
        <source>No order is open</source>
        <translation>No hay órdenes abiertas</translation>
    </message>
    <message>
        <source>Book the animal with its day and its owners. Each owner gets an order; take it by phone, and see line by line what fits.</source>
        <translation>Aparte el animal con su día y sus dueños. A cada dueño le toca una orden; tómela por teléfono y vea línea por línea lo que cabe.</translation>
    </message>
    <message>
        <source>Book animals  Ctrl+N</source>
        <translation>Apartar animales  Ctrl+N</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Arete</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Se debe</translation>
    </message>
    <message>
        <source>to be named ({producer})</source>
        <translation>por nombrar ({producer})</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
</context>
<context>
    <name>OrderNoteDialog</name>
    <message>
        <source>Note of order {number}</source>
        <translation>Nota de la orden {number}</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Note for the block</source>
        <translation>&amp;Nota para la mesa</translation>
    </message>
    <message>
        <source>Cut sheet wanted &amp;by</source>
        <translation>&amp;Hoja de cortes para el</translation>
    </message>
    <message>
        <source>&amp;Fetched</source>
        <translation>&amp;Recogida</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelada</translation>
    </message>
    <message>
        <source>fresh, as agreed</source>
        <translation>fresca, como se acordó</translation>
    </message>
</context>
<context>
    <name>OrderPapers</name>
    <message>
        <source>Confirmation of order {number}</source>
        <translation>Confirmación de la orden {number}</translation>
    </message>
    <message>
        <source>Receipt {number}</source>
        <translation>Recibo {number}</translation>
    </message>
</context>
<context>
    <name>OrderRows</name>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Acabado</translation>
    </message>
    <message>
        <source>Pounds</source>
        <translation>Libras</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Paquetes</translation>
    </message>
    <message>
        <source>contested</source>
        <translation>en disputa</translation>
    </message>
    <message>
        <source>open</source>
        <translation>sin decidir</translation>
    </message>
    <message>
        <source>to agree</source>
        <translation>por acordar</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>justo</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>decidido</translation>
    </message>
    <message>
        <source>last time {amount}</source>
        <translation>la vez pasada {amount}</translation>
    </message>
    <message>
        <source>usual: {cut}</source>
        <translation>lo usual: {cut}</translation>
    </message>
    <message>
        <source>the usual</source>
        <translation>lo usual</translation>
    </message>
</context>
<context>
    <name>OrderStage</name>
    <message>
        <source>side {number}</source>
        <translation>media {number}</translation>
    </message>
    <message>
        <source>Enter takes {way}</source>
        <translation>Intro toma {way}</translation>
    </message>
    <message>
        <source>{count} more cuts: type a name</source>
        <translation>{count} cortes más: escriba un nombre</translation>
    </message>
</context>
<context>
    <name>OrderSteps</name>
    <message>
        <source>&amp;More</source>
        <translation>&amp;Más</translation>
    </message>
    <message>
        <source>Settle  Ctrl+Enter</source>
        <translation>Completar  Ctrl+Intro</translation>
    </message>
    <message>
        <source>House&apos;s usual</source>
        <translation>Lo usual de la casa</translation>
    </message>
    <message>
        <source>As last time</source>
        <translation>Como la vez pasada</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Owners side by side</source>
        <translation>Dueños lado a lado</translation>
    </message>
    <message>
        <source>Cut as another owner says</source>
        <translation>Cortar como diga otro dueño</translation>
    </message>
    <message>
        <source>Who changed what</source>
        <translation>Quién cambió qué</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Do again</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Name the owner</source>
        <translation>Nombrar al dueño</translation>
    </message>
    <message>
        <source>What is kept of the owner</source>
        <translation>Lo que se guarda del dueño</translation>
    </message>
    <message>
        <source>Payment</source>
        <translation>Pago</translation>
    </message>
    <message>
        <source>Change or cancel the booking</source>
        <translation>Cambiar o cancelar lo apartado</translation>
    </message>
    <message>
        <source>Confirmation on paper</source>
        <translation>Confirmación en papel</translation>
    </message>
    <message>
        <source>Blank order form</source>
        <translation>Forma en blanco</translation>
    </message>
    <message>
        <source>Read a filled form</source>
        <translation>Leer una forma llena</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Take the order back</source>
        <translation>Regresar la orden</translation>
    </message>
</context>
<context>
    <name>OrderView</name>
    <message>
        <source>Orders  Esc</source>
        <translation>Órdenes  Esc</translation>
    </message>
    <message>
        <source>Settle  Ctrl+Enter</source>
        <translation>Completar  Ctrl+Intro</translation>
    </message>
    <message>
        <source>The order by primal</source>
        <translation>La orden por pieza mayor</translation>
    </message>
    <message>
        <source>{count} lines as usual. Ctrl+Z takes them back.</source>
        <translation>{count} líneas como de costumbre. Ctrl+Z las quita.</translation>
    </message>
    <message>
        <source>Nothing is open that the usual would fill.</source>
        <translation>No falta nada que se pueda llenar con lo usual.</translation>
    </message>
    <message>
        <source>Nothing is open any more. Ctrl+Enter settles the order.</source>
        <translation>Ya no falta nada por decidir. Ctrl+Intro completa la orden.</translation>
    </message>
    <message>
        <source>Release to the block  Ctrl+Enter</source>
        <translation>Pasar a la mesa  Ctrl+Intro</translation>
    </message>
    <message>
        <source>Release a new sheet  Ctrl+Enter</source>
        <translation>Pasar hoja nueva  Ctrl+Intro</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregada</translation>
    </message>
    <message>
        <source>At Wrap</source>
        <translation>En empaque</translation>
    </message>
    <message>
        <source>Hand over  F8</source>
        <translation>Entregar  F8</translation>
    </message>
    <message>
        <source>This animal has one owner.</source>
        <translation>Este animal tiene un dueño.</translation>
    </message>
</context>
<context>
    <name>OtherDayDialog</name>
    <message>
        <source>What is booked stays booked: move it in the calendar.</source>
        <translation>Lo apartado queda apartado: muévalo en el calendario.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Is</source>
        <translation>E&amp;s</translation>
    </message>
    <message>
        <source>as its weekday</source>
        <translation>como su día</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>open with other places</source>
        <translation>abierta con otros lugares</translation>
    </message>
    <message>
        <source>&amp;Why, e.g. the holiday</source>
        <translation>&amp;Por qué, p. ej. el feriado</translation>
    </message>
    <message>
        <source>Places, {animals}</source>
        <translation>Lugares, {animals}</translation>
    </message>
</context>
<context>
    <name>OwnerChips</name>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>{owner}: {state}</source>
        <translation>{owner}: {state}</translation>
    </message>
</context>
<context>
    <name>Owners</name>
    <message>
        <source>Has</source>
        <translation>Tiene</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Contestó</translation>
    </message>
    <message>
        <source>as {owner} says</source>
        <translation>como diga {owner}</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>completa</translation>
    </message>
    <message>
        <source>as another says, not settled</source>
        <translation>como diga otro, sin completar</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>todavía nada</translation>
    </message>
    <message>
        <source>open primals: {count}</source>
        <translation>piezas sin decidir: {count}</translation>
    </message>
    <message>
        <source>all of it, not settled</source>
        <translation>todo, sin completar</translation>
    </message>
    <message>
        <source>what can&apos;t be cut</source>
        <translation>lo que no se puede cortar</translation>
    </message>
    <message>
        <source>what the owners must agree on</source>
        <translation>lo que los dueños deben acordar</translation>
    </message>
    <message>
        <source>share {number}, to be named</source>
        <translation>parte {number}, por nombrar</translation>
    </message>
    <message>
        <source>no phone kept</source>
        <translation>sin teléfono guardado</translation>
    </message>
    <message>
        <source>{name}, {phone}: {why}</source>
        <translation>{name}, {phone}: {why}</translation>
    </message>
    <message>
        <source>open</source>
        <translation>sin decidir</translation>
    </message>
</context>
<context>
    <name>OwnersView</name>
    <message>
        <source>To agree on: {what}</source>
        <translation>Por acordar: {what}</translation>
    </message>
    <message>
        <source>There is nothing they must agree on.</source>
        <translation>No hay nada que deban acordar.</translation>
    </message>
    <message>
        <source>Ring {whom}</source>
        <translation>Llamar a {whom}</translation>
    </message>
    <message>
        <source>Every owner has answered.</source>
        <translation>Todos los dueños contestaron.</translation>
    </message>
    <message>
        <source>Space shows one primal in full, Enter opens an order.</source>
        <translation>Espacio muestra una pieza mayor completa, Intro abre una orden.</translation>
    </message>
    <message>
        <source>Space shows all primals, Enter opens an order.</source>
        <translation>Espacio muestra todas las piezas mayores, Intro abre una orden.</translation>
    </message>
    <message>
        <source>Owners side by side</source>
        <translation>Dueños lado a lado</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
</context>
<context>
    <name>PackageEntry</name>
    <message>
        <source>Choose a line above</source>
        <translation>Elija una línea arriba</translation>
    </message>
    <message>
        <source>Weigh and label this line (F12)</source>
        <translation>Pesar y etiquetar esta línea (F12)</translation>
    </message>
    <message>
        <source>Count this line, no weight (F12)</source>
        <translation>Contar esta línea, sin peso (F12)</translation>
    </message>
    <message>
        <source>Weigh what was counted together… (Shift+F12)</source>
        <translation>Pesar juntos los contados… (Mayús+F12)</translation>
    </message>
    <message>
        <source>{net} is more than all that is expected of {product}, {expected}. Is it the right line and weight?</source>
        <translation>{net} es más de todo lo que se espera de {product}, {expected}. ¿Son la línea y el peso correctos?</translation>
    </message>
    <message>
        <source>{made} made of {product}, {planned} planned at the most. Is that right?</source>
        <translation>Hechos {made} de {product}, planeados a lo más {planned}. ¿Es correcto?</translation>
    </message>
</context>
<context>
    <name>PackagesPanel</name>
    <message>
        <source>Packages</source>
        <translation>Paquetes</translation>
    </message>
    <message>
        <source>Scan a package (Ctrl+E)</source>
        <translation>Escanear un paquete (Ctrl+E)</translation>
    </message>
    <message>
        <source>Show &amp;label (F9)</source>
        <translation>Ver &amp;etiqueta (F9)</translation>
    </message>
    <message>
        <source>W&amp;hole stroke (Shift+F9)</source>
        <translation>Lo de una &amp;vez (Mayús+F9)</translation>
    </message>
    <message>
        <source>Bo&amp;xes… (F11)</source>
        <translation>Ca&amp;jas… (F11)</translation>
    </message>
    <message>
        <source>Make &amp;void…</source>
        <translation>An&amp;ular…</translation>
    </message>
    <message>
        <source>&amp;Odd package… (F8)</source>
        <translation>Fuera de &amp;orden… (F8)</translation>
    </message>
    <message>
        <source>&amp;Counts (Ctrl+P)</source>
        <translation>&amp;Conteo (Ctrl+P)</translation>
    </message>
    <message>
        <source>&amp;Ready (Ctrl+Enter)</source>
        <translation>L&amp;ista (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>&amp;Back to wrapping…</source>
        <translation>Volve&amp;r a empaque…</translation>
    </message>
    <message>
        <source>Cure, smoke and sausage… (Ctrl+B)</source>
        <translation>Cura, humo y embutido… (Ctrl+B)</translation>
    </message>
    <message>
        <source>Pr&amp;int labels not yet printed: {count} (Ctrl+F9)</source>
        <translation>I&amp;mprimir etiquetas sin imprimir: {count} (Ctrl+F9)</translation>
    </message>
    <message>
        <source>void: {product}</source>
        <translation>anulado: {product}</translation>
    </message>
    <message>
        <source>no label yet: {product}</source>
        <translation>aún sin etiqueta: {product}</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Núm.</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
</context>
<context>
    <name>PaidDay</name>
    <message>
        <source>Da&amp;y</source>
        <translation>Dí&amp;a</translation>
    </message>
    <message>
        <source>The drawer was counted on {day}: if this cash was in it, the next count comes out short by as much.</source>
        <translation>El cajón se contó el {day}: si este efectivo ya estaba en él, en el próximo conteo faltará lo mismo.</translation>
    </message>
    <message>
        <source>{day} is {count} days ago.</source>
        <translation>{day} fue hace {count} días.</translation>
    </message>
    <message>
        <source>{day} is still to come; money is dated the day it came.</source>
        <translation>{day} todavía no llega; el dinero lleva la fecha en que llegó.</translation>
    </message>
    <message>
        <source>The books are closed through {day}; date it later.</source>
        <translation>Los libros están cerrados hasta el {day}; póngale una fecha posterior.</translation>
    </message>
</context>
<context>
    <name>PaymentDialog</name>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>Take a deposit</source>
        <translation>Recibir un anticipo</translation>
    </message>
    <message>
        <source>Take a payment</source>
        <translation>Recibir un pago</translation>
    </message>
    <message>
        <source>Order {number}, {owner}. {asked}</source>
        <translation>Orden {number}, {owner}. {asked}</translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation>&amp;Recibirlo</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>&amp;Importe</translation>
    </message>
    <message>
        <source>&amp;Given as</source>
        <translation>&amp;Pagado con</translation>
    </message>
    <message>
        <source>&amp;Note, e.g. the number of the check</source>
        <translation>&amp;Nota, por ejemplo el número del cheque</translation>
    </message>
    <message>
        <source>Take it again if that is meant.</source>
        <translation>Tómelo otra vez si es así.</translation>
    </message>
    <message>
        <source>The books are closed for that day.</source>
        <translation>Los libros están cerrados para ese día.</translation>
    </message>
    <message>
        <source>The amount has to be above nothing.</source>
        <translation>El importe debe ser mayor que cero.</translation>
    </message>
    <message>
        <source>Deposit asked {asked}, had {had}.</source>
        <translation>Anticipo pedido {asked}, recibido {had}.</translation>
    </message>
    <message>
        <source>Due {due}.</source>
        <translation>Se debe {due}.</translation>
    </message>
    <message>
        <source>Only {due} is due; change is given out of cash only.</source>
        <translation>Solo se debe {due}; el cambio se da solo del efectivo.</translation>
    </message>
    <message>
        <source>cash</source>
        <translation>efectivo</translation>
    </message>
    <message>
        <source>check</source>
        <translation>cheque</translation>
    </message>
    <message>
        <source>card</source>
        <translation>tarjeta</translation>
    </message>
    <message>
        <source>transfer</source>
        <translation>transferencia</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
</context>
<context>
    <name>PercentField</name>
    <message>
        <source>A percentage can&apos;t be below nothing.</source>
        <translation>Un porcentaje no puede ser menos que nada.</translation>
    </message>
    <message>
        <source>A percentage here is below 100 %.</source>
        <translation>Aquí un porcentaje es menor que 100 %.</translation>
    </message>
    <message>
        <source>Steelyard reads percentages like 6.25 %; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee porcentajes como 6.25 %; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>PersonDialog</name>
    <message>
        <source>Who is working here</source>
        <translation>Quién trabaja aquí</translation>
    </message>
    <message>
        <source>Every change is kept with this name.</source>
        <translation>Cada cambio se guarda con este nombre.</translation>
    </message>
    <message>
        <source>&amp;Sign on</source>
        <translation>&amp;Entrar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
</context>
<context>
    <name>PhoneField</name>
    <message>
        <source>A phone number has {fewest} to {most} digits; “{text}” has {found}.</source>
        <translation>Un teléfono tiene de {fewest} a {most} cifras; “{text}” tiene {found}.</translation>
    </message>
    <message>
        <source>Steelyard reads phone numbers like 555-010-0123, not “{text}”.</source>
        <translation>Steelyard lee teléfonos como 555-010-0123, no “{text}”.</translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>Counter</source>
        <translation>Mostrador</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Riel</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Mesa</translation>
    </message>
    <message>
        <source>Wrap</source>
        <translation>Empaque</translation>
    </message>
    <message>
        <source>Office</source>
        <translation>Oficina</translation>
    </message>
</context>
<context>
    <name>Preview</name>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>P&amp;rinter</source>
        <translation>Im&amp;presora</translation>
    </message>
    <message>
        <source>&amp;Copies</source>
        <translation>&amp;Copias</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Imprimir</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Más chico</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Más grande</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>C&amp;errar</translation>
    </message>
    <message>
        <source>This computer has no printer set up. Save it as PDF instead.</source>
        <translation>Esta computadora no tiene impresora. Guárdelo como PDF.</translation>
    </message>
    <message>
        <source>Choose a printer.</source>
        <translation>Escoja una impresora.</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>The printer {printer} is gone. Choose another, or save as PDF.</source>
        <translation>La impresora {printer} ya no está. Escoja otra o guárdelo como PDF.</translation>
    </message>
    <message>
        <source>The printer {printer} did not take it. See that it is on and has paper, then print again.</source>
        <translation>La impresora {printer} no lo tomó. Vea que esté prendida y tenga papel, e imprima otra vez.</translation>
    </message>
    <message>
        <source>This paper can&apos;t be read, so it was not printed.</source>
        <translation>Este papel no se puede leer, así que no se imprimió.</translation>
    </message>
    <message>
        <source>Page {page} of {pages}, {zoom} %</source>
        <translation>Página {page} de {pages}, {zoom} %</translation>
    </message>
</context>
<context>
    <name>Program</name>
    <message>
        <source>Making a copy of the records…</source>
        <translation>Se copian los registros…</translation>
    </message>
    <message>
        <source>Copied to {path}.</source>
        <translation>Copiado en {path}.</translation>
    </message>
    <message>
        <source>That could not be done. {why}</source>
        <translation>Eso no se pudo hacer. {why}</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Sto&amp;p</source>
        <translation>Det&amp;ener</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>{done} of {all}</source>
        <translation>{done} de {all}</translation>
    </message>
</context>
<context>
    <name>PutMeatIn</name>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>Put meat into batch {number}</source>
        <translation>Meter carne en la tanda {number}</translation>
    </message>
    <message>
        <source>The raw weight of one owner&apos;s pieces or trim. Fat or pork from elsewhere must come from inspected stock: say what it is and from which box or lot.</source>
        <translation>El peso crudo de las piezas o el recorte de un dueño. La grasa o el cerdo de otro lado debe venir de existencia inspeccionada: diga qué es y de qué caja o lote.</translation>
    </message>
    <message>
        <source>&amp;Put it in</source>
        <translation>&amp;Meterla</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Order</source>
        <translation>&amp;Orden</translation>
    </message>
    <message>
        <source>L&amp;ine</source>
        <translation>Lí&amp;nea</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>&amp;Peso</translation>
    </message>
    <message>
        <source>Pi&amp;eces</source>
        <translation>Pi&amp;ezas</translation>
    </message>
    <message>
        <source>&amp;Fat or pork from elsewhere</source>
        <translation>&amp;Grasa o cerdo de otro lado</translation>
    </message>
    <message>
        <source>Pou&amp;nds of it</source>
        <translation>Li&amp;bras de eso</translation>
    </message>
    <message>
        <source>Its so&amp;urce</source>
        <translation>&amp;Su origen</translation>
    </message>
    <message>
        <source>Fill this in.</source>
        <translation>Llene esto.</translation>
    </message>
    <message>
        <source>Choose the order and its line.</source>
        <translation>Elija la orden y su línea.</translation>
    </message>
    <message>
        <source>From which inspected box or lot?</source>
        <translation>¿De qué caja o lote inspeccionado?</translation>
    </message>
    <message>
        <source>Say the source.</source>
        <translation>Diga el origen.</translation>
    </message>
    <message>
        <source>The batch has gone on; nothing more goes in.</source>
        <translation>La tanda ya siguió; no entra nada más.</translation>
    </message>
    <message>
        <source>A weight above nothing is needed.</source>
        <translation>Hace falta un peso mayor que cero.</translation>
    </message>
    <message>
        <source>{cut}: the order says fresh. Ask the owner; Ctrl+Enter cures it.</source>
        <translation>{cut}: la orden dice fresco. Pregunte al dueño; Ctrl+Intro lo cura.</translation>
    </message>
    <message>
        <source>{cut}: the order doesn&apos;t say fresh or cured. Ask the owner; Ctrl+Enter cures it.</source>
        <translation>{cut}: la orden no dice fresco ni curado. Pregunte al dueño; Ctrl+Intro lo cura.</translation>
    </message>
</context>
<context>
    <name>RailActions</name>
    <message>
        <source>Booked as lot {number}: Enter checks it in.</source>
        <translation>Apartado como lote {number}: Intro lo recibe.</translation>
    </message>
    <message>
        <source>Tell the owners</source>
        <translation>Avisar a los dueños</translation>
    </message>
    <message>
        <source>Already billed</source>
        <translation>Ya está en una cuenta</translation>
    </message>
    <message>
        <source>Made from the weight before: bill {numbers}. The bills stand until the Office (F6) credits them and issues them again.</source>
        <translation>Hecha con el peso anterior: cuenta {numbers}. Las cuentas valen hasta que la Oficina (F6) las acredite y las emita de nuevo.</translation>
    </message>
    <message>
        <source>No tag</source>
        <translation>Sin arete</translation>
    </message>
    <message>
        <source>The owners&apos; names don&apos;t fit on one tag.</source>
        <translation>Los nombres de los dueños no caben en un arete.</translation>
    </message>
    <message>
        <source>Tag {tag}</source>
        <translation>Arete {tag}</translation>
    </message>
    <message>
        <source>Producer&apos;s report</source>
        <translation>Informe al productor</translation>
    </message>
</context>
<context>
    <name>RailPlace</name>
    <message>
        <source>Rail</source>
        <translation>Riel</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Mostrar</translation>
    </message>
    <message>
        <source>all not yet cut</source>
        <translation>todos, sin cortar</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>los de hoy</translation>
    </message>
    <message>
        <source>Usual (Esc)</source>
        <translation>Lo usual (Esc)</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>No animals here</source>
        <translation>Aquí no hay animales</translation>
    </message>
    <message>
        <source>Animals booked at the counter (F2) stand here on their day.</source>
        <translation>Los animales apartados en el mostrador (F2) están aquí en su día.</translation>
    </message>
    <message>
        <source>Everything due is done.</source>
        <translation>Todo lo pendiente está hecho.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>cut or gone</source>
        <translation>cortados o fuera</translation>
    </message>
    <message>
        <source>Tell the owners</source>
        <translation>Avisar a los dueños</translation>
    </message>
    <message>
        <source>Age not known: cut as 30 months and over. Owners stand on the counter&apos;s list to ring.</source>
        <translation>Edad desconocida: se corta como de 30 meses o más. Los dueños están en la lista de llamadas del mostrador.</translation>
    </message>
    <message>
        <source>Recorded. Every choice still stands.</source>
        <translation>Anotado. Todo lo pedido sigue en pie.</translation>
    </message>
    <message>
        <source>Not changed</source>
        <translation>No se cambió</translation>
    </message>
    <message>
        <source>Another station has changed this animal. Look again and repeat it.</source>
        <translation>Otra estación cambió este animal. Mire otra vez y repítalo.</translation>
    </message>
    <message>
        <source>{count} animals are this order&apos;s: {shown} is shown; also {others}.</source>
        <translation>De esta orden son {count} animales: se muestra {shown}; también {others}.</translation>
    </message>
    <message>
        <source>tag {tag} ({state})</source>
        <translation>arete {tag} ({state})</translation>
    </message>
    <message>
        <source>animal {number} ({state})</source>
        <translation>animal {number} ({state})</translation>
    </message>
</context>
<context>
    <name>RateCardDialog</name>
    <message>
        <source>New rate card</source>
        <translation>Tarifa nueva</translation>
    </message>
    <message>
        <source>Type each rate and press Enter. What is left empty isn&apos;t charged.</source>
        <translation>Escriba cada precio y pulse Intro. Lo que queda vacío no se cobra.</translation>
    </message>
    <message>
        <source>&amp;Keep (Ctrl+Enter)</source>
        <translation>&amp;Guardar (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Holds from</source>
        <translation>&amp;Vale desde</translation>
    </message>
    <message>
        <source>&amp;For</source>
        <translation>&amp;Para</translation>
    </message>
    <message>
        <source>K&amp;illed</source>
        <translation>&amp;Matanza</translation>
    </message>
    <message>
        <source>inspected or custom</source>
        <translation>inspeccionado o exento</translation>
    </message>
    <message>
        <source>under inspection</source>
        <translation>con inspección</translation>
    </message>
    <message>
        <source>custom</source>
        <translation>exento</translation>
    </message>
    <message>
        <source>Only for customers of &amp;group</source>
        <translation>&amp;Solo para clientes del grupo</translation>
    </message>
    <message>
        <source>Charges of the card</source>
        <translation>Cargos de la tarifa</translation>
    </message>
    <message>
        <source>All a&amp;bout it… (F2)</source>
        <translation>&amp;Todo sobre él… (F2)</translation>
    </message>
    <message>
        <source>&amp;Other charge… (Ctrl+N)</source>
        <translation>&amp;Otro cargo… (Ctrl+N)</translation>
    </message>
    <message>
        <source>L&amp;ate payment… (F6)</source>
        <translation>Pago &amp;atrasado… (F6)</translation>
    </message>
    <message>
        <source>&amp;Try it… (F7)</source>
        <translation>Pro&amp;barla… (F7)</translation>
    </message>
    <message>
        <source>all animals</source>
        <translation>todos los animales</translation>
    </message>
    <message>
        <source>&amp;Rate: {charge}, {basis}</source>
        <translation>P&amp;recio: {charge}, {basis}</translation>
    </message>
    <message>
        <source>Keep it again if that is meant.</source>
        <translation>Guárdela otra vez si así debe ser.</translation>
    </message>
    <message>
        <source>{charge}: these animals have none of its cuts; it is never billed.</source>
        <translation>{charge}: estos animales no tienen ninguno de sus cortes; nunca se cobra.</translation>
    </message>
    <message>
        <source>{charge} at {rate} {basis} is uncommonly much.</source>
        <translation>{charge} a {rate} {basis}: es mucho más de lo común.</translation>
    </message>
    <message>
        <source>{other} holds for the same animals from {day} too; the one kept last is used.</source>
        <translation>{other} vale también para los mismos animales desde {day}; se usa la guardada al último.</translation>
    </message>
    <message>
        <source>No card holds for {animal} from {start} to {end}.</source>
        <translation>Ninguna tarifa vale para {animal} del {start} al {end}.</translation>
    </message>
    <message>
        <source>Say at least one rate.</source>
        <translation>Diga al menos un precio.</translation>
    </message>
</context>
<context>
    <name>RateField</name>
    <message>
        <source>A rate can&apos;t be below nothing.</source>
        <translation>Un precio no puede ser menos que nada.</translation>
    </message>
    <message>
        <source>A rate has at most six decimals; “{text}” has more.</source>
        <translation>Un precio tiene seis decimales a lo más; “{text}” tiene más.</translation>
    </message>
    <message>
        <source>“{text}” is more than any rate here.</source>
        <translation>“{text}” es más que cualquier precio de aquí.</translation>
    </message>
    <message>
        <source>Steelyard reads rates like $0.715 or 71.5¢; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee precios como $0.715 o 71.5¢; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>RatesPage</name>
    <message>
        <source>A card never changes. New rates are a new card that holds from a later day.</source>
        <translation>Una tarifa nunca se cambia. Los precios nuevos son otra tarifa que vale desde un día posterior.</translation>
    </message>
    <message>
        <source>&amp;New card… (Ctrl+N)</source>
        <translation>&amp;Tarifa nueva… (Ctrl+N)</translation>
    </message>
    <message>
        <source>&amp;Try it on last month… (F7)</source>
        <translation>&amp;Probarla con el mes pasado… (F7)</translation>
    </message>
    <message>
        <source>No rate card yet</source>
        <translation>Todavía no hay tarifa</translation>
    </message>
    <message>
        <source>A rate card says what the shop charges, by the head, the pound or the package, and from which day. Without one there is no bill and no quote. Ctrl+N begins one: the usual charges are listed, type each rate and press Enter; what is left empty isn&apos;t charged. One card may hold for all animals, or each has its own.</source>
        <translation>Una tarifa dice lo que cobra la planta, por cabeza, por libra o por paquete, y desde qué día. Sin ella no hay cuenta ni cotización. Ctrl+N comienza una: los cargos usuales ya están en la lista, escriba cada precio y pulse Intro; lo que queda vacío no se cobra. Una tarifa puede valer para todos los animales, o cada uno tiene la suya.</translation>
    </message>
    <message>
        <source>Rate cards</source>
        <translation>Tarifas</translation>
    </message>
    <message>
        <source>Charges of the card</source>
        <translation>Cargos de la tarifa</translation>
    </message>
    <message>
        <source>{name} holds from {day}.</source>
        <translation>{name} vale desde {day}.</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Tarifa</translation>
    </message>
    <message>
        <source>Holds from</source>
        <translation>Vale desde</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Charges</source>
        <translation>Cargos</translation>
    </message>
    <message>
        <source>all animals</source>
        <translation>todos los animales</translation>
    </message>
</context>
<context>
    <name>ReasonDialog</name>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Motivo</translation>
    </message>
</context>
<context>
    <name>RecipeDialog</name>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Your own recipe, for labels and batches. It advises no cure: what goes in is by your plan and your inspector.</source>
        <translation>Su propia receta, para etiquetas y tandas. No aconseja cómo curar: lo que entra es según su plan y su inspector.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>For the &amp;finish</source>
        <translation>Para el &amp;acabado</translation>
    </message>
    <message>
        <source>Of which &amp;animals</source>
        <translation>&amp;De qué animales</translation>
    </message>
    <message>
        <source>all animals</source>
        <translation>todos los animales</translation>
    </message>
    <message>
        <source>&amp;Ingredients, one a line: 2 salt · 0.25 cure mix · whey powder (milk)</source>
        <translation>&amp;Ingredientes, uno por línea: 2 sal · 0.25 cura · suero en polvo (leche)</translation>
    </message>
    <message>
        <source>Allergen&amp;s</source>
        <translation>A&amp;lérgenos</translation>
    </message>
    <message>
        <source>looked at: all are in parentheses</source>
        <translation>mirados: todos están entre paréntesis</translation>
    </message>
    <message>
        <source>not looked at yet: no labels</source>
        <translation>sin mirar todavía: sin etiquetas</translation>
    </message>
    <message>
        <source>&amp;Ready to eat</source>
        <translation>Listo &amp;para comer</translation>
    </message>
    <message>
        <source>neither cured nor smoked</source>
        <translation>ni curado ni ahumado</translation>
    </message>
    <message>
        <source>cook before eating</source>
        <translation>cocinar antes de comer</translation>
    </message>
    <message>
        <source>fully cooked</source>
        <translation>totalmente cocido</translation>
    </message>
    <message>
        <source>Nitrite &amp;checked as</source>
        <translation>Nitrito &amp;comprobado como</translation>
    </message>
    <message>
        <source>no cure in it</source>
        <translation>no lleva cura</translation>
    </message>
    <message>
        <source>Nitrite in the cure mix, in &amp;percent</source>
        <translation>Nitrito &amp;en la mezcla de cura, en por ciento</translation>
    </message>
    <message>
        <source>as the packet says, 6.25</source>
        <translation>como dice el paquete, 6.25</translation>
    </message>
    <message>
        <source>Lan&amp;guage of the ingredients</source>
        <translation>Idi&amp;oma de los ingredientes</translation>
    </message>
    <message>
        <source>Line {line} names no ingredient: {text}</source>
        <translation>La línea {line} no nombra un ingrediente: {text}</translation>
    </message>
    <message>
        <source>Change that line.</source>
        <translation>Cambie esa línea.</translation>
    </message>
    <message>
        <source>A percentage between 0 and 100, like 6.25.</source>
        <translation>Un por ciento entre 0 y 100, como 6.25.</translation>
    </message>
    <message>
        <source>Say the strength as the packet does.</source>
        <translation>Diga la fuerza como el paquete.</translation>
    </message>
    <message>
        <source>A cured product is one or the other.</source>
        <translation>Un producto curado es lo uno o lo otro.</translation>
    </message>
    <message>
        <source>Say whether it is cooked before eating.</source>
        <translation>Diga si se cocina antes de comer.</translation>
    </message>
    <message>
        <source>The recipe needs a name and its ingredients.</source>
        <translation>La receta necesita un nombre y sus ingredientes.</translation>
    </message>
</context>
<context>
    <name>RecipesPage</name>
    <message>
        <source>A label of anything cured or seasoned takes its ingredients and allergens from here. A changed recipe is a new one; batches keep the one they were made by.</source>
        <translation>La etiqueta de lo curado o sazonado toma de aquí sus ingredientes y alérgenos. Una receta cambiada es otra; las tandas guardan la suya.</translation>
    </message>
    <message>
        <source>&amp;New recipe… (Ctrl+N)</source>
        <translation>Receta &amp;nueva… (Ctrl+N)</translation>
    </message>
    <message>
        <source>Re&amp;tire it… (Del)</source>
        <translation>Re&amp;tirarla… (Supr)</translation>
    </message>
    <message>
        <source>No recipe yet</source>
        <translation>Todavía no hay receta</translation>
    </message>
    <message>
        <source>A recipe says what a cure, a sausage or a seasoning is made of. Labels take the ingredients and allergens from it; a batch in cure, smoke or the mixer weighs out by it, and its nitrite is checked where it has any. Ctrl+N begins one: take the parts from the bags&apos; own labels.</source>
        <translation>Una receta dice de qué se hace un curado, una salchicha o un sazón. De ella toman las etiquetas los ingredientes y los alérgenos; una tanda en curado, humo o mezcladora se pesa según ella, y su nitrito se revisa si lo lleva. Ctrl+N comienza una: tome las partes de las etiquetas de las bolsas.</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Recetas</translation>
    </message>
    <message>
        <source>Retire {name}</source>
        <translation>Retirar {name}</translation>
    </message>
    <message>
        <source>Its batches keep it. Why is it used no more?</source>
        <translation>Sus lotes la guardan. ¿Por qué ya no se usa?</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Hecho de</translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation>Alérgenos</translation>
    </message>
    <message>
        <source>Nitrite checked as</source>
        <translation>Nitrito comprobado como</translation>
    </message>
    <message>
        <source>all animals</source>
        <translation>todos los animales</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>sin mirar todavía</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
</context>
<context>
    <name>RecordsDialog</name>
    <message>
        <source>Write out the records</source>
        <translation>Exportar los registros</translation>
    </message>
    <message>
        <source>Animals, owners, weights, losses, packages, bills, payments and changes, as tables a spreadsheet opens. By 9 CFR 320.3 records since {day} must be kept; the state may ask for longer. Nothing is removed here.</source>
        <translation>Animales, dueños, pesos, pérdidas, paquetes, cuentas, pagos y cambios, como tablas para una hoja de cálculo. Por 9 CFR 320.3 se guardan los registros desde el {day}; el estado puede pedir más. Aquí no se borra nada.</translation>
    </message>
    <message>
        <source>&amp;Write them</source>
        <translation>&amp;Escribirlos</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Parar</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;First day</source>
        <translation>Primer &amp;día</translation>
    </message>
    <message>
        <source>&amp;Last day</source>
        <translation>Ú&amp;ltimo día</translation>
    </message>
    <message>
        <source>The first day is after the last.</source>
        <translation>El primer día es posterior al último.</translation>
    </message>
    <message>
        <source>{count} records…</source>
        <translation>{count} registros…</translation>
    </message>
    <message>
        <source>Stopped; the tables are not whole.</source>
        <translation>Se paró; las tablas no están enteras.</translation>
    </message>
    <message>
        <source>{count} records are in {folder}.</source>
        <translation>{count} registros están en {folder}.</translation>
    </message>
    <message>
        <source>The disk refused: {detail}.</source>
        <translation>El disco no aceptó: {detail}.</translation>
    </message>
</context>
<context>
    <name>RefusalWords</name>
    <message>
        <source>{name} has changed that line since.</source>
        <translation>{name} cambió esa línea después.</translation>
    </message>
    <message>
        <source>The order is at the block: change the line instead.</source>
        <translation>La orden está en la mesa: mejor cambie la línea.</translation>
    </message>
    <message>
        <source>There is nothing of yours to take back here.</source>
        <translation>Aquí no hay nada suyo que deshacer.</translation>
    </message>
    <message>
        <source>{name} has just changed this order: look again.</source>
        <translation>{name} acaba de cambiar esta orden: mire otra vez.</translation>
    </message>
    <message>
        <source>The block has cut it: ask them to take the order back first.</source>
        <translation>La mesa ya la cortó: pídales primero que regresen la orden.</translation>
    </message>
    <message>
        <source>Only owners who divide the same side or quarter are cut as one says.</source>
        <translation>Solo a los dueños que comparten la misma media canal o el mismo cuarto se les corta como diga uno.</translation>
    </message>
    <message>
        <source>That owner&apos;s order is cut as another says itself: choose that one.</source>
        <translation>La orden de ese dueño se corta a su vez como diga otro: elija a ese.</translation>
    </message>
    <message>
        <source>Others are cut as this order says: take that back on their orders.</source>
        <translation>A otros se les corta como dice esta orden: quítelo en las órdenes de ellos.</translation>
    </message>
    <message>
        <source>Something of these orders is cut or wrapped: it is too late for that.</source>
        <translation>Algo de estas órdenes ya está cortado o empacado: es tarde para eso.</translation>
    </message>
    <message>
        <source>It is cut as another owner says: ask on that order, or Ctrl+G here.</source>
        <translation>Se corta como diga otro dueño: pida en esa orden, o Ctrl+G aquí.</translation>
    </message>
    <message>
        <source>The order can&apos;t take that step from where it is.</source>
        <translation>La orden no puede dar ese paso desde donde está.</translation>
    </message>
</context>
<context>
    <name>Release</name>
    <message>
        <source>It can&apos;t all be had yet: take one of the ways out first.</source>
        <translation>Todavía no se puede dar todo: tome primero una de las salidas.</translation>
    </message>
    <message>
        <source>The owners have to agree first: change a line that the panel names, or have one owner cut as another says (Ctrl+G).</source>
        <translation>Primero tienen que ponerse de acuerdo los dueños: cambie una línea que nombra el panel, o que a uno se le corte como diga otro (Ctrl+G).</translation>
    </message>
    <message>
        <source>{owner} says how it is cut: settle that.</source>
        <translation>{owner} dice cómo se corta: complete antes esa orden.</translation>
    </message>
    <message>
        <source>Not all of it can be had of what {owners} asked: that comes first.</source>
        <translation>No alcanza para todo lo que pidieron {owners}: eso va primero.</translation>
    </message>
    <message>
        <source>{owners} have to agree first.</source>
        <translation>{owners} deben ponerse de acuerdo primero.</translation>
    </message>
    <message>
        <source>Still open: {names}. F9 cuts it as usual.</source>
        <translation>Falta decidir: {names}. F9 lo corta como de costumbre.</translation>
    </message>
    <message>
        <source>Nothing is asked for yet.</source>
        <translation>Todavía no se pide nada.</translation>
    </message>
    <message>
        <source>Tag {tags}: the age isn&apos;t known, and the block cuts it as 30 months and over. Then it can&apos;t give {cuts}. Say its age at the Rail (F3), or ask for what needs no backbone.</source>
        <translation>Arete {tags}: no se sabe la edad, y la mesa lo corta como de 30 meses o más. Entonces no puede dar {cuts}. Diga su edad en el Riel (F3), o pida lo que no lleve espinazo.</translation>
    </message>
</context>
<context>
    <name>ReportCharts</name>
    <message>
        <source>Carcasses by weight</source>
        <translation>Canales por peso</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>esperado</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>booked</source>
        <translation>apartado</translation>
    </message>
    <message>
        <source>first to last tick</source>
        <translation>de la primera a la última marca</translation>
    </message>
    <message>
        <source>to {days} days</source>
        <translation>hasta {days} días</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>{first} a {last}</translation>
    </message>
    <message>
        <source>over {days} days</source>
        <translation>más de {days} días</translation>
    </message>
    <message>
        <source>unpaid</source>
        <translation>sin pagar</translation>
    </message>
    <message>
        <source>not fetched</source>
        <translation>sin recoger</translation>
    </message>
    <message>
        <source>Orders by the days since the last package</source>
        <translation>Órdenes por los días desde el último paquete</translation>
    </message>
    <message>
        <source>The first {shown} of {all} in the table&apos;s order</source>
        <translation>Los primeros {shown} de {all}, en el orden de la tabla</translation>
    </message>
</context>
<context>
    <name>ReportDialog</name>
    <message>
        <source>Report of tag {tag}</source>
        <translation>Aviso del arete {tag}</translation>
    </message>
    <message>
        <source>What is left is planned again, and the counter is told.</source>
        <translation>Lo que queda se planea otra vez, y se avisa al mostrador.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Leave it (Esc)</source>
        <translation>Dejarlo (Esc)</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Qué</translation>
    </message>
    <message>
        <source>a length measured</source>
        <translation>un largo medido</translation>
    </message>
    <message>
        <source>something lost or trimmed away</source>
        <translation>algo perdido o recortado</translation>
    </message>
    <message>
        <source>a line cut otherwise</source>
        <translation>una línea cortada de otro modo</translation>
    </message>
    <message>
        <source>take a report back</source>
        <translation>retirar un aviso</translation>
    </message>
    <message>
        <source>Which &amp;report</source>
        <translation>Qué &amp;aviso</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Línea</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>Me&amp;dia canal</translation>
    </message>
    <message>
        <source>side 1</source>
        <translation>media canal 1</translation>
    </message>
    <message>
        <source>side 2</source>
        <translation>media canal 2</translation>
    </message>
    <message>
        <source>one to the animal</source>
        <translation>una por animal</translation>
    </message>
    <message>
        <source>Len&amp;gth or thickness</source>
        <translation>Largo &amp;o grueso</translation>
    </message>
    <message>
        <source>&amp;Came out, pieces</source>
        <translation>&amp;Salieron, piezas</translation>
    </message>
    <message>
        <source>Po&amp;unds lost (empty: all of it)</source>
        <translation>Li&amp;bras perdidas (vacío: todo)</translation>
    </message>
    <message>
        <source>&amp;Our own mistake</source>
        <translation>&amp;Error nuestro</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes, credit it</source>
        <translation>sí, acreditarlo</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>&amp;Por qué</translation>
    </message>
    <message>
        <source>What was m&amp;easured</source>
        <translation>Qué se &amp;midió</translation>
    </message>
    <message>
        <source>all of the {primal}</source>
        <translation>todo: {primal}</translation>
    </message>
    <message>
        <source>&amp;Part</source>
        <translation>Pa&amp;rte</translation>
    </message>
    <message>
        <source>side {side}</source>
        <translation>media canal {side}</translation>
    </message>
    <message>
        <source>Say why.</source>
        <translation>Diga por qué.</translation>
    </message>
    <message>
        <source>Say which report.</source>
        <translation>Diga qué aviso.</translation>
    </message>
    <message>
        <source>It was taken back or credited meanwhile; look again.</source>
        <translation>Entretanto se retiró o se abonó; mire otra vez.</translation>
    </message>
    <message>
        <source>Say what was measured, on which side, and its length.</source>
        <translation>Diga qué se midió, en qué media canal y su largo.</translation>
    </message>
    <message>
        <source>Say which part, and on which side.</source>
        <translation>Diga qué parte y de qué media canal.</translation>
    </message>
    <message>
        <source>Say the side; of a part there is one of, say so.</source>
        <translation>Diga la media canal; de una parte única, dígalo.</translation>
    </message>
    <message>
        <source>Say which line.</source>
        <translation>Diga qué línea.</translation>
    </message>
</context>
<context>
    <name>ReportLists</name>
    <message>
        <source>Animals killed in these days stand here once the rail has them.</source>
        <translation>Los animales sacrificados en estos días aparecen aquí en cuanto el riel los tiene.</translation>
    </message>
    <message>
        <source>Pounds by week</source>
        <translation>Libras por semana</translation>
    </message>
    <message>
        <source>Head by week</source>
        <translation>Cabezas por semana</translation>
    </message>
    <message>
        <source>Hanging weights</source>
        <translation>Pesos en canal</translation>
    </message>
    <message>
        <source>Cut-out by species and producer</source>
        <translation>Rendimiento por especie y productor</translation>
    </message>
    <message>
        <source>A lot stands here when every order of it is wrapped and every carcass has its hot weight.</source>
        <translation>Un lote aparece aquí cuando todas sus órdenes están empacadas y cada canal tiene su peso caliente.</translation>
    </message>
    <message>
        <source>Expected against made</source>
        <translation>Esperado y hecho</translation>
    </message>
    <message>
        <source>A cut stands here once the block has ticked its carcass and the order is wrapped.</source>
        <translation>Un corte aparece aquí cuando la mesa ha marcado su canal y la orden está empacada.</translation>
    </message>
    <message>
        <source>Block hours</source>
        <translation>Horas de la mesa</translation>
    </message>
    <message>
        <source>Booked hours come from the minutes a side in the kill calendar&apos;s week, the others from the block&apos;s ticks.</source>
        <translation>Las horas apartadas salen de los minutos por media canal en la semana del calendario de matanza; las otras, de las marcas de la mesa.</translation>
    </message>
    <message>
        <source>Unpaid or not fetched</source>
        <translation>Sin pagar o sin recoger</translation>
    </message>
    <message>
        <source>Every wrapped order is paid and fetched.</source>
        <translation>Toda orden empacada está pagada y recogida.</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Week of</source>
        <translation>Semana del</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Cabezas</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesados</translation>
    </message>
    <message>
        <source>Hot weight</source>
        <translation>Peso caliente</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Promedio</translation>
    </message>
    <message>
        <source>Killed</source>
        <translation>Sacrificados</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Arete</translation>
    </message>
    <message>
        <source>Producer</source>
        <translation>Productor</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Empacado</translation>
    </message>
    <message>
        <source>Packed of hot</source>
        <translation>Empacado del caliente</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Se espera</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Made of expected</source>
        <translation>Hecho de lo esperado</translation>
    </message>
    <message>
        <source>Carcasses</source>
        <translation>Canales</translation>
    </message>
    <message>
        <source>Booked</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>First to last tick</source>
        <translation>De la primera a la última marca</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Wrapped</source>
        <translation>Empacada</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Packages here</source>
        <translation>Paquetes aquí</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fecha</translation>
    </message>
</context>
<context>
    <name>ReportsPage</name>
    <message>
        <source>&amp;Report</source>
        <translation>&amp;Informe</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>A&amp;nimal</source>
        <translation>A&amp;nimal</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todos</translation>
    </message>
    <message>
        <source>F&amp;ind in the table</source>
        <translation>&amp;Buscar en la tabla</translation>
    </message>
    <message>
        <source>&amp;Copy the table</source>
        <translation>&amp;Copiar la tabla</translation>
    </message>
    <message>
        <source>Save as CS&amp;V</source>
        <translation>Guardar como CS&amp;V</translation>
    </message>
    <message>
        <source>As &amp;PDF</source>
        <translation>Como &amp;PDF</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Leyendo</translation>
    </message>
    <message>
        <source>Stopped; nothing is shown</source>
        <translation>Detenido; no se muestra nada</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 fila</translation>
    </message>
    <message>
        <source>{count} rows</source>
        <translation>{count} filas</translation>
    </message>
    <message>
        <source>No row has what is asked for above; empty the field or choose “all”.</source>
        <translation>Ninguna fila tiene lo que se pide arriba; vacíe el campo o elija “todos”.</translation>
    </message>
    <message>
        <source>Nothing from {start} to {end}.</source>
        <translation>Nada del {start} al {end}.</translation>
    </message>
    <message>
        <source>The table is copied; paste it into a spreadsheet.</source>
        <translation>La tabla está copiada; péguela en una hoja de cálculo.</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>El archivo no se escribió</translation>
    </message>
    <message>
        <source>Written: {path}</source>
        <translation>Escrito: {path}</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Del</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Al</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>A la fecha</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Con</translation>
    </message>
</context>
<context>
    <name>RingingDialog</name>
    <message>
        <source>Ringing and freezing</source>
        <translation>Llamadas y congelado</translation>
    </message>
    <message>
        <source>A day written on an order goes before these. With 0 hours in the freezer the hand-over doesn&apos;t ask whether it is frozen.</source>
        <translation>Un día escrito en la orden vale antes que esto. Con 0 horas en el congelador la entrega no pregunta si está congelado.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>Cut sheet due, &amp;days</source>
        <translation>Hoja de corte, en &amp;días</translation>
    </message>
    <message>
        <source>&amp;Counted</source>
        <translation>&amp;Contado</translation>
    </message>
    <message>
        <source>after the kill</source>
        <translation>después de la matanza</translation>
    </message>
    <message>
        <source>before the block</source>
        <translation>antes de la mesa</translation>
    </message>
    <message>
        <source>&amp;Ring from so many days before</source>
        <translation>&amp;Llamar desde tantos días antes</translation>
    </message>
    <message>
        <source>Without an &amp;answer</source>
        <translation>Sin &amp;respuesta</translation>
    </message>
    <message>
        <source>ring on</source>
        <translation>seguir llamando</translation>
    </message>
    <message>
        <source>cut the house&apos;s usual</source>
        <translation>cortar lo usual de la casa</translation>
    </message>
    <message>
        <source>let it hang</source>
        <translation>dejarlo colgado</translation>
    </message>
    <message>
        <source>After so &amp;many calls</source>
        <translation>Después de &amp;tantas llamadas</translation>
    </message>
    <message>
        <source>Frozen after &amp;hours in the freezer</source>
        <translation>Congelado tras &amp;horas en el congelador</translation>
    </message>
    <message>
        <source>Where nobody said &amp;when it went in</source>
        <translation>&amp;Si nadie dijo cuándo entró</translation>
    </message>
    <message>
        <source>counted from its label</source>
        <translation>se cuenta desde su etiqueta</translation>
    </message>
    <message>
        <source>held until somebody says so</source>
        <translation>se retiene hasta que alguien lo diga</translation>
    </message>
    <message>
        <source>As the shop began with them; nobody has set them yet.</source>
        <translation>Como empezó la planta; nadie las ha fijado todavía.</translation>
    </message>
    <message>
        <source>Set last by {who}, {day}, {time}.</source>
        <translation>Fijadas por {who}, {day}, {time}.</translation>
    </message>
    <message>
        <source>{who} has changed this meanwhile; open it again.</source>
        <translation>{who} cambió esto entretanto; ábralo otra vez.</translation>
    </message>
</context>
<context>
    <name>ScaleDialog</name>
    <message>
        <source>Weight corrected after the bill</source>
        <translation>Peso corregido después de la cuenta</translation>
    </message>
    <message>
        <source>Bills that no longer agree with the scale</source>
        <translation>Cuentas que ya no coinciden con la báscula</translation>
    </message>
    <message>
        <source>A weight was corrected after these lines were billed. Their bills are credited whole and issued again at the weights that stand now.</source>
        <translation>Se corrigió un peso después de cobrar estas líneas. Sus cuentas se acreditan enteras y se emiten de nuevo con los pesos vigentes.</translation>
    </message>
    <message>
        <source>&amp;Credit and bill again</source>
        <translation>&amp;Acreditar y cobrar de nuevo</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>Lines that differ</source>
        <translation>Líneas que difieren</translation>
    </message>
    <message>
        <source>&amp;Reason, printed on each credit</source>
        <translation>&amp;Motivo, impreso en cada crédito</translation>
    </message>
    <message>
        <source>The check was stopped: {done} of {count} orders were looked at.</source>
        <translation>La revisión se detuvo: se miraron {done} de {count} órdenes.</translation>
    </message>
    <message>
        <source>It is being done.</source>
        <translation>Se está haciendo.</translation>
    </message>
    <message>
        <source>Crediting and billing again.</source>
        <translation>Acreditando y cobrando de nuevo.</translation>
    </message>
    <message>
        <source>Bill</source>
        <translation>Cuenta</translation>
    </message>
    <message>
        <source>Payer</source>
        <translation>Quien paga</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Billed</source>
        <translation>Cobrado</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
</context>
<context>
    <name>ScaleStrip</name>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>&amp;Pieces</source>
        <translation>&amp;Piezas</translation>
    </message>
    <message>
        <source>Eq&amp;ual packages</source>
        <translation>Paquetes i&amp;guales</translation>
    </message>
    <message>
        <source>&amp;Add package</source>
        <translation>&amp;Agregar paquete</translation>
    </message>
    <message>
        <source>The tare is more than the gross weight.</source>
        <translation>La tara es más que el peso bruto.</translation>
    </message>
    <message>
        <source>A package weighs more than nothing.</source>
        <translation>Un paquete pesa más que nada.</translation>
    </message>
    <message>
        <source>{weight} can&apos;t stand on {scale}: it shows steps of {division}. Is the weight right?</source>
        <translation>{weight} no puede salir en {scale}, que marca pasos de {division}. ¿Está bien el peso?</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Está bien</translation>
    </message>
    <message>
        <source>Weigh again</source>
        <translation>Pesar otra vez</translation>
    </message>
    <message>
        <source>The scale&apos;s divisions</source>
        <translation>Las divisiones de la báscula</translation>
    </message>
    <message>
        <source>&amp;Net weight</source>
        <translation>Peso &amp;neto</translation>
    </message>
    <message>
        <source>&amp;Gross weight</source>
        <translation>Peso &amp;bruto</translation>
    </message>
    <message>
        <source>Scal&amp;e</source>
        <translation>Bás&amp;cula</translation>
    </message>
    <message>
        <source>Take o&amp;ff</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>none, by hand</source>
        <translation>ninguna, a mano</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>hook, {weight}</source>
        <translation>gancho, {weight}</translation>
    </message>
    <message>
        <source>gambrel, {weight}</source>
        <translation>balancín, {weight}</translation>
    </message>
</context>
<context>
    <name>ScaleUse</name>
    <message>
        <source>The scale is outside its range.</source>
        <translation>La báscula está fuera de su alcance.</translation>
    </message>
    <message>
        <source>{weight}, moving</source>
        <translation>{weight}, moviéndose</translation>
    </message>
    <message>
        <source>No scale on {port}. Type the weights; it is used once it is back.</source>
        <translation>No hay báscula en {port}. Escriba los pesos; se usa cuando vuelva.</translation>
    </message>
    <message>
        <source>The scale on {port} says nothing. Type the weights meanwhile.</source>
        <translation>La báscula en {port} no dice nada. Escriba los pesos mientras tanto.</translation>
    </message>
    <message>
        <source>What comes on {port} can&apos;t be read. Look at the scale&apos;s settings.</source>
        <translation>Lo que llega por {port} no se puede leer. Mire los ajustes de la báscula.</translation>
    </message>
</context>
<context>
    <name>ScalesDialog</name>
    <message>
        <source>Scales of this station</source>
        <translation>Básculas de esta estación</translation>
    </message>
    <message>
        <source>The settings stand in the scale&apos;s manual. Watch the line below: lay a load on.</source>
        <translation>Los ajustes están en el manual de la báscula. Mire la línea de abajo: ponga una carga.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>Which &amp;scale</source>
        <translation>Cuál b&amp;áscula</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Port</source>
        <translation>&amp;Puerto</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>En &amp;uso</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no longer</source>
        <translation>ya no</translation>
    </message>
    <message>
        <source>Sp&amp;eed (baud)</source>
        <translation>&amp;Velocidad (baudios)</translation>
    </message>
    <message>
        <source>&amp;Data bits</source>
        <translation>Bits de &amp;datos</translation>
    </message>
    <message>
        <source>Pa&amp;rity</source>
        <translation>Pa&amp;ridad</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>even</source>
        <translation>par</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>impar</translation>
    </message>
    <message>
        <source>St&amp;op bits</source>
        <translation>&amp;Bits de parada</translation>
    </message>
    <message>
        <source>How it &amp;writes a line</source>
        <translation>Cómo &amp;escribe una línea</translation>
    </message>
    <message>
        <source>the shop&apos;s own pattern</source>
        <translation>el patrón propio de la planta</translation>
    </message>
    <message>
        <source>Own pa&amp;ttern</source>
        <translation>Patrón pr&amp;opio</translation>
    </message>
    <message>
        <source>a regular expression with (?P&lt;number&gt;…)</source>
        <translation>una expresión regular con (?P&lt;number&gt;…)</translation>
    </message>
    <message>
        <source>Un&amp;it if unsaid</source>
        <translation>Un&amp;idad si no se dice</translation>
    </message>
    <message>
        <source>Di&amp;vision</source>
        <translation>Divi&amp;sión</translation>
    </message>
    <message>
        <source>A &amp;hook weighs</source>
        <translation>Un g&amp;ancho pesa</translation>
    </message>
    <message>
        <source>A &amp;gambrel weighs</source>
        <translation>Un ba&amp;lancín pesa</translation>
    </message>
    <message>
        <source>On the line now</source>
        <translation>Ahora en la línea</translation>
    </message>
    <message>
        <source>Choose the port.</source>
        <translation>Elija el puerto.</translation>
    </message>
    <message>
        <source>The pattern can&apos;t be read, or names no number.</source>
        <translation>El patrón no se puede leer, o no nombra un número.</translation>
    </message>
    <message>
        <source>Fill this in.</source>
        <translation>Llene esto.</translation>
    </message>
    <message>
        <source>Another station has changed this scale. Leave this and open it again.</source>
        <translation>Otra estación cambió esta báscula. Déjelo y ábralo otra vez.</translation>
    </message>
    <message>
        <source>a new scale</source>
        <translation>una báscula nueva</translation>
    </message>
    <message>
        <source>the number alone: 98.5 lb</source>
        <translation>el número solo: 98.5 lb</translation>
    </message>
    <message>
        <source>letters and commas first: ST,GS,+00098.5lb</source>
        <translation>letras y comas primero: ST,GS,+00098.5lb</translation>
    </message>
    <message>
        <source>letters after it: 98.5 lb G S</source>
        <translation>letras después: 98.5 lb G S</translation>
    </message>
    <message>
        <source>asked, it answers: S S 98.5 lb</source>
        <translation>preguntada, contesta: S S 98.5 lb</translation>
    </message>
</context>
<context>
    <name>ScanField</name>
    <message>
        <source>“{text}” is no code of a box or package.</source>
        <translation>“{text}” no es el código de una caja ni de un paquete.</translation>
    </message>
    <message>
        <source>“{text}” was misread; scan it again.</source>
        <translation>“{text}” se leyó mal; escanéelo otra vez.</translation>
    </message>
    <message>
        <source>That is of order {order}, not of this one.</source>
        <translation>Eso es de la orden {order}, no de esta.</translation>
    </message>
    <message>
        <source>No package of this order lies in box {box}.</source>
        <translation>Ningún paquete de esta orden está en la caja {box}.</translation>
    </message>
    <message>
        <source>Box {box} was fetched already.</source>
        <translation>La caja {box} ya se recogió.</translation>
    </message>
    <message>
        <source>This order has no package {package}.</source>
        <translation>Esta orden no tiene paquete {package}.</translation>
    </message>
    <message>
        <source>Package {package} is void.</source>
        <translation>El paquete {package} está anulado.</translation>
    </message>
    <message>
        <source>Package {package} was fetched already.</source>
        <translation>El paquete {package} ya se recogió.</translation>
    </message>
    <message>
        <source>The label says {label}, package {package} weighs {kept}: is it this shop&apos;s label?</source>
        <translation>La etiqueta dice {label}, el paquete {package} pesa {kept}: ¿es una etiqueta de esta planta?</translation>
    </message>
</context>
<context>
    <name>Sexes</name>
    <message>
        <source>barrow</source>
        <translation>cerdo castrado</translation>
    </message>
    <message>
        <source>gilt</source>
        <translation>cerda joven</translation>
    </message>
    <message>
        <source>sow</source>
        <translation>cerda</translation>
    </message>
    <message>
        <source>boar</source>
        <translation>verraco</translation>
    </message>
    <message>
        <source>steer</source>
        <translation>novillo</translation>
    </message>
    <message>
        <source>heifer</source>
        <translation>vaquilla</translation>
    </message>
    <message>
        <source>cow</source>
        <translation>vaca</translation>
    </message>
    <message>
        <source>bull</source>
        <translation>toro</translation>
    </message>
    <message>
        <source>dairy steer or heifer</source>
        <translation>novillo o vaquilla de lechería</translation>
    </message>
    <message>
        <source>grass-fed steer or heifer</source>
        <translation>novillo o vaquilla de pastura</translation>
    </message>
    <message>
        <source>wether</source>
        <translation>castrado</translation>
    </message>
    <message>
        <source>ewe</source>
        <translation>hembra</translation>
    </message>
    <message>
        <source>ram</source>
        <translation>semental</translation>
    </message>
    <message>
        <source>doe</source>
        <translation>hembra</translation>
    </message>
    <message>
        <source>buck</source>
        <translation>macho</translation>
    </message>
</context>
<context>
    <name>ShareWords</name>
    <message>
        <source>{share}, of {count} animals</source>
        <translation>{share}, de {count} animales</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>entero</translation>
    </message>
    <message>
        <source>forequarter, side {side}</source>
        <translation>delantero, media {side}</translation>
    </message>
    <message>
        <source>hindquarter, side {side}</source>
        <translation>trasero, media {side}</translation>
    </message>
    <message>
        <source>half, side {side}</source>
        <translation>media canal {side}</translation>
    </message>
    <message>
        <source>split quarter, of side {side}</source>
        <translation>cuarto mixto, media {side}</translation>
    </message>
</context>
<context>
    <name>ShopMenu</name>
    <message>
        <source>Shop</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>&amp;Light or dark</source>
        <translation>C&amp;laro u oscuro</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;Size of type</source>
        <translation>&amp;Tamaño de letra</translation>
    </message>
    <message>
        <source>L&amp;anguage</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>&amp;Trace a tag or number…</source>
        <translation>&amp;Rastrear un arete o número…</translation>
    </message>
    <message>
        <source>&amp;Write out the records…</source>
        <translation>&amp;Exportar los registros…</translation>
    </message>
    <message>
        <source>Make a &amp;copy of the records now…</source>
        <translation>Hacer una c&amp;opia de los registros ahora…</translation>
    </message>
    <message>
        <source>&amp;Help for this place</source>
        <translation>A&amp;yuda de este lugar</translation>
    </message>
    <message>
        <source>All &amp;keys</source>
        <translation>Todas las tecla&amp;s</translation>
    </message>
    <message>
        <source>A&amp;bout Steelyard</source>
        <translation>&amp;Acerca de Steelyard</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
</context>
<context>
    <name>ShopPage</name>
    <message>
        <source>&amp;Name of the shop</source>
        <translation>&amp;Nombre de la planta</translation>
    </message>
    <message>
        <source>&amp;Phone</source>
        <translation>&amp;Teléfono</translation>
    </message>
    <message>
        <source>&amp;Address</source>
        <translation>&amp;Dirección</translation>
    </message>
    <message>
        <source>&amp;Email</source>
        <translation>&amp;Correo</translation>
    </message>
    <message>
        <source>Pape&amp;r</source>
        <translation>Pape&amp;l</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>&amp;Label stock, inches</source>
        <translation>&amp;Etiquetas, pulgadas</translation>
    </message>
    <message>
        <source>Label printer, &amp;dots to the inch</source>
        <translation>Impresora de etiquetas, p&amp;untos por pulgada</translation>
    </message>
    <message>
        <source>&amp;Forequarter&apos;s part of a side, %</source>
        <translation>Parte del cuarto &amp;delantero en una media canal, %</translation>
    </message>
    <message>
        <source>as the species&apos; table has it</source>
        <translation>según la tabla de la especie</translation>
    </message>
    <message>
        <source>Pa&amp;ckages are</source>
        <translation>Los pa&amp;quetes van</translation>
    </message>
    <message>
        <source>weighed and labeled</source>
        <translation>pesados y etiquetados</translation>
    </message>
    <message>
        <source>by count only</source>
        <translation>solo por conteo</translation>
    </message>
    <message>
        <source>Days of &amp;storage counted</source>
        <translation>Días de &amp;almacenaje que se cuentan</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>todos los días</translation>
    </message>
    <message>
        <source>Monday to Friday, less the calendar&apos;s closed days</source>
        <translation>lunes a viernes, sin los días cerrados del calendario</translation>
    </message>
    <message>
        <source>Monday to Saturday, less the calendar&apos;s closed days</source>
        <translation>lunes a sábado, sin los días cerrados del calendario</translation>
    </message>
    <message>
        <source>Custom-exempt packages are counted, without weight and label. Their paper must carry NOT FOR SALE itself, stamped or printed, in letters of at least 3/8 inch (9 CFR 316.16, 317.16). Inspected goods are weighed and labeled as before.</source>
        <translation>Los paquetes exentos se cuentan, sin peso ni etiqueta. Su papel debe llevar NOT FOR SALE, sellado o impreso, en letras de 3/8 de pulgada por lo menos (9 CFR 316.16, 317.16). Lo inspeccionado se pesa y se etiqueta como antes.</translation>
    </message>
    <message>
        <source>&amp;Keep (Ctrl+S)</source>
        <translation>&amp;Guardar (Ctrl+S)</translation>
    </message>
    <message>
        <source>&amp;Marks of inspected goods…</source>
        <translation>&amp;Marcas de la carne inspeccionada…</translation>
    </message>
    <message>
        <source>Ringin&amp;g and freezing…</source>
        <translation>Lla&amp;madas y congelado…</translation>
    </message>
    <message>
        <source>4 × 2 on a letter sheet, ten</source>
        <translation>4 × 2 en hoja carta, diez</translation>
    </message>
    <message>
        <source>A part of a side lies between 0 and 100 %, as in 52.</source>
        <translation>La parte de una media canal queda entre 0 y 100 %, por ejemplo 52.</translation>
    </message>
    <message>
        <source>{who} has changed this meanwhile; it is read again.</source>
        <translation>{who} cambió esto mientras tanto; se lee otra vez.</translation>
    </message>
    <message>
        <source>The shop&apos;s details are kept.</source>
        <translation>Se guardaron los datos de la planta.</translation>
    </message>
    <message>
        <source>The marks are kept.</source>
        <translation>Las marcas quedan guardadas.</translation>
    </message>
    <message>
        <source>The rules are kept.</source>
        <translation>Las reglas están guardadas.</translation>
    </message>
</context>
<context>
    <name>StatementDialog</name>
    <message>
        <source>Producer&apos;s statement</source>
        <translation>Estado del productor</translation>
    </message>
    <message>
        <source>The producer&apos;s own paper to the buyer; it never stands on the plant&apos;s bill.</source>
        <translation>El papel del productor para el comprador; nunca va en la cuenta de la planta.</translation>
    </message>
    <message>
        <source>&amp;Show it</source>
        <translation>&amp;Verlo</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Price</source>
        <translation>&amp;Precio</translation>
    </message>
    <message>
        <source>per lb hot</source>
        <translation>por lb caliente</translation>
    </message>
    <message>
        <source>per lb chilled</source>
        <translation>por lb frío</translation>
    </message>
    <message>
        <source>per head</source>
        <translation>por cabeza</translation>
    </message>
    <message>
        <source>for the share</source>
        <translation>por la parte</translation>
    </message>
    <message>
        <source>&amp;Rate</source>
        <translation>Pr&amp;ecio por unidad</translation>
    </message>
    <message>
        <source>&amp;Deposit paid to the producer</source>
        <translation>&amp;Anticipo pagado al productor</translation>
    </message>
    <message>
        <source>Say the price.</source>
        <translation>Diga el precio.</translation>
    </message>
</context>
<context>
    <name>StepsField</name>
    <message>
        <source>Steps are written 5: $5; 10: $7.50, each above the one before; it can&apos;t read “{text}”.</source>
        <translation>Los tramos se escriben 5: $5; 10: $7.50, cada uno por encima del anterior; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>TableScale</name>
    <message>
        <source>Scal&amp;e</source>
        <translation>Bá&amp;scula</translation>
    </message>
    <message>
        <source>Scale&amp;s…</source>
        <translation>Báscu&amp;las…</translation>
    </message>
    <message>
        <source>none, by hand</source>
        <translation>ninguna, a mano</translation>
    </message>
</context>
<context>
    <name>Telling</name>
    <message>
        <source>Nothing of tag {tag} will be cut. Tell {owners}.</source>
        <translation>Nada del arete {tag} se cortará. Avise a {owners}.</translation>
    </message>
    <message>
        <source>The counter (F2) must release a new block sheet.</source>
        <translation>El mostrador (F2) debe pasar a la mesa una hoja nueva.</translation>
    </message>
    <message>
        <source>No longer stands for {owner}: {cut}.</source>
        <translation>Ya no vale para {owner}: {cut}.</translation>
    </message>
    <message>
        <source>Less than planned for {owner}: {cut}.</source>
        <translation>Menos de lo planeado para {owner}: {cut}.</translation>
    </message>
    <message>
        <source>They stand on the counter&apos;s list to ring, with what would work.</source>
        <translation>Están en la lista de llamadas del mostrador, con lo que serviría.</translation>
    </message>
</context>
<context>
    <name>TemperaturePanel</name>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturas</translation>
    </message>
    <message>
        <source>Limits are your own, by your plan and your inspector. A reading outside them is told here; what to do is in your plan.</source>
        <translation>Los límites son suyos, según su plan y su inspector. Una lectura fuera de ellos se dice aquí; qué hacer está en su plan.</translation>
    </message>
    <message>
        <source>R&amp;oom</source>
        <translation>Cá&amp;mara</translation>
    </message>
    <message>
        <source>Tempera&amp;ture, °F</source>
        <translation>Tempera&amp;tura, °F</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Correct…</source>
        <translation>&amp;Corregir…</translation>
    </message>
    <message>
        <source>L&amp;imits…</source>
        <translation>Lí&amp;mites…</translation>
    </message>
    <message>
        <source>Temperatures read</source>
        <translation>Temperaturas leídas</translation>
    </message>
    <message>
        <source>A temperature, like 38 or 3.5 C.</source>
        <translation>Una temperatura, como 38 o 3.5 C.</translation>
    </message>
    <message>
        <source>Which room?</source>
        <translation>¿Qué cámara?</translation>
    </message>
    <message>
        <source>{room}: {degrees} is above your limit. Follow your plan.</source>
        <translation>{room}: {degrees} pasa de su límite. Siga su plan.</translation>
    </message>
    <message>
        <source>{room}: {degrees} is below your limit. Follow your plan.</source>
        <translation>{room}: {degrees} está bajo su límite. Siga su plan.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leída</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregida</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>above</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>below</source>
        <translation>abajo</translation>
    </message>
</context>
<context>
    <name>TextField</name>
    <message>
        <source>{most} letters fit here; these are {found}.</source>
        <translation>Aquí caben {most} letras; estas son {found}.</translation>
    </message>
</context>
<context>
    <name>TogetherDialog</name>
    <message>
        <source>Weigh what was counted</source>
        <translation>Pesar lo contado</translation>
    </message>
    <message>
        <source>{product}: all {count} counted packages on the scale at once. Charges by the finished pound are billed by it; no package gets a label or a weight of its own.</source>
        <translation>{product}: los {count} paquetes contados juntos en la báscula. Con ese peso se cobran los cargos por libra terminada; ningún paquete recibe etiqueta ni peso propio.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Weight of all, or gross with tare</source>
        <translation>&amp;Peso de todos, o bruto con tara</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Tara</translation>
    </message>
    <message>
        <source>Say what they weigh.</source>
        <translation>Diga cuánto pesan.</translation>
    </message>
    <message>
        <source>The tare is more than the gross weight.</source>
        <translation>La tara es más que el peso bruto.</translation>
    </message>
</context>
<context>
    <name>TraceDialog</name>
    <message>
        <source>Trace</source>
        <translation>Rastro</translation>
    </message>
    <message>
        <source>&amp;Tag, label, order, lot or bill</source>
        <translation>&amp;Arete, etiqueta, orden, lote o cuenta</translation>
    </message>
    <message>
        <source>&amp;Which one</source>
        <translation>&amp;Cuál</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Lo que pasó</translation>
    </message>
    <message>
        <source>&amp;Print this page</source>
        <translation>&amp;Imprimir esta página</translation>
    </message>
    <message>
        <source>Producer&apos;s &amp;report</source>
        <translation>In&amp;forme al productor</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>C&amp;errar</translation>
    </message>
    <message>
        <source>Nothing is kept of that. Type the whole number.</source>
        <translation>De eso no se guarda nada. Escriba el número entero.</translation>
    </message>
    <message>
        <source>From any tag or number to the booking, weights, cutting, packages, bills.</source>
        <translation>De cualquier arete o número a lo apartado, pesos, corte, paquetes, cuentas.</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>Lot {lot}, {animal}, {day}: {tags}. From {producer} for {owners}.</source>
        <translation>Lote {lot}, {animal}, {day}: {tags}. De {producer} para {owners}.</translation>
    </message>
    <message>
        <source>Tag {text}, {owner}</source>
        <translation>Arete {text}, {owner}</translation>
    </message>
    <message>
        <source>Label {text}, of {owner}</source>
        <translation>Etiqueta {text}, de {owner}</translation>
    </message>
    <message>
        <source>Order {text}, of {owner}</source>
        <translation>Orden {text}, de {owner}</translation>
    </message>
    <message>
        <source>Lot {text}, {owner}</source>
        <translation>Lote {text}, {owner}</translation>
    </message>
    <message>
        <source>Bill {text}, of {owner}</source>
        <translation>Cuenta {text}, de {owner}</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
</context>
<context>
    <name>TrialDialog</name>
    <message>
        <source>Try the card {name}</source>
        <translation>Probar la tarifa {name}</translation>
    </message>
    <message>
        <source>What each owner was to pay under the old card, and would under this one.</source>
        <translation>Lo que cada dueño debía pagar con la tarifa anterior y lo que pagaría con esta.</translation>
    </message>
    <message>
        <source>&amp;Try these days</source>
        <translation>&amp;Probar estos días</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>T&amp;o</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>Bills under both cards</source>
        <translation>Cuentas con ambas tarifas</translation>
    </message>
    <message>
        <source>The last day lies before the first.</source>
        <translation>El último día es anterior al primero.</translation>
    </message>
    <message>
        <source>Making both bills of each owner.</source>
        <translation>Haciendo las dos cuentas de cada dueño.</translation>
    </message>
    <message>
        <source>Stopped: not all animals of these days are in the list.</source>
        <translation>Detenido: no están en la lista todos los animales de estos días.</translation>
    </message>
    <message>
        <source>No animals of these days would be billed by this card.</source>
        <translation>Ningún animal de estos días se cobraría con esta tarifa.</translation>
    </message>
    <message>
        <source>Old card {old}, this card {new}: {difference}.</source>
        <translation>Tarifa anterior {old}, esta {new}: {difference}.</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Old card</source>
        <translation>Tarifa anterior</translation>
    </message>
    <message>
        <source>This card</source>
        <translation>Esta tarifa</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>can&apos;t be billed</source>
        <translation>no se puede cobrar</translation>
    </message>
    <message>
        <source>something waits</source>
        <translation>algo espera</translation>
    </message>
</context>
<context>
    <name>UsualDialog</name>
    <message>
        <source>A usual line</source>
        <translation>Una línea usual</translation>
    </message>
    <message>
        <source>Way 1 is what F9 does when nobody says otherwise. The other ways are as usual to the block: they aren&apos;t boxed on its sheet.</source>
        <translation>La manera 1 es lo que hace F9 si nadie dice otra cosa. Las otras también son usuales para la mesa: no van en recuadro en su hoja.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Primal</source>
        <translation>Pie&amp;za mayor</translation>
    </message>
    <message>
        <source>&amp;Way</source>
        <translation>Ma&amp;nera</translation>
    </message>
    <message>
        <source>1, unasked</source>
        <translation>1, sin pedirla</translation>
    </message>
    <message>
        <source>{way}, too</source>
        <translation>{way}, también</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>&amp;Corte</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>Can&amp;tidad</translation>
    </message>
    <message>
        <source>&amp;So many</source>
        <translation>C&amp;uántos</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>G&amp;rueso</translation>
    </message>
    <message>
        <source>&amp;Roast weight</source>
        <translation>&amp;Peso del asado</translation>
    </message>
    <message>
        <source>To a package, p&amp;ieces</source>
        <translation>Por paquete, p&amp;iezas</translation>
    </message>
    <message>
        <source>Package wei&amp;ght</source>
        <translation>Peso del pa&amp;quete</translation>
    </message>
    <message>
        <source>&amp;Finishes, by comma</source>
        <translation>&amp;Acabados, con coma</translation>
    </message>
    <message>
        <source>Choose primal, way, cut and amount.</source>
        <translation>Elija pieza mayor, manera, corte y cantidad.</translation>
    </message>
    <message>
        <source>This cut isn&apos;t asked for that way; choose another amount.</source>
        <translation>Este corte no se pide así; elija otra cantidad.</translation>
    </message>
    <message>
        <source>Say how many.</source>
        <translation>Diga cuántos.</translation>
    </message>
    <message>
        <source>This cut can&apos;t have that thickness.</source>
        <translation>Este corte no puede tener ese grueso.</translation>
    </message>
    <message>
        <source>Finishes of this cut: {names}.</source>
        <translation>Acabados de este corte: {names}.</translation>
    </message>
</context>
<context>
    <name>UsualPage</name>
    <message>
        <source>&amp;Animal</source>
        <translation>&amp;Animal</translation>
    </message>
    <message>
        <source>&amp;Owners of one side</source>
        <translation>&amp;Dueños de una media canal</translation>
    </message>
    <message>
        <source>have it cut one way</source>
        <translation>lo cortan de una manera</translation>
    </message>
    <message>
        <source>each as they like, as far as it goes</source>
        <translation>cada uno como quiera, hasta donde se pueda</translation>
    </message>
    <message>
        <source>&amp;Block sheet in</source>
        <translation>&amp;Hoja de la mesa en</translation>
    </message>
    <message>
        <source>the window&apos;s language</source>
        <translation>el idioma de la ventana</translation>
    </message>
    <message>
        <source>English</source>
        <translation>inglés</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>español</translation>
    </message>
    <message>
        <source>English and Spanish</source>
        <translation>inglés y español</translation>
    </message>
    <message>
        <source>F9 cuts what is open by way 1. What is asked as in any of these ways isn&apos;t boxed on the block&apos;s sheet.</source>
        <translation>F9 corta lo que falta por decidir de la manera 1. Lo pedido como en cualquiera de estas no va en recuadro en la hoja de la mesa.</translation>
    </message>
    <message>
        <source>&amp;New line… (Ctrl+N)</source>
        <translation>Línea &amp;nueva… (Ctrl+N)</translation>
    </message>
    <message>
        <source>&amp;Take it off (Del)</source>
        <translation>&amp;Quitarla (Supr)</translation>
    </message>
    <message>
        <source>As the ta&amp;ble has it</source>
        <translation>Como está en la &amp;tabla</translation>
    </message>
    <message>
        <source>Usual lines</source>
        <translation>Líneas usuales</translation>
    </message>
    <message>
        <source>The usual is kept.</source>
        <translation>Lo usual está guardado.</translation>
    </message>
    <message>
        <source>Primal</source>
        <translation>Pieza mayor</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Manera</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Finish and package</source>
        <translation>Acabado y paquete</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>De quién</translation>
    </message>
    <message>
        <source>the shop&apos;s own</source>
        <translation>propia de la planta</translation>
    </message>
    <message>
        <source>the table&apos;s</source>
        <translation>de la tabla</translation>
    </message>
</context>
<context>
    <name>Voiding</name>
    <message>
        <source>Choose a package first.</source>
        <translation>Elija primero un paquete.</translation>
    </message>
    <message>
        <source>That package is void already.</source>
        <translation>Ese paquete ya está anulado.</translation>
    </message>
    <message>
        <source>A count of {count} packages is made void. Why?</source>
        <translation>Se anula un conteo de {count} paquetes. ¿Por qué?</translation>
    </message>
    <message>
        <source>Package {number} is made void. Why?</source>
        <translation>Se anula el paquete {number}. ¿Por qué?</translation>
    </message>
    <message>
        <source>{count} packages are made void. Why?</source>
        <translation>Se anulan {count} paquetes. ¿Por qué?</translation>
    </message>
    <message>
        <source>Make void</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>Package {number} was wrapped in one stroke of {count}. Void all of them?</source>
        <translation>El paquete {number} se empacó de una vez con otros, {count} en total. ¿Anularlos todos?</translation>
    </message>
    <message>
        <source>All {count}</source>
        <translation>Los {count}</translation>
    </message>
    <message>
        <source>Only this one</source>
        <translation>Solo este</translation>
    </message>
</context>
<context>
    <name>WeekDialog</name>
    <message>
        <source>Kill days</source>
        <translation>Días de matanza</translation>
    </message>
    <message>
        <source>Head that a weekday takes. All empty: no calendar, each day takes what comes.</source>
        <translation>Cabezas que toma un día de la semana. Todo vacío: sin calendario, cada día toma lo que venga.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Cooler hooks</source>
        <translation>Ganchos &amp;de la cámara</translation>
    </message>
    <message>
        <source>One date that isn&apos;t as its weekday; empty for none</source>
        <translation>Una fecha distinta de su día de la semana; vacío si ninguna</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Fecha</translation>
    </message>
    <message>
        <source>Is &amp;now</source>
        <translation>A&amp;hora es</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>as its weekday again</source>
        <translation>otra vez como su día</translation>
    </message>
    <message>
        <source>&amp;Why, e.g. the holiday</source>
        <translation>&amp;Por qué, p. ej. el feriado</translation>
    </message>
</context>
<context>
    <name>WeighOut</name>
    <message>
        <source>Batch {number} is done</source>
        <translation>La tanda {number} está lista</translation>
    </message>
    <message>
        <source>Weigh all of it. Each owner&apos;s part goes by the weight that went in.</source>
        <translation>Péselo todo. La parte de cada dueño va según el peso que entró.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Finished weight</source>
        <translation>Peso &amp;terminado</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>{out} is more than the {into} that went in. Weigh again, or say in the note what it took up, such as brine.</source>
        <translation>{out} es más que las {into} que entraron. Pese otra vez, o diga en la nota qué absorbió, como salmuera.</translation>
    </message>
    <message>
        <source>Another station has changed this batch. Look again.</source>
        <translation>Otra estación cambió esta tanda. Mire otra vez.</translation>
    </message>
    <message>
        <source>Nothing is in the batch, or the weight isn&apos;t above nothing.</source>
        <translation>La tanda no tiene nada, o el peso no es mayor que cero.</translation>
    </message>
</context>
<context>
    <name>WeightField</name>
    <message>
        <source>Say the unit: “{text}” may be lb or kg.</source>
        <translation>Diga la unidad: “{text}” puede ser lb o kg.</translation>
    </message>
    <message>
        <source>Steelyard weighs in lb, oz, kg and g; it can&apos;t read “{text}”.</source>
        <translation>Steelyard pesa en lb, oz, kg y g; no puede leer “{text}”.</translation>
    </message>
    <message>
        <source>Write “{text}” in one unit, or in lb and oz.</source>
        <translation>Escriba “{text}” en una sola unidad, o en lb y oz.</translation>
    </message>
    <message>
        <source>A weight can&apos;t be below nothing.</source>
        <translation>Un peso no puede ser menos que nada.</translation>
    </message>
    <message>
        <source>Write “{text}” in decimals, like 0.33 lb.</source>
        <translation>Escriba “{text}” con decimales, como 0.33 lb.</translation>
    </message>
    <message>
        <source>“{text}” is more than any weight here.</source>
        <translation>“{text}” es más que cualquier peso de aquí.</translation>
    </message>
    <message>
        <source>Steelyard reads weights like 3 1/2 lb, 98.5 lb, 12.34 kg; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee pesos como 3 1/2 lb, 98.5 lb, 12.34 kg; no puede leer “{text}”.</translation>
    </message>
</context>
<context>
    <name>WeightPlaces</name>
    <message>
        <source>Live</source>
        <translation>Vivo</translation>
    </message>
    <message>
        <source>Hot, whole</source>
        <translation>Caliente, entera</translation>
    </message>
    <message>
        <source>Hot, side 1</source>
        <translation>Caliente, media canal 1</translation>
    </message>
    <message>
        <source>Hot, side 2</source>
        <translation>Caliente, media canal 2</translation>
    </message>
    <message>
        <source>Hot, side 1 fore</source>
        <translation>Caliente, delantero 1</translation>
    </message>
    <message>
        <source>Hot, side 1 hind</source>
        <translation>Caliente, trasero 1</translation>
    </message>
    <message>
        <source>Hot, side 2 fore</source>
        <translation>Caliente, delantero 2</translation>
    </message>
    <message>
        <source>Hot, side 2 hind</source>
        <translation>Caliente, trasero 2</translation>
    </message>
    <message>
        <source>Chilled, whole</source>
        <translation>Frío, entera</translation>
    </message>
    <message>
        <source>Chilled, side 1</source>
        <translation>Frío, media canal 1</translation>
    </message>
    <message>
        <source>Chilled, side 2</source>
        <translation>Frío, media canal 2</translation>
    </message>
    <message>
        <source>Chilled, side 1 fore</source>
        <translation>Frío, delantero 1</translation>
    </message>
    <message>
        <source>Chilled, side 1 hind</source>
        <translation>Frío, trasero 1</translation>
    </message>
    <message>
        <source>Chilled, side 2 fore</source>
        <translation>Frío, delantero 2</translation>
    </message>
    <message>
        <source>Chilled, side 2 hind</source>
        <translation>Frío, trasero 2</translation>
    </message>
</context>
<context>
    <name>WeightStages</name>
    <message>
        <source>live, then hot</source>
        <translation>vivo, luego caliente</translation>
    </message>
    <message>
        <source>live only</source>
        <translation>solo vivo</translation>
    </message>
    <message>
        <source>hot only</source>
        <translation>solo caliente</translation>
    </message>
    <message>
        <source>chilled</source>
        <translation>frío</translation>
    </message>
    <message>
        <source>sides</source>
        <translation>medias canales</translation>
    </message>
    <message>
        <source>whole carcass</source>
        <translation>canal entera</translation>
    </message>
    <message>
        <source>quarters</source>
        <translation>cuartos</translation>
    </message>
    <message>
        <source>&amp;Live</source>
        <translation>&amp;Vivo</translation>
    </message>
    <message>
        <source>H&amp;ot, whole</source>
        <translation>Ca&amp;liente, entera</translation>
    </message>
    <message>
        <source>Chilled, wh&amp;ole</source>
        <translation>&amp;Frío, entera</translation>
    </message>
    <message>
        <source>Side {side}, fore</source>
        <translation>Media canal {side}, delantero</translation>
    </message>
    <message>
        <source>Side {side}, hind</source>
        <translation>Media canal {side}, trasero</translation>
    </message>
    <message>
        <source>Hot, side &amp;{side}</source>
        <translation>Caliente, media canal &amp;{side}</translation>
    </message>
    <message>
        <source>Chilled, side &amp;{side}</source>
        <translation>Frío, media canal &amp;{side}</translation>
    </message>
</context>
<context>
    <name>Weights</name>
    <message>
        <source>&amp;Weighed by</source>
        <translation>Pe&amp;sado por</translation>
    </message>
    <message>
        <source>Without a live weight there is no dressing figure.</source>
        <translation>Sin el peso vivo no hay rendimiento.</translation>
    </message>
    <message>
        <source>A weight is more than nothing.</source>
        <translation>Un peso es más que nada.</translation>
    </message>
    <message>
        <source>Less than what it hangs on weighs.</source>
        <translation>Menos de lo que pesa aquello de que cuelga.</translation>
    </message>
    <message>
        <source>Weigh it again.</source>
        <translation>Péselo otra vez.</translation>
    </message>
    <message>
        <source>Another station has weighed this one. Open it again.</source>
        <translation>Otra estación ya lo pesó. Ábralo otra vez.</translation>
    </message>
</context>
<context>
    <name>WeightsDialog</name>
    <message>
        <source>Weights of the day</source>
        <translation>Pesos del día</translation>
    </message>
    <message>
        <source>Every share of the day, weighed or not. A note goes out in its owner&apos;s language; log each as told, as you would a call.</source>
        <translation>Cada parte del día, pesada o no. La nota sale en el idioma de su dueño; anote cada una como avisada, igual que una llamada.</translation>
    </message>
    <message>
        <source>&amp;Log as told</source>
        <translation>A&amp;notar como avisado</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>C&amp;errar</translation>
    </message>
    <message>
        <source>&amp;Day of the kill</source>
        <translation>&amp;Día de matanza</translation>
    </message>
    <message>
        <source>Price in the note</source>
        <translation>Precio en la nota</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>the estimate so far</source>
        <translation>la estimación hasta ahora</translation>
    </message>
    <message>
        <source>&amp;Told by</source>
        <translation>A&amp;visado por</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>Shares of the day</source>
        <translation>Partes del día</translation>
    </message>
    <message>
        <source>&amp;Print all notes  Ctrl+P</source>
        <translation>&amp;Imprimir todas las notas  Ctrl+P</translation>
    </message>
    <message>
        <source>Print thi&amp;s one  Ctrl+Shift+P</source>
        <translation>Imprimir e&amp;sta  Ctrl+Mayús+P</translation>
    </message>
    <message>
        <source>Write a &amp;mail  F7</source>
        <translation>Escribir un &amp;correo  F7</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Leyendo</translation>
    </message>
    <message>
        <source>Choose the share whose owner was told.</source>
        <translation>Elija la parte cuyo dueño fue avisado.</translation>
    </message>
    <message>
        <source>“{address}” can&apos;t be read as a mail address: print the note or ring.</source>
        <translation>“{address}” no se puede leer como dirección de correo: imprima la nota o llame.</translation>
    </message>
    <message>
        <source>{owner} has no mail address kept: print the note or ring.</source>
        <translation>{owner} no tiene correo guardado: imprima la nota o llame.</translation>
    </message>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>This computer has no mail program set up: print the note.</source>
        <translation>Esta computadora no tiene programa de correo: imprima la nota.</translation>
    </message>
    <message>
        <source>Too long for a mail&apos;s link: it is shorter than the printed note.</source>
        <translation>No cabe entera en el correo: va más corta que la nota impresa.</translation>
    </message>
    <message>
        <source>No animal was killed or is to be on this day.</source>
        <translation>Ningún animal se sacrificó ni se sacrificará este día.</translation>
    </message>
    <message>
        <source>Told before, and weighed otherwise since: tell it again.</source>
        <translation>Avisado antes, y pesado distinto después: avise otra vez.</translation>
    </message>
    <message>
        <source>mail</source>
        <translation>correo</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>phone or in person</source>
        <translation>teléfono o en persona</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Cuelga</translation>
    </message>
    <message>
        <source>How it was found</source>
        <translation>Cómo se supo</translation>
    </message>
    <message>
        <source>Mail</source>
        <translation>Correo</translation>
    </message>
    <message>
        <source>no address</source>
        <translation>sin dirección</translation>
    </message>
    <message>
        <source>Told</source>
        <translation>Avisado</translation>
    </message>
</context>
<context>
    <name>Wrap</name>
    <message>
        <source>Is it ready all the same? Why?</source>
        <translation>¿Está lista de todos modos? ¿Por qué?</translation>
    </message>
    <message>
        <source>Not all is packed</source>
        <translation>No todo está empacado</translation>
    </message>
    <message>
        <source>Order {number}: packages made {made}, planned {planned}.</source>
        <translation>Orden {number}: paquetes hechos {made}, planeados {planned}.</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>y {count} más</translation>
    </message>
    <message>
        <source>Nothing was packed of: {lines}.</source>
        <translation>No se empacó nada de: {lines}.</translation>
    </message>
    <message>
        <source>Packages of order {number} without a label yet: {count}.</source>
        <translation>Paquetes de la orden {number} aún sin etiqueta: {count}.</translation>
    </message>
</context>
<context>
    <name>WrapPlace</name>
    <message>
        <source>Wrap</source>
        <translation>Empaque</translation>
    </message>
    <message>
        <source>Nothing to wrap</source>
        <translation>Nada que empacar</translation>
    </message>
    <message>
        <source>An order comes here once its block sheet is released. Each package is weighed and labeled here, and counted beside what was planned.</source>
        <translation>La orden llega aquí cuando su hoja pasa a la mesa. Cada paquete se pesa y se etiqueta aquí, y se cuenta junto a lo planeado.</translation>
    </message>
    <message>
        <source>Order (F&amp;7)</source>
        <translation>Orden (F&amp;7)</translation>
    </message>
    <message>
        <source>Type a number or an owner</source>
        <translation>Escriba un número o un dueño</translation>
    </message>
    <message>
        <source>Lines of the order</source>
        <translation>Líneas de la orden</translation>
    </message>
    <message>
        <source>{made} made, {pounds}; {planned} planned</source>
        <translation>{made} hechos, {pounds}; {planned} planeados</translation>
    </message>
    <message>
        <source>Choose a line of the order first.</source>
        <translation>Escoja primero una línea de la orden.</translation>
    </message>
    <message>
        <source>An odd package needs its reason: F8.</source>
        <translation>Un paquete fuera de orden lleva su motivo: F8.</translation>
    </message>
    <message>
        <source>Choose an order first.</source>
        <translation>Escoja primero una orden.</translation>
    </message>
    <message>
        <source>Choose a package first.</source>
        <translation>Escoja primero un paquete.</translation>
    </message>
    <message>
        <source>A void package has no label.</source>
        <translation>Un paquete anulado no tiene etiqueta.</translation>
    </message>
    <message>
        <source>{made} made, {counted} of them by count, {pounds}; {planned} planned</source>
        <translation>{made} hechos, {counted} de ellos por conteo, {pounds}; {planned} planeados</translation>
    </message>
    <message>
        <source>Wrapped by count: there is no label.</source>
        <translation>Empacado por conteo: no hay etiqueta.</translation>
    </message>
    <message>
        <source>Back to wrapping</source>
        <translation>Volver a empaque</translation>
    </message>
    <message>
        <source>The order is wrapped again. Why?</source>
        <translation>La orden se empaca otra vez. ¿Por qué?</translation>
    </message>
</context>
<context>
    <name>WrapTable</name>
    <message>
        <source>to be named</source>
        <translation>por nombrar</translation>
    </message>
    <message>
        <source>At the block</source>
        <translation>En la mesa</translation>
    </message>
    <message>
        <source>Cut, being wrapped</source>
        <translation>Cortada, en empaque</translation>
    </message>
    <message>
        <source>Ready to hand over</source>
        <translation>Lista para entregar</translation>
    </message>
    <message>
        <source>{packages} without label.</source>
        <translation>{packages} sin etiqueta.</translation>
    </message>
    <message>
        <source>{count} counted packages of {product} weigh {net} together.</source>
        <translation>{count} paquetes contados de {product} pesan juntos {net}.</translation>
    </message>
    <message>
        <source>Count of {count} void.</source>
        <translation>Conteo de {count} anulado.</translation>
    </message>
    <message>
        <source>Package {number}</source>
        <translation>Paquete {number}</translation>
    </message>
    <message>
        <source>Packages {first}–{last}</source>
        <translation>Paquetes {first}–{last}</translation>
    </message>
    <message>
        <source>{packages} void.</source>
        <translation>Anulado: {packages}.</translation>
    </message>
    <message>
        <source>The block has not cut this order yet; it is marked cut there first.</source>
        <translation>La mesa no ha cortado esta orden; primero se marca cortada allá.</translation>
    </message>
    <message>
        <source>{who} has changed this order; it is read again.</source>
        <translation>{who} cambió esta orden; se lee otra vez.</translation>
    </message>
    <message>
        <source>That step needs a reason, or the order is not as far as that.</source>
        <translation>Ese paso necesita un motivo, o la orden no ha llegado a eso.</translation>
    </message>
    <message>
        <source>Order {number} is ready to hand over.</source>
        <translation>La orden {number} está lista para entregar.</translation>
    </message>
    <message>
        <source>Order {number} is back at wrapping.</source>
        <translation>La orden {number} volvió a empaque.</translation>
    </message>
    <message>
        <source>No label is left to be printed.</source>
        <translation>No queda ninguna etiqueta por imprimir.</translation>
    </message>
    <message>
        <source>{count} labels printed.</source>
        <translation>{count} etiquetas impresas.</translation>
    </message>
    <message>
        <source>{printer} printed no label; {count} packages are still without.</source>
        <translation>{printer} no imprimió etiquetas; {count} paquetes siguen sin etiqueta.</translation>
    </message>
    <message>
        <source>{packages} kept. No label printer is set; F9 shows the label.</source>
        <translation>Guardado: {packages}. No hay impresora de etiquetas; F9 muestra la etiqueta.</translation>
    </message>
    <message>
        <source>{packages} kept, label printed.</source>
        <translation>Guardado e impreso: {packages}.</translation>
    </message>
    <message>
        <source>At most {most} packages in one stroke.</source>
        <translation>A lo más {most} paquetes de una vez.</translation>
    </message>
    <message>
        <source>It was handed over already.</source>
        <translation>Ya se entregó.</translation>
    </message>
    <message>
        <source>Nothing of that line was wrapped by count.</source>
        <translation>De esa línea no se empacó nada por conteo.</translation>
    </message>
    <message>
        <source>This order is ready: only what came out of a batch is packed on it. Take it back to wrapping for anything else.</source>
        <translation>Esta orden está lista: en ella solo se empaca lo que salió de una tanda. Para lo demás, regrésela al empaque.</translation>
    </message>
    <message>
        <source>Label {number}</source>
        <translation>Etiqueta {number}</translation>
    </message>
    <message>
        <source>Kept by count: {count}, {product}.</source>
        <translation>Guardado por conteo: {count}, {product}.</translation>
    </message>
    <message>
        <source>Labels {first}–{last}</source>
        <translation>Etiquetas {first}–{last}</translation>
    </message>
    <message>
        <source>Package counts, order {number}</source>
        <translation>Cuenta de paquetes, orden {number}</translation>
    </message>
    <message>
        <source>{packages} kept, but {printer} printed no label; Ctrl+F9 prints it.</source>
        <translation>{packages} guardados, pero {printer} no imprimió etiqueta; Ctrl+F9 la imprime.</translation>
    </message>
    <message>
        <source>A package weighs more than nothing.</source>
        <translation>Un paquete pesa más que nada.</translation>
    </message>
    <message>
        <source>Say why.</source>
        <translation>Diga por qué.</translation>
    </message>
    <message>
        <source>That line is no longer on the order; read it again.</source>
        <translation>Esa línea ya no está en la orden; léala otra vez.</translation>
    </message>
    <message>
        <source>This order is weighed: the shop or its regime asks for it.</source>
        <translation>Esta orden se pesa: lo pide la planta o su régimen.</translation>
    </message>
    <message>
        <source>That package is void already.</source>
        <translation>Ese paquete ya está anulado.</translation>
    </message>
    <message>
        <source>It can&apos;t be kept.</source>
        <translation>No se puede guardar.</translation>
    </message>
    <message>
        <source>This order was handed over; nothing more is put on it.</source>
        <translation>Esta orden ya se entregó; no se le agrega nada más.</translation>
    </message>
    <message>
        <source>The block does not have this order; nothing is wrapped for it.</source>
        <translation>La mesa no tiene esta orden; nada se empaca para ella.</translation>
    </message>
</context>
<context>
    <name>_Correction</name>
    <message>
        <source>Correct {degrees}</source>
        <translation>Corregir {degrees}</translation>
    </message>
    <message>
        <source>The first reading stays in the record.</source>
        <translation>La primera lectura queda en el registro.</translation>
    </message>
    <message>
        <source>&amp;Correct it</source>
        <translation>&amp;Corregirla</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Temperature, °F</source>
        <translation>&amp;Temperatura, °F</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Por qué</translation>
    </message>
    <message>
        <source>A temperature, like 38 or 3.5 C.</source>
        <translation>Una temperatura, como 38 o 3.5 C.</translation>
    </message>
    <message>
        <source>Type what it was.</source>
        <translation>Escriba cuál era.</translation>
    </message>
    <message>
        <source>It has been corrected already. Look again.</source>
        <translation>Ya se corrigió. Mire otra vez.</translation>
    </message>
</context>
<context>
    <name>_HookDialog</name>
    <message>
        <source>Tag {tag} hangs at</source>
        <translation>El arete {tag} cuelga en</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Rail and hook</source>
        <translation>&amp;Riel y gancho</translation>
    </message>
    <message>
        <source>Another station has changed this animal. Look again.</source>
        <translation>Otra estación cambió este animal. Mire otra vez.</translation>
    </message>
</context>
<context>
    <name>_Limits</name>
    <message>
        <source>Limits of a room</source>
        <translation>Límites de una cámara</translation>
    </message>
    <message>
        <source>Your own, as your plan and your inspector have them.</source>
        <translation>Los suyos, como los tienen su plan y su inspector.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>R&amp;oom</source>
        <translation>&amp;Cámara</translation>
    </message>
    <message>
        <source>&amp;Not below</source>
        <translation>&amp;No menos de</translation>
    </message>
    <message>
        <source>Not &amp;above</source>
        <translation>No &amp;más de</translation>
    </message>
    <message>
        <source>A temperature, like 38 or 3.5 C.</source>
        <translation>Una temperatura, como 38 o 3.5 C.</translation>
    </message>
    <message>
        <source>Type it as you read it.</source>
        <translation>Escríbala como la leyó.</translation>
    </message>
    <message>
        <source>The lowest is above the highest.</source>
        <translation>La más baja pasa de la más alta.</translation>
    </message>
    <message>
        <source>Change one of them.</source>
        <translation>Cambie una de ellas.</translation>
    </message>
</context>
<context>
    <name>_WishDialog</name>
    <message>
        <source>How long tag {tag} hangs</source>
        <translation>Cuánto cuelga el arete {tag}</translation>
    </message>
    <message>
        <source>The house hangs it {low} to {high} days. The longest wish holds.</source>
        <translation>La casa lo cuelga de {low} a {high} días. Vale el deseo más largo.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>De&amp;jarlo</translation>
    </message>
    <message>
        <source>&amp;Owner</source>
        <translation>&amp;Dueño</translation>
    </message>
    <message>
        <source>&amp;Days; empty: as usual</source>
        <translation>Dí&amp;as; vacío: como siempre</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
</context>
</TS>
