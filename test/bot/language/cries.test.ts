// A cry calls at once, wherever its word stands in the line; a line that only holds the word calls nobody and is asked about,
// with a tap that says what it does. Lines are invented: common practice and our own choice, no source.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { alarms } from '../../../core/session/session-commands.ts';
import { demoCrew } from '../../core/given.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';

const cries: Readonly<Record<string, string>> = {
  fire: `FIRE | fire!! | fire in the booth | fire by the skip | help fire | HELP! FIRE | oh no fire | there's a fire in the oven |
    the booth is on fire | something is burning in booth | big flames | acetone fire | stop! fire in the booth |
    fire in booth need extinguisher | this is not a drill fire in the booth | fuego | ¡fuego junto a la cabina! |
    humo en la cabina | hay fuego en la cabina | hay lumbre | hay lumbre en la cabina | arde el horno | se quema la cabina | ayuda fuego`,
  eyes: `eyes | EYES!! | got some in my eye | acetone in my eyes | my eyes are burning | eyes kari | eyes in booth | ojos |
    me entró en el ojo | acetona en los ojos | me arden los ojos | se cayó en los ojos`,
  down: `down | kari is down | kari's down | Jens is down | down kari | man down in booth | somebody is down | omar collapsed |
    help, kari is down | person down by the dip tank | kari fell down | caído | kari está caída | cayó kari en la cabina |
    se desmayó jens | kari inconsciente`,
  spill: `spill | SPILL!! | spill in the booth | acetone spill | big spill | spilled acetone on the floor | spill of hardener |
    spill 5l acetone | derrame | derrame de acetona | se derramó acetona | fuga de disolvente | vertido en el suelo |
    vertido acetona | vertido de tolueno en el suelo | ayuda, vertido de disolvente | se derramó el catalizador | se me cayó el thinner | se me cayó la pintura |
    se cayó el disolvente`,
  hot: `hot pot | hot pot 1 | hot pot by the oven | hot pot in booth 2 | pot 2 is hot | the pot is getting hot | mezcla caliente | se calienta la mezcla |
    se está calentando la mezcla | la mezcla echa humo | la mezcla 1 está echando humo`,
};

const calm = `fire extinguisher checked | fire drill at 10 | no fire | no fire in the booth | fire door was propped open | in case of
  fire use the stairs | is there a fire drill today | small flames on the old heater are normal | hot day | el camión echa humo | it's hot today | hot in
  here | the oven is hot, ready for the load | smoke break | coffee spill cleaned up | spill kit restocked | spilled my tea | no spill
  | eye wash tested | keep an eye on the pot | eyes on the scale please | down to 20C overnight | printer is down | fan is down for
  service | kari was down with a cold | nobody is down | simulacro de fuego a las diez | no hay fuego | ojo con la manguera |
  no me duelen los ojos | agua caliente otra vez | derrame de café limpiado | la impresora está caída | caída de tensión ayer |
  estoy calentando la mezcla | kari está calentando la mezcla | se está calentando el horno | vertido disolvente en el bidón |
  vertido de pintura vieja al bidón correcto | se me cayó la brocha | cayó el nitrógeno |
  vertido de resina | vertido pintura | se cayó el gas | se cayó la pintura de la pieza | se cayó la pintura`;

/** What began with the word and only asked: where, who, what it does, that help is wanted. */
const criesInAnyWords: Readonly<Record<string, string>> = {
  fire: `fire everywhere | fire pls help | fire started in the booth | fire is spreading | fire is in the booth | the fire is
    spreading | fire we are trapped | fire i need help | fire out back | fire get out | fire this is not a drill | fire, no drill |
    fire no drill | fire coming out of the oven | fire upstairs | fire what do i do | fire won't go out | fire not out | fire was
    small now big | fire in week old rags | fire real | fire after spraying | fire because of the solvent | fire tomas is inside |
    fire drill? no real fire | lads fire in the booth | omg fire | fire guys | call the fire brigade | can't put out the fire |
    the gun caught fire | smoke in the booth | FIREEEE | fire brigade!! | fire brigade needed | fire brigade on the way | fire alarm at tank 3 | fire alarm | fire alarm going off
    for real | fire extinguisher!! quick | fire hose now | fuego por favor ayuda | fuego no es simulacro | no es simulacro, fuego
    en la cabina | fuego llamen a los bomberos | fuego por todas partes | fuego de verdad | fuego qué hago | fuego atrás |
    se quema todo | arde todo | humo negro | se está quemando | no se apaga el fuego`,
  eyes: `eyes acetone | eye splash | eye full of hardener | eyes wont open | eyes got hit | eyes she cant see | eyes not good |
    eyes of kari | eye wash where | le entró en los ojos a kari | mis ojos`,
  down: `down not breathing | man down not breathing | man down unconscious | down in the pit | kari is down not breathing |
    kari is down unconscious | kari is down on the ladder | kari isn't moving she's down | someone fell | kari fell | kari fainted |
    kari collapsed | kari passed out | kari is not breathing | he's down | hes down | Tomás is down | kari no respira`,
  spill: `spilled a whole can | spill into the drain | spill of 20 litres | spill a lot | se ha derramado acetona |
    spill bucket of acetone | se cayó el bote de endurecedor`,
  hot: 'hot pot smoking | pot 1 is hot | batch 2 is hot | mezcla 1 caliente | hot can 5 | can 3 is hot | pot is smoking',
};

