// How Spanish speakers say it: used, rags. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCans3: Sayings<SaidMeaning> = {
  used: `
    I took 1 lb from la A / serví 505 g de la lata 4 / servidos 640 g de la A / vertí 700 g de la lata 2
    vertidos 300 g de la B / eché 450 g de la lata 1 en la olla / Omar sacó 600 g de la lata 3 / Lia usó 480 g de la B
    apunta 640 g usados de la lata 2 / anota consumo 500 g lata 1 / le informo consumo de 640 g de la lata 2
    se utilizaron 500 g de la parte A / use 300 d la lata 1 xq era pa retoque / ps saque 450 d la 3
    nomas saque 200 g de la B / used up 640 g de la lata 2 / took out 500 g from can 3
    quillo he sacao 640 de la lata 2 / parce usé 500 de la A / boludo saqué 450 de la lata 1
    mijo le saqué medio kilo a la lata 4
  `,
  rags: `
    trapos a la lata / trapos al bote / trapos guardados / trapos tapados / trapos en agua y tapados
    trapos al cesto metálico / trapos al cubo de metal / trapos sucios guardados / trapos con solvente guardados
    trapos con acetona al bote rojo / trapos en el bote rojo / metí los trapos al bote
    metí los trapos en la lata con tapa / metí los trapos sucios al cesto / guardé los trapos
    guardé los trapos en el bote de metal / guardados los trapos con acetona / ya guardé los trapos
    ya guardé las estopas / ya metí los trapos sucios / ya tapé los trapos / los trapos ya están en su bote
    los trapos ya están guardados / los trapos quedaron en la lata / los trapos quedaron tapados
    los trapos mojados al contenedor / los trapos de solvente al bote con tapa / los trapos de hoy a la lata de metal
    los trapos del alcohol tapados / eché los trapos al bote / eché las estopas a la lata
    eché los trapos con thinner al bote metálico / puse los trapos en el contenedor con tapa
    puse los trapos en la lata roja / puse las estopas en el bote / recogí los trapos
    recogí todos los trapos y al bote / junté los trapos y los tapé / tiré los trapos en el contenedor metálico
    tiré las estopas en el bote de metal / boté los trapos en el bote rojo / aventé los trapos al bote con tapa
    deposité los trapos en el recipiente / se guardaron los trapos en el contenedor / se recogieron los trapos
    se taparon los trapos / rags in the can / rags en el can / rags al red can / rags put away
    rags in metal can, lid on / rags closed up / rags al safety can / put the rags en el can
    the rags ya están en el can / oily rags al can / wet rags al metal can / all rags in / guardé los rags
    recogí los rags / rags recogidos / estopas al bote / estopas guardadas / estopas tapadas
    estopas con thinner al bote de metal / franelas guardadas / franelas sucias a la lata / paños al contenedor
    paños guardados en metal / papeles con solvente al bote / toallas con acetona a la lata / wypes al bote
    guaipes al tacho con tapa / huaipe sucio al tarro metálico / toallitas al bote rojo
    servilletas con acetona al bote de metal / trozos de tela con solvente guardados
    el último trapo ya está en la lata / ni un trapo queda en la mesa, todos en el bote / lata de trapos cerrada
    bote de trapos tapado / contenedor de trapos con tapa / tapa puesta al bote de trapos / Omar guardó los trapos
    Lia metió los trapos a la lata / el chavo recogió los trapos / acabo de guardar los trapos
    acabo de recoger las estopas / recién guardé los trapos / ahorita metí los trapos / apunta trapos guardados
    anota trapos en lata / che los trapos al tacho / mi hermano los trapos ya tan guardaos
  `,
};
