// What a shop's places are usually called, as the readers spell it. Alone or with a number (`booth-2`) such a word is no slip of
// another name. Our own list, no source.

export const usualPlaces: ReadonlySet<string> = new Set(
  'room shop workshop booth oven bay tent store storeroom yard outside outdoors hall tank dock cabinet floor area'.split(
    ' ',
  ),
);

/** `booth`, `booth-2`, `spray-booth`. */
export const isUsualPlace = (name: string): boolean =>
  name.split(/[-_]/).some((piece) => usualPlaces.has(piece.replace(/\d+$/, '')));
