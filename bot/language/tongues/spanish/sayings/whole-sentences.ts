// How Spanish speakers say it in whole sentences, in Spain and in American shops: what was done first, then why or how it stands.
// Invented lines.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishWholeSentences: Sayings<SaidMeaning> = {
  shut: `
    el bote 4 queda cubierto / la lata 4 ya quedó cubierta / dejamos la lata 4 cubierta / ya cubrí la lata 4 / he cubierto el bote 4 / cubrimos la lata de A
    la lata está otra vez cubierta / el bote ya tiene la tapa encima / la lata vuelve a tener su tapa / le volví a poner la tapa a la lata 4
    he vuelto a tapar la lata 4 / el bote 4 ha quedado cerrado a presión / la tapa del bote 4 está otra vez en su sitio / la lata 4 ya no está abierta
    el bote ya no está destapado / cerradita la lata 4 / la lata de la parte B ha quedado bien cerrada / le apreté la tapa al bote 4
    ya está cubierta la lata de la parte A / está cubierto otra vez el bote 4 / el envase 4 ya está cubierto / la lata quedó cubierta con su tapa
  `,
  blanket: `
    la lata 4 ya tiene su gas y está cerrada / cubrí la lata de la parte A con nitrógeno / he cubierto la parte A con argón / el bote 4 está cubierto de gas
    cubrimos con argón el bote de A y lo cerramos / la parte A ya tiene gas y su tapa / he puesto gas en la lata de la parte A y la he vuelto a cerrar
    le metí gas a la lata de la parte A y la cerré / el bote de A quedó con nitrógeno y tapado / le he echado gas a la lata 4 y la he cubierto
    con argón y cerrada ha quedado la lata 4 / con nitrógeno y tapada dejé la lata 4 / ya tiene su argón la lata 4 / la A quedó protegida con argón
    le puse su capa de nitrógeno al bote 4 y cerré / el gas ya está en la lata 4 y la tapa también / echado el gas en el bote 4 y otra vez cubierto
  `,
  lid: `
    la lata 4 está descubierta / el bote 4 quedó descubierto / descubrí la lata 4 / he descubierto la lata de A / descubierto el bote 4
    la lata de la parte A está ahora mismo sin tapa / le quité la cubierta al bote 4 / he levantado la tapa del bote 4 para servir
    la lata 4 ya no está tapada / la lata 4 ya no tiene tapa / el bote 4 se quedó sin su tapa / abierto otra vez el bote 4
  `,
  cover: `
    la mezcla 1 ya está cubierta / la mezcla 1 queda cubierta / he cubierto la mezcla 1 / cubrí la mezcla 1 con su tapa / la olla 1 está cubierta
    dejé cubierta la mezcla 1 / la mezcla 1 ya tiene su tapa / le he vuelto a poner la tapa a la mezcla 1 / la tanda 1 está cubierta otra vez
    la mezcla ya no está destapada / el cubo de la mezcla 1 está cubierto / cubierta la mezcla 1 / la tapa de la mezcla 1 ya está puesta
  `,
  uncover: `
    la mezcla 1 está descubierta / descubrí la mezcla 1 / he descubierto la mezcla 1 / la mezcla 1 ya no está tapada / la mezcla 1 se quedó sin tapa
    le he quitado la cubierta a la mezcla 1 / la mezcla 1 está ahora sin tapa / la olla 1 está descubierta / descubierta la mezcla 1
  `,
  out: `
    acabo de retirar del horno la pieza 4 / he retirado la pieza 4 del horno / retiré la 4 del horno / ya retiramos del horno las 2 / la 4 la he retirado ya
    retirada del horno la 4 / del horno ha salido ya la 4 / del horno he quitado la 4 / quité la 4 del horno y la dejé en la mesa / la 4 la saqué hace rato
    la pieza 4 ya la tengo sobre la mesa, fuera del horno / he dejado la 4 enfriando fuera / la 4 ya se está enfriando en la mesa
    bajé la 4 del horno / ya no está en el horno la 4 / la 4 ya no está dentro del horno / el horno ya lo desocupé / ya nada se cura en el horno / el horno ha quedado vacío
  `,
  'cure oven': `
    al horno ha ido la 4 / en el horno, a 90 grados, he dejado la 4 / dentro del horno está ya la 4, a 90 / la 4 la he dejado dentro a 90 grados
    meto la 4 en el horno, que ya está caliente / he dejado la pieza 4 curando en el horno a 91 grados / en el horno ha entrado la 4, puesto a 90
    ya está adentro la 4, le puse 194 / eché la 4 al horno y le puse 195 / la 4 va al horno desde este momento / la 4 ya anda adentro, en 195
    ya le di horno a la 4 a 194 / el horno se lleva la 4 a 90 / queda la 4 en el horno a noventa grados
  `,
  dry: `
    he pasado el dedo por la 4 y ya no se queda pegado / le tenté a la 4 y no se pega nada / he tocado la 4 y está seca / pasé el guante por la 4 y salió limpio
    la película de la 4 ya ha secado del todo / al tocar la 4 no queda huella / seca está ya la 4 / ya se ha secado la 4 / la 4 ya la noto seca con el guante
    la 4 no mancha el guante / la 4 no deja nada en el dedo / la pieza 4 ya no marca / apoyé el dedo en la 4 y nada / tocada y seca la 4
    la he tocado con el guante y está seca / lo toqué con el guante y está seco / ya secó la 4, la acabo de tentar
  `,
  coat: `
    la 4 la he pintado yo con lo que quedaba en la mezcla 1 / con rodillo he hecho la 4, de la mezcla 1
    de la mezcla 1 y a brocha va pintada la 4 / a brocha y de la mezcla 1 han quedado la 4 y la 5 / bañé la 4 en la mezcla 1 / he bañado la 4 y la 5 en la mezcla 1
    bañadas por inmersión la 4 y la 5 / la 4 la metí entera en la mezcla 1 por inmersión / agarré de la mezcla 1 y le puse una capa a la 4 con la brocha
    tanto la 4 como la 5 llevan ya su capa / llevan su mano de rodillo la 4 y la 5 / quedan pintadas a rodillo la 4 y la 5 con la mezcla 1
    ya están las 3 primeras con brocha / están hechas a rodillo las 3 primeras / todas van ya con su capa de brocha
  `,
  weigh: `
    por el lado de A salieron 907 y por el de B 902 / de A salieron 905 y de B 903 / al final han sido 902 de A y 899 de B / quedaron 455 de A y 453 de B
    dentro del cubo de la 1 cayeron 907 de A, y de B 901 / cayeron 901 gramos de A y 899 de B en la mezcla 1 / para la mezcla 1 han entrado 902 gramos de A y 898 de B
    la báscula se ha quedado en 903 para A y 899 para B / he puesto 901 gramos de A y 899 de B
    de parte A van 904 gramos y de parte B 901 / le cayeron 455 de A y 452 de B / hay 901 de A y 899 de B en el cubo
    entraron 903 de A, 899 de B / lo pesado: 902 de A y 899 de B
  `,
  empty: `
    la mezcla 1 la he tirado / he tirado al bidón lo que quedaba de la mezcla 1 / la mezcla 1 a la basura / mezcla 1 entera a la basura / la 1 entera a la basura
    la mezcla 1 ha acabado en el bidón de residuos / lo de la mezcla 1 ya está en el bidón / tiré la mezcla 1 y lavé el cubo / ya no queda mezcla 1, la tiré
    ya vacié la mezcla 1 / el cubo de la mezcla 1 está vacío / de la mezcla 1 no queda ni gota
  `,
  'spray off': `
    Omar ha dejado de pintar / Omar ha soltado la pistola / ya acabó Omar de rociar / se acabó el pintar por hoy / Omar ha terminado con la pistola
    ha terminado ya la aplicación / hemos dejado de pulverizar / ya dejó Omar la pistola / ya no está rociando Omar / paró Omar de rociar
  `,
  release: `
    la 4 pasó la revisión / la 4 ha pasado la inspección / por mí la 4 es buena / la 4 está perfecta, dale salida / la 4 quedó de lujo, que se vaya
    la 4 cumple, puede entregarse / revisada y conforme la 4 / la 4 va aprobada / visto bueno para la 4 / dale el visto bueno a la 4 / la 4 pasó control
  `,
  hold: `
    la dejo aparte, a la 4 se le nota un descuelgue / a la 4 le salieron ojos de pez, que no se mueva de aquí / la 4 no sale, tiene burbujas
    dejo apartada la 4, se ven poros / la 4 se queda aparte, tiene una raya / la 4 no pasa, se le ven ojos de pez / retengo la 4, tiene motas
    la 4 queda bloqueada hasta que la mire Bea / rechazada la 4 por escurrimientos / la 4 está rechazada, tiene grumos
  `,
  'prep wiping': `
    he limpiado con acetona la 4 y la 5 / limpié la 4 con un trapo y acetona / la 4 y la 5 van ya limpias con acetona / pasé un paño con acetona por la 4
    limpias con paño y acetona la 4 y la 5 / le di una limpiada con acetona a la 4 / repasadas con acetona la 4 y la 5
  `,
  'prep grease-off': `
    les quité la grasa a la 4 y a la 5 con acetona / desengrasé la 4 con acetona / he desengrasado las 2 con acetona / la 4 ha quedado sin grasa, con acetona
    le saqué el aceite a la 4 con acetona / desengrasadas la 4 y la 5 / quitada la grasa de la 4
  `,
  air: `
    el medidor de la pared marca 74 Fahrenheit y 50 por ciento de humedad / el termómetro dice 72 grados y hay 49 por ciento / en el taller tenemos 23 grados y 47 de humedad
    estamos a 22 grados y 51 por ciento en la nave / a 24 grados y con 48 por ciento estamos en el taller / hoy hace 21 grados con un 55 de humedad
    el aparato de la pared da 24 grados y 46 por ciento / la estación dice 75 y 45 por ciento / hay 75 grados y 48 de humedad en el shop
  `,
  temp: `
    a 89 grados está ya la 4 / la 4 iba por 87 cuando pasé / la 4 marcaba 87 cuando la miré / los 2 de adentro traen 195 / las 2 piezas que hay en el horno marcan 90
    las 2 que se curan van por 90 / las 2 del horno a 90 / a las 2 del horno les he leído 91 / la sonda de la 4 se ha quedado en 88 grados
  `,
  gel: `
    hecha gelatina la mezcla 1 / toda la mezcla 1 es ya pura gelatina / la mezcla 1 se ha quedado hecha una piedra / la mezcla 1 está dura como una piedra
    se nos ha gelado la mezcla 1 / la mezcla 1 ya es un bloque / la mezcla 1 se endureció toda
  `,
  thick: `
    la mezcla 1 se está poniendo espesa / la mezcla 1 va ya como la miel / la mezcla 1 anda como chicle / la mezcla 1 ya corre muy lenta
    la mezcla 1 está más espesa que antes / noto espesa la mezcla 1
  `,
  nothing: `
    este bidón es para inflamables / esa caja es para trapos limpios / las cubetas de hoy son para agua / la estantería de abajo es para solventes
    el carro es para las piezas grandes / estas etiquetas son para los botes nuevos / la 4 está para el horno / la 4 está lista para el horno / la 4 está para pintar
    la 4 se puede curar al aire / esa se puede dejar al aire / esas se pueden pintar a rodillo / la 4 se podría hacer a brocha / la 4 habría que lijarla
    mañana nos traen las cubetas / la semana que viene llega el gas / el lunes vienen a mirar el extractor / luego limpiaré la pistola / después del café lavo la pistola
    la 4 sigue en el horno / la 4 sigue dentro / la 4 sigue fresca / sigue pegando la 4 / la 4 sigue sin secar / la 4 sigue húmeda
  `,
  catch: `
    han caído 34 gramos en la bandeja / cayeron 28 g a la bandeja de la mezcla 1 / en la bandeja hay 41 gramos de la mezcla 1 / se juntaron 37 g en la bandeja
    recogidos 45 g de la bandeja de la mezcla 1 / de la bandeja he sacado 33 gramos / lo que escurrió son 38 g / escurrieron 42 gramos a la charola
    quedaron 29 g en la charola de la mezcla 1 / saqué 36 g de la charola, vuelven a la mezcla 1
  `,
  'flush gun': `
    he lavado la pistola con acetona y después con isopropílico / lavé la pistola, primero acetona y luego isopropílico / la pistola la he enjuagado con acetona
    pistola lavada con acetona y al final con alcohol / le pasé acetona a la pistola y luego alcohol / ya quedó lavada la pistola con acetona
  `,
  stop: `
    el agitador de la mezcla 1 lo he parado ya / ya le apagué a la mezcla 1 / la mezcla 1 ya no se agita, lo paré / he dejado de agitar la mezcla 1
    le apagué al mezclador de la mezcla 1 / la mezcla 1 está parada / he quitado el agitador de la mezcla 1 / ya paré de batir la mezcla 1
  `,
};
