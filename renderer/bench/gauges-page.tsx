import { Anchor, Button, Table, Text } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import type { Gauge } from '../../shared/contract/bench/index.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import { GAUGE_KIND_LABELS } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { Sheet } from '../common/sheet.tsx';
import { CalibrationBadge } from './calibration-badge.tsx';
import { GaugeForm } from './gauge-form.tsx';

/** The shop's gauges: what each can tell apart, and whether its calibration still holds. */
export function GaugesPage() {
  const gauges = useQuery(deskQuery.bench.gauges.queryOptions({ input: {} }));
  const [adding, setAdding] = useState(false);
  const add = (
    <Button leftSection={<IconPlus size={18} aria-hidden />} onClick={() => setAdding(true)}>
      Add a gauge
    </Button>
  );
  return (
    <Page
      title="Gauges"
      description="A verdict takes into account how good the gauge is, so the gauge has to be on this list."
      actions={add}
    >
      <QueryView query={gauges}>
        {(list) =>
          list.length === 0 ? (
            <Empty
              title="No gauges yet"
              hint="Add the micrometer, the bore gauge, the leaves and the torque wrench that you measure with. Resolution and largest error stand in their papers."
              action={add}
            />
          ) : (
            <Sheet>
              <Table highlightOnHover>
                <Table.Thead>
                  <Table.Tr>
                    <Table.Th>Gauge</Table.Th>
                    <Table.Th>Range</Table.Th>
                    <Table.Th>Smallest step</Table.Th>
                    <Table.Th>Largest error</Table.Th>
                    <Table.Th>Good to</Table.Th>
                    <Table.Th>Calibration</Table.Th>
                  </Table.Tr>
                </Table.Thead>
                <Table.Tbody>
                  {list.map((gauge) => (
                    <GaugeRow key={gauge.id} gauge={gauge} />
                  ))}
                </Table.Tbody>
              </Table>
            </Sheet>
          )
        }
      </QueryView>
      <GaugeForm opened={adding} onClose={() => setAdding(false)} />
    </Page>
  );
}

function GaugeRow({ gauge }: { readonly gauge: Gauge }) {
  const format = useFormat();
  const unit = unitLabel(gauge.unit);
  return (
    <Table.Tr>
      <Table.Td>
        <Anchor component={Link} to={`/gauge/${gauge.id}`} fw={600}>
          {gauge.name}
        </Anchor>
        <Text size="sm" c="dimmed">
          {GAUGE_KIND_LABELS[gauge.kind]}
        </Text>
      </Table.Td>
      <Table.Td style={{ whiteSpace: 'nowrap' }}>
        {gauge.rangeLow}–{gauge.rangeHigh} {unit}
      </Table.Td>
      <Table.Td style={{ whiteSpace: 'nowrap' }}>
        {gauge.resolution} {unit}
      </Table.Td>
      <Table.Td style={{ whiteSpace: 'nowrap' }}>
        {gauge.maxError} {unit}
      </Table.Td>
      <Table.Td style={{ whiteSpace: 'nowrap' }}>
        ±{Number(gauge.uncertainty.toPrecision(2))} {unit}
      </Table.Td>
      <Table.Td>
        <CalibrationBadge gauge={gauge} />
        <Text size="sm" c="dimmed">
          {gauge.calibrationDue !== null && `due ${format.date(gauge.calibrationDue)}`}
          {gauge.certificate !== '' && ` · ${gauge.certificate}`}
        </Text>
      </Table.Td>
    </Table.Tr>
  );
}
