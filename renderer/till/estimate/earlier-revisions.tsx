import { Accordion, Group, Text } from '@mantine/core';
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
                <Text fw={600}>{money(estimate.totals.total)}</Text>
              </Group>
            </Accordion.Control>
            <Accordion.Panel>
              <BillLines
                lines={estimate.lines}
                caption={`Lines of revision ${estimate.revision}`}
              />
              <Group align="flex-start" gap="xl" mt="sm">
                <div>
                  {estimate.note !== '' && <Text size="sm">{estimate.note}</Text>}
                  {estimate.validUntil !== null && (
                    <Text size="sm" c="dimmed" mb="sm">
                      Valid until {format.date(estimate.validUntil)}
                    </Text>
                  )}
                  <PaperButton paper={estimate.paper} />
                </div>
                <TotalsList totals={estimate.totals} />
              </Group>
            </Accordion.Panel>
          </Accordion.Item>
        ))}
      </Accordion>
    </Card>
  );
}
