import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { openDesk } from '../launch/desk-session.ts';
import { reportAndExit } from '../launch/report.ts';
import { programVersion } from '../launch/root.ts';
import { PlainRefusal } from '../launch/sentence.ts';
import { runDemoJob } from './demo-job.ts';

function outFolder(args: readonly string[]): string {
  const misused = new PlainRefusal(
    'BAD_FLAG',
    'Say where the papers go: npm run -s demo -- --out DIR',
    2,
  );
  try {
    const { values } = parseArgs({ args: [...args], options: { out: { type: 'string' } } });
    if (values.out) return resolve(process.cwd(), values.out);
  } catch {
    throw misused;
  }
  throw misused;
}

/** The main job of the demo shop, in a store that is thrown away afterwards; the papers stay. */
async function demo(): Promise<void> {
  const out = outFolder(process.argv.slice(2));
  const folder = mkdtempSync(join(tmpdir(), 'tappet-demo-'));
  const session = openDesk(folder, programVersion());
  try {
    await runDemoJob(session.context, out);
  } finally {
    await session.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

try {
  await demo();
} catch (error) {
  reportAndExit(error);
}
