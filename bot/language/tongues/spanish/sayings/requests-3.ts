// How Spanish speakers say it: help, greeting. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfRequests3: Sayings<SaidMeaning> = {
  help: `
    primera vez con el bot, qué hago / enséñame a usarlo / enséñame a usarte / explícame cómo se usa
    dime qué puedo decirte / dame los comandos / dame ejemplos
  `,
  greeting: `
    hola a todos / hola equipo, buenos días / hola raza / hola gente / hola compas / hola jefe / hola jefa
    hola buenas / hola qué tal / hola cómo están / hola cómo andan / hola de nuevo / holi / holis / hola hola
    buenas a todos / buenas buenas / buenas tardes a todos / buenas noches a todos / buenos días equipo
    buenos días raza / buenos días jefa / buenos días, gente / buen día a todos / buen día, equipo / buen día jefe
    muy buenos días / muy buenas tardes / muy buenas noches / bonito día / qué onda raza / qué onda compas
    qué onda bot / qué pasó / qué pasó raza / qué hay / qué hay de nuevo / qué hubo pues / qué más / qué más pues
    qué tal todos / qué tal gente / qué tranza / qué es la que / qué es lo que hay / cómo están / cómo andan
    cómo andamos / cómo te va / cómo amanecieron / cómo amanecimos / ya llegué, buenos días / saludos a todos
    saludos equipo / saludos cordiales / un saludo / aloha / hello everybody / hello team / hi team / hey team
    morning / good morning / good morning raza / good afternoon / good night / what's up / sup / yo / hey bot
    gracias por todo / gracias a todos / gracias equipo / gracias compa / gracias mijo / gracias che / gracias tío
    gracias, muy amable / muchas gracias a todos / muchas gracias bot / mil gracias equipo / muchísimas gracias
    te agradezco / le agradezco / se les agradece / se agradece mucho / thanks / thanks bot / thank you
    thank you so much / thanks a lot / thx bot / grax bot / grasias / adiós a todos / adiós equipo / bye bye / bye raza
    chao chao / chau / ciao / hasta pronto / hasta el lunes / hasta la vista / hasta mañana equipo / hasta luego raza
    nos vemos mañana / nos vemos luego / nos vemos pronto / cuídense mucho / que descansen / que les vaya bien
    que tengan buen día / buen fin / buen fin de semana / buen turno / feliz día / de nada jefe / no hay de qué
    con gusto / un placer / 👋🏽 / 🙏🏽
  `,
};
