import { withPaths } from '../bench/told-path.ts';
import type { Finding } from '../text/finding.ts';
import { stepNumber } from '../text/where.ts';
import type { CheckedFile } from './checked.ts';
import { placesOf } from './json.ts';
import type { Places } from './json.ts';
import { codeFlows } from './sarif-path.ts';
import { artifactsIn, locationsIn, sarifMessage, sourceRoot, stepLocationsIn } from './sarif-places.ts';
import type { ArtifactOf, LocationOf } from './sarif-places.ts';
import { descriptors, levelOf, ruleIndex } from './sarif-rules.ts';
import type { Exit } from './terminal.ts';
import { version } from './version.ts';

export interface SarifRun {
  readonly checked: readonly CheckedFile[];
  /** One line for each file that could not be read. */
  readonly problems: readonly string[];
  readonly exit: Exit;
  /** The folder that the program runs in: files below it are named from there. */
  readonly folder: string;
}

const schema = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';

/** One SARIF 2.1.0 log of one run, in pieces, a line for each result. Nothing in it depends on when it is written. */
export function* checkSarif(run: SarifRun): Generator<string> {
  const { checked, folder } = run;
  const artifactOf = artifactsIn(
    folder,
    checked.map(({ analysis }) => analysis.file),
  );
  yield `${JSON.stringify({ $schema: schema, version: '2.1.0' }).slice(0, -1)},"runs":[\n`;
  yield `${JSON.stringify(headOf(run, artifactOf)).slice(0, -1)},"results":[`;
  const locationOf = locationsIn(artifactOf);
  let separator = '\n';
  for (const { analysis, findings } of checked) {
    const places = placesOf(analysis);
    const stepLocationOf = stepLocationsIn(places, locationOf);
    const { value: procedure } = analysis.procedure();
    for (const finding of withPaths(findings)) {
      const flows = codeFlows(procedure, stepLocationOf, finding.trace);
      yield separator + JSON.stringify(resultOf(places, locationOf, finding, flows));
      separator = ',\n';
    }
  }
  yield ']}]}\n';
}

function headOf({ checked, problems, exit }: SarifRun, artifactOf: ArtifactOf): Record<string, unknown> {
  const bounded = checked.filter(({ complete }) => !complete).map(({ analysis }) => analysis.file);
  const notifications = [
    ...problems.map((problem) => ({ level: 'error', message: sarifMessage(problem) })),
    ...bounded.map((file) => ({
      level: 'error',
      message: sarifMessage('Not every path was followed: a bound was met.'),
      locations: [{ physicalLocation: { artifactLocation: artifactOf(file) } }],
    })),
  ];
  return {
    tool: { driver: { name: 'Ohmwright', version, semanticVersion: version, rules: descriptors() } },
    invocations: [
      {
        executionSuccessful: notifications.length === 0,
        exitCode: exit,
        ...(notifications.length === 0 ? {} : { toolExecutionNotifications: notifications }),
      },
    ],
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
        : [{ kind: 'inSource', justification: waived.reason, location: locationOf(places, waived.at) }],
    ...(Object.keys(properties).length === 0 ? {} : { properties }),
  };
}

/** Related locations are a set (3.27.22). */
function distinct<T>(items: readonly T[]): readonly T[] {
  const byText = new Map(items.map((item) => [JSON.stringify(item), item]));
  return [...byText.values()];
}
