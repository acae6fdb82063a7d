import type { RouteObject } from 'react-router';
import { PartPage } from './part-page.tsx';
import { PartsFrame } from './parts-frame.tsx';
import { PartsPage } from './parts-page.tsx';

/** The parts room. */
export const partsRoutes: RouteObject[] = [
  {
    element: <PartsFrame />,
    children: [
      { path: 'parts', element: <PartsPage /> },
      { path: 'part/:id', element: <PartPage /> },
    ],
  },
];