/** Words that are calm elsewhere, beside words that are not. */
const criesBesideCalm: Readonly<Record<string, string>> = {
  fire: `fire it's in the booth | fire up on the roof | fire door is burning | fire line 3 is burning | fire store help |
    fire, yesterday's rags are burning | fire at the exit`,
  eyes: `eye contact with hardener | ojos y cara con endurecedor | ojo que me arde | eyes opened and burning`,
  down: `down the ladder | kari is down with chest pain | down two people | two men down | down the shaft not breathing`,
  spill: `spill over the floor | spill acetone by the water tap | acetone spill by the tea kitchen`,
  hot: 'hot pot boiling over',
};

/** Some of these rang: a thing that is down, a look at the pot, the oven that is fired, the stew. */
const calmToo = `oven down | booth down | line down | compressor down | forklift is down | Forklift is down | crane is down |
  router is down | Slack is down | part is down | temps are down | la olla del guiso está caliente | ojo al horno | mucho ojo |
  eyes on the pot | fire the oven | fire blanket is in the cabinet | fire insurance is due | fire brigade visited | fire alarm test
  at noon | fire drill in the booth | fire drill, everybody out at ten | eyes on the gauge? | down by 5% | kari sat down |
  kari fell behind with the sheets | the pallet fell | omar is down for the brief | we are down to the last can |
  spill in the booth cleaned up | down two degrees | kari is down with the flu | fire up the oven at seven | fire, drill at ten |
  ojo y cuidado | eye contact with the crane driver | fire proofing on part 3 | fire alarm at 10 | explosion proof fan | eye drops ordered | down tools at five | kari is down on the
  rota | kari is down as first aider | spill proof lids ordered | vertido en la mezcla 200g | kari fell out with omar |
  if kari is down call 112 | smoke break | hot pot for lunch | se ha caído la red | we got fire doors now`;

const isAlarm = (word: string): boolean => alarms.some((alarm) => alarm === word);

const linesOf = (text: string): readonly string[] => text.split('|').map((line) => line.trim().replace(/\s+/g, ' '));

describe('a cry', () => {
  it.each(
    [...Object.entries(cries), ...Object.entries(criesInAnyWords), ...Object.entries(criesBesideCalm)].flatMap(
      ([verb, lines]) => linesOf(lines).map((line) => [line, verb] as const),
    ),
  )('given "%s", then it calls at once', (line, verb) => {
    const read = readLine(line, tallerALasDiez);
    expect(read.kind === 'command' ? read.command.verb : read.kind).toBe(verb);
  });

  it.each(['fire in booth???', 'fire what do I do??', 'fire in the booth?'])(
    'given "%s", then where it is and that help is wanted outweigh the question',
    (line) => {
      expect(readLine(line, tallerALasDiez)).toMatchObject({ kind: 'command', command: { verb: 'fire' } });
    },
  );

  it.each(['jo vale is down', 'Jo Vale went down', 'man down, jo vale', 'fire jo vale', "jo's down"])(
    'given somebody of two names, and "%s", then it calls at once',
    (line) => {
      const read = readLine(line, { ...tallerALasDiez, people: ['kari', 'Jo Vale'] });
      expect(read.kind === 'command' ? read.command.verb : read.kind).toBe(line.startsWith('fire') ? 'fire' : 'down');
    },
  );

  it.each([
    ['pot 1 is hot', 1],
    ['batch 2 is hot', 2],
    ['mezcla 1 caliente', 1],
    ['la mezcla 2 está muy caliente', 2],
    ['hot pot by the oven, batch 2', 2],
    ['hot pot 12 smoking', 12],
    ['hot can 5', undefined],
    ['can 3 is hot', undefined],
    ['pot is hot, 2.4kg in it', undefined],
  ])('given "%s", then the batch is %s', (line, batch) => {
    const read = readLine(line, tallerALasDiez);
    expect(read.kind === 'command' && read.command.verb === 'hot' && read.command.batch).toBe(batch);
  });

  it('given a word that asks about it, then it is explained and calls nobody', () => {
    expect(readLine('fire?', tallerALasDiez)).toMatchObject({
      kind: 'question',
      question: { ask: 'help', verb: 'fire' },
    });
  });
});

