import { createRouterClient } from '@orpc/server';
import { desk, deskInterceptors } from '../desk/index.ts';
import type { DeskSession } from '../launch/desk-session.ts';
import { requireProcedure } from './list-procedures.ts';

type Call = (input: unknown) => Promise<unknown>;

/**
 * Calls one procedure in this process, as a screen would.
 * @throws PlainRefusal when no procedure has that name; else what the procedure throws
 */
export async function callProcedure(
  { context, gate }: Pick<DeskSession, 'context' | 'gate'>,
  name: string,
  input: unknown,
): Promise<unknown> {
  requireProcedure(name);
  const client = createRouterClient(desk, {
    context,
    interceptors: [gate.pass, ...deskInterceptors],
  });
  let step: unknown = client;
  for (const part of name.split('.')) step = (step as Record<string, unknown>)[part];
  return (step as Call)(input);
}
