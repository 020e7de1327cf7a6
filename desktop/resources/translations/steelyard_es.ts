<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_US">
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
        <source>Choose an animal in the list.</source>
        <translation>Escoja un animal de la lista.</translation>
    </message>
    <message>
        <source>&amp;Check in</source>
        <translation>&amp;Recibir</translation>
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
        <source>lot {number}</source>
        <translation>lote {number}</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>inspeccionado</translation>
    </message>
    <message>
        <source>custom, not for sale</source>
        <translation>para el dueño, no se vende</translation>
    </message>
    <message>
        <source>side {side}</source>
        <translation>lado {side}</translation>
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
    <name>AnimalStates</name>
    <message>
        <source>refused</source>
        <translation>rechazado</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
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
        <source>H&amp;eld</source>
        <translation>R&amp;etenido</translation>
    </message>
    <message>
        <source>Con&amp;demned</source>
        <translation>&amp;Decomisado</translation>
    </message>
    <message>
        <source>&amp;Refuse it</source>
        <translation>Recha&amp;zarlo</translation>
    </message>
    <message>
        <source>&amp;Hang it</source>
        <translation>Co&amp;lgarlo</translation>
    </message>
    <message>
        <source>Release from hold</source>
        <translation>Soltar lo retenido</translation>
    </message>
    <message>
        <source>Why does it go back?</source>
        <translation>¿Por qué regresa?</translation>
    </message>
    <message>
        <source>Why did the inspector hold it?</source>
        <translation>¿Por qué lo retuvo el inspector?</translation>
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
        <source>Take-home {low} to {high}</source>
        <translation>Se lleva de {low} a {high}</translation>
    </message>
    <message>
        <source>Packages {count}</source>
        <translation>Paquetes {count}</translation>
    </message>
    <message>
        <source>What would work, by Alt and its number:</source>
        <translation>Lo que sí se puede, con Alt y su número:</translation>
    </message>
    <message>
        <source>Alt+{number}</source>
        <translation>Alt+{number}</translation>
    </message>
    <message>
        <source>{names} and {count} more</source>
        <translation>{names} y {count} más</translation>
    </message>
    <message>
        <source>Still open: {names}. F9 cuts them as usual.</source>
        <translation>Falta decidir: {names}. F9 lo corta como de costumbre.</translation>
    </message>
