// Who may say what, each row of the table on each front end: whoever has not the role is told who has, and nothing is
// recorded; whoever has it is heard. kari is crew, omar leads, rosa supervises (invented).

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Answer } from '../../bot/talk/answer.ts';
import type { Role } from '../../core/crew/crew-commands.ts';
import { type Deed, deeds, leastRole } from '../../core/crew/who-may.ts';
import type { Store } from '../../core/ports.ts';
import type { SettingKind } from '../../core/setting-kinds.ts';
import { settingRows } from '../../core/settings.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { demoCrew, given } from '../core/given.ts';
import { objectionCases } from '../core/objection-cases.ts';
import { sessionTalk } from './cards/session-talk.ts';
import { openWorkshop } from './slack/fake/workshop.ts';
import { openShop } from './web/shop-page.ts';
import { visitor } from './web/visitor.ts';

interface Heard {
  readonly recorded: boolean;
  readonly code: string | null | undefined;
  /** As the front end showed it. */
  readonly shown: string;
}

interface Door {
  readonly say: (who: string, line: string) => Promise<Heard>;
  readonly close: () => Promise<void> | void;
}

type Doors = Readonly<Record<string, (store: Store, minutesPastEight: number) => Promise<Door>>>;

const doors: Doors = {
  terminal: async (store, minutes) => {
    const { say, close } = sessionTalk(store, demoCrew);
    if (minutes > 0) await say(`wait ${minutes}m`).catch(() => undefined);
    return {
      say: async (who, line) => heardAs(await say(`@${who}: ${line}`)),
      close,
    };
  },
  page: async (store, minutes) => {
    const shop = await openShop({ crew: demoCrew, store });
    await shop.wait(minutes);
    return {
      say: async (who, line) => {
        const phone = visitor(shop.address);
        await phone.enter(who);
        const { body } = await phone.say(who, line);
        // More lines than hands can type would be held up.
        vi.advanceTimersByTime(60_000);
        const [last] = shop.conversation().newest(1, who);
        return { ...heardAs(last?.answer), shown: body.html ?? '' };
      },
      close: shop.stop,
    };
  },
  Slack: async (store, minutes) => {
    const people = demoCrew.people.map((person) => ({ ...person, slack: `U${person.name.toUpperCase()}` }));
    const at = new Date(Date.UTC(2026, 2, 2, 8, minutes)).toISOString();
    const crews = [{ crew: 'crew', file: { ...demoCrew, people, slackChannels: ['C1'] } }];
    let answer: Answer | undefined;
    const shop = await openWorkshop({ crews, store, at, hears: (_, heard) => (answer = heard) });
    const { fake } = shop;
    return {
      say: async (who, line) => {
        answer = undefined;
        const [posted, whispered] = [fake.inChannel('C1').length, fake.whispers.length];
        await shop.types(line, `U${who.toUpperCase()}`);
        const told = [...fake.inChannel('C1').slice(posted), ...fake.whispers.slice(whispered)];
        return { ...heardAs(answer), shown: told.map(({ text }) => text).join('\n') };
      },
      close: shop.close,
    };
  },
};

function heardAs(answer: Answer | undefined): Heard {
  return { recorded: answer?.recorded === true, code: answer?.code, shown: answer?.text ?? '' };
}

const ranks: Readonly<Record<Role, readonly { readonly name: string; readonly may: boolean }[]>> = {
  crew: [{ name: 'kari', may: true }],
  lead: [
    { name: 'kari', may: false },
    { name: 'omar', may: true },
  ],
  supervisor: [
    { name: 'kari', may: false },
    { name: 'omar', may: false },
    { name: 'rosa', may: true },
  ],
};
const whoMay: Readonly<Record<Role, string>> = { crew: '', lead: 'omar, rosa', supervisor: 'rosa' };

/** Of each kind one value. */
const typed: Readonly<Record<SettingKind, string>> = {
  ...{ sheet: 'demo-build', duration: '10min', hour: '7', hours: '22-6', switch: 'on', percent: '20%', factor: '4' },
  ...{
    rate: '4m2/h',
    'gas-flow': '5L/min',
    'last-day': '2027-01-31',
    quota: '100kg/month',
    'crew-name': 'Bay two',
    zone: 'Europe/Madrid',
    language: 'en',
  },
  ...{ units: 'metric', rings: 'direct', people: 'kari', roles: 'kari crew', booth: 'booth 4m2', scale: 'bench 0.1g' },
  ...{ emergency: 'call 112', 'place-switch': 'tank-3 off', 'job-limits': '88 dust 2' },
  ...{ law: 'eu', 'day-limit': 'toluene 20ppm' },
};

