import { Anchor, Table, Title } from '@mantine/core';
import { Link } from 'react-router';
import type { Movement, Part } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { MOVEMENT_KIND_LABELS } from '../../../shared/work/parts/stock-words.ts';
import { useFormat } from '../../common/format.ts';
import { Empty } from '../../common/page.tsx';
import { Sheet } from '../../common/sheet.tsx';
import { useShop } from '../../common/shop.tsx';
import classes from '../part-page.module.css';

/** With its sign, so that what came and what went are told apart: +3, −1. */
const signed = (thousandths: number, locale: string): string =>
  `${thousandths < 0 ? '−' : '+'}${formatQuantity(Math.abs(thousandths), locale)}`;

/** What moved, newest first. Of a promise or an order, what it promises or orders is shown. */
export function Movements({ movements, part }: { movements: readonly Movement[]; part: Part }) {
  const format = useFormat();
  const { locale } = useShop();
  const rows = movements.map((movement, index) => ({ movement, place: index }));
  return (
    <section aria-labelledby="movements-heading">
      <Title order={2} mt="lg" mb="sm" id="movements-heading">
        Movements
      </Title>
      {rows.length === 0 ? (
        <Empty
          title="Nothing has moved yet"
          hint="Write down what is on the shelf as received or counted; every later movement adds to it."
        />
      ) : (
        <Sheet>
          <Table className={classes.movements}>
            <Table.Thead>
              <Table.Tr>
                <Table.Th>When</Table.Th>
                <Table.Th>What</Table.Th>
                <Table.Th className={classes.figure}>Quantity</Table.Th>
                <Table.Th>Job</Table.Th>
                <Table.Th>Reason</Table.Th>
                <Table.Th>By</Table.Th>
              </Table.Tr>
            </Table.Thead>
            <Table.Tbody>
              {rows.map(({ movement, place }) => (
                <Table.Tr key={place}>
                  <Table.Td>{format.instant(movement.at)}</Table.Td>
                  <Table.Td>{MOVEMENT_KIND_LABELS[movement.kind]}</Table.Td>
                  <Table.Td className={classes.figure}>
                    {signed(movement.quantity || movement.reserved || movement.ordered, locale)}{' '}
                    {part.unit}
                  </Table.Td>
                  <Table.Td>
                    {movement.jobCode === '' ? (
                      '–'
                    ) : (
                      <Anchor inherit component={Link} to={`/job/${movement.jobCode}/parts`}>
                        {movement.jobCode}
                      </Anchor>
                    )}
                  </Table.Td>
                  <Table.Td>{movement.reason === '' ? '–' : movement.reason}</Table.Td>
                  <Table.Td>{movement.by}</Table.Td>
                </Table.Tr>
              ))}
            </Table.Tbody>
          </Table>
        </Sheet>
      )}
    </section>
  );
}
