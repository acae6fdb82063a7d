import type { RouteObject } from 'react-router';
import { Page, Waiting } from '../common/page.tsx';

export const partsRoutes: RouteObject[] = [
  {
    path: 'parts',
    element: (
      <Page title="Parts">
        <Waiting />
      </Page>
    ),
  },
];
