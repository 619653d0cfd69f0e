// The frame of every page: its head, its files, nothing inline.

import { html } from 'hono/html';
import type { Assets } from '../assets.ts';
import type { Html } from './viewer.ts';

interface Frame {
  readonly title: string;
  readonly language: string;
  /** Of the body: each page has its own layout. */
  readonly kind: 'talk' | 'wall' | 'door';
  readonly scripts: readonly string[];
  readonly assets: Assets;
  readonly body: Html;
}

const sheets: Readonly<Record<Frame['kind'], readonly string[]>> = {
  talk: ['talk.css', 'strip.css', 'card.css'],
  wall: ['wall.css'],
  door: ['door.css'],
};

export function frameHtml({ title, language, kind, scripts, assets, body }: Frame): Html {
  return html`<!doctype html>
<html lang="${language}"><head><meta charset="utf-8"><title>${title}</title>
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover, interactive-widget=resizes-content">
<meta name="color-scheme" content="light dark">
<link rel="icon" href="${assets.address('mark.svg')}">${['page.css', ...sheets[kind]].map((sheet) => html`<link rel="stylesheet" href="${assets.address(sheet)}">`)}
${scripts.map((script) => html`<script type="module" src="${assets.address(script)}"></script>`)}</head>
<body class="${kind}">${body}</body></html>`;
}
