// How Spanish speakers say it: rags. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCans3: Sayings<SaidMeaning> = {
  rags: `
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
