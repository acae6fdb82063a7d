import { Button, Checkbox, Group, Text, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconPlus, IconSearch } from '@tabler/icons-react';
import { type KeyboardEvent, useCallback, useEffect, useState } from 'react';
import { useNavigate, useSearchParams } from 'react-router';
import { useArrowRows } from '../common/arrow-rows.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { AddPart } from './add-part.tsx';
import { partByNumber, useFoundParts } from './find-parts.ts';
import { PartsTable } from './parts-table.tsx';
import { shelfLevel } from './stock.ts';

const SHOWN = 200;

/** What is on the shelf: searched by number, name, bin or barcode. */
export function PartsPage() {
  const navigate = useNavigate();
  const [address, setAddress] = useSearchParams();
  const onlyLow = address.has('low');
  const [typed, setTyped] = useState(address.get('text') ?? '');
  const [text] = useDebouncedValue(typed.trim(), 150);
  const [adding, setAdding] = useState(false);
  const query = useFoundParts(text, SHOWN);
  const rows = useArrowRows<HTMLTableElement>(
    text === typed.trim() && query.data !== undefined && !query.isPlaceholderData,
  );

  const keep = useCallback(
    (name: 'text' | 'low', value: string | null) =>
      setAddress(
        (before) => {
          const after = new URLSearchParams(before);
          if (value === null) after.delete(name);
          else after.set(name, value);
          return after;
        },
        { replace: true },
      ),
    [setAddress],
  );
  useEffect(() => keep('text', text === '' ? null : text), [keep, text]);

  const enter = async (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter' || event.nativeEvent.isComposing) {
      rows.onFilterKey(event);
      return;
    }
    event.preventDefault();
    const part = await partByNumber(typed).catch(() => null);
    const only = part ?? (query.data?.length === 1 && text === typed.trim() ? query.data[0] : null);
    if (only) await navigate(`/part/${only.id}`);
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
          ref={rows.filter}
          autoFocus
          autoComplete="off"
          maxLength={200}
          style={{ flex: '1 1 20rem', maxWidth: '34rem' }}
          value={typed}
          onChange={(event) => setTyped(event.currentTarget.value)}
          onKeyDown={enter}
        />
        <Checkbox
          label="Only what wants reordering"
          checked={onlyLow}
          onChange={(event) => keep('low', event.currentTarget.checked ? '' : null)}
        />
      </Group>
      <QueryView query={query}>
        {(found) => {
          const parts = onlyLow ? found.filter((part) => shelfLevel(part) !== 'enough') : found;
          return parts.length === 0 ? (
            <NothingFound text={text} onlyLow={onlyLow} onAdd={() => setAdding(true)} />
          ) : (
            <>
              <PartsTable parts={parts} list={rows.list} onKey={rows.onListKey} />
              {found.length === SHOWN && (
                <Text size="sm" c="dimmed" mt="xs">
                  The first {SHOWN} are shown. Type more of the number or name to see the rest.
                </Text>
              )}
            </>
          );
        }}
      </QueryView>
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
