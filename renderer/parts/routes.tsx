import type { RouteObject } from 'react-router';
import { PartPage } from './part-page.tsx';
import { PartsPage } from './parts-page.tsx';

/** The parts room. */
export const partsRoutes: RouteObject[] = [
  { path: 'parts', element: <PartsPage /> },
  { path: 'part/:id', element: <PartPage /> },
];
