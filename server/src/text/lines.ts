/** Where the lines of a text start, so that the line of an offset is found without counting from the start each time. */
export type Lines = readonly number[];

export function linesOf(text: string): Lines {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

/** From 0. */
export function lineAt(lines: Lines, offset: number): number {
  let low = 0;
  let high = lines.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((lines[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}
