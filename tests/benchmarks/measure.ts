/** The middle of some measurements. */
export function median(times: readonly number[]): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

/** How long something takes, in milliseconds. */
export function timed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

export function ms(milliseconds: number): string {
  return milliseconds.toFixed(1).padStart(7);
}
