import { Anchor, Button, Paper, SimpleGrid, Table, Title } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'react-router';
import type { Movement, Part } from '../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../shared/money/index.ts';
import { MOVEMENT_KIND_LABELS } from '../../shared/work/stock-words.ts';
import { PRICE_ORIGIN_LABELS } from '../../shared/work/vocabulary.ts';
import { Card } from '../common/card.tsx';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { useMoney, useShop } from '../common/shop.tsx';
import { MarginText } from './margin-text.tsx';
import { MovementForm } from './movement-form.tsx';
import classes from './part-page.module.css';
import { PriceDialog } from './price-dialog.tsx';
import { ShelfBadge } from './shelf-badge.tsx';

/** One part: what it is, what is on the shelf, and how it came to that. */
export function PartPage() {
  const { id = '' } = useParams();
  const query = useQuery(deskQuery.parts.part.queryOptions({ input: { id } }));
  return (
    <QueryView query={query}>
      {({ part, movements }) => (
        <Page
          title={part.description}
          description={
            <>
              Part {part.number} ·{' '}
              <Anchor inherit component={Link} to="/parts">
                All parts
              </Anchor>
            </>
          }
        >
          <SimpleGrid cols={{ base: 1, md: 2 }} spacing="md">
            <Facts part={part} />
            <Card title="On and off the shelf">
              <MovementForm key={part.id} part={part} />
            </Card>
          </SimpleGrid>
          <Movements movements={movements} part={part} />
        </Page>
      )}
    </QueryView>
  );
}

function Facts({ part }: { part: Part }) {
  const money = useMoney();
  const { locale } = useShop();
  const [pricing, dialog] = useDisclosure(false);
  const facts = [
    ['Bin', part.bin],
    ['Sells at', `${money(part.sellsAt)}, ${PRICE_ORIGIN_LABELS[part.sellsBy].toLowerCase()}`],
    ['Core charge', part.coreCharge === 0 ? '' : money(part.coreCharge)],
    ['Cost', part.cost === 0 ? '' : money(part.cost)],
    ['Supplier', part.supplier],
    ['Barcode', part.barcode],
    ['Reorder at', part.reorderPoint === 0 ? '' : amount(part.reorderPoint)],
  ].filter(([, value]) => value !== '');
  return (
    <Paper component="section" withBorder p="md" bg="var(--tappet-surface)" aria-label="Facts">
      <div className={classes.shelf}>
        <div>
          <div className={classes.label}>On hand</div>
          <div className={classes.onHand}>{amount(part.onHand)}</div>
        </div>
        <ShelfBadge part={part} />
      </div>
      <dl className={classes.facts}>
        {facts.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <MarginText price={part.sellsAt} cost={part.cost} />
      <Button variant="default" size="sm" mt="sm" onClick={dialog.open}>
        Change the price
      </Button>
      {pricing && <PriceDialog part={part} onClose={dialog.close} />}
    </Paper>
  );

  function amount(thousandths: number): string {
    return `${formatQuantity(thousandths, locale)} ${part.unit}`;
  }
}

/** With its sign, so that what came and what went are told apart: +3, −1. */
const signed = (thousandths: number, locale: string): string =>
  `${thousandths < 0 ? '−' : '+'}${formatQuantity(Math.abs(thousandths), locale)}`;

function Movements({ movements, part }: { movements: readonly Movement[]; part: Part }) {
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
                  {signed(movement.quantity, locale)} {part.unit}
                </Table.Td>
                <Table.Td>
                  {movement.jobCode === '' ? (
                    '–'
                  ) : (
                    <Anchor inherit component={Link} to={`/job/${movement.jobCode}`}>
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
      )}
    </section>
  );
}
