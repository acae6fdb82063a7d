import { Anchor } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'react-router';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Page, QueryView } from '../../common/page.tsx';
import { binWords } from './bin-words.ts';
import { CountOutcome } from './count-outcome.tsx';
import { CountSheet } from './count-sheet.tsx';

/** The count of one bin: its sheet while it is open, what came of it afterwards. */
export function CountPage() {
  const { id = '' } = useParams();
  const format = useFormat();
  const query = useQuery(deskQuery.parts.count.queryOptions({ input: { id } }));
  return (
    <QueryView query={query}>
      {(count) => (
        <Page
          title={binWords(count.bin)}
          description={
            <>
              {count.closedAt === null ? 'Begun' : 'Counted'} by {count.by},{' '}
              {format.instant(count.closedAt ?? count.at)} ·{' '}
              <Anchor inherit component={Link} to="/parts/counts">
                All counts
              </Anchor>
            </>
          }
        >
          {count.closedAt === null ? <CountSheet count={count} /> : <CountOutcome count={count} />}
        </Page>
      )}
    </QueryView>
  );
}
