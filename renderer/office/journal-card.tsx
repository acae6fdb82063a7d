import { Alert, Button, Table, Text } from '@mantine/core';
import { IconAlertTriangle, IconCircleCheck, IconShieldCheck } from '@tabler/icons-react';
import { useMutation, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { JournalEntry } from '../../shared/contract/office.ts';
import { formatQuantity } from '../../shared/money/index.ts';
import { Card } from '../common/card.tsx';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { QueryView } from '../common/page.tsx';
import { RefusalAlert } from '../common/refusal.tsx';
import { useMoney, useShop } from '../common/shop.tsx';
import { journalFacts } from './journal-facts.ts';
import { journalWords } from './journal-words.ts';
import classes from './office.module.css';

const FEW = 50;
const MANY = 1000;

/** Every write, in order; each entry carries the fingerprint of the one before. */
export function JournalCard() {
  const [limit, setLimit] = useState(FEW);
  const query = useQuery(deskQuery.office.journal.queryOptions({ input: { limit } }));
  return (
    <Card flush title="Journal" aside={<VerifyButton />}>
      <QueryView query={query}>
        {(entries) =>
          entries.length === 0 ? (
            <Text c="dimmed" px="md" pb="md">
              Nothing has been written yet.
            </Text>
          ) : (
            <>
              <JournalTable entries={entries} />
              {entries.length === limit && limit < MANY && (
                <Button variant="default" m="md" onClick={() => setLimit(MANY)}>
                  Show more
                </Button>
              )}
            </>
          )
        }
      </QueryView>
    </Card>
  );
}

function VerifyButton() {
  const verify = useMutation(deskQuery.office.verifyJournal.mutationOptions());
  const answer = verify.data;
  return (
    <div aria-live="polite" style={{ display: 'flex', alignItems: 'center', gap: '0.8rem' }}>
      <RefusalAlert error={verify.error} />
      {answer !== undefined && (
        <Alert
          py={6}
          variant="light"
          color={answer.intact ? 'green' : 'red'}
          icon={answer.intact ? <IconCircleCheck aria-hidden /> : <IconAlertTriangle aria-hidden />}
        >
          {answer.intact
            ? `All ${answer.entries} entries are as they were written.`
            : `Entry ${answer.firstBroken} was changed after it was written. Keep this store as it is, and compare it with a back-up.`}
        </Alert>
      )}
      <Button
        variant="default"
        loading={verify.isPending}
        leftSection={<IconShieldCheck size={20} aria-hidden />}
        onClick={() => verify.mutate({})}
      >
        Verify
      </Button>
    </div>
  );
}

function JournalTable({ entries }: { entries: readonly JournalEntry[] }) {
  const { date, instant } = useFormat();
  const money = useMoney();
  const { locale } = useShop();
  const quantity = (thousandths: number) => formatQuantity(thousandths, locale);
  const writing = { money, quantity, date, instant };
  return (
    <div className={classes.journal}>
      <Table verticalSpacing={7}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>No.</Table.Th>
            <Table.Th>When</Table.Th>
            <Table.Th>Who</Table.Th>
            <Table.Th>What</Table.Th>
            <Table.Th>Fingerprint</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {entries.map((entry) => (
            <Table.Tr key={entry.seq}>
              <Table.Td>{entry.seq}</Table.Td>
              <Table.Td style={{ whiteSpace: 'nowrap' }}>{instant(entry.at)}</Table.Td>
              <Table.Td style={{ whiteSpace: 'nowrap' }}>{entry.by}</Table.Td>
              <Table.Td>
                <Text fw={500} size="sm">
                  {journalWords(entry.what)}
                </Text>
                <span className={classes.particulars}>
                  {journalFacts(entry, writing).map(({ name, value }) => (
                    <span key={name}>
                      <span className={classes.particular}>{name}</span> {value}
                    </span>
                  ))}
                </span>
              </Table.Td>
              <Table.Td>
                <span className={classes.hash} title={entry.hash}>
                  {entry.hash.slice(0, 12)}…
                </span>
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </div>
  );
}
