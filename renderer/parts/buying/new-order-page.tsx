import { Alert, Button, Checkbox, Group, Select, SimpleGrid, Stack, Textarea } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { type SyntheticEvent, useState } from 'react';
import { useLocation, useNavigate } from 'react-router';
import { z } from 'zod';
import type { Supplier } from '../../../shared/contract/parts/index.ts';
import { addDays } from '../../../shared/work/calendar.ts';
import { carriageOn } from '../../../shared/work/parts/order-quantity.ts';
import { costAt } from '../../../shared/work/parts/stock-ledger.ts';
import { Card } from '../../common/card.tsx';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { fieldErrors, RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useMoney, useToday } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { AddLine } from './add-line.tsx';
import classes from './buying.module.css';
import { NO_ORDER, OrderSeed, withLine } from './order-draft.ts';
import { OrderLines } from './order-lines.tsx';

/** An order that is being written, by hand or from what was suggested. */
export function NewOrderPage() {
  const query = useQuery(deskQuery.parts.suppliers.queryOptions({ input: {} }));
  return (
    <Page title="New order">
      <QueryView query={query}>
        {(suppliers) =>
          suppliers.length === 0 ? (
            <Empty
              title="There is nobody to order from"
              hint="Add a supplier first, on the page of suppliers."
            />
          ) : (
            <NewOrder suppliers={suppliers} />
          )
        }
      </QueryView>
    </Page>
  );
}

const Short = z.object({ short: z.int() });

function NewOrder({ suppliers }: { suppliers: readonly Supplier[] }) {
  const by = useBy();
  const money = useMoney();
  const today = useToday();
  const navigate = useNavigate();
  const seed = OrderSeed.safeParse(useLocation().state);
  const [order, setOrder, clear] = useDraft(
    `order.${seed.success ? seed.data.key : 'new'}`,
    seed.success ? seed.data.order : NO_ORDER,
  );
  const [belowMinimum, setBelowMinimum] = useState(false);
  const set = (change: Partial<typeof order>) => setOrder((before) => ({ ...before, ...change }));
  const supplier = suppliers.find(({ id }) => id === order.supplierId) ?? null;
  const place = useWrite(
    deskQuery.parts.placeOrder.mutationOptions({
      onSuccess: (placed) => {
        clear();
        return navigate(`/parts/order/${placed.id}`, { replace: true });
      },
    }),
  );
  const errors = fieldErrors(place.error);
  const goods = order.lines.reduce(
    (sum, { unitCost, quantity }) => sum + costAt(unitCost ?? 0, quantity ?? 0),
    0,
  );
  const carriage = order.carriage ?? (supplier === null ? 0 : carriageOn(supplier, goods));
  const expectedOn =
    order.expectedOn ?? (supplier === null ? null : addDays(today, supplier.leadDays));
  const lines = order.lines.flatMap(({ partId, quantity, unitCost, supplierNumber, jobId }) =>
    quantity === null || quantity <= 0 || unitCost === null
      ? []
      : [{ partId, quantity, unitCost, supplierNumber, jobId }],
  );
  const incomplete = lines.length < order.lines.length;
  const belowIt = place.error !== null && refusalOf(place.error).code === 'BELOW_MINIMUM';
  const short = belowIt ? Short.safeParse(refusalOf(place.error).data).data?.short : undefined;

  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (supplier === null || lines.length === 0 || incomplete) return;
    const { note } = order;
    place.mutate({
      by,
      supplierId: supplier.id,
      lines,
      carriage,
      expectedOn,
      note,
      belowMinimum,
    });
  };

  return (
    <form onSubmit={send}>
      <Stack gap="md">
        <Card title="From whom, by when">
          <SimpleGrid cols={{ base: 1, sm: 3 }} spacing="sm">
            <Select
              label="Supplier"
              required
              searchable
              data={suppliers.map(({ id, name }) => ({ value: id, label: name }))}
              value={order.supplierId}
              error={errors.supplierId}
              onChange={(id) =>
                set({ supplierId: suppliers.find((each) => each.id === id)?.id ?? null })
              }
            />
            <DateField
              label="Expected on"
              value={expectedOn}
              error={errors.expectedOn}
              onChange={(date) => set({ expectedOn: date })}
            />
            <MoneyInput
              label="Carriage"
              value={carriage}
              error={errors.carriage}
              onChange={(minor) => set({ carriage: minor })}
            />
          </SimpleGrid>
        </Card>
        <Card title="What is ordered" flush>
          {order.lines.length > 0 && (
            <OrderLines lines={order.lines} onChange={(changed) => set({ lines: changed })} />
          )}
          <div className={classes.add}>
            <AddLine
              onAdd={(line) =>
                setOrder((before) => ({ ...before, lines: withLine(before.lines, line) }))
              }
            />
          </div>
        </Card>
        <Textarea
          label="Note for the supplier"
          autosize
          minRows={2}
          maxLength={1000}
          value={order.note}
          onChange={(event) => set({ note: event.currentTarget.value })}
        />
        <RefusalAlert error={place.error} />
        {short !== undefined && (
          <Checkbox
            label={`They take it all the same, ${money(short)} below their smallest order`}
            checked={belowMinimum}
            onChange={(event) => setBelowMinimum(event.currentTarget.checked)}
          />
        )}
        {incomplete && (
          <Alert
            color="orange"
            variant="light"
            title="A quantity or a price is missing in a line."
          />
        )}
        <Group justify="space-between" align="flex-end">
          <dl className={classes.sums}>
            <dt>Goods</dt>
            <dd>{money(goods)}</dd>
            <dt>Carriage</dt>
            <dd>{carriage === 0 ? 'free' : money(carriage)}</dd>
            <dt>Total before tax</dt>
            <dd>{money(goods + carriage)}</dd>
          </dl>
          <Group gap="xs">
            <Button
              variant="subtle"
              color="gray"
              onClick={() => {
                clear();
                return navigate('/parts/orders');
              }}
            >
              Throw it away
            </Button>
            <Button
              type="submit"
              loading={place.isPending}
              disabled={supplier === null || lines.length === 0 || incomplete}
            >
              Place the order
            </Button>
          </Group>
        </Group>
      </Stack>
    </form>
  );
}
