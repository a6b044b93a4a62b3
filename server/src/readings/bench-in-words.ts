import { placeInWords } from '../bench/hardware.ts';
import type { LoopBench } from './loop-bench.ts';

/** The bench of a loop as people say it: `as built, ignition on`, or what differs from it. */
export function benchInWords(bench: LoopBench): string {
  const { connectors, loads } = bench.hardware;
  const differing = [
    ...[...connectors].map(([id, state]) => `${id} ${state}`),
    ...[...loads].map(([id, place]) => `${id} at ${placeInWords(place)}`),
  ];
  const built = differing.length === 0 ? 'as built' : differing.join(', ');
  return `${built}, ignition ${bench.power.ignitionOn ? 'on' : 'off'}`;
}
