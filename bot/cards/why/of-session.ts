// Why the figures of a spray session and of an oven load are what they are: solvent, air against fire and for breathing, the fan.

import { leastFaceVelocityOf } from '../../../core/calc/booth.ts';
import { solvents } from '../../../core/calc/solvents.ts';
import { lowestLel, vapourPerLitre } from '../../../core/calc/vapour.ts';
import { ovenAir } from '../../../core/coat/oven-air-need.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Sheet } from '../../../core/products/sheet.ts';
import type { FigureSourceId } from '../../../core/session/figure-sources.ts';
import type { Session } from '../../../core/session/session.ts';
import { clearingMinutes, dayLimitOfSolvent, solventsIn } from '../../../core/session/session-air.ts';
import { gramsSprayed, needOf } from '../../../core/session/spray-case.ts';
import { sheetFor } from '../../../core/shop.ts';
import { cubicMetres, type Grams, litres, minutesAfter } from '../../../core/units.ts';
import type { Telling } from '../card-context.ts';
import { timeShown } from '../clock-text.ts';
import type { FactId } from '../fact-ids.ts';
import { entriesOf, type FigureAsked, sheetSource, type Why, type WhyOf, why } from './why.ts';

const ofSession =
  (make: (asked: FigureAsked, session: Session) => Why | undefined): WhyOf =>
  (asked) =>
    asked.of.session === undefined ? undefined : make(asked, asked.of.session);

const batchOf = ({ shop }: Telling, { batch }: Session) => (batch === undefined ? undefined : shop.batches.get(batch));

const solventSource = (sheet: Sheet) => sheetSource(sheet, 'spray.solvents', sheet.spray?.source ?? '');

/** A line for each solvent: how much of it, and the figure that the sum takes of it. */
function solventLines(
  { words, figures }: Telling,
  sheet: Sheet,
  mixed: Grams,
  of: (id: keyof typeof solvents, share: number) => string,
): readonly string[] {
  const parts = solventsIn(sheet, mixed) ?? [];
  return (sheet.spray?.solvents ?? []).map(({ solvent, percentByMass }) => {
    const volume = parts.find(({ id }) => id === solvent)?.litres ?? litres(0);
    return `${words.names.solvent(solvent)}: ${figures.percent(percentByMass)} → ${figures.volume(volume)}${of(solvent, percentByMass)}`;
  });
}

const sprayed = ofSession(({ telling }, session) => {
  const batch = batchOf(telling, session);
  const found = gramsSprayed({ session, batch });
  if (found === undefined) return undefined;
  const read = found.assumed
    ? entriesOf(batch?.entries, 'BatchOpened', 'PartsWeighed', 'PartWeighed').slice(-1)
    : entriesOf(session.entries, 'SessionBriefed');
  return why({ is: 'reading' }, { read, assumed: found.assumed ? [telling.words.session.wholePot] : [] });
});

const solvent = ofSession(({ telling, fact }, session) => {
  const found = gramsSprayed({ session, batch: batchOf(telling, session) });
  if (found === undefined) return undefined;
  return why(solventSource(session.sheet), {
    sum: [...solventLines(telling, session.sheet, found.gramsPerHour, () => ''), `= ${fact.shown}`],
    assumed: found.assumed ? [telling.words.session.wholePot] : [],
  });
});

const lelOf =
  ({ words, figures }: Telling) =>
  (id: keyof typeof solvents): string => {
    const lel = lowestLel(solvents[id]);
    const vapour = vapourPerLitre(solvents[id]);
    if (isFailed(lel) || isFailed(vapour)) return `, ${words.why.noFigureKept}`;
    return `, ${words.why.vapourOf(cubicMetres(vapour), figures)}, LEL ${figures.percent(lel.percent, 1)}`;
  };

const against = (of: 'lel' | 'exposure'): WhyOf =>
  ofSession(({ telling, fact }, session) => {
    const { words, figures, shop } = telling;
    const settings = shop.crew.spray;
    const batch = batchOf(telling, session);
    const found = gramsSprayed({ session, batch });
    const need = needOf({ session, batch, settings });
    if (found === undefined || need === undefined) return undefined;
    const limit = (id: keyof typeof solvents): string => {
      const day = dayLimitOfSolvent(id, { law: settings.law.frame, dayLimits: settings.dayLimits });
      return day === undefined ? `, ${words.why.noFigureKept}` : `, ${figures.ppm(day.ppm)}`;
    };
    const factor =
      of === 'lel'
        ? words.why.ofLel(settings.lelShare, figures)
        : words.why.timesMixing(settings.mixingFactor, settings.mixingAssumed, figures);
    const leftOut = of === 'lel' ? need.withoutLel : need.withoutLimit;
    return why(
      { is: 'law', of },
      {
        sum: [
          ...solventLines(telling, session.sheet, found.gramsPerHour, of === 'lel' ? lelOf(telling) : limit),
          `${factor} = ${fact.shown}`,
        ],
        assumed: [
          ...(found.assumed ? [words.session.wholePot] : []),
          ...(leftOut.length === 0 ? [] : [words.session.withoutFigure(leftOut, figures)]),
          words.session.sumOnly,
        ],
      },
    );
  });

