// The frame of every page: its head, its files, nothing inline.

import { html } from 'hono/html';
import type { Assets } from '../assets.ts';
import type { Html } from './viewer.ts';

/** Each page has its own layout. */
const files = {
  talk: { sheets: ['talk.css', 'strip.css', 'card.css'], scripts: ['talk.js'] },
  wall: { sheets: ['wall.css'], scripts: ['wall.js'] },
  door: { sheets: ['door.css'], scripts: [] },
} as const;

export function frameHtml(
  { language, assets }: { readonly language: string; readonly assets: Assets },
  kind: keyof typeof files,
  title: string,
  body: Html,
): Html {
  const { sheets, scripts } = files[kind];
  return html`<!doctype html>
<html lang="${language}"><head><meta charset="utf-8"><title>${title}</title>
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover, interactive-widget=resizes-content">
<meta name="color-scheme" content="light dark">
<link rel="icon" href="${assets.address('mark.svg')}">${['page.css', ...sheets].map((sheet) => html`<link rel="stylesheet" href="${assets.address(sheet)}">`)}
${scripts.map((script) => html`<script type="module" src="${assets.address(script)}"></script>`)}</head>
<body class="${kind}">${body}</body></html>`;
}
