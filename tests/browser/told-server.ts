import { parseArgs } from 'node:util';
import { startServing } from '../../electron/serve/serve.ts';
import { untilStopped } from '../../electron/serve/until-stopped.ts';

/**
 * Serves a data folder as `npm start -- --serve` does, at a told time: `--ahead` milliseconds before the
 * clock of the machine. What it keeps is thrown away after the tests, so that no disk is waited for.
 */
const { values } = parseArgs({
  options: {
    data: { type: 'string', default: '' },
    ahead: { type: 'string', default: '0' },
    demo: { type: 'boolean', default: false },
  },
});
const ahead = Number(values.ahead);

const { address, close } = await startServing(
  { folder: values.data, demo: values.demo, port: 0 },
  { careless: true, now: () => new Date(Date.now() + ahead) },
);
const stopped = untilStopped();
process.stdout.write(`Tappet is at ${address}\n`);
await stopped;
await close();
