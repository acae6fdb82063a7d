import { Button, Group, Paper } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { Link } from 'react-router';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { available, averageCost } from '../../../shared/work/parts/stock-ledger.ts';
import { PRICE_ORIGIN_LABELS } from '../../../shared/work/vocabulary.ts';
import { useMoney, useShop } from '../../common/shop.tsx';
import { MarginText } from '../margin-text.tsx';
import classes from '../part-page.module.css';
import { PriceDialog } from '../price-dialog.tsx';
import { ShelfBadge } from '../shelf-badge.tsx';
import { AmendDialog } from './amend-dialog.tsx';

/** What a part is, what is on the shelf, and what of that is free. */
export function PartFacts({ part }: { part: Part }) {
  const money = useMoney();
  const { locale } = useShop();
  const [pricing, dialog] = useDisclosure(false);
  const [amending, amendment] = useDisclosure(false);
  const average = averageCost(part);
  const facts = [
    ['Promised to jobs', part.promised === 0 ? '' : amount(part.promised)],
    ['Free', part.promised === 0 ? '' : amount(available(part))],
    ['On order', part.onOrder === 0 ? '' : amount(part.onOrder)],
    ['Bin', part.bin],
    ['Sells at', `${money(part.sellsAt)}, ${PRICE_ORIGIN_LABELS[part.sellsBy].toLowerCase()}`],
    ['Core charge', part.coreCharge === 0 ? '' : money(part.coreCharge)],
    ['Cost', part.cost === 0 ? '' : money(part.cost)],
    ['Shelf is worth', average === null ? '' : `${money(part.worth)}, ${money(average)} each`],
    ['Comes in packs of', part.packSize === 1000 ? '' : amount(part.packSize)],
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
      <Group gap="xs" mt="sm">
        <Button variant="default" size="sm" onClick={amendment.open}>
          Change the part
        </Button>
        <Button variant="default" size="sm" onClick={dialog.open}>
          Change the price
        </Button>
        <Button variant="default" size="sm" component={Link} to={`/parts/labels?part=${part.id}`}>
          Labels
        </Button>
      </Group>
      {amending && <AmendDialog part={part} onClose={amendment.close} />}
      {pricing && <PriceDialog part={part} onClose={dialog.close} />}
    </Paper>
  );

  function amount(thousandths: number): string {
    return `${thousandths < 0 ? '−' : ''}${formatQuantity(Math.abs(thousandths), locale)} ${part.unit}`;
  }
}
