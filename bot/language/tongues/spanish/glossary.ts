// What the words of the trade mean, in our own words of Spanish, and what the bot does with each.

import type { Glossary } from '../glossary.ts';
import { spanishGlossaryOfMix } from './glossary-mix.ts';

export const spanishGlossary: Glossary = {
  ...spanishGlossaryOfMix,
  air: {
    means: 'Temperatura y humedad de la sala, leídas en un instrumento.',
    bot: 'Los relojes corren con la última lectura mientras es reciente; pide la siguiente.',
  },
  humidity: {
    means: 'Cuánta agua lleva el aire, como parte de la que podría llevar a esa temperatura.',
    bot: 'Se compara con los límites, y con la temperatura da el punto de rocío.',
  },
  'dew-point': {
    means: 'La temperatura a la que el agua de este aire empieza a condensar.',
    bot: 'Sale de la temperatura y la humedad, y se compara con el acero.',
  },
  spread: {
    means:
      'Cuántos grados está la superficie por encima del punto de rocío; si son pocos puede haber agua sin que se vea.',
    bot: 'Se opone a una capa por debajo del mínimo indicado.',
  },
  surface: {
    means: 'Aquello sobre lo que va el recubrimiento; el acero preparado solo dura un tiempo.',
    bot: 'Pide su temperatura, y avisa cuando hay que recubrir el acero preparado.',
  },
  'wet-bulb': {
    means: 'Un termómetro con una funda mojada en aire que se mueve: cuanto más seco el aire, más frío marca.',
    bot: 'Saca la humedad de los dos bulbos.',
  },
  grade: {
    means: 'Lo limpia que queda la superficie al prepararla, según fotos de una norma.',
    bot: 'Se compara con lo que se pide.',
  },
  profile: {
    means: 'Lo rugoso que queda el acero preparado, de valle a pico.',
    bot: 'Se compara con lo que se pide.',
  },
  salts: {
    means: 'Sal sobre el acero, que no se ve y atrae agua bajo la película.',
    bot: 'Saca la cantidad de un parche, y la compara con el máximo.',
  },
  dust: {
    means: 'Polvo sobre el acero preparado, de 0 a 5 por lo que se pega a una cinta.',
    bot: 'Se compara con el máximo.',
  },
  wall: {
    means: 'El grosor del metal de la pieza: una gruesa se calienta despacio.',
    bot: 'Con él estima cuándo está a temperatura.',
  },
  area: {
    means: 'Cuánta superficie hay que recubrir.',
    bot: 'De ahí sale un plan.',
  },
  bears: {
    means: 'Lo más caliente que puede estar una pieza.',
    bot: 'Se opone a un horno más caliente.',
  },
  'flow-coat': {
    means: 'Verter la mezcla sobre la pieza y recoger lo que escurre.',
    bot: 'Ofrece anotar lo recogido.',
  },
  dip: {
    means: 'Bajar la pieza en la mezcla una vez, despacio, y sacarla.',
    bot: 'Se opone a una segunda inmersión.',
  },
  film: {
    means: 'El recubrimiento sobre la pieza; su espesor se lee en varios sitios cuando está seco.',
    bot: 'Juzga las lecturas por su propia regla.',
  },
  'wet-film': {
    means: 'El espesor mientras está húmedo, antes de que se evapore lo volátil.',
    bot: 'Calcula lo que será en seco.',
  },
  'volume-solids': {
    means: 'La parte de un litro que queda en la pieza cuando lo demás se ha evaporado.',
    bot: 'Pasa de película seca a húmeda y a lo que hay que mezclar.',
  },
  'transfer-efficiency': {
    means: 'Cuánto de lo que sale de la pistola o la brocha queda en la pieza.',
    bot: 'Suma la pérdida a lo que hay que mezclar.',
  },
  'open-time': {
    means: 'Cuánto admite una película húmeda otra pasada sin que se note.',
    bot: 'Se opone a pasar sobre una película que ya seca.',
  },
  'flash-off': {
    means: 'La espera tras una capa en la que la película suelta lo volátil, antes del calor o de otra capa.',
    bot: 'Espera el mínimo indicado y que alguien diga que está seca.',
  },
  'touch-dry': {
    means: 'Un toque ligero no deja huella ni se lleva nada.',
    bot: 'Lo dice alguien tras el oreo; el reloj solo no lo prueba.',
  },
  'recoat-window': {
    means: 'Desde cuándo y hasta cuándo puede ir otra capa.',
    bot: 'Avisa cuando se abre y antes de que se cierre; a veces una segunda capa está prohibida.',
  },
  cure: {
    means: 'La reacción que endurece la película: tanto tiempo a una temperatura de la propia pieza.',
    bot: 'Cuenta lo que prueban las lecturas en la pieza; tiempo cumplido no es liberada.',
  },
  stage: {
    means: 'Lo que aguanta ya una película que cura: manipularla, servicio, todo.',
    bot: 'Suma el tiempo de cada una por las temperaturas leídas.',
  },
  adhesion: {
    means: 'Lo bien que agarra la película: se corta una rejilla y se tira de una cinta.',
    bot: 'Si falla, retiene la pieza.',
  },
  rub: {
    means: 'Frotar la película con un paño mojado para ver si ha curado del todo.',
    bot: 'Si la atraviesa, retiene la pieza.',
  },
  coupon: {
    means: 'Una plaquita que pasa por todo con las piezas, para ensayarla en su lugar.',
    bot: 'Un ensayo en ella lo dice.',
  },
  release: {
    means: 'La decisión de que una pieza puede salir.',
    bot: 'Nunca la toma un reloj, y dice quién la tomó.',
  },
  hold: {
    means: 'Una pieza que no puede salir hasta que alguien que dirige decida qué se hace con ella.',
    bot: 'Dice por qué, y no para ningún reloj.',
  },
  deviation: {
    means: 'Algo hecho contra lo que habla una regla, se permitiera antes o no.',
    bot: 'Se marca según el registro, y solo se va con una corrección.',
  },
  traveller: {
    means: 'El papel que va con la pieza: todo lo que se le hizo.',
    bot: 'La escribe del registro.',
  },
  lead: {
    means: 'Quien dirige o responde; algunas cosas solo las permite él.',
    bot: 'Le llama y le pregunta donde lo dice una regla.',
  },
  brief: {
    means: 'Lo que se dice antes de pintar a pistola: dónde, quién, qué aire, qué peligros.',
    bot: 'La da, y pide a cada expuesto que la confirme.',
  },
  session: {
    means: 'Un rato de pintar a pistola en un sitio, de principio a fin.',
    bot: 'Tiene su número, relojes y mensaje.',
  },
  spell: {
    means: 'Cuánto pinta alguien sin parar.',
    bot: 'Avisa al llegar al más largo permitido.',
  },
  extraction: {
    means: 'Aire que se aspira por la cabina para llevarse niebla y vapor.',
    bot: 'Compara lo medido con lo que pide el cálculo; un cálculo no es una lectura.',
  },
  'face-velocity': {
    means: 'Lo rápido que entra el aire por el frente abierto de la cabina.',
    bot: 'Es lo que alguien mide, y por el frente da el caudal.',
  },
  lel: {
    means: 'El mínimo de vapor en el aire que puede arder.',
    bot: 'Calcula el aire que lo deja en una fracción, con el más bajo publicado.',
  },
  'day-limit': {
    means: 'Cuánto vapor puede haber en el aire que se respira en un día.',
    bot: 'Calcula el aire para ello; el aire para respirar es cosa de la empresa.',
  },
  'mixing-factor': {
    means: 'Cuántas veces más aire se toma, porque ninguna sala mezcla del todo.',
    bot: 'Lo fija la gente del taller; si no, se supone y se dice.',
  },
  solvent: {
    means: 'El líquido que hace fluido el recubrimiento y después se va como vapor.',
    bot: 'Lo cuenta para el aire, el horno y el libro.',
  },
  voc: {
    means: 'Lo que sale de un recubrimiento como vapor orgánico, en masa.',
    bot: 'Lo suma de lo usado, para los límites fijados aquí.',
  },
  flush: {
    means: 'Limpiar pistola, manguera y recipientes enseguida, antes de que la mezcla endurezca en ellos.',
    bot: 'Avisa hasta que alguien dice que está hecho.',
  },
  earthed: {
    means: 'Unir con cable los recipientes metálicos y la tierra, para que no salte chispa.',
    bot: 'Lo pide donde está indicado.',
  },
  'data-sheet': {
    means: 'El papel del fabricante sobre lo peligroso y qué hacer entonces.',
    bot: 'La entrega con papeles.',
  },
  sheet: {
    means: 'Las cifras del fabricante, tal como las guarda el taller, cada una con su fuente.',
    bot: 'Una mezcla conserva aquella con la que se abrió.',
  },
  ring: {
    means: 'Un recordatorio que llama a alguien por su nombre.',
    bot: 'Sale del registro: lo que mueve un reloj mueve su aviso.',
  },
  door: {
    means: 'Abierta: el horno pierde calor, o a la mezcla le entra aire húmedo.',
    bot: 'Ese tiempo no cuenta, o corre contra la vida de la mezcla.',
  },
  event: {
    means: 'Una cosa que alguien dijo o hizo, con cuándo y quién.',
    bot: 'No se cambia nunca; una corrección queda al lado.',
  },
};
