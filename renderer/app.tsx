import { MantineProvider } from '@mantine/core';
import { Notifications } from '@mantine/notifications';
import { QueryClientProvider } from '@tanstack/react-query';
import { useState } from 'react';
import { createBrowserRouter, RouterProvider } from 'react-router';
import { benchRoutes } from './bench/routes.tsx';
import { Frame } from './common/frame/frame.tsx';
import { Opening } from './common/frame/opening.tsx';
import { BrokenPage, NoSuchPage } from './common/frame/wrong-turn.tsx';
import { makeQueryClient } from './common/query-client.ts';
import { counterRoutes } from './counter/routes.tsx';
import { officeRoutes } from './office/routes.tsx';
import { partsRoutes } from './parts/routes.tsx';
import { specbookRoutes } from './specbook/routes.tsx';
import { cssVariables, theme } from './theme.ts';
import { tillRoutes } from './till/routes.tsx';

const makeRouter = () =>
  createBrowserRouter([
    {
      element: <Frame />,
      errorElement: <BrokenPage />,
      children: [
        {
          // A page that breaks leaves the frame standing, so that one can go elsewhere.
          errorElement: <BrokenPage />,
          children: [
            ...counterRoutes,
            ...benchRoutes,
            ...specbookRoutes,
            ...partsRoutes,
            ...tillRoutes,
            ...officeRoutes,
            { path: '*', element: <NoSuchPage /> },
          ],
        },
      ],
    },
  ]);

export function App() {
  const [client] = useState(makeQueryClient);
  const [router] = useState(makeRouter);
  return (
    <MantineProvider theme={theme} cssVariablesResolver={cssVariables} defaultColorScheme="auto">
      <QueryClientProvider client={client}>
        <Notifications position="bottom-right" />
        <Opening>
          <RouterProvider router={router} />
        </Opening>
      </QueryClientProvider>
    </MantineProvider>
  );
}
