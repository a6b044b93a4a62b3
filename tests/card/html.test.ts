import { describe, expect, test } from 'vitest';
import { buildCardOf } from '../readings/card-of.ts';
import { coils } from '../readings/outer-bound.ts';
import { buildCard } from '../../server/src/card/build.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import type { CardInput } from '../../server/src/card/model.ts';
import type { Step } from '../../server/src/model/procedure.ts';
import { input, procedure, remark } from './halden.ts';
import { nestingProblems, readText, stepBlock } from './well-formed.ts';

const html = cardHtml(buildCard(input));
const draft = cardHtml(buildCard({ ...input, draft: true }));

const hostile = `</style><script>alert("1")</script> & 'two' <img src=x onerror=y> \u202edesrever\u202c "}body{display:none}`;

/** The same procedure with the hostile text in every place where an author can write one. */
function hostileInput(): CardInput {
  const steps = procedure.steps.map((step): Step => {
    const written = {
      ...step,
      section: hostile,
      note: hostile,
      why: hostile,
      notice: hostile,
      caution: hostile,
      warning: hostile,
      danger: hostile,
      see: hostile,
    };
    return 'text' in written ? { ...written, text: hostile } : written;
  });
  return {
    ...input,
    procedure: {
      ...procedure,
      title: hostile,
      appliesTo: hostile,
      revision: hostile,
      purpose: hostile,
      requires: { training: [hostile], protective: [hostile], information: [hostile] },
      steps,
    },
    findings: [{ ...remark, message: hostile }],
    stamp: { ...input.stamp, file: hostile, date: hostile, version: hostile },
  };
}

