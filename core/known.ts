// Of some figures those that are known: what is `undefined` is left out, as an optional field wants it.

export type Known<T> = {
  readonly [K in keyof T as undefined extends T[K] ? never : K]: T[K];
} & { readonly [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined> };

export function known<T extends object>(figures: T): Known<T> {
  const found: { [name: string]: unknown } = {};
  for (const [name, figure] of Object.entries(figures)) if (figure !== undefined) found[name] = figure;
  return found as Known<T>;
}
