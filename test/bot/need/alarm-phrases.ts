// What people type in need, by the language of who types it: what each line comes to, and of which trouble its first line tells.
// And lines that hold the same words and call nobody. Invented; common practice and our own choice, no source.

import type { Alarm } from '../../../core/session/session-commands.ts';

/** Everybody at once; everybody in 20 s, unless somebody says no; two taps; the help, with the alarm first. */
type Comes = 'rings' | 'countdown' | 'asks' | 'help';

export interface Cried {
  readonly comes: Comes;
  readonly of?: Alarm | 'smoking' | 'bulging';
  /** Apart by a stroke. */
  readonly lines: string;
}

export const cried: Readonly<Record<'en' | 'es', readonly Cried[]>> = {
  en: [
    {
      comes: 'asks',
      lines: `
    not responding / not answering / burn / hot / help! / helppp / hlep / exotherm / runaway / gelled and hot`,
    },
    {
      comes: 'help',
      lines: `
    help`,
    },
    {
      comes: 'rings',
      of: 'emergency',
      lines: `
    help!!! / emergency / 911 / 112 / call 112 / call an ambulance / sos / mayday / kari is bleeding / kari got
    electrocuted / kari trapped in the tank / someone swallowed thinner / kari drank solvent / socorro kari is
    down / i'm bleeding / finger cut off / hand caught in the mixer`,
    },
    {
      comes: 'countdown',
      of: 'emergency',
      lines: `
    HELP HELP / help me / kari is hurt / electric shock / allergic reaction / chest pain / heart attack / kari cut
    her hand`,
    },
    {
      comes: 'rings',
      of: 'eyes',
      lines: `
    splash in face / splash in the eye / splashed in my eyes / got hardener in my eye / resin in kari's eye /
    isocyanate in my eye / my eyes are burning / eyes / eyes!!`,
    },
    {
      comes: 'rings',
      of: 'breathless',
      lines: `
    can't breathe / cant breth / i cant breathe / kari can't breathe / lia is choking / short of breath / no puedo
    respirar`,
    },
    {
      comes: 'rings',
      of: 'smoking',
      lines: `
    smoke from pot / smoke from pot 1 / smoke coming out of pot 1 / pot 1 is smoking / pot smoking`,
    },
    {
      comes: 'rings',
      of: 'fire',
      lines: `
    smoke in the booth / fire / fier in booth / fire in bay 2 / booth on fire / flames in the oven / rags on fire
    / oven is burning / explosion in the booth / the gun exploded / fuego in the booth / help ayuda fire fuego /
    fire!!! feuer!!! / call the fire brigade`,
    },
    {
      comes: 'rings',
      of: 'bulging',
      lines: `
    can bulging / can 3 bulging / lid bulges / lid of can 3 is bulging / the can is swelling / can 3 is swollen /
    can 3 is hissing / can about to burst / can 1 is warm and hissing`,
    },
    {
      comes: 'rings',
      of: 'hot',
      lines: `
    pot 1 is hot / hot pot 1 / hot 1 / batch 1 too hot to hold / pot too hot to touch / pot 2 is gelled
    and hot / pot 2 gelled, hot / batch 1 gelled and is hot / the mix gelled and it is hot / the pot has set hard and
    it's hot / gelled 2 hot / batch 1 exotherm`,
    },
    {
      comes: 'rings',
      of: 'down',
      lines: `
    kari collapsed / kari fainted / Ola fainted / ola passed out / someone collapsed in the booth / man down /
    down / kari is unconscious / omar is not breathing / kari fell off the ladder`,
    },
    {
      comes: 'rings',
      of: 'spill',
      lines: `
    spill / help gas leak / spil in the booth / acetone all over the floor / thinner leak in the store / gas leak / nitrogen leak
    in the can room`,
    },
    {
      comes: 'rings',
      of: 'skin-burn',
      lines: `
    burned my hand`,
    },
    {
      comes: 'rings',
      of: 'down',
      lines: `
    she is not responding / kari is not responding / kari is unresponsive / kari won't wake up / no answer from kari in the booth / kari
    isn't answering in the tank`,
    },
    {
      comes: 'countdown',
      of: 'down',
      lines: `
    Ola is not answering in the booth / ola is not answering in the booth / kari isn't answering / not answering in the booth / kari is
    not answering the phone in the booth`,
    },
    {
      comes: 'countdown',
      of: 'skin-burn',
      lines: `
    i burnt myself / acid on my hand / hardener on my skin`,
    },
    {
      comes: 'countdown',
      of: 'breathless',
      lines: `
    kari is dizzy / i feel dizzy from the fumes / asthma attack / feeling dizzy / i feel sick / kari feels sick / strong smell,
    feeling dizzy / i feel lightheaded from the fumes / headache from the fumes / i'm going to pass out`,
    },
    {
      comes: 'countdown',
      of: 'fire',
      lines: `
    evacuate`,
    },
  ],
  es: [
    {
      comes: 'rings',
      of: 'emergency',
      lines: `
    socorro / auxilio / ¡auxilio! / ayuda!!! / emergencia / 112 / llama al 112 / llamen una ambulancia / kari
    sangra / kari se electrocutó / me dio la corriente / kari tragó disolvente / llama a los bomberos / sokorro /
    kari atrapada en el tanque / la mano atrapada en la batidora`,
    },
    {
      comes: 'help',
      lines: `
    ayuda`,
    },
    {
      comes: 'countdown',
      of: 'emergency',
      lines: `
    ayúdame / kari está herida / reacción alérgica / dolor en el pecho / me corté el dedo`,
    },
    {
      comes: 'rings',
      of: 'eyes',
      lines: `
    me cayó en el ojo / me cayo en los ojos / me salpicó en la cara / salpicadura en el ojo / salpicadura en la
    cara / ojos / me arden los ojos / le entró en el ojo a kari / me entró endurecedor en el ojo`,
    },
    {
      comes: 'rings',
      of: 'breathless',
      lines: `
    no puedo respirar / kari no puede respirar / me ahogo / lia se ahoga / me falta el aire`,
    },
    {
      comes: 'rings',
      of: 'down',
      lines: `
    no respira / kari no responde / ella no responde / kari no contesta en la cabina / kari se desmayó / Ola se desmayó / kari se cayó / se desplomó kari / hombre caído / hay alguien
    caído en la cabina / kari está inconsciente`,
    },
    {
      comes: 'rings',
      of: 'smoking',
      lines: `
    sale humo de la mezcla 1 / humo de la mezcla / la mezcla 1 echa humo`,
    },
    {
      comes: 'rings',
      of: 'fire',
      lines: `
    humo en la cabina / fuego / incendio / fuego en la cabina / fuego en bay 2 / se quema la cabina / arde el
    horno / hay llamas en el horno / explotó la pistola / explosión / fuegoo en la cabina / fuego fire`,
    },
    {
      comes: 'rings',
      of: 'hot',
      lines: `
    la mezcla está hirviendo / mezcla 1 caliente / caliente 1 / la mezcla se ha gelificado y quema / el cubo quema /
    mezcla 1 gelificada y muy caliente`,
    },
    {
      comes: 'asks',
      lines: `
    no contesta / no responde / caliente / aiuda / está hirviendo / se ha gelificado y está caliente`,
    },
    {
      comes: 'rings',
      of: 'bulging',
      lines: `
    lata hinchada / ayuda lata hinchada / la lata 3 está hinchada / tapa abombada / la tapa se abomba / la lata va a reventar / la lata
    reventó`,
    },
    {
      comes: 'countdown',
      of: 'down',
      lines: `
    kari está en el suelo / kari no contesta / no contesta Ola en la cabina`,
    },
    {
      comes: 'rings',
      of: 'spill',
      lines: `
    derrame / derrame de acetona / se me cayó la acetona / fuga de gas / fuga de nitrógeno`,
    },
    {
      comes: 'countdown',
      of: 'skin-burn',
      lines: `
    me quemé / ácido en la mano / se quemó kari`,
    },
    {
      comes: 'rings',
      of: 'skin-burn',
      lines: `
    me quemé la mano`,
    },
    {
      comes: 'countdown',
      of: 'breathless',
      lines: `
    estoy mareado / kari está mareada / ataque de asma / huele mucho, me mareo / me mareo / kari se marea / me siento mal / kari se siente
    mal / huele mucho a disolvente y me mareo / tengo náuseas`,
    },
    {
      comes: 'countdown',
      of: 'fire',
      lines: `
    evacúen`,
    },
  ],
};

