import manifest from '../../../package.json' with { type: 'json' };

/** Of this program, as in its manifest. */
export const version = manifest.version;
