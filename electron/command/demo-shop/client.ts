import { createRouterClient } from '@orpc/server';
import { type DeskContext, desk, deskInterceptors } from '../../desk/index.ts';

/** The contract, called in this process. */
export const deskClient = (context: DeskContext) =>
  createRouterClient(desk, { context, interceptors: deskInterceptors });

export type DeskClient = ReturnType<typeof deskClient>;
