import { Kbd, Loader } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconSearch } from '@tabler/icons-react';
import { keepPreviousData, skipToken, useQuery, useQueryClient } from '@tanstack/react-query';
import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import { useNavigate } from 'react-router';
import { deskQuery } from '../desk.ts';
import { RefusalAlert } from '../refusal.tsx';
import { type Found, foundHit, foundPages } from './hits.ts';
import classes from './search.module.css';

/** Short enough not to be felt, long enough not to ask for every letter of a fast hand. */
const PAUSE = 110;

const searchOptions = (text: string) =>
  deskQuery.counter.search.queryOptions({
    input: text === '' ? skipToken : { text },
    placeholderData: keepPreviousData,
  });

interface SearchBoxProps {
  onClose: () => void;
  /** Told before it closes that something is opened. */
  onGo: () => void;
}

export function SearchBox({ onClose, onGo }: SearchBoxProps) {
  const navigate = useNavigate();
  const client = useQueryClient();
  const list = useId();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const wanted = typed.trim();
  const [asked] = useDebouncedValue(wanted, PAUSE);
  const query = useQuery(searchOptions(asked));

  const hits = wanted === '' ? [] : (query.data ?? []);
  const found = [...hits.map(foundHit), ...foundPages(wanted)];
  const current = Math.min(at, found.length - 1);
  const settled = asked === wanted && !query.isFetching && !query.isPlaceholderData;

  const open = (one: Found | undefined) => {
    if (one === undefined) return;
    onGo();
    onClose();
    void navigate(one.to);
  };

  const enter = async () => {
    if (settled || wanted === '' || at > 0) return open(found[current]);
    // A fast hand presses Enter before the answer is there: open the first of that answer.
    const answer = await client.fetchQuery(
      deskQuery.counter.search.queryOptions({ input: { text: wanted } }),
    );
    open([...answer.map(foundHit), ...foundPages(wanted)][0]);
  };

  const steer = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return;
    const steps: Record<string, number> = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 };
    const step = steps[event.key];
    if (event.key === 'Enter') {
      event.preventDefault();
      enter().catch(() => query.refetch());
    } else if (step !== undefined && found.length > 0) {
      event.preventDefault();
      const next = current + step;
      const wraps = Math.abs(step) === 1;
      setAt(
        wraps
          ? (next + found.length) % found.length
          : Math.min(Math.max(next, 0), found.length - 1),
      );
    }
  };

  return (
    <div>
      <div className={classes.bar}>
        {query.isFetching ? <Loader size={20} aria-hidden /> : <IconSearch size={20} aria-hidden />}
        <input
          className={classes.input}
          role="combobox"
          aria-label="Search jobs, customers, machines, parts and engine models"
          aria-expanded={found.length > 0}
          aria-controls={list}
          aria-activedescendant={current >= 0 ? `${list}-${current}` : undefined}
          aria-autocomplete="list"
          autoComplete="off"
          spellCheck={false}
          placeholder="Name, serial number, job, part …"
          data-autofocus
          value={typed}
          onChange={(event) => {
            setTyped(event.currentTarget.value);
            setAt(0);
          }}
          onKeyDown={steer}
        />
        <Kbd aria-hidden>Esc</Kbd>
      </div>
      <RefusalAlert error={query.error} />
      <FoundList id={list} found={found} current={current} onPick={open} onPoint={setAt} />
      <p role="status" className={classes.status}>
        {statusOf(wanted, settled, hits.length)}
      </p>
    </div>
  );
}

function statusOf(wanted: string, settled: boolean, count: number): string {
  if (wanted === '') return 'Accents and case don’t matter: zolkiewska finds Żółkiewska.';
  if (!settled) return 'Searching …';
  if (count === 0)
    return 'Nothing in the store answers to that. Try fewer letters or the serial number.';
  return count === 1 ? '1 found' : `${count} found`;
}

interface FoundListProps {
  id: string;
  found: readonly Found[];
  current: number;
  onPick: (one: Found) => void;
  onPoint: (index: number) => void;
}

function FoundList({ id, found, current, onPick, onPoint }: FoundListProps) {
  useEffect(() => {
    document.getElementById(`${id}-${current}`)?.scrollIntoView({ block: 'nearest' });
  }, [id, current]);
  return (
    <div id={id} role="listbox" aria-label="Found" className={classes.list} tabIndex={-1}>
      {found.map((one, index) => (
        <div
          key={one.key}
          id={`${id}-${index}`}
          role="option"
          aria-selected={index === current}
          tabIndex={-1}
          className={classes.one}
          onMouseMove={() => index !== current && onPoint(index)}
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onPick(one)}
          onKeyDown={(event) => event.key === 'Enter' && onPick(one)}
        >
          <one.icon size={22} stroke={1.7} aria-hidden />
          <span className={classes.words}>
            <bdi className={classes.title}>{one.title}</bdi>
            {one.detail !== '' && <span className={classes.detail}>{one.detail}</span>}
          </span>
          <span className={classes.kind}>{one.kind}</span>
        </div>
      ))}
    </div>
  );
}
