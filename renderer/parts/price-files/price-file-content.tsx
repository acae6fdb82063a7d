import { Group, Pagination, Text } from '@mantine/core';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { PriceFileCard } from '../../../shared/contract/parts/index.ts';
import {
  PRICE_CHANGE_LABELS,
  PRICE_CHANGES,
  type PriceChangeKind,
} from '../../../shared/work/parts/price-file/words.ts';
import { deskQuery } from '../../common/desk.ts';
import { QueryView } from '../../common/page.tsx';
import { useAddress } from '../../common/use-address.ts';
import { PriceLines, RepricedParts, UnreadableLines } from './price-file-lines.tsx';
import classes from './price-files.module.css';
import { useCount } from './use-count.ts';

const ON_A_PAGE = 250;

type Shown = PriceChangeKind | 'ours';

const LABELS: Record<Shown, string> = { ...PRICE_CHANGE_LABELS, ours: 'Your parts in it' };
const ALL: readonly Shown[] = ['ours', ...PRICE_CHANGES];

/** What is in a file, kind by kind: how many, and which. */
export function PriceFileContent({ file }: { file: PriceFileCard }) {
  const count = useCount();
  const [address, keep] = useAddress();
  // Usable lines are in the price list once the file was applied, and no longer beside it.
  const isOpen = (kind: Shown) => file.state === 'read' || kind === 'unreadable' || kind === 'ours';
  const many = (kind: Shown) => (kind === 'ours' ? file.ours : file.counts[kind]);
  const asked = ALL.find((kind) => kind === address('show') && isOpen(kind));
  const shown = asked ?? (file.counts.unreadable > 0 ? 'unreadable' : 'ours');
  const page = Math.max(1, Number.parseInt(address('page') ?? '1', 10) || 1);
  return (
    <section aria-label="What is in the file">
      <div className={classes.kinds}>
        {ALL.map((kind) => {
          const content = (
            <>
              <span>{LABELS[kind]}</span>
              <span className={classes.count}>{count(many(kind))}</span>
            </>
          );
          return isOpen(kind) ? (
            <button
              key={kind}
              type="button"
              className={classes.kind}
              aria-pressed={kind === shown}
              onClick={() => keep({ show: kind, page: null })}
            >
              {content}
            </button>
          ) : (
            <div key={kind} className={classes.kind}>
              {content}
            </div>
          );
        })}
      </div>
      <Lines file={file} shown={shown} page={page} />
      {shown !== 'ours' && many(shown) > ON_A_PAGE && (
        <Group justify="center" mt="md">
          <Pagination
            total={Math.ceil(many(shown) / ON_A_PAGE)}
            value={page}
            onChange={(to) => keep({ page: String(to) })}
            getControlProps={(control) => ({ 'aria-label': `${control} page` })}
            getItemProps={(item) => ({ 'aria-label': `Page ${item}` })}
          />
        </Group>
      )}
    </section>
  );
}

function Lines({ file, shown, page }: { file: PriceFileCard; shown: Shown; page: number }) {
  const stretch = { id: file.id, from: (page - 1) * ON_A_PAGE, limit: ON_A_PAGE };
  if (shown === 'unreadable') return <Unreadable stretch={stretch} />;
  if (shown === 'ours') return <Ours file={file} />;
  return <Changing stretch={{ ...stretch, change: shown }} />;
}

type Stretch = { id: PriceFileCard['id']; from: number; limit: number };

function Unreadable({ stretch }: { stretch: Stretch }) {
  const query = useQuery(
    deskQuery.parts.unreadableLines.queryOptions({
      input: stretch,
      placeholderData: keepPreviousData,
    }),
  );
  return (
    <QueryView query={query}>
      {(lines) =>
        lines.length === 0 ? (
          <Text role="status">Every line of this file could be read.</Text>
        ) : (
          <UnreadableLines lines={lines} />
        )
      }
    </QueryView>
  );
}

function Changing({
  stretch,
}: {
  stretch: Stretch & { change: Exclude<Shown, 'unreadable' | 'ours'> };
}) {
  const query = useQuery(
    deskQuery.parts.priceFileLines.queryOptions({
      input: stretch,
      placeholderData: keepPreviousData,
    }),
  );
  return (
    <QueryView query={query}>
      {(lines) =>
        lines.length === 0 ? (
          <Text role="status">The file has no such lines.</Text>
        ) : (
          <PriceLines lines={lines} />
        )
      }
    </QueryView>
  );
}

function Ours({ file }: { file: PriceFileCard }) {
  const count = useCount();
  const query = useQuery(
    deskQuery.parts.repricedParts.queryOptions({ input: { id: file.id, limit: 1000 } }),
  );
  return (
    <QueryView query={query}>
      {(parts) =>
        parts.length === 0 ? (
          <Text role="status">
            {file.state === 'read'
              ? 'None of your parts would change.'
              : 'None of your parts is changed by this file.'}
          </Text>
        ) : (
          <>
            <Text mb="sm">
              {file.state === 'read'
                ? `${count(parts.length)} of them would change.`
                : `${count(parts.length)} of them changed.`}
            </Text>
            <RepricedParts parts={parts} />
          </>
        )
      }
    </QueryView>
  );
}
