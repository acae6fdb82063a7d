import { Box } from '@mantine/core';
import {
  IconChecklist,
  IconEngine,
  IconRulerMeasure,
  IconScale,
  type TablerIcon,
} from '@tabler/icons-react';
import { NavLink, Outlet } from 'react-router';
import { useJob } from '../common/job.tsx';
import { LimitBanner } from '../till/limit/limit-banner.tsx';
import classes from './bench-frame.module.css';

const STRETCHES: readonly { path: string; label: string; icon: TablerIcon }[] = [
  { path: '', label: 'Measure', icon: IconRulerMeasure },
  { path: '/decide', label: 'Decide', icon: IconScale },
  { path: '/build', label: 'Build', icon: IconChecklist },
  { path: '/run', label: 'Test run', icon: IconEngine },
];

/** The bench of a job: the strip between its stretches of work, in the order of the work. */
export function BenchFrame() {
  const { id, code, state } = useJob();
  return (
    <>
      <nav aria-label="At the bench of this job" className={classes.strip}>
        {STRETCHES.map((stretch) => (
          <NavLink
            key={stretch.path}
            to={`/job/${code}/bench${stretch.path}`}
            end
            className={classes.stretch}
          >
            <stretch.icon size={22} stroke={1.7} aria-hidden />
            {stretch.label}
          </NavLink>
        ))}
      </nav>
      <Box mx="lg" mt="sm">
        {state !== 'stopped' && <LimitBanner jobId={id} />}
      </Box>
      <Outlet />
    </>
  );
}
