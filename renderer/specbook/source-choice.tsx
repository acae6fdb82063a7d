import { NativeSelect, SimpleGrid, Stack, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useEffectEvent } from 'react';
import { z } from 'zod';
import { SOURCE_KIND_LABELS, SOURCE_KINDS, type SourceKind } from '../../shared/work/vocabulary.ts';
import { DateField } from '../common/date-field.tsx';
import { deskQuery } from '../common/desk.ts';
import classes from './specbook.module.css';
import { sourceWords } from './specification-words.ts';

/** A source as it is being chosen: one that is known, or a new one written out. */
export interface SourceDraft {
  /** Id of a known source; `new` for one that is written out; empty while nothing is chosen. */
  sourceId: string;
  kind: SourceKind;
  title: string;
  edition: string;
  date: string | null;
  page: string;
}

export const NO_SOURCE: SourceDraft = {
  sourceId: '',
  kind: 'makers-manual',
  title: '',
  edition: '',
  date: null,
  page: '',
};

const Kind = z.enum(SOURCE_KINDS);

/** Chooses where a figure stands, or writes a new source out in place. */
export function SourceChoice({
  draft,
  onChange,
  errors,
}: {
  readonly draft: SourceDraft;
  readonly onChange: (change: Partial<SourceDraft>) => void;
  readonly errors: Record<string, string>;
}) {
  const sources = useQuery(deskQuery.specbook.sources.queryOptions({ input: {} }));
  const known = sources.data ?? [];
  const first = sources.data?.length === 0;
  const writeOut = useEffectEvent(() => {
    if (draft.sourceId === '') onChange({ sourceId: 'new' });
  });
  // A book without sources leaves nothing to choose from.
  useEffect(() => {
    if (first) writeOut();
  }, [first]);
  return (
    <fieldset className={classes.fieldset}>
      <legend>Where it comes from</legend>
      <Stack gap="sm">
        <SimpleGrid cols={{ base: 1, xs: 2 }}>
          <NativeSelect
            size="md"
            label="Source"
            required
            data={[
              { value: '', label: 'Choose …', disabled: true },
              ...known.map((source) => ({ value: source.id, label: sourceWords(source, '') })),
              { value: 'new', label: 'Another source, written out below' },
            ]}
            value={draft.sourceId}
            onChange={(event) => onChange({ sourceId: event.currentTarget.value })}
            error={errors.sourceId}
          />
          <TextInput
            label="Page"
            value={draft.page}
            onChange={(event) => onChange({ page: event.currentTarget.value })}
            error={errors.page}
          />
        </SimpleGrid>
        {draft.sourceId === 'new' && (
          <SimpleGrid cols={{ base: 1, xs: 2 }}>
            <NativeSelect
              size="md"
              label="Kind of source"
              description="Common practice and hearsay confirm nothing"
              data={SOURCE_KINDS.map((kind) => ({ value: kind, label: SOURCE_KIND_LABELS[kind] }))}
              value={draft.kind}
              onChange={(event) => onChange({ kind: Kind.parse(event.currentTarget.value) })}
            />
            <TextInput
              label="Title"
              description="As it stands on the cover or the sheet"
              required
              value={draft.title}
              onChange={(event) => onChange({ title: event.currentTarget.value })}
              error={errors.title}
            />
            <TextInput
              label="Edition"
              value={draft.edition}
              onChange={(event) => onChange({ edition: event.currentTarget.value })}
              error={errors.edition}
            />
            <DateField
              label="Date"
              value={draft.date}
              onChange={(date) => onChange({ date })}
              error={errors.date}
            />
          </SimpleGrid>
        )}
      </Stack>
    </fieldset>
  );
}
