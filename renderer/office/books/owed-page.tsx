import { Anchor, SegmentedControl, Table, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { Receivables } from '../../../shared/contract/till/index.ts';
import { AGE_BASES, AGE_LABELS, AGES, type AgeBasis } from '../../../shared/money/books/index.ts';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import reports from '../../common/reports/reports.module.css';
import { Sheet } from '../../common/sheet.tsx';
import { useMoney, useToday } from '../../common/shop.tsx';
import { dateOr, useAddress } from '../../common/use-address.ts';
import { AgeStrip } from './age-strip.tsx';

const BASIS_LABELS: Record<AgeBasis, string> = {
  'due-date': 'Since it was due',
  'invoice-date': 'Since the invoice',
};

/** What customers owe, by thirty days, and who they are. */
export function OwedPage() {
  const [address, keep] = useAddress();
  const on = dateOr(address('on'), useToday());
  const basis = AGE_BASES.find((each) => each === address('basis')) ?? 'due-date';
  const query = useQuery(deskQuery.till.receivables.queryOptions({ input: { on, basis } }));
  return (
    <Page title="Owed to us" description="What customers owe on invoices, the oldest first.">
      <div className={reports.asked}>
        <DateField
          label="At the end of"
          value={on}
          onChange={(day) => day !== null && keep({ on: day })}
        />
        <div>
          <Text component="span" id="age-basis" fw={600}>
            Age counts
          </Text>
          <SegmentedControl
            fullWidth
            size="md"
            aria-labelledby="age-basis"
            data={AGE_BASES.map((value) => ({ value, label: BASIS_LABELS[value] }))}
            value={basis}
            onChange={(value) => keep({ basis: value })}
          />
        </div>
      </div>
      <QueryView query={query}>
        {(owed) =>
          owed.customers.length === 0 ? (
            <Empty
              title="Nobody owes anything"
              hint="Every invoice issued up to that day was paid or credited."
            />
          ) : (
            <>
              <AgeStrip aged={owed.aged} sum={{ label: 'Open in all', amount: owed.open }} />
              <Debtors owed={owed} />
            </>
          )
        }
      </QueryView>
    </Page>
  );
}

function Debtors({ owed }: { owed: Receivables }) {
  const money = useMoney();
  return (
    <Sheet>
      <Table verticalSpacing="xs" highlightOnHover className={reports.figures}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Customer</Table.Th>
            <Table.Th>Telephone</Table.Th>
            {AGES.map((age) => (
              <Table.Th key={age} data-figure>
                {AGE_LABELS[age]}
              </Table.Th>
            ))}
            <Table.Th data-figure>Open</Table.Th>
            <Table.Th data-figure>Paid, not applied</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {owed.customers.map(({ customerId, name, phone, aged, open, unapplied }) => (
            <Table.Tr key={customerId}>
              <Table.Td miw="9rem">
                <Anchor inherit component={Link} to={`/office/books/customer/${customerId}`}>
                  {name}
                </Anchor>
              </Table.Td>
              <Table.Td data-whole>{phone}</Table.Td>
              {AGES.map((age) => (
                <Table.Td key={age} data-figure data-none={aged[age] === 0}>
                  {aged[age] === 0 ? '–' : money(aged[age])}
                </Table.Td>
              ))}
              <Table.Td data-figure fw={650}>
                {money(open)}
              </Table.Td>
              <Table.Td data-figure data-none={unapplied === 0}>
                {unapplied === 0 ? '–' : money(unapplied)}
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
