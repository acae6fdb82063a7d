import { Button, Group, Modal, SegmentedControl, Select, Stack, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { type ReactNode, type SyntheticEvent, useState } from 'react';
import type { JobId, PartId, SupplierId } from '../../../shared/contract/ids.ts';
import type { Part, PartCores } from '../../../shared/contract/parts/index.ts';
import { costAt } from '../../../shared/work/parts/stock-ledger.ts';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { JobField } from '../job-field.tsx';
import { QuantityInput } from '../quantity-input.tsx';
import { PartField } from './part-field.tsx';

/** What happens next to old parts: of any part when they come in, else of one. */
export type CoreStep =
  | { what: 'taken-in'; cores: null }
  | { what: 'sent-back' | 'settled'; cores: PartCores };

export function CoreDialog({ step, onClose }: { step: CoreStep; onClose: () => void }) {
  switch (step.what) {
    case 'taken-in':
      return <TakeIn onClose={onClose} />;
    case 'sent-back':
      return <SendBack cores={step.cores} onClose={onClose} />;
    case 'settled':
      return <Settle cores={step.cores} onClose={onClose} />;
  }
}

const ONE = 1000;

function TakeIn({ onClose }: { onClose: () => void }) {
  const by = useBy();
  const [part, setPart] = useState<Part | null>(null);
  const [quantity, setQuantity] = useState<number | null>(ONE);
  const [jobId, setJobId] = useState<JobId | null>(null);
  const [note, setNote] = useState('');
  const write = useWrite(deskQuery.parts.takeInCore.mutationOptions({ onSuccess: onClose }));
  const errors = fieldErrors(write.error);
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (part === null || quantity === null || quantity <= 0) return;
    write.mutate({ by, partId: part.id, quantity, jobId, note });
  };
  return (
    <Modal opened onClose={onClose} title="Take an old part in">
      <form onSubmit={send}>
        <Stack gap="sm">
          <PartField label="What it is an old one of" value={part} onChange={setPart} />
          <QuantityInput
            label="How many"
            unit={part?.unit ?? 'pc'}
            value={quantity}
            error={errors.quantity}
            onChange={setQuantity}
          />
          <JobField label="From the job" value={jobId} onChange={setJobId} error={errors.jobId} />
          <TextInput
            label="Note"
            maxLength={300}
            value={note}
            onChange={(event) => setNote(event.currentTarget.value)}
          />
          <RefusalAlert error={write.error} />
          <Foot onClose={onClose}>
            <Button type="submit" loading={write.isPending} disabled={part === null}>
              Take it in
            </Button>
          </Foot>
        </Stack>
      </form>
    </Modal>
  );
}

function SendBack({ cores, onClose }: { cores: PartCores; onClose: () => void }) {
  const by = useBy();
  const { part, here, coreCharge } = cores;
  const suppliers = useQuery(deskQuery.parts.suppliers.queryOptions({ input: {} }));
  const [supplierId, setSupplierId] = useState<SupplierId | null>(cores.supplierId);
  const [quantity, setQuantity] = useState<number | null>(here);
  const [typed, setTyped] = useState<number | null>(null);
  const [note, setNote] = useState('');
  const expected = typed ?? costAt(coreCharge, quantity ?? 0);
  const write = useWrite(deskQuery.parts.sendCoreBack.mutationOptions({ onSuccess: onClose }));
  const errors = fieldErrors(write.error);
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (supplierId === null || quantity === null || quantity <= 0) return;
    write.mutate({ by, partId: part.id, supplierId, quantity, expected, note });
  };
  return (
    <Modal opened onClose={onClose} title={`Send back: ${part.number}`}>
      <form onSubmit={send}>
        <Stack gap="sm">
          <Select
            label="To"
            required
            searchable
            data={(suppliers.data ?? []).map(({ id, name }) => ({ value: id, label: name }))}
            value={supplierId}
            error={errors.supplierId}
            onChange={(id) =>
              setSupplierId(suppliers.data?.find((each) => each.id === id)?.id ?? null)
            }
          />
          <QuantityInput
            label="How many"
            unit={part.unit}
            value={quantity}
            data-autofocus
            error={errors.quantity}
            onChange={setQuantity}
          />
          <MoneyInput
            label="Credit expected for all of them"
            value={expected}
            error={errors.expected}
            onChange={setTyped}
          />
          <TextInput
            label="Note"
            maxLength={300}
            value={note}
            onChange={(event) => setNote(event.currentTarget.value)}
          />
          <RefusalAlert error={write.error} />
          <Foot onClose={onClose}>
            <Button type="submit" loading={write.isPending} disabled={supplierId === null}>
              It is on its way
            </Button>
          </Foot>
        </Stack>
      </form>
    </Modal>
  );
}

const OUTCOMES = [
  { value: 'credited', label: 'Credited' },
  { value: 'refused', label: 'Refused' },
] as const;

function Settle({ cores, onClose }: { cores: PartCores; onClose: () => void }) {
  const by = useBy();
  const { away, part } = cores;
  const [supplierId, setSupplierId] = useState(away[0]?.supplierId ?? null);
  const at = away.find((each) => each.supplierId === supplierId);
  const [outcome, setOutcome] = useState<'credited' | 'refused'>('credited');
  const [quantity, setQuantity] = useState<number | null>(at?.quantity ?? null);
  const [amount, setAmount] = useState<number | null>(at?.expected ?? null);
  const [note, setNote] = useState('');
  const write = useWrite(deskQuery.parts.settleCore.mutationOptions({ onSuccess: onClose }));
  const errors = fieldErrors(write.error);
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (supplierId === null || quantity === null || quantity <= 0) return;
    const partId: PartId = part.id;
    write.mutate({ by, partId, supplierId, outcome, quantity, amount: amount ?? 0, note });
  };
  return (
    <Modal opened onClose={onClose} title={`What became of ${part.number}`}>
      <form onSubmit={send}>
        <Stack gap="sm">
          {away.length > 1 && (
            <Select
              label="With"
              data={away.map((each) => ({ value: each.supplierId, label: each.supplierName }))}
              value={supplierId}
              onChange={(id) =>
                setSupplierId(away.find((each) => each.supplierId === id)?.supplierId ?? null)
              }
            />
          )}
          <SegmentedControl<'credited' | 'refused'>
            fullWidth
            aria-label="What the supplier did"
            data={[...OUTCOMES]}
            value={outcome}
            onChange={setOutcome}
          />
          <QuantityInput
            label="How many"
            unit={part.unit}
            value={quantity}
            error={errors.quantity}
            onChange={setQuantity}
          />
          {outcome === 'credited' && (
            <MoneyInput
              label="Credited for all of them"
              value={amount}
              error={errors.amount}
              onChange={setAmount}
            />
          )}
          <TextInput
            label="Note"
            maxLength={300}
            value={note}
            onChange={(event) => setNote(event.currentTarget.value)}
          />
          <RefusalAlert error={write.error} />
          <Foot onClose={onClose}>
            <Button type="submit" loading={write.isPending}>
              Write it down
            </Button>
          </Foot>
        </Stack>
      </form>
    </Modal>
  );
}

function Foot({ onClose, children }: { onClose: () => void; children: ReactNode }) {
  return (
    <Group justify="flex-end">
      <Button variant="default" onClick={onClose}>
        Not now
      </Button>
      {children}
    </Group>
  );
}
