// How Spanish speakers say it: nothing. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfNothing: Sayings<SaidMeaning> = {
  nothing: `
    buen trabajo hoy con las piezas / qué bien quedaron las carcasas, felicidades a todos / buen trabajo equipo
    la manguera de aire es nueva / llegó la manguera nueva del aire / ese bote está vacío, hay que pedir más
    la lata 4 está vacía / afuera hace 35 grados / hace un calor de playa, 38 grados en la calle
    se me pega el guante al celular / terminamos por hoy / la 8 todavía no seca / no abrí el bote
    voy a pintar la 3 después de comer / igual ya está seca / creo que la 7 fue con brocha / Ola, ponle la tapa
    se me murió el teléfono / tengo la comida en el horno / aún no hemos mezclado nada / todavia no le hecho la B
    ahorita mezclo / al rato le doy la segunda mano / mañana pintamos la valvula
    la semana pasada se nos geló un pot entero / ayer en mi casa pinte la cocina con rodillo
    el domingo abrimos unas latas, pero de cerveza / no la he metido al horno / no metas la 4 al horno todavía
    Kari, apaga el ventilador porfa / que alguien filtre eso / ojalá ya estuviera seca / ojala no se nos muera la mezcla
    quién sabe si ya gelificó / me parece que la A está abierta / a lo mejor la 5 ya está curada
    puede que hayan sacado la 6 / supongo que Omar la pintó / juraría que la tapé / no me acuerdo si le puse gas
    no estoy seguro de haber pesado la B / nadie ha medido el aire hoy / sin leer la humedad todavía / falta filtrar
    queda por pintar la 9 / hay que sacar la bomba a las tres / habría que parar el agitador
    deberíamos abrir otro bote / tenemos que limpiar la pistola luego / luego lavo la pistola / pensaba darle otra capa
    quería meterla al horno pero está lleno / iba a mezclar y me llamaron / casi tiro el bote / casi se me cae la 7
    por poco toco la 8 y estaba fresca / si se seca antes de las dos la meto / si hay tiempo pintamos la 10
    cuando acabe de comer filtro el batch / en cuanto llegue Jo abrimos la cabina / en un rato abro la A
    nomás termino el taco y le doy / ya merito la saco / ya casi / que calor hace hoy
    menudo frío esta mañana en el coche / vaya partido el de anoche / el arbitro la regó, esa mano no era penal
    metieron tres en el segundo tiempo / nos metieron 4 a 0 / perdimos en la prórroga / el delantero está hecho polvo
    mi equipo está muerto / se nos quemo el arroz / dejé el pollo en el horno a 180 / el pastel de mi suegra salió crudo
    mi mujer pintó la puerta del garaje / le di dos manos al cuarto del niño el sábado
    estoy pintando la casa este finde / mi cuñado tiene una lata de pintura en el garaje / traigo la troca en el taller
    el camion se quedo sin bateria / la trucka trae el fan tronado / se le fue el clutch a la camioneta
    el ventilador de mi PC hace ruido / la batería del móvil al 8 por ciento / se me acaba el saldo
    no tengo cobertura en la cabina / este teléfono con los guantes es un infierno / perdon, me equivoque de chat
    eso no era pa aqui / probando / prueba 1 2 / no hagas caso / ni me peles / nada nada / jajaja
    jajaja ya ni me digas / qué risa con Omar / 😂😂 / órale pues / perfecto tío / ni modo / así es la vida / menos mal
    qué rollo / qué pereza de lunes / me muero de hambre / me muero de sueño / estoy seco, necesito agua
    ando crudo compa / estoy curado de espanto / me curé la gripe con té / mi niño está curando una gripa
    el café está listo / hice café para todos / quién quiere tacos / traigo tortas / a las 2 comemos / me voy a comer
    vuelvo en 20 / salgo un rato a fumar / hoy salgo temprano / mañana no vengo / el lunes es puente
    el viernes hay cena / feliz cumple Kari / Inés está de vacaciones / Jo se fue al dentista
    la jefa está de mal humor / no me tocó pintar hoy / no he sido yo / yo no la pinté / yo no fui el que abrió la lata
    la 2 no está lista / la 2 sigue mojada / todavia pega la 5 / la válvula sigue pegajosa, nada que seca
    aún agarra el guante / no ha llegado a 90 ni de broma / el horno no ha arrancado / no arrancó el extractor
    el fan no está puesto / no hay ventilación puesta aún / la tapa no está quitada / el bote 3 sigue cerrado
    no se ha tirado nada / no hemos tirado el pot 1 / no está muerta la mezcla
    no geló, falsa alarma era del otro turno / no hay heridos ni nada / no se ha caído nadie tranquilo
    aquí no huele a nada raro / no le puse la segunda mano a la 4 / no se ha liberado la 9 / nadie firmó la 9
    no han venido a por la 7 / no llegaron las piezas / todavía no llega el camión con los rieles
    no me deja el cliente pintarla aún / no la laves / no la toques / no toques la 8 / no abras eso
    no abras la A hasta que llegue el gas / no pares el agitador / ponle gas a la lata Omar / Jo, saca la 5 cuando suene
    chamaco tráeme el bote 2 / pásame la brocha / pasame el trapo / échame una mano con la bomba
    ayúdame a cargar el impeller / Kari mide el aire cuando puedas / que Ola le dé la primera mano
    dile a Omar que filtre / que no se te olvide la tapa / acuérdense de los guantes
    cierren la puerta que entra humedad / apúrate con la brocha / muevan la 6 al rack de allá / chequen la temperatura
    revísame la 3 porfa / alguien que vaya viendo el pot 2 / Bea, avisa al cliente
    llévate la 11 al horno cuando acabes / límpiame la pistola Jo / agita bien la A antes de echarla, chaval
    me gustaría pintar la 10 hoy / quisiera tener otro horno / qué ganas de acabar la 7
    si tuviéramos más A mezclaría otro / ojalá llegue el lote nuevo hoy / deseando que cure esto
    a ver si seca de una vez / a ver si hoy no gelifica / esperemos que aguante el pot / espero que haya quedado bien
    imagino que ya estará a 90 / diría que está seca, pero no la he tocado / parece seca desde aquí
    tiene pinta de seca / se ve como seca, quien sabe / yo creo que ya / quizá la 4 lleva dos manos
    tal vez abrieron el can 3 en la noche / seguro que fue la mezcla 2, o la 1, ni idea / capaz que ya gelificó
    capaz que llueve / dizque ya la pintaron / me dijeron que la 8 ya estaba, no me consta / según Omar la tapó
    según esto ya se curó pero no lo vi / será que el bote estaba sin gas / no recuerdo cuánto pesé
    eran como dos kilos o tres, no sé / unos 24 grados le calculo, no he mirado
    ha de andar por los 50 de humedad, sepa / más o menos la mitad creo / ponele que sean las diez
    hace un año pintábamos con otra cosa / en el otro taller lo metíamos a 120 / en mi pueblo se pinta sin mascarilla
    antes batíamos una hora y ya / mi antiguo jefe abría la A sin gas / el mes pasado se nos perdió una lata
    el jueves pasado se quemó una pieza en el otro turno / la otra vez gelificó a la hora
    en diciembre tuvimos el horno parado / el año pasado hubo un incendio en la nave de al lado
    el de la tele se cayó de la escalera jaja / vi un video de un horno que explota / la peli de anoche era de bomberos
    mi vecino se cortó con la podadora / mi perro se metió en la cubeta de pintura
    al gato le encanta la caja de los trapos / el niño me dejó la mano pintada en la pared / me pinté las uñas
    me corté el pelo / estoy que ardo con el jefe / Omar está quemado, necesita vacaciones / qué fuego la canción nueva
    hay bronca en la tele / se armó la mezcla de la selección jaja / menuda mezcla de gente en la boda
    mezclé la ropa blanca con la roja / la playa está a 30 grados quién pudiera / mi casa es un horno en agosto
    el coche al sol se pone a 60 / se me secó la garganta / se me secaron las plantas / está seca la broma
    llevo la ropa húmeda de la lluvia / llueve a cántaros en mi barrio / por la tarde dan tormenta
    dicen que mañana sube a 35 / en la tele dicen 80% de humedad / en casa tenemos 19 grados, tacaños
    el airbag de la furgo está fundido / la furgoneta pasó la inspección / le cambié el filtro al coche
    filtré el café con un calcetín jaja / hay que cambiar el filtro del aire de la troca / le puse gas a la camioneta
    eché gasolina por 40 / la botella de gas de casa se acabó / el bote de basura está lleno de vasos
    alguien tiró mi yogur / quién se comió mi sándwich / abrí una lata de atún / destapé unas frías anoche
    me tomé dos botes el sábado / el batch de galletas de Inés estaba buenísimo
    la receta lleva partes iguales de azúcar y harina / le faltó una hora de horno al cordero
    la masa tiene que reposar / se me pasó el arroz / la salsa se espesó demasiado / la carne a 90 grados queda seca
    la parrilla ya está caliente, vengan / hoy toca asado / qué buena mano tiene la cocinera
    le doy una mano a mi hermano con la mudanza / échale la mano al nuevo / la segunda parte de la peli es mala
    la parte A del examen era fácil / el plan B es ir al cine / el número 7 jugó fatal / el 8 falló el penalti
    la 9 del equipo femenino es una crack / salió el 5 en la lotería / la línea 2 del metro va con retraso
    pieza clave ese defensa / valvula del corazón le operan a mi tío / le pusieron dos capas de yeso a mi primo
    vino una capa de nieve / me pongo doble capa, qué frío / el agitador del partido era el 10
    quedó pintado el árbitro / la pintada del muro es nueva / pintan bastos / esto pinta bien
    no pinta nada bien la cosa con el jefe / aquí no pinto nada / me saca de quicio / saqué al perro
    saqué entradas para el concierto / ya salió mi vuelo / salgo de turno a las tres / entro a las seis mañana
    quién trae cargador / préstenme un cargador / dónde comemos hoy / alguien vio mis lentes / mis guantes nuevos pican
    las botas me aprietan / el respirador nuevo queda feo en la foto / me olvidé la comida en casa
    el jefe no ha venido / qué cara traía Bea / dicen que nos suben el sueldo / a ver cuándo pagan
    no nos han pagado las horas / la nómina llegó tarde / el sindicato se reúne el jueves / hoy huele a churros
    qué rico huele, ¿quién trajo pan? / huele a fútbol esta noche / pon música Jo / sube el volumen / bájale al radio
    esa rola me mata / me estás matando con tus chistes / muerto de risa / eres un sol / te quiero mucho bot
    eres más lento que el curado a temperatura ambiente jaja / este bot sabe más que el jefe / qué listo eres
    no me entiendes nada / bot tonto / hablo con Omar, no contigo / esto va para Kari / kari te marco luego
    omar contesta el teléfono / Inés llama a tu madre / te mando foto luego / ahorita les paso la foto
    luego te digo el peso / después apunto la lectura / luego anoto los lotes / aún no sé el número de serie
    todavía me falta el peso de la B / espera que mire la báscula / déjame ver el termómetro / voy a ver cuánto marca
    voy a checar la 6 / voy por la brocha / voy a por gas / bajo a por el bote / estoy buscando la tapa
    estoy esperando a que seque / estamos esperando al inspector / esperando / sigo esperando la campana
    en la cola del horno con la 3 / haciendo tiempo / estamos listos para mezclar, falta el agua caliente del café
    preparándome para rociar en media hora / luego toca cabina / la idea es hacer dos mezclas mañana
    el plan es pintar todo el job 88 el jueves / el jueves van los rieles / quedamos en que la 4 se hace al final
    mejor dejamos la valve 2 para mañana / a la tarde vemos la 12 / next week le entramos a la housing
    maybe le damos otra coat luego / creo que el oven ya está hot / no hice el mix todavía, i swear / im on lunch
    on break, regreso en 15 / el truck no arranca / el dock está bloqueado / el forklift se quedó sin propano
    todavía no prendo el blower / i think la 5 ya está pero no le he tocado / not yet la 7 / ni de chiste está seca
    ni loco abro esa lata / ni hablar de pintar con esta lluvia / para nada está curada / qué va, sigue blanda
    nel, todavía no / no manches todavía le falta / nanay / aún verde / está verde todavía
    la mezcla está viva, tranqui / el chaval se cree que ya se puede tocar
    el aprendiz quería meterla mojada, menos mal que lo vi a tiempo / le enseñé al nuevo cómo se coge la brocha
    le estaba explicando a Jo lo de la A y la B / en el curso nos dijeron que se abre con argón
    leí que el flash son diez minutos / mi primo trabaja en un taller de pintura en Monterrey
    allá le dan con rodillo a todo / che, qué frío de locos / boludo se me cayó el mate / el colectivo vino lleno
    chamo esta lluvia no para / asere qué calor / mi hermano qué tranque en la autopista / wepa / la guagua llegó tarde
    qué padre quedó el gol / eso mismo digo yo / lo mismo de siempre / como siempre / ya sabes / pues eso
    pues nada, a seguir / venga / vamos vamos / uf / uff qué día / puf / ay dios / madre mía / no sé / quién sabe
    ni idea / sepa la bola / yo qué sé / tú sabrás / hablamos luego / te cuento luego / nos vemos el lunes en la obra
    el cliente llamó, luego te digo qué quería / el cliente dice que quizás mande dos más
    puede que entren 12 rieles mañana / igual traen la bomba el jueves
    el proveedor dice que igual hay retraso con el B / si no llega el lote nuevo no pintamos / habrá que pedir acetona
    alguien tendría que calibrar la báscula / un día de estos limpio la cabina
    cualquier día de estos se nos muere el horno / la próxima vez mezclamos menos / tendría que haberla tapado antes
    me habría gustado darle otra mano / de haber sabido no abro nada / menos mal que no abrimos la lata
    menos mal que no la pinté / suerte que no estaba dentro del horno / nunca he rociado sin aire
    jamás tiré mezcla por el desagüe / sin novedad / todo tranquilo / nada que contar / por aquí todo igual
    sigue igual
    la palanca-4 del trabajo 119 se devolvió al cliente / hemos devuelto los postes al proveedor, trabajo 116
    devolvimos los seis bujes de la orden 115 / las bisagras se volvieron en el camión
    el cliente no quiso las ruedas y se las llevó / los tubos del trabajo 118 siguen en la fundición
    no han traído los postes del trabajo 116 / ni rastro de las doce bisagras de la orden 117
    los bujes del job 115 vienen tarde / no han llegado los postes 1 a 10
    todavía faltan cuatro palancas de la orden 119 / regresaron las bisagras al cliente
    mandaron de vuelta los tapones, orden 120
  `,
};
