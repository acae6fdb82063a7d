import { Button, SimpleGrid } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { JobId } from '../../../shared/contract/ids.ts';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { inPacks } from '../../../shared/work/parts/order-quantity.ts';
import { deskQuery } from '../../common/desk.ts';
import { JobField } from '../job-field.tsx';
import { QuantityInput } from '../quantity-input.tsx';
import type { DraftLine } from './order-draft.ts';
import { PartField } from './part-field.tsx';

/** One more line of an order: a part, how many, and the job if it is for one alone. */
export function AddLine({ onAdd }: { onAdd: (line: DraftLine) => void }) {
  const [part, setPart] = useState<Part | null>(null);
  const [quantity, setQuantity] = useState<number | null>(null);
  const [jobId, setJobId] = useState<JobId | null>(null);
  const [asked, setAsked] = useState(false);
  const job = useQuery({
    ...deskQuery.counter.job.queryOptions({ input: { id: jobId ?? '' } }),
    enabled: jobId !== null,
  });
  const waits = jobId !== null && job.data === undefined;
  const noQuantity = quantity === null || quantity <= 0;

  const add = () => {
    setAsked(true);
    if (part === null || noQuantity || waits) return;
    onAdd({
      partId: part.id,
      number: part.number,
      description: part.description,
      unit: part.unit,
      packSize: part.packSize,
      supplierNumber: '',
      // What is for one job is ordered as it is; what is for the shelf comes in whole packs.
      quantity: jobId === null ? inPacks(quantity, part.packSize) : quantity,
      unitCost: part.cost,
      jobId,
      jobCode: jobId === null ? '' : (job.data?.code ?? ''),
    });
    setPart(null);
    setQuantity(null);
    setAsked(false);
  };

  return (
    <SimpleGrid cols={{ base: 1, sm: 2, lg: 4 }} spacing="sm" style={{ alignItems: 'start' }}>
      <PartField
        label="Part"
        value={part}
        onChange={setPart}
        error={asked && part === null ? 'Say which part.' : undefined}
      />
      <QuantityInput
        label="Quantity"
        unit={part?.unit ?? 'pc'}
        value={quantity}
        onChange={setQuantity}
        error={asked && noQuantity ? 'Say how many.' : undefined}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          add();
        }}
      />
      <JobField label="For one job alone" value={jobId} onChange={setJobId} error={undefined} />
      <Button
        variant="default"
        mt={{ base: 0, sm: 25 }}
        leftSection={<IconPlus size={18} aria-hidden />}
        loading={waits}
        onClick={add}
      >
        Add the line
      </Button>
    </SimpleGrid>
  );
}
