import { kindOf, shorter } from './kind.ts';
import { messages } from './message-inputs.ts';
import type { Message } from './message-inputs.ts';
import { afterMessages } from './messaged.ts';

/** Messages over the wire, good, strange and broken. */
export const protocol = kindOf<readonly Message[]>({
  name: 'protocol',
  share: 0.5,
  draw: messages,
  check: afterMessages,
  smaller: shorter,
  print: (all) => all.map((one) => JSON.stringify(one)).join('\n'),
  size: (all) => JSON.stringify(all).length,
  patience: 2000,
});
