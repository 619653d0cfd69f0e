// How Spanish speakers say it: film, adhesion, release, hold. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfChecks2: Sayings<SaidMeaning> = {
  film: `
    la 7 mide 20 / mide 18 micras la tapa / midió 21 seco la 8 / 20 micras en seco / 19 secas la brida / seco 20
    seco de la 7: 21 / en seco la tapa da 18 / en seco 0.8 la carcasa / ya seca y curada mide 20 la 5 / espesor 20 la 7
    espesor de la tapa 19 micras / espesor seco 21 / espesor final 18 la 8 / espesor medido 20 la voluta
    espesor promedio 19,5 / grosor seco 20 la 5 / grosor de película 18 la brida / micraje 21 / película 20 la 7
    película seca 19 la tapa / película de 21 micras en la 8 / película curada 18 / la película quedó en 20
    la película de la carcasa en 0.8 mils / la capa seca mide 20 / la capa quedó en 19 / DFT 20 / DFT la tapa 19
    dft 0.8 / dft promedio 20 la 8 / DFT 18-22 la voluta / dft ok 20 la brida / EPS 20 la 7 / eps 19 micras
    dry film 0.8 / dry film la tapa .9 / dry 20 la 5 / dry mils 0.75 la 6 / gauge dry 0.8 la 7 / el gauge dice 20
    el gauge seco da 19 la tapa / gauged la 8, .9 mils / mil gauge says .8 / film thickness 20 la carcasa
    film 19 la 5 / thickness .8 la bracket-8 / mils secos 0.9 la voluta / el medidor da 20
    el medidor marca 19 en la 7 / con el medidor 21 la tapa / el medidor de película dice 18
    el elcómetro no, el otro: 20 / el magnético da 20 en la brida / con la sonda de película 19 la 8
    le medí la película a la 7: 20 / le medí el espesor a la tapa, 19 / le tomé espesor a la carcasa y da 21
    le tomé cinco puntos a la 8: 18 20 19 21 20 / tomé espesores: 19, 20, 20 la 5 / medí en seco la voluta: 20
    medí curada la tapa, 19 / medí la película de las tres: 18, 19, 20 / medidas las tapas, 20 micras
    medida en seco la brida 21 / medición de espesor 20 la 7 / medición seca 0.8 la 6 / cinco puntos y promedia 20 la 7
    tres puntos 18 19 20 la tapa / diez lecturas, media 20,1 la carcasa / media 19 la 8 / mínima 17 máxima 23 la voluta
    min 18, max 22 la brida / rango 18 a 21 la 5 / se midió espesor seco: 20 µm / se midió la 7, 19 micras secas
    se tomaron espesores de la tapa: 18 a 22 / se obtiene 20 µm de promedio en la pieza 4
    resultado de espesor 19 la 8 / control de espesor 20 la brida / quedó en 20 seca la 7
    quedó de 19 la tapa ya curada / quedó flaca, 12 seco la 8 / quedó gruesa, 35 seco la carcasa
    salió en 20 seca la voluta / salió de 0.8 la brida / anda en 20 seca la 5 / trae 0.9 seca la 6
    veinte micras la siete / veinte de seco la tapa / diecinueve y medio la ocho en seco
    punto ocho mils en seco la carcasa / dieciocho micras secas la voluta / ya curada le medí 20
    ya fría la tapa mide 19 / después de curar 21 la 8 / recién curada da 20 / después del horno mide 18 la brida
    al día siguiente la 5 mide 20 en seco / Lia midió el seco de la 7, 20 / Omar le sacó 19 a la tapa en seco
    QC midió 20 la voluta / el inspector sacó 21 de espesor / apunta seco 20 la 8 / anota espesor 19 la brida
    registra dft 20 / 7 dft 20 / tapa 19 seco / le informo que el espesor seco promedio de la pieza 4 es de 20 µm
    señor, la carcasa registró 19 micras secas / se verificó espesor de película seca: 21
    la medi ya curada xq la piden, 20 / ps seco 19 / pos da 18 seca / nomas 15 de espesor seco la 8
    gauge reads 20 dry la 7 / got .8 dry la tapa / dry it's 0.9 la carcasa / mil thickness .8 dry
    measured dry film 20 la 8 / quillo 20 de seco / parce quedó en 19 micras curada / boludo 21 en seco
    mijo mide 18 seca
  `,
  adhesion: `
    adherencia 5B / adherencia de la 7, 4B / adherencia buena la tapa / adherencia ok la 8
    adherencia perfecta la carcasa / adherencia mala en la 5 / adherencia grado 0 la voluta
    adherencia clase 1 la brida / adherencia 4A la 6 / le hice la prueba de adherencia a la 7, 5B
    le hice la cinta a la tapa y no se llevó nada / le hice cruz y cinta a la 8, bien
    le hice el corte y la cinta, sin pérdida / le hice cuadritos a la 5 y aguantó / prueba de adherencia pasada la 7
    prueba de adhesión ok, tapa / prueba de cinta buena la 8 / prueba de cuadritos 5B
    prueba de la cinta: limpia, la voluta / ensayo de adherencia clase 0 la brida / ensayo de corte 1
    la cinta salió limpia / la cinta no se llevó nada / la cinta se trajo un cuadrito, 4B
    la cinta levantó pintura en la 9, 2B / la cinta arrancó media cuadrícula, 1B la 6
    jalé la cinta y salió limpia la 7 / no se levantó con la cinta la tapa / no se despegó nada, 5B
    se despegó tantito en la orilla, 4B / se levantó en la cruz la 8, 3A / se peló con la cinta la 5
    se descascaró en la prueba la 3, clase 3 / cross cut 5B / crosscut la 7 clase 0 / cross-hatch la tapa 4B
    hatch test 5B la 8 / tape test 5B / tape pull limpio la voluta / tape test good la brida / adhesion 5B
    adhesion test pass la 5 / adhesion bad la 6, 1B / x-cut 5A la 7 / xcut 4A / pull off 5 MPa
    pull-off 900 psi la tapa / pull test 6 MPa la carcasa / pulled el dolly a 1000 psi / dollies a 5, 6 y 6 MPa
    el dolly aguantó 7 megas / botón arrancado a 6 MPa, la 8 / tracción 6 megapascales la voluta
    arranque 5,5 MPa la brida / arrancamiento 6 MPa pieza 4 / rompió el pegamento a 7 MPa, la película no
    falla cohesiva a 6 / falla adhesiva a 2 MPa la 5 / enrejado 0 / enrejado 5B la 7 / cuadrícula 5B
    cuadrícula limpia la tapa / cuadriculado 4B la 8 / rejilla 5B la voluta / corte por enrejado clase 0, brida
    cortes cruzados 5B / cuadritos completos la 6 / ni un cuadrito se levantó / agarra bien, 5B
    pegó bien la 7, cinta limpia / bien agarrada la tapa, prueba de cinta / bien pegada la película de la 8, 5B
    no tiene agarre la 5, se fue toda con la cinta / mal agarre la 3, 0B / se probó adherencia de la pieza 4: 5B
    se ensayó la testigo, 5B / resultado adherencia: 4B / el cupón dio clase 0 / la testigo pasó la cinta
    Lia hizo la cinta a la 7, 5B / Omar dice 4B en la tapa / QC le dio 5B de adherencia / apunta adherencia 5B
    anota 5B la 7 / registra cinta limpia la tapa / 7 5B / tapa 4B / 8 clase 0 / adh 5B la 5 / adhes 4B / cinta ok la 6
    le informo que la prueba de adherencia de la pieza 4 resultó 5B / señor, la cinta no desprendió película
    se realizó corte enrejado con resultado clase 0 / le hice la cinta xq la pide el cliente, 5B / ps 5B
    pos no se despego nada con la cinta / nomas un cuadrito, 4B / did the tape test, 5B la 7
    tape pulled nothing la tapa / nothing came off con el tape / tape took two squares, 3B / scored y taped la 8, 5B
    quillo 5B la 7 / parce la cinta salió limpia / boludo dio 4B / mijo ni un cuadrito se cayó
  `,
  release: `
    quita la retención de la tapa / levanto la retención, fue mala lectura / retención levantada en la brida / ya puedes quitarle la retención a la 8
    saca las piezas de retención / se levanta la retención, volvimos a medir / le quité la retención al carril / quítale el hold a la 7
    la jefa levanta la retención / levantamos la retención tras mirarla otra vez / libera la retención de la carcasa / fuera la retención de la 4
    anula la retención de la base / ya no está retenida la tapa, levantada / levanta el hold, la galga estaba mal / levantamos el hold de las tres
    quita la etiqueta de retenida a la 6 / esa retención se puede quitar / cancela la retención de la brida / termina la retención de la 9, pasó
    liberada / liberada la 7 / libero la tapa / liberé la 8 / liberamos la carcasa / liberen la voluta / se libera la 5
    se liberó la brida / queda liberada la 6 / quedan liberadas las tapas / ya liberada la 9 / suelta la 7
    suelto la tapa / solté la 8 / soltamos la carcasa / soltada la voluta / suéltala / suéltenla la 5
    ya la solté, la brida / ya se puede ir la 6 / ya se va la 9 / se va la 7 con el cliente / aprobada / aprobada la 7
    apruebo la tapa / aprobé la 8 / aprobamos las tres / apruébala la carcasa / se aprueba la voluta
    queda aprobada la brida / la doy por aprobada la 5 / aprobada para entrega la 6 / doy por buena la 7
    la doy por buena / damos por buenas las tapas / buena la 8, que salga / buenas las tres
    está buena la carcasa, que se vaya / la 5 está bien, entréguenla / todo bien con la voluta, sale / visto bueno la 7
    visto bueno para la tapa / le doy el visto bueno a la 8 / vobo la carcasa / vo bo de la voluta
    con mi ok sale la brida / ok de salida la 5 / ok para entregar la 6 / luz verde a la 9 / le doy luz verde a la tapa
    conforme la 7 / conforme la tapa, liberar / pieza conforme, autorizo salida / doy conformidad a la 8
    acepto la carcasa / aceptada la voluta / aceptada por calidad la brida / pasa la 5 / pasó todo la 6, liberada
    inspección ok, liberada la 7 / inspección final aprobada, tapa / pasó la inspección, se entrega la 8
    revisada y liberada la carcasa / revisada y aprobada / firmada y liberada la voluta / firmo la salida de la brida
    firmo la 5 / firmé la liberación / firmado, sale la 6 / sello de aprobado a la 9 / etiqueta verde a la 7
    le puse tarjeta verde a la tapa / tag verde la 8 / green tag en la carcasa / green light la voluta / release la 7
    release / release the tapa / released the 8 / ya la releaseé / releasing la carcasa / good to go la voluta
    it's good, release la 5 / ship it la brida / ready to ship la 6 / approved la 9 / approved ya la tapa
    lista para entrega la 7 / lista para el cliente la tapa / lista para embarcar la 8 / lista para salir la carcasa
    lista para despacho / a embarques la voluta / a entrega la brida / se entrega la 5 / entregable la 6
    se puede entregar la 7, firmado / se puede ir la tapa, aprobada / puede salir la 8
    puede salir la carcasa, revisada / pueden llevarse la voluta / que se la lleven, aprobada la 5
    ya pueden embarcar la brida / le quito el hold a la 7 / quitado el hold de la tapa, sale
    levanto la retención de la 8 / fuera retención, liberada la carcasa / ya sin hold la voluta, suelta
    resuelto lo de la 5, liberada / Bea liberó la 7 / Bea la aprobó / el inspector aprobó la tapa / QC la soltó
    calidad liberó la 8 / Kari da por buena la carcasa / la jefa la soltó, la voluta
    el cliente la aceptó, release la brida / apta la 7 / apta para uso la tapa / apta para servicio la 8
    habilitada para entrega la carcasa / autorizada la voluta / autorizo la entrega de la 5 / autorizo liberar la brida
    proceda a liberar la 6 / libera el job 88 completo / libero todo el trabajo 94 / todo el lote liberado
    toda la fila aprobada / de la 1 a la 9 liberadas / apunta liberada la 7 / anota release la tapa
    marca aprobada la 8 / 7 liberada / tapa ok sale / le informo que la pieza 4 queda liberada para entrega
    señor, autorizo la salida de la carcasa / revisada sin defectos, se libera la tapa / ya la solte xq paso todo, la 8
    ps ya esta liberada / pos que se vaya la 5 / nomas falta el papel pero ya está liberada la 6
    releasing la 7, looks good / la tapa is released / pass la 8, release / all good, release la carcasa
    cleared to ship la voluta / quillo liberá la 7 / parce queda liberada la tapa / boludo soltá la 8, está aprobada
    mijo ya está aprobada la brida, que salga
  `,
  hold: `
    en hold la 7 / hold la tapa / hold la 8, gotas / on hold la carcasa, bubbles / put la 5 on hold, runs
    la puse en hold, traía grumos / pon en hold la voluta por delgada / holdéala la brida, trae sags
    hold it la 6, orange peel / retén la 7 / retengo la tapa, chorreada / retuve la 8 por burbujas
    retenida la carcasa, piel de naranja / retenida la voluta por falta de espesor / queda retenida la 5, gel
    se retiene la brida por escurrimiento / retengan la 6 / aparta la 7 / aparté la tapa, trae grumos
    apartada la 8, polvo / apártenla la carcasa, se peló / la dejo aparte la voluta, raya / a un lado la 5, burbujas
    a un ladito la brida, hay que verla / la puse a un lado por chorreada / detén la 7
    detuve la tapa, no cumple espesor / detenida la 8, poros / detenida por calidad la carcasa
    deténganme la voluta, trae cráteres / paro la 5, gotas / párenme la brida, está mal / frenada la 6, película baja
    bloqueada la 7 / bloqueé la tapa por ampollas / bloquea la 8 / bloquéenla la carcasa
    queda bloqueada la voluta hasta revisar / congelada la 5 por orden de Bea / en cuarentena la brida
    a cuarentena la 6, mezcla dudosa / no sale la 7, trae burbujas / no sale la tapa hasta que la vean
    no se va la 8, chorreos / no se entrega la carcasa, falta adherencia / no la entreguen la voluta, ampollada
    que no se vaya la 5, tiene gel / no dejen salir la brida / no pasa la 7 / no pasó la tapa, 12 micras
    no pasó inspección la 8 / no pasó la cinta la carcasa, retenida / no cumple la voluta, espesor
    no da el espesor la 5, hold / no la apruebo la brida, descuelgues / no conforme la 6 / rechazada la 7
    rechazo la tapa por piel de naranja / rechazada en inspección la 8 / la rechazaron, la carcasa, por granos
    mala la voluta, hay que retenerla / quedó mal la 5, retenida / salió fea la brida, aparte / salió mal la 6, hold
    en espera la 7 / en espera la tapa por el espesor / pendiente la 8, no la suelten, burbujas
    en revisión la carcasa, no sale / en observación la voluta, manchas / a la espera de Bea la 5, gotas
    en pausa la brida, falta dato / tarjeta roja a la 7 / etiqueta roja la tapa / etiqueta amarilla a la 8, rayada
    red tag la carcasa / red tag on la voluta / le puse tag rojo a la 5 / cinta roja a la brida, no tocar, retenida
    marcada en rojo la 6, no va / trae gotas la 7, hold / trae lágrimas la tapa, retenida / trae basura la 8, aparte
    trae pelos la carcasa, hold / trae ojos de pescado la voluta / trae poros la 5, se queda
    trae óxido abajo la brida, retenida / tiene chorreaduras la 7, retenla / tiene burbujas la tapa, se queda
    tiene cáscara de naranja la 8, aparte / tiene una calva la carcasa, no sale / tiene un golpe la voluta, hold
    tiene rayones la 5, hold / está chorreada la 7, hold / está blanda la tapa, la retengo
    está pegajosa todavía, retenida la 8 / está delgada la carcasa, hold / está manchada la voluta, hold
    está ampollada la 5, hold / está pelada la brida, aparte / se chorreó la 7, la aparto
    se ampolló la tapa en el horno, retenida / se rayó la 8, hold / se golpeó la carcasa, hold
    se peló la voluta en la prueba, retenida / se arrugó la 5, retenida / se blanqueó la brida, hold
    por runs la 7 en hold / por falta de espesor retenida la tapa / por adherencia baja hold la 8
    por mezcla fuera de relación retengo la carcasa / por curado corto retenida la voluta
    por orden del cliente hold la 5 / Bea puso en hold la 7 / el inspector retuvo la tapa / QC paró la 8
    Kari la bloqueó, la carcasa / el cliente no la quiso, hold / apunta hold la 7, runs / anota retenida la tapa, gel
    7 hold / tapa retenida burbujas / 8 hold delgada / le informo que la pieza 4 queda retenida por burbujas
    señor, se retiene la carcasa por espesor insuficiente / se detectaron escurrimientos, retener la tapa
    la aparte xq trae gotas, la 8 / ps hold la 5 / pos no sale, trae granos la 6 / nomas apartala, la 9 trae pelos
    holding la 7, runs / la tapa is on hold, too thin / hold la 8 till Bea sees it, bubbles
    put it aside, la carcasa, gel specks / quillo la 7 se queda, tiene chorreones
    parce retengamos la tapa, tiene burbujas / boludo frená la 8, está chorreada
    mijo no la sueltes, la brida trae poros, hold / retenida la 7 por orden de calidad, no sale hoy
  `,
};
