// Something that waits until the test says so: what is slow is made slow by the order of things, not by a clock.

export function gate(): { readonly until: Promise<void>; readonly letGo: () => void } {
  let letGo: () => void = () => undefined;
  const until = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  return { until, letGo };
}
