// How Spanish speakers say it: waste. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPots5: Sayings<SaidMeaning> = {
  waste: `
    eché 3 litros de solvente sucio al drum / puse los desechos en el tambo rojo / puse los filtros en residuos
    deposité los residuos en el bidón / se depositaron 2 kg de residuos / se dispuso 1 litro de solvente usado
    acetona usada 1 litro, al bidón / acetona de lavado 800 ml a residuos / solvente sucio 2 litros
    solvente de limpieza al contenedor / thinner sucio un galón / alcohol usado medio litro a residuos
    lodos de pintura 1 kg / polvo de granalla al contenedor de residuos / el bidón lleva 2 kg más
    el tambo recibió 3 litros / sumar 1,5 kg al bidón de residuos / apunta residuos 2 kg
    anota 1 litro de solvente al bidón / registra desecho 3 kg / Omar llevó los residuos
    Lia tiró la acetona sucia al bidón / le informo depósito de 2 kg de residuos en el bidón
    se dispuso el solvente usado en el contenedor / eche la acetona sucia al bidon xq ya no servia
    ps residuos al tambo 3 kg / nomas un litro d solvente sucio al drum / dumped the dirty solvent
    put 2 kg of waste in the drum / waste is in the drum / quillo los residuos al bidón / parce boté los residuos
    boludo tiré el solvente sucio al tambor / mijo ya eché los filtros al bidón
  `,
};
