import { circuit } from '../../../server/src/rules/examples.ts';
import { draftText, giveBack, makeSafe, readOnly } from './circuits.ts';
import type { Changes } from './circuits.ts';
import type { Draft } from './drafts.ts';

/*
 * Drafts that define something and leave it out of every circuit, so that nothing is proven of it. Kinds of mistakes:
 * common practice, no source.
 */

const stage2 = '  stage-2: { kind: initiator, resistance: 1.7..2.3 Ω, live: true }\n';
const twoStages: Changes = { parts: circuit.parts + stage2 };

const library = `format: 1
parts:
${stage2}connectors:
  K31: { contact: 2..15 mΩ }
sources:
  spare: { kind: battery, voltage: 12 V, feeds: [K31], wait: 1 min }
assemblies:
  module: [stage-2, K31]
`;

const taken = { uses: 'uses: [workshop.parts.yaml]\n' };

const replaced = (what: string): string =>
  `${makeSafe}  - unplug: K30\n  - replace: ${what}\n    warning: It can fire.\n  - plug: K30\n${giveBack}`;

export const leftOut: readonly Draft[] = [
  {
    story: 'the second stage of the airbag stands in no loop',
    text: draftText(readOnly, twoStages),
    must: ['error - in-no-circuit stage-2'],
  },
  {
    story: 'a section of high voltage stands in no loop',
    text: draftText(readOnly, {
      parts: `${circuit.parts}  inverter: { kind: hv-section, voltage: 400 V, resistance: 100 kΩ ± 5 %, live: true }\n`,
    }),
    must: ['error - in-no-circuit inverter'],
  },
  {
    story: 'an inert stage, a heater and a cable that stand nowhere are nothing to fear',
    text: draftText(readOnly, {
      parts: `${circuit.parts}  trainer: { kind: initiator, resistance: 2.2 Ω, live: false }\n  seat: { kind: heater, resistance: 4 Ω }\n  loom: { kind: cable, resistance: 20 mΩ }\n`,
    }),
    must: ['warning - inert-stage trainer'],
  },
  {
    story: 'a stage that stands nowhere is replaced: told once, where it is defined',
    text: draftText(replaced('stage-2'), twoStages),
    must: ['error - in-no-circuit stage-2', 'warning 13 repair-not-verified stage-2'],
  },
  {
    story: 'a stage that leads from ground to ground is in no circuit',
    text: draftText(readOnly, {
      ...twoStages,
      connectors: `${circuit.connectors}  K4: { contact: 2..15 mΩ, sides: [a, b] }\n`,
      network:
        'network:\n  - { connector: K4, pin: 1, between: [ground, tap] }\n  - { part: stage-2, between: [ground, K4.a.1] }\n  - { part: tap-wire, between: [tap, ground] }\n',
      parts: `${circuit.parts}${stage2}  tap-wire: { kind: cable, resistance: 20 mΩ }\n`,
    }),
    must: ['error - in-no-circuit stage-2'],
  },
  {
    story: 'what comes from a parts file and is named nowhere may stay out',
    text: draftText(readOnly, taken),
    parts: library,
    must: [],
  },
  {
    story: 'the module of a parts file is replaced, and its second stage stands in no loop',
    text: draftText(replaced('module'), taken),
    parts: library,
    must: [
      'error 7 in-no-circuit K31',
      'error 7 in-no-circuit stage-2',
      'warning 13 repair-not-verified K31',
      'warning 13 repair-not-verified stage-2',
    ],
  },
  {
    story: 'the fault is found in a stage of a parts file that stands in no loop',
    text: draftText(`${readOnly}  - conclude: stage-2\n`, taken),
    parts: library,
    must: ['error 5 in-no-circuit stage-2'],
  },
  {
    story: 'a connector of the file is left out of the loop',
    text: draftText(readOnly, { connectors: `${circuit.connectors}  K20: { contact: 2..15 mΩ }\n` }),
    must: ['warning - unused K20'],
  },
  {
    story: 'a connector is named by nothing but an assembly, a source or a step',
    text: draftText(`${readOnly}  - conclude: K21\n`, {
      connectors: `${circuit.connectors}  K20: { contact: 2..15 mΩ }\n  K21: { contact: 2..15 mΩ }\n  K22: { contact: 2..15 mΩ }\n`,
      assemblies: 'assemblies:\n  plugs: [K20, K10]\n',
      sources: circuit.sources.replace('[control-unit]', '[control-unit, K22]'),
    }),
    must: [],
  },
  {
    story: 'a battery feeds nothing that is in use, and a supply stands nowhere',
    text: draftText(readOnly, {
      sources: `${circuit.sources}  cabin: { kind: battery, voltage: 12.6 V, feeds: [seat] }\n  sensor-supply: { kind: regulated, voltage: 5 V, from: battery }\n`,
      parts: `${circuit.parts}  seat: { kind: heater, resistance: 4 Ω }\n`,
    }),
    must: ['warning - unused cabin', 'warning - unused sensor-supply'],
  },
  {
    story: 'what could not be read may use what seems not to be used',
    text: draftText(readOnly, {
      ...twoStages,
      connectors: `${circuit.connectors}  K20: { contact: 2..15 mΩ }\n`,
      loops: `${circuit.loops}  second-loop: [control-unit, K20, stage-2]\n`,
    }),
    must: ['error - wrong-value second-loop'],
  },
];
