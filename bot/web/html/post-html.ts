// One post of the conversation: the line that was said, and its card. What is others' own stands folded, in one line.

import { html } from 'hono/html';
import { type Card, fileNameOf, isRead, leadLines } from '../../cards/card.ts';
import { ringLabel } from '../../cards/ring-label.ts';
import { stampOf } from '../../language/ending.ts';
import { isFor, ringsFor } from '../conversation.ts';
import type { Post } from '../conversation-file.ts';
import { postPlace } from '../tap-places.ts';
import { openTapHtml, tapHtml } from './tap-html.ts';
import type { Html, Viewer } from './viewer.ts';

export function postHtml(post: Post, viewer: Viewer): Html {
  const { n, said, answer } = post;
  const { page } = viewer.words;
  const time = stampOf(viewer.profile, answer);
  const mine = isFor(answer, viewer.name);
  const whose = answer.key === null ? (answer.as ?? '') : page.forPeople(answer.to);
  if (!mine) {
    return html`<li class="post others" id="post-${n}" data-n="${n}"><details><summary><span class="whose">${whose}</span> <time datetime="${answer.at}">${time}</time> ${mark(answer.card)} <b>${answer.card.title}</b></summary>${cardHtml(post, viewer)}</details></li>`;
  }
  const from = answer.as === viewer.name ? '' : `${answer.as}: `;
  const line = said === null ? '' : html`<p class="said"><span>${from}${inShort(said, viewer)}</span></p>`;
  const ring = ringsFor(answer, viewer.name)
    ? html` data-ring="${answer.key ?? `said-${n}`}" data-tone="${answer.card.tone}"`
    : '';
  return html`<li class="post mine" id="post-${n}" data-n="${n}" data-delivery="${post.delivery ?? ''}"${ring}>${line}${cardHtml(post, viewer)}</li>`;
}

/** Of a list that was pasted its first line, and how many more there are. */
function inShort(said: string, { words }: Viewer): string {
  const [first = '', ...more] = said.split('\n');
  return more.length === 0 ? said : `${first} ${words.page.more(String(more.length))}`;
}

function cardHtml({ n, answer }: Post, viewer: Viewer): Html {
  const { card, kind } = answer;
  const { page } = viewer.words;
  const time = stampOf(viewer.profile, answer);
  const stands = kind === 'reply' && answer.recorded ? page.recorded : page.kinds[kind];
  return html`<article class="card ${card.tone} ${kind}" data-code="${answer.code ?? ''}">
<header><span class="hole">${mark(card)}</span><h2>${card.title}</h2><p class="when">${stands === '' ? '' : html`<span class="kind">${stands}</span> `}<time datetime="${answer.at}">${time}</time></p></header>
${card.facts.length === 0 ? '' : html`<dl>${card.facts.map((fact) => html`<div data-fact="${fact.id}"><dt>${fact.label}</dt><dd>${unbroken(fact.shown)}</dd></div>`)}</dl>`}
${paperHtml(card, viewer)}${card.lines.map((line) => html`<p>${unbroken(line)}</p>`)}${linksHtml(card)}
${card.hazards.map(({ text, source }) => html`<p class="hazard"><b>!</b> ${text} <small>(${source})</small></p>`)}${leadLines(card).map((line) => html`<p class="leads">${unbroken(line)}</p>`)}
${imageHtml(card, viewer)}${tapsHtml(card, n, viewer)}${nextHtml(card, answer.at, viewer)}</article>`;
}

/** A phone fetches it, wherever the machine keeps it. */
function paperHtml({ paper }: Card, { paperLink }: Viewer): Html | '' {
  if (paper === undefined) return '';
  const name = fileNameOf(paper);
  if (isRead(paper)) return html`<p><a class="paper" href="${paperLink(paper)}" target="_blank">${name}</a></p>`;
  return html`<p><a class="paper" href="${paperLink(paper)}" download="${name}">${name}</a></p>`;
}

/** Elsewhere on the net: it learns nothing of this page. */
const linksHtml = ({ links = [] }: Card): readonly Html[] =>
  links.map(
    ({ label, address }) =>
      html`<p><a class="paper" href="${address}" target="_blank" rel="noopener noreferrer">${label}</a></p>`,
  );

/** The tone as a word for who hears the page, and as a shape: never colour alone. */
export function mark({ tone }: Pick<Card, 'tone'>): Html {
  return html`<span class="mark ${tone}" aria-hidden="true"></span>`;
}

function imageHtml(card: Card, { words }: Viewer): Html | '' {
  if (card.image === null) return '';
  return html`<img src="/picture?ref=${encodeURIComponent(card.image)}" alt="${words.page.picture(card.title)}" loading="lazy">`;
}

function tapsHtml(card: Card, n: number, viewer: Viewer): Html | '' {
  const [first, ...others] = card.actions;
  if (first === undefined) return '';
  return html`<div class="taps">${openTapHtml(first, postPlace(n, 0), viewer, card)}${others.map((action, i) => tapHtml(action, postPlace(n, i + 1), viewer))}</div>`;
}

/** The first two bells, none of them of a day: the rest stand on the board. */
function nextHtml(card: Card, at: string, { words, profile }: Viewer): Html | '' {
  const next = card.next.filter(({ key }) => !key.startsWith('crew/')).slice(0, 2);
  if (next.length === 0) return '';
  return html`<p class="next">${next.map(({ key, dueAt }) => html`<span>${words.page.rings} <b>${stampOf(profile, { key, at: dueAt }, at)}</b> ${ringLabel({ words, figures: { date: (iso) => iso } }, key)}</span>`)}</p>`;
}

/** A figure stays with its unit at the end of a line. */
function unbroken(text: string): string {
  return text.replaceAll(/(\d) (?=[%°µ]|(?:min|h|g|kg|L|mil|lb|oz|gal)\b)/g, '$1\u00a0');
}
