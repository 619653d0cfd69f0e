// How Spanish speakers ask to practise, where nothing counts. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPractice: Sayings<SaidMeaning> = {
  'practice on': `
    quiero practicar / quisiera practicar antes / déjame practicar / me dejas practicar / puedo practicar un poco / podemos practicar
    quiero practicar con esto sin que se apunte / quiero practicar una mezcla / déjame practicar una mezcla antes de la buena
    hagamos un ensayo / quiero hacer un ensayo / un ensayo primero por favor / vamos a ensayar / déjame ensayar / puedo ensayar antes
    una prueba sin que cuente / quiero probar sin que cuente / déjame probar donde no cuente / puedo probarlo sin que quede registrado
    puedo probar sin que se guarde / quiero probar cosas sin guardar nada / que no se guarde nada, estoy aprendiendo / no guardes lo que haga ahora, solo pruebo
    esto no es de verdad, solo estoy probando / solo para practicar / esto es solo práctica / esta es de práctica / una de práctica primero
    hay modo de práctica / hay un modo de prueba / ponlo en modo práctica / ponme en modo de entrenamiento / modo práctica por favor / activa la práctica
    enciende la práctica / empieza la práctica / entrar en práctica / pasar a práctica / práctica para el nuevo / el nuevo quiere practicar
    el aprendiz debería practicar antes / enséñame con una mezcla de mentira / puedo usar una mezcla inventada para aprender / de mentiritas primero
    hagamos como que mezclamos / vamos a hacer de cuenta / de broma, sin apuntar / fuera del registro, solo para aprender / sin que quede en el libro
    quiero jugar un poco con esto antes de hacerlo en serio / déjame trastear un rato sin romper nada / quiero ver cómo va, no en serio
    quiero agarrarle la onda antes / déjame agarrarle el modo primero / unas pasadas de prueba antes de la buena / antes de hacerlo en serio puedo probar
    cómo puedo practicar / dónde puedo practicar esto / se puede practicar / se puede ensayar / hacer un simulacro de mezcla / como entrenamiento
  `,
};
