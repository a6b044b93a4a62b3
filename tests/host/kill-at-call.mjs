// Loaded before the program: kills it at the Nth of its calls to the file system that change something. Each such call
// is counted on standard error before it is made.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

const last = Number(process.env.KILL_AT_CALL);
let calls = 0;
for (const name of [
  'openSync',
  'fchownSync',
  'fchmodSync',
  'writeFileSync',
  'fsyncSync',
  'closeSync',
  'renameSync',
  'rmSync',
]) {
  const call = fs[name];
  fs[name] = (...words) => {
    calls += 1;
    if (calls === last) process.kill(process.pid, 'SIGKILL');
    return call(...words);
  };
}
syncBuiltinESMExports();
process.on('exit', () => fs.writeSync(2, `calls: ${calls}\n`));
