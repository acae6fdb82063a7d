import { Alert, Anchor, Button, Checkbox, Table, Text } from '@mantine/core';
import { IconAlertCircle } from '@tabler/icons-react';
import { type ReactNode, useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { SuggestedOrder, Suggestion } from '../../../shared/contract/parts/index.ts';
import { carriageOn, inPacks, shortOfMinimum } from '../../../shared/work/parts/order-quantity.ts';
import { costAt } from '../../../shared/work/parts/stock-ledger.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { useMoney } from '../../common/shop.tsx';
import { QuantityInput } from '../quantity-input.tsx';
import classes from './buying.module.css';
import type { OrderSeed } from './order-draft.ts';
import { suggestedLines, whySuggested } from './suggested-lines.ts';
import { SupplierDialog } from './supplier-dialog.tsx';
import { useAmount } from './use-amount.ts';

/** What was changed of a suggestion; null for a quantity that can't be read. */
interface Choice {
  taken: boolean;
  quantity: number | null;
}

/** What one supplier should send, and the way to an order of it. */
export function SuggestedOrderCard({ order }: { order: SuggestedOrder }) {
  const navigate = useNavigate();
  const [choices, setChoices] = useState<Record<string, Choice>>({});
  const [adding, setAdding] = useState(false);
  const choiceOf = ({ part, quantity }: Suggestion): Choice =>
    choices[part.id] ?? { taken: true, quantity };
  const choose = (line: Suggestion, change: Partial<Choice>) =>
    setChoices((before) => ({ ...before, [line.part.id]: { ...choiceOf(line), ...change } }));
  const taken = order.lines.flatMap((line) => {
    const { taken: wanted, quantity } = choiceOf(line);
    return wanted && quantity !== null && quantity > 0 ? [{ line, quantity }] : [];
  });
  const goods = taken.reduce((sum, { line, quantity }) => sum + costAt(line.unitCost, quantity), 0);
  const { supplier } = order;

  const drawUp = () => {
    const seed: OrderSeed = {
      key: `${supplier?.id ?? ''} ${Date.now()}`,
      order: {
        supplierId: supplier?.id ?? null,
        lines: taken.flatMap(({ line, quantity }) => suggestedLines(line, quantity)),
        carriage: null,
        expectedOn: null,
        note: '',
      },
    };
    return navigate('/parts/orders/new', { state: seed });
  };

  return (
    <Card title={order.name === '' ? 'No supplier' : order.name} flush>
      {supplier === null && (
        <Alert
          color="orange"
          variant="light"
          mx="md"
          mb="sm"
          icon={<IconAlertCircle aria-hidden />}
          title={
            order.name === ''
              ? 'These parts name no supplier. Write one on each part.'
              : 'No supplier is known by this name, so nothing is known of how long an order takes.'
          }
        >
          {order.name !== '' && (
            <Button size="sm" variant="light" onClick={() => setAdding(true)}>
              Add {order.name}
            </Button>
          )}
        </Alert>
      )}
      <Table className={classes.table} verticalSpacing="xs">
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Order</Table.Th>
            <Table.Th>Part</Table.Th>
            <Table.Th className={classes.figure}>Free</Table.Th>
            <Table.Th className={classes.figure}>On order</Table.Th>
            <Table.Th>Why</Table.Th>
            <Table.Th className={classes.figure}>One costs</Table.Th>
            <Table.Th>Quantity</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {order.lines.map((line) => (
            <SuggestionRow
              key={line.part.id}
              line={line}
              choice={choiceOf(line)}
              onChoose={(change) => choose(line, change)}
            />
          ))}
        </Table.Tbody>
      </Table>
      <Foot order={order} goods={goods}>
        <Button disabled={supplier === null || taken.length === 0} onClick={drawUp}>
          Draw up the order
        </Button>
      </Foot>
      {adding && (
        <SupplierDialog
          supplier={null}
          suggestedName={order.name}
          onClose={() => setAdding(false)}
        />
      )}
    </Card>
  );
}

function SuggestionRow(props: {
  line: Suggestion;
  choice: Choice;
  onChoose: (change: Partial<Choice>) => void;
}) {
  const { line, choice, onChoose } = props;
  const money = useMoney();
  const amount = useAmount();
  const { part, usage, packSize, supplierNumber } = line;
  const lot = usage?.economicOrder ?? null;
  const wholeLot = lot === null ? null : inPacks(lot, packSize);
  return (
    <Table.Tr>
      <Table.Td>
        <Checkbox
          aria-label={`Order ${part.number}`}
          checked={choice.taken}
          onChange={(event) => onChoose({ taken: event.currentTarget.checked })}
        />
      </Table.Td>
      <Table.Td>
        <Anchor inherit component={Link} to={`/part/${part.id}`} className={classes.number}>
          {part.number}
        </Anchor>
        <Text size="sm">{part.description}</Text>
        {supplierNumber !== part.number && (
          <div className={classes.small}>Theirs: {supplierNumber}</div>
        )}
      </Table.Td>
      <Table.Td className={classes.figure}>{amount(line.available, part.unit)}</Table.Td>
      <Table.Td className={classes.figure}>{amount(line.onOrder, part.unit)}</Table.Td>
      <Table.Td>
        {whySuggested(line, amount).map((words) => (
          <div key={words} className={classes.small}>
            {words}
          </div>
        ))}
      </Table.Td>
      <Table.Td className={classes.figure}>{money(line.unitCost)}</Table.Td>
      <Table.Td>
        <QuantityInput
          className={classes.quantity}
          label=""
          aria-label={`Quantity of ${part.number}`}
          unit={part.unit}
          value={choice.quantity}
          onChange={(quantity) => onChoose({ quantity })}
        />
        {packSize !== 1000 && (
          <div className={classes.small}>In packs of {amount(packSize, part.unit)}</div>
        )}
        {wholeLot !== null && wholeLot !== choice.quantity && (
          <Anchor
            component="button"
            type="button"
            className={classes.lot}
            onClick={() => onChoose({ quantity: wholeLot })}
          >
            Economic: {amount(wholeLot, part.unit)}
          </Anchor>
        )}
      </Table.Td>
    </Table.Tr>
  );
}

function Foot(props: { order: SuggestedOrder; goods: number; children: ReactNode }) {
  const { order, goods } = props;
  const money = useMoney();
  const format = useFormat();
  const { supplier } = order;
  const short = supplier === null ? 0 : shortOfMinimum(supplier, goods);
  const carriage = supplier === null ? null : carriageOn(supplier, goods);
  const lacking =
    supplier === null || supplier.freeCarriageFrom === null || carriage === 0
      ? 0
      : supplier.freeCarriageFrom - goods;
  return (
    <div className={classes.foot}>
      <div>
        <dl className={classes.sums}>
          <dt>Goods</dt>
          <dd>{money(goods)}</dd>
          {carriage !== null && (
            <>
              <dt>Carriage</dt>
              <dd>{carriage === 0 ? 'free' : money(carriage)}</dd>
              <dt>Expected</dt>
              <dd>{format.shortDate(order.expectedOn)}</dd>
            </>
          )}
        </dl>
        {short > 0 && (
          <Text size="sm" fw={600} mt={4}>
            {money(short)} short of their smallest order.
          </Text>
        )}
        {short === 0 && lacking > 0 && (
          <Text size="sm" mt={4}>
            {money(lacking)} more, and carriage is free.
          </Text>
        )}
      </div>
      {props.children}
    </div>
  );
}
