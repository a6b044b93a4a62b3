import type { Frame } from 'playwright-core';

/** A piece of text with its contrast to what it stands on. */
export interface Contrast {
  readonly text: string;
  readonly ratio: number;
}

/**
 * The contrast of every piece of text in a page, weakest first: (L1 + 0.05) / (L2 + 0.05) of the relative luminances, as
 * WCAG 2.1 defines both. Behind a text lies the nearest background that is not see-through; in a drawing the shape that
 * was drawn last below its middle, if there is one.
 */
export async function contrasts(frame: Frame): Promise<readonly Contrast[]> {
  return await frame.evaluate<readonly Contrast[]>(inPage);
}

/** It runs in the page and is a text, so that the tests need no types of a browser. */
const inPage = `(() => {
  const channels = (colour) => (colour.match(/[\\d.]+/g) ?? []).map(Number);
  const luminance = (colour) => {
    const [red, green, blue] = channels(colour).map((value) => {
      const part = value / 255;
      return part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const isDrawn = (element) => element.namespaceURI.endsWith('svg');
  const shapeBehind = (element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    const below = [...element.closest('svg').querySelectorAll('rect, circle, polygon, path')].filter((shape) => {
      const box = shape.getBoundingClientRect();
      const earlier = (shape.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
      const holds = box.left <= x && x <= box.right && box.top <= y && y <= box.bottom;
      return earlier && holds && getComputedStyle(shape).fill !== 'none';
    });
    return below.length === 0 ? null : getComputedStyle(below.at(-1)).fill;
  };
  const behind = (element) => {
    const shape = isDrawn(element) ? shapeBehind(element) : null;
    if (shape !== null) return shape;
    for (let at = element; at !== null; at = at.parentElement) {
      const colour = getComputedStyle(at).backgroundColor;
      if ((channels(colour)[3] ?? 1) === 1) return colour;
    }
    return 'rgb(255, 255, 255)';
  };
  const found = [];
  // The frame may be there before its document is; the caller looks again.
  if (document.body === null) return found;
  const unseen = ['STYLE', 'TITLE', 'SCRIPT', 'title', 'desc'];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const text = node.data.trim();
    const element = node.parentElement;
    if (text === '' || element === null || unseen.includes(element.tagName)) continue;
    const style = getComputedStyle(element);
    const ink = luminance(isDrawn(element) ? style.fill : style.color);
    const paper = luminance(behind(element));
    const ratio = (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
    found.push({ text: text.slice(0, 60), ratio });
  }
  return found.sort((a, b) => a.ratio - b.ratio);
})()`;
