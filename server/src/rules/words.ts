import type { Power } from '../bench/power.ts';
import type { Id } from '../model/procedure.ts';

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** `a`, `a or b`, `a, b or c`. */
export function either(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}

/** What keeps these sources from being off: `battery is connected and the ignition is on`. */
export function whatIsOn(power: Power, sources: readonly Id[]): string {
  const connected = sources.filter((source) => !power.disconnected.includes(source));
  return listed([
    ...connected.map((source) => `${source} is connected`),
    ...(power.ignitionOn ? ['the ignition is on'] : []),
  ]);
}

/** Of a step in words while something is not safe. */
export function notSaidBecause(why: string): string {
  return `This step does not say what hands touch, and ${why}. Add \`at\` with what is touched, or \`at: nothing\`; what is only looked at stands in \`of\`.`;
}
