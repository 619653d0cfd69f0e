// Cómo se dice qué se hace con una pieza retenida, en España y en talleres de Estados Unidos. Frases inventadas; y las mismas palabras
// dichas de sobras, preguntadas, por hacer o negadas.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfHolds: Sayings<SaidMeaning> = {
  rework: `
    retrabajar la 7 / la 7 a retrabajo / la 7 va a retrabajo / manda la 7 a retrabajo / retrabajo para la 7 / rework a la 7 / la 7 a rework / mándala a rework la 7
    decapar y rehacer la 7 / se decapa y se rehace la 8 / decápala y vuélvela a pintar la 4 / lijar y repintar la 5 / la 9 se rehace / rehacer la carcasa / rehacemos la 7 desde el metal
    quitarle la capa a la 6 y empezar de nuevo / la 6 se hace otra vez desde cero / reprocesar la 7 / la 7 a reproceso / hay que decapar y aplicar de nuevo la 3, decidido
    decisión sobre la 7: retrabajar / disposición de la 7: retrabajo / no conforme, retrabajar la 7 / las dos bridas a retrabajo / la 2 y la 3 a retrabajo / marca la 7 como retrabajo
  `,
  scrap: `
    la 7 es chatarra / la 7 a chatarra / a la chatarra la 7 / achatarrar la 7 / la 7 para chatarra / tira la 7, está rajada / la 7 a scrap / manda la 7 al scrap / scrap la 7 / la 8 es scrap
    la 7 se da de baja / dar de baja la 8 / la 8 inservible / la 9 no tiene arreglo, a chatarra / la carcasa va a la chatarra / el soporte rajado a la chatarra / desechar la pieza 7
    la pieza 7 se desecha / decisión sobre la 5: chatarra / disposición de la 7: chatarra / no conforme, chatarra la 7 / las dos placas a chatarra / la 2 y la 3 son chatarra
    marca la 7 como chatarra / rechazada y a chatarra la 7 / la 6 quedó para fierro viejo / la 6 al bote de scrap / la 4 ya no sirve, scrap
  `,
  'return customer': `
    la 7 vuelve al cliente / devolver la 7 al cliente / la 7 se devuelve al cliente / se le devuelve la 8 al cliente / la 8 regresa con el cliente / regrésale la 7 al cliente
    la 7 va de vuelta al cliente sin pintar / devuelta al cliente la 7 / el cliente se lleva la 7 de vuelta como vino / decisión sobre la 7: devolver al cliente / la 5 al cliente, aleación equivocada
    no es nuestro, la 7 de regreso al cliente / las dos placas vuelven al cliente / la 2 y la 3 se devuelven al cliente / no conforme, devolver la 7 al cliente / rechazo la 4, de vuelta al cliente
    la brida se devuelve al cliente / se regresa la 9 al cliente / devuélvele la 6 al cliente / la 3 vuelve con su dueño / regresar la 5 al cliente / la carcasa vuelve al cliente como llegó / devolvemos la 8 al cliente / que el cliente se lleve de vuelta la 4 / al cliente de vuelta la 6
  `,
  'return supplier': `
    la 7 vuelve al proveedor / devolver la 7 al proveedor / la 7 se devuelve al proveedor / la 8 a la fundición de vuelta / la 8 regresa a la fundición / regresa la 7 al proveedor
    el proveedor se queda con la 7, porosa / devuelta al proveedor la 7 / decisión sobre la 7: devolver al proveedor / rechazo la 4, de vuelta al proveedor / la 2 y la 3 al proveedor
    la 5 de vuelta al taller que la mecanizó / no conforme, devolver la 7 al proveedor / la pieza fundida 6 se regresa a quien la fundió
    que el proveedor recoja la 7 y se la quede / devolvemos la 3 al proveedor / se regresa la 9 al proveedor / la carcasa vuelve a la fundición / a la fundición de vuelta la 8 / devuélvele la 5 al proveedor / regresar la 6 a la fundición / la 2 de regreso con el proveedor / culpa del proveedor, la 7 vuelve con él / el fundidor se lleva la 4 de vuelta
    la 1 al proveedor de vuelta / el proveedor recibe de vuelta la 4 / porosa, la 9 se devuelve a la fundición / reclamo al proveedor y se le devuelve la 7
  `,
  concession: `
    el cliente acepta la 7 como está / el cliente se queda la 7 como está / el cliente aceptó la 7 tal cual / el cliente acepta la carcasa tal como está, llegó la carta / la 7 por concesión
    concesión para la 7 / tenemos concesión de la 7 / llegó la concesión de la 8 / usar la 7 como está / úsese como está la 7 / la 7 se usa tal cual por concesión / use as is la 7
    decisión sobre la 7: usar como está / disposición de la 7: usar como está / permiso de desviación del cliente para la 8 / el cliente da por buena la 7 con la película fina
    calidad del cliente acepta la 9 como quedó / nos aceptan las dos placas como están, carta 12 / carta del cliente: la 7 se acepta como está / por correo el cliente acepta la 7 como está
    concesión del cliente para la 3 / con concesión la 5 / nos dieron concesión para las dos / el cliente firmó la 7 como está / dispensa del cliente para la 8 / el cliente la toma como está la 4
  `,
  shipped: `
    el cliente vino por la 7 y se la llevó / vino el cliente y se llevó la 7 / el cliente se llevó la 7 / se la llevó el cliente / pasó el cliente a recoger la 8 y se la llevó
    el chofer del cliente se llevó la 8 / la 7 ya la tiene el cliente / la 7 se fue con el cliente / el cliente recogió la 7
  `,
  'prep old-coat-off': `
    la 7 está decapada / decapada la 7 / decapé la 7 / la 7 decapada a metal / ya le quité la capa vieja a la 7 / sin la capa vieja la 8 / le sacamos la pintura vieja a la 6 / la 3 ya sin pintura vieja
    la capa vieja de la 4 ya no está / decapado químico en la 5, listo / quitada la capa vieja de la 9 / la 2 y la 3 decapadas / decapadas las dos placas / la 7 quedó a metal desnudo, sin capa
    se le quitó el recubrimiento viejo a la 7 / la brida ya está decapada / chorreada la 7 hasta quitar la capa vieja / no queda capa vieja en la 8
    la 7 decapada / ya decapé la 8 / quité el recubrimiento viejo de la 5 / la carcasa quedó sin la capa vieja / le quité toda la pintura vieja a la 9 / decapamos la 6 / la 4 quedó decapada a metal / eliminada la capa vieja de la 2 / salió toda la capa vieja de la 3
  `,
  nothing: `
    hoy nada a chatarra / todavía no es chatarra la 7 / la 7 no es chatarra / no tires la 7 / no la mandes a scrap / a lo mejor la 7 es chatarra / si falla otra vez, la 7 a chatarra
    la 7 quizá vaya a retrabajo / la 7 no necesita retrabajo / no hay retrabajo de la 7 / el cliente no ha aceptado la 7 / el cliente no la quiere como está / esperando la concesión de la 7
    pedimos la concesión de la 7 / la 7 no vuelve al cliente / puede que la 7 vuelva al cliente / el bote de scrap está lleno / vacié el contenedor de chatarra / subió el precio de la chatarra
    mañana se achatarra la 7 / luego retrabajo la 7 / el jefe quiere tirar la 7 / la mesa de retrabajo está llena / cuánto retrabajo tenemos este mes, qué barbaridad
  `,
  asking: `
    es chatarra la 7 / tiramos la 7 / mando la 7 a scrap o no / quién mandó la 7 a chatarra / por qué es chatarra la 7 / cuántas a chatarra esta semana / qué fue a scrap hoy
    vuelve la 7 al cliente / se devolvió la 7 / la 7 va a retrabajo / quién decide el retrabajo / se puede retrabajar la 7 / hay concesión de la 7 / aceptó el cliente la 7 como está
    qué se hace con la 7 / qué pasa ahora con la 7 / quién puede mandar una pieza a chatarra / qué piezas son de retrabajo / la 7 se usa como está
  `,
};