describe('a line that only holds the word', () => {
  it.each([...linesOf(calm), ...linesOf(calmToo)])('given "%s", then it calls nobody', (line) => {
    expect(readLine(line, tallerALasDiez).kind).toBe('misread');
  });

  it.each(['fan down', 'fan is down'])('given "%s", then the fan is off and nobody is called', (line) => {
    expect(readLine(line, tallerALasDiez)).toMatchObject({ kind: 'command', command: { verb: 'fan', running: false } });
  });

  it('given one, then a tap says what it does, and only the tap calls', async () => {
    const { say } = sessionTalk();
    const asked = await say('@kari: fire extinguisher checked');
    expect([asked.code, asked.recorded, asked.to]).toEqual(['no-cry', false, ['kari']]);
    expect(asked.card.lines[0]).toBe('This speaks of "fire" and does not call for help, so nobody is called.');
    expect(asked.card.actions).toEqual([{ id: 'meant-1', label: 'Call for help: Fire', line: 'fire' }]);
    const called = await say(`@kari: ${asked.card.actions[0]?.line}`);
    expect([called.recorded, called.to]).toEqual([true, sprayCrew.people.map(({ name }) => name)]);
  });
});

/** It is so now, and of whom, what or where. */
const certain: Readonly<Record<string, string>> = {
  emergency: `socorro | ¡auxilio! | auxilio | emergencia | emergency | emergency in the booth | there's an emergency | mayday mayday | SOS |
    911 | 112 | call 112 | llama al 112 | help!!! | HELP!! | ¡¡ayuda!! | ambulance | call an ambulance | ambulancia |
    llamen a una ambulancia | kari is bleeding | Chuy se electrocutó`,
  breathless: `can't breathe | kari can't breathe | i cannot breathe | jens is short of breath | kari is choking | no puedo respirar | Chuy no puede
    respirar | me falta el aire | me ahogo`,
  'skin-burn': `i burned my hand | burned my hand | Kari burned her hand | me quemé la mano | me he quemado la mano | skin burn | skin splash in
    the booth | quemadura en la piel`,
};

/** Who, where or what hurts is told, and not for certain what has happened. */
const open: Readonly<Record<string, string>> = {
  emergency: `Jens is hurt | tomas está herido | help me | ayúdenme | accident in the booth | accidente en la cabina | kari is hurt | someone is hurt | estoy herida |
    kari está herido | hay alguien herido`,
  'skin-burn': `me quemé | se quemó Chuy | acid on my hand | hardener on her face | ácido en la mano | burn on his arm`,
  breathless: `estoy mareado | kari dizzy | i feel dizzy`,
  down: `me caí | cae Kari`,
};

/** Nothing is told with it. */
const bare = `hot | caliente | burn | bad burn | quemadura | quemaduras | alarma | accident | accidente | help! | ¡ayuda! | ayuda por favor`;

const calmOfNeed = `112 plates in the rack | 112 placas en el bastidor | emergency exit is clear | emergency stop tested | an emergency procedure for
  the oven | luces de emergencia probadas | burned 3 parts | se quemó el fusible | accident last week | kari se quemó ayer | la presión cae |
  burn marks on part 3 | help filter | the gun is hurt | nobody is hurt | ayuda | help | ayuda pesar | help mix | salida de emergencia libre | acetone wiped off my hand |
  no acid on my hand | paint on the arm of the robot | kari cut the tape | mano de pintura | skin on the pot | piel de naranja |
  falta aire en el compresor | no alarm today`;

