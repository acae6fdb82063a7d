import { createORPCClient } from '@orpc/client';
import { RPCLink } from '@orpc/client/fetch';
import type { ContractRouterClient } from '@orpc/contract';
import type { Contract } from '../../shared/contract/index.ts';
import type { Staff } from '../../shared/contract/office.ts';
import { TIME_ZONE } from './told-time.ts';

export type Desk = ContractRouterClient<Contract>;

/** The desk of a served shop, called as the screens call it: to prepare what a test is not about. */
export function deskAt(origin: string, session: { name: string; value: string }): Desk {
  return createORPCClient(
    new RPCLink({
      url: `${origin}/rpc`,
      headers: { origin, cookie: `${session.name}=${session.value}` },
    }),
  );
}

/** Tests of one worker share a shop: the first of them sets it up. */
export async function ownerOf(desk: Desk): Promise<Staff> {
  const staff = await desk.office.staff({});
  const owner = staff.find(({ role, active }) => role === 'owner' && active);
  if (owner !== undefined) return owner;
  return desk.office.openShop({
    ownerName: 'Ada Ferrow',
    shopName: 'Riverbend Small Engines',
    currency: 'USD',
    locale: 'en-US',
    timeZone: TIME_ZONE,
    country: 'US',
    paperSize: 'Letter',
  });
}
