import { JOB_STATES, type JobState, waitsOn } from '../../../shared/work/counter/job-state.ts';

const among = (wanted: (state: JobState) => boolean): JobState[] => JOB_STATES.filter(wanted);

/** The lists that people ask for, by the name that stands in the address as `?show=`. */
export const JOB_FILTERS = [
  { show: 'open', label: 'Open', states: among((state) => state !== 'handed-over') },
  { show: 'bench', label: 'Waits on bench', states: among((state) => waitsOn(state) === 'bench') },
  {
    show: 'customer',
    label: 'Waits on customer',
    states: among((state) => waitsOn(state) === 'customer'),
  },
  {
    show: 'supplier',
    label: 'Waits on supplier',
    states: among((state) => waitsOn(state) === 'supplier'),
  },
  { show: 'ready', label: 'Ready', states: among((state) => state === 'ready') },
  { show: 'handed-over', label: 'Handed over', states: among((state) => state === 'handed-over') },
  { show: 'all', label: 'All', states: [] },
] as const satisfies readonly { show: string; label: string; states: readonly JobState[] }[];

export type JobFilter = (typeof JOB_FILTERS)[number];

/** The filter of that name; the open jobs for any other. */
export function jobFilter(show: string | null): JobFilter {
  return JOB_FILTERS.find((filter) => filter.show === show) ?? JOB_FILTERS[0];
}
