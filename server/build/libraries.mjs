// How libraries are bundled.
import { fileURLToPath } from 'node:url';

/**
 * The build of yaml for browsers: the same code as modules, so that what is not used is left out. That for Node looks into
 * the environment at every token, which costs it a fifth of its time.
 */
export const alias = {
  yaml: fileURLToPath(new URL('../../node_modules/yaml/browser/dist/index.js', import.meta.url)),
};
