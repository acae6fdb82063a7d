import { Anchor, Button, Group, Paper, Stack, Text, TextInput, Title } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconSearch } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import type { JobDossier } from '../../shared/contract/counter/index.ts';
import type { EngineModel } from '../../shared/contract/specbook.ts';
import { CYCLE_LABELS } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { Empty, QueryView } from '../common/page.tsx';
import { RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';

const plate = ({ make, model }: { make: string; model: string }): string =>
  [make, model].filter((word) => word !== '').join(' ');

/** The first thing at the bench: which entry of the spec book this engine is measured against. */
export function ChooseEngine({
  job,
  onDone,
}: {
  readonly job: JobDossier;
  /** Called once an entry is chosen. */
  readonly onDone: () => void;
}) {
  const engine = job.machineDetails.engine;
  const [text, setText] = useState(engine.model);
  const [sought] = useDebouncedValue(text, 150);
  const models = useQuery(
    deskQuery.specbook.models.queryOptions({
      input: { text: sought },
      placeholderData: keepPreviousData,
    }),
  );
  const by = useBy();
  const choose = useWrite(deskQuery.bench.chooseEngineModel.mutationOptions());
  const addNew = `/spec-book?${new URLSearchParams({
    add: '1',
    for: job.code,
    make: engine.make,
    model: engine.model,
  })}`;
  return (
    <Stack maw={760}>
      <div>
        <Title order={2}>Which engine is it?</Title>
        <Text>
          Bands and places to measure come from the engine’s entry in the spec book. On the plate:{' '}
          <strong>{plate(engine) || 'nothing noted'}</strong>
          {engine.typeCode !== '' && `, type ${engine.typeCode}`}.
        </Text>
      </div>
      <TextInput
        label="Search the spec book"
        description="Make, model, or part of either"
        leftSection={<IconSearch size={20} aria-hidden />}
        size="lg"
        data-autofocus
        autoFocus
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      {choose.isError && <RefusalAlert error={choose.error} />}
      <QueryView query={models}>
        {(found) =>
          found.length === 0 ? (
            <Empty
              title="The spec book has no such engine yet"
              hint="Search with fewer letters, or add the engine; you come back here when it is done."
              action={
                <Button component={Link} to={addNew} size="md" h={48}>
                  Add to the spec book
                </Button>
              }
            />
          ) : (
            <Stack gap="xs">
              {found.map((model) => (
                <Found
                  key={model.id}
                  model={model}
                  busy={choose.isPending}
                  onUse={() =>
                    choose.mutate(
                      { by, jobId: job.id, engineModelId: model.id },
                      { onSuccess: onDone },
                    )
                  }
                />
              ))}
              <Text size="sm">
                Not among them?{' '}
                <Anchor component={Link} to={addNew} inherit>
                  Add to the spec book
                </Anchor>
              </Text>
            </Stack>
          )
        }
      </QueryView>
    </Stack>
  );
}

function Found(props: {
  readonly model: EngineModel;
  readonly busy: boolean;
  readonly onUse: () => void;
}) {
  const { model } = props;
  return (
    <Paper withBorder p="sm">
      <Group justify="space-between" wrap="nowrap">
        <div>
          <Text fw={600}>{plate(model)}</Text>
          <Text size="sm" c="dimmed">
            {CYCLE_LABELS[model.cycle]}, {model.cylinders}{' '}
            {model.cylinders === 1 ? 'cylinder' : 'cylinders'}
            {model.displacement !== null && `, ${Math.round(model.displacement)} cm³`} ·{' '}
            {model.specifications} specifications
            {model.unconfirmed > 0 && `, ${model.unconfirmed} unconfirmed`}
          </Text>
        </div>
        <Button
          size="md"
          h={48}
          variant="light"
          disabled={props.busy}
          onClick={props.onUse}
          aria-label={`Use ${plate(model)}`}
        >
          Use this entry
        </Button>
      </Group>
    </Paper>
  );
}
