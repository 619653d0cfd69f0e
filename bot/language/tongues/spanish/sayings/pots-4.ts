// How Spanish speakers say it: thick, gel. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPots4: Sayings<SaidMeaning> = {
  thick: `
    no se nivela, está espesa la 3 / ya no se estira / le cuesta al mixer / el mixer va lento, está pesada la 2
    el motor suena forzado, espesó el bote 1 / rueda lento el agitador, gruesa / más espeso que al principio
    más espeso de la cuenta el bote 2 / bastante espesa la mezcla 3 / un pelín espesa la 1 / algo espesa la 2
    medio espeso el pot 1 / semi espeso el batch 3 / ya tirando a espeso el bote 1 / tantito gruesa la mezcla
    está muy densa / densa la mezcla 2 / se densificó el lote 1 / notablemente más viscosa la 3
    la consistencia cambió, espesa la 2 / se espesó con el calor / con el solazo se puso gorda la 1
    por estar destapada espesó el bote 2 / espesó de golpe / empieza a espesar / empezó a engrosar la 2
    comienza a ponerse espeso el pot 1 / ya va para espeso / ya se le siente lo grueso / ojo que está espeso el bote 1
    cuidado, espesa la mezcla 2 / aviso: mezcla 3 espesando / les aviso que la 1 está gruesa
    a las 11 estaba espesa la mezcla 2 / hace diez minutos se puso gorda / ahorita vi el pot 1 espeso
    recién noté más gruesa la 3 / Omar dice que la 1 ya está espesa / Lia la siente gruesa, bote 2
    el nuevo notó espeso el pot 3 / está duro de mover el bote 2 / cuesta un huevo moverla, la 1
    pesada pesada la mezcla / ya ni se deja batir, gruesa la 2
  `,
  gel: `
    ya cuajó / cuajada la mezcla 1 / cuajó el bote 2 / se cuajó todo / se nos cuajó la tanda / ya está cuajada la 3
    se hizo piedra / piedra el bote 1 / se hizo una piedra la mezcla 2 / quedó hecha piedra / quedó como roca el pot 3
    se puso dura la mezcla / dura la 1 / durísimo el bote 2 / ya está duro / se endureció en el bote
    endurecido el lote 3 / endureció la mezcla 2 antes de tiempo / endureció de golpe / se solidificó
    sólida la mezcla 1 / solidificado el bote 2 / se gelificó antes de hora / gelificada la 3 / gelificó la mezcla
    ya gelificó el bote 1 / gelificando, ya no se mueve / está en gel / en gel el bote 2 / puro gel el pot 1
    hecho gel el lote 3 / convertido en gel / gel total mezcla 2 / gelled / it gelled el pot 2 / gelled up batch 1
    se geleó el pot / geleado el batch 3 / se me geleó el 2 / gel batch 2 / hard as a rock el pot 1
    rock solid el batch / set up ya el pot 3 / se seteó el batch / kicked off el pot 2, duro / se murió la mezcla
    muerta la 1 / mezcla muerta, dura / se nos murió el bote 2, cuajado / murió el pot en la olla, piedra
    ya no sirve, está cuajada / ya no se mueve la paleta, cuajó el 1 / la paleta quedó presa, bote 2
    la varilla ya no sale, duro / no se puede mover, gel / no gira nada, cuajada la 3
    se quedó el palo parado en el bote 1 / paleta atrapada en la mezcla 2 / está como chicle / chicle puro la mezcla 2
    chiclosa la 1, gel / gomosa la mezcla, gelificada / goma el bote 3 / como jalea / jalea el pot 1 / se hizo jalea
    como pelota de hule el bote 2 / hule la mezcla 1 / como silicona cuajada la 3 / cuajo como queso el bote 1
    un queso la mezcla 2 / flan / hecha un flan la 2 / panela el bote / turrón la mezcla 1 / un ladrillo
    ladrillo el batch 2 / se hizo ladrillo en la cubeta / cemento el pot 1 / como cemento la mezcla
    concreto el bote 3 / fraguada la mezcla / fraguó en la olla / ha fraguado el bote 1 / fraguado el pot 2 y caliente
    se fraguó sola / reventó de caliente y cuajó / echa humo y está duro el bote 2 / se calentó y se hizo gel la 1
    hirvió y cuajó el pot 3 / caliente y dura la mezcla 2 / quema el bote y está sólido / exotermia, gelificó el lote 1
    se calentó solo y se endureció / gelificó en la pistola también, mezcla 2 / se cuajó dentro de la manguera, pot 1
    se hizo gel en el vaso / a las 11:40 cuajó la 1 / hace cinco minutos se puso dura / ahorita se cuajó el pot 2
    recién se hizo gel el bote 1 / acaba de cuajar / acaba de endurecerse la mezcla 3
    acabo de encontrar el bote 2 hecho piedra / volví de comer y estaba cuajada la 1 / Omar encontró el 2 duro
    Lia dice que la 1 ya es gel / la dejaron y se cuajó, bote 3 / se pasó de hora y se hizo piedra
    valió madre, se cuajó el bote 2 / se chingó el batch, gel / se jodió la mezcla 1, dura / ya tronó la mezcla, es gel
    la cagamos, gel el pot 1 / a la mierda el bote 2, cuajado / adiós mezcla, piedra / f el pot 3, gel
    RIP batch 1, duro / che se hizo gel / tío está como una piedra la 2 / mi hermano eso cuajó / se pasmó la mezcla
    se trancó el bote, duro
  `,
};
