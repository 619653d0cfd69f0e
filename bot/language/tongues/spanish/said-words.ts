// The words that stand round an act in a Spanish line: what says nothing, what denies or doubts it, plans or asks. Accents are passed over,
// so that `que` and `como` ask only where they come first.

import type { SaidWords } from '../said-words.ts';
import { spanishActs } from './said-acts.ts';

/** What stands behind an amount and is no part of it: whom it is for, and why. */
const forWhat =
  /[,;.?!]+(?!\d).*$| (?:(?:para|pa) (?!manana|luego|despues|mas tarde|la tarde|esta tarde|el lunes|dentro)|que |con eso|con esto|porque |pues |ya que |a ver ).*$/;

export const spanishSaid: SaidWords = {
  acts: spanishActs,
  readings:
    'marca, marcan, marco, marcando, marcaba, da, dan, daba, dio, lee, leyo, lei, leido, leida, esta a, estan a, estaba a, estaba en, esta en, anda en, anda a, anda por, andaba en, andan en, va en, va a los, va por, ya va en, llego a, llegaron a, alcanzo, trae, traen, mide, miden, midio, medi, medimos, medido, dice, subio a, bajo a, quedo en, quedo a, ando en, ando, a, en, tiene, tienen, salio a, salio en',
  light:
    'el, la, los, las, un, una, unos, unas, es, son, era, eran, esta, estan, estaba, estaban, ya, se, lo, le, les, me, te, nos, ha, he, hemos, han, habia, hay, quedo, quedaron, queda, quedan, fue, fueron, al, del, su, sus, mi, nuestra, este, estos, estas, ese, esos, esas, tambien, recien, bien, todo, toda, de, estoy, estamos, ahi, alli, aca, por',
  fillers:
    'ni modo, ni modos, ni hablar, y despues con, y luego con, un saludo, saludo, que, tanto, se ve bien, se ve muy bien, se ve perfecta, se ve perfecto, se ven bien, al guante, en guante, en el guante, al dedo, en el dedo, al tocar, al tocarla, al tocarlo, guante, juntos, juntas, ya juntos, en la olla, palo, palito, espatula, vara, paleta, varilla, en capucha, en la capucha, en mascara, en la mascara, mascara, mascaras, capucha, trapos sucios, trapos, trapo, hijole, chale, no manches, changos, caray, oigan raza, raza, banda, mi gente, plebes, mano, /, -, +, =, a ver, porque, porque tiene, debido a, lo que pasa, latas, botes, mezclas, si es tan amable, sea tan amable, tan amable, tome nota, tome nota de que, toma nota, toma nota de que, tomen nota, apunta que, anota que, registra que, pon que, pues nada, nada, wey, guey, we, cabron, carnal, mi buen, joder, hostia, ostras, caramba, jolin, vaya, anda, venga, majo, maja, guapo, tronco, colega, parce, pana, hermano, manito, jefecito, patron, don, muchas gracias, mil gracias, gracias majo, gracias jefe, se agradece, saluditos, buenos dias, buenas tardes, buenas noches, muy buenas, que onda, oye mira, mira que, pues ya, ya estuvo, ya quedo, ya quedaron, ya esta hecho, y ya, todo bien, todo listo, todo del, con tapa, tapa puesta, residuos, de residuos, medidos, medido, medida, despacito, despacio, suavecito, con cuidado, bandeja, en bandeja, solvente, con solvente, al fin, de acero, perfil, micras, mils, parejas, parejo, todas ellas, una mano, su mano, mano de, serie, de la serie, de serie, impulsor, ya lleva, le, les, la misma, jeje, jajaja, dadas, dada, dado, dados, completas, completos, enteras, por completo, con su, su, bien, bonito, que faltaban, nave, planta, shop, tiempo, gente, muchachos, chavos, roller, batch, me, nos, os, de aire, traemos, ahora hay, libras, grados centigrados, que el, que la, que los, que las, acabo de, acabamos de, acaba de, acaban de, por fin, otra vez, que ya, oye, oiga, oigan, hola, buenas, buenos, buen, dias, dia, tardes, noches, por favor, porfa, porfavor, porfis, favor, gracias, ok, okey, vale, bueno, pues, entonces, eh, jefe, jefa, compa, companero, companeros, equipo, amigo, mire, mira, listo, lista, listos, listas, perfecto, sale, orale, andale, venga, venga va, si, claro, ya esta, hecho, hecha, de, del, con, en, y, para, pa, a, por, desde, mezcla, la mezcla, pieza, piezas, parte, bote, lata, grados, grado, por ciento, porciento, humedad, relativa, temperatura, hr, anota, anote, anotame, anoten, apunta, apunte, apuntame, registra, registre, informo, aviso, te aviso, les aviso, reporto, total, en total, cada, cada una, cada uno, hoy, ahora, ahora mismo, ahorita mismo, me haces, haz, hazme, haganme, me hacen, ponme, dale, le, ambas, ambos, tacto, brocha, brochazo, a mano, mano, capa, capas, primera, primer, seco, resto, sobrante, lo que sobro, lo que quedo, sobraron, sobro, sobra, sobran, sobraba, sobraban, han sobrado, ha sobrado, quedaba, quedaban, han quedado, ha quedado, al tacto, turno, perdona, perdone, disculpe, perdona la lata, hechos, hechas, lado a, genial, estupendo, guay, chevere, listos ya, oido, va que va, muy bien, quiubo, que tal, saludos, dele, hombre, mujer, tio, tia, chicos, gente, mano, compadre, lleva, llevan, ya lleva, jeje, jaja, quedaron, quedan, quedo, de nuevo, nueva, nuevo, cabina, taller, numero, num, no., #, orden, al, lado, lados, hrs, horas, set, puesto a, puesto, listo ya, nomas, nada mas, solo, solamente, trabajo, ahi va, va, vamos, sobre, encima, dentro, adentro, arriba, abajo, luz, este, eso es, perdon, disculpa, tal cual',
  lasting: 'durante, por',
  greetings: 'hola, buenas, buenos, dias, tardes, noches, gracias, saludos, que onda, quiubo',
  denials:
    'salio pegajosa, salio pegajoso, salio fresca, salio humeda, salio mojada, salio blanda, no, nunca, jamas, nadie, ninguna, ninguno, ningun, tampoco, ni, sin, todavia no, aun no, todavia, aun, falta, faltan, falto, faltaba, nos falta, me falta, olvide, olvido, se me olvido, se nos olvido, olvidamos, excepto, salvo, menos, en vez de, en lugar de, pegajosa, pegajoso, mojada, mojado, fresca, fallo, cancela, cancelar',
  hedges:
    'se me hace, se me hace que, me parece, me parece que, me da que, me da la impresion, tengo la impresion, da la impresion, diria, diria que, yo diria, juraria, juraria que, pa mi que, para mi que, a mi parecer, en mi opinion, me imagino, me suena, seguramente, chance, chance y, igual y, a la mejor, dizque, disque, que yo sepa, si no me equivoco, si no recuerdo mal, si mal no recuerdo, me huele, segun yo, pienso que, quien sabe, a saber, ni idea, vete a saber, puede ser, sera que, como que, creo, creo que, quiza, quizas, tal vez, a lo mejor, parece, parece que, al parecer, se ve, se siente, huele, casi, ya mero, mero, apenas, puede, puede que, podria, podrian, a ver si, segun, dicen, dice que, dijo que, dijeron que, supongo, supuestamente, igual, capaz, capaz que, si es que, cuando, hasta que, hasta, o, u, medio seca, medio seco, medio, media, mas o menos, un poco, poco, algo, no se, no estoy seguro, seguro que, deberia, deberia estar, debe, debe de, debe estar, alguien, me late, ojala, espero, a punto, de estar, por si, imagino, calculo, probablemente, posiblemente, dudo, antes de, en cuanto, donde, mientras, porque dicen',
  plans:
    'voy metiendo, voy sacando, voy pintando, voy poniendo, voy echando, voy tapando, voy cerrando, voy abriendo, voy lijando, voy limpiando, voy lavando, voy vaciando, voy filtrando, vamos metiendo, vamos sacando, vamos pintando, vamos poniendo, vamos tapando, vamos lijando, vamos limpiando, en un minuto, en un minutito, en un segundo, en un segundito, en unos minutos, en un ratin, dentro de un rato, dentro de poco, dentro de nada, ya merito, ahorita le doy, ahorita lo hago, ahorita la hago, ahorita va, voy a, vamos a, va a, van a, vas a, iba a, ibamos a, ire a, luego, luego luego, al rato, en un rato, en un ratito, en un momento, en un ratico, manana, despues, mas tarde, pronto, hay que, habra que, habria que, tengo que, tenemos que, tiene que, tienen que, hace falta, toca, nos toca, quiero, queremos, quisiera, quiere, me gustaria, pienso, pensamos, planeo, pendiente, pendientes, necesito, necesitamos, necesita, debo, debemos, deberiamos, listo para, lista para, listas para, listos para, listo pa, lista pa, listas pa, listos pa, proxima, proximo, siguiente, la siguiente, espera, esperando, espero a, a punto de, esta para, estan para, para el horno, para horno, estoy por, estamos por, por filtrar, por mezclar, por pintar, por pesar, por hacer, por secar, por sacar, por meter, por lavar, intento, intentar, tratar de, trato de, no olvides, recuerda, recordar, recuerdame, esta noche, esta tarde, a las que, dejame, deja que',
  soon: 'ahorita, ahoritita, orita, horita, ahora, ahora mismo, ahorita mismo, ahora ya, enseguida, en seguida, ya mismo, ya casi, ya merito, al tiro, en nada, en breve',
  iDo: 'meto, saco, pinto, repinto, retoco, aplico, pongo, echo, doy, paso, tapo, destapo, cierro, abro, vacio, filtro, cuelo, limpio, lijo, chorreo, granallo, soplo, desengraso, lavo, enjuago, tiro, boto, suelto, libero, entrego, mando, apago, prendo, enciendo, paro, llevo, dejo, subo, bajo, cuelgo, agito, remuevo, revuelvo, retiro, quito, sello, vuelco, aviento, metemos, ponemos',
  within: 'en, de',
  asks: 'sabes, saben, alguien sabe, dime, digame, a que hora, por que, cuanto falta, cuanto, cuanta, cuantos, cuantas, quien, quienes, cual, cuales, que tal, se puede, puedo, podemos, podria, bien para, bien pa, vale para, vale pa, valen para, apta para, apto para, buena para, bueno para',
  asksFirst:
    'que, como, cuando, donde, a cuanto, de quien, en que, con que, sera, alguien, alguno, puedes, pueden, puede',
  tellsFirst: '',
  byWhat: '',
  blemishes:
    'polvo, oxido, suciedad, cascarilla, sales, marcas, rayas, rayones, golpes, huellas, burbujas, ampollas, poros, agujeros, crateres, ojos de pez, descuelgues, descuelgue, escurridos, escurrimientos, chorreos, goteos, lagrimas, cortinas, lineas, vetas, grumos, pelos, pelusa, motas, basura, calvas, huecos, faltas, fallos, fallas, piel de naranja, velo, grietas, arrugas, defectos',
  beforePart: 'en, de, a, la, el, para, pieza, del, al',
  water: 'agua',
  noneOf: 'sin, sin nada de, nada de, ni, ni un, ni una, libre de, libres de, ningun, ninguna, cero',
  whence: 'de, del',
  largest: 'grande, mayor, grandota',
  smallest: 'chica, chico, pequena, pequeno, chiquita, chiquito, menor',
  // `preparé` has been.
  toCome: /^(?!.*(?:par|tir|mir|gir|esper)[éá])\p{L}{2,}[aei]r(?:é|ás|á|emos|án)$/u,
  tellers: 'yo, nosotros, nosotras',
  somebody: 'tu, usted, ustedes, alguien, vosotros',
  roughly: 'como, unos, unas, alrededor de, cerca de, aproximadamente, aprox, casi, mas o menos, como unos, por ahi de',
  requests: [
    {
      said: /^(?:(?:oye|oiga|hola|buenas|bueno|ahora|ahorita|ya|yo|pues)[ ,]+)*(?:voy a|vamos a|quiero|queremos|quisiera|necesito|necesitamos|me toca|toca|hay que) (?:mezclar|batir|hacer|preparar|revolver)(?:me|nos)? (?:(?:una|un|otra|otro) (?:nueva )?(?:mezcla|tanda|batch|lote|olla|bote)(?: nueva)?(?: de)? )?/,
      verb: 'mezclar ',
      upTo: forWhat,
    },
    {
      said: /^(?:(?:oye|oiga|hola|buenas|porfa|por favor|jefe|jefa)[ ,]+)*(?:(?:me |nos |le )?(?:puedes|puede|podrias|podria|podeis|pueden|podrian|te importa|quieres) (?:preparar|hacer|mezclar)(?:me|nos)?|(?:me|nos) (?:preparas?|haces?|mezclas?|preparan|hacen|preparais))\b[ ,:]*(?:una (?:nueva )?mezcla de )?/,
      verb: 'mezclar ',
      upTo: forWhat,
    },
    {
      said: /^(?:(?:oye|oiga|hola|buenas|porfa|por favor|jefe|jefa)[ ,]+)*(?:(?:me |nos |le )?(?:puedes|puede|podrias|podria|podeis|pueden|podrian|te importa|quieres) (?:apuntar|anotar|registrar|poner|marcar|meter|dejar (?:apuntado|anotado|registrado)|guardar|cambiar)(?:me|nos|lo|la|le)?|(?:me|nos) (?:apuntas?|anotas?|registras?|pones?|pone|marcas?|apuntan|anotan|apuntais))\b[ ,:]*(?:que\b ?)?/,
      verb: '',
    },
    {
      said: /^(?:(?:oye|oiga|hola|buenas|bueno|ahora|ahorita|ya|yo|pues|venga|jefe|jefa|porfa|por favor)[ ,]+)*(?:voy a )?(?:quiero|queremos|querria|querer|quisiera|necesito|necesitamos|necesitar) (?:hacer |preparar |mezclar )?(?:(?:un|una|otra|otros) (?:nueva )?(?:mezcla|tanda|batch)(?: nueva)?(?: de)? )?(?=[^,;.?!]*\b(?:kilos?|kg|gramos?|g|libras?|lbs?|onzas?|oz|litros?|ml|galon(?:es)?)\b)/,
      verb: 'mezclar ',
      upTo: forWhat,
    },
    {
      said: /^(?:(?:oye|oiga|hola|buenas|bueno|ahora|ahorita|ya|yo|pues|venga|jefe|jefa|porfa|por favor)[ ,]+)*(?:prepara|preparame|preparanos|preparen|preparenme|haz|hazme|haznos|haganme|mezclame|mezclanos|dame|ponme|sacame|batime|bateme) (?:(?:un|una|otra|otros) (?:nueva )?(?:mezcla|tanda|batch)(?: nueva)?(?: de)? )?(?=[^,;.?!]*\b(?:kilos?|kg|gramos?|g|libras?|lbs?|onzas?|oz|litros?|ml|galon(?:es)?)\b)/,
      verb: 'mezclar ',
      upTo: forWhat,
      isOrder: true,
    },
  ],
  pronouns: 'ella, ellas, ellos, eso, esa, ese, esas, esos, la misma, el mismo, las mismas, los mismos',
  articles: 'el, la, los, las, al, del',
  fromPot: '',
  beforeThing: 'en',
  slips: 'argon nitrogeno humedad horno grados gramos acetona cabina sala temperatura kilos libras litros fahrenheit',
  heardAs: { peza: 'pesa', peso: 'pesa', mesa: 'pesa', meza: 'mezcla' },
  heardAsMark: { mescla: 'mezcla', mesa: 'mezcla', vote: 'bote' },
  marks: {
    coma: ',',
    punto: '.',
    'punto final': '.',
    'punto y aparte': '.',
    'signo de interrogacion': '?',
    'signo de pregunta': '?',
  },
  joints: 'y, e, luego, &, despues, ademas, +, -',
};
