/* What a file is, by the ending of its name. The only place that knows the endings. */

export type FileKind = 'procedure' | 'parts';

/** JSON is read by the same reader: it is YAML. */
const formats = ['yaml', 'yml', 'json'] as const;

/** The endings of each kind, the usual one first. */
export const endings: Readonly<Record<FileKind, readonly string[]>> = {
  procedure: formats.map((format) => `.procedure.${format}`),
  parts: formats.map((format) => `.parts.${format}`),
};

const kinds = Object.keys(endings) as FileKind[];

/** The kind that a name says; null: it says none. The letters count as they are written: `.parts.yaml`, not `.Parts.YAML`. */
export function fileKindOf(name: string): FileKind | null {
  return kinds.find((kind) => endings[kind].some((ending) => name.endsWith(ending))) ?? null;
}

/** Whether a name would say a kind, were it written in small letters. */
export function isInAnotherCase(name: string): boolean {
  return fileKindOf(name) === null && fileKindOf(name.toLowerCase()) !== null;
}

/**
 * Whether a file is checked as a parts file, in whatever case its name is written; every other file that is named or
 * opened is checked as a procedure.
 */
export function isPartsFile(name: string): boolean {
  return fileKindOf(name.toLowerCase()) === 'parts';
}

/** Whether other programs will read the file as JSON. */
export function isJson(name: string): boolean {
  return name.toLowerCase().endsWith('.json');
}

/** The name of a file without the ending that says its kind: `brake` of `brake.procedure.yaml`. */
export function nameWithoutKind(name: string): string {
  const lower = name.toLowerCase();
  const ending = kinds.flatMap((kind) => endings[kind]).find((one) => lower.endsWith(one)) ?? '';
  return name.slice(0, name.length - ending.length);
}
