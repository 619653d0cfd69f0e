// The conversation's page: what runs on top, the posts, and at the thumb what can be started and the line to type.

import { html } from 'hono/html';
import type { Board } from '../../cards/board.ts';
import type { Post } from '../conversation-file.ts';
import { stripHtml } from './board-html.ts';
import { postHtml } from './post-html.ts';
import { tapHtml } from './tap-html.ts';
import type { Html, Viewer } from './viewer.ts';

interface Talk {
  readonly viewer: Viewer;
  readonly board: Board;
  readonly posts: readonly Post[];
  /** The conversation's id: the page asks for what came after its newest post. */
  readonly conversation: string;
  readonly notice: string | undefined;
  /** Where another person may be chosen. */
  readonly mayChange: boolean;
}

const bellSign = html`<svg viewBox="0 0 24 24" aria-hidden="true"><path d="M4 18c2-2 2-5 2-8a6 6 0 0 1 12 0c0 3 0 6 2 8zM9 20h6l-3 3z"/><path class="strike" d="M3 3l18 18"/></svg>`;
const boardSign = html`<svg viewBox="0 0 24 24" aria-hidden="true"><path d="M3 4h18v3H3zM3 10h12v3H3zM3 16h15v3H3z"/></svg>`;

/** Many at once: a list is pasted, or a file is chosen. Without script both are posted as they are. */
function partsHtml({ words, name, token, latest }: Viewer): Html {
  const { partsForm } = words.page;
  return html`<details class="ask parts-in" id="ask-parts-in"><summary>${partsForm.title}…</summary>
<form method="post" action="/say" enctype="multipart/form-data" data-say><input type="hidden" name="token" value="${token}"><input type="hidden" name="form" value="p-${latest}"><input type="hidden" name="as" value="${name}"><input type="hidden" name="list" value="parts">
<label for="parts-list"><span>${partsForm.paste}</span><textarea id="parts-list" name="line" rows="4" autocapitalize="none" spellcheck="false" placeholder="${partsForm.example}"></textarea></label>
<label for="parts-file"><span>${partsForm.file}</span><input id="parts-file" name="file" type="file" accept=".csv,.tsv,.txt,text/csv,text/plain"></label>
<button>${partsForm.show}</button></form></details>`;
}

export function talkHtml({ viewer, board, posts, conversation, notice, mayChange }: Talk): Html {
  const { words, name, token, latest } = viewer;
  const { page, replies } = words;
  const live = page.live;
  const whose = html`<b>${name}</b><span>${board.crew}</span>`;
  return html`<header class="top">
${mayChange ? html`<a class="crew" href="/join">${whose}</a>` : html`<p class="crew">${whose}</p>`}
<p class="state" role="status" data-state="off" data-connected="${live.connected}" data-connecting="${live.connecting}" data-lost="${live.lost}"></p>
<p class="clock-now"><time>${board.clock}</time></p>
<button class="bell sign" type="button" hidden data-on="${live.bellOn}" data-off="${live.bellOff}" data-waits="${live.bellWaits}">${bellSign}<span></span></button>
<a class="sign" href="/board">${boardSign}<span>${page.board}</span></a></header>
<p class="lost" role="alert" hidden data-text="${live.lostPage}"></p>
${notice === undefined ? '' : html`<p class="notice">${notice}</p>`}
<section class="strip" aria-label="${page.sections.running}">${stripHtml(board, viewer)}</section>
<main><h1 class="unseen">${page.title}: ${page.conversation}</h1>
${posts.length === 0 ? html`<div class="welcome"><p>${page.empty}</p><p class="caution">${replies.caution}</p></div>` : ''}
<ol class="posts" aria-live="polite" data-conversation="${conversation}" data-latest="${latest}">${posts.map((post) => postHtml(post, viewer))}</ol>
<ol class="outbox" aria-live="polite" data-not-sent="${live.notSent}" data-sending="${live.sending}" data-refused="${live.refused}" data-take-back="${live.takeBack}" data-typed-by="${live.typedBy}"></ol></main>
<footer class="thumb"><button type="button" class="newest" hidden>${live.unread}</button>
<nav class="quick" aria-label="${page.moreTaps}"><details class="ask need" id="ask-need"><summary>${page.inNeed}</summary><div class="taps">${board.alarms.map((action, i) => tapHtml(action, `n${i}`, viewer))}</div></details>${board.quick.map((action, i) => tapHtml(action, `q${i}`, viewer))}${partsHtml(viewer)}</nav>
<form class="composer" method="post" action="/say" data-say><input type="hidden" name="token" value="${token}"><input type="hidden" name="form" value="c-${latest}"><input type="hidden" name="as" value="${name}">
<label class="unseen" for="line">${page.sayLabel}</label><input id="line" name="line" placeholder="${page.sayHint}" autocomplete="off" autocapitalize="none" spellcheck="false" enterkeyhint="send" maxlength="500" required><button>${page.say}</button></form></footer>`;
}
