import { buildIfChanged } from '../../electron/launch/build.ts';

/** Once before all tests, so that no two servers build at the same time. */
async function build(): Promise<void> {
  await buildIfChanged('renderer');
}

export default build;
