import { nameWithoutKind, visible } from '../../server/src/protocol/messages.ts';
import { count } from './status/figures-text.ts';

/** `brake` of `/vans/brake.procedure.yaml`; the path is one of a URI. */
export function procedureName(path: string): string {
  const file = path.slice(path.lastIndexOf('/') + 1);
  return visible(nameWithoutKind(file));
}

/** Year, month and day where the user is, as the card prints them. */
export function dateText(now: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Why there is no card; it can also be refused without an error, where a bound was met. */
export function refusal(errors: number): string {
  const why = errors > 0 ? `there are ${count(errors, 'error')}` : 'not everything could be checked';
  return `The card is refused: ${why}.`;
}

export function written(path: string, draft: boolean): string {
  return shown(`${draft ? 'Draft of the card' : 'Card'} written to ${path}. Print it from a browser.`);
}

export function notWritten(path: string, why: string): string {
  return shown(`The card was not written to ${path}: ${why.replace(/\.$/, '')}.`);
}

/** What a message of the editor may say of a file: visible, and no link, which the editor would make of \`[x](y)\`. */
function shown(text: string): string {
  return visible(text).replaceAll('](', '] (');
}

export const notOpen =
  'There is no card of this file: it is not open as an Ohmwright procedure, NAME.procedure.yaml.';

export const notChecked =
  'There is no card, and no draft of it: Ohmwright failed while it checked the file. The error at the top of the file says what to do.';

export const failed =
  'There is no card: the language server failed while it made it. The output channel Ohmwright says why.';
