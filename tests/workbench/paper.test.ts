import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { describeWith } from '../needs.ts';
import { browser, inProject, lacksBrowser } from './paths.ts';
import { faultsOfLayout } from './layout.ts';

/* Cards as a browser lays them out in the width of the paper: no words upon others, none cut apart, none outside. */

const shipped = ['coolant-sensor', 'driver-airbag-resistance', 'interlock-open', 'two-wire-bus'].map(
  (name) => [name, readFileSync(inProject(`procedures/${name}.procedure.yaml`), 'utf8')] as const,
);

/** Long names, and scripts in which a line may break anywhere. */
const stretched = shipped.map(
  ([name, text]) =>
    [
      `${name}, long names`,
      text
        .replaceAll(/\bhand-meter\b/g, 'the-insulation-tester-of-the-second-workbench')
        .replaceAll(/\b(control|engine|vehicle)-unit\b/g, 'ControlUnitOfTheOccupantRestraintSystem-front')
        .replaceAll(/\bbus-high\b/g, 'node-of-the-high-wire-at-the-socket-for-the-tool')
        .replace(
          /^title: .*/m,
          'title: 冷却水温度センサー回路の抵抗値が温度に合わない場合の点検手順 - проверка цепи',
        )
        .replaceAll(
          /^ {4}(why|note|warning): .*/gm,
          '    $1: 作業中は絶対に触れないでください。Не прикасаться к разъёму во время работы.',
        ),
    ] as const,
);

/** Between the margins, in CSS pixels of 1/96 inch. */
const papers = [
  ['A4', (182 / 25.4) * 96],
  ['A5', (130 / 25.4) * 96],
] as const;

const cases = [...shipped, ...stretched].flatMap(([name, text]) =>
  papers.map(([paper, width]) => [name, paper, text, width] as const),
);

describeWith(lacksBrowser, 'on paper', () => {
  let chrome: Browser;
  beforeAll(async () => {
    chrome = await chromium.launch({
      executablePath: browser ?? '',
      args: ['--no-sandbox', '--disable-gpu', '--no-first-run'],
    });
  });
  afterAll(async () => {
    await chrome.close();
  });

  test.each(cases)('%s on %s', async (_name, paper, text, width) => {
    const page = await chrome.newPage({ viewport: { width: Math.floor(width), height: 800 } });
    await page.emulateMedia({ media: 'print' });
    await page.setContent(htmlOf(text, paper));
    expect(await faultsOfLayout(page)).toEqual([]);
    await page.close();
  });

  // Unicode Standard Annex 9 (from memory): numbers with a neutral between them turn round in a text from right to left.
  test.each([
    ['Hebrew', 'המתן 1.7..2.3 Ω ואז 12 V'],
    ['Arabic', 'انتظر 1.7..2.3 Ω ثم 12 V'],
  ])('a text in %s turns no amount round', async (_name, said) => {
    const text = (shipped.find(([name]) => name === 'coolant-sensor')?.[1] ?? '')
      .replace(/^title: .*/m, `title: ${said}`)
      .replace(/^ {4}(why|note|warning): .*/gm, `    $1: ${said}`);
    const page = await chrome.newPage();
    await page.setContent(htmlOf(text, 'A4'));
    const { turned, straight } = await page.evaluate<{
      readonly turned: readonly string[];
      readonly straight: number;
    }>(amountsInPage);
    expect(turned).toEqual([]);
    expect(straight).toBeGreaterThan(5);
    await page.close();
  });
});

/** It runs in the page. An amount is turned round if its last character does not stand right of its first. */
const amountsInPage = `(() => {
  const leftOf = (node, at) => {
    const range = document.createRange();
    range.setStart(node, at);
    range.setEnd(node, at + 1);
    return range.getBoundingClientRect().left;
  };
  const all = [...document.querySelectorAll('bdi .amount')].map(({ firstChild }) => firstChild);
  const turned = all.filter((node) => leftOf(node, 0) >= leftOf(node, node.length - 1));
  return { turned: turned.map((node) => node.data), straight: all.length - turned.length };
})()`;

function htmlOf(text: string, paper: 'A4' | 'A5'): string {
  const analysis = analyse(snapshotOf([{ id: 'one.procedure.yaml', text }]), 'one.procedure.yaml');
  const made = finish(card(analysis, { date: '28 November 2026', version: '0.0.0', draft: false }));
  if ('refused' in made) throw new Error(made.refused.map(({ message }) => message).join('\n'));
  return cardHtml(made.card, { paper });
}
