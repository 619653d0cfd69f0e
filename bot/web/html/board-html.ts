// The board, twice: for the wall, in figures that are read from the other end of the room, and as the strip of what runs
// on top of a phone's conversation.

import { html } from 'hono/html';
import type { Board } from '../../cards/board.ts';
import type { BoardAir } from '../../cards/board-air.ts';
import type { BoardClock, BoardItem } from '../../cards/board-item.ts';
import type { Words } from '../../language/tongues/tongues.ts';
import { tilePlace } from '../tap-places.ts';
import { mark } from './post-html.ts';
import { tapHtml } from './tap-html.ts';
import type { Html, Viewer } from './viewer.ts';

/** All of the wall but its frame: sent anew whenever it has changed. */
export function wallHtml(board: Board, { page }: Words): Html {
  const { sections } = page;
  return html`${practiceHtml(board)}<header class="wall-head"><h1>${board.crew}</h1><div class="wall-air">${board.air.map(airHtml)}</div><p class="wall-clock"><time datetime="${board.at}">${board.clock}</time></p></header>
<section class="wall-rings"><h2>${sections.rings}</h2>${
    board.rings.length === 0
      ? html`<p class="none">${page.noRings}</p>`
      : html`<ol>${board.rings
          .slice(0, ringsShown)
          .map(
            (ring) =>
              html`<li class="${ring.late ? 'late' : ''}"><b>${timeHtml(ring.at)}</b><span class="left">${ring.left}</span><span class="what">${ring.label}</span></li>`,
          )}</ol>${moreHtml(board.rings.length - ringsShown, page)}`
  }</section>
<section class="wall-items${isDense(board) ? ' dense' : ''}"><h2>${sections.running}</h2>${itemsHtml(board.items, page)}</section>`;
}

/** Never taken for the shop's. */
const practiceHtml = ({ practice }: Board): Html | '' =>
  practice === undefined ? '' : html`<p class="notice practice" role="status">${practice}</p>`;

/** As many as fit beside the items. */
const ringsShown = 4;

/** A time of another day carries its date, smaller: the figures stay as big as the others. */
function timeHtml(at: string | undefined): Html | '' {
  const [, day = '', time = at ?? ''] = /^(.+) (\d\d:\d\d)$/.exec(at ?? '') ?? [];
  return day === '' ? html`${time}` : html`<small>${day}</small> ${time}`;
}

/** So many clocks that the lowest would hang below the screen. */
function isDense({ items }: Board): boolean {
  return items.flatMap(({ clocks }) => clocks).length > 4;
}

/** How many are not shown. The wall's script adds those for which its screen has no room: only there is its height known. */
function moreHtml(beyond: number, page: Words['page']): Html {
  const count = Math.max(0, beyond);
  return html`<p class="more" data-beyond="${count}" data-text="${page.more('{count}')}"${count === 0 ? html` hidden` : ''}>${page.more(String(count))}</p>`;
}

function itemsHtml(items: readonly BoardItem[], page: Words['page']): Html {
  if (items.length === 0) return html`<p class="none">${page.nothingRuns}</p>`;
  return html`<ul>${items.map(
    (item) => html`<li class="item ${item.tone}" data-item="${item.id}">
<p class="item-head">${mark(item)}<b>${item.name}</b> <span class="phase">${item.phase}</span> <span class="what">${item.what}</span></p>
${item.clocks.map(clockHtml)}</li>`,
  )}</ul>${moreHtml(0, page)}`;
}

/** The one that makes it as urgent as it is, where it ends. */
function tellingClock({ clocks, urgency }: BoardItem): BoardClock | undefined {
  return clocks.find((clock) => clock.urgency.is === urgency.is && clock.at !== undefined) ?? clocks[0];
}

/** A bar, its end and what is left: the words say all that the bar shows. */
function clockHtml(clock: BoardClock): Html {
  return html`<div class="clock ${clock.tone}" data-clock="${clock.id}"><p><span>${clock.label}</span> <b>${timeHtml(clock.at)}</b> <span class="left">${clock.left}</span></p><progress max="100" value="${Math.floor(clock.progress * 100)}" aria-label="${clock.label}"></progress></div>`;
}

function airHtml(air: BoardAir): Html {
  return html`<div class="air ${air.tone}"><p class="item-head">${mark(air)}<span class="phase">${air.place}</span> <b>${air.figures.join('  ')}</b></p><p class="what">${air.lines.join(', ')}</p></div>`;
}

/** Two rows of two on a phone; more than that, and the last of them opens the rest. */
const tilesShown = 4;

/** What runs, on a phone: tiles, the most urgent first, each with its taps folded behind it. */
export function stripHtml(board: Board, viewer: Viewer): Html {
  const { items } = board;
  const first = items.length <= tilesShown ? items : items.slice(0, tilesShown - 1);
  const rest = items.slice(first.length);
  const next = board.rings[0];
  const { page } = viewer.words;
  return html`${practiceHtml(board)}<p class="strip-next" data-clock="${board.clock}">${
    next === undefined
      ? html`<span>${page.noRings}</span>`
      : html`<span class="${next.late ? 'late' : ''}">${page.rings} <b>${timeHtml(next.at)}</b> ${next.label}, <span class="left">${next.left}</span></span>`
  }</p>${items.length === 0 ? '' : html`<ul>${first.map((item) => tileHtml(item, viewer))}${rest.length === 0 ? '' : restHtml(rest, viewer)}</ul>`}`;
}

function restHtml(rest: readonly BoardItem[], viewer: Viewer): Html {
  return html`<li class="rest"><details id="strip-more"><summary>${viewer.words.page.more(String(rest.length))}</summary><ul>${rest.map((item) => tileHtml(item, viewer))}</ul></details></li>`;
}

function tileHtml(item: BoardItem, viewer: Viewer): Html {
  const clock = tellingClock(item);
  const id = item.id.replaceAll(/[^\w-]/g, '-');
  return html`<li data-item="${item.id}"><details class="tile ${item.tone}" id="tile-${id}" name="tile"><summary>${mark(item)}<b>${item.name}</b> <span class="phase">${item.phase}</span>${
    clock === undefined
      ? ''
      : html` <span class="tile-clock"><b>${timeHtml(clock.at)}</b> <progress max="100" value="${Math.floor(clock.progress * 100)}" aria-label="${clock.label}"></progress></span>`
  }</summary><div class="tile-more"><p class="what">${item.what}</p>${item.clocks.map(clockHtml)}<div class="taps">${item.taps.map((action, i) => tapHtml(action, tilePlace(item.id, i), viewer, item.lastAct))}</div></div></details></li>`;
}
