import { Anchor, Box, Table, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { CashUp, DrawerDay } from '../../../shared/contract/till/index.ts';
import { LEDGER_LABELS } from '../../../shared/work/reports.ts';
import { PAYMENT_METHOD_LABELS, PAYMENT_METHODS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Page, QueryView } from '../../common/page.tsx';
import reports from '../../common/reports/reports.module.css';
import { useMoney, useShop, useToday } from '../../common/shop.tsx';
import { dateOr, useAddress } from '../../common/use-address.ts';
import classes from './books.module.css';
import { CountForm } from './count-form.tsx';
import { differenceWords } from './difference-words.ts';

/** The money of a day: what moved, what must be there, and what was counted. */
export function DrawerPage() {
  const [address, keep] = useAddress();
  const day = dateOr(address('day'), useToday());
  const query = useQuery(deskQuery.till.drawer.queryOptions({ input: { day } }));
  return (
    <Page title="Drawer" description="Count it at the end of the day, against what the till says.">
      <div className={reports.asked}>
        <DateField
          label="Day"
          value={day}
          onChange={(chosen) => chosen !== null && keep({ day: chosen })}
        />
      </div>
      <QueryView query={query}>
        {(drawer) => (
          <div className={classes.drawer}>
            <CountForm key={drawer.day} drawer={drawer} />
            <div className={reports.stack}>
              <Counts cashUps={drawer.cashUps} />
              <Moved drawer={drawer} />
            </div>
          </div>
        )}
      </QueryView>
    </Page>
  );
}

function Counts({ cashUps }: { cashUps: readonly CashUp[] }) {
  const money = useMoney();
  const format = useFormat();
  if (cashUps.length === 0) return null;
  const last = cashUps.length - 1;
  return (
    <Card title="Counted">
      <ul className={classes.counts}>
        {Object.entries(cashUps)
          .toReversed()
          .map(([place, { at, by, counted, difference, note }]) => (
            <li key={place} data-former={Number(place) !== last}>
              <div>
                <strong>{differenceWords(difference, money)}</strong>
                {Number(place) === last ? '' : ' (counted again since)'}
              </div>
              <div>
                {PAYMENT_METHODS.filter((method) => counted[method] !== 0)
                  .map((method) => `${PAYMENT_METHOD_LABELS[method]} ${money(counted[method])}`)
                  .join(', ')}
              </div>
              {note !== '' && <div>{note}</div>}
              <Text size="sm" c="dimmed">
                {by}, {format.instant(at)}
              </Text>
            </li>
          ))}
      </ul>
    </Card>
  );
}

function Moved({ drawer }: { drawer: DrawerDay }) {
  const money = useMoney();
  const { locale, timeZone } = useShop();
  const time = new Intl.DateTimeFormat(locale, { timeStyle: 'short', timeZone });
  return (
    <Card title="What moved" flush>
      {drawer.moved.length === 0 ? (
        <Text c="dimmed" px="md" pb="md">
          No money came in or went out that day.
        </Text>
      ) : (
        <Box
          component="section"
          className={reports.scroll}
          aria-label="Money of the day"
          tabIndex={0}
        >
          <Table verticalSpacing="xs" className={reports.figures}>
            <Table.Thead>
              <Table.Tr>
                <Table.Th>When</Table.Th>
                <Table.Th>What</Table.Th>
                <Table.Th>Customer</Table.Th>
                <Table.Th>Job</Table.Th>
                <Table.Th data-figure>Amount</Table.Th>
              </Table.Tr>
            </Table.Thead>
            <Table.Tbody>
              {Object.entries(drawer.moved).map(([place, each]) => (
                <Table.Tr key={place}>
                  <Table.Td data-whole>{time.format(new Date(each.at))}</Table.Td>
                  <Table.Td>
                    {LEDGER_LABELS[each.kind]}, {PAYMENT_METHOD_LABELS[each.method].toLowerCase()}
                  </Table.Td>
                  <Table.Td>
                    <bdi>{each.customerName}</bdi>
                  </Table.Td>
                  <Table.Td>
                    <Anchor inherit component={Link} to={`/job/${each.jobCode}/till`}>
                      {each.jobCode}
                    </Anchor>
                  </Table.Td>
                  <Table.Td data-figure>
                    {money(each.kind === 'refund' ? -each.amount : each.amount)}
                  </Table.Td>
                </Table.Tr>
              ))}
            </Table.Tbody>
          </Table>
        </Box>
      )}
    </Card>
  );
}
