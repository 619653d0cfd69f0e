// How Spanish speakers say it: flush brush, flush roller, ack, close. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfBooth3: Sayings<SaidMeaning> = {
  'flush brush': `
    pincel limpio / pincel lavado / pinceles limpios / pinceles enjuagados / cerdas lavadas con acetona
    peiné la brocha ya lavada / colgué la brocha limpia / Omar lavó la brocha / Lia limpió las brochas
    el chavo lavó los pinceles / acabo de lavar la brocha / acabo de lavar los pinceles / recién lavé las brochas
    ahorita limpié la brocha / a las 12 lavé la brocha / apunta brocha limpia / anota brochas lavadas
    che lavé la brocha / tío, brocha limpia
  `,
  'flush roller': `
    lavé el rodillo / lavé los rodillos / lavado el rodillo con acetona / lavados los rodillos / lavamos el rodillo
    ya lavé el rodillo / ya lavé el roller / ya está lavado el rodillo / se lavó el rodillo / lavando el roller
    lavé la felpa / lavé la bandeja y el rodillo / limpié los rodillos / limpié el roller / limpio el rodillo
    limpios los rodillos / limpiado el rodillo / limpiamos el rodillo / ya limpié el rodillo / ya limpié la felpa
    ya está limpio el roller / quedó limpio el rodillo / quedaron limpios los rodillos / se limpió el rodillo
    limpiando los rodillos / enjuagué los rodillos / enjuagué el roller / enjuagado el roller / enjuagada la felpa
    le pasé solvente al rodillo / le pasé acetona al roller / le pasé alcohol al rodillo / le pasé thinner al rodillo
    le di acetona al rodillo / metí el rodillo en acetona / remojé el rodillo y quedó limpio
    exprimí la felpa en solvente / exprimí el rodillo con alcohol / roller clean / roller washed / roller flushed
    roller cleaned ya / rollers clean / cleaned the roller / washed the roller / washed the rollers
    rinsed the roller con acetona / flush roller / flush al rodillo / flusheé el rodillo / flusheé el roller
    flusheado el roller con IPA / rodillo limpio / rodillo limpio ya / rodillo lavado y escurrido / rodillo enjuagado
    rodillos lavados / rodillitos limpios / rodillito lavado / felpa limpia / felpa enjuagada con acetona
    bandeja y rodillo lavados / manga del rodillo lavada / esponja del rodillo lavada / Omar lavó el rodillo
    Lia limpió el roller / el chavo lavó los rodillos / acabo de limpiar el rodillo / acabo de lavar el roller
    recién lavé el rodillo / ahorita limpié el rodillo / a las 12 lavé el roller / apunta rodillo limpio
    anota roller lavado / tío, rodillo limpio / compa ya lavé el rodillo
  `,
  ack: `
    leído el aviso / leído el brief / leído todo / leído y de acuerdo / leído, entendido / leí el aviso / leí el brief
    leí todo el brief / leí y entendí / leí las instrucciones de seguridad / leí lo de la cabina / ya leí / ya lo leí
    ya leí el aviso / ya leímos el brief / lo leí y lo entiendo / lo leí completo / entendido / entendido todo
    entendí el brief / entendí todo / entendida la charla / entendido lo de seguridad / entendido lo del spray
    me quedó claro el brief / me queda claro lo de la cabina / quedó claro el aviso / claro el brief / todo entendido
    todo claro / ya entendí lo de seguridad / enterado del brief / enterado del aviso / enterada del brief
    enterados los dos / enterados todos del brief / estoy enterado / quedo enterado / quedo enterada
    recibido el aviso / recibido el brief de seguridad / recibí el brief y lo leí / acuso recibo / confirmo que leí
    confirmo que leí el brief / confirmo enterado / read / read it / read the brief / I read it / I read the brief
    read and understood / read y entendido / understood / understood el brief / got it el brief / ack / acknowledged
    brief read / brief leído / brief entendido / brief visto / copy, brief leído / roger, leído
    de acuerdo con el brief / acepto el brief / acepto las reglas de la cabina / conforme, leído / firmo el brief
    visto y entendido / visto el brief / visto el aviso / ok leído / ok brief / ok, entendí el brief
    Omar: leído y entendido / Lia enterada / yo ya leí y entendí / aquí Beto, enterado / va, leído / sale, enterado
  `,
  close: `
    cierro la sesión / cierra la sesión / cierren la sesión / cerrada la sesión / cerramos la sesión
    se cerró la sesión / se cierra la sesión de rociado / ya cerré la sesión / ya cerramos la sesión
    ya se cerró la sesión / cierro sesión de pistola / cierro sesión de pulverizado / cierro el rociado de hoy
    cierro la sesión del spray / sesión cerrada ya / sesión concluida / sesión de rociado cerrada
    sesión de pistola cerrada / sesión de pintura terminada, ciérrala / sesión completa, cerrar / sesión acabada
    fin de la sesión de spray / fin de la sesión de pintura / fin de sesión, todos fuera / termina la sesión
    terminó la sesión / terminamos la sesión / damos fin a la sesión / close session ya / close the session
    close the spray session / closing the session / session closed ya / session done / session over / session is over
    end session / end of session / end the session / closed the session / cierra el session / cierra la spray session
    dale close / dale close a la session / doy por cerrada la sesión / damos por terminada la sesión
    doy fin a la sesión / concluye la sesión / concluimos la sesión / finaliza la sesión
    finalizamos la sesión de spray / cierre de la sesión / cierre de sesión de rociado / cierre del rociado
    cerrar la sesión / cerrar el spray / quiero cerrar la sesión / pido cierre de sesión
    todos fuera de la cabina, sesión cerrada / ya salieron todos, cierro la sesión / nadie dentro, cierra la sesión
    pistola limpia y todos fuera, cerramos la sesión / cabina vacía, cierro sesión / cabina despejada, cierra sesión
    extractor quince minutos más y cerrada la sesión / Omar cerró la sesión / Lia cierra la sesión
    apunta sesión cerrada / anota cierre de la sesión / che cerrá la sesión / cerrá sesión
  `,
};
