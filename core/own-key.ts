// Tables looked up by a word from outside: only what stands in the table itself is found. Every object answers to
// `constructor`, `toString`, `__proto__` and their kin as well, and people may type those like any other word.

/** Whether the word is a key of the table's own; narrows to it. */
export function isOwnKey<Table extends object>(table: Table, word: PropertyKey): word is keyof Table {
  return Object.hasOwn(table, word);
}

/** What stands in the table under the word; `undefined` where nothing of its own does. */
export function ownValue<Value>(table: Readonly<Record<string, Value>>, word: string): Value | undefined {
  return Object.hasOwn(table, word) ? table[word] : undefined;
}

/** The table's own keys, in the order in which they stand in it. */
export function keysOf<Table extends object>(table: Table): readonly (keyof Table)[] {
  return Object.keys(table).filter((key) => isOwnKey(table, key));
}

/** A table out of its rows: whoever calls has one for each key. */
export function tableOf<Key extends string, Value>(
  rows: readonly (readonly [Key, Value])[],
): Readonly<Record<Key, Value>> {
  return Object.fromEntries(rows) as Record<Key, Value>;
}
