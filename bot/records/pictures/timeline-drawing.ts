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
  const { pictures } = words.records;
  if (timeline.bars.length === 0) return undefined;
  const streams = [...new Set([...timeline.bars, ...timeline.marks].map(({ stream }) => stream))].sort(inOrder);
  const rows = streams.map((stream) => rowName(stream, words));
  const bars = timeline.bars.map(({ stream, kind, from, to }) => ({
    row: rowName(stream, words),
    kind: pictures.bars[kind],
    from: wallMs(from, zone),
    to: wallMs(to, zone),
  }));
  const marks = timeline.marks.map(({ stream, kind, at }) => ({
    row: rowName(stream, words),
    mark: pictures.marks[kind],
    at: wallMs(at, zone),
  }));
  const kinds = barKinds.filter((kind) => timeline.bars.some((bar) => bar.kind === kind));
  const colour = {
    field: 'kind',
    type: 'nominal',
    title: null,
    scale: { domain: kinds.map((kind) => pictures.bars[kind]), range: kinds.map((kind) => barLook[kind].fill) },
    legend: { symbolType: 'square', symbolSize: 180 },
  };
  const y = { field: 'row', type: 'nominal', sort: rows, title: null, scale: { domain: rows } };
  // Wide bars first, so that the thin ones lie over them.
  const heights = [...new Set(kinds.map((kind) => barLook[kind].height))].sort((a, b) => b - a);
  return {
    title: pictures.timeline,
    width: pictureWidth,
    height: rowHeight * rows.length,
    layer: [
      ...heights.map((height) => ({
        data: {
          values: bars.filter((bar) =>
            kinds.some((kind) => pictures.bars[kind] === bar.kind && barLook[kind].height === height),
          ),
        },
        mark: { type: 'bar', height, stroke: ink, strokeWidth: 0.6 },
        encoding: {
          y,
          x: { field: 'from', type: 'temporal', scale: timeScale, axis: timeAxis },
          x2: { field: 'to' },
          color: colour,
        },
      })),
      {
        data: { values: marks },
        mark: { type: 'point', filled: true, size: 130, color: ink, stroke: '#ffffff', strokeWidth: 1, opacity: 1 },
        encoding: {
          y,
          x: { field: 'at', type: 'temporal', scale: timeScale },
          shape: {
            field: 'mark',
            type: 'nominal',
            title: null,
            scale: {
              domain: [pictures.marks.coat, pictures.marks.thick, pictures.marks.held, pictures.marks.released],
              range: ['triangle-down', 'cross', 'square', 'circle'],
            },
            legend: { symbolFillColor: ink, values: [...new Set(marks.map(({ mark }) => mark))] },
          },
        },
      },
    ],
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
