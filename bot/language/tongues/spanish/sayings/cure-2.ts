// How Spanish speakers say it: dry, cure oven, cure room, out, temp. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCure2: Sayings<SaidMeaning> = {
  dry: `
    ya secó / ya está seca / seca / secas / seca la 7 / sequita la 8 / ya secaron todas / seca la tapa
    ya quedó seca la carcasa / secó la 5 / secó bien la 3 / ya oreó la brida / ya oreada la 6 / oreó la tapa
    bien oreada la 9, no pega / ya no pega / no pega la 7 / no pega nada la 8 / no se pega al dedo la 4
    no se pega el guante en la voluta / no agarra el guante la 2 / no deja marca la 7 / no marca la 8
    no mancha el guante la tapa / no mancha / no deja huella la 5 / no se queda la huella en la 9
    no se queda nada en el dedo / no embarra la 3 / no tizna la 6 / no se corre la 4
    no se mueve la película de la 8 al tocarla / no jala hilo / no está pegajosa la tapa / nada pegajosa la 7
    nada de pegue la 3 / cero pegajosa la 9 / sin pegue la brida / sin tack la 6 / toqué la 7 y está seca
    toqué con el nudillo la 8, seca / toqué la tapa y nada / toqué tres puntos de la carcasa y seca / la toqué y ya
    la toqué y no pasó nada, la 5 / le toqué la orilla a la 4 y seca / le puse el dedo a la 7: seca
    le puse el guante y sale limpio, la 8 / le apreté el dedo a la 6 y no marca / le pasé la mano a la tapa, seca
    le pasé el guante a la 9, limpio / palpada la 3, seca / prueba de tacto ok la 7 / prueba del guante bien, la 5
    prueba del dedo buena en la tapa / al tacto seca la carcasa / al dedo seca la 4 / seco al tacto el eje
    secado al tacto alcanzado, brida 3 / tocó Lia la 7 y seca / Omar dice que ya no pega la 8, la tocó
    el chavo le puso el dedo a la tapa, seca / Ola comprobó la 6 al tacto: seca / dry la 7 / dry ya / it's dry la tapa
    ya dry el housing / dry to the touch la 8 / touched it, dry, la 5 / not tacky la 6 / no longer tacky la tapa
    no está sticky la 9 / ya no está sticky / not sticky anymore la 4 / se secó rápido la 7 / se secó la fila entera
    se secaron las chicas / se secó por fin la voluta / secaron las tapas del bote 1 / secó el eje a los doce minutos
    a los quince secó la 3 / en diez minutos ya estaba seca la 8 / tardó pero ya secó la 5 / con el airecito secó la 6
    ya evaporó, seca la 7 / ya se fue el solvente de la tapa / ya se le fue lo mojado a la 9 / perdió lo mojado la 4
    ya perdió el brillo de mojada, seca la 3 / ya está mate, seca al dedo la 8 / la película está firme al tacto, la 7
    firme al dedo la tapa / firme y sin pegue la 5 / ya cerró la película de la 6, seca / ya se deja tocar
    ya se puede agarrar la 7, está seca / ya la agarré sin marcarla, la 8 / ya la pude voltear, seca por este lado
    ya la cargué y no se marcó, la 9 / la moví al carro, ya seca / todas secas / todo seco el carro / toda la reja seca
    la fila de abajo seca / las cuatro secas al tacto / las dos caras secas, placa 3 / por ambos lados seca la 5
    ya secas la 1, la 2 y la 3 / del 4 al 9 secas / la carcasa está seca, confirmo / confirmo seca la 7
    seca confirmada la tapa / anota seca la brida / apunta: 8 seca / marca seca la 5 / registra seca la 9 a las 10:04
    a las 10:02 estaba seca la 6 / 8 dry / 3 seca al tacto / tapa seca / carcasa seca / 4, 5 y 6 secas / bracket-8 dry
    impeller-3 seco / rail-03 seco / eje seco / brida seca ok / seca ya jefe / seca compa / seca che / seca tío
    lista al tacto la 7 / lista de secado la tapa / buena al tacto la 8 / ta seca la 5 / ta sequita mi hermano
    está seca, pa / se encuentra seca la pieza 9 / la pieza 4 se encuentra seca al tacto
    ya le puse el guante limpio a la 7 y no se llevó nada, está seca
    la dejé quince minutos y ya está seca al tacto la tapa / como hace calor secó rapidísimo la 8
    con el extractor prendido secó en once minutos la carcasa / le informo que la pieza 4 ya se encuentra seca al tacto
    jefe, ya revisé la voluta con el dedo y está seca / confirmado, la brida no deja marca
    señora, las tapas ya están secas, las toqué una por una / ya seco la 5 nomas la toque tantito / ps ya esta seca
    pos ya no pega / ya q seco la 6 / ta seca wey / la 9 ya ni mancha / ya no se pega la tapa q pintamos
    seca seca la 3 / ya quedo sequita la 8 / it's dry to touch la 7, I checked / checked con el glove, dry la tapa
    finger test passed, la 8 / no mark en la carcasa / glove comes off clean, la 9 / la touchié y no mark
    ya no está tacky la brida, la toqué / la esquina que tardaba ya secó / lo último en secar fue el borde y ya
    por el lado gordo también seca, la 6 / donde estaba chorreadita también ya secó
    ya hasta el canto está seco de la 5 / por dentro y por fuera seca la carcasa
    mira ya está la 7, sequita como galleta / quillo ya está seca la tapa / parce ya secó la 8
    boludo secó al toque la 9 / mi pana la brida ya secó / coño por fin secó la voluta / ya secó la desgraciada
    dedo limpio en la 7 / guante limpio en la tapa / nudillo limpio en la 8 / dedo y nada, la carcasa
    puse el dedo y limpio, seca la 5 / pasé el dedo y no se movió nada, la brida
    toqué la esquina de la voluta y no quedó huella
  `,
  'cure oven': `
    metí la 7 al horno / metí la tapa / metí las tres en el horno / metidas al horno / metida la carcasa al horno
    ya metí la fila / ya la metí / metimos el carro al horno / metió Lia la 5 al horno / metiendo las chicas
    ya entró la 7 / entró la tapa al horno a 90 / entraron las cuatro / ya entraron al horno
    ya están dentro del horno / ya está dentro la 8 / ya está adentro la carcasa / adentro las tapas, 90 grados
    al horno la 7 / al horno / al horno todas / al horno la tapa y la brida / pal horno la 8 / pa dentro del horno la 5
    para el horno la 3 / directo al horno la 6 / derechito al horno la 9 / en el horno la 7 / en el horno ya
    en el horno desde las 10 / en horno a 90 la tapa / en el horno grande la voluta / en el horno dos las chicas
    en horno, 95 °C, piezas 3 a 6 / en el fondo del horno la 9 / puse la 7 en el horno / puse a hornear la tapa
    puse las tres a curar en el horno / puesta en el horno la carcasa / puestas a hornear / puse al horno la voluta, 90
    la puse dentro y cerré la puerta del horno / cargué el horno / cargado el horno 1 con la 7 y la 8
    cargamos el horno con las tapas / carga completa en el horno / la carga ya está en el horno / cargando el horno
    subí la pieza al horno / subimos la bomba al horno / horneando la 7 / horneando ya / horneando la tapa a 90
    se está horneando la brida / se hornea la 8 / a hornear / a hornearse la 5 / hornada 2: piezas 4, 5, 6
    hornada de la tarde dentro / primera hornada adentro / curando en el horno la 7 / curando a 90 la tapa
    curándose en horno la voluta / cura en horno iniciada / cura de horno para la 8, 90 grados
    curado de horno comenzado / curado a 90 °C en marcha, pieza 5 / empezó el horno de la 7
    empieza su hora en el horno la 8 / empezó a curar en horno la tapa / arrancó su horneado la 3
    arranca el curado en horno / inicia horno la carcasa / inició cura en horno la 9 / oven la 7 / oven 90 la tapa
    in the oven la 8 / in oven ya / put la 5 in the oven / I put la tapa en el oven / la puse en el oven
    ya están en el oven / loaded el oven con las tres / load 2 in oven / baking la 7 / baking ya la tapa
    bakeando la 8 / la estoy bakeando / bake started la 5, 195 / curing oven 1 / oven cure start la 9
    oven at 200, adentro la 6 / el oven ya tiene la bracket-8 / enhornadas las tapas / enhorné la 7
    a la mufla la testigo / en la mufla a 90 la 3 / a la estufa la 5 / en la estufa las chicas
    estufa a 90, tapa dentro / al hornito la pieza chica / al hornito la 4 / a 90 la 7 dentro
    a noventa en el horno la tapa / noventa grados y la 8 adentro / a 195 la brida en el oven / a 93 °C entró la voluta
    con el horno a 95 metí la 5 / horno precalentado y dentro la 6 / con el carro adentro y la puerta cerrada
    cerré el horno con la tapa dentro / cerrada la puerta, adentro la 7 / sellé el horno con las cuatro
    prendí el horno con la 8 dentro / encendí el horno, la 9 ya está dentro / ya la mandé al horno
    mandé la 7 al horno / mandamos la fila al horno / pasé la tapa al horno / pasaron al horno la 5 y la 6
    llevé la carcasa al horno / la llevamos al horno entre dos / trasladada al horno la 4
    colgué las piezas en el horno / colgada la tapa en el horno / en los ganchos del horno la 7
    en la parrilla de arriba la 8, horno / en la charola del horno las chicas / acomodadas en el horno las tres
    seca y al horno la 7 / ya seca la metí al horno / ya oreada la metí / secó y entró al horno
    pasó el flash y al horno la tapa / después de orear, al horno / de la mesa al horno la 9 / se metió la 7 al horno
    se introdujo la pieza en el horno a 90 °C / se colocó la tapa en el horno / se cargó el horno con las piezas 1 a 4
    introduje la carcasa en el horno / introducida en horno la voluta / he metido la tapa al horno
    hemos metido las tres / ha entrado la 8 al horno / han entrado las chicas al horno / acabo de meterla al horno
    acabamos de cargar el horno / recién la metí / recién entró al horno la 6 / ahorita metí la 7
    ahorita entró la tapa / a las 11:20 metí la carcasa / 11:05 horno la 8 / hace diez minutos la metí al horno
    hace un rato entraron las tapas / desde las 11 está horneándose / Omar metió las tapas al horno
    Lia cargó el horno / Beto puso la 9 en el horno / el nuevo metió la voluta con la grúa
    con el montacargas metimos el tanque al horno / apunta horno la 7 / anota la tapa al horno
    marca entrada al horno de la 8 / registra horneado la 5 a 90 / horno 7 / horno: tapa / tapa horno 90 / 8 y 9 horno
    carcasa oven / ya horno la 6 / como ya secó la pasé al horno, la 7 a 90 / porque ya no pegaba la metí al horno
    le informo que la carcasa ingresó al horno a las 11:10 / la voluta ha ingresado al horno
    señor, ya quedaron en el horno las tres tapas / pieza 4 ingresada a horno a 90 °C / ya la meti al orno
    ya meti la 7 al horno xq ya seco / ps ya estan adentro / pos ya entro al horno / q ya esta en el horno la tapa
    al orno la 8 / nomas meti la 5 y la 6 al horno / put la 7 in the oven at 195 / I put the tapas in the oven
    ya la puse a bakear a 194 / la carcasa is in the oven / se fue al oven la 8 / ovenié la brida
    oven's loaded con la voluta / went in the oven la 9 a las 2 / la 7 ya se está tostando
    a la sauna la tapa, 90 grados / a sudar la 8 en el horno / al calor la carcasa
    dorándose la brida en el horno jaja / la gorda ya entró al horno / la chica va al horno con la grande, 90
    la que faltaba ya está en el horno / el carro 2 ya está en el horno con todo / las seis de la charola al horno
    las de bronce al horno, a 80 / la de goma no, las otras tres al horno / del rack al horno la 5, la 6 y la 9
    arriba en el horno la 4, abajo la 3 / quillo la 7 ya está en el horno / parce la tapa entró al horno
    boludo mandé la brida al horno / mi pana la carcasa está en el horno / mijo la voluta ya entró
    coño por fin al horno la 9
  `,
  'cure room': `
    se queda al aire / se queda curando la 7 / se queda a curar en el taller la voluta
    se quedó curando al ambiente la tapa / la dejé al ambiente / la dejé curando al aire, la 8 / la dejamos curar sola
    a curar al aire la 7 / a curar al ambiente / a curar en el estante la tapa / a curar en frío la 5
    al aire la 8, 24 horas / al ambiente la carcasa / a temperatura ambiente la 9 desde ya / a t ambiente la 4
    curando al aire / curando al aire la tapa / curando en el estante la 6 / curando en el rack sin horno
    curando en la sala la voluta / curando a 22 grados la 3 / curando natural la brida / curando solita la 8
    cura natural la 7 / cura al aire libre dentro del taller la 5 / cura fría la tapa / curado natural, carcasa
    curado a ambiente la 9 / curado en frío iniciado / curado lento al aire la 4 / curado en taller la 6
    sin meterla al horno, la 7 cura en la sala / no va al horno, se cura al aire la goma
    esta no va al horno, ya quedó curando en el cuarto / por el plástico, al ambiente la 8
    no aguanta horno, curando al aire la 9 / como no cabe en el horno, curando en el taller el tanque
    no hay horno, la dejo al ambiente, la 5 / horno ocupado, la puse a curar al aire
    con el horno tronado, se quedan curando en la sala / air cure la 7 / air curing la tapa / ambient cure la 8
    room cure la 5 / curing at room temp / curing en el room la 9 / leave it curing la 6 at room temp
    la dejé en el cure room / left it curing overnight la 4 / en el cuarto curando la 7
    en el cuarto de curado la tapa / en la sala de cura la 8 / metí al cuarto las chicas / la pasé al cuarto a curar
    al cuarto limpio la voluta / en la zona limpia curando la 3 / 24 horas al aire desde ahora la 7
    empieza 24 h la tapa / ya empezaron sus 24 horas / arranca las 24 de la 8 / 24 h ambiente la carcasa
    un día al aire la 5 / hasta mañana a esta hora cura la 9 / toda la noche ahí la 6 / dos días al ambiente la 4
    el fin de semana se queda curando la bomba / que cure hasta el lunes al aire, ya está puesta la 7
    la puse a curar toda la noche / ahí se queda curando la reja hasta mañana / colgada al aire la 7 curando
    colgadas curando en el taller las chicas / en caballetes curando al aire la barandilla
    sobre las tablas curando la puerta / apoyada en la pared limpia curando la placa / se puso a curar al ambiente la 8
    se dejó curar a temperatura ambiente la pieza 4 / se inició curado ambiental de la tapa
    se deja en curado natural la voluta / inicia curado a temperatura ambiente, pieza 9 / inicia cura al aire la 3
    empezó la cura en frío de la 5 / comenzó a curar al ambiente la 6 / he dejado la 7 curando al aire
    hemos puesto la tapa a curar en la sala / acabo de ponerla a curar en el cuarto / Lia la dejó al aire, la 8
    Omar puso la 7 a curar en la sala / desde las 3 cura al ambiente la tapa / a las 14:00 a curar al aire la 9
    ambiente 7 / ambiente la tapa / aire 8, 24h / sala 5 / frío la 6
  `,
  out: `
    saqué la 7 / saqué la tapa / saqué las tres del horno / saqué todo / sacadas todas / sacada la carcasa
    sacamos la fila del horno / sacaron la 8 / sacó Lia la 5 / sacando la voluta / ya sacamos el carro / ya salió
    ya salió la 7 / ya salieron / salió la brida del horno / salieron las tapas a las 12 / salió del horno la carcasa
    salió de curar la 8 / salieron de curar las chicas / salió caliente la 9 / fuera la 7 / fuera del horno
    fuera la tapa / fuera todas / ya fuera la 3 / ya está fuera / ya están fuera las cuatro / ya anda afuera la 5
    afuera la voluta / ya la tengo afuera / ya la tengo en la mesa la 6 / pa fuera la tapa / pa fuera todo
    puesta fuera la 4 / la puse fuera del horno / la puse a enfriar, la 7 / a enfriar la 8 / enfriando la tapa fuera
    enfriándose en la mesa las tres / en el carro de enfriar la 5 / ya se está enfriando la 7
    se enfría fuera la carcasa / reposando fuera la brida / en la mesa la 9, caliente
    en el piso la voluta, recién salida / colgada fuera la 6 / out la 7 / out of oven / it's out la tapa
    took out la 8 / took it out / ya la took out / pulled la 5 del oven / ya pulié la 6 / pullié el rack del oven
    oven vacío, salieron todas / unloaded el oven / unloadeé el oven / descargué el horno / descargado el horno
    se descargó el horno 1 / descarga de horno: 4, 5, 6 / vacié el horno / horno vacío ya
    horno desocupado, salió la 7 / desocupé el horno / retiré la 7 del horno / retiradas las tapas
    retirada del horno la carcasa / retiro la 8 / se retiró la brida del horno a las 13:10 / se retiraron las placas
    extraje la 5 / extraída la 6 / extraigo la 9 / abrí el horno y saqué las tres / abrí y saqué la tapa
    apagué el horno y saqué todo / terminó y la saqué / sonó y la saqué, la 7 / sonó la campana y ya salió la 8
    a la hora la saqué / cumplida la hora, fuera / ya cumplió y salió la 5 / cumplió su tiempo, fuera la 6
    acabó el horno, sacada la tapa / acabó de hornearse y salió / terminó su cura y está fuera la 4
    pasó su hora, fuera del horno la 3 / jalé el carro pa fuera / rodé el carro fuera / saqué el rack
    saqué la charola del horno / saqué la parrilla con las chicas / bajé las piezas del horno
    descolgué la 7 del horno / desmonté la 8 del horno / con la grúa saqué la voluta del horno
    entre dos sacamos el tanque / con guantes saqué la 9 / con el gancho saqué la tapa
    cuidado, acabo de sacar la 7, quema / no toquen, recién salió la 8 / recogí la tapa del cuarto
    la saqué de la sala de curado, la 6 / salió del cuarto la 5 / la bajé del rack de curado
    traje la 3 del cuarto limpio / después de 24 horas saqué la 9 del cuarto / ya no está en el cuarto la 4
    he sacado la 7 / hemos sacado todo del horno / ha salido la carcasa / han salido las tapas
    fue retirada la 8 del horno / acabo de sacarlas / acabo de sacarla / recién la saqué / recién salió
    ahorita la saqué / a las 12:45 saqué la 7 / 13:05 fuera la tapa / hace diez minutos salió la 5
    hace rato salió la 6 / Omar la sacó, la 9 / Lia sacó las tapas / el nuevo vació el horno
    Beto jaló el carro del horno / apunta salida de la 7 / anota que salió la tapa / marca fuera la 8
    registra fuera del horno la carcasa / salida horno 11:58 / sal la 5 del horno / 7 out / 8 fuera / 3 afuera
    tapa out / ya cumplió su hora a 90 y la saqué, la 7 / como sonó la campana saqué las tapas
    le informo que la carcasa fue retirada del horno a las 12:40 / señor, ya salieron del horno las tres
    pieza 4 retirada de horno / ya la saque del orno / ya saque la 7 xq ya sono / ps ya estan afuera / pos ya salio
    ya q sono saque la tapa / nomas saque la 5, la 6 sigue / took la 7 out / took the tapas out of the oven
    pulled it out, la 8 / la puse out to cool / it came out la carcasa / out of the oven ya la brida
    cooling la voluta / cooling off on the rack la 9 / la saqué del oven, se ve good / quillo ya está fuera la 7
    parce ya salió la tapa / boludo saqué la brida / mi pana afuera la carcasa / mijo ya saqué la voluta del horno
    coño quema, ya fuera la 9 / ya salieron del sauna las tapas jaja / ya salió el pan, la 8 fuera del horno
    las del carro 2 ya salieron / la charola de chicas ya está fuera / la de arriba ya salió, la de abajo también
    del horno a la mesa la 5 / del horno al rack la 6 y la 9 / de la estufa salió la 4 / ya no hay nada en el horno
  `,
  temp: `
    la 7 en 90 / 90 la tapa / la pieza 88 / trae 85 la 8 / va en 77 la carcasa / ya va en 90 / anda por 86 la brida
    está a 91 la voluta / está en 89 / llegó a 90 la 5 / llegó a los noventa la tapa / ya alcanzó 90
    alcanzó temperatura la 7, 91 / ya agarró los 90 la 8 / ya subió a 88 la tapa / subió a 92
    va subiendo, 70 la carcasa / sigue subiendo la 5, 74 / apenas en 60 la voluta / todavía en 55 la bomba
    el metal en 90 / el metal a 88 la 7 / el metal ya dio 91 / el fierro en 85 / el fierro de la 8 anda en 90
    el hierro va en 72 / el acero marcó 93 / la chapa del horno en 90 la 3 / la fundición apenas 68 / la sonda marca 90
    la sonda de la tapa 88 / la sonda da 91 en la 7 / la sonda pegada dice 87 / termopar 90 / termopar de la 8, 89
    el termopar da 92 en la voluta / los termopares en 90 y 91, la 5 / con la infrarroja 90
    con la pistola de temperatura 88 la tapa / le apunté con el láser y 91 / el láser dice 86 la 7
    láser en la carcasa 89 / IR 90 la 8 / pirómetro 92 la 5 / pirómetro en la brida 87
    termómetro de contacto en la 7, 90 / termómetro en el metal 88 / el termómetro pegado a la tapa marca 91
    cinta térmica en 90, la 9 / crayón de 90 derretido en la 4 / el tempil de 200 ya fundió en la 6 / part at 90
    part temp 195 la tapa / metal temp 193 / metal at 190 la 8 / it's at 90 ya / reading 191 la 5
    reads 188 el housing / hit 194 la bracket-8 / just hit 90 la voluta / at temp la 7, 195 / le tomé 90 a la 7
    le tomé la temperatura a la tapa: 88 / tomé temperatura en la carcasa, 91 / tomada la 8, 89
    le medí 90 al metal de la 5 / medí la pieza en el horno: 87 / medida la voluta, 92 / medimos 90 en la brida
    le saqué 91 a la 6 / me da 90 la 7 / me marcó 88 la tapa / me dio 92 el termopar / nos marca 90 la carcasa
    se lee 89 en la 8 / se midió 90,5 en la pieza 4 / se registra 91 °C en el metal de la brida / lectura 90
    lectura de la 7: 91 / lectura de metal 88, tapa / lectura en el horno, pieza a 89 / nueva lectura: 92 la 8
    otra lectura de la carcasa, 90 / última lectura 91 / segunda lectura 90 la voluta / temperatura de la 7, 90
    temperatura de pieza 91 / temperatura del metal 88 la tapa / temp 90 la 8 / temp pieza 92 / temp la carcasa 89
    temp de la brida: 90,5 / t metal 91 / t pieza 88 / noventa la siete / noventa grados la tapa
    noventa y uno la carcasa / ochenta y ocho la pieza ocho / ciento noventa y cuatro la tapa
    ciento noventa en el metal / setenta y cinco y subiendo la voluta / dentro del horno la 7 en 90
    en el horno la tapa va en 85 / la del fondo en 88 / la de adelante 91 / la parte gruesa va en 80
    lo grueso de la carcasa 83 / en el punto frío 90 la 8 / por abajo marca 87 la 5 / la más lenta va en 78, la voluta
    la chica ya está en 92 / la grande sigue fría, 60 / pareja a 90 la fila / todas en 90
    las tres arriba de 90: 91, 92, 91 / la 7 y la 8 a 90 / el horno marca 95 y la pieza 82
    horno 100, metal 76 la bomba / el aire del horno en 92, la tapa en 84 / el display dice 90 pero la pieza trae 71
    bajó a 88 la 7 / se cayó a 85 la tapa cuando abrimos / se enfrió a 80 la 8 / volvió a 90 la carcasa
    se mantiene en 91 la voluta / sigue en 90 la 5 / estable en 92 la 6 / se fue a 98 la chica / se pasó a 101 la 9
    a las 11:30 la 7 en 90 / 11:45 tapa 91 / hace cinco minutos estaba en 88 la 8 / ahorita trae 90
    ahora mismo 89 la carcasa / recién medí 91 en la 5 / acabo de leer 90 en la voluta / acabo de tomarle 88 a la tapa
    Lia le midió 90 a la 7 / Omar leyó 91 en la tapa / el chavo sacó 88 con el láser / Ola dice 90 en el metal
    apunta 90 la 7 / anota metal 91 / registra temperatura 89 la tapa / 7 90 / tapa 91 / 8: 88C / 5 193F
    le tomé la temperatura con el termopar pegado y la 7 anda en 88 / la pieza tardó pero ya marca 90
    le informo que el metal de la carcasa alcanzó 90,5 °C / señor, la brida registra 91 grados
    lectura sobre la pieza 4: 89,8 °C / ya va en 85 la tapa q es la mas gruesa / ps ya llego a 90 / la 8 nomas trae 76
    pos va en 82 / apenas 66 la 5 xq abrieron la puerta / ya trae 190 la 6 / it's reading 188 la 7
    probe says 190 en la tapa / the probe on la 8 reads 193 / thermocouple at 90 la carcasa
    la temperature de la brida ya está en 195 / temp check la voluta: 186 / temp check 90 la 5 / got 191 on la 9
  `,
};
