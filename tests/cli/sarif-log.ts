import { fileURLToPath, pathToFileURL } from 'node:url';
import { checkSarif } from '../../server/src/cli/check-sarif.ts';
import { checkFile } from '../../server/src/cli/checked.ts';
import type { CheckedFile } from '../../server/src/cli/checked.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/** As much of a SARIF log as the tests look at. */
export interface Log {
  readonly version: string;
  readonly runs: readonly [Run];
}

export interface Run {
  readonly tool: {
    readonly driver: {
      readonly name: string;
      readonly version: string;
      readonly rules: readonly Descriptor[];
    };
  };
  readonly invocations: readonly [
    {
      readonly executionSuccessful: boolean;
      readonly exitCode: number;
      readonly toolExecutionNotifications?: readonly {
        readonly level: string;
        readonly message: { readonly text: string };
      }[];
    },
  ];
  readonly artifacts: readonly { readonly location: Artifact }[];
  readonly results: readonly Result[];
}

export interface Descriptor {
  readonly id: string;
  readonly name?: string;
  readonly shortDescription: { readonly text: string };
  readonly fullDescription: { readonly text: string };
  readonly help: { readonly text: string; readonly markdown: string };
  readonly defaultConfiguration: { readonly level: string };
}

export interface Artifact {
  readonly uri: string;
  readonly uriBaseId?: string;
  readonly index?: number;
}

export interface Location {
  readonly physicalLocation: {
    readonly artifactLocation: Artifact;
    readonly region: { readonly startLine: number; readonly startColumn: number; readonly endColumn: number };
  };
  readonly message?: { readonly text: string };
}

export interface Result {
  readonly ruleId: string;
  readonly ruleIndex: number;
  readonly level: string;
  readonly message: { readonly text: string };
  readonly locations: readonly [Location];
  readonly relatedLocations?: readonly Location[];
  readonly codeFlows?: readonly [
    {
      readonly threadFlows: readonly [
        {
          readonly locations: readonly {
            readonly location: Location;
            readonly kinds?: readonly string[];
            readonly nestingLevel: number;
            readonly executionOrder: number;
            readonly importance: string;
          }[];
        },
      ];
    },
  ];
  readonly partialFingerprints: Readonly<Record<string, string>>;
  readonly suppressions: readonly {
    readonly kind: string;
    readonly justification: string;
    readonly location: Location;
  }[];
  readonly properties?: Readonly<Record<string, string>>;
}

/** The folder that the logs of these tests are written in. */
export const folder = '/workshop';

/** Texts by their names, checked. */
export function checkedTexts(texts: Readonly<Record<string, string>>): readonly CheckedFile[] {
  const snapshot = snapshotOf(Object.entries(texts).map(([id, text]) => ({ id, text })));
  return Object.keys(texts).map((id) => checkFile(analyse(snapshot, id)));
}

export function logOf(checked: readonly CheckedFile[]): Log {
  return parsed([...checkSarif({ checked, problems: [], exit: 1, folder })].join(''));
}

export function parsed(text: string): Log {
  return JSON.parse(text) as Log;
}

/** The file that an artifact is, by the standard's resolution of a URI against its base (RFC 3986, 5). */
export function fileOf({ uri, uriBaseId }: Artifact, base: string): string {
  return fileURLToPath(uriBaseId === undefined ? uri : new URL(uri, pathToFileURL(`${base}/`)));
}

/** What a region covers, counted as the standard does (3.30.2): lines and columns from 1, no byte order mark. */
export function textAt(text: string, { physicalLocation: { region } }: Location): string {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  return lines[region.startLine - 1]?.slice(region.startColumn - 1, region.endColumn - 1) ?? '';
}
