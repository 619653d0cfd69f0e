// What is wrong with each coat, worked out a second time and in another way, from the bare rows of the record: pot life
// by walking the readings, thickening, and the sheet's word on a second coat.

import type { Envelope, Fact, FactOf } from '../../core/history.ts';
import type { ObjectionCode } from '../../core/objections.ts';

interface Standing {
  readonly seq: number;
  readonly stream: string;
  readonly at: number;
  readonly fact: Fact;
}

export interface CoatFaults {
  readonly seq: number;
  readonly codes: ReadonlySet<ObjectionCode>;
  /** In the very millisecond in which the pot dies: the record counts it as past, this reckoning as not yet. */
  readonly onTheEdge: boolean;
}

/** The codes that this file judges. */
export const judged: readonly ObjectionCode[] = [
  'past-pot-life',
  'past-pot-life-at-worst',
  'pot-dead',
  'recoat-forbidden',
  'recoat-too-early',
  'recoat-too-late',
];

export function coatFaults(envelopes: readonly Envelope[], airLimitMinutes: number): readonly CoatFaults[] {
  const facts = standing(envelopes);
  const before = (one: Standing, other: Standing) => one.at < other.at || (one.at === other.at && one.seq < other.seq);
  return facts.flatMap((coat): readonly CoatFaults[] => {
    if (coat.fact.type !== 'CoatApplied') return [];
    const stream = `batch/${coat.fact.batch}`;
    const ofBatch = facts.filter((fact) => fact.stream === stream);
    const opened = ofBatch.map(({ fact }) => fact).find((fact) => fact.type === 'BatchOpened');
    if (opened === undefined) return [];
    const codes = new Set<ObjectionCode>();
    const poured = ofBatch.filter((one) => before(one, coat)).sort((a, b) => (before(a, b) ? -1 : 1));
    const contact = Math.max(firstOf(poured, 'part-a'), firstOf(poured, 'part-b'));
    const share = shareByMass(opened.sheet, massIn(poured));
    const ends = (readings: readonly Read[]) =>
      potEnd(opened.sheet, contact, readings, airLimitMinutes * 60_000, share);
    const died = ends(readIn(facts));
    const worst = ends(asWarmAsNext(opened.sheet, readIn(facts)));
    if (Number.isFinite(contact) && died <= coat.at) codes.add('past-pot-life');
    else if (Number.isFinite(contact) && worst <= coat.at && worst + 60_000 < died) codes.add('past-pot-life-at-worst');
    const opens = coat.fact.batch;
    const ruins = ({ fact }: Standing) =>
      fact.type === 'AlarmRaised'
        ? fact.batch === opens
        : fact.type === 'MixThickened' && ofBatch.some((one) => one.fact === fact);
    if (facts.some((one) => ruins(one) && before(one, coat))) codes.add('pot-dead');
    const earlier = facts.filter(
      (one) => one.fact.type === 'CoatApplied' && one.stream === coat.stream && before(one, coat),
    );
    const inOrder = earlier.toSorted((one, other) => one.at - other.at || one.seq - other.seq);
    const last = inOrder.at(-1)?.at;
    // Its passes go back to the last that began a coat.
    const began = inOrder.findLast(({ fact }, i) => i === 0 || !isPass(fact))?.at;
    if (last !== undefined && began !== undefined && !isPass(coat.fact)) {
      const { recoat } = opened.sheet;
      if (recoat.rule === 'forbidden') codes.add('recoat-forbidden');
      else if ((coat.at - last) / 60_000 < recoat.opensMinutes) codes.add('recoat-too-early');
      else if ((coat.at - began) / 60_000 > recoat.closesMinutes) codes.add('recoat-too-late');
    }
    return [
      {
        seq: coat.seq,
        codes,
        onTheEdge: [died - coat.at, worst - coat.at, died - worst - 60_000].some((by) => Math.abs(by - 0.5) < 1.01),
      },
    ];
  });
}

/** Another pass of the coat before it. */
const isPass = (fact: Fact): boolean => fact.type === 'CoatApplied' && fact.pass !== undefined;

