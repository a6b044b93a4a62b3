/** A file as its host names it: a URI or a relative path. */
export type FileId = string;

/** The way from the root of a document to one of its nodes: `['steps', 12, 'unplug']`. */
export type Path = readonly (string | number)[];

/** A place in a file, as the engine speaks of it. Only `text/` turns it into offsets. */
export interface Where {
  readonly file: FileId;
  readonly path: Path;
  /** Whether the key or the value at the path is meant. A list item has a value only. */
  readonly part: 'key' | 'value';
  /** A stretch inside the scalar, in UTF-16 units of its value. At the empty path: a stretch of the file. */
  readonly within?: readonly [from: number, to: number];
}

/** A half-open stretch of a file, in UTF-16 offsets. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** A step as people name it. */
export interface StepRef {
  readonly file: FileId;
  /** `['steps', 12]`. */
  readonly path: Path;
  /** From 1 in its list, sections not counted: the number on the card. */
  readonly number: number;
  readonly id?: string;
  readonly routine?: string;
  /** The `run` steps that lead here, outermost first. */
  readonly calls: readonly StepRef[];
}

/** A step by what names it, without the rest of it. */
export function refTo({ file, path, number, id, routine, calls }: StepRef): StepRef {
  return {
    file,
    path,
    number,
    ...(id === undefined ? {} : { id }),
    ...(routine === undefined ? {} : { routine }),
    calls,
  };
}

/** The key of an entry among all files: `connectors/K30`. */
export function sectionAndId([section, id]: Path): string {
  return `${section ?? ''}/${id ?? ''}`;
}

/** The number of a step as it is printed: those of the calls that lead to it before its own, `5.2`. */
export function stepNumber({ number, calls }: Pick<StepRef, 'number' | 'calls'>): string {
  return [...calls.map((call) => call.number), number].join('.');
}
