import type { RouteObject } from 'react-router';
import { Page, Waiting } from '../common/page.tsx';

export const specbookRoutes: RouteObject[] = [
  {
    path: 'spec-book',
    element: (
      <Page title="Spec book">
        <Waiting />
      </Page>
    ),
  },
];