function standing(envelopes: readonly Envelope[]): readonly Standing[] {
  const facts = new Map<number, Standing>();
  for (const { seq, stream, happenedAt, body } of envelopes) {
    if (body.type !== 'Amended') facts.set(seq, { seq, stream, at: happenedAt, fact: body });
    else if (body.to.kind === 'undone') facts.delete(body.amends);
    else facts.set(body.amends, { seq: body.amends, stream, at: body.to.happenedAt, fact: body.to.fact });
  }
  return [...facts.values()];
}

/** When the first of a part went in; never, if it did not. */
function firstOf(facts: readonly Standing[], component: 'part-a' | 'part-b'): number {
  const found = facts.find(
    ({ fact }) =>
      fact.type === 'PartsWeighed' ||
      ((fact.type === 'PartWeighed' || fact.type === 'PartAdded') && fact.component === component),
  );
  return found?.at ?? Number.POSITIVE_INFINITY;
}

/** What is in the pot: a weighing of both says it anew, one of a part adds to it. */
function massIn(facts: readonly Standing[]): number {
  return facts.reduce((mass, { fact }) => {
    if (fact.type === 'PartsWeighed') return fact.partAGrams + fact.partBGrams;
    return fact.type === 'PartWeighed' || fact.type === 'PartAdded' ? mass + fact.grams : mass;
  }, 0);
}

/** The invented shortening of the build: whole up to 10 kg, six tenths from 30 kg on. */
function shareByMass({ id }: FactOf<'BatchOpened'>['sheet'], mass: number): number {
  return id === 'own-build' ? 1 - 0.4 * Math.min(1, Math.max(0, (mass - 10_000) / 20_000)) : 1;
}

interface Read {
  readonly at: number;
  readonly celsius: number;
}

function readIn(facts: readonly Standing[]): readonly Read[] {
  return facts
    .flatMap(({ at, seq, stream, fact }) =>
      fact.type === 'AirRead' && stream === 'place/room' && fact.celsius !== undefined
        ? [{ at, seq, celsius: Number(fact.celsius) }]
        : [],
    )
    .sort((a, b) => a.at - b.at || a.seq - b.seq);
}

/** At worst it was as warm as it was read next, since the reading before. */
function asWarmAsNext(sheet: FactOf<'BatchOpened'>['sheet'], readings: readonly Read[]): readonly Read[] {
  return readings.map((reading) => {
    const laterAt = readings.find(({ at }) => at > reading.at)?.at;
    const next = readings.findLast(({ at }) => at === laterAt);
    if (next === undefined || next.celsius <= reading.celsius) return reading;
    const isQuicker = potMinutes(sheet, next.celsius) < potMinutes(sheet, reading.celsius);
    return isQuicker ? { at: reading.at, celsius: next.celsius } : reading;
  });
}

/** Minute after minute of the pot's life, from reading to reading. */
function potEnd(
  sheet: FactOf<'BatchOpened'>['sheet'],
  contact: number,
  readings: readonly Read[],
  limitMs: number,
  share: number,
): number {
  const turns = [contact, ...readings.flatMap(({ at }) => [at, at + limitMs])]
    .filter((at) => at >= contact)
    .sort((a, b) => a - b);
  let left = 1;
  for (const [i, from] of turns.entries()) {
    const to = turns[i + 1] ?? Number.POSITIVE_INFINITY;
    const reading = readings.filter(({ at }) => at <= from).at(-1);
    const known = reading !== undefined && from < reading.at + limitMs ? reading.celsius : undefined;
    const wholeMs = potMinutes(sheet, known) * share * 60_000;
    if ((to - from) / wholeMs >= left) return from + left * wholeMs;
    left -= (to - from) / wholeMs;
  }
  return Number.POSITIVE_INFINITY;
}

/** The two invented sheets' pot lives; without a figure, the fastest. */
function potMinutes({ id }: FactOf<'BatchOpened'>['sheet'], celsius: number | undefined): number {
  if (id === 'own-build') {
    if (celsius === undefined || celsius < 10 || celsius > 40) return 240 / 2 ** 2;
    return 240 / 2 ** ((celsius - 20) / 10);
  }
  if (celsius === undefined || celsius < 15 || celsius > 30) return 200;
  if (celsius <= 20) return 480 - (celsius - 15) * 24;
  if (celsius <= 25) return 360 - (celsius - 20) * 18;
  return 270 - (celsius - 25) * 14;
}
