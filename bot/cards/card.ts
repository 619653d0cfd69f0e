// What to tell, for any front end: title, figures, sentences, hazards, what can be tapped, what rings next. A front end
// renders it its own way and loses nothing.

import type { SlotName } from '../../core/commands.ts';
import type { PersonName } from '../../core/ids.ts';
import type { FactId } from './fact-ids.ts';

export type Tone = 'plain' | 'good' | 'warn' | 'stop';

export interface CardFact {
  /** Of what was noted with an act: its slot. */
  readonly id: FactId | SlotName;
  readonly label: string;
  /** Unrounded, in the base unit; a time is ISO 8601 with its offset. */
  readonly value: number | string;
  readonly unit: string;
  /** As people read it: rounded to the cautious side, in their units. */
  readonly shown: string;
}

export interface CardAction {
  readonly id: string;
  readonly label: string;
  /** What the tap says, as if typed. `{part-a}` stands for a field that is to be filled in first. */
  readonly line: string;
  /** The same as its reader would type it, where that is other. */
  readonly shown?: string;
  /** What may be typed alone in its place, as the readers spell it. */
  readonly bare?: readonly string[];
  /** The question on the card that it answers. */
  readonly asks?: string;
}

export interface CardField {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
}

export interface Card {
  readonly title: string;
  readonly tone: Tone;
  readonly facts: readonly CardFact[];
  readonly lines: readonly string[];
  /** What comes next, or what must not be done meanwhile: its last line. */
  readonly leads?: string;
  /** The same in full, for whoever is led through it. */
  readonly leadsOn?: readonly string[];
  readonly hazards: readonly { readonly text: string; readonly source: string }[];
  readonly actions: readonly CardAction[];
  readonly fields: readonly CardField[];
  /** A line that lacks one thing, with a field for it: that alone, typed, is the answer. */
  readonly asksFor?: string;
  readonly next: readonly { readonly key: string; readonly dueAt: string }[];
  readonly image: string | null;
  /** A paper or export that was written, by its name in the paper tray: each front end hands it out its own way. */
  readonly paper?: string;
  /** Asks for that paper once more, where it did not arrive. */
  readonly paperAgain?: CardAction;
  /** What lies elsewhere on the net, by https. */
  readonly links?: readonly { readonly label: string; readonly address: string }[];
  /** A copy of the whole record, as it was named. It stays on the machine: only who sits there is told where. */
  readonly copy?: string;
  /** Whom it calls: a front end that can reach them does, and says who was reached; the card itself never does. */
  readonly ping: readonly PersonName[];
  /** Somebody may be hurt: whom it calls is called every way there is. */
  readonly alarm?: true;
}

export function makeCard(title: string, tone: Tone, content: Partial<Omit<Card, 'title' | 'tone'>> = {}): Card {
  return {
    title,
    tone,
    facts: [],
    lines: [],
    hazards: [],
    actions: [],
    fields: [],
    next: [],
    image: null,
    ping: [],
    ...content,
  };
}

/** Of a card's `paper` the file's own name, as people see it. */
export function fileNameOf(paper: string): string {
  return paper.slice(paper.indexOf('/') + 1);
}

/** A maker's paper is opened to be read; what the shop writes of its own is kept. */
export const isRead = (paper: string): boolean => paper.startsWith('makers-papers/');

/** As they stand in plain text. */
export const linkLines = ({ links = [] }: Card): readonly string[] =>
  links.map(({ label, address }) => `${label}: ${address}`);

/** What it ends with, where it leads on. */
export const leadLines = ({ leads, leadsOn = [] }: Pick<Card, 'leads' | 'leadsOn'>): readonly string[] =>
  leads === undefined ? [] : [leads, ...leadsOn];

/** The whole card as plain text: nothing is lost but the taps' ids. */
export function cardText(card: Card): string {
  return [
    card.title,
    ...card.facts.map((fact) => `  ${fact.label}: ${fact.shown}`),
    ...card.lines.map((line) => `  ${line}`),
    ...linkLines(card).map((line) => `  ${line}`),
    ...card.hazards.map((hazard) => `  ! ${hazard.text} (${hazard.source})`),
    ...leadLines(card).map((line) => `  ${line}`),
    ...card.actions.map((action) => `  > ${action.label}: ${action.shown ?? action.line}`),
  ].join('\n');
}
