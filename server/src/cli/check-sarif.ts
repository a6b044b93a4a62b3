import type { Analysis } from '../project/analysis.ts';
import { withPaths } from '../bench/told-path.ts';
import { isShown } from '../model/finding.ts';
import type { Finding } from '../model/finding.ts';
import { visible } from '../model/printable.ts';
import { stepNumber } from '../model/where.ts';
import type { PassedOver } from '../host/walk.ts';
import type { CheckedFile } from './checked.ts';
import { jsonText, placesOf } from './json.ts';
import { passedGroups } from './passed-over.ts';
import type { Places } from './json.ts';
import { codeFlows } from './sarif-path.ts';
import { artifactsIn, locationsIn, sarifMessage, sourceRoot, stepLocationsIn } from './sarif-places.ts';
import type { ArtifactOf, LocationOf } from './sarif-places.ts';
import { descriptors, levelOf, ruleIndex } from './sarif-rules.ts';
import type { Exit } from './terminal.ts';
import { version } from '../project/version.ts';
import { nothingUnwritten } from './unwritten.ts';
import type { Pieces } from './unwritten.ts';

export interface SarifRun {
  readonly checked: readonly CheckedFile[];
  /** One line for each file that could not be read. */
  readonly problems: readonly string[];
  /** What was found in folders and not read. */
  readonly passedOver?: readonly PassedOver[];
  /** If all can be written. */
  readonly exit: Exit;
  /** The folder that the program runs in: files below it are named from there. */
  readonly folder: string;
}

const schema = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';

/**
 * One SARIF 2.1.0 log of one run, in pieces, a line for each result. Nothing in it depends on when it is written. How the
 * run ended stands behind the results.
 */
export function* checkSarif(run: SarifRun): Pieces {
  const unwritten = nothingUnwritten();
  const { checked, folder } = run;
  const artifactOf = artifactsIn(
    folder,
    checked.map(({ analysis }) => analysis.file),
  );
  yield `${jsonText({ $schema: schema, version: '2.1.0' }).slice(0, -1)},"runs":[\n`;
  yield `${jsonText(headOf(run, artifactOf)).slice(0, -1)},"results":[`;
  const locationOf = locationsIn(artifactOf);
  let separator = '\n';
  for (const { analysis, findings } of checked) {
    const places = placesOf(analysis);
    const stepLocationOf = stepLocationsIn(places, locationOf);
    const { value: procedure } = analysis.procedure();
    for (const finding of withPaths(findings.filter(isShown))) {
      const line = unwritten.attempt(analysis.file, () => {
        const flows = codeFlows(procedure, stepLocationOf, finding.trace);
        return jsonText(resultOf(places, locationOf, finding, flows));
      });
      if (line === null) continue;
      yield separator + line;
      separator = ',\n';
    }
  }
  yield `],"invocations":[${jsonText(invocationOf(run, unwritten.problems(), artifactOf))}]}]}\n`;
  return unwritten.problems();
}

function invocationOf(
  { checked, problems, passedOver = [], exit }: SarifRun,
  unwritten: readonly string[],
  artifactOf: ArtifactOf,
): Record<string, unknown> {
  const failures = [
    ...[...problems, ...unwritten].map((problem) => ({ level: 'error', message: sarifMessage(problem) })),
    ...checked
      .filter(({ complete }) => !complete)
      .map(({ analysis }) => ({
        level: 'error',
        message: sarifMessage(whyNotAll(analysis)),
        locations: [{ physicalLocation: { artifactLocation: artifactOf(analysis.file) } }],
      })),
  ];
  const notes = passedGroups(passedOver.filter(({ why }) => why !== 'unreadable')).map(
    ({ words, paths }) => ({
      level: 'note',
      message: sarifMessage(`Passed over: ${words}.`),
      locations: paths.map((path) => ({ physicalLocation: { artifactLocation: artifactOf(path) } })),
    }),
  );
  const notifications = [...failures, ...notes];
  return {
    executionSuccessful: failures.length === 0,
    exitCode: unwritten.length > 0 ? 2 : exit,
    ...(notifications.length === 0 ? {} : { toolExecutionNotifications: notifications }),
  };
}

function whyNotAll(analysis: Analysis): string {
  const failure = analysis.failure();
  return failure === null
    ? 'Not every path was followed: a bound was met.'
    : `The file was not checked to its end, because Ohmwright itself failed: ${failure.message}.`;
}

function headOf({ checked }: SarifRun, artifactOf: ArtifactOf): Record<string, unknown> {
  return {
    tool: { driver: { name: 'Ohmwright', version, semanticVersion: version, rules: descriptors() } },
    columnKind: 'utf16CodeUnits',
    newlineSequences: ['\r\n', '\n', '\r'],
    originalUriBaseIds: {
      [sourceRoot]: { description: { text: 'The folder that the check was run in.' } },
    },
    artifacts: checked.map(({ analysis }) => ({
      location: artifactOf(analysis.file),
      roles: ['analysisTarget'],
    })),
  };
}

function resultOf(
  places: Places,
  locationOf: LocationOf,
  finding: Finding,
  flows: readonly unknown[],
): Record<string, unknown> {
  const { rule, severity, message, at, step, subject, related, waived, key } = finding;
  const others = distinct(related.map((one) => locationOf(places, one.at, one.message)));
  const properties = {
    ...(step === undefined ? {} : { step: stepNumber(step) }),
    ...(subject === undefined ? {} : { subject }),
    ...(finding.consequences === undefined ? {} : { consequences: finding.consequences }),
  };
  return {
    ruleId: rule,
    ruleIndex: ruleIndex(rule),
    level: levelOf(severity),
    message: sarifMessage(message),
    locations: [locationOf(places, at)],
    ...(others.length === 0 ? {} : { relatedLocations: others }),
    ...(flows.length === 0 ? {} : { codeFlows: flows }),
    partialFingerprints: { 'findingKey/v1': key },
    // On every result, or on none (3.27.23).
    suppressions:
      waived === undefined
        ? []
        : [
            {
              kind: 'inSource',
              justification: visible(waived.reason),
              location: locationOf(places, waived.at),
            },
          ],
    ...(Object.keys(properties).length === 0 ? {} : { properties }),
  };
}

/** Related locations are a set (3.27.22). */
function distinct<T>(items: readonly T[]): readonly T[] {
  const byText = new Map(items.map((item) => [jsonText(item), item]));
  return [...byText.values()];
}
