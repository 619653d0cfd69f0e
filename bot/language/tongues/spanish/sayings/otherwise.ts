// How Spanish speakers put right what they have just said. Invented lines, each as somebody would type it.

export const spanishCorrections = `
  mejor 1,8 / mejor que sean 2 kilos / mejor pon 1,5 / mejor hazla de 1,2 / pensándolo bien, 1,6
  cambié de idea, 2 kilos / que sean 1,8 / que sean mejor 200 / bájale a 1,2 / súbele a 3 / déjalo en 1,5
  déjalo en 200 / ponle 200 / ponle 48 de humedad / ponle 1198 a la B / quita esos 300, que eran 200
  quita ese 98, que es 89 / quita el 7, que fue el 8 / puse 300 y eran 200 / puse 98 y era 89 / puse la 7 y era la 8
  puse brocha y fue rodillo / puse mal la humedad, es 58 / puse mal el número, 195 / puse mal la pieza, era la 5
  escribí 84 y son 48 / escribí mal, son 16 / escribí al revés, es 48 / lo escribí al revés, 48
  los números al revés, son 1198 / he bailado las cifras, son 1198 / bailé los números, 1189
  se me cruzaron los números, 46 / me comí un cero, 200 / leí mal la pantalla, pone 89
  he leído mal la pantalla, pone 89 / leí mal la báscula, marca 602 / leí mal el termómetro, son 91 / leí mal, 46
  leí al revés, es 16 / no vi bien, eran 16 / vi mal, es 88 / miré mal, pone 47 / miré otra, era la 3
  lo miré otra vez y son 91 / volví a mirar y es 46 / chequé otra vez, son 1198 / revisé y son 89
  la báscula dice 1198, no 1189 / el cable equivocado, esa lectura era la 7 / la sonda estaba en la 8, no en la 7
  sonda equivocada, era la 3 / otra pieza, la 5 / era la otra, la 8 / era el otro bote, el 2 / de la otra mezcla, la 2
  fue de la mezcla 2, no de la 1 / esa la metí en el bote 2, no en el 1 / salió de la mezcla 1
  esa fue con rodillo, no con brocha / la hice con rodillo / fue por inmersión, no con brocha
  no con brocha, con rodillo / le di con pistola, no con rodillo / dije 7 pero es la 8 / dije brocha y era rodillo
  dije mal, la 8 / dije mal, eran 1,2 / quise poner 195 / quería poner 48 / la 5 es la que hice, no la 6
  la que hice fue la 5 / no la 7, la 8 / la 8, no la 7 / eso fue a las 9:40 / eso lo hice hace diez minutos
  fue antes, como a las 9:30 / 195, se me fueron los dedos / 195, se me barrieron los dedos
  se me resbaló el dedo, 89 / los guantes, es 89 / con los guantes no le atino, 91 / le piqué mal, 48
  le di al que no era, 91 / le pegué a otra tecla, 1,8 / tecleé mal, son 602 / tecla equivocada, 26
  el corrector, quise decir rodillo / corrige eso, 48 / corrige la B, 1198 / corrige el último, son 91
  corrígelo a 22 / corrígeme eso, 46 de humedad / arregla eso, eran 200 / cambia la humedad a 58 / cámbiale a 1,8
  cámbialo, son 22 / el último está mal, son 91 / está mal lo que puse, es 48 / uy, 48 / ay, era la 3
  híjole, eran 200 / chale, la 8 / ups, 1,6 / no manches, eran 1,8 / perdón, 16 / espera, son 46
  Omar dice que era la 3, no la 2 / me dice Lia que fue la 8
  puse la humedad volteada, es 48 / la puse al revés, va 48 / los números volteados, 61
  tenía el medidor al revés, son 16 / traía el medidor volteado, es 16 / tenía empañada la careta, marca 91
  con la careta no vi, son 91 / no traía los lentes, es 16 / esa sonda estaba en la 8 / esa sonda está puesta en la 3
  esa lectura es de la 8 / esa temperatura era de la otra, la 8 / esa era para la 4 / con 1,8 alcanza, cámbialo
  con 2 kilos basta, cámbiala / es mucho, mejor 1,5 / es poco, que sean 3 / en realidad eran 250
  en realidad tiré 250 / en realidad fue la 5 / de hecho son 22 / la verdad eran 250 / más bien 250
  fueron más bien 200 / la B pesó 1198, se me bailó / de la B eran 1198 / la A eran 1201 / se me bailó el número, 1198
  se me bailaron, son 54 / se me fue un cero, 200 / puse un cero de más, 200 / la coma iba en otro lado, 2,4
  la bañé en el bote 2, no en el 1 / la metí en la mezcla 2, no en la 1 / la pinté con la mezcla 2
  fue rodillo, la brocha no la usé / no usé brocha, usé rodillo / no la limpié, la lijé
  no fue con trapo, fue con arena / no fui yo, fue Lia / fue Omar, no yo / perdón, la 3 / perdón, eran 3 libras
  perdona, 46 / disculpa, eran 602 / no, 1,2 / no, la 8 / no no, eran 2 kilos / no, dije 1,4 / he dicho 2 kilos
  dije dos kilos / digo, rodillo / rodillo, digo / la 8, digo / quería decir 89 / no era la 7, era la 8
  no era 84, era 48 / 58 de humedad, perdona / son 98, me equivoqué / me equivoqué, la 3
  me equivoqué, fue con rodillo / ay no, 46 / uy, la 5 / qué bruto, eran 200 / qué menso, era la 3
`;
