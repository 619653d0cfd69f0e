// The strict line that a question comes to: what it asks, of what it names.

import type { StateQuestion, Verb } from '../../../core/commands.ts';
import type { Topic } from '../../../core/verbs/topics.ts';
import type { AskedKind, QuestionsTyped } from '../tongues/questions-typed.ts';
import { canI, type Said } from './said-in.ts';

export const stateLine = (ask: StateQuestion['ask'], said: Said): string =>
  jobLine(said) ?? [ask, ...ofWhat(said), ...(said.act === undefined ? [] : [said.act])].join(' ');

/** Of a job its parts are told, whatever is asked. */
const jobLine = ({ things }: Said): string | undefined => {
  const job = things.find((thing) => thing.startsWith('job '));
  return job && `find ${job}`;
};

/** A place only where nothing in it is named. */
const ofWhat = ({ things, places }: Said): readonly string[] => (things.length > 0 ? things : places);

/** Where nobody is asked of: who is there. */
const ofPeople: readonly (Verb | undefined)[] = ['spray-on', 'brief', 'shift', 'supplied'];

export function lineOf(asks: AskedKind, asked: string, said: Said, typed: QuestionsTyped): string | undefined {
  const { things, places, act } = said;
  const of = ofWhat(said);
  const lot = things.find((thing) => thing.startsWith('lot '));
  if (lot !== undefined) return `trace ${lot}`;
  const ofJob = jobLine(said);
  if (ofJob !== undefined) return ofJob;
  switch (asks) {
    case 'can-i':
      if (act === undefined && places.length > 0) return `where-is ${places.join(' ')}`;
      // `when can I stop the stirrer`: by the clock of what is stirred.
      if (act === 'stop') return ['how-long', ...(things.length > 0 ? things : said.stirring)].join(' ');
      // `is it too damp in here to start`: the pot first, then the parts.
      if ((act === undefined || act === 'air' || act === 'coat') && of.length === 0 && typed.unfitAir.test(asked))
        return `can-i ${said.isPotMixed ? 'coat' : 'mix'}`;
      // `se puede ya`
      return (
        canI(said) ?? (things.length > 0 || asked.split(' ').length < 4 ? ['to-do', ...things].join(' ') : undefined)
      );
    case 'trace':
      return said.traced === undefined ? undefined : `trace ${said.traced}`;
    case 'went-wrong':
      return things.length > 0 ? `how-long ${things.join(' ')}` : asks;
    case 'what-late':
    case 'at-risk':
    case 'day':
    case 'mask':
      return asks;
    case 'how-much': {
      // `mixing 1 kg now, how much A and B`: of a whole, what goes in of each.
      const isOfWhole = said.component !== undefined && said.figures.length === 1 && things.length === 0;
      return isOfWhole ? topicLine('ratio', asked, said, typed) : howMuch(asked, said);
    }
    case 'traveller':
    case 'card':
      return said.traced === undefined ? undefined : `${asks} ${said.traced}`;
    case 'what-now':
      return of.length > 0 ? ['to-do', ...of].join(' ') : 'next-step';
    case 'where-is':
    case 'how-hot':
    case 'to-do':
      return [asks, ...of].join(' ');
    case 'who-did':
      return ofPeople.includes(act) ? [asks, ...of].join(' ') : stateLine(asks, said);
    case 'how-long':
      // `cuánto para 3 piezas de 0.4 m2`
      if (areaSaid.test(asked)) return howMuch(asked, said);
      // How old the reading is tells whether it still serves.
      if (act === 'air' || act === 'surface') return ['how-hot', ...of].join(' ');
      // `when does the mix die`
      if (act === 'mix') return [asks, ...of].join(' ');
      // `how long are they still in the oven`
      if ((act === 'cure' || act === 'out') && things.length === 0 && said.curing.length > 0)
        return [asks, ...said.curing].join(' ');
      // `is everybody fine`: of nothing that stands here.
      return of.length === 0 && act === undefined && !typed.ofAll.test(asked) ? undefined : stateLine(asks, said);
    default:
      return topicLine(asks, asked, said, typed);
  }
}

