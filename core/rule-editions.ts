// Editions of the rules. An act is judged by the rules of its own day: each event carries the edition that judged it, each
// rule says since which edition it holds, and an older act is never asked about by a newer rule. So nothing is reopened,
// held, rung or marked because the program was renewed.

/**
 * 1: the rules up to the end of November 2026. 2: since then, nothing is added beyond the sheet's most, and air
 * whose dew point cannot be summed counts as not read. 3: a step of the
 * maker's paper that the crew has said it lacks objects, and the stir in a can
 * counts only until its lid goes on or it is poured from. 4: the rest of the
 * maker's paper, from the can's every opening to what the part bears in an
 * oven. 5: limits of a surface and of a filter, proof of a cure between
 * readings, and what is not known never passes where it can hurt somebody. 6: a
 * reading that cannot be is asked about, and what a pot or a can gives off,
 * weighs or outgrows objects; an alarm holds pots and cans too. 7: coats of
 * every method in a confined place, and warm liquids, are asked about, and a gas
 * monitor that is not known to be in check opens no place. 8: a release waits
 * for what the job of the part asks for. 9: a hold has an owner who hears of it
 * every morning, and what becomes of its part is a decision. 10: a release waits
 * for the rest of a dry film that is told spot by spot, and of a lot that is
 * called back nothing more is opened, poured or put on. 11: what was read with an
 * instrument whose check is overdue is marked, and what rests on one that failed is held; what a job asks
 * of the steel is asked once more before a release, of what nobody measured
 * too. A later rule raises the last number and names it in its `since`.
 */
export const editions = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] as const;
export type Edition = (typeof editions)[number];

/** By which an act is judged now. */
export const editionOfToday: Edition = 11;

/** Whether a rule holds for an act judged by `edition`. */
export function holdsIn(rule: { readonly since?: Edition }, edition: Edition): boolean {
  return (rule.since ?? 1) <= edition;
}
