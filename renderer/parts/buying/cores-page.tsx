import { Anchor, Button, Group, Table, Text } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import type { PartCores } from '../../../shared/contract/parts/index.ts';
import { CORE_MOVEMENT_LABELS } from '../../../shared/work/parts/cores.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { Sheet } from '../../common/sheet.tsx';
import { useMoney } from '../../common/shop.tsx';
import classes from './buying.module.css';
import { CoreDialog, type CoreStep } from './core-dialog.tsx';
import { useAmount } from './use-amount.ts';

/** Old parts against core charges: which are here, which are with the supplier. */
export function CoresPage() {
  const query = useQuery(deskQuery.parts.cores.queryOptions({ input: {} }));
  const [step, setStep] = useState<CoreStep | null>(null);
  return (
    <Page
      title="Cores"
      description="Old parts that came in against a core charge, until the supplier has credited them."
      actions={
        <Button
          leftSection={<IconPlus size={18} aria-hidden />}
          onClick={() => setStep({ what: 'taken-in', cores: null })}
        >
          Take an old part in
        </Button>
      }
    >
      <QueryView query={query}>
        {(parts) =>
          parts.length === 0 ? (
            <Empty
              title="No part has a core charge"
              hint="Write the core charge on a part’s price. Old ones that customers bring back are then kept here until they are credited."
            />
          ) : (
            <CoresTable parts={parts} onStep={setStep} />
          )
        }
      </QueryView>
      {step !== null && <CoreDialog step={step} onClose={() => setStep(null)} />}
    </Page>
  );
}

function CoresTable(props: { parts: readonly PartCores[]; onStep: (step: CoreStep) => void }) {
  const money = useMoney();
  return (
    <Sheet>
      <Table className={classes.table}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Part</Table.Th>
            <Table.Th className={classes.figure}>Core charge</Table.Th>
            <Table.Th className={classes.figure}>Here</Table.Th>
            <Table.Th>With the supplier</Table.Th>
            <Table.Th className={classes.figure}>Credited</Table.Th>
            <Table.Th>Latest</Table.Th>
            <Table.Th>
              <span className={classes.hidden}>What to do</span>
            </Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {props.parts.map((cores) => (
            <CoresRow key={cores.part.id} cores={cores} onStep={props.onStep} money={money} />
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}

function CoresRow(props: {
  cores: PartCores;
  onStep: (step: CoreStep) => void;
  money: (minor: number) => string;
}) {
  const { cores, onStep, money } = props;
  const amount = useAmount();
  const format = useFormat();
  const { part, here, away, events } = cores;
  const [latest] = events;
  return (
    <Table.Tr>
      <Table.Td>
        <Anchor inherit component={Link} to={`/part/${part.id}`} className={classes.number}>
          {part.number}
        </Anchor>
        <Text size="sm">{part.description}</Text>
      </Table.Td>
      <Table.Td className={classes.figure}>{money(cores.coreCharge)}</Table.Td>
      <Table.Td className={classes.figure}>{amount(here, part.unit)}</Table.Td>
      <Table.Td>
        {away.length === 0 && '–'}
        {away.map(({ supplierId, supplierName, quantity, expected }) => (
          <div key={supplierId}>
            {supplierName}: {amount(quantity, part.unit)}
            <div className={classes.small}>{money(expected)} expected</div>
          </div>
        ))}
      </Table.Td>
      <Table.Td className={classes.figure}>{money(cores.credited)}</Table.Td>
      <Table.Td>
        {latest === undefined ? (
          '–'
        ) : (
          <div className={classes.small}>
            {CORE_MOVEMENT_LABELS[latest.kind]} {format.day(latest.at)}, {latest.by}
            {latest.jobCode !== '' && `, from ${latest.jobCode}`}
          </div>
        )}
      </Table.Td>
      <Table.Td>
        <Group gap={4} justify="flex-end" wrap="nowrap">
          {here > 0 && (
            <Button
              size="compact-sm"
              variant="subtle"
              aria-label={`Send ${part.number} back`}
              onClick={() => onStep({ what: 'sent-back', cores })}
            >
              Send back
            </Button>
          )}
          {away.length > 0 && (
            <Button
              size="compact-sm"
              variant="subtle"
              aria-label={`Credit for ${part.number}`}
              onClick={() => onStep({ what: 'settled', cores })}
            >
              Credit came
            </Button>
          )}
        </Group>
      </Table.Td>
    </Table.Tr>
  );
}
