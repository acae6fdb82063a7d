import { Box, Table, Text, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconSearch } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { SupplierOffer } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { QueryView } from '../../common/page.tsx';
import { Sheet } from '../../common/sheet.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import classes from './price-files.module.css';

const SHOWN = 50;

/** Looks a number or a name up in what the suppliers offer. */
export function OfferSearch() {
  const [typed, setTyped] = useState('');
  const [text] = useDebouncedValue(typed.trim(), 200);
  const query = useQuery(
    deskQuery.parts.findOffers.queryOptions({
      input: { text, limit: SHOWN },
      enabled: text !== '',
      placeholderData: keepPreviousData,
    }),
  );
  return (
    <>
      <TextInput
        label="Look up what suppliers offer"
        placeholder="The beginning of a number, or words of the description"
        leftSection={<IconSearch size={18} aria-hidden />}
        autoFocus
        autoComplete="off"
        maxLength={120}
        maw="34rem"
        mb="md"
        value={typed}
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      {text !== '' && (
        <QueryView query={query}>
          {(offers) =>
            offers.length === 0 ? (
              <Text mb="md" role="status">
                No price list here has “{text}”.
              </Text>
            ) : (
              <Box mb="md">
                <Card title="Offers" flush>
                  <Offers offers={offers} />
                </Card>
              </Box>
            )
          }
        </QueryView>
      )}
    </>
  );
}

function Offers({ offers }: { offers: readonly SupplierOffer[] }) {
  const money = useMoney();
  const format = useFormat();
  const { locale } = useShop();
  return (
    <Box
      component="section"
      className={classes.scroll}
      aria-label="What suppliers offer"
      tabIndex={0}
    >
      <Sheet>
        <Table className={classes.lines}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Number</Table.Th>
              <Table.Th>Description</Table.Th>
              <Table.Th>Supplier</Table.Th>
              <Table.Th className={classes.figure}>Cost</Table.Th>
              <Table.Th className={classes.figure}>List price</Table.Th>
              <Table.Th className={classes.figure}>In one pack</Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {offers.map((offer) => (
              <Table.Tr key={`${offer.supplierId} ${offer.number}`}>
                <Table.Td className={classes.number}>
                  {offer.number}
                  {offer.supersededBy !== '' && (
                    <Text size="sm" fw={400}>
                      replaced by {offer.supersededBy}
                    </Text>
                  )}
                </Table.Td>
                <Table.Td>
                  {offer.description}
                  {offer.coreCharge > 0 && (
                    <Text size="sm" c="dimmed">
                      core charge {money(offer.coreCharge)}
                    </Text>
                  )}
                </Table.Td>
                <Table.Td>
                  {offer.supplier}
                  {offer.asOf !== null && (
                    <Text size="sm" c="dimmed">
                      as of {format.day(offer.asOf)}
                    </Text>
                  )}
                </Table.Td>
                <Table.Td className={classes.figure}>{money(offer.cost)}</Table.Td>
                <Table.Td className={classes.figure}>
                  {offer.listPrice === null ? '–' : money(offer.listPrice)}
                </Table.Td>
                <Table.Td className={classes.figure}>
                  {formatQuantity(offer.packSize, locale)}
                </Table.Td>
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </Sheet>
    </Box>
  );
}
