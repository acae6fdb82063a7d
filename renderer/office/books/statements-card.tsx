import { Table, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { CustomerId } from '../../../shared/contract/ids.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { QueryView } from '../../common/page.tsx';
import { PaperButton } from '../../common/paper-button.tsx';
import reports from '../../common/reports/reports.module.css';
import { useMoney } from '../../common/shop.tsx';

/** The statements that a customer got so far. */
export function StatementsCard({ customerId }: { customerId: CustomerId }) {
  const money = useMoney();
  const format = useFormat();
  const query = useQuery(deskQuery.till.statements.queryOptions({ input: { customerId } }));
  return (
    <QueryView query={query}>
      {(statements) => (
        <Card title="Statements so far" flush={statements.length > 0}>
          {statements.length === 0 ? (
            <Text size="sm" c="dimmed">
              None was issued to this customer yet.
            </Text>
          ) : (
            <Table verticalSpacing="xs" className={reports.figures}>
              <Table.Thead>
                <Table.Tr>
                  <Table.Th>Statement</Table.Th>
                  <Table.Th>For the time</Table.Th>
                  <Table.Th>Issued</Table.Th>
                  <Table.Th data-figure>Owed at its end</Table.Th>
                </Table.Tr>
              </Table.Thead>
              <Table.Tbody>
                {statements.map(({ paper, from, to, closing }) => (
                  <Table.Tr key={paper.id}>
                    <Table.Td>
                      <PaperButton paper={paper} />
                    </Table.Td>
                    <Table.Td>
                      {format.date(from)} – {format.date(to)}
                    </Table.Td>
                    <Table.Td>
                      {format.day(paper.issuedAt)}, {paper.issuedBy}
                    </Table.Td>
                    <Table.Td data-figure>{money(closing)}</Table.Td>
                  </Table.Tr>
                ))}
              </Table.Tbody>
            </Table>
          )}
        </Card>
      )}
    </QueryView>
  );
}
