// How Spanish speakers say it: ack, close. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfBooth3: Sayings<SaidMeaning> = {
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
