import { openDesk } from '../launch/desk-session.ts';
import { programVersion } from '../launch/root.ts';
import { callProcedure } from './call-procedure.ts';
import { parseDeskArguments } from './desk-arguments.ts';
import { listProcedures } from './list-procedures.ts';
import { refusalFrom } from './refusal.ts';

async function answer(args: readonly string[]): Promise<unknown> {
  const wanted = parseDeskArguments(args, process.cwd());
  if (wanted.kind === 'list') return listProcedures();
  const session = openDesk(wanted.folder, programVersion());
  try {
    return await callProcedure(session, wanted.procedure, wanted.input);
  } finally {
    await session.close();
  }
}

try {
  const output = await answer(process.argv.slice(2));
  process.stdout.write(`${JSON.stringify(output ?? null, null, 2)}\n`);
} catch (error) {
  process.stderr.write(`${JSON.stringify({ error: refusalFrom(error) })}\n`);
  process.exitCode = 1;
}
