// The words round a cry, in Spanish, without accents. Common practice and our own choice, no source.

import type { CryWords } from '../english/cries.ts';

export const spanishCries: CryWords = {
  ofSomebody: 'quemo',
  asked: 'por favor me nos',
  anybody: `
    alguien persona hombre mujer companero companera pintor obrero electricista soldador ayudante chico chica el
    ella`,
  sizes: 'un una unos el la los las lo gran grande enorme pequeno mucho mucha otro otra',
  openings: `
    hago dios mierda joder cuidado gente chicos fuera ayuda socorro auxilio rapido oye todos hay tenemos llamad
    llamen llama y ya ahora urgente emergencia`,
  shouts: `
    socorro auxilio emergencia alarma accidente ayuda ayudame ayudenme ayudadme ambulancia bomberos`,
  hurts: `
    queme quemo quemado quemada herido herida heridos sangra sangrando respira electrocuto electrocutado`,
  oneself: 'nos',
  endings: 'ayuda socorro auxilio rapido aqui alli ahi ahora ya urgente',
  whereabouts: 'en dentro fuera junto cerca bajo debajo sobre detras encima delante frente al',
  articles: 'el la los las un una',
  things: `
    horno cabina mezcla cubo lata latas bote trapo trapos mesa banco pistola manguera almacen taller nave suelo
    tanque deposito armario bidon ventilador conducto filtro cuadro maquina sala puerta patio techo pieza oficina`,
  compounds: '',
  liquids: `
    disolvente solvente acetona xileno tolueno etanol aguarras gasolina catalizador barniz esmalte laca diluyente
    alcohol endurecedor resina pintura producto quimico nitrogeno`,
  harmless: 'cafe agua leche sopa zumo jugo comida cena guiso arroz aire lluvia',
  onlyOfLiquid: 'vertido',
  drums: 'bidon deposito tanque residuos',
  pots: 'mezcla lata bote cubo olla recipiente',
  denials: 'sin nunca nada nadie ningun ninguna hubo habia fue era contra para ni',
  between: `
    hay se ha han me le te un una el la los las en de duelen duele pican pica arden esta estan mas hacer`,
  supposed: 'si cuando caso salvo',
  urgent: 'ayuda socorro auxilio atrapado atrapados atrapada dentro',
  burningOf: 'quemando quemandose incendiado incendiada incendiando prendio exploto',
  boiling: 'humea burbujea',
  fallsOfWork: '',
  drills: 'simulacro',
  anotherTime: `
    ayer manana semana mes ano lunes martes miercoles jueves viernes sabado domingo revisado revisada probado
    probada limpiado limpiada normal arreglado arreglada repuesto controlado apagado`,
  askings: '',
  ofCan: '',
  sore: 'duelen duele pican pica arden escuecen escuece queman',
  everyday: `
    carretilla grua enrutador camara camion portatil bateria caldera generador compresor ventilador pieza turno
    impresora red linea internet sistema servidor ordenador pantalla luz presion temperatura humedad nivel precio
    bomba ascensor produccion tension caudal bascula todo eso esto`,
  falling: 'desvanecio, no respira',
};
