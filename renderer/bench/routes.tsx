import type { RouteObject } from 'react-router';
import { GaugesPage } from './gauges-page.tsx';

/** The bench's pages outside a job; a job's own bench stands in the job's frame. */
export const benchRoutes: RouteObject[] = [{ path: 'gauges', element: <GaugesPage /> }];
