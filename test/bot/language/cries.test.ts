// A cry calls at once, wherever its word stands in the line; a line that only holds the word calls nobody and is asked about,
// with a tap that says what it does. Lines are invented: common practice and our own choice, no source.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { demoCrew } from '../../core/given.ts';
import { sessionTalk } from '../cards/session-talk.ts';
import { shopAtTen } from './shop-at-ten.ts';

const cries: Readonly<Record<string, string>> = {
  fire: `FIRE | fire!! | fire in the booth | fire by the skip | help fire | HELP! FIRE | oh no fire | there's a fire in the oven |
    the booth is on fire | something is burning in booth | big flames | acetone fire | stop! fire in the booth |
    fire in booth need extinguisher | this is not a drill fire in the booth | fuego | ¡fuego junto a la cabina! |
    humo en la cabina | hay fuego en la cabina | hay lumbre | hay lumbre en la cabina | arde el horno | se quema la cabina | ayuda fuego`,
  eyes: `eyes | EYES!! | got some in my eye | acetone in my eyes | my eyes are burning | eyes kari | eyes in booth | ojos |
    me entró en el ojo | acetona en los ojos | me arden los ojos | se cayó en los ojos`,
  down: `down | kari is down | kari's down | jens is down | down kari | man down in booth | somebody is down | omar collapsed |
    help, kari is down | person down by the dip tank | kari fell down | caído | kari está caída | cayó kari en la cabina |
    se desmayó jens | kari inconsciente`,
  spill: `spill | SPILL!! | spill in the booth | acetone spill | big spill | spilled acetone on the floor | spill of hardener |
    spill 5l acetone | derrame | derrame de acetona | se derramó acetona | fuga de disolvente | vertido en el suelo |
    vertido acetona | vertido de tolueno en el suelo | ayuda, vertido de disolvente | se derramó el catalizador | se me cayó el thinner | se me cayó la pintura |
    se cayó el disolvente`,
  hot: `hot | hot pot | hot pot 1 | hot pot by the oven | hot pot in booth 2 | pot 2 is hot | the pot is getting hot | mezcla caliente | se calienta la mezcla |
    se está calentando la mezcla`,
};

const calm = `fire extinguisher checked | fire drill at 10 | no fire | no fire in the booth | fire door was propped open | in case of
  fire use the stairs | is there a fire drill today | small flames on the old heater are normal | hot day | it's hot today | hot in
  here | the oven is hot, ready for the load | smoke break | coffee spill cleaned up | spill kit restocked | spilled my tea | no spill
  | eye wash tested | keep an eye on the pot | eyes on the scale please | down to 20C overnight | printer is down | fan is down for
  service | kari was down with a cold | nobody is down | simulacro de fuego a las diez | no hay fuego | ojo con la manguera |
  no me duelen los ojos | agua caliente otra vez | derrame de café limpiado | la impresora está caída | caída de tensión ayer |
  estoy calentando la mezcla | kari está calentando la mezcla | se está calentando el horno | vertido disolvente en el bidón |
  vertido de pintura vieja al bidón correcto | se me cayó la brocha | cayó el nitrógeno |
  vertido de resina | vertido pintura | se cayó el gas | se cayó la pintura de la pieza | se cayó la pintura`;

const linesOf = (text: string): readonly string[] => text.split('|').map((line) => line.trim().replace(/\s+/g, ' '));

describe('a cry', () => {
  it.each(Object.entries(cries).flatMap(([verb, lines]) => linesOf(lines).map((line) => [line, verb] as const)))(
    'given "%s", then it calls at once',
    (line, verb) => {
      const read = readLine(line, shopAtTen);
      expect(read.kind === 'command' ? read.command.verb : read.kind).toBe(verb);
    },
  );

  it.each(['jo vale is down', 'Jo Vale went down', 'man down, jo vale', 'fire jo vale', "jo's down"])(
    'given somebody of two names, and "%s", then it calls at once',
    (line) => {
      const read = readLine(line, { ...shopAtTen, people: ['kari', 'Jo Vale'] });
      expect(read.kind === 'command' ? read.command.verb : read.kind).toBe(line.startsWith('fire') ? 'fire' : 'down');
    },
  );

  it('given a word that asks about it, then it is explained and calls nobody', () => {
    expect(readLine('fire?', shopAtTen)).toMatchObject({ kind: 'question', question: { ask: 'help', verb: 'fire' } });
  });
});

