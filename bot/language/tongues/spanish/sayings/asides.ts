// What Spanish speakers say round an act, and no part of it: why so late, what kept them, where they stand. Invented lines.

export const spanishAsides = `
  no me podía quitar los guantes / no pude quitarme los guantes / tenía los guantes puestos / traía los guantes puestos / con guantes no se puede escribir
  no podía escribir con los guantes / tenía las manos ocupadas / traía las manos llenas / tenía las manos sucias / iba con las manos llenas
  se me olvidó decirlo / se me pasó decirlo / se me olvidó apuntarlo / se me pasó apuntarlo / se me olvidó avisar / olvidé avisar / olvidé decirlo
  no lo había dicho / no lo había apuntado / no lo apunté antes / no avisé antes / no pude avisar antes / no pude apuntarlo antes / no me dio tiempo a escribirlo
  no me dio tiempo de avisar / no tuve tiempo de escribir / no he tenido tiempo / no he tenido ni un minuto / hasta ahora no he podido
  hasta ahora no pude / lo apunto ahora / lo escribo ahora / lo apunto tarde / lo digo ahora / ahora que me acuerdo / ya que me acuerdo / antes de que se me olvide
  antes que se me olvide / por si se me olvida / perdón por la tardanza / perdona la tardanza / siento el retraso / perdón por avisar tarde / aviso tarde
  perdón que no avisé / disculpen que no avisé / disculpa la demora / una disculpa por la demora / me tardé en avisar / tardé en escribirlo
  no encontraba el móvil / no encontraba el celular / no hallaba el cel / el móvil no tenía batería / se me murió el cel / se me acabó la pila
  no había señal / no agarraba señal / no tenía cobertura / se cayó el wifi / el teléfono estaba en la taquilla / dejé el teléfono en el locker
  estaba ocupado / andaba ocupado / estaba con el cliente / andaba con el patrón / me habló el jefe / me llamó el jefe / el jefe me entretuvo
  me entretuvieron / me distraje / me distrajeron / vino una visita / llegó una visita / me llamaron por teléfono / estaba al teléfono
  estaba en el almuerzo / estaba comiendo / andaba en el lonche / fui por un café / fui a por un café / tuve que ir al portón / fui al baño
  voy pasando por el horno / iba pasando por el horno / pasé por el horno / acabo de pasar por ahí / ando por la cabina / estoy junto al horno
  estoy en la mesa / ando al otro lado del taller / estaba en la otra nave / aquí ando / aquí estoy / aquí al lado
  de camino al almacén / ya de salida / antes de irme / antes de irme a comer / ya que estoy aquí / ya que estamos / ya que preguntas / por si preguntan
  por si alguien pregunta / por si acaso preguntan / para que conste / para que quede / para que quede apuntado / para que lo sepan / para que lo sepas
  para que estén enterados / para que todos sepan / que quede escrito / que conste / como quedamos / como dijiste / como me pediste / como siempre
  lo de siempre / igual que siempre / nada especial / nada raro / nada del otro mundo / todo según el libro / todo bien / todo tranquilo / sin problemas
  sin novedad / sin ningún problema / sin mayor problema / sin complicaciones / sin sorpresas / fue fácil / bien fácil / pan comido / costó lo suyo
  me llevó su tiempo / tardó lo suyo / tardé más de lo que pensaba / ya era hora / por fin / al fin / gracias a dios / bendito sea dios
  qué día / qué mañana llevamos / menudo día / vaya día / vaya mañana / qué calor hace aquí / hace un calor de muerte / qué frío hace hoy
  me duele la espalda / me duelen los pies / no traía los lentes / no llevaba las gafas / tenía las gafas quitadas / sin gafas no veo nada / no veo nada sin lentes
  no veo ni torta / ya no veo bien / ando ciego / ando medio dormido / traigo mucho sueño / traigo un sueño / tengo sueño / no he tomado café / me falta café
  necesito un café / no sé ni contar / no sé contar hoy / no sé escribir / no sé escribir con esto / perdón por las faltas / perdonen las faltas / tengo los dedos gordos
  hoy no doy una / no doy una / hoy no estoy fino / tengo la cabeza en otro lado / ando en la luna / soy nuevo aquí / soy nuevo en esto / todavía estoy aprendiendo
  es mi primera vez / a ver si lo digo bien / a ver si lo puse bien / espero haberlo dicho bien / no sé si se dice así aquí / ojalá se entienda
  me oyes / me escuchas / estás ahí / sí me copias / eso es todo / es todo / es todo por ahora / eso es todo por ahora / nada más / nada más por ahora / no más eso
  nada más eso / y ya / y ya está / y listo / y punto / y se acabó / a seguir / a seguirle / a lo que sigue / seguimos / a trabajar
  me voy a comer / me voy a almorzar / voy a lonchar / ya me voy a la casa / ya me voy / nos vemos mañana / hasta mañana / nos vemos el lunes
  luego te cuento / al rato les cuento / luego cuento más / tengo que irme / me tengo que ir / me urge irme / me llaman
  está la radio puesta / con la radio a tope / hay mucho ruido / no se oye nada aquí / no me oigo ni yo / el compresor no me deja oír
  no es broma / es broma / es guasa / jajaja / aunque no lo creas / aunque no lo crean / te lo juro / palabra / de verdad / en serio
  ya sabes cómo es esto / ya saben cómo es / tú me entiendes / ya me entiendes / qué le vamos a hacer / ni modo / así es la vida / ahí lo tienes / ahí está
  dile al jefe / avísale al jefe / dile que ya / pásalo / pásalo a los demás / díselo a los otros / que lo sepan todos / avísales
  apúntalo por favor / apúntamelo / apúntala / apúntalo / anótalo / anótalo por favor / anótamelo / me lo apuntas / me lo anotas / lo anotas por favor
  escríbelo por favor / hazme el favor / haz el favor / si eres tan amable / si no es molestia / gracias por todo / muchas gracias de antemano / mil gracias
  se agradece / muy amable / dios te bendiga / que dios te lo pague / eres un sol / eres la onda / gracias jefe
  me ayudó el chavo / me ayudó el nuevo / me echó la mano el aprendiz / con ayuda del nuevo / yo solito / lo hice yo solo / yo mero
  el cliente está esperando / el cliente tiene prisa / corre prisa / urge / es urgente / lo quieren para hoy / es para el pedido grande
  llevo aquí desde las seis / ando desde las cinco / fue una noche larga / ya casi acabo el turno / cambio de turno
  he medido las dos / medí las dos / acabo de medir todas / las medimos todas / ya medí los dos con la sonda / he pasado la sonda por las dos
  les tomé la temperatura a las dos / les puse el termómetro a todas / acabo de leer las dos / di una vuelta con la sonda
  las 2 medidas ya / medidas las dos / medidas todas ya / revisé las dos con la sonda / chequé las dos / ya chequé los dos / las revisé todas
  qué calor hace / madre mía qué calor / qué calor, madre mía / vaya calor que hace / qué frío hace hoy / qué bochorno
  estoy contento con ella / quedé contento / muy contento con esa / buenos días mi sol / buenas a todos / hola guapos
  nada malo que decir / no le veo nada malo / no le encuentro fallos / nada que objetar / no tiene ningún defecto / no hay nada malo en ella
  va para largo / esto va para rato / hoy va a ser largo / va a ser un día largo
  a ver si terminamos temprano / a ver si hoy acabamos antes / a ver si nos da tiempo / a ver si salimos pronto / creo que ya empezamos
  supongo que empezamos / pues habrá que empezar / ya que estamos, a empezar / vamos arrancando / pues a darle / manos a la obra
  supongo que ya arrancamos / habrá que ir empezando / a ver si avanzamos algo / venga, a por ello
  qué onda / qué onda bot / qué onda mi bot / qué tal bot / qué hubo / quihubo mi bot / qué pasó mi bot
  a ver si terminamos pronto / a ver si acabamos ya / a ver si salimos temprano / a ver si hoy salimos a la hora / a ver si nos da tiempo
  que se hace tarde / que se nos va el día / que ya se nos hizo tarde / que ya vamos tarde / que hay prisa / y a otra cosa / y a lo siguiente
  antes de cerrarla / antes de taparla / antes de pintarla / antes de pintarlas / antes de pintar / antes de meterla / antes de meterlas al horno / antes de usarla
  antes de servir / antes de servirla / antes de mezclar / antes de aplicar / antes de darle la mano / antes de echarle la capa / antes de abrirla / antes de tocarla
  después de pintarla / después de servir / después de pesar / después de cerrarla / después de limpiarla / nada más sacarla / nada más abrirla / al pasar por ahí
  cuando pasé / cuando pasé por ahí / cuando lo miré / cuando la miré / cuando fui a verla / cuando llegué / cuando la revisé / al llegar / al pasar / la última vez que miré
  no os preocupéis / no se preocupen / no te preocupes / que nadie se preocupe / tranquilos / quédense tranquilos / ya podéis estar tranquilos / por eso no hay problema
  un saludo / saludos a todos / un abrazo / saludos / que tengáis buen día / que tengan buen día / buen turno a todos / feliz turno
  que se nos está haciendo tarde / que se nos hace de noche / que ya se hace tarde / que se nos hace tardísimo / que se nos va la mañana / que se nos echa la hora encima
  me voy por un café / voy a por un café / voy por agua / me voy a comer / me voy a almorzar / salgo a fumar / voy al baño / ahorita vuelvo / vuelvo en un rato
  voy a por otra brocha / me voy al almacén / bajo a por más guantes / hala / hala, venga / y a otra cosa / y listo / y ya estaría / pero tenía las manos ocupadas
  pero llevaba los guantes puestos / pero andaba con las manos llenas / que se me había pasado / se me fue la onda / se me fue el santo al cielo
`;
