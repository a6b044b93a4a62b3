import type { FileId } from '../model/where.ts';

/*
 * Names of files as text: ids are URIs or paths, and `/` stands between their folders. A file has one id, however its
 * name is spelled; what an author wrote stays in messages only.
 */

/** A name taken apart: what it starts from, and the folders on the way, as people write them. */
interface Parsed {
  /** `file://`, `/`, `C:/`; empty for a relative path. */
  readonly root: string;
  readonly isUri: boolean;
  /** No `.`, nothing empty; `..` only at the front of a relative path. */
  readonly steps: readonly string[];
  /** Behind the path of a URI. */
  readonly rest: string;
}

const uri = /^([a-z][a-z0-9+.-]+):(?:\/\/([^/?#]*))?(\/[^?#]*)(.*)$/i;
const drive = /^[A-Za-z]:$/;

/** The one id of a file: `./a//k`, `b/../a/k` and `a/k` are one, and so are `file:///C:/a%20b` and `file:///c%3A/a%20b`. */
export function fileId(name: string): FileId {
  return printed(parsed(name));
}

function parsed(name: string): Parsed {
  const [, scheme, authority = '', path = '', rest = ''] = uri.exec(name) ?? [];
  if (scheme !== undefined) {
    const host = authority.toLowerCase();
    const isHere = scheme.toLowerCase() === 'file' && host === 'localhost';
    const root = `${scheme.toLowerCase()}://${isHere ? '' : host}`;
    return { root, isUri: true, steps: walked(path.split('/').map(decoded), true), rest };
  }
  if (isUnsaved(name)) return { root: name, isUri: false, steps: [], rest: '' };
  const [, root = ''] = /^(\/\/(?=[^/])|\/|[A-Za-z]:\/)/.exec(name) ?? [];
  const steps = walked(name.slice(root.length).split('/'), root !== '');
  return { root: root.toUpperCase(), isUri: false, steps, rest: '' };
}

/** What an editor calls a text that was never saved: it lies nowhere. */
function isUnsaved(id: FileId): boolean {
  return /^untitled:[^/]/.test(id);
}

function printed({ root, isUri, steps, rest }: Parsed): FileId {
  if (!isUri) return root + steps.join('/');
  const [first = '', ...others] = steps;
  const written = [drive.test(first) ? first.toLowerCase() : first, ...others].map(encoded);
  return `${root}/${written.join('/')}${rest}`;
}

function walked(steps: readonly string[], isRooted: boolean): readonly string[] {
  const way: string[] = [];
  for (const step of steps) {
    if (step === '' || step === '.') continue;
    if (step !== '..') way.push(step);
    else if (way.length > 0 && way.at(-1) !== '..') way.pop();
    else if (!isRooted) way.push(step);
  }
  return way;
}

/** What is no UTF-8 stays as it is written. */
function decoded(step: string): string {
  try {
    return decodeURIComponent(step);
  } catch {
    return step;
  }
}

/** As the editors write it: all but letters, digits and `-._~`. Half a surrogate pair names no file and stays. */
function encoded(step: string): string {
  try {
    return encodeURIComponent(step).replace(
      /[!'()*]/g,
      (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
    );
  } catch {
    return step;
  }
}

/** The name of a file without its folders, as people write it. */
export function nameOf(id: FileId): string {
  return parsed(id).steps.at(-1) ?? id;
}

/** The folders of a file and its name as people write them, the same for a path and a URI: what files are sorted by. */
export function wayTo(id: FileId): string {
  return parsed(id).steps.join('/');
}

/**
 * Whether two ids differ in capital and small letters alone. Where the file system does not tell them apart they name one
 * file; on another machine they do not.
 */
export function isOnlyRespelled(id: FileId, onDisk: FileId): boolean {
  const [one, other] = [wayTo(id).normalize(), wayTo(onDisk).normalize()];
  return one !== other && one.toLowerCase() === other.toLowerCase();
}

/** The folder that a file may use others from: the widest of those that it lies in, else its own. */
export function homeOf(file: FileId, folders: readonly FileId[]): FileId {
  const around = folders.filter((folder) => isInside(file, folder));
  return around.sort((a, b) => a.length - b.length)[0] ?? folderOf(file);
}

function folderOf(file: FileId): FileId {
  const { root, isUri, steps } = parsed(file);
  return printed({ root, isUri, steps: steps.slice(0, -1), rest: '' });
}

/** An empty folder is that of relative paths. */
function isInside(file: FileId, folder: FileId): boolean {
  const [inner, outer] = [parsed(file), parsed(folder)];
  return (
    inner.root === outer.root &&
    inner.steps.length > outer.steps.length &&
    inner.steps[outer.steps.length] !== '..' &&
    outer.steps.every((step, at) => inner.steps[at] === step)
  );
}

export type NamedFile =
  | {
      readonly id: FileId;
      /** It lies in there, and nothing that it leads to may lie elsewhere. */
      readonly home: FileId;
    }
  /** A sentence. */
  | { readonly problem: string };

/** The file that a relative name means, seen from a file; inside one of the folders only, else below its own folder. */
export function fileNamed(from: FileId, name: string, folders: readonly FileId[]): NamedFile {
  if (/^(?:\/|\\|[A-Za-z]:|[a-z][a-z0-9+.-]*:)/i.test(name))
    return {
      problem: 'A parts file is named as seen from this file, such as `shared/restraint.parts.yaml`.',
    };
  if (name.includes('\\')) return { problem: 'Write `/` between folders.' };
  if (isUnsaved(from))
    return { problem: 'Save this file first: parts files are named as seen from where it lies.' };
  const { root, isUri, steps } = parsed(from);
  const below = walked([...steps.slice(0, -1), ...name.split('/')], root !== '');
  const id = printed({ root, isUri, steps: below, rest: '' });
  const home = homeOf(from, folders);
  if (!isInside(id, home))
    return { problem: `\`${name}\` lies outside the workspace. Parts files are used from inside it only.` };
  return { id, home };
}
