import { buildIfChanged } from './build.ts';

for (const name of ['renderer', 'electron'] as const) {
  const built = await buildIfChanged(name);
  process.stdout.write(`${name}: ${built ? 'built' : 'unchanged'}\n`);
}
