// Runs on its own: `node fetch-runtime.mjs FOLDER_OF_THE_ELECTRON_PACKAGE`.
// Electron's own installer says nothing while it downloads, so a slow line and a dead one look
// alike. This fills its cache first, with a word for every piece that arrives, then lets it unpack.
import { createRequire } from 'node:module';
import { join } from 'node:path';

const folder = process.argv[2];
const requireFromElectron = createRequire(join(folder, 'package.json'));
const { downloadArtifact } = requireFromElectron('@electron/get');
const { version } = requireFromElectron('./package.json');

let lastWord = 0;
await downloadArtifact({
  version,
  artifactName: 'electron',
  cacheRoot: process.env.electron_config_cache,
  checksums: requireFromElectron('./checksums.json'),
  platform: process.env.npm_config_platform ?? process.platform,
  arch: process.env.npm_config_arch ?? process.arch,
  downloadOptions: {
    quiet: true,
    getProgressCallback: async () => {
      if (Date.now() - lastWord < 500) return;
      lastWord = Date.now();
      process.stdout.write('arriving\n');
    },
  },
});
process.stdout.write('fetched\n');
requireFromElectron('./install.js');
