import { useQuery } from '@tanstack/react-query';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { Page, QueryView } from '../../common/page.tsx';
import { HandedOver } from './handed-over.tsx';
import { HandoverForm } from './handover-form.tsx';

/** The machine goes home: what is still open, what was done, and both signatures under it. */
export function HandoverPage() {
  const job = useJob();
  const matters = useQuery(
    deskQuery.counter.handoverMatters.queryOptions({ input: { jobId: job.id } }),
  );
  const leaving = useQuery(deskQuery.counter.leaving.queryOptions({ input: { jobId: job.id } }));
  const account = useQuery(deskQuery.till.account.queryOptions({ input: { jobId: job.id } }));
  if (job.state === 'handed-over')
    return (
      <Page title="Handover">
        <HandedOver job={job} />
      </Page>
    );
  return (
    <Page title="Handover">
      <QueryView query={matters}>
        {(known) => (
          <QueryView query={account}>
            {(money) => (
              <QueryView query={leaving}>
                {(words) => (
                  <HandoverForm
                    key={job.id}
                    job={job}
                    account={money}
                    matters={known}
                    leaving={words}
                  />
                )}
              </QueryView>
            )}
          </QueryView>
        )}
      </QueryView>
    </Page>
  );
}