describe('a line that asks for help in no alarm’s word', () => {
  const each = (lines: Readonly<Record<string, string>>) =>
    Object.entries(lines).flatMap(([verb, text]) => linesOf(text).map((line) => [line, verb] as const));

  it.each(each(certain))('given "%s", then it calls at once', (line, verb) => {
    expect(readLine(line, tallerALasDiez)).toMatchObject({ kind: 'command', command: { verb } });
    expect(readLine(line, tallerALasDiez)).not.toMatchObject({ command: { unsure: true } });
  });

  it.each(each(open))('given "%s", then it rings by itself unless somebody says no', (line, verb) => {
    expect(readLine(line, tallerALasDiez)).toMatchObject({
      kind: 'command',
      command: { verb, note: expect.any(String), unsure: true },
    });
  });

  it.each(linesOf(bare))('given "%s", then nobody is called, and two taps stand first', (line) => {
    const read = readLine(line, tallerALasDiez);
    const offered = read.kind === 'misread' ? read.misread.suggestions : [];
    expect(read).toMatchObject({ kind: 'misread', misread: { code: 'which-cry' } });
    expect(offered.slice(0, 2).map((tap) => readLine(tap, tallerALasDiez))).toMatchObject([
      { command: { verb: 'emergency' } },
      { command: { verb: 'no-alarm' } },
    ]);
  });

  it.each(linesOf(calmOfNeed))('given "%s", then it is no such line', (line) => {
    const read = readLine(line, tallerALasDiez);
    expect(read).not.toMatchObject({ misread: { code: 'which-cry' } });
    expect(read.kind === 'command' && isAlarm(read.command.verb)).toBe(false);
  });

  it('given the shop has its number, then it stands first, and the tap says whom it calls', async () => {
    const people = demoCrew.people.map((person) => ({ ...person, language: 'es' }));
    const { say, close } = sessionTalk(':memory:', { ...demoCrew, people });
    await say('@rosa: fijar emergencia teléfono 112 y puerta 3');
    const asked = await say('@kari: quemadura');
    expect([asked.code, asked.recorded, asked.to]).toEqual(['which-cry', false, ['kari']]);
    expect(asked.card.lines[0]).toBe('Llame: 112 y puerta 3');
    expect(asked.card.actions.map(({ label, line }) => [label, line])).toEqual([
      ['Llamar a todos', 'emergencia'],
      ['Sin alarma', 'sin alarma'],
      ['Pedir ayuda: Quemadura o salpicadura en la piel', 'quemadura piel'],
      ['Pedir ayuda: Fuego', 'fuego'],
    ]);
    const called = await say('@kari: tap meant-1');
    expect([called.recorded, called.card.ping]).toEqual([true, expect.not.arrayContaining(['kari'])]);
    expect(called.card.ping).toHaveLength(people.length - 1);
    close();
  });
});

describe('a line of need that does not say what for', () => {
  it.each(linesOf(`smoke | lots of smoke | can't see | leak | tomas is down | no veo`))(
    'given "%s", then it calls nobody, and the first tap calls',
    (line) => {
      const read = readLine(line, tallerALasDiez);
      const taps = read.kind === 'misread' ? read.misread.suggestions.map((tap) => readLine(tap, tallerALasDiez)) : [];
      const called = taps.map((tap) => (tap.kind === 'command' ? tap.command.verb : tap.kind));
      expect(called.findIndex(isAlarm)).toBe(0);
      expect(called).not.toContain('mix');
    },
  );

  it.each(['112 plates in the rack', 'help yourself to cake', 'quedan 112 g en el bote', 'aire 24 48', 'aire'])(
    'given "%s", then no call is offered',
    (line) => {
      const read = readLine(line, tallerALasDiez);
      const offered =
        read.kind === 'command' ? [read.command.verb] : read.kind === 'misread' ? read.misread.suggestions : [];
      expect(offered.filter(isAlarm)).toEqual([]);
    },
  );
});

describe('a word of need that is not of the crew’s tongue', () => {
  it.each([
    ['fuego', 'fire'],
    ['humo en la cabina', 'fire'],
    ['derrame', 'spill'],
    ['mezcla 1 caliente', 'hot'],
  ])('given "%s" in an English crew, then %s is called', (line, verb) => {
    expect(readLine(line, shopAtTen)).toMatchObject({ kind: 'command', command: { verb } });
  });

  it.each([
    ['extintor de fuego revisado', ['fire']],
    ['ojo con el escalón', ['ojos']],
  ])('given "%s" in an English crew, then nobody is called, and one tap calls', (line, suggestions) => {
    expect(readLine(line, shopAtTen)).toMatchObject({ kind: 'misread', misread: { suggestions } });
  });
});
