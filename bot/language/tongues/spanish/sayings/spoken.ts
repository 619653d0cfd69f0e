// How Spanish speakers say it in passing, on a phone, in Spain and in American shops: half sentences, trade talk, what was done before or
// after. Invented lines.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsSpoken: Sayings<SaidMeaning> = {
  prestir: `
    removí bien la lata 5 antes de echar / he meneado la lata 5 en su lata  / estaba posada y removí la lata 5
    la lata llevaba parada una semana y la removí / le di vueltas con la paleta a la lata 5 / batí el bote en su bote, estaba posado
  `,
  blanket: `
    le soplé argón a la lata 5 y la tapé / un soplido de argón a la lata y cerrada / metí un poco de nitrógeno en el bote 5 y lo cerré
    argón a la lata 5 y tapa puesta / le eché su chorro de argón al bote y le puse la tapa
  `,
  shut: `
    la lata B también está cerrada / la lata 5 también quedó cerrada / ya le puse su tapa al bote 5 / tapé la lata 5 y ya
  `,
  temp: `
    el termopar de la pieza 3 marca 90 / la sonda da 91 en la tapa / la tapa ya va por 88 / la pieza 3 ya subió a 190 / las demás van también por 91
    las otras también marcan 90 / ya van las dos por 89 / la tapa, esa que sigue dentro, va por 90 / la del horno va por 92
    la aguja de la sonda está en 87 / me da 188 la pieza 3
  `,
  'cure oven': `
    ya están las dos en el horno, jefe / la 3 ya está dentro del horno / metida la 3 en el horno y puesto a 90
    al horno la 3, que ya no pega / la tapa ya la tengo en el horno a 90 / va la 3 adentro del horno ya
  `,
  out: `
    ya está fuera la 3 / la 3 fuera del horno, en la mesa / ya saqué del horno la tapa, quema
  `,
  dry: `
    la toqué con el guante y no pega nada / la 3 pasó la prueba del dedo / le pasé el dedo a la tapa y nada, seca
  `,
  coat: `
    las tres quedaron pintadas con brocha de la mezcla 3 / terminé la tapa con brocha de la mezcla 3
    di un baño a las piezas 4 y 5 en la mezcla 3 / las metí en la mezcla 3, bañadas las tres / la 3 a brocha, de la 2 / la tapa recubierta por vertido con la mezcla 3
    las dos bridas van pintadas con rodillo de la mezcla 3 / ya le di su mano a la 3 con la brocha
  `,
  'spray on': `
    ya estoy pistoleando / gatillo abajo, empiezo a rociar / ya arranqué con la pistola / empezamos con la pistola ahora mismo
  `,
  'spray off': `
    ya dejamos de rociar / ya solté la pistola / solté el gatillo, se acabó / última pasada y pistola colgada
  `,
  'flush brush': `
    lavé la brocha con acetona al terminar / la brocha ya pasó por acetona / enjuagué la brocha en acetona / brocha lavada y escurrida
  `,
  empty: `
    no quedaba nada en la 3, la tiré / la mezcla 3 se acabó, bote vacío / ya no hay nada en la olla 3
  `,
  gel: `
    se volvió gelatina la 3 / el bote 3 se hizo goma / la mezcla 3 es un flan / se cuajó el bote 3 entero / la 3 se puso como piedra
  `,
  thick: `
    la mezcla 3 cae como miel / la 3 ya arrastra el palo / se me está poniendo pesada la 3
  `,
  stop: `
    le di al paro del agitador de la 3 / le apagué el agitador a la 3 / paré de menear la 3 / desconecté el mezclador del bote 3
  `,
  filter: `
    la pasé por la malla / la mezcla 3 pasó por la malla a un bote limpio / luego la colé / la colé en otra olla
  `,
  weigh: `
    cayeron 602 de A y 599 de B en la 3 / la báscula marcó 1,2 kg de A y otro tanto de B / a la 3 le eché 602 de A y 600 de B
  `,
  cover: `
    la olla 3 lleva puesta su cubierta contra la humedad / dejé tapada la mezcla 3 por el polvo / le eché la tapa encima a la olla 3
  `,
  mix: `
    quiero que preparen dos kilos / que me hagan kilo y medio / échenme una mezcla de 4 libras / kilo y medio de mezcla y arranca
  `,
  received: `
    recibí 2 kg de A lote 88 / llegaron cuatro latas de A, lote 88 / trajo el mensajero seis botes de B / entraron 5 kilos de A, cerrados, lote 88
  `,
  hold: `
    se queda retenida la 3 por descuelgues / la 3 queda retenida por piel de naranja / no sale la 3, tiene cráteres / aparto la tapa por polvo en la película
    la 3 no se entrega por chorreos / me quedo con la tapa porque tiene burbujas
  `,
  release: `
    doy por buena la tapa, la revisé entera / la 3 puede irse con el cliente / le quito la retención a la 3, era polvo
    quita la retención de la tapa porque ya se lijó / levanto la retención de la 3
  `,
  find: `
    dime cuál es la 4412 / la serie 4412 de quién es / qué pieza es la 4412 / de qué pieza es el número de serie 4412 / la 4412 es cuál
  `,
  undo: `
    quite lo último que puse / lo último no va, quítalo / bórrame la última línea
  `,
  nothing: `
    todavía nadie lo ha hecho / no me ha dado tiempo de hacerlo / lo haremos después de comer / falta que alguien lo haga / primero hay que hacerlo
  `,
};
