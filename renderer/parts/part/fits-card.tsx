import {
  ActionIcon,
  Button,
  Group,
  NativeSelect,
  Select,
  Stack,
  Text,
  TextInput,
} from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconX } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { EngineModelId } from '../../../shared/contract/ids.ts';
import type { Fit, PartDossier } from '../../../shared/contract/parts/index.ts';
import { parseReading } from '../../../shared/trade/index.ts';
import {
  FITTED_PART_LABELS,
  FITTED_PARTS,
} from '../../../shared/work/bench/deciding/decision-parts.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { fittedWords } from './fitted-words.ts';

const FITTED: { value: Fit['fitted']; label: string }[] = [
  ...FITTED_PARTS.map((value) => ({ value, label: FITTED_PART_LABELS[value] })),
  { value: 'other', label: 'Something else' },
];

/** Which engine models the part fits; the bench offers it by that when it decides on an oversize. */
export function FitsCard({ dossier: { part, fits } }: { dossier: PartDossier }) {
  const by = useBy();
  const [model, setModel] = useState<EngineModelId | null>(null);
  const [fitted, setFitted] = useState<Fit['fitted']>('piston');
  const [size, setSize] = useState('');
  const set = useWrite(
    deskQuery.parts.setFits.mutationOptions({
      onSuccess: () => {
        setModel(null);
        setSize('');
      },
    }),
  );
  const step = stepOf(size);
  const keep = (next: readonly Omit<Fit, 'model'>[]) =>
    set.mutate({
      by,
      partId: part.id,
      fits: next.map(({ engineModelId, fitted: what, step: over }) => ({
        engineModelId,
        fitted: what,
        step: over,
      })),
    });
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (model !== null && step !== null) keep([...fits, { engineModelId: model, fitted, step }]);
  };
  return (
    <Card title="Fits">
      <Stack gap="sm">
        {fits.length === 0 && (
          <Text size="sm" c="dimmed">
            Say what it is on which engine, and the bench is offered it when it decides.
          </Text>
        )}
        {fits.map((fit) => (
          <Group key={`${fit.engineModelId} ${fit.fitted} ${fit.step}`} gap="xs" wrap="nowrap">
            <Text fw={600}>{fit.model}</Text>
            <Text size="sm" flex={1}>
              {fittedWords(fit)}
            </Text>
            <ActionIcon
              variant="subtle"
              color="gray"
              aria-label={`It doesn’t fit ${fit.model}: ${fittedWords(fit)}`}
              onClick={() => keep(fits.filter((other) => other !== fit))}
            >
              <IconX size={18} aria-hidden />
            </ActionIcon>
          </Group>
        ))}
        <form onSubmit={add} noValidate aria-label="Add an engine that it fits">
          <Group align="flex-end" gap="xs">
            <ModelField value={model} onChange={setModel} />
            <NativeSelect
              size="md"
              label="There it is"
              data={FITTED}
              value={fitted}
              onChange={(event) => {
                const chosen = FITTED.find(({ value }) => value === event.currentTarget.value);
                if (chosen !== undefined) setFitted(chosen.value);
              }}
            />
            <TextInput
              label="Oversize, mm"
              w="8rem"
              placeholder="standard"
              inputMode="decimal"
              autoComplete="off"
              value={size}
              error={step === null ? 'A size, as 0.5 or −0.25.' : undefined}
              onChange={(event) => setSize(event.currentTarget.value)}
            />
            <Button type="submit" variant="light" disabled={model === null} loading={set.isPending}>
              Add
            </Button>
          </Group>
        </form>
        <RefusalAlert error={set.error} />
      </Stack>
    </Card>
  );
}

/** The oversize typed, in mm, undersize below zero; nothing typed is the standard size; null when it can't be read. */
function stepOf(typed: string): number | null {
  const text = typed.trim().replace(/^[−–]/, '-');
  if (text === '') return 0;
  const under = text.startsWith('-');
  try {
    const { value, unit } = parseReading(text.replace(/^[-+]\s*/, ''), 'mm');
    const size = unit === 'in' ? value * 25.4 : value;
    return Math.round((under ? -size : size) * 1000) / 1000;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function ModelField(props: {
  value: EngineModelId | null;
  onChange: (id: EngineModelId | null) => void;
}) {
  const [typed, setTyped] = useState('');
  const [text] = useDebouncedValue(typed, 150);
  const query = useQuery({
    ...deskQuery.specbook.models.queryOptions({ input: { text } }),
    placeholderData: keepPreviousData,
  });
  return (
    <Select
      label="Engine"
      placeholder="Make or model"
      flex="1 1 10rem"
      searchable
      selectFirstOptionOnChange
      nothingFoundMessage="The spec book has no such engine."
      data={(query.data ?? [])
        .slice(0, 30)
        .map(({ id, make, model }) => ({ value: id, label: `${make} ${model}` }))}
      filter={({ options }) => options}
      value={props.value}
      onSearchChange={setTyped}
      onChange={(id) => props.onChange(id === null ? null : EngineModelId.parse(id))}
    />
  );
}
