import type { RouteObject } from 'react-router';
import { ModelPage } from './model-page.tsx';
import { SpecBookPage } from './spec-book-page.tsx';

export const specbookRoutes: RouteObject[] = [
  { path: 'spec-book', element: <SpecBookPage /> },
  { path: 'spec-book/:id', element: <ModelPage /> },
];
