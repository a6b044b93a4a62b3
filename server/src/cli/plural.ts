/** `1 step`, `2 steps`. */
export function plural(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}
