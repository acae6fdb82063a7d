import { Button, Collapse, SimpleGrid, Stack, Text } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconAdjustments } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { RateInput } from '../../common/rate-input.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { SuggestedOrderCard } from './suggested-order-card.tsx';

const USUAL = { service: 950_000, perOrder: 500, holding: 250_000 };
const HALF = 500_000;
const MOST_SURE = 999_000;

/** What the shelves and the jobs want, by supplier. */
export function ToOrderPage() {
  const [terms, setTerms] = useDraft('reorder.terms', USUAL);
  const [adjusting, { toggle }] = useDisclosure(false);
  const query = useQuery({
    ...deskQuery.parts.suggestions.queryOptions({
      input: { ...terms, service: Math.min(MOST_SURE, Math.max(HALF, terms.service)) },
    }),
    placeholderData: keepPreviousData,
  });
  const set = (change: Partial<typeof terms>) => setTerms((before) => ({ ...before, ...change }));
  return (
    <Page
      title="To order"
      description="What is at its reorder point, and what jobs wait for."
      actions={
        <Button
          variant="default"
          leftSection={<IconAdjustments size={18} aria-hidden />}
          aria-expanded={adjusting}
          onClick={toggle}
        >
          How it is worked out
        </Button>
      }
    >
      <Collapse expanded={adjusting}>
        <Text size="sm" mb="sm" maw="70ch">
          A part is reordered at what is used while an order is on its way, and as much again as its
          usage and the supplier’s days stray, so that the shelf seldom runs out; never below the
          reorder point that is typed on it. Usage is what went to jobs in whole weeks, a year at
          most. The economic order is the one that costs least over a year between ordering often
          and holding much.
        </Text>
        <SimpleGrid cols={{ base: 1, xs: 3 }} spacing="sm" mb="md" maw="46rem">
          <RateInput
            label="Should not run out in"
            description="Of all orders; 50 to 99.9 %"
            value={terms.service}
            onChange={(ppm) => set({ service: ppm ?? USUAL.service })}
          />
          <MoneyInput
            label="An order costs the shop"
            description="Writing, unpacking, paying"
            value={terms.perOrder}
            onChange={(minor) => set({ perOrder: minor ?? USUAL.perOrder })}
          />
          <RateInput
            label="Holding stock costs"
            description="Of its cost in a year"
            value={terms.holding}
            onChange={(ppm) => set({ holding: ppm === null || ppm === 0 ? USUAL.holding : ppm })}
          />
        </SimpleGrid>
      </Collapse>
      <QueryView query={query}>
        {(orders) =>
          orders.length === 0 ? (
            <Empty
              title="Nothing wants ordering"
              hint="Every shelf is above its reorder point, and no job misses a part that is not on order."
            />
          ) : (
            <Stack gap="lg">
              {orders.map((order) => (
                <SuggestedOrderCard key={order.supplier?.id ?? order.name} order={order} />
              ))}
            </Stack>
          )
        }
      </QueryView>
    </Page>
  );
}
