import { Alert, List, Text } from '@mantine/core';
import { IconAlertTriangle, IconCircleCheck } from '@tabler/icons-react';
import { useEffect, useRef } from 'react';
import type { FoundBackUp } from '../../../shared/contract/back-ups.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { useShop } from '../../common/shop.tsx';
import { journalWords } from '../journal-words.ts';
import classes from './back-ups.module.css';
import { lostWords } from './lost-words.ts';
import { sizeText } from './size-text.ts';

/** What is in a back-up that was checked, and what would be lost. */
export function FoundFacts({ found }: { found: FoundBackUp }) {
  const format = useFormat();
  const { locale } = useShop();
  const start = useRef<HTMLDivElement>(null);
  useEffect(() => start.current?.focus({ preventScroll: true }), []);
  const { lastEntry, madeAt, lost } = found;
  return (
    <div ref={start} tabIndex={-1} className={classes.column}>
      <Card title="What is in it" icon={<IconCircleCheck aria-hidden />}>
        <dl className={classes.facts}>
          <dt>Shop</dt>
          <dd>
            <b>{found.shop || 'Not named'}</b>
            {found.demo && ' (an invented shop)'}
          </dd>
          <dt>Made</dt>
          <dd>{madeAt === null ? 'Its name does not say' : format.instant(madeAt)}</dd>
          {lastEntry !== null && (
            <>
              <dt>Last written</dt>
              <dd>
                {format.instant(lastEntry.at)}: {journalWords(lastEntry.what)}
                {lastEntry.by !== '' && ` (${lastEntry.by})`}
              </dd>
            </>
          )}
          <dt>In numbers</dt>
          <dd>
            {counted(found.customers, 'customer')}, {counted(found.jobs, 'job')},{' '}
            {counted(found.invoices, 'invoice')}
          </dd>
          <dt>File</dt>
          <dd>
            {found.fileName}, {sizeText(found.bytes, locale)}
          </dd>
          <dt>SHA-256</dt>
          <dd className={classes.fingerprint}>{found.sha256}</dd>
        </dl>
        <Text size="sm" mt="sm">
          The file is whole, and its journal holds together.
          {found.older &&
            ' An older Tappet made it; it is brought up to this version, and kept as it is, too.'}
        </Text>
      </Card>
      {lost.storeEntries > 0 && <WouldBeLost lost={lost} />}
    </div>
  );
}

const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

const cameAfter = (entries: number): string =>
  entries === 1
    ? 'One thing was written after this back-up was made'
    : `${entries} things were written after this back-up was made`;

function WouldBeLost({ lost }: { lost: FoundBackUp['lost'] }) {
  const words = lostWords(lost);
  if (lost.sameShop && lost.entries === 0)
    return (
      <Alert
        variant="light"
        color="green"
        icon={<IconCircleCheck aria-hidden />}
        title="Nothing of what is in the shop now would be lost"
      />
    );
  return (
    <Alert
      variant="light"
      color="orange"
      icon={<IconAlertTriangle aria-hidden />}
      title={
        lost.sameShop ? 'What would be lost' : 'This is another shop than the one that is open'
      }
    >
      <Text size="sm">
        {lost.sameShop ? cameAfter(lost.entries) : 'All that is in the shop now makes way for it'}
        {words.length > 0 ? ':' : '; no job, invoice, payment, reading or customer is among that.'}
      </Text>
      {words.length > 0 && (
        <List size="sm" my={6}>
          {words.map((each) => (
            <List.Item key={each}>{each}</List.Item>
          ))}
        </List>
      )}
      {lost.invoices.length > 0 && (
        <Text size="sm">
          Their numbers will be given out once more. Write these invoices anew in the same order, or
          ask whoever does your books, before you issue others.
        </Text>
      )}
    </Alert>
  );
}