</context>
<context>
    <name>BalancesPage</name>
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
        <translation>Facturado</translation>
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
        <translation>&amp;Emitir (Ctrl+Enter)</translation>
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
        <source>C&amp;lose order</source>
        <translation>Cerrar &amp;orden</translation>
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
        <translation>Sin entregar a la mesa: {owner}. Deje entera esa parte.</translation>
    </message>
    <message>
        <source>{owner} has changed the order since sheet {number}; ask the counter first.</source>
        <translation>{owner} cambió la orden después de la hoja {number}; pregunte primero en el mostrador.</translation>
    </message>
    <message>
        <source>No longer stands: {what}</source>
        <translation>Ya no vale: {what}</translation>
    </message>
    <message>
        <source>Custom: every package is marked NOT FOR SALE.</source>
        <translation>Para el dueño: cada paquete se marca NOT FOR SALE (no se vende).</translation>
    </message>
    <message>
        <source>{owner}: {note}</source>
        <translation>{owner}: {note}</translation>
    </message>
    <message>
        <source>side {side}</source>
        <translation>lado {side}</translation>
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
        <source>{weight} each</source>
        <translation>{weight} cada pieza</translation>
    </message>
    <message>
        <source>{ribs} ribs</source>
        <translation>{ribs} costillas</translation>
    </message>
    <message>
        <source>of both sides or the animal</source>
        <translation>de los dos lados o del animal</translation>
    </message>
    <message>
        <source>about {pounds}</source>
        <translation>unas {pounds}</translation>
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
        <translation>Enter abre una canal. La hoja nueva se lee antes del cuchillo.</translation>
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
        <translation>Aquí están las canales ya colgadas (Riel, F3) cuya hoja fue entregada (Mostrador, F2).</translation>
    </message>
    <message>
        <source>Block sheet {number}, lot {lot}</source>
        <translation>Hoja de mesa {number}, lote {lot}</translation>
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
        <source>Go back</source>
        <translation>Volver</translation>
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
        <source>Leave</source>
        <translation>Dejarlo</translation>
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
        <translation>&amp;Día de la matanza</translation>
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
        <source>S&amp;kinned or scalded</source>
        <translation>Desollado o &amp;escaldado</translation>
    </message>
    <message>
        <source>Hanging &amp;weight, a guess</source>
        <translation>Peso &amp;colgado, un cálculo</translation>
    </message>
    <message>
        <source>&amp;Keeps hide, offal</source>
        <translation>Se &amp;queda cuero, vísceras</translation>
    </message>
    <message>
        <source>&amp;Shared as</source>
        <translation>Co&amp;mpartido como</translation>
    </message>
    <message>
        <source>Deposit asked of &amp;each</source>
        <translation>Anticipo de &amp;cada uno</translation>
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
        <source>This can&apos;t be booked as it stands.</source>
        <translation>Así como está no se puede apartar.</translation>
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
        <translation>cuatro cuartos: delantero y trasero de cada lado</translation>
    </message>
    <message>
        <source>one half, a forequarter and a hindquarter</source>
        <translation>una mitad, un cuarto delantero y un cuarto trasero</translation>
    </message>
    <message>
        <source>four split quarters: each side shared by two</source>
        <translation>cuatro cuartos parejos: cada lado entre dos</translation>
    </message>
    <message>
        <source>each animal its own owner</source>
        <translation>cada animal con su dueño</translation>
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
        <source>Check &amp;in</source>
        <translation>Rec&amp;ibir</translation>
    </message>
    <message>
        <source>&amp;Keep it</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
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
        <source>S&amp;kin</source>
        <translation>C&amp;uero</translation>
    </message>
    <message>
        <source>Age is read from the teeth and the papers; the inspector decides. Not known is cut as 30 months and over: no backbone goes to the owner.</source>
        <translation>La edad se lee en los dientes y los papeles; decide el inspector. Si no se sabe, se corta como de 30 meses o más: al dueño no le va espinazo.</translation>
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
        <translation>&amp;Dejarlo</translation>
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
        <source>The order changed meanwhile: look again and release it.</source>
        <translation>La orden cambió mientras tanto: mírela otra vez y entréguela a la mesa.</translation>
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
        <source>The counter has nothing to take back here.</source>
        <translation>El mostrador no tiene nada que regresar aquí.</translation>
    </message>
    <message>
        <source>Take the order back</source>
        <translation>Regresar la orden</translation>
    </message>
    <message>
        <source>Why does it go back to {state}?</source>
        <translation>¿Por qué vuelve a «{state}»?</translation>
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
        <translation>&amp;Dejarlo</translation>
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
        <translation>&amp;Cantidad, si no es toda la línea</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Choose the line the amount is of.</source>
        <translation>Escoja la línea de la cantidad.</translation>
    </message>
</context>
<context>
    <name>CuresDialog</name>
    <message>
        <source>Cures and seasonings</source>
        <translation>Curas y sazones</translation>
    </message>
    <message>
        <source>As the packet or recipe has them, commas between. Write - under allergens where there are none; left empty means not known, and no label is printed.</source>
        <translation>Como lo dice el empaque o la receta, con comas. Escriba - en alérgenos si no hay; vacío es que no se sabe, y no se imprime etiqueta.</translation>
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
        <source>{name}: made of</source>
        <translation>{name}: hecho de</translation>
    </message>
    <message>
        <source>{name}: allergens</source>
        <translation>{name}: alérgenos</translation>
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
        <source>{known} is known already, with the same name.</source>
        <translation>{known} ya está anotado, con el mismo nombre.</translation>
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
    <name>CuttingView</name>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
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
        <source>I have &amp;read sheet {number}</source>
        <translation>Ya &amp;leí la hoja {number}</translation>
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
        <translation>lado {side}, {primal}</translation>
    </message>
</context>
<context>
    <name>DateField</name>
    <message>
        <source>Steelyard reads days like 12/3, Dec 3, friday, tomorrow or +7; it can&apos;t read “{text}”.</source>
        <translation>Steelyard lee días como 12/3, Dec 3, friday, tomorrow o +7; no puede leer “{text}”.</translation>
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
</context>
<context>
    <name>Field</name>
    <message>
        <source>Fill this in.</source>
        <translation>Llene esto.</translation>
    </message>
