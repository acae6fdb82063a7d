import type { RouteObject } from 'react-router';
import { BenchFrame } from './bench-frame.tsx';
import { BenchPage } from './bench-page.tsx';
import { BuildPage } from './build/build-page.tsx';
import { BuildSheetPage } from './build-sheet/build-sheet-page.tsx';
import { DecidePage } from './decide/decide-page.tsx';
import { DiagnosePage } from './diagnose/diagnose-page.tsx';
import { GaugePage } from './gauge-page.tsx';
import { GaugesPage } from './gauges-page.tsx';
import { EngineLifePage } from './history/engine-life-page.tsx';
import { TestRunPage } from './test-run/test-run-page.tsx';

/** The bench's pages outside a job. */
export const benchRoutes: RouteObject[] = [
  { path: 'gauges', element: <GaugesPage /> },
  { path: 'build-sheet', element: <BuildSheetPage /> },
  { path: 'spec-book/:id/build-sheet', element: <BuildSheetPage /> },
  { path: 'gauge/:id', element: <GaugePage /> },
  { path: 'engine/:id', element: <EngineLifePage /> },
];

/** A job's own bench, which stands in the job's frame. */
export const jobBenchRoute: RouteObject = {
  path: 'bench',
  element: <BenchFrame />,
  children: [
    { index: true, element: <BenchPage /> },
    { path: 'diagnose', element: <DiagnosePage /> },
    { path: 'decide', element: <DecidePage /> },
    { path: 'build', element: <BuildPage /> },
    { path: 'run', element: <TestRunPage /> },
  ],
};
