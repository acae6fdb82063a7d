import { Button, Menu } from '@mantine/core';
import { IconArrowBarToRight, IconChevronDown } from '@tabler/icons-react';
import { useState } from 'react';
import { Link } from 'react-router';
import type { JobDossier } from '../../shared/contract/counter/index.ts';
import {
  JOB_STATE_LABELS,
  type JobState,
  MOVES_BY_ACTION,
} from '../../shared/work/counter/job-state.ts';
import { MoveDialog } from './move-dialog.tsx';

/** Moves that another page makes, and the words for going there. */
const ELSEWHERE: Partial<Record<JobState, { path: string; label: string }>> = {
  'go-ahead': { path: '/till', label: 'Go-ahead: by an approval at the till' },
  'handed-over': { path: '/handover', label: 'Hand over …' },
};

/** Parts that came in bring the job back to the go-ahead that it had. */
const byHand = (job: JobDossier, to: JobState): boolean =>
  !MOVES_BY_ACTION.includes(to) || (job.state === 'waits-for-parts' && to === 'go-ahead');

/** Where the job can go from where it stands. */
export function MoveMenu({ job }: { job: JobDossier }) {
  const [to, setTo] = useState<JobState | null>(null);
  if (job.nextStates.length === 0) return null;
  return (
    <>
      <Menu position="bottom-end" width={300}>
        <Menu.Target>
          <Button
            variant="default"
            leftSection={<IconArrowBarToRight size={20} aria-hidden />}
            rightSection={<IconChevronDown size={18} aria-hidden />}
          >
            Move
          </Button>
        </Menu.Target>
        <Menu.Dropdown aria-label={`Move from ${JOB_STATE_LABELS[job.state]} to`}>
          {job.nextStates.map((state) => {
            const elsewhere = byHand(job, state) ? undefined : ELSEWHERE[state];
            return elsewhere === undefined ? (
              <Menu.Item key={state} onClick={() => setTo(state)}>
                {JOB_STATE_LABELS[state]}
              </Menu.Item>
            ) : (
              <Menu.Item key={state} component={Link} to={`/job/${job.code}${elsewhere.path}`}>
                {elsewhere.label}
              </Menu.Item>
            );
          })}
        </Menu.Dropdown>
      </Menu>
      {to !== null && <MoveDialog job={job} to={to} onClose={() => setTo(null)} />}
    </>
  );
}
