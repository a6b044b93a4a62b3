import * as circuit from './circuit.ts';
import * as instruments from './instruments.ts';
import * as parts from './parts.ts';
import { partsShell, routineShell, shell, waiver } from './procedure.ts';
import * as sources from './sources.ts';
import * as steps from './steps.ts';

/** Every definition that an entry of a file is checked against, by the name it has in the JSON Schema. */
export const definitions = {
  shell,
  'parts-shell': partsShell,
  ...sources.sourceDefinitions,
  ...instruments.instrumentDefinitions,
  ...parts.loadDefinitions,
  ...parts.partDefinitions,
  connector: circuit.connector,
  loop: circuit.loop,
  'network-part': circuit.networkPart,
  'network-connector': circuit.networkConnector,
  'network-source': circuit.networkSource,
  entry: circuit.entry,
  routine: routineShell,
  waiver,
  section: steps.section,
  ...steps.stepDefinitions,
} as const;

export type DefinitionName = keyof typeof definitions;
