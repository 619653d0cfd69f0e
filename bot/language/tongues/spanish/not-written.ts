// What could not be written, or does not read any more, in Spanish.

import type { englishNotWritten } from '../english/not-written.ts';
import { spanishPlace } from './names.ts';

export const spanishNotWritten: typeof englishNotWritten = {
  notRecorded: 'Sin anotar',
  storeFailed: 'No se pudo escribir el registro. Repítalo; que nadie lo dé por hecho hasta que aquí diga Anotado.',
  unreadTitle: 'Una parte del registro no se puede leer',
  unread: (seq, type, stream) => `La anotación ${seq} (${type}, ${stream}) ya no se puede leer.`,
  unreadFollows: {
    bell: 'Puede que un aviso suene una vez de más.',
    place: (place) => `Lo leído antes en ${spanishPlace(place)} cuenta como no leído: léalo ahora.`,
    crew: 'Lo que fijaba cuenta como nunca dicho: conviene repasar los ajustes.',
    rest: (stream) =>
      `No se puede anotar nada más en ${stream}: llévelo en papel. Sus avisos suenan como se previeron por última vez.`,
  },
  unreadMore: (count) =>
    count === 1
      ? 'Otra tampoco se puede leer: está en la bitácora.'
      : `Otras ${count} tampoco se pueden leer: están en la bitácora.`,
  unreadProve: 'Todo lo demás se anota y suena. «verificar» repasa el registro entero.',
  lineBroke:
    'Fallo del propio Batchbell con esta línea; queda en su bitácora. Dígalo de otro modo. Los avisos siguen sonando.',
  failed: 'Hubo un error interno. No se ha anotado nada; repítalo, por favor.',
  recordFails: 'No se puede escribir el registro',
  storeFailedNotice: 'Los avisos salen de memoria hasta que se pueda escribir otra vez.',
};
