import { Button, Table, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { Bundle } from '../../../shared/contract/till/index.ts';
import { formatQuantity, lineAmount } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { Empty, QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './prices.module.css';

/** The bundles that the till offers: kept there, retired here. */
export function BundlesCard() {
  const query = useQuery(deskQuery.till.bundles.queryOptions({ input: {} }));
  const retire = useWrite(deskQuery.till.retireBundle.mutationOptions({}));
  const by = useBy();
  return (
    <div className={classes.below}>
      <Card title="Bundles of lines" flush>
        <QueryView query={query}>
          {(bundles) =>
            bundles.length === 0 ? (
              <Empty
                title="No bundles yet"
                hint="Type lines that go together at the till of any job, and keep them there under ‘Bundles’."
              />
            ) : (
              <Table horizontalSpacing="md" verticalSpacing="sm">
                <Table.Thead>
                  <Table.Tr>
                    <Table.Th>Bundle</Table.Th>
                    <Table.Th ta="end">Usual hours</Table.Th>
                    <Table.Th ta="end">Today</Table.Th>
                    <Table.Th />
                  </Table.Tr>
                </Table.Thead>
                <Table.Tbody>
                  {bundles.map((bundle) => (
                    <BundleRow
                      key={bundle.id}
                      bundle={bundle}
                      onRetire={() => retire.mutate({ by, id: bundle.id })}
                    />
                  ))}
                </Table.Tbody>
              </Table>
            )
          }
        </QueryView>
        <RefusalAlert error={retire.error} />
      </Card>
    </div>
  );
}

function BundleRow({ bundle, onRetire }: { bundle: Bundle; onRetire: () => void }) {
  const money = useMoney();
  const { locale, rounding } = useShop();
  const sum = bundle.lines.reduce((total, line) => total + lineAmount(line, rounding), 0);
  return (
    <Table.Tr>
      <Table.Td>
        <Text fw={600}>{bundle.name}</Text>
        <Text size="sm" c="dimmed">
          {bundle.lines.map(({ description }) => description).join('; ')}
        </Text>
        {bundle.note !== '' && <Text size="sm">{bundle.note}</Text>}
      </Table.Td>
      <Table.Td ta="end" className={classes.figure}>
        {bundle.hours === 0 ? '–' : `${formatQuantity(bundle.hours, locale)} h`}
      </Table.Td>
      <Table.Td ta="end" className={classes.figure}>
        {money(sum)}
      </Table.Td>
      <Table.Td ta="end">
        <Button variant="default" size="sm" aria-label={`Retire ${bundle.name}`} onClick={onRetire}>
          Retire
        </Button>
      </Table.Td>
    </Table.Tr>
  );
}
