// From a drawing as data to a PNG, in this process and without a browser: the charting library makes an SVG, a renderer
// paints it with the package's own font. Both are loaded only when something is drawn.

import { createRequire } from 'node:module';
import type { TopLevelSpec } from 'vega-lite';
import type { Profile } from '../../language/tongues/profile.ts';
import { type Drawing, fontFamily, pictureConfig } from './picture-look.ts';

const require = createRequire(import.meta.url);

/** Where the package keeps its fonts. */
export function fontFile(weight: 'regular' | 'bold'): string {
  return weight === 'bold'
    ? require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf')
    : require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
}

/** Several drawings stand one under another. */
export function pictureOf(drawings: readonly Drawing[], { onAxis }: Pick<Profile, 'onAxis'>): Drawing {
  return {
    ...pictureConfig,
    params: [
      { name: 'axisClock', value: onAxis.clock },
      { name: 'axisDay', value: onAxis.day },
    ],
    spacing: 28,
    vconcat: drawings,
    resolve: { scale: { color: 'independent', shape: 'independent', strokeDash: 'independent' } },
  };
}

export async function drawSvg(picture: Drawing): Promise<string> {
  const [{ compile }, vega] = await Promise.all([import('vega-lite'), import('vega')]);
  const silent = { ...vega.logger(vega.None), level: () => vega.None };
  const { spec } = compile(picture as unknown as TopLevelSpec, { logger: silent as never });
  const view = new vega.View(vega.parse(spec), { renderer: 'none' });
  try {
    return await view.toSVG();
  } finally {
    view.finalize();
  }
}

/** Twice as fine as it is large: phones show it sharp. */
const fineness = 2;

export async function drawPng(picture: Drawing): Promise<Uint8Array> {
  const [svg, { Resvg }] = await Promise.all([drawSvg(picture), import('@resvg/resvg-js')]);
  const renderer = new Resvg(svg, {
    font: { loadSystemFonts: false, fontFiles: [fontFile('regular'), fontFile('bold')], defaultFontFamily: fontFamily },
    fitTo: { mode: 'zoom', value: fineness },
  });
  return renderer.render().asPng();
}
