// How several parts are told in Spanish: lists, stretches, many by one word, and the same once more.

import type { ListWords } from '../list-words.ts';

export const spanishLists: ListWords = {
  plurals: ['s', 'es'],
  and: ['y', 'e', '&', '+', 'mas', 'y tambien'],
  to: ['a', 'al', 'hasta', 'hasta el', 'hasta la', 'a la', 'pa la'],
  articles: ['el', 'la', 'los', 'las', 'del', 'de la', 'de las', 'de los', 'numero', 'num'],
  of: ['de', 'de la', 'del', 'de el'],
  articlesOfMany: ['los', 'las', 'estas', 'estos', 'esas', 'esos'],
  serials: ['serie', 'de serie', 'numero de serie'],
  jobs: ['trabajo', 'obra', 'encargo', 'orden'],
  many: {
    all: 'todas, todos, todas ellas, todos ellos, todo, toditas, toditos, todo lo, todas las, todos los, todas las piezas, cada una, cada uno',
    both: 'ambas, ambos, las dos, los dos, el par, ambas dos',
    rest: 'resto, demas, otras, otros, restantes, que faltan, que faltaban, que quedan, que quedaban, que falta, faltantes, sobrantes',
    last: 'ultimas, ultimos, ultima, ultimo',
  },
  nouns: {
    impeller: 'impulsor impeler rodete impelente',
    housing: 'carcasa carcaza caja alojamiento',
    pump: 'bomba',
    valve: 'valvula',
    cover: 'tapa cubierta',
    plate: 'placa plancha chapa',
    bracket: 'soporte escuadra mensula',
    flange: 'brida',
    gear: 'engranaje',
    rail: 'riel carril',
    railing: 'barandilla barandal baranda',
    shaft: 'eje flecha',
    tank: 'tanque deposito',
    pipe: 'tubo caneria',
    body: 'cuerpo',
    ring: 'anillo aro',
    rotor: 'rotor',
    elbow: 'codo',
    bearing: 'cojinete rodamiento balero',
    panel: 'panel',
    frame: 'bastidor marco',
    wheel: 'rueda',
  },
  sameFor: {
    before:
      'lo mismo con, lo mismo para, lo mismo en, lo mismo a, lo mismo al, lo mismo que, lo mismo, lo mismo de, lo mismito con, lo mismito para, igual con, igual para, igual en, igual, igual a, igual que, igualmente, tambien, idem, idem con, idem para, idem en, tambien con, tambien para, hice lo mismo con, hice lo mismo a, le hice lo mismo a, le hice lo mismo al, les hice lo mismo a, hago lo mismo con, haz lo mismo con, y lo mismo con, repite con, repite para',
    behind:
      'tambien, igual, igualito, igualita, igualitas, igualitos, lo mismo, idem, asimismo, igualmente, iguales, tambien igual, igual tambien, de la misma manera, de igual manera, lo mismito, tambien lo mismo, otro tanto',
  },
};
