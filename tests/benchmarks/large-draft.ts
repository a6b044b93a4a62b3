/*
 * A draft as large as a whole vehicle's: six loops, twenty connectors, two sources, a branch every ten steps. At any time
 * several connectors stand unlocked on one path and unplugged on another, and a lamp sits at one of two places, so every
 * automaton has several states at a step. All is restored later, and nothing is wrong with it.
 */

const loops = [
  { id: 'driver-1', unit: 'front-unit', connectors: ['K1', 'K3', 'K4', 'K5'] },
  { id: 'driver-2', unit: 'front-unit', connectors: ['K1', 'K6', 'K7', 'K8'] },
  { id: 'passenger-1', unit: 'front-unit', connectors: ['K1', 'K9', 'K10', 'K11'] },
  { id: 'passenger-2', unit: 'front-unit', connectors: ['K1', 'K12', 'K13'] },
  { id: 'side-left', unit: 'rear-unit', connectors: ['K2', 'K14', 'K15', 'K16'] },
  { id: 'side-right', unit: 'rear-unit', connectors: ['K2', 'K17', 'K18', 'K19', 'K20'] },
] as const;

type DraftLoop = (typeof loops)[number];

/** What is wrong with a draft: nothing, or something in every round of it. */
export type Flaw = 'none' | 'no-waits-and-warnings' | 'unknown-names';

/** A draft of about this many steps. */
export function largeDraft(steps: number, flaw: Flaw = 'none'): string {
  const text = circuit() + stepsOf(steps);
  switch (flaw) {
    case 'none':
      return text;
    case 'no-waits-and-warnings':
      return text.replaceAll(/^ {2}- wait: .*\n/gm, '').replaceAll(/^ {4}warning: .*\n/gm, '');
    case 'unknown-names':
      return text.replaceAll(/(plug|defect): ([a-zK])/g, '$1: $2x');
  }
}

function circuit(): string {
  const connectors = Array.from({ length: 20 }, (_, at) => {
    const bar = at % 3 === 0 ? ', shorting-bar: { side: end, closes: unlocked, resistance: 0.2..0.4 Ω }' : '';
    return `  K${at + 1}: { contact: 2..15 mΩ${bar} }\n`;
  });
  const stages = loops.map(
    ({ id }) => `  stage-${id}: { kind: initiator, resistance: 1.7..2.3 Ω, no-fire: 400 mA, live: true }
  cable-${id}: { kind: cable, wire: 0.5 mm², length: 1.2 m }\n`,
  );
  const paths = loops.map(({ id, unit, connectors: [first, ...others] }, at) => {
    const pins = at * 2 + 1;
    return `  ${id}:
    path: [${unit}, ${first}, cable-${id}, ${others.join(', ')}, stage-${id}]
    pins: { ${first}: [${pins}, ${pins + 1}]${others.map((one) => `, ${one}: [1, 2]`).join('')} }\n`;
  });
  const unit =
    '{ kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω, test-current: 10 mA, codes: { too-low: below 1.0 Ω, too-high: above 4.5 Ω } }';
  return `format: 1
title: A draft for the whole vehicle
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [front-unit, rear-unit], wait: 3 min }
  auxiliary: { kind: battery, voltage: 12.6 V, feeds: [rear-unit], wait: 5 min }
instruments:
  front-unit: ${unit}
  rear-unit: ${unit}
loads:
  bench-lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }
parts:
${stages.join('')}connectors:
${connectors.join('')}loops:
${paths.join('')}`;
}

/** A connector that stands open on every path, but not alike, until a round. */
interface Open {
  readonly loop: DraftLoop;
  readonly connector: string;
  readonly until: number;
}

