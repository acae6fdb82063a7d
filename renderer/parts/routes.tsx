import type { RouteObject } from 'react-router';
import { buyingRoutes } from './buying/routes.tsx';
import { CountPage } from './counts/count-page.tsx';
import { CountsPage } from './counts/counts-page.tsx';
import { JobPartsPage } from './job/job-parts-page.tsx';
import { JobsAndPartsPage } from './jobs-page.tsx';
import { LabelsPage } from './labels/labels-page.tsx';
import { PartPage } from './part-page.tsx';
import { PartsFrame } from './parts-frame.tsx';
import { PartsPage } from './parts-page.tsx';
import { priceFileRoutes } from './price-files/routes.tsx';
import { PutRightPage } from './put-right-page.tsx';
import { StockReportsPage } from './reports/stock-reports-page.tsx';

/** The page of a job's parts, within the job's frame. */
export const jobPartsRoute: RouteObject = { path: 'parts', element: <JobPartsPage /> };

/** The parts room. */
export const partsRoutes: RouteObject[] = [
  {
    element: <PartsFrame />,
    children: [
      { path: 'parts', element: <PartsPage /> },
      { path: 'parts/jobs', element: <JobsAndPartsPage /> },
      { path: 'parts/put-right', element: <PutRightPage /> },
      { path: 'part/:id', element: <PartPage /> },
      ...buyingRoutes,
      ...priceFileRoutes,
      { path: 'parts/counts', element: <CountsPage /> },
      { path: 'parts/count/:id', element: <CountPage /> },
      { path: 'parts/labels', element: <LabelsPage /> },
      { path: 'parts/reports', element: <StockReportsPage /> },
    ],
  },
];
