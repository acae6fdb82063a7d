import { Anchor, Button, Stack, Table, Text, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import {
  IconArrowsDiff,
  IconFileImport,
  IconPlus,
  IconProgressHelp,
  IconSearch,
} from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { JobCode } from '../../shared/contract/ids.ts';
import type { EngineModel } from '../../shared/contract/specbook.ts';
import { display } from '../../shared/trade/index.ts';
import { CYCLE_LABELS } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { Sheet } from '../common/sheet.tsx';
import { modelAddress, useErrand } from './book-errand.ts';
import { ImportForm } from './import-form.tsx';
import { ModelForm } from './model-form.tsx';
import classes from './specbook.module.css';

/** Every engine model that the shop has written specifications down for. */
export function SpecBookPage() {
  const errand = useErrand();
  const navigate = useNavigate();
  const [text, setText] = useState('');
  const [sought] = useDebouncedValue(text, 150);
  const [adding, setAdding] = useState(errand.add);
  const [importing, setImporting] = useState(false);
  const models = useQuery(
    deskQuery.specbook.models.queryOptions({
      input: { text: sought },
      placeholderData: keepPreviousData,
    }),
  );
  const add = (
    <Button leftSection={<IconPlus size={18} aria-hidden />} onClick={() => setAdding(true)}>
      Add an engine model
    </Button>
  );
  return (
    <Page
      title="Spec book"
      description="What each engine should measure, and where every figure comes from."
      actions={
        <>
          <Button
            variant="default"
            leftSection={<IconFileImport size={18} aria-hidden />}
            onClick={() => setImporting(true)}
          >
            Import…
          </Button>
          {add}
        </>
      }
    >
      <Stack>
        <TextInput
          aria-label="Search"
          placeholder="Make or model"
          leftSection={<IconSearch size={18} aria-hidden />}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
          maw={420}
          autoFocus={!adding}
        />
        <QueryView query={models}>
          {(found) =>
            found.length === 0 ? (
              sought === '' ? (
                <Empty
                  title="The spec book is empty"
                  hint="Add the engines that you see most often. A specification can come later, one at a time, each with its source."
                  action={add}
                />
              ) : (
                <Empty
                  title={`No engine model matches ‘${sought}’`}
                  hint="Search with fewer letters, or add the engine."
                  action={add}
                />
              )
            ) : (
              <ModelTable models={found} job={errand.job} />
            )
          }
        </QueryView>
      </Stack>
      <ModelForm
        opened={adding}
        make={errand.make}
        model={errand.model}
        onClose={() => setAdding(false)}
        onAdded={(id) => navigate(modelAddress(id, errand.job))}
      />
      <ImportForm
        opened={importing}
        onClose={() => setImporting(false)}
        onImported={(id) => navigate(modelAddress(id, errand.job))}
      />
    </Page>
  );
}

function ModelTable({
  models,
  job,
}: {
  readonly models: readonly EngineModel[];
  readonly job: JobCode | null;
}) {
  return (
    <Sheet>
      <Table highlightOnHover>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Engine</Table.Th>
            <Table.Th>Kind</Table.Th>
            <Table.Th>Bore × stroke</Table.Th>
            <Table.Th>Swept volume</Table.Th>
            <Table.Th>Specifications</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {models.map((model) => (
            <Table.Tr key={model.id}>
              <Table.Td>
                <Anchor component={Link} to={modelAddress(model.id, job)} fw={600}>
                  {model.make} {model.model}
                </Anchor>
                {model.variantOf !== null && (
                  <Text size="sm" c="dimmed">
                    variant of {model.variantOf.make} {model.variantOf.model}
                  </Text>
                )}
              </Table.Td>
              <Table.Td>
                {CYCLE_LABELS[model.cycle]}, {model.cylinders} cyl.
              </Table.Td>
              <Table.Td className={classes.figures}>{boreByStroke(model)}</Table.Td>
              <Table.Td className={classes.figures}>
                {model.displacement === null ? '–' : display(model.displacement, 'cm3')}
              </Table.Td>
              <Table.Td>
                {model.specifications === 0 ? 'none yet' : model.specifications}
                {model.unconfirmed > 0 && (
                  <Text size="sm" className={classes.unconfirmed}>
                    <IconProgressHelp size={16} aria-hidden /> {model.unconfirmed} unconfirmed
                  </Text>
                )}
                {model.contradicted > 0 && (
                  <Text size="sm" className={classes.unconfirmed}>
                    <IconArrowsDiff size={16} aria-hidden /> sources disagree on{' '}
                    {model.contradicted}
                  </Text>
                )}
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}

const boreByStroke = ({ bore, stroke }: EngineModel): string =>
  bore === null && stroke === null ? '–' : `${bore ?? '?'} × ${stroke ?? '?'} mm`;
