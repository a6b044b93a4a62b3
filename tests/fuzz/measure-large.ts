import { largeTexts, fullSize } from './large-texts.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { finish } from '../../server/src/bench/work.ts';
import { card } from '../../server/src/project/card.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { complete } from '../../server/src/editor/completion.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { outline } from '../../server/src/editor/outline.ts';
import { diagnosticsOf } from '../../server/src/editor/diagnostics.ts';
import { hintTexts, inlayHints } from '../../server/src/editor/inlay-hints.ts';
import { checkJson } from '../../server/src/cli/check-json.ts';
import { checkSarif } from '../../server/src/cli/check-sarif.ts';
import { parseDocument } from 'yaml';

const [wanted, sizeArg] = process.argv.slice(2);
if (wanted === 'list') {
  console.log(largeTexts.map(({ name }) => name).join('\u0000'));
  process.exit(0);
}
const one = largeTexts.find(({ name }) => name === wanted);
if (one === undefined) throw new Error('no ' + wanted);
const size = Number(sizeArg ?? fullSize);
const text = one.make(size);
const times: [string, number][] = [];
function t<T>(name: string, f: () => T): T {
  const s = process.cpuUsage();
  process.stdout.write(name + ' ');
  const r = f();
  const c = process.cpuUsage(s);
  const d = (c.user + c.system) / 1000;
  times.push([name, d]);
  process.stdout.write(d.toFixed(0) + '  ');
  return r;
}
const id = 'file:///a.procedure.yaml';
try {
  if (process.argv[4] === 'yaml') t('yaml', () => parseDocument(text));
} catch (e) {
  process.stdout.write('THROW ' + String(e).slice(0, 100));
}
const ar = () => {
  const analysis = analyse(snapshotOf([{ id, text }]), id);
  return analysis;
};
const an = ar();
function go<T>(name: string, f: () => T): T | undefined {
  try {
    return t(name, f);
  } catch (e) {
    process.stdout.write('THROW ' + (e as Error).stack?.slice(0, 300) + ' ');
    return undefined;
  }
}
go('text', () => an.procedure());
const findings = go('order', () => finish(an.findings('order'))) ?? [];
process.stdout.write(`(${findings.length}) `);
const doc = { text: TextDocument.create(id, 'x', 1, text), analysis: an };
let k = 0;
const pos = () => {
  k = (k + 0.618) % 1;
  return doc.text.positionAt(Math.floor(k * text.length));
};
go('complete', () => {
  for (let i = 0; i < 3; i++) complete(doc, pos(), { snippets: true });
});
go('hover', () => {
  for (let i = 0; i < 3; i++) finish(hover(doc, pos()));
});
go('outline', () => outline(doc));
go('diags', () => diagnosticsOf(doc, findings, { related: true, descriptionOf: () => null }));
go('hints', () => {
  const r = finish(an.windows()).value;
  const o = finish(an.order()).value;
  const n = hintTexts(doc, r, o);
  return inlayHints(doc, { start: { line: 0, character: 0 }, end: { line: 1e7, character: 0 } }, n, n);
});
go('json', () => {
  let n = 0;
  for (const p of checkJson([{ analysis: an, findings, complete: true }])) n += p.length;
  return n;
});
go('sarif', () => {
  let n = 0;
  for (const p of checkSarif({
    checked: [{ analysis: an, findings, complete: true }],
    problems: [],
    exit: 0,
    folder: '/',
  }))
    n += p.length;
  return n;
});
go('card', () => {
  const made = finish(card(an, { date: '2031-04-17', version: '0', draft: true }));
  return 'card' in made ? cardHtml(made.card).length : 0;
});
console.log();
