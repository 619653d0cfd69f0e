// What leads in to what is told, with no mark between: `se me olvidó decirte que la 8 estaba a 87`. Invented lines.

export const spanishLeadingIn = `
  se me olvidó decirte / se me olvidó decirte que / se me olvidó decir que / se me olvidó avisarte / se me olvidó avisarte que / se me olvidó avisar que
  se me olvidó comentar que / se me olvidó comentarte que / se me olvidó apuntar que / se me pasó decirte que / se me pasó avisar que / se me pasó apuntar que
  se me pasó comentar que / olvidé decirte / olvidé decirte que / olvidé decir que / olvidé avisar que / olvidé apuntar que / olvidé mencionar que
  me olvidé de decirte / me olvidé de decirte que / me olvidé de decir que / me olvidé de avisar que / me olvidé de apuntar que
  no te había dicho que / no había dicho que / no había apuntado que / no había avisado que / no avisé que / no apunté que
  no llegué a apuntar que / no llegué a decirte que / te tenía que haber dicho que / tenía que haber dicho que / tenía que haber avisado que
  debí avisar que / debí decirte que / debería haber avisado que / quería decirte que / quería decirte / quería avisarte que / quería avisar que
  quería comentarte que / quería comentar que / solo quería avisar que / solo quería decir que / nada más quería avisar que / nomás quería decirte que
  te quería decir que / te quería comentar que / te aviso que / te aviso de que / aviso que / aviso de que / les aviso que / os aviso de que / te cuento que
  te comento que / les comento que / os comento que / comentarte que / decirte que / decirles que / avisarte que / avisarte de que / informarte que
  informo que / informo de que / te informo que / les informo que / que sepas que / que sepan que / para que sepas / para que lo sepas que
  has de saber que / hay que decir que / puedo decir que / puedo decirte que / me alegra decir que / me alegra avisar que / tengo el gusto de avisar que
  por cierto se me olvidó decir que / ah se me olvidó decir que / ay se me olvidó decirte que / perdón se me olvidó decir que / perdona que no avisé
  para que conste / antes de que se me olvide / antes que se me olvide / por cierto / ya que me acuerdo / para que sepas que / por si preguntas
  he medido las 2 / he medido los 2 / ya medí las 2 / ya medí los 2 / medí las 2 / medí las 3 / medidas las 2 / acabo de medir las 2 / he leído las 2 / leí las 2
  ya tomé las 2 / tomé la temperatura a las 2 / les tomé la temperatura a las 2 / acabo de pasar la sonda a las 2 / he pasado la sonda / pasé la sonda
  acabo de pesar / ya pesé / ya pesé las 2 / he pesado las 2 / pesadas las 2 mezclas / ya pesé los 2 / apunta lo siguiente / anota lo siguiente / toma nota
  ahí van las lecturas / van las lecturas / van los pesos / ahí van los pesos / aquí van las lecturas / estos son los pesos / estas son las lecturas
  a ver apunta / una cosa / una cosita / otra cosa / dos cosas / novedades / te cuento / les cuento / os cuento / ahí va / ahí les va / ahí te va
  con permiso / con su permiso / con tu permiso / buenas tardes a todos / buenos días a todos
`;