</context>
<context>
    <name>FindBox</name>
    <message>
        <source>Find (Ctrl+F)</source>
        <translation>Buscar (Ctrl+F)</translation>
    </message>
    <message>
        <source>Any part of a name, tag, number or phone</source>
        <translation>Parte de un nombre, arete, número o teléfono</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
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
        <source>Leave</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Fetched by, if another</source>
        <translation>&amp;Lo recoge, si es otro</translation>
    </message>
    <message>
        <source>&amp;Why it leaves unpaid</source>
        <translation>&amp;Por qué sale sin pagar</translation>
    </message>
    <message>
        <source>Packages made</source>
        <translation>Paquetes hechos</translation>
    </message>
    <message>
        <source>It isn&apos;t ready, or another station has changed it: look again.</source>
        <translation>No está lista, u otra estación la cambió: mire otra vez.</translation>
    </message>
    <message>
        <source>No bill yet.</source>
        <translation>Todavía no hay cuenta.</translation>
    </message>
    <message>
        <source>Billed {billed}, paid {paid}, due {due}.</source>
        <translation>Cuenta {billed}, pagado {paid}, se debe {due}.</translation>
    </message>
    <message>
        <source>Package</source>
        <translation>Paquete</translation>
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
        <source>State</source>
        <translation>Estado</translation>
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
        <source>Keep the &amp;line</source>
        <translation>&amp;Guardar la línea</translation>
    </message>
    <message>
        <source>Put it on the &amp;order</source>
        <translation>Ponerlo en la &amp;orden</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Dejarlo</translation>
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
        <translation>&amp;Fracción de cada lado</translation>
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
        <translation>C&amp;ostillas</translation>
    </message>
    <message>
        <source>L&amp;ean, per cent</source>
        <translation>&amp;Magra, por ciento</translation>
    </message>
    <message>
        <source>Cut &amp;from</source>
        <translation>C&amp;ortar de</translation>
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
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Part</source>
        <translation>&amp;Parte</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>&amp;Lado</translation>
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
        <source>Re&amp;ason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Side 1</source>
        <translation>Lado 1</translation>
    </message>
    <message>
        <source>Side 2</source>
        <translation>Lado 2</translation>
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
        <source>Say which side.</source>
        <translation>Diga de qué lado.</translation>
    </message>
    <message>
        <source>There is one to an animal.</source>
        <translation>Hay uno por animal.</translation>
    </message>
    <message>
        <source>Say why.</source>
        <translation>Diga por qué.</translation>
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
    <name>MoneyDialog</name>
    <message>
        <source>Money</source>
        <translation>Dinero</translation>
    </message>
    <message>
        <source>Cash above what is due comes back as change.</source>
        <translation>Lo que pase de lo que se debe, en efectivo, regresa como cambio.</translation>
    </message>
    <message>
        <source>&amp;Keep it</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>&amp;Cantidad</translation>
    </message>
    <message>
        <source>&amp;Means</source>
        <translation>&amp;Forma de pago</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>&amp;Qué es</translation>
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
        <translation>perdonado</translation>
    </message>
    <message>
        <source>Say the amount and how it was paid.</source>
        <translation>Diga la cantidad y cómo se pagó.</translation>
    </message>
</context>
<context>
    <name>MoneyField</name>
    <message>
        <source>An amount can&apos;t be below nothing.</source>
        <translation>Una cantidad no puede ser menos que nada.</translation>
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
        <translation>Steelyard lee cantidades como $1,250.00 o 12.50; no puede leer “{text}”.</translation>
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
        <source>Leave</source>
        <translation>Dejarlo</translation>
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
        <translation>Los dueños de un animal que no se vende se fijan antes de la matanza.</translation>
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
        <translation>&amp;Dejarlo</translation>
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
        <source>Parts of the office</source>
        <translation>Partes de la oficina</translation>
    </message>
</context>
<context>
    <name>OrderList</name>
    <message>
        <source>&amp;Find an owner, tag or number</source>
        <translation>&amp;Busque un dueño, arete o número</translation>
    </message>
    <message>
        <source>C&amp;losed orders too</source>
        <translation>Ta&amp;mbién las cerradas</translation>
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
        <source>to be named</source>
        <translation>por nombrar</translation>
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
        <source>Leave</source>
        <translation>Dejarlo</translation>
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
        <source>{name} has just changed this order: look again.</source>
        <translation>{name} acaba de cambiar esta orden: mire otra vez.</translation>
    </message>
</context>
<context>
    <name>OrderPapers</name>
    <message>
        <source>Confirmation of order {number}</source>
        <translation>Confirmación de la orden {number}</translation>
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
        <source>tight</source>
        <translation>justo</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>decidido</translation>
    </message>
