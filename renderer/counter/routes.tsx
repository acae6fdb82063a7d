import type { RouteObject } from 'react-router';
import { jobBenchRoute } from '../bench/routes.tsx';
import { jobPartsRoute } from '../parts/routes.tsx';
import { TillPage } from '../till/till-page.tsx';
import { CustomerPage } from './customers/customer-page.tsx';
import { CustomersPage } from './customers/customers-page.tsx';
import { DayPage } from './day/day-page.tsx';
import { HandoverPage } from './handover/handover-page.tsx';
import { JobFrame } from './job-frame.tsx';
import { JobOverviewPage } from './job-overview/job-overview-page.tsx';
import { JobsPage } from './jobs/jobs-page.tsx';
import { TakeInPage } from './take-in/take-in-page.tsx';

/** The counter's pages; a job's pages of the bench and the till stand inside its frame. */
export const counterRoutes: RouteObject[] = [
  { index: true, element: <DayPage /> },
  { path: 'take-in', element: <TakeInPage /> },
  { path: 'jobs', element: <JobsPage /> },
  {
    path: 'job/:code',
    element: <JobFrame />,
    children: [
      { index: true, element: <JobOverviewPage /> },
      jobBenchRoute,
      jobPartsRoute,
      { path: 'till', element: <TillPage /> },
      { path: 'handover', element: <HandoverPage /> },
    ],
  },
  { path: 'customers', element: <CustomersPage /> },
  { path: 'customer/:id', element: <CustomerPage /> },
];
