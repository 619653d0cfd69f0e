// How Spanish speakers say it: air. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfBooth2: Sayings<SaidMeaning> = {
  air: `
    22 y 50 / 23 grados, 48 por ciento / aire 22 50 / aire a 24, humedad 45 / el aire está a 21 y 55
    el aire en 23 con 50 de humedad / aire: 22,5 °C y 47 % / air 75 48 / air 24C 50% / la sala a 22 con 50
    la nave en 20 y 60 / el taller en 23 y 47 / taller: 22 / 51 / cabina 24 y 45 / la cabina está a 23, 50 de HR
    el cuarto en 21 y 52 / el shop en 76 y 50 / booth 74 F 48 / humedad 50, 22 grados / humedad 48 y 23 de temperatura
    humedad relativa 51, temperatura 22 / HR 50, T 23 / rh 48 temp 75 / RH 50% 74F / humedad al 52, calor 27
    humedad en 60, temperatura en 19 / temperatura 22 humedad 50 / temp 23 hum 48 / temp ambiente 22 y humedad 51
    temperatura ambiente 21, HR 55 / t 22 h 50 / t: 23 hr: 47 / ambiente 23/48 / ambiente: 22 °C, 50 %
    condiciones 22 y 50 / clima 23 y 48 / el higrómetro dice 22 y 50 / higrómetro: 23, 47
    el termohigrómetro marca 21 y 55 / el sensor de pared da 22 y 51 / el reloj del clima dice 23 y 49
    el aparato marca 22 con 50 / la estación da 24 y 45 / medí el aire: 22, 50 / medí el ambiente, 23 y 48
    tomé el aire, 22 y 51 / tomé lectura del aire: 24 y 44 / leí el higrómetro, 22 y 52 / chequé el clima: 76 y 48
    chequé la humedad, 50 y 22 grados / lectura de aire 22/50 / lectura ambiental 23 y 48 / lectura de las 9: 22 y 51
    lectura de mediodía, 26 y 40 / nueva lectura del aire: 24, 46 / segunda lectura del día 23 y 49
    aire de la tarde 27 y 38 / hace 22 y 50 de humedad / hace 28 grados con 40 de humedad / hace frío, 15 y 60
    hace calor, 31 y 35 / está a 22 y 50 adentro / está húmedo, 24 y 72 / está seco, 22 y 25
    está lloviendo y adentro 20 con 78 / hay 22 grados y 50 de humedad / hay 60 de humedad y 21 grados
    tenemos 22 y 50 / tenemos 76 con 48 en el shop / andamos en 23 y 50 / andamos a 80 con 60 de humedad
    estamos en 22, 51 por ciento / estamos a 74 F, RH 50 / subió la humedad, 65 con 22
    subió a 27 y bajó la humedad a 38 / bajó a 18 y 62 / ya subió a 68 la humedad, 23 grados / cambió el clima: 19 y 70
    se puso húmedo, 24 y 68 / refrescó, 17 y 58 / calentó, 29 y 36 / la humedad está en 50 / la humedad anda en 55
    humedad cincuenta / humedad 62 ya / el punto de rocío 11 con 22 y 50 / dew point 52, air 75
    bulbo seco 22, húmedo 15 / amanecimos con 16 y 65 / amaneció en 14 y 70 / de mañana 17 y 62
    a las 7 había 15 con 68 / a las 12 26 y 42 / 14:00 27 y 40 / ahorita 23 y 50 / ahora 22, 51
    hace diez minutos 22 y 50 / recién leí 23 y 48 / veintidós y cincuenta
    veintitrés grados cuarenta y ocho por ciento / setenta y cinco y cincuenta de humedad
    veinte grados y humedad sesenta / veintidós punto cinco y cincuenta y uno / weather inside 75 and 50
    shop air 74, 48 / humidity 50, temp 75 / it's 76 con 52 de humidity / temp 77 humidity 45
    el AC está en 74 y la humedad en 48 / indoor 22 y 50 / Lia leyó el aire: 22 y 50 / Omar midió 23 y 48
    apunta aire 22 50 / anota 23 grados y 48 / registra ambiente 22, 51 / pon 22 y 50 de humedad
    el aire, jefe: 24 y 46 / compa, 23 y 50 adentro / che, 22 y 55
  `,
};
