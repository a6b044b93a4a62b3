import type { Markup } from './escape.ts';
import { markup } from './escape.ts';
import type { Drawn } from './model.ts';

/** Where the two conductors run, and the edges of what stands in them. Millimetres. */
export const ladder = { left: 1, one: 9, two: 23, right: 31 } as const;

export interface Glyph {
  readonly height: number;
  /** Draws it with its upper edge at this height. */
  readonly draw: (top: number) => Markup;
}

const middle = (ladder.one + ladder.two) / 2;
const boxWidth = ladder.right - ladder.left;

/** The symbol of one element of a loop. All are told apart by shape and word, none by colour. */
export function glyphOf(drawn: Drawn): Glyph {
  switch (drawn.kind) {
    case 'monitor':
      return monitorGlyph;
    case 'connector':
      return connectorGlyph(drawn);
    case 'part':
      return partGlyph;
    case 'end':
      return drawn.live === null ? endGlyph : liveGlyph(drawn.live);
    case 'unknown':
      return unknownGlyph;
  }
}

const monitorGlyph: Glyph = {
  height: 11,
  draw: (top) =>
    markup`<rect class="d-heavy" x="${ladder.left + 0.5}" y="${at(top + 0.5)}" width="${boxWidth - 1}" height="10" rx="1" /><text class="d-sign" x="${middle}" y="${at(top + 7.3)}">Ω</text>`,
};

const partGlyph: Glyph = {
  height: 10,
  draw: (top) =>
    markup`<path class="d-wire" d="${down(top, top + 10)}" />${[ladder.one, ladder.two].map((x) => markup`<rect class="d-box" x="${x - 1.5}" y="${at(top + 1)}" width="3" height="8" />`)}<path class="d-tie" d="M${ladder.one + 1.5} ${at(top + 5)}H${ladder.two - 1.5}" />`,
};

const endGlyph: Glyph = {
  height: 10,
  draw: (top) => markup`${closing(top)}`,
};

function liveGlyph(word: string): Glyph {
  return {
    height: 18,
    draw: (top) =>
      markup`${closing(top)}<path class="d-black" d="M${middle - 13} ${at(top + 14)}l3.2 -5.6l3.2 5.6z" /><path class="d-white-line" d="M${middle - 9.8} ${at(top + 10.3)}v1.9" /><circle class="d-white" cx="${middle - 9.8}" cy="${at(top + 13.1)}" r="0.45" /><rect class="d-black" x="${middle - 5}" y="${at(top + 8.4)}" width="18" height="7" /><text class="d-live" x="${middle + 4}" y="${at(top + 13.4)}">${word}</text>`,
  };
}

function closing(top: number): Markup {
  return markup`<path class="d-wire" d="M${ladder.one} ${at(top)}V${at(top + 4)}H${ladder.two}V${at(top)}" /><rect class="d-box" x="${middle - 4}" y="${at(top + 2.5)}" width="8" height="3" />`;
}

const unknownGlyph: Glyph = {
  height: 10,
  draw: (top) =>
    markup`<rect class="d-dashed" x="${ladder.left + 0.5}" y="${at(top + 0.5)}" width="${boxWidth - 1}" height="9" /><text class="d-sign" x="${middle}" y="${at(top + 6.8)}">?</text>`,
};

const plainHalf = 6.5;
const barHalf = 10;

function connectorGlyph(drawn: Extract<Drawn, { readonly kind: 'connector' }>): Glyph {
  const upper = drawn.bar?.half === 'upper' ? barHalf : plainHalf;
  const lower = drawn.bar?.half === 'lower' ? barHalf : plainHalf;
  const between = 1.6;
  return {
    height: upper + between + lower,
    draw: (top) => {
      const second = top + upper + between;
      const halves = markup`${half(top, upper)}${half(second, lower)}<path class="d-wire" d="${down(top, second + lower)}" />`;
      const bar = drawn.bar === null ? null : openBar((drawn.bar.half === 'upper' ? top : second) + 7.6);
      const words = markup`${sideText(top + 4.3, drawn.sides[0])}${sideText(second + 4.3, drawn.sides[1])}`;
      const pins = [top, second].map((y) => pinTexts(y + 4.5, drawn.pins));
      return markup`${halves}${bar}${words}${pins}`;
    },
  };
}

function half(top: number, height: number): Markup {
  return markup`<rect class="d-box" x="${ladder.left}" y="${at(top)}" width="${boxWidth}" height="${height}" rx="1" />`;
}

/** The bar as it stands while the connector is mated: lifted off one of the two conductors. */
function openBar(y: number): Markup {
  return markup`<circle class="d-black" cx="${ladder.one}" cy="${at(y)}" r="0.9" /><circle class="d-black" cx="${ladder.two}" cy="${at(y)}" r="0.9" /><path class="d-bar" d="M${ladder.one} ${at(y)}L${ladder.two - 1.6} ${at(y - 1.9)}" />`;
}

function sideText(baseline: number, words: string): Markup {
  const [first = ''] = words.split(' ');
  return markup`<text class="d-side" x="${middle}" y="${at(baseline)}">${first}</text>`;
}

function pinTexts(baseline: number, pins: readonly [string, string]): Markup {
  return markup`${pinText(ladder.left + 0.7, ladder.one - 0.8, baseline, pins[0])}${pinText(ladder.two + 0.8, ladder.right - 0.7, baseline, pins[1])}`;
}

/** Long pin names are set smaller, so that they stay inside the connector. */
function pinText(left: number, right: number, baseline: number, pin: string): Markup {
  const size = Math.min(3.8, (right - left) / (Math.max(1, Array.from(pin).length) * 0.6));
  return markup`<text class="d-pin" font-size="${size.toFixed(2)}" x="${at((left + right) / 2)}" y="${at(baseline)}">${pin}</text>`;
}

function down(from: number, to: number): string {
  return `M${ladder.one} ${at(from)}V${at(to)}M${ladder.two} ${at(from)}V${at(to)}`;
}

function at(value: number): string {
  return String(Number(value.toFixed(2)));
}