/** A denial, a plan, a check, a report of what was done, another day: nobody is called. */
export const quiet: Readonly<Record<'en' | 'es', string>> = {
  en: `
    no splash in face today / face shield splash guard ordered / splash on face shield wiped / no gas leak found /
    gas leak check done / gas leak test on monday / leak in the compressor line fixed / oil leak on the forklift /
    paint leaking from can 3 cleaned up / the lid was bulging last week / no cans bulging / check for bulging cans
    / can 3 bulging? / hose swelling is normal / kari passed out the flyers / the lamp passed out of warranty /
    hand caught in the mixer training video / kari trapped the cable in the lid / air trapped in the film / chest
    pain course is next week / first aid for chest pain is on the wall / asthma form for lia signed / allergic
    reaction sheet printed / evacuate drill tomorrow / evacuation plan printed / evacuate the vacuum chamber / the
    pot is on the floor / kari drank coffee / kari drank all the paint coffee / kari cut the tape by hand / kari
    cut masks for the right hand impeller / how do I help / help mix / help gas / help swell / help scale / help respirator / help alarm / help filter / smoke test passed / smoke
    break / smoke from the pot was yesterday / no smoke from pot 1 / electric shock sign on the panel / finger
    guard cut off to length / pot 1 gelled and was hot / batch 1 is not gelled, just warm / pot set hard hat rule by the
    hot plate / acetone all over the price list / spil=ok / heart attack leaflet on the board / frie
    the sensor? ok / the phone is not answering / supplier isn't answering / Supplier isn't answering / the printer is not responding / the
    oven is not responding / customer not responding to my emails / sensor isn't responding in the booth / kari isn't answering her
    phone / kari is not hurt / i am not dizzy / kari is sick today / i feel bad about the reject / nobody answered the phone`,
  es: `
    ayuda bote / ayuda lata / ayuda gas / ayuda mezcla / ayuda alarma / no hay fuga de gas / sin salpicadura en la cara / la tapa hinchada se cambió ayer / ninguna lata hinchada /
    revisar latas hinchadas / curso de reacción alérgica el lunes / plan para evacuar revisado / el cable quedó
    atrapado en la tapa / kari cortó la cinta a mano / la pieza está en el suelo / no hay humo de la mezcla / kari
    bebió café / ataque de asma: formulario firmado / se desplomó el precio / bolsa hinchada de aire / bote de
    pintura abombado devuelto ayer / la mezcla no se ha gelificado ni quema / descarga eléctrica: cartel puesto / no contesta
    el proveedor / no me contesta el cliente / el horno no responde / no responde el horno / no me mareo / huele mucho a disolvente`,
};

/** Several languages in one line, whoever types it. */
export const mixed = [
  'fuego fire help ayuda kari cant breth',
  'help fuego in der kabine',
  'ayuda kari is down',
  'socorro kari is down',
];
