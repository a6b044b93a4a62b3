import manifest from '../../../package.json' with { type: 'json' };
import { serveAsStarted } from './language-server.ts';

serveAsStarted(manifest.version);
