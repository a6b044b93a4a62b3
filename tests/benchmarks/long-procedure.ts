/**
 * A procedure of about this many steps: the circuit of the shipped one, with rounds of making safe, fitting a lamp at
 * one of two connectors, reading and restoring, each with a branch.
 */
export function longProcedure(circuit: string, steps: number): string {
  const rounds: string[] = [];
  const perRound = 17;
  for (let round = 0; round * perRound < steps - 8; round++) {
    const connector = round % 2 === 0 ? 'K30' : 'K21';
    rounds.push(`
  - section: Round ${round + 1}
  - ignition: off
    id: round-${round}
  - disconnect: battery
  - wait: 3 min
  - unplug: ${connector}
  - fit: bench-lamp
    at: ${connector}.monitor
    loop: stage-1-loop
  - reconnect: battery
    warning: Nobody in front of the steering wheel while power comes back.
  - ignition: on
  - read: stage-1-loop
    outcomes: { within: next, else: off-${round} }
  - ignition: off
    id: off-${round}
  - disconnect: battery
  - wait: 3 min
  - remove: bench-lamp
  - inspect: Are the pins straight, clean and seated on both halves?
    at: ${connector}
    outcomes: { ok: plug-${round}, defect: next }
  - replace: ${connector}
  - plug: ${connector}
    id: plug-${round}
  - reconnect: battery
  - ignition: on`);
  }
  return `${circuit}steps:
  - ignition: on
  - read-codes: control-unit${rounds.join('')}
  - clear-codes: control-unit
  - read: [stage-1-loop, stage-2-loop]
    outcomes: { within: sound, else: faulty }
  - stop: Both loops are sound.
    id: sound
  - stop: A loop is out of its window.
    id: faulty
    leaves: [repair]
`;
}
