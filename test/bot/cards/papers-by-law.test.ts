// What is printed of how long to keep records and of what the ledger counts, by the law of the crew's country.

import { expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew } from './session-talk.ts';

async function told(zone: string, language: string, line: string) {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const talk = sessionTalk(':memory:', { ...sprayCrew, zone, language, people });
  onTestFinished(talk.close);
  return (await talk.say(line)).text;
}

it.each([
  ['America/Chicago', 'en', 'keep', 'Exposure records of people: 30 years (29 CFR 1910.1020(d)(1)(ii))'],
  [
    'Europe/Madrid',
    'en',
    'keep',
    'Exposure records of people: 40 years (Directive 2004/37/EC, of carcinogens, from memory)',
  ],
  ['Europe/London', 'en', 'keep', 'Exposure records of people: 40 years (COSHH 2002, from memory)'],
  ['Europe/Madrid', 'en', 'keep', '(USA: 40 CFR 63.3931)'],
  ['Europe/Madrid', 'es', 'conservar', '(Directiva 2004/37/CE, de carcinógenos, de memoria)'],
  ['Europe/Madrid', 'es', 'conservar', '(EE. UU.: 40 CFR 63.3931)'],
  [
    'Europe/Madrid',
    'en',
    'voc',
    'the solvents that the USA exempts (40 CFR 51.100(s)), acetone among them: ask whether they count here',
  ],
  ['Europe/Madrid', 'es', 'cov', 'pregunte si aquí cuentan'],
  ['America/Chicago', 'en', 'voc', 'exempt solvents by 40 CFR 51.100(s). A state may exempt fewer.'],
])('given a crew in %s that reads %s and says %s, then "%s"', async (...of) => {
  const [zone, language, line, said] = of;
  expect(await told(zone, language, line)).toContain(said);
});
