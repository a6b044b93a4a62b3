import { visible } from '../../../server/src/protocol/messages.ts';

/** A page that says one thing in place of a card, in the colours and the face that the editor gives to every page. */
export function messagePage(heading: string, text: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8" />
<meta http-equiv="Content-Security-Policy" content="default-src 'none'" />
<title>${escapeText(heading)}</title>
</head>
<body>
<h1>${escapeText(heading)}</h1>
<p role="status">${escapeText(text)}</p>
</body>
</html>
`;
}

function escapeText(text: string): string {
  return visible(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
