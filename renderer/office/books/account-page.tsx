import { Anchor, Box, Button, Table } from '@mantine/core';
import { IconFileText } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'react-router';
import { CustomerId } from '../../../shared/contract/ids.ts';
import type { CustomerLedger } from '../../../shared/contract/till/index.ts';
import { addDays } from '../../../shared/work/calendar.ts';
import { LEDGER_LABELS } from '../../../shared/work/reports.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { PaperButton } from '../../common/paper-button.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { PeriodPicker } from '../../common/reports/period-picker.tsx';
import reports from '../../common/reports/reports.module.css';
import { useMoney, useToday } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { dateOr, useAddress } from '../../common/use-address.ts';
import { useWrite } from '../../common/use-write.ts';
import { AgeStrip } from './age-strip.tsx';
import classes from './books.module.css';
import { StatementsCard } from './statements-card.tsx';

/** A quarter of a year back: long enough to show how a debt came about. */
const SHOWN_DAYS = 92;

/** One customer's account: every bill and payment of a time, and its statement. */
export function AccountPage() {
  const { id } = useParams();
  const customerId = CustomerId.safeParse(id);
  return customerId.success ? (
    <Account customerId={customerId.data} />
  ) : (
    <Page title="Customer’s account">
      <Empty title="No such customer" hint="Go back to what is owed, and choose one there." />
    </Page>
  );
}

function Account({ customerId }: { customerId: CustomerId }) {
  const today = useToday();
  const [address, keep] = useAddress();
  const from = dateOr(address('from'), addDays(today, -SHOWN_DAYS));
  const to = dateOr(address('to'), today);
  const input = { customerId, from, to };
  const query = useQuery(deskQuery.till.customerLedger.queryOptions({ input }));
  const by = useBy();
  const issue = useWrite(deskQuery.till.issueStatement.mutationOptions());
  const name = query.data?.name;
  return (
    <Page
      title={name === undefined ? 'Customer’s account' : `Account of ${name}`}
      description={
        <Anchor inherit component={Link} to={`/customer/${customerId}`}>
          Customer and machines
        </Anchor>
      }
      actions={
        <>
          {issue.data !== undefined && <PaperButton paper={issue.data} />}
          <Button
            leftSection={<IconFileText size={18} aria-hidden />}
            loading={issue.isPending}
            onClick={() => issue.mutate({ by, ...input })}
          >
            Issue a statement
          </Button>
        </>
      }
    >
      <RefusalAlert error={issue.error} mb="md" />
      <PeriodPicker value={{ from, to }} onChange={(period) => keep({ ...period })} />
      <QueryView query={query}>
        {(ledger) => (
          <div className={reports.stack}>
            <Ledger ledger={ledger} />
            <OpenInvoices ledger={ledger} />
            <StatementsCard customerId={customerId} />
          </div>
        )}
      </QueryView>
    </Page>
  );
}

function Ledger({ ledger }: { ledger: CustomerLedger }) {
  const money = useMoney();
  const format = useFormat();
  const { opening, closing, entries, from, to } = ledger;
  return (
    <Card title="Account" flush>
      <Box
        component="section"
        className={reports.scroll}
        aria-label="Entries of the account"
        tabIndex={0}
      >
        <Table verticalSpacing="xs" className={reports.figures}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Date</Table.Th>
              <Table.Th>What</Table.Th>
              <Table.Th>Number</Table.Th>
              <Table.Th>Job</Table.Th>
              <Table.Th data-figure>Charged</Table.Th>
              <Table.Th data-figure>Paid or credited</Table.Th>
              <Table.Th data-figure>Balance</Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            <Table.Tr>
              <Table.Td data-whole>{format.date(from)}</Table.Td>
              <Table.Td colSpan={5}>Owed before</Table.Td>
              <Table.Td data-figure>{money(opening)}</Table.Td>
            </Table.Tr>
            {Object.entries(entries).map(
              ([place, { on, what, number, jobCode, amount, balance }]) => (
                <Table.Tr key={place}>
                  <Table.Td data-whole>{format.date(on)}</Table.Td>
                  <Table.Td>{LEDGER_LABELS[what]}</Table.Td>
                  <Table.Td data-whole>{number}</Table.Td>
                  <Table.Td>
                    <Anchor inherit component={Link} to={`/job/${jobCode}/till`}>
                      {jobCode}
                    </Anchor>
                  </Table.Td>
                  <Table.Td data-figure>{amount >= 0 ? money(amount) : ''}</Table.Td>
                  <Table.Td data-figure>{amount < 0 ? money(-amount) : ''}</Table.Td>
                  <Table.Td data-figure>{money(balance)}</Table.Td>
                </Table.Tr>
              ),
            )}
          </Table.Tbody>
          <Table.Tfoot>
            <Table.Tr>
              <Table.Th data-whole>{format.date(to)}</Table.Th>
              <Table.Th colSpan={5}>{closingWords(closing)}</Table.Th>
              <Table.Th data-figure>{money(Math.abs(closing))}</Table.Th>
            </Table.Tr>
          </Table.Tfoot>
        </Table>
      </Box>
    </Card>
  );
}

function closingWords(closing: number): string {
  if (closing === 0) return 'Nothing owed';
  return closing > 0 ? 'Owed by the customer' : 'Owed to the customer';
}

function OpenInvoices({ ledger }: { ledger: CustomerLedger }) {
  const money = useMoney();
  const format = useFormat();
  const { openInvoices, aged, unapplied } = ledger;
  const open = openInvoices.reduce((sum, invoice) => sum + invoice.open, 0);
  if (openInvoices.length === 0) return null;
  return (
    <Card title="Open invoices">
      <AgeStrip aged={aged} sum={{ label: 'Open in all', amount: open }} />
      <Box component="section" className={reports.scroll} aria-label="Open invoices" tabIndex={0}>
        <Table verticalSpacing="xs" className={reports.figures}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Invoice</Table.Th>
              <Table.Th>Job</Table.Th>
              <Table.Th>Invoiced</Table.Th>
              <Table.Th>Due</Table.Th>
              <Table.Th data-figure>Total</Table.Th>
              <Table.Th data-figure>Open</Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {openInvoices.map((invoice) => (
              <Table.Tr key={invoice.id}>
                <Table.Td>{invoice.number}</Table.Td>
                <Table.Td>
                  <Anchor inherit component={Link} to={`/job/${invoice.jobCode}/till`}>
                    {invoice.jobCode}
                  </Anchor>
                </Table.Td>
                <Table.Td data-whole>{format.date(invoice.invoicedOn)}</Table.Td>
                <Table.Td data-whole>{format.date(invoice.dueOn ?? invoice.invoicedOn)}</Table.Td>
                <Table.Td data-figure>{money(invoice.total)}</Table.Td>
                <Table.Td data-figure fw={650}>
                  {money(invoice.open)}
                </Table.Td>
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </Box>
      {unapplied > 0 && (
        <p className={classes.note}>
          {money(unapplied)} was paid and is not applied to an invoice yet.
        </p>
      )}
    </Card>
  );
}