describe('what an author writes stays text', () => {
  const card = cardHtml(buildCard(hostileInput()));

  test('no tag, script or quote of it reaches the markup', () => {
    expect(card).not.toMatch(/<script|<img|onerror=y>/i);
    expect(nestingProblems(card)).toEqual([]);
    expect(card.match(/<\/style>/g)).toHaveLength(1);
  });

  test('it is still there to be read', () => {
    expect(readText(card)).toContain(`</style><script>alert("1")</script> & 'two' <img src=x onerror=y>`);
  });

  test('it does not get out of the string in the style sheet', () => {
    const style = /<style>([^<]*)<\/style>/.exec(card)?.[1] ?? '';
    expect(style).toMatch(/@bottom-left \{ content: "[A-Za-z0-9 \\]*";/);
    expect(style).not.toContain('body{display:none}');
  });

  test('it is isolated from what stands beside it, also in the foot, where there are no elements', () => {
    const before = Array.from(card.matchAll(/(<[^<>]*>[^<>]*)&lt;\/style&gt;/g), ([, tag = '']) => tag);
    const others = before.filter((tag) => tag !== '<bdi>' && tag !== '<bdi dir="ltr">');
    // The name of the document; a date and a version, which nobody writes in the file.
    expect(others).toEqual(['<title>', '<td>', '<td>Ohmwright ']);
    expect(before.length).toBeGreaterThan(100);
    // U+2068 and U+2069: first strong isolate and its end. Title and revision.
    expect(card.match(/\\2068 (?:(?!\\206)[^"])*\\2069 /g)).toHaveLength(2);
  });

  test('marks that turn the direction of reading come out visible', () => {
    expect(card).not.toMatch(/[\p{Bidi_Control}\u200b]/u);
    expect(card).toContain('[U+202E]desrever[U+202C]');
  });
});

describe('the file stands alone', () => {
  test('no address, no script, nothing that is fetched', () => {
    expect(html).not.toMatch(
      /https?:|\bsrc=|srcset|url\(|@import|@font-face|<script|<link|<iframe|<object|<base\b/i,
    );
    for (const [, target] of html.matchAll(/href="([^"]*)"/g)) expect(target).toMatch(/^#/);
  });

  test('every tag is closed where it was opened', () => {
    expect(nestingProblems(html)).toEqual([]);
    expect(nestingProblems(draft)).toEqual([]);
  });

  test('the check of tags itself finds what is wrong', () => {
    expect(nestingProblems('<p><b>x</p></b>')).not.toEqual([]);
    expect(nestingProblems('<p>a & b</p>')).toEqual(['stray &']);
    expect(nestingProblems('<p>')).toEqual(['<p> is never closed']);
  });

  test('ids are there once, and every link inside the card leads to one', () => {
    const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, target] of html.matchAll(/href="#([^"]*)"/g)) expect(ids).toContain(target);
    for (const [, list] of html.matchAll(/aria-labelledby="([^"]*)"/g))
      for (const id of list?.split(' ') ?? []) expect(ids).toContain(id);
  });

  // WCAG 2.2, technique G141 (from memory): headings follow one another without a level left out.
  test('one first heading, no level of heading is skipped', () => {
    const levels = [...html.matchAll(/<h([1-6])>/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.slice(1).forEach((level, index) => {
      expect(level - (levels[index] ?? 0)).toBeLessThanOrEqual(1);
    });
  });
});

describe('notices', () => {
  // ANSI Z535.6 (from memory): DANGER, WARNING, CAUTION in falling order; the safety alert symbol goes with these three;
  // the notice stands before the step that it is about.
  test('stand before the action of their step, in its block, the gravest first, each with its word', () => {
    const steps = procedure.steps.map((step) =>
      step.number === 9 ? { ...step, note: 'n', notice: 'o', caution: 'c', warning: 'w', danger: 'd' } : step,
    );
    const block = stepBlock(cardHtml(buildCard({ ...input, procedure: { ...procedure, steps } })), 9);
    const order = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'NOTE', 'Unplug connector'].map((word) =>
      block.indexOf(word),
    );
    expect(order).not.toContain(-1);
    expect([...order].sort((left, right) => left - right)).toEqual(order);
    expect(block.match(/class="alert"/g)).toHaveLength(3);
    expect(block.slice(block.indexOf('<div class="notice signal-notice'))).not.toContain('class="alert"');
  });

  test('belong to their step only', () => {
    expect(stepBlock(html, 7)).toContain('enough charge to fire both stages');
    expect(stepBlock(html, 6)).not.toContain('enough charge to fire both stages');
    expect(stepBlock(html, 8)).not.toContain('enough charge to fire both stages');
  });

  test('the fixed panel stands before everything that is to be done', () => {
    const panel = html.indexOf('Airbags and belt tensioners are pyrotechnic');
    expect(panel).toBeGreaterThan(0);
    expect(panel).toBeLessThan(html.indexOf('What is needed'));
    expect(panel).toBeLessThan(html.indexOf('id="step-1"'));
  });
});

describe('a draft', () => {
  test('is marked at the head of every page, across it, and in its title', () => {
    expect(draft).toContain('@top-center { content: "DRAFT \\2d  DO NOT USE\\3a  not released"');
    expect(draft).toMatch(/<p class="draft-mark"[^>]*>DRAFT - DO NOT USE: not released<\/p>/);
    expect(draft).toMatch(/\.draft-mark \{ position: fixed;/);
    expect(draft).toContain('<title>DRAFT - DO NOT USE: not released: Driver front airbag');
  });

  test('never says that it was checked', () => {
    const text = readText(draft);
    expect(text).toContain('This procedure has not been released. Do not use it on a vehicle.');
    expect(text).not.toMatch(/was checked|Checked with/);
  });

  test('a checked card bears no such mark', () => {
    expect(html).not.toMatch(/DRAFT|@top-center/);
    expect(readText(html)).toContain('was checked against the assumptions');
  });
});

describe('on paper', () => {
  test('each page is numbered out of all, and bears the short stamp', () => {
    expect(html).toContain('counter(page) " / " counter(pages)');
    expect(html).toMatch(/@bottom-left \{ content: "[^"]*9f2c4e0b7d1a"/);
    // A comma, then a space that no line breaks at: the date and the stamp stay together.
    expect(html).toContain('17\\2c \\a0 9f2c4e0b7d1a');
  });

  test('a step is not divided, and the paper is the one asked for', () => {
    expect(html).toMatch(/\.step \{ break-inside: avoid;/);
    expect(html).toContain('size: A4 portrait');
    expect(cardHtml(buildCard(input), { paper: 'A5' })).toContain('size: A5 portrait');
  });

  test('the whole SHA-256, version, date and file are printed', () => {
    const text = readText(html);
    for (const value of Object.values(input.stamp)) expect(text).toContain(value);
  });
});

test('marks of direction in a text from right to left stay in its isolation, and nowhere else', () => {
  const title = 'נתק את (K30)\u200f, 1.7..2.3 Ω\u200e';
  const { html } = buildCardOf(coils.replace('Two coils in series', title));
  const isolated = Array.from(html.matchAll(/<bdi[^>]*>(?:(?!<\/bdi>)[^])*<\/bdi>/g), ([piece]) => piece);
  expect(isolated.some((piece) => piece.includes('(K30)\u200f'))).toBe(true);
  let outside = html;
  for (const piece of isolated) outside = outside.replace(piece, '');
  expect(outside).not.toMatch(/\p{Bidi_Control}/u);
  expect(outside).toContain('<title>');
  // In the foot between U+2068 and U+2069.
  expect(html).toMatch(/\\2068 (?:(?!\\2069)[^"])*\\200f (?:(?!\\2068)[^"])*\\2069 /);
});
