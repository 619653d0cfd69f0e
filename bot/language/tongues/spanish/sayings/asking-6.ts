// How Spanish speakers ask: sheet-flash, sheet-recoat, sheet-cure, sheet-flush. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking6: Sayings<AskedMeaning> = {
  'sheet-flash': `
    máximo de flash antes del horno / rango de flash / entre cuánto y cuánto se orea / flash time / flash off time
    flash off de la hoja / how long flash off / how long to flash / min flash / max flash
    what does the sheet say about flash / dry to touch time / tiempo de secado al tacto
    tiempo de secado según la ficha / cuánto tarda en secar según la hoja / cuánto tarda al tacto según la ficha
    a los cuántos minutos seca al tacto / a los cuántos minutos se puede meter al horno / seca al tacto en cuánto
    con frío cuánto tarda el flash
  `,
  'sheet-recoat': `
    cuánto se espera entre manos / cuánto se espera entre capas / cuánto hay que esperar para la segunda
    cuánto hay que esperar para repintar / cuánto tiempo entre capa y capa / cuánto tiempo entre manos pide la ficha
    cuánto tiempo para la segunda mano / cuándo se puede dar la segunda según la hoja
    cuándo se repinta según la ficha / cuándo se puede repintar / cuándo se puede dar otra mano según la ficha
    qué tiempo de repintado pide / qué intervalo de repintado lleva / qué ventana de repintado tiene
    qué ventana tiene la segunda mano / qué dice la hoja de la segunda mano / qué dice la ficha del repintado
    a las cuántas horas va la segunda / a los cuántos minutos va la segunda mano / ventana de repintado
    ventana para la segunda capa / tiempo de repintado según la hoja / repintado mínimo / repintado máximo
    intervalo entre manos / intervalo entre capas / recoat window / recoat time / recoat time de la hoja
    when can I recoat / can it be recoated / is recoat allowed / min recoat / max recoat
    what does the sheet say about recoat / se puede repintar este producto / se puede dar segunda mano según la ficha
    permite segunda mano / permite otra capa / acepta repintado / lleva segunda mano
    hay que lijar antes de la segunda / hay que lijar para repintar
    hasta cuándo se puede dar la segunda mano según la hoja
  `,
  'sheet-cure': `
    cuánto se cura / cuánto se cura en horno / cuánto se cura según la hoja / cuánto cura al aire
    cuánto cura a temperatura ambiente según la ficha / cuánto tiempo de horno pide la ficha
    cuánto tiempo de cura pide / cuánto horno pide / cuánto horno lleva según la hoja / cuánto tarda en curar
    cuánto tarda en curar al aire / cuántas horas de cura / cuántas horas al aire / cuántos grados de horno pide
    cuántos grados lleva el horno / a qué temperatura se cura / a qué temperatura se hornea
    a qué temperatura va el horno / a cuántos grados se cura / a cuántos grados se hornea
    a cuántos va el horno según la ficha / qué temperatura de cura pide / qué temperatura de horno pide la hoja
    qué cura pide la ficha / qué curado pide / qué curado lleva / qué tiempo de curado pide
    qué tiempo de horno marca la ficha / qué dice la hoja del curado / qué dice la ficha del horno / cure time
    cure temp / cure time de la hoja / cure schedule de la hoja / oven time / oven temp / what's the cure
    how long to cure / how hot to cure / how long at room temp / what does the sheet say about cure
    curado según la hoja / curado en horno según la ficha / curado al ambiente según la hoja / tiempo de cura
    temperatura de cura / tiempo y temperatura del horno / cuándo entra en servicio según la hoja
    a cuántas horas se puede usar la pieza según la ficha / cuándo llega a dureza total / cuántos días para cura total
    una hora a cuánto
  `,
  'sheet-flush': `
    con qué se lava la pistola / con qué lavo la pistola / con qué lavo la gun / con qué lavo el rodillo
    con qué lavo la brocha / con qué se limpia la brocha / con qué se limpia el rodillo
    con qué se limpian las herramientas / con qué limpio la olla / con qué limpio el equipo
    con qué se enjuaga la pistola / con qué se purga la pistola / con qué solvente se lava / con qué solvente limpio
    con qué disolvente se limpia según la ficha / qué solvente pide la hoja / qué solvente lleva
    qué solvente es para lavar / qué solvente de lavado va / qué disolvente uso / qué disolvente lleva la limpieza
    qué le echo a la pistola para lavarla / qué le paso a la gun / qué va primero, acetona o alcohol
    qué va después de la acetona / qué orden de lavado lleva / qué secuencia de limpieza pide
    qué dice la hoja de la limpieza / qué dice la ficha del lavado de la pistola / flush solvent / flush sequence
    what solvent to flush / what do I clean the gun with / what do I flush with / acetone or IPA first
    cleaning solvent de la hoja / what thinner / what cleaner / limpieza del equipo según la hoja
    lavado de equipo según la ficha / solvente de limpieza / secuencia de lavado de la pistola / se lava con thinner
    se lava con acetona / se lava con alcohol / sirve el thinner para lavar / sirve la acetona para el rodillo
    cuánto tiempo se lava / cuánta acetona se pasa / cuándo hay que lavar la pistola según la hoja
  `,
  lacking: `
    qué pide la orden 88 / qué exige la orden 88 / qué ensayos pide la orden 12 / qué pruebas pide la obra 9
    qué ensayos faltan en la 7 / qué pruebas faltan en la 7 / qué lecturas faltan para liberar / qué falta para liberar la 3
    qué falta por medir en la 7 / qué falta por ensayar / qué queda por medir antes de liberar / qué queda por ensayar en la 5
    qué ensayo falló en la 7 / qué falló en la 8 / qué no pasó en la 4 / qué ensayos no pasaron / qué lecturas fallaron
    qué le falta a la 7 para liberarla / qué ensayos le quedan a la tapa / qué pruebas le faltan a la carcasa
    qué pide el cliente de ensayos / qué ensayos exige el cliente / qué pide la orden antes de liberar
    qué lecturas pide la orden / qué ensayos quedan pendientes / qué pruebas están pendientes en la 6 / qué ensayos hay que hacer para liberar
  `,
};
