// How Spanish speakers put right what they have just said. Invented lines, each as somebody would type it.

export const spanishCorrections = `
  81 compa, los guantes / son 79, con los guantes no acierto / 45 jefe, traigo guantes / 62, se me fue el dedo con el guante / 91 compadre, ando con guantes
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
  espera, son 57 / espera, es la 4 / espera, marca 57 / espera, que son 1,4 / espérate, eran 1,4 / espérate, fue la 4
  aguanta, son 57 / un momento, es el soporte 3 / para, son 1,4 / para para, era la 4 / quieto, son 57
  no espera, 57 / no espérate, la 4 / no no, la 4 / que no, 57 / que no, que era la 4 / ay no, 1,4 / ay, son 57
  ay perdón, la 4 / uy no, 1,4 / uy, eran 57 / uy, eran las 9:20 / uy perdón, fue a las 9:20 / huy, era rodillo
  anda, si son 57 / anda no, 1,4 / anda que no veo, 57 / no veo nada, son 57 / no veo un carajo, 57
  ostras, 1,4 / ostras no, la 4 / hostia, son 57 / joder, era la 4 / joder, son 57 / coño, 1,4 / mierda, era la 4
  leche, 57 / madre mía, 1,4 / vaya, era la 4 / vaya cabeza, era la 4 / qué cabeza, son 57 / qué cabeza la mía, la 4
  qué torpe, 602 / qué burro, 1,4 / tonto de mí, la 4 / estoy dormido, son 57 / estoy ciego, pone 57 / no doy una, 1,4
  hoy no doy una, la 4 / no sé ni contar, 1,4 / no sé leer, 57 / me bailan los números, 57 / me bailan las cifras, 602
  me bailan los ojos, 57 / los ojos me fallan, 57 / sin gafas no veo, 57 / con las gafas puestas, 57
  me puse los lentes, son 57 / se empañaron las gafas, 57 / traigo empañado, es 57 / nel, 57 / nel, fue la 4
  nel, es la 4 / nel, con rodillo / chin, son 57 / chin, la 4 / chale, son 1,4 / híjole, fue la 4 / híjole no, 57
  órale no, 1,4 / no manches, son 57 / no mames, la 4 / ah caray, son 57 / ah caray, 1,4 nomás / ah no, la 4
  ah no, 57 / újule, 1,4 / ay wey, 57 / no wey, la 4 / no compa, 57 / no jefe, era la 4 / pérame, son 57
  pérate, la 4 / deja, son 57 / deja deja, 1,4 / digo, 57 / digo, la 4 / digo, de la mezcla 2
  nomás 1,4 / nomás dos kilos / nada más dos kilos / solo dos kilos / que sean nomás dos / con dos basta, no tres
  es demasiado, 1,4 / demasiado, mejor 1,4 / es mucho, con 1,4 sobra / me pasé, 1,4 / me quedé corto, 3 kilos
  no hace falta tanto, 1,4 / es poca cosa, 1,4 / mejor dos kilos / mejor 57 / mejor la 4 / mejor con rodillo
  fue la 4 / fue el 4 / fue el soporte 3 / fue la brida 2 / era el soporte 3 / fue la otra, la 4 / era la 4 la que hice
  fue de la 2 / fue de la mezcla 2 / fue del bote 2 / fue con la mezcla 2 / fue con el bote 2 / era de la 2
  era del bote 2 / era de la mezcla 2 / salió del bote 2 / salió de la 2 / esa salió de la 2 / esa es de la mezcla 2
  la saqué del bote 2 / la saqué de la 2 / usé la mezcla 2 / usé el bote 2, no el 1 / con la 2, no con la 1
  de la 2, no de la 1 / esos pesos son de la 2 / esos pesos son del bote 2 / los pesos eran de la mezcla 2
  pesé la 2, no la 1 / lo que pesé fue la 2 / los gramos son de la otra, la 2
  no con brocha, con rodillo / no con rodillo, con brocha / no a brocha, a rodillo / con rodillo, no con brocha
  fue con rodillo / fue con brocha / fue a rodillo / le di con rodillo / le di con brocha / le metí rodillo
  la di con rodillo / se hizo con brocha / era con brocha / era rodillo / fue por inmersión / la sumergí, no la pinté
  tenía que ser con brocha / rodillo, no brocha / brocha, no rodillo
  quise decir la 4 / quise decir 4 / quise decir rodillo / quise poner 57 / quise decir las 9:20
  quería decir la 4 / quería poner 57 / iba a poner 57 / debía poner 57 / lo que quise decir fue la 4
  esa sonda es la de la 4 / esa sonda está en la 4 / la sonda estaba puesta en la 4 / el termopar está en la 4
  el cable era el de la 4 / esa lectura era de la 4 / leí la de la 4 / eso lo marcaba la 4
  fue a las 9:20 / era a las 9:20 / eran las 9:20 / eran las nueve y veinte / eso fue a las 9:20, no ahora
  no fue ahora, fue a las 9:20 / no ahora, hace diez minutos / fue hace diez minutos / fue hace rato, a las 9:20
  la terminé hace diez minutos / la acabé hace diez minutos / lo hice hace un cuarto de hora
  lo terminé a las 9:20 / la acabé a las 9:20 / terminé a las 9:20 / lo apunté tarde, fue a las 9:20
  apuntado tarde, eran las 9:20 / la hora está mal, 9:20 / mal la hora, fue a las 9:20 / la hora buena es 9:20
  tiré menos, 200 / tiré más, 400 / sobró menos, 200 / quedó menos, 200 / quedaban 200, no 300 / pesé con el bote, 200
  no tenía tara, 602 / olvidé la tara, 602 / sin el bote son 602 / con tara, 602
  el horno está a 85 / el horno va a 85 / el horno está puesto a 85 / está a 85, no a 90 / lo bajamos a 85
  lo hizo Lia / fue Lia, no yo / no fui yo, fue Lia / la pintó Lia / la hizo Omar / eso lo hizo Omar, no yo
  esa es de Omar / yo no fui, Omar la hizo
  no, fueron 200 / no, fueron 1198 / no, eran 48 / no, era la 3 / no, era el bote 2 / no, fue la 8
  no, fue con pistola / no, fue a las 9:40 / no, mejor 2 kilos / no, mejor kilo y medio / no no, la 5 / no no, 89
  no no, era la tapa / nel, era la 8 / nel, eran 200 / nop, la 3 / nop, 46 / nah, era rodillo / not 7, la 8
  not 98, son 89 / no 98, 89 / no 300, 200 / no la tapa, la brida / no el 1, el 2 / no brocha, pistola
  perdón, eran 200 / perdón, era la 8 / perdón, son 48 / perdón, quise decir la 3 / perdón, el bote 2
  perdón, 1198 la B / perdón, fue con rodillo / perdón, fue hace diez minutos / perdona, era la tapa
  perdona, quise decir 89 / disculpa, la 8 / disculpe, son 1,6 / disculpen, era la 5 / sorry, 200 / sorry, la 8
  sorry, eran 48 / sorry, I meant 89 / sorry, era el pot 2 / my bad, la 3 / my bad, 1.6 / oops, 200 / oops, la 8
  ups, la 3 / ups, eran 200 / ups, era el 2 / ups, 48 / quise decir 200 / quise decir la 8 / quise decir 48
  quise decir bote 2 / quise decir fahrenheit / quise poner la 8 / quise poner 48 / quise poner 1,6
  quise escribir 89 / quería decir la 8 / quería decir rodillo / quería poner 200 / quería poner la 3 / I meant la 8
  I meant 200 / I meant el pot 2 / meant 48 / o sea, la 8 / o sea, 48 / o sea el bote 2 / digo, la 8 / digo, 48
  digo 1198 / digo, el bote 2 / digo pistola / 48 digo / rodillo quise decir / me equivoqué, eran 200
  me equivoqué, era la 8 / me equivoqué, son 48 / me equivoqué de pieza, era la 3 / me equivoqué de pieza, la tapa
  me equivoqué de bote, era el 2 / me equivoqué de mezcla, la 2 / me equivoqué de número, 89
  me equivoqué con la B, 1198 / me equivoqué de hora, fue a las 9:40 / me equivoqué de lata, era la 4
  me confundí, era la 8 / me confundí, eran 200 / me confundí de pieza, la 5 / me confundí de bote, el 3
  me confundí de número, 48 / confundí la 7 con la 8 / confundí la A con la B / la confundí, era la brida
  se me confundió, era la 3 / corrijo: 200 / corrijo, la 8 / corrijo, son 48 / corrijo, era el bote 2
  corrijo: fueron 1198 / corrección: 200 / corrección, la 8 / corrección, 48 de humedad / corrección: fue con rodillo
  corrige a 200 / corrige a la 8 / corrige: 1,6 / corrígelo, 48 / corrígela, 1198 / corrígele, era la 8
  rectifico, 200 / rectifico, la 8 / rectifico: 48 / fe de erratas: 89 / correction, 200 / correction la 8
  fix that, 48 / fix it, era la 8 / cámbialo a 200 / cámbialo a la 8 / cámbialo por la 3 / cambia a 1,6
  cambia la 7 por la 8 / cambia el 98 por 89 / cambia eso a 48 / cambia la hora, fue a las 9:40
  cámbiale la humedad a 48 / cámbiale la B a 1198 / cámbiale el bote, era el 2 / cámbiale a rodillo / ponle 1,6
  ponle 89 / ponle la 8 / ponle que fueron 200 / ponle que fue la 8 / ponle que fue a las 9:40 / pon 200 mejor
  pon la 8 mejor / pon 48, no 84 / ajústalo a 1,6 / ajusta a 200 / arréglalo, era la 8 / arréglale, 48 / déjalo en 48
  déjalo en 1,8 / que diga 200 / que diga la 8 / que quede en 48 / puse 84 y es 48 / puse 300, eran 200
  puse la 7, era la 8 / puse brocha, fue pistola / puse el bote 1, era el 2 / puse la tapa y era la brida
  puse mal el peso, 1198 / puse mal la hora, a las 9:40 / puse mal el bote, es el 2 / puse mal la temperatura, 91
  puse mal los gramos, 200 / puse otra pieza, era la 8 / puse de más, eran 200 / puse de menos, eran 300
  escribí 300 y son 200 / escribí la 7 y es la 8 / escribí mal, la 8 / escribí mal el número, 48
  escribí mal la pieza, la 3 / anoté mal, son 48 / anoté mal, era la 8 / anoté la otra, era la 3 / apunté mal, 200
  apunté 84, es 48 / tecleé 98, es 89 / tecleé mal, la 8 / dicté mal, 200 / dicté mal, la 8
  el dictado puso 84, es 48 / el dictado oyó mal, la 8 / me entendiste mal, la 8 / me entendiste mal, dije 48
  oíste mal, son 200 / dije la 8, no la 7 / dije 48, no 84 / dije pistola, no brocha / dije bote 2
  dije mal, el bote 2 / dije mal, 48 / dije 200 / leí mal, son 91 / leí mal, eran 200 / leí mal la pesa, 1198
  leí mal el peine, 60 / leí mal el higrómetro, 48 / leí mal el termopar, 91 / vi mal la pantalla, 89
  vi mal el número, 8 / vi mal, la 8 / vi mal, son 91 / miré mal el reloj, 9:40 / miré mal, es la 3
  la medí otra vez, 91 / lo medí de nuevo y son 48 / lo pesé otra vez, 1198 / la pesé de nuevo, 602
  repetí la lectura, 91 / repetí la medida, 60 / volví a medir, 48 / volví a pesar, 1198 / volví a leer, 91
  segunda lectura, son 46 / la buena es 48 / el bueno es 1198 / la correcta es la 8 / el correcto es 200
  el dato correcto es 48 / la lectura correcta es 91 / el peso correcto es 1198 / lo correcto es la 8
  son 48 en realidad / en realidad son 48 / en realidad fue la 8 / en realidad era el bote 2 / realmente fueron 200
  de hecho fue la 8 / de hecho eran 200 / la verdad fue la 8 / la neta eran 200 / pensándolo bien, la 8
  pensándolo bien, 2 kilos / ahora que me acuerdo, fue la 8 / ahora que veo, son 48 / ahora que checo, 1198
  ya que revisé, son 91 / era la 8 / era el bote 2 / eran 200 / eran 1198 de B / era con rodillo / era a las 9:40
  era la tapa, no la brida / era el 2, no el 1 / era 48 y no 84 / fue la tapa / fue la 8, no la 7 / fue el bote 2
  fue el pot 2, no el 1 / fue con pistola, no con brocha / fue al horno, no al aire / fue a las 9:40, no a las 10
  fue hace media hora / fue antes, a las 9 / fue después, a las 10 / fue Lia / fue Lia la que pintó
  fue Omar, no Lia / no fui yo, fue Omar / no fue la 7, fue la 8 / no fue el 1, fue el 2 / no fue brocha, fue rodillo
  no fue hoy, fue ayer / no era la 7, la 8 / no era el bote 1, el 2 / no eran 300, eran 200 / no eran 84, son 48
  no son 98, son 89 / no es la 7, es la 8 / no es 84, es 48 / no es la A, es la B / ese no, el 2 / esa no, la 8
  esa no es, es la 8 / ese no era, era el 2 / el otro bote, el 2 / la otra pieza, la 8 / la de al lado, la 8
  la otra, la 3 / al revés, 48 / al revés, la A 1198 y la B 1201 / van al revés, A y B / volteado, 48 / solo eran 200
  era más, 300 / era menos, 200 / un cero menos, 200 / un cero más, 2000 / le sobra un cero, 200
  le falta un cero, 2000 / con coma, 1,6 / sin la coma, 16 / espera, la 8 / espera, eran 200 / espérate, 48
  espérame, era la 8 / un momento, son 48 / aguanta, era la 8 / alto, eran 200 / ay, la 8 / ay, eran 200
  ay no, la 8 / ay perdón, 48 / uy, eran 200 / uy no, la 8 / chin, la 8 / chin, eran 200 / híjole, la 8 / chale, 48
  no manches, la 8 / carajo, eran 200 / mierda, la 8 / joder, son 48 / ostras, era la 3 / coño, la 8
  qué tonto, la 8 / qué torpe, 48 / qué wey, era la 8 / se me fue, eran 200 / se me fue, la 8 / se me fue el dedo, 48
  se me fue el dedo, la 8 / se me pegó la tecla, 48 / se me pegó el guante, 91 / se coló un cero, 200
  se coló un 1, son 98 / con guantes le di al 7, era el 8 / con el guante puse 84, es 48 / el teclado, la 8
  el autocorrector, era rodillo / autocorrect, era brida / mejor la 8 / mejor el bote 2 / mejor 48 / mejor ponle 200
  mejor hazlo de 2 kilos / hazla de 2 kilos / hazlo de 1,6 / que sea de 2 kilos / que sea la 8 / súbela a 2 kilos
  bájala a 1,2 / auméntale a 2 kilos / dale 2 kilos mejor / siempre no, 2 kilos / siempre sí la 8
  siempre fueron 200 / al final fueron 200 / al final fue la 8 / al final hice 1,6 / al cabo fueron 200
  resulta que era la 8 / resulta que son 48 / resultó ser la 8 / resultó el bote 2 / Lia dice que fueron 200
  Lia dice que era la 8 / Omar dice 48 / Omar dice que es el bote 2 / Kari me corrige, era la 8 / Kari dice que 1,6
  me corrigen, son 48 / me dicen que era la 3 / me avisan que fue el bote 2
`;
