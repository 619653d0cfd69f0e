// A tap: one button that says its line, or a small form where the line has fields to be filled in first. Works without
// script; with it, the same forms are sent in the background.

import { html } from 'hono/html';
import type { Card, CardAction } from '../../cards/card.ts';
import { inUnitsOf } from '../../cards/card-context.ts';
import { fieldsIn, type TapField } from '../../cards/tap-fields.ts';
import type { Html, Viewer } from './viewer.ts';

/** `place`: where on the page, so that no two forms share an id. `lastAct`: on what its tile shows. */
export function tapHtml(action: CardAction, place: string, viewer: Viewer, lastAct?: number): Html {
  const line = inUnitsOf(action.line, viewer.units);
  const fields = fieldsIn(line, viewer.words);
  if (fields.length === 0) {
    return html`<form class="tap" method="post" action="/say" data-say>${hidden(action, place, viewer, lastAct)}<button data-tap="${action.id}">${action.label}</button></form>`;
  }
  const id = place.replaceAll(/[^\w-]/g, '-');
  return html`<details class="ask" id="ask-${id}"><summary data-tap="${action.id}">${action.label}</summary>
<form method="post" action="/say" data-say>${hidden(action, place, viewer, lastAct)}
<div class="fields">${fields.map((field) => fieldHtml(field, id))}</div>
<button data-send="${action.id}">${bare(action.label)}</button></form></details>`;
}

/** Already open: for the first tap of a card that waits for figures, with what the card wants of each beside it. */
export function openTapHtml(action: CardAction, place: string, viewer: Viewer, card: Card): Html {
  const line = inUnitsOf(action.line, viewer.units);
  const fields = fieldsIn(line, viewer.words);
  if (fields.length === 0) return tapHtml(action, place, viewer);
  const id = place.replaceAll(/[^\w-]/g, '-');
  return html`<form class="ask-open" method="post" action="/say" data-say>${hidden(action, place, viewer)}
<div class="fields">${fields.map((field) => fieldHtml(field, id, wantedOf(card, field.id)))}</div>
<button data-tap="${action.id}" data-send="${action.id}">${bare(action.label)}</button></form>`;
}

/** A label that announces a form ends in dots; the button that sends it does not. */
const bare = (label: string): string => label.replace(/…$/, '');

function hidden(action: CardAction, place: string, { token, name, latest, units }: Viewer, lastAct?: number): Html {
  const line = inUnitsOf(action.line, units);
  return html`<input type="hidden" name="token" value="${token}"><input type="hidden" name="form" value="${place}-${latest}"><input type="hidden" name="as" value="${name}"><input type="hidden" name="line" value="${line}"><input type="hidden" name="place" value="${place}"><input type="hidden" name="label" value="${bare(action.label)}">${lastAct === undefined ? '' : html`<input type="hidden" name="lastAct" value="${lastAct}">`}`;
}

/** The figure that the card gives for a field that it asks for itself. */
function wantedOf(card: Card, id: string): string | undefined {
  return card.fields.some((field) => field.id === id) ? card.facts.find((fact) => fact.id === id)?.shown : undefined;
}

function fieldHtml(field: TapField, id: string, wanted?: string): Html {
  const name = `field:${field.id}`;
  const unit = field.unit === '' ? field.label : `${field.label}, ${unitShown(field.unit)}`;
  const label = wanted === undefined ? unit : `${field.label}: ${wanted}`;
  const key = `${id}-${field.id}`;
  switch (field.holds) {
    case 'choice':
      return html`<label for="${key}"><span>${label}</span><select id="${key}" name="${name}">${field.choices.map((choice) => html`<option>${choice}</option>`)}</select></label>`;
    case 'number':
      return html`<label for="${key}"><span>${label}</span><input id="${key}" name="${name}" inputmode="decimal" autocomplete="off" enterkeyhint="next" required></label>`;
    case 'figures':
    case 'words':
      return html`<label for="${key}"><span>${label}</span><input id="${key}" name="${name}" autocomplete="off" autocapitalize="none" required></label>`;
    default: {
      const never: never = field.holds;
      return never;
    }
  }
}

/** A bare C is not how anybody writes a temperature. */
const unitShown = (unit: string): string => (unit === 'C' || unit === 'F' ? `°${unit}` : unit);
