import { programVersion } from '../launch/root.ts';
import { parseDeskArguments } from './desk-arguments.ts';
import { listProcedures, requireProcedure } from './list-procedures.ts';
import { refusalFrom } from './refusal.ts';

async function answer(args: readonly string[]): Promise<unknown> {
  const wanted = parseDeskArguments(args, process.cwd());
  if (wanted.kind === 'list') return listProcedures();
  // Before anything is opened, so that a slip of the keyboard makes no new store.
  requireProcedure(wanted.procedure);
  // The desk with all its libraries is loaded only when it is asked.
  const { openDesk } = await import('../launch/desk-session.ts');
  const { callProcedure } = await import('./call-procedure.ts');
  const session = openDesk(wanted.folder, programVersion());
  try {
    return await callProcedure(session, wanted.procedure, wanted.input);
  } finally {
    await session.close();
  }
}

// Whoever reads may stop reading, as `head` does.
process.stdout.on('error', () => process.exit());

try {
  const output = await answer(process.argv.slice(2));
  process.stdout.write(`${JSON.stringify(output ?? null, null, 2)}\n`);
} catch (error) {
  process.stderr.write(`${JSON.stringify({ error: refusalFrom(error) })}\n`);
  process.exitCode = 1;
}
