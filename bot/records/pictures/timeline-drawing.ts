// The day as bars: a row a batch, can or part; pot lives with the stirring in them, flash-off, cures; marks for coats.

import { type Noun, nameIn, nounOf } from '../../../core/ids.ts';
import { inNaturalOrder } from '../../../core/natural-order.ts';
import { type Bar, barKinds, type Timeline } from '../../../core/records/timeline.ts';
import type { Words } from '../../language/tongues/tongues.ts';
import { barLook, type Drawing, ink, pictureWidth, timeAxis, timeScale, wallMs } from './picture-look.ts';

const rowHeight = 30;
const nouns: readonly Noun[] = ['can', 'batch', 'session', 'part'];

/** `undefined` where nothing falls into it. */
export function timelineDrawing(timeline: Timeline, words: Words, zone: string): Drawing | undefined {
  if (timeline.bars.length === 0) return undefined;
  const streams = [...new Set([...timeline.bars, ...timeline.marks].map(({ stream }) => stream))].sort(inOrder);
  const rows = streams.map((stream) => rowName(stream, words));
  const y = { field: 'row', type: 'nominal', sort: rows, title: null, scale: { domain: rows } };
  return {
    title: words.records.pictures.timeline,
    width: pictureWidth,
    height: rowHeight * rows.length,
    layer: [...barLayers(timeline, words, zone, y), markLayer(timeline, words, zone, y)],
  };
}

/** Wide bars first, so that the thin ones lie over them. */
function barLayers(timeline: Timeline, words: Words, zone: string, y: Drawing): readonly Drawing[] {
  const { bars } = words.records.pictures;
  const kinds = barKinds.filter((kind) => timeline.bars.some((bar) => bar.kind === kind));
  const color = {
    field: 'kind',
    type: 'nominal',
    title: null,
    scale: { domain: kinds.map((kind) => bars[kind]), range: kinds.map((kind) => barLook[kind].fill) },
    legend: { symbolType: 'square', symbolSize: 180 },
  };
  const x = { field: 'from', type: 'temporal', scale: timeScale, axis: timeAxis };
  const heights = [...new Set(kinds.map((kind) => barLook[kind].height))].sort((a, b) => b - a);
  return heights.map((height) => ({
    data: {
      values: timeline.bars
        .filter(({ kind }) => barLook[kind].height === height)
        .map(({ stream, kind, from, to }) => {
          const [starts, ends] = [wallMs(from, zone), wallMs(to, zone)];
          return { row: rowName(stream, words), kind: bars[kind], from: starts, to: ends };
        }),
    },
    mark: { type: 'bar', height, stroke: ink, strokeWidth: 0.6 },
    encoding: { y, x, x2: { field: 'to' }, color },
  }));
}

function markLayer(timeline: Timeline, words: Words, zone: string, y: Drawing): Drawing {
  const { marks } = words.records.pictures;
  const values = timeline.marks.map(({ stream, kind, at }) => {
    return { row: rowName(stream, words), mark: marks[kind], at: wallMs(at, zone) };
  });
  const scale = {
    domain: [marks.coat, marks.thick, marks.held, marks.released],
    range: ['triangle-down', 'cross', 'square', 'circle'],
  };
  const legend = { symbolFillColor: ink, values: [...new Set(values.map(({ mark }) => mark))] };
  return {
    data: { values },
    mark: { type: 'point', filled: true, size: 130, color: ink, stroke: '#ffffff', strokeWidth: 1, opacity: 1 },
    encoding: {
      y,
      x: { field: 'at', type: 'temporal', scale: timeScale },
      shape: { field: 'mark', type: 'nominal', title: null, scale, legend },
    },
  };
}

/** Cans, then batches, then parts; numbers by their size. */
function inOrder(a: Bar['stream'], b: Bar['stream']): number {
  const noun = (stream: Bar['stream']) => nouns.indexOf(nounOf(stream));
  return noun(a) - noun(b) || inNaturalOrder(nameIn(a), nameIn(b));
}

function rowName(stream: Bar['stream'], words: Words): string {
  const { pictures } = words.records;
  const name = nameIn(stream);
  switch (nounOf(stream)) {
    case 'batch':
      return pictures.batch(name);
    case 'can':
      return pictures.can(name);
    case 'session':
      return pictures.session(name);
    default:
      return name;
  }
}
