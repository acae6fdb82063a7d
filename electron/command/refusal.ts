import { ORPCError } from '@orpc/client';
import { z } from 'zod';
import { StoreRefusal } from '../../db/refusal.ts';
import { PlainRefusal } from '../launch/sentence.ts';

/** What the command line prints on stderr when something was refused. */
export type Refusal = {
  code: string;
  message: string;
  issues?: { path: string; message: string }[];
};

const WithIssues = z.object({
  issues: z.array(z.object({ path: z.string(), message: z.string() })),
});

/** The refusal for anything thrown. A fault of ours is told as such, without its innards. */
export function refusalFrom(error: unknown): Refusal {
  if (error instanceof ORPCError) {
    const withIssues = WithIssues.safeParse(error.data);
    return {
      code: error.code,
      message: error.message,
      ...(withIssues.success && { issues: withIssues.data.issues }),
    };
  }
  if (error instanceof PlainRefusal || error instanceof StoreRefusal) {
    return { code: error.code, message: error.message };
  }
  return {
    code: 'FAULT',
    message: `Tappet made a mistake of its own: ${error instanceof Error ? error.message : String(error)}`,
  };
}
