import type { ErrorCode } from 'yaml';

/*
 * The parser's own sentences are about YAML; these are about the file. One sentence an error code, saying what to do.
 */

export const indentedFurther =
  'This line is indented further than the one above, which has its value already. Keys that belong together start in the same column.';

/** What the parser takes for a key, or lets stand without one, and the format does not. */
export const aboutKeys = {
  noWord: 'A key is a word, followed by `:`.',
  beforeColon:
    'No key stands before this `:`, so what follows it is not read. Write the key, or remove what follows.',
  behindMark: 'No key stands behind this `?`. Write `key: value`, or remove it.',
  overLines: 'This key goes on in the next line. A key stands on one line: `key: value`.',
  runTogether:
    'This line and the next one run together into one key. A comma or a `:` is missing between them.',
};

/** What the parser says about a code, or null where another finding says it already. */
export function sentenceFor(code: ErrorCode, message: string): string | null {
  switch (code) {
    case 'TAB_AS_INDENT':
      return 'A tab stands in the indentation. Use spaces.';
    case 'BLOCK_AS_IMPLICIT_KEY':
      return message.startsWith('Nested mappings')
        ? 'A second `: ` on one line starts another key. Put the text in quotes if the colon belongs to it.'
        : 'A list or map cannot start on this line. Put it on the next line, indented.';
    case 'MULTILINE_IMPLICIT_KEY':
      return 'This line has no `:` after its key. Write `key: value`.';
    case 'BAD_INDENT':
      return 'The indentation fits neither the lines above nor below. Lines that belong together start in the same column.';
    case 'MISSING_CHAR':
      return missing(message);
    case 'BAD_SCALAR_START':
      return 'Text cannot start with this character. Put it in quotes.';
    case 'BAD_DQ_ESCAPE':
      return 'In double quotes a backslash starts an escape, and this is none. Use single quotes, or write two backslashes.';
    case 'UNEXPECTED_TOKEN':
      return unexpected(message);
    case 'BLOCK_IN_FLOW':
      return 'Inside brackets everything is separated by commas. A list with `-` or an indented map cannot stand here.';
    case 'KEY_OVER_1024_CHARS':
      return 'A key is too long. Is a `:` or a closing quote missing?';
    case 'RESOURCE_EXHAUSTION':
      return 'Lists and maps are nested too deeply.';
    case 'MULTIPLE_DOCS':
      return 'A file holds one procedure. Remove what stands after `---`, or put it in a file of its own.';
    case 'NON_STRING_KEY':
      return aboutKeys.noWord;
    case 'ALIAS_PROPS':
    case 'BAD_ALIAS':
    case 'BAD_COLLECTION_TYPE':
    case 'BAD_DIRECTIVE':
    case 'BAD_PROP_ORDER':
    case 'MULTIPLE_ANCHORS':
    case 'MULTIPLE_TAGS':
    case 'TAG_RESOLVE_FAILED':
      return null;
    case 'DUPLICATE_KEY':
      return null;
    case 'IMPOSSIBLE':
      return 'This cannot be read as YAML.';
  }
}

function missing(message: string): string {
  if (message.includes('without - indicator')) {
    return 'This line belongs to no list item. Start it with `- `, or indent it like the keys of the item above.';
  }
  if (message.includes(',')) return 'A comma is missing between two items.';
  if (message.includes('followed by map values'))
    return 'This line has no `:` after its key. Write `key: value`.';
  return 'A character is missing here. Is a bracket, a quote or a `:` left out?';
}

function unexpected(message: string): string {
  if (message.includes('block-seq-ind on same line')) {
    return 'A list with `-` starts on the line below its key. On one line write `[a, b]`.';
  }
  if (message.includes('at node end')) {
    return 'This stands behind a complete value. Is it indented wrongly, or is a quote or comma missing?';
  }
  if (message.includes('map-end') || message.includes('seq-end')) {
    return 'This bracket closes nothing.';
  }
  return 'This does not belong here. Is a bracket or a quote left out before it?';
}
