import type { PassedBecause, PassedOver } from '../host/walk.ts';

/* What a walk through folders passes over, in words: `2 links (a, b), 1 hidden folder (.git)`. */

/** One and several of each, in the order in which they are told. */
const words: Readonly<Record<PassedBecause, readonly [one: string, several: string]>> = {
  'other-case': ['name in another case', 'names in another case'],
  link: ['link', 'links'],
  'hidden-file': ['hidden file', 'hidden files'],
  'hidden-folder': ['hidden folder', 'hidden folders'],
  'node-modules': ['node_modules folder', 'node_modules folders'],
  'no-file': ['pipe, socket or device', 'pipes, sockets or devices'],
  unreadable: ['that could not be read', 'that could not be read'],
};

/** No more names of a kind than this are written out. */
const mostNames = 4;

export interface PassedGroup {
  readonly why: PassedBecause;
  readonly words: string;
  readonly paths: readonly string[];
}

/** By the reason, each with how many there are and the first of their names. */
export function passedGroups(passedOver: readonly PassedOver[]): readonly PassedGroup[] {
  return (Object.keys(words) as PassedBecause[]).flatMap((why) => {
    const paths = passedOver.filter((one) => one.why === why).map(({ path }) => path);
    if (paths.length === 0) return [];
    const [one, several] = words[why];
    return [
      { why, words: `${paths.length} ${paths.length === 1 ? one : several} (${namesOf(paths)})`, paths },
    ];
  });
}

/** The first of several names. */
export function namesOf(paths: readonly string[]): string {
  return `${paths.slice(0, mostNames).join(', ')}${paths.length > mostNames ? ', …' : ''}`;
}

export function passedOverInWords(passedOver: readonly PassedOver[]): string {
  return passedGroups(passedOver)
    .map((group) => group.words)
    .join(', ');
}
