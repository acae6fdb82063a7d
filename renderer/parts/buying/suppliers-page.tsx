import { Button, Table } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Supplier } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { Sheet } from '../../common/sheet.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import classes from './buying.module.css';
import { SupplierDialog } from './supplier-dialog.tsx';

/** Who the shop buys from. */
export function SuppliersPage() {
  const query = useQuery(deskQuery.parts.suppliers.queryOptions({ input: {} }));
  const [open, setOpen] = useState<Supplier | 'new' | null>(null);
  return (
    <Page
      title="Suppliers"
      actions={
        <Button leftSection={<IconPlus size={18} aria-hidden />} onClick={() => setOpen('new')}>
          Add a supplier
        </Button>
      }
    >
      <QueryView query={query}>
        {(suppliers) =>
          suppliers.length === 0 ? (
            <Empty
              title="No suppliers yet"
              hint="Add who you buy from, with how long an order takes and what carriage costs. Parts belong to a supplier by the name that stands on them."
            />
          ) : (
            <SuppliersTable suppliers={suppliers} onOpen={setOpen} />
          )
        }
      </QueryView>
      {open !== null && (
        <SupplierDialog supplier={open === 'new' ? null : open} onClose={() => setOpen(null)} />
      )}
    </Page>
  );
}

function SuppliersTable(props: {
  suppliers: readonly Supplier[];
  onOpen: (supplier: Supplier) => void;
}) {
  const money = useMoney();
  const { locale } = useShop();
  const lead = ({ leadDays, leadDaysSpread }: Supplier) =>
    `${leadDays} days${leadDaysSpread === 0 ? '' : ` ± ${formatQuantity(leadDaysSpread, locale)}`}`;
  const carriage = ({ carriage: sends, freeCarriageFrom }: Supplier) =>
    sends === 0
      ? 'free'
      : freeCarriageFrom === null
        ? money(sends)
        : `${money(sends)}, free from ${money(freeCarriageFrom)}`;
  return (
    <Sheet>
      <Table className={classes.table}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Name</Table.Th>
            <Table.Th>Our account</Table.Th>
            <Table.Th>Telephone</Table.Th>
            <Table.Th className={classes.figure}>Order to shelf</Table.Th>
            <Table.Th className={classes.figure}>Smallest order</Table.Th>
            <Table.Th className={classes.figure}>Carriage</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {props.suppliers.map((supplier) => (
            <Table.Tr key={supplier.id} className={classes.row}>
              <Table.Td>
                <button
                  type="button"
                  className={classes.whole}
                  onClick={() => props.onOpen(supplier)}
                >
                  {supplier.name}
                </button>
              </Table.Td>
              <Table.Td>{supplier.accountNumber || '–'}</Table.Td>
              <Table.Td className={classes.unbroken}>{supplier.phone || '–'}</Table.Td>
              <Table.Td className={classes.figure}>{lead(supplier)}</Table.Td>
              <Table.Td className={classes.figure}>
                {supplier.minimumOrder === 0 ? 'none' : money(supplier.minimumOrder)}
              </Table.Td>
              <Table.Td className={classes.figure}>{carriage(supplier)}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
