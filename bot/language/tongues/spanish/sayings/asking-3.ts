// How Spanish speakers say it: asking. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking3: Sayings<SaidMeaning> = {
  asking: `
    recubrimiento siguiente a las cuántas / dato de repintado a 20 grados / con frío cuánto cambia el tiempo entre manos
    cuanto es lo maximo pa recoat / el producto este lleva segunda mano? / la ficha permite sobrepintar
    plazo para la siguiente mano / a cuanto se cura / ¿A qué temperatura y cuánto tiempo se cura?
    curado según la ficha / cuanto horno lleva / a cuántos grados pongo el horno / cuánto tiempo de horno pide
    schedule de curado / cure schedule / que oven temp pide la hoja / una hora a 90 o cómo era
    cuánto cura a temperatura ambiente / si no la meto al horno cuántas horas / curado al aire cuánto
    cuántas horas para entrar en servicio según ficha / cuántos días hasta la dureza total
    cuándo alcanza dureza final por la hoja / how long y how hot se cura / 194 F es lo que pide?
    a cuántos F va el oven / se puede curar a 60 más tiempo / puede curarse más bajo / qué dice el fabricante del curado
    cuánto y a cuánto / temperatura de la pieza para curar / la hora es del horno o de la pieza / horas de curado
    ciclo de horno / ciclo de curado para este producto / qué ciclo le pongo al horno / cuántos minutos a 90
    cura con humedad o con calor / humedad para curar / che a cuánto se hornea / no sé a cuánto se cura esto
    que pone de curado el papel / horneado? / receta del horno / curado sin horno / cuánto tengo que hornear por ficha
    a que temp lo horneamos segun el sheet / con que se limpia la pistola / ¿Qué disolvente pide la hoja para limpiar?
    con qué lavo las brochas / que solvente uso / thinner o acetona / acetona o alcohol primero / en qué orden se lava
    qué solvent pa limpiar el gun / con que le hago flush a la manguera / con qué se enjuaga el equipo
    qué diluyente va / se puede limpiar con agua? / qué dice la ficha de limpieza de herramientas
    cleaner de este producto / con qué quito esto de la olla / con que se saca de los rodillos / secuencia de lavado
    cuanto tiempo tengo pa lavar la pistola según la hoja / cuántos minutos de enjuague / cuántas pasadas de acetona
    después de la acetona qué va / con isopropílico basta / alcohol de qué pureza / limpiador de la pistola
    qué le echo a la pistola para limpiarla / pa flushear que uso / se puede usar MEK?
    qué producto de limpieza recomienda el fabricante / limpieza del equipo según la ficha
    con qué se limpian las vasijas / que le paso a la brocha cuando acabe / se diluye con algo / lavar con qué
    che con qué limpio la soplete / no sé con qué se limpia esto / ya se puso medio dura, con qué disolvente sale
    con qué se limpia un derrame según la hoja / disolvente? / qué disolvente lleva este / flush con que
  `,
};
