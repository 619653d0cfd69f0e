// The door: who is at this screen, and on a network the code that lets them in. And what to say when something is turned away.

import { html } from 'hono/html';
import type { Words } from '../../language/tongues/tongues.ts';
import type { Html } from './viewer.ts';

interface Door {
  readonly words: Words;
  readonly crew: string;
  readonly people: readonly string[];
  readonly token: string;
  readonly asksCode: boolean;
  readonly fault: string | undefined;
  readonly notice: string | undefined;
}

export function doorHtml({ words, crew, people, token, asksCode, fault, notice }: Door): Html {
  const { page, replies } = words;
  // The first button is what Enter presses: it must not choose a name.
  const code = html`<label for="code"><span>${page.joinCode}</span><input id="code" name="code" autocomplete="off" autocapitalize="characters" spellcheck="false" maxlength="12" required aria-describedby="code-hint"></label><p id="code-hint" class="hint">${page.joinHint}</p>`;
  return html`<main class="door"><p class="crew">${crew}</p><h1>${page.who}</h1>
${notice === undefined ? '' : html`<p class="notice">${notice}</p>`}
${fault === undefined ? '' : html`<p class="fault" role="alert">${fault}</p>`}
<form method="post" action="/join"><input type="hidden" name="token" value="${token}">${asksCode ? html`<button class="unseen" tabindex="-1" aria-hidden="true">${page.join}</button>${code}` : ''}
<p class="hint">${page.whoHint}</p>
<div class="people">${people.map((name) => html`<button name="as" value="${name}">${name}</button>`)}</div>
<button class="wall-choice" name="board" value="yes">${page.boardOnly}</button></form>
<p class="caution">${replies.caution}</p></main>`;
}

export function turnedAwayHtml({ page }: Words, why: string): Html {
  return html`<main class="door"><h1>${page.notTaken}</h1><p class="fault" role="alert">${why}</p><p><a class="button" href="/">${page.back}</a></p></main>`;
}
