// How Spanish speakers say it: waste. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPots2: Sayings<SaidMeaning> = {
  waste: `
    eché 300 g al bidón de residuos / residuos al bidón, 1,5 kg / al tambo de desechos 800 g
    tire 2 litros de acetona sucia al bidon / acetona usada al drum / waste al drum 3 pounds / puse el waste en el drum
    dumpeé el solvente sucio en el drum, 2 litros / vacié la acetona de lavar en el bidón
    el disolvente sucio ya está en el bidón / lavado de pistola al bidón, medio litro / el enjuague al tambo, un litro
    el flush al waste drum / 500 ml de flush al drum / filtros usados al bidón de residuos
    filtros y palitos al tambo de residuos / brochas y guantes al bidon de desechos / un kilo de residuo al contenedor
    residuo líquido 750 g al contenedor / desecho al tambor 1.2 kg / desechos en el tambor ya
    al bidon azul 4 kg de residuos / metí 600 g de basura química en el drum
    boté dos kilos de desperdicio al tanque de residuos / acabo de echar los residuos al bidón
    a las 17:10 residuos al bidón, 900 g / ya quedó el waste en el drum, 1 galón
    hemos llevado 3 kg de residuos al bidón / ok todo lo sucio en el bidón, kilo y pico / heche los residuos al vidon
  `,
};
