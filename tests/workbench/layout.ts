import type { Page } from 'playwright-core';

/** What is wrong with the layout of a card, in words; empty where nothing is. */
export async function faultsOfLayout(page: Page): Promise<readonly string[]> {
  return await page.evaluate<readonly string[]>(inPage);
}

/** It runs in the page and is a text, so that the tests need no types of a browser. Less than `slack` pixels is rounding. */
const inPage = `(() => {
  const slack = 1;
  const boxOf = (element) => {
    const range = document.createRange();
    range.selectNodeContents(element);
    return range.getBoundingClientRect();
  };
  const said = (element) => element.textContent.trim().slice(0, 40);
  const all = (selector) => [...document.querySelectorAll(selector)];

  const upon = all('.body')
    .flatMap((body) => [...body.children])
    .filter((child) => {
      const before = child.previousElementSibling;
      return before !== null && boxOf(child).top < boxOf(before).bottom - slack;
    })
    .map((child) => 'upon what stands before it: ' + said(child));
  const beside = all('.row')
    .filter((row) => boxOf(row.querySelector('.number')).right > boxOf(row.querySelector('.action')).left)
    .map((row) => 'number into the action: ' + said(row));
  // Words in pieces of a few letters stand in a column that is too narrow for them.
  const squeezed = all('.label, .when, .then, th, td')
    .filter((element) => {
      const { width, height } = boxOf(element);
      const size = parseFloat(getComputedStyle(element).fontSize);
      return said(element) !== '' && height > 2.5 * size && width < 3 * size;
    })
    .map((element) => 'squeezed: ' + said(element));
  const page = document.documentElement.clientWidth;
  const outside = all('body *:not(.draft-mark, .unseen)')
    .filter((element) => element.getBoundingClientRect().right > page + slack)
    .map((element) => 'beyond the edge: ' + said(element));
  return [...upon, ...beside, ...squeezed, ...outside];
})()`;
