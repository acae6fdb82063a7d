import type { ContractRouterClient } from '@orpc/contract';
import type { Contract } from '../../../shared/contract/index.ts';

/** What the desk says of a day. */
export type Day = Awaited<ReturnType<ContractRouterClient<Contract>['counter']['day']>>;
