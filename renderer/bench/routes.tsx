import type { RouteObject } from 'react-router';
import { Page, Waiting } from '../common/page.tsx';

export const benchRoutes: RouteObject[] = [
  {
    path: 'gauges',
    element: (
      <Page title="Gauges">
        <Waiting />
      </Page>
    ),
  },
];