/** One for each who says it: nothing becomes of a part twice. */
const hubs = 'kari-1 omar-1 rosa-1';
const ownParts = ['08:00 part kari-1', '08:00 part omar-1', '08:00 part rosa-1'];
const coatedParts = [
  ...['06:00 air 24C 48%', '06:00 mix 2.4kg', '06:00 weigh 1 1200g 1200g'],
  ...[`06:05 coat new ${hubs} 1 brush already`, `06:20 dry ${hubs}`],
];
const curedParts = [
  ...[...coatedParts, `06:20 cure ${hubs} oven 90C already`],
  ...['06:20', '07:30'].flatMap((at) => hubs.split(' ').map((hub) => `${at} temp ${hub} 90C`)),
  ...[`07:30 out ${hubs}`, `07:40 hold ${hubs} runs`],
];

/** What is no setting, and what must have been said before; a star stands for whoever says it. */
const said: Readonly<Record<string, { readonly line: string; readonly given?: readonly string[] }>> = {
  fit: { line: 'fit kari 2026-05-01' },
  medical: { line: 'medical kari 2026-09-30' },
  training: { line: 'training kari 2027-01-31' },
  assess: { line: 'assess demo-clear in booth without-supplied-air until 2027-01-31' },
  check: { line: 'check 1', given: ['08:00 open A lot 7731 5kg gas', '08:40 blanket 1'] },
  judge: { line: 'judge 1', given: ['08:00 air 24C 48%', '08:00 mix 2.4kg'] },
  backup: { line: 'backup friday.sqlite' },
  'alarm-over': { line: 'all clear', given: ['08:00 @kari: fire in the booth'] },
  drill: { line: 'start drill fire' },
  'first-shift-done': { line: 'first shift done kari', given: ['08:00 @kari: first shift'] },
  scrap: { line: 'scrap *-1 cracked', given: ownParts },
  recall: { line: 'recall lot 7731 gels' },
  'recall-over': { line: 'recall-over lot 7731 cleared', given: ['08:00 @rosa: recall lot 7731 gels'] },
  return: { line: 'return *-1 customer wrong alloy', given: ownParts },
  rework: { line: 'rework *-1 runs', given: coatedParts },
  concession: { line: 'concession *-1 person Park document QA-118 dated 2026-03-01', given: curedParts },
};

function lineOf(deed: Deed, by: string): string {
  if ('say' in deed) return said[deed.say]?.line.replace('*', by) ?? expect.fail(`say what "${deed.say}" is like`);
  const { kind } = settingRows[deed.set];
  return `set ${deed.set} ${deed.off === true ? 'off' : typed[kind]}`;
}

beforeEach(() => void vi.useFakeTimers({ toFake: ['performance'] }));
afterEach(() => void vi.useRealTimers());

describe.each(Object.entries(doors))('on the front end %s', (_, open) => {
  const settings = deeds.filter((deed) => 'set' in deed);

  test('every setting is set by whom its row says, and anybody else is told by whom', async () => {
    const door = await open(openSqliteStore(':memory:'), 0);
    const refusedFirst = [false, true];
    for (const may of refusedFirst) {
      for (const deed of settings) {
        const role = leastRole(deed);
        for (const { name } of ranks[role].filter((person) => person.may === may)) {
          const heard = await door.say(name, lineOf(deed, name));
          expect([lineOf(deed, name), name, heard.recorded]).toEqual([lineOf(deed, name), name, may]);
          if (!may) expect(heard.shown).toContain(whoMay[role]);
        }
      }
    }
    await door.close();
  });

  test.each(deeds.filter((deed) => 'say' in deed))('$say is said by whom its row says', async (deed) => {
    const store = openSqliteStore(':memory:');
    await given(said[deed.say]?.given ?? [], { store });
    const door = await open(store, 41);
    const role = leastRole(deed);
    for (const { name, may } of ranks[role]) {
      const { recorded, code, shown } = await door.say(name, lineOf(deed, name));
      // A question records nothing, whoever asks it.
      if (deed.say !== 'backup') expect([name, recorded]).toEqual([name, may]);
      if (may) expect([name, code]).not.toEqual([name, 'may-not-settle']);
      // Whose act it was stands with it: the only one who may is named by that too.
      const isOwnName = may && whoMay[role] === name;
      expect([name, isOwnName || shown.includes(whoMay[role])]).toEqual([name, isOwnName || !may]);
    }
    await door.close();
  });

  const liftable = objectionCases.filter(([, { liftedBy }]) => liftedBy !== 'nobody');

  test.each(liftable)('%s is lifted by whom its row says', async (_, { given: before, at, act, liftedBy }) => {
    if (liftedBy === 'nobody') return;
    const store = openSqliteStore(':memory:');
    const shift = await given(before, { store });
    const [now, opened] = [shift.time(at), shift.time('Mon 08:00')];
    const door = await open(store, (now - opened) / 60_000);
    for (const { name, may } of ranks[liftedBy]) {
      const { recorded, shown } = await door.say(name, `${act} permit agreed with the customer`);
      expect([name, recorded]).toEqual([name, may]);
      if (!may) expect(shown).toContain(whoMay[liftedBy]);
    }
    await door.close();
  });
});
