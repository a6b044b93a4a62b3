import type { Procedure } from '../text/procedure.ts';

/** What is inserted for a verb: its usual keys, with places to fill in. Written as snippets of the protocol. */
export function verbSnippet(verb: string, procedure: Procedure): readonly string[] {
  const of = (ids: Iterable<string>, name: string, at = 1): string => choice(at, [...ids], name);
  const { sources, connectors, loads, loops, monitors, parts } = procedure;
  const [connector = 'K30'] = connectors.keys();
  const sides = [...connectors.keys()].flatMap((id) => [`${id}.monitor`, `${id}.end`]);
  switch (verb) {
    case 'section':
      return ['section: ${1:What follows}'];
    case 'ignition':
      return ['ignition: ${1|on,off,cycle|}'];
    case 'disconnect':
      return [`disconnect: ${of(sources.keys(), 'battery')}`];
    case 'reconnect':
      return [
        `reconnect: ${of(sources.keys(), 'battery')}`,
        'warning: ${2:Who must stay clear while power comes back.}',
      ];
    case 'wait':
      return ['wait: ${1:3 min}'];
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [`${verb}: ${of(connectors.keys(), connector)}`];
    case 'fit':
      return [`fit: ${of(loads.keys(), 'load')}`, `at: ${choice(2, sides, `${connector}.monitor`)}`];
    case 'move':
      return [`move: ${of(loads.keys(), 'load')}`, `to: ${choice(2, sides, `${connector}.monitor`)}`];
    case 'remove':
      return [`remove: ${of(loads.keys(), 'load')}`];
    case 'read':
      return [`read: ${of(loops.keys(), 'loop')}`, 'outcomes: { within: ${2:next}, else: ${3:next} }'];
    case 'read-codes':
    case 'clear-codes':
      return [`${verb}: ${of(monitors.keys(), 'monitor')}`];
    case 'inspect':
      return [
        'inspect: ${1:What is looked at, as a question?}',
        `at: ${choice(2, [...connectors.keys()], connector)}`,
      ];
    case 'do':
      return ['do: ${1:What is done.}'];
    case 'replace':
    case 'conclude':
      return [`${verb}: ${of([...parts.keys(), ...connectors.keys(), ...monitors.keys()], 'part')}`];
    case 'go':
      return ['go: ${1:step-id}'];
    case 'stop':
      return ['stop: ${1:Why it ends here.}'];
    default:
      return [`${verb}: $1`];
  }
}

/** No more than this many choices are listed; a longer list is for the completion of the value itself. */
const mostChoices = 12;

function choice(at: number, words: readonly string[], otherwise: string): string {
  const [first] = words;
  if (words.length < 2 || words.length > mostChoices) return `\${${at}:${first ?? otherwise}}`;
  return `\${${at}|${words.join(',')}|}`;
}

/** A snippet as plain text: every place with its first choice. */
export function withoutPlaces(snippet: string): string {
  return snippet
    .replace(/\$\{\d+\|([^,|]*)[^}]*\|\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$\d+/g, '');
}

/** New entries of the circuit, by section: what the kinds need. */
export const entrySnippets: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  sources: {
    battery:
      '${1:battery}: { kind: battery, voltage: ${2:12.6 V}, feeds: [${3:control-unit}], wait: ${4:3 min} }',
  },
  instruments: {
    monitor:
      '${1:control-unit}: { kind: monitor, range: ${2:0..10 Ω}, accuracy: ${3:3 % + 0.1 Ω}, resolution: ${4:0.01 Ω} }',
  },
  loads: {
    lamp: '${1:bench-lamp}: { kind: lamp, resistance: ${2:3.0 Ω ± 5 %} }',
    resistor: '${1:load-plug}: { kind: resistor, resistance: ${2:2.2 Ω ± 1 %} }',
  },
  parts: {
    cable: '${1:harness}: { kind: cable, wire: ${2:0.5 mm²}, length: ${3:1.2 m} }',
    'rotary-coupling': '${1:coil-coupling}: { kind: rotary-coupling, resistance: ${2:0.05..0.15 Ω} }',
    series: '${1:filter}: { kind: series, resistance: ${2:0.05..0.1 Ω} }',
    initiator: '${1:stage-1}: { kind: initiator, resistance: ${2:1.7..2.3 Ω}, live: ${3|true,false|} }',
    resistor: '${1:end-resistor}: { kind: resistor, resistance: ${2:120 Ω ± 1 %} }',
    lamp: '${1:lamp}: { kind: lamp, resistance: ${2:3.0 Ω ± 5 %} }',
  },
  connectors: { connector: '${1:K30}: { contact: ${2:2..15 mΩ} }' },
  loops: { loop: '${1:loop}: { path: [${2:control-unit}, ${3:K30}, ${4:stage-1}] }' },
};
