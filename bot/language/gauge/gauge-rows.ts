// What a gauge or a sheet of paper hands over, in rows: which figures are readings, and which only number their spots. Columns may
// stand apart by tabs, semicolons, commas or spaces; `1:`, `2)`, `#3`, `S4` and `spot 5` number a spot.

export interface GaugeRow {
  readonly spot: number | undefined;
  /** As typed, with a decimal point. */
  readonly readings: readonly string[];
}

export interface GaugeRows {
  readonly rows: readonly GaugeRow[];
  /** A unit that was typed, as it was. */
  readonly unit: string | undefined;
  /** The first of each row is a number by its place alone: it may be a reading as well. */
  readonly isDoubtful: boolean;
}

/** What a cell may hold besides figures, as people write it. */
export interface GaugeWords {
  /** Before a spot's number, and at the head of their column. */
  readonly spots: ReadonlySet<string>;
  readonly isUnit: (word: string) => boolean;
}

const marked = /^(?:#|n[oº°]\.?)?(\d{1,3})[:)=]$|^#(\d{1,3})$|^[a-z](\d{1,3})[:.)=]?$|^(\d{1,3})\.$/i;
const figure = /^-?\d+(?:\.\d+)?$/;
const withUnit = /^(-?\d+(?:\.\d+)?)([a-zµμ]{1,6})$/i;

/** `10:05`: when it was read. */
const time = /(?<!\d)\d{1,2}:[0-5]\d(?!\d)/;

/** `undefined` where it holds anything else. */
export function gaugeRows(body: string, words: GaugeWords): GaugeRows | undefined {
  if (time.test(body)) return undefined;
  const lines = body
    .split(/\r?\n/)
    .map((line) => cellsIn(line))
    .filter((cells) => cells.length > 0);
  const isHead = (cells: readonly string[]): boolean =>
    lines.length > 1 && !cells.some((cell) => figure.test(cell) || withUnit.test(cell));
  const [head] = lines;
  const names = head !== undefined && isHead(head) && words.spots.has(plain(head[0] ?? ''));
  const read = lines.slice(head !== undefined && isHead(head) ? 1 : 0).map((cells) => rowsIn(cells, words));
  if (read.length === 0 || read.some((row) => row === undefined)) return undefined;
  const each = read.flatMap((row) => (row === undefined ? [] : [row]));
  const unit = each.findLast((row) => row.unit !== undefined)?.unit;
  const rows = each.flatMap((row) => row.rows);
  if (rows.every(({ readings }) => readings.length === 0)) return undefined;
  const isNumbered = rows.some(({ spot }) => spot !== undefined);
  if (isNumbered) {
    // Ahead of the first number stands nothing that any spot could have.
    return rows.every(({ spot }) => spot !== undefined) ? { rows, unit, isDoubtful: false } : undefined;
  }
  const byPlace = rows.map(({ readings: [first, ...readings] }) => ({ spot: Number(first), readings }));
  const isColumn = rows.length > 1 && byPlace.every(({ spot, readings }, i) => spot === i + 1 && readings.length > 0);
  return isColumn ? { rows: byPlace, unit, isDoubtful: !names } : { rows, unit, isDoubtful: false };
}

const plain = (word: string): string => word.toLowerCase().replace(/[.:]$/, '');

/** A comma parts readings where it cannot be a decimal sign. */
function cellsIn(line: string): readonly string[] {
  const apart = line
    .trim()
    .replaceAll(/(\d)([:=])(?=\d)/g, '$1$2 ')
    .replaceAll('#', ' #')
    .replaceAll(/# +/g, '#');
  const isApart = /[\t;|]/.test(apart) || /\d,? +\D?\d/.test(apart);
  const commas = apart.split(',').length - 1;
  const parts = /\d,\s/.test(apart) || (!isApart && (commas > 1 || /,\d{3}$/.test(apart)));
  const pieces = apart.split(parts ? /[\t;|,]|\s+/ : /[\t;|]|\s+/);
  return pieces
    .map((piece) =>
      piece
        .trim()
        .replace(/,$/, '')
        .replace(/^(-?\d+),(\d+)([a-zµμ]*)$/i, '$1.$2$3'),
    )
    .filter((piece) => piece !== '' && piece !== '-' && piece !== '–');
}

interface RowRead {
  readonly rows: readonly GaugeRow[];
  readonly unit: string | undefined;
}

function rowsIn(cells: readonly string[], { spots, isUnit }: GaugeWords): RowRead | undefined {
  const rows: { spot: number | undefined; readings: string[] }[] = [];
  let unit: string | undefined;
  const into = () => {
    const last = rows.at(-1);
    if (last !== undefined) return last;
    const row = { spot: undefined, readings: [] };
    rows.push(row);
    return row;
  };
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i] ?? '';
    const next = /^#?(\d{1,3})[:.)=]?$/.exec(cells[i + 1] ?? '')?.[1];
    const mark = marked
      .exec(cell)
      ?.slice(1)
      .find((found) => found !== undefined);
    const joined = withUnit.exec(cell);
    if (mark !== undefined) rows.push({ spot: Number(mark), readings: [] });
    else if (spots.has(plain(cell)) && next !== undefined) {
      rows.push({ spot: Number(next), readings: [] });
      i += 1;
    } else if (figure.test(cell)) into().readings.push(cell);
    else if (joined !== null && isUnit(joined[2] ?? '')) {
      into().readings.push(joined[1] ?? '');
      unit = joined[2];
    } else if (isUnit(cell)) unit = cell;
    else return undefined;
  }
  return { rows, unit };
}
