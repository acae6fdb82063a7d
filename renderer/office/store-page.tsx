import { useQuery } from '@tanstack/react-query';
import { deskQuery } from '../common/desk.ts';
import { Page } from '../common/page.tsx';
import { BackUpsCard } from './back-ups/back-ups-card.tsx';
import { BroughtBack } from './back-ups/brought-back.tsx';
import { JournalCard } from './journal-card.tsx';
import classes from './office.module.css';

/** The store: copies of it, and the journal that shows that nothing in it was touched. */
export function StorePage() {
  const query = useQuery(deskQuery.office.backUps.queryOptions({ input: {} }));
  const underWay = query.data?.underWay ?? null;
  const bringing = underWay?.kind === 'bring-back' ? underWay.id : null;
  return (
    <Page
      title="Back-up and journal"
      description="Copies that are verified and can be brought back, and a record of every write that can be checked."
    >
      <div className={classes.form}>
        <BroughtBack elsewhere={bringing} />
        <BackUpsCard query={query} />
        <JournalCard />
      </div>
    </Page>
  );
}
