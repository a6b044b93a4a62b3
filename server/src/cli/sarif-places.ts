import { isAbsolute, relative, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { visible } from '../model/printable.ts';
import type { FileId, StepRef, Where } from '../model/where.ts';
import type { Places } from './json.ts';

/* Places as SARIF 2.1.0 has them: files as URIs, lines and columns from 1 in UTF-16 units. */

/** The folder that URIs are relative to. */
export const sourceRoot = '%SRCROOT%';

export interface ArtifactLocation {
  readonly uri: string;
  readonly uriBaseId?: string;
  /** In the list of checked files. */
  readonly index?: number;
}

interface Region {
  readonly startLine: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

export interface PhysicalLocation {
  readonly artifactLocation: ArtifactLocation;
  readonly region: Region;
}

export interface SarifLocation {
  readonly physicalLocation: PhysicalLocation;
  readonly message?: SarifMessage;
}

export interface SarifMessage {
  readonly text: string;
}

export type LocationOf = (places: Places, where: Where, message?: string) => SarifLocation;

/** What is checked, as URIs: relative to the folder for files below it, else absolute. */
export type ArtifactOf = (file: FileId) => ArtifactLocation;

/** The files that are checked are known by their place in the list of them; others may be named all the same. */
export function artifactsIn(folder: string, files: readonly FileId[]): ArtifactOf {
  const known = new Map<FileId, ArtifactLocation>(
    files.map((file, index) => [file, { ...artifactLocation(folder, file), index }]),
  );
  return (file) => known.get(file) ?? artifactLocation(folder, file);
}

function artifactLocation(folder: string, file: FileId): ArtifactLocation {
  const absolute = resolve(folder, file);
  const below = relative(folder, absolute);
  if (below === '..' || below.startsWith(`..${sep}`) || isAbsolute(below))
    return { uri: pathToFileURL(absolute).href };
  return { uri: below.split(sep).map(encodeURIComponent).join('/'), uriBaseId: sourceRoot };
}

export function locationsIn(artifactOf: ArtifactOf): LocationOf {
  return (places, where, message) => ({
    physicalLocation: { artifactLocation: artifactOf(where.file), region: regionOf(places, where) },
    ...(message === undefined ? {} : { message: sarifMessage(message) }),
  });
}

/** Where a step stands. Many paths lead over the same step. */
export type StepLocationOf = (step: StepRef) => SarifLocation;

export function stepLocationsIn(places: Places, locationOf: LocationOf): StepLocationOf {
  const known = new Map<StepRef, SarifLocation>();
  return (step) => {
    const location = known.get(step) ?? locationOf(places, { file: step.file, path: step.path, part: 'key' });
    known.set(step, location);
    return location;
  };
}

/**
 * Braces stand for arguments in a message (3.11.5), and are doubled where they stand for themselves. `](` makes a link
 * (3.11.6), and a message has none.
 */
export function sarifMessage(text: string): SarifMessage {
  return { text: visible(text).replace(/[{}]/g, '$&$&').replaceAll('](', '] (') };
}

/** Findings never run over a line's end. */
function regionOf(places: Places, where: Where): Region {
  const { start, end } = places.range(where);
  // A byte order mark is no character of the text (3.30.2).
  const mark = start.line === 0 && places.document(where.file).getText().startsWith('\uFEFF') ? 1 : 0;
  return {
    startLine: start.line + 1,
    startColumn: Math.max(1, start.character + 1 - mark),
    endColumn: Math.max(1, end.character + 1 - mark),
  };
}