describe('a line that only holds the word', () => {
  it.each(linesOf(calm))('given "%s", then it calls nobody', (line) => {
    expect(readLine(line, shopAtTen).kind).toBe('misread');
  });

  it('given one, then a tap says what it does, and only the tap calls', async () => {
    const { say } = sessionTalk();
    const asked = await say('@kari: fire extinguisher checked');
    expect([asked.code, asked.recorded, asked.to]).toEqual(['no-cry', false, ['kari']]);
    expect(asked.card.lines[0]).toBe('This speaks of "fire" and does not call for help, so nobody is called.');
    expect(asked.card.actions).toEqual([{ id: 'meant-1', label: 'Call for help: Fire', line: 'fire' }]);
    const called = await say(`@kari: ${asked.card.actions[0]?.line}`);
    expect([called.recorded, called.to]).toEqual([true, ['kari', 'omar', 'rosa']]);
  });
});

const asking = `socorro | ¡auxilio! | emergencia | alarma | accidente | accidente en la cabina | 112 | me quemé |
  me he quemado la mano | kari está herido | se quemó Chuy | emergency | 911 | mayday mayday | accident in the booth |
  i burned my hand | kari is hurt | help me | ayuda por favor | ayúdenme | llamen a una ambulancia | kari no respira`;

const notAsking = `112 plates in the rack | 112 placas en el bastidor | emergency exit is clear | emergency stop tested |
  luces de emergencia probadas | burned 3 parts | se quemó el fusible | accident last week | kari se quemó ayer |
  ayuda | help | ayuda pesar | help mix | salida de emergencia libre`;

describe('a line that asks for help and does not say what has happened', () => {
  it.each(linesOf(asking))(
    'given "%s", then all that can be cried is one tap away, and nobody is called yet',
    (line) => {
      const read = readLine(line, shopAtTen);
      expect(read.kind === 'misread' ? read.misread.code : read.kind).toBe('which-cry');
      const offered = read.kind === 'misread' ? read.misread.suggestions : [];
      expect(offered.map((each) => readLine(each, shopAtTen))).toEqual(
        ['eyes', 'spill', 'fire', 'down', 'hot'].map((verb) => expect.objectContaining({ command: { verb } })),
      );
    },
  );

  it.each(linesOf(notAsking))('given "%s", then it is no such line', (line) => {
    expect(readLine(line, shopAtTen)).not.toMatchObject({ misread: { code: 'which-cry' } });
  });

  it('given the shop has its number, then it stands first, and each tap says whom it calls for', async () => {
    const people = demoCrew.people.map((person) => ({ ...person, language: 'es' }));
    const { say, close } = sessionTalk(':memory:', { ...demoCrew, people });
    await say('@rosa: fijar emergencia teléfono 112 y puerta 3');
    const asked = await say('@kari: socorro');
    expect([asked.code, asked.recorded, asked.to]).toEqual(['which-cry', false, ['kari']]);
    expect(asked.card.lines.slice(0, 2)).toEqual([
      'Llamar: 112 y puerta 3',
      '¿Qué ha pasado? Todavía no se ha avisado a nadie: pulse qué es y se avisa.',
    ]);
    expect(asked.card.actions.map(({ label, line }) => [label, line])).toEqual([
      ['Pedir ayuda: Salpicadura en los ojos', 'ojos'],
      ['Pedir ayuda: Derrame', 'derrame'],
      ['Pedir ayuda: Fuego', 'fuego'],
      ['Pedir ayuda: Persona caída', 'caído'],
      ['Pedir ayuda: Una mezcla se calienta', 'caliente'],
    ]);
    const called = await say('@kari: tap meant-4');
    expect([called.recorded, called.to]).toEqual([true, ['kari', 'omar', 'rosa']]);
    close();
  });
});
