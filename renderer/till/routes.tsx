import type { RouteObject } from 'react-router';
import { HoursPage } from './hours/hours-page.tsx';

/** Pages of the till that belong to no job. */
export const tillRoutes: RouteObject[] = [{ path: 'hours', element: <HoursPage /> }];
