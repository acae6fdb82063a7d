import { createORPCClient } from '@orpc/client';
import type { ContractRouterClient } from '@orpc/contract';
import type { Contract } from '../../../shared/contract/index.ts';
import { openLink } from './link.ts';

/** All that a screen can do: every procedure of the contract, typed. */
export type DeskClient = ContractRouterClient<Contract>;

export const desk: DeskClient = createORPCClient(openLink());
