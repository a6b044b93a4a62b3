import type { Chance } from '../oracle/chance.ts';
import { frames } from '../../server/src/protocol/frames.ts';
import { begun } from './edited.ts';
import { parts } from './everything.ts';
import { partsUri } from './input.ts';
import { turnsUntil } from './session.ts';
import type { Message } from './message-inputs.ts';
import type { Json, Session } from './session.ts';

/** The server is neither deaf nor dead after any messages, and has answered every request. */
export async function afterMessages(all: readonly Message[], chance: Chance): Promise<readonly string[]> {
  const server = await begun(new Map([[partsUri, parts]]), chance);
  const expected: Json[] = [];
  for (const message of all) {
    deliver(server, message);
    if (message.kind === 'request') expected.push(message.id);
  }
  const template = await server.request('ohmwright/template', {});
  // What was asked before the last question may still be worked on when that is answered.
  const shutdown = await server.request('shutdown', null);
  await turnsUntil(() => expected.every((id) => server.answered.has(id)));
  const wrong = expected
    .filter((id) => !server.answered.has(id))
    .map((id) => `the request ${JSON.stringify(id)} was never answered`);
  if (template === null) wrong.push('the server is deaf');
  else if (!JSON.stringify(template).includes('format: 1'))
    wrong.push(`it answers ${JSON.stringify(template).slice(0, 200)}`);
  if (shutdown === null) wrong.push('the server cannot be shut down');
  server.close();
  return wrong;
}

function deliver(server: Session, message: Message): void {
  switch (message.kind) {
    case 'request':
      server.send({ jsonrpc: '2.0', id: message.id, method: message.method, params: message.params });
      return;
    case 'notification':
      server.notify(message.method, message.params);
      return;
    case 'cancel':
      server.notify('$/cancelRequest', { id: message.id });
      return;
    case 'raw':
      if (isInFrames(message.text)) server.raw(message.text);
  }
}

/** Where messages can no longer be told from one another the program ends: that has tests of its own. */
function isInFrames(text: string): boolean {
  const { take, isInside } = frames();
  return take(Buffer.from(text)) === null && !isInside();
}
