import { Button, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconFilter } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { deskQuery } from '../../common/desk.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { PageStrip } from '../../common/page-strip.tsx';
import { JOB_FILTERS, jobFilter } from './job-filters.ts';
import classes from './jobs.module.css';
import { JobsTable } from './jobs-table.tsx';

const STEP = 200;
const MOST = 1000;

/** All jobs, narrowed by whose move it is and by any word; the address keeps both. */
export function JobsPage() {
  const [params, setParams] = useSearchParams();
  const filter = jobFilter(params.get('show'));
  const [typed, setTyped] = useState(params.get('text') ?? '');
  const [text] = useDebouncedValue(typed.trim(), 130);
  const [limit, setLimit] = useState(STEP);
  const query = useQuery(
    deskQuery.counter.jobs.queryOptions({
      input: { text, states: [...filter.states], limit },
      placeholderData: keepPreviousData,
    }),
  );
  const rows = useArrowRows<HTMLTableElement>(
    text === typed.trim() && query.data !== undefined && !query.isPlaceholderData,
  );

  useEffect(() => {
    setParams(
      (before) => {
        const after = new URLSearchParams(before);
        if (text === '') after.delete('text');
        else after.set('text', text);
        return after;
      },
      { replace: true },
    );
  }, [text, setParams]);

  return (
    <Page title="Jobs">
      <div className={classes.tools}>
        <TextInput
          ref={rows.filter}
          aria-label="Narrow the list"
          placeholder="Customer, machine, code …"
          leftSection={<IconFilter size={18} aria-hidden />}
          autoFocus
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.currentTarget.value)}
          onKeyDown={rows.onFilterKey}
          className={classes.text}
        />
        <PageStrip
          inset
          label="Which jobs"
          links={JOB_FILTERS.map((one) => ({
            to: { search: searchOf(one.show, text) },
            label: one.label,
            current: one.show === filter.show ? 'true' : undefined,
          }))}
        />
      </div>
      <QueryView query={query}>
        {(jobs) =>
          jobs.length === 0 ? (
            <NoJobs narrowed={text !== ''} />
          ) : (
            <>
              <p role="status" className={classes.count}>
                {jobs.length === limit ? `The first ${limit} jobs` : countOf(jobs.length)}
              </p>
              <JobsTable jobs={jobs} listRef={rows.list} onKeyDown={rows.onListKey} />
              {jobs.length === limit && limit < MOST && (
                <Button variant="default" mt="md" onClick={() => setLimit(MOST)}>
                  Show more
                </Button>
              )}
            </>
          )
        }
      </QueryView>
    </Page>
  );
}

function searchOf(show: string, text: string): string {
  return new URLSearchParams({ show, ...(text === '' ? {} : { text }) }).toString();
}

const countOf = (count: number): string => (count === 1 ? '1 job' : `${count} jobs`);

function NoJobs({ narrowed }: { narrowed: boolean }) {
  return narrowed ? (
    <Empty
      title="No job of this list answers to that"
      hint="Type fewer letters, or choose All above: it may have been handed over."
    />
  ) : (
    <Empty
      title="No jobs in this list"
      hint="A job begins when a machine is taken in, and moves through the lists above."
      action={
        <Button component={Link} to="/take-in">
          Take a machine in
        </Button>
      }
    />
  );
}
