import { Box } from '@mantine/core';
import {
  IconChecklist,
  IconEngine,
  IconRulerMeasure,
  IconScale,
  IconStethoscope,
  type TablerIcon,
} from '@tabler/icons-react';
import { Outlet, useLocation } from 'react-router';
import { useJob } from '../common/job.tsx';
import { PageStrip } from '../common/page-strip.tsx';
import { LimitBanner } from '../till/limit/limit-banner.tsx';
import classes from './bench-frame.module.css';

const STRETCHES: readonly { path: string; label: string; icon: TablerIcon }[] = [
  { path: '/diagnose', label: 'Diagnose', icon: IconStethoscope },
  { path: '', label: 'Measure', icon: IconRulerMeasure },
  { path: '/decide', label: 'Decide', icon: IconScale },
  { path: '/build', label: 'Build', icon: IconChecklist },
  { path: '/run', label: 'Test run', icon: IconEngine },
];

/** The bench of a job: the strip between its stretches of work, in the order of the work. */
export function BenchFrame() {
  const { id, code, state } = useJob();
  const { pathname } = useLocation();
  return (
    <>
      <PageStrip
        label="At the bench of this job"
        links={STRETCHES.map(({ path, ...stretch }) => {
          const to = `/job/${code}/bench${path}`;
          return { ...stretch, to, current: pathname === to ? 'page' : undefined };
        })}
      />
      <Box className={classes.banner}>{state !== 'stopped' && <LimitBanner jobId={id} />}</Box>
      <Outlet />
    </>
  );
}
