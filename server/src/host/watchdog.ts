import { url as debugger_ } from 'node:inspector';
import { Worker } from 'node:worker_threads';

export interface Watchdog {
  /** The process of the client: this one does not outlive it. */
  readonly watch: (processId: number) => void;
}

/** In seconds. */
export interface Patience {
  /** How long the client may be gone: this process ends by itself before, if it can. */
  readonly alone: number;
  /** How long the main thread may compute without a pause. A tenth of a second is much. */
  readonly busy: number;
}

/**
 * Ends this process, from a thread of its own, when its client is gone or its main thread hangs. A hanging main thread
 * notices neither.
 */
export function watchdog({ alone, busy }: Patience = { alone: 5, busy: 30 }): Watchdog {
  const beats = new Int32Array(new SharedArrayBuffer(4));
  setInterval(() => Atomics.add(beats, 0, 1), 1000).unref();
  // A main thread that a debugger holds does not hang.
  const mostBusy = debugger_() === undefined ? busy : Infinity;
  const worker = new Worker(thread, { eval: true, workerData: { beats, alone, busy: mostBusy } });
  worker.unref();
  return {
    watch: (processId) => {
      worker.postMessage(processId);
    },
  };
}

/** What the thread runs: as text, for the program is one file. It counts its own ticks, so that a sleep of the machine is none. */
const thread = `
const { parentPort, workerData } = require('node:worker_threads');
const { writeSync } = require('node:fs');
const { beats, alone, busy } = workerData;
let client = null, lastBeat = -1, ticksAlone = 0, ticksBusy = 0;
parentPort.on('message', (processId) => { client = processId; });
function isGone(processId) {
  try { process.kill(processId, 0); return false; } catch (error) { return error.code === 'ESRCH'; }
}
function end(why) {
  try { writeSync(2, 'ohmwright: ' + why + ' The server ends.\\n'); } catch {}
  process.kill(process.pid, 'SIGKILL');
}
setInterval(() => {
  const beat = Atomics.load(beats, 0);
  ticksBusy = beat === lastBeat ? ticksBusy + 1 : 0;
  lastBeat = beat;
  ticksAlone = client !== null && isGone(client) ? ticksAlone + 1 : 0;
  if (ticksAlone >= alone) end('The client is gone.');
  if (ticksBusy >= busy) end('The server has not answered for ' + busy + ' seconds.');
}, 1000);
`;