</context>
<context>
    <name>OrderView</name>
    <message>
        <source>Orders  Esc</source>
        <translation>Órdenes  Esc</translation>
    </message>
    <message>
        <source>House&apos;s usual  F9</source>
        <translation>De costumbre  F9</translation>
    </message>
    <message>
        <source>Payment  F7</source>
        <translation>Pago  F7</translation>
    </message>
    <message>
        <source>Confirm  Ctrl+P</source>
        <translation>Confirmar  Ctrl+P</translation>
    </message>
    <message>
        <source>Note  F12</source>
        <translation>Nota  F12</translation>
    </message>
    <message>
        <source>Owner  F11</source>
        <translation>Dueño  F11</translation>
    </message>
    <message>
        <source>Settle  Ctrl+Enter</source>
        <translation>Completar  Ctrl+Enter</translation>
    </message>
    <message>
        <source>The order by primal</source>
        <translation>La orden por primal</translation>
    </message>
    <message>
        <source>{count} lines as usual. Ctrl+Z takes them back.</source>
        <translation>{count} líneas como de costumbre. Ctrl+Z las quita.</translation>
    </message>
    <message>
        <source>Nothing is open that the usual would fill.</source>
        <translation>No falta nada que la costumbre pueda llenar.</translation>
    </message>
    <message>
        <source>Order {number}</source>
        <translation>Orden {number}</translation>
    </message>
    <message>
        <source>changed since sheet {n}</source>
        <translation>cambiada desde la hoja {n}</translation>
    </message>
    <message>
        <source>tag {tags}</source>
        <translation>arete {tags}</translation>
    </message>
    <message>
        <source>Hanging {weight}, the whole lot, by {basis}</source>
        <translation>Colgado {weight}, todo el lote, por {basis}</translation>
    </message>
    <message>
        <source>No rates for this yet</source>
        <translation>Todavía no hay precios para esto</translation>
    </message>
    <message>
        <source>About {amount} by the rates</source>
        <translation>Cerca de {amount} según los precios</translation>
    </message>
    <message>
        <source>Release to the block  Ctrl+Enter</source>
        <translation>Entregar a la mesa  Ctrl+Enter</translation>
    </message>
    <message>
        <source>Release a new sheet  Ctrl+Enter</source>
        <translation>Entregar hoja nueva  Ctrl+Enter</translation>
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
    <name>PackagesPanel</name>
    <message>
        <source>Packages</source>
        <translation>Paquetes</translation>
    </message>
    <message>
        <source>Show &amp;label (F9)</source>
        <translation>Ver e&amp;tiqueta (F9)</translation>
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
        <translation>&amp;Cuenta (Ctrl+P)</translation>
    </message>
    <message>
        <source>&amp;Ready (Ctrl+Enter)</source>
        <translation>&amp;Lista (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>&amp;Back to wrapping…</source>
        <translation>&amp;Volver a empaque…</translation>
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
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>void</source>
        <translation>anulado</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>guardado</translation>
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
        <translation>Tomar un anticipo</translation>
    </message>
    <message>
        <source>Take a payment</source>
        <translation>Tomar un pago</translation>
    </message>
    <message>
        <source>Order {number}, {owner}. {asked}</source>
        <translation>Orden {number}, {owner}. {asked}</translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation>&amp;Tomarlo</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>&amp;Cantidad</translation>
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
        <source>The amount has to be above nothing.</source>
        <translation>La cantidad debe ser más que nada.</translation>
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
        <translation>&amp;Dejarlo</translation>
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
        <source>It was not saved: {path} can&apos;t be written ({why}).</source>
        <translation>No se guardó: no se puede escribir {path} ({why}).</translation>
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
        <source>cut, condemned, refused</source>
        <translation>cortados o fuera</translation>
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
        <source>No tag</source>
        <translation>Sin arete</translation>
    </message>
    <message>
        <source>The owners&apos; names don&apos;t fit on one tag.</source>
        <translation>Los nombres de los dueños no caben en una etiqueta.</translation>
    </message>
    <message>
        <source>Tag {tag}</source>
        <translation>Arete {tag}</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Tell the owners</source>
        <translation>Avisar a los dueños</translation>
    </message>
    <message>
        <source>Nothing of tag {tag} will be cut. Tell {owners}.</source>
        <translation>Del arete {tag} no se cortará nada. Avise a {owners}.</translation>
    </message>
    <message>
        <source>Recorded. Every choice still stands.</source>
        <translation>Anotado. Todo lo pedido sigue en pie.</translation>
    </message>
    <message>
        <source>The counter (F2) must release a new block sheet.</source>
        <translation>El mostrador (F2) debe entregar una hoja de mesa nueva.</translation>
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
        <source>Not changed</source>
        <translation>No se cambió</translation>
    </message>
    <message>
        <source>Another station has changed this animal. Look again and repeat it.</source>
        <translation>Otra estación cambió este animal. Mire otra vez y repítalo.</translation>
    </message>
</context>
<context>
    <name>RateCardDialog</name>
    <message>
        <source>New rate card</source>
        <translation>Tarifa nueva</translation>
    </message>
    <message>
        <source>Leave empty what the shop doesn&apos;t charge.</source>
        <translation>Deje vacío lo que la planta no cobra.</translation>
    </message>
    <message>
        <source>&amp;Keep card</source>
        <translation>&amp;Guardar tarifa</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Dejarlo</translation>
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
        <source>all animals</source>
        <translation>todos los animales</translation>
    </message>
    <message>
        <source>Kill is &amp;paid by</source>
        <translation>La matanza la &amp;paga</translation>
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
        <source>&amp;Cut and wrap goes by</source>
        <translation>&amp;Corte y empaque va por</translation>
    </message>
    <message>
        <source>Cut and wrap, lea&amp;st an animal</source>
        <translation>Corte y empaque, lo &amp;menos por animal</translation>
    </message>
    <message>
        <source>per lb hanging</source>
        <translation>por lb colgado</translation>
    </message>
    <message>
        <source>Say the card&apos;s name and day.</source>
        <translation>Diga el nombre y el día de la tarifa.</translation>
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
        <source>Rate cards</source>
        <translation>Tarifas</translation>
    </message>
    <message>
        <source>Charges of the card</source>
        <translation>Cobros de la tarifa</translation>
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
        <translation>Cobros</translation>
    </message>
    <message>
        <source>all animals</source>
        <translation>todos los animales</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Cobro</translation>
    </message>
    <message>
        <source>Charged</source>
        <translation>Cobrado por</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Minimum</source>
        <translation>Mínimo</translation>
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
        <translation>Aquí no hay nada suyo que regresar.</translation>
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
        <source>The owners have to agree first.</source>
        <translation>Primero tienen que ponerse de acuerdo los dueños.</translation>
    </message>
    <message>
        <source>Still open: {names}. F9 cuts it as usual.</source>
        <translation>Falta decidir: {names}. F9 lo corta como de costumbre.</translation>
    </message>
    <message>
        <source>Nothing is asked for yet.</source>
        <translation>Todavía no se pide nada.</translation>
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
        <source>&amp;Net weight</source>
        <translation>Peso &amp;neto</translation>
    </message>
    <message>
        <source>&amp;Gross weight</source>
        <translation>Peso &amp;bruto</translation>
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
        <translation>cuarto delantero, lado {side}</translation>
    </message>
    <message>
        <source>hindquarter, side {side}</source>
        <translation>cuarto trasero, lado {side}</translation>
    </message>
    <message>
        <source>half, side {side}</source>
        <translation>mitad, lado {side}</translation>
    </message>
    <message>
        <source>split quarter, of side {side}</source>
        <translation>cuarto parejo, del lado {side}</translation>
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
        <translation>Parte del cuarto &amp;delantero en un lado, %</translation>
    </message>
    <message>
        <source>as the species&apos; table has it</source>
        <translation>según la tabla de la especie</translation>
    </message>
    <message>
        <source>&amp;Keep (Ctrl+S)</source>
        <translation>&amp;Guardar (Ctrl+S)</translation>
    </message>
    <message>
        <source>&amp;Cures and seasonings…</source>
        <translation>C&amp;uras y sazones…</translation>
    </message>
    <message>
        <source>A part of a side lies between 0 and 100 %, as in 52.</source>
        <translation>La parte de un lado queda entre 0 y 100 %, por ejemplo 52.</translation>
    </message>
    <message>
        <source>{who} has changed this meanwhile; it is read again.</source>
        <translation>{who} cambió esto mientras tanto; se lee otra vez.</translation>
    </message>
    <message>
        <source>The shop&apos;s details are kept.</source>
        <translation>Se guardaron los datos de la planta.</translation>
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
        <translation>&amp;Dejarlo</translation>
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
    <name>TextField</name>
    <message>
        <source>{most} letters fit here; these are {found}.</source>
        <translation>Aquí caben {most} letras; estas son {found}.</translation>
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
        <translation>Caliente, lado 1</translation>
    </message>
    <message>
        <source>Hot, side 2</source>
        <translation>Caliente, lado 2</translation>
    </message>
    <message>
        <source>Hot, side 1 fore</source>
        <translation>Caliente, lado 1 delantero</translation>
    </message>
    <message>
        <source>Hot, side 1 hind</source>
        <translation>Caliente, lado 1 trasero</translation>
    </message>
    <message>
        <source>Hot, side 2 fore</source>
        <translation>Caliente, lado 2 delantero</translation>
    </message>
    <message>
        <source>Hot, side 2 hind</source>
        <translation>Caliente, lado 2 trasero</translation>
    </message>
    <message>
        <source>Chilled</source>
        <translation>Frío</translation>
    </message>
</context>
<context>
    <name>Weights</name>
    <message>
        <source>Hot &amp;weight by</source>
        <translation>&amp;Peso caliente por</translation>
    </message>
    <message>
        <source>sides</source>
        <translation>lados</translation>
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
        <source>Hot, side &amp;1</source>
        <translation>Caliente, lado &amp;1</translation>
    </message>
    <message>
        <source>Hot, side &amp;2</source>
        <translation>Caliente, lado &amp;2</translation>
    </message>
    <message>
        <source>Side 1, fore</source>
        <translation>Lado 1, delantero</translation>
    </message>
    <message>
        <source>Side 1, hind</source>
        <translation>Lado 1, trasero</translation>
    </message>
    <message>
        <source>Side 2, fore</source>
        <translation>Lado 2, delantero</translation>
    </message>
    <message>
        <source>Side 2, hind</source>
        <translation>Lado 2, trasero</translation>
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
        <source>Weigh it again.</source>
        <translation>Péselo otra vez.</translation>
    </message>
    <message>
        <source>Another station has weighed this one. Open it again.</source>
        <translation>Otra estación ya lo pesó. Ábralo otra vez.</translation>
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
        <translation>La orden llega aquí cuando se entrega su hoja de mesa. Cada paquete se pesa y se etiqueta aquí, y se cuenta junto a lo planeado.</translation>
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
        <source>Choose a line above</source>
        <translation>Escoja una línea arriba</translation>
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
        <source>That package is void already.</source>
        <translation>Ese paquete ya está anulado.</translation>
    </message>
    <message>
        <source>Make void</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>Package {number} is made void. Why?</source>
        <translation>Se anula el paquete {number}. ¿Por qué?</translation>
    </message>
    <message>
        <source>Order {number} is ready; nothing was packed of: {lines}.</source>
        <translation>La orden {number} está lista; no se empacó nada de: {lines}.</translation>
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
        <source>Package {number} has no label.</source>
        <translation>El paquete {number} no tiene etiqueta.</translation>
    </message>
    <message>
        <source>Package {number} is void.</source>
        <translation>El paquete {number} está anulado.</translation>
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
        <source>A void package has no label.</source>
        <translation>Un paquete anulado no tiene etiqueta.</translation>
    </message>
    <message>
        <source>Label {number}</source>
        <translation>Etiqueta {number}</translation>
    </message>
    <message>
        <source>Package counts, order {number}</source>
        <translation>Cuenta de paquetes, orden {number}</translation>
    </message>
    <message>
        <source>Package {number} kept. No label printer is set; F9 shows its label.</source>
        <translation>Paquete {number} guardado. No hay impresora de etiquetas; F9 muestra la etiqueta.</translation>
    </message>
    <message>
        <source>Package {number} kept, label printed.</source>
        <translation>Paquete {number} guardado, etiqueta impresa.</translation>
    </message>
    <message>
        <source>Package {number} kept, but {printer} did not print its label.</source>
        <translation>Paquete {number} guardado, pero {printer} no imprimió su etiqueta.</translation>
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
        <source>That package is void already.</source>
        <translation>Ese paquete ya está anulado.</translation>
    </message>
    <message>
        <source>It can&apos;t be kept.</source>
        <translation>No se puede guardar.</translation>
    </message>
</context>
</TS>
