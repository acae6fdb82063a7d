import { Page } from '../common/page.tsx';
import { BackUpCard } from './back-up-card.tsx';
import { JournalCard } from './journal-card.tsx';
import classes from './office.module.css';

/** The store: copies of it, and the journal that shows that nothing in it was touched. */
export function StorePage() {
  return (
    <Page
      title="Back-up and journal"
      description="A copy that is verified, and a record of every write that can be checked."
    >
      <div className={classes.form}>
        <BackUpCard />
        <JournalCard />
      </div>
    </Page>
  );
}
