import { Button, Checkbox, Group, Text, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconPlus, IconSearch } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { type KeyboardEvent, useRef, useState } from 'react';
import { useNavigate, useSearchParams } from 'react-router';
import type { Part } from '../../shared/contract/parts.ts';
import { foldNumber } from '../../shared/work/fold.ts';
import { desk, deskQuery } from '../common/desk.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { AddPart } from './add-part.tsx';
import { PartsTable } from './parts-table.tsx';
import { shelfLevel } from './stock.ts';

const SHOWN = 200;

/** What is on the shelf: searched by number, name, bin or barcode. */
export function PartsPage() {
  const navigate = useNavigate();
  const list = useRef<HTMLDivElement>(null);
  const [address, setAddress] = useSearchParams();
  const text = address.get('q') ?? '';
  const onlyLow = address.has('low');
  const [adding, setAdding] = useState(false);
  const [wanted] = useDebouncedValue(text, 150);
  const query = useQuery({
    ...deskQuery.parts.find.queryOptions({ input: { text: wanted, limit: SHOWN } }),
    placeholderData: keepPreviousData,
  });

  const look = (change: { q?: string; low?: boolean }) => {
    const next = new URLSearchParams();
    const q = change.q ?? text;
    if (q !== '') next.set('q', q);
    if (change.low ?? onlyLow) next.set('low', '');
    setAddress(next, { replace: true });
  };

  const keys = async (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.nativeEvent.isComposing) return;
    if (event.key === 'ArrowDown') {
      event.preventDefault();
      list.current?.querySelector<HTMLElement>('a')?.focus();
    }
    if (event.key === 'Enter') {
      const part = await exactPart(event.currentTarget.value).catch(() => null);
      if (part !== null) await navigate(`/part/${part.id}`);
    }
  };

  return (
    <Page
      title="Parts"
      actions={
        <Button leftSection={<IconPlus size={18} aria-hidden />} onClick={() => setAdding(true)}>
          Add a part
        </Button>
      }
    >
      <Group align="center" gap="lg" mb="md">
        <TextInput
          aria-label="Search parts"
          placeholder="Number, name, bin, supplier or barcode"
          leftSection={<IconSearch size={18} aria-hidden />}
          data-autofocus
          autoFocus
          autoComplete="off"
          maxLength={200}
          style={{ flex: '1 1 20rem', maxWidth: '34rem' }}
          value={text}
          onChange={(event) => look({ q: event.currentTarget.value })}
          onKeyDown={keys}
        />
        <Checkbox
          label="Only what wants reordering"
          checked={onlyLow}
          onChange={(event) => look({ low: event.currentTarget.checked })}
        />
      </Group>
      <div ref={list}>
        <QueryView query={query}>
          {(found) => {
            const parts = onlyLow ? found.filter((part) => shelfLevel(part) !== 'enough') : found;
            return parts.length === 0 ? (
              <NothingFound text={wanted} onlyLow={onlyLow} onAdd={() => setAdding(true)} />
            ) : (
              <>
                <PartsTable parts={parts} />
                {found.length === SHOWN && (
                  <Text size="sm" c="dimmed" mt="xs">
                    The first {SHOWN} are shown. Type more of the number or name to see the rest.
                  </Text>
                )}
              </>
            );
          }}
        </QueryView>
      </div>
      <AddPart
        opened={adding}
        suggestedNumber={query.data?.length === 0 ? text : ''}
        onClose={() => setAdding(false)}
        onAdded={(part) => navigate(`/part/${part.id}`)}
      />
    </Page>
  );
}

function NothingFound(props: { text: string; onlyLow: boolean; onAdd: () => void }) {
  if (props.onlyLow) {
    return (
      <Empty
        title="Nothing wants reordering"
        hint="Every shelf that was found holds more than its reorder point."
      />
    );
  }
  const add = (
    <Button variant="light" onClick={props.onAdd}>
      Add a part
    </Button>
  );
  return props.text === '' ? (
    <Empty
      title="No parts yet"
      hint="Add what is on the shelf: number, name, bin and price. Estimates then find it by number or barcode."
      action={add}
    />
  ) : (
    <Empty
      title={`No part goes with “${props.text}”`}
      hint="Spaces, dashes and capitals don’t matter in a number. Try less of it, or a word of the name."
      action={add}
    />
  );
}

/** The only part whose number or barcode is exactly this, as a reader types it. */
async function exactPart(typed: string): Promise<Part | null> {
  const wanted = foldNumber(typed);
  if (wanted === '') return null;
  const found = await desk.parts.find({ text: typed.trim(), limit: 50 });
  const exact = found.filter((part) =>
    [part.number, part.barcode].some((number) => foldNumber(number) === wanted),
  );
  return exact.length === 1 ? (exact[0] ?? null) : null;
}
