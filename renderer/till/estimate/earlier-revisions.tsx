import { Accordion, Group, Text, Title } from '@mantine/core';
import type { Estimate } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { PaperButton } from '../../common/paper-button.tsx';
import { useMoney } from '../../common/shop.tsx';
import { BillLines } from './bill-lines.tsx';
import { TotalsList } from './totals.tsx';

/** Revisions that were written before, newest first; they never change. */
export function EarlierRevisions(props: { title: string; estimates: readonly Estimate[] }) {
  const { title, estimates } = props;
  const money = useMoney();
  const format = useFormat();
  if (estimates.length === 0) return null;
  return (
    <Card title={title}>
      <Accordion variant="separated" multiple order={3}>
        {estimates.toReversed().map((estimate) => (
          <Accordion.Item key={estimate.id} value={estimate.id}>
            <Accordion.Control>
              <Group justify="space-between" wrap="nowrap" pe="sm">
                <div>
                  <Text fw={600}>Revision {estimate.revision}</Text>
                  <Text size="sm" c="dimmed">
                    {format.instant(estimate.writtenAt)}, {estimate.writtenBy}
                  </Text>
                </div>
                <Text fw={600} ta="end">
                  {estimate.options.map(({ totals }) => money(totals.total)).join(' / ')}
                </Text>
              </Group>
            </Accordion.Control>
            <Accordion.Panel>
              {estimate.options.map((option) => (
                <OptionAsWritten key={option.key} estimate={estimate} option={option} />
              ))}
              {estimate.note !== '' && (
                <Text size="sm" dir="auto">
                  {estimate.note}
                </Text>
              )}
              {estimate.validUntil !== null && (
                <Text size="sm" c="dimmed" mb="sm">
                  Valid until {format.date(estimate.validUntil)}
                </Text>
              )}
              <PaperButton paper={estimate.paper} />
            </Accordion.Panel>
          </Accordion.Item>
        ))}
      </Accordion>
    </Card>
  );
}

function OptionAsWritten(props: { estimate: Estimate; option: Estimate['options'][number] }) {
  const { revision, options } = props.estimate;
  const { label, lines, totals } = props.option;
  const named = options.length > 1;
  return (
    <>
      {named && (
        <Title order={4} mt="sm">
          {label}
        </Title>
      )}
      <BillLines
        lines={lines}
        caption={`Lines of revision ${revision}${named ? `, ${label}` : ''}`}
      />
      <Group justify="flex-end" mt="sm" mb="md">
        <TotalsList totals={totals} />
      </Group>
    </>
  );
}
