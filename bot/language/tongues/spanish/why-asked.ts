// How Spanish speakers ask why, and what a word means: matched in lower case, without accents.

import type { WhyTyped } from '../why-typed.ts';

export const spanishWhyAsked: WhyTyped = {
  said: [
    /^(?:(?:y |eso )*(?:quien (?:lo )?dice(?: eso)?|segun quien|segun que|en que (?:te|se) basas?|como (?:lo )?(?:sabes?|sabe usted)|de donde (?:lo )?(?:sacas?|sacaste|saco)|como es eso|con base en que))$/,
    /^(?:y )?como (?:se )?(?:sacas?|sacaste|saco|calculas?|calculaste|calculo|llegas?|llegaste|sale|salio|salen|dio|obtienes?|obtuviste|sabes?)(?: a| de| que)? (?:el |la |los |las |lo de )?(.+)$/,
    /^(?:y )?(?:de|por) ?donde (?:sale|salen|viene|vienen|sacas?|sacaste|salio|salieron) (?:el |la |los |las |lo de |eso de |ese |esa |esos )?(.+)$/,
    /^(.+) (?:de donde|por que|porque|xq|pq)(?: (?:sale|salen|viene|vienen|sacas?|sacaste))?$/,
    /^(?:y |pero |oye )*como que (.+)$/,
    /^(?:y |pero |oye )*(?:para que|a que se debe|cual es (?:el|la) (?:motivo|razon|causa)(?: de)?|debido a que|como asi(?: que)?) ?(.*)$/,
    /^((?:.* )?por ?que\b.+)$/,
  ],
  howTo:
    /^(?:y |pero |oye )*(?:(?:como (?:hago|hacemos|hace uno|le hago|le hacemos) (?:para |pa )?|(?:la |cual es la )?(?:mejor |debida )?(?:forma|manera) (?:correcta |buena )?de )(.+)|como (?:(?:se|lo|la|los|las|le|les|hay que|debo|debemos|tengo que|tenemos que|puedo|podemos|deberia) )*(.+))$/,
  word: /^.*\bpor ?que (?:es que )?/,
  not: /^(?:todavia |aun )*no (?=(?:se |me |nos )?(?:puedo|podemos|puede|pueden|debo|debemos|dejas?)\b)/,
  may: '',
  figure: /\d{1,2}:\d{2}|[-−]?\d+(?:[.,]\d+)? ?(?:°|º|%|grados|kg|g|lb|oz|min|m|um|l|c|f)(?![a-z])/gi,
  defines: [
    /^(?:y )?(?:que (?:es|son|significa|quiere decir|quieres decir con|quiere usted decir con|cosa es|viene siendo|se entiende por|es eso de(?:l)?)|a que (?:le |se )?(?:llamas?|llama|llaman|dice|dicen)|como se entiende|define|defina|explicame|expliqueme|explica|significado de|como esta eso de(?:l)?) (?:(?:eso|lo) de(?:l)? )?(?:el |la |los |las |un |una |lo )?(.+)$/,
    /^(?:el |la |eso del |eso de |lo del |lo de )?(.+?) (?:que es|que significa|que quiere decir|que cosa es)$/,
  ],
  topics: {
    'gas-needed':
      /\b(?:ech\w*|pon\w*|necesit\w*|lleva\w*|falta|dar\w*|damos|met\w*|quiere|pide|tap\w*)\b.*\b(?:gas|argon|nitrogeno)\b|\b(?:gas|argon|nitrogeno)\b.*\b(?:sirve|falta|necesita\w*)\b/,
    'oven-heat':
      /\b(?:grados|temp\w*|\d+ ?[cf])\b.*\b(?:horno|curad\w*|cura|hornear)\b|\b(?:horno|curado|hornear)\b.*\b(?:grados|temp\w*|calor|\d+ ?[cf])\b/,
    'touch-up': /\bretoc\w*\b|\btiempo abierto\b/,
    recoat: /\b(?:segunda|otra) (?:capa|mano)\b|\brecubrir otra vez\b/,
    surface: /\b(?:superficie|preparacion|preparar\w*|chorro|acero|perfil|grado de)\b/,
    ratio: /\b(?:relacion|proporcion|desviacion|gramos|uno a uno)\b/,
    spread:
      /\b(?:condens\w*|diferencial|(?:sobre|cerca|encima|lejos|junto)(?: al?| del?)?(?: el| la)?(?: punto de)? rocio)\b/,
    'dew-point': /\brocio\b/,
    cure: /\b(?:cur(?:a|ado|ar|ada|o)|horno|hornea\w*)\b/,
    hour: /\b(?:hora|list[oa]|termin\w*|cuenta|salir|sacar\w*|corre)\b/,
    flash: /\b(?:oreo|orear\w*|sec[ao]\w*|secar\w*|esper\w*|fresc[ao]|mojad[ao]|evapor\w*)\b/,
    'pot-life': /\b(?:vida|muere|morir|acab\w*|gel\w*|vence|dura\w*|pierde|perder|tirar|termina)\b/,
    blend: /\b(?:agit\w*|bat\w+|mezcl\w*|revol\w*|revuelv\w*|induccion)\b/,
    film: /\b(?:espesor|pelicula|micras|micrones|mils|grosor)\b/,
    air: /\b(?:aire|humedad|temp\w*|sala)\b/,
  },
};
