// How Spanish speakers say it: prep blasting, prep sanding, prep wiping, prep grease-off, surface. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPrep: Sayings<SaidMeaning> = {
  'prep blasting': `
    granallada la 7 / chorreada la 8 con granate / ya blastié la bracket-8 / blasteada la 3
    acabo de blastear el housing / blast hecho a la valve 2 / blasting done en la impeller-3 / sandblast a la 5 y la 6
    sandblasteado el tanque / ya le dimos sandblast a la reja / arenada la 9 / arené la placa grande
    le tiré arena a la carcasa / le metí chorro de arena a la 10 / chorro a la 11, Sa 2½
    chorreado Sa 2 y medio en las cuatro bridas / a metal blanco la 12 / metal blanco en el rodete, chorro
    SP10 la 13, blast / blasteé a near white las dos tapas / near-white blast en la cover / granallé 1 2 y 3
    granallado de la voluta terminado a las 8:30 / terminé de chorrear la barandilla / terminado el blast de la rack 1
    he chorreado la 14 con corindón / corindon fresco a la 15 / con granalla angular la 16
    granalla de acero a la bomba, perfil 40 / perfil 50 micras en la 17 tras el chorro
    2 mils de profile después del blast, part 18 / limpieza por chorro en la 19 / limpieza abrasiva a presión, pieza 20
    pasada por el gabinete de blast la 21 / pasé por la cabina de granallado las chicas
    en la sandblaster quedaron las cinco arandelas / en el cabinet le di a los brackets
    microesferas de vidrio a la tapa de inox / glass bead a la 22 / bead blast al aluminio, listo
    garnet a la 23, quedó parejita / le di con garnet al codo / le pegué con la manguera del blast a la 24
    tiro de arena en la 25 listo / ya le tumbé el óxido a chorro a la 26 / ya quedó blanca la 27 del sandblast
    quedó gris parejo la 28, recién granallada / recien salida de la granalladora la 29 / salió de granalla la 30
    volvieron del chorro las rejillas, chorreadas hoy / chorreando la 2 ahora / ando blasteando la 4
    estoy granallando el carro 1 / estamos con el chorro en la tubería / Beto blasteó la 31
    el chavo ya sandblasteó las plates / Lucía ha granallado las bridas a las nueve
    uf qué polvareda pero ya granallé la carcasa / por fin chorreada la grande / listo jefe, arenado el tanque por fuera
    la neta quedó bien blanquita la 8 con el blast / che ya arené la brida / mi hermano ya le di chorro al bracket
    a chorro 5, 6 y 7 / chorro seco a la serie 4411 / wet blast a la 32
    chorro húmedo a la tapa vieja y secada con aire / anota granallada la 33 / apunta blast de la 34, 10:05
    prep de la 35: granalla / 💨 blasteada la 1 / blast 12 / preparada a chorro la placa testigo
  `,
  'prep sanding': `
    lijada la 7 / lijé la 8 con 120 / le di lija a la bracket-8 / sandeada la 3 / ya sandeé el housing
    sanding hecho en la valve 2 / sanded la 5, grano 180 / lija del 220 a la carcasa / orbital a la 9
    le pasé la orbital a la placa / con la rotorbital las tapas / estropajo verde de lijar a la 10
    le pasé fibra gris a la impeller / pad gris a la 11 / matizada la 12 / maté el brillo de la 13 con lija fina
    matado el brillo a la tapa de inox / esmerilada la 14 / amolados los cordones de la 15
    con la amoladora al codo, quedó parejo / grinder en las soldaduras de la 16
    pasé la flap disc por el borde de la 17 / disco de láminas a la brida 3 / lijadora de banda a la reja
    lijadas a mano las cuatro chicas / a mano con taco y lija la 18 / cepillo de alambre a la 19
    cepillada con alambre la barandilla / wire wheel al rust de la 20 / le quité el óxido con lija a la 21
    raspé y lijé la 22 / rebajé las aristas de la 23 lijando / redondeados los filos con lija, pieza 24
    St 3 con herramienta en la voluta / power tool a metal en la 25 / lijando la 2 ahorita
    estoy lijando las de la mesa / acabo de lijar el rodete / he lijado 1, 2 y 3 a las nueve
    terminado el lijado de la placa grande / ya quedó lijadita la 4 / uf qué brazo me duele, lijada la 6
    por fin terminé de lijar el tanque / la neta quedó bien rasposita la 26 / che ya la lijé a la brida
    Toño le metió lija a la 27 / el aprendiz ha lijado la 28 entera / lija 80 y luego 150 a la serie 4411
    apunta lijada la 29 / lija 5 y 6
  `,
  'prep wiping': `
    limpié la 4, la 5 y la 6 / limpiada la carcasa / limpias la 3 y la 4 / las placas ya limpias / limpié todas con trapo
    limpié la 7 antes de la capa / limpiadas las tres tapas
    limpiada la 7 con alcohol / trapo con acetona a la 8 / le pasé IPA a la bracket-8 / ya wipeé la 3
    wipe con IPA al housing / wipe down de la valve 2 / wiped la 5 con acetone / solvent wipe a la impeller-3
    limpié con isopropílico la 9 / isopropanol y trapo sin pelusa en la carcasa
    pasé el trapito con solvente por la placa / le di su trapazo de acetona a la 10 / trapeada con alcohol la 11
    la 12 repasada con disolvente / repasadas las tapas con alcohol, trapo blanco limpio
    el trapo ya sale blanco en la 13 / paño con acetona en la 14, sale limpio / paño limpio y alcohol a las tres bridas
    bayeta con disolvente al rodete / dos pasadas de IPA a la 15 / una pasada de acetona y otra de alcohol a la 16
    frotada la 17 con alcohol / frote con solvente en el codo / froté los bordes de la 18 con isopropílico
    tack rag y alcohol a la cover / lint free con IPA, part 19 / toallita de alcohol a las chicas
    estopa con thinner a la reja / le pasé thinner con estopa a la bomba / pasada de MEK con trapo a la 20
    limpieza con disolvente en la voluta, 10:15 / limpieza a trapo de la 21 / limpio con acetona el interior de la 22
    limpiando con IPA la 2 ahora / ando wipeando las plates / estoy con el trapo y el alcohol en la 4
    acabo de pasarle alcohol a la 6 / he pasado acetona a 1, 2 y 3 / hace dos minutos limpié con alcohol la 23
    ya le quité las huellas con acetona a la tapa / quité las marcas de dedos con IPA en la 24
    ya está alcoholizada la 25 / enjugada con solvente la barandilla / secada con paño tras el alcohol la 26
    mojé el trapo en acetona y repasé la placa testigo / listo, wipe a la rack 2 / ok la 27 bien limpiecita con alcohol
    por fin limpias a trapo las rejillas / menudo polvo, la 28 limpia ya con disolvente
    la neta salió bien negra la estopa, segunda pasada de alcohol a la 29 y limpia / che le pasé alcohol a la brida
    mi hermano ya le di con acetona al bracket / Lucía repasó con alcohol la 30 / el Beto le dio wipe a la 31
    solvente 5 y 6 / IPA la 8 / acetona 7 / serie 4411 limpiada con disolvente / anota wipe a la 32
    apunta trapo y alcohol en la 33
  `,
  'prep grease-off': `
    desengrasada la 7 / le quité la grasa a la 8 / degreased la bracket-8 / degreaser al housing
    ya le di degrease a la 3 / desengrasante a la valve 2 y enjuague / desengrasé las cuatro bridas
    desengrase de la carcasa hecho / lavada con detergente alcalino la 5 / lavado alcalino a la placa, aclarada y seca
    le eché desengrasante a la impeller-3 y la enjuagué / la 9 ya sin aceite / quitado el aceite de corte de la 10
    saqué el aceite de la 11 con desengrasante / limpié la grasa de la bomba / grasa fuera en la 12
    sin grasa el rodete, prueba de agua buena / la gota se extiende en la 13, desengrasada
    water break ok en la 14 después del degreaser / pasada por la lavadora de piezas la 15 / parts washer a los brackets
    en la tina de desengrase las chicas, ya salieron / ultrasonidos a la 16, fuera aceite
    vapor caliente y jabón a la 17 / hidrolavada con jabón la reja / steam clean al tanque pa quitar la grease
    tallé con jabón desengrasante la 18 / cepillo y desengrasante al codo / le bajé toda la grasa a la tapa
    estaba bien grasosa la 19, ya la desengrasé / venía pringada de aceite la 20, ya desengrasada / desengrasando la 2
    ando quitándole la grasa a la 4 / acabo de desengrasar la voluta / he desengrasado 1, 2 y 3 a las ocho
    por fin salió la grasa de la barandilla / che ya desengrasé la brida / mi hermano ya le saqué la grasa al bracket
    apunta desengrasada la 21 / Toño le dio desengrase a la 22
    palancas 1 a 4 limpias, ya no tienen grasa / bujes 1 al 6 sin nada de aceite, ya limpios
    limpios de grasa los postes 1 a 3 / la 9 quedó limpia, sin rastro de aceite
    ya no queda grasa en la 2 y la 3 / limpiadas las tapas 1 a 4, sin grasa ninguna
  `,
  surface: `
    metal desnudo a 19 / el acero está a 17 grados / superficie 18 la 7 / la 8 sin pintar está a 66 F / sup 21
    superficie de la placa a 20,5 / temp de superficie 19 en la carcasa / surface temp 68 / surface 70 en la bracket-8
    surface de la impeller-3 at 65 / metal pelón a 72 / el metal antes de pintar trae 64 / el fierro está a 15
    el hierro frio, 12 grados / fierro helado, 48 F en la bomba / la chapa marca 22 / chapa a dieciocho
    la pieza cruda está a 20 / la 5 en crudo 19,5 / en crudo la valvula da 17 / toqué con la sonda el metal de la 9: 18
    sonda de contacto 20 en la tapa limpia / termómetro de imán en la placa, 16 grados
    el magnético marca 62 en el tanque / el imancito da 19 en la barandilla / le pegué el termómetro al acero y son 21
    infrarrojo a la pieza sin pintar, 23 / con el laser el steel anda en 69 / láser al metal 18,4
    IR gun 71 on the bare metal / IR en superficie 20 / leí 22 en la superficie de la brida
    lectura de superficie: 3 a 17 / lectura metal 18 antes de aplicar / medida la superficie de la 2, 19
    medí la chapa y está a 24 / le tomé la temp a la lámina, 75 / tomé temperatura del sustrato, 20 / sustrato 18 °C
    sustrato a 65 F, rodete / temperatura del soporte metálico 21 grados / temp del acero 16 y medio
    temp pieza antes de coat 70 / temp de la chapa 13, viene de la calle
    acaba de entrar de la calle y el metal está a 9 / las piezas del camión están a 8 grados
    la carcasa lleva toda la noche dentro, 18 en superficie / ya se atemperó la 6, 20 en el metal
    ya se templó el fierro, 66 / el metal ya anda a la par del cuarto, 22 / el acero sigue frío a 14
    la grande sigue en 57 fahrenheit sin pintar / la bomba gorda está más fría, 15 en la piel / piel de la pieza 19
    la cara de la brida a 21 / por abajo el tanque está a 16 / por el lado de la sombra la plancha da 17
    al sol la chapa está a 34 / le pegó el sol, 95 F la lámina / calentita la reja, 30 en el metal / tibio el inox, 25
    el inox a 20 / el aluminio de la tapa 23 / la fundición a 18 / steel a 67 / el steel trae sesenta y cuatro
    el metal está a diecinueve / metal diecisiete y medio / diecinueve grados en superficie
    setenta fahrenheit en la superficie de la ocho / superficie a las 8:10, 16 / hace cinco minutos la chapa estaba a 18
    ahorita el metal está en 68 / ahora mismo superficie 20 en la 4 / antes de la primera mano, 19 en el hierro
    recién granallada la 5, metal a 24 / despues de blastear el metal quedó a 78
    después de limpiar con alcohol la 3 está a 17 / ya limpia la placa, está a 21 la superficie
    listas para pintar, metal en 22 / bueno la superficie anda en 18, vamos bien / menos mal, el metal ya en 19
    uf qué frío está este fierro, 10 grados / la neta está bien frío el metal, 52 / che la chapa está a 13
    mi hermano el hierro ta a 28 / jefe el acero a 20 / ojo el metal a 11 / anota superficie 18,5
    apunta metal 21 en la 7 / registra superficie 64 F, valve 2 / apúntame la chapa a 19 / serie 4411 superficie 20
    🔩 18 grados / 🌡️ metal 21 / 3 chapa 17 / 7 sup 19 / sup 8: 20 / ts 18 / t superficie 20
    las tres placas a 19 en seco y sin pintar / el punto más frío del tanque 15
    promedio de superficie 20 en cinco puntos / superficie 18 con aire 22 / Lucía midió el metal, 19,8
    el Beto le puso el termometro al bracket limpio y trae 71
  `,
};
