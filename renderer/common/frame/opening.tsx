import { Button, Center, Stack } from '@mantine/core';
import { IconRefresh } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { type ReactNode, useEffect, useRef } from 'react';
import { OpenShopPage } from '../../office/open-shop-page.tsx';
import { deskQuery } from '../desk.ts';
import { Waiting } from '../page.tsx';
import { RefusalAlert } from '../refusal.tsx';
import { ShopProvider } from '../shop.tsx';
import { StationProvider } from '../station.tsx';

/** Until the shop is known there is nothing to show: waiting, refused, or a shop to be set up. */
export function Opening({ children }: { children: ReactNode }) {
  const about = useQuery(deskQuery.office.about.queryOptions({ input: {} }));
  const open = about.data?.firstRun === false;
  const shop = useQuery(deskQuery.office.shop.queryOptions({ input: {}, enabled: open }));
  const staff = useQuery(deskQuery.office.staff.queryOptions({ input: {}, enabled: open }));

  useReloadWhenBroughtBack(about.data?.broughtBack);

  if (about.data?.firstRun === true) return <OpenShopPage today={about.data.today} />;
  if (about.data !== undefined && shop.data !== undefined && staff.data !== undefined)
    return (
      <ShopProvider shop={shop.data} today={about.data.today}>
        <StationProvider people={staff.data}>{children}</StationProvider>
      </ShopProvider>
    );

  const error = about.error ?? shop.error ?? staff.error;
  const again = () => Promise.all([about, shop, staff].map((query) => query.refetch()));
  return (
    <Center component="main" mih="100vh" p="lg">
      {error === null ? (
        <Waiting />
      ) : (
        <Stack maw="34rem">
          <RefusalAlert error={error} />
          <Button
            leftSection={<IconRefresh size={18} aria-hidden />}
            onClick={again}
            w="max-content"
          >
            Try again
          </Button>
        </Stack>
      )}
    </Center>
  );
}

/** Another store is in the place of the one that the screens have shown: nothing of that holds any longer. */
function useReloadWhenBroughtBack(times: number | undefined): void {
  const first = useRef(times);
  useEffect(() => {
    first.current ??= times;
    if (times !== first.current) window.location.reload();
  }, [times]);
}