export function topicLine(topic: Topic, asked: string, said: Said, typed: QuestionsTyped): string {
  const ofJob = topic === 'lacking' ? jobLine(said) : undefined;
  if (ofJob !== undefined) return ofJob;
  const [serial] = said.things.filter((thing) => /^\d{4,}$/.test(thing));
  if (topic === 'details' && serial !== undefined) return `find ${serial}`;
  const things = said.things
    // `how long does it cure at 90`: no part of the shop.
    .filter((thing) => !(topic.startsWith('sheet-') && /^\d+$/.test(thing)) && !thing.startsWith('job '))
    .map((thing) => (thing.startsWith('lot ') ? `"${thing}"` : thing));
  if (topic === 'enough') return ['how-stands', topic, ...partsCounted(asked, things, typed)].join(' ');
  const component = said.component === undefined || topic === 'ratio' ? [] : [said.component];
  if (topic !== 'ratio') return ['how-stands', topic, ...component, ...things].join(' ');
  const [, amount, unit = 'g', of] = typed.given.exec(asked) ?? [];
  if (amount === undefined || of === undefined) {
    // `if I make 3 kilos how much A goes in`: of the whole mix.
    const [whole] = said.figures;
    return ['how-stands', topic, ...(whole === undefined ? things : [whole])].join(' ');
  }
  return `how-stands ratio ${of} ${amount}${unitNamed(unit)}`;
}

/** `3 piezas más`, whose number names nothing. */
const counts = /(?<![\d.,-])(\d{1,3})(?![\d.,]|-)/;

/** `1 to 6` are six; several numbers are as many parts; one is how many. */
function partsCounted(asked: string, things: readonly string[], { stretch }: QuestionsTyped): readonly string[] {
  const [, from, to] = stretch.exec(asked) ?? [];
  if (from !== undefined && to !== undefined && Number(to) > Number(from)) return [`${Number(to) - Number(from) + 1}`];
  const [, counted] = counts.exec(asked) ?? [];
  const numbers = things.filter((thing) => /^\d+$/.test(thing));
  if (numbers.length === 0 && counted !== undefined) return [counted, ...things];
  return numbers.length > 1 ? [`${numbers.length}`] : things;
}

/** `gramos`, `pounds`. */
const unitNamed = (unit: string): string => ({ k: 'kg', p: 'lb', l: 'lb', o: 'oz' })[unit[0] ?? ''] ?? 'g';

export const standingLine = (said: Said): string =>
  jobLine(said) ?? ['how-stands', 'standing', ...ofWhat(said)].join(' ');

const areaSaid =
  /(?:(?<![.,\d])(\d+)(?![.,]?\d)\D{1,24}?)?(?<![.,\d])(\d+(?:[.,]\d+)?) ?((?:m|ft)\^?2|sqm|sqft)(?!\w)/i;

/** `3 parts of 0.4 m2`: how much is to be mixed. `a`, `b`: which part of the product. */
function howMuch(asked: string, { things, named, acts, component, method }: Said): string {
  const [area, count = '1', each = '', unit = ''] = areaSaid.exec(asked) ?? [];
  // `how much for the three brackets, brushed`, `cuánta mezcla para la 7 y la 8`: the mix is what is asked for, and no pot.
  const parts = things.filter((_, i) => named[i] === 'part' || (named[i] === 'number' && named.includes('batch')));
  const wanted = area !== undefined ? `${count}x${each}${unit}` : parts.length > 0 ? parts.join(' ') : undefined;
  if (wanted !== undefined) return method === undefined ? `how-much ${wanted}` : `plan ${wanted} ${method}`;
  if (component !== undefined) return `how-much ${component}`;
  return acts.includes('mix') && things.length === 0 ? 'how-much' : ['how-much', ...things].join(' ');
}
