/**
 * What is wrong with the nesting of a document in which every tag is closed, as XML wants it. Empty where nothing is. It
 * knows only what a card may contain: no comments, no CDATA, text with its marks escaped.
 */
export function nestingProblems(html: string): readonly string[] {
  const problems: string[] = [];
  const open: string[] = [];
  const body = html.replace(/^<!doctype html>/, '').replace(/<style>[^<]*<\/style>/, '');
  const attributes = String.raw`(?:\s+[A-Za-z-]+="[^"<>]*")*`;
  const tag = new RegExp(String.raw`<(\/?)([A-Za-z][A-Za-z0-9]*)${attributes}\s*(\/?)>`, 'g');
  const rest = body.replaceAll(tag, (_, closing: string, name: string, empty: string) => {
    if (closing === '/') {
      const expected = open.pop();
      if (expected !== name) problems.push(`</${name}> where </${expected ?? 'nothing'}> was due`);
    } else if (empty === '') open.push(name);
    return '';
  });
  for (const name of open) problems.push(`<${name}> is never closed`);
  for (const stray of rest.match(/[<>]|&(?!(?:amp|lt|gt|quot|#39);)/g) ?? []) problems.push(`stray ${stray}`);
  return problems;
}

/** The text of a document as it is read, markup taken out. */
export function readText(html: string): string {
  return html
    .replace(/<style>[^<]*<\/style>/, '')
    .replaceAll(/<(?:\/?)(?:b|strong|a|span)(?:\s[^>]*)?>/g, '')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ');
}

/** The block of one step, its notices included. */
export function stepBlock(html: string, number: number): string {
  const from = html.indexOf(`id="step-${number}"`);
  const next = html.indexOf('<li class="step', from);
  return html.slice(from, next === -1 ? undefined : next);
}