function stepsOf(wanted: number): string {
  const perRound = 42;
  const rounds = Math.max(1, Math.round((wanted - 24) / perRound));
  let open: readonly Open[] = [];
  const written = Array.from({ length: rounds }, (_, round) => {
    const due = open.filter(({ until }) => until <= round);
    open = open.filter((one) => !due.includes(one));
    const loop = loops[Math.floor(round / 2) % loops.length] ?? loops[0];
    const connector = loop.connectors[1 + (round % (loop.connectors.length - 1))] ?? 'K1';
    const isFree = !open.some((one) => one.connector === connector);
    const opened = isFree ? [{ loop, connector, until: round + 3 }] : [];
    open = [...open, ...opened];
    return writeRound(round, due, opened, open);
  });
  return `steps:
  - ignition: on
  - read-codes: front-unit
  - read-codes: rear-unit
${written.join('')}${closing(open)}`;
}

const powerOff = (id: string): string => `  - ignition: off
    id: ${id}
  - disconnect: battery
  - disconnect: auxiliary
  - wait: 5 min
`;

const powerOn = `  - reconnect: auxiliary
    warning: Nobody near the seats while power comes back.
  - reconnect: battery
    warning: Nobody near the modules while power comes back.
  - ignition: on
    warning: Nobody near the modules.
`;

function writeRound(
  round: number,
  due: readonly Open[],
  opened: readonly Open[],
  open: readonly Open[],
): string {
  const lampLoop = loops[(Math.floor(round / 2) + 3) % loops.length] ?? loops[0];
  const [, near, far] = lampLoop.connectors;
  const whole = loops.find((loop) => loop !== lampLoop && !open.some((one) => one.loop === loop)) ?? lampLoop;
  const standing = open.map(({ connector }) => connector);
  return `  - section: Round ${round + 1}
${powerOff(`round-${round}`)}${due.map(({ connector }) => `  - plug: ${connector}\n`).join('')}${opened.map(({ connector }) => openAnyhow(round, connector)).join('')}  - inspect: Is there room for the lamp nearer to the unit?
    at: nothing
    outcomes: { ok: next, defect: far-${round} }
  - unplug: ${near}
    warning: Touch bare metal first.
  - fit: bench-lamp
    at: ${near}.monitor
  - remove: bench-lamp
  - plug: ${near}
  - fit: bench-lamp
    at: ${near}.monitor
  - go: powered-${round}
  - fit: bench-lamp
    id: far-${round}
    at: ${far}.monitor
    warning: Touch bare metal first.
${powerOn.replace('  - reconnect: auxiliary\n', `  - reconnect: auxiliary\n    id: powered-${round}\n`)}  - read: ${whole.id}
    outcomes: { within: next, else: stop-${round} }
  - read-codes: ${whole.unit}
    outcomes: { none: off-${round}, else: next }
  - do: Write the codes on the job sheet.
    at: nothing
  - go: off-${round}
${powerOff(`stop-${round}`)}  - stop: Another loop is at fault. Ask the workshop lead.
    leaves: [battery, auxiliary, bench-lamp, codes, repair, ${standing.join(', ')}]
${powerOff(`off-${round}`)}  - remove: bench-lamp
  - inspect: Are the pins straight, clean and seated on both halves?
    at: ${far}
    outcomes: { ok: good-${round}, defect: next }
  - replace: ${far}
  - do: Secure the harness with a new tie.
    id: good-${round}
    at: ${near}
${powerOn}  - clear-codes: ${whole.unit}
`;
}

/** Unlocked on one path, unplugged on the other: \`plug\` mates it from either. */
function openAnyhow(round: number, connector: string): string {
  return `  - inspect: Is the lock whole?
    at: ${connector}
    warning: Touch bare metal first.
    outcomes: { ok: unlock-${round}, defect: next }
  - unplug: ${connector}
  - go: opened-${round}
  - unlock: ${connector}
    id: unlock-${round}
  - do: Cover the connector.
    id: opened-${round}
    at: ${connector}
`;
}

function closing(open: readonly Open[]): string {
  return `  - section: Close up
${powerOff('close')}${open.map(({ connector }) => `  - plug: ${connector}\n`).join('')}${powerOn}  - clear-codes: front-unit
  - clear-codes: rear-unit
  - read: [${loops.map(({ id }) => id).join(', ')}]
    outcomes: { within: sound, else: faulty }
  - stop: All loops are sound.
    id: sound
  - stop: A loop is out of its window.
    id: faulty
    leaves: [repair]
`;
}