/** The load that was asked about. */
const oven =
  (which: 'solvent' | 'air'): WhyOf =>
  ({ telling, question, fact }) => {
    if (question?.ask !== 'vent' || question.asked.of !== 'oven') return undefined;
    const { words, figures, shop } = telling;
    const { grams, celsius } = question.asked;
    const sheet = sheetFor(shop);
    if (isFailed(sheet)) return undefined;
    const need = ovenAir([{ sheet, grams }], celsius);
    if (isFailed(need)) return undefined;
    const lines = solventLines(telling, sheet, grams, which === 'air' ? lelOf(telling) : () => '');
    const hot = which === 'air' ? [words.why.movedHot(celsius, figures)] : [];
    return why(which === 'air' ? { is: 'law', of: 'oven' } : solventSource(sheet), {
      sum: [...lines, `= ${fact.shown}`],
      assumed: [words.session.worstOven, ...hot, words.session.sumOnly],
    });
  };

const fan: WhyOf = ({ telling, of: { session }, question, fact }) => {
  const { figures, shop } = telling;
  const asked = question?.ask === 'vent' && question.asked.of === 'oven' ? question.asked : undefined;
  const velocity = asked === undefined ? session?.extraction?.faceMetresPerSecond : asked.faceMetresPerSecond;
  const booth = shop.crew.spray.booths.get(asked === undefined ? (session?.place ?? '') : 'oven');
  if (velocity === undefined || booth === undefined) return undefined;
  return why(
    { is: 'law', of: 'fan' },
    {
      sum: [`${figures.area(booth.faceSquareMetres)} × ${figures.speed(velocity)} = ${fact.shown}`],
      read: entriesOf(session?.entries, 'ExtractionSaid').slice(-1),
    },
  );
};

const over =
  (of: FigureSourceId): WhyOf =>
  ({ fact, of: { session } }) =>
    why({ is: 'law', of }, { sum: [`= ${fact.shown}`], read: entriesOf(session?.entries, 'ExtractionSaid').slice(-1) });

const faceLeast = ofSession(({ telling: { figures, shop } }, { place }) => {
  const face = shop.crew.spray.booths.get(place)?.faceSquareMetres;
  const least = figures.speed(leastFaceVelocityOf(face));
  return why({ is: 'law', of: 'face' }, { sum: [face === undefined ? least : `${figures.area(face)} → ${least}`] });
});

const spell = ofSession(({ telling, fact }, { spraying: [first], sheet, entries }) => {
  const { spray } = sheet;
  if (first === undefined || spray === undefined) return undefined;
  const from = timeShown(telling, { errs: 'at-most', dueAt: first.from });
  return why(sheetSource(sheet, 'spray.longestSpellMinutes', spray.source), {
    sum: [`${from} + ${telling.figures.minutesUp(spray.longestSpellMinutes)} = ${fact.shown}`],
    read: entriesOf(entries, 'SprayStarted').slice(0, 1),
  });
});

const fanUntil = ofSession(({ telling, fact }, session) => {
  const { closedAt, fanMinutes, sheet, entries } = session;
  if (closedAt === undefined || fanMinutes === undefined) return undefined;
  const { words, figures, shop } = telling;
  const sum = clearingMinutes(session, shop.crew.spray);
  const end = timeShown(telling, { errs: 'at-least', dueAt: minutesAfter(closedAt, fanMinutes) });
  const from = timeShown(telling, { errs: 'at-least', dueAt: closedAt });
  return why(sheetSource(sheet, 'spray.ventilateAfterMinutes', sheet.spray?.source ?? ''), {
    sum: [
      `${from} + ${figures.minutesUp(fanMinutes)} = ${end}`,
      ...(sum === undefined ? [] : [words.session.fanFromSum(sum, figures)]),
    ],
    read: entriesOf(entries, 'SessionClosed'),
    now: end === fact.shown ? undefined : end,
  });
});

const logged = ofSession(({ telling: { figures }, fact }, { flushes, entries }) => {
  const told = flushes.flatMap((flush) => (flush.litres === undefined ? [] : [figures.volume(flush.litres)]));
  const read = entriesOf(entries, 'GearFlushed').slice(-3);
  return why({ is: 'record' }, { sum: [`${told.join(' + ')} = ${fact.shown}`], read });
});

export const sessionWhys = {
  'sprayed-per-hour': sprayed,
  'solvent-per-hour': solvent,
  'air-for-lel': against('lel'),
  'air-for-exposure': against('exposure'),
  'fan-gives': fan,
  'fan-over-lel': over('lel'),
  'fan-over-exposure': over('exposure'),
  'fan-over-oven': over('oven'),
  'face-velocity': ofSession((_, { entries }) =>
    why({ is: 'reading' }, { read: entriesOf(entries, 'ExtractionSaid').slice(-1) }),
  ),
  'face-least': faceLeast,
  'lel-share': () => why({ is: 'law', of: 'lel' }),
  'mixing-factor': ({ telling: { words, figures, shop } }) =>
    why(
      { is: 'setting' },
      { assumed: [words.why.timesMixing(shop.crew.spray.mixingFactor, shop.crew.spray.mixingAssumed, figures)] },
    ),
  'spell-ends-at': spell,
  'fan-until': fanUntil,
  'solvent-logged': logged,
  'oven-air': oven('air'),
  'solvent-in-load': oven('solvent'),
} as const satisfies Partial<Record<FactId, WhyOf>>;
