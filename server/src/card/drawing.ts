import type { Markup } from './escape.ts';
import { markup } from './escape.ts';
import { glyphOf, ladder } from './glyphs.ts';
import type { Drawn, LoopDrawing } from './model.ts';
import { wrapText } from './wrap.ts';

/*
 * A loop as SVG, in millimetres: the instrument at the top, two conductors downward, what stands in them one below the
 * other, its words beside it. Upright, so that long names have room on narrow paper and nothing has to shrink. A loop
 * that is longer than a page is cut into parts.
 */

const width = 90;
const labelLeft = ladder.right + 4;
/** The longest part that still fits on A5 together with a heading. */
const longest = 150;
const gap = 2.6;
const nameSize = 4.2;
const lineSize = 3.4;
const nameStep = 5;
const lineStep = 4.2;
/** Characters that surely fit beside the ladder: in DejaVu Sans, the widest face, 0.637 and 0.562 em (mean of a to z). */
const nameWidth = Math.floor((width - labelLeft) / (nameSize * 0.64));
const lineWidth = Math.floor((width - labelLeft) / (lineSize * 0.565));

interface Placed {
  readonly drawn: Drawn;
  readonly names: readonly string[];
  readonly lines: readonly string[];
  readonly height: number;
}

/**
 * The drawings of a loop, one for each part it is cut into; the first says all of it in words. `key` makes the ids of the
 * document unique.
 */
export function drawLoop(loop: LoopDrawing, key: string): readonly Markup[] {
  const parts = cut(loop.elements.map(place));
  return parts.map((part, index) =>
    drawPart(loop, part, `${key}-${index + 1}`, index > 0, index < parts.length - 1),
  );
}

function place(drawn: Drawn): Placed {
  const names = drawn.kind === 'unknown' ? [] : wrapText(drawn.id, nameWidth);
  const bar =
    drawn.kind === 'connector' && drawn.bar !== null ? [`${drawn.bar.side} side: ${drawn.bar.words}`] : [];
  const lines = [...drawn.lines, ...bar].flatMap((line) => wrapText(line, lineWidth));
  const words = names.length * nameStep + lines.length * lineStep;
  return { drawn, names, lines, height: Math.max(glyphOf(drawn).height, words + 1) };
}

function cut(all: readonly Placed[]): readonly (readonly Placed[])[] {
  const fewest = cutAt(all, longest);
  // Parts of about the same length look better than full ones and a stump.
  for (let limit = heightOf(all) / fewest.length; limit < longest; limit += 2) {
    const even = cutAt(all, limit);
    if (even.length === fewest.length) return even;
  }
  return fewest;
}

function cutAt(all: readonly Placed[], limit: number): readonly (readonly Placed[])[] {
  const parts: Placed[][] = [];
  let height = 0;
  for (const placed of all) {
    height = grown(height, placed);
    const last = parts.at(-1);
    if (last !== undefined && height <= limit) {
      last.push(placed);
      continue;
    }
    parts.push([placed]);
    height = grown(0, placed);
  }
  return parts;
}

function heightOf(part: readonly Placed[]): number {
  return part.reduce(grown, 0);
}

function grown(height: number, placed: Placed): number {
  return height + placed.height + gap;
}

function drawPart(
  loop: LoopDrawing,
  part: readonly Placed[],
  key: string,
  continued: boolean,
  continues: boolean,
): Markup {
  const lead = continued ? 7 : 1;
  const tail = continues ? 9 : 1;
  let top = lead;
  const drawn = part.map((placed, index) => {
    const isLast = index === part.length - 1;
    const made = drawElement(placed, top, isLast && !continues);
    top += placed.height + gap;
    return made;
  });
  const height = top - gap + tail;
  return markup`<svg role="img" aria-labelledby="${continued ? `${key}-t` : `${key}-t ${key}-d`}" width="${width}mm" height="${height.toFixed(1)}mm" viewBox="0 0 ${width} ${height.toFixed(1)}">
<title id="${key}-t">${continued ? loop.continued : loop.title}</title>
${
  continued
    ? null
    : markup`<desc id="${key}-d">${loop.description}</desc>
`
}${continued ? markup`<text class="d-line" x="1" y="4">${loop.continued}</text>${wires(5, lead)}` : null}
${drawn}
${continues ? markup`${wires(top - gap, height - 5)}<text class="d-line" x="1" y="${(height - 1).toFixed(1)}">${loop.continues}</text>` : null}
</svg>`;
}

function drawElement(placed: Placed, top: number, isLast: boolean): Markup {
  const { drawn, names, lines, height } = placed;
  const glyph = glyphOf(drawn);
  const isEnd = drawn.kind === 'end';
  const below = top + height + (isLast ? 0 : gap);
  let baseline = top + nameStep - 1.2;
  const words: Markup[] = [];
  for (const name of names) {
    words.push(markup`<text class="d-name" x="${labelLeft}" y="${baseline.toFixed(1)}">${name}</text>`);
    baseline += nameStep;
  }
  if (names.length > 0) baseline -= nameStep - lineStep;
  for (const line of lines) {
    words.push(markup`<text class="d-line" x="${labelLeft}" y="${baseline.toFixed(1)}">${line}</text>`);
    baseline += lineStep;
  }
  return markup`${isEnd || below <= top + glyph.height ? null : wires(top + glyph.height, below)}${glyph.draw(top)}${words}
`;
}

function wires(from: number, to: number): Markup {
  return markup`<path class="d-wire" d="M${ladder.one} ${from.toFixed(1)}V${to.toFixed(1)}M${ladder.two} ${from.toFixed(1)}V${to.toFixed(1)}" />`;
}
