import { Anchor } from '@mantine/core';
import {
  IconClipboardText,
  IconCoins,
  IconPackages,
  IconSignature,
  IconTool,
  type TablerIcon,
} from '@tabler/icons-react';
import { Link, useLocation } from 'react-router';
import type { JobDossier } from '../../shared/contract/counter/index.ts';
import { JOB_STATE_LABELS } from '../../shared/work/counter/job-state.ts';
import { StateBadge } from '../common/badges.tsx';
import { useFormat } from '../common/format.ts';
import { Promised } from '../common/promised.tsx';
import { JobClock } from './job-clock.tsx';
import classes from './job-header.module.css';
import { MoveMenu } from './move-menu.tsx';

const PAGES: readonly { path: string; label: string; icon: TablerIcon; key: string }[] = [
  { path: '', label: 'Overview', icon: IconClipboardText, key: 'G V' },
  { path: '/bench', label: 'Bench', icon: IconTool, key: 'G B' },
  { path: '/parts', label: 'Parts', icon: IconPackages, key: 'G A' },
  { path: '/till', label: 'Till', icon: IconCoins, key: 'G T' },
  { path: '/handover', label: 'Handover', icon: IconSignature, key: 'G H' },
];

/** A page is also marked, more quietly to a screen reader, while one of the pages within it is open. */
function currentness(pathname: string, base: string, path: string): 'page' | 'true' | undefined {
  if (pathname === base + path) return 'page';
  return path !== '' && pathname.startsWith(`${base}${path}/`) ? 'true' : undefined;
}

/** On top of each of a job's pages. */
export function JobHeader({ job }: { job: JobDossier }) {
  const { pathname } = useLocation();
  const format = useFormat();
  const base = `/job/${job.code}`;
  return (
    <section aria-label={`Job ${job.code}`} className={classes.header}>
      <div className={classes.facts}>
        <span className={classes.code}>{job.code}</span>
        <span className={classes.who}>
          <Anchor
            component={Link}
            to={`/customer/${job.customerId}`}
            className={classes.name}
            title={job.customerName}
          >
            <bdi>{job.customerName}</bdi>
          </Anchor>
          <span className={classes.quiet}>{job.customerPhone}</span>
        </span>
        <span className={classes.who}>
          <span className={classes.machine} title={job.machine}>
            {job.machine}
          </span>
          <span className={classes.quiet}>
            {job.machineDetails.serial === ''
              ? 'no serial number'
              : `serial ${job.machineDetails.serial}`}
          </span>
        </span>
        <Promised job={job} named />
        <span className={classes.state}>
          <StateBadge state={job.state} />
          <span className={classes.quiet} title={format.instant(job.stateSince)}>
            for {format.since(job.stateSince)}
          </span>
        </span>
      </div>
      {job.stateNote !== '' && (
        <p className={classes.note}>
          {JOB_STATE_LABELS[job.state]}: <bdi>{job.stateNote}</bdi>
        </p>
      )}
      <div className={classes.bar}>
        <nav aria-label="Pages of this job" className={classes.pages}>
          {PAGES.map((page) => (
            <Link
              key={page.path}
              to={base + page.path}
              className={classes.page}
              title={page.key}
              aria-current={currentness(pathname, base, page.path)}
            >
              <page.icon size={20} stroke={1.7} aria-hidden className={classes.icon} />
              {page.label}
            </Link>
          ))}
        </nav>
        <div className={classes.actions}>
          <JobClock job={job} />
          <MoveMenu job={job} />
        </div>
      </div>
    </section>
  );
}
