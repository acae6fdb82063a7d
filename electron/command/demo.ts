import { accessSync, constants, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { makeFolder } from '../../db/data-folder.ts';
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
    if (values.out?.trim()) return resolve(process.cwd(), values.out);
  } catch {
    throw misused;
  }
  throw misused;
}

/** Before the work, so that it isn't done for nothing. */
function provideOutFolder(out: string): void {
  try {
    makeFolder(out);
    accessSync(out, constants.W_OK);
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    throw new PlainRefusal(
      'NO_ACCESS',
      `The papers can't be put into ${out}. Choose another folder with --out. (${why})`,
    );
  }
}

/** The main job of the demo shop, in a store that is thrown away afterwards; the papers stay. */
async function demo(): Promise<void> {
  const out = outFolder(process.argv.slice(2));
  provideOutFolder(out);
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
