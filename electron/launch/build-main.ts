import { readFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import type { BuildOptions, Plugin } from 'esbuild';

const helper = 'import { join as joinFromBundle } from "node:path";';

/**
 * Files of ours that look for something beside themselves (migrations, for one) still find it
 * after bundling: their `import.meta` goes on naming the place where the source stands.
 */
function keepPlaces(root: string): Plugin {
  // The bundle runs two folders below the root, whatever folder it is first written to.
  const toRoot = '../..';
  return {
    name: 'keep-places',
    setup(build) {
      build.onLoad({ filter: /\.ts$/ }, async ({ path }) => {
        const source = await readFile(path, 'utf8');
        const place = `${toRoot}/${relative(root, path).split(sep).join('/')}`;
        return {
          loader: 'ts',
          contents: source
            .replaceAll(
              'import.meta.dirname',
              `joinFromBundle(import.meta.dirname, ${JSON.stringify(dirname(place))})`,
            )
            .replaceAll(
              'import.meta.url',
              `new URL(${JSON.stringify(place)}, import.meta.url).href`,
            ),
        };
      });
    },
  };
}

/**
 * Bundles our own code for Electron; libraries stay outside, in node_modules, as they read files
 * and load binaries of their own. The preload is one CommonJS file, as the sandbox wants it.
 */
export async function buildMain(root: string, outFolder: string): Promise<void> {
  const { build } = await import('esbuild');
  const common = {
    bundle: true,
    platform: 'node',
    target: 'node24',
    packages: 'external',
    sourcemap: 'linked',
    logLevel: 'warning',
    absWorkingDir: resolve(root),
  } satisfies BuildOptions;
  await build({
    ...common,
    entryPoints: [join(root, 'electron', 'main.ts')],
    outfile: join(outFolder, 'main.js'),
    format: 'esm',
    banner: { js: helper },
    plugins: [keepPlaces(root)],
  });
  await build({
    ...common,
    entryPoints: [join(root, 'electron', 'preload.ts')],
    outfile: join(outFolder, 'preload.cjs'),
    format: 'cjs',
  });
}
